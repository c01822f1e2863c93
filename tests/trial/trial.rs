//! Trials: what the log comes to, saved into the book and made again.

use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

use crate::{ask, ask_of, changed, list, number, of};

/// Dusk, found anew in half a cup of the plain body.
fn found() -> Value {
    json!({
        "calculate": "trial", "save_as": "dusk-2", "trial": {
            "start": "1/2 cup", "formulas": ["plain"], "notes": "By daylight.", "log": [
                { "plum": "12 drops" }, { "teal-flake": "1/4 tsp" }, { "taken": "10 g" }, { "plum": "3 drops" },
                { "taken": "1 tsp" }, { "teal-flake": "1/8 tsp" }, "again"
            ]
        }
    })
}

#[test]
fn a_trial_reads_as_a_person_would_write_it() {
    let answer = ask(&found()).expect("an answer");
    assert_eq!(answer["per"], "1 cup");
    assert_eq!(answer["body"], json!(["plain"]));
    assert_eq!(answer["own_body"], Value::Null);
    // By hand: half a cup of base and half a teaspoon of stabilizer, 12 drops, a quarter teaspoon of flake; 10 g go.
    let (ml, drop) = (236.588_236_5 / 2.0, 0.044);
    let mut held = ml * 1.03 + ml / 48.0 * 1.02 + 12.0 * drop + ml / 96.0 * 0.55;
    let (mut base, mut plum) = (ml * 1.03, 12.0);
    let kept = 1.0 - 10.0 / held;
    (base, plum, held) = (base * kept, plum * kept + 3.0, held * kept + 3.0 * drop);
    assert!(held > 100.0);
    let drops = plum / base * (2.0 * ml * 1.03);
    let dose = of(&answer["cup"], "plum").expect("plum");
    let written: f64 = dose["dose"]
        .as_str()
        .and_then(|it| it.strip_suffix(" drops"))
        .expect("drops")
        .parse()
        .expect("a number");
    assert!((written / drops - 1.0).abs() <= 1e-3, "{written} for {drops}");
    assert!((number(&dose["off"]) - (written / drops - 1.0)).abs() < 1e-9);
    // 15 drops scatter by 5 %/√15 against each other; that they are drops of one bottle cancels.
    let doubt = number(&dose["doubt"]["uncertainty"]);
    assert!((doubt - 0.05 / 15.0_f64.sqrt()).abs() < 2e-3, "{doubt}");
    assert_eq!(answer["color"]["notes"], "By daylight.");
    let text: Vec<&str> =
        list(&answer["text"]).iter().map(|line| line.as_str().expect("text")).collect();
    assert!(text.len() <= 7 && text.iter().all(|line| line.len() < 200), "{text:#?}");
    assert!(text[2].starts_with("Body: plain (clear-base 1 cup, stabilizer 1 tsp)"), "{text:#?}");
}

#[test]
fn the_change_is_the_color_alone_and_goes_with_any_body() {
    let answer = ask(&found()).expect("an answer");
    let [change] = list(&answer["write"]) else { panic!("{answer}") };
    assert_eq!((&change["op"], &change["path"]), (&json!("add"), &json!("/formulas/dusk-2")));
    assert_eq!(change["value"], answer["color"]);
    let book = changed(&answer["write"]);
    let salted = json!({ "calculate": "formula", "formulas": ["dusk-2", "salted"] });
    assert!(of(&ask_of(&book, &salted).expect("a recipe")["parts"], "fine-salt").is_some());
}

#[rstest]
#[case::taken(json!({ "save_as": "dusk" }), "/save_as", "formula-exists")]
#[case::empty(json!({ "save_as": " " }), "/save_as", "bad-name")]
#[case::per(json!({ "per": "3 drops" }), "/per", "trial-no-start")]
#[case::no_field(json!({ "saveas": "x" }), "/saveas", "unknown-field")]
fn what_cannot_be_saved_is_refused(#[case] change: Value, #[case] path: &str, #[case] code: &str) {
    let mut request = found();
    for (name, value) in change.as_object().expect("fields") {
        request[name] = value.clone();
    }
    let faults = ask(&request).expect_err("a fault");
    assert_eq!((&faults[0]["path"], &faults[0]["code"]), (&json!(path), &json!(code)), "{faults}");
}

#[test]
fn what_is_unusual_is_saved_as_sure_and_said() {
    let mut request = found();
    request["trial"]["log"] = json!([{ "black-flake": "4 tbsp" }]);
    let answer = ask(&request).expect("an answer");
    assert_eq!(answer["write"][0]["value"]["sure"], true);
    let text = answer["text"].to_string();
    assert!(text.contains("Unusual: black-flake 8 tbsp. Check what was written down"), "{text}");
    let book = changed(&answer["write"]);
    assert_eq!(book.ready().formulas.len(), 10);
    assert!(!ask(&found()).expect("an answer")["text"].to_string().contains("Unusual"));
}

#[test]
fn what_cannot_be_is_not_saved() {
    let mut request = found();
    request["trial"]["log"] = json!([{ "black-flake": "3 cup" }]);
    let faults = ask(&request).expect_err("more flake than base");
    let fault = (&faults[0]["path"], &faults[0]["code"]);
    assert_eq!(fault, (&json!("/save_as"), &json!("cannot-be")), "{faults}");
    request.as_object_mut().expect("fields").remove("save_as");
    assert!(ask(&request).is_ok());
}

#[test]
fn a_formula_is_replaced_where_that_is_said() {
    let mut request = found();
    request["save_as"] = json!("dusk");
    request["replace"] = json!(true);
    let answer = ask(&request).expect("an answer");
    let book = changed(&answer["write"]);
    assert_eq!(book.ready().formulas.len(), 9);
}

#[test]
fn a_body_of_its_own_is_saved_next_to_the_color() {
    let mut request = found();
    request["trial"]["log"].as_array_mut().expect("a log").push(json!({ "softener": "1 tsp" }));
    let answer = ask(&request).expect("an answer");
    assert_eq!(answer["body"], json!([]));
    let paths: Vec<&Value> = list(&answer["write"]).iter().map(|change| &change["path"]).collect();
    assert_eq!(paths, [&json!("/formulas/dusk-2"), &json!("/formulas/dusk-2 body")]);
    request["body_as"] = json!("softer");
    let answer = ask(&request).expect("an answer");
    assert_eq!(answer["write"][1]["path"], "/formulas/softer");
    request["body_as"] = json!("plain");
    assert_eq!(ask(&request).expect_err("a name twice")[0]["path"], "/body_as");
}

fn step() -> impl Strategy<Value = Value> {
    prop_oneof![
        (1_u32..40).prop_map(|n| json!({ "plum": format!("{n} drops") })),
        (1_u32..30).prop_map(|n| json!({ "soot": format!("{n} drops") })),
        (1_u32..30).prop_map(|n| json!({ "soot": { "value": f64::from(n) / 10.0, "unit": "g" } })),
        (1_u32..9).prop_map(|n| json!({ "teal-flake": format!("{n}/8 tsp") })),
        (1_u32..4).prop_map(|n| json!({ "black-flake": format!("{n} tbsp") })),
        (1_u32..5).prop_map(|n| json!({ "stabilizer": format!("{n}/4 tsp") })),
        (1_u32..5).prop_map(|n| json!({ "fine-salt": format!("{n} tbsp") })),
        (1_u32..3).prop_map(|n| json!({ "clear-base": format!("{n}/4 cup") })),
        (1_u32..30).prop_map(|n| json!({ "taken": format!("{n} g") })),
        (1_u32..4).prop_map(|n| json!({ "taken": format!("{n} tsp") })),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Saved, read with the book and combined by the library's own formulas, a trial gives what was in the cup.
    #[test]
    fn a_trial_that_was_saved_makes_its_cup_again(
        start in prop::sample::select(vec!["1/2 cup", "1 cup", "3/4 cup", "200 g"]),
        formulas in prop::sample::select(vec![
            json!(["plain"]), json!(["salted"]), json!(["soft"]), json!(["dusk", "plain"]), json!(["night", "firm"])
        ]),
        log in prop::collection::vec(step(), 0..9),
        per in prop::option::of(prop::sample::select(vec!["2 cup", "100 g", "1 pint"])),
    ) {
        let mut request = json!({
            "calculate": "trial", "save_as": "a", "body_as": "b", "trial": { "start": start, "formulas": formulas, "log": log }
        });
        if let Some(per) = per {
            request["per"] = json!(per);
        }
        let answer = ask(&request).expect("an answer");
        let book = changed(&answer["write"]);
        let mut names: Vec<Value> = list(&answer["body"]).to_vec();
        match (answer["color"].is_null(), answer["own_body"].is_null()) {
            (false, true) => names.push(json!("a")),
            (false, false) => names.extend([json!("a"), json!("b")]),
            (true, false) => names.push(json!("a")),
            (true, true) => {}
        }
        let bases = list(&answer["cup"]).iter().filter(|part| part["side"] == "base");
        let base: f64 = bases.map(|part| number(&part["mass"])).sum();
        let recipe = ask_of(&book, &json!({
            "calculate": "formula", "formulas": names, "overlap": answer["overlap"],
            "base_amount": { "value": base, "unit": "g" }
        })).expect("a recipe");
        for part in list(&answer["cup"]) {
            let name = part["material"].as_str().expect("a name");
            let made = of(&recipe["parts"], name).unwrap_or_else(|| panic!("no {name}: {recipe}"));
            let (made, there) = (number(&made["mass"]), number(&part["mass"]));
            prop_assert!((made / there - 1.0).abs() <= 1.002e-3, "{}: {} for {}", name, made, there);
        }
        prop_assert_eq!(list(&recipe["parts"]).len(), list(&answer["cup"]).len());
    }
}

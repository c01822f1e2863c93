use alloc::string::ToString;
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use crate::request::tests::{fault_codes, result};

const BOOK: &str = include_str!("../../../examples/demo/book.json");

fn request() -> Value {
    let mut request: Value =
        serde_json::from_str(include_str!("../../../examples/requests/color-next.json")).unwrap();
    request["book"] = serde_json::from_str(BOOK).unwrap();
    request
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value}"))
}

/// A cup that is too light gets more of what is in it; the difference is expected to fall; the strength that its samples show
/// is offered for the book, which takes it.
#[test]
fn a_light_cup_gets_more() {
    let answer = result(request());
    assert_eq!(answer["verdict"], "add", "{answer}");
    let plum = &answer["add"][0];
    assert_eq!(plum["material"], "plum", "{answer}");
    assert!(
        number(&answer["after"]["difference"]) < number(&answer["now"]["difference"]),
        "{answer}"
    );
    let all = answer["all_the_way"].as_array().unwrap();
    assert!(all.iter().any(|one| one["material"] == "plum"), "{answer}");
    let change = &answer["strengths"][0]["write"][0];
    assert_eq!(change["path"], "/materials/plum/strength", "{answer}");
    let mut again = request();
    again["book"]["materials"]["plum"]["strength"] = change["value"].clone();
    let learned = result(again);
    // What was learned once is not counted as new by far: the strength hardly moves.
    let [before, after] =
        [&answer, &learned].map(|answer| number(&answer["strengths"][0]["factors"][0]));
    assert!((after / before - 1.0).abs() < 0.05, "{before} {after}");
    assert!(answer["text"].to_string().contains("The eye decides"), "{answer}");
}

/// Base alone is a formula to begin with: nothing was seen, so nothing is learned, and less than all the way goes in.
#[test]
fn a_cup_of_base_gets_a_formula_to_begin_with() {
    let mut request = request();
    request["trial"] = json!({ "start": "1/2 cup", "formulas": ["plain"] });
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request);
    assert_eq!((&answer["verdict"], &answer["strengths"]), (&json!("add"), &json!([])), "{answer}");
    let drops = |list: &Value| -> u32 {
        let of = |one: &Value| -> u32 {
            one["amount"].as_str().unwrap().split(' ').next().unwrap().parse().unwrap()
        };
        list.as_array().unwrap().iter().map(of).sum()
    };
    assert!(drops(&answer["add"]) < drops(&answer["all_the_way"]), "{answer}");
    assert!(number(&answer["stays_off"]) < 1.0, "{answer}");
}

#[test]
fn a_cup_that_is_there_is_left() {
    let mut request = request();
    request["target"] = request["seen"].clone();
    request["close_enough"] = json!(2);
    let answer = result(request);
    assert_eq!(
        (&answer["verdict"], &answer["add"]),
        (&json!("close-enough"), &json!([])),
        "{answer}"
    );
}

/// Twice too much of a colorant: about as much base again brings the target into reach.
#[test]
fn too_much_takes_a_larger_pot() {
    let mut request = request();
    request["trial"]["log"] = json!([{ "plum": "40 drops" }]);
    // White would help, too.
    request["leave_out"] = json!(["chalk"]);
    request["target"] = json!({ "lab": [65.7, 18, -7.7] });
    request.as_object_mut().unwrap().remove("seen");
    let answer = result(request);
    assert_eq!(
        (&answer["verdict"], &answer["too_much"]),
        (&json!("more-base"), &json!("plum")),
        "{answer}"
    );
    let more = answer["more_base"]["text"].as_str().unwrap();
    let grams: f64 = more.split(' ').next().unwrap().parse().unwrap();
    assert!((100.0..600.0).contains(&grams), "{answer}");
}

#[test]
fn a_color_that_these_cannot_make_is_out_of_reach() {
    let mut request = request();
    request["trial"] = json!({ "start": "1/2 cup", "formulas": ["plain"] });
    request["target"] = json!({ "srgb": [20, 60, 230] });
    request.as_object_mut().unwrap().remove("seen");
    let mut answer = result(request.clone());
    // Follow it to its end: what can be done is done first.
    let mut log: Vec<Value> = Vec::new();
    for _ in 0..20 {
        if answer["verdict"] != "add" {
            break;
        }
        for one in answer["add"].as_array().unwrap() {
            log.push(json!({ one["material"].as_str().unwrap(): one["amount"] }));
        }
        request["trial"]["log"] = json!(log);
        answer = result(request.clone());
    }
    assert_eq!(answer["verdict"], "out-of-reach", "{answer}");
    assert!(number(&answer["stays_off"]) > 5.0, "{answer}");
}

/// As much base again halves what is in the cup: the pot is what it would be if it had been poured so.
#[test]
fn more_base_thins_what_is_there() {
    let at = |start: &str, log: Value| {
        let mut request = request();
        request["trial"] = json!({ "start": start, "base": "clear-base", "log": log });
        request.as_object_mut().unwrap().remove("seen");
        request["book"]["bench"]["uncertainty"] = json!({ "drop_scatter": "0 %" });
        result(request)
    };
    let look = json!({ "looks": { "lab": [60, 20, -8], "uncertainty": [50, 50, 50] } });
    let thinned = at(
        "60 g",
        json!([{ "plum": "8 drops", "rust": "2 drops" }, look, { "clear-base": "60 g" }]),
    );
    let poured = at("120 g", json!([{ "plum": "8 drops", "rust": "2 drops" }]));
    let [found, wanted] = [&thinned, &poured].map(|answer| number(&answer["now"]["difference"]));
    assert!((found - wanted).abs() < 0.05, "{found} {wanted}");
    assert_eq!(thinned["strengths"].as_array().unwrap().len(), 2, "{thinned}");
}

/// The lines are made of what the answer says.
#[test]
fn an_answer_is_put_in_lines() {
    let answer = result(request());
    let lines: Vec<&str> =
        answer["text"].as_array().unwrap().iter().map(|line| line.as_str().unwrap()).collect();
    let listed = |list: &Value| {
        let each = list.as_array().unwrap().iter().map(|one| {
            alloc::format!(
                "{} {}",
                one["material"].as_str().unwrap(),
                one["amount"].as_str().unwrap()
            )
        });
        each.collect::<Vec<_>>().join(", ")
    };
    assert_eq!(
        lines[0],
        alloc::format!("Add: {}. Stir, cool a sample, and look again.", listed(&answer["add"]))
    );
    let off = |place: &str| {
        let off = &answer[place];
        alloc::format!(
            "ΔE₀₀ {:.1} ({:.1} to {:.1}), {}",
            number(&off["difference"]),
            number(&off["low"]),
            number(&off["high"]),
            off["looks"].as_str().unwrap()
        )
    };
    assert_eq!(lines[1], alloc::format!("Now: {}.", off("now")));
    assert_eq!(lines[2], alloc::format!("Expected then: {}.", off("after")));
    let all = listed(&answer["all_the_way"]);
    assert_eq!(lines[3], alloc::format!("Not at once: in all it may take {all}."));
    // A drop of plum is 0.044 g.
    let plum = &answer["add"][0];
    let count: f64 = plum["amount"].as_str().unwrap().split(' ').next().unwrap().parse().unwrap();
    assert!((number(&plum["mass"]["value"]) - 0.044 * count).abs() < 1e-9, "{plum}");
    let factors = answer["strengths"][0]["factors"].as_array().unwrap();
    assert!(
        factors.iter().all(|x| (number(x) * 1e3 - libm::round(number(x) * 1e3)).abs() < 1e-9),
        "{answer}"
    );
}

#[test]
fn what_is_left_out_does_not_go_in() {
    let mut request = request();
    request["leave_out"] = json!(["plum", "rust", "moss", "soot"]);
    let answer = result(request);
    let all = answer["all_the_way"].as_array().unwrap();
    assert!(all.iter().all(|one| one["material"] == "chalk"), "{answer}");
}

#[test]
fn flake_and_pearl_are_outside_the_model() {
    let mut request = request();
    request["trial"]["log"][2] = json!({ "plum": "3 drops", "teal-flake": "1/8 tsp" });
    let answer = result(request);
    let notes = answer["notes"].as_array().unwrap();
    assert!(notes.iter().any(|note| note["code"] == "color-outside-model"), "{answer}");
}

#[test]
fn a_sample_of_another_pot_is_a_surprise() {
    let mut request = request();
    request["seen"] = json!({ "lab": [45, -30, 30] });
    let answer = result(request);
    let notes = answer["notes"].as_array().unwrap();
    assert!(notes.iter().any(|note| note["code"] == "color-surprise"), "{answer}");
}

#[rstest]
#[case("/close_enough", json!(0), &["out-of-range"])]
#[case("/leave_out", json!(["plumb"]), &["unknown-name"])]
#[case("/target", json!({ "lab": [90, -100, 90] }), &["color-outside-srgb"])]
#[case("/trial/log/1", json!({ "looks": {} }), &["lab-or-srgb"])]
#[case("/trial/log/1", json!({ "looks": { "lab": [50, 0, 0] }, "plum": "1 drop" }), &["trial-step-in-two"])]
#[case("/book/materials/clear-base/color", json!(null), &["wrong-type"])]
#[case("/book/materials/moss/let_downs", json!([]), &[])]
#[case("/book/materials/plum/let_downs", json!([]), &["color-not-let-down"])]
#[case("/book/materials/soot/let_downs/1/dose", json!("2 drops"), &["color-too-few-let-downs"])]
fn faults(#[case] path: &str, #[case] value: Value, #[case] codes: &[&str]) {
    let mut request = request();
    match request.pointer_mut(path) {
        Some(place) => *place = value,
        None => request[&path[1..]] = value,
    }
    if codes.is_empty() {
        result(request);
    } else {
        assert_eq!(fault_codes(request), codes);
    }
}

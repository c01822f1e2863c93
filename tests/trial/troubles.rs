//! Bench troubles: what helps, and what is calculated from the shop's own numbers.

use pourwright::document::LoadedBook;
use pourwright_tests::demo::{BOOK, ORDERS, json};
use rstest::rstest;
use serde_json::{Value, json};

use crate::{ask, ask_of, list, number, of};

/// The demo's book with readings of its softener on a scale of its own: a straight line, two points of squeeze per tenth.
fn book() -> LoadedBook {
    let mut book = json(BOOK);
    book["materials"]["softener"]["hardness"] = json!({
        "scale": "squeeze, 1 soft to 5 stiff", "points": [
            { "point_ratio": "0 %", "point_hardness": 5 }, { "point_ratio": "10 %", "point_hardness": 3 },
            { "point_ratio": "20 %", "point_hardness": 1 }
        ]
    });
    book["materials"]["fine-salt"]["grain"] = json!("0.3 mm");
    book["materials"]["clear-base"]["viscosity"] = json!(["0.5 Pa.s", "3 Pa.s"]);
    LoadedBook::from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"))
}

fn row(answer: &Value) -> &Value {
    &answer["troubles"][0]
}

fn texts(list_of: &Value) -> Vec<&str> {
    list(list_of).iter().map(|line| line.as_str().expect("text")).collect()
}

#[test]
fn all_of_them_fit_a_page() {
    let answer = ask(&json!({ "calculate": "troubles" })).expect("an answer");
    assert_eq!(answer["source"], "common practice, no source");
    let rows = list(&answer["troubles"]);
    assert_eq!(rows.len(), 9);
    assert!(
        rows.iter()
            .all(|row| !list(&row["helps"]).is_empty() && !list(&row["cautions"]).is_empty())
    );
    let text = texts(&answer["text"]);
    assert!(text.len() == rows.len() && text.iter().all(|line| line.len() < 320), "{text:#?}");
    // Water in hot plastic, and fumes: where it can hurt someone, it says so.
    for (trouble, caution) in
        [("spitting", "water"), ("yellowing", "fumes"), ("clumps", "damp-salt")]
    {
        let row = rows.iter().find(|row| row["trouble"] == trouble).expect("a row");
        assert!(texts(&row["cautions"]).contains(&caution), "{row}");
    }
}

// By hand: from 4 to 2 on a straight line is 10 % of the base, 24.37 g of a cup of 243.7 g.
#[test]
fn softener_comes_from_a_scale_of_the_shops_own() {
    let request = json!({
        "calculate": "troubles", "trouble": "too-thick", "base_in_pot": "1 cup", "hardness_now": 4, "hardness_wanted": 2
    });
    let answer = ask_of(&book(), &request).expect("an answer");
    let add = of(&row(&answer)["add"], "softener").expect("softener");
    assert!((number(&add["wanted"]) - 236.588_236_5 * 1.03 * 0.1).abs() < 1e-9);
    assert!((number(&add["best"]["gives"]) / number(&add["wanted"]) - 1.0).abs() < 0.1);
    let text = texts(&answer["text"]).join("\n");
    assert!(text.contains("from 4 to 2 on the scale squeeze, 1 soft to 5 stiff"), "{text}");
    assert!(text.contains("common practice, no source") && text.contains("burns deep"), "{text}");
    // Stiffer takes less of it: base without it thins it from 15 % to 5 %, twice as much again.
    let request = json!({
        "calculate": "troubles", "trouble": "too-soft", "base_in_pot": "100 g", "hardness_now": 2, "hardness_wanted": 4
    });
    let answer = ask_of(&book(), &request).expect("an answer");
    assert!(list(&row(&answer)["add"]).is_empty());
    assert!(texts(&row(&answer)["calculated"])[1].contains("200 g more"), "{answer}");
}

#[test]
fn what_cannot_be_calculated_says_what_it_takes() {
    let request =
        json!({ "calculate": "troubles", "trouble": "too-thick", "base_in_pot": "1 cup" });
    let codes = |answer: &Value| -> Vec<String> {
        list(&row(answer)["not_calculated"])
            .iter()
            .map(|note| note["code"].as_str().expect("a code").to_owned())
            .collect()
    };
    assert_eq!(codes(&ask(&request).expect("an answer")), ["no-hardness-points"]);
    assert_eq!(codes(&ask_of(&book(), &request).expect("an answer")), ["no-hardness-reading"]);
    let salt = json!({ "calculate": "troubles", "trouble": "sinking-salt" });
    assert_eq!(codes(&ask(&salt).expect("an answer")), ["no-viscosity"]);
}

/// The same interval as the request for it gives, of grains in the thinnest melt, a cup deep as it is wide.
#[test]
fn salt_is_stirred_as_the_settling_says() {
    let answer = ask_of(&book(), &json!({ "calculate": "troubles", "trouble": "sinking-salt" }))
        .expect("an answer");
    let line = texts(&row(&answer)["calculated"])[0].to_owned();
    let hot = 1.03 / (1.0 + 6.5e-4 * ((325.0 + 350.0) / 2.0 - 68.0) / 1.8);
    let depth = (4.0 * 236.588_236_5 / std::f64::consts::PI).cbrt() * 10.0;
    let settling = ask(&json!({
        "calculate": "settling", "grain": "0.3 mm", "grain_density": "2.165 g/mL",
        "melt_density": { "value": hot, "unit": "g/mL" }, "melt_depth": { "value": depth, "unit": "mm" },
        "viscosity": ["0.5 Pa.s", "3 Pa.s"]
    }));
    let every = number(&settling.expect("an answer")["stir_every"]);
    let steps = (every / 5.0).floor() * 5.0;
    assert!(steps >= 5.0 && line.contains(&format!("every {steps} s")), "{line} for {every}");
}

#[test]
fn a_pot_of_an_open_plan_has_its_own_numbers() {
    let plan = book().open_plan_text(ORDERS).expect("a plan");
    let ask = |trouble: &str| {
        let request = json!({ "calculate": "troubles", "trouble": trouble, "pot": "A" });
        json(&plan.answer_text(&request.to_string()))["result"].clone()
    };
    let heat = ask("yellowing");
    assert!(texts(&row(&heat)["calculated"])[0].contains("heat used"), "{heat}");
    for trouble in ["sinking-salt", "dents", "air-in-noses"] {
        let answer = ask(trouble);
        assert!(texts(&row(&answer)["calculated"])[0].starts_with("Pot A:"), "{answer}");
    }
}

#[rstest]
#[case(json!({ "trouble": "too-thik" }), "/trouble", "unknown-word")]
#[case(json!({ "trouble": "too-thick", "base_in_pot": "3 drops" }), "/base_in_pot", "amount-wrong-dimension")]
#[case(json!({ "trouble": "too-thick", "base_in_pot": "0 cup" }), "/base_in_pot", "out-of-range")]
#[case(json!({ "trouble": "too-thick", "hardness_now": 4, "hardness_wanted": 0.5 }), "/hardness_wanted", "softener-hardness-outside-points")]
#[case(json!({ "trouble": "too-thick", "hardness_now": 400, "hardness_wanted": 2 }), "/hardness_now", "out-of-range")]
#[case(json!({ "trouble": "too-thick", "with_material": "plum" }), "/with_material", "no-hardness-points")]
#[case(json!({ "trouble": "too-thick", "with_material": "softner" }), "/with_material", "unknown-name")]
#[case(json!({ "pot": "A" }), "", "missing-field")]
fn slips_in_the_request(#[case] change: Value, #[case] path: &str, #[case] code: &str) {
    let mut request = json!({ "calculate": "troubles" });
    for (field, value) in change.as_object().expect("fields") {
        request[field] = value.clone();
    }
    let faults = ask_of(&book(), &request).expect_err("a slip");
    assert_eq!((&faults[0]["path"], &faults[0]["code"]), (&json!(path), &json!(code)), "{faults}");
}

#[rstest]
#[case(json!({ "scale": "squeeze", "points": [{ "point_ratio": "0 %", "point_hardness": 5 }] }), "softener", "/points")]
#[case(json!({ "scale": "squeeze", "points": [
    { "point_ratio": "0 %", "point_hardness": 5 }, { "point_ratio": "5 %", "point_hardness": 500 }
] }), "softener", "/points/1/point_hardness")]
#[case(json!({ "scale": "squeeze", "points": [
    { "point_ratio": "0 %", "point_hardness": 5 }, { "point_ratio": "5 %", "point_hardness": 5 }
] }), "softener", "/points")]
#[case(json!({ "scale": "squeeze", "points": [
    { "point_ratio": "0 %", "point_hardness": 5 }, { "point_ratio": "5 %", "point_hardness": 4 }
] }), "plum", "")]
fn readings_that_make_no_curve_are_faults_of_the_book(
    #[case] hardness: Value,
    #[case] material: &str,
    #[case] path: &str,
) {
    let mut book = json(BOOK);
    book["materials"][material]["hardness"] = hardness;
    let faults = LoadedBook::from_text(&book.to_string()).expect_err("no curve");
    let paths: Vec<String> = faults.iter().map(|fault| fault.path.clone()).collect();
    assert_eq!(paths, [format!("/materials/{material}/hardness{path}")], "{faults}");
}

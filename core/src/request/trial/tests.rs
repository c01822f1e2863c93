use alloc::string::String;
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::LoadedBook;

#[rstest]
#[case(0.0, "0 %")]
#[case(0.000_004, "0 %")]
#[case(0.000_01, "+0.001 %")]
#[case(0.012_345_6, "+1.235 %")]
#[case(-0.25, "-25.000 %")]
fn a_small_deviation_is_shown_to_a_thousandth(#[case] off: f64, #[case] expected: &str) {
    assert_eq!(fine_signed_percent(Ratio::from(off)), expected);
}

/// Materials of a scale's own numbers; a plain body that has a pearl of its own.
const BOOK: &str = r#"{
    "format": "pourwright/1.0", "measures": "metric", "default_base": "clear",
    "materials": {
        "clear": { "kind": "plastisol", "density": "1 g/mL ± 0.01" },
        "firm": { "kind": "plastisol", "density": "1 g/mL ± 0.01" },
        "oil": { "kind": "softener", "density": "1 g/mL ± 0.01" },
        "blue": { "kind": "colorant", "density": "1 g/mL ± 0.01" },
        "shine": { "kind": "pearl", "density": "3 g/mL ± 0.1", "as_scooped": "0.5 g/mL ± 0.1" }
    },
    "formulas": {
        "body": { "per": "100 g", "base": "clear", "doses": { "oil": "5 g", "shine": "1 g" } },
        "plain": { "per": "100 g", "base": "clear", "doses": { "oil": "10 g" } }
    },
    "molds": { "worm": { "cavities": 4, "cavity": "9.5 mL", "sprue": "6 mL" } },
    "bench": {
        "balance": { "reads": "0.1 g", "to": "5 kg" }, "spoons": ["1 tsp"],
        "cups": [{ "holds": "1 L", "marks": "100 mL" }],
        "injector": { "holds": "100 mL", "keeps": "4 mL" }
    }
}"#;

/// Lines of the answer, and the sides of its parts.
fn ask(trial: &Value, more: &Value) -> (Vec<String>, Vec<(String, String)>) {
    let book = LoadedBook::from_text(BOOK).unwrap_or_else(|faults| panic!("{faults}"));
    let mut request = json!({ "calculate": "trial", "trial": trial });
    for (field, value) in more.as_object().unwrap() {
        request[field] = value.clone();
    }
    let answer: Value = serde_json::from_str(&book.answer_text(&request.to_string())).unwrap();
    assert_eq!(answer["faults"], Value::Null, "{answer}");
    let text = |value: &Value| value.as_str().unwrap().to_string();
    let lines = answer["result"]["text"].as_array().unwrap().iter().map(text).collect();
    let parts = answer["result"]["cup"].as_array().unwrap().iter();
    (lines, parts.map(|part| (text(&part["material"]), text(&part["side"]))).collect())
}

fn starts(lines: &[String]) -> Vec<&str> {
    lines.iter().map(|line| line.split_inclusive([':', '.']).next().unwrap()).collect()
}

fn sides(list: &[(&str, &str)]) -> Vec<(String, String)> {
    list.iter().map(|(material, side)| (material.to_string(), side.to_string())).collect()
}

#[test]
fn base_alone_is_its_own_body() {
    let (lines, parts) =
        ask(&json!({ "start": "200 g", "log": [{ "taken": "50 g" }] }), &json!({}));
    assert_eq!(lines[0], "In the cup: 150 g, 150 mL (5/8 cup), after 50 g taken out.");
    assert_eq!(lines[1], "Body: clear 100 g alone.");
    assert_eq!(starts(&lines), ["In the cup:", "Body:", "How sure:"]);
    assert_eq!(parts, sides(&[("clear", "base")]));
}

#[test]
fn a_color_and_a_body_of_the_book_are_named() {
    let trial = json!({ "start": "200 g", "formulas": ["body"],
        "log": [{ "blue": "1 g" }, { "shine": "2 g" }] });
    let (lines, parts) = ask(&trial, &json!({ "save_as": "night" }));
    assert_eq!(lines[1], "Color per 100 g: blue 0.5 g, shine 1 g.");
    assert_eq!(lines[2], "Body: body.");
    assert_eq!(
        lines[4..],
        ["Combine it with its body by \"overlap\": \"add\".", "To save: \"night\"."]
    );
    // By kind: plastisol, softener, color, pearl.
    let expected = [("clear", "base"), ("oil", "body"), ("blue", "color"), ("shine", "both")];
    assert_eq!(parts, sides(&expected));
}

#[test]
fn a_body_that_the_book_does_not_have_is_written_out() {
    let trial =
        json!({ "start": "200 g", "base": "firm", "log": [{ "oil": "2 g" }, { "blue": "1 g" }] });
    let (lines, parts) = ask(&trial, &json!({ "per": "300 g" }));
    assert_eq!(lines[1], "Color per 300 g: blue 1.5 g.");
    assert_eq!(lines[2], "Body, not in the book, per 300 g: firm 300 g, oil 3 g.");
    assert_eq!(parts, sides(&[("firm", "base"), ("oil", "body"), ("blue", "color")]));
    assert!(!lines.iter().any(|line| line.starts_with("To save") || line.starts_with("Combine")));
}

#[test]
fn a_body_of_its_own_keeps_the_pearl_of_the_one_that_it_started_from() {
    let trial = json!({ "start": "200 g", "formulas": ["body"],
        "log": [{ "oil": "5 g" }, { "shine": "2 g" }, { "blue": "1 g" }] });
    let (lines, parts) = ask(&trial, &json!({}));
    assert!(lines[2].starts_with("Body, not in the book, per 100 g: clear 100 g, "), "{lines:?}");
    let expected = [("clear", "base"), ("oil", "body"), ("blue", "color"), ("shine", "both")];
    assert_eq!(parts, sides(&expected));
}

/// How a sample looked goes with the formula only if nothing was added after it.
#[rstest]
#[case(json!([{ "blue": "1 g" }, { "looks": { "lab": [50, 10, -20] } }, { "taken": "5 g" }]), true)]
#[case(json!([{ "looks": { "lab": [50, 10, -20] } }, { "blue": "1 g" }]), false)]
#[case(json!([{ "blue": "1 g" }, { "looks": { "lab": [50, 10, -20] } }, "again"]), false)]
#[case(json!([{ "blue": "1 g" }]), false)]
fn the_last_look_is_kept_with_the_formula(#[case] log: Value, #[case] is_kept: bool) {
    let book = LoadedBook::from_text(BOOK).unwrap();
    let trial = json!({ "start": "200 g", "formulas": ["body"], "log": log });
    let request = json!({ "calculate": "trial", "trial": trial, "save_as": "night" });
    let answer: Value = serde_json::from_str(&book.answer_text(&request.to_string())).unwrap();
    let color = &answer["result"]["color"];
    assert!(color["doses"]["blue"].is_string(), "{answer}");
    let kept = if is_kept { json!({ "lab": [50.0, 10.0, -20.0] }) } else { Value::Null };
    assert_eq!(color["color"], kept, "{answer}");
}

// 1 g in 300 g is 0.3333 g in 100 g; the digits that are left out are named.
#[test]
fn what_was_rounded_is_said() {
    let trial = json!({ "start": "300 g", "log": [{ "blue": "1.0001 g" }] });
    let (lines, _) = ask(&trial, &json!({}));
    let rounded: Vec<&String> =
        lines.iter().filter(|line| line.starts_with("Rounded: blue ")).collect();
    let (exact, _) = ask(&json!({ "start": "300 g", "log": [{ "blue": "3 g" }] }), &json!({}));
    assert!(!exact.iter().any(|line| line.starts_with("Rounded")));
    assert!(rounded.len() == 1, "{lines:?}");
}

#[test]
fn the_least_sure_dose_says_why() {
    let trial = json!({ "start": "200 g", "log": [{ "shine": "1 tsp" }, { "blue": "20 g" }] });
    let (lines, _) = ask(&trial, &json!({}));
    let how = lines.iter().find(|line| line.starts_with("How sure: ")).unwrap();
    assert!(how.ends_with("; mostly leveling the spoon of shine."), "{how}");
}

/// 40 g of color in 100 g of base is more than 30 %: it looks like a slip, and stood in the cup. What is as usual is not named.
#[test]
fn what_is_unusual_is_named_and_kept_as_sure() {
    let book = LoadedBook::from_text(BOOK).unwrap();
    let ask = |blue: &str| {
        let log = json!([{ "blue": blue, "shine": "1 g" }]);
        let trial = json!({ "start": "100 g", "base": "clear", "log": log });
        let request = json!({ "calculate": "trial", "trial": trial, "save_as": "night" });
        serde_json::from_str::<Value>(&book.answer_text(&request.to_string())).unwrap()
    };
    let unusual = |answer: &Value| {
        let lines = answer["result"]["text"].as_array().unwrap().iter();
        let lines = lines.filter_map(|line| line.as_str().unwrap().strip_prefix("Unusual: "));
        lines.map(ToString::to_string).collect::<Vec<String>>()
    };
    let answer = ask("40 g");
    assert_eq!(
        unusual(&answer),
        ["blue 40 g. Check what was written down before you keep it."],
        "{answer}"
    );
    assert_eq!(answer["result"]["write"][0]["value"]["sure"], json!(true), "{answer}");
    // At the limit it is as usual, and a book needs no word of it.
    let answer = ask("30 g");
    assert_eq!(unusual(&answer), [""; 0], "{answer}");
    assert_eq!(answer["result"]["write"][0]["value"].get("sure"), None, "{answer}");
    // More than twice as much color as base cannot be, whoever is sure of it: it is not saved.
    let answer = ask("201 g");
    let faults = answer["faults"].as_array().unwrap_or_else(|| panic!("{answer}"));
    assert_eq!(faults.len(), 1, "{answer}");
    assert_eq!(
        (&faults[0]["path"], &faults[0]["code"]),
        (&json!("/save_as"), &json!("cannot-be")),
        "{answer}"
    );
}

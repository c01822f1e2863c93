use alloc::string::{String, ToString};
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::OpenPlan;
use crate::document::small;
use crate::json::reader::read_value;
use crate::mix::Mix;
use crate::quantity::Mass;

/// A mix of these, in kg.
pub(super) fn kilograms(book: &Book, parts: &[(&str, f64)]) -> Mix {
    let mut mix = Mix::new();
    for (name, kilograms) in parts {
        mix.add(book.materials.find(name).unwrap(), Mass::from_si(*kilograms)).unwrap();
    }
    mix
}

/// The small book, which has two cups here, and a plan for these lines.
pub(super) fn morning(lines: &[&str]) -> (LoadedBook, PlanDocument) {
    let mut book: Value = serde_json::from_str(small::BOOK).unwrap();
    book["bench"]["cups"] =
        json!([{ "holds": "2 cup", "marks": "1/4 cup" }, { "holds": "4 cup", "marks": "1/2 cup" }]);
    let book = LoadedBook::from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
    let line = [r#"{ "order": "1", "product": "sky worm", "pieces": 4 }"#];
    let lines = if lines.is_empty() { &line[..] } else { lines };
    let plan = book.plan_text(&small::orders(&lines.join(", ")));
    (book, plan.unwrap_or_else(|faults| panic!("{faults}")))
}

pub(super) const SKY: &str = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
pub(super) const RUST: &str =
    r#"{ "order": "2", "mold": "worm", "formulas": ["rust", "body"], "pieces": 8 }"#;

/// The ids of the first so many steps of a pot.
pub(super) fn ticks(plan: &PlanDocument, pot: &str, most: u32) -> Vec<String> {
    let steps = plan.plan.steps.iter();
    let own = steps.filter(|step| step.at.iter().any(|at| at.pot == pot && at.number <= most));
    own.map(|step| step.id.clone()).collect()
}

pub(super) fn noon(
    lines: &[&str],
    now: impl FnOnce(&PlanDocument) -> Value,
) -> Result<Value, Value> {
    let (_, plan) = morning(lines);
    let now = now(&plan);
    noon_of(plan, now)
}

/// The answer of a plan that goes on, or the faults.
pub(super) fn noon_of(plan: PlanDocument, mut request: Value) -> Result<Value, Value> {
    request["calculate"] = "go-on".into();
    let open = OpenPlan::try_from(plan).unwrap();
    let mut answer: Value = serde_json::from_str(&open.answer_text(&request.to_string())).unwrap();
    match answer["faults"].take() {
        Value::Null => Ok(answer["result"].take()),
        faults => Err(faults),
    }
}

/// The sentences of an answer with a code.
pub(super) fn notes(answer: &Value, code: &str) -> Vec<String> {
    let changes = answer["changes"].as_array().unwrap().iter();
    let own = changes.filter(|note| note["code"] == code);
    own.map(|note| note["message"].as_str().unwrap().to_string()).collect()
}

#[rstest]
#[case(json!({}), false)]
#[case(json!({ "done": 3, "hot": true, "lost": false }), false)]
#[case(json!({ "left": "100 g" }), true)]
#[case(json!({ "parts": { "clear": "100 g" } }), true)]
#[case(json!({ "trial": { "start": "1 cup", "log": [] } }), true)]
#[case(json!({ "lost": true }), true)]
fn a_pot_differs_if_something_else_is_in_it(#[case] entry: Value, #[case] expected: bool) {
    let entry: PotNowEntry = read_value(&entry).unwrap();
    assert_eq!(entry.differs(), expected);
}

// With nothing changed the pots that are not begun keep their shots; else all that is not begun is planned again.
#[rstest]
#[case(json!({}), false)]
#[case(json!({ "broken_cups": ["4 cup"] }), true)]
#[case(json!({ "broken_molds": ["pair"] }), true)]
#[case(json!({ "good_pieces": [{ "line": 1, "pieces": 0 }] }), true)]
#[case(json!({ "more_lines": [{ "order": "9", "product": "sky worm", "pieces": 4 }] }), true)]
#[case(json!({ "pots_now": { "A": { "lost": true } } }), true)]
#[case(json!({ "pots_now": { "Z": { "parts": { "clear": "1 cup" } } } }), true)]
fn only_a_day_that_differs_is_planned_again(#[case] now: Value, #[case] changed: bool) {
    let answer = noon(&[SKY, RUST], |_| now).unwrap();
    let pots =
        answer["plan"]["made_from"]["orders"]["pots"].as_array().cloned().unwrap_or_default();
    let kept = pots.iter().any(|pot| pot["pot"] == "B" && pot["draws"].is_array());
    assert_eq!(kept, !changed, "{pots:?}");
}

#[rstest]
#[case(json!(["2 cup", "4 cup"]), "no-cup")]
#[case(json!(["3 cup"]), "cup-not-of-bench")]
// 473.176 473 mL are two cups; a millionth of them is the same cup.
#[case(json!(["473.17718 mL"]), "cup-not-of-bench")]
fn cups_that_broke_are_those_of_the_bench(#[case] cups: Value, #[case] code: &str) {
    let faults = noon(&[SKY], |_| json!({ "broken_cups": cups })).unwrap_err();
    assert_eq!(faults[0]["code"], code);
}

#[test]
fn a_cup_that_the_bench_lacks_is_met_with_those_that_it_has() {
    let faults = noon(&[SKY], |_| json!({ "broken_cups": ["3 cup"] })).unwrap_err();
    assert_eq!(faults[0]["message"], "The bench has no cup that holds 3 cup.");
    assert_eq!(faults[0]["help"], "Its cups hold 2 cup, 4 cup. Write one of these.");
}

#[test]
fn a_cup_is_known_by_its_capacity() {
    let answer = noon(&[SKY], |_| json!({ "broken_cups": ["473.17670 mL"] })).unwrap();
    assert_eq!(answer["plan"]["pots"][0]["cup_name"], "4-cup cup");
}

#[test]
fn pots_that_are_not_needed_any_more_are_named() {
    let all_good = json!([{ "line": 2, "pieces": 8 }]);
    let answer = noon(&[SKY, RUST], |_| json!({ "good_pieces": all_good })).unwrap();
    assert_eq!(notes(&answer, "pot-dropped"), ["Pot B is not needed any more."]);
    // One that is begun, or lost, is not dropped.
    let begun =
        |plan: &PlanDocument| json!({ "good_pieces": all_good, "ticks": ticks(plan, "B", 1) });
    let answer = noon(&[SKY, RUST], begun).unwrap();
    assert_eq!(notes(&answer, "pot-dropped"), Vec::<String>::new());
    assert_eq!(notes(&answer, "pot-not-used").len(), 1);
    let lost = json!({ "good_pieces": all_good, "pots_now": { "B": { "lost": true } } });
    let answer = noon(&[SKY, RUST], |_| lost).unwrap();
    assert_eq!(notes(&answer, "pot-dropped"), Vec::<String>::new());
    assert_eq!(notes(&answer, "pot-lost").len(), 1);
}

#[rstest]
#[case(0, "Order 9: 4 pieces of sky worm from pot A.")]
// What was measured is for the shots that it was begun for.
#[case(1, "Order 9: 4 pieces of sky worm from pot A (begun) and pot C.")]
fn a_new_line_names_the_pot_that_it_comes_from(#[case] done: u32, #[case] expected: &str) {
    let more = json!([{ "order": "9", "product": "sky worm", "pieces": 4 }]);
    let now = |plan: &PlanDocument| json!({ "more_lines": more, "ticks": ticks(plan, "A", done) });
    let answer = noon(&[SKY, RUST], now).unwrap();
    assert_eq!(notes(&answer, "line-added"), [expected]);
}

#[test]
fn lines_that_are_due_first_get_the_good_pieces() {
    let lines = [
        r#"{ "order": "1", "product": "sky worm", "pieces": 3 }"#,
        r#"{ "order": "2", "product": "sky worm", "pieces": 3, "promised": "2027-03-05" }"#,
        r#"{ "order": "3", "product": "sky worm", "pieces": 3, "promised": "2027-03-03" }"#,
    ];
    let good = json!([{ "line": 1, "pieces": 5 }]);
    let answer = noon(&lines, |_| json!({ "good_pieces": good })).unwrap();
    assert_eq!(
        notes(&answer, "pieces-counted"),
        [
            "Order 3, sky worm: 3 pieces good of 3, all of it is made.",
            "Order 2, sky worm: 2 pieces good of 3, 1 more to make.",
            "Order 1, sky worm: 0 pieces good of 3, 3 more to make.",
        ]
    );
    let lines = answer["plan"]["lines"].as_array().unwrap();
    let owed: Vec<(&str, u64)> = lines
        .iter()
        .map(|line| (line["order"].as_str().unwrap(), line["pieces"].as_u64().unwrap()))
        .collect();
    assert_eq!(owed, [("1", 3), ("2", 1)]);
}

#[test]
fn pieces_are_counted_by_shape() {
    let lines = [
        r#"{ "order": "1", "product": "sky pair", "shape": "long", "pieces": 7 }"#,
        r#"{ "order": "2", "product": "sky pair", "shape": "short", "pieces": 9 }"#,
    ];
    let good = json!([{ "line": 2, "pieces": 4 }]);
    let answer = noon(&lines, |_| json!({ "good_pieces": good })).unwrap();
    assert_eq!(
        notes(&answer, "pieces-counted"),
        ["Order 2, sky pair: 4 pieces good of 9, 5 more to make."]
    );
}

/// A plan as version 0.1.0 stored it: without what its lines and shots belong to.
fn as_stored_before(plan: &PlanDocument, mut change: impl FnMut(&mut Value)) -> PlanDocument {
    let mut plan: Value = serde_json::to_value(plan).unwrap();
    for line in plan["lines"].as_array_mut().unwrap() {
        line.as_object_mut().unwrap().remove("pooled_with");
    }
    for pot in plan["pots"].as_array_mut().unwrap() {
        let stages = pot["stages"].as_array_mut().unwrap().iter_mut();
        for draw in stages.flat_map(|stage| stage["draws"].as_array_mut().unwrap()) {
            draw.as_object_mut().unwrap().retain(|key, _| key != "line" && key != "layer");
            change(draw);
        }
    }
    serde_json::from_value(plan).unwrap_or_else(|faults| panic!("{faults}"))
}

#[test]
fn a_plan_of_an_older_version_goes_on_as_one_of_today() {
    let (_, plan) = morning(&[SKY, RUST]);
    let now = json!({ "ticks": ticks(&plan, "A", 1), "broken_cups": ["4 cup"] });
    let older = noon_of(as_stored_before(&plan, |_| {}), now.clone()).unwrap();
    assert_eq!(older, noon_of(plan, now).unwrap());
}

// Its orders have no such mold.
#[test]
fn shots_of_an_older_version_that_its_orders_do_not_show_are_refused() {
    let (_, plan) = morning(&[SKY]);
    let older = as_stored_before(&plan, |draw| draw["mold"] = "pair".into());
    let faults = noon_of(older, json!({})).unwrap_err();
    assert_eq!(
        (&faults[0]["code"], &faults[0]["path"]),
        (&json!("missing-field"), &json!("/plan/pots"))
    );
}

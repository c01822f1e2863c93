//! The order list of a day by noon; whole days with the demo are in `tests/go_on/`.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use crate::document::small;
use crate::go_on::tests::{RUST, SKY, morning, noon, noon_of, notes, ticks};

fn list(lines: &[&str]) -> Value {
    serde_json::from_str(&small::orders(&lines.join(", "))).unwrap()
}

/// Pieces of a worm that are made, as an order line.
fn made(what: Value) -> Value {
    let mut line = json!({ "order": "0", "product": "sky worm" });
    line.as_object_mut().unwrap().extend(what.as_object().unwrap().clone());
    json!([line])
}

/// Made and owed of each line.
fn counts(answer: &Value) -> Vec<(u64, u64)> {
    let count = |line: &Value, key: &str| line[key].as_u64().unwrap();
    let lines = answer["lines"].as_array().unwrap().iter();
    lines.map(|line| (count(line, "made"), count(line, "owed"))).collect()
}

#[test]
fn pieces_that_neither_the_plan_nor_the_day_before_it_had_are_new() {
    let other_sky = r#"{ "order": "9", "product": "sky worm", "pieces": 44 }"#;
    let now = json!({ "orders_now": list(&[other_sky, RUST]) });
    let answer = noon(&[SKY], |_| now).unwrap();
    assert_eq!(notes(&answer, "line-added"), ["Order 2: 8 pieces of rust + body from pot B."]);
    // A customer wants more of what was made before.
    let rust = json!([{ "order": "2", "mold": "worm", "formulas": ["rust", "body"], "pieces": 4 }]);
    let now = json!({ "orders_now": list(&[SKY, RUST]), "so_far": { "made": rust } });
    let answer = noon(&[SKY], |_| now).unwrap();
    assert_eq!(notes(&answer, "line-added"), Vec::<String>::new());
    assert_eq!(counts(&answer), [(0, 40), (4, 4)]);
}

#[test]
fn lines_that_are_due_first_get_what_is_made() {
    let lines = [
        r#"{ "order": "1", "product": "sky worm", "pieces": 3 }"#,
        r#"{ "order": "2", "product": "sky worm", "pieces": 3, "promised": "2027-03-05" }"#,
        r#"{ "order": "3", "product": "sky worm", "pieces": 3, "promised": "2027-03-03" }"#,
    ];
    let so_far = json!({ "made": made(json!({ "pieces": 5 })) });
    let now = json!({ "orders_now": list(&lines), "so_far": so_far });
    let answer = noon(&lines, |_| now).unwrap();
    assert_eq!(counts(&answer), [(0, 3), (2, 1), (3, 0)]);
}

#[rstest]
#[case(json!({ "pieces": 10 }))]
#[case(json!({ "packs": 2, "pack_of": 5 }))]
fn packs_that_are_made_count_as_their_pieces(#[case] ten: Value) {
    let now = json!({ "orders_now": list(&[SKY]), "so_far": { "made": made(ten) } });
    let answer = noon(&[SKY], |_| now).unwrap();
    assert_eq!(counts(&answer), [(10, 30)]);
    assert_eq!(
        answer["so_far"]["made"],
        json!([{ "order": "1", "product": "sky worm", "pieces": 10 }])
    );
}

// The shop took the product out of its book meanwhile; a single piece is made as well.
#[test]
fn what_was_made_is_kept_if_the_book_cannot_make_it_any_more() {
    let old = json!({ "order": "0", "product": "old worm", "pieces": 3 });
    let mut so_far = made(json!({ "pieces": 1 }));
    so_far.as_array_mut().unwrap().push(old.clone());
    let now = json!({ "orders_now": list(&[SKY]), "so_far": { "made": so_far } });
    let answer = noon(&[SKY], |_| now).unwrap();
    assert_eq!(
        answer["so_far"]["made"],
        json!([{ "order": "1", "product": "sky worm", "pieces": 1 }, old])
    );
}

#[test]
fn begun_pots_keep_their_lines_in_a_list_that_is_in_another_order() {
    let pairs = r#"{ "order": "3", "product": "sky pair", "shape": "long", "pieces": 4 }"#;
    let more = r#"{ "order": "4", "product": "sky pair", "shape": "long", "pieces": 2 }"#;
    let now = |plan: &crate::document::PlanDocument| {
        let mut done = ticks(plan, "A", 1);
        done.extend(ticks(plan, "B", 1));
        json!({ "ticks": done, "orders_now": list(&[RUST, more, SKY, pairs]) })
    };
    let answer = noon(&[SKY, RUST, pairs], now).unwrap();
    let pots = answer["plan"]["made_from"]["orders"]["pots"].as_array().unwrap();
    let lines: Vec<(&Value, Vec<&Value>)> = pots
        .iter()
        .map(|pot| {
            let draws = pot["draws"].as_array().unwrap();
            (&pot["pot"], draws.iter().map(|draw| &draw["line"]).collect())
        })
        .collect();
    // Of two lines for the same pieces the first.
    let (a, b) = ([&json!(2), &json!(3)], [&json!(1)]);
    assert_eq!(lines, [(&json!("A"), a.to_vec()), (&json!("B"), b.to_vec())]);
}

#[test]
fn leftovers_that_went_in_are_used_of_the_shelf() {
    let (book, _) = morning(&[]);
    let mut orders = list(&[SKY]);
    orders["shelf"] = json!([{ "name": "old", "mass": "104 g", "formulas": ["sky", "body"] }]);
    let plan = book.plan_text(&orders.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
    let ticks: Vec<String> = ticks(&plan, "A", 1);
    let mut now = json!({ "ticks": ticks, "orders_now": orders });
    let used = |now: &Value| {
        let answer = noon_of(plan.clone(), now.clone()).unwrap();
        answer["so_far"]["from_shelf"].clone()
    };
    assert_eq!(used(&now), json!({ "old": "104 g" }));
    now["so_far"] = json!({ "from_shelf": { "old": "20 g", "older": "30 g" } });
    assert_eq!(used(&now), json!({ "old": "124 g", "older": "30 g" }));
}

#[test]
fn what_nothing_was_used_of_is_not_listed() {
    let so_far =
        json!({ "used": { "clear": "0 g", "blue": "2 g" }, "from_shelf": { "old": "0 g" } });
    let now = json!({ "orders_now": list(&[SKY]), "so_far": so_far });
    let answer = noon(&[SKY], |_| now).unwrap();
    assert_eq!(answer["so_far"], json!({ "used": { "blue": "2 g" } }));
}

#[test]
fn lines_of_a_broken_mold_are_named_by_product_or_formulas() {
    let pairs = r#"{ "order": "3", "product": "sky pair", "shape": "long", "pieces": 4 }"#;
    let lines = [SKY, RUST, pairs];
    let now = json!({ "orders_now": list(&lines), "broken_molds": ["worm"] });
    let answer = noon(&lines, |_| now).unwrap();
    let not_made = answer["not_made"].as_array().unwrap().iter();
    let what: Vec<String> = not_made.map(|it| it["what"].as_str().unwrap().to_string()).collect();
    assert_eq!(what, ["sky worm", "rust + body"]);
}

//! What changed since: more pieces, bad ones, a lost cup, a broken mold, pots that no plan knew.

use pourwright_tests::demo::{STARTER, json};
use pourwright_tests::generate::documents;
use pourwright_tests::reference::plan::objections;
use proptest::test_runner::{Config, TestRunner};
use rstest::rstest;
use serde_json::{Value, json};

use crate::noon::Morning;

fn pot<'p>(plan: &'p Value, letter: &str) -> Option<&'p Value> {
    plan["pots"].as_array()?.iter().find(|pot| pot["pot"] == letter)
}

fn shots(pot: &Value, mold: &str) -> u64 {
    let stages = pot["stages"].as_array().into_iter().flatten();
    let draws = stages.flat_map(|stage| stage["draws"].as_array().into_iter().flatten());
    draws.filter(|draw| draw["mold"] == mold).map(|draw| draw["shots"].as_u64().unwrap_or(0)).sum()
}

fn codes(answer: &Value) -> Vec<&str> {
    let changes = answer["changes"].as_array().expect("changes").iter();
    changes.filter_map(|change| change["code"].as_str()).collect()
}

fn judged(answer: &Value) {
    let plan = &answer["plan"];
    let made_from = &plan["made_from"];
    let found = objections(&made_from["book"], &made_from["orders"], &json(STARTER), plan);
    assert!(found.is_empty(), "{}", found.join("\n"));
}

/// Eight pieces more: those that the hot pot still gives come from it, the rest from a further pot.
#[test]
fn more_pieces_come_from_the_hot_pot_first() {
    let morning = Morning::demo();
    let more = json!([{ "order": "40", "product": "dusk finger, salted", "pieces": 8 }]);
    let answer = morning
        .go_on(json!({ "pots_now": { "A": { "done": 9 } }, "more_lines": more }))
        .expect("a plan");
    judged(&answer);
    let plan = &answer["plan"];
    let a = pot(plan, "A").expect("pot A");
    assert_eq!(a["there"]["hot"], true);
    assert_eq!((shots(a, "stick-6"), shots(a, "finger-5")), (4, 1));
    assert_eq!(shots(pot(plan, "F").expect("a new pot"), "finger-5"), 2);
    assert_eq!(plan["work"][0]["from"][0]["pot"], "A");
    assert_eq!(codes(&answer), ["pot-goes-on", "line-added", "pot-added"]);
}

#[test]
fn three_bad_pieces_are_made_again() {
    let morning = Morning::demo();
    let request = json!({
        "pots_now": { "A": { "done": 5 } }, "good_pieces": [{ "line": 1, "pieces": 21 }]
    });
    let answer = morning.go_on(request).expect("a plan");
    judged(&answer);
    assert_eq!(answer["plan"]["lines"][0]["pieces"], 3);
    assert!(codes(&answer).contains(&"pieces-counted"));
}

#[test]
fn what_was_in_a_lost_cup_is_planned_again() {
    let morning = Morning::demo();
    let answer =
        morning.go_on(json!({ "pots_now": { "A": { "done": 5, "lost": true } } })).expect("a plan");
    judged(&answer);
    assert!(pot(&answer["plan"], "A").is_none());
    let again = pot(&answer["plan"], "F").expect("a new pot");
    assert_eq!((shots(again, "finger-5"), shots(again, "stick-6")), (9, 4));
}

#[test]
fn pieces_of_a_broken_mold_are_reported() {
    let morning = Morning::demo();
    let answer = morning
        .go_on(json!({ "pots_now": { "A": { "done": 5 } }, "broken_molds": ["stick-6"] }))
        .expect("a plan");
    judged(&answer);
    let not_made = answer["not_made"].as_array().expect("a list");
    let orders: Vec<&Value> = not_made.iter().map(|one| &one["order"]).collect();
    assert_eq!(orders, ["34", "37"]);
    let plan = answer["plan"].to_string();
    assert!(!plan.contains("\"mold\":\"stick-6\",\"shots\""), "a broken mold is shot");
}

/// A top color mixed before it turned out to be half of a laminate is just a pot that is there.
#[test]
fn a_trial_may_be_half_of_a_laminate() {
    let morning = Morning::demo();
    let trial = json!({ "trial": { "start": "1 cup", "formulas": ["shell", "plain"] } });
    let answer = morning.go_on(json!({ "pots_now": { "X": trial } })).expect("a plan");
    judged(&answer);
    let plan = &answer["plan"];
    let x = pot(plan, "X").expect("pot X");
    assert_eq!(x["stages"][0]["weigh"], json!([]));
    assert_eq!(x["stages"][0]["draws"][0]["together_with"], json!(["B"]));
    assert!(pot(plan, "C").is_none(), "its own pot is not needed any more");
}

/// A drop or two too much is kept; the rest of the pot goes in as planned.
#[test]
fn what_is_within_the_tolerance_is_kept() {
    let morning = Morning::demo();
    let parts =
        json!({ "clear-base": "3 1/4 cup", "plum": "107 drops", "stabilizer": "3 1/4 tsp" });
    let answer = morning
        .go_on(json!({ "pots_now": { "A": { "done": 1, "parts": parts } } }))
        .expect("a plan");
    judged(&answer);
    let a = pot(&answer["plan"], "A").expect("pot A");
    let weigh = a["stages"][0]["weigh"].as_array().expect("a list");
    let names: Vec<&Value> = weigh.iter().map(|one| &one["material"]).collect();
    assert_eq!(names, ["teal-flake"]);
}

/// No base goes into a pot that was heated, unless the book allows it; what is too strong is not used as it is.
#[test]
fn no_base_goes_into_a_pot_that_was_heated() {
    let morning = Morning::demo();
    let parts = json!({ "clear-base": "2 cup", "plum": "90 drops", "stabilizer": "2 tsp", "teal-flake": "1 tsp" });
    let pot_now =
        |heats: u32| json!({ "pots_now": { "A": { "done": 1, "parts": parts, "heats": heats } } });
    let heated = morning.go_on(pot_now(1)).expect("a plan");
    judged(&heated);
    assert!(pot(&heated["plan"], "A").is_none());
    assert!(codes(&heated).contains(&"pot-not-used"));
    let cold = morning.go_on(pot_now(0)).expect("a plan");
    judged(&cold);
    let a = pot(&cold["plan"], "A").expect("pot A");
    assert_eq!(a["stages"][0]["weigh"][0]["material"], "clear-base");
}

#[rstest]
#[case(json!({ "pots_now": { "A": { "done": 40 } } }), "no-such-step", "/pots_now/A/done")]
#[case(json!({ "pots_now": { "X": { "done": 1 } } }), "unknown-name", "/pots_now/X")]
#[case(json!({ "pots_now": { "A": { "done": 5, "shots": 2 } } }), "shots-without-shooting", "/pots_now/A/shots")]
#[case(json!({ "pots_now": { "A": { "done": 4, "shots": 7 } } }), "too-many-shots", "/pots_now/A/shots")]
#[case(json!({ "pots_now": { "A": { "left": "3 g" } } }), "left-of-nothing", "/pots_now/A/left")]
#[case(json!({ "pots_now": { "A": { "done": 5, "left": "9999 cup" } } }), "left-over-cup", "/pots_now/A/left")]
#[case(json!({ "pots_now": { "B": { "done": 5 }, "C": { "done": 3 } } }), "shot-together", "/pots_now/C")]
#[case(json!({ "ticks": ["dusk"] }), "no-such-step", "/ticks/0")]
#[case(json!({ "good_pieces": [{ "line": 12, "pieces": 1 }] }), "no-such-line", "/good_pieces/0/line")]
#[case(json!({ "broken_molds": ["fing"] }), "unknown-name", "/broken_molds/0")]
#[case(json!({ "broken_cups": ["3 cup"] }), "cup-not-of-bench", "/broken_cups/0")]
fn what_cannot_be_is_refused(#[case] request: Value, #[case] code: &str, #[case] path: &str) {
    let faults = Morning::demo().go_on(request).expect_err("a fault");
    assert_eq!((&faults[0]["code"], &faults[0]["path"]), (&json!(code), &json!(path)), "{faults}");
}

/// Whatever happens at noon, the new plan is right, and nothing that is owed is forgotten.
#[test]
fn plans_of_changed_days_are_right() {
    let starter = json(STARTER);
    let mut runner = TestRunner::new(Config { cases: 80, ..Config::with_source_file(file!()) });
    let days = (documents(), 0.0_f64..1.0, 0_u8..4, 1_u32..20);
    let result = runner.run(&days, |(documents, part, what, pieces)| {
        let (book, orders) = (documents.book.to_string(), documents.orders.to_string());
        let Ok(morning) = Morning::of(&book, &orders) else { return Ok(()) };
        let steps = (morning.steps().len() as f64 * part) as usize;
        let mut pots = morning.done(steps);
        let mut line = documents.orders["lines"][0].clone();
        let fields = line.as_object_mut().expect("a line");
        fields.retain(|name, _| !["packs", "pack_of"].contains(&name.as_str()));
        fields.insert("pieces".into(), pieces.into());
        let mut request = json!({});
        match what {
            0 => request["more_lines"] = json!([line]),
            1 => request["good_pieces"] = json!([{ "line": 1, "pieces": 0 }]),
            2 => {
                for (_, pot) in &mut pots {
                    pot["lost"] = true.into();
                }
            }
            _ => {
                for (_, pot) in &mut pots {
                    pot["hot"] = false.into();
                }
                request["more_lines"] = json!([line]);
            }
        }
        request["pots_now"] = pots.into();
        let answer = match morning.go_on(request) {
            Ok(answer) => answer,
            // A pot that was planned as large as the day allows may be too small for what is left; one that was heated may need
            // more base for more pieces (`docs::limits`).
            Err(faults)
                if [json!("pot-too-small-to-dose"), json!("pot-no-fresh-base")]
                    .contains(&faults[0]["code"]) =>
            {
                return Ok(());
            }
            Err(faults) => {
                return Err(proptest::test_runner::TestCaseError::fail(faults.to_string()));
            }
        };
        let plan = &answer["plan"];
        if !plan.is_null() {
            let made_from = &plan["made_from"];
            let found = objections(&made_from["book"], &made_from["orders"], &starter, plan);
            proptest::prop_assert!(found.is_empty(), "{what} after {steps}: {}", found.join("\n"));
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
}

/// Ticks at a lost pot do not hold for the one that takes its place.
#[test]
fn a_pot_that_takes_the_place_of_a_lost_one_is_another() {
    let morning = Morning::demo();
    let answer =
        morning.go_on(json!({ "pots_now": { "A": { "done": 1, "lost": true } } })).expect("a plan");
    judged(&answer);
    let plan = &answer["plan"];
    assert!(pot(plan, "A").is_none());
    let ids = answer["kept"].as_array().expect("ids");
    assert!(!ids.iter().any(|id| id.as_str().is_some_and(|id| id.starts_with("dusk + plain/"))));
}

/// The rest of the day is made from the book that is asked, which may know more than the morning's; a broken cup leaves it.
#[test]
fn a_formula_of_the_day_is_known_where_a_cup_is_broken() {
    let morning = Morning::demo();
    let mut book = morning.plan["made_from"]["book"].clone();
    book["formulas"]["dusk, deeper"] = book["formulas"]["dusk"].clone();
    let answer = pourwright::request::answer_value(&json!({
        "calculate": "go-on", "book": book, "plan": morning.plan, "broken_cups": ["1 cup"],
        "more_lines": [{
            "order": "40", "mold": "finger-5", "formulas": ["dusk, deeper", "plain"], "pieces": 8
        }],
    }));
    judged(&answer["result"]);
    let plan = &answer["result"]["plan"];
    assert_eq!(plan["lines"].as_array().expect("lines").last().expect("a line")["order"], "40");
    let cups = plan["made_from"]["book"]["bench"]["cups"].as_array().expect("cups");
    assert!(cups.iter().all(|cup| cup["holds"] != "1 cup"));
}

use super::*;
use crate::document::small::{BOOK, orders};
use crate::document::{book_from_text, orders_from_text};
use crate::plan::Plan;
use alloc::string::{String, ToString};
use serde_json::{Value, json};

fn plan(change: impl Fn(&mut Value), line: &str) -> Result<Plan, crate::fault::Faults> {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    change(&mut document);
    let book = book_from_text(&document.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let day = orders_from_text(&orders(line), &book).unwrap_or_else(|f| panic!("{f}"));
    Plan::make(&book, &day)
}

const LINE: &str = r#"{ "order": "1", "product": "sky worm", "pieces": 12 }"#;

#[test]
fn what_cannot_be_drawn_makes_no_spare_shot() {
    let spare = |plan: &Plan| plan.pots[0].stages[0].draws[0].spare_shots;
    let with_heel = |heel: &str| {
        let heel = heel.to_string();
        plan(move |book| book["bench"]["cups"][0]["heel"] = json!(heel), LINE).unwrap()
    };
    let without = plan(|_| {}, LINE).unwrap();
    let shot = without.pots[0].stages[0].draws[0].per_shot.quantity;
    for heel in ["1 g", "20 g", "40 g", "55 g"] {
        let plan = with_heel(heel);
        let left = plan.pots[0].left_over.quantity;
        let drawn = shot * f64::from(spare(&plan));
        let heel: f64 = heel.trim_end_matches(" g").parse().unwrap();
        assert!(left - drawn >= Mass::from_si(heel / 1e3) * (1.0 - 1e-9), "{heel}");
    }
}

#[test]
fn a_mold_larger_than_the_injector_is_refused_with_what_fits() {
    let refused = plan(|book| book["molds"]["worm"]["cavities"] = json!(40), LINE).unwrap_err();
    let fault = refused.iter().next().unwrap();
    assert_eq!((&*fault.path, &*fault.code), ("/lines/0", "batch-shot-does-not-fit"));
    assert!(fault.help.contains('g'), "{}", fault.help);
}

#[test]
fn more_than_the_book_allows_of_solids_is_refused() {
    let refused = plan(|book| book["limits"] = json!({ "solids": "1 %" }), LINE).unwrap_err();
    assert_eq!(refused.iter().next().unwrap().code, "too-many-solids");
}

#[test]
fn a_cup_is_never_fuller_than_the_book_allows() {
    let half = plan(|book| book["limits"] = json!({ "most_full": "50 %" }), LINE).unwrap();
    for stage in half.pots.iter().flat_map(|pot| &pot.stages) {
        assert!(stage.fills.quantity.si() <= 236.588_236_5e-6 * (1.0 + 1e-9));
    }
}

#[test]
fn what_one_pot_cannot_hold_is_spread_over_more() {
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 200 }"#;
    let plan = plan(|_| {}, line).unwrap();
    assert!(plan.pots.len() > 1);
    let made: u32 = plan.pots.iter().map(|pot| pot.stages[0].draws[0].pieces[0].made).sum();
    assert_eq!(made, 200);
    let names: Vec<String> = plan.pots.iter().map(|pot| pot.pot.clone()).collect();
    assert_eq!(plan.lines[0].pots, names);
}

#[test]
fn the_layers_of_a_piece_are_hot_together_in_pots_of_their_own() {
    let line = r#"{ "order": "1", "product": "two", "pieces": 12 }"#;
    let plan = plan(|_| {}, line).unwrap();
    assert_eq!(plan.lines[0].pots.len(), 2);
    for pot in &plan.pots {
        let with = &pot.stages[0].draws[0].together_with;
        assert!(with.len() == 1 && *with != [pot.pot.clone()], "{with:?}");
    }
}

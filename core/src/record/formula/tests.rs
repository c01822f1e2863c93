use alloc::vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::{book_from_text, orders_from_text, small};
use crate::plan::Plan;
use crate::quantity::{Measurable, Unit};
use crate::record::WentIn;

/// The small book with a body that has blue of its own, and a stage of its sky and body.
fn day() -> (Book, Stage) {
    let mut text: Value = serde_json::from_str(small::BOOK).unwrap();
    text["formulas"]["tinted"] =
        json!({ "per": "1 cup", "base": "clear", "doses": { "blue": "8 drops" } });
    let book = book_from_text(&text.to_string()).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let day = orders_from_text(&small::orders(line), &book).unwrap();
    let stage = Plan::make(&book, &day).unwrap().pots[0].stages[0].clone();
    (book, stage)
}

fn kilograms(mass: f64) -> Mass {
    Mass::from_si(mass)
}

fn units(unit: Unit) -> Measure {
    Measure::Units(vec![unit])
}

// Sky doses blue in drops; no formula of the stage doses red. Each is what went in at one stage: measured, or weighed in kg.
#[rstest]
#[case("blue", &[], Measure::Drops)]
#[case("red", &[], Measure::grams())]
#[case("red", &[(Some("1/4 tsp"), None)], units(Unit::TSP))]
// The last measure counts.
#[case("red", &[(Some("1/4 tsp"), None), (Some("2 g"), None)], Measure::grams())]
#[case("red", &[(Some("2 g"), None), (Some("1/4 tsp"), Some(0.002))], units(Unit::TSP))]
// What was only weighed is written as its formulas dose it; of what did not go in the earlier measure stays.
#[case("red", &[(Some("1/4 tsp"), None), (None, Some(0.002))], Measure::grams())]
#[case("blue", &[(Some("1/4 tsp"), None), (None, Some(0.002))], Measure::Drops)]
#[case("red", &[(Some("1/4 tsp"), None), (None, Some(0.0))], units(Unit::TSP))]
fn a_dose_is_in_the_measure_that_was_used(
    #[case] material: &str,
    #[case] stages: &[(Option<&str>, Option<f64>)],
    #[case] expected: Measure,
) {
    let (book, stage) = day();
    let material = book.materials.find(material).unwrap();
    let mut measures = Measures::default();
    for (measured, weighed) in stages {
        let measured = measured.map(|text| (Amount::parse(text).unwrap(), kilograms(0.002)));
        let one = WentIn { material, measured, weighed: weighed.map(kilograms) };
        measures.note(&stage, &Told { went_in: vec![&one], ..Told::default() }, &book);
    }
    assert_eq!(measures.of(material, &stage, &book), expected);
}

// 20 drops in a cup of base, of which a body may have its own 8.
#[rstest]
#[case(&["tinted"], Some("8 drops"), "12 drops")]
#[case(&["sky", "tinted"], Some("8 drops"), "12 drops")]
#[case(&["sky", "body"], None, "20 drops")]
fn what_a_body_doses_of_a_colorant_is_the_bodys(
    #[case] formulas: &[&str],
    #[case] of_body: Option<&str>,
    #[case] of_color: &str,
) {
    let (book, mut stage) = day();
    stage.formulas = formulas.iter().map(ToString::to_string).collect();
    let [clear, blue] = ["clear", "blue"].map(|name| book.materials.find(name).unwrap());
    let mut mix = Mix::new();
    mix.add(clear, kilograms(0.236_588_236_5 * 1.03)).unwrap();
    mix.add(blue, kilograms(20.0 * 0.045e-3)).unwrap();
    // One that did not go in is no dose.
    mix.add(book.materials.find("red").unwrap(), Mass::default()).unwrap();
    let written = written(&stage, &mix, &Measures::default(), &book).unwrap();
    let doses = |formula: &Formula| -> Vec<(MaterialId, String)> {
        formula.doses.iter().map(|dose| (dose.material, dose.amount.to_string())).collect()
    };
    let body: Vec<_> = of_body.into_iter().map(|dose| (blue, dose.to_string())).collect();
    assert_eq!(doses(&written.body), body);
    assert_eq!(doses(&written.color.unwrap()), [(blue, of_color.to_string())]);
}

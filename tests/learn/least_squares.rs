//! Estimates against those of NumPy and SciPy, general-purpose libraries: `least_squares.py` made the values.

use pourwright::learn::{Day, Learned, Reading, learn};
use pourwright::quantity::{Measured, Ratio};
use serde_json::Value;

const CASES: &str = include_str!("least_squares.jsonl");

fn cases() -> Vec<Value> {
    CASES.lines().map(|line| serde_json::from_str(line).expect("a case")).collect()
}

fn number(value: &Value) -> f64 {
    value.as_f64().expect("a number")
}

fn learned(case: &Value) -> Learned<Ratio> {
    let list = |key: &str| case[key].as_array().expect("a list").iter().map(number);
    let ratio = |key: &str| list(key).map(Ratio::from);
    let readings: Vec<_> = list("days")
        .zip(ratio("values"))
        .zip(ratio("own").zip(ratio("effects")))
        .enumerate()
        .map(|(place, ((day, value), (own, effect)))| {
            let spoon = if place % 3 == 0 { "one spoon" } else { "another" };
            Reading::new(Day::from_number(day as i32), value, own).sharing(spoon, effect)
        })
        .collect();
    let [book, unsure] = ["book", "unsure"].map(|key| Ratio::from(number(&case[key])));
    learn(&readings, Some(&Measured::new(book, unsure))).expect("an estimate")
}

fn near(got: f64, wanted: f64, what: &str, case: &Value) {
    assert!((got - wanted).abs() < 1e-8 * wanted.abs().max(1e-3), "{what}: {got} in {case}");
}

#[test]
fn means_and_lines_are_those_of_general_libraries() {
    let (mut trends, mut between) = (0, 0);
    for case in cases() {
        let got = learned(&case);
        assert!(got.with_book);
        let same = |got: Ratio, key: &str| near(got.value, number(&case[key]), key, &case);
        same(got.between, "between");
        same(got.of_days, "of_days");
        same(got.unsure_days, "unsure_days");
        same(got.value, "value");
        same(got.uncertainty, "uncertainty");
        between += u32::from(got.between.value > 0.0);
        assert_eq!(got.drift.is_some(), case["per_day"].is_number(), "{case}");
        if let Some(drift) = got.drift {
            same(drift.per_day, "per_day");
            same(drift.uncertainty, "unsure_per_day");
            trends += 1;
        }
    }
    assert!(trends > 5 && between > 15, "{trends} {between}");
}

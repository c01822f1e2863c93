//! The day's record: what was made, what it yielded, and the formula that makes it again.

use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

use crate::demo::{ask, book, fingers, list, number, of, orders};

fn plan(orders: Value) -> Value {
    ask(json!({ "calculate": "plan", "orders": orders })).expect("a plan")
}

fn record(plan: &Value, pots: Value) -> Result<Value, Value> {
    let actuals = json!({ "format": "pourwright/1.0", "pots": pots });
    ask(json!({ "calculate": "record", "plan": plan, "actuals": actuals }))
}

/// As planned, at the measures that the sheet chose: within what those are off.
#[test]
fn a_day_that_went_as_planned_is_its_plan() {
    let plan = plan(orders());
    let record = record(&plan, json!({})).expect("a record");
    assert_eq!(record["format"], "pourwright/1.0");
    for (pot, planned) in list(&record["pots"]).iter().zip(list(&plan["pots"])) {
        for (stage, planned) in list(&pot["stages"]).iter().zip(list(&planned["stages"])) {
            assert_eq!(stage["formulas"], planned["formulas"]);
            let held = number(&planned["holds"]);
            assert!((number(&stage["held"]) / held - 1.0).abs() < 0.02);
            for part in list(&stage["made"]) {
                assert!(number(&part["off"]).abs() < 0.05, "{part}");
            }
            for (draw, planned) in list(&stage["draws"]).iter().zip(list(&planned["draws"])) {
                assert_eq!(draw["shots"], planned["shots"]);
            }
        }
        assert_eq!(pot["lost"], Value::Null);
        assert_eq!(pot["heats"], planned["heats"]["count"]);
        assert_eq!(pot["spent"], planned["heats"]["budget"]["known"]["spent"]);
    }
    assert!(list(&record["molds"]).is_empty());
}

/// By hand: one pot of plain, all masses given, everything weighed.
#[test]
fn the_balance_of_a_pot_by_hand() {
    let plan = plan(fingers(&["plain"], 24));
    let draw = &plan["pots"][0]["stages"][0]["draws"][0];
    let shots = draw["shots"].as_u64().unwrap();
    let record = record(
        &plan,
        json!({ "A": { "notes": "first of the year", "stages": [{
        "weighed": { "clear-base": "400 g", "stabilizer": "10 g" },
        "draws": [{ "mold": "finger-5", "shots": shots, "pieces": [
            { "good": 4 * shots - 2, "weights": ["9.4 g", "9.6 g", "9.5 g"] }
        ] }],
        "left": "50 g"
    }] } }),
    )
    .expect("a record");
    let pot = &record["pots"][0];
    assert_eq!(pot["notes"], "first of the year");
    let stage = &pot["stages"][0];
    let stabilizer = of(&stage["made"], "stabilizer").expect("it is in");
    assert!((number(&stabilizer["of_base"]) - 0.025).abs() < 1e-15);
    // The plan's 1 tsp a cup: 4.928 921 594 mL of 1.02 g/mL in 236.588 236 5 mL of 1.03 g/mL.
    let planned = 4.928_921_593_75 * 1.02 / (236.588_236_5 * 1.03);
    assert!((number(&stabilizer["off"]) - (0.025 / planned - 1.0)).abs() < 1e-9);

    // A shot as planned, its four pieces at the 9.5 g that they were weighed to be.
    let piece = &draw["pieces"][0];
    let per_shot = number(&draw["per_shot"]) + 4.0 * (9.5 - number(&piece["weighs"]));
    let shot = per_shot * shots as f64;
    assert!((number(&pot["put_in"]) - 410.0).abs() < 1e-9);
    assert!((number(&pot["shot"]) - shot).abs() < 1e-9);
    assert!((number(&pot["lost"]) - (410.0 - shot - 50.0)).abs() < 1e-9);

    let pieces = &stage["draws"][0]["pieces"][0];
    assert_eq!(pieces["good"], 4 * shots - 2);
    assert!((number(&pieces["deviation"]) - 0.1).abs() < 1e-9);
    let yielded = pieces["good_per_shot"].as_f64().unwrap();
    assert!((yielded - (4 * shots - 2) as f64 / shots as f64).abs() < 1e-12);
    let mold = &record["molds"][0];
    let share = 2.0 / (4 * shots) as f64;
    assert!((number(&mold["rejects"]) - share).abs() < 1e-12);
    assert!(number(&mold["rejects_from"]) < share && share < number(&mold["rejects_to"]));
}

/// A stage begins with what the one before had left, of that composition.
#[test]
fn a_later_stage_goes_on_from_what_was_there() {
    let plan = plan(orders());
    let record = record(&plan, json!({ "A": { "stages": [
        { "weighed": { "clear-base": "800 g", "plum": "8 g", "stabilizer": "16 g", "teal-flake": "5 g" }, "left": "414.5 g" },
        { "weighed": { "softener": "20 g", "fine-salt": "150 g" } }
    ] } }))
    .expect("a record");
    let second = &record["pots"][0]["stages"][1];
    assert!((number(&second["held"]) - (414.5 + 170.0)).abs() < 1e-9);
    let ratio = |name: &str| number(&of(&second["made"], name).expect(name)["of_base"]);
    assert!((ratio("plum") - 0.01).abs() < 1e-12);
    // Half of the 829 g was left: 400 g of base.
    assert!((ratio("fine-salt") - 150.0 / 400.0).abs() < 1e-12);
    assert!((number(&of(&second["made"], "plum").unwrap()["added"])).abs() < 1e-12);
    assert_eq!(record["pots"][0]["stages"][0]["after_weighed"], true);
}

/// A recorded mix, saved in the book, is made again next year in the same proportions.
fn makes_it_again(record: &Value, pot: usize, stage: usize) {
    let made = &record["pots"][pot]["stages"][stage];
    let mut book = book();
    book["formulas"]["as made"] = made["formula"].clone();
    let orders = fingers(&["as made"], 24);
    let again =
        ask(json!({ "calculate": "plan", "orders": orders, "book": book })).expect("a plan");
    let list = list(&again["pots"][0]["stages"][0]["weigh"]);
    let bases: Vec<&Value> = list.iter().filter(|one| one["kind"] == "plastisol").collect();
    let base: f64 = bases.iter().map(|one| number(&one["wanted"])).sum();
    for one in list {
        let material = one["material"].as_str().unwrap();
        let ratio = number(&of(&made["made"], material).expect(material)["of_base"]);
        let again = number(&one["wanted"]) / base;
        assert!((again / ratio - 1.0).abs() < 1e-10, "{material}: {again} for {ratio}");
    }
    let made = made["made"].as_array().unwrap();
    assert_eq!(list.len(), made.iter().filter(|one| number(&one["mass"]) > 0.0).count());
}

#[test]
fn a_custom_color_comes_out_the_same_next_year() {
    let plan = plan(orders());
    let record = record(
        &plan,
        json!({ "A": { "stages": [
        { "weighed": { "plum": "131 drops", "silver-pearl": "1/4 tsp" } }
    ] } }),
    )
    .expect("a record");
    let pearl = of(&record["pots"][0]["stages"][0]["made"], "silver-pearl").expect("it went in");
    assert_eq!(pearl["off"], Value::Null);
    makes_it_again(&record, 0, 0);
    makes_it_again(&record, 0, 1);
    // A blend of two plastisols.
    let night = list(&record["pots"])
        .iter()
        .position(|pot| pot["stages"][0]["formulas"] == json!(["night", "firm"]));
    makes_it_again(&record, night.expect("the demo has it"), 0);
}

#[test]
fn what_came_from_the_shelf_is_in_the_formula_as_made() {
    let mut orders = orders();
    orders["shelf"] = json!([{ "name": "dusk", "formulas": ["dusk", "plain"], "mass": "120 g" }]);
    let plan = plan(orders);
    let record = record(&plan, json!({})).expect("a record");
    let first = &record["pots"][0]["stages"][0];
    let held = number(&plan["pots"][0]["stages"][0]["holds"]);
    assert!((number(&first["held"]) / held - 1.0).abs() < 0.02);
    makes_it_again(&record, 0, 0);
}

#[test]
fn the_pieces_of_a_laminate_are_counted_once() {
    let plan = plan(orders());
    let told = |good: u32| {
        json!({ "stages": [{ "draws": [
            { "mold": "minnow-3", "shots": 6, "pieces": [{ "good": good }] }
        ] }] })
    };
    let record = record(&plan, json!({ "B": told(33), "C": told(31) })).expect("a record");
    let mold = &record["molds"][0];
    assert_eq!((&mold["made"], &mold["good"]), (&json!(36), &json!(33)));
}

#[rstest]
#[case(json!({ "Z": { "stages": [] } }), "record-no-pot", "/actuals/pots/Z")]
#[case(json!({ "D": { "stages": [{}, {}] } }), "record-no-stage", "/actuals/pots/D/stages/1")]
#[case(json!({ "D": { "stages": [{ "weighed": { "rusty": "1 g" } }] } }), "unknown-name", "/actuals/pots/D/stages/0/weighed/rusty")]
#[case(json!({ "D": { "stages": [{ "draws": [{ "mold": "stick-6", "shots": 1 }] }] } }), "record-no-draw", "/actuals/pots/D/stages/0/draws/0/mold")]
#[case(json!({ "D": { "stages": [{ "draws": [{ "mold": "grub-2", "shots": 2, "pieces": [{ "good": 17 }] }] }] } }), "record-too-many-good", "/actuals/pots/D/stages/0/draws/0/pieces/0/good")]
#[case(json!({ "D": { "stages": [{ "draws": [{ "mold": "grub-2", "shots": 2, "pieces": [{ "shape": "long" }] }] }] } }), "record-no-shape", "/actuals/pots/D/stages/0/draws/0/pieces/0")]
#[case(json!({ "D": { "stages": [{ "left": "5 kg" }] } }), "record-left-more", "/actuals/pots/D/stages/0/left")]
#[case(json!({ "A": { "stages": [{ "draws": [{ "mold": "finger-5", "shots": 40 }] }] } }), "record-shot-more", "/actuals/pots/A/stages/0")]
#[case(json!({ "D": { "stages": [{ "weighed": { "clear-base": "0 g" } }] } }), "mix-no-base", "/actuals/pots/D/stages/0")]
#[case(json!({ "D": { "stages": [{ "draws": [{ "mold": "grub-2", "shots": -1 }] }] } }), "out-of-range", "/actuals/pots/D/stages/0/draws/0/shots")]
fn what_cannot_have_been(#[case] pots: Value, #[case] code: &str, #[case] path: &str) {
    let faults = record(&plan(orders()), pots).expect_err("it cannot have been");
    assert_eq!((&faults[0]["code"], &faults[0]["path"]), (&json!(code), &json!(path)), "{faults}");
}

#[test]
fn a_plan_that_is_none_is_refused_with_all_that_is_wrong() {
    let mut plan = plan(orders());
    plan["pots"][0]["cup"] = json!("large");
    plan["lines"][1]["pieces"] = json!("many");
    let faults = record(&plan, json!({})).expect_err("no plan");
    let mut found: Vec<(&Value, &Value)> = faults
        .as_array()
        .expect("faults")
        .iter()
        .map(|fault| (&fault["code"], &fault["path"]))
        .collect();
    found.sort_by_key(|(_, path)| path.to_string());
    assert_eq!(
        found,
        [
            (&json!("wrong-type"), &json!("/plan/lines/1/pieces")),
            (&json!("wrong-type"), &json!("/plan/pots/0/cup"))
        ]
    );
}

#[test]
fn the_text_keeps_to_eighty_columns() {
    use pourwright::record::Record;
    let plan = plan(orders());
    let mut answer = record(&plan, json!({
        "A": { "stages": [{ "weighed": { "plum": "131 drops" }, "left": "430 g", "draws": [
            { "mold": "finger-5", "shots": 8, "pieces": [{ "good": 30, "weights": ["9.4 g", "9.6 g"] }] }
        ] }] },
        "D": { "stages": [{ "left": "20 g" }] }
    }))
    .expect("a record");
    answer.as_object_mut().unwrap().remove("calculate");
    let read: Record = serde_json::from_value(answer.clone()).expect("it reads back");
    assert_eq!(serde_json::to_value(&read).unwrap(), answer);
    let text = read.sheet().to_string();
    assert!(text.contains("What was left, and its sprues: 3 heats, 9.9 min spent."), "{text}");
    for line in text.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
    for part in ["RECORD  2027-03-02", "8 shots (7 planned)", "30 good (3.75 a shot)", "95 % sure"]
    {
        assert!(text.contains(part), "{part} in\n{text}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    /// Whatever went in comes back by its formula.
    #[test]
    fn any_pot_is_made_again(plum in 20_u32..400, salt in 0_u32..120, base in 300_u32..900) {
        let plan = plan(fingers(&["dusk", "plain"], 40));
        let record = record(&plan, json!({ "A": { "stages": [{ "weighed": {
            "plum": format!("{plum} drops"),
            "fine-salt": format!("{salt} g"),
            "clear-base": format!("{base} g"),
        }, "draws": [{ "mold": "finger-5", "shots": 0 }] }] } })).expect("a record");
        makes_it_again(&record, 0, 0);
    }
}

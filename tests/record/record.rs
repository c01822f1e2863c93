//! The day's record: what was made, what it yielded, and the formula that makes it again.

use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

use crate::demo::{actuals, ask, book, fingers, list, number, of, orders};

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
        json!({ "A": {
            "went_in": { "clear-base": "400 g", "stabilizer": "10 g" },
            "molds": { "finger-5": { "good": 4 * shots - 2, "weights": ["9.4 g", "9.6 g", "9.5 g"] } },
            "left": "50 g",
            "notes": "first of the year"
        } }),
    )
    .expect("a record");
    let pot = &record["pots"][0];
    assert_eq!(pot["notes"], json!(["first of the year"]));
    let stage = &pot["stages"][0];
    let stabilizer = of(&stage["made"], "stabilizer").expect("it is in");
    assert!((number(&stabilizer["of_base"]) - 0.025).abs() < 1e-15);
    // The plan's 1 tsp a cup: 4.928 921 594 mL of 1.02 g/mL in 236.588 236 5 mL of 1.03 g/mL.
    let planned = 4.928_921_593_75 * 1.02 / (236.588_236_5 * 1.03);
    assert!((number(&stabilizer["off"]) - (0.025 / planned - 1.0)).abs() < 1e-9);

    // The mix as made: 400 g of 1.042 g/mL and 10 g of 1.02 g/mL cold; 6.5e-4 and 7e-4 1/K up to the middle of
    // 325 °F to 350 °F, 169.722 °C. The four pieces weigh 9.5 g, and the sprue what 60 % of the contraction leaves of it.
    let rise = (337.5 - 32.0) / 1.8 - 20.0;
    let cold = 410.0 / (400.0 / 1.042 + 10.0 / 1.02);
    let hot = 410.0 / (400.0 / 1.042 * (1.0 + 6.5e-4 * rise) + 10.0 / 1.02 * (1.0 + 7e-4 * rise));
    assert!((number(&stage["density"]) - cold).abs() < 1e-12);
    assert!((number(&stage["hot_density"]) - hot).abs() < 1e-12);
    let expected = 9.5 * (hot + 0.6 * (cold - hot));
    let piece = &stage["draws"][0]["pieces"][0];
    assert!((number(&piece["expected"]) - expected).abs() < 1e-12);
    let per_shot = 44.0 * hot + 4.0 * (9.5 - expected);
    assert!((number(&stage["draws"][0]["per_shot"]) - per_shot).abs() < 1e-9);
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
    let record = record(&plan, json!({ "A": [
        { "went_in": { "clear-base": "800 g", "plum": "8 g", "stabilizer": "16 g", "teal-flake": "5 g" }, "left": "414.5 g" },
        { "went_in": { "softener": "20 g", "fine-salt": "150 g" } }
    ] }))
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

/// A recorded mix, saved in the book as color and body, is made again next year in the same proportions: to the 0.1 %
/// that a dose is written to.
fn makes_it_again(record: &Value, pot: usize, stage: usize) {
    let made = &record["pots"][pot]["stages"][stage];
    let mut book = book();
    book["formulas"]["body as made"] = made["body"].clone();
    let mut formulas = vec!["body as made"];
    if made["color"].is_object() {
        book["formulas"]["color as made"] = made["color"].clone();
        formulas.push("color as made");
    }
    let orders = fingers(&formulas, 24);
    let again =
        ask(json!({ "calculate": "plan", "orders": orders, "book": book })).expect("a plan");
    let list = list(&again["pots"][0]["stages"][0]["weigh"]);
    let bases: Vec<&Value> = list.iter().filter(|one| one["kind"] == "plastisol").collect();
    let base: f64 = bases.iter().map(|one| number(&one["wanted"])).sum();
    for one in list {
        let material = one["material"].as_str().unwrap();
        let ratio = number(&of(&made["made"], material).expect(material)["of_base"]);
        let again = number(&one["wanted"]) / base;
        assert!((again / ratio - 1.0).abs() < 1.1e-3, "{material}: {again} for {ratio}");
    }
    let made = made["made"].as_array().unwrap();
    assert_eq!(list.len(), made.iter().filter(|one| number(&one["mass"]) > 0.0).count());
}

/// By hand: 131 drops in 792 g of base are 40.3 in the 243.7 g that a cup holds.
#[test]
fn formulas_as_made_are_in_the_measures_that_were_used() {
    let plan = plan(orders());
    let found = record(
        &plan,
        json!({ "A": [
            { "went_in": { "plum": { "measured": "131 drops", "weighed": "6.1 g" }, "silver-pearl": "1/4 tsp" } },
            { "went_in": { "fine-salt": "185 g" } }
        ] }),
    )
    .expect("a record");
    let base =
        number(&of(&plan["pots"][0]["stages"][0]["weigh"], "clear-base").unwrap()["best"]["gives"]);
    let cups = base / (236.588_236_5 * 1.03);
    let stages = &found["pots"][0]["stages"];
    assert_eq!((&stages[0]["per"], &stages[0]["color"]["per"]), (&json!("1 cup"), &json!("1 cup")));
    let dose = |stage: usize, side: &str, material: &str| {
        let text = stages[stage][side]["doses"][material].as_str().unwrap_or("none").to_owned();
        let (number, unit) =
            text.split_once(' ').map(|(n, u)| (n.to_owned(), u.to_owned())).unwrap_or_default();
        (number.parse::<f64>().unwrap_or(f64::NAN), unit)
    };
    for stage in [0, 1] {
        // As counted, whatever the scale showed: next year's drops are counted again.
        let (drops, unit) = dose(stage, "color", "plum");
        assert_eq!(unit, "drops");
        assert!((drops * cups / 131.0 - 1.0).abs() < 1.1e-3, "{drops}");
    }
    let (spoons, unit) = dose(0, "color", "silver-pearl");
    assert_eq!(unit, "tsp");
    assert!((spoons * cups / 0.25 - 1.0).abs() < 1.1e-3, "{spoons}");
    // The drops of the sheet, of which only the scale was read.
    let weighed = record(&plan, json!({ "C": { "went_in": { "chalk": { "weighed": "1.3 g" } } } }))
        .expect("a record");
    assert_eq!(weighed["pots"][2]["stages"][0]["color"]["doses"]["chalk"], "40 drops");
    assert_eq!(stages[0]["color"]["doses"].as_object().unwrap().len(), 3);
    assert_eq!(stages[0]["color"]["base"], Value::Null);
    assert_eq!(stages[1]["body"]["base"], "clear-base");
    assert_eq!(dose(1, "body", "fine-salt").1, "g");
    assert_eq!(stages[1]["color"]["doses"]["fine-salt"], Value::Null);
}

#[test]
fn a_custom_color_comes_out_the_same_next_year() {
    let plan = plan(orders());
    let record = record(
        &plan,
        json!({ "A": [{ "went_in": { "plum": "131 drops", "silver-pearl": "1/4 tsp" } }] }),
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

/// What a day shows of the book's numbers is kept as it was seen.
#[test]
fn observations_are_kept() {
    let plan = plan(orders());
    let sheet = of(&plan["pots"][3]["stages"][0]["weigh"], "rust").expect("ember has rust");
    let drops: f64 =
        sheet["best"]["measure"].as_str().unwrap().split(' ').next().unwrap().parse().unwrap();
    let record = record(&plan, json!({
        "D": {
            "went_in": {
                "rust": { "weighed": "1.9 g" },
                "stabilizer": { "measured": "1 tsp", "weighed": "5.1 g" },
                "black-flake": "1.2 g"
            },
            "heats": [{ "time": "150 s", "from": "68 °F", "to": "338 °F" }, { "time": "40 s", "setting": "70 %" }],
            "injector": ["4.1 g", "3.9 g"],
            "molds": { "grub-2": { "took": "7 min", "weights": [{ "count": 3, "weigh": "6.3 g" }, "2.2 g"] } },
            "left": "21 g"
        }
    }))
    .expect("a record");
    let stage = &record["pots"][3]["stages"][0];
    let rust = of(&stage["pairs"], "rust").expect("it was weighed");
    assert_eq!(rust["drops"], json!(drops));
    assert!((number(&rust["weighed"]) - 1.9).abs() < 1e-12);
    assert!((number(&rust["by_book"]) - 0.047 * drops).abs() < 1e-9);
    let spooned = of(&stage["pairs"], "stabilizer").expect("it was weighed");
    assert!((number(&spooned["volume"]) - 4.928_921_593_75).abs() < 1e-12);
    assert!((number(&of(&stage["made"], "stabilizer").unwrap()["mass"]) - 5.1).abs() < 1e-12);
    assert_eq!(of(&stage["pairs"], "black-flake"), None);

    let timed = list(&stage["timed"]);
    assert!((number(&timed[0]["mass"]) - number(&stage["held"])).abs() < 1e-12);
    assert_eq!((&timed[0]["first"], &timed[1]["first"]), (&json!(true), &json!(false)));
    assert_eq!((&timed[1]["mass"], number(&timed[1]["setting"])), (&Value::Null, 0.7));
    assert!((number(&timed[0]["time"]) - 150.0).abs() < 1e-9);
    assert_eq!(stage["heats"], 2);
    assert_eq!(number(&stage["injector"][1]), 3.9);
    let draw = &stage["draws"][0];
    assert_eq!(number(&draw["took"]), 420.0);
    let pieces = &draw["pieces"][0];
    assert_eq!((&pieces["weighed"], &pieces["weights"][0]["count"]), (&json!(4), &json!(3)));
    assert!((number(&pieces["weighs"]) - 8.5 / 4.0).abs() < 1e-12);
    assert_eq!(pieces["deviation"], Value::Null);
}

/// What the injector kept is no longer in the cup.
#[test]
fn the_injector_keeps_what_it_was_weighed_to_keep() {
    let plan = plan(orders());
    let after = |actuals: Value| {
        let record = record(&plan, json!({ "D": actuals })).expect("a record");
        number(&record["pots"][3]["stages"][0]["after"])
    };
    let planned = after(json!({}));
    assert!(
        (after(json!({ "injector": "5 g" })) - after(json!({ "injector": "3 g" })) + 2.0).abs()
            < 1e-9
    );
    // A heat more leaves the 4 mL of the book in the injector once more.
    let reheats = plan["pots"][3]["stages"][0]["heats"].as_u64().unwrap();
    let kept = planned - after(json!({ "reheats": reheats }));
    assert!((3.5..4.2).contains(&kept), "{kept}");
}

#[test]
fn the_pieces_of_a_laminate_are_counted_once() {
    let plan = plan(orders());
    let told = |good: u32| json!({ "molds": { "minnow-3": { "shots": 6, "good": good } } });
    let record = record(&plan, json!({ "B": told(33), "C": told(31) })).expect("a record");
    let mold = &record["molds"][0];
    assert_eq!((&mold["made"], &mold["good"]), (&json!(36), &json!(33)));
}

#[rstest]
#[case(json!({ "Z": {} }), "record-no-pot", "/actuals/pots/Z")]
#[case(json!({ "D": [{}, {}] }), "record-no-stage", "/actuals/pots/D/1")]
#[case(json!({ "D": { "went_in": { "rusty": "1 g" } } }), "unknown-name", "/actuals/pots/D/went_in/rusty")]
#[case(json!({ "D": { "went_in": { "rust": { "measured": "1 kPa" } } } }), "amount-wrong-dimension", "/actuals/pots/D/went_in/rust/measured")]
#[case(json!({ "A": { "went_in": { "chalk": "1 g" } } }), "record-which-stage", "/actuals/pots/A/went_in/chalk")]
#[case(json!({ "A": { "reheats": 1 } }), "record-which-stage", "/actuals/pots/A/reheats")]
#[case(json!({ "A": { "molds": { "finger-5": { "shots": 1 } } } }), "record-which-draw", "/actuals/pots/A/molds/finger-5")]
#[case(json!({ "D": { "reheats": 0, "heats": [{ "time": "90 s" }, { "time": "60 s" }] } }), "record-timed-more", "/actuals/pots/D")]
#[case(json!({ "D": { "molds": { "stick-6": { "shots": 1 } } } }), "record-no-draw", "/actuals/pots/D/molds/stick-6")]
#[case(json!({ "D": { "molds": { "grub-2": [{}, {}] } } }), "record-no-draw", "/actuals/pots/D/molds/grub-2/1")]
#[case(json!({ "D": { "molds": { "grub-2": { "shots": 2, "good": 17 } } } }), "record-too-many-good", "/actuals/pots/D/molds/grub-2/good")]
#[case(json!({ "D": { "molds": { "grub-2": { "shots": 1, "weights": { "count": 9, "weigh": "19 g" } } } } }), "record-too-many-weighed", "/actuals/pots/D/molds/grub-2/weights")]
#[case(json!({ "D": { "molds": { "grub-2": { "shapes": { "long": {} } } } } }), "record-no-shape", "/actuals/pots/D/molds/grub-2/shapes/long")]
#[case(json!({ "D": { "left": "5 kg" } }), "record-left-more", "/actuals/pots/D/left")]
#[case(json!({ "A": [{ "molds": { "finger-5": { "shots": 40 } } }] }), "record-shot-more", "/actuals/pots/A/0")]
#[case(json!({ "D": { "went_in": { "clear-base": "0 g" } } }), "mix-no-base", "/actuals/pots/D")]
#[case(json!({ "D": { "molds": { "grub-2": { "shots": -1 } } } }), "out-of-range", "/actuals/pots/D/molds/grub-2/shots")]
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
fn the_text_fits_a_page() {
    use pourwright::request::RecordDocument;
    let plan = plan(orders());
    let mut answer = ask(json!({ "calculate": "record", "plan": plan, "actuals": actuals() }))
        .expect("a record");
    answer.as_object_mut().unwrap().remove("calculate");
    let read: RecordDocument = serde_json::from_value(answer.clone()).expect("it reads back");
    assert_eq!(serde_json::to_value(&read).unwrap(), answer);
    let text = read.record.sheet().to_string();
    assert_eq!(text.lines().collect::<Vec<_>>(), read.text);
    assert!(text.lines().count() <= 60, "{text}");
    for line in text.lines() {
        assert!(line.chars().count() <= 80, "{line}");
    }
    for part in [
        "RECORD  2027-03-02",
        "teal-flake: 8.13 g went in",
        "25 good of 28 made, 24 ordered",
        "finger-5: 60 good of 64, rejects 6.3 %",
        "New formula \"dusk, more flake\", as made in pot A.",
        "ember, tin 4: ",
    ] {
        assert!(text.contains(part), "{part} in\n{text}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(12))]

    /// Whatever went in comes back by its formula.
    #[test]
    fn any_pot_is_made_again(plum in 20_u32..400, salt in 0_u32..120, base in 300_u32..900) {
        let plan = plan(fingers(&["dusk", "plain"], 40));
        let record = record(&plan, json!({ "A": {
            "went_in": {
                "plum": format!("{plum} drops"),
                "fine-salt": format!("{salt} g"),
                "clear-base": format!("{base} g"),
            },
            "molds": { "finger-5": { "shots": 0 } }
        } })).expect("a record");
        makes_it_again(&record, 0, 0);
    }
}

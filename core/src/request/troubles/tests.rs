use alloc::vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::{LoadedBook, OpenPlan, small};
use crate::json::reader::read_value;

/// The small book with these changes.
fn loaded(change: impl FnOnce(&mut Value)) -> LoadedBook {
    let mut book: Value = serde_json::from_str(small::BOOK).unwrap();
    book["default_base"] = "clear".into();
    change(&mut book);
    LoadedBook::from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"))
}

/// A small day of one pot, to be changed.
fn open(book: &LoadedBook, change: impl FnOnce(&mut Plan)) -> OpenPlan {
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let mut plan = book.plan_text(&small::orders(line)).unwrap();
    change(&mut plan.plan);
    OpenPlan::try_from(plan).unwrap()
}

/// The only trouble of an answer.
fn row(answer: &str) -> Value {
    let mut answer: Value = serde_json::from_str(answer).unwrap();
    assert_eq!(answer["faults"], Value::Null, "{answer}");
    answer["result"]["troubles"][0].take()
}

/// The sentences that were calculated.
fn calculated(row: &Value) -> Vec<&str> {
    row["calculated"].as_array().unwrap().iter().map(|it| it.as_str().unwrap()).collect()
}

fn not_calculated(row: &Value) -> Vec<&str> {
    let notes = row["not_calculated"].as_array().unwrap().iter();
    notes.map(|note| note["code"].as_str().unwrap()).collect()
}

#[rstest]
#[case(json!({}), 0)]
#[case(json!({ "stage": 1 }), 0)]
#[case(json!({ "stage": 2 }), 1)]
fn stages_are_counted_from_one(#[case] request: Value, #[case] expected: usize) {
    let request: TroublesRequest = read_value(&request).unwrap();
    assert_eq!(request.index(), expected);
}

#[rstest]
#[case(Some("all the time"), "Pot A: stir all the time.")]
#[case(Some("2 min"), "Pot A: stir at least every 2 min.")]
#[case(None, "Pot A: stir before every load.")]
fn salt_is_stirred_as_often_as_the_plan_says(#[case] every: Option<&str>, #[case] expected: &str) {
    let book = loaded(|_| {});
    let open = open(&book, |plan| {
        let shown =
            every.map(|text| crate::show::Shown::new(crate::quantity::Time::default(), text));
        plan.pots[0].stages[0].stir_every = shown;
    });
    let row =
        row(&open
            .answer_text(r#"{ "calculate": "troubles", "trouble": "sinking-salt", "pot": "A" }"#));
    assert_eq!(calculated(&row), [expected]);
}

#[test]
fn each_salt_is_stirred_by_its_grain() {
    let ask = r#"{ "calculate": "troubles", "trouble": "sinking-salt" }"#;
    let no_grain = loaded(|book| {
        book["materials"]["salt"] =
            json!({ "kind": "salt", "density": "2.165 g/mL", "as_scooped": "1.2 g/mL" });
    });
    assert_eq!(not_calculated(&row(&no_grain.answer_text(ask))), ["no-grain"]);
    assert_eq!(not_calculated(&row(&loaded(|_| {}).answer_text(ask))), ["no-viscosity"]);
}

#[test]
fn salt_is_stirred_by_the_base_in_the_pot() {
    let book = loaded(|book| {
        book["materials"]["clear"]["viscosity"] = json!(["0.3 Pa.s", "1 Pa.s"]);
        book["materials"]["salt"]["grain"] = "0.3 mm".into();
    });
    let of = |base: Value| {
        let ask =
            json!({ "calculate": "troubles", "trouble": "sinking-salt", "base_in_pot": base });
        calculated(&row(&book.answer_text(&ask.to_string())))[0].to_string()
    };
    // 515 g of 1.03 g/mL.
    let sentence = of(json!("515 g"));
    assert!(sentence.starts_with("salt: in 2 1/8 cup (500 mL) of base "), "{sentence}");
    assert_eq!(of(json!("500 mL")), sentence);
}

#[test]
fn no_base_takes_all_of_a_softener_out() {
    let book = loaded(|book| {
        with_points(book);
        book["materials"]["oil"]["hardness"]["points"][0]["point_ratio"] = "0 %".into();
    });
    // 20 % per 2 readings: from 10 % to 5 % thins with as much base again, to 0 % with none.
    let of = |wanted: f64| {
        let ask = json!({ "calculate": "troubles", "trouble": "too-thick", "base_in_pot": "1 kg",
            "hardness_now": 3, "hardness_wanted": wanted });
        let row = row(&book.answer_text(&ask.to_string()));
        calculated(&row).iter().map(ToString::to_string).collect::<Vec<_>>()
    };
    assert!(of(3.5)[1].starts_with("Base without it would: 1000 g more"), "{:?}", of(3.5));
    assert_eq!(of(4.0).len(), 1, "{:?}", of(4.0));
}

#[test]
fn dents_come_of_sprues_that_cannot_feed() {
    let ask = r#"{ "calculate": "troubles", "trouble": "dents", "pot": "A" }"#;
    let book = loaded(|_| {});
    let of = |sinks: bool| {
        let open = open(&book, |plan| {
            plan.pots[0].stages[0].draws[0].pieces[0].sinks_in = sinks;
        });
        let row = row(&open.answer_text(ask));
        calculated(&row).iter().map(ToString::to_string).collect::<Vec<_>>()
    };
    assert_eq!(of(true), ["Pot A: the sprue of worm cannot feed its pieces. Top off every shot."]);
    assert_eq!(
        of(false),
        ["Pot A: its sprues hold enough to feed the pieces. Hold until the sprue is set."]
    );
    // Without a pot, molds of which nothing is known are named.
    let ask = r#"{ "calculate": "troubles", "trouble": "dents" }"#;
    let unknown = row(&book.answer_text(ask));
    assert_eq!(not_calculated(&unknown), ["feed-not-known"]);
    assert_eq!(
        unknown["not_calculated"][0]["message"],
        "No feed share stated for pair, worm: weigh ten pieces to measure it."
    );
    let known = loaded(|book| {
        for mold in ["pair", "worm"] {
            book["molds"][mold]["feed"] = "50 %".into();
        }
    });
    assert_eq!(not_calculated(&row(&known.answer_text(ask))), Vec::<&str>::new());
    let half = loaded(|book| book["molds"]["worm"]["feed"] = "50 %".into());
    assert!(
        row(&half.answer_text(ask))["not_calculated"][0]["message"]
            .as_str()
            .unwrap()
            .contains("for pair:")
    );
}

#[test]
fn heat_that_is_left_is_that_of_a_pot() {
    let book = loaded(|_| {});
    let alone = row(&book.answer_text(r#"{ "calculate": "troubles", "trouble": "yellowing" }"#));
    assert_eq!(not_calculated(&alone), ["no-pot"]);
    let ask = r#"{ "calculate": "troubles", "trouble": "yellowing", "pot": "A" }"#;
    assert_eq!(not_calculated(&row(&open(&book, |_| {}).answer_text(ask))), ["no-heat-budget"]);
}

/// A softener of which 5 % and 20 % read 4 and 2 on the shop's own scale.
fn with_points(book: &mut Value) {
    book["materials"]["oil"] = json!({
        "kind": "softener", "density": "1 g/mL",
        "hardness": { "scale": "squeeze", "points": [
            { "point_ratio": "5 %", "point_hardness": 4 }, { "point_ratio": "20 %", "point_hardness": 2 }
        ] }
    });
}

#[rstest]
// A straight line: 10 % per reading.
#[case("too-thick", json!({ "hardness_now": 4, "hardness_wanted": 3 }), "oil: 7.5 % more by mass of base, from 4 to 3 on the scale squeeze.")]
#[case("too-thick", json!({ "hardness_now": 3, "hardness_wanted": 3 }), "oil: going from 3 to 3 on the scale squeeze takes less of it, not more. It cannot be taken out.")]
fn softener_goes_in_by_the_shops_own_points(
    #[case] trouble: &str,
    #[case] readings: Value,
    #[case] expected: &str,
) {
    let book = loaded(with_points);
    let mut ask = readings;
    (ask["calculate"], ask["trouble"]) = ("troubles".into(), trouble.into());
    assert_eq!(calculated(&row(&book.answer_text(&ask.to_string()))), [expected]);
    // The mass of base is known: 150 g are 15 % of 1 kg... and too much of it is thinned by base.
    ask["base_in_pot"] = "1 kg".into();
    let row = row(&book.answer_text(&ask.to_string()));
    let thins = calculated(&row).len() == 2;
    assert_eq!(thins, expected.contains("cannot"), "{row}");
    assert_eq!(row["add"].as_array().unwrap().len(), usize::from(!thins));
}

#[test]
fn the_softener_comes_before_the_hardener() {
    let book = loaded(|book| {
        with_points(book);
        book["materials"]["hard"] = json!({ "kind": "hardener", "density": "1 g/mL",
            "hardness": { "scale": "squeeze", "points": [
                { "point_ratio": "5 %", "point_hardness": 2 }, { "point_ratio": "20 %", "point_hardness": 4 }
            ] } });
    });
    for (trouble, material) in [("too-thick", "oil"), ("too-soft", "hard")] {
        let ask = json!({ "calculate": "troubles", "trouble": trouble });
        let row = row(&book.answer_text(&ask.to_string()));
        let message = row["not_calculated"][0]["message"].as_str().unwrap();
        assert!(message.starts_with(&format!("How much {material} is")), "{message}");
    }
    let none = loaded(|_| {});
    let ask = r#"{ "calculate": "troubles", "trouble": "too-thick" }"#;
    assert_eq!(not_calculated(&row(&none.answer_text(ask))), ["no-hardness-points"]);
}

#[test]
fn a_trouble_alone_is_told_in_full() {
    let mut row = TroubleRow {
        trouble: Trouble::Dents,
        sign: "Dents.".into(),
        causes: vec!["cold".into(), "haste".into()],
        helps: vec!["Wait.".into(), "Heat.".into()],
        calculated: vec!["Pot A: wait.".into()],
        add: Vec::new(),
        not_calculated: vec![Note { code: "x".into(), message: "No feed.".into() }],
        cautions: vec![Caution::Fumes],
    };
    let caution = Caution::Fumes.sentence().to_string();
    assert_eq!(
        lines(&row, true),
        [
            "Dents.",
            "Likely: cold; haste.",
            "Wait.",
            "Heat.",
            "Pot A: wait.",
            "No feed.",
            caution.as_str(),
            format!("({SOURCE})").as_str()
        ]
    );
    assert_eq!(lines(&row, false), ["dents: Dents. Wait. Pot A: wait."]);
    row.calculated.clear();
    assert_eq!(lines(&row, false), ["dents: Dents. Wait."]);
}

use alloc::vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::{LoadedBook, OpenPlan, small};
use crate::plan::Off;
use crate::plan::mispour::{Becomes, PotMaterial};
use crate::quantity::{Measurable, Ratio, System};
use crate::show::{Note, Shown, text};

fn shown_mass(grams: f64) -> Shown<Mass> {
    text::mass(Mass::from_si(grams / 1e3))
}

fn shown_volume(milliliters: f64) -> Shown<Volume> {
    text::volume(Volume::from_si(milliliters / 1e6), System::Metric)
}

fn off(percent: f64) -> Shown<Ratio> {
    let off = Ratio::from(percent / 100.0);
    Shown::new(off, text::signed_percent(off))
}

/// A pot of stabilizer and plum, with these ways.
fn right(allowed: Option<&str>, ways: Vec<RightWay>) -> PutRight {
    let part = |material: &str, percent: f64, allowed: Option<&str>| PotMaterial {
        material: material.into(),
        mass: shown_mass(1.0),
        off: Some(off(percent)),
        allowed: allowed.map(Into::into),
    };
    PutRight {
        pot: vec![part("stab", 50.0, allowed), part("plum", -2.0, None), part("flake", 0.0, None)],
        mass: shown_mass(100.0),
        volume: shown_volume(100.0),
        cup: shown_volume(500.0),
        hot: false,
        fresh_base: true,
        ways,
        not_offered: Vec::new(),
        traces: Vec::new(),
        foreign: Vec::new(),
        fault: None,
        becomes: Vec::new(),
        cautions: Vec::new(),
    }
}

fn way(way: WayKind, offs: &[(&str, f64)]) -> RightWay {
    let one =
        |&(material, percent): &(&str, f64)| Off { material: material.into(), off: off(percent) };
    RightWay {
        way,
        add: Vec::new(),
        too_little: Vec::new(),
        adds: shown_mass(0.0),
        cost: None,
        mass: shown_mass(100.0),
        volume: shown_volume(100.0),
        off: offs.iter().map(one).collect(),
        within: true,
        then: Vec::new(),
        details: vec!["Stir.".into()],
    }
}

fn kept(doses: &[(&str, &str)], body: &[&str]) -> KeptFormula {
    let doses =
        doses.iter().map(|(name, amount)| (name.to_string(), Amount::parse(amount).unwrap()));
    let entry = FormulaEntry {
        per: None,
        base: None,
        color: None,
        doses: doses.collect(),
        notes: None,
        sure: None,
        ext: None,
    };
    KeptFormula {
        per: Amount::parse("1 cup").unwrap(),
        color: Some(entry),
        body: body.iter().map(ToString::to_string).collect(),
        own_body: None,
        overlap: Overlap::Refuse,
    }
}

#[rstest]
#[case(None, " Leaves stab +50.0 %.")]
#[case(Some("up to 3 tsp per 1 cup"), " Leaves plum -2.0 %.")]
fn a_way_names_what_it_leaves_off_most(#[case] allowed: Option<&str>, #[case] expected: &str) {
    let exact = way(WayKind::Exact, &[("plum", -2.0), ("stab", 50.0), ("flake", 0.0)]);
    let words = line(&exact, &right(allowed, Vec::new()), &kept(&[], &[]));
    assert!(words.starts_with("Exact: add . Then 100 g, 100 mL"), "{words}");
    assert!(words.ends_with(expected), "{words}");
    let none =
        line(&way(WayKind::Nearest, &[("flake", 0.0)]), &right(None, Vec::new()), &kept(&[], &[]));
    assert!(none.starts_with("Nearest: ") && !none.contains("Leaves"), "{none}");
}

#[rstest]
#[case(&[("plum", "3 drops"), ("flake", "1 tsp")], &["plain"], "flake 1 tsp, plum 3 drops per 1 cup with plain.")]
#[case(&[], &["plain", "salt"], "no doses per 1 cup with plain + salt.")]
#[case(&[("plum", "3 drops")], &[], "plum 3 drops per 1 cup.")]
fn a_pot_that_is_kept_is_a_formula(
    #[case] doses: &[(&str, &str)],
    #[case] body: &[&str],
    #[case] expected: &str,
) {
    let words = line(&way(WayKind::Keep, &[]), &right(None, Vec::new()), &kept(doses, body));
    assert_eq!(words.strip_prefix("Keep it as a formula: "), Some(expected));
}

#[test]
fn the_answer_in_short_says_what_is_off_and_each_way_once() {
    let ways = vec![way(WayKind::AsItIs, &[]), way(WayKind::Keep, &[])];
    let mut answer = right(Some("on purpose"), ways);
    let becomes = |name: &str, fits| Becomes {
        formulas: vec![name.into(), "plain".into()],
        products: Vec::new(),
        adds: shown_mass(5.0),
        mass: shown_mass(105.0),
        volume: shown_volume(105.0),
        fits,
    };
    answer.becomes = ["a", "b", "c", "d", "e"].map(|name| becomes(name, name != "b")).into();
    answer.not_offered = vec![Note { code: "x".into(), message: "Not offered.".into() }];
    let kept = kept(&[], &["plain"]);
    assert_eq!(
        lines(&answer, &kept),
        [
            "Off, per base: stab +50.0 % (on purpose), plum -2.0 %.",
            "As it is: all within tolerance, add nothing.",
            "Keep it as a formula: no doses per 1 cup with plain.",
            "Stir.",
            "Not offered.",
            "Could become: a + plain (add 5 g), c + plain (add 5 g), d + plain (add 5 g).",
        ]
    );
    let fault = crate::fault::Fault {
        code: "y".into(),
        path: "/instead".into(),
        message: "It holds wax.".into(),
        help: String::new(),
    };
    let answer = PutRight { fault: Some(fault), pot: Vec::new(), ..right(None, Vec::new()) };
    assert_eq!(lines(&answer, &kept), ["Nothing is off.", "It holds wax."]);
}

#[test]
fn a_kind_is_one_material_or_all_of_a_base() {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let book = book.ready();
    let id = |name: &str| book.materials.find(name).unwrap();
    let found = |word: &str, parts: &[(&str, f64)]| {
        let mut mix = Mix::new();
        for (name, kilograms) in parts {
            mix.add(id(name), Mass::from_si(*kilograms)).unwrap();
        }
        one_of_kind(word, &mix, book)
    };
    assert_eq!(found("salt", &[("clear", 1.0), ("salt", 0.1)]), Ok(Some(vec![id("salt")])));
    assert_eq!(found("salt", &[("clear", 1.0), ("salt", 0.0)]), Err(Vec::new()));
    assert_eq!(found("base", &[("clear", 1.0)]), Ok(Some(vec![id("clear")])));
    let both = vec![id("clear"), id("firm")];
    assert_eq!(found("base", &[("clear", 1.0), ("firm", 1.0)]), Ok(Some(both)));
    assert_eq!(found("base", &[("salt", 1.0)]), Err(Vec::new()));
    let colors = vec![id("blue"), id("red")];
    assert_eq!(found("colorant", &[("blue", 0.1), ("red", 0.1)]), Err(colors));
    assert_eq!(found("wax", &[("clear", 1.0)]), Ok(None));
}

/// The answer for the small book, or its faults.
fn ask(request: &Value) -> Result<Value, Value> {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let mut request = request.clone();
    request["calculate"] = "correct".into();
    let mut answer: Value = serde_json::from_str(&book.answer_text(&request.to_string())).unwrap();
    match answer["faults"].take() {
        Value::Null => Ok(answer["result"].take()),
        faults => Err(faults),
    }
}

fn number(value: &Value) -> f64 {
    value["value"].as_f64().unwrap()
}

fn mass_of(answer: &Value, material: &str) -> f64 {
    let pot = answer["pot"].as_array().unwrap();
    number(&pot.iter().find(|part| part["material"] == material).unwrap()["mass"])
}

#[test]
fn a_blend_keeps_its_shares_whatever_its_amount() {
    // Two cups of 1.03 and 1.06 g/mL, half of each.
    let of = |base: &str| {
        let request = json!({ "formulas": ["apart"], "pot_base": "2 cup", "cup": "2 L", "instead": { "base": base } });
        let answer = ask(&request).unwrap();
        (mass_of(&answer, "clear"), mass_of(&answer, "firm"))
    };
    let cup = 236.588_236_5;
    let near = |(a, b): (f64, f64), cups: f64| {
        assert!((a / (cups * cup * 1.03) - 1.0).abs() < 1e-9, "{a}");
        assert!((b / (cups * cup * 1.06) - 1.0).abs() < 1e-9, "{b}");
    };
    near(of("2 cup"), 1.0);
    near(of("3 cup"), 1.5);
    near(of("twice"), 2.0);
    near(of("half"), 0.5);
}

#[test]
fn all_of_a_dose_may_be_missing_and_no_more() {
    let of = |less: &str| {
        ask(
            &json!({ "formulas": ["sky", "body"], "pot_base": "1 cup", "instead": { "blue": less } }),
        )
    };
    assert_eq!(of("- 31 drops").unwrap_err()[0]["code"], "instead-below-nothing");
    let answer = of("- 30 drops").unwrap();
    assert!(
        answer["pot"]
            .as_array()
            .unwrap()
            .iter()
            .all(|part| part["material"] != "blue" || number(&part["mass"]) == 0.0)
    );
}

#[test]
fn what_is_still_there_is_a_mass_or_a_volume_of_all() {
    let of = |left: &str| {
        let request = json!({ "formulas": ["sky", "body"], "pot_base": "1 cup",
            "instead": { "blue": "twice" }, "still_there": left });
        ask(&request).unwrap()
    };
    let (volume, mass) = (of("100 mL"), of("100 g"));
    assert!((number(&volume["volume"]) - 100.0).abs() < 1e-9, "{}", volume["volume"]);
    assert!((number(&mass["mass"]) - 100.0).abs() < 1e-9);
    let blue = |answer: &Value| mass_of(answer, "blue") / number(&answer["mass"]);
    assert!((blue(&volume) / blue(&mass) - 1.0).abs() < 1e-9);
}

#[rstest]
#[case(json!({ "instead": { "salt": "twice" } }), true)]
#[case(json!({ "instead": { "salt": "twice" }, "hot": false }), false)]
#[case(json!({ "instead": { "salt": "twice" }, "hot": true }), false)]
#[case(json!({ "instead": { "blue": "twice" } }), false)]
fn a_cold_pot_is_an_assumption_if_what_goes_in_hot_went_wrong(
    #[case] mut request: Value,
    #[case] expected: bool,
) {
    request["formulas"] = json!(["sky", "body"]);
    request["pot_base"] = "1 cup".into();
    let answer = ask(&request).unwrap();
    let lines = answer["text"].as_array().unwrap();
    let says = lines.iter().any(|line| line.as_str().unwrap().starts_with("Cold pot assumed."));
    assert_eq!(says, expected, "{lines:?}");
}

#[test]
fn what_is_saved_is_said_last() {
    let request = json!({ "formulas": ["sky", "body"], "pot_base": "1 cup",
        "instead": { "blue": "twice" }, "save_as": "dark" });
    let answer = ask(&request).unwrap();
    let lines = answer["text"].as_array().unwrap();
    assert_eq!(lines.last().unwrap(), "To save: \"dark\".");
    let mut taken = request.clone();
    taken["save_as"] = "sky".into();
    assert_eq!(ask(&taken).unwrap_err()[0]["code"], "formula-exists");
    taken["replace"] = true.into();
    assert!(ask(&taken).is_ok());
}

#[test]
fn a_pot_of_the_plan_is_named_by_its_letter_or_its_step() {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let plan = book.plan_text(&small::orders(line)).unwrap();
    let first = plan.plan.steps[0].id.clone();
    let open = OpenPlan::try_from(plan).unwrap();
    let ask = |request: Value| -> Value {
        let mut request = request;
        request["calculate"] = "correct".into();
        request["instead"] = json!({ "blue": "twice" });
        serde_json::from_str(&open.answer_text(&request.to_string())).unwrap()
    };
    let by_letter = ask(json!({ "pot": "A" }));
    assert_eq!(by_letter["faults"], Value::Null, "{by_letter}");
    let by_step = ask(json!({ "step": first }));
    assert_eq!(by_step["result"]["pot"], by_letter["result"]["pot"], "{by_step}");
    assert_eq!(ask(json!({ "step": first, "pot": "A" })), by_step);
    let other = ask(json!({ "step": first, "pot": "B" }));
    assert_eq!(other["faults"][0]["code"], "step-of-another-pot", "{other}");
    // Stages are counted from 1.
    assert_eq!(ask(json!({ "pot": "A", "stage": 1 })), by_letter);
    assert_eq!(ask(json!({ "pot": "A", "stage": 2 }))["faults"][0]["code"], "no-such-stage");
}

/// What the pot A of a small day, changed like this, is with twice the blue.
fn of_plan(change: impl FnOnce(&mut Plan)) -> Value {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let mut plan = book.plan_text(&small::orders(line)).unwrap();
    change(&mut plan.plan);
    let request = r#"{ "calculate": "correct", "pot": "A", "instead": { "blue": "twice" } }"#;
    let open = OpenPlan::try_from(plan).unwrap();
    serde_json::from_str(&open.answer_text(request)).unwrap()
}

/// A color is kept in the measures of its formulas, if the book still has all of them.
#[test]
fn a_pot_of_formulas_that_are_gone_is_kept_in_grams() {
    let blue = |answer: &Value| answer["result"]["kept"]["color"]["doses"]["blue"].clone();
    let known = of_plan(|_| {});
    assert_eq!(blue(&known), "60 drops", "{known}");
    // Twice 30 drops of 0.045 g.
    let gone = of_plan(|plan| plan.pots[0].stages[0].formulas.push("gone".into()));
    assert_eq!(blue(&gone), "2.7 g", "{gone}");
}

#[test]
fn the_first_stage_is_meant_if_none_is_named() {
    let none = of_plan(|plan| plan.pots[0].stages.clear());
    assert_eq!(none["faults"][0]["message"], "Pot A has no stage 1.", "{none}");
}

use alloc::vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::{LoadedBook, OpenPlan, book_from_text, orders_from_text, small};
use crate::quantity::Measurable;

/// The small book, and a plan of 40 pieces of the worm: 10 shots of one pot.
fn day() -> (Book, Plan) {
    let book = book_from_text(small::BOOK).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let day = orders_from_text(&small::orders(line), &book).unwrap();
    let plan = Plan::make(&book, &day).unwrap();
    (book, plan)
}

fn grams(grams: f64) -> Mass {
    Mass::from_si(grams / 1e3)
}

fn near(found: Mass, expected: f64) {
    assert!((found.si() * 1e3 - expected).abs() < 1e-9, "{found:?} instead of {expected} g");
}

/// A pot of 1 kg and 1 L hot with 10 shots of 40 g, two heats; 250 g go on, 50 g of sprues included.
fn pot(plan: &Plan) -> Pot {
    let mut pot = plan.pots[0].clone();
    let stage = &mut pot.stages[0];
    stage.draws[0].per_shot = text::mass(grams(40.0));
    stage.draws[0].shots = 10;
    (stage.holds, stage.carried) = (text::mass(grams(1000.0)), text::mass(grams(250.0)));
    (stage.sprues_back, stage.heats) = (text::mass(grams(50.0)), 2);
    stage.fills_hot = text::volume(Volume::from_si(1e-3), crate::quantity::System::Metric);
    pot
}

// 1000 g less 400 g of shots, and 50 g of 250 g come back: 400 g stay in cup and injector. It keeps 4 mL, a quarter of
// them air, of 1 g/mL: 3 g a heat.
#[rstest]
#[case(2, &[], 400.0)]
#[case(3, &[], 403.0)]
#[case(1, &[], 397.0)]
#[case(2, &[10.0, 5.0], 409.0)]
fn what_stays_is_the_plans_but_for_the_injector(
    #[case] heats: u32,
    #[case] injector: &[f64],
    #[case] expected: f64,
) {
    let (mut book, plan) = day();
    book.molds.iter_mut().find(|mold| mold.name == "worm").unwrap().voids = 0.25;
    book.injector.keeps = Volume::from_si(4e-6);
    let pot = pot(&plan);
    let injector: Vec<Mass> = injector.iter().copied().map(grams).collect();
    let told = Told { injector: &injector, ..Told::default() };
    let follow = Follow::of(&plan, &book);
    near(follow.kept(&pot.stages[0], &told, heats), expected);
    // Without shots there is no air.
    let mut bare = pot.stages[0].clone();
    bare.draws.clear();
    near(follow.injector_keeps(&bare), 4.0);
}

#[test]
fn after_the_last_shot_is_left_what_was_not_shot() {
    let (book, plan) = day();
    let mut follow = Follow::of(&plan, &book);
    let pot = pot(&plan);
    let none = Mass::default();
    let shot = |takes: f64, back: f64| Shot {
        draws: Vec::new(),
        takes: grams(takes),
        sprues: none,
        back: grams(back),
    };
    let at = |is_last| At { pot: &pot, stage: &pot.stages[0], is_first: true, is_last };
    let mut after = |is_last, left: Option<f64>, takes: f64| {
        let told = Told { left: left.map(grams), ..Told::default() };
        let found = follow.after(&at(is_last), &told, &shot(takes, 50.0), grams(1000.0), 2);
        let codes = follow.faults.drain(..).map(|fault| fault.code.to_string());
        found.ok_or_else(|| codes.collect::<Vec<_>>().join(", "))
    };
    // 1000 g less 500 g of shots and 400 g that stay, and 50 g back.
    near(after(false, None, 500.0).unwrap(), 150.0);
    assert_eq!(after(false, None, 650.0), Err("record-shot-more".into()));
    assert_eq!(after(false, None, 660.0), Err("record-shot-more".into()));
    near(after(true, None, 650.0).unwrap(), 0.0);
    near(after(true, None, 660.0).unwrap(), 0.0);
    near(after(true, Some(300.0), 500.0).unwrap(), 300.0);
    assert!(after(true, Some(1050.0), 500.0).is_ok());
    assert_eq!(after(true, Some(1050.1), 500.0), Err("record-left-more".into()));
}

/// 1 kg less 0.75 kg of shots and 0.25 kg that stay, in numbers without rounding.
#[test]
fn a_stage_that_leaves_nothing_at_all_has_no_next() {
    let (book, plan) = day();
    let mut pot = pot(&plan);
    let none = Mass::default();
    let stage = &mut pot.stages[0];
    stage.draws[0].per_shot = text::mass(Mass::from_si(0.5));
    stage.draws[0].shots = 1;
    stage.holds = text::mass(Mass::from_si(1.0));
    (stage.carried, stage.sprues_back) = (text::mass(Mass::from_si(0.25)), text::mass(none));
    let shot = Shot { draws: Vec::new(), takes: Mass::from_si(0.75), sprues: none, back: none };
    let mut follow = Follow::of(&plan, &book);
    let mut after = |is_last| {
        let at = At { pot: &pot, stage: &pot.stages[0], is_first: true, is_last };
        follow.after(&at, &Told::default(), &shot, Mass::from_si(1.0), 2)
    };
    assert_eq!((after(false), after(true)), (None, Some(none)));
}

/// The record of the small day with these shots, and its only draw.
fn shots(plan: &Plan, book: &Book, shots: u32, good: Option<u32>) -> super::super::DrawRecord {
    let pieces = super::super::PieceActuals { shape: None, good, weights: Vec::new() };
    let draw = super::super::DrawActuals {
        mold: "worm".into(),
        number: None,
        shots: Some(shots),
        pieces: vec![pieces],
        took: None,
    };
    let stage = super::super::StageActuals { draws: vec![draw], ..Default::default() };
    let pot = PotActuals { pot: "A".into(), by_stage: false, stages: vec![stage] };
    let mut found = record(plan, book, &Actuals { pots: vec![pot] }).unwrap();
    found.pots.remove(0).stages.remove(0).draws.remove(0)
}

#[test]
fn no_shots_have_no_yield() {
    let (book, mut plan) = day();
    let piece =
        |draw: &super::super::DrawRecord| (draw.pieces[0].made, draw.pieces[0].good_per_shot);
    assert_eq!(piece(&shots(&plan, &book, 2, Some(7))), (8, Some(3.5)));
    assert_eq!(piece(&shots(&plan, &book, 0, Some(0))), (0, None));
    // How many pieces a shot makes follows from the plan's shots.
    plan.pots[0].stages[0].draws[0].shots = 0;
    assert_eq!(piece(&shots(&plan, &book, 3, None)), (0, None));
}

#[test]
fn sprues_that_go_back_are_not_shot_and_in_no_jar() {
    let (book, mut plan) = day();
    let mut of = |back: f64| {
        plan.pots[0].stages[0].sprues_back = text::mass(grams(back));
        let mut found = record(&plan, &book, &Actuals::default()).unwrap();
        let sprues = found.jars.iter().map(|jar| jar.sprues.quantity.si() * 1e3).sum::<f64>();
        (found.pots.remove(0).shot.quantity.si() * 1e3, sprues)
    };
    let (kept, sprues) = of(0.0);
    let (shot, none) = of(50.0);
    assert!(sprues > 1.0, "{sprues}");
    near(grams(kept - shot), sprues);
    near(grams(none), 0.0);
}

#[test]
fn pieces_of_two_pots_are_counted_by_the_first_that_states_them() {
    let (book, plan) = day();
    let mut follow = Follow::of(&plan, &book);
    let mut count = |pot: &str, mold: &str, with: &str, good: u32| {
        let mut of = plan.pots[0].clone();
        of.pot = pot.into();
        let mut draw = of.stages[0].draws[0].clone();
        (draw.mold, draw.together_with) = (mold.into(), vec![with.into()]);
        follow.count(&of, &draw, 10, good);
    };
    count("A", "worm", "B", 9);
    // The same pieces.
    count("B", "worm", "A", 8);
    // Others: of another mold, and of other pots.
    count("B", "pair", "A", 5);
    count("B", "worm", "C", 7);
    count("D", "worm", "B", 6);
    let molds: Vec<(String, u32, u32)> =
        follow.molds().into_iter().map(|mold| (mold.mold, mold.made, mold.good)).collect();
    assert_eq!(molds, [("pair".into(), 10, 5), ("worm".into(), 30, 9 + 7 + 6)]);
}

#[test]
fn a_material_is_of_the_stage_that_weighs_it() {
    let (book, plan) = day();
    let mut pot = plan.pots[0].clone();
    let mut second = pot.stages[0].clone();
    pot.stages[0].weigh.retain(|weigh| weigh.material != "salt");
    second.weigh.retain(|weigh| weigh.material != "blue");
    pot.stages.push(second);
    let id = |name: &str| book.materials.find(name).unwrap();
    let one = |name: &str| WentIn { material: id(name), measured: None, weighed: Some(grams(1.0)) };
    let went_in = ["blue", "salt", "clear", "red"].map(one).to_vec();
    let entry = super::super::StageActuals { went_in, ..Default::default() };
    let actual = PotActuals { pot: "A".into(), by_stage: false, stages: vec![entry] };
    let mut faults = Vec::new();
    let found = told(&pot, Some(&actual), &book, &mut faults);
    let of = |stage: usize| found[stage].went_in.iter().map(|one| one.material).collect::<Vec<_>>();
    assert_eq!((of(0), of(1)), (vec![id("blue")], vec![id("salt")]));
    // One that is of both stages, or of none, is asked about.
    let faults: Vec<(&str, &str)> =
        faults.iter().map(|fault| (fault.path.as_str(), &*fault.code)).collect();
    let which = |path| (path, "record-which-stage");
    assert_eq!(faults, ["/pots/A/went_in/clear", "/pots/A/went_in/red"].map(which));
}

// Two heats spend 8 min, 2 min of them before the day: 3 min each.
#[rstest]
#[case(2, 2, Some(2.0), "8 min")]
#[case(2, 1, Some(2.0), "5 min")]
#[case(2, 3, Some(2.0), "11 min")]
#[case(2, 1, None, "4 min")]
#[case(0, 3, None, "8 min")]
fn each_heat_spends_as_planned(
    #[case] planned: u32,
    #[case] heats: u32,
    #[case] before: Option<f64>,
    #[case] expected: &str,
) {
    let book = LoadedBook::from_text(include_str!("../../../examples/demo/book.json")).unwrap();
    let orders = r#"{ "format": "pourwright/1.0",
        "lines": [{ "order": "1", "product": "dusk finger", "pieces": 8 }] }"#;
    let mut pot = book.plan_text(orders).unwrap().plan.pots.remove(0);
    pot.heats.count = planned;
    let minutes = |minutes: f64| text::minutes(Time::from_si(60.0 * minutes));
    let Some(crate::show::Calculated::Known(budget)) = &mut pot.heats.budget else { panic!() };
    (budget.spent, budget.before) = (minutes(8.0), before.map(minutes));
    assert_eq!(spent(&pot, heats).unwrap().text, expected);
}

#[rstest]
#[case(0.0, "0 g")]
#[case(2.0, "2 g")]
#[case(-2.0, "-2 g")]
fn a_loss_may_be_a_gain(#[case] mass: f64, #[case] expected: &str) {
    let shown = signed_mass(grams(mass));
    assert_eq!((shown.text.as_str(), shown.quantity), (expected, grams(mass)));
}

/// The record of the small day, or the faults as paths and codes.
fn ask(actuals: &Value) -> Result<Value, Vec<(String, String)>> {
    let book = LoadedBook::from_text(small::BOOK).unwrap();
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#;
    let plan = book.plan_text(&small::orders(line)).unwrap();
    let open = OpenPlan::try_from(plan).unwrap();
    let mut request = json!({ "calculate": "record", "actuals": actuals });
    request["actuals"]["format"] = "pourwright/1.0".into();
    let mut answer: Value = serde_json::from_str(&open.answer_text(&request.to_string())).unwrap();
    match answer["faults"].take() {
        Value::Null => Ok(answer["result"].take()),
        faults => {
            let text = |fault: &Value, key: &str| fault[key].as_str().unwrap().to_string();
            let faults = faults.as_array().unwrap().iter();
            Err(faults.map(|fault| (text(fault, "path"), text(fault, "code"))).collect())
        }
    }
}

#[test]
fn what_went_in_is_listed_by_kind() {
    // By name the blue is first.
    let record = ask(&json!({ "pots": { "A": { "went_in": { "blue": "70 drops" } } } })).unwrap();
    let made = record["pots"][0]["stages"][0]["made"].as_array().unwrap();
    let list: Vec<(&str, bool)> = made
        .iter()
        .map(|part| (part["material"].as_str().unwrap(), part["stated"].as_bool().unwrap()))
        .collect();
    assert_eq!(list, [("clear", false), ("blue", true), ("salt", false)]);
}

#[test]
fn a_pot_is_noted_once_and_a_color_needs_a_name_and_a_dose() {
    let (book, plan) = day();
    let one = PotActuals { pot: "A".into(), by_stage: false, stages: vec![Default::default()] };
    let faults = record(&plan, &book, &Actuals { pots: vec![one.clone(), one] }).unwrap_err();
    let codes: Vec<&str> = faults.iter().map(|fault| &*fault.code).collect();
    assert_eq!(codes, ["record-pot-twice"]);
    let bare = json!({ "pots": { "A": { "went_in": { "blue": "0 drops" }, "save_as": "new" } } });
    assert_eq!(ask(&bare).unwrap_err()[0].1, "record-no-color");
}

/// 40 pieces of 10 pg together are each lighter than anything that is weighed.
#[test]
fn pieces_weighed_together_are_checked_one_by_one() {
    let of = |count: u32| {
        let weights = json!({ "count": count, "weigh": "0.00000000001 g" });
        ask(&json!({ "pots": { "A": { "molds": { "worm": { "weights": weights } } } } }))
    };
    let path = "/actuals/pots/A/molds/worm/weights".to_string();
    assert_eq!(of(40).unwrap_err(), [(path, "out-of-range".to_string())]);
    assert!(of(4).is_ok());
}

#[test]
fn each_refusal_says_what_would_help() {
    for error in [
        RecordError::NoPot { pot: "Z".into(), known: "A, B".into() },
        RecordError::TooManyGood { good: 3, made: 2 },
        RecordError::NoColor("A".into()),
    ] {
        let help = crate::fault::Diagnose::help(&error);
        assert!(help.ends_with('.'), "{help}");
    }
}

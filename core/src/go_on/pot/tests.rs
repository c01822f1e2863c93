use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::*;
use crate::document::{LoadedBook, PlanDocument};
use crate::go_on::tests::{kilograms, morning};
use crate::json::reader::read_value;
use crate::plan::{FromShelf, MaterialMass, ShelfPart};
use crate::quantity::Measurable;

fn mass(kilograms: f64) -> Shown<Mass> {
    text::mass(Mass::from_si(kilograms))
}

fn near(now: &PotNow<'_>, kilograms: f64) {
    let held = now.mix.mass().value;
    assert!((held - kilograms).abs() < 1e-12, "{held} instead of {kilograms}");
}

/// The small day's pot.
fn planned() -> (LoadedBook, PlanDocument) {
    morning(&[r#"{ "order": "1", "product": "sky worm", "pieces": 40 }"#])
}

/// A pot of 1 kg with 10 shots of 40 g and 5 laminated ones of 60 g; 250 g go on, 50 g of sprues included. An injector keeps
/// 100 g in two heats.
fn with_draws() -> (LoadedBook, Pot) {
    let (book, plan) = planned();
    let mut pot = plan.plan.pots[0].clone();
    let stage = &mut pot.stages[0];
    let draw = |shots, per_shot, together: &[&str]| Draw {
        shots,
        per_shot: mass(per_shot),
        together_with: together.iter().map(ToString::to_string).collect(),
        ..stage.draws[0].clone()
    };
    stage.draws = vec![draw(10, 0.04, &[]), draw(5, 0.06, &["B"])];
    (stage.holds, stage.carried, stage.sprues_back) = (mass(1.0), mass(0.25), mass(0.05));
    (book, pot)
}

fn at(draw: u32) -> StepAt {
    let (pot, text) = (String::from("A"), String::new());
    let (details, other_details) = (Vec::new(), Vec::new());
    let (readings, notes) = (Vec::new(), Vec::new());
    StepAt {
        pot,
        stage: 1,
        draw: Some(draw),
        number: 1,
        text,
        other: None,
        details,
        other_details,
        readings,
        notes,
    }
}

#[test]
fn a_pot_holds_what_its_other_shots_and_the_injector_take() {
    let (book, pot) = with_draws();
    let mut now = PotNow::new("A".into(), Some(&pot));
    assert!(!now.is_said && !now.degassed);
    now.mix = kilograms(book.ready(), &[("clear", 0.9), ("salt", 0.1)]);
    now.shoots(&at(1), 4).unwrap();
    near(&now, 0.2 + 6.0 * 0.04 + 5.0 * 0.06 + 0.1);
    now.shoots(&at(1), 6).unwrap();
    near(&now, 0.2 + 5.0 * 0.06 + 0.05);
    now.shoots(&at(2), 2).unwrap();
    near(&now, 0.2 + 3.0 * 0.06 + 0.05);
    let left: Vec<u32> = now.left_draws().iter().map(|draw| draw.shots).collect();
    assert_eq!(left, [3]);
    now.shoots(&at(2), 3).unwrap();
    near(&now, 0.2);
    assert!(now.left_draws().is_empty());
    let share = now.mix.mass_of(book.ready().materials.find("salt").unwrap()) / now.mix.mass();
    assert!((share.value - 0.1).abs() < 1e-12);
    // Of a stage without draws no injector keeps anything.
    let mut bare = pot.clone();
    bare.stages[0].draws.clear();
    let mut now = PotNow::new("A".into(), Some(&bare));
    now.mix = kilograms(book.ready(), &[("clear", 1.0)]);
    now.shoots(&at(1), 0).unwrap();
    near(&now, 0.2);
    // Nothing is shot from an empty pot.
    let mut now = PotNow::new("A".into(), Some(&pot));
    now.shoots(&at(1), 1).unwrap();
    near(&now, 0.0);
}

#[test]
fn each_kind_of_step_does_its_part() {
    let (book, pot) = with_draws();
    let step = |kind| PlanStep {
        id: String::new(),
        kind,
        work: 1,
        at: vec![at(1)],
        cautions: Vec::new(),
        items: Vec::new(),
    };
    let mut now = PotNow::new("A".into(), Some(&pot));
    now.mix = kilograms(book.ready(), &[("clear", 0.2)]);
    let mut does = |kind| {
        now.does(&step(kind), &at(1), &[], 0, book.ready()).unwrap();
        (now.degassed, now.hot, now.heats, libm::round(now.mix.mass().value * 1e6))
    };
    assert_eq!(does(StepKind::Degas), (true, false, 0, 200_000.0));
    assert_eq!(does(StepKind::Heat), (true, true, 1, 200_000.0));
    assert_eq!(does(StepKind::Heat), (true, true, 2, 200_000.0));
    assert_eq!(does(StepKind::SpruesBack), (true, true, 2, 250_000.0));
    assert_eq!(does(StepKind::Store), (true, false, 2, 250_000.0));
}

#[test]
fn a_leftover_brings_its_share_of_all_that_go_in() {
    let (book, plan) = planned();
    let mut pot = plan.plan.pots[0].clone();
    let part = |name: &str, kilograms| ShelfPart {
        name: name.into(),
        mass: mass(kilograms),
        heats: None,
        spent: None,
    };
    let brings = |material: &str, kilograms| MaterialMass {
        material: material.into(),
        mass: mass(kilograms),
    };
    pot.from_shelf = Some(FromShelf {
        left_overs: vec![part("old", 0.1), part("new", 0.3)],
        brings: vec![brings("clear", 0.39), brings("blue", 0.01)],
        off: Vec::new(),
        heats: None,
    });
    let mut now = PotNow::new("A".into(), Some(&pot));
    now.takes_from_shelf(1, book.ready()).unwrap();
    assert_eq!(now.from_shelf, [("new".to_string(), Mass::from_si(0.3))]);
    let blue = book.ready().materials.find("blue").unwrap();
    near(&now, 0.3);
    assert!((now.mix.mass_of(blue).value - 0.0075).abs() < 1e-15);
    now.takes_from_shelf(0, book.ready()).unwrap();
    now.takes_from_shelf(2, book.ready()).unwrap();
    near(&now, 0.4);
    assert_eq!(now.from_shelf.len(), 2);
}

// A plan of 2 heats that spend 8 min in all, with what was spent before.
#[rstest]
#[case(None, 2, 0, None)]
#[case(None, 2, 1, Some(4.0))]
#[case(None, 2, 2, Some(8.0))]
#[case(None, 2, 5, Some(8.0))]
#[case(None, 0, 1, Some(8.0))]
#[case(Some((Some(1), Some(2.0))), 2, 1, Some(2.0))]
#[case(Some((Some(1), Some(2.0))), 2, 2, Some(5.0))]
#[case(Some((Some(1), Some(2.0))), 2, 3, Some(8.0))]
// One heat of which no time is known; a time with no heat.
#[case(Some((Some(1), None)), 2, 1, None)]
#[case(Some((None, Some(2.0))), 2, 0, None)]
fn heat_is_spent_in_equal_parts(
    #[case] before: Option<(Option<u32>, Option<f64>)>,
    #[case] planned: u32,
    #[case] heats: u32,
    #[case] expected: Option<f64>,
) {
    let book = include_str!("../../../examples/demo/book.json");
    let orders = r#"{ "format": "pourwright/1.0",
        "lines": [{ "order": "1", "product": "dusk finger", "pieces": 8 }] }"#;
    let plan = LoadedBook::from_text(book).unwrap().plan_text(orders).unwrap();
    let mut pot = plan.plan.pots[0].clone();
    let minutes = |minutes: f64| text::time(Time::from_si(60.0 * minutes));
    pot.heats.count = planned;
    let Some(crate::show::Calculated::Known(budget)) = &mut pot.heats.budget else { panic!() };
    budget.spent = minutes(8.0);
    pot.there = before.map(|(heats, spent)| InPot {
        mass: mass(0.2),
        fills: pot.cup.clone(),
        hot: false,
        degassed: false,
        heats,
        spent: spent.map(minutes),
        parts: Vec::new(),
        accepted: None,
    });
    let mut now = PotNow::new("A".into(), Some(&pot));
    now.heats = heats;
    let spent = now.spent().map(|spent| spent.to(crate::quantity::System::Metric).unwrap());
    let spent = spent.map(|spent: Time| libm::round(spent.si() * 1e6) / 60e6);
    assert_eq!(spent, expected);
}

/// The pots of the small day as `entry` says it of pot A, or the codes of its faults.
fn read_now(entry: &Value, ticks: &[String], change: impl FnOnce(&mut Pot)) -> Vec<String> {
    let (book, mut plan) = planned();
    change(&mut plan.plan.pots[0]);
    let pots: Named<PotNowEntry> = read_value(&json!({ "A": entry })).unwrap();
    let now = Now { pots: Some(&pots), ticks, ..Now::default() };
    let mut resolver = Resolver::new(book.ready().system);
    match read(book.ready(), &plan.plan, &now, &mut resolver) {
        Some(pots) => {
            let now = &pots[0];
            let shot: u32 = now.shot.iter().flatten().sum();
            vec![format!(
                "done {}, next {:?}, shot {shot}, heats {}",
                now.done, now.next_step, now.heats
            )]
        }
        None => resolver.faults.iter().map(|fault| fault.code.to_string()).collect(),
    }
}

// Measure, degas, heat, add salt, shoot, store: of 40 pieces 4 a shot, 10 shots.
#[rstest]
#[case(json!({ "done": 2 }), "done 2, next Some(3), shot 0, heats 0")]
#[case(json!({ "done": 3 }), "done 3, next Some(4), shot 0, heats 1")]
#[case(json!({ "done": 4, "shots": 0 }), "done 4, next Some(5), shot 0, heats 1")]
#[case(json!({ "done": 4, "shots": 1 }), "done 4, next Some(5), shot 1, heats 1")]
#[case(json!({ "done": 4, "shots": 9 }), "done 4, next Some(5), shot 9, heats 1")]
#[case(json!({ "done": 4, "shots": 10 }), "too-many-shots")]
#[case(json!({ "done": 3, "shots": 1 }), "shots-without-shooting")]
#[case(json!({ "done": 3, "shots": 0 }), "done 3, next Some(4), shot 0, heats 1")]
#[case(json!({ "done": 5 }), "done 5, next Some(6), shot 10, heats 1")]
#[case(json!({ "done": 6 }), "done 6, next None, shot 10, heats 1")]
#[case(json!({ "done": 7 }), "no-such-step")]
fn steps_that_are_done_are_counted(#[case] entry: Value, #[case] expected: &str) {
    assert_eq!(read_now(&entry, &[], |_| {}), [expected]);
}

#[test]
fn a_hot_pot_was_heated_once_at_least() {
    let there = |heats| {
        move |pot: &mut Pot| {
            let parts = vec![MaterialMass { material: "clear".into(), mass: mass(0.2) }];
            let (mass, fills) = (mass(0.2), pot.cup.clone());
            pot.there = Some(InPot {
                mass,
                fills,
                hot: true,
                degassed: false,
                heats,
                spent: None,
                parts,
                accepted: None,
            });
        }
    };
    for (heats, expected) in [(None, 1), (Some(0), 1), (Some(1), 1), (Some(3), 3)] {
        let found = read_now(&json!({}), &[], there(heats));
        assert_eq!(found, [format!("done 0, next Some(1), shot 0, heats {expected}")]);
    }
    let cold = |pot: &mut Pot| {
        there(None)(pot);
        pot.there.as_mut().unwrap().hot = false;
    };
    assert_eq!(read_now(&json!({}), &[], cold), ["done 0, next Some(1), shot 0, heats 0"]);
}

#[test]
fn a_pot_without_steps_has_none_that_is_done() {
    let (book, plan) = planned();
    let entry: PotNowEntry = read_value(&json!({ "done": 1 })).unwrap();
    let ticks = BTreeSet::new();
    let steps = Steps { steps: &[], pot: &plan.plan.pots[0], entry: Some(&entry), ticks: &ticks };
    let mut resolver = Resolver::new(book.ready().system);
    assert!(steps.run(book.ready(), &Path::ROOT, &mut resolver).is_none());
    assert_eq!(resolver.faults[0].code, "no-such-step");
}

#[rstest]
// 1 kg of base, 1/1.03 L.
#[case("0.5 kg", "1 L", Ok(0.5))]
#[case("485.4368932038835 mL", "600 mL", Ok(0.5))]
#[case("1.03 kg", "999 mL", Err("left-over-cup"))]
#[case("1.03 kg", "1 L", Ok(1.03))]
fn what_is_left_fits_its_cup(
    #[case] left: &str,
    #[case] cup: &str,
    #[case] expected: Result<f64, &str>,
) {
    let (book, _) = planned();
    let mut now = PotNow::new("A".into(), None);
    now.mix = kilograms(book.ready(), &[("clear", 1.03)]);
    now.cup = Some(read_value(&json!(cup)).unwrap());
    let mut resolver = Resolver::new(book.ready().system);
    let amount = Amount::parse(left).unwrap();
    let taken = now.left(&amount, book.ready(), &Path::ROOT, &mut resolver);
    match expected {
        Ok(kilograms) => {
            assert!(taken.is_some(), "{:?}", resolver.faults);
            near(&now, kilograms);
        }
        Err(code) => assert_eq!(resolver.faults[0].code, code),
    }
}

// Letters: l lost, e empty, s all shot, t a step is left, p a person said something of it.
#[rstest]
#[case("l", Some("pot-lost"))]
#[case("e", None)]
#[case("s", None)]
#[case("st", Some("pot-to-finish"))]
#[case("sp", Some("pot-not-used"))]
#[case("t", Some("pot-not-used"))]
#[case("", Some("pot-not-used"))]
fn a_pot_that_no_plan_uses_is_reported(#[case] is: &str, #[case] expected: Option<&str>) {
    let (book, pot) = with_draws();
    let mut now = PotNow::new("A".into(), Some(&pot));
    if !is.contains('e') {
        now.mix = kilograms(book.ready(), &[("clear", 0.2)]);
    }
    if is.contains('s') {
        now.shot[0] = vec![10, 5];
    }
    now.lost = is.contains('l');
    now.next_step = is.contains('t').then_some(4);
    now.is_said = is.contains('p');
    assert_eq!(now.note(None).map(|note| note.code).as_deref(), expected);
}

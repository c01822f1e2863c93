use serde_json::{Value, json};
use std::string::{String, ToString};
use std::vec::Vec;

use super::Reckoned;
use super::degas::SPARE;
use crate::document;
use crate::plan::Plan;
use crate::quantity::{Measurable, Time, Volume};

const BOOK: &str = include_str!("../../../examples/demo/book.json");

fn demo() -> Value {
    serde_json::from_str(BOOK).unwrap()
}

/// The plan of 24 salted and 24 plain worms in the shop of `book`.
fn plan(book: &Value) -> Plan {
    let book = document::book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let line = |product: &str| json!({ "order": "1", "product": product, "pieces": 24 });
    let orders = json!({
        "format": "pourwright/1.0",
        "lines": [line("dusk finger"), line("dusk finger, salted")]
    });
    let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
    Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"))
}

fn without(path: &str, field: &str) -> Value {
    let mut book = demo();
    book.pointer_mut(path).unwrap().as_object_mut().unwrap().remove(field);
    book
}

fn with(path: &str, field: &str, value: Value) -> Value {
    let mut book = demo();
    book.pointer_mut(path).unwrap()[field] = value;
    book
}

fn why<T>(reckoned: Option<&Reckoned<T>>) -> Option<&str> {
    match reckoned {
        Some(Reckoned::Unknown(note)) => Some(&note.code),
        _ => None,
    }
}

#[test]
fn a_salted_piece_sinks_faster_than_a_plain_one() {
    let plan = plan(&demo());
    let speed = |line: usize| {
        plan.lines[line].sinks.as_ref().and_then(Reckoned::known).unwrap().speed.quantity
    };
    assert!(speed(1) > speed(0));
}

#[test]
fn the_fills_hold_the_pot_and_stay_below_the_brim() {
    let plan = plan(&demo());
    let degas = plan.pots[0].degas.as_ref().and_then(Reckoned::known).unwrap();
    assert!(degas.level.quantity <= degas.fill_mark.quantity);
    assert!((degas.rise.quantity.value - 1.8).abs() < 1e-9);
    let brim = Volume::from_si(1150e-6);
    assert!(degas.swollen.quantity <= brim * (1.0 - SPARE));
    let held = degas.level.quantity * f64::from(degas.fills);
    assert!(held >= plan.pots[0].stages[0].fills.quantity);
}

/// Near the density of the sea a piece may fall much faster than told, or hang: the ± of its density is in the bounds.
#[test]
fn an_unsure_density_is_in_the_bounds() {
    let lake = plan(&demo());
    let pots = &lake.pots[0];
    let mut book = demo();
    book["limits"]["water"] = json!({ "temperature": "60 °F", "salinity": 35 });
    let sea = plan(&book);
    let sinks = sea.lines[0].sinks.as_ref().and_then(Reckoned::known).unwrap();
    let unsure = sinks.density_uncertainty.as_ref().unwrap().quantity;
    let of_pot = pots.stages[0].density_uncertainty.as_ref().unwrap().quantity;
    assert!(((unsure / of_pot).value - 1.0).abs() < 1e-12);
    let mold = document::book_from_text(&book.to_string()).unwrap();
    let (water, mold) =
        (mold.limits.water.unwrap().water, &mold.molds[mold.find_mold("finger-5").unwrap()]);
    let piece = sea.lines[0].piece.quantity;
    let body = mold.cavities[0].body.unwrap();
    let body = body.of(piece / sinks.density.quantity, mold.hook, &water).unwrap();
    for off in [-2.0, -1.0, 1.0, 2.0] {
        let speed = body.fall(sinks.density.quantity + off * unsure, &water).unwrap().speed;
        assert!(sinks.slowest.quantity < speed && speed < sinks.fastest.quantity, "{off}");
    }
    assert!(sea.sheet().to_string().contains(" g/mL ± 0.0"));
}

/// A drop of the shop's own tells how its pieces fall.
#[test]
fn a_drop_of_its_own_is_on_the_sheet() {
    let speed = |book: &Value| {
        plan(book).lines[0].sinks.as_ref().and_then(Reckoned::known).unwrap().speed.quantity.value
    };
    let own = |time: &str| {
        let drop = json!({ "depth": "1 m", "time": time, "density": "1.04 g/mL" });
        with("/molds/finger-5/body", "drop", drop)
    };
    assert!(speed(&own("14 s")) < speed(&own("7 s")));
    assert!((speed(&own("7 s")) / speed(&demo()) - 1.0).abs() > 0.01);
    let mut in_a_bucket = own("0.1 s");
    let at = "/molds/finger-5/body/drop";
    in_a_bucket.pointer_mut(at).unwrap()["water"] = json!({ "temperature": "20 °C" });
    let refused = document::book_from_text(&in_a_bucket.to_string()).unwrap_err();
    let refused: Vec<_> = refused.iter().map(|fault| (&*fault.path, &*fault.code)).collect();
    assert_eq!(refused, [(at, "sink-drop-too-quick")]);
}

/// A slip of the unit in a cavity or its body is a fault of the book.
#[test]
fn a_cavity_is_as_large_as_its_body() {
    let length = with("/molds/finger-5/body/stick", "length", json!("127 cm"));
    for book in [with("/molds/finger-5", "cavity", json!("92 mL")), length] {
        let refused = document::book_from_text(&book.to_string()).unwrap_err();
        let refused: Vec<_> = refused.iter().map(|fault| (&*fault.path, &*fault.code)).collect();
        assert_eq!(refused, [("/molds/finger-5/body", "sink-volume-not-of-body")]);
    }
    let claw = with("/molds/claw-set/cavities/short", "cavity", json!("46 mL"));
    let refused = document::book_from_text(&claw.to_string()).unwrap_err();
    assert_eq!(refused.iter().next().unwrap().path, "/molds/claw-set/cavities/short/body");
}

/// Near the end of its dial a gauge cannot tell how far a share of air swells; a rise that was seen still does.
#[test]
fn a_gauge_near_its_end_makes_no_fill_mark_of_a_share() {
    let share =
        |gauge: &str| with("/bench", "vacuum", json!({ "gauge": gauge, "entrained": "2 %" }));
    let plan_at = |gauge: &str| plan(&share(gauge));
    let degas = plan_at("25 inHg");
    let degas = degas.pots[0].degas.as_ref().and_then(Reckoned::known).unwrap();
    let least = degas.swells_at.as_ref().unwrap().quantity;
    assert!(least < degas.absolute.quantity && degas.at_most.is_none());
    for gauge in ["27 inHg", "27.6 inHg", "28.5 inHg"] {
        assert_eq!(why(plan_at(gauge).pots[0].degas.as_ref()), Some("degas-dial-cannot-tell"));
    }
    let seen = plan(&with("/bench/vacuum", "gauge", json!("27.8 inHg")));
    let sheet = seen.sheet().to_string();
    let sheet = sheet.split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(sheet.contains("1.8-fold") && sheet.contains("so near its end the gauge cannot tell"));
    assert!(sheet.contains("it reads at least 0.0"), "{sheet}");
}

#[test]
fn heats_are_counted_and_balanced() {
    let plan = plan(&demo());
    let heats = &plan.pots[0].heats;
    assert_eq!(heats.count, 2);
    let spent = heats.budget.as_ref().and_then(Reckoned::known).unwrap();
    let sum = spent.spent.quantity + spent.left.quantity;
    assert!((sum - spent.budget.quantity).value.abs() < 1e-6);
    // The budget of 45 min at 2 % of stabilizer, and what the teaspoon a cup has on top buys.
    let dose = 4.928_921_593_75 * 1.02 / (236.588_236_5 * 1.03);
    let budget = 45.0 * 60.0 + (dose - 0.02) * 100.0 * 8.0 * 60.0;
    assert!((spent.budget.quantity.value - budget).abs() < 1e-6 * budget);
}

/// What is spent beyond the budget is said, and nothing is then left.
#[test]
fn too_much_heat_is_said() {
    let book = with("/materials/clear-base/budget", "time", json!("6 min"));
    let plan = plan(&book);
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Reckoned::known).unwrap();
    assert!(spent.over.is_some() && spent.left.quantity == Time::default());
    assert!(plan.sheet().to_string().contains("TOO MUCH HEAT"));
}

#[test]
fn a_silent_book_gets_a_silent_plan() {
    let mut book = demo();
    for (path, field) in [("/bench", "vacuum"), ("/bench", "oven"), ("/limits", "water")] {
        book.pointer_mut(path).unwrap().as_object_mut().unwrap().remove(field);
    }
    book["materials"]["clear-base"].as_object_mut().unwrap().remove("budget");
    let plan = plan(&book);
    let pot = &plan.pots[0];
    assert_eq!((&pot.degas, &pot.stages[0].heating, &pot.heats.budget), (&None, &None, &None));
    assert!(plan.water.is_none() && plan.lines.iter().all(|line| line.sinks.is_none()));
    let sheet = plan.sheet().to_string();
    assert!(sheet.contains("No heat budget was given: 2 heats."), "{sheet}");
}

#[test]
fn what_is_missing_is_named() {
    let degas = |book: &Value| why(plan(book).pots[0].degas.as_ref()).map(String::from);
    assert_eq!(degas(&without("", "altitude")).as_deref(), Some("air-not-known"));
    assert_eq!(degas(&without("/bench/vacuum", "rise")).as_deref(), Some("rise-not-known"));
    let mut no_brim = demo();
    for cup in no_brim["bench"]["cups"].as_array_mut().unwrap() {
        cup.as_object_mut().unwrap().remove("brim");
    }
    assert_eq!(degas(&no_brim).as_deref(), Some("brim-not-known"));

    let heating = |book: &Value, stage: usize| {
        why(plan(book).pots[0].stages[stage].heating.as_ref()).map(String::from)
    };
    let no_reheat = without("/bench/oven", "reheat_from");
    assert_eq!(heating(&no_reheat, 0), None);
    assert_eq!(heating(&no_reheat, 1).as_deref(), Some("reheat-not-known"));
    let no_window = without("/materials/clear-base", "shot_window");
    assert_eq!(heating(&no_window, 0).as_deref(), Some("window-not-known"));

    let budget = |book: &Value| why(plan(book).pots[0].heats.budget.as_ref()).map(String::from);
    assert_eq!(budget(&no_reheat).as_deref(), Some("heating-not-known"));
    assert_eq!(budget(&without("/bench/oven", "hot_for")).as_deref(), Some("hot-time-not-known"));
    assert_eq!(budget(&without("/bench", "oven")).as_deref(), Some("oven-not-timed"));
    let no_energy = without("/materials/clear-base", "activation_energy");
    assert_eq!(budget(&no_energy).as_deref(), Some("budget-not-known"));

    let no_body = plan(&without("/molds/finger-5", "body"));
    assert_eq!(why(no_body.lines[0].sinks.as_ref()), Some("body-not-known"));
}

#[test]
fn a_specific_heat_is_taken_from_the_rest_only_where_it_hardly_counts() {
    let plan_of = |book: &Value| plan(book);
    let demo = plan_of(&demo());
    assert!(demo.assumptions.iter().any(|note| note.code == "specific-heat-assumed"));
    let mut book = with("/bench/oven", "of", json!("firm-base"));
    book["materials"]["clear-base"].as_object_mut().unwrap().remove("specific_heat");
    let plan = plan_of(&book);
    assert_eq!(why(plan.pots[0].stages[0].heating.as_ref()), Some("specific-heat-not-known"));
}

#[test]
fn more_stabilizer_than_the_figure_holds_for_is_said() {
    let book = with("/materials/stabilizer/buys", "most", json!("2.01 %"));
    let plan = plan(&book);
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Reckoned::known).unwrap();
    assert!(spent.more_stabilizer_not_counted);
    let book = with("/materials/clear-base/budget", "with", json!("3 %"));
    let plan = self::plan(&book);
    assert_eq!(why(plan.pots[0].heats.budget.as_ref()), Some("budget-too-little-stabilizer"));
}

/// A plan that was kept as a record is the same when it is read again.
#[test]
fn a_plan_comes_back_from_its_document() {
    let plan = plan(&demo());
    let text = serde_json::to_string(&plan).unwrap();
    assert_eq!(
        serde_json::from_str::<Plan>(&text).unwrap().sheet().to_string(),
        plan.sheet().to_string()
    );
}

use serde_json::{Value, json};
use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

use super::degas::SPARE;
use crate::document;
use crate::plan::Plan;
use crate::quantity::{Measurable, Time, Volume};
use crate::show::Calculated;

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

/// The sheet without its line breaks.
fn sheet(plan: &Plan) -> String {
    let sheet = plan.sheet().to_string();
    sheet.split_whitespace().collect::<std::vec::Vec<_>>().join(" ")
}

fn why<T>(reckoned: Option<&Calculated<T>>) -> Option<&str> {
    match reckoned {
        Some(Calculated::Unknown(note)) => Some(&note.code),
        _ => None,
    }
}

#[test]
fn a_salted_piece_sinks_faster_than_a_plain_one() {
    let plan = plan(&demo());
    let speed = |line: usize| {
        plan.lines[line].sinks.as_ref().and_then(Calculated::known).unwrap().speed.quantity
    };
    assert!(speed(1) > speed(0));
}

#[test]
fn the_fills_hold_the_pot_and_stay_below_the_brim() {
    let plan = plan(&demo());
    let degas = plan.pots[0].degas.as_ref().and_then(Calculated::known).unwrap();
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
    let sinks = sea.lines[0].sinks.as_ref().and_then(Calculated::known).unwrap();
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
        plan(book).lines[0].sinks.as_ref().and_then(Calculated::known).unwrap().speed.quantity.value
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
    let degas = degas.pots[0].degas.as_ref().and_then(Calculated::known).unwrap();
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
    let spent = heats.budget.as_ref().and_then(Calculated::known).unwrap();
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
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Calculated::known).unwrap();
    assert!(spent.over.is_some() && spent.left.quantity == Time::default());
    let told = sheet(&plan);
    let head = told.find("! Pot A gets TOO MUCH HEAT: ").unwrap();
    assert!(head < told.find("dusk + plain: measure the base").unwrap(), "{told}");
    let notes = plan.assumptions.iter().filter(|note| note.code == "too-much-heat");
    let notes: std::vec::Vec<_> = notes.collect();
    assert_eq!(notes.len(), 1);
    assert!(notes[0].message.contains("or a pot of its own for dusk + salted"), "{notes:?}");
    // With so much more of it the same pot stands its heat, and with a little less it does not.
    let needs = spent.needs.as_ref().unwrap();
    assert_eq!(needs.material, "stabilizer");
    let base = plan.pots[0].stages[0].weigh[0].wanted.quantity;
    let per_cup = |part: f64| {
        let dose = 0.020_630_6 + part * (needs.mass.quantity / base).value;
        let book = with("/materials/clear-base/budget", "time", json!("6 min"));
        let mut book = book;
        let doses = format!("{} % of base", 100.0 * dose);
        for formula in ["plain", "salted"] {
            book["formulas"][formula]["doses"]["stabilizer"] = json!(doses);
        }
        let plan = self::plan(&book);
        plan.pots[0].heats.budget.as_ref().and_then(Calculated::known).unwrap().over.is_some()
    };
    assert_eq!((per_cup(0.95), per_cup(1.05)), (true, false));
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

// A cup of 590 mL to its brim, a tenth of it spare, and threefold: a first mark of 177 mL at most.
#[test]
fn a_vacuum_in_which_nothing_was_seen_gives_a_careful_first_mark() {
    let plan = plan(&without("/bench/vacuum", "rise"));
    for pot in &plan.pots {
        let degas = pot.degas.as_ref().and_then(Calculated::known).unwrap();
        assert!((degas.rise.quantity.value - 3.0).abs() < 1e-9);
        assert!(degas.swollen.quantity.value < 2.2e-3);
        let assumed = degas.assumed.as_ref().unwrap();
        assert_eq!(assumed.code, "rise-assumed");
        assert!(assumed.message.contains("let some air in"), "{}", assumed.message);
    }
    assert!(sheet(&plan).contains("Watch it"));
    let seen = self::plan(&demo());
    assert!(seen.pots[0].degas.as_ref().and_then(Calculated::known).unwrap().assumed.is_none());
}

#[test]
fn what_is_missing_is_named() {
    let degas = |book: &Value| why(plan(book).pots[0].degas.as_ref()).map(String::from);
    assert_eq!(degas(&without("", "altitude")).as_deref(), Some("air-not-known"));
    assert_eq!(degas(&without("/bench/vacuum", "rise")), None);
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
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Calculated::known).unwrap();
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

/// A day of the demo shop with a left-over on the shelf: dusk + plain, 500 g of it.
#[cfg(feature = "solver")]
fn with_left_over(book: &Value, heats: Value, spent: Value) -> Plan {
    let book = document::book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let mut left_over = json!({ "name": "jar 1", "mass": "500 g", "formulas": ["dusk", "plain"] });
    for (field, value) in [("heats", heats), ("spent", spent)] {
        if !value.is_null() {
            left_over[field] = value;
        }
    }
    let orders = json!({
        "format": "pourwright/1.0",
        "lines": [{ "order": "1", "product": "dusk finger", "pieces": 40 }],
        "shelf": [left_over]
    });
    let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
    Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"))
}

#[cfg(feature = "solver")]
#[test]
fn what_a_left_over_has_been_through_counts_on() {
    let alone = with_left_over(&demo(), json!(40), Value::Null).pots[0].heats.count;
    assert_eq!(alone, 1);
    let plan = with_left_over(&demo(), json!(40), json!("18.5 min"));
    let pot = &plan.pots[0];
    assert_eq!((pot.heats.count, pot.heats.in_all), (1, Some(41)));
    let spent = pot.heats.budget.as_ref().and_then(Calculated::known).unwrap();
    let before = spent.before.as_ref().unwrap().quantity;
    assert_eq!(before, Time::from_si(1110.0));
    // The heat of the same pot without a left-over comes on top.
    let mut fresh = spent.clone();
    let heating = pot.stages[0].heating.as_ref().and_then(Calculated::known).unwrap();
    fresh.spent.quantity -= before;
    assert!(fresh.spent.quantity > Time::from_si(7.0 * 60.0 * 0.6), "{:?}", fresh.spent);
    assert!(fresh.spent.quantity < Time::from_si(480.0) + heating.total.quantity);
    let sum = spent.spent.quantity + spent.left.quantity;
    assert!((sum - spent.budget.quantity).value.abs() < 1e-6);
    let sheet = sheet(&plan);
    for told in ["(40 heats, 18.5 min spent)", "1 heat, 41 with those of", "(41 heats, "] {
        assert!(sheet.contains(told), "{told}: {sheet}");
    }
}

#[cfg(feature = "solver")]
#[test]
fn what_a_left_over_does_not_say_stays_unknown() {
    for heats in [json!(40), Value::Null] {
        let plan = with_left_over(&demo(), heats.clone(), Value::Null);
        let pot = &plan.pots[0];
        assert!(pot.from_shelf.is_some());
        assert_eq!(pot.heats.in_all, heats.as_u64().map(|_| 41));
        assert_eq!(why(pot.heats.budget.as_ref()), Some("left-over-heat-not-known"));
        let sheet = sheet(&plan);
        assert!(sheet.contains("\"jar 1\" from the shelf states no \"spent\" time"), "{sheet}");
        assert!(!sheet.contains("min left"), "{sheet}");
    }
}

#[test]
fn spent_time_counts_at_the_temperature_of_one_budget() {
    let faults = |book: &Value| -> std::vec::Vec<String> {
        let book = document::book_from_text(&book.to_string()).unwrap();
        let orders = json!({
            "format": "pourwright/1.0", "lines": [],
            "shelf": [{ "name": "jar 1", "mass": "90 g", "formulas": ["firm"], "spent": "9 min" }]
        });
        let day = document::orders_from_text(&orders.to_string(), &book);
        let faults = day.map_or_else(|faults| faults.into_vec(), |_| [].into());
        faults.into_iter().filter(|f| f.path == "/shelf/0/spent").map(|f| f.code.into()).collect()
    };
    assert!(faults(&demo()).is_empty());
    let other = with("/materials/firm-base/budget", "at", json!("340 °F"));
    assert_eq!(faults(&other), ["spent-at-two-temperatures"]);
    let mut none = without("/materials/firm-base", "budget");
    none["materials"]["clear-base"].as_object_mut().unwrap().remove("budget");
    assert_eq!(faults(&none), ["spent-without-budget"]);
}

/// A shop whose timings scatter: 1 cup in 121 s, 3 cups in 400 s. Burst 2 and those after it bind.
#[test]
fn each_burst_that_may_overshoot_has_its_limit_on_the_sheet() {
    let timings = json!([
        { "mix": "1 cup", "from": "68 °F", "to": "335 °F", "time": "121 s" },
        { "mix": "3 cup", "from": "70 °F", "to": "340 °F", "time": "400 s" }
    ]);
    let plan = plan(&with("/bench/oven", "timings", timings));
    let sheet = sheet(&plan);
    let first = plan.pots[0].stages[0].heating.as_ref().and_then(Calculated::known).unwrap();
    let binding = first.bursts.windows(2).filter(|two| {
        let [before, burst] = two else { return false };
        before.at_most.quantity > burst.only_below.quantity
    });
    let binding: std::vec::Vec<_> = binding.map(|two| &two[1]).collect();
    assert!(binding.len() > 1, "{first:?}");
    for burst in binding {
        let told =
            format!("{} only if it shows {} or less", burst.duration.text, burst.only_below.text);
        assert!(sheet.contains(&told), "{told}: {sheet}");
    }
    assert!(first.bursts.iter().all(|burst| burst.duration.quantity >= Time::from_si(5.0)));
    // What a reheated pot has is an assumption: its first burst has a limit, too.
    let again = plan.pots[0].stages[1].heating.as_ref().and_then(Calculated::known).unwrap();
    let begins = format!(
        "to {}: {} only if it shows {} or less",
        again.bursts.last().unwrap().expected.text,
        again.bursts[0].duration.text,
        again.bursts[0].only_below.text
    );
    assert!(sheet.contains(&begins), "{begins}: {sheet}");
}

/// A cold pot is heated in a warm room, too: at 86 °F its first burst may still be run.
#[test]
fn the_first_burst_holds_in_a_warm_room() {
    let book = document::book_from_text(BOOK).unwrap();
    let orders = include_str!("../../../examples/demo/orders.json");
    let day = document::orders_from_text(orders, &book).unwrap();
    let plan = Plan::make(&book, &day).unwrap();
    let heatings = plan.pots.iter().filter_map(|pot| pot.stages[0].heating.as_ref()?.known());
    let first: std::vec::Vec<_> = heatings.map(|heating| &heating.bursts[0]).collect();
    assert!(first.len() > 3);
    for burst in first {
        assert!(burst.only_below.quantity.value >= 303.15 - 1e-9, "{burst:?}");
    }
}

#[test]
fn the_setting_of_the_oven_reaches_the_bench() {
    let told = "at 50 % of the oven's power in short bursts";
    assert!(!sheet(&plan(&demo())).contains("of the oven's power"));
    assert!(sheet(&plan(&with("/bench/oven", "setting", json!("50 %")))).contains(told));
    let mut book = demo();
    for timing in book["bench"]["oven"]["timings"].as_array_mut().unwrap() {
        timing["setting"] = json!("50 %");
    }
    assert!(sheet(&plan(&book)).contains(told));
    book["bench"]["oven"]["timings"][2].as_object_mut().unwrap().remove("setting");
    let faults = document::book_from_text(&book.to_string()).unwrap_err();
    let told: std::vec::Vec<_> = faults.iter().map(|f| (&*f.code, &*f.path)).collect();
    assert_eq!(told, [("heat-mixed-settings", "/bench/oven/timings")]);
}

/// Of pots that are hot at once the sheet tells the order, and the times of one load: the small one has none
/// alone.
#[test]
fn pots_that_are_hot_at_once_are_heated_in_order_or_together() {
    let book = document::book_from_text(BOOK).unwrap();
    let orders = include_str!("../../../examples/demo/orders.json");
    let day = document::orders_from_text(orders, &book).unwrap();
    let plan = Plan::make(&book, &day).unwrap();
    let work = plan.work.iter().find(|work| work.mold == "minnow-3").unwrap();
    let one_load = work.heating.as_ref().and_then(Calculated::known).unwrap();
    let single = |pot: usize| plan.pots[pot].stages[0].heating.as_ref().unwrap();
    assert!(single(2).known().is_none());
    let alone = single(1).known().unwrap();
    let masses = [1, 2].map(|pot: usize| plan.pots[pot].stages[0].holds.quantity.value);
    // The specific heats differ by the colors alone, the power is the same.
    let ratio = one_load.total.quantity.value / alone.total.quantity.value;
    assert!((ratio - (masses[0] + masses[1]) / masses[0]).abs() < 0.01, "{ratio}");
    assert!(plan.work.iter().filter(|work| work.heating.is_some()).count() == 1);
    let sheet = sheet(&plan);
    for told in [
        "heat pot B, then pot C",
        "Or together as one load",
        "from 177 mL (3/4 cup) to 1035 mL (4 3/8 cup)",
    ] {
        assert!(sheet.contains(told), "{told}: {sheet}");
    }
}

/// A cup that weighs something takes its share of the heat, in the timings and on the day.
#[test]
fn a_cups_own_mass_counts_in_heating() {
    // The uncertainty is the same share of the whole time for both, which the bursts need not fill.
    let unsure = |book: &Value| {
        let plan = plan(book);
        plan.pots[0].stages[0]
            .heating
            .as_ref()
            .and_then(Calculated::known)
            .unwrap()
            .uncertainty
            .as_ref()
            .unwrap()
            .quantity
            .value
    };
    let glass = |book: &mut Value, mass: &str| {
        for cup in book["bench"]["cups"].as_array_mut().unwrap() {
            cup["mass"] = json!(mass);
            cup["specific_heat"] = json!("0.8 J/(g.K)");
        }
    };
    let timed = |book: &mut Value, mass: &str| {
        for timing in book["bench"]["oven"]["timings"].as_array_mut().unwrap() {
            timing["vessel"] = json!(mass);
            timing["vessel_specific_heat"] = json!("0.8 J/(g.K)");
        }
    };
    let mut heavier = demo();
    glass(&mut heavier, "900 g");
    let faults = document::book_from_text(&heavier.to_string()).unwrap_err();
    let told: std::vec::Vec<_> = faults.iter().map(|f| (&*f.code, &*f.path)).collect();
    assert_eq!(told[0], ("vessel-not-of-all", "/bench/oven/timings/0"));
    assert_eq!(told.len(), 3);
    timed(&mut heavier, "300 g");
    let mut alike = demo();
    glass(&mut alike, "300 g");
    timed(&mut alike, "300 g");
    // 600 g more of 0.8 J/(g K) on 817 g of 1.9 and 300 g of 0.8 J/(g K).
    let ratio = unsure(&heavier) / unsure(&alike);
    let mix = plan(&demo()).pots[0].stages[0].holds.quantity.value * 1000.0 * 1.9;
    assert!((ratio - (mix + 720.0) / (mix + 240.0)).abs() < 0.01, "{ratio}");
    heavier["bench"]["cups"][1].as_object_mut().unwrap().remove("specific_heat");
    let faults = document::book_from_text(&heavier.to_string()).unwrap_err();
    assert_eq!(faults.iter().next().map(|f| &*f.code), Some("vessel-half-known"));
}

#[test]
fn a_timing_that_cannot_be_believed_is_questioned() {
    let asked = |mix: &str, to: &str, time: &str| {
        let mut book = demo();
        let timing = json!({ "mix": mix, "from": "68 °F", "to": to, "time": time });
        book["bench"]["oven"]["timings"].as_array_mut().unwrap().push(timing);
        let plan = plan(&book);
        let notes = plan.assumptions.iter().filter(|note| note.code.starts_with("timing-"));
        notes.map(|note| note.message.clone()).collect::<std::vec::Vec<_>>().join("; ")
    };
    assert_eq!(asked("2 cup", "335 °F", "240 s"), "");
    assert!(asked("2 cup", "335 °F", "400 s").starts_with("Timing 4 does not fit the others"));
    let hot = asked("2 cup", "335 °C", "400 s");
    assert!(hot.starts_with("Timing 4 ends at 635 °F (335 °C), far above the 350 °F"), "{hot}");
}

use serde_json::{Value, json};
use std::format;
use std::string::{String, ToString};
use std::vec::Vec;

use super::degas::SPARE;
use crate::document;
use crate::material::Adding;
use crate::plan::{Plan, PlannedHeating, Stage};
use crate::process::heat::{Load, Window};
use crate::quantity::{HeatCapacity, Mass, Measurable, Time, Volume};
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

/// The sheet and the notes without their line breaks.
fn sheet(plan: &Plan) -> String {
    let both = format!("{}\n{}", plan.sheet(), plan.notes());
    both.split_whitespace().collect::<std::vec::Vec<_>>().join(" ")
}

fn why<T>(calculated: Option<&Calculated<T>>) -> Option<&str> {
    match calculated {
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

/// Near the density of the sea a piece may sink much faster than shown, or hang: the ± of its density is in the bounds.
#[test]
fn an_unsure_density_is_in_the_bounds() {
    let lake = plan(&demo());
    let pots = &lake.pots[0];
    let mut book = demo();
    book["limits"]["water"] = json!({ "temperature": "60 °F", "salinity_practical": 35 });
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
    assert!(sheet(&sea).contains(" g/mL ± 0.0"));
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
    let sheet = sheet(&seen);
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

/// Heat spent beyond the budget is shown, and none is then left.
#[test]
fn too_much_heat_is_shown() {
    let book = with("/materials/clear-base/budget", "time", json!("6 min"));
    let plan = plan(&book);
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Calculated::known).unwrap();
    assert!(spent.over.is_some() && spent.left.quantity == Time::default());
    let text = sheet(&plan);
    let head = text.find("! Pot A gets TOO MUCH HEAT: ").unwrap();
    assert!(head < text.find("MEASURE for dusk + plain").unwrap(), "{text}");
    let notes = plan.assumptions.iter().filter(|note| note.code == "too-much-heat");
    let notes: std::vec::Vec<_> = notes.collect();
    assert_eq!(notes.len(), 1);
    assert!(notes[0].message.contains("or a pot of its own for dusk + salted"), "{notes:?}");
    // With that much more of it the same pot withstands its heat, and with a little less it does not.
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
    let sheet = sheet(&plan);
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
    assert_eq!(heating(&no_reheat, 1), None);
    let no_window = without("/materials/clear-base", "shot_window");
    assert_eq!(heating(&no_window, 0).as_deref(), Some("window-not-known"));

    let budget = |book: &Value| why(plan(book).pots[0].heats.budget.as_ref()).map(String::from);
    assert_eq!(budget(&no_reheat).as_deref(), Some("reheat-not-known"));
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

/// A leftover goes into the first stage, and what is left of that into the second.
#[test]
fn no_stage_over_a_leftover_has_a_known_uncertainty() {
    let book = demo();
    let book = document::book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let unsure = |shelf: Value| {
        let line = |product: &str| json!({ "order": "1", "product": product, "pieces": 24 });
        let orders = json!({
            "format": "pourwright/1.0",
            "lines": [line("dusk finger"), line("dusk finger, salted")],
            "shelf": shelf
        });
        let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
        let plan = Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"));
        assert_eq!(plan.pots[0].from_shelf.is_some(), shelf != json!([]));
        let stages = plan.pots[0].stages.iter();
        let each = stages.map(|stage| {
            let piece = stage.draws[0].pieces[0].uncertainty.is_some();
            (stage.density_uncertainty.is_some(), piece)
        });
        each.collect::<Vec<_>>()
    };
    assert_eq!(unsure(json!([])), [(true, true); 2]);
    let jar = json!({ "name": "jar 1", "mass": "90 g", "formulas": ["dusk", "plain"] });
    assert_eq!(unsure(json!([jar])), [(false, false); 2]);
}

/// A day of the demo shop with a left-over on the shelf: dusk + plain, 500 g of it.
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
        "lines": [{ "order": "1", "product": "dusk finger", "pieces": 28 }],
        "shelf": [left_over]
    });
    let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
    Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"))
}

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
    // Its shots of 50 s last for less than 8 min, at some 0.59 of the rate that 350 °F has.
    assert!(fresh.spent.quantity > Time::from_si(3.0 * 60.0), "{:?}", fresh.spent);
    assert!(fresh.spent.quantity < Time::from_si(480.0) + heating.total.quantity);
    let sum = spent.spent.quantity + spent.left.quantity;
    assert!((sum - spent.budget.quantity).value.abs() < 1e-6);
    let sheet = sheet(&plan);
    for text in ["(40 heats, 18.5 min spent)", "1 heat, 41 with those of", " 41 heats, "] {
        assert!(sheet.contains(text), "{text}: {sheet}");
    }
}

/// The pot is heated with the hot additions that its left-over brings, so that a burst warms it less.
#[test]
fn what_a_left_over_brings_does_not_go_in_hot() {
    let alone = plan_of(&demo(), "dusk finger", 28);
    let plan = with_left_over(&demo(), json!(1), json!("1 min"));
    let [alone, with] = [&alone, &plan].map(|plan| &plan.pots[0].stages[0]);
    assert_eq!(alone.holds.quantity, with.holds.quantity);
    let hot = |stage: &Stage| {
        let hot = stage.weigh.iter().filter(|one| one.add.when == Adding::Hot);
        hot.fold(Mass::default(), |sum, one| sum + one.wanted.quantity)
    };
    assert!(hot(with) < hot(alone), "{:?} {:?}", hot(with), hot(alone));
    let ends = |stage: &Stage| {
        let heating = stage.heating.as_ref().and_then(Calculated::known).unwrap();
        heating.bands.iter().map(|band| band.at_most.quantity).collect::<Vec<_>>()
    };
    for (with, alone) in ends(with).iter().zip(&ends(alone)) {
        assert!(with < alone);
    }
}

#[test]
fn what_a_left_over_does_not_say_stays_unknown() {
    for heats in [json!(40), Value::Null] {
        let plan = with_left_over(&demo(), heats.clone(), Value::Null);
        let pot = &plan.pots[0];
        assert!(pot.from_shelf.is_some());
        assert_eq!(pot.heats.in_all, heats.as_u64().map(|_| 41));
        assert_eq!(why(pot.heats.budget.as_ref()), Some("left-over-heat-not-known"));
        let sheet = sheet(&plan);
        assert!(
            sheet.contains("\"jar 1\" was heated before and states no \"spent\" time"),
            "{sheet}"
        );
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

/// The sheet has the whole table of each heat: every burst with its reading, the first one too.
#[test]
fn each_burst_has_its_reading_on_the_sheet() {
    let plan = plan(&demo());
    let sheet = sheet(&plan);
    let figure = |text: &str| text.split(' ').next().unwrap().to_string();
    for (stage, then) in plan.pots[0].stages.iter().zip(["step 4", "step 8"]) {
        let heating = stage.heating.as_ref().and_then(Calculated::known).unwrap();
        let below: Vec<String> =
            heating.bands.iter().map(|band| figure(&band.below.text)).collect();
        let to = figure(&heating.shoot_to.text);
        let mut reads = format!("under {}", below[0]);
        for two in below.windows(2) {
            reads += &format!(" {}-{}", two[0], two[1]);
        }
        reads += &format!(" {}-{to} over {to} heat", below[below.len() - 1]);
        for band in &heating.bands {
            reads += &format!(" {}", band.burst.text);
        }
        reads += &format!(" {then} let cool");
        assert!(sheet.contains(&reads), "{reads}: {sheet}");
        for band in &heating.bands {
            assert!(band.burst.quantity.value % 5.0 == 0.0, "{band:?}");
            assert!(band.at_most.quantity <= stage.shoot_to.as_ref().unwrap().quantity);
        }
    }
}

#[test]
fn the_setting_of_the_oven_reaches_the_bench() {
    let text = "HEAT at 50 % of the oven's power by the thermometer";
    assert!(!sheet(&plan(&demo())).contains("of the oven's power"));
    assert!(sheet(&plan(&with("/bench/oven", "setting", json!("50 %")))).contains(text));
    let mut book = demo();
    for timing in book["bench"]["oven"]["timings"].as_array_mut().unwrap() {
        timing["setting"] = json!("50 %");
    }
    assert!(sheet(&plan(&book)).contains(text));
    book["bench"]["oven"]["timings"][2].as_object_mut().unwrap().remove("setting");
    let faults = document::book_from_text(&book.to_string()).unwrap_err();
    let text: std::vec::Vec<_> = faults.iter().map(|f| (&*f.code, &*f.path)).collect();
    assert_eq!(text, [("heat-mixed-settings", "/bench/oven/timings")]);
}

/// Pots that are hot at once are heated one after the other: unlike cups are never on one clock, and the small one
/// has bursts of its own.
#[test]
fn unlike_pots_are_never_on_one_clock() {
    let book = document::book_from_text(BOOK).unwrap();
    let orders = include_str!("../../../examples/demo/orders.json");
    let day = document::orders_from_text(orders, &book).unwrap();
    let plan = Plan::make(&book, &day).unwrap();
    assert!(plan.work.iter().all(|work| work.heating.is_none()));
    for stage in plan.pots.iter().flat_map(|pot| &pot.stages) {
        assert!(
            stage.heating.as_ref().and_then(Calculated::known).is_some(),
            "{:?}",
            stage.heating
        );
    }
    let sheet = sheet(&plan);
    assert!(sheet.contains("heat pot B, then pot C"), "{sheet}");
    assert!(!sheet.contains("on one clock") && !sheet.contains("No heating times"), "{sheet}");
}

/// A cup that weighs something takes its share of the heat, in the timings and on the day.
#[test]
fn a_cups_own_mass_counts_in_heating() {
    // What a burst warms the pot at most, per second, from the top of a band of 2 K thermometers.
    let rate = |book: &Value| {
        let plan = plan(book);
        let heating = plan.pots[0].stages[0].heating.as_ref().and_then(Calculated::known).unwrap();
        let band = heating.bands.last().unwrap();
        (band.at_most.quantity.value - band.below.quantity.value - 2.0) / band.burst.quantity.value
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
    let text: std::vec::Vec<_> = faults.iter().map(|f| (&*f.code, &*f.path)).collect();
    assert_eq!(text[0], ("vessel-not-of-all", "/bench/oven/timings/0"));
    assert_eq!(text.len(), 4);
    timed(&mut heavier, "300 g");
    let mut alike = demo();
    glass(&mut alike, "300 g");
    timed(&mut alike, "300 g");
    // 600 g more of 0.8 J/(g K) on 817 g of 1.9 and 300 g of 0.8 J/(g K).
    let ratio = rate(&alike) / rate(&heavier);
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
        assert_eq!(sheet(&plan).contains("CHECK FIRST"), !plan.questions.is_empty());
        plan.questions
            .iter()
            .map(|note| note.message.clone())
            .collect::<std::vec::Vec<_>>()
            .join("; ")
    };
    assert_eq!(asked("2 cup", "335 °F", "210 s"), "");
    assert!(asked("2 cup", "335 °F", "400 s").starts_with("Timing 5 does not fit the others"));
    let hot = asked("2 cup", "215 °C", "400 s");
    assert!(hot.starts_with("Timing 5 ends at 419 °F (215 °C), far above the 350 °F"), "{hot}");
}

/// The plan of a number of pieces of one product in the shop of `book`.
fn plan_of(book: &Value, product: &str, pieces: u32) -> Plan {
    let book = document::book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let orders = json!({
        "format": "pourwright/1.0",
        "lines": [{ "order": "1", "product": product, "pieces": pieces }]
    });
    let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
    Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"))
}

fn shots_of_heats(plan: &Plan) -> Vec<u32> {
    let stages = plan.pots.iter().flat_map(|pot| &pot.stages);
    let clocks = stages.map(|stage| stage.clock.as_ref().and_then(Calculated::known).unwrap());
    clocks.flatten().map(|heat| heat.shots).collect()
}

fn without_rejects() -> Value {
    with("/limits", "rejects", json!("0 %"))
}

/// 22 shots of 50 s from a pot that stays hot for 8 min: 9 in the first heat, 9 and 4 after two reheats, all of them
/// counted, in the budget too (plain arithmetic).
#[test]
fn shots_beyond_one_heat_take_reheats() {
    let plan = plan_of(&without_rejects(), "dusk finger", 88);
    assert_eq!(plan.pots.len(), 1);
    let stage = &plan.pots[0].stages[0];
    assert_eq!((stage.draws[0].shots, stage.heats, plan.pots[0].heats.count), (22, 3, 3));
    assert_eq!(shots_of_heats(&plan), [9, 9, 4]);
    let heats = stage.clock.as_ref().and_then(Calculated::known).unwrap();
    assert!(heats[0].heating.is_none() && heats[1].heating.is_some());
    let left = stage.holds.quantity - 9.0 * stage.draws[0].per_shot.quantity;
    assert!((heats[1].holds.quantity / left).value - 1.0 < 1e-9);
    // A pot with less in it heats faster: its bands end earlier.
    let longest = |heating: &Calculated<crate::plan::PlannedHeating>| {
        heating.known().unwrap().bands.last().unwrap().burst.quantity
    };
    assert!(
        longest(heats[2].heating.as_ref().unwrap()) <= longest(stage.heating.as_ref().unwrap())
    );
    // The three heats at the aim of 337.5 °F last as long as the shots, 18 min 20 s, and the way up comes on top.
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Calculated::known).unwrap();
    let rate = 0.588_f64;
    let held = 1100.0 * rate;
    assert!((held..1.35 * held).contains(&spent.spent.quantity.value), "{:?}", spent.spent);
    let sheet = sheet(&plan);
    for text in [
        "REHEAT for the next 9 shots, with what has set in the injector.",
        "REHEAT for the next 4 shots,",
        "3 heats",
    ] {
        assert!(sheet.contains(text), "{text}: {sheet}");
    }
}

#[test]
fn both_pots_of_a_laminate_are_heated_again() {
    // 12 shots of 50 s are 10 min.
    let mut book = without_rejects();
    book["molds"]["minnow-3"]["rejects"] = json!("0 %");
    let plan = plan_of(&book, "shell over reed minnow", 72);
    assert_eq!(plan.pots.len(), 2);
    assert_eq!(shots_of_heats(&plan), [9, 3, 9, 3]);
    assert!(plan.pots.iter().all(|pot| pot.heats.count == 2));
    let line = plan.clock.as_ref().and_then(Calculated::known).unwrap();
    let reheated: Vec<&str> = line
        .spans
        .iter()
        .filter(|span| span.doing == crate::plan::Doing::Reheat)
        .map(|span| span.pots[0].as_str())
        .collect();
    assert_eq!(reheated, ["A", "B"]);
}

/// The heats that the book allows include the reheats: 22 shots, 9 a heat.
#[test]
fn a_pot_takes_no_more_heats_than_allowed() {
    let mut book = without_rejects();
    let mut pots = |allowed: u32| {
        book["limits"]["heats"] = json!(allowed);
        let plan = plan_of(&book, "dusk finger", 88);
        assert!(plan.assumptions.iter().all(|note| note.code != "too-many-heats"));
        let heats: Vec<u32> = plan.pots.iter().map(|pot| pot.heats.count).collect();
        (heats, plan.proof)
    };
    assert_eq!(pots(3).0, [3]);
    let (heats, proof) = pots(2);
    assert_eq!((heats, proof.pots, proof.least), (Vec::from([2, 1]), 2, 2));
    let why = &proof.reasons[0].formulas[0].because;
    assert_eq!(why, "22 shots of one mold, of which a pot gives at most 18 in 2 heats");
    assert_eq!(pots(1).0, [1, 1, 1]);
}

/// 120 salted pieces are 30 shots, 9 a heat: two pots of 2 heats. So where the cooling of pots was watched.
#[test]
fn a_day_of_salted_pieces_is_split_where_its_reheats_add_up() {
    let mut book = without_rejects();
    book["limits"]["heats"] = json!(2);
    let plan = plan_of(&book, "dusk finger, salted", 120);
    let heats: Vec<u32> = plan.pots.iter().map(|pot| pot.heats.count).collect();
    assert_eq!((heats, plan.proof.least), (Vec::from([2, 2]), 2));
    assert_eq!(shots_of_heats(&plan), [9, 9, 9, 3]);
    let oven = book["bench"]["oven"].as_object_mut().unwrap();
    oven.remove("hot_for");
    oven.insert(
        "cools".into(),
        json!({ "mix": "2 cup", "from": "340 °F", "to": "325 °F", "time": "6 min" }),
    );
    let plan = plan_of(&book, "dusk finger, salted", 120);
    assert!(plan.pots.len() > 1 && plan.pots.iter().all(|pot| pot.heats.count <= 2));
    assert!(shots_of_heats(&plan).len() > plan.pots.len());
    assert!(plan.proof.least <= plan.proof.pots);
}

#[test]
fn a_shot_that_no_heat_has_time_for_is_refused_where_heats_are_limited() {
    let mut book = without_rejects();
    book["molds"]["finger-5"]["sets"] = json!("8 min");
    plan_of(&book, "dusk finger", 8);
    book["limits"]["heats"] = json!(3);
    let book = document::book_from_text(&book.to_string()).unwrap();
    let orders = json!({
        "format": "pourwright/1.0",
        "lines": [{ "order": "1", "product": "dusk finger", "pieces": 8 }]
    });
    let day = document::orders_from_text(&orders.to_string(), &book).unwrap();
    let faults = Plan::make(&book, &day).unwrap_err();
    let fault = faults.iter().next().unwrap();
    assert_eq!((&*fault.code, &*fault.path), ("pot-shot-too-long", "/lines/0"));
    assert!(fault.message.contains("takes 8 min 50 s, but a pot of"), "{fault}");
    assert!(fault.message.contains("stays hot for 8 min"), "{fault}");
    assert!(fault.help.contains("molds in turn"), "{fault}");
}

/// A shot that sets for 100 s in one mold can be made every 150 s, in three of them every 50 s; the shop's own time
/// wins over the thickness.
#[test]
fn molds_and_thickness_say_how_often_a_shot_can_be_made() {
    let heats = |count: u32, sets: Option<&str>| {
        let mut book = without_rejects();
        book["molds"]["finger-5"]["count"] = json!(count);
        book["molds"]["finger-5"]["cooling"] = json!({ "at": "30 °C" });
        if let Some(sets) = sets {
            book["molds"]["finger-5"]["sets"] = json!(sets);
        }
        shots_of_heats(&plan_of(&book, "dusk finger", 36))
    };
    assert_eq!(heats(1, Some("100 s")), [3, 3, 3]);
    assert_eq!(heats(3, Some("100 s")), [9]);
    // 9.6 mm from 169.7 °C to 50 °C in 30 °C: D²/(23.133 α) ln(1.602/Θ) = 121 s, every 171 s in one mold: 2 a heat.
    assert_eq!(heats(1, None), [2, 2, 2, 2, 1]);
    let mut plaster = demo();
    plaster["molds"]["finger-5"]["cooling"] = json!({ "of": "plaster" });
    let faults = document::book_from_text(&plaster.to_string()).unwrap_err();
    let text: Vec<_> = faults.iter().map(|f| (&*f.code, &*f.path)).collect();
    assert_eq!(text, [("mold-not-metal", "/molds/finger-5/cooling/of")]);
}

/// A pot that was watched to cool stays hot for less time the less is in it.
#[test]
fn a_watched_pot_gives_its_own_heats() {
    let mut book = without_rejects();
    let oven = book["bench"]["oven"].as_object_mut().unwrap();
    oven.remove("hot_for");
    oven.insert(
        "cools".into(),
        json!({ "mix": "4 cup", "from": "350 °F", "to": "325 °F", "time": "14 min" }),
    );
    let heats = shots_of_heats(&plan_of(&book, "dusk finger", 88));
    assert_eq!(heats.iter().sum::<u32>(), 22);
    assert!(heats.len() > 2 && heats.windows(2).all(|two| two[1] <= two[0]), "{heats:?}");
    // Neither is known: the reheats are not counted, and the plan says so.
    book["bench"]["oven"].as_object_mut().unwrap().remove("cools");
    let plan = plan_of(&book, "dusk finger", 88);
    assert_eq!(
        (plan.pots[0].heats.count, why(plan.pots[0].stages[0].clock.as_ref())),
        (1, Some("hot-time-not-known"))
    );
    assert!(plan.assumptions.iter().any(|note| note.code == "hot-time-not-known"));
    assert_eq!(why(plan.clock.as_ref()), Some("hot-time-not-known"));
}

/// One thing after the other, and what it takes: 12 min a pot, a heat, 50 s a shot.
#[test]
fn the_time_line_is_the_sum_of_its_spans() {
    let plan = plan(&demo());
    let line = plan.clock.as_ref().and_then(Calculated::known).unwrap();
    let mut now = 0.0;
    for span in &line.spans {
        assert!((span.begins.quantity.value - now).abs() < 1e-9, "{span:?}");
        now += span.lasts.quantity.value;
    }
    assert!((line.total.quantity.value - now).abs() < 1e-9);
    let shots: u32 = line.spans.iter().filter_map(|span| span.shots).sum();
    assert_eq!(shots, plan.work.iter().map(|work| work.shots).sum::<u32>());
    assert!((line.shooting.quantity.value - 50.0 * f64::from(shots)).abs() < 1e-9);
    let heats = line.spans.iter().filter(|span| span.mold.is_none()).count();
    let heated: u32 = plan.pots.iter().map(|pot| pot.heats.count).sum();
    assert_eq!(heats, heated as usize + plan.pots.len());
    assert!(sheet(&plan).contains(&format!("ORDER OF WORK: about {}", line.total.text)));
}

/// Hot, a mix fills a tenth more: a cup whose highest mark is its brim does not take it to that mark.
#[test]
fn a_pot_keeps_clear_of_its_brim_when_it_is_hot() {
    let cup = |brim: Option<&str>| {
        let mut book = without_rejects();
        for (cup, own) in book["bench"]["cups"]
            .as_array_mut()
            .unwrap()
            .iter_mut()
            .zip(["1 cup", "2 cup", "4 cup"])
        {
            match brim {
                Some("marks") => cup["brim"] = json!(own),
                Some(_) => {}
                None => {
                    cup.as_object_mut().unwrap().remove("brim");
                }
            }
        }
        let plan = plan_of(&book, "dusk finger", 40);
        let pot = &plan.pots[0];
        let hot = pot.stages[0].fills_hot.quantity;
        assert!(hot > pot.stages[0].fills.quantity);
        (pot.cup.text.clone(), (hot / pot.cup.quantity).value)
    };
    let (stated, full) = cup(Some("as it is"));
    assert_eq!((stated.as_str(), full > 0.95), ("2 cup", true));
    assert_eq!(cup(None).0, "2 cup");
    let (larger, full) = cup(Some("marks"));
    assert_eq!((larger.as_str(), full < 0.95), ("4 cup", true));
}

/// Salt that goes in hot is not in the pot while it is heated for it: the table holds for what is, and the sheet says
/// what is done before it is shot.
#[test]
fn a_table_holds_before_the_salt_goes_in() {
    let mut book = demo();
    let salted = |book: &Value| {
        let plan = plan(book);
        let stage = plan.pots[0].stages[1].clone();
        (stage.heating.as_ref().and_then(Calculated::known).unwrap().clone(), sheet(&plan))
    };
    let (hot, text) = salted(&book);
    book["materials"]["fine-salt"]["add"] = json!("cold");
    let (cold, _) = salted(&book);
    let limit = |heating: &PlannedHeating, seconds: f64| {
        let allowed = heating.bands.iter().filter(|band| band.burst.quantity.value >= seconds);
        allowed.map(|band| band.below.quantity.value).fold(0.0, f64::max)
    };
    for seconds in [10.0, 20.0, 45.0] {
        assert!(limit(&hot, seconds) <= limit(&cold, seconds), "{seconds}: {hot:?} {cold:?}");
    }
    assert_ne!(hot.bands, cold.bands);
    assert!(text.contains("step 8 let cool 8 ADD hot, stir in: fine-salt"), "{text}");
    assert!(text.contains("Read again: under 329 °F back to step 7, over 346 °F"), "{text}");
}

/// Salt of 0.3 mm in a melt of 0.5 Pa s at the thinnest: by Stokes and Richardson and Zaki, a tenth of the depth.
#[test]
fn salt_is_stirred_as_often_as_it_settles() {
    let mut book = demo();
    let of = |book: &Value| {
        let plan = plan(book);
        let stages = plan.pots.iter().flat_map(|pot| &pot.stages);
        stages.map(|stage| stage.stir_every.clone()).collect::<Vec<_>>()
    };
    assert!(of(&book).iter().all(Option::is_none));
    book["materials"]["clear-base"]["viscosity"] = json!(["0.5 Pa.s", "2 Pa.s"]);
    let stirred = of(&book);
    assert_eq!(stirred.iter().filter(|every| every.is_some()).count(), 1);
    let every = stirred.into_iter().flatten().next().unwrap();
    assert!((40.0..90.0).contains(&every.quantity.value), "{every:?}");
    assert!(sheet(&plan(&book)).contains(&format!("and every {}", every.text)));
}

/// The advice on the card for a pot that is too cold is safe for each shot, by the table of readings for what is then left: the
/// burst below the window where there is a table, and to stop where the shortest burst could carry it over.
#[test]
fn a_pot_that_is_too_cold_is_reheated_as_long_as_that_is_safe() {
    let mut book = without_rejects();
    // Base alone, so that its specific heat is that of the pot.
    book["formulas"]["plain"]["doses"] = json!({});
    book["products"]["clear"] = json!({ "mold": "finger-5", "formulas": ["plain"] });
    let mut endings = std::collections::BTreeSet::new();
    for pieces in [12, 36, 60, 100] {
        let plan = plan_of(&book, "clear", pieces);
        let loaded = document::book_from_text(&book.to_string()).unwrap();
        let oven = loaded.oven.as_ref().unwrap();
        let (pot, stage) = (&plan.pots[0], &plan.pots[0].stages[0]);
        let hot = stage.holds.quantity / stage.fills_hot.quantity;
        let mut mass = stage.holds.quantity - loaded.injector.keeps * hot;
        for (step, at) in
            plan.steps.iter().flat_map(|step| step.at.iter().map(move |at| (step, at)))
        {
            let shots: u32 = step.items.iter().filter_map(|item| item.shots).sum();
            if at.pot != pot.pot || shots == 0 {
                continue;
            }
            let mut tables = Vec::new();
            for _ in 0..shots {
                let base = loaded.materials.get(loaded.default_base.unwrap()).unwrap();
                let heat = base.specific_heat_line().unwrap();
                let load = Load::new(mass, heat, HeatCapacity::default());
                let window = base.shot_window.unwrap();
                let window = Window::around(window.low, window.high).unwrap();
                let gate = oven.timed.gate(
                    load.unwrap(),
                    oven.reheat_from.unwrap(),
                    window,
                    oven.precautions,
                );
                tables.push(gate.ok().map(|gate| gate.bands[gate.bands.len() - 1].burst));
                mass -= stage.draws[0].per_shot.quantity;
            }
            let lost = tables.iter().filter(|table| table.is_none()).count();
            assert!(tables.iter().rev().take(lost).all(Option::is_none), "{tables:?}");
            let text = at.details.join(" ");
            let last = if lost == 1 {
                "last shot: stop".into()
            } else {
                format!("last {lost} shots: stop")
            };
            match tables.iter().flatten().last() {
                Some(burst) => {
                    let burst = crate::show::text::oven_time(*burst).text;
                    assert!(
                        text.contains(&format!("injector back in, heat {burst}, stir, read")),
                        "{text}"
                    );
                    assert_eq!(text.contains(&last), lost > 0, "{text}");
                }
                None => assert!(text.contains("what is left is too little to reheat"), "{text}"),
            }
            endings.insert(lost.min(1));
        }
    }
    assert_eq!(endings.len(), 2, "both with and without shots that nothing is left for");
}

#[test]
fn the_time_line_adds_up_by_what_is_done() {
    use crate::plan::Doing;
    let made = plan_of(&without_rejects(), "dusk finger", 88);
    let line = made.clock.as_ref().and_then(Calculated::known).unwrap();
    let sum = |doing: &[Doing]| -> f64 {
        let spans = line.spans.iter().filter(|span| doing.contains(&span.doing));
        spans.map(|span| span.lasts.quantity.value).sum()
    };
    let done: Vec<(Doing, u32, Option<u32>)> =
        line.spans.iter().map(|span| (span.doing, span.stage, span.shots)).collect();
    let expected = [
        (Doing::Prepare, 1, None),
        (Doing::Heat, 1, None),
        (Doing::Shoot, 1, Some(9)),
        (Doing::Reheat, 1, None),
        (Doing::Shoot, 1, Some(9)),
        (Doing::Reheat, 1, None),
        (Doing::Shoot, 1, Some(4)),
    ];
    assert_eq!(done, expected);
    assert!((line.heating.quantity.value - sum(&[Doing::Heat, Doing::Reheat])).abs() < 1e-9);
    assert!((line.shooting.quantity.value - sum(&[Doing::Shoot])).abs() < 1e-9);
    assert!(!line.without_preparing);
    // The shop's own 4 min a heat are more than the bursts; where they are less, these count.
    let heats = |per_heat: &str| {
        let book = with("/costing", "per_heat", json!(per_heat));
        let plan = plan_of(&book, "dusk finger", 12);
        let line = plan.clock.as_ref().and_then(Calculated::known).unwrap();
        let table = plan.pots[0].stages[0].heating.as_ref().and_then(Calculated::known).unwrap();
        (line.heating.quantity.value, table.total.quantity.value)
    };
    assert!((heats("30 min").0 - 1800.0).abs() < 1e-9);
    let (counted, table) = heats("1 s");
    assert!((counted - table).abs() < 1e-9, "{counted} {table}");
    let plan = plan(&{
        let mut book = demo();
        book.as_object_mut().unwrap().remove("costing");
        for mold in ["finger-5", "minnow-3"] {
            book["molds"][mold]["per_shot"] = json!("50 s");
        }
        book
    });
    let line = plan.clock.as_ref().and_then(Calculated::known).unwrap();
    assert!(line.without_preparing && line.spans.iter().all(|span| span.doing != Doing::Prepare));
}

/// Molds whose setting is not known are named once, in their order.
#[test]
fn molds_whose_setting_is_not_known_are_named() {
    let named = |book: &Value| {
        let book = document::book_from_text(&book.to_string()).unwrap();
        let line = |product: &str, pieces: u32| json!({ "order": "1", "product": product, "pieces": pieces });
        let lines = json!([
            line("dusk stick, salted", 6),
            line("dusk finger", 8),
            line("dusk finger, salted", 8),
        ]);
        let orders = json!({ "format": "pourwright/1.0", "lines": lines }).to_string();
        let day = document::orders_from_text(&orders, &book).unwrap();
        let notes = Plan::make(&book, &day).unwrap().assumptions;
        let mut found = notes.into_iter().filter(|note| note.code == "setting-not-known");
        let first = found.next().map(|note| note.message);
        assert!(found.next().is_none());
        first.map(|text| text.split_once(':').unwrap().0.to_string())
    };
    assert_eq!(named(&demo()).as_deref(), Some("finger-5, stick-6"));
    let mut set = with("/molds/finger-5", "sets", json!("30 s"));
    assert_eq!(named(&set).as_deref(), Some("stick-6"));
    set["molds"]["stick-6"]["cooling"] = json!({ "at": "30 °C" });
    assert_eq!(named(&set), None);
}

/// The pot's own cup if it takes all at once, else the cup with the fewest fills.
#[test]
fn a_pot_is_degassed_in_its_own_cup_or_the_one_with_the_fewest_fills() {
    let degas = |rise: f64, pieces: u32| {
        let plan = plan_of(&with("/bench/vacuum", "rise", json!(rise)), "dusk finger", pieces);
        assert_eq!(plan.pots.len(), 1);
        let degas = plan.pots[0].degas.as_ref().and_then(Calculated::known).unwrap();
        (plan.pots[0].cup_name.clone(), degas.cup_name.clone(), degas.fills)
    };
    // Rising little a pot is degassed in its own cup.
    let (own, cup, fills) = degas(1.05, 24);
    assert_eq!((&own, fills), (&cup, 1));
    // Rising to the double it goes into the largest, which takes all at once.
    let (own, cup, fills) = degas(2.0, 24);
    assert_ne!(own, cup);
    assert_eq!((cup.as_str(), fills), ("4-cup cup", 1));
    // Fourfold no cup takes it at once; the largest takes the fewest fills.
    let (_, cup, fills) = degas(4.0, 24);
    assert_eq!(cup, "4-cup cup");
    assert!(fills > 1);
}

#[test]
fn how_far_the_dial_goes_is_shown_where_a_share_of_air_swells() {
    let vacuum = |vacuum: Value| {
        let plan = plan(&with("/bench", "vacuum", vacuum));
        plan.pots[0].degas.as_ref().and_then(Calculated::known).unwrap().clone()
    };
    let share = vacuum(json!({ "gauge": "25 inHg", "entrained": "2 %" }));
    assert!(share.swells_at.is_some() && share.assumed.is_none() && !share.is_absolute);
    let absolute = vacuum(json!({ "absolute": "10 kPa", "entrained": "2 %" }));
    assert!(absolute.swells_at.is_none() && absolute.is_absolute);
    assert!(absolute.at_most.is_none());
    let rise = vacuum(json!({ "gauge": "25 inHg", "rise": 1.8 }));
    assert!(rise.swells_at.is_none() && rise.assumed.is_none());
    let neither = vacuum(json!({ "gauge": "25 inHg" }));
    assert!(neither.swells_at.is_none() && neither.assumed.is_some());
    // Near the end of the dial only the most that may be left is known.
    let end = vacuum(json!({ "gauge": "27.8 inHg", "rise": 1.8 }));
    assert!(end.at_most.is_some());
}

/// A pot that no heat is long enough for is none where heats are limited, and one more heat than allowed is too many.
#[test]
fn heats_are_kept_in_the_plan_itself() {
    let mut book = without_rejects();
    book["limits"]["heats"] = json!(2);
    for pieces in [36, 72, 76, 88, 144] {
        let made = plan_of(&book, "dusk finger", pieces);
        let shots = pieces.div_ceil(4);
        assert_eq!(made.pots.len() as u32, shots.div_ceil(18), "{pieces}");
        assert!(made.pots.iter().all(|pot| pot.heats.count <= 2));
        assert_eq!(shots_of_heats(&made).iter().sum::<u32>(), shots);
    }
}

/// A shot every 5 min, of 45 g: a pot just for it, of 61 g, cools in some 4 min, one with a heel of 150 g in 6 to 7.
#[test]
fn a_pot_that_cools_before_its_shot_gets_a_cup_that_keeps_more() {
    let mut book = without_rejects();
    let oven = book["bench"]["oven"].as_object_mut().unwrap();
    oven.remove("hot_for");
    oven.insert(
        "cools".into(),
        json!({ "mix": "1 cup", "from": "350 °F", "to": "325 °F", "time": "14 min" }),
    );
    book["limits"].as_object_mut().unwrap().remove("least_pot");
    book["molds"]["finger-5"]["per_shot"] = json!("5 min");
    book["bench"]["cups"] = json!([
        { "holds": "1/2 cup", "marks": "1/4 cup" },
        { "holds": "2 cup", "marks": "1/4 cup", "heel": "150 g" }
    ]);
    let cup = |book: &Value| plan_of(book, "dusk finger", 4).pots[0].cup.text.clone();
    assert_eq!(cup(&book), "1/2 cup");
    book["limits"]["heats"] = json!(2);
    assert_eq!(cup(&book), "2 cup");
}

/// The demo's shop with a second plastisol like its clear one, and half of each in the bodies.
fn blended() -> Value {
    let mut book = demo();
    book["materials"]["twin-base"] = book["materials"]["clear-base"].clone();
    for body in ["plain", "salted"] {
        book["formulas"][body]["base"] = json!({ "clear-base": "1 cup", "twin-base": "1 cup" });
    }
    book
}

#[test]
fn of_plastisols_that_have_as_much_left_the_first_is_named() {
    let plan = plan_of(&blended(), "dusk finger", 12);
    let spent = plan.pots[0].heats.budget.as_ref().and_then(Calculated::known).unwrap();
    assert_eq!(spent.material, "clear-base");
}

#[test]
fn salt_settles_as_fast_as_in_the_thinnest_plastisol() {
    let every = |clear: &str, twin: &str| {
        let mut book = blended();
        book["materials"]["clear-base"]["viscosity"] = json!([clear, "2 Pa.s"]);
        book["materials"]["twin-base"]["viscosity"] = json!([twin, "2 Pa.s"]);
        let plan = plan_of(&book, "dusk finger, salted", 12);
        plan.pots[0].stages[0].stir_every.as_ref().unwrap().quantity.value
    };
    let thin = every("0.5 Pa.s", "0.5 Pa.s");
    assert_eq!((every("0.5 Pa.s", "1 Pa.s"), every("1 Pa.s", "0.5 Pa.s")), (thin, thin));
    assert!(every("1 Pa.s", "1 Pa.s") > 1.5 * thin);
}

/// A timing to 425 °F is more than 54 °F above the window of the clear plastisol, but not above one up to 390 °F.
#[test]
fn timings_are_questioned_by_the_hottest_window_of_the_day() {
    let mut book = demo();
    book["bench"]["oven"]["timings"][3] =
        json!({ "mix": "4 cup", "from": "70 °F", "to": "425 °F", "time": "500 s" });
    book["materials"]["firm-base"]["shot_window"] = json!(["330 °F", "390 °F"]);
    book["formulas"]["hot"] = json!({ "per": "1 cup", "base": "firm-base", "doses": {} });
    book["products"]["hot finger"] = json!({ "mold": "finger-5", "formulas": ["hot"] });
    let book = document::book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let is_questioned = |products: &[&str]| {
        let line = |product: &&str| json!({ "order": "1", "product": product, "pieces": 24 });
        let lines: Vec<Value> = products.iter().map(line).collect();
        let orders = json!({ "format": "pourwright/1.0", "lines": lines }).to_string();
        let day = document::orders_from_text(&orders, &book).unwrap();
        let plan = Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"));
        plan.questions.iter().any(|note| note.code == "timing-ends-too-hot")
    };
    assert!(is_questioned(&["dusk finger"]));
    assert!(!is_questioned(&["dusk finger", "hot finger"]));
    assert!(!is_questioned(&["hot finger", "dusk finger"]));
}

/// Pots that are heated as one load are shot from the higher bottom of their windows to the lower top.
#[test]
fn pots_on_one_clock_are_shot_where_their_windows_overlap() {
    let shot_to = |layers: [&str; 2]| {
        let mut book = without_rejects();
        book["formulas"]["clear"] = json!({ "per": "1 cup", "base": "clear-base", "doses": {} });
        book["formulas"]["hot"] = json!({ "per": "1 cup", "base": "firm-base", "doses": {} });
        book["materials"]["firm-base"]["shot_window"] = json!(["325 °F", "370 °F"]);
        let layer = |formula: &str| json!({ "formulas": [formula], "share": "50 %" });
        book["products"]["two"] = json!({ "mold": "finger-5", "layers": layers.map(layer) });
        let plan = plan_of(&book, "two", 24);
        let heating = plan.work.iter().find_map(|work| work.heating.as_ref()?.known());
        heating.unwrap().shoot_to.quantity.value
    };
    let top = shot_to(["clear", "clear"]);
    assert_eq!((shot_to(["clear", "hot"]), shot_to(["hot", "clear"])), (top, top));
}

#[test]
fn a_cup_without_marks_is_degassed_at_any_level() {
    let mut book = demo();
    book["bench"]["cups"] = json!([{ "holds": "2 cup", "film": "5 g", "brim": "600 mL" }]);
    let plan = plan_of(&book, "dusk finger", 24);
    let degas = plan.pots[0].degas.as_ref().and_then(Calculated::known).unwrap();
    // Of 600 mL a tenth stays empty, and the pot swells to 1.8 of its level: 300 mL, read as 1 1/4 cup.
    assert_eq!(libm::round(degas.fill_mark.quantity.si() * 1e6), 300.0);
    assert_eq!(degas.fill_mark.text, "1 1/4 cup");
}

#[test]
fn a_pot_is_degassed_in_a_cup_whose_brim_is_known() {
    for rise in [1.05, 4.0] {
        for without in 0..3 {
            let mut book = with("/bench/vacuum", "rise", json!(rise));
            book["bench"]["cups"][without].as_object_mut().unwrap().remove("brim");
            for pot in plan_of(&book, "dusk finger", 24).pots {
                assert!(
                    pot.degas.as_ref().and_then(Calculated::known).is_some(),
                    "{rise} {without}"
                );
            }
        }
    }
}

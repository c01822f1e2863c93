use super::*;
use crate::bench::Tool;
use crate::document::small::{BOOK, orders};
use crate::document::{book_from_text, orders_from_text};
use crate::plan::Plan;
use alloc::string::{String, ToString};
use serde_json::{Value, json};

fn plan(change: impl Fn(&mut Value), line: &str) -> Result<Plan, crate::fault::Faults> {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    change(&mut document);
    let book = book_from_text(&document.to_string()).unwrap_or_else(|f| panic!("{f}"));
    let day = orders_from_text(&orders(line), &book).unwrap_or_else(|f| panic!("{f}"));
    Plan::make(&book, &day)
}

const LINE: &str = r#"{ "order": "1", "product": "sky worm", "pieces": 12 }"#;

#[test]
fn what_cannot_be_drawn_makes_no_spare_shot() {
    let spare = |plan: &Plan| plan.pots[0].stages[0].draws[0].spare_shots;
    let with_heel = |heel: &str| {
        let heel = heel.to_string();
        plan(move |book| book["bench"]["cups"][0]["heel"] = json!(heel), LINE).unwrap()
    };
    let without = plan(|_| {}, LINE).unwrap();
    let shot = without.pots[0].stages[0].draws[0].per_shot.quantity;
    for heel in ["1 g", "20 g", "40 g", "55 g"] {
        let plan = with_heel(heel);
        let left = plan.pots[0].left_over.quantity;
        let drawn = shot * f64::from(spare(&plan));
        let heel: f64 = heel.trim_end_matches(" g").parse().unwrap();
        assert!(left - drawn >= Mass::from_si(heel / 1e3) * (1.0 - 1e-9), "{heel}");
    }
}

#[test]
fn a_mold_larger_than_the_injector_is_refused_with_what_fits() {
    let refused = plan(|book| book["molds"]["worm"]["cavities"] = json!(40), LINE).unwrap_err();
    let fault = refused.iter().next().unwrap();
    assert_eq!((&*fault.path, &*fault.code), ("/lines/0", "batch-shot-does-not-fit"));
    assert!(fault.help.contains('g'), "{}", fault.help);
}

#[test]
fn more_than_the_book_allows_of_solids_is_refused() {
    let refused = plan(|book| book["limits"] = json!({ "solids": "1 %" }), LINE).unwrap_err();
    assert_eq!(refused.iter().next().unwrap().code, "too-many-solids");
}

#[test]
fn a_cup_is_never_fuller_than_the_book_allows() {
    let half = plan(|book| book["limits"] = json!({ "most_full": "50 %" }), LINE).unwrap();
    for stage in half.pots.iter().flat_map(|pot| &pot.stages) {
        assert!(stage.fills.quantity.si() <= 236.588_236_5e-6 * (1.0 + 1e-9));
    }
}

#[test]
fn what_one_pot_cannot_hold_is_spread_over_more() {
    let line = r#"{ "order": "1", "product": "sky worm", "pieces": 200 }"#;
    let plan = plan(|_| {}, line).unwrap();
    assert!(plan.pots.len() > 1);
    let made: u32 = plan.pots.iter().map(|pot| pot.stages[0].draws[0].pieces[0].made).sum();
    assert_eq!(made, 200);
    let names: Vec<String> = plan.pots.iter().map(|pot| pot.pot.clone()).collect();
    assert_eq!(plan.lines[0].pots, names);
}

#[test]
fn the_layers_of_a_piece_are_hot_together_in_pots_of_their_own() {
    let line = r#"{ "order": "1", "product": "two", "pieces": 12 }"#;
    let plan = plan(|_| {}, line).unwrap();
    assert_eq!(plan.lines[0].pots.len(), 2);
    for pot in &plan.pots {
        let with = &pot.stages[0].draws[0].together_with;
        assert!(with.len() == 1 && *with != [pot.pot.clone()], "{with:?}");
    }
}

/// Tool and measure of the first pot's base, and the volume of the pot.
fn base(plan: &Plan) -> (Tool, String, f64) {
    let stage = &plan.pots[0].stages[0];
    let base = &stage.weigh[0];
    (base.best.tool, base.best.measure.clone(), stage.fills.quantity.si() * 1e6)
}

// Twelve worms and their sprues are some 150 mL: no reason to fill a cup of 2.
#[test]
fn a_cup_without_marks_is_one_to_weigh_into() {
    let unmarked = |book: &mut Value| book["bench"]["cups"] = json!([{ "holds": "2 cup" }]);
    let made = plan(unmarked, LINE).unwrap();
    let (tool, _, fills) = base(&made);
    assert_eq!(tool, Tool::Balance);
    assert!((120.0..200.0).contains(&fills), "{fills}");
    assert_eq!(made.pots.len(), 1);
    // A small cup with marks measures for it, where there is one.
    let both = |book: &mut Value| {
        book["bench"]["cups"] =
            json!([{ "holds": "2 cup" }, { "holds": "1/2 cup", "marks": "1/4 cup" }]);
    };
    let made = plan(both, LINE).unwrap();
    let clear = &made.pots[0].stages[0].weigh[0];
    let mut ways = core::iter::once(&clear.best).chain(&clear.others);
    assert!(ways.any(|way| way.measure == "1/2 cup + 1/4 cup"), "{clear:?}");
}

#[test]
fn a_cup_without_marks_asks_for_them_where_nothing_weighs() {
    let bare = |book: &mut Value| {
        book["bench"]["cups"] = json!([{ "holds": "2 cup" }]);
        book["bench"].as_object_mut().unwrap().remove("balance");
    };
    let faults = plan(bare, LINE).unwrap_err();
    let fault = faults.iter().next().unwrap();
    assert_eq!(fault.code, "pot-cup-without-marks");
    assert!(
        fault.help.contains(r#""marks": "1/4 cup""#) && fault.help.contains("balance"),
        "{fault}"
    );
}

// Three drops of blue to a cup, and a pot of a quarter: one drop is a third too much.
#[test]
fn one_drop_is_a_caution_and_no_refusal_of_the_day() {
    let faint = |book: &mut Value| {
        book["formulas"]["faint"] = json!({ "per": "1 cup", "doses": { "blue": "1 drop" } });
        book["materials"]["blue"]["tolerance"] = json!("5 %");
    };
    let line = r#"{ "order": "1", "mold": "worm", "formulas": ["faint", "body"], "pieces": 4 }"#;
    let made = plan(faint, line).unwrap();
    let mut weigh = made.pots[0].stages[0].weigh.iter();
    let blue = weigh.find(|one| one.material == "blue").unwrap();
    assert_eq!(blue.best.measure, "1 drop");
    let beyond = blue.beyond.as_ref().unwrap();
    assert_eq!(beyond.code, "dose-beyond-bench");
    let sheet = made.sheet().to_string().split_whitespace().collect::<Vec<_>>().join(" ");
    assert!(sheet.contains(&beyond.message), "{sheet}");
    // It is no larger than twice its orders either.
    assert!(made.pots[0].stages[0].fills.quantity.si() < 2.0 * 60e-6 * 2.0);
}

// Color goes in cold, salt and flake hot: after the heat on the sheet.
#[test]
fn what_goes_in_hot_comes_after_the_heat() {
    let flake = |book: &mut Value| {
        book["materials"]["glitter"] =
            json!({ "kind": "flake", "as_scooped": "0.5 g/mL", "density": "1.4 g/mL" });
        book["formulas"]["sky"]["doses"]["glitter"] = json!("1 tsp");
    };
    let order = |plan: &Plan| {
        let sheet = plan.sheet().to_string();
        let at = |what: &str| {
            // The only one of a step goes on in its line.
            let only = alloc::format!("stir in: {}", what.trim_start());
            let found = sheet.find(what).or_else(|| sheet.find(&only));
            found.unwrap_or_else(|| panic!("{what} in {sheet}"))
        };
        (
            at("   blue "),
            at("HEAT in short bursts"),
            at("ADD hot"),
            at("   glitter "),
            at("   salt "),
        )
    };
    let (blue, heat, hot, glitter, salt) = order(&plan(flake, LINE).unwrap());
    assert!(blue < heat && heat < hot && hot < glitter && glitter < salt);
    let cold = |book: &mut Value| {
        flake(book);
        book["materials"]["glitter"]["add"] = json!("cold");
    };
    let made = plan(cold, LINE).unwrap();
    let (_, heat, _, glitter, salt) = order(&made);
    assert!(glitter < heat && heat < salt);
    let sheet = made.sheet().to_string();
    assert!(sheet.contains("Bone-dry salt only, in thirds, lumps broken"), "{sheet}");
}

fn near(got: f64, expected: f64) {
    assert!((got - expected).abs() < 1e-9 * expected.abs().max(1.0), "{got} for {expected}");
}

#[test]
fn all_that_goes_into_a_pot_is_shot_or_lost_or_left() {
    let g = |mass: &crate::show::Shown<Mass>| mass.quantity.si() * 1e3;
    for sprues in ["keep", "melt-again"] {
        let shared = |book: &mut Value| {
            book["formulas"]["plain"] = json!({ "per": "1 cup", "base": "clear", "doses": {} });
            book["limits"] = json!({ "sprues": sprues });
        };
        let lines = r#"{ "order": "1", "mold": "worm", "formulas": ["sky", "plain"], "pieces": 12 },
            { "order": "2", "product": "sky worm", "pieces": 8 }"#;
        let made = plan(shared, lines).unwrap();
        let [pot] = &made.pots[..] else { panic!("{} pots", made.pots.len()) };
        let draws = || pot.stages.iter().flat_map(|stage| &stage.draws);
        let added: f64 =
            pot.stages.iter().flat_map(|stage| &stage.weigh).map(|one| g(&one.wanted)).sum();
        let shot: f64 = draws().map(|draw| g(&draw.per_shot) * f64::from(draw.shots)).sum();
        let sprue = |draw: &crate::plan::Draw| g(&draw.sprue) * f64::from(draw.shots);
        let back: Vec<f64> = pot.stages.iter().map(|stage| g(&stage.sprues_back)).collect();
        // Sprues of the first stage are melted again with the second; those of the last go into no mix.
        let melted = if sprues == "keep" { 0.0 } else { sprue(&pot.stages[0].draws[0]) };
        near(back[0], melted);
        assert_eq!((back.len(), back[1]), (2, 0.0));
        near(g(&pot.sprues), draws().map(sprue).sum::<f64>() - melted);
        near(added, shot - melted + g(&pot.lost) + g(&pot.left_over));
    }
}

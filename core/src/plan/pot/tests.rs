use super::*;
use crate::bench::{Step, Tool};
use crate::document::small::{BOOK, orders};
use crate::document::{book_from_text, orders_from_text};
use crate::plan::Plan;
use crate::plan::budget::Budget;
use crate::plan::day::{KnownRecipes, Pooled, pool};
use crate::show::Note;
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

fn book(change: impl Fn(&mut Value)) -> Book {
    let mut document: Value = serde_json::from_str(BOOK).unwrap();
    change(&mut document);
    book_from_text(&document.to_string()).unwrap_or_else(|f| panic!("{f}"))
}

/// Looks at the pots of a day with these `lines` as they are built.
fn look<T>(book: &Book, lines: &str, at: impl FnOnce(&Workshop<'_>) -> T) -> T {
    let day = orders_from_text(&orders(lines), book).unwrap_or_else(|f| panic!("{f}"));
    let Pooled { recipes, batches } = pool(book, KnownRecipes::NONE, &day, &mut Vec::new());
    let all: Vec<Shots<'_>> = batches.iter().map(|batch| shots(batch, book).unwrap()).collect();
    let (names, cups, budget) = (ToolNames::of(book), PotCup::all(book), Budget::new());
    at(&Workshop { book, names, cups, recipes: &recipes, shots: &all, budget: &budget })
}

/// All shots in one pot, those of fewer materials first.
fn in_one_pot<'a>(workshop: &Workshop<'a>) -> PotDraft<'a> {
    let mut stages: Vec<StageDraft<'a>> = Vec::new();
    for of in workshop.shots {
        let layer = &of.layers.first;
        let draws = Vec::from([DrawDraft { of, layer, shots: of.shots, before: 0 }]);
        stages.push(StageDraft { recipe: layer.recipe, draws, heats: 1 });
    }
    stages.sort_by_key(|stage| stage.recipe.recipe.ingredients().count());
    PotDraft { stages: OneOrMore::of(stages).unwrap(), there: None }
}

/// The pot of all shots in the first cup, with its base up to a mark.
fn built<'a>(workshop: &Workshop<'a>) -> Result<PotLayout<'a>, PotError> {
    let draft = in_one_pot(workshop);
    let materials = materials(&draft);
    let parts = draft.stages.try_map(|_, stage| workshop.part(stage, &materials))?;
    let how = (Measuring::UpToMark, Doses::Kept);
    workshop.in_cup(&workshop.cups[0], &parts, &materials, how)
}

#[test]
fn a_pot_is_made_in_the_smallest_cup_whatever_their_order() {
    for cups in [["2 cup", "1 cup", "4 cup"], ["4 cup", "2 cup", "1 cup"]] {
        let cups = cups.map(|holds| json!({ "holds": holds, "marks": "1/4 cup" }));
        let made = plan(|book| book["bench"]["cups"] = json!(cups), LINE).unwrap();
        assert_eq!(made.pots[0].cup.text, "1 cup");
    }
}

#[test]
fn a_smallest_pot_over_its_cup_is_refused_as_that() {
    // Half of 2 cups may be filled, and the smallest pot is 1 1/2 of them.
    let book =
        book(|book| book["limits"] = json!({ "least_pot": "1 1/2 cup", "most_full": "50 %" }));
    let refused = look(&book, LINE, |workshop| built(workshop).err());
    assert!(matches!(refused, Some(PotError::LeastOverCup { .. })), "{refused:?}");
}

#[test]
fn the_fullest_stage_is_named_where_a_pot_does_not_fit() {
    // Four shots of plain take less than the salt of the other eight brings.
    let book = book(|book| {
        book["formulas"]["plain"] = json!({ "per": "1 cup", "base": "clear", "doses": {} });
        book["formulas"]["heavy"] =
            json!({ "per": "1 cup", "base": "clear", "doses": { "salt": "1/2 cup" } });
        book["bench"]["cups"] = json!([{ "holds": "1 cup", "marks": "1/4 cup" }]);
    });
    let lines = r#"{ "order": "1", "mold": "worm", "formulas": ["plain"], "pieces": 4 },
        { "order": "2", "mold": "worm", "formulas": ["heavy"], "pieces": 32 }"#;
    let refused = look(&book, lines, |workshop| {
        let draft = in_one_pot(workshop);
        let materials = materials(&draft);
        let parts = draft.stages.try_map(|_, stage| workshop.part(stage, &materials)).unwrap();
        workshop.sequence(&parts, &workshop.cups[0], (Mass::default(), None)).err()
    });
    let Some(PotError::OverCup { formulas, .. }) = refused else { panic!("{refused:?}") };
    assert_eq!(formulas, "heavy");
}

#[test]
fn a_mix_may_be_as_solid_as_the_book_allows() {
    let mut book = book(|_| {});
    let solids =
        look(&book, LINE, |workshop| built(workshop).ok().unwrap().stages.remove(0).solids);
    book.limits.solids = solids;
    assert!(look(&book, LINE, |workshop| built(workshop).is_ok()));
    book.limits.solids = solids.next_down();
    let refused = look(&book, LINE, |workshop| built(workshop).err());
    assert!(matches!(refused, Some(PotError::TooManySolids { .. })), "{refused:?}");
}

#[test]
fn what_is_left_for_a_whole_number_of_shots_makes_them() {
    let spare = look(&book(|_| {}), LINE, |workshop| {
        let draft = in_one_pot(workshop);
        let materials = materials(&draft);
        let parts = draft.stages.try_map(|_, stage| workshop.part(stage, &materials)).unwrap();
        let cup = &workshop.cups[0];
        let mut sequence = workshop.sequence(&parts, cup, (Mass::default(), None)).unwrap();
        sequence.left = workshop.shots[0].layers.first.mass.fill * 3.0;
        let pot = workshop.pot(cup, &parts, &sequence, Vec::from([Vec::new()]), None);
        pot.ok().unwrap().stages[0].draws[0].spare_shots
    });
    assert_eq!(spare, 3);
}

#[test]
fn heats_are_kept_up_to_their_limit_and_while_each_shot_is_hot() {
    let mut book = book(|_| {});
    let keeps = |limit: Option<u32>, count: u32, clock: Option<&str>, book: &mut Book| {
        book.limits.heats = limit;
        look(book, LINE, |workshop| {
            let mut pot = built(workshop).ok().unwrap();
            pot.stages[0].heats = count;
            let unknown = |code: &str| Note { code: code.into(), message: String::new() };
            pot.stages[0].clock = Some(match clock {
                Some(code) => Err(unknown(code)),
                None => Ok(Vec::new()),
            });
            process::keeps_heats(book, &pot)
        })
    };
    assert!(keeps(Some(2), 2, None, &mut book) && !keeps(Some(2), 3, None, &mut book));
    assert!(keeps(Some(2), 1, Some("shot-time-not-known"), &mut book));
    assert!(!keeps(Some(2), 1, Some("clock-too-short"), &mut book));
    // Without a limit any number is kept, and a pot that cools too soon is a note on the card.
    assert!(keeps(None, 9, Some("clock-too-short"), &mut book));
}

/// How the base for `cups` of a mix of base alone is measured.
fn measured(book: &Book, cups: f64, measuring: Measuring) -> Option<BaseMeasure> {
    let line = r#"{ "order": "1", "mold": "worm", "formulas": ["plain"], "pieces": 4 }"#;
    look(book, line, |workshop| {
        let wanted = Mass::from_si(cups * 236.588_236_5e-6 * 1030.0);
        let cup = workshop.cups.last().unwrap();
        workshop.measure_base(cup, &workshop.recipes[0], wanted, measuring).ok()
    })
}

/// A book with base alone, and with this bench and these limits.
fn plain(cups: Value, limits: Value) -> Book {
    book(|book| {
        book["formulas"]["plain"] = json!({ "per": "1 cup", "base": "clear", "doses": {} });
        book["bench"]["cups"] = cups.clone();
        book["limits"] = limits.clone();
    })
}

#[test]
fn base_is_measured_to_the_mark_below_only_if_fresh_base_makes_up_for_it() {
    let cups =
        json!([{ "holds": "2 cup", "marks": "1/4 cup" }, { "holds": "1 cup", "marks": "1/4 cup" }]);
    let down = |limits, wanted| {
        let made = measured(&plain(cups.clone(), limits), wanted, Measuring::DownToMark);
        made.map(|base| (libm::round(base.mix.si() * 1e3), base.way.steps))
    };
    // A quarter of a cup is 60.9 g, in the first of the cups that have that mark.
    let quarter = (61.0, Vec::from([Step::Fill { cup: 0, mark: 1, times: 1 }]));
    let fresh = |least: &str| json!({ "fresh_base": true, "least_pot": least });
    assert_eq!(down(fresh("1/8 cup"), 0.4), Some(quarter.clone()));
    assert_eq!(down(json!({ "least_pot": "1/8 cup" }), 0.4), None);
    // No mark is below, or just the bottom of the cup.
    assert_eq!(down(json!({ "fresh_base": true }), 0.2), None);
    // The smallest pot may be just that, but not more.
    assert_eq!(down(fresh("1/4 cup"), 0.4), Some(quarter));
    assert_eq!(down(fresh("1/3 cup"), 0.4), None);
}

#[test]
fn of_cups_with_the_same_mark_the_one_with_fewest_fillings_measures() {
    // Three times a third of a cup is less than a cup in the last digit, and the same mark.
    let cups = json!([{ "holds": "2/3 cup", "marks": "1/3 cup" }, { "holds": "1 cup", "marks": "1/2 cup" }]);
    let base = measured(&plain(cups, json!({})), 0.9, Measuring::UpToMark).unwrap();
    assert_eq!(base.way.steps, [Step::Fill { cup: 1, mark: 2, times: 1 }]);
}

/// Filled by eye between two marks, base is off by a tenth of their distance, 5.9 mL: spoons measure it to a tenth of
/// that if they can, else to three tenths, else to that.
#[test]
fn spoons_come_as_near_as_a_part_of_what_the_eye_is_off() {
    let (cup, tablespoon, teaspoon) = (236.588_236_5, 14.786_764_78, 4.928_921_59);
    let by = |spoons: &[&str], ml: f64| {
        let book = book(|book| {
            book["formulas"]["plain"] = json!({ "per": "1 cup", "base": "clear", "doses": {} });
            book["bench"]["spoons"] = json!(spoons);
            book["bench"].as_object_mut().unwrap().remove("balance");
        });
        let base = measured(&book, ml / cup, Measuring::Exactly).unwrap();
        base.way.mass.si() / 1.03e-3
    };
    // 0.9 mL less is within two tenths, but not within one.
    let got = by(&["1 tbsp", "1 tsp", "1/2 tsp", "1/4 tsp"], cup + tablespoon + 0.9);
    near(got, cup + tablespoon + teaspoon / 4.0);
    // 3.4 mL less is within six tenths, but not within three.
    let got = by(&["1 tbsp", "1 tsp"], cup + tablespoon + 3.4);
    near(got, cup + tablespoon + teaspoon);
    // 9.8 mL less is within twice that.
    let got = by(&["1 tbsp"], cup + 2.0 * tablespoon - 5.0);
    near(got, cup + 2.0 * tablespoon);
}

#[test]
fn a_refusal_says_what_cup_or_pot_would_do() {
    let m = Mass::from_si;
    let error = crate::bench::MeasureError::Limit { what: "spoons", found: 1, most: 0 };
    let (formulas, cup, material) =
        (String::from("sky"), String::from("cup"), String::from("blue"));
    let above = crate::batch::BatchError::AboveMarks {
        needed: Default::default(),
        highest: Default::default(),
    };
    let too_full = [
        PotError::Batch(above),
        PotError::OverCup {
            formulas: formulas.clone(),
            held: m(2.0),
            holds: m(1.0),
            cup: cup.clone(),
        },
        PotError::LeastOverCup { formulas, least: m(2.0), holds: m(1.0), cup: cup.clone() },
    ];
    assert!(too_full.iter().all(|one| one.is_too_full() && one.wants_larger_cup()));
    let dosing = PotError::TooSmallToDose { material, tolerance: 0.05, error };
    for one in [PotError::NoMarks { cup }, dosing] {
        assert!(!one.is_too_full() && one.wants_larger_cup(), "{one}");
    }
    assert!(!PotError::NoCup.is_too_full() && !PotError::NoCup.wants_larger_cup());
}

// Shots that take a pot to its last gram: what is left for the last of them is too little to reheat.
#[test]
fn a_pot_that_is_drawn_empty_still_has_its_advice() {
    let demo = include_str!("../../../examples/demo/book.json");
    let book = book_from_text(demo).unwrap();
    let line = r#"{ "order": "1", "product": "dusk finger", "pieces": 4 }"#;
    let late = look(&book, line, |workshop| {
        let (recipe, mass) = (&*workshop.recipes[0], Mass::from_si(0.6));
        let cup = process::Cup { recipe, mass, hot: &[], vessel: Default::default(), first: false };
        process::late(&book, &cup, 3, mass * 0.5)
    });
    assert_eq!(late.map(|late| late.too_little), Some(1));
}

// The base alone to its only mark leaves 110 mL for the faint stage, which are 2.3 drops; weighed, it leaves 48 mL, which
// are one. But base is only weighed where the mark overfills the cup: the stages get pots of their own.
#[test]
fn a_pot_that_cannot_be_dosed_is_not_measured_otherwise() {
    let book = book(|book| {
        book["formulas"]["plain"] = json!({ "per": "1 cup", "base": "clear", "doses": {} });
        book["formulas"]["faint"] =
            json!({ "per": "1 cup", "base": "clear", "doses": { "blue": "5 drops" } });
        book["materials"]["blue"]["tolerance"] = json!("5 %");
        book["bench"]["balance"] = json!({ "reads": "1 g" });
        book["bench"]["cups"] = json!([{ "holds": "1 cup", "marks": "2/3 cup" }]);
    });
    let lines = r#"{ "order": "1", "mold": "worm", "formulas": ["plain"], "pieces": 4 },
        { "order": "2", "mold": "worm", "formulas": ["faint"], "pieces": 4 }"#;
    let (weighed, built) = look(&book, lines, |workshop| {
        let draft = in_one_pot(workshop);
        let materials = materials(&draft);
        let parts = draft.stages.try_map(|_, stage| workshop.part(stage, &materials)).unwrap();
        let how = (Measuring::Exactly, Doses::Kept);
        let weighed = workshop.in_cup(&workshop.cups[0], &parts, &materials, how).is_ok();
        (weighed, workshop.build(&draft).err())
    });
    assert!(weighed);
    assert!(matches!(built, Some(PotError::TooSmallToDose { .. })), "{built:?}");
}

//! Pots that are there, by hand; days that go on are in `tests/go_on/`.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use rstest::rstest;
use serde_json::{Value, json};

use super::PotThere;
use crate::document::small::BOOK;
use crate::document::{book_from_text, orders_from_text};
use crate::fault::{Diagnose, Faults};
use crate::plan::Plan;
use crate::plan::budget::Budget;
use crate::plan::day::{Day, KnownRecipes, Pooled, pool};
use crate::plan::layout::PotCup;
use crate::plan::one_or_more::OneOrMore;
use crate::plan::pot::{DrawDraft, PotDraft, PotError, Shots, StageDraft, Workshop, shots};
use crate::plan::tool_names::ToolNames;
use crate::quantity::Measurable;

/// The small book with a body of base alone, a darker red, a smaller mold and three injectors. A shot of worms is 44 mL.
pub(super) fn small() -> Value {
    let mut book: Value = serde_json::from_str(BOOK).unwrap();
    book["formulas"]["bare"] = json!({ "per": "1 cup", "base": "clear", "doses": {} });
    book["formulas"]["dark"] = json!({ "per": "1 cup", "doses": { "red": "4 g" } });
    book["molds"]["grub"] = json!({ "cavities": 2, "cavity": "6 mL", "sprue": "4 mL" });
    book["bench"]["injector"]["count"] = json!(3);
    book
}

/// A laminated piece: a name, a mold, and the color and the share of each layer; each is on base alone.
type Product<'a> = (&'a str, &'a str, &'a [(&'a str, u32)]);

/// The small book with laminated pieces.
fn with(products: &[Product<'_>]) -> Value {
    let mut book = small();
    for (name, mold, layers) in products {
        let layer = |&(color, share): &(&str, u32)| {
            let formulas = if color == "bare" { json!(["bare"]) } else { json!([color, "bare"]) };
            json!({ "formulas": formulas, "share": alloc::format!("{share} %") })
        };
        let layers: Vec<Value> = layers.iter().map(layer).collect();
        book["products"][name] = json!({ "mold": mold, "layers": layers });
    }
    book
}

fn line(product: &str, pieces: u32) -> Value {
    json!({ "order": "1", "product": product, "pieces": pieces })
}

fn plain(mold: &str, formulas: &[&str], pieces: u32) -> Value {
    json!({ "order": "2", "mold": mold, "formulas": formulas, "pieces": pieces })
}

/// A hot pot of base alone.
fn hot(pot: &str, clear: &str) -> Value {
    json!({ "pot": pot, "parts": { "clear": clear }, "hot": true })
}

/// The same with shots (line, layer, number) that it was begun for, and no others.
fn begun(pot: &str, clear: &str, draws: &[(u32, u32, u32)]) -> Value {
    let mut hot = hot(pot, clear);
    hot["draws"] = draws
        .iter()
        .map(|(line, layer, shots)| json!({ "line": line, "layer": layer, "shots": shots }))
        .collect();
    hot["takes_more"] = json!(false);
    hot
}

fn plan(book: &Value, lines: &[Value], pots: &[Value]) -> Result<Plan, Faults> {
    let book = book_from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
    let orders = json!({ "format": "pourwright/1.0", "lines": lines, "pots": pots });
    let day = orders_from_text(&orders.to_string(), &book).unwrap_or_else(|f| panic!("{f}"));
    Plan::make(&book, &day)
}

#[track_caller]
fn planned(book: &Value, lines: &[Value], pots: &[Value]) -> Plan {
    plan(book, lines, pots).unwrap_or_else(|faults| panic!("{faults}"))
}

/// The stages of a pot: their formulas, and of each draw its shots and the pots that it is shot together with.
fn stages(plan: &Plan, letter: &str) -> Vec<(String, Vec<(u32, String)>)> {
    let pot = plan.pots.iter().find(|pot| pot.pot == letter).unwrap();
    let stages = pot.stages.iter().map(|stage| {
        let draws = stage.draws.iter().map(|draw| (draw.shots, draw.together_with.join(" ")));
        (stage.formulas.join(" + "), draws.collect())
    });
    stages.collect()
}

fn stage(formulas: &str, draws: &[(u32, &str)]) -> (String, Vec<(u32, String)>) {
    let draws = draws.iter().map(|&(shots, with)| (shots, with.to_string()));
    (formulas.to_string(), draws.collect())
}

#[test]
fn a_pot_without_a_cup_is_in_the_smallest_that_holds_it() {
    let mut book = small();
    book["bench"]["cups"] =
        json!([{ "holds": "4 cup", "marks": "1/2 cup" }, { "holds": "2 cup", "marks": "1/4 cup" }]);
    let in_cup = |clear| {
        let plan = planned(&book, &[plain("worm", &["bare"], 4)], &[hot("A", clear)]);
        plan.pots[0].cup_name.clone()
    };
    assert_eq!((&*in_cup("1 cup"), &*in_cup("2 1/2 cup")), ("2-cup cup", "4-cup cup"));
}

// To 5 %; too much of a color asks for more base, too little for more of it. In a pot that is accepted as it is, what is in it
// is right, and what is not in it yet still goes in.
#[rstest]
#[case(json!({ "clear": "200 g", "red": "2.06 g" }), false, &[])]
#[case(json!({ "clear": "200 g", "red": "2.4 g" }), false, &["clear"])]
#[case(json!({ "clear": "200 g", "red": "1.5 g" }), false, &["red"])]
#[case(json!({ "clear": "200 g", "red": "2.4 g" }), true, &[])]
#[case(json!({ "clear": "200 g", "red": "1.5 g" }), true, &[])]
#[case(json!({ "clear": "200 g" }), true, &["red"])]
fn a_color_that_is_within_its_tolerance_counts_as_right(
    #[case] parts: Value,
    #[case] accepted: bool,
    #[case] expected: &[&str],
) {
    let mut book = small();
    book["formulas"]["rusty"] =
        json!({ "per": "200 g", "base": "clear", "doses": { "red": "2 g" } });
    let pot = json!({ "pot": "A", "parts": parts, "accepted": accepted });
    let plan = planned(&book, &[plain("worm", &["rusty"], 8)], &[pot]);
    let weigh = plan.pots[0].stages[0].weigh.iter();
    assert_eq!(weigh.map(|weigh| &*weigh.material).collect::<Vec<_>>(), expected);
}

// Of 200 g and 5 g of salt, as somebody wrote it, a ten-millionth of a gram is missing for the formula: nobody weighs that.
#[test]
fn what_is_in_a_begun_pot_comes_out_of_it_to_the_last_digit() {
    let mut book = small();
    book["formulas"]["salty"] =
        json!({ "per": "200 g", "base": "clear", "doses": { "salt": "5 g" } });
    let lines = [plain("worm", &["salty"], 4), plain("worm", &["rust", "salty"], 4)];
    let parts = json!({ "clear": "200 g", "salt": "4.9999999 g" });
    let pot = json!({ "pot": "A", "parts": parts, "hot": true });
    let plan = planned(&book, &lines, &[pot]);
    let pot = &plan.pots[0];
    assert_eq!(pot.stages.len(), 2);
    assert!(pot.stages[0].weigh.is_empty(), "{:?}", pot.stages[0].weigh);
    let near = |a: f64, b: f64| assert!((a - b).abs() < 1e-15, "{a} kg and {b} kg");
    let si = |mass: &crate::show::Shown<crate::quantity::Mass>| mass.quantity.si();
    let weighed = |stage: &crate::plan::Stage| {
        stage.weigh.iter().fold(0.0, |sum, weigh| sum + si(&weigh.wanted))
    };
    let (first, second) = (&pot.stages[0], &pot.stages[1]);
    near(si(&first.holds), 0.204_999_999_9);
    near(si(&second.holds), si(&first.carried) + weighed(second));
    near(si(&second.carried), si(&pot.left_over));
    let draws = pot.stages.iter().flat_map(|stage| &stage.draws);
    let shot = draws.fold(0.0, |sum, draw| sum + si(&draw.per_shot) * f64::from(draw.shots));
    near(si(&first.holds) + weighed(second), shot + si(&pot.lost) + si(&pot.left_over));
}

// A further pot gives base alone for the second piece before it is red for the first: by then this one cannot be blue yet.
#[test]
fn a_pot_is_not_shot_out_of_turn_for_a_further_pot() {
    let book = with(&[
        ("first", "worm", &[("bare", 50), ("rust", 50)]),
        ("second", "worm", &[("sky", 50), ("bare", 50)]),
    ]);
    let lines = [line("first", 8), line("second", 8)];
    let plan = planned(&book, &lines, &[begun("A", "1 cup", &[(1, 1, 2), (2, 1, 2)])]);
    assert_eq!(stages(&plan, "A").len(), 1, "{:?}", stages(&plan, "A"));
    assert_eq!(stages(&plan, "A")[0].0, "bare");
}

// Each has a layer first that the other has last. Pots that are not begun keep the order of their shots.
#[test]
fn pots_that_wait_for_each_other_are_refused_by_the_first() {
    let book = with(&[
        ("first", "worm", &[("bare", 50), ("rust", 50)]),
        ("second", "worm", &[("sky", 50), ("bare", 50)]),
    ]);
    let pot = |letter, draws: [(u32, u32); 2]| {
        let draws = draws.map(|(line, layer)| json!({ "line": line, "layer": layer, "shots": 2 }));
        json!({ "pot": letter, "draws": draws, "takes_more": false })
    };
    let pots = [pot("A", [(1, 1), (2, 1)]), pot("B", [(2, 2), (1, 2)])];
    let faults = plan(&book, &[line("first", 8), line("second", 8)], &pots).unwrap_err();
    let fault = faults.iter().next().unwrap();
    assert_eq!(fault.code, "pot-out-of-order");
    assert!(fault.message.contains("pot A"), "{fault}");
}

// From dark red to a lighter one only base leads, which a heated pot gets if the book allows it.
#[test]
fn a_pot_that_is_not_begun_gets_base_when_hot_only_if_that_is_allowed() {
    let mut book = small();
    let lines = [plain("worm", &["dark", "bare"], 8), plain("worm", &["rust", "bare"], 8)];
    let draws = [1, 2].map(|line| json!({ "line": line, "shots": 2 }));
    let pot = json!({ "pot": "A", "draws": draws });
    let faults = plan(&book, &lines, core::slice::from_ref(&pot)).unwrap_err();
    let fault = faults.iter().next().unwrap();
    assert_eq!(fault.code, "pot-no-fresh-base");
    assert!(fault.message.contains("rust + bare"), "{fault}");
    book["limits"]["fresh_base"] = json!(true);
    let plan = planned(&book, &lines, &[pot]);
    assert_eq!(stages(&plan, "A").len(), 2);
}

// 28 shots of 31 mL are more than a further pot of two cups: the pot is shot from for each of those.
#[test]
fn pieces_are_counted_through_all_shots_of_a_layer() {
    let book = with(&[("tail", "worm", &[("bare", 30), ("rust", 70)])]);
    let plan = planned(&book, &[line("tail", 110)], &[begun("A", "1 3/4 cup", &[(1, 1, 28)])]);
    let a = plan.pots.iter().find(|pot| pot.pot == "A").unwrap();
    let draws = &a.stages[0].draws;
    assert!(draws.len() > 1, "{draws:?}");
    assert_eq!(draws.iter().map(|draw| draw.shots).sum::<u32>(), 28);
    assert_eq!(draws.iter().map(|draw| draw.pieces[0].ordered).sum::<u32>(), 110);
}

#[test]
fn shots_of_an_earlier_stage_move_the_layers_of_later_ones() {
    let book = with(&[
        ("tail", "worm", &[("rust", 50), ("sky", 50)]),
        ("grub tail", "grub", &[("rust", 50), ("sky", 50)]),
    ]);
    let lines = [line("tail", 8), plain("worm", &["bare"], 4), line("grub tail", 4)];
    let mut a = begun("A", "1 1/2 cup", &[(1, 2, 2)]);
    a["takes_more"] = json!(true);
    let plan = planned(&book, &lines, &[a]);
    // The second blue layer comes from the same stage as the first.
    let expected = [stage("bare", &[(1, "")]), stage("sky + bare", &[(2, "B"), (2, "B")])];
    assert_eq!(stages(&plan, "A"), expected);
}

// Of some of these pots the layer was left, but not what the injector keeps at its heat: their days were refused.
#[test]
fn a_layer_after_plain_shots_is_a_heat_more() {
    let book = with(&[("tail", "worm", &[("bare", 50), ("rust", 50)])]);
    let lines = [plain("worm", &["bare"], 8), line("tail", 4)];
    let mut layers = 0;
    for grams in 95..135 {
        let mut a = begun("A", &alloc::format!("{grams} g"), &[(1, 1, 2)]);
        a["takes_more"] = json!(true);
        let plan = planned(&book, &lines, &[a]);
        let pot = plan.pots.iter().find(|pot| pot.pot == "A").unwrap();
        let [stage] = &pot.stages[..] else { panic!("{grams} g") };
        let shots: Vec<u32> = stage.draws.iter().map(|draw| draw.shots).collect();
        let (expected, heats): (&[u32], u32) = if layers > 0 || shots.len() > 1 {
            layers += 1;
            (&[2, 1], 2)
        } else {
            (&[2], 1)
        };
        assert_eq!((shots.as_slice(), stage.heats), (expected, heats), "{grams} g");
    }
    assert!((5..35).contains(&layers), "{layers}");
}

#[test]
fn pots_with_the_same_layer_shoot_other_pieces() {
    let book = with(&[("tail", "worm", &[("bare", 50), ("rust", 50)])]);
    let pots = ["A", "B"].map(|pot| begun(pot, "1 cup", &[(1, 1, 2)]));
    let plan = planned(&book, &[line("tail", 16)], &pots);
    assert_eq!(plan.pots.len(), 3);
    for pot in ["A", "B"] {
        assert_eq!(stages(&plan, pot), [stage("bare", &[(2, "C")])]);
    }
}

#[test]
fn a_pot_makes_one_layer_of_a_piece() {
    let three: &[_] = &[("bare", 30), ("sky", 30), ("sky", 40)];
    let book = with(&[("three", "worm", three)]);
    let mut blue = hot("B", "1 cup");
    blue["parts"]["blue"] = json!("30 drops");
    let plan = planned(&book, &[line("three", 8)], &[hot("A", "1 cup"), blue]);
    assert_eq!(plan.pots.len(), 3);
    assert_eq!(stages(&plan, "B"), [stage("sky + bare", &[(2, "C A")])]);
}

// The hot pot begins; the cold one before it has the other layer.
#[test]
fn any_pot_that_is_there_may_complete_a_piece() {
    let book = with(&[("tail", "worm", &[("bare", 50), ("sky", 50)])]);
    let parts = json!({ "clear": "1 cup", "blue": "30 drops" });
    let cold = json!({ "pot": "A", "parts": parts, "heats": 1 });
    for pieces in [4, 8] {
        let plan = planned(&book, &[line("tail", pieces)], &[cold.clone(), hot("B", "1 cup")]);
        assert_eq!(plan.pots.len(), 2);
        assert_eq!(stages(&plan, "A"), [stage("sky + bare", &[(pieces / 4, "B")])]);
    }
}

#[test]
fn the_further_layers_of_two_pots_are_shot_apart() {
    let book = with(&[("three", "worm", &[("bare", 30), ("rust", 30), ("dark", 40)])]);
    let pots = [begun("A", "1 cup", &[(1, 1, 3)]), begun("B", "1 cup", &[(1, 1, 2)])];
    let plan = planned(&book, &[line("three", 20)], &pots);
    assert_eq!(stages(&plan, "A"), [stage("bare", &[(3, "C D")])]);
    assert_eq!(stages(&plan, "B"), [stage("bare", &[(2, "C D")])]);
}

/// Runs `look` in the workshop of a book, on a day with these lines and pots.
pub(super) fn in_workshop<T>(
    book: &Value,
    lines: &[Value],
    pots: &[Value],
    look: impl FnOnce(&Workshop<'_>, &[PotThere]) -> T,
) -> T {
    let book = book_from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
    let orders = json!({ "format": "pourwright/1.0", "lines": lines, "pots": pots });
    let day: Day = orders_from_text(&orders.to_string(), &book).unwrap_or_else(|f| panic!("{f}"));
    let Pooled { recipes, batches } = pool(&book, KnownRecipes::NONE, &day, &mut Vec::new());
    let shots: Vec<Shots<'_>> = batches.iter().map(|batch| shots(batch, &book).unwrap()).collect();
    let budget = Budget::default();
    let (names, cups) = (ToolNames::of(&book), PotCup::all(&book));
    let workshop =
        Workshop { book: &book, names, cups, recipes: &recipes, shots: &shots, budget: &budget };
    look(&workshop, &day.pots)
}

// A pot of base alone gives a shot of it and then, with more base, 40 of 44 mL in blue: too much for two cups.
#[test]
fn the_formula_that_overfills_a_pot_is_named() {
    let lines = [plain("worm", &["bare"], 4), plain("worm", &["sky", "bare"], 160)];
    in_workshop(&small(), &lines, &[hot("A", "1 cup")], |workshop, pots| {
        let stages = workshop.shots.iter().map(|of| {
            let layer = &of.layers.first;
            let draw = DrawDraft { of, layer, shots: of.shots, before: 0 };
            StageDraft { recipe: layer.recipe, draws: Vec::from([draw]), heats: 1 }
        });
        let draft = PotDraft { stages: OneOrMore::of(stages).unwrap(), there: None };
        let refused = workshop.build_on(&pots[0], &draft).err().unwrap();
        assert_eq!(refused.code(), "pot-over-cup");
        let PotError::OverCup { formulas, .. } = refused else { panic!("{refused}") };
        assert!(formulas.contains("sky"), "{formulas}");
    });
}

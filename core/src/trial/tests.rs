use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

use super::{Trial, TrialBody, TrialEntry, TrialNames};
use crate::book::Book;
use crate::document::book_from_text;
use crate::document::resolve::Resolver;
use crate::fault::Diagnose;
use crate::formula::write::Measure;
use crate::formula::{Formula, Overlap, Recipe, WrittenIn};
use crate::json::path::Path;
use crate::json::reader::read_value;
use crate::mix::Mix;
use crate::plan::tool_names::ToolNames;
use crate::quantity::{Mass, Measurable};

const BOOK: &str = include_str!("../../examples/demo/book.json");

fn book() -> Book {
    book_from_text(BOOK).unwrap()
}

fn trial<'a>(entry: &Value, book: &'a Book) -> Result<Trial<'a>, Vec<(String, String)>> {
    let entry: TrialEntry = read_value(entry).map_err(|faults| {
        faults.iter().map(|f| (f.path.clone(), f.code.to_string())).collect::<Vec<_>>()
    })?;
    let mut resolver = Resolver::new(book.system);
    let trial = entry.resolve(book, &mut resolver, &Path::ROOT);
    let faults = resolver.finish(trial);
    faults.map_err(|faults| faults.iter().map(|f| (f.path.clone(), f.code.to_string())).collect())
}

const NAMES: TrialNames<'_> = TrialNames { color: "found", body: "found body" };

fn doses(formula: &Formula, book: &Book) -> Vec<(String, String)> {
    let dose = |dose: &crate::formula::Dose| {
        (book.materials.get(dose.material).unwrap().name.clone(), dose.amount.to_string())
    };
    formula.doses.iter().map(dose).collect()
}

fn pairs(list: &[(&str, &str)]) -> Vec<(String, String)> {
    list.iter().map(|(a, b)| ((*a).to_owned(), (*b).to_owned())).collect()
}

#[test]
fn a_color_found_in_half_a_cup_is_written_for_a_cup_in_its_own_measures() {
    let book = book();
    let entry = json!({ "start": "1/2 cup", "formulas": ["plain"], "log": [
        { "plum": "3 drops" }, { "teal-flake": "1/4 tsp" }, "again", { "plum": "1 drop", "taken": "0 g" }
    ] });
    assert_eq!(trial(&entry, &book).unwrap_err()[0].1, "trial-step-in-two");
    let entry = json!({ "start": "1/2 cup", "formulas": ["plain"], "log": [
        { "plum": "3 drops" }, { "teal-flake": "1/4 tsp" }, "again", { "taken": "10 g" }, { "taken": "1/4 cup" }
    ] });
    let trial = trial(&entry, &book).unwrap();
    let found = trial.formulas(NAMES, None).unwrap();
    assert_eq!(found.per.to_string(), "1 cup");
    let color = found.color.unwrap();
    assert_eq!(
        doses(&color.formula, &book),
        pairs(&[("plum", "6 drops"), ("teal-flake", "1 tsp")])
    );
    assert!(color.doses.iter().all(|dose| dose.off.value == 0.0));
    assert!(color.formula.base.is_empty());
    assert_eq!(found.body, TrialBody::OfBook(Vec::from([book.find_formula("plain").unwrap()])));
}

#[test]
fn what_was_taken_changes_no_ratio_of_what_was_there_and_all_of_what_comes_later() {
    let book = book();
    // Half of the cup is taken: 2 drops then count as 4.
    let entry = json!({ "start": "1 cup", "log": [
        { "stabilizer": "1 tsp" }, { "plum": "10 drops" }, { "taken": "123 g" }, { "plum": "2 drops" }
    ] });
    let trial = trial(&entry, &book).unwrap();
    let (cup, stabilizer, plum): (f64, f64, f64) =
        (236.588_236_5 * 1.03, 4.928_921_593_75 * 1.02, 0.44);
    let kept = 1.0 - 123.0 / (cup + stabilizer + plum);
    let drops = 10.0 + 2.0 / kept;
    let found = trial.formulas(NAMES, None).unwrap();
    let color = found.color.unwrap();
    let [dose] = color.doses.as_slice() else { panic!("{color:?}") };
    assert!((dose.amount.drops().unwrap().to_f64() - drops).abs() < 2e-2, "{drops} {dose:?}");
    assert!(dose.off.value != 0.0 && dose.off.value.abs() < 1e-3);
    // The body is recognized, though nobody named it.
    assert_eq!(found.body, TrialBody::OfBook(Vec::from([book.find_formula("plain").unwrap()])));
    assert!((trial.taken().si() - 0.123).abs() < 1e-12);
}

#[rstest]
#[case::softened(json!({ "softener": "2 tsp" }), &[("softener", "2 tsp"), ("stabilizer", "1 tsp")])]
#[case::more_stabilizer(json!({ "stabilizer": "1/4 tsp" }), &[("stabilizer", "1 1/4 tsp")])]
#[case::more_base(json!({ "clear-base": "1 cup" }), &[("stabilizer", "1/2 tsp")])]
#[case::other_measure(json!({ "stabilizer": "1 g" }), &[("stabilizer", "6.03 g")])]
fn a_body_that_the_book_lacks_is_written_out(#[case] added: Value, #[case] body: &[(&str, &str)]) {
    let book = book();
    let entry = json!({ "start": "1 cup", "formulas": ["plain"], "log": [added] });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    let TrialBody::Own(own) = found.body else { panic!("{:?}", found.body) };
    assert_eq!(doses(&own.formula, &book), pairs(body));
    assert_eq!(own.formula.base.len(), 1);
    assert_eq!(found.color, None);
}

#[test]
fn a_color_in_the_bare_base_needs_no_body() {
    let book = book();
    let entry = json!({ "start": "1 cup", "log": [{ "plum": "30 drops" }] });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    assert_eq!(found.body, TrialBody::OfBook(Vec::new()));
    let entry = json!({ "start": "1 cup", "base": "firm-base", "log": [{ "plum": "30 drops" }] });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    assert!(matches!(found.body, TrialBody::Own(own) if own.doses.is_empty()));
}

#[test]
fn a_color_that_started_from_a_formula_goes_on_from_it() {
    let book = book();
    let entry =
        json!({ "start": "1 cup", "formulas": ["dusk", "salted"], "log": [{ "plum": "4 drops" }] });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    let color = doses(&found.color.unwrap().formula, &book);
    assert_eq!(color, pairs(&[("plum", "36 drops"), ("teal-flake", "1/2 tsp")]));
    assert_eq!(found.body, TrialBody::OfBook(Vec::from([book.find_formula("salted").unwrap()])));
}

#[rstest]
#[case(json!({ "start": "3 drops" }), "/start", "trial-no-start")]
#[case(json!({ "start": "0 cup" }), "/start", "trial-no-start")]
#[case(json!({ "start": "1 cup", "base": "plum" }), "/base", "trial-no-plastisol")]
#[case(json!({ "start": "1 cup", "base": "plam" }), "/base", "unknown-name")]
#[case(json!({ "start": "1 cup", "formulas": ["plain"], "base": "clear-base" }), "/base", "trial-formulas-and-base")]
#[case(json!({ "start": "1 cup", "formulas": ["dask"] }), "/formulas/0", "unknown-name")]
#[case(json!({ "start": "1 cup", "log": ["again"] }), "/log/0", "trial-nothing-again")]
#[case(json!({ "start": "1 cup", "log": ["agian"] }), "/log/0", "wrong-type")]
#[case(json!({ "start": "1 cup", "log": [{ "plam": "1 drop" }] }), "/log/0/plam", "unknown-name")]
#[case(json!({ "start": "1 cup", "log": [{ "plum": "8 % of base" }] }), "/log/0/plum", "amount-wrong-dimension")]
#[case(json!({ "start": "1 cup", "log": [{ "taken": "8 drops" }] }), "/log/0/taken", "trial-not-taken")]
#[case(json!({ "start": "1 cup", "log": [{ "taken": "2 cup" }] }), "/log/0/taken", "mix-draw-too-large")]
#[case(json!({ "start": "1 cup", "log": [{ "fine-salt": "3 drops" }] }), "/log/0/fine-salt", "missing-property")]
#[case(json!({ "start": "1 cup", "log": [{}] }), "/log/0", "wrong-type")]
fn slips_are_named_where_they_are(#[case] entry: Value, #[case] path: &str, #[case] code: &str) {
    let book = book();
    let faults = trial(&entry, &book).unwrap_err();
    assert_eq!(faults, [(path.to_owned(), code.to_owned())]);
}

#[test]
fn a_log_reads_back_as_it_was_written() {
    let written = json!({ "start": "1 cup", "log": [
        { "plum": "3 drops", "ext": { "at": "10:05" } }, "again", { "taken": "10 g" }
    ] });
    let read: TrialEntry = read_value(&written).unwrap();
    assert_eq!(serde_json::to_value(&read).unwrap(), written);
}

/// The demo's book with a body that has a color of its own, and a blend, both per 2 cups.
fn book_with_colored_body() -> Book {
    let mut book: Value = serde_json::from_str(BOOK).unwrap();
    book["formulas"]["pearly"] = json!({ "per": "2 cup", "base": "clear-base",
        "doses": { "stabilizer": "2 tsp", "silver-pearl": "2 tsp" } });
    book["formulas"]["half"] =
        json!({ "base": { "clear-base": "1 cup", "firm-base": "1 cup" }, "doses": {} });
    book_from_text(&book.to_string()).unwrap()
}

#[rstest]
// 2 tsp for 2 cups is the body's own pearl.
#[case(json!([]), true, &[], Overlap::Refuse)]
#[case(json!([{ "plum": "3 drops" }]), true, &[("plum", "6 drops")], Overlap::Refuse)]
// 1/4 tsp more for 1 cup is color: 1/2 tsp for 2 cups.
#[case(json!([{ "silver-pearl": "1/4 tsp" }]), true, &[("silver-pearl", "1/2 tsp")], Overlap::Add)]
// With half a cup of base and its stabilizer there is less pearl than the body has: it is plain, 1 tsp in 1 1/2 cups.
#[case(json!([{ "clear-base": "1/2 cup" }, { "stabilizer": "1/2 tsp" }]), false, &[("silver-pearl", "1 1/3 tsp")], Overlap::Refuse)]
fn of_a_body_with_a_color_of_its_own_only_more_of_it_is_color(
    #[case] log: Value,
    #[case] is_of_book: bool,
    #[case] color: &[(&str, &str)],
    #[case] overlap: Overlap,
) {
    let book = book_with_colored_body();
    let entry = json!({ "start": "1 cup", "formulas": ["pearly"], "log": log });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    assert_eq!(found.per.to_string(), "2 cup");
    let pearly = TrialBody::OfBook(Vec::from([book.find_formula("pearly").unwrap()]));
    assert_eq!(found.body == pearly, is_of_book, "{:?}", found.body);
    let found_color = found.color.map(|color| doses(&color.formula, &book)).unwrap_or_default();
    assert_eq!((found_color, found.overlap), (pairs(color), overlap));
}

#[rstest]
// Plain is 1 tsp of stabilizer in 1 cup of clear base.
#[case(json!([{ "stabilizer": "1 tsp" }, { "softener": "0 tsp" }]), Some(&["plain"][..]))]
// A microgram more is another body, and so is firm base.
#[case(json!([{ "stabilizer": "1 tsp" }, { "stabilizer": "0.000001 g" }]), None)]
#[case(json!([{ "firm-base": "1/2 cup" }]), None)]
#[case(json!([{ "firm-base": "1 cup" }]), Some(&["half"][..]))]
// A color of the book is no body.
#[case(json!([{ "plum": "32 drops" }, { "teal-flake": "1/2 tsp" }]), Some(&[][..]))]
fn a_body_is_recognized_by_all_that_makes_it_up(#[case] log: Value, #[case] body: Option<&[&str]>) {
    let book = book_with_colored_body();
    let entry = json!({ "start": "1 cup", "log": log });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    let places =
        |names: &[&str]| names.iter().map(|name| book.find_formula(name).unwrap()).collect();
    match body {
        Some(names) => assert_eq!(found.body, TrialBody::OfBook(places(names))),
        None => assert!(matches!(found.body, TrialBody::Own(_)), "{:?}", found.body),
    }
}

#[rstest]
// Nothing of it is no measure of it; the hundredth of a gram that the scale does not show is in the formula.
#[case(json!([{ "plum": "0 g" }, { "plum": "3 drops" }]), "3 drops")]
#[case(json!([{ "plum": "0.01 g" }]), "0.01 g")]
fn a_dose_is_in_the_measures_that_it_went_in_with(#[case] log: Value, #[case] dose: &str) {
    let book = book();
    let entry = json!({ "start": "1 cup", "log": log });
    let trial = trial(&entry, &book).unwrap();
    let color = trial.formulas(NAMES, None).unwrap().color.unwrap();
    assert_eq!(doses(&color.formula, &book), pairs(&[("plum", dose)]));
    let added = trial.additions().iter().filter(|it| it.material == color.doses[0].material);
    assert_eq!(added.count(), log.as_array().unwrap().len());
}

/// A material may have the name of a look at the color: an amount of it is no color.
#[rstest]
#[case(json!("3 drops"))]
#[case(json!({ "value": 3, "unit": "drops" }))]
fn a_material_may_be_called_looks(#[case] amount: Value) {
    let mut book: Value = serde_json::from_str(BOOK).unwrap();
    book["materials"]["looks"] = book["materials"]["plum"].clone();
    let book = book_from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
    let entry = json!({ "start": "1 cup", "log": [{ "looks": amount }] });
    let found = trial(&entry, &book).unwrap();
    let added: Vec<&str> = found
        .additions()
        .iter()
        .map(|it| book.materials.get(it.material).unwrap().name.as_str())
        .collect();
    assert_eq!(added, ["clear-base", "looks"]);
}

#[test]
fn from_an_empty_cup_nothing_is_taken_and_nothing_written() {
    let book = book();
    let entry = |taken: &str| json!({ "start": "100 g", "log": [{ "taken": "100 g" }, { "taken": taken }] });
    let refused = trial(&entry("1 tsp"), &book).unwrap_err();
    assert_eq!(refused, pairs(&[("/log/1/taken", "mix-empty")]));
    let refused = trial(&entry("1 g"), &book).unwrap_err();
    assert_eq!(refused, pairs(&[("/log/1/taken", "mix-draw-too-large")]));
    let empty = trial(&entry("0 g"), &book).unwrap();
    let refused = empty.formulas(NAMES, None).unwrap_err();
    assert_eq!(refused.code(), "mix-no-base");
    assert!(refused.help().contains("plastisol"));
}

#[test]
fn of_a_mix_only_what_is_in_it_went_in() {
    let book = book();
    let (base, plum) = (book.default_base.unwrap(), book.materials.find("plum").unwrap());
    let mut mix = Mix::new();
    mix.add(base, Mass::from_si(0.1)).unwrap();
    mix.add(plum, Mass::default()).unwrap();
    let trial = Trial::of_mix(&mix, None, |_| Measure::grams(), &book).unwrap();
    let [only] = trial.additions() else { panic!("{:?}", trial.additions()) };
    assert_eq!((only.material, only.amount.to_string().as_str()), (base, "100 g"));
}

#[rstest]
// 0.003/0.044 = 6.8 %, and 5 % of one drop against the next.
#[case("plum", "1 drop", Some("8.5 % what a drop of plum weighs"))]
#[case("plum", "0 drops", None)]
// 0.1 √2/√12 g of the difference of two readings, and 0.1 %.
#[case("plum", "10 g", Some("0.4 % reading the balance for plum"))]
// 0.05/0.55 = 9.1 % of the flake, 2.9 % of the spoon's size, 3 % of leveling it; halved spoons err less. The bench has no
// spoon for a third: it is taken with one of its own.
#[case("teal-flake", "1/4 tsp", Some("10 % what a spoonful of teal-flake weighs"))]
#[case("teal-flake", "3/4 tsp", Some("9.6 % what a spoonful of teal-flake weighs"))]
#[case("teal-flake", "1/3 tsp", Some("10 % what a spoonful of teal-flake weighs"))]
// 2.9 % of the cup's size, and a tenth of its marks of 1/4 cup.
#[case("stabilizer", "1 cup", Some("3.8 % size of the 1-cup cup"))]
fn how_sure_a_dose_is_comes_from_the_tool_that_took_it(
    #[case] material: &str,
    #[case] amount: &str,
    #[case] expected: Option<&str>,
) {
    let book = book();
    let entry = json!({ "start": "1 cup", "log": [{ (material): amount }] });
    let trial = trial(&entry, &book).unwrap();
    let id = book.materials.find(material).unwrap();
    let names = ToolNames::of(&book);
    let doubt = trial.doubt(id, WrittenIn::Mass, &names);
    let doubt = doubt.map(|it| format!("{} {}", it.uncertainty.text, it.main_source));
    assert_eq!(doubt.as_deref(), expected);
}

fn amounts() -> impl Strategy<Value = (&'static str, String)> {
    prop_oneof![
        (1_u32..40).prop_map(|n| ("plum", format!("{n} drops"))),
        (1_u32..40).prop_map(|n| ("plum", format!("{n}/10 g"))),
        (1_u32..9).prop_map(|n| ("teal-flake", format!("{n}/8 tsp"))),
        (1_u32..9).prop_map(|n| ("silver-pearl", format!("{n}/4 tsp"))),
        (1_u32..5).prop_map(|n| ("stabilizer", format!("{n}/4 tsp"))),
        (1_u32..5).prop_map(|n| ("softener", format!("{n} tsp"))),
        (1_u32..5).prop_map(|n| ("clear-base", format!("{n}/4 cup"))),
        (1_u32..30).prop_map(|n| ("taken", format!("{n} g"))),
        (1_u32..4).prop_map(|n| ("taken", format!("{n} tsp"))),
    ]
}

fn any_trial() -> impl Strategy<Value = Value> {
    let start = prop::sample::select(alloc::vec!["1/2 cup", "1 cup", "240 g", "3/4 cup"]);
    let formulas = prop::sample::select(alloc::vec![
        json!(null),
        json!(["plain"]),
        json!(["salted"]),
        json!(["dusk", "plain"]),
        json!(["reed", "soft"]),
        json!(["firm"])
    ]);
    (start, formulas, prop::collection::vec(amounts(), 0..10)).prop_map(|(start, formulas, log)| {
        let log: Vec<Value> =
            log.into_iter().map(|(name, amount)| json!({ (name): amount })).collect();
        let mut entry = json!({ "start": start, "log": log });
        if !formulas.is_null() {
            entry["formulas"] = formulas;
        }
        entry
    })
}

/// The largest error of a ratio that rounding makes.
const WRITTEN: f64 = 1.002e-3;

fn check(recipe: &Recipe, trial: &Trial<'_>, book: &Book) {
    let base = trial.base().unwrap().mass();
    let mix = recipe.for_base(base).unwrap();
    for portion in trial.mix().portions() {
        let got = mix.mass_of(portion.material).si();
        let off = (got / portion.mass.si() - 1.0).abs();
        let name = &book.materials.get(portion.material).unwrap().name;
        assert!(portion.mass == Mass::default() || off <= WRITTEN, "{name}: {got} for {portion:?}");
    }
    for portion in mix.portions() {
        assert!(trial.mix().mass_of(portion.material) > Mass::default(), "{portion:?}");
    }
}

fn combine(formulas: &[&Formula], overlap: Overlap, book: &Book) -> Recipe {
    Recipe::combine(formulas, overlap, book.default_base, &book.materials, book.system).unwrap()
}

proptest! {
    #[test]
    fn a_trial_replayed_as_a_formula_gives_its_mix(entry in any_trial()) {
        let book = book();
        let trial = trial(&entry, &book).unwrap();
        let found = trial.formulas(NAMES, None).unwrap();
        check(&combine(&[&found.whole.formula], Overlap::Refuse, &book), &trial, &book);
        for dose in &found.whole.doses {
            prop_assert!(dose.off.value.abs() <= WRITTEN);
        }
        // And the color with its body: with another body it is the same color.
        let mut both: Vec<&Formula> = found.color.iter().map(|color| &color.formula).collect();
        match &found.body {
            TrialBody::OfBook(formulas) => both.extend(formulas.iter().map(|&index| &book.formulas[index])),
            TrialBody::Own(own) => both.push(&own.formula),
        }
        check(&combine(&both, found.overlap, &book), &trial, &book);
    }

    #[test]
    fn without_a_test_piece_every_dose_is_exact(entry in any_trial()) {
        let mut entry = entry;
        entry["start"] = json!("1/2 cup");
        entry["log"].as_array_mut().unwrap().retain(|step| step.get("taken").is_none() && step.get("clear-base").is_none());
        let book = book();
        let trial = trial(&entry, &book).unwrap();
        let found = trial.formulas(NAMES, None).unwrap();
        for dose in &found.whole.doses {
            let material = &book.materials.get(dose.material).unwrap().name;
            let is_of_one_measure = !trial.additions().iter().any(|addition| {
                addition.material == dose.material && addition.amount.dimension() != dose.amount.dimension()
            });
            prop_assert!(dose.off.value == 0.0 || !is_of_one_measure || entry["formulas"][0] == "reed", "{}: {:?}", material, dose);
        }
    }
}

/// A body that doses nothing of a salt and of a colorant is there where neither is in the cup.
#[test]
fn a_dose_of_nothing_is_met_by_nothing() {
    let mut text: Value = serde_json::from_str(crate::document::small::BOOK).unwrap();
    text["formulas"]["bare"] =
        json!({ "per": "1 cup", "base": "clear", "doses": { "salt": "0 g", "blue": "0 drops" } });
    let book = book_from_text(&text.to_string()).unwrap();
    let entry = json!({ "start": "1 cup", "formulas": ["bare"], "log": [{ "red": "2 g" }] });
    let found = trial(&entry, &book).unwrap().formulas(NAMES, None).unwrap();
    assert_eq!(found.body, TrialBody::OfBook(Vec::from([book.find_formula("bare").unwrap()])));
    let more = json!({ "start": "1 cup", "formulas": ["bare"], "log": [{ "salt": "2 g" }] });
    let found = trial(&more, &book).unwrap().formulas(NAMES, None).unwrap();
    assert!(matches!(found.body, TrialBody::Own(_)), "{:?}", found.body);
}

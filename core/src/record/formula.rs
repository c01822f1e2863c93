//! A stage as made, written as formulas for the book: its color apart from its body.
//!
//! To the body belong its base and what makes it soft, hard, heavy or stable; of a colorant that a body formula of the book
//! doses, what it doses. All else is the color. Doses are in the measure that was used, else in that of the formula, and for
//! the amount of base that the formula is for.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::RecordError;
use super::told::Told;
use crate::book::{Book, Layer};
use crate::formula::write::{self, Measure, Part};
use crate::formula::{Formula, Overlap, Recipe};
use crate::material::Kind;
use crate::mix::{MaterialId, Mix, MixError};
use crate::plan::Stage;
use crate::plan::day::recipe_of;
use crate::quantity::{Amount, Mass};
use crate::trial::{base_of, is_body};

/// A stage as formulas.
pub(super) struct Written {
    /// The amount of base that the doses are for.
    pub(super) per: Amount,
    /// Each material with its dose.
    pub(super) doses: Vec<(MaterialId, String)>,
    /// The color; `None` if there is none.
    #[cfg_attr(not(feature = "document"), allow(dead_code))] // a book keeps it
    pub(super) color: Option<Formula>,
    #[cfg_attr(not(feature = "document"), allow(dead_code))] // a book keeps it
    pub(super) body: Formula,
}

/// Measures in which materials went in so far.
#[derive(Default)]
pub(super) struct Measures(Vec<(MaterialId, Measure)>);

impl Measures {
    /// Notes the measures of a stage: as stated, else as its formulas dose.
    pub(super) fn note(&mut self, stage: &Stage, told: &Told<'_>, book: &Book) {
        for one in &told.went_in {
            let measure = match (&one.measured, one.weighed) {
                (Some((amount, _)), _) => Measure::of(amount),
                (None, Some(weighed)) if weighed > Mass::default() => {
                    match dosed(one.material, stage, book) {
                        Some(measure) => measure,
                        None => Measure::grams(),
                    }
                }
                _ => continue,
            };
            self.0.retain(|(material, _)| *material != one.material);
            self.0.push((one.material, measure));
        }
    }

    fn of(&self, material: MaterialId, stage: &Stage, book: &Book) -> Measure {
        let used = self.0.iter().find(|(known, _)| *known == material);
        let used = used.map(|(_, measure)| measure.clone());
        used.or_else(|| dosed(material, stage, book)).unwrap_or_else(Measure::grams)
    }
}

/// The formulas of a stage that are in the book.
fn formulas<'b>(stage: &Stage, book: &'b Book) -> Vec<(usize, &'b Formula)> {
    let places = stage.formulas.iter().filter_map(|name| book.find_formula(name));
    places.filter_map(|place| Some((place, book.formulas.get(place)?))).collect()
}

/// The measure that the formulas of a stage dose a material in.
fn dosed(material: MaterialId, stage: &Stage, book: &Book) -> Option<Measure> {
    let formulas = formulas(stage, book);
    let mut doses = formulas.iter().flat_map(|(_, formula)| &formula.doses);
    doses.find(|dose| dose.material == material).map(|dose| Measure::of(&dose.amount))
}

/// What the body formulas of a stage make.
fn body_of(stage: &Stage, book: &Book) -> Result<Option<Recipe>, MixError> {
    let mut places = Vec::new();
    for (place, formula) in formulas(stage, book) {
        if !formula.base.is_empty() || is_body(formula, book)? {
            places.push(place);
        }
    }
    if places.is_empty() {
        return Ok(None);
    }
    let layer = Layer { formulas: places, share: 1.0, overlap: Overlap::Add };
    // A body that the book has changed since is of no help: then all colorants are the color's.
    Ok(recipe_of(&layer, book).ok())
}

/// The mix of `stage` as formulas.
pub(super) fn written(
    stage: &Stage,
    mix: &Mix,
    measures: &Measures,
    book: &Book,
) -> Result<Written, RecordError> {
    let per = formulas(stage, book).iter().find_map(|(_, formula)| formula.per);
    let per = per.map_or_else(|| write::usual_per(book), Ok)?;
    let base = base_of(mix, book)?;
    let body = body_of(stage, book)?;
    let (mut all, mut of_body, mut of_color) = (Vec::new(), Vec::new(), Vec::new());
    for portion in mix.portions() {
        let kind = book.materials.get(portion.material)?.kind;
        if kind == Kind::Plastisol {
            continue;
        }
        let in_body = if kind.is_of_body() {
            portion.mass
        } else {
            let additives = body.iter().flat_map(Recipe::additives);
            let dosed = additives.into_iter().find(|one| one.material == portion.material);
            dosed.map_or(Mass::default(), |dosed| base.mass() * dosed.ratio)
        };
        let in_body = if in_body < portion.mass { in_body } else { portion.mass };
        let measure = measures.of(portion.material, stage, book);
        let part = Part { material: portion.material, mass: portion.mass, measure };
        of_body.push(Part { mass: in_body, ..part.clone() });
        of_color.push(Part { mass: portion.mass - in_body, ..part.clone() });
        all.push(part);
    }
    let write =
        |parts: &[Part], names_base: bool| write::formula("", &base, parts, per, names_base, book);
    let whole = write(&all, true)?;
    let doses = whole.formula.base.iter().chain(&whole.formula.doses);
    let doses = doses.map(|dose| (dose.material, dose.amount.to_string())).collect();
    let color = write(&of_color, false)?.formula;
    Ok(Written {
        per,
        doses,
        color: (!color.doses.is_empty()).then_some(color),
        body: write(&of_body, true)?.formula,
    })
}

#[cfg(all(test, feature = "document"))]
mod tests;

//! The formula of a trial: all of it, and the color apart from the body.
//!
//! To the body belong its base, what makes it soft, hard, heavy or stable, and what the body formula that went in doses; all
//! else is the color. With r_i the ratio of a material to the base in the cup and b_i that in the body, the color doses
//! r_i − b_i, so that color and body combined are the mix in the cup.

use alloc::vec::Vec;

use super::{Trial, TrialError};
use crate::book::{Book, Layer};
use crate::formula::write::{self, Measure, Part};
use crate::formula::{Formula, Overlap, Recipe, WrittenFormula};
use crate::material::Kind;
use crate::mix::{MaterialId, Mix, MixError};
use crate::plan::day::recipe_of;
use crate::quantity::{Amount, Mass};

/// The formulas that a trial comes to.
#[derive(Debug, Clone, PartialEq)]
pub struct TrialFormulas {
    /// The amount of base that they are for.
    pub per: Amount,
    /// All that is in the cup, as one formula.
    pub whole: WrittenFormula,
    /// The color alone, for any body; `None` if there is no color in the cup.
    pub color: Option<WrittenFormula>,
    /// The body that it was found in.
    pub body: TrialBody,
    /// How color and body combine: [`Overlap::Add`] where the color doses more of what the body has already.
    pub overlap: Overlap,
}

/// The body of a trial.
#[derive(Debug, Clone, PartialEq)]
pub enum TrialBody {
    /// Formulas of the book, by their places; none if it is the default base alone.
    OfBook(Vec<usize>),
    /// A body that the book does not have.
    Own(WrittenFormula),
}

/// Names of the formulas that a trial is written as.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct TrialNames<'a> {
    /// That of the color, and of all as one.
    pub color: &'a str,
    /// That of the body, if it is its own.
    pub body: &'a str,
}

/// Two ratios as near as this, relative to either, are the same: far below any scale, far above rounding.
const SAME: f64 = 1e-9;

impl Kind {
    /// Whether it makes up the body of a piece rather than its color.
    pub(crate) const fn is_of_body(self) -> bool {
        matches!(
            self,
            Self::Plastisol | Self::Softener | Self::Hardener | Self::Stabilizer | Self::Salt
        )
    }
}

/// A body that a trial may have.
struct Body {
    formulas: Vec<usize>,
    recipe: Recipe,
}

impl Trial<'_> {
    /// The formulas that it comes to, per `per` of base; if omitted, per the amount that the formulas of its start are for,
    /// else the usual one of the book.
    ///
    /// # Errors
    /// There is no base in the cup; a density is missing; `per` is no amount of base.
    pub fn formulas(
        &self,
        names: TrialNames<'_>,
        per: Option<Amount>,
    ) -> Result<TrialFormulas, TrialError> {
        let book = self.book;
        let per = match per.or_else(|| self.own_per()) {
            Some(per) => per,
            None => write::usual_per(book)?,
        };
        super::check_start(&per)?;
        let base = self.base()?;
        let base_mass = base.mass();
        let stated = self.stated_body()?;
        let body = match &stated {
            Some(body) if self.has(body, &base)? => Some(body),
            _ => None,
        };
        let recognized = match body {
            Some(_) => None,
            None => self.recognized(&base)?,
        };
        let body = body.or(recognized.as_ref());
        let (mut all, mut in_body, mut in_color) = (Vec::new(), Vec::new(), Vec::new());
        for part in self.parts()? {
            let of_body = self.of_body(&part, body.or(stated.as_ref()), base_mass)?;
            let rest = part.mass - of_body;
            let color = if rest.value > SAME * part.mass.value { rest } else { Mass::default() };
            in_body.push(Part { mass: of_body, ..part.clone() });
            in_color.push(Part { mass: color, ..part.clone() });
            all.push(part);
        }
        let write = |name: &str, parts: &[Part], names_base: bool| {
            write::formula(name, &base, parts, per, names_base, book)
        };
        let color = write(names.color, &in_color, false)?;
        let body = match body {
            Some(body) => TrialBody::OfBook(body.formulas.clone()),
            None if is_default_base(&base, book) && in_body.iter().all(Part::is_nothing) => {
                TrialBody::OfBook(Vec::new())
            }
            None => TrialBody::Own(write(names.body, &in_body, true)?),
        };
        let is_dosed_twice = in_body
            .iter()
            .zip(&in_color)
            .any(|(body, color)| body.mass > Mass::default() && color.mass > Mass::default());
        Ok(TrialFormulas {
            per,
            whole: write(names.color, &all, true)?,
            color: (!color.doses.is_empty()).then_some(color),
            body,
            overlap: if is_dosed_twice { Overlap::Add } else { Overlap::Refuse },
        })
    }

    /// All that is in the cup but the base, by kind, each in the measure that it went in with.
    fn parts(&self) -> Result<Vec<Part>, MixError> {
        let mut parts = Vec::new();
        for portion in self.mix.portions() {
            let material = self.book.materials.get(portion.material)?;
            if material.kind != Kind::Plastisol {
                let measure = self.measure(portion.material);
                parts.push(Part { material: portion.material, mass: portion.mass, measure });
            }
        }
        Ok(parts)
    }

    /// The measure that a material went in with.
    fn measure(&self, material: MaterialId) -> Measure {
        let additions = self.additions.iter().filter(|addition| addition.material == material);
        let measures = additions
            .filter(|addition| addition.mass > Mass::default())
            .map(|addition| Measure::of(&addition.amount));
        measures.reduce(Measure::and).unwrap_or(Measure::Drops)
    }

    /// The amount that the formulas of its start are for.
    fn own_per(&self) -> Option<Amount> {
        let layer = self.from.as_ref()?;
        let mut formulas = layer.formulas.iter().filter_map(|&index| self.book.formulas.get(index));
        formulas.find_map(|formula| formula.per)
    }

    /// The body formulas of its start.
    fn stated_body(&self) -> Result<Option<Body>, TrialError> {
        let Some(from) = &self.from else { return Ok(None) };
        let mut formulas = Vec::new();
        for &index in &from.formulas {
            let Some(formula) = self.book.formulas.get(index) else { continue };
            if !formula.base.is_empty() || is_body(formula, self.book)? {
                formulas.push(index);
            }
        }
        if formulas.is_empty() {
            return Ok(None);
        }
        let layer = Layer { formulas: formulas.clone(), ..from.clone() };
        Ok(Some(Body { formulas, recipe: recipe_of(&layer, self.book)? }))
    }

    /// The first formula of the book, by name, that is the body in the cup.
    fn recognized(&self, base: &Mix) -> Result<Option<Body>, TrialError> {
        for (index, formula) in self.book.formulas.iter().enumerate() {
            if formula.is_to_be_found() || !is_body(formula, self.book)? {
                continue;
            }
            let layer =
                Layer { formulas: Vec::from([index]), share: 1.0, overlap: Overlap::Refuse };
            // A formula that is not complete yet is no body.
            let Ok(recipe) = recipe_of(&layer, self.book) else { continue };
            let body = Body { formulas: layer.formulas, recipe };
            if self.has(&body, base)? {
                return Ok(Some(body));
            }
        }
        Ok(None)
    }

    /// Whether the body in the cup is `body`.
    fn has(&self, body: &Body, base: &Mix) -> Result<bool, MixError> {
        let mass = base.mass();
        let is_same = |material: MaterialId, ratio: f64| {
            let held = (self.mix.mass_of(material) / mass).value;
            libm::fabs(held - ratio) <= SAME * ratio
        };
        let parts = body.recipe.base();
        let same_base = base.portions().len() == parts.len()
            && parts.iter().all(|part| is_same(part.material, part.ratio));
        for portion in self.mix.portions() {
            let is_of_body = self.book.materials.get(portion.material)?.kind.is_of_body();
            if is_of_body
                && portion.mass > Mass::default()
                && !body.recipe.contains(portion.material)
            {
                return Ok(false);
            }
        }
        for part in body.recipe.additives() {
            let is_of_body = self.book.materials.get(part.material)?.kind.is_of_body();
            let held = (self.mix.mass_of(part.material) / mass).value;
            let is_there = if is_of_body {
                is_same(part.material, part.ratio)
            } else {
                held >= part.ratio * (1.0 - SAME)
            };
            if !is_there {
                return Ok(false);
            }
        }
        Ok(same_base)
    }

    /// How much of a part belongs to the body.
    fn of_body(&self, part: &Part, body: Option<&Body>, base: Mass) -> Result<Mass, MixError> {
        if self.book.materials.get(part.material)?.kind.is_of_body() {
            return Ok(part.mass);
        }
        let dosed = body.and_then(|body| {
            let mut additives = body.recipe.additives().iter();
            additives.find(|additive| additive.material == part.material)
        });
        let of_body = dosed.map_or(Mass::default(), |dosed| base * dosed.ratio);
        Ok(if of_body < part.mass { of_body } else { part.mass })
    }
}

/// Whether `base` is the one that formulas without a base go into.
fn is_default_base(base: &Mix, book: &Book) -> bool {
    matches!(base.portions(), [only] if Some(only.material) == book.default_base)
}

/// Whether a formula doses nothing but what makes up a body.
pub(crate) fn is_body(formula: &Formula, book: &Book) -> Result<bool, MixError> {
    for dose in &formula.doses {
        if !book.materials.get(dose.material)?.kind.is_of_body() {
            return Ok(false);
        }
    }
    Ok(true)
}

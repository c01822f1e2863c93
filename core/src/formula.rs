//! Formulas: doses of materials per amount of base, and what they come to together.
//!
//! A formula is kept as people write it ("per 1 cup: 32 drops, 1/2 tsp"). Its recipe is the
//! ratio r = m/m_base of each material to the mass of the base, and follows from the joint
//! solution of all its doses. With ratios r_i of base and shares w_j of the finished mass
//!
//! T = m_base (1 + Σr)/(1 − Σw),  m_j = w_j T,  and back  m_base = T (1 − Σw)/(1 + Σr).
//!
//! Shares v_k of the finished *volume* couple mass and volume, and the two totals T, V follow from
//!
//! (1 − Σw) T − (Σ ρ_k v_k) V = m_base (1 + Σr)
//! −(Σ w_j/ρ_j) T + (1 − Σv) V = V_base + Σ (r_i m_base/ρ_i).
//!
//! Ratios are computed as exact rationals of what was written, so that a formula written per
//! 1, 2 or 3 cups is one and the same; an `f64` is made of them only at the end.

mod base;
mod error;
mod mass;
mod solve;
pub(crate) mod write;

use alloc::string::String;
use alloc::vec::Vec;

use num_rational::BigRational;

use self::base::Base;
pub use self::error::FormulaError;
use self::solve::{Dosed, Share, solve};
pub use self::write::{WrittenDose, WrittenFormula};
use crate::color::reading::Reading;
use crate::mix::{MaterialId, Materials, Mix, MixError, Phase};
use crate::quantity::{
    Amount, Basis, By, Dimension, Mass, MassDensity, Measurable, System, Volume,
};
use crate::words::words;

words! {
    /// The measure that a dose is written in: its own, against which every other has to be converted.
    pub enum WrittenIn {
        /// A mass, or a share by mass.
        Mass = "mass",
        /// A volume, spoons and cups, or a share by volume.
        Volume = "volume",
        /// Drops.
        Drops = "drops",
    }
}

impl WrittenIn {
    /// The measure of `amount`.
    #[must_use]
    pub fn of(amount: &Amount) -> Self {
        match (amount.basis(), amount.dimension()) {
            (None, Dimension::VOLUME) | (Some(Basis { by: By::Volume, .. }), _) => Self::Volume,
            (None, Dimension::COUNT) => Self::Drops,
            _ => Self::Mass,
        }
    }

    /// The measure of two doses that add up: theirs where they agree, else a mass.
    pub(crate) fn and(self, other: Self) -> Self {
        if self == other { self } else { Self::Mass }
    }
}

/// An amount of one material.
#[derive(Debug, Clone, PartialEq)]
pub struct Dose {
    /// Which material.
    pub material: MaterialId,
    /// How much, as it was written: a volume, a mass, drops, or a per cent of base or finished.
    pub amount: Amount,
}

/// A named list of doses per amount of base.
#[derive(Debug, Clone, PartialEq)]
pub struct Formula {
    /// Name in the book.
    pub name: String,
    /// The amount of base that the doses are for; needed unless all of them are per cents.
    pub per: Option<Amount>,
    /// The base: one plastisol, or a blend by the amounts given; empty for a color formula
    /// that goes on any base.
    pub base: Vec<Dose>,
    /// The doses.
    pub doses: Vec<Dose>,
    /// The color that a piece of it had.
    pub color: Option<Reading>,
}

impl Formula {
    /// Whether nothing is known of it yet: it names no base and doses nothing.
    #[must_use]
    pub fn is_to_be_found(&self) -> bool {
        let is_nothing = |dose: &Dose| dose.amount.value().is_zero();
        self.base.is_empty() && self.doses.iter().all(is_nothing)
    }
}

words! {
    /// Rule for two formulas that are combined and dose the same material.
    pub enum Overlap {
        /// It is an error.
        Refuse = "refuse",
        /// Both doses go in.
        Add = "add",
        /// The dose of the formula named last counts.
        Last = "last",
    }
}

/// One material of a recipe.
#[derive(Debug, Clone, PartialEq)]
pub struct Ingredient {
    /// Which material.
    pub material: MaterialId,
    /// Mass per mass of base, exactly as written; of the base itself, its share.
    pub exact: BigRational,
    /// The same, rounded to the nearest `f64`.
    pub ratio: f64,
    /// The measure that its formula doses it in; of the base, that of the amount that the doses are per.
    pub written: WrittenIn,
}

impl Ingredient {
    fn new(material: MaterialId, exact: BigRational, written: WrittenIn) -> Self {
        let ratio = crate::exact::to_f64(&exact);
        Self { material, exact, ratio, written }
    }
}

/// The ratios of all materials to the base: what one or more formulas come to.
#[derive(Debug, Clone, PartialEq)]
pub struct Recipe {
    /// The parts of the base, then the additives; each by material.
    ingredients: Vec<Ingredient>,
    /// How many parts the base has.
    bases: usize,
}

/// Maximum number of formulas of one recipe. A recipe names all of them wherever it is shown.
pub const MOST_FORMULAS: usize = 64;

/// Maximum number of doses of one recipe.
pub const MOST_DOSES: usize = 512;

/// Refuses what no pot is made of before it is compared.
fn check_counts(formulas: &[&Formula]) -> Result<(), FormulaError> {
    let count = formulas.len();
    if count > MOST_FORMULAS {
        return Err(FormulaError::TooManyFormulas { count, most: MOST_FORMULAS });
    }
    let mut count = 0_usize;
    for formula in formulas {
        count = count.saturating_add(formula.doses.len()).saturating_add(formula.base.len());
        if count > MOST_DOSES {
            let formula = formula.name.clone();
            return Err(FormulaError::TooManyDoses { formula, count, most: MOST_DOSES });
        }
    }
    Ok(())
}

impl Recipe {
    /// Combines `formulas` into one recipe.
    ///
    /// Exactly one base must come out: formulas that name a base must name the same one, and
    /// `default_base` is used where none does.
    ///
    /// # Errors
    /// No base or different ones; one material dosed twice while `overlap` refuses it; shares of
    /// the finished mix that leave no room for the base; a missing density or drop.
    pub fn combine(
        formulas: &[&Formula],
        overlap: Overlap,
        default_base: Option<MaterialId>,
        materials: &Materials,
        system: System,
    ) -> Result<Self, FormulaError> {
        check_counts(formulas)?;
        let base = Base::of(formulas, default_base, materials, system)?;
        let mut shares: Vec<(usize, Dosed)> = Vec::new();
        for (place, formula) in formulas.iter().enumerate() {
            let mut per = None;
            for dose in &formula.doses {
                let share = Share::of(dose, formula, &base, &mut per, materials, system)?;
                let of_another = |other: usize, material: MaterialId| {
                    material == dose.material && other != place
                };
                let earlier = shares.iter().find(|(other, one)| of_another(*other, one.material));
                match (earlier, overlap) {
                    (Some((earlier, ..)), Overlap::Refuse) => {
                        let first = formulas.get(*earlier);
                        return Err(FormulaError::DosedTwice {
                            material: materials.get(dose.material)?.name.clone(),
                            first: first.map(|formula| formula.name.clone()).unwrap_or_default(),
                            second: formula.name.clone(),
                        });
                    }
                    (Some(_), Overlap::Last) => {
                        shares.retain(|(other, one)| !of_another(*other, one.material));
                    }
                    _ => {}
                }
                let written = WrittenIn::of(&dose.amount);
                shares.push((place, Dosed { material: dose.material, share, written }));
            }
        }
        let shares: Vec<Dosed> = shares.into_iter().map(|(_, dosed)| dosed).collect();
        let additives = solve(shares, &base, materials)?;
        let mut ingredients = base.parts;
        let bases = ingredients.len();
        ingredients.extend(additives);
        Ok(Self { ingredients, bases })
    }

    /// The base: the shares of its parts, which sum to 1.
    #[must_use]
    pub fn base(&self) -> &[Ingredient] {
        self.ingredients.get(..self.bases).unwrap_or_default()
    }

    /// The additives, by material.
    #[must_use]
    pub fn additives(&self) -> &[Ingredient] {
        self.ingredients.get(self.bases..).unwrap_or_default()
    }

    /// Base and additives.
    pub fn ingredients(&self) -> impl Iterator<Item = &Ingredient> {
        self.ingredients.iter()
    }

    /// Total mass per mass of base, 1 + Σr.
    #[must_use]
    pub fn total_per_base(&self) -> f64 {
        1.0 + self.additives().iter().fold(0.0, |sum, additive| sum + additive.ratio)
    }

    /// The mix for `base` of base.
    ///
    /// # Errors
    /// The mass is negative or not finite.
    pub fn for_base(&self, base: Mass) -> Result<Mix, MixError> {
        let mut mix = Mix::new();
        for ingredient in self.ingredients() {
            mix.add(ingredient.material, base * ingredient.ratio)?;
        }
        Ok(mix)
    }

    /// The mix of `total` mass.
    ///
    /// # Errors
    /// The mass is negative or not finite.
    pub fn for_mass(&self, total: Mass) -> Result<Mix, MixError> {
        self.for_base(total / self.total_per_base())
    }

    /// The mix that fills `volume` at 20 °C: as liquid in the cup, or as fused pieces.
    ///
    /// # Errors
    /// A density is missing; the volume is negative or not finite.
    pub fn for_volume(
        &self,
        volume: Volume,
        phase: Phase,
        materials: &Materials,
    ) -> Result<Mix, MixError> {
        let unit = self.for_base(Mass::from_si(1.0))?;
        unit.scaled((volume / unit.volume(materials, phase)?).si())
    }

    /// Density of the base at 20 °C, as the cup measures it: 1/Σ(share/ρ).
    ///
    /// # Errors
    /// A density is missing.
    pub fn base_density(&self, materials: &Materials) -> Result<MassDensity, MixError> {
        let mut unit = Mix::new();
        for part in self.base() {
            unit.add(part.material, Mass::from_si(part.ratio))?;
        }
        Ok(Mass::from_si(1.0) / unit.volume(materials, Phase::Liquid)?)
    }

    /// Whether it holds `material`.
    #[must_use]
    pub fn contains(&self, material: MaterialId) -> bool {
        self.ingredients().any(|ingredient| ingredient.material == material)
    }
}

#[cfg(test)]
mod tests;

//! A trial: a cup in which a color is found by eye.
//!
//! It starts from an amount of base, or of the base of formulas with all that they dose; then come additions as they are
//! made, each in whatever measure, and what is taken out for a test piece. At any time the cup holds a mix, which is
//! written as a formula per amount of base in the measures that were used ([`formula`](crate::formula)). What is taken is
//! taken of the stirred mix: it lowers all masses alike and changes no ratio.

#[cfg(feature = "document")]
mod document;
#[cfg(feature = "document")]
mod doubt;
mod parts;
#[cfg(feature = "document")]
mod resolve;

use alloc::borrow::Cow;
use alloc::vec::Vec;

#[cfg(feature = "document")]
pub use document::{TrialEntry, TrialStep};
pub(crate) use parts::is_body;
pub use parts::{TrialBody, TrialFormulas, TrialNames};

use crate::book::{Book, Layer};
use crate::codes::codes;
use crate::color::reading::Reading;
use crate::fault::Diagnose;
use crate::formula::write::{self, Measure};
use crate::formula::{FormulaError, Recipe};
use crate::material::{Kind, MaterialError};
use crate::mix::{MaterialId, Mix, MixError, Phase};
use crate::plan::day::recipe_of;
use crate::quantity::{Amount, AmountError, Dimension, Mass, Measurable, Volume};

/// Something that was put into the cup.
#[derive(Debug, Clone, PartialEq)]
pub struct Addition {
    /// The material.
    pub material: MaterialId,
    /// The amount as it was measured.
    pub amount: Amount,
    /// The mass of that.
    pub mass: Mass,
}

/// A cup in which a color is found by eye.
#[derive(Debug, Clone, PartialEq)]
pub struct Trial<'a> {
    book: &'a Book,
    /// The formulas that it started from.
    from: Option<Layer>,
    mix: Mix,
    additions: Vec<Addition>,
    taken: Mass,
    /// What a sample looked like, and the mix that it was of.
    looks: Vec<(Mix, Reading)>,
}

impl<'a> Trial<'a> {
    /// Starts from `amount` of one plastisol.
    ///
    /// # Errors
    /// The material is no plastisol; the amount is neither a mass nor a volume, or is zero; a missing density.
    pub fn of_base(base: MaterialId, amount: &Amount, book: &'a Book) -> Result<Self, TrialError> {
        let material = book.materials.get(base)?;
        if material.kind != Kind::Plastisol {
            return Err(TrialError::NoPlastisol(material.name.clone(), material.kind));
        }
        let mut trial = Self::empty(None, book);
        check_start(amount)?;
        trial.add(base, amount)?;
        Ok(trial)
    }

    /// Starts from the formulas of `layer`: `amount` of their base, with all that they dose for it.
    ///
    /// # Errors
    /// Formulas that do not combine; the amount is neither a mass nor a volume, or is zero; a missing density.
    pub fn of_formulas(layer: Layer, amount: &Amount, book: &'a Book) -> Result<Self, TrialError> {
        check_start(amount)?;
        let recipe = recipe_of(&layer, book)?;
        let unit = recipe.for_base(Mass::from_si(1.0))?;
        let unit = base_of(&unit, book)?;
        let base = write::mass_of_base(*amount, &unit, &book.materials, book.system)?;
        let mut trial = Self::empty(None, book);
        for (id, measure, mass) in doses_of(&recipe, &layer, amount, base, book) {
            let material = book.materials.get(id)?;
            let (amount, _) = write::dose(material, mass, base, &measure, book.system)?;
            trial.put(Addition { material: id, amount, mass })?;
        }
        trial.from = Some(layer);
        Ok(trial)
    }

    /// A pot as if it were a trial: what is in it came from the formulas of `layer`, each material in its `measure`.
    ///
    /// # Errors
    /// A density or a drop is missing that a measure takes.
    #[cfg(feature = "document")]
    pub(crate) fn of_mix(
        mix: &Mix,
        layer: Option<Layer>,
        measure: impl Fn(MaterialId) -> Measure,
        book: &'a Book,
    ) -> Result<Self, TrialError> {
        let base = mix.base_mass(&book.materials)?;
        let mut trial = Self::empty(layer, book);
        for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
            let material = book.materials.get(portion.material)?;
            let measure = measure(portion.material);
            let (amount, _) = write::dose(material, portion.mass, base, &measure, book.system)?;
            trial.put(Addition { material: portion.material, amount, mass: portion.mass })?;
        }
        Ok(trial)
    }

    fn empty(from: Option<Layer>, book: &'a Book) -> Self {
        Self {
            book,
            from,
            mix: Mix::new(),
            additions: Vec::new(),
            taken: Mass::default(),
            looks: Vec::new(),
        }
    }

    /// Adds an amount of a material: a mass, a volume or drops.
    ///
    /// # Errors
    /// The amount is none of a material; a density or a drop is missing.
    pub fn add(&mut self, material: MaterialId, amount: &Amount) -> Result<(), TrialError> {
        let known = self.book.materials.get(material)?;
        let mass = known.mass_of(amount, self.book.system, "adding it to a trial")?;
        self.put(Addition { material, amount: *amount, mass })
    }

    fn put(&mut self, addition: Addition) -> Result<(), TrialError> {
        self.mix.add(addition.material, addition.mass)?;
        self.additions.push(addition);
        Ok(())
    }

    /// Takes an amount of the stirred mix out: a mass, or a volume cold and liquid.
    ///
    /// # Errors
    /// The amount is neither; there is less in the cup, or nothing.
    pub fn take(&mut self, amount: &Amount) -> Result<Mass, TrialError> {
        let mass = match amount.dimension() {
            Dimension::VOLUME if self.mix.mass() > Mass::default() => {
                let volume: Volume = amount.to(self.book.system)?;
                let filled = self.mix.volume(&self.book.materials, Phase::Liquid)?;
                self.mix.mass() * (volume / filled).value
            }
            Dimension::VOLUME => return Err(MixError::Empty.into()),
            Dimension::MASS => amount.to(self.book.system)?,
            _ => return Err(TrialError::NotTaken(*amount)),
        };
        self.taken += self.mix.draw(mass)?.mass();
        Ok(mass)
    }

    /// Keeps how a sample of the stirred mix looks.
    pub fn look(&mut self, seen: Reading) {
        self.looks.push((self.mix.clone(), seen));
    }

    /// The samples that were looked at: the mix then, and how it looked.
    #[must_use]
    pub fn looks(&self) -> &[(Mix, Reading)] {
        &self.looks
    }

    /// The mix in the cup.
    #[must_use]
    pub const fn mix(&self) -> &Mix {
        &self.mix
    }

    /// All that was put in, in order.
    #[must_use]
    pub fn additions(&self) -> &[Addition] {
        &self.additions
    }

    /// Mass of all that was taken out.
    #[must_use]
    pub const fn taken(&self) -> Mass {
        self.taken
    }

    /// The plastisols in the cup.
    pub(crate) fn base(&self) -> Result<Mix, MixError> {
        base_of(&self.mix, self.book)
    }
}

/// The plastisols of a mix.
pub(crate) fn base_of(mix: &Mix, book: &Book) -> Result<Mix, MixError> {
    let mut base = Mix::new();
    for portion in mix.portions() {
        if book.materials.get(portion.material)?.kind == Kind::Plastisol {
            base.add(portion.material, portion.mass)?;
        }
    }
    Ok(base)
}

/// The parts of `recipe` for `base` of base, each in the measure that its formulas dose it in; the base in that of `amount`.
fn doses_of(
    recipe: &Recipe,
    layer: &Layer,
    amount: &Amount,
    base: Mass,
    book: &Book,
) -> Vec<(MaterialId, Measure, Mass)> {
    let formulas = || layer.formulas.iter().filter_map(|&index| book.formulas.get(index));
    let mut doses = Vec::new();
    for part in recipe.base() {
        doses.push((part.material, Measure::of(amount), base * part.ratio));
    }
    for part in recipe.additives() {
        let measures = formulas()
            .flat_map(|formula| &formula.doses)
            .filter(|dose| dose.material == part.material)
            .map(|dose| Measure::of(&dose.amount));
        let measure = measures.reduce(Measure::and);
        let measure = measure.unwrap_or_else(|| Measure::written_in(part.written));
        doses.push((part.material, measure, base * part.ratio));
    }
    doses
}

fn check_start(amount: &Amount) -> Result<(), TrialError> {
    let is_amount = matches!(amount.dimension(), Dimension::MASS | Dimension::VOLUME);
    if !is_amount || amount.value().is_zero() {
        return Err(TrialError::NoStart(*amount));
    }
    Ok(())
}

/// Why a trial cannot have gone as it was written.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum TrialError {
    /// A start that is no amount of base.
    #[error("A trial cannot start from {0} of base.")]
    NoStart(Amount),
    /// A start from something else than a plastisol.
    #[error("A trial starts from a plastisol; \"{0}\" is a {1}.")]
    NoPlastisol(alloc::string::String, Kind),
    /// What was taken out is no amount of a mix.
    #[error("{0} cannot be taken out of a mix.")]
    NotTaken(Amount),
    /// Formulas that do not combine.
    #[error(transparent)]
    Formula(#[from] FormulaError),
    /// An amount that cannot be, or a number that is missing.
    #[error(transparent)]
    Mix(#[from] MixError),
    /// An amount that is none of a material, or a number that is missing.
    #[error(transparent)]
    Material(#[from] MaterialError),
    /// An amount that cannot be converted.
    #[error(transparent)]
    Amount(#[from] AmountError),
}

impl Diagnose for TrialError {
    codes! {
        Self::NoStart(_) => "trial-no-start",
        Self::NoPlastisol(..) => "trial-no-plastisol",
        Self::NotTaken(_) => "trial-not-taken",
        Self::Formula(error) => error.code(),
        Self::Mix(error) => error.code(),
        Self::Material(error) => error.code(),
        Self::Amount(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoStart(_) => {
                "Write a volume or a mass of base above zero: \"start\": \"1 cup\".".into()
            }
            Self::NoPlastisol(..) => {
                "Name a plastisol as \"base\"; add the rest in the \"log\".".into()
            }
            Self::NotTaken(_) => "Write a mass or a volume: { \"taken\": \"10 g\" }.".into(),
            Self::Formula(error) => error.help(),
            Self::Mix(error) => error.help(),
            Self::Material(error) => error.help(),
            Self::Amount(error) => error.help(),
        }
    }
}

#[cfg(all(test, feature = "document"))]
mod tests;

//! A pot that came out wrong: what to add, measured with the tools of the bench.
//!
//! If the cup holds them, the smallest additions that make the pot right ([`correction::correct`]);
//! if not, the nearest mix that fits ([`correction::nearest_in_cup`]); if something is in
//! the pot that does not belong, the products of the book that the pot could still become.
//!
//! An addition is measured to the tolerance of *all* of its material in the pot, for that is what
//! the piece shows. One that no tool can measure is left out where its material keeps the
//! tolerance without it, and is named.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::correction::{self, Correction, CorrectionError};
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, WeighError};
use super::{MaterialMass, Off, Weigh};
use crate::bench::MeasureError;
use crate::book::{Book, Layer};
use crate::fault::{Diagnose, Fault};
use crate::formula::{Formula, Overlap, Recipe, WrittenIn};
use crate::mix::{MaterialId, Mix, MixError, Phase};
use crate::quantity::{Mass, MassDensity, Ratio, Volume};
use crate::show::{Shown, part, text};
use crate::words::words;

/// A pot that is not what it should be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Mispour<'a> {
    /// The shop's book: materials, tools, tolerances, and what else a pot could become.
    pub book: &'a Book,
    /// The recipe that the pot should have.
    pub target: &'a Recipe,
    /// The mix in it.
    pub pot: &'a Mix,
    /// Maximum fill of the cup. Default: the book's largest cup, as full as its limits allow.
    pub cup: Option<Volume>,
    /// Share of the pot up to which a material that does not belong may stay, 0 to 1.
    pub trace: Ratio,
}

words! {
    /// Outcome for a pot.
    pub enum Outcome {
        /// It comes right.
        Right = "right",
        /// The cup is too small: it comes as near as the cup allows.
        Nearest = "nearest",
        /// Something in it does not belong, and nothing can be taken out.
        Foreign = "foreign",
    }
}

part! {
    /// Fix for a pot that came out wrong.
    pub struct PutRight {
        /// The outcome.
        pub outcome: Outcome,
        /// The mix in the pot.
        pub pot: Vec<InPot>,
        /// Additions, in measures of the bench.
        pub add: Vec<Weigh>,
        /// Materials of the formula of which nothing is added: there is enough or too much already.
        pub nothing_of: Vec<String>,
        /// Materials of which too little is missing for any tool; they keep their tolerance without it.
        pub too_little: Vec<String>,
        /// Mass of the pot then.
        pub mass: Shown<Mass>,
        /// Its volume then, cold and liquid.
        pub volume: Shown<Volume>,
        /// How far each material of the formula stays off then, rounding of the measures aside.
        pub off: Vec<Off>,
        /// Maximum fill of the cup.
        pub cup: Shown<Volume>,
        /// Smallest mass at which the pot is right, in a cup large enough.
        pub right_mass: Option<Shown<Mass>>,
        /// The volume of that.
        pub right_volume: Option<Shown<Volume>>,
        /// Materials that do not belong, but are little enough to stay.
        pub traces: Vec<MaterialMass>,
        /// Materials that do not belong.
        pub foreign: Vec<MaterialMass>,
        /// Why the pot cannot be made right.
        pub fault: Option<Fault>,
        /// Other formulas of the book that it could become, the smallest addition first; only if it cannot be made right.
        pub becomes: Vec<Becomes>,
    }
}

part! {
    /// A material in the pot.
    pub struct InPot {
        /// Which.
        pub material: String,
        /// How much of it.
        pub mass: Shown<Mass>,
        /// How far it is off per mass of base; none if the formula lacks it or there is no base.
        pub off: Option<Shown<Ratio>>,
    }
}

part! {
    /// A mix that the pot could still become.
    pub struct Becomes {
        /// By its formulas.
        pub formulas: Vec<String>,
        /// The book's products that are shot with just these.
        pub products: Vec<String>,
        /// Total mass of the additions.
        pub adds: Shown<Mass>,
        /// Mass of the pot then.
        pub mass: Shown<Mass>,
        /// Its volume then, cold and liquid.
        pub volume: Shown<Volume>,
        /// Whether the cup holds it.
        pub fits: bool,
    }
}

impl Mispour<'_> {
    /// Calculates what to add, and what comes of it.
    ///
    /// # Errors
    /// An empty pot; one that is fuller than the cup may be; an addition that no tool of the bench
    /// measures; a density that is missing. A material that does not belong is not an error but an
    /// [`Outcome`], with its fault in the answer.
    pub fn put_right(&self) -> Result<PutRight, MispourError> {
        if self.pot.mass() <= Mass::default() {
            return Err(MispourError::EmptyPot);
        }
        let materials = self.materials();
        let held = masses(self.pot, &materials);
        let shares = shares(self.target, &materials);
        let cup = self.cup()?;
        let foreign = self.foreign(self.target);
        let mut answer = self.unmended(cup)?;
        if !foreign.is_empty() {
            answer.fault = Some(self.foreign_fault(&foreign)?);
            answer.foreign = self.named(&foreign)?;
            answer.becomes = self.becomes(cup)?;
            return Ok(answer);
        }
        let density = self.densities(&materials)?;
        let exact = correction::correct(&held, &shares, self.trace)?;
        let right = self.mix_with(&materials, &exact)?;
        let near = correction::nearest_in_cup(&held, &shares, &density, cup, self.trace)?;
        let fits = near.correction == exact;
        let mended = self.mix_with(&materials, &near.correction)?;
        self.measure(&mut answer, &materials, &near.correction)?;
        answer.outcome = if fits { Outcome::Right } else { Outcome::Nearest };
        answer.mass = text::mass(mended.mass());
        answer.volume = self.volume(&mended)?;
        answer.right_mass = Some(text::mass(right.mass()));
        answer.right_volume = Some(self.volume(&right)?);
        for ((material, off), share) in materials.iter().zip(near.off).zip(&shares) {
            if *share > 0.0 {
                let material = self.name(*material)?;
                answer.off.push(Off { material, off: Shown::new(off, text::signed_percent(off)) });
            }
        }
        let traces: Vec<MaterialId> = near
            .correction
            .traces
            .iter()
            .filter_map(|(index, _)| materials.get(*index).copied())
            .collect();
        answer.traces = self.named(&traces)?;
        if !fits {
            answer.becomes = self.becomes(cup)?;
        }
        Ok(answer)
    }

    /// The materials of pot and target, in the order of the table.
    fn materials(&self) -> Vec<MaterialId> {
        let pot = self.pot.portions().iter().map(|portion| portion.material);
        let mut all: Vec<MaterialId> =
            pot.chain(self.target.ingredients().map(|one| one.material)).collect();
        all.sort_unstable();
        all.dedup();
        all
    }

    fn cup(&self) -> Result<Volume, MispourError> {
        let cups = self.book.tools.cups().iter().map(|cup| cup.capacity);
        let largest = cups.reduce(|a, b| if b > a { b } else { a });
        let allowed = largest.map(|largest| largest * self.book.limits.most_full);
        self.cup.or(allowed).ok_or(MispourError::NoCup)
    }

    /// Contents of the pot, with nothing done yet.
    fn unmended(&self, cup: Volume) -> Result<PutRight, MispourError> {
        let base = self.pot.base_mass(&self.book.materials)?;
        let mut pot = Vec::new();
        for portion in self.pot.portions() {
            let wanted = self.target.ingredients().find(|one| one.material == portion.material);
            let off = wanted.filter(|_| base > Mass::default()).map(|one| {
                let off = Ratio::from((portion.mass / base).value / one.ratio - 1.0);
                Shown::new(off, text::signed_percent(off))
            });
            let material = self.name(portion.material)?;
            pot.push(InPot { material, mass: text::mass(portion.mass), off });
        }
        Ok(PutRight {
            outcome: Outcome::Foreign,
            pot,
            add: Vec::new(),
            nothing_of: Vec::new(),
            too_little: Vec::new(),
            mass: text::mass(self.pot.mass()),
            volume: self.volume(self.pot)?,
            off: Vec::new(),
            cup: text::volume(cup, self.book.system),
            right_mass: None,
            right_volume: None,
            traces: Vec::new(),
            foreign: Vec::new(),
            fault: None,
            becomes: Vec::new(),
        })
    }

    /// The additions in measures of the bench.
    fn measure(
        &self,
        answer: &mut PutRight,
        materials: &[MaterialId],
        correction: &Correction,
    ) -> Result<(), MispourError> {
        let mut additions = Vec::new();
        for (&material, &wanted) in materials.iter().zip(&correction.additions) {
            if wanted > Mass::default() {
                let total = self.pot.mass_of(material) + wanted;
                let own = self.book.materials.get(material)?.tolerance;
                let tolerance = own.unwrap_or(self.book.limits.tolerance);
                let mut dosed = self.target.ingredients();
                let dosed = dosed.find(|one| one.material == material);
                let written = dosed.map_or(WrittenIn::Mass, |one| one.written);
                additions.push((Addition { material, written, wanted, total }, tolerance));
            } else if self.target.contains(material) {
                answer.nothing_of.push(self.name(material)?);
            }
        }
        let names = ToolNames::of(self.book);
        let made = weigh::list_to_mix(&additions, self.book, &names)?;
        let tools = weigh::Tools::new(&names, self.book);
        let added = made.list.iter().map(|listed| listed.shown(tools));
        answer.add = added.collect();
        for material in made.left_out {
            answer.too_little.push(self.name(material)?);
        }
        Ok(())
    }

    /// The pot after a correction.
    fn mix_with(
        &self,
        materials: &[MaterialId],
        correction: &Correction,
    ) -> Result<Mix, MispourError> {
        let mut mix = self.pot.clone();
        for (material, addition) in materials.iter().zip(&correction.additions) {
            mix.add(*material, *addition)?;
        }
        Ok(mix)
    }

    fn volume(&self, mix: &Mix) -> Result<Shown<Volume>, MispourError> {
        let volume = mix.volume(&self.book.materials, Phase::Liquid)?;
        Ok(text::volume(volume, self.book.system))
    }

    fn densities(&self, materials: &[MaterialId]) -> Result<Vec<MassDensity>, MispourError> {
        let mut densities = Vec::with_capacity(materials.len());
        for material in materials {
            let density = self.book.materials.get(*material)?.true_density("filling the cup");
            densities.push(density.map_err(MixError::from)?.get());
        }
        Ok(densities)
    }

    fn name(&self, material: MaterialId) -> Result<String, MispourError> {
        Ok(self.book.materials.get(material)?.name.clone())
    }

    fn named(&self, materials: &[MaterialId]) -> Result<Vec<MaterialMass>, MispourError> {
        let mut named = Vec::with_capacity(materials.len());
        for &material in materials {
            let mass = text::mass(self.pot.mass_of(material));
            named.push(MaterialMass { material: self.name(material)?, mass });
        }
        Ok(named)
    }

    /// Materials in the pot that `recipe` lacks, traces apart.
    fn foreign(&self, recipe: &Recipe) -> Vec<MaterialId> {
        let trace = self.pot.mass() * self.trace.value;
        let portions = self.pot.portions().iter();
        portions
            .filter(|portion| portion.mass > trace && !recipe.contains(portion.material))
            .map(|portion| portion.material)
            .collect()
    }

    fn foreign_fault(&self, foreign: &[MaterialId]) -> Result<Fault, MispourError> {
        let named = self.named(foreign)?;
        let listed: Vec<String> =
            named.iter().map(|one| format!("{} of \"{}\"", one.mass.text, one.material)).collect();
        Ok(Fault {
            code: "pot-foreign-material".into(),
            path: "/pot".into(),
            message: format!("The pot holds {}, which the formula lacks.", listed.join(" and ")),
            help: "Nothing can be taken out: make of it what \"becomes\" lists, keep it as a leftover, or let a trace pass with \"trace\".".to_string(),
        })
    }
}

/// A mix that the pot could become instead.
struct Candidate<'a> {
    formulas: Vec<&'a str>,
    products: Vec<String>,
    recipe: Recipe,
}

impl Mispour<'_> {
    /// Mixes that the pot could become instead: layers of the book's products, its formulas, and a formula
    /// without a base with one that has one.
    fn becomes(&self, cup: Volume) -> Result<Vec<Becomes>, MispourError> {
        let mut found = Vec::new();
        for candidate in self.candidates() {
            let mut materials = self.materials();
            materials.extend(candidate.recipe.ingredients().map(|one| one.material));
            materials.sort_unstable();
            materials.dedup();
            let held = masses(self.pot, &materials);
            let exact =
                correction::correct(&held, &shares(&candidate.recipe, &materials), self.trace)?;
            let mix = self.mix_with(&materials, &exact)?;
            let volume = self.volume(&mix)?;
            found.push(Becomes {
                formulas: candidate.formulas.iter().map(ToString::to_string).collect(),
                products: candidate.products,
                adds: text::mass(mix.mass() - self.pot.mass()),
                mass: text::mass(mix.mass()),
                fits: volume.quantity <= cup,
                volume,
            });
        }
        found.sort_by(|a, b| a.mass.quantity.value.total_cmp(&b.mass.quantity.value));
        Ok(found)
    }

    /// All different recipes but the target that hold all that is in the pot.
    fn candidates(&self) -> Vec<Candidate<'_>> {
        let mut all: Vec<Candidate<'_>> = Vec::new();
        let layers = self.book.products.iter().flat_map(|product| {
            product.layers.iter().map(move |layer| (Some(product.name.as_str()), layer.clone()))
        });
        for (product, layer) in layers.chain(self.combinations().map(|layer| (None, layer))) {
            let formulas: Vec<&Formula> =
                layer.formulas.iter().filter_map(|&index| self.book.formulas.get(index)).collect();
            if !self.may_hold_the_pot(&formulas) {
                continue;
            }
            // What does not combine is no candidate; the book's own products all do.
            let Ok(recipe) = super::day::recipe_of(&layer, self.book) else { continue };
            if recipe == *self.target || !self.foreign(&recipe).is_empty() {
                continue;
            }
            let known = all.iter().position(|known| known.recipe == recipe);
            let place = known.unwrap_or(all.len());
            if known.is_none() {
                let formulas = formulas.iter().map(|formula| formula.name.as_str()).collect();
                all.push(Candidate { formulas, products: Vec::new(), recipe });
            }
            if let (Some(product), Some(candidate)) = (product, all.get_mut(place))
                && !candidate.products.iter().any(|known| known == product)
            {
                candidate.products.push(product.to_string());
            }
        }
        all
    }

    /// Each formula alone, then each without a base with each that has one.
    fn combinations(&self) -> impl Iterator<Item = Layer> {
        let indices = 0..self.book.formulas.len();
        let has_base = |index: &usize| {
            self.book.formulas.get(*index).is_some_and(|formula| !formula.base.is_empty())
        };
        let bodies: Vec<usize> = indices.clone().filter(|index| has_base(index)).collect();
        let colors: Vec<usize> = indices.clone().filter(|index| !has_base(index)).collect();
        let pairs = colors.into_iter().flat_map(move |color| {
            bodies.clone().into_iter().map(move |body| Vec::from([color, body]))
        });
        indices.map(|index| Vec::from([index])).chain(pairs).map(|formulas| Layer {
            formulas,
            share: 1.0,
            overlap: Overlap::Refuse,
        })
    }

    /// Whether all that is in the pot, traces apart, is named by the formulas or is a base: a quick
    /// look before a recipe is worked out.
    fn may_hold_the_pot(&self, formulas: &[&Formula]) -> bool {
        let trace = self.pot.mass() * self.trace.value;
        self.pot.portions().iter().filter(|portion| portion.mass > trace).all(|portion| {
            let mut doses =
                formulas.iter().flat_map(|formula| formula.base.iter().chain(&formula.doses));
            self.book.default_base == Some(portion.material)
                || doses.any(|dose| dose.material == portion.material)
        })
    }
}

fn masses(mix: &Mix, materials: &[MaterialId]) -> Vec<Mass> {
    materials.iter().map(|&material| mix.mass_of(material)).collect()
}

/// The ratios of `recipe` to its base, 0 for materials that it lacks.
pub(super) fn shares(recipe: &Recipe, materials: &[MaterialId]) -> Vec<f64> {
    let ratio = |material: &MaterialId| {
        let found = recipe.ingredients().find(|one| one.material == *material);
        found.map_or(0.0, |one| one.ratio)
    };
    materials.iter().map(ratio).collect()
}

/// Why nothing can be said of a pot.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MispourError {
    /// There is nothing in it.
    #[error("The pot holds nothing.")]
    EmptyPot,
    /// No cup is known.
    #[error("The book has no cup.")]
    NoCup,
    /// The correction cannot be had.
    #[error(transparent)]
    Correction(#[from] CorrectionError),
    /// No tool of the bench measures an addition, and it cannot be left out.
    #[error("\"{material}\" cannot be measured: {error}")]
    Measure {
        /// The material to add.
        material: String,
        /// How far each tool comes.
        error: MeasureError,
    },
    /// A number is missing.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl From<WeighError> for MispourError {
    fn from(error: WeighError) -> Self {
        match error {
            WeighError::Mix(error) => Self::Mix(error),
            WeighError::Measure { material, error, .. } => Self::Measure { material, error },
        }
    }
}

impl Diagnose for MispourError {
    fn code(&self) -> &'static str {
        match self {
            Self::EmptyPot => "pot-empty",
            Self::NoCup => "pot-without-cup",
            Self::Correction(error) => error.code(),
            Self::Measure { error, .. } => error.code(),
            Self::Mix(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::EmptyPot => {
                "Say what is in it: \"pot\": { \"clear-base\": \"1 cup\", ... }.".into()
            }
            Self::NoCup => "Say what the cup holds: \"cup\": \"2 cup\".".into(),
            Self::Correction(error) => error.help(),
            Self::Measure { error, .. } => error.help(),
            Self::Mix(error) => error.help(),
        }
    }
}

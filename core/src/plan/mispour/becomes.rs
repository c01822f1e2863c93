//! What else of the book a pot could become, by adding only.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Mispour, MispourError, Target, shares};
use crate::book::Layer;
use crate::formula::{Formula, Overlap, Recipe};
use crate::mix::{MaterialId, Mix};
use crate::plan::correction;
use crate::plan::day::recipe_of;
use crate::quantity::{Mass, Volume};
use crate::show::{Shown, part, text};

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

/// A mix that the pot could become instead.
struct Candidate<'a> {
    formulas: Vec<&'a str>,
    products: Vec<String>,
    recipe: Recipe,
}

impl Mispour<'_> {
    /// Mixes that the pot could become instead: layers of the book's products, its formulas, and a formula
    /// without a base with one that has one.
    pub(super) fn becomes(&self, cup: Volume) -> Result<Vec<Becomes>, MispourError> {
        let mut found = Vec::new();
        for candidate in self.candidates() {
            let pot = self.pot.portions().iter().map(|portion| portion.material);
            let recipe = candidate.recipe.ingredients().map(|one| one.material);
            let mut materials: Vec<MaterialId> = pot.chain(recipe).collect();
            materials.sort_unstable();
            materials.dedup();
            let held = masses(self.pot, &materials);
            let exact =
                correction::correct(&held, &shares(&candidate.recipe, &materials), self.trace)?;
            let mix = self.mix_with(&materials, &exact.additions)?;
            let base = |mix: &Mix| mix.base_mass(&self.book.materials);
            if !self.takes_base() && base(&mix)? > base(self.pot)? {
                continue;
            }
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
            let Ok(recipe) = recipe_of(&layer, self.book) else { continue };
            let target = Target::from(&recipe);
            if target.is_within(self.target, self.book) || !self.foreign(&target).is_empty() {
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

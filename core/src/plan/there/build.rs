//! The layout of a pot that is there.

use alloc::vec::Vec;

use super::PotThere;
use crate::formula::Recipe;
use crate::mix::MaterialId;
use crate::plan::layout::{PotCup, PotLayout};
use crate::plan::one_or_more::OneOrMore;
use crate::plan::pot::{Part, PotDraft, PotError, Workshop, materials};
use crate::plan::precedence::FreshBase;
use crate::plan::sequence::{self, Sequence};
use crate::plan::weigh;
use crate::quantity::{Mass, Measurable};

/// An addition smaller than this share of the pot is rounding.
const ROUNDING: f64 = 1e-9;

impl<'a> Workshop<'a> {
    /// The layout of `there` with the stages of `draft`, in its cup.
    pub(in crate::plan) fn build_on(
        &self,
        there: &'a PotThere,
        draft: &PotDraft<'a>,
    ) -> Result<PotLayout<'a>, PotError> {
        let mut materials = materials(draft);
        materials.extend(there.contents.mix.portions().iter().map(|portion| portion.material));
        materials.sort_unstable();
        materials.dedup();
        let parts = draft.stages.try_map(|_, stage| self.part(stage, &materials))?;
        let mut cups: Vec<&PotCup> = match there.cup {
            Some(number) => self.cups.iter().filter(|cup| cup.number == number).collect(),
            None => self.cups.iter().collect(),
        };
        cups.sort_by(|a, b| a.cup.capacity.si().total_cmp(&b.cup.capacity.si()));
        let mut refused = PotError::NoCup;
        for cup in cups {
            match self.in_this_cup(there, cup, &parts, &materials) {
                Err(error) if error.wants_larger_cup() => refused = error,
                built => return built,
            }
        }
        Err(refused)
    }

    fn in_this_cup(
        &self,
        there: &'a PotThere,
        cup: &PotCup,
        parts: &OneOrMore<Part<'a, '_>>,
        materials: &[MaterialId],
    ) -> Result<PotLayout<'a>, PotError> {
        let (mut sequence, uncounted) = self.sequence_from(there, cup, parts, materials)?;
        let mut lists = Vec::with_capacity(parts.len());
        for (step, part) in sequence.steps.iter_mut().zip(parts) {
            // What is more or less in the pot than its formula says stays there.
            step.held += uncounted;
            let additions = self.additions(step, part, materials);
            lists.push(weigh::list(&additions, None, self.book, &self.names)?);
            step.carried += uncounted;
        }
        sequence.left += uncounted;
        self.pot(cup, parts, &sequence, lists, Some(there))
    }

    /// The stages of a pot that begins with what is there, and the mass of that which is not counted.
    fn sequence_from(
        &self,
        there: &PotThere,
        cup: &PotCup,
        parts: &OneOrMore<Part<'a, '_>>,
        materials: &[MaterialId],
    ) -> Result<(Sequence, Mass), PotError> {
        let held = self.counted_as(there, &parts.first.recipe.recipe, materials)?;
        let mass = Mass::from_si(held.iter().fold(0.0, |sum, mass| sum + mass));
        let mut stages = Vec::with_capacity(parts.len().saturating_add(1));
        stages.push(sequence::Stage {
            composition: &held,
            draw: Mass::default(),
            kept: Mass::default(),
            returned: Mass::default(),
            loss: crate::quantity::Ratio::from(0.0),
            capacity: Some(mass),
            heats: 0,
        });
        stages.extend(parts.iter().map(|part| self.stage(part, cup)));
        let spent = there.contents.heats.unwrap_or(0);
        let heats = self.book.limits.heats.map(|heats| heats.saturating_sub(spent));
        let (film, heel) = (cup.vessel.film, cup.vessel.heel);
        let vessel = sequence::Vessel { film, heel, least: mass, heats };
        let mut sequence = sequence::plan(&stages, &vessel, FreshBase::On)
            .map_err(|error| self.over_cup(error, parts, cup, 1))?;
        sequence.steps.remove(0);
        let mut left_out = Mass::default();
        for (index, (step, part)) in sequence.steps.iter_mut().zip(parts).enumerate() {
            let rounding = step.held * ROUNDING;
            for addition in &mut step.additions {
                if *addition < rounding {
                    left_out += *addition;
                    *addition = Mass::default();
                }
            }
            step.held -= left_out;
            step.carried -= left_out;
            let gets_base = materials.iter().zip(&step.additions).any(|(material, addition)| {
                let mut base = part.recipe.recipe.base().iter();
                *addition > Mass::default() && base.any(|one| one.material == *material)
            });
            let may = self.book.limits.fresh_base || (index == 0 && !there.was_heated());
            if gets_base && !may {
                return Err(PotError::NoFreshBase { formulas: part.recipe.name() });
            }
        }
        sequence.left -= left_out;
        Ok((sequence, there.contents.mix.mass() - mass))
    }

    /// The mass of each material in the pot, kg, where one that is within its tolerance of the `recipe` counts as kept by it; in a
    /// pot that is accepted as it is, all that are in it do.
    fn counted_as(
        &self,
        there: &PotThere,
        recipe: &Recipe,
        materials: &[MaterialId],
    ) -> Result<Vec<f64>, PotError> {
        let mix = &there.contents.mix;
        let base = recipe.base().iter().map(|one| mix.mass_of(one.material));
        let base = base.fold(Mass::default(), |sum, mass| sum + mass);
        let mut held = Vec::with_capacity(materials.len());
        for &id in materials {
            let mass = mix.mass_of(id);
            let of = recipe.ingredients().find(|one| one.material == id);
            let wanted = of.map_or(Mass::default(), |one| base * one.ratio);
            let material = self.book.materials.get(id)?;
            let tolerance = material.tolerance.unwrap_or(self.book.limits.tolerance);
            let counted = match there.accepted && mass > Mass::default() {
                true => wanted,
                false if mass <= wanted * (1.0 + tolerance) => mass.min(wanted),
                false => mass,
            };
            held.push(counted.si());
        }
        Ok(held)
    }
}

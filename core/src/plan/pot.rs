//! One pot: which cup, how much base to its mark, what each stage adds and shoots.

mod base;
mod error;
mod shots;
mod stages;

use alloc::rc::Rc;
use alloc::string::String;
use alloc::vec::Vec;

use self::base::{BaseMeasure, Measuring};
pub(super) use self::base::{OffMark, OffMarks};
pub(crate) use self::error::PotError;
use self::shots::injector;
pub(super) use self::shots::{LayerShots, Shots, shots};
use super::budget::Budget;
use super::day::{Batch, DayRecipe};
use super::layout::{PotCup, PotLayout, StageLayout};
use super::one_or_more::OneOrMore;
use super::precedence::FreshBase;
use super::process;
use super::sequence::{self, SequenceError};
use super::there::PotThere;
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, Listed, WeighError};
use crate::batch::BatchError;
use crate::book::{Book, Sprues};
use crate::formula::WrittenIn;
use crate::mix::MaterialId;
use crate::quantity::{Mass, Measurable, Ratio};

/// The stages to make in one pot.
#[derive(Debug, Clone)]
pub(super) struct PotDraft<'a> {
    pub(super) stages: OneOrMore<StageDraft<'a>>,
    /// The pot, if it is there.
    pub(super) there: Option<&'a PotThere>,
}

impl<'a> PotDraft<'a> {
    /// The first batch that it serves.
    pub(super) fn batch(&self) -> Option<&'a Batch<'a>> {
        self.stages.iter().flat_map(|stage| &stage.draws).map(|draw| draw.of.batch).next()
    }
}

/// The shots to make of one recipe.
#[derive(Debug, Clone)]
pub(super) struct StageDraft<'a> {
    pub(super) recipe: &'a DayRecipe<'a>,
    pub(super) draws: Vec<DrawDraft<'a>>,
    /// Heats that it takes.
    pub(super) heats: u32,
}

/// Shots of one layer of a batch.
#[derive(Debug, Clone, Copy)]
pub(super) struct DrawDraft<'a> {
    pub(super) of: &'a Shots<'a>,
    pub(super) layer: &'a LayerShots<'a>,
    pub(super) shots: u32,
    /// Shots of the same layer that other draws shoot before.
    pub(super) before: u32,
}

/// The book, the day and the bench that all pots are built from.
pub(super) struct Workshop<'a> {
    pub(super) book: &'a Book,
    pub(super) names: ToolNames<'a>,
    pub(super) cups: Vec<PotCup>,
    pub(super) recipes: &'a [Rc<DayRecipe<'a>>],
    pub(super) shots: &'a [Shots<'a>],
    pub(super) budget: &'a Budget<'a>,
}

/// Why a pot is `mix` though its orders need less.
pub(super) struct Raised {
    pub(super) why: WhyRaised,
    pub(super) need: Mass,
    pub(super) mix: Mass,
}

/// Reason for a larger pot.
pub(super) enum WhyRaised {
    /// The oven does not heat a smaller one evenly.
    Oven,
    /// The bench cannot dose a material to its tolerance in a smaller one.
    Dosing { material: String, tolerance: f64 },
}

/// How well a pot's doses are kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Doses {
    /// Each within its tolerance.
    Kept,
    /// As near as the bench comes.
    Nearest,
}

/// A pot is not made larger than this many times its orders to be dosed within the tolerance (common practice, no
/// source).
const MOST_RAISED: f64 = 2.0;

/// A stage in numbers.
pub(super) struct Part<'a, 'd> {
    pub(super) draft: &'d StageDraft<'a>,
    pub(super) recipe: &'a DayRecipe<'a>,
    draw: Mass,
    kept: Mass,
    /// Sprues that are melted again with the next stage.
    returned: Mass,
    composition: Vec<f64>,
}

impl<'a> Workshop<'a> {
    /// Builds the pot in the smallest cup that holds it with its base up to a mark; if that overfills all cups, in the
    /// smallest that holds it with its base measured otherwise.
    pub(super) fn build(&self, draft: &PotDraft<'a>) -> Result<PotLayout<'a>, PotError> {
        let pot = match draft.there.filter(|there| there.is_begun()) {
            Some(there) => self.build_on(there, draft)?,
            None => self.build_new(draft).map_err(|error| self.of_pot(error, draft))?,
        };
        if let Some(stage) = draft.there.and_then(|_| self.gets_base(&pot)) {
            return Err(PotError::NoFreshBase { formulas: stage.recipe.name() });
        }
        Ok(PotLayout { there: draft.there, ..pot })
    }

    /// The first stage of a `pot` that gets base when it was heated, where the book does not allow that.
    fn gets_base<'p>(&self, pot: &'p PotLayout<'a>) -> Option<&'p StageLayout<'a>> {
        let has_base = |stage: &&StageLayout<'_>| {
            let mut base = stage.recipe.recipe.base().iter();
            base.any(|base| stage.weigh.iter().any(|one| one.addition.material == base.material))
        };
        pot.stages.iter().skip(1).find(has_base).filter(|_| !self.book.limits.fresh_base)
    }

    /// Why a pot that is there, but not begun, does not become what its shots want, in the words of the orders.
    fn of_pot(&self, error: PotError, draft: &PotDraft<'_>) -> PotError {
        let Some(there) = draft.there else { return error };
        let pot = there.pot.clone();
        match error {
            PotError::Sequence(SequenceError::NothingCarries { stage, material }) => {
                let formulas = draft.stages.iter().nth(stage).map(|stage| stage.recipe.name());
                let id = materials(draft).get(material).copied();
                let material = id.and_then(|id| self.book.materials.get(id).ok());
                let material = material.map(|material| material.name.clone());
                PotError::CannotFollow {
                    pot,
                    formulas: formulas.unwrap_or_default(),
                    material: material.unwrap_or_default(),
                }
            }
            PotError::Sequence(SequenceError::OverHeats { heats, allowed }) => {
                PotError::TooManyHeats { pot, heats, allowed }
            }
            error => error,
        }
    }

    fn build_new(&self, draft: &PotDraft<'a>) -> Result<PotLayout<'a>, PotError> {
        let materials = materials(draft);
        let parts = draft.stages.try_map(|_, stage| self.part(stage, &materials))?;
        let mut refused = PotError::NoCup;
        for measuring in Measuring::ALL {
            let in_cup = |doses| self.in_smallest_cup(&parts, &materials, (measuring, doses));
            match in_cup(Doses::Kept) {
                // A dose that the bench cannot measure is a caution, never a refusal: the nearest is made.
                Err(error) if error.is_about_measuring() && parts.len() == 1 => {
                    return in_cup(Doses::Nearest);
                }
                Err(error) if error.is_too_full() => refused = error,
                built => return built,
            }
        }
        Err(refused)
    }

    /// Builds the pot in the smallest cup that holds it with its base and its doses measured so.
    fn in_smallest_cup(
        &self,
        parts: &OneOrMore<Part<'a, '_>>,
        materials: &[MaterialId],
        how: (Measuring, Doses),
    ) -> Result<PotLayout<'a>, PotError> {
        let mut cups: Vec<&PotCup> = self.cups.iter().collect();
        cups.sort_by(|a, b| a.cup.capacity.si().total_cmp(&b.cup.capacity.si()));
        let (mut refused, mut too_many_heats) = (None, None);
        for cup in cups {
            match self.in_cup(cup, parts, materials, how) {
                Ok(built) if process::keeps_heats(self.book, &built) => return Ok(built),
                // A cup with a larger heel has more left in it for the last shots, which stays hot longer.
                Ok(built) => too_many_heats = too_many_heats.or(Some(built)),
                Err(error) if error.wants_larger_cup() => {
                    // That a material cannot be dosed is the better reason than that the pot does not fit.
                    if refused.as_ref().is_none_or(PotError::is_too_full) {
                        refused = Some(error);
                    }
                }
                Err(error) => return Err(error),
            }
        }
        too_many_heats.ok_or(refused.unwrap_or(PotError::NoCup))
    }

    pub(super) fn part<'d>(
        &self,
        draft: &'d StageDraft<'a>,
        materials: &[MaterialId],
    ) -> Result<Part<'a, 'd>, PotError> {
        let recipe = draft.recipe;
        let mut draw = Mass::default();
        let mut kept = Mass::default();
        let mut returned = Mass::default();
        for DrawDraft { of, layer, shots, .. } in &draft.draws {
            draw += layer.mass.fill * f64::from(*shots);
            returned += self.returned(of.batch, layer) * f64::from(*shots);
            let keeps = self.kept(layer)?;
            if keeps > kept {
                kept = keeps;
            }
        }
        let composition = materials
            .iter()
            .map(|&material| {
                let found = recipe.recipe.ingredients().find(|one| one.material == material);
                found.map_or(0.0, |ingredient| ingredient.ratio)
            })
            .collect();
        let kept = kept * f64::from(draft.heats);
        Ok(Part { draft, recipe, draw, kept, returned, composition })
    }

    /// Mass of a shot that goes back into the pot before the next stage. A laminated piece's sprue holds both
    /// colors and goes back into neither.
    pub(super) fn returned(&self, batch: &Batch<'_>, layer: &LayerShots<'_>) -> Mass {
        match self.book.limits.sprues {
            Sprues::MeltAgain if !batch.is_laminated() => layer.mass.sprue,
            _ => Mass::default(),
        }
    }

    /// Mass of a layer that the injector keeps at each heat.
    pub(super) fn kept(&self, layer: &LayerShots<'_>) -> Result<Mass, PotError> {
        Ok(injector(self.book).kept(layer.density)?)
    }

    /// Maximum mass of a recipe in a cup: as full as the book allows cold, and at shot temperature with room to stir and
    /// carry it.
    pub(super) fn may_hold(&self, cup: &PotCup, recipe: &DayRecipe<'_>) -> Mass {
        let cold = cup.cup.capacity * self.book.limits.most_full * recipe.liquid;
        let hot = cup.vessel.hot_room(cup.cup.capacity) * recipe.melt.hot;
        if hot < cold { hot } else { cold }
    }

    fn in_cup(
        &self,
        cup: &PotCup,
        parts: &OneOrMore<Part<'a, '_>>,
        materials: &[MaterialId],
        (measuring, doses): (Measuring, Doses),
    ) -> Result<PotLayout<'a>, PotError> {
        let recipe = parts.first.recipe;
        let need = self.sequence(parts, cup, (Mass::default(), None))?.start();
        let even = self.least_pot(recipe);
        let holds = self.may_hold(cup, recipe);
        if even > holds * (1.0 + 1e-9) {
            let (formulas, cup) = (recipe.name(), String::from(self.names.cup(cup.number)));
            return Err(PotError::LeastOverCup { formulas, least: even, holds, cup });
        }
        let mut why = (even > need).then_some(WhyRaised::Oven);
        let wanted = if even > need { even } else { need };
        let mut measured = self.measure_base(cup, recipe, wanted, measuring)?;
        let most = measured.mix * MOST_RAISED;
        let mut undosed: Option<PotError> = None;
        loop {
            let limits = (measured.mix, measured.most);
            let sequence = match (self.sequence(parts, cup, limits), undosed.take()) {
                // The pot in which the material could be dosed does not fit.
                (Err(_), Some(undosed)) => return Err(undosed),
                (sequence, _) => sequence?,
            };
            let lists = self.weigh_all(&sequence, parts, materials, &measured)?;
            let coarse = lists.iter().flatten().find_map(|one| Some((one, one.beyond()?)));
            let Some((listed, error)) = coarse.filter(|_| doses == Doses::Kept) else {
                let raised = why.map(|why| Raised { why, need, mix: measured.mix });
                let pot = self.pot(cup, parts, &sequence, lists, None)?;
                return Ok(PotLayout { raised, off_marks: measured.off_marks, ..pot });
            };
            let (material, tolerance) = (listed.material.name.clone(), listed.tolerance().value);
            let error = error.clone();
            if error.least().is_none() {
                return Err(PotError::Measure { material, error });
            }
            why = Some(WhyRaised::Dosing { material: material.clone(), tolerance });
            let too_small = PotError::TooSmallToDose { material, tolerance, error };
            // One mark more: a minimum that works need not work for every amount above it.
            measured = match self.one_mark_more(cup, recipe, &measured) {
                Err(PotError::Batch(BatchError::AboveMarks { .. })) => return Err(too_small),
                measured => measured?,
            };
            if measured.mix > most {
                return Err(too_small);
            }
            undosed = Some(too_small);
        }
    }

    /// Smallest mass of the first mix that the oven heats evenly.
    pub(super) fn least_pot(&self, first: &DayRecipe<'_>) -> Mass {
        self.book.limits.least_pot.map_or(Mass::default(), |least| least * first.liquid)
    }

    /// The sequence in `cup` that starts with at least `least`, and at most `most` if given.
    fn sequence(
        &self,
        parts: &OneOrMore<Part<'_, '_>>,
        cup: &PotCup,
        (least, most): (Mass, Option<Mass>),
    ) -> Result<sequence::Sequence, PotError> {
        let mut stages: Vec<sequence::Stage<'_>> =
            parts.iter().map(|part| self.stage(part, cup)).collect();
        if let (Some(first), Some(most)) = (stages.first_mut(), most) {
            first.capacity = Some(most);
        }
        let heats = self.book.limits.heats;
        let (film, heel) = (cup.vessel.film, cup.vessel.heel);
        let vessel = sequence::Vessel { film, heel, least, heats };
        let fresh = if self.book.limits.fresh_base { FreshBase::On } else { FreshBase::Off };
        sequence::plan(&stages, &vessel, fresh).map_err(|error| self.over_cup(error, parts, cup, 0))
    }

    /// A stage of a pot in `cup`.
    pub(super) fn stage<'p>(&self, part: &'p Part<'_, '_>, cup: &PotCup) -> sequence::Stage<'p> {
        sequence::Stage {
            composition: &part.composition,
            draw: part.draw,
            kept: part.kept,
            returned: part.returned,
            loss: Ratio::from(0.0),
            capacity: Some(self.may_hold(cup, part.recipe)),
            heats: part.draft.heats,
        }
    }

    /// Why a sequence does not fit the cup, in the words of the book; its stages are counted from `first`.
    pub(super) fn over_cup(
        &self,
        error: SequenceError,
        parts: &OneOrMore<Part<'_, '_>>,
        cup: &PotCup,
        first: usize,
    ) -> PotError {
        match error {
            SequenceError::OverCapacity { stage, held, capacity: holds } => {
                let part = parts.iter().nth(stage.saturating_sub(first));
                let recipe = part.map_or(parts.first.recipe, |part| part.recipe);
                let (formulas, cup) = (recipe.name(), String::from(self.names.cup(cup.number)));
                PotError::OverCup { formulas, held, holds, cup }
            }
            error => error.into(),
        }
    }

    fn weigh_all(
        &self,
        sequence: &sequence::Sequence,
        parts: &OneOrMore<Part<'_, '_>>,
        materials: &[MaterialId],
        measured: &BaseMeasure,
    ) -> Result<Vec<Vec<Listed<'a>>>, WeighError> {
        let mut lists = Vec::new();
        for (index, (step, part)) in sequence.steps.iter().zip(parts).enumerate() {
            let additions = self.additions(step, part, materials);
            let base = match (index, part.recipe.recipe.base()) {
                (0, [base]) => Some((base.material, &measured.way)),
                _ => None,
            };
            lists.push(weigh::list(&additions, base, self.book, &self.names)?);
        }
        Ok(lists)
    }

    /// The additions of a step, each with the measure that its formula is written in.
    pub(super) fn additions(
        &self,
        step: &sequence::Step,
        part: &Part<'a, '_>,
        materials: &[MaterialId],
    ) -> Vec<Addition> {
        let is_weighed = self.measuring_cups().next().is_none();
        let parts_sum = part.composition.iter().fold(0.0, |sum, share| sum + share);
        let written = |material: MaterialId| {
            let mut base = part.recipe.recipe.base().iter();
            // Without a cup to measure it, base is weighed: nobody measures a pot by spoons.
            if is_weighed && base.any(|one| one.material == material) {
                return WrittenIn::Mass;
            }
            let found = part.recipe.recipe.ingredients().find(|one| one.material == material);
            found.map_or(WrittenIn::Mass, |ingredient| ingredient.written)
        };
        let each = materials.iter().zip(step.additions.iter().zip(&part.composition));
        each.map(|(&material, (&wanted, share))| Addition {
            material,
            written: written(material),
            wanted,
            total: step.held * (share / parts_sum),
        })
        .collect()
    }
}

/// The materials of all stages, in the order of the table.
pub(super) fn materials(draft: &PotDraft<'_>) -> Vec<MaterialId> {
    let recipes = draft.stages.iter().map(|stage| &stage.recipe.recipe);
    let mut materials: Vec<MaterialId> = recipes
        .flat_map(|recipe| recipe.ingredients().map(|ingredient| ingredient.material))
        .collect();
    materials.sort_unstable();
    materials.dedup();
    materials
}

#[cfg(all(test, feature = "document"))]
mod tests;

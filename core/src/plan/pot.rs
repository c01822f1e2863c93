//! One pot: which cup, how much base to its mark, what each stage adds and shoots.

mod error;
mod shots;
mod told;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

pub(super) use self::error::PotError;
use self::shots::{LayerShots, injector};
pub(super) use self::shots::{Shots, shots};
use super::Pot;
use super::day::{Batch, DayRecipe};
use super::precedence::FreshBase;
use super::sequence;
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, Listed, WeighError};
use crate::batch::{self, BatchError, Marks};
use crate::bench::Step;
use crate::book::{Book, Sprues};
use crate::formula::WrittenIn;
use crate::mix::MaterialId;
use crate::quantity::{Mass, Measurable, Ratio, Volume};
use crate::show::{Note, text};

/// What is to be made in one pot.
#[derive(Debug, Clone)]
pub(super) struct PotDraft {
    pub(super) stages: Vec<StageDraft>,
}

/// What is to be shot of one recipe.
#[derive(Debug, Clone)]
pub(super) struct StageDraft {
    pub(super) recipe: usize,
    pub(super) draws: Vec<DrawDraft>,
    /// Heats that it takes.
    pub(super) heats: u32,
}

/// Shots of one layer of a batch.
#[derive(Debug, Clone, Copy)]
pub(super) struct DrawDraft {
    pub(super) batch: usize,
    pub(super) layer: usize,
    pub(super) shots: u32,
}

/// What all pots of a day are built from.
pub(super) struct Workshop<'a> {
    pub(super) book: &'a Book,
    pub(super) names: ToolNames<'a>,
    pub(super) recipes: &'a [DayRecipe],
    pub(super) batches: &'a [Batch],
    pub(super) shots: &'a [Shots],
}

/// A pot that has no name yet, and what made it larger than its orders need.
pub(super) struct Built {
    pot: Pot,
    raised: Option<Raised>,
}

/// Why there is `mix` where the orders need less.
struct Raised {
    why: String,
    need: Mass,
    mix: Mass,
}

impl Built {
    /// The pot by its name, and what there is to say of it.
    pub(super) fn named(self, name: String) -> (Pot, Option<Note>) {
        let note = self.raised.map(|raised| raised.note(&name));
        (Pot { pot: name, ..self.pot }, note)
    }
}

impl Raised {
    fn note(&self, pot: &str) -> Note {
        let Self { why, need, mix } = self;
        Note {
            code: "pot-raised".to_string(),
            message: format!(
                "Pot {pot} is {} where its orders need {}: {why}.",
                text::mass(*mix).text,
                text::mass(*need).text
            ),
        }
    }
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
struct Part<'a> {
    draft: &'a StageDraft,
    recipe: &'a DayRecipe,
    draw: Mass,
    kept: Mass,
    /// Sprues that are melted again with the next stage.
    returned: Mass,
    composition: Vec<f64>,
}

impl Workshop<'_> {
    /// Builds the pot in the smallest cup that holds it.
    pub(super) fn build(&self, draft: &PotDraft) -> Result<Built, PotError> {
        let materials = self.materials(draft)?;
        let mut parts = Vec::with_capacity(draft.stages.len());
        for stage in &draft.stages {
            parts.push(self.part(stage, &materials)?);
        }
        // What the bench cannot dose is no reason to make nothing: the nearest is made then, and the plan says so.
        match self.in_smallest_cup(&parts, &materials, Doses::Kept) {
            Err(error) if error.is_about_measuring() && parts.len() == 1 => {
                self.in_smallest_cup(&parts, &materials, Doses::Nearest)
            }
            built => built,
        }
    }

    /// Builds the pot in the smallest cup that holds it with its `doses`.
    fn in_smallest_cup(
        &self,
        parts: &[Part<'_>],
        materials: &[MaterialId],
        doses: Doses,
    ) -> Result<Built, PotError> {
        let mut cups: Vec<usize> = (0..self.book.tools.cups().len()).collect();
        cups.sort_by(|&a, &b| {
            let holds =
                |cup: usize| self.book.tools.cups().get(cup).map_or(0.0, |cup| cup.capacity.si());
            holds(a).total_cmp(&holds(b))
        });
        let mut last = PotError::Lost;
        for cup in cups {
            match self.in_cup(cup, parts, materials, doses) {
                Ok(built) => return Ok(built),
                Err(error) if error.wants_larger_cup() => last = error,
                Err(error) => return Err(error),
            }
        }
        Err(last)
    }

    /// The materials of all stages, in the order of the table.
    fn materials(&self, draft: &PotDraft) -> Result<Vec<MaterialId>, PotError> {
        let mut materials = Vec::new();
        for stage in &draft.stages {
            let recipe = self.recipes.get(stage.recipe).ok_or(PotError::Lost)?;
            materials.extend(recipe.recipe.ingredients().map(|ingredient| ingredient.material));
        }
        materials.sort_unstable();
        materials.dedup();
        Ok(materials)
    }

    fn part<'a>(
        &'a self,
        draft: &'a StageDraft,
        materials: &[MaterialId],
    ) -> Result<Part<'a>, PotError> {
        let recipe = self.recipes.get(draft.recipe).ok_or(PotError::Lost)?;
        let mut draw = Mass::default();
        let mut kept = Mass::default();
        let mut sprues = Mass::default();
        for shot in &draft.draws {
            let layer = self.layer(shot)?;
            draw += layer.mass.fill * f64::from(shot.shots);
            // A laminated piece's sprue holds both colors and goes back into neither.
            if self.batches.get(shot.batch).is_some_and(|batch| batch.layers.len() == 1) {
                sprues += layer.mass.sprue * f64::from(shot.shots);
            }
            let keeps = injector(self.book).kept(layer.density)?;
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
        let returned = match self.book.limits.sprues {
            Sprues::Keep => Mass::default(),
            Sprues::MeltAgain => sprues,
        };
        Ok(Part { draft, recipe, draw, kept, returned, composition })
    }

    fn layer(&self, draw: &DrawDraft) -> Result<&LayerShots, PotError> {
        self.shots
            .get(draw.batch)
            .and_then(|shots| shots.layers.get(draw.layer))
            .ok_or(PotError::Lost)
    }

    fn in_cup(
        &self,
        cup: usize,
        parts: &[Part<'_>],
        materials: &[MaterialId],
        doses: Doses,
    ) -> Result<Built, PotError> {
        let first = parts.first().ok_or(PotError::Lost)?;
        let capacity = self.book.tools.cups().get(cup).ok_or(PotError::Lost)?.capacity;
        let holds = capacity * self.book.limits.most_full;
        let base_fraction = Ratio::from(1.0 / first.recipe.recipe.total_per_base());
        let base_density = first.recipe.recipe.base_density(&self.book.materials)?;
        let vessel = self.book.vessels.get(cup).copied().unwrap_or_default();

        let need = self.sequence(parts, holds, vessel, Mass::default())?.start();
        let even = self.least_pot(first);
        let mut why = (even > need).then(|| "the oven does not heat less evenly".to_string());
        let wanted = if even > need { even } else { need };
        let (measurer, mark) = self.measurer(wanted * base_fraction / base_density)?;
        let steps = Marks::Every { step: mark, capacity };
        let mut measured = steps.measure(wanted, base_fraction, base_density)?;
        let most = measured.mix * MOST_RAISED;
        let mut undosed: Option<PotError> = None;
        loop {
            let sequence = match (self.sequence(parts, holds, vessel, measured.mix), undosed.take())
            {
                // What it takes to dose a material does not fit.
                (Err(error), Some(undosed)) if error.is_too_full() => return Err(undosed),
                (sequence, _) => sequence?,
            };
            let lists = self.weigh_all(&sequence, parts, materials, (measurer, &measured))?;
            let coarse = lists.iter().flatten().find_map(|one| Some((one, one.beyond()?)));
            let Some((listed, error)) = coarse.filter(|_| doses == Doses::Kept) else {
                let pot = self.pot(cup, parts, sequence, lists)?;
                let raised = why.map(|why| Raised { why, need, mix: measured.mix });
                return Ok(Built { pot, raised });
            };
            let (material, tolerance) = (listed.name().to_string(), listed.tolerance());
            if error.least().is_none() {
                return Err(PotError::Measure { material, error: error.clone() });
            }
            why = Some(format!(
                "the bench doses \"{material}\" to {} in no less",
                text::percent(tolerance).text
            ));
            let (tolerance, error) = (tolerance.value, error.clone());
            let too_small = PotError::TooSmallToDose { material, tolerance, error };
            // One mark more: the least that works need not be one that works for every amount above it.
            let more = (measured.base_volume + mark * 0.5) * base_density / base_fraction;
            measured = match steps.measure(more, base_fraction, base_density) {
                Err(BatchError::AboveMarks { .. }) => return Err(too_small),
                measured => measured?,
            };
            if measured.mix > most {
                return Err(too_small);
            }
            undosed = Some(too_small);
        }
    }

    /// The least that the oven heats evenly, as a mass of the first stage's mix.
    fn least_pot(&self, first: &Part<'_>) -> Mass {
        self.book.limits.least_pot.map_or(Mass::default(), |least| least * first.recipe.liquid)
    }

    fn sequence(
        &self,
        parts: &[Part<'_>],
        holds: Volume,
        vessel: crate::book::Vessel,
        least: Mass,
    ) -> Result<sequence::Sequence, PotError> {
        let stages: Vec<sequence::Stage<'_>> = parts
            .iter()
            .map(|part| sequence::Stage {
                composition: &part.composition,
                draw: part.draw,
                kept: part.kept,
                returned: part.returned,
                loss: Ratio::from(0.0),
                capacity: Some(holds * part.recipe.liquid),
                heats: part.draft.heats,
            })
            .collect();
        let heel = if vessel.heel > vessel.film { vessel.heel } else { vessel.film };
        let heats = self.book.limits.heats;
        let vessel = sequence::Vessel { film: vessel.film, heel, least, heats };
        let fresh = if self.book.limits.fresh_base { FreshBase::On } else { FreshBase::Off };
        sequence::plan(&stages, &vessel, fresh).map_err(PotError::from)
    }

    fn weigh_all(
        &self,
        sequence: &sequence::Sequence,
        parts: &[Part<'_>],
        materials: &[MaterialId],
        (measurer, measured): (usize, &batch::Measured),
    ) -> Result<Vec<Vec<Listed<'_>>>, WeighError> {
        let mut lists = Vec::new();
        for (index, (step, part)) in sequence.steps.iter().zip(parts).enumerate() {
            let parts_sum = part.composition.iter().fold(0.0, |sum, share| sum + share);
            let written = |material: MaterialId| {
                let found = part.recipe.recipe.ingredients().find(|one| one.material == material);
                found.map_or(WrittenIn::Mass, |ingredient| ingredient.written)
            };
            let additions: Vec<Addition> = materials
                .iter()
                .zip(step.additions.iter().zip(&part.composition))
                .map(|(&material, (&wanted, share))| Addition {
                    material,
                    written: written(material),
                    wanted,
                    total: step.held * (share / parts_sum),
                })
                .collect();
            let base = match (index, part.recipe.recipe.base()) {
                (0, [base]) => {
                    let steps = self.fillings(measurer, measured.base_volume);
                    steps.map(|steps| (base.material, steps))
                }
                _ => None,
            };
            lists.push(weigh::list(&additions, base, self.book, &self.names)?);
        }
        Ok(lists)
    }

    /// The cup to measure `base` with, and its mark: the one whose marks take the least more, of
    /// those the one with the fewest fillings.
    fn measurer(&self, base: Volume) -> Result<(usize, Volume), PotError> {
        let mut rounded = Vec::new();
        for (index, cup) in self.book.tools.cups().iter().enumerate() {
            let marks = Marks::Every { step: cup.mark, capacity: base + cup.mark };
            let volume = marks.round_up(base)?;
            let fillings = libm::ceil((volume / cup.capacity).si() - 1e-9);
            rounded.push((volume.si(), fillings, index, cup.mark));
        }
        let least = rounded.into_iter().min_by(|a, b| {
            // What differs by rounding alone is the same mark.
            let same = (a.0 - b.0).abs() <= 1e-9 * a.0;
            let volume = if same { core::cmp::Ordering::Equal } else { a.0.total_cmp(&b.0) };
            volume.then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2))
        });
        least.map(|(.., index, mark)| (index, mark)).ok_or(PotError::Lost)
    }

    /// `volume` in fillings of cup `cup` to its marks.
    fn fillings(&self, cup: usize, volume: Volume) -> Option<Vec<Step>> {
        let tool = self.book.tools.cups().get(cup)?;
        let marks = libm::round((volume / tool.mark).si());
        Some(tool.steps(cup, marks as u32))
    }
}

/// The letter of the pot at `index`: A, B, ..., Z, AA, AB, ...
pub(super) fn letter(index: usize) -> String {
    let mut letters: Vec<u8> = Vec::new();
    let mut rest = index;
    loop {
        letters.push(
            b'A'.saturating_add(u8::try_from(rest.checked_rem(26).unwrap_or(0)).unwrap_or(0)),
        );
        match rest.checked_div(26).unwrap_or(0).checked_sub(1) {
            Some(next) => rest = next,
            None => break,
        }
    }
    letters.iter().rev().map(|&letter| char::from(letter)).collect()
}

#[cfg(test)]
mod tests;

//! One pot: which cup, how much base to its mark, what each stage adds and shoots.

mod base;
mod error;
mod shots;
mod told;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use self::base::{BaseMeasure, Measuring};
pub(super) use self::error::PotError;
use self::shots::{LayerShots, injector};
pub(super) use self::shots::{Shots, shots};
use super::Pot;
use super::day::{Batch, DayRecipe};
use super::dosing::Dosing;
use super::precedence::FreshBase;
use super::sequence::{self, SequenceError};
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, Listed, WeighError};
use crate::batch::BatchError;
use crate::bench::Cup;
use crate::book::{Book, Sprues};
use crate::mix::MaterialId;
use crate::quantity::{Mass, Measurable, Ratio};
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
    /// Shots of the same layer that other draws shoot before.
    pub(super) before: u32,
}

/// What all pots of a day are built from.
pub(super) struct Workshop<'a> {
    pub(super) book: &'a Book,
    pub(super) dosing: &'a Dosing,
    pub(super) names: ToolNames<'a>,
    pub(super) recipes: &'a [DayRecipe],
    pub(super) batches: &'a [Batch],
    pub(super) shots: &'a [Shots],
}

/// A pot that has no name yet, what made it larger than its orders need, and how its base is measured where
/// that is not up to a mark.
pub(super) struct Built {
    pot: Pot,
    raised: Option<Raised>,
    off_marks: Option<String>,
}

/// Why there is `mix` where the orders need less.
struct Raised {
    why: String,
    need: Mass,
    mix: Mass,
}

impl Built {
    /// The pot by its name, and what there is to say of it.
    pub(super) fn named(self, name: String) -> (Pot, Vec<Note>) {
        let raised = self.raised.map(|raised| raised.note(&name));
        let off_marks = self.off_marks.map(|how| Note {
            code: "base-off-marks".to_string(),
            message: format!("Pot {name}: {how}"),
        });
        (Pot { pot: name, ..self.pot }, raised.into_iter().chain(off_marks).collect())
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
    /// Builds the pot in the smallest cup that holds it with its base up to a mark; where that overfills all
    /// cups, in the smallest that holds it with its base measured otherwise.
    pub(super) fn build(&self, draft: &PotDraft) -> Result<Built, PotError> {
        let materials = self.materials(draft)?;
        let mut parts = Vec::with_capacity(draft.stages.len());
        for stage in &draft.stages {
            parts.push(self.part(stage, &materials)?);
        }
        let mut cups: Vec<usize> = (0..self.book.tools.cups().len()).collect();
        cups.sort_by(|&a, &b| {
            let holds =
                |cup: usize| self.book.tools.cups().get(cup).map_or(0.0, |cup| cup.capacity.si());
            holds(a).total_cmp(&holds(b))
        });
        let mut refused: Option<PotError> = None;
        for measuring in Measuring::ALL {
            for &cup in &cups {
                match self.in_cup(cup, &parts, &materials, measuring) {
                    Ok(built) => return Ok(built),
                    Err(error) if error.wants_larger_cup() => {
                        // That a material cannot be dosed says more than that it does not fit.
                        if refused.as_ref().is_none_or(PotError::is_too_full) {
                            refused = Some(error);
                        }
                    }
                    Err(error) => return Err(error),
                }
            }
        }
        Err(refused.unwrap_or(PotError::Lost))
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
        let mut returned = Mass::default();
        for shot in &draft.draws {
            let layer = self.layer(shot)?;
            draw += layer.mass.fill * f64::from(shot.shots);
            let batch = self.batches.get(shot.batch).ok_or(PotError::Lost)?;
            returned += self.returned(batch, layer) * f64::from(shot.shots);
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

    fn layer(&self, draw: &DrawDraft) -> Result<&LayerShots, PotError> {
        self.shots
            .get(draw.batch)
            .and_then(|shots| shots.layers.get(draw.layer))
            .ok_or(PotError::Lost)
    }

    /// What of a shot goes back into the pot before the next stage. A laminated piece's sprue holds both
    /// colors and goes back into neither.
    pub(super) fn returned(&self, batch: &Batch, layer: &LayerShots) -> Mass {
        match self.book.limits.sprues {
            Sprues::MeltAgain if batch.layers.len() == 1 => layer.mass.sprue,
            _ => Mass::default(),
        }
    }

    /// What the injector keeps of a layer at each heat.
    pub(super) fn kept(&self, layer: &LayerShots) -> Result<Mass, PotError> {
        Ok(injector(self.book).kept(layer.density)?)
    }

    /// The most of a recipe that a cup may hold.
    pub(super) fn may_hold(&self, cup: &Cup, recipe: &DayRecipe) -> Mass {
        cup.capacity * self.book.limits.most_full * recipe.liquid
    }

    fn in_cup(
        &self,
        cup: usize,
        parts: &[Part<'_>],
        materials: &[MaterialId],
        measuring: Measuring,
    ) -> Result<Built, PotError> {
        let first = parts.first().ok_or(PotError::Lost)?;
        let start = |least| Ok::<_, PotError>(self.sequence(parts, cup, (least, None))?.start());
        let need = start(Mass::default())?;
        let even = self.least_pot(first.recipe);
        let mut why = (even > need).then(|| "the oven does not heat less evenly".to_string());
        let wanted = if even > need { even } else { need };
        let mut measured = self.measure_base(cup, first.recipe, wanted, measuring)?;
        let mut undosed: Option<PotError> = None;
        loop {
            let limits = (measured.mix, measured.most);
            let sequence = match (self.sequence(parts, cup, limits), undosed.take()) {
                // What it takes to dose a material does not fit.
                (Err(error), Some(undosed)) if error.is_too_full() => return Err(undosed),
                (sequence, _) => sequence?,
            };
            match self.weigh_all(&sequence, parts, materials, &measured) {
                Ok(lists) => {
                    let pot = self.pot(cup, parts, sequence, lists)?;
                    let raised = why.map(|why| Raised { why, need, mix: measured.mix });
                    return Ok(Built { pot, raised, off_marks: measured.off_marks });
                }
                Err(WeighError::Measure { material, tolerance, error }) => {
                    if error.least().is_none() {
                        return Err(PotError::Measure { material, error });
                    }
                    why = Some(format!(
                        "the bench doses \"{material}\" to {} in no less",
                        text::percent(Ratio::from(tolerance)).text
                    ));
                    let too_small = PotError::TooSmallToDose { material, tolerance, error };
                    // One mark more: the least that works need not be one that works for every amount above it.
                    measured = match self.one_mark_more(cup, first.recipe, &measured) {
                        Err(PotError::Batch(BatchError::AboveMarks { .. })) => {
                            return Err(too_small);
                        }
                        measured => measured?,
                    };
                    undosed = Some(too_small);
                }
                Err(WeighError::Mix(error)) => return Err(error.into()),
            }
        }
    }

    /// The least that the oven heats evenly, as a mass of the mix that a pot starts with.
    pub(super) fn least_pot(&self, first: &DayRecipe) -> Mass {
        self.book.limits.least_pot.map_or(Mass::default(), |least| least * first.liquid)
    }

    /// The sequence in cup `cup` that starts with no less than `least`, and no more than `most` where that is
    /// given.
    fn sequence(
        &self,
        parts: &[Part<'_>],
        cup: usize,
        (least, most): (Mass, Option<Mass>),
    ) -> Result<sequence::Sequence, PotError> {
        let holds = self.book.tools.cups().get(cup).ok_or(PotError::Lost)?;
        let vessel = self.book.vessels.get(cup).copied().unwrap_or_default();
        let mut stages: Vec<sequence::Stage<'_>> = parts
            .iter()
            .map(|part| sequence::Stage {
                composition: &part.composition,
                draw: part.draw,
                kept: part.kept,
                returned: part.returned,
                loss: Ratio::from(0.0),
                capacity: Some(self.may_hold(holds, part.recipe)),
                heats: part.draft.heats,
            })
            .collect();
        if let (Some(first), Some(most)) = (stages.first_mut(), most) {
            first.capacity = Some(most);
        }
        let heats = self.book.limits.heats;
        let vessel = sequence::Vessel { film: vessel.film, heel: vessel.heel, least, heats };
        let fresh = if self.book.limits.fresh_base { FreshBase::On } else { FreshBase::Off };
        sequence::plan(&stages, &vessel, fresh).map_err(|error| match error {
            SequenceError::OverCapacity { stage, held, capacity: holds } => {
                let formulas = parts.get(stage).map(|part| part.recipe.formulas.join(" + "));
                let cup = self.names.cup_called(cup);
                PotError::OverCup { formulas: formulas.unwrap_or_default(), held, holds, cup }
            }
            error => error.into(),
        })
    }

    fn weigh_all(
        &self,
        sequence: &sequence::Sequence,
        parts: &[Part<'_>],
        materials: &[MaterialId],
        measured: &BaseMeasure,
    ) -> Result<Vec<Vec<Listed<'_>>>, WeighError> {
        let mut lists = Vec::new();
        for (index, (step, part)) in sequence.steps.iter().zip(parts).enumerate() {
            let parts_sum = part.composition.iter().fold(0.0, |sum, share| sum + share);
            let additions: Vec<Addition> = materials
                .iter()
                .zip(step.additions.iter().zip(&part.composition))
                .map(|(&material, (&wanted, share))| Addition {
                    material,
                    wanted,
                    total: step.held * (share / parts_sum),
                })
                .collect();
            let base = match (index, part.recipe.recipe.base()) {
                (0, [base]) => Some((base.material, &measured.way)),
                _ => None,
            };
            lists.push(weigh::list(&additions, base, self.book, self.dosing)?);
        }
        Ok(lists)
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

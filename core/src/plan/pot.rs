//! One pot: which cup, how much base to its mark, what each stage adds and shoots.

mod error;
mod shots;
mod stages;

use alloc::rc::Rc;
use alloc::string::String;
use alloc::vec::Vec;

pub(super) use self::error::PotError;
use self::shots::injector;
pub(super) use self::shots::{LayerShots, Shots, shots};
use super::assign::Layer;
use super::day::{Batch, DayRecipe};
use super::layout::{PotCup, PotLayout};
use super::one_or_more::OneOrMore;
use super::precedence::FreshBase;
use super::sequence;
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, Listed, WeighError};
use crate::batch::{self, BatchError, Marks};
use crate::bench::Step;
use crate::book::{Book, Sprues};
use crate::formula::WrittenIn;
use crate::mix::MaterialId;
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};

/// What is to be made in one pot.
#[derive(Debug, Clone)]
pub(super) struct PotDraft<'a> {
    pub(super) stages: OneOrMore<StageDraft<'a>>,
}

impl<'a> PotDraft<'a> {
    /// The first batch that it serves.
    pub(super) fn batch(&self) -> Option<&'a Batch<'a>> {
        self.stages.iter().flat_map(|stage| &stage.draws).map(|draw| draw.of.batch).next()
    }
}

/// What is to be shot of one recipe.
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
}

/// What all pots of a day are built from.
pub(super) struct Workshop<'a> {
    pub(super) book: &'a Book,
    pub(super) names: ToolNames<'a>,
    pub(super) cups: Vec<PotCup>,
    pub(super) recipes: &'a [Rc<DayRecipe<'a>>],
    pub(super) shots: &'a [Shots<'a>],
}

/// Why there is `mix` where the orders need less.
pub(super) struct Raised {
    pub(super) why: WhyRaised,
    pub(super) need: Mass,
    pub(super) mix: Mass,
}

/// What wants a larger pot.
pub(super) enum WhyRaised {
    /// The oven does not heat less evenly.
    Oven,
    /// The bench doses a material to its tolerance in no less.
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

/// The least by which a pot is made larger at a time, as a share of its cup.
const FINEST_RAISE: f64 = 1.0 / 32.0;

/// How a pot's base is measured.
#[derive(Clone, Copy)]
struct Measuring<'c> {
    /// The cup to fill to its marks; `None`: it is weighed.
    cup: Option<&'c PotCup>,
    /// From one amount to the next.
    step: Volume,
}

/// A stage in numbers.
struct Part<'a, 'd> {
    draft: &'d StageDraft<'a>,
    recipe: &'a DayRecipe<'a>,
    draw: Mass,
    kept: Mass,
    /// Sprues that are melted again with the next stage.
    returned: Mass,
    composition: Vec<f64>,
}

impl<'a> Workshop<'a> {
    /// The stages to serve: every layer of every batch.
    pub(super) fn layers(&self) -> Vec<Layer<'a>> {
        let each = self.shots.iter();
        each.flat_map(|of| of.layers.iter().map(move |layer| Layer { of, layer })).collect()
    }

    /// Builds the pot in the smallest cup that holds it.
    pub(super) fn build(&self, draft: &PotDraft<'a>) -> Result<PotLayout<'a>, PotError> {
        let materials = materials(draft);
        let parts = draft.stages.try_map(|_, stage| self.part(stage, &materials))?;
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
        parts: &OneOrMore<Part<'a, '_>>,
        materials: &[MaterialId],
        doses: Doses,
    ) -> Result<PotLayout<'a>, PotError> {
        let mut cups: Vec<&PotCup> = self.cups.iter().collect();
        cups.sort_by(|a, b| a.cup.capacity.si().total_cmp(&b.cup.capacity.si()));
        let mut last = PotError::NoCup;
        for cup in cups {
            match self.in_cup(cup, parts, materials, doses) {
                Ok(built) => return Ok(built),
                Err(error) if error.wants_larger_cup() => last = error,
                Err(error) => return Err(error),
            }
        }
        Err(last)
    }

    fn part<'d>(
        &self,
        draft: &'d StageDraft<'a>,
        materials: &[MaterialId],
    ) -> Result<Part<'a, 'd>, PotError> {
        let recipe = draft.recipe;
        let mut draw = Mass::default();
        let mut kept = Mass::default();
        let mut sprues = Mass::default();
        for DrawDraft { of, layer, shots } in &draft.draws {
            draw += layer.mass.fill * f64::from(*shots);
            // A laminated piece's sprue holds both colors and goes back into neither.
            if !of.batch.is_laminated() {
                sprues += layer.mass.sprue * f64::from(*shots);
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

    fn in_cup(
        &self,
        cup: &PotCup,
        parts: &OneOrMore<Part<'a, '_>>,
        materials: &[MaterialId],
        doses: Doses,
    ) -> Result<PotLayout<'a>, PotError> {
        let first = &parts.first;
        let capacity = cup.cup.capacity;
        let vessel = cup.vessel;
        let holds = capacity * self.book.limits.most_full;
        let base_fraction = Ratio::from(1.0 / first.recipe.recipe.total_per_base());
        let base_density = first.recipe.recipe.base_density(&self.book.materials)?;

        let need = self.sequence(parts, holds, vessel, Mass::default())?.start();
        let even = self.least_pot(first);
        let mut why = (even > need).then_some(WhyRaised::Oven);
        let wanted = if even > need { even } else { need };
        let measuring = self.measuring(wanted * base_fraction / base_density, base_density)?;
        let steps = Marks::Every { step: measuring.step, capacity };
        let only_whole = |error: PotError| match measuring.cup {
            Some(cup) if cup.is_unmarked() && error.is_too_full() => {
                PotError::NoMarks { holds: cup.cup.capacity }
            }
            _ => error,
        };
        let measured = steps.measure(wanted, base_fraction, base_density);
        let mut measured = measured.map_err(|error| only_whole(error.into()))?;
        let most = measured.mix * MOST_RAISED;
        let finest = capacity * FINEST_RAISE;
        let raise = if measuring.step > finest { measuring.step } else { finest };
        let mut undosed: Option<PotError> = None;
        loop {
            let sequence = match (self.sequence(parts, holds, vessel, measured.mix), undosed.take())
            {
                // What it takes to dose a material does not fit.
                (Err(error), Some(undosed)) if error.is_too_full() => return Err(undosed),
                (sequence, _) => sequence.map_err(only_whole)?,
            };
            let lists = self.weigh_all(&sequence, parts, materials, (measuring, &measured))?;
            let coarse = lists.iter().flatten().find_map(|one| Some((one, one.beyond()?)));
            let Some((listed, error)) = coarse.filter(|_| doses == Doses::Kept) else {
                let raised = why.map(|why| Raised { why, need, mix: measured.mix });
                return Ok(PotLayout { raised, ..self.pot(cup, parts, &sequence, lists)? });
            };
            let (material, tolerance) = (listed.material.name.clone(), listed.tolerance().value);
            let error = error.clone();
            if error.least().is_none() {
                return Err(PotError::Measure { material, error });
            }
            why = Some(WhyRaised::Dosing { material: material.clone(), tolerance });
            let too_small = PotError::TooSmallToDose { material, tolerance, error };
            // One mark more: the least that works need not be one that works for every amount above it.
            let more = measured.base_volume + raise - measuring.step * 0.5;
            measured = match steps.measure(
                more * base_density / base_fraction,
                base_fraction,
                base_density,
            ) {
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
    fn least_pot(&self, first: &Part<'_, '_>) -> Mass {
        self.book.limits.least_pot.map_or(Mass::default(), |least| least * first.recipe.liquid)
    }

    fn sequence(
        &self,
        parts: &OneOrMore<Part<'_, '_>>,
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
        parts: &OneOrMore<Part<'_, '_>>,
        materials: &[MaterialId],
        (measuring, measured): (Measuring<'_>, &batch::Measured),
    ) -> Result<Vec<Vec<Listed<'a>>>, WeighError> {
        let mut lists = Vec::new();
        for (index, (step, part)) in sequence.steps.iter().zip(parts).enumerate() {
            let parts_sum = part.composition.iter().fold(0.0, |sum, share| sum + share);
            let is_weighed = |material: MaterialId| {
                let mut base = part.recipe.recipe.base().iter();
                measuring.cup.is_none() && base.any(|one| one.material == material)
            };
            let written = |material: MaterialId| {
                // A base that no cup measures is weighed: nobody spoons a pot together.
                if is_weighed(material) {
                    return WrittenIn::Mass;
                }
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
                    measuring.cup.map(|cup| (base.material, fillings(cup, measured.base_volume)))
                }
                _ => None,
            };
            lists.push(weigh::list(&additions, base, self.book, &self.names)?);
        }
        Ok(lists)
    }

    /// How to measure `base` of `density`: in the cup whose marks take the least more, of those the one with the fewest
    /// fillings. A cup without marks is filled whole, unless there is a balance: then the base is weighed.
    fn measuring(&self, base: Volume, density: MassDensity) -> Result<Measuring<'_>, PotError> {
        let balance = self.book.tools.balance();
        let mut rounded = Vec::with_capacity(self.cups.len());
        for cup in self.cups.iter().filter(|cup| balance.is_none() || !cup.is_unmarked()) {
            let marks = Marks::Every { step: cup.cup.mark, capacity: base + cup.cup.mark };
            let volume = marks.round_up(base)?;
            let fillings = libm::ceil((volume / cup.cup.capacity).si() - 1e-9);
            rounded.push((volume.si(), fillings, cup));
        }
        let least = rounded.into_iter().min_by(|a, b| {
            // What differs by rounding alone is the same mark.
            let same = (a.0 - b.0).abs() <= 1e-9 * a.0;
            let volume = if same { core::cmp::Ordering::Equal } else { a.0.total_cmp(&b.0) };
            volume.then(a.1.total_cmp(&b.1)).then(a.2.number.cmp(&b.2.number))
        });
        match (least, balance) {
            (Some((.., cup)), _) => Ok(Measuring { cup: Some(cup), step: cup.cup.mark }),
            (None, Some(balance)) => {
                Ok(Measuring { cup: None, step: balance.readability / density })
            }
            (None, None) => Err(PotError::NoCup),
        }
    }
}

/// The materials of all stages, in the order of the table.
fn materials(draft: &PotDraft<'_>) -> Vec<MaterialId> {
    let recipes = draft.stages.iter().map(|stage| &stage.recipe.recipe);
    let mut materials: Vec<MaterialId> = recipes
        .flat_map(|recipe| recipe.ingredients().map(|ingredient| ingredient.material))
        .collect();
    materials.sort_unstable();
    materials.dedup();
    materials
}

/// `volume` in fillings of a cup to its marks.
fn fillings(cup: &PotCup, volume: Volume) -> Vec<Step> {
    let marks = libm::round((volume / cup.cup.mark).si());
    cup.cup.steps(cup.number, marks as u32)
}

#[cfg(all(test, feature = "document"))]
mod tests;

//! Which recipe is made in which pot: the day's stages put to [`split`](super::split), within what
//! the largest cup, the injectors and the stabilizer allow.
//!
//! Ties go, in this order: fewer heats; light before dark, less colorant counting as lighter; fewer
//! changes of the mold; what was promised earlier; the order of the lines.

use alloc::rc::Rc;
use alloc::vec::Vec;

use super::day::DayRecipe;
use super::one_or_more::OneOrMore;
use super::pot::{DrawDraft, LayerShots, PotDraft, PotError, Shots, StageDraft, Workshop};
use super::precedence::{Composition, FreshBase, Precedence};
use super::split::{self, Proof, Split, Wanted};
use crate::book::Book;
use crate::material::Kind;
use crate::quantity::{Mass, Ratio, Volume};

/// A layer of a batch: a stage to serve.
#[derive(Debug, Clone, Copy)]
pub(super) struct Layer<'a> {
    pub(super) of: &'a Shots<'a>,
    pub(super) layer: &'a LayerShots<'a>,
}

/// The pots of a day, before they are built.
pub(super) struct Assigned<'a> {
    pub(super) pots: Vec<PotDraft<'a>>,
    /// What is shot at one time, in the order of work.
    pub(super) work: Vec<Vec<WorkDraw<'a>>>,
    pub(super) proof: Proof,
    /// The stages to serve, as the proof counts them.
    pub(super) layers: Vec<Layer<'a>>,
}

/// Shots of one stage of a pot.
#[derive(Debug, Clone, Copy)]
pub(super) struct WorkDraw<'a> {
    pub(super) pot: usize,
    pub(super) stage: usize,
    pub(super) of: &'a Shots<'a>,
    pub(super) shots: u32,
    /// Whether the pot is heated for it.
    pub(super) heated: bool,
}

/// Assigns all stages of the day to pots of up to `holds`, what the largest cup may be filled to.
pub(super) fn assign<'a>(
    workshop: &Workshop<'a>,
    holds: Volume,
    vessel: crate::book::Vessel,
) -> Result<Assigned<'a>, PotError> {
    let Workshop { book, recipes, .. } = workshop;
    let mut compositions = Vec::with_capacity(recipes.len());
    for recipe in *recipes {
        compositions.push(composition(recipe)?);
    }
    let fresh = if book.limits.fresh_base { FreshBase::On } else { FreshBase::Off };
    let precedence = Precedence::new(&compositions, fresh)?;
    let capacity: Vec<Option<Mass>> =
        recipes.iter().map(|recipe| Some(holds * recipe.liquid)).collect();
    let keeps =
        recipes.iter().map(|recipe| recipe.melt.hot).fold(Mass::default(), |most, density| {
            let kept = book.injector.keeps * density;
            if kept > most { kept } else { most }
        });
    let limits = split::Limits {
        vessel: super::sequence::Vessel {
            film: vessel.film,
            heel: if vessel.heel > vessel.film { vessel.heel } else { vessel.film },
            least: Mass::default(),
            heats: book.limits.heats,
        },
        capacity: &capacity,
        kept: keeps,
        loss: Ratio::from(0.0),
        injectors: book.injector.count,
    };
    let layers = workshop.layers();
    let wanted = wanted(&layers, book)?;
    let split = split::split(&wanted, &precedence, &limits)?;
    Ok(assigned(split, layers, recipes))
}

fn composition(recipe: &DayRecipe<'_>) -> Result<Composition, PotError> {
    let exact = |ingredient: &crate::formula::Ingredient| {
        (ingredient.material.0 as usize, ingredient.exact.clone())
    };
    let base = recipe.recipe.base().iter().map(exact);
    let additives = recipe.recipe.additives().iter().map(exact);
    Ok(Composition::new(base, additives)?)
}

/// What the stages to serve want.
fn wanted(layers: &[Layer<'_>], book: &Book) -> Result<Vec<Wanted>, PotError> {
    let mut wanted = Vec::with_capacity(layers.len());
    let mut order: Vec<(f64, usize, Option<&str>, usize)> = Vec::with_capacity(layers.len());
    for (index, Layer { of, layer }) in layers.iter().enumerate() {
        let batch = of.batch;
        wanted.push(Wanted {
            formula: layer.recipe.number,
            shot: layer.mass.fill,
            shots: of.shots,
            laminate: batch.is_laminated().then_some(batch.number),
            key: 0,
        });
        order.push((colorant(layer.recipe, book)?, batch.mold_number, batch.promised, index));
    }
    // What was promised for no day comes after what was.
    order.sort_unstable_by(|a, b| {
        a.0.total_cmp(&b.0)
            .then(a.1.cmp(&b.1))
            .then_with(|| (a.2.is_none(), a.2).cmp(&(b.2.is_none(), b.2)))
            .then(a.3.cmp(&b.3))
    });
    for (key, (.., index)) in (0_u32..).zip(&order) {
        if let Some(stage) = wanted.get_mut(*index) {
            stage.key = key;
        }
    }
    Ok(wanted)
}

/// How dark a recipe is: its colorants, mass per mass of base.
fn colorant(recipe: &DayRecipe<'_>, book: &Book) -> Result<f64, PotError> {
    recipe.recipe.additives().iter().try_fold(0.0, |sum, additive| {
        let colorant = book.materials.get(additive.material)?.kind == Kind::Colorant;
        Ok(if colorant { sum + additive.ratio } else { sum })
    })
}

/// The pots of `split`, which counts the stages to serve and the recipes as they are given here.
fn assigned<'a>(
    split: Split,
    layers: Vec<Layer<'a>>,
    recipes: &'a [Rc<DayRecipe<'a>>],
) -> Assigned<'a> {
    let stage = |visit: &split::Visit| {
        let draw = |&(stage, shots): &(usize, u32)| {
            layers.get(stage).map(|&Layer { of, layer }| DrawDraft { of, layer, shots })
        };
        let draws = visit.draws.iter().filter_map(draw).collect();
        let recipe = recipes.get(visit.formula)?;
        Some(StageDraft { recipe, draws, heats: visit.heats })
    };
    let pots = split.pots.iter().filter_map(|pot| {
        OneOrMore::of(pot.visits.iter().filter_map(stage)).map(|stages| PotDraft { stages })
    });
    let pots = pots.collect();
    let mut works = Vec::with_capacity(split.work.len());
    for work in &split.work {
        let draws = work.draws.iter().filter_map(|draw| {
            layers.get(draw.wanted).map(|of| WorkDraw {
                pot: draw.pot,
                stage: draw.visit,
                of: of.of,
                shots: draw.shots,
                heated: work.heated.contains(&draw.pot),
            })
        });
        if work.laminate.is_some() {
            works.push(draws.collect());
        } else {
            // Shots of several molds from one heat come one after the other.
            for (index, draw) in draws.enumerate() {
                works.push(Vec::from([WorkDraw { heated: draw.heated && index == 0, ..draw }]));
            }
        }
    }
    Assigned { pots, work: works, proof: split.proof, layers }
}

impl Assigned<'_> {
    /// Takes pot `pot` apart: each of its stages gets a pot of its own. The order of work stays.
    pub(super) fn take_apart(&mut self, pot: usize) {
        let Some(whole) = self.pots.get_mut(pot) else { return };
        let later = core::mem::take(&mut whole.stages.later);
        let first_new = self.pots.len();
        let alone = |first| PotDraft { stages: OneOrMore { first, later: Vec::new() } };
        self.pots.extend(later.into_iter().map(alone));
        for draw in self.work.iter_mut().flatten().filter(|draw| draw.pot == pot) {
            if let Some(later) = draw.stage.checked_sub(1) {
                draw.pot = first_new.saturating_add(later);
                draw.stage = 0;
            }
        }
        self.proof.found = self.pots.len();
    }

    /// The pots that are hot with another for a laminated piece: (pot, batch, other pot), rising.
    pub(super) fn companions(&self) -> Vec<(usize, usize, usize)> {
        let mut companions = Vec::new();
        for work in self.work.iter().filter(|work| work.len() > 1) {
            for draw in work {
                let batch = draw.of.batch.number;
                let others = work
                    .iter()
                    .filter(|other| other.of.batch.number == batch && other.pot != draw.pot)
                    .map(|other| (draw.pot, batch, other.pot));
                companions.extend(others);
            }
        }
        companions.sort_unstable();
        companions.dedup();
        companions
    }

    /// The pots in the order of work.
    pub(super) fn order_of_work(&self) -> Vec<usize> {
        let mut seen = alloc::vec![false; self.pots.len()];
        let pots = self.work.iter().flatten().map(|draw| draw.pot);
        pots.filter(|pot| seen.get_mut(*pot).is_some_and(|seen| !core::mem::replace(seen, true)))
            .collect()
    }

    /// Numbers the pots as they stand in `order`.
    pub(super) fn renumbered(mut self, order: &[usize]) -> Self {
        let mut number: Vec<usize> = (0..self.pots.len()).collect();
        for (new, old) in order.iter().enumerate() {
            number.get_mut(*old).into_iter().for_each(|number| *number = new);
        }
        for draw in self.work.iter_mut().flatten() {
            draw.pot = number.get(draw.pot).copied().unwrap_or(draw.pot);
        }
        self.pots = order.iter().filter_map(|pot| self.pots.get(*pot).cloned()).collect();
        self
    }
}

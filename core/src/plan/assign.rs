//! Which recipe is made in which pot: the day's stages put to [`split`](super::split), within what
//! the cups, the injectors and the stabilizer allow.
//!
//! Ties go, in this order: fewer heats; light before dark, less colorant counting as lighter; fewer
//! changes of the mold; what was promised earlier; the order of the lines.

use alloc::vec::Vec;

use super::day::DayRecipe;
use super::pot::{DrawDraft, PotDraft, PotError, StageDraft, Workshop};
use super::precedence::{Composition, FreshBase, Precedence};
use super::split::{self, Proof, Split, SplitError, Wanted};
use crate::book::Book;
use crate::material::Kind;
use crate::quantity::{Mass, Ratio};

/// The batch that an error concerns, and the error.
pub(super) type At = (Option<usize>, PotError);

/// A stage to serve and where it comes from.
struct Layer {
    batch: usize,
    layer: usize,
}

/// The pots of a day, before they are built.
pub(super) struct Assigned {
    pub(super) pots: Vec<PotDraft>,
    /// What is shot at one time, in the order of work: pot and stage of each draw.
    pub(super) work: Vec<Vec<WorkDraw>>,
    pub(super) proof: Proof,
    /// The wanted stages, for the proof's words.
    pub(super) recipes: Vec<usize>,
}

/// Shots of one stage of a pot.
#[derive(Debug, Clone, Copy)]
pub(super) struct WorkDraw {
    pub(super) pot: usize,
    pub(super) stage: usize,
    /// Which of that stage's draws.
    pub(super) draw: usize,
    pub(super) batch: usize,
    pub(super) shots: u32,
    /// Whether the pot is heated for it.
    pub(super) heated: bool,
}

/// Assigns all stages of the day to pots, with fresh base or without.
pub(super) fn assign(workshop: &Workshop<'_>, fresh_base: FreshBase) -> Result<Assigned, At> {
    let Workshop { book, recipes, .. } = workshop;
    let mut compositions = Vec::with_capacity(recipes.len());
    for recipe in *recipes {
        compositions.push(composition(recipe).map_err(|error| (None, error))?);
    }
    let precedence = Precedence::new(&compositions, fresh_base);
    let precedence = precedence.map_err(|error| (None, error.into()))?;
    let cups = book.tools.cups().iter().zip(&book.vessels).map(|(cup, vessel)| split::Cup {
        film: vessel.film,
        heel: vessel.heel,
        capacity: recipes.iter().map(|recipe| Some(workshop.may_hold(cup, recipe))).collect(),
    });
    let cups: Vec<split::Cup> = cups.collect();
    let least: Vec<Mass> = recipes.iter().map(|recipe| workshop.least_pot(recipe)).collect();
    let limits = split::Limits {
        cups: &cups,
        least: &least,
        heats: book.limits.heats,
        loss: Ratio::from(0.0),
        injectors: book.injector.count,
    };
    let (wanted, layers) = wanted(workshop).map_err(|error| (None, error))?;
    let split = split::split(&wanted, &precedence, &limits)
        .map_err(|error| in_words(error, &layers, workshop))?;
    Ok(assigned(split, &layers, &wanted))
}

/// Why there are no pots, in the words of the book and the orders, and the batch that it concerns.
fn in_words(error: SplitError, layers: &[Layer], workshop: &Workshop<'_>) -> At {
    let Workshop { book, recipes, batches, names, .. } = workshop;
    let batch_of = |stage: usize| layers.get(stage).map(|layer| layer.batch);
    let mold = |batch: Option<usize>| {
        let batch = batch.and_then(|batch| batches.get(batch));
        let mold = batch.and_then(|batch| book.molds.get(batch.mold));
        mold.map(|mold| mold.name.clone()).unwrap_or_default()
    };
    let recipe = |stage: usize| {
        let layer = layers.get(stage)?;
        let &(recipe, _) = batches.get(layer.batch)?.layers.get(layer.layer)?;
        Some(recipes.get(recipe)?.formulas.join(" + "))
    };
    let mut cups = book.tools.cups().iter().map(|cup| cup.capacity).enumerate();
    let first = cups.next().unwrap_or_default();
    let largest = cups.fold(first, |most, cup| if cup.1 > most.1 { cup } else { most });
    let cup = names.cup_called(largest.0);
    match error {
        SplitError::ShotTooLarge { stage, shot, room } => {
            let (batch, formulas) = (batch_of(stage), recipe(stage).unwrap_or_default());
            (batch, PotError::ShotOverCup { mold: mold(batch), formulas, shot, room, cup })
        }
        SplitError::LeastOverCapacity { stage, least, capacity: holds } => {
            let formulas = recipe(stage).unwrap_or_default();
            (batch_of(stage), PotError::LeastOverCup { formulas, least, holds, cup })
        }
        // Laminated pieces are numbered by their batches.
        SplitError::TooFewInjectors { laminate, .. } => (Some(laminate), error.into()),
        error => (error.stage().and_then(batch_of), error.into()),
    }
}

fn composition(recipe: &DayRecipe) -> Result<Composition, PotError> {
    let exact = |ingredient: &crate::formula::Ingredient| {
        (ingredient.material.0 as usize, ingredient.exact.clone())
    };
    let base = recipe.recipe.base().iter().map(exact);
    let additives = recipe.recipe.additives().iter().map(exact);
    Ok(Composition::new(base, additives)?)
}

/// The stages to serve: every layer of every batch.
fn wanted(workshop: &Workshop<'_>) -> Result<(Vec<Wanted>, Vec<Layer>), PotError> {
    let Workshop { book, recipes, batches, shots, .. } = workshop;
    let mut wanted = Vec::new();
    let mut layers = Vec::new();
    for (batch, (of, shots)) in batches.iter().zip(*shots).enumerate() {
        let laminate = (of.layers.len() > 1).then_some(batch);
        for (layer, (&(formula, _), takes)) in of.layers.iter().zip(&shots.layers).enumerate() {
            wanted.push(Wanted {
                formula,
                shot: takes.mass.fill,
                returned: workshop.returned(of, takes),
                kept: workshop.kept(takes)?,
                shots: shots.shots,
                laminate,
                key: 0,
            });
            layers.push(Layer { batch, layer });
        }
    }
    let mut order: Vec<(f64, usize, Option<&str>, usize)> = Vec::new();
    for (index, (stage, layer)) in wanted.iter().zip(&layers).enumerate() {
        let batch = batches.get(layer.batch).ok_or(PotError::Lost)?;
        let recipe = recipes.get(stage.formula).ok_or(PotError::Lost)?;
        order.push((colorant(recipe, book)?, batch.mold, batch.promised.as_deref(), index));
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
    Ok((wanted, layers))
}

/// How dark a recipe is: its colorants, mass per mass of base.
fn colorant(recipe: &DayRecipe, book: &Book) -> Result<f64, PotError> {
    recipe.recipe.additives().iter().try_fold(0.0, |sum, additive| {
        let colorant = book.materials.get(additive.material)?.kind == Kind::Colorant;
        Ok(if colorant { sum + additive.ratio } else { sum })
    })
}

fn assigned(split: Split, layers: &[Layer], wanted: &[Wanted]) -> Assigned {
    let mut pots: Vec<PotDraft> = split
        .pots
        .iter()
        .map(|pot| PotDraft {
            stages: pot
                .visits
                .iter()
                .map(|visit| StageDraft {
                    recipe: visit.formula,
                    draws: Vec::with_capacity(visit.draws.len()),
                    heats: visit.heats,
                })
                .collect(),
        })
        .collect();
    // Shots of each stage that come before, in the order of work.
    let mut before = alloc::vec![0_u32; wanted.len()];
    let mut works = Vec::with_capacity(split.work.len());
    for work in &split.work {
        let mut draws = Vec::with_capacity(work.draws.len());
        for draw in &work.draws {
            let (Some(of), Some(before)) = (layers.get(draw.wanted), before.get_mut(draw.wanted))
            else {
                continue;
            };
            let (batch, layer, shots) = (of.batch, of.layer, draw.shots);
            let stage = pots.get_mut(draw.pot).and_then(|pot| pot.stages.get_mut(draw.visit));
            let draft = DrawDraft { batch, layer, shots, before: *before };
            stage.into_iter().for_each(|stage| stage.draws.push(draft));
            *before = before.saturating_add(shots);
            let heated = work.heated.contains(&draw.pot);
            let (pot, stage, draw) = (draw.pot, draw.visit, draw.draw);
            draws.push(WorkDraw { pot, stage, draw, batch, shots, heated });
        }
        if work.laminate.is_some() {
            works.push(draws);
        } else {
            // Shots of several molds from one heat come one after the other.
            for (index, draw) in draws.into_iter().enumerate() {
                works.push(Vec::from([WorkDraw { heated: draw.heated && index == 0, ..draw }]));
            }
        }
    }
    let recipes = wanted.iter().map(|stage| stage.formula).collect();
    Assigned { pots, work: works, proof: split.proof, recipes }
}

impl Assigned {
    /// Takes pot `pot` apart: each of its stages gets a pot of its own. The order of work stays.
    pub(super) fn take_apart(&mut self, pot: usize) {
        let Some(whole) = self.pots.get_mut(pot) else { return };
        let rest = whole.stages.split_off(1.min(whole.stages.len()));
        let first_new = self.pots.len();
        self.pots.extend(rest.into_iter().map(|stage| PotDraft { stages: Vec::from([stage]) }));
        for draw in self.work.iter_mut().flatten().filter(|draw| draw.pot == pot) {
            if let Some(later) = draw.stage.checked_sub(1) {
                draw.pot = first_new.saturating_add(later);
                draw.stage = 0;
            }
        }
        self.proof.found = self.pots.len();
    }

    /// For each draw of a laminated piece the pots that are hot with it: (pot, stage, draw, other pot).
    pub(super) fn companions(&self) -> impl Iterator<Item = (usize, usize, usize, usize)> {
        self.work.iter().flat_map(|work| {
            work.iter().flat_map(move |draw| {
                let others = work.iter().filter(|other| other.pot != draw.pot);
                others.map(|other| (draw.pot, draw.stage, draw.draw, other.pot))
            })
        })
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

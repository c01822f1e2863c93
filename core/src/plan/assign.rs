//! Which recipe is made in which pot: the day's stages put to [`split`](super::split), within what
//! the largest cup, the injectors and the stabilizer allow.
//!
//! Ties go, in this order: fewer heats; light before dark, less colorant counting as lighter; fewer
//! changes of the mold; what was promised earlier; the order of the lines.

use alloc::vec::Vec;

use super::day::{Batch, DayRecipe};
use super::pot::{DrawDraft, PotDraft, PotError, Shots, StageDraft, Workshop};
use super::precedence::{Composition, FreshBase, Precedence};
use super::split::{self, Proof, Split, Wanted};
use crate::book::Book;
use crate::material::Kind;
use crate::quantity::{Mass, Ratio, Volume};

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
    pub(super) batch: usize,
    pub(super) shots: u32,
    /// Whether the pot is heated for it.
    pub(super) heated: bool,
}

/// Assigns all stages of the day to pots of up to `holds`, what the largest cup may be filled to.
pub(super) fn assign(
    workshop: &Workshop<'_>,
    holds: Volume,
    vessel: crate::book::Vessel,
) -> Result<Assigned, PotError> {
    let Workshop { book, recipes, batches, shots, .. } = workshop;
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
    let (wanted, layers) = wanted(batches, shots, recipes, book)?;
    let split = split::split(&wanted, &precedence, &limits)?;
    Ok(assigned(split, &layers, &wanted))
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
fn wanted(
    batches: &[Batch],
    shots: &[Shots],
    recipes: &[DayRecipe],
    book: &Book,
) -> Result<(Vec<Wanted>, Vec<Layer>), PotError> {
    let mut wanted = Vec::new();
    let mut layers = Vec::new();
    for (batch, (of, shots)) in batches.iter().zip(shots).enumerate() {
        let laminate = (of.layers.len() > 1).then_some(batch);
        for (layer, (&(formula, _), takes)) in of.layers.iter().zip(&shots.layers).enumerate() {
            let shot = takes.mass.fill;
            wanted.push(Wanted { formula, shot, shots: shots.shots, laminate, key: 0 });
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
    let draft = |&(stage, shots): &(usize, u32)| {
        layers.get(stage).map(|of| DrawDraft { batch: of.batch, layer: of.layer, shots })
    };
    let pots = split
        .pots
        .iter()
        .map(|pot| PotDraft {
            stages: pot
                .visits
                .iter()
                .map(|visit| StageDraft {
                    recipe: visit.formula,
                    draws: visit.draws.iter().filter_map(draft).collect(),
                    heats: visit.heats,
                })
                .collect(),
        })
        .collect();
    let mut works = Vec::with_capacity(split.work.len());
    for work in &split.work {
        let draws = work.draws.iter().filter_map(|draw| {
            layers.get(draw.wanted).map(|of| WorkDraw {
                pot: draw.pot,
                stage: draw.visit,
                batch: of.batch,
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

    /// The pots that are hot with another for a laminated piece: (pot, batch, other pot), rising.
    pub(super) fn companions(&self) -> Vec<(usize, usize, usize)> {
        let mut companions = Vec::new();
        for work in self.work.iter().filter(|work| work.len() > 1) {
            for draw in work {
                let others = work
                    .iter()
                    .filter(|other| other.batch == draw.batch && other.pot != draw.pot)
                    .map(|other| (draw.pot, draw.batch, other.pot));
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

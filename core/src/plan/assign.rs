//! Which recipe is made in which pot: the day's stages put to [`split`](super::split), within what
//! the cups, the injectors and the stabilizer allow.
//!
//! Ties go, in this order: fewer heats; light before dark, less colorant counting as lighter; fewer
//! changes of the mold; what was promised earlier; the order of the lines.

use alloc::rc::Rc;
use alloc::vec::Vec;

use super::day::{Batch, DayRecipe};
use super::one_or_more::OneOrMore;
use super::pot::{DrawDraft, LayerShots, PotDraft, PotError, Shots, StageDraft, Workshop};
use super::precedence::{Composition, FreshBase, Precedence};
use super::process;
use super::split::{self, Proof, Split, SplitError, Wanted};
use super::there::{Taken, in_order};
use crate::book::Book;
use crate::material::Kind;
use crate::process::clock::Hot;
use crate::quantity::{Mass, Ratio};

/// A layer of a batch: a stage to serve.
#[derive(Debug, Clone, Copy)]
pub(super) struct Layer<'a> {
    pub(super) of: &'a Shots<'a>,
    pub(super) layer: &'a LayerShots<'a>,
    /// Number of shots.
    pub(super) shots: u32,
    /// Shots of the same layer that pots which are there make before.
    pub(super) before: u32,
    /// The laminated piece that it is a layer of, if others of its layers are here too: those with the same number.
    pub(super) piece: Option<usize>,
}

/// The pots of a day, before they are built.
pub(super) struct Assigned<'a> {
    pub(super) pots: Vec<PotDraft<'a>>,
    /// The work, in order.
    pub(super) work: Vec<Vec<WorkDraw<'a>>>,
    /// Why there are not fewer further pots.
    pub(super) proof: Proof,
}

/// Shots of one stage of a pot.
#[derive(Debug, Clone, Copy)]
pub(super) struct WorkDraw<'a> {
    pub(super) pot: usize,
    pub(super) stage: usize,
    /// Which of that stage's draws.
    pub(super) draw: usize,
    /// The layer that it is for, by its place among those of the further pots.
    pub(super) wanted: Option<usize>,
    pub(super) of: &'a Shots<'a>,
    pub(super) shots: u32,
    /// Whether the pot is heated for it.
    pub(super) heated: bool,
}

/// The batch that an error concerns, and the error.
pub(super) type At<'a> = (Option<&'a Batch<'a>>, PotError);

/// Assigns all stages of the day to pots: to those that are there what they have `taken`, the rest to further ones, with
/// fresh base or without.
pub(super) fn assign<'a>(
    workshop: &Workshop<'a>,
    taken: &Taken<'a>,
    fresh_base: FreshBase,
) -> Result<Assigned<'a>, At<'a>> {
    let Workshop { book, recipes, cups, .. } = workshop;
    let mut compositions = Vec::with_capacity(recipes.len());
    for recipe in *recipes {
        compositions.push(composition(recipe).map_err(|error| (None, error))?);
    }
    // The formulas are compared in pairs, 64 at a time.
    let pairs = compositions.len().saturating_mul(compositions.len()) >> 6;
    workshop.budget.charge(pairs).map_err(|error| (None, SplitError::from(error).into()))?;
    let precedence = Precedence::new(&compositions, fresh_base);
    let precedence = precedence.map_err(|error| (None, error.into()))?;
    let cups = cups.iter().map(|cup| split::Cup {
        film: cup.vessel.film,
        heel: cup.vessel.heel,
        capacity: recipes.iter().map(|recipe| Some(workshop.may_hold(cup, recipe))).collect(),
    });
    let cups: Vec<split::Cup> = cups.collect();
    let least: Vec<Mass> = recipes.iter().map(|recipe| workshop.least_pot(recipe)).collect();
    let hot: Vec<Option<Hot>> =
        recipes.iter().map(|recipe| process::hot(book, recipe).ok()).collect();
    let limits = split::Limits {
        cups: &cups,
        least: &least,
        heats: book.limits.heats,
        hot: &hot,
        loss: Ratio::from(0.0),
        injectors: book.injector.count,
    };
    let layers = &taken.rest;
    let wanted = wanted(layers, workshop).map_err(|error| (None, error))?;
    let split = split::split_within(&wanted, &precedence, &limits, workshop.budget)
        .map_err(|error| in_words(error, layers, workshop))?;
    let further = assigned(split, layers, recipes);
    let Assigned { pots, work, proof } = further.after(taken.pots.len());
    let (work, there) = in_order(taken, work).map_err(|pot| {
        let draft = taken.pots.get(pot);
        let pot = draft.and_then(|draft| draft.there).map(|there| there.pot.clone());
        let error = PotError::OutOfOrder { pot: pot.unwrap_or_default() };
        (draft.and_then(PotDraft::batch), error)
    })?;
    Ok(Assigned { pots: there.into_iter().chain(pots).collect(), work, proof })
}

/// Why there are no pots, in the words of the book and the orders, and the batch concerned.
fn in_words<'a>(error: SplitError, layers: &[Layer<'a>], workshop: &Workshop<'a>) -> At<'a> {
    let stage = match error {
        // Laminated pieces are numbered by their batches.
        SplitError::TooFewInjectors { laminate, .. } => {
            layers.iter().find(|layer| layer.piece == Some(laminate))
        }
        _ => error.stage().and_then(|stage| layers.get(stage)),
    };
    let capacity = |cup: &&super::layout::PotCup| cup.cup.capacity;
    let largest = workshop
        .cups
        .iter()
        .reduce(|most, cup| if capacity(&cup) > capacity(&most) { cup } else { most });
    let (Some(Layer { of, layer, .. }), Some(largest)) = (stage, largest) else {
        return (stage.map(|stage| stage.of.batch), error.into());
    };
    let (mold, formulas) = (of.batch.mold.name.clone(), layer.recipe.name());
    let cup = workshop.names.cup(largest.number).into();
    let error = match error {
        SplitError::ShotTooLarge { shot, room, .. } => {
            PotError::ShotOverCup { mold, formulas, shot, room, cup }
        }
        SplitError::ShotTooLong { every, hot, .. } => {
            PotError::ShotTooLong { mold, formulas, every, hot }
        }
        SplitError::LeastOverCapacity { least, capacity: holds, .. } => {
            PotError::LeastOverCup { formulas, least, holds, cup }
        }
        error => error.into(),
    };
    (Some(of.batch), error)
}

fn composition(recipe: &DayRecipe<'_>) -> Result<Composition, PotError> {
    let exact = |ingredient: &crate::formula::Ingredient| {
        (ingredient.material.0 as usize, ingredient.exact.clone())
    };
    let base = recipe.recipe.base().iter().map(exact);
    let additives = recipe.recipe.additives().iter().map(exact);
    Ok(Composition::new(base, additives)?)
}

/// The stages to serve, for [`split`](super::split).
fn wanted(layers: &[Layer<'_>], workshop: &Workshop<'_>) -> Result<Vec<Wanted>, PotError> {
    let mut wanted = Vec::with_capacity(layers.len());
    let mut order: Vec<(f64, usize, Option<&str>, usize)> = Vec::with_capacity(layers.len());
    for (index, Layer { of, layer, shots, piece, .. }) in layers.iter().enumerate() {
        let batch = of.batch;
        wanted.push(Wanted {
            formula: layer.recipe.number,
            shot: layer.mass.fill,
            returned: workshop.returned(batch, layer),
            kept: workshop.kept(layer)?,
            shots: *shots,
            laminate: *piece,
            every: process::every(workshop.book, batch.mold, layer.recipe.window, of.fill()).ok(),
            key: 0,
        });
        order.push((
            colorant(layer.recipe, workshop.book)?,
            batch.mold_number,
            batch.promised,
            index,
        ));
    }
    // Orders without a promised day come last.
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

/// Darkness of a recipe: its colorants, mass per mass of base.
fn colorant(recipe: &DayRecipe<'_>, book: &Book) -> Result<f64, PotError> {
    recipe.recipe.additives().iter().try_fold(0.0, |sum, additive| {
        let colorant = book.materials.get(additive.material)?.kind == Kind::Colorant;
        Ok(if colorant { sum + additive.ratio } else { sum })
    })
}

/// The pots of `split`, which counts the stages to serve and the recipes as they are given here.
fn assigned<'a>(
    split: Split,
    layers: &[Layer<'a>],
    recipes: &'a [Rc<DayRecipe<'a>>],
) -> Assigned<'a> {
    // Shots of each stage that come before, in the order of work, which is that of each visit's draws.
    let mut before: Vec<u32> = layers.iter().map(|layer| layer.before).collect();
    let mut drafts: Vec<Vec<Vec<DrawDraft<'a>>>> = Vec::with_capacity(split.pots.len());
    for pot in &split.pots {
        let visit = |visit: &split::Visit| Vec::with_capacity(visit.draws.len());
        drafts.push(pot.visits.iter().map(visit).collect());
    }
    for draw in split.work.iter().flat_map(|work| &work.draws) {
        let visit = drafts.get_mut(draw.pot).and_then(|visits| visits.get_mut(draw.visit));
        let (Some(visit), Some(&Layer { of, layer, .. }), Some(before)) =
            (visit, layers.get(draw.wanted), before.get_mut(draw.wanted))
        else {
            continue;
        };
        visit.push(DrawDraft { of, layer, shots: draw.shots, before: *before });
        *before = before.saturating_add(draw.shots);
    }
    let stage = |(visit, draws): (&split::Visit, Vec<DrawDraft<'a>>)| {
        let recipe = recipes.get(visit.formula)?;
        Some(StageDraft { recipe, draws, heats: visit.heats })
    };
    let pots = split.pots.iter().zip(drafts).filter_map(|(pot, draws)| {
        let stages = pot.visits.iter().zip(draws).filter_map(stage);
        OneOrMore::of(stages).map(|stages| PotDraft { stages, there: None })
    });
    let pots = pots.collect();
    let mut works = Vec::with_capacity(split.work.len());
    for work in &split.work {
        let draws = work.draws.iter().filter_map(|draw| {
            layers.get(draw.wanted).map(|of| WorkDraw {
                pot: draw.pot,
                stage: draw.visit,
                draw: draw.draw,
                wanted: Some(draw.wanted),
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
    Assigned { pots, work: works, proof: split.proof }
}

impl Assigned<'_> {
    /// Counts the pots on from `pots` others.
    fn after(mut self, pots: usize) -> Self {
        for draw in self.work.iter_mut().flatten() {
            draw.pot = draw.pot.saturating_add(pots);
        }
        self
    }

    /// Takes pot `pot` apart: each of its stages gets a pot of its own. The order of work stays.
    pub(super) fn take_apart(&mut self, pot: usize) {
        let Some(whole) = self.pots.get_mut(pot) else { return };
        let later = core::mem::take(&mut whole.stages.later);
        let first_new = self.pots.len();
        let alone =
            |first| PotDraft { stages: OneOrMore { first, later: Vec::new() }, there: None };
        self.pots.extend(later.into_iter().map(alone));
        for draw in self.work.iter_mut().flatten().filter(|draw| draw.pot == pot) {
            if let Some(later) = draw.stage.checked_sub(1) {
                draw.pot = first_new.saturating_add(later);
                draw.stage = 0;
            }
        }
        let further = self.pots.iter().filter(|pot| pot.there.is_none());
        self.proof.found = further.count();
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

    /// Numbers the pots in this `order`.
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

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::{String, ToString};

    use serde_json::{Value, json};

    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;

    /// Path, code and message of the only fault of a plan.
    fn fault(book: &crate::book::Book, day: &crate::plan::day::Day) -> (String, String, String) {
        let faults = Plan::make(book, day).unwrap_err();
        let fault = faults.iter().next().unwrap();
        assert_eq!(faults.count(), 1, "{faults}");
        (fault.path.to_string(), fault.code.to_string(), fault.message.to_string())
    }

    // Two cavities of 290 mL and a sprue of 6 mL, from cups of 237 and 473 mL.
    #[test]
    fn a_shot_that_no_cup_holds_is_compared_with_the_largest() {
        for cups in [["1 cup", "2 cup"], ["2 cup", "1 cup"]] {
            let mut book: Value = serde_json::from_str(BOOK).unwrap();
            book["molds"]["worm"]["cavity"] = json!("290 mL");
            book["molds"]["worm"]["cavities"] = json!(2);
            book["bench"]["cups"] =
                json!(cups.map(|holds| json!({ "holds": holds, "marks": "1/4 cup" })));
            book["bench"]["injector"]["holds"] = json!("45 fl oz");
            let book = book_from_text(&book.to_string()).unwrap();
            let line = r#"{ "order": "1", "mold": "worm", "formulas": ["body"], "pieces": 3 }"#;
            let day = orders_from_text(&orders(line), &book).unwrap();
            let (path, _, message) = fault(&book, &day);
            assert_eq!(path, "/lines/0");
            assert!(message.contains("2-cup") && !message.contains("1-cup"), "{message}");
        }
    }

    // The lines were read with a book of two injectors.
    #[test]
    fn a_piece_of_more_layers_than_injectors_is_refused_at_its_line() {
        let mut book = book_from_text(BOOK).unwrap();
        let lines = r#"{ "order": "1", "product": "sky worm", "pieces": 3 },
            { "order": "2", "product": "two", "pieces": 3 }"#;
        let day = orders_from_text(&orders(lines), &book).unwrap();
        book.injector.count = 1;
        let (path, code, _) = fault(&book, &day);
        assert_eq!((&*path, &*code), ("/lines/1", "split-too-few-injectors"));
    }
}

//! Plans that versions before 0.2 stored: which order lines their shots are for.
//!
//! Such a plan has no `pooled_with` in its lines, no `line` and `layer` in its draws. All of it follows from the orders: lines
//! are pooled by mold and layers, and a draw has its mold, its formulas, its share of the cavity and its pots.

use alloc::string::String;
use alloc::vec::Vec;

use super::day::{Batch, BatchLayer, Day, KnownRecipes, pool};
use super::{Draw, Plan, PlannedLine};
use crate::book::Book;

/// Far below the smallest difference of two shares of a cavity.
const SAME_SHARE: f64 = 1e-9;

/// Whether each of its lines and draws states what it belongs to.
pub(crate) fn is_complete(plan: &Plan) -> bool {
    let draws = plan.pots.iter().flat_map(|pot| &pot.stages).flat_map(|stage| &stage.draws);
    plan.lines.iter().all(|line| line.pooled_with.is_some())
        && draws.into_iter().all(|draw| draw.line.is_some() && draw.layer.is_some())
}

/// States what lines and draws belong to, from the orders that the plan was made from. A draw that fits none stays as it is.
pub(crate) fn complete(plan: &mut Plan, book: &Book, day: &Day) {
    let batches = pool(book, KnownRecipes::NONE, day, &mut Vec::new()).batches;
    for batch in &batches {
        for line in &batch.lines {
            if let Some(planned) = plan.lines.get_mut(line.number) {
                planned.pooled_with = Some(batch.first_line());
            }
        }
    }
    for pot in &mut plan.pots {
        for stage in &mut pot.stages {
            // Two draws of a stage are not for the same layer of the same pieces.
            let mut taken = Vec::new();
            for draw in &mut stage.draws {
                let layers = batches.iter().flat_map(|batch| {
                    (1_u32..).zip(&batch.layers).map(move |(number, layer)| (batch, number, layer))
                });
                let found = layers.filter(|(batch, _, layer)| {
                    is_shot(draw, &pot.pot, &plan.lines, batch)
                        && is_of(draw, &stage.formulas, layer)
                });
                let mut found = found.map(|(batch, number, _)| (batch.first_line(), number));
                if let Some(place) = found.find(|place| !taken.contains(place)) {
                    taken.push(place);
                    (draw.line, draw.layer) = (Some(place.0), Some(place.1));
                }
            }
        }
    }
}

/// Whether the draw of `pot` can be for the pieces of the batch: by its mold, and by the pots that its lines are shot from.
fn is_shot(draw: &Draw, pot: &String, lines: &[PlannedLine], batch: &Batch<'_>) -> bool {
    let first = batch.lines.first().and_then(|line| lines.get(line.number));
    draw.mold == batch.mold.name
        && first.is_some_and(|line| {
            line.pots.contains(pot) && draw.together_with.iter().all(|pot| line.pots.contains(pot))
        })
}

/// Whether the draw can be for that layer: by its formulas and its share of the cavity.
fn is_of(draw: &Draw, formulas: &[String], layer: &BatchLayer<'_>) -> bool {
    let own = layer.recipe.formulas.iter().map(|formula| &formula.name);
    own.eq(formulas) && (draw.share.quantity.value - layer.share).abs() < SAME_SHARE
}

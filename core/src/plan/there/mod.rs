//! Pots that are there when a day is planned again: hot or set, begun by plan or by eye.
//!
//! What is in such a pot is its first stage, of which nothing is shot; its further stages follow by adding only, as in any
//! pot (`sequence`). Base goes in only if the book allows fresh base, or if the pot was never heated.
//! A material that is over a formula by no more than its tolerance counts as kept by it; in a pot that a person has accepted as
//! it is, every material in it does.
//!
//! First each pot gets the shots that an earlier plan had for it, as many as what is in it still gives. Then those that
//! may take more do, hot ones first, each time the one that is nearest to the formula (least mass to add per base). All
//! else is planned as on any day, in further pots. This is a heuristic, and only the further pots are proven to be the
//! fewest for what is left to them.

mod build;
mod order;
mod take;
#[cfg(all(test, feature = "document"))]
mod tests;

use alloc::string::String;
use alloc::vec::Vec;

use super::day::Batch;
use super::shelf::Leftover;

/// A pot that is there.
#[derive(Debug, Clone, PartialEq)]
pub struct PotThere {
    /// Its letter.
    pub pot: String,
    /// Its id in the plan before; `None` if it was in none.
    pub id: Option<String>,
    /// Its cup, by its place among those of the bench; `None` for the smallest that holds it.
    pub cup: Option<usize>,
    /// The mix in it, none if it is not begun, with what it has been through.
    pub contents: Leftover,
    /// Whether it is hot.
    pub hot: bool,
    /// Whether it has been degassed.
    pub degassed: bool,
    /// Shots that the plan before had for it, in their order.
    pub draws: Vec<DrawThere>,
    /// Whether it may take other shots.
    pub takes_more: bool,
    /// Whether its mix counts as its formulas, however far off it is.
    pub accepted: bool,
}

/// Shots that an earlier plan had for a pot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct DrawThere {
    /// The place of an order line that they are for.
    pub line: usize,
    /// The layer of its pieces that they make.
    pub layer: usize,
    /// Their number.
    pub shots: u32,
}

impl PotThere {
    /// Whether there is something in it.
    #[must_use]
    pub fn is_begun(&self) -> bool {
        self.contents.mix.mass().value > 0.0
    }

    /// Whether it was heated before.
    #[must_use]
    pub fn was_heated(&self) -> bool {
        self.hot || self.contents.heats.is_none_or(|heats| heats > 0)
    }

    /// Whether it must still be degassed.
    #[must_use]
    pub fn is_to_degas(&self) -> bool {
        !self.degassed && !self.was_heated()
    }
}

/// Shots of a batch that pots which take no others keep, whatever its lines would need: those of the layer that has most.
pub(in crate::plan) fn kept_shots(pots: &[PotThere], batch: &Batch<'_>) -> u32 {
    let is_its = |draw: &&DrawThere| batch.lines.iter().any(|line| line.number == draw.line);
    let of_layer = |layer: usize| {
        let draws = pots.iter().filter(|pot| !pot.takes_more).flat_map(|pot| &pot.draws);
        let own = draws.filter(is_its).filter(|draw| draw.layer == layer);
        own.fold(0_u32, |sum, draw| sum.saturating_add(draw.shots))
    };
    (0..batch.layers.len()).map(of_layer).max().unwrap_or(0)
}

pub(in crate::plan) use self::order::in_order;
pub(in crate::plan) use self::take::Taken;

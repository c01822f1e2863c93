//! The leftovers of a shop.
//!
//! As much of the shelf as possible goes into the day's pots: see [`Pot::from_shelf`](super::Pot::from_shelf) and
//! [`Plan::shelf`](super::Plan::shelf).

use alloc::string::String;

use crate::mix::Mix;
use crate::quantity::Time;

pub use super::layout::ShelfError;

/// A leftover on the shelf.
#[derive(Debug, Clone, PartialEq)]
pub struct Leftover {
    /// Name written on it.
    pub name: String,
    /// The mix in it, all of it.
    pub mix: Mix,
    /// Heats that it has spent; `None` if not known; a book that limits heats requires them.
    pub heats: Option<u32>,
    /// Time that they spent, at the reference temperature of its plastisol's budget; `None` if not known.
    pub spent: Option<Time>,
    /// The day it was made, as YYYY-MM-DD.
    pub made: Option<String>,
    /// Data of the embedding program on it.
    #[cfg(feature = "document")]
    pub ext: Option<serde_json::Map<String, serde_json::Value>>,
}

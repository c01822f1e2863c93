//! The leftovers of a shop.
//!
//! With the feature `solver` as much of the shelf as may be goes into the day's pots: see
//! [`Pot::from_shelf`](super::Pot::from_shelf) and
//! [`Plan::shelf`](super::Plan::shelf).

use alloc::string::String;

use crate::mix::Mix;
use crate::quantity::Time;

#[cfg(feature = "solver")]
pub use super::layout::ShelfError;

/// A leftover on the shelf.
#[derive(Debug, Clone, PartialEq)]
pub struct LeftOver {
    /// What is written on it.
    pub name: String,
    /// What is in it, all of it.
    pub mix: Mix,
    /// Heats that it has spent; `None` where that is not known, which a book that limits heats does not allow.
    pub heats: Option<u32>,
    /// What they spent, as time at the reference temperature of its plastisol's budget; `None` where that is
    /// not known.
    pub spent: Option<Time>,
    /// The day it was made, as YYYY-MM-DD.
    pub made: Option<String>,
    /// What the embedding program keeps with it.
    #[cfg(feature = "document")]
    pub ext: Option<serde_json::Map<String, serde_json::Value>>,
}

//! The left-over mixes of a shop, and what a build without a solver says of them.
//!
//! With the feature `solver` as much of the shelf as may be goes into the day's pots: see
//! [`Pot::from_shelf`](super::Pot::from_shelf) and
//! [`Plan::shelf`](super::Plan::shelf).

use alloc::string::String;
#[cfg(not(feature = "solver"))]
use alloc::string::ToString;

#[cfg(not(feature = "solver"))]
use crate::fault::{Fault, Faults};
use crate::mix::Mix;
use crate::quantity::Time;

#[cfg(feature = "solver")]
pub use super::share::ShelfError;

/// A left-over mix on the shelf.
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

#[cfg(not(feature = "solver"))]
impl super::Plan {
    /// Refuses a shelf: this build cannot say what to do with it.
    pub(super) fn use_shelf(
        &mut self,
        _: &crate::book::Book,
        shelf: &[LeftOver],
    ) -> Result<(), Faults> {
        if shelf.is_empty() {
            return Ok(());
        }
        Err(Faults::from(Fault {
            code: "solver-left-out".into(),
            path: "/shelf".to_string(),
            message: "This build of the library has no solver to share left-overs out.".to_string(),
            help: "Leave \"shelf\" out, or use a build with the feature \"solver\".".to_string(),
        }))
    }
}

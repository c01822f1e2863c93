//! The shelf in a build without a solver.

use alloc::string::ToString;

use super::Layout;
use crate::fault::{Fault, Faults};
use crate::plan::pot::Workshop;
use crate::plan::shelf::Leftover;

impl<'a> Layout<'a> {
    /// Refuses a shelf: this build cannot say what to do with it.
    pub(in crate::plan) fn use_shelf(
        &mut self,
        _: &Workshop<'a>,
        shelf: &'a [Leftover],
    ) -> Result<(), Faults> {
        if shelf.is_empty() {
            return Ok(());
        }
        Err(Faults::from(Fault {
            code: "solver-left-out".into(),
            path: "/shelf".to_string(),
            message: "This build of the library has no solver to share out leftovers.".to_string(),
            help: "Leave \"shelf\" out, or use a build with the feature \"solver\".".to_string(),
        }))
    }
}

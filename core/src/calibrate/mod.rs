//! From repeated weighings to a number of the shop's own, with its uncertainty.
//!
//! - [`Weighed`]: a cavity's volume or the feed share, from pieces.
//! - [`PerOne`]: one drop of a bottle, or the mass of a level spoonful, and so the density as scooped.
//! - [`Residue`]: the residue in an injector each time it is emptied.
//!
//! A weight that is far out is questioned by a published test ([`Questioned`]) and never dropped: whoever
//! weighed it knows whether the piece was short or the count wrong. An oven is calibrated by
//! [`Oven::from_timings`](crate::process::heat::Oven::from_timings).

mod counted;
mod error;
pub(crate) mod outlier;
mod residue;
mod weighed;

pub use counted::{Counted, PerOne};
pub use error::CalibrateError;
pub use outlier::{Questioned, Verdict, grubbs_critical};
pub use residue::{Emptied, Residue};
pub use weighed::{CalibratedCavity, FeedShare, Unsure, Weighed};

use crate::parameter::{Check, Parameter};
use crate::quantity::Mass;

/// Checks the readability of a balance, which is 0 where rounding plays no part.
fn check_readability(readability: Mass, check: &mut Check) {
    if readability.value != 0.0 {
        check.number(Parameter::BalanceReadability, readability.value);
    }
}

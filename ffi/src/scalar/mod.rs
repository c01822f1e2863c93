//! Scalar calls: plain numbers in, plain numbers out.

mod batch;
mod bench;
mod convert;
mod degas;
mod density;
mod dose;
mod flake;
mod salt;
mod shot;
mod sink;
mod softener;
mod water;

pub use batch::*;
pub use bench::*;
pub use convert::*;
pub use degas::*;
pub use density::*;
pub use dose::*;
pub use flake::*;
pub use salt::*;
pub use shot::*;
pub use sink::*;
pub use softener::*;
pub use water::*;

use crate::error::Failure;
use crate::range::Range;

/// The number that the parameter `name` is: zero or above, and believable.
pub(crate) fn not_negative(name: &str, number: f64) -> Result<f64, Failure> {
    BELIEVABLE.check(name, number)
}

/// Whether it is zero or above, and no slip of units.
#[inline]
pub(crate) fn believable(number: f64) -> bool {
    BELIEVABLE.holds(number)
}

const BELIEVABLE: Range = Range::Within(0.0, 1e15);

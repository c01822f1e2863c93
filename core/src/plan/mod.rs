//! A day's pots: which formulas share one, how much each holds, what it can become.

mod bits;
pub mod correction;
pub mod cover;
#[cfg(feature = "solver")]
pub mod leftover;
pub mod order;
pub mod precedence;
pub mod sequence;
pub mod split;

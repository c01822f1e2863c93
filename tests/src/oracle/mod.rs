//! Exhaustive search for small cases, and exact fractions.

pub mod chains;
pub mod day;
pub mod documents;
pub mod linear;
pub mod pot;

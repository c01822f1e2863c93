//! Exhaustive search for small cases.

pub mod chains;
pub mod day;
pub mod documents;
pub mod pot;

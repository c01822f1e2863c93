//! Pots, chains and sequences against exhaustive search and a general-purpose solver.

mod chains;
mod day;
mod plan;
mod sequence;
mod traps;

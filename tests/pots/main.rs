//! Pots, chains, sequences and leftovers against exhaustive search and a general-purpose solver.

mod chains;
mod day;
mod leftover;
mod linear;
mod plan;
mod sequence;
mod traps;

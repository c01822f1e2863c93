//! From masses to what a person does at the bench.

pub mod measures;

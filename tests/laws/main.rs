//! The library against the readable second implementation, on random inputs.

mod batch;
mod mix;
mod process;
mod salt;
mod shot;
mod units;

//! Plain `f64` in grams, milliliters and degrees Celsius; each function one equation as a textbook has it.

pub mod batch;
pub mod mix;
pub mod process;
pub mod salt;
pub mod shot;

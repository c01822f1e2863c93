//! Plain `f64` in grams, milliliters and degrees Celsius; each function one equation as a textbook has it.

pub mod amount;
pub mod batch;
pub mod clock;
pub mod cost;
pub mod mix;
pub mod plan;
pub mod process;
pub mod salt;
pub mod shop;
pub mod shot;

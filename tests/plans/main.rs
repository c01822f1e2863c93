//! Plans against a checker that recomputes them from the book and the orders.

mod corrupted;
mod cost;
mod demo;
mod growth;
mod pots;
mod random;
mod scales;
mod sheet;
mod steps;

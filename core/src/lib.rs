//! Recipe-formula maths for workshops that pour soft plastic in small batches.
//!
//! Data flow one way through the modules: text → amount → mass → mix → calculation → plan → sheet.

#![no_std]
#![forbid(unsafe_code)]
#![deny(missing_docs)]
// Nothing panics on input, through any door: a caught panic costs a C host its state and a
// trap costs a WebAssembly host its instance, so what could panic is not written.
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,   // a missing value is an error with a name
        clippy::expect_used,   // likewise
        clippy::indexing_slicing, // an index from input may be out of range: use get
        clippy::string_slice,  // a byte offset may fall inside a character
        clippy::panic,         // says itself
        clippy::unreachable,   // what the types cannot exclude is an error
        clippy::integer_division_remainder_used, // a zero divisor panics: use checked_div, checked_rem
    )
)]
#![deny(clippy::disallowed_methods)] // see clippy.toml: the same bits on every target

extern crate alloc;
// The solver's library needs std.
#[cfg(any(test, feature = "solver"))]
extern crate std;

pub mod batch;
pub mod bench;
pub mod book;
pub mod calibrate;
pub mod caution;
pub mod color;
pub mod cost;
pub mod density;
#[cfg(feature = "document")]
pub mod document;
pub mod fault;
pub mod flake;
pub mod formula;
#[cfg(feature = "document")]
pub mod json;
pub mod material;
pub mod mix;
pub mod parameter;
pub mod plan;
pub mod price;
pub mod process;
pub mod quantity;
pub mod record;
#[cfg(feature = "document")]
pub mod request;
pub mod salt;
#[cfg(feature = "schema")]
pub mod schema;
pub mod shot;
pub mod show;
pub mod softener;
#[cfg(feature = "table")]
pub mod table;
pub mod uncertainty;
pub mod water;

mod check;
mod exact;
mod monotone;
mod nnls;
mod words;

pub use fault::{Diagnose, Fault, Faults};
pub use uom;

/// The Rust examples of the README, kept compiling.
#[cfg(all(doctest, feature = "document"))]
#[doc = include_str!("../../README.md")]
struct Readme;

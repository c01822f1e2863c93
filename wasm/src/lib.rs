//! pourwright for browsers, bundlers and Node: what `bindings/js` wraps.
//!
//! All calculations of the core's table go through one export, [`Table`]: plain numbers in the units of their parameters.
//! Documents cross as JSON text, which JavaScript and the core read and write exactly. A refused call throws a
//! `PourwrightError`. Without the feature `document` there are plain numbers only.

// A trap makes the instance unusable.
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::indexing_slicing,
        clippy::string_slice,
        clippy::panic,
        clippy::unreachable,
        clippy::integer_division_remainder_used
    )
)]

#[cfg(feature = "document")]
mod document;
mod name;
mod refused;
mod table;

#[cfg(feature = "document")]
pub use document::{Book, Plan, calculate};
pub use table::Table;

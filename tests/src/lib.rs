//! The readable second implementation: the library's maths once more in plain `f64`, without cleverness.
//!
//! Slow and short on purpose. Nothing in [`mod@reference`] calls the library; the tests compare the two.

pub mod chance;
pub mod demo;
pub mod generate;
pub mod oracle;
pub mod quote;
pub mod reference;
pub mod small;
pub mod split_mix;

/// The Rust examples of the repository's README, kept compiling.
#[cfg(doctest)]
#[doc = include_str!("../../README.md")]
struct Readme;
pub mod usual;

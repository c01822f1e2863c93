//! Longer documentation: recipes with tested examples, the fields of documents, limits, and why things are as they are.
//!
//! - [`recipes`]: how to do common jobs, from one amount to a day's record
//! - [`fields`]: every field of a book, an order list and the actuals of a day
//! - [`calculations`]: every calculation on plain numbers, with parameters, units, ranges and defaults
//! - [`limits`]: what the library assumes, and what it does not do
//! - [`design`]: why the decisions are as they are
//! - [`compare`]: how it compares with spreadsheets, unit libraries and general solvers

#[doc = include_str!("recipes.md")]
#[cfg(feature = "document")]
pub mod recipes {}

#[doc = include_str!("../../schema/FIELDS.md")]
pub mod fields {}

#[doc = include_str!("../../CALCULATIONS.md")]
pub mod calculations {}

#[doc = include_str!("limits.md")]
pub mod limits {}

#[doc = include_str!("design.md")]
pub mod design {}

#[doc = include_str!("compare.md")]
pub mod compare {}

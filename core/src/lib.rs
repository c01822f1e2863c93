//! Batch math for workshops that pour soft-plastic fishing lures to order, to put inside the order sheet, the stock program
//! or the web page that the shop already has.
//!
//! An order says shape, color, how many. From the shop's own book (materials, formulas, molds, tools) this crate calculates
//! how much plastisol to measure for the pieces ordered, every additive for that amount in the measures of the bench, what salt
//! does to a piece, which pots to mix, and when to shoot what.
//!
//! - [Recipes](docs::recipes): common jobs, each with a tested example
//! - [Fields](docs::fields) of a book, an order list and the actuals of a day
//! - [Calculations](docs::calculations) on plain numbers: parameters, units, ranges, defaults
//! - [Limits](docs::limits), [design](docs::design), [comparison](docs::compare) with other ways to get the numbers
//!
//! # Three programs
//!
//! A number, with typed quantities: the salt that brings a cup of base to 1.12 g/mL.
//!
//! ```
//! use pourwright::quantity::{Amount, Mass, MassDensity, System::UsCustomary, Volume};
//! use pourwright::salt::{Salt, SaltLoading, Unsalted};
//! use pourwright::uom::si::mass::gram;
//!
//! let base: Volume = Amount::parse("1 cup")?.to(UsCustomary)?;
//! let density = |text| -> Result<MassDensity, _> { Amount::parse(text)?.to(UsCustomary) };
//! let mix = Unsalted::of_base(base, density("1.03 g/mL")?, Salt::of_density(density("2.165 g/mL")?)?);
//! let salt: Mass = mix.salt_mass(SaltLoading::FinishedDensity(density("1.12 g/mL")?))?;
//! assert_eq!(format!("{:.1} g", salt.get::<gram>()), "44.1 g");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```
//!
//! A request, which is what every door speaks: the grams of a quarter cup of fine salt.
//!
//! ```
//! # #[cfg(feature = "document")] {
//! let answer = pourwright::request::answer_text(r#"{
//!     "calculate": "dose",
//!     "material": { "kind": "salt", "as_scooped": "1.22 g/mL" },
//!     "amount": "1/4 cup"
//! }"#);
//! assert!(answer.contains(r#""mass":{"text":"72.2 g""#), "{answer}");
//! # }
//! ```
//!
//! A day, from the texts of a book and an order list to the sheet for the bench.
//!
//! ```
//! # #[cfg(feature = "document")] {
//! use pourwright::document::LoadedBook;
//!
//! # let book = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/demo/book.json"));
//! # let orders = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/demo/orders.json"));
//! let book = LoadedBook::from_text(book)?;
//! let plan = book.plan_text(orders)?;
//! println!("{}", plan.sheet());
//! # }
//! # Ok::<(), pourwright::Faults>(())
//! ```
//!
//! # What it supports
//!
//! - Amounts as people write them, in four measuring systems, exactly; what can be read two ways is refused with both readings
//! - Doses by volume, mass, drops and per cent, of base or of the finished mix; formulas that combine
//! - Shots, pieces, injector loads, rejects, losses, cup marks; pots that serve several products by adding only
//! - Salt stated in any of seven ways, and by sink rate; softener between the shop's own measured points; flakes by count
//! - Vacuum, heating times, heat budgets, sink rates; color differences and a first formula for a color
//! - Costs, stock, leftovers, mispours, the day's record; calibration from weighings; uncertainty by source
//! - Faults that come all together, each with a code, a place, and what would fix it
//! - The same bits in Rust, C, C++, Python, JavaScript and the browser
//!
//! # What it does not
//!
//! - Take orders, keep stock over days, or know colors: it is the part that your program calls
//! - State a safe limit that its inputs do not give: the supplier's safety data sheet comes first
//! - Guess: what the book does not say stays unknown, and an answer that needs it names it
//! - More in [limits](docs::limits)
//!
//! # Features
//!
//! | feature | default | adds | needs |
//! | --- | --- | --- | --- |
//! | `document` | yes | books, orders, plans and requests as JSON | `serde`, `serde_json` |
//! | `table` | yes | the calculations by name and on plain numbers, for doors to other languages | |
//! | `table-texts` | yes | their texts and examples | `table` |
//! | `cli` | no | the command line `pourwright` | `std`, `clap` |
//! | `schema` | no | JSON Schemas of the documents | `document`, `schemars` |
//!
//! Without features, the crate has the typed calculations. All of it is `no_std` with `alloc`.
//!
//! # Modules
//!
//! Data flow one way: text → amount → mass → mix → calculation → plan → sheet.
//!
//! | | |
//! | --- | --- |
//! | [`quantity`] | amounts, exact units, measuring systems, measured values; the `uom` types |
//! | [`material`], [`price`], [`formula`], [`mix`], [`density`] | what is in a pot, and how much of it |
//! | [`salt`], [`softener`], [`shot`], [`batch`], [`flake`], [`water`], [`calibrate`], [`cost`] | calculations |
//! | [`process`] | air pressure, vacuum, heat, heat budgets, the sink rate of a piece |
//! | [`color`] | CIE colors, their difference, a first formula |
//! | [`uncertainty`] | how sure a result is, and which source makes it unsure |
//! | [`mod@bench`] | a mass as the tools on the bench can measure it |
//! | [`trouble`] | bench troubles and what helps |
//! | [`trial`] | a color found by eye: additions as they are made, and the formula that they come to |
//! | [`book`], [`plan`], [`record`] | a shop's book ready for planning; the day's pots, steps and sheet; what was really made |
//! | [`plausible`] | bounds of the numbers of a book: what cannot be, and what looks like a slip |
//! | [`learn`] | what the records of many days say about the numbers of a book |
//! | [`document`], [`json`] | books, orders and plans as JSON |
//! | [`request`] | every calculation as one request and one answer |
//! | [`table`] | every scalar calculation by name, and on plain numbers |
//! | [`fault`], [`caution`], [`parameter`], [`show`] | what all doors share: faults, cautions, parameter texts, quantities as shown |

#![no_std]
#![forbid(unsafe_code)]
#![deny(missing_docs)]
// Nothing panics on input, through any door: a caught panic costs a C host its state and a
// trap costs a WebAssembly host its instance, so what could panic is not written.
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,   // a missing value is an error with a name
        clippy::expect_used,   // the same
        clippy::indexing_slicing, // an index from input may be out of range: use get
        clippy::string_slice,  // a byte offset may fall inside a character
        clippy::panic,         // says itself
        clippy::unreachable,   // what the types cannot exclude is an error
        clippy::integer_division_remainder_used, // a zero divisor panics: use checked_div, checked_rem
    )
)]
#![deny(clippy::disallowed_methods)] // see clippy.toml: the same bits on every target

extern crate alloc;
#[cfg(test)]
extern crate std;

pub mod batch;
pub mod bench;
pub mod book;
pub mod calibrate;
pub mod caution;
#[doc(hidden)]
pub mod codes;
pub mod color;
pub mod cost;
pub mod density;
#[cfg(feature = "document")]
pub mod document;
pub mod fault;
pub mod flake;
pub mod formula;
#[cfg(feature = "document")]
pub mod go_on;
#[cfg(feature = "document")]
pub mod json;
pub mod learn;
pub mod material;
pub mod mix;
pub mod parameter;
pub mod plan;
#[cfg(feature = "document")]
pub mod plausible;
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
pub mod trial;
pub mod trouble;
pub mod uncertainty;
pub mod water;

#[cfg(any(doc, doctest))]
pub mod docs;

mod check;
mod exact;
mod letter;
mod monotone;
mod nnls;
mod words;

pub use fault::{Diagnose, Fault, Faults};
pub use uom;

/// The Rust examples of the README, kept compiling.
#[cfg(all(doctest, feature = "document"))]
#[doc = include_str!("../README.md")]
struct Readme;

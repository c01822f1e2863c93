//! Values published outside the project, beside what the library says.
//!
//! Each CSV in `data/` holds one area, a row a value with its source; the module of the same name checks them.

mod densities;
mod hardness;
mod materials;
mod mixtures;
mod rows;
mod salt;
mod units;

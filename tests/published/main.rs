//! Values published outside the project, next to those of the library.
//!
//! Each CSV in `data/` holds one area, a row a value with its source; the module of the same name checks them.

mod atmosphere;
mod color;
mod cost;
mod densities;
mod hardness;
mod heat;
mod materials;
mod mixtures;
mod planning;
mod process;
mod rows;
mod salt;
mod sink;
mod uncertainty;
mod units;

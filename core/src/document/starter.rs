//! The starter table: generic materials with published properties, each with its source.
//!
//! It is data, `core/data/starter.json`, in the form of a book's materials. What only a
//! supplier can say stays empty there.

use alloc::string::String;

use super::book::{Format, MaterialEntry};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::path::Path::At;
use crate::json::reader::read_value;
use crate::json::text;
use crate::mix::Materials;
use crate::quantity::System;

/// The table as JSON text.
pub const STARTER: &str = include_str!("../../data/starter.json");

entry! {
    /// The starter table as it is written.
    pub struct StarterDocument {
        required {
            /// The format and its version.
            format: Format,
            /// Materials by name.
            materials: Named<MaterialEntry>,
        }
        optional {
            /// Anything a reader should know of it.
            about: String,
        }
    }
}

/// The generic materials.
///
/// # Errors
/// None while the table that ships with the library is whole.
pub fn materials() -> Result<Materials, Faults> {
    let document: StarterDocument = read_value(&text::parse(STARTER)?)?;
    super::resolve::materials(&At("/materials"), &document.materials, System::Metric)
}

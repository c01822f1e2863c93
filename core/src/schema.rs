//! JSON Schemas (draft 2020-12) of the documents and of calculation requests.
//!
//! They are generated from the types that the documents are read into, and kept in
//! `core/schema/` for programs that do not speak Rust.

use alloc::string::String;

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema};

use crate::document::{BookDocument, OrdersDocument, PlanDocument};
use crate::record::ActualsDocument;
use crate::request::{Answer, Request};

/// The names of all schemas.
pub const NAMES: [&str; 6] = ["book", "orders", "actuals", "plan", "request", "answer"];

/// The schema named `name`; `None` for a name that is not in [`NAMES`].
#[must_use]
pub fn schema(name: &str) -> Option<Schema> {
    match name {
        "book" => Some(of::<BookDocument>()),
        "orders" => Some(of::<OrdersDocument>()),
        "actuals" => Some(of::<ActualsDocument>()),
        "plan" => Some(of::<PlanDocument>()),
        "request" => Some(of::<Request>()),
        "answer" => Some(of::<Answer>()),
        _ => None,
    }
}

fn of<T: JsonSchema>() -> Schema {
    SchemaSettings::draft2020_12().into_generator().into_root_schema_for::<T>()
}

/// The schema named `name` as JSON text, as it is kept in `core/schema/`.
///
/// # Errors
/// A schema that cannot be written as JSON: none of them.
pub fn text(name: &str) -> Result<Option<String>, serde_json::Error> {
    let Some(schema) = schema(name) else { return Ok(None) };
    let mut text = serde_json::to_string_pretty(&schema)?;
    text.push('\n');
    Ok(Some(text))
}

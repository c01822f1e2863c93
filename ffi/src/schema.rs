//! The JSON Schemas of `core/schema/`, from one text in which each definition is there once.

use std::collections::BTreeMap;

use serde::Deserialize;
use serde_json::{Map, Value};

use crate::document::written;
use crate::failure::{ArgumentError, Failure};

const DEFINITIONS: &str = "$defs";

/// What `build.rs` makes of the files.
#[derive(Deserialize)]
struct Schemas {
    /// Each schema without its definitions.
    roots: BTreeMap<String, Map<String, Value>>,
    /// The definitions of all of them.
    definitions: Map<String, Value>,
}

/// The schema `name` as JSON, with the definitions that it refers to.
pub(crate) fn text(name: &str) -> Result<String, Failure> {
    let schemas = serde_json::from_str(include_str!(concat!(env!("OUT_DIR"), "/schemas.json")));
    let Schemas { mut roots, mut definitions } =
        schemas.map_err(|error| Failure::at("", &ArgumentError::Panic(error.to_string())))?;
    let Some(mut root) = roots.remove(name) else {
        let known = roots.into_keys().collect::<Vec<_>>().join(", ");
        return Err(Failure::at("name", &ArgumentError::NoSchema { name: name.to_owned(), known }));
    };
    let mut needed = Map::new();
    let mut named = Vec::new();
    root.values().for_each(|value| references(value, &mut named));
    while let Some(name) = named.pop() {
        if let Some(definition) = definitions.remove(&name) {
            references(&definition, &mut named);
            needed.insert(name, definition);
        }
    }
    root.insert(DEFINITIONS.into(), Value::Object(needed));
    written(serde_json::to_string(&root))
}

/// Adds the names of the definitions that `value` refers to.
fn references(value: &Value, named: &mut Vec<String>) {
    let mut rest = vec![value];
    while let Some(value) = rest.pop() {
        match value {
            Value::Object(fields) => rest.extend(fields.values()),
            Value::Array(items) => rest.extend(items),
            Value::String(text) => {
                named.extend(text.strip_prefix("#/$defs/").map(str::to_owned));
            }
            _ => {}
        }
    }
}

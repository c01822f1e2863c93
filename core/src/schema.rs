//! JSON Schemas (draft 2020-12) of the documents and of calculation requests.
//!
//! They are generated from the types that the documents are read into, and kept in
//! `core/schema/` for programs that do not speak Rust.

use alloc::string::String;

use schemars::generate::SchemaSettings;
use schemars::{JsonSchema, Schema};
use serde_json::Value;

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

/// Takes null out of the fields that may be omitted: a document leaves such a field out, and its reader refuses null.
pub(crate) fn without_null(schema: &mut Schema) {
    let Some(object) = schema.as_object_mut() else { return };
    let required = object.get("required").cloned().unwrap_or_default();
    let is_required = |name: &str| {
        let names = required.as_array();
        names.is_some_and(|names| names.iter().any(|required| required.as_str() == Some(name)))
    };
    let fields = object.get_mut("properties").and_then(Value::as_object_mut);
    for (name, field) in fields.into_iter().flatten() {
        if !is_required(name) {
            take_null(field);
        }
    }
}

fn take_null(field: &mut Value) {
    let Some(field) = field.as_object_mut() else { return };
    if let Some(Value::Array(types)) = field.get_mut("type") {
        types.retain(|kind| kind.as_str() != Some("null"));
        if let [only] = &mut types[..] {
            let only = only.take();
            field.insert("type".into(), only);
        }
    }
    if let Some(Value::Array(forms)) = field.get_mut("anyOf") {
        forms.retain(|form| form.get("type").and_then(Value::as_str) != Some("null"));
        if let [Value::Object(only)] = &mut forms[..] {
            let only = core::mem::take(only);
            field.remove("anyOf");
            // What the field says of itself stays.
            for (key, value) in only {
                field.entry(key).or_insert(value);
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;
    use std::vec::Vec;

    use serde_json::json;

    use super::*;

    /// A type that has a name of its own is in the definitions; one that stands for another is not.
    #[test]
    fn definitions_have_their_names() {
        let book = schema("book").unwrap();
        let definitions = book.get("$defs").and_then(Value::as_object).unwrap();
        for name in
            ["Amount", "Cut", "MeasuredAmount", "MostDose", "Percent", "Price", "Sourced", "System"]
        {
            assert!(definitions.contains_key(name), "{name} of {:?}", definitions.keys());
        }
        let plan = schema("plan").unwrap().as_value().to_string();
        assert!(plan.contains("#/$defs/Shown\""));
        for name in NAMES {
            let (read, written) = (schema(name).unwrap(), text(name).unwrap().unwrap());
            assert!(written.ends_with("}\n"));
            let parsed: Value = serde_json::from_str(&written).unwrap();
            assert_eq!(&parsed, read.as_value());
            let definitions = parsed["$defs"].as_object().unwrap();
            let odd: Vec<_> = definitions.keys().filter(|name| name.is_empty()).collect();
            assert!(odd.is_empty() && !definitions.contains_key("Altitude"), "{name}");
            assert!(!definitions.keys().any(|name| name.contains("Map_of")), "{name}");
        }
        assert!(schema("no such").is_none() && text("no such").unwrap().is_none());
    }

    /// What may be omitted has its own kinds alone, and what it says of itself.
    #[test]
    fn null_is_taken_out() {
        let taken = |mut field: Value| {
            take_null(&mut field);
            field
        };
        assert_eq!(
            taken(json!({ "type": ["string", "null"], "description": "A name." })),
            json!({ "type": "string", "description": "A name." })
        );
        assert_eq!(
            taken(json!({ "type": ["string", "number", "null"] })),
            json!({ "type": ["string", "number"] })
        );
        assert_eq!(
            taken(json!({ "description": "Its own.",
                "anyOf": [{ "$ref": "#/$defs/Cut", "description": "A cut." }, { "type": "null" }] })),
            json!({ "description": "Its own.", "$ref": "#/$defs/Cut" })
        );
        let two = [json!({ "type": "string" }), json!({ "type": "object" })];
        assert_eq!(
            taken(json!({ "anyOf": [two[0], { "type": "null" }, two[1]] })),
            json!({ "anyOf": two })
        );
    }

    /// An amount has the kind of its quantity next to its form.
    #[test]
    fn an_amount_has_its_quantity() {
        let book = schema("book").unwrap();
        let mold = book.pointer("/$defs/MoldEntry/properties/sprue/x-quantity").unwrap();
        let material = book.pointer("/$defs/MaterialEntry/properties/density/x-quantity").unwrap();
        assert_eq!((mold, material), (&Value::from("volume"), &Value::from("density")));
    }
}

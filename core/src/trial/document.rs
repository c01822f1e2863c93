//! A trial as it is written: its start and the log of what was done.

use alloc::boxed::Box;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde::ser::SerializeMap;
use serde_json::{Map, Value};

use crate::codes::code;
use crate::document::color::ColorEntry;
use crate::fault::Fault;
use crate::formula::Overlap;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::reader::{Ext, Name, Node, Read, deserialize_by_reading};
use crate::quantity::Amount;

entry! {
    /// A trial: its start, and what was added and taken since, in order.
    pub struct TrialEntry {
        required {
            /// The base that it started from: an amount of it, cold and liquid or weighed. Example: `"1 cup"`.
            start: Amount,
        }
        optional {
            /// Formulas of the book that went in with the start, doses for that amount of base. Default: none, base
            /// alone. Example: `["plain"]`.
            formulas: Vec<Name>,
            /// Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
            overlap: Overlap,
            /// The plastisol, if it started without formulas. Default: `default_base` of the book. Example:
            /// `"clear-base"`.
            base: Name,
            /// What was done since, in order. Default: nothing. Example:
            /// `[{ "plum": "3 drops" }, "again", { "looks": { "srgb": [184, 94, 90] } }, { "taken": "10 g" }]`.
            log: Vec<TrialStep>,
            /// Anything worth keeping with it. Default: none. Example: `"By daylight, against the sample of May."`.
            notes: String,
        }
    }
}

/// One entry of a log.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum TrialStep {
    /// Materials that went in, each with an amount: `{ "plum": "3 drops" }`.
    Added(Named<Amount>, Option<Ext>),
    /// The last addition once more: `"again"`.
    Again,
    /// An amount of the mix that was taken out: `{ "taken": "10 g" }`.
    Taken(Amount, Option<Ext>),
    /// How a sample of it looked: `{ "looks": { "lab": [52, 41, 18] } }`.
    Looks(Box<ColorEntry>, Option<Ext>),
}

/// How a log writes that the last addition was made once more.
const AGAIN: &str = "again";
/// The field of a step that takes out; no material can be added under this name.
const TAKEN: &str = "taken";
/// The field of a step that looks; a material of this name has an amount there, and not a color.
const LOOKS: &str = "looks";
const EXT: &str = "ext";

impl serde::Serialize for TrialStep {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let ext = match self {
            Self::Again => return serializer.serialize_str(AGAIN),
            Self::Added(_, ext) | Self::Taken(_, ext) | Self::Looks(_, ext) => ext,
        };
        let mut map = serializer.serialize_map(None)?;
        match self {
            Self::Added(amounts, _) => {
                for (name, amount) in amounts {
                    map.serialize_entry(name, amount)?;
                }
            }
            Self::Taken(amount, _) => map.serialize_entry(TAKEN, amount)?,
            Self::Looks(color, _) => map.serialize_entry(LOOKS, color)?,
            Self::Again => {}
        }
        if let Some(ext) = ext {
            map.serialize_entry(EXT, ext)?;
        }
        map.end()
    }
}

deserialize_by_reading! { TrialStep; }

impl Read for TrialStep {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::String(word) if word == AGAIN => Some(Self::Again),
            Value::Object(fields) => Self::of_fields(node, fields, faults),
            _ => {
                faults.push(node.mismatch(
                    "what was added, { \"plum\": \"3 drops\" }, what was taken, { \"taken\": \"10 g\" }, how it looks, { \"looks\": { \"srgb\": [184, 94, 90] } }, or \"again\" for the last addition once more",
                ));
                None
            }
        }
    }
}

impl TrialStep {
    fn of_fields(
        node: &Node<'_>,
        fields: &Map<String, Value>,
        faults: &mut Vec<Fault>,
    ) -> Option<Self> {
        let ext = match fields.get(EXT) {
            Some(value) => Some(Ext::read(&node.child(EXT, value), faults)?),
            None => None,
        };
        let mut added = fields.clone();
        added.remove(EXT);
        let looks = fields.get(LOOKS).filter(|looks| is_color(looks));
        if let (Some(looks), 1) = (looks, added.len()) {
            let color = ColorEntry::read(&node.child(LOOKS, looks), faults)?;
            return Some(Self::Looks(Box::new(color), ext));
        }
        let Some(taken) = fields.get(TAKEN).or(looks) else {
            if added.is_empty() {
                faults.push(node.mismatch("a material with its amount: { \"plum\": \"3 drops\" }"));
                return None;
            }
            let added = Value::Object(added);
            let node = Node { value: &added, path: node.path, tag: None };
            return Named::read(&node, faults).map(|added| Self::Added(added, ext));
        };
        if added.len() > 1 {
            faults.push(Fault {
                code: code!("trial-step-in-two").into(),
                path: node.path.to_string(),
                message: "One step of the log does two things.".into(),
                help: format!("Write two steps, in the order in which it was done: [{{ \"{TAKEN}\": \"10 g\" }}, {{ ... }}]."),
            });
            return None;
        }
        Amount::read(&node.child(TAKEN, taken), faults).map(|taken| Self::Taken(taken, ext))
    }
}

/// Whether it is an object, and not that of an amount.
fn is_color(value: &Value) -> bool {
    value.as_object().is_some_and(|fields| !fields.contains_key("value"))
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for TrialStep {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        "TrialStep".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let amount = generator.subschema_for::<Amount>();
        let color = generator.subschema_for::<ColorEntry>();
        schemars::json_schema!({
            "description": "Materials that went in with their amounts, an amount that was taken out, how a sample looked, or the last addition once more.",
            "examples": [{ "plum": "3 drops" }, { "taken": "10 g" }, "again", { "looks": { "srgb": [184, 94, 90] } }],
            "anyOf": [
                { "const": AGAIN },
                {
                    "type": "object",
                    "properties": { (LOOKS): color, (EXT): { "type": "object" } },
                    "required": [LOOKS],
                    "additionalProperties": false
                },
                {
                    "type": "object",
                    "properties": { (EXT): { "type": "object" } },
                    "additionalProperties": amount
                }
            ]
        })
    }
}

//! What was really weighed and shot on a day, as it is written; and the plan that it belongs to.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use serde_json::Value;

use super::book::Format;
use super::written::Written;
use crate::fault::Fault;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::read_back;
use crate::json::reader::{LARGEST_COUNT, Name, Node, Read};
use crate::plan::Plan;
use crate::quantity::{Amount, Mass};

entry! {
    /// What was really weighed and shot on a day. Omit what went as the sheet said.
    pub struct ActualsDocument {
        required {
            /// The format and its version. Example: `"pourwright/1.0"`.
            format: Format,
            /// Pots by their letters.
            pots: Named<PotActualsEntry>,
        }
        optional {
            /// Anything a reader should know about it. Default: none. Example: `"Cold morning."`.
            about: String,
        }
    }
}

entry! {
    /// One pot.
    pub struct PotActualsEntry {
        required {
            /// Its stages, from the first.
            stages: Vec<StageActualsEntry>,
        }
        optional {
            /// Anything worth keeping with it. Default: none. Example: `"Smoked a little at 345 °F."`.
            notes: String,
        }
    }
}

entry! {
    /// One stage of a pot.
    pub struct StageActualsEntry {
        required {}
        optional {
            /// What went in other than the sheet said, by material, as it was measured; 0 for what was left out.
            /// Default: what the sheet said. Example: `{ "plum": "34 drops", "fine-salt": "4.9 g" }`.
            weighed: Named<Amount>,
            /// What was shot. Default: what the sheet said.
            draws: Vec<DrawActualsEntry>,
            /// Mass in the cup after the last shot, without the cup. Default: not weighed. Example: `"101.5 g"`.
            left: Written<Mass>,
        }
    }
}

entry! {
    /// What was shot into a mold.
    pub struct DrawActualsEntry {
        required {
            /// The mold. Example: `"finger-5"`.
            mold: Name,
            /// Number of shots made. Example: `7`.
            shots: Count,
        }
        optional {
            /// The pieces by shape. Those of a laminated shot belong to one of its pots. Default: not counted.
            pieces: Vec<PieceActualsEntry>,
        }
    }
}

entry! {
    /// The pieces of one shape.
    pub struct PieceActualsEntry {
        required {}
        optional {
            /// The shape, in a mold with unlike cavities. Default: none; required there. Example: `"long"`.
            shape: Name,
            /// Number of pieces that are fit to sell. Default: not counted. Example: `26`.
            good: Count,
            /// Masses of some of them, one by one. Default: none weighed. Example: `["10.1 g", "10.3 g"]`.
            weights: Vec<Written<Mass>>,
        }
    }
}

/// A count that may be zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct Count(pub u32);

impl Read for Count {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let count = node.value.as_u64().and_then(|count| u32::try_from(count).ok());
        let count = count.filter(|count| *count <= LARGEST_COUNT).map(Self);
        if count.is_none() {
            faults.push(node.mismatch(&format!("a whole number from 0 to {LARGEST_COUNT}")));
        }
        count
    }
}

impl Read for Plan {
    /// Reads a plan that the library wrote. It may still have the `calculate` of an answer.
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(fields) if fields.get("calculate").is_some_and(|name| name == "plan") => {
                read_back::whole(&node.tagged("calculate"), faults)
            }
            _ => read_back::whole(node, faults),
        }
    }
}

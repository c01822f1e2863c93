//! A plan as a document: with what it was made from.

use alloc::vec::Vec;

use serde_json::Value;

use super::{Format, MadeFrom};
use crate::fault::Fault;
use crate::json::read_back::{self, Parts, ReadBack};
use crate::json::reader::{Node, Read};
use crate::plan::Plan;
use crate::plan::sheet::{Notes, Sheet};

/// A day's plan with the documents that it was made from: complete, so that it can be kept as the day's record, and made
/// again to the same bits.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[cfg_attr(feature = "schema", schemars(rename = "Plan", deny_unknown_fields))]
pub struct PlanDocument {
    /// The format and its version.
    pub format: Format,
    /// The documents that it was made from.
    pub made_from: Option<MadeFrom>,
    /// The plan; its fields stand next to these.
    #[serde(flatten)]
    pub plan: Plan,
}

impl PlanDocument {
    /// The bench sheet, as text by its `Display`.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        self.plan.sheet()
    }

    /// The notes to it, as text by its `Display`.
    #[must_use]
    pub const fn notes(&self) -> Notes<'_> {
        self.plan.notes()
    }
}

read_back::deserialize_by_reading_back! { PlanDocument; }
read_back::or_null! { PlanDocument; }

impl ReadBack for PlanDocument {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let mut parts = Parts::open(node, faults);
        let format = parts.take("format", faults);
        let made_from = parts.take("made_from", faults);
        let read = Self { format, made_from, plan: Plan::take_from(&mut parts, faults) };
        parts.close(faults);
        read
    }
}

impl Read for PlanDocument {
    /// Reads a plan that the library wrote. The `calculate` of an answer may still be in it.
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(fields) if fields.get("calculate").is_some_and(|name| name == "plan") => {
                read_back::whole(&node.tagged("calculate"), faults)
            }
            _ => read_back::whole(node, faults),
        }
    }
}

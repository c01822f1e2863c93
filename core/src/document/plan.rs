//! A plan as a document: with what it was made from.

use alloc::string::String;
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
    /// The document as JSON text, complete.
    ///
    /// # Errors
    /// A number of it that JSON cannot have.
    pub fn to_json(&self) -> serde_json::Result<String> {
        serde_json::to_string(self)
    }

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

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;

    use serde_json::json;

    use super::PlanDocument;
    use crate::document::{LoadedBook, small};
    use crate::json::reader::read_value;

    #[test]
    fn an_answer_that_is_another_is_not_a_plan() {
        let book = LoadedBook::from_text(small::BOOK).unwrap();
        let line = r#"{ "order": "1", "product": "sky worm", "pieces": 4 }"#;
        let plan = book.plan_text(&small::orders(line)).unwrap();
        let mut answer = serde_json::to_value(&plan).unwrap();
        assert_eq!(read_value::<PlanDocument>(&answer).as_ref(), Ok(&plan));
        answer["calculate"] = json!("plan");
        assert_eq!(read_value::<PlanDocument>(&answer).as_ref(), Ok(&plan));
        answer["calculate"] = json!("go-on");
        let faults = read_value::<PlanDocument>(&answer).unwrap_err().into_vec();
        let found: Vec<_> = faults.iter().map(|fault| (&*fault.path, &*fault.code)).collect();
        assert_eq!(found, [("/calculate", "unknown-field")]);
    }
}

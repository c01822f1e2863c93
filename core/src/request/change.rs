//! Changes to a book that an answer offers.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde_json::Value;

use super::response;
use crate::document::book::FormulaEntry;
use crate::json::path::Path;
use crate::json::reader::Name;

response! {
    /// A change to a book: an operation of a JSON Patch (RFC 6902), which libraries of many languages apply.
    pub struct Change {
        /// The operation: `add`, which also replaces a value that is there.
        pub op: String,
        /// Where, as a JSON Pointer into the book.
        pub path: String,
        /// The new value.
        pub value: Value,
    }
}

/// The patch that puts `value` at `path`.
pub(super) fn writing(path: &Path<'_>, value: impl Into<Value>) -> Vec<Change> {
    Vec::from([Change { op: "add".into(), path: path.to_string(), value: value.into() }])
}

/// The change that saves a formula under `name`, in place of the one that is there.
pub(super) fn of_formula(name: &str, formula: &FormulaEntry) -> Vec<Change> {
    // An entry of a book always is a JSON value: it has texts alone for keys.
    let value = serde_json::to_value(formula).unwrap_or_default();
    writing(&Path::At("/formulas").key(name), value)
}

/// The patch for `property` of a material; empty where none was named.
pub(super) fn of_material(material: Option<&Name>, property: &str, value: &str) -> Vec<Change> {
    let written = |name: &Name| writing(&Path::At("/materials").key(&name.0).key(property), value);
    material.map(written).unwrap_or_default()
}

/// The patch for `property` of a mold, or of its cavities of one shape; empty where no mold was named.
pub(super) fn of_mold(
    mold: Option<&Name>,
    shape: Option<&Name>,
    property: &str,
    value: &str,
) -> Vec<Change> {
    let molds = Path::At("/molds");
    match (mold, shape) {
        (None, _) => Vec::new(),
        (Some(mold), None) => writing(&molds.key(&mold.0).key(property), value),
        (Some(mold), Some(shape)) => {
            let mold = molds.key(&mold.0);
            let cavities = mold.key("cavities");
            writing(&cavities.key(&shape.0).key(property), value)
        }
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::document;
    use crate::request::answer_value;

    const BOOK: &str = include_str!("../../examples/demo/book.json");

    /// The entry of the demo book once the patch of the answer has been applied to it.
    #[rstest]
    #[case(
        json!({
            "calculate": "calibrate-drop", "calibrated_material": "plum", "balance_readability": "0.01 g",
            "drops_weighed": [{ "weighed_count": 50, "weighed_mass": "2.2 g" }, { "weighed_count": 50, "weighed_mass": "2.3 g" }],
        }),
        "drop"
    )]
    #[case(
        json!({
            "calculate": "calibrate-spoon", "calibrated_material": "fine-salt", "balance_readability": "0.1 g",
            "spoon_volume": "1 tbsp", "scoops_weighed": [{ "weighed_count": 4, "weighed_mass": "72 g" }, { "weighed_count": 4, "weighed_mass": "73 g" }],
        }),
        "as_scooped"
    )]
    #[case(
        json!({
            "calculate": "calibrate-injector", "balance_readability": "0.1 g", "residue_density": "0.96 g/mL",
            "injector_weighed": [
                { "clean_mass": "212 g", "emptied_mass": "216 g" }, { "clean_mass": "212 g", "emptied_mass": "216.5 g" }
            ],
        }),
        "keeps"
    )]
    #[case(json!({ "calculate": "water", "water_mass": "9.21 g ± 0.02", "water_temperature": "20 °C", "calibrated_mold": "finger-5" }), "cavity")]
    #[case(
        json!({ "calculate": "water", "water_mass": "8.3 g", "water_temperature": "20 °C", "calibrated_mold": "claw-set", "calibrated_shape": "long" }),
        "cavity"
    )]
    #[case(
        json!({
            "calculate": "calibrate", "weights": ["8.6 g", "8.7 g", "8.6 g"], "balance_readability": "0.1 g",
            "cold_density": "1.042 g/mL", "hot_density": "0.97 g/mL", "feed": "60 %", "calibrated_mold": "claw-set",
            "calibrated_shape": "long",
        }),
        "cavity"
    )]
    fn a_book_takes_what_is_written(#[case] request: Value, #[case] written: &str) {
        let answer = answer_value(&request);
        let result = &answer["result"];
        let [change] = result["write"].as_array().unwrap().as_slice() else { panic!("{answer}") };
        assert_eq!(
            (&change["op"], &change["value"]),
            (&json!("add"), &result[written]),
            "{answer}"
        );
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        let path = change["path"].as_str().unwrap();
        let (parent, key) = path.rsplit_once('/').unwrap();
        assert_eq!(key, written);
        book.pointer_mut(parent).unwrap()[key] = change["value"].clone();
        document::book_from_text(&book.to_string()).unwrap();
    }

    #[test]
    fn a_mold_has_one_feed_share() {
        let answer = answer_value(&json!({
            "calculate": "calibrate", "weights": ["9.5 g", "9.6 g", "9.5 g"], "balance_readability": "0.1 g",
            "cold_density": "1.042 g/mL", "hot_density": "0.97 g/mL", "cavity_volume": "9.5 mL",
            "calibrated_mold": "claw-set", "calibrated_shape": "short",
        }));
        let change = &answer["result"]["write"][0];
        assert_eq!(change["path"], "/molds/claw-set/feed", "{answer}");
        assert_eq!(change["value"], answer["result"]["feed"]["text"]);
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        book["molds"]["claw-set"]["feed"] = change["value"].clone();
        document::book_from_text(&book.to_string()).unwrap();
    }

    #[test]
    fn nothing_named_is_nothing_written() {
        let answer = answer_value(
            &json!({ "calculate": "water", "water_mass": "9.21 g", "water_temperature": "20 °C" }),
        );
        assert_eq!(answer["result"]["write"], json!([]), "{answer}");
    }
}

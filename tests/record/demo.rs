//! The demo's documents, and requests made of them.

use pourwright::request::answer_value;
use serde_json::{Value, json};

fn read(text: &str) -> Value {
    serde_json::from_str(text).expect("the demo is JSON")
}

pub(crate) fn book() -> Value {
    read(include_str!("../../core/examples/demo/book.json"))
}

pub(crate) fn orders() -> Value {
    read(include_str!("../../core/examples/demo/orders.json"))
}

pub(crate) fn actuals() -> Value {
    read(include_str!("../../core/examples/demo/actuals.json"))
}

pub(crate) fn mispour() -> Value {
    read(include_str!("../../core/examples/requests/correct.json"))
}

/// Orders of one line: `pieces` fingers of these formulas.
pub(crate) fn fingers(formulas: &[&str], pieces: u32) -> Value {
    json!({ "format": "pourwright/1.0", "lines": [
        { "order": "1", "mold": "finger-5", "formulas": formulas, "pieces": pieces }
    ] })
}

/// The result of a request to which the demo's book is added.
pub(crate) fn ask(mut request: Value) -> Result<Value, Value> {
    let fields = request.as_object_mut().expect("a request is an object");
    fields.entry("book").or_insert_with(book);
    let mut answer = answer_value(&request);
    match answer.get_mut("result") {
        Some(result) => Ok(result.take()),
        None => Err(answer["faults"].take()),
    }
}

/// The plain number of a quantity.
pub(crate) fn number(shown: &Value) -> f64 {
    shown["value"].as_f64().unwrap_or_else(|| panic!("{shown} is not a quantity"))
}

pub(crate) fn list(value: &Value) -> &[Value] {
    value.as_array().unwrap_or_else(|| panic!("{value} is not a list"))
}

/// The entry of a list whose `material` is this.
pub(crate) fn of<'a>(value: &'a Value, material: &str) -> Option<&'a Value> {
    list(value).iter().find(|one| one["material"] == material)
}

pub(crate) fn words(value: &Value) -> Vec<&str> {
    list(value).iter().map(|word| word.as_str().expect("a word")).collect()
}

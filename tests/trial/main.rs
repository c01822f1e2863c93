//! The day as it happens: a color found by eye, bench troubles; through the open book and an open plan.

mod trial;
mod troubles;

use pourwright::document::LoadedBook;
use pourwright_tests::demo::{BOOK, json};
use serde_json::Value;

/// The result of a request of the demo's open book.
fn ask(request: &Value) -> Result<Value, Value> {
    ask_of(&LoadedBook::from_text(BOOK).expect("the demo book"), request)
}

fn ask_of(book: &LoadedBook, request: &Value) -> Result<Value, Value> {
    let mut answer = json(&book.answer_text(&request.to_string()));
    match answer.get_mut("result") {
        Some(result) => Ok(result.take()),
        None => Err(answer["faults"].take()),
    }
}

/// The demo's book with the changes that an answer offers, applied by a general library for RFC 6902.
fn changed(write: &Value) -> LoadedBook {
    let mut book = json(BOOK);
    let patch: json_patch::Patch = serde_json::from_value(write.clone()).expect("a patch");
    json_patch::patch(&mut book, &patch).expect("it applies");
    LoadedBook::from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"))
}

fn list(value: &Value) -> &[Value] {
    value.as_array().unwrap_or_else(|| panic!("{value} is not a list"))
}

fn number(shown: &Value) -> f64 {
    shown["value"].as_f64().unwrap_or_else(|| panic!("{shown} is not a quantity"))
}

/// The entry of a list whose `material` is this.
fn of<'a>(value: &'a Value, material: &str) -> Option<&'a Value> {
    list(value).iter().find(|one| one["material"] == material)
}

//! One request for each code that a document can get: `samples.jsonl`.
//!
//! A line changes an example of a request: `of` names it, `open` adds the demo's book, or its book and a plan of it, `with`
//! sets values by JSON Pointer, `without` takes them out, `copy` sets one to another. What is below `/book` and `/orders` is
//! changed before the plan is made. With `asked_of`, the demo's book is opened, and the request asked of it.

use std::sync::OnceLock;

use pourwright::document::LoadedBook;
use pourwright::request::answer_value;
use serde_json::{Value, json};

use pourwright_tests::demo;

/// A code, and the request that gets it with its answer.
pub(crate) struct Sample {
    pub(crate) code: String,
    /// The request, or nothing where the text is none.
    pub(crate) request: Value,
    pub(crate) answer: Value,
    /// Whether the request is asked of an open book.
    pub(crate) is_open: bool,
}

/// All samples, answered once for all tests.
pub(crate) fn all() -> &'static [Sample] {
    static SAMPLES: OnceLock<Vec<Sample>> = OnceLock::new();
    SAMPLES
        .get_or_init(|| crate::read("tests/committed/samples.jsonl").lines().map(sample).collect())
}

fn sample(line: &str) -> Sample {
    let line: Value = serde_json::from_str(line).unwrap();
    let code = line["code"].as_str().unwrap().to_owned();
    if let Some(bytes) = line["longer_than"].as_u64() {
        let text = "x".repeat(usize::try_from(bytes).unwrap());
        let answer = pourwright::request::answer_text(&format!("{{\"calculate\":\"{text}\"}}"));
        let answer = serde_json::from_str(&answer).unwrap();
        return Sample { code, request: Value::Null, answer, is_open: false };
    }
    let request = request(&line);
    let is_open = line["asked_of"].is_string();
    let answer = if is_open {
        let open = LoadedBook::from_text(demo::BOOK).unwrap();
        serde_json::from_str(&open.answer_text(&request.to_string())).unwrap()
    } else {
        answer_value(&request)
    };
    Sample { code, request, answer, is_open }
}

fn request(line: &Value) -> Value {
    let example = line["of"].as_str().unwrap();
    let mut request: Value =
        demo::json(&crate::read(&format!("core/examples/requests/{example}.json")));
    let open = line["open"].as_str();
    if open.is_some() {
        request["book"] = demo::json(demo::BOOK);
    }
    if open == Some("plan") {
        request["orders"] = demo::json(demo::ORDERS);
    }
    let is_first = |pointer: &str| pointer.starts_with("/book") || pointer.starts_with("/orders");
    change(&mut request, line, is_first);
    if open == Some("plan") {
        let orders = request.as_object_mut().unwrap().remove("orders");
        let day = json!({ "calculate": "plan", "book": request["book"], "orders": orders });
        let mut answer = answer_value(&day);
        // A day that cannot be planned is itself the request.
        let Some(plan) = answer["result"].as_object_mut() else { return day };
        plan.remove("calculate");
        request["plan"] = answer["result"].take();
    }
    change(&mut request, line, |pointer| !is_first(pointer));
    request
}

/// Makes the changes of `line` whose pointer is one of `these`.
fn change(request: &mut Value, line: &Value, these: impl Fn(&str) -> bool) {
    for pointer in line["without"].as_array().into_iter().flatten() {
        let pointer = pointer.as_str().unwrap();
        if these(pointer) {
            remove(request, pointer);
        }
    }
    for (pointer, value) in line["with"].as_object().into_iter().flatten() {
        if these(pointer) {
            put(request, pointer, value.clone());
        }
    }
    for (pointer, from) in line["copy"].as_object().into_iter().flatten() {
        if these(pointer) {
            let value = request.pointer(from.as_str().unwrap()).unwrap().clone();
            put(request, pointer, value);
        }
    }
}

/// What `pointer` is in, and its last token.
fn parent<'v>(value: &'v mut Value, pointer: &str) -> (&'v mut Value, String) {
    let (above, last) = pointer.rsplit_once('/').unwrap();
    let above = value.pointer_mut(above).unwrap_or_else(|| panic!("nothing at {above}"));
    (above, last.replace("~1", "/").replace("~0", "~"))
}

fn put(value: &mut Value, pointer: &str, new: Value) {
    match parent(value, pointer) {
        (Value::Array(list), last) if last == "-" => list.push(new),
        (Value::Array(list), last) => list[last.parse::<usize>().unwrap()] = new,
        (object, last) => object[last] = new,
    }
}

fn remove(value: &mut Value, pointer: &str) {
    match parent(value, pointer) {
        (Value::Array(list), last) => drop(list.remove(last.parse().unwrap())),
        (object, last) => {
            let gone = object.as_object_mut().unwrap().remove(&last);
            assert!(gone.is_some(), "nothing at {pointer}");
        }
    }
}

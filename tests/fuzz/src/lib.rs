//! What the library must keep to, whatever comes.
//!
//! A case is a JSON document: a text, a list of calls, a book with orders. A target checks one case, and makes another of
//! it. Two drivers use them: libFuzzer through `tests/fuzz/run`, for as long as one likes; and `ffi/tests/fuzzed.rs`, for each
//! case that is kept in `tests/fuzz/corpus/` and for others from a fixed seed.

pub mod amounts;
#[path = "../../../ffi/tests/calculations/by_name.rs"]
mod by_name;
mod call;
#[rustfmt::skip] // as the generator writes it
#[path = "../../../ffi/tests/calculations/calls.rs"]
mod calls;
pub mod chance;
pub mod columns;
pub mod document;
pub mod handles;
pub mod plans;
#[path = "../../../ffi/tests/calculations/scattered.rs"]
mod scattered;
mod tree;

use std::collections::BTreeSet;

use chance::Chance;
use serde_json::Value;

/// What happened in a case: words that make the name of a file.
pub type Seen = BTreeSet<String>;

/// What is checked, and how cases of it are made.
pub struct Target {
    /// The name of its folder in the corpus.
    pub name: &'static str,
    /// Checks a case; panics where the library breaks a promise. An error is a case that is not of this target.
    pub check: fn(&Value) -> Result<Seen, String>,
    /// Makes another case of one. What is not a case becomes one.
    pub change: fn(&mut Value, &mut Chance<'_>),
}

/// All targets.
pub const TARGETS: [Target; 5] = [
    Target { name: "amounts", check: amounts::check, change: amounts::change },
    Target { name: "columns", check: columns::check, change: columns::change },
    Target { name: "document", check: document::check, change: document::change },
    Target { name: "handles", check: handles::check, change: handles::change },
    Target { name: "plans", check: plans::check, change: plans::change },
];

/// The target of this name.
///
/// # Panics
/// Where there is none.
#[must_use]
pub fn target(name: &str) -> &'static Target {
    TARGETS.iter().find(|target| target.name == name).unwrap()
}

/// Adds the code of each fault, note and caution in a document of the library.
fn see_codes(document: &Value, of: &str, seen: &mut Seen) {
    match document {
        Value::Object(fields) => {
            if let Some(code) = fields.get("code").and_then(Value::as_str) {
                seen.insert(format!("{of}-{code}"));
            }
            fields.values().for_each(|field| see_codes(field, of, seen));
        }
        Value::Array(items) => items.iter().for_each(|item| see_codes(item, of, seen)),
        _ => {}
    }
}

/// Cuts fields and items out of a case as long as it still `shows` what it shows.
pub fn smaller(mut case: Value, shows: impl Fn(&Value) -> bool) -> Value {
    loop {
        let mut has_changed = false;
        let mut at = 0;
        while let Some(other) = without(&case, at) {
            if shows(&other) {
                case = other;
                has_changed = true;
            } else {
                at += 1;
            }
        }
        if !has_changed {
            return case;
        }
    }
}

/// A document without the field or item that comes at this place, from the top and from the front.
fn without(case: &Value, place: usize) -> Option<Value> {
    fn cut(value: &mut Value, left: &mut usize) -> bool {
        match value {
            Value::Object(fields) => {
                let names: Vec<String> = fields.keys().cloned().collect();
                for name in names {
                    if *left == 0 {
                        fields.remove(&name);
                        return true;
                    }
                    *left -= 1;
                    if cut(&mut fields[&name], left) {
                        return true;
                    }
                }
                false
            }
            Value::Array(items) => {
                for at in 0..items.len() {
                    if *left == 0 {
                        items.remove(at);
                        return true;
                    }
                    *left -= 1;
                    if cut(&mut items[at], left) {
                        return true;
                    }
                }
                false
            }
            _ => false,
        }
    }
    let (mut other, mut left) = (case.clone(), place);
    cut(&mut other, &mut left).then_some(other)
}

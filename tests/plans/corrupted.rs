//! A checker that finds nothing wrong proves nothing, unless it finds what is.

use pourwright_tests::demo::{BOOK, ORDERS, STARTER, json, plan};
use pourwright_tests::reference::plan::objections;
use serde_json::Value;

/// All values of a document that are no list and no object, by their JSON Pointers.
fn leaves(value: &Value, path: &str, found: &mut Vec<String>) {
    match value {
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                leaves(item, &format!("{path}/{index}"), found);
            }
        }
        Value::Object(fields) => {
            for (key, field) in fields {
                leaves(field, &format!("{path}/{}", key.replace('/', "~1")), found);
            }
        }
        _ => found.push(path.to_owned()),
    }
}

/// The same number a little off, the same word misspelled.
fn wrong(value: &Value) -> Value {
    match value {
        Value::Bool(truth) => Value::Bool(!truth),
        Value::Number(number) => match number.as_u64() {
            Some(whole) => Value::from(whole + 1),
            None => Value::from(number.as_f64().map_or(1.0, |x| x * 1.01 + 1e-3)),
        },
        Value::String(text) => match text.find(|c: char| c.is_ascii_digit() && c != '9') {
            // The first digit one higher: 12.4 g becomes 22.4 g.
            Some(at) => {
                let mut bytes = text.clone().into_bytes();
                bytes[at] += 1;
                Value::from(String::from_utf8(bytes).expect("a digit for a digit"))
            }
            None => Value::from(format!("{text}?")),
        },
        Value::Null => Value::from(1),
        other => other.clone(),
    }
}

/// The parts of a plan that `laws/process.rs`, for the shelf `record`, and for doubts the core's own tests are for.
const PROCESS: [&str; 11] = [
    "/clock",
    "/stir_every",
    "/fills_hot/",
    "/degas/",
    "/heating/",
    "/heats/",
    "/sinks/",
    "/flakes/",
    "/from_shelf",
    "/doubt",
    "/density_uncertainty",
];

#[test]
fn every_number_and_word_of_pots_and_lines_counts() {
    let (book, orders, starter) = (json(BOOK), json(ORDERS), json(STARTER));
    let made = serde_json::to_value(plan(BOOK, ORDERS).expect("the demo plans")).expect("as JSON");
    let mut paths = Vec::new();
    leaves(&made["pots"], "/pots", &mut paths);
    leaves(&made["lines"], "/lines", &mut paths);
    paths.extend(["/shop", "/day", "/measures"].map(String::from));
    assert!(paths.len() > 900, "{}", paths.len());
    // The name of a line is for people; no number depends on it.
    paths.retain(|path| !(path.starts_with("/lines") && path.ends_with("/what")));
    // How a material goes in is a sentence for people.
    paths.retain(|path| !path.ends_with("/add/how"));
    // Vacuum, heat, water and flake are compared with plain arithmetic in `laws`.
    paths.retain(|path| !PROCESS.iter().any(|part| path.contains(part)));
    assert!(paths.len() > 900, "{}", paths.len());
    let mut missed = Vec::new();
    for path in paths {
        let mut corrupted = made.clone();
        let leaf = corrupted.pointer_mut(&path).expect("a leaf");
        *leaf = wrong(leaf);
        let now = leaf.clone();
        if objections(&book, &orders, &starter, &corrupted).is_empty() {
            missed.push(format!("{path}: {now}"));
        }
    }
    assert!(missed.is_empty(), "{} corruptions passed:\n{}", missed.len(), missed.join("\n"));
}

#[test]
fn a_missing_part_is_missed() {
    let (book, orders, starter) = (json(BOOK), json(ORDERS), json(STARTER));
    let made = serde_json::to_value(plan(BOOK, ORDERS).expect("the demo plans")).expect("as JSON");
    let lists = [
        "/pots",
        "/lines",
        "/pots/0/stages",
        "/pots/2/stages/0/weigh",
        "/pots/2/stages/0/draws",
        "/pots/3/stages/0/draws/0/pieces",
        "/lines/3/pots",
    ];
    let mut companions = Vec::new();
    leaves(&made["pots"], "/pots", &mut companions);
    let companions: Vec<&str> = companions
        .iter()
        .filter_map(|path| path.split_once("/together_with/"))
        .map(|p| p.0)
        .collect();
    assert!(!companions.is_empty(), "the demo has a laminate");
    let companions: Vec<String> =
        companions.iter().map(|path| format!("{path}/together_with")).collect();
    for path in lists.into_iter().chain(companions.iter().map(String::as_str)) {
        let mut corrupted = made.clone();
        let list = corrupted.pointer_mut(path).and_then(Value::as_array_mut).expect(path);
        list.pop().expect(path);
        assert!(!objections(&book, &orders, &starter, &corrupted).is_empty(), "{path}");
        let mut corrupted = made.clone();
        let list = corrupted.pointer_mut(path).and_then(Value::as_array_mut).expect(path);
        list.push(list[0].clone());
        // A pot named twice at a line is the same set of pots.
        let again = path != "/lines/3/pots" && !path.ends_with("together_with");
        assert!(!again || !objections(&book, &orders, &starter, &corrupted).is_empty(), "{path}");
    }
}

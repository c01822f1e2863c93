//! Requests that need no book, the demo's examples and more, with other numbers, less of what may be omitted, and mistakes.

use pourwright::request::{Open, answer_text};
use pourwright_tests::demo::{BOOK, ORDERS, json};
use serde_json::{Value, json};

use crate::chance::{Chance, decimal};
use crate::pin::Asked;

/// Requests to start from, one a line.
const REQUESTS: &str = include_str!("requests.jsonl");

/// The places of all values below `value`.
pub(crate) fn places(value: &Value, at: &str, found: &mut Vec<String>) {
    let mut below = |key: &str, value: &Value| {
        let path = format!("{at}/{}", key.replace('~', "~0").replace('/', "~1"));
        found.push(path.clone());
        places(value, &path, found);
    };
    match value {
        Value::Object(fields) => fields.iter().for_each(|(key, value)| below(key, value)),
        Value::Array(items) => {
            items.iter().enumerate().for_each(|(key, value)| below(&key.to_string(), value));
        }
        _ => {}
    }
}

/// The first number in a text times `by`, with as many places and one more.
pub(crate) fn scaled(text: &str, by: f64) -> Option<String> {
    let start = text.find(|x: char| x.is_ascii_digit())?;
    let rest = &text[start..];
    let end = rest.find(|x: char| !x.is_ascii_digit() && x != '.').unwrap_or(rest.len());
    if rest[end..].starts_with(['/', 'e', ':', '-']) {
        return None;
    }
    let number: f64 = rest[..end].parse().ok()?;
    let places = rest[..end].split_once('.').map_or(0, |(_, places)| places.len());
    let shown = decimal(number * by, places + usize::from(number < 100.0 && by.fract() != 0.0));
    Some(format!("{}{shown}{}", &text[..start], &rest[end..]))
}

/// Other numbers at some places, and some fields left out.
fn changed(c: &mut Chance, request: &mut Value) {
    let mut found = Vec::new();
    places(request, "", &mut found);
    for _ in 0..*c.one_of(&[1, 1, 2, 3, 4, 6]) {
        let place = c.one_of(&found).clone();
        if place == "/calculate" {
            continue;
        }
        let by = *c.one_of(&[
            0.0, 0.1, 0.5, 0.8, 0.9, 0.95, 0.99, 1.01, 1.05, 1.1, 1.25, 1.5, 2.0, 3.0, 10.0,
        ]);
        if c.happens(20) {
            let (parent, name) = place.rsplit_once('/').expect("a path");
            if let Some(Value::Object(fields)) = request.pointer_mut(parent) {
                fields.remove(name);
            }
            continue;
        }
        match request.pointer_mut(&place) {
            Some(Value::String(text)) => {
                if let Some(other) = scaled(text, by) {
                    *text = other;
                }
            }
            Some(value @ Value::Number(_)) => {
                let number = value.as_f64().unwrap_or(0.0) * by;
                *value = if value.is_u64() { json!(number.round() as u64) } else { json!(number) };
            }
            _ => {}
        }
    }
}

/// A request on plain numbers.
pub(crate) fn plain(at: usize) -> Asked {
    let c = &mut Chance::of("plain", at);
    let lines: Vec<&str> = REQUESTS.lines().collect();
    let mut request = json(lines[at % lines.len()]);
    // Each as it is first.
    if at >= lines.len() {
        changed(c, &mut request);
    }
    let answer = answer_text(&request.to_string());
    Asked { request, answer, day: None }
}

/// A request with a mistake in it.
pub(crate) fn mistaken(at: usize) -> Asked {
    let c = &mut Chance::of("mistaken", at);
    let mut request = match at % 5 {
        0 => json!({ "calculate": "plan", "book": json(BOOK), "orders": json(ORDERS) }),
        1 => {
            let day = crate::day::Day::of("round", at / 200);
            json!({ "calculate": "plan", "book": day.book, "orders": day.orders })
        }
        _ => {
            let lines: Vec<&str> = REQUESTS.lines().collect();
            json(c.one_of::<&str>(&lines))
        }
    };
    let mut found = Vec::new();
    places(&request, "", &mut found);
    for _ in 0..*c.one_of(&[1, 1, 1, 2, 3]) {
        let place = c.one_of(&found).clone();
        let (parent, name) = place.rsplit_once('/').expect("a path");
        let wrong = c.value(&[
            "null",
            "true",
            "0",
            "-1",
            "1.5",
            "\"\"",
            "\"12 parsec\"",
            "\"6 oz\"",
            "\"1,25 cup\"",
            "\"-3 g\"",
            "\"8 %\"",
            "\"1e400 g\"",
            "\"0 g\"",
            "\"0 mL\"",
            "\"1/0 cup\"",
            "[]",
            "{}",
            "\"nothing\"",
            "\"1 cup ± 2\"",
            "\"5 g/mL\"",
            "\"150 % of finished\"",
            "\"400 °F\"",
            "\"-500 °C\"",
            "1e9",
            "\"100000 g\"",
            "\"0 %\"",
            "\"100 %\"",
            "[\"plain\"]",
            "\"0.001 g\"",
            "\"99 min\"",
            "\"3 K\"",
            "\"2027-13-01\"",
            "\"dusk\"",
            "{\"value\":1,\"unit\":\"g\"}",
        ]);
        match request.pointer_mut(parent) {
            Some(Value::Object(fields)) => match c.below(5) {
                0 => _ = fields.remove(name),
                1 => {
                    let value = fields.remove(name).unwrap_or(Value::Null);
                    let mut near = name.to_owned();
                    match c.below(3) {
                        0 => near.push('x'),
                        1 => _ = near.pop(),
                        _ => near = format!("my-{near}"),
                    }
                    fields.insert(near, value);
                }
                2 => {
                    let text = fields.get(name).and_then(Value::as_str).unwrap_or_default();
                    let by = *c.one_of(&[0.0, 0.01, 10.0, 100.0, 1e6]);
                    let text = scaled(text, by).map_or(wrong, Value::from);
                    fields.insert(name.to_owned(), text);
                }
                _ => _ = fields.insert(name.to_owned(), wrong),
            },
            Some(Value::Array(items)) => {
                let index: usize = name.parse().expect("an index");
                match c.below(4) {
                    _ if index >= items.len() => {}
                    0 => _ = items.remove(index),
                    1 => {
                        let again = items[index].clone();
                        items.push(again);
                    }
                    _ => items[index] = wrong,
                }
            }
            _ => {}
        }
    }
    let answer = answer_text(&request.to_string());
    Asked { request, answer, day: None }
}

/// A text that is no good JSON, or not quite.
pub(crate) fn broken(at: usize) -> Asked {
    let c = &mut Chance::of("broken", at);
    let lines: Vec<&str> = REQUESTS.lines().collect();
    let mut text: Vec<char> = c.one_of::<&str>(&lines).chars().collect();
    let place = c.below(text.len());
    match c.below(4) {
        0 => text.truncate(place),
        1 => _ = text.remove(place),
        2 => text.insert(place, *c.one_of(&['"', ',', '}', ']', '{', '0', '\\', '\n', 'é', '-'])),
        _ => {
            let again: Vec<char> = text[place..(place + 20).min(text.len())].to_vec();
            text.splice(place..place, again);
        }
    }
    let text: String = text.into_iter().collect();
    Asked { answer: answer_text(&text), request: text.into(), day: None }
}

/// An amount of a material and how sure it is.
pub(crate) fn sure(at: usize) -> Asked {
    let c = &mut Chance::of("sure", at);
    let materials = json(
        r#"[
        { "kind": "colorant", "density": "1.05 g/mL", "drop": "0.044 g ± 0.003" },
        { "kind": "colorant", "density": "1.05 g/mL ± 0.02", "drop": "0.04 mL" },
        { "kind": "colorant", "density": "1.1 g/mL" },
        { "kind": "flake", "density": "1.4 g/mL", "as_scooped": "0.55 g/mL ± 0.05" },
        { "kind": "salt", "like": "sodium-chloride", "as_scooped": "1.22 g/mL" },
        { "kind": "softener", "like": "dotp" },
        { "kind": "plastisol", "density": "1.03 g/mL ± 0.01" },
        { "kind": "scent", "density": "0.98 g/mL", "drop": "0.05 g" }
    ]"#,
    );
    let materials = materials.as_array().expect("a list");
    let amount = c.word(&[
        "32 drops",
        "3 drops",
        "1/2 tsp",
        "1/4 cup",
        "2.2 g",
        "40 g",
        "1 cup",
        "8 % of base",
        "1 tbsp",
        "5 mL",
        "1 drop",
        "0.2 g",
        "250 g",
    ]);
    let mut request = json!({
        "calculate": "uncertainty", "material": c.one_of(materials), "dose_amount": amount,
        "base_material": { "kind": "plastisol", "density": c.word(&["1.03 g/mL ± 0.01", "1.03 g/mL", "1.06 g/mL ± 0.002"]) },
        "per_base": c.word(&["1 cup", "243.7 g", "2 cup", "500 mL", "100 g"]),
    });
    for (in_hundred, field, to) in [
        (30, "spoon", &["\"1 tsp\"", "\"1/4 tsp\"", "\"5 mL\""] as &[&str]),
        (30, "cup_mark", &["\"1/4 cup\"", "\"50 mL\""]),
        (60, "balance_readability", &["\"0.1 g\"", "\"0.01 g\"", "\"1 g\""]),
        (30, "measures", &["\"metric\"", "\"us-label\"", "\"us-customary\""]),
    ] {
        if c.happens(in_hundred) {
            request[field] = c.value(to);
        }
    }
    let answer = crate::day::answer(&request, Open::default());
    Asked { request, answer, day: None }
}

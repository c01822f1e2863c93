//! Documents with something wrong in them anywhere: always a plan or faults, never a panic.

use pourwright::document::{BookDocument, OrdersDocument};
use pourwright::fault::Faults;
use pourwright_tests::demo::{BOOK, ORDERS, json, plan};
use proptest::prelude::*;
use serde_json::{Map, Value, json};

/// What stands in a document by mistake or by malice.
fn oddity() -> impl Strategy<Value = Value> {
    let texts = prop::sample::select(vec![
        "",
        " ",
        "NaN",
        "inf",
        "-1 g",
        "0 g",
        "0 mL",
        "0 %",
        "100 %",
        "101 %",
        "-3 %",
        "1e400 g",
        "1e-400 g",
        "1e30 cup",
        "1e-30 mL",
        "99999999999999999999999999999999999999999999 g",
        "1/0 cup",
        "0/0 tsp",
        "6 oz",
        "1,25 cup",
        "8 %",
        "1 c",
        "½",
        "¼ cup",
        "1 1/4 cup",
        "40 drops",
        "0 drops",
        "1e9 drops",
        "1 drop",
        "12.5 g",
        "8 % of base",
        "100 % of finished",
        "60 % of finished",
        "99.9 % of finished by volume",
        "50 % of base by volume",
        "330 °F",
        "-500 °F",
        "1e6 °C",
        "-273.15 °C",
        "2027-02-30",
        "plum",
        "clear-base",
        "softener",
        "reed",
        "plain",
        "finger-5",
        "metric",
        "imperial",
        "us-label",
        "add",
        "last",
        "melt-again",
        "a\u{0}b",
        "\u{202e}x",
        "🐟",
        "~/~1",
        "1 g ± 2",
        "1 g ± -2",
        "1 g/mL",
        "1e12 g/mL",
        "1e-12 g/mL",
        "0.5 1/K",
        "1 mL",
        "1000 gal",
        "1e-9 1/K",
        "58.00 USD per 1 gal",
        "1e5 USD per 1 gal",
        "-1 USD per 1 gal",
    ])
    .prop_map(Value::from);
    let numbers = prop::sample::select(vec![
        json!(0),
        json!(1),
        json!(2),
        json!(-1),
        json!(1.5),
        json!(1_000_000),
        json!(1_000_001),
        json!(u64::MAX),
        json!(i64::MIN),
        json!(1e308),
        json!(5e-324),
        json!(-0.0),
    ]);
    let others = prop::sample::select(vec![
        Value::Null,
        json!(true),
        json!([]),
        json!({}),
        json!([[[[]]]]),
        json!({ "value": 12.5, "unit": "g" }),
        json!({ "value": 1e300, "unit": "cup" }),
        json!({ "value": -1, "unit": "g" }),
        json!({ "value": 1, "unit": "" }),
        json!({ "value": 1, "unit": "g", "uncertainty": 0.1 }),
        json!({ "value": "1.03 g/mL", "source": 3 }),
        json!({ "clear-base": "1 cup", "firm-base": "0 cup" }),
        json!({ "x": "1 cup" }),
        json!(["1 cup", "2 cup", "x"]),
        json!({ "a": { "count": 1, "cavity": "1e-9 mL" } }),
        json!({ "water": "9.47 g", "at": "99 °C" }),
    ]);
    let deep =
        (1_usize..120).prop_map(|depth| (0..depth).fold(Value::Null, |inner, _| json!([inner])));
    prop_oneof![6 => texts, 3 => numbers, 3 => others, 1 => deep, 2 => "\\PC{0,30}".prop_map(Value::from)]
}

#[derive(Debug, Clone)]
enum Change {
    Set(Value),
    Remove,
    Rename(String),
    Repeat,
    MoveTo(prop::sample::Index),
}

fn change() -> impl Strategy<Value = Change> {
    prop_oneof![
        5 => oddity().prop_map(Change::Set),
        2 => Just(Change::Remove),
        1 => "[a-z_]{1,12}".prop_map(Change::Rename),
        1 => Just(Change::Repeat),
        1 => any::<prop::sample::Index>().prop_map(Change::MoveTo),
    ]
}

/// The JSON Pointers of everything below `value`.
fn places(value: &Value, path: &str, found: &mut Vec<String>) {
    let mut below = |key: &str, child: &Value| {
        let path = format!("{path}/{}", key.replace('~', "~0").replace('/', "~1"));
        found.push(path.clone());
        places(child, &path, found);
    };
    match value {
        Value::Array(items) => {
            items.iter().enumerate().for_each(|(index, item)| below(&index.to_string(), item));
        }
        Value::Object(fields) => fields.iter().for_each(|(key, field)| below(key, field)),
        _ => {}
    }
}

fn changed(mut document: Value, changes: &[(prop::sample::Index, Change)]) -> Value {
    for (index, change) in changes {
        let mut all = Vec::new();
        places(&document, "", &mut all);
        if all.is_empty() {
            return document;
        }
        let path = index.get(&all).clone();
        let (parent, key) = path.rsplit_once('/').expect("a place below another");
        let key = key.replace("~1", "/").replace("~0", "~");
        let other = match change {
            Change::MoveTo(other) => document.pointer(other.get(&all).as_str()).cloned(),
            _ => None,
        };
        match (document.pointer_mut(parent), change) {
            (Some(parent), Change::Set(value)) => place(parent, &key, Some(value.clone())),
            (Some(parent), Change::MoveTo(_)) => place(parent, &key, other),
            (Some(parent), Change::Remove) => place(parent, &key, None),
            (Some(Value::Object(fields)), Change::Rename(name)) => {
                let value = fields.remove(&key).unwrap_or_default();
                fields.insert(name.clone(), value);
            }
            (Some(Value::Array(items)), Change::Repeat) => items.extend(items.clone()),
            _ => {}
        }
    }
    document
}

fn place(parent: &mut Value, key: &str, value: Option<Value>) {
    match (parent, value) {
        (Value::Object(fields), Some(value)) => drop(fields.insert(key.to_owned(), value)),
        (Value::Object(fields), None) => drop(fields.remove(key)),
        (Value::Array(items), value) => {
            let index: usize = key.parse().expect("an index");
            match value {
                Some(value) => items[index] = value,
                None => drop(items.remove(index)),
            }
        }
        _ => {}
    }
}

fn check_faults(faults: &Faults) -> Result<(), TestCaseError> {
    for fault in faults.iter() {
        let said = [fault.message.as_str(), fault.help.as_str(), fault.code.as_ref()];
        prop_assert!(said.iter().all(|text| !text.is_empty()), "{fault:?}");
        prop_assert!(fault.path.is_empty() || fault.path.starts_with('/'), "{fault:?}");
        prop_assert!(fault.message.chars().count() < 700, "{fault:?}");
        prop_assert!(fault.code != "unreadable", "{fault:?}");
        for text in [&fault.message, &fault.help] {
            let quoted = fault.message.contains(['"', '`']);
            prop_assert!(quoted || !text.contains("NaN"), "{fault:?}");
        }
    }
    Ok(())
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, ..ProptestConfig::default() })]

    #[test]
    fn a_mutated_book_gives_a_plan_or_faults(
        changes in prop::collection::vec((any::<prop::sample::Index>(), change()), 1..5),
    ) {
        let book = changed(json(BOOK), &changes);
        let walked = BookDocument::from_text(&book.to_string());
        let by_serde = serde_json::from_value::<BookDocument>(book.clone()).ok();
        prop_assert_eq!(walked.clone().ok(), by_serde);
        if let Ok(document) = walked {
            let written = serde_json::to_value(&document).expect("a book is JSON");
            prop_assert_eq!(BookDocument::from_text(&written.to_string()), Ok(document));
        }
        match plan(&book.to_string(), ORDERS) {
            Ok(made) => drop(made.sheet().to_string()),
            Err(faults) => check_faults(&faults)?,
        }
    }

    #[test]
    fn mutated_orders_give_a_plan_or_faults(
        changes in prop::collection::vec((any::<prop::sample::Index>(), change()), 1..5),
    ) {
        let orders = changed(json(ORDERS), &changes);
        let walked = OrdersDocument::from_text(&orders.to_string());
        let by_serde = serde_json::from_value::<OrdersDocument>(orders.clone()).ok();
        prop_assert_eq!(walked.ok(), by_serde);
        match plan(BOOK, &orders.to_string()) {
            Ok(made) => drop(made.sheet().to_string()),
            Err(faults) => check_faults(&faults)?,
        }
    }

    #[test]
    fn mutated_text_gives_a_plan_or_faults(
        cuts in prop::collection::vec((any::<prop::sample::Index>(), 0_usize..12, "\\PC{0,6}"), 1..4),
        of_book: bool,
    ) {
        let mut text: Vec<char> = if of_book { BOOK } else { ORDERS }.chars().collect();
        for (at, length, put) in cuts {
            let at = at.index(text.len());
            let end = (at + length).min(text.len());
            text.splice(at..end, put.chars());
        }
        let text: String = text.into_iter().collect();
        let made = if of_book { plan(&text, ORDERS) } else { plan(BOOK, &text) };
        if let Err(faults) = made {
            check_faults(&faults)?;
        }
    }

    #[test]
    fn any_text_gives_faults(text in "\\PC{0,60}") {
        let faults = plan(&text, ORDERS).expect_err("no book");
        check_faults(&faults)?;
    }
}

#[test]
fn a_key_twice_is_found_wherever_it_stands() {
    let mut found = Vec::new();
    places(&json(BOOK), "", &mut found);
    for path in found {
        let Some((parent, key)) = path.rsplit_once('/') else { continue };
        if json(BOOK).pointer(parent).is_some_and(Value::is_array) {
            continue;
        }
        let text = twice(&json(BOOK), "", parent, key);
        let faults = plan(&text, ORDERS).expect_err(&path);
        assert_eq!(faults.iter().map(|fault| fault.path.as_str()).collect::<Vec<_>>(), [path]);
    }
}

/// The text of `value` with the field `key` below `parent` written twice.
fn twice(value: &Value, here: &str, parent: &str, key: &str) -> String {
    match value {
        Value::Object(fields) => {
            let mut written = Vec::new();
            for (name, field) in fields {
                let escaped = name.replace('~', "~0").replace('/', "~1");
                let text = twice(field, &format!("{here}/{escaped}"), parent, key);
                let text = format!("{}:{text}", Value::from(name.as_str()));
                if here == parent && escaped == key {
                    written.push(text.clone());
                }
                written.push(text);
            }
            format!("{{{}}}", written.join(","))
        }
        Value::Array(items) => {
            let items: Vec<String> = items
                .iter()
                .enumerate()
                .map(|(index, item)| twice(item, &format!("{here}/{index}"), parent, key))
                .collect();
            format!("[{}]", items.join(","))
        }
        other => other.to_string(),
    }
}

#[test]
fn a_thousand_lines_with_odd_maps_are_no_trouble() {
    let mut wide = Map::new();
    for index in 0..2000 {
        wide.insert(format!("m{index}"), json!({ "kind": "other" }));
    }
    let mut book = json(BOOK);
    let materials = book["materials"].as_object_mut().expect("materials");
    materials.extend(wide);
    let mut orders = json(ORDERS);
    let lines = orders["lines"].as_array_mut().expect("lines");
    let ten = lines.clone();
    for _ in 0..9 {
        lines.extend(ten.clone());
    }
    plan(&book.to_string(), &orders.to_string()).expect("a plan");
}

//! A checker that finds nothing wrong proves nothing, unless it finds what is.

use std::collections::BTreeSet;

use pourwright_tests::demo::{BOOK, ORDERS, STARTER, json, plan};
use pourwright_tests::reference::plan::{Judge, objections};
use pourwright_tests::small::small_days;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
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

/// Sentences for people, and why nothing rests on them: every number in them is a field of the plan of its own, which is
/// judged, and `sheet` and `steps` compare the words with the fields.
const SENTENCES: [(&str, &str); 16] = [
    ("/lines/*/what", "the name of a product, or one made of mold and formulas"),
    ("unknown/message", "why something is not known; its code is judged"),
    ("/pots/*/stages/*/weigh/*/doubt/main_source", "where most of a doubt comes from, in words"),
    ("/pots/*/stages/*/weigh/*/doubt_weighed/main_source", "the same, if it is weighed"),
    ("/work/*/text", "a row of the order of work; its fields are judged"),
    ("/work/*/details/*", "advice for pots that are hot at once"),
    ("/steps/*/at/*/text", "an instruction; its items are judged"),
    ("/steps/*/at/*/details/*", "what to do when the thermometer shows otherwise"),
    ("/work/*/other_details/*", "the same on the other scale: `scales` compares both"),
    ("/steps/*/at/*/other", "the same on the other scale: `scales` compares both"),
    ("/steps/*/at/*/other_details/*", "the same on the other scale: `scales` compares both"),
    ("/steps/*/items/*/other", "the same on the other scale: `scales` compares both"),
    ("/steps/*/at/*/notes/*", "what the pot's fields hold, for the sheet"),
    ("/cost/known/text", "the sums in one sentence"),
    ("/proof/reasons/*/", "the argument in words; its counts are judged"),
    ("/assumptions/*/message", "an assumption in words; its code is judged"),
];

/// Uncertainties and their ranges, which are held against their own texts alone, so that a change within the digits that are
/// shown passes: `published` and `learn` judge how they come about.
const ROUNDED: [&str; 6] = [
    "/sinks/known/slowest/value",
    "/sinks/known/fastest/value",
    "/heating/known/uncertainty/value",
    "/doubt/uncertainty/value",
    "/doubt_weighed/uncertainty/value",
    "/density_uncertainty/value",
];

fn is_rounded(pattern: &str) -> bool {
    ROUNDED.iter().any(|end| pattern.ends_with(end))
}

/// The path with its places in lists left out.
fn pattern(path: &str) -> String {
    let parts = path.split('/').map(|part| if part.parse::<u32>().is_ok() { "*" } else { part });
    parts.collect::<Vec<_>>().join("/")
}

fn is_sentence(pattern: &str) -> bool {
    SENTENCES.iter().any(|(of, why)| {
        assert!(!why.is_empty());
        *of == pattern
            || *of == "unknown/message" && pattern.ends_with(of)
            || of.ends_with('/') && pattern.starts_with(of) && pattern.ends_with("because")
    })
}

/// Corruptions of the leaves of a plan: of each one, and of the first of a kind several.
fn corruptions(made: &Value) -> Vec<(String, Value)> {
    let (mut paths, mut found, mut seen) = (Vec::new(), Vec::new(), BTreeSet::new());
    leaves(made, "", &mut paths);
    for path in paths {
        let pattern = pattern(&path);
        if is_sentence(&pattern) {
            continue;
        }
        let leaf = made.pointer(&path).expect("a leaf");
        if is_rounded(&pattern) {
            let doubled = leaf.as_f64().expect("a number") * 2.0;
            found.push((path.clone(), Value::from(doubled)));
        } else {
            found.push((path.clone(), wrong(leaf)));
        }
        if !seen.insert(pattern) || leaf.is_null() {
            continue;
        }
        found.push((path.clone(), Value::Null));
        if leaf.as_f64().is_some_and(|number| number.abs() > 1e-9) {
            found.push((path.clone(), Value::from(0)));
        }
        if let Some(text) = leaf.as_str() {
            found.push((path, Value::from(format!("{text}?"))));
        }
    }
    found
}

/// The corruptions that the checker does not notice.
fn missed(book: &Value, orders: &Value, made: &Value) -> Vec<String> {
    let all = corruptions(made);
    let starter = json(STARTER);
    assert_eq!(objections(book, orders, &starter, made), Vec::<String>::new());
    let look = |part: &[(String, Value)]| -> Vec<String> {
        let judge = Judge::new(book, orders, &starter);
        let mut corrupted = made.clone();
        let mut missed = Vec::new();
        for (path, now) in part {
            let leaf = corrupted.pointer_mut(path).expect("a leaf");
            let was = std::mem::replace(leaf, now.clone());
            if judge.objections(&corrupted).is_empty() {
                missed.push(format!("{path}: {was} to {now}"));
            }
            *corrupted.pointer_mut(path).expect("a leaf") = was;
        }
        missed
    };
    std::thread::scope(|scope| {
        let parts = all.chunks(all.len().div_ceil(4));
        let look = &look;
        let running: Vec<_> = parts.map(|part| scope.spawn(move || look(part))).collect();
        running.into_iter().flat_map(|one| one.join().expect("a thread that ends")).collect()
    })
}

fn assert_noticed(book: &Value, orders: &Value, made: &Value) {
    let mut missed = missed(book, orders, made);
    // A proof states which shots it counts in words only, so that another formula of the day may bear the same count.
    let formulas: BTreeSet<String> = orders["lines"]
        .as_array()
        .expect("lines")
        .iter()
        .map(|line| line["formulas"].to_string())
        .collect();
    let laminated =
        orders["lines"].as_array().expect("lines").iter().any(|line| line["layers"].is_array());
    if laminated || formulas.len() > 1 {
        missed.retain(|one| !(one.starts_with("/proof/") && one.contains("/formula: ")));
    }
    assert!(missed.is_empty(), "{} corruptions passed:\n{}", missed.len(), missed.join("\n"));
}

#[test]
fn every_field_of_the_demo_plan_counts() {
    let made = serde_json::to_value(plan(BOOK, ORDERS).expect("the demo plans")).expect("as JSON");
    assert!(corruptions(&made).len() > 4000, "{}", corruptions(&made).len());
    assert_noticed(&json(BOOK), &json(ORDERS), &made);
}

/// Days with marks, film, heel, fresh base, laminates, reheats and sprues that are melted again, from a fixed seed.
#[test]
fn every_field_of_small_days_counts() {
    const DAYS: usize = 8;
    let rng = TestRng::from_seed(RngAlgorithm::ChaCha, &[16; 32]);
    let mut runner = TestRunner::new_with_rng(Config::default(), rng);
    let mut judged = 0;
    while judged < DAYS {
        let documents = small_days().new_tree(&mut runner).expect("a day").current();
        let (book, orders) = (&documents.book, &documents.orders);
        let Ok(made) = plan(&book.to_string(), &orders.to_string()) else { continue };
        assert_noticed(book, orders, &serde_json::to_value(made).expect("as JSON"));
        judged += 1;
    }
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

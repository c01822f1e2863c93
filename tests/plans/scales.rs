//! What a plan gives on two scales is the same on both, read by other means than those that wrote it.

use std::sync::LazyLock;

use pourwright_tests::demo::{BOOK, ORDERS, json, plan};
use pourwright_tests::generate::documents;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::{Config, TestRunner};
use regex::Regex;
use serde_json::{Value, json};

const US: [&str; 3] = ["°F", "inHg", "cup"];
const METRIC: [&str; 3] = ["°C", "kPa", "mL"];

/// A quantity in a sentence: number and unit.
static QUANTITY: LazyLock<Regex> = LazyLock::new(|| {
    Regex::new(r"(\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?) (°F|°C|inHg|kPa|cup|mL)").unwrap()
});

fn quantities(text: &str) -> Vec<(f64, &str)> {
    let number = |text: &str| -> f64 {
        let parts = text.split(' ').map(|part| match part.split_once('/') {
            Some((above, below)) => above.parse::<f64>().unwrap() / below.parse::<f64>().unwrap(),
            None => part.parse().unwrap(),
        });
        parts.sum()
    };
    let found = QUANTITY.captures_iter(text);
    found.map(|one| (number(&one[1]), one.get(2).unwrap().as_str())).collect()
}

/// Cups of a system in milliliters; an inch of mercury is 3.386 389 kPa (NIST SP 811, B.8).
fn is_same((us, us_unit): (f64, &str), (metric, unit): (f64, &str), cup: f64) -> bool {
    let off = |of: f64| (of - metric).abs();
    match (us_unit, unit) {
        // Each is rounded to a degree.
        ("°F", "°C") => off((us - 32.0) / 1.8) <= 0.5 + 0.5 / 1.8 + 1e-9,
        // To a tenth of each; how far a gauge is off to two digits.
        ("inHg", "kPa") => off(us * 3.386_389) <= 0.05 + 0.05 * 3.386_389,
        // To an eighth of a cup, where that is within 5 %; but a mark of it is rounded down.
        ("cup", "mL") => off(us * cup) <= cup / 8.0,
        _ => us_unit == unit && us.to_bits() == metric.to_bits(),
    }
}

/// Compares a sentence with itself on the other scale.
fn objection(text: &str, scale: &Value, other: Option<&str>, cup: f64) -> Option<String> {
    let own = quantities(text);
    let Some(other) = other else {
        // A text that has both scales in it needs no other.
        let has = |units: [&str; 3]| units[..2].iter().any(|unit| text.contains(unit));
        return (has(US) != has(METRIC)).then(|| format!("on one scale alone: {text}"));
    };
    let others = quantities(other);
    let (us, metric) = match scale.as_str() {
        Some("us") => (&own, &others),
        Some("metric") => (&others, &own),
        _ => return Some(format!("no scale: {text}")),
    };
    let is_on = |list: &[(f64, &str)], not: [&str; 3]| {
        list.iter().all(|(_, unit)| !not[..2].contains(unit))
    };
    let pairs = || us.iter().copied().zip(metric.iter().copied());
    let same = us.len() == metric.len()
        && is_on(us, METRIC)
        && is_on(metric, US)
        && pairs().all(|(us, metric)| is_same(us, metric, cup))
        && pairs().any(|(us, metric)| us != metric)
        && QUANTITY.replace_all(text, "#") == QUANTITY.replace_all(other, "#");
    (!same).then(|| format!("{text} / {other}"))
}

/// Counts sentences on two scales; what is wrong with them is added to `found`.
fn look_at(value: &Value, of_plan: &Value, cup: f64, found: &mut Vec<String>) -> usize {
    let mut count = 0;
    match value {
        Value::Array(list) => {
            count += list.iter().map(|one| look_at(one, of_plan, cup, found)).sum::<usize>()
        }
        Value::Object(object) => {
            for (name, below) in object.iter().filter(|(name, _)| *name != "made_from") {
                let before = found.len();
                count += look_at(below, of_plan, cup, found);
                for wrong in found.iter_mut().skip(before) {
                    *wrong = format!("/{name}{wrong}");
                }
            }
            let is_quantity = object.contains_key("value");
            let scale = if is_quantity { &value["scale"] } else { of_plan };
            let other = object.get("other").and_then(Value::as_str);
            let is_sentence =
                ["number", "go", "amount"].iter().any(|name| object.contains_key(*name));
            if let Some(text) = object.get("text").and_then(Value::as_str)
                && (is_quantity || is_sentence)
            {
                count += usize::from(other.is_some() && is_sentence);
                found.extend(objection(text, scale, other, cup));
                if is_quantity && scale.is_null() != other.is_none() {
                    found.push(format!(" has no other: {text}"));
                }
            }
            if let Some(details) = object.get("details").and_then(Value::as_array) {
                let none = Vec::new();
                let others = object.get("other_details").and_then(Value::as_array).unwrap_or(&none);
                if !others.is_empty() && others.len() != details.len() {
                    found.push(format!(" has {} of {} details", others.len(), details.len()));
                }
                for (place, detail) in details.iter().enumerate() {
                    let other = others.get(place).filter(|other| *other != detail);
                    count += usize::from(other.is_some());
                    let other = other.and_then(Value::as_str);
                    found.extend(objection(detail.as_str().unwrap(), of_plan, other, cup));
                }
            }
        }
        _ => {}
    }
    count
}

/// Cups of the measuring systems (231 in³/16; 21 CFR 101.9; 250 mL; 10 imperial fluid ounces).
const SYSTEMS: [(&str, f64); 4] = [
    ("us-customary", 236.588_236_5),
    ("us-label", 240.0),
    ("metric", 250.0),
    ("imperial", 284.130_625),
];

/// Looks at the plan of a book, if it has one.
fn looked_at(book: &Value, orders: &Value, cup: f64) -> Option<usize> {
    let made = plan(&book.to_string(), &orders.to_string()).ok()?;
    let mut found = Vec::new();
    let made = serde_json::to_value(&made).unwrap();
    let count = look_at(&made, &made["scale"], cup, &mut found);
    assert!(found.is_empty(), "{}", found.join("\n"));
    Some(count)
}

#[test]
fn the_demo_day_is_the_same_on_both_scales() {
    // Imperial measures have no spoons.
    for (system, cup) in SYSTEMS.into_iter().filter(|(system, _)| *system != "imperial") {
        for (pieces, vacuum) in
            [(1, json!({ "gauge": "25 inHg" })), (3, json!({ "absolute": "20 kPa" }))]
        {
            let (mut book, mut orders) = (json(BOOK), json(ORDERS));
            book["measures"] = json!(system);
            // Not every system has gallons and fluid ounces.
            orders.as_object_mut().unwrap().remove("stock");
            book["bench"]["injector"]["holds"] = json!("118 mL");
            book["bench"]["vacuum"] = vacuum;
            for line in orders["lines"].as_array_mut().unwrap() {
                if let Some(ordered) = line["pieces"].as_u64() {
                    line["pieces"] = json!(ordered * pieces);
                }
            }
            let count = looked_at(&book, &orders, cup);
            assert!(count.is_some_and(|count| count > 20), "{system}, {pieces}: {count:?}");
        }
    }
}

#[test]
fn random_days_are_the_same_on_both_scales() {
    const DAYS: usize = 60;
    let mut runner =
        TestRunner::new_with_rng(Config::default(), TestRunner::deterministic().new_rng());
    let (mut planned, mut sentences) = (0, 0);
    for _ in 0..DAYS {
        let documents = documents().new_tree(&mut runner).unwrap().current();
        let system = documents.book["measures"].as_str().unwrap();
        let (_, cup) = SYSTEMS.into_iter().find(|(name, _)| *name == system).unwrap();
        if let Some(count) = looked_at(&documents.book, &documents.orders, cup) {
            (planned, sentences) = (planned + 1, sentences + count);
        }
    }
    assert!(planned > DAYS / 2 && sentences > DAYS, "{planned} planned, {sentences} sentences");
}

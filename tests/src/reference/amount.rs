//! Amounts as the demo book, the generated books and the plans write them.
//!
//! Numbers `12.5`, `3/4`, `1 1/4`; household words in the four measuring systems; grams, milliliters and a few
//! more. What follows a `±` is skipped, except by [`unsure`].

use serde_json::Value;

/// Milliliters of a household word in a measuring system, as the statutes and labels define it.
pub fn household_ml(word: &str, system: &str) -> Option<f64> {
    let us_cup = 231.0 * 2.54 * 2.54 * 2.54 / 16.0;
    let imperial_cup = 4546.09 / 16.0;
    Some(match (system, word) {
        ("us-customary", "cup") => us_cup,
        ("us-customary", "fl oz") => us_cup / 8.0,
        ("us-customary", "tbsp") => us_cup / 16.0,
        ("us-customary", "tsp") => us_cup / 48.0,
        ("us-label", "cup") => 240.0,
        ("us-label", "fl oz") => 30.0,
        ("metric", "cup") => 250.0,
        ("us-label" | "metric", "tbsp") => 15.0,
        ("us-label" | "metric", "tsp") => 5.0,
        ("imperial", "cup") => imperial_cup,
        ("imperial", "fl oz") => imperial_cup / 10.0,
        _ => return None,
    })
}

/// The text of an amount, whichever way a document writes it.
pub fn text(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Object(fields) => match &fields["value"] {
            Value::String(text) => text.clone(),
            number => format!("{number} {}", fields["unit"].as_str().unwrap_or_default()),
        },
        other => panic!("no amount: {other}"),
    }
}

/// The number at the start of `text`, and what follows it.
pub fn number(text: &str) -> Option<(f64, &str)> {
    let (mut sum, mut rest, mut found) = (0.0, text.trim(), false);
    loop {
        let end = rest.find(' ').unwrap_or(rest.len());
        let Some(part) = part(&rest[..end]) else { break };
        sum += part;
        found = true;
        rest = rest[end..].trim_start();
    }
    found.then_some((sum, rest))
}

fn part(word: &str) -> Option<f64> {
    match word.split_once('/') {
        Some((over, under)) => Some(over.parse::<f64>().ok()? / under.parse::<f64>().ok()?),
        None => word.parse().ok().filter(|x: &f64| x.is_finite()),
    }
}

fn number_and_unit(text: &str) -> (f64, String) {
    let (number, rest) = number(text).unwrap_or_else(|| panic!("no number: {text}"));
    let unit = rest.split('±').next().unwrap_or_default().trim();
    (number, unit.to_owned())
}

/// The standard uncertainty behind a `±`, relative to the value: a number in the same unit, or of `%`.
pub fn unsure(text: &str) -> Option<f64> {
    let (value, spread) = text.split_once('±')?;
    let (value, _) = number(value)?;
    let (spread, unit) = number(spread)?;
    Some(if unit.trim() == "%" { spread / 100.0 } else { spread / value })
}

/// Milliliters, where the text is a volume.
pub fn ml(text: &str, system: &str) -> Option<f64> {
    let (number, unit) = number_and_unit(text);
    let size = match unit.as_str() {
        "mL" => Some(1.0),
        "L" => Some(1000.0),
        word => household_ml(word, system),
    };
    size.map(|size| number * size)
}

/// Grams, where the text is a mass.
pub fn g(text: &str) -> Option<f64> {
    let (number, unit) = number_and_unit(text);
    let size = match unit.as_str() {
        "g" => 1.0,
        "kg" => 1000.0,
        "mg" => 0.001,
        "oz av" => 28.349_523_125,
        _ => return None,
    };
    Some(number * size)
}

/// Whole drops, where the text counts them.
pub fn drops(text: &str) -> Option<f64> {
    let (number, unit) = number_and_unit(text);
    matches!(unit.as_str(), "drop" | "drops").then_some(number)
}

/// Grams per milliliter.
pub fn g_per_ml(text: &str) -> f64 {
    match number_and_unit(text) {
        (number, unit) if unit == "g/mL" => number,
        _ => panic!("no density: {text}"),
    }
}

/// Per kelvin.
pub fn per_kelvin(text: &str) -> f64 {
    match number_and_unit(text) {
        (number, unit) if unit == "1/K" => number,
        _ => panic!("no expansion: {text}"),
    }
}

/// Degrees Celsius.
pub fn celsius(text: &str) -> f64 {
    match number_and_unit(text) {
        (number, unit) if unit == "°F" => (number - 32.0) / 1.8,
        (number, unit) if unit == "°C" => number,
        _ => panic!("no temperature: {text}"),
    }
}

/// A share from a per cent such as `3 %`; what it is of is the second part.
pub fn share(text: &str) -> Option<(f64, String)> {
    let (number, unit) = number_and_unit(text);
    let of = unit.strip_prefix('%')?.trim().to_owned();
    Some((number / 100.0, of))
}

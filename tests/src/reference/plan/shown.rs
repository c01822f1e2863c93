//! Quantities and money against the texts that show them.

use serde_json::Value;

use super::super::amount;
use super::super::shop::text;
use super::rest::is_code;
use super::{Check, value};

/// Kilopascals of an inch of mercury (NIST SP 811).
pub(super) const KPA_PER_INHG: f64 = 3.386_389;

/// Units of texts on two scales.
const US: [&str; 3] = ["°F", "inHg", "cup"];
const METRIC: [&str; 3] = ["°C", "kPa", "mL"];

impl<'a> Check<'a> {
    /// Each quantity is what its texts say; where it has two texts, both say it.
    pub(super) fn every_quantity(&mut self, at: &str, part: &Value) {
        match part {
            Value::Array(items) => {
                for (index, item) in items.iter().enumerate() {
                    self.every_quantity(&format!("{at}/{index}"), item);
                }
            }
            Value::Object(fields) if fields.contains_key("unit") && fields.contains_key("text") => {
                let unit = part["unit"].as_str().unwrap_or_default();
                if ["g", "g/mL", "mL", "°C"].contains(&unit) {
                    self.shown(at, part);
                } else {
                    let number = value(part);
                    for key in ["text", "other"] {
                        let Some(said) = part[key].as_str() else { continue };
                        self.object(tells(said, number, unit), || {
                            format!("{at}: \"{said}\" is not {number} {unit}")
                        });
                    }
                }
                self.object(part["text"].is_string(), || format!("{at}: no text"));
                self.object(part["other"].is_string() || part.get("other").is_none(), || {
                    format!("{at}: {} is not a text", part["other"])
                });
                let (scale, other) = (part.get("scale"), part["other"].as_str());
                let on =
                    |text: &str, units: [&str; 3]| units.iter().any(|unit| text.ends_with(unit));
                let right = match (scale.and_then(Value::as_str), other, part["text"].as_str()) {
                    (Some("us"), Some(other), Some(text)) => on(text, US) && on(other, METRIC),
                    (Some("metric"), Some(other), Some(text)) => on(text, METRIC) && on(other, US),
                    (_, other, _) => scale.is_none() && other.is_none(),
                };
                self.object(right, || format!("{at}: {part} is not on its scale"));
            }
            Value::Object(fields) if fields.contains_key("figure") => self.money(at, part),
            Value::Object(fields) if fields.contains_key("unknown") => {
                let (code, message) = (&part["unknown"]["code"], text(&part["unknown"]["message"]));
                self.object(fields.len() == 1 && is_code(code) && message.ends_with('.'), || {
                    format!("{at}: {part}")
                });
            }
            Value::Object(fields) => {
                for (key, field) in fields {
                    let at = format!("{at}/{key}");
                    let may_be_none =
                        ["budget", "clock", "density_uncertainty"].contains(&key.as_str());
                    self.object(!may_be_none || !field.is_number(), || format!("{at}: {field}"));
                    self.every_quantity(&at, field);
                }
            }
            _ => {}
        }
    }

    /// An amount of money is written to its cents, in the currency of the book's prices.
    pub(super) fn money(&mut self, at: &str, money: &Value) {
        let (figure, amount) = (text(&money["figure"]), text(&money["amount"]));
        let currency = text(&money["currency"]);
        let numbers = figure.parse::<f64>().ok().zip(amount.parse::<f64>().ok());
        let right = numbers.is_some_and(|(figure, amount)| (figure - amount).abs() <= 0.005 + 1e-9)
            && text(&money["text"]) == format!("{figure} {currency}")
            && figure.split_once('.').is_some_and(|(_, cents)| cents.len() == 2);
        self.object(right, || format!("{at}: {money}"));
        let prices = self.shop.book["materials"].as_object().into_iter().flatten();
        let mut prices = prices.filter_map(|(_, material)| material["price"].as_str());
        self.object(prices.any(|price| price.contains(&format!(" {currency} per "))), || {
            format!("{at}: no price is in {currency}")
        });
    }
}

/// Whether a text says a number of seconds, of kilopascals, or a pure number, as well as its last digit can.
fn tells(text: &str, number: f64, unit: &str) -> bool {
    let Some((said, step)) = (match unit {
        "s" => duration(text),
        _ => measured(text, unit),
    }) else {
        return false;
    };
    (said - number).abs() <= step * 0.5 * (1.0 + 1e-6) + 1e-9 * number.abs()
}

/// Value and size of the last digit of a number with a unit.
fn measured(text: &str, unit: &str) -> Option<(f64, f64)> {
    let (number, rest) = amount::number(text.trim_start_matches('+'))?;
    let digits = text.split(' ').next()?;
    let places = digits.split_once('.').map_or(0, |(_, places)| places.len());
    let step = 0.1_f64.powi(i32::try_from(places).ok()?);
    let size = match (unit, rest) {
        ("kPa", "kPa") | ("cm/s", "cm/s") | ("1", "") => 1.0,
        ("kPa", "inHg") => KPA_PER_INHG,
        ("kPa", "hPa" | "mbar") => 0.1,
        ("1", "%") => 0.01,
        ("1", "g/kg") => 0.001,
        _ => return None,
    };
    Some((number * size, step * size))
}

/// Seconds of `1:30`, `5 min 15 s`, `2 h 22 min`, `45.5 min` or `17 s`, and the size of its last digit.
fn duration(text: &str) -> Option<(f64, f64)> {
    if let Some((minutes, seconds)) = text.split_once(':') {
        return Some((minutes.parse::<f64>().ok()? * 60.0 + seconds.parse::<f64>().ok()?, 1.0));
    }
    let words: Vec<&str> = text.split(' ').collect();
    let (mut sum, mut step) = (0.0, f64::NAN);
    for pair in words.chunks(2) {
        let [number, unit] = pair else { return None };
        let size = match *unit {
            "h" => 3600.0,
            "min" => 60.0,
            "s" => 1.0,
            _ => return None,
        };
        let places = number.split_once('.').map_or(0, |(_, places)| places.len());
        sum += number.parse::<f64>().ok()? * size;
        step = size * 0.1_f64.powi(i32::try_from(places).ok()?);
    }
    Some((sum, step))
}

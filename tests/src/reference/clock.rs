//! How long a pot stays hot, and how often a shot can be made, in seconds.

use serde_json::Value;

use super::amount;

/// Seconds of a text such as `4 min`.
pub fn seconds(text: &Value) -> Option<f64> {
    let (number, unit) = amount::number(text.as_str()?)?;
    Some(number * if unit == "min" { 60.0 } else { 1.0 })
}

/// How long a pot stays hot, as the book states it.
pub fn hot_for(book: &Value) -> Option<f64> {
    seconds(&book["bench"]["oven"]["hot_for"])
}

/// How often a shot into a `mold` of `book` can be made: the hands, or its turn among molds of which each sets.
pub fn every(book: &Value, mold: &Value) -> Option<f64> {
    let mold = &book["molds"][mold.as_str()?];
    let hands = seconds(&mold["per_shot"]).or_else(|| seconds(&book["costing"]["per_shot"]))?;
    let sets = seconds(&mold["sets"]).unwrap_or(0.0);
    let molds = mold["count"].as_f64().unwrap_or(1.0);
    Some(hands.max((hands + sets) / molds))
}

//! Slips of the unit and of the decimal point.

use alloc::format;
use alloc::string::String;

use super::{Found, Quantity};
use crate::parameter::{Number, PlainUnit};
use crate::quantity::{Amount, Rational};

/// What the number would be plausible as: the same in another unit, else with its point at another place.
pub(super) fn likely(quantity: Quantity, found: &Found<'_>) -> Option<String> {
    let unit = quantity.unit();
    let holds = |si: f64| quantity.likely().holds(unit.from_si(si));
    let (number, written_in) = split(found.text);
    for other in quantity.slips().iter().copied().filter(|other| *other != written_in) {
        let text = format!("{number} {other}");
        let amount = Amount::parse(&text).ok();
        let si = amount.and_then(|amount| amount.si(amount.dimension(), found.system).ok());
        if let Some(si) = si.filter(|si| holds(*si)) {
            let same = other == unit.symbol();
            let plain = rounded(unit.from_si(si));
            return Some(if same { text } else { format!("{text} ({})", Number(plain, unit)) });
        }
    }
    // Zero of a temperature is not where its scale begins, and drops are counted.
    if unit == PlainUnit::Celsius || written_in.starts_with("drop") {
        return None;
    }
    let number = Rational::parse_decimal(number)?.to_f64();
    let factors = [0.1, 10.0, 0.01, 100.0, 0.001, 1000.0];
    let factor = factors.into_iter().find(|factor| holds(found.si * factor))?;
    Some(format!("{} {written_in}", Number(number * factor, PlainUnit::Pure)))
}

/// A number and its unit.
fn split(text: &str) -> (&str, &str) {
    let text = text.split(" ±").next().unwrap_or_default();
    let number = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '−' | ' ' | '/');
    let unit = text.find(|c| !number(c)).unwrap_or(text.len());
    let (number, unit) = text.split_at_checked(unit).unwrap_or((text, ""));
    // "1/K" is a unit.
    match number.trim_end().strip_suffix(" 1/") {
        Some(number) => (number, text.get(number.len()..).unwrap_or_default().trim()),
        None => (number.trim(), unit.trim()),
    }
}

/// Three digits, as a person says it.
fn rounded(x: f64) -> f64 {
    if x == 0.0 {
        return x;
    }
    let scale = libm::pow(10.0, 2.0 - libm::floor(libm::log10(libm::fabs(x))));
    libm::round(x * scale) / scale
}

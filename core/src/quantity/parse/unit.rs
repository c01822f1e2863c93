//! Reading units: products of symbols, in the trade's writing and in UCUM's.

use super::cursor::Cursor;
use super::spelling::{Found, look_up, nearest};
use crate::quantity::error::quoted;
use crate::quantity::symbol::Symbol;
use crate::quantity::unit::{Term, UnitBuilder};
use crate::quantity::{AmountError, Rational, Unit};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The deepest nesting of brackets in a unit.
const DEEPEST: usize = 4;

/// Reads a product of units from left to right, as UCUM does: in `s/m.mg` the slash divides by m alone.
pub(super) fn unit_product(cursor: &mut Cursor<'_>) -> Result<Unit, AmountError> {
    // Most units are a symbol as it is spelled, whose parts need not be looked for.
    if let Some(symbol) = Symbol::of_spelling(cursor.rest()) {
        cursor.advance(cursor.rest().len());
        return Ok(Unit::sole(symbol));
    }
    let mut product = UnitBuilder::new();
    let mut outside = Vec::new();
    let mut group_divides = false;
    let mut divides = cursor.eat(&['/']);
    loop {
        cursor.skip_space();
        if cursor.eat(&['(']) {
            if outside.len() == DEEPEST {
                return Err(cursor.malformed_unit("its brackets are nested too deep"));
            }
            outside.push(group_divides);
            group_divides = divides;
            continue;
        }
        factor(cursor, divides, &mut product)?;
        cursor.skip_space();
        while cursor.eat(&[')']) {
            group_divides = outside
                .pop()
                .ok_or_else(|| cursor.malformed_unit("a bracket closes that was not opened"))?;
            cursor.skip_space();
        }
        if cursor.rest().is_empty() {
            break;
        }
        divides = operator_divides(cursor)? != group_divides;
    }
    if !outside.is_empty() {
        return Err(cursor.malformed_unit("a bracket is not closed"));
    }
    product
        .finish()
        .ok_or_else(|| cursor.malformed_unit("it is a product of no unit, or of more than four"))
}

/// Reads `.`, `*`, `·`, `/` or `per`; whether it divides.
fn operator_divides(cursor: &mut Cursor<'_>) -> Result<bool, AmountError> {
    if cursor.eat(&['/']) {
        return Ok(true);
    }
    if cursor.eat(&['.', '*', '·', '⋅']) {
        return Ok(false);
    }
    if cursor.rest().starts_with("per ") {
        cursor.advance("per ".len());
        return Ok(true);
    }
    Err(cursor.malformed_unit("two of its parts have neither `.` nor `/` between them"))
}

/// Reads one factor: a whole number, or a symbol with its exponent.
fn factor(
    cursor: &mut Cursor<'_>,
    divides: bool,
    product: &mut UnitBuilder,
) -> Result<(), AmountError> {
    let digits = cursor.digits();
    if !digits.is_empty() {
        let number = digits.parse().ok().and_then(|n| product.number(n, divides));
        return number.ok_or_else(|| cursor.malformed_unit("a number in it is 0 or too large"));
    }
    let start = cursor.at;
    let written = symbol_text(cursor).trim_end();
    if written.is_empty() {
        return Err(cursor.malformed_unit("a unit is missing"));
    }
    let (name, exponent) = split_exponent(written).ok_or_else(|| {
        cursor.malformed_unit("the letters are not followed by an exponent from 1 to 9")
    })?;
    if name.ends_with(char::is_whitespace) || holds_number_after_space(name) {
        return Err(cursor.several());
    }
    let exponent = if divides { exponent.saturating_neg() } else { exponent };
    match look_up(name) {
        Found::Known(symbol, system) => {
            product.term(Term { symbol, system, exponent }).ok_or_else(|| {
                cursor.malformed_unit("it has more than four units, or a power above 9")
            })
        }
        Found::Ambiguous(candidates) => {
            let before = cursor.text.get(..start).unwrap_or("");
            let after = cursor.text.get(start.saturating_add(name.len())..).unwrap_or("");
            let space = if before.ends_with(|c: char| c.is_ascii_digit()) { " " } else { "" };
            let readings: Vec<String> = candidates
                .iter()
                .map(|candidate| format!("{before}{space}{candidate}{after}"))
                .collect();
            Err(cursor.ambiguous(readings))
        }
        Found::Kitchen(word, part) => {
            Err(AmountError::KitchenWord { word, part, count: Rational::ONE })
        }
        Found::Unknown => {
            Err(AmountError::UnknownUnit { text: quoted(name), nearest: nearest(name) })
        }
    }
}

/// Takes a symbol and its exponent: up to an operator, but not inside the brackets of a UCUM code.
fn symbol_text<'a>(cursor: &mut Cursor<'a>) -> &'a str {
    let start = cursor.at;
    let mut in_code = false;
    while let Some(c) = cursor.peek() {
        match c {
            '[' => in_code = true,
            ']' => in_code = false,
            '/' | '*' | '·' | '⋅' | '(' | ')' if !in_code => break,
            // A point before a space or at the end marks an abbreviation.
            '.' if !in_code && cursor.peek_second().is_some_and(|c| !c.is_whitespace()) => break,
            _ if !in_code
                && c.is_whitespace()
                && cursor.rest().trim_start().starts_with("per ") =>
            {
                break;
            }
            _ => {}
        }
        cursor.advance(c.len_utf8());
    }
    cursor.since(start)
}

/// Splits `m-3`, `m^3` and `m³` into symbol and exponent; `None` for an exponent of 0 or above 9.
fn split_exponent(written: &str) -> Option<(&str, i8)> {
    let is_digit = |c: char| c.is_ascii_digit() || superscript(c).is_some();
    let base = written.trim_end_matches(is_digit);
    let digits = written.strip_prefix(base).unwrap_or("");
    if digits.is_empty() {
        return Some((base, 1));
    }
    let unsigned = base.trim_end_matches(['-', '−', '⁻', '+']);
    let negative = base.ends_with(['-', '−', '⁻']);
    let name = unsigned.strip_suffix('^').unwrap_or(unsigned);
    let mut exponent = 0_i8;
    for c in digits.chars() {
        let digit = c.to_digit(10).or_else(|| superscript(c))?;
        exponent = exponent.checked_mul(10)?.checked_add(i8::try_from(digit).ok()?)?;
    }
    if !(1..=9).contains(&exponent) {
        return None;
    }
    Some((name, if negative { exponent.saturating_neg() } else { exponent }))
}

fn superscript(c: char) -> Option<u32> {
    const DIGITS: [char; 10] = ['⁰', '¹', '²', '³', '⁴', '⁵', '⁶', '⁷', '⁸', '⁹'];
    (0_u32..).zip(DIGITS).find(|(_, digit)| *digit == c).map(|(value, _)| value)
}

fn holds_number_after_space(name: &str) -> bool {
    name.split_whitespace().skip(1).any(|word| word.starts_with(|c: char| c.is_ascii_digit()))
}

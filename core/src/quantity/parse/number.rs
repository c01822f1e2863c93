//! Reading numbers: whole, decimal, fraction, mixed.

use super::cursor::Cursor;
use crate::quantity::error::quoted;
use crate::quantity::{AmountError, Rational};
use alloc::format;
use alloc::string::String;

/// Reads a number: `12.5`, `.035`, `1.2e-4`, `1/4`, `1 1/4`, `¼`, `1¼`, `-40`.
pub(crate) fn number(cursor: &mut Cursor<'_>) -> Result<Rational, AmountError> {
    let negative = cursor.eat(&['-', '−']);
    if !negative {
        cursor.eat(&['+']);
    }
    let magnitude = magnitude(cursor)?;
    Ok(if negative { magnitude.negated() } else { magnitude })
}

fn magnitude(cursor: &mut Cursor<'_>) -> Result<Rational, AmountError> {
    let start = cursor.at;
    if let Some(fraction) = fraction(cursor)? {
        return match cursor.peek() {
            Some('.' | ',') if cursor.second_is_digit() => Err(cursor.no_number()),
            _ => Ok(fraction),
        };
    }
    let whole = cursor.digits();
    let has_point = match cursor.peek() {
        Some('.') if !whole.is_empty() || cursor.second_is_digit() => cursor.eat(&['.']),
        _ => false,
    };
    if whole.is_empty() && !has_point {
        return Err(cursor.no_number());
    }
    if has_point {
        cursor.digits();
    }
    if matches!(cursor.peek(), Some(',' | '.')) && cursor.second_is_digit() {
        return Err(separators(cursor, start));
    }
    if exponent(cursor) || has_point {
        let decimal = Rational::parse_decimal(cursor.since(start));
        return decimal.ok_or_else(|| cursor.number_out_of_range());
    }
    let value = self::whole(whole).and_then(|value| Rational::new(value, 1));
    let value = value.ok_or_else(|| cursor.number_out_of_range())?;
    after_whole(cursor, whole, value)
}

/// Steps over `e-4`; whether there was one.
fn exponent(cursor: &mut Cursor<'_>) -> bool {
    let mut after = cursor.rest().chars();
    let is_exponent = matches!(after.next(), Some('e' | 'E'))
        && match after.next() {
            Some('+' | '-') => after.next().is_some_and(|c| c.is_ascii_digit()),
            Some(c) => c.is_ascii_digit(),
            None => false,
        };
    if is_exponent {
        cursor.eat(&['e', 'E']);
        cursor.eat(&['+', '-']);
        cursor.digits();
    }
    is_exponent
}

/// The part after a whole number: nothing, or a fraction that is added to it.
fn after_whole(
    cursor: &mut Cursor<'_>,
    whole: &str,
    value: Rational,
) -> Result<Rational, AmountError> {
    let end = cursor.at;
    if matches!(cursor.peek(), Some('-' | '–' | '—')) {
        return hyphen(cursor, whole).map_or(Ok(value), Err);
    }
    cursor.skip_space();
    let numerator = cursor.peek().filter(char::is_ascii_digit).is_some();
    let start = cursor.at;
    if let Some(fraction) = fraction(cursor)? {
        let sum = value.checked_add(fraction).ok_or_else(|| cursor.number_out_of_range())?;
        if fraction >= Rational::ONE {
            let (sum, rest, written) = (sum.mixed(), cursor.rest(), cursor.since(start));
            return Err(
                cursor.ambiguous([format!("{sum}{rest}"), format!("{whole}{written}{rest}")])
            );
        }
        return Ok(sum);
    }
    if numerator && !starts_unit(cursor) {
        return Err(second_number(cursor, whole));
    }
    if cursor.rest().starts_with("to ") {
        return Err(cursor.several());
    }
    cursor.at = end;
    Ok(value)
}

/// Whether a whole number that begins a unit is here: `4.s/m`, `1/K`.
fn starts_unit(cursor: &Cursor<'_>) -> bool {
    let mut after = cursor.rest().trim_start_matches(|c: char| c.is_ascii_digit()).chars();
    matches!(after.next(), Some('/' | '.' | '*' | '·' | '⋅'))
        && after.next().is_some_and(|c| !c.is_ascii_digit() && !c.is_whitespace())
}

/// `1 000 g`, `5 3 g`.
fn second_number(cursor: &mut Cursor<'_>, whole: &str) -> AmountError {
    let second = cursor.digits();
    let rest = cursor.rest();
    if second.len() == 3 {
        cursor.ambiguous([format!("{whole}{second}{rest}"), format!("{whole}.{second}{rest}")])
    } else {
        cursor.several()
    }
}

/// The error that a hyphen after a whole number is, where a number follows it: `1-1/2 cup`, `2-3 drops`.
fn hyphen(cursor: &mut Cursor<'_>, whole: &str) -> Option<AmountError> {
    cursor.eat(&['-', '–', '—']);
    cursor.skip_space();
    let start = cursor.at;
    if let Ok(Some(_)) = fraction(cursor) {
        let (fraction, rest) = (cursor.since(start), cursor.rest());
        return Some(cursor.ambiguous([
            format!("{whole} {fraction}{rest}"),
            format!("a range from {whole}{rest} to {fraction}{rest}"),
        ]));
    }
    cursor.peek().filter(char::is_ascii_digit).map(|_| cursor.several())
}

/// Reads `1/4`, `1⁄4` or `¼`; `None`, and the cursor unmoved, if no fraction is here.
fn fraction(cursor: &mut Cursor<'_>) -> Result<Option<Rational>, AmountError> {
    if let Some((c, numerator, denominator)) = cursor
        .peek()
        .filter(|c| !c.is_ascii())
        .and_then(|c| VULGAR.iter().find(|(vulgar, ..)| *vulgar == c))
    {
        cursor.advance(c.len_utf8());
        return Ok(Rational::new(*numerator, *denominator));
    }
    let start = cursor.at;
    let numerator = cursor.digits();
    let is_fraction = !numerator.is_empty()
        && matches!(cursor.peek(), Some('/' | '⁄' | '∕'))
        && cursor.second_is_digit();
    if !is_fraction {
        cursor.at = start;
        return Ok(None);
    }
    cursor.eat(&['/', '⁄', '∕']);
    let denominator = cursor.digits();
    let (Some(numerator), Some(denominator)) = (whole(numerator), whole(denominator)) else {
        return Err(cursor.number_out_of_range());
    };
    if denominator == 0 {
        return Err(AmountError::ZeroDenominator { text: quoted(cursor.text) });
    }
    Rational::new(numerator, denominator).map(Some).ok_or_else(|| cursor.number_out_of_range())
}

/// The number that `digits` are. Those of most fractions fit in a machine word, which is read several times as fast.
fn whole(digits: &str) -> Option<i128> {
    match digits.parse::<u64>() {
        Ok(number) => Some(number.into()),
        Err(_) => digits.parse().ok(),
    }
}

const VULGAR: [(char, i128, i128); 19] = [
    ('¼', 1, 4),
    ('½', 1, 2),
    ('¾', 3, 4),
    ('⅐', 1, 7),
    ('⅑', 1, 9),
    ('⅒', 1, 10),
    ('⅓', 1, 3),
    ('⅔', 2, 3),
    ('⅕', 1, 5),
    ('⅖', 2, 5),
    ('⅗', 3, 5),
    ('⅘', 4, 5),
    ('⅙', 1, 6),
    ('⅚', 5, 6),
    ('⅛', 1, 8),
    ('⅜', 3, 8),
    ('⅝', 5, 8),
    ('⅞', 7, 8),
    ('↉', 0, 3),
];

/// The error that points and commas in one number are: `1,25 cup`, `1,000 g`, `1.000,5 g`.
fn separators(cursor: &mut Cursor<'_>, start: usize) -> AmountError {
    cursor.take_while(|c| c.is_ascii_digit() || matches!(c, ',' | '.'));
    let number = cursor.since(start);
    let rest = cursor.rest();
    let is_separator = |c: char| matches!(c, ',' | '.');
    let point_at = |place: Option<usize>| -> String {
        let kept = number.char_indices().filter(|(at, c)| !is_separator(*c) || Some(*at) == place);
        let number: String = kept.map(|(_, c)| if c == ',' { '.' } else { c }).collect();
        format!("{number}{rest}")
    };
    let (first, last) = (number.find(is_separator), number.rfind(is_separator));
    let mixed = number.contains(',') && number.contains('.');
    let other = if mixed { point_at(first) } else { point_at(None) };
    cursor.ambiguous([point_at(last), other])
}

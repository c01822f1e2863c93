//! Reading amounts and units as people write them.
//!
//! One pass over a text of bounded length. What can be read two ways is refused with the readings.

use super::amount::without_basis;
use super::error::quoted;
use super::symbol::{AMBIGUOUS, HOUSEHOLD_CODES, MatchCase, SYSTEM_WORDS, Size, Symbol};
use super::unit::{Term, UnitBuilder};
use super::{Amount, AmountError, Basis, By, Rational, Share, System, Unit};
use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

/// The longest text that is read, in bytes.
const LONGEST: usize = 512;
/// The deepest nesting of brackets in a unit.
const DEEPEST: usize = 4;

/// Reads an amount: a number and a unit, and for a per cent its basis.
pub(super) fn amount(text: &str) -> Result<Amount, AmountError> {
    let mut cursor = Cursor::new(text)?;
    let value = number(&mut cursor)?;
    cursor.skip_space();
    if cursor.rest().is_empty() {
        return Err(AmountError::NoUnit { text: quoted(cursor.text) });
    }
    let (unit, basis) = unit_and_basis(&mut cursor)?;
    assemble(cursor.text, value, unit, basis)
}

/// Reads a unit alone.
pub(super) fn unit(text: &str) -> Result<Unit, AmountError> {
    unit_product(&mut Cursor::new(text)?)
}

/// Reads a unit alone, or a per cent with its basis: `% of base`.
#[cfg(feature = "document")]
pub(super) fn measure(text: &str) -> Result<(Unit, Option<Basis>), AmountError> {
    unit_and_basis(&mut Cursor::new(text)?)
}

/// Reads a number, never negative, and the unit behind it, where there is one.
pub(super) fn number_and_unit(text: &str) -> Result<(Rational, Option<Unit>), AmountError> {
    let mut cursor = Cursor::new(text)?;
    let value = number(&mut cursor)?;
    if value.is_negative() {
        return Err(AmountError::Negative { text: quoted(text) });
    }
    cursor.skip_space();
    let unit = if cursor.rest().is_empty() { None } else { Some(unit_product(&mut cursor)?) };
    Ok((value, unit))
}

/// The amount of a number and its unit in text; `whole` is what a message quotes.
pub(super) fn amount_of(value: Rational, unit: &str, whole: &str) -> Result<Amount, AmountError> {
    let mut cursor = Cursor::new(unit).map_err(|error| match error {
        AmountError::Empty => AmountError::NoUnit { text: quoted(whole) },
        other => other,
    })?;
    let (unit, basis) = unit_and_basis(&mut cursor)?;
    assemble(whole, value, unit, basis)
}

/// The amount of these parts; `text` is what they were read from.
fn assemble(
    text: &str,
    value: Rational,
    unit: Unit,
    basis: Option<Basis>,
) -> Result<Amount, AmountError> {
    match basis {
        Some(basis) => Amount::share(value, unit, basis),
        None if unit.is_share() => Err(without_basis(text)),
        None => Amount::new(value, unit),
    }
}

/// A place in a text.
pub(super) struct Cursor<'a> {
    text: &'a str,
    at: usize,
}

impl<'a> Cursor<'a> {
    /// The head of `text`, its outer space taken off.
    pub(super) fn new(text: &'a str) -> Result<Self, AmountError> {
        if text.len() > LONGEST {
            return Err(AmountError::TooLong { found: text.len(), limit: LONGEST });
        }
        let text = text.trim();
        if text.is_empty() {
            return Err(AmountError::Empty);
        }
        Ok(Self { text, at: 0 })
    }

    pub(super) fn rest(&self) -> &'a str {
        self.text.get(self.at..).unwrap_or("")
    }

    fn since(&self, start: usize) -> &'a str {
        self.text.get(start..self.at).unwrap_or("")
    }

    fn peek(&self) -> Option<char> {
        self.rest().chars().next()
    }

    fn peek_second(&self) -> Option<char> {
        self.rest().chars().nth(1)
    }

    fn second_is_digit(&self) -> bool {
        self.peek_second().is_some_and(|c| c.is_ascii_digit())
    }

    fn advance(&mut self, bytes: usize) {
        self.at = self.at.saturating_add(bytes);
    }

    /// Steps over the next character where it is one of `wanted`.
    fn eat(&mut self, wanted: &[char]) -> bool {
        match self.peek() {
            Some(c) if wanted.contains(&c) => {
                self.advance(c.len_utf8());
                true
            }
            _ => false,
        }
    }

    fn take_while(&mut self, wanted: impl Fn(char) -> bool) -> &'a str {
        let rest = self.rest();
        let end = rest.find(|c| !wanted(c)).unwrap_or(rest.len());
        self.advance(end);
        rest.get(..end).unwrap_or("")
    }

    fn digits(&mut self) -> &'a str {
        self.take_while(|c| c.is_ascii_digit())
    }

    /// Steps over white space; whether there was any.
    pub(super) fn skip_space(&mut self) -> bool {
        !self.take_while(char::is_whitespace).is_empty()
    }

    fn no_number(&self) -> AmountError {
        AmountError::NoNumber { text: quoted(self.text) }
    }

    fn number_out_of_range(&self) -> AmountError {
        AmountError::NumberOutOfRange { text: quoted(self.text) }
    }

    fn several(&self) -> AmountError {
        AmountError::SeveralAmounts { text: quoted(self.text) }
    }

    fn ambiguous(&self, readings: impl Into<Vec<String>>) -> AmountError {
        AmountError::Ambiguous { text: quoted(self.text), readings: readings.into() }
    }

    fn unknown_basis(&self) -> AmountError {
        AmountError::UnknownBasis { text: quoted(self.text) }
    }

    fn malformed_unit(&self, why: &'static str) -> AmountError {
        AmountError::MalformedUnit { text: quoted(self.text), why }
    }
}

/// Reads a number: `12.5`, `.035`, `1.2e-4`, `1/4`, `1 1/4`, `¼`, `1¼`, `-40`.
pub(super) fn number(cursor: &mut Cursor<'_>) -> Result<Rational, AmountError> {
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
    let has_exponent = exponent(cursor);
    let decimal =
        Rational::parse_decimal(cursor.since(start)).ok_or_else(|| cursor.number_out_of_range())?;
    if has_point || has_exponent {
        return Ok(decimal);
    }
    after_whole(cursor, whole, decimal)
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

/// What may follow a whole number: nothing, or a fraction that is added to it.
fn after_whole(
    cursor: &mut Cursor<'_>,
    whole: &str,
    value: Rational,
) -> Result<Rational, AmountError> {
    let end = cursor.at;
    if matches!(cursor.peek(), Some('-' | '–' | '—')) {
        return hyphen(cursor, whole).map_or(Ok(value), Err);
    }
    let spaced = cursor.skip_space();
    let numerator = cursor.peek().filter(char::is_ascii_digit).is_some();
    if let Some(fraction) = fraction(cursor)? {
        let sum = value.checked_add(fraction).ok_or_else(|| cursor.number_out_of_range())?;
        if fraction >= Rational::ONE {
            let (sum, rest, written) = (sum.mixed(), cursor.rest(), fraction);
            let joined = format!("{whole}{}/{}", written.numerator(), written.denominator());
            return Err(cursor.ambiguous([format!("{sum}{rest}"), format!("{joined}{rest}")]));
        }
        return Ok(sum);
    }
    if spaced && numerator && !starts_unit(cursor) {
        return Err(second_number(cursor, whole));
    }
    if spaced && cursor.rest().starts_with("to ") {
        return Err(cursor.several());
    }
    cursor.at = end;
    Ok(value)
}

/// Whether a whole number that begins a unit stands here: `4.s/m`, `1/K`.
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

/// Reads `1/4`, `1⁄4` or `¼`; `None`, and the cursor unmoved, where no fraction stands here.
fn fraction(cursor: &mut Cursor<'_>) -> Result<Option<Rational>, AmountError> {
    if let Some((c, numerator, denominator)) =
        cursor.peek().and_then(|c| VULGAR.iter().find(|(vulgar, ..)| *vulgar == c))
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
    let (Ok(numerator), Ok(denominator)) = (numerator.parse(), denominator.parse::<i128>()) else {
        return Err(cursor.number_out_of_range());
    };
    if denominator == 0 {
        return Err(AmountError::ZeroDenominator { text: quoted(cursor.text) });
    }
    Rational::new(numerator, denominator).map(Some).ok_or_else(|| cursor.number_out_of_range())
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

/// Reads a unit, or a per cent and its basis.
pub(super) fn unit_and_basis(
    cursor: &mut Cursor<'_>,
) -> Result<(Unit, Option<Basis>), AmountError> {
    let whole = cursor.rest();
    if let Some((head, tail)) = whole.split_once(" of ")
        && let Found::Known(symbol @ (Symbol::Percent | Symbol::PartsPerMillion), _) =
            look_up(head.trim())
    {
        let basis = basis(tail).ok_or_else(|| cursor.unknown_basis())?;
        cursor.advance(whole.len());
        return Ok((Unit::sole(symbol), Some(basis)));
    }
    let says_of_what = whole
        .strip_prefix('%')
        .is_some_and(|after| after.trim_start().starts_with(char::is_alphabetic));
    if says_of_what {
        return Err(cursor.unknown_basis());
    }
    Ok((unit_product(cursor)?, None))
}

/// Reads `base`, `the finished mix by volume`.
fn basis(text: &str) -> Option<Basis> {
    let lower = text.to_ascii_lowercase();
    let words: Vec<&str> = lower.split_whitespace().filter(|word| *word != "the").collect();
    let (share, by) = match words.as_slice() {
        ["base", by @ ..] => (Share::OfBase, by),
        ["finished", "mix", by @ ..] | ["finished", by @ ..] => (Share::OfFinished, by),
        _ => return None,
    };
    let by = match by {
        [] | ["by", "mass" | "weight"] => By::Mass,
        ["by", "volume"] => By::Volume,
        _ => return None,
    };
    Some(Basis { share, by })
}

/// Reads a product of units from left to right, as UCUM does: in `s/m.mg` the slash divides by m alone.
fn unit_product(cursor: &mut Cursor<'_>) -> Result<Unit, AmountError> {
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
    Err(cursor.malformed_unit("between two of its parts stands neither `.` nor `/`"))
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
    let (name, exponent) = split_exponent(written)
        .ok_or_else(|| cursor.malformed_unit("an exponent is 0 or larger than 9"))?;
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

enum Found {
    Known(Symbol, Option<System>),
    Ambiguous(&'static [&'static str]),
    Unknown,
}

/// Finds a symbol by its spelling; runs of space and the points of abbreviations do not count.
fn look_up(written: &str) -> Found {
    let name = without_points(written);
    if let Some(symbol) = plain(&name) {
        return Found::Known(symbol, None);
    }
    if let Some((_, symbol, system)) = HOUSEHOLD_CODES.iter().find(|(code, ..)| *code == name) {
        return Found::Known(*symbol, Some(*system));
    }
    if let Some((symbol, system)) = with_system(&name) {
        return Found::Known(symbol, Some(system));
    }
    let ambiguous = AMBIGUOUS.iter().find(|(spelling, case, _)| match case {
        MatchCase::Exact => name == *spelling,
        MatchCase::Any => name.eq_ignore_ascii_case(spelling),
    });
    ambiguous.map_or(Found::Unknown, |(_, _, readings)| Found::Ambiguous(readings))
}

/// `fl oz` for `fl.  oz.`.
fn without_points(written: &str) -> Cow<'_, str> {
    if !written.contains(|c: char| c == '.' || c.is_whitespace()) {
        return Cow::Borrowed(written);
    }
    let words = written.split_whitespace().map(|word| word.trim_end_matches('.'));
    Cow::Owned(words.collect::<Vec<&str>>().join(" "))
}

/// A symbol without the word of a system before it.
fn plain(name: &str) -> Option<Symbol> {
    Symbol::ALL.iter().copied().find(|symbol| {
        let entry = symbol.entry();
        name == entry.symbol
            || name == entry.plural
            || entry.symbols.contains(&name)
            || entry.words.iter().any(|word| name.eq_ignore_ascii_case(word))
    })
}

/// `metric cup`, `US fl oz`: a household word with the system that it is measured in.
fn with_system(name: &str) -> Option<(Symbol, System)> {
    let (word, system) = SYSTEM_WORDS.iter().find(|(word, _)| {
        name.get(..word.len()).is_some_and(|head| head.eq_ignore_ascii_case(word))
    })?;
    let symbol = plain(name.get(word.len()..)?)?;
    matches!(symbol.entry().size, Size::Household(_)).then_some((symbol, *system))
}

/// The known spelling that takes the fewest changed letters, where few enough do.
fn nearest(name: &str) -> Option<&'static str> {
    const LONGEST_NAME: usize = 24;
    if name.len() > LONGEST_NAME {
        return None;
    }
    let letters: Vec<char> = name.to_lowercase().chars().collect();
    let allowed = if letters.len() < 4 { 1 } else { 2 };
    let codes = HOUSEHOLD_CODES.iter().map(|(code, ..)| *code);
    let spellings = Symbol::ALL.iter().flat_map(|symbol| {
        let entry = symbol.entry();
        [entry.symbol, entry.plural].into_iter().chain(entry.words.iter().copied())
    });
    spellings
        .chain(codes)
        .filter(|spelling| spelling.chars().count().abs_diff(letters.len()) <= allowed)
        .map(|spelling| (distance(&letters, spelling), spelling))
        .filter(|(changes, spelling)| *changes <= allowed && *changes < spelling.chars().count())
        .min_by_key(|(changes, _)| *changes)
        .map(|(_, spelling)| spelling)
}

/// How many letters must be put in, taken out or changed (Levenshtein 1966), whatever their case.
fn distance(letters: &[char], spelling: &str) -> usize {
    let mut row: Vec<usize> = (0..=letters.len()).collect();
    for (i, c) in spelling.to_lowercase().chars().enumerate() {
        let mut diagonal = i;
        let mut left = i.saturating_add(1);
        let mut next = Vec::with_capacity(row.len());
        next.push(left);
        for (letter, above) in letters.iter().zip(row.iter().skip(1)) {
            let changed = diagonal.saturating_add(usize::from(*letter != c));
            left = changed.min(left.saturating_add(1)).min(above.saturating_add(1));
            diagonal = *above;
            next.push(left);
        }
        row = next;
    }
    row.last().copied().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Diagnose;
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    #[rstest]
    #[case("1/4 tsp", "1/4 tsp")]
    #[case("1 1/4 cup", "1 1/4 cup")]
    #[case("¼ cup", "1/4 cup")]
    #[case("1¼ cup", "1 1/4 cup")]
    #[case("1 ¼ cup", "1 1/4 cup")]
    #[case("1⁄4 cup", "1/4 cup")]
    #[case("1 1⁄4 cup", "1 1/4 cup")]
    #[case("5/4 cups", "1 1/4 cup")]
    #[case("2 tbsp", "2 tbsp")]
    #[case("2 Tablespoons", "2 tbsp")]
    #[case("1 TBSP.", "1 tbsp")]
    #[case("40 drops", "40 drops")]
    #[case("40drops", "40 drops")]
    #[case("1 drop", "1 drop")]
    #[case("1/2 drop", "0.5 drops")]
    #[case("12.5g", "12.5 g")]
    #[case("+12.50 grams", "12.5 g")]
    #[case("8 % of base", "8 % of base")]
    #[case("8% of the base by weight", "8 % of base")]
    #[case("20 % of finished", "20 % of finished")]
    #[case("20 per cent of the finished mix by volume", "20 % of finished by volume")]
    #[case("50 ppm of base", "50 ppm of base")]
    #[case("330 °F", "330 °F")]
    #[case("330F", "330 °F")]
    #[case("165 degrees Celsius", "165 °C")]
    #[case("-40 °F", "-40 °F")]
    #[case("−40 °C", "-40 °C")]
    #[case("0.035 in", "0.035 in")]
    #[case(".035 in", "0.035 in")]
    #[case("1/64 in", "0.015625 in")]
    #[case("1.2e-4 1/K", "0.00012 1/K")]
    #[case("3 1/K", "3 1/K")]
    #[case("6.3 4.s/m", "6.3 4.s/m")]
    #[case("0.5 fl oz", "1/2 fl oz")]
    #[case("6 oz wt", "6 oz wt")]
    #[case("6 [oz_av]", "6 oz wt")]
    #[case("1 [cup_us]", "1 US cup")]
    #[case("1 [cup_m]", "1 label cup")]
    #[case("1 metric cup", "1 metric cup")]
    #[case("1 imperial fl oz", "1 imperial fl oz")]
    #[case("20 [drp]", "20 [drp]")]
    #[case("29 inches of mercury", "29 inHg")]
    #[case("29 [in_i'Hg]", "29 [in_i'Hg]")]
    #[case("0.3 cup", "0.3 cup")]
    #[case("1/5 cup", "0.2 cup")]
    #[case("1/7 cup", "1/7 cup")]
    #[case("1/3 g", "1/3 g")]
    #[case("  1  cup  ", "1 cup")]
    #[case("1 cup", "1 cup")]
    #[case("0 g", "0 g")]
    #[case("-0 g", "0 g")]
    fn reads(#[case] written: &str, #[case] printed: &str) {
        let read = amount(written).expect("an amount");
        assert_eq!(read.to_string(), printed);
        assert_eq!(amount(printed), Ok(read));
    }

    #[rstest]
    #[case("6 oz", &["6 fl oz", "6 oz wt"])]
    #[case("6oz", &["6 fl oz", "6 oz wt"])]
    #[case("2 ounces", &["2 fl oz", "2 oz wt"])]
    #[case("6 oz/gal", &["6 fl oz/gal", "6 oz wt/gal"])]
    #[case("1,25 cup", &["1.25 cup", "125 cup"])]
    #[case("1,000 g", &["1.000 g", "1000 g"])]
    #[case("1,234,567 g", &["1234.567 g", "1234567 g"])]
    #[case("1.000,5 g", &["1000.5 g", "1.0005 g"])]
    #[case("1.000.5 g", &["1000.5 g", "10005 g"])]
    #[case("1 000 g", &["1000 g", "1.000 g"])]
    #[case("1\u{a0}000 g", &["1000 g", "1.000 g"])]
    #[case("1 c", &["1 cup", "1 °C"])]
    #[case("350 C", &["350 cup", "350 °C"])]
    #[case("350 deg", &["350 °F", "350 °C"])]
    #[case("350°", &["350 °F", "350 °C"])]
    #[case("1 T", &["1 tbsp", "1 tonne"])]
    #[case("1 t", &["1 tsp", "1 tonne"])]
    #[case("1 dr", &["1 drops", "1 [dr_av]", "1 [fdr_us]"])]
    #[case("3 gr", &["3 g", "3 grains"])]
    #[case("8 %", &["8 % of base", "8 % of finished"])]
    #[case("8%", &["8% of base", "8% of finished"])]
    #[case("1-1/2 cup", &["1 1/2 cup", "a range from 1 cup to 1/2 cup"])]
    #[case("1-½ cup", &["1 ½ cup", "a range from 1 cup to ½ cup"])]
    #[case("1 5/4 cup", &["2 1/4 cup", "15/4 cup"])]
    fn refuses_with_the_readings(#[case] written: &str, #[case] expected: &[&str]) {
        let Err(AmountError::Ambiguous { readings, .. }) = amount(written) else {
            panic!("{written}: {:?}", amount(written));
        };
        assert_eq!(readings, expected);
        for reading in readings.iter().filter(|reading| !reading.starts_with("a range")) {
            assert!(amount(reading).is_ok(), "{reading}");
        }
    }

    #[rstest]
    #[case("", "amount-empty")]
    #[case("   ", "amount-empty")]
    #[case("12", "amount-no-unit")]
    #[case("1 1/2", "amount-no-unit")]
    #[case("1e3", "amount-no-unit")]
    #[case("cup", "amount-no-number")]
    #[case("a cup", "amount-no-number")]
    #[case("NaN g", "amount-no-number")]
    #[case("inf g", "amount-no-number")]
    #[case(". g", "amount-no-number")]
    #[case("- g", "amount-no-number")]
    #[case("1/2.5 g", "amount-no-number")]
    #[case("1/0 g", "amount-zero-denominator")]
    #[case("1 1/0 cup", "amount-zero-denominator")]
    #[case("1e400 g", "amount-number-out-of-range")]
    #[case("1e-400 g", "amount-number-out-of-range")]
    #[case("1/99999999999999999999999999999999999999999999 g", "amount-number-out-of-range")]
    #[case("-1 g", "amount-negative")]
    #[case("-1 drop", "amount-negative")]
    #[case("-1 1/K", "amount-negative")]
    #[case("-8 % of base", "amount-negative")]
    #[case("-460 °F", "amount-below-absolute-zero")]
    #[case("-1 K", "amount-below-absolute-zero")]
    #[case("5 lb 3 oz", "amount-several")]
    #[case("5 lb 3", "amount-several")]
    #[case("5 3 g", "amount-several")]
    #[case("2-3 drops", "amount-several")]
    #[case("2 – 3 drops", "amount-several")]
    #[case("2 to 3 drops", "amount-several")]
    #[case("1 cupp", "unit-unknown")]
    #[case("3 smidgens", "unit-unknown")]
    #[case("1.5/2 cup", "unit-malformed")]
    #[case("1/2/3 cup", "unit-malformed")]
    #[case("8 % base", "amount-unknown-basis")]
    #[case("8 % of sugar", "amount-unknown-basis")]
    #[case("8 % of base by length", "amount-unknown-basis")]
    #[case("8 % of", "amount-unknown-basis")]
    fn refuses(#[case] written: &str, #[case] code: &str) {
        assert_eq!(amount(written).expect_err("no amount").code(), code);
    }

    #[rstest]
    #[case("1 cupp", "cup")]
    #[case("1 teaspon", "teaspoon")]
    #[case("1 ML", "mL")]
    #[case("1 [cup_uk]", "[cup_us]")]
    #[case("1 dorps", "drops")]
    fn suggests_the_nearest_unit(#[case] written: &str, #[case] nearest: &str) {
        let error = amount(written).expect_err("no unit");
        assert_eq!(error.help(), std::format!("Did you mean {nearest}?"));
    }

    #[test]
    fn long_texts_are_refused_before_they_are_read() {
        let text = std::format!("{} g", "1".repeat(LONGEST));
        assert_eq!(amount(&text), Err(AmountError::TooLong { found: text.len(), limit: LONGEST }));
    }

    proptest! {
        #[test]
        fn any_text_is_an_amount_or_an_error(text in any::<std::string::String>()) {
            let _ = amount(&text);
            let _ = unit(&text);
        }

        // Texts made of what amounts are made of reach deeper than random characters do.
        #[test]
        fn any_text_of_likely_pieces_is_an_amount_or_an_error(pieces in prop::collection::vec(
            prop::sample::select(std::vec![
                "1", "0", "12", "000", "/", "⁄", ".", ",", "-", "–", " ", "½", "e", "E", "+", "(", ")", "[", "]",
                "^", "³", "⁻", "%", " of ", "base", "finished", " by ", "oz", "cup", "g", "°F", "K", "US ", "metric ",
                "[tsp_us]", "m[Hg]", "per ", "to ", "drops", "\u{a0}", "−", "999999999999999999999999",
            ]),
            0..14,
        )) {
            let text: std::string::String = pieces.concat();
            if let Ok(read) = amount(&text) {
                let printed = read.to_string();
                prop_assert_eq!(amount(&printed), Ok(read), "{} as {}", text, printed);
            }
        }
    }
}

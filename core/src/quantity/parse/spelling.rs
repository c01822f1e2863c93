//! Finds a symbol by its spelling, or else the nearest one.

use crate::quantity::System;
use crate::quantity::symbol::{
    AMBIGUOUS, HOUSEHOLD_CODES, KITCHEN_WORDS, MatchCase, SYSTEM_WORDS, Size, Symbol,
};
use alloc::borrow::Cow;
use alloc::vec::Vec;

/// The meaning of a spelling.
pub(super) enum Found {
    Known(Symbol, Option<System>),
    Ambiguous(&'static [&'static str]),
    /// A kitchen word, and which part of a teaspoon it is about.
    Kitchen(&'static str, i64),
    Unknown,
}

/// Finds a symbol by its spelling; runs of space and the points of abbreviations do not count.
pub(super) fn look_up(written: &str) -> Found {
    let name = without_points(written);
    if let Some(symbol) = Symbol::of_spelling(&name) {
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
    if let Some((_, _, readings)) = ambiguous {
        return Found::Ambiguous(readings);
    }
    let kitchen = KITCHEN_WORDS
        .iter()
        .find(|(one, many, _)| name.eq_ignore_ascii_case(one) || name.eq_ignore_ascii_case(many));
    kitchen.map_or(Found::Unknown, |(word, _, part)| Found::Kitchen(word, *part))
}

/// `fl oz` for `fl.  oz.`.
fn without_points(written: &str) -> Cow<'_, str> {
    if !written.contains(|c: char| c == '.' || c.is_whitespace()) {
        return Cow::Borrowed(written);
    }
    let words = written.split_whitespace().map(|word| word.trim_end_matches('.'));
    Cow::Owned(words.collect::<Vec<&str>>().join(" "))
}

/// `metric cup`, `US fl oz`: a household word with the system that it is measured in.
fn with_system(name: &str) -> Option<(Symbol, System)> {
    let (word, system) = SYSTEM_WORDS.iter().find(|(word, _)| {
        name.get(..word.len()).is_some_and(|head| head.eq_ignore_ascii_case(word))
    })?;
    let symbol = Symbol::of_spelling(name.get(word.len()..)?)?;
    matches!(symbol.entry().size, Size::Household(_)).then_some((symbol, *system))
}

/// The known spelling that takes the fewest changed letters, where few enough do.
pub(super) fn nearest(name: &str) -> Option<&'static str> {
    const LONGEST_NAME: usize = 24;
    if name.len() > LONGEST_NAME {
        return None;
    }
    let letters: Vec<char> = name.chars().flat_map(char::to_lowercase).collect();
    let allowed = if letters.len() < 4 { 1 } else { 2 };
    let codes = HOUSEHOLD_CODES.iter().map(|(code, ..)| *code);
    let spellings = Symbol::ALL.iter().flat_map(|symbol| {
        let entry = symbol.entry();
        let words = entry.spellings.iter().filter(|(_, case)| *case == MatchCase::Any);
        [entry.symbol, entry.plural].into_iter().chain(words.map(|(word, _)| *word))
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
    for (i, c) in spelling.chars().flat_map(char::to_lowercase).enumerate() {
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

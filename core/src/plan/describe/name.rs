//! What pots are called: ids and letters.

use alloc::collections::{BTreeMap, BTreeSet};
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::steps::named;
use crate::plan::day::Day;
use crate::plan::layout::{Layout, PotLayout, PotName};

/// Ids and letters of the `pots`. One that is there keeps its own, and one with the id of a pot that an earlier plan of the
/// day did not begin has the letter of that; the others get what is free.
pub(in crate::plan) fn names(pots: &[PotLayout<'_>], day: &Day) -> Vec<PotName> {
    let ids = ids(pots, day);
    let there = |letter: &str| day.pots.iter().any(|there| there.pot == letter);
    let mut kept: Vec<Option<&String>> = Vec::with_capacity(pots.len());
    let mut used: BTreeSet<&str> = BTreeSet::new();
    for (pot, id) in pots.iter().zip(&ids) {
        let known = day.letters.iter().find(|(known, _)| known == id).map(|(_, letter)| letter);
        let known = known.filter(|letter| !there(letter));
        let letter = pot.there.map(|there| &there.pot).or(known);
        kept.push(letter.filter(|letter| used.insert(letter.as_str())));
    }
    let is_free =
        |letter: &String| !there(letter) && day.letters.iter().all(|(_, known)| known != letter);
    let mut next = (0_usize..).map(letter).filter(is_free);
    let each = ids.into_iter().zip(kept);
    each.filter_map(|(id, kept)| {
        Some(PotName { id, letter: kept.cloned().or_else(|| next.next())? })
    })
    .collect()
}

impl Layout<'_> {
    /// The letter of the pot at `place`.
    pub(in crate::plan) fn letter(&self, place: usize) -> &str {
        self.names.get(place).map_or("", |name| name.letter.as_str())
    }
}

/// Name of each pot: the formulas that it starts with; of pots that start alike the first, and the others with the
/// molds that they are shot into. Of pots that are alike in that too it does not matter which is which.
fn ids(pots: &[PotLayout<'_>], day: &Day) -> Vec<String> {
    let mut keys: Vec<String> = Vec::with_capacity(pots.len());
    // Taken names, and the number that each was last given with: a large day has many pots alike.
    let mut taken: BTreeSet<String> =
        day.pots.iter().filter_map(|there| there.id.clone()).collect();
    let mut last: BTreeMap<String, u32> = BTreeMap::new();
    for pot in pots {
        if let Some(id) = pot.there.and_then(|there| there.id.as_ref()) {
            keys.push(id.clone());
            continue;
        }
        let first = pot.stages.first().map(|stage| named(&stage.recipe.name())).unwrap_or_default();
        let mut key = first;
        if taken.contains(&key) {
            let draws = pot.stages.iter().flat_map(|stage| &stage.draws);
            let mut molds: Vec<&str> = draws.map(|draw| draw.of.batch.mold.name.as_str()).collect();
            molds.sort_unstable();
            molds.dedup();
            key = format!("{key} for {}", named(&molds.join(" + ")));
        }
        if taken.contains(&key) {
            let number = last.entry(key.clone()).or_insert(1);
            key = loop {
                *number = number.saturating_add(1);
                let numbered = format!("{key} ({number})");
                if !taken.contains(&numbered) {
                    break numbered;
                }
            };
        }
        taken.insert(key.clone());
        keys.push(key);
    }
    keys
}

/// The letter of the pot at `index`: A, B, ..., Z, AA, AB, ...
fn letter(index: usize) -> String {
    let mut letters: Vec<char> = Vec::new();
    let mut rest = Some(index);
    while let Some(now) = rest {
        letters.extend(now.checked_rem(26).and_then(|place| ('A'..='Z').nth(place)));
        rest = now.checked_div(26).and_then(|whole| whole.checked_sub(1));
    }
    letters.iter().rev().collect()
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::letter;

    #[rstest]
    #[case(0, "A")]
    #[case(25, "Z")]
    #[case(26, "AA")]
    #[case(51, "AZ")]
    #[case(52, "BA")]
    #[case(701, "ZZ")]
    #[case(702, "AAA")]
    fn pots_have_letters(#[case] index: usize, #[case] name: &str) {
        assert_eq!(letter(index), name);
    }
}

//! The word that was meant where another was written.

use alloc::vec::Vec;

/// The candidate that `word` most likely meant: at most a third of its letters differ.
pub(crate) fn nearest<'a>(
    word: &str,
    candidates: impl Iterator<Item = &'a str>,
) -> Option<&'a str> {
    const LONGEST: usize = 64;
    let length = word.chars().take(LONGEST).count();
    if length == LONGEST {
        return None;
    }
    candidates
        // Each letter that one has more is an edit, and more than the limit below are never near.
        .filter(|candidate| {
            let other = candidate.chars().take(LONGEST).count();
            other < LONGEST && other.abs_diff(length).saturating_mul(3) <= length.max(3)
        })
        .map(|candidate| (edit_distance(word, candidate), candidate))
        .min()
        .filter(|(distance, _)| distance.saturating_mul(3) <= length.max(3))
        .map(|(_, candidate)| candidate)
}

/// Levenshtein distance, by one row of the table.
fn edit_distance(from: &str, to: &str) -> usize {
    let mut row: Vec<usize> = (0..=to.chars().count()).collect();
    for (i, a) in from.chars().enumerate() {
        let mut diagonal = i;
        let mut left = i.saturating_add(1);
        for (b, above) in to.chars().zip(row.iter_mut().skip(1)) {
            let substituted = diagonal.saturating_add(usize::from(a != b));
            diagonal = *above;
            left = substituted.min(above.saturating_add(1)).min(left.saturating_add(1));
            *above = left;
        }
        if let Some(first) = row.first_mut() {
            *first = i.saturating_add(1);
        }
    }
    row.last().copied().unwrap_or(0)
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    // Levenshtein's distance, by hand.
    #[rstest]
    #[case("", "", 0)]
    #[case("cup", "", 3)]
    #[case("", "cup", 3)]
    #[case("kitten", "sitting", 3)]
    #[case("flaw", "lawn", 2)]
    #[case("dose", "doses", 1)]
    #[case("größe", "grösse", 2)]
    fn a_distance_counts_edits(#[case] from: &str, #[case] to: &str, #[case] expected: usize) {
        assert_eq!(edit_distance(from, to), expected);
        assert_eq!(edit_distance(to, from), expected);
    }

    #[test]
    fn a_third_of_the_letters_may_differ() {
        let near = |word: &str, candidate: &'static str| nearest(word, [candidate].into_iter());
        assert_eq!((near("cup", "cups"), near("cups", "cup")), (Some("cups"), Some("cup")));
        assert_eq!((near("cup", "cupful"), near("cu", "pot")), (None, None));
        assert_eq!((near("x", "xy"), near("wormes", "worm")), (Some("xy"), Some("worm")));
    }

    #[test]
    fn texts_are_no_words() {
        let long = |letters: usize| "a".repeat(letters);
        let near = |word: usize, candidate: usize| {
            nearest(&long(word), [long(candidate).as_str()].into_iter()).is_some()
        };
        assert!(near(63, 63) && near(62, 63));
        assert!(!near(64, 63) && !near(63, 64));
    }

    #[rstest]
    #[case("cavitys", Some("cavities"))]
    #[case("sprude", Some("sprue"))]
    #[case("color", None)]
    #[case("", None)]
    fn a_slip_is_met_with_the_nearest_word(#[case] word: &str, #[case] expected: Option<&str>) {
        assert_eq!(nearest(word, ["cavities", "sprue", "feed"].into_iter()), expected);
    }
}

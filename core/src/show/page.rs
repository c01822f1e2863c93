//! A page of text, 80 columns wide.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Shown;
use crate::quantity::Time;

/// Columns of a page.
pub(crate) const WIDTH: usize = 80;

/// Lines of text under construction.
#[derive(Default)]
pub(crate) struct Page {
    text: String,
}

impl Page {
    pub(crate) fn line(&mut self, line: &str) {
        self.text.push_str(line.trim_end());
        self.text.push('\n');
    }

    pub(crate) fn rule(&mut self, mark: char) {
        let rule: String = core::iter::repeat_n(mark, WIDTH).collect();
        self.line(&rule);
    }

    /// `left` at the left margin and `right` at the right one, on two lines where one is too short.
    pub(crate) fn ends(&mut self, left: &str, right: &str) {
        let (left, right) = (&cut(left, WIDTH), &cut(right, WIDTH));
        let room = WIDTH.saturating_sub(left.chars().count());
        if right.chars().count() < room {
            self.line(&format!("{left}{right:>room$}"));
        } else {
            self.line(left);
            self.line(&format!("{right:>WIDTH$}"));
        }
    }

    /// A heading in a rule of `mark`, with `right` at its end.
    pub(crate) fn headed(&mut self, left: &str, right: &str, mark: char) {
        const HALF: usize = 40;
        let right = cut(right, HALF);
        let room = WIDTH.saturating_sub(right.chars().count()).saturating_sub(6);
        let left = cut(left, room);
        let rest = room.saturating_sub(left.chars().count()).saturating_add(2);
        let rule: String = core::iter::repeat_n(mark, rest).collect();
        self.line(&format!("{mark} {left} {rule} {right}"));
    }

    /// `text` broken between words, its first line after `lead`, the others below its end.
    pub(crate) fn wrapped(&mut self, lead: &str, text: &str) {
        let indent = lead.chars().count();
        let mut line = lead.to_string();
        let mut filled = indent;
        let longest = WIDTH.saturating_sub(indent);
        for word in text.split(' ').flat_map(|word| pieces(word, longest)) {
            let length = word.chars().count();
            if filled > indent && filled.saturating_add(length).saturating_add(1) > WIDTH {
                self.line(&line);
                line = core::iter::repeat_n(' ', indent).collect();
                filled = indent;
            }
            if filled > indent {
                line.push(' ');
                filled = filled.saturating_add(1);
            }
            line.push_str(&word);
            filled = filled.saturating_add(length);
        }
        self.line(&line);
    }

    /// Points under a heading; nothing without any.
    pub(crate) fn list(&mut self, heading: &str, points: impl IntoIterator<Item = String>) {
        for (index, point) in points.into_iter().enumerate() {
            if index == 0 {
                self.rule('-');
                self.line(heading);
            }
            self.wrapped("  ", &point);
        }
    }

    /// The text so far.
    pub(crate) fn text(&self) -> &str {
        self.text.trim_end()
    }
}

/// `1 shot`, `2 shots`.
pub(crate) fn counted(count: u32, what: &str) -> String {
    if count == 1 { format!("1 {what}") } else { format!("{count} {what}s") }
}

/// The heat that a mix has had: `2 heats, 9.6 min spent`.
pub(crate) fn past(heats: Option<u32>, spent: Option<&Shown<Time>>) -> String {
    let heats = heats.map_or_else(|| "heats not known".to_string(), |heats| counted(heats, "heat"));
    match spent {
        Some(spent) => format!("{heats}, {} spent", spent.text),
        None => heats,
    }
}

/// `text` in at most `width` columns.
pub(crate) fn cut(text: &str, width: usize) -> String {
    if text.chars().count() <= width {
        return text.to_string();
    }
    let mut short: String = text.chars().take(width.saturating_sub(1)).collect();
    short.push('…');
    short
}

/// `word` in parts of at most `longest` columns.
fn pieces(word: &str, longest: usize) -> Vec<String> {
    let mut parts = Vec::from([String::new()]);
    for (place, letter) in word.chars().enumerate() {
        if place > 0 && place.is_multiple_of(longest.max(1)) {
            parts.push(String::new());
        }
        if let Some(part) = parts.last_mut() {
            part.push(letter);
        }
    }
    parts
}

/// `text` broken at `between` into lines of at most `width` columns; what is more than a space of
/// it goes on to the next line.
pub(crate) fn broken(text: &str, between: &str, width: usize) -> Vec<String> {
    let mut lines: Vec<String> = Vec::new();
    for (index, part) in text.split(between).enumerate() {
        let part =
            if index == 0 { part.to_string() } else { format!("{}{part}", between.trim_start()) };
        match lines.last_mut() {
            Some(line)
                if line.chars().count().saturating_add(part.chars().count()).saturating_add(1)
                    <= width =>
            {
                line.push(' ');
                line.push_str(&part);
            }
            _ => lines.push(part),
        }
    }
    lines
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case("1 tsp + 1/2 tsp + 1/4 tsp", " + ", 16, &["1 tsp + 1/2 tsp", "+ 1/4 tsp"])]
    #[case("40 drops", " + ", 24, &["40 drops"])]
    #[case("A B C D", " ", 5, &["A B C", "D"])]
    #[case("", " ", 5, &[""])]
    fn measures_break_between_their_parts(
        #[case] text: &str,
        #[case] between: &str,
        #[case] width: usize,
        #[case] expected: &[&str],
    ) {
        assert_eq!(broken(text, between, width), expected);
    }

    #[rstest]
    #[case("worm", 4, "worm")]
    #[case("worms", 4, "wor…")]
    #[case("größe", 5, "größe")]
    fn names_are_cut_to_their_column(
        #[case] text: &str,
        #[case] width: usize,
        #[case] cut_to: &str,
    ) {
        assert_eq!(cut(text, width), cut_to);
    }

    /// The lines of a page with what `fill` writes.
    fn lines(fill: impl FnOnce(&mut Page)) -> Vec<String> {
        let mut page = Page::default();
        fill(&mut page);
        page.text.lines().map(String::from).collect()
    }

    fn letters(count: usize) -> String {
        "a".repeat(count)
    }

    #[test]
    fn words_fill_the_page_and_no_more() {
        let wrapped = |text: &str| lines(|page| page.wrapped("", text));
        let of = |counts| wrapped(&words(counts));
        assert_eq!(of([40, 39]), [words([40, 39])]);
        assert_eq!(of([40, 40]), [letters(40), letters(40)]);
        assert_eq!(wrapped(&letters(80)), [letters(80)]);
        assert_eq!(wrapped(&letters(100)), [letters(80), letters(20)]);
    }

    /// Two words of so many letters.
    fn words(counts: [usize; 2]) -> String {
        counts.map(letters).join(" ")
    }

    #[test]
    fn a_word_in_parts() {
        assert_eq!(pieces("abcde", 2), ["ab", "cd", "e"]);
        for longest in [0, 1] {
            assert_eq!(pieces("abc", longest), ["a", "b", "c"]);
        }
    }

    #[test]
    fn ends_have_a_space_between_them() {
        let ends = |left, right| lines(|page| page.ends(&letters(left), &letters(right)));
        assert_eq!(ends(40, 39), [words([40, 39])]);
        assert_eq!(ends(40, 40), [letters(40), std::format!("{}{}", " ".repeat(40), letters(40))]);
    }

    #[test]
    fn a_heading_is_as_wide_as_the_page() {
        let headed = lines(|page| page.headed("POT 1", "9:30", '='));
        assert_eq!(headed, [std::format!("= POT 1 {} 9:30", "=".repeat(67))]);
        assert_eq!(headed[0].chars().count(), WIDTH);
    }

    #[test]
    fn one_is_not_many() {
        assert_eq!((counted(1, "shot"), counted(2, "shot")), ("1 shot".into(), "2 shots".into()));
    }

    proptest! {
        #[test]
        fn wrapped_text_keeps_every_word_within_the_page(text in "[a-zé ]{0,400}") {
            let mut page = Page::default();
            page.wrapped("  - ", &text);
            prop_assert!(page.text.lines().all(|line| line.chars().count() <= WIDTH));
            let letters = |text: &str| text.chars().filter(|c| c.is_alphabetic()).collect::<String>();
            prop_assert_eq!(letters(&page.text), letters(&text));
        }

        #[test]
        fn both_ends_fit_on_the_page(left in "\\PC{0,120}", right in "\\PC{0,120}") {
            let mut page = Page::default();
            page.ends(&left, &right);
            prop_assert!(page.text.lines().all(|line| line.chars().count() <= WIDTH));
        }
    }
}

//! Letters of a text from outside, as a message can show them.

use alloc::string::String;

/// Whether a letter does not show, or changes the direction of the text: spaces of no width, joiners, marks of direction,
/// invisible operators, variation selectors, the byte order mark, tags.
pub(crate) fn is_hidden(letter: char) -> bool {
    matches!(
        letter,
        '\u{ad}'
            | '\u{34f}'
            | '\u{61c}'
            | '\u{115f}'
            | '\u{1160}'
            | '\u{17b4}'
            | '\u{17b5}'
            | '\u{180b}'..='\u{180f}'
            | '\u{200b}'..='\u{200f}'
            | '\u{2028}'..='\u{202e}'
            | '\u{2060}'..='\u{206f}'
            | '\u{2800}'
            | '\u{3164}'
            | '\u{fe00}'..='\u{fe0f}'
            | '\u{feff}'
            | '\u{ffa0}'
            | '\u{fff9}'..='\u{fffb}'
            | '\u{e0000}'..='\u{e0fff}'
    )
}

/// Whether a letter is seen in a line.
pub(crate) fn is_seen(letter: char) -> bool {
    !is_hidden(letter) && !letter.is_control()
}

/// At most so many letters of `text`, with a sign in place of each that is not seen.
pub(crate) fn cut_short(text: &str, most: usize) -> String {
    let seen = |letter| if is_seen(letter) { letter } else { char::REPLACEMENT_CHARACTER };
    let mut short: String = text.chars().take(most).map(seen).collect();
    if text.chars().nth(most).is_some() {
        short.push('…');
    }
    short
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::cut_short;

    #[rstest]
    #[case("3 drops", "3 drops")]
    #[case("0123456789", "0123456789")]
    #[case("0123456789a", "0123456789…")]
    #[case("½ Löffel ✓", "½ Löffel ✓")]
    // A reversed text, a line, a space of no width: what is read is what is there.
    #[case("2\u{202e}4\n\u{200b}g", "2�4��g")]
    fn what_is_not_seen_has_a_sign(#[case] text: &str, #[case] shown: &str) {
        assert_eq!(cut_short(text, 10), shown);
    }
}

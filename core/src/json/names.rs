//! Names that people can tell apart: no character that does not show, and no two names that look alike.
//!
//! Names are compared without case, width of letters (full-width forms) and number of spaces. A letter with its mark as two
//! characters is refused, so that no name is written in two ways that look the same: this needs no table of compositions.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};

use super::reader::Node;
use crate::codes::code;
use crate::fault::{Fault, is_enough};
use crate::letter::is_hidden;

/// What is wrong with a character of a name.
fn odd(letter: char) -> Option<&'static str> {
    match letter {
        letter if is_hidden(letter) => Some("does not show, or changes the direction of the text"),
        '\u{300}'..='\u{36f}' => Some("is a mark that belongs to the letter before it"),
        letter if letter.is_control() => Some("is a control character"),
        _ => None,
    }
}

/// The first character of `text` that no name may hold, in words.
pub(super) fn oddity(text: &str) -> Option<String> {
    let mut letters = (1_u32..).zip(text.chars());
    let (place, letter, why) =
        letters.find_map(|(place, letter)| odd(letter).map(|why| (place, letter, why)))?;
    let code = u32::from(letter);
    Some(format!("Character {place} of the name, U+{code:04X}, {why}."))
}

/// `name` as it looks from a distance.
fn looks(name: &str) -> String {
    let mut look = String::with_capacity(name.len());
    for letter in name.chars() {
        let wide =
            u32::from(letter).checked_sub(0xfee0).filter(|code| (0x21..=0x7e).contains(code));
        let letter = wide.and_then(char::from_u32).unwrap_or(letter);
        match letter {
            letter if letter.is_whitespace() => {
                if !look.ends_with(' ') {
                    look.push(' ');
                }
            }
            letter => look.extend(letter.to_lowercase()),
        }
    }
    look
}

/// Adds a fault for each name of the object at `node` that looks like another one before it.
pub(super) fn report_alike<'a>(
    names: impl Iterator<Item = &'a str>,
    node: &Node<'_>,
    faults: &mut alloc::vec::Vec<Fault>,
) {
    let mut seen: BTreeMap<String, &str> = BTreeMap::new();
    for name in names {
        if is_enough(faults) {
            return;
        }
        let look = looks(name);
        if let Some(first) = seen.get(&look) {
            faults.push(Fault {
                code: code!("names-alike").into(),
                path: node.path.key(name).to_string(),
                message: format!("\"{name}\" looks like \"{first}\", which is here, too."),
                help: "Keep one of the two, or give them names that differ in more than case and spaces.".into(),
            });
        } else {
            seen.insert(look, name);
        }
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Map, Value};

    use super::looks;
    use crate::json::named::Named;
    use crate::json::reader::read_value;

    #[rstest]
    #[case("plum\u{200b}", "Character 5 of the name, U+200B, does not show")]
    #[case("\u{202e}plum", "Character 1 of the name, U+202E, does not show")]
    #[case("pl\u{ad}um", "Character 3 of the name, U+00AD, does not show")]
    #[case("plum\u{2066}x", "U+2066")]
    #[case("plum\u{feff}x", "U+FEFF")]
    #[case("plum\u{200f}x", "U+200F")]
    #[case("pl\u{7}um", "U+0007, is a control character")]
    #[case("re\u{301}sine", "Character 3 of the name, U+0301, is a mark")]
    fn a_character_that_fools_the_eye_is_named(#[case] name: &str, #[case] said: &str) {
        let object = Value::Object(Map::from_iter([(name.into(), Value::Bool(true))]));
        let faults = read_value::<Named<bool>>(&object).unwrap_err().into_vec();
        assert_eq!((faults.len(), &*faults[0].code), (1, "bad-name"), "{faults:?}");
        assert!(faults[0].message.contains(said), "{faults:?}");
    }

    /// Full-width forms of ASCII are U+FF01 to U+FF5E; the next one is a bracket of its own.
    #[test]
    fn a_wide_bracket_stays() {
        assert_eq!(looks("\u{ff5f}"), "\u{ff5f}");
        assert_eq!(looks("\u{ff00}"), "\u{ff00}");
    }

    #[rstest]
    #[case("plum", "Plum", true)]
    #[case("r\u{e9}sine", "R\u{c9}SINE", true)]
    #[case("dark plum", "dark  plum", true)]
    #[case("dark plum", "darkplum", false)]
    #[case("plum!", "plum\u{ff01}", true)]
    #[case("plum~", "plum\u{ff5e}", true)]
    #[case("dark plum", "dark\u{a0}plum", true)]
    #[case("plum", "\u{ff50}\u{ff4c}\u{ff55}\u{ff4d}", true)]
    #[case("5 K", "5 \u{212a}", true)]
    #[case("plum", "plum 2", false)]
    #[case("plum-2", "plum 2", false)]
    #[case("資", "贈", false)]
    fn names_that_look_alike_are_one_too_many(
        #[case] a: &str,
        #[case] b: &str,
        #[case] alike: bool,
    ) {
        let two = [a, b].map(|name| (name.into(), Value::Bool(true)));
        let object = Value::Object(Map::from_iter(two));
        let read = read_value::<Named<bool>>(&object);
        assert_eq!(read.is_err(), alike, "{read:?}");
        if let Err(faults) = read {
            let faults = faults.into_vec();
            assert_eq!((faults.len(), &*faults[0].code), (1, "names-alike"), "{faults:?}");
            assert!([a, b].iter().all(|name| faults[0].message.contains(name)), "{faults:?}");
        }
    }
}

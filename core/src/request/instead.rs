//! What went into a pot instead of what was meant, said in short.

use alloc::borrow::ToOwned;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;

use serde_json::Value;

use crate::fault::Fault;
use crate::json::reader::{Node, Read, deserialize_by_reading};
use crate::quantity::{Amount, Rational};

/// What went in of a material instead of what was meant: `"twice"`, `"half"`, `"3 times"`, `"none"`, `"+ 10 drops"`,
/// `"- 3 g"`, or the amount itself, `"90 drops"`.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Instead {
    /// A multiple of what was meant.
    Times(Rational),
    /// So much more.
    More(Amount),
    /// So much less.
    Less(Amount),
    /// This amount.
    Amount(Amount),
}

/// Multiples that have a word of their own.
const WORDS: [(&str, i128, i128); 5] =
    [("none", 0, 1), ("half", 1, 2), ("twice", 2, 1), ("double", 2, 1), ("nothing", 0, 1)];

/// Numbers that are written out before "times".
const NUMBERS: [(&str, i64); 7] =
    [("two", 2), ("three", 3), ("four", 4), ("five", 5), ("six", 6), ("eight", 8), ("ten", 10)];

/// The multiple that `text` is.
fn multiple(text: &str) -> Option<Rational> {
    if let Some((_, parts, of)) = WORDS.iter().find(|(word, ..)| *word == text) {
        return Rational::new(*parts, *of);
    }
    let number = text.strip_suffix("times")?.trim_end();
    if let Some((_, number)) = NUMBERS.iter().find(|(word, _)| *word == number) {
        return Some(Rational::from_int(*number));
    }
    let times = match number.split_once('/') {
        Some((above, below)) => {
            let above = Rational::parse_decimal(above.trim())?;
            above.checked_div(Rational::parse_decimal(below.trim())?)
        }
        None => Rational::parse_decimal(number),
    };
    times.filter(|times| !times.is_negative())
}

impl fmt::Display for Instead {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Times(times) => {
                let word =
                    WORDS.iter().find(|(_, parts, of)| Rational::new(*parts, *of) == Some(*times));
                match word {
                    Some((word, ..)) => f.write_str(word),
                    None => write!(f, "{times} times"),
                }
            }
            Self::More(amount) => write!(f, "+ {amount}"),
            Self::Less(amount) => write!(f, "- {amount}"),
            Self::Amount(amount) => amount.fmt(f),
        }
    }
}

impl serde::Serialize for Instead {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
    }
}

deserialize_by_reading! { Instead; }

impl Read for Instead {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let Value::String(text) = node.value else {
            return Amount::read(node, faults).map(Self::Amount);
        };
        let text = text.trim();
        if let Some(times) = multiple(text) {
            return Some(Self::Times(times));
        }
        let (of, rest): (fn(Amount) -> Self, &str) =
            match (text.strip_prefix('+'), text.strip_prefix(['-', '−'])) {
                (Some(rest), _) => (Self::More, rest),
                (None, Some(rest)) => (Self::Less, rest),
                (None, None) => (Self::Amount, text),
            };
        let mut found = Vec::new();
        let value = Value::String(rest.trim_start().to_owned());
        let amount = Amount::read(&Node { value: &value, path: node.path, tag: None }, &mut found);
        faults.extend(found.into_iter().map(|fault| Fault {
            help: alloc::format!(
                "{} Or write \"twice\", \"half\", \"3 times\", \"none\", \"+ 10 drops\" or \"- 3 g\".",
                fault.help
            ),
            ..fault
        }));
        amount.map(of)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Instead {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        "Instead".into()
    }

    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        let amount = generator.subschema_for::<Amount>();
        schemars::json_schema!({
            "description": "What went in instead: a multiple of what was meant, a difference to it, or an amount.",
            "examples": ["twice", "half", "3 times", "none", "+ 10 drops", "- 3 g", "90 drops"],
            "anyOf": [{ "type": "string" }, amount]
        })
    }
}

/// Names of the kinds of material, as `instead` takes them, and what it calls a plastisol.
pub(super) fn kind_of(word: &str) -> Option<crate::material::Kind> {
    use crate::material::Kind;
    let kinds = || Kind::ALL.iter().copied();
    let kind = if word == "base" {
        Some(Kind::Plastisol)
    } else {
        kinds().find(|kind| kind.word() == word)
    };
    kind.filter(|kind| *kind != Kind::Other)
}

/// Names as a list in words.
pub(super) fn listed(names: &[&str]) -> String {
    names.join(", ")
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::json;

    use super::*;
    use crate::json::reader::read_value;

    #[rstest]
    #[case("twice", "twice")]
    #[case("double", "twice")]
    #[case("three times", "3 times")]
    #[case("1.5 times", "1.5 times")]
    #[case("2/3 times", "2/3 times")]
    #[case("0.5 times", "half")]
    #[case("nothing", "none")]
    #[case("+ 10 drops", "+ 10 drops")]
    #[case("+10 drops", "+ 10 drops")]
    #[case("-3 g", "- 3 g")]
    #[case("− 1/4 tsp", "- 1/4 tsp")]
    #[case("1 1/2 cup", "1 1/2 cup")]
    fn it_is_said_in_short(#[case] text: &str, #[case] written: &str) {
        let read: Instead = read_value(&json!(text)).unwrap();
        assert_eq!(alloc::format!("{read}"), written);
        assert_eq!(read_value::<Instead>(&json!(written)).unwrap(), read);
    }

    #[rstest]
    #[case(json!("thrice"))]
    #[case(json!("-1 times"))]
    #[case(json!("1/0 times"))]
    #[case(json!("+ 10"))]
    #[case(json!("- -3 g"))]
    #[case(json!(2))]
    #[case(json!(null))]
    fn what_is_none_is_refused(#[case] value: Value) {
        let faults = read_value::<Instead>(&value).unwrap_err();
        assert_eq!(faults.count(), 1, "{faults}");
    }

    #[test]
    fn what_can_be_written_is_named() {
        let faults = read_value::<Instead>(&json!("thrice")).unwrap_err();
        let fault = faults.iter().next().unwrap();
        assert!(fault.help.contains("Or write \"twice\", \"half\""), "{fault:?}");
    }
}

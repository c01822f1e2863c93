//! Places in a document.

use core::fmt;

/// A place in a document, as the steps that lead to it: it costs nothing until a fault needs it in words.
#[derive(Debug, Clone, Copy)]
pub(crate) enum Path<'a> {
    /// A place in words, as a JSON Pointer (RFC 6901); empty for the whole document.
    At(&'a str),
    /// A field of an object.
    Key(&'a Path<'a>, &'a str),
    /// An item of a list.
    Index(&'a Path<'a>, usize),
}

impl Path<'_> {
    /// The whole document.
    pub(crate) const ROOT: Path<'static> = Path::At("");

    /// The field `key` of the value here.
    pub(crate) fn key<'a>(&'a self, key: &'a str) -> Path<'a> {
        Path::Key(self, key)
    }

    /// The item `index` of the value here.
    pub(crate) fn index(&self, index: usize) -> Path<'_> {
        Path::Index(self, index)
    }
}

/// As a JSON Pointer.
impl fmt::Display for Path<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::At(place) => f.write_str(place),
            Self::Key(parent, key) => {
                write!(f, "{parent}/")?;
                key.chars().try_for_each(|letter| match letter {
                    '~' => f.write_str("~0"),
                    '/' => f.write_str("~1"),
                    _ => fmt::Write::write_char(f, letter),
                })
            }
            Self::Index(parent, index) => write!(f, "{parent}/{index}"),
        }
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use rstest::rstest;
    use serde_json::json;

    use super::*;

    #[rstest]
    #[case("plain", "/plain")]
    #[case("a/b", "/a~1b")]
    #[case("a~b", "/a~0b")]
    #[case("~1", "/~01")]
    fn a_pointer_escapes_its_keys(#[case] key: &str, #[case] expected: &str) {
        let path = Path::ROOT.key(key).to_string();
        assert_eq!(path, expected);
        assert_eq!(json!({ key: 7 }).pointer(&path), Some(&json!(7)));
    }

    #[test]
    fn a_pointer_leads_all_the_way() {
        let document = json!({ "lines": [{ "a": 1 }, { "b/c": 2 }] });
        let path = Path::At("/lines").index(1).key("b/c").to_string();
        assert_eq!(document.pointer(&path), Some(&json!(2)));
        assert_eq!(Path::ROOT.to_string(), "");
    }
}

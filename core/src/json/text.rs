//! JSON text to a JSON value, with every duplicate key found.
//!
//! `serde_json` keeps the last of two equal keys and says nothing, so that half of what
//! somebody wrote would be lost; duplicates can only be seen here, in the text.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::cell::RefCell;
use core::fmt;

use serde::de::{DeserializeSeed, Deserializer, Error as _, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Number, Value};

use super::path::Path;
use crate::codes::code;
use crate::fault::{Fault, Faults, is_enough};

/// Longest document read, in bytes: far beyond a shop's book, and small enough that
/// a hostile one cannot take the host down.
pub const LONGEST_DOCUMENT: usize = 16 << 20;

/// Longest key of an object, in bytes: any name, and a bound on the paths of faults.
const LONGEST_KEY: usize = 400;

/// Reads `text` as one JSON value.
///
/// # Errors
/// A text that is not JSON, is longer than [`LONGEST_DOCUMENT`], or has a key that is longer than 400 bytes or twice in one
/// object.
pub fn parse(text: &str) -> Result<Value, Faults> {
    if text.len() > LONGEST_DOCUMENT {
        return Err(too_long(text.len()).into());
    }
    // Some editors put a byte order mark before the text; RFC 8259 lets a reader pass over it.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let duplicates = RefCell::new(Vec::new());
    let mut reader = serde_json::Deserializer::from_str(text);
    let read = Tree { path: &Path::ROOT, duplicates: &duplicates }
        .deserialize(&mut reader)
        .and_then(|value| reader.end().map(|()| value));
    let value = read.map_err(|error| Faults::from(not_json(&error)))?;
    match Faults::from_vec(duplicates.into_inner()) {
        Some(faults) => Err(faults),
        None => Ok(value),
    }
}

/// The fault of a document of so many bytes, for a reader that did not keep them.
pub(crate) fn too_long(bytes: usize) -> Fault {
    Fault {
        code: code!("document-too-long").into(),
        path: String::new(),
        message: format!("The document is {bytes} bytes long."),
        help: format!("Split it: up to {LONGEST_DOCUMENT} bytes are read."),
    }
}

/// Reads one value from any format of serde; a key twice in one object is an error here too.
pub(super) fn value<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Value, D::Error> {
    let duplicates = RefCell::new(Vec::new());
    let value = Tree { path: &Path::ROOT, duplicates: &duplicates }.deserialize(deserializer)?;
    match Faults::from_vec(duplicates.into_inner()) {
        Some(faults) => Err(D::Error::custom(faults)),
        None => Ok(value),
    }
}

fn not_json(error: &serde_json::Error) -> Fault {
    let text = error.to_string();
    let reason = text.split(" at line ").next().unwrap_or(&text).to_owned();
    Fault {
        code: code!("not-json").into(),
        path: String::new(),
        message: format!(
            "The text is not JSON: {reason}, at line {}, column {}.",
            error.line(),
            error.column()
        ),
        help: "Look there, and at the end of the line before, for a missing or extra comma, quote or bracket; names and texts go in double quotes.".into(),
    }
}

struct Tree<'a> {
    path: &'a Path<'a>,
    duplicates: &'a RefCell<Vec<Fault>>,
}

impl<'de> DeserializeSeed<'de> for Tree<'_> {
    type Value = Value;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Value, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Tree<'_> {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_bool<E>(self, value: bool) -> Result<Value, E> {
        Ok(Value::Bool(value))
    }

    fn visit_i64<E>(self, value: i64) -> Result<Value, E> {
        Ok(Value::Number(value.into()))
    }

    fn visit_u64<E>(self, value: u64) -> Result<Value, E> {
        Ok(Value::Number(value.into()))
    }

    fn visit_f64<E: serde::de::Error>(self, value: f64) -> Result<Value, E> {
        Number::from_f64(value).map(Value::Number).ok_or_else(|| E::custom("a number is too large"))
    }

    fn visit_str<E>(self, value: &str) -> Result<Value, E> {
        Ok(Value::String(value.to_owned()))
    }

    fn visit_unit<E>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<Value, A::Error> {
        let mut values = Vec::new();
        loop {
            let path = self.path.index(values.len());
            match list.next_element_seed(Tree { path: &path, duplicates: self.duplicates })? {
                Some(value) => values.push(value),
                None => return Ok(Value::Array(values)),
            }
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<Value, A::Error> {
        let mut fields = Map::new();
        while let Some(key) = map.next_key::<String>()? {
            if key.len() > LONGEST_KEY {
                return Err(A::Error::custom(format_args!(
                    "a key is longer than {LONGEST_KEY} bytes"
                )));
            }
            let path = self.path.key(&key);
            let value = map.next_value_seed(Tree { path: &path, duplicates: self.duplicates })?;
            if fields.contains_key(&key) {
                let mut found = self
                    .duplicates
                    .try_borrow_mut()
                    .map_err(|_| A::Error::custom("the list of duplicates is in use"))?;
                if !is_enough(&found) {
                    found.push(Fault {
                        code: code!("duplicate-key").into(),
                        path: path.to_string(),
                        message: format!("\"{key}\" occurs twice here."),
                        help: "Keep one of the two, or give them different names.".into(),
                    });
                }
            }
            fields.insert(key, value);
        }
        Ok(Value::Object(fields))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn all_duplicates_are_found_at_once() {
        let faults =
            parse(r#"{"a": 1, "b": [{"c/d": 1, "c/d": 2}], "a": 2}"#).expect_err("two duplicates");
        let paths: Vec<&str> = faults.iter().map(|fault| fault.path.as_str()).collect();
        assert_eq!(paths, ["/b/0/c~1d", "/a"]);
    }

    #[test]
    fn a_slip_of_syntax_says_the_line() {
        let faults = parse("{\n  \"a\": 1,\n}").expect_err("trailing comma");
        let fault = faults.iter().next().expect("one");
        assert_eq!(fault.code, "not-json");
        assert!(fault.message.contains("line 3"), "{}", fault.message);
    }

    #[test]
    fn a_document_is_as_long_as_it_may_be() {
        let of = |length: usize| parse(&(" ".repeat(length - 1) + "1"));
        assert_eq!(of(LONGEST_DOCUMENT), Ok(Value::from(1)));
        let faults = of(LONGEST_DOCUMENT + 1).expect_err("too long");
        assert_eq!(faults.iter().next().expect("one").code, "document-too-long");
    }

    #[test]
    fn what_json_does_not_have_is_refused() {
        use serde::de::value::{BytesDeserializer, Error};
        let refused = value(BytesDeserializer::<Error>::new(b"x")).expect_err("bytes");
        assert!(refused.to_string().ends_with("expected a JSON value"), "{refused}");
    }

    #[test]
    fn deep_nesting_is_refused_without_a_crash() {
        let text = "[".repeat(100_000);
        assert!(parse(&text).is_err());
    }

    #[test]
    fn a_key_has_an_end() {
        let of = |length: usize| parse(&format!(r#"{{ "{}": 1 }}"#, "k".repeat(length)));
        assert!(of(LONGEST_KEY).is_ok());
        let faults = of(LONGEST_KEY + 1).unwrap_err();
        assert!(
            faults.to_string().contains("a key is longer than 400 bytes, at line 1"),
            "{faults}"
        );
    }

    #[test]
    fn numbers_keep_their_bits() {
        let value = parse("[0.1, 1e-320, 18446744073709551615]").expect("numbers");
        assert_eq!(value[0].as_f64(), Some(0.1));
        assert_eq!(value[1].as_f64(), Some(1e-320));
        assert_eq!(value[2].as_u64(), Some(u64::MAX));
    }
}

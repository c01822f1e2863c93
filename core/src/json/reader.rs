//! Reading a JSON value into the types of a document, with all of its faults at once.
//!
//! serde stops at the first fault. A shop owner who fixes a book wants the whole list, so
//! the value is walked: what cannot be read leaves a [`Fault`] with its path, and the walk
//! goes on.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde_json::{Map, Value};

use super::nearest::nearest;
use super::path::Path;
use crate::codes::code;
use crate::fault::{Diagnose, Fault, Faults, is_enough};
use crate::letter::cut_short;

/// A value of a document and its place.
pub(crate) struct Node<'a> {
    pub(crate) value: &'a Value,
    pub(crate) path: Path<'a>,
    /// A field that has been read already.
    pub(crate) tag: Option<&'static str>,
}

/// A type that can be read from a document.
pub(crate) trait Read: Sized {
    /// Reads the value, or adds to `faults` what is wrong with it.
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self>;
}

/// Reads `value` as a `T`.
pub(crate) fn read_value<T: Read>(value: &Value) -> Result<T, Faults> {
    let mut faults = Vec::new();
    let read = T::read(&Node::root(value), &mut faults);
    Faults::or(faults, read)
}

impl<'a> Node<'a> {
    /// A whole document.
    pub(crate) fn root(value: &'a Value) -> Self {
        Self { value, path: Path::ROOT, tag: None }
    }

    /// The same, where its field `tag` has been read already.
    pub(crate) fn tagged(&self, tag: &'static str) -> Self {
        Self { tag: Some(tag), ..*self }
    }

    /// The `value` at `key` below this one.
    pub(crate) fn child<'b>(&'b self, key: &'b str, value: &'b Value) -> Node<'b> {
        Node { value, path: self.path.key(key), tag: None }
    }

    /// The fields of the object here, or the fault that it is not one.
    pub(crate) fn object(&self, faults: &mut Vec<Fault>) -> Option<&'a Map<String, Value>> {
        let object = self.value.as_object();
        if object.is_none() {
            faults.push(self.mismatch("an object: { \"name\": value, ... }"));
        }
        object
    }

    /// The items of the list here, or the fault that it is not one.
    pub(crate) fn list(&self, faults: &mut Vec<Fault>) -> Option<&'a [Value]> {
        let list = self.value.as_array().map(Vec::as_slice);
        if list.is_none() {
            faults.push(self.mismatch("a list: [ ..., ... ]"));
        }
        list
    }

    /// The `value` at `index` of the list here.
    pub(crate) fn item<'b>(&'b self, index: usize, value: &'b Value) -> Node<'b> {
        Node { value, path: self.path.index(index), tag: None }
    }

    /// The fault that `error` is here.
    pub(crate) fn fault(&self, error: &dyn Diagnose) -> Fault {
        Fault::at(self.path.to_string(), error)
    }

    /// The fault that something other than `wanted` is here.
    pub(crate) fn mismatch(&self, wanted: &str) -> Fault {
        let found = match self.value {
            Value::Null => "nothing (null)".to_owned(),
            Value::Bool(value) => format!("{value}"),
            Value::Number(number) => format!("the bare number {number}"),
            Value::String(text) => format!("the text \"{}\"", shortened(text)),
            Value::Array(_) => "a list".to_owned(),
            Value::Object(_) => "an object".to_owned(),
        };
        Fault {
            code: code!("wrong-type").into(),
            path: self.path.to_string(),
            message: format!("Found {found}."),
            help: format!("Write {wanted}."),
        }
    }

    /// The fault that the number `found` here is of the right kind, and outside of what is `wanted`.
    pub(crate) fn outside(&self, found: &dyn core::fmt::Display, wanted: &str) -> Fault {
        Fault {
            code: code!("out-of-range").into(),
            path: self.path.to_string(),
            message: format!("{found} is out of range."),
            help: format!("Write {wanted}."),
        }
    }

    /// The whole number from `least` to the largest count here, or the fault that it is none.
    fn count(&self, least: u32, faults: &mut Vec<Fault>) -> Option<u32> {
        let wanted = format!("a whole number from {least} to {LARGEST_COUNT}");
        let found = self.value.as_f64().filter(|found| libm::floor(*found) == *found);
        let Some(found) = found else {
            faults.push(self.mismatch(&wanted));
            return None;
        };
        let count = self.value.as_u64().and_then(|count| u32::try_from(count).ok());
        let count = count.filter(|count| (least..=LARGEST_COUNT).contains(count));
        if count.is_none() {
            faults.push(self.outside(&found, &wanted));
        }
        count
    }
}

/// The beginning of `text`, if it is long.
pub(crate) fn shortened(text: &str) -> String {
    const SHOWN: usize = 40;
    cut_short(text, SHOWN)
}

/// A name that people and paths can carry: one line, not empty, not endless.
pub(crate) fn checked_name(text: &str, path: &Path<'_>, faults: &mut Vec<Fault>) -> bool {
    let fault = if let Some(odd) = super::names::oddity(text) {
        Some(odd)
    } else if text.trim().is_empty() {
        Some("A name is empty.".to_owned())
    } else if text.trim() != text {
        Some("A name starts or ends with a space.".to_owned())
    } else if text.chars().nth(Name::LONGEST).is_some() {
        Some("A name is too long.".to_owned())
    } else {
        None
    };
    let bad = fault.is_some();
    if let Some(message) = fault {
        faults.push(Fault {
            code: code!("bad-name").into(),
            path: path.to_string(),
            message,
            help: format!(
                "Give it a name of 1 to {} characters on one line, each of which shows.",
                Name::LONGEST
            ),
        });
    }
    !bad
}

impl Read for String {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::String(text) => Some(text.clone()),
            _ => {
                faults.push(node.mismatch("a text in double quotes"));
                None
            }
        }
    }
}

/// A name: of a material, formula, mold, product, order.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct Name(pub String);

impl Name {
    /// The longest name, in characters.
    pub const LONGEST: usize = 80;

    /// `text` as a name: 1 to [`Name::LONGEST`] characters on one line, each of which shows.
    ///
    /// # Errors
    /// The fault, without a path.
    pub fn new(text: &str) -> Result<Self, Fault> {
        let mut faults = Vec::new();
        checked_name(text, &Path::ROOT, &mut faults);
        faults.pop().map_or_else(|| Ok(Self(text.to_owned())), Err)
    }
}

deserialize_by_reading! { Name; }

impl Read for Name {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let text = String::read(node, faults)?;
        checked_name(&text, &node.path, faults).then_some(Self(text))
    }
}

/// A count that may be zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(transparent)]
pub struct Count(pub u32);

impl Read for Count {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        node.count(0, faults).map(Self)
    }
}

impl Read for crate::quantity::System {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        read_word(node, &Self::ALL, Self::name, faults)
    }
}

impl Read for serde_json::Number {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Number(number) => Some(number.clone()),
            _ => {
                faults.push(node.mismatch("a number"));
                None
            }
        }
    }
}

impl Read for crate::softener::Scale {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        read_word(node, &[Self::Shore00, Self::ShoreA], Self::word, faults)
    }
}

impl Read for bool {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        node.value.as_bool().or_else(|| {
            faults.push(node.mismatch("true or false"));
            None
        })
    }
}

/// Largest count of anything in a document: pieces, packs, cavities.
pub(crate) const LARGEST_COUNT: u32 = 1_000_000;

impl Read for u32 {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        node.count(1, faults)
    }
}

impl<T: Read> Read for Vec<T> {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let items = node.list(faults)?;
        // It grows as items are read: one that is larger than its text may be no item.
        let mut read = Self::new();
        for (index, value) in items.iter().enumerate() {
            if is_enough(faults) {
                break;
            }
            if let Some(one) = T::read(&node.item(index, value), faults) {
                read.push(one);
            }
        }
        (read.len() == items.len()).then_some(read)
    }
}

/// An embedding program's own data in a document; carried through untouched.
pub type Ext = Map<String, Value>;

impl Read for Ext {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(fields) => Some(fields.clone()),
            _ => {
                faults.push(node.mismatch("an object"));
                None
            }
        }
    }
}

/// Reads a `T` from any format of serde by the same walk, so that there is one grammar.
pub(crate) fn deserialize<'de, T: Read, D: serde::Deserializer<'de>>(
    deserializer: D,
) -> Result<T, D::Error> {
    let value = super::text::value(deserializer)?;
    read_value(&value).map_err(serde::de::Error::custom)
}

/// Implements serde's `Deserialize` by [`Read`].
macro_rules! deserialize_by_reading {
    ($($Type:ty $(, $Generic:ident: $Bound:ident)?;)+) => {$(
        impl<'de $(, $Generic: $Bound)?> serde::Deserialize<'de> for $Type {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                $crate::json::reader::deserialize(deserializer)
            }
        }
    )+};
}
pub(crate) use deserialize_by_reading;

/// One of the words of `all`, or a fault that lists them.
pub(crate) fn read_word<T: Copy>(
    node: &Node<'_>,
    all: &[T],
    word: fn(T) -> &'static str,
    faults: &mut Vec<Fault>,
) -> Option<T> {
    let found = place_of_word(node, &|index| all.get(index).map(|&one| word(one)), faults)?;
    all.get(found).copied()
}

/// The one of `all` whose word is here.
fn place_of_word(
    node: &Node<'_>,
    word: &dyn Fn(usize) -> Option<&'static str>,
    faults: &mut Vec<Fault>,
) -> Option<usize> {
    let words = || (0..).map_while(word);
    let listed = || words().collect::<Vec<_>>().join(", ");
    let Value::String(text) = node.value else {
        faults.push(node.mismatch(&format!("one of: {}", listed())));
        return None;
    };
    let found = words().position(|word| word == text);
    if found.is_none() {
        faults.push(Fault {
            code: code!("unknown-word").into(),
            path: node.path.to_string(),
            message: format!("\"{}\" is not known here.", shortened(text)),
            help: match nearest(text, words()) {
                Some(near) => format!("Did you mean \"{near}\"? Known: {}.", listed()),
                None => format!("Write one of: {}.", listed()),
            },
        });
    }
    found
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::json;

    use super::*;

    #[rstest]
    #[case("plum", true)]
    #[case("reed, pale", true)]
    #[case("", false)]
    #[case("  ", false)]
    #[case(" plum", false)]
    #[case("plum\n", false)]
    #[case("a\u{0}b", false)]
    fn a_name_is_on_one_line(#[case] name: &str, #[case] good: bool) {
        let value = json!(name);
        assert_eq!(read_value::<Name>(&value).is_ok(), good);
        assert_eq!(Name::new(name).is_ok(), good);
        let map = json!({ name: true });
        assert_eq!(read_value::<crate::json::Named<bool>>(&map).is_ok(), good);
        assert_eq!(serde_json::from_value::<Name>(value).is_ok(), good);
    }

    #[test]
    fn a_name_has_an_end() {
        let of = |length: usize| json!("n".repeat(length));
        assert!(read_value::<Name>(&of(Name::LONGEST)).is_ok());
        assert!(read_value::<Name>(&of(Name::LONGEST + 1)).is_err());
    }

    #[rstest]
    #[case(json!(1), true)]
    #[case(json!(1_000_000), true)]
    #[case(json!(0), false)]
    #[case(json!(1_000_001), false)]
    #[case(json!(-3), false)]
    #[case(json!(2.5), false)]
    #[case(json!("3"), false)]
    fn a_count_is_whole_and_believable(#[case] value: Value, #[case] good: bool) {
        assert_eq!(read_value::<u32>(&value).is_ok(), good);
    }

    #[allow(unreachable_pub)] // the macro declares what documents are made of
    mod probe {
        use crate::json::entry::entry;
        use crate::json::reader::Name;
        use alloc::vec::Vec;

        entry! {
        /// For the tests.
        pub struct Probe {
            required {
                /// One.
                count: u32,
                /// Two.
                name: Name,
            }
            optional {
                /// Three.
                flags: Vec<bool>,
            }
        }
        }
    }
    use probe::Probe;

    #[test]
    fn all_that_is_wrong_is_reported_with_its_place() {
        let value = json!({ "count": 0, "flags": [true, 1, null], "nane": "x" });
        let faults = read_value::<Probe>(&value).unwrap_err();
        let found: Vec<(&str, &str)> =
            faults.iter().map(|fault| (&*fault.path, &*fault.code)).collect();
        let expected = [
            ("/count", "out-of-range"),
            ("", "missing-field"),
            ("/flags/1", "wrong-type"),
            ("/flags/2", "wrong-type"),
            ("/nane", "unknown-field"),
        ];
        assert_eq!(found, expected);
        let helps: Vec<&str> = faults.iter().map(|fault| &*fault.help).collect();
        assert_eq!(helps[1], "Add \"name\" here. Write a text in double quotes.");
        assert_eq!(helps[4], "Did you mean \"name\"?");
        assert!(serde_json::from_value::<Probe>(value).is_err());
    }

    /// What has a fault is not read: without a field, with one that is wrong, or with `ext` that is.
    #[rstest]
    #[case(json!({ "name": "x" }))]
    #[case(json!({ "count": 1, "name": "x", "flags": [1] }))]
    #[case(json!({ "count": 1, "name": "x", "flags": [1], "ext": {} }))]
    #[case(json!({ "count": 1, "name": "x", "ext": 1 }))]
    fn what_has_a_fault_is_not_read(#[case] value: Value) {
        let mut faults = Vec::new();
        assert_eq!(Probe::read(&Node::root(&value), &mut faults), None);
        assert_eq!(faults.len(), 1);
    }

    #[test]
    fn each_kind_says_what_it_wants() {
        fn help<T: Read>(value: Value) -> String {
            let mut faults = Vec::new();
            assert!(T::read(&Node::root(&value), &mut faults).is_none());
            faults.remove(0).help
        }
        assert_eq!(help::<Ext>(json!(1)), "Write an object.");
        assert_eq!(help::<serde_json::Number>(json!("1")), "Write a number.");
        assert!(help::<crate::softener::Scale>(json!(1)).starts_with("Write one of: "));
    }

    #[test]
    fn a_long_text_is_shown_by_its_beginning() {
        assert_eq!(shortened(&"a".repeat(40)), "a".repeat(40));
        assert_eq!(shortened(&"a".repeat(41)), format!("{}…", "a".repeat(40)));
    }

    #[test]
    fn nothing_is_not_the_same_as_left_out() {
        let good = json!({ "count": 1, "name": "x" });
        assert_eq!(read_value::<Probe>(&good).unwrap().flags, None);
        let null = json!({ "count": 1, "name": "x", "flags": null });
        assert!(
            read_value::<Probe>(&null).is_err() && serde_json::from_value::<Probe>(null).is_err()
        );
    }
}

//! Reading a JSON value into the types of a document, with all of its faults at once.
//!
//! serde stops at the first fault. A shop owner who mends a book wants the whole list, so
//! the value is walked here: what cannot be read leaves a [`Fault`] with its path, and the
//! walk goes on beside it. [`entry!`](crate::document::reader) declares a document's type
//! once, for serde, for the JSON Schema and for this walk.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde_json::{Map, Value};

use crate::fault::{Diagnose, Fault, Faults};

/// The JSON Pointer (RFC 6901) of `key` below `parent`.
pub(crate) fn pointer(parent: &str, key: &str) -> String {
    format!("{parent}/{}", key.replace('~', "~0").replace('/', "~1"))
}

/// A value of a document and where it stands.
#[derive(Clone)]
pub(crate) struct Node<'a> {
    pub(crate) value: &'a Value,
    pub(crate) path: String,
}

/// What can be read from a document.
pub(crate) trait Read: Sized {
    /// Reads the value, or says in `faults` what is wrong with it.
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self>;
}

/// Reads `value` as a `T`.
pub(crate) fn read_value<T: Read>(value: &Value) -> Result<T, Faults> {
    let mut faults = Vec::new();
    let read = T::read(&Node { value, path: String::new() }, &mut faults);
    match (Faults::from_vec(faults), read) {
        (Some(faults), _) => Err(faults),
        (None, Some(read)) => Ok(read),
        (None, None) => Err(Faults::from(Fault {
            code: "unreadable".into(),
            path: String::new(),
            message: "The document could not be read.".into(),
            help: "Compare it with the JSON Schema.".into(),
        })),
    }
}

impl<'a> Node<'a> {
    /// The value at `key` below this one.
    pub(crate) fn child(&self, key: &str, value: &'a Value) -> Node<'a> {
        Node { value, path: pointer(&self.path, key) }
    }

    /// The fault that `error` is here.
    pub(crate) fn fault(&self, error: &dyn Diagnose) -> Fault {
        Fault::at(self.path.clone(), error)
    }

    /// The fault that something else than `wanted` stands here.
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
            code: "wrong-type".into(),
            path: self.path.clone(),
            message: format!("Here stands {found}."),
            help: format!("Write {wanted}."),
        }
    }
}

fn shortened(text: &str) -> String {
    const SHOWN: usize = 40;
    let mut shown: String = text.chars().take(SHOWN).collect();
    if text.chars().nth(SHOWN).is_some() {
        shown.push('…');
    }
    shown
}

/// The fields of one object while it is read: what was not asked for is unknown.
pub(crate) struct Fields<'a> {
    object: &'a Map<String, Value>,
    path: &'a str,
    known: Vec<&'static str>,
}

impl<'a> Fields<'a> {
    pub(crate) fn open(node: &'a Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(object) => Some(Self { object, path: &node.path, known: Vec::new() }),
            _ => {
                faults.push(node.mismatch("an object: { \"name\": value, ... }"));
                None
            }
        }
    }

    /// The field `name`: `None` where it is wrong or missing.
    pub(crate) fn required<T: Read>(
        &mut self,
        name: &'static str,
        faults: &mut Vec<Fault>,
    ) -> Option<T> {
        self.required_by(name, faults, T::read)
    }

    /// The field `name` as `read` reads it.
    pub(crate) fn required_by<T>(
        &mut self,
        name: &'static str,
        faults: &mut Vec<Fault>,
        read: impl FnOnce(&Node<'_>, &mut Vec<Fault>) -> Option<T>,
    ) -> Option<T> {
        let before = faults.len();
        let read = read(&self.node(name), faults);
        if self.is_missing(name, before, faults) { None } else { read }
    }

    /// Whether there is no field `name`; then what null was told, from the fault `before` on, becomes the fault that
    /// it is missing: what would do there is what its type says when it finds nothing.
    fn is_missing(&self, name: &str, before: usize, faults: &mut Vec<Fault>) -> bool {
        let missing = !self.object.contains_key(name);
        if missing {
            let how = faults.drain(before..).next().map(|fault| format!(" {}", fault.help));
            faults.push(Fault {
                code: "missing-field".into(),
                path: self.path.to_owned(),
                message: format!("\"{name}\" is missing."),
                help: format!("Add \"{name}\" here.{}", how.unwrap_or_default()),
            });
        }
        missing
    }

    /// The field `name`, if it is there: the outer `None` where it is wrong.
    #[allow(clippy::option_option)] // absent and wrong are two things
    pub(crate) fn optional<T: Read>(
        &mut self,
        name: &'static str,
        faults: &mut Vec<Fault>,
    ) -> Option<Option<T>> {
        match self.present(name) {
            Some(node) => T::read(&node, faults).map(Some),
            None => Some(None),
        }
    }

    /// Where the field `name` stands; null where it is missing.
    fn node(&mut self, name: &'static str) -> Node<'a> {
        let missing = || Node { value: &Value::Null, path: pointer(self.path, name) };
        self.present(name).unwrap_or_else(missing)
    }

    /// Where the field `name` stands, if it is there.
    fn present(&mut self, name: &'static str) -> Option<Node<'a>> {
        self.known.push(name);
        let value = self.object.get(name)?;
        Some(Node { value, path: pointer(self.path, name) })
    }

    /// Says which fields nobody asked for.
    pub(crate) fn close(self, faults: &mut Vec<Fault>) {
        Self::close_with(self.object, self.path, &self.known, faults);
    }

    /// Says which fields of the `object` at `path` are not among those `known`.
    pub(crate) fn close_with(
        object: &Map<String, Value>,
        path: &str,
        known: &[&'static str],
        faults: &mut Vec<Fault>,
    ) {
        let absent = || known.iter().copied().filter(|known| !object.contains_key(*known));
        for key in object.keys() {
            if !known.contains(&key.as_str()) {
                faults.push(Fault {
                    code: "unknown-field".into(),
                    path: pointer(path, key),
                    message: format!("\"{}\" is not a field of this object.", shortened(key)),
                    help: match nearest(key, absent()) {
                        Some(known) => format!("Did you mean \"{known}\"?"),
                        None => format!(
                            "Known here: {}. What belongs to your own program goes into \"ext\".",
                            known.join(", ")
                        ),
                    },
                });
            }
        }
    }
}

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
        .filter(|candidate| candidate.chars().count() < LONGEST)
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

/// Longest name of a material, formula, mold or order, in characters.
pub(crate) const LONGEST_NAME: usize = 80;

/// A name that people and paths can carry: one line, not empty, not endless.
pub(crate) fn checked_name(text: &str, path: &str, faults: &mut Vec<Fault>) -> bool {
    let fault = if text.trim().is_empty() {
        Some("A name is empty.")
    } else if text.trim() != text {
        Some("A name starts or ends with a space.")
    } else if text.chars().any(char::is_control) {
        Some("A name holds a control character.")
    } else if text.chars().nth(LONGEST_NAME).is_some() {
        Some("A name is too long.")
    } else {
        None
    };
    if let Some(message) = fault {
        faults.push(Fault {
            code: "bad-name".into(),
            path: path.to_owned(),
            message: message.into(),
            help: format!("Give it a name of 1 to {LONGEST_NAME} characters on one line."),
        });
    }
    fault.is_none()
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

deserialize_by_reading! { Name; }

impl Read for Name {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let text = String::read(node, faults)?;
        checked_name(&text, &node.path, faults).then_some(Self(text))
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
        let count = node
            .value
            .as_u64()
            .filter(|count| (1..=u64::from(LARGEST_COUNT)).contains(count))
            .and_then(|count| Self::try_from(count).ok());
        if count.is_none() {
            faults.push(node.mismatch(&format!("a whole number from 1 to {LARGEST_COUNT}")));
        }
        count
    }
}

impl<T: Read> Read for Vec<T> {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let Value::Array(items) = node.value else {
            faults.push(node.mismatch("a list: [ ..., ... ]"));
            return None;
        };
        let mut read = Self::with_capacity(items.len());
        for (index, value) in items.iter().enumerate() {
            read.extend(T::read(&node.child(&index.to_string(), value), faults));
        }
        (read.len() == items.len()).then_some(read)
    }
}

/// What an embedding program keeps in a document for itself; carried through untouched.
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
                $crate::document::reader::deserialize(deserializer)
            }
        }
    )+};
}
pub(crate) use deserialize_by_reading;

/// Declares an object of a document: a serde type with its schema, and the walk that reads it.
///
/// `required` fields must be there, `optional` ones are `Option`s; every object also takes
/// `ext`, the place for an embedding program's own data.
macro_rules! entry {
    (
        $(#[$meta:meta])*
        pub struct $Entry:ident {
            required { $( $(#[$required_meta:meta])* $required:ident: $Required:ty, )* }
            optional { $( $(#[$optional_meta:meta])* $optional:ident: $Optional:ty, )* }
        }
    ) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(deny_unknown_fields)]
        pub struct $Entry {
            $( $(#[$required_meta])* pub $required: $Required, )*
            $(
                $(#[$optional_meta])*
                #[serde(default, skip_serializing_if = "Option::is_none")]
                pub $optional: Option<$Optional>,
            )*
            /// What an embedding program keeps here for itself; carried through untouched.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub ext: Option<$crate::document::reader::Ext>,
        }

        $crate::document::reader::deserialize_by_reading! { $Entry; }

        impl $crate::document::reader::Read for $Entry {
            fn read(
                node: &$crate::document::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Option<Self> {
                let mut fields = $crate::document::reader::Fields::open(node, faults)?;
                $( let $required = fields.required(stringify!($required), faults); )*
                $( let $optional = fields.optional(stringify!($optional), faults); )*
                let ext = fields.optional("ext", faults);
                fields.close(faults);
                // One way out for all fields: a way out for each is a great deal of code.
                match ($( $required, )* $( $optional, )* ext) {
                    ($( Some($required), )* $( Some($optional), )* Some(ext)) => {
                        Some(Self { $( $required, )* $( $optional, )* ext })
                    }
                    _ => None,
                }
            }
        }
    };
}
pub(crate) use entry;

/// One of the words of `all`, or a fault that lists them.
pub(crate) fn read_word<T: Copy>(
    node: &Node<'_>,
    all: &[T],
    word: fn(T) -> &'static str,
    faults: &mut Vec<Fault>,
) -> Option<T> {
    let listed = || all.iter().map(|&one| word(one)).collect::<Vec<_>>().join(", ");
    let Value::String(text) = node.value else {
        faults.push(node.mismatch(&format!("one of: {}", listed())));
        return None;
    };
    let found = all.iter().copied().find(|&one| word(one) == text);
    if found.is_none() {
        faults.push(Fault {
            code: "unknown-word".into(),
            path: node.path.clone(),
            message: format!("\"{}\" is not known here.", shortened(text)),
            help: match nearest(text, all.iter().map(|&one| word(one))) {
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
    #[case("plain", "/plain")]
    #[case("a/b", "/a~1b")]
    #[case("a~b", "/a~0b")]
    #[case("~1", "/~01")]
    fn a_pointer_escapes_its_keys(#[case] key: &str, #[case] expected: &str) {
        assert_eq!(pointer("", key), expected);
        let document = json!({ key: 7 });
        assert_eq!(document.pointer(&pointer("", key)), Some(&json!(7)));
    }

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

    #[rstest]
    #[case("cavitys", Some("cavities"))]
    #[case("sprude", Some("sprue"))]
    #[case("color", None)]
    #[case("", None)]
    fn a_slip_is_met_with_the_nearest_word(#[case] word: &str, #[case] expected: Option<&str>) {
        assert_eq!(nearest(word, ["cavities", "sprue", "feed"].into_iter()), expected);
    }

    #[rstest]
    #[case("plum", true)]
    #[case("reed, pale", true)]
    #[case("", false)]
    #[case("  ", false)]
    #[case(" plum", false)]
    #[case("plum\n", false)]
    #[case("a\u{0}b", false)]
    fn a_name_stands_on_one_line(#[case] name: &str, #[case] good: bool) {
        let value = json!(name);
        assert_eq!(read_value::<Name>(&value).is_ok(), good);
        let map = json!({ name: true });
        assert_eq!(read_value::<crate::document::Named<bool>>(&map).is_ok(), good);
        assert_eq!(serde_json::from_value::<Name>(value).is_ok(), good);
    }

    #[test]
    fn a_name_has_an_end() {
        let of = |length: usize| json!("n".repeat(length));
        assert!(read_value::<Name>(&of(LONGEST_NAME)).is_ok());
        assert!(read_value::<Name>(&of(LONGEST_NAME + 1)).is_err());
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
        use super::super::Name;
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
    fn all_that_is_wrong_is_told_with_its_place() {
        let value = json!({ "count": 0, "flags": [true, 1, null], "nane": "x" });
        let faults = read_value::<Probe>(&value).unwrap_err();
        let told: Vec<(&str, &str)> =
            faults.iter().map(|fault| (&*fault.path, &*fault.code)).collect();
        let expected = [
            ("/count", "wrong-type"),
            ("", "missing-field"),
            ("/flags/1", "wrong-type"),
            ("/flags/2", "wrong-type"),
            ("/nane", "unknown-field"),
        ];
        assert_eq!(told, expected);
        let helps: Vec<&str> = faults.iter().map(|fault| &*fault.help).collect();
        assert_eq!(helps[1], "Add \"name\" here. Write a text in double quotes.");
        assert_eq!(helps[4], "Did you mean \"name\"?");
        assert!(serde_json::from_value::<Probe>(value).is_err());
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

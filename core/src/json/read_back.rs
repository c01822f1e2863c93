//! Reading back what the library wrote itself: a plan, a record.
//!
//! A value that cannot be read leaves a [`Fault`] and becomes nothing, and the walk goes on; who
//! starts the walk throws away what came with faults. So that a part of a plan costs a line of
//! code per field, and no way out in the midst of it.
//!
//! What an older version of the library stored lacks the fields that came later: an optional field that is missing is
//! none, and a list is empty, but for the lists that a plan consists of ([`ReadBack::NEEDED`]).

use alloc::borrow::Cow;
use alloc::string::String;
use alloc::vec::Vec;

use serde_json::{Map, Value};

use super::Ext;
use super::entry::report_unknown;
use super::reader::{Node, Read};
use crate::fault::{Fault, Faults, is_enough};
use crate::quantity::System;

/// A type that can be read back.
pub(crate) trait ReadBack: Sized {
    /// Whether a list of these must be there.
    const NEEDED: bool = false;

    /// Reads the value, or adds to `faults` what is wrong with it and returns anything.
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self;

    /// What a field that is missing is; `None` where it must be there.
    fn absent() -> Option<Self> {
        None
    }
}

/// Reads back `node` as a `T`: all faults of it, or a `T` without any.
pub(crate) fn whole<T: ReadBack>(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<T> {
    let before = faults.len();
    let read = T::read_back(node, faults);
    (faults.len() == before).then_some(read)
}

/// The same from any format of serde.
pub(crate) fn deserialize<'de, T: ReadBack, D: serde::Deserializer<'de>>(
    deserializer: D,
) -> Result<T, D::Error> {
    let value = super::text::value(deserializer)?;
    let mut faults = Vec::new();
    let read = T::read_back(&Node::root(&value), &mut faults);
    match Faults::from_vec(faults) {
        Some(faults) => Err(serde::de::Error::custom(faults)),
        None => Ok(read),
    }
}

/// The fields of one object while it is read back.
pub(crate) struct Parts<'a> {
    object: Option<&'a Map<String, Value>>,
    node: &'a Node<'a>,
    known: Vec<&'static str>,
}

impl<'a> Parts<'a> {
    pub(crate) fn open(node: &'a Node<'_>, faults: &mut Vec<Fault>) -> Self {
        Self { object: node.object(faults), node, known: Vec::new() }
    }

    /// The field `name`; one that is missing is [absent](ReadBack::absent), else it reads as null.
    pub(crate) fn take<T: ReadBack>(&mut self, name: &'static str, faults: &mut Vec<Fault>) -> T {
        let before = faults.len();
        let is_missing = self.object.is_some_and(|object| !object.contains_key(name));
        if let Some(absent) = T::absent().filter(|_| is_missing) {
            self.known.push(name);
            return absent;
        }
        let read = T::read_back(&self.child(name), faults);
        // A value that is not an object is one fault, not one for each field that it lacks.
        if self.object.is_none() {
            faults.truncate(before);
        }
        read
    }

    fn child(&mut self, name: &'static str) -> Node<'a> {
        self.known.push(name);
        let value = self.object.and_then(|object| object.get(name));
        self.node.child(name, value.unwrap_or(&Value::Null))
    }

    /// Says which fields nobody asked for.
    pub(crate) fn close(self, faults: &mut Vec<Fault>) {
        if let Some(object) = self.object {
            report_unknown(object, self.node, &self.known, faults);
        }
    }
}

/// Implements [`ReadBack`] for a struct by its fields, and serde's `Deserialize` by that.
macro_rules! read_back_by_fields {
    ($Part:ident, $needed:literal { $($field:ident,)* }) => {
        impl $crate::json::read_back::ReadBack for $Part {
            const NEEDED: bool = $needed;

            fn read_back(
                node: &$crate::json::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Self {
                let mut parts = $crate::json::read_back::Parts::open(node, faults);
                let read = Self::take_from(&mut parts, faults);
                parts.close(faults);
                read
            }
        }

        impl $Part {
            /// Its fields, of an object that may have others.
            pub(crate) fn take_from(
                parts: &mut $crate::json::read_back::Parts<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Self {
                Self { $($field: parts.take(stringify!($field), faults),)* }
            }
        }

        $crate::json::read_back::or_null! { $Part; }
        $crate::json::read_back::deserialize_by_reading_back! { $Part; }
    };
}
pub(crate) use read_back_by_fields;

/// Implements serde's `Deserialize` by [`ReadBack`].
macro_rules! deserialize_by_reading_back {
    ($($Type:ty $(, $Generic:ident: $Bound:path)?;)+) => {$(
        impl<'de $(, $Generic: $Bound)?> serde::Deserialize<'de> for $Type {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                $crate::json::read_back::deserialize(deserializer)
            }
        }
    )+};
}
pub(crate) use deserialize_by_reading_back;

/// Reads `null` back as `None`.
macro_rules! or_null {
    ($($Type:ty $(, $Generic:ident: $Bound:path)?;)+) => {$(
        impl $(<$Generic: $Bound>)? $crate::json::read_back::ReadBack for Option<$Type> {
            fn read_back(
                node: &$crate::json::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Self {
                match node.value {
                    serde_json::Value::Null => None,
                    _ => Some($crate::json::read_back::ReadBack::read_back(node, faults)),
                }
            }
        }
    )+};
}
pub(crate) use or_null;

or_null! { u32; u64; f64; bool; String; Fault; }

/// These have no "nothing": they are read where null may be.
macro_rules! or_null_by_reading {
    ($($Type:ty;)+) => {$(
        impl $crate::json::read_back::ReadBack for Option<$Type> {
            fn read_back(
                node: &$crate::json::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Self {
                match node.value {
                    serde_json::Value::Null => None,
                    _ => $crate::json::reader::Read::read(node, faults),
                }
            }
        }
    )+};
}
pub(crate) use or_null_by_reading;
or_null_by_reading! { Ext; }

/// Those that are read as in the documents that people write.
macro_rules! as_read {
    ($($Type:ty, or $nothing:expr;)+) => {$(
        impl ReadBack for $Type {
            fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
                Self::read(node, faults).unwrap_or($nothing)
            }
        }
    )+};
}

as_read! {
    bool, or false;
    f64, or 0.0;
    String, or String::new();
    System, or System::Metric;
}

/// Those that are whole numbers of any size.
macro_rules! whole_numbers {
    ($($Number:ty)+) => {$(
        impl ReadBack for $Number {
            fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
                let number = node.value.as_u64().and_then(|number| Self::try_from(number).ok());
                number.unwrap_or_else(|| {
                    faults.push(node.mismatch("a whole number"));
                    0
                })
            }
        }
    )+};
}

whole_numbers! { u32 u64 }

impl ReadBack for Value {
    fn read_back(node: &Node<'_>, _: &mut Vec<Fault>) -> Self {
        node.value.clone()
    }
}

impl ReadBack for Cow<'static, str> {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        Self::Owned(ReadBack::read_back(node, faults))
    }
}

impl<T: ReadBack> ReadBack for Vec<T> {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let items = node.list(faults).unwrap_or_default();
        let mut read = Self::new();
        for (index, value) in items.iter().enumerate() {
            if is_enough(faults) {
                break;
            }
            read.push(T::read_back(&node.item(index, value), faults));
        }
        read
    }

    fn absent() -> Option<Self> {
        (!T::NEEDED).then(Self::new)
    }
}

impl ReadBack for Fault {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let mut parts = Parts::open(node, faults);
        let read = Self {
            code: parts.take("code", faults),
            path: parts.take("path", faults),
            message: parts.take("message", faults),
            help: parts.take("help", faults),
        };
        parts.close(faults);
        read
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;

    #[derive(Debug, PartialEq)]
    struct Part {
        names: Vec<String>,
        count: u32,
    }

    read_back_by_fields! { Part, false { names, count, } }

    fn read(value: &Value) -> (Option<Part>, Vec<Fault>) {
        let mut faults = Vec::new();
        let part = whole(&Node::root(value), &mut faults);
        (part, faults)
    }

    /// A list that a field lacks is empty, and is known all the same: its name is what was meant.
    #[test]
    fn what_an_older_version_lacks_is_none() {
        let part = Part { names: Vec::new(), count: 1 };
        assert_eq!(read(&json!({ "count": 1 })), (Some(part), Vec::new()));
        let (part, faults) = read(&json!({ "count": 1, "nams": [] }));
        assert_eq!((part, faults.len()), (None, 1));
        assert_eq!((&*faults[0].path, &*faults[0].help), ("/nams", "Did you mean \"names\"?"));
    }
}

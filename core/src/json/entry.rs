//! Objects of a document whose fields are known: declared once, for serde, for the JSON Schema and
//! for the walk that reads them.
//!
//! An entry lists its fields as data, and one walk fills them, whatever their types.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde_json::{Map, Value};

use super::nearest::nearest;
use super::reader::{Node, Read, shortened};
use crate::codes::code;
use crate::fault::{Fault, is_enough};

/// Where a field goes when it has been read.
pub(crate) trait Slot {
    /// Reads the field; `true` if it could be read.
    fn fill(&mut self, node: &Node<'_>, faults: &mut Vec<Fault>) -> bool;
}

impl<T: Read> Slot for Option<T> {
    fn fill(&mut self, node: &Node<'_>, faults: &mut Vec<Fault>) -> bool {
        *self = T::read(node, faults);
        self.is_some()
    }
}

/// The fields that an object may have.
pub(crate) struct Fields {
    /// Their names.
    pub(crate) names: &'static [&'static str],
    /// How many of them, from the first, must be there.
    pub(crate) required: usize,
}

impl Fields {
    /// Reads the object at `node` into `slots`, one for each name; whether all that must be there is, and all
    /// that was written could be read. Unknown fields are faults, too.
    pub(crate) fn read(
        &self,
        node: &Node<'_>,
        slots: &mut [&mut dyn Slot],
        faults: &mut Vec<Fault>,
    ) -> bool {
        let Some(object) = node.object(faults) else { return false };
        let mut whole = true;
        for (index, (name, slot)) in self.names.iter().zip(slots).enumerate() {
            match object.get(*name) {
                Some(value) => whole &= slot.fill(&node.child(name, value), faults),
                None if index < self.required => {
                    faults.push(missing(node, name, *slot));
                    whole = false;
                }
                None => {}
            }
        }
        report_unknown(object, node, self.names, faults);
        whole
    }
}

/// The fault that the field `name` is missing. Its help is that of its type when it finds nothing.
fn missing(node: &Node<'_>, name: &str, slot: &mut dyn Slot) -> Fault {
    let mut found = Vec::new();
    slot.fill(&node.child(name, &Value::Null), &mut found);
    let how = found.first().map(|fault| format!(" {}", fault.help));
    Fault {
        code: code!("missing-field").into(),
        path: node.path.to_string(),
        message: format!("\"{name}\" is missing."),
        help: format!("Add \"{name}\" here.{}", how.unwrap_or_default()),
    }
}

/// Faults for the fields of the `object` at `node` that are not among those `known`.
pub(crate) fn report_unknown(
    object: &Map<String, Value>,
    node: &Node<'_>,
    known: &[&'static str],
    faults: &mut Vec<Fault>,
) {
    for key in object.keys().map(String::as_str) {
        if known.contains(&key) || node.tag == Some(key) {
            continue;
        }
        if is_enough(faults) {
            return;
        }
        let absent = known.iter().copied().filter(|known| !object.contains_key(*known));
        faults.push(Fault {
            code: code!("unknown-field").into(),
            path: node.path.key(key).to_string(),
            message: format!("\"{}\" is not a field of this object.", shortened(key)),
            help: match nearest(key, absent) {
                Some(known) => format!("Did you mean \"{known}\"?"),
                None => format!(
                    "Known here: {}. What belongs to your own program goes into \"ext\".",
                    known.join(", ")
                ),
            },
        });
    }
}

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
        #[cfg_attr(feature = "schema", schemars(transform = $crate::schema::without_null))]
        #[serde(deny_unknown_fields)]
        pub struct $Entry {
            $( $(#[$required_meta])* pub $required: $Required, )*
            $(
                $(#[$optional_meta])*
                #[serde(default, skip_serializing_if = "Option::is_none")]
                pub $optional: Option<$Optional>,
            )*
            /// An embedding program's own data; carried through untouched.
            #[serde(default, skip_serializing_if = "Option::is_none")]
            pub ext: Option<$crate::json::reader::Ext>,
        }

        impl $Entry {
            /// The names of its fields.
            #[allow(dead_code)] // requests place the faults of a calculation by them
            pub(crate) const FIELDS: &'static [&'static str] =
                &[$( stringify!($required), )* $( stringify!($optional), )* "ext"];
        }

        $crate::json::reader::deserialize_by_reading! { $Entry; }

        impl $crate::json::reader::Read for $Entry {
            fn read(
                node: &$crate::json::reader::Node<'_>,
                faults: &mut alloc::vec::Vec<$crate::fault::Fault>,
            ) -> Option<Self> {
                const REQUIRED: &[&str] = &[$( stringify!($required), )*];
                const FIELDS: $crate::json::entry::Fields = $crate::json::entry::Fields {
                    names: $Entry::FIELDS,
                    required: REQUIRED.len(),
                };
                $( let mut $required: Option<$Required> = None; )*
                $( let mut $optional: Option<$Optional> = None; )*
                let mut ext: Option<$crate::json::reader::Ext> = None;
                let whole = FIELDS.read(
                    node,
                    &mut [$( &mut $required, )* $( &mut $optional, )* &mut ext],
                    faults,
                );
                // One way out for all fields: a way out for each is a great deal of code.
                match ($( $required, )*) {
                    ($( Some($required), )*) if whole => {
                        Some(Self { $( $required, )* $( $optional, )* ext })
                    }
                    _ => None,
                }
            }
        }
    };
}
pub(crate) use entry;

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::json;

    use super::*;

    #[rstest]
    #[case(json!({ "a": true }), true)]
    #[case(json!({ "a": true, "b": false }), true)]
    #[case(json!({ "a": 1, "b": false }), false)]
    #[case(json!({ "a": true, "b": 1 }), false)]
    #[case(json!({ "b": true }), false)]
    #[case(json!([true]), false)]
    fn an_object_is_whole_with_all_that_must_be_there(#[case] value: Value, #[case] whole: bool) {
        const FIELDS: Fields = Fields { names: &["a", "b"], required: 1 };
        let (mut a, mut b) = (None::<bool>, None::<bool>);
        let mut faults = Vec::new();
        let found = FIELDS.read(&Node::root(&value), &mut [&mut a, &mut b], &mut faults);
        assert_eq!((found, faults.is_empty()), (whole, whole), "{faults:?}");
    }
}

//! Notes: what a reader must know about a result, and why a result could not be calculated.

use alloc::format;
use alloc::string::{String, ToString};

use super::part;
use crate::fault::Diagnose;

part! {
    /// Something that a reader must know of a result.
    pub struct Note {
        /// Stable code in kebab case.
        pub code: String,
        /// The sentence.
        pub message: String,
    }
}

/// A result, or why it could not be calculated.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "document", serde(rename_all = "kebab-case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Calculated<T> {
    /// It is this.
    Known(T),
    /// It is not known, for this reason.
    Unknown(Note),
}

impl<T> From<Result<T, Note>> for Calculated<T> {
    fn from(result: Result<T, Note>) -> Self {
        match result {
            Ok(known) => Self::Known(known),
            Err(note) => Self::Unknown(note),
        }
    }
}

impl<T> Calculated<T> {
    /// The result, if it is known.
    #[must_use]
    pub const fn known(&self) -> Option<&T> {
        match self {
            Self::Known(known) => Some(known),
            Self::Unknown(_) => None,
        }
    }
}

/// The obstacle, as a note.
pub(crate) fn because(error: &dyn Diagnose) -> Note {
    Note { code: error.code().to_string(), message: format!("{error} {}", error.help()) }
}

#[cfg(feature = "document")]
mod document {
    use alloc::vec::Vec;

    use super::Calculated;
    use crate::fault::Fault;
    use crate::json::read_back::{Parts, ReadBack, or_null};
    use crate::json::reader::Node;

    or_null! { Calculated<T>, T: ReadBack; }

    impl<T: ReadBack> ReadBack for Calculated<T> {
        fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
            let known = node.value.get("known").is_some();
            let mut parts = Parts::open(node, faults);
            let read = if known {
                Self::Known(parts.take("known", faults))
            } else {
                Self::Unknown(parts.take("unknown", faults))
            };
            parts.close(faults);
            read
        }
    }
}

//! What a plan says of vacuum, heat and the fall in water: fill marks, bursts, heats, sink rates.
//!
//! Each is told where the book states what it takes; where the book states a part of it alone, the
//! plan says what is missing ([`Reckoned::Unknown`]); where it states nothing, the plan is silent.

mod degas;
mod heating;
mod heats;
mod sinking;

use alloc::format;
use alloc::string::{String, ToString};

pub use self::degas::Degas;
#[cfg(feature = "document")]
pub(crate) use self::degas::SPARE;
pub(super) use self::degas::degas;
pub use self::heating::{Burst, Heating};
pub(super) use self::heating::{Cup, assumed, heating, questioned};
#[cfg(feature = "document")]
pub(crate) use self::heating::{question, shown_bursts};
pub use self::heats::{HeatSpent, Heats};
pub(super) use self::heats::{Heated, heats, too_much_heat};
#[cfg(feature = "document")]
pub(crate) use self::sinking::fall;
pub(super) use self::sinking::{SinkLayer, sinking, water};
pub use self::sinking::{SinkWater, Sinking};
use super::Note;
use crate::fault::Diagnose;

/// What could be reckoned, or why it could not.
#[derive(Debug, Clone, PartialEq)]
#[cfg_attr(feature = "document", derive(serde::Serialize, serde::Deserialize))]
#[cfg_attr(feature = "document", serde(rename_all = "kebab-case"))]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub enum Reckoned<T> {
    /// It is this.
    Known(T),
    /// It is not known, for this reason.
    Unknown(Note),
}

impl<T> From<Result<T, Note>> for Reckoned<T> {
    fn from(result: Result<T, Note>) -> Self {
        match result {
            Ok(known) => Self::Known(known),
            Err(note) => Self::Unknown(note),
        }
    }
}

impl<T> Reckoned<T> {
    /// What is known.
    #[must_use]
    pub const fn known(&self) -> Option<&T> {
        match self {
            Self::Known(known) => Some(known),
            Self::Unknown(_) => None,
        }
    }
}

/// What stands in the way, as a note.
pub(crate) fn because(error: &dyn Diagnose) -> Note {
    Note { code: error.code().to_string(), message: format!("{error} {}", error.help()) }
}

fn note(code: &str, message: String) -> Note {
    Note { code: code.to_string(), message }
}

#[cfg(all(test, feature = "document"))]
mod tests;

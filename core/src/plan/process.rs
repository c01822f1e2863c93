//! What a plan says of vacuum, heat and the fall in water: fill marks, bursts, heats, sink rates.
//!
//! Each is told where the book states what it takes; where the book states a part of it alone, the
//! plan says what is missing ([`Calculated::Unknown`](crate::show::Calculated::Unknown)); where it states nothing, the plan is silent.

mod clock;
mod day;
mod degas;
mod heating;
mod heats;
mod settling;
mod sinking;

use alloc::string::{String, ToString};

pub use self::clock::StageHeat;
pub(super) use self::clock::{clock_notes, stage_heats, too_many_heats};
pub(super) use self::day::time_line;
pub use self::day::{Doing, Span, TimeLine};
pub use self::degas::Degas;
pub(super) use self::degas::degas;
#[cfg(feature = "document")]
pub(crate) use self::degas::rise_assumed;
pub(super) use self::heating::{Cup, Late, assumed, heating, late, questioned};
pub use self::heating::{HeatBand, PlannedHeating};
#[cfg(feature = "document")]
pub(crate) use self::heating::{question, shown_bands, shown_reach};
pub use self::heats::{HeatSpent, Heats};
pub(super) use self::heats::{heats, too_much_heat};
pub(super) use self::settling::stir_every;
#[cfg(feature = "document")]
pub(crate) use self::sinking::fall;
pub(super) use self::sinking::{SinkLayer, sinking, water};
pub use self::sinking::{SinkWater, Sinking};
use crate::show::Note;

fn note(code: &str, message: String) -> Note {
    Note { code: code.to_string(), message }
}

#[cfg(all(test, feature = "document"))]
mod tests;

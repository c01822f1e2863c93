//! Vacuum, heat and sinking in a plan: fill marks, bursts, heats, sink rates.
//!
//! Each is in the plan if the book states the numbers for it. If the book states only some of them, the plan names the
//! missing ones ([`Calculated::Unknown`](crate::show::Calculated::Unknown)); if it states none, the plan leaves it out.

mod clock;
mod day;
mod degas;
mod heating;
mod heats;
mod settling;
mod sinking;

use alloc::string::{String, ToString};

pub use self::clock::StageHeat;
pub(super) use self::clock::{clock, clock_notes, every, hot, stage_heats, too_many_heats};
pub(super) use self::day::time_line;
pub use self::day::{Doing, Span, TimeLine};
pub use self::degas::Degas;
pub(super) use self::degas::degas;
#[cfg(feature = "document")]
pub(crate) use self::degas::rise_assumed;
pub(super) use self::heating::{Cup, Late, assumed, heating, heating_together, late, questioned};
pub use self::heating::{HeatBand, PlannedHeating};
#[cfg(feature = "document")]
pub(crate) use self::heating::{question, shown_bands, shown_reach};
pub use self::heats::{HeatSpent, Heats};
pub(super) use self::heats::{heats, keeps_heats, too_much_heat};
pub(super) use self::settling::stir_every;
#[cfg(feature = "document")]
pub(crate) use self::sinking::fall;
pub(super) use self::sinking::{SinkLayer, sinking, water};
pub use self::sinking::{SinkWater, Sinking};
use crate::codes::Code;
use crate::show::Note;

fn note(code: Code, message: String) -> Note {
    Note { code: code.to_string(), message }
}

#[cfg(all(test, feature = "document"))]
mod tests;

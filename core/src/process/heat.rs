//! Heating a pot: how long, by which readings of the thermometer, and how it cools.
//!
//! The heat is Q = ∫ (m c_p(T) + C_vessel) dT. No nameplate gives the power that reaches the pot: the shop's own
//! timings do, for the amounts that were timed ([`Oven::time`] has how far it reaches) and for the setting
//! that they were timed at. Every burst is gated by the thermometer ([`Oven::gate`]): none can carry the pot
//! over its window.

mod cooling;
mod error;
mod gate;
mod load;
mod oven;
mod specific_heat;

pub use cooling::Cooling;
pub use error::HeatError;
pub use gate::{Band, Course, Gate, Precautions, ThermometerMarks, Window};
pub use load::{ALIKE, Load};
pub use oven::{Heating, Misfit, Oven, Reach, Timing};
pub use specific_heat::{SpecificHeat, mix_specific_heat};

use crate::quantity::{Mass, Ratio, TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin;

/// How far beyond the timed amounts a time is still given, and flagged: 1.6 times the largest, the
/// smallest over 1.6. So far the models were held against printed series ([`Oven`]).
pub const FARTHEST_REACH: f64 = 1.6;

/// `to` − `from`, which uom leaves undefined.
fn rise(from: ThermodynamicTemperature, to: ThermodynamicTemperature) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin>(to.value - from.value)
}

/// Whether `mass` is inside `least` to `most`, or by what factor outside.
fn beyond(mass: Mass, least: Mass, most: Mass) -> Reach {
    let (over, under) = ((mass / most).value, (least / mass).value);
    // Rounding must not put a timed amount outside.
    if over <= 1.0 + 1e-9 && under <= 1.0 + 1e-9 {
        return Reach::Within;
    }
    Reach::Beyond { factor: Ratio::from(over.max(under)), larger: over > under }
}

#[cfg(test)]
mod tests;

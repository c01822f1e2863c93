//! Heating a pot: how long, in which bursts, and what a pot that has cooled needs again.
//!
//! t = (m c_p + C_vessel) ΔT/P. No nameplate tells P, the power that reaches the pot: the shop's own
//! timings do. It changes with the load and with the oven's setting, so it holds for the amounts that
//! were timed ([`Oven::time`] says how far it reaches) and for the setting that they were timed at.
//! The specific heat of a plasticizer rises by a quarter from room temperature to 177 °C (Zábranský et
//! al., Heat Capacity of Liquids); timings over the same temperatures as the heating that is asked for
//! take that into P, others do not.

mod bursts;
mod cooling;
mod error;
mod load;
mod oven;

pub use bursts::{Burst, Bursts, Precautions, Window};
pub use cooling::Cooling;
pub use error::HeatError;
pub use load::{Load, mix_specific_heat};
pub use oven::{Heating, Oven, Reach, Timing};

use super::is_a_pots;
use crate::quantity::{Mass, Ratio, TemperatureInterval, ThermodynamicTemperature};
use uom::si::temperature_interval::kelvin;

/// How far beyond the timed or watched amounts a result is still given, and flagged: 1.5 times the
/// largest, the smallest over 1.5. Common practice, no source.
pub const FARTHEST_REACH: f64 = 1.5;

fn check_temperature(what: &'static str, found: ThermodynamicTemperature) -> Result<(), HeatError> {
    if is_a_pots(found) { Ok(()) } else { Err(HeatError::Temperature { what, found }) }
}

/// `to` − `from`, which uom leaves undefined.
fn rise(from: ThermodynamicTemperature, to: ThermodynamicTemperature) -> TemperatureInterval {
    TemperatureInterval::new::<kelvin>(to.value - from.value)
}

/// Whether `mass` lies inside `least` to `most`, or by what factor outside.
fn beyond(mass: Mass, least: Mass, most: Mass) -> Result<Reach, HeatError> {
    let (over, under) = ((mass / most).value, (least / mass).value);
    // Rounding must not put a timed amount outside.
    if over <= 1.0 + 1e-9 && under <= 1.0 + 1e-9 {
        return Ok(Reach::Within);
    }
    let factor = over.max(under);
    if factor <= FARTHEST_REACH * (1.0 + 1e-9) {
        Ok(Reach::Beyond { factor: Ratio::from(factor), larger: over > under })
    } else {
        Err(HeatError::OutOfReach { wanted: mass, least, most })
    }
}

#[cfg(test)]
mod tests;

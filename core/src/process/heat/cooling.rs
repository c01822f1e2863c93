//! A pot that cools on the bench.

use super::load::check;
use super::{HeatError, Load, beyond, check_temperature, rise};
use crate::check::{is_not_negative, is_positive};
use crate::quantity::{Mass, ThermodynamicTemperature, Time};

/// How a pot cools, from one time that the shop watched: Newton's law,
/// T(t) = T_room + (T₀ − T_room)·exp(−t/τ).
///
/// It holds for the same vessel, standing in the same way, and about the same amount. Radiation makes
/// the first minutes from 170 °C somewhat faster than the last, so watch over the temperatures that
/// matter.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cooling {
    time_constant: Time,
    mass: Mass,
}

impl Cooling {
    /// From a `load` that was watched to cool `from` one temperature `to` another in `after`, in a
    /// room of `room`: τ = t / ln((T₀ − T_room)/(T₁ − T_room)).
    ///
    /// # Errors
    /// [`HeatError::NoCooling`] unless room < to < from; [`HeatError::Temperature`] and
    /// [`HeatError::OutOfRange`] for what cannot be.
    pub fn observed(
        load: Load,
        from: ThermodynamicTemperature,
        to: ThermodynamicTemperature,
        after: Time,
        room: ThermodynamicTemperature,
    ) -> Result<Self, HeatError> {
        check_temperature("The temperature before", from)?;
        check_temperature("The temperature after", to)?;
        check_temperature("The temperature of the room", room)?;
        check("The time of cooling", after.value, is_positive)?;
        if !(room < to && to < from) {
            return Err(HeatError::NoCooling { from, to, room });
        }
        let time_constant = after / libm::log((rise(room, from) / rise(room, to)).value);
        check("The time constant of cooling", time_constant.value, is_positive)?;
        Ok(Self { time_constant, mass: load.mass() })
    }

    /// τ, the time in which the distance to the room's temperature falls to 1/e.
    #[must_use]
    pub fn time_constant(&self) -> Time {
        self.time_constant
    }

    /// What `load`, left `from` a temperature in a room of `room`, has after a `time`.
    ///
    /// # Errors
    /// [`HeatError::OutOfReach`] for an amount that differs from the one watched by more than a factor
    /// of [`super::FARTHEST_REACH`]; [`HeatError::NoCooling`] for a pot cooler than the room;
    /// [`HeatError::Temperature`] and [`HeatError::OutOfRange`] for what cannot be.
    pub fn after(
        &self,
        load: Load,
        from: ThermodynamicTemperature,
        time: Time,
        room: ThermodynamicTemperature,
    ) -> Result<ThermodynamicTemperature, HeatError> {
        check_temperature("The temperature before", from)?;
        check_temperature("The temperature of the room", room)?;
        check("The time of cooling", time.value, is_not_negative)?;
        beyond(load.mass(), self.mass, self.mass)?;
        if from < room {
            return Err(HeatError::NoCooling { from, to: room, room });
        }
        let left = libm::exp(-(time / self.time_constant).value);
        Ok(room + rise(room, from) * left)
    }
}

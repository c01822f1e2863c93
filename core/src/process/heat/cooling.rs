//! A pot that cools on the bench.

use super::{HeatError, rise};
use crate::check::is_positive;
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, ThermodynamicTemperature, Time};

/// The surface of a vessel that is as wide as deep, in areas of its bottom: the open top and, half insulated, the
/// bottom; and the wall, where it is full.
const ENDS: f64 = 1.5;
const WALL: f64 = 4.0;

/// A share of the amount that was watched below which a pot is taken to cool no faster: what is left in its vessel
/// keeps that warm.
const LEAST_SHARE: f64 = 0.1;

/// How a pot cools, from two readings of the shop's own: Newton's law,
/// T(t) = T_room + (T₀ − T_room)·exp(−t/τ).
///
/// Begin in the second minute, when the vessel is as warm as the mix, and stir before each reading. Inside the
/// time that was watched the law is within 0.5 K, at three times that up to 3.5 K too cold. What is less than
/// was watched, since the cup is smaller or has been drawn from, cools faster: τ goes with the amount over the
/// surface of a vessel as wide as deep, x/(1.5 + 4x), x the share of what was watched, from a tenth on. (A
/// model of glass cups of 250 mL, 500 mL and 1 L loses 4.6, 4.0 and 3.3 K in the first minute; this has them cool
/// faster than that, the side on which a pot is taken to stay hot for too short a time.) A larger pot is taken to
/// cool as fast.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cooling {
    time_constant: Time,
    mass: Mass,
}

impl Cooling {
    /// From `mass` of a mix that was watched to cool `from` one temperature `to` another in `after`, in a
    /// room of `room`: τ = t / ln((T₀ − T_room)/(T₁ − T_room)).
    ///
    /// # Errors
    /// [`HeatError::NoCooling`] unless room < to < from, or where it hardly cools; [`HeatError::Parameters`].
    pub fn observed(
        mass: Mass,
        from: ThermodynamicTemperature,
        to: ThermodynamicTemperature,
        after: Time,
        room: ThermodynamicTemperature,
    ) -> Result<Self, HeatError> {
        let mut check = Check::new();
        check
            .number(Parameter::WatchedMass, mass.value)
            .number(Parameter::WatchedFrom, from.value)
            .number(Parameter::WatchedTo, to.value)
            .number(Parameter::WatchedTime, after.value)
            .number(Parameter::Room, room.value);
        check.finish()?;
        let time_constant = after / libm::log((rise(room, from) / rise(room, to)).value);
        // Above zero only where to < from, if the room is cooler than both.
        if room >= to || !is_positive(time_constant.value) {
            return Err(HeatError::NoCooling { from, to, room });
        }
        Ok(Self { time_constant, mass })
    }

    /// τ of `mass`, the time in which the distance to the room's temperature falls to 1/e.
    ///
    /// # Errors
    /// [`HeatError::Parameters`] for a mass that is not above zero.
    pub fn time_constant(&self, mass: Mass) -> Result<Time, HeatError> {
        Parameter::PotMass.check_si(mass.value)?;
        let share = (mass / self.mass).value.clamp(LEAST_SHARE, 1.0);
        Ok(self.time_constant * (share * (ENDS + WALL) / (ENDS + WALL * share)))
    }

    /// The temperature of `mass` of a mix after a `time`, left `from` a temperature in a room of `room`.
    ///
    /// # Errors
    /// [`HeatError::NoCooling`] for a pot cooler than the room; [`HeatError::Parameters`].
    pub fn after(
        &self,
        mass: Mass,
        from: ThermodynamicTemperature,
        time: Time,
        room: ThermodynamicTemperature,
    ) -> Result<ThermodynamicTemperature, HeatError> {
        let mut check = Check::new();
        check
            .number(Parameter::PotMass, mass.value)
            .number(Parameter::HotFrom, from.value)
            .number(Parameter::Stood, time.value)
            .number(Parameter::Room, room.value);
        check.finish()?;
        let time_constant = self.time_constant(mass)?;
        if from < room {
            return Err(HeatError::NoCooling { from, to: room, room });
        }
        let left = libm::exp(-(time / time_constant).value);
        Ok(room + rise(room, from) * left)
    }

    /// How long `mass` takes `from` one temperature down `to` another in a room of `room`:
    /// t = τ ln((T₀ − T_room)/(T₁ − T_room)); none where it is no hotter from the start.
    ///
    /// # Errors
    /// [`HeatError::NoCooling`] unless the room is cooler than `to`; [`HeatError::Parameters`].
    pub fn time(
        &self,
        mass: Mass,
        from: ThermodynamicTemperature,
        to: ThermodynamicTemperature,
        room: ThermodynamicTemperature,
    ) -> Result<Time, HeatError> {
        let mut check = Check::new();
        check
            .number(Parameter::PotMass, mass.value)
            .number(Parameter::HotFrom, from.value)
            .number(Parameter::HotTo, to.value)
            .number(Parameter::Room, room.value);
        check.finish()?;
        let time_constant = self.time_constant(mass)?;
        if room >= to {
            return Err(HeatError::NoCooling { from, to, room });
        }
        if from <= to {
            return Ok(Time::default());
        }
        Ok(time_constant * libm::log((rise(room, from) / rise(room, to)).value))
    }
}

//! The air pressure outside the vacuum chamber: by altitude, or by a barometer.
//!
//! A workshop sits in the lowest layer of the U.S. Standard Atmosphere, 1976 (NOAA/NASA/USAF), so that
//! layer is what is implemented, from -5 000 m to 11 000 m of geopotential altitude:
//!
//! T = T₀ − L·H, p = p₀ (T/T₀)^(g₀M₀/(R*L)), H = r₀Z/(r₀ + Z)
//!
//! with T₀ = 288.15 K, p₀ = 101 325 Pa, L = 6.5 K/km, g₀ = 9.806 65 m/s², M₀ = 28.9644 kg/kmol,
//! R* = 8314.32 J/(kmol K), r₀ = 6 356.766 km. A map or a phone gives the geometric altitude Z; the
//! geopotential H is what the tables of aviation use, 4 m less at 5 km. The types keep them apart.
//!
//! The weather moves the real pressure by some 3 % around the standard, rarely by 7 % (from memory).

use alloc::borrow::Cow;
use alloc::format;

use uom::si::length::meter;
use uom::si::pressure::pascal;
use uom::si::thermodynamic_temperature::kelvin;

use super::figures::{kilopascals, meters};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Length, Pressure, ThermodynamicTemperature};

const SEA_LEVEL_K: f64 = 288.15;
const SEA_LEVEL_PA: f64 = 101_325.0;
const LAPSE_K_PER_M: f64 = 0.0065;
const EARTH_RADIUS_M: f64 = 6_356_766.0;
/// g₀M₀/(R*L), 5.2559.
const EXPONENT: f64 = 9.806_65 * 28.9644 / (8314.32 * LAPSE_K_PER_M);

/// How far the weather lifts a pressure above the standard at most: the record above, 1085/1013.25.
const RECORD_HIGH: f64 = 1.071;

/// An altitude above sea level as a map gives it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct GeometricAltitude(Length);

/// An altitude above sea level measured in potential energy: H = r₀Z/(r₀ + Z).
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct GeopotentialAltitude(Length);

/// The pressure of the air at the place itself: what an unreduced barometer shows there.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct StationPressure(Pressure);

/// A pressure reduced to sea level, as weather reports and most household barometers give it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct SeaLevelPressure(Pressure);

/// An altitude or an air pressure that cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum AtmosphereError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// A barometer shows more than the weather can do at its altitude.
    #[error(
        "The barometer's {} is more than the air at {} ever has: it looks reduced to sea level.",
        kilopascals(.pressure), meters(.altitude)
    )]
    LooksReduced {
        /// Reading of the barometer.
        pressure: Pressure,
        /// The geopotential altitude.
        altitude: Length,
        /// The pressure there, if the reading is reduced to sea level.
        station: Pressure,
    },
}

impl Diagnose for AtmosphereError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::LooksReduced { .. } => "air-pressure-looks-reduced",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::LooksReduced { station, .. } => format!(
                "Enter it as a pressure reduced to sea level, which makes {} here, or check the altitude.",
                kilopascals(station)
            )
            .into(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::LooksReduced { .. } => Some(Parameter::StationPressure),
        }
    }
}

impl From<ParameterError> for AtmosphereError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl GeometricAltitude {
    /// The geometric altitude `altitude`; below sea level it is negative.
    ///
    /// # Errors
    /// An altitude outside -5 000 m to 11 000 m.
    pub fn new(altitude: Length) -> Result<Self, ParameterError> {
        Parameter::Altitude.check_si(altitude.value).map(|_| Self(altitude))
    }

    /// As a plain length.
    #[must_use]
    pub fn get(self) -> Length {
        self.0
    }

    /// H = r₀Z/(r₀ + Z).
    #[must_use]
    pub fn geopotential(self) -> GeopotentialAltitude {
        let z = self.0.get::<meter>();
        GeopotentialAltitude(Length::new::<meter>(EARTH_RADIUS_M * z / (EARTH_RADIUS_M + z)))
    }
}

impl GeopotentialAltitude {
    /// The geopotential altitude `altitude`; below sea level it is negative.
    ///
    /// # Errors
    /// An altitude outside -5 000 m to 11 000 m.
    pub fn new(altitude: Length) -> Result<Self, ParameterError> {
        Parameter::Altitude.check_si(altitude.value).map(|_| Self(altitude))
    }

    /// As a plain length.
    #[must_use]
    pub fn get(self) -> Length {
        self.0
    }

    /// T/T₀ of the standard atmosphere.
    fn temperature_ratio(self) -> f64 {
        1.0 - LAPSE_K_PER_M * self.0.get::<meter>() / SEA_LEVEL_K
    }

    /// The temperature of the standard atmosphere.
    #[must_use]
    pub fn standard_temperature(self) -> ThermodynamicTemperature {
        ThermodynamicTemperature::new::<kelvin>(SEA_LEVEL_K * self.temperature_ratio())
    }
}

impl From<GeometricAltitude> for GeopotentialAltitude {
    fn from(altitude: GeometricAltitude) -> Self {
        altitude.geopotential()
    }
}

impl StationPressure {
    /// The pressure of the standard atmosphere at `altitude`.
    #[must_use]
    pub fn standard(altitude: impl Into<GeopotentialAltitude>) -> Self {
        let ratio = libm::pow(altitude.into().temperature_ratio(), EXPONENT);
        Self(Pressure::new::<pascal>(SEA_LEVEL_PA * ratio))
    }

    /// Reading of a barometer that is *not* reduced to sea level.
    ///
    /// # Errors
    /// A pressure outside 22.6 kPa to 178 kPa.
    pub fn measured(pressure: Pressure) -> Result<Self, ParameterError> {
        Parameter::StationPressure.check_si(pressure.value).map(|_| Self(pressure))
    }

    /// The same, questioned where no weather makes such a pressure at `altitude`.
    ///
    /// A reduced reading is found out from some 600 m on; lower down it could be true.
    ///
    /// # Errors
    /// Those of [`StationPressure::measured`], and [`AtmosphereError::LooksReduced`] for more than
    /// 7.1 % above the standard, the record of all weather (from memory).
    pub fn measured_at(
        pressure: Pressure,
        altitude: impl Into<GeopotentialAltitude>,
    ) -> Result<Self, AtmosphereError> {
        let altitude = altitude.into();
        let measured = Self::measured(pressure)?;
        if pressure <= Self::standard(altitude).0 * RECORD_HIGH {
            return Ok(measured);
        }
        let station = SeaLevelPressure(pressure).at(altitude).0;
        Err(AtmosphereError::LooksReduced { pressure, altitude: altitude.0, station })
    }

    /// As a plain pressure.
    #[must_use]
    pub fn get(self) -> Pressure {
        self.0
    }
}

impl SeaLevelPressure {
    /// A pressure that a report gives as reduced to sea level.
    ///
    /// # Errors
    /// A pressure outside 85 kPa to 110 kPa.
    pub fn reported(pressure: Pressure) -> Result<Self, ParameterError> {
        Parameter::ReportedPressure.check_si(pressure.value).map(|_| Self(pressure))
    }

    /// As a plain pressure.
    #[must_use]
    pub fn get(self) -> Pressure {
        self.0
    }

    /// The pressure of the air at `altitude`: p^(1/n) = p_reported^(1/n) − p₀^(1/n)·L·H/T₀, n = 5.2559.
    ///
    /// That undoes the reduction by the standard atmosphere, which is the definition of an altimeter
    /// setting (from memory). A report reduced with the day's own temperature comes out too low on a
    /// warm day, by 1 % at 1 500 m where the air is 17 K warmer than the standard (derived).
    #[must_use]
    pub fn at(self, altitude: impl Into<GeopotentialAltitude>) -> StationPressure {
        let sea_level = libm::pow(self.0.get::<pascal>() / SEA_LEVEL_PA, 1.0 / EXPONENT);
        let here = sea_level + altitude.into().temperature_ratio() - 1.0;
        StationPressure(Pressure::new::<pascal>(SEA_LEVEL_PA * libm::pow(here, EXPONENT)))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    use super::*;

    fn geometric(m: f64) -> GeometricAltitude {
        GeometricAltitude::new(Length::new::<meter>(m)).unwrap()
    }

    fn geopotential(m: f64) -> GeopotentialAltitude {
        GeopotentialAltitude::new(Length::new::<meter>(m)).unwrap()
    }

    fn pa(pressure: f64) -> Pressure {
        Pressure::new::<pascal>(pressure)
    }

    /// Printed in many tables against geopotential height (U.S. Standard Atmosphere, 1976; ISO 2533:1975);
    /// -5 000 m and 11 000 m from memory.
    #[rstest]
    #[case(1_000.0, 89_874.6, 0.1)]
    #[case(2_000.0, 79_495.2, 0.1)]
    #[case(-5_000.0, 177_687.0, 1.0)]
    #[case(11_000.0, 22_632.06, 0.01)]
    fn agrees_with_the_geopotential_table(#[case] m: f64, #[case] p: f64, #[case] tolerance: f64) {
        assert!((StationPressure::standard(geopotential(m)).get().value - p).abs() <= tolerance);
    }

    #[test]
    fn the_two_altitudes_are_not_the_same() {
        let [a, b] = [
            StationPressure::standard(geometric(5_000.0)),
            StationPressure::standard(geopotential(5_000.0)),
        ];
        assert!((a.get().value - b.get().value - 28.4).abs() < 0.1); // 54 048.3 against 54 019.9 Pa
    }

    #[rstest]
    #[case(-5_001.0)]
    #[case(11_020.0)]
    #[case(-6_356_766.0)]
    #[case(1e300)]
    #[case(f64::NAN)]
    fn no_altitude_outside_the_layer(#[case] m: f64) {
        let refused = GeometricAltitude::new(Length::new::<meter>(m)).unwrap_err();
        assert_eq!(refused.code(), crate::parameter::refused_as(m));
        let refused = GeopotentialAltitude::new(Length::new::<meter>(m)).unwrap_err();
        assert!(!m.is_finite() || refused.to_string().contains("from -5000 to 11000 m"));
    }

    #[rstest]
    #[case(29.92)]
    #[case(0.0)]
    #[case(-101_325.0)]
    #[case(f64::INFINITY)]
    #[case(f64::NAN)]
    fn no_pressure_that_is_none(#[case] p: f64) {
        for refused in [
            StationPressure::measured(pa(p)).unwrap_err(),
            SeaLevelPressure::reported(pa(p)).unwrap_err(),
        ] {
            assert_eq!(refused.code(), crate::parameter::refused_as(p));
        }
    }

    #[test]
    fn what_goes_in_comes_out() {
        let length = Length::new::<meter>(1_609.0);
        assert_eq!((geometric(1_609.0).get(), geopotential(1_609.0).get()), (length, length));
        assert_eq!(SeaLevelPressure::reported(pa(101_500.0)).unwrap().get(), pa(101_500.0));
    }

    /// The record of all weather is still believed, and no more than that.
    #[test]
    fn the_record_is_believed() {
        let town = geometric(1_609.344);
        let record = StationPressure::standard(town).get() * 1.071;
        assert!(StationPressure::measured_at(record, town).is_ok());
        let refused = StationPressure::measured_at(record * (1.0 + 1e-9), town).unwrap_err();
        assert_eq!(refused.code(), "air-pressure-looks-reduced");
    }

    #[test]
    fn a_reduced_reading_in_a_high_town_is_found_out() {
        let town = geometric(1_609.344);
        let refused = StationPressure::measured_at(pa(101_500.0), town).unwrap_err();
        assert_eq!(
            refused.to_string(),
            "The barometer's 101.5 kPa is more than the air at 1609 m ever has: it looks reduced to sea level."
        );
        assert!(refused.help().contains("which makes 83.58 kPa here"), "{}", refused.help());
        assert!(StationPressure::measured_at(pa(84_000.0), town).is_ok());
    }

    proptest! {
        #[test]
        fn a_standard_day_reported_is_the_standard_day_here(m in -400.0..5_500.0f64) {
            let reported = SeaLevelPressure::reported(pa(SEA_LEVEL_PA)).unwrap();
            let [here, standard] = [
                reported.at(geometric(m)).get().value,
                StationPressure::standard(geometric(m)).get().value,
            ];
            prop_assert!((here - standard).abs() <= 1e-12 * standard);
        }

        #[test]
        fn the_pressure_falls_with_height(m in -4_900.0..10_900.0f64, higher in 0.1..90.0f64) {
            let [low, high] = [m, m + higher].map(|m| StationPressure::standard(geometric(m)));
            prop_assert!(high < low);
        }
    }
}

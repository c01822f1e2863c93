//! Dimensions: what kind of quantity a unit measures, and the uom types that stand for them.

use super::{
    DiffusionCoefficient, DynamicViscosity, Energy, Length, Mass, MassDensity, MolarEnergy, Power,
    Pressure, Ratio, SpecificHeatCapacity, TemperatureCoefficient, TemperatureInterval,
    ThermodynamicTemperature, Time, Velocity, Volume,
};
use core::fmt;
use core::marker::PhantomData;

/// What kind of quantity it is: powers of length, mass, time, temperature, amount of
/// substance and a count.
///
/// A temperature (a point on a scale) and a difference of temperatures are kept apart.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Dimension {
    length: i8,
    mass: i8,
    time: i8,
    temperature: i8,
    substance: i8,
    count: i8,
    point: bool,
}

impl Dimension {
    /// A pure number.
    pub const RATIO: Self =
        Self { length: 0, mass: 0, time: 0, temperature: 0, substance: 0, count: 0, point: false };
    /// A length.
    pub const LENGTH: Self = Self { length: 1, ..Self::RATIO };
    /// An area.
    pub const AREA: Self = Self { length: 2, ..Self::RATIO };
    /// A volume.
    pub const VOLUME: Self = Self { length: 3, ..Self::RATIO };
    /// A mass.
    pub const MASS: Self = Self { mass: 1, ..Self::RATIO };
    /// A time.
    pub const TIME: Self = Self { time: 1, ..Self::RATIO };
    /// A temperature: a point on a scale, such as 330 °F.
    pub const TEMPERATURE: Self = Self { temperature: 1, point: true, ..Self::RATIO };
    /// A difference of temperatures, such as a rise by 20 K.
    pub const TEMPERATURE_INTERVAL: Self = Self { temperature: 1, ..Self::RATIO };
    /// A number of things: drops or pieces.
    pub const COUNT: Self = Self { count: 1, ..Self::RATIO };
    /// A density: mass per volume.
    pub const DENSITY: Self = Self { mass: 1, length: -3, ..Self::RATIO };
    /// A pressure.
    pub const PRESSURE: Self = Self { mass: 1, length: -1, time: -2, ..Self::RATIO };
    /// An energy.
    pub const ENERGY: Self = Self { mass: 1, length: 2, time: -2, ..Self::RATIO };
    /// A power.
    pub const POWER: Self = Self { mass: 1, length: 2, time: -3, ..Self::RATIO };
    /// A speed.
    pub const VELOCITY: Self = Self { length: 1, time: -1, ..Self::RATIO };
    /// A specific heat: energy per mass and temperature difference.
    pub const SPECIFIC_HEAT: Self = Self { length: 2, time: -2, temperature: -1, ..Self::RATIO };
    /// A dynamic viscosity: pressure times time.
    pub const VISCOSITY: Self = Self { mass: 1, length: -1, time: -1, ..Self::RATIO };
    /// A diffusivity, of heat as of matter: area per time.
    pub const DIFFUSIVITY: Self = Self { length: 2, time: -1, ..Self::RATIO };
    /// An amount of substance.
    pub const SUBSTANCE: Self = Self { substance: 1, ..Self::RATIO };
    /// An energy per amount of substance, such as an activation energy.
    pub const MOLAR_ENERGY: Self = Self { substance: -1, ..Self::ENERGY };
    /// A coefficient of thermal expansion: per temperature difference.
    pub const EXPANSION: Self = Self { temperature: -1, ..Self::RATIO };
    /// A mass per piece or drop.
    pub const MASS_PER_COUNT: Self = Self { mass: 1, count: -1, ..Self::RATIO };
    /// A volume per piece or drop.
    pub const VOLUME_PER_COUNT: Self = Self { length: 3, count: -1, ..Self::RATIO };

    /// What a person calls it, with its article: `a volume`; `None` where it has no common name.
    #[must_use]
    pub fn name(self) -> Option<&'static str> {
        const NAMES: [(Dimension, &str); 22] = [
            (Dimension::RATIO, "a ratio"),
            (Dimension::LENGTH, "a length"),
            (Dimension::AREA, "an area"),
            (Dimension::VOLUME, "a volume"),
            (Dimension::MASS, "a mass"),
            (Dimension::TIME, "a time"),
            (Dimension::TEMPERATURE, "a temperature"),
            (Dimension::TEMPERATURE_INTERVAL, "a temperature difference"),
            (Dimension::COUNT, "a count"),
            (Dimension::DENSITY, "a density"),
            (Dimension::PRESSURE, "a pressure"),
            (Dimension::ENERGY, "an energy"),
            (Dimension::POWER, "a power"),
            (Dimension::VELOCITY, "a speed"),
            (Dimension::SPECIFIC_HEAT, "a specific heat"),
            (Dimension::VISCOSITY, "a viscosity"),
            (Dimension::DIFFUSIVITY, "a diffusivity"),
            (Dimension::SUBSTANCE, "an amount of substance"),
            (Dimension::MOLAR_ENERGY, "an energy per mole"),
            (Dimension::EXPANSION, "a thermal expansion"),
            (Dimension::MASS_PER_COUNT, "a mass per piece or drop"),
            (Dimension::VOLUME_PER_COUNT, "a volume per piece or drop"),
        ];
        NAMES.iter().find(|(dimension, _)| *dimension == self).map(|(_, name)| *name)
    }

    /// This times `other` to the power of `exponent`.
    pub(super) const fn times(self, other: Self, exponent: i8) -> Self {
        Self {
            length: self.length.saturating_add(other.length.saturating_mul(exponent)),
            mass: self.mass.saturating_add(other.mass.saturating_mul(exponent)),
            time: self.time.saturating_add(other.time.saturating_mul(exponent)),
            temperature: self
                .temperature
                .saturating_add(other.temperature.saturating_mul(exponent)),
            substance: self.substance.saturating_add(other.substance.saturating_mul(exponent)),
            count: self.count.saturating_add(other.count.saturating_mul(exponent)),
            point: false,
        }
    }

    /// Whether an amount of this dimension can be read as a quantity of dimension `wanted`.
    ///
    /// The same dimension can; and a bare number of degrees can be a difference where one is asked for.
    #[must_use]
    pub fn serves_as(self, wanted: Self) -> bool {
        self == wanted || (self == Self::TEMPERATURE && wanted == Self::TEMPERATURE_INTERVAL)
    }
}

/// The common name with its article, or the powers of the base units.
impl fmt::Display for Dimension {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(name) = self.name() {
            return f.write_str(name);
        }
        f.write_str("a quantity in")?;
        let powers = [
            ("kg", self.mass),
            ("m", self.length),
            ("s", self.time),
            ("K", self.temperature),
            ("mol", self.substance),
            ("pieces", self.count),
        ];
        for (unit, power) in powers {
            match power {
                0 => {}
                1 => write!(f, " {unit}")?,
                power => write!(f, " {unit}^{power}")?,
            }
        }
        Ok(())
    }
}

mod sealed {
    pub trait Sealed {}
}

/// A uom quantity that an amount can become.
///
/// Implemented for the types that this module re-exports; sealed.
pub trait Measurable: Copy + sealed::Sealed {
    /// The quantity's dimension.
    const DIMENSION: Dimension;

    /// What two values differ by: the quantity itself, but an interval for a temperature.
    /// An uncertainty is of this type.
    type Difference: Measurable;

    /// The quantity that is `value` coherent SI units (m, kg, s, K and their products).
    fn from_si(value: f64) -> Self;

    /// The value in coherent SI units.
    fn si(self) -> f64;
}

macro_rules! measurable {
    ($($quantity:ident: $dimension:ident, differs by $difference:ident;)*) => {$(
        impl sealed::Sealed for $quantity {}

        impl Measurable for $quantity {
            const DIMENSION: Dimension = Dimension::$dimension;
            type Difference = $difference;

            fn from_si(value: f64) -> Self {
                Self { dimension: PhantomData, units: PhantomData, value }
            }

            fn si(self) -> f64 {
                self.value
            }
        }
    )*};
}

measurable! {
    Length: LENGTH, differs by Length;
    Volume: VOLUME, differs by Volume;
    Mass: MASS, differs by Mass;
    MassDensity: DENSITY, differs by MassDensity;
    Pressure: PRESSURE, differs by Pressure;
    Ratio: RATIO, differs by Ratio;
    Time: TIME, differs by Time;
    Velocity: VELOCITY, differs by Velocity;
    DiffusionCoefficient: DIFFUSIVITY, differs by DiffusionCoefficient;
    DynamicViscosity: VISCOSITY, differs by DynamicViscosity;
    Energy: ENERGY, differs by Energy;
    MolarEnergy: MOLAR_ENERGY, differs by MolarEnergy;
    Power: POWER, differs by Power;
    SpecificHeatCapacity: SPECIFIC_HEAT, differs by SpecificHeatCapacity;
    TemperatureCoefficient: EXPANSION, differs by TemperatureCoefficient;
    TemperatureInterval: TEMPERATURE_INTERVAL, differs by TemperatureInterval;
    ThermodynamicTemperature: TEMPERATURE, differs by TemperatureInterval;
}

//! `Debug` of structs of quantities in the units of the bench: grams and milliliters, not the SI units that uom keeps.

use core::fmt;

use crate::quantity::{Dimension, Measurable};

/// A value that `Debug` shows in the units of the bench.
pub(crate) trait Legible {
    fn legible(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result;
}

/// A field of a struct, for its `Debug`.
pub(crate) struct InBenchUnits<'a, T>(pub(crate) &'a T);

impl<T: Legible> fmt::Debug for InBenchUnits<'_, T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.legible(f)
    }
}

impl<Q: Measurable> Legible for Q {
    fn legible(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let si = self.si();
        let (value, unit) = match Q::DIMENSION {
            Dimension::MASS => (si * 1e3, " g"),
            Dimension::VOLUME => (si * 1e6, " mL"),
            Dimension::DENSITY => (si * 1e-3, " g/mL"),
            Dimension::LENGTH => (si * 1e3, " mm"),
            Dimension::TIME => (si, " s"),
            Dimension::TEMPERATURE => (si - 273.15, " °C"),
            Dimension::PRESSURE => (si * 1e-3, " kPa"),
            Dimension::VELOCITY => (si * 1e2, " cm/s"),
            Dimension::EXPANSION => (si, " 1/K"),
            Dimension::RATIO => (si, ""),
            _ => (si, " (SI)"),
        };
        write!(f, "{}{unit}", twelve_digits(value))
    }
}

/// The number to twelve significant digits, which hides the rounding of a change of units.
fn twelve_digits(value: f64) -> f64 {
    let magnitude = libm::floor(libm::log10(libm::fabs(value)));
    if !magnitude.is_finite() {
        return value;
    }
    let scale = libm::pow(10.0, (11.0 - magnitude).clamp(0.0, 22.0));
    libm::round(value * scale) / scale
}

impl<T: Legible> Legible for Option<T> {
    fn legible(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            None => f.write_str("None"),
            Some(value) => f.debug_tuple("Some").field(&InBenchUnits(value)).finish(),
        }
    }
}

impl<T: fmt::Debug> Legible for &[T] {
    fn legible(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        fmt::Debug::fmt(self, f)
    }
}

/// Types that `Debug` shows as they are.
macro_rules! plain {
    ($($Type:ty),* $(,)?) => {$(
        impl $crate::show::legible::Legible for $Type {
            fn legible(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                core::fmt::Debug::fmt(self, f)
            }
        }
    )*};
}
pub(crate) use plain;

plain! { u32, f64 }

/// Implements `Debug` for structs, with their quantities in the units of the bench.
macro_rules! legible {
    ($($Type:ident $(<$life:lifetime>)? { $($field:ident),* $(,)? })*) => {$(
        impl core::fmt::Debug for $Type $(<$life>)? {
            fn fmt(&self, f: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                f.debug_struct(stringify!($Type))
                    $(.field(stringify!($field), &$crate::show::legible::InBenchUnits(&self.$field)))*
                    .finish()
            }
        }

        $crate::show::legible::plain! { $Type $(<$life>)? }
    )*};
}
pub(crate) use legible;

#[cfg(test)]
mod tests {
    use std::format;

    use super::*;
    use crate::quantity::{
        Length, Mass, MassDensity, Pressure, Ratio, ThermodynamicTemperature, Velocity, Volume,
    };

    struct Cast {
        length: Length,
        pressure: Pressure,
        speed: Velocity,
        counts: &'static [u32],
    }

    legible! { Cast { length, pressure, speed, counts } }

    #[test]
    fn lists_and_other_quantities() {
        let cast = Cast {
            length: Length::from_si(0.125),
            pressure: Pressure::from_si(91_400.0),
            speed: Velocity::from_si(0.17),
            counts: &[1, 2],
        };
        let shown = "Cast { length: 125 mm, pressure: 91.4 kPa, speed: 17 cm/s, counts: [1, 2] }";
        assert_eq!(format!("{cast:?}"), shown);
    }

    #[test]
    fn twelve_digits_are_kept() {
        for (value, kept) in [
            (123_456.789_012_345_6, 123_456.789_012),
            (1.234_567_890_123_45, 1.234_567_890_12),
            (12_345_678_901_234.5, 12_345_678_901_235.0),
            (1.5e-30, 0.0),
            (0.0, 0.0),
        ] {
            assert_eq!(twelve_digits(value), kept);
        }
    }

    struct Part {
        mass: Mass,
        volume: Option<Volume>,
        density: MassDensity,
        at: ThermodynamicTemperature,
        share: Ratio,
        count: u32,
    }

    legible! { Part { mass, volume, density, at, share, count } }

    #[test]
    fn quantities_show_in_the_units_of_the_bench() {
        let part = Part {
            mass: Mass::from_si(0.2437),
            volume: Some(Volume::from_si(236.588_236_5e-6)),
            density: MassDensity::from_si(1030.0),
            at: ThermodynamicTemperature::from_si(450.15),
            share: Ratio::from(0.3),
            count: 4,
        };
        assert_eq!(
            format!("{part:?}"),
            "Part { mass: 243.7 g, volume: Some(236.5882365 mL), density: 1.03 g/mL, at: 177 °C, share: 0.3, count: 4 }"
        );
        let odd = Part { mass: Mass::from_si(f64::NAN), volume: None, ..part };
        assert!(format!("{odd:?}").starts_with("Part { mass: NaN g, volume: None, "));
    }
}

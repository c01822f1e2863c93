//! Figures in messages: four significant digits, and a bound is never rounded past itself.

use core::fmt;

use uom::si::mass::gram;
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::ratio::percent as in_percent;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};
use uom::si::volume::milliliter;

use crate::quantity::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Volume};

/// A number with its unit, as a message shows it.
pub(crate) struct Figure {
    value: f64,
    unit: &'static str,
    round: fn(f64) -> f64,
}

impl Figure {
    /// `value` in `unit`, which begins with a space.
    pub(crate) fn new(value: f64, unit: &'static str) -> Self {
        Self { value, unit, round: libm::round }
    }

    /// The same figure as a lower bound: rounded up, so that what is shown is allowed.
    pub(crate) fn at_least(self) -> Self {
        Self { round: libm::ceil, ..self }
    }

    /// The same figure as an upper bound: rounded down, so that what is shown is allowed.
    pub(crate) fn at_most(self) -> Self {
        Self { round: libm::floor, ..self }
    }
}

/// Grams.
pub(crate) fn mass(x: &Mass) -> Figure {
    Figure::new(x.get::<gram>(), " g")
}

/// Milliliters.
pub(crate) fn volume(x: &Volume) -> Figure {
    Figure::new(x.get::<milliliter>(), " mL")
}

/// Grams per milliliter.
pub(crate) fn density(x: &MassDensity) -> Figure {
    Figure::new(x.get::<gram_per_cubic_centimeter>(), " g/mL")
}

/// Per cent.
pub(crate) fn percent(x: &Ratio) -> Figure {
    Figure::new(x.get::<in_percent>(), " %")
}

/// Degrees Celsius.
pub(crate) fn celsius(x: &ThermodynamicTemperature) -> Figure {
    Figure::new(x.get::<degree_celsius>(), " °C")
}

/// Degrees Celsius and Fahrenheit.
pub(crate) fn both_scales(x: &ThermodynamicTemperature) -> BothScales {
    let fahrenheit = Figure::new(x.get::<degree_fahrenheit>(), " °F");
    BothScales { celsius: celsius(x), fahrenheit }
}

/// A temperature on both scales: `168.6 °C (335.4 °F)`.
pub(crate) struct BothScales {
    celsius: Figure,
    fahrenheit: Figure,
}

impl fmt::Display for BothScales {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} ({})", self.celsius, self.fahrenheit)
    }
}

/// A number without a unit.
pub(crate) fn number(x: f64) -> Figure {
    Figure::new(x, "")
}

impl fmt::Display for Figure {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let magnitude = libm::floor(libm::log10(libm::fabs(self.value)));
        let decimals = (3.0 - magnitude).clamp(0.0, 9.0);
        let scale = libm::pow(10.0, decimals);
        let scaled = self.value * scale;
        // A number that is short within rounding already (12.5 g kept as 0.0125 kg) is shown as it is.
        let nearest = libm::round(scaled);
        let short = libm::fabs(scaled - nearest) <= 1e-9 * libm::fabs(nearest);
        let digits = if short { nearest } else { (self.round)(scaled) };
        let shown = digits / scale;
        // The shortest text of the nearest number has no trailing zeros; a larger one would have a row of them.
        if shown.is_finite() && libm::fabs(shown) >= 1e15 {
            write!(f, "{shown:e}{}", self.unit)
        } else {
            write!(f, "{shown}{}", self.unit)
        }
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use std::string::ToString;

    use super::*;

    #[rstest]
    #[case(12.5, "12.5 g")]
    #[case(0.0, "0 g")]
    #[case(1234.56, "1235 g")]
    #[case(0.044, "0.044 g")]
    #[case(9.876543, "9.877 g")]
    #[case(-3.25, "-3.25 g")]
    fn four_digits_and_no_trailing_zeros(#[case] grams: f64, #[case] text: &str) {
        assert_eq!(mass(&Mass::new::<gram>(grams)).to_string(), text);
    }

    #[test]
    fn bounds_round_inward() {
        assert_eq!(number(1.23456).at_least().to_string(), "1.235");
        assert_eq!(number(1.23454).at_least().to_string(), "1.235");
        assert_eq!(number(1.23456).at_most().to_string(), "1.234");
        assert_eq!(volume(&Volume::new::<milliliter>(9.5)).at_most().to_string(), "9.5 mL");
        assert_eq!(volume(&Volume::new::<milliliter>(9.5)).at_least().to_string(), "9.5 mL");
    }

    /// A billionth is rounding, more is not; and less than a billionth is nothing.
    #[test]
    fn rounding_moves_no_bound() {
        assert_eq!(number(1.0 + 0.5e-9).at_least().to_string(), "1");
        assert_eq!(number(1.0 + 1.5e-9).at_least().to_string(), "1.001");
        assert_eq!(number(1.2345e-12).to_string(), "0");
    }

    #[test]
    fn a_temperature_on_both_scales() {
        let at = ThermodynamicTemperature::new::<degree_celsius>(168.66);
        assert_eq!(both_scales(&at).to_string(), "168.7 °C (335.6 °F)");
        let none = ThermodynamicTemperature::new::<degree_celsius>(f64::NAN);
        assert_eq!(both_scales(&none).to_string(), "NaN °C (NaN °F)");
    }

    #[test]
    fn a_large_number_is_no_row_of_zeros() {
        assert_eq!(number(1e300).to_string(), "1e300");
        assert_eq!(number(-2.5e15).at_most().to_string(), "-2.5e15");
        assert_eq!(number(1e14).to_string(), "100000000000000");
        assert_eq!(number(1e15).to_string(), "1e15");
    }

    #[test]
    fn what_is_no_number_is_shown_as_such() {
        assert_eq!(number(f64::NAN).to_string(), "NaN");
        assert_eq!(number(f64::INFINITY).to_string(), "inf");
    }
}

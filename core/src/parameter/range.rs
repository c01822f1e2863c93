//! Ranges of numbers.

use core::fmt;

use super::PlainUnit;

/// By how much, relative to it, a number may miss a bound that belongs to the range: what the rounding of a unit does to
/// it.
const SLACK: f64 = 1e-12;

/// The range of a number, in the unit of its parameter.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Range {
    /// The lower bound, which belongs to the range unless `above` is set.
    pub least: f64,
    /// The upper bound, which belongs to the range unless `below` is set.
    pub most: f64,
    /// Whether the range starts above `least`.
    pub above: bool,
    /// Whether the range ends below `most`.
    pub below: bool,
}

impl Range {
    /// Numbers from `least` to `most`, both included.
    #[must_use]
    pub const fn new(least: f64, most: f64) -> Self {
        Self { least, most, above: false, below: false }
    }

    /// The same without its lower bound.
    #[must_use]
    pub const fn above(self) -> Self {
        Self { above: true, ..self }
    }

    /// The same without its upper bound.
    #[must_use]
    pub const fn below(self) -> Self {
        Self { below: true, ..self }
    }

    /// Whether `x` is a number inside.
    #[inline]
    #[must_use]
    pub fn holds(self, x: f64) -> bool {
        self.in_si(PlainUnit::Pure).holds(x)
    }

    /// The range in SI units, for comparing.
    #[inline]
    const fn in_si(self, unit: PlainUnit) -> SiRange {
        let (least, most) = (unit.to_si(self.least), unit.to_si(self.most));
        SiRange {
            least: if self.above { next_above(least) } else { least - SLACK * magnitude(least) },
            most: if self.below { next_below(most) } else { most + SLACK * magnitude(most) },
        }
    }
}

const fn magnitude(x: f64) -> f64 {
    if x < 0.0 { -x } else { x }
}

/// The next number above `x`.
const fn next_above(x: f64) -> f64 {
    x.next_up()
}

/// The next number below `x`.
const fn next_below(x: f64) -> f64 {
    x.next_down()
}

/// A range in SI units, both ends included.
#[derive(Debug, Clone, Copy)]
pub(super) struct SiRange {
    least: f64,
    most: f64,
}

impl SiRange {
    /// That of a parameter with this range in this unit; without a range, all finite numbers.
    pub(super) const fn of(range: Option<Range>, unit: PlainUnit) -> Self {
        match range {
            Some(range) => range.in_si(unit),
            None => Self { least: f64::MIN, most: f64::MAX },
        }
    }

    /// Whether `x` is a number inside.
    #[inline]
    pub(super) const fn holds(self, x: f64) -> bool {
        x >= self.least && x <= self.most
    }
}

/// A range with its unit, as a message shows it: `from 0 to below 1`, `from 1e-12 to 1e15 g`. Always with both bounds.
pub(crate) struct Shown(pub(crate) Range, pub(crate) PlainUnit);

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(range, unit) = self;
        f.write_str(if range.above { "above " } else { "from " })?;
        write!(f, "{} to ", Number(range.least, PlainUnit::Pure))?;
        f.write_str(if range.below { "below " } else { "" })?;
        write!(f, "{}", Number(range.most, *unit))
    }
}

/// `x` without what the conversion of a unit did to its last digits.
fn ten_digits(x: f64) -> f64 {
    let scale = libm::pow(10.0, 9.0 - libm::floor(libm::log10(libm::fabs(x))));
    let rounded = libm::round(x * scale) / scale;
    if rounded.is_finite() { rounded } else { x }
}

/// A number with its unit in ten digits, with an exponent where it would have a row of zeros.
pub(crate) struct Number(pub(crate) f64, pub(crate) PlainUnit);

impl fmt::Display for Number {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(x, unit) = *self;
        write!(f, "{}", AllDigits(ten_digits(x), unit))
    }
}

/// The same with all its digits.
struct AllDigits(f64, PlainUnit);

impl fmt::Display for AllDigits {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(x, unit) = *self;
        if x == 0.0 || !x.is_finite() || (1e-5..1e7).contains(&magnitude(x)) {
            write!(f, "{x}")?;
        } else {
            write!(f, "{x:e}")?;
        }
        match unit {
            PlainUnit::None | PlainUnit::Any | PlainUnit::Pure | PlainUnit::Count => Ok(()),
            unit => write!(f, " {}", unit.symbol()),
        }
    }
}

/// A number outside of a range, with so many digits that it does not look as if it were inside.
pub(crate) struct Outside(pub(crate) f64, pub(crate) Range, pub(crate) PlainUnit);

impl fmt::Display for Outside {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(x, range, unit) = *self;
        if range.holds(ten_digits(x)) {
            write!(f, "{}", AllDigits(x, unit))
        } else {
            write!(f, "{}", Number(x, unit))
        }
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use std::string::ToString;

    use super::*;

    #[rstest]
    #[case(0.1 + 0.2, "0.3")]
    #[case(1.234_567_891_23, "1.234567891")]
    #[case(12_345.678_912_345, "12345.67891")]
    #[case(0.000_015, "0.000015")]
    #[case(0.000_009, "9e-6")]
    #[case(15_000_000.0, "1.5e7")]
    #[case(9_500_000.0, "9500000")]
    #[case(0.0, "0")]
    fn ten_digits_and_no_row_of_zeros(#[case] number: f64, #[case] shown: &str) {
        assert_eq!(Number(number, PlainUnit::Pure).to_string(), shown);
    }
}

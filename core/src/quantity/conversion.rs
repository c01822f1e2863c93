//! Conversions prepared once and applied to many plain numbers.

use super::{Amount, AmountError, Rational, System, Unit};

/// Whole numbers up to this are `f64`s, every one: 2⁵³.
const LARGEST_WHOLE: i128 = 1 << 53;

/// The way from one unit to another for plain numbers: y = (x·a + c)/d.
///
/// The three are whole numbers wherever the definitions of the units allow it, so that laws between units hold on
/// bits: 48 tsp are 1 cup, 32 °F are 0 °C. Each of the three operations rounds once; where `x·a + c` is a whole
/// number below 2⁵³, the result is the nearest `f64` to the exact one.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Conversion {
    /// a.
    pub times: f64,
    /// c: zero but between scales of temperature.
    pub plus: f64,
    /// d, above zero.
    pub over: f64,
    /// The least x that is accepted: 0, or absolute zero on the scale of a temperature.
    pub least: f64,
}

impl Conversion {
    /// The conversion of numbers of `from` into numbers of `to`, household words measured in `system`.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] where the units measure different things, and as [`Unit::factor`].
    pub fn between(from: Unit, to: Unit, system: System) -> Result<Self, AmountError> {
        let (found, wanted) = (from.dimension(), to.dimension());
        if found != wanted {
            return Err(AmountError::WrongDimension { unit: from, found, wanted });
        }
        let out_of_range = || AmountError::ValueOutOfRange { unit: to };
        let slope = from.factor(system)?.checked_div(to.factor(system)?);
        let slope = slope.ok_or_else(out_of_range)?;
        let (from_zero, to_zero) = (zero(from), zero(to));
        let shift = from_zero.checked_mul(slope).and_then(|zero| zero.checked_sub(to_zero));
        let shift = shift.ok_or_else(out_of_range)?;
        let (times, plus, over) =
            on_one_denominator(slope, shift).unwrap_or((slope.to_f64(), shift.to_f64(), 1.0));
        Ok(Self { times, plus, over, least: from_zero.negated().to_f64() })
    }

    /// `value` converted; `None` unless it is a finite number, not below [`Conversion::least`], with a finite result.
    #[inline]
    #[must_use]
    pub fn apply(&self, value: f64) -> Option<f64> {
        let (converted, is_answer) = self.total(value);
        is_answer.then_some(converted)
    }

    /// The number that any `value` comes to, and whether `apply` gives it. Without branches, for columns.
    #[inline(always)]
    #[must_use]
    pub fn total(&self, value: f64) -> (f64, bool) {
        let converted = (value * self.times + self.plus) / self.over;
        (converted, (value >= self.least) & converted.is_finite())
    }

    /// `value` of the unit `from`, converted.
    ///
    /// # Errors
    /// As for an [`Amount`]: negative, below absolute zero, not finite or too large.
    pub fn convert(&self, value: f64, from: Unit) -> Result<f64, AmountError> {
        self.apply(value).ok_or_else(|| match Amount::from_f64(value, from) {
            Err(error @ (AmountError::Negative { .. } | AmountError::BelowAbsoluteZero { .. })) => {
                error
            }
            _ => AmountError::ValueOutOfRange { unit: from },
        })
    }
}

/// The number added to a reading in `unit` to count from absolute zero.
fn zero(unit: Unit) -> Rational {
    unit.scale_offset().unwrap_or(Rational::ZERO)
}

/// `slope` and `shift` as whole numbers over one; `None` where they do not all fit an `f64`.
fn on_one_denominator(slope: Rational, shift: Rational) -> Option<(f64, f64, f64)> {
    let over = slope.denominator().checked_mul(shift.denominator())?;
    let times = slope.numerator().checked_mul(shift.denominator())?;
    let plus = shift.numerator().checked_mul(slope.denominator())?;
    // In lowest terms: the ratios of all three to their common divisor.
    let shared = Rational::new(times, over)?;
    let common = over.checked_div(shared.denominator())?;
    let (times, plus, over) = match plus.checked_rem(common)? {
        0 => (shared.numerator(), plus.checked_div(common)?, shared.denominator()),
        _ => (times, plus, over),
    };
    let fits = |n: i128| (n.unsigned_abs() <= LARGEST_WHOLE.unsigned_abs()).then_some(n as f64);
    Some((fits(times)?, fits(plus)?, fits(over)?))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use rstest::rstest;
    use std::vec;

    fn between(from: &str, to: &str) -> Conversion {
        let unit = |text| Unit::parse(text).unwrap();
        Conversion::between(unit(from), unit(to), System::UsCustomary).unwrap()
    }

    /// The cube of 236.588 236 5 mL has too many digits for a whole number: its nearest `f64` is taken.
    #[test]
    fn what_has_too_many_digits_is_rounded() {
        let cubed = 236.588_236_5_f64 * 236.588_236_5 * 236.588_236_5;
        let found = between("cup3", "mL3").apply(2.0).unwrap();
        assert!((found / (2.0 * cubed) - 1.0).abs() < 1e-15, "{found}");
    }

    #[rstest]
    // Laws between the units (NIST Handbook 44, Appendix C); the temperatures by definition of the scales.
    #[case("tsp", "cup", 48.0, 1.0)]
    #[case("tsp", "mL", 1.0, 4.928_921_593_75)]
    #[case("cup", "mL", 1.25, 295.735_295_625)]
    #[case("lb", "oz wt", 1.0, 16.0)]
    #[case("gal", "fl oz", 1.0, 128.0)]
    #[case("°F", "°C", 32.0, 0.0)]
    #[case("°F", "°C", 212.0, 100.0)]
    #[case("°C", "°F", 37.0, 98.6)]
    #[case("°C", "K", 20.0, 293.15)]
    #[case("°F", "K", -459.67, 0.0)]
    #[case("in", "mm", 1.0, 25.4)]
    #[case("lb/ft3", "g/mL", 0.0, 0.0)]
    fn laws_hold_on_bits(#[case] from: &str, #[case] to: &str, #[case] x: f64, #[case] y: f64) {
        assert_eq!(between(from, to).apply(x), Some(y));
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let cup = between("cup", "mL");
        for x in [-1.0, f64::NAN, f64::INFINITY, f64::MAX] {
            assert_eq!(cup.apply(x), None, "{x}");
        }
        assert!(matches!(cup.convert(-1.0, Unit::CUP), Err(AmountError::Negative { .. })));
        let nan = cup.convert(f64::NAN, Unit::CUP);
        assert!(matches!(nan, Err(AmountError::ValueOutOfRange { .. })));
        let cold = between("°F", "°C").convert(-460.0, Unit::FAHRENHEIT);
        assert!(matches!(cold, Err(AmountError::BelowAbsoluteZero { .. })));
        let apart = Conversion::between(Unit::CUP, Unit::GRAM, System::Metric);
        assert!(matches!(apart, Err(AmountError::WrongDimension { .. })));
        let none = Conversion::between(Unit::PINT, Unit::CUP, System::UsLabel);
        assert!(matches!(none, Err(AmountError::NoSuchMeasure { .. })));
    }

    proptest! {
        /// The exact conversion of the amount, and this one, differ by the three roundings at most.
        #[test]
        fn agrees_with_the_exact_conversion(
            thousandths in 1_i64..100_000_000,
            pair in prop::sample::select(vec![
                ("tsp", "mL"), ("cup", "fl oz"), ("mL", "tbsp"), ("oz wt", "g"), ("g", "lb"), ("°F", "°C"),
                ("°C", "°F"), ("inHg", "kPa"), ("psi", "inHg"), ("in", "cm"), ("lb/gal", "g/mL"),
            ]),
        ) {
            let value = thousandths as f64 / 1000.0;
            let from = Unit::parse(pair.0).unwrap();
            let to = Unit::parse(pair.1).unwrap();
            let exact = Amount::from_f64(value, from).unwrap().in_unit(to, System::UsCustomary);
            let exact = exact.unwrap().value().to_f64();
            let conversion = between(pair.0, pair.1);
            let found = conversion.apply(value).unwrap();
            let size = exact.abs() + (conversion.plus / conversion.over).abs();
            prop_assert!((found - exact).abs() <= 2.0 * f64::EPSILON * size, "{found} {exact}");
        }
    }
}

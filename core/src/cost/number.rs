//! The decimals of costs: made of measured numbers, and sums that name what is too large.

use rust_decimal::Decimal;
use rust_decimal::prelude::ToPrimitive;

use super::CostError;
use crate::quantity::{Mass, Measurable, Ratio};

/// Decimals of a mass in grams.
const GRAM_DECIMALS: u32 = 4;

/// Decimals of a share.
const SHARE_DECIMALS: u32 = 9;

/// A mass in grams, in steps of 0.0001 g, half away from zero.
pub(super) fn grams(mass: Mass, what: &'static str) -> Result<Decimal, CostError> {
    decimal(mass.value * 1e3, GRAM_DECIMALS, what)
}

/// A share, in steps of 1e-9.
pub(crate) fn share(share: Ratio, what: &'static str) -> Result<Decimal, CostError> {
    decimal(share.value, SHARE_DECIMALS, what)
}

/// How many packages of `package` a mass is, in steps of 1e-9. Formed once, of what was measured: two masses that
/// are rounded each for itself make a gallon too many of 2 gal in packages of 1 gal.
pub(super) fn packages_of(
    mass: Mass,
    package: Mass,
    what: &'static str,
) -> Result<Decimal, CostError> {
    share(mass / package, what)
}

/// A number that is not negative, with the given number of decimals.
pub(crate) fn decimal(value: f64, decimals: u32, what: &'static str) -> Result<Decimal, CostError> {
    // Beyond 2⁵³ steps an f64 has no last step to round.
    const MOST_STEPS: f64 = 9_007_199_254_740_992.0;
    if value < 0.0 {
        return Err(CostError::Negative { what });
    }
    let steps = libm::round(value * libm::pow(10.0, f64::from(decimals)));
    if steps <= MOST_STEPS {
        Ok(Decimal::new(steps as i64, decimals))
    } else {
        Err(CostError::OutOfRange { what })
    }
}

/// A mass in grams.
pub(super) fn mass_of(grams: Decimal) -> Mass {
    Mass::from_si(float(grams) / 1e3)
}

/// As a number that is measured.
pub(super) fn float(number: Decimal) -> f64 {
    number.to_f64().unwrap_or(f64::NAN)
}

// The library's own operations are compiled again at each place that calls them, 2 kB each: hence one place each.

/// a + b.
#[inline(never)]
pub(super) fn plus(a: Decimal, b: Decimal, what: &'static str) -> Result<Decimal, CostError> {
    a.checked_add(b).ok_or(CostError::OutOfRange { what })
}

/// a − b.
#[inline(never)]
pub(super) fn minus(a: Decimal, b: Decimal, what: &'static str) -> Result<Decimal, CostError> {
    a.checked_sub(b).ok_or(CostError::OutOfRange { what })
}

/// a · b.
#[inline(never)]
pub(super) fn times(a: Decimal, b: Decimal, what: &'static str) -> Result<Decimal, CostError> {
    a.checked_mul(b).ok_or(CostError::OutOfRange { what })
}

/// a/b; also refused where b is 0.
#[inline(never)]
pub(super) fn over(a: Decimal, b: Decimal, what: &'static str) -> Result<Decimal, CostError> {
    a.checked_div(b).ok_or(CostError::OutOfRange { what })
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use super::*;
    use crate::fault::Diagnose;

    #[test]
    fn what_no_decimal_holds_is_refused() {
        for mass in [f64::NAN, f64::INFINITY, 1e14] {
            assert!(grams(Mass::from_si(mass), "x").is_err());
        }
        assert_eq!(decimal(-1.0, 2, "x").unwrap_err().code(), "cost-negative");
        // 2⁵³ steps are the most.
        let most = 9_007_199_254_740_992.0;
        assert_eq!(decimal(most, 0, "x").unwrap().to_string(), "9007199254740992");
        assert!(decimal(most + 2.0, 0, "x").is_err());
        assert!(plus(Decimal::MAX, Decimal::ONE, "x").is_err());
        assert!(minus(Decimal::MIN, Decimal::ONE, "x").is_err());
        assert!(times(Decimal::MAX, Decimal::TWO, "x").is_err());
        let refused = over(Decimal::ONE, Decimal::ZERO, "A sum").unwrap_err();
        assert_eq!(refused.to_string(), "A sum is too large, or no number.");
    }
}

//! Exact products of what was written, of unit sizes and of the book's properties.
//!
//! To bring a fraction of large integers to lowest terms costs many times its multiplications, so a
//! [`Product`] is reduced once, at its end.

use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::{Signed, ToPrimitive, Zero, float::FloatCore};

use crate::quantity::{Rational, gcd, nearest};

/// The `f64` nearest to `value`. Most fractions fit into a machine's numbers, where it is found fast.
pub(crate) fn to_f64(value: &BigRational) -> f64 {
    match (value.numer().to_i128(), value.denom().to_i128()) {
        (Some(numerator), Some(denominator)) => nearest(numerator, denominator),
        _ => value.to_f64().unwrap_or(f64::INFINITY),
    }
}

/// A fraction that is being multiplied up, not in lowest terms; its denominator is above 0.
#[derive(Debug, Clone)]
pub(crate) struct Product {
    numerator: BigInt,
    denominator: BigInt,
}

impl Product {
    /// The value of an `f64` above 0; `None` for any other.
    pub(crate) fn of_positive(value: f64) -> Option<Self> {
        if !(value.is_finite() && value > 0.0) {
            return None;
        }
        let (mantissa, exponent, _) = FloatCore::integer_decode(value);
        let twos = BigInt::from(1) << exponent.unsigned_abs();
        let mantissa = BigInt::from(mantissa);
        Some(if exponent < 0 {
            Self { numerator: mantissa, denominator: twos }
        } else {
            Self { numerator: mantissa * twos, denominator: BigInt::from(1) }
        })
    }

    pub(crate) fn is_positive(&self) -> bool {
        self.numerator.is_positive()
    }

    /// This over `divisor`, which is not 0.
    pub(crate) fn over(self, divisor: &Self) -> Self {
        Self {
            numerator: self.numerator * &divisor.denominator,
            denominator: self.denominator * &divisor.numerator,
        }
    }

    /// The value, in lowest terms.
    pub(crate) fn reduced(self) -> BigRational {
        let Self { numerator, denominator } = self;
        if numerator.is_zero() {
            return BigRational::zero();
        }
        let twos = numerator.trailing_zeros().min(denominator.trailing_zeros()).unwrap_or(0);
        let (numerator, denominator) = (numerator >> twos, denominator >> twos);
        // Without powers of two most fit into a machine's numbers, where the divisor is found fast.
        let odd = |n: &BigInt| (n.magnitude() >> n.trailing_zeros().unwrap_or(0)).to_u128();
        match (odd(&numerator), odd(&denominator)) {
            (Some(a), Some(b)) => {
                let common = BigInt::from(gcd(a, b));
                BigRational::new_raw(numerator / &common, denominator / common)
            }
            _ => BigRational::new(numerator, denominator),
        }
    }
}

impl From<Rational> for Product {
    fn from(value: Rational) -> Self {
        Self {
            numerator: BigInt::from(value.numerator()),
            denominator: BigInt::from(value.denominator()),
        }
    }
}

impl From<&BigRational> for Product {
    fn from(value: &BigRational) -> Self {
        Self { numerator: value.numer().clone(), denominator: value.denom().clone() }
    }
}

impl core::ops::Mul for Product {
    type Output = Self;

    fn mul(self, other: Self) -> Self {
        Self {
            numerator: self.numerator * other.numerator,
            denominator: self.denominator * other.denominator,
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case(0.0)]
    #[case(-1.0)]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    fn only_numbers_above_zero(#[case] value: f64) {
        assert!(Product::of_positive(value).is_none());
    }

    fn parts() -> impl Strategy<Value = (i64, i64, f64, f64)> {
        let size = prop_oneof![1e-9..1e9f64, Just(1e-300), Just(1e300), Just(0.5)];
        (any::<i64>(), 1..i64::MAX, size.clone(), size)
    }

    proptest! {
        // The same fractions by num-rational, which reduces each step.
        #[test]
        fn is_the_fraction_in_lowest_terms((n, d, times, per) in parts()) {
            let float = |value: f64| BigRational::from_float(value).unwrap();
            let fraction = BigRational::new(n.into(), d.into());
            let product = Product::from(&fraction) * Product::of_positive(times).unwrap();
            let found = product.over(&Product::of_positive(per).unwrap()).reduced();
            let expected = fraction * float(times) / float(per);
            prop_assert_eq!(found.numer(), expected.numer());
            prop_assert_eq!(found.denom(), expected.denom());
        }

        // The same by num-rational.
        #[test]
        fn is_rounded_to_the_nearest((n, d, times, per) in parts(), more in 1..i64::MAX) {
            let float = |value: f64| BigRational::from_float(value).unwrap();
            let fraction = BigRational::new(n.into(), d.into());
            let longer = &fraction / BigRational::from_integer(more.into());
            for value in [&fraction * float(times) / float(per), longer, fraction] {
                prop_assert_eq!(to_f64(&value).to_bits(), value.to_f64().unwrap().to_bits());
            }
        }
    }
}

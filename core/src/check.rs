//! Bounds on numbers from outside, so that no calculation meets a NaN, an infinity or an overflow.

/// Greatest magnitude that is believed, in SI units: a mass of 1e15 kg is a slip, not a pot.
const GREATEST: f64 = 1e15;

/// Least magnitude of a number that must not be zero, in SI units.
const LEAST: f64 = 1e-15;

/// Whether `x` is above zero and of a believable magnitude.
#[inline]
pub(crate) fn is_positive(x: f64) -> bool {
    (LEAST..=GREATEST).contains(&x)
}

/// Whether `x` is zero or above and of a believable magnitude.
pub(crate) fn is_not_negative(x: f64) -> bool {
    (0.0..=GREATEST).contains(&x)
}

/// Whether `x` lies from 0 to 1, both ends included.
pub(crate) fn is_share(x: f64) -> bool {
    (0.0..=1.0).contains(&x)
}

/// Whether `x` lies from 0 to 1, the upper end left out.
pub(crate) fn is_share_below_one(x: f64) -> bool {
    (0.0..1.0).contains(&x)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_no_number_passes_nowhere() {
        for x in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, -1.0, 1e300] {
            assert!(!is_positive(x) && !is_not_negative(x) && !is_share(x));
            assert!(!is_share_below_one(x));
        }
    }

    #[test]
    fn ends_belong_where_said() {
        assert!(!is_positive(0.0) && is_not_negative(0.0) && is_share(0.0));
        assert!(is_share(1.0) && !is_share_below_one(1.0) && is_share_below_one(0.0));
    }
}

//! Whole numbers from quotients that carry rounding.

/// How near to a whole number, relative to it, a quotient is taken for that number.
pub(super) const SNAP: f64 = 1e-9;

/// The least whole number not below `x`, which is zero or above.
pub(super) fn up(x: f64) -> f64 {
    snapped(x).unwrap_or_else(|| libm::ceil(x))
}

/// The greatest whole number not above `x`, which is zero or above.
pub(super) fn down(x: f64) -> f64 {
    snapped(x).unwrap_or_else(|| libm::floor(x))
}

fn snapped(x: f64) -> Option<f64> {
    let nearest = libm::rint(x);
    (libm::fabs(x - nearest) <= SNAP * nearest).then_some(nearest)
}

/// ⌈n/d⌉; `None` for d = 0.
pub(super) fn div_up(n: u32, d: u32) -> Option<u32> {
    let whole = n.checked_div(d)?;
    let rest = n.checked_rem(d)?;
    Some(if rest == 0 { whole } else { whole.saturating_add(1) })
}

/// A whole number from 0 up as `u32`; what is greater gives the greatest but one, as the greatest means none at the doors.
pub(super) fn to_count(x: f64) -> u32 {
    (x as u32).min(u32::MAX - 1)
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case(4.0, 4.0, 4.0)]
    #[case(4.000_000_000_000_001, 4.0, 4.0)]
    #[case(3.999_999_999_999_999, 4.0, 4.0)]
    #[case(4.000_001, 5.0, 4.0)]
    #[case(0.0, 0.0, 0.0)]
    #[case(1e-12, 1.0, 0.0)]
    fn rounding_noise_makes_no_shot(#[case] x: f64, #[case] above: f64, #[case] below: f64) {
        assert_eq!((up(x), down(x)), (above, below));
    }

    #[test]
    fn counts_stay_in_range() {
        assert_eq!((div_up(10, 4), div_up(8, 4), div_up(1, 0)), (Some(3), Some(2), None));
        assert_eq!((to_count(3.0), to_count(1e20)), (3, u32::MAX - 1));
    }
}

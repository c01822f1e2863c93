//! Student's t: how many standard uncertainties hold the true value with a stated probability.
//!
//! For whole degrees of freedom ν the probability between −t and t is a finite sum of powers of cos θ with
//! θ = arctan(t/√ν) (Abramowitz and Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4); it is
//! solved for θ by halving. No table, and no series that must converge.

use core::f64::consts::{FRAC_PI_2, PI};

use super::UncertaintyError;
use crate::quantity::Ratio;

/// Degrees of freedom beyond which t no longer changes: at 10 000 it is 1e-4 above its limit.
const MOST_FREEDOM: f64 = 10_000.0;

/// The smallest probability outside that the sum can distinguish from rounding.
const LEAST_OUTSIDE: f64 = 1e-9;

/// The coverage factor k = t_level(⌊ν⌋) for `freedom` degrees of freedom, as many as one likes where it is
/// `None`; t95 is that of a level of 0.95. From 10 000 on it is that of 10 000 (1.9602 for 95 %, where the
/// normal distribution has 1.9600).
///
/// # Errors
/// [`UncertaintyError::Level`] for a level outside 0 to 0.999 999 999; [`UncertaintyError::BadFreedom`] below 1.
pub fn coverage_factor(level: Ratio, freedom: Option<f64>) -> Result<f64, UncertaintyError> {
    let outside = 1.0 - level.value;
    if !(LEAST_OUTSIDE..1.0).contains(&outside) {
        return Err(UncertaintyError::Level { level: level.value });
    }
    let freedom = freedom.unwrap_or(MOST_FREEDOM);
    // An effective ν that is whole but for rounding must not lose one.
    let whole = libm::floor(freedom * (1.0 + 1e-12));
    if !(1.0..=f64::INFINITY).contains(&whole) {
        return Err(UncertaintyError::BadFreedom { of: "the result".into(), freedom });
    }
    Ok(student_t(outside, whole))
}

/// The t beyond which `outside` of the probability is, on both sides together; `freedom` is whole, 1 or more.
pub(crate) fn student_t(outside: f64, freedom: f64) -> f64 {
    let freedom = freedom.min(MOST_FREEDOM);
    let (mut low, mut high) = (0.0, FRAC_PI_2);
    // 64 halvings leave nothing of an f64.
    for _ in 0..64 {
        let middle = (low + high) / 2.0;
        if 1.0 - inside(middle, freedom) > outside {
            low = middle;
        } else {
            high = middle;
        }
    }
    libm::sqrt(freedom) * libm::tan((low + high) / 2.0)
}

/// The probability between −t and t, with t = √ν tan θ.
fn inside(theta: f64, freedom: f64) -> f64 {
    let (sine, cosine) = (libm::sin(theta), libm::cos(theta));
    let odd = libm::fmod(freedom, 2.0) == 1.0;
    // Odd: cos θ + (2/3) cos³ θ + …; even: 1 + (1/2) cos² θ + …; both up to cos^(ν−2) θ.
    let (mut power, mut term) = if odd { (1.0, cosine) } else { (0.0, 1.0) };
    let mut sum = 0.0;
    while power <= freedom - 2.0 {
        sum += term;
        term *= (power + 1.0) / (power + 2.0) * cosine * cosine;
        power += 2.0;
    }
    if odd { 2.0 / PI * (theta + sine * sum) } else { sine * sum }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;
    use crate::fault::Diagnose;

    #[rstest]
    // JCGM 100:2008, Table G.2, and beyond its digits scipy 1.17.1 stats.t.
    #[case(0.95, 1.0, 12.706_204_736)]
    #[case(0.95, 2.0, 4.302_652_730)]
    #[case(0.95, 3.0, 3.182_446_305)]
    #[case(0.95, 4.0, 2.776_445_105)]
    #[case(0.95, 10.0, 2.228_138_852)]
    #[case(0.99, 16.0, 2.920_781_622)]
    #[case(0.95, 50.0, 2.008_559_112)]
    // The closed forms for ν = 1, t = tan(πp/2), and ν = 2, t = p √(2/(1 − p²)).
    #[case(0.5, 1.0, 1.0)]
    #[case(0.6, 2.0, 1.060_660_172)]
    fn agrees_with_tables(#[case] level: f64, #[case] freedom: f64, #[case] expected: f64) {
        let got = coverage_factor(Ratio::from(level), Some(freedom)).unwrap();
        assert!((got - expected).abs() < 1e-8 * expected, "{got} for {expected}");
    }

    #[test]
    fn many_degrees_of_freedom_are_the_normal_distribution() {
        let got = coverage_factor(Ratio::from(0.95), None).unwrap();
        assert!((got - 1.959_964).abs() < 3e-4, "{got}");
        let more = coverage_factor(Ratio::from(0.95), Some(1e9)).unwrap();
        assert_eq!(got, more);
    }

    #[rstest]
    #[case(0.0, 5.0, "uncertainty-level")]
    #[case(1.0, 5.0, "uncertainty-level")]
    #[case(f64::NAN, 5.0, "uncertainty-level")]
    #[case(0.95, 0.5, "uncertainty-bad-freedom")]
    #[case(0.95, f64::NAN, "uncertainty-bad-freedom")]
    fn refuses(#[case] level: f64, #[case] freedom: f64, #[case] code: &str) {
        let refused = coverage_factor(Ratio::from(level), Some(freedom)).unwrap_err();
        assert_eq!(refused.code(), code);
    }

    #[test]
    fn degrees_of_freedom_are_cut_to_whole_ones() {
        let level = Ratio::from(0.99);
        let cut = coverage_factor(level, Some(16.7)).unwrap();
        assert_eq!(cut, coverage_factor(level, Some(16.0)).unwrap());
        let rounded = coverage_factor(level, Some(16.0 - 1e-13)).unwrap();
        assert_eq!(cut, rounded);
        let short = coverage_factor(level, Some(16.0 * (1.0 - 1.5e-12))).unwrap();
        assert_eq!(short, coverage_factor(level, Some(15.0)).unwrap());
    }

    proptest! {
        #[test]
        fn more_readings_and_less_coverage_need_less(level in 0.5..0.999, freedom in 1_u32..200) {
            let k = |level: f64, freedom: u32| {
                coverage_factor(Ratio::from(level), Some(f64::from(freedom))).unwrap()
            };
            prop_assert!(k(level, freedom) > k(level, freedom + 1));
            prop_assert!(k(level, freedom) > k(level - 0.01, freedom));
        }
    }
}

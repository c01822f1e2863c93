//! Grubbs' test for one value that is too far out.
//!
//! F. E. Grubbs, Technometrics 11 (1969) 1–21, two-sided, as ISO 5725-2 uses it: with G = max|x − x̄|/s of n
//! values and t the quantile of Student's t with n − 2 degrees of freedom beyond which α/n is on both sides,
//! the critical value is (n − 1)/√n · √(t²/(n − 2 + t²)). ISO 5725-2, 7.3.4 calls a value beyond the critical
//! value at α = 5 % a straggler and one beyond that at α = 1 % an outlier. The test takes the values to be
//! normally distributed but for that one.

use core::fmt;

use crate::quantity::Ratio;
use crate::uncertainty::student_t;
use crate::words::words;

words! {
    /// How far out a questioned value is (ISO 5725-2).
    pub enum Verdict {
        /// Beyond the critical value at 5 %: one such value in twenty good series.
        Straggler = "straggler",
        /// Beyond that at 1 %: one in a hundred.
        Outlier = "outlier",
    }
}

/// The value of a series that is too far out to be believed without a look. It is not dropped.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Questioned {
    /// Which one, counted from 1.
    pub place: usize,
    /// How many standard deviations from the mean: Grubbs' G.
    pub distance: Ratio,
    /// The critical value that it exceeds.
    pub critical: Ratio,
    /// Its name.
    pub verdict: Verdict,
}

/// As a message shows it: `weighing 4 is an outlier: 2.1 standard deviations from the mean, beyond 2.03`.
impl fmt::Display for Questioned {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let article = match self.verdict {
            Verdict::Straggler => "a",
            Verdict::Outlier => "an",
        };
        write!(
            f,
            "weighing {} is {article} {}: {:.2} standard deviations from the mean, beyond {:.2}",
            self.place, self.verdict, self.distance.value, self.critical.value
        )
    }
}

/// Grubbs' critical value for `count` values, two-sided at the significance `alpha`; `None` below three values,
/// of which none can be out, and for an `alpha` that is not a probability from 1e-6 to below 1.
#[must_use]
pub fn grubbs_critical(count: usize, alpha: Ratio) -> Option<f64> {
    if count < 3 || !(alpha.value >= 1e-6 && alpha.value < 1.0) {
        return None;
    }
    let n = count as f64;
    let t = student_t(alpha.value / n, n - 2.0);
    Some((n - 1.0) / libm::sqrt(n) * libm::sqrt(t * t / (n - 2.0 + t * t)))
}

/// The value that Grubbs' test questions, of values given as distances from their mean in standard deviations.
pub(crate) fn question(distances: impl Iterator<Item = f64>) -> Option<Questioned> {
    let mut count = 0_usize;
    let (mut place, mut farthest) = (0_usize, 0.0);
    for distance in distances {
        count = count.saturating_add(1);
        let distance = libm::fabs(distance);
        // Values without any scatter have no distance (0/0), and none is farther than a NaN.
        if distance > farthest {
            (place, farthest) = (count, distance);
        }
    }
    let beyond = |alpha: f64, verdict| {
        let critical = grubbs_critical(count, Ratio::from(alpha))?;
        let critical = Ratio::from(critical);
        let distance = Ratio::from(farthest);
        (distance > critical).then_some(Questioned { place, distance, critical, verdict })
    };
    beyond(0.01, Verdict::Outlier).or_else(|| beyond(0.05, Verdict::Straggler))
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use std::string::ToString;
    use std::vec::Vec;

    use super::*;

    // ISO 5725-2:1994, Table 5, one largest or smallest value (from memory), upper 5 % and upper 1 %.
    #[rstest]
    #[case(3, 1.155, 1.155)]
    #[case(4, 1.481, 1.496)]
    #[case(5, 1.715, 1.764)]
    #[case(6, 1.887, 1.973)]
    #[case(8, 2.126, 2.274)]
    #[case(10, 2.290, 2.482)]
    #[case(20, 2.709, 3.001)]
    fn critical_values_are_those_of_the_standard(
        #[case] count: usize,
        #[case] straggler: f64,
        #[case] outlier: f64,
    ) {
        let critical = |alpha| grubbs_critical(count, Ratio::from(alpha)).unwrap();
        assert!((critical(0.05) - straggler).abs() < 1.1e-3, "{}", critical(0.05));
        assert!((critical(0.01) - outlier).abs() < 1.1e-3, "{}", critical(0.01));
    }

    fn of(values: &[f64]) -> Option<Questioned> {
        let n = values.len() as f64;
        let mean = values.iter().sum::<f64>() / n;
        let square: f64 = values.iter().map(|x| (x - mean) * (x - mean)).sum();
        let deviation = libm::sqrt(square / (n - 1.0));
        question(values.iter().map(|x| (x - mean) / deviation))
    }

    #[test]
    fn a_published_series() {
        // Uranium isotope masses, Tietjen and Moore 1972, as the NIST/SEMATECH handbook 1.3.5.17.1 prints them:
        // G = 2.4688 (from memory).
        let series = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
        let found = of(&series).unwrap();
        assert_eq!((found.place, found.verdict), (8, Verdict::Outlier));
        assert!((found.distance.value - 2.468_764_5).abs() < 1e-6);
        let text = found.to_string();
        assert!(text.starts_with("weighing 8 is an outlier: 2.47 standard dev"), "{text}");
    }

    #[rstest]
    #[case(&[])]
    #[case(&[1.0])]
    #[case(&[1.0, 9.0])]
    #[case(&[2.0, 2.0, 2.0, 2.0])]
    #[case(&[1.0, 1.1, 0.9, 1.05, 0.95])]
    fn questions_nothing(#[case] values: &[f64]) {
        assert_eq!(of(values), None);
    }

    #[test]
    fn levels_are_kept_apart() {
        // Eight values with one moved out until it is a straggler, then an outlier.
        let with = |last: f64| {
            let mut values: Vec<f64> = [-1.2, -0.8, -0.3, 0.0, 0.3, 0.8, 1.2].into();
            values.push(last);
            of(&values).map(|found| found.verdict)
        };
        assert_eq!(with(2.0), None);
        assert_eq!(with(4.0), Some(Verdict::Straggler));
        assert_eq!(with(6.0), Some(Verdict::Outlier));
    }

    /// Of eight values, as in the table above: 2.126 at 5 % and 2.274 at 1 %. A value is out beyond that, not at it.
    #[test]
    fn levels_are_those_of_the_standard() {
        let verdict = |farthest: f64| {
            let mut distances = [0.5; 8];
            (distances[2], distances[5]) = (-farthest, farthest);
            question(distances.into_iter()).map(|found| (found.place, found.verdict))
        };
        assert_eq!(verdict(2.12), None);
        assert_eq!(verdict(2.13), Some((3, Verdict::Straggler)));
        assert_eq!(verdict(2.27), Some((3, Verdict::Straggler)));
        assert_eq!(verdict(2.28), Some((3, Verdict::Outlier)));
        let critical = |alpha| grubbs_critical(8, Ratio::from(alpha)).unwrap();
        assert_eq!(verdict(critical(0.05)), None);
        assert_eq!(verdict(critical(0.01)), Some((3, Verdict::Straggler)));
    }

    #[test]
    fn there_is_no_test_without_three_values_or_a_level() {
        assert_eq!(grubbs_critical(2, Ratio::from(0.05)), None);
        for alpha in [f64::NAN, 0.0, 0.9e-6, 1.0, 1.5] {
            assert_eq!(grubbs_critical(9, Ratio::from(alpha)), None, "{alpha}");
        }
        assert!(grubbs_critical(9, Ratio::from(1e-6)).is_some());
    }
}

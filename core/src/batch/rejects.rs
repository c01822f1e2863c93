//! How likely enough pieces are good.

use super::{BatchError, within};
use crate::check::is_share_below_one;
use crate::quantity::Ratio;

/// The greatest confidence that is reckoned with.
pub const MOST_CONFIDENCE: f64 = 1.0 - 1e-9;

/// Rejects to reckon with.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rejects {
    /// Share p of cast pieces that are rejects, each by itself: 0 to below 1.
    pub rate: Ratio,
    /// Wanted probability that the good pieces suffice: above 0, at most 0.999 999 999.
    pub confidence: Ratio,
}

impl Rejects {
    pub(super) fn check(&self) -> Result<(), BatchError> {
        within(is_share_below_one(self.rate.value), "the reject rate", "from 0 to below 1")?;
        let confidence = self.confidence.value;
        let sound = confidence > 0.0 && confidence <= MOST_CONFIDENCE;
        within(sound, "the confidence", "above 0 and at most 0.999999999")
    }
}

/// P[Bin(cast, 1 − p) ≥ wanted]: the probability that of `cast` pieces at least `wanted` are good.
///
/// Sums the binomial distribution of the rejects outward from its greatest term, each term from its neighbor,
/// and divides by the sum of all: no factorial, no underflow. Terms below 1e-20 of the greatest are left out;
/// the result is good to 1e-12.
pub(super) fn enough(cast: u64, wanted: u64, rate: f64) -> f64 {
    const NEGLIGIBLE: f64 = 1e-20;
    let Some(spare) = cast.checked_sub(wanted) else { return 0.0 };
    let odds = rate / (1.0 - rate);
    let total = cast as f64;
    let most_likely = libm::floor((total + 1.0) * rate).min(total);
    let spare = spare as f64;

    let (mut enough, mut all) = (0.0, 0.0);
    let mut count = |rejects: f64, term: f64| {
        all += term;
        if rejects <= spare {
            enough += term;
        }
    };
    let (mut rejects, mut term) = (most_likely, 1.0);
    while term > NEGLIGIBLE {
        count(rejects, term);
        if rejects < 1.0 {
            break;
        }
        term *= rejects / ((total - rejects + 1.0) * odds);
        rejects -= 1.0;
    }
    (rejects, term) = (most_likely, 1.0);
    while rejects < total {
        term *= (total - rejects) * odds / (rejects + 1.0);
        rejects += 1.0;
        if term <= NEGLIGIBLE {
            break;
        }
        count(rejects, term);
    }
    enough / all
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    // By hand: of 3 cast with p = 0.1, P[≥2] = 0.9³ + 3·0.9²·0.1; of 2 with p = 0.5, P[≥1] = 0.75.
    #[rstest]
    #[case(3, 2, 0.1, 0.972)]
    #[case(3, 3, 0.1, 0.729)]
    #[case(2, 1, 0.5, 0.75)]
    #[case(5, 5, 0.0, 1.0)]
    #[case(4, 5, 0.0, 0.0)]
    #[case(1, 0, 0.999, 1.0)]
    fn by_hand(#[case] cast: u64, #[case] wanted: u64, #[case] rate: f64, #[case] expected: f64) {
        assert!((enough(cast, wanted, rate) - expected).abs() < 1e-14);
    }

    #[test]
    fn a_million_pieces_do_not_underflow() {
        // The mean of Bin(n, p) with np whole is its median, so P[rejects ≤ np] is a little above one half:
        // by the normal approximation with its continuity correction, 0.5 + 0.5/√(2π·npq) ± 1/√(npq)/6.
        let got = enough(1_000_000, 900_000, 0.1);
        assert!(got > 0.5 && got < 0.503, "{got}");
    }
}

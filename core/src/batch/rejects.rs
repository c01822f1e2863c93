//! How likely enough pieces are good.

use super::BatchError;
use crate::parameter::{Check, Parameter, Relation};
use crate::quantity::Ratio;

/// Rejects to allow for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rejects {
    /// Share p of cast pieces that are rejects, each by itself: 0 to below 1.
    pub rate: Ratio,
    /// Wanted probability that the good pieces suffice: above 0, at most 0.999 999 999.
    pub confidence: Ratio,
}

impl Rejects {
    pub(super) fn check(&self, check: &mut Check) {
        check
            .number(Parameter::Rejects, self.rate.value)
            .number(Parameter::Confidence, self.confidence.value);
    }
}

/// P[Bin(cast, 1 − p) ≥ wanted]: the probability that of `cast` pieces at least `wanted` are good.
///
/// Sums the binomial distribution of the rejects outward from its greatest term, each term from its neighbor,
/// and divides by the sum of all: no factorial, no underflow. Terms below 1e-20 of the greatest are skipped;
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

/// Interval of the reject rate after `rejects` of `cast` pieces, with `confidence`: from the lowest
/// to the highest rate at which this count is not a rare one.
///
/// The exact interval of a binomial share (Clopper and Pearson, Biometrika 26 (1934) 404): with
/// α = 1 − confidence, P[Bin(n, p₁) ≥ x] = α/2 and P[Bin(n, p₂) ≤ x] = α/2; p₁ = 0 where x = 0 and
/// p₂ = 1 where x = n. It holds at least the confidence stated, mostly more. Good to 1e-12.
///
/// # Errors
/// Nothing cast, more rejects than pieces, more than 1 000 000 pieces, a confidence outside 0 to 1.
pub fn reject_interval(
    rejects: u32,
    cast: u32,
    confidence: Ratio,
) -> Result<(Ratio, Ratio), BatchError> {
    let (all, bad) = (f64::from(cast), f64::from(rejects));
    let mut check = Check::new();
    check
        .number(Parameter::CastPieces, all)
        .number(Parameter::RejectCount, bad)
        .number(Parameter::Confidence, confidence.value)
        .relation((Parameter::RejectCount, bad), Relation::AtMost, (Parameter::CastPieces, all));
    check.finish()?;
    let sure = confidence.value;
    let tail = (1.0 - sure) / 2.0;
    let (cast, good) = (u64::from(cast), u64::from(cast.saturating_sub(rejects)));
    // P[so few rejects or fewer] falls while the rate rises.
    let rate = |wanted: u64, probability: f64| {
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..60 {
            let middle = 0.5 * (low + high);
            if enough(cast, wanted, middle) > probability { low = middle } else { high = middle }
        }
        0.5 * (low + high)
    };
    let least = if rejects == 0 { 0.0 } else { rate(good.saturating_add(1), 1.0 - tail) };
    let greatest = if good == 0 { 1.0 } else { rate(good, tail) };
    Ok((Ratio::from(least), Ratio::from(greatest)))
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

    // Closed forms: with no rejects the upper end is 1 − (α/2)^(1/n), with rejects alone the lower
    // one (α/2)^(1/n); one of two: 1 − √(1 − α/2) and √(1 − α/2).
    #[rstest]
    #[case(0, 10, 0.0, 1.0 - 0.691_502_892_181_238_7)]
    #[case(10, 10, 0.691_502_892_181_238_7, 1.0)]
    #[case(1, 2, 0.012_579_117_093_425_34, 0.987_420_882_906_574_7)]
    // R's binom.test(10, 100), from memory.
    #[case(10, 100, 0.049_004_69, 0.176_222_60)]
    fn the_interval_of_a_share(
        #[case] rejects: u32,
        #[case] cast: u32,
        #[case] from: f64,
        #[case] to: f64,
    ) {
        let (low, high) = reject_interval(rejects, cast, Ratio::from(0.95)).expect("a share");
        assert!((low.value - from).abs() < 1e-8, "{} for {from}", low.value);
        assert!((high.value - to).abs() < 1e-8, "{} for {to}", high.value);
    }

    #[test]
    fn no_interval_of_what_cannot_be() {
        let sure = Ratio::from(0.95);
        assert!(reject_interval(0, 0, sure).is_err());
        assert!(reject_interval(3, 2, sure).is_err());
        assert!(reject_interval(1, 2, Ratio::from(1.0)).is_err());
        assert!(reject_interval(1, 2, Ratio::from(f64::NAN)).is_err());
    }
}

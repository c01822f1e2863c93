//! Pieces to shots.

use super::rejects::{Rejects, enough};
use super::{BatchError, whole};
use crate::parameter::{Check, Parameter};

/// The most pieces of one shape that may have to be cast for it.
const MOST_CAST: u32 = 100_000_000;

/// By how much a probability may miss the confidence from rounding alone.
const ROUNDING: f64 = 1e-12;

/// Pieces wanted of one shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Wanted {
    /// How many good pieces: at most a million.
    pub pieces: u32,
    /// How many cavities of that shape the mold has.
    pub cavities: u32,
}

/// The least number of shots that gives all pieces of all shapes that share the mold.
///
/// Without rejects S = max_j ⌈N_j/n_j⌉. With a reject rate p, the smallest S with Π_j P[Bin(S n_j, 1 − p) ≥ N_j]
/// ≥ the confidence: pieces are rejects each by itself, and the confidence is that of the whole order, so
/// with one shape it is P[Bin(S n, 1 − p) ≥ N].
///
/// # Errors
/// No piece wanted, pieces of a shape without a cavity, more than a million pieces of a shape, a reject rate
/// or confidence out of its range, or more than 1e8 pieces to cast.
pub fn shots(wanted: &[Wanted], rejects: Option<Rejects>) -> Result<u32, BatchError> {
    let mut check = Check::new();
    if let Some(rejects) = rejects {
        rejects.check(&mut check);
    }
    let most = wanted.iter().map(|shape| shape.pieces).max().unwrap_or(0);
    check.number(Parameter::Pieces, f64::from(most));
    for shape in wanted.iter().filter(|shape| shape.pieces > 0) {
        check.number(Parameter::Cavities, f64::from(shape.cavities));
    }
    check.finish()?;
    let least = |shape: &Wanted| whole::div_up(shape.pieces, shape.cavities).unwrap_or(0);
    let least = wanted.iter().map(least).max().unwrap_or(0);
    match rejects {
        Some(rejects) if rejects.rate.value > 0.0 => with_rejects(wanted, rejects, least),
        _ => Ok(least),
    }
}

/// Doubles the spare shots until they suffice, then halves the gap to the last number that did not.
fn with_rejects(wanted: &[Wanted], rejects: Rejects, least: u32) -> Result<u32, BatchError> {
    let suffices = |shots: u32| {
        confidence(wanted, shots, rejects.rate.value)
            .map(|reached| reached >= rejects.confidence.value - ROUNDING)
    };
    if suffices(least)? {
        return Ok(least);
    }
    let (mut short, mut spare) = (least, 1_u32);
    let mut enough = least.saturating_add(spare);
    while !suffices(enough)? {
        short = enough;
        spare = spare.saturating_mul(2);
        enough = least.saturating_add(spare);
    }
    while enough.saturating_sub(short) > 1 {
        let middle = short.midpoint(enough);
        if suffices(middle)? {
            enough = middle;
        } else {
            short = middle;
        }
    }
    Ok(enough)
}

/// Probability that `shots` give enough good pieces of every shape.
fn confidence(wanted: &[Wanted], shots: u32, rate: f64) -> Result<f64, BatchError> {
    wanted.iter().filter(|shape| shape.pieces > 0).try_fold(1.0, |all, shape| {
        let cast = u64::from(shots).saturating_mul(u64::from(shape.cavities));
        if cast > u64::from(MOST_CAST) {
            return Err(BatchError::TooManyCast { most: MOST_CAST });
        }
        Ok(all * enough(cast, u64::from(shape.pieces), rate))
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;
    use crate::fault::Diagnose;
    use crate::quantity::Ratio;

    fn rejects(rate: f64, confidence: f64) -> Option<Rejects> {
        Some(Rejects { rate: Ratio::from(rate), confidence: Ratio::from(confidence) })
    }

    fn of(pieces: u32, cavities: u32) -> Wanted {
        Wanted { pieces, cavities }
    }

    #[rstest]
    #[case(&[of(24, 4)], 6)]
    #[case(&[of(25, 4)], 7)]
    #[case(&[of(24, 4), of(10, 1)], 10)]
    #[case(&[of(1, 4), of(0, 0)], 1)]
    fn all_shapes_share_the_shots(#[case] wanted: &[Wanted], #[case] expected: u32) {
        assert_eq!(shots(wanted, None).unwrap(), expected);
        assert_eq!(shots(wanted, rejects(0.0, 0.95)).unwrap(), expected);
    }

    // By hand, p = 0.1, one cavity: 2 good of 2 cast 0.81, of 3 cast 0.972.
    #[rstest]
    #[case(&[of(2, 1)], 0.8, 2)]
    #[case(&[of(2, 1)], 0.95, 3)]
    #[case(&[of(2, 1), of(2, 1)], 0.95, 4)] // 0.972² = 0.945
    #[case(&[of(1, 1)], 0.95, 2)] // 1 − 0.1² = 0.99
    #[case(&[of(1, 1), of(0, u32::MAX)], 0.95, 2)] // what nobody ordered asks for nothing
    #[case(&[of(1, 1)], 0.9, 1)] // 1 − 0.1 is just enough, whatever rounding makes of it
    fn rejects_ask_for_spares(#[case] wanted: &[Wanted], #[case] c: f64, #[case] expected: u32) {
        assert_eq!(shots(wanted, rejects(0.1, c)).unwrap(), expected);
    }

    #[rstest]
    #[case(&[], None, "out-of-range")]
    #[case(&[of(0, 4)], None, "out-of-range")]
    #[case(&[of(3, 0)], None, "out-of-range")]
    #[case(&[of(1, 0)], None, "out-of-range")]
    #[case(&[of(1_000_001, 4)], None, "out-of-range")]
    #[case(&[of(10, 4)], rejects(1.0, 0.9), "out-of-range")]
    #[case(&[of(10, 4)], rejects(f64::NAN, 0.9), "not-finite")]
    #[case(&[of(10, 4)], rejects(0.1, 1.0), "out-of-range")]
    #[case(&[of(1_000_000, 1)], rejects(0.999, 0.9), "batch-too-many-cast")]
    fn refuses(#[case] wanted: &[Wanted], #[case] rejects: Option<Rejects>, #[case] code: &str) {
        assert_eq!(shots(wanted, rejects).unwrap_err().code(), code);
    }

    #[test]
    fn no_more_are_cast_than_can_be_counted() {
        let many = [of(1, MOST_CAST)];
        assert!(confidence(&many, 1, 0.5).is_ok() && confidence(&many, 2, 0.5).is_err());
        // Without rejects there is nothing to count.
        let wanted = [of(1_000_000, 1), of(1, 101)];
        assert_eq!(shots(&wanted, rejects(0.0, 0.9)), Ok(1_000_000));
        assert_eq!(shots(&wanted, rejects(0.1, 0.9)).unwrap_err().code(), "batch-too-many-cast");
    }

    #[test]
    fn a_million_pieces_with_rejects() {
        // Normal approximation: 1e6/0.95 = 1 052 632, plus 1.645·√(1 052 632·0.05·0.95)/0.95 = 387.
        let got = shots(&[of(1_000_000, 1)], rejects(0.05, 0.95)).unwrap();
        assert!((1_053_010..1_053_030).contains(&got), "{got}");
    }

    proptest! {
        #[test]
        fn the_least_that_suffices(
            pieces in 1_u32..400, cavities in 1_u32..13, rate in 0.0..0.6, c in 0.01..0.999
        ) {
            let wanted = [of(pieces, cavities)];
            let got = shots(&wanted, rejects(rate, c)).unwrap();
            prop_assert!(confidence(&wanted, got, rate).unwrap() >= c - ROUNDING);
            prop_assert!(got == 1 || confidence(&wanted, got - 1, rate).unwrap() < c);
        }
    }
}

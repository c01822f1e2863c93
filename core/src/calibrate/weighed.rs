//! A cavity's volume or the feed share, from pieces that were weighed.
//!
//! n weighed pieces give the mean m̄, the standard deviation s = √(Σ(m − m̄)²/(n − 1)) and the standard
//! uncertainty of the mean u = s/√n (JCGM 100:2008, 4.2). The shot's equation, m = V_c (1 − φ) [ρ_hot + f
//! (ρ₂₀ − ρ_hot)], is then solved for V_c with f known, or for f with V_c known. The uncertainties given here
//! come from the scatter of the weights alone; those of the densities and of the other of the two come on top
//! (JCGM 100, 5.1).

use super::CalibrateError;
use super::error::ABSURD_SPREAD;
use super::outlier::{Questioned, question};
use crate::check::is_positive;
use crate::quantity::{Mass, MassDensity, Ratio, Volume};
use crate::shot::{Melt, check_feed};

/// How many standard uncertainties a feed share may lie outside 0 to 1 by chance.
const BY_CHANCE: f64 = 3.0;

/// Weighed pieces of one cavity, summed up.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighed {
    /// How many pieces.
    pub count: usize,
    /// Mean mass m̄.
    pub mean: Mass,
    /// Standard deviation s of one piece.
    pub deviation: Mass,
    /// Standard uncertainty of the mean, s/√n.
    pub uncertainty: Mass,
    /// The weight that lies too far out to be believed without a look at that piece; it is in the mean.
    pub questioned: Option<Questioned>,
}

/// A cavity's volume, had from weighed pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CavityVolume {
    /// The volume V_c.
    pub volume: Volume,
    /// Its standard uncertainty from the scatter of the weights.
    pub uncertainty: Volume,
}

/// A feed share, had from weighed pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FeedShare {
    /// The share f to calculate with: the nearest to `computed` from 0 to 1.
    pub share: Ratio,
    /// What the weights give; by chance it may lie a little outside 0 to 1.
    pub computed: Ratio,
    /// Its standard uncertainty from the scatter of the weights.
    pub uncertainty: Ratio,
}

impl Weighed {
    /// Sums up the weights of pieces of one cavity.
    ///
    /// # Errors
    /// Fewer than two weights, one that is not above zero, or a standard deviation above a fifth of the mean.
    pub fn new(weights: &[Mass]) -> Result<Self, CalibrateError> {
        let count = weights.len();
        if count < 2 {
            return Err(CalibrateError::TooFew { count });
        }
        if let Some((i, &weight)) =
            weights.iter().enumerate().find(|(_, weight)| !is_positive(weight.value))
        {
            return Err(CalibrateError::Weight { piece: i.saturating_add(1), weight });
        }
        let n = count as f64;
        let mean = weights.iter().copied().sum::<Mass>() / n;
        // Squares of deviations from the mean: the shorter Σm² − n m̄² loses all digits where they matter.
        let squares: f64 =
            weights.iter().map(|&weight| ((weight - mean) / mean).value).map(|d| d * d).sum();
        let deviation = mean * libm::sqrt(squares / (n - 1.0));
        if deviation > ABSURD_SPREAD * mean {
            return Err(CalibrateError::Spread { mean, deviation });
        }
        let questioned =
            question(weights.iter().map(|&weight| ((weight - mean) / deviation).value));
        Ok(Self { count, mean, deviation, uncertainty: deviation / libm::sqrt(n), questioned })
    }

    /// The volume of the cavity, the feed share being known:
    /// V_c = m̄ / ((1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)]).
    ///
    /// # Errors
    /// [`CalibrateError::Shot`] for a number of the mix, or a feed share, out of its range.
    pub fn cavity_volume(&self, melt: &Melt, feed: Ratio) -> Result<CavityVolume, CalibrateError> {
        melt.check()?;
        check_feed(feed)?;
        let density = melt.filled_density(feed);
        Ok(CavityVolume { volume: self.mean / density, uncertainty: self.uncertainty / density })
    }

    /// The feed share, the volume of the cavity being known:
    /// f = (m̄/(V_c (1 − φ)) − ρ_hot) / (ρ₂₀ − ρ_hot).
    ///
    /// # Errors
    /// [`CalibrateError::FeedOutOfRange`] where f lies outside 0 to 1 by more than three standard
    /// uncertainties, [`CalibrateError::NoContraction`], and [`CalibrateError::Shot`] for a number out of its
    /// range.
    pub fn feed_share(&self, melt: &Melt, volume: Volume) -> Result<FeedShare, CalibrateError> {
        // Below this the share is all rounding.
        const ROUNDING: f64 = 1e-9;
        let range = melt.piece_range(volume)?;
        let (least, most) = (*range.start(), *range.end());
        let contraction: MassDensity = melt.cold - melt.hot;
        if contraction <= ROUNDING * melt.cold {
            return Err(CalibrateError::NoContraction);
        }
        let computed = (self.mean - least) / (most - least);
        let uncertainty = self.uncertainty / (most - least);
        let slack = BY_CHANCE * uncertainty.value + ROUNDING;
        if !(-slack..=1.0 + slack).contains(&computed.value) {
            return Err(CalibrateError::FeedOutOfRange { mean: self.mean, least, most });
        }
        let share = Ratio::from(computed.value.clamp(0.0, 1.0));
        Ok(FeedShare { share, computed, uncertainty })
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use std::vec::Vec;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::fault::Diagnose;

    fn grams(weights: &[f64]) -> Vec<Mass> {
        weights.iter().map(|&weight| Mass::new::<gram>(weight)).collect()
    }

    fn melt() -> Melt {
        let density = MassDensity::new::<gram_per_cubic_centimeter>;
        Melt { hot: density(0.9), cold: density(1.0), voids: Ratio::from(0.0) }
    }

    #[test]
    fn a_mean_with_its_uncertainty_by_hand() {
        // Deviations −0.1, 0, 0.1: s = 0.1, u = 0.1/√3.
        let got = Weighed::new(&grams(&[9.4, 9.5, 9.6])).unwrap();
        assert!((got.mean.get::<gram>() - 9.5).abs() < 1e-12);
        assert!((got.deviation.get::<gram>() - 0.1).abs() < 1e-12);
        assert!((got.uncertainty.get::<gram>() - 0.057_735_026_919).abs() < 1e-11);
        let cavity = got.cavity_volume(&melt(), Ratio::from(0.5)).unwrap();
        assert!((cavity.volume.get::<milliliter>() - 10.0).abs() < 1e-12);
        assert!((cavity.uncertainty.get::<milliliter>() - 0.060_773_712_6).abs() < 1e-9);
        let feed = got.feed_share(&melt(), Volume::new::<milliliter>(10.0)).unwrap();
        assert!((feed.share.value - 0.5).abs() < 1e-12);
        assert!((feed.uncertainty.value - 0.057_735_026_919).abs() < 1e-11);
    }

    #[rstest]
    #[case(&[9.5], "calibrate-too-few-weights")]
    #[case(&[9.5, 0.0], "calibrate-weight-not-positive")]
    #[case(&[9.5, f64::NAN], "calibrate-weight-not-positive")]
    #[case(&[9.5, 19.0], "calibrate-spread-absurd")]
    fn refuses_weights(#[case] weights: &[f64], #[case] code: &str) {
        assert_eq!(Weighed::new(&grams(weights)).unwrap_err().code(), code);
    }

    #[test]
    fn a_short_piece_is_questioned_and_stays_in_the_mean() {
        let got = Weighed::new(&grams(&[9.4, 9.5, 9.6, 9.5, 9.4, 9.6, 9.5, 8.1])).unwrap();
        assert_eq!(got.questioned.map(|questioned| questioned.place), Some(8));
        assert!((got.mean.get::<gram>() - 74.6 / 8.0).abs() < 1e-12);
        assert_eq!(Weighed::new(&grams(&[9.4, 9.5, 9.6])).unwrap().questioned, None);
    }

    #[test]
    fn weights_that_cannot_be_right_say_what_would() {
        let heavy = Weighed::new(&grams(&[10.9, 11.0, 11.1])).unwrap();
        let refused = heavy.feed_share(&melt(), Volume::new::<milliliter>(10.0)).unwrap_err();
        assert_eq!(refused.code(), "calibrate-feed-out-of-range");
        assert!(refused.to_string().contains("11 g"), "{refused}");
        assert!(refused.help().contains("from 9 g (not fed) to 10 g"), "{}", refused.help());
    }

    #[test]
    fn a_little_outside_by_chance_is_taken_as_the_end() {
        let scattered = Weighed::new(&grams(&[9.9, 10.02, 10.11])).unwrap();
        let feed = scattered.feed_share(&melt(), Volume::new::<milliliter>(10.0)).unwrap();
        assert!(feed.computed.value > 1.0);
        assert_eq!(feed.share, Ratio::from(1.0));
    }

    #[test]
    fn what_does_not_shrink_has_no_feed() {
        let stiff = Melt { hot: melt().cold, ..melt() };
        let weighed = Weighed::new(&grams(&[9.9, 10.0])).unwrap();
        let refused = weighed.feed_share(&stiff, Volume::new::<milliliter>(10.0)).unwrap_err();
        assert_eq!(refused, CalibrateError::NoContraction);
    }

    proptest! {
        #[test]
        fn gives_back_what_the_shot_was_made_with(
            volume in 0.5..100.0, feed in 0.0..=1.0, noise in prop::collection::vec(-0.01..0.01, 2..30)
        ) {
            let volume = Volume::new::<milliliter>(volume);
            let piece = melt().piece(volume, Ratio::from(feed)).unwrap();
            let weights: Vec<Mass> = noise.iter().map(|d| piece * (1.0 + d)).collect();
            let weighed = Weighed::new(&weights).unwrap();
            let scale = weighed.mean / piece;
            let got = weighed.cavity_volume(&melt(), Ratio::from(feed)).unwrap();
            prop_assert!((got.volume - volume * scale).abs() <= 1e-13 * volume);
            if let Ok(got) = weighed.feed_share(&melt(), volume) {
                let expected: f64 = (scale.value * (0.9 + 0.1 * feed) - 0.9) / 0.1;
                prop_assert!((got.computed.value - expected).abs() < 1e-11);
            }
        }
    }
}

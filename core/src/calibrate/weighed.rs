//! A cavity's volume or the feed share, from pieces that were weighed.
//!
//! n weighed pieces give the mean m̄, the standard deviation s = √(Σ(m − m̄)²/(n − 1)) and the standard
//! uncertainty of the mean, u² = s²/n + d²/6/n: their scatter, and the rounding of each net weight on a balance that
//! shows steps of d, which equal readings hide (JCGM 100:2008, 4.2 and F.2.2.1). The shot's equation,
//! m = V_c (1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)], is then solved for V_c with f known, or for f with V_c known. What
//! the densities and the other of the two are unsure by comes on top ([`Unsure`]; JCGM 100, 5.1), with
//! D = m̄/(V_c (1 − φ)) and Δ = ρ₂₀ − ρ_hot:
//!
//! (u(V_c)/V_c)² = (u/m̄)² + (u(ρ₂₀)/ρ₂₀)² + [(1 − f) u(ρ_hot)/D]² + [Δ u(f)/D]²
//!
//! u(f)² = (D/Δ)² [(u/m̄)² + (u(ρ₂₀)/ρ₂₀)² + (u(V_c)/V_c)²] + [(1 − f) u(ρ_hot)/Δ]²

use super::CalibrateError;
use super::error::{ABSURD_SPREAD, but_for_rounding};
use super::outlier::{Questioned, question};
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};
use crate::shot::Melt;
use crate::uncertainty::by_difference;

/// How many standard uncertainties a feed share may be outside 0 to 1 by chance.
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
    /// Standard uncertainty of the mean, u.
    pub uncertainty: Mass,
    /// The weight that is too far out to be believed without a look at that piece; it is in the mean.
    pub questioned: Option<Questioned>,
}

/// A cavity's volume, from weighed pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CalibratedCavity {
    /// The volume V_c.
    pub volume: Volume,
    /// Its standard uncertainty.
    pub uncertainty: Volume,
}

/// Uncertainty of the equation of weighed pieces apart from their weights: standard uncertainties, zero where
/// nothing is known.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Unsure {
    /// Of the density at 20 °C; the hot one errs with it.
    pub cold: MassDensity,
    /// Uncertainty of the hot density on its own.
    pub hot: MassDensity,
    /// Of the feed share, where that is known.
    pub feed: Ratio,
    /// Of the cavity, where that is known.
    pub cavity: Volume,
}

/// A feed share, from weighed pieces.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FeedShare {
    /// The share f to calculate with: the nearest to `computed` from 0 to 1.
    pub share: Ratio,
    /// The result of the weights; by chance it may be a little outside 0 to 1.
    pub computed: Ratio,
    /// Its standard uncertainty.
    pub uncertainty: Ratio,
}

impl Weighed {
    /// Sums up the weights of pieces of one cavity, from a balance that shows steps of `readability` (zero where
    /// rounding plays no part).
    ///
    /// # Errors
    /// Fewer than two weights, one that is not above zero, or a standard deviation above a fifth of the mean.
    pub fn new(weights: &[Mass], readability: Mass) -> Result<Self, CalibrateError> {
        let count = weights.len();
        let mut check = Check::new();
        super::check_readability(readability, &mut check);
        check.count(Parameter::Weights, count);
        for (index, weight) in weights.iter().enumerate() {
            check.element(Parameter::PieceWeight, index, weight.value);
        }
        check.finish()?;
        let n = count as f64;
        let mean = weights.iter().copied().sum::<Mass>() / n;
        // Squares of deviations from the mean: the shorter Σm² − n m̄² loses all digits where they matter.
        let squares: f64 = weights.iter().map(|&weight| off(weight, mean)).map(|d| d * d).sum();
        let deviation = mean * libm::sqrt(squares / (n - 1.0));
        if deviation > ABSURD_SPREAD * mean {
            return Err(CalibrateError::Spread { mean, deviation });
        }
        let questioned =
            question(weights.iter().map(|&weight| off(weight, mean) / (deviation / mean).value));
        let one = sum_of_squares([deviation.value, by_difference(readability).value]);
        let uncertainty = Mass::from_si(libm::sqrt(one / n));
        Ok(Self { count, mean, deviation, uncertainty, questioned })
    }

    /// The volume of the cavity, the feed share being known:
    /// V_c = m̄ / ((1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)]).
    ///
    /// # Errors
    /// Numbers out of their ranges.
    pub fn cavity_volume(
        &self,
        melt: &Melt,
        feed: Ratio,
        unsure: &Unsure,
    ) -> Result<CalibratedCavity, CalibrateError> {
        let mut check = Check::new();
        melt.check(&mut check);
        check.number(Parameter::Feed, feed.value);
        unsure.check(&mut check);
        check.finish()?;
        let volume = self.mean / melt.filled_density(feed);
        let inside = melt.hot + feed * (melt.cold - melt.hot);
        let squares = sum_of_squares([
            self.relative(),
            (unsure.cold / melt.cold).value,
            (1.0 - feed.value) * (unsure.hot / inside).value,
            (unsure.feed * ((melt.cold - melt.hot) / inside)).value,
        ]);
        Ok(CalibratedCavity { volume, uncertainty: volume * libm::sqrt(squares) })
    }

    /// The feed share, the volume of the cavity being known:
    /// f = (m̄/(V_c (1 − φ)) − ρ_hot) / (ρ₂₀ − ρ_hot).
    ///
    /// # Errors
    /// [`CalibrateError::FeedOutOfRange`] where f is outside 0 to 1 by more than three standard
    /// uncertainties, [`CalibrateError::NoContraction`], and numbers out of their
    /// ranges.
    pub fn feed_share(
        &self,
        melt: &Melt,
        volume: Volume,
        unsure: &Unsure,
    ) -> Result<FeedShare, CalibrateError> {
        // Below this the share is all rounding.
        const ROUNDING: f64 = 1e-9;
        let mut check = Check::new();
        unsure.check(&mut check);
        check.finish()?;
        let range = melt.piece_range(volume)?;
        let (least, most) = (*range.start(), *range.end());
        let contraction: MassDensity = melt.cold - melt.hot;
        if contraction <= ROUNDING * melt.cold {
            return Err(CalibrateError::NoContraction);
        }
        let computed = (self.mean - least) / (most - least);
        // D/Δ: the mean in pieces that lack all of the contraction.
        let scale = (self.mean / (most - least)).value;
        let squares = sum_of_squares([
            scale * self.relative(),
            scale * (unsure.cold / melt.cold).value,
            scale * (unsure.cavity / volume).value,
            (1.0 - computed.value) * (unsure.hot / contraction).value,
        ]);
        let uncertainty = Ratio::from(libm::sqrt(squares));
        let slack = BY_CHANCE * uncertainty.value + ROUNDING;
        if !(-slack..=1.0 + slack).contains(&computed.value) {
            return Err(CalibrateError::FeedOutOfRange { mean: self.mean, least, most });
        }
        let share = Ratio::from(computed.value.clamp(0.0, 1.0));
        Ok(FeedShare { share, computed, uncertainty })
    }

    /// u/m̄.
    fn relative(&self) -> f64 {
        (self.uncertainty / self.mean).value
    }
}

impl Unsure {
    fn check(&self, check: &mut Check) {
        check
            .number(Parameter::DensityUncertainty, self.cold.value)
            .number(Parameter::DensityUncertainty, self.hot.value)
            .number(Parameter::FeedUncertainty, self.feed.value)
            .number(Parameter::VolumeUncertainty, self.cavity.value);
    }
}

/// (m − m̄)/m̄, which is nothing where only rounding is left of it.
fn off(weight: Mass, mean: Mass) -> f64 {
    but_for_rounding(((weight - mean) / mean).value, 1.0)
}

fn sum_of_squares<const N: usize>(parts: [f64; N]) -> f64 {
    parts.into_iter().fold(0.0, |sum, part| sum + part * part)
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

    fn weighed(weights: &[f64]) -> Result<Weighed, CalibrateError> {
        Weighed::new(&grams(weights), Mass::default())
    }

    fn melt() -> Melt {
        let density = MassDensity::new::<gram_per_cubic_centimeter>;
        Melt { hot: density(0.9), cold: density(1.0), voids: Ratio::from(0.0) }
    }

    #[test]
    fn a_mean_with_its_uncertainty_by_hand() {
        // Deviations −0.1, 0, 0.1: s = 0.1, u = 0.1/√3.
        let got = weighed(&[9.4, 9.5, 9.6]).unwrap();
        assert!((got.mean.get::<gram>() - 9.5).abs() < 1e-12);
        assert!((got.deviation.get::<gram>() - 0.1).abs() < 1e-12);
        assert!((got.uncertainty.get::<gram>() - 0.057_735_026_919).abs() < 1e-11);
        let cavity = got.cavity_volume(&melt(), Ratio::from(0.5), &Unsure::default()).unwrap();
        assert!((cavity.volume.get::<milliliter>() - 10.0).abs() < 1e-12);
        assert!((cavity.uncertainty.get::<milliliter>() - 0.060_773_712_6).abs() < 1e-9);
        let feed =
            got.feed_share(&melt(), Volume::new::<milliliter>(10.0), &Unsure::default()).unwrap();
        assert!((feed.share.value - 0.5).abs() < 1e-12);
        assert!((feed.uncertainty.value - 0.057_735_026_919).abs() < 1e-11);
    }

    /// Five equal readings to 0.1 g leave 0.1/√6/√5 g.
    #[test]
    fn equal_weights_leave_the_rounding() {
        let got = Weighed::new(&grams(&[9.5; 5]), Mass::new::<gram>(0.1)).unwrap();
        assert_eq!((got.deviation, got.questioned), (Mass::default(), None));
        assert_eq!(weighed(&[9.7; 3]).unwrap().deviation, Mass::default());
        assert!((got.uncertainty.get::<gram>() - 0.1 / libm::sqrt(30.0)).abs() < 1e-12);
        let refused = Weighed::new(&grams(&[9.5; 5]), Mass::new::<gram>(-0.1)).unwrap_err();
        assert_eq!(refused.code(), "out-of-range");
    }

    /// The formulas are the slopes of the equation: shifted inputs give the same.
    #[test]
    fn what_the_rest_is_unsure_by_counts() {
        let got = weighed(&[9.4, 9.5, 9.6]).unwrap();
        let density = MassDensity::new::<gram_per_cubic_centimeter>;
        let (feed, volume) = (Ratio::from(0.4), Volume::new::<milliliter>(10.05));
        let unsure = Unsure {
            cold: density(0.008),
            hot: density(0.005),
            feed: Ratio::from(0.1),
            cavity: Volume::new::<milliliter>(0.02),
        };
        let (s, none) = (1e-6, Unsure::default());
        let with = |cold: f64, hot: f64, feed_off: f64, cavity: f64, mean: f64| {
            // The hot density errs with the cold one.
            let together = 1.0 + cold * s * 0.008;
            let melt = Melt {
                cold: melt().cold * together,
                hot: melt().hot * together + density(hot * s * 0.005),
                ..melt()
            };
            let moved = Weighed { mean: got.mean + got.uncertainty * mean * s, ..got };
            let cavity = volume + unsure.cavity * cavity * s;
            (
                moved
                    .cavity_volume(&melt, feed + unsure.feed * feed_off * s, &none)
                    .unwrap()
                    .volume
                    .value,
                moved.feed_share(&melt, cavity, &none).unwrap().computed.value,
            )
        };
        let at = with(0.0, 0.0, 0.0, 0.0, 0.0);
        let (mut of_volume, mut of_feed) = (0.0, 0.0);
        for place in 0..5 {
            let on = |this| if place == this { 1.0 } else { 0.0 };
            let moved = with(on(0), on(1), on(2), on(3), on(4));
            of_volume += ((moved.0 - at.0) / s) * ((moved.0 - at.0) / s);
            of_feed += ((moved.1 - at.1) / s) * ((moved.1 - at.1) / s);
        }
        let cavity = got.cavity_volume(&melt(), feed, &unsure).unwrap().uncertainty.value;
        assert!((cavity / libm::sqrt(of_volume) - 1.0).abs() < 1e-4, "{cavity}");
        let share = got.feed_share(&melt(), volume, &unsure).unwrap().uncertainty.value;
        assert!((share / libm::sqrt(of_feed) - 1.0).abs() < 1e-4, "{share}");
        let negative = Unsure { feed: Ratio::from(-0.1), ..none };
        let refused = got.cavity_volume(&melt(), feed, &negative).unwrap_err();
        assert_eq!(refused.code(), "out-of-range");
    }

    #[rstest]
    #[case(&[9.5], "out-of-range")]
    #[case(&[9.5, 0.0], "out-of-range")]
    #[case(&[9.5, f64::NAN], "not-finite")]
    #[case(&[9.5, 19.0], "calibrate-spread-absurd")]
    #[case(&[8.0, 11.0], "calibrate-spread-absurd")] // s = 2.12, a fifth is 1.9
    fn refuses_weights(#[case] weights: &[f64], #[case] code: &str) {
        assert_eq!(Weighed::new(&grams(weights), Mass::default()).unwrap_err().code(), code);
    }

    #[test]
    fn a_short_piece_is_questioned_and_stays_in_the_mean() {
        let got = weighed(&[9.4, 9.5, 9.6, 9.5, 9.4, 9.6, 9.5, 8.1]).unwrap();
        assert_eq!(got.questioned.map(|questioned| questioned.place), Some(8));
        assert!((got.mean.get::<gram>() - 74.6 / 8.0).abs() < 1e-12);
        assert_eq!(weighed(&[9.4, 9.5, 9.6]).unwrap().questioned, None);
    }

    #[test]
    fn weights_that_cannot_be_right_say_what_would() {
        let heavy = weighed(&[10.9, 11.0, 11.1]).unwrap();
        let refused = heavy
            .feed_share(&melt(), Volume::new::<milliliter>(10.0), &Unsure::default())
            .unwrap_err();
        assert_eq!(refused.code(), "calibrate-feed-out-of-range");
        assert!(refused.to_string().contains("11 g"), "{refused}");
        assert!(refused.help().contains("from 9 g (not fed) to 10 g"), "{}", refused.help());
    }

    #[test]
    fn a_little_outside_by_chance_is_taken_as_the_end() {
        let scattered = weighed(&[9.9, 10.02, 10.11]).unwrap();
        let feed = scattered
            .feed_share(&melt(), Volume::new::<milliliter>(10.0), &Unsure::default())
            .unwrap();
        assert!(feed.computed.value > 1.0);
        assert_eq!(feed.share, Ratio::from(1.0));
    }

    /// Exact weights of pieces not fed at all and fed in full are just inside.
    #[test]
    fn the_ends_of_a_feed_share() {
        let share = |grams: f64| {
            let pieces = weighed(&[grams, grams]).unwrap();
            pieces.feed_share(&melt(), Volume::new::<milliliter>(10.0), &Unsure::default())
        };
        for (grams, expected) in [(9.0, 0.0), (10.0, 1.0)] {
            assert!((share(grams).unwrap().share.value - expected).abs() < 1e-9, "{grams}");
        }
        for grams in [8.999, 10.001] {
            assert_eq!(share(grams).unwrap_err().code(), "calibrate-feed-out-of-range");
        }
        let ten = Mass::new::<gram>(10.0);
        assert_eq!(off(ten * (1.0 + 0.5e-12), ten), 0.0);
        assert!(off(ten * (1.0 + 1.5e-12), ten) > 1e-12);
    }

    #[test]
    fn what_hardly_shrinks_has_a_feed() {
        let hardly = |by: f64| {
            let stiff = Melt { hot: melt().cold * (1.0 - by), ..melt() };
            let pieces = weighed(&[10.0, 10.0]).unwrap();
            pieces.feed_share(&stiff, Volume::new::<milliliter>(10.0), &Unsure::default())
        };
        assert_eq!(hardly(0.5e-9), Err(CalibrateError::NoContraction));
        assert_ne!(hardly(1.5e-9), Err(CalibrateError::NoContraction));
    }

    #[test]
    fn what_does_not_shrink_has_no_feed() {
        let stiff = Melt { hot: melt().cold, ..melt() };
        let weighed = weighed(&[9.9, 10.0]).unwrap();
        let refused = weighed
            .feed_share(&stiff, Volume::new::<milliliter>(10.0), &Unsure::default())
            .unwrap_err();
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
            let weighed = Weighed::new(&weights, Mass::default()).unwrap();
            let scale = weighed.mean / piece;
            let got = weighed.cavity_volume(&melt(), Ratio::from(feed), &Unsure::default()).unwrap();
            prop_assert!((got.volume - volume * scale).abs() <= 1e-13 * volume);
            if let Ok(got) = weighed.feed_share(&melt(), volume, &Unsure::default()) {
                let expected: f64 = (scale.value * (0.9 + 0.1 * feed) - 0.9) / 0.1;
                prop_assert!((got.computed.value - expected).abs() < 1e-11);
            }
        }
    }
}

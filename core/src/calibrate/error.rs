//! Errors of a calibration.

use alloc::borrow::Cow;
use alloc::format;

use crate::fault::Diagnose;
use crate::quantity::{Mass, MassDensity, Measurable, Ratio};
use crate::shot::ShotError;
use crate::show;

/// Standard deviation over mean from which weights are not those of one cavity, one bottle or one spoon (common
/// practice, no source; good pieces of one cavity keep within 3 %).
pub(super) const ABSURD_SPREAD: f64 = 0.2;

/// Relative size of what rounding leaves of the difference of two equal weights.
const ROUNDING: f64 = 1e-12;

/// `off`, which is nothing if only rounding of `whole` is left of it.
pub(super) fn but_for_rounding(off: f64, whole: f64) -> f64 {
    if libm::fabs(off) > ROUNDING * whole { off } else { 0.0 }
}

/// Believable masses of a drop, in kilograms: a fine needle's, and twice that of the widest dropper
/// (common practice, no source; tips of 1.4 mm to 4.2 mm drop 26 mg to 69 mg of water).
pub(super) const LIGHTEST_DROP: f64 = 2e-6;
pub(super) const HEAVIEST_DROP: f64 = 200e-6;

/// Believable densities of a powder as scooped, in kg/m³: fumed silica has some 40 (from memory), and heaped tungsten
/// is not a dose (common practice, no source).
pub(super) const LIGHTEST_POWDER: f64 = 20.0;
pub(super) const HEAVIEST_POWDER: f64 = 5_000.0;

/// Why a calibration was refused.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CalibrateError {
    /// One weight or none.
    #[error("{count} weighed piece(s): a spread needs at least two")]
    TooFew {
        /// How many there are.
        count: usize,
    },
    /// A weight that no piece has.
    #[error("weight {piece} must be a number above zero, not {}", show::mass(.weight))]
    Weight {
        /// Which one, counted from 1.
        piece: usize,
        /// Its reading.
        weight: Mass,
    },
    /// Too few weighings of drops, spoonfuls or an injector.
    #[error("{count} weighing(s): their scatter needs at least two")]
    TooFewWeighings {
        /// How many there are.
        count: usize,
    },
    /// A weighing of nothing, or a weight that is none.
    #[error("weighing {place} gives {} for {count}", show::mass(.weight))]
    Weighing {
        /// Which one, counted from 1.
        place: usize,
        /// How many were weighed.
        count: u32,
        /// Their mass.
        weight: Mass,
    },
    /// Weighings that do not agree on what one weighs.
    #[error("the weighings scatter by {} of what one weighs, too much for one way of doing it", show::percent(.scatter))]
    Uneven {
        /// Their standard deviation over their mean.
        scatter: Ratio,
    },
    /// A readability that no balance has.
    #[error("the balance cannot show steps of {}", show::mass(.readability))]
    Readability {
        /// The readability given.
        readability: Mass,
    },
    /// A spoon's volume, or the density of what stays in an injector, that is not above zero, or its uncertainty
    /// below zero.
    #[error("{what} must be a number above zero, with an uncertainty of zero or more")]
    NotPositive {
        /// Which number.
        what: &'static str,
    },
    /// An uncertainty below zero, or beyond belief.
    #[error("an uncertainty must be zero or a number above")]
    Uncertainty,
    /// A drop that is none.
    #[error("{} is not a drop", show::mass(.mass))]
    NoDrop {
        /// The mass found for one.
        mass: Mass,
    },
    /// A powder that is denser than any.
    #[error("{} is not a powder as scooped", show::density(.density))]
    NoPowder {
        /// The density found.
        density: MassDensity,
    },
    /// An injector that is lighter after use.
    #[error("in weighing {place} the emptied injector ({}) is lighter than the clean one ({})", show::mass(.emptied), show::mass(.clean))]
    Lighter {
        /// Which one, counted from 1.
        place: usize,
        /// The clean injector.
        clean: Mass,
        /// The emptied one.
        emptied: Mass,
    },
    /// Weights too different to come from one cavity.
    #[error(
        "the weights scatter by {} around {}, too much for pieces of one cavity",
        show::mass(.deviation), show::mass(.mean)
    )]
    Spread {
        /// Their mean.
        mean: Mass,
        /// Their standard deviation.
        deviation: Mass,
    },
    /// Lighter than a piece that is not fed, or heavier than one that is fed in full.
    #[error("pieces of {} cannot come from this cavity and this mix", show::mass(.mean))]
    FeedOutOfRange {
        /// The mean weight.
        mean: Mass,
        /// Mass of a piece that is not fed at all.
        least: Mass,
        /// Mass of a piece that is fed in full.
        most: Mass,
    },
    /// A mix that does not shrink has no contraction to feed.
    #[error("the mix does not shrink, so it gives no feed share")]
    NoContraction,
    /// A number of the mix or the cavity is out of range.
    #[error(transparent)]
    Shot(#[from] ShotError),
}

impl Diagnose for CalibrateError {
    fn code(&self) -> &'static str {
        match self {
            Self::TooFew { .. } => "calibrate-too-few-weights",
            Self::Weight { .. } => "calibrate-weight-not-positive",
            Self::TooFewWeighings { .. } => "calibrate-too-few-weighings",
            Self::Weighing { .. } => "calibrate-weighing-of-nothing",
            Self::Uneven { .. } => "calibrate-weighings-uneven",
            Self::Readability { .. } => "calibrate-readability",
            Self::NotPositive { .. } => "calibrate-not-positive",
            Self::Uncertainty => "calibrate-uncertainty",
            Self::NoDrop { .. } => "calibrate-no-drop",
            Self::NoPowder { .. } => "calibrate-no-powder",
            Self::Lighter { .. } => "calibrate-injector-lighter",
            Self::Spread { .. } => "calibrate-spread-absurd",
            Self::FeedOutOfRange { .. } => "calibrate-feed-out-of-range",
            Self::NoContraction => "calibrate-no-contraction",
            Self::Shot(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::TooFew { .. } => "Weigh at least two pieces; ten make a good mean.".into(),
            Self::Weight { .. } => "Tare the balance and weigh that piece again.".into(),
            Self::TooFewWeighings { .. } => {
                "Weigh at least twice, better five times.".into()
            }
            Self::Weighing { .. } => "Count at least one, and give the net weight in grams.".into(),
            Self::Uneven { .. } => format!(
                "Hold the bottle or level the spoon the same way each time, count again, and weigh more at once; a scatter below {} is believed.",
                show::percent(&Ratio::from(ABSURD_SPREAD))
            )
            .into(),
            Self::Readability { .. } => "Give the smallest step that the balance shows, such as 0.01 g.".into(),
            Self::NotPositive { .. } => "Measure it, such as a spoon by the weight of water that it holds.".into(),
            Self::Uncertainty => "Write a number of zero or above after the ±.".into(),
            Self::NoDrop { .. } => format!(
                "Check the count and the unit of the weights; a drop weighs {} to {}.",
                show::mass(&Mass::from_si(LIGHTEST_DROP)),
                show::mass(&Mass::from_si(HEAVIEST_DROP))
            )
            .into(),
            Self::NoPowder { .. } => format!(
                "Check the count, the unit of the weights and what the spoon holds; a powder has {} to {} as scooped.",
                show::density(&MassDensity::from_si(LIGHTEST_POWDER)),
                show::density(&MassDensity::from_si(HEAVIEST_POWDER))
            )
            .into(),
            Self::Lighter { .. } => {
                "Weigh the injector clean and dry, then emptied as you empty it at work, on the same balance.".into()
            }
            Self::Spread { .. } => format!(
                "Weigh pieces of one cavity and one mix, without short shots; a spread below {} of the mean is believed.",
                show::percent(&Ratio::from(ABSURD_SPREAD))
            )
            .into(),
            Self::FeedOutOfRange { least, most, .. } => format!(
                "They would weigh from {} (not fed) to {} (fed in full): measure the cavity's volume, the densities or the voids again, and leave out pieces that are short or have flash.",
                show::mass(least), show::mass(most)
            )
            .into(),
            Self::NoContraction => {
                "Give the density at shot temperature, or the thermal expansion it follows from.".into()
            }
            Self::Shot(error) => error.help(),
        }
    }
}

//! Errors of a calibration.

use alloc::borrow::Cow;
use alloc::format;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio};
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
    /// Weighings that do not agree on what one weighs.
    #[error("the weighings scatter by {} of what one weighs, too much for one way of doing it", show::percent(.scatter))]
    Uneven {
        /// Their standard deviation over their mean.
        scatter: Ratio,
    },
    /// A mass that no drop has.
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
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
}

impl Diagnose for CalibrateError {
    codes! {
        Self::Uneven { .. } => "calibrate-weighings-uneven",
        Self::NoDrop { .. } => "calibrate-no-drop",
        Self::NoPowder { .. } => "calibrate-no-powder",
        Self::Lighter { .. } => "calibrate-injector-lighter",
        Self::Spread { .. } => "calibrate-spread-absurd",
        Self::FeedOutOfRange { .. } => "calibrate-feed-out-of-range",
        Self::NoContraction => "calibrate-no-contraction",
        Self::Parameters(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Uneven { .. } => format!(
                "Hold the bottle or level the spoon the same way each time, count again, and weigh more at once; a scatter below {} is believed.",
                show::percent(&Ratio::from(ABSURD_SPREAD))
            )
            .into(),
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
            Self::Parameters(error) => error.help(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            _ => None,
        }
    }
}

impl From<ParameterError> for CalibrateError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

#[cfg(test)]
mod tests {
    use super::but_for_rounding;

    #[test]
    fn rounding_is_a_share_of_the_whole() {
        assert_eq!((but_for_rounding(3e-12, 5.0), but_for_rounding(6e-12, 5.0)), (0.0, 6e-12));
        assert_eq!((but_for_rounding(1e-12, 1.0), but_for_rounding(-6e-12, 5.0)), (0.0, -6e-12));
    }
}

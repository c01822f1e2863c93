//! From pieces to the mass to mix: shots, injector loads, losses, marks of the cup, and the smallest pot.
//!
//! 1. [`shots`]: the smallest number of shots that gives the pieces, rejects included.
//! 2. [`Injector::loads`]: whole shots per load, and how many loads.
//! 3. [`Run::need`]: what must be in the pot, with what is lost and what goes back.
//! 4. [`Marks::measure`]: the base rounded up to a mark of the cup, before the doses are computed.
//! 5. [`PotLimits::check`]: whether the bench can make so small a pot.
//!
//! A quotient within 1e-9 of a whole number, relative to it, is that number, so that rounding in the last
//! digit adds no shot and wastes no mark; a billionth of a shot is below any balance.

mod least;
mod loads;
mod marks;
mod need;
mod rejects;
mod shots;
mod whole;

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

pub use least::{DoseStep, LeastPot, PotLimit, PotLimits};
pub use loads::{Injector, Loads};
pub use marks::{Marks, MeasuredBase};
pub use need::{Need, Run, undrawn};
pub use rejects::{Rejects, reject_interval};
pub use shots::{Wanted, shots};

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Mass, Volume};
use crate::show;

/// Errors of a batch.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum BatchError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// Rejects so frequent that no sensible number of shots gives the pieces.
    #[error("So many rejects at that confidence would take more than {most} cast pieces.")]
    TooManyCast {
        /// The limit.
        most: u32,
    },
    /// The injector cannot fill the mold once.
    #[error("A shot of {} does not fit the injector.", show::mass(.shot))]
    NothingFits {
        /// Mass of a shot.
        shot: Mass,
        /// The largest shot that fits.
        largest: Mass,
    },
    /// No mark of the cup is high enough.
    #[error("{} of base is above the highest mark of the cup.", show::volume(.needed))]
    AboveMarks {
        /// The volume needed.
        needed: Volume,
        /// The highest mark.
        highest: Volume,
    },
    /// Smaller than the bench can make.
    #[error("A pot of {} is too small: {}.", show::mass(.asked), .least.limit)]
    PotTooSmall {
        /// The mass asked for.
        asked: Mass,
        /// The least pot that works, and what limits it.
        least: LeastPot,
    },
}

impl Diagnose for BatchError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::TooManyCast { .. } => "batch-too-many-cast",
        Self::NothingFits { .. } => "batch-shot-does-not-fit",
        Self::AboveMarks { .. } => "batch-above-cup-marks",
        Self::PotTooSmall { .. } => "batch-pot-too-small",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::TooManyCast { .. } => {
                "Lower the reject rate or the confidence, or split the order.".into()
            }
            Self::NothingFits { largest, .. } => format!(
                "The largest shot that fits is {}: use a larger injector, or a mold that takes no more.",
                show::mass(largest).at_most()
            )
            .into(),
            Self::AboveMarks { highest, .. } => format!(
                "The highest mark is {}: use a larger cup, or make more than one pot.",
                show::volume(highest).at_most()
            )
            .into(),
            Self::PotTooSmall { least, .. } => format!(
                "The least pot that works is {} of mix with {} of base.",
                show::mass(&least.mix).at_least(),
                show::mass(&least.base).at_least()
            )
            .into(),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        Some(match self {
            Self::Parameters(errors) => return errors.parameter(),
            Self::TooManyCast { .. } => Parameter::Rejects,
            Self::NothingFits { .. } => Parameter::ShotMass,
            Self::AboveMarks { .. } | Self::PotTooSmall { .. } => Parameter::MixNeeded,
        })
    }
}

impl From<ParameterError> for BatchError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl fmt::Display for PotLimit {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Nothing => f.write_str("nothing limits it"),
            Self::Dose(index) => {
                let dose = index.saturating_add(1);
                write!(f, "dose {dose} cannot be measured within its tolerance")
            }
            Self::Oven => f.write_str("the oven cannot heat so little evenly"),
            Self::Injector => f.write_str("the injector cannot draw from so little"),
        }
    }
}

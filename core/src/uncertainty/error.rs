//! Errors of an uncertainty.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::material::MaterialError;
use crate::show;

/// Why an uncertainty was refused.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum UncertaintyError {
    /// A value that is not a number, or an uncertainty that is negative or not a number.
    #[error("The value of \"{of}\", or its uncertainty, is not a usable number.")]
    BadInput {
        /// Its source.
        of: String,
    },
    /// Degrees of freedom below 1.
    #[error("\"{of}\" has {} degrees of freedom.", show::number(*.freedom))]
    BadFreedom {
        /// Its source.
        of: String,
        /// How many are stated.
        freedom: f64,
    },
    /// The calculation refuses the inputs as they are.
    #[error("{message}")]
    Calculation {
        /// The code of its error.
        code: &'static str,
        /// Its message.
        message: String,
        /// Its fix.
        help: String,
    },
    /// The calculation gives no finite number.
    #[error("The calculation gives no number for these inputs.")]
    NoNumber,
    /// The calculation refuses an input shifted by its uncertainty, to either side.
    #[error(
        "\"{of}\" is so unsure that the calculation fails within its uncertainty, above and below."
    )]
    OutOfReach {
        /// Its source.
        of: String,
    },
    /// A level of coverage outside its range.
    #[error("A coverage of {} % is not possible.", show::number(.level * 100.0))]
    Level {
        /// The level, as a share.
        level: f64,
    },
    /// A number of a tool, or of what was taken with it, that cannot be.
    #[error("For \"{material}\", {what} must be a number above zero.")]
    Tool {
        /// The material that was taken.
        material: String,
        /// Which number.
        what: &'static str,
    },
    /// A figure of the tools that is negative or not a number.
    #[error("The uncertainty of {what} must be zero or a number above.")]
    Figure {
        /// Which figure.
        what: &'static str,
    },
    /// Voids outside 0 to below 1.
    #[error("The share of voids must be from 0 % to below 100 %, not {} %.", show::number(.share * 100.0))]
    Voids {
        /// The share.
        share: f64,
    },
    /// Nothing was taken.
    #[error("Nothing was taken of \"{material}\".")]
    NothingTaken {
        /// The material.
        material: String,
    },
    /// A property is missing.
    #[error(transparent)]
    Material(#[from] MaterialError),
}

impl UncertaintyError {
    /// That the calculation refused the inputs as they are.
    pub(super) fn refused(error: &dyn Diagnose) -> Self {
        Self::Calculation {
            code: error.code(),
            message: error.to_string(),
            help: error.help().into_owned(),
        }
    }
}

impl Diagnose for UncertaintyError {
    codes! {
        Self::BadInput { .. } => "uncertainty-bad-input",
        Self::BadFreedom { .. } => "uncertainty-bad-freedom",
        Self::Calculation { code, .. } => code,
        Self::NoNumber => "uncertainty-no-number",
        Self::OutOfReach { .. } => "uncertainty-out-of-reach",
        Self::Level { .. } => "uncertainty-level",
        Self::Tool { .. } => "uncertainty-tool",
        Self::Figure { .. } => "uncertainty-tool-figure",
        Self::Voids { .. } => "uncertainty-voids",
        Self::NothingTaken { .. } => "uncertainty-nothing-taken",
        Self::Material(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::BadInput { .. } => "Give a finite value and an uncertainty of 0 or more.".into(),
            Self::BadFreedom { .. } => {
                "Give at least 1: a mean of n readings has n − 1; leave it out where the uncertainty is not from readings.".into()
            }
            Self::Calculation { help, .. } => help.clone().into(),
            Self::NoNumber => "Look for a zero or an infinite number among the inputs.".into(),
            Self::OutOfReach { of } => format!(
                "Measure \"{of}\" better, or check that its uncertainty is one standard uncertainty in the same unit."
            )
            .into(),
            Self::Level { .. } => "Ask for a level from above 0 % to 99.9999999 %, such as 95 %.".into(),
            Self::Tool { .. } => "Give how much the tool holds or shows, and how often it was used.".into(),
            Self::Figure { .. } => "Give one standard uncertainty as a share, such as 3 %.".into(),
            Self::Voids { .. } => "Give the share of air in the finished plastic, such as 2 %.".into(),
            Self::NothingTaken { material } => {
                format!("State how \"{material}\" was taken: on a scale, by spoons, by a cup or in drops.").into()
            }
            Self::Material(error) => error.help(),
        }
    }
}

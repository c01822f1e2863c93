//! Why a pot cannot be made.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;

use crate::batch::BatchError;
use crate::bench::MeasureError;
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::mix::MixError;
use crate::parameter::ParameterErrors;
use crate::plan::precedence::PrecedenceError;
use crate::plan::sequence::SequenceError;
use crate::plan::split::SplitError;
use crate::plan::weigh::WeighError;
use crate::quantity::{Mass, Time};
use crate::show::page::counted;
use crate::show::{self, text};

/// Why a pot cannot be made.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub(crate) enum PotError {
    /// Nothing to mix in.
    #[error("The bench has no cup to mix a pot in.")]
    NoCup,
    /// A cup that can only be filled whole, and a pot that is not that much.
    #[error(
        "The {cup} has no marks, and no scale weighs its base: only the whole cup can be measured, and that does not fit."
    )]
    NoMarks { cup: String },
    /// Even the whole cup is too small to dose a material.
    #[error("No cup is large enough to dose \"{material}\" to {} %: {error}", .tolerance * 100.0)]
    TooSmallToDose { material: String, tolerance: f64, error: MeasureError },
    /// No tool measures a material.
    #[error("\"{material}\" cannot be measured: {error}")]
    Measure { material: String, error: MeasureError },
    /// A single shot needs more than any pot gives.
    #[error("A shot of \"{mold}\" takes {} of {formulas}, but no cup gives more than {} of it; the largest is the {cup}.",
        show::mass(.shot).at_least(), show::mass(.room).at_most())]
    ShotOverCup { mold: String, formulas: String, shot: Mass, room: Mass, cup: String },
    /// The book limits heats, and a pot does not stay hot for a single shot.
    #[error("A shot of \"{mold}\" takes {}, but a pot of {formulas} stays hot for {}, so its heats cannot be kept within the limit.",
        text::time(*.every).text, text::time(*.hot).text)]
    ShotTooLong { mold: String, formulas: String, every: Time, hot: Time },
    /// The smallest pot allowed is more than any cup may hold.
    #[error("The smallest pot that the book allows is {} of {formulas}, but the {cup} may hold only {} of it.",
        show::mass(.least).at_least(), show::mass(.holds).at_most())]
    LeastOverCup { formulas: String, least: Mass, holds: Mass, cup: String },
    /// A pot does not fit its cup.
    #[error("A pot of {formulas} comes to {}, but the {cup} may hold only {}.",
        show::mass(.held).at_least(), show::mass(.holds).at_most())]
    OverCup { formulas: String, held: Mass, holds: Mass, cup: String },
    /// Too much salt, flake and pearl.
    #[error("A mix of {formulas} holds {:.1} % solids by volume; the book allows {:.1} %.", .solids * 100.0, .limit * 100.0)]
    TooManySolids { formulas: String, solids: f64, limit: f64 },
    /// A pot that was heated would need more base.
    #[error("More base would have to go into a pot that was heated to make it {formulas}.")]
    NoFreshBase { formulas: String },
    /// A pot that is not begun, and an order of its shots that adding alone does not give.
    #[error(
        "Pot {pot} cannot go on as {formulas}: by then it holds \"{material}\", which {formulas} has none of."
    )]
    CannotFollow { pot: String, formulas: String, material: String },
    /// A pot that is not begun, and more heats for its shots than the book allows.
    #[error("The shots of pot {pot} take {}, but the book allows {}.", counted(*.heats, "heat"), counted(*.allowed, "heat"))]
    TooManyHeats { pot: String, heats: u32, allowed: u32 },
    /// Pots that are there have layers in common in an order that cannot be.
    #[error(
        "The shots of pot {pot} cannot be put in order with those of the pots that it makes laminated pieces with."
    )]
    OutOfOrder { pot: String },
    #[error(transparent)]
    Batch(#[from] BatchError),
    #[error(transparent)]
    Shot(#[from] ParameterErrors),
    #[error(transparent)]
    Mix(#[from] MixError),
    #[error(transparent)]
    Sequence(#[from] SequenceError),
    #[error(transparent)]
    Precedence(#[from] PrecedenceError),
    #[error(transparent)]
    Split(#[from] SplitError),
}

impl From<WeighError> for PotError {
    fn from(error: WeighError) -> Self {
        match error {
            WeighError::Measure { material, error } => Self::Measure { material, error },
            WeighError::Mix(error) => Self::Mix(error),
        }
    }
}

impl PotError {
    /// Whether it is the bench that cannot measure a material.
    pub(in crate::plan) fn is_about_measuring(&self) -> bool {
        matches!(self, Self::TooSmallToDose { .. } | Self::Measure { .. })
    }

    /// Whether a larger cup may do.
    pub(in crate::plan) fn wants_larger_cup(&self) -> bool {
        matches!(
            self,
            Self::TooSmallToDose { .. }
                | Self::NoMarks { .. }
                | Self::Batch(BatchError::AboveMarks { .. })
                | Self::OverCup { .. }
                | Self::LeastOverCup { .. }
        )
    }

    /// Whether a smaller pot may do: this one does not fit its cup.
    pub(in crate::plan) fn is_too_full(&self) -> bool {
        matches!(
            self,
            Self::Batch(BatchError::AboveMarks { .. })
                | Self::OverCup { .. }
                | Self::LeastOverCup { .. }
        )
    }
}

impl Diagnose for PotError {
    codes! {
        Self::NoCup => "pot-without-cup",
        Self::NoMarks { .. } => "pot-cup-without-marks",
        Self::TooSmallToDose { .. } => "pot-too-small-to-dose",
        Self::Measure { error, .. } => error.code(),
        Self::ShotOverCup { .. } => "pot-shot-over-cup",
        Self::ShotTooLong { .. } => "pot-shot-too-long",
        Self::LeastOverCup { .. } => "pot-least-over-cup",
        Self::OverCup { .. } => "pot-over-cup",
        Self::TooManySolids { .. } => "too-many-solids",
        Self::NoFreshBase { .. } => "pot-no-fresh-base",
        Self::CannotFollow { .. } => "pot-cannot-follow",
        Self::TooManyHeats { .. } => "pot-too-many-heats",
        Self::OutOfOrder { .. } => "pot-out-of-order",
        Self::Batch(error) => error.code(),
        Self::Shot(error) => error.code(),
        Self::Mix(error) => error.code(),
        Self::Sequence(error) => error.code(),
        Self::Precedence(error) => error.code(),
        Self::Split(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoCup => "Add a cup with its marks to the bench.".into(),
            Self::NoMarks { .. } => {
                "Give the cup its marks, such as \"marks\": \"1/4 cup\", or the bench a scale to weigh the base with: \"balance\": { \"reads\": \"0.1 g\" }.".into()
            }
            Self::TooSmallToDose { material, error, .. } => format!(
                "{} Use a larger cup, a finer tool, or accept a larger \"tolerance\" for \"{material}\".",
                error.help()
            )
            .into(),
            Self::Measure { error, .. } => error.help(),
            Self::ShotOverCup { shot, .. } => format!(
                "Add a cup that gives {} after its film and heel and what the injector keeps, raise \"most_full\", or take a mold with fewer cavities.",
                show::mass(shot).at_least()
            )
            .into(),
            Self::ShotTooLong { mold, .. } => format!(
                "Use more molds in turn (the \"count\" of \"{mold}\"), keep the pot hot for longer (\"hot_for\" or \"cools\" of the oven), or leave \"heats\" out of the limits."
            )
            .into(),
            Self::LeastOverCup { .. } => {
                "Lower \"least_pot\" in the limits, raise \"most_full\", or add a larger cup.".into()
            }
            Self::OverCup { held, .. } => format!(
                "Add a cup that may hold {}, or order it on another day.",
                show::mass(held).at_least()
            )
            .into(),
            Self::TooManySolids { .. } => {
                "Take less salt, flake or pearl, or raise \"solids\" in the limits if it still pours.".into()
            }
            Self::NoFreshBase { .. } => {
                "Allow it (\"fresh_base\" in the limits), or make a further pot.".into()
            }
            Self::CannotFollow { pot, formulas, .. } => format!(
                "List the \"draws\" of pot {pot} in another order, or leave those of {formulas} to another pot."
            )
            .into(),
            Self::TooManyHeats { pot, .. } => format!(
                "Leave some \"draws\" of pot {pot} to another pot, or raise \"heats\" in the limits."
            )
            .into(),
            Self::OutOfOrder { pot } => format!(
                "List the \"draws\" of pot {pot} and of those pots in one order, or leave them out."
            )
            .into(),
            Self::Batch(error) => error.help(),
            Self::Shot(error) => error.help(),
            Self::Mix(error) => error.help(),
            Self::Sequence(error) => error.help(),
            Self::Precedence(error) => error.help(),
            Self::Split(error) => error.help(),
        }
    }
}

//! Errors of formulas and their doses.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::material::{Kind, MaterialError};
use crate::mix::MixError;
use crate::quantity::AmountError;

/// Why doses do not come to a recipe.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FormulaError {
    /// Nothing says what the formulas go into.
    #[error("\"{0}\" names no base.")]
    NoBase(String),
    /// Two bases in one pot.
    #[error("\"{first}\" and \"{second}\" name different bases.")]
    DifferentBases {
        /// One formula.
        first: String,
        /// The other.
        second: String,
    },
    /// One material dosed by two formulas.
    #[error("\"{material}\" is dosed by \"{first}\" and again by \"{second}\".")]
    DosedTwice {
        /// The material.
        material: String,
        /// The formula that doses it first.
        first: String,
        /// The formula that doses it again.
        second: String,
    },
    /// The base's plastisol dosed as an additive.
    #[error("\"{formula}\" doses \"{material}\", which is the base itself.")]
    BaseIsDosed {
        /// The plastisol.
        material: String,
        /// The formula that doses it.
        formula: String,
    },
    /// Something else than a plastisol as base.
    #[error("The base of \"{formula}\" is \"{material}\", a {kind}.")]
    BaseIsNoPlastisol {
        /// The formula.
        formula: String,
        /// The material that it names as base.
        material: String,
        /// Its kind.
        kind: Kind,
    },
    /// More formulas together than a pot is ever made of.
    #[error("{count} formulas are combined, more than the {most} that one recipe may have.")]
    TooManyFormulas {
        /// Their number.
        count: usize,
        /// Maximum.
        most: usize,
    },
    /// More doses than a pot is ever made of.
    #[error(
        "\"{formula}\" brings the doses to {count}, more than the {most} that one recipe may have."
    )]
    TooManyDoses {
        /// The formula at which they become too many.
        formula: String,
        /// Their number.
        count: usize,
        /// Maximum.
        most: usize,
    },
    /// A dose per nothing.
    #[error("\"{0}\" does not say per how much base its doses are.")]
    NoPer(String),
    /// A color of which nothing is known yet.
    #[error("\"{0}\" has no doses yet: what goes into it is still to be found.")]
    ToBeFound(String),
    /// A dose per zero.
    #[error("An amount of base in \"{0}\" is zero.")]
    EmptyBase(String),
    /// A dose that is not an amount of a material.
    #[error("\"{amount}\" in \"{formula}\" is not an amount of a material.")]
    BadAmount {
        /// The formula.
        formula: String,
        /// The amount as written.
        amount: String,
    },
    /// Two readings: as scooped, or the grains alone.
    #[error(
        "A per cent of base by volume of \"{material}\" in \"{formula}\" can be read two ways."
    )]
    PowderByVolumeOfBase {
        /// The powder.
        material: String,
        /// The formula.
        formula: String,
    },
    /// Shares of the finished mix that reach 100 %.
    #[error("The shares of the finished mix leave no room for the base.")]
    NoRoomForBase,
    /// A density or drop of zero, below zero, or endless.
    #[error("A density or drop of {0} is not possible.")]
    BadProperty(f64),
    /// A number is missing.
    #[error(transparent)]
    Missing(#[from] MaterialError),
    /// An amount cannot be converted.
    #[error(transparent)]
    Amount(#[from] AmountError),
    /// A material is not in the table.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl Diagnose for FormulaError {
    codes! {
        Self::NoBase(_) => "formula-no-base",
        Self::DifferentBases { .. } => "formula-different-bases",
        Self::DosedTwice { .. } => "formula-dosed-twice",
        Self::BaseIsDosed { .. } => "formula-base-is-dosed",
        Self::BaseIsNoPlastisol { .. } => "formula-base-no-plastisol",
        Self::TooManyFormulas { .. } => "formula-too-many",
        Self::TooManyDoses { .. } => "formula-too-many-doses",
        Self::NoPer(_) => "formula-no-per",
        Self::ToBeFound(_) => "formula-to-be-found",
        Self::EmptyBase(_) => "formula-empty-base",
        Self::BadAmount { .. } => "formula-bad-amount",
        Self::PowderByVolumeOfBase { .. } => "formula-powder-by-volume",
        Self::NoRoomForBase => "formula-no-room",
        Self::BadProperty(_) => "bad-property",
        Self::Missing(error) => error.code(),
        Self::Amount(error) => error.code(),
        Self::Mix(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoBase(_) => {
                "Combine it with a body formula that has a \"base\", or give the book a \"default_base\".".into()
            }
            Self::DifferentBases { .. } => {
                "Keep one of the two bases; to mix plastisols, name both in one formula's \"base\" with an amount each.".into()
            }
            Self::DosedTwice { .. } => {
                "Take it out of one of the two, or say what is meant: \"overlap\": \"add\" (both doses go in) or \"overlap\": \"last\" (the formula named last counts).".into()
            }
            Self::BaseIsDosed { .. } => {
                "Take it out of the doses; to mix plastisols, name both in one formula's \"base\" with an amount each.".into()
            }
            Self::BaseIsNoPlastisol { material, .. } => format!(
                "Name a plastisol as base and \"{material}\" among the doses, or give \"{material}\" the kind \"plastisol\"."
            )
            .into(),
            Self::TooManyFormulas { most, .. } => {
                format!("Combine at most {most}; write what belongs together as one formula.").into()
            }
            Self::TooManyDoses { most, .. } => {
                format!("Keep to {most} doses; make a mix of some first, as a material of its own.").into()
            }
            Self::NoPer(_) => "Add \"per\", such as \"per\": \"1 cup\".".into(),
            Self::ToBeFound(_) => {
                "Write its doses into the book when a trial has found them. If it is the plain plastisol, name that as its \"base\".".into()
            }
            Self::EmptyBase(_) => "Write an amount above zero.".into(),
            Self::BadAmount { .. } => {
                "Write a volume (1/4 tsp), a mass (12.5 g), drops (40 drops) or a per cent (8 % of base, 20 % of finished).".into()
            }
            Self::PowderByVolumeOfBase { .. } => {
                "As scooped: write \"1/4 cup\" with \"per\": \"1 cup\". By the grains alone, or by mass: write \"22 % of base\".".into()
            }
            Self::NoRoomForBase => {
                "Shares of the finished mix must come to less than 100 % together; perhaps \"of base\" was meant.".into()
            }
            Self::BadProperty(_) => "Correct the material's density or drop; it must be above zero.".into(),
            Self::Missing(error) => error.help(),
            Self::Amount(error) => error.help(),
            Self::Mix(error) => error.help(),
        }
    }
}

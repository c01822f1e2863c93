//! The day's record: a plan with what was really weighed and shot.
//!
//! A number that a person wrote down replaces the planned one; all else
//! went by the sheet, at the measures that it chose. Of each stage follows the formula *as
//! made*: with c the masses in the pot before it (the stage before, less what was shot and
//! lost), the additions a and the base b among c + a, the ratio of a material is
//! r_i = (c_i + a_i)/Σ_b (c_b + a_b), and it is off the plan by r_i/r_i,planned − 1.
//!
//! Between stages the pot holds what the cup was weighed to hold, or else
//! held − shot + returned sprues − the injector's residue by the plan. A shot takes its mass by the
//! plan, its pieces at the mean of those weighed if any were. The loss is the mass that went in less that
//! shot and that left.
//!
//! The share of rejects has its exact binomial interval at 95 %
//! ([`reject_interval`](crate::batch::reject_interval)).

#[cfg(feature = "document")]
mod document;
mod follow;
#[cfg(feature = "document")]
mod formula;
#[cfg(feature = "document")]
mod resolve;
mod text;

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

#[cfg(feature = "document")]
pub use document::{
    ActualsDocument, DrawActualsEntry, PieceActualsEntry, PotActualsEntry, StageActualsEntry,
};
pub use text::RecordSheet;

use crate::batch::BatchError;
use crate::book::Book;
use crate::calibrate::CalibrateError;
use crate::fault::{Diagnose, Faults};
use crate::formula::FormulaError;
use crate::material::Kind;
use crate::mix::{Mix, MixError};
use crate::plan::Plan;
use crate::quantity::{AmountError, Mass, Ratio, System, Time};
use crate::show;
use crate::show::{Shown, part};

/// Masses really weighed, and shots really made.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Actuals {
    /// By pot; one that is not named went as planned.
    pub pots: Vec<PotActuals>,
}

/// Actuals of one pot.
#[derive(Debug, Clone, PartialEq)]
pub struct PotActuals {
    /// Its letter in the plan.
    pub pot: String,
    /// Its stages, from the first; those not named went as planned.
    pub stages: Vec<StageActuals>,
    /// Anything worth knowing.
    pub notes: Option<String>,
}

/// Actuals of one stage.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StageActuals {
    /// Masses that went in of the materials that are named, one that the plan lacks included; the others
    /// went in by the sheet.
    pub weighed: Mix,
    /// Draws, in the order of the sheet; one not named went as planned.
    pub draws: Vec<DrawActuals>,
    /// Mass in the cup after the last shot, if weighed.
    pub left: Option<Mass>,
}

/// Actuals of the shots into a mold.
#[derive(Debug, Clone, PartialEq)]
pub struct DrawActuals {
    /// The mold.
    pub mold: String,
    /// Shots made.
    pub shots: u32,
    /// Pieces that came of it, by shape. Those of a laminated shot are stated at one of its pots.
    pub pieces: Vec<PieceActuals>,
}

/// Actuals of the pieces of one shape.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceActuals {
    /// The shape, in a mold with unlike cavities.
    pub shape: Option<String>,
    /// Pieces that are fit to sell; `None` where they were not counted.
    pub good: Option<u32>,
    /// Masses of some of them, one by one.
    pub weights: Vec<Mass>,
}

part! {
    /// A day's record.
    pub struct Record {
        /// The format and its version.
        #[cfg(feature = "document")]
        pub format: crate::document::Format,
        /// Whose it is.
        pub shop: Option<String>,
        /// The day.
        pub day: Option<String>,
        /// Household measures: the size of a cup and a spoon.
        pub measures: System,
        /// The pots, in the order of the plan.
        pub pots: Vec<PotRecord>,
        /// The molds, by name: their yield over all pots.
        pub molds: Vec<MoldRecord>,
    }
}

part! {
    /// Record of a pot.
    pub struct PotRecord {
        /// Its letter.
        pub pot: String,
        /// Its stages.
        pub stages: Vec<StageRecord>,
        /// All that went in.
        pub put_in: Shown<Mass>,
        /// Mass shot, less the sprues that went back.
        pub shot: Shown<Mass>,
        /// Mass left in the cup; none if it was not weighed.
        pub left: Option<Shown<Mass>>,
        /// Mass that stayed in cup and injector: the mass that went in less that shot and left. Below zero
        /// where the shots were lighter than calculated. None where what was left was not weighed.
        pub lost: Option<Shown<Mass>>,
        /// The same as it was planned.
        pub planned_lost: Shown<Mass>,
        /// Number of heats of the mix that was left, as planned, with those of leftovers in it; none if that is not
        /// known.
        pub heats: Option<u32>,
        /// Heat spent by these heats, as time at the reference temperature of its plastisol's budget, as
        /// planned; none if that is not known.
        pub spent: Option<Shown<Time>>,
        /// Anything worth knowing.
        pub notes: Option<String>,
    }
}

part! {
    /// A stage as it was made.
    pub struct StageRecord {
        /// Its formulas.
        pub formulas: Vec<String>,
        /// Contents of the pot by material, plastisols first.
        pub made: Vec<MadePart>,
        /// Mass of all of it.
        pub held: Shown<Mass>,
        /// The draws.
        pub draws: Vec<DrawRecord>,
        /// Mass in the cup after the last shot: weighed or calculated.
        pub after: Shown<Mass>,
        /// Whether that was weighed.
        pub after_weighed: bool,
        /// The stage as a formula for the book: its masses as made, so that the color comes out the same again.
        #[cfg(feature = "document")]
        pub formula: crate::document::book::FormulaEntry,
    }
}

part! {
    /// A material of a stage as it was made.
    pub struct MadePart {
        /// Which.
        pub material: String,
        /// Its purpose.
        pub kind: Kind,
        /// Mass that went in at this stage.
        pub added: Shown<Mass>,
        /// Mass of it in the pot then.
        pub mass: Shown<Mass>,
        /// Mass per mass of base; of a base, its share.
        pub of_base: Shown<Ratio>,
        /// That for 1 cup of base, as the bench measures it.
        pub per_cup: String,
        /// How far it is off the plan; none where the plan has nothing of it.
        pub off: Option<Shown<Ratio>>,
    }
}

part! {
    /// Shots into a mold.
    pub struct DrawRecord {
        /// The mold.
        pub mold: String,
        /// Shots made.
        pub shots: u32,
        /// Shots planned.
        pub planned_shots: u32,
        /// The pieces, by shape.
        pub pieces: Vec<PieceRecord>,
    }
}

part! {
    /// The pieces of one shape.
    pub struct PieceRecord {
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// Pieces ordered.
        pub ordered: u32,
        /// Pieces made.
        pub made: u32,
        /// Pieces that are fit to sell.
        pub good: Option<u32>,
        /// Those a shot, on average.
        pub good_per_shot: Option<f64>,
        /// How many were weighed.
        pub weighed: u32,
        /// Their mean.
        pub weighs: Option<Shown<Mass>>,
        /// Their standard deviation, of two or more.
        pub deviation: Option<Shown<Mass>>,
        /// Planned mass of one; none for a piece of more than one layer, whose pots
        /// have a layer each.
        pub planned: Option<Shown<Mass>>,
    }
}

part! {
    /// Yield of a mold, over all shots whose pieces were counted.
    pub struct MoldRecord {
        /// The mold.
        pub mold: String,
        /// Pieces made.
        pub made: u32,
        /// Pieces that are fit to sell.
        pub good: u32,
        /// Share of rejects.
        pub rejects: Shown<Ratio>,
        /// Lower bound of the reject rate, 95 % sure.
        pub rejects_from: Shown<Ratio>,
        /// Upper bound of the reject rate, 95 % sure.
        pub rejects_to: Shown<Ratio>,
    }
}

impl Record {
    /// Record of `plan`, made with `book`.
    ///
    /// # Errors
    /// All faults together, each at its place in the actuals: a pot, stage, draw or shape that the
    /// plan lacks, more good pieces than were made, more shot or left than the pot held.
    pub fn make(plan: &Plan, book: &Book, actuals: &Actuals) -> Result<Self, Faults> {
        follow::record(plan, book, actuals)
    }
}

/// Errors of a record.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum RecordError {
    /// The plan has no such pot.
    #[error("The plan has no pot {pot}.")]
    NoPot {
        /// Its letter.
        pot: String,
        /// Those that it has.
        known: String,
    },
    /// A pot is named twice.
    #[error("Pot {0} is here twice.")]
    PotTwice(String),
    /// The pot has fewer stages.
    #[error("Pot {pot} has {stages} in the plan, and this is one more.")]
    NoStage {
        /// The pot.
        pot: String,
        /// Its stages, counted.
        stages: String,
    },
    /// The stage shoots no such mold, or not so often.
    #[error("The plan has no such shots of {mold} at this stage.")]
    NoDraw {
        /// The mold.
        mold: String,
        /// Those that it has.
        known: String,
    },
    /// The mold has no such shape.
    #[error("{mold} has no such shape.")]
    NoShape {
        /// The mold.
        mold: String,
        /// Those that it has.
        known: String,
    },
    /// More good ones than pieces.
    #[error("{good} good pieces are more than the {made} that were made.")]
    TooManyGood {
        /// As stated.
        good: u32,
        /// Number that the shots make.
        made: u32,
    },
    /// More was shot than the pot held.
    #[error("The shots take {}, and the pot held {}.", show::mass(.shot), show::mass(.held))]
    ShotMore {
        /// Mass that they take.
        shot: Mass,
        /// Mass in the pot.
        held: Mass,
    },
    /// More was left than the pot held.
    #[error("{} cannot have been left of {}.", show::mass(.left), show::mass(.held))]
    LeftMore {
        /// As weighed.
        left: Mass,
        /// Mass in the pot.
        held: Mass,
    },
    /// A material of the plan is not in the book.
    #[error("The plan weighs \"{0}\", which the book lacks.")]
    UnknownMaterial(String),
    /// Weights that no pieces have.
    #[error(transparent)]
    Weights(#[from] CalibrateError),
    /// No interval of the rejects.
    #[error(transparent)]
    Rejects(#[from] BatchError),
    /// A mix that cannot be.
    #[error(transparent)]
    Mix(#[from] MixError),
    /// No recipe.
    #[error(transparent)]
    Formula(#[from] FormulaError),
    /// No amount.
    #[error(transparent)]
    Amount(#[from] AmountError),
}

impl Diagnose for RecordError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoPot { .. } => "record-no-pot",
            Self::PotTwice(_) => "record-pot-twice",
            Self::NoStage { .. } => "record-no-stage",
            Self::NoDraw { .. } => "record-no-draw",
            Self::NoShape { .. } => "record-no-shape",
            Self::TooManyGood { .. } => "record-too-many-good",
            Self::ShotMore { .. } => "record-shot-more",
            Self::LeftMore { .. } => "record-left-more",
            Self::UnknownMaterial(_) => "record-unknown-material",
            Self::Weights(error) => error.code(),
            Self::Rejects(error) => error.code(),
            Self::Mix(error) => error.code(),
            Self::Formula(error) => error.code(),
            Self::Amount(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoPot { known, .. } => format!("It has: {known}.").into(),
            Self::PotTwice(_) => "Put all of its stages into one.".into(),
            Self::NoStage { .. } => "Leave it out; a pot of its own needs a plan of its own.".into(),
            Self::NoDraw { known, .. } => {
                format!("This stage shoots, in this order: {known}.").into()
            }
            Self::NoShape { known, .. } => format!("It has: {known}.").into(),
            Self::TooManyGood { .. } => "Count both again: shots, and good pieces.".into(),
            Self::ShotMore { .. } => {
                "Check the number of shots, and what went into the pot; weigh some pieces, or what the cup held then (\"left\").".into()
            }
            Self::LeftMore { .. } => "Take the cup's own weight off.".into(),
            Self::UnknownMaterial(_) => "Use the book that the plan was made with.".into(),
            Self::Weights(error) => error.help(),
            Self::Rejects(error) => error.help(),
            Self::Mix(error) => error.help(),
            Self::Formula(error) => error.help(),
            Self::Amount(error) => error.help(),
        }
    }
}

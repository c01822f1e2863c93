//! The day's record: a plan with what was really weighed and shot.
//!
//! A number that a person wrote down replaces the planned one; all else went by the sheet, at the measures that it
//! chose. An amount that is stated as measured and as weighed counts as weighed. Of each stage follows the formula *as
//! made*: with c the masses in the pot before it (the stage before, less what was shot and lost), the additions a and
//! the base b among c + a, the ratio of a material is r_i = (c_i + a_i)/Σ_b (c_b + a_b), and it is off the plan by
//! r_i/r_i,planned − 1. From the same masses come the finished and the hot density, and with them the mass that a shot
//! takes and that a piece of this mix weighs ([`Shot`](crate::shot::Shot)).
//!
//! Between stages the pot holds what the cup was weighed to hold, or else held − shot + returned sprues − the residue of
//! the injector (as weighed, else its share of the plan for each heat) − what the plan leaves elsewhere. A shot takes
//! its mass by the mix as made, its pieces at the mean of those weighed if any were. The loss is the mass that went in
//! less that shot and that left: nothing is counted twice.
//!
//! The share of rejects has its exact binomial interval at 95 %
//! ([`reject_interval`](crate::batch::reject_interval)).

#[cfg(feature = "document")]
pub(crate) mod colors;
#[cfg(feature = "document")]
mod document;
mod draws;
mod follow;
mod formula;
mod found;
mod jar;
#[cfg(feature = "document")]
mod resolve;
mod text;
mod told;

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

#[cfg(feature = "document")]
pub use document::{
    ActualsDocument, HeatActualsEntry, MeasuredAndWeighedEntry, PieceWeightEntry,
    PiecesTogetherEntry, PotActualsEntry, ShapeActualsEntry, ShotsEntry, WentInEntry,
};
pub use text::RecordSheet;

use crate::batch::BatchError;
use crate::book::Book;
use crate::calibrate::{CalibrateError, Counted};
use crate::codes::codes;
use crate::fault::{Diagnose, Faults};
use crate::formula::FormulaError;
use crate::material::Kind;
use crate::mix::{MaterialId, MixError};
use crate::parameter::ParameterErrors;
use crate::plan::{MaterialMass, Plan};
use crate::quantity::{
    Amount, AmountError, Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Time, Volume,
};
use crate::show;
use crate::show::{Shown, part};

/// A maker's notes of a day: the numbers that differ from the plan.
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
    /// Whether `stages` are its stages, from the first; else it is one entry for the whole pot, each of whose numbers
    /// belongs to the one stage that it can be of.
    pub by_stage: bool,
    /// Its entries.
    pub stages: Vec<StageActuals>,
}

/// Actuals of one stage, or of a whole pot.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct StageActuals {
    /// What went in of the materials that are named, one that the plan lacks included; the others went in by the sheet.
    pub went_in: Vec<WentIn>,
    /// Shots, those of one mold in the order of the sheet; what is not named went as planned.
    pub draws: Vec<DrawActuals>,
    /// Heats after the first; `None`: as planned.
    pub reheats: Option<u32>,
    /// Heats as timed, in their order.
    pub heats: Vec<TimedHeat>,
    /// Mass in the cup after the last shot, if weighed.
    pub left: Option<Mass>,
    /// Mass that the injector kept, each time that it was cleaned; empty where not weighed.
    pub injector: Vec<Mass>,
    /// Color that a finished piece had, if it was read.
    #[cfg(feature = "document")]
    pub looks: Option<Looks>,
    /// Name of the color as made in the book, if it is to be kept.
    pub save_as: Option<String>,
    /// Name of the body as made in the book, if it is to be kept.
    pub body_as: Option<String>,
    /// Name of the jar with what was left.
    pub jar: Option<String>,
    /// Anything worth knowing.
    pub notes: Option<String>,
}

/// Color that a finished piece had.
#[cfg(feature = "document")]
#[derive(Debug, Clone, PartialEq)]
pub struct Looks {
    /// As it was written, with its bands and its day.
    pub color: crate::document::color::ColorEntry,
    /// As it was read.
    pub reading: crate::color::reading::Reading,
}

/// What went in of a material. One of `measured` and `weighed` is stated; what was weighed counts.
#[derive(Debug, Clone, PartialEq)]
pub struct WentIn {
    /// The material.
    pub material: MaterialId,
    /// As measured, and the mass of it by the book.
    pub measured: Option<(Amount, Mass)>,
    /// What the scale showed for it.
    pub weighed: Option<Mass>,
}

impl WentIn {
    /// The mass of what was measured, by the book.
    pub(crate) fn by_book(&self) -> Option<Mass> {
        self.measured.map(|(_, mass)| mass)
    }
}

/// Actuals of the shots into a mold.
#[derive(Debug, Clone, PartialEq)]
pub struct DrawActuals {
    /// The mold.
    pub mold: String,
    /// Which of the pot's or stage's draws into that mold, counted from 0; `None`: the only one.
    pub number: Option<usize>,
    /// Shots made; `None`: as planned.
    pub shots: Option<u32>,
    /// Pieces that came of it, by shape. Those of a laminated shot are stated at one of its pots.
    pub pieces: Vec<PieceActuals>,
    /// Time from the first shot to the last, if timed.
    pub took: Option<Time>,
}

/// Actuals of the pieces of one shape.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceActuals {
    /// The shape, in a mold with unlike cavities.
    pub shape: Option<String>,
    /// Pieces that are fit to sell; `None` where they were not counted.
    pub good: Option<u32>,
    /// Weighings of some of them, of one piece or several together.
    pub weights: Vec<Counted>,
}

/// A heat as it was timed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimedHeat {
    /// How long the oven ran.
    pub time: Time,
    /// The reading before.
    pub from: Option<ThermodynamicTemperature>,
    /// The reading after.
    pub to: Option<ThermodynamicTemperature>,
    /// Setting, as a share of full power; `None`: the oven's usual one.
    pub setting: Option<Ratio>,
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
        /// What weighed pieces of one color show of their molds, by mold and shape.
        pub found: Vec<Found>,
        /// What is left for the shelf.
        pub jars: Vec<Jar>,
        /// Colors and bodies as made that go into the book.
        #[cfg(feature = "document")]
        pub saved: Vec<Saved>,
        /// Colors that finished pieces had, each with the formula that it goes to in the book.
        #[cfg(feature = "document")]
        pub colors: Vec<SeenColor>,
    }
}

part! {
    /// What weighed pieces show of their mold, once the mix is known.
    pub struct Found {
        /// The mold.
        pub mold: String,
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// The pots that they were shot from.
        pub pots: Vec<String>,
        /// How many were weighed.
        pub pieces: u32,
        /// Their mean.
        pub weighs: Shown<Mass>,
        /// Mass of one as planned.
        pub planned: Shown<Mass>,
        /// Mass of one by the mix as made.
        pub expected: Shown<Mass>,
        /// How far their mean is off that.
        pub off: Shown<Ratio>,
        /// Standard uncertainty of this: from weights, density and cavity.
        pub off_uncertainty: Shown<Ratio>,
        /// The cavity, as a book writes it; none unless the pieces show that it is not the one of the book.
        pub cavity: Option<String>,
        /// Feed share of a mold whose book has none, if it is sure enough.
        pub feed: Option<Shown<Ratio>>,
        /// Its standard uncertainty.
        pub feed_uncertainty: Option<Shown<Ratio>>,
        /// All of this as a sentence or two.
        pub text: String,
    }
}

part! {
    /// A leftover for the shelf.
    pub struct Jar {
        /// The name to write on it.
        pub name: String,
        /// The pot that it is of.
        pub pot: String,
        /// Its mass: what was left in the cup, and sprues of the same mix.
        pub mass: Shown<Mass>,
        /// The sprues in it.
        pub sprues: Shown<Mass>,
        /// Mass of each material in it.
        pub parts: Vec<MaterialMass>,
        /// Number of heats behind it; none if not known.
        pub heats: Option<u32>,
        /// Heat that they spent, as time at the temperature of its plastisol's budget; none if not known.
        pub spent: Option<Shown<Time>>,
    }
}

#[cfg(feature = "document")]
part! {
    /// A formula as made that goes into the book.
    pub struct Saved {
        /// Its name there.
        pub name: String,
        /// The pot that it was made in.
        pub pot: String,
        /// The formula.
        pub formula: crate::document::book::FormulaEntry,
    }
}

#[cfg(feature = "document")]
part! {
    /// The color that a finished piece had, next to the one that the book has.
    pub struct SeenColor {
        /// The formula of the book that it goes to.
        pub formula: String,
        /// The pot that the piece was made in.
        pub pot: String,
        /// The color.
        pub color: crate::document::color::ColorEntry,
        /// ΔE₀₀ to the color that the book has of that formula; none if it has none.
        pub difference: Option<f64>,
        /// It is above this with 97.5 %.
        pub difference_low: Option<f64>,
        /// It is below this with 97.5 %.
        pub difference_high: Option<f64>,
        /// All of this as a sentence.
        pub text: String,
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
        /// Anything worth knowing, one entry a stage that has notes.
        pub notes: Vec<String>,
    }
}

part! {
    /// A stage as it was made.
    pub struct StageRecord {
        /// Its formulas.
        pub formulas: Vec<String>,
        /// Contents of the pot by material, plastisols first.
        pub made: Vec<MadePart>,
        /// The amount of base that the doses are for.
        pub per: String,
        /// Mass of all of it.
        pub held: Shown<Mass>,
        /// Density of the finished plastic as made, without voids; none if the book lacks a density.
        pub density: Option<Shown<MassDensity>>,
        /// Its standard uncertainty, as planned.
        pub density_uncertainty: Option<Shown<MassDensity>>,
        /// The same as it was planned.
        pub planned_density: Shown<MassDensity>,
        /// Density as made at the middle of the shot window, without voids; none if the book lacks a density.
        pub hot_density: Option<Shown<MassDensity>>,
        /// Amounts that were measured and weighed: what a drop weighs and a spoon holds.
        pub pairs: Vec<MeasuredAndWeighed>,
        /// Its heats as timed, each of the mass that was in the pot.
        pub timed: Vec<HeatTimed>,
        /// Number of heats of this stage: as stated, else as planned.
        pub heats: u32,
        /// Mass that the injector kept, each time that it was cleaned; empty if not weighed.
        pub injector: Vec<Shown<Mass>>,
        /// The draws.
        pub draws: Vec<DrawRecord>,
        /// Mass in the cup after the last shot: weighed or calculated.
        pub after: Shown<Mass>,
        /// Whether that was weighed.
        pub after_weighed: bool,
        /// Color that a finished piece had; none if it was not read.
        #[cfg(feature = "document")]
        pub looks: Option<crate::document::color::ColorEntry>,
        /// The color as made, apart from its body, as a formula for the book; none if there is no color.
        #[cfg(feature = "document")]
        pub color: Option<crate::document::book::FormulaEntry>,
        /// The body as made, as a formula for the book.
        #[cfg(feature = "document")]
        pub body: crate::document::book::FormulaEntry,
    }
}

part! {
    /// An amount of a material that was measured, and that the scale showed a mass for.
    pub struct MeasuredAndWeighed {
        /// The material.
        pub material: String,
        /// As measured, by the person or by the sheet: `34 drops`, `1 tsp + 1/4 tsp`.
        pub measured: String,
        /// The number of drops, if it was measured by drops.
        pub drops: Option<f64>,
        /// The volume by spoons or cup, level, if it was measured by volume.
        pub volume: Option<Shown<Volume>>,
        /// Mass of that by the book.
        pub by_book: Shown<Mass>,
        /// What the scale showed.
        pub weighed: Shown<Mass>,
    }
}

part! {
    /// A heat as it was timed.
    pub struct HeatTimed {
        /// Mass in the pot then; none at a reheat between shots.
        pub mass: Option<Shown<Mass>>,
        /// How long the oven ran.
        pub time: Shown<Time>,
        /// The reading before.
        pub from: Option<Shown<ThermodynamicTemperature>>,
        /// The reading after.
        pub to: Option<Shown<ThermodynamicTemperature>>,
        /// Setting, as a share of full power; none: the oven's usual one.
        pub setting: Option<Shown<Ratio>>,
        /// Whether it was the first heat of the pot, from cold; else a reheat.
        pub first: bool,
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
        /// Whether that was stated; else it is what the sheet said.
        pub stated: bool,
        /// Mass of it in the pot then.
        pub mass: Shown<Mass>,
        /// Mass per mass of base; of a base, its share.
        pub of_base: Shown<Ratio>,
        /// Its dose in the measure that was used, for the amount of base that the formula is for.
        pub dose: String,
        /// How far it is off the plan; none where the plan has nothing of it.
        pub off: Option<Shown<Ratio>>,
    }
}

part! {
    /// Shots into a mold.
    pub struct DrawRecord {
        /// The mold.
        pub mold: String,
        /// The layer's share of the cavity, below 1 in a laminated piece.
        pub share: Shown<Ratio>,
        /// Shots made.
        pub shots: u32,
        /// Shots planned.
        pub planned_shots: u32,
        /// Time from the first shot to the last, if timed.
        pub took: Option<Shown<Time>>,
        /// Mass of one shot, sprue included: by the mix as made, its pieces at the mean of those weighed.
        pub per_shot: Shown<Mass>,
        /// The pieces, by shape.
        pub pieces: Vec<PieceRecord>,
    }
}

part! {
    /// The pieces of one shape.
    pub struct PieceRecord {
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// Pieces ordered that these shots were for, as in the plan's draw.
        pub ordered: u32,
        /// Pieces made.
        pub made: u32,
        /// Pieces that are fit to sell.
        pub good: Option<u32>,
        /// Those a shot, on average.
        pub good_per_shot: Option<f64>,
        /// How many were weighed.
        pub weighed: u32,
        /// The weighings, of one piece or several together.
        pub weights: Vec<WeighedTogether>,
        /// Their mean.
        pub weighs: Option<Shown<Mass>>,
        /// Their standard deviation, of two or more that were weighed one by one.
        pub deviation: Option<Shown<Mass>>,
        /// Planned mass of one, or of this layer of it.
        pub planned: Shown<Mass>,
        /// Mass of one, or of this layer of it, by the mix as made; none if the book lacks a density.
        pub expected: Option<Shown<Mass>>,
    }
}

part! {
    /// Pieces weighed together.
    pub struct WeighedTogether {
        /// How many.
        pub count: u32,
        /// Their mass together.
        pub weight: Shown<Mass>,
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
    #[error("The plan has no such shots of {mold} here.")]
    NoDraw {
        /// The mold.
        mold: String,
        /// Those that it has.
        known: String,
    },
    /// A number of the whole pot that several of its stages could mean.
    #[error("Pot {pot} has several stages, and {what} could belong to more than one.")]
    WhichStage {
        /// The pot.
        pot: String,
        /// What is stated.
        what: String,
    },
    /// The pot shoots the mold several times, and only one was stated.
    #[error("\"{mold}\" is shot {times} times here, and this could be any of them.")]
    WhichDraw {
        /// The mold.
        mold: String,
        /// How often.
        times: usize,
    },
    /// More heats were timed than there were.
    #[error("{timed} heats are timed, and with {reheats} reheats there were {heats}.")]
    TimedMore {
        /// Heats with a time.
        timed: usize,
        /// As stated.
        reheats: u32,
        /// Heats in all.
        heats: u32,
    },
    /// More pieces were weighed than were made.
    #[error("{weighed} weighed pieces are more than the {made} that were made.")]
    TooManyWeighed {
        /// As stated.
        weighed: u32,
        /// Number that the shots make.
        made: u32,
    },
    /// The mold has no such shape.
    #[error("\"{mold}\" has no such shape.")]
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
    /// A mold or shape of the plan is not in the book.
    #[error("The plan shoots \"{0}\", which the book lacks.")]
    UnknownMold(String),
    /// There is no color to save.
    #[error("Pot {0} has no color at this stage.")]
    NoColor(String),
    /// A color of pieces that belongs to no formula of the book, or to several.
    #[error("Which formula the color of pot {pot} belongs to is not clear: {formulas}.")]
    WhichColor {
        /// The pot.
        pot: String,
        /// Its formulas, and what is wrong with them.
        formulas: String,
    },
    /// A color of pieces that were not made as the formula says.
    #[error("Pot {pot} was not made as \"{formula}\" says: {what}.")]
    ColorOfAnother {
        /// The pot.
        pot: String,
        /// The formula.
        formula: String,
        /// What is off, and by how much of its dose.
        what: String,
    },
    /// A shot that cannot be.
    #[error(transparent)]
    Shot(#[from] ParameterErrors),
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
    codes! {
        Self::NoPot { .. } => "record-no-pot",
        Self::PotTwice(_) => "record-pot-twice",
        Self::NoStage { .. } => "record-no-stage",
        Self::NoDraw { .. } => "record-no-draw",
        Self::WhichStage { .. } => "record-which-stage",
        Self::WhichDraw { .. } => "record-which-draw",
        Self::TimedMore { .. } => "record-timed-more",
        Self::TooManyWeighed { .. } => "record-too-many-weighed",
        Self::NoShape { .. } => "record-no-shape",
        Self::TooManyGood { .. } => "record-too-many-good",
        Self::ShotMore { .. } => "record-shot-more",
        Self::LeftMore { .. } => "record-left-more",
        Self::UnknownMaterial(_) => "record-unknown-material",
        Self::UnknownMold(_) => "record-unknown-mold",
        Self::NoColor(_) => "record-no-color",
        Self::WhichColor { .. } => "record-which-color",
        Self::ColorOfAnother { .. } => "record-color-of-another",
        Self::Shot(error) => error.code(),
        Self::Weights(error) => error.code(),
        Self::Rejects(error) => error.code(),
        Self::Mix(error) => error.code(),
        Self::Formula(error) => error.code(),
        Self::Amount(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoPot { known, .. } => format!("It has: {known}.").into(),
            Self::PotTwice(_) => "Put all of its stages into one.".into(),
            Self::NoStage { .. } => "Leave it out; a pot of its own needs a plan of its own.".into(),
            Self::NoDraw { known, .. } => format!("Shot here, in this order: {known}.").into(),
            Self::WhichStage { .. } => {
                "Write the pot as a list with one entry a stage, {} for one that went as planned.".into()
            }
            Self::WhichDraw { .. } => {
                "Write a list with one entry each time, in the order of the sheet, {} for one that went as planned.".into()
            }
            Self::TimedMore { .. } => {
                "Count the reheats again, without the first heat, or leave \"reheats\" out.".into()
            }
            Self::TooManyWeighed { .. } => "Count both again: shots, and weighed pieces.".into(),
            Self::NoShape { known, .. } => format!("It has: {known}.").into(),
            Self::TooManyGood { .. } => "Count both again: shots, and good pieces.".into(),
            Self::ShotMore { .. } => {
                "Check the number of shots, and what went into the pot; weigh some pieces, or what the cup held then (\"left\").".into()
            }
            Self::LeftMore { .. } => "Take the cup's own weight off.".into(),
            Self::UnknownMaterial(_) | Self::UnknownMold(_) => {
                "Use the book that the plan was made with.".into()
            }
            Self::NoColor(_) => "Leave \"save_as\" out; \"body_as\" saves the body.".into(),
            Self::WhichColor { .. } => {
                "Give the color as made a name of its own, \"save_as\": \"dusk, darker\", or leave \"looks\" out.".into()
            }
            Self::ColorOfAnother { formula, .. } => format!(
                "Give the color as made a name of its own, \"save_as\": \"{formula}, as made\", so that its doses go with it."
            )
            .into(),
            Self::Shot(error) => error.help(),
            Self::Weights(error) => error.help(),
            Self::Rejects(error) => error.help(),
            Self::Mix(error) => error.help(),
            Self::Formula(error) => error.help(),
            Self::Amount(error) => error.help(),
        }
    }
}

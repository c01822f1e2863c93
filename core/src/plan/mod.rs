//! A day's pots: which formulas share one, how much each holds, the measures that the bench
//! has, and the sheet to pour from.

mod assign;
mod bits;
pub mod borrowed;
pub mod budget;
pub mod correction;
pub mod cost;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod cover;
pub mod day;
mod describe;
pub(crate) mod doubt;
pub mod flakes;
mod layout;
pub mod leftover;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod linear;
mod make;
pub mod mispour;
#[cfg(feature = "document")]
pub(crate) mod older;
mod one_or_more;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod order;
pub mod parcel;
mod places;
mod pot;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod precedence;
pub mod process;
mod quote;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod sequence;
pub mod sheet;
pub mod shelf;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod split;
mod step;
pub mod stock;
pub mod there;
pub(crate) mod tool_names;
pub(crate) mod weigh;

use alloc::string::String;
use alloc::vec::Vec;

/// The planner's own parts, open to the tests of the project alone: nothing here is kept stable.
#[cfg(feature = "internals")]
#[doc(hidden)]
pub mod internals {
    /// The fewest chains.
    pub mod cover {
        pub use crate::plan::cover::*;
    }
    /// Linear programs.
    pub mod linear {
        pub use crate::plan::linear::*;
    }
    /// Partial orders.
    pub mod order {
        pub use crate::plan::order::*;
    }
    /// Which formula can become which.
    pub mod precedence {
        pub use crate::plan::precedence::*;
    }
    /// One pot drawn at several stages.
    pub mod sequence {
        pub use crate::plan::sequence::*;
    }
    /// The fewest pots.
    pub mod split {
        pub use crate::plan::split::*;
    }
}

/// Errors in modules of their own, for the list of all codes.
pub(crate) mod errors {
    pub(crate) use super::cover::CoverError;
    pub(crate) use super::layout::ShelfError;
    pub(crate) use super::order::OrderError;
    pub(crate) use super::pot::PotError;
    pub(crate) use super::precedence::PrecedenceError;
    pub(crate) use super::sequence::SequenceError;
    pub(crate) use super::split::SplitError;
    pub(crate) use super::weigh::WeighError;
}

pub use borrowed::Borrowed;
pub use cost::{DayCost, LineCost, MaterialCost, MoneyShown, OrderCost};
pub use doubt::Doubt;
pub use flakes::FlakeCount;
pub use parcel::{Parcel, ParcelItem};
pub use process::{
    Degas, Doing, HeatBand, Heats, PlannedHeating, SinkWater, Sinking, Span, StageHeat, TimeLine,
};
pub use quote::Quote;
pub use step::{PlanStep, Reading, StepAt, StepItem, StepKind};
pub use stock::StockEntry;

use crate::bench::Tool;
use crate::caution::Caution;
use crate::formula::WrittenIn;
use crate::material::{Adding, Kind};
use crate::quantity::{Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Time, Volume};
use crate::show::{Calculated, Note, Shown, TextScale, part};

part! {
    /// A day's plan, complete: print it as a bench sheet, keep it as the day's record. The same book and orders give
    /// the same bits.
    pub struct Plan {
        /// The shop.
        pub shop: Option<String>,
        /// The day, as written in the order list.
        pub day: Option<String>,
        /// The measuring system: what a cup and a spoon hold.
        pub measures: System,
        /// The scale of the steps' sentences that are on the other one too: that of thermometers and gauges in these measures.
        /// None in a plan that was stored before this was in it.
        pub scale: Option<TextScale>,
        /// The order lines, as given.
        pub lines: Vec<PlannedLine>,
        /// The pots, in the order in which they are first heated.
        pub pots: Vec<Pot>,
        /// The order of work over all pots.
        pub work: Vec<Work>,
        /// Steps of the person at the bench, in the order of work.
        pub steps: Vec<PlanStep>,
        /// The time line: when each pot is heated and shot, and how long that takes. Only if the book states an oven.
        pub clock: Option<Calculated<TimeLine>>,
        /// The parcel of each order, the first that is due first.
        pub parcels: Vec<Parcel>,
        /// The leftovers of the order list, and the part of them that is used.
        pub shelf: Vec<OnShelf>,
        /// Materials in stock and what the day takes of them, the scarcest first.
        pub stock: Vec<StockEntry>,
        /// Cost of the day, if the book states how to calculate it.
        pub cost: Option<Calculated<DayCost>>,
        /// Why there are not fewer pots.
        pub proof: Proof,
        /// The water of the sink rates.
        pub water: Option<SinkWater>,
        /// Numbers that the book does not state, what the plan assumes for them, and which to measure first.
        pub borrowed: Vec<Borrowed>,
        /// Entries of the book that look wrong: check them before the day begins.
        pub questions: Vec<Note>,
        /// Assumptions, for what the book does not state.
        pub assumptions: Vec<Note>,
        /// Hazards.
        pub cautions: Vec<Caution>,
    }
}

part! {
    needed
    /// An order line in the plan.
    pub struct PlannedLine {
        /// The order it belongs to.
        pub order: String,
        /// The product's name, or its formulas.
        pub what: String,
        /// The mold.
        pub mold: String,
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// Number of pieces.
        pub pieces: u32,
        /// Number of packs, if sold by the pack.
        pub packs: Option<u32>,
        /// Pieces in a pack.
        pub pack_of: Option<u32>,
        /// The pots it is shot from.
        pub pots: Vec<String>,
        /// The first order line for the same pieces, counted from 1; shots are for all of them. None in a plan that was stored
        /// before this was in it.
        pub pooled_with: Option<u32>,
        /// Mass of a piece.
        pub piece: Shown<Mass>,
        /// How a piece sinks, if the book states a water. None in a quote.
        pub sinks: Option<Calculated<Sinking>>,
        /// The day it was promised for.
        pub promised: Option<String>,
        /// Data of the embedding program on the line.
        #[cfg(feature = "document")]
        pub ext: Option<serde_json::Map<String, serde_json::Value>>,
    }
}

part! {
    needed
    /// One vessel of mix from first measure to last shot.
    pub struct Pot {
        /// Its letter: A, B, ...
        pub pot: String,
        /// Id made of what it is, like the ids of its steps: it stays the same when other orders come in or a count changes.
        pub id: String,
        /// Capacity of the cup it is mixed in.
        pub cup: Shown<Volume>,
        /// Name of that cup: `2-cup cup`.
        pub cup_name: String,
        /// Problems and risks, each with a fix.
        pub warnings: Vec<Note>,
        /// How it is degassed, if the book states a vacuum.
        pub degas: Option<Calculated<Degas>>,
        /// What is in it already; none in a pot that the plan begins.
        pub there: Option<InPot>,
        /// Leftovers that go in first; the first stage's weigh list is then for the rest.
        pub from_shelf: Option<FromShelf>,
        /// Its stages, in order.
        pub stages: Vec<Stage>,
        /// Its heats, and the heat that its stabilizer still withstands.
        pub heats: Heats,
        /// Mass lost on the wall of the cup and in the injector.
        pub lost: Shown<Mass>,
        /// Mass left in the cup after the last shot, the heel included.
        pub left_over: Shown<Mass>,
        /// Mass of all sprues.
        pub sprues: Shown<Mass>,
    }
}

part! {
    /// The mix in a pot that is there when the plan is made.
    pub struct InPot {
        /// Its mass.
        pub mass: Shown<Mass>,
        /// Its volume cold and liquid.
        pub fills: Shown<Volume>,
        /// Whether it is hot.
        pub hot: bool,
        /// Whether it has been degassed.
        pub degassed: bool,
        /// Number of heats behind it; none if not known.
        pub heats: Option<u32>,
        /// Heat used in these, at the temperature of its plastisol's budget; none if not known.
        pub spent: Option<Shown<Time>>,
        /// Mass of each material in it.
        pub parts: Vec<MaterialMass>,
        /// Whether that counts as its formulas, however far off it is; none if not.
        pub accepted: Option<bool>,
    }
}

part! {
    /// Leftovers that go into a pot.
    pub struct FromShelf {
        /// The leftovers, by name.
        pub left_overs: Vec<ShelfPart>,
        /// Mass of each material in them.
        pub brings: Vec<MaterialMass>,
        /// How far they take each material from its formula; the weigh list allows for it.
        pub off: Vec<Off>,
        /// Heats of the one that was heated most often, which count for the whole pot; none if not known of one of them.
        pub heats: Option<u32>,
    }
}

part! {
    /// A leftover in a pot.
    pub struct ShelfPart {
        /// Its name.
        pub name: String,
        /// Mass of it, as the scale shows it.
        pub mass: Shown<Mass>,
        /// Heats that it has spent; none if not known.
        pub heats: Option<u32>,
        /// Time that they spent, at the reference temperature of its plastisol's budget; none if not known.
        pub spent: Option<Shown<Time>>,
    }
}

part! {
    /// A leftover on the shelf.
    pub struct OnShelf {
        /// Its name.
        pub name: String,
        /// The day it was made.
        pub made: Option<String>,
        /// Its mass before the day.
        pub had: Shown<Mass>,
        /// Mass that goes into pots.
        pub used: Shown<Mass>,
        /// Mass that stays on the shelf.
        pub stays: Shown<Mass>,
        /// The pots that it goes into.
        pub pots: Vec<String>,
        /// Data of the embedding program on it.
        #[cfg(feature = "document")]
        pub ext: Option<serde_json::Map<String, serde_json::Value>>,
    }
}

part! {
    needed
    /// One composition of a pot: what goes in, and what is shot.
    pub struct Stage {
        /// Its formulas.
        pub formulas: Vec<String>,
        /// Weigh list of what goes in.
        pub weigh: Vec<Weigh>,
        /// Mass in the pot then.
        pub holds: Shown<Mass>,
        /// Its volume cold and liquid, as the cup shows it.
        pub fills: Shown<Volume>,
        /// Its volume at shot temperature, as the cup shows it.
        pub fills_hot: Shown<Volume>,
        /// Density of the finished plastic.
        pub density: Shown<MassDensity>,
        /// Its standard uncertainty from the weigh lists; none in a pot with a leftover, whose composition is not known that well.
        pub density_uncertainty: Option<Shown<MassDensity>>,
        /// Share of the mix that is solid, by volume.
        pub solids: Shown<Ratio>,
        /// Lowest temperature to shoot at.
        pub shoot_from: Option<Shown<ThermodynamicTemperature>>,
        /// Highest temperature to shoot at.
        pub shoot_to: Option<Shown<ThermodynamicTemperature>>,
        /// The draws.
        pub draws: Vec<Draw>,
        /// Number of heats: one, another for each laminated piece, and reheats where its shots take longer than it stays
        /// hot.
        pub heats: u32,
        /// How it is heated, if the book states an oven.
        pub heating: Option<Calculated<PlannedHeating>>,
        /// Its heats one by one: the shots of each, and the table of each reheat. Only if the book states an oven.
        pub clock: Option<Calculated<Vec<StageHeat>>>,
        /// How often to stir so that salt does not settle, if the book states the grain and the viscosity; else stir
        /// before every load.
        pub stir_every: Option<Shown<Time>>,
        /// Sprues that go back into the pot before the next stage.
        pub sprues_back: Shown<Mass>,
        /// Mass in the pot for the next stage, or left over.
        pub carried: Shown<Mass>,
    }
}

part! {
    needed
    /// One material of a weigh list.
    pub struct Weigh {
        /// Which material.
        pub material: String,
        /// Its kind.
        pub kind: Kind,
        /// When and how it goes in.
        pub add: GoesIn,
        /// Mass needed by the formula.
        pub wanted: Shown<Mass>,
        /// The measure that the formula is written in.
        pub written_in: WrittenIn,
        /// The largest relative error that the shop allows.
        pub tolerance: Shown<Ratio>,
        /// The chosen way: the formula's own measure, or another that is surer.
        pub best: Way,
        /// Caution that no tool keeps the tolerance (code `dose-beyond-bench`): the error of the chosen way, and the amount
        /// from which on a tool would keep it. None if the tolerance is kept.
        pub beyond: Option<Note>,
        /// Its uncertainty.
        pub doubt: Option<Doubt>,
        /// Its uncertainty on the scale, if that keeps the tolerance and another way is chosen.
        pub doubt_weighed: Option<Doubt>,
        /// Ways by the other tools of the bench that keep the tolerance.
        pub others: Vec<Way>,
    }
}

part! {
    /// When and how a material goes into the pot.
    pub struct GoesIn {
        /// Before the pot is heated for the stage, or after it.
        pub when: Adding,
        /// In how many portions, each stirred in before the next.
        pub portions: u32,
        /// Whether the book states it; else common practice for the kind.
        pub stated: bool,
    }
}

part! {
    /// A way to measure a material.
    pub struct Way {
        /// The tool.
        pub tool: Tool,
        /// The measure: `1 tsp + 1/4 tsp`, `40 drops`, `12.4 g`.
        pub measure: String,
        /// Mass that it gives.
        pub gives: Shown<Mass>,
        /// Error of that, as a share of all of the material in the mix.
        pub off: Shown<Ratio>,
    }
}

part! {
    needed
    /// Shots into one mold at one stage.
    pub struct Draw {
        /// The first of the order lines that it is for, counted from 1. None in a plan that was stored before this was in it.
        pub line: Option<u32>,
        /// Which layer of their pieces it makes, counted from 1; none as with `line`.
        pub layer: Option<u32>,
        /// The mold.
        pub mold: String,
        /// The layer's share of the cavity, below 1 in a laminated piece.
        pub share: Shown<Ratio>,
        /// The other pots of a laminated piece, shot at the same time.
        pub together_with: Vec<String>,
        /// Shots needed for the orders.
        pub shots: u32,
        /// Further shots that the rest of the pot gives.
        pub spare_shots: u32,
        /// Injector loads.
        pub loads: u32,
        /// Whole shots in a load.
        pub shots_per_load: u32,
        /// Mass of one shot, sprue included.
        pub per_shot: Shown<Mass>,
        /// Mass of the sprue of one shot.
        pub sprue: Shown<Mass>,
        /// The pieces, by shape.
        pub pieces: Vec<Pieces>,
    }
}

part! {
    needed
    /// The pieces of one shape in a draw.
    pub struct Pieces {
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// Number ordered that this draw is for: its share, in proportion to its shots. The draws of an order add up to it.
        pub ordered: u32,
        /// Number that the shots make.
        pub made: u32,
        /// Mass of this layer of a piece.
        pub weighs: Shown<Mass>,
        /// Its standard uncertainty from cavity and density, if the book states that of the cavity; the feed is not in it.
        pub uncertainty: Option<Shown<Mass>>,
        /// Its minimum: shrunk, with no feed from the sprue.
        pub from: Shown<Mass>,
        /// Its maximum: topped by the sprue for all of its contraction.
        pub to: Shown<Mass>,
        /// Whether the sprue cannot feed the cavity, so that the piece sinks in.
        pub sinks_in: bool,
        /// Flakes in a piece, if the book states their cut and thickness.
        pub flakes: Vec<FlakeCount>,
    }
}

part! {
    /// Shots at one time: by one pot, or by those of a laminated piece together.
    pub struct Work {
        /// The mold.
        pub mold: String,
        /// Number of shots.
        pub shots: u32,
        /// Where they come from, one a layer.
        pub from: Vec<WorkFrom>,
        /// How the pots that are heated for this are heated as one load, if there are several and the book states an oven.
        pub heating: Option<Calculated<PlannedHeating>>,
        /// The shots and the pots that they come from, as a sentence.
        pub text: String,
        /// How several pots become hot at once, each a sentence.
        pub details: Vec<String>,
        /// The details on the other scale, one for each; empty where all are the same.
        #[cfg_attr(feature = "document", serde(default, skip_serializing_if = "Vec::is_empty"))]
        pub other_details: Vec<String>,
    }
}

part! {
    /// A pot at work.
    pub struct WorkFrom {
        /// The pot.
        pub pot: String,
        /// Which of its stages, counted from 1.
        pub stage: u32,
        /// Whether it is heated for this; else it is still hot from the work before.
        pub heat: bool,
    }
}

part! {
    /// Minimum number of pots of a day, and why.
    pub struct Proof {
        /// Number of pots of the plan.
        pub pots: u32,
        /// Minimum of any plan.
        pub least: u32,
        /// Why.
        pub reasons: Vec<ProofReason>,
    }
}

part! {
    /// A reason for a number of pots; those of different bases add up.
    pub struct ProofReason {
        /// Number of pots that it calls for.
        pub pots: u32,
        /// The reason as a sentence, with its numbers.
        pub because: String,
        /// All formulas that it counts.
        pub formulas: Vec<ProofFormula>,
    }
}

part! {
    /// The part of a formula in a reason.
    pub struct ProofFormula {
        /// The formula, by its names.
        pub formula: String,
        /// Pots that it needs for itself, if the reason adds these up.
        pub pots: Option<u32>,
        /// Its numbers: what its shots need, and what a pot gives.
        pub because: String,
    }
}

part! {
    /// How far a material is from its formula.
    pub struct Off {
        /// Which material.
        pub material: String,
        /// The difference, as a share of what the formula needs.
        pub off: Shown<Ratio>,
    }
}

part! {
    /// A mass of a material.
    pub struct MaterialMass {
        /// Which material.
        pub material: String,
        /// Its mass.
        pub mass: Shown<Mass>,
    }
}

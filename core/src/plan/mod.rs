//! A day's pots: which formulas share one, how much each holds, the measures that the bench
//! has, and the sheet to pour from.

mod assign;
mod bits;
pub mod borrowed;
pub mod correction;
pub mod cost;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod cover;
pub mod day;
mod doubt;
pub mod flakes;
mod layout;
#[cfg(feature = "solver")]
pub mod leftover;
mod make;
pub mod mispour;
mod one_or_more;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod order;
pub mod parcel;
mod places;
mod pot;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod precedence;
pub mod process;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod sequence;
pub mod sheet;
pub mod shelf;
#[cfg_attr(not(feature = "internals"), allow(dead_code, unreachable_pub))] // see internals
mod split;
mod step;
pub mod stock;
mod tell;
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

pub use borrowed::Borrowed;
pub use cost::{DayCost, LineCost, MaterialCost, MoneyShown, OrderCost};
pub use doubt::Doubt;
pub use flakes::FlakeCount;
pub use parcel::{Parcel, ParcelItem};
pub use process::{
    Degas, Doing, HeatBand, Heats, PlannedHeating, SinkWater, Sinking, Span, StageHeat, TimeLine,
};
pub use step::{PlanStep, Reading, StepAt, StepItem, StepKind};
pub use stock::StockEntry;

use crate::bench::Tool;
use crate::caution::Caution;
use crate::formula::WrittenIn;
use crate::material::{Adding, Kind};
use crate::quantity::{Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Time, Volume};
use crate::show::{Calculated, Note, Shown, part};

part! {
    /// A day's plan: complete, so that it can be printed as a bench sheet, kept as the day's
    /// record, and made again to the same bits.
    pub struct Plan {
        /// Whose it is.
        pub shop: Option<String>,
        /// The day, as the order list has it.
        pub day: Option<String>,
        /// What a cup and a spoon hold in it.
        pub measures: System,
        /// The order lines, in the order in which they were given.
        pub lines: Vec<PlannedLine>,
        /// The pots, in the order in which they are first heated.
        pub pots: Vec<Pot>,
        /// The order of work over all pots.
        pub work: Vec<Work>,
        /// What a person does, in the order of work.
        pub steps: Vec<PlanStep>,
        /// The day on the clock, where the book states an oven: when each pot is heated and shot, and how long it takes.
        pub clock: Option<Calculated<TimeLine>>,
        /// What each order gets, the first that is due first.
        pub parcels: Vec<Parcel>,
        /// The left-overs of the order list, and what of them is used.
        pub shelf: Vec<OnShelf>,
        /// Materials in stock and what is taken of them; what lasts shortest comes first.
        pub stock: Vec<StockEntry>,
        /// What the day costs, where the book says how to reckon it.
        pub cost: Option<Calculated<DayCost>>,
        /// Why there are not fewer pots.
        pub proof: Proof,
        /// The water that sink rates are told for.
        pub water: Option<SinkWater>,
        /// Numbers that the book does not state, what the plan takes in their place, and which to measure first.
        pub borrowed: Vec<Borrowed>,
        /// What cannot be right in the book, as it seems: to look at before the day begins.
        pub questions: Vec<Note>,
        /// What the plan had to assume, since the book does not say it.
        pub assumptions: Vec<Note>,
        /// What can hurt somebody.
        pub cautions: Vec<Caution>,
    }
}

part! {
    /// What an order line gets.
    pub struct PlannedLine {
        /// The order it belongs to.
        pub order: String,
        /// What is ordered: the product's name, or its formulas.
        pub what: String,
        /// The mold.
        pub mold: String,
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// How many pieces.
        pub pieces: u32,
        /// How many packs, where it is sold by the pack.
        pub packs: Option<u32>,
        /// Pieces in a pack.
        pub pack_of: Option<u32>,
        /// The pots it is shot from.
        pub pots: Vec<String>,
        /// What a piece weighs.
        pub piece: Shown<Mass>,
        /// How it sinks, where the book states a water.
        pub sinks: Option<Calculated<Sinking>>,
        /// The day it was promised for.
        pub promised: Option<String>,
        /// What the embedding program keeps on the line.
        #[cfg(feature = "document")]
        pub ext: Option<serde_json::Map<String, serde_json::Value>>,
    }
}

part! {
    /// One vessel of mix from first measure to last shot.
    pub struct Pot {
        /// Its letter: A, B, ...
        pub pot: String,
        /// Names it by what it is, as the ids of its steps do: stays where other orders come in or a count changes.
        pub id: String,
        /// The cup it is mixed in: what that holds.
        pub cup: Shown<Volume>,
        /// What that cup is called: `2-cup cup`.
        pub cup_name: String,
        /// What is dangerous in it, and what would help.
        pub warnings: Vec<Note>,
        /// How it is degassed, where the book states a vacuum.
        pub degas: Option<Calculated<Degas>>,
        /// What goes in from the shelf before the first stage's weigh list, which is then that of
        /// the rest.
        pub from_shelf: Option<FromShelf>,
        /// What is made in it, one after the other.
        pub stages: Vec<Stage>,
        /// How often it is heated, and what that leaves of its stabilizer.
        pub heats: Heats,
        /// What stays on the cup's wall and in the injector.
        pub lost: Shown<Mass>,
        /// What is left over in the cup after the last shot, its heel among it.
        pub left_over: Shown<Mass>,
        /// What all sprues weigh.
        pub sprues: Shown<Mass>,
    }
}

part! {
    /// What goes into a pot from the shelf.
    pub struct FromShelf {
        /// Which left-overs, by their names.
        pub left_overs: Vec<ShelfPart>,
        /// What they bring of each material.
        pub brings: Vec<MaterialMass>,
        /// How far they take each material from its formula; what is measured fresh is wanted
        /// with that in mind.
        pub off: Vec<Off>,
        /// The most heats that one of them has spent, which the whole pot inherits; none where
        /// that is not known of one.
        pub heats: Option<u32>,
    }
}

part! {
    /// What of a left-over goes into one pot.
    pub struct ShelfPart {
        /// Its name.
        pub name: String,
        /// How much of it, as the balance shows it.
        pub mass: Shown<Mass>,
        /// Heats that it has spent; none where that is not known.
        pub heats: Option<u32>,
        /// What they spent, as time at the reference temperature of its plastisol's budget; none where that
        /// is not known.
        pub spent: Option<Shown<Time>>,
    }
}

part! {
    /// A left-over mix on the shelf.
    pub struct OnShelf {
        /// Its name.
        pub name: String,
        /// The day it was made.
        pub made: Option<String>,
        /// What was there.
        pub had: Shown<Mass>,
        /// What goes into pots.
        pub used: Shown<Mass>,
        /// What stays on the shelf.
        pub stays: Shown<Mass>,
        /// The pots that it goes into.
        pub pots: Vec<String>,
        /// What the embedding program keeps with it.
        #[cfg(feature = "document")]
        pub ext: Option<serde_json::Map<String, serde_json::Value>>,
    }
}

part! {
    /// One composition of a pot: what goes in, and what is shot out.
    pub struct Stage {
        /// Its formulas.
        pub formulas: Vec<String>,
        /// What goes in at this stage.
        pub weigh: Vec<Weigh>,
        /// What the pot then holds.
        pub holds: Shown<Mass>,
        /// Its volume cold and liquid, as the cup shows it.
        pub fills: Shown<Volume>,
        /// Its volume at shot temperature, as the cup shows it.
        pub fills_hot: Shown<Volume>,
        /// Density of the finished plastic.
        pub density: Shown<MassDensity>,
        /// Its standard uncertainty, as measured fresh from the weigh lists.
        pub density_uncertainty: Option<Shown<MassDensity>>,
        /// Share of the mix that is solid, by volume.
        pub solids: Shown<Ratio>,
        /// Lowest temperature to shoot at.
        pub shoot_from: Option<Shown<ThermodynamicTemperature>>,
        /// Highest temperature to shoot at.
        pub shoot_to: Option<Shown<ThermodynamicTemperature>>,
        /// What is shot.
        pub draws: Vec<Draw>,
        /// How often it is heated: once, again for each laminated piece, and again where its shots take longer than
        /// it stays hot.
        pub heats: u32,
        /// How it is heated each time, where the book states an oven.
        pub heating: Option<Calculated<PlannedHeating>>,
        /// Its heats one by one, where the book states an oven: which shots are made in each, and the table of each
        /// reheat.
        pub clock: Option<Calculated<Vec<StageHeat>>>,
        /// How often to stir against the settling of its salt, where the book states the grain and the viscosity; else
        /// it is stirred before every load.
        pub stir_every: Option<Shown<Time>>,
        /// Sprues that go back into the pot before the next stage.
        pub sprues_back: Shown<Mass>,
        /// What is then in the pot for the next stage, or is left over.
        pub carried: Shown<Mass>,
    }
}

part! {
    /// One material of a weigh list.
    pub struct Weigh {
        /// Which material.
        pub material: String,
        /// What it is for.
        pub kind: Kind,
        /// When and how it goes in.
        pub add: GoesIn,
        /// What the formula wants.
        pub wanted: Shown<Mass>,
        /// The measure that the formula is written in.
        pub written_in: WrittenIn,
        /// The largest relative error that the shop accepts.
        pub tolerance: Shown<Ratio>,
        /// The way chosen: the formula's own measure, or another where that is surer.
        pub best: Way,
        /// Why no way keeps the tolerance, and from what amount on one would.
        pub beyond: Option<Note>,
        /// How sure that is.
        pub doubt: Option<Doubt>,
        /// How sure it is on the balance, where the way chosen is another and the balance keeps the tolerance.
        pub doubt_weighed: Option<Doubt>,
        /// The same by the other tools of the bench, where they keep the tolerance.
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
        /// Whether the book says when; else it is common practice for the kind.
        pub stated: bool,
    }
}

part! {
    /// A way to measure a material.
    pub struct Way {
        /// With which tool.
        pub tool: Tool,
        /// What to measure: `1 tsp + 1/4 tsp`, `40 drops`, `12.4 g`.
        pub measure: String,
        /// What that gives.
        pub gives: Shown<Mass>,
        /// How far the material is then off, as a share of all of it that is in the mix.
        pub off: Shown<Ratio>,
    }
}

part! {
    /// What is shot into one mold at one stage.
    pub struct Draw {
        /// The mold.
        pub mold: String,
        /// The layer's share of the cavity, below 1 in a laminated piece.
        pub share: Shown<Ratio>,
        /// Pots that are shot together with this one, for a laminated piece.
        pub together_with: Vec<String>,
        /// Shots that the orders take.
        pub shots: u32,
        /// Shots that the rest of the pot allows beyond that.
        pub spare_shots: u32,
        /// Injector loads.
        pub loads: u32,
        /// Whole shots in a load.
        pub shots_per_load: u32,
        /// What one shot takes.
        pub per_shot: Shown<Mass>,
        /// What stays as sprue at each shot.
        pub sprue: Shown<Mass>,
        /// The pieces, by shape.
        pub pieces: Vec<Pieces>,
    }
}

part! {
    /// The pieces of one shape in a draw.
    pub struct Pieces {
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// How many were ordered.
        pub ordered: u32,
        /// How many the shots make.
        pub made: u32,
        /// What this layer of one weighs.
        pub weighs: Shown<Mass>,
        /// Its standard uncertainty by cavity and density, where the book states how sure the cavity is; how far the
        /// piece is fed comes on top.
        pub uncertainty: Option<Shown<Mass>>,
        /// The least it weighs: fed nothing from the sprue.
        pub from: Shown<Mass>,
        /// The most it weighs: fed all of its contraction.
        pub to: Shown<Mass>,
        /// Whether the sprue cannot feed the cavity, so that the piece sinks in.
        pub sinks_in: bool,
        /// The flakes in one, where the book states their cut and thickness.
        pub flakes: Vec<FlakeCount>,
    }
}

part! {
    /// What is shot at one time: by one pot, or by those of a laminated piece together.
    pub struct Work {
        /// The mold.
        pub mold: String,
        /// How many shots.
        pub shots: u32,
        /// Where they come from, one a layer.
        pub from: Vec<WorkFrom>,
        /// How the pots that are heated for this are heated together as one load, where there are several
        /// and the book states an oven.
        pub heating: Option<Calculated<PlannedHeating>>,
        /// What is shot, and where from, as a sentence.
        pub text: String,
        /// How several pots become hot at once, each a sentence.
        pub details: Vec<String>,
    }
}

part! {
    /// A pot at work.
    pub struct WorkFrom {
        /// The pot.
        pub pot: String,
        /// Which of its stages, counted from 1.
        pub stage: u32,
        /// Whether it is heated for this; else the heat of the work before still serves.
        pub heat: bool,
    }
}

part! {
    /// How many pots a day needs at least, and why.
    pub struct Proof {
        /// How many the plan has.
        pub pots: u32,
        /// No plan has fewer than this.
        pub least: u32,
        /// Why.
        pub reasons: Vec<ProofReason>,
    }
}

part! {
    /// One argument for a number of pots; where bases differ their numbers add up.
    pub struct ProofReason {
        /// How many pots it calls for.
        pub pots: u32,
        /// The argument as a sentence, with its numbers.
        pub because: String,
        /// All formulas that it counts.
        pub formulas: Vec<ProofFormula>,
    }
}

part! {
    /// What one formula adds to an argument.
    pub struct ProofFormula {
        /// The formula, by its names.
        pub formula: String,
        /// Pots that it needs for itself, where the argument adds these up.
        pub pots: Option<u32>,
        /// Its numbers: what its shots take, and what a pot gives of it.
        pub because: String,
    }
}

part! {
    /// How far a material is from its formula.
    pub struct Off {
        /// Which material.
        pub material: String,
        /// By so much, as a share of what the formula wants of it.
        pub off: Shown<Ratio>,
    }
}

part! {
    /// A mass of a material.
    pub struct MaterialMass {
        /// Which material.
        pub material: String,
        /// How much of it.
        pub mass: Shown<Mass>,
    }
}

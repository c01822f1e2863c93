//! A day's pots in quantities and indices, before they are put into words.
//!
//! [`assign`](super::assign) and [`pot`](super::pot) make it; the shelf is written into it; stock, costs, and the heating, sink
//! rates and words of the plan ([`describe`](super::describe)) are read from it. Its parts refer to the book and the day by
//! reference, and to pots by their place.

mod share;
mod work;

use alloc::string::String;
use alloc::vec::Vec;

pub use self::share::ShelfError;
pub(super) use self::work::{note_companions, work};
use super::assign::Layer;
use super::day::DayRecipe;
use super::pot::{LayerShots, OffMarks, PotError, Raised, Shots};
use super::process::Cup as CupToHeat;
use super::shelf::Leftover;
use super::split::Proof;
use super::there::PotThere;
use super::weigh::Listed;
use crate::batch::Loads;
use crate::bench::Cup;
use crate::book::{Book, Cavities, Vessel};
use crate::material::Material;
use crate::mix::MaterialId;
use crate::quantity::{Mass, Ratio, Time};
use crate::show::Note;

/// A day's pots, in the order in which they are first heated.
pub(super) struct Layout<'a> {
    pub(super) pots: Vec<PotLayout<'a>>,
    /// The work, in order.
    pub(super) work: Vec<WorkLayout<'a>>,
    pub(super) proof: Proof,
    /// The stages to serve, as the proof counts them.
    pub(super) layers: Vec<Layer<'a>>,
    /// Pots that were taken apart into one for each stage.
    pub(super) apart: Vec<TakenApart<'a>>,
    /// The leftovers of the order list.
    pub(super) shelf: Vec<ShelfLayout<'a>>,
    /// Ids and letters of the pots.
    pub(super) names: Vec<PotName>,
}

/// What a pot is called.
pub(super) struct PotName {
    /// Made of what it is.
    pub(super) id: String,
    /// A, B, ...
    pub(super) letter: String,
}

/// A pot that the bench could not dose between its stages.
pub(super) struct TakenApart<'a> {
    pub(super) recipes: Vec<&'a DayRecipe<'a>>,
    pub(super) error: PotError,
}

/// A cup that pots are made in.
#[derive(Debug, Clone, Copy)]
pub(super) struct PotCup {
    /// Its place among the cups of the bench.
    pub(super) number: usize,
    pub(super) cup: Cup,
    pub(super) vessel: Vessel,
}

impl PotCup {
    /// Whether its highest mark is its only one.
    pub(super) fn is_unmarked(&self) -> bool {
        self.cup.mark >= self.cup.capacity
    }

    /// The cups of the bench, in their order.
    pub(super) fn all(book: &Book) -> Vec<Self> {
        let vessels = book.vessels.iter().copied().chain(core::iter::repeat(Vessel::default()));
        let cups = book.tools.cups().iter().zip(vessels).enumerate();
        cups.map(|(number, (&cup, vessel))| Self { number, cup, vessel }).collect()
    }
}

/// One pot.
pub(super) struct PotLayout<'a> {
    pub(super) cup: PotCup,
    /// Why it is larger than its orders need.
    pub(super) raised: Option<Raised>,
    /// How its base is measured, if that is not up to a mark.
    pub(super) off_marks: Option<OffMarks>,
    /// The pot, if an earlier plan of the day had it.
    pub(super) there: Option<&'a PotThere>,
    pub(super) from_shelf: ShelfUse<'a>,
    pub(super) stages: Vec<StageLayout<'a>>,
    /// Lost to cup and injector.
    pub(super) lost: Mass,
    /// Left in the cup at the end.
    pub(super) left: Mass,
    /// Sprues that do not go back.
    pub(super) sprues: Mass,
}

impl PotLayout<'_> {
    /// The pot, if something was in it before.
    pub(super) fn begun(&self) -> Option<&PotThere> {
        self.there.filter(|there| there.is_begun())
    }

    /// Number of its heats.
    pub(super) fn heats(&self) -> u32 {
        self.stages.iter().fold(0, |sum, stage| sum.saturating_add(stage.heats))
    }

    /// Whether its stage at `place` is heated from cold.
    fn is_cold_before(&self, place: usize) -> bool {
        place == 0 && !self.there.is_some_and(|there| there.hot)
    }

    /// Its cup as it is heated for the `stage` at `place`, before what goes in `hot` there.
    pub(super) fn to_heat<'l>(
        &self,
        place: usize,
        stage: &StageLayout<'l>,
        hot: &'l [(MaterialId, Mass)],
    ) -> CupToHeat<'l> {
        CupToHeat {
            recipe: stage.recipe,
            mass: stage.held,
            hot,
            vessel: self.cup.vessel.heat_capacity,
            first: self.is_cold_before(place),
        }
    }
}

/// Mix that a pot takes from the shelf.
pub(super) enum ShelfUse<'a> {
    Nothing,
    /// Nothing, because the bench could not measure the rest.
    NotMeasured,
    Takes(FromShelf<'a>),
}

impl<'a> ShelfUse<'a> {
    pub(super) fn takes(&self) -> Option<&FromShelf<'a>> {
        match self {
            Self::Takes(from) => Some(from),
            Self::Nothing | Self::NotMeasured => None,
        }
    }
}

/// The leftovers in a pot.
pub(super) struct FromShelf<'a> {
    /// Each, with its mass.
    pub(super) parts: Vec<(&'a Leftover, Mass)>,
    /// Mass of each material in them.
    pub(super) brings: Vec<(&'a Material, Mass)>,
    /// How far they take each material from its formula.
    pub(super) off: Vec<(&'a Material, Ratio)>,
    /// Heats of the one that was heated most often; `None` if not known of one.
    pub(super) heats: Option<u32>,
}

/// A leftover of the order list, and what goes into pots.
pub(super) struct ShelfLayout<'a> {
    pub(super) left_over: &'a Leftover,
    pub(super) used: Mass,
    /// Places of the pots that it goes into.
    pub(super) pots: Vec<usize>,
}

/// One composition of a pot.
pub(super) struct StageLayout<'a> {
    pub(super) recipe: &'a DayRecipe<'a>,
    pub(super) weigh: Vec<Listed<'a>>,
    pub(super) held: Mass,
    /// Share of solids by volume.
    pub(super) solids: f64,
    pub(super) draws: Vec<DrawLayout<'a>>,
    pub(super) heats: u32,
    /// Its heats by the clock, or why they are not known; `None` if the book states no oven.
    pub(super) clock: Option<Result<Vec<HeatLayout>, Note>>,
    /// Sprues that go back in.
    pub(super) returned: Mass,
    pub(super) carried: Mass,
}

/// One heat of a stage.
pub(super) struct HeatLayout {
    /// Shots of the stage made before it.
    pub(super) after: u32,
    /// Shots made in it.
    pub(super) shots: u32,
    /// Mass in the pot when it begins.
    pub(super) holds: Mass,
    /// From the last burst to the last shot.
    pub(super) lasts: Time,
}

/// Shots of one layer of a batch at one stage.
pub(super) struct DrawLayout<'a> {
    pub(super) of: &'a Shots<'a>,
    pub(super) layer: &'a LayerShots<'a>,
    pub(super) shots: u32,
    /// Further shots that the rest of the pot gives.
    pub(super) spare_shots: u32,
    pub(super) loads: Loads,
    /// Places of the pots that are hot with this one for a laminated piece.
    pub(super) with: Vec<usize>,
    pub(super) pieces: Vec<PieceLayout<'a>>,
}

/// The pieces of one shape in a draw.
pub(super) struct PieceLayout<'a> {
    pub(super) cavities: &'a Cavities,
    pub(super) ordered: u32,
    pub(super) made: u32,
    pub(super) weighs: Mass,
    /// Shrunk (no feed) to topped by the sprue in full.
    pub(super) range: core::ops::RangeInclusive<Mass>,
}

/// Shots made at one time.
pub(super) struct WorkLayout<'a> {
    pub(super) of: &'a Shots<'a>,
    pub(super) shots: u32,
    pub(super) from: Vec<WorkFromLayout>,
}

/// A pot at work.
pub(super) struct WorkFromLayout {
    /// Its place, that of its stage, and that of the stage's draw.
    pub(super) pot: usize,
    pub(super) stage: usize,
    pub(super) draw: usize,
    pub(super) heated: bool,
}

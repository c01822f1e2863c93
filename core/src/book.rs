//! A shop's book, ready for planning: materials, formulas, molds, products, tools and limits.

use alloc::string::String;
use alloc::vec::Vec;

use crate::bench::Bench;
use crate::cost::Costing;
use crate::formula::{Formula, FormulaError, Overlap, Recipe};
use crate::mix::{MaterialId, Materials};
use crate::parameter::Parameter;
use crate::process::atmosphere::StationPressure;
use crate::process::chamber::Chamber;
use crate::process::heat::{self, Precautions};
use crate::process::seawater::Water;
use crate::process::shot_cooling::Section;
use crate::process::sink::{Body, Shape, SinkError, TimedDrop};
use crate::quantity::{
    HeatCapacity, Length, Mass, MassDensity, Measured, Ratio, System, ThermodynamicTemperature,
    Time, Volume,
};
use crate::salt::Hook;
use crate::uncertainty::ToolUncertainty;
use crate::words::words;

/// A shop's book. Its lists are sorted by name, so that the same book gives the same plan
/// however it was written.
#[derive(Debug, Clone, PartialEq)]
pub struct Book {
    /// Whose it is.
    pub shop: Option<String>,
    /// Household measures: the size of a cup, a spoon and a fluid ounce.
    pub system: System,
    /// Height of the shop above sea level.
    pub altitude: Option<Length>,
    /// Pressure of the air in the shop: the barometer's, else the standard one of its altitude.
    pub air: Option<StationPressure>,
    /// The materials.
    pub materials: Materials,
    /// The plastisol that a formula without a base goes into.
    pub default_base: Option<MaterialId>,
    /// The formulas, by name.
    pub formulas: Vec<Formula>,
    /// The molds, by name.
    pub molds: Vec<Mold>,
    /// The products, by name.
    pub products: Vec<Product>,
    /// Balance, spoons and marked cups.
    pub tools: Bench,
    /// How unsure these are.
    pub unsure: ToolUncertainty,
    /// The cups as vessels, in the order of the tools' cups.
    pub vessels: Vec<Vessel>,
    /// The injectors.
    pub injector: Injectors,
    /// The vacuum that pots are degassed in.
    pub chamber: Option<Chamber>,
    /// The oven, as the shop has timed it.
    pub oven: Option<ShopOven>,
    /// How the shop works.
    pub limits: Limits,
    /// How it calculates the cost of a day.
    pub costing: Option<Costing>,
}

/// A mold: what one shot fills.
#[derive(Debug, Clone, PartialEq)]
pub struct Mold {
    /// Name in the book.
    pub name: String,
    /// Its cavities, one entry a shape, by shape.
    pub cavities: Vec<Cavities>,
    /// Volume of the sprue of one shot.
    pub sprue: Volume,
    /// Share f of a cavity's contraction that it draws from the sprue; `None`: not known.
    pub feed: Option<f64>,
    /// Share φ of air in the shot plastic.
    pub voids: f64,
    /// Share of pieces that are not fit to sell, where it differs from the shop's.
    pub rejects: Option<f64>,
    /// Mass added to each shot by topping off and holding.
    pub top: Mass,
    /// Hook and weight on a piece.
    pub hook: Hook,
    /// How many such molds there are, shot in turn.
    pub count: u32,
    /// Time from the shot until the piece can be taken out, as the shop has seen it.
    pub sets: Option<Time>,
    /// Time at hand for a shot.
    pub per_shot: Option<Time>,
    /// The thickest part of its pieces, if it is stated or their bodies show it.
    pub section: Option<Section>,
    /// How a shot cools in it.
    pub cooling: Option<MoldCooling>,
}

/// How a shot cools in a metal mold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MoldCooling {
    /// The thickest part of a piece.
    pub section: Section,
    /// Temperature of the mold when it is shot.
    pub at: ThermodynamicTemperature,
    /// Temperature of a piece, at its center, at which it is taken out.
    pub take_out: ThermodynamicTemperature,
    /// Heat capacity of the mold; `None`: so large that a shot does not warm it.
    pub heat_capacity: Option<HeatCapacity>,
}

/// The cavities of one shape.
#[derive(Debug, Clone, PartialEq)]
pub struct Cavities {
    /// The shape, in a mold with unlike cavities.
    pub shape: Option<String>,
    /// How many.
    pub count: u32,
    /// Volume of one.
    pub volume: Measured<Volume>,
    /// Body of a piece of it, for how it sinks.
    pub body: Option<PieceBody>,
}

/// Body of a piece, for how it sinks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct PieceBody {
    /// Its shape.
    pub shape: Shape,
    /// A drop of such a piece, which gives its own drag.
    pub drop: Option<SeenDrop>,
}

/// A drop of a piece with its hook that the shop has timed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SeenDrop {
    /// How far it fell, and how long that took.
    pub drop: TimedDrop,
    /// Density of the piece, its salt and voids counted.
    pub density: MassDensity,
    /// The water that it fell in; `None`: the one that its sink rate is shown for.
    pub water: Option<Water>,
}

impl PieceBody {
    /// A piece of `volume` with `hook` and, where a drop was timed, its own drag; `water` is the one that its fall is
    /// shown for.
    ///
    /// # Errors
    /// Those of [`Body::with_drop`].
    pub fn of(&self, volume: Volume, hook: Hook, water: &Water) -> Result<Body, SinkError> {
        let body = Body::new(volume, self.shape).with_hook(hook);
        match &self.drop {
            None => Ok(body),
            Some(seen) => {
                body.with_drop(seen.density, &seen.drop, seen.water.as_ref().unwrap_or(water))
            }
        }
    }
}

/// A mold and what is shot into it.
#[derive(Debug, Clone, PartialEq)]
pub struct Product {
    /// Name in the book.
    pub name: String,
    /// Index among the book's molds.
    pub mold: usize,
    /// One layer, or those of a laminated piece.
    pub layers: Vec<Layer>,
}

/// One color of a piece.
#[derive(Debug, Clone, PartialEq)]
pub struct Layer {
    /// Indices among the book's formulas.
    pub formulas: Vec<usize>,
    /// Its share of the cavity and the sprue; the shares of a piece sum to 1.
    pub share: f64,
    /// Rule for two of its formulas that dose the same material.
    pub overlap: Overlap,
}

/// A cup: the mix that it keeps back, its size and its heat capacity.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Vessel {
    /// Mass that stays on its wall when it has been poured out.
    pub film: Mass,
    /// Mass that cannot be drawn from its bottom.
    pub heel: Mass,
    /// Its volume to the brim.
    pub brim: Option<Volume>,
    /// Its own heat capacity; zero where that is left to the oven's timings.
    pub heat_capacity: HeatCapacity,
}

/// The brim of a cup above its highest mark, where the book does not state it: measuring cups hold a fifth more.
/// Common practice, no source.
const USUAL_BRIM: f64 = 1.2;

/// How full a cup of hot mix may be, of what it holds to its brim: the rest is for stirring and carrying. Common
/// practice, no source.
const HOT_FULL: f64 = 0.95;

impl Vessel {
    /// The volume that a hot mix may fill: 95 % up to the brim, which is taken a fifth above its `highest_mark` where the
    /// book does not state it. Plastisol swells by a tenth on its way to shot temperature.
    #[must_use]
    pub fn hot_room(&self, highest_mark: Volume) -> Volume {
        self.brim.unwrap_or(highest_mark * USUAL_BRIM) * HOT_FULL
    }
}

/// The injectors: alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Injectors {
    /// Capacity of one.
    pub holds: Volume,
    /// Volume that stays in it and is lost at each cleaning or cold stop.
    pub keeps: Volume,
    /// Number of them.
    pub count: u32,
}

/// The oven that pots are heated in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShopOven {
    /// The oven by its timings, or by its rated power as a first guess.
    pub timed: heat::Oven,
    /// How careful to be: the thermometer, and what a hand can set.
    pub precautions: Precautions,
    /// Reading of a pot that goes back for a reheat, additions stirred in.
    pub reheat_from: Option<ThermodynamicTemperature>,
    /// How long a pot stays hot at one heat, from the last burst to the last shot.
    pub hot_for: Option<Time>,
    /// How a pot was watched to cool.
    pub cools: Option<heat::Cooling>,
    /// Temperature of the room that pots cool in.
    pub room: ThermodynamicTemperature,
}

/// The water that the shop's pieces are fished in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FishedWater {
    /// Its temperature.
    pub temperature: ThermodynamicTemperature,
    /// Absolute salinity, mass of salt per mass of water.
    pub salinity: Ratio,
    /// Its density and viscosity.
    pub water: Water,
}

words! {
    /// Use of the sprues.
    pub enum Sprues {
        /// They are kept as left-over.
        Keep = "keep",
        /// They go back into the pot while it is hot, which is one more heat.
        MeltAgain = "melt-again",
    }
}

/// How the shop works.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits {
    /// Share of pieces that are not fit to sell, 0 unless stated.
    pub rejects: f64,
    /// Confidence that enough good pieces come out, 90 % unless stated
    /// (common practice, no source).
    pub confidence: f64,
    /// Largest relative error of a dose, 5 % unless stated (common practice, no source).
    pub tolerance: f64,
    /// Most solids in a mix by true volume, 30 % unless stated (common practice, no source).
    pub solids: f64,
    /// How full a cup may be, as a share of its volume to the highest mark. Default: all of it.
    pub most_full: f64,
    /// The smallest volume that the oven heats evenly.
    pub least_pot: Option<Volume>,
    /// Use of the sprues. Default: they are kept.
    pub sprues: Sprues,
    /// Heats that the stabilizer allows a pot; `None`: not known.
    pub heats: Option<u32>,
    /// Whether base may be added to a pot that has been drawn from; no unless stated.
    pub fresh_base: bool,
    /// The water to show sink rates for.
    pub water: Option<FishedWater>,
}

impl Default for Limits {
    fn default() -> Self {
        Self {
            rejects: 0.0,
            confidence: Parameter::Confidence.default_si(),
            tolerance: Parameter::Tolerance.default_si(),
            solids: Parameter::MostSolids.default_si(),
            most_full: 1.0,
            least_pot: None,
            sprues: Sprues::Keep,
            heats: None,
            fresh_base: false,
            water: None,
        }
    }
}

impl Book {
    /// The recipe that formulas of the book come to together, with its materials, measures and default base.
    pub(crate) fn combined(
        &self,
        formulas: &[&Formula],
        overlap: Overlap,
    ) -> Result<Recipe, FormulaError> {
        Recipe::combine(formulas, overlap, self.default_base, &self.materials, self.system)
    }

    /// Index of the formula named `name`.
    #[must_use]
    pub fn find_formula(&self, name: &str) -> Option<usize> {
        self.formulas.binary_search_by(|formula| formula.name.as_str().cmp(name)).ok()
    }

    /// Index of the mold named `name`.
    #[must_use]
    pub fn find_mold(&self, name: &str) -> Option<usize> {
        self.molds.binary_search_by(|mold| mold.name.as_str().cmp(name)).ok()
    }

    /// Index of the product named `name`.
    #[must_use]
    pub fn find_product(&self, name: &str) -> Option<usize> {
        self.products.binary_search_by(|product| product.name.as_str().cmp(name)).ok()
    }
}

//! The book: a shop's materials, formulas, molds, products, tools and limits, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use serde_json::Value;

use super::color::{ColorEntry, LetDownEntry, OverBackingsEntry, StrengthEntry};
use super::costing::CostingEntry;
use super::process::{
    BodyEntry, BudgetEntry, BuysEntry, CutText, FishedWaterEntry, HookEntry, MoldCoolingEntry,
    OvenEntry, ToolUncertaintyEntry, VacuumEntry,
};
use super::written::{Altitude, Percent, Share, Sourced, Written};
use crate::book::Sprues;
use crate::fault::Fault;
use crate::formula::Overlap;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::reader::{Name, Node, Read, deserialize_by_reading};
use crate::material::{Adding, Kind};
use crate::quantity::{
    Amount, DynamicViscosity, Length, Mass, MassDensity, MolarEnergy, Pressure,
    SpecificHeatCapacity, System, TemperatureCoefficient, ThermodynamicTemperature, Time, Volume,
};
use crate::words::words;

words! {
    /// The format of the documents and its version. A minor version only adds.
    pub enum Format {
        /// Version 1.0.
        V1 = "pourwright/1.0",
    }
}

entry! {
    /// A shop's book.
    pub struct BookDocument {
        required {
            /// The format and its version. Example: `"pourwright/1.0"`.
            format: Format,
            /// The measuring system: how much a cup, a spoon and a fluid ounce hold. Example: `"us-customary"`.
            measures: System,
            /// Materials by name.
            materials: Named<MaterialEntry>,
            /// Formulas by name.
            formulas: Named<FormulaEntry>,
            /// Molds by name.
            molds: Named<MoldEntry>,
            /// The tools on the bench.
            bench: BenchEntry,
        }
        optional {
            /// Whose book it is. Default: none. Example: `"Tern Island workshop"`.
            shop: Name,
            /// Anything a reader should know about the book. Default: none. Example: `"Prices of March 2027."`.
            about: String,
            /// Height of the shop above sea level, negative below it. Default: not known. Example: `"640 m"`.
            altitude: Altitude,
            /// Reading of a barometer in the shop, not reduced to sea level. Default: the standard pressure at
            /// `altitude`; not known without one. Example: `"27.7 inHg"`.
            station_pressure: Written<Pressure>,
            /// Plastisol of formulas that name no base. Default: none. Example: `"clear-base"`.
            default_base: Name,
            /// Products by name: a mold and what is shot into it. Default: none.
            products: Named<ProductEntry>,
            /// How the shop works. Default: that of each field.
            limits: LimitsEntry,
            /// How to calculate what a day costs. Default: plans show no costs.
            costing: CostingEntry,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// A material. Omit what you do not know; a calculation that needs it says so.
    pub struct MaterialEntry {
        required {
            /// Purpose of the material. Example: `"plastisol"`.
            kind: Kind,
        }
        optional {
            /// Row of the starter table that fills in the properties omitted here. Default: none. Example:
            /// `"sodium-chloride"`.
            like: Name,
            /// True density at 20 °C; of a plastisol, that of the liquid. Default: not known. Example:
            /// `"1.03 g/mL ± 0.01"`.
            density: Sourced<MassDensity>,
            /// Density of the fused plastisol at 20 °C. Default: `density`, and results say so. Example:
            /// `"1.042 g/mL ± 0.008"`.
            fused: Sourced<MassDensity>,
            /// Density of the powder in a level spoon; pearl, flake and salt need it to be measured by spoon. Default:
            /// not known; a powder is then weighed. Example: `"1.22 g/mL ± 0.06"`.
            as_scooped: Sourced<MassDensity>,
            /// Mass or volume of one drop from the shop's bottle. Default: 0.05 mL (20 drops per mL, pharmacy
            /// practice), and less sure. Example: `"0.044 g ± 0.003"`.
            drop: SourcedDrop,
            /// Thermal expansion by volume, per kelvin. Default: none, so that shots come out a little heavy, and
            /// results say so. Example: `"6.5e-4 1/K"`.
            expansion: Sourced<TemperatureCoefficient>,
            /// Specific heat; with `specific_heat_rise`, that at 25 °C. Default: that of the rest of the pot; required
            /// of the plastisol that the oven was timed with. Example: `"1.9 J/(g.K)"`.
            specific_heat: Sourced<SpecificHeatCapacity>,
            /// Rise of the specific heat per kelvin, as a share of that at 25 °C. Default: 0 1/K, constant. Example:
            /// `"0.0012 1/K"`.
            specific_heat_rise: Sourced<TemperatureCoefficient>,
            /// Of a plastisol: lowest and highest viscosity at shot temperature; how fast salt settles needs it.
            /// Default: not known. Example: `["0.3 Pa.s", "3 Pa.s"]`.
            viscosity: (Written<DynamicViscosity>, Written<DynamicViscosity>),
            /// Of a salt: the opening of a sieve that its grains just pass; how fast it settles needs it. Default: not
            /// known. Example: `"0.3 mm"`.
            grain: Sourced<Length>,
            /// Lowest and highest temperature at which it is shot. Default: not known; shots are then calculated at 20
            /// °C, and results say so. Example: `["325 °F", "350 °F"]`.
            shot_window: (Written<ThermodynamicTemperature>, Written<ThermodynamicTemperature>),
            /// Activation energy of its decay in the heat, with its source; the heat used needs it. Default: not known.
            /// Example: `{ "value": "135 kJ/mol", "source": "supplier's sheet" }`.
            activation_energy: Sourced<MolarEnergy>,
            /// Of a plastisol: the heat that it withstands. Default: not known.
            budget: BudgetEntry,
            /// Of a stabilizer: the heat that more of it buys. Default: none.
            buys: BuysEntry,
            /// Of a flake: its cut. Default: not known. Example: `".035 hex"`.
            cut: CutText,
            /// Of a flake: thickness of its film. Default: not known. Example: `"50 um"`.
            thickness: Written<Length>,
            /// Price per package. Default: not known. Example: `"58.00 USD per 1 gal"`.
            price: PriceText,
            /// When it goes into the pot: `"cold"`, before the pot is heated, or `"hot"`, after it. Default: by kind
            /// (common practice, no source), salt, flake and scent hot, all else cold. Example: `"hot"`.
            add: Adding,
            /// Largest relative error of a dose of it. Default: `tolerance` of the limits. Example: `"2 %"`.
            tolerance: Percent,
            /// Largest dose of it that does no harm, per amount of base: in a pot that came out wrong, more than the
            /// formula's is no fault up to it. Default: none; a surplus counts as a fault. Example: `"3 tsp per 1 cup"`.
            most: MostText,
            /// Of a softener or hardener: readings of the shop's own pieces by how much of it is in them. Default: not known;
            /// how much to add to a pot that is too thick or too soft is then not calculated.
            hardness: MeasuredHardnessEntry,
            /// Of a plastisol: color of a test piece of it alone, thick enough to hide what is behind it. Default: not known;
            /// colors are then not calculated in it.
            color: ColorEntry,
            /// Of a plastisol: a thin test piece of it alone over white and over black; colors of translucent pieces are calculated
            /// with it. Default: not known; all pieces are then taken to be opaque.
            over_backings: OverBackingsEntry,
            /// Of a colorant: whether it glows in daylight. It is then outside of the model of colors, with or without test
            /// pieces. Default: `false`. Example: `true`.
            fluorescent: bool,
            /// Of a colorant: its test pieces, at two or more doses, each in the base that the book has by default. Default: none;
            /// it is then not in the calculation of colors.
            let_downs: Vec<LetDownEntry>,
            /// Of a colorant: its strength as pots have shown it, next to its test pieces; "color-next" offers it. Default: 1 ± 10 %
            /// in all, ± 5 % of each (common practice, no source).
            strength: StrengthEntry,
            /// Its full name. Default: none. Example: `"clear plastisol, medium"`.
            name: String,
            /// Anything worth keeping with it. Default: none. Example: `"Shake; the pigment settles."`.
            notes: String,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// Readings of the shop's own pieces by how much of a softener or hardener is in them.
    pub struct MeasuredHardnessEntry {
        required {
            /// The scale of the readings: `"shore-00"`, `"shore-a"`, or a name of the shop's own. Example: `"squeeze, 1 soft to 5 stiff"`.
            scale: Name,
            /// The measured points, by rising ratio; two at least, the readings rising or falling all the way.
            points: Vec<MeasuredPointEntry>,
        }
        optional {
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// A reading.
    pub struct MeasuredPointEntry {
        required {
            /// Softener or hardener in the piece, by mass of base. Example: `"5 %"`.
            point_ratio: Share,
            /// The reading, 0 to 100. Example: `4`.
            point_hardness: f64,
        }
        optional {}
    }
}

/// One drop: a mass or a volume.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum SourcedDrop {
    /// Its mass.
    Mass(Sourced<Mass>),
    /// Its volume.
    Volume(Sourced<Volume>),
}

impl Read for SourcedDrop {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let mut of_volume = Vec::new();
        if let Some(volume) = Sourced::read(node, &mut of_volume) {
            faults.append(&mut of_volume);
            return Some(Self::Volume(volume));
        }
        Sourced::read(node, faults).map(Self::Mass)
    }
}

/// A price per package, as text.
#[derive(Debug, Clone, PartialEq)]
pub struct PriceText(pub crate::price::Price);

impl serde::Serialize for PriceText {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.0)
    }
}

/// The largest dose of a material that does no harm, as text.
#[derive(Debug, Clone, PartialEq)]
pub struct MostText(pub crate::material::MostDose);

impl serde::Serialize for MostText {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(&self.0)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for MostText {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        "MostDose".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "A dose per amount of base, such as \"3 tsp per 1 cup\", or a share of it, such as \"4 % of base\".",
        })
    }
}

impl Read for MostText {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let text = String::read(node, faults)?;
        super::written::keep(text.parse(), node, faults).map(Self)
    }
}

deserialize_by_reading! { SourcedDrop; PriceText; MostText; BaseEntry; CavitiesEntry; CavityVolume; }

#[cfg(feature = "schema")]
impl schemars::JsonSchema for PriceText {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        "Price".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "Money per package, such as \"58.00 USD per 1 gal\".",
        })
    }
}

impl Read for PriceText {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let text = String::read(node, faults)?;
        super::written::keep(text.parse(), node, faults).map(Self)
    }
}

impl<A: Read, B: Read> Read for (A, B) {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let Some([first, second]) = node.value.as_array().map(Vec::as_slice) else {
            faults.push(node.mismatch("a list of two: [ lowest, highest ]"));
            return None;
        };
        let first = A::read(&node.item(0, first), faults);
        let second = B::read(&node.item(1, second), faults);
        Some((first?, second?))
    }
}

entry! {
    /// A formula: doses per amount of base.
    pub struct FormulaEntry {
        required {
            /// Doses by material, as you measure them. Example: `{ "plum": "32 drops", "teal-flake": "1/2 tsp" }`.
            doses: Named<Amount>,
        }
        optional {
            /// Amount of base that the doses are for. Default: none; required unless every dose is a per cent. Example:
            /// `"1 cup"`.
            per: Amount,
            /// The base: a plastisol, or a blend of plastisols with an amount each,
            /// `{ "soft": "3 cup", "hard": "1 cup" }`. Default: that of the formulas it is combined with, else
            /// `default_base`. Example: `"clear-base"`.
            base: BaseEntry,
            /// Color that a piece of it had. Default: not known.
            color: ColorEntry,
            /// Anything worth keeping with it. Default: none. Example: `"The unsalted body."`.
            notes: String,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

/// The base of a formula.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum BaseEntry {
    /// One plastisol.
    One(Name),
    /// A blend, each plastisol with an amount.
    Blend(Named<Amount>),
}

impl Read for BaseEntry {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::String(_) => Name::read(node, faults).map(Self::One),
            Value::Object(_) => Named::read(node, faults).map(Self::Blend),
            _ => {
                faults.push(node.mismatch(
                    "the name of a plastisol, or a blend: { \"soft\": \"3 cup\", \"hard\": \"1 cup\" }",
                ));
                None
            }
        }
    }
}

entry! {
    /// A mold: what one shot fills.
    pub struct MoldEntry {
        required {
            /// Number of like cavities, or unlike ones by shape. Example: `4`.
            cavities: CavitiesEntry,
        }
        optional {
            /// Volume of one cavity, or the water that it holds: `{ "water": "9.47 g", "at": "22 °C" }`. Default: none;
            /// required unless the cavities are unlike. Example: `"9.5 mL ± 0.1"`.
            cavity: CavityVolume,
            /// Volume of the sprue of one shot. Default: 0 mL. Example: `"6 mL"`.
            sprue: Written<Volume>,
            /// Share of its contraction that a piece draws from the sprue while it cools. Default: not known; a piece
            /// then has a range of weights. Example: `"60 %"`.
            feed: Percent,
            /// Share of air in the shot plastic. Default: 0 %. Example: `"1 %"`.
            voids: Percent,
            /// Share of pieces that are not fit to sell. Default: `rejects` of the limits. Example: `"5 %"`.
            rejects: Percent,
            /// Mass that topping off and holding add to each shot. Default: 0 g. Example: `"0.5 g"`.
            top: Written<Mass>,
            /// Shape of a piece, for its sink rate; unlike cavities each state their own. Default: not known; no sink
            /// rate is shown.
            body: BodyEntry,
            /// Hook and weight on a piece. Default: none.
            hook: HookEntry,
            /// Number of such molds, shot in turn. Default: 1. Example: `2`.
            count: u32,
            /// Time from the shot until the piece can be taken out, as the shop has seen it. Default: from `cooling`.
            /// Example: `"4 min"`.
            sets: Written<Time>,
            /// Time at hand for a shot: fill, shoot, top off, take out. Default: `per_shot` of the costing. Example:
            /// `"40 s"`.
            per_shot: Written<Time>,
            /// How a shot cools in it, if `sets` is not stated. Default: not known.
            cooling: MoldCoolingEntry,
            /// Anything worth keeping with it. Default: none. Example: `"A straight worm of five inches."`.
            notes: String,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

/// The cavities of a mold.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum CavitiesEntry {
    /// A number of like ones.
    Like(u32),
    /// Unlike ones, by shape.
    Unlike(Named<CavityEntry>),
}

impl Read for CavitiesEntry {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Number(_) => u32::read(node, faults).map(Self::Like),
            Value::Object(_) => Named::read(node, faults).map(Self::Unlike),
            _ => {
                faults.push(node.mismatch(
                    "a number of cavities, or unlike ones by shape: { \"long\": { \"count\": 2, \"cavity\": \"9.5 mL\" } }",
                ));
                None
            }
        }
    }
}

entry! {
    /// The cavities of one shape in a mold with unlike ones.
    pub struct CavityEntry {
        required {
            /// Number of them. Example: `2`.
            count: u32,
            /// Volume of one, or the water that it holds. Example: `"8.8 mL"`.
            cavity: CavityVolume,
        }
        optional {
            /// Shape of a piece, for its sink rate. Default: not known; no sink rate is shown.
            body: BodyEntry,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

/// The volume of a cavity, stated or weighed with water.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum CavityVolume {
    /// By the water that it holds.
    Water(alloc::boxed::Box<WaterEntry>),
    /// Stated.
    Volume(Written<Volume>),
}

entry! {
    /// The water that a cavity holds, weighed in air.
    pub struct WaterEntry {
        required {
            /// Reading of the scale. Example: `"10.82 g ± 0.1"`.
            water: Written<Mass>,
            /// Temperature of the water. Example: `"22 °C"`.
            at: Written<ThermodynamicTemperature>,
        }
        optional {}
    }
}

impl Read for CavityVolume {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Object(fields) if !fields.contains_key("unit") => {
                WaterEntry::read(node, faults).map(|water| Self::Water(water.into()))
            }
            _ => Written::read(node, faults).map(Self::Volume),
        }
    }
}

entry! {
    /// A product: a mold and the plastic that is shot into it. It has either `formulas` or `layers`.
    pub struct ProductEntry {
        required {
            /// The mold. Example: `"finger-5"`.
            mold: Name,
        }
        optional {
            /// Formulas of a piece of one color: a color and a body. Default: none; required without `layers`. Example:
            /// `["dusk", "salted"]`.
            formulas: Vec<Name>,
            /// Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
            overlap: Overlap,
            /// Layers of a laminated piece. Default: none; required without `formulas`.
            layers: Vec<LayerEntry>,
            /// Anything worth keeping with it. Default: none. Example: `"Sold in bags of ten."`.
            notes: String,
        }
    }
}

entry! {
    /// One color of a laminated piece.
    pub struct LayerEntry {
        required {
            /// Its formulas: a color and a body. Example: `["reed", "plain"]`.
            formulas: Vec<Name>,
            /// Its share of the cavity and the sprue; the shares of a piece add up to 100 %. Example: `"60 %"`.
            share: Percent,
        }
        optional {
            /// Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
            overlap: Overlap,
        }
    }
}

entry! {
    /// The tools on the bench.
    pub struct BenchEntry {
        required {
            /// Cups to mix and heat a pot in; at least one.
            cups: Vec<CupEntry>,
            /// The injector.
            injector: InjectorEntry,
        }
        optional {
            /// The scale. Default: none; nothing is then weighed.
            balance: BalanceEntry,
            /// Level spoons, by volume. Default: none. Example: `["1 tbsp", "1 tsp", "1/2 tsp"]`.
            spoons: Vec<Written<Volume>>,
            /// Largest number of drops that you still count. Default: 60. Example: `40`.
            most_drops: u32,
            /// The vacuum that pots are degassed in. Default: not known; no degassing step is shown.
            vacuum: VacuumEntry,
            /// The oven, by the shop's own timings. Default: not known; no heating times are shown.
            oven: OvenEntry,
            /// How unsure the tools are. Default: that of each field.
            uncertainty: ToolUncertaintyEntry,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// A cup.
    pub struct CupEntry {
        required {
            /// Volume up to its highest mark. Example: `"2 cup"`.
            holds: Written<Volume>,
        }
        optional {
            /// Step between its marks. Default: only the highest mark is used. Example: `"1/4 cup"`.
            marks: Written<Volume>,
            /// Mass that stays on its wall when it has been poured out. Default: 0 g. Example: `"5 g"`.
            film: Written<Mass>,
            /// Mass that cannot be drawn from its bottom, the film included. Default: 0 g. Example: `"2 g"`.
            heel: Written<Mass>,
            /// Volume up to its brim, above its highest mark; how full it may be under vacuum needs it, and a hot mix
            /// fills at most 95 % of it. Default: not known; for a hot mix, a fifth more than `holds`. Example:
            /// `"590 mL"`.
            brim: Written<Volume>,
            /// Mass of the empty cup. State it for all cups and timings or for none. Default: its own heat is part of
            /// the oven's timings. Example: `"180 g"`.
            mass: Written<Mass>,
            /// Specific heat of the cup. Default: none; required with `mass`. Example: `"0.84 J/(g.K)"`.
            specific_heat: Written<SpecificHeatCapacity>,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// The injectors: all alike.
    pub struct InjectorEntry {
        required {
            /// Largest volume that one takes up. Example: `"4 fl oz"`.
            holds: Written<Volume>,
        }
        optional {
            /// Volume that stays in it and is lost at each cleaning or cold stop. Default: 0 mL. Example: `"4 mL"`.
            keeps: Written<Volume>,
            /// Number of injectors; a laminate of two layers needs two. Default: 1. Example: `2`.
            count: u32,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// A scale.
    pub struct BalanceEntry {
        required {
            /// Step of its display. Example: `"0.1 g"`.
            reads: Written<Mass>,
        }
        optional {
            /// Smallest load that it weighs. Default: one step. Example: `"0.5 g"`.
            from: Written<Mass>,
            /// Largest load that it weighs. Default: 5000 steps. Example: `"500 g"`.
            to: Written<Mass>,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// How the shop works.
    pub struct LimitsEntry {
        required {}
        optional {
            /// Share of pieces that are not fit to sell. Default: 0 %. Example: `"3 %"`.
            rejects: Percent,
            /// Confidence that enough good pieces come out. Default: 90 % (common practice, no source). Example:
            /// `"95 %"`.
            confidence: Percent,
            /// Largest relative error of a dose, unless its material states another. Default: 5 % (common practice, no
            /// source). Example: `"3 %"`.
            tolerance: Percent,
            /// Largest share of solids in a mix, by true volume. Default: 30 % (common practice, no source). Example:
            /// `"20 %"`.
            solids: Percent,
            /// How full a cup may be, as a share of what it holds to its highest mark. Default: 100 %. Example:
            /// `"80 %"`.
            most_full: Percent,
            /// Smallest pot that the oven heats evenly. Default: no limit. Example: `"1/2 cup"`.
            least_pot: Written<Volume>,
            /// Use of the sprues. Default: `"keep"`. Example: `"melt-again"`.
            sprues: Sprues,
            /// Number of heats that the stabilizer allows a pot. Default: not limited. Example: `3`.
            heats: u32,
            /// Whether base may be added to a pot that has been drawn from. Default: `false`. Example: `true`.
            fresh_base: bool,
            /// Water to calculate sink rates in. Default: none; no sink rates are shown.
            water: FishedWaterEntry,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

crate::json::read_back::or_null! { FormulaEntry; }

impl crate::json::read_back::ReadBack for FormulaEntry {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let nothing = || Self {
            doses: Default::default(),
            per: None,
            base: None,
            color: None,
            notes: None,
            sure: None,
            ext: None,
        };
        Self::read(node, faults).unwrap_or_else(nothing)
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::json;

    use super::*;
    use crate::json::reader::read_value;

    #[rstest]
    #[case(json!("0.044 g"), true)]
    #[case(json!({ "value": "0.044 g ± 0.003", "source": "50 drops" }), true)]
    #[case(json!("0.04 mL"), false)]
    #[case(json!({ "value": 0.04, "unit": "mL" }), false)]
    fn a_drop_is_a_mass_or_a_volume(#[case] value: Value, #[case] mass: bool) {
        let read: SourcedDrop = read_value(&value).unwrap();
        assert_eq!(matches!(read, SourcedDrop::Mass(_)), mass);
        assert_eq!(read, serde_json::from_value(serde_json::to_value(&read).unwrap()).unwrap());
    }

    #[test]
    fn a_drop_that_is_neither_asks_for_a_mass() {
        let faults = read_value::<SourcedDrop>(&json!("3 K")).unwrap_err();
        assert_eq!(faults.count(), 1, "{faults}");
    }

    #[rstest]
    #[case(json!({ "value": "0.04 mL", "from": "the label" }))]
    #[case(json!({ "value": "0.044 g", "from": "the label" }))]
    fn a_drop_has_no_field_that_nobody_knows(#[case] value: Value) {
        let faults = read_value::<SourcedDrop>(&value).unwrap_err();
        let found: Vec<_> = faults.iter().map(|fault| (&*fault.code, &*fault.path)).collect();
        assert_eq!(found, [("unknown-field", "/from")]);
    }

    #[rstest]
    #[case(json!("9.5 mL"), true)]
    #[case(json!({ "value": 9.5, "unit": "mL" }), true)]
    #[case(json!({ "water": "9.47 g", "at": "22 °C" }), true)]
    #[case(json!({ "water": "9.47 g" }), false)]
    #[case(json!({ "water": "9.47 mL", "at": "22 °C" }), false)]
    #[case(json!("9.5 g"), false)]
    #[case(json!([]), false)]
    fn a_cavity_is_a_volume_or_its_water(#[case] value: Value, #[case] good: bool) {
        assert_eq!(read_value::<CavityVolume>(&value).is_ok(), good);
        assert_eq!(serde_json::from_value::<CavityVolume>(value).is_ok(), good);
    }

    #[rstest]
    #[case(json!("clear"), true)]
    #[case(json!({ "soft": "3 cup", "hard": "1 cup" }), true)]
    #[case(json!({ "soft": 3 }), false)]
    #[case(json!(["soft"]), false)]
    fn a_base_is_one_or_a_blend(#[case] value: Value, #[case] good: bool) {
        assert_eq!(read_value::<BaseEntry>(&value).is_ok(), good);
    }

    #[rstest]
    #[case(json!(["325 °F", "350 °F"]), 0)]
    #[case(json!(["325 °F"]), 1)]
    #[case(json!(["325 °F", "350 °F", "360 °F"]), 1)]
    #[case(json!(["325 g", "350"]), 2)]
    fn a_window_has_two_ends(#[case] window: Value, #[case] faults: usize) {
        let entry = json!({ "kind": "plastisol", "shot_window": window });
        let read = read_value::<MaterialEntry>(&entry);
        assert_eq!(read.map_or_else(|faults| faults.count(), |_| 0), faults);
    }

    #[test]
    fn only_this_version_is_read() {
        assert_eq!(read_value::<Format>(&json!("pourwright/1.0")), Ok(Format::V1));
        assert!(read_value::<Format>(&json!("pourwright/2.0")).is_err());
    }
}

//! The book: a shop's materials, formulas, molds, products, tools and limits, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use serde_json::Value;

use super::costing::CostingEntry;
use super::process::{
    BodyEntry, BudgetEntry, BuysEntry, CutText, FishedWaterEntry, HookEntry, MoldCoolingEntry,
    OvenEntry, ToolUncertaintyEntry, VacuumEntry,
};
use super::written::{Percent, Sourced, Written};
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
            /// The format and its version.
            format: Format,
            /// What a cup, a spoon and a fluid ounce hold.
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
            /// Whose book it is.
            shop: Name,
            /// Anything a reader should know of it.
            about: String,
            /// Height of the shop above sea level.
            altitude: Written<Length>,
            /// What a barometer shows in the shop, not reduced to sea level.
            air_pressure: Written<Pressure>,
            /// The plastisol that a formula without a base goes into.
            default_base: Name,
            /// Products by name: a mold and what is shot into it.
            products: Named<ProductEntry>,
            /// How the shop works.
            limits: LimitsEntry,
            /// How it reckons what a day costs; without it plans tell no costs.
            costing: CostingEntry,
        }
    }
}

entry! {
    /// A material. What is not known is left out; a calculation that needs it says so.
    pub struct MaterialEntry {
        required {
            /// What it is for.
            kind: Kind,
        }
        optional {
            /// A row of the starter table whose properties fill in what is left out here.
            like: Name,
            /// True density at 20 °C; of a plastisol, that of the liquid.
            density: Sourced<MassDensity>,
            /// Density of the fused plastisol at 20 °C.
            fused: Sourced<MassDensity>,
            /// Density of the powder as a level spoon holds it.
            as_scooped: Sourced<MassDensity>,
            /// Mass or volume of one drop from the shop's bottle.
            drop: SourcedDrop,
            /// Volumetric thermal expansion, per kelvin.
            expansion: Sourced<TemperatureCoefficient>,
            /// Specific heat; with "specific_heat_rise" that at 25 °C.
            specific_heat: Sourced<SpecificHeatCapacity>,
            /// Rise of the specific heat per kelvin, as a share of that at 25 °C; default: constant.
            specific_heat_rise: Sourced<TemperatureCoefficient>,
            /// Of a plastisol: lowest and highest viscosity at shot temperature; default: not known.
            viscosity: (Written<DynamicViscosity>, Written<DynamicViscosity>),
            /// Of a salt: the opening of a sieve that its grains just pass; default: not known.
            grain: Sourced<Length>,
            /// Lowest and highest temperature at which it is shot.
            shot_window: (Written<ThermodynamicTemperature>, Written<ThermodynamicTemperature>),
            /// Activation energy of its decay in the heat, with who states it.
            activation_energy: Sourced<MolarEnergy>,
            /// Of a plastisol: the heat that it stands.
            budget: BudgetEntry,
            /// Of a stabilizer: the heat that more of it buys.
            buys: BuysEntry,
            /// Of a flake: its cut.
            cut: CutText,
            /// Of a flake: the thickness of its film.
            thickness: Written<Length>,
            /// Price per package, such as "58.00 USD per 1 gal".
            price: PriceText,
            /// When it goes into the pot: "cold", before the pot is heated, or "hot", after it. Default by kind (common
            /// practice): salt, flake and scent hot, all else cold.
            add: Adding,
            /// Largest relative error of a dose of it.
            tolerance: Percent,
            /// What it is called at full length.
            name: String,
            /// Anything else worth knowing.
            notes: String,
        }
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

deserialize_by_reading! { SourcedDrop; PriceText; BaseEntry; CavitiesEntry; CavityVolume; }

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
            /// Doses by material: "32 drops", "1/2 tsp", "12.5 g", "8 % of base", "20 % of finished".
            doses: Named<Amount>,
        }
        optional {
            /// The amount of base that the doses are for; needed unless all are per cents.
            per: Amount,
            /// The base: a plastisol, or a blend of plastisols with an amount each.
            base: BaseEntry,
            /// Anything worth knowing.
            notes: String,
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
            /// How many like cavities it has, or a list of unlike ones.
            cavities: CavitiesEntry,
        }
        optional {
            /// Volume of one cavity: "9.5 mL", or by the water it holds:
            /// { "water": "9.47 g", "at": "22 °C" }.
            cavity: CavityVolume,
            /// Volume of the sprue of one shot.
            sprue: Written<Volume>,
            /// Share of a cavity's contraction that it draws from the sprue while it cools.
            feed: Percent,
            /// Share of air in the shot plastic.
            voids: Percent,
            /// Share of pieces that are not fit to sell; else that of the limits.
            rejects: Percent,
            /// Mass added to each shot by topping off and holding.
            top: Written<Mass>,
            /// What a piece is like as it sinks; of unlike cavities each states its own.
            body: BodyEntry,
            /// Hook and weight on a piece; none where left out.
            hook: HookEntry,
            /// How many such molds there are, shot in turn; default: 1.
            count: u32,
            /// Time from the shot until the piece can be taken out, as the shop has seen it; default: from "cooling".
            sets: Written<Time>,
            /// Time at hand for a shot: fill, shoot, top off, take out; default: "per_shot" of the costing.
            per_shot: Written<Time>,
            /// How a shot cools in it, where "sets" is not stated.
            cooling: MoldCoolingEntry,
            /// Anything worth knowing.
            notes: String,
        }
    }
}

/// The cavities of a mold.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum CavitiesEntry {
    /// So many like ones.
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
            /// How many of them.
            count: u32,
            /// Volume of one.
            cavity: CavityVolume,
        }
        optional {
            /// What a piece is like as it sinks.
            body: BodyEntry,
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
            /// What the balance reads.
            water: Written<Mass>,
            /// Temperature of the water.
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
    /// A product: a mold and the plastic that is shot into it.
    pub struct ProductEntry {
        required {
            /// The mold.
            mold: Name,
        }
        optional {
            /// The formulas of a piece of one color: a color and a body.
            formulas: Vec<Name>,
            /// What happens where two of these formulas dose the same material.
            overlap: Overlap,
            /// The layers of a laminated piece.
            layers: Vec<LayerEntry>,
            /// Anything worth knowing.
            notes: String,
        }
    }
}

entry! {
    /// One color of a laminated piece.
    pub struct LayerEntry {
        required {
            /// Its formulas: a color and a body.
            formulas: Vec<Name>,
            /// Its share of the cavity and the sprue.
            share: Percent,
        }
        optional {
            /// What happens where two of these formulas dose the same material.
            overlap: Overlap,
        }
    }
}

entry! {
    /// The tools on the bench.
    pub struct BenchEntry {
        required {
            /// The cups a pot is mixed and heated in.
            cups: Vec<CupEntry>,
            /// The injector.
            injector: InjectorEntry,
        }
        optional {
            /// The balance.
            balance: BalanceEntry,
            /// Level spoons by what they hold.
            spoons: Vec<Written<Volume>>,
            /// The most drops that are still counted.
            most_drops: u32,
            /// The vacuum that pots are degassed in.
            vacuum: VacuumEntry,
            /// The oven, by the shop's own timings.
            oven: OvenEntry,
            /// How unsure the tools are.
            uncertainty: ToolUncertaintyEntry,
        }
    }
}

entry! {
    /// A cup.
    pub struct CupEntry {
        required {
            /// What it holds up to its highest mark.
            holds: Written<Volume>,
        }
        optional {
            /// The step between its marks; without it only the highest mark counts.
            marks: Written<Volume>,
            /// What stays on its wall when it has been poured out.
            film: Written<Mass>,
            /// What cannot be drawn from its bottom, the film included.
            heel: Written<Mass>,
            /// What it holds up to its brim, above its highest mark. A hot mix fills at most 95 % of it; default for that: a
            /// fifth more than to its highest mark.
            brim: Written<Volume>,
            /// What it weighs empty: its own heat then counts, in the oven's timings too. Left to the
            /// timings where left out.
            mass: Written<Mass>,
            /// Its specific heat; with its mass.
            specific_heat: Written<SpecificHeatCapacity>,
        }
    }
}

entry! {
    /// An injector.
    pub struct InjectorEntry {
        required {
            /// What it takes up at most.
            holds: Written<Volume>,
        }
        optional {
            /// What stays in it and is lost at each cleaning or cold stop.
            keeps: Written<Volume>,
            /// How many of them there are; a laminate of two layers takes two.
            count: u32,
        }
    }
}

entry! {
    /// A balance.
    pub struct BalanceEntry {
        required {
            /// The step of its display.
            reads: Written<Mass>,
        }
        optional {
            /// The least it weighs.
            from: Written<Mass>,
            /// The most it weighs.
            to: Written<Mass>,
        }
    }
}

entry! {
    /// How the shop works.
    pub struct LimitsEntry {
        required {}
        optional {
            /// Share of pieces that are not fit to sell.
            rejects: Percent,
            /// How sure the number of good pieces shall be.
            confidence: Percent,
            /// Largest relative error of a dose, unless its material says otherwise.
            tolerance: Percent,
            /// Most solids in a mix, by true volume.
            solids: Percent,
            /// How full a cup may be, of what it holds to its highest mark.
            most_full: Percent,
            /// The least that the oven heats evenly.
            least_pot: Written<Volume>,
            /// What becomes of sprues.
            sprues: Sprues,
            /// Heats that the stabilizer allows a pot.
            heats: u32,
            /// Whether base may be added to a pot that has been drawn from.
            fresh_base: bool,
            /// The water to tell sink rates for.
            water: FishedWaterEntry,
        }
    }
}

impl crate::json::read_back::ReadBack for FormulaEntry {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        let nothing =
            || Self { doses: Default::default(), per: None, base: None, notes: None, ext: None };
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
        let told: Vec<_> = faults.iter().map(|fault| (&*fault.code, &*fault.path)).collect();
        assert_eq!(told, [("unknown-field", "/from")]);
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

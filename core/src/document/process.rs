//! What a book says of vacuum, oven, heat and water, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use serde_json::Value;

use super::written::{Percent, Written};
use crate::fault::Fault;
use crate::flake::Cut;
use crate::json::entry::entry;
use crate::json::reader::{Name, Node, Read, deserialize_by_reading};
use crate::quantity::{
    Amount, Length, Mass, MassDensity, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureInterval, ThermodynamicTemperature, Time, Volume,
};
use crate::words::words;

entry! {
    /// The vacuum that pots are degassed in: either what the gauge shows, or the pressure that is
    /// left.
    pub struct VacuumEntry {
        required {}
        optional {
            /// What is pulled, as a vacuum gauge shows it: "27 inHg".
            gauge: Written<Pressure>,
            /// What is left in the chamber, counted up from nothing: "10 kPa".
            absolute: Written<Pressure>,
            /// How far the vacuum gauge may be off; 0.9 inHg where left out.
            dial_tolerance: Written<Pressure>,
            /// How many times its level a pot was seen to swell to in it: 2.5.
            rise: f64,
            /// Share of air in a pot before the vacuum, where no rise was seen.
            entrained: Percent,
        }
    }
}

entry! {
    /// Standard uncertainties of the tools, relative to what each gives, where the shop has found them; the
    /// library's figures elsewhere.
    pub struct ToolUncertaintyEntry {
        required {}
        optional {
            /// Of the balance's span; 0.1 % where left out.
            balance_span: Percent,
            /// Of the size of a spoon; 2.9 %.
            spoon_size: Percent,
            /// Of leveling one spoonful; 3 %.
            spoon_level: Percent,
            /// Of where a cup's marks stand; 2.9 %.
            cup_size: Percent,
            /// Of filling a cup, as a share of the distance between its marks; 10 %.
            cup_filling: Percent,
            /// Of a stated drop without an uncertainty of its own; 8.7 %.
            drop: Percent,
            /// Of a drop that was never weighed; 29 %.
            unweighed_drop: Percent,
            /// Of one drop against the next; 5 %.
            drop_scatter: Percent,
        }
    }
}

entry! {
    /// The oven, by the shop's own timings at one setting, at which pots are then heated; until there are any, by
    /// its rated power.
    pub struct OvenEntry {
        required {}
        optional {
            /// Heatings that were timed; needed without "power".
            timings: Vec<TimingEntry>,
            /// The rated power, the output at full power: a first guess, not used once there are timings. 50 W to
            /// 10 kW.
            power: Written<Power>,
            /// The plastisol that was timed; default: the default base.
            of: Name,
            /// The setting, as a share of full power; default: that of the timings, else 100 %.
            setting: Percent,
            /// Reading of a pot that goes back for a reheat, additions stirred in; default: the bottom of its window
            /// where nothing is added, else not known.
            reheat_from: Written<ThermodynamicTemperature>,
            /// How long a pot stays hot at one heat, from the last burst to the last shot; default: from "cools".
            hot_for: Written<Time>,
            /// How a pot was watched to cool; default: not known.
            cools: CoolsEntry,
            /// Temperature of the room that pots cool in; default: 20 °C.
            room: Written<ThermodynamicTemperature>,
            /// How far the thermometer may be off; default: 2 K.
            thermometer: Written<TemperatureInterval>,
            /// The shortest burst that can be set, of which the others are multiples; default: 5 s.
            step: Written<Time>,
            /// The longest burst without a stir; default: 120 s.
            longest: Written<Time>,
            /// How long a turn of full power and none takes below full power; default: 30 s. "0 s" for an oven that
            /// lowers its power without turns.
            turn: Written<Time>,
        }
    }
}

entry! {
    /// A pot that was watched to cool on the bench, stirred before each reading, from the second minute on.
    pub struct CoolsEntry {
        required {
            /// How much was in it: a mass, or a volume cold and liquid.
            mix: Amount,
            /// The first reading.
            from: Written<ThermodynamicTemperature>,
            /// The second reading.
            to: Written<ThermodynamicTemperature>,
            /// The time between them.
            time: Written<Time>,
        }
        optional {
            /// Temperature of the room then; default: the oven's "room".
            room: Written<ThermodynamicTemperature>,
        }
    }
}

entry! {
    /// How a shot cools in its mold, for the time that it sets.
    pub struct MoldCoolingEntry {
        required {}
        optional {
            /// What the mold is made of: metal, plaster or silicone; default: metal. For plaster and silicone give
            /// the mold's "sets".
            of: MoldMaterial,
            /// The thickest part of a piece; default: its "body".
            section: SectionEntry,
            /// Temperature of the mold when it is shot; default: 30 °C (common practice, no source).
            at: Written<ThermodynamicTemperature>,
            /// Temperature of a piece, at its center, at which it is taken out; default: 50 °C (common practice, no
            /// source).
            take_out: Written<ThermodynamicTemperature>,
            /// Mass of the mold; default: so heavy that a shot does not warm it.
            mass: Written<Mass>,
            /// Specific heat of the mold; default: aluminum, 0.897 J/(g.K).
            specific_heat: Written<SpecificHeatCapacity>,
        }
    }
}

entry! {
    /// The thickest part of a piece: a rod, a plate or a ball.
    pub struct SectionEntry {
        required {}
        optional {
            /// Longer than thick: its diameter, 0.2 to 200 mm.
            rod: Written<Length>,
            /// Wide and flat, metal on both sides: its thickness, 0.2 to 200 mm.
            plate: Written<Length>,
            /// As long as thick: its diameter, 0.2 to 200 mm.
            ball: Written<Length>,
        }
    }
}

words! {
    /// What a mold is made of.
    pub enum MoldMaterial {
        /// Metal: its surface keeps its temperature.
        Metal = "metal",
        /// Plaster, or stone.
        Plaster = "plaster",
        /// Silicone, or another rubber.
        Silicone = "silicone",
    }
}

entry! {
    /// One heating that the shop has timed.
    pub struct TimingEntry {
        required {
            /// How much was heated: a mass, or a volume cold and liquid.
            mix: Amount,
            /// The temperature before.
            from: Written<ThermodynamicTemperature>,
            /// The temperature after, stirred.
            to: Written<ThermodynamicTemperature>,
            /// How long the oven ran.
            time: Written<Time>,
        }
        optional {
            /// The setting that it ran at, as a share of full power; the oven's where left out, which is
            /// 100 % where that is left out, too.
            setting: Percent,
            /// What its vessel weighs empty; where the book's cups state their mass.
            vessel: Written<Mass>,
            /// The vessel's specific heat; with its mass.
            vessel_specific_heat: Written<SpecificHeatCapacity>,
        }
    }
}

entry! {
    /// The heat that a plastisol stands.
    pub struct BudgetEntry {
        required {
            /// So long at the reference temperature.
            time: Written<Time>,
            /// The reference temperature.
            at: Written<ThermodynamicTemperature>,
        }
        optional {
            /// With so much stabilizer, as a share of the mass of base; none added where left out.
            with: Percent,
        }
    }
}

entry! {
    /// The heat that more of a stabilizer buys.
    pub struct BuysEntry {
        required {
            /// So much more time at the reference temperature of the plastisol's budget.
            time: Written<Time>,
            /// For so much more stabilizer, as a share of the mass of base.
            per: Percent,
            /// The highest dose that this holds for, as a share of the mass of base.
            most: Percent,
        }
        optional {}
    }
}

entry! {
    /// What a piece is like as it sinks: either a stick or a ball.
    pub struct BodyEntry {
        required {}
        optional {
            /// Longer than thick: it falls sideways.
            stick: StickEntry,
            /// As long as thick, about.
            ball: BallEntry,
            /// A drop of such a piece with its hook that the shop timed; the drag of the shape where left out.
            drop: TimedDropEntry,
        }
    }
}

entry! {
    /// A drop of a piece that the shop timed, let go just below the surface.
    pub struct TimedDropEntry {
        required {
            /// Depth.
            depth: Written<Length>,
            /// Time to it.
            time: Written<Time>,
            /// Density that the piece had; what stands behind its ± is not counted.
            density: Written<MassDensity>,
        }
        optional {
            /// The water that it fell in; the one that its fall is told for where left out.
            water: FishedWaterEntry,
        }
    }
}

entry! {
    /// A piece that falls sideways.
    pub struct StickEntry {
        required {
            /// Mean diameter.
            diameter: Written<Length>,
            /// Length.
            length: Written<Length>,
        }
        optional {}
    }
}

entry! {
    /// A piece about as long as thick.
    pub struct BallEntry {
        required {
            /// Diameter.
            diameter: Written<Length>,
        }
        optional {}
    }
}

entry! {
    /// Hook and weight on a piece.
    pub struct HookEntry {
        required {
            /// Their mass.
            mass: Written<Mass>,
            /// What they displace.
            volume: Written<Volume>,
        }
        optional {}
    }
}

entry! {
    /// Water that a piece sinks in.
    pub struct FishedWaterEntry {
        required {
            /// Its temperature.
            temperature: Written<ThermodynamicTemperature>,
        }
        optional {
            /// Its salinity: practical as a plain number, 35, or absolute as "35 g/kg"; fresh where
            /// left out.
            salinity: SalinityEntry,
        }
    }
}

/// Salt in water.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum SalinityEntry {
    /// Practical salinity, a pure number.
    Practical(f64),
    /// Absolute salinity: mass of salt per mass of water.
    Absolute(Written<Ratio>),
}

impl Read for SalinityEntry {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match node.value {
            Value::Number(_) => f64::read(node, faults).map(Self::Practical),
            _ => {
                let before = faults.len();
                let read = Written::read(node, faults).map(Self::Absolute);
                for fault in faults.iter_mut().skip(before) {
                    fault.help = "Write practical salinity as a plain number, 35, or absolute salinity as \"35 g/kg\".".into();
                }
                read
            }
        }
    }
}

/// The cut of a flake, as the trade writes it: ".035", "1/64 hex", "0.4 mm square".
#[derive(Debug, Clone, PartialEq)]
pub struct CutText {
    /// As it was written.
    pub text: String,
    /// What it says.
    pub cut: Cut,
}

impl serde::Serialize for CutText {
    fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(&self.text)
    }
}

impl Read for CutText {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let text = String::read(node, faults)?;
        let cut = super::written::keep(Cut::parse(&text), node, faults)?;
        Some(Self { text, cut })
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for CutText {
    fn schema_name() -> alloc::borrow::Cow<'static, str> {
        "Cut".into()
    }

    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({
            "type": "string",
            "description": "The cut of a flake: \".035\", \"1/64 hex\", \"0.4 mm square\".",
        })
    }
}

deserialize_by_reading! { SalinityEntry; CutText; }

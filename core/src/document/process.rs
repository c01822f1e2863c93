//! A book's vacuum, oven, heat and water, as they are written.

use alloc::string::String;
use alloc::vec::Vec;

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
    /// The vacuum that pots are degassed in: either `gauge` or `absolute`.
    pub struct VacuumEntry {
        required {}
        optional {
            /// Reading of a vacuum gauge. Default: none; required without `absolute`. Example: `"25 inHg"`.
            gauge: Written<Pressure>,
            /// Pressure left in the chamber, counted up from nothing. Default: none; required without `gauge`.
            /// Example: `"10 kPa"`.
            absolute: Written<Pressure>,
            /// How far the vacuum gauge may be off. Default: 0.9 inHg. Example: `"1 inHg"`.
            dial_tolerance: Written<Pressure>,
            /// Level of a pot in the vacuum over its level before, as the shop has seen it. Default: not known; up to 3
            /// is assumed. Example: `1.8`.
            rise: f64,
            /// Share of air in a pot before the vacuum, where no rise was seen. Default: not known. Example: `"5 %"`.
            entrained: Percent,
        }
    }
}

entry! {
    /// Standard uncertainties of the tools, relative to what each gives. State those that the shop has measured.
    pub struct ToolUncertaintyEntry {
        required {}
        optional {
            /// Of the scale's span. Default: 0.1 %. Example: `"0.05 %"`.
            balance_span: Percent,
            /// Of the size of a spoon. Default: 2.9 %. Example: `"1 %"`.
            spoon_size: Percent,
            /// Of leveling one spoonful. Default: 3 %. Example: `"4 %"`.
            spoon_level: Percent,
            /// Of the position of a cup's marks. Default: 2.9 %. Example: `"1 %"`.
            cup_size: Percent,
            /// Of filling a cup, as a share of the distance between its marks. Default: 10 %. Example: `"5 %"`.
            cup_filling: Percent,
            /// Of a stated drop without an uncertainty of its own. Default: 8.7 %. Example: `"5 %"`.
            drop: Percent,
            /// Of a drop that was never weighed. Default: 29 %. Example: `"20 %"`.
            unweighed_drop: Percent,
            /// Of one drop against the next. Default: 5 %. Example: `"4 %"`.
            drop_scatter: Percent,
        }
    }
}

entry! {
    /// The oven, by the shop's own timings at one setting, at which pots are then heated; until there are any, by its
    /// rated power.
    pub struct OvenEntry {
        required {}
        optional {
            /// Heatings that were timed. Default: none; required without `power`.
            timings: Vec<TimingEntry>,
            /// The rated power: the output at full power, 50 W to 10 kW. A first guess, not used once there are
            /// timings. Default: not known. Example: `"900 W"`.
            power: Written<Power>,
            /// The plastisol that was timed. Default: `default_base`. Example: `"clear-base"`.
            of: Name,
            /// The setting, as a share of full power. Default: that of the timings, else 100 %. Example: `"100 %"`.
            setting: Percent,
            /// Temperature of a pot when it goes back to be reheated, additions stirred in. Default: the bottom of its
            /// window if nothing is added, else not known. Example: `"240 °F"`.
            reheat_from: Written<ThermodynamicTemperature>,
            /// How long a pot stays hot after one heat, from the last burst to the last shot. Default: from `cools`.
            /// Example: `"8 min"`.
            hot_for: Written<Time>,
            /// A pot that was watched to cool. Default: not known.
            cools: CoolsEntry,
            /// Temperature of the room that pots cool in. Default: 20 °C. Example: `"72 °F"`.
            room: Written<ThermodynamicTemperature>,
            /// How far the thermometer may be off. Default: 2 K. Example: `"1 K"`.
            thermometer: Written<TemperatureInterval>,
            /// Shortest burst that can be set; the others are multiples of it. Default: 5 s. Example: `"10 s"`.
            step: Written<Time>,
            /// Longest burst without a stir. Default: 120 s. Example: `"90 s"`.
            longest: Written<Time>,
            /// Length of one turn of full power and none, below full power; `"0 s"` for an oven that lowers its power
            /// without turns. Default: 30 s. Example: `"22 s"`.
            turn: Written<Time>,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// A pot that was watched to cool on the bench, stirred before each reading, from the second minute on.
    pub struct CoolsEntry {
        required {
            /// How much was in it: a mass, or a volume cold and liquid. Example: `"2 cup"`.
            mix: Amount,
            /// The first reading. Example: `"340 °F"`.
            from: Written<ThermodynamicTemperature>,
            /// The second reading. Example: `"320 °F"`.
            to: Written<ThermodynamicTemperature>,
            /// The time between them. Example: `"150 s"`.
            time: Written<Time>,
        }
        optional {
            /// Temperature of the room then. Default: `room` of the oven. Example: `"72 °F"`.
            room: Written<ThermodynamicTemperature>,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// How a shot cools in its mold, for the time that it sets.
    pub struct MoldCoolingEntry {
        required {}
        optional {
            /// The material of the mold; give a plaster or silicone mold its `sets`. Default: `"metal"`. Example:
            /// `"metal"`.
            of: MoldMaterial,
            /// The thickest part of a piece. Default: its `body`.
            section: SectionEntry,
            /// Temperature of the mold when it is shot. Default: 30 °C (common practice, no source). Example:
            /// `"90 °F"`.
            at: Written<ThermodynamicTemperature>,
            /// Temperature at the center of a piece when it is taken out. Default: 50 °C (common practice, no source).
            /// Example: `"120 °F"`.
            take_out: Written<ThermodynamicTemperature>,
            /// Mass of the mold. Default: so heavy that a shot does not warm it. Example: `"1.2 kg"`.
            mass: Written<Mass>,
            /// Specific heat of the mold. Default: 0.897 J/(g.K), aluminum. Example: `"0.897 J/(g.K)"`.
            specific_heat: Written<SpecificHeatCapacity>,
        }
    }
}

entry! {
    /// The thickest part of a piece: a `rod`, a `plate` or a `ball`.
    pub struct SectionEntry {
        required {}
        optional {
            /// Longer than thick: its diameter, 0.2 to 200 mm. Default: none; required without the others. Example:
            /// `"9.6 mm"`.
            rod: Written<Length>,
            /// Wide and flat, metal on both sides: its thickness, 0.2 to 200 mm. Default: none; required without the
            /// others. Example: `"4 mm"`.
            plate: Written<Length>,
            /// As long as thick: its diameter, 0.2 to 200 mm. Default: none; required without the others. Example:
            /// `"16 mm"`.
            ball: Written<Length>,
        }
    }
}

words! {
    /// The material of a mold.
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
            /// How much was heated: a mass, or a volume cold and liquid. Example: `"2 cup"`.
            mix: Amount,
            /// Temperature before. Example: `"68 °F"`.
            from: Written<ThermodynamicTemperature>,
            /// Temperature after, stirred. Example: `"335 °F"`.
            to: Written<ThermodynamicTemperature>,
            /// How long the oven ran. Example: `"236 s"`.
            time: Written<Time>,
        }
        optional {
            /// Setting that it ran at, as a share of full power. Default: `setting` of the oven, else 100 %. Example:
            /// `"100 %"`.
            setting: Percent,
            /// Mass of its empty vessel. State it for all cups and timings or for none. Default: the vessel's heat is
            /// part of the timing. Example: `"180 g"`.
            vessel: Written<Mass>,
            /// Specific heat of the vessel. Default: none; required with `vessel`. Example: `"0.84 J/(g.K)"`.
            vessel_specific_heat: Written<SpecificHeatCapacity>,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// The heat that a plastisol withstands.
    pub struct BudgetEntry {
        required {
            /// Time at the reference temperature. Example: `"45 min"`.
            time: Written<Time>,
            /// The reference temperature. Example: `"350 °F"`.
            at: Written<ThermodynamicTemperature>,
        }
        optional {
            /// The stabilizer that this includes, as a share of the mass of base. Default: 0 %, none added. Example:
            /// `"2 %"`.
            with: Percent,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// The heat that more of a stabilizer buys.
    pub struct BuysEntry {
        required {
            /// Time that it adds at the reference temperature of the plastisol's budget. Example: `"8 min"`.
            time: Written<Time>,
            /// The dose that adds this time, as a share of the mass of base. Example: `"1 %"`.
            per: Percent,
            /// Highest dose that this holds for, as a share of the mass of base. Example: `"4 %"`.
            most: Percent,
        }
        optional {}
    }
}

entry! {
    /// Shape of a piece as it sinks: either a `stick` or a `ball`.
    pub struct BodyEntry {
        required {}
        optional {
            /// A piece longer than thick, which sinks sideways. Default: none; required without `ball`.
            stick: StickEntry,
            /// A piece about as long as thick. Default: none; required without `stick`.
            ball: BallEntry,
            /// A drop of such a piece with its hook that the shop has timed. Default: none; the drag of the shape is
            /// used.
            drop: TimedDropEntry,
        }
    }
}

entry! {
    /// A drop of a piece that the shop has timed, let go just below the surface.
    pub struct TimedDropEntry {
        required {
            /// Depth. Example: `"1.2 m"`.
            depth: Written<Length>,
            /// Time to that depth. Example: `"6.4 s"`.
            time: Written<Time>,
            /// Density of the piece; its ± is not counted. Example: `"1.12 g/mL"`.
            density: Written<MassDensity>,
        }
        optional {
            /// The water that it sank in. Default: that of the limits, or of the request.
            water: FishedWaterEntry,
        }
    }
}

entry! {
    /// A piece that sinks sideways.
    pub struct StickEntry {
        required {
            /// Mean diameter. Example: `"9.6 mm"`.
            diameter: Written<Length>,
            /// Length. Example: `"127 mm"`.
            length: Written<Length>,
        }
        optional {}
    }
}

entry! {
    /// A piece about as long as thick.
    pub struct BallEntry {
        required {
            /// Diameter. Example: `"16 mm"`.
            diameter: Written<Length>,
        }
        optional {}
    }
}

entry! {
    /// Hook and weight on a piece.
    pub struct HookEntry {
        required {
            /// Their mass. Example: `"1.1 g"`.
            mass: Written<Mass>,
            /// The volume that they displace. Example: `"0.14 mL"`.
            volume: Written<Volume>,
        }
        optional {}
    }
}

entry! {
    /// Water that a piece sinks in.
    pub struct FishedWaterEntry {
        required {
            /// Its temperature. Example: `"60 °F"`.
            temperature: Written<ThermodynamicTemperature>,
        }
        optional {
            /// Its practical salinity, as a probe reads it. Default: 0, fresh water. Example: `35`.
            salinity_practical: f64,
            /// Its absolute salinity, mass of salt per mass of water; give this or the practical one. Default: 0, fresh
            /// water. Example: `"35 g/kg"`.
            salinity_absolute: Written<Ratio>,
        }
    }
}

/// The cut of a flake, as the trade writes it: ".035", "1/64 hex", "0.4 mm square".
#[derive(Debug, Clone, PartialEq)]
pub struct CutText {
    /// As it was written.
    pub text: String,
    /// The cut.
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

deserialize_by_reading! { CutText; }

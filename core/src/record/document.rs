//! A maker's notes of a day: the numbers that differ from the plan, as written.

use alloc::string::String;
use alloc::vec::Vec;

use serde_json::Value;

use super::{Actuals, Record};
use crate::document::color::ColorEntry;
use crate::document::written::{Percent, Written};
use crate::document::{Format, LoadedBook};
use crate::fault::{Fault, Faults};
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::one_or_list::OneOrList;
use crate::json::reader::{Count, Name, Node, Read, deserialize_by_reading, read_value};
use crate::json::text;
use crate::plan::Plan;
use crate::quantity::{Amount, Mass, ThermodynamicTemperature, Time};

entry! {
    /// A maker's notes of a day: only the numbers that differ from the plan.
    pub struct ActualsDocument {
        required {
            /// The format and its version. Example: `"pourwright/1.0"`.
            format: Format,
            /// Pots by their letters, each as a whole or as a list of its stages. As a whole, a material or mold belongs to
            /// the one stage that has it, and what was left to the last stage.
            pots: Named<OneOrList<PotActualsEntry>>,
        }
        optional {
            /// Anything a reader should know about it. Default: none. Example: `"Cold morning."`.
            about: String,
        }
    }
}

entry! {
    /// One pot, or one stage of it. What is omitted went as the sheet said.
    pub struct PotActualsEntry {
        required {}
        optional {
            /// What went in, by material, if it was not what the sheet said; 0 if nothing did. Default: what the sheet said.
            /// Example: `{ "plum": "34 drops", "fine-salt": "40 g", "moss": { "measured": "20 drops", "weighed": "0.9 g" } }`.
            went_in: Named<WentInEntry>,
            /// The shots, by mold; of a mold that is shot several times, a list in the order of the sheet. Default: as planned.
            molds: Named<OneOrList<ShotsEntry>>,
            /// Number of times that it was reheated, its first heat not counted. Default: as planned. Example: `2`.
            reheats: Count,
            /// Heats as timed, in their order. Default: not timed.
            heats: Vec<HeatActualsEntry>,
            /// Mass left in the cup after the last shot, without the cup. Default: not weighed. Example: `"101.5 g"`.
            left: Written<Mass>,
            /// Mass that the injector kept, weighed once taken out of it; a list of several cleanings. Default: not weighed.
            /// Example: `"4.1 g"`.
            injector: OneOrList<Written<Mass>>,
            /// Color of a cooled, finished piece of it, as "color-reading" gives it; of a laminated piece, that of this layer. It
            /// goes into the book with the color's formula, and is compared with the one that is there. Default: not read.
            /// Example: `{ "lab": [52, 41, 18] }`.
            looks: ColorEntry,
            /// Name under which the color as made goes into the book, apart from its body. Default: the book stays as it is.
            /// Example: `"dusk, darker"`.
            save_as: Name,
            /// Name under which the body as made goes into the book, with its base. Default: the book stays as it is.
            /// Example: `"salted, heavier"`.
            body_as: Name,
            /// Name written on the jar with what was left. Default: the formulas, pot and day. Example: `"dusk, March 2"`.
            jar: Name,
            /// Anything worth keeping with it. Default: none. Example: `"Smoked a little at 345 °F."`.
            notes: String,
        }
    }
}

entry! {
    /// How much of a material went in: as measured, as the scale showed it, or both, from which its drop or spoonful is
    /// learned.
    pub struct MeasuredAndWeighedEntry {
        required {}
        optional {
            /// As it was measured. Default: as the sheet said. Example: `"34 drops"`.
            measured: Amount,
            /// What the scale showed for it; this counts. Default: not weighed. Example: `"1.5 g"`.
            weighed: Written<Mass>,
        }
    }
}

/// How much of a material went in.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
#[allow(clippy::large_enum_variant)] // a few a day
pub enum WentInEntry {
    /// As it was measured, by scale, spoon or drops.
    Measured(Amount),
    /// With what the scale showed for it.
    Weighed(MeasuredAndWeighedEntry),
}

entry! {
    /// Shots into a mold.
    pub struct ShotsEntry {
        required {}
        optional {
            /// Number of shots made. Default: as planned. Example: `7`.
            shots: Count,
            /// Number of pieces that are fit to sell. Those of a laminated shot belong to one of its pots. Default: not
            /// counted. Example: `26`.
            good: Count,
            /// Pieces that were weighed: one by one, or several together. Default: none.
            /// Example: `["10.1 g", "10.3 g", { "count": 3, "weigh": "30.4 g" }]`.
            weights: OneOrList<PieceWeightEntry>,
            /// The pieces by shape, in a mold with unlike cavities. Default: none; required there instead of `good` and
            /// `weights`.
            shapes: Named<ShapeActualsEntry>,
            /// Time from the first shot to the last. Default: not timed. Example: `"6 min"`.
            took: Written<Time>,
        }
    }
}

entry! {
    /// The pieces of one shape.
    pub struct ShapeActualsEntry {
        required {}
        optional {
            /// Number of pieces that are fit to sell. Default: not counted. Example: `26`.
            good: Count,
            /// Pieces that were weighed: one by one, or several together. Default: none. Example: `["8.6 g", "8.7 g"]`.
            weights: OneOrList<PieceWeightEntry>,
        }
    }
}

entry! {
    /// Several pieces that were weighed together.
    pub struct PiecesTogetherEntry {
        required {
            /// How many. Example: `3`.
            count: u32,
            /// What they weigh together. Example: `"30.4 g"`.
            weigh: Written<Mass>,
        }
        optional {}
    }
}

/// Pieces that were weighed.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum PieceWeightEntry {
    /// One piece.
    One(Written<Mass>),
    /// Several together.
    Together(PiecesTogetherEntry),
}

entry! {
    /// A heat as it was timed.
    pub struct HeatActualsEntry {
        required {
            /// How long the oven ran, all bursts together. Example: `"206 s"`.
            time: Written<Time>,
        }
        optional {
            /// The reading before. Default: not read. Example: `"68 °F"`.
            from: Written<ThermodynamicTemperature>,
            /// The reading after, stirred. Default: not read. Example: `"338 °F"`.
            to: Written<ThermodynamicTemperature>,
            /// Setting that it ran at, as a share of full power. Default: `setting` of the oven, else 100 %. Example: `"100 %"`.
            setting: Percent,
        }
    }
}

/// Whether `value` is an object with one of these fields.
fn has(value: &Value, fields: [&str; 2]) -> bool {
    value.as_object().is_some_and(|object| fields.iter().any(|field| object.contains_key(*field)))
}

impl Read for WentInEntry {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        // An amount may be an object too; what states neither is no amount.
        if node.value.is_object() && !has(node.value, ["value", "unit"]) {
            MeasuredAndWeighedEntry::read(node, faults).map(Self::Weighed)
        } else {
            Amount::read(node, faults).map(Self::Measured)
        }
    }
}

impl Read for PieceWeightEntry {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        if has(node.value, ["count", "weigh"]) {
            PiecesTogetherEntry::read(node, faults).map(Self::Together)
        } else {
            Written::read(node, faults).map(Self::One)
        }
    }
}

deserialize_by_reading! { WentInEntry; PieceWeightEntry; }

impl LoadedBook {
    /// Record of a day: its `plan`, and a maker's notes of what differed.
    ///
    /// # Errors
    /// All faults of the actuals, alone and against the plan.
    pub fn record(&self, plan: &Plan, actuals: &ActualsDocument) -> Result<Record, Faults> {
        Record::make(plan, self.ready(), &Actuals::resolve(actuals, self.ready())?)
    }

    /// Record of a day, with the actuals in JSON text.
    ///
    /// # Errors
    /// All faults of the text, else all of its form, else those of [`LoadedBook::record`].
    pub fn record_text(&self, plan: &Plan, actuals: &str) -> Result<Record, Faults> {
        self.record(plan, &read_value(&text::parse(actuals)?)?)
    }
}

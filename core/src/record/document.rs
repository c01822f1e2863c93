//! Masses really weighed and shots really made on a day, as written.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Actuals, Record};
use crate::document::written::Written;
use crate::document::{Format, LoadedBook};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::reader::{Count, Name, read_value};
use crate::json::text;
use crate::plan::Plan;
use crate::quantity::{Amount, Mass};

entry! {
    /// Masses really weighed and shots really made on a day. Omit all that went by the sheet.
    pub struct ActualsDocument {
        required {
            /// The format and its version. Example: `"pourwright/1.0"`.
            format: Format,
            /// Pots by their letters.
            pots: Named<PotActualsEntry>,
        }
        optional {
            /// Anything a reader should know about it. Default: none. Example: `"Cold morning."`.
            about: String,
        }
    }
}

entry! {
    /// One pot.
    pub struct PotActualsEntry {
        required {
            /// Its stages, from the first.
            stages: Vec<StageActualsEntry>,
        }
        optional {
            /// Anything worth keeping with it. Default: none. Example: `"Smoked a little at 345 °F."`.
            notes: String,
        }
    }
}

entry! {
    /// One stage of a pot.
    pub struct StageActualsEntry {
        required {}
        optional {
            /// Amounts that differ from the sheet, by material, as they were measured; 0 for a material that did not go in.
            /// Default: what the sheet said. Example: `{ "plum": "34 drops", "fine-salt": "4.9 g" }`.
            weighed: Named<Amount>,
            /// The shots. Default: those of the sheet.
            draws: Vec<DrawActualsEntry>,
            /// Mass in the cup after the last shot, without the cup. Default: not weighed. Example: `"101.5 g"`.
            left: Written<Mass>,
        }
    }
}

entry! {
    /// Shots into a mold.
    pub struct DrawActualsEntry {
        required {
            /// The mold. Example: `"finger-5"`.
            mold: Name,
            /// Number of shots made. Example: `7`.
            shots: Count,
        }
        optional {
            /// The pieces by shape. Those of a laminated shot belong to one of its pots. Default: not counted.
            pieces: Vec<PieceActualsEntry>,
        }
    }
}

entry! {
    /// The pieces of one shape.
    pub struct PieceActualsEntry {
        required {}
        optional {
            /// The shape, in a mold with unlike cavities. Default: none; required there. Example: `"long"`.
            shape: Name,
            /// Number of pieces that are fit to sell. Default: not counted. Example: `26`.
            good: Count,
            /// Masses of some of them, one by one. Default: none weighed. Example: `["10.1 g", "10.3 g"]`.
            weights: Vec<Written<Mass>>,
        }
    }
}

impl LoadedBook {
    /// Record of a day: its `plan`, and what was really weighed and shot.
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

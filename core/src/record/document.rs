//! What was really weighed and shot on a day, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use crate::document::Format;
use crate::document::written::Written;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::reader::{Count, Name};
use crate::quantity::{Amount, Mass};

entry! {
    /// What was really weighed and shot. What is left out went as the sheet said.
    pub struct ActualsDocument {
        required {
            /// The format and its version.
            format: Format,
            /// By the pots' letters.
            pots: Named<PotActualsEntry>,
        }
        optional {
            /// Anything a reader should know of it.
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
            /// Anything worth knowing.
            notes: String,
        }
    }
}

entry! {
    /// One stage of a pot.
    pub struct StageActualsEntry {
        required {}
        optional {
            /// What went in otherwise than the sheet said, by material, as it was measured:
            /// "34 drops", "4.9 g". 0 for what was left out.
            weighed: Named<Amount>,
            /// What was shot.
            draws: Vec<DrawActualsEntry>,
            /// What the cup was weighed to hold after the last shot, its own weight taken off.
            left: Written<Mass>,
        }
    }
}

entry! {
    /// What was shot into a mold.
    pub struct DrawActualsEntry {
        required {
            /// The mold.
            mold: Name,
            /// Shots made.
            shots: Count,
        }
        optional {
            /// What came of it, by shape. The pieces of a laminated shot are told at one of its
            /// pots.
            pieces: Vec<PieceActualsEntry>,
        }
    }
}

entry! {
    /// The pieces of one shape.
    pub struct PieceActualsEntry {
        required {}
        optional {
            /// The shape, in a mold with unlike cavities.
            shape: Name,
            /// Pieces that are fit to sell.
            good: Count,
            /// What some of them weigh, one by one.
            weights: Vec<Written<Mass>>,
        }
    }
}

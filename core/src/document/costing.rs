//! How a shop reckons its costs, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use super::book::PriceText;
use super::written::{Percent, Written};
use crate::json::entry::entry;
use crate::json::reader::Name;
use crate::quantity::Time;

entry! {
    /// How the shop reckons what a day costs, besides the prices of its materials.
    pub struct CostingEntry {
        required {}
        optional {
            /// What goes into each pack.
            packing: Vec<PackingEntry>,
            /// What work is worth: "18.00 USD per 1 h". Without it work is not counted.
            rate: PriceText,
            /// Work of one pot: measuring, degassing, cleaning up.
            per_pot: Written<Time>,
            /// Work of one heat.
            per_heat: Written<Time>,
            /// Work of one shot: filling, cooling, taking out, trimming.
            per_shot: Written<Time>,
            /// Work of packing one pack.
            per_pack: Written<Time>,
            /// What of its material cost left-over is worth, in the cup and as sprue; nothing where left out.
            left_over_worth: Percent,
            /// What is earned, as a share of the price.
            margin: Percent,
            /// Anything worth knowing.
            notes: String,
        }
    }
}

entry! {
    /// Something that goes into each pack.
    pub struct PackingEntry {
        required {
            /// What it is called.
            name: Name,
            /// Its price per number of pieces, such as "9.00 USD per 100 pieces".
            price: PriceText,
        }
        optional {
            /// How many of it a pack takes, one where left out.
            per_pack: u32,
        }
    }
}

//! How a shop calculates its costs, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use super::book::PriceText;
use super::written::{Percent, Written};
use crate::json::entry::entry;
use crate::json::reader::Name;
use crate::quantity::Time;

entry! {
    /// Cost of a day in addition to its materials.
    pub struct CostingEntry {
        required {}
        optional {
            /// Contents of each pack besides the pieces. Default: nothing.
            packing: Vec<PackingEntry>,
            /// Price of work. Default: work is not counted. Example: `"18.00 USD per 1 h"`.
            rate: PriceText,
            /// Work on one pot: measuring, degassing, cleaning up. Default: none. Example: `"12 min"`.
            per_pot: Written<Time>,
            /// Work on one heat. Default: none. Example: `"4 min"`.
            per_heat: Written<Time>,
            /// Work on one shot: filling, cooling, taking out, trimming. Default: none. Example: `"50 s"`.
            per_shot: Written<Time>,
            /// Work on packing one pack. Default: none. Example: `"40 s"`.
            per_pack: Written<Time>,
            /// Worth of leftover in the cup and of sprues, as a share of what their materials cost. Default: 0 %.
            /// Example: `"60 %"`.
            left_over_worth: Percent,
            /// Profit as a share of the price. Default: no prices are shown. Example: `"45 %"`.
            margin: Percent,
            /// Anything worth keeping with it. Default: none. Example: `"Prices before tax."`.
            notes: String,
            /// Whether its numbers are right although they look like a slip. What cannot be is refused all the same. Default:
            /// `false`, a number that looks like a slip is refused. Example: `true`.
            sure: bool,
        }
    }
}

entry! {
    /// Something that goes into each pack.
    pub struct PackingEntry {
        required {
            /// Its name. Example: `"bag"`.
            name: Name,
            /// Its price per number of pieces. Example: `"9.00 USD per 100 pieces"`.
            price: PriceText,
        }
        optional {
            /// Number of it in one pack. Default: 1. Example: `2`.
            per_pack: u32,
        }
    }
}

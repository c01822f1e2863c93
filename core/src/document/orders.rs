//! The order list of a day, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use super::book::{Format, LayerEntry};
use super::written::Written;
use crate::formula::Overlap;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::reader::{Count, Name};
use crate::quantity::{Amount, Mass, Time, Volume};

entry! {
    /// A day's orders.
    pub struct OrdersDocument {
        required {
            /// The format and its version. Example: `"pourwright/1.0"`.
            format: Format,
            /// The order lines; at least one.
            lines: Vec<OrderLine>,
        }
        optional {
            /// The day, as the shop writes it. Default: none. Example: `"2027-03-02"`.
            day: Name,
            /// Anything a reader should know about it. Default: none. Example: `"Spring orders, second part."`.
            about: String,
            /// Leftover mixes that may go into the day's pots. Default: none.
            shelf: Vec<ShelfEntry>,
            /// Stock before the day, by material; the plan shows shortages. Default: not known.
            /// Example: `{ "clear-base": "1 gal", "fine-salt": "8 lb" }`.
            stock: Named<Amount>,
            /// Pots that are there already, hot or set: the day goes on from them. Default: none.
            pots: Vec<PotThereEntry>,
            /// Letters of pots by their ids, as an earlier plan of the day gave them. A pot with that id keeps its letter, and
            /// others get one that is not here. Default: none. Example: `{ "dusk + plain": "A" }`.
            letters: Named<Name>,
        }
    }
}

entry! {
    /// A pot that is there already. Its `parts` say what is in it; without these it is not begun, and without `draws` either it
    /// is no more than a letter and an id that no other pot gets.
    pub struct PotThereEntry {
        required {
            /// Its letter. Example: `"B"`.
            pot: Name,
        }
        optional {
            /// Its id in the plan that it was begun by. Default: none. Example: `"dusk + plain"`.
            id: Name,
            /// Amounts in it, by material. Default: none. Example: `{ "clear-base": "1 cup", "plum": "32 drops" }`.
            parts: Named<Amount>,
            /// Capacity of its cup, one of the bench. Default: the smallest that holds it. Example: `"2 cup"`.
            cup: Written<Volume>,
            /// Whether it is hot. Default: `false`, it has set or was never heated.
            /// Example: `true`.
            hot: bool,
            /// Whether it has been degassed. Default: `false`; one that was heated is not degassed again.
            /// Example: `true`.
            degassed: bool,
            /// Number of heats behind it. Default: 0, or 1 if it is hot. Example: `1`.
            heats: Count,
            /// Heat used in these: time at the temperature of its plastisol's budget. Default: not known. Example:
            /// `"4.6 min"`.
            spent: Written<Time>,
            /// Shots that it was begun for. Default: none.
            draws: Vec<DrawThereEntry>,
            /// Whether each material in it counts as right for its formulas, however far off it is. Default: `false`, what is off
            /// is put right first.
            /// Example: `true`.
            accepted: bool,
            /// Whether it may take other shots too, and give up such as the lines do not need. Default: `true`.
            /// Example: `false`.
            takes_more: bool,
        }
    }
}

entry! {
    /// Shots that a pot was begun for.
    pub struct DrawThereEntry {
        required {
            /// An order line that they are for, counted from 1. Example: `2`.
            line: u32,
            /// Their number. Example: `6`.
            shots: u32,
        }
        optional {
            /// The layer of a laminated piece that they make, counted from 1. Default: 1. Example: `2`.
            layer: u32,
        }
    }
}

entry! {
    /// A leftover mix on the shelf. Either its `formulas`, if it was made as planned, or its `parts` say what is in it.
    pub struct ShelfEntry {
        required {
            /// The name written on it. Example: `"dusk, March 1"`.
            name: Name,
            /// Its mass. Example: `"104 g"`.
            mass: Written<Mass>,
        }
        optional {
            /// Its formulas: a color and a body. Default: none; required without `parts`. Example: `["dusk", "plain"]`.
            formulas: Vec<Name>,
            /// Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
            overlap: Overlap,
            /// Amounts that went into the pot that it is left over from, by material, on any scale. Default: none; required
            /// without `formulas`. Example: `{ "clear-base": "1 cup", "plum": "32 drops" }`.
            parts: Named<Amount>,
            /// Number of heats behind it. Default: not known; required if the book limits `heats`. Example: `1`.
            heats: u32,
            /// Heat used in these, as the sheet showed it: time at the temperature of its plastisol's budget. Default:
            /// not known. Example: `"4.6 min"`.
            spent: Written<Time>,
            /// The day it was made, as YYYY-MM-DD; the oldest is used first. Default: not known. Example:
            /// `"2027-03-01"`.
            made: String,
        }
    }
}

entry! {
    /// One line of an order: a `product`, or a `mold` with `formulas` or `layers`; and either `pieces` or `packs`.
    pub struct OrderLine {
        required {
            /// The order it belongs to. Example: `"31"`.
            order: Name,
        }
        optional {
            /// A product of the book. Default: none; required without `mold`. Example: `"dusk finger"`.
            product: Name,
            /// A mold of the book. Default: none; required without `product`. Example: `"finger-5"`.
            mold: Name,
            /// Formulas of a piece of one color. Default: none. Example: `["dusk", "plain"]`.
            formulas: Vec<Name>,
            /// Rule if two of these formulas dose the same material. Default: `"refuse"`. Example: `"add"`.
            overlap: Overlap,
            /// Layers of a laminated piece. Default: none.
            layers: Vec<LayerEntry>,
            /// The shape, in a mold with unlike cavities. Default: none; required there. Example: `"long"`.
            shape: Name,
            /// Number of pieces. Default: none; required without `packs`. Example: `24`.
            pieces: u32,
            /// Number of packs. Default: none; required without `pieces`. Example: `4`.
            packs: u32,
            /// Number of pieces in a pack. Default: none; required with `packs`. Example: `6`.
            pack_of: u32,
            /// The day it was promised for, as YYYY-MM-DD. Default: not known. Example: `"2027-03-04"`.
            promised: String,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::json::reader::read_value;
    use serde_json::json;

    #[test]
    fn a_line_names_its_order_and_keeps_what_a_program_adds() {
        let line = json!({ "order": "31", "product": "x", "pieces": 3, "ext": { "row": 7 } });
        let read: OrderLine = read_value(&line).unwrap();
        assert_eq!(read.ext.as_ref().and_then(|ext| ext.get("row")), Some(&json!(7)));
        assert_eq!(serde_json::to_value(&read).unwrap(), line);
        let faults = read_value::<OrderLine>(&json!({ "order": 31, "pieces": "3" })).unwrap_err();
        assert_eq!(faults.count(), 2);
    }
}

//! The order list of a day, as it is written.

use alloc::string::String;
use alloc::vec::Vec;

use super::book::{Format, LayerEntry};
use super::written::Written;
use crate::formula::Overlap;
use crate::json::entry::entry;
use crate::json::named::Named;
use crate::json::reader::Name;
use crate::quantity::{Amount, Mass, Time};

entry! {
    /// A day's orders.
    pub struct OrdersDocument {
        required {
            /// The format and its version.
            format: Format,
            /// The order lines.
            lines: Vec<OrderLine>,
        }
        optional {
            /// The day, as the shop writes it.
            day: Name,
            /// Anything a reader should know of it.
            about: String,
            /// Left-over mixes that may go into the day's pots.
            shelf: Vec<ShelfEntry>,
            /// What is in stock before the day, by material: "1/2 gal", "3 lb". The plan tells what runs short of these.
            stock: Named<Amount>,
        }
    }
}

entry! {
    /// A left-over mix on the shelf. What is in it is said by its formulas, where it was made as
    /// planned, or by its parts.
    pub struct ShelfEntry {
        required {
            /// What is written on it.
            name: Name,
            /// What it weighs.
            mass: Written<Mass>,
        }
        optional {
            /// Its formulas: a color and a body.
            formulas: Vec<Name>,
            /// What happens where two of these formulas dose the same material.
            overlap: Overlap,
            /// What went into the pot that it is left of, by material, on any scale.
            parts: Named<Amount>,
            /// Heats that it has spent; needed where the book limits them.
            heats: u32,
            /// What these spent, as time at the temperature of its plastisol's budget, as the sheet told it;
            /// not known where left out.
            spent: Written<Time>,
            /// The day it was made, as YYYY-MM-DD: the oldest is used first.
            made: String,
        }
    }
}

entry! {
    /// One line of an order: a product, or a mold with formulas or layers, and how many.
    pub struct OrderLine {
        required {
            /// The order it belongs to.
            order: Name,
        }
        optional {
            /// A product of the book.
            product: Name,
            /// A mold of the book, where no product is named.
            mold: Name,
            /// The formulas of a piece of one color.
            formulas: Vec<Name>,
            /// What happens where two of these formulas dose the same material.
            overlap: Overlap,
            /// The layers of a laminated piece.
            layers: Vec<LayerEntry>,
            /// The shape, in a mold with unlike cavities.
            shape: Name,
            /// How many pieces.
            pieces: u32,
            /// How many packs, where it is sold by the pack.
            packs: u32,
            /// Pieces in a pack.
            pack_of: u32,
            /// The day it was promised for, as YYYY-MM-DD.
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

//! What an order list comes to.

use alloc::vec::Vec;

use super::{DayCost, Parcel, PlannedLine, StockEntry};
use crate::show::{Calculated, part};

part! {
    /// What an order list comes to: of its plan, what an order form shows, to the bit. What the bench needs besides is not
    /// worked out, so that it answers sooner.
    pub struct Quote {
        /// The order lines, as given: their pots, and the mass of a piece; not how it sinks.
        pub lines: Vec<PlannedLine>,
        /// The parcel of each order, the first that is due first.
        pub parcels: Vec<Parcel>,
        /// Materials in stock and what the day takes of them, the scarcest first.
        pub stock: Vec<StockEntry>,
        /// Cost of the day, if the book states how to calculate it.
        pub cost: Option<Calculated<DayCost>>,
    }
}

//! Quote for an order list.

use alloc::vec::Vec;

use super::{DayCost, Parcel, PlannedLine, StockEntry};
use crate::show::{Calculated, part};

part! {
    /// Quote for an order list: the part of its plan that an order form shows, with the same bits. Weigh lists, steps and sink
    /// rates are left out, so that it is made sooner.
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

//! A shop's costs in addition to its materials: packing, work, the worth of leftover, the profit.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Packing, Profit};
use crate::price::Price;
use crate::quantity::{Ratio, Time};

/// How a shop calculates the cost of a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Costing {
    /// The items of each pack.
    pub packing: Vec<PackItem>,
    /// Work, where the shop counts it.
    pub work: Option<WorkTimes>,
    /// Worth of leftover (plastic that stays in the cup, and sprues that are kept) as a share of its material cost.
    pub left_over_worth: Ratio,
    /// The profit.
    pub profit: Option<Profit>,
}

/// Something that goes into each pack.
#[derive(Debug, Clone, PartialEq)]
pub struct PackItem {
    /// Its name.
    pub name: String,
    /// Its price per number of pieces.
    pub price: Price,
    /// How many of it a pack takes.
    pub per_pack: u32,
}

impl PackItem {
    /// The amount that a job uses.
    #[must_use]
    pub fn packing(&self) -> Packing<'_> {
        Packing { name: &self.name, price: &self.price, per_pack: self.per_pack }
    }
}

/// How long the work takes, and what it is worth.
#[derive(Debug, Clone, PartialEq)]
pub struct WorkTimes {
    /// A price per time.
    pub rate: Price,
    /// For measuring, degassing and cleaning up after one pot.
    pub per_pot: Time,
    /// For one heat of a pot.
    pub per_heat: Time,
    /// For one shot: filling, cooling, taking out, trimming.
    pub per_shot: Time,
    /// For packing one pack.
    pub per_pack: Time,
}

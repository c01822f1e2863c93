//! What a shop reckons besides its materials: packing, work, what left-over is worth, what it earns.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Packing, Profit};
use crate::price::Price;
use crate::quantity::{Ratio, Time};

/// How a shop reckons what a day costs.
#[derive(Debug, Clone, PartialEq)]
pub struct Costing {
    /// What goes into each pack.
    pub packing: Vec<PackItem>,
    /// Work, where the shop counts it.
    pub work: Option<WorkTimes>,
    /// What of its material cost a left-over is worth: plastic that stays in the cup, and sprues that are kept.
    pub left_over_worth: Ratio,
    /// What is earned.
    pub profit: Option<Profit>,
}

/// Something that goes into each pack.
#[derive(Debug, Clone, PartialEq)]
pub struct PackItem {
    /// What it is called.
    pub name: String,
    /// Its price per number of pieces.
    pub price: Price,
    /// How many of it a pack takes.
    pub per_pack: u32,
}

impl PackItem {
    /// What a job takes of it.
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

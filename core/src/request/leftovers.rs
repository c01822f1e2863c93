//! Leftovers from the shelf for a day's pots.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Open, request, response};
use crate::codes::code;
use crate::document::book::BookDocument;
use crate::document::orders::OrdersDocument;
use crate::fault::{Fault, Faults};
use crate::plan::{FromShelf, OnShelf, Plan, Weigh};
use crate::quantity::Mass;
use crate::show::{Note, Shown, text};

request! {
    /// Asks which left-overs of the orders' `shelf` go into which of the day's pots, and how much,
    /// so that as much as possible is used.
    pub struct LeftoversRequest {
        required {
            orders: OrdersDocument,
        }
        optional {
            book: BookDocument,
        }
    }
}

response! {
    /// Use of the shelf.
    pub struct LeftoversResponse {
        /// All that is used.
        pub used: Shown<Mass>,
        /// The pots that take of it.
        pub pots: Vec<PotLeftOvers>,
        /// The shelf, and what stays on it.
        pub shelf: Vec<OnShelf>,
        /// Notes on the day's plan.
        pub notes: Vec<Note>,
    }
}

response! {
    /// A pot that takes left-overs.
    pub struct PotLeftOvers {
        /// Its letter in the day's plan.
        pub pot: String,
        /// The formulas of its first stage.
        pub formulas: Vec<String>,
        /// Mix that goes in from the shelf.
        pub from_shelf: FromShelf,
        /// Additions that are still needed, in measures of the bench.
        pub add: Vec<Weigh>,
        /// Heats that the pot itself takes, beyond those that the left-overs have spent.
        pub heats: u32,
    }
}

impl LeftoversRequest {
    /// Plans the day and shares the shelf out.
    ///
    /// # Errors
    /// Faults of the book, else of the orders, else of the plan; an empty shelf.
    pub fn answer(self, open: Open<'_>) -> Result<LeftoversResponse, Faults> {
        if self.orders.shelf.as_ref().is_none_or(Vec::is_empty) {
            return Err(Faults::from(Fault {
                code: code!("shelf-missing").into(),
                path: "/orders".into(),
                message: "The orders name no leftover.".into(),
                help: "Add one: \"shelf\": [{ \"name\": \"dusk\", \"formulas\": [\"dusk\", \"plain\"], \"mass\": \"120 g\", \"heats\": 1 }].".into(),
            }));
        }
        let made = open.book(self.book)?.plan(self.orders);
        Ok(made.map_err(|faults| faults.below("/orders"))?.plan.into())
    }
}

impl From<Plan> for LeftoversResponse {
    fn from(plan: Plan) -> Self {
        let used = plan.shelf.iter().fold(Mass::default(), |sum, one| sum + one.used.quantity);
        let pots = plan.pots.into_iter().filter_map(|pot| {
            let heats = pot.stages.iter().fold(0_u32, |sum, stage| sum.saturating_add(stage.heats));
            let first = pot.stages.into_iter().next()?;
            Some(PotLeftOvers {
                pot: pot.pot,
                formulas: first.formulas,
                from_shelf: pot.from_shelf?,
                add: first.weigh,
                heats,
            })
        });
        Self {
            used: text::mass(used),
            pots: pots.collect(),
            shelf: plan.shelf,
            notes: plan.assumptions,
        }
    }
}

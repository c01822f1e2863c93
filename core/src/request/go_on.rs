//! A new plan at noon: the day goes on from what is there.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Open, request};
use crate::document::PlanDocument;
use crate::document::book::BookDocument;
use crate::document::orders::{OrderLine, OrdersDocument};
use crate::document::written::Written;
use crate::fault::Faults;
use crate::go_on::{self, GoneOn, GoodEntry, Now, PotNowEntry, SoFarEntry};
use crate::json::Named;
use crate::json::reader::Name;
use crate::quantity::Volume;

request! {
    /// Asks for the plan of the rest of a day.
    pub struct GoOnRequest {
        required {}
        optional {
            book: BookDocument,
            plan: PlanDocument,
            pots_now: Named<PotNowEntry>,
            ticks: Vec<Name>,
            good_pieces: Vec<GoodEntry>,
            more_lines: Vec<OrderLine>,
            orders_now: OrdersDocument,
            so_far: SoFarEntry,
            broken_molds: Vec<Name>,
            broken_cups: Vec<Written<Volume>>,
        }
    }
}

impl GoOnRequest {
    /// Goes on with the day.
    ///
    /// # Errors
    /// No plan; pots, steps, molds or cups that are not of it; a step of two pots that is done at one; what the new plan is
    /// refused for.
    pub fn answer(self, open: Open<'_>) -> Result<GoneOn, Faults> {
        let (book, plan) = (open.book(self.book)?, open.plan(self.plan)?);
        let ticks: Vec<String> = self.ticks.into_iter().flatten().map(|tick| tick.0).collect();
        go_on::go_on(
            &book,
            &plan,
            &Now {
                pots: self.pots_now.as_ref(),
                ticks: &ticks,
                good: self.good_pieces.as_deref().unwrap_or_default(),
                more: self.more_lines.as_deref().unwrap_or_default(),
                list: self.orders_now.as_ref(),
                so_far: self.so_far.as_ref(),
                broken_molds: self.broken_molds.as_deref().unwrap_or_default(),
                broken_cups: self.broken_cups.as_deref().unwrap_or_default(),
            },
        )
    }
}

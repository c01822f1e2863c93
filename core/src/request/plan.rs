//! A day's plan from a book and an order list.

use super::{Open, request};
use crate::document::PlanDocument;
use crate::document::book::BookDocument;
use crate::document::orders::OrdersDocument;
use crate::fault::Faults;

request! {
    /// Asks for the plan of a day.
    pub struct PlanRequest {
        required {
            orders: OrdersDocument,
        }
        optional {
            book: BookDocument,
        }
    }
}

impl PlanRequest {
    /// Plans the day.
    ///
    /// # Errors
    /// Faults of the book, else of the orders, else of the plan.
    pub fn answer(self, open: Open<'_>) -> Result<PlanDocument, Faults> {
        open.book(self.book)?.plan(self.orders).map_err(|faults| faults.below("/orders"))
    }
}

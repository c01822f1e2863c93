//! A day's plan from a book and an order list.

use super::request;
use crate::document::book::BookDocument;
use crate::document::orders::OrdersDocument;
use crate::document::{LoadedBook, PlanDocument};
use crate::fault::Faults;

request! {
    /// Asks for the plan of a day.
    pub struct PlanRequest {
        required {
            book: BookDocument,
            orders: OrdersDocument,
        }
        optional {}
    }
}

impl PlanRequest {
    /// Plans the day.
    ///
    /// # Errors
    /// Faults of the book, else of the orders, else of the plan.
    pub fn answer(self) -> Result<PlanDocument, Faults> {
        plan_of(self.book, self.orders)
    }
}

/// The plan of two documents of a request.
pub(super) fn plan_of(book: BookDocument, orders: OrdersDocument) -> Result<PlanDocument, Faults> {
    let book = LoadedBook::try_from(book).map_err(|faults| faults.below("/book"))?;
    book.plan(orders).map_err(|faults| faults.below("/orders"))
}

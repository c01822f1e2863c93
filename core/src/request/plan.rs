//! A day's plan from a book and an order list.

use alloc::sync::Arc;

use crate::book::Book;
use crate::document::MadeFrom;
use crate::document::book::BookDocument;
use crate::document::entry::entry;
use crate::document::orders::OrdersDocument;
use crate::fault::Faults;
use crate::parameter::parameter;
use crate::plan::Plan;
use crate::plan::day::Day;

entry! {
    /// Asks for the plan of a day.
    pub struct PlanRequest {
        required {
            #[doc = parameter!(book)]
            book: BookDocument,
            #[doc = parameter!(orders)]
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
    pub fn answer(self) -> Result<Plan, Faults> {
        let mut plan = plan_of(&self.book, &self.orders)?;
        plan.made_from = Some(MadeFrom { book: Arc::new(self.book), orders: self.orders });
        Ok(plan)
    }
}

/// The plan of two documents of a request.
pub(super) fn plan_of(book: &BookDocument, orders: &OrdersDocument) -> Result<Plan, Faults> {
    let book = Book::try_from(book).map_err(|faults| faults.below("/book"))?;
    let day = Day::resolve(orders, &book).map_err(|faults| faults.below("/orders"))?;
    Plan::make(&book, &day).map_err(|faults| faults.below("/orders"))
}

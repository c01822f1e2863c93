//! A book that is read once and planned with many times.

use alloc::sync::Arc;

use super::{ActualsDocument, BookDocument, MadeFrom, OrdersDocument, read_book, read_orders};
use crate::book::Book;
use crate::fault::Faults;
use crate::json::reader::read_value;
use crate::json::text;
use crate::plan::Plan;
use crate::plan::day::Day;
use crate::plan::record::{Actuals, Record};

/// A shop's book, read once, checked, and ready to plan any number of days. Its plans carry the documents they were made
/// from.
///
/// ```
/// use pourwright::document::LoadedBook;
///
/// # let book = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/demo/book.json"));
/// # let orders = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/demo/orders.json"));
/// let book = LoadedBook::from_text(book)?;
/// let plan = book.plan_text(orders)?;
/// assert_eq!(plan.pots.len(), 5);
/// # Ok::<(), pourwright::Faults>(())
/// ```
#[derive(Debug, Clone)]
pub struct LoadedBook {
    written: Arc<BookDocument>,
    ready: Book,
}

impl LoadedBook {
    /// Reads a book from JSON text.
    ///
    /// # Errors
    /// All faults of the text, else all of its form, else all of its meaning.
    pub fn from_text(text: &str) -> Result<Self, Faults> {
        read_book(&text::parse(text)?)?.try_into()
    }

    /// The book as numbers: materials, formulas, molds, tools.
    #[must_use]
    pub fn ready(&self) -> &Book {
        &self.ready
    }

    /// Plans the day of an order list.
    ///
    /// # Errors
    /// All faults of the orders, else of the plan.
    pub fn plan(&self, orders: OrdersDocument) -> Result<Plan, Faults> {
        let day = Day::resolve(&orders, &self.ready)?;
        let mut plan = Plan::make(&self.ready, &day)?;
        plan.made_from = Some(MadeFrom { book: Arc::clone(&self.written), orders });
        Ok(plan)
    }

    /// Plans the day of an order list in JSON text.
    ///
    /// # Errors
    /// All faults of the text, else all of its form, else those of [`LoadedBook::plan`].
    pub fn plan_text(&self, orders: &str) -> Result<Plan, Faults> {
        self.plan(read_orders(&text::parse(orders)?)?)
    }

    /// Record of a day: its `plan`, and what was really weighed and shot.
    ///
    /// # Errors
    /// All faults of the actuals, alone and against the plan.
    pub fn record(&self, plan: &Plan, actuals: &ActualsDocument) -> Result<Record, Faults> {
        Record::make(plan, &self.ready, &Actuals::resolve(actuals, &self.ready)?)
    }

    /// Record of a day, with the actuals in JSON text.
    ///
    /// # Errors
    /// All faults of the text, else all of its form, else those of [`LoadedBook::record`].
    pub fn record_text(&self, plan: &Plan, actuals: &str) -> Result<Record, Faults> {
        self.record(plan, &read_value(&text::parse(actuals)?)?)
    }
}

impl TryFrom<BookDocument> for LoadedBook {
    type Error = Faults;

    fn try_from(written: BookDocument) -> Result<Self, Faults> {
        let ready = Book::try_from(&written)?;
        Ok(Self { written: Arc::new(written), ready })
    }
}

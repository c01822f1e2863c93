//! A day's plan from a book and an order list.

use super::{Open, request};
use crate::document::PlanDocument;
use crate::document::book::BookDocument;
use crate::document::orders::OrdersDocument;
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::reader::{Count, read_value};
use crate::json::text;
use crate::plan::budget::{Budget, DEFAULT_POTS, DEFAULT_WORK};

entry! {
    /// What the plan may take; a day that takes more is refused with the number of pots, or where the work ended.
    pub struct BudgetEntry {
        required {}
        optional {
            /// Maximum number of pots that it begins. Default: 5000. Example: `200`.
            pots: Count,
            /// Maximum work, in thousands of steps: looks at a stage of a pot. Default: 10000. Example: `1000`.
            thousand_steps: Count,
        }
    }
}

impl BudgetEntry {
    /// Reads a budget from JSON text: `{ "pots": 200 }`.
    ///
    /// # Errors
    /// All faults of the text, else all of its form.
    pub fn from_text(text: &str) -> Result<Self, Faults> {
        read_value(&text::parse(text)?)
    }

    /// The budget, with the defaults of what is omitted.
    #[must_use]
    pub fn budget(&self) -> Budget<'static> {
        let work =
            self.thousand_steps.map_or(DEFAULT_WORK, |thousands| u64::from(thousands.0) * 1000);
        Budget::new().pots(self.pots.map_or(DEFAULT_POTS, |pots| pots.0)).work(work)
    }

    /// The budget of a request, which may leave it out.
    pub(super) fn or_default(entry: Option<&Self>) -> Budget<'static> {
        entry.map_or_else(Budget::new, Self::budget)
    }
}

request! {
    /// Asks for the plan of a day.
    pub struct PlanRequest {
        required {
            orders: OrdersDocument,
        }
        optional {
            book: BookDocument,
            budget: BudgetEntry,
        }
    }
}

impl PlanRequest {
    /// Plans the day.
    ///
    /// # Errors
    /// Faults of the book, else of the orders, else of the plan.
    pub fn answer(self, open: Open<'_>) -> Result<PlanDocument, Faults> {
        open.book(self.book)?
            .plan_within(self.orders, &BudgetEntry::or_default(self.budget.as_ref()))
            .map_err(|faults| faults.below("/orders"))
    }
}

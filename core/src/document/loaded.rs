//! A book that is read once and planned with many times.

use alloc::sync::Arc;

use super::resolve::book::resolved;
use super::{BookDocument, Format, MadeFrom, OpenPlan, OrdersDocument, PlanDocument};
use crate::book::Book;
use crate::fault::Faults;
use crate::plan::budget::Budget;
use crate::plan::day::{Day, KnownRecipes};
use crate::plan::{Plan, Quote};

/// A shop's book, read once, checked, and ready to plan any number of days and to answer any number of requests. Its plans
/// carry the documents they were made from. A clone is the same book, not a copy.
///
/// ```
/// use pourwright::document::LoadedBook;
///
/// # let book = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/demo/book.json"));
/// # let orders = include_str!(concat!(env!("CARGO_MANIFEST_DIR"), "/examples/demo/orders.json"));
/// let book = LoadedBook::from_text(book)?;
/// let made = book.plan_text(orders)?;
/// assert_eq!(made.plan.pots.len(), 5);
/// # Ok::<(), pourwright::Faults>(())
/// ```
#[derive(Debug, Clone)]
pub struct LoadedBook {
    written: Arc<BookDocument>,
    ready: Arc<Book>,
    recipes: Arc<KnownRecipes>,
}

impl LoadedBook {
    /// Reads a book from JSON text.
    ///
    /// # Errors
    /// All faults of the text, else all of its form, else all of its meaning.
    pub fn from_text(text: &str) -> Result<Self, Faults> {
        BookDocument::from_text(text)?.try_into()
    }

    /// The book as numbers: materials, formulas, molds, tools.
    #[must_use]
    pub fn ready(&self) -> &Book {
        &self.ready
    }

    /// The book as it is written.
    pub(crate) fn written(&self) -> &BookDocument {
        &self.written
    }

    /// Plans the day of an order list.
    ///
    /// # Errors
    /// All faults of the orders, else of the plan.
    pub fn plan(&self, orders: OrdersDocument) -> Result<PlanDocument, Faults> {
        self.plan_within(orders, &Budget::default())
    }

    /// Plans the day of an order list within `budget`.
    ///
    /// # Errors
    /// Those of [`LoadedBook::plan`]; more pots or work than the budget allows, or that its caller stopped it.
    pub fn plan_within(
        &self,
        orders: OrdersDocument,
        budget: &Budget<'_>,
    ) -> Result<PlanDocument, Faults> {
        let day = Day::resolve(&orders, &self.ready)?;
        let plan = Plan::make_knowing(&self.ready, &self.recipes, &day, budget)?;
        let made_from = Some(MadeFrom { book: Arc::clone(&self.written), orders });
        Ok(PlanDocument { format: Format::V1, made_from, plan })
    }

    /// Makes the quote for an order list, with its plan within `budget`.
    ///
    /// # Errors
    /// Those of [`LoadedBook::plan_within`].
    pub fn quote_within(
        &self,
        orders: &OrdersDocument,
        budget: &Budget<'_>,
    ) -> Result<Quote, Faults> {
        let day = Day::resolve(orders, &self.ready)?;
        Quote::make_knowing(&self.ready, &self.recipes, &day, budget)
    }

    /// Plans the day of an order list in JSON text.
    ///
    /// # Errors
    /// All faults of the text, else all of its form, else those of [`LoadedBook::plan`].
    pub fn plan_text(&self, orders: &str) -> Result<PlanDocument, Faults> {
        self.plan(OrdersDocument::from_text(orders)?)
    }

    /// Plans the day of an order list in JSON text, and keeps the plan open.
    ///
    /// # Errors
    /// Those of [`LoadedBook::plan_text`].
    pub fn open_plan_text(&self, orders: &str) -> Result<OpenPlan, Faults> {
        self.open_plan_text_within(orders, &Budget::default())
    }

    /// Plans the day of an order list in JSON text within `budget`, and keeps the plan open.
    ///
    /// # Errors
    /// Those of [`LoadedBook::plan_text`] and of [`LoadedBook::plan_within`].
    pub fn open_plan_text_within(
        &self,
        orders: &str,
        budget: &Budget<'_>,
    ) -> Result<OpenPlan, Faults> {
        let plan = self.plan_within(OrdersDocument::from_text(orders)?, budget)?;
        Ok(OpenPlan::new(self.clone(), plan))
    }
}

impl TryFrom<BookDocument> for LoadedBook {
    type Error = Faults;

    fn try_from(written: BookDocument) -> Result<Self, Faults> {
        Self::try_from(Arc::new(written))
    }
}

impl TryFrom<Arc<BookDocument>> for LoadedBook {
    type Error = Faults;

    fn try_from(written: Arc<BookDocument>) -> Result<Self, Faults> {
        let (book, recipes) = resolved(&written)?;
        Ok(Self { written, ready: Arc::new(book), recipes: Arc::new(recipes) })
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;

    use super::*;
    use crate::document::small::{BOOK, orders};

    // A loaded book keeps the recipes of its products; a book alone finds them each time.
    #[test]
    fn plans_and_quotes_are_those_of_the_book_alone() {
        let mut written: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        written["formulas"]["deep"] =
            serde_json::json!({ "per": "1 cup", "doses": { "blue": "40 drops" } });
        let product = |overlap| serde_json::json!({ "mold": "worm", "formulas": ["sky", "deep", "body"], "overlap": overlap });
        written["products"]["sum"] = product("add");
        written["products"]["last"] = product("last");
        let book = LoadedBook::from_text(&written.to_string()).unwrap();
        let lines = r#"
            { "order": "1", "product": "sum", "pieces": 9 },
            { "order": "2", "product": "last", "pieces": 12 },
            { "order": "3", "mold": "worm", "formulas": ["rust", "body"], "pieces": 5 }"#;
        let document = OrdersDocument::from_text(&orders(lines)).unwrap();
        let day = Day::resolve(&document, book.ready()).unwrap();
        let quote = book.quote_within(&document, &Budget::default()).unwrap();
        assert_eq!(quote, Quote::make(book.ready(), &day).unwrap());
        let plan = book.plan(document).unwrap().plan;
        assert_eq!(plan, Plan::make(book.ready(), &day).unwrap());
    }
}

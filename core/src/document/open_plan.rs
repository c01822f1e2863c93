//! A plan that is open: with the book that it was made from, ready to answer requests.

use super::{LoadedBook, PlanDocument};
use crate::codes::code;
use crate::fault::{Fault, Faults};
use crate::json::reader::read_value;
use crate::json::text;

/// A day's plan with the loaded book that it was made from: what the requests of a day in progress are asked of.
#[derive(Debug, Clone)]
pub struct OpenPlan {
    book: LoadedBook,
    document: PlanDocument,
}

impl OpenPlan {
    pub(super) const fn new(book: LoadedBook, document: PlanDocument) -> Self {
        Self { book, document }
    }

    /// Reopens a plan from the JSON text that it was stored as.
    ///
    /// # Errors
    /// All faults of the text, else all of its form; a plan that was stored without the book that it was made from.
    pub fn from_text(text: &str) -> Result<Self, Faults> {
        read_value::<PlanDocument>(&text::parse(text)?)?.try_into()
    }

    /// The book that it was made from.
    #[must_use]
    pub const fn book(&self) -> &LoadedBook {
        &self.book
    }

    /// The plan.
    #[must_use]
    pub const fn document(&self) -> &PlanDocument {
        &self.document
    }

    /// The plan, without its book.
    #[must_use]
    pub fn into_document(self) -> PlanDocument {
        self.document
    }
}

impl TryFrom<PlanDocument> for OpenPlan {
    type Error = Faults;

    fn try_from(document: PlanDocument) -> Result<Self, Faults> {
        let Some(made_from) = &document.made_from else {
            return Err(Faults::from(Fault {
                code: code!("plan-without-book").into(),
                path: "/made_from".into(),
                message: "The plan was stored without the book that it was made from.".into(),
                help: "Store plans whole, with \"made_from\"; or plan the orders again.".into(),
            }));
        };
        let book = LoadedBook::try_from(alloc::sync::Arc::clone(&made_from.book))
            .map_err(|faults| faults.below("/made_from/book"))?;
        Ok(Self::new(book, document))
    }
}

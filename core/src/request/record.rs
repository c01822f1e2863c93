//! A plan with what was really weighed and shot: the day's record.

use crate::document::LoadedBook;
use crate::document::book::BookDocument;
use crate::document::record::ActualsDocument;
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::parameter::parameter;
use crate::plan::Plan;
use crate::plan::record::Record;

entry! {
    /// Asks for the record of a day.
    pub struct RecordRequest {
        required {
            #[doc = parameter!(book)]
            book: BookDocument,
            #[doc = parameter!(plan)]
            plan: Plan,
            #[doc = parameter!(actuals)]
            actuals: ActualsDocument,
        }
        optional {}
    }
}

impl RecordRequest {
    /// Says what became of the plan.
    ///
    /// # Errors
    /// Faults of the book, else of the actuals, alone and beside the plan.
    pub fn answer(self) -> Result<Record, Faults> {
        let book = LoadedBook::try_from(self.book).map_err(|faults| faults.below("/book"))?;
        book.record(&self.plan, &self.actuals).map_err(|faults| faults.below("/actuals"))
    }
}

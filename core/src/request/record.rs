//! A plan with what was really weighed and shot: the day's record.

use super::request;
use crate::document::book::BookDocument;
use crate::document::{LoadedBook, PlanDocument};
use crate::fault::Faults;
use crate::record::{ActualsDocument, Record};

request! {
    /// Asks for the record of a day.
    pub struct RecordRequest {
        required {
            book: BookDocument,
            plan: PlanDocument,
            actuals: ActualsDocument,
        }
        optional {}
    }
}

impl RecordRequest {
    /// Says what became of the plan.
    ///
    /// # Errors
    /// Faults of the book, else of the actuals, alone and against the plan.
    pub fn answer(self) -> Result<Record, Faults> {
        let book = LoadedBook::try_from(self.book).map_err(|faults| faults.below("/book"))?;
        let record = book.record(&self.plan.plan, &self.actuals);
        record.map_err(|faults| faults.below("/actuals"))
    }
}

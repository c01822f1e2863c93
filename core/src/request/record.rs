//! A plan with what was really weighed and shot: the day's record.

use super::{Open, request};
use crate::document::PlanDocument;
use crate::document::book::BookDocument;
use crate::fault::Faults;
use crate::record::{ActualsDocument, Record};

request! {
    /// Asks for the record of a day.
    pub struct RecordRequest {
        required {
            actuals: ActualsDocument,
        }
        optional {
            book: BookDocument,
            plan: PlanDocument,
        }
    }
}

impl RecordRequest {
    /// Says what became of the plan.
    ///
    /// # Errors
    /// Faults of the book, else of the actuals, alone and against the plan.
    pub fn answer(self, open: Open<'_>) -> Result<Record, Faults> {
        let (book, plan) = (open.book(self.book)?, open.plan(self.plan)?);
        let record = book.record(&plan.plan, &self.actuals);
        record.map_err(|faults| faults.below("/actuals"))
    }
}

//! The document door: requests, and a book that is loaded once.

use std::sync::Arc;

use pourwright::document::{self, BookDocument, MadeFrom, text};
use pourwright::plan::Plan;
use pourwright::plan::day::Day;
use pourwright::request;
use pourwright::{Fault, Faults, book};
use serde::Serialize;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refused::Refused;

/// Does the calculation of a request.
///
/// # Errors
/// All faults of the request.
#[wasm_bindgen]
pub fn calculate(request: &str) -> Result<String, Refused> {
    let request = text::parse(request).and_then(|value| request::read(&value)).map_err(all)?;
    write(&request.answer().map_err(all)?)
}

/// A shop's book, read once for many plans.
#[derive(Debug)]
#[wasm_bindgen]
pub struct Book {
    written: Arc<BookDocument>,
    book: book::Book,
}

#[wasm_bindgen]
impl Book {
    /// Reads a book.
    ///
    /// # Errors
    /// All faults of the document.
    #[wasm_bindgen(constructor)]
    pub fn new(book: &str) -> Result<Self, Refused> {
        let written =
            text::parse(book).and_then(|value| document::read_book(&value)).map_err(all)?;
        let book = book::Book::try_from(&written).map_err(all)?;
        Ok(Self { written: Arc::new(written), book })
    }

    /// The plan of a day, as the request `plan` gives it.
    ///
    /// # Errors
    /// All faults of the orders, or of the plan.
    pub fn plan(&self, orders: &str) -> Result<String, Refused> {
        write(&self.make(orders).map_err(all)?)
    }

    /// The bench sheet of a day.
    ///
    /// # Errors
    /// All faults of the orders, or of the plan.
    pub fn sheet(&self, orders: &str) -> Result<String, Refused> {
        Ok(self.make(orders).map_err(all)?.sheet().to_string())
    }

    fn make(&self, orders: &str) -> Result<Plan, Faults> {
        let orders = document::read_orders(&text::parse(orders)?)?;
        let day = Day::resolve(&orders, &self.book)?;
        let mut plan = Plan::make(&self.book, &day)?;
        plan.made_from = Some(MadeFrom { book: Arc::clone(&self.written), orders });
        Ok(plan)
    }
}

fn write(answer: &impl Serialize) -> Result<String, Refused> {
    serde_json::to_string(answer).map_err(|error| {
        all(Faults::from(Fault {
            code: "unwritable".into(),
            path: String::new(),
            message: format!("The result cannot be written as JSON: {error}."),
            help: "Please report it with the request.".into(),
        }))
    })
}

/// All faults of a document.
fn all(faults: Faults) -> Refused {
    Refused(faults.into_vec())
}

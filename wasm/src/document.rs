//! Calls with documents: requests, and a book that is loaded once.

use pourwright::document::LoadedBook;
use pourwright::json::text;
use pourwright::request;
use pourwright::{Fault, Faults};
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
pub struct Book(LoadedBook);

#[wasm_bindgen]
impl Book {
    /// Reads a book.
    ///
    /// # Errors
    /// All faults of the document.
    #[wasm_bindgen(constructor)]
    pub fn new(book: &str) -> Result<Self, Refused> {
        LoadedBook::from_text(book).map(Self).map_err(all)
    }

    /// The plan of a day, as the request `plan` gives it.
    ///
    /// # Errors
    /// All faults of the orders, or of the plan.
    pub fn plan(&self, orders: &str) -> Result<String, Refused> {
        write(&self.0.plan_text(orders).map_err(all)?)
    }

    /// The bench sheet of a day.
    ///
    /// # Errors
    /// All faults of the orders, or of the plan.
    pub fn sheet(&self, orders: &str) -> Result<String, Refused> {
        Ok(self.0.plan_text(orders).map_err(all)?.sheet().to_string())
    }

    /// The notes to a day's plan.
    ///
    /// # Errors
    /// All faults of the orders, or of the plan.
    pub fn notes(&self, orders: &str) -> Result<String, Refused> {
        Ok(self.0.plan_text(orders).map_err(all)?.notes().to_string())
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

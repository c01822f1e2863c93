//! Calls with documents: requests, and books and plans that are open.

use pourwright::Faults;
use pourwright::document::{LoadedBook, OpenPlan};
use pourwright::request::{BudgetEntry, Open, result_text, unwritable};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refused::Refused;

#[wasm_bindgen(raw_module = "../src/stop.js")]
extern "C" {
    /// Whether the caller stops the plan.
    fn stopped() -> bool;
}

/// Does the calculation of a request.
///
/// # Errors
/// All faults of the request.
#[wasm_bindgen]
pub fn calculate(request: &str) -> Result<String, Refused> {
    answer(request, Open::default())
}

/// A shop's book, read once for many plans and requests.
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

    /// Does the calculation of a request, which leaves the book out.
    ///
    /// # Errors
    /// All faults of the request.
    pub fn request(&self, request: &str) -> Result<String, Refused> {
        answer(request, (&self.0).into())
    }

    /// Plans a day within a budget, and asks whether to stop.
    ///
    /// # Errors
    /// All faults of the budget, or of the orders, or of the plan; it takes more than its budget, or was stopped.
    pub fn open(&self, orders: &str, budget: &str) -> Result<Plan, Refused> {
        let budget = BudgetEntry::from_text(budget).map_err(all)?.budget().stop_if(&stopped);
        self.0.open_plan_text_within(orders, &budget).map(Plan).map_err(all)
    }
}

/// A day's plan, with the book that it was made from.
#[derive(Debug)]
#[wasm_bindgen]
pub struct Plan(OpenPlan);

#[wasm_bindgen]
impl Plan {
    /// Opens a plan again.
    ///
    /// # Errors
    /// All faults of the document; a plan without its book.
    #[wasm_bindgen(constructor)]
    pub fn new(plan: &str) -> Result<Self, Refused> {
        OpenPlan::from_text(plan).map(Self).map_err(all)
    }

    /// Does the calculation of a request, which leaves the book and the plan out.
    ///
    /// # Errors
    /// All faults of the request.
    pub fn request(&self, request: &str) -> Result<String, Refused> {
        answer(request, (&self.0).into())
    }

    /// The plan, as the request `plan` gives it.
    ///
    /// # Errors
    /// A result that cannot be written.
    pub fn document(&self) -> Result<String, Refused> {
        self.0.document().to_json().map_err(|error| all(unwritable(&error).into()))
    }

    /// The bench sheet.
    #[must_use]
    pub fn sheet(&self) -> String {
        self.0.document().sheet().to_string()
    }

    /// The notes to it.
    #[must_use]
    pub fn notes(&self) -> String {
        self.0.document().notes().to_string()
    }
}

/// The answer to a request, with what is open.
fn answer(request: &str, open: Open<'_>) -> Result<String, Refused> {
    result_text(request, open).map_err(all)
}

/// All faults of a document.
fn all(faults: Faults) -> Refused {
    Refused(faults.into_vec())
}

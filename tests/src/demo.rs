//! The demo day's documents, and the way from documents to a plan as JSON.

use pourwright::document::{LoadedBook, PlanDocument};
use pourwright::fault::Faults;
use serde_json::Value;

/// The demo book as text.
pub const BOOK: &str = include_str!("../../core/examples/demo/book.json");

/// The demo orders as text.
pub const ORDERS: &str = include_str!("../../core/examples/demo/orders.json");

/// The starter table as text.
pub const STARTER: &str = include_str!("../../core/data/starter.json");

/// A JSON value from a text that is known to be JSON.
pub fn json(text: &str) -> Value {
    serde_json::from_str(text).unwrap_or_else(|error| panic!("{error}"))
}

/// The plan for documents as text.
///
/// # Errors
/// All faults of the first document that has some, or of the plan.
pub fn plan(book: &str, orders: &str) -> Result<PlanDocument, Faults> {
    LoadedBook::from_text(book)?.plan_text(orders)
}

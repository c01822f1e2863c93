//! Documents: a shop's book, a day's orders, the plan and what became of it, as JSON.
//!
//! The format carries its version; a minor version only adds. Unknown fields and duplicate keys
//! are faults; an embedding program keeps its own data in `ext`. All faults of a document are
//! reported together, each with its path, what was found and what would do.

pub mod book;
pub mod orders;
pub(crate) mod reader;
pub mod record;
pub(crate) mod resolve;
pub mod starter;
pub mod text;
pub mod written;

pub use book::{BookDocument, Format};
pub use orders::OrdersDocument;
pub use reader::{Ext, Name};
pub use record::ActualsDocument;

use serde_json::Value;

use crate::book::Book;
use crate::fault::Faults;
use crate::plan::day::Day;
use crate::plan::record::Actuals;

/// Reads a book from its JSON value, as it is written.
///
/// # Errors
/// All faults of its form: unknown, missing and mistyped fields, amounts that cannot be read.
pub fn read_book(value: &Value) -> Result<BookDocument, Faults> {
    reader::read_value(value)
}

/// Reads an order list from its JSON value, as it is written.
///
/// # Errors
/// All faults of its form: unknown, missing and mistyped fields.
pub fn read_orders(value: &Value) -> Result<OrdersDocument, Faults> {
    reader::read_value(value)
}

/// Reads a book from JSON text, ready for planning.
///
/// # Errors
/// All faults of the text, else all of its form, else all of its meaning.
pub fn book_from_text(text: &str) -> Result<Book, Faults> {
    Book::try_from(&read_book(&text::parse(text)?)?)
}

/// Reads an order list from JSON text, ready for planning with `book`.
///
/// # Errors
/// All faults of the text, else all of its form, else all of its meaning.
pub fn orders_from_text(text: &str, book: &Book) -> Result<Day, Faults> {
    Day::resolve(&read_orders(&text::parse(text)?)?, book)
}

/// Reads what was really weighed and shot from JSON text, with the materials of `book`.
///
/// # Errors
/// All faults of the text, else all of its form, else all of its meaning.
pub fn actuals_from_text(text: &str, book: &Book) -> Result<Actuals, Faults> {
    Actuals::resolve(&reader::read_value(&text::parse(text)?)?, book)
}

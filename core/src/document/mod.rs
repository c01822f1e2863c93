//! Documents: a shop's book, a day's orders and the plan, as JSON.
//!
//! The format carries its version; a minor version only adds. Unknown fields and duplicate keys
//! are faults; an embedding program keeps its own data in `ext`. All faults of a document are
//! reported together, each with its path, what was found and what would do.

pub mod book;
pub mod orders;
pub mod process;
pub(crate) mod reader;
pub(crate) mod resolve;
#[cfg(feature = "schema")]
pub mod schema;
pub mod starter;
pub mod text;
pub mod written;

pub use book::{BookDocument, Format};
pub use orders::OrdersDocument;
pub use reader::{Ext, Name};

use serde_json::Value;

use crate::book::Book;
use crate::fault::Faults;
use crate::plan::day::Day;

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

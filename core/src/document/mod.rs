//! Documents: a shop's book, a day's orders, the plan and what became of it, as JSON.
//!
//! The format carries its version; a minor version only adds. Unknown fields and duplicate keys
//! are faults; an embedding program keeps its own data in `ext`. All faults of a document are
//! reported together, each with its path, what was found and what would fix it.

pub mod book;
pub mod color;
pub mod costing;
pub mod loaded;
pub mod open_plan;
pub mod orders;
pub mod plan;
pub mod process;
pub(crate) mod resolve;
pub mod starter;
pub mod written;

pub use book::{BookDocument, Format};
pub use loaded::LoadedBook;
pub use open_plan::OpenPlan;
pub use orders::OrdersDocument;
pub use plan::PlanDocument;
pub use starter::StarterDocument;

use alloc::sync::Arc;
use alloc::vec::Vec;

#[cfg(test)]
use crate::book::Book;
use crate::fault::{Fault, Faults};
use crate::json::entry::Fields;
use crate::json::read_back;
use crate::json::reader::{self, Node, Read};
use crate::json::text;
#[cfg(test)]
use crate::plan::day::Day;

/// A book and an order list: all that a plan is made from.
#[derive(Debug, Clone, PartialEq, serde::Serialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct MadeFrom {
    /// The shop's book.
    pub book: Arc<BookDocument>, // a book that is loaded once is shared by all of its plans
    /// The order list.
    pub orders: OrdersDocument,
}

reader::deserialize_by_reading! { MadeFrom; }

read_back::or_null_by_reading! { MadeFrom; }

impl Read for MadeFrom {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        const FIELDS: Fields = Fields { names: &["book", "orders"], required: 2 };
        let (mut book, mut orders) = (None, None);
        let whole = FIELDS.read(node, &mut [&mut book, &mut orders], faults);
        book.zip(orders)
            .filter(|_| whole)
            .map(|(book, orders)| Self { book: Arc::new(book), orders })
    }
}

impl BookDocument {
    /// Reads a book from JSON text, as it is written.
    ///
    /// # Errors
    /// All faults of the text, else all of its form: unknown, missing and mistyped fields, amounts that cannot be
    /// read.
    pub fn from_text(text: &str) -> Result<Self, Faults> {
        reader::read_value(&text::parse(text)?)
    }
}

impl OrdersDocument {
    /// Reads an order list from JSON text, as it is written.
    ///
    /// # Errors
    /// All faults of the text, else all of its form: unknown, missing and mistyped fields.
    pub fn from_text(text: &str) -> Result<Self, Faults> {
        reader::read_value(&text::parse(text)?)
    }
}

/// A book ready for planning, without the document that it was read from.
#[cfg(test)]
pub(crate) fn book_from_text(text: &str) -> Result<Book, Faults> {
    Book::try_from(&BookDocument::from_text(text)?)
}

/// An order list ready for planning with `book`.
#[cfg(test)]
pub(crate) fn orders_from_text(text: &str, book: &Book) -> Result<Day, Faults> {
    Day::resolve(&OrdersDocument::from_text(text)?, book)
}

/// A small book for the tests, and an order list for it.
#[cfg(test)]
pub(crate) mod small {
    use alloc::string::String;

    pub(crate) const BOOK: &str = r#"{
        "format": "pourwright/1.0",
        "measures": "us-customary",
        "materials": {
            "clear": { "kind": "plastisol", "density": "1.03 g/mL", "shot_window": ["320 °F", "340 °F"] },
            "firm": { "kind": "plastisol", "density": "1.06 g/mL", "shot_window": ["350 °F", "360 °F"] },
            "blue": { "kind": "colorant", "density": "1.05 g/mL", "drop": "0.045 g" },
            "red": { "kind": "colorant", "density": "1.05 g/mL" },
            "salt": { "kind": "salt", "like": "sodium-chloride" }
        },
        "formulas": {
            "body": { "per": "1 cup", "base": "clear", "doses": { "salt": "2 tbsp" } },
            "twin": { "per": "2 cup", "base": "clear", "doses": { "salt": "4 tbsp" } },
            "apart": { "per": "1 cup", "base": { "clear": "1 cup", "firm": "1 cup" }, "doses": {} },
            "sky": { "per": "1 cup", "doses": { "blue": "30 drops" } },
            "rust": { "per": "1 cup", "doses": { "red": "2 g" } }
        },
        "molds": {
            "worm": { "cavities": 4, "cavity": "9.5 mL", "sprue": "6 mL" },
            "pair": { "cavities": {
                "long": { "count": 1, "cavity": "9 mL" }, "short": { "count": 2, "cavity": "4 mL" }
            } }
        },
        "products": {
            "sky worm": { "mold": "worm", "formulas": ["sky", "body"] },
            "sky pair": { "mold": "pair", "formulas": ["sky", "body"] },
            "two": { "mold": "worm", "layers": [
                { "formulas": ["sky", "body"], "share": "60 %" }, { "formulas": ["rust", "body"], "share": "40 %" }
            ] }
        },
        "bench": {
            "balance": { "reads": "0.1 g" },
            "spoons": ["1 tbsp", "1 tsp", "1/2 tsp", "1/4 tsp"],
            "cups": [{ "holds": "2 cup", "marks": "1/4 cup" }],
            "injector": { "holds": "4 fl oz", "keeps": "4 mL", "count": 2 }
        }
    }"#;

    /// An order list with these lines.
    pub(crate) fn orders(lines: &str) -> String {
        alloc::format!("{{ \"format\": \"pourwright/1.0\", \"lines\": [{lines}] }}")
    }
}

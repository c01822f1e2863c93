//! The quote of a day, which is its plan with less in it.

use pourwright::document::{LoadedBook, OrdersDocument};
use pourwright::fault::Faults;
use pourwright::plan::budget::Budget;
use serde_json::{Value, json};

/// Compares the quote of documents with their plan as JSON, or with why they have none.
///
/// # Panics
/// Where they differ.
pub fn compare(book: &str, orders: &str, budget: &Budget<'_>, planned: Result<&Value, &Faults>) {
    let read = LoadedBook::from_text(book)
        .and_then(|book| OrdersDocument::from_text(orders).map(|orders| (book, orders)));
    let quote = read.and_then(|(book, orders)| book.quote_within(&orders, budget));
    match (quote, planned) {
        (Ok(quote), Ok(plan)) => {
            let mut lines = plan["lines"].clone();
            for line in lines.as_array_mut().expect("a list of lines") {
                line["sinks"] = Value::Null;
            }
            let [parcels, stock, cost] = ["parcels", "stock", "cost"].map(|part| &plan[part]);
            let quote = serde_json::to_value(quote).expect("a quote as JSON");
            let expected =
                json!({ "lines": lines, "parcels": parcels, "stock": stock, "cost": cost });
            assert_eq!(quote, expected);
        }
        (Err(found), Err(faults)) => assert_eq!(&found, faults),
        (quote, planned) => panic!("the quote is {quote:?}, the plan {planned:?}"),
    }
}

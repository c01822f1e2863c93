//! A book and a day's orders: planned, or refused with faults, and then judged by the readable second implementation.

use std::sync::OnceLock;

use pourwright::document::{LoadedBook, OpenPlan, OrdersDocument, PlanDocument};
use pourwright::fault::Faults;
use pourwright::plan::budget::Budget;
use pourwright_tests::demo::{STARTER, json};
use pourwright_tests::generate::{Documents, documents_of};
use pourwright_tests::quote;
use pourwright_tests::reference::plan::objections;
use pourwright_tests::small::small_day_of;
use serde_json::{Value, json as object};

use super::chance::Chance;
use super::tree::cross;
use super::{Seen, see_codes};

/// So that a case ends soon.
const POTS: u32 = 60;
const WORK: u64 = 200_000;

/// Checks `{"book": ..., "orders": ...}`.
///
/// # Errors
/// A case that is not of this form.
///
/// # Panics
/// Where a fault says nothing, or a plan is objected to, takes more than its budget, is not read again as the same, or has another
/// quote.
pub fn check(case: &Value) -> Result<Seen, String> {
    let (book, orders) = (&case["book"], &case["orders"]);
    if !book.is_object() || !orders.is_object() {
        return Err("no \"book\" or no \"orders\"".into());
    }
    let mut seen = Seen::new();
    let (book_text, orders_text) = (book.to_string(), orders.to_string());
    let compare = |planned| quote::compare(&book_text, &orders_text, &limits(), planned);
    let budget = limits();
    match plan(&book_text, &orders_text, &budget) {
        Ok(made) => {
            assert!(budget.spent() <= WORK, "{} steps", budget.spent());
            let text = serde_json::to_string(&made).unwrap();
            let made: Value = serde_json::from_str(&text).unwrap();
            let pots = made["pots"].as_array().map_or(0, Vec::len);
            assert!(pots <= POTS as usize, "{pots} pots");
            let found = objections(book, orders, starter(), &made);
            assert!(found.is_empty(), "{}", found.join("\n"));
            let again = OpenPlan::from_text(&text).unwrap_or_else(|faults| panic!("{faults}"));
            assert_eq!(serde_json::to_string(&again.into_document()).unwrap(), text);
            compare(Ok(&made));
            see_codes(&made, "planned", &mut seen);
        }
        Err(faults) => {
            compare(Err(&faults));
            for fault in faults.iter() {
                let (code, help) = (&fault.code, &fault.help);
                assert!(!code.is_empty() && !fault.message.is_empty() && !help.is_empty());
                assert!(fault.path.is_empty() || fault.path.starts_with('/'), "{}", fault.path);
                seen.insert(format!("refused-{code}"));
            }
        }
    }
    Ok(seen)
}

fn limits() -> Budget<'static> {
    Budget::new().pots(POTS).work(WORK)
}

fn plan(book: &str, orders: &str, budget: &Budget<'_>) -> Result<PlanDocument, Faults> {
    LoadedBook::from_text(book)?.plan_within(OrdersDocument::from_text(orders)?, budget)
}

fn starter() -> &'static Value {
    static STARTER_TABLE: OnceLock<Value> = OnceLock::new();
    STARTER_TABLE.get_or_init(|| json(STARTER))
}

/// Another day: of the same shop with something of another in it, or a new one.
pub fn change(case: &mut Value, chance: &mut Chance<'_>) {
    let is_small = case["book"]["materials"]["stain"].is_object();
    let is_new = !case["book"].is_object() || chance.happens(1);
    let Documents { book, orders } = if is_small != (is_new && chance.happens(5)) {
        small_day_of(chance.numbers(110))
    } else {
        documents_of(chance.numbers(400))
    };
    let donor = object!({ "book": book, "orders": orders });
    if is_new {
        *case = donor;
        return;
    }
    for _ in 0..=chance.below(4) {
        let part = *chance.one_of(&["book", "book", "orders"]);
        cross(&mut case[part], &donor[part], chance);
    }
}

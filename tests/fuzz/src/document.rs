//! Any bytes at the calls that read documents.

use std::sync::OnceLock;

use pourwright::request::answer_text;
use pourwright_ffi::*;

use super::call::{
    BOOK, ORDERS, RECORD, ask, ask_book, ask_plan, error_json, load, plan, read_plan, reopen, taken,
};

/// Sends `text` to each call that reads a document: as a request, a book, an order list, a plan.
///
/// # Panics
/// Where a call fails without a fault, gives what is no JSON, or answers a request otherwise than the core does.
pub fn any_text(text: &[u8]) {
    as_request(text);
    as_book(text);
    as_orders(text);
    as_plan(text);
}

fn as_request(text: &[u8]) {
    // SAFETY: the text is as long as said.
    let found = ask(|out, error| unsafe {
        pour_request(text.as_ptr().cast(), text.len(), Some(out), None, Some(error))
    });
    let wanted = std::str::from_utf8(text).map(answer_text);
    match found {
        Ok(out) => assert_eq!(Ok(taken(out)), wanted),
        Err(error) if wanted.is_err() => {
            assert_eq!(pour_error_status(Some(&error)), POUR_NOT_UTF8);
        }
        Err(error) => assert_eq!(Ok(error_json(&error)), wanted),
    }
    let _ = ask_book(Some(demo()), text);
}

fn as_book(text: &[u8]) {
    if let Ok(book) = load(text)
        && let Ok(plan) = plan(Some(&book), ORDERS.as_bytes())
    {
        pour_book_free(Some(book));
        check_plan(plan);
    }
}

fn as_orders(text: &[u8]) {
    if let Ok(plan) = plan(Some(demo()), text) {
        check_plan(plan);
    }
}

/// A plan that was changed may be opened, and then is whatever it says: it prints, and answers or refuses.
fn as_plan(text: &[u8]) {
    if let Ok(plan) = reopen(text) {
        let _ = ask_plan(Some(&plan), RECORD.as_bytes());
        let _ = read_plan(Some(&plan)).map_err(|error| error_json(&error)).unwrap();
        pour_plan_free(Some(plan));
    }
}

fn demo() -> &'static Book {
    static DEMO: OnceLock<Box<Book>> = OnceLock::new();
    DEMO.get_or_init(|| load(BOOK.as_bytes()).map_err(|e| error_json(&e)).unwrap())
}

/// A plan can be printed, and its JSON opened again as the same plan.
fn check_plan(plan: Box<Plan>) {
    let (sheet, json) = read_plan(Some(&plan)).map_err(|error| error_json(&error)).unwrap();
    assert!(sheet.contains("ORDER OF WORK"), "{sheet}");
    let again = reopen(json.as_bytes()).map_err(|error| error_json(&error)).unwrap();
    assert_eq!(read_plan(Some(&again)).ok(), Some((sheet, json)));
    pour_plan_free(Some(again));
    pour_plan_free(Some(plan));
}

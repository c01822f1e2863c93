//! Any bytes at the calls that read documents.

use std::sync::OnceLock;

use pourwright::request::answer_text;
use pourwright_ffi::*;
use serde_json::{Value, json};

use super::call::{
    BOOK, ORDERS, RECORD, ask, ask_book, ask_lines, ask_plan, error_json, load, plan, read_plan,
    reopen, taken,
};
use super::chance::Chance;
use super::{Seen, see_codes, tree};

/// Checks `{"document": ...}`, any JSON; `{"text": "..."}`, which need not be JSON; `{"bytes": [123, 255]}`, which need
/// not be UTF-8. Each call that reads a document gets it: as a request, a book, an order list, a plan.
///
/// # Errors
/// A case that is not of this form.
///
/// # Panics
/// Where a call fails without a fault, gives what is not JSON, or answers a request otherwise than the core does.
pub fn check(case: &Value) -> Result<Seen, String> {
    let text = text_of(case).ok_or("no \"document\", \"text\" or \"bytes\"")?;
    let mut seen = Seen::new();
    see("request", as_request(&text), &mut seen);
    see("request-of-book", ask_book(Some(demo()), &text), &mut seen);
    as_lines(&text);
    see("book", as_book(&text), &mut seen);
    see("orders", as_orders(&text), &mut seen);
    see("plan", as_plan(&text), &mut seen);
    Ok(seen)
}

/// The text of a case.
pub fn text_of(case: &Value) -> Option<Vec<u8>> {
    if let Some(document) = case.get("document") {
        return Some(document.to_string().into());
    }
    if let Some(text) = case["text"].as_str() {
        return Some(text.into());
    }
    let bytes = case["bytes"].as_array()?.iter();
    bytes.map(|byte| byte.as_u64().and_then(|byte| byte.try_into().ok())).collect()
}

/// Another text: a document of the demo shop with something of it changed, or a few bytes.
pub fn change(case: &mut Value, chance: &mut Chance<'_>) {
    let mut text = match text_of(case) {
        Some(text) if chance.happens(9) => text,
        _ => chance.one_of(whole()).to_string().into(),
    };
    let document = serde_json::from_slice(&text);
    *case = match document {
        Ok(mut document) if chance.happens(7) => {
            let donor = chance.one_of(whole());
            for _ in 0..=chance.below(4) {
                tree::change(&mut document, donor, chance);
            }
            json!({ "document": document })
        }
        _ => {
            chance.change_text(&mut text);
            match String::from_utf8(text) {
                Ok(text) => json!({ "text": text }),
                Err(error) => json!({ "bytes": error.into_bytes() }),
            }
        }
    };
}

/// Documents to begin with: the demo shop's, the plan of its day, and the requests of the vectors.
fn whole() -> &'static [Value] {
    static WHOLE: OnceLock<Vec<Value>> = OnceLock::new();
    WHOLE.get_or_init(|| {
        let made = plan(Some(demo()), ORDERS.as_bytes()).map_err(|error| error_json(&error));
        let (_, made) =
            read_plan(Some(&made.unwrap())).map_err(|error| error_json(&error)).unwrap();
        let requests = include_str!("../../committed/written.jsonl").lines();
        // As often as all requests together, which are some hundreds.
        let demo = [BOOK, ORDERS, &made].repeat(100);
        // Some requests are no JSON.
        demo.into_iter()
            .chain(requests)
            .filter_map(|text| serde_json::from_str(text).ok())
            .collect()
    })
}

fn see(of: &str, answer: Result<String, Box<Error>>, seen: &mut Seen) {
    let text = answer.unwrap_or_else(|error| error_json(&error));
    see_codes(&serde_json::from_str(&text).unwrap(), of, seen);
}

fn as_request(text: &[u8]) -> Result<String, Box<Error>> {
    // SAFETY: the text is as long as said.
    let found = ask(|out, error| unsafe {
        pour_request(text.as_ptr().cast(), text.len(), Some(out), None, Some(error))
    });
    let found = found.map(taken);
    let wanted = std::str::from_utf8(text).map(answer_text);
    match &found {
        Ok(answer) => assert_eq!(Ok(answer), wanted.as_ref()),
        Err(error) if wanted.is_err() => assert_eq!(pour_error_status(Some(error)), POUR_NOT_UTF8),
        Err(error) => assert_eq!(Ok(error_json(error)), wanted),
    }
    found
}

/// As lines of requests: each has one answer in its place, and is never an error of the call.
fn as_lines(text: &[u8]) {
    let (answers, refused) = ask_lines(None, text).map_err(|error| error_json(&error)).unwrap();
    let answers: Vec<Value> =
        answers.lines().map(|answer| serde_json::from_str(answer).unwrap()).collect();
    assert_eq!(answers.iter().filter(|answer| answer.get("faults").is_some()).count(), refused);
    assert_eq!(answers.len(), text.split_inclusive(|byte| *byte == b'\n').count());
}

fn as_book(text: &[u8]) -> Result<String, Box<Error>> {
    let book = load(text)?;
    let made = plan(Some(&book), ORDERS.as_bytes())?;
    pour_book_free(Some(book));
    Ok(check_plan(made))
}

fn as_orders(text: &[u8]) -> Result<String, Box<Error>> {
    plan(Some(demo()), text).map(check_plan)
}

/// A plan that was changed may be opened, and then is whatever it says: it prints, and answers or refuses.
fn as_plan(text: &[u8]) -> Result<String, Box<Error>> {
    let plan = reopen(text)?;
    let _ = read_plan(Some(&plan)).map_err(|error| error_json(&error)).unwrap();
    let answer = ask_plan(Some(&plan), RECORD.as_bytes());
    pour_plan_free(Some(plan));
    answer
}

fn demo() -> &'static Book {
    static DEMO: OnceLock<Box<Book>> = OnceLock::new();
    DEMO.get_or_init(|| load(BOOK.as_bytes()).map_err(|e| error_json(&e)).unwrap())
}

/// A plan can be printed, and its JSON, which is given, opened again as the same plan.
fn check_plan(plan: Box<Plan>) -> String {
    let (sheet, json) = read_plan(Some(&plan)).map_err(|error| error_json(&error)).unwrap();
    assert!(sheet.contains("ORDER OF WORK"), "{sheet}");
    let again = reopen(json.as_bytes()).map_err(|error| error_json(&error)).unwrap();
    assert_eq!(read_plan(Some(&again)).ok(), Some((sheet, json.clone())));
    pour_plan_free(Some(again));
    pour_plan_free(Some(plan));
    json
}

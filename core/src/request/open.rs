//! The book or plan that a request is asked of.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;

use crate::codes::code;
use crate::document::book::BookDocument;
use crate::document::{LoadedBook, OpenPlan, PlanDocument};
use crate::fault::{Fault, Faults};

/// The book or plan that a request is asked of, or neither. A request of an open book leaves `book` out; one of an open plan, `plan` as well.
#[derive(Debug, Clone, Copy, Default)]
pub struct Open<'a> {
    book: Option<&'a LoadedBook>,
    plan: Option<&'a PlanDocument>,
}

impl<'a> From<&'a LoadedBook> for Open<'a> {
    fn from(book: &'a LoadedBook) -> Self {
        Self { book: Some(book), plan: None }
    }
}

impl<'a> From<&'a OpenPlan> for Open<'a> {
    fn from(plan: &'a OpenPlan) -> Self {
        Self { book: Some(plan.book()), plan: Some(plan.document()) }
    }
}

impl<'a> Open<'a> {
    /// The book of a request: its own, or the open one.
    ///
    /// # Errors
    /// Faults of its own book; no book, or two.
    pub(super) fn book(self, own: Option<BookDocument>) -> Result<Cow<'a, LoadedBook>, Faults> {
        match (own, self.book) {
            (Some(own), None) => {
                let book = LoadedBook::try_from(own).map_err(|faults| faults.below("/book"))?;
                Ok(Cow::Owned(book))
            }
            (None, Some(open)) => Ok(Cow::Borrowed(open)),
            (None, None) => Err(missing("book").into()),
            (Some(_), Some(_)) => Err(given_twice("book").into()),
        }
    }

    /// The plan of a request: its own, or the open one.
    ///
    /// # Errors
    /// No plan, or two.
    pub(super) fn plan(self, own: Option<PlanDocument>) -> Result<Cow<'a, PlanDocument>, Faults> {
        match (own, self.plan) {
            (Some(own), None) => Ok(Cow::Owned(own)),
            (None, Some(open)) => Ok(Cow::Borrowed(open)),
            (None, None) => Err(missing("plan").into()),
            (Some(_), Some(_)) => Err(given_twice("plan").into()),
        }
    }
}

fn missing(what: &str) -> Fault {
    Fault {
        code: code!("missing-field").into(),
        path: String::new(),
        message: format!("\"{what}\" is missing."),
        help: format!("Add \"{what}\" here, or ask an open {what}."),
    }
}

fn given_twice(what: &str) -> Fault {
    Fault {
        code: code!("open-and-given").into(),
        path: format!("/{what}"),
        message: format!("The request has a {what} of its own, but is asked of an open one."),
        help: format!("Leave \"{what}\" out, or ask without an open {what}."),
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::{String, ToString};
    use alloc::vec::Vec;

    use serde_json::{Value, json};

    use crate::document::{LoadedBook, OpenPlan};

    const BOOK: &str = include_str!("../../examples/demo/book.json");
    const ORDERS: &str = include_str!("../../examples/demo/orders.json");

    fn value(text: &str) -> Value {
        serde_json::from_str(text).unwrap()
    }

    fn faults(answer: &str) -> Vec<(String, String)> {
        let faults = value(answer)["faults"].as_array().cloned().unwrap_or_default();
        let text = |one: &Value| one.as_str().unwrap_or_default().to_string();
        faults.iter().map(|fault| (text(&fault["code"]), text(&fault["path"]))).collect()
    }

    #[test]
    fn an_open_book_answers_as_one_that_is_in_the_request() {
        let open = LoadedBook::from_text(BOOK).unwrap();
        let mut request = json!({ "calculate": "formula", "formulas": ["dusk", "plain"] });
        let short = open.answer_text(&request.to_string());
        request["book"] = value(BOOK);
        assert_eq!(short, crate::request::answer_text(&request.to_string()));
        assert_eq!(faults(&short), []);
        let twice = open.answer_text(&request.to_string());
        assert_eq!(faults(&twice), [("open-and-given".into(), "/book".into())]);
    }

    #[test]
    fn a_plan_that_is_reopened_answers_as_the_one_that_was_made() {
        let made = LoadedBook::from_text(BOOK).unwrap().open_plan_text(ORDERS).unwrap();
        let written = serde_json::to_string(made.document()).unwrap();
        let reopened = OpenPlan::from_text(&written).unwrap();
        let sheet = |plan: &OpenPlan| plan.document().sheet().to_string();
        assert_eq!(sheet(&reopened), sheet(&made));
        let request =
            r#"{ "calculate": "record", "actuals": { "format": "pourwright/1.0", "pots": {} } }"#;
        let answer = made.answer_text(request);
        assert_eq!(faults(&answer), []);
        assert_eq!(reopened.answer_text(request), answer);
    }

    #[test]
    fn a_request_without_the_book_or_plan_that_it_needs_is_refused() {
        let formula = r#"{ "calculate": "formula", "formulas": ["dusk"] }"#;
        let missing = [("missing-field".to_string(), String::new())];
        assert_eq!(faults(&crate::request::answer_text(formula)), missing);
        let record =
            r#"{ "calculate": "record", "actuals": { "format": "pourwright/1.0", "pots": {} } }"#;
        assert_eq!(faults(&LoadedBook::from_text(BOOK).unwrap().answer_text(record)), missing);
    }

    #[test]
    fn a_plan_without_its_book_is_not_reopened() {
        let made = LoadedBook::from_text(BOOK).unwrap().plan_text(ORDERS).unwrap();
        let mut written = serde_json::to_value(&made).unwrap();
        written["made_from"] = Value::Null;
        let refused = OpenPlan::from_text(&written.to_string()).unwrap_err().into_vec();
        assert_eq!((&*refused[0].code, &*refused[0].path), ("plan-without-book", "/made_from"));
    }
}

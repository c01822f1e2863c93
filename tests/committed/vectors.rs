//! The vectors that every door must answer alike: `tests/vectors/`.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use pourwright::request::{CALCULATIONS, answer_text, answer_value};
use pourwright_tests::demo;
use serde_json::{Value, json};

use crate::samples;

/// Those written by hand.
const WRITTEN: &str = "tests/committed/written.jsonl";

/// All requests, those written by hand first, and their answers of today.
pub(crate) struct Vectors {
    written: Vec<String>,
    requests: Vec<String>,
    pub(crate) answers: Vec<String>,
}

/// Made once for all tests.
pub(crate) fn vectors() -> &'static Vectors {
    static VECTORS: OnceLock<Vectors> = OnceLock::new();
    VECTORS.get_or_init(|| {
        let written: Vec<String> = crate::read(WRITTEN).lines().map(with_fresh_plan).collect();
        let requests = [written.clone(), examples(), of_codes(), with_broken_books()].concat();
        let answers = requests.iter().map(|request| answer_text(request)).collect();
        Vectors { written, requests, answers }
    })
}

/// The example of each request, with the demo's book, and the plan of its day, where it needs them.
fn examples() -> Vec<String> {
    let book = demo::json(demo::BOOK);
    let day = json!({ "calculate": "plan", "book": book, "orders": demo::json(demo::ORDERS) });
    let mut plan = answer_value(&day)["result"].take();
    plan.as_object_mut().unwrap().remove("calculate");
    let example = |name: &&str| {
        let mut request = demo::json(&crate::read(&format!("core/examples/requests/{name}.json")));
        for (field, document) in [("book", &book), ("plan", &plan)] {
            if answer_value(&request).get("result").is_none() {
                request[field] = document.clone();
            }
        }
        request.to_string()
    };
    CALCULATIONS.iter().map(example).collect()
}

/// A request with each of the broken books, as text: some have a key twice.
fn with_broken_books() -> Vec<String> {
    let of = |name: &str| {
        let book = crate::read(&format!("tests/documents/broken/{name}")).replace('\n', " ");
        format!("{{\"calculate\":\"formula\",\"formulas\":[\"plain\"],\"book\":{book}}}")
    };
    crate::broken_books().iter().map(|name| of(name)).collect()
}

/// A request for each code that the others do not get.
fn of_codes() -> Vec<String> {
    let samples = samples::all().iter();
    samples
        .filter(|sample| !sample.request.is_null() && !sample.is_open)
        .map(|sample| sample.request.to_string())
        .collect()
}

/// The request `line`; where it asks for a record, with the plan that the library makes today from what the plan in it
/// was made from; where it learns, with the records that it makes today of the days in `ext`.
fn with_fresh_plan(line: &str) -> String {
    let Ok(Value::Object(mut request)) = serde_json::from_str(line) else { return line.into() };
    if request.get("calculate") == Some(&json!("learn")) && request.contains_key("ext") {
        let records: Value = request["ext"]["days"]
            .as_array()
            .unwrap()
            .iter()
            .map(|day| record(&request["book"], &request["ext"]["orders"], day))
            .collect();
        request.insert("records".into(), records);
        return Value::Object(request).to_string();
    }
    // Those of a plan carry it.
    if request.get("plan").is_none_or(|plan| plan["made_from"].is_null()) {
        return line.into();
    }
    let from = &request["plan"]["made_from"];
    let again = json!({ "calculate": "plan", "book": from["book"], "orders": from["orders"] });
    let mut plan = answer_value(&again)["result"].take();
    plan.as_object_mut().unwrap().remove("calculate");
    if request["plan"] == plan {
        return line.into();
    }
    request.insert("plan".into(), plan);
    Value::Object(request).to_string()
}

/// The record of a day, from its date and the notes of its pots.
fn record(book: &Value, orders: &Value, day: &Value) -> Value {
    let mut orders = orders.clone();
    orders["day"] = day["day"].clone();
    let plan = answer_value(&json!({ "calculate": "plan", "book": book, "orders": orders }));
    let plan = &plan["result"];
    let actuals = json!({ "format": "pourwright/1.0", "pots": day["pots"] });
    let request = json!({ "calculate": "record", "book": book, "plan": plan, "actuals": actuals });
    answer_value(&request)["result"].take()
}

#[test]
fn the_answers_are_fresh() {
    let Vectors { written, requests, answers } = vectors();
    crate::fresh(WRITTEN, &(written.join("\n") + "\n"));
    crate::fresh("tests/vectors/requests.jsonl", &(requests.join("\n") + "\n"));
    assert!(answers.iter().all(|answer| !answer.contains('\n')));
    let answers = answers.join("\n") + "\n";
    crate::fresh("tests/vectors/answers.jsonl", &answers);
    crate::write_answers("rust.requests", &answers);
}

/// Every calculation is answered once at least, and refused once at least.
#[test]
fn every_calculation_is_there() {
    let (mut answered, mut refused) = (BTreeSet::new(), BTreeSet::new());
    for (request, answer) in vectors().requests.iter().zip(&vectors().answers) {
        let Ok(Value::Object(fields)) = serde_json::from_str(request) else { continue };
        let Some(Value::String(name)) = fields.get("calculate") else { continue };
        let kind = if answer.starts_with("{\"result\":") { &mut answered } else { &mut refused };
        kind.insert(name.clone());
    }
    for name in CALCULATIONS {
        assert!(answered.contains(*name), "no request for \"{name}\" is answered");
        assert!(refused.contains(*name), "no request for \"{name}\" is refused");
    }
}

//! The vectors that every door must answer alike: `tests/vectors/`.

use std::collections::BTreeSet;

use pourwright::request::{CALCULATIONS, answer_text};
use serde_json::Value;

fn requests() -> String {
    crate::read("tests/vectors/requests.jsonl")
}

#[test]
fn the_answers_are_fresh() {
    let answers: Vec<String> = requests().lines().map(answer_text).collect();
    assert!(answers.iter().all(|answer| !answer.contains('\n')));
    crate::fresh("tests/vectors/answers.jsonl", &(answers.join("\n") + "\n"));
}

/// Every calculation is answered once at least, and refused once at least.
#[test]
fn every_calculation_is_there() {
    let (mut answered, mut refused) = (BTreeSet::new(), BTreeSet::new());
    for request in requests().lines() {
        let Ok(Value::Object(fields)) = serde_json::from_str(request) else { continue };
        let Some(Value::String(name)) = fields.get("calculate") else { continue };
        let answer = answer_text(request);
        let kind = if answer.starts_with("{\"result\":") { &mut answered } else { &mut refused };
        kind.insert(name.clone());
    }
    for name in CALCULATIONS {
        assert!(answered.contains(*name), "no request for \"{name}\" is answered");
        assert!(refused.contains(*name), "no request for \"{name}\" is refused");
    }
}

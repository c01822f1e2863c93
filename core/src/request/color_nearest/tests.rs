use serde_json::{Value, json};

use crate::request::tests::result;

fn request(color: Value) -> Value {
    let book: Value =
        serde_json::from_str(include_str!("../../../examples/demo/book.json")).unwrap();
    json!({ "calculate": "color-nearest", "color": color, "book": book })
}

/// A color that a formula was seen to have is that formula, whatever the model says of it; a dark gray is the black one.
#[test]
fn the_nearest_comes_first() {
    let mut seen = request(json!({ "lab": [40, 10, -10] }));
    seen["book"]["formulas"]["reed"]["color"] = json!({ "lab": [40, 10, -10] });
    let answer = result(seen);
    let first = &answer["formulas"][0];
    assert_eq!((&first["formula"], &first["was_seen"]), (&json!("reed"), &json!(true)), "{answer}");
    assert_eq!(first["difference"]["difference"], 0.0);
    let answer = result(request(json!({ "srgb": [80, 80, 80] })));
    let first = &answer["formulas"][0];
    assert_eq!(
        (&first["formula"], &first["was_seen"]),
        (&json!("night"), &json!(false)),
        "{answer}"
    );
    assert_eq!(first["notes"][0]["code"], "color-outside-model", "{answer}");
    // Bodies have no color of their own.
    assert_eq!(answer["formulas"].as_array().unwrap().len(), 5, "{answer}");
}

#[test]
fn a_formula_of_unknown_colorants_says_why() {
    let mut request = request(json!({ "srgb": [80, 80, 80] }));
    request["book"]["materials"]["soot"].as_object_mut().unwrap().remove("let_downs");
    let answer = result(request);
    let names: alloc::vec::Vec<_> =
        answer["not_known"].as_array().unwrap().iter().map(|one| one["formula"].clone()).collect();
    assert_eq!(names, ["ember", "night"], "{answer}");
    assert!(answer["not_known"][0]["why"].as_str().unwrap().contains("soot"), "{answer}");
}

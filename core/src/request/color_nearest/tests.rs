use alloc::string::ToString;

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

/// Swatches of thin pieces: over white they are lighter, calculated or seen; a base of which nothing is known has a note.
#[test]
fn formulas_have_swatches_of_thin_pieces() {
    let mut request = request(json!({ "srgb": [80, 80, 80] }));
    request["piece_thickness"] = json!("2 mm");
    request["book"]["formulas"]["reed"]["color"] = json!({ "lab": [40, 10, -10] });
    let bare = result(request.clone());
    let night = &bare["formulas"][0];
    assert_eq!((&night["formula"], &night["through"]), (&json!("night"), &json!(null)), "{bare}");
    assert!(night["notes"].to_string().contains("color-no-backings"), "{bare}");
    request["book"]["materials"]["clear-base"]["over_backings"] = json!({
        "film_thickness": "3 mm", "white": { "lab": [96, 0, 1] }, "black": { "lab": [20, 0, 0] },
        "over_white": { "lab": [93.5, -0.6, 3.0] }, "over_black": { "lab": [66, -1.5, -2.5] } });
    let answer = result(request);
    for formula in answer["formulas"].as_array().unwrap() {
        let through = &formula["through"];
        let light = |over: &str| through[over]["lightness"].as_f64().unwrap();
        assert!(light("over_white") > light("over_black"), "{formula}");
    }
    let text = answer["text"].to_string();
    assert!(text.contains("At 2 mm: "), "{text}");
    // Flake is named with its share at that depth.
    assert!(answer["formulas"].to_string().contains("of a piece of 2 mm"), "{answer}");
}

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

/// All that have a color, by how far they are; the lines say so.
#[test]
fn formulas_are_in_order() {
    let answer = result(request(json!({ "lab": [60, 10, 5] })));
    let formulas = answer["formulas"].as_array().unwrap();
    let off: alloc::vec::Vec<f64> =
        formulas.iter().map(|one| one["difference"]["difference"].as_f64().unwrap()).collect();
    assert!(off.len() == 5 && off.is_sorted(), "{off:?}");
    for (one, line) in formulas.iter().zip(answer["text"].as_array().unwrap()) {
        let start = alloc::format!("{} (as calculated): ΔE₀₀ ", one["formula"].as_str().unwrap());
        assert!(line.as_str().unwrap().starts_with(&start), "{line}");
    }
    assert_eq!(answer["text"][5], answer["statement"]);
}

/// Two bases, weighed: K/S of the mixture is the mean of theirs (one constant, Kubelka and Munk).
#[test]
fn bases_are_mixed_by_what_they_absorb() {
    use crate::color::kubelka_munk::{k_over_s, reflectance};
    use crate::color::lab::Srgb;
    let (one, other) = (Srgb::from_bytes(240, 235, 220), Srgb::from_bytes(200, 210, 225));
    let mut request = request(json!({ "lab": [80, 0, 0] }));
    let book = &mut request["book"];
    book["materials"]["clear-base"]["color"] = json!({ "srgb": [240, 235, 220] });
    book["materials"]["firm-base"]["color"] = json!({ "srgb": [200, 210, 225] });
    let base = json!({ "clear-base": "2 g", "firm-base": "1 g" });
    book["formulas"]["fine"] =
        json!({ "per": "300 g", "base": base, "doses": { "soot": "0.000001 g" } });
    let answer = result(request);
    let formulas = answer["formulas"].as_array().unwrap();
    let found = &formulas.iter().find(|one| one["formula"] == "fine").unwrap()["color"];
    let mixed = [0, 1, 2].map(|i| {
        let [one, other] = [&one, &other].map(|srgb| k_over_s(srgb.linear()[i]).unwrap());
        reflectance((2.0 * one + other) / 3.0).unwrap()
    });
    let wanted = crate::color::lab::Lab::of_linear(&mixed);
    assert!((found["lightness"].as_f64().unwrap() - wanted.lightness()).abs() < 0.01, "{found}");
    assert!((found["b"].as_f64().unwrap() - wanted.b()).abs() < 0.01, "{found} {wanted:?}");
}

/// What the model leaves out, each with why; what is clear or only softens is not among it.
#[test]
fn what_the_model_leaves_out_is_said() {
    let mut request = request(json!({ "srgb": [80, 80, 80] }));
    let doses = json!({
        "soot": "4 drops", "silver-pearl": "1/4 tsp", "teal-flake": "1/2 tsp", "fine-salt": "1 tsp",
        "softener": "1 tsp", "stabilizer": "1 tsp"
    });
    request["book"]["formulas"] =
        json!({ "all": { "per": "1 cup", "base": "clear-base", "doses": doses } });
    request["book"].as_object_mut().unwrap().remove("products");
    let answer = result(request);
    let notes: alloc::vec::Vec<&str> = answer["formulas"][0]["notes"]
        .as_array()
        .unwrap()
        .iter()
        .map(|note| note["message"].as_str().unwrap())
        .collect();
    assert_eq!(notes.len(), 3, "{answer}");
    for (name, why) in
        [("silver-pearl", "angle"), ("teal-flake", "surface"), ("fine-salt", "clouds")]
    {
        assert!(notes.iter().any(|note| note.contains(name) && note.contains(why)), "{notes:?}");
    }
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

/// A formula is what a cup that was poured by it is: as far from the color, and as sure, if the drops do not scatter.
#[test]
fn a_formula_is_a_cup_of_it() {
    let color = json!({ "lab": [60, 10, 5] });
    let mut near = request(color.clone());
    let book = &mut near["book"];
    book["bench"]["uncertainty"] = json!({ "drop_scatter": "0 %" });
    book["formulas"]["plain plum"] =
        json!({ "per": "120 g", "base": "clear-base", "doses": { "plum": "12 drops" } });
    let trial = json!({ "start": "120 g", "base": "clear-base", "log": [{ "plum": "12 drops" }] });
    let next = json!({
        "calculate": "color-next", "book": book.clone(), "trial": trial, "target": color
    });
    let (near, next) = (result(near), result(next));
    let formulas = near["formulas"].as_array().unwrap();
    let found = &formulas.iter().find(|one| one["formula"] == "plain plum").unwrap()["difference"];
    for field in ["difference", "low", "high"] {
        let [one, other] = [found, &next["now"]].map(|of| of[field].as_f64().unwrap());
        assert!((one - other).abs() < 1e-6, "{field}: {found} {}", next["now"]);
    }
}

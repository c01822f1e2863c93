use rstest::rstest;
use serde_json::{Value, json};

use crate::request::tests::{fault_codes, result};

fn request(colorant: &str) -> Value {
    let book: Value =
        serde_json::from_str(include_str!("../../../examples/demo/book.json")).unwrap();
    json!({ "calculate": "let-down-series", "colorant": colorant, "book": book })
}

/// Soot is dosed by 44 drops a cup at most: 1.892 g in 243.7 g, 0.776 %. 25 g of that take 0.194 g, 5 drops of 0.043 g.
#[test]
fn two_doses_fill_the_dish() {
    let answer = result(request("soot"));
    let [base, weak, strong] = answer["pieces"].as_array().unwrap().as_slice() else {
        panic!("{answer}")
    };
    assert_eq!(
        (&base["dose"], &base["base_mass"]["text"]),
        (&json!(null), &json!("25 g")),
        "{answer}"
    );
    assert_eq!(
        (&weak["dose"], &strong["dose"]),
        (&json!("2 drops"), &json!("5 drops")),
        "{answer}"
    );
    let ratio = |piece: &Value| piece["ratio"]["value"].as_f64().unwrap();
    assert!(strong["ratio"]["text"].as_str().unwrap().starts_with("0.77"), "{answer}");
    assert!((ratio(strong) / ratio(weak) - 4.0).abs() < 1e-9, "{answer}");
}

/// What the answer says, poured and read, is what a book takes.
#[rstest]
#[case("fine-salt", "color-no-colorant")]
#[case("sot", "unknown-name")]
fn faults(#[case] colorant: &str, #[case] code: &str) {
    assert_eq!(fault_codes(request(colorant)), [code]);
}

#[test]
fn a_dish_has_a_size() {
    let mut small = request("soot");
    small["test_piece"] = json!("0.5 g");
    assert_eq!(fault_codes(small), ["out-of-range"]);
}

/// A powder is let down by the spoon: one eighth of a teaspoon of 0.35 g/mL is 0.216 g, and the strong piece has 2 % of it.
#[test]
fn a_powder_is_let_down_by_the_spoon() {
    let mut request = request("chalk");
    let chalk = request["book"]["materials"]["chalk"].as_object_mut().unwrap();
    chalk.remove("drop");
    chalk.remove("let_downs");
    chalk.insert("as_scooped".into(), json!("0.35 g/mL"));
    request["book"]["formulas"]["shell"]["doses"]["chalk"] = json!("2 tsp");
    let answer = result(request.clone());
    let [_, weak, strong] = answer["pieces"].as_array().unwrap().as_slice() else {
        panic!("{answer}")
    };
    // 2 tsp of 4.929 mL in 236.6 mL of 1.03 g/mL: 1.416 %. 25 g of it take 0.354 g, two eighths.
    assert_eq!(
        (&weak["dose"], &strong["dose"]),
        (&json!("1/8 tsp"), &json!("1/4 tsp")),
        "{answer}"
    );
    let base = strong["base_mass"]["value"].as_f64().unwrap();
    assert!((base - 0.25 * 4.928_921_593_75 * 0.35 / 0.014_158).abs() < 0.05, "{answer}");
    // A level spoon is as sure as leveling is, however many.
    assert_eq!(weak["uncertainty"], strong["uncertainty"]);
    request["book"]["bench"].as_object_mut().unwrap().remove("spoons");
    assert_eq!(fault_codes(request.clone()), ["color-no-measure"]);
}

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

/// The largest dose of the formulas decides, wherever it is in the book; a formula that doses none of it, or nothing of it, does
/// not; then it is 1 %. 25 g of base at 0.25 and at 1 % take 0.0625 and 0.25 g: 2 and 6 drops of 0.043 g.
#[test]
fn the_strongest_formula_decides() {
    let ratio = |night: Value, ember: Value| {
        let mut request = request("soot");
        request["book"]["formulas"]["night"]["doses"]["soot"] = night;
        request["book"]["formulas"]["ember"]["doses"]["soot"] = ember;
        let answer = result(request);
        let last = answer["pieces"][2].clone();
        (last["ratio"]["value"].as_f64().unwrap(), last["dose"].clone())
    };
    let of = |drops: f64| drops * 0.043 / 243.691;
    for (night, ember) in [("44 drops", "3 drops"), ("3 drops", "44 drops")] {
        let (found, dose) = ratio(json!(night), json!(ember));
        assert!((found / of(44.0) - 1.0).abs() < 1e-3, "{found} {}", of(44.0));
        assert_eq!(dose, "5 drops");
    }
    assert_eq!(ratio(json!("0 drops"), json!("0 drops")), (0.01, json!("6 drops")));
}

/// n drops are as sure as one by √n, and weigh what their dose of the base is. With a scatter of 12 % it takes (12/5)² of them, 6,
/// to be within 5 %.
#[test]
fn a_piece_is_as_sure_as_its_drops() {
    for (scatter, share, counts) in [("5 %", 0.05, [2.0, 5.0]), ("12 %", 0.12, [6.0, 6.0])] {
        let mut request = request("soot");
        request["book"]["bench"]["uncertainty"] = json!({ "drop_scatter": scatter });
        let answer = result(request);
        let text = answer["text"].as_array().unwrap();
        let number = |value: &Value| value["value"].as_f64().unwrap();
        let base = &answer["pieces"][0];
        assert_eq!((number(&base["ratio"]), number(&base["uncertainty"])), (0.0, 0.0), "{answer}");
        assert_eq!(text[0], "25 g of base alone, if the book has no color of it.", "{answer}");
        for (i, count) in counts.into_iter().enumerate() {
            let piece = &answer["pieces"][i + 1];
            let drops = alloc::format!("{count} drops");
            assert_eq!(piece["dose"], drops, "{answer}");
            let wanted = count * 0.043 / number(&piece["ratio"]);
            assert!((number(&piece["base_mass"]) / wanted - 1.0).abs() < 1e-3, "{answer}");
            let wanted = share / libm::sqrt(count);
            assert!((number(&piece["uncertainty"]) / wanted - 1.0).abs() < 1e-3, "{answer}");
            let [base, unsure] =
                ["base_mass", "uncertainty"].map(|field| piece[field]["text"].as_str().unwrap());
            let line = alloc::format!("{drops} of soot in {base} of base (± {unsure}).");
            assert_eq!(text[i + 1], line, "{answer}");
        }
        assert_eq!(text.len(), 5, "{answer}");
        assert!(text[3].as_str().unwrap().starts_with("Heat each"), "{answer}");
        assert_eq!(text[4], answer["statement"], "{answer}");
    }
}

/// Drops that scatter by 20 % are within 0.05 % only if 160,000 of them are counted, which nobody does: 10,000 are the most, and
/// the answer says how sure these are, 20 %/100.
#[test]
fn nobody_counts_more_than_ten_thousand_drops() {
    let mut request = request("soot");
    request["book"]["bench"]["uncertainty"] = json!({ "drop_scatter": "20 %" });
    request["book"]["materials"]["soot"]["tolerance"] = json!("0.05 %");
    let answer = result(request);
    for piece in &answer["pieces"].as_array().unwrap()[1..] {
        assert_eq!(piece["dose"], "10000 drops", "{answer}");
        let unsure = piece["uncertainty"]["value"].as_f64().unwrap();
        assert!((unsure / 0.002 - 1.0).abs() < 1e-9, "{answer}");
    }
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

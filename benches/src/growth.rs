//! Days that grow along one axis: a book and an order list, as JSON texts.

use serde_json::{Map, Value, json};

use crate::day;

/// The shop of the benches, to be changed.
fn shop() -> Value {
    serde_json::from_str(&day::book(10)).expect("JSON")
}

fn of(lines: Vec<Value>) -> String {
    json!({ "format": "pourwright/1.0", "day": "2027-03-01", "lines": lines }).to_string()
}

/// `count` colorants of the shop's kind.
fn add_colorants(book: &mut Value, count: usize) {
    for number in 0..count {
        book["materials"][format!("pigment-{number:05}")] =
            json!({ "kind": "colorant", "density": "1.1 g/mL", "drop": "0.045 g" });
    }
}

/// One product of a body and `count` colors, each with a colorant of its own.
#[must_use]
pub fn formulas_of_a_product(count: usize) -> (String, String) {
    let mut book = shop();
    add_colorants(&mut book, count);
    let mut formulas = Vec::from([json!("plain")]);
    for number in 0..count {
        let name = format!("tint-{number:05}");
        let mut doses = Map::new();
        doses.insert(format!("pigment-{number:05}"), json!("2 g"));
        book["formulas"][&name] = json!({ "per": "1 gal", "doses": doses });
        formulas.push(json!(name));
    }
    book["products"] = json!({ "all": { "mold": "finger-5", "formulas": formulas } });
    (book.to_string(), of(vec![json!({ "order": "1", "product": "all", "pieces": 200 })]))
}

/// One formula of `count` colorants.
#[must_use]
pub fn materials_of_a_formula(count: usize) -> (String, String) {
    let mut book = shop();
    add_colorants(&mut book, count);
    let doses: Map<String, Value> =
        (0..count).map(|number| (format!("pigment-{number:05}"), json!("2 g"))).collect();
    book["formulas"]["tint"] = json!({ "per": "1 gal", "doses": doses });
    let line =
        json!({ "order": "1", "mold": "finger-5", "formulas": ["tint", "plain"], "pieces": 200 });
    (book.to_string(), of(vec![line]))
}

/// `count` lines for pieces of two colors, each of colors of its own.
#[must_use]
pub fn laminates(count: usize) -> (String, String) {
    let mut book = shop();
    add_colorants(&mut book, 20);
    let colors = count.max(2);
    for number in 0..colors {
        let doses = json!({
            format!("pigment-{:05}", number % 20): format!("{} drops", 20 + number % 37),
            format!("pigment-{:05}", (number / 20 + 1) % 20): format!("{} drops", 20 + number / 100),
        });
        book["formulas"][format!("hue-{number:05}")] = json!({ "per": "1 cup", "doses": doses });
    }
    let lines = (0..count).map(|number| {
        let layer = |hue: usize, share: &str| {
            json!({ "formulas": [format!("hue-{:05}", hue % colors), "plain"], "share": share })
        };
        json!({
            "order": number.to_string(), "mold": "finger-5", "pieces": 4,
            "layers": [layer(number, "60 %"), layer(number + 1, "40 %")],
        })
    });
    (book.to_string(), of(lines.collect()))
}

/// `count` lines for products that the book does not have, which has as many others.
#[must_use]
pub fn unknown_products(count: usize) -> (String, String) {
    let mut book = shop();
    let products: Map<String, Value> = (0..count)
        .map(|number| {
            let product = json!({ "mold": "finger-5", "formulas": ["color-0001", "plain"] });
            (format!("dusk worm {number:05}"), product)
        })
        .collect();
    book["products"] = products.into();
    let lines = (0..count).map(|number| {
        json!({ "order": number.to_string(), "product": format!("dawn worm {number:05}"), "pieces": 4 })
    });
    (book.to_string(), of(lines.collect()))
}

/// A bench of `count` cups, no two alike.
#[must_use]
pub fn cups_of_a_bench(count: usize) -> (String, String) {
    let (mut shop, orders) = (shop(), pieces_of_a_line(10).1);
    let cup = |n: usize| json!({ "holds": format!("{} mL", 500 + n), "marks": "50 mL" });
    shop["bench"]["cups"] = (0..count).map(cup).collect();
    (shop.to_string(), orders)
}

/// One line of `count` pieces.
#[must_use]
pub fn pieces_of_a_line(count: usize) -> (String, String) {
    let line = json!({
        "order": "1", "mold": "finger-5", "formulas": ["color-0001", "plain"], "pieces": count,
    });
    (shop().to_string(), of(vec![line]))
}

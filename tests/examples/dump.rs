#![allow(missing_docs, clippy::all, clippy::pedantic)]
use pourwright::document::LoadedBook;
use pourwright_tests::demo::{BOOK, ORDERS, json};
use pourwright_tests::generate::documents;
use proptest::strategy::{Strategy, ValueTree};
use proptest::test_runner::{Config, RngAlgorithm, TestRng, TestRunner};
use serde_json::{Value, json};
use std::io::Write;

fn one(out: &mut impl Write, book: &Value, orders: &Value) -> Option<Value> {
    let loaded = match LoadedBook::from_text(&book.to_string()) {
        Ok(l) => l,
        Err(f) => {
            writeln!(out, "BOOK {f}").unwrap();
            return None;
        }
    };
    match loaded.plan_text(&orders.to_string()) {
        Ok(plan) => {
            let value = serde_json::to_value(&plan).unwrap();
            let mut short = value.clone();
            short["made_from"] = Value::Null;
            writeln!(out, "{}", serde_json::to_string_pretty(&short).unwrap()).unwrap();
            writeln!(out, "{}", plan.sheet()).unwrap();
            Some(value)
        }
        Err(faults) => {
            writeln!(out, "FAULTS {faults}").unwrap();
            None
        }
    }
}

fn main() {
    let path = std::env::args().nth(1).unwrap();
    let mut out = std::io::BufWriter::new(std::fs::File::create(path).unwrap());
    let demo = json(BOOK);
    let rng = TestRng::from_seed(RngAlgorithm::ChaCha, &[7; 32]);
    let mut runner = TestRunner::new_with_rng(Config::default(), rng);
    let mut days = vec![(demo.clone(), json(ORDERS))];
    for melt in ["melt-again"] {
        let mut book = demo.clone();
        book["limits"]["sprues"] = json!(melt);
        days.push((book, json(ORDERS)));
    }
    {
        let mut book = demo.clone();
        book["limits"]["fresh_base"] = json!(true);
        days.push((book, json(ORDERS)));
        // Many of each, all of the demo's products.
        let mut lines = Vec::new();
        for (n, name) in demo["products"].as_object().unwrap().keys().enumerate() {
            let mut line =
                json!({"order": format!("{}", n / 3), "product": name, "pieces": 30 + 17 * n});
            let mold = demo["products"][name]["mold"].as_str().unwrap_or("");
            if demo["molds"][mold]["cavities"].is_object() {
                line["shape"] = json!(
                    demo["molds"][mold]["cavities"].as_object().unwrap().keys().next().unwrap()
                );
            }
            lines.push(line);
        }
        let orders = json!({"format": "pourwright/1.0", "lines": lines});
        days.push((demo.clone(), orders.clone()));
        let mut book = demo.clone();
        book["bench"].as_object_mut().unwrap().remove("oven");
        days.push((book.clone(), orders.clone()));
        book["bench"].as_object_mut().unwrap().remove("balance");
        days.push((book, orders));
    }
    for _ in 0..150 {
        let docs = documents().new_tree(&mut runner).unwrap().current();
        days.push((docs.book, docs.orders));
    }
    for (n, (mut book, mut orders)) in days.into_iter().enumerate() {
        writeln!(out, "DAY {n}").unwrap();
        let Some(plan) = one(&mut out, &book, &orders) else { continue };
        // Stock of all, costs, and a shelf of what the day itself makes, a little off.
        let mut stock = serde_json::Map::new();
        for (k, (name, material)) in
            book["materials"].as_object_mut().unwrap().iter_mut().enumerate()
        {
            stock.insert(name.clone(), json!(format!("{} g", 3 + 40 * k)));
            if material.get("price").is_none() && (n % 3 != 0) {
                material["price"] = json!("6.75 USD per 1 kg");
            }
        }
        orders["stock"] = Value::Object(stock);
        if book.get("costing").is_none() && n % 3 != 0 {
            book["costing"] = demo["costing"].clone();
        }
        let mut shelf = Vec::new();
        for (p, pot) in plan["pots"].as_array().unwrap().iter().enumerate() {
            let mut parts = serde_json::Map::new();
            for w in pot["stages"][0]["weigh"].as_array().unwrap() {
                let grams =
                    w["wanted"]["value"].as_f64().unwrap() * if p % 2 == 0 { 1.0 } else { 1.004 };
                if grams > 1e-6 {
                    parts.insert(
                        w["material"].as_str().unwrap().into(),
                        json!(format!("{grams:.6} g")),
                    );
                }
            }
            let held = pot["stages"][0]["holds"]["value"].as_f64().unwrap();
            let mut one = json!({"name": format!("old {p}"), "mass": format!("{:.1} g", held * 0.3 + p as f64), "parts": parts, "made": format!("2027-02-{:02}", 27 - p % 20), "heats": 1});
            if p % 2 == 0
                && book["materials"]
                    .as_object()
                    .unwrap()
                    .values()
                    .any(|m| m.get("budget").is_some())
            {
                one["spent"] = json!("9 min");
            }
            shelf.push(one);
        }
        orders["shelf"] = Value::Array(shelf);
        one(&mut out, &book, &orders);
    }
}

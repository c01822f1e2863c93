//! Cost of a day: its sums to the last digit, and each line against plain arithmetic.

use std::cell::Cell;
use std::collections::BTreeMap;

use pourwright_tests::demo::{BOOK, ORDERS, STARTER, json, plan};
use pourwright_tests::generate::documents;
use pourwright_tests::reference::cost::{Costing, line_costs};
use pourwright_tests::reference::shop::Shop;
use proptest::test_runner::{Config, TestRunner};
use rust_decimal::Decimal;
use serde_json::{Value, json as object};

/// Puts prices into a book, and tells what they are.
fn priced(book: &mut Value) -> Costing {
    let mut per_g = BTreeMap::new();
    let materials = book["materials"].as_object_mut().expect("materials");
    for (index, (name, entry)) in materials.iter_mut().enumerate() {
        let cents = 900 + 731 * (index as u32 % 7);
        entry["price"] = format!("{}.{:02} USD per 1 kg", cents / 100, cents % 100).into();
        per_g.insert(name.clone(), f64::from(cents) / 1e5);
    }
    book["costing"] = object!({
        "packing": [
            { "name": "bag", "price": "9.00 USD per 100 pieces" },
            { "name": "card", "price": "3.00 USD per 50 pieces", "per_pack": 2 },
        ],
        "rate": "18.00 USD per 1 h", "per_pot": "11 min", "per_heat": "3 min", "per_shot": "45 s", "per_pack": "20 s",
        "left_over_worth": "55 %", "margin": "40 %",
    });
    Costing {
        per_g,
        per_s: 18.0 / 3600.0,
        seconds: [660.0, 180.0, 45.0, 20.0],
        per_pack: 0.09 + 0.12,
        worth: 0.55,
    }
}

fn exact(money: &Value) -> Decimal {
    let amount = money["amount"].as_str().unwrap_or_else(|| panic!("no money: {money}"));
    Decimal::from_str_exact(amount).expect("a decimal")
}

/// Objections to the costs of a plan, and whether its lines could be kept apart.
fn objections(
    book: &Value,
    orders: &Value,
    made: &Value,
    costing: &Costing,
) -> (Vec<String>, bool) {
    let mut found = Vec::new();
    let mut check = |what: &str, holds: bool| {
        if !holds {
            found.push(what.to_owned());
        }
    };
    let cost = &made["cost"]["known"];
    let total = |field: &str| exact(&cost[field]);
    let lines = cost["lines"].as_array().expect("lines");
    let sum = |field: &str| lines.iter().map(|line| exact(&line[field])).sum::<Decimal>();
    check("lines sum to the day", sum("total") == total("total"));
    check("packing sums", sum("packing") == total("packing"));
    check("work sums", sum("work") == total("work"));
    let plastic = total("materials") + total("from_shelf") - total("credit");
    check("materials sum", sum("materials") == plastic);
    check("the day is its parts", total("total") == plastic + total("packing") + total("work"));
    let orders_sum = cost["orders"].as_array().expect("orders");
    let orders_sum: Decimal = orders_sum.iter().map(|order| exact(&order["total"])).sum();
    check("orders sum to the day", orders_sum == total("total"));
    let used = cost["used"].as_array().expect("materials");
    let used: Decimal = used.iter().map(|line| exact(&line["cost"])).sum();
    check("materials are all that is used", used == total("materials"));
    let starter = json(STARTER);
    let shop = Shop::new(book, &starter);
    let lines_expected = line_costs(&shop, orders, made, costing);
    for (index, expected) in lines_expected.iter().flatten().enumerate() {
        let line = &lines[index];
        for (field, expected) in [
            ("materials", expected.materials),
            ("packing", expected.packing),
            ("work", expected.work),
        ] {
            let is: f64 = exact(&line[field]).to_string().parse().expect("a number");
            // A microunit for each pot and rounding, and 0.1 mg of each material.
            check(
                &format!("{field} of line {index}: {is}, not {expected}"),
                (is - expected).abs() < 1e-4,
            );
        }
        let order = &orders["lines"][index];
        let sold = order["packs"].as_u64().or(order["pieces"].as_u64()).expect("a number");
        let price = exact(&line["price"]) * Decimal::from(sold);
        let kept = Decimal::new(60, 2);
        check(
            "the price leaves its margin",
            price * kept >= exact(&line["total"]) - Decimal::new(sold as i64, 6),
        );
    }
    (found, lines_expected.is_some())
}

#[test]
fn the_demo_day_costs_what_plain_arithmetic_says() {
    let (mut book, orders) = (json(BOOK), json(ORDERS));
    let costing = priced(&mut book);
    let made =
        serde_json::to_value(plan(&book.to_string(), ORDERS).expect("a plan")).expect("JSON");
    let (found, compared) = objections(&book, &orders, &made, &costing);
    assert!(found.is_empty() && compared, "{}", found.join("\n"));
}

#[test]
fn random_days_cost_what_plain_arithmetic_says() {
    const DAYS: u32 = 100;
    let lines_compared = Cell::new(0);
    let mut runner = TestRunner::new(Config { cases: DAYS, ..Config::with_source_file(file!()) });
    let result = runner.run(&documents(), |mut documents| {
        let costing = priced(&mut documents.book);
        if let Ok(made) = plan(&documents.book.to_string(), &documents.orders.to_string()) {
            let made = serde_json::to_value(made).expect("a plan as JSON");
            let (found, compared) = objections(&documents.book, &documents.orders, &made, &costing);
            lines_compared.set(lines_compared.get() + u32::from(compared));
            proptest::prop_assert!(found.is_empty(), "{}", found.join("\n"));
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(lines_compared.get() >= DAYS * 8 / 10, "only {} compared", lines_compared.get());
}

#[test]
fn without_a_price_there_is_no_cost_and_a_note_says_why() {
    let mut book = json(BOOK);
    for name in ["plum", "chalk"] {
        book["materials"][name].as_object_mut().expect("a material").remove("price");
    }
    let made = plan(&book.to_string(), ORDERS).expect("a plan").plan;
    let note = made.assumptions.iter().find(|note| note.code == "price-not-known").expect("a note");
    assert!(note.message.contains("chalk, plum"), "{}", note.message);
    assert!(!made.sheet().to_string().contains("COST"), "no costs on the sheet");
    book.as_object_mut().expect("a book").remove("costing");
    let made = plan(&book.to_string(), ORDERS).expect("a plan").plan;
    assert!(
        made.cost.is_none() && made.assumptions.iter().all(|note| note.code != "price-not-known")
    );
}

#[test]
fn the_stock_is_what_was_there_less_what_is_weighed() {
    let made = serde_json::to_value(plan(BOOK, ORDERS).expect("a plan")).expect("JSON");
    let value = |shown: &Value| shown["value"].as_f64().expect("a number");
    let mut short = Vec::new();
    for entry in made["stock"].as_array().expect("a stock") {
        let mut left = value(&entry["had"]);
        let mut used = 0.0;
        let mut runs_out = Value::Null;
        for pot in made["pots"].as_array().expect("pots") {
            let stages = pot["stages"].as_array().expect("stages").iter();
            for weigh in stages.flat_map(|stage| stage["weigh"].as_array().expect("a list")) {
                if weigh["material"] == entry["material"] {
                    used += value(&weigh["best"]["gives"]);
                    left -= value(&weigh["best"]["gives"]);
                }
            }
            if left < 0.0 && runs_out.is_null() {
                runs_out = pot["pot"].clone();
            }
        }
        assert!((used - value(&entry["used"])).abs() < 1e-9, "{entry}");
        assert!((left - value(&entry["left"]) + value(&entry["short"])).abs() < 1.01e-4, "{entry}");
        assert_eq!(entry["runs_out_in"], runs_out, "{entry}");
        if left < 0.0 {
            short.push(entry["material"].as_str().expect("a name"));
        }
    }
    assert_eq!(short, ["teal-flake"]);
}

#[test]
fn left_over_comes_in_at_what_it_was_kept_for() {
    let (mut book, mut orders) = (json(BOOK), json(ORDERS));
    let costing = priced(&mut book);
    let without =
        serde_json::to_value(plan(&book.to_string(), ORDERS).expect("a plan")).expect("JSON");
    orders["shelf"] =
        object!([{ "name": "jar 4", "mass": "180 g", "formulas": ["dusk", "plain"], "heats": 1 }]);
    let made = plan(&book.to_string(), &orders.to_string()).expect("a plan");
    let made = serde_json::to_value(made).expect("JSON");
    let mut worth = 0.0;
    for pot in made["pots"].as_array().expect("pots") {
        for brought in pot["from_shelf"]["brings"].as_array().into_iter().flatten() {
            let name = brought["material"].as_str().expect("a name");
            worth += costing.worth
                * costing.per_g[name]
                * brought["mass"]["value"].as_f64().expect("grams");
        }
    }
    let cost = &made["cost"]["known"];
    let sum = |field: &str| exact(&cost[field]);
    let shelf: f64 = sum("from_shelf").to_string().parse().expect("a number");
    assert!(worth > 0.5 && (shelf - worth).abs() < 1e-4, "{shelf}, not {worth}");
    let lines = cost["lines"].as_array().expect("lines");
    let lines: Decimal = lines.iter().map(|line| exact(&line["total"])).sum();
    assert_eq!(lines, sum("total"));
    // Leftovers from the shelf, at a part of their cost, make the day cheaper.
    assert!(sum("total") < exact(&without["cost"]["known"]["total"]));
}

//! Records of the demo shop: what its book learns, and the laws that hold for any records.

use json_patch::{Patch, patch};
use pourwright_tests::demo::{BOOK, json};
use serde_json::{Value, json};

use crate::chance::Chance;
use crate::shop::{AS_IN_THE_BOOK, Shop, Truth, change, date};

const OTHER: Truth = Truth {
    plum: 0.052,
    salt: 1.42,
    cavity: 1.05,
    rejects: 0.12,
    keeps: 6.0,
    heating: 1.25,
    shot: 38.0,
};

fn applied(book: &Value, change: &Value) -> Value {
    let operations: Patch = serde_json::from_value(change["write"].clone()).expect("a patch");
    let mut book = book.clone();
    patch(&mut book, &operations).expect("it applies");
    book
}

/// The number that a text begins with.
fn leading(text: &Value) -> f64 {
    let text = text.as_str().expect("a text");
    text.split(' ')
        .next()
        .and_then(|number| number.parse().ok())
        .unwrap_or_else(|| panic!("{text}"))
}

#[test]
fn a_shop_that_differs_from_its_book() {
    let shop = Shop::demo();
    let records = shop.days(&mut Chance::seeded(5), 14, &OTHER);
    let learned = shop.learn(&records);
    println!("{}", serde_json::to_string_pretty(&learned).unwrap());
    assert_eq!((&learned["days"], &learned["from"]), (&json!(14), &json!("2027-03-01")));
    for (what, truth, slack) in [
        ("drop of plum", OTHER.plum, 0.03),
        ("fine-salt as scooped", OTHER.salt, 0.06),
        ("cavity of finger-5", 9.5 * OTHER.cavity, 0.03),
        ("rejects of finger-5", 100.0 * OTHER.rejects, 0.3),
        ("volume that the injector keeps", OTHER.keeps, 0.06),
        ("time of a shot into finger-5", OTHER.shot, 0.06),
    ] {
        let change = change(&learned, what).unwrap_or_else(|| panic!("no {what} in {learned}"));
        let after = leading(&change["after"]);
        assert!((after / truth - 1.0).abs() < slack, "{change} for {truth}");
        assert_ne!(change["before"], Value::Null);
        // One sentence, that fits on two lines of a page.
        let why = change["why"].as_str().unwrap();
        assert!(why.ends_with('.') && why.len() < 160, "{why}");
        Shop::of(&applied(&json(BOOK), change));
    }
    assert!(learned["changes"].as_array().unwrap().len() < 12, "{learned}");
}

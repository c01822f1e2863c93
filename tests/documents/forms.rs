//! The same document by other ways: through serde, written back, with its keys in another order.

use pourwright::book::Book;
use pourwright::document::{BookDocument, OrdersDocument, PlanDocument, StarterDocument};
use pourwright::plan::Plan;
use pourwright::plan::day::Day;
use pourwright_tests::demo::{BOOK, ORDERS, STARTER, json, plan};
use pourwright_tests::generate::documents;
use proptest::prelude::*;
use serde_json::{Value, json};

fn book_document(book: &Value) -> BookDocument {
    BookDocument::from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"))
}

fn orders_document(orders: &Value) -> OrdersDocument {
    OrdersDocument::from_text(&orders.to_string()).unwrap_or_else(|faults| panic!("{faults}"))
}

/// The text of a value with the keys of every object from last to first.
fn backwards(value: &Value) -> String {
    match value {
        Value::Array(items) => {
            let items: Vec<String> = items.iter().map(backwards).collect();
            format!("[{}]", items.join(","))
        }
        Value::Object(fields) => {
            let fields: Vec<String> = fields
                .iter()
                .rev()
                .map(|(key, value)| format!("{}: {}", Value::from(key.as_str()), backwards(value)))
                .collect();
            format!("{{{}}}", fields.join(",\n"))
        }
        other => other.to_string(),
    }
}

fn check_forms(book: &Value, orders: &Value) {
    let (book_read, orders_read) = (book_document(book), orders_document(orders));
    let book_by_serde: BookDocument = serde_json::from_value(book.clone()).expect("a book");
    let orders_by_serde: OrdersDocument = serde_json::from_value(orders.clone()).expect("orders");
    assert_eq!((&book_read, &orders_read), (&book_by_serde, &orders_by_serde));
    let from_text: BookDocument = serde_json::from_str(&book.to_string()).expect("a book");
    assert_eq!(book_read, from_text);

    let written = serde_json::to_value(&book_read).expect("a book is JSON");
    assert_eq!(book_read, book_document(&written), "{written}");
    assert_eq!(written, serde_json::to_value(book_document(&written)).expect("JSON"));
    let written = serde_json::to_value(&orders_read).expect("orders are JSON");
    assert_eq!(orders_read, orders_document(&written), "{written}");
}

#[test]
fn the_demo_is_the_same_by_all_ways() {
    check_forms(&json(BOOK), &json(ORDERS));
    let starter: StarterDocument = serde_json::from_str(STARTER).expect("the starter table");
    let written = serde_json::to_string(&starter).expect("as JSON");
    assert_eq!(starter, serde_json::from_str(&written).expect("as it was"));
}

#[test]
fn a_typed_book_gives_the_plan_of_its_text() {
    let book = Book::try_from(&book_document(&json(BOOK))).expect("the demo book");
    let day = Day::resolve(&orders_document(&json(ORDERS)), &book).expect("the demo orders");
    assert_eq!(Plan::make(&book, &day), plan(BOOK, ORDERS).map(|made| made.plan));
}

#[test]
fn what_serde_refuses_says_where_and_what_would_do() {
    let mut book = json(BOOK);
    book["molds"]["grub-2"]["cavity"] = json!("2.1 ml of");
    book["molds"]["grub-2"]["color"] = json!("red");
    let error = serde_json::from_value::<BookDocument>(book).expect_err("two faults").to_string();
    assert!(
        error.contains("/molds/grub-2/cavity") && error.contains("/molds/grub-2/color"),
        "{error}"
    );
    let twice = BOOK.replacen("\"finger-5\"", "\"paddle-4\"", 1);
    let error = serde_json::from_str::<BookDocument>(&twice).expect_err("a key twice").to_string();
    assert!(error.contains("/molds/paddle-4"), "{error}");
}

#[test]
fn the_order_of_keys_changes_no_bit() {
    let plain = serde_json::to_string(&plan(BOOK, ORDERS).expect("a plan")).expect("as JSON");
    let turned = plan(&backwards(&json(BOOK)), &backwards(&json(ORDERS))).expect("a plan");
    assert_eq!(plain, serde_json::to_string(&turned).expect("as JSON"));
}

#[test]
fn a_mark_before_the_text_does_no_harm() {
    let marked = format!("\u{feff}{BOOK}");
    assert_eq!(plan(&marked, ORDERS), plan(BOOK, ORDERS));
}

#[test]
fn ext_is_taken_everywhere_and_carried_to_the_lines() {
    let ext = json!({ "id": 7, "deep": { "list": [null, true, 1e300, "é"] } });
    let (mut book, mut orders) = (json(BOOK), json(ORDERS));
    let places = [
        "",
        "/materials/plum",
        "/formulas/dusk",
        "/molds/claw-set",
        "/molds/claw-set/cavities/long",
        "/molds/paddle-4/cavity",
        "/products/reed claw",
        "/products/shell over reed minnow/layers/0",
        "/bench",
        "/bench/cups/0",
        "/bench/injector",
        "/bench/balance",
        "/limits",
    ];
    for place in places {
        book.pointer_mut(place).expect(place)["ext"] = ext.clone();
    }
    orders["lines"][2]["ext"] = ext.clone();
    let made = plan(&book.to_string(), &orders.to_string()).expect("a plan").plan;
    assert_eq!(made.lines[2].ext.clone().map(Value::from), Some(ext));
    assert_eq!(made.lines[1].ext, None);
    let plain = plan(BOOK, ORDERS).expect("a plan").plan;
    assert_eq!((made.pots, made.assumptions), (plain.pots, plain.assumptions));
}

/// A plan as JSON, read back, and written again.
fn check_plan(made: &PlanDocument) {
    let text = serde_json::to_string(made).expect("a plan is JSON");
    let back: PlanDocument = serde_json::from_str(&text).expect("a plan");
    assert_eq!(text, serde_json::to_string(&back).expect("JSON"), "the numbers keep their bits");
    let value = serde_json::to_value(made).expect("a plan is JSON");
    assert_eq!(value, serde_json::to_value(&back).expect("JSON"));
    assert_eq!(made.sheet().to_string(), back.sheet().to_string());
}

#[test]
fn a_plan_comes_back_from_its_json() {
    check_plan(&plan(BOOK, ORDERS).expect("a plan"));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, ..ProptestConfig::default() })]

    #[test]
    fn random_documents_are_the_same_by_all_ways(documents in documents()) {
        check_forms(&documents.book, &documents.orders);
        let (book, orders) = (documents.book.to_string(), documents.orders.to_string());
        let turned = plan(&backwards(&documents.book), &backwards(&documents.orders));
        prop_assert_eq!(&plan(&book, &orders), &turned);
        if let Ok(made) = turned {
            check_plan(&made);
            let sheet = made.sheet().to_string();
            let too_wide = sheet.lines().find(|line| line.chars().count() > 80);
            prop_assert_eq!(too_wide, None);
        }
    }
}

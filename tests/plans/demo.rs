use pourwright_tests::demo::{BOOK, ORDERS, STARTER, json, plan};
use pourwright_tests::reference::plan::objections;

#[test]
fn the_demo_day_is_right() {
    let made = serde_json::to_value(plan(BOOK, ORDERS).expect("the demo plans")).expect("as JSON");
    let found = objections(&json(BOOK), &json(ORDERS), &json(STARTER), &made);
    assert!(found.is_empty(), "{}", found.join("\n"));
}

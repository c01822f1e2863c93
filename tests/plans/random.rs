use std::cell::Cell;
use std::collections::BTreeMap;

use pourwright::plan::budget::Budget;
use pourwright_tests::demo::{STARTER, json, plan};
use pourwright_tests::generate::documents;
use pourwright_tests::quote;
use pourwright_tests::reference::plan::objections;
use proptest::test_runner::{Config, TestRunner};

/// Why a sound book and sound orders may still come to no plan.
const REFUSALS: [&str; 4] =
    ["too-many-solids", "batch-shot-does-not-fit", "pot-too-small-to-dose", "measure-not-reached"];

#[test]
fn random_days_are_right() {
    const DAYS: u32 = 300;
    let starter = json(STARTER);
    let planned = Cell::new(0);
    let refused: std::cell::RefCell<BTreeMap<String, u32>> = std::cell::RefCell::default();
    let mut runner = TestRunner::new(Config { cases: DAYS, ..Config::with_source_file(file!()) });
    let result = runner.run(&documents(), |documents| {
        let (book, orders) = (documents.book.to_string(), documents.orders.to_string());
        match plan(&book, &orders) {
            Ok(made) => {
                planned.set(planned.get() + 1);
                let made = serde_json::to_value(made).expect("a plan as JSON");
                let found = objections(&documents.book, &documents.orders, &starter, &made);
                proptest::prop_assert!(found.is_empty(), "{}", found.join("\n"));
                quote::compare(&book, &orders, &Budget::default(), Ok(&made));
            }
            Err(faults) => {
                quote::compare(&book, &orders, &Budget::default(), Err(&faults));
                for fault in faults.iter() {
                    *refused.borrow_mut().entry(fault.code.to_string()).or_default() += 1;
                    proptest::prop_assert!(REFUSALS.contains(&fault.code.as_ref()), "{fault}");
                    proptest::prop_assert!(fault.path.starts_with("/lines/"), "{fault}");
                }
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    assert!(
        planned.get() >= DAYS * 9 / 10,
        "only {} of {DAYS} planned: {:?}",
        planned.get(),
        refused.borrow()
    );
}

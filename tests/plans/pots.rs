//! The pots of a day against all ways to put its shots together, from the documents.

use std::cell::Cell;
use std::collections::BTreeMap;

use pourwright::fault::Faults;
use pourwright_tests::demo::{STARTER, json, plan};
use pourwright_tests::generate::Documents;
use pourwright_tests::oracle::documents::fewest_pots;
use pourwright_tests::reference::plan::objections;
use pourwright_tests::small::small_days;
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Value, json as object};

fn made(book: &Value, orders: &Value) -> Result<Value, Faults> {
    let made = plan(&book.to_string(), &orders.to_string())?;
    Ok(serde_json::to_value(made).expect("a plan as JSON"))
}

fn pots(plan: &Value) -> usize {
    plan["pots"].as_array().expect("pots").len()
}

fn number(value: &Value) -> usize {
    usize::try_from(value.as_u64().expect("a number")).expect("a small one")
}

#[test]
fn no_small_day_has_a_plan_with_fewer_pots_than_it_says() {
    const DAYS: u32 = 1500;
    let starter = json(STARTER);
    let (least, searched) = (Cell::new(0), Cell::new(0));
    let misses: std::cell::RefCell<BTreeMap<String, u32>> = std::cell::RefCell::default();
    let mut runner =
        TestRunner::new(Config { cases: DAYS, failure_persistence: None, ..Config::default() });
    let result = runner.run(&small_days(), |Documents { book, orders }| {
        let fewest = fewest_pots(&book, &orders, &starter);
        let plan = match (made(&book, &orders), fewest) {
            (Ok(plan), _) => plan,
            (Err(_), None) => return Ok(()),
            (Err(faults), Some(fewest)) => {
                proptest::prop_assert!(false, "{fewest} pots do, but: {faults}");
                return Ok(());
            }
        };
        let found = objections(&book, &orders, &starter, &plan);
        proptest::prop_assert!(found.is_empty(), "{}", found.join("\n"));
        let proof = &plan["proof"];
        let Some(fewest) = fewest else {
            proptest::prop_assert!(false, "a plan where none can be");
            return Ok(());
        };
        proptest::prop_assert_eq!(number(&proof["pots"]), pots(&plan));
        proptest::prop_assert!(pots(&plan) >= fewest, "{} pots, not {fewest}", pots(&plan));
        proptest::prop_assert!(number(&proof["least"]) <= fewest, "{proof}, but {fewest} do");
        searched.set(searched.get() + 1);
        least.set(least.get() + u32::from(pots(&plan) == fewest));
        if pots(&plan) > fewest {
            let key = format!("fresh {}", book["limits"]["fresh_base"]);
            *misses.borrow_mut().entry(key).or_default() += 1;
        }
        // Fresh base and fuller cups are leave to do more, never a reason for more pots.
        for (key, value) in [("fresh_base", object!(true)), ("most_full", object!("100 %"))] {
            let mut freer = book.clone();
            freer["limits"][key] = value;
            if freer == book {
                continue;
            }
            match made(&freer, &orders) {
                Ok(freer) => proptest::prop_assert!(
                    pots(&freer) <= pots(&plan),
                    "{} pots with {key}, {} without",
                    pots(&freer),
                    pots(&plan)
                ),
                Err(faults) => proptest::prop_assert!(false, "with {key}: {faults}"),
            }
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
    eprintln!("{} of {} least, misses {:?}", least.get(), searched.get(), misses.borrow());
}

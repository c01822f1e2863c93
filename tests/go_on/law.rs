//! With nothing changed, the new plan is the rest of the old one.

use std::collections::{BTreeMap, BTreeSet};

use pourwright_tests::demo::{STARTER, json};
use pourwright_tests::generate::documents;
use pourwright_tests::reference::plan::objections;
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Value, json};

use crate::noon::{Morning, but_heats, otherwise, shots_of, work};

/// Why the rest of the `morning` after so many steps is not what it was; none where it is.
fn rest_differs(morning: &Morning, steps: usize) -> Option<String> {
    let answer = match morning.go_on(json!({ "pots_now": morning.done(steps) })) {
        Ok(answer) => answer,
        Err(faults) => return Some(format!("after {steps}: {faults}")),
    };
    let rest = &morning.steps()[steps..];
    let old = work(rest, &morning.plan);
    let plan = &answer["plan"];
    if plan.is_null() {
        return (!old.is_empty()).then(|| format!("after {steps}: no plan for {old:?}"));
    }
    let steps_now = plan["steps"].as_array().expect("steps");
    let new = work(steps_now, plan);
    let mut otherwise_of = otherwise(rest, &morning.plan);
    otherwise_of.extend(otherwise(steps_now, plan));
    let apart = |a: &BTreeMap<String, u64>, b: &BTreeMap<String, u64>| -> Vec<String> {
        // Rounding chooses between two ways that are as sure, or of which one just keeps the tolerance: what is in a pot is
        // not what its plan says to the last bit.
        let is_otherwise = |key: &String, n: &u64| {
            let mut pairs = otherwise_of.iter().flat_map(|(one, others)| {
                others.iter().flat_map(move |other| [(one, other), (other, one)])
            });
            pairs.any(|(one, other)| one == key && b.get(other) == Some(n))
        };
        let gone = a.iter().filter(|(key, n)| b.get(*key) != Some(n) && !is_otherwise(key, n));
        gone.map(|one| format!("{one:?}")).collect()
    };
    let (gone, come) = (apart(&old, &new), apart(&new, &old));
    let differs = !(gone.is_empty() && come.is_empty());
    differs.then(|| format!("after {steps}: {gone:?}, but {come:?}"))
}

#[test]
fn the_rest_of_the_demo_is_as_planned_after_every_step() {
    let morning = Morning::demo();
    for steps in 0..=morning.steps().len() {
        if let Some(why) = rest_differs(&morning, steps) {
            panic!("{why}");
        }
    }
}

#[test]
fn with_nothing_done_it_is_the_plan_itself() {
    let morning = Morning::demo();
    let answer = morning.go_on(json!({})).expect("an answer");
    assert_eq!(answer["plan"]["steps"], morning.plan["steps"]);
    assert_eq!(answer["plan"]["pots"], morning.plan["pots"]);
    assert_eq!(answer["changes"], json!([]));
}

/// A day can go on again from a plan that went on: pots that are there in it still hold what they held.
#[test]
fn the_rest_of_a_rest_is_as_planned() {
    let morning = Morning::demo();
    for steps in 0..morning.steps().len() {
        let first = morning.go_on(json!({ "pots_now": morning.done(steps) })).expect("a plan");
        if first["plan"].is_null() {
            continue;
        }
        let noon = Morning::reopened(&first);
        let again = noon.go_on(json!({})).expect("a plan");
        let all = |plan: &Value| work(plan["steps"].as_array().expect("steps"), plan);
        assert_eq!(all(&again["plan"]), all(&noon.plan), "after {steps}");
        // As it is shown: a sum in another order may end on another last bit.
        let there = |plan: &Value| -> Vec<Value> {
            let pots = plan["pots"].as_array().expect("pots").iter();
            let there = pots.map(|pot| &pot["there"]).filter(|there| !there.is_null());
            let parts = |there: &Value| -> Vec<Value> {
                let parts = there["parts"].as_array().expect("parts").iter();
                parts.map(|part| json!([part["material"], part["mass"]["text"]])).collect()
            };
            there
                .map(|there| {
                    json!([
                        there["mass"]["text"],
                        there["spent"]["text"],
                        there["hot"],
                        there["degassed"],
                        there["heats"],
                        parts(there)
                    ])
                })
                .collect()
        };
        assert_eq!(there(&again["plan"]), there(&noon.plan), "after {steps}");
        for later in 1..=noon.steps().len() {
            if let Some(why) = rest_differs(&noon, later) {
                panic!("after {steps}, then {why}");
            }
        }
    }
}

#[test]
fn ticks_that_hold_are_named() {
    let morning = Morning::demo();
    let answer = morning.go_on(json!({ "pots_now": morning.done(5) })).expect("an answer");
    let kept: Vec<&str> =
        answer["kept"].as_array().expect("ids").iter().filter_map(Value::as_str).collect();
    for (id, _) in but_heats(&morning.steps()[5..]) {
        assert!(kept.contains(&id.as_str()), "{id}");
    }
}

/// A tick at a step, or at each of its items, is the same as the number of the step.
#[test]
fn ticks_say_what_is_done_as_numbers_do() {
    let morning = Morning::demo();
    for steps in [1, 4, 5, 8, 20, 24] {
        let done = &morning.steps()[..steps];
        let ids: Vec<&Value> = done.iter().map(|step| &step["id"]).collect();
        let items: Vec<&Value> = done
            .iter()
            .flat_map(|step| step["items"].as_array().into_iter().flatten())
            .map(|item| &item["id"])
            .collect();
        let by_number = morning.go_on(json!({ "pots_now": morning.done(steps) })).expect("a plan");
        for ticks in [json!(ids), json!(items)] {
            let by_tick = morning.go_on(json!({ "ticks": ticks })).expect("a plan");
            assert_eq!(by_tick["plan"]["steps"], by_number["plan"]["steps"], "after {steps}");
        }
    }
}

/// Whether the injector keeps as much of a stage whatever of it is shot: of molds with different voids it is taken to keep as much
/// as is in the fullest.
fn keeps_alike(plan: &Value) -> bool {
    let pots = plan["pots"].as_array().expect("pots").iter();
    let mut stages = pots.flat_map(|pot| pot["stages"].as_array().expect("stages"));
    stages.all(|stage| {
        let voids = |draw: &Value| {
            let mold = draw["mold"].as_str().expect("a mold");
            plan["made_from"]["book"]["molds"][mold]["voids"].clone()
        };
        let draws = stage["draws"].as_array().expect("draws");
        draws.iter().all(|draw| voids(draw) == voids(&draws[0]))
    })
}

/// Whether the shots that are left of each kind of pieces promise one of each shape, by the rejects and the confidence of the book.
/// Where they do not, none of them is owed.
fn promises(morning: &Morning, steps: usize) -> bool {
    let plan = &morning.plan;
    let book = &plan["made_from"]["book"];
    let share = |value: &Value, default: f64| {
        let percent = value.as_str().and_then(|text| text.strip_suffix('%'));
        percent.map_or(default, |percent| percent.trim().parse::<f64>().expect("a number") / 100.0)
    };
    let confidence = share(&book["limits"]["confidence"], 0.9);
    let left = shots_of(&morning.steps()[steps..], plan);
    left.into_iter().all(|((line, _), shots)| {
        let lines = plan["lines"].as_array().expect("lines").iter();
        let kind: Vec<&Value> = lines.filter(|one| one["pooled_with"] == line).collect();
        let mold = &book["molds"][kind[0]["mold"].as_str().expect("a mold")];
        let rejects = share(&mold["rejects"], share(&book["limits"]["rejects"], 0.0));
        let shapes: BTreeSet<Option<&str>> = kind.iter().map(|one| one["shape"].as_str()).collect();
        let good = shapes.iter().map(|shape| {
            let cavities = &mold["cavities"];
            let count = shape.map_or(cavities, |shape| &cavities[shape]["count"]);
            1.0 - rejects.powf((shots * count.as_u64().expect("a count")) as f64)
        });
        good.product::<f64>() >= confidence
    })
}

/// The new plan is a plan like any other: judged from its own documents.
#[test]
fn the_rest_of_random_days_is_as_planned() {
    let starter = json(STARTER);
    let mut runner = TestRunner::new(Config { cases: 80, ..Config::with_source_file(file!()) });
    let days = (documents(), 0.0_f64..1.0);
    let result = runner.run(&days, |(documents, part)| {
        let (book, orders) = (documents.book.to_string(), documents.orders.to_string());
        let Ok(morning) = Morning::of(&book, &orders) else { return Ok(()) };
        let steps = (morning.steps().len() as f64 * part) as usize;
        let differs = rest_differs(&morning, steps)
            .filter(|_| keeps_alike(&morning.plan) && promises(&morning, steps));
        proptest::prop_assert!(
            differs.is_none(),
            "{}\n{book}\n{orders}",
            differs.unwrap_or_default()
        );
        let answer = morning.go_on(json!({ "pots_now": morning.done(steps) })).expect("a plan");
        let plan = &answer["plan"];
        if !plan.is_null() {
            let made_from = &plan["made_from"];
            let found = objections(&made_from["book"], &made_from["orders"], &starter, plan);
            proptest::prop_assert!(found.is_empty(), "after {steps}: {}", found.join("\n"));
        }
        Ok(())
    });
    if let Err(error) = result {
        panic!("{error}");
    }
}

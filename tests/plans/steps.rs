//! The steps of a plan: all that its parts ask for, in order, by ids that stay.

use std::collections::{BTreeMap, BTreeSet};

use pourwright::material::Adding;
use pourwright::plan::{Plan, StepKind};
use pourwright_tests::demo::{BOOK, ORDERS, json, plan};
use pourwright_tests::generate::documents;
use proptest::prelude::*;
use serde_json::{Value, json};

/// Work at a stage, and its draws.
type Done = (StepKind, u32, Option<u32>);

/// The ids of all steps and of what is ticked off within them.
fn ids(plan: &Plan) -> BTreeSet<&str> {
    // How many loads, fills and bursts there are depends on the counts.
    let weighed =
        plan.steps.iter().flat_map(|step| &step.items).filter(|item| item.material.is_some());
    let steps = plan.steps.iter().map(|step| step.id.as_str());
    steps.chain(weighed.map(|item| item.id.as_str())).collect()
}

fn planned(orders: &Value) -> Plan {
    plan(BOOK, &orders.to_string()).expect("a plan").plan
}

/// Compares a plan with its steps.
fn objections(plan: &Plan) -> Vec<String> {
    let mut found = Vec::new();
    let mut seen = BTreeSet::new();
    // Steps of each pot so far: kind, stage, draw.
    let mut done: BTreeMap<&str, Vec<Done>> = BTreeMap::new();
    let mut work = 1;
    for step in &plan.steps {
        if !seen.insert(step.id.as_str()) {
            found.push(format!("{} comes twice", step.id));
        }
        for item in step.items.iter().filter(|item| item.id != step.id) {
            if !seen.insert(item.id.as_str()) {
                found.push(format!("{} comes twice", item.id));
            }
        }
        if step.items.is_empty() || step.work < work {
            found.push(format!("{} has nothing to tick, or comes too late", step.id));
        }
        work = step.work;
        for at in &step.at {
            let before = done.entry(&at.pot).or_default();
            let first = before.is_empty();
            let begins = matches!(step.kind, StepKind::Measure | StepKind::FromShelf);
            let ended = before.iter().any(|(kind, ..)| *kind == StepKind::Store);
            let stage_back = before.last().is_some_and(|(_, stage, _)| *stage > at.stage);
            if first != begins && step.kind != StepKind::Measure || ended || stage_back {
                found.push(format!("{} is in the wrong place of pot {}", step.id, at.pot));
            }
            before.push((step.kind, at.stage, at.draw));
        }
    }
    for pot in &plan.pots {
        let steps = done.remove(pot.pot.as_str()).unwrap_or_default();
        let count = |wanted: StepKind, stage: u32| {
            steps.iter().filter(|(kind, of, _)| (*kind, *of) == (wanted, stage)).count()
        };
        for (number, stage) in (1..).zip(&pot.stages) {
            // Materials that go in hot are added in a step of their own.
            let times = [Adding::Cold, Adding::Hot]
                .into_iter()
                .filter(|when| stage.weigh.iter().any(|weigh| weigh.add.when == *when))
                .count();
            let mut draws: Vec<u32> = steps
                .iter()
                .filter(|(kind, of, _)| (*kind, *of) == (StepKind::Shoot, number))
                .filter_map(|(.., draw)| *draw)
                .collect();
            draws.sort_unstable();
            // Reheats part the shots of a draw.
            draws.dedup();
            let whole = count(StepKind::Measure, number) + count(StepKind::Add, number) == times
                && count(StepKind::Measure, number) == usize::from(number == 1)
                && count(StepKind::Degas, number) == usize::from(number == 1)
                && count(StepKind::Heat, number) == stage.heats as usize
                && count(StepKind::SpruesBack, number)
                    == usize::from(stage.sprues_back.quantity.value > 0.0)
                && draws == (1..=stage.draws.len() as u32).collect::<Vec<_>>();
            if !whole {
                found.push(format!("pot {} lacks a step of stage {number}: {steps:?}", pot.pot));
            }
        }
        if count(StepKind::Store, pot.stages.len() as u32) != 1 {
            found.push(format!("pot {} is not stored", pot.pot));
        }
    }
    found
}

#[test]
fn a_count_changes_no_id_of_a_pot_that_stays() {
    let orders = json(ORDERS);
    let before = planned(&orders);
    let mut more = orders.clone();
    more["lines"][0]["pieces"] = json!(28);
    assert_eq!(ids(&before), ids(&planned(&more)));
}

#[test]
fn an_order_elsewhere_changes_no_other_id() {
    let orders = json(ORDERS);
    let all = planned(&orders);
    for (index, line) in all.lines.iter().enumerate() {
        let mut fewer = orders.clone();
        fewer["lines"].as_array_mut().expect("lines").remove(index);
        let without = planned(&fewer);
        let kept: BTreeSet<&str> = all
            .steps
            .iter()
            .filter(|step| step.at.iter().all(|at| !line.pots.contains(&at.pot)))
            .map(|step| step.id.as_str())
            .collect();
        let still = ids(&without);
        let lost: Vec<&&str> = kept.difference(&still).collect();
        assert!(lost.is_empty(), "without line {index}: {lost:?}");
    }
}

#[test]
fn the_sheet_prints_every_step() {
    let made = planned(&json(ORDERS));
    // A step begins with its verb in capitals.
    let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ").to_lowercase();
    let sheet = words(&made.sheet().to_string());
    for at in made.steps.iter().flat_map(|step| &step.at) {
        for text in std::iter::once(&at.text).chain(&at.details) {
            assert!(sheet.contains(&words(text)), "{text}");
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 60, ..ProptestConfig::default() })]

    #[test]
    fn random_days_have_all_their_steps_in_order(documents in documents()) {
        let mut book = documents.book;
        for sprues in ["keep", "melt-again"] {
            book["limits"]["sprues"] = json!(sprues);
            if let Ok(made) = plan(&book.to_string(), &documents.orders.to_string()) {
                let found = objections(&made.plan);
                prop_assert!(found.is_empty(), "{}", found.join("\n"));
            }
        }
    }
}

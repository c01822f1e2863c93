//! Chain covers, corrections and alligation.

use pourwright::plan::correction::correct;
use pourwright::plan::internals::cover::{fewest_chains, proves};
use pourwright::plan::internals::order::Order;
use pourwright::plan::internals::precedence::FreshBase;
use pourwright::plan::internals::sequence::{Stage, Vessel, plan};
use pourwright::plan::leftover::{LeftoverParts, NewPot, use_most};
use pourwright::quantity::{Mass, Ratio};
use pourwright::uom::si::{mass::gram, ratio::ratio};

use crate::rows::{Row, read};

fn rows(start: &str) -> Vec<Row> {
    let rows: Vec<Row> = read("planning").into_iter().filter(|r| r.id.starts_with(start)).collect();
    assert!(!rows.is_empty(), "no row {start}");
    rows
}

fn numbers(value: &serde_json::Value) -> Vec<f64> {
    value.as_array().unwrap().iter().map(|x| x.as_f64().unwrap()).collect()
}

fn g(grams: f64) -> Mass {
    Mass::new::<gram>(grams)
}

fn none() -> Ratio {
    Ratio::new::<ratio>(0.0)
}

/// The order of all `nodes` (a before b where `before` has it).
fn order<T>(nodes: &[T], before: impl Fn(&T, &T) -> bool) -> Order {
    let all = 0..nodes.len();
    let pairs = all.clone().flat_map(|a| all.clone().map(move |b| (a, b)));
    let pairs = pairs.filter(|&(a, b)| a != b && before(&nodes[a], &nodes[b]));
    Order::from_pairs(nodes.len(), pairs).unwrap()
}

fn published_order(row: &Row) -> Order {
    let divides = |a: &u64, b: &u64| b.is_multiple_of(*a);
    match row.inputs["poset"].as_str().unwrap() {
        "subsets" => {
            let sets: Vec<u64> = (0..1 << row.number("n") as u32).collect();
            order(&sets, |a, b| a & b == *a)
        }
        "divisibility" => order(&(1..=row.number("n") as u64).collect::<Vec<_>>(), divides),
        "divisor lattice" => {
            let n = row.number("N") as u64;
            order(&(1..=n).filter(|d| n.is_multiple_of(*d)).collect::<Vec<_>>(), divides)
        }
        "product of chains" => {
            let sizes = numbers(&row.inputs["sizes"]);
            let points: Vec<(u64, u64)> = (0..sizes[0] as u64)
                .flat_map(|x| (0..sizes[1] as u64).map(move |y| (x, y)))
                .collect();
            order(&points, |a, b| a.0 <= b.0 && a.1 <= b.1)
        }
        other => panic!("{}: unknown order {other}", row.id),
    }
}

#[test]
fn chains() {
    for row in rows("i-chain-").into_iter().filter(|r| r.id != "i-chain-1") {
        let order = published_order(&row);
        let cover = fewest_chains(&order, &vec![1; order.len()], &vec![0; order.len()]).unwrap();
        row.check(cover.chains.len() as f64);
        row.check(cover.antichain.len() as f64);
        assert!(proves(&cover.antichain, &order), "{}", row.id);
    }
}

#[test]
fn the_longest_chain() {
    for row in rows("i-mirsky") {
        row.check(published_order(&row).height() as f64);
    }
}

/// A bipartite graph is an order of two ranks: each edge of its matching saves a chain.
#[test]
fn a_bipartite_matching() {
    for row in rows("i-match-clrs") {
        let edges = row.inputs["edges"].as_array().unwrap();
        let edges = edges.iter().map(|edge| {
            let [l, r] = numbers(edge)[..] else { panic!("{}: an edge has two ends", row.id) };
            (l as usize - 1, 5 + r as usize - 1)
        });
        let order = Order::from_pairs(9, edges).unwrap();
        let cover = fewest_chains(&order, &[1; 9], &[0; 9]).unwrap();
        row.check(9.0 - cover.chains.len() as f64);
    }
}

#[test]
fn a_pot_of_three_stages() {
    let [row] = &rows("i-chain-1")[..1] else { panic!("one row") };
    let mixes: Vec<Vec<f64>> =
        row.inputs["stages"].as_array().unwrap().iter().map(numbers).collect();
    let draws = numbers(&row.inputs["draws_g"]);
    let stages: Vec<Stage<'_>> = mixes
        .iter()
        .zip(&draws)
        .map(|(composition, draw)| Stage {
            composition,
            draw: g(*draw),
            kept: g(0.0),
            returned: g(0.0),
            loss: none(),
            capacity: None,
            heats: 1,
        })
        .collect();
    let vessel = Vessel { film: g(0.0), heel: g(0.0), least: g(0.0), heats: None };
    let got = plan(&stages, &vessel, FreshBase::Off).unwrap();
    for (step, need) in got.steps.iter().zip(numbers(&row.expected["need"])) {
        row.check_against(need, step.held.get::<gram>());
    }
    for (step, additions) in
        got.steps.iter().skip(1).zip(row.expected["additions"].as_array().unwrap())
    {
        for (got, expected) in step.additions.iter().zip(numbers(additions)) {
            row.check_against(expected, got.get::<gram>());
        }
    }
}

#[test]
fn corrections() {
    for row in rows("i-correct-") {
        let pot: Vec<Mass> = numbers(&row.inputs["pot_g"]).into_iter().map(g).collect();
        let got = correct(&pot, &numbers(&row.inputs["target_fraction"]), none()).unwrap();
        row.check_against(row.expected["k"].as_f64().unwrap(), got.total.get::<gram>());
        for (got, expected) in got.additions.iter().zip(numbers(&row.expected["add"])) {
            row.check_against(expected, got.get::<gram>());
        }
    }
}

/// Diluting with pure base is a correction: what was dosed is too much.
#[test]
fn dilutions() {
    for id in ["i-all-81", "i-all-12", "i-all-14"] {
        let row = &rows(id)[0];
        let (mass, strength) = (row.number("m1_g"), row.number("c1") / 100.0);
        let target = row.number("target") / 100.0;
        let pot = [g(mass * (1.0 - strength)), g(mass * strength)];
        let got = correct(&pot, &[1.0 - target, target], none()).unwrap();
        row.check(got.additions[0].get::<gram>());
        assert_eq!(got.additions[1], g(0.0));
    }
}

/// What is used of mixes of these strengths (per cent), an amount in g of each, in `total` g of `target`.
fn used(shelf: &[(f64, f64)], target: f64, total: f64) -> Vec<f64> {
    let mixes: Vec<[f64; 2]> = shelf.iter().map(|(c, _)| [100.0 - c, *c]).collect();
    let left: Vec<LeftoverParts<'_>> = mixes
        .iter()
        .zip(shelf)
        .map(|(composition, (_, m))| LeftoverParts { composition, mass: g(*m), heats: 0, key: 0 })
        .collect();
    let composition = &[100.0 - target, target];
    let pot = NewPot { composition, tolerance: &[none(), none()], mass: g(total), heats: 1 };
    let filled = use_most(&left, &[pot], None, none()).unwrap();
    filled[0].from.iter().map(|m| m.get::<gram>()).collect()
}

fn near(got: f64, expected: f64, row: &Row) {
    assert!((got - expected).abs() <= 1e-9 * expected, "{}: {got} for {expected}", row.id);
}

/// Mixing two strengths with nothing fresh is using as much as possible of both.
#[test]
fn alligation() {
    let row = &rows("i-all-hc")[0];
    let (weak, total) = (row.number("m2_g"), 360.0);
    let shelf = [(row.number("c1"), 500.0), (row.number("c2"), weak)];
    near(used(&shelf, row.number("target"), total)[0], row.expected.as_f64().unwrap(), row);

    let row = &rows("i-all-drop")[0];
    let c = numbers(&row.inputs["c"]);
    let shelf = [(c[0], 500.0), (c[1], 500.0)];
    let total = row.number("total_mL");
    near(used(&shelf, row.number("target"), total)[0], row.expected.as_f64().unwrap(), row);

    // Three strengths have no one answer; the published one must use itself up.
    let row = &rows("i-all-3")[0];
    let parts = numbers(&row.expected);
    let shelf: Vec<(f64, f64)> = numbers(&row.inputs["c"]).into_iter().zip(parts.clone()).collect();
    for (got, part) in used(&shelf, row.number("target"), parts.iter().sum()).iter().zip(&parts) {
        near(*got, *part, row);
    }
}

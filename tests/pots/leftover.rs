//! What goes from the shelf into pots, against a general-purpose solver and exact fractions.

use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};
use pourwright::plan::leftover::{LeftoverParts, NewPot, use_most};
use pourwright::quantity::{Mass, Ratio};
use pourwright::uom::si::{mass::gram, ratio::ratio};
use pourwright_tests::oracle::linear as exact;
use proptest::prelude::*;

use crate::plan::g;

/// Shares of each material, and a mass in g.
type Mix = (Vec<f64>, f64);

fn unit(parts: &[f64]) -> Vec<f64> {
    let sum: f64 = parts.iter().sum();
    parts.iter().map(|part| part / sum).collect()
}

/// The most that is used, by microlp, over what goes from each leftover into each pot and what pots hold of each material.
fn most_by_solver(shelf: &[Mix], pots: &[Mix], tolerance: f64) -> f64 {
    let mut problem = Problem::new(OptimizationDirection::Maximize);
    let mut flows: Vec<Vec<Variable>> = Vec::new();
    for (target, total) in pots {
        let row: Vec<Variable> =
            shelf.iter().map(|_| problem.add_var(1.0, (0.0, f64::INFINITY))).collect();
        let mut all = Vec::new();
        for (i, share) in unit(target).iter().enumerate() {
            let range = (share * total * (1.0 - tolerance), share * total * (1.0 + tolerance));
            let holds = problem.add_var(0.0, range);
            let mut brought = vec![(holds, -1.0)];
            brought.extend(row.iter().zip(shelf).map(|(flow, (mix, _))| (*flow, unit(mix)[i])));
            problem.add_constraint(&brought, ComparisonOp::Le, 0.0);
            all.push((holds, 1.0));
        }
        problem.add_constraint(&all, ComparisonOp::Eq, *total);
        flows.push(row);
    }
    for (j, (_, there)) in shelf.iter().enumerate() {
        let uses: Vec<(Variable, f64)> = flows.iter().map(|row| (row[j], 1.0)).collect();
        problem.add_constraint(&uses, ComparisonOp::Le, *there);
    }
    problem.solve().unwrap().into_solution().unwrap().objective()
}

/// The most that is used, and of that the most of the oldest and in the first pots, in exact fractions. Fresh material
/// is what a pot lacks: at least its floor less what is brought, and no pot holds more than it may.
fn most_exactly(shelf: &[Mix], pots: &[Mix], tolerance: f64) -> Vec<f64> {
    let materials = pots[0].0.len();
    let pairs = shelf.len() * pots.len();
    let size = pairs + pots.len() * materials;
    let flow = |p: usize, j: usize| p * shelf.len() + j;
    let above = |p: usize, i: usize| pairs + p * materials + i;
    let row = |terms: &mut dyn Iterator<Item = (usize, f64)>, most: f64| {
        let mut factors = vec![0.0; size];
        terms.for_each(|(place, factor)| factors[place] = factor);
        (factors, most)
    };
    let mut rows = Vec::new();
    for (p, (target, total)) in pots.iter().enumerate() {
        let target = unit(target);
        for (i, share) in target.iter().enumerate() {
            let brings = shelf.iter().enumerate().map(|(j, (mix, _))| (flow(p, j), unit(mix)[i]));
            let floor = share * total * (1.0 - tolerance);
            rows.push(row(&mut brings.chain([(above(p, i), -1.0)]), floor));
            let range = 2.0 * share * total * tolerance;
            rows.push(row(&mut [(above(p, i), 1.0)].into_iter(), range));
        }
        let room = total * tolerance;
        rows.push(row(&mut (0..materials).map(|i| (above(p, i), 1.0)), room));
    }
    for (j, (_, there)) in shelf.iter().enumerate() {
        rows.push(row(&mut (0..pots.len()).map(|p| (flow(p, j), 1.0)), *there));
    }
    let each = || (0..pots.len()).flat_map(|p| (0..shelf.len()).map(move |j| (p, j)));
    let all = row(&mut each().map(|(p, j)| (flow(p, j), 1.0)), 0.0).0;
    let early = row(&mut each().map(|(p, j)| (flow(p, j), early(p, j, shelf, pots))), 0.0).0;
    exact::best(&rows, &[all, early]).expect("it has an end")
}

/// The worth of a gram of a leftover in a pot, where it is better used early.
fn early(p: usize, j: usize, shelf: &[Mix], pots: &[Mix]) -> f64 {
    1.0 - (j * pots.len() + p) as f64 / (shelf.len() * pots.len()) as f64
}

/// Mixes of the same base with more or less of a few materials, some of which lack one.
fn mixes(
    count: std::ops::Range<usize>,
    grams: std::ops::Range<f64>,
) -> impl Strategy<Value = Vec<Mix>> {
    let dose = prop_oneof![Just(0.0), Just(1.0), 0.01_f64..4.0];
    let parts = proptest::collection::vec(dose, 4).prop_map(|doses| {
        let mut parts = vec![100.0];
        parts.extend(doses);
        parts
    });
    proptest::collection::vec((parts, grams), count)
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(200))]
    #[test]
    fn no_more_could_be_used(
        shelf in mixes(1..6, 5.0..300.0), pots in mixes(1..5, 50.0..500.0),
        tolerance in prop_oneof![Just(0.0), 0.0_f64..0.1],
    ) {
        let tolerances = [Ratio::new::<ratio>(tolerance); 5];
        let left: Vec<LeftoverParts<'_>> = shelf
            .iter()
            .zip(0..)
            .map(|((composition, there), key)| LeftoverParts { composition, mass: g(*there), heats: 0, key })
            .collect();
        let new: Vec<NewPot<'_>> = pots
            .iter()
            .map(|(composition, total)| NewPot { composition, tolerance: &tolerances, mass: g(*total), heats: 1 })
            .collect();
        let filled = use_most(&left, &new, None, Ratio::default()).unwrap();
        let used = |worth: &dyn Fn(usize, usize) -> f64| -> f64 {
            let each = filled.iter().enumerate().flat_map(|(p, pot)| {
                pot.from.iter().enumerate().map(move |(j, m)| (p, j, m.get::<gram>()))
            });
            each.map(|(p, j, m)| worth(p, j) * m).sum()
        };
        let total = used(&|_, _| 1.0);
        let expected = most_by_solver(&shelf, &pots, tolerance);
        prop_assert!((total - expected).abs() <= 1e-6 * expected.max(1.0), "{total} of {expected}");
        let expected = most_exactly(&shelf, &pots, tolerance);
        let early = used(&|p, j| early(p, j, &shelf, &pots));
        prop_assert!((total - expected[0]).abs() <= 1e-8 * total.max(1.0), "{total} of {expected:?}");
        // Where two leftovers serve alike, the rounding of their shares decides in exact fractions: no less is early.
        prop_assert!(early >= expected[1] - 1e-7 * early.max(1.0), "{early} of {expected:?}");
        let brought = |p: usize, i: usize| -> f64 {
            shelf.iter().zip(&filled[p].from).map(|((mix, _), m)| unit(mix)[i] * m.get::<gram>()).sum()
        };
        for (p, (target, total)) in pots.iter().enumerate() {
            for (i, share) in unit(target).iter().enumerate() {
                let holds = brought(p, i) + filled[p].fresh[i].get::<gram>();
                prop_assert!((holds - share * total).abs() <= (tolerance * share + 1e-11) * total);
            }
        }
    }
}

/// A day of 300 pots with 12 leftovers, of which each fits some.
#[test]
fn a_large_day() {
    let doses = [0.5, 1.0, 1.5, 2.0];
    let mix = |n: usize| {
        let mut parts = vec![100.0; 1];
        parts.extend(
            (0..4).map(|i| if (n / 3 + i).is_multiple_of(4) { 0.0 } else { doses[(n + i) % 4] }),
        );
        parts
    };
    let shelf: Vec<Mix> = (0..12).map(|n| (mix(n), 150.0 + n as f64)).collect();
    let pots: Vec<Mix> = (0..300).map(|n| (mix(n), 400.0)).collect();
    let tolerances = [Ratio::new::<ratio>(0.02); 5];
    let left: Vec<LeftoverParts<'_>> = shelf
        .iter()
        .map(|(composition, m)| LeftoverParts { composition, mass: g(*m), heats: 0, key: 0 })
        .collect();
    let new: Vec<NewPot<'_>> = pots
        .iter()
        .map(|(composition, m)| NewPot {
            composition,
            tolerance: &tolerances,
            mass: g(*m),
            heats: 1,
        })
        .collect();
    let filled = use_most(&left, &new, None, Ratio::default()).unwrap();
    let used: Mass = filled.iter().flat_map(|pot| &pot.from).fold(g(0.0), |sum, m| sum + *m);
    let all: f64 = shelf.iter().map(|(_, m)| m).sum();
    assert!((used.get::<gram>() - all).abs() < 1e-6, "{} of {all}", used.get::<gram>());
}

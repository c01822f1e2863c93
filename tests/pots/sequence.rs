//! Sequences of draws against forward simulation and against a linear program.

use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};
use pourwright::plan::correction::correct;
use pourwright::plan::internals::precedence::FreshBase;
use pourwright::plan::internals::sequence::{Stage, Vessel, plan};
use pourwright::quantity::{Mass, Ratio};
use pourwright::uom::si::{mass::gram, ratio::ratio};
use pourwright_tests::oracle::pot;
use proptest::prelude::*;

use crate::plan::g;

fn vessel(bottom: f64) -> Vessel {
    Vessel { film: g(0.0), heel: g(bottom), least: g(0.0), heats: None }
}

fn stage(composition: &[f64], draw: f64, loss: f64) -> Stage<'_> {
    let loss = Ratio::new::<ratio>(loss);
    Stage {
        composition,
        draw: g(draw),
        kept: g(0.0),
        returned: g(0.0),
        loss,
        capacity: None,
        heats: 1,
    }
}

fn start(stages: &[Stage<'_>], bottom: f64) -> f64 {
    plan(stages, &vessel(bottom), FreshBase::Off).unwrap().steps[0].held.get::<gram>()
}

/// The largest start of which nothing is left at the end, as a linear program over what each stage holds.
fn start_by_program(stages: &[(Vec<f64>, f64)]) -> f64 {
    let mut problem = Problem::new(OptimizationDirection::Maximize);
    let held: Vec<Variable> = (0..stages.len())
        .map(|k| problem.add_var(if k == 0 { 1.0 } else { 0.0 }, (0.0, f64::INFINITY)))
        .collect();
    for (k, (mix, draw)) in stages.iter().enumerate() {
        let Some((next, _)) = stages.get(k + 1) else {
            problem.add_constraint([(held[k], 1.0)], ComparisonOp::Eq, *draw);
            continue;
        };
        problem.add_constraint([(held[k], 1.0)], ComparisonOp::Ge, *draw);
        // held_{k+1}·t_i ≥ (held_k − draw_k)·a_i
        for (a, t) in mix.iter().zip(next) {
            problem.add_constraint([(held[k + 1], *t), (held[k], -a)], ComparisonOp::Ge, -draw * a);
        }
    }
    problem.solve().unwrap().into_solution().unwrap().objective()
}

fn unit(parts: &[f64]) -> Vec<f64> {
    let sum: f64 = parts.iter().sum();
    parts.iter().map(|p| p / sum).collect()
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1000))]
    #[test]
    fn the_start_is_the_least_that_does_not_run_dry(
        doses in proptest::collection::vec((0.0_f64..0.4, 0.0_f64..200.0), 1..6),
        bottom in 0.0_f64..60.0, loss in 0.0_f64..0.1,
    ) {
        // Each stage holds the doses of all before it.
        let mut dosed = 0.0;
        let mut mixes = Vec::new();
        let mut stages = Vec::new();
        for (more, draw) in &doses {
            dosed += more;
            mixes.push(([1.0, dosed], *draw));
            stages.push(pot::Stage { base_share: 1.0 / (1.0 + dosed), out: *draw, capacity: 1e9 });
        }
        let ours: Vec<Stage<'_>> = mixes.iter().map(|(mix, draw)| stage(mix, *draw, loss)).collect();
        let (got, expected) = (start(&ours, bottom), pot::least_start(&stages, bottom, loss));
        prop_assert!((got - expected).abs() <= 1e-9 * expected.max(1.0), "{got} {expected}");
    }

    #[test]
    fn with_fresh_base_the_start_is_that_of_a_linear_program(
        stages in proptest::collection::vec(
            (proptest::collection::vec(0.05_f64..1.0, 3), 1.0_f64..20.0), 1..5),
    ) {
        let stages: Vec<_> = stages.into_iter().map(|(mix, draw)| (unit(&mix), draw)).collect();
        let ours: Vec<Stage<'_>> = stages.iter().map(|(mix, draw)| stage(mix, *draw, 0.0)).collect();
        let (got, expected) = (start(&ours, 0.0), start_by_program(&stages));
        prop_assert!((got - expected).abs() <= 1e-5 * expected.max(1.0), "{got} {expected}");
    }

    #[test]
    fn a_correction_is_that_of_a_linear_program(
        parts in proptest::collection::vec((0.0_f64..9.0, 0.05_f64..1.0), 1..6),
    ) {
        let target = unit(&parts.iter().map(|p| p.1).collect::<Vec<_>>());
        let mut problem = Problem::new(OptimizationDirection::Minimize);
        let total = problem.add_var(1.0, (0.0, f64::INFINITY));
        for ((c, _), t) in parts.iter().zip(&target) {
            problem.add_constraint([(total, *t)], ComparisonOp::Ge, *c);
        }
        let expected = problem.solve().unwrap().into_solution().unwrap().objective();
        let pot: Vec<Mass> = parts.iter().map(|p| g(p.0)).collect();
        let got = correct(&pot, &target, Ratio::new::<ratio>(0.0)).unwrap().total.get::<gram>();
        prop_assert!((got - expected).abs() <= 1e-5 * expected.max(1.0), "{got} {expected}");
    }
}

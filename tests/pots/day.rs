//! Whole days against all ways to put stages together.

use pourwright::plan::internals::precedence::FreshBase;
use pourwright::plan::internals::split::{Wanted, split};
use pourwright::process::clock::Hot;
use pourwright::quantity::Time;
use pourwright::uom::si::time::second;
use pourwright_tests::oracle::day::{self, Doses, fewest_pots};
use proptest::prelude::*;

use crate::plan::{Bench, FREE, check, g, precedence, whole, with_base};

/// Stages of different formulas, and laminates among them: each formula has one plain stage at most, so
/// that all portions are stages.
fn days() -> impl Strategy<Value = (Vec<Doses>, Vec<day::Wanted>)> {
    let formulas = proptest::collection::btree_set(proptest::array::uniform3(0_u32..3), 1..6);
    let plain = proptest::collection::vec(proptest::option::of(10_u32..100), 6);
    let laminates = proptest::collection::vec((0_usize..6, 0_usize..6, 5_u32..60), 0..3);
    (formulas, plain, laminates).prop_map(|(formulas, plain, laminates)| {
        let formulas: Vec<Doses> =
            formulas.into_iter().map(|doses| doses.map(|d| d * 20)).collect();
        let mut wanted = Vec::new();
        for (formula, draw) in (0..formulas.len()).zip(plain) {
            let plain = |draw| day::Wanted { formula, draw: f64::from(draw), laminate: None };
            wanted.extend(draw.map(plain));
        }
        for (laminate, (a, b, draw)) in laminates.into_iter().enumerate() {
            for formula in [a, b] {
                let formula = formula % formulas.len();
                let laminate = Some(laminate);
                wanted.push(day::Wanted { formula, draw: f64::from(draw), laminate });
            }
        }
        wanted.truncate(9);
        (formulas, wanted)
    })
}

/// A laminate whose second layer was cut off is none.
fn without_single_layers(wanted: Vec<day::Wanted>) -> Vec<day::Wanted> {
    let layers = |l| wanted.iter().filter(|w| w.laminate == l).count();
    wanted.iter().copied().filter(|w| w.laminate.is_none() || layers(w.laminate) > 1).collect()
}

fn compare(formulas: &[Doses], wanted: &[day::Wanted], bench: &day::Limits) {
    let keeps = |w| Wanted { kept: g(bench.kept), ..whole(w) };
    let stages: Vec<Wanted> = wanted.iter().map(keeps).collect();
    let precedence = precedence(formulas);
    let one_cup = Bench::new(bench, formulas.len());
    let limits = one_cup.limits();
    let expected = fewest_pots(wanted, formulas, bench);
    let got = split(&stages, &precedence, &limits);
    let Some(expected) = expected else {
        assert!(got.is_err(), "{got:?}");
        return;
    };
    let got = got.unwrap();
    check(&got, &stages, &precedence, &limits);
    assert_eq!(got.pots.len(), expected, "{got:#?}");
    assert!(got.proof.lower <= expected);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1500))]

    #[test]
    fn without_other_limits_the_proof_matches((formulas, wanted) in days()) {
        let wanted: Vec<_> = wanted.into_iter().filter(|w| w.laminate.is_none()).collect();
        let stages: Vec<Wanted> = wanted.iter().map(whole).collect();
        let precedence = precedence(&formulas);
        let free = Bench::new(&FREE, formulas.len());
        let got = split(&stages, &precedence, &free.limits()).unwrap();
        check(&got, &stages, &precedence, &free.limits());
        prop_assert!(got.proof.least());
        prop_assert_eq!(Some(got.pots.len()), fewest_pots(&wanted, &formulas, &FREE));
    }

    #[test]
    fn laminates_alone((formulas, wanted) in days()) {
        compare(&formulas, &without_single_layers(wanted), &FREE);
    }

    #[test]
    fn every_limit_at_once(
        (formulas, wanted) in days(),
        capacity in 60_u32..260, bottom in 0_u32..20, least in 0_u32..120, kept in 0_u32..5,
        loss in 0_u32..4, heats in 1_usize..5,
    ) {
        let bench = day::Limits {
            capacity: f64::from(capacity),
            bottom: f64::from(bottom),
            least: f64::from(least.min(capacity)),
            kept: f64::from(kept),
            loss: f64::from(loss) / 100.0,
            heats,
        };
        compare(&formulas, &without_single_layers(wanted), &bench);
    }

    /// Many shots and stages of one formula: draws are divided, so only what must hold is checked.
    #[test]
    fn divided_draws_are_served_and_bounded(
        formulas in proptest::collection::btree_set(proptest::array::uniform3(0_u32..3), 1..6),
        stages in proptest::collection::vec((0_usize..6, 1_u32..30, 1_u32..40, 0_u32..5), 1..14),
        laminate in proptest::option::of((0_usize..6, 0_usize..6, 1_u32..30, 1_u32..30)),
        capacity in 60_u32..400, heats in 1_usize..6, fresh in proptest::bool::ANY,
        sprue in 0.0_f64..0.5, hot in proptest::option::of(60_u32..600),
    ) {
        let formulas: Vec<Doses> = formulas.into_iter().map(|d| d.map(|x| x * 20)).collect();
        let stage = |formula: usize, shot: u32, shots, laminate: Option<usize>, key| Wanted {
            formula: formula % formulas.len(),
            shot: g(f64::from(shot)),
            returned: g(if laminate.is_none() { f64::from(shot) * sprue } else { 0.0 }),
            kept: g(2.0),
            shots,
            laminate,
            every: hot.map(|_| Time::new::<second>(f64::from(10 + 7 * (shot % 7)))),
            key,
        };
        let mut wanted: Vec<Wanted> =
            stages.into_iter().map(|(f, shot, shots, key)| stage(f, shot, shots, None, key)).collect();
        if let Some((a, b, shot, shots)) = laminate {
            wanted.extend([a, b].map(|f| stage(f, shot, shots, Some(7), 0)));
        }
        let fresh_base = if fresh { FreshBase::On } else { FreshBase::Off };
        let precedence = with_base(&formulas, fresh_base);
        let bench = day::Limits { capacity: f64::from(capacity), heats, bottom: 3.0, ..FREE };
        let mut one_cup = Bench::new(&bench, formulas.len());
        if let Some(hot) = hot {
            one_cup = one_cup.hot(Hot::Stated(Time::new::<second>(f64::from(hot))));
        }
        let limits = one_cup.limits();
        let got = split(&wanted, &precedence, &limits).unwrap();
        check(&got, &wanted, &precedence, &limits);
        let again = split(&wanted, &precedence, &limits).unwrap();
        prop_assert_eq!(got, again);
    }
}

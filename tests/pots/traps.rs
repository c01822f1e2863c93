//! Days that a careless planner gets wrong.

use num_rational::BigRational;
use pourwright::plan::internals::precedence::{Composition, FreshBase, Precedence};
use pourwright::plan::internals::split::{Reason, Split, SplitError, Wanted, split};
use pourwright::process::clock::Hot;
use pourwright::quantity::Time;
use pourwright::uom::si::time::second;
use pourwright_tests::oracle::day::{self, Doses};

use crate::plan::{Bench, FREE, check, g, precedence};

fn s(seconds: f64) -> Time {
    Time::new::<second>(seconds)
}

fn wanted(formula: usize, draw: f64, laminate: Option<usize>) -> Wanted {
    let none = g(0.0);
    let (shot, every) = (g(draw), None);
    Wanted { formula, shot, returned: none, kept: none, shots: 1, laminate, every, key: 0 }
}

fn plan(formulas: &[Doses], stages: &[Wanted], bench: &day::Limits) -> Split {
    let precedence = precedence(formulas);
    let one_cup = Bench::new(bench, formulas.len());
    let limits = one_cup.limits();
    let got = split(stages, &precedence, &limits).unwrap();
    check(&got, stages, &precedence, &limits);
    got
}

const PLAIN: Doses = [0, 0, 0];
const SALTED: Doses = [0, 0, 100];

#[test]
fn plain_and_salted_share_a_pot() {
    let got = plan(&[PLAIN, SALTED], &[wanted(0, 50.0, None), wanted(1, 50.0, None)], &FREE);
    assert_eq!((got.pots.len(), got.proof.to_string().as_str()), (1, "least possible"));
}

#[test]
fn layers_of_one_piece_are_two_pots_though_one_formula_could_follow_the_other() {
    let layers = [wanted(0, 50.0, Some(1)), wanted(1, 50.0, Some(1))];
    let got = plan(&[PLAIN, SALTED], &layers, &FREE);
    assert_eq!((got.pots.len(), got.proof.least()), (2, true));
    assert!(matches!(got.proof.reasons[..], [Reason::Layers { .. }]));
    // Even when both layers are of one formula.
    let same = [wanted(0, 50.0, Some(1)), wanted(0, 50.0, Some(1))];
    assert_eq!(plan(&[PLAIN], &same, &FREE).pots.len(), 2);
}

#[test]
fn two_laminates_that_cross_would_wait_for_each_other() {
    // A → B and C → D would be two pots, but A goes with D and B with C: the pot at A waits
    // for D, which comes after C, which waits for B, which comes after A.
    let formulas = [[20, 0, 0], [40, 0, 0], [0, 20, 0], [0, 40, 0]];
    let crossed = [(0, 1), (3, 1), (1, 2), (2, 2)].map(|(f, l)| wanted(f, 10.0, Some(l)));
    let got = plan(&formulas, &crossed, &FREE);
    assert_eq!((got.pots.len(), got.proof.searched), (3, true));
    assert_eq!(got.proof.to_string(), "[2, 3]");
    // Uncrossed they are two.
    let straight = [(0, 1), (2, 1), (1, 2), (3, 2)].map(|(f, l)| wanted(f, 10.0, Some(l)));
    assert_eq!(plan(&formulas, &straight, &FREE).pots.len(), 2);
}

#[test]
fn a_pot_grows_between_draws() {
    // 100 g plain and 150 g of half salt: 250 g drawn from a pot that never holds more than
    // 175 g, though the vessel holds only 200 g.
    let bench = day::Limits { capacity: 200.0, ..FREE };
    let got = plan(&[PLAIN, SALTED], &[wanted(0, 100.0, None), wanted(1, 150.0, None)], &bench);
    assert_eq!((got.pots.len(), got.proof.least()), (1, true));
}

#[test]
fn the_same_formula_per_1_2_or_3_cups_is_one() {
    let per = |cups: i64| {
        let exact = |n: i64, d: i64| BigRational::new(n.into(), d.into());
        let dose = exact(cups * 32 * 44, 1000) / (exact(cups, 1) * exact(1706, 7));
        Composition::new([(0, exact(1, 1))], [(1, dose)]).unwrap()
    };
    let precedence = Precedence::new(&[per(1), per(2), per(3)], FreshBase::Off).unwrap();
    let stages = [wanted(2, 10.0, None), wanted(0, 10.0, None), wanted(1, 10.0, None)];
    let got = split(&stages, &precedence, &Bench::new(&FREE, 3).limits()).unwrap();
    assert_eq!((got.pots.len(), got.pots[0].visits.len(), got.pots[0].visits[0].heats), (1, 1, 1));
}

#[test]
fn a_chain_is_no_longer_than_its_heats() {
    let formulas = [[0, 0, 0], [20, 0, 0], [40, 0, 0], [60, 0, 0], [80, 0, 0]];
    let stages = [0, 1, 2, 3, 4].map(|f| wanted(f, 10.0, None));
    let got = plan(&formulas, &stages, &day::Limits { heats: 2, ..FREE });
    assert_eq!((got.pots.len(), got.proof.least()), (3, true));
    assert!(matches!(got.proof.reasons[..], [Reason::Heats { heats: 5, allowed: 2, pots: 3, .. }]));
}

#[test]
fn a_draw_that_fits_no_pot_is_divided_between_shots() {
    let one = [Wanted { shots: 50, ..wanted(0, 20.0, None) }];
    let got = plan(&[PLAIN], &one, &day::Limits { capacity: 310.0, ..FREE });
    // 15 shots of 20 g a pot.
    assert_eq!((got.pots.len(), got.proof.least()), (4, true));
}

/// 120 shots of 50 s from pots that stay hot for 8 min: 9 a heat, 27 in the 3 heats of a pot (plain arithmetic). Plain
/// shots before them take a heat of their own.
#[test]
fn reheats_between_shots_count_among_the_heats_of_a_pot() {
    let timed =
        |formula, shots| Wanted { shots, every: Some(s(50.0)), ..wanted(formula, 20.0, None) };
    let (formulas, precedence) = ([PLAIN, SALTED], precedence(&[PLAIN, SALTED]));
    let limits = day::Limits { heats: 3, ..FREE };
    let bench = Bench::new(&limits, formulas.len()).hot(Hot::Stated(s(480.0)));
    let stages = [timed(1, 120)];
    let got = split(&stages, &precedence, &bench.limits()).unwrap();
    check(&got, &stages, &precedence, &bench.limits());
    let shots: Vec<u32> = got.pots.iter().map(|pot| pot.visits[0].draws[0].1).collect();
    assert_eq!((shots, got.proof.least()), (vec![27, 27, 27, 27, 12], true));
    let [Reason::Apart { formulas: alone }] = &got.proof.reasons[..] else { panic!("{got:?}") };
    assert_eq!((alone[0].shots, alone[0].in_heats, alone[0].pots), (Some((120, 27)), Some(3), 5));
    // 14 heats and 4: with 18 shots in one pot at 3 heats each no two draws fill a pot together.
    let both = [timed(0, 36), timed(1, 120)];
    let got = split(&both, &precedence, &bench.limits()).unwrap();
    check(&got, &both, &precedence, &bench.limits());
    assert_eq!((got.pots.len(), got.proof.least()), (6, true));
    assert!(matches!(got.proof.reasons[..], [Reason::Heats { heats: 18, allowed: 3, .. }]));
    let long = [Wanted { every: Some(s(481.0)), ..timed(0, 1) }];
    let refused = split(&long, &precedence, &bench.limits()).unwrap_err();
    assert!(matches!(refused, SplitError::ShotTooLong { stage: 0, .. }), "{refused}");
}

#[test]
fn sessions_are_no_longer_than_the_heats_of_a_pot() {
    // 40 shots of two layers, 9 a heat, 18 a pot: three pots of each layer.
    let layer =
        |formula| Wanted { shots: 40, every: Some(s(50.0)), ..wanted(formula, 20.0, Some(1)) };
    let (layers, precedence) = ([layer(0), layer(1)], precedence(&[PLAIN, SALTED]));
    let limits = day::Limits { heats: 2, ..FREE };
    let bench = Bench::new(&limits, 2).hot(Hot::Stated(s(480.0)));
    let got = split(&layers, &precedence, &bench.limits()).unwrap();
    check(&got, &layers, &precedence, &bench.limits());
    let heats: u32 = got.work.iter().map(|work| 2 * work.draws[0].shots.div_ceil(9)).sum();
    // 5 heats of each, in pots of 2.
    assert_eq!((heats, got.pots.len(), got.proof.lower), (10, 6, 5));
}

#[test]
fn draws_are_divided_where_that_saves_a_pot() {
    let formulas = [[0, 0, 0], [0, 0, 1], [0, 0, 2]];
    let stages = [0, 1, 2].map(|f| Wanted { shots: 66, ..wanted(f, 1.0, None) });
    let got = plan(&formulas, &stages, &day::Limits { capacity: 100.0, ..FREE });
    assert_eq!((got.pots.len(), got.proof.least()), (2, true));
}

#[test]
fn lighter_and_earlier_work_comes_first() {
    let formulas = [[20, 0, 0], [0, 20, 0], [0, 0, 20]];
    let keyed = |f: usize, key| Wanted { key, ..wanted(f, 10.0, None) };
    let got = plan(&formulas, &[keyed(0, 9), keyed(1, 2), keyed(2, 5)], &FREE);
    let order: Vec<usize> = got.work.iter().map(|w| w.draws[0].wanted).collect();
    assert_eq!(order, [1, 2, 0]);
}

#[test]
fn what_cannot_be_served_is_refused_with_numbers() {
    let precedence = precedence(&[PLAIN, SALTED]);
    let small = day::Limits { capacity: 50.0, bottom: 5.0, ..FREE };
    let one_cup = Bench::new(&small, 2);
    let refused = |stages: &[Wanted]| split(stages, &precedence, &one_cup.limits()).unwrap_err();
    let large = refused(&[wanted(0, 60.0, None)]);
    assert!(matches!(large, SplitError::ShotTooLarge { stage: 0, .. }));
    assert!(
        large.to_string().contains("takes 60.0 g, but a pot of it gives at most 45.0 g"),
        "{large}"
    );
    assert!(matches!(
        refused(&[wanted(7, 1.0, None)]),
        SplitError::NoSuchFormula { formula: 7, .. }
    ));
    assert!(matches!(refused(&[wanted(0, f64::NAN, None)]), SplitError::BadShot { stage: 0, .. }));
    assert!(matches!(refused(&[wanted(0, 1.0, Some(3))]), SplitError::OneLayer { laminate: 3 }));
    let four = [wanted(0, 1.0, Some(3)); 4];
    assert!(matches!(refused(&four), SplitError::TooFewInjectors { layers: 4, injectors: 3, .. }));
    let unlike = [wanted(0, 1.0, Some(3)), Wanted { shots: 2, ..wanted(1, 1.0, Some(3)) }];
    assert!(matches!(refused(&unlike), SplitError::UnlikeShots { first: 1, other: 2, .. }));
    let many = [Wanted { shots: 4_000_000, ..wanted(0, 1.0, None) }];
    assert!(matches!(refused(&many), SplitError::TooManyPots));
    let none = split(&[], &precedence, &one_cup.limits()).unwrap();
    assert!(none.pots.is_empty() && none.work.is_empty() && none.proof.least());
}

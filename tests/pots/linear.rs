//! Linear programs against published ones, a general-purpose solver and exact fractions.

use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};
use pourwright::plan::internals::linear::{AtMost, LinearError, Program};
use pourwright_tests::oracle::linear as exact;
use proptest::prelude::*;
use rstest::rstest;

const NONE: f64 = f64::INFINITY;

fn program(upper: &[f64], rows: &[(&[f64], f64)]) -> Program {
    let row = |(factors, most): &(&[f64], f64)| AtMost {
        terms: factors.iter().copied().enumerate().filter(|(_, factor)| *factor != 0.0).collect(),
        most: *most,
    };
    Program { upper: upper.to_vec(), rows: rows.iter().map(row).collect() }
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn near(found: &[f64], expected: &[f64]) {
    assert_eq!(found.len(), expected.len());
    for (found_one, expected_one) in found.iter().zip(expected) {
        assert!((found_one - expected_one).abs() < 1e-9, "{found:?} for {expected:?}");
    }
}

/// How far `values` is out of `program`.
fn out_of(program: &Program, values: &[f64]) -> f64 {
    let bounds = values.iter().zip(&program.upper).map(|(x, upper)| (-x).max(x - upper));
    let rows = program.rows.iter().map(|row| {
        row.terms.iter().map(|(place, factor)| values[*place] * factor).sum::<f64>() - row.most
    });
    bounds.chain(rows).fold(0.0, f64::max)
}

/// V. Chvátal, Linear Programming, 1983, the example of chapter 2; quoted from memory, and its answer is proved by the
/// multipliers (1, 0, 1) of the rows: 5 + 8 = 13, and they cover 5, 4 and 3.
#[test]
fn a_textbook_program() {
    let rows: [(&[f64], f64); 3] =
        [(&[2.0, 3.0, 1.0], 5.0), (&[4.0, 1.0, 2.0], 11.0), (&[3.0, 4.0, 2.0], 8.0)];
    let objective = vec![5.0, 4.0, 3.0];
    let found = program(&[NONE; 3], &rows).maximize(std::slice::from_ref(&objective)).unwrap();
    near(&found, &[2.0, 0.0, 1.0]);
    near(&[dot(&found, &objective)], &[13.0]);
}

/// Programs on which the simplex method goes in circles by the rule of the largest factor, or nearly: E. M. L. Beale, Cycling
/// in the dual simplex algorithm, Naval Research Logistics Quarterly 2 (1955) 269; the example of Chvátal, chapter 3; both
/// quoted from memory. Both rise without end but for the last row.
#[rstest]
#[case::beale(
    &[0.75, -20.0, 0.5, -6.0],
    [[0.25, -8.0, -1.0, 9.0], [0.5, -12.0, -0.5, 3.0], [0.0, 0.0, 1.0, 0.0]],
    1.25
)]
#[case::chvatal(
    &[10.0, -57.0, -9.0, -24.0],
    [[0.5, -5.5, -2.5, 9.0], [0.5, -1.5, -0.5, 1.0], [1.0, 0.0, 0.0, 0.0]],
    1.0
)]
fn no_circles(#[case] objective: &[f64], #[case] rows: [[f64; 4]; 3], #[case] expected: f64) {
    let rows = [(&rows[0][..], 0.0), (&rows[1][..], 0.0), (&rows[2][..], 1.0)];
    let bounded = program(&[NONE; 4], &rows);
    let found = bounded.maximize(&[objective.to_vec()]).unwrap();
    near(&[dot(&found, objective)], &[expected]);
    assert!(out_of(&bounded, &found) < 1e-12);
    let unbounded = program(&[NONE; 4], &rows[..2]);
    assert_eq!(unbounded.maximize(&[objective.to_vec()]), Err(LinearError::Unbounded));
}

/// V. Klee and G. J. Minty, How good is the simplex algorithm?, 1972, as scaled by Chvátal, chapter 4: a corner at which the
/// rule of the largest factor comes by after all others.
#[test]
fn a_long_way() {
    const N: usize = 8;
    let factors = |i: usize| -> Vec<f64> {
        (0..N)
            .map(|j| if j < i { 2.0 * 10.0_f64.powi((i - j) as i32) } else { f64::from(j == i) })
            .collect()
    };
    let all: Vec<Vec<f64>> = (0..N).map(factors).collect();
    let rows: Vec<(&[f64], f64)> =
        all.iter().enumerate().map(|(i, row)| (&row[..], 100.0_f64.powi(i as i32))).collect();
    let objective = (0..N).map(|j| 10.0_f64.powi((N - 1 - j) as i32)).collect();
    let found = program(&[NONE; N], &rows).maximize(&[objective]).unwrap();
    let mut expected = [0.0; N];
    expected[N - 1] = 100.0_f64.powi(N as i32 - 1);
    near(&found, &expected);
}

#[test]
fn the_second_objective_chooses_among_the_best() {
    // All points of x + y = 1 are best; then the larger y, then, with y held, the larger z.
    let upper = [1.0, 0.75, 2.0];
    let program = program(&upper, &[(&[1.0, 1.0, 0.0], 1.0), (&[0.0, 1.0, 1.0], 2.0)]);
    let objectives = [vec![1.0, 1.0, 0.0], vec![0.0, 1.0, 0.0], vec![0.0, 0.0, 1.0]];
    near(&program.maximize(&objectives).unwrap(), &[0.25, 0.75, 1.25]);
    near(&program.maximize(&objectives[2..]).unwrap(), &[0.0, 0.0, 2.0]);
    near(&program.maximize(&[]).unwrap(), &[0.0; 3]);
}

#[test]
fn what_cannot_be_is_refused() {
    let bad = |program: &Program, objective: &[f64]| {
        assert_eq!(program.maximize(&[objective.to_vec()]), Err(LinearError::BadNumber));
    };
    let good = program(&[1.0], &[(&[1.0], 1.0)]);
    assert_eq!(good.maximize(&[vec![1.0]]), Ok(vec![1.0]));
    bad(&good, &[f64::NAN]);
    bad(&good, &[NONE]);
    bad(&good, &[1.0, 1.0]);
    bad(&program(&[-1.0], &[]), &[1.0]);
    bad(&program(&[f64::NAN], &[]), &[1.0]);
    // x = 0 is not allowed: -x ≤ -1.
    bad(&program(&[NONE], &[(&[-1.0], -1.0)]), &[1.0]);
    bad(&program(&[1.0], &[(&[f64::NAN], 1.0)]), &[1.0]);
    bad(&program(&[1.0], &[(&[1.0], NONE)]), &[1.0]);
    bad(&program(&[1.0], &[(&[0.0, 1.0], 1.0)]), &[1.0]);
    assert_eq!(program(&[NONE], &[]).maximize(&[vec![1.0]]), Err(LinearError::Unbounded));
    let large = program(&[1.0; 3000], &vec![(&[1.0][..], 1.0); 3000]);
    let refused = large.maximize(&[vec![1.0; 3000]]);
    assert_eq!(refused, Err(LinearError::TooLarge { rows: 3000, variables: 3000 }));
}

/// The best of `objective` by microlp, `None` if it has no end.
fn best(program: &Program, objective: &[f64]) -> Option<f64> {
    let mut problem = Problem::new(OptimizationDirection::Maximize);
    let variables: Vec<Variable> = objective
        .iter()
        .zip(&program.upper)
        .map(|(worth, upper)| problem.add_var(*worth, (0.0, *upper)))
        .collect();
    for row in &program.rows {
        let terms: Vec<(Variable, f64)> =
            row.terms.iter().map(|(place, factor)| (variables[*place], *factor)).collect();
        problem.add_constraint(&terms, ComparisonOp::Le, row.most);
    }
    match problem.solve() {
        Ok(solved) => Some(solved.into_solution().expect("it is not interrupted").objective()),
        Err(microlp::Error::Unbounded) => None,
        Err(error) => panic!("{error}"),
    }
}

/// All rows of a program in full, limits of variables included.
fn full(program: &Program) -> Vec<exact::Row> {
    let size = program.upper.len();
    let unit = |place: usize| (0..size).map(|other| f64::from(other == place)).collect();
    let limits = program.upper.iter().enumerate().filter(|(_, upper)| upper.is_finite());
    let limits = limits.map(|(place, upper)| (unit(place), *upper));
    let rows = program.rows.iter().map(|row| {
        let mut factors = vec![0.0; size];
        row.terms.iter().for_each(|(place, factor)| factors[*place] = *factor);
        (factors, row.most)
    });
    rows.chain(limits).collect()
}

/// Whole numbers, so that corners are met by many rows.
fn random() -> impl Strategy<Value = (Program, Vec<f64>, Vec<f64>)> {
    let whole = |range: std::ops::Range<i32>| range.prop_map(f64::from);
    (1_usize..9, 0_usize..8).prop_flat_map(move |(variables, rows)| {
        let upper = prop_oneof![2 => whole(0..5), 1 => Just(NONE)];
        let factors = proptest::collection::vec(whole(-3..5), variables);
        let row = (factors, prop_oneof![whole(0..7), Just(0.0)]);
        (
            proptest::collection::vec(upper, variables),
            proptest::collection::vec(row, rows),
            proptest::collection::vec(whole(-3..4), variables),
            proptest::collection::vec(whole(-3..4), variables),
        )
            .prop_map(|(upper, rows, first, second)| {
                let rows: Vec<(&[f64], f64)> =
                    rows.iter().map(|(factors, most)| (&factors[..], *most)).collect();
                (program(&upper, &rows), first, second)
            })
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(2000))]
    #[test]
    fn as_good_as_a_general_solver_and_exact_fractions((program, first, second) in random()) {
        let expected = best(&program, &first);
        match (program.maximize(std::slice::from_ref(&first)), expected) {
            (Ok(found), Some(expected)) => {
                prop_assert!(out_of(&program, &found) < 1e-9);
                prop_assert!((dot(&found, &first) - expected).abs() < 1e-7 * expected.abs().max(1.0));
            }
            (found, expected) => {
                prop_assert_eq!((found, expected), (Err(LinearError::Unbounded), None));
            }
        }
        let objectives = [first, second];
        match (program.maximize(&objectives), exact::best(&full(&program), &objectives)) {
            (Ok(found), Some(expected)) => {
                prop_assert!(out_of(&program, &found) < 1e-9);
                for (objective, expected) in objectives.iter().zip(expected) {
                    let found = dot(&found, objective);
                    prop_assert!((found - expected).abs() < 1e-9 * expected.abs().max(1.0));
                }
            }
            (found, expected) => {
                prop_assert_eq!((found, expected), (Err(LinearError::Unbounded), None));
            }
        }
    }
}

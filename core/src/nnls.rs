//! Least squares without negative answers.
//!
//! Minimizes ‖Σ x_j a_j − b‖ over x ≥ 0 by the active-set method of C. L. Lawson and R. J. Hanson, *Solving Least
//! Squares Problems* (1974), chapter 23; the inner problems by modified Gram–Schmidt. Ties go to the first column.

use alloc::vec;
use alloc::vec::Vec;

/// A column is taken for a sum of others when this much of it, or less, is left.
const DEPENDENT: f64 = 1e-10;

/// A gradient is taken for zero at this size, relative to the norms of its column and of b.
const FLAT: f64 = 1e-13;

/// The x ≥ 0 that brings Σ x_j `columns`_j nearest to `target`; `None` where rounding keeps it from settling.
///
/// All columns are as long as `target` and finite. Of columns that are sums of others, some stay at 0.
pub(crate) fn solve(columns: &[Vec<f64>], target: &[f64]) -> Option<Vec<f64>> {
    let mut x = vec![0.0; columns.len()];
    let mut active = vec![false; columns.len()];
    // Columns that could not enter at this x.
    let mut barred = vec![false; columns.len()];
    let rounds = columns.len().saturating_mul(10).saturating_add(10);
    for _ in 0..rounds {
        let Some(entering) = steepest(columns, target, &x, &active, &barred) else {
            return Some(x);
        };
        set(&mut active, entering, true);
        match descend(columns, target, &x, &mut active, entering) {
            Some(next) => {
                x = next;
                barred.fill(false);
            }
            None => {
                set(&mut active, entering, false);
                set(&mut barred, entering, true);
            }
        }
    }
    None
}

/// The column outside the active set along which the misfit falls most, if it falls along any.
fn steepest(
    columns: &[Vec<f64>],
    target: &[f64],
    x: &[f64],
    active: &[bool],
    barred: &[bool],
) -> Option<usize> {
    let misfit = residual(columns, target, x);
    let size = norm(target);
    let mut best: Option<(usize, f64)> = None;
    for (j, ((column, active), barred)) in columns.iter().zip(active).zip(barred).enumerate() {
        let slope = dot(column, &misfit);
        let falls = slope > FLAT * norm(column) * size;
        if !active && !barred && falls && best.is_none_or(|(_, most)| slope > most) {
            best = Some((j, slope));
        }
    }
    best.map(|(j, _)| j)
}

/// From `x`, the solution of least squares on the active set, columns leaving it as their answers reach zero; `None` where the
/// entering column is a sum of active ones or would have to be negative.
fn descend(
    columns: &[Vec<f64>],
    target: &[f64],
    x: &[f64],
    active: &mut [bool],
    entering: usize,
) -> Option<Vec<f64>> {
    let mut x = x.to_vec();
    let mut goal = unbounded(columns, target, active)?;
    if goal.get(entering).is_none_or(|&z| z <= 0.0) {
        return None;
    }
    // Each round takes at least one column out; what is no longer active is not looked at again.
    while let Some((leaving, step)) = first_to_vanish(&x, &goal, active) {
        for (x, z) in x.iter_mut().zip(&goal) {
            *x += step * (z - *x);
        }
        set(active, leaving, false);
        goal = unbounded(columns, target, active)?;
    }
    Some(goal)
}

/// The active column whose answer first reaches zero on the way from `x` to `goal`, and where on the way.
fn first_to_vanish(x: &[f64], goal: &[f64], active: &[bool]) -> Option<(usize, f64)> {
    let mut first: Option<(usize, f64)> = None;
    for (j, ((&x, &z), &active)) in x.iter().zip(goal).zip(active).enumerate() {
        if active && z <= 0.0 {
            let step = if x > 0.0 { x / (x - z) } else { 0.0 };
            if first.is_none_or(|(_, least)| step < least) {
                first = Some((j, step));
            }
        }
    }
    first
}

/// Least squares over the active columns, the others at zero; `None` where they are not independent.
fn unbounded(columns: &[Vec<f64>], target: &[f64], active: &[bool]) -> Option<Vec<f64>> {
    let chosen = || columns.iter().zip(active).filter(|(_, active)| **active).map(|(c, _)| c);
    let mut basis: Vec<Vec<f64>> = Vec::new();
    let mut triangle: Vec<(Vec<f64>, f64)> = Vec::new();
    let mut sides: Vec<f64> = Vec::new();
    let mut rest = target.to_vec();
    for column in chosen() {
        let mut direction = column.clone();
        let above = basis.iter().map(|q| take_out(&mut direction, q)).collect();
        let length = norm(&direction);
        if length <= DEPENDENT * norm(column) {
            return None;
        }
        direction.iter_mut().for_each(|x| *x /= length);
        sides.push(take_out(&mut rest, &direction));
        basis.push(direction);
        triangle.push((above, length));
    }
    let mut answers = Vec::with_capacity(sides.len());
    while let (Some((above, length)), Some(side)) = (triangle.pop(), sides.pop()) {
        let answer = side / length;
        sides.iter_mut().zip(&above).for_each(|(side, r)| *side -= r * answer);
        answers.push(answer);
    }
    active.iter().map(|&active| if active { answers.pop() } else { Some(0.0) }).collect()
}

/// Takes the part along the unit vector `unit` out of `vector`, and says how much it was.
fn take_out(vector: &mut [f64], unit: &[f64]) -> f64 {
    let along = dot(vector, unit);
    vector.iter_mut().zip(unit).for_each(|(x, u)| *x -= along * u);
    along
}

fn residual(columns: &[Vec<f64>], target: &[f64], x: &[f64]) -> Vec<f64> {
    let mut rest = target.to_vec();
    for (column, x) in columns.iter().zip(x) {
        rest.iter_mut().zip(column).for_each(|(r, a)| *r -= a * x);
    }
    rest
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).fold(0.0, |sum, (a, b)| sum + a * b)
}

fn norm(a: &[f64]) -> f64 {
    libm::sqrt(dot(a, a))
}

fn set(flags: &mut [bool], at: usize, to: bool) {
    if let Some(flag) = flags.get_mut(at) {
        *flag = to;
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    // scipy.optimize.nnls, examples of its documentation.
    #[rstest]
    #[case([2.0, 1.0, 1.0], [1.5, 1.0])]
    #[case([-1.0, -1.0, -1.0], [0.0, 0.0])]
    fn known_answers(#[case] target: [f64; 3], #[case] expected: [f64; 2]) {
        let x = solve(&[vec![1.0, 1.0, 0.0], vec![0.0, 0.0, 1.0]], &target).unwrap();
        assert!((x[0] - expected[0]).abs() < 1e-14 && (x[1] - expected[1]).abs() < 1e-14, "{x:?}");
    }

    #[test]
    fn a_column_twice_is_used_once() {
        let column = vec![1.0, 2.0, 3.0];
        let x = solve(&[column.clone(), column.clone()], &[2.0, 4.0, 6.0]).unwrap();
        assert!((x[0] - 2.0).abs() < 1e-14 && x[1] == 0.0);
    }

    #[rstest]
    // x / (x - z): 3/4 of the way for 1.5 to -0.5, 1/3 for 1 to -2.
    #[case(&[1.5, 1.0], &[-0.5, -2.0], &[true, true], Some((1, 1.0 / 3.0)))]
    #[case(&[1.5, 1.0], &[-0.5, -2.0], &[true, false], Some((0, 0.75)))]
    #[case(&[1.5, 1.0], &[-0.5, 2.0], &[true, true], Some((0, 0.75)))]
    // What comes to zero at the end leaves there; what begins at zero leaves at once.
    #[case(&[0.5, 1.0], &[0.0, 2.0], &[true, true], Some((0, 1.0)))]
    #[case(&[2.0, 0.0], &[-1.0, -1.0], &[true, true], Some((1, 0.0)))]
    #[case(&[0.0], &[0.0], &[true], Some((0, 0.0)))]
    // A tie goes to the first.
    #[case(&[1.0, 2.0], &[-1.0, -2.0], &[true, true], Some((0, 0.5)))]
    #[case(&[1.0, 2.0], &[1.0, 2.0], &[true, true], None)]
    fn the_first_to_reach_zero_leaves(
        #[case] x: &[f64],
        #[case] goal: &[f64],
        #[case] active: &[bool],
        #[case] expected: Option<(usize, f64)>,
    ) {
        assert_eq!(first_to_vanish(x, goal, active), expected);
    }

    // Two columns leave one after the other; which is second depends on how far the first step went. By the same method in
    // Python.
    #[test]
    fn columns_leave_in_the_order_of_the_way() {
        let columns = [
            vec![-2.0, 0.0, 1.0, 2.0],
            vec![-2.0, 0.0, 0.0, -1.0],
            vec![0.0, 1.0, -2.0, -1.0],
            vec![-1.0, -2.0, 0.0, -2.0],
        ];
        let mut active = [true; 4];
        let goal = descend(&columns, &[2.0, -3.0, 2.0, 1.0], &[1.0, 1.0, 3.0, 0.0], &mut active, 3);
        let goal = goal.unwrap();
        assert_eq!(active, [true, false, false, true]);
        // Normal equations of the two left: 9x - 2y = 0, -2x + 9y = 2, so that x = 4/77 and y = 18/77.
        assert!((goal[0] - 4.0 / 77.0).abs() < 1e-15 && (goal[3] - 18.0 / 77.0).abs() < 1e-15);
        assert_eq!((goal[1], goal[2]), (0.0, 0.0));
    }

    // The second column is the first but for 1e-11 of it, which counts as nothing; the third, as small, has a direction of its
    // own and is needed.
    #[test]
    fn a_column_that_cannot_enter_does_not_bar_another() {
        let columns = [vec![1.0, 0.0], vec![0.5, 0.5e-11], vec![0.0, 1e-12]];
        let x = solve(&columns, &[1.0, 1.0]).unwrap();
        assert_eq!((x[0], x[1]), (1.0, 0.0));
        assert!((x[2] * 1e-12 - 1.0).abs() < 1e-14, "{x:?}");
    }

    // Next to the first column the second, but for 2^-33 of it the same, cannot enter. The third takes the place of the first,
    // and then it can: minus its part along (1, 1, 0) it is (1, -1, e), and its answer (e - d)/(2 + e²).
    #[test]
    fn a_column_that_could_not_enter_is_tried_again() {
        let power = |exponent: i32| libm::exp2(f64::from(exponent));
        let (e, d, small) = (power(-33), power(-40), power(-37));
        let columns = [vec![4.0, 0.0, 0.0], vec![2.0, 0.0, e], vec![small, small, 0.0]];
        let x = solve(&columns, &[1.0, 1.0 + d, 1.0]).unwrap();
        assert_eq!(x[0], 0.0);
        assert!((x[1] / ((e - d) / (2.0 + e * e)) - 1.0).abs() < 1e-4, "{x:?}");
    }

    proptest! {
        // In powers of two the scales of columns and target change no bit of an answer.
        #[test]
        fn no_scale_counts(
            columns in prop::collection::vec(prop::collection::vec(-1.0..1.0, 4), 1..5),
            target in prop::collection::vec(-1.0..1.0, 4),
        ) {
            const SMALL: f64 = 1.0 / 1_099_511_627_776.0;
            let times = |list: &[f64], by: f64| list.iter().map(|x| x * by).collect::<Vec<f64>>();
            let x = solve(&columns, &target).unwrap();
            let small = times(&target, SMALL);
            prop_assert_eq!(solve(&columns, &small).unwrap(), times(&x, SMALL));
            let small: Vec<Vec<f64>> = columns.iter().map(|c| times(c, SMALL)).collect();
            prop_assert_eq!(solve(&small, &target).unwrap(), times(&x, 1.0 / SMALL));
        }
    }

    proptest! {
        // Karush–Kuhn–Tucker: no slope at a positive answer, none downhill at a zero one.
        #[test]
        fn the_answer_is_the_least(
            columns in prop::collection::vec(prop::collection::vec(-1.0..1.0, 6), 1..9),
            target in prop::collection::vec(-1.0..1.0, 6),
        ) {
            let x = solve(&columns, &target).unwrap();
            let misfit = residual(&columns, &target, &x);
            for (column, &x) in columns.iter().zip(&x) {
                let slope = dot(column, &misfit);
                prop_assert!(x >= 0.0);
                prop_assert!(slope < 1e-8, "{slope}");
                prop_assert!(x == 0.0 || slope.abs() < 1e-8, "{slope}");
            }
        }

        #[test]
        fn known_mixes_come_back(
            columns in prop::collection::vec(prop::collection::vec(0.0_f64..1.0, 8), 4),
            wanted in prop::collection::vec(0.0..1.0, 4),
        ) {
            let nothing = vec![0.0; 8];
            let minus: Vec<f64> = wanted.iter().map(|x: &f64| -x).collect();
            let target = residual(&columns, &nothing, &minus);
            let x = solve(&columns, &target).unwrap();
            let miss = norm(&residual(&columns, &target, &x));
            prop_assert!(miss < 1e-9, "{miss}");
        }
    }
}

//! Linear programs of a bench: a few hundred variables, each between 0 and a limit, where nothing of everything is allowed.
//!
//! Maximize c·x under A·x ≤ b and 0 ≤ x ≤ u, with b ≥ 0: x = 0 is a corner to start from. Several objectives are taken in
//! their order: the second chooses among the best of the first.
//!
//! Method: the simplex method on a dense dictionary x_i = b_i − Σ_j a_ij·x_j. A variable at its limit is replaced by
//! u − x, so that each one outside of the basis is 0. The variable that enters is the one whose objective rises fastest; as
//! long as that gains nothing, the one with the smallest number, which also leaves first in a tie: so no corner
//! comes again. After an objective, what would lower it stays where it is.
//!
//! Source: V. Chvátal, Linear Programming, Freeman 1983, chapters 2, 3 and 8; R. G. Bland, New finite pivoting rules for the
//! simplex method, Mathematics of Operations Research 2 (1977) 103. The order of all operations is fixed.

use alloc::vec;
use alloc::vec::Vec;

/// What counts as zero: numbers are to be about 1.
const ZERO: f64 = 1e-13;

/// The least gain of an objective, per unit of a variable and in a step.
const GAIN: f64 = 1e-11;

/// The smallest divisor.
const PIVOT: f64 = 1e-9;

/// The most numbers in a dictionary: 32 MiB.
const MOST_NUMBERS: usize = 1 << 22;

/// A linear program without its objectives.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Program {
    /// The limit of each variable; infinite if it has none.
    pub upper: Vec<f64>,
    /// The rows.
    pub rows: Vec<AtMost>,
}

/// One row: Σ terms ≤ `most`.
#[derive(Debug, Clone, PartialEq)]
pub struct AtMost {
    /// Variables, each by its place among those of the program and at most once, with their factors.
    pub terms: Vec<(usize, f64)>,
    /// 0 or more.
    pub most: f64,
}

/// Why a linear program has no answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum LinearError {
    /// A factor is not finite, a limit is below 0, or a term is of no variable.
    #[error("a number of it cannot be")]
    BadNumber,
    /// The dictionary takes more than its memory.
    #[error("it has {rows} rows and {variables} variables, more than fit in memory")]
    TooLarge {
        /// Its rows.
        rows: usize,
        /// Its variables.
        variables: usize,
    },
    /// An objective rises without end.
    #[error("its result rises without end")]
    Unbounded,
    /// The best corner was not found in this number of steps.
    #[error("it is not done after {steps} steps")]
    NotDone {
        /// The steps.
        steps: usize,
    },
}

impl Program {
    /// Adds a variable; returns its place.
    pub fn variable(&mut self, upper: f64) -> usize {
        self.upper.push(upper);
        self.upper.len() - 1
    }

    /// The values of the variables that make the first of `objectives` as large as possible, then the second without less
    /// of the first, and so on. An objective has a factor for each variable.
    ///
    /// # Errors
    ///
    /// See [`LinearError`].
    pub fn maximize(&self, objectives: &[Vec<f64>]) -> Result<Vec<f64>, LinearError> {
        let mut dictionary = Dictionary::new(self, objectives)?;
        for objective in 0..objectives.len() {
            dictionary.climb(objective)?;
            dictionary.keep(objective);
        }
        let mut values = vec![0.0; self.upper.len()];
        for row in &dictionary.rows {
            values.get_mut(row.variable).into_iter().for_each(|value| *value = row.constant);
        }
        for ((value, upper), flipped) in values.iter_mut().zip(&self.upper).zip(&dictionary.flipped)
        {
            if *flipped {
                *value = upper - *value;
            }
        }
        if values.iter().all(|value| value.is_finite()) {
            Ok(values)
        } else {
            Err(LinearError::BadNumber)
        }
    }
}

/// A row of the dictionary: variable + Σ factors · columns = constant; and so for an objective, which is no variable.
struct Row {
    variable: usize,
    constant: f64,
    factors: Vec<f64>,
}

impl Row {
    /// The variable of a column, as its limit less the rest of it.
    fn flip(&mut self, column: usize, upper: f64) {
        if let Some(factor) = self.factors.get_mut(column) {
            self.constant -= *factor * upper;
            *factor = -*factor;
        }
    }

    /// Puts `pivot`, a row of the variable in `column`, in place of that variable.
    fn replace(&mut self, column: usize, pivot: &Self) {
        let Some(own) = self.factors.get_mut(column) else { return };
        let factor = core::mem::take(own);
        if factor == 0.0 {
            return;
        }
        for (own, other) in self.factors.iter_mut().zip(&pivot.factors) {
            *own = settled(*own - factor * other);
        }
        self.constant = settled(self.constant - factor * pivot.constant);
    }
}

/// 0 in place of what rounding leaves of it.
fn settled(number: f64) -> f64 {
    if number.abs() < ZERO { 0.0 } else { number }
}

/// Variables outside of the basis, all 0.
struct Column {
    variable: usize,
    /// It stays 0.
    kept: bool,
}

struct Dictionary {
    rows: Vec<Row>,
    objectives: Vec<Row>,
    columns: Vec<Column>,
    /// The limit of each variable, those that fill up the rows included.
    upper: Vec<f64>,
    /// Whether a variable is now its limit less what it was.
    flipped: Vec<bool>,
}

/// What ends a step.
#[derive(Clone, Copy)]
struct Stop {
    step: f64,
    variable: usize,
    pivot: f64,
    /// The row that leaves; `None` if the entering variable comes to its own limit.
    row: Option<usize>,
}

impl Dictionary {
    fn new(program: &Program, objectives: &[Vec<f64>]) -> Result<Self, LinearError> {
        let (rows, variables) = (program.rows.len(), program.upper.len());
        if rows.saturating_add(objectives.len()).saturating_mul(variables) > MOST_NUMBERS {
            return Err(LinearError::TooLarge { rows, variables });
        }
        let row = |variable, constant, terms: &mut dyn Iterator<Item = (usize, f64)>| {
            let mut factors = vec![0.0; variables];
            for (place, factor) in terms {
                let own = factors.get_mut(place).filter(|_| factor.is_finite());
                *own.ok_or(LinearError::BadNumber)? = factor;
            }
            Ok(Row { variable, constant, factors })
        };
        // Not a number is neither.
        if !program.upper.iter().all(|upper| *upper >= 0.0)
            || !program.rows.iter().all(|row| row.most >= 0.0 && row.most.is_finite())
        {
            return Err(LinearError::BadNumber);
        }
        let upper = program.upper.iter().copied();
        Ok(Self {
            rows: (variables..)
                .zip(&program.rows)
                .map(|(variable, one)| row(variable, one.most, &mut one.terms.iter().copied()))
                .collect::<Result<_, _>>()?,
            objectives: objectives
                .iter()
                .map(|one| row(usize::MAX, 0.0, &mut one.iter().map(|c| -c).enumerate()))
                .collect::<Result<_, _>>()?,
            columns: upper
                .clone()
                .enumerate()
                .map(|(variable, upper)| Column { variable, kept: upper == 0.0 })
                .collect(),
            upper: upper.chain(core::iter::repeat_n(f64::INFINITY, rows)).collect(),
            flipped: vec![false; variables.saturating_add(rows)],
        })
    }

    /// Goes from corner to corner until nothing raises the objective.
    fn climb(&mut self, objective: usize) -> Result<(), LinearError> {
        let size = self.rows.len().saturating_add(self.columns.len());
        let steps = size.saturating_mul(50).saturating_add(1000);
        let mut stalled = false;
        for _ in 0..steps {
            let Some((column, gain)) = self.enters(objective, stalled) else { return Ok(()) };
            let stop = self.stop(column, stalled).ok_or(LinearError::Unbounded)?;
            stalled = stop.step * gain <= GAIN;
            match stop.row {
                None => self.flip(column),
                Some(row) => self.exchange(row, column, stop.pivot),
            }
        }
        Err(LinearError::NotDone { steps })
    }

    /// The column that enters, and what a unit of it gains.
    fn enters(&self, objective: usize, stalled: bool) -> Option<(usize, f64)> {
        let factors = &self.objectives.get(objective)?.factors;
        let mut best: Option<(usize, usize, f64)> = None;
        for (place, (column, factor)) in self.columns.iter().zip(factors).enumerate() {
            let gain = -factor;
            if column.kept || gain <= GAIN {
                continue;
            }
            let is_first = |variable| column.variable < variable;
            let is_better = best.is_none_or(|(_, variable, most)| {
                if stalled {
                    is_first(variable)
                } else {
                    gain > most || gain == most && is_first(variable)
                }
            });
            if is_better {
                best = Some((place, column.variable, gain));
            }
        }
        best.map(|(place, _, gain)| (place, gain))
    }

    /// What first stops the variable of `column` from rising; `None` if nothing does.
    fn stop(&self, column: usize, stalled: bool) -> Option<Stop> {
        let limit = |variable: usize| self.upper.get(variable).copied().unwrap_or(f64::INFINITY);
        let variable = self.columns.get(column)?.variable;
        let own = limit(variable);
        let mut first =
            own.is_finite().then_some(Stop { step: own, variable, pivot: 1.0, row: None });
        for (place, row) in self.rows.iter().enumerate() {
            let pivot = row.factors.get(column).copied().unwrap_or_default();
            let room = if pivot > 0.0 { row.constant } else { limit(row.variable) - row.constant };
            let step = room / pivot.abs();
            if pivot.abs() <= PIVOT || !step.is_finite() {
                continue;
            }
            let is_first = first.is_none_or(|first| {
                let in_a_tie = if stalled {
                    row.variable < first.variable
                } else {
                    pivot.abs() > first.pivot.abs()
                };
                step < first.step || step == first.step && in_a_tie
            });
            if is_first {
                first = Some(Stop { step, variable: row.variable, pivot, row: Some(place) });
            }
        }
        first
    }

    /// Takes the variable of a column to its limit.
    fn flip(&mut self, column: usize) {
        let Some(variable) = self.columns.get(column).map(|column| column.variable) else { return };
        let upper = self.upper.get(variable).copied().unwrap_or_default();
        self.flipped.get_mut(variable).into_iter().for_each(|flipped| *flipped = !*flipped);
        for row in self.rows.iter_mut().chain(&mut self.objectives) {
            row.flip(column, upper);
        }
        self.hold();
    }

    /// Takes the variable of a column into the basis, and that of a row out of it.
    fn exchange(&mut self, row: usize, column: usize, pivot: f64) {
        let Some(own) = self.rows.get_mut(row) else { return };
        let Some(entering) = self.columns.get_mut(column) else { return };
        // A variable that leaves at its limit is flipped first: the factors of the others change their signs.
        if pivot < 0.0 {
            let upper = self.upper.get(own.variable).copied().unwrap_or_default();
            self.flipped.get_mut(own.variable).into_iter().for_each(|flipped| *flipped = !*flipped);
            own.constant = upper - own.constant;
        }
        own.factors.iter_mut().for_each(|factor| *factor /= pivot);
        own.factors.get_mut(column).into_iter().for_each(|factor| *factor = 1.0 / pivot.abs());
        own.constant /= pivot.abs();
        core::mem::swap(&mut own.variable, &mut entering.variable);
        let done = Row {
            variable: own.variable,
            constant: own.constant,
            factors: core::mem::take(&mut own.factors),
        };
        // Its own row has no factors until then.
        for other in self.rows.iter_mut().chain(&mut self.objectives) {
            other.replace(column, &done);
        }
        if let Some(own) = self.rows.get_mut(row) {
            own.factors = done.factors;
        }
        self.hold();
    }

    /// Holds the variables between 0 and their limits where rounding takes them over.
    fn hold(&mut self) {
        for row in &mut self.rows {
            let upper = self.upper.get(row.variable).copied().unwrap_or(f64::INFINITY);
            row.constant = row.constant.max(0.0).min(upper);
        }
    }

    /// Keeps at 0 what would lower the objective.
    fn keep(&mut self, objective: usize) {
        let factors = self.objectives.get(objective).into_iter().flat_map(|row| &row.factors);
        for (column, factor) in self.columns.iter_mut().zip(factors) {
            column.kept |= *factor > GAIN;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn program(upper: &[f64], rows: &[(&[f64], f64)]) -> Program {
        let row = |&(factors, most): &(&[f64], f64)| AtMost {
            terms: factors.iter().copied().enumerate().collect(),
            most,
        };
        Program { upper: upper.to_vec(), rows: rows.iter().map(row).collect() }
    }

    #[track_caller]
    fn near(got: &[f64], expected: &[f64]) {
        assert_eq!(got.len(), expected.len());
        for (a, b) in got.iter().zip(expected) {
            assert!((a - b).abs() < 1e-12, "{got:?} for {expected:?}");
        }
    }

    const FREE: [f64; 4] = [f64::INFINITY; 4];

    /// Programs on which the rule of the largest gain goes around in a circle.
    ///
    /// Sources: V. Chvátal, Linear Programming, Freeman 1983, p. 31; E. M. L. Beale, Cycling in the dual simplex algorithm,
    /// Naval Research Logistics Quarterly 2 (1955) 269, as in textbooks (from memory).
    #[test]
    fn programs_that_cycle_by_the_largest_gain_end() {
        let rows: [(&[f64], f64); 3] = [
            (&[0.5, -5.5, -2.5, 9.0], 0.0),
            (&[0.5, -1.5, -0.5, 1.0], 0.0),
            (&[1.0, 0.0, 0.0, 0.0], 1.0),
        ];
        let best = program(&FREE, &rows).maximize(&[[10.0, -57.0, -9.0, -24.0].to_vec()]);
        near(&best.unwrap(), &[1.0, 0.0, 1.0, 0.0]);
        let rows: [(&[f64], f64); 3] = [
            (&[0.25, -8.0, -1.0, 9.0], 0.0),
            (&[0.5, -12.0, -0.5, 3.0], 0.0),
            (&[0.0, 0.0, 1.0, 0.0], 1.0),
        ];
        let best = program(&FREE, &rows).maximize(&[[0.75, -20.0, 0.5, -6.0].to_vec()]);
        near(&best.unwrap(), &[1.0, 0.0, 1.0, 0.0]);
    }

    #[test]
    fn the_first_of_like_variables_rises() {
        let like = program(&[1.0; 3], &[(&[1.0, 1.0, 1.0], 1.5)]);
        near(&like.maximize(&[[1.0; 3].to_vec()]).unwrap(), &[1.0, 0.5, 0.0]);
        // The second objective chooses among the best of the first, and the third has nothing left to choose.
        let objectives = [[1.0; 3].to_vec(), [0.0, 0.0, 1.0].to_vec(), [-1.0, 1.0, -1.0].to_vec()];
        near(&like.maximize(&objectives).unwrap(), &[0.0, 0.5, 1.0]);
    }

    #[test]
    fn a_variable_goes_to_its_limit_and_back() {
        // x rises to its limit of 2, then makes room: y is worth more, and 2 x + y ≤ 4, x + 3 y ≤ 6.
        let two = program(&[2.0, 5.0], &[(&[2.0, 1.0], 4.0), (&[1.0, 3.0], 6.0)]);
        near(&two.maximize(&[[3.0, 2.0].to_vec()]).unwrap(), &[1.2, 1.6]);
        near(&two.maximize(&[[5.0, 1.0].to_vec()]).unwrap(), &[2.0, 0.0]);
        near(&two.maximize(&[[-1.0, 1.0].to_vec()]).unwrap(), &[0.0, 2.0]);
        // A limit of 0 keeps a variable at 0.
        let none = program(&[0.0, 5.0], &[(&[-1.0, 1.0], 1.0)]);
        near(&none.maximize(&[[1.0, 1.0].to_vec()]).unwrap(), &[0.0, 1.0]);
        // A basic variable that reaches its own limit leaves there: y ≤ x and y ≤ 1.
        let own = program(&[3.0, 1.0], &[(&[-1.0, 1.0], 0.0)]);
        near(&own.maximize(&[[-0.25, 1.0].to_vec()]).unwrap(), &[1.0, 1.0]);
    }

    /// The row that the only variable of a program stops at; `None` for its own limit.
    #[track_caller]
    fn stops(upper: f64, rows: &[(f64, f64)], stalled: bool) -> Option<usize> {
        let factors: Vec<[f64; 1]> = rows.iter().map(|(factor, _)| [*factor]).collect();
        let rows = factors.iter().zip(rows).map(|(factors, (_, most))| (&factors[..], *most));
        let program = program(&[upper], &rows.collect::<Vec<_>>());
        let dictionary = Dictionary::new(&program, &[[1.0].to_vec()]).unwrap();
        dictionary.stop(0, stalled).unwrap().row
    }

    // All of these rows stop the variable at 1.
    #[test]
    fn of_rows_that_stop_at_once_the_largest_divisor_leaves_or_the_smallest_number() {
        let rows = [(1.0, 1.0), (2.0, 2.0), (2.0, 2.0)];
        assert_eq!(stops(f64::INFINITY, &rows, false), Some(1));
        assert_eq!(stops(f64::INFINITY, &rows, true), Some(0));
        // The own limit of a variable has the divisor 1, and the number of the variable, which is below that of each row.
        assert_eq!(stops(1.0, &[(1.5, 1.5)], false), Some(0));
        assert_eq!(stops(1.0, &[(1.0, 1.0)], false), None);
        assert_eq!(stops(1.0, &[(1.5, 1.5)], true), None);
    }

    // Of x + 2 y ≤ 2 each corner is the best of that objective; the way there decides.
    #[test]
    fn what_rises_fastest_enters_unless_the_last_step_gained_nothing() {
        let rows: [(&[f64], f64); 1] = [(&[1.0, 2.0, 0.0], 2.0)];
        let end = |limit: f64, gains: &[f64]| {
            let program = program(&[f64::INFINITY, f64::INFINITY, limit], &rows);
            program.maximize(&[gains.to_vec()]).unwrap()
        };
        near(&end(1.0, &[1.0, 2.0, 0.0]), &[0.0, 1.0, 0.0]);
        near(&end(1.0, &[1.0, 2.0, 3.0]), &[0.0, 1.0, 1.0]);
        near(&end(1e-12, &[1.0, 2.0, 3.0]), &[2.0, 0.0, 1e-12]);
        // The gain of a step is its length by the gain of a unit: a small limit of what is worth little is no gain.
        near(&end(1e-6, &[1e-7, 2e-7, 1e-6]), &[2.0, 0.0, 1e-6]);
    }

    #[test]
    fn of_like_gains_the_smallest_number_enters() {
        let of = |gains: [f64; 2]| {
            let mut dictionary =
                Dictionary::new(&program(&[1.0; 2], &[]), &[gains.to_vec()]).unwrap();
            // As it may be after exchanges.
            dictionary.columns.swap(0, 1);
            dictionary.enters(0, false)
        };
        assert_eq!(of([5.0, 3.0]), Some((0, 5.0)));
        assert_eq!(of([5.0, 5.0]), Some((1, 5.0)));
    }

    #[test]
    fn rounding_takes_no_variable_over_its_limits() {
        let rows: [(&[f64], f64); 2] = [(&[1.0, 0.0], 1.0), (&[0.0, 1.0], 1.0)];
        let mut dictionary = Dictionary::new(&program(&[1.0; 2], &rows), &[]).unwrap();
        dictionary.exchange(0, 0, 1.0);
        dictionary.rows[0].constant = 1.0 + 1e-12;
        dictionary.rows[1].constant = -1e-12;
        dictionary.hold();
        assert_eq!((dictionary.rows[0].constant, dictionary.rows[1].constant), (1.0, 0.0));
    }

    #[test]
    fn what_has_no_answer_is_an_error() {
        let objective = || [[1.0, 1.0].to_vec()];
        let of = |upper: &[f64], rows: &[(&[f64], f64)]| {
            program(upper, rows).maximize(&objective()).unwrap_err()
        };
        let fine = [1.0, 1.0];
        assert_eq!(of(&[1.0, f64::INFINITY], &[(&[1.0, -1.0], 1.0)]), LinearError::Unbounded);
        for bad in [f64::NAN, -1.0] {
            assert_eq!(of(&[1.0, bad], &[]), LinearError::BadNumber);
            assert_eq!(of(&fine, &[(&[1.0, 1.0], bad)]), LinearError::BadNumber);
        }
        assert_eq!(of(&fine, &[(&[1.0, 1.0], f64::INFINITY)]), LinearError::BadNumber);
        assert_eq!(of(&fine, &[(&[1.0, f64::INFINITY], 1.0)]), LinearError::BadNumber);
        assert_eq!(of(&fine, &[(&[1.0, 1.0, 1.0], 1.0)]), LinearError::BadNumber);
    }

    #[test]
    fn a_dictionary_takes_at_most_32_mib() {
        let of = |variables: usize, rows: usize| {
            let one = AtMost { terms: Vec::new(), most: 1.0 };
            let program = Program { upper: vec![1.0; variables], rows: vec![one; rows] };
            program.maximize(&[vec![0.0; variables]]).map(|values| values.len())
        };
        // 2¹⁰ rows, the objective among them, of 2¹² variables.
        assert_eq!(of(4096, 1023), Ok(4096));
        assert_eq!(of(4096, 1024), Err(LinearError::TooLarge { rows: 1024, variables: 4096 }));
    }

    #[test]
    fn what_rounding_leaves_is_nothing() {
        assert_eq!((settled(0.9e-13), settled(-0.9e-13)), (0.0, 0.0));
        assert_eq!((settled(1e-13), settled(-2e-13)), (1e-13, -2e-13));
    }
}

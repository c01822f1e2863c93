//! The calculations of the table, each by its place in it.
//!
//! Numbers cross through memory that JavaScript writes and reads itself. A call takes two numbers for each parameter, a tag
//! and a value, then the numbers of its lists and columns in the order of the parameters. Texts cross as one text, each
//! followed by a line feed; their values are their lengths in UTF-16 code units.

use pourwright::parameter::Problem;
use pourwright::table::{Argument, CALCULATIONS, Calculation, Refusal, Value};
use pourwright::{Diagnose, Fault};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refused::Refused;

/// The tags of arguments, as in `bindings/js/src/call.js`. Any other tag means a type that no parameter takes.
mod tag {
    pub(super) const OMITTED: f64 = 0.0;
    pub(super) const NUMBER: f64 = 1.0;
    pub(super) const TEXT: f64 = 2.0;
    pub(super) const LIST: f64 = 3.0;
    /// A number for each row.
    pub(super) const COLUMN: f64 = 4.0;
    /// A value that is not a list, for a parameter that takes one.
    pub(super) const NO_LIST: f64 = 5.0;
}

/// The status of a row: calculated, a number of it is not finite, refused for another reason. The numbers are those of the
/// C header.
const OK: f64 = 0.0;
const NOT_FINITE: f64 = 2.0;
const REFUSED: f64 = 6.0;

/// The memory through which calls take and return their numbers.
#[derive(Debug, Default)]
#[wasm_bindgen]
pub struct Table {
    arguments: Vec<f64>,
    values: Vec<Value>,
    results: Vec<f64>,
    words: Vec<&'static str>,
}

#[wasm_bindgen]
impl Table {
    /// Starts with no memory.
    #[wasm_bindgen(constructor)]
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// The place for the arguments of the next calls: room for `count` numbers.
    pub fn room(&mut self, count: usize) -> *const f64 {
        self.arguments.resize(count, 0.0);
        self.arguments.as_ptr()
    }

    /// Does the calculation at `place`; returns the place of its results, a number for each. A word has the number that
    /// [`word`] takes, a list its length, with the numbers of lists after all results. NaN is an absent result.
    ///
    /// [`word`]: Table::word
    ///
    /// # Errors
    /// All faults of the arguments.
    pub fn evaluate(&mut self, place: usize, texts: &str) -> Result<*const f64, Refused> {
        let calculation = calculation(place)?;
        let (arguments, _) = read(&self.arguments, texts, calculation, 0);
        let evaluated = calculation.evaluate(&arguments, &mut self.values);
        evaluated.map_err(|refusal| Refused::arguments(calculation, &refusal))?;
        self.results.clear();
        for value in &self.values {
            self.results.push(plain(value, &mut self.words));
        }
        for value in &self.values {
            if let Value::Numbers(numbers) = value {
                self.results.extend_from_slice(numbers);
            }
        }
        Ok(self.results.as_ptr())
    }

    /// Does the calculation at `place` for `rows` rows; returns the place of its results, a column of each, and one of
    /// statuses. A refused row is NaN in all columns.
    ///
    /// # Errors
    /// Arguments that are missing or of the wrong type, so that no row can be calculated.
    pub fn columns(
        &mut self,
        place: usize,
        texts: &str,
        rows: usize,
    ) -> Result<*const f64, Refused> {
        let calculation = calculation(place)?;
        let (mut arguments, columns) = read(&self.arguments, texts, calculation, rows);
        let results = calculation.results.len();
        self.results.clear();
        self.results.resize(results.saturating_add(1).saturating_mul(rows), f64::NAN);
        let (results, statuses) = self.results.split_at_mut(results.saturating_mul(rows));
        for (row, status) in statuses.iter_mut().enumerate() {
            for (argument, column) in arguments.iter_mut().zip(&columns) {
                if let Some(number) = column.get(row) {
                    *argument = Argument::Number(*number);
                }
            }
            *status = match calculation.evaluate(&arguments, &mut self.values) {
                Ok(()) => OK,
                Err(refusal) if of_form(&refusal) => {
                    return Err(Refused::arguments(calculation, &refusal));
                }
                Err(refusal) => status_of(&refusal),
            };
            let cells = results.iter_mut().skip(row).step_by(rows);
            for (cell, value) in cells.zip(&self.values) {
                *cell = plain(value, &mut self.words);
            }
        }
        Ok(self.results.as_ptr())
    }

    /// A word among the results.
    #[must_use]
    pub fn word(&self, index: usize) -> String {
        self.words.get(index).copied().unwrap_or_default().into()
    }
}

fn calculation(place: usize) -> Result<&'static Calculation, Refused> {
    CALCULATIONS.get(place).copied().ok_or_else(|| {
        Refused(vec![Fault {
            code: "other-version".into(),
            path: String::new(),
            message: "The WebAssembly module does not have this calculation.".into(),
            help: "Load the module that comes with the package.".into(),
        }])
    })
}

/// The arguments of a calculation and their columns; the column of an argument that is not one is empty.
fn read<'a>(
    numbers: &'a [f64],
    texts: &'a str,
    calculation: &Calculation,
    rows: usize,
) -> (Vec<Argument<'a>>, Vec<&'a [f64]>) {
    let count = calculation.parameters.len();
    let (heads, mut lists) = numbers.split_at(numbers.len().min(count.saturating_mul(2)));
    let mut texts = texts;
    let mut columns = Vec::new();
    let (heads, _) = heads.as_chunks();
    let arguments = heads.iter().map(|&[tag, value]| {
        let mut column: &[f64] = &[];
        let argument = match tag {
            tag::OMITTED => Argument::Omitted,
            tag::NUMBER => Argument::Number(value),
            tag::TEXT => Argument::Text(first_text(&mut texts, value)),
            tag::LIST => Argument::Numbers(first_numbers(&mut lists, value as usize)),
            tag::COLUMN => {
                column = first_numbers(&mut lists, rows);
                Argument::Number(f64::NAN)
            }
            tag::NO_LIST => Argument::Text(""),
            _ => Argument::Numbers(&[]),
        };
        if rows > 0 {
            columns.push(column);
        }
        argument
    });
    (arguments.collect(), columns)
}

/// Takes the first `count` numbers from `rest`.
fn first_numbers<'a>(rest: &mut &'a [f64], count: usize) -> &'a [f64] {
    let (first, after) = rest.split_at(count.min(rest.len()));
    *rest = after;
    first
}

/// Takes a text of `units` UTF-16 code units, and the line feed after it, from `rest`.
fn first_text<'a>(rest: &mut &'a str, units: f64) -> &'a str {
    let mut units = units as usize;
    let end = rest.char_indices().find_map(|(index, letter)| {
        if units == 0 {
            return Some(index);
        }
        units = units.saturating_sub(letter.len_utf16());
        None
    });
    let (first, after) = rest.split_at_checked(end.unwrap_or(rest.len())).unwrap_or_default();
    *rest = after.strip_prefix('\n').unwrap_or(after);
    first
}

/// A result as a number.
fn plain(value: &Value, words: &mut Vec<&'static str>) -> f64 {
    match value {
        Value::Number(number) => *number,
        Value::Word(word) => {
            let known = words.iter().position(|known| known == word);
            known.unwrap_or_else(|| {
                words.push(word);
                words.len().saturating_sub(1)
            }) as f64
        }
        Value::Numbers(numbers) => numbers.len() as f64,
        _ => f64::NAN,
    }
}

/// Whether a refusal applies to all rows: arguments that are missing or of the wrong type.
fn of_form(refusal: &Refusal) -> bool {
    refusal.numbers().iter().any(|number| {
        matches!(
            number.problem,
            Problem::Missing | Problem::WrongType { .. } | Problem::UnknownWord(_)
        )
    })
}

fn status_of(refusal: &Refusal) -> f64 {
    let not_finite = |problem| matches!(problem, Problem::NotFinite(_));
    if refusal.numbers().iter().any(|number| not_finite(number.problem)) {
        NOT_FINITE
    } else {
        REFUSED
    }
}

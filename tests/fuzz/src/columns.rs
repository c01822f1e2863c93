//! A columnar call: any strides, any numbers, columns that are not there; each row as the scalar call, to the bit.

use std::mem::MaybeUninit;
use std::ptr;

use pourwright::table::{self, Argument, Calculation, ParameterField, ValueKind};
use pourwright_ffi::*;
use serde_json::{Map, Value, json};

use super::Seen;
use super::by_name;
use super::call::check_error;
use super::calls::{CALLS, COLUMNS};
use super::chance::{Chance, of_number, to_number};
use super::scattered::{NAN, Scattered, place_of, words_of};

/// A number that no call has written.
const UNTOUCHED: f64 = 7.0;

const MOST_ROWS: usize = 40;

/// Checks `{"calculation": "salt_mass", "rows": 3, "read": 8, "write": -16, "given": {"base_volume_ml": [1, "NaN"],
/// "form": "of-base"}}`: rows take the numbers of a column again from its start once they are used up, and a parameter
/// that is not given has no column.
///
/// # Errors
/// A case that is not of this form.
///
/// # Panics
/// Where a row is not the scalar call, or a refused call has written something.
pub fn check(case: &Value) -> Result<Seen, String> {
    let name = case["calculation"].as_str().ok_or("no \"calculation\"")?;
    let (_, columnar) =
        COLUMNS.iter().find(|(other, _)| *other == name).ok_or("no such calculation")?;
    let (_, scalar) = CALLS.iter().find(|(other, _)| *other == name).ok_or("no such call")?;
    let calculation = table::find(name).ok_or("not in the table")?;
    let rows = case["rows"].as_u64().ok_or("no \"rows\"")? as usize;
    let stride = |key: &str| case[key].as_i64().ok_or(format!("no \"{key}\""));
    let (read, write) = (stride("read")? as isize, stride("write")? as isize);
    if rows > MOST_ROWS || read.unsigned_abs() > 64 || write.unsigned_abs() > 64 {
        return Err("too large".into());
    }

    let mut given = Vec::new();
    for field in calculation.parameters {
        given.push(Given::read(field, &case["given"][field.field], rows, read)?);
    }
    let is_column = |given: &&Given| !matches!(given, Given::Word(_));
    let columns: Vec<pour_column> = given
        .iter()
        .filter(is_column)
        .map(|given| match given {
            Given::Column(column) => column.input(),
            _ => pour_column { start: ptr::null(), stride: 8 },
        })
        .collect();
    let words: Vec<i32> = calculation
        .parameters
        .iter()
        .zip(&given)
        .filter_map(|(field, given)| match given {
            Given::Word(word) => {
                let word = word.as_deref().map_or(Argument::Omitted, Argument::Text);
                Some(by_name::word(field.parameter.name(), word))
            }
            _ => None,
        })
        .collect();
    let mut outputs: Vec<Scattered> =
        calculation.results.iter().map(|_| Scattered::new(&vec![UNTOUCHED; rows], write)).collect();
    let outs: Vec<pour_result_column> = outputs.iter_mut().map(Scattered::output).collect();
    let mut statuses = vec![-1; rows];
    let mut error = MaybeUninit::uninit();
    let status = columnar(rows, &columns, &words, &outs, statuses.as_mut_ptr(), Some(&mut error));

    let refused = rows > 1 && write.unsigned_abs() < 8
        || calculation
            .parameters
            .iter()
            .zip(&given)
            .any(|(field, given)| given.is_refused(field, rows));
    assert_eq!(status != POUR_OK, refused, "{name}: {status}");
    if refused {
        // SAFETY: written on failure.
        check_error(status, &*unsafe { error.assume_init() });
        assert!(statuses.iter().all(|status| *status == -1), "{name}: {statuses:?}");
        let untouched = Scattered::new(&vec![UNTOUCHED; rows], write);
        for output in &outputs {
            assert!((0..rows).all(|row| output.get(row).to_bits() == untouched.get(row).to_bits()));
        }
        return Ok([format!("call-refused-with-status-{status}")].into());
    }
    let mut seen = Seen::new();
    for (row, status) in statuses.iter().enumerate() {
        let wanted = if counts_are_whole(calculation, &given, row) {
            let arguments: Vec<Argument<'_>> = calculation
                .parameters
                .iter()
                .zip(&given)
                .map(|(field, given)| given.argument(field, row))
                .collect();
            scalar(&arguments).ok()
        } else {
            None
        };
        assert!((POUR_OK..=POUR_OVER_BUDGET).contains(status) && *status != POUR_PANIC);
        assert_eq!(*status == POUR_OK, wanted.is_some(), "{name}, row {row}: {status}");
        let outcome = if wanted.is_some() { "answered" } else { "refused" };
        seen.insert(format!("{}-{outcome}", name.replace('_', "-")));
        let bits = |place: usize| match &wanted {
            Some(values) => {
                place_of(words_of(calculation.results[place].kind), &values[place]).to_bits()
            }
            None => NAN,
        };
        for (place, output) in outputs.iter().enumerate() {
            assert_eq!(output.get(row).to_bits(), bits(place), "{name}, row {row}");
        }
    }
    Ok(seen)
}

/// What a case gives for a parameter.
enum Given {
    Column(Scattered),
    NoColumn,
    Word(Option<String>),
}

impl Given {
    fn read(
        field: &ParameterField,
        value: &Value,
        rows: usize,
        stride: isize,
    ) -> Result<Self, String> {
        let wrong = || format!("no \"{}\": {value}", field.field);
        if is_word(field) {
            return match value {
                Value::Null => Ok(Self::Word(None)),
                Value::String(word) => Ok(Self::Word(Some(word.clone()))),
                _ => Err(wrong()),
            };
        }
        let numbers = match value {
            Value::Null => return Ok(Self::NoColumn),
            Value::Array(numbers) if !numbers.is_empty() => numbers,
            _ => return Err(wrong()),
        };
        let numbers: Option<Vec<f64>> = numbers.iter().map(to_number).collect();
        let numbers: Vec<f64> = numbers.ok_or_else(wrong)?.into_iter().cycle().take(rows).collect();
        Ok(Self::Column(Scattered::new(&numbers, stride)))
    }

    /// Whether the whole call is refused for it.
    fn is_refused(&self, field: &ParameterField, rows: usize) -> bool {
        match self {
            Self::Column(_) => false,
            Self::NoColumn => !field.optional && rows > 0,
            Self::Word(None) => !field.optional,
            Self::Word(Some(word)) => !field.parameter.words().contains(&word.as_str()),
        }
    }

    fn number(&self, row: usize) -> f64 {
        match self {
            Self::Column(column) => column.get(row),
            _ => POUR_OMITTED,
        }
    }

    fn argument(&self, field: &ParameterField, row: usize) -> Argument<'_> {
        match self {
            Self::Word(word) => word.as_deref().map_or(Argument::Omitted, Argument::Text),
            _ => match self.number(row) {
                POUR_OMITTED => Argument::Omitted,
                // A column has a count as a number, a call as a count.
                number if field.kind == ValueKind::Count => Argument::Number(number + 0.0),
                number => Argument::Number(number),
            },
        }
    }
}

fn is_word(field: &ParameterField) -> bool {
    matches!(field.kind, ValueKind::Word { .. })
}

/// Whether each count of a row is one that a scalar call can be given.
fn counts_are_whole(calculation: &Calculation, given: &[Given], row: usize) -> bool {
    calculation
        .parameters
        .iter()
        .zip(given)
        .filter(|(field, _)| field.kind == ValueKind::Count)
        .all(|(_, given)| {
            let number = given.number(row);
            let count = number as u32;
            number == POUR_OMITTED || (f64::from(count) == number && count != POUR_OMITTED_COUNT)
        })
}

/// Another call: numbers near those of the example or anywhere, other strides, columns left out.
pub fn change(case: &mut Value, chance: &mut Chance<'_>) {
    let known = case["calculation"].as_str().and_then(table::find);
    let known = known.filter(|found| COLUMNS.iter().any(|(name, _)| *name == found.name));
    let (calculation, mut given) = match known {
        Some(calculation) if chance.happens(9) => {
            (calculation, case["given"].as_object().cloned().unwrap_or_default())
        }
        _ => {
            let (name, _) = chance.one_of(COLUMNS);
            let calculation = table::find(name).unwrap();
            (calculation, example(calculation))
        }
    };
    for _ in 0..=chance.below(3) {
        let field = chance.one_of(calculation.parameters);
        if chance.happens(1) {
            given.remove(field.field);
            continue;
        }
        let value = if is_word(field) {
            let words = field.parameter.words();
            if chance.happens(9) { (*chance.one_of(words)).into() } else { json!("no-such-word") }
        } else {
            let example = example(calculation);
            let near = example.get(field.field).and_then(|given| given[0].as_f64()).unwrap_or(1.0);
            let count = 1 + chance.below(5);
            (0..count).map(|_| of_number(number(field, near, chance))).collect()
        };
        given.insert(field.field.to_owned(), value);
    }
    let mut stride = |key: &str| match &case[key] {
        Value::Number(stride) if chance.happens(7) => json!(stride),
        _ => json!(*chance.one_of(&[8_i64, 8, 16, 11, -8, -13, 24, 64, 0, 3, -5])),
    };
    let (read, write) = (stride("read"), stride("write"));
    let rows = match &case["rows"] {
        Value::Number(rows) if chance.happens(6) => json!(rows),
        _ => json!(chance.below(12)),
    };
    *case = json!({ "calculation": calculation.name, "rows": rows, "read": read, "write": write, "given": given });
}

fn example(calculation: &Calculation) -> Map<String, Value> {
    let example = calculation.example();
    let fields = calculation.parameters.iter().zip(&example.arguments);
    let given = fields.filter_map(|(field, argument)| match argument {
        Argument::Number(number) => Some((field.field.to_owned(), json!([number]))),
        Argument::Text(word) => Some((field.field.to_owned(), json!(word))),
        _ => None,
    });
    given.collect()
}

fn number(field: &ParameterField, near: f64, chance: &mut Chance<'_>) -> f64 {
    let share = chance.below(1001) as f64 / 1000.0;
    let range = field.parameter.range().map_or((0.0, 1e3), |range| (range.least, range.most));
    let found = match chance.below(8) {
        0..=3 => near * (0.5 + share),
        4 | 5 => range.0 + share * (range.1 - range.0),
        6 => *chance.one_of(&[range.0, range.1]),
        _ => chance.quantity(),
    };
    if field.kind == ValueKind::Count && chance.happens(8) { found.round() } else { found }
}

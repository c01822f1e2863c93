//! Arguments and results of the table as C has them.

use std::ffi::{CStr, CString, c_char};
use std::mem::MaybeUninit;
use std::ptr;

use pourwright::parameter::Parameter;
use pourwright::table::{Argument, Value};
use pourwright_ffi::*;

/// The results of a call, or why it is refused: code and path of each fault.
pub(crate) type Outcome = Result<Vec<Value>, Vec<(String, String)>>;

/// A scalar call with the arguments of the table.
pub(crate) type Call = fn(&[Argument<'_>]) -> Outcome;

/// A columnar call: rows, columns of numbers, words, columns of results, statuses, error.
pub(crate) type Columns = fn(
    usize,
    &[pour_column],
    &[i32],
    &[pour_result_column],
    *mut i32,
    Option<&mut MaybeUninit<Box<Error>>>,
) -> i32;

pub(crate) fn at<'a>(arguments: &[Argument<'a>], place: usize) -> Argument<'a> {
    arguments.get(place).copied().unwrap_or(Argument::Omitted)
}

pub(crate) fn number(argument: Argument<'_>) -> f64 {
    match argument {
        Argument::Omitted => POUR_OMITTED,
        Argument::Number(number) => number,
        other => panic!("{other:?} is not a number"),
    }
}

pub(crate) fn count(argument: Argument<'_>) -> u32 {
    match argument {
        Argument::Omitted => POUR_OMITTED_COUNT,
        Argument::Number(number) => {
            let count = number as u32;
            assert_eq!(f64::from(count), number);
            count
        }
        other => panic!("{other:?} is not a count"),
    }
}

/// The place of a word; of a word that is unknown one beyond all.
pub(crate) fn word(parameter: &str, argument: Argument<'_>) -> i32 {
    let parameter = Parameter::ALL.iter().find(|other| other.name() == parameter).unwrap();
    let words = parameter.words();
    match argument {
        Argument::Omitted => 0,
        Argument::Text(word) => {
            words.iter().position(|other| *other == word).unwrap_or(words.len()) as i32 + 1
        }
        other => panic!("{other:?} is not a word"),
    }
}

pub(crate) fn text(argument: Argument<'_>) -> Option<CString> {
    match argument {
        Argument::Omitted => None,
        Argument::Text(text) => Some(CString::new(text).unwrap()),
        other => panic!("{other:?} is not a text"),
    }
}

pub(crate) fn start(text: &Option<CString>) -> *const c_char {
    text.as_ref().map_or(ptr::null(), |text| text.as_ptr())
}

/// The first number of a list, and how many there are.
pub(crate) fn list(argument: Argument<'_>) -> (*const f64, usize) {
    match argument {
        Argument::Omitted => (ptr::null(), 0),
        Argument::Numbers(numbers) => (numbers.as_ptr(), numbers.len()),
        other => panic!("{other:?} is not a list"),
    }
}

/// Does a call, and reads its faults where it fails.
pub(crate) fn done(
    call: impl FnOnce(&mut MaybeUninit<Box<Error>>) -> i32,
) -> Result<(), Vec<(String, String)>> {
    let mut error = MaybeUninit::uninit();
    if call(&mut error) == POUR_OK {
        return Ok(());
    }
    // SAFETY: written on failure.
    let error = unsafe { error.assume_init() };
    // SAFETY: the texts of an error, up to its count.
    let text = |text| unsafe { CStr::from_ptr(text) }.to_str().unwrap().to_owned();
    let faults = (0..pour_error_count(Some(&error))).map(|index| {
        assert!(!text(pour_error_message(Some(&error), index)).is_empty());
        assert!(!text(pour_error_help(Some(&error), index)).is_empty());
        (text(pour_error_code(Some(&error), index)), text(pour_error_path(Some(&error), index)))
    });
    Err(faults.collect())
}

pub(crate) fn absent(number: f64) -> Value {
    if number.is_nan() { Value::Absent } else { Value::Number(number) }
}

pub(crate) fn absent_count(count: u32) -> Value {
    if count == POUR_OMITTED_COUNT { Value::Absent } else { Value::Number(f64::from(count)) }
}

pub(crate) fn of_place(words: &'static [&'static str], place: i32) -> Value {
    match usize::try_from(place).unwrap().checked_sub(1) {
        Some(place) => Value::Word(words[place]),
        None => Value::Absent,
    }
}

//! A call of a calculation of the table: its arguments as C passes them, and why it is refused.

use std::ffi::c_char;

use pourwright::Fault;
use pourwright::parameter::{Parameter, ParameterError, Problem};
use pourwright::table::plain::OMITTED;
use pourwright::table::{self, Argument, Field, Refusal};

use crate::failure::{ArgumentError, BAD, Failure, Refused, keep, status_of};
use crate::memory::{array, text};
use crate::status::*;

/// A number that is omitted: -DBL_MAX, which is in no range.
pub const POUR_OMITTED: f64 = -1.7976931348623157e308;

/// A count that is omitted: UINT32_MAX.
pub const POUR_OMITTED_COUNT: u32 = 4294967295;

const _: () = assert!(POUR_OMITTED == OMITTED && POUR_OMITTED_COUNT == u32::MAX);

/// Reads the arguments of one call and keeps all that is wrong with them. Names are those of the fields of the table.
pub(crate) struct Call {
    calculation: &'static str,
    failures: Vec<Failure>,
}

impl Call {
    #[inline]
    pub(crate) fn new(calculation: &'static str) -> Self {
        Self { calculation, failures: Vec::new() }
    }

    /// A number that must be given.
    #[inline]
    pub(crate) fn number(&mut self, name: &str, parameter: Parameter, number: f64) -> Option<f64> {
        self.required(name, parameter, POUR_REFUSED, Some(table::plain::given(number)))
    }

    /// A count that must be given.
    #[inline]
    pub(crate) fn count(&mut self, name: &str, parameter: Parameter, count: u32) -> Option<u32> {
        self.required(name, parameter, POUR_REFUSED, Some(given_count(count)))
    }

    /// A word that must be given, by its place.
    pub(crate) fn word<T: for<'a> Field<'a>>(
        &mut self,
        name: &str,
        parameter: Parameter,
        place: i32,
    ) -> Option<T> {
        let word = self.optional_word(name, parameter, place);
        self.required(name, parameter, POUR_UNKNOWN_NUMBER, word)
    }

    /// A word by its place, or none where that is 0.
    pub(crate) fn optional_word<T: for<'a> Field<'a>>(
        &mut self,
        name: &str,
        parameter: Parameter,
        place: i32,
    ) -> Option<Option<T>> {
        let word = match place {
            0 => Ok(None),
            _ => word(name, parameter, place).map(Some),
        };
        self.keep(word)
    }

    /// A text that must be given.
    ///
    /// # Safety
    /// As [`text`].
    pub(crate) unsafe fn text<'a>(
        &mut self,
        name: &str,
        parameter: Parameter,
        pointer: *const c_char,
    ) -> Option<&'a str> {
        // SAFETY: as this function asks.
        let found = unsafe { self.optional_text(name, parameter, pointer) };
        self.required(name, parameter, POUR_NULL, found)
    }

    /// A text, or none where the pointer is null.
    ///
    /// # Safety
    /// As [`text`].
    pub(crate) unsafe fn optional_text<'a>(
        &mut self,
        name: &str,
        _: Parameter,
        pointer: *const c_char,
    ) -> Option<Option<&'a str>> {
        if pointer.is_null() {
            return Some(None);
        }
        // SAFETY: as this function asks.
        self.keep(unsafe { text(name, pointer) }.map(Some))
    }

    /// A list of numbers that must be given.
    ///
    /// # Safety
    /// As [`array`].
    pub(crate) unsafe fn list<'a>(
        &mut self,
        name: &str,
        parameter: Parameter,
        pointer: *const f64,
        count: usize,
    ) -> Option<&'a [f64]> {
        // SAFETY: as this function asks.
        let found = unsafe { self.optional_list(name, parameter, pointer, count) };
        self.required(name, parameter, POUR_NULL, found)
    }

    /// A list of numbers, or none where the pointer is null and the count 0.
    ///
    /// # Safety
    /// As [`array`].
    pub(crate) unsafe fn optional_list<'a>(
        &mut self,
        name: &str,
        _: Parameter,
        pointer: *const f64,
        count: usize,
    ) -> Option<Option<&'a [f64]>> {
        if pointer.is_null() && count == 0 {
            return Some(None);
        }
        // SAFETY: as this function asks.
        self.keep(unsafe { array(name, pointer, count) }.map(Some))
    }

    /// A list of rows that must be given.
    ///
    /// # Safety
    /// As [`array`]; `Row` is a struct of `N` numbers.
    pub(crate) unsafe fn rows<'a, Row, const N: usize>(
        &mut self,
        name: &str,
        parameter: Parameter,
        pointer: *const Row,
        count: usize,
    ) -> Option<&'a [[f64; N]]> {
        // SAFETY: as this function asks.
        let found = unsafe { self.optional_rows(name, parameter, pointer, count) };
        self.required(name, parameter, POUR_NULL, found)
    }

    /// A list of rows, or none where the pointer is null and the count 0.
    ///
    /// # Safety
    /// As [`array`]; `Row` is a struct of `N` numbers.
    pub(crate) unsafe fn optional_rows<'a, Row, const N: usize>(
        &mut self,
        name: &str,
        _: Parameter,
        pointer: *const Row,
        count: usize,
    ) -> Option<Option<&'a [[f64; N]]>> {
        const { assert!(size_of::<Row>() == size_of::<[f64; N]>()) };
        if pointer.is_null() && count == 0 {
            return Some(None);
        }
        // SAFETY: as this function asks; a struct of N numbers has the layout of an array of them.
        self.keep(unsafe { array(name, pointer.cast(), count) }.map(Some))
    }

    /// The value, or none and one failure more of the call.
    #[inline]
    pub(crate) fn keep<T>(&mut self, found: Result<T, Failure>) -> Option<T> {
        keep(&mut self.failures, found)
    }

    #[inline]
    fn required<T>(
        &mut self,
        name: &str,
        parameter: Parameter,
        status: i32,
        found: Option<Option<T>>,
    ) -> Option<T> {
        match found? {
            Some(found) => Some(found),
            None => self.missing(name, parameter, status),
        }
    }

    #[cold]
    fn missing<T>(&mut self, name: &str, parameter: Parameter, status: i32) -> Option<T> {
        let error = ParameterError::new(parameter, Problem::Missing);
        self.failures.push(Failure::of(name, &error).with(status));
        None
    }

    /// All that is wrong with the arguments.
    #[cold]
    pub(crate) fn failure(self) -> Failure {
        Failure::all(self.failures)
    }

    /// The same, and all that is wrong with `numbers` by themselves.
    #[cold]
    pub(crate) fn failure_with(mut self, numbers: &[(&str, Parameter, Option<f64>)]) -> Failure {
        for (name, parameter, number) in numbers {
            if let Some(number) = number {
                let checked = parameter.check_si(parameter.unit().to_si(*number));
                self.keep(checked.in_parameter(name));
            }
        }
        self.failure()
    }

    /// Why the calculation is refused: every reason at its parameter.
    #[cold]
    pub(crate) fn refused(&self, refusal: &Refusal) -> Failure {
        let calculation = table::find(self.calculation);
        let faults = refusal.reasons().map(|reason| {
            let path =
                calculation.map(|calculation| calculation.path(&reason, |field| field.field));
            let (code, path) = (reason.code.into(), path.unwrap_or_default());
            Fault { code, path, message: reason.message, help: reason.help }
        });
        Failure::of_faults(faults.collect()).with(status_of(refusal))
    }
}

fn word<T: for<'a> Field<'a>>(name: &str, parameter: Parameter, place: i32) -> Result<T, Failure> {
    let argument = Argument::Number(f64::from(place));
    T::read(argument, parameter).map_err(|_| {
        let (found, words) = (place, parameter.words());
        Failure::at(name, &ArgumentError::UnknownWord { found, parameter, words })
    })
}

/// A count, or none where it is omitted.
#[inline]
pub(crate) fn given_count(count: u32) -> Option<u32> {
    if count == POUR_OMITTED_COUNT { None } else { Some(count) }
}

/// The count that a number of a column is.
#[inline]
pub(crate) fn column_count(parameter: Parameter, number: f64) -> Result<u32, i32> {
    u32::read(Argument::Number(number), parameter)
        .map_err(|_| if number.is_finite() { POUR_REFUSED } else { POUR_NOT_FINITE })
}

/// The same where it may be omitted.
#[inline]
pub(crate) fn given_column_count(parameter: Parameter, number: f64) -> Result<Option<u32>, i32> {
    table::plain::given(number).map(|number| column_count(parameter, number)).transpose()
}

/// The status of a row that is refused.
#[cold]
pub(crate) fn row_status(refusal: Refusal) -> i32 {
    status_of(&refusal)
}

/// The place of a word among the others, counted from 1.
pub(crate) fn place(words: &[&str], word: &str) -> i32 {
    words.iter().position(|other| *other == word).map_or(0, |place| place as i32 + 1)
}

/// A number that there may not be.
#[inline]
pub(crate) fn result_number(number: Option<f64>) -> f64 {
    number.unwrap_or(BAD)
}

/// A count that there may not be.
#[inline]
pub(crate) fn result_count(count: Option<u32>) -> u32 {
    count.unwrap_or(POUR_OMITTED_COUNT)
}

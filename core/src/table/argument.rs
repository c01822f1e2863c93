//! Arguments and results as doors that go by name hand them over.

use alloc::vec::Vec;

use super::ValueKind;
use crate::parameter::{Found, Parameter, ParameterError, Problem};

/// The value that a caller gives for one parameter.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Argument<'a> {
    /// Nothing: the default counts.
    Omitted,
    /// A number in the unit of the parameter; of a word, its place in the list of words, counted from 1.
    Number(f64),
    /// A text or a word.
    Text(&'a str),
    /// A list of numbers; of pairs or triples row by row: x₁, y₁, x₂, y₂, ...
    Numbers(&'a [f64]),
}

/// One result.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Value {
    /// No value: it is not known, or does not apply.
    Absent,
    /// A number in the unit of the result.
    Number(f64),
    /// A word.
    Word(&'static str),
    /// A list of numbers, one for each element of the parameter that it is about.
    Numbers(Vec<f64>),
}

/// The type of a parameter's field: how it is read from an [`Argument`].
pub trait Field<'a>: Sized {
    /// Which kind of argument it takes.
    const KIND: ValueKind;
    /// Whether it may be omitted.
    const OPTIONAL: bool = false;

    /// Reads it.
    ///
    /// # Errors
    /// [`Problem::Missing`], [`Problem::WrongType`], [`Problem::NotWhole`], [`Problem::UnknownWord`].
    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError>;

    /// The argument that reads as this.
    fn write(&self) -> Argument<'a>;
}

fn wrong<T>(
    argument: Argument<'_>,
    parameter: Parameter,
    wanted: &'static str,
) -> Result<T, ParameterError> {
    let problem = match argument {
        Argument::Omitted => Problem::Missing,
        _ => Problem::WrongType { wanted },
    };
    Err(ParameterError::new(parameter, problem))
}

impl<'a> Field<'a> for f64 {
    const KIND: ValueKind = ValueKind::Number;

    #[inline]
    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
        match argument {
            Argument::Number(number) => Ok(number),
            other => wrong(other, parameter, "a number"),
        }
    }

    fn write(&self) -> Argument<'a> {
        Argument::Number(*self)
    }
}

impl<'a> Field<'a> for u32 {
    const KIND: ValueKind = ValueKind::Count;

    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
        let number = f64::read(argument, parameter)?;
        let problem = if !number.is_finite() {
            Problem::NotFinite(number)
        } else if libm::floor(number) != number {
            Problem::NotWhole(number)
        } else if (0.0..=f64::from(Self::MAX)).contains(&number) {
            return Ok(number as Self);
        } else {
            Problem::OutOfRange(number)
        };
        Err(ParameterError::new(parameter, problem))
    }

    fn write(&self) -> Argument<'a> {
        Argument::Number(f64::from(*self))
    }
}

impl<'a> Field<'a> for &'a str {
    const KIND: ValueKind = ValueKind::Text;

    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
        match argument {
            Argument::Text(text) => Ok(text),
            other => wrong(other, parameter, "a text"),
        }
    }

    fn write(&self) -> Argument<'a> {
        Argument::Text(self)
    }
}

impl<'a> Field<'a> for &'a [f64] {
    const KIND: ValueKind = ValueKind::List;

    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
        match argument {
            Argument::Numbers(numbers) => Ok(numbers),
            other => wrong(other, parameter, "a list of numbers"),
        }
    }

    fn write(&self) -> Argument<'a> {
        Argument::Numbers(self)
    }
}

impl<'a, const N: usize> Field<'a> for &'a [[f64; N]] {
    const KIND: ValueKind = ValueKind::Rows(N);

    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
        const { assert!(N > 0) };
        let wanted =
            if N == 2 { "a list of pairs of numbers" } else { "a list of rows of numbers" };
        match argument {
            Argument::Numbers(numbers) => match numbers.as_chunks::<N>() {
                (rows, []) => Ok(rows),
                _ => wrong(argument, parameter, wanted),
            },
            other => wrong(other, parameter, wanted),
        }
    }

    fn write(&self) -> Argument<'a> {
        Argument::Numbers(self.as_flattened())
    }
}

impl<'a, T: Field<'a>> Field<'a> for Option<T> {
    const KIND: ValueKind = T::KIND;
    const OPTIONAL: bool = true;

    #[inline]
    fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
        match argument {
            Argument::Omitted => Ok(None),
            given => T::read(given, parameter).map(Some),
        }
    }

    fn write(&self) -> Argument<'a> {
        self.as_ref().map_or(Argument::Omitted, T::write)
    }
}

/// A word as a field: by its text, or by its place in the list of words.
macro_rules! word_fields {
    ($($Word:ty, $name:literal;)*) => {$(
        impl<'a> Field<'a> for $Word {
            const KIND: ValueKind = ValueKind::Word { type_name: $name };

            fn read(argument: Argument<'a>, parameter: Parameter) -> Result<Self, ParameterError> {
                let place = match argument {
                    Argument::Text(text) => Self::WORDS.iter().position(|word| *word == text),
                    Argument::Number(number) => {
                        let place = u32::read(Argument::Number(number), parameter)?;
                        usize::try_from(place).ok().and_then(|place| place.checked_sub(1))
                    }
                    other => return wrong(other, parameter, "a word"),
                };
                place.and_then(|place| Self::ALL.get(place).copied()).ok_or_else(|| {
                    let problem = match argument {
                        Argument::Text(text) => Problem::UnknownWord(Found::new(text)),
                        Argument::Number(number) => Problem::OutOfRange(number),
                        _ => Problem::Missing,
                    };
                    ParameterError::new(parameter, problem)
                })
            }

            fn write(&self) -> Argument<'a> {
                let place = Self::ALL.iter().position(|word| word == self).unwrap_or_default();
                Argument::Text(Self::WORDS.get(place).copied().unwrap_or_default())
            }
        }
    )*};
}

word_fields! {
    crate::quantity::System, "quantity::System";
    crate::salt::SaltForm, "salt::SaltForm";
    crate::softener::Scale, "softener::Scale";
    crate::mix::Phase, "mix::Phase";
    crate::flake::Alike, "flake::Alike";
    crate::material::Kind, "material::Kind";
    crate::process::sink::Outline, "process::sink::Outline";
    crate::process::shot_cooling::Point, "process::shot_cooling::Point";
    crate::process::shot_cooling::SectionShape, "process::shot_cooling::SectionShape";
}

/// The type of a result's field.
pub trait Output {
    /// Which kind of value it is.
    const KIND: ValueKind;
    /// Whether it may be absent.
    const OPTIONAL: bool = false;
    /// The words that it may be; empty where it is not a word.
    const WORDS: &'static [&'static str] = &[];

    /// It as a value.
    fn value(&self) -> Value;
}

impl Output for f64 {
    const KIND: ValueKind = ValueKind::Number;

    fn value(&self) -> Value {
        Value::Number(*self)
    }
}

impl Output for u32 {
    const KIND: ValueKind = ValueKind::Count;

    fn value(&self) -> Value {
        Value::Number(f64::from(*self))
    }
}

/// A word as a result.
macro_rules! word_outputs {
    ($($Word:ty, $name:literal;)*) => {$(
        impl Output for $Word {
            const KIND: ValueKind = ValueKind::Word { type_name: $name };
            const WORDS: &'static [&'static str] = Self::WORDS;

            fn value(&self) -> Value {
                Value::Word(self.word())
            }
        }
    )*};
}

word_outputs! {
    crate::bench::Tool, "bench::Tool";
    crate::process::sink::Motion, "process::sink::Motion";
}

impl<T: Output> Output for Option<T> {
    const KIND: ValueKind = T::KIND;
    const OPTIONAL: bool = true;
    const WORDS: &'static [&'static str] = T::WORDS;

    fn value(&self) -> Value {
        self.as_ref().map_or(Value::Absent, T::value)
    }
}

/// A fixed number of places, one for each element of a list parameter that has at most `N`.
impl<const N: usize> Output for [u32; N] {
    const KIND: ValueKind = ValueKind::List;

    fn value(&self) -> Value {
        Value::Numbers(self.iter().map(|count| f64::from(*count)).collect())
    }
}

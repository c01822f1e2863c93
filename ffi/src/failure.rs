//! Why a call fails: a status and the faults.

use std::fmt;

use pourwright::parameter::{Parameter, ParameterError, Problem};
use pourwright::{Diagnose, Fault, Faults};
use thiserror::Error as ThisError;

use crate::status::*;

/// The NaN of a row that cannot be, and of a result that there is not: quiet, positive, without a payload.
pub(crate) const BAD: f64 = f64::from_bits(0x7ff8_0000_0000_0000);

/// Errors of the arguments of a call, before any calculation.
#[derive(Debug, Clone, PartialEq, ThisError)]
pub(crate) enum ArgumentError {
    #[error("The pointer is null.")]
    Null,
    #[error("{0} is not a finite number.")]
    NotFinite(f64),
    #[error("The text is not valid UTF-8, from byte {0} on.")]
    NotUtf8(usize),
    #[error("It is larger than {most}, the maximum that is read.")]
    TooLarge { most: usize },
    #[error("The call may take {bytes} bytes of memory, which cannot be allocated.")]
    OutOfMemory { bytes: usize },
    #[error("{found} is not the number of a word of {parameter}.")]
    UnknownWord { found: i32, parameter: Parameter, words: &'static [&'static str] },
    #[error("The address is not a multiple of {0}.")]
    Misaligned(usize),
    #[error("With a stride of {0}, results would overlap.")]
    OutputStride(isize),
    #[error("{} is out of range; it must be from {} to {}.", Short(*.value), Short(*.least), Short(*.most))]
    OutsideConversion { value: f64, least: f64, most: f64 },
    #[error("The struct has {found} bytes where this library's has {own}.")]
    StructSize { found: usize, own: usize },
    #[error("There is no schema \"{name}\".")]
    NoSchema { name: String, known: String },
    #[error("There is no material \"{0}\" in this mix.")]
    NoMaterial(String),
    #[error("Two materials are named \"{0}\".")]
    NameTwice(String),
    #[error("A mix cannot be poured into itself.")]
    SameMix,
    #[error("The two mixes are not made of the same materials.")]
    OtherMaterials,
    #[error("The library has a defect: {0}.")]
    Panic(String),
}

impl ArgumentError {
    fn status(&self) -> i32 {
        match self {
            Self::Null => POUR_NULL,
            Self::NotFinite(_) => POUR_NOT_FINITE,
            Self::NotUtf8(_) => POUR_NOT_UTF8,
            Self::TooLarge { .. } => POUR_TOO_LARGE,
            Self::OutOfMemory { .. } => POUR_OUT_OF_MEMORY,
            Self::UnknownWord { .. } => POUR_UNKNOWN_NUMBER,
            Self::Misaligned(_) => POUR_MISALIGNED,
            Self::OutputStride(_)
            | Self::StructSize { .. }
            | Self::OutsideConversion { .. }
            | Self::NoSchema { .. }
            | Self::NoMaterial(_)
            | Self::NameTwice(_)
            | Self::SameMix
            | Self::OtherMaterials => POUR_REFUSED,
            Self::Panic(_) => POUR_PANIC,
        }
    }
}

impl pourwright::codes::Registered for ArgumentError {}

impl Diagnose for ArgumentError {
    fn code(&self) -> &'static str {
        match self {
            Self::Null => "null-pointer",
            Self::NotFinite(_) => "not-finite",
            Self::NotUtf8(_) => "not-utf8",
            Self::TooLarge { .. } => "too-large",
            Self::OutOfMemory { .. } => "out-of-memory",
            Self::UnknownWord { .. } => "unknown-word",
            Self::Misaligned(_) => "misaligned",
            Self::OutputStride(_) => "output-stride",
            Self::OutsideConversion { .. } => "outside-conversion",
            Self::StructSize { .. } => "struct-size",
            Self::NoSchema { .. } => "no-such-schema",
            Self::NoMaterial(_) => "mix-no-such-material",
            Self::NameTwice(_) => "material-name-twice",
            Self::SameMix => "mix-into-itself",
            Self::OtherMaterials => "mix-other-materials",
            Self::Panic(_) => "panic",
        }
    }

    fn help(&self) -> std::borrow::Cow<'static, str> {
        match self {
            Self::Null => "Pass the address of what the parameter is.".into(),
            Self::NotFinite(_) => "Check the calculation that made it.".into(),
            Self::NotUtf8(_) => "Convert the text to UTF-8 before the call.".into(),
            Self::TooLarge { .. } => "Check the length, or split the work.".into(),
            Self::OutOfMemory { .. } => {
                "Split the document, free what is not needed, or give the process more.".into()
            }
            Self::UnknownWord { words, .. } => known(words).into(),
            Self::Misaligned(_) => {
                "Pass an array of that type; only columns may begin at any address.".into()
            }
            Self::OutputStride(_) => {
                "Pass the distance between two results in bytes: 8 for a plain array, or more."
                    .into()
            }
            Self::OutsideConversion { .. } => {
                "Only a temperature can be negative, and none is below absolute zero.".into()
            }
            Self::StructSize { .. } => {
                "Begin the struct with its ..._INIT, and use the header of the library that is loaded."
                    .into()
            }
            Self::NoSchema { known, .. } => format!("Known: {known}.").into(),
            Self::NoMaterial(_) => {
                "Use a name of the book or of the list that the mix was made with.".into()
            }
            Self::NameTwice(_) => "Give each material a name of its own.".into(),
            Self::SameMix => "Pass two mixes; to have it twice, scale it by 2.".into(),
            Self::OtherMaterials => {
                "Make both mixes from one book, or from lists with the same numbers.".into()
            }
            Self::Panic(_) => {
                "Please report it with the arguments of the call; free the handles that it had."
                    .into()
            }
        }
    }
}

/// A number with an exponent where it would have a row of zeros.
struct Short(f64);

impl fmt::Display for Short {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(number) = *self;
        if number == 0.0 || (1e-5..1e7).contains(&number.abs()) {
            write!(f, "{number}")
        } else {
            write!(f, "{number:e}")
        }
    }
}

/// The words with their numbers.
fn known(words: &[&str]) -> String {
    let mut help = String::from("Known: ");
    for (place, word) in words.iter().enumerate() {
        help.push_str(if place > 0 { ", " } else { "" });
        help.push_str(&format!("{} ({word})", place + 1));
    }
    help + "."
}

/// The status of what the core refuses.
pub(crate) fn status_of(error: &dyn Diagnose) -> i32 {
    let not_finite = |number: &ParameterError| matches!(number.problem, Problem::NotFinite(_));
    if error.numbers().iter().any(not_finite) { POUR_NOT_FINITE } else { POUR_REFUSED }
}

/// Why a call fails.
#[derive(Debug)]
pub(crate) struct Failure {
    status: i32,
    // In a box, so that what every call returns stays small.
    faults: Box<Faults>,
}

impl Failure {
    /// The failure that `error` is in the parameter `name`; an empty name is the call as a whole.
    pub(crate) fn at(name: &str, error: &ArgumentError) -> Self {
        Self { status: error.status(), ..Self::of(name, error) }
    }

    /// The failure that the core's `error` is there.
    pub(crate) fn of(name: &str, error: &dyn Diagnose) -> Self {
        Self { status: status_of(error), ..Faults::from(Fault::at(path(name), error)).into() }
    }

    /// The failure that the core found `fault` in the parameter `name`.
    pub(crate) fn of_fault(name: &str, fault: Fault) -> Self {
        Faults::from(Fault { path: path(name), ..fault }).into()
    }

    /// All of these failures as one, with the status of the first.
    pub(crate) fn all(failures: Vec<Self>) -> Self {
        let status = failures.first().map_or(POUR_PANIC, |failure| failure.status);
        Self::of_faults(
            failures.into_iter().flat_map(|failure| failure.faults.into_vec()).collect(),
        )
        .with(status)
    }

    /// The failure of these faults.
    pub(crate) fn of_faults(faults: Vec<Fault>) -> Self {
        match Faults::from_vec(faults) {
            Some(faults) => faults.into(),
            None => Self::at("", &ArgumentError::Panic("a failure without a fault".into())),
        }
    }

    /// The same with this status.
    pub(crate) fn with(self, status: i32) -> Self {
        Self { status, ..self }
    }

    /// The status and the faults.
    pub(crate) fn into_parts(self) -> (i32, Faults) {
        (self.status, *self.faults)
    }

    pub(crate) fn status(&self) -> i32 {
        self.status
    }
}

impl From<Faults> for Failure {
    fn from(faults: Faults) -> Self {
        Self { status: status_of_faults(&faults), faults: Box::new(faults) }
    }
}

/// The status of refused documents: a plan that its caller or its budget ended has one of its own.
fn status_of_faults(faults: &Faults) -> i32 {
    match faults.iter().next().map(|fault| fault.code.as_ref()) {
        Some("plan-stopped") => POUR_STOPPED,
        Some("budget-pots" | "budget-work") => POUR_OVER_BUDGET,
        Some("budget-memory") => POUR_OUT_OF_MEMORY,
        _ => POUR_REFUSED,
    }
}

/// Takes the values out of several results, or ends the call with the failures of all of them.
macro_rules! together {
    ($($name:ident = $found:expr;)+) => {
        let mut failures = Vec::new();
        let ($($name,)+) = match ($($crate::failure::keep(&mut failures, $found),)+) {
            ($(Some($name),)+) => ($($name,)+),
            _ => return Err($crate::failure::Failure::all(failures)),
        };
    };
}
pub(crate) use together;

/// The value, or none and one failure more.
pub(crate) fn keep<T>(failures: &mut Vec<Failure>, found: Result<T, Failure>) -> Option<T> {
    found.map_err(|failure| failures.push(failure)).ok()
}

fn path(name: &str) -> String {
    if name.is_empty() { String::new() } else { format!("/{name}") }
}

/// A refusal of the core as the failure of a call.
pub(crate) trait Refused<T> {
    /// The value, or the fault in the parameter `name`.
    fn in_parameter(self, name: &str) -> Result<T, Failure>;
}

impl<T, E: Diagnose> Refused<T> for Result<T, E> {
    fn in_parameter(self, name: &str) -> Result<T, Failure> {
        self.map_err(|error| Failure::of(name, &error))
    }
}

//! Errors as a host reads them: a list of faults.

use std::ffi::{CString, c_char};
use std::{fmt, ptr};

use pourwright::density::DensityError;
use pourwright::request::Answer;
use pourwright::{Diagnose, Fault, Faults};
use thiserror::Error as ThisError;

use crate::guard::guard_or;
use crate::range::{Range, Shown};
use crate::status::*;

/// What is wrong with a call: one fault or more, the first found first.
///
/// A failed call makes it, the host reads it by `pour_error_...` and frees it by `pour_error_free`. Its texts live
/// as long as it does. Several threads may read it at once.
pub struct Error {
    status: i32,
    faults: Vec<FaultTexts>,
    text: CString,
    json: CString,
}

struct FaultTexts {
    code: CString,
    path: CString,
    message: CString,
    help: CString,
}

/// Text for C, where a NUL ends it: one inside becomes U+FFFD.
pub(crate) fn c_text(text: &str) -> CString {
    CString::new(text.replace('\0', "\u{fffd}")).unwrap_or_default()
}

/// What is wrong with the arguments of a call, before any calculation.
#[derive(Debug, Clone, PartialEq, ThisError)]
pub(crate) enum ArgumentError {
    #[error("The pointer is null.")]
    Null,
    #[error("{0} is not a finite number.")]
    NotFinite(f64),
    #[error("The text is not valid UTF-8, from byte {0} on.")]
    NotUtf8(usize),
    #[error("It is larger than {most}, the most that is read.")]
    TooLarge { most: usize },
    #[error("{found} stands for none of them.")]
    UnknownNumber { found: i32, known: &'static str },
    #[error("The address is no multiple of {0}.")]
    Misaligned(usize),
    #[error("With a stride of {0}, results would overlap.")]
    OutputStride(isize),
    #[error(
        "{} lies below {least}, the least, or what it gives is beyond what a double holds.",
        Shown(*.value)
    )]
    OutsideConversion { value: f64, least: f64 },
    #[error("{}", fmt::from_fn(|f| .range.outside(*.number, f)))]
    OutOfRange { number: f64, range: Range },
    #[error(transparent)]
    Density(DensityError),
    #[error("It is 0, and {by} needs it.")]
    Needed { by: &'static str },
    #[error("The mix would weigh {} g.", Shown(*.grams))]
    TooMuch { grams: f64 },
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
            Self::UnknownNumber { .. } => POUR_UNKNOWN_NUMBER,
            Self::Misaligned(_) => POUR_MISALIGNED,
            Self::OutputStride(_)
            | Self::OutsideConversion { .. }
            | Self::OutOfRange { .. }
            | Self::Density(_)
            | Self::Needed { .. }
            | Self::TooMuch { .. }
            | Self::NoMaterial(_)
            | Self::NameTwice(_)
            | Self::SameMix
            | Self::OtherMaterials => POUR_REFUSED,
            Self::Panic(_) => POUR_PANIC,
        }
    }
}

impl Diagnose for ArgumentError {
    fn code(&self) -> &'static str {
        match self {
            Self::Null => "null-pointer",
            Self::NotFinite(_) => "not-finite",
            Self::NotUtf8(_) => "not-utf8",
            Self::TooLarge { .. } => "too-large",
            Self::UnknownNumber { .. } => "unknown-number",
            Self::Misaligned(_) => "misaligned",
            Self::OutputStride(_) => "output-stride",
            Self::OutsideConversion { .. } => "outside-conversion",
            Self::OutOfRange { .. } => "out-of-range",
            Self::Density(error) => error.code(),
            Self::Needed { .. } => "missing-field",
            Self::TooMuch { .. } => "mix-too-much",
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
            Self::NotFinite(_) => {
                "Pass a number; where a struct says so, 0 stands for what is not known.".into()
            }
            Self::NotUtf8(_) => "Convert the text to UTF-8 before the call.".into(),
            Self::TooLarge { .. } => "Check the length, or split the work.".into(),
            Self::UnknownNumber { known, .. } => format!("Use one of {known}.").into(),
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
            Self::OutOfRange { range, .. } => range.help().into(),
            Self::Density(error) => error.help(),
            Self::Needed { by } => format!("Give it, or leave {by} out as well.").into(),
            Self::TooMuch { .. } => {
                "No mix of more than 1e18 g is believed: check the unit.".into()
            }
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

/// Why a call fails.
#[derive(Debug)]
pub(crate) struct Failure {
    status: i32,
    // In a box, so that what every call returns stays small.
    faults: Box<Faults>,
}

impl Failure {
    /// The failure that `error` is in the parameter `name`; an empty name stands for the call as a whole.
    pub(crate) fn at(name: &str, error: &ArgumentError) -> Self {
        Self { status: error.status(), ..Self::of(name, error) }
    }

    /// The failure that the core's `error` is there.
    pub(crate) fn of(name: &str, error: &dyn Diagnose) -> Self {
        Faults::from(Fault::at(path(name), error)).into()
    }

    /// All of these failures, which have one status, as one; `None` where there are none.
    pub(crate) fn all<'a>(errors: impl Iterator<Item = (&'a str, ArgumentError)>) -> Option<Self> {
        let mut status = POUR_REFUSED;
        let faults = errors.map(|(name, error)| {
            status = error.status();
            Fault::at(path(name), &error)
        });
        let faults = Faults::from_vec(faults.collect())?;
        Some(Self { status, faults: Box::new(faults) })
    }

    pub(crate) fn status(&self) -> i32 {
        self.status
    }
}

impl From<Faults> for Failure {
    fn from(faults: Faults) -> Self {
        Self { status: POUR_REFUSED, faults: Box::new(faults) }
    }
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

impl Error {
    pub(crate) fn new(failure: Failure) -> Self {
        let Failure { status, faults } = failure;
        let text = c_text(&faults.to_string());
        let texts = |fault: &Fault| FaultTexts {
            code: c_text(&fault.code),
            path: c_text(&fault.path),
            message: c_text(&fault.message),
            help: c_text(&fault.help),
        };
        let list = faults.iter().map(texts).collect();
        let json = serde_json::to_string(&Answer::Faults(faults.into_vec())).unwrap_or_default();
        Self { status, faults: list, text, json: c_text(&json) }
    }

    fn of_fault(
        error: Option<&Self>,
        index: usize,
        pick: impl Fn(&FaultTexts) -> &CString,
    ) -> *const c_char {
        guard_or(ptr::null(), || {
            let fault = error.and_then(|error| error.faults.get(index));
            fault.map_or(ptr::null(), |fault| pick(fault).as_ptr())
        })
    }
}

/// The status that the call returned; `POUR_OK` for null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_status(error: Option<&Error>) -> i32 {
    error.map_or(POUR_OK, |error| error.status)
}

/// How many faults there are: 1 or more, 0 for null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_count(error: Option<&Error>) -> usize {
    error.map_or(0, |error| error.faults.len())
}

/// The stable code of a fault, such as `"salt-out-of-reach"`; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_code(error: Option<&Error>, index: usize) -> *const c_char {
    Error::of_fault(error, index, |fault| &fault.code)
}

/// Where a fault is, as a JSON Pointer (RFC 6901): into the document, or `/parameter` of the call. Empty for the
/// whole input; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_path(error: Option<&Error>, index: usize) -> *const c_char {
    Error::of_fault(error, index, |fault| &fault.path)
}

/// What was found, as a sentence; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_message(error: Option<&Error>, index: usize) -> *const c_char {
    Error::of_fault(error, index, |fault| &fault.message)
}

/// What would do, as a sentence; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_help(error: Option<&Error>, index: usize) -> *const c_char {
    Error::of_fault(error, index, |fault| &fault.help)
}

/// All faults as text to show, one a line; null for null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_text(error: Option<&Error>) -> *const c_char {
    error.map_or(ptr::null(), |error| error.text.as_ptr())
}

/// All faults as JSON, `{"faults":[{"code":...,"path":...,"message":...,"help":...}]}`; null for null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_json(error: Option<&Error>) -> *const c_char {
    error.map_or(ptr::null(), |error| error.json.as_ptr())
}

/// Frees an error with all its texts. Null is let pass.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_free(error: Option<Box<Error>>) {
    guard_or((), || drop(error));
}

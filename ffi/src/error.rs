//! Errors as a host reads them: a list of faults.

use std::ffi::CString;

use pourwright::Fault;
use pourwright::request::answer_of_result;

use crate::failure::Failure;

/// The errors of a call: one fault or more, the first found first.
///
/// A failed call makes it, the host reads it by `pour_error_...` and frees it by `pour_error_free`. Its texts live
/// as long as it does. Several threads may read it at once.
pub struct Error {
    pub(crate) status: i32,
    pub(crate) faults: Vec<FaultTexts>,
    pub(crate) text: CString,
    pub(crate) json: CString,
}

pub(crate) struct FaultTexts {
    pub(crate) code: CString,
    pub(crate) path: CString,
    pub(crate) message: CString,
    pub(crate) help: CString,
}

/// Text for C, where a NUL ends it: one inside becomes U+FFFD.
pub(crate) fn c_text(text: &str) -> CString {
    CString::new(text.replace('\0', "\u{fffd}")).unwrap_or_default()
}

impl Error {
    pub(crate) fn new(failure: Failure) -> Self {
        let (status, faults) = failure.into_parts();
        let text = c_text(&faults.to_string());
        let texts = |fault: &Fault| FaultTexts {
            code: c_text(&fault.code),
            path: c_text(&fault.path),
            message: c_text(&fault.message),
            help: c_text(&fault.help),
        };
        let list = faults.iter().map(texts).collect();
        let json = c_text(&answer_of_result(Err(faults)));
        Self { status, faults: list, text, json }
    }
}

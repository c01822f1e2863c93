//! How a host reads an error.

use std::ffi::{CString, c_char};
use std::ptr;

use crate::error::{Error, FaultTexts};
use crate::guard::guard_or;
use crate::status::POUR_OK;

fn of_fault(
    error: Option<&Error>,
    index: usize,
    pick: impl Fn(&FaultTexts) -> &CString,
) -> *const c_char {
    guard_or(ptr::null(), || {
        let fault = error.and_then(|error| error.faults.get(index));
        fault.map_or(ptr::null(), |fault| pick(fault).as_ptr())
    })
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
    of_fault(error, index, |fault| &fault.code)
}

/// Where a fault is, as a JSON Pointer (RFC 6901): into the document, or `/parameter` of the call. Empty for the
/// whole input; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_path(error: Option<&Error>, index: usize) -> *const c_char {
    of_fault(error, index, |fault| &fault.path)
}

/// The finding, as a sentence; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_message(error: Option<&Error>, index: usize) -> *const c_char {
    of_fault(error, index, |fault| &fault.message)
}

/// The fix, as a sentence; null for an index beyond the last.
#[unsafe(no_mangle)]
pub extern "C" fn pour_error_help(error: Option<&Error>, index: usize) -> *const c_char {
    of_fault(error, index, |fault| &fault.help)
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

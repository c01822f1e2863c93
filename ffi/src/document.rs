//! Documents: JSON in, JSON or text out.

use std::ffi::{CString, c_char};
use std::mem::MaybeUninit;

use pourwright::json::text;
use pourwright::request::{self, Answer, AnsweredLines, Open, answer_lines};

use crate::error::{Error, c_text};
use crate::failure::{ArgumentError, Failure};
use crate::guard::{guard, guard_or};
use crate::memory::{document, given, lines_of};

/// Maximum memory, in bytes, that a call takes for each byte of the document that it is given.
pub const POUR_MEMORY_PER_BYTE: usize = 256;
/// Maximum memory, in bytes, that a call takes for each pot of a plan, made or given.
pub const POUR_MEMORY_PER_POT: usize = 524_288;
/// Maximum memory, in bytes, that a call takes in addition, whatever it is given.
pub const POUR_MEMORY_PER_CALL: usize = 8_388_608;

/// Gives `text` to the host, with its length where it is asked for.
pub(crate) fn hand_out(
    text: &str,
    out: &mut MaybeUninit<*mut c_char>,
    out_len: Option<&mut MaybeUninit<usize>>,
) {
    let text = c_text(text);
    if let Some(out_len) = out_len {
        out_len.write(text.as_bytes().len());
    }
    out.write(text.into_raw());
}

/// `value` as JSON.
pub(crate) fn to_json<T: serde::Serialize>(value: &T) -> Result<String, Failure> {
    serde_json::to_string(value)
        .map_err(|error| Failure::at("", &ArgumentError::Panic(error.to_string())))
}

/// Answers the request in `json` with what is `open`.
pub(crate) fn answer_request(
    json: &str,
    open: Open<'_>,
    out: &mut MaybeUninit<*mut c_char>,
    out_len: Option<&mut MaybeUninit<usize>>,
) -> Result<(), Failure> {
    let response = request::read(&text::parse(json)?)?.answer_of(open)?;
    hand_out(&to_json(&Answer::Result(response))?, out, out_len);
    Ok(())
}

/// Answers a calculation request: `{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}`.
///
/// `out` receives the answer, `{"result":{...}}`: UTF-8, ended by a NUL that `out_len` (which may be null) does not
/// count; the host frees it by `pour_string_free`. `POUR_REFUSED` for a request with faults, all of which are in the
/// error; `pour_error_json` has them as the answer of the other doors: `{"faults":[...]}`.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_request(
    json: *const c_char,
    len: usize,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len) = (out, out_len);
    guard(error, &mut || {
        let out = given("out", out.as_deref_mut())?;
        // SAFETY: the header asks for `len` bytes, or null.
        let json = unsafe { document("json", json, len)? };
        answer_request(json, Open::default(), out, out_len.as_deref_mut())
    })
}

/// Answers many requests, one a line: JSON Lines.
///
/// `out` receives one answer a line, in the order of the requests: UTF-8, ended by a NUL that `out_len` (which may be
/// null) does not count; the host frees it by `pour_string_free`. A line that is not a request has its faults in its
/// place, `{"faults":[...]}`, and the call is `POUR_OK`; `refused` (which may be null) receives the number of such lines.
/// A newline at the end of the text begins no line. The text may have any length, a line that of a document.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_lines(
    lines: *const c_char,
    len: usize,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    refused: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len, mut refused) = (out, out_len, refused);
    guard(error, &mut || {
        let out = given("out", out.as_deref_mut())?;
        // SAFETY: the header asks for `len` bytes, or null.
        let lines = unsafe { lines_of("lines", lines, len, 0)? };
        let answered = answer_lines(lines, Open::default());
        hand_out_lines(&answered, out, out_len.as_deref_mut(), refused.as_deref_mut());
        Ok(())
    })
}

/// Gives the answers of many requests to the host.
pub(crate) fn hand_out_lines(
    answered: &AnsweredLines,
    out: &mut MaybeUninit<*mut c_char>,
    out_len: Option<&mut MaybeUninit<usize>>,
    refused: Option<&mut MaybeUninit<usize>>,
) {
    hand_out(&answered.text, out, out_len);
    if let Some(refused) = refused {
        refused.write(answered.refused);
    }
}

/// Frees a text that a call of this library gave out. Null is let pass.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_string_free(text: *mut c_char) {
    if !text.is_null() {
        // SAFETY: the header asks for a text that `hand_out` made, and for once only.
        guard_or((), || drop(unsafe { CString::from_raw(text) }));
    }
}

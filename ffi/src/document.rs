//! Documents: JSON in, JSON or text out.

use std::ffi::{CString, c_char};
use std::mem::MaybeUninit;

use pourwright::request::{AnsweredLines, Open, answer_lines, answer_of_result, result_text};

use crate::error::{Error, c_text};
use crate::failure::{ArgumentError, Failure, together};
use crate::guard::{guard, guard_or, guard_text};
use crate::memory::{UP_TO_NUL, document, given, lines_of, text as ended_text, try_memory};
use crate::schema;

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

/// The text, where JSON could be written.
pub(crate) fn written(json: serde_json::Result<String>) -> Result<String, Failure> {
    json.map_err(|error| Failure::at("", &ArgumentError::Panic(error.to_string())))
}

/// The answer to the request in `json`, of what is `open`.
pub(crate) fn answer_to(json: &str, open: Open<'_>) -> Result<String, Failure> {
    Ok(answer_of_result(Ok(result_text(json, open)?)))
}

/// Answers a request, whatever comes: `json` ends with a NUL, and the answer is one JSON text, `{"result":{...}}` or
/// `{"faults":[{"code":...,"path":...,"message":...,"help":...}]}`.
///
/// The shortest way in, for hosts that have JSON at hand. Null for `json`, a text that is not UTF-8, too little memory: all
/// that is a fault of the answer. The host frees the answer by `pour_string_free`.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_answer(json: *const c_char) -> *mut c_char {
    guard_text(|| {
        // SAFETY: the header asks for a text that ends, or null.
        let json = unsafe { document("json", json, UP_TO_NUL)? };
        Ok(c_text(&answer_to(json, Open::default())?))
    })
}

/// Answers a calculation request: `{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}`.
///
/// `out` receives the answer, `{"result":{...}}`: UTF-8, ended by a NUL that `out_len` (which may be null) does not
/// count; the host frees it by `pour_string_free`. `POUR_REFUSED` for a request with faults, all of which are in the
/// error; `pour_error_json` has them as `pour_answer` gives them: `{"faults":[...]}`.
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
        // SAFETY: the header asks for `len` bytes, or null.
        let json = unsafe { document("json", json, len) };
        together! {
            out = given("out", out.as_deref_mut());
            json = json;
        }
        hand_out(&answer_to(json, Open::default())?, out, out_len.as_deref_mut());
        Ok(())
    })
}

/// The JSON Schema (draft 2020-12) named `name`, as JSON: `"request"`, `"answer"`, `"book"`, `"orders"`, `"actuals"`,
/// `"plan"`. It has every field with its meaning, its range and its default.
///
/// Freed by `pour_string_free`; `out_len` may be null. `POUR_REFUSED` for another name; the help of the fault lists them.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_schema(
    name: *const c_char,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len) = (out, out_len);
    guard(error, &mut || {
        // SAFETY: the header asks for a text that ends, or null.
        let name = unsafe { ended_text("name", name) };
        together! {
            out = given("out", out.as_deref_mut());
            name = name;
        }
        try_memory("name", 0, 0)?;
        hand_out(&schema::text(name)?, out, out_len.as_deref_mut());
        Ok(())
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
        // SAFETY: the header asks for `len` bytes, or null.
        let lines = unsafe { lines_of("lines", lines, len, 0) };
        together! {
            out = given("out", out.as_deref_mut());
            lines = lines;
        }
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

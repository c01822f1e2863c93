//! The border: no panic crosses it, the host's floating-point state is as it was, an error is handed over.

use std::any::Any;
use std::ffi::{CString, c_char};
use std::mem::MaybeUninit;
use std::panic::{AssertUnwindSafe, catch_unwind, set_hook};
use std::ptr;
use std::sync::Once;

use crate::error::Error;
use crate::failure::{ArgumentError, Failure};
use crate::float::HostState;
use crate::status::POUR_OK;

/// Does `body` and returns its status; where it fails and `error` is given, writes the error there.
///
/// Every export that calculates has its body in here. It is a call of its own, and so is `body`: no operation on
/// floating-point numbers can be moved by the compiler across the saving of the host's state.
#[inline(never)]
pub(crate) fn guard(
    error: Option<&mut MaybeUninit<Box<Error>>>,
    body: &mut dyn FnMut() -> Result<(), Failure>,
) -> i32 {
    be_quiet();
    let host = HostState::set_aside();
    let status = match caught(body).and_then(|outcome| outcome) {
        Ok(()) => POUR_OK,
        Err(failure) => hand_over(failure, error),
    };
    host.put_back();
    status
}

/// Does `body`; a panic, of which there is none, gives `otherwise`.
pub(crate) fn guard_or<T>(otherwise: T, body: impl FnOnce() -> T) -> T {
    be_quiet();
    let host = HostState::set_aside();
    let found = caught(body).unwrap_or(otherwise);
    host.put_back();
    found
}

/// Does `body` and hands its text out, or its faults as the JSON of an answer. Null if not even that can be written.
pub(crate) fn guard_text(body: impl FnOnce() -> Result<CString, Failure>) -> *mut c_char {
    guard_or(ptr::null_mut(), || {
        let answer = caught(body).and_then(|outcome| outcome);
        answer.unwrap_or_else(|failure| Error::new(failure).json).into_raw()
    })
}

fn caught<T>(body: impl FnOnce() -> T) -> Result<T, Failure> {
    // A panic leaves a handle behind, and the contract forbids the host to use it any more.
    catch_unwind(AssertUnwindSafe(body)).map_err(|payload| {
        Failure::at("", &ArgumentError::Panic(words_of(payload.as_ref()).to_owned()))
    })
}

fn words_of(payload: &(dyn Any + Send)) -> &str {
    let literal = payload.downcast_ref::<&str>().copied();
    literal.or_else(|| payload.downcast_ref::<String>().map(String::as_str)).unwrap_or("no words")
}

#[cold]
fn hand_over(failure: Failure, error: Option<&mut MaybeUninit<Box<Error>>>) -> i32 {
    let status = failure.status();
    if let Some(slot) = error
        && let Ok(made) = caught(|| Box::new(Error::new(failure)))
    {
        slot.write(made);
    }
    status
}

/// A caught panic would still be printed on the host's standard error, by the hook of this library's own runtime.
/// Debug builds keep that, for those who work on the library.
fn be_quiet() {
    static QUIET: Once = Once::new();
    if !cfg!(debug_assertions) {
        QUIET.call_once(|| set_hook(Box::new(|_| {})));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_panic_is_a_fault_of_the_answer() {
        let answer = guard_text(|| panic!("on purpose"));
        // SAFETY: made by `guard_text`, and freed once.
        let answer = unsafe { CString::from_raw(answer) }.into_string().unwrap();
        let fault = r#"{"faults":[{"code":"panic","path":"","message":"The library has a defect: on purpose.","#;
        assert!(answer.starts_with(fault), "{answer}");
    }
}

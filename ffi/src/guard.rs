//! The border: no panic crosses it, the host's floating-point state is as it was, an error is handed over.

use std::any::Any;
use std::cell::Cell;
use std::ffi::{CString, c_char};
use std::mem::MaybeUninit;
use std::panic::{AssertUnwindSafe, catch_unwind, set_hook, take_hook};
use std::ptr;
use std::sync::Once;
use std::thread;

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

thread_local! {
    /// How deep in calls of this library the thread is.
    static DEPTH: Cell<u32> = const { Cell::new(0) };
}

fn caught<T>(body: impl FnOnce() -> T) -> Result<T, Failure> {
    DEPTH.set(DEPTH.get().saturating_add(1));
    // A panic leaves a handle behind, and the contract forbids the host to use it any more.
    let found = catch_unwind(AssertUnwindSafe(body));
    DEPTH.set(DEPTH.get().saturating_sub(1));
    found.map_err(|payload| {
        Failure::at("", &ArgumentError::Panic(words_of(payload.as_ref()).to_owned()))
    })
}

/// Does `body`, which is the host's.
pub(crate) fn outside<T>(body: impl FnOnce() -> T) -> T {
    let depth = DEPTH.replace(0);
    let found = body();
    DEPTH.set(depth);
    found
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

/// A caught panic would still be printed on the host's standard error, by the hook of the Rust runtime. Another Rust library
/// may share that runtime: the hook that is there gets all that panics outside the calls of this library. Debug builds print,
/// for those who work on the library.
#[inline]
fn be_quiet() {
    static QUIET: Once = Once::new();
    if !cfg!(debug_assertions) && !QUIET.is_completed() {
        install(&QUIET);
    }
}

#[cold]
fn install(once: &Once) {
    // A thread that is panicking must not change the hook; the next call does.
    if !thread::panicking() {
        once.call_once(quiet);
    }
}

fn quiet() {
    let others = take_hook();
    set_hook(Box::new(move |panic| {
        if DEPTH.try_with(Cell::get).unwrap_or(0) == 0 {
            others(panic);
        }
    }));
}

#[cfg(test)]
mod tests {
    use super::*;

    /// The hook of others hears of panics outside of calls, and in the host's own part of one.
    #[test]
    fn panics_of_others_are_not_muted() {
        thread_local! { static HEARD: Cell<u32> = const { Cell::new(0) }; }
        let before = take_hook();
        set_hook(Box::new(|_| HEARD.set(HEARD.get() + 1)));
        quiet();
        let panics = || drop(catch_unwind(|| panic!("of a host")));
        panics();
        assert_eq!(HEARD.get(), 1);
        guard_or((), || panic!("of the library"));
        assert_eq!(HEARD.get(), 1);
        guard_or((), || outside(panics));
        assert_eq!(HEARD.get(), 2);
        panics();
        assert_eq!(HEARD.get(), 3);
        set_hook(before);
    }

    #[test]
    fn a_panic_is_a_fault_of_the_answer() {
        let answer = guard_text(|| panic!("on purpose"));
        // SAFETY: made by `guard_text`, and freed once.
        let answer = unsafe { CString::from_raw(answer) }.into_string().unwrap();
        let fault = r#"{"faults":[{"code":"panic","path":"","message":"The library has a defect: on purpose.","#;
        assert!(answer.starts_with(fault), "{answer}");
    }
}

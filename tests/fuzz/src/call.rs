//! Calls through the C door from Rust, and what holds after each.

use std::ffi::{CStr, c_char, c_void};
use std::mem::MaybeUninit;

use pourwright_ffi::*;

/// The demo shop's book.
pub(crate) const BOOK: &str = include_str!("../../../core/examples/demo/book.json");

/// The demo day's orders.
pub(crate) const ORDERS: &str = include_str!("../../../core/examples/demo/orders.json");

/// A request that needs a book.
pub(crate) const FORMULA: &str =
    r#"{"calculate":"formula","formulas":["dusk","plain"],"base_amount":"1 cup"}"#;

/// A request that needs a plan and its book.
pub(crate) const RECORD: &str =
    r#"{"calculate":"record","actuals":{"format":"pourwright/1.0","pots":{}}}"#;

/// The result of a call, or the error of which [`check_error`] has seen that it is whole.
pub(crate) fn ask<T>(
    call: impl FnOnce(&mut MaybeUninit<T>, &mut MaybeUninit<Box<Error>>) -> i32,
) -> Result<T, Box<Error>> {
    let (mut out, mut error) = (MaybeUninit::uninit(), MaybeUninit::uninit());
    match call(&mut out, &mut error) {
        // SAFETY: written on success.
        POUR_OK => Ok(unsafe { out.assume_init() }),
        status => {
            // SAFETY: written on failure.
            let error = unsafe { error.assume_init() };
            check_error(status, &error);
            Err(error)
        }
    }
}

/// A failed call has a status of the list, which is not that of a defect, and faults with all their texts.
pub(crate) fn check_error(status: i32, error: &Error) {
    assert!((POUR_NULL..=POUR_OUT_OF_MEMORY).contains(&status), "{status}");
    assert_ne!(status, POUR_PANIC, "{}", error_json(error));
    assert_eq!(pour_error_status(Some(error)), status);
    let count = pour_error_count(Some(error));
    assert!(count > 0);
    for index in 0..count {
        let text = |read: Accessor| copy(read(Some(error), index)).unwrap();
        for read in [pour_error_code, pour_error_message, pour_error_help] as [Accessor; 3] {
            assert!(!text(read).is_empty(), "{}", error_json(error));
        }
        let path = text(pour_error_path);
        assert!(path.is_empty() || path.starts_with('/'), "{path}");
    }
    assert!(pour_error_code(Some(error), count).is_null());
}

type Accessor = extern "C" fn(Option<&Error>, usize) -> *const c_char;

/// The faults as JSON.
pub(crate) fn error_json(error: &Error) -> String {
    copy(pour_error_json(Some(error))).unwrap()
}

/// A text of the library, which it keeps.
fn copy(text: *const c_char) -> Option<String> {
    // SAFETY: the library's texts end, and live as long as the error that the caller has.
    (!text.is_null()).then(|| unsafe { CStr::from_ptr(text) }.to_str().unwrap().to_owned())
}

/// A text that the library has given out, which is freed.
pub(crate) fn taken(text: *mut c_char) -> String {
    let found = copy(text).unwrap();
    // SAFETY: given out by the call before, and freed once.
    unsafe { pour_string_free(text) };
    found
}

/// Loads a book.
pub(crate) fn load(text: &[u8]) -> Result<Box<Book>, Box<Error>> {
    // SAFETY: the text is as long as said.
    ask(|out, error| unsafe {
        pour_book_from_json(text.as_ptr().cast(), text.len(), Some(out), Some(error))
    })
}

/// Plans a day.
pub(crate) fn plan(book: Option<&Book>, text: &[u8]) -> Result<Box<Plan>, Box<Error>> {
    // SAFETY: the text is as long as said.
    ask(|out, error| unsafe {
        pour_book_plan(book, text.as_ptr().cast(), text.len(), Some(out), Some(error))
    })
}

/// Plans a day within a budget, asking `stop` whether to go on.
pub(crate) fn plan_within(
    book: Option<&Book>,
    text: &[u8],
    [pots, thousand_steps]: [u32; 2],
    stop: &mut dyn FnMut() -> bool,
) -> Result<Box<Plan>, Box<Error>> {
    unsafe extern "C" fn asked(user: *mut c_void) -> i32 {
        // SAFETY: the reference below, for the length of the call.
        let stop = unsafe { &mut *user.cast::<&mut dyn FnMut() -> bool>() };
        stop().into()
    }
    let (text, len, mut stop) = (text.as_ptr().cast(), text.len(), stop);
    let user = (&raw mut stop).cast();
    // SAFETY: the text is as long as said, and `asked` gets what it takes.
    ask(|out, error| unsafe {
        let stop = Some(asked as unsafe extern "C" fn(*mut c_void) -> i32);
        let (out, error) = (Some(out), Some(error));
        pour_book_plan_within(book, text, len, pots, thousand_steps, stop, user, out, error)
    })
}

/// Opens a plan again.
pub(crate) fn reopen(text: &[u8]) -> Result<Box<Plan>, Box<Error>> {
    // SAFETY: the text is as long as said.
    ask(|out, error| unsafe {
        pour_plan_from_json(text.as_ptr().cast(), text.len(), Some(out), Some(error))
    })
}

/// The answer to a request of an open book.
pub(crate) fn ask_book(book: Option<&Book>, text: &[u8]) -> Result<String, Box<Error>> {
    // SAFETY: the text is as long as said.
    let answer = ask(|out, error| unsafe {
        pour_book_request(book, text.as_ptr().cast(), text.len(), Some(out), None, Some(error))
    });
    answer.map(taken)
}

/// The answers to lines, of an open book if one is given, and the number of those that are faults.
pub(crate) fn ask_lines(book: Option<&Book>, lines: &[u8]) -> Result<(String, usize), Box<Error>> {
    let mut refused = MaybeUninit::uninit();
    let (start, len) = (lines.as_ptr().cast(), lines.len());
    // SAFETY: the text is as long as said.
    let answers = ask(|out, error| unsafe {
        match book {
            None => pour_lines(start, len, Some(out), None, Some(&mut refused), Some(error)),
            book => {
                pour_book_lines(book, start, len, Some(out), None, Some(&mut refused), Some(error))
            }
        }
    })?;
    // SAFETY: written on success.
    Ok((taken(answers), unsafe { refused.assume_init() }))
}

/// The answer to a request of an open plan.
pub(crate) fn ask_plan(plan: Option<&Plan>, text: &[u8]) -> Result<String, Box<Error>> {
    // SAFETY: the text is as long as said.
    let answer = ask(|out, error| unsafe {
        pour_plan_request(plan, text.as_ptr().cast(), text.len(), Some(out), None, Some(error))
    });
    answer.map(taken)
}

/// The sheet of a plan, and the plan as JSON.
pub(crate) fn read_plan(plan: Option<&Plan>) -> Result<(String, String), Box<Error>> {
    let sheet = ask(|out, error| pour_plan_sheet(plan, Some(out), None, Some(error)))?;
    let json = ask(|out, error| pour_plan_json(plan, Some(out), None, Some(error)))?;
    Ok((taken(sheet), taken(json)))
}

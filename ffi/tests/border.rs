//! The border itself: floating-point state, threads, panics.

use std::ffi::{CStr, c_char};
use std::mem::MaybeUninit;
use std::thread;

use pourwright_ffi::*;

const BOOK: &str = include_str!("../../core/examples/demo/book.json");
const ORDERS: &str = include_str!("../../core/examples/demo/orders.json");

/// The result of a call, or its status and error.
fn ask<T>(
    call: impl FnOnce(&mut MaybeUninit<T>, &mut MaybeUninit<Box<Error>>) -> i32,
) -> Result<T, (i32, Box<Error>)> {
    let (mut out, mut error) = (MaybeUninit::uninit(), MaybeUninit::uninit());
    match call(&mut out, &mut error) {
        // SAFETY: written on success.
        POUR_OK => Ok(unsafe { out.assume_init() }),
        // SAFETY: written on failure.
        status => Err((status, unsafe { error.assume_init() })),
    }
}

fn code(error: &Error) -> String {
    // SAFETY: every error has a first fault.
    unsafe { CStr::from_ptr(pour_error_code(Some(error), 0)) }.to_str().unwrap().to_owned()
}

fn load(json: &str) -> Box<Book> {
    // SAFETY: the text is as long as said.
    let book = ask(|out, error| unsafe {
        pour_book_from_json(json.as_ptr().cast(), json.len(), Some(out), Some(error))
    });
    book.map_err(|(_, error)| code(&error)).unwrap()
}

fn plan(book: &Book, orders: &str) -> Box<Plan> {
    // SAFETY: the text is as long as said.
    let plan = ask(|out, error| unsafe {
        pour_book_plan(Some(book), orders.as_ptr().cast(), orders.len(), Some(out), Some(error))
    });
    plan.map_err(|(_, error)| code(&error)).unwrap()
}

fn taken(text: *mut c_char) -> String {
    // SAFETY: a text of the library, freed once.
    unsafe {
        let copy = CStr::from_ptr(text).to_str().unwrap().to_owned();
        pour_string_free(text);
        copy
    }
}

fn json(plan: &Plan) -> String {
    taken(ask(|out, _| pour_plan_json(Some(plan), Some(out), None, None)).ok().unwrap())
}

#[test]
fn many_threads_plan_with_one_book() {
    let book = load(BOOK);
    let first = json(&plan(&book, ORDERS));
    thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| {
                for _ in 0..3 {
                    assert_eq!(json(&plan(&book, ORDERS)), first);
                }
            });
        }
    });
    let plan = plan(&book, ORDERS);
    pour_book_free(Some(book));
    assert_eq!(json(&plan), first);
}

/// The sheet and the plan are those of the request door, to the letter: with the documents that they were made from.
#[test]
fn a_plan_is_that_of_a_request() {
    let request = format!(r#"{{"calculate":"plan","book":{BOOK},"orders":{ORDERS}}}"#);
    let read = pourwright::request::read(&serde_json::from_str(&request).unwrap()).unwrap();
    let Ok(pourwright::request::Response::Plan(wanted)) = read.answer() else { panic!() };
    assert!(wanted.made_from.is_some());
    let found = plan(&load(BOOK), ORDERS);
    let sheet = ask(|out, _| pour_plan_sheet(Some(&found), Some(out), None, None)).ok().unwrap();
    assert_eq!(taken(sheet), wanted.sheet().to_string());
    let notes = ask(|out, _| pour_plan_notes(Some(&found), Some(out), None, None)).ok().unwrap();
    assert_eq!(taken(notes), wanted.notes().to_string());
    assert_eq!(json(&found), serde_json::to_string(&wanted).unwrap());
}

/// The state of the floating-point unit: here MXCSR.
#[cfg(target_arch = "x86_64")]
mod float {
    use super::*;
    use std::arch::asm;

    fn state() -> u32 {
        let mut state: u32 = 0;
        // SAFETY: stores four bytes to a place of four bytes.
        unsafe { asm!("stmxcsr [{}]", in(reg) &raw mut state) };
        state
    }

    fn set(state: u32) {
        // SAFETY: the tests set modes that exist, and put them back before any sum of their own.
        unsafe { asm!("ldmxcsr [{}]", in(reg) &raw const state) };
    }

    /// Calls of every kind, good and bad.
    fn calls(book: &Book) -> Vec<u64> {
        let mut found = Vec::new();
        let mut number = |call: &dyn Fn(Option<&mut MaybeUninit<f64>>) -> i32| {
            let mut out = MaybeUninit::new(0.0_f64);
            let status = call(Some(&mut out));
            // SAFETY: initialized.
            found.push(unsafe { out.assume_init() }.to_bits() + status as u64);
        };
        number(&|out| pour_water_density(21.3, out, None));
        number(&|out| pour_mass_of_volume(1.0 / 3.0, 1.1, out, None));
        number(&|out| pour_mass_of_volume(f64::NAN, 1.1, out, None));
        number(&|out| pour_volume_of_mass(1e300, 1.1, out, None));
        let omitted = POUR_OMITTED;
        number(&|out| pour_salt_for_density(236.6, 1.03, 2.165, 1.15, 0.01, omitted, out, None));
        // SAFETY: texts that end.
        number(&|out| unsafe { pour_convert(c"1/3 cup".as_ptr(), c"mL".as_ptr(), 0, out, None) });
        let plan = json(&plan(book, ORDERS));
        found.push(plan.bytes().fold(0, |sum: u64, byte| sum.wrapping_mul(31) + u64::from(byte)));
        found
    }

    #[test]
    fn flags_and_modes_are_left_as_found_and_change_no_bit() {
        let book = load(BOOK);
        let plain = state();
        let wanted = calls(&book);
        // No flag, all flags; each rounding; subnormals flushed; inexact results trapped.
        let modes = [0x1f80, 0x1fbf, 0x3f80, 0x5f80, 0x7f80, 0x9fc0, 0x0f80];
        for mode in modes {
            set(mode);
            let mut out = MaybeUninit::new(0.0);
            let status = pour_water_density(21.3, Some(&mut out), None);
            let scalar = state();
            set(mode);
            let found = calls(&book);
            let all = state();
            set(plain);
            assert_eq!(status, POUR_OK);
            assert_eq!((scalar, all), (mode, mode), "{mode:x}");
            assert_eq!(found, wanted, "{mode:x}");
        }
    }
}

#[cfg(feature = "panic-test")]
#[test]
fn a_panic_is_a_status() {
    let panicked = ask::<()>(|_, error| pour_test_panic(Some(error)));
    let (status, error) = panicked.err().unwrap();
    assert_eq!((status, code(&error).as_str()), (POUR_PANIC, "panic"));
    // SAFETY: the error has a fault.
    let message = unsafe { CStr::from_ptr(pour_error_message(Some(&error), 0)) };
    assert!(message.to_str().unwrap().contains("a panic on purpose"));
    assert_eq!(pour_test_panic(None), POUR_PANIC);
}

#[test]
fn a_nul_inside_a_text_does_not_end_it() {
    let json = r#"{ "format": "pourwright/1.0", "a\u0000b": 1 }"#;
    // SAFETY: the text is as long as said.
    let refused = ask(|out, error| unsafe {
        pour_book_from_json(json.as_ptr().cast(), json.len(), Some(out), Some(error))
    });
    let (status, error) = refused.err().unwrap();
    assert_eq!(status, POUR_REFUSED);
    // SAFETY: the texts of an error that lives.
    let found = (0..pour_error_count(Some(&error)))
        .map(|index| unsafe { CStr::from_ptr(pour_error_path(Some(&error), index)) }.to_str())
        .any(|path| path == Ok("/a\u{fffd}b"));
    assert!(found);
}

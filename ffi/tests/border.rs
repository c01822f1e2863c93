//! The border itself: floating-point state, threads, panics.

use std::ffi::{CStr, c_char, c_void};
use std::mem::MaybeUninit;
use std::ptr;
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

type Stop = unsafe extern "C" fn(*mut c_void) -> i32;

/// A plan within a budget, or its status and the code of its fault.
fn plan_within(
    book: &Book,
    orders: &str,
    [pots, thousand_steps]: [u32; 2],
    stop: Option<Stop>,
    user: *mut c_void,
) -> Result<Box<Plan>, (i32, String)> {
    let (orders, len) = (orders.as_ptr().cast(), orders.len());
    // SAFETY: the text is as long as said; `stop` takes `user`.
    let plan = ask(|out, error| unsafe {
        let (book, out, error) = (Some(book), Some(out), Some(error));
        pour_book_plan_within(book, orders, len, pots, thousand_steps, stop, user, out, error)
    });
    plan.map_err(|(status, error)| (status, code(&error)))
}

/// Counts the questions in the `u32` at `user`; never stops.
unsafe extern "C" fn go_on(user: *mut c_void) -> i32 {
    // SAFETY: the tests pass a counter.
    unsafe { *user.cast::<u32>() += 1 };
    0
}

/// The demo day with so many pieces of its first line.
fn day_of(pieces: u32) -> String {
    let day = ORDERS.replacen("\"pieces\": 24", &format!("\"pieces\": {pieces}"), 1);
    assert_ne!(day, ORDERS);
    day
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

fn reopen(json: &str) -> Result<Box<Plan>, (i32, Box<Error>)> {
    // SAFETY: the text is as long as said.
    ask(|out, error| unsafe {
        pour_plan_from_json(json.as_ptr().cast(), json.len(), Some(out), Some(error))
    })
}

/// The answer of a call that takes a request, or its faults, as the other doors write them.
fn answer(
    call: impl FnOnce(&mut MaybeUninit<*mut c_char>, &mut MaybeUninit<Box<Error>>) -> i32,
) -> String {
    ask(call).map(taken).unwrap_or_else(|(status, error)| {
        assert_eq!(status, POUR_REFUSED);
        // SAFETY: a text of an error that lives.
        unsafe { CStr::from_ptr(pour_error_json(Some(&error))) }.to_str().unwrap().to_owned()
    })
}

fn of_book(book: &Book, request: &str) -> String {
    // SAFETY: the text is as long as said.
    answer(|out, error| unsafe {
        let (text, len) = (request.as_ptr().cast(), request.len());
        pour_book_request(Some(book), text, len, Some(out), None, Some(error))
    })
}

fn of_plan(plan: &Plan, request: &str) -> String {
    // SAFETY: the text is as long as said.
    answer(|out, error| unsafe {
        let (text, len) = (request.as_ptr().cast(), request.len());
        pour_plan_request(Some(plan), text, len, Some(out), None, Some(error))
    })
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

const NO_LIMITS: [u32; 2] = [POUR_OMITTED_COUNT; 2];

/// What a day may take changes no bit of its plan, and its plan ends with a status of its own, whoever sets the budget.
#[test]
fn a_budget_has_its_own_status() {
    let book = load(BOOK);
    let whole = json(&plan(&book, ORDERS));
    for limits in [NO_LIMITS, [5, 1], [0xffff_fffe; 2]] {
        assert_eq!(
            json(&plan_within(&book, ORDERS, limits, None, ptr::null_mut()).unwrap()),
            whole
        );
    }
    for (limits, code) in
        [([4, 1], "budget-pots"), ([0, 0], "budget-pots"), ([5, 0], "budget-work")]
    {
        let refused = plan_within(&book, ORDERS, limits, None, ptr::null_mut()).err().unwrap();
        assert_eq!(refused, (POUR_OVER_BUDGET, code.to_owned()), "{limits:?}");
    }
    let request = format!(r#"{{"calculate":"plan","orders":{ORDERS},"budget":{{"pots":4}}}}"#);
    // SAFETY: the text is as long as said.
    let refused = ask(|out, error| unsafe {
        let (text, len) = (request.as_ptr().cast(), request.len());
        pour_book_request(Some(&book), text, len, Some(out), None, Some(error))
    });
    assert_eq!(refused.err().unwrap().0, POUR_OVER_BUDGET);
}

#[test]
fn a_plan_is_stopped_by_its_caller() {
    unsafe extern "C" fn third_time(user: *mut c_void) -> i32 {
        // SAFETY: the counter below.
        unsafe { go_on(user) + i32::from(*user.cast::<u32>() == 3) * i32::MIN }
    }
    let (book, mut asked) = (load(BOOK), 0_u32);
    let user = (&raw mut asked).cast();
    let stopped = plan_within(&book, &day_of(100_000), NO_LIMITS, Some(third_time), user);
    assert_eq!(stopped.err().unwrap(), (POUR_STOPPED, "plan-stopped".to_owned()));
    assert_eq!(asked, 3);
}

/// Requests to open books and plans; the last three are refused.
const REQUESTS: [&str; 7] = [
    r#"{"calculate":"convert","amount":"1 1/4 cup","to":"mL"}"#,
    r#"{"calculate":"formula","formulas":["dusk","plain"],"base_amount":"1 1/2 cup"}"#,
    r#"{"calculate":"cost","formulas":["dusk","plain"],"base_amount":"1 1/2 cup"}"#,
    r#"{"calculate":"record","actuals":{"format":"pourwright/1.0","pots":{}}}"#,
    r#"{"calculate":"formula","formulas":["dusk","plane"]}"#,
    r#"{"calculate":"formula","formulas":["dusk"],"book":{"format":"pourwright/1.0","measures":"metric",
        "materials":{},"formulas":{},"molds":{},"bench":{"cups":[],"injector":{"holds":"4 fl oz"}}}}"#,
    r#"{"calculate":"formula","formulas":["dusk"]"#,
];

/// An open book or plan answers through its handle as in Rust, to the letter, and refuses with the same faults.
#[test]
fn requests_of_handles_are_answered_as_in_rust() {
    let (book, core) = (load(BOOK), pourwright::document::LoadedBook::from_text(BOOK).unwrap());
    let (plan, open) = (plan(&book, ORDERS), core.open_plan_text(ORDERS).unwrap());
    let (mut of_books, mut of_plans) = (0, 0);
    for request in REQUESTS {
        let (found, wanted) = (of_book(&book, request), core.answer_text(request));
        assert_eq!(found, wanted, "{request}");
        of_books += usize::from(wanted.starts_with("{\"result\""));
        let (found, wanted) = (of_plan(&plan, request), open.answer_text(request));
        assert_eq!(found, wanted, "{request}");
        of_plans += usize::from(wanted.starts_with("{\"result\""));
    }
    assert!(of_plan(&plan, REQUESTS[5]).contains("\"open-and-given\""));
    // A record needs a plan.
    assert_eq!((of_books, of_plans), (3, 4));
}

/// A plan that was stored is the same plan again: its text, its sheet, its answers. So is one from an answer.
#[test]
fn a_plan_is_reopened() {
    let book = load(BOOK);
    let made = plan(&book, ORDERS);
    let answer = of_book(&book, &format!(r#"{{"calculate":"plan","orders":{ORDERS}}}"#));
    let answer = answer.strip_prefix("{\"result\":").unwrap().strip_suffix('}').unwrap();
    for text in [&json(&made), answer] {
        let again = reopen(text).map_err(|(_, error)| code(&error)).unwrap();
        assert_eq!(json(&again), json(&made));
        let sheet = |plan: &Plan| {
            taken(ask(|out, _| pour_plan_sheet(Some(plan), Some(out), None, None)).ok().unwrap())
        };
        assert_eq!(sheet(&again), sheet(&made));
        for request in REQUESTS {
            assert_eq!(of_plan(&again, request), of_plan(&made, request), "{request}");
        }
    }
}

/// Why a text is not a plan is said as in Rust; nothing is opened.
#[test]
fn what_is_not_a_whole_plan_is_not_reopened() {
    let whole = json(&plan(&load(BOOK), ORDERS));
    let mut alone: serde_json::Value = serde_json::from_str(&whole).unwrap();
    alone["made_from"] = serde_json::Value::Null;
    for (text, wanted) in [
        (&whole[..whole.len() - 1], "not-json"),
        (ORDERS, "unknown-field"),
        (&alone.to_string(), "plan-without-book"),
    ] {
        let Err((status, error)) = reopen(text) else { panic!("{wanted} is opened") };
        assert_eq!(status, POUR_REFUSED);
        let faults = pourwright::document::OpenPlan::from_text(text).unwrap_err().into_vec();
        assert_eq!(pour_error_count(Some(&error)), faults.len());
        assert!(faults.iter().any(|fault| fault.code == wanted), "{faults:?}");
        assert_eq!(code(&error), faults[0].code);
    }
}

#[test]
fn one_plan_answers_many_threads() {
    let plan = plan(&load(BOOK), ORDERS);
    let first = of_plan(&plan, REQUESTS[3]);
    thread::scope(|scope| {
        for _ in 0..4 {
            scope.spawn(|| {
                for _ in 0..3 {
                    assert_eq!(of_plan(&plan, REQUESTS[3]), first);
                }
            });
        }
    });
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
        let made = plan(book, ORDERS);
        let plan = json(&made) + &of_book(book, REQUESTS[2]) + &of_plan(&made, REQUESTS[3]);
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

    /// What a callback does to the state changes no bit of the plan, and not the state that the host finds after it.
    #[test]
    fn a_callback_changes_no_bit() {
        unsafe extern "C" fn round_up(user: *mut c_void) -> i32 {
            set(0x5fbf);
            // SAFETY: the counter below.
            unsafe { go_on(user) }
        }
        let (book, day, mut asked) = (load(BOOK), day_of(20_000), 0_u32);
        let wanted = json(&plan(&book, &day));
        let before = state();
        let user = (&raw mut asked).cast();
        let found = plan_within(&book, &day, NO_LIMITS, Some(round_up), user);
        let after = state();
        assert_eq!(json(&found.unwrap()), wanted);
        assert_eq!(after, before);
        assert!(asked > 0);
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

//! The shop's book, loaded once and planned with many times, and the plans.

use std::ffi::{c_char, c_void};
use std::mem::MaybeUninit;
use std::sync::Arc;

use pourwright::document::{LoadedBook, OpenPlan};
use pourwright::mix::Materials;
use pourwright::plan::budget::Budget;

use crate::call::given_count;
use crate::document::{answer_to, hand_out, hand_out_lines, written};
use crate::error::Error;
use crate::failure::{Failure, together};
use crate::float::HostState;
use crate::guard::{guard, guard_or, outside};
use crate::memory::{document, given, lines_of, try_memory};

/// A shop's book, ready for planning.
///
/// It never changes, and any number of threads may use it at once. What is made from it lives on when it is freed.
pub struct Book {
    book: LoadedBook,
    materials: Arc<Materials>,
    /// Length of its text.
    bytes: usize,
}

impl Book {
    pub(crate) fn materials(&self) -> &Arc<Materials> {
        &self.materials
    }
}

/// A day's plan with the book that it was made from. It never changes, and any number of threads may use it at once.
pub struct Plan {
    plan: OpenPlan,
    /// Length of the texts that it was made from.
    bytes: usize,
}

impl Plan {
    /// Tries whether there is memory for a copy or a text of it, and for a document of `len` bytes.
    fn try_memory(&self, len: usize) -> Result<(), Failure> {
        let pots = self.plan.document().plan.pots.len();
        try_memory("plan", self.bytes.saturating_add(len), pots)
    }
}

/// Loads a book from its JSON text of `len` bytes; `POUR_UP_TO_NUL` for one that ends with a NUL, as in every call.
///
/// `POUR_REFUSED` with all faults of the text, else all of its form, else all of its meaning.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_book_from_json(
    json: *const c_char,
    len: usize,
    book: Option<&mut MaybeUninit<Box<Book>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut book = book;
    guard(error, &mut || {
        // SAFETY: the header asks for `len` bytes, or null.
        let json = unsafe { document("json", json, len) };
        together! {
            out = given("book", book.as_deref_mut());
            json = json;
        }
        let book = LoadedBook::from_text(json)?;
        let materials = Arc::new(book.ready().materials.clone());
        out.write(Box::new(Book { book, materials, bytes: json.len() }));
        Ok(())
    })
}

/// Frees a book. Null is let pass.
#[unsafe(no_mangle)]
pub extern "C" fn pour_book_free(book: Option<Box<Book>>) {
    guard_or((), || drop(book));
}

/// Answers a request with the book: as `pour_request`, for a request that takes a `book` and leaves it out.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_book_request(
    book: Option<&Book>,
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
            opened = given("book", book);
            out = given("out", out.as_deref_mut());
            json = json;
        }
        let Book { book, bytes, .. } = opened;
        try_memory("json", bytes.saturating_add(json.len()), 0)?;
        hand_out(&answer_to(json, book.into())?, out, out_len.as_deref_mut());
        Ok(())
    })
}

/// Answers many requests with the book, one a line: as `pour_lines`, for requests that leave `book` out.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_book_lines(
    book: Option<&Book>,
    lines: *const c_char,
    len: usize,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    refused: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len, mut refused) = (out, out_len, refused);
    guard(error, &mut || {
        let bytes = book.map_or(0, |book| book.bytes);
        // SAFETY: the header asks for `len` bytes, or null.
        let lines = unsafe { lines_of("lines", lines, len, bytes) };
        together! {
            book = given("book", book);
            out = given("out", out.as_deref_mut());
            lines = lines;
        }
        let answered = book.book.answer_lines(lines);
        hand_out_lines(&answered, out, out_len.as_deref_mut(), refused.as_deref_mut());
        Ok(())
    })
}

/// Plans a day: the JSON text of its order list, `orders_len` bytes.
///
/// `POUR_REFUSED` with all faults of the order list, with paths into it, or why the day cannot be planned.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_book_plan(
    book: Option<&Book>,
    orders_json: *const c_char,
    orders_len: usize,
    plan: Option<&mut MaybeUninit<Box<Plan>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut plan = plan;
    guard(error, &mut || {
        // SAFETY: the header asks for `orders_len` bytes, or null.
        let orders = unsafe { document("orders_json", orders_json, orders_len) };
        together! {
            opened = given("book", book);
            out = given("plan", plan.as_deref_mut());
            orders = orders;
        }
        let Book { book, bytes, .. } = opened;
        let plan = book.open_plan_text(orders)?;
        out.write(Box::new(Plan { plan, bytes: bytes.saturating_add(orders.len()) }));
        Ok(())
    })
}

/// Plans a day within a budget: as `pour_book_plan`, with at most `pots` pots (default: 5000) and `thousand_steps`
/// thousands of steps of work (default: 10000). `POUR_OVER_BUDGET` if the day takes more, mostly before the work begins.
///
/// `stop` is asked about every millisecond of planning, on the calling thread, with `user`; the plan ends with
/// `POUR_STOPPED` when it returns anything but 0. A short plan is finished without asking, and so are the reading of the
/// orders and the wording of the plan. Null for no such question. `stop` may call this library, but must not free the
/// book, and it must return: leaving it by longjmp or by an exception is undefined. It runs with the library's
/// floating-point state, and what it changes of that is undone.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_book_plan_within(
    book: Option<&Book>,
    orders_json: *const c_char,
    orders_len: usize,
    pots: u32,
    thousand_steps: u32,
    stop: Option<unsafe extern "C" fn(user: *mut c_void) -> i32>,
    user: *mut c_void,
    plan: Option<&mut MaybeUninit<Box<Plan>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut plan = plan;
    guard(error, &mut || {
        // SAFETY: the header asks for `orders_len` bytes, or null.
        let orders = unsafe { document("orders_json", orders_json, orders_len) };
        together! {
            opened = given("book", book);
            out = given("plan", plan.as_deref_mut());
            orders = orders;
        }
        let Book { book, bytes, .. } = opened;
        let asked = || {
            let ours = HostState::set_aside();
            // SAFETY: the header asks for a function that takes `user` and returns.
            let answer = stop.map_or(0, |stop| outside(|| unsafe { stop(user) }));
            ours.put_back();
            answer != 0
        };
        let mut budget = Budget::new().stop_if(&asked);
        if let Some(pots) = given_count(pots) {
            budget = budget.pots(pots);
        }
        if let Some(thousands) = given_count(thousand_steps) {
            budget = budget.work(u64::from(thousands) * 1000);
        }
        let plan = book.open_plan_text_within(orders, &budget)?;
        out.write(Box::new(Plan { plan, bytes: bytes.saturating_add(orders.len()) }));
        Ok(())
    })
}

/// Reopens a plan from the JSON text of `len` bytes that `pour_plan_json` gave, with the book in it.
///
/// `POUR_REFUSED` with all faults of the text, else all of its form; a plan that was stored without its book.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_plan_from_json(
    json: *const c_char,
    len: usize,
    plan: Option<&mut MaybeUninit<Box<Plan>>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut plan = plan;
    guard(error, &mut || {
        // SAFETY: the header asks for `len` bytes, or null.
        let json = unsafe { document("json", json, len) };
        together! {
            out = given("plan", plan.as_deref_mut());
            json = json;
        }
        out.write(Box::new(Plan { plan: OpenPlan::from_text(json)?, bytes: json.len() }));
        Ok(())
    })
}

/// Answers a request with the plan and its book: as `pour_request`, for a request that takes a `book` or a `plan` and
/// leaves them out. A request that makes a new plan answers with it; `pour_plan_from_json` opens that.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_plan_request(
    plan: Option<&Plan>,
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
            plan = given("plan", plan);
            out = given("out", out.as_deref_mut());
            json = json;
        }
        plan.try_memory(json.len())?;
        hand_out(&answer_to(json, (&plan.plan).into())?, out, out_len.as_deref_mut());
        Ok(())
    })
}

/// The plan as JSON, complete: the record of the day, with the book and the orders that it was made from.
///
/// Freed by `pour_string_free`; `out_len` may be null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_plan_json(
    plan: Option<&Plan>,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len) = (out, out_len);
    guard(error, &mut || {
        together! {
            plan = given("plan", plan);
            out = given("out", out.as_deref_mut());
        }
        plan.try_memory(0)?;
        hand_out(&written(plan.plan.document().to_json())?, out, out_len.as_deref_mut());
        Ok(())
    })
}

/// The bench sheet of the plan: text of 80 columns for the wall. Freed by `pour_string_free`; `out_len` may be null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_plan_sheet(
    plan: Option<&Plan>,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len) = (out, out_len);
    guard(error, &mut || {
        together! {
            plan = given("plan", plan);
            out = given("out", out.as_deref_mut());
        }
        plan.try_memory(0)?;
        hand_out(&plan.plan.document().sheet().to_string(), out, out_len.as_deref_mut());
        Ok(())
    })
}

/// The notes to the plan: other ways to measure, how sure each number is, sink rates, costs, why there are not fewer pots,
/// what was assumed. Text of 80 columns, freed by `pour_string_free`; `out_len` may be null.
#[unsafe(no_mangle)]
pub extern "C" fn pour_plan_notes(
    plan: Option<&Plan>,
    out: Option<&mut MaybeUninit<*mut c_char>>,
    out_len: Option<&mut MaybeUninit<usize>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let (mut out, mut out_len) = (out, out_len);
    guard(error, &mut || {
        together! {
            plan = given("plan", plan);
            out = given("out", out.as_deref_mut());
        }
        plan.try_memory(0)?;
        hand_out(&plan.plan.document().notes().to_string(), out, out_len.as_deref_mut());
        Ok(())
    })
}

/// Frees a plan. Null is let pass.
#[unsafe(no_mangle)]
pub extern "C" fn pour_plan_free(plan: Option<Box<Plan>>) {
    guard_or((), || drop(plan));
}

//! The border itself: floating-point state, threads, panics, random calls.

use std::ffi::{CStr, CString, c_char};
use std::mem::MaybeUninit;
use std::thread;

use pourwright_ffi::*;
use proptest::prelude::*;

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
        number(&|out| pour_piece_mass(1e300, 1.1, 1.2, 0.0, 0.3, out, None));
        number(&|out| pour_salt_for_density(236.6, 1.03, 2.165, 0.01, 1.15, out, None));
        // SAFETY: texts that end.
        number(&|out| unsafe {
            pour_convert_amount(c"1/3 cup".as_ptr(), c"mL".as_ptr(), POUR_US_CUSTOMARY, out, None)
        });
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

/// One call on a set of handles.
#[derive(Debug, Clone)]
enum Step {
    Add(usize, u8, f64),
    Draw(usize, f64),
    Merge(usize, usize),
    Scale(usize, f64),
    Look(usize, i32, f64, f64),
    Free(usize),
    FreeBook,
    Plan(usize),
}

fn any_number() -> impl Strategy<Value = f64> {
    prop_oneof![4 => 0.0..1000.0, 1 => any::<f64>(), 1 => Just(0.0)]
}

fn step() -> impl Strategy<Value = Step> {
    let handle = 0_usize..6;
    prop_oneof![
        4 => (handle.clone(), any::<u8>(), any_number()).prop_map(|(h, m, x)| Step::Add(h, m, x)),
        3 => (handle.clone(), any_number()).prop_map(|(h, x)| Step::Draw(h, x)),
        2 => (handle.clone(), handle.clone()).prop_map(|(a, b)| Step::Merge(a, b)),
        2 => (handle.clone(), any_number()).prop_map(|(h, x)| Step::Scale(h, x)),
        3 => (handle.clone(), 0..4, any_number(), any_number())
            .prop_map(|(h, p, t, v)| Step::Look(h, p, t, v)),
        1 => handle.prop_map(Step::Free),
        1 => Just(Step::FreeBook),
        1 => (0_usize..ORDERS.len()).prop_map(Step::Plan),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Whatever is called in whatever order: a status of the list, results that are finite, and mass kept.
    #[test]
    fn random_calls_on_handles(steps in prop::collection::vec(step(), 1..60)) {
        let names: Vec<CString> = ["clear-base", "plum", "fine-salt", "nothing", ""]
            .into_iter()
            .map(|name| CString::new(name).unwrap())
            .collect();
        let mut book = Some(load(BOOK));
        let mut mixes: Vec<Option<Box<Mix>>> = (0..3)
            .map(|_| ask(|out, error| pour_mix_of_book(book.as_deref(), Some(out), Some(error))).ok())
            .collect();
        mixes.resize_with(6, || None);
        let mass = |mix: &Option<Box<Mix>>| {
            ask(|out, error| pour_mix_mass(mix.as_deref(), Some(out), Some(error))).unwrap_or(0.0)
        };
        for step in steps {
            let before: f64 = mixes.iter().map(mass).sum();
            let (status, added) = match step {
                Step::Add(h, material, grams) => {
                    let name = names[usize::from(material) % names.len()].as_ptr();
                    // SAFETY: the name ends.
                    let status = unsafe { pour_mix_add(mixes[h].as_deref_mut(), name, grams, None) };
                    (status, if status == POUR_OK { grams } else { 0.0 })
                }
                Step::Draw(h, grams) => {
                    match ask(|out, error| pour_mix_draw(mixes[h].as_deref_mut(), grams, Some(out), Some(error))) {
                        Ok(drawn) => {
                            let place = (h + 3) % 6;
                            let gone = mass(&mixes[place]);
                            pour_mix_free(mixes[place].replace(drawn));
                            (POUR_OK, -gone)
                        }
                        Err((status, _)) => (status, 0.0),
                    }
                }
                Step::Merge(a, b) => {
                    let other: *const Mix = mixes[b].as_deref().map_or(std::ptr::null(), |mix| mix);
                    let more = mass(&mixes[b]);
                    // SAFETY: a handle that lives, or null; where it is the same one it is refused.
                    let status = unsafe { pour_mix_merge(mixes[a].as_deref_mut(), other, None) };
                    prop_assert!(a != b || status != POUR_OK);
                    (status, if status == POUR_OK { more } else { 0.0 })
                }
                Step::Scale(h, factor) => {
                    let was = mass(&mixes[h]);
                    let status = pour_mix_scale(mixes[h].as_deref_mut(), factor, None);
                    (status, if status == POUR_OK { was * factor - was } else { 0.0 })
                }
                Step::Look(h, phase, celsius, voids) => {
                    let mix = mixes[h].as_deref();
                    let found = ask(|out, error| pour_mix_density(mix, phase, celsius, voids, Some(out), Some(error)));
                    prop_assert!(found.as_ref().map_or(true, |x| x.is_finite()));
                    let volume = ask(|out, error| pour_mix_volume(mix, phase, celsius, Some(out), Some(error)));
                    prop_assert!(volume.map_or(true, |x| x.is_finite()));
                    (found.map_or_else(|(status, _)| status, |_| POUR_OK), 0.0)
                }
                Step::Free(h) => {
                    let gone = mass(&mixes[h]);
                    pour_mix_free(mixes[h].take());
                    (POUR_OK, -gone)
                }
                Step::FreeBook => {
                    pour_book_free(book.take());
                    (POUR_OK, 0.0)
                }
                // The order list cut off somewhere.
                Step::Plan(cut) => {
                    // SAFETY: within the text.
                    let found = ask(|out, error| unsafe {
                        pour_book_plan(book.as_deref(), ORDERS.as_ptr().cast(), cut, Some(out), Some(error))
                    });
                    (found.map_or_else(|(status, _)| status, |_| POUR_OK), 0.0)
                }
            };
            prop_assert!((POUR_OK..=POUR_MISALIGNED).contains(&status) && status != POUR_PANIC, "{status}");
            let after: f64 = mixes.iter().map(mass).sum();
            let size = before.abs() + added.abs() + after.abs();
            prop_assert!((after - before - added).abs() <= 1e-12 * size, "{before} {added} {after}");
        }
    }

    /// Any bytes at the document door: a status of the list, and never a panic.
    #[test]
    fn any_bytes_at_the_document_door(
        at in 0_usize..BOOK.len(),
        bytes in prop::collection::vec(any::<u8>(), 0..12),
        cut in 0_usize..12,
    ) {
        let mut text = BOOK.as_bytes().to_vec();
        let end = (at + cut).min(text.len());
        text.splice(at..end, bytes);
        // SAFETY: the text is as long as said.
        let book = ask(|out, error| unsafe {
            pour_book_from_json(text.as_ptr().cast(), text.len(), Some(out), Some(error))
        });
        if let Err((status, error)) = book {
            prop_assert!([POUR_REFUSED, POUR_NOT_UTF8].contains(&status), "{status}");
            prop_assert!(pour_error_count(Some(&error)) > 0);
        }
    }
}

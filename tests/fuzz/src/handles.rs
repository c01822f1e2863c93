//! Any calls in any order on a few handles of each kind.

use std::array::from_fn;
use std::ffi::{CStr, CString};
use std::ptr;

use pourwright_ffi::*;

use super::call::{
    BOOK, FORMULA, ORDERS, RECORD, ask, ask_book, ask_plan, load, plan, plan_within, read_plan,
    reopen,
};

/// Reads `bytes` as a list of calls and makes them.
///
/// # Panics
/// Where a call breaks the contract: a status that is not of the list, a number that is not finite, a mass that
/// appears or goes.
pub fn any_calls(bytes: &[u8]) {
    let mut bytes = Bytes(bytes);
    let mut bench = Bench::default();
    while let Some(call) = bytes.next() {
        bench.make(call, &mut bytes);
    }
}

/// The bytes that are left. Where there are none any more, they are 0.
struct Bytes<'a>(&'a [u8]);

impl Bytes<'_> {
    fn next(&mut self) -> Option<u8> {
        let (first, rest) = self.0.split_first()?;
        self.0 = rest;
        Some(*first)
    }

    fn byte(&mut self) -> u8 {
        self.next().unwrap_or(0)
    }

    fn below(&mut self, count: usize) -> usize {
        usize::from(self.byte()) % count
    }

    /// Mostly a number as the bench knows them, else one at an edge or any at all.
    fn number(&mut self) -> f64 {
        const EDGES: [f64; 8] =
            [0.0, -0.0, -1.0, f64::NAN, f64::INFINITY, 1e15, f64::MIN_POSITIVE, f64::MAX];
        match self.byte() {
            0..=159 => f64::from(u16::from_le_bytes([self.byte(), self.byte()])) / 64.0,
            160..=207 => EDGES[self.below(EDGES.len())],
            _ => f64::from_le_bytes(from_fn(|_| self.byte())),
        }
    }
}

const NAMES: [&CStr; 5] = [c"clear-base", c"plum", c"fine-salt", c"nothing", c""];

/// The handles. Those that are not there are passed as null.
#[derive(Default)]
struct Bench {
    books: [Option<Box<Book>>; 2],
    plans: [Option<Box<Plan>>; 2],
    mixes: [Option<Box<Mix>>; 6],
    error: Option<Box<Error>>,
}

impl Bench {
    fn make(&mut self, call: u8, bytes: &mut Bytes<'_>) {
        let before = self.mass();
        // What the call adds to the mass of all mixes; an error is kept in place of the last one.
        let added = match self.outcome(call, bytes) {
            Ok(added) => added,
            Err(error) => {
                pour_error_free(self.error.replace(error));
                0.0
            }
        };
        let after = self.mass();
        let size = before + added.abs() + after;
        // Subnormal masses round by an absolute step.
        let rounding = 1e-12 * size + f64::MIN_POSITIVE;
        assert!((after - before - added).abs() <= rounding, "{before} {added} {after}");
    }

    fn outcome(&mut self, call: u8, bytes: &mut Bytes<'_>) -> Result<f64, Box<Error>> {
        match call % 20 {
            0 => {
                let book = load(BOOK.as_bytes())?;
                pour_book_free(self.books[bytes.below(2)].replace(book));
            }
            1 => pour_book_free(self.books[bytes.below(2)].take()),
            2 => {
                let book = self.books[bytes.below(2)].as_deref();
                // The whole order list, or what is left of it where it was cut off.
                let cut = if bytes.below(2) == 0 { ORDERS.len() } else { 7 * bytes.below(256) };
                let made = plan(book, &ORDERS.as_bytes()[..cut.min(ORDERS.len())])?;
                pour_plan_free(self.plans[bytes.below(2)].replace(made));
            }
            3 => {
                let (sheet, json) = read_plan(self.plans[bytes.below(2)].as_deref())?;
                assert!(sheet.contains("ORDER OF WORK") && json.starts_with('{'));
            }
            4 => pour_plan_free(self.plans[bytes.below(2)].take()),
            5 => {
                let book = self.books[bytes.below(2)].as_deref();
                let mix = ask(|out, error| pour_mix_of_book(book, Some(out), Some(error)))?;
                return Ok(self.put(bytes, mix));
            }
            6 => {
                let mix = of_materials(bytes)?;
                return Ok(self.put(bytes, mix));
            }
            7 | 8 => return self.add(bytes),
            9 => {
                let grams = bytes.number();
                let mix = self.mixes[bytes.below(6)].as_deref_mut();
                let drawn = ask(|out, error| pour_mix_draw(mix, grams, Some(out), Some(error)))?;
                let moved = mass(Some(&drawn));
                return Ok(self.put(bytes, drawn) - moved);
            }
            10 => return self.merge(bytes),
            11 => {
                let mix = &mut self.mixes[bytes.below(6)];
                let (was, factor) = (mass(mix.as_deref()), bytes.number());
                ask::<()>(|_, error| pour_mix_scale(mix.as_deref_mut(), factor, Some(error)))?;
                return Ok(was * factor - was);
            }
            12 | 13 => {
                let mix = self.mixes[bytes.below(6)].as_deref();
                let (phase, celsius, voids) =
                    (bytes.below(4) as i32, bytes.number(), bytes.number());
                let volume =
                    ask(|out, error| pour_mix_volume(mix, phase, celsius, Some(out), Some(error)))?;
                let density = ask(|out, error| {
                    pour_mix_density(mix, phase, celsius, voids, Some(out), Some(error))
                })?;
                assert!(volume.is_finite() && density.is_finite(), "{volume} {density}");
            }
            14 => {
                let gone = self.mixes[bytes.below(6)].take();
                let freed = mass(gone.as_deref());
                pour_mix_free(gone);
                return Ok(-freed);
            }
            15 => {
                let book = self.books[bytes.below(2)].as_deref();
                let answer = ask_book(book, FORMULA.as_bytes())?;
                assert!(answer.starts_with("{\"result\":"), "{answer}");
            }
            16 => {
                let answer = ask_plan(self.plans[bytes.below(2)].as_deref(), RECORD.as_bytes())?;
                assert!(answer.starts_with("{\"result\":"), "{answer}");
            }
            17 => {
                let (_, json) = read_plan(self.plans[bytes.below(2)].as_deref())?;
                let again = reopen(json.as_bytes())?;
                pour_plan_free(self.plans[bytes.below(2)].replace(again));
            }
            18 => {
                let book = self.books[bytes.below(2)].as_deref();
                // The demo day takes five pots.
                let (pots, thousand_steps) = (bytes.below(10) as u32, bytes.below(3) as u32);
                let go_on = bytes.below(4);
                let mut asked = 0;
                let made =
                    plan_within(book, ORDERS.as_bytes(), [pots, thousand_steps], &mut || {
                        asked += 1;
                        asked > go_on
                    })?;
                assert!(pots >= 5 && thousand_steps >= 1, "{pots} {thousand_steps}");
                pour_plan_free(self.plans[bytes.below(2)].replace(made));
            }
            _ => pour_error_free(self.error.take()),
        }
        Ok(0.0)
    }

    /// Puts a mix in a place; what was there is freed.
    fn put(&mut self, bytes: &mut Bytes<'_>, mix: Box<Mix>) -> f64 {
        let put = mass(Some(&mix));
        let gone = self.mixes[bytes.below(6)].replace(mix);
        let freed = mass(gone.as_deref());
        pour_mix_free(gone);
        put - freed
    }

    fn add(&mut self, bytes: &mut Bytes<'_>) -> Result<f64, Box<Error>> {
        let (name, grams) = (NAMES[bytes.below(NAMES.len())], bytes.number());
        let mix = self.mixes[bytes.below(6)].as_deref_mut();
        // SAFETY: the name ends.
        ask::<()>(|_, error| unsafe { pour_mix_add(mix, name.as_ptr(), grams, Some(error)) })?;
        Ok(grams)
    }

    fn merge(&mut self, bytes: &mut Bytes<'_>) -> Result<f64, Box<Error>> {
        let (into, from) = (bytes.below(6), bytes.below(6));
        let other = self.mixes[from].as_deref().map_or(ptr::null(), ptr::from_ref);
        let more = mass(self.mixes[from].as_deref());
        let mix = self.mixes[into].as_deref_mut();
        // SAFETY: a mix that lives, or null; the same one twice is what the call refuses.
        let merged = ask::<()>(|_, error| unsafe { pour_mix_merge(mix, other, Some(error)) });
        assert!(into != from || merged.is_err());
        merged.map(|()| more)
    }

    fn mass(&self) -> f64 {
        self.mixes.iter().map(|mix| mass(mix.as_deref())).sum()
    }
}

/// The mass of a mix, 0 where there is none.
fn mass(mix: Option<&Mix>) -> f64 {
    mix.map_or(0.0, |mix| {
        ask(|out, error| pour_mix_mass(Some(mix), Some(out), Some(error))).ok().unwrap()
    })
}

/// A mix of up to four materials of the host's own.
fn of_materials(bytes: &mut Bytes<'_>) -> Result<Box<Mix>, Box<Error>> {
    let count = bytes.below(5);
    let names: Vec<CString> =
        (0..count).map(|_| CString::from(NAMES[bytes.below(NAMES.len())])).collect();
    let materials: Vec<Material> = names
        .iter()
        .map(|name| Material {
            name: name.as_ptr(),
            density_g_per_ml: bytes.number(),
            fused_g_per_ml: bytes.number(),
            as_scooped_g_per_ml: bytes.number(),
            drop_mass_g: bytes.number(),
            expansion_per_kelvin: bytes.number(),
            kind: bytes.below(12) as i32,
        })
        .collect();
    // SAFETY: an array of so many, whose names live until the call ends.
    ask(|out, error| unsafe {
        pour_mix_of_materials(materials.as_ptr(), count, Some(out), Some(error))
    })
}

//! Any calls in any order on a few handles of each kind.

use std::ffi::{CStr, CString};
use std::ptr;

use pourwright_ffi::*;
use serde_json::{Value, json};

use super::Seen;
use super::call::{
    BOOK, FORMULA, ORDERS, RECORD, ask, ask_book, ask_lines, ask_plan, load, plan, plan_within,
    read_plan, reopen,
};
use super::chance::{Chance, of_number, to_number};

/// What a call takes.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Kind {
    /// The place of a book, a plan or a mix: of two, two and six.
    Book,
    Plan,
    Mix,
    /// The name of a material.
    Name,
    /// Any number.
    Number,
    /// The state of a mix: 0 to 3.
    Phase,
    /// 0 to 9.
    Few,
    /// The number of bytes of the order list.
    Cut,
    /// Up to four materials: a name, five numbers, a kind.
    Materials,
}

use Kind::{Book as B, Cut, Few, Materials, Mix as M, Name, Number, Phase, Plan as P};

/// The calls, and what each takes.
const CALLS: [(&str, &[Kind]); 19] = [
    ("load", &[B]),
    ("free-book", &[B]),
    ("plan", &[B, Cut, P]),
    ("plan-within", &[B, Few, Few, Few, P]),
    ("read-plan", &[P]),
    ("free-plan", &[P]),
    ("mix-of-book", &[B, M]),
    ("mix-of-materials", &[Materials, M]),
    ("add", &[Name, Number, M]),
    ("draw", &[Number, M, M]),
    ("merge", &[M, M]),
    ("scale", &[M, Number]),
    ("volume", &[M, Phase, Number]),
    ("density", &[M, Phase, Number, Number]),
    ("free-mix", &[M]),
    ("ask-book", &[B]),
    ("ask-plan", &[P]),
    ("reopen", &[P, P]),
    ("free-error", &[]),
];

const MOST_CALLS: usize = 60;

/// Checks `{"calls": [["load", 0], ["plan", 0, 100, 1], ...]}`: the name of a call, then what it takes.
///
/// # Errors
/// A case that is not of this form.
///
/// # Panics
/// Where a call breaks the contract: a status that is not of the list, a number that is not finite, a mass that
/// appears or goes.
pub fn check(case: &Value) -> Result<Seen, String> {
    let calls = case["calls"].as_array().ok_or("no \"calls\"")?;
    if calls.len() > MOST_CALLS {
        return Err(format!("more than {MOST_CALLS} calls"));
    }
    for call in calls {
        if !is_call(call) {
            return Err(format!("not a call: {call}"));
        }
    }
    let (mut bench, mut seen) = (Bench::default(), Seen::new());
    for call in calls {
        let (name, given) = call.as_array().unwrap().split_first().unwrap();
        let name = name.as_str().unwrap();
        seen.insert(match bench.make(name, &mut Given(given.iter())) {
            POUR_OK => format!("{name}-done"),
            status => format!("{name}-refused-with-status-{status}"),
        });
    }
    Ok(seen)
}

fn is_call(call: &Value) -> bool {
    let known = CALLS.iter().find(|(name, _)| call[0] == *name);
    known.zip(call.as_array()).is_some_and(|((_, kinds), call)| {
        call.len() == kinds.len() + 1
            && kinds.iter().zip(&call[1..]).all(|(kind, value)| kind.has(value))
    })
}

impl Kind {
    /// How many there are of a kind that is a place.
    fn count(self) -> usize {
        match self {
            B | P => 2,
            M => 6,
            Phase => 4,
            Few => 10,
            _ => ORDERS.len() + 1,
        }
    }

    fn has(self, value: &Value) -> bool {
        match self {
            Name => NAMES.iter().any(|name| name.to_str() == Ok(value.as_str().unwrap_or("?"))),
            Number => to_number(value).is_some(),
            Materials => value.as_array().is_some_and(|all| {
                let is_one = |one: &Vec<Value>| {
                    let last = one.last().and_then(Value::as_i64);
                    one.len() == 7
                        && Name.has(&one[0])
                        && one[1..6].iter().all(|number| Number.has(number))
                        && last.is_some_and(|kind| i32::try_from(kind).is_ok())
                };
                all.len() <= 4 && all.iter().all(|one| one.as_array().is_some_and(is_one))
            }),
            place => value.as_u64().is_some_and(|value| value < place.count() as u64),
        }
    }

    fn any(self, chance: &mut Chance<'_>) -> Value {
        match self {
            Name => json!(chance.one_of(&NAMES).to_str().unwrap()),
            Number => of_number(chance.quantity()),
            Cut if chance.happens(5) => json!(ORDERS.len()),
            Materials => {
                let one = |chance: &mut Chance<'_>| {
                    let mut one = vec![Name.any(chance)];
                    one.extend((0..5).map(|_| of_number(chance.quantity())));
                    one.push(json!(chance.below(12)));
                    Value::from(one)
                };
                (0..chance.below(5)).map(|_| one(chance)).collect()
            }
            place => json!(chance.below(place.count())),
        }
    }
}

/// Another list: a call more or less, others in their order, other things that a call takes.
pub fn change(case: &mut Value, chance: &mut Chance<'_>) {
    let mut calls = case["calls"].as_array().cloned().unwrap_or_default();
    calls.retain(is_call);
    for _ in 0..=chance.below(4) {
        let at = chance.below(calls.len());
        match chance.below(8) {
            0 if !calls.is_empty() => drop(calls.remove(at)),
            1 if !calls.is_empty() => {
                let other = chance.below(calls.len());
                calls.swap(at, other);
            }
            2 if !calls.is_empty() => calls.push(calls[at].clone()),
            3 | 4 if calls.get(at).is_some_and(|call| call[1] != Value::Null) => {
                let (_, kinds) = CALLS.iter().find(|(name, _)| calls[at][0] == *name).unwrap();
                let place = chance.below(kinds.len());
                calls[at][place + 1] = kinds[place].any(chance);
            }
            _ => {
                let (name, kinds) = chance.one_of(&CALLS);
                let mut call = vec![json!(name)];
                call.extend(kinds.iter().map(|kind| kind.any(chance)));
                calls.insert(at, call.into());
            }
        }
    }
    calls.truncate(MOST_CALLS);
    *case = json!({ "calls": calls });
}

/// What is given to a call.
struct Given<'a>(std::slice::Iter<'a, Value>);

impl Given<'_> {
    fn place(&mut self) -> usize {
        self.0.next().unwrap().as_u64().unwrap() as usize
    }

    fn number(&mut self) -> f64 {
        to_number(self.0.next().unwrap()).unwrap()
    }

    fn name(&mut self) -> CString {
        CString::new(self.0.next().unwrap().as_str().unwrap()).unwrap()
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
    fn make(&mut self, call: &str, given: &mut Given<'_>) -> i32 {
        let before = self.mass();
        // What the call adds to the mass of all mixes; an error is kept in place of the last one.
        let (status, added) = match self.outcome(call, given) {
            Ok(added) => (POUR_OK, added),
            Err(error) => {
                let status = pour_error_status(Some(&error));
                pour_error_free(self.error.replace(error));
                (status, 0.0)
            }
        };
        let after = self.mass();
        let size = before + added.abs() + after;
        // Subnormal masses round by an absolute step.
        let rounding = 1e-12 * size + f64::MIN_POSITIVE;
        assert!((after - before - added).abs() <= rounding, "{before} {added} {after}");
        status
    }

    fn outcome(&mut self, call: &str, given: &mut Given<'_>) -> Result<f64, Box<Error>> {
        match call {
            "load" => {
                let book = load(BOOK.as_bytes())?;
                pour_book_free(self.books[given.place()].replace(book));
            }
            "free-book" => pour_book_free(self.books[given.place()].take()),
            "plan" => {
                let book = self.books[given.place()].as_deref();
                let made = plan(book, &ORDERS.as_bytes()[..given.place()])?;
                pour_plan_free(self.plans[given.place()].replace(made));
            }
            "read-plan" => {
                let (sheet, json) = read_plan(self.plans[given.place()].as_deref())?;
                assert!(sheet.contains("ORDER OF WORK") && json.starts_with('{'));
            }
            "free-plan" => pour_plan_free(self.plans[given.place()].take()),
            "mix-of-book" => {
                let book = self.books[given.place()].as_deref();
                let mix = ask(|out, error| pour_mix_of_book(book, Some(out), Some(error)))?;
                return Ok(self.put(given, mix));
            }
            "mix-of-materials" => {
                let mix = of_materials(given)?;
                return Ok(self.put(given, mix));
            }
            "add" => return self.add(given),
            "draw" => {
                let grams = given.number();
                let mix = self.mixes[given.place()].as_deref_mut();
                let drawn = ask(|out, error| pour_mix_draw(mix, grams, Some(out), Some(error)))?;
                let moved = mass(Some(&drawn));
                return Ok(self.put(given, drawn) - moved);
            }
            "merge" => return self.merge(given),
            "scale" => {
                let mix = &mut self.mixes[given.place()];
                let (was, factor) = (mass(mix.as_deref()), given.number());
                ask::<()>(|_, error| pour_mix_scale(mix.as_deref_mut(), factor, Some(error)))?;
                return Ok(was * factor - was);
            }
            "volume" => {
                let mix = self.mixes[given.place()].as_deref();
                let (phase, celsius) = (given.place() as i32, given.number());
                let volume =
                    ask(|out, error| pour_mix_volume(mix, phase, celsius, Some(out), Some(error)))?;
                assert!(volume.is_finite(), "{volume}");
            }
            "density" => {
                let mix = self.mixes[given.place()].as_deref();
                let (phase, celsius, voids) =
                    (given.place() as i32, given.number(), given.number());
                let density = ask(|out, error| {
                    pour_mix_density(mix, phase, celsius, voids, Some(out), Some(error))
                })?;
                assert!(density.is_finite(), "{density}");
            }
            "free-mix" => {
                let gone = self.mixes[given.place()].take();
                let freed = mass(gone.as_deref());
                pour_mix_free(gone);
                return Ok(-freed);
            }
            "ask-book" => {
                let book = self.books[given.place()].as_deref();
                let answer = ask_book(book, FORMULA.as_bytes())?;
                assert!(answer.starts_with("{\"result\":"), "{answer}");
                assert_eq!(ask_lines(book, FORMULA.as_bytes())?, (answer + "\n", 0));
            }
            "ask-plan" => {
                let answer = ask_plan(self.plans[given.place()].as_deref(), RECORD.as_bytes())?;
                assert!(answer.starts_with("{\"result\":"), "{answer}");
            }
            "reopen" => {
                let (_, json) = read_plan(self.plans[given.place()].as_deref())?;
                let again = reopen(json.as_bytes())?;
                pour_plan_free(self.plans[given.place()].replace(again));
            }
            "plan-within" => {
                let book = self.books[given.place()].as_deref();
                // The demo day takes five pots.
                let (pots, thousand_steps) = (given.place() as u32, given.place() as u32);
                let go_on = given.place();
                let mut asked = 0;
                let made =
                    plan_within(book, ORDERS.as_bytes(), [pots, thousand_steps], &mut || {
                        asked += 1;
                        asked > go_on
                    })?;
                assert!(pots >= 5 && thousand_steps >= 1, "{pots} {thousand_steps}");
                pour_plan_free(self.plans[given.place()].replace(made));
            }
            _ => pour_error_free(self.error.take()),
        }
        Ok(0.0)
    }

    /// Puts a mix in a place; what was there is freed.
    fn put(&mut self, given: &mut Given<'_>, mix: Box<Mix>) -> f64 {
        let put = mass(Some(&mix));
        let gone = self.mixes[given.place()].replace(mix);
        let freed = mass(gone.as_deref());
        pour_mix_free(gone);
        put - freed
    }

    fn add(&mut self, given: &mut Given<'_>) -> Result<f64, Box<Error>> {
        let (name, grams) = (given.name(), given.number());
        let mix = self.mixes[given.place()].as_deref_mut();
        // SAFETY: the name ends.
        ask::<()>(|_, error| unsafe { pour_mix_add(mix, name.as_ptr(), grams, Some(error)) })?;
        Ok(grams)
    }

    fn merge(&mut self, given: &mut Given<'_>) -> Result<f64, Box<Error>> {
        let (into, from) = (given.place(), given.place());
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
fn of_materials(given: &mut Given<'_>) -> Result<Box<Mix>, Box<Error>> {
    let list = given.0.next().unwrap().as_array().unwrap();
    let mut lists: Vec<Given<'_>> =
        list.iter().map(|one| Given(one.as_array().unwrap().iter())).collect();
    let names: Vec<CString> = lists.iter_mut().map(Given::name).collect();
    let materials: Vec<Material> = lists
        .iter_mut()
        .zip(&names)
        .map(|(given, name)| Material {
            size: size_of::<Material>(),
            name: name.as_ptr(),
            density_g_per_ml: given.number(),
            fused_g_per_ml: given.number(),
            as_scooped_g_per_ml: given.number(),
            drop_mass_g: given.number(),
            expansion_per_kelvin: given.number(),
            kind: given.place() as i32,
        })
        .collect();
    let count = materials.len();
    // SAFETY: an array of so many, whose names live until the call ends.
    ask(|out, error| unsafe {
        pour_mix_of_materials(materials.as_ptr(), count, Some(out), Some(error))
    })
}

//! A text as an amount: shown and read again, in every unit and every measuring system.

use std::ffi::CString;

use pourwright::fault::Diagnose;
use pourwright::quantity::{Amount, MeasuredAmount, System, Unit};
use pourwright::request::answer_text;
use pourwright_ffi::*;
use pourwright_tests::reference::amount;
use serde_json::{Value, json};

use super::Seen;
use super::call::ask;
use super::chance::Chance;

/// Checks `{"text": ...}`.
///
/// # Errors
/// A case that is not of this form.
///
/// # Panics
/// Where what is shown is not read as the same, or the doors answer differently.
pub fn check(case: &Value) -> Result<Seen, String> {
    let text = case["text"].as_str().ok_or("no \"text\"")?;
    let mut seen = Seen::new();
    match MeasuredAmount::parse(text) {
        Ok(measured) => {
            seen.insert("measured".to_owned());
            let shown = measured.to_string();
            assert_eq!(MeasuredAmount::parse(&shown), Ok(measured), "{text} is shown as {shown}");
        }
        Err(error) => {
            assert!(!error.to_string().is_empty());
            seen.insert(format!("measured-{}", error.code()));
        }
    }
    match Amount::parse(text) {
        Ok(amount) => {
            seen.insert(format!("in-{}", amount.unit()));
            in_all_units(amount, text);
        }
        Err(error) => drop(seen.insert(error.code().to_owned())),
    }
    for system in System::ALL {
        as_others_read_it(text, system);
        for to in ["mL", "g", "[tsp_us]", "°C", "g/mL", "[drp]", "piece", "%"] {
            through_the_doors(text, to, system);
        }
    }
    Ok(seen)
}

/// What is shown in any unit is read as the same, and is the same when it comes back.
fn in_all_units(amount: Amount, text: &str) {
    same(amount);
    for system in System::ALL {
        for unit in Unit::all().filter(|unit| unit.dimension() == amount.dimension()) {
            if let Ok(there) = amount.in_unit(unit, system) {
                same(there);
                if let Ok(back) = there.in_unit(amount.unit(), system) {
                    assert_eq!(back, amount, "{text} to {unit} in {system}");
                }
            }
        }
    }
}

/// What is shown is read as the same.
fn same(amount: Amount) {
    let shown = amount.to_string();
    assert_eq!(Amount::parse(&shown), Ok(amount), "{shown}");
}

/// A volume that the readable implementation can read has the same size there.
fn as_others_read_it(text: &str, system: System) {
    let Ok(read) = Amount::parse(text) else { return };
    let Some((number, unit)) = amount::number(text) else { return };
    let Some(size) = amount::household_ml(unit.trim(), system.name()) else { return };
    if let Ok(found) = read.in_unit(Unit::MILLILITER, system) {
        let (found, wanted) = (found.value().to_f64(), number * size);
        assert!((found - wanted).abs() <= 1e-12 * wanted, "{text} in {system}: {found}, {wanted}");
    }
}

/// The request and the C call answer alike, to the bit; the amount of the answer is read as its value.
fn through_the_doors(text: &str, to: &str, system: System) {
    let request =
        json!({ "calculate": "convert", "amount": text, "to": to, "measures": system.name() });
    let answer: Value = serde_json::from_str(&answer_text(&request.to_string())).unwrap();
    let Ok(c_text) = CString::new(text) else {
        assert!(answer["faults"].is_array(), "{answer}");
        return;
    };
    let c_to = CString::new(to).unwrap();
    let place = System::ALL.iter().position(|other| *other == system).unwrap() as i32 + 1;
    // SAFETY: both texts end.
    let found = ask(|out, error| unsafe {
        pour_convert(c_text.as_ptr(), c_to.as_ptr(), place, Some(out), Some(error))
    });
    match found {
        Ok(found) => {
            let result = &answer["result"];
            let value = result["value"].as_f64().unwrap_or_else(|| panic!("{text}: {answer}"));
            assert_eq!(value.to_bits(), found.to_bits(), "{text} to {to}: {answer}");
            let shown = result["amount"].as_str().unwrap();
            let again = Amount::parse(shown).unwrap_or_else(|error| panic!("{shown}: {error}"));
            assert_eq!(again.value().to_f64().to_bits(), found.to_bits(), "{text}: {answer}");
        }
        Err(_) => assert!(answer["faults"].is_array(), "{text} to {to}: {answer}"),
    }
}

/// Numbers as people write them.
const NUMBERS: [&str; 24] = [
    "1",
    "0",
    "1/4",
    "1 1/4",
    "¼",
    "1¼",
    "⅓",
    "2.5",
    ".5",
    "1.",
    "1,25",
    "1,000",
    "-1",
    "1e3",
    "1e-30",
    "40",
    "0.035",
    "1/1000000007",
    "170141183460469231731687303715884105727",
    "1/0",
    "3 3/3",
    "²",
    "1_0",
    "0.1000000000000000055511151231257827",
];

const WORDS: [&str; 44] = [
    "cup",
    "cups",
    "tsp",
    "tbsp",
    "fl oz",
    "oz",
    "oz wt",
    "oz av",
    "lb",
    "g",
    "kg",
    "mg",
    "mL",
    "ml",
    "L",
    "drops",
    "drop",
    "[drp]",
    "[cup_us]",
    "[tsp_us]",
    "[foz_us]",
    "[in_i'Hg]",
    "°F",
    "°C",
    "K",
    "2.K",
    "g/mL",
    "kg/m3",
    "1/K",
    "% of base",
    "% of finished",
    "% of base by volume",
    "ppm of base",
    "%",
    "in",
    "mil",
    "mm",
    "pieces",
    "s",
    "min",
    "kPa",
    "inHg",
    "J/(g.K)",
    "T",
];

const BEFORE: [&str; 8] = ["", "US ", "metric ", "imperial ", "label ", " ", "us-label ", "m"];

const BEHIND: [&str; 10] =
    ["", " ± 0.01", " ± 2 %", " ± 1 g", " ± 0.1 (k=2)", " ± 1 (interval)", "±", " +- 1", ".", " "];

/// Another text: put together of what people write, or a few characters changed.
pub fn change(case: &mut Value, chance: &mut Chance<'_>) {
    let text = case["text"].as_str().unwrap_or_default().to_owned();
    let other = if chance.happens(5) {
        let mut bytes = text.into_bytes();
        chance.change_text(&mut bytes);
        String::from_utf8_lossy(&bytes).into_owned()
    } else {
        let mut number = (*chance.one_of(&NUMBERS)).to_owned();
        if chance.happens(4) {
            number = format!("{}", chance.below(1_000_000) as f64 / 1000.0);
        }
        let space = *chance.one_of(&[" ", " ", "", "\u{a0}"]);
        let mut unit = format!("{}{}", chance.one_of(&BEFORE), chance.one_of(&WORDS));
        if chance.happens(2) {
            unit = format!(
                "{unit}{}{}",
                chance.one_of(&["/", ".", "2", "-1", "/("]),
                chance.one_of(&WORDS)
            );
        }
        format!("{number}{space}{unit}{}", chance.one_of(&BEHIND))
    };
    *case = json!({ "text": other });
}

//! What the table, its texts and its messages say of a range is one and the same.

use std::string::{String, ToString};
use std::vec::Vec;

use super::{Parameter, PlainUnit, Range};

/// The numbers of a text, as they are written.
fn numbers(text: &str) -> Vec<f64> {
    let is_end = |sign: char| !(sign.is_ascii_alphanumeric() || matches!(sign, '-' | '.'));
    text.split(is_end).filter_map(|word| word.trim_end_matches('.').parse().ok()).collect()
}

/// Numbers outside of a range: near it and far away.
fn outside(range: Range) -> Vec<f64> {
    let Range { least, most, .. } = range;
    let near = |bound: f64| {
        [1e-11, 1e-9, 1e-3].map(|part| part * if bound == 0.0 { 1.0 } else { bound.abs() })
    };
    let below = near(least).map(|step| least - step);
    let above = near(most).map(|step| most + step);
    let far = [f64::MAX, f64::MIN, -5e-324, 5e-324, 1e16, -1e16, 1e300, least, most];
    let all = below.into_iter().chain(above).chain(far);
    all.filter(|number| !range.holds(*number)).collect()
}

fn ranges() -> impl Iterator<Item = (Parameter, Range)> {
    Parameter::ALL.iter().filter_map(|parameter| Some((*parameter, parameter.range()?)))
}

/// Every message about a range has both bounds, those of the table, and is true: the number that it shows is outside of them.
#[test]
fn a_message_has_both_bounds_of_the_table() {
    for (parameter, range) in ranges() {
        let unit = if parameter.is_list() { PlainUnit::Count } else { parameter.unit() };
        let mut refused = 0;
        for number in outside(range) {
            let checked = match parameter.is_list() {
                // The number of its entries.
                true if number < 0.0 || number.fract() != 0.0 => continue,
                true => {
                    let mut check = super::Check::new();
                    check.count(parameter, number.min(1e9) as usize);
                    check.finish().map_err(|errors| errors.to_string())
                }
                // Too large for a double in SI units.
                false if !unit.to_si(number).is_finite() => continue,
                false => parameter
                    .check_si(unit.to_si(number))
                    .map(|_| ())
                    .map_err(|error| error.to_string()),
            };
            // What the rounding of a unit does to a bound is no fault.
            let Err(message) = checked else { continue };
            refused += 1;
            let (found, allowed) = message.split_once("; it must ").expect(&message);
            assert_eq!(
                numbers(allowed).get(..2),
                Some([range.least, range.most].as_slice()),
                "{message}"
            );
            let shown = numbers(found).last().copied().expect(&message);
            assert!(!range.holds(shown), "{message}");
            assert_eq!(allowed.contains("above "), range.above, "{message}");
            assert_eq!(allowed.contains("below "), range.below, "{message}");
        }
        assert!(refused >= if parameter.is_list() { 2 } else { 8 }, "{parameter}: {refused}");
    }
}

/// No number of a message has a row of digits, however large or small it is.
#[test]
fn no_message_has_a_row_of_digits() {
    for (parameter, range) in ranges() {
        for number in outside(range) {
            let Err(error) = parameter.check_si(number) else { continue };
            let message = error.to_string();
            let longest = message.split(|sign: char| !sign.is_ascii_digit()).map(str::len).max();
            // Seventeen digits and the zeros before them.
            assert!(longest <= Some(22), "{message}");
        }
    }
}

/// The texts of the table, from which headers and docs are made, have both bounds too.
#[test]
fn a_text_has_both_bounds_of_the_table() {
    for (parameter, range) in ranges() {
        let text = parameter.range_text();
        assert_eq!(numbers(text), [range.least, range.most], "{parameter}: {text}");
        assert_eq!(text.contains("above "), range.above, "{parameter}: {text}");
        assert_eq!(text.contains("below "), range.below, "{parameter}: {text}");
        assert!(parameter.text().contains(text), "{parameter}");
    }
}

/// A quantity has the same bounds wherever it is asked for; what has others is another quantity, and is listed here.
#[test]
fn one_quantity_has_one_range() {
    use PlainUnit::{Celsius, Gram, GramPerMilliliter, JoulePerGramKelvin, Milliliter};
    // What may be zero, what may not, and the largest.
    let common = [
        (Gram, 0.0, 1e-12, 1e15),
        (Milliliter, 0.0, 1e-9, 1e15),
        (GramPerMilliliter, 0.0, 0.001, 25.0),
        (Celsius, -73.0, -73.0, 427.0),
        (JoulePerGramKelvin, 0.1, 0.1, 10.0),
    ];
    let others = [
        // A dish; liquid water; boiling water under vacuum; what is hot.
        Parameter::TestPiece,
        Parameter::WaterTemperature,
        Parameter::DampAt,
        Parameter::ShotTemperature,
    ];
    let mut odd = Vec::new();
    for (parameter, range) in ranges().filter(|(parameter, _)| !parameter.is_list()) {
        let quantity = common.iter().find(|(unit, ..)| *unit == parameter.unit());
        let Some((_, zero, least, most)) = quantity else { continue };
        if range.most != *most
            || ![zero, least].contains(&&range.least)
            || range.above
            || range.below
        {
            odd.push(parameter);
        }
    }
    odd.sort_unstable_by_key(|parameter| others.iter().position(|other| other == parameter));
    assert_eq!(odd, others);
    // Hotter than the others begin with, and as hot as they end.
    let shot = Parameter::ShotTemperature.range().expect("it has one");
    assert_eq!((shot.least, shot.most), (20.0, 427.0));
    assert_eq!(String::from("-73 to 427"), Parameter::Temperature.range_text());
}

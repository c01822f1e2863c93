use std::collections::BTreeSet;
use std::string::String;
use std::vec::Vec;

use super::*;
use crate::parameter::{IfOmitted, Parameter, PlainUnit};

mod by_name;
mod typed_tests;

#[test]
fn each_example_gives_its_answer() {
    let (mut results, mut wrong) = (Vec::new(), Vec::new());
    for calculation in CALCULATIONS {
        let example = calculation.example();
        let answer = calculation.evaluate(&example.arguments, &mut results);
        assert_eq!(answer, Ok(()), "{calculation:?}");
        assert_eq!(results.len(), example.results.len(), "{calculation:?}");
        for ((found, wanted), of) in results.iter().zip(&example.results).zip(calculation.results) {
            if !is_close(found, wanted) {
                wrong.push(std::format!("{calculation:?}: {} {found:?}, not {wanted:?}", of.name));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// Equal, but for what rounding does to the last digits of a number: examples are written as a person has them.
fn is_close(found: &Value, wanted: &Value) -> bool {
    match (found, wanted) {
        (Value::Number(found), Value::Number(wanted)) => {
            (found - wanted).abs() <= 1e-9 * wanted.abs()
        }
        _ => found == wanted,
    }
}

/// The name of a plain field is that of its parameter with the suffix of its unit; what may be omitted has a default.
#[test]
fn names_and_defaults_follow_from_the_parameters() {
    for calculation in CALCULATIONS {
        let mut seen = BTreeSet::new();
        let mut optional = false;
        for field in calculation.parameters {
            let parameter = field.parameter;
            let name = String::from(parameter.name()) + parameter.unit().suffix();
            assert_eq!(field.field, name, "{calculation:?}");
            assert!(seen.insert(parameter), "{calculation:?} takes {name} twice");
            assert!(field.optional || !optional, "{calculation:?}: {name} must come first");
            optional = field.optional;
            assert_eq!(field.optional, field.if_omitted() != IfOmitted::Required);
            assert_eq!(
                parameter.is_list(),
                matches!(field.kind, ValueKind::List | ValueKind::Rows(_))
            );
            if let ValueKind::Rows(columns) = field.kind {
                assert_eq!(columns, parameter.columns().len(), "{calculation:?}: {name}");
            }
            assert_eq!(matches!(field.kind, ValueKind::Word { .. }), !parameter.words().is_empty());
        }
        for result in calculation.results {
            let name = String::from(result.name) + result.unit.suffix();
            assert_eq!(result.field, name, "{calculation:?}");
            assert_eq!(matches!(result.kind, ValueKind::Word { .. }), !result.words().is_empty());
            assert!(result.meaning.trim().ends_with('.'), "{calculation:?}: {name}");
        }
        assert!(calculation.summary().ends_with('.'), "{}", calculation.summary());
    }
}

/// The numbers just outside the range of `parameter`, each with how it is refused.
fn outside(parameter: Parameter) -> Vec<(f64, &'static str)> {
    let mut outside = Vec::from([(f64::NAN, "not-finite"), (f64::INFINITY, "not-finite")]);
    if let Some(range) = parameter.range() {
        let step = |bound: f64| match parameter.unit() {
            PlainUnit::Count => 1.0,
            // Kept in kelvins, whose last digits are coarser.
            PlainUnit::Celsius => 1e-6,
            _ => 1e-9 * if bound == 0.0 { 1.0 } else { bound.abs() },
        };
        let least = if range.above { range.least } else { range.least - step(range.least) };
        let most = if range.below { range.most } else { range.most + step(range.most) };
        outside.extend([(least, "out-of-range"), (most, "out-of-range")]);
    }
    outside
}

/// Refuses `arguments` with one reason, which is about `parameter` with this code.
fn refuses(
    calculation: &Calculation,
    arguments: &[Argument<'_>],
    parameter: Parameter,
    code: &str,
) {
    let mut results = Vec::new();
    let Err(refused) = calculation.evaluate(arguments, &mut results) else {
        panic!("{calculation:?} answers {arguments:?}, with {parameter} {code}");
    };
    let found: Vec<_> = refused.reasons().map(|reason| (reason.parameter, reason.code)).collect();
    assert!(
        found.contains(&(Some(parameter), code)),
        "{calculation:?} {} {code}: {found:?} {refused}",
        parameter.name()
    );
    assert!(results.is_empty());
}

/// Every number of every calculation, just outside each of its bounds, is refused by its own parameter with one code; so
/// is one that is missing, of the wrong type, or not finite.
#[test]
fn every_number_outside_its_range_is_refused_at_its_parameter() {
    for calculation in CALCULATIONS {
        let example = calculation.example().arguments;
        for (place, field) in calculation.parameters.iter().enumerate() {
            let parameter = field.parameter;
            let with = |argument| {
                let mut arguments = example.clone();
                arguments[place] = argument;
                arguments
            };
            if !field.optional {
                refuses(calculation, &with(Argument::Omitted), parameter, "missing-field");
            }
            match field.kind {
                ValueKind::Number => {
                    refuses(calculation, &with(Argument::Text("1")), parameter, "wrong-type");
                    for (number, code) in outside(parameter) {
                        refuses(calculation, &with(Argument::Number(number)), parameter, code);
                    }
                }
                ValueKind::Count => {
                    refuses(calculation, &with(Argument::Number(1.5)), parameter, "wrong-type");
                    let range = parameter.range().unwrap();
                    for number in [range.least - 1.0, range.most + 1.0] {
                        let argument = Argument::Number(number);
                        refuses(calculation, &with(argument), parameter, "out-of-range");
                    }
                }
                ValueKind::Word { .. } => {
                    let argument = Argument::Text("no such word");
                    refuses(calculation, &with(argument), parameter, "unknown-word");
                    let argument = Argument::Number(0.0);
                    refuses(calculation, &with(argument), parameter, "out-of-range");
                }
                ValueKind::Text => {
                    refuses(calculation, &with(Argument::Number(1.0)), parameter, "wrong-type");
                }
                ValueKind::List | ValueKind::Rows(_) => {
                    let columns = parameter.columns();
                    let Argument::Numbers(rows) = example[place] else { continue };
                    let range = parameter.range().unwrap();
                    if range.least > 1.0 {
                        let short = &rows[..columns.len()];
                        let argument = Argument::Numbers(short);
                        refuses(calculation, &with(argument), parameter, "out-of-range");
                    }
                    for (column, of_column) in columns.iter().enumerate() {
                        for (number, code) in outside(*of_column) {
                            let mut rows = rows.to_vec();
                            rows[column] = number;
                            let mut arguments = example.clone();
                            arguments[place] = Argument::Numbers(&rows);
                            refuses(calculation, &arguments, *of_column, code);
                        }
                    }
                }
            }
        }
    }
}

/// All numbers that are out of their ranges are reported together.
#[test]
fn all_errors_are_reported_together() {
    for calculation in CALCULATIONS {
        let mut arguments = calculation.example().arguments;
        let mut wrong = BTreeSet::new();
        for (place, (argument, field)) in
            (2_u32..).zip(arguments.iter_mut().zip(calculation.parameters))
        {
            let outside = matches!(argument, Argument::Number(_)).then(|| field.parameter.range());
            if let (ValueKind::Number, Some(Some(range))) = (field.kind, outside) {
                *argument = Argument::Number(f64::from(place) * range.most + 1.0);
                wrong.insert(field.parameter);
            }
        }
        if wrong.is_empty() {
            continue;
        }
        let refused = calculation.evaluate(&arguments, &mut Vec::new()).unwrap_err();
        let found: BTreeSet<Parameter> =
            refused.reasons().filter_map(|reason| reason.parameter).collect();
        assert_eq!(found, wrong, "{calculation:?}: {refused}");
    }
}

#[test]
fn names_are_unique() {
    let names: BTreeSet<&str> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert_eq!(names.len(), CALCULATIONS.len());
    assert!(find("piece_mass").is_some() && find("piece_weight").is_none());
}

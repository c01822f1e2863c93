use std::collections::BTreeSet;
use std::string::String;
use std::vec::Vec;

use super::*;
use crate::parameter::IfOmitted;

#[test]
fn each_example_gives_its_answer() {
    let mut results = Vec::new();
    for calculation in CALCULATIONS {
        let example = calculation.example();
        let answer = calculation.evaluate(&example.arguments, &mut results);
        assert_eq!(answer, Ok(()), "{calculation:?}");
        for (found, wanted) in results.iter().zip(&example.results) {
            assert!(is_close(found, wanted), "{calculation:?}: {found:?}, not {wanted:?}");
        }
        assert_eq!(results.len(), example.results.len(), "{calculation:?}");
    }
}

/// Equal, but for what rounding does to the last digits of a number: examples are written as a person has them.
fn is_close(found: &Value, wanted: &Value) -> bool {
    match (found, wanted) {
        (Value::Number(found), Value::Number(wanted)) => (found - wanted).abs() <= 1e-9 * wanted.abs(),
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
            if field.optional {
                assert_ne!(parameter.if_omitted(), IfOmitted::Required, "{calculation:?}: {name}");
            }
            assert_eq!(parameter.is_list(), matches!(field.kind, Kind::List | Kind::Rows(_)));
            if let Kind::Rows(columns) = field.kind {
                assert_eq!(columns, parameter.columns().len(), "{calculation:?}: {name}");
            }
            assert_eq!(matches!(field.kind, Kind::Word { .. }), !parameter.words().is_empty());
        }
        for result in calculation.results {
            let name = String::from(result.name) + result.unit.suffix();
            assert_eq!(result.field, name, "{calculation:?}");
            assert!(result.meaning.trim().ends_with('.'), "{calculation:?}: {name}");
        }
        assert!(calculation.summary().ends_with('.'), "{}", calculation.summary());
    }
}

#[test]
fn names_are_told_apart() {
    let names: BTreeSet<&str> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert_eq!(names.len(), CALCULATIONS.len());
    assert!(find("piece_mass").is_some() && find("piece_weight").is_none());
}

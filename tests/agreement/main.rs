//! The request door and the plain numbers agree, over the whole table of calculations.
//!
//! Each calculation that names a request is called with random numbers around those of the table's examples, each optional
//! one given or omitted by chance: both doors answer, with the same numbers, or both refuse, with the same codes. A number
//! outside the range of its parameter gets the code `out-of-range` at both doors, and the request's path is the field of
//! that parameter.
//!
//! A request reads a decimal text exactly and rounds once, where a plain number is rounded before it is converted: each
//! number that goes in differs by at most one unit in the last place, and each that comes out by one more. Differences of
//! nearly equal numbers, as in the salt for a density, make more of that: results agree within 1e-13 relative to the
//! largest number of the answer, a few hundred units.
//!
//! These have no request, each for a reason:
//! - `convert_number`, `mass_of_volume`, `volume_of_mass`, `density_of_parts`: an amount has its unit with it, and a material
//!   its density; `convert`, `dose` and `mix` answer these.
//! - `piece_mass`: a part of `shot`.
//! - `base_to_mark`, `least_pot`: a part of a plan, which knows cups and doses.
//! - `salted_softener`: its points are in no document.
//!
//! These have a request that answers another question:
//! - `salt_reach`: the request shows what is in reach in the fault of a loading that is not.
//! - `bench_measure`: the request chooses by the formula's own measure and by how sure each tool is.
//! - `reject_rate` (`record`) and `price` (`cost`): a part of an answer about a book.
//!
//! Not compared: those of the heat, the clock and the settling (`OF_A_PROCESS`).

mod doors;
mod random;

use std::collections::BTreeSet;

use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::request;
use pourwright::table::{Argument, CALCULATIONS, Calculation, Value, ValueKind};

use doors::{Door, door};
use random::Numbers;

/// Without a request.
const PLAIN_ALONE: [&str; 8] = [
    "convert_number",
    "mass_of_volume",
    "volume_of_mass",
    "density_of_parts",
    "piece_mass",
    "base_to_mark",
    "least_pot",
    "salted_softener",
];

/// With a request that answers another question.
const ANOTHER_QUESTION: [&str; 4] = ["salt_reach", "bench_measure", "reject_rate", "price"];

#[test]
fn each_calculation_has_a_request_or_a_reason() {
    let alone: Vec<&str> =
        CALCULATIONS.iter().filter(|it| it.request.is_none()).map(|it| it.name).collect();
    assert_eq!(BTreeSet::from_iter(alone), BTreeSet::from(PLAIN_ALONE));
    for calculation in CALCULATIONS {
        let Some(request) = calculation.request else { continue };
        assert!(request::CALCULATIONS.contains(&request), "{calculation:?}");
        let compared = door(calculation.name).is_some();
        let mut others = ANOTHER_QUESTION.iter().chain(&OF_A_PROCESS);
        assert_ne!(compared, others.any(|name| *name == calculation.name), "{calculation:?}");
    }
}

/// With a request that takes the shop's timings, watched pots and runs of shots as objects of a book; not compared here.
const OF_A_PROCESS: [&str; 7] = [
    "heat_time",
    "next_burst",
    "stays_hot",
    "pot_heats",
    "setting_time",
    "stir_every",
    "viscosity_of_ball",
];

/// The codes and the numbers of a call.
type Answer = Result<Vec<Option<f64>>, BTreeSet<String>>;

fn plain(calculation: &Calculation, arguments: &[Argument<'_>], door: &Door) -> Answer {
    let mut results = Vec::new();
    match calculation.evaluate(arguments, &mut results) {
        Err(refusal) => Err(refusal.reasons().map(|reason| reason.code.to_owned()).collect()),
        Ok(()) => Ok(door
            .results
            .iter()
            .map(|(name, _)| {
                let place = calculation.results.iter().position(|result| result.name == *name);
                match &results[place.unwrap_or_else(|| panic!("{calculation:?} gives no {name}"))] {
                    Value::Number(number) => Some(*number),
                    Value::Word(word) => Some(doors::number_of_word(word)),
                    _ => None,
                }
            })
            .collect()),
    }
}

fn asked(calculation: &Calculation, arguments: &[Argument<'_>], door: &Door) -> Answer {
    let request = door.request(calculation, arguments);
    let answer = request::answer_value(&request);
    if let Some(faults) = answer["faults"].as_array() {
        return Err(faults.iter().map(|fault| fault["code"].as_str().unwrap().into()).collect());
    }
    let named = doors::named(calculation, arguments);
    let at = |pointer| door.number(&answer["result"], pointer, &named);
    let found: Vec<_> = door.results.iter().map(|(_, pointer)| at(pointer)).collect();
    // A request answers a loading in all forms that it can.
    if calculation.name == "salt_convert" && found == [None] {
        return Err(BTreeSet::from(["needs-other".into()]));
    }
    Ok(found)
}

fn agree(found: &Answer, wanted: &Answer) -> bool {
    let (found, wanted) = match (found, wanted) {
        (Ok(found), Ok(wanted)) => (found, wanted),
        (found, wanted) => return found == wanted,
    };
    let largest = wanted.iter().flatten().fold(0.0_f64, |largest, it| largest.max(it.abs()));
    found.len() == wanted.len()
        && found.iter().zip(wanted).all(|(found, wanted)| match (found, wanted) {
            (Some(found), Some(wanted)) => (found - wanted).abs() <= 1e-13 * largest,
            (found, wanted) => found == wanted,
        })
}

#[test]
fn random_numbers_and_omitted_ones_agree() {
    const CALLS: u32 = 300;
    for calculation in CALCULATIONS {
        let Some(door) = door(calculation.name) else { continue };
        let (mut answered, mut omitted) = (0, BTreeSet::new());
        for call in 0..CALLS {
            let numbers = Numbers::new(calculation, call, door);
            let arguments = numbers.arguments();
            let wanted = plain(calculation, &arguments, door);
            let found = asked(calculation, &arguments, door);
            assert!(
                agree(&found, &wanted),
                "{calculation:?} {arguments:?}\nasked: {found:?}\nplain: {wanted:?}\n{}",
                door.request(calculation, &arguments)
            );
            if wanted.is_ok() {
                answered += 1;
                for (argument, field) in arguments.iter().zip(calculation.parameters) {
                    if *argument == Argument::Omitted {
                        omitted.insert(field.parameter);
                    }
                }
            }
        }
        assert!(answered >= CALLS / 4, "{calculation:?} answers {answered} of {CALLS}");
        for field in calculation.parameters.iter().filter(|field| field.optional) {
            // What is as dense hot as cold does not contract, and its feed is not known.
            let told = omitted.contains(&field.parameter)
                || (calculation.name, field.parameter)
                    == ("feed_of_weights", Parameter::HotDensity);
            assert!(told, "{calculation:?} never without {}", field.parameter);
        }
    }
}

/// Just outside the range of `parameter`: below and above, where a request can write it.
fn outside(parameter: Parameter) -> Vec<f64> {
    let Some(range) = parameter.range() else { return Vec::new() };
    let step = |bound: f64| match parameter.unit() {
        PlainUnit::Count => 1.0,
        PlainUnit::Celsius => 1e-6,
        _ => 1e-6 * if bound == 0.0 { 1.0 } else { bound.abs() },
    };
    let least = if range.above { range.least } else { range.least - step(range.least) };
    let most = if range.below { range.most } else { range.most + step(range.most) };
    Vec::from([least, most])
}

#[test]
fn what_is_out_of_range_has_one_code_and_its_own_path() {
    for calculation in CALCULATIONS {
        let Some(door) = door(calculation.name) else { continue };
        for (place, field) in calculation.parameters.iter().enumerate() {
            let parameter = field.parameter;
            let number = matches!(field.kind, ValueKind::Number | ValueKind::Count);
            if !number || !door.takes(parameter) {
                continue;
            }
            for number in outside(parameter) {
                if field.kind == ValueKind::Count && number < 0.0 {
                    continue;
                }
                // With all others as in a call that is answered.
                let numbers = (0..1000)
                    .map(|call| Numbers::new(calculation, call, door))
                    .find(|numbers| {
                        let arguments = numbers.arguments();
                        arguments[place] != Argument::Omitted
                            && plain(calculation, &arguments, door).is_ok()
                    })
                    .unwrap_or_else(|| {
                        panic!("{calculation:?} with {parameter} is never answered")
                    });
                let mut arguments = numbers.arguments();
                arguments[place] = Argument::Number(number);
                let refused = plain(calculation, &arguments, door).expect_err("out of range");
                assert!(
                    refused.contains("out-of-range"),
                    "{calculation:?} {parameter}: {refused:?}"
                );
                let named = doors::named(calculation, &arguments);
                let Some(pointer) = door.pointer(parameter, &named) else { continue };
                // What is written behind ± is a part of an amount, not a field.
                if pointer.ends_with("/uncertainty") {
                    continue;
                }
                let request = door.request(calculation, &arguments);
                let answer = request::answer_value(&request);
                let faults = answer["faults"].as_array().unwrap_or_else(|| {
                    panic!("{calculation:?} answers {parameter} = {number}: {request}")
                });
                let told = faults
                    .iter()
                    .any(|fault| fault["code"] == "out-of-range" && fault["path"] == pointer);
                assert!(told, "{calculation:?} {parameter} = {number}: {answer}\n{request}");
            }
        }
    }
}

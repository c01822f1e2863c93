//! Every calculation of the table through its exports: its example to the bit, any arguments as the table itself answers
//! them, and columns as single calls.

mod by_name;
#[rustfmt::skip] // as the generator writes it
mod calls;
mod scattered;

use std::alloc::{GlobalAlloc, Layout, System};
use std::cell::Cell;
use std::mem::MaybeUninit;
use std::ptr;

use by_name::Outcome;
use pourwright::parameter::{Parameter, Range};
use pourwright::table::{
    self, Argument, CALCULATIONS, Calculation, ParameterField, Value, ValueKind,
};
use pourwright_ffi::*;
use proptest::prelude::*;
use proptest::strategy::ValueTree;
use proptest::test_runner::TestRunner;
use scattered::{NAN, Scattered, place_of, words_of};

struct Counting;

thread_local! {
    static ALLOCATIONS: Cell<usize> = const { Cell::new(0) };
}

// SAFETY: every call goes to the system's allocator unchanged.
unsafe impl GlobalAlloc for Counting {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        ALLOCATIONS.set(ALLOCATIONS.get() + 1);
        // SAFETY: as the caller asks.
        unsafe { System.alloc(layout) }
    }

    unsafe fn dealloc(&self, pointer: *mut u8, layout: Layout) {
        // SAFETY: as the caller asks.
        unsafe { System.dealloc(pointer, layout) }
    }
}

#[global_allocator]
static COUNTING: Counting = Counting;

/// How many random calls each calculation gets.
const CASES: u32 = 300;

/// The answer of the table itself.
fn wanted(calculation: &Calculation, arguments: &[Argument<'_>]) -> Outcome {
    let mut results = Vec::new();
    match calculation.evaluate(arguments, &mut results) {
        Ok(()) => Ok(results),
        Err(refusal) => Err(refusal
            .reasons()
            .map(|reason| (reason.code.to_owned(), calculation.path(&reason, |field| field.field)))
            .collect()),
    }
}

/// Values with their bits, so that -0 is not 0.
fn bits(outcome: Outcome) -> Result<Vec<String>, Vec<(String, String)>> {
    let one = |value: &Value| match value {
        Value::Number(number) => format!("{number:?} {:x}", number.to_bits()),
        other => format!("{other:?}"),
    };
    outcome.map(|values| values.iter().map(one).collect())
}

#[test]
fn every_calculation_has_its_call() {
    let names: Vec<&str> = calls::CALLS.iter().map(|(name, _)| *name).collect();
    let wanted: Vec<&str> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    assert_eq!(names, wanted);
}

#[test]
fn each_example_gives_its_answer() {
    for (name, call) in calls::CALLS {
        let calculation = table::find(name).unwrap();
        let example = calculation.example();
        let found = call(&example.arguments);
        assert_eq!(bits(found.clone()), bits(wanted(calculation, &example.arguments)), "{name}");
        // The table has its answers as a person writes them; that they are near is tested there.
        assert_eq!(found.unwrap().len(), example.results.len(), "{name}");
    }
}

/// A call that is answered allocates nothing, unless it takes lists or texts.
#[test]
fn calls_that_are_answered_allocate_nothing() {
    let input = pour_shot_fill_input {
        size: size_of::<pour_shot_fill_input>(),
        cavities: 4,
        cavity_volume_ml: 10.0,
        cold_density_g_per_ml: 1.05,
        hot_density_g_per_ml: POUR_OMITTED,
        voids: POUR_OMITTED,
        feed: POUR_OMITTED,
        sprue_volume_ml: POUR_OMITTED,
        topped_mass_g: POUR_OMITTED,
        layer_share: POUR_OMITTED,
    };
    let (mut mass, mut piece, mut shot) =
        (MaybeUninit::uninit(), MaybeUninit::uninit(), MaybeUninit::uninit());
    let before = ALLOCATIONS.get();
    let found = [
        pour_mass_of_volume(59.0, 1.22, Some(&mut mass), None),
        pour_piece_mass(9.5, 1.03, 0.95, 0.01, POUR_OMITTED, Some(&mut piece), None),
        // SAFETY: an input that begins with its size.
        unsafe { pour_shot_fill(&raw const input, Some(&mut shot), None) },
    ];
    assert_eq!((found, ALLOCATIONS.get()), ([POUR_OK; 3], before));
}

/// A required parameter that is omitted is missing, and nothing else is wrong.
#[test]
fn what_must_be_given_is_missing_where_it_is_omitted() {
    for (name, call) in calls::CALLS {
        let calculation = table::find(name).unwrap();
        for (place, field) in calculation.parameters.iter().enumerate() {
            if field.optional {
                continue;
            }
            let mut arguments = calculation.example().arguments;
            arguments[place] = Argument::Omitted;
            let missing = vec![("missing-field".to_owned(), format!("/{}", field.field))];
            assert_eq!(call(&arguments), Err(missing), "{name}: {}", field.field);
        }
    }
}

/// Just outside the range at either end, and NaN: a fault at that very parameter.
#[test]
fn numbers_outside_their_range_are_refused_at_their_parameter() {
    let mut accepted = Vec::new();
    for (name, call) in calls::CALLS {
        let calculation = table::find(name).unwrap();
        for (place, field) in calculation.parameters.iter().enumerate() {
            let bad = match (field.kind, field.parameter.range()) {
                (ValueKind::Number, Some(range)) => outside(range).to_vec(),
                (ValueKind::Count, Some(range)) => {
                    let [below, above] = [range.least - 1.0, range.most + 1.0];
                    [below, above].into_iter().filter(|count| *count >= 0.0).collect()
                }
                _ => continue,
            };
            for number in bad {
                let code = if number.is_nan() { "not-finite" } else { "out-of-range" };
                let mut arguments = calculation.example().arguments;
                arguments[place] = Argument::Number(number);
                let found = call(&arguments);
                let fault = (code.to_owned(), format!("/{}", field.field));
                if !found.as_ref().is_err_and(|faults| faults.contains(&fault)) {
                    accepted.push(format!("{name}: {number} gives {found:?}, not {fault:?}"));
                }
            }
        }
    }
    assert!(accepted.is_empty(), "{}", accepted.join("\n"));
}

fn outside(range: Range) -> [f64; 3] {
    let further = |bound: f64| if bound == 0.0 { 1e-9 } else { 1e-6 * bound.abs() };
    let below = if range.above { range.least } else { range.least - further(range.least) };
    let above = if range.below { range.most } else { range.most + further(range.most) };
    [below, above, f64::NAN]
}

fn cases(cases: u32) -> ProptestConfig {
    ProptestConfig { cases, ..ProptestConfig::with_source_file(file!()) }
}

/// Owned arguments, for proptest.
#[derive(Debug, Clone)]
enum Given {
    Omitted,
    Number(f64),
    Text(String),
    Numbers(Vec<f64>),
}

impl Given {
    fn of(argument: &Argument<'_>) -> Self {
        match argument {
            Argument::Number(number) => Self::Number(*number),
            Argument::Text(text) => Self::Text((*text).to_owned()),
            Argument::Numbers(numbers) => Self::Numbers(numbers.to_vec()),
            _ => Self::Omitted,
        }
    }

    fn argument(&self) -> Argument<'_> {
        match self {
            Self::Omitted => Argument::Omitted,
            Self::Number(number) => Argument::Number(*number),
            Self::Text(text) => Argument::Text(text),
            Self::Numbers(numbers) => Argument::Numbers(numbers),
        }
    }
}

/// Numbers of a parameter: mostly in its range, also near what the example has, at the bounds and beyond.
fn numbers(parameter: Parameter, near: f64) -> BoxedStrategy<f64> {
    let (least, most) = parameter.range().map_or((0.0, 1e3), |range| (range.least, range.most));
    let near = if near == 0.0 { least.max(0.01).min(most) } else { near };
    let beyond = [f64::NAN, f64::INFINITY, -1.0, 0.0, -0.0, 1e300, POUR_OMITTED, least, most];
    prop_oneof![
        6 => (0.5..2.0).prop_map(move |factor| near * factor),
        3 => (0.0..=1.0).prop_map(move |share| least + share * (most - least)),
        2 => (-3.0..3.0).prop_map(move |power| near * 10_f64.powf(power)),
        1 => prop::sample::select(beyond.to_vec()),
    ]
    .boxed()
}

fn number_near(example: &Argument<'_>) -> f64 {
    if let Argument::Number(number) = example { *number } else { 0.0 }
}

/// Arguments of one parameter of a calculation.
fn any(field: &ParameterField, example: &Argument<'_>) -> BoxedStrategy<Given> {
    let (parameter, as_example) = (field.parameter, Given::of(example));
    let given = match field.kind {
        ValueKind::Number => {
            numbers(parameter, number_near(example)).prop_map(Given::Number).boxed()
        }
        ValueKind::Count => {
            let most = parameter.range().map_or(1e6, |range| range.most);
            prop_oneof![0..20_u32, 0..=(most as u32).saturating_add(1)]
                .prop_map(|count| Given::Number(f64::from(count)))
                .boxed()
        }
        ValueKind::Word { .. } => {
            let words = parameter.words().iter().chain(&["no-such-word"]);
            let words: Vec<String> = words.map(|word| (*word).to_owned()).collect();
            prop::sample::select(words).prop_map(Given::Text).boxed()
        }
        ValueKind::Text => {
            let texts = [
                "1 cup", "6 oz", "mL", "g", "-1 g", "", ".035", "1/64 hex", "40 drops", "330 °F",
                "tsp",
            ];
            let texts: Vec<String> = texts.iter().map(|text| (*text).to_owned()).collect();
            prop::sample::select(texts).prop_map(Given::Text).boxed()
        }
        _ => {
            let columns = parameter.columns();
            let near = match example {
                Argument::Numbers(numbers) => numbers.to_vec(),
                _ => Vec::new(),
            };
            let row: Vec<BoxedStrategy<f64>> = columns
                .iter()
                .enumerate()
                .map(|(place, column)| numbers(*column, near.get(place).copied().unwrap_or(0.0)))
                .collect();
            prop::collection::vec(row, 0..10).prop_map(|rows| Given::Numbers(rows.concat())).boxed()
        }
    };
    if field.optional {
        prop_oneof![2 => Just(as_example), 3 => Just(Given::Omitted), 3 => given].boxed()
    } else {
        prop_oneof![8 => Just(as_example), 1 => Just(Given::Omitted), 6 => given].boxed()
    }
}

/// Arguments of a calculation: those of the example with another one or two, or all of them any.
fn any_arguments(calculation: &Calculation) -> BoxedStrategy<Vec<Given>> {
    let example = calculation.example().arguments;
    let each = calculation.parameters.iter().zip(&example);
    let all: Vec<BoxedStrategy<Given>> = each.map(|(field, given)| any(field, given)).collect();
    let example: Vec<Given> = example.iter().map(Given::of).collect();
    let (one, other) = (0..all.len(), 0..all.len());
    let changed = (all.clone(), one, other).prop_map(move |(all, one, other)| {
        let mut given = example.clone();
        for place in [one, other] {
            given[place] = all[place].clone();
        }
        given
    });
    prop_oneof![1 => all, 2 => changed].boxed()
}

/// Random arguments, legal and not: the export answers as the table does, to the bit, and has the same faults.
#[test]
fn any_arguments_are_answered_as_by_the_table() {
    let mut runner = TestRunner::new(cases(CASES));
    for (name, call) in calls::CALLS {
        let calculation = table::find(name).unwrap();
        let mut answered = 0;
        let outcome = runner.run(&any_arguments(calculation), |given| {
            // -DBL_MAX is how C omits a number.
            let omit = |argument| matches!(argument, Argument::Number(POUR_OMITTED));
            let arguments: Vec<Argument<'_>> = given
                .iter()
                .map(Given::argument)
                .map(|argument| if omit(argument) { Argument::Omitted } else { argument })
                .collect();
            let found = call(&arguments);
            prop_assert_eq!(bits(found), bits(wanted(calculation, &arguments)));
            Ok(())
        });
        outcome.unwrap_or_else(|error| panic!("{name}: {error}"));
        for _ in 0..CASES {
            let given = any_arguments(calculation).new_tree(&mut runner).unwrap().current();
            let arguments: Vec<Argument<'_>> = given.iter().map(Given::argument).collect();
            answered += u32::from(call(&arguments).is_ok());
        }
        // What is random is not all nonsense.
        assert!(answered > CASES / 20, "{name}: {answered} of {CASES} calls are answered");
    }
}

/// Every row of a columnar call is the scalar call, to the bit and the status, from any address and stride; and plain
/// arrays, which have a loop of their own, give the same.
#[test]
fn every_row_is_the_scalar_call() {
    let strides = prop::sample::select(vec![8_isize, 8, 11, 24, -8, -13]);
    let mut runner = TestRunner::new(cases(40));
    for (name, columnar) in calls::COLUMNS {
        let calculation = table::find(name).unwrap();
        let (_, call) = calls::CALLS.iter().find(|(other, _)| other == name).unwrap();
        let rows = prop::collection::vec(any_arguments(calculation), 1..20);
        let outcome =
            runner.run(&(rows, strides.clone(), strides.clone()), |(mut rows, read, write)| {
                // One word counts for all rows.
                let first = rows[0].clone();
                for row in &mut rows {
                    for (place, field) in calculation.parameters.iter().enumerate() {
                        if matches!(field.kind, ValueKind::Word { .. }) {
                            row[place] = first[place].clone();
                        }
                    }
                }
                let n = rows.len();
                let number = |given: &Given| by_name::number(given.argument());
                let (mut columns, mut words) = (Vec::new(), Vec::new());
                for (place, field) in calculation.parameters.iter().enumerate() {
                    if matches!(field.kind, ValueKind::Word { .. }) {
                        words.push(by_name::word(field.parameter.name(), first[place].argument()));
                    } else {
                        columns
                            .push(rows.iter().map(|row| number(&row[place])).collect::<Vec<f64>>());
                    }
                }
                for (read, write) in [(read, write), (8, 8)] {
                    let inputs: Vec<Scattered> =
                        columns.iter().map(|column| Scattered::new(column, read)).collect();
                    let mut outputs: Vec<Scattered> = calculation
                        .results
                        .iter()
                        .map(|_| Scattered::new(&vec![7.0; n], write))
                        .collect();
                    let ins: Vec<pour_column> = inputs.iter().map(Scattered::input).collect();
                    let outs: Vec<pour_result_column> =
                        outputs.iter_mut().map(Scattered::output).collect();
                    let mut statuses = vec![-1; n];
                    let status = columnar(n, &ins, &words, &outs, statuses.as_mut_ptr(), None);
                    if words.iter().zip(word_fields(calculation)).any(|(place, field)| {
                        *place as usize > field.parameter.words().len()
                            || (*place == 0 && !field.optional)
                    }) {
                        prop_assert_eq!(status, POUR_UNKNOWN_NUMBER);
                        continue;
                    }
                    prop_assert_eq!(status, POUR_OK);
                    for (row, given) in rows.iter().enumerate() {
                        let arguments: Vec<Argument<'_>> =
                            given.iter().map(Given::argument).collect();
                        let found = call(&arguments);
                        prop_assert_eq!(statuses[row] == POUR_OK, found.is_ok(), "{:?}", given);
                        let wanted: Vec<u64> = match &found {
                            Ok(values) => values
                                .iter()
                                .zip(calculation.results)
                                .map(|(value, result)| {
                                    place_of(words_of(result.kind), value).to_bits()
                                })
                                .collect(),
                            Err(_) => vec![NAN; outputs.len()],
                        };
                        let got: Vec<u64> =
                            outputs.iter().map(|output| output.get(row).to_bits()).collect();
                        prop_assert_eq!(got, wanted, "{:?}", given);
                    }
                }
                Ok(())
            });
        outcome.unwrap_or_else(|error| panic!("{name}: {error}"));
    }
}

fn word_fields(calculation: &Calculation) -> impl Iterator<Item = &ParameterField> {
    calculation.parameters.iter().filter(|field| matches!(field.kind, ValueKind::Word { .. }))
}

/// Parameters that may be omitted need no column, and results that are not asked for are not written.
#[test]
fn columns_that_are_not_there_are_omitted() {
    for (name, columnar) in calls::COLUMNS {
        let calculation = table::find(name).unwrap();
        let (_, call) = calls::CALLS.iter().find(|(other, _)| other == name).unwrap();
        let mut arguments = calculation.example().arguments;
        for (argument, field) in arguments.iter_mut().zip(calculation.parameters) {
            if field.optional {
                *argument = Argument::Omitted;
            }
        }
        let Ok(values) = call(&arguments) else { continue };
        let (mut numbers, mut words) = (Vec::new(), Vec::new());
        for (argument, field) in arguments.iter().zip(calculation.parameters) {
            if matches!(field.kind, ValueKind::Word { .. }) {
                words.push(by_name::word(field.parameter.name(), *argument));
            } else {
                numbers.push(by_name::number(*argument));
            }
        }
        let columns: Vec<pour_column> = numbers
            .iter()
            .map(|number| pour_column {
                start: if *number == POUR_OMITTED { ptr::null() } else { number },
                stride: 0,
            })
            .collect();
        let mut first = [7.0; 3];
        let mut outputs =
            vec![pour_result_column { start: ptr::null_mut(), stride: 0 }; values.len()];
        outputs[0] = pour_result_column { start: first.as_mut_ptr(), stride: 8 };
        let status = columnar(3, &columns, &words, &outputs, ptr::null_mut(), None);
        assert_eq!(status, POUR_OK, "{name}");
        let wanted = place_of(words_of(calculation.results[0].kind), &values[0]);
        assert_eq!(first.map(f64::to_bits), [wanted.to_bits(); 3], "{name}");
    }
}

/// Columns of parameters that must be given, each of them null: all are named.
#[test]
fn columns_that_must_be_there_are_named_together() {
    for (name, columnar) in calls::COLUMNS {
        let calculation = table::find(name).unwrap();
        let columns = calculation.parameters.iter().filter(|field| field.kind != ValueKind::Text);
        let is_number = |field: &&ParameterField| !matches!(field.kind, ValueKind::Word { .. });
        let count = columns.clone().filter(is_number).count();
        let words: Vec<i32> = word_fields(calculation).map(|_| 1).collect();
        let mut out = 7.0;
        let null = pour_column { start: ptr::null(), stride: 8 };
        let outputs =
            vec![pour_result_column { start: &raw mut out, stride: 8 }; calculation.results.len()];
        let mut error = MaybeUninit::uninit();
        let status =
            columnar(1, &vec![null; count], &words, &outputs, ptr::null_mut(), Some(&mut error));
        assert_eq!(status, POUR_NULL, "{name}");
        // SAFETY: written on failure.
        let error = unsafe { error.assume_init() };
        let required = columns.filter(is_number).filter(|field| !field.optional).count();
        assert_eq!(pour_error_count(Some(&error)), required, "{name}");
        assert_eq!(out, 7.0);
    }
}

//! The calls on plain numbers that every door must answer alike, made from the table: `tests/vectors/calls.jsonl`.

use std::borrow::Cow;
use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;

use pourwright::parameter::{IfOmitted, Parameter, PlainUnit};
use pourwright::table::{
    Argument, CALCULATIONS, Calculation, ParameterField, Value, ValueKind, find,
};
use pourwright_tests::split_mix::SplitMix64;
use pourwright_tests::usual::known;
use serde_json::{Value as Json, json};

const PATH: &str = "tests/vectors/calls.jsonl";

/// An argument with its own numbers.
#[derive(Debug, Clone, PartialEq)]
enum Given {
    Omitted,
    Number(f64),
    Text(Cow<'static, str>),
    List(Vec<f64>),
}

impl Given {
    fn of(argument: &Argument<'static>) -> Self {
        match *argument {
            Argument::Number(number) => Self::Number(number),
            Argument::Text(text) => Self::Text(text.into()),
            Argument::Numbers(numbers) => Self::List(numbers.to_vec()),
            _ => Self::Omitted,
        }
    }

    fn argument(&self) -> Argument<'_> {
        match self {
            Self::Omitted => Argument::Omitted,
            Self::Number(number) => Argument::Number(*number),
            Self::Text(text) => Argument::Text(text),
            Self::List(numbers) => Argument::Numbers(numbers),
        }
    }
}

/// What is wrong, by code and path.
type Faults = Vec<(String, String)>;

struct Call {
    /// What it is there for.
    case: String,
    calculation: &'static Calculation,
    given: Vec<Given>,
}

impl Call {
    fn answer(&self) -> Result<Vec<Value>, Faults> {
        let arguments: Vec<Argument<'_>> = self.given.iter().map(Given::argument).collect();
        let mut results = Vec::new();
        match self.calculation.evaluate(&arguments, &mut results) {
            Ok(()) => Ok(results),
            Err(refusal) => Err(refusal
                .reasons()
                .map(|reason| {
                    let path = self.calculation.path(&reason, |field| field.field);
                    (reason.code.to_owned(), path)
                })
                .collect()),
        }
    }

    /// The call as a line, fields in the order of the table.
    fn line(&self) -> String {
        let mut line =
            format!("{{\"case\":{},\"call\":\"{}\"", json!(self.case), self.calculation.name);
        let given = self.calculation.parameters.iter().zip(&self.given);
        let given = given.filter(|(_, given)| **given != Given::Omitted);
        let given = given.map(|(field, given)| {
            let value = match (given, field.kind) {
                (Given::Number(x), ValueKind::Count) => format!("{x:.0}"),
                (Given::Number(x), _) => number(*x),
                (Given::Text(text), _) => json!(text).to_string(),
                (Given::List(numbers), ValueKind::Rows(columns)) => listed(
                    numbers.chunks(columns).map(|row| listed(row.iter().map(|x| number(*x)))),
                ),
                (Given::List(numbers), _) => listed(numbers.iter().map(|x| number(*x))),
                (Given::Omitted, _) => unreachable!(),
            };
            format!("\"{}\":{value}", field.field)
        });
        let given = given.collect::<Vec<_>>().join(",");
        write!(line, ",\"given\":{{{given}}},{}", self.answer_fields()).unwrap();
        line
    }

    /// The results or the faults, and the end of the object that they are in.
    fn answer_fields(&self) -> String {
        match self.answer() {
            Ok(results) => {
                let results = self.calculation.results.iter().zip(&results);
                let results = results.map(|(field, value)| {
                    let value = match (value, field.kind) {
                        (Value::Number(x), ValueKind::Count) => format!("{x:.0}"),
                        (Value::Number(x), _) => {
                            assert!(x.is_finite(), "{}: {}: {x}", self.calculation.name, self.case);
                            number(*x)
                        }
                        (Value::Word(word), _) => json!(word).to_string(),
                        (Value::Numbers(counts), _) => {
                            listed(counts.iter().map(|count| format!("{count:.0}")))
                        }
                        _ => "null".to_owned(),
                    };
                    format!("\"{}\":{value}", field.field)
                });
                format!("\"results\":{{{}}}}}", results.collect::<Vec<_>>().join(","))
            }
            Err(faults) => {
                let faults = faults
                    .iter()
                    .map(|(code, path)| format!("{{\"code\":\"{code}\",\"path\":\"{path}\"}}"));
                format!("\"faults\":{}}}", listed(faults))
            }
        }
    }
}

fn listed(items: impl Iterator<Item = String>) -> String {
    format!("[{}]", items.collect::<Vec<_>>().join(","))
}

/// The shortest decimal that reads back as the same bits; as a text what JSON has no number for.
fn number(x: f64) -> String {
    match x {
        _ if x.is_finite() => json!(x).to_string(),
        _ if x.is_nan() => "\"NaN\"".to_owned(),
        _ => format!("\"{}Infinity\"", if x < 0.0 { "-" } else { "" }),
    }
}

/// A usual number of a parameter.
fn usual(parameter: Parameter) -> f64 {
    known(parameter).unwrap_or_else(|| match parameter {
        Parameter::BalanceCapacity => 500.0,
        Parameter::BalanceLeastLoad => 0.05,
        Parameter::CupCapacity => 500.0,
        Parameter::CupMark => 50.0,
        Parameter::InjectorLeast => 60.0,
        Parameter::OvenLeast => 120.0,
        Parameter::VaporPressure => 0.5,
        _ => panic!("no usual {parameter}"),
    })
}

/// By how much a number is outside, relative to its bound: more than the rounding of a unit, which is let pass.
const OUTSIDE: f64 = 1e-9;

/// The number at an end of a range, and the one just outside it, where there is one.
struct End {
    name: &'static str,
    at: f64,
    outside: Option<f64>,
}

/// Whether a number, in the unit of its parameter, is in its range.
fn holds(parameter: Parameter, x: f64) -> bool {
    parameter.check_si(parameter.unit().to_si(x)).is_ok()
}

/// The ends of the range of a parameter.
fn ends(parameter: Parameter) -> Vec<End> {
    let Some(range) = parameter.range() else { return Vec::new() };
    let is_count = parameter.unit() == PlainUnit::Count || parameter.is_list();
    let off = |bound: f64| match bound {
        _ if is_count => 1.0,
        // The rounding is that of kelvins.
        _ if parameter.unit() == PlainUnit::Celsius => 1000.0 * OUTSIDE,
        0.0 => OUTSIDE,
        _ => OUTSIDE * bound.abs(),
    };
    // The nearest number that the calculation takes, whatever its unit rounds.
    let next = |bound: f64, up: bool| {
        let step = |far: u32| {
            let far = 1_u64 << far;
            let away = (bound >= 0.0) == up;
            f64::from_bits(if away { bound.to_bits() + far } else { bound.to_bits() - far })
        };
        (0..62).map(step).find(|x| holds(parameter, *x)).expect("a range has numbers inside")
    };
    let (least, most) = (range.least, range.most);
    let [below, above] = [least - off(least), most + off(most)];
    let may_be = |x: f64| !is_count || (0.0..f64::from(u32::MAX)).contains(&x);
    vec![
        End {
            name: "least",
            at: if range.above { next(least, true) } else { least },
            outside: Some(if range.above { least } else { below }).filter(|x| may_be(*x)),
        },
        End {
            name: "most",
            at: if range.below { next(most, false) } else { most },
            outside: Some(if range.below { most } else { above }).filter(|x| may_be(*x)),
        },
    ]
}

/// The longest list in the file; a few may be a hundred times as long.
const MOST_ROWS: f64 = 1000.0;

/// To state these is more than their default: they need others, or are then certain.
const MORE_THAN_ITS_DEFAULT: [&str; 7] = [
    "dial_tolerance_kpa",
    "feed",
    "hook_mass_g",
    "hook_volume_ml",
    "melt_viscosity_max_mpa_s",
    "melt_viscosity_min_mpa_s",
    "oven_turn_s",
];

/// The example of a calculation with other arguments.
struct Cases {
    calculation: &'static Calculation,
    example: Vec<Given>,
    calls: Vec<Call>,
}

impl Cases {
    fn new(calculation: &'static Calculation) -> Self {
        let example: Vec<Given> = calculation.example().arguments.iter().map(Given::of).collect();
        let mut cases = Self { calculation, example, calls: Vec::new() };
        cases.add("the example".to_owned(), cases.example.clone());
        for place in 0..calculation.parameters.len() {
            cases.of_parameter(place);
        }
        cases.refusals();
        cases
    }

    fn call(&self, case: String, given: Vec<Given>) -> Call {
        Call { case, calculation: self.calculation, given }
    }

    fn add(&mut self, case: String, given: Vec<Given>) {
        let call = self.call(case, given);
        self.calls.push(call);
    }

    fn with(&self, place: usize, value: Given) -> Vec<Given> {
        let mut given = self.example.clone();
        given[place] = value;
        given
    }

    /// The example with a parameter that it has not, and what must then be given or omitted as well.
    fn base(&self, place: usize) -> Vec<Given> {
        let fields = self.calculation.parameters;
        let mut given = self.example.clone();
        if given[place] == Given::Omitted {
            given[place] = match fields[place].kind {
                ValueKind::Number | ValueKind::Count => {
                    Given::Number(usual(fields[place].parameter))
                }
                _ => return given,
            };
        }
        for _ in 0..3 {
            let Err(faults) = self.call(String::new(), given.clone()).answer() else { break };
            for (code, path) in faults {
                let Some(other) =
                    fields.iter().position(|field| path.strip_prefix('/') == Some(field.field))
                else {
                    continue;
                };
                match code.as_str() {
                    "needs-other" => given[other] = Given::Number(usual(fields[other].parameter)),
                    "excludes-other" => given[other] = Given::Omitted,
                    _ => {}
                }
            }
        }
        given
    }

    fn of_parameter(&mut self, place: usize) {
        let field = &self.calculation.parameters[place];
        let (name, parameter) = (field.field, field.parameter);
        if field.optional && self.example[place] != Given::Omitted {
            self.add(format!("{name} left out"), self.with(place, Given::Omitted));
        }
        match field.if_omitted() {
            IfOmitted::Value(number) => {
                self.add(format!("{name} at its default"), self.with(place, Given::Number(number)));
            }
            IfOmitted::Zero => {
                self.add(format!("{name} at its default"), self.with(place, Given::Number(0.0)));
            }
            IfOmitted::Word(word) => {
                self.add(
                    format!("{name} at its default"),
                    self.with(place, Given::Text(word.into())),
                );
            }
            _ if self.example[place] == Given::Omitted
                && matches!(field.kind, ValueKind::Number | ValueKind::Count) =>
            {
                self.add(format!("{name} given"), self.base(place));
            }
            _ => {}
        }
        match field.kind {
            ValueKind::Number | ValueKind::Count => self.of_number(place),
            ValueKind::Word { .. } => {
                for word in parameter.words() {
                    self.add(
                        format!("{name} is {word}"),
                        self.with(place, Given::Text((*word).into())),
                    );
                }
            }
            ValueKind::List | ValueKind::Rows(_) => self.of_list(place),
            _ => {}
        }
    }

    fn of_number(&mut self, place: usize) {
        let field = &self.calculation.parameters[place];
        let name = field.field;
        let base = self.base(place);
        let with = |x: f64| {
            let mut given = base.clone();
            given[place] = Given::Number(x);
            given
        };
        for end in ends(field.parameter) {
            self.add(format!("{name} at its {}", end.name), with(end.at));
            if let Some(outside) = end.outside {
                self.add(format!("{name} beyond its {}", end.name), with(outside));
            }
        }
        if field.kind == ValueKind::Number {
            for x in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                self.add(format!("{name} not finite"), with(x));
            }
        }
    }

    fn of_list(&mut self, place: usize) {
        let field = &self.calculation.parameters[place];
        let name = field.field;
        let columns = field.parameter.columns();
        let width = columns.len().max(1);
        let list = match &self.example[place] {
            Given::List(numbers) => numbers.clone(),
            _ => columns.iter().map(|column| usual(*column)).collect(),
        };
        for (column, parameter) in columns.iter().enumerate() {
            let with = |x: f64| {
                let mut numbers = list.clone();
                numbers[column] = x;
                self.with(place, Given::List(numbers))
            };
            let of = parameter.name();
            let mut cases = Vec::new();
            for end in ends(*parameter) {
                cases.push((format!("{of} of {name} at its {}", end.name), with(end.at)));
                if let Some(outside) = end.outside {
                    cases.push((format!("{of} of {name} beyond its {}", end.name), with(outside)));
                }
            }
            for x in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                cases.push((format!("{of} of {name} not finite"), with(x)));
            }
            for (case, given) in cases {
                self.add(case, given);
            }
        }
        for end in ends(field.parameter).iter().filter(|end| end.at <= MOST_ROWS) {
            let rows = |count: f64| {
                let numbers = list.iter().copied().cycle();
                Given::List(numbers.take(width * count as usize).collect())
            };
            self.add(format!("{name} with its {} rows", end.name), self.with(place, rows(end.at)));
            if let Some(outside) = end.outside {
                let case = format!("{name} beyond its {} rows", end.name);
                self.add(case, self.with(place, rows(outside)));
            }
        }
    }

    /// One call for each other way in which the calculation is refused, found by chance.
    fn refusals(&mut self) {
        const TRIES: u32 = 4000;
        let mut seen: BTreeSet<Faults> =
            self.calls.iter().filter_map(|call| call.answer().err()).collect();
        let seed = self.calculation.name.bytes().fold(7_u64, |seed, byte| {
            seed.wrapping_mul(0x0100_0000_01b3).wrapping_add(u64::from(byte))
        });
        let mut chance = Chance(SplitMix64(seed));
        for _ in 0..TRIES {
            let given = self.changed(&mut chance);
            let call = self.call(String::new(), given.clone());
            let Err(faults) = call.answer() else { continue };
            let [(code, path)] = &faults[..] else { continue };
            if seen.insert(faults.clone()) {
                let at = if path.is_empty() { String::new() } else { format!(" at {path}") };
                self.add(format!("refused with {code}{at}"), given);
            }
        }
    }

    fn changed(&self, chance: &mut Chance) -> Vec<Given> {
        let mut given = self.example.clone();
        for _ in 0..=chance.below(3) {
            let place = chance.below(given.len());
            let field = &self.calculation.parameters[place];
            let parameter = field.parameter;
            given[place] = match (&given[place], field.kind) {
                (Given::Number(_), _) if field.optional && chance.below(4) == 0 => Given::Omitted,
                (Given::Number(x), _) => Given::Number(chance.number(*x, parameter)),
                (Given::Omitted, ValueKind::Number | ValueKind::Count) => {
                    Given::Number(chance.number(usual(parameter), parameter))
                }
                (_, ValueKind::Word { .. }) => Given::Text(chance.one_of(parameter.words()).into()),
                (Given::Text(_), _) => Given::Text(chance.one_of(&TEXTS).into()),
                (Given::List(numbers), _) => {
                    let columns = parameter.columns();
                    let width = columns.len().max(1);
                    let mut numbers = numbers.clone();
                    if chance.below(4) == 0 {
                        let rows = parameter.range().map_or(1, |range| range.least as usize);
                        numbers.truncate(width * rows.max(1));
                    }
                    let at = chance.below(numbers.len().max(1));
                    if let Some(x) = numbers.get_mut(at) {
                        *x = chance.number(*x, columns[at % width]);
                    }
                    Given::List(numbers)
                }
                (other, _) => other.clone(),
            };
        }
        given
    }
}

/// Texts that are an amount, a unit, neither, or more than one.
const TEXTS: [&str; 10] =
    ["1 cup", "6 oz", "1,25 cup", "5 drops", "1/0 mL", "8 %", "", "3", "furlong", "0.1 in"];

struct Chance(SplitMix64);

impl Chance {
    /// From 0 to below `n`.
    fn below(&mut self, n: usize) -> usize {
        usize::try_from(self.0.bits() % n as u64).unwrap()
    }

    fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len())]
    }

    /// `x`, much or little off, inside the range.
    fn number(&mut self, x: f64, parameter: Parameter) -> f64 {
        let by = [0.0, 1e-6, 0.1, 0.5, 0.8, 0.95, 1.05, 1.25, 2.0, 4.0, 10.0, 1e6];
        let x: f64 = format!("{:.3e}", x * self.one_of(&by)).parse().unwrap();
        let x = parameter.range().map_or(x, |range| x.clamp(range.least, range.most));
        if parameter.unit() == PlainUnit::Count { x.round() } else { x }
    }
}

fn cases() -> Vec<Cases> {
    CALCULATIONS.iter().map(|calculation| Cases::new(calculation)).collect()
}

#[test]
fn the_calls_are_fresh() {
    let all = cases();
    let lines: Vec<String> = all.iter().flat_map(|cases| &cases.calls).map(Call::line).collect();
    crate::fresh(PATH, &(lines.join("\n") + "\n"));
    assert!(lines.len() > 600);
}

/// The cases of each calculation in the committed file.
fn committed() -> BTreeMap<String, BTreeMap<String, Json>> {
    let mut calls: BTreeMap<String, BTreeMap<String, Json>> = BTreeMap::new();
    for line in crate::read(PATH).lines() {
        let call: Json = serde_json::from_str(line).unwrap();
        let text = |field: &str| call[field].as_str().unwrap().to_owned();
        calls.entry(text("call")).or_default().insert(text("case"), call);
    }
    calls
}

fn has_fault(call: &Json, code: &str, path: &str) -> bool {
    let faults = call["faults"].as_array();
    faults.into_iter().flatten().any(|fault| fault["code"] == code && fault["path"] == path)
}

/// Every calculation, both ends of every range, every word and every default are in the committed file, and an end is taken
/// where what is beyond it is not.
#[test]
fn every_end_and_every_default_is_there() {
    let calls = committed();
    assert_eq!(calls.len(), CALCULATIONS.len());
    let mut equal_to_default = 0;
    for calculation in CALCULATIONS {
        let name = calculation.name;
        let cases = &calls[name];
        let case = |what: String| {
            cases.get(&what).unwrap_or_else(|| panic!("{name} has no case \"{what}\""))
        };
        let example = case("the example".to_owned());
        assert!(example["results"].is_object(), "{name}");
        let range_of = |of: String, path: String, parameter: Parameter| {
            let Some(range) = parameter.range() else { return };
            let is_count = parameter.unit() == PlainUnit::Count;
            // A count below 0 cannot be written, and the largest one is an omitted one.
            let beyond_least = !is_count || range.least > 0.0;
            let beyond_most = !is_count || range.most + 1.0 < f64::from(u32::MAX);
            for (end, can_be_beyond) in [("least", beyond_least), ("most", beyond_most)] {
                let at = case(format!("{of} at its {end}"));
                let number = at["given"].pointer(&path).and_then(Json::as_f64).unwrap();
                assert!(holds(parameter, number), "{name}: {of} at its {end}");
                if can_be_beyond {
                    let beyond = case(format!("{of} beyond its {end}"));
                    let number = beyond["given"].pointer(&path).and_then(Json::as_f64).unwrap();
                    assert!(!holds(parameter, number), "{name}: {of} beyond its {end}");
                    assert!(has_fault(beyond, "out-of-range", &path), "{name}: {of}: {beyond}");
                }
            }
        };
        for field in calculation.parameters {
            let (of, parameter) = (field.field, field.parameter);
            match field.kind {
                ValueKind::Number | ValueKind::Count => {
                    range_of(of.to_owned(), format!("/{of}"), parameter);
                }
                ValueKind::Word { .. } => {
                    for word in parameter.words() {
                        case(format!("{of} is {word}"));
                    }
                }
                ValueKind::List | ValueKind::Rows(_) => {
                    let columns = parameter.columns();
                    for (place, column) in columns.iter().enumerate() {
                        let below =
                            if columns.len() > 1 { format!("/{place}") } else { String::new() };
                        range_of(
                            format!("{} of {of}", column.name()),
                            format!("/{of}/0{below}"),
                            *column,
                        );
                    }
                    let rows = parameter.range().expect("a list has a number of rows");
                    case(format!("{of} with its least rows"));
                    if rows.most <= MOST_ROWS {
                        case(format!("{of} with its most rows"));
                        let beyond = case(format!("{of} beyond its most rows"));
                        assert!(beyond["faults"].is_array(), "{name}: {of}");
                    }
                }
                _ => {}
            }
            if matches!(field.kind, ValueKind::Number) {
                let not_finite = case(format!("{of} not finite"));
                assert!(has_fault(not_finite, "not-finite", &format!("/{of}")), "{not_finite}");
            }
            let is_given = example["given"].get(of).is_some();
            let has_default = matches!(
                field.if_omitted(),
                IfOmitted::Value(_) | IfOmitted::Zero | IfOmitted::Word(_)
            );
            if has_default {
                let at_default = case(format!("{of} at its default"));
                let omitted = if is_given { case(format!("{of} left out")) } else { example };
                if MORE_THAN_ITS_DEFAULT.contains(&of) {
                    continue;
                }
                assert_eq!(at_default["results"], omitted["results"], "{name}: {of}");
                assert!(at_default["results"].is_object(), "{name}: {of}");
                equal_to_default += 1;
            } else if !is_given && matches!(field.kind, ValueKind::Number | ValueKind::Count) {
                case(format!("{of} given"));
            }
        }
    }
    assert!(equal_to_default > 50, "{equal_to_default}");
}

/// As a door reads the file: the answers are those of the numbers read back.
#[test]
fn the_calls_are_answered_as_they_are_read() {
    let mut answers = String::new();
    for line in crate::read(PATH).lines() {
        let call: Json = serde_json::from_str(line).unwrap();
        let name = call["call"].as_str().unwrap();
        let calculation = find(name).unwrap();
        let given = |field: &ParameterField| match (&call["given"][field.field], field.kind) {
            (Json::Null, _) => Given::Omitted,
            (Json::Array(items), _) => Given::List(items.iter().flat_map(numbers).collect()),
            (Json::String(text), ValueKind::Text | ValueKind::Word { .. }) => {
                Given::Text(text.clone().into())
            }
            (one, _) => Given::Number(numbers(one)[0]),
        };
        let given = calculation.parameters.iter().map(given).collect();
        let case = call["case"].as_str().unwrap().to_owned();
        let read = Call { case, calculation, given };
        assert_eq!(read.line(), line);
        answers.push_str(&format!("{{{}\n", read.answer_fields()));
    }
    crate::write_answers("rust.calls", &answers);
}

/// The number, or those of a list.
fn numbers(value: &Json) -> Vec<f64> {
    match value {
        Json::Array(items) => items.iter().flat_map(numbers).collect(),
        Json::String(text) => vec![text.parse().unwrap()],
        number => vec![number.as_f64().unwrap()],
    }
}

//! The list of calculations for people, and the same as JSON for other tools.

use std::fmt::Write as _;

use pourwright::parameter::{IfOmitted, Parameter, PlainUnit, Range};
use pourwright::table::{
    Argument, CALCULATIONS, Calculation, ParameterField, ResultField, Value, ValueKind,
};
use serde::Serialize;

use crate::File;
use crate::text::{of_parameter, of_result, paragraphs};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    let schema = Schema { calculations: CALCULATIONS.iter().map(|one| Entry::of(one)).collect() };
    let mut json = serde_json::to_string_pretty(&schema).expect("names and numbers");
    json.push('\n');
    vec![
        File::new("core/CALCULATIONS.md", list()),
        File::new("core/schema/calculations.json", json),
    ]
}

fn list() -> String {
    let mut text = String::from(
        "# Calculations\n\n\
         Every calculation on plain numbers, by the names of all doors: `pour_` before the name in C, camel case in JavaScript, the\n\
         name itself in Python, Lua, PHP and Ruby; the unit of a number is the last part of its name. Optional parameters are in\n\
         italics. The same as data: `core/schema/calculations.json`. Calculations that take or give documents are requests:\n\
         `core/schema/request.json`.\n\n\
         Made by `cargo run -p pourwright-generate`; do not edit.\n\n| calculation | |\n| --- | --- |\n",
    );
    for calculation in CALCULATIONS {
        let name = calculation.name;
        writeln!(text, "| [`{name}`](#{name}) | {} |", calculation.summary().replace('|', "\\|"))
            .unwrap();
    }
    for calculation in CALCULATIONS {
        section(&mut text, calculation);
    }
    text
}

fn section(text: &mut String, calculation: &Calculation) {
    writeln!(text, "\n## {}\n", calculation.name).unwrap();
    for paragraph in paragraphs(calculation, |other| format!("[`{0}`](#{0})", other.name)) {
        writeln!(text, "{paragraph}\n").unwrap();
    }
    text.push_str("| parameter | |\n| --- | --- |\n");
    for field in calculation.parameters {
        let name = format!("`{}`", field.field);
        let name = if field.optional { format!("*{name}*") } else { name };
        let mut meaning =
            of_parameter(field, |other: Parameter| format!("`{}`", crate::text::plain_name(other)));
        if let ValueKind::Word { .. } = field.kind {
            let words: Vec<String> =
                field.parameter.words().iter().map(|word| format!("`{word}`")).collect();
            write!(meaning, " One of {}.", words.join(", ")).unwrap();
        }
        writeln!(text, "| {name} | {} |", meaning.replace('|', "\\|")).unwrap();
    }
    text.push_str("\n| result | |\n| --- | --- |\n");
    for result in calculation.results {
        let absent = if result.optional { " There may be none." } else { "" };
        writeln!(
            text,
            "| `{}` | {}{absent} |",
            result.field,
            of_result(result).replace('|', "\\|")
        )
        .unwrap();
    }
    let example = crate::text::example(calculation);
    let arguments = calculation.parameters.iter().zip(&example.arguments);
    let arguments: Vec<String> = arguments
        .filter(|(_, argument)| **argument != Argument::Omitted)
        .map(|(field, argument)| {
            format!(
                "{} = {}",
                field.field,
                json(&Plain::of_argument(argument).of_kind(of_argument(field)))
            )
        })
        .collect();
    let results = calculation.results.iter().zip(&example.results);
    let results: Vec<String> = results
        .map(|(result, value)| {
            format!("{} = {}", result.field, json(&Plain::of_value(value).of_kind(result.kind)))
        })
        .collect();
    writeln!(text, "\nExample: `{}` gives `{}`.", arguments.join(", "), results.join(", "))
        .unwrap();
    if !calculation.cautions.is_empty() {
        let cautions: Vec<String> =
            calculation.cautions.iter().map(|code| format!("`{code}`")).collect();
        writeln!(text, "\nCautions: {}.", cautions.join(", ")).unwrap();
    }
    if let Some(request) = calculation.request {
        writeln!(text, "\nRequest: `{request}`.").unwrap();
    }
}

fn json(value: &Plain) -> String {
    serde_json::to_string(value).expect("a number, a word or a list")
}

impl Plain {
    fn of_argument(argument: &Argument<'_>) -> Self {
        match argument {
            Argument::Number(number) => Self::Number(*number),
            Argument::Text(text) => Self::Text((*text).to_owned()),
            Argument::Numbers(numbers) => Self::Numbers(numbers.to_vec()),
            _ => Self::None(()),
        }
    }
}

/// The kind by which an argument is shown: its lists are of numbers.
fn of_argument(field: &ParameterField) -> ValueKind {
    if field.kind == ValueKind::List { ValueKind::Rows(1) } else { field.kind }
}

/// A value as JSON has it; a list of rows flat.
#[derive(Clone, Serialize)]
#[serde(untagged)]
enum Plain {
    None(()),
    Count(u64),
    Number(f64),
    Text(String),
    Numbers(Vec<f64>),
    Counts(Vec<u64>),
}

impl Plain {
    /// A count without a point; of a result, where a list is one of counts.
    fn of_kind(self, kind: ValueKind) -> Self {
        match self {
            Self::Number(count) if kind == ValueKind::Count => Self::Count(count as u64),
            Self::Numbers(counts) if kind == ValueKind::List => {
                Self::Counts(counts.iter().map(|count| *count as u64).collect())
            }
            other => other,
        }
    }

    fn of_value(value: &Value) -> Self {
        match value {
            Value::Number(number) => Self::Number(*number),
            Value::Word(word) => Self::Text((*word).to_owned()),
            Value::Numbers(numbers) => Self::Numbers(numbers.clone()),
            _ => Self::None(()),
        }
    }
}

#[derive(Serialize)]
struct Schema {
    calculations: Vec<Entry>,
}

#[derive(Serialize)]
struct Entry {
    name: &'static str,
    summary: String,
    text: Vec<String>,
    parameters: Vec<Taken>,
    results: Vec<Given>,
    cautions: &'static [&'static str],
    request: Option<&'static str>,
    example: Shown,
}

#[derive(Serialize)]
struct Taken {
    name: &'static str,
    field: &'static str,
    kind: &'static str,
    optional: bool,
    meaning: &'static str,
    unit: Option<&'static str>,
    range: Option<Bounds>,
    range_text: &'static str,
    default: Plain,
    words: &'static [&'static str],
    columns: Vec<Column>,
}

#[derive(Serialize)]
struct Column {
    name: &'static str,
    field: String,
    meaning: &'static str,
    unit: Option<&'static str>,
    range: Option<Bounds>,
}

/// A range: `least` and `most` belong to it unless `above` and `below` are set.
#[derive(Serialize)]
struct Bounds {
    least: f64,
    most: f64,
    above: bool,
    below: bool,
}

#[derive(Serialize)]
struct Given {
    name: &'static str,
    field: &'static str,
    kind: &'static str,
    optional: bool,
    meaning: String,
    unit: Option<&'static str>,
    words: &'static [&'static str],
}

/// Arguments and results in the order of the parameters and results; null where there is none.
#[derive(Serialize)]
struct Shown {
    arguments: Vec<Plain>,
    results: Vec<Plain>,
}

impl Entry {
    fn of(calculation: &'static Calculation) -> Self {
        let example = crate::text::example(calculation);
        Self {
            name: calculation.name,
            summary: calculation.summary(),
            text: paragraphs(calculation, |other| format!("`{}`", other.name)),
            parameters: calculation.parameters.iter().map(Taken::of).collect(),
            results: calculation.results.iter().map(Given::of).collect(),
            cautions: calculation.cautions,
            request: calculation.request,
            example: Shown {
                arguments: (calculation.parameters.iter().zip(&example.arguments))
                    .map(|(field, argument)| {
                        Plain::of_argument(argument).of_kind(of_argument(field))
                    })
                    .collect(),
                results: (calculation.results.iter().zip(&example.results))
                    .map(|(result, value)| Plain::of_value(value).of_kind(result.kind))
                    .collect(),
            },
        }
    }
}

impl Taken {
    fn of(field: &ParameterField) -> Self {
        let parameter = field.parameter;
        let default = match parameter.if_omitted() {
            _ if !field.optional => Plain::None(()),
            IfOmitted::Word(word) => Plain::Text(word.to_owned()),
            _ => parameter.default_number().map_or(Plain::None(()), Plain::Number),
        };
        Self {
            name: parameter.name(),
            field: field.field,
            kind: kind(field.kind),
            optional: field.optional,
            meaning: parameter.meaning(),
            unit: unit(parameter.unit()),
            range: parameter.range().map(Bounds::of),
            range_text: parameter.range_text(),
            default,
            words: parameter.words(),
            columns: parameter.columns().iter().map(|column| Column::of(*column)).collect(),
        }
    }
}

impl Column {
    fn of(parameter: Parameter) -> Self {
        Self {
            name: parameter.name(),
            field: crate::text::plain_name(parameter),
            meaning: parameter.meaning(),
            unit: unit(parameter.unit()),
            range: parameter.range().map(Bounds::of),
        }
    }
}

impl Bounds {
    fn of(range: Range) -> Self {
        Self { least: range.least, most: range.most, above: range.above, below: range.below }
    }
}

impl Given {
    fn of(result: &ResultField) -> Self {
        Self {
            name: result.name,
            field: result.field,
            kind: kind(result.kind),
            optional: result.optional,
            meaning: result.meaning.split_whitespace().collect::<Vec<_>>().join(" "),
            unit: unit(result.unit),
            words: match result.kind {
                ValueKind::Word { .. } => result.words(),
                _ => &[],
            },
        }
    }
}

fn kind(kind: ValueKind) -> &'static str {
    match kind {
        ValueKind::Number => "number",
        ValueKind::Count => "count",
        ValueKind::Text => "text",
        ValueKind::Word { .. } => "word",
        ValueKind::Rows(_) => "rows",
        _ => "list",
    }
}

fn unit(unit: PlainUnit) -> Option<&'static str> {
    match unit {
        PlainUnit::None | PlainUnit::Any => None,
        unit => Some(unit.symbol()),
    }
}

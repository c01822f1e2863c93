//! Custom functions of spreadsheets: their metadata, and the table that their calls read.

use std::fmt::Write as _;

use pourwright::parameter;
use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};
use serde::Serialize;

use crate::File;
use crate::js::{self, MADE, WIDTH, name_of, name_of_result, renamed};
use crate::text::{self, amount_unit, of_result, places, zero_counts};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    let metadata = serde_json::to_string_pretty(&metadata()).expect("it is plain data");
    vec![
        File::new("bindings/custom-functions/functions.json", metadata + "\n"),
        File::new("bindings/custom-functions/src/calculations.js", table()),
    ]
}

/// The namespace, which the spreadsheet puts before the name of every function.
const NAMESPACE: &str = "POUR";

/// The metadata, in the form of the spreadsheet.
#[derive(Serialize)]
struct Metadata {
    functions: Vec<Function>,
    enums: Vec<Enum>,
}

#[derive(Serialize)]
struct Function {
    id: String,
    name: String,
    description: String,
    parameters: Vec<Parameter>,
    result: Of,
}

#[derive(Serialize)]
struct Parameter {
    name: String,
    description: String,
    #[serde(flatten)]
    of: Of,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    optional: bool,
    #[serde(skip_serializing_if = "std::ops::Not::not")]
    repeating: bool,
    #[serde(rename = "customEnumId", skip_serializing_if = "Option::is_none")]
    words: Option<String>,
}

/// Dimensions and type. Everything is a range: a function that takes a column gives one. Defaults are left out.
#[derive(Serialize)]
struct Of {
    #[serde(skip_serializing_if = "Option::is_none")]
    dimensionality: Option<&'static str>,
    #[serde(skip_serializing_if = "Option::is_none")]
    r#type: Option<&'static str>,
}

impl Of {
    const RANGE: Option<&'static str> = Some("matrix");
    /// Numbers or texts, so that it is the library that finds what is wrong with one.
    const CELLS: Self = Self { dimensionality: Self::RANGE, r#type: Some("any") };
    const TEXTS: Self = Self { dimensionality: Self::RANGE, r#type: Some("string") };
    const TEXT: Self = Self { dimensionality: None, r#type: Some("string") };
    const RESULTS: Self = Self { dimensionality: Self::RANGE, r#type: None };
}

/// Words that the spreadsheet offers.
#[derive(Serialize)]
struct Enum {
    id: String,
    r#type: &'static str,
    values: Vec<Word>,
}

#[derive(Serialize)]
struct Word {
    name: &'static str,
    #[serde(rename = "stringValue")]
    value: &'static str,
}

fn metadata() -> Metadata {
    let functions = CALCULATIONS.iter().flat_map(|calculation| of_calculation(calculation));
    Metadata { functions: functions.chain(of_all()).collect(), enums: enums() }
}

/// The name that a person types, after the namespace.
fn name(calculation: &Calculation) -> String {
    calculation.name.to_uppercase()
}

fn full_name(calculation: &Calculation) -> String {
    format!("{NAMESPACE}.{}", name(calculation))
}

/// An id has letters, digits and periods only.
fn id(name: &str) -> String {
    name.replace('_', ".")
}

/// Without the marks of code, and those that keep a sign from being one.
fn plain(text: &str) -> String {
    text::plain(text).replace('\\', "")
}

/// The function for the first result of a calculation, and the one for all of several.
fn of_calculation(calculation: &Calculation) -> Vec<Function> {
    let summary = plain(&renamed(&calculation.summary(), calculation, full_name));
    let first = calculation.results.first().expect("a calculation has a result");
    let first =
        format!("{summary} Gives {}: {}", name_of_result(first), meaning(calculation, first));
    let mut functions = vec![function(name(calculation), first, calculation)];
    if calculation.results.len() > 1 {
        let all = calculation.results.iter().enumerate().map(|(index, result)| {
            let name = name_of_result(result);
            match cells(calculation, index) {
                1 => name,
                cells => format!("{name} ({cells} cells)"),
            }
        });
        let all: Vec<String> = all.collect();
        let all = format!("{summary} Gives all results in a row: {}.", all.join(", "));
        functions.push(function(format!("{}.ALL", name(calculation)), all, calculation));
    }
    functions
}

fn function(name: String, description: String, calculation: &Calculation) -> Function {
    let parameters = calculation.parameters.iter();
    Function {
        id: id(&name),
        name,
        description,
        parameters: parameters.map(|field| parameter(field, calculation)).collect(),
        result: Of::RESULTS,
    }
}

/// The number of cells of a result.
fn cells(calculation: &Calculation, index: usize) -> usize {
    match calculation.results[index].kind {
        ValueKind::List => places(calculation, index),
        _ => 1,
    }
}

fn meaning(calculation: &Calculation, result: &ResultField) -> String {
    let absent = if result.optional { " #N/A where there is none." } else { "" };
    plain(&renamed(&of_result(result), calculation, full_name)) + absent
}

fn parameter(field: &ParameterField, calculation: &Calculation) -> Parameter {
    let mut description = plain(&renamed(&js::of_parameter(field), calculation, full_name));
    let words = field.parameter.words();
    if !words.is_empty() {
        let _ = write!(description, " One of {}.", words.join(", "));
    }
    Parameter {
        name: name_of(field),
        description,
        of: match field.kind {
            ValueKind::Text | ValueKind::Word { .. } => Of::TEXTS,
            _ => Of::CELLS,
        },
        optional: field.optional,
        repeating: false,
        words: (!words.is_empty()).then(|| enum_id(words)),
    }
}

/// The functions that know all others.
fn of_all() -> Vec<Function> {
    let called = || Parameter {
        name: "name".into(),
        description: "Name of a function, such as PIECE_MASS.".into(),
        of: Of::TEXT,
        optional: false,
        repeating: false,
        words: None,
    };
    let arguments = Parameter {
        name: "arguments".into(),
        description: "The arguments of that function.".into(),
        of: Of::CELLS,
        optional: false,
        repeating: true,
        words: None,
    };
    vec![
        Function {
            id: "WHY".into(),
            name: "WHY".into(),
            description: "Why a function refuses its arguments, with what would fix it. Empty if it does not.".into(),
            parameters: vec![called(), arguments],
            result: Of::RESULTS,
        },
        Function {
            id: "RESULTS".into(),
            name: "RESULTS".into(),
            description: "Names of the results of a function, in a row: the head of what its .ALL gives.".into(),
            parameters: vec![called()],
            result: Of::RESULTS,
        },
    ]
}

/// The lists of words, each with the name of the first parameter that has it.
fn enums() -> Vec<Enum> {
    let mut enums: Vec<Enum> = Vec::new();
    for field in CALCULATIONS.iter().flat_map(|calculation| calculation.parameters) {
        let words = field.parameter.words();
        let id = enum_id(words);
        if words.is_empty() || enums.iter().any(|known| known.id == id) {
            continue;
        }
        let values = words.iter().map(|word| Word { name: word, value: word }).collect();
        enums.push(Enum { id, r#type: "string", values });
    }
    enums
}

fn enum_id(words: &[&str]) -> String {
    let all = parameter::Parameter::ALL.iter();
    let first = all.into_iter().find(|parameter| parameter.words() == words);
    first.map(|parameter| parameter.name().to_uppercase()).unwrap_or_default()
}

fn table() -> String {
    let mut table = String::from(MADE);
    table.push_str(
        "\n/**\n * `NAME: [function of pourwright, parameters, results]`. After a parameter: the unit that an amount as a text is converted\n \
         * to, `1` where it is a pure number, `amount` of any kind, `text`, `word`, or `list` with the units of its columns; `?` where 0 is\n \
         * something else than an omitted parameter. After a result: the number of its cells, where it is a list.\n */\n\
         export const CALCULATIONS = {\n",
    );
    for calculation in CALCULATIONS {
        let parameters = calculation.parameters.iter();
        let parameters = parameters.map(|field| format!("{}: {}", name_of(field), taken(field)));
        let results = calculation.results.iter().enumerate().map(|(index, result)| {
            let name = name_of_result(result);
            match cells(calculation, index) {
                1 => name,
                cells => format!("{name}: {cells}"),
            }
        });
        let fields = [
            js::function(calculation),
            parameters.collect::<Vec<_>>().join(", "),
            results.collect::<Vec<_>>().join(", "),
        ]
        .map(|field| format!("'{field}'"));
        let line = format!("  {}: [{}],", name(calculation), fields.join(", "));
        if line.chars().count() <= WIDTH {
            table.push_str(&line);
        } else {
            let fields = fields.join(",\n    ");
            let _ = write!(table, "  {}: [\n    {fields},\n  ],", name(calculation));
        }
        table.push('\n');
    }
    table + "}\n"
}

/// How the table marks a parameter.
fn taken(field: &ParameterField) -> String {
    let unit = |parameter: parameter::Parameter| amount_unit(parameter.unit()).unwrap_or("1");
    match field.kind {
        ValueKind::Text if field.parameter == parameter::Parameter::Amount => "amount".into(),
        ValueKind::Text => "text".into(),
        ValueKind::Word { .. } => "word".into(),
        ValueKind::List | ValueKind::Rows(_) => {
            let columns = field.parameter.columns().iter();
            let columns: Vec<&str> = columns.map(|column| unit(*column)).collect();
            format!("list {}", columns.join(" | "))
        }
        _ if zero_counts(field) => format!("{} ?", unit(field.parameter)),
        _ => unit(field.parameter).into(),
    }
}

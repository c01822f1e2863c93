//! The JavaScript door: the table that its calls read, and TypeScript types.

use std::fmt::Write as _;

use pourwright::parameter::{IfOmitted, Parameter};
use pourwright::table::{
    Argument, CALCULATIONS, Calculation, ParameterField, ResultField, Value, ValueKind,
};

use crate::File;
use crate::text::{self, wrap};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![
        File::new("bindings/js/src/calculations.js", module()),
        File::new("bindings/js/types/calculations.d.ts", types()),
    ]
}

pub(crate) const MADE: &str =
    "// Made from the table of calculations by `cargo run -p pourwright-generate`: change that.\n";

/// The width of a line.
pub(crate) const WIDTH: usize = 120;

fn module() -> String {
    let mut module = String::from(MADE);
    module.push_str("import { calculations, columnar, functions } from './call.js'\n\n");
    module.push_str("/** In the order of the module. */\nconst CALCULATIONS = calculations({\n");
    for calculation in CALCULATIONS {
        let parameters = calculation.parameters.iter();
        let parameters = parameters.map(|field| marked(name_of(field), taken(field.kind)));
        let results = calculation.results.iter();
        let results = results.map(|result| marked(name_of_result(result), given(result.kind)));
        let fields = [list(parameters), list(results)].map(|fields| format!("'{fields}'"));
        let name = function(calculation);
        let line = format!("  {name}: [{}],", fields.join(", "));
        if line.len() <= WIDTH {
            module.push_str(&line);
        } else {
            let [parameters, results] = fields;
            let _ = write!(module, "  {name}: [\n    {parameters},\n    {results},\n  ],");
        }
        module.push('\n');
    }
    module.push_str("})\n\nexport const {\n");
    for calculation in CALCULATIONS {
        let _ = writeln!(module, "  {},", function(calculation));
    }
    module.push_str("} = functions(CALCULATIONS)\n\n");
    module.push_str("/** The same for columns of numbers. */\n");
    module.push_str("export const columns = columnar(CALCULATIONS)\n");
    module
}

fn list(fields: impl Iterator<Item = String>) -> String {
    fields.collect::<Vec<_>>().join(", ")
}

fn marked(name: String, mark: Option<String>) -> String {
    match mark {
        Some(mark) => format!("{name}: {mark}"),
        None => name,
    }
}

/// How the module's table marks a parameter: a number not at all.
fn taken(kind: ValueKind) -> Option<String> {
    match kind {
        ValueKind::Number | ValueKind::Count => None,
        ValueKind::List => Some("1".into()),
        ValueKind::Rows(columns) => Some(columns.to_string()),
        _ => Some("text".into()),
    }
}

/// How it marks a result.
fn given(kind: ValueKind) -> Option<String> {
    match kind {
        ValueKind::Word { .. } => Some("word".into()),
        ValueKind::List | ValueKind::Rows(_) => Some("list".into()),
        _ => None,
    }
}

/// The name of the function of a calculation.
pub(crate) fn function(calculation: &Calculation) -> String {
    pourwright::parameter::PlainUnit::None.camel_name(calculation.name)
}

pub(crate) fn name_of(field: &ParameterField) -> String {
    named(field.parameter)
}

fn named(parameter: Parameter) -> String {
    parameter.unit().camel_name(parameter.name())
}

pub(crate) fn name_of_result(result: &ResultField) -> String {
    result.unit.camel_name(result.name)
}

/// Whether it can be called with columns of numbers.
fn has_columns(calculation: &Calculation) -> bool {
    calculation
        .parameters
        .iter()
        .any(|field| matches!(field.kind, ValueKind::Number | ValueKind::Count))
        && calculation.results.iter().all(|result| !matches!(result.kind, ValueKind::List))
}

fn types() -> String {
    let mut types = String::from(MADE);
    for calculation in CALCULATIONS {
        types.push('\n');
        of_calculation(&mut types, calculation);
    }
    types.push_str(COLUMNS);
    for calculation in CALCULATIONS.iter().filter(|calculation| has_columns(calculation)) {
        doc(&mut types, "  ", &[in_names(&calculation.summary(), calculation)]);
        let name = function(calculation);
        let _ = writeln!(types, "  {name}: Columnar<typeof {name}>");
    }
    types.push_str("}\n");
    types
}

const COLUMNS: &str = "
/** A function on columns: any number may be a column, and then every result is one. */
type Columnar<Calculation> = Calculation extends (parameters: infer Parameters) => infer Results
  ? (
      parameters: {
        [Name in keyof Parameters]: Parameters[Name] | (number extends Parameters[Name] ? Float64Array : never)
      },
      statuses?: Uint8Array,
    ) => {
      [Name in keyof Results]: Results[Name] extends number | null ? Float64Array : (Results[Name] | null)[]
    }
  : never

/**
 * The calculations for many rows at once: `columns.pieceMass({ cavityVolumeMl: Float64Array.of(9.5, 12), ... })`. Each number
 * is a Float64Array with one number per row, or one number for all rows; at least one is a Float64Array. A row that is
 * refused is NaN (null among words) in all results. `statuses` gets a number per row: 0 calculated, 2 a number of the row is
 * not finite, 6 refused; call the function for that row alone to get the reason.
 *
 * Each throws a {@link PourwrightError} where a parameter is missing, unknown or of another type, or columns differ in length.
 */
export const columns: {
";

fn of_calculation(types: &mut String, calculation: &Calculation) {
    let mut text = paragraphs(calculation);
    if !calculation.cautions.is_empty() {
        text.push(format!("Cautions: {}.", calculation.cautions.join(", ")));
    }
    text.push(format!("@example\n{}", example(calculation)));
    doc(types, "", &text);
    let _ = writeln!(types, "export function {}(parameters: {{", function(calculation));
    for field in calculation.parameters {
        doc(types, "  ", &[in_names(&of_parameter(field), calculation)]);
        let optional = if field.optional { "?" } else { "" };
        let _ = writeln!(types, "  {}{optional}: {}", name_of(field), parameter_type(field));
    }
    types.push_str("}): {\n");
    for result in calculation.results {
        doc(types, "  ", &[in_names(&of_result(result), calculation)]);
        let _ = writeln!(types, "  {}: {}", name_of_result(result), result_type(result));
    }
    types.push_str("}\n");
}

/// A doc comment of these paragraphs. A paragraph with line ends keeps them.
fn doc(types: &mut String, indent: &str, paragraphs: &[String]) {
    let width = WIDTH - indent.len() - 3;
    if let [one] = paragraphs
        && one.chars().count() <= width - 4
        && !one.contains('\n')
    {
        let _ = writeln!(types, "{indent}/** {one} */");
        return;
    }
    let _ = writeln!(types, "{indent}/**");
    for (index, paragraph) in paragraphs.iter().enumerate() {
        if index > 0 {
            let _ = writeln!(types, "{indent} *");
        }
        let lines = if paragraph.contains('\n') {
            paragraph.lines().map(str::to_owned).collect()
        } else {
            wrap(paragraph, width)
        };
        for line in lines {
            let _ = writeln!(types, "{indent} * {line}");
        }
    }
    let _ = writeln!(types, "{indent} */");
}

/// The text of a calculation, a paragraph each.
fn paragraphs(calculation: &Calculation) -> Vec<String> {
    let lines: Vec<&str> = calculation.text.iter().map(|line| line.trim()).collect();
    let paragraphs = lines.split(|line| line.is_empty());
    paragraphs.map(|lines| in_names(&lines.join(" "), calculation)).collect()
}

pub(crate) fn of_parameter(field: &ParameterField) -> String {
    let parameter = field.parameter;
    match field.kind {
        ValueKind::Number | ValueKind::Count => parameter.text().into(),
        ValueKind::List | ValueKind::Rows(_) => {
            let columns = parameter.columns().iter().map(|column| {
                let (meaning, unit) = (column.meaning(), column.unit().symbol());
                format!("{meaning} Unit: {unit}; {}.", column.range_text())
            });
            let of = if parameter.columns().len() == 1 { "numbers" } else { "rows" };
            let range = parameter.range_text();
            let each = columns.collect::<Vec<_>>().join(" Then: ");
            format!("{} {range} {of}, each: {each}{}", parameter.meaning(), default(parameter))
        }
        ValueKind::Word { .. } => format!("{}{}", parameter.meaning(), default(parameter)),
        _ => {
            let range = parameter.range_text();
            format!("{} Range: {range}.{}", parameter.meaning(), default(parameter))
        }
    }
}

/// The default of the parameter, if it may be omitted.
fn default(parameter: Parameter) -> String {
    match parameter.if_omitted() {
        IfOmitted::Required => String::new(),
        IfOmitted::Value(number) => format!(" Default: {number}."),
        IfOmitted::Zero => " Default: 0.".into(),
        IfOmitted::Word(text) | IfOmitted::Text(text) => format!(" Default: {text}."),
        IfOmitted::As(other) => format!(" Default: as {}.", other.name()),
        _ => " Default: none.".into(),
    }
}

fn of_result(result: &ResultField) -> String {
    let meaning = result.meaning.split_whitespace().collect::<Vec<_>>().join(" ");
    let absent =
        if result.optional { " Null where it is not known or does not apply." } else { "" };
    match result.kind {
        ValueKind::Number => format!("{meaning} Unit: {}.{absent}", result.unit.symbol()),
        _ => meaning + absent,
    }
}

fn parameter_type(field: &ParameterField) -> String {
    match field.kind {
        ValueKind::Number | ValueKind::Count => "number".into(),
        ValueKind::List => "Iterable<number>".into(),
        ValueKind::Rows(columns) => {
            format!("Iterable<readonly [{}]>", vec!["number"; columns].join(", "))
        }
        ValueKind::Word { .. } => union(field.parameter.words()),
        _ => "string".into(),
    }
}

fn result_type(result: &ResultField) -> String {
    let value = match result.kind {
        ValueKind::Word { .. } => union(result.words()),
        ValueKind::List => "number[]".into(),
        _ => "number".into(),
    };
    if result.optional { value + " | null" } else { value }
}

fn union(words: &[&str]) -> String {
    words.iter().map(|word| format!("'{word}'")).collect::<Vec<_>>().join(" | ")
}

/// The example as a call and its answer.
fn example(calculation: &Calculation) -> String {
    let example = text::example(calculation);
    let arguments = calculation.parameters.iter().zip(&example.arguments);
    let arguments = arguments.filter_map(|(field, argument)| {
        Some(format!("{}: {}", name_of(field), argument_text(field, argument)?))
    });
    let results = calculation.results.iter().zip(&example.results);
    let results =
        results.map(|(result, value)| format!("{}: {}", name_of_result(result), value_text(value)));
    format!("{}({{ {} }})\n// {{ {} }}", function(calculation), list(arguments), list(results))
}

fn argument_text(field: &ParameterField, argument: &Argument<'_>) -> Option<String> {
    Some(match argument {
        Argument::Number(number) => number.to_string(),
        Argument::Text(text) => format!("'{text}'"),
        Argument::Numbers(numbers) => match field.kind {
            ValueKind::Rows(columns) => {
                let rows = numbers.chunks(columns).map(numbers_text);
                format!("[{}]", rows.collect::<Vec<_>>().join(", "))
            }
            _ => numbers_text(numbers),
        },
        _ => return None,
    })
}

fn value_text(value: &Value) -> String {
    match value {
        Value::Number(number) => number.to_string(),
        Value::Word(word) => format!("'{word}'"),
        Value::Numbers(numbers) => numbers_text(numbers),
        _ => "null".into(),
    }
}

fn numbers_text(numbers: &[f64]) -> String {
    format!("[{}]", list(numbers.iter().map(f64::to_string)))
}

/// `text` with calculations, parameters and results by their names in JavaScript: all that have an underscore, and those in
/// backticks.
fn in_names(text: &str, calculation: &Calculation) -> String {
    renamed(text, calculation, function)
}

/// The same, with what `called` gives for a calculation.
pub(crate) fn renamed(
    text: &str,
    calculation: &Calculation,
    called: impl Fn(&Calculation) -> String,
) -> String {
    let mut renamed = String::with_capacity(text.len());
    let mut before = ' ';
    let mut rest = text;
    while let Some(letter) = rest.chars().next() {
        let in_name = |c: char| c.is_ascii_alphanumeric() || c == '_';
        let end = rest.find(|c| !in_name(c)).unwrap_or(rest.len()).max(letter.len_utf8());
        let (word, after) = rest.split_at(end);
        let marked = word.contains('_') || (before == '`' && after.starts_with('`'));
        let name = marked.then(|| in_javascript(word, calculation, &called)).flatten();
        renamed.push_str(name.as_deref().unwrap_or(word));
        before = word.chars().last().unwrap_or(before);
        rest = after;
    }
    renamed
}

fn in_javascript(
    name: &str,
    calculation: &Calculation,
    called: impl Fn(&Calculation) -> String,
) -> Option<String> {
    let parameter = || Parameter::ALL.iter().find(|parameter| parameter.name() == name);
    let result = || calculation.results.iter().find(|result| result.name == name);
    let other = || CALCULATIONS.iter().find(|other| other.name == name);
    let own = || calculation.parameters.iter().find(|field| field.parameter.name() == name);
    other()
        .map(|other| called(other))
        .or_else(|| own().map(name_of))
        .or_else(|| result().map(name_of_result))
        .or_else(|| parameter().map(|parameter| named(*parameter)))
}

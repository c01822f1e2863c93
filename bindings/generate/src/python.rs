//! The Python door: the calculations as functions with signatures, types and docstrings, on numbers and on columns.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use pourwright::caution::Caution;
use pourwright::parameter::Parameter;
use pourwright::table::{
    Argument, CALCULATIONS, Calculation, ParameterField, ResultField, Value, ValueKind,
};

use crate::File;
use crate::c::{has_result_struct, has_struct, row_name};
use crate::text::{
    amount_unit, camel, has_columns, is_word, of_parameter, of_result, paragraphs, places,
    plain_name, wrap,
};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![
        File::new("bindings/python/src/pourwright/_calculations.py", calculations()),
        File::new("bindings/python/src/pourwright/_table.py", table()),
        File::new("bindings/python/src/pourwright/columns.py", columns()),
        File::new("bindings/python/src/pourwright/arrow.py", cells(&ARROW)),
        File::new("bindings/python/src/pourwright/polars.py", cells(&POLARS)),
    ]
}

const WIDTH: usize = 110;

/// The first parameter that has the words of this one: its name is that of the type.
fn of_words(words: &[&str], otherwise: &str) -> String {
    let first = Parameter::ALL.iter().find(|parameter| parameter.words() == words);
    camel(first.map_or(otherwise, |parameter| parameter.name()))
}

/// The type of words of a parameter.
fn word_type(field: &ParameterField) -> String {
    of_words(field.parameter.words(), field.parameter.name())
}

/// The types of all words that occur: name, meaning, words.
fn all_words() -> Vec<(String, String, &'static [&'static str])> {
    let mut seen = BTreeSet::new();
    let mut all = Vec::new();
    for calculation in CALCULATIONS {
        for field in calculation.parameters.iter().filter(|field| is_word(field)) {
            let name = word_type(field);
            if seen.insert(name.clone()) {
                all.push((name, field.parameter.meaning().to_owned(), field.parameter.words()));
            }
        }
        for result in calculation.results {
            if let ValueKind::Word { .. } = result.kind {
                let words = result.words();
                let name = of_words(words, result.name);
                if seen.insert(name.clone()) {
                    all.push((name, result.meaning.trim().to_owned(), words));
                }
            }
        }
    }
    for parameter in [Parameter::Kind, Parameter::Phase, Parameter::Measures] {
        let name = of_words(parameter.words(), parameter.name());
        if seen.insert(name.clone()) {
            all.push((name, parameter.meaning().to_owned(), parameter.words()));
        }
    }
    all.sort();
    all
}

fn constant(words: &str) -> String {
    let mut name = String::new();
    for letter in words.chars() {
        if letter.is_uppercase() && !name.is_empty() {
            name.push('_');
        }
        name.extend(letter.to_uppercase());
    }
    name + "_WORDS"
}

fn quoted(words: &[&str]) -> String {
    words.iter().map(|word| format!("\"{word}\"")).collect::<Vec<_>>().join(", ")
}

/// A number as Python shows it.
fn number(x: f64) -> String {
    let size = x.abs();
    if x == 0.0 || (1e-4..1e16).contains(&size) {
        return format!("{x:?}").replace("e15", "000000000000000.0");
    }
    let written = format!("{x:e}");
    match written.split_once('e') {
        Some((digits, power)) => {
            let power: i32 = power.parse().expect("Rust writes a whole exponent");
            let sign = if power < 0 { '-' } else { '+' };
            format!("{digits}e{sign}{:02}", power.abs())
        }
        None => written,
    }
}

fn result_class(calculation: &Calculation) -> String {
    format!("{}Result", calculation.struct_name)
}

fn argument_type(field: &ParameterField) -> String {
    let plain = match field.kind {
        ValueKind::Number => "float".to_owned(),
        ValueKind::Count => "SupportsIndex".to_owned(),
        ValueKind::Text => "str".to_owned(),
        ValueKind::Word { .. } => word_type(field),
        ValueKind::Rows(columns) => {
            format!("Iterable[tuple[{}]]", vec!["float"; columns].join(", "))
        }
        _ => "Iterable[float]".to_owned(),
    };
    if field.optional { format!("{plain} | None = None") } else { plain }
}

fn result_type(calculation: &Calculation, result: &ResultField) -> String {
    let plain = match result.kind {
        ValueKind::Number => "float".to_owned(),
        ValueKind::Count => "int".to_owned(),
        ValueKind::Word { .. } => of_words(result.words(), result.name),
        ValueKind::List => "tuple[int, ...]".to_owned(),
        kind => panic!("{calculation:?}: no Python type for a result that is {kind:?}"),
    };
    if result.optional { format!("{plain} | None") } else { plain }
}

/// A result of C as Python has it.
fn made(result: &ResultField, from: &str) -> String {
    match result.kind {
        ValueKind::Number if result.optional => format!("if_number({from})"),
        ValueKind::Count if result.optional => format!("if_count({from})"),
        ValueKind::Word { .. } => {
            let words = of_words(result.words(), result.name);
            let of = if result.optional { "if_word" } else { "word_at" };
            format!("{of}({}, {from})", constant(&words))
        }
        ValueKind::List => format!("tuple({from})"),
        _ => from.to_owned(),
    }
}

/// One entry of a list of a docstring.
fn entry(text: &mut String, indent: &str, name: &str, meaning: &str) {
    let lines = wrap(&format!("{name}: {meaning}"), WIDTH - indent.len());
    for (index, line) in lines.iter().enumerate() {
        let more = if index > 0 { "    " } else { "" };
        writeln!(text, "{indent}{more}{}", line.replace('\\', "\\\\")).unwrap();
    }
}

fn describe(text: &mut String, calculation: &Calculation, role: &str) {
    let paragraphs = paragraphs(calculation, |other| format!(":{role}:`{}`", other.name));
    for (index, paragraph) in paragraphs.iter().enumerate() {
        for (line_index, line) in wrap(paragraph, WIDTH - 4).iter().enumerate() {
            let line = line.replace('\\', "\\\\");
            if index == 0 && line_index == 0 {
                writeln!(text, "    \"\"\"{line}").unwrap();
            } else {
                writeln!(text, "    {line}").unwrap();
            }
        }
        text.push('\n');
    }
}

fn shown(value: &Value) -> String {
    match value {
        Value::Number(x) => number(*x),
        Value::Word(word) => format!("'{word}'"),
        _ => "None".to_owned(),
    }
}

fn shown_result(kind: ValueKind, value: &Value) -> String {
    match (kind, value) {
        (ValueKind::Count, Value::Number(count)) => format!("{count}"),
        (_, Value::Numbers(counts)) => {
            let counts: Vec<String> = counts.iter().map(|count| format!("{count}")).collect();
            format!("({})", counts.join(", "))
        }
        _ => shown(value),
    }
}

fn shown_argument(field: &ParameterField, argument: &Argument<'_>) -> Option<String> {
    match (field.kind, argument) {
        (_, Argument::Omitted) => None,
        (ValueKind::Count, Argument::Number(count)) => Some(format!("{count}")),
        (_, Argument::Number(x)) => Some(number(*x)),
        (_, Argument::Text(text)) => Some(format!("\"{text}\"")),
        (ValueKind::Rows(columns), Argument::Numbers(numbers)) => {
            let rows = numbers.chunks(columns).map(|row| {
                let row: Vec<String> = row.iter().map(|x| number(*x)).collect();
                format!("({})", row.join(", "))
            });
            Some(format!("[{}]", rows.collect::<Vec<_>>().join(", ")))
        }
        (_, Argument::Numbers(numbers)) => {
            let numbers: Vec<String> = numbers.iter().map(|x| number(*x)).collect();
            Some(format!("[{}]", numbers.join(", ")))
        }
        (kind, other) => panic!("{other:?} is not a {kind:?}"),
    }
}

/// The example of a calculation as a doctest.
fn doctest(text: &mut String, calculation: &Calculation) {
    let example = crate::text::example(calculation);
    let arguments =
        calculation.parameters.iter().zip(&example.arguments).filter_map(|(field, argument)| {
            let shown = shown_argument(field, argument)?;
            Some(if field.optional { format!("{}={shown}", field.field) } else { shown })
        });
    let arguments: Vec<String> = arguments.collect();
    writeln!(text, "    >>> {}({})", calculation.name, arguments.join(", ")).unwrap();
    let results = calculation.results.iter().zip(&example.results);
    let shown: Vec<String> = results
        .map(|(result, value)| {
            let shown = shown_result(result.kind, value);
            if has_result_struct(calculation) { format!("{}={shown}", result.field) } else { shown }
        })
        .collect();
    let shown = shown.join(", ");
    if has_result_struct(calculation) {
        writeln!(text, "    {}({shown})\n", result_class(calculation)).unwrap();
    } else {
        writeln!(text, "    {shown}\n").unwrap();
    }
}

fn calculations() -> String {
    let mut text = String::from(
        "\"\"\"The calculations of the library on plain numbers, each with its unit in its name.\n\n\
         Made by ``cargo run -p pourwright-generate``; do not edit.\n\"\"\"\n\n\
         from __future__ import annotations\n\n\
         from collections.abc import Iterable\nfrom dataclasses import dataclass\nfrom typing import Literal, SupportsIndex\n\n\
         from ._call import Arguments, if_count, if_number, if_word, word_at\nfrom ._native import ffi, lib\n\n",
    );
    let words = all_words();
    let mut all: Vec<String> = words.iter().map(|(name, ..)| name.clone()).collect();
    for calculation in CALCULATIONS {
        all.push(calculation.name.to_owned());
        if has_result_struct(calculation) {
            all.push(result_class(calculation));
        }
    }
    all.sort();
    text.push_str("__all__ = [\n");
    for name in &all {
        writeln!(text, "    \"{name}\",").unwrap();
    }
    text.push_str("]\n\n");
    for (name, meaning, words) in &words {
        writeln!(text, "{name} = Literal[{}]", quoted(words)).unwrap();
        writeln!(text, "\"\"\"{meaning}\"\"\"\n").unwrap();
        writeln!(text, "{}: tuple[{name}, ...] = ({},)\n", constant(name), quoted(words)).unwrap();
    }
    for calculation in CALCULATIONS {
        if has_result_struct(calculation) {
            class(&mut text, calculation);
        }
        function(&mut text, calculation);
    }
    text
}

fn class(text: &mut String, calculation: &Calculation) {
    writeln!(text, "\n@dataclass(frozen=True, slots=True)").unwrap();
    writeln!(text, "class {}:", result_class(calculation)).unwrap();
    writeln!(text, "    \"\"\"The results of :func:`{}`.\n\n    Attributes:", calculation.name)
        .unwrap();
    for result in calculation.results {
        let absent = if result.optional { " None where there is none." } else { "" };
        entry(text, "        ", result.field, &(of_result(result) + absent));
    }
    text.push_str("    \"\"\"\n\n");
    for result in calculation.results {
        writeln!(text, "    {}: {}", result.field, result_type(calculation, result)).unwrap();
    }
    text.push('\n');
}

/// The parameters of a signature, those that may be omitted by name alone.
fn signature(text: &mut String, calculation: &Calculation, of: impl Fn(&ParameterField) -> String) {
    let mut star = false;
    for field in calculation.parameters {
        if field.optional && !star {
            text.push_str("    *,\n");
            star = true;
        }
        writeln!(text, "    {}: {},", field.field, of(field)).unwrap();
    }
}

fn of_argument(field: &ParameterField) -> String {
    let text = of_parameter(field, |other| format!("``{}``", plain_name(other)));
    match field.kind {
        ValueKind::Word { .. } => {
            let words: Vec<String> =
                field.parameter.words().iter().map(|word| format!("``{word}``")).collect();
            format!("{text} One of {}.", words.join(", "))
        }
        _ => text,
    }
}

fn function(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    writeln!(text, "\ndef {name}(").unwrap();
    signature(text, calculation, argument_type);
    let gives = match calculation.results {
        [only] if !has_result_struct(calculation) => result_type(calculation, only),
        _ => result_class(calculation),
    };
    writeln!(text, ") -> {gives}:").unwrap();
    describe(text, calculation, "func");
    doctest(text, calculation);
    text.push_str("    Args:\n");
    for field in calculation.parameters {
        entry(text, "        ", field.field, &of_argument(field));
    }
    if let [only] = calculation.results
        && !has_result_struct(calculation)
    {
        text.push_str("\n    Returns:\n");
        let name = plain_result(only);
        entry(text, "        ", &name, &of_result(only));
    }
    text.push_str("\n    Raises:\n        PourwrightError: What is wrong with the arguments, all of it together.\n    \"\"\"\n");
    text.push_str("    given = Arguments()\n");
    let mut of_call = Vec::new();
    let by_struct = has_struct(calculation);
    if by_struct {
        writeln!(text, "    made = ffi.new(\"pour_{name}_input *\")").unwrap();
        writeln!(text, "    made.size = ffi.sizeof(\"pour_{name}_input\")").unwrap();
    }
    for field in calculation.parameters {
        let (field_name, optional) = (field.field, if field.optional { "optional_" } else { "" });
        let count = format!("{}_count", field.parameter.name());
        let read = match field.kind {
            ValueKind::Number => format!("given.{optional}number(\"{field_name}\", {field_name})"),
            ValueKind::Count => format!("given.{optional}count(\"{field_name}\", {field_name})"),
            ValueKind::Text => format!("given.{optional}text(\"{field_name}\", {field_name})"),
            ValueKind::Word { .. } => format!(
                "given.{optional}word({}, \"{field_name}\", {field_name})",
                constant(&word_type(field))
            ),
            kind => {
                let (item, columns) = match kind {
                    ValueKind::Rows(columns) => (row_name(field.parameter), columns),
                    _ => ("double".to_owned(), 0),
                };
                let read = format!(
                    "given.{optional}list(\"{item}[]\", {columns}, \"{field_name}\", {field_name})"
                );
                if by_struct {
                    writeln!(text, "    made.{field_name}, made.{count} = {read}").unwrap();
                } else {
                    of_call.push(format!("*{read}"));
                }
                continue;
            }
        };
        if by_struct {
            writeln!(text, "    made.{field_name} = {read}").unwrap();
        } else {
            of_call.push(read);
        }
    }
    if by_struct {
        of_call.push("made".to_owned());
    }
    let result = match calculation.results {
        _ if has_result_struct(calculation) => format!("pour_{name}_result *"),
        [only] if only.kind == ValueKind::Count => "uint32_t *".to_owned(),
        [only] if matches!(only.kind, ValueKind::Word { .. }) => "int32_t *".to_owned(),
        _ => "double *".to_owned(),
    };
    writeln!(text, "    result = ffi.new(\"{result}\")").unwrap();
    writeln!(text, "    given.call(\n        lib.pour_{name},").unwrap();
    for value in of_call {
        writeln!(text, "        {value},").unwrap();
    }
    text.push_str("        result,\n    )\n");
    match calculation.results {
        [only] if !has_result_struct(calculation) => {
            writeln!(
                text,
                "    found: {} = {}",
                result_type(calculation, only),
                made(only, "result[0]")
            )
            .unwrap();
            text.push_str("    return found\n");
        }
        results => {
            writeln!(text, "    return {}(", result_class(calculation)).unwrap();
            for result in results {
                writeln!(text, "        {},", made(result, &format!("result.{}", result.field)))
                    .unwrap();
            }
            text.push_str("    )\n");
        }
    }
    text.push('\n');
}

fn plain_result(result: &ResultField) -> String {
    result.field.to_owned()
}

/// The calculations whose columns are written by hand.
const BY_HAND: [&str; 2] = ["convert", "density_of_parts"];

fn columns_class(calculation: &Calculation) -> String {
    format!("{}Columns", calculation.struct_name)
}

fn columns() -> String {
    let mut text = String::from(
        "\"\"\"Calculations on whole columns: NumPy arrays of any length, read where they lie.\n\n\
         It needs NumPy: ``pip install pourwright[numpy]``.\n\n\
         Each column is a one-dimensional array, or a number that counts for all rows (as does an array of one row).\n\
         Arrays of ``float64`` are read in place, whatever their strides; other real ones are converted first. What is masked\n\
         in a masked array is read as NaN. A parameter that is None is omitted in every row.\n\n\
         Where a parameter has a unit, its column may also hold amounts as texts, in any unit of their kind: ``[\"1/4 tsp\",\n\
         \"12.5 g\"]``. Cups and spoons are those of ``measures`` where the calculation has it, else US customary; ``\"1 [cup_m]\"``\n\
         names its own. A missing text (None, NaN) is read as NaN. A word counts for all rows. A list counts for all rows, or is\n\
         an array with one dimension more: a list for each row.\n\n\
         A row that is refused is NaN in the results, and does not stop the others. Pass ``statuses``, an array of ``int32``,\n\
         to learn of each row: 0 where it is good, 2 where a number is not finite, 6 where it is refused (a text: 3 where it is\n\
         not valid Unicode, 4 where it is longer than 4096 bytes); the function of the same name in :mod:`pourwright` gives the\n\
         reason. Words of results are their places, counted from 1.\n\n\
         Calculations on numbers are done in the C library for all rows at once, as is ``convert``. Those that take texts or\n\
         lists (``dose_mass``, ``hardness``, ``cavity_of_weights``, ...) are done in a call for each row.\n\n\
         ``out`` is where the results go, arrays of ``float64`` with any strides, also those of the columns themselves; of a\n\
         calculation with several results a mapping from their names. The interpreter is free for other threads meanwhile.\n\n\
         Made by ``cargo run -p pourwright-generate``; do not edit.\n\"\"\"\n\n\
         from __future__ import annotations\n\nfrom collections.abc import Mapping\nfrom dataclasses import dataclass\n\n\
         from ._calculations import (\n",
    );
    let with_columns =
        || CALCULATIONS.iter().filter(|calculation| !BY_HAND.contains(&calculation.name));
    let mut words = BTreeSet::new();
    for field in with_columns().flat_map(|calculation| calculation.parameters) {
        if is_word(field) {
            words.insert(constant(&word_type(field)));
            words.insert(word_type(field));
        }
    }
    for name in &words {
        writeln!(text, "    {name},").unwrap();
    }
    text.push_str(
        ")\nfrom ._columns import (\n    Column,\n    Floats,\n    Lists,\n    Statuses,\n    Texts,\n    by_rows,\n    column,\n    columnar,\n    convert,\n    density_of_parts,\n    if_column,\n    word_of,\n)\nfrom ._native import lib\n\n",
    );
    let mut all = vec!["convert".to_owned(), "density_of_parts".to_owned()];
    for calculation in with_columns() {
        all.push(calculation.name.to_owned());
        if calculation.results.len() > 1 {
            all.push(columns_class(calculation));
        }
    }
    all.sort();
    text.push_str("__all__ = [\n");
    for name in &all {
        writeln!(text, "    \"{name}\",").unwrap();
    }
    text.push_str("]\n\n");
    for calculation in with_columns() {
        if calculation.results.len() > 1 {
            writeln!(text, "\n@dataclass(frozen=True, eq=False, slots=True)").unwrap();
            writeln!(text, "class {}:", columns_class(calculation)).unwrap();
            writeln!(
                text,
                "    \"\"\"The results of :func:`{}`.\n\n    Attributes:",
                calculation.name
            )
            .unwrap();
            for result in calculation.results {
                let mut meaning = of_result(result);
                if result.kind == ValueKind::List {
                    meaning += " A row of them for each row.";
                }
                if let ValueKind::Word { .. } = result.kind {
                    let places = result.words().iter().enumerate();
                    let places: Vec<String> =
                        places.map(|(place, word)| format!("{} {word}", place + 1)).collect();
                    write!(meaning, " {}.", places.join(", ")).unwrap();
                }
                entry(&mut text, "        ", result.field, &meaning);
            }
            text.push_str("    \"\"\"\n\n");
            for result in calculation.results {
                writeln!(text, "    {}: Floats", result.field).unwrap();
            }
            text.push('\n');
        }
        columnar(&mut text, calculation);
    }
    text
}

fn columnar(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    writeln!(text, "\ndef {name}(").unwrap();
    let mut parameters = String::new();
    signature(&mut parameters, calculation, |field| {
        let of = match field.kind {
            ValueKind::Word { .. } => word_type(field),
            ValueKind::Text => "Texts".to_owned(),
            ValueKind::List | ValueKind::Rows(_) => "Lists".to_owned(),
            _ => "Column".to_owned(),
        };
        if field.optional { format!("{of} | None = None") } else { of }
    });
    if !parameters.contains("    *,\n") {
        parameters.push_str("    *,\n");
    }
    text.push_str(&parameters);
    let several = calculation.results.len() > 1;
    let (out, gives) = if several {
        ("Mapping[str, Floats]", columns_class(calculation))
    } else {
        ("Floats", "Floats".to_owned())
    };
    writeln!(
        text,
        "    out: {out} | None = None,\n    statuses: Statuses | None = None,\n) -> {gives}:"
    )
    .unwrap();
    writeln!(text, "    \"\"\"Columns of :func:`pourwright.{name}`.\n\n    Args:").unwrap();
    for field in calculation.parameters {
        entry(text, "        ", field.field, field.parameter.meaning());
    }
    let of_out = if several {
        "Where results go, by their names; new arrays if omitted."
    } else {
        "Where the result goes; a new array if omitted."
    };
    entry(text, "        ", "out", of_out);
    entry(text, "        ", "statuses", "Receives the status of each row.");
    text.push_str("    \"\"\"\n");
    if !has_columns(calculation) {
        text.push_str("    given = {\n");
        for field in calculation.parameters {
            writeln!(text, "        \"{}\": {},", field.field, field.field).unwrap();
        }
        let only = calculation.results[0].field;
        let of_out = if several {
            "out".to_owned()
        } else {
            format!("None if out is None else {{\"{only}\": out}}")
        };
        writeln!(text, "    }}\n    found = by_rows(\"{name}\", given, {of_out}, statuses)")
            .unwrap();
        if several {
            writeln!(text, "    return {}(**found)\n", columns_class(calculation)).unwrap();
        } else {
            writeln!(text, "    return found[\"{only}\"]\n").unwrap();
        }
        return;
    }
    text.push_str("    columns = [\n");
    for field in calculation.parameters.iter().filter(|field| !is_word(field)) {
        let of = if field.optional { "if_column" } else { "column" };
        let unit = amount_unit(field.parameter.unit());
        let unit = unit.map_or_else(String::new, |unit| format!(", \"{unit}\""));
        writeln!(text, "        {of}(\"{}\", {}{unit}),", field.field, field.field).unwrap();
    }
    text.push_str("    ]\n");
    let words: Vec<String> = calculation
        .parameters
        .iter()
        .filter(|field| is_word(field))
        .map(|field| {
            format!(
                "\"{}\": word_of({}, \"{}\", {})",
                field.field,
                constant(&word_type(field)),
                field.field,
                field.field
            )
        })
        .collect();
    let results: Vec<String> =
        calculation.results.iter().map(|result| format!("\"{}\"", result.field)).collect();
    let out = if several {
        "out".to_owned()
    } else {
        format!("None if out is None else {{{}: out}}", results[0])
    };
    writeln!(
        text,
        "    found = columnar(\n        lib.pour_{name}_n,\n        \"pour_{name}\",\n        columns,\n        {{{}}},\n        ({},),\n        {out},\n        statuses,\n    )",
        words.join(", "),
        results.join(", ")
    )
    .unwrap();
    if several {
        writeln!(text, "    return {}(**found)\n", columns_class(calculation)).unwrap();
    } else {
        writeln!(text, "    return found[{}]\n", results[0]).unwrap();
    }
}

/// A tuple of Python.
fn tuple(items: &[String]) -> String {
    let comma = if items.len() == 1 { "," } else { "" };
    format!("({}{comma})", items.join(", "))
}

fn unit(unit: Option<&str>) -> String {
    unit.map_or_else(|| "None".to_owned(), |unit| format!("\"{unit}\""))
}

/// The table as data, for what goes by name.
fn table() -> String {
    let mut text = String::from(
        "\"\"\"The table of calculations as data.\n\n\
         Made by ``cargo run -p pourwright-generate``; do not edit.\n\"\"\"\n\n\
         from __future__ import annotations\n\nfrom . import _calculations as words\n\
         from ._entry import Calculation, Cell, Kind, Parameter, Result\n\n\
         TABLE: tuple[Calculation, ...] = (\n",
    );
    for calculation in CALCULATIONS {
        writeln!(text, "    Calculation(\n        \"{}\",\n        (", calculation.name).unwrap();
        for field in calculation.parameters {
            let (kind, more) = parameter_data(field);
            writeln!(
                text,
                "            Parameter(\"{}\", Kind.{kind}, {}, {}{more}),",
                field.field,
                if field.optional { "True" } else { "False" },
                unit(amount_unit(field.parameter.unit())),
            )
            .unwrap();
        }
        text.push_str("        ),\n        (\n");
        for (index, result) in calculation.results.iter().enumerate() {
            let (kind, more) = match result.kind {
                ValueKind::Number => ("NUMBER", String::new()),
                ValueKind::Count => ("COUNT", String::new()),
                ValueKind::Word { .. } => {
                    let words = constant(&of_words(result.words(), result.name));
                    ("WORD", format!(", words=words.{words}"))
                }
                ValueKind::List => ("LIST", format!(", places={}", places(calculation, index))),
                kind => panic!("{calculation:?}: no Python type for a result that is {kind:?}"),
            };
            let optional = if result.optional { "True" } else { "False" };
            writeln!(
                text,
                "            Result(\"{}\", Kind.{kind}, {optional}{more}),",
                result.field
            )
            .unwrap();
        }
        let of = |is: bool| if is { "True" } else { "False" };
        writeln!(
            text,
            "        ),\n        columnar={},\n        by_struct={},\n        result_struct={},\n    ),",
            of(has_columns(calculation)),
            of(has_struct(calculation)),
            of(has_result_struct(calculation)),
        )
        .unwrap();
    }
    text.push_str(")\n\nCAUTIONS: dict[str, str] = {\n");
    for caution in Caution::ALL {
        writeln!(text, "    \"{}\": \"{}\",", caution.word(), caution.sentence()).unwrap();
    }
    text.push_str("}\n\"\"\"The sentence to show for each caution.\"\"\"\n");
    text
}

/// The kind of a parameter, and what more its entry says.
fn parameter_data(field: &ParameterField) -> (&'static str, String) {
    let cells = || {
        let columns = field.parameter.columns().iter();
        let columns = columns.map(|column| {
            format!("Cell(\"{}\", {})", plain_name(*column), unit(amount_unit(column.unit())))
        });
        tuple(&columns.collect::<Vec<_>>())
    };
    match field.kind {
        ValueKind::Number => ("NUMBER", String::new()),
        ValueKind::Count => ("COUNT", String::new()),
        ValueKind::Text => ("TEXT", String::new()),
        ValueKind::Word { .. } => {
            ("WORD", format!(", words=words.{}", constant(&word_type(field))))
        }
        ValueKind::List => (
            "LIST",
            format!(
                ", cells={}, item=\"double\", count=\"{}_count\"",
                cells(),
                field.parameter.name()
            ),
        ),
        _ => (
            "ROWS",
            format!(
                ", cells={}, item=\"{}\", count=\"{}_count\"",
                cells(),
                row_name(field.parameter),
                field.parameter.name()
            ),
        ),
    }
}

/// A module of functions on columns of a host.
struct Cells {
    module: &'static str,
    head: &'static str,
    /// The result of a function.
    gives: &'static str,
}

const ARROW: Cells = Cells {
    module: "_arrow",
    head: "\"\"\"Calculations on Arrow columns: columns in, columns out, nulls stay nulls.

It needs PyArrow: ``pip install pourwright[arrow]``.

A column is an array or a chunked array of numbers, or of amounts as texts in any unit of their kind (``\"1/4 tsp\"``, plain,
large, viewed or as a dictionary), or anything else that Arrow reads; a number, a text or a word alone counts for all rows.
Lists are lists of Arrow, one for each row, or one sequence for all. A parameter that is None is omitted in every row.

A row with a null in any column is null. A row that is refused is NaN, or null where the result is a word or a list; it does not
stop the others. A result that a good row does not have is null. With ``status=True`` the results have one more column,
``status``: null where the row is good or null, else the codes of what is wrong with it.

One result comes as a float64 array, several (or a status) as a struct array with the results' names. Where a column is
chunked, the results are.
",
    gives: "Arrow",
};

const POLARS: Cells = Cells {
    module: "_polars",
    head: "\"\"\"Calculations as expressions of Polars.

It needs Polars: ``pip install pourwright[polars]``. Importing this module registers the namespace ``pour`` of expressions:
``polars.col(\"volume_ml\").pour.mass_of_volume(1.03)``. The functions here are the same: their first parameter is what the
namespace is called on.

A column is an expression (``polars.col(\"x\")``), of numbers or of amounts as texts in any unit of their kind; a number, a text or
a word alone counts for all rows, so a text is never the name of a column. Lists are columns of lists, or one sequence for all
rows. A parameter that is None is omitted in every row.

A row with a null in any column is null. A row that is refused is NaN, or null where the result is a word or a list; it does not
stop the others. A result that a good row does not have is null. With ``status=True`` the results have one more field,
``status``: null where the row is good or null, else the codes of what is wrong with it.

One result comes as a column of numbers, several (or a status) as one struct with the results' names.
",
    gives: "Expression",
};

fn cells(door: &Cells) -> String {
    let mut text = String::from(door.head);
    text.push_str("\nMade by ``cargo run -p pourwright-generate``; do not edit.\n\"\"\"\n\nfrom __future__ import annotations\n\n");
    let mut words = BTreeSet::new();
    for field in CALCULATIONS.iter().flat_map(|calculation| calculation.parameters) {
        if is_word(field) {
            words.insert(word_type(field));
        }
    }
    text.push_str("from ._calculations import (\n");
    for name in &words {
        writeln!(text, "    {name},").unwrap();
    }
    writeln!(
        text,
        ")\nfrom .{} import {}, Cells, Lists, calculated\n\n__all__ = [",
        door.module, door.gives
    )
    .unwrap();
    let mut names: Vec<&str> = CALCULATIONS.iter().map(|calculation| calculation.name).collect();
    names.sort_unstable();
    for name in names {
        writeln!(text, "    \"{name}\",").unwrap();
    }
    text.push_str("]\n");
    for calculation in CALCULATIONS {
        let name = calculation.name;
        writeln!(text, "\n\ndef {name}(").unwrap();
        let mut parameters = String::new();
        signature(&mut parameters, calculation, |field| {
            let of = match field.kind {
                ValueKind::Word { .. } => format!("{} | Cells", word_type(field)),
                ValueKind::List | ValueKind::Rows(_) => "Lists".to_owned(),
                _ => "Cells".to_owned(),
            };
            if field.optional { format!("{of} | None = None") } else { of }
        });
        if !parameters.contains("    *,\n") {
            parameters.push_str("    *,\n");
        }
        text.push_str(&parameters);
        writeln!(text, "    status: bool = False,\n) -> {}:", door.gives).unwrap();
        writeln!(text, "    \"\"\"Columns of :func:`pourwright.{name}`.\n\n    Args:").unwrap();
        for field in calculation.parameters {
            entry(&mut text, "        ", field.field, field.parameter.meaning());
        }
        entry(&mut text, "        ", "status", "Whether the status of each row is a result too.");
        text.push_str("\n    Returns:\n");
        for result in calculation.results {
            entry(&mut text, "        ", result.field, &of_result(result));
        }
        text.push_str("    \"\"\"\n");
        writeln!(text, "    given = {{").unwrap();
        for field in calculation.parameters {
            writeln!(text, "        \"{}\": {},", field.field, field.field).unwrap();
        }
        writeln!(text, "    }}\n    return calculated(\"{name}\", given, status)").unwrap();
    }
    text
}

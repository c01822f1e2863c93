//! The SQLite door: the calculations as data, and a C function each that calls the C ABI with arguments of SQL.

use std::collections::BTreeMap;
use std::fmt::Write as _;

use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};

use crate::File;
use crate::c::{has_result_struct, has_struct, row_name};
use crate::text::{
    amount_unit, default, literal, of_result, paragraphs, places, plain, plain_name, shown_unit,
};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![File::new("bindings/sqlite/src/calculations.c", calculations())]
}

/// The words of each list of words, by the name of the first that has it.
type Words = BTreeMap<&'static [&'static str], String>;

fn calculations() -> String {
    let mut text = String::from(
        "/* The calculations of the table, and the call of the C ABI that each is. Made by\n   \
         `cargo run -p pourwright-generate`; do not edit. */\n\n#include \"calculation.h\"\n\n#include <string.h>\n\n",
    );
    let mut words = Words::new();
    for calculation in CALCULATIONS {
        for field in calculation.parameters {
            of_words(&mut text, &mut words, field.parameter.name(), field.parameter.words());
        }
        for result in calculation.results {
            of_words(&mut text, &mut words, result.name, result.words());
        }
    }
    for calculation in CALCULATIONS {
        parameters(&mut text, &words, calculation);
        results(&mut text, &words, calculation);
        call(&mut text, calculation);
    }
    writeln!(text, "const struct calculation pour_calculations[] = {{").unwrap();
    for calculation in CALCULATIONS {
        let name = calculation.name;
        let required = calculation.parameters.iter().filter(|field| !field.optional).count();
        let summary = paragraphs(calculation, |other| format!("pour_{}", other.name)).join("\n");
        writeln!(
            text,
            "    {{{}, {}, {required}, {}, parameters_of_{name}, results_of_{name}, call_{name},\n     {}}},",
            literal(&format!("pour_{name}")),
            calculation.parameters.len(),
            calculation.results.len(),
            literal(&plain(&summary))
        )
        .unwrap();
    }
    writeln!(text, "}};\n\nconst int pour_calculation_count = {};", CALCULATIONS.len()).unwrap();
    text
}

fn literal_or_null(text: Option<&str>) -> String {
    text.map_or_else(|| "NULL".to_owned(), literal)
}

fn of_words(text: &mut String, known: &mut Words, name: &str, words: &'static [&'static str]) {
    if words.is_empty() || known.contains_key(words) {
        return;
    }
    let listed: Vec<String> = words.iter().map(|word| literal(word)).collect();
    writeln!(
        text,
        "static const char *const words_of_{name}[] = {{{}, NULL}};\n",
        listed.join(", ")
    )
    .unwrap();
    known.insert(words, format!("words_of_{name}"));
}

fn kind(kind: ValueKind) -> &'static str {
    match kind {
        ValueKind::Number => "NUMBER",
        ValueKind::Count => "COUNT",
        ValueKind::Text => "TEXT",
        ValueKind::Word { .. } => "WORD",
        _ => "LIST",
    }
}

fn parameters(text: &mut String, words: &Words, calculation: &Calculation) {
    let name = calculation.name;
    for field in calculation.parameters {
        if !matches!(field.kind, ValueKind::List | ValueKind::Rows(_)) {
            continue;
        }
        let columns = field.parameter.columns().iter();
        let columns: Vec<String> = columns
            .map(|column| {
                let unit = amount_unit(column.unit());
                format!("{{{}, {}}}", literal(&plain_name(*column)), literal_or_null(unit))
            })
            .collect();
        writeln!(
            text,
            "static const struct column columns_of_{name}_{}[] = {{{}}};\n",
            field.field,
            columns.join(", ")
        )
        .unwrap();
    }
    writeln!(text, "static const struct parameter parameters_of_{name}[] = {{").unwrap();
    for field in calculation.parameters {
        let parameter = field.parameter;
        let columns = match field.kind {
            ValueKind::List => Some(1),
            ValueKind::Rows(columns) => Some(columns),
            _ => None,
        };
        let (columns, count) = match columns {
            Some(count) => (format!("columns_of_{name}_{}", field.field), count),
            None => ("NULL".to_owned(), 0),
        };
        let words = words.get(parameter.words()).map_or("NULL", String::as_str);
        writeln!(
            text,
            "    {{{}, {}, {}, {}, {}, {}, {}, {words}, {columns}, {count},\n     {}}},",
            literal(field.field),
            kind(field.kind),
            u8::from(field.optional),
            literal_or_null(amount_unit(parameter.unit())),
            literal_or_null(shown_unit(parameter.unit())),
            literal_or_null(default(field).as_deref()),
            literal(parameter.range_text()),
            literal(&plain(parameter.meaning())),
        )
        .unwrap();
    }
    text.push_str("};\n\n");
}

/// The name of the column of a result: no parameter has it.
fn column(calculation: &Calculation, result: &ResultField) -> String {
    let is_taken = calculation.parameters.iter().any(|field| field.field == result.field);
    format!("{}{}", if is_taken { "result_" } else { "" }, result.field)
}

fn results(text: &mut String, words: &Words, calculation: &Calculation) {
    writeln!(text, "static const struct result results_of_{}[] = {{", calculation.name).unwrap();
    for (index, result) in calculation.results.iter().enumerate() {
        let places = if result.kind == ValueKind::List { places(calculation, index) } else { 0 };
        writeln!(
            text,
            "    {{{}, {}, {}, {}, {places}, {},\n     {}}},",
            literal(&column(calculation, result)),
            kind(result.kind),
            u8::from(result.optional),
            literal_or_null(shown_unit(result.unit)),
            words.get(result.words()).map_or("NULL", String::as_str),
            literal(&plain(&of_result(result))),
        )
        .unwrap();
    }
    text.push_str("};\n\n");
}

/// The C arguments of a parameter.
fn given(index: usize, field: &ParameterField) -> Vec<String> {
    let member = match field.kind {
        ValueKind::Number => "number",
        ValueKind::Count => "count",
        ValueKind::Word { .. } => "word",
        ValueKind::Text => "text",
        ValueKind::List => {
            return vec![format!("given[{index}].list"), format!("given[{index}].rows")];
        }
        _ => {
            let row = row_name(field.parameter);
            return vec![
                format!("(const {row} *)(const void *)given[{index}].list"),
                format!("given[{index}].rows"),
            ];
        }
    };
    vec![format!("given[{index}].{member}")]
}

fn call(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    writeln!(
        text,
        "static int32_t call_{name}(const struct argument *given, struct value *found, pour_error **error)\n{{"
    )
    .unwrap();
    let by_struct = has_struct(calculation);
    let result = match calculation.results {
        _ if has_result_struct(calculation) => format!("pour_{name}_result"),
        [only] if only.kind == ValueKind::Count => "uint32_t".to_owned(),
        [only] if matches!(only.kind, ValueKind::Word { .. }) => "int32_t".to_owned(),
        _ => "double".to_owned(),
    };
    if by_struct {
        let upper = name.to_uppercase();
        writeln!(text, "    pour_{name}_input input = POUR_{upper}_INPUT_INIT;").unwrap();
    }
    writeln!(text, "    {result} result;\n    int32_t status;\n").unwrap();
    let values = calculation.parameters.iter().enumerate().map(|(index, field)| {
        crate::c::members(field).into_iter().map(|member| member.name).zip(given(index, field))
    });
    let values: Vec<(String, String)> = values.flatten().collect();
    if by_struct {
        for (member, value) in &values {
            writeln!(text, "    input.{member} = {value};").unwrap();
        }
        writeln!(text, "    status = pour_{name}(&input, &result, error);").unwrap();
    } else {
        let values: Vec<&str> = values.iter().map(|(_, value)| value.as_str()).collect();
        writeln!(text, "    status = pour_{name}({}, &result, error);", values.join(", ")).unwrap();
    }
    text.push_str("    if (status != POUR_OK)\n        return status;\n");
    for (index, result) in calculation.results.iter().enumerate() {
        let from = if has_result_struct(calculation) {
            format!("result.{}", result.field)
        } else {
            "result".to_owned()
        };
        let member = match result.kind {
            ValueKind::Count => "count",
            ValueKind::Word { .. } => "word",
            ValueKind::List => {
                writeln!(text, "    memcpy(found[{index}].counts, {from}, sizeof {from});")
                    .unwrap();
                continue;
            }
            _ => "number",
        };
        writeln!(text, "    found[{index}].{member} = {from};").unwrap();
    }
    text.push_str("    return POUR_OK;\n}\n\n");
}

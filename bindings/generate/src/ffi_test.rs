//! Calls of the exports by name, with the arguments of the table, for the tests of `ffi`.

use std::fmt::Write as _;

use pourwright::table::{CALCULATIONS, Calculation, ValueKind};

use crate::c::{has_result_struct, has_struct};
use crate::text::{has_columns, is_word};

/// The calls of the tests of `ffi`.
pub(crate) fn text() -> String {
    let mut text = String::from(
        "//! Every calculation of the table through its export. Made by `cargo run -p pourwright-generate`; do not edit.\n\n\
         use std::mem::MaybeUninit;\n\nuse pourwright::table::{Argument, Value};\nuse pourwright_ffi::*;\n\n\
         use super::by_name::{self, Call, Columns, Outcome};\n\n",
    );
    let names = |filter: fn(&Calculation) -> bool, prefix: &str, kind: &str, doc: &str| {
        let mut list = format!("/// {doc}\npub(crate) const {kind}: &[(&str, {prefix})] = &[\n");
        for calculation in CALCULATIONS.iter().filter(|calculation| filter(calculation)) {
            let name = calculation.name;
            let of = if prefix == "Call" { name.to_owned() } else { format!("{name}_n") };
            writeln!(list, "    (\"{name}\", {of}),").unwrap();
        }
        list + "];\n\n"
    };
    text += &names(|_| true, "Call", "CALLS", "The scalar calls.");
    text += &names(has_columns, "Columns", "COLUMNS", "The columnar calls.");
    for calculation in CALCULATIONS {
        call(&mut text, calculation);
        if has_columns(calculation) {
            columns(&mut text, calculation);
        }
    }
    text
}

/// The names of the C arguments of a parameter, and how they are made of that in `place`.
fn made(calculation: &Calculation, place: usize) -> Vec<(String, String)> {
    let field = &calculation.parameters[place];
    let name = field.field.to_owned();
    let argument = format!("by_name::at(arguments, {place})");
    match field.kind {
        ValueKind::Number => vec![(name, format!("by_name::number({argument})"))],
        ValueKind::Count => vec![(name, format!("by_name::count({argument})"))],
        ValueKind::Word { .. } => {
            vec![(name, format!("by_name::word(\"{}\", {argument})", field.parameter.name()))]
        }
        ValueKind::Text => vec![(name.clone(), format!("by_name::start(&text_{name})"))],
        kind => {
            let columns = if let ValueKind::Rows(columns) = kind { columns } else { 1 };
            vec![
                (name, format!("by_name::list({argument}).0.cast()")),
                (
                    format!("{}_count", field.parameter.name()),
                    match columns {
                        1 => format!("by_name::list({argument}).1"),
                        _ => format!("by_name::list({argument}).1 / {columns}"),
                    },
                ),
            ]
        }
    }
}

fn call(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    writeln!(text, "fn {name}(arguments: &[Argument<'_>]) -> Outcome {{").unwrap();
    let mut arguments = Vec::new();
    for (place, field) in calculation.parameters.iter().enumerate() {
        if matches!(field.kind, ValueKind::Text) {
            writeln!(
                text,
                "    let text_{} = by_name::text(by_name::at(arguments, {place}));",
                field.field
            )
            .unwrap();
        }
        arguments.extend(made(calculation, place));
    }
    let pointers = calculation
        .parameters
        .iter()
        .any(|field| matches!(field.kind, ValueKind::Text | ValueKind::List | ValueKind::Rows(_)));
    let of_call = if has_struct(calculation) {
        writeln!(text, "    let input = pour_{name}_input {{").unwrap();
        writeln!(text, "        size: size_of::<pour_{name}_input>(),").unwrap();
        for (member, value) in &arguments {
            writeln!(text, "        {member}: {value},").unwrap();
        }
        text.push_str("    };\n");
        "&raw const input".to_owned()
    } else {
        arguments.into_iter().map(|(_, value)| value).collect::<Vec<_>>().join(", ")
    };
    let result = if has_result_struct(calculation) {
        format!("MaybeUninit::<pour_{name}_result>::uninit()")
    } else {
        "MaybeUninit::uninit()".to_owned()
    };
    writeln!(text, "    let mut out = {result};").unwrap();
    let made = format!("pour_{name}({of_call}, Some(&mut out), Some(error))");
    let made = if pointers || has_struct(calculation) {
        text.push_str("    // SAFETY: texts that end, and lists that live.\n");
        format!("unsafe {{ {made} }}")
    } else {
        made
    };
    writeln!(text, "    by_name::done(|error| {made})?;").unwrap();
    text.push_str(
        "    // SAFETY: written on success.\n    let out = unsafe { out.assume_init() };\n",
    );
    text.push_str("    Ok(vec![\n");
    for result in calculation.results {
        let value = match (has_result_struct(calculation), result.kind) {
            (true, _) => format!("out.{}", result.field),
            _ => "out".to_owned(),
        };
        let value = match result.kind {
            ValueKind::Number if result.optional => format!("by_name::absent({value})"),
            ValueKind::Number => format!("Value::Number({value})"),
            ValueKind::Count if result.optional => format!("by_name::absent_count({value})"),
            ValueKind::Count => format!("Value::Number(f64::from({value}))"),
            ValueKind::Word { type_name } => {
                format!("by_name::of_place(pourwright::{type_name}::WORDS, {value})")
            }
            _ => format!("Value::Numbers({value}.iter().map(|count| f64::from(*count)).collect())"),
        };
        writeln!(text, "        {value},").unwrap();
    }
    text.push_str("    ])\n}\n\n");
}

fn columns(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    let has_words = calculation.parameters.iter().any(is_word);
    let words = if has_words { "words" } else { "_" };
    writeln!(
        text,
        "fn {name}_n(\n    rows: usize,\n    inputs: &[pour_column],\n    {words}: &[i32],\n    outputs: &[pour_result_column],\n    \
         statuses: *mut i32,\n    error: Option<&mut MaybeUninit<Box<Error>>>,\n) -> i32 {{"
    )
    .unwrap();
    let (mut column, mut word) = (0, 0);
    writeln!(text, "    let columns = pour_{name}_columns {{").unwrap();
    for field in calculation.parameters {
        let (from, place) =
            if is_word(field) { ("words", &mut word) } else { ("inputs", &mut column) };
        writeln!(text, "        {}: {from}[{place}],", field.field).unwrap();
        *place += 1;
    }
    text.push_str("    };\n");
    writeln!(text, "    let results = pour_{name}_result_columns {{").unwrap();
    for (place, result) in calculation.results.iter().enumerate() {
        writeln!(text, "        {}: outputs[{place}],", result.field).unwrap();
    }
    text.push_str("    };\n    // SAFETY: the columns are those of the caller.\n");
    writeln!(
        text,
        "    unsafe {{ pour_{name}_n(rows, Some(&columns), Some(&results), statuses, error) }}\n}}\n"
    )
    .unwrap();
}

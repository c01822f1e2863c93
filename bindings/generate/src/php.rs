//! The PHP door: the calculations as functions with named arguments, and the declarations that it reads.

use std::fmt::Write as _;
use std::fs;

use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};

use crate::c::{has_result_struct, has_struct, row_name};
use crate::script::{
    Syntax, comment, count_of, kind, of_parameter, of_result, word_list, word_lists,
};
use crate::text::{paragraphs, places};
use crate::{File, root};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    let declarations = fs::read_to_string(root().join("ffi/include/pourwright.cdef.h"));
    vec![
        File::new("bindings/php/src/calculations.php", calculations()),
        File::new("bindings/php/src/pourwright.cdef.h", declarations.expect("it is committed")),
    ]
}

const PHP: Syntax = Syntax { quote: '\'', list: ["[", "]"], absent: "null" };

/// The constant of a list of words.
fn constant(list: &str) -> String {
    list.to_uppercase() + "_WORDS"
}

fn calculations() -> String {
    let mut text = String::from(
        "<?php\n\n// The calculations of the library on plain numbers, each with its unit in its name.\n//\n\
         // Made by `cargo run -p pourwright-generate`; do not edit.\n\n\
         declare(strict_types=1);\n\nnamespace Pourwright;\n\nuse Pourwright\\Internal\\Call;\n\n",
    );
    for (name, words) in word_lists() {
        writeln!(text, "const {} = {};", constant(name), PHP.words(words)).unwrap();
    }
    for calculation in CALCULATIONS {
        function(&mut text, calculation);
    }
    text
}

fn argument_type(field: &ParameterField) -> String {
    let plain = match field.kind {
        ValueKind::Number => "float",
        ValueKind::Count => "int",
        ValueKind::Text | ValueKind::Word { .. } => "string",
        _ => "array",
    };
    if field.optional { format!("?{plain}") } else { plain.to_owned() }
}

/// The type of a list as a comment gives it.
fn documented_type(field: &ParameterField) -> String {
    let plain = match field.kind {
        ValueKind::List => "list<float>".to_owned(),
        ValueKind::Rows(columns) => format!("list<array{{{}}}>", vec!["float"; columns].join(", ")),
        _ => return argument_type(field),
    };
    if field.optional { format!("{plain}|null") } else { plain }
}

fn result_type(result: &ResultField) -> String {
    let plain = match result.kind {
        ValueKind::Number => "float",
        ValueKind::Count => "int",
        ValueKind::Word { .. } => "string",
        _ => "list<int>",
    };
    if result.optional { format!("?{plain}") } else { plain.to_owned() }
}

fn function(text: &mut String, calculation: &Calculation) {
    let (name, by_struct) = (calculation.name, has_result_struct(calculation));
    text.push_str("\n/**\n");
    for paragraph in paragraphs(calculation, |other| format!("`{}`", other.name)) {
        comment(text, " * ", "", &paragraph);
        text.push_str(" *\n");
    }
    let given = PHP.arguments(calculation).into_iter();
    let given = given.map(|(field, value)| format!("{}: {value}", field.field));
    let results = PHP.results(calculation).into_iter();
    let found = if by_struct {
        let results = results.map(|(result, value)| format!("'{}' => {value}", result.field));
        format!("[{}]", results.collect::<Vec<_>>().join(", "))
    } else {
        results.map(|(_, value)| value).collect()
    };
    let example = format!("{name}({})", given.collect::<Vec<_>>().join(", "));
    comment(text, " * ", "    ", &format!("Example: `{example}` gives `{found}`."));
    text.push_str(" *\n");
    for field in calculation.parameters {
        let (kind, about) = (documented_type(field), of_parameter(field));
        comment(text, " * ", "    ", &format!("@param {kind} ${} {about}", field.field));
    }
    let results = calculation.results.iter();
    if by_struct {
        let shape = results.clone().map(|one| format!("{}: {}", one.field, result_type(one)));
        let shape = shape.collect::<Vec<_>>().join(", ");
        comment(text, " * ", "    ", &format!("@return array{{{shape}}}"));
        for result in results {
            let about = of_result(result, "Null");
            comment(text, " *     ", "    ", &format!("{}: {about}", result.field));
        }
    } else {
        for result in results {
            let (kind, about) = (result_type(result), of_result(result, "Null"));
            comment(text, " * ", "    ", &format!("@return {kind} {about}"));
        }
    }
    text.push_str(" * @throws PourwrightException All that is wrong with the arguments.\n */\n");

    writeln!(text, "function {name}(").unwrap();
    for field in calculation.parameters {
        let default = if field.optional { " = null" } else { "" };
        writeln!(text, "    {} ${}{default},", argument_type(field), field.field).unwrap();
    }
    let gives = match calculation.results {
        [only] if !by_struct => result_type(only),
        _ => "array".to_owned(),
    };
    writeln!(text, "): {gives} {{\n    return Call::of('{name}', [").unwrap();
    for field in calculation.parameters {
        let name = field.field;
        write!(text, "        ['{name}', '{}', ${name}", kind(field.kind)).unwrap();
        if !field.parameter.words().is_empty() {
            write!(text, ", {}", constant(word_list(field.parameter.words()))).unwrap();
        }
        if let Some(count) = count_of(field) {
            write!(text, ", '{count}'").unwrap();
        }
        if let ValueKind::Rows(columns) = field.kind {
            write!(text, ", {columns}, '{}'", row_name(field.parameter)).unwrap();
        }
        text.push_str("],\n");
    }
    text.push_str("    ], [\n");
    for (index, result) in calculation.results.iter().enumerate() {
        write!(text, "        ['{}', '{}'", result.field, kind(result.kind)).unwrap();
        if !result.words().is_empty() {
            write!(text, ", {}", constant(word_list(result.words()))).unwrap();
        }
        if result.kind == ValueKind::List {
            write!(text, ", {}", places(calculation, index)).unwrap();
        }
        text.push_str("],\n");
    }
    let input = has_struct(calculation);
    writeln!(text, "    ], input: {input}, result: {by_struct});\n}}").unwrap();
}

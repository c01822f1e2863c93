//! The LuaJIT door: the calculations as functions of a table of parameters, and the declarations that it reads.

use std::fmt::Write as _;
use std::fs;

use pourwright::table::{CALCULATIONS, Calculation, ValueKind};

use crate::c::{has_result_struct, has_struct, row_name};
use crate::script::{
    Syntax, comment, count_of, kind, of_parameter, of_result, word_list, word_lists,
};
use crate::text::{paragraphs, places};
use crate::{File, root};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![
        File::new("bindings/lua/src/pourwright/calculations.lua", calculations()),
        File::new("bindings/lua/src/pourwright/declarations.lua", declarations()),
    ]
}

const LUA: Syntax = Syntax { quote: '"', list: ["{ ", " }"], absent: "nil" };

/// The declarations of C as a module: a Lua package has no other files.
fn declarations() -> String {
    let path = root().join("ffi/include/pourwright.cdef.h");
    let declarations = fs::read_to_string(path).expect("it is committed");
    format!(
        "--- The C library's declarations, ffi/include/pourwright.cdef.h.\n--\n\
         -- Made by `cargo run -p pourwright-generate`; do not edit.\n\nreturn [[\n{declarations}]]\n"
    )
}

fn calculations() -> String {
    let mut text = String::from(
        "--- The calculations of the library on plain numbers, each with its unit in its name.\n--\n\
         -- Each takes a table of its parameters by name, and gives a number or a word, or a table of its results by name. It\n\
         -- raises an error with all faults of the call.\n--\n\
         -- Made by `cargo run -p pourwright-generate`; do not edit.\n\n\
         local of = require(\"pourwright.call\").of\n\nlocal words = {\n",
    );
    for (name, words) in word_lists() {
        writeln!(text, "  {name} = {},", LUA.words(words)).unwrap();
    }
    text.push_str("}\n\nlocal calculations = {}\n");
    for calculation in CALCULATIONS {
        function(&mut text, calculation);
    }
    text + "\nreturn calculations\n"
}

/// The type that a comment gives.
fn type_of(kind: ValueKind) -> &'static str {
    match kind {
        ValueKind::Number | ValueKind::Count => "number",
        ValueKind::Text | ValueKind::Word { .. } => "string",
        _ => "table",
    }
}

fn function(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    text.push('\n');
    for (index, paragraph) in
        paragraphs(calculation, |other| format!("`{}`", other.name)).iter().enumerate()
    {
        if index > 0 {
            text.push_str("--\n");
        }
        comment(text, if index > 0 { "-- " } else { "--- " }, "", paragraph);
    }
    let named = |(name, value): (&str, String)| format!("{name} = {value}");
    let given = LUA.arguments(calculation).into_iter().map(|(field, value)| (field.field, value));
    let given = given.map(named).collect::<Vec<_>>().join(", ");
    let results = LUA.results(calculation).into_iter();
    let found = if has_result_struct(calculation) {
        let results = results.filter(|(_, value)| value != LUA.absent);
        let results = results.map(|(result, value)| named((result.field, value)));
        format!("{{ {} }}", results.collect::<Vec<_>>().join(", "))
    } else {
        results.map(|(_, value)| value).collect()
    };
    text.push_str("--\n");
    comment(text, "-- ", "  ", &format!("Example: `{name} {{ {given} }}` gives `{found}`."));
    text.push_str("-- @tparam table given\n");
    for field in calculation.parameters {
        let opt = if field.optional { "[opt]" } else { "" };
        let about = of_parameter(field);
        let line = format!("@tparam{opt} {} given.{} {about}", type_of(field.kind), field.field);
        comment(text, "-- ", "  ", &line);
    }
    if has_result_struct(calculation) {
        text.push_str("-- @treturn table\n");
    }
    for result in calculation.results {
        let name = if has_result_struct(calculation) {
            format!("{}: ", result.field)
        } else {
            String::new()
        };
        let line = format!("@treturn {} {name}{}", type_of(result.kind), of_result(result, "Nil"));
        comment(text, "-- ", "  ", &line);
    }

    writeln!(text, "calculations.{name} = of(\"{name}\", {{").unwrap();
    for field in calculation.parameters {
        write!(text, "  {{ \"{}\", \"{}\"", field.field, kind(field.kind)).unwrap();
        if !field.parameter.words().is_empty() {
            write!(text, ", words = words.{}", word_list(field.parameter.words())).unwrap();
        }
        if let Some(count) = count_of(field) {
            write!(text, ", count = \"{count}\"").unwrap();
        }
        if let ValueKind::Rows(columns) = field.kind {
            let item = row_name(field.parameter);
            write!(text, ", columns = {columns}, item = \"{item}\"").unwrap();
        }
        text.push_str(if field.optional { ", optional = true },\n" } else { " },\n" });
    }
    text.push_str("}, {\n");
    for (index, result) in calculation.results.iter().enumerate() {
        write!(text, "  {{ \"{}\", \"{}\"", result.field, kind(result.kind)).unwrap();
        if !result.words().is_empty() {
            write!(text, ", words = words.{}", word_list(result.words())).unwrap();
        }
        if result.kind == ValueKind::List {
            write!(text, ", count = {}", places(calculation, index)).unwrap();
        }
        text.push_str(" },\n");
    }
    let (input, result) = (has_struct(calculation), has_result_struct(calculation));
    writeln!(text, "}}, {{ input = {input}, result = {result} }})").unwrap();
}

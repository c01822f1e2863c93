//! The Ruby door: the calculations as module functions with keyword arguments.

use std::fmt::Write as _;
use std::fs;

use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};

use crate::c::{has_result_struct, has_struct};
use crate::script::{Syntax, comment, kind, of_parameter, of_result, word_list, word_lists};
use crate::text::{paragraphs, places};
use crate::{File, root};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    let declarations = fs::read_to_string(root().join("ffi/include/pourwright.cdef.h"));
    vec![
        File::new("bindings/ruby/lib/pourwright/calculations.rb", calculations()),
        File::new(
            "bindings/ruby/lib/pourwright/pourwright.cdef.h",
            declarations.expect("it is committed"),
        ),
    ]
}

const RUBY: Syntax = Syntax { quote: '"', list: ["[", "]"], absent: "nil" };

/// The constant of a list of words.
fn constant(list: &str) -> String {
    list.to_uppercase() + "_WORDS"
}

fn calculations() -> String {
    let mut text = String::from(
        "# frozen_string_literal: true\n\n\
         # The calculations of the library on plain numbers, each with its unit in its name.\n#\n\
         # Made by `cargo run -p pourwright-generate`; do not edit.\n\n\
         require_relative \"call\"\n\nmodule Pourwright\n",
    );
    for (name, words) in word_lists() {
        writeln!(text, "  {} = {}.freeze", constant(name), RUBY.words(words)).unwrap();
    }
    text.push_str("\n  module_function\n");
    for calculation in CALCULATIONS {
        function(&mut text, calculation);
    }
    text + "end\n"
}

fn argument_type(field: &ParameterField) -> &'static str {
    match field.kind {
        ValueKind::Number => "Numeric",
        ValueKind::Count => "Integer",
        ValueKind::Text | ValueKind::Word { .. } => "String",
        ValueKind::List => "Array<Numeric>",
        _ => "Array<Array<Numeric>>",
    }
}

fn result_type(result: &ResultField) -> &'static str {
    match result.kind {
        ValueKind::Number => "Float",
        ValueKind::Count => "Integer",
        ValueKind::Word { .. } => "String",
        _ => "Array<Integer>",
    }
}

fn function(text: &mut String, calculation: &Calculation) {
    let (name, by_struct) = (calculation.name, has_result_struct(calculation));
    text.push('\n');
    for paragraph in paragraphs(calculation, |other| format!("`{}`", other.name)) {
        comment(text, "  # ", "", &paragraph);
        text.push_str("  #\n");
    }
    let given = RUBY.arguments(calculation).into_iter();
    let given = given.map(|(field, value)| format!("{}: {value}", field.field));
    let results = RUBY.results(calculation).into_iter();
    let found = if by_struct {
        let results = results.map(|(result, value)| format!("{}: {value}", result.field));
        format!("{{ {} }}", results.collect::<Vec<_>>().join(", "))
    } else {
        results.map(|(_, value)| value).collect()
    };
    let example = format!("{name}({})", given.collect::<Vec<_>>().join(", "));
    comment(text, "  # ", "  ", &format!("Example: `{example}` gives `{found}`."));
    text.push_str("  #\n");
    for field in calculation.parameters {
        let (kind, about) = (argument_type(field), of_parameter(field));
        let none = if field.optional { ", nil" } else { "" };
        comment(text, "  # ", "  ", &format!("@param {} [{kind}{none}] {about}", field.field));
    }
    if by_struct {
        text.push_str("  # @return [Hash{Symbol => Object}] The results by name:\n");
        for result in calculation.results {
            let (kind, about) = (result_type(result), of_result(result, "Nil"));
            comment(text, "  #   ", "  ", &format!("{} [{kind}] {about}", result.field));
        }
    } else {
        for result in calculation.results {
            let (kind, about) = (result_type(result), of_result(result, "Nil"));
            comment(text, "  # ", "  ", &format!("@return [{kind}] {about}"));
        }
    }
    text.push_str("  # @raise [Error] All that is wrong with the arguments.\n");

    let parameters = calculation.parameters.iter().map(|field| {
        let default = if field.optional { " nil" } else { "" };
        format!("{}:{default}", field.field)
    });
    writeln!(text, "  def {name}({})", parameters.collect::<Vec<_>>().join(", ")).unwrap();
    writeln!(text, "    Call.of(\"{name}\", [").unwrap();
    for field in calculation.parameters {
        let name = field.field;
        write!(text, "      [:{name}, :{}, {name}", kind(field.kind)).unwrap();
        if !field.parameter.words().is_empty() {
            write!(text, ", {}", constant(word_list(field.parameter.words()))).unwrap();
        }
        if let ValueKind::Rows(columns) = field.kind {
            write!(text, ", {columns}").unwrap();
        }
        text.push_str("],\n");
    }
    text.push_str("    ], [\n");
    for (index, result) in calculation.results.iter().enumerate() {
        write!(text, "      [:{}, :{}", result.field, kind(result.kind)).unwrap();
        if !result.words().is_empty() {
            write!(text, ", {}", constant(word_list(result.words()))).unwrap();
        }
        if result.kind == ValueKind::List {
            write!(text, ", {}", places(calculation, index)).unwrap();
        }
        text.push_str("],\n");
    }
    let input = has_struct(calculation);
    writeln!(text, "    ], input: {input}, result: {by_struct})\n  end").unwrap();
}

//! The C# door: the calculations as methods with named arguments, and what they call in C.

use std::fmt::Write as _;

use pourwright::parameter::Parameter;
use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};

use crate::File;
use crate::c::{has_result_struct, has_struct, members};
use crate::script::{constants, of_parameter, of_result, word_list, word_lists};
use crate::text::{camel, paragraphs, places, upper, wrap};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![
        File::new("bindings/csharp/src/Calculations.cs", calculations()),
        File::new("bindings/csharp/src/NativeCalculations.cs", native()),
    ]
}

const MADE: &str = "// Made by `cargo run -p pourwright-generate`; do not edit.\n\n";

fn parameter_name(parameter: Parameter) -> String {
    parameter.unit().camel_name(parameter.name())
}

fn property(result: &ResultField) -> String {
    upper(&result.unit.camel_name(result.name))
}

/// A text for a documentation comment.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;")
}

fn comment(text: &mut String, indent: &str, element: &str, end: &str, sentences: &str) {
    let whole = format!("{element}{}{end}", escaped(sentences));
    for line in wrap(&whole, 110 - indent.len()) {
        writeln!(text, "{indent}/// {line}").unwrap();
    }
}

fn argument_type(field: &ParameterField) -> String {
    let (plain, is_reference) = match field.kind {
        ValueKind::Number => ("double", false),
        ValueKind::Count => ("uint", false),
        ValueKind::Text | ValueKind::Word { .. } => ("string", true),
        ValueKind::List => ("double[]", true),
        _ => ("double[][]", true),
    };
    format!("{plain}{}", if field.optional && !is_reference { "?" } else { "" })
}

fn result_type(result: &ResultField) -> String {
    let (plain, is_reference) = match result.kind {
        ValueKind::Number => ("double", false),
        ValueKind::Count => ("uint", false),
        ValueKind::Word { .. } => ("string", true),
        _ => ("uint[]", true),
    };
    format!("{plain}{}", if result.optional && !is_reference { "?" } else { "" })
}

fn words(list: &[&str]) -> String {
    format!("Words.{}", camel(word_list(list)))
}

/// The expression that hands an argument of C# over to C.
fn read(field: &ParameterField) -> String {
    let (name, given) = (field.field, parameter_name(field.parameter));
    let name = format!("\"{name}\", {given}");
    match field.kind {
        ValueKind::Number => format!("call.Number({name})"),
        ValueKind::Count => format!("call.Count({name})"),
        ValueKind::Text => format!("call.Text({name})"),
        ValueKind::Word { .. } => format!("call.Word({name}, {})", words(field.parameter.words())),
        ValueKind::Rows(columns) => format!("call.Rows({name}, {columns})"),
        _ => format!("call.List({name})"),
    }
}

/// A result of C as C# has it.
fn made(result: &ResultField, found: &str) -> String {
    match (result.kind, result.optional) {
        (ValueKind::Number, true) => format!("Call.IfNumber({found})"),
        (ValueKind::Count, true) => format!("Call.IfCount({found})"),
        (ValueKind::Word { .. }, _) => format!("Call.IfWord({found}, {})", words(result.words())),
        _ => found.to_owned(),
    }
}

fn calculations() -> String {
    let mut text = format!(
        "{MADE}using System;\nusing System.Runtime.InteropServices;\n\nnamespace Pourwright\n{{\n"
    );
    text.push_str(
        "    /// <summary>The calculations of the library on plain numbers, each with its unit in its name.</summary>\n    \
         public static class Calculations\n    {\n",
    );
    for (index, calculation) in CALCULATIONS.iter().enumerate() {
        if index > 0 {
            text.push('\n');
        }
        method(&mut text, calculation);
    }
    text.push_str("    }\n");
    for calculation in CALCULATIONS.iter().filter(|calculation| has_result_struct(calculation)) {
        results(&mut text, calculation);
    }
    text + "}\n"
}

fn method(text: &mut String, calculation: &Calculation) {
    let indent = "        ";
    let by_struct = has_result_struct(calculation);
    let paragraphs = paragraphs(calculation, |other| camel(other.name));
    let (summary, rest) = paragraphs.split_first().expect("a calculation has a summary");
    comment(text, indent, "<summary>", "</summary>", summary);
    if !rest.is_empty() {
        comment(text, indent, "<remarks>", "</remarks>", &rest.join(" "));
    }
    for field in calculation.parameters {
        let element = format!("<param name=\"{}\">", parameter_name(field.parameter));
        comment(text, indent, &element, "</param>", &of_parameter(field));
    }
    if let ([only], false) = (calculation.results, by_struct) {
        comment(text, indent, "<returns>", "</returns>", &of_result(only, "Null"));
    }
    comment(
        text,
        indent,
        "<exception cref=\"PourwrightException\">",
        "</exception>",
        "All that is wrong with the arguments.",
    );
    let name = camel(calculation.name);
    let gives = match calculation.results {
        [only] if !by_struct => result_type(only),
        _ => format!("{name}Result"),
    };
    writeln!(text, "{indent}public static {gives} {name}(").unwrap();
    let parameters = calculation.parameters.iter().map(|field| {
        let default = if field.optional { " = null" } else { "" };
        let name = parameter_name(field.parameter);
        format!("{indent}    {} {name}{default}", argument_type(field))
    });
    writeln!(text, "{})", parameters.collect::<Vec<_>>().join(",\n")).unwrap();
    writeln!(text, "{indent}{{\n{indent}    using (var call = new Call())\n{indent}    {{")
        .unwrap();
    let inner = format!("{indent}        ");
    let symbol = format!("pour_{}", calculation.name);
    let mut arguments = Vec::new();
    if has_struct(calculation) {
        writeln!(text, "{inner}var input = new Native.{symbol}_input();").unwrap();
        writeln!(text, "{inner}input.size = (UIntPtr)Marshal.SizeOf<Native.{symbol}_input>();")
            .unwrap();
    }
    for field in calculation.parameters {
        let of = members(field);
        let is_list = of.len() > 1;
        if has_struct(calculation) {
            writeln!(text, "{inner}input.{} = {};", field.field, read(field)).unwrap();
            if is_list {
                writeln!(text, "{inner}input.{} = call.Length;", of[1].name).unwrap();
            }
        } else {
            let argument = format!("c{}", arguments.len());
            writeln!(text, "{inner}var {argument} = {};", read(field)).unwrap();
            arguments.push(argument);
            if is_list {
                let length = format!("c{}", arguments.len());
                writeln!(text, "{inner}var {length} = call.Length;").unwrap();
                arguments.push(length);
            }
        }
    }
    if has_struct(calculation) {
        arguments.push("ref input".to_owned());
    }
    writeln!(text, "{inner}call.Ready();").unwrap();
    let found =
        if by_struct { format!("Native.{symbol}_result") } else { native_result(calculation, 0).1 };
    writeln!(text, "{inner}{found} found;").unwrap();
    arguments.push("out found".to_owned());
    arguments.push("out call.Error".to_owned());
    writeln!(text, "{inner}call.Check(Native.{symbol}({}));", arguments.join(", ")).unwrap();
    let gives = match calculation.results {
        [only] if !by_struct => made(only, "found"),
        _ => format!("new {name}Result(found)"),
    };
    writeln!(text, "{inner}return {gives};\n{indent}    }}\n{indent}}}").unwrap();
}

fn results(text: &mut String, calculation: &Calculation) {
    let name = camel(calculation.name);
    writeln!(text, "\n    /// <summary>The results of {name}.</summary>").unwrap();
    writeln!(text, "    public sealed class {name}Result\n    {{").unwrap();
    let symbol = calculation.name;
    writeln!(text, "        internal {name}Result(Native.pour_{symbol}_result found)\n        {{")
        .unwrap();
    for result in calculation.results {
        let of = made(result, &format!("found.{}", result.field));
        writeln!(text, "            {} = {of};", property(result)).unwrap();
    }
    text.push_str("        }\n");
    for result in calculation.results {
        text.push('\n');
        comment(text, "        ", "<summary>", "</summary>", &of_result(result, "Null"));
        writeln!(text, "        public {} {} {{ get; }}", result_type(result), property(result))
            .unwrap();
    }
    text.push_str("    }\n");
}

/// The attributes and the type of a result as C gives it.
fn native_result(calculation: &Calculation, index: usize) -> (String, String) {
    match calculation.results[index].kind {
        ValueKind::Number => (String::new(), "double".to_owned()),
        ValueKind::Count => (String::new(), "uint".to_owned()),
        ValueKind::Word { .. } => (String::new(), "int".to_owned()),
        _ => {
            let count = places(calculation, index);
            let attribute = format!("[MarshalAs(UnmanagedType.ByValArray, SizeConst = {count})] ");
            (attribute, "uint[]".to_owned())
        }
    }
}

/// The types of a parameter in C.
fn native_types(field: &ParameterField) -> Vec<&'static str> {
    match field.kind {
        ValueKind::Number => vec!["double"],
        ValueKind::Count => vec!["uint"],
        ValueKind::Word { .. } => vec!["int"],
        ValueKind::Text => vec!["IntPtr"],
        _ => vec!["IntPtr", "UIntPtr"],
    }
}

fn native() -> String {
    let mut text = format!("{MADE}using System;\nusing System.Runtime.InteropServices;\n\n");
    text.push_str("namespace Pourwright\n{\n    /// <summary>The words of parameters and results, in their order in C.</summary>\n    internal static class Words\n    {\n");
    for (name, list) in word_lists() {
        let quoted: Vec<String> = list.iter().map(|word| format!("\"{word}\"")).collect();
        let name = camel(name);
        writeln!(text, "        internal static readonly string[] {name} =\n        {{").unwrap();
        for line in wrap(&quoted.join(", "), 100) {
            writeln!(text, "            {line}").unwrap();
        }
        text.push_str("        };\n");
    }
    text.push_str("    }\n\n    internal static partial class Native\n    {\n");
    for (name, number) in constants() {
        writeln!(text, "        internal const uint {name} = {number};").unwrap();
    }
    text.push('\n');
    for (index, calculation) in CALCULATIONS.iter().enumerate() {
        if index > 0 {
            text.push('\n');
        }
        declaration(&mut text, calculation);
    }
    text + "    }\n}\n"
}

fn declaration(text: &mut String, calculation: &Calculation) {
    let symbol = format!("pour_{}", calculation.name);
    let layout = "        [StructLayout(LayoutKind.Sequential)]\n        internal struct";
    let mut arguments = Vec::new();
    if has_struct(calculation) {
        writeln!(text, "{layout} {symbol}_input\n        {{").unwrap();
        text.push_str("            public UIntPtr size;\n");
        for field in calculation.parameters {
            for (member, kind) in members(field).iter().zip(native_types(field)) {
                writeln!(text, "            public {kind} {};", member.name).unwrap();
            }
        }
        text.push_str("        }\n\n");
        arguments.push(format!("ref {symbol}_input input"));
    } else {
        for field in calculation.parameters {
            for (member, kind) in members(field).iter().zip(native_types(field)) {
                arguments.push(format!("{kind} {}", member.name));
            }
        }
    }
    if has_result_struct(calculation) {
        writeln!(text, "{layout} {symbol}_result\n        {{").unwrap();
        for (index, result) in calculation.results.iter().enumerate() {
            let (attribute, kind) = native_result(calculation, index);
            writeln!(text, "            {attribute}public {kind} {};", result.field).unwrap();
        }
        text.push_str("        }\n\n");
        arguments.push(format!("out {symbol}_result found"));
    } else {
        arguments.push(format!("out {} found", native_result(calculation, 0).1));
    }
    arguments.push("out IntPtr error".to_owned());
    text.push_str("        [DllImport(Library, CallingConvention = CallingConvention.Cdecl)]\n");
    writeln!(text, "        internal static extern int {symbol}({});", arguments.join(", "))
        .unwrap();
}

//! The C door: the exports of `ffi` on plain numbers, which cbindgen makes the header of; and the initializers of input
//! structs, which are macros and are in the header as they are.

use std::collections::BTreeSet;
use std::fmt::Write as _;
use std::iter;

use pourwright::parameter::Parameter;
use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};

use crate::File;
use crate::text::{self, has_columns, of_result, paragraphs, places, plain_name, variant, wrap};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![
        File::new("ffi/src/calculations.rs", calculations()),
        File::new("ffi/tests/calculations/calls.rs", crate::ffi_test::text()),
        File::new("ffi/tests/sizes/mod.rs", sizes()),
        File::new("bindings/c/tests/calculations.h", crate::c_test::text()),
    ]
}

/// Maximum number of arguments of a call; a calculation with more takes a struct.
const MOST_ARGUMENTS: usize = 6;

/// The longest line of a comment in the header, without its slashes.
const WIDTH: usize = 108;

/// Whether the inputs come in a struct.
pub(crate) fn has_struct(calculation: &Calculation) -> bool {
    let arguments = calculation.parameters.iter().map(|field| members(field).len());
    arguments.sum::<usize>() > MOST_ARGUMENTS
}

/// Whether the results come in a struct.
pub(crate) fn has_result_struct(calculation: &Calculation) -> bool {
    match calculation.results {
        [only] => matches!(only.kind, ValueKind::List),
        _ => true,
    }
}

/// The type of a parameter in C.
pub(crate) struct Member {
    /// Its name.
    pub(crate) name: String,
    /// Its type in Rust.
    rust: String,
    /// The initializer that leaves it out.
    pub(crate) omitted: &'static str,
    /// Its size in bytes, which is its alignment too, where pointers have eight.
    size: usize,
}

pub(crate) fn members(field: &ParameterField) -> Vec<Member> {
    let member = |name: String, rust: &str, omitted, size| Member {
        name,
        rust: rust.to_owned(),
        omitted,
        size,
    };
    let one = |rust, omitted, size| vec![member(field.field.to_owned(), rust, omitted, size)];
    match field.kind {
        ValueKind::Number => one("f64", "POUR_OMITTED", 8),
        ValueKind::Count => one("u32", "POUR_OMITTED_COUNT", 4),
        ValueKind::Word { .. } => one("i32", "0", 4),
        ValueKind::Text => one("*const c_char", "NULL", 8),
        kind => {
            let item = match kind {
                ValueKind::Rows(_) => row_name(field.parameter),
                _ => "f64".to_owned(),
            };
            vec![
                member(field.field.to_owned(), &format!("*const {item}"), "NULL", 8),
                member(format!("{}_count", field.parameter.name()), "usize", "0", 8),
            ]
        }
    }
}

/// The struct of one row of a list.
pub(crate) fn row_name(parameter: Parameter) -> String {
    format!("pour_{}_row", parameter.name())
}

/// The type and the size of a result.
fn result_type(calculation: &Calculation, index: usize) -> (String, usize, usize) {
    match calculation.results[index].kind {
        ValueKind::Number => ("f64".to_owned(), 8, 8),
        ValueKind::Count => ("u32".to_owned(), 4, 4),
        ValueKind::Word { .. } => ("i32".to_owned(), 4, 4),
        ValueKind::List => {
            let places = places(calculation, index);
            (format!("[u32; {places}]"), 4 * places, 4)
        }
        kind => panic!("{calculation:?}: no C type for a result that is {kind:?}"),
    }
}

/// The sizes of the structs, as C lays them out.
fn sizes() -> String {
    let mut text = String::from(
        "//! The sizes of all generated structs, as C lays them out. Made by `cargo run -p pourwright-generate`.\n\n\
         use std::mem::size_of;\n\nuse pourwright_ffi::*;\n\n\
         /// Name, size that the compiler finds, size that the table gives.\n\
         pub(crate) const SIZES: &[(&str, usize, usize)] = &[\n",
    );
    let mut write = |name: String, members: &mut dyn Iterator<Item = (usize, usize)>| {
        let size = members.fold((0_usize, 1), |(end, most), (size, alignment)| {
            (end.next_multiple_of(alignment) + size, most.max(alignment))
        });
        let size = size.0.next_multiple_of(size.1);
        writeln!(text, "    (\"{name}\", size_of::<{name}>(), {size}),").unwrap();
    };
    let mut rows = BTreeSet::new();
    for calculation in CALCULATIONS {
        let name = calculation.name;
        for field in calculation.parameters {
            if let ValueKind::Rows(columns) = field.kind
                && rows.insert(field.parameter)
            {
                write(row_name(field.parameter), &mut (0..columns).map(|_| (8, 8)));
            }
        }
        if has_struct(calculation) {
            let fields = calculation.parameters.iter().flat_map(members);
            let fields = fields.map(|member| (member.size, member.size));
            write(format!("pour_{name}_input"), &mut iter::once((8, 8)).chain(fields));
        }
        if has_result_struct(calculation) {
            let fields = (0..calculation.results.len()).map(|index| {
                let (_, size, alignment) = result_type(calculation, index);
                (size, alignment)
            });
            write(format!("pour_{name}_result"), &mut { fields });
        }
        if has_columns(calculation) {
            let columns = calculation.parameters.iter().map(|field| match field.kind {
                ValueKind::Word { .. } => (4, 4),
                _ => (16, 8),
            });
            write(format!("pour_{name}_columns"), &mut { columns });
            write(
                format!("pour_{name}_result_columns"),
                &mut calculation.results.iter().map(|_| (16, 8)),
            );
        }
    }
    text + "];\n"
}

/// The macros that initialize input structs: all omitted.
#[must_use]
pub fn initializers() -> String {
    let mut text = String::from(
        "\n/* A number that is omitted: -DBL_MAX, which is in no range. */\n\
         #define POUR_OMITTED (-1.7976931348623157e308)\n\
         /* A length: the text ends at its first NUL. */\n\
         #define POUR_UP_TO_NUL ((size_t)-1)\n\
         /* A pour_material in which everything is omitted. */\n\
         #define POUR_MATERIAL_INIT \\\n    \
         { sizeof(pour_material), NULL, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, POUR_OMITTED, 0 }\n",
    );
    for calculation in CALCULATIONS.iter().filter(|calculation| has_struct(calculation)) {
        let name = calculation.name;
        let members = calculation.parameters.iter().flat_map(members);
        let omitted = members.map(|member| member.omitted).collect::<Vec<_>>().join(", ");
        let omitted = format!("sizeof(pour_{name}_input), {omitted}");
        writeln!(text, "/* A pour_{name}_input in which everything is omitted. */").unwrap();
        writeln!(text, "#define POUR_{}_INPUT_INIT \\", name.to_uppercase()).unwrap();
        let lines = wrap(&omitted, 100);
        writeln!(text, "    {{ {} }}", lines.join(" \\\n      ")).unwrap();
    }
    text
}

/// The prefix of the constants of words: `POUR_FORM_`.
fn prefix(parameter: &str) -> String {
    format!("POUR_{}_", parameter.to_uppercase())
}

/// The constant of a word.
fn constant(prefix: &str, word: &str) -> String {
    format!("{prefix}{}", word.to_uppercase().replace('-', "_"))
}

/// The constants of words: of all parameters that are words, and of all results.
fn words(text: &mut String) {
    let mut seen: BTreeSet<&[&str]> = BTreeSet::new();
    let mut write = |name: &str, words: &'static [&'static str]| {
        if !seen.insert(words) {
            return;
        }
        for (place, word) in words.iter().enumerate() {
            writeln!(text, "/// Of `{name}`: {word}.").unwrap();
            let constant = constant(&prefix(name), word);
            writeln!(text, "pub const {constant}: i32 = {};", place + 1).unwrap();
        }
        text.push('\n');
    };
    for parameter in Parameter::ALL.iter().filter(|parameter| !parameter.words().is_empty()) {
        write(parameter.name(), parameter.words());
    }
    for result in CALCULATIONS.iter().flat_map(|calculation| calculation.results) {
        if let ValueKind::Word { .. } = result.kind {
            write(result.name, result.words());
        }
    }
}

fn comment(text: &mut String, indent: &str, sentences: &str) {
    for line in wrap(sentences, WIDTH - indent.len()) {
        writeln!(text, "{indent}/// {line}").unwrap();
    }
}

fn calculations() -> String {
    let mut text = String::from(
        "//! The calculations of the table, on plain numbers and on columns of them.\n\
         //!\n\
         //! Made by `cargo run -p pourwright-generate`; do not edit.\n\n\
         #![allow(non_camel_case_types)]\n\n\
         use std::ffi::c_char;\nuse std::marker::PhantomData;\nuse std::mem::MaybeUninit;\n\n\
         use pourwright::parameter::Parameter;\nuse pourwright::table::plain::{self, given};\n\n\
         use crate::call::Call;\n\
         use crate::column::{Inputs, Outputs, Rows, pour_column, pour_result_column};\n\
         use crate::error::Error;\nuse crate::failure::together;\nuse crate::guard::guard;\nuse crate::{call, memory};\n\n",
    );
    words(&mut text);
    let mut rows = BTreeSet::new();
    for calculation in CALCULATIONS {
        for field in calculation.parameters {
            if matches!(field.kind, ValueKind::Rows(_)) && rows.insert(field.parameter) {
                row_struct(&mut text, field.parameter);
            }
        }
        if has_struct(calculation) {
            input_struct(&mut text, calculation);
        }
        if has_result_struct(calculation) {
            result_struct(&mut text, calculation);
        }
        scalar(&mut text, calculation);
        if has_columns(calculation) {
            column_structs(&mut text, calculation);
            columnar(&mut text, calculation);
        }
    }
    text
}

const STRUCT: &str = "#[repr(C)]\n#[derive(Debug, Clone, Copy)]\npub struct";

fn row_struct(text: &mut String, parameter: Parameter) {
    comment(text, "", &format!("One row of `{}`. {}", plain_name(parameter), parameter.meaning()));
    writeln!(text, "{STRUCT} {} {{", row_name(parameter)).unwrap();
    for column in parameter.columns() {
        comment(text, "    ", column.text());
        writeln!(text, "    pub {}: f64,", plain_name(*column)).unwrap();
    }
    text.push_str("}\n\n");
}

/// The text of a parameter, with the constants of a word.
fn of_parameter(field: &ParameterField) -> String {
    let mut text = text::of_parameter(field, |other| format!("`{}`", plain_name(other)));
    if let ValueKind::Word { .. } = field.kind {
        let words = field.parameter.words();
        let shared = Parameter::ALL.iter().find(|other| other.words() == words);
        let prefix = prefix(shared.unwrap_or(&field.parameter).name());
        write!(text, " One of `{prefix}...`").unwrap();
        text.push_str(if field.optional { "; 0 omits it." } else { "." });
    }
    text
}

fn input_struct(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    comment(
        text,
        "",
        &format!(
            "The input of `pour_{name}`. Begin with `POUR_{}_INPUT_INIT`, in which everything is omitted.",
            name.to_uppercase()
        ),
    );
    writeln!(text, "{STRUCT} pour_{name}_input {{").unwrap();
    comment(text, "    ", "Size of this struct in bytes, as the macro sets it.");
    text.push_str("    pub size: usize,\n");
    for field in calculation.parameters {
        for (index, member) in members(field).into_iter().enumerate() {
            let meaning = match index {
                0 => of_parameter(field),
                _ => format!("Number of `{}`.", field.field),
            };
            comment(text, "    ", &meaning);
            writeln!(text, "    pub {}: {},", member.name, member.rust).unwrap();
        }
    }
    text.push_str("}\n\n");
}

/// A result, and its value in C where there is none.
fn meaning(result: &ResultField) -> String {
    let mut text = of_result(result);
    if let ValueKind::Word { .. } = result.kind {
        let words = result.words();
        let prefix = prefix(result.name);
        let names: Vec<String> =
            words.iter().map(|word| format!("`{}`", constant(&prefix, word))).collect();
        write!(text, " {}.", names.join(", ")).unwrap();
    }
    if result.optional {
        text.push_str(match result.kind {
            ValueKind::Count => " `POUR_OMITTED_COUNT` where there is none.",
            ValueKind::Word { .. } => " 0 where there is none.",
            _ => " NaN where there is none.",
        });
    }
    text
}

fn result_struct(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    comment(text, "", &format!("The results of `pour_{name}`."));
    writeln!(text, "{STRUCT} pour_{name}_result {{").unwrap();
    for (index, result) in calculation.results.iter().enumerate() {
        comment(text, "    ", &meaning(result));
        writeln!(text, "    pub {}: {},", result.field, result_type(calculation, index).0).unwrap();
    }
    text.push_str("}\n\n");
}

fn description(text: &mut String, calculation: &Calculation) {
    for (index, paragraph) in
        paragraphs(calculation, |other| format!("`pour_{}`", other.name)).iter().enumerate()
    {
        if index > 0 {
            text.push_str("///\n");
        }
        comment(text, "", paragraph);
    }
}

/// How a field of the struct of `table::plain` is read, and whether reading it can fail.
fn reading(field: &ParameterField, from: &str) -> (String, bool) {
    let (name, variant) = (field.field, variant(field.parameter));
    let optional = if field.optional { "optional_" } else { "" };
    let value = format!("{from}{name}");
    match field.kind {
        ValueKind::Number if field.optional => (format!("given({value})"), false),
        ValueKind::Count if field.optional => (format!("call::given_count({value})"), false),
        ValueKind::Number => {
            (format!("call.number(\"{name}\", Parameter::{variant}, {value})"), true)
        }
        ValueKind::Count => {
            (format!("call.count(\"{name}\", Parameter::{variant}, {value})"), true)
        }
        ValueKind::Word { .. } => {
            (format!("call.{optional}word(\"{name}\", Parameter::{variant}, {value})"), true)
        }
        ValueKind::Text => (
            format!("unsafe {{ call.{optional}text(\"{name}\", Parameter::{variant}, {value}) }}"),
            true,
        ),
        ValueKind::List => (
            format!(
                "unsafe {{ call.{optional}list(\"{name}\", Parameter::{variant}, {value}, {from}{}_count) }}",
                field.parameter.name()
            ),
            true,
        ),
        _ => (
            format!(
                "unsafe {{ call.{optional}rows(\"{name}\", Parameter::{variant}, {value}, {from}{}_count) }}",
                field.parameter.name()
            ),
            true,
        ),
    }
}

/// A field of a C result from that of `found`.
fn written(result: &ResultField) -> String {
    let name = result.field;
    match result.kind {
        ValueKind::Word { type_name } if result.optional => format!(
            "found.{name}.map_or(0, |word| call::place(pourwright::{type_name}::WORDS, word.word()))"
        ),
        ValueKind::Word { type_name } => {
            format!("call::place(pourwright::{type_name}::WORDS, found.{name}.word())")
        }
        ValueKind::Number if result.optional => format!("call::result_number(found.{name})"),
        ValueKind::Count if result.optional => format!("call::result_count(found.{name})"),
        _ => format!("found.{name}"),
    }
}

fn scalar(text: &mut String, calculation: &Calculation) {
    let (name, inputs) = (calculation.name, calculation.struct_name);
    let pointers = calculation
        .parameters
        .iter()
        .any(|field| matches!(field.kind, ValueKind::Text | ValueKind::List | ValueKind::Rows(_)));
    let by_struct = has_struct(calculation);
    description(text, calculation);
    if !by_struct {
        text.push_str("///\n");
        for field in calculation.parameters {
            comment(text, "", &format!("`{}`: {}", field.field, of_parameter(field)));
        }
    }
    let (result, result_type, out) = match calculation.results {
        [only] if !has_result_struct(calculation) => {
            text.push_str("///\n");
            comment(text, "", &format!("`{}` receives: {}", only.field, meaning(only)));
            (only.field.to_owned(), result_type(calculation, 0).0, written(only))
        }
        results => {
            let mut made = format!("pour_{name}_result {{\n");
            for result in results {
                writeln!(made, "            {}: {},", result.field, written(result)).unwrap();
            }
            made.push_str("        }");
            ("result".to_owned(), format!("pour_{name}_result"), made)
        }
    };
    // A result may have the name of a parameter, which is then meant.
    let result = if calculation.parameters.iter().any(|field| field.field == result) {
        format!("result_{result}")
    } else {
        result
    };
    text.push_str("#[unsafe(no_mangle)]\n");
    let unsafety = if pointers || by_struct { "unsafe " } else { "" };
    writeln!(text, "pub {unsafety}extern \"C\" fn pour_{name}(").unwrap();
    if by_struct {
        writeln!(text, "    input: *const pour_{name}_input,").unwrap();
    } else {
        for member in calculation.parameters.iter().flat_map(members) {
            writeln!(text, "    {}: {},", member.name, member.rust).unwrap();
        }
    }
    writeln!(text, "    {result}: Option<&mut MaybeUninit<{result_type}>>,").unwrap();
    text.push_str("    error: Option<&mut MaybeUninit<Box<Error>>>,\n) -> i32 {\n");
    writeln!(text, "    let mut {result} = {result};").unwrap();
    text.push_str("    guard(error, &mut || {\n");
    writeln!(text, "        let mut call = Call::new(\"{name}\");").unwrap();
    if by_struct {
        text.push_str(
            "        // SAFETY: the header asks for a struct that begins with its size, or null.\n\
             \x20       let input = unsafe { memory::input(input)? };\n",
        );
    }
    writeln!(
        text,
        "        let result = call.keep(memory::given(\"{result}\", {result}.as_deref_mut()));"
    )
    .unwrap();
    let from = if by_struct { "input." } else { "" };
    let mut fallible = Vec::new();
    for field in calculation.parameters {
        let (read, fails) = reading(field, from);
        if fails {
            if read.starts_with("unsafe") {
                text.push_str(
                    "        // SAFETY: the header asks for a text that ends or an array so long, or null.\n",
                );
            }
            writeln!(text, "        let {} = {read};", field.field).unwrap();
            fallible.push(field.field);
        }
    }
    fallible.push("result");
    // Where something is missing, what is wrong with the numbers that are there is reported with it.
    let numbers = calculation.parameters.iter().filter_map(|field| {
        let (name, variant) = (field.field, variant(field.parameter));
        let number = match field.kind {
            // A parameter that must be given, and is not a field of a struct, was read into a variable of its name.
            ValueKind::Number if !field.optional && !by_struct => name.to_owned(),
            ValueKind::Count if !field.optional && !by_struct => format!("{name}.map(f64::from)"),
            ValueKind::Number => format!("given({from}{name})"),
            ValueKind::Count => format!("call::given_count({from}{name}).map(f64::from)"),
            _ => return None,
        };
        Some(format!("(\"{name}\", Parameter::{variant}, {number})"))
    });
    let numbers = numbers.collect::<Vec<_>>().join(", ");
    all_or_failure(text, &fallible, &format!("call.failure_with(&[{numbers}])"));
    writeln!(text, "        let inputs = plain::{inputs} {{").unwrap();
    for field in calculation.parameters {
        let (read, fails) = reading(field, from);
        if fails {
            writeln!(text, "            {},", field.field).unwrap();
        } else {
            writeln!(text, "            {}: {read},", field.field).unwrap();
        }
    }
    text.push_str("        };\n");
    text.push_str(
        "        let found = inputs.calculate().map_err(|refusal| call.refused(&refusal))?;\n",
    );
    writeln!(text, "        result.write({out});").unwrap();
    text.push_str("        Ok(())\n    })\n}\n\n");
}

/// Takes the values out of options that `call` has kept the failures of.
fn all_or_failure(text: &mut String, names: &[&str], failure: &str) {
    let some = names.iter().map(|name| format!("Some({name})")).collect::<Vec<_>>();
    let (some, names) = match names {
        [only] => (some.join(""), (*only).to_owned()),
        _ => (format!("({})", some.join(", ")), format!("({})", names.join(", "))),
    };
    writeln!(text, "        let {some} = {names} else {{ return Err({failure}) }};").unwrap();
}

fn column_structs(text: &mut String, calculation: &Calculation) {
    let name = calculation.name;
    comment(
        text,
        "",
        &format!(
            "The columns of `pour_{name}_n`: the parameters of `pour_{name}`. Set all to 0 first: a parameter that may be \
             omitted has no column then.{}",
            if calculation.parameters.iter().any(text::is_word) {
                " A word counts for all rows."
            } else {
                ""
            }
        ),
    );
    writeln!(text, "{STRUCT} pour_{name}_columns {{").unwrap();
    for field in calculation.parameters {
        let (of, rust) = match field.kind {
            ValueKind::Word { .. } => (of_parameter(field), "i32"),
            _ if field.optional => {
                (format!("{} May be omitted.", field.parameter.meaning()), "pour_column")
            }
            _ => (field.parameter.meaning().to_owned(), "pour_column"),
        };
        comment(text, "    ", &of);
        writeln!(text, "    pub {}: {rust},", field.field).unwrap();
    }
    text.push_str("}\n\n");
    comment(
        text,
        "",
        &format!(
            "Where `pour_{name}_n` writes its results. Set all to 0 first: what has no column is not written."
        ),
    );
    writeln!(text, "{STRUCT} pour_{name}_result_columns {{").unwrap();
    for result in calculation.results {
        comment(text, "    ", &meaning(result).replace("`POUR_OMITTED_COUNT`", "NaN"));
        writeln!(text, "    pub {}: pour_result_column,", result.field).unwrap();
    }
    text.push_str("}\n\n");
}

fn columnar(text: &mut String, calculation: &Calculation) {
    let (name, inputs) = (calculation.name, calculation.struct_name);
    let columns: Vec<&ParameterField> =
        calculation.parameters.iter().filter(|field| !crate::text::is_word(field)).collect();
    let words: Vec<&ParameterField> =
        calculation.parameters.iter().filter(|field| crate::text::is_word(field)).collect();
    writeln!(text, "/// `pour_{name}` for every row.").unwrap();
    text.push_str("#[unsafe(no_mangle)]\n");
    writeln!(text, "pub unsafe extern \"C\" fn pour_{name}_n(").unwrap();
    text.push_str("    rows: usize,\n");
    writeln!(text, "    columns: Option<&pour_{name}_columns>,").unwrap();
    writeln!(text, "    results: Option<&pour_{name}_result_columns>,").unwrap();
    text.push_str(
        "    statuses: *mut i32,\n    error: Option<&mut MaybeUninit<Box<Error>>>,\n) -> i32 {\n\
         \x20   guard(error, &mut || {\n\
         \x20       together! {\n\
         \x20           columns = memory::given(\"columns\", columns);\n\
         \x20           results = memory::given(\"results\", results);\n\
         \x20       }\n",
    );
    writeln!(text, "        let mut call = Call::new(\"{name}\");").unwrap();
    for field in &words {
        let (read, _) = reading(field, "columns.");
        writeln!(text, "        let {} = {read};", field.field).unwrap();
    }
    text.push_str("        let inputs = [\n");
    for field in &columns {
        let name = field.field;
        let kind = if field.optional { "optional" } else { "required" };
        writeln!(text, "            columns.{name}.{kind}(\"{name}\"),").unwrap();
    }
    text.push_str("        ];\n        let outputs = [\n");
    for result in calculation.results {
        let name = result.field;
        writeln!(text, "            results.{name}.named(\"{name}\"),").unwrap();
    }
    text.push_str(
        "        ];\n\
         \x20       // SAFETY: the header asks for columns of `rows` numbers, or null.\n\
         \x20       let (inputs, outputs) =\n\
         \x20           unsafe { (Inputs::new(rows, inputs), Outputs::new(rows, outputs, statuses)) };\n\
         \x20       let (inputs, outputs) = (call.keep(inputs), call.keep(outputs));\n",
    );
    let mut fallible: Vec<&str> = words.iter().map(|field| field.field).collect();
    fallible.extend(["inputs", "outputs"]);
    all_or_failure(&mut *text, &fallible, "call.failure()");
    let names = columns.iter().map(|field| field.field).collect::<Vec<_>>().join(", ");
    if calculation.has_total {
        return columnar_by_blocks(text, calculation, &names);
    }
    writeln!(text, "        outputs.map(inputs, |[{names}]| {{").unwrap();
    writeln!(text, "            let inputs = plain::{inputs} {{").unwrap();
    for field in calculation.parameters {
        let (name, variant) = (field.field, variant(field.parameter));
        let read = match field.kind {
            ValueKind::Number if field.optional => format!("given({name})"),
            ValueKind::Count if field.optional => {
                format!("call::given_column_count(Parameter::{variant}, {name})?")
            }
            ValueKind::Count => format!("call::column_count(Parameter::{variant}, {name})?"),
            _ => String::new(),
        };
        if read.is_empty() {
            writeln!(text, "                {name},").unwrap();
        } else {
            writeln!(text, "                {name}: {read},").unwrap();
        }
    }
    text.push_str(
        "            };\n            let found = inputs.calculate().map_err(call::row_status)?;\n",
    );
    let results = calculation.results.iter().map(|result| {
        let name = result.field;
        match result.kind {
            ValueKind::Count if result.optional => {
                format!("call::result_number(found.{name}.map(f64::from))")
            }
            ValueKind::Count | ValueKind::Word { .. } => format!("f64::from({})", written(result)),
            _ => written(result),
        }
    });
    writeln!(text, "            Ok([{}])", results.collect::<Vec<_>>().join(", ")).unwrap();
    text.push_str("        });\n        Ok(())\n    })\n}\n\n");
}

/// The rest of a columnar call whose rows are calculated many at a time: `names` are its columns, all numbers.
fn columnar_by_blocks(text: &mut String, calculation: &Calculation, names: &str) {
    let inputs = calculation.struct_name;
    let fields = calculation.parameters.iter().map(|field| match (field.kind, field.optional) {
        (ValueKind::Number, false) => field.field.to_owned(),
        (ValueKind::Number, true) => format!("{0}: given({0})", field.field),
        _ => panic!("{}: only numbers are calculated many at a time", calculation.name),
    });
    let fields = fields.collect::<Vec<_>>().join(", ");
    let results = calculation.results.iter().map(written).collect::<Vec<_>>().join(", ");
    let (count, found) = (calculation.parameters.len(), calculation.results.len());
    writeln!(
        text,
        "        outputs.map_blocks(inputs, &PhantomData::<plain::{inputs}>);\n\
         \x20       Ok(())\n\
         \x20   }})\n\
         }}\n\n\
         impl Rows<{count}, {found}> for PhantomData<plain::{inputs}> {{\n\
         \x20   #[inline(always)]\n\
         \x20   fn total(&self, [{names}]: [f64; {count}]) -> ([f64; {found}], bool) {{\n\
         \x20       let (found, is_answer) = plain::{inputs} {{ {fields} }}.total();\n\
         \x20       ([{results}], is_answer)\n\
         \x20   }}\n\n\
         \x20   fn calculate(&self, [{names}]: [f64; {count}]) -> Result<[f64; {found}], i32> {{\n\
         \x20       let found = plain::{inputs} {{ {fields} }}.calculate().map_err(call::row_status)?;\n\
         \x20       Ok([{results}])\n\
         \x20   }}\n\
         }}\n"
    )
    .unwrap();
}

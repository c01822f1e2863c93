//! The calls of `bindings/c/tests/every_call.c` for each calculation: its example, to the bit, and each parameter wrong.

use std::fmt::Write as _;

use pourwright::parameter::Parameter;
use pourwright::table::{
    Argument, CALCULATIONS, Calculation, ParameterField, ResultField, Value, ValueKind,
};

use crate::c::{has_result_struct, has_struct, members, row_name};
use crate::text::{has_columns, is_word};

pub(crate) fn text() -> String {
    let mut text = String::from(
        "/* Every calculation of the table from C: its example gives its answer to the bit, and each parameter that is wrong is\n \
         * a fault at that parameter. Made by `cargo run -p pourwright-generate`; do not edit. */\n\
         #ifndef CALCULATIONS_H\n#define CALCULATIONS_H\n\n#include <math.h>\n\n#include \"check.h\"\n\n",
    );
    for calculation in CALCULATIONS {
        Cases { text: &mut text, calculation }.write();
        if has_columns(calculation) {
            columns(&mut text, calculation);
        }
    }
    text.push_str("static void calculations(void)\n{\n");
    for calculation in CALCULATIONS {
        writeln!(text, "    of_{}();", calculation.name).unwrap();
        if has_columns(calculation) {
            writeln!(text, "    columns_of_{}();", calculation.name).unwrap();
        }
    }
    text + "}\n\n#endif\n"
}

fn number(number: f64) -> String {
    if number.is_nan() { "NAN".to_owned() } else { format!("{number:?}") }
}

/// The C arguments of a parameter with this argument of the table.
fn arguments(field: &ParameterField, argument: &Argument<'_>) -> Vec<String> {
    if *argument == Argument::Omitted {
        return members(field).iter().map(|member| member.omitted.to_owned()).collect();
    }
    match (field.kind, argument) {
        (ValueKind::Number, Argument::Number(value)) => vec![number(*value)],
        (ValueKind::Count, Argument::Number(count)) => vec![format!("{count}")],
        (ValueKind::Text, Argument::Text(text)) => vec![format!("\"{text}\"")],
        (ValueKind::Word { .. }, Argument::Text(word)) => vec![constant(field.parameter, word)],
        (ValueKind::List, Argument::Numbers(numbers)) => {
            vec![field.field.to_owned(), numbers.len().to_string()]
        }
        (ValueKind::Rows(columns), Argument::Numbers(numbers)) => {
            vec![field.field.to_owned(), (numbers.len() / columns).to_string()]
        }
        (kind, other) => panic!("{other:?} is not a {kind:?}"),
    }
}

fn constant(parameter: Parameter, word: &str) -> String {
    let shared = Parameter::ALL.iter().find(|other| other.words() == parameter.words());
    let name = shared.unwrap_or(&parameter).name().to_uppercase();
    format!("POUR_{name}_{}", word.to_uppercase().replace('-', "_"))
}

/// The checks of one result.
fn check(text: &mut String, found: &str, result: &ResultField, value: &Value) {
    match (result.kind, value) {
        (ValueKind::Count, Value::Absent) => {
            writeln!(text, "    CHECK({found} == POUR_OMITTED_COUNT);")
        }
        (ValueKind::Word { .. }, Value::Absent) => writeln!(text, "    CHECK({found} == 0);"),
        (_, Value::Absent) => writeln!(text, "    CHECK(canonical({found}));"),
        (ValueKind::Count, Value::Number(count)) => {
            writeln!(text, "    CHECK({found} == {count}u);")
        }
        (_, Value::Number(wanted)) => {
            writeln!(text, "    CHECK(same({found}, {}));", number(*wanted))
        }
        (ValueKind::Word { .. }, Value::Word(word)) => {
            let place = result.words().iter().position(|other| other == word);
            writeln!(text, "    CHECK({found} == {});", place.expect("a word of the table") + 1)
        }
        (_, Value::Numbers(counts)) => {
            for (place, count) in counts.iter().enumerate() {
                writeln!(text, "    CHECK({found}[{place}] == {count}u);").unwrap();
            }
            Ok(())
        }
        (kind, value) => panic!("{value:?} is not a {kind:?}"),
    }
    .unwrap();
}

struct Cases<'t> {
    text: &'t mut String,
    calculation: &'static Calculation,
}

impl Cases<'_> {
    fn write(&mut self) {
        let calculation = self.calculation;
        let (name, example) = (calculation.name, crate::text::example(calculation));
        writeln!(self.text, "static void of_{name}(void)\n{{").unwrap();
        for (field, argument) in calculation.parameters.iter().zip(&example.arguments) {
            if let Argument::Numbers(numbers) = argument {
                self.list(field, numbers, field.field, None);
            }
        }
        let result = match calculation.results {
            _ if has_result_struct(calculation) => format!("pour_{name}_result"),
            [only] if only.kind == ValueKind::Count => "uint32_t".to_owned(),
            [only] if matches!(only.kind, ValueKind::Word { .. }) => "int32_t".to_owned(),
            _ => "double".to_owned(),
        };
        writeln!(self.text, "    {result} result;").unwrap();
        let given: Vec<Vec<String>> = calculation
            .parameters
            .iter()
            .zip(&example.arguments)
            .map(|(field, argument)| arguments(field, argument))
            .collect();
        if has_struct(calculation) {
            let upper = name.to_uppercase();
            writeln!(self.text, "    pour_{name}_input input = POUR_{upper}_INPUT_INIT, bad;")
                .unwrap();
            for (field, values) in calculation.parameters.iter().zip(&given) {
                for (member, value) in members(field).iter().zip(values) {
                    if value != member.omitted {
                        writeln!(self.text, "    input.{} = {value};", member.name).unwrap();
                    }
                }
            }
        }
        let right = self.call(&given, None, "&result", "NULL");
        writeln!(self.text, "    CHECK({right} == POUR_OK);").unwrap();
        for (result, value) in calculation.results.iter().zip(&example.results) {
            let found = if has_result_struct(calculation) {
                format!("result.{}", result.field)
            } else {
                "result".to_owned()
            };
            check(self.text, &found, result, value);
        }
        let no_result = self.call(&given, None, "NULL", "error");
        let path = match calculation.results {
            [only] if !has_result_struct(calculation) => {
                let taken = calculation.parameters.iter().any(|field| field.field == only.field);
                if taken { format!("result_{}", only.field) } else { only.field.to_owned() }
            }
            _ => "result".to_owned(),
        };
        writeln!(self.text, "    FAILS({no_result}, POUR_NULL, \"null-pointer\", \"/{path}\");")
            .unwrap();
        if has_struct(calculation) {
            writeln!(
                self.text,
                "    FAILS(pour_{name}(NULL, &result, error), POUR_NULL, \"null-pointer\", \"/input\");"
            )
            .unwrap();
        }
        for (place, field) in calculation.parameters.iter().enumerate() {
            self.wrong(&given, place, field, &example.arguments[place]);
        }
        self.text.push_str("}\n\n");
    }

    /// A list as a constant, with another number in one place where one is given.
    fn list(
        &mut self,
        field: &ParameterField,
        numbers: &[f64],
        name: &str,
        other: Option<(usize, &str)>,
    ) {
        let shown = numbers.iter().enumerate().map(|(place, x)| match other {
            Some((at, other)) if at == place => other.to_owned(),
            _ => number(*x),
        });
        let shown: Vec<String> = shown.collect();
        let (kind, items) = match field.kind {
            ValueKind::Rows(columns) => (
                row_name(field.parameter),
                shown.chunks(columns).map(|row| format!("{{{}}}", row.join(", "))).collect(),
            ),
            _ => ("double".to_owned(), shown),
        };
        writeln!(self.text, "    const {kind} {name}[] = {{{}}};", items.join(", ")).unwrap();
    }

    /// A call with the arguments of the example, those of one parameter in the place of its own.
    fn call(
        &self,
        given: &[Vec<String>],
        other: Option<(usize, &[String])>,
        result: &str,
        error: &str,
    ) -> String {
        let name = self.calculation.name;
        if has_struct(self.calculation) {
            let input = if other.is_some() { "&bad" } else { "&input" };
            return format!("pour_{name}({input}, {result}, {error})");
        }
        let arguments = given.iter().enumerate().flat_map(|(place, values)| match other {
            Some((at, others)) if at == place => others.to_vec(),
            _ => values.clone(),
        });
        let arguments: Vec<String> = arguments.collect();
        format!("pour_{name}({}, {result}, {error})", arguments.join(", "))
    }

    fn wrong(
        &mut self,
        given: &[Vec<String>],
        place: usize,
        field: &ParameterField,
        argument: &Argument<'_>,
    ) {
        let path = format!("/{}", field.field);
        let omitted: Vec<String> =
            members(field).iter().map(|member| member.omitted.to_owned()).collect();
        if !field.optional {
            let status = match field.kind {
                ValueKind::Number | ValueKind::Count => "POUR_REFUSED",
                ValueKind::Word { .. } => "POUR_UNKNOWN_NUMBER",
                _ => "POUR_NULL",
            };
            self.refused(given, place, &omitted, status, "missing-field", &path);
        }
        match field.kind {
            ValueKind::Number => {
                self.refused(given, place, &["NAN".into()], "POUR_NOT_FINITE", "not-finite", &path);
                for bound in bounds(field.parameter) {
                    self.refused(given, place, &[bound], "POUR_REFUSED", "out-of-range", &path);
                }
            }
            ValueKind::Count => {
                let range = field.parameter.range();
                let bad =
                    range.map_or(Vec::new(), |range| vec![range.least - 1.0, range.most + 1.0]);
                for count in bad.into_iter().filter(|count| *count >= 0.0) {
                    let count = format!("{count}");
                    self.refused(given, place, &[count], "POUR_REFUSED", "out-of-range", &path);
                }
            }
            ValueKind::Word { .. } => {
                let unknown = (field.parameter.words().len() + 1).to_string();
                for unknown in [unknown, "-1".to_owned()] {
                    let status = "POUR_UNKNOWN_NUMBER";
                    self.refused(given, place, &[unknown], status, "unknown-word", &path);
                }
            }
            ValueKind::Text => {
                self.refused(
                    given,
                    place,
                    &["\"\\xff\"".into()],
                    "POUR_NOT_UTF8",
                    "not-utf8",
                    &path,
                );
            }
            _ => {
                let null = ["NULL".to_owned(), "1".to_owned()];
                self.refused(given, place, &null, "POUR_NULL", "null-pointer", &path);
                let Argument::Numbers(numbers) = argument else { return };
                let columns = field.parameter.columns().len();
                for column in 0..columns {
                    let at = if columns > 1 {
                        format!("{path}/0/{column}")
                    } else {
                        format!("{path}/0")
                    };
                    self.text.push_str("    {\n    ");
                    self.list(field, numbers, "wrong", Some((column, "NAN")));
                    let list = ["wrong".to_owned(), given[place][1].clone()];
                    self.refused(given, place, &list, "POUR_NOT_FINITE", "not-finite", &at);
                    self.text.push_str("    }\n");
                }
            }
        }
    }

    fn refused(
        &mut self,
        given: &[Vec<String>],
        place: usize,
        other: &[String],
        status: &str,
        code: &str,
        path: &str,
    ) {
        if has_struct(self.calculation) {
            self.text.push_str("    bad = input;\n");
            let field = &self.calculation.parameters[place];
            for (member, value) in members(field).iter().zip(other) {
                writeln!(self.text, "    bad.{} = {value};", member.name).unwrap();
            }
        }
        let call = self.call(given, Some((place, other)), "&result", "error");
        writeln!(self.text, "    REFUSED({call}, {status}, \"{code}\", \"{path}\");").unwrap();
    }
}

/// Numbers just outside the range of a parameter.
fn bounds(parameter: Parameter) -> Vec<String> {
    let Some(range) = parameter.range() else { return Vec::new() };
    let further = |bound: f64| if bound == 0.0 { 1e-9 } else { 1e-6 * bound.abs() };
    let below = if range.above { range.least } else { range.least - further(range.least) };
    let above = if range.below { range.most } else { range.most + further(range.most) };
    vec![number(below), number(above)]
}

/// Two rows: the example, and the same with NaN in the place of its first number.
fn columns(text: &mut String, calculation: &Calculation) {
    let (name, example) = (calculation.name, crate::text::example(calculation));
    let count = calculation.results.len();
    writeln!(text, "static void columns_of_{name}(void)\n{{").unwrap();
    writeln!(text, "    pour_{name}_columns columns = {{0}};").unwrap();
    writeln!(text, "    pour_{name}_result_columns results = {{0}};").unwrap();
    writeln!(text, "    double first[2], out[{count}][2] = {{{{0}}}};\n    int32_t statuses[2];")
        .unwrap();
    let mut is_first = true;
    for (field, argument) in calculation.parameters.iter().zip(&example.arguments) {
        let given = arguments(field, argument).join("");
        let field_name = field.field;
        if is_word(field) {
            writeln!(text, "    columns.{field_name} = {given};").unwrap();
        } else if *argument != Argument::Omitted {
            if is_first {
                writeln!(text, "    first[0] = {given};\n    first[1] = NAN;").unwrap();
                writeln!(text, "    columns.{field_name} = (pour_column){{first, 8}};").unwrap();
                is_first = false;
            } else {
                writeln!(
                    text,
                    "    columns.{field_name} = (pour_column){{&(const double){{{given}}}, 0}};"
                )
                .unwrap();
            }
        }
    }
    for (place, result) in calculation.results.iter().enumerate() {
        writeln!(text, "    results.{} = (pour_result_column){{out[{place}], 8}};", result.field)
            .unwrap();
    }
    writeln!(text, "    CHECK(pour_{name}_n(2, &columns, &results, statuses, NULL) == POUR_OK);")
        .unwrap();
    text.push_str("    CHECK(statuses[0] == POUR_OK && statuses[1] == POUR_NOT_FINITE);\n");
    for (place, (result, value)) in calculation.results.iter().zip(&example.results).enumerate() {
        let wanted = match (result.kind, value) {
            (_, Value::Number(wanted)) => number(*wanted),
            (ValueKind::Word { .. }, Value::Word(word)) => {
                let place = result.words().iter().position(|other| other == word);
                (place.expect("a word of the table") + 1).to_string()
            }
            _ => String::new(),
        };
        if wanted.is_empty() {
            writeln!(text, "    CHECK(canonical(out[{place}][0]) && canonical(out[{place}][1]));")
                .unwrap();
        } else {
            writeln!(
                text,
                "    CHECK(same(out[{place}][0], {wanted}) && canonical(out[{place}][1]));"
            )
            .unwrap();
        }
    }
    writeln!(
        text,
        "    FAILS(pour_{name}_n(2, NULL, &results, statuses, error), POUR_NULL, \"null-pointer\", \"/columns\");"
    )
    .unwrap();
    writeln!(
        text,
        "    FAILS(pour_{name}_n(2, &columns, NULL, statuses, error), POUR_NULL, \"null-pointer\", \"/results\");\n}}\n"
    )
    .unwrap();
}

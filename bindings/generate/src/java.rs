//! The Java door: the calculations as lines of plain text, which it reads as it starts and calls by name.

use std::fmt::Write as _;

use pourwright::table::{CALCULATIONS, ValueKind};

use crate::File;
use crate::c::{has_result_struct, has_struct};
use crate::script::{constants, kind};
use crate::text::places;

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![File::new("bindings/java/src/pourwright/calculations.txt", calculations())]
}

fn calculations() -> String {
    let mut text = String::from(
        "# The calculations of the library, as `cargo run -p pourwright-generate` writes them; do not edit. Of each its name, and\n\
         # whether C takes its arguments and gives its results in a struct; then its parameters and its results, each with its kind,\n\
         # and the words of a word, the numbers in a row, the length of a list. First the constants of C.\n",
    );
    for (name, number) in constants() {
        writeln!(text, "constant\t{name}\t{number}").unwrap();
    }
    for calculation in CALCULATIONS {
        let (input, result) = (has_struct(calculation), has_result_struct(calculation));
        writeln!(text, "calculation\t{}\t{input}\t{result}", calculation.name).unwrap();
        for field in calculation.parameters {
            let more = match field.kind {
                ValueKind::Rows(columns) => columns.to_string(),
                _ => field.parameter.words().join(","),
            };
            let line = format!("parameter\t{}\t{}\t{more}", field.field, kind(field.kind));
            writeln!(text, "{}", line.trim_end()).unwrap();
        }
        for (index, field) in calculation.results.iter().enumerate() {
            let more = match field.kind {
                ValueKind::List => places(calculation, index).to_string(),
                _ => field.words().join(","),
            };
            let line = format!("result\t{}\t{}\t{more}", field.field, kind(field.kind));
            writeln!(text, "{}", line.trim_end()).unwrap();
        }
    }
    text
}

//! The LibreOffice Calc door: the interface of the add-in, and what its Python code knows of each function.

use std::fmt::Write as _;
use std::fs;

use pourwright::parameter::{Parameter, PlainUnit};
use pourwright::table::{CALCULATIONS, Calculation, ParameterField, ResultField, ValueKind};

use crate::c::{has_result_struct, has_struct};
use crate::script::kind;
use crate::text::{
    amount_unit, camel, default, literal, of_result, paragraphs, places, plain, plain_name,
    shown_unit, zero_counts,
};
use crate::{File, root};

/// The files for it.
pub(crate) fn files() -> Vec<File> {
    vec![
        File::new("bindings/calc/src/Pourwright.idl", interface()),
        File::new("bindings/calc/src/pythonpath/pourwright_calc/table.py", table()),
    ]
}

/// A function that is no calculation of the table.
struct Own {
    name: &'static str,
    /// Whether it is given the document that it is in, to find files next to it.
    knows_document: bool,
    /// Whether it gives one value. Calc 7.4 compares a text of a table with no other: it is not in its pool of texts.
    gives_one: bool,
    text: &'static str,
    parameters: &'static [OwnParameter],
}

struct OwnParameter {
    name: &'static str,
    need: Need,
    text: &'static str,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Need {
    Required,
    Optional,
    /// Any number of arguments, at the end.
    Rest,
}

const fn required(name: &'static str, text: &'static str) -> OwnParameter {
    OwnParameter { name, need: Need::Required, text }
}

const fn optional(name: &'static str, text: &'static str) -> OwnParameter {
    OwnParameter { name, need: Need::Optional, text }
}

const BOOK: OwnParameter = required(
    "book",
    "The book: a file (a path, one next to this document, or a file URL) whose name ends in .json, or its JSON text in a cell \
     or a column of cells.",
);

const COLUMNS: OwnParameter = optional(
    "columns",
    "The columns to give, as a text, \"pot, material, measure\", or as cells. Default: all, under a row of their names.",
);

const FORMULAS: OwnParameter = required(
    "formulas",
    "The formulas that are combined, by their names in the book: cells, or a text, \"dusk + salted\".",
);

const BASE_AMOUNT: OwnParameter = optional(
    "base_amount",
    "Amount of base: a text, \"3 cup\", a number of grams, or two cells, a number and its unit. Default: what the \
     formulas are for, if there is no finished_amount.",
);

const FINISHED_AMOUNT: OwnParameter =
    optional("finished_amount", "Amount of finished mix, in place of base_amount. Default: none.");

const OWN: &[Own] = &[
    Own {
        name: "answer",
        knows_document: true,
        gives_one: true,
        text: "Answers a request of the library, JSON in, JSON out: {\"result\": ...}, or {\"faults\": [...]} of a request with \
               faults.",
        parameters: &[
            required("request", "The request: JSON in a cell or a column of cells, or a file."),
            OwnParameter {
                name: "book",
                need: Need::Optional,
                text: "The book, for a request that leaves its book out: a file or JSON. Default: none.",
            },
        ],
    },
    Own {
        name: "cost",
        knows_document: true,
        gives_one: false,
        text: "Cost of an amount of formulas by the prices of a book: a row for each material. Columns: material, mass_g, cost, \
               packages, to_buy, currency.",
        parameters: &[BOOK, FORMULAS, BASE_AMOUNT, FINISHED_AMOUNT, COLUMNS],
    },
    Own {
        name: "field",
        knows_document: false,
        gives_one: true,
        text: "A field of a JSON text, such as POUR_ANSWER gives. #N/A if it is null.",
        parameters: &[
            required("json", "The JSON text."),
            required(
                "path",
                "The names on the way to the field, with slashes between them: \"result/value\", \"result/pots/0/id\". A quantity \
                 gives its number, money its amount, a list of names \"dusk + plain\", any other list or object JSON.",
            ),
        ],
    },
    Own {
        name: "formula",
        knows_document: true,
        gives_one: false,
        text: "Recipe of formulas of a book for an amount: a row for each material. Columns: material, mass_g, ratio, \
               of_finished.",
        parameters: &[BOOK, FORMULAS, BASE_AMOUNT, FINISHED_AMOUNT, COLUMNS],
    },
    Own {
        name: "grams",
        knows_document: true,
        gives_one: false,
        text: "Grams of the materials of a formula that is in the sheet, for a batch: a column, one row for each material.",
        parameters: &[
            BOOK,
            required("materials", "The materials, by their names in the book: a column."),
            required(
                "amounts",
                "The amount of each, per amount of base: a column of texts, \"32 drops\", \"1/4 tsp\", \"8 % of base\"; a number is \
                 of grams; or two columns, numbers and units.",
            ),
            required("per", "The amount of base that these amounts are for: \"1 cup\"."),
            required(
                "base_amount",
                "Amount of base in the batch: a text, \"3 cup\", a number of grams, or two cells, a number and its unit.",
            ),
        ],
    },
    Own {
        name: "plan",
        knows_document: true,
        gives_one: false,
        text: "A day's plan: a row for each pot. Columns: pot, name, cup, cup_ml, stages, mass_g, volume_ml, shots, \
               pieces_ordered, pieces_made, heats, lost_g, left_over_g, sprues_g.",
        parameters: &[BOOK, ORDERS, COLUMNS],
    },
    Own {
        name: "rows",
        knows_document: false,
        gives_one: false,
        text: "A list in a JSON text, such as POUR_ANSWER gives, as rows: one for each entry.",
        parameters: &[
            required("json", "The JSON text."),
            required(
                "list",
                "The path to the list: \"result/stock\". A * is every entry of a list on the way: \"result/pots/*/stages\".",
            ),
            optional(
                "columns",
                "The columns, as a text or as cells: paths in an entry, \"material, mass/value\"; # is the place of the entry, \
                 counted from 1; ^ before a name is the entry that it is in: \"^pot\". Default: all, under a row of their names.",
            ),
        ],
    },
    Own {
        name: "version",
        knows_document: false,
        gives_one: true,
        text: "Version of the library.",
        parameters: &[],
    },
    Own {
        name: "weigh",
        knows_document: true,
        gives_one: false,
        text: "What to weigh on a day: a row for each line. Columns: pot, stage, line, formula, material, kind, add_when, \
               portions, mass_g, tool, measure, gives_g, deviation, tolerance, uncertainty.",
        parameters: &[BOOK, ORDERS, COLUMNS],
    },
    Own {
        name: "why",
        knows_document: true,
        gives_one: true,
        text: "Why a function gives an error: all that is wrong with the call, a line for each fault. An empty text if nothing \
               is. Example: POUR_WHY(\"POUR_CONVERT\"; \"6 oz\"; \"g\").",
        parameters: &[
            required("function", "The name of the function, in quotes."),
            OwnParameter {
                name: "argument",
                need: Need::Rest,
                text: "Its arguments, as they were given to it.",
            },
        ],
    },
];

const ORDERS: OwnParameter = required(
    "orders",
    "The order lines: cells with the names of the fields in the first row (order, product, pieces, ...) and a line in each row \
     below; or an order list as JSON, or a file.",
);

/// A text of each unit in US customary measures and in metric ones, for the help of the function wizard.
const EXAMPLES: &[(PlainUnit, &str, &str)] = &[
    (PlainUnit::Gram, "2 oz wt", "55 g"),
    (PlainUnit::Milliliter, "1/4 tsp", "1.25 mL"),
    (PlainUnit::GramPerMilliliter, "8.6 lb/gal", "1.03 kg/L"),
    (PlainUnit::Celsius, "330 °F", "165 °C"),
    (PlainUnit::PerKelvin, "7e-4 1/K", "7e-4 1/K"),
    (PlainUnit::Kilopascal, "25 inHg", "850 hPa"),
    (PlainUnit::Meter, "2100 ft", "640 m"),
    (PlainUnit::Millimeter, "3/8 in", "9.5 mm"),
    (PlainUnit::Micrometer, "2 mil", "50 um"),
    (PlainUnit::SquareCentimeter, "2 in2", "12 cm2"),
    (PlainUnit::CentimeterPerSecond, "1/2 ft/s", "0.15 m/s"),
    (PlainUnit::Second, "12 min", "12 min"),
    (PlainUnit::MillipascalSecond, "15 Pa.s", "15 Pa.s"),
    (PlainUnit::JoulePerGramKelvin, "0.45 BTU/(lb.°F)", "1900 J/(kg.K)"),
    (PlainUnit::JoulePerKelvin, "90 J/K", "90 J/K"),
    (PlainUnit::SquareMeterPerSecond, "0.11 mm2/s", "0.11 mm2/s"),
    (PlainUnit::Watt, "850 W", "850 W"),
    (PlainUnit::KilojoulePerMole, "32 kcal/mol", "135 kJ/mol"),
];

/// The same of an amount in any unit.
const AMOUNT_EXAMPLES: (&str, &str) = ("1 1/4 cup", "300 mL");

/// The name of a function's method: UNO has no underscores in it.
fn method(name: &str) -> String {
    let camel = camel(name);
    let mut letters = camel.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}

/// A method that gives a table: Calc shows its first cell, or all in an array formula.
const TABLE: &str = "sequence< sequence<any> >";

fn interface() -> String {
    let mut text = String::from(
        "// The functions of the add-in. Made by `cargo run -p pourwright-generate`; do not edit.\n\n\
         module pourwright {\n\ninterface XCalc : com::sun::star::uno::XInterface {\n",
    );
    // Calc shows the first cell of a table, or all of it in an array formula.
    let mut write = |found: &str, name: &str, parameters: &[String]| {
        writeln!(text, "    {found} {}({});", method(name), parameters.join(", ")).unwrap();
    };
    let given = |index: usize| format!("[in] any a{index}");
    for calculation in CALCULATIONS {
        let parameters: Vec<String> = (0..calculation.parameters.len()).map(given).collect();
        write(TABLE, calculation.name, &parameters);
    }
    for own in OWN {
        let document = own
            .knows_document
            .then(|| "[in] com::sun::star::beans::XPropertySet document".to_owned());
        let parameters = own.parameters.iter().enumerate().map(|(index, parameter)| {
            if parameter.need == Need::Rest {
                "[in] sequence<any> rest".to_owned()
            } else {
                given(index)
            }
        });
        let found = if own.gives_one { "any" } else { TABLE };
        write(found, own.name, &document.into_iter().chain(parameters).collect::<Vec<_>>());
    }
    text + "};\n\n};\n"
}

fn table() -> String {
    let mut text = String::from(
        "\"\"\"The functions of the add-in as data: the calculations of the library, and the functions on documents.\n\n\
         Made by ``cargo run -p pourwright-generate``; do not edit.\n\"\"\"\n\n\
         from .parts import Calculation, Column, Own, Parameter, Result\n\n",
    );
    let header =
        fs::read_to_string(root().join("ffi/include/pourwright.h")).expect("it is committed");
    let abi = header.lines().find_map(|line| line.strip_prefix("#define POUR_ABI_VERSION "));
    writeln!(text, "# The version of the C library's interface that the add-in calls.").unwrap();
    writeln!(text, "ABI = {}\n", abi.expect("the header has it")).unwrap();
    text.push_str(
        "# A text in each unit: in US customary measures, and in metric ones.\nEXAMPLES = {\n",
    );
    for (unit, customary, metric) in EXAMPLES {
        writeln!(
            text,
            "    {}: ({}, {}),",
            literal(unit.symbol()),
            literal(customary),
            literal(metric)
        )
        .unwrap();
    }
    let (customary, metric) = AMOUNT_EXAMPLES;
    write!(
        text,
        "}}\nAMOUNT_EXAMPLES = ({}, {})\n\nCALCULATIONS = (\n",
        literal(customary),
        literal(metric)
    )
    .unwrap();
    for calculation in CALCULATIONS {
        of_calculation(&mut text, calculation);
    }
    text.push_str(")\n\nOWN = (\n");
    for own in OWN {
        let name = literal(own.name);
        writeln!(text, "    Own(\n        {name},\n        {},", literal(&method(own.name)))
            .unwrap();
        writeln!(text, "        {},", literal(own.text)).unwrap();
        text.push_str("        (\n");
        for parameter in own.parameters {
            let name = literal(parameter.name);
            writeln!(
                text,
                "            Parameter(\n                {name},\n                \"any\","
            )
            .unwrap();
            writeln!(text, "                {},", literal(parameter.text)).unwrap();
            if parameter.need != Need::Required {
                text.push_str("                optional=True,\n");
            }
            text.push_str("            ),\n");
        }
        text.push_str("        ),\n");
        let python = |is: bool| if is { "True" } else { "False" };
        writeln!(text, "        knows_document={},", python(own.knows_document)).unwrap();
        writeln!(text, "        gives_one={},\n    ),", python(own.gives_one)).unwrap();
    }
    text + ")\n"
}

fn of_calculation(text: &mut String, calculation: &Calculation) {
    let called = |other: &Calculation| format!("POUR_{}", other.name.to_uppercase());
    let about = plain(&paragraphs(calculation, called).join("\n"));
    let python = |is: bool| if is { "True" } else { "False" };
    writeln!(
        text,
        "    Calculation(\n        {},\n        {},\n        {},\n        (",
        literal(calculation.name),
        literal(&method(calculation.name)),
        literal(&about)
    )
    .unwrap();
    for field in calculation.parameters {
        of_parameter(text, field);
    }
    text.push_str("        ),\n        (\n");
    for (index, result) in calculation.results.iter().enumerate() {
        let places = if result.kind == ValueKind::List { places(calculation, index) } else { 0 };
        of_found(text, result, places);
    }
    writeln!(
        text,
        "        ),\n        takes_struct={},\n        gives_struct={},\n    ),",
        python(has_struct(calculation)),
        python(has_result_struct(calculation))
    )
    .unwrap();
}

/// Words as a tuple of Python.
fn words(words: &[&str]) -> String {
    let words: Vec<String> = words.iter().map(|word| literal(word)).collect();
    format!("({},)", words.join(", "))
}

fn of_parameter(text: &mut String, field: &ParameterField) {
    let parameter = field.parameter;
    let mut more = Vec::new();
    let mut named = |name: &str, value: Option<&str>| {
        if let Some(value) = value {
            more.push(format!("{name}={}", literal(value)));
        }
    };
    named("unit", shown_unit(parameter.unit()));
    named("amount_unit", amount_unit(parameter.unit()));
    named("allowed", Some(parameter.range_text()));
    named("if_omitted", default(field).as_deref());
    if field.optional {
        more.push("optional=True".to_owned());
    }
    if zero_counts(field) {
        more.push("zero_counts=True".to_owned());
    }
    if parameter == Parameter::Amount {
        more.push("is_amount=True".to_owned());
    }
    if !parameter.words().is_empty() {
        more.push(format!("words={}", words(parameter.words())));
    }
    let columns = match field.kind {
        ValueKind::List => 1,
        ValueKind::Rows(columns) => columns,
        _ => 0,
    };
    if columns > 0 {
        let columns = parameter.columns().iter().take(columns).map(|column| {
            let unit = amount_unit(column.unit()).map_or("None".to_owned(), literal);
            let text = literal(&plain(column.meaning()));
            format!("Column({}, {unit}, {text})", literal(&plain_name(*column)))
        });
        more.push(format!("columns=({},)", columns.collect::<Vec<_>>().join(", ")));
    }
    let kind = if columns > 0 { "list" } else { kind(field.kind) };
    writeln!(
        text,
        "            Parameter(\n                {},\n                {},\n                {},",
        literal(field.field),
        literal(kind),
        literal(&plain(parameter.meaning()))
    )
    .unwrap();
    for more in more {
        writeln!(text, "                {more},").unwrap();
    }
    text.push_str("            ),\n");
}

fn of_found(text: &mut String, result: &ResultField, places: usize) {
    write!(
        text,
        "            Result({}, {}, {}",
        literal(result.field),
        literal(kind(result.kind)),
        literal(&plain(&of_result(result)))
    )
    .unwrap();
    if !result.words().is_empty() {
        write!(text, ", words={}", words(result.words())).unwrap();
    }
    if places > 0 {
        write!(text, ", places={places}").unwrap();
    }
    text.push_str("),\n");
}

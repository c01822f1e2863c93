//! Plans a day and prints its bench sheet: the demo day, or `day book.json orders.json [--json]`.

use std::io::{self, Write};
use std::process::ExitCode;
use std::{env, fs};

use pourwright::document;
use pourwright::fault::Faults;
use pourwright::json::text;
use pourwright::request::PlanRequest;

const DEMO_BOOK: &str = include_str!("demo/book.json");
const DEMO_ORDERS: &str = include_str!("demo/orders.json");

fn main() -> ExitCode {
    let (options, files): (Vec<String>, Vec<String>) =
        env::args().skip(1).partition(|argument| argument.starts_with("--"));
    let known = options.iter().all(|option| option == "--json");
    let (book, orders) = match files.as_slice() {
        [] if known => ("the demo book".to_owned(), "the demo orders".to_owned()),
        [book, orders] if known => (book.clone(), orders.clone()),
        _ => {
            eprintln!("Usage: day [book.json orders.json] [--json]");
            return ExitCode::from(2);
        }
    };
    match run(&book, &orders, files.is_empty(), !options.is_empty()) {
        // Whoever reads only the first page closes the pipe; that is no panic.
        Ok(text) => match writeln!(io::stdout(), "{text}") {
            Ok(()) => ExitCode::SUCCESS,
            Err(_) => ExitCode::FAILURE,
        },
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn run(book: &str, orders: &str, demo: bool, json: bool) -> Result<String, String> {
    let read = |path: &str, demo_text: &str| {
        if demo {
            Ok(demo_text.to_owned())
        } else {
            fs::read_to_string(path).map_err(|error| format!("{path}: {error}"))
        }
    };
    let in_file = |path: &str, faults: Faults| {
        let all: Vec<String> = faults.iter().map(|fault| format!("{path}: {fault}")).collect();
        all.join("\n")
    };
    let value = |path: &str, demo_text: &str| {
        text::parse(&read(path, demo_text)?).map_err(|faults| in_file(path, faults))
    };
    let request = PlanRequest {
        book: document::read_book(&value(book, DEMO_BOOK)?).map_err(|f| in_file(book, f))?,
        orders: document::read_orders(&value(orders, DEMO_ORDERS)?)
            .map_err(|f| in_file(orders, f))?,
        ext: None,
    };
    let plan = request.answer().map_err(|faults| {
        // The paths go into the request; for the person they go into the two files.
        let all: Vec<String> = faults
            .iter()
            .map(|fault| {
                let text = fault.to_string();
                match (text.strip_prefix("/book"), text.strip_prefix("/orders")) {
                    (Some(rest), _) => format!("{book}{rest}"),
                    (_, Some(rest)) => format!("{orders}{rest}"),
                    _ => text,
                }
            })
            .collect();
        all.join("\n")
    })?;
    if json {
        serde_json::to_string_pretty(&plan).map_err(|error| error.to_string())
    } else {
        Ok(plan.sheet().to_string())
    }
}

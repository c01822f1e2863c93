//! Plans a day and prints its bench sheet: the demo day, or `day book.json orders.json [--json]`.

use std::io::{self, Write};
use std::process::ExitCode;
use std::{env, fs};

use pourwright::document::LoadedBook;
use pourwright::fault::Faults;

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
    let in_file = |path: &str, faults: &Faults| {
        let all: Vec<String> = faults.iter().map(|fault| format!("{path}: {fault}")).collect();
        all.join("\n")
    };
    let (book_text, orders_text) = (read(book, DEMO_BOOK)?, read(orders, DEMO_ORDERS)?);
    let loaded = LoadedBook::from_text(&book_text).map_err(|faults| in_file(book, &faults))?;
    let made = loaded.plan_text(&orders_text).map_err(|faults| in_file(orders, &faults))?;
    if json {
        serde_json::to_string_pretty(&made).map_err(|error| error.to_string())
    } else {
        Ok(made.sheet().to_string())
    }
}

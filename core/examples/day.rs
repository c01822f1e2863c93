//! Plans a day and prints its bench sheet, or with `--notes` what to know beyond it, or with `--json` the plan: the demo
//! day, or `day book.json orders.json`.

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
    let print = match options.iter().map(String::as_str).collect::<Vec<_>>().as_slice() {
        [] => Some(Print::Sheet),
        ["--notes"] => Some(Print::Notes),
        ["--json"] => Some(Print::Json),
        _ => None,
    };
    let (print, book, orders) = match (print, files.as_slice()) {
        (Some(print), []) => (print, "the demo book".to_owned(), "the demo orders".to_owned()),
        (Some(print), [book, orders]) => (print, book.clone(), orders.clone()),
        _ => {
            eprintln!("Usage: day [book.json orders.json] [--notes | --json]");
            return ExitCode::from(2);
        }
    };
    match run(&book, &orders, files.is_empty(), print) {
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

/// Part of the plan to print.
enum Print {
    Sheet,
    Notes,
    Json,
}

fn run(book: &str, orders: &str, demo: bool, print: Print) -> Result<String, String> {
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
    match print {
        Print::Sheet => Ok(made.sheet().to_string()),
        Print::Notes => Ok(made.notes().to_string()),
        Print::Json => serde_json::to_string_pretty(&made).map_err(|error| error.to_string()),
    }
}

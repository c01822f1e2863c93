//! Answers a request given as a file: a pot of the demo that came out wrong, or `ask request.json [book.json]`. The
//! book that is named goes into a request that carries none; not every calculation takes one.

#![allow(clippy::print_stdout)] // the answer is what it is for

use std::process::ExitCode;
use std::{env, fs};

use pourwright::request;
use serde_json::Value;

const DEMO_BOOK: &str = include_str!("demo/book.json");
const DEMO_REQUEST: &str = include_str!("demo/mispour.json");

fn main() -> ExitCode {
    let files: Vec<String> = env::args().skip(1).collect();
    let answered = match files.as_slice() {
        [] => answer(DEMO_REQUEST, Some(DEMO_BOOK)),
        [request] => read(request).and_then(|request| answer(&request, None)),
        [request, book] => read(request).and_then(|request| answer(&request, Some(&read(book)?))),
        _ => Err("Usage: ask [request.json [book.json]]".to_owned()),
    };
    match answered {
        Ok(text) => {
            println!("{text}");
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

fn read(path: &str) -> Result<String, String> {
    fs::read_to_string(path).map_err(|error| format!("{path}: {error}"))
}

fn answer(request: &str, book: Option<&str>) -> Result<String, String> {
    let value = |text: &str| serde_json::from_str::<Value>(text).map_err(|error| error.to_string());
    let mut request = value(request)?;
    if let (Value::Object(fields), Some(book)) = (&mut request, book) {
        fields.entry("book").or_insert(value(book)?);
    }
    let answer = request::answer_value(&request);
    serde_json::to_string_pretty(&answer).map_err(|error| error.to_string())
}

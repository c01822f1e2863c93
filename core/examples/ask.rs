//! Answers a calculation request: JSON on standard input, JSON on standard output.

#![allow(clippy::print_stdout)] // the answer is what it is for

use std::io::{Read, stdin};

fn main() -> std::io::Result<()> {
    let mut request = String::new();
    stdin().read_to_string(&mut request)?;
    println!("{}", pourwright::request::answer_text(&request));
    Ok(())
}

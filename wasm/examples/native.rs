//! Answers requests natively, one line of JSON each: what the tests of the package compare the module with.

#![allow(clippy::print_stdout)] // the answers are what it is for

use std::io::{self, BufRead};

fn main() -> io::Result<()> {
    for request in io::stdin().lock().lines() {
        println!("{}", pourwright::request::answer_text(&request?));
    }
    Ok(())
}

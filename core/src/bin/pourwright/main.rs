//! `pourwright` on the command line: plans a day, answers any request, checks a book.

mod answer;
mod arguments;
mod check;
mod examples;
mod faults;
mod learn;
mod lines;
mod locate;
mod outline;
mod plan;
mod shell;
mod source;

use std::io::{self, Write};
use std::process::ExitCode;

use clap::Parser;

use self::arguments::{Arguments, Command};
use self::faults::Finding;

/// Input with faults.
const FAULTS: u8 = 1;
/// A command line that does not fit, or names a file that cannot be read.
const USAGE: u8 = 2;

/// Why a command ended early.
#[derive(Debug, thiserror::Error)]
enum Stop {
    /// Faults of documents.
    #[error("the input has faults")]
    Faults(Vec<Finding>),
    /// A file or an argument that cannot be used.
    #[error("{0}")]
    Usage(String),
    /// Output that cannot be written.
    #[error(transparent)]
    Output(#[from] io::Error),
}

fn main() -> ExitCode {
    match run(Arguments::parse().command) {
        Ok(code) => code,
        // Whoever reads only the first page closes the pipe.
        Err(Stop::Output(error)) if error.kind() == io::ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(stop) => {
            // Where even this cannot be written, the code is all that is left.
            let _ = complain(&stop);
            ExitCode::from(if matches!(stop, Stop::Faults(_)) { FAULTS } else { USAGE })
        }
    }
}

fn run(command: Command) -> Result<ExitCode, Stop> {
    match command {
        Command::Plan(arguments) => plan::run(&arguments),
        Command::Answer(arguments) => answer::run(&arguments.name, &arguments.asked),
        Command::Trial(asked) => answer::run("trial", &asked),
        Command::Correct(asked) => answer::run("correct", &asked),
        Command::Record(asked) => answer::run("record", &asked),
        Command::Troubles(asked) => answer::run("troubles", &asked),
        Command::GoOn(asked) => answer::run("go-on", &asked),
        Command::Learn(arguments) => learn::run(&arguments),
        Command::Lines(arguments) => lines::run(&arguments),
        Command::Check(arguments) => check::run(&arguments),
        Command::Example(arguments) => examples::run(&arguments),
        Command::Completions { shell } => shell::completions(shell),
        Command::Man => shell::man(),
    }
}

fn complain(stop: &Stop) -> io::Result<()> {
    let mut out = anstream::stderr().lock();
    match stop {
        Stop::Faults(findings) => faults::print(&mut out, findings),
        other => writeln!(out, "{}error:{:#} {other}", faults::ERROR, faults::ERROR),
    }
}

/// Writes a text and the end of its last line to standard output.
fn print(text: &str) -> Result<ExitCode, Stop> {
    let mut out = anstream::stdout().lock();
    out.write_all(text.as_bytes())?;
    if !text.ends_with('\n') {
        out.write_all(b"\n")?;
    }
    out.flush()?;
    Ok(ExitCode::SUCCESS)
}

/// Writes a value as JSON to standard output.
fn print_json(value: &impl serde::Serialize) -> Result<ExitCode, Stop> {
    let text = serde_json::to_string_pretty(value)
        .map_err(|error| Stop::Usage(format!("The result cannot be written as JSON: {error}.")))?;
    print(&text)
}

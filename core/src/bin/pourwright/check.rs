//! A book checked, and orders with it.

use std::io::Write;
use std::process::ExitCode;

use pourwright::document::{LoadedBook, OrdersDocument};
use pourwright::show::Note;

use crate::arguments::Check;
use crate::faults::{self, Finding, QUESTION};
use crate::source::Source;
use crate::{FAULTS, Stop, print_json};

/// Prints all faults of a book and of order lists.
pub(crate) fn run(arguments: &Check) -> Result<ExitCode, Stop> {
    let source = Source::read(&arguments.book)?;
    let orders: Vec<Source> =
        arguments.orders.iter().map(|path| Source::read(path)).collect::<Result<_, _>>()?;
    let mut findings = Vec::new();
    let mut asked = Vec::new();
    let book = LoadedBook::from_text(&source.text);
    if let Err(faults) = &book {
        findings.extend(source.findings(faults));
    }
    for orders in &orders {
        // Where the book has faults, the orders are read by themselves.
        let planned = match &book {
            Ok(book) => book.plan_text(&orders.text).map(|made| made.plan.questions),
            Err(_) => OrdersDocument::from_text(&orders.text).map(|_| Vec::new()),
        };
        match planned {
            Ok(questions) => asked.extend(questions.into_iter().map(|note| (&orders.name, note))),
            Err(faults) => findings.extend(orders.findings(&faults)),
        }
    }
    if arguments.json {
        print_json(&findings)?;
    } else {
        print(&findings, &asked, [&source].into_iter().chain(&orders))?;
    }
    Ok(if findings.is_empty() { ExitCode::SUCCESS } else { ExitCode::from(FAULTS) })
}

fn print<'a>(
    findings: &[Finding],
    asked: &[(&String, Note)],
    sources: impl Iterator<Item = &'a Source>,
) -> Result<(), Stop> {
    let mut out = anstream::stdout().lock();
    faults::print(&mut out, findings)?;
    for (name, note) in asked {
        writeln!(out, "{name}: {QUESTION}question:{QUESTION:#} {} [{}]", note.message, note.code)?;
    }
    for source in sources.filter(|source| findings.iter().all(|one| one.file != source.name)) {
        writeln!(out, "{}: no faults.", source.name)?;
    }
    Ok(out.flush()?)
}

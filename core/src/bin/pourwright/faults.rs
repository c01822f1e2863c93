//! Faults as a compiler prints them: file, line, column, what is wrong, and what would fix it.

use std::io::{self, Write};

use anstyle::{AnsiColor, Style};
use pourwright::fault::Fault;
use serde::Serialize;

use crate::locate::{self, Part, Place};
use crate::source::Source;

const BOLD: Style = Style::new().bold();
const HELP: Style = AnsiColor::Cyan.on_default();
pub(crate) const ERROR: Style = AnsiColor::Red.on_default().bold();
pub(crate) const QUESTION: Style = AnsiColor::Yellow.on_default().bold();

/// Characters of a line that are shown.
const WIDTH: usize = 72;

/// A fault, and its place in what was read.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub(crate) struct Finding {
    /// The name of the file, or where else it is.
    pub(crate) file: String,
    /// From 1; none where the fault is not in a file.
    pub(crate) line: Option<usize>,
    /// From 1, in characters.
    pub(crate) column: Option<usize>,
    #[serde(skip)]
    excerpt: Option<Excerpt>,
    #[serde(flatten)]
    pub(crate) fault: Fault,
}

/// Part of a line, with a stretch of it marked.
#[derive(Debug, Clone, PartialEq, Eq)]
struct Excerpt {
    text: String,
    before: usize,
    length: usize,
}

impl Finding {
    /// A fault in a text.
    pub(crate) fn of(source: &Source, fault: &Fault) -> Self {
        let place = place(&source.text, fault);
        Self {
            file: source.name.clone(),
            line: Some(place.line),
            column: Some(place.column),
            excerpt: excerpt(&source.text, place),
            fault: fault.clone(),
        }
    }

    /// A fault that is in no file.
    pub(crate) fn outside(name: impl Into<String>, fault: &Fault) -> Self {
        let fault = fault.clone();
        Self { file: name.into(), line: None, column: None, excerpt: None, fault }
    }
}

fn place(text: &str, fault: &Fault) -> Place {
    if fault.code == "not-json" {
        let parsed = serde_json::from_str::<serde::de::IgnoredAny>(text);
        if let Err(error) = parsed {
            return locate::at(text, error.line(), error.column());
        }
    }
    let part = match &*fault.code {
        "unknown-field" | "duplicate-key" => Part::Name,
        _ => Part::Value,
    };
    locate::locate(text, &fault.path, part)
}

/// The line of a place; of a long one, what is around it.
fn excerpt(text: &str, place: Place) -> Option<Excerpt> {
    let line = text.lines().nth(place.line - 1)?;
    let column = place.column - 1;
    let start = if line.chars().count() <= WIDTH { 0 } else { column.saturating_sub(WIDTH / 3) };
    let shown = line.chars().skip(start).take(WIDTH);
    let text: String = shown.map(|letter| if letter == '\t' { ' ' } else { letter }).collect();
    let before = column - start;
    let length = place.length.min(text.chars().count().saturating_sub(before)).max(1);
    Some(Excerpt { text: text.trim_end().to_owned(), before, length })
}

/// Prints findings, and how many there are if there are several.
pub(crate) fn print(out: &mut impl Write, findings: &[Finding]) -> io::Result<()> {
    for finding in findings {
        one(out, finding)?;
    }
    if findings.len() > 1 {
        writeln!(out, "{} faults.", findings.len())?;
    }
    Ok(())
}

fn one(out: &mut impl Write, finding: &Finding) -> io::Result<()> {
    let Fault { code, message, help, .. } = &finding.fault;
    write!(out, "{BOLD}{}:", finding.file)?;
    if let (Some(line), Some(column)) = (finding.line, finding.column) {
        write!(out, "{line}:{column}:")?;
    }
    writeln!(out, "{BOLD:#} {ERROR}error:{ERROR:#} {message} [{code}]")?;
    if let (Some(excerpt), Some(line)) = (&finding.excerpt, finding.line) {
        let Excerpt { text, before, length } = excerpt;
        writeln!(out, "{line:>6} | {text}")?;
        let marks = "^".repeat(*length);
        writeln!(out, "       | {:before$}{ERROR}{marks}{ERROR:#}", "")?;
    }
    writeln!(out, "  {HELP}help:{HELP:#} {help}")
}

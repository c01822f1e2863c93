//! A stream of requests, one a line.

use std::fs::File;
use std::io::{self, BufRead, BufReader, IsTerminal, Write};
use std::process::ExitCode;
use std::time::{Duration, Instant};

use pourwright::fault::Fault;
use pourwright::json::text;
use pourwright::request::{self, Answer};

use crate::arguments::Lines;
use crate::source::Opened;
use crate::{FAULTS, Stop};

/// How often the progress is shown.
const EVERY: Duration = Duration::from_millis(200);

/// Answers each line of a file as it comes.
pub(crate) fn run(arguments: &Lines) -> Result<ExitCode, Stop> {
    let opened = Opened::open(arguments.book.as_deref(), arguments.plan.as_deref())?;
    let path = &arguments.file;
    let cannot = |error: &io::Error| Stop::Usage(format!("{}: {error}.", path.display()));
    let mut input: Box<dyn BufRead> = if path.as_os_str() == "-" {
        Box::new(io::stdin().lock())
    } else {
        Box::new(BufReader::new(File::open(path).map_err(|error| cannot(&error))?))
    };
    let mut out = io::stdout().lock();
    let mut progress = Progress::new();
    let mut line = Vec::new();
    loop {
        line.clear();
        if input.read_until(b'\n', &mut line).map_err(|error| cannot(&error))? == 0 {
            break;
        }
        let answer = answer(line.strip_suffix(b"\n").unwrap_or(&line), &opened);
        progress.count(matches!(answer, Answer::Faults(_)))?;
        let answer = serde_json::to_string(&answer).map_err(io::Error::from)?;
        // Whoever asks the next line by this answer waits for it: the end of the line sends it.
        out.write_all(answer.as_bytes())?;
        out.write_all(b"\n")?;
    }
    out.flush()?;
    progress.end()?;
    Ok(if progress.refused > 0 { ExitCode::from(FAULTS) } else { ExitCode::SUCCESS })
}

fn answer(line: &[u8], opened: &Opened) -> Answer {
    let line = match std::str::from_utf8(line) {
        Ok(line) => line,
        Err(error) => return Answer::Faults(vec![not_utf8(error.valid_up_to())]),
    };
    match text::parse(line) {
        Ok(value) => request::answer_of(&value, opened.of()),
        Err(faults) => Answer::Faults(faults.into_vec()),
    }
}

fn not_utf8(byte: usize) -> Fault {
    Fault {
        code: pourwright::codes::NOT_UTF8.into(),
        path: String::new(),
        message: format!("The text is not valid UTF-8, from byte {byte} on."),
        help: "Convert the text to UTF-8 before the call.".into(),
    }
}

/// The number of answers, on a terminal that does not show them anyway.
struct Progress {
    shown: Option<Instant>,
    answered: u64,
    refused: u64,
}

impl Progress {
    fn new() -> Self {
        let is_seen = io::stderr().is_terminal() && !io::stdout().is_terminal();
        Self { shown: is_seen.then(Instant::now), answered: 0, refused: 0 }
    }

    fn count(&mut self, refused: bool) -> io::Result<()> {
        self.answered += 1;
        self.refused += u64::from(refused);
        if self.shown.is_some_and(|shown| shown.elapsed() >= EVERY) {
            self.shown = Some(Instant::now());
            self.show("\r")?;
        }
        Ok(())
    }

    fn end(&self) -> io::Result<()> {
        if self.shown.is_some() { self.show("\n") } else { Ok(()) }
    }

    fn show(&self, end: &str) -> io::Result<()> {
        write!(io::stderr(), "\r{} answered, {} with faults{end}", self.answered, self.refused)
    }
}

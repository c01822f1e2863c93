//! A stream of requests, one a line.

use std::fs::File;
use std::io::{self, BufRead, BufReader, BufWriter, ErrorKind, IsTerminal, Read, Write};
use std::path::Path;
use std::process::ExitCode;
use std::sync::mpsc::{Receiver, SyncSender, sync_channel};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::{Duration, Instant};

use pourwright::json::text::LONGEST_DOCUMENT;
use pourwright::request::{AnsweredLines, answer_lines};

use crate::arguments::Lines;
use crate::source::Opened;
use crate::{FAULTS, Stop};

/// How often the progress is shown.
const EVERY: Duration = Duration::from_millis(200);

/// Bytes of short lines that a thread takes at once.
const AT_ONCE: usize = 4096;

/// Stack of a thread: that of the main thread.
const STACK: usize = 8 << 20;

/// Answers each line of a file as it comes.
pub(crate) fn run(arguments: &Lines) -> Result<ExitCode, Stop> {
    let opened = Opened::open(arguments.book.as_deref(), arguments.plan.as_deref())?;
    let (input, total) = Input::open(&arguments.file)?;
    let mut out = Out {
        to: BufWriter::new(io::stdout().lock()),
        progress: Progress::new(arguments.quiet, total),
    };
    match usize::from(arguments.jobs) {
        0 | 1 => one_by_one(input, &opened, &mut out)?,
        jobs => by_threads(input, opened, jobs, &mut out)?,
    }
    out.progress.end()?;
    Ok(if out.progress.refused > 0 { ExitCode::from(FAULTS) } else { ExitCode::SUCCESS })
}

fn one_by_one(mut input: Input, opened: &Opened, out: &mut Out<impl Write>) -> Result<(), Stop> {
    while let Some(lines) = input.next()? {
        out.write(&lines.answer(opened))?;
    }
    Ok(())
}

/// Some lines, and where their answers are awaited.
type Asked = (Text, SyncSender<Answered>);

/// One thread reads, `jobs` threads answer, and this one writes, in the order of the lines. At most three times `jobs` texts
/// are under way.
fn by_threads(
    mut input: Input,
    opened: Opened,
    jobs: usize,
    out: &mut Out<impl Write>,
) -> Result<(), Stop> {
    let (ask, asked) = sync_channel::<Asked>(jobs);
    let (queue, queued) = sync_channel::<Result<Receiver<Answered>, Stop>>(2 * jobs);
    let (opened, asked) = (Arc::new(opened), Arc::new(Mutex::new(asked)));
    for _ in 0..jobs {
        let (opened, asked) = (Arc::clone(&opened), Arc::clone(&asked));
        start(move || {
            while let Ok(Ok((lines, answer))) = asked.lock().map(|asked| asked.recv()) {
                // Nobody waits where the output was closed.
                let _ = answer.send(lines.answer(&opened));
            }
        })?;
    }
    // It waits for input when the output is closed: the end of the process ends it.
    start(move || {
        loop {
            let (answer, answered) = sync_channel(1);
            let (queued, lines) = match input.next() {
                Ok(Some(lines)) => (Ok(answered), Some(lines)),
                Ok(None) => break,
                Err(stop) => (Err(stop), None),
            };
            let is_sent = queue.send(queued).is_ok();
            let Some(lines) = lines.filter(|_| is_sent) else { break };
            if ask.send((lines, answer)).is_err() {
                break;
            }
        }
    })?;
    for answered in queued {
        let answered = answered?.recv().map_err(|_| {
            Stop::Usage("A thread ended, which is a defect: please report it.".to_owned())
        })?;
        out.write(&answered)?;
    }
    Ok(())
}

fn start(body: impl FnOnce() + Send + 'static) -> Result<(), Stop> {
    let started = thread::Builder::new().stack_size(STACK).spawn(body);
    let cannot = |error| Stop::Usage(format!("No more threads: {error}. Ask for fewer --jobs."));
    started.map(drop).map_err(cannot)
}

/// Lines that are answered together.
enum Text {
    /// One line or several, each with its end.
    Lines(Vec<u8>),
    /// A line of so many bytes, which are too many to be kept.
    TooLong(usize),
}

/// Their answers.
struct Answered {
    lines: AnsweredLines,
    /// Bytes of the requests.
    read: usize,
}

impl Text {
    fn answer(&self, opened: &Opened) -> Answered {
        match self {
            Self::Lines(lines) => {
                Answered { lines: answer_lines(lines, opened.of()), read: lines.len() }
            }
            Self::TooLong(read) => {
                Answered { lines: AnsweredLines::of_too_long(*read), read: *read }
            }
        }
    }
}

/// The file that is read.
struct Input {
    name: String,
    reader: BufReader<Box<dyn Read + Send>>,
}

impl Input {
    /// Opens a file, or standard input for `-`, and finds its length if it has one.
    fn open(path: &Path) -> Result<(Self, Option<u64>), Stop> {
        if path.as_os_str() == "-" {
            return Ok((Self::new("standard input".to_owned(), Box::new(io::stdin())), None));
        }
        let name = path.display().to_string();
        let opened = File::open(path).and_then(|file| Ok((file.metadata()?, file)));
        match opened {
            Ok((about, file)) => {
                let length = about.is_file().then_some(about.len());
                Ok((Self::new(name, Box::new(file)), length))
            }
            Err(error) => Err(Stop::Usage(format!("{name}: {error}."))),
        }
    }

    fn new(name: String, file: Box<dyn Read + Send>) -> Self {
        Self { name, reader: BufReader::with_capacity(64 << 10, file) }
    }

    /// The next line, and those behind it that are short and have been read already.
    fn next(&mut self) -> Result<Option<Text>, Stop> {
        self.lines().map_err(|error| Stop::Usage(format!("{}: {error}.", self.name)))
    }

    fn lines(&mut self) -> io::Result<Option<Text>> {
        let mut lines = Vec::new();
        match self.line(&mut lines)? {
            0 => return Ok(None),
            length if lines.is_empty() => return Ok(Some(Text::TooLong(length))),
            _ => {}
        }
        while let Some(end) = end_of_line(self.reader.buffer())
            && lines.len() + end < AT_ONCE
        {
            lines.extend(self.reader.buffer().iter().take(end + 1));
            self.reader.consume(end + 1);
        }
        Ok(Some(Text::Lines(lines)))
    }

    /// Adds a line with its end to `lines`, and gives its length; of one that is too long nothing is kept, and the length is
    /// without its end.
    fn line(&mut self, lines: &mut Vec<u8>) -> io::Result<usize> {
        let mut length = 0;
        loop {
            let here = match self.reader.fill_buf() {
                Ok(here) => here,
                Err(error) if error.kind() == ErrorKind::Interrupted => continue,
                Err(error) => return Err(error),
            };
            let end = end_of_line(here);
            let taken = end.map_or(here.len(), |end| end + 1);
            let is_done = end.is_some() || taken == 0;
            length += taken;
            let letters = length - usize::from(end.is_some());
            if letters <= LONGEST_DOCUMENT {
                lines.extend(here.iter().take(taken));
            } else {
                *lines = Vec::new();
            }
            self.reader.consume(taken);
            if is_done {
                return Ok(if letters <= LONGEST_DOCUMENT { length } else { letters });
            }
        }
    }
}

fn end_of_line(text: &[u8]) -> Option<usize> {
    text.iter().position(|byte| *byte == b'\n')
}

/// Where the answers go.
struct Out<W: Write> {
    to: W,
    progress: Progress,
}

impl<W: Write> Out<W> {
    fn write(&mut self, answered: &Answered) -> Result<(), Stop> {
        self.to.write_all(answered.lines.text.as_bytes())?;
        // Whoever asks the next line by these answers waits for them.
        self.to.flush()?;
        Ok(self.progress.count(answered)?)
    }
}

/// The number of answers, on a terminal that does not show them anyway.
struct Progress {
    shown: Option<Instant>,
    begun: Instant,
    /// Length of the file, where it is known.
    total: Option<u64>,
    read: u64,
    answered: u64,
    refused: u64,
}

impl Progress {
    fn new(quiet: bool, total: Option<u64>) -> Self {
        let is_seen = !quiet && io::stderr().is_terminal() && !io::stdout().is_terminal();
        let begun = Instant::now();
        Self { shown: is_seen.then_some(begun), begun, total, read: 0, answered: 0, refused: 0 }
    }

    fn count(&mut self, answered: &Answered) -> io::Result<()> {
        self.read += answered.read as u64;
        self.answered += answered.lines.text.bytes().filter(|byte| *byte == b'\n').count() as u64;
        self.refused += answered.lines.refused as u64;
        if self.shown.is_some_and(|shown| shown.elapsed() >= EVERY) {
            self.shown = Some(Instant::now());
            let left = self.left(self.begun.elapsed());
            self.show(&left.map_or_else(String::new, |left| format!(", {} left", time(left))), "")?;
        }
        Ok(())
    }

    fn end(&self) -> io::Result<()> {
        if self.shown.is_none() {
            return Ok(());
        }
        self.show(&format!(", in {}", time(self.begun.elapsed())), "\n")
    }

    fn show(&self, time: &str, end: &str) -> io::Result<()> {
        let text = self.text(self.begun.elapsed());
        // The end of a longer line is erased.
        write!(io::stderr(), "\r{text}{time}\x1b[K{end}")
    }

    fn text(&self, elapsed: Duration) -> String {
        let rate = self.answered as f64 / elapsed.as_secs_f64().max(1e-3);
        let rate = if rate < 10.0 { format!("{rate:.1}") } else { format!("{rate:.0}") };
        format!("{} answered, {} with faults, {rate} a second", self.answered, self.refused)
    }

    /// The time that the rest of the file takes at the same rate.
    fn left(&self, elapsed: Duration) -> Option<Duration> {
        let rest = self.total?.saturating_sub(self.read) as f64 / self.read as f64;
        Duration::try_from_secs_f64(elapsed.as_secs_f64() * rest).ok()
    }
}

/// A time to read: `41 s`, `3 min 20 s`, `2 h 5 min`.
fn time(time: Duration) -> String {
    let seconds = (time.as_millis() + 500) / 1000;
    match (seconds / 3600, seconds / 60 % 60, seconds % 60) {
        (0, 0, seconds) => format!("{seconds} s"),
        (0, minutes, seconds) => format!("{minutes} min {seconds} s"),
        (hours, minutes, _) => format!("{hours} h {minutes} min"),
    }
}

#[cfg(test)]
mod tests {
    use std::io::{self, Read};
    use std::time::{Duration, Instant};

    use pourwright::json::text::LONGEST_DOCUMENT;

    use super::{AT_ONCE, Input, Progress, Text, time};

    /// A file that gives these pieces, one a call.
    struct Pieces(Vec<Vec<u8>>);

    impl Read for Pieces {
        fn read(&mut self, to: &mut [u8]) -> io::Result<usize> {
            let Some(piece) = self.0.first_mut() else { return Ok(0) };
            if piece.is_empty() {
                self.0.remove(0);
                return Err(io::ErrorKind::Interrupted.into());
            }
            let taken = piece.len().min(to.len());
            to[..taken].copy_from_slice(&piece[..taken]);
            piece.drain(..taken);
            if piece.is_empty() {
                self.0.remove(0);
            }
            Ok(taken)
        }
    }

    fn texts(pieces: &[&[u8]]) -> Vec<Result<String, usize>> {
        let pieces = Pieces(pieces.iter().map(|piece| piece.to_vec()).collect());
        let mut input = Input::new(String::new(), Box::new(pieces));
        std::iter::from_fn(|| input.next().unwrap())
            .map(|text| match text {
                Text::Lines(lines) => Ok(String::from_utf8(lines).unwrap()),
                Text::TooLong(bytes) => Err(bytes),
            })
            .collect()
    }

    #[test]
    fn lines_come_whole_and_no_later_than_they_are_read() {
        assert_eq!(texts(&[]), []);
        assert_eq!(texts(&[b"a\nb\nc"]), [Ok("a\nb\n".into()), Ok("c".into())]);
        assert_eq!(texts(&[b"a", b"", b"b\n", b"c\n"]), [Ok("ab\n".into()), Ok("c\n".into())]);
        assert_eq!(texts(&[b"\n\n"]), [Ok("\n\n".into())]);
        let line = "x".repeat(AT_ONCE / 2) + "\n";
        assert_eq!(texts(&[line.repeat(2).as_bytes()]), [Ok(line.clone()), Ok(line)]);
    }

    #[test]
    fn a_line_that_is_too_long_is_counted_and_not_kept() {
        let long = "x".repeat(LONGEST_DOCUMENT);
        let text = format!("{long}\n{long}y\nz\n{long}zz");
        let found = texts(&[text.as_bytes()]);
        assert_eq!(found[0].as_ref().map(String::len), Ok(LONGEST_DOCUMENT + 1));
        assert_eq!(
            found[1..],
            [Err(LONGEST_DOCUMENT + 1), Ok("z\n".into()), Err(LONGEST_DOCUMENT + 2)]
        );
    }

    #[test]
    fn the_progress_has_count_rate_and_time_left() {
        let mut progress = Progress {
            shown: None,
            begun: Instant::now(),
            total: Some(1000),
            read: 250,
            answered: 100,
            refused: 3,
        };
        let elapsed = Duration::from_secs(20);
        assert_eq!(progress.text(elapsed), "100 answered, 3 with faults, 5.0 a second");
        assert_eq!(progress.text(elapsed / 10), "100 answered, 3 with faults, 50 a second");
        assert_eq!(progress.left(elapsed), Some(Duration::from_secs(60)));
        progress.read = 0;
        assert_eq!(progress.left(elapsed), None);
        progress.read = 2000; // a file that grew
        assert_eq!(progress.left(elapsed), Some(Duration::ZERO));
        progress.total = None;
        assert_eq!(progress.left(elapsed), None);
        let times =
            [0.4, 59.6, 200.0, 7500.0].map(|seconds| time(Duration::from_secs_f64(seconds)));
        assert_eq!(times, ["0 s", "1 min 0 s", "3 min 20 s", "2 h 5 min"]);
    }
}

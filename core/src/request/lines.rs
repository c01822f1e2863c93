//! Many requests as one text: JSON Lines, one request a line, one answer a line.

use alloc::format;
use alloc::string::String;

use super::{Open, answer_of_result, result_text};
use crate::document::LoadedBook;
use crate::fault::{Fault, Faults};
use crate::json::text;

/// Answers of many requests.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct AnsweredLines {
    /// One answer a line, in the order of the requests; each line ends with a newline.
    pub text: String,
    /// The number of lines that were answered by faults.
    pub refused: usize,
}

/// Answers each line of a text, with what is open: one request a line in, one answer a line out.
///
/// A line that is not a request is answered by its faults in its place; so is an empty line and one that is not UTF-8. A
/// newline at the end of the text begins no line.
///
/// ```
/// use pourwright::request::{Open, answer_lines};
///
/// let lines = "{\"calculate\":\"convert\",\"amount\":\"1 cup\",\"to\":\"tbsp\"}\nsixteen\n";
/// let answered = answer_lines(lines.as_bytes(), Open::default());
/// assert_eq!(answered.refused, 1);
/// let (first, second) = answered.text.split_once('\n').unwrap();
/// assert!(first.contains("\"value\":16.0"));
/// assert!(second.starts_with("{\"faults\":[{\"code\":\"not-json\""));
/// ```
#[must_use]
pub fn answer_lines(lines: &[u8], open: Open<'_>) -> AnsweredLines {
    let mut answered = AnsweredLines { text: String::new(), refused: 0 };
    for line in lines.split_inclusive(|byte| *byte == b'\n') {
        answered.push(result_of_line(line.strip_suffix(b"\n").unwrap_or(line), open));
    }
    answered
}

impl AnsweredLines {
    fn push(&mut self, result: Result<String, Faults>) {
        self.refused += usize::from(result.is_err());
        self.text.push_str(&answer_of_result(result));
        self.text.push('\n');
    }

    /// The answer to one line that is longer than [`text::LONGEST_DOCUMENT`], of which only the length in bytes is known: what
    /// [`answer_lines`] gives for it.
    #[must_use]
    pub fn of_too_long(bytes: usize) -> Self {
        let mut answered = Self { text: String::new(), refused: 0 };
        answered.push(Err(text::too_long(bytes).into()));
        answered
    }
}

fn result_of_line(line: &[u8], open: Open<'_>) -> Result<String, Faults> {
    let line = core::str::from_utf8(line).map_err(|error| not_utf8(error.valid_up_to()))?;
    result_text(line, open)
}

fn not_utf8(byte: usize) -> Fault {
    Fault {
        code: crate::codes::NOT_UTF8.into(),
        path: String::new(),
        message: format!("The line is not valid UTF-8, from its byte {byte} on."),
        help: "Convert the lines to UTF-8 before the call.".into(),
    }
}

impl LoadedBook {
    /// Answers requests, one a line, which leave `book` out: as [`answer_lines`].
    #[must_use]
    pub fn answer_lines(&self, lines: &[u8]) -> AnsweredLines {
        answer_lines(lines, self.into())
    }
}

#[cfg(test)]
mod tests {
    use alloc::format;
    use alloc::string::String;
    use alloc::vec::Vec;

    use super::{AnsweredLines, answer_lines};
    use crate::document::LoadedBook;
    use crate::json::text::LONGEST_DOCUMENT;
    use crate::request::{Open, answer_text};

    const BOOK: &str = include_str!("../../examples/demo/book.json");

    fn of(lines: &str) -> AnsweredLines {
        answer_lines(lines.as_bytes(), Open::default())
    }

    #[test]
    fn each_line_has_the_answer_that_it_has_alone() {
        let cup = r#"{"calculate":"convert","amount":"1 cup","to":"mL"}"#;
        let lines = [cup, "", "[", "{\"calculate\":\"convert\"}\r", cup];
        let alone: String = lines.iter().map(|line| answer_text(line) + "\n").collect();
        let answered = of(&lines.join("\n"));
        assert_eq!(answered, AnsweredLines { text: alone, refused: 3 });
    }

    #[test]
    fn a_newline_ends_a_line_and_begins_none() {
        let count = |lines: &str| of(lines).text.lines().count();
        assert_eq!(
            [count(""), count("\n"), count("{}"), count("{}\n"), count("\n\n")],
            [0, 1, 1, 1, 2]
        );
    }

    #[test]
    fn an_open_book_answers_lines_that_leave_it_out() {
        let book = LoadedBook::from_text(BOOK).unwrap();
        let dusk = r#"{"calculate":"formula","formulas":["dusk"]}"#;
        let answered = book.answer_lines(format!("{dusk}\n\"\n{dusk}").as_bytes());
        let lines: Vec<&str> = answered.text.lines().collect();
        assert_eq!(answered.refused, 1);
        assert_eq!((lines[0], lines[2]), (&*book.answer_text(dusk), lines[0]));
    }

    #[test]
    fn a_line_that_is_not_text_is_refused_alone() {
        let answered = answer_lines(b"\"ab\xff\n{}", Open::default());
        assert!(answered.text.starts_with("{\"faults\":[{\"code\":\"not-utf8\""));
        assert!(answered.text.contains("from its byte 3 on"), "{}", answered.text);
        assert_eq!((answered.refused, answered.text.lines().count()), (2, 2));
    }

    #[test]
    fn a_line_that_is_too_long_is_refused_by_its_length() {
        let long = LONGEST_DOCUMENT + 3;
        let mut line = alloc::vec![b' '; long];
        assert_eq!(answer_lines(&line, Open::default()), AnsweredLines::of_too_long(long));
        line.truncate(LONGEST_DOCUMENT);
        assert!(answer_lines(&line, Open::default()).text.contains("\"not-json\""));
    }
}

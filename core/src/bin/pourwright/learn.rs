//! The records of many days.

use std::process::ExitCode;

use pourwright::document::LoadedBook;
use pourwright::json::text;
use pourwright::request;
use serde_json::{Value, json};

use crate::arguments::Learn;
use crate::faults::Finding;
use crate::source::Source;
use crate::{Stop, answer};

/// Answers what the records of days say about a book.
pub(crate) fn run(arguments: &Learn) -> Result<ExitCode, Stop> {
    let book: LoadedBook = Source::read(&arguments.book)?.book()?;
    let days: Vec<Day> = arguments
        .records
        .iter()
        .map(|path| Day::read(Source::read(path)?))
        .collect::<Result<_, _>>()?;
    let records: Vec<&Value> = days.iter().map(|day| &day.record).collect();
    let mut request = json!({ "calculate": "learn", "records": records });
    if let (Some(after), Value::Object(fields)) = (&arguments.after, &mut request) {
        fields.insert("after".to_owned(), after.as_str().into());
    }
    let answer = request::answer_of(&request, (&book).into());
    answer::show(answer, arguments.json, |fault| Day::finding(&days, fault))
}

/// The record of a day, and where it is in its file.
struct Day {
    source: Source,
    record: Value,
    path: &'static str,
}

impl Day {
    /// A record, or the answer that has it.
    fn read(source: Source) -> Result<Self, Stop> {
        let read = text::parse(&source.text);
        let mut record = read.map_err(|faults| Stop::Faults(source.findings(&faults)))?;
        let path = if record.get("result").is_some() { "/result" } else { "" };
        let record = record.pointer_mut(path).map(Value::take).unwrap_or_default();
        Ok(Self { source, record, path })
    }

    /// A fault, in the file of the day that it is of.
    fn finding(days: &[Self], fault: &pourwright::fault::Fault) -> Finding {
        let of_records = fault.path.strip_prefix("/records/");
        let (place, below) = of_records
            .map(|rest| rest.split_at(rest.find('/').unwrap_or(rest.len())))
            .unwrap_or_default();
        match place.parse().ok().and_then(|place: usize| days.get(place)) {
            Some(day) => {
                let mut fault = fault.clone();
                fault.path = format!("{}{below}", day.path);
                Finding::of(&day.source, &fault)
            }
            None => Finding::outside("learn", fault),
        }
    }
}

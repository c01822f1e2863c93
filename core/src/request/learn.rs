//! What the records of many days say about the numbers of a book.

mod answer;
mod known;
mod text;

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use self::answer::Answers;
pub use self::text::LearnSheet;
use super::{Change, Open, request, response};
use crate::codes::code;
use crate::document::LoadedBook;
use crate::document::book::BookDocument;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::json::path::Path;
use crate::json::path::Path::At;
use crate::learn::Day;
use crate::learn::gather::Gathered;
use crate::record::Record;

request! {
    /// Asks what the records of many days say about the numbers of a book.
    pub struct LearnRequest {
        required {
            records: Vec<Record>,
        }
        optional {
            after: String,
            book: BookDocument,
        }
    }
}

response! {
    /// What the records say about the book: changes to accept one by one, and what to look at.
    pub struct LearnResponse {
        /// Number of days that count.
        pub days: u32,
        /// The first of them; none if no day counts.
        pub from: Option<String>,
        /// The last of them: give it as `after` next time, so that no day counts twice.
        pub to: Option<String>,
        /// Changes to the book, each by itself.
        pub changes: Vec<BookChange>,
        /// Days and trends to look at. They are in the estimates: nothing is dropped.
        pub questions: Vec<BookQuestion>,
        /// What the days confirm: the estimate is within the ± of the book's value.
        pub confirmed: Vec<String>,
        /// What the days do not say yet: fewer than four of them, or readings that cannot be used.
        pub not_yet: Vec<String>,
    }
}

response! {
    /// A number of the book that the days know better.
    pub struct BookChange {
        /// What it is: `drop of plum`.
        pub what: String,
        /// The book's value; none if the book has none.
        pub before: Option<String>,
        /// The value that the book and the days show together, with its standard uncertainty.
        pub after: String,
        /// How many days it is from.
        pub days: u32,
        /// Why, in a sentence, and what to ask yourself first.
        pub why: String,
        /// Whether a question below is about it: look at that first.
        pub questioned: bool,
        /// The change to the book, as a JSON Patch (RFC 6902).
        pub write: Vec<Change>,
    }
}

response! {
    /// A day or a trend to look at.
    pub struct BookQuestion {
        /// What it is about: `drop of plum`.
        pub what: String,
        /// What was seen, and what to do about it.
        pub question: String,
    }
}

impl LearnRequest {
    /// Learns each number of the book by itself.
    ///
    /// # Errors
    /// Faults of the book; a record without a day, or twice.
    pub fn answer(self, open: Open<'_>) -> Result<LearnResponse, Faults> {
        let book = open.book(self.book)?;
        let mut resolver = Resolver::new(book.ready().system);
        let response = response(&self.records, self.after.as_ref(), &book, &mut resolver);
        resolver.finish(response)
    }
}

fn response(
    records: &[Record],
    after: Option<&String>,
    book: &LoadedBook,
    resolver: &mut Resolver,
) -> Option<LearnResponse> {
    let after = match after {
        Some(after) => Some(day(after, &At("/after"), resolver)?),
        None => None,
    };
    let dated = resolver.each(&At("/records"), records, |resolver, path, record| {
        let Some(written) = &record.day else {
            resolver.fault(
                code!("learn-no-day"),
                path,
                &"The record has no day.",
                &"Add \"day\": \"2027-03-05\" to it, or to the orders that it was planned from.",
            );
            return None;
        };
        Some((day(written, &path.key("day"), resolver)?, record))
    })?;
    given_once(&dated, resolver)?;
    let counted: Vec<(Day, &Record)> =
        dated.iter().copied().filter(|(day, _)| after.is_none_or(|after| *day > after)).collect();
    let gathered = Gathered::of(&counted, book.ready());
    let mut answers = Answers::new(book);
    answers.same_plan(&counted);
    answers.all(&gathered);
    let days = u32::try_from(gathered.days.len()).unwrap_or(u32::MAX);
    Some(LearnResponse {
        days,
        from: gathered.days.first().map(ToString::to_string),
        to: gathered.days.last().map(ToString::to_string),
        changes: answers.changes,
        questions: answers.questions,
        confirmed: answers.confirmed,
        not_yet: answers.not_yet,
    })
}

fn day(written: &String, path: &Path<'_>, resolver: &mut Resolver) -> Option<Day> {
    Day::parse(&resolver.date(path, Some(written))??)
}

/// Refuses a record that is there twice: a day counts once.
fn given_once(records: &[(Day, &Record)], resolver: &mut Resolver) -> Option<()> {
    let mut of_day: BTreeMap<Day, Vec<(usize, &Record)>> = BTreeMap::new();
    let mut once = Some(());
    for (place, (day, record)) in records.iter().enumerate() {
        let others = of_day.entry(*day).or_default();
        if let Some((first, _)) = others.iter().find(|(_, other)| other == record) {
            resolver.fault(
                code!("learn-record-twice"),
                &At("/records").index(place),
                &format_args!("This is record {} again, of {day}.", first.saturating_add(1)),
                &"Take one of the two out: a day counts once.",
            );
            once = None;
        }
        others.push((place, record));
    }
    once
}

/// What a record shares with another one of the same plan.
fn plan_of(record: &Record) -> Vec<String> {
    let draws = record.pots.iter().flat_map(|pot| {
        let stages = pot.stages.iter().enumerate();
        stages.flat_map(move |(stage, of)| {
            of.draws.iter().map(move |draw| {
                format!("{} {stage} {} {}", pot.pot, draw.mold, draw.planned_shots)
            })
        })
    });
    draws.collect()
}

//! Estimates in words: changes, questions, what is confirmed and what is not known yet.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{BookChange, BookQuestion, known, plan_of};
use crate::book::{Cavities, Mold};
use crate::document::LoadedBook;
use crate::json::path::Path;
use crate::json::path::Path::At;
use crate::learn::gather::{Gathered, PiecesOfDay, cavity_name, readability};
use crate::learn::{
    CountedDay, Day, LEAST_DAYS, LearnError, Learned, Reading, RejectRate, Verdict, learn,
};
use crate::process::heat::Timing;
use crate::quantity::{Measurable, Measured, Ratio, Time, Volume};
use crate::record::Record;
use crate::request::change;
use crate::show::page::counted;
use crate::show::{Showable, text};

/// A feed share may be outside 0 to 1 by so many standard uncertainties by chance.
const BY_CHANCE: f64 = 3.0;

/// Relative standard uncertainty of one timing, as of one heating against the next.
const TIMING: f64 = 0.06;

pub(super) struct Answers<'a> {
    book: &'a LoadedBook,
    pub(super) changes: Vec<BookChange>,
    pub(super) questions: Vec<BookQuestion>,
    pub(super) confirmed: Vec<String>,
    pub(super) not_yet: Vec<String>,
}

/// A number of the book: what it is, where it is, and how it is written.
struct Number<'a, Q: Measurable> {
    what: String,
    path: &'a Path<'a>,
    book: Option<Measured<Q>>,
    /// Whether the book writes a ± with it.
    with_unsure: bool,
    /// As the book and a sentence have it.
    write: &'a dyn Fn(Q, Q) -> String,
}

/// A value with its ± as a book writes it.
fn both<Q: Showable>(value: Q, unsure: Q) -> String {
    text::uncertain(value, unsure).both
}

/// A time to a second.
fn seconds(time: Time, _: Time) -> String {
    format!("{} s", libm::round(time.si()))
}

/// A share in per cent, without a ±.
fn percent(share: Ratio, _: Ratio) -> String {
    text::percent(share).text
}

fn days(count: usize) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

impl<'a> Answers<'a> {
    pub(super) fn new(book: &'a LoadedBook) -> Self {
        Self {
            book,
            changes: Vec::new(),
            questions: Vec::new(),
            confirmed: Vec::new(),
            not_yet: Vec::new(),
        }
    }

    /// Questions two records of one day and one plan: one may be the other, corrected.
    pub(super) fn same_plan(&mut self, records: &[(Day, &Record)]) {
        let mut seen: BTreeMap<(Day, Vec<String>), u32> = BTreeMap::new();
        for (day, record) in records {
            let plan = plan_of(record);
            if !plan.is_empty() {
                let count = seen.entry((*day, plan)).or_default();
                *count = count.saturating_add(1);
            }
        }
        for ((day, _), count) in seen.into_iter().filter(|(_, count)| *count > 1) {
            self.question(
                "records".to_string(),
                format!("{count} records are of {day} and of one plan. If one of them corrects another, take the old one out."),
            );
        }
    }

    fn question(&mut self, what: String, question: String) {
        self.questions.push(BookQuestion { what, question });
    }

    pub(super) fn all(&mut self, gathered: &Gathered, timings: &[Timing]) {
        for (material, readings) in &gathered.drops {
            let found = self.book.ready().materials.find(material);
            let found = found.and_then(|id| self.book.ready().materials.get(id).ok());
            let known = found.and_then(|material| known::drop(material, self.book.ready()));
            self.number(
                readings,
                Number {
                    what: format!("drop of {material}"),
                    path: &At("/materials").key(material).key("drop"),
                    book: known,
                    with_unsure: true,
                    write: &both,
                },
            );
        }
        for (material, readings) in &gathered.scooped {
            let found = self.book.ready().materials.find(material);
            let found = found.and_then(|id| self.book.ready().materials.get(id).ok());
            self.number(
                readings,
                Number {
                    what: format!("{material} as scooped"),
                    path: &At("/materials").key(material).key("as_scooped"),
                    book: found.and_then(|material| material.as_scooped.clone()),
                    with_unsure: true,
                    write: &both,
                },
            );
        }
        self.molds(gathered);
        if !gathered.kept.is_empty() {
            self.number(
                &gathered.kept,
                Number {
                    what: "volume that the injector keeps".to_string(),
                    path: &At("/bench/injector/keeps"),
                    book: known::kept(self.book),
                    with_unsure: true,
                    write: &both,
                },
            );
        }
        self.heatings(gathered, timings);
        for (mold, readings) in &gathered.shots {
            self.number(
                readings,
                Number {
                    what: format!("time of a shot into {mold}"),
                    path: &At("/molds").key(mold).key("per_shot"),
                    book: known::per_shot(self.book, mold),
                    with_unsure: false,
                    write: &seconds,
                },
            );
        }
        self.not_yet.extend(gathered.left_out.iter().cloned());
    }

    fn heatings(&mut self, gathered: &Gathered, timings: &[Timing]) {
        for (place, readings) in &gathered.heats {
            let Some(timing) = timings.get(*place) else { continue };
            let unsure = timing.duration * TIMING;
            self.number(
                readings,
                Number {
                    what: format!("heating of {}", text::mass(timing.load.mass()).text),
                    path: &At("/bench/oven/timings").index(*place).key("time"),
                    book: Some(Measured::new(timing.duration, unsure)),
                    with_unsure: false,
                    write: &seconds,
                },
            );
        }
    }

    /// Cavities or feed shares, and rejects.
    fn molds(&mut self, gathered: &Gathered) {
        let book = self.book.ready();
        for mold in &book.molds {
            let of_mold: Vec<(&Cavities, &[PiecesOfDay])> = mold
                .cavities
                .iter()
                .filter_map(|cavities| {
                    let key = (mold.name.clone(), cavities.shape.clone());
                    Some((cavities, gathered.pieces.get(&key)?.as_slice()))
                })
                .collect();
            if !of_mold.is_empty() && !self.feed(mold, &of_mold) {
                self.cavities(mold, &of_mold);
            }
            if let Some(counts) = gathered.counts.get(&mold.name) {
                self.rejects(mold, counts);
            }
        }
    }

    /// Learns the feed share, where it is what the weights depend on: where the cavities are known better than it is.
    fn feed(&mut self, mold: &Mold, of_mold: &[(&Cavities, &[PiecesOfDay])]) -> bool {
        let (feed, unsure) = known::feed(mold);
        let readability = readability(self.book.ready());
        let mut readings = Vec::new();
        for (cavities, pieces) in of_mold {
            let Some(own) = cavities.volume.uncertainty else { return false };
            for of_day in *pieces {
                let melt = &of_day.pieces.melt;
                let contraction = (melt.cold - melt.hot) / melt.cold;
                if own / cavities.volume.value >= contraction * unsure {
                    return false;
                }
                let shape = cavity_name(&mold.name, cavities.shape.as_deref());
                let reading = Reading::feed(
                    of_day.day,
                    &of_day.pieces,
                    (cavities.volume.value, own),
                    readability,
                    (&of_day.base, &format!("cavity of {shape}")),
                );
                let Some(reading) = reading else { return false };
                readings.push(reading);
            }
        }
        let book = Measured::new(feed, unsure);
        if let Ok(learned) = learn(&readings, Some(&book)) {
            let slack = BY_CHANCE * learned.unsure_days.value;
            if !(-slack..=1.0 + slack).contains(&learned.of_days.value) {
                return false;
            }
        }
        let stated = mold.feed.is_some();
        self.number(
            &readings,
            Number {
                what: format!("feed share of {}", mold.name),
                path: &At("/molds").key(&mold.name).key("feed"),
                book: Some(book),
                // One that is not stated yet is worth stating.
                with_unsure: !stated,
                write: &|share: Ratio, unsure| {
                    percent(Ratio::from(share.value.clamp(0.0, 1.0)), unsure)
                },
            },
        );
        true
    }

    fn cavities(&mut self, mold: &Mold, of_mold: &[(&Cavities, &[PiecesOfDay])]) {
        let readability = readability(self.book.ready());
        for (cavities, pieces) in of_mold {
            let readings: Vec<Reading<Volume>> = pieces
                .iter()
                .map(|of_day| {
                    let feed = known::feed(mold);
                    Reading::cavity(of_day.day, &of_day.pieces, feed, readability, &of_day.base)
                })
                .collect();
            let at = At("/molds").key(&mold.name);
            let (all, one);
            let path = match &cavities.shape {
                None => at.key("cavity"),
                Some(shape) => {
                    all = at.key("cavities");
                    one = all.key(shape);
                    one.key("cavity")
                }
            };
            self.number(
                &readings,
                Number {
                    what: format!(
                        "cavity of {}",
                        cavity_name(&mold.name, cavities.shape.as_deref())
                    ),
                    path: &path,
                    book: Some(cavities.volume.clone()),
                    with_unsure: true,
                    write: &both,
                },
            );
        }
    }

    fn rejects(&mut self, mold: &Mold, counts: &[CountedDay]) {
        let what = format!("rejects of {}", mold.name);
        let rate = match RejectRate::new(counts) {
            Ok(rate) => rate,
            Err(error) => return self.not_learned(&what, &error),
        };
        let known = Ratio::from(mold.rejects.unwrap_or(self.book.ready().limits.rejects));
        let shown = |share: Ratio| text::percent(share).text;
        let counted_days = counted(days(rate.days), "day");
        let (from, to) = (shown(rate.from), shown(rate.to));
        let mut questioned = false;
        if let Some(out) = rate.outlying {
            questioned = true;
            self.question(
                what.clone(),
                format!(
                    "On {} {} of {} pieces were rejects, and on all days {}. If that had a cause that is gone, take the record out and ask again.",
                    out.day, out.rejects, out.made, shown(rate.rate)
                ),
            );
        }
        if let Some(trend) = rate.trend {
            questioned = true;
            let more = if trend > 0 { "more" } else { "fewer" };
            self.question(
                what.clone(),
                format!("They become {more} from {} to {}. Find out why, or ask again with \"after\" for the last days only.", rate.first, rate.last),
            );
        }
        let seen = format!(
            "{} of {} pieces on {counted_days}: {from} to {to}, 95 % sure",
            rate.rejects, rate.made
        );
        if !rate.excludes(known) {
            return self.confirmed.push(format!("{what}: {} ({seen})", shown(known)));
        }
        let path = At("/molds").key(&mold.name);
        let after = shown(rate.rate);
        self.changes.push(BookChange {
            what,
            before: Some(shown(known)),
            write: change::writing(&path.key("rejects"), after.as_str()),
            after,
            days: days(rate.days),
            why: format!("{seen}; the book's {} is outside.", shown(known)),
            questioned,
        });
    }

    fn not_learned(&mut self, what: &str, error: &LearnError) {
        self.not_yet.push(match error {
            LearnError::TooFewDays { days } => format!("{what}: {days} of {LEAST_DAYS} days."),
            other => format!("{what}: {other}."),
        });
    }

    /// Learns one number and puts it where it belongs.
    fn number<Q>(&mut self, readings: &[Reading<Q>], number: Number<'_, Q>)
    where
        Q: Showable + Measurable<Difference = Q>,
    {
        let learned = match learn(readings, number.book.as_ref()) {
            Ok(learned) => learned,
            Err(error) => return self.not_learned(&number.what, &error),
        };
        let questioned = self.questions_of(&learned, &number);
        let after = (number.write)(learned.value, learned.uncertainty);
        let counted_days = counted(days(learned.days), "day");
        let write = match learned.verdict {
            Verdict::Differs | Verdict::New => true,
            Verdict::Surer => number.with_unsure,
            Verdict::Agrees => false,
        };
        let before = number.book.as_ref().map(|book| match book.uncertainty {
            Some(unsure) if number.with_unsure => (number.write)(book.value, unsure),
            _ => without_unsure(&(number.write)(book.value, learned.uncertainty)),
        });
        if !write {
            return self.confirmed.push(format!("{}: {after} ({counted_days})", number.what));
        }
        let why = why(&learned, &number, &counted_days);
        self.changes.push(BookChange {
            what: number.what,
            before,
            write: change::writing(number.path, after.as_str()),
            after,
            days: days(learned.days),
            why,
            questioned,
        });
    }

    /// Asks about what is odd about it; whether anything is.
    fn questions_of<Q>(&mut self, learned: &Learned<Q>, number: &Number<'_, Q>) -> bool
    where
        Q: Showable + Measurable<Difference = Q>,
    {
        let shown = |value: Q| shown(value, learned, number);
        if let Some(out) = learned.outlying {
            self.question(
                number.what.clone(),
                format!(
                    "{} on {}, and {} on the other days. Check that day's record: correct it or take it out, and ask again.",
                    shown(out.value), out.day, shown(out.without)
                ),
            );
        }
        if let Some(drift) = learned.drift {
            let moves = if drift.per_day.si() > 0.0 { "rises" } else { "falls" };
            self.question(
                number.what.clone(),
                format!(
                    "It {moves} from {} on {} to {} on {}, more than by chance. Find out why, or ask again with \"after\" for the last days only.",
                    shown(drift.first), learned.from, shown(drift.last), learned.to
                ),
            );
        }
        learned.outlying.is_some() || learned.drift.is_some()
    }
}

/// A value without its ±, to the place of that of the estimate.
fn shown<Q>(value: Q, learned: &Learned<Q>, number: &Number<'_, Q>) -> String
where
    Q: Showable + Measurable<Difference = Q>,
{
    without_unsure(&(number.write)(value, learned.uncertainty))
}

/// The value of a text with its ±.
fn without_unsure(both: &str) -> String {
    both.split(" ±").next().unwrap_or(both).to_string()
}

fn why<Q>(learned: &Learned<Q>, number: &Number<'_, Q>, days: &str) -> String
where
    Q: Showable + Measurable<Difference = Q>,
{
    let seen = (number.write)(learned.of_days, learned.unsure_days);
    let stated = number.book.as_ref().and_then(|book| book.uncertainty).is_some();
    match learned.verdict {
        Verdict::New => format!("{days} show it, and the book does not state it."),
        Verdict::Surer if stated => {
            format!("{days} agree with the book, and the ± becomes a third smaller or more.")
        }
        Verdict::Surer => format!("{days} agree with the book, which states no ±."),
        _ if learned.with_book => {
            format!("{days} show {seen}, beyond the book's ±; the new value weighs both.")
        }
        _ if stated => format!(
            "{days} show {seen}, too far from the book's value to average the two: something was changed, or the book was off."
        ),
        _ => format!("{days} show {seen}, and the book's value is more than twice that ± off."),
    }
}

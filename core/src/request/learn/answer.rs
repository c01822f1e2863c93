//! Estimates in words: changes, questions, what is confirmed and what is not known yet.

use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde_json::{Value, json};

use super::{BookChange, BookQuestion, known, plan_of};
use crate::book::{Cavities, Mold};
use crate::document::LoadedBook;
use crate::json::path::Path;
use crate::json::path::Path::At;
use crate::learn::gather::{Gathered, HeatOfDay, PiecesOfDay, cavity_name, readability};
use crate::learn::{
    CountedDay, Day, LEAST_DAYS, LearnError, Learned, Reading, RejectRate, Verdict, learn,
};
use crate::process::heat::{self, Load, Timing};
use crate::quantity::{Mass, Measurable, Measured, Ratio, ThermodynamicTemperature, Time, Volume};
use crate::record::Record;
use crate::request::change;
use crate::show::page::counted;
use crate::show::{Showable, text};

/// A feed share may be outside 0 to 1 by so many standard uncertainties by chance.
const BY_CHANCE: f64 = 3.0;

/// Amounts within this factor are one amount, as for the timings of an oven.
const ONE_AMOUNT: f64 = 1.2;

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
    /// What to ask where the days and the book disagree.
    changed: &'static str,
    /// As the book and a sentence have it.
    write: &'a dyn Fn(Q, Q) -> String,
    /// What goes into the book, of that text.
    value: &'a dyn Fn(&str) -> Value,
}

/// The text itself.
fn text_value(text: &str) -> Value {
    Value::from(text)
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

    pub(super) fn all(&mut self, gathered: &Gathered) {
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
                    changed: "Is it another bottle?",
                    write: &both,
                    value: &text_value,
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
                    changed: "Is it another powder, or another spoon?",
                    write: &both,
                    value: &text_value,
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
                    changed: "Is it another injector, or emptied otherwise?",
                    write: &both,
                    value: &text_value,
                },
            );
        }
        self.heatings(&gathered.heats);
        for (mold, readings) in &gathered.shots {
            self.number(
                readings,
                Number {
                    what: format!("time of a shot into {mold}"),
                    path: &At("/molds").key(mold).key("per_shot"),
                    book: known::per_shot(self.book, mold),
                    with_unsure: false,
                    changed: "",
                    write: &seconds,
                    value: &text_value,
                },
            );
        }
        self.not_yet.extend(gathered.left_out.iter().cloned());
    }

    /// The timings of the oven, and amounts that it has no timing of yet.
    fn heatings(&mut self, heats: &[HeatOfDay]) {
        let Some(oven) = self.book.ready().oven.as_ref().map(|oven| &oven.timed) else { return };
        let timings = known::timings(self.book);
        let Groups { timed, new } = Groups::of(heats, &timings);
        for (place, heats) in timed {
            let Some(timing) = timings.get(place) else { continue };
            let (unsure, mass) = (timing.duration * TIMING, timing.load.mass());
            self.number(
                &readings(oven, timing.load, (timing.start, timing.end), &heats),
                Number {
                    what: format!("heating of {}", text::mass(mass).text),
                    path: &At("/bench/oven/timings").index(place).key("time"),
                    book: Some(Measured::new(timing.duration, unsure)),
                    with_unsure: false,
                    changed: "If the oven was changed, take its other timings out.",
                    write: &seconds,
                    value: &text_value,
                },
            );
        }
        for heats in new {
            self.new_timing(oven, &heats);
        }
    }

    fn new_timing(&mut self, oven: &heat::Oven, heats: &[HeatOfDay]) {
        let mean = |of: &dyn Fn(&HeatOfDay) -> f64| {
            let mut values: Vec<f64> = heats.iter().map(of).collect();
            // A sum in an order of its own, however the records came.
            values.sort_by(f64::total_cmp);
            values.iter().sum::<f64>() / heats.len() as f64
        };
        let mass = Mass::from_si(libm::round(mean(&|heat| heat.load.mass().si()) * 1e3) / 1e3);
        let from = ThermodynamicTemperature::from_si(mean(&|heat| heat.from.si()));
        let to = ThermodynamicTemperature::from_si(mean(&|heat| heat.to.si()));
        let Some(load) = known::timed_load(self.book, mass) else { return };
        let system = self.book.ready().system;
        let (mix, from_text, to_text) = (
            format!("{} g", libm::round(mass.si() * 1e3)),
            text::temperature(from, system).text,
            text::temperature(to, system).text,
        );
        let setting = text::percent(oven.setting()).text;
        self.number(
            &readings(oven, load, (from, to), heats),
            Number {
                what: format!("heating of {mix} from {from_text} to {to_text}"),
                path: &At("/bench/oven/timings/-"),
                book: None,
                with_unsure: false,
                changed: "",
                write: &seconds,
                value: &|time| json!({ "mix": mix, "from": from_text, "to": to_text, "time": time, "setting": setting }),
            },
        );
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
                changed: "",
                write: &|share: Ratio, unsure| {
                    percent(Ratio::from(share.value.clamp(0.0, 1.0)), unsure)
                },
                value: &text_value,
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
                    changed: "Is it another mold?",
                    write: &both,
                    value: &text_value,
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
        if after.starts_with('-') {
            let line = format!(
                "{}: {counted_days} show {after}, which cannot be. Check the weighings.",
                number.what
            );
            return self.not_yet.push(line);
        }
        let write = match learned.verdict {
            Verdict::Differs | Verdict::New => true,
            Verdict::Surer => number.with_unsure,
            Verdict::Agrees => false,
        };
        let before = number.book.as_ref().map(|book| match book.uncertainty {
            Some(unsure) if number.with_unsure => (number.write)(book.value, unsure),
            _ => plain(&without_unsure(&(number.write)(book.value, learned.uncertainty))),
        });
        if !write {
            return self.confirmed.push(format!("{}: {after} ({counted_days})", number.what));
        }
        let why = why(&learned, &number, &counted_days);
        self.changes.push(BookChange {
            what: number.what,
            before,
            write: change::writing(number.path, (number.value)(&after)),
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

/// Heatings by the timing of the book that they are of, and those of an amount that it has no timing of.
#[derive(Default)]
struct Groups {
    timed: BTreeMap<usize, Vec<HeatOfDay>>,
    new: Vec<Vec<HeatOfDay>>,
}

impl Groups {
    fn of(heats: &[HeatOfDay], timings: &[Timing]) -> Self {
        let mut groups = Self::default();
        let mut others = Vec::new();
        for heat in heats {
            let factor = |timing: &Timing| {
                let factor = (timing.load.mass() / heat.load.mass()).value;
                factor.max(1.0 / factor)
            };
            let all = timings.iter().enumerate();
            let nearest = all.min_by(|a, b| factor(a.1).total_cmp(&factor(b.1)));
            match nearest.filter(|(_, timing)| factor(timing) <= ONE_AMOUNT) {
                Some((place, _)) => groups.timed.entry(place).or_default().push(*heat),
                None => others.push(*heat),
            }
        }
        others.sort_by(|a, b| a.load.mass().value.total_cmp(&b.load.mass().value));
        for heat in others {
            let last = groups.new.last_mut();
            let near = last.filter(|group| {
                group
                    .first()
                    .is_some_and(|least| heat.load.mass() <= least.load.mass() * ONE_AMOUNT)
            });
            match near {
                Some(group) => group.push(heat),
                None => groups.new.push(Vec::from([heat])),
            }
        }
        groups
    }
}

/// How long `load` takes between two temperatures, by each of the `heats`: by the heat and the power of the book's oven.
fn readings(
    oven: &heat::Oven,
    load: Load,
    (from, to): (ThermodynamicTemperature, ThermodynamicTemperature),
    heats: &[HeatOfDay],
) -> Vec<Reading<Time>> {
    let time = |load: Load, from, to| -> Time { load.heat(from, to) / oven.power(load) };
    let wanted = time(load, from, to);
    heats
        .iter()
        .map(|heat| {
            Reading::heating(heat.day, wanted, heat.took, time(heat.load, heat.from, heat.to))
        })
        .collect()
}

/// A value without its ±, to the place of that of the estimate.
fn shown<Q>(value: Q, learned: &Learned<Q>, number: &Number<'_, Q>) -> String
where
    Q: Showable + Measurable<Difference = Q>,
{
    without_unsure(&(number.write)(value, learned.uncertainty))
}

/// An amount without zeros that say nothing: `4 mL` for `4.000 mL`.
fn plain(text: &str) -> String {
    match text.split_once(' ') {
        Some((number, unit)) if number.contains('.') => {
            format!("{} {unit}", number.trim_end_matches('0').trim_end_matches('.'))
        }
        _ => text.to_string(),
    }
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
            format!("{days} agree with the book, and make its ± smaller by a third or more.")
        }
        Verdict::Surer => format!("{days} agree with the book, which states no ±."),
        _ if learned.with_book => {
            format!("{days} show {seen}, beyond the book's ±; the new value weighs both.")
        }
        _ if stated => {
            let changed = number.changed;
            let days =
                format!("{days} show {seen}, too far from the book's value to average the two.");
            if changed.is_empty() { days } else { format!("{days} {changed}") }
        }
        _ => format!("{days} show {seen}, and the book's value is more than twice that ± off."),
    }
}

#[cfg(test)]
mod tests;

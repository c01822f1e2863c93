//! Time line of a day: what one person does when, and how long the day takes.

use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use super::clock::{StageHeat, every};
use super::note;
use crate::book::Book;
use crate::codes::code;
use crate::plan::layout::{Layout, WorkLayout};
use crate::plan::{PlannedHeating, Pot, Stage};
use crate::quantity::Time;
use crate::show::{Calculated, Note, Shown, part, text};
use crate::words::words;

words! {
    /// Kind of work in a span of the day.
    pub enum Doing {
        /// A pot is measured and degassed, and cleaned up in the end.
        Prepare = "prepare",
        /// A pot is heated for the first time at a stage.
        Heat = "heat",
        /// A pot is heated again between its shots.
        Reheat = "reheat",
        /// Shots are made.
        Shoot = "shoot",
    }
}

part! {
    /// A day's time line, one thing after the other.
    pub struct TimeLine {
        /// The spans in their order.
        pub spans: Vec<Span>,
        /// How long the day takes.
        pub total: Shown<Time>,
        /// Time of it with a pot in the oven or between bursts.
        pub heating: Shown<Time>,
        /// Time of it in which shots are made.
        pub shooting: Shown<Time>,
        /// Whether the time to measure, degas and clean up is missing: the book states no time for a pot.
        pub without_preparing: bool,
    }
}

part! {
    /// A span of the day.
    pub struct Span {
        /// Kind of work.
        pub doing: Doing,
        /// The pots: several for a laminated piece.
        pub pots: Vec<String>,
        /// The stage of the first of them, from 1 on.
        pub stage: u32,
        /// The mold that is shot.
        pub mold: Option<String>,
        /// Number of shots.
        pub shots: Option<u32>,
        /// When it begins, from the beginning of the day.
        pub begins: Shown<Time>,
        /// How long it takes.
        pub lasts: Shown<Time>,
    }
}

/// The time line of a laid-out day, of which the `pots` are shown; `None` if the book states no oven.
pub(in crate::plan) fn time_line(
    book: &Book,
    layout: &Layout<'_>,
    pots: &[Pot],
) -> Option<Calculated<TimeLine>> {
    book.oven.as_ref()?;
    Some(Calculated::from(lay_in_time(book, layout, pots)))
}

fn lay_in_time(book: &Book, layout: &Layout<'_>, pots: &[Pot]) -> Result<TimeLine, Note> {
    let mut line = Line::of(book, layout);
    // Shots that were made of each stage, by pot and stage.
    let mut made: Vec<Vec<u32>> = pots.iter().map(|pot| vec![0; pot.stages.len()]).collect();
    for work in &layout.work {
        let mut heats: Vec<(u32, usize, usize, &StageHeat)> = Vec::new();
        for from in &work.from {
            let stage = pots.get(from.pot).and_then(|pot| pot.stages.get(from.stage));
            let made = made.get_mut(from.pot).and_then(|stages| stages.get_mut(from.stage));
            let (Some(stage), Some(made)) = (stage, made) else { continue };
            let until = made.saturating_add(work.shots);
            for heat in clock(stage)? {
                if (*made..until).contains(&heat.after) {
                    heats.push((heat.after.saturating_sub(*made), from.pot, from.stage, heat));
                }
            }
            *made = until;
        }
        heats.sort_unstable_by_key(|&(at, pot, ..)| (at, pot));
        let mut shot = 0_u32;
        for (at, pot, stage, heat) in heats {
            line.shoot(work, at.saturating_sub(shot))?;
            shot = at;
            let held = pots.get(pot).and_then(|pot| pot.stages.get(stage));
            line.heat(pot, stage, heat, held.and_then(|stage| stage.heating.as_ref()))?;
        }
        line.shoot(work, work.shots.saturating_sub(shot))?;
    }
    Ok(line.finish())
}

fn clock(stage: &Stage) -> Result<&[StageHeat], Note> {
    match &stage.clock {
        Some(Calculated::Known(heats)) => Ok(heats),
        Some(Calculated::Unknown(why)) => Err(why.clone()),
        None => Ok(&[]),
    }
}

/// A time line as it grows.
struct Line<'a> {
    book: &'a Book,
    layout: &'a Layout<'a>,
    per_pot: Option<Time>,
    per_heat: Time,
    now: Time,
    heating: Time,
    shooting: Time,
    spans: Vec<Span>,
}

impl<'a> Line<'a> {
    fn of(book: &'a Book, layout: &'a Layout<'a>) -> Self {
        let work = book.costing.as_ref().and_then(|costing| costing.work.as_ref());
        Self {
            book,
            layout,
            per_pot: work.map(|work| work.per_pot),
            per_heat: work.map(|work| work.per_heat).unwrap_or_default(),
            now: Time::default(),
            heating: Time::default(),
            shooting: Time::default(),
            spans: Vec::new(),
        }
    }

    /// A heat of a pot at a stage, and what comes before the first of all.
    fn heat(
        &mut self,
        pot: usize,
        stage: usize,
        heat: &StageHeat,
        first: Option<&Calculated<PlannedHeating>>,
    ) -> Result<(), Note> {
        let begins = heat.after == 0;
        if let (true, 0, Some(per_pot)) = (begins, stage, self.per_pot) {
            self.span(Doing::Prepare, (pot, stage), per_pot);
        }
        // A reheat without a table takes no longer than the first heat, of more.
        let tables = [heat.heating.as_ref(), first];
        let known = tables.into_iter().flatten().find_map(Calculated::known);
        let oven = match (known, first) {
            (Some(heating), _) => heating.total.quantity,
            (None, Some(Calculated::Unknown(why))) => return Err(why.clone()),
            (None, _) => {
                return Err(note(
                    code!("oven-not-timed"),
                    "The book has no oven. Add the \"oven\" to the bench.".to_string(),
                ));
            }
        };
        // The shop's own time for a heat has its bursts in it.
        let lasts = if oven > self.per_heat { oven } else { self.per_heat };
        self.heating += lasts;
        let doing = if begins { Doing::Heat } else { Doing::Reheat };
        self.span(doing, (pot, stage), lasts);
        Ok(())
    }

    fn shoot(&mut self, work: &WorkLayout<'_>, shots: u32) -> Result<(), Note> {
        let Some(from) = work.from.first().filter(|_| shots > 0) else { return Ok(()) };
        let batch = work.of.batch;
        let window = work.of.layers.iter().find_map(|layer| layer.recipe.window);
        let lasts = every(self.book, batch.mold, window, work.of.fill())? * f64::from(shots);
        self.shooting += lasts;
        self.span(Doing::Shoot, (from.pot, from.stage), lasts);
        if let Some(span) = self.spans.last_mut() {
            span.pots = work.from.iter().map(|from| self.layout.letter(from.pot).into()).collect();
            span.mold = Some(batch.mold.name.clone());
            span.shots = Some(shots);
        }
        Ok(())
    }

    fn span(&mut self, doing: Doing, (pot, stage): (usize, usize), lasts: Time) {
        self.spans.push(Span {
            doing,
            pots: Vec::from([self.layout.letter(pot).into()]),
            stage: u32::try_from(stage.saturating_add(1)).unwrap_or(u32::MAX),
            mold: None,
            shots: None,
            begins: text::hours(self.now),
            lasts: text::time(lasts),
        });
        self.now += lasts;
    }

    fn finish(self) -> TimeLine {
        TimeLine {
            spans: self.spans,
            total: text::hours(self.now),
            heating: text::hours(self.heating),
            shooting: text::hours(self.shooting),
            without_preparing: self.per_pot.is_none(),
        }
    }
}

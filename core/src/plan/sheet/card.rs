//! The card of a pot: what is owed from it, its steps by number, and blanks to write in.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{called, stage_at, weighed};
use crate::bench::Tool;
use crate::caution::Caution;
use crate::plan::{
    Draw, Pieces, Plan, PlanStep, PlannedLine, Pot, Reading, StepAt, StepKind, Way, Weigh,
};
use crate::quantity::System;
use crate::show::page::{Page, WIDTH, broken, counted, cut};
use crate::show::text;

/// Columns of the way to measure, and of the other one.
const WAY: usize = 25;
const OTHER: usize = 28;

/// Blanks: for what a scale really showed, for what goes in by eye, and for reheats that no plan foresees.
const BLANK: &str = "______";
const SHORT_BLANK: &str = "_____";
const BY_EYE: &str = "extra by eye: ______";
const REHEATS: &str = " Reheats besides: _____";

/// Whether a caution has a line of its own on the card of each pot that it concerns: it depends on the pot, and cannot wait.
fn is_on_each_card(caution: Caution) -> bool {
    matches!(caution, Caution::Fumes | Caution::Water | Caution::DampSalt)
}

/// Contents of a pot's card so far.
struct Shown {
    /// Cautions, each once.
    cautions: Vec<Caution>,
    /// Details, each once.
    details: Vec<String>,
    /// Shots of each draw, by stage and place in it.
    shots: Vec<((u32, u32), u32)>,
}

impl Page {
    /// The cards of all pots.
    pub(super) fn cards(&mut self, plan: &Plan) {
        let mut said = Vec::new();
        for pot in &plan.pots {
            self.card(plan, pot, &mut said);
        }
    }

    /// The card of a pot; what is `said` on a card before is not said again, but for what each card says itself.
    fn card(&mut self, plan: &Plan, pot: &Pot, said: &mut Vec<Caution>) {
        self.line("");
        self.headed(&format!("POT {}  {}", pot.pot, names(pot)), &pot.cup_name, '=');
        self.wrapped("   owed  ", &owed(&plan.lines, &pot.pot));
        if let Some(there) = &pot.there {
            let state = if there.hot { "hot" } else { "not hot" };
            let there = format!("{}, {state} ({} cold)", there.mass.text, there.fills.text);
            self.wrapped("   in it ", &there);
        }
        for warning in &pot.warnings {
            self.wrapped("  ! ", &warning.message);
        }
        said.retain(|caution| !is_on_each_card(*caution));
        let mut shown =
            Shown { cautions: core::mem::take(said), details: Vec::new(), shots: Vec::new() };
        for step in &plan.steps {
            for at in step.at.iter().filter(|at| at.pot == pot.pot) {
                self.step(plan, pot, step, at, &mut shown);
            }
        }
        *said = shown.cautions;
    }

    fn step(&mut self, plan: &Plan, pot: &Pot, step: &PlanStep, at: &StepAt, shown: &mut Shown) {
        let mut text = verb_first(&at.text);
        let new: Vec<Caution> =
            step.cautions.iter().copied().filter(|one| shown.is_new(*one)).collect();
        let (own, with): (Vec<_>, Vec<_>) =
            new.into_iter().partition(|caution| is_on_each_card(*caution));
        for caution in with {
            text.push_str(&format!(" ! {}", caution.reminder()));
        }
        if step.kind == StepKind::Store {
            text.push_str(REHEATS);
        }
        let lead = format!("{:>2} ", at.number);
        let line = format!("{lead}{text}");
        let list = weighed(pot, step, at);
        // A short line and the first one of the table, or the only one of the list, may be one.
        let is_joined = match list.as_slice() {
            [] => !at.readings.is_empty() && own.is_empty() && self.joined(&line, at, plan),
            [only] if step.kind == StepKind::Add => self.joined_weigh(&line, only),
            _ => false,
        };
        if step.kind == StepKind::Measure {
            self.ends(&line, BY_EYE);
        } else if !is_joined {
            self.wrapped(&lead, &text);
        }
        for caution in own {
            self.wrapped(" ! ", caution.reminder());
        }
        for weigh in &list {
            if !is_joined {
                self.weigh(weigh);
            }
            if let Some(beyond) = &weigh.beyond {
                self.wrapped(" ! ", &beyond.message);
            }
        }
        if !is_joined {
            self.readings(&at.readings, plan.measures);
        }
        let draw =
            at.draw.and_then(|draw| stage_at(pot, at)?.draws.get((draw as usize).checked_sub(1)?));
        if let Some(draw) = draw.filter(|_| step.kind == StepKind::Shoot) {
            let now = step.items.iter().filter_map(|item| item.shots).fold(0, u32::saturating_add);
            if shown.shots(at, now) >= draw.shots {
                let is_counted_here = step.at.first().is_some_and(|first| first.pot == at.pot);
                self.pieces(draw, is_counted_here);
            }
        }
        let details = at.details.iter().map(String::as_str);
        let details: Vec<&str> = details.filter(|detail| shown.is_first(detail)).collect();
        let details = details.join(" ");
        if !details.is_empty() {
            self.wrapped("   ", &details);
        }
    }

    /// A material after `line`, where that leaves room for it.
    fn joined_weigh(&mut self, line: &str, weigh: &Weigh) -> bool {
        let other = other_way(weigh).map(|way| format!(" or {}", way.measure));
        let other = other.unwrap_or_default();
        let line = format!("{line} {} {}{other}", weigh.material, weigh.best.measure);
        let fits = line.chars().count().saturating_add(SHORT_BLANK.len()) < WIDTH;
        if fits {
            self.ends(&line, SHORT_BLANK);
        }
        fits
    }

    /// A material: the way to measure it, the other way, and what it really was.
    fn weigh(&mut self, weigh: &Weigh) {
        let other = other_way(weigh)
            .map(|Way { measure, .. }| broken(&format!("or {measure}"), " + ", OTHER));
        let mut ways = broken(&weigh.best.measure, " + ", WAY).into_iter();
        let mut others = other.unwrap_or_default().into_iter();
        self.line(&format!(
            "   {:<15} {:<WAY$} {:<OTHER$} {BLANK}",
            cut(&weigh.material, 15),
            ways.next().unwrap_or_default(),
            others.next().unwrap_or_default(),
        ));
        loop {
            let (way, other) = (ways.next(), others.next());
            if way.is_none() && other.is_none() {
                break;
            }
            let (way, other) = (way.unwrap_or_default(), other.unwrap_or_default());
            self.line(&format!("   {:<15} {way:<WAY$} {other}", ""));
        }
    }

    /// The table to heat by after `line`, where that leaves room for it.
    fn joined(&mut self, line: &str, at: &StepAt, plan: &Plan) -> bool {
        let (reads, does) = columns(&at.readings, plan.measures);
        let (reads, does) = (reads.concat(), does.concat());
        let before = line.chars().count();
        let fits = before.saturating_add(reads.chars().count()) <= WIDTH;
        if fits {
            self.line(&format!("{line}{reads}"));
            self.line(&format!("{:<before$}{does}", "   heat"));
        }
        fits
    }

    /// The table to heat by: the readings in one line, and below each what to do.
    fn readings(&mut self, readings: &[Reading], system: System) {
        const LEAD: usize = 9;
        let (reads, does) = columns(readings, system);
        let mut columns = reads.iter().zip(&does).peekable();
        while columns.peek().is_some() {
            let (mut reads, mut does) =
                (format!("   {:<6}", text::degree_unit(system)), "   heat  ".to_string());
            let mut taken = LEAD;
            while let Some((read, go)) = columns.next_if(|(read, _)| {
                taken == LEAD || taken.saturating_add(read.chars().count()) <= WIDTH
            }) {
                taken = taken.saturating_add(read.chars().count());
                reads.push_str(read);
                does.push_str(go);
            }
            self.line(&reads);
            self.line(&does);
        }
    }

    /// Pieces of a draw, with blanks for the good ones and for the masses of three.
    fn pieces(&mut self, draw: &Draw, is_counted_here: bool) {
        let is_whole = draw.together_with.is_empty();
        for pieces in &draw.pieces {
            let Pieces { shape, ordered, made, weighs, .. } = pieces;
            let shape = shape.as_ref().map(|shape| format!("{shape}: ")).unwrap_or_default();
            let good = match is_counted_here {
                true => format!("good ____ of {made}, owed {ordered}"),
                false => format!("{made} made, owed {ordered}"),
            };
            let spare = match draw.spare_shots {
                0 => String::new(),
                spare => format!(", {} to spare", counted(spare, "shot")),
            };
            let weigh = match is_whole {
                true => format!("{} each, weigh 3: ___ ___ ___", weighs.text),
                false => format!("{} layer, {} each", draw.share.text, weighs.text),
            };
            self.wrapped("   ", &format!("{shape}{good}{spare}. {weigh}"));
        }
    }
}

impl Shown {
    fn is_new(&mut self, caution: Caution) -> bool {
        let is_new = !self.cautions.contains(&caution);
        if is_new {
            self.cautions.push(caution);
        }
        is_new
    }

    fn is_first(&mut self, detail: &str) -> bool {
        let is_first = self.details.iter().all(|one| one != detail);
        if is_first {
            self.details.push(detail.to_string());
        }
        is_first
    }

    /// Counts `now` more shots of the draw, and gives all of it so far.
    fn shots(&mut self, at: &StepAt, now: u32) -> u32 {
        let key = (at.stage, at.draw.unwrap_or_default());
        match self.shots.iter_mut().find(|(of, _)| *of == key) {
            Some((_, shots)) => {
                *shots = shots.saturating_add(now);
                *shots
            }
            None => {
                self.shots.push((key, now));
                now
            }
        }
    }
}

/// The way by scale next to one by measure, or the other way round.
fn other_way(weigh: &Weigh) -> Option<&Way> {
    let is_weighed = weigh.best.tool == Tool::Balance;
    weigh.others.iter().find(|way| (way.tool == Tool::Balance) != is_weighed)
}

/// The columns of a table to heat by, all of their own width: the reading, and what to do.
fn columns(readings: &[Reading], system: System) -> (Vec<String>, Vec<String>) {
    let mut from: Option<String> = None;
    let each = readings.iter().map(|reading| {
        let below = reading.below.as_ref().map(|below| text::degrees(below.quantity, system));
        let range = match (&from, &below) {
            (None, Some(below)) => format!("under {below}"),
            (Some(from), Some(below)) => format!("{from}-{below}"),
            (from, None) => format!("over {}", from.as_deref().unwrap_or_default()),
        };
        from = below;
        let width = range.chars().count().max(reading.go.chars().count()).saturating_add(2);
        (format!("{range:>width$}"), format!("{:>width$}", reading.go))
    });
    each.unzip()
}

/// Formulas of a pot, stage after stage.
pub(super) fn names(pot: &Pot) -> String {
    let stages = pot.stages.iter().map(|stage| stage.formulas.join(" + "));
    stages.collect::<Vec<_>>().join(", then ")
}

/// The pieces that are owed from a pot, like ones together: `24 dusk finger; 32 dusk finger, salted`.
fn owed(lines: &[PlannedLine], pot: &str) -> String {
    let mut all: Vec<(String, u32, bool)> = Vec::new();
    for line in lines.iter().filter(|line| line.pots.iter().any(|one| one == pot)) {
        let what = called(line);
        match all.iter_mut().find(|(of, ..)| *of == what) {
            Some((_, pieces, _)) => *pieces = pieces.saturating_add(line.pieces),
            None => all.push((what, line.pieces, line.pots.len() > 1)),
        }
    }
    let each = all.iter().map(|(what, pieces, is_shared)| {
        let shared = if *is_shared { " (with other pots)" } else { "" };
        format!("{pieces} {what}{shared}")
    });
    each.collect::<Vec<_>>().join("; ")
}

/// A sentence with its first word in capitals: it stands out among the lines of a card.
fn verb_first(text: &str) -> String {
    match text.split_once(' ') {
        Some((verb, rest)) => format!("{} {rest}", verb.to_uppercase()),
        None => text.to_string(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_go_on_in_a_further_line_where_one_is_full() {
        let lines = |widths: [usize; 3]| {
            let reading = |go: usize| Reading {
                below: None,
                burst: None,
                expected: None,
                at_most: None,
                go: "x".repeat(go),
            };
            let mut page = Page::default();
            page.readings(&widths.map(reading), System::Metric);
            let does = page.text().lines().skip(1).step_by(2);
            does.map(|line| line.chars().count()).collect::<Vec<_>>()
        };
        // A column has 2 more than what it says, after 9 of the lead.
        assert_eq!(lines([31, 18, 16]), [80]);
        assert_eq!(lines([31, 18, 17]), [62, 28]);
    }
}

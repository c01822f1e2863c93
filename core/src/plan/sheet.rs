//! The bench sheet: a plan as text that a person tapes to the wall, 80 columns wide.

mod cost;
mod sink;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use super::{
    Borrowed, Plan, PlanStep, PlannedLine, Pot, ProofFormula, ProofReason, StepAt, StepKind, Way,
    Weigh,
};
use crate::bench::Tool;
use crate::material::Property;
use crate::show::Calculated;
use crate::show::page::{Page, broken, counted, cut};

/// Columns of the spoon measures in a weigh list.
const SPOONS: usize = 24;
/// Columns of the balance readings in a weigh list.
const BALANCE: usize = 18;
/// Columns of the pots in the order table.
const POTS: usize = 6;

/// The sheet of a plan, by `Display`.
#[derive(Debug, Clone, Copy)]
pub struct Sheet<'a>(&'a Plan);

impl Plan {
    /// The bench sheet, as text by its `Display`.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        Sheet(self)
    }
}

impl fmt::Display for Sheet<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plan = self.0;
        let mut page = Page::default();
        let title = plan
            .day
            .as_ref()
            .map_or_else(|| "BENCH SHEET".to_string(), |day| format!("BENCH SHEET  {day}"));
        page.ends(&title, plan.shop.as_deref().unwrap_or_default());
        page.rule('=');
        page.orders(&plan.lines);
        page.sink_rates(&plan.lines, plan.water.as_ref());
        page.stock(&plan.stock);
        page.work(plan);
        for pot in &plan.pots {
            page.pot(pot, &plan.steps);
        }
        page.cost(&plan.lines, plan.cost.as_ref());
        page.notes(plan);
        f.write_str(page.text())
    }
}

impl Page {
    fn detail(&mut self, text: &str) {
        self.wrapped("    ", text);
    }

    fn orders(&mut self, lines: &[PlannedLine]) {
        self.line("");
        self.line(&format!(
            "{:<7} {:<29} {:>6}  {:<12} {:>7}  {:<6} {}",
            "order", "what", "pieces", "mold", "weighs", "pots", "due"
        ));
        for line in lines {
            let due = line.promised.as_deref().and_then(|date| date.get(5..)).unwrap_or_default();
            let mut pots = broken(&line.pots.join(" "), " ", POTS).into_iter();
            let row = format!(
                "{:<7} {:<29} {:>6}  {:<12} {:>7}  {:<POTS$} {due}",
                cut(&line.order, 7),
                cut(&called(line), 29),
                line.pieces,
                cut(&line.mold, 12),
                line.piece.text,
                pots.next().unwrap_or_default()
            );
            self.line(&row);
            for more in pots {
                self.line(&format!("{:68}{more}", ""));
            }
            if let (Some(packs), Some(each)) = (line.packs, line.pack_of) {
                self.line(&format!("{:<8}  {packs} packs of {each}", ""));
            }
        }
    }

    fn work(&mut self, plan: &Plan) {
        self.line("");
        self.line("ORDER OF WORK");
        for (number, work) in (1..).zip(&plan.work) {
            self.wrapped(&format!("{number:>3}. "), &work.text);
            for detail in &work.details {
                self.wrapped("     ", detail);
            }
        }
        self.time_line(plan);
        let proof = &plan.proof;
        let pots = counted(proof.pots, "pot");
        if proof.pots == proof.least {
            self.wrapped("     ", &format!("{pots}: no plan has fewer."));
        } else {
            let found = format!("{pots}; no plan has fewer than {}.", proof.least);
            self.wrapped("     ", &found);
        }
        // One pot for one formula needs no reason.
        if proof.least > 1 {
            for reason in &proof.reasons {
                self.wrapped("     ", &told(reason));
            }
        }
    }

    fn pot(&mut self, pot: &Pot, steps: &[PlanStep]) {
        self.line("");
        self.ends(&format!("POT {}", pot.pot), &pot.cup_name);
        self.rule('-');
        for warning in &pot.warnings {
            self.wrapped("  ! ", &warning.message);
        }
        for step in steps {
            for at in step.at.iter().filter(|at| at.pot == pot.pot) {
                self.step(pot, step, at);
            }
        }
    }

    fn step(&mut self, pot: &Pot, step: &PlanStep, at: &StepAt) {
        self.wrapped("[ ] ", &at.text);
        for caution in &step.cautions {
            self.wrapped("  ! ", caution.reminder());
        }
        if matches!(step.kind, StepKind::Measure | StepKind::Add) {
            let stage = pot.stages.get((at.stage as usize).saturating_sub(1));
            let is_here = |weigh: &&Weigh| {
                step.items.iter().any(|item| item.material.as_ref() == Some(&weigh.material))
            };
            let list = stage.iter().flat_map(|stage| &stage.weigh).filter(is_here);
            self.weigh_list(&list.collect::<Vec<_>>());
        }
        at.details.iter().for_each(|detail| self.detail(detail));
    }

    /// How long the day takes.
    fn time_line(&mut self, plan: &Plan) {
        let text = match &plan.clock {
            Some(Calculated::Known(line)) => {
                let without = if line.without_preparing {
                    ", measuring and cleaning up not counted"
                } else {
                    ""
                };
                format!(
                    "The day takes about {}: {} of heating, {} of shooting{without}.",
                    line.total.text, line.heating.text, line.shooting.text
                )
            }
            Some(Calculated::Unknown(why)) => {
                format!("How long the day takes is not known. {}", why.message)
            }
            None => return,
        };
        self.wrapped("     ", &text);
    }

    fn weigh_list(&mut self, list: &[&Weigh]) {
        self.line(&format!(
            "    {:<15} {:<SPOONS$}{:>7} {:>BALANCE$}{:>8}",
            "", "cups, spoons, drops", "off", "balance", "off"
        ));
        for weigh in list {
            let ways = || core::iter::once(&weigh.best).chain(&weigh.others);
            let by_balance = ways().find(|way| way.tool == Tool::Balance);
            let by_measure = ways().find(|way| way.tool != Tool::Balance);
            let marked = |way: Option<&Way>| match way {
                Some(way) if *way == weigh.best => format!("*{}", way.measure),
                Some(way) => format!(" {}", way.measure),
                None => " -".to_string(),
            };
            let off = |way: Option<&Way>| way.map(|way| way.off.text.clone()).unwrap_or_default();
            let mut measures = broken(&marked(by_measure), " + ", SPOONS).into_iter();
            let mut readings = broken(&marked(by_balance), " + ", BALANCE).into_iter();
            self.line(&format!(
                "    {:<15} {:<SPOONS$}{:>7} {:>BALANCE$}{:>8}",
                cut(&weigh.material, 15),
                measures.next().unwrap_or_default(),
                off(by_measure),
                readings.next().unwrap_or_default(),
                off(by_balance),
            ));
            loop {
                let (measure, reading) = (measures.next(), readings.next());
                if measure.is_none() && reading.is_none() {
                    break;
                }
                let measure = measure.map(|more| format!(" {more}")).unwrap_or_default();
                let reading = reading.unwrap_or_default();
                self.line(&format!("{:20}{measure:<SPOONS$}{:8}{reading:>BALANCE$}", "", ""));
            }
        }
    }

    /// Numbers that the book does not state, what would gain most first.
    fn borrowed(&mut self, list: &[Borrowed]) {
        if list.is_empty() {
            return;
        }
        self.line("");
        self.line("BORROWED NUMBERS: measure the first of these first");
        for one in list {
            let what = match one.property {
                Property::AsScooped => "density as scooped",
                property => property.word(),
            };
            self.wrapped(
                "  - ",
                &format!(
                    "{} {what}, taken as {} ({}): makes a piece's weight unsure by {}. {}",
                    one.material, one.value, one.source, one.gain.text, one.how
                ),
            );
        }
    }

    fn notes(&mut self, plan: &Plan) {
        self.line("");
        self.rule('=');
        self.wrapped(
            "* ",
            "the way to take: the formula's own measure, or the other where that is surer; one way is enough.",
        );
        if !plan.assumptions.is_empty() {
            self.line("");
            self.line("TO KNOW");
            for note in &plan.assumptions {
                self.wrapped("  - ", &note.message);
            }
        }
        self.borrowed(&plan.borrowed);
        self.line("");
        self.line("CAUTIONS");
        for caution in &plan.cautions {
            self.wrapped("  ! ", caution.sentence());
        }
    }
}

/// What a line asks for, with the shape in a mold with unlike cavities.
fn called(line: &PlannedLine) -> String {
    let shape = line.shape.as_ref().map(|shape| format!(", {shape}")).unwrap_or_default();
    format!("{}{shape}", line.what)
}

/// Why there cannot be fewer pots: the argument, and each formula with its numbers.
fn told(reason: &ProofReason) -> String {
    let pots = counted(reason.pots, "pot");
    let one = |of: &ProofFormula| match of.pots {
        Some(needs) => format!("{}, {}: {}", of.formula, counted(needs, "pot"), of.because),
        None => format!("{}: {}", of.formula, of.because),
    };
    match reason.formulas.as_slice() {
        [only] => format!("{pots} for {}: {}.", only.formula, only.because),
        all => {
            let all: Vec<String> = all.iter().map(one).collect();
            format!("{pots}: {}. {}.", reason.because, all.join("; "))
        }
    }
}

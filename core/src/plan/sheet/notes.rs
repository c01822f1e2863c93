//! The notes to a day: what a person does not need with gloves on.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::card::names;
use super::weighed;
use crate::material::Property;
use crate::plan::{Borrowed, Plan, Pot, ProofFormula, ProofReason, StepAt, Way, Weigh};
use crate::show::Calculated;
use crate::show::page::{Page, counted, cut};

impl Page {
    /// Why there are not fewer pots, and how long the day takes where that is not known.
    pub(super) fn proof(&mut self, plan: &Plan) {
        let proof = &plan.proof;
        self.line("");
        let pots = counted(proof.pots, "pot");
        if proof.pots == proof.least {
            self.wrapped("", &format!("{pots}: no plan has fewer."));
        } else {
            self.wrapped("", &format!("{pots}; no plan has fewer than {}.", proof.least));
        }
        // One pot for one formula needs no reason.
        if proof.least > 1 {
            for reason in &proof.reasons {
                self.wrapped("  - ", &argued(reason));
            }
        }
        if let Some(Calculated::Unknown(why)) = &plan.clock {
            let what = format!("How long the day takes is not known. {}", why.message);
            self.wrapped("", &what);
        }
    }

    /// Notes on a pot, step by step.
    pub(super) fn pot_notes(&mut self, plan: &Plan, pot: &Pot) {
        self.line("");
        self.line(&cut(&format!("POT {}  {}", pot.pot, names(pot)), 80));
        self.rule('-');
        for step in &plan.steps {
            for at in step.at.iter().filter(|at| at.pot == pot.pot) {
                self.step_notes(at, &weighed(pot, step, at));
            }
        }
    }

    fn step_notes(&mut self, at: &StepAt, list: &[&Weigh]) {
        let ways = list.iter().map(|weigh| format!("{}: {}.", weigh.material, ways(weigh)));
        let notes: Vec<String> = ways.chain(at.notes.iter().cloned()).collect();
        for (place, note) in notes.iter().enumerate() {
            let lead = if place == 0 { format!("{:>2} ", at.number) } else { "   ".to_string() };
            self.wrapped(&lead, note);
        }
    }

    pub(super) fn assumed(&mut self, plan: &Plan) {
        if plan.assumptions.is_empty() {
            return;
        }
        self.line("");
        self.line("ASSUMED");
        for note in &plan.assumptions {
            self.wrapped("  - ", &note.message);
        }
    }

    /// Numbers that the book does not state, what would gain most first.
    pub(super) fn borrowed(&mut self, list: &[Borrowed]) {
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
                    "{} {what}, taken as {} ({}): leaves a piece's weight uncertain by {}. {}",
                    one.material, one.value, one.source, one.gain.text, one.how
                ),
            );
        }
    }
}

/// All ways to measure a material, the one to take first, each with how far it is off.
fn ways(weigh: &Weigh) -> String {
    let way = |way: &Way| format!("{} ({})", way.measure, way.off.text);
    let all: Vec<String> = core::iter::once(&weigh.best).chain(&weigh.others).map(way).collect();
    all.join(", or ")
}

/// Why there cannot be fewer pots: the argument, and each formula with its numbers.
fn argued(reason: &ProofReason) -> String {
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

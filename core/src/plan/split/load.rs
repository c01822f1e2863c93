//! Pots as they fill up: what is in each, and whether that keeps the limits.

use alloc::collections::BTreeSet;
use alloc::vec;
use alloc::vec::Vec;

use super::problem::{Problem, Shots};
use super::{Pot, Visit};
use crate::plan::sequence::{Flow, Leg, fits, flow};

/// A pot being filled.
#[derive(Clone, Default)]
pub(super) struct Load {
    pub(super) stops: Vec<Stop>,
    /// Base that the draws take, kg.
    base: f64,
}

/// One formula that it is at.
#[derive(Clone)]
pub(super) struct Stop {
    pub(super) formula: usize,
    /// Layers: (session, stage).
    pub(super) layers: Vec<(usize, usize)>,
    pub(super) plain: Shots,
    /// What all of these take, kg.
    out: f64,
}

impl Stop {
    /// A session is one heat; plain shots have the heat of a session, or their own.
    pub(super) fn heats(&self) -> u32 {
        u32::try_from(self.layers.len()).unwrap_or(u32::MAX).max(1)
    }
}

/// What is put into a pot at once.
#[derive(Clone)]
pub(super) enum Portion {
    /// One layer of a session: its stage.
    Layer { session: usize, stage: usize },
    /// Plain draws of one formula.
    Plain(Shots),
}

/// How strictly a pot is looked at.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Look {
    /// As it is.
    Whole,
    /// Only what no further portion can mend: what the least pot or the heel makes the next stage
    /// larger by is left out, since a further draw may take it.
    Hopeless,
}

/// All pots.
#[derive(Clone)]
pub(super) struct State {
    pub(super) loads: Vec<Load>,
    /// For each session the pots of its layers so far.
    pots_of: Vec<Vec<usize>>,
    flows: Vec<Flow>,
    legs: Vec<Leg>,
}

impl State {
    /// So many empty pots.
    pub(super) fn new(problem: &Problem<'_>, pots: usize) -> Self {
        Self {
            loads: vec![Load::default(); pots],
            pots_of: vec![Vec::new(); problem.sessions.len()],
            flows: Vec::new(),
            legs: Vec::new(),
        }
    }

    pub(super) fn used(&self) -> usize {
        self.loads.iter().filter(|load| !load.stops.is_empty()).count()
    }

    pub(super) fn heats(&self) -> u32 {
        let stops = self.loads.iter().flat_map(|load| &load.stops);
        stops.fold(0, |sum, stop| sum.saturating_add(stop.heats()))
    }

    /// Puts `portion` of `formula` into `pot` if that keeps all limits.
    pub(super) fn put(
        &mut self,
        problem: &Problem<'_>,
        pot: usize,
        formula: usize,
        portion: &Portion,
        look: Look,
    ) -> bool {
        let out = match portion {
            Portion::Layer { session, stage } => {
                let shots = problem.sessions.get(*session).map_or(0, |s| s.shots);
                problem.out(&[(*stage, shots)])
            }
            Portion::Plain(shots) => problem.out(shots),
        };
        let base = out * problem.precedence.base_share(formula).unwrap_or(0.0);
        let Some(load) = self.loads.get(pot) else { return false };
        let taken = matches!(portion, Portion::Layer { session, .. }
            if self.pots_of.get(*session).is_some_and(|pots| pots.contains(&pot)));
        if taken || load.stops.iter().any(|stop| !problem.share(stop.formula, formula)) {
            return false;
        }
        if !problem.fresh_base() && !load.has_base_for(problem, formula, base) {
            return false;
        }
        let before = load.clone();
        let Some(load) = self.loads.get_mut(pot) else { return false };
        load.add(problem, formula, portion, out, base);
        if let Portion::Layer { session, .. } = portion {
            self.pots_of.get_mut(*session).into_iter().for_each(|pots| pots.push(pot));
        }
        if self.keeps_limits(problem, pot, look) && self.has_order(portion) {
            return true;
        }
        self.take_back(pot, before, portion);
        false
    }

    /// Makes `pot` what it was before `portion` came in.
    pub(super) fn take_back(&mut self, pot: usize, before: Load, portion: &Portion) {
        if let Some(load) = self.loads.get_mut(pot) {
            *load = before;
        }
        if let Portion::Layer { session, .. } = portion {
            self.pots_of.get_mut(*session).into_iter().for_each(|pots| pots.retain(|&p| p != pot));
        }
    }

    /// Heats and capacity of one pot.
    pub(super) fn keeps_limits(&mut self, problem: &Problem<'_>, pot: usize, look: Look) -> bool {
        let Some(load) = self.loads.get(pot) else { return false };
        let heats = load.stops.iter().fold(0_u32, |sum, stop| sum.saturating_add(stop.heats()));
        if heats > problem.heats {
            return false;
        }
        self.legs.clear();
        for (i, stop) in load.stops.iter().enumerate() {
            let next = load.stops.get(i.saturating_add(1)).map(|next| next.formula);
            let carry = next.map_or(Some(0.0), |next| problem.precedence.carry(stop.formula, next));
            let Some(carry) = carry else { return false };
            let out = stop.out + problem.kept * f64::from(stop.heats());
            let holds =
                if problem.fresh_base() { problem.capacity(stop.formula) } else { f64::INFINITY };
            self.legs.push(Leg { out, yields: problem.yields, carry, holds });
        }
        flow(&self.legs, problem.bottom, problem.least, &mut self.flows);
        self.flows.iter().zip(&load.stops).all(|(flow, stop)| {
            let held = if look == Look::Whole { flow.held } else { flow.need };
            fits(held / problem.capacity(stop.formula))
        })
    }

    /// Whether a session that has just been put in need not come before itself. Only new cycles
    /// are looked for, and these go through it.
    fn has_order(&self, portion: &Portion) -> bool {
        let Portion::Layer { session, .. } = *portion else { return true };
        let mut seen = BTreeSet::new();
        let mut open = vec![session];
        while let Some(at) = open.pop() {
            for &pot in self.pots_of.get(at).into_iter().flatten() {
                for later in self.after(pot, at) {
                    if later == session {
                        return false;
                    }
                    if seen.insert(later) {
                        open.push(later);
                    }
                }
            }
        }
        true
    }

    /// Sessions of `pot` at later formulas than that of `session`.
    fn after(&self, pot: usize, session: usize) -> impl Iterator<Item = usize> {
        let stops = self.loads.get(pot).map_or(&[][..], |load| load.stops.as_slice());
        let at = move |stop: &&Stop| !stop.layers.iter().any(|&(s, _)| s == session);
        stops.iter().skip_while(at).skip(1).flat_map(|stop| stop.layers.iter().map(|&(s, _)| s))
    }
}

impl Load {
    /// Whether the first stage can hold all base that the draws take with `more`: a quick look before
    /// the whole recursion.
    fn has_base_for(&self, problem: &Problem<'_>, formula: usize, more: f64) -> bool {
        let first = self.stops.first().map_or(formula, |stop| stop.formula);
        let first = if problem.place(formula) < problem.place(first) { formula } else { first };
        let share = problem.precedence.base_share(first).unwrap_or(1.0);
        fits((self.base + more) / (problem.capacity(first) * share))
    }

    /// As the plan shows it.
    pub(super) fn pot(&self, problem: &Problem<'_>) -> Pot {
        Pot { visits: self.stops.iter().map(|stop| stop.visit(problem)).collect() }
    }

    fn add(
        &mut self,
        problem: &Problem<'_>,
        formula: usize,
        portion: &Portion,
        out: f64,
        base: f64,
    ) {
        let place = problem.place(formula);
        let at = self.stops.partition_point(|stop| problem.place(stop.formula) < place);
        if self.stops.get(at).is_none_or(|stop| stop.formula != formula) {
            let stop = Stop { formula, layers: Vec::new(), plain: Vec::new(), out: 0.0 };
            self.stops.insert(at, stop);
        }
        let Some(stop) = self.stops.get_mut(at) else { return };
        match portion {
            Portion::Layer { session, stage } => stop.layers.push((*session, *stage)),
            Portion::Plain(shots) => stop.plain.extend(shots),
        }
        stop.out += out;
        self.base += base;
    }
}

impl Stop {
    fn visit(&self, problem: &Problem<'_>) -> Visit {
        let layer = |&(session, stage): &(usize, usize)| {
            (stage, problem.sessions.get(session).map_or(0, |s| s.shots))
        };
        let draws = self.layers.iter().map(layer).chain(self.plain.iter().copied()).collect();
        Visit { formula: self.formula, draws, heats: self.heats() }
    }
}

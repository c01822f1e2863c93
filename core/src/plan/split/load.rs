//! Pots as they fill up: what is in each, and whether that keeps the limits.

use alloc::vec;
use alloc::vec::Vec;

use super::problem::{Problem, Room, Shots, Take};
use super::reheats::full;
use super::{Pot, Visit};
use crate::plan::bits::Bits;
use crate::plan::sequence::{Flow, Leg, fits, flow};

/// A pot being filled.
#[derive(Clone, Default)]
pub(super) struct Load {
    pub(super) stops: Vec<Stop>,
    /// Formulas that can share a pot with all of these; of no account while it is empty.
    open_to: Bits,
    /// Base that the draws take for good, kg.
    base: f64,
    heats: u32,
}

/// One formula that it is at.
#[derive(Clone)]
pub(super) struct Stop {
    pub(super) formula: usize,
    /// Layers: (session, stage).
    pub(super) layers: Vec<(usize, usize)>,
    pub(super) plain: Shots,
    /// Mass of all of these.
    take: Take,
}

impl Stop {
    /// A session is one heat; plain shots have the heat of a session, or their own.
    pub(super) fn heats(&self) -> u32 {
        u32::try_from(self.layers.len()).unwrap_or(u32::MAX).max(1)
    }
}

/// Shots put into a pot at once.
#[derive(Clone)]
pub(super) struct Portion {
    pub(super) formula: usize,
    pub(super) take: Take,
    pub(super) what: What,
}

#[derive(Clone)]
pub(super) enum What {
    /// One layer of a session: its stage.
    Layer { session: usize, stage: usize },
    /// Plain draws.
    Plain(Shots),
}

impl Portion {
    /// The session that it is a layer of.
    pub(super) fn session(&self) -> Option<usize> {
        match self.what {
            What::Layer { session, .. } => Some(session),
            What::Plain(_) => None,
        }
    }

    /// Whether it is one and the same for all plans.
    pub(super) fn is_like(&self, other: &Self) -> bool {
        match (&self.what, &other.what) {
            (What::Plain(own), What::Plain(others)) => own == others,
            _ => false,
        }
    }
}

/// How strictly a pot is looked at.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Look {
    /// As it is.
    Whole,
    /// Only what no further portion can mend: the mass by which the smallest pot or the heel makes the next stage
    /// larger is left out, since a further draw may take it.
    Hopeless,
}

/// All pots.
#[derive(Clone)]
pub(super) struct State {
    pub(super) loads: Vec<Load>,
    /// For each session the pots of its layers so far, and at which formula each is.
    pots_of: Vec<Vec<(usize, usize)>>,
    trial: Trial,
    order: Order,
}

/// Room to look for cycles of sessions in, kept from one to the next.
#[derive(Clone, Default)]
struct Order {
    /// For each pot the first stop that the session comes before; the largest number for none.
    reached: Vec<usize>,
    /// Pots with such a stop.
    touched: Vec<usize>,
    /// Sessions that it comes before, still to be followed.
    open: Vec<usize>,
}

/// Room to try a pot in, kept from one trial to the next.
#[derive(Clone, Default)]
struct Trial {
    visits: Vec<TrialVisit>,
    legs: Vec<Leg>,
    flows: Vec<Flow>,
}

/// A visit of a pot that is tried.
#[derive(Clone, Copy)]
struct TrialVisit {
    formula: usize,
    take: Take,
    /// Heats, reheats between shots aside.
    heats: u32,
    /// Index of the stop in the load, if it has it already.
    stop: Option<usize>,
    /// Whether what is asked goes into it.
    is_asked: bool,
}

impl State {
    /// This number of empty pots.
    pub(super) fn new(problem: &Problem<'_>, pots: usize) -> Self {
        Self {
            loads: vec![Load::default(); pots],
            pots_of: vec![Vec::new(); problem.sessions.len()],
            trial: Trial::default(),
            order: Order::default(),
        }
    }

    /// One more pot, empty.
    pub(super) fn open(&mut self) -> usize {
        self.loads.push(Load::default());
        self.loads.len().saturating_sub(1)
    }

    pub(super) fn used(&self) -> usize {
        self.loads.iter().filter(|load| !load.stops.is_empty()).count()
    }

    pub(super) fn heats(&self) -> u32 {
        self.loads.iter().fold(0, |sum, load| sum.saturating_add(load.heats))
    }

    /// Puts `portion` into `pot` if that keeps all limits.
    pub(super) fn put(
        &mut self,
        problem: &Problem<'_>,
        pot: usize,
        portion: &Portion,
        look: Look,
    ) -> bool {
        if !self.can_take(problem, pot, portion, look) {
            return false;
        }
        let session = portion.session();
        let Some(load) = self.loads.get_mut(pot) else { return false };
        let before = session.map(|_| load.clone());
        load.add(problem, portion);
        if let (Some(session), Some(before)) = (session, before) {
            let at = (pot, portion.formula);
            self.pots_of.get_mut(session).into_iter().for_each(|pots| pots.push(at));
            if !self.has_order(session) {
                self.take_back(pot, before, portion);
                return false;
            }
        }
        true
    }

    /// Makes `pot` what it was before `portion` came in.
    pub(super) fn take_back(&mut self, pot: usize, before: Load, portion: &Portion) {
        if let Some(load) = self.loads.get_mut(pot) {
            *load = before;
        }
        if let Some(pots) = portion.session().and_then(|s| self.pots_of.get_mut(s)) {
            pots.retain(|&(p, _)| p != pot);
        }
    }

    /// Whether `pot` can take what is asked, the order of sessions left aside.
    pub(super) fn can_take(
        &mut self,
        problem: &Problem<'_>,
        pot: usize,
        ask: &Portion,
        look: Look,
    ) -> bool {
        let Some(load) = self.loads.get(pot) else { return false };
        let mut pots = ask.session().and_then(|s| self.pots_of.get(s)).into_iter().flatten();
        if pots.any(|&(p, _)| p == pot) || !load.looks_open(problem, ask) {
            return false;
        }
        problem.budget.spend(load.stops.len().saturating_add(1))
            && self.trial.keeps_limits(problem, load, Some(ask), look)
    }

    /// Whether every pot keeps its limits as it is.
    pub(super) fn keeps_limits(&mut self, problem: &Problem<'_>) -> bool {
        let Self { loads, trial, .. } = self;
        loads.iter().all(|load| trial.keeps_limits(problem, load, None, Look::Whole))
    }

    /// Whether a session that has just been put in need not come before itself. Only new cycles
    /// are looked for, and these go through it.
    fn has_order(&mut self, session: usize) -> bool {
        let Self { loads, pots_of, order: Order { reached, touched, open }, .. } = self;
        let pots_of = |session: usize| pots_of.get(session).map_or(&[][..], Vec::as_slice);
        let stop_of = |&(pot, formula): &(usize, usize)| {
            let stops = loads.get(pot)?.stops.as_slice();
            Some((stops, stops.iter().position(|stop| stop.formula == formula)?))
        };
        let own = pots_of(session);
        let is_first = own.iter().filter_map(stop_of).all(|(_, stop)| stop == 0);
        let is_last =
            own.iter().filter_map(stop_of).all(|(stops, at)| at.saturating_add(1) == stops.len());
        // In one pot alone it is between sessions that already have their order there.
        if own.len() < 2 || is_first || is_last {
            return true;
        }
        reached.resize(loads.len(), usize::MAX);
        open.clear();
        open.push(session);
        let mut has_order = true;
        while let Some(at) = open.pop().filter(|_| has_order) {
            for at in pots_of(at) {
                let (Some((stops, stop)), Some(reached)) = (stop_of(at), reached.get_mut(at.0))
                else {
                    continue;
                };
                // Of a pot the stops that another session comes before are known already.
                let (from, to) = (stop.saturating_add(1), stops.len().min(*reached));
                if *reached == usize::MAX {
                    touched.push(at.0);
                }
                *reached = from.min(*reached);
                let later = stops.get(from..to).into_iter().flatten();
                for &(later, _) in later.flat_map(|stop| &stop.layers) {
                    has_order &= later != session;
                    open.push(later);
                }
            }
        }
        for pot in touched.drain(..) {
            reached.get_mut(pot).into_iter().for_each(|reached| *reached = usize::MAX);
        }
        has_order
    }
}

impl Trial {
    /// The visits of `load`, and what is asked in addition.
    fn set(&mut self, load: &Load, problem: &Problem<'_>, ask: Option<&Portion>) {
        self.visits.clear();
        self.visits.extend(load.stops.iter().enumerate().map(|(stop, s)| TrialVisit {
            formula: s.formula,
            take: s.take,
            heats: s.heats(),
            stop: Some(stop),
            is_asked: false,
        }));
        let Some(ask) = ask else { return };
        let at = load.place(problem, ask.formula);
        match self.visits.get_mut(at).filter(|visit| visit.formula == ask.formula) {
            Some(visit) => {
                let sessions = load.stops.get(at).map_or(0, |stop| stop.layers.len());
                let sessions = sessions.saturating_add(usize::from(ask.session().is_some()));
                visit.take = visit.take.and(ask.take);
                visit.heats = u32::try_from(sessions).unwrap_or(u32::MAX).max(1);
                visit.is_asked = true;
            }
            None => {
                let (formula, take) = (ask.formula, ask.take);
                let visit = TrialVisit { formula, take, heats: 1, stop: None, is_asked: true };
                self.visits.insert(at, visit);
            }
        }
    }

    /// Heats and capacity, of `load` and what is asked in addition.
    fn keeps_limits(
        &mut self,
        problem: &Problem<'_>,
        load: &Load,
        ask: Option<&Portion>,
        look: Look,
    ) -> bool {
        self.set(load, problem, ask);
        let heats = self.visits.iter().fold(0_u32, |sum, visit| sum.saturating_add(visit.heats));
        if heats > problem.heats {
            return false;
        }
        problem.cups.iter().any(|cup| {
            self.fits_cup(problem, cup, look) && self.has_heats(problem, load, ask, (cup, look))
        })
    }

    /// Whether the heats with all reheats are as many as a pot may take, in a cup that it fits.
    fn has_heats(
        &self,
        problem: &Problem<'_>,
        load: &Load,
        ask: Option<&Portion>,
        (cup, look): (&Room, Look),
    ) -> bool {
        if !problem.counts_reheats() {
            return true;
        }
        let mut heats = 0_u32;
        for (visit, flow) in self.visits.iter().zip(&self.flows) {
            let stop = visit.stop.and_then(|stop| load.stops.get(stop));
            let (mut layers, mut plain) =
                stop.map(|stop| (stop.layers.clone(), stop.plain.clone())).unwrap_or_default();
            match ask.filter(|_| visit.is_asked).map(|ask| &ask.what) {
                Some(&What::Layer { session, stage }) => layers.push((session, stage)),
                Some(What::Plain(shots)) => pool(problem, &mut plain, shots),
                None => {}
            }
            // A later draw may fill the pot up, and a fuller one stays hot longer.
            let held = match look {
                Look::Whole => flow.held,
                Look::Hopeless => full(cup, visit.formula),
            };
            let Some(own) = problem.visit_heats(visit.formula, (&layers, &plain), held) else {
                return false;
            };
            heats = heats.saturating_add(own);
        }
        heats <= problem.heats
    }

    fn fits_cup(&mut self, problem: &Problem<'_>, cup: &Room, look: Look) -> bool {
        self.legs.clear();
        for (i, &TrialVisit { formula, take, heats, .. }) in self.visits.iter().enumerate() {
            let next = self.visits.get(i.saturating_add(1)).map(|next| next.formula);
            let carry = next.map_or(Some(0.0), |next| problem.precedence.carry(formula, next));
            let Some(carry) = carry else { return false };
            let holds = if problem.fresh_base() { cup.capacity(formula) } else { f64::INFINITY };
            self.legs.push(Leg {
                out: take.out + take.kept * f64::from(heats),
                // After the last visit no mix is made that sprues could go into.
                back: if next.is_some() { take.back } else { 0.0 },
                yields: problem.yields,
                carry,
                holds,
            });
        }
        let least = self.visits.first().map_or(0.0, |first| problem.least(first.formula));
        flow(&self.legs, cup.bottom, least, &mut self.flows);
        self.flows.iter().zip(&self.visits).all(|(flow, visit)| {
            let held = if look == Look::Whole { flow.held } else { flow.need };
            fits(held / cup.capacity(visit.formula))
        })
    }
}

/// Adds `more` shots to those `of` a visit, which are in the order of work.
fn pool(problem: &Problem<'_>, of: &mut Shots, more: &Shots) {
    for &(stage, n) in more {
        match of.iter_mut().find(|(known, _)| *known == stage) {
            Some((_, shots)) => *shots = shots.saturating_add(n),
            None => of.push((stage, n)),
        }
    }
    of.sort_unstable_by_key(|&(stage, _)| (problem.key(stage), stage));
}

impl Load {
    /// Index of `formula` among the stops, or where it would go.
    fn place(&self, problem: &Problem<'_>, formula: usize) -> usize {
        let place = problem.place(formula);
        self.stops.partition_point(|stop| problem.place(stop.formula) < place)
    }

    /// A quick look before the recursion: formulas that can share the pot, heats, and whether the first
    /// stage can hold all base that the draws take.
    fn looks_open(&self, problem: &Problem<'_>, ask: &Portion) -> bool {
        let Some(first) = self.stops.first().map(|stop| stop.formula) else { return true };
        if !self.open_to.contains(ask.formula) {
            return false;
        }
        let new = self.stops.iter().all(|stop| stop.formula != ask.formula);
        if self.heats >= problem.heats && new {
            return false;
        }
        let earlier = problem.place(ask.formula) < problem.place(first);
        let first = if earlier { ask.formula } else { first };
        let base = self.base + (ask.take.out - ask.take.back) * problem.base_share(ask.formula);
        problem.fresh_base() || fits(base / (problem.capacity(first) * problem.base_share(first)))
    }

    /// Whether it holds something, and `formula` can share the pot with that.
    pub(super) fn goes_with(&self, formula: usize) -> bool {
        !self.stops.is_empty() && self.open_to.contains(formula)
    }

    /// Whether a formula that is not in it yet, taking `base` at least, may still come in. If not, it never will.
    pub(super) fn is_open(&self, problem: &Problem<'_>, base: f64) -> bool {
        self.heats < problem.heats
            && (problem.fresh_base() || fits((self.base + base) / problem.most_base))
    }

    fn add(&mut self, problem: &Problem<'_>, portion: &Portion) {
        let Portion { formula, take, ref what } = *portion;
        let partners = problem.partners(formula);
        if self.stops.is_empty() {
            self.open_to = partners.clone();
        } else {
            self.open_to.intersect(partners);
        }
        let at = self.place(problem, formula);
        if self.stops.get(at).is_none_or(|stop| stop.formula != formula) {
            let (layers, plain) = (Vec::new(), Vec::new());
            self.stops.insert(at, Stop { formula, layers, plain, take: Take::default() });
        }
        let Some(stop) = self.stops.get_mut(at) else { return };
        match what {
            What::Layer { session, stage } => stop.layers.push((*session, *stage)),
            What::Plain(shots) => pool(problem, &mut stop.plain, shots),
        }
        stop.take = stop.take.and(take);
        self.base += (take.out - take.back) * problem.base_share(formula);
        self.heats = self.stops.iter().fold(0, |sum, stop| sum.saturating_add(stop.heats()));
    }

    /// The layer of `session` that it holds.
    pub(super) fn stage_of(&self, session: usize) -> Option<usize> {
        let mut layers = self.stops.iter().flat_map(|stop| &stop.layers);
        layers.find(|(of, _)| *of == session).map(|&(_, stage)| stage)
    }

    /// Leaves out `session`, whose shots another one of the same pots has.
    pub(super) fn leave_out(&mut self, session: usize) {
        for stop in &mut self.stops {
            stop.layers.retain(|(of, _)| *of != session);
        }
    }

    /// The visits that the plan shows; the order of work puts their draws in.
    pub(super) fn pot(&self) -> Pot {
        let visit = |stop: &Stop| {
            let (formula, draws, heats) = (stop.formula, Vec::new(), stop.heats());
            Visit { formula, draws, heats }
        };
        Pot { visits: self.stops.iter().map(visit).collect() }
    }
}

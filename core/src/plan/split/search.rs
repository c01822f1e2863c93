//! Finding the pots: first fit in several ways, and all ways where there are few portions.

use alloc::vec;
use alloc::vec::Vec;

use super::EXACT_PORTIONS;
use super::bound::Bound;
use super::load::{Load, Look, Portion, State};
use super::problem::{Formula, Problem, Shots};

/// One way of first fit.
#[derive(Clone, Copy)]
struct Way {
    /// Pots go along the fewest chains.
    chains: bool,
    darkest_first: bool,
    /// Plain draws are divided to fill a pot up.
    divide: bool,
}

/// The best way first: what ties is left as it is.
const WAYS: [Way; 8] = [
    Way { chains: true, darkest_first: true, divide: false },
    Way { chains: true, darkest_first: false, divide: false },
    Way { chains: false, darkest_first: true, divide: false },
    Way { chains: false, darkest_first: false, divide: false },
    Way { chains: true, darkest_first: true, divide: true },
    Way { chains: true, darkest_first: false, divide: true },
    Way { chains: false, darkest_first: true, divide: true },
    Way { chains: false, darkest_first: false, divide: true },
];

/// The fewest pots found, and whether all whole portions were put together in all ways.
pub(super) fn fewest(problem: &Problem<'_>, bound: &Bound) -> (Vec<Load>, bool) {
    let whole: Vec<(&Formula, Vec<Portion>)> =
        problem.formulas.iter().map(|f| (f, whole_portions(problem, f))).collect();
    let mut best: Option<State> = None;
    for way in WAYS {
        let found = first_fit(problem, bound, &whole, way);
        let size = |state: &State| (state.used(), state.heats());
        if best.as_ref().is_none_or(|best| size(&found) < size(best)) {
            best = Some(found);
        }
        if best.as_ref().is_some_and(|best| best.used() <= bound.lower) {
            break;
        }
    }
    let mut best = best.unwrap_or_else(|| State::new(problem, 0));
    let portions: Vec<(usize, &Portion)> = whole
        .iter()
        .flat_map(|(f, portions)| portions.iter().map(|portion| (f.formula, portion)))
        .collect();
    let mut searched = false;
    if best.used() > bound.lower && portions.len() <= EXACT_PORTIONS {
        let mut search = Search {
            problem,
            portions: &portions,
            lower: bound.lower,
            fewest: best.used(),
            best: None,
        };
        search.go(&mut State::new(problem, 0), 0);
        // With fresh base, formulas of the same materials were taken in one order only.
        searched = !problem.fresh_base();
        best = search.best.unwrap_or(best);
    }
    best.loads.retain(|load| !load.stops.is_empty());
    (best.loads, searched)
}

/// Layers, and plain draws in as few portions as pots hold them, each as full as it can be.
fn whole_portions(problem: &Problem<'_>, formula: &Formula) -> Vec<Portion> {
    let mut portions = layers(problem, formula);
    let mut left = formula.plain.clone();
    while !left.is_empty() {
        let mut alone = State::new(problem, 1);
        match fill_up(problem, &mut alone, 0, formula.formula, &mut left) {
            Some(portion) => portions.push(Portion::Plain(portion)),
            // Each stage's shot fits an empty pot, as was checked.
            None => break,
        }
    }
    portions
}

fn layers(problem: &Problem<'_>, formula: &Formula) -> Vec<Portion> {
    let stage = |&(session, layer): &(usize, usize)| {
        let stage = *problem.sessions.get(session)?.layers.get(layer)?;
        Some(Portion::Layer { session, stage })
    };
    formula.layers.iter().filter_map(stage).collect()
}

fn first_fit(
    problem: &Problem<'_>,
    bound: &Bound,
    whole: &[(&Formula, Vec<Portion>)],
    way: Way,
) -> State {
    let chains = if way.chains { bound.chains.as_slice() } else { &[] };
    let mut through = vec![Vec::new(); problem.precedence.order().len()];
    for (pot, chain) in chains.iter().enumerate() {
        for &node in chain {
            through.get_mut(node).into_iter().for_each(|pots: &mut Vec<usize>| pots.push(pot));
        }
    }
    let mut state = State::new(problem, chains.len());
    let mut put_all = |(formula, portions): &(&Formula, Vec<Portion>)| {
        let node = problem.precedence.node(formula.formula);
        let own = node.and_then(|n| through.get(n)).map_or(&[][..], Vec::as_slice);
        if way.divide {
            for layer in &layers(problem, formula) {
                put_whole(problem, &mut state, own, formula.formula, layer);
            }
            put_divided(problem, &mut state, own, formula);
        } else {
            for portion in portions {
                put_whole(problem, &mut state, own, formula.formula, portion);
            }
        }
    };
    if way.darkest_first {
        whole.iter().rev().for_each(&mut put_all);
    } else {
        whole.iter().for_each(&mut put_all);
    }
    state
}

/// The pots of a formula's own chains, then all others that hold something.
fn candidates(state: &State, own: &[usize]) -> Vec<usize> {
    let filled = state.loads.iter().enumerate().filter(|(_, load)| !load.stops.is_empty());
    own.iter().copied().chain(filled.map(|(pot, _)| pot)).collect()
}

fn put_whole(
    problem: &Problem<'_>,
    state: &mut State,
    own: &[usize],
    formula: usize,
    portion: &Portion,
) {
    let put = |state: &mut State, pot| state.put(problem, pot, formula, portion, Look::Whole);
    if candidates(state, own).into_iter().any(|pot| put(state, pot)) {
        return;
    }
    state.loads.push(Load::default());
    let last = state.loads.len().saturating_sub(1);
    put(state, last);
}

fn put_divided(problem: &Problem<'_>, state: &mut State, own: &[usize], formula: &Formula) {
    let mut left = formula.plain.clone();
    for pot in candidates(state, own) {
        if left.is_empty() {
            return;
        }
        let all = Portion::Plain(left.clone());
        if state.put(problem, pot, formula.formula, &all, Look::Whole) {
            return;
        }
    }
    for pot in candidates(state, own) {
        fill_up(problem, state, pot, formula.formula, &mut left);
    }
    while !left.is_empty() {
        state.loads.push(Load::default());
        let last = state.loads.len().saturating_sub(1);
        if fill_up(problem, state, last, formula.formula, &mut left).is_none() {
            return;
        }
    }
}

/// Puts as many shots of `left`, from its first on, into `pot` as it holds: what went in, or `None`.
fn fill_up(
    problem: &Problem<'_>,
    state: &mut State,
    pot: usize,
    formula: usize,
    left: &mut Shots,
) -> Option<Shots> {
    let all: u64 = left.iter().map(|&(_, shots)| u64::from(shots)).sum();
    let before = state.loads.get(pot)?.clone();
    let try_first = |state: &mut State, n: u64| {
        let portion = Portion::Plain(first(left, n));
        state.put(problem, pot, formula, &portion, Look::Whole).then_some(portion)
    };
    let (mut low, mut high) = (0, all.saturating_add(1));
    while high.saturating_sub(low) > 1 {
        let middle = if low == 0 && high > all { all.max(1) } else { low.midpoint(high) };
        match try_first(state, middle) {
            Some(portion) => {
                state.take_back(pot, before.clone(), &portion);
                low = middle;
            }
            None => high = middle,
        }
    }
    if low == 0 {
        return None;
    }
    let portion = first(left, low);
    state.put(problem, pot, formula, &Portion::Plain(portion.clone()), Look::Whole);
    drop_first(left, low);
    Some(portion)
}

/// The first `n` shots.
fn first(shots: &[(usize, u32)], mut n: u64) -> Shots {
    let mut head = Vec::new();
    for &(stage, all) in shots {
        let taken = u32::try_from(n).unwrap_or(u32::MAX).min(all);
        if taken > 0 {
            head.push((stage, taken));
        }
        n = n.saturating_sub(u64::from(taken));
    }
    head
}

/// Takes the first `n` shots away.
fn drop_first(shots: &mut Shots, mut n: u64) {
    for (_, all) in shots.iter_mut() {
        let taken = u32::try_from(n).unwrap_or(u32::MAX).min(*all);
        *all = all.saturating_sub(taken);
        n = n.saturating_sub(u64::from(taken));
    }
    shots.retain(|&(_, all)| all > 0);
}

/// All ways to put portions together, depth first.
struct Search<'a> {
    problem: &'a Problem<'a>,
    portions: &'a [(usize, &'a Portion)],
    lower: usize,
    /// What a way must have fewer pots than.
    fewest: usize,
    best: Option<State>,
}

impl Search<'_> {
    /// Puts the portions from number `next` on; no deeper than there are portions.
    fn go(&mut self, state: &mut State, next: usize) {
        if state.loads.len() >= self.fewest || self.fewest <= self.lower {
            return;
        }
        let Some(&(formula, portion)) = self.portions.get(next) else {
            let problem = self.problem;
            if (0..state.loads.len()).all(|pot| state.keeps_limits(problem, pot, Look::Whole)) {
                self.fewest = state.loads.len();
                self.best = Some(state.clone());
            }
            return;
        };
        for pot in 0..state.loads.len() {
            self.try_in(state, pot, formula, portion, next);
        }
        state.loads.push(Load::default());
        let last = state.loads.len().saturating_sub(1);
        self.try_in(state, last, formula, portion, next);
        state.loads.pop();
    }

    fn try_in(
        &mut self,
        state: &mut State,
        pot: usize,
        formula: usize,
        portion: &Portion,
        next: usize,
    ) {
        let Some(before) = state.loads.get(pot).cloned() else { return };
        if state.put(self.problem, pot, formula, portion, Look::Hopeless) {
            self.go(state, next.saturating_add(1));
            state.take_back(pot, before, portion);
        }
    }
}

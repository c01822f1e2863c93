//! Finds the pots: first fit in several ways, and all ways if there are few portions.

use alloc::vec;
use alloc::vec::Vec;

use super::EXACT_PORTIONS;
use super::bound::Bound;
use super::load::{Load, Look, Portion, State, What};
use super::problem::{Formula, Problem, Session, Shots};

/// One way of first fit.
#[derive(Clone, Copy)]
struct Way {
    /// Pots go along the fewest chains.
    chains: bool,
    darkest_first: bool,
    /// Plain draws are divided to fill a pot up.
    divide: bool,
    /// Of one formula the largest shots go first.
    largest_first: bool,
}

/// The best way first: what ties is left as it is.
const WAYS: [Way; 16] = [
    Way { chains: true, darkest_first: true, divide: false, largest_first: false },
    Way { chains: true, darkest_first: false, divide: false, largest_first: false },
    Way { chains: false, darkest_first: true, divide: false, largest_first: false },
    Way { chains: false, darkest_first: false, divide: false, largest_first: false },
    Way { chains: true, darkest_first: true, divide: true, largest_first: false },
    Way { chains: true, darkest_first: false, divide: true, largest_first: false },
    Way { chains: false, darkest_first: true, divide: true, largest_first: false },
    Way { chains: false, darkest_first: false, divide: true, largest_first: false },
    Way { chains: true, darkest_first: true, divide: false, largest_first: true },
    Way { chains: true, darkest_first: false, divide: false, largest_first: true },
    Way { chains: false, darkest_first: true, divide: false, largest_first: true },
    Way { chains: false, darkest_first: false, divide: false, largest_first: true },
    Way { chains: true, darkest_first: true, divide: true, largest_first: true },
    Way { chains: true, darkest_first: false, divide: true, largest_first: true },
    Way { chains: false, darkest_first: true, divide: true, largest_first: true },
    Way { chains: false, darkest_first: false, divide: true, largest_first: true },
];

/// The fewest pots found, and whether all whole portions were put together in all ways.
pub(super) fn fewest(problem: &Problem<'_>, bound: &Bound) -> (Vec<Load>, bool) {
    let whole = |largest_first| -> Vec<Whole<'_>> {
        let mut state = State::new(problem, 0);
        let whole = |f| whole_portions(problem, f, largest_first, &mut state);
        problem.formulas.iter().map(whole).collect()
    };
    let by_key = whole(false);
    let mut by_size: Option<Vec<Whole<'_>>> = None;
    let mut best: Option<State> = None;
    for way in WAYS {
        let portions =
            if way.largest_first { by_size.get_or_insert_with(|| whole(true)) } else { &by_key };
        let found = first_fit(problem, bound, portions, way);
        let size = |state: &State| (state.used(), state.heats());
        if best.as_ref().is_none_or(|best| size(&found) < size(best)) {
            best = Some(found);
        }
        if best.as_ref().is_some_and(|best| best.used() <= bound.lower) {
            break;
        }
    }
    let mut best = best.unwrap_or_else(|| State::new(problem, 0));
    let mut searched = false;
    let whole: Vec<Portion> = by_key.into_iter().flat_map(|whole| whole.portions).collect();
    // Whole portions first, so that none is divided unless that saves a pot.
    for portions in [Some(whole), single_shots(problem)].into_iter().flatten() {
        if best.used() > bound.lower && portions.len() <= EXACT_PORTIONS {
            best = all_ways(problem, &portions, bound.lower, best.used()).unwrap_or(best);
            // With fresh base, formulas of the same materials were taken in one order only.
            // The heats of several sessions are those of their worst order.
            searched = !problem.fresh_base() && !problem.counts_reheats();
        }
    }
    best.loads.retain(|load| !load.stops.is_empty());
    (best.loads, searched)
}

/// Pots fewer than `fewest`, if all sessions of laminated pieces are a single shot in `problem` and there are few
/// enough portions to put together in all ways. Sessions that then come from the same pots are one.
pub(super) fn fewer(problem: &mut Problem<'_>, lower: usize, fewest: usize) -> Option<Vec<Load>> {
    let portions = single_shots(problem)?;
    let mut loads = all_ways(problem, &portions, lower, fewest)?.loads;
    loads.retain(|load| !load.stops.is_empty());
    let mut known: Vec<(usize, Vec<(usize, usize)>)> = Vec::new();
    for session in 0..problem.sessions.len() {
        let Session { laminate, shots, .. } = *problem.sessions.get(session)?;
        let pots_of = |(pot, load): (usize, &Load)| {
            let stage = load.stage_of(session)?;
            Some((stage, pot))
        };
        let pots: Vec<(usize, usize)> = loads.iter().enumerate().filter_map(pots_of).collect();
        let same = known.iter().find(|(other, of)| {
            *of == pots && problem.sessions.get(*other).is_some_and(|s| s.laminate == laminate)
        });
        match same {
            Some(&(first, _)) => {
                loads.iter_mut().for_each(|load| load.leave_out(session));
                let first = problem.sessions.get_mut(first)?;
                first.shots = first.shots.saturating_add(shots);
            }
            None => known.push((session, pots)),
        }
    }
    Some(loads)
}

/// A formula with its layers, and its plain draws in as few portions as pots hold them.
struct Whole<'a> {
    formula: &'a Formula,
    /// Its plain draws in the order in which they are put into pots.
    plain: Shots,
    portions: Vec<Portion>,
}

/// Plain draws go into portions as full as they can be, each tried in a pot of its own of `state`.
fn whole_portions<'a>(
    problem: &Problem<'_>,
    formula: &'a Formula,
    largest_first: bool,
    state: &mut State,
) -> Whole<'a> {
    let mut plain = formula.plain.clone();
    if largest_first {
        let shot = |stage: usize| problem.take(&[(stage, 1)]).out;
        plain.sort_by(|a, b| shot(b.0).total_cmp(&shot(a.0)));
    }
    let mut portions = layers(problem, formula);
    let mut left = plain.clone();
    // Each stage's shot fits an empty pot, as was checked.
    portions.extend(core::iter::from_fn(|| {
        let pot = state.open();
        fill_up(problem, state, pot, formula.formula, &mut left)
    }));
    Whole { formula, plain, portions }
}

/// Layers, and each plain shot by itself, if there are few enough.
fn single_shots(problem: &Problem<'_>) -> Option<Vec<Portion>> {
    let count = problem.formulas.iter().fold(0_usize, |sum, formula| {
        let plain = formula.plain.iter().map(|&(_, shots)| shots as usize);
        plain.fold(sum.saturating_add(formula.layers.len()), usize::saturating_add)
    });
    (count <= EXACT_PORTIONS).then(|| {
        let each = problem.formulas.iter().flat_map(|formula| {
            let mut portions = layers(problem, formula);
            for &(stage, shots) in &formula.plain {
                let (formula, take) = (formula.formula, problem.take(&[(stage, 1)]));
                let one = Portion { formula, take, what: What::Plain(vec![(stage, 1)]) };
                portions.extend((0..shots).map(|_| one.clone()));
            }
            portions
        });
        each.collect()
    })
}

fn layers(problem: &Problem<'_>, formula: &Formula) -> Vec<Portion> {
    let layer = |&(session, layer): &(usize, usize)| {
        let s = problem.sessions.get(session)?;
        let stage = *s.layers.get(layer)?;
        let take = problem.take(&[(stage, s.shots)]);
        Some(Portion { formula: formula.formula, take, what: What::Layer { session, stage } })
    };
    formula.layers.iter().filter_map(layer).collect()
}

/// Minimum base of any shot.
pub(super) fn least_base(problem: &Problem<'_>) -> f64 {
    let stages = problem.wanted.iter().enumerate().filter(|(_, w)| w.shots > 0);
    let base = stages.map(|(stage, _)| {
        let take = problem.take(&[(stage, 1)]);
        (take.out - take.back) * problem.base_share(problem.formula(stage))
    });
    base.fold(f64::INFINITY, f64::min)
}

fn first_fit(problem: &Problem<'_>, bound: &Bound, whole: &[Whole<'_>], way: Way) -> State {
    let chains = if way.chains { bound.chains.as_slice() } else { &[] };
    let mut through = vec![Vec::new(); problem.precedence.order().len()];
    for (pot, chain) in chains.iter().enumerate() {
        for &node in chain {
            through.get_mut(node).into_iter().for_each(|pots: &mut Vec<usize>| pots.push(pot));
        }
    }
    let least_base = least_base(problem);
    let state = State::new(problem, chains.len());
    let mut fit = Fit { problem, state, loose: Vec::new(), seen: 0, open: Vec::new(), taken: None };
    let mut put_all = |whole: &Whole<'_>| {
        let formula = whole.formula;
        let node = problem.precedence.node(formula.formula);
        let own = node.and_then(|n| through.get(n)).map_or(&[][..], Vec::as_slice);
        fit.candidates(formula.formula, own, least_base);
        if way.divide {
            layers(problem, formula).iter().for_each(|layer| fit.put_whole(layer));
            fit.put_divided(formula.formula, &whole.plain);
        } else {
            whole.portions.iter().for_each(|portion| fit.put_whole(portion));
        }
    };
    if way.darkest_first {
        whole.iter().rev().for_each(&mut put_all);
    } else {
        whole.iter().for_each(&mut put_all);
    }
    fit.state
}

/// First fit under way.
struct Fit<'a> {
    problem: &'a Problem<'a>,
    state: State,
    /// Of the first `seen` pots those that may take a further formula.
    loose: Vec<usize>,
    seen: usize,
    /// Pots to try for the formula at hand, in this order.
    open: Vec<usize>,
    /// The last plain portion of it, and which of `open` took it.
    taken: Option<(Portion, usize)>,
}

impl Fit<'_> {
    /// For `formula`, the next one: the pots of its own chains, then all others that hold something that it goes with and
    /// may take a further formula.
    fn candidates(&mut self, formula: usize, own: &[usize], least_base: f64) {
        let Self { problem, state: State { loads, .. }, loose, open, .. } = self;
        loose.extend(self.seen..loads.len());
        self.seen = loads.len();
        look_over(problem, loose);
        let load = |pot: &usize| loads.get(*pot);
        loose.retain(|pot| load(pot).is_some_and(|load| load.is_open(problem, least_base)));
        let goes = |pot: &&usize| load(pot).is_some_and(|load| load.goes_with(formula));
        open.clear();
        open.extend(own.iter().chain(loose.iter().filter(goes)));
        self.taken = None;
    }

    fn put_whole(&mut self, portion: &Portion) {
        let Self { problem, state, open, taken, .. } = self;
        let plain = portion.session().is_none();
        look_over(problem, open);
        // Pots that have refused just as much of it are as they were: an order of many pots stays linear.
        let as_before = |before: &Portion| {
            before.take == portion.take && (!problem.counts_reheats() || before.is_like(portion))
        };
        let before = taken.as_ref().filter(|(before, _)| plain && as_before(before));
        let refused = before.map_or(0, |&(_, at)| at);
        let untried = open.iter().enumerate().skip(refused);
        let mut taking = untried.filter(|&(_, &pot)| state.put(problem, pot, portion, Look::Whole));
        let at = taking.next().map(|(at, _)| at);
        let at = at.unwrap_or_else(|| {
            let new = state.open();
            state.put(problem, new, portion, Look::Whole);
            let at = open.len();
            open.push(new);
            at
        });
        *taken = plain.then(|| (portion.clone(), at));
    }

    fn put_divided(&mut self, formula: usize, plain: &Shots) {
        let Self { problem, state, open, .. } = self;
        let mut left = plain.clone();
        if left.is_empty() {
            return;
        }
        look_over(problem, open);
        let all = Portion { formula, take: problem.take(&left), what: What::Plain(left.clone()) };
        if open.iter().any(|&pot| state.put(problem, pot, &all, Look::Whole)) {
            return;
        }
        for &pot in open.iter() {
            fill_up(problem, state, pot, formula, &mut left);
        }
        // The last pot stays empty: nothing is left for it.
        loop {
            let new = state.open();
            if fill_up(problem, state, new, formula, &mut left).is_none() {
                return;
            }
        }
    }
}

/// Counts the quick looks at the `open` pots. Where the budget ends, no pot takes anything more.
fn look_over(problem: &Problem<'_>, open: &[usize]) {
    problem.budget.spend(open.len() >> 6);
}

/// Puts as many shots of `left`, from its first on, into `pot` as it holds: what went in, or `None` if nothing did.
pub(super) fn fill_up(
    problem: &Problem<'_>,
    state: &mut State,
    pot: usize,
    formula: usize,
    left: &mut Shots,
) -> Option<Portion> {
    let all: u64 = left.iter().map(|&(_, shots)| u64::from(shots)).sum();
    let portion = |n: u64| {
        let shots = first(left, n);
        Portion { formula, take: problem.take(&shots), what: What::Plain(shots) }
    };
    let mut takes = |n: u64| state.can_take(problem, pot, &portion(n), Look::Whole);
    let most = if all == 0 || !takes(1) {
        return None;
    } else if takes(all) {
        all
    } else {
        let (mut low, mut high) = (1, all);
        while high.saturating_sub(low) > 1 {
            let middle = low.midpoint(high);
            if takes(middle) { low = middle } else { high = middle }
        }
        low
    };
    let portion = portion(most);
    if !state.put(problem, pot, &portion, Look::Whole) {
        return None;
    }
    drop_first(left, most);
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
fn drop_first(shots: &mut [(usize, u32)], mut n: u64) {
    for (_, all) in shots.iter_mut() {
        let taken = u32::try_from(n).unwrap_or(u32::MAX).min(*all);
        *all = all.saturating_sub(taken);
        n = n.saturating_sub(u64::from(taken));
    }
}

/// Of all ways to put `portions` together one with the fewest pots, if these are fewer than `fewest`; no
/// further than to `lower`.
fn all_ways(
    problem: &Problem<'_>,
    portions: &[Portion],
    lower: usize,
    fewest: usize,
) -> Option<State> {
    let mut search = Search { problem, portions, lower, fewest, best: None };
    search.go(&mut State::new(problem, 0), 0, 0);
    search.best
}

/// All ways to put portions together, depth first.
struct Search<'a> {
    problem: &'a Problem<'a>,
    portions: &'a [Portion],
    lower: usize,
    /// A way must have fewer pots than this.
    fewest: usize,
    best: Option<State>,
}

impl Search<'_> {
    /// Puts the portions from number `next` on; no deeper than there are portions. A portion that is like the
    /// one before goes into no earlier pot than `from`, where that one went.
    fn go(&mut self, state: &mut State, next: usize, from: usize) {
        if state.loads.len() >= self.fewest || self.fewest <= self.lower {
            return;
        }
        let Some(portion) = self.portions.get(next) else {
            if state.keeps_limits(self.problem) {
                self.fewest = state.loads.len();
                self.best = Some(state.clone());
            }
            return;
        };
        let before = next.checked_sub(1).and_then(|before| self.portions.get(before));
        let from = if before.is_some_and(|before| before.is_like(portion)) { from } else { 0 };
        for pot in from..state.loads.len() {
            self.try_in(state, pot, portion, next);
        }
        let new = state.open();
        self.try_in(state, new, portion, next);
        state.loads.pop();
    }

    fn try_in(&mut self, state: &mut State, pot: usize, portion: &Portion, next: usize) {
        let Some(before) = state.loads.get(pot).cloned() else { return };
        if state.put(self.problem, pot, portion, Look::Hopeless) {
            self.go(state, next.saturating_add(1), pot);
            state.take_back(pot, before, portion);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::bound::bound;
    use super::super::tests::{BLUE, Bench, PLAIN, RED, off, portion, shot, shots};
    use super::*;

    /// The first pot takes further formulas like any other, with and without chains.
    #[test]
    fn each_way_fills_the_first_pot_up() {
        let wanted = [shots(0, 40.0, 1), shots(1, 50.0, 1)];
        Bench::new(&[100.0; 2]).problem(&wanted, &off(&[PLAIN, RED]), |problem| {
            let bound = bound(problem).unwrap();
            let mut state = State::new(problem, 0);
            let whole: Vec<Whole<'_>> = problem
                .formulas
                .iter()
                .map(|formula| whole_portions(problem, formula, false, &mut state))
                .collect();
            for way in WAYS {
                assert_eq!(first_fit(problem, &bound, &whole, way).used(), 1);
            }
        });
    }

    /// Only pots that have room for a shot, and can become what is asked for, are tried for each shot of it.
    #[test]
    fn pots_of_no_use_are_not_tried() {
        let wanted = [shot(0, 60.0), shot(0, 95.0), shot(1, 60.0), shot(1, 20.0)];
        Bench::new(&[100.0; 2]).problem(&wanted, &off(&[RED, BLUE]), |problem| {
            let mut state = State::new(problem, 4);
            for stage in 0..3 {
                assert!(state.put(problem, stage, &portion(problem, stage), Look::Whole));
            }
            let (loose, open) = (Vec::new(), Vec::new());
            let mut fit = Fit { problem, state, loose, seen: 0, open, taken: None };
            // The second is full of red, and the fourth is empty: a chain's, or none's.
            fit.candidates(1, &[], least_base(problem));
            assert_eq!(fit.open, [2]);
            assert_eq!(fit.loose, [0, 2, 3]);
            fit.candidates(0, &[3], least_base(problem));
            assert_eq!(fit.open, [3, 0]);
        });
    }
}

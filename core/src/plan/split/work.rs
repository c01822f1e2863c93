//! The order of work over all pots.

use alloc::collections::BinaryHeap;
use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Reverse;

use super::load::{Load, Stop};
use super::problem::Problem;
use super::{Draw, Pot, SplitError, Work};

/// Something to do at once.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
enum Task {
    Session(usize),
    /// The plain draws of a pot's visit.
    Plain {
        pot: usize,
        visit: usize,
    },
}

/// All sessions and plain draws, each after what its pots do before; of what is ready the smallest key
/// first. Plain draws follow the first session of their visit, from the same heat. Each draw goes into its
/// visit in `pots`.
pub(super) fn order(
    problem: &Problem<'_>,
    loads: &[Load],
    pots: &mut [Pot],
) -> Result<Vec<Work>, SplitError> {
    let mut day = Day::new(problem, loads);
    for pot in 0..loads.len() {
        day.arrive(pot);
    }
    let mut work = Vec::new();
    while let Some(Reverse((_, task))) = day.ready.pop() {
        work.extend(day.run(task));
    }
    for draw in work.iter_mut().flat_map(|work: &mut Work| &mut work.draws) {
        let visit = pots.get_mut(draw.pot).and_then(|pot| pot.visits.get_mut(draw.visit));
        let Some(visit) = visit else { continue };
        draw.draw = visit.draws.len();
        visit.draws.push((draw.wanted, draw.shots));
    }
    let all_left = day.visit.iter().zip(loads).all(|(&visit, load)| visit >= load.stops.len());
    if all_left { Ok(work) } else { Err(SplitError::Deadlock) }
}

struct Day<'a> {
    problem: &'a Problem<'a>,
    loads: &'a [Load],
    /// The visit that each pot is at, and the sessions that are still to come there.
    visit: Vec<usize>,
    to_do: Vec<usize>,
    /// Layers of each session whose pots are not there yet, and those that are: (pot, visit, stage).
    missing: Vec<usize>,
    here: Vec<Vec<(usize, usize, usize)>>,
    /// Tasks by their keys, each once: the smallest comes first.
    ready: BinaryHeap<Reverse<(u32, Task)>>,
}

impl<'a> Day<'a> {
    fn new(problem: &'a Problem<'a>, loads: &'a [Load]) -> Self {
        Self {
            problem,
            loads,
            visit: vec![0; loads.len()],
            to_do: vec![0; loads.len()],
            missing: problem.sessions.iter().map(|s| s.layers.len()).collect(),
            here: vec![Vec::new(); problem.sessions.len()],
            ready: BinaryHeap::new(),
        }
    }

    fn stop(&self, pot: usize) -> Option<(usize, &'a Stop)> {
        let visit = *self.visit.get(pot)?;
        Some((visit, self.loads.get(pot)?.stops.get(visit)?))
    }

    /// Makes the tasks ready that only waited for `pot` to be where it is now.
    fn arrive(&mut self, pot: usize) {
        let Some((visit, stop)) = self.stop(pot) else { return };
        let count = stop.layers.len();
        self.to_do.get_mut(pot).into_iter().for_each(|n| *n = count);
        for &(session, stage) in &stop.layers {
            self.here.get_mut(session).into_iter().for_each(|h| h.push((pot, visit, stage)));
            let Some(missing) = self.missing.get_mut(session) else { continue };
            *missing = missing.saturating_sub(1);
            if *missing == 0 {
                let key = self.problem.sessions.get(session).map_or(0, |s| s.key);
                self.ready.push(Reverse((key, Task::Session(session))));
            }
        }
        if stop.layers.is_empty() {
            let keys =
                stop.plain.iter().filter_map(|&(s, _)| Some(self.problem.wanted.get(s)?.key));
            self.ready.push(Reverse((keys.min().unwrap_or(0), Task::Plain { pot, visit })));
        }
    }

    fn run(&mut self, task: Task) -> Vec<Work> {
        match task {
            Task::Plain { pot, visit } => {
                let draws = self.plain(pot, visit);
                self.leave(pot);
                vec![Work { laminate: None, draws, heated: vec![pot] }]
            }
            Task::Session(session) => self.run_session(session),
        }
    }

    fn run_session(&mut self, session: usize) -> Vec<Work> {
        let Some(s) = self.problem.sessions.get(session) else { return Vec::new() };
        let here = self.here.get(session).cloned().unwrap_or_default();
        let mut draws: Vec<Draw> = here
            .iter()
            .map(|&(pot, visit, wanted)| Draw { pot, visit, draw: 0, wanted, shots: s.shots })
            .collect();
        draws.sort_unstable_by_key(|draw| s.layers.iter().position(|&l| l == draw.wanted));
        let heated = draws.iter().map(|draw| draw.pot).collect();
        let mut work = vec![Work { laminate: Some(s.laminate), draws, heated }];
        for (pot, visit, _) in here {
            let first =
                self.stop(pot).map(|(_, stop)| stop.layers.len()) == self.to_do.get(pot).copied();
            let draws = if first { self.plain(pot, visit) } else { Vec::new() };
            if !draws.is_empty() {
                work.push(Work { laminate: None, draws, heated: Vec::new() });
            }
            self.leave(pot);
        }
        work
    }

    fn plain(&self, pot: usize, visit: usize) -> Vec<Draw> {
        let stop = self.loads.get(pot).and_then(|load| load.stops.get(visit));
        let plain = stop.map_or(&[][..], |stop| stop.plain.as_slice());
        plain.iter().map(|&(wanted, shots)| Draw { pot, visit, draw: 0, wanted, shots }).collect()
    }

    /// One session less to come where `pot` is; with none left it goes on.
    fn leave(&mut self, pot: usize) {
        let Some(left) = self.to_do.get_mut(pot) else { return };
        *left = left.saturating_sub(1);
        if *left == 0 {
            self.visit.get_mut(pot).into_iter().for_each(|v| *v = v.saturating_add(1));
            self.arrive(pot);
        }
    }
}

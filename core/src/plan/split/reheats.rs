//! Heats of a visit, the reheats between its shots included.

use alloc::vec::Vec;

use super::problem::{Problem, Room, Shots};
use crate::plan::sequence::mass;
use crate::process::clock::{self, Hot, ShotSeries};
use crate::quantity::Time;

/// Rounding that [`clock::heats`] allows, and a little more.
const ROUNDING: f64 = 1.1e-9;

/// Assumed mass in a cup without a limit, kg.
const NO_LIMIT: f64 = 1e6;

impl Problem<'_> {
    /// Whether reheats count: heats are limited, and it is known how long some formula stays hot.
    pub(super) fn counts_reheats(&self) -> bool {
        self.heats < u32::MAX && self.hot.iter().any(Option::is_some)
    }

    fn hot(&self, formula: usize) -> Option<&Hot> {
        self.hot.get(formula)?.as_ref()
    }

    /// Heats of a visit that holds `held` kg at its start; `None` if the pot does not stay hot for one of its shots.
    ///
    /// Each session is a heat of its own, and plain shots go on in the first one. Which session comes first is not
    /// known here, so the count is that of the worst order. Shots of unknown time take none.
    pub(super) fn visit_heats(
        &self,
        formula: usize,
        (layers, plain): (&[(usize, usize)], &Shots),
        held: f64,
    ) -> Option<u32> {
        let sessions = u32::try_from(layers.len()).unwrap_or(u32::MAX);
        let Some(hot) = self.hot(formula) else { return Some(sessions.max(1)) };
        let runs = plain.iter().filter_map(|&(stage, n)| self.series(stage, n));
        let plain_runs: Vec<ShotSeries> = runs.collect();
        if layers.is_empty() {
            return self.count(hot, held, &plain_runs);
        }
        let shots_of = |session: usize| self.sessions.get(session).map_or(0, |s| s.shots);
        let each: Shots = layers.iter().map(|&(s, stage)| (stage, shots_of(s))).collect();
        let all = self.take(plain).out + self.take(&each).out;
        let (mut sum, mut more) = (0_u32, 0);
        for &(stage, shots) in &each {
            let mut runs = Vec::from_iter(self.series(stage, shots));
            // As the last one it has the smallest mass in the pot.
            let lowest = held - all + self.take(&[(stage, shots)]).out;
            let last = self.count(hot, lowest, &runs)?;
            runs.extend_from_slice(&plain_runs);
            let first = self.count(hot, held, &runs)?;
            sum = sum.saturating_add(last);
            more = more.max(first.saturating_sub(last));
        }
        Some(sum.saturating_add(more))
    }

    fn series(&self, stage: usize, shots: u32) -> Option<ShotSeries> {
        let wanted = self.wanted.get(stage).filter(|_| shots > 0)?;
        Some(ShotSeries { shots, every: wanted.every?, takes: wanted.shot })
    }

    /// Whether a pot of `held` kg has heats enough for `shots` of `stage` alone.
    pub(super) fn heats_allow(&self, stage: usize, shots: u32, held: f64) -> bool {
        let (Some(hot), true) = (self.hot(self.formula(stage)), self.counts_reheats()) else {
            return true;
        };
        let run = self.series(stage, shots);
        self.count(hot, held, run.as_slice()).is_some_and(|heats| heats <= self.heats)
    }

    /// How long a pot of `held` kg stays hot at the formula of `stage`, and the time of a shot; `None` if not known.
    pub(super) fn hot_and_shot(&self, stage: usize, held: f64) -> Option<(Time, Time)> {
        let hot = self.hot(self.formula(stage)).filter(|_| self.counts_reheats())?;
        Some((hot.lasts(mass(held)).ok()?, self.wanted.get(stage)?.every?))
    }

    /// Maximum number of shots of `stage` in one heat, in the fullest pot; `None` if not known.
    pub(super) fn shots_a_heat(&self, stage: usize) -> Option<f64> {
        let formula = self.formula(stage);
        let most = self.cups.iter().map(|cup| full(cup, formula)).fold(0.0, f64::max);
        let (hot, every) = self.hot_and_shot(stage, most)?;
        Some(((hot / every).value * (1.0 + ROUNDING)).max(1.0))
    }

    /// Heats for `runs` one after the other, at least one; `None` if the pot does not stay hot for one shot.
    fn count(&self, hot: &Hot, held: f64, runs: &[ShotSeries]) -> Option<u32> {
        if runs.is_empty() {
            return Some(1);
        }
        let all =
            runs.iter().fold(Time::default(), |sum, run| sum + run.every * f64::from(run.shots));
        // Far more shots than a pot gives need not be counted one by one.
        let heats = (all / hot.lasts(mass(held)).ok()?).value;
        if heats > f64::from(self.heats) * (1.0 + ROUNDING) {
            return Some(u32::MAX);
        }
        u32::try_from(clock::heats(mass(held), runs, hot).ok()?.len()).ok()
    }
}

/// Capacity of `cup` for `formula`, kg.
pub(super) fn full(cup: &Room, formula: usize) -> f64 {
    cup.capacity(formula).min(NO_LIMIT)
}

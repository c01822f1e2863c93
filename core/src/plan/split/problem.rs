//! The checked problem: rooms, sessions and pooled draws.

use alloc::vec;
use alloc::vec::Vec;

use uom::si::mass::gram;

use super::{Limits, MOST_POTS, SplitError, Wanted};
use crate::plan::bits::Bits;
use crate::plan::precedence::{FreshBase, Precedence};
use crate::plan::sequence::{fits, is_mass, kg, mass};
use crate::quantity::Mass;

/// Stages and shots of each.
pub(super) type Shots = Vec<(usize, u32)>;

pub(super) struct Problem<'a> {
    pub(super) wanted: &'a [Wanted],
    pub(super) precedence: &'a Precedence,
    pub(super) bottom: f64,
    pub(super) least: f64,
    pub(super) kept: f64,
    pub(super) yields: f64,
    pub(super) heats: u32,
    /// By formula, kg; infinite where there is no limit.
    capacity: Vec<f64>,
    /// Where a formula stands among all: no formula before one that can become it.
    place: Vec<(usize, u32)>,
    /// For each formula, those that can be in a pot with it.
    partners: Vec<Bits>,
    none: Bits,
    /// The most base that any formula's pot holds, kg.
    pub(super) most_base: f64,
    /// Formulas that are wanted, the first in place first, each with its plain draws.
    pub(super) formulas: Vec<Formula>,
    pub(super) sessions: Vec<Session>,
}

/// A formula that is wanted.
pub(super) struct Formula {
    pub(super) formula: usize,
    pub(super) key: u32,
    /// Draws outside laminates, by rising key.
    pub(super) plain: Shots,
    /// Its layers: (session, layer).
    pub(super) layers: Vec<(usize, usize)>,
}

/// Shots of all layers of a laminated piece, at one time.
pub(super) struct Session {
    pub(super) laminate: usize,
    pub(super) shots: u32,
    /// The stages that are its layers.
    pub(super) layers: Vec<usize>,
    pub(super) key: u32,
}

/// What `draws` take in all.
pub(super) fn drawn(draws: &[(usize, u32)], wanted: &[Wanted]) -> Mass {
    let each = draws.iter().filter_map(|&(w, n)| Some(wanted.get(w)?.shot * f64::from(n)));
    each.fold(Mass::default(), |sum, m| sum + m)
}

impl<'a> Problem<'a> {
    pub(super) fn new(
        wanted: &'a [Wanted],
        precedence: &'a Precedence,
        limits: &Limits<'_>,
    ) -> Result<Self, SplitError> {
        check_limits(precedence, limits)?;
        let vessel = &limits.vessel;
        let capacity: Vec<f64> =
            limits.capacity.iter().map(|c| c.map_or(f64::INFINITY, kg)).collect();
        let mut problem = Self {
            wanted,
            precedence,
            bottom: kg(vessel.film).max(kg(vessel.heel)),
            least: kg(vessel.least),
            kept: kg(limits.kept),
            yields: 1.0 - limits.loss.value,
            heats: vessel.heats.unwrap_or(u32::MAX),
            capacity,
            place: Vec::new(),
            partners: precedence.partners(),
            none: Bits::default(),
            most_base: 0.0,
            formulas: Vec::new(),
            sessions: Vec::new(),
        };
        for (stage, w) in wanted.iter().enumerate() {
            problem.check_stage(stage, w)?;
        }
        problem.sessions = problem.sessions(limits.injectors)?;
        problem.pool();
        Ok(problem)
    }

    pub(super) fn shot(&self, stage: usize) -> f64 {
        self.wanted.get(stage).map_or(0.0, |w| kg(w.shot))
    }

    /// Mass of `shots`.
    pub(super) fn out(&self, shots: &[(usize, u32)]) -> f64 {
        kg(drawn(shots, self.wanted))
    }

    /// Mass of the first `n` of `shots`.
    pub(super) fn out_of_first(&self, shots: &[(usize, u32)], mut n: u64) -> f64 {
        let mut out = 0.0;
        for &(stage, all) in shots {
            let taken = n.min(u64::from(all));
            out += self.shot(stage) * taken as f64;
            n = n.saturating_sub(taken);
        }
        out
    }

    /// The formula of a stage; of equal ones the first.
    pub(super) fn formula(&self, stage: usize) -> usize {
        let named = self.wanted.get(stage).map_or(0, |w| w.formula);
        self.precedence.canonical(named).unwrap_or(named)
    }

    pub(super) fn capacity(&self, formula: usize) -> f64 {
        self.capacity.get(formula).copied().unwrap_or(f64::INFINITY)
    }

    pub(super) fn place(&self, formula: usize) -> (usize, u32, usize) {
        let (node, key) = self.place.get(formula).copied().unwrap_or_default();
        (node, key, formula)
    }

    /// Formulas that can be in a pot with `formula`.
    pub(super) fn partners(&self, formula: usize) -> &Bits {
        self.partners.get(formula).unwrap_or(&self.none)
    }

    pub(super) fn base_share(&self, formula: usize) -> f64 {
        self.precedence.base_share(formula).unwrap_or(0.0)
    }

    pub(super) fn fresh_base(&self) -> bool {
        self.precedence.fresh_base() == FreshBase::On
    }

    /// What one pot of `formula` gives in one heat.
    pub(super) fn room(&self, formula: usize) -> f64 {
        self.capacity(formula) * self.yields - self.bottom - self.kept
    }

    /// Shots of `stage` that one pot gives in one heat: at most all of them.
    pub(super) fn shots_a_pot(&self, stage: usize) -> u32 {
        let all = self.wanted.get(stage).map_or(0, |w| w.shots);
        let shot = self.shot(stage);
        let capacity = self.capacity(self.formula(stage));
        let holds = |n: u32| {
            let need = (f64::from(n) * shot + self.kept + self.bottom) / self.yields;
            fits(need / capacity)
        };
        if holds(all) {
            return all;
        }
        // Largest n < all that the pot holds, by halving.
        let (mut low, mut high) = (0, all);
        while high.saturating_sub(low) > 1 {
            let middle = low.midpoint(high);
            if holds(middle) { low = middle } else { high = middle }
        }
        low
    }

    fn check_stage(&self, stage: usize, w: &Wanted) -> Result<(), SplitError> {
        let formulas = self.precedence.formulas();
        if w.formula >= formulas {
            return Err(SplitError::NoSuchFormula { stage, formula: w.formula, formulas });
        }
        let total = kg(w.shot) * f64::from(w.shots);
        if !(kg(w.shot) > 0.0 && total.is_finite()) {
            return Err(SplitError::BadShot { stage, wanted: *w });
        }
        let formula = self.formula(stage);
        let capacity = self.capacity(formula);
        if self.least > capacity {
            let (least, capacity) = (mass(self.least), mass(capacity));
            return Err(SplitError::LeastOverCapacity { formula, least, capacity });
        }
        if w.shots > 0 && self.shots_a_pot(stage) == 0 {
            let room = mass(self.room(formula).max(0.0));
            return Err(SplitError::ShotTooLarge { stage, shot: w.shot, room });
        }
        Ok(())
    }

    /// As few sessions of each laminated piece as its layers' pots allow.
    fn sessions(&self, injectors: u32) -> Result<Vec<Session>, SplitError> {
        let stages = self.wanted.iter().enumerate();
        let mut pieces: Vec<(usize, usize)> =
            stages.filter_map(|(stage, w)| Some((w.laminate?, stage))).collect();
        pieces.sort_unstable();
        let mut sessions = Vec::new();
        for piece in pieces.chunk_by(|a, b| a.0 == b.0) {
            let Some(&(laminate, _)) = piece.first() else { continue };
            let layers: Vec<usize> = piece.iter().map(|&(_, stage)| stage).collect();
            let stages: Vec<&Wanted> = layers.iter().filter_map(|&l| self.wanted.get(l)).collect();
            let [first, _, ..] = stages.as_slice() else {
                return Err(SplitError::OneLayer { laminate });
            };
            if let Some(other) = stages.iter().find(|w| w.shots != first.shots) {
                let (first, other) = (first.shots, other.shots);
                return Err(SplitError::UnlikeShots { laminate, first, other });
            }
            if layers.len() > injectors as usize {
                let layers = layers.len();
                return Err(SplitError::TooFewInjectors { laminate, layers, injectors });
            }
            let key = stages.iter().map(|w| w.key).min().unwrap_or(0);
            let most = layers.iter().map(|&l| self.shots_a_pot(l)).min().unwrap_or(0);
            let mut left = first.shots;
            while left > 0 && most > 0 {
                let shots = left.min(most);
                sessions.push(Session { laminate, shots, layers: layers.clone(), key });
                left = left.saturating_sub(shots);
                if sessions.len() > MOST_POTS as usize {
                    return Err(SplitError::TooManyPots);
                }
            }
        }
        Ok(sessions)
    }

    /// Pools draws by formula, and gives every formula its place.
    fn pool(&mut self) {
        let mut pooled: Vec<Option<Formula>> = Vec::new();
        pooled.resize_with(self.precedence.formulas(), || None);
        let mut stages: Vec<usize> = (0..self.wanted.len()).collect();
        stages.sort_unstable_by_key(|&s| (self.wanted.get(s).map(|w| w.key), s));
        for stage in stages {
            let Some(w) = self.wanted.get(stage).filter(|w| w.shots > 0) else { continue };
            let formula = self.formula(stage);
            let Some(pooled) = pooled.get_mut(formula) else { continue };
            let fresh = || Formula { formula, key: w.key, plain: Vec::new(), layers: Vec::new() };
            let pooled = pooled.get_or_insert_with(fresh);
            if w.laminate.is_none() {
                pooled.plain.push((stage, w.shots));
            }
        }
        for (session, s) in self.sessions.iter().enumerate() {
            for (layer, &stage) in s.layers.iter().enumerate() {
                let formula = pooled.get_mut(self.formula(stage)).into_iter().flatten();
                formula.for_each(|f| f.layers.push((session, layer)));
            }
        }
        let mut rank = vec![0; self.precedence.order().len()];
        for (place, node) in self.precedence.order().linear_extension().into_iter().enumerate() {
            rank.get_mut(node).into_iter().for_each(|r| *r = place);
        }
        let places = pooled.iter().enumerate().map(|(f, pooled)| {
            let node = self.precedence.node(f).and_then(|n| rank.get(n)).copied();
            (node.unwrap_or(0), pooled.as_ref().map_or(0, |p| p.key))
        });
        self.place = places.collect();
        let mut formulas: Vec<Formula> = pooled.into_iter().flatten().collect();
        formulas.sort_unstable_by_key(|f| self.place(f.formula));
        let base = formulas.iter().map(|f| self.capacity(f.formula) * self.base_share(f.formula));
        self.most_base = base.fold(0.0, f64::max);
        self.formulas = formulas;
    }
}

fn check_limits(precedence: &Precedence, limits: &Limits<'_>) -> Result<(), SplitError> {
    let vessel = &limits.vessel;
    let (formulas, capacities) = (precedence.formulas(), limits.capacity.len());
    if formulas != capacities {
        return Err(SplitError::Capacities { formulas, capacities });
    }
    let masses = [
        ("The film", vessel.film),
        ("The heel", vessel.heel),
        ("The least pot", vessel.least),
        ("What the injector keeps", limits.kept),
    ];
    for (what, m) in masses {
        if !is_mass(m) {
            return Err(SplitError::BadNumber { what, value: m.get::<gram>() });
        }
    }
    if let Some(c) = limits.capacity.iter().flatten().find(|&&c| !is_mass(c) || kg(c) == 0.0) {
        return Err(SplitError::BadNumber { what: "A capacity", value: c.get::<gram>() });
    }
    if !(0.0..1.0).contains(&limits.loss.value) {
        return Err(SplitError::BadNumber { what: "The loss", value: limits.loss.value });
    }
    if vessel.heats == Some(0) {
        return Err(SplitError::NoHeat);
    }
    Ok(())
}

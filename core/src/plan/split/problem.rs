//! The checked problem: rooms, sessions and pooled draws.

use alloc::vec;
use alloc::vec::Vec;

use uom::si::mass::gram;

use super::reheats::full;
use super::{Cup, Limits, MOST_POTS, SplitError, Wanted};
use crate::batch::undrawn;
use crate::plan::bits::Bits;
use crate::plan::budget::Budget;
use crate::plan::precedence::{FreshBase, Precedence};
use crate::plan::sequence::{fits, is_mass, kg, mass};
use crate::process::clock::Hot;

/// Stages and shots of each.
pub(super) type Shots = Vec<(usize, u32)>;

pub(super) struct Problem<'a> {
    pub(super) wanted: &'a [Wanted],
    pub(super) precedence: &'a Precedence,
    pub(super) cups: Vec<Room>,
    /// Minimum start by formula, kg.
    least: Vec<f64>,
    pub(super) yields: f64,
    pub(super) heats: u32,
    /// How long a pot of each formula stays hot; `None` if not known.
    pub(super) hot: Vec<Option<Hot>>,
    /// Rank of a formula among all: none comes before one that can become it.
    place: Vec<Place>,
    /// For each formula, those that can be in a pot with it.
    partners: Vec<Bits>,
    none: Bits,
    /// Maximum base in a pot of any formula, kg.
    pub(super) most_base: f64,
    /// Formulas of the day, by place, each with its plain draws.
    pub(super) formulas: Vec<Formula>,
    pub(super) sessions: Vec<Session>,
    pub(super) budget: &'a Budget<'a>,
}

/// A cup's room; masses in kg.
pub(super) struct Room {
    /// Mass that cannot be drawn.
    pub(super) bottom: f64,
    /// By formula; infinite if there is no limit.
    capacity: Vec<f64>,
}

impl Room {
    pub(super) fn capacity(&self, formula: usize) -> f64 {
        self.capacity.get(formula).copied().unwrap_or(f64::INFINITY)
    }
}

/// Rank of the node; of formulas that can follow each other, which holds more base; the key.
type Place = (usize, usize, u32);

/// Limit on the shots that a pot gives.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum By {
    /// Its room alone.
    Room,
    /// Its heats too, in a pot of just the mass that the shots need.
    Need,
    /// Its heats too, in a pot as full as it may be, which stays hot longest: no pot gives more.
    Full,
}

/// Masses of shots, kg.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Take {
    /// Mass that goes out.
    pub(super) out: f64,
    /// Mass of it that comes back before the next formula.
    pub(super) back: f64,
    /// Mass that the injector keeps at each heat.
    pub(super) kept: f64,
}

impl Take {
    pub(super) fn of(shots: &[(usize, u32)], wanted: &[Wanted]) -> Self {
        let each = shots.iter().filter_map(|&(w, n)| Some(Self::shots(wanted.get(w)?, n)));
        each.fold(Self::default(), Self::and)
    }

    fn shots(wanted: &Wanted, n: u32) -> Self {
        let times = f64::from(n);
        Self {
            out: kg(wanted.shot) * times,
            back: kg(wanted.returned) * times,
            kept: if n > 0 { kg(wanted.kept) } else { 0.0 },
        }
    }

    pub(super) fn and(self, more: Self) -> Self {
        Self {
            out: self.out + more.out,
            back: self.back + more.back,
            kept: self.kept.max(more.kept),
        }
    }
}

/// A formula of the day.
pub(super) struct Formula {
    pub(super) formula: usize,
    pub(super) key: u32,
    /// Minimum that the injector keeps of it at a heat, kg.
    pub(super) kept: f64,
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

impl<'a> Problem<'a> {
    /// The problem with sessions of laminated pieces of at most `most_shots`.
    pub(super) fn new(
        wanted: &'a [Wanted],
        precedence: &'a Precedence,
        (limits, budget): (&Limits<'_>, &'a Budget<'a>),
        most_shots: u32,
    ) -> Result<Self, SplitError> {
        check_limits(precedence, limits)?;
        let mut problem = Self {
            wanted,
            precedence,
            cups: rooms(limits),
            least: limits.least.iter().copied().map(kg).collect(),
            yields: 1.0 - limits.loss.value,
            heats: limits.heats.unwrap_or(u32::MAX),
            hot: limits.hot.to_vec(),
            place: Vec::new(),
            partners: precedence.partners(),
            none: Bits::default(),
            most_base: 0.0,
            formulas: Vec::new(),
            sessions: Vec::new(),
            budget,
        };
        for (stage, w) in wanted.iter().enumerate() {
            problem.check_stage(stage, w)?;
        }
        problem.sessions = problem.sessions(limits.injectors, most_shots)?;
        problem.pool();
        Ok(problem)
    }

    /// The key of a stage.
    pub(super) fn key(&self, stage: usize) -> u32 {
        self.wanted.get(stage).map_or(0, |w| w.key)
    }

    /// Masses of `shots`.
    pub(super) fn take(&self, shots: &[(usize, u32)]) -> Take {
        Take::of(shots, self.wanted)
    }

    /// The formula of a stage; of equal ones the first.
    pub(super) fn formula(&self, stage: usize) -> usize {
        let named = self.wanted.get(stage).map_or(0, |w| w.formula);
        self.precedence.canonical(named).unwrap_or(named)
    }

    /// Capacity for `formula` of the cup that holds most of it.
    pub(super) fn capacity(&self, formula: usize) -> f64 {
        self.cups.iter().map(|cup| cup.capacity(formula)).fold(0.0, f64::max)
    }

    /// Minimum that a pot starts with at `formula`.
    pub(super) fn least(&self, formula: usize) -> f64 {
        self.least.get(formula).copied().unwrap_or(0.0)
    }

    pub(super) fn place(&self, formula: usize) -> (Place, usize) {
        (self.place.get(formula).copied().unwrap_or_default(), formula)
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

    /// Usable mass of one pot of `formula` in one heat, of which the injector keeps `kept`.
    pub(super) fn room(&self, formula: usize, kept: f64) -> f64 {
        let gives = self.cups.iter().map(|cup| cup.capacity(formula) * self.yields - cup.bottom);
        gives.fold(0.0, f64::max) - kept
    }

    /// Shots of `stage` that one pot gives: at most all of them.
    pub(super) fn shots_a_pot(&self, stage: usize, by: By) -> u32 {
        let all = self.wanted.get(stage).map_or(0, |w| w.shots);
        let formula = self.formula(stage);
        let gives = |n: u32| {
            self.cups.iter().any(|cup| {
                let need = self.need(stage, n, cup);
                let has_heats = match by {
                    By::Room => true,
                    By::Need => self.heats_allow(stage, n, need.max(self.least(formula))),
                    By::Full => self.heats_allow(stage, n, full(cup, formula)),
                };
                fits(need / cup.capacity(formula)) && has_heats
            })
        };
        if gives(all) {
            return all;
        }
        // Largest n < all that the pot gives, by halving.
        let (mut low, mut high) = (0, all);
        while high.saturating_sub(low) > 1 {
            let middle = low.midpoint(high);
            if gives(middle) { low = middle } else { high = middle }
        }
        low
    }

    /// Mass in `cup` for `shots` of `stage` alone, in one heat, kg.
    fn need(&self, stage: usize, shots: u32, cup: &Room) -> f64 {
        let take = self.take(&[(stage, shots)]);
        (take.out + take.kept + cup.bottom) / self.yields
    }

    fn check_stage(&self, stage: usize, w: &Wanted) -> Result<(), SplitError> {
        let formulas = self.precedence.formulas();
        if w.formula >= formulas {
            return Err(SplitError::NoSuchFormula { stage, formula: w.formula, formulas });
        }
        let total = kg(w.shot) * f64::from(w.shots);
        // A shot is above 0: what comes back is not below that, and less than the shot.
        let sound = is_mass(w.returned) && w.returned < w.shot && is_mass(w.kept);
        if !(total.is_finite() && sound) {
            return Err(SplitError::BadShot { stage, wanted: *w });
        }
        let formula = self.formula(stage);
        let (least, capacity) = (self.least(formula), self.capacity(formula));
        if !fits(least / capacity) {
            let (least, capacity) = (mass(least), mass(capacity));
            return Err(SplitError::LeastOverCapacity { stage, least, capacity });
        }
        if w.shots > 0 && self.shots_a_pot(stage, By::Need) == 0 {
            if self.shots_a_pot(stage, By::Room) > 0 {
                let needs = self.cups.iter().map(|cup| self.need(stage, 1, cup));
                let held = needs.fold(self.least(formula), f64::max);
                if let Some((hot, every)) = self.hot_and_shot(stage, held) {
                    return Err(SplitError::ShotTooLong { stage, every, hot });
                }
            }
            let room = mass(self.room(formula, kg(w.kept)).max(0.0));
            return Err(SplitError::ShotTooLarge { stage, shot: w.shot, room });
        }
        Ok(())
    }

    /// As few sessions of each laminated piece as its layers' pots allow, of at most `most_shots`.
    fn sessions(&self, injectors: u32, most_shots: u32) -> Result<Vec<Session>, SplitError> {
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
            let most = layers.iter().map(|&l| self.shots_a_pot(l, By::Need)).min().unwrap_or(0);
            let most = most.min(most_shots);
            let mut left = first.shots;
            while left > 0 {
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
            let (plain, layers) = (Vec::new(), Vec::new());
            let fresh = || Formula { formula, key: w.key, kept: f64::INFINITY, plain, layers };
            let pooled = pooled.get_or_insert_with(fresh);
            pooled.kept = pooled.kept.min(kg(w.kept));
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
        // With fresh base, of formulas of the same materials the one with more base comes first: where one of
        // them can follow the other without fresh base too, it is that order.
        let mut by_base: Vec<usize> = (0..pooled.len()).collect();
        by_base.sort_by(|&a, &b| self.base_share(b).total_cmp(&self.base_share(a)));
        let mut more_base = vec![0; pooled.len()];
        for (place, &formula) in by_base.iter().enumerate() {
            more_base.get_mut(formula).into_iter().for_each(|m| *m = place);
        }
        let places = pooled.iter().zip(&more_base).enumerate().map(|(f, (pooled, &base))| {
            let node = self.precedence.node(f).and_then(|n| rank.get(n)).copied();
            (node.unwrap_or(0), base, pooled.as_ref().map_or(0, |p| p.key))
        });
        self.place = places.collect();
        let mut formulas: Vec<Formula> = pooled.into_iter().flatten().collect();
        formulas.sort_unstable_by_key(|f| self.place(f.formula));
        let base = formulas.iter().map(|f| self.capacity(f.formula) * self.base_share(f.formula));
        self.most_base = base.fold(0.0, f64::max);
        self.formulas = formulas;
    }
}

/// The cups that can hold what no other holds: one that holds no more of anything, and keeps no less, is
/// left out.
fn rooms(limits: &Limits<'_>) -> Vec<Room> {
    let room = |cup: &Cup| Room {
        bottom: kg(undrawn(cup.film, cup.heel)),
        capacity: cup.capacity.iter().map(|c| c.map_or(f64::INFINITY, kg)).collect(),
    };
    let mut rooms: Vec<Room> = Vec::new();
    for cup in limits.cups.iter().map(room) {
        let no_better = |cup: &Room, than: &Room| {
            cup.bottom >= than.bottom
                && cup.capacity.iter().zip(&than.capacity).all(|(a, b)| a <= b)
        };
        if rooms.iter().all(|other| !no_better(&cup, other)) {
            rooms.retain(|other| !no_better(other, &cup));
            rooms.push(cup);
        }
    }
    rooms
}

fn check_limits(precedence: &Precedence, limits: &Limits<'_>) -> Result<(), SplitError> {
    let formulas = precedence.formulas();
    let lengths = limits.cups.iter().map(|cup| cup.capacity.len());
    let lengths = lengths.chain([limits.least.len(), limits.hot.len()]);
    for capacities in lengths {
        if formulas != capacities {
            return Err(SplitError::Capacities { formulas, capacities });
        }
    }
    if limits.cups.is_empty() {
        return Err(SplitError::NoCup);
    }
    let cups = limits.cups.iter().flat_map(|cup| [("The film", cup.film), ("The heel", cup.heel)]);
    let least = limits.least.iter().map(|&least| ("The least pot", least));
    for (what, m) in cups.chain(least) {
        if !is_mass(m) {
            return Err(SplitError::BadNumber { what, value: m.get::<gram>() });
        }
    }
    let capacities = limits.cups.iter().flat_map(|cup| cup.capacity.iter().flatten());
    if let Some(c) = capacities.into_iter().find(|&&c| !is_mass(c) || kg(c) == 0.0) {
        return Err(SplitError::BadNumber { what: "A capacity", value: c.get::<gram>() });
    }
    if !(0.0..1.0).contains(&limits.loss.value) {
        return Err(SplitError::BadNumber { what: "The loss", value: limits.loss.value });
    }
    if limits.heats == Some(0) {
        return Err(SplitError::NoHeat);
    }
    Ok(())
}

//! A day's pots: the fewest that serve all stages within the limits of the bench.
//!
//! # The model
//!
//! A pot visits each formula at most once, each after those that can become it. It is made in one of the
//! cups, must hold what its visits need at every stage there ([`mod@super::sequence`]), and withstand their
//! heats. Capacity belongs to the pot, by its cup and the formula it is at. Marks of a cup are no limit: they
//! decide how the base is measured, never how many pots there are.
//! Stages of one formula outside laminates are pooled; what fits one pot goes into one pot, if
//! that does not cost a pot, and is divided between whole shots only.
//!
//! The layers of one laminated piece come from distinct pots that are hot together. They make a
//! *session*: a number of shots of all layers. More shots than one pot gives take several sessions.
//! The order of all sessions over all pots has no cycle, so that there is an order of work.
//!
//! A heat is a session in each of its pots, or the plain shots of one visit; plain shots of a visit
//! that has a session are shot from its heat, directly after. If it is known how long a pot stays hot and how
//! often a shot can be made, the reheats between shots ([`crate::process::clock`]) count among the heats that a pot
//! may take: a pot gives at most (hot time / time a shot) shots a heat, rounded down. A fuller pot stays hot longer
//! if its cooling was watched, so heats are counted for what a pot holds at least, and the proof takes a full cup.
//! Nothing of the mix is lost in a reheat: what has set in the injector goes back into the pot.
//!
//! # The proof
//!
//! [`Proof`] says how many pots any plan needs at least, and why. Comparability alone gives the fewest
//! chains and the antichain that proves it, each formula counted as often as its own draws fill
//! pots. Without fresh base, the base that the draws take must have been in the pots from their
//! start: Σ (D_k − back_k + kept)·b_k ≤ pots · ((1 − loss)·max(cap·b) − undrawn·min b), b the share of base,
//! back_k sprues that are melted again, kept the minimum that the injector keeps there, and of the cups the one
//! that allows most. (A sum of draws over the capacity would claim too much: pots grow between draws.) Heats give
//! ⌈Σ heats/allowed⌉, each formula with the heats that the time of its shots takes at least, and a laminated piece as many pots as it has layers, with all formulas that can
//! share a pot with none of them. Parts on different bases add up.
//!
//! # How the pots are found
//!
//! First fit along the fewest chains and without them, the darkest formula first and the lightest,
//! draws whole and divided, shots by key and the largest first; the fewest pots win, then the fewest heats,
//! then the first way. If that stays above the bound, all ways to put at most [`EXACT_PORTIONS`] portions
//! together are searched: as much of a formula as a pot holds, then each plain shot by itself, then each shot of a
//! laminated piece too (with fresh base, formulas of the same materials only in one order, the one with more base
//! first). A plan is always valid; [`Proof::least`] says whether it is
//! proven least.
//!
//! # Ties
//!
//! Everything is taken by rising `key`, then in the order given: the pots' chains go on to the nearest
//! key, and of all work that is ready the smallest key comes first.

mod bound;
mod error;
mod load;
mod problem;
mod reheats;
mod search;
#[cfg(test)]
mod tests;
mod work;

use alloc::vec::Vec;
use core::fmt;

pub use error::SplitError;

use self::load::Load;
use self::problem::{Problem, Take};
use super::budget::Budget;
use super::precedence::Precedence;
use super::sequence::{self, Sequence, SequenceError, Stage, Vessel};
use crate::process::clock::Hot;
use crate::quantity::{Mass, Ratio, Time};

/// Up to this number of portions all ways to put them together are searched: at most 115 975.
pub const EXACT_PORTIONS: usize = 10;

/// Maximum number of pots of a plan.
pub const MOST_POTS: u32 = 20_000;

/// One stage to serve: pooled pieces of one mold and formula, or of one layer of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wanted {
    /// The formula, by its number in the [`Precedence`].
    pub formula: usize,
    /// Mass of one shot of it.
    pub shot: Mass,
    /// Mass of a shot that comes back into the pot before its next formula: the sprue, if sprues are melted again;
    /// below the shot.
    pub returned: Mass,
    /// Mass that the injector keeps of it at each heat.
    pub kept: Mass,
    /// Number of shots; 0 needs no pot.
    pub shots: u32,
    /// The laminated piece of which this is a layer: stages with the same number are shot together,
    /// as many shots of each.
    pub laminate: Option<usize>,
    /// How often one can be made; `None` if not known: then its shots are not counted for reheats.
    pub every: Option<Time>,
    /// Less comes first: lighter, promised earlier, the same mold.
    pub key: u32,
}

/// Limits of the bench.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Limits<'a> {
    /// The cups; each pot is made in any of them. At least one.
    pub cups: &'a [Cup],
    /// Minimum mass to start with, by the formula that a pot starts with.
    pub least: &'a [Mass],
    /// Heats that a pot may take, reheats between shots among them; `None` for no limit.
    pub heats: Option<u32>,
    /// How long a pot stays hot, by formula; `None` if not known: then no reheats are counted.
    pub hot: &'a [Option<Hot>],
    /// Share of what a pot holds that is lost in each heat.
    pub loss: Ratio,
    /// Maximum number of pots hot and shot at once.
    pub injectors: u32,
}

/// A cup that pots can be made in.
#[derive(Debug, Clone, PartialEq)]
pub struct Cup {
    /// Mass that clings to its wall.
    pub film: Mass,
    /// Mass that cannot be drawn from it, the film included.
    pub heel: Mass,
    /// Its capacity for each formula, head-room left; `None` for no limit.
    pub capacity: Vec<Option<Mass>>,
}

/// The pots of a day, in which order to work, and why not fewer.
#[derive(Debug, Clone, PartialEq)]
pub struct Split {
    /// The pots.
    pub pots: Vec<Pot>,
    /// The work, in an order that every pot allows.
    pub work: Vec<Work>,
    /// Why there are not fewer pots.
    pub proof: Proof,
}

/// One pot.
#[derive(Debug, Clone, PartialEq)]
pub struct Pot {
    /// Its visits, in their order.
    pub visits: Vec<Visit>,
}

/// One formula that a pot is at.
#[derive(Debug, Clone, PartialEq)]
pub struct Visit {
    /// The formula; of equal ones the first.
    pub formula: usize,
    /// Stages served and how many shots of each, in the order of work.
    pub draws: Vec<(usize, u32)>,
    /// Heats that the visit takes, reheats between shots aside.
    pub heats: u32,
}

/// Shots made at one time.
#[derive(Debug, Clone, PartialEq)]
pub struct Work {
    /// The laminated piece of which this is a session; its draws are then one a layer.
    pub laminate: Option<usize>,
    /// The shots.
    pub draws: Vec<Draw>,
    /// Pots that are heated for it; none if they are still hot from the work before.
    pub heated: Vec<usize>,
}

/// Shots of one stage out of one pot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Draw {
    /// The pot.
    pub pot: usize,
    /// Which of its visits.
    pub visit: usize,
    /// Which of that visit's draws.
    pub draw: usize,
    /// The stage.
    pub wanted: usize,
    /// Number of shots.
    pub shots: u32,
}

/// Minimum number of pots, and why.
#[derive(Debug, Clone, PartialEq)]
pub struct Proof {
    /// No plan has fewer pots: the sum of what the reasons give.
    pub lower: usize,
    /// Number of pots of the plan.
    pub found: usize,
    /// Why; more than one if bases differ.
    pub reasons: Vec<Reason>,
    /// Whether all ways to put the portions together were searched: none has fewer pots.
    pub searched: bool,
}

impl Proof {
    /// Whether the plan is proven to have the fewest pots.
    #[must_use]
    pub fn least(&self) -> bool {
        self.lower == self.found
    }
}

/// `least possible`, or `[lower bound, found]`.
impl fmt::Display for Proof {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if self.least() {
            write!(f, "least possible")
        } else {
            write!(f, "[{}, {}]", self.lower, self.found)
        }
    }
}

/// Pots that the draws of one formula fill by themselves.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Alone {
    /// The formula.
    pub formula: usize,
    /// Mass of all its shots.
    pub taken: Mass,
    /// Maximum that one pot gives of it; `None` without a limit.
    pub room: Option<Mass>,
    /// If whole shots decide: shots of one stage, and the number of them that a pot gives.
    pub shots: Option<(u32, u32)>,
    /// The heats of a pot, if these and not its room decide how many shots it gives.
    pub in_heats: Option<u32>,
    /// Pots that this fills.
    pub pots: u32,
}

/// One argument for a number of pots.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub enum Reason {
    /// No two of these can share a pot.
    Apart {
        /// Formulas, and the pots that the draws of each fill by themselves.
        formulas: Vec<Alone>,
    },
    /// The layers of one piece come from distinct pots, and these formulas from yet others.
    Layers {
        /// Stages that are the layers.
        layers: Vec<usize>,
        /// Formulas that share a pot with none of them nor with each other.
        formulas: Vec<Alone>,
    },
    /// All base that the draws take is in the pots from their start.
    Capacity {
        /// Formulas, and the base that the draws of each take.
        base: Vec<(usize, Mass)>,
        /// All of it.
        all: Mass,
        /// Maximum that one pot supplies.
        a_pot: Mass,
        /// Pots that the base fills.
        pots: usize,
    },
    /// The shots need more heats than fewer pots withstand.
    Heats {
        /// Formulas, and the heats that each takes at least.
        each: Vec<(usize, u32)>,
        /// All of them.
        heats: u32,
        /// Heats that a pot withstands.
        allowed: u32,
        /// Pots that withstand them.
        pots: usize,
    },
}

impl Reason {
    /// Number of pots that it gives.
    #[must_use]
    pub fn pots(&self) -> usize {
        let filled = |list: &[Alone]| {
            list.iter().fold(0_usize, |sum, alone| sum.saturating_add(alone.pots as usize))
        };
        match self {
            Self::Apart { formulas } => filled(formulas),
            Self::Layers { layers, formulas } => layers.len().saturating_add(filled(formulas)),
            Self::Capacity { pots, .. } | Self::Heats { pots, .. } => *pots,
        }
    }
}

/// The fewest pots found that serve all of `wanted` within `limits`.
///
/// # Errors
///
/// See [`SplitError`]: a number that cannot be, a shot that no pot holds, a laminated piece of more
/// layers than can be hot at once, layers of unlike numbers of shots.
pub fn split(
    wanted: &[Wanted],
    precedence: &Precedence,
    limits: &Limits<'_>,
) -> Result<Split, SplitError> {
    split_within(wanted, precedence, limits, &Budget::new().pots(u32::MAX).work(u64::MAX))
}

/// The same within `budget`.
///
/// # Errors
///
/// As [`split`]; more pots or work than the budget allows.
pub fn split_within(
    wanted: &[Wanted],
    precedence: &Precedence,
    limits: &Limits<'_>,
    budget: &Budget<'_>,
) -> Result<Split, SplitError> {
    let new = |most_shots| Problem::new(wanted, precedence, (limits, budget), most_shots);
    let mut problem = new(u32::MAX)?;
    let bound = bound::bound(&problem)?;
    let (mut loads, searched) = search::fewest(&problem, &bound);
    let divisible = problem.sessions.iter().any(|session| session.shots > 1);
    if divisible && shots(wanted) <= EXACT_PORTIONS as u64 {
        let mut single = new(1)?;
        if let Some(fewer) = search::fewer(&mut single, bound.lower, loads.len()) {
            (problem, loads) = (single, fewer);
        }
    }
    budget.check()?;
    budget.check_pots(loads.len(), false)?;
    let mut pots: Vec<Pot> = loads.iter().map(Load::pot).collect();
    let work = work::order(&problem, &loads, &mut pots)?;
    let proof = Proof { lower: bound.lower, found: pots.len(), reasons: bound.reasons, searched };
    Ok(Split { pots, work, proof })
}

/// All shots, each layer counted.
fn shots(wanted: &[Wanted]) -> u64 {
    wanted.iter().fold(0_u64, |sum, wanted| sum.saturating_add(wanted.shots.into()))
}

/// The sequence of draws of `pot` in the first cup that holds it, compositions in rows of `materials` entries.
///
/// # Errors
///
/// As [`sequence::plan`]; a pot from [`split`] with the same arguments keeps all limits.
pub fn sequence(
    pot: &Pot,
    wanted: &[Wanted],
    precedence: &Precedence,
    limits: &Limits<'_>,
    materials: usize,
) -> Result<Sequence, SequenceError> {
    let shares: Vec<Vec<f64>> = pot
        .visits
        .iter()
        .map(|visit| precedence.shares(visit.formula, materials).unwrap_or_default())
        .collect();
    let first = pot.visits.first().map_or(0, |visit| visit.formula);
    let least = limits.least.get(first).copied().unwrap_or_default();
    let mut refused = SequenceError::NoStage;
    for cup in limits.cups {
        let stages: Vec<Stage<'_>> = pot
            .visits
            .iter()
            .zip(&shares)
            .map(|(visit, composition)| {
                let take = Take::of(&visit.draws, wanted);
                Stage {
                    composition,
                    draw: sequence::mass(take.out),
                    kept: sequence::mass(take.kept) * f64::from(visit.heats),
                    returned: sequence::mass(take.back),
                    loss: limits.loss,
                    capacity: cup.capacity.get(visit.formula).copied().flatten(),
                    heats: visit.heats,
                }
            })
            .collect();
        let vessel = Vessel { film: cup.film, heel: cup.heel, least, heats: limits.heats };
        match sequence::plan(&stages, &vessel, precedence.fresh_base()) {
            Ok(sequence) => return Ok(sequence),
            Err(error) => refused = error,
        }
    }
    Err(refused)
}

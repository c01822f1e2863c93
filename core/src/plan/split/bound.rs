//! Minimum number of pots of any plan.

use alloc::vec;
use alloc::vec::Vec;

use super::problem::{By, Formula, Problem, Take};
use super::{Alone, MOST_POTS, Reason, SplitError};
use crate::plan::bits::Bits;
use crate::plan::cover::{Cover, fewest_chains};
use crate::plan::sequence::mass;

pub(super) struct Bound {
    pub(super) lower: usize,
    pub(super) reasons: Vec<Reason>,
    /// Chains of nodes, one a pot, if only comparability counts.
    pub(super) chains: Vec<Vec<usize>>,
}

pub(super) fn bound(problem: &Problem<'_>) -> Result<Bound, SplitError> {
    let fills: Vec<Alone> = problem.formulas.iter().map(|f| alone(problem, f)).collect();
    // Before the work begins: what one formula fills by itself, no plan has fewer of.
    let most = fills.iter().map(|alone| alone.pots).max().unwrap_or(0);
    problem.budget.check_number(most as usize, true)?;
    let total = fills.iter().fold(0_u32, |sum, alone| sum.saturating_add(alone.pots));
    if total > MOST_POTS {
        return Err(SplitError::TooManyPots);
    }
    problem.budget.check_pots(most as usize, true)?;
    let cover = cover(problem, &fills)?;
    let apart = apart(problem, &fills, &cover);
    let mut reasons = by_base(problem, &fills, &apart);
    let lower = |reasons: &[Reason]| {
        reasons.iter().fold(0_usize, |sum, reason| sum.saturating_add(reason.pots()))
    };
    let mut layers: Option<Reason> = None;
    // The sessions of one piece have the same layers.
    for session in problem.sessions.chunk_by(|a, b| a.laminate == b.laminate) {
        let Some(session) = session.first() else { continue };
        let reason = with_layers(problem, &session.layers, &fills, &apart);
        if layers.as_ref().is_none_or(|best| reason.pots() > best.pots()) {
            layers = Some(reason);
        }
    }
    if let Some(layers) = layers.filter(|l| l.pots() > lower(&reasons)) {
        reasons = vec![layers];
    }
    problem.budget.check_pots(lower(&reasons), true)?;
    Ok(Bound { lower: lower(&reasons), reasons, chains: cover.chains })
}

/// Pots that the draws of one formula fill by themselves: a pot gives no more of it than it may hold.
fn alone(problem: &Problem<'_>, formula: &Formula) -> Alone {
    let room = problem.room(formula.formula, formula.kept);
    let taken = taken(problem, formula).out;
    let mut alone = Alone {
        formula: formula.formula,
        taken: mass(taken),
        room: room.is_finite().then(|| mass(room)),
        shots: None,
        in_heats: None,
        pots: if room.is_finite() { at_least(taken / room) } else { 1 },
    };
    for &(stage, shots) in &formula.plain {
        let a_pot = problem.shots_a_pot(stage, By::Full);
        let pots = divided_up(shots, a_pot);
        if pots > alone.pots {
            let by_heats = a_pot < problem.shots_a_pot(stage, By::Room);
            let in_heats = by_heats.then_some(problem.heats);
            alone = Alone { shots: Some((shots, a_pot)), in_heats, pots, ..alone };
        }
    }
    alone
}

/// Mass of all draws of one formula.
fn taken(problem: &Problem<'_>, formula: &Formula) -> Take {
    let layers = formula.layers.iter().filter_map(|&(session, layer)| {
        let session = problem.sessions.get(session)?;
        Some(problem.take(&[(*session.layers.get(layer)?, session.shots)]))
    });
    layers.fold(problem.take(&formula.plain), Take::and)
}

/// The whole number that is needed at least: what rounding alone puts above one does not count.
pub(super) fn at_least(pots: f64) -> u32 {
    let pots = libm::ceil(pots * (1.0 - 1e-12));
    // More than a plan may have is refused later, and a cast of floats saturates.
    pots.max(1.0) as u32
}

/// The fewest chains of nodes through every formula, as often as it fills pots.
fn cover(problem: &Problem<'_>, fills: &[Alone]) -> Result<Cover, SplitError> {
    let nodes = problem.precedence.order().len();
    let (mut times, mut key) = (vec![0; nodes], vec![u32::MAX; nodes]);
    for (formula, alone) in problem.formulas.iter().zip(fills) {
        let Some(node) = problem.precedence.node(formula.formula) else { continue };
        times.get_mut(node).into_iter().for_each(|t: &mut u32| *t = (*t).max(alone.pots));
        key.get_mut(node).into_iter().for_each(|k: &mut u32| *k = (*k).min(formula.key));
    }
    Ok(fewest_chains(problem.precedence.order(), &times, &key)?)
}

/// The antichain as formulas: of each node the one that fills more pots.
fn apart(problem: &Problem<'_>, fills: &[Alone], cover: &Cover) -> Vec<Alone> {
    let mut by_node: Vec<Option<Alone>> = vec![None; problem.precedence.order().len()];
    for alone in fills {
        let node = problem.precedence.node(alone.formula);
        let Some(best) = node.and_then(|node| by_node.get_mut(node)) else { continue };
        if best.is_none_or(|best| alone.pots > best.pots) {
            *best = Some(*alone);
        }
    }
    cover.antichain.iter().filter_map(|&node| *by_node.get(node)?).collect()
}

/// Pots that the formulas on each base need, with one reason for each base. Without fresh base no two bases share
/// a pot; with it all are looked at together.
fn by_base(problem: &Problem<'_>, fills: &[Alone], apart: &[Alone]) -> Vec<Reason> {
    let base = |formula: usize| {
        let blend = problem.precedence.blend(formula).filter(|_| !problem.fresh_base());
        blend.unwrap_or(0)
    };
    let mut groups: Vec<Vec<(&Formula, u32)>> = vec![Vec::new(); problem.precedence.formulas()];
    for (formula, alone) in problem.formulas.iter().zip(fills) {
        let group = groups.get_mut(base(formula.formula));
        group.into_iter().for_each(|group| group.push((formula, alone.pots)));
    }
    let mut reasons = Vec::new();
    for (group, formulas) in groups.iter().enumerate().filter(|(_, group)| !group.is_empty()) {
        let here = apart.iter().copied().filter(|alone| base(alone.formula) == group);
        let mut best = Reason::Apart { formulas: here.collect() };
        for other in [capacity(problem, formulas), heats(problem, formulas)].into_iter().flatten() {
            if other.pots() > best.pots() {
                best = other;
            }
        }
        reasons.push(best);
    }
    reasons
}

/// Without fresh base all base that leaves the pots was in them from their start.
fn capacity(problem: &Problem<'_>, formulas: &[(&Formula, u32)]) -> Option<Reason> {
    if problem.fresh_base() {
        return None;
    }
    let share = |formula: usize| problem.base_share(formula);
    let least = formulas.iter().map(|(f, _)| share(f.formula)).fold(f64::INFINITY, f64::min);
    let mut base = Vec::with_capacity(formulas.len());
    let mut all = 0.0;
    for (formula, _) in formulas {
        let take = taken(problem, formula);
        let taken = (take.out - take.back + formula.kept) * share(formula.formula);
        base.push((formula.formula, mass(taken)));
        all += taken;
    }
    let a_pot = problem.cups.iter().map(|cup| {
        let starts = formulas.iter().map(|(f, _)| cup.capacity(f.formula) * share(f.formula));
        starts.fold(0.0, f64::max) * problem.yields - cup.bottom * least
    });
    let a_pot = a_pot.fold(0.0, f64::max);
    (a_pot.is_finite() && a_pot > 0.0).then(|| Reason::Capacity {
        base,
        all: mass(all),
        a_pot: mass(a_pot),
        pots: at_least(all / a_pot) as usize,
    })
}

/// ⌈whole/part⌉; of no part all.
pub(super) fn divided_up(whole: u32, part: u32) -> u32 {
    whole.div_ceil(part.max(1))
}

fn heats(problem: &Problem<'_>, formulas: &[(&Formula, u32)]) -> Option<Reason> {
    let each: Vec<(usize, u32)> = formulas
        .iter()
        .map(|(formula, fills)| (formula.formula, least_heats(problem, formula).max(*fills)))
        .collect();
    let heats = each.iter().fold(0_u32, |sum, &(_, heats)| sum.saturating_add(heats));
    let pots = divided_up(heats, problem.heats) as usize;
    Some(Reason::Heats { each, heats, allowed: problem.heats, pots })
}

/// Heats that the shots of a formula take at least, in any pots. Sessions have heats of their own; the time of all
/// shots is in some heat, and a heat has no more of it than the fullest pot stays hot for.
fn least_heats(problem: &Problem<'_>, formula: &Formula) -> u32 {
    let share = |stage: usize, shots: u32| {
        problem.shots_a_heat(stage).map_or(0.0, |a_heat| f64::from(shots) / a_heat)
    };
    let whole = |stage: usize, shots: u32| {
        let a_heat = problem.shots_a_heat(stage).map(libm::floor);
        a_heat.map_or(1, |a_heat| at_least(f64::from(shots) / a_heat))
    };
    let (mut in_sessions, mut time) = (0_u32, 0.0);
    let sessions = formula.layers.iter().filter_map(|&(s, _)| problem.sessions.get(s));
    let mut last = None;
    for session in
        sessions.filter(|session| last.replace(session.laminate) != Some(session.laminate))
    {
        let layers = &session.layers;
        let a_pot = layers.iter().map(|&layer| problem.shots_a_pot(layer, By::Full)).min();
        for &stage in layers.iter().filter(|&&l| problem.formula(l) == formula.formula) {
            let shots = problem.wanted.get(stage).map_or(0, |w| w.shots);
            let sessions = divided_up(shots, a_pot.unwrap_or(0));
            in_sessions = in_sessions.saturating_add(sessions.max(whole(stage, shots)));
            time += share(stage, shots);
        }
    }
    let mut least = in_sessions;
    for &(stage, shots) in &formula.plain {
        least = least.max(whole(stage, shots));
        time += share(stage, shots);
    }
    least.max(at_least(time))
}

/// The layers of one piece, and formulas that can share a pot with none of them nor with each
/// other: those of the antichain first, then the others in place.
fn with_layers(
    problem: &Problem<'_>,
    layers: &[usize],
    fills: &[Alone],
    apart: &[Alone],
) -> Reason {
    let mut share = Bits::empty(problem.precedence.formulas());
    layers.iter().for_each(|&stage| share.union(problem.partners(problem.formula(stage))));
    let mut formulas = Vec::new();
    for alone in apart.iter().chain(fills) {
        if !share.contains(alone.formula) {
            share.union(problem.partners(alone.formula));
            formulas.push(*alone);
        }
    }
    Reason::Layers { layers: layers.to_vec(), formulas }
}

//! How many pots any plan needs at least.

use alloc::vec;
use alloc::vec::Vec;

use super::problem::{Formula, Problem};
use super::{MOST_POTS, Reason, SplitError};
use crate::plan::bits::Bits;
use crate::plan::cover::{Cover, fewest_chains};

pub(super) struct Bound {
    pub(super) lower: usize,
    pub(super) reasons: Vec<Reason>,
    /// Chains of nodes, one a pot, where comparability alone counts.
    pub(super) chains: Vec<Vec<usize>>,
}

pub(super) fn bound(problem: &Problem<'_>) -> Result<Bound, SplitError> {
    let fills: Vec<u32> = problem.formulas.iter().map(|f| fills(problem, f)).collect();
    let total = fills.iter().fold(0_u32, |sum, &n| sum.saturating_add(n));
    if total > MOST_POTS {
        return Err(SplitError::TooManyPots);
    }
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
    Ok(Bound { lower: lower(&reasons), reasons, chains: cover.chains })
}

/// Pots that the draws of one formula fill by themselves: at each, a pot gives no more than it may
/// hold there.
fn fills(problem: &Problem<'_>, formula: &Formula) -> u32 {
    let room = problem.room(formula.formula);
    let pots = if room.is_finite() { at_least(taken(problem, formula) / room) } else { 1 };
    let one_stage =
        formula.plain.iter().map(|&(stage, shots)| divided_up(shots, problem.shots_a_pot(stage)));
    pots.max(one_stage.max().unwrap_or(1))
}

/// Mass of all draws of one formula, kg.
fn taken(problem: &Problem<'_>, formula: &Formula) -> f64 {
    let plain = problem.out(&formula.plain);
    let layers = formula.layers.iter().filter_map(|&(session, layer)| {
        let session = problem.sessions.get(session)?;
        Some(problem.shot(*session.layers.get(layer)?) * f64::from(session.shots))
    });
    plain + layers.sum::<f64>()
}

/// The whole number that is needed at least: what rounding alone puts above one does not count.
fn at_least(pots: f64) -> u32 {
    let pots = libm::ceil(pots * (1.0 - 1e-12));
    // More than a plan may have is refused later, and a cast of floats saturates.
    pots.max(1.0) as u32
}

/// The fewest chains of nodes through every formula, as often as it fills pots.
fn cover(problem: &Problem<'_>, fills: &[u32]) -> Result<Cover, SplitError> {
    let nodes = problem.precedence.order().len();
    let (mut times, mut key) = (vec![0; nodes], vec![u32::MAX; nodes]);
    for (formula, &n) in problem.formulas.iter().zip(fills) {
        let Some(node) = problem.precedence.node(formula.formula) else { continue };
        times.get_mut(node).into_iter().for_each(|t: &mut u32| *t = (*t).max(n));
        key.get_mut(node).into_iter().for_each(|k: &mut u32| *k = (*k).min(formula.key));
    }
    Ok(fewest_chains(problem.precedence.order(), &times, &key)?)
}

/// The antichain as formulas: of each node the one that fills the most pots.
fn apart(problem: &Problem<'_>, fills: &[u32], cover: &Cover) -> Vec<(usize, u32)> {
    let mut by_node: Vec<Option<(usize, u32)>> = vec![None; problem.precedence.order().len()];
    for (formula, &n) in problem.formulas.iter().zip(fills) {
        let node = problem.precedence.node(formula.formula);
        let Some(best) = node.and_then(|node| by_node.get_mut(node)) else { continue };
        if best.is_none_or(|(_, most)| n > most) {
            *best = Some((formula.formula, n));
        }
    }
    cover.antichain.iter().filter_map(|&node| *by_node.get(node)?).collect()
}

/// What the formulas on each base need, for one reason each. Without fresh base no two bases share
/// a pot; with it all are looked at together.
fn by_base(problem: &Problem<'_>, fills: &[u32], apart: &[(usize, u32)]) -> Vec<Reason> {
    let base = |formula: usize| {
        let blend = problem.precedence.blend(formula).filter(|_| !problem.fresh_base());
        blend.unwrap_or(0)
    };
    let mut groups: Vec<Vec<(&Formula, u32)>> = vec![Vec::new(); problem.precedence.formulas()];
    for (formula, &n) in problem.formulas.iter().zip(fills) {
        let group = groups.get_mut(base(formula.formula));
        group.into_iter().for_each(|group| group.push((formula, n)));
    }
    let mut reasons = Vec::new();
    for (group, formulas) in groups.iter().enumerate().filter(|(_, group)| !group.is_empty()) {
        let here = apart.iter().copied().filter(|&(formula, _)| base(formula) == group);
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

fn capacity(problem: &Problem<'_>, formulas: &[(&Formula, u32)]) -> Option<Reason> {
    if problem.fresh_base() {
        return None;
    }
    let (mut taken_base, mut most, mut least) = (0.0, 0.0_f64, f64::INFINITY);
    for (formula, _) in formulas {
        let share = problem.precedence.base_share(formula.formula)?;
        taken_base += (taken(problem, formula) + problem.kept) * share;
        most = most.max(problem.capacity(formula.formula) * share);
        least = least.min(share);
    }
    let a_pot = most * problem.yields - problem.bottom * least;
    (a_pot.is_finite() && a_pot > 0.0)
        .then(|| Reason::Capacity { pots: at_least(taken_base / a_pot) as usize })
}

/// ⌈whole/part⌉, at least 1.
fn divided_up(whole: u32, part: u32) -> u32 {
    let more = u32::from(whole.checked_rem(part).unwrap_or(0) > 0);
    whole.checked_div(part).unwrap_or(1).saturating_add(more).max(1)
}

fn heats(problem: &Problem<'_>, formulas: &[(&Formula, u32)]) -> Option<Reason> {
    let each = formulas.iter().map(|(formula, fills)| {
        u32::try_from(formula.layers.len()).unwrap_or(u32::MAX).max(*fills)
    });
    let heats = each.fold(0_u32, u32::saturating_add);
    let pots = divided_up(heats, problem.heats) as usize;
    Some(Reason::Heats { heats, pots })
}

/// The layers of one piece, and formulas that can share a pot with none of them nor with each
/// other: those of the antichain first, then the others in place.
fn with_layers(
    problem: &Problem<'_>,
    layers: &[usize],
    fills: &[u32],
    apart: &[(usize, u32)],
) -> Reason {
    let mut share = Bits::empty(problem.precedence.formulas());
    layers.iter().for_each(|&stage| share.union(problem.partners(problem.formula(stage))));
    let mut formulas = Vec::new();
    let others = problem.formulas.iter().zip(fills).map(|(f, &n)| (f.formula, n));
    for (formula, n) in apart.iter().copied().chain(others) {
        if !share.contains(formula) {
            share.union(problem.partners(formula));
            formulas.push((formula, n));
        }
    }
    Reason::Layers { layers: layers.to_vec(), formulas }
}

//! A small day: the fewest pots over all ways to put whole stages together.

use super::chains::fewest_parts;
use super::pot::{self, Stage};

/// A formula by its doses, in any whole number per 100 of base.
pub type Doses = [u32; 3];

/// One stage that stays whole.
#[derive(Debug, Clone, Copy)]
pub struct Wanted {
    /// Which formula.
    pub formula: usize,
    /// Grams.
    pub draw: f64,
    /// The laminated piece that it is a layer of.
    pub laminate: Option<usize>,
}

/// The limits of the bench, masses in grams.
#[derive(Debug, Clone, Copy)]
pub struct Limits {
    /// Capacity of a vessel.
    pub capacity: f64,
    /// Mass that cannot be drawn.
    pub bottom: f64,
    /// The smallest start.
    pub least: f64,
    /// Kept by the injector at each heat.
    pub kept: f64,
    /// Share lost in each heat.
    pub loss: f64,
    /// Heats that a pot withstands.
    pub heats: usize,
}

fn no_more(a: &Doses, b: &Doses) -> bool {
    a.iter().zip(b).all(|(x, y)| x <= y)
}

fn base_share(doses: &Doses) -> f64 {
    100.0 / (100.0 + f64::from(doses.iter().sum::<u32>()))
}

/// The stages of one pot by formula, lightest first; `None` where two formulas cannot share it.
fn visits(
    pot: &[usize],
    wanted: &[Wanted],
    formulas: &[Doses],
) -> Option<Vec<(Doses, Vec<usize>)>> {
    let mut visits: Vec<(Doses, Vec<usize>)> = Vec::new();
    for &w in pot {
        let doses = formulas[wanted[w].formula];
        match visits.iter_mut().find(|(d, _)| *d == doses) {
            Some((_, list)) => list.push(w),
            None => visits.push((doses, vec![w])),
        }
    }
    visits.sort_by_key(|(doses, _)| doses.iter().sum::<u32>());
    let chain = visits.windows(2).all(|pair| no_more(&pair[0].0, &pair[1].0));
    chain.then_some(visits)
}

/// A session is a heat; plain draws have a session's heat or their own.
fn heats(visit: &[usize], wanted: &[Wanted]) -> usize {
    visit.iter().filter(|&&w| wanted[w].laminate.is_some()).count().max(1)
}

fn pot_works(pot: &[usize], wanted: &[Wanted], formulas: &[Doses], limits: &Limits) -> bool {
    let Some(visits) = visits(pot, wanted, formulas) else { return false };
    for (i, &a) in pot.iter().enumerate() {
        let laminate = wanted[a].laminate;
        if laminate.is_some() && pot[i + 1..].iter().any(|&b| wanted[b].laminate == laminate) {
            return false;
        }
    }
    if visits.iter().map(|(_, v)| heats(v, wanted)).sum::<usize>() > limits.heats {
        return false;
    }
    let stages: Vec<Stage> = visits
        .iter()
        .map(|(doses, visit)| Stage {
            base_share: base_share(doses),
            out: visit.iter().map(|&w| wanted[w].draw).sum::<f64>()
                + limits.kept * heats(visit, wanted) as f64,
            capacity: limits.capacity,
        })
        .collect();
    pot::fits(&stages, limits.bottom, limits.loss, limits.least)
}

/// Whether the day can be worked: do whatever is possible until nothing is left.
fn can_be_worked(pots: &[Vec<usize>], wanted: &[Wanted], formulas: &[Doses]) -> bool {
    let mut left: Vec<Vec<Vec<usize>>> = pots
        .iter()
        .map(|pot| visits(pot, wanted, formulas).unwrap().into_iter().map(|(_, v)| v).collect())
        .collect();
    loop {
        let now: Vec<usize> =
            left.iter().filter_map(|pot| pot.first()).flatten().copied().collect();
        if now.is_empty() {
            return true;
        }
        let layers = |laminate| wanted.iter().filter(|w| w.laminate == Some(laminate)).count();
        let ready = |w: usize| match wanted[w].laminate {
            None => true,
            Some(l) => now.iter().filter(|&&o| wanted[o].laminate == Some(l)).count() == layers(l),
        };
        let done: Vec<usize> = now.iter().copied().filter(|&w| ready(w)).collect();
        if done.is_empty() {
            return false;
        }
        for pot in &mut left {
            if let Some(visit) = pot.first_mut() {
                visit.retain(|w| !done.contains(w));
            }
            pot.retain(|visit| !visit.is_empty());
        }
    }
}

/// The fewest pots; `None` where some stage fits no pot.
pub fn fewest_pots(wanted: &[Wanted], formulas: &[Doses], limits: &Limits) -> Option<usize> {
    fewest_parts(wanted.len(), &|pots| {
        pots.iter().all(|pot| pot_works(pot, wanted, formulas, limits))
            && can_be_worked(pots, wanted, formulas)
    })
}

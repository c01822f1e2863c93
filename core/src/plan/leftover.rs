//! Which leftovers can go into new pots, and how much of each, so that as much as possible is used.
//!
//! With x_jp the mass of leftover j in pot p, a_ij the share of material i in it, M_p the mass and t_ip the target of the
//! pot, the pot must hold at least l_ip = (1 − τ_ip)·t_ip·M_p and at most h_ip = (1 + τ_ip)·t_ip·M_p of each
//! material, and of one that the target lacks, traces only: h_ip = ε·M_p. Materials are only added, so with e_ip what
//! leftovers bring beyond l_ip, the linear program is: maximize Σ x_jp under Σ_p x_jp ≤ m_j;
//! Σ_j x_jp·a_ij − e_ip ≤ l_ip; e_ip ≤ h_ip − l_ip; Σ_i e_ip ≤ M_p − Σ_i l_ip.
//!
//! A pot inherits the heats of the mix in it that was heated most often, and a mix goes in only where these
//! and the pot's own heats together are allowed.
//!
//! Ties: with the total used, a second objective prefers the leftover with the smallest key, then the first pot. The
//! answer is not trusted: it is cut back until every pot can be made within its tolerances, as computed here, and refused
//! where that takes more than 1e-9 of it.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use alloc::vec;
use alloc::vec::Vec;

use uom::si::mass::gram;
use uom::si::ratio::ratio;

use super::linear::{AtMost, Program};
use super::sequence::{is_mass, is_part, kg, mass, unit};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::quantity::{Mass, Ratio};
use crate::show;

/// Rounding that a mix may be off by, as a share of its pot.
const ROUNDING: f64 = 1e-12;

/// A leftover in numbers, on the same list of materials as the pots.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LeftoverParts<'a> {
    /// Parts by mass, on any scale.
    pub composition: &'a [f64],
    /// Its mass.
    pub mass: Mass,
    /// Heats that it has spent.
    pub heats: u32,
    /// Less is used first: the oldest.
    pub key: u32,
}

/// A pot to be made.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct NewPot<'a> {
    /// Target composition: parts by mass, on any scale.
    pub composition: &'a [f64],
    /// How far each material may be off, relative to its own share.
    pub tolerance: &'a [Ratio],
    /// Total mass that the pot starts with.
    pub mass: Mass,
    /// Heats that it will take.
    pub heats: u32,
}

/// Contents of one pot.
#[derive(Debug, Clone, PartialEq)]
pub struct Filled {
    /// Mass of each leftover.
    pub from: Vec<Mass>,
    /// Mass of each material added fresh.
    pub fresh: Vec<Mass>,
    /// Heats of the leftover that was heated most often of those that go in.
    pub heats_spent: u32,
    /// How far each material is off, relative to its share; 0 if the target lacks it.
    pub off: Vec<Ratio>,
}

/// Why there is no answer.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum LeftoverError {
    /// A composition or list of tolerances is not as long as the first one, or holds nothing.
    #[error("{what} {index}: the list of materials is empty or not as long as the others.")]
    Lengths {
        /// Leftover or pot.
        what: &'static str,
        /// Which one.
        index: usize,
    },
    /// A number that cannot be: negative or not finite.
    #[error("{what} {index}: {} cannot be.", show::number(*.value))]
    BadNumber {
        /// Leftover, pot or trace.
        what: &'static str,
        /// Which one.
        index: usize,
        /// The number given, masses in g.
        value: f64,
    },
    /// No answer that holds was found.
    #[error("The linear program found no answer that holds: {why}.")]
    Solver {
        /// Message of the linear program, or the fault in its answer.
        why: String,
    },
}

impl Diagnose for LeftoverError {
    codes! {
        Self::Lengths { .. } => "leftover-lengths",
        Self::BadNumber { .. } => "leftover-bad-number",
        Self::Solver { .. } => "leftover-solver",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Lengths { .. } => {
                "List every material everywhere, 0 where it is lacking, with one tolerance each."
                    .into()
            }
            Self::BadNumber { .. } => {
                "Masses, parts, tolerances and traces are 0 or more and finite; a pot is above 0."
                    .into()
            }
            Self::Solver { .. } => "Offer fewer leftovers or pots at a time.".into(),
        }
    }
}

/// Puts as much of `shelf` as possible into `pots`; one entry a pot.
///
/// `heats` is the total that the stabilizer allows, `None` if not known; `trace` the maximum share in a pot of a material
/// that the target lacks. The caller leaves out what is too old.
///
/// # Errors
///
/// See [`LeftoverError`].
pub fn use_most(
    shelf: &[LeftoverParts<'_>],
    pots: &[NewPot<'_>],
    heats: Option<u32>,
    trace: Ratio,
) -> Result<Vec<Filled>, LeftoverError> {
    check(shelf, pots, trace)?;
    let shares: Vec<Vec<f64>> = shelf.iter().map(|l| unit(l.composition)).collect();
    let bounds: Vec<Bounds> = pots.iter().map(|pot| Bounds::new(pot, trace.value)).collect();
    let flows = solve(shelf, pots, &shares, &bounds, heats)?;
    let kept = within_the_shelf(shelf, flows);
    let mut filled = Vec::with_capacity(pots.len());
    for (bounds, from) in bounds.iter().zip(kept) {
        filled.push(bounds.fill(shelf, &shares, from)?);
    }
    Ok(filled)
}

/// One pot with these masses of each leftover, and the rest of it fresh. `trace` as in [`use_most`].
///
/// # Errors
///
/// See [`LeftoverError`]; the pot is out of its tolerances with these masses.
pub fn fill(
    shelf: &[LeftoverParts<'_>],
    pot: &NewPot<'_>,
    from: &[Mass],
    trace: Ratio,
) -> Result<Filled, LeftoverError> {
    check(shelf, core::slice::from_ref(pot), trace)?;
    if from.len() != shelf.len() {
        return Err(LeftoverError::Lengths { what: "Left-over", index: from.len() });
    }
    if let Some((index, m)) = from.iter().enumerate().find(|(_, m)| !is_mass(**m)) {
        return Err(LeftoverError::BadNumber { what: "Left-over", index, value: m.get::<gram>() });
    }
    let shares: Vec<Vec<f64>> = shelf.iter().map(|l| unit(l.composition)).collect();
    Bounds::new(pot, trace.value).fill(shelf, &shares, from.iter().map(|m| kg(*m)).collect())
}

/// Allowed mass of each material in one pot, kg.
struct Bounds {
    target: Vec<f64>,
    low: Vec<f64>,
    high: Vec<f64>,
    total: f64,
}

impl Bounds {
    fn new(pot: &NewPot<'_>, trace: f64) -> Self {
        let total = kg(pot.mass);
        let target: Vec<f64> = unit(pot.composition).iter().map(|t| t * total).collect();
        let each = || target.iter().zip(pot.tolerance);
        let low = each().map(|(t, tau)| t * (1.0 - tau.value).max(0.0)).collect();
        let high = each()
            .map(|(t, tau)| if *t > 0.0 { t * (1.0 + tau.value) } else { trace * total })
            .collect();
        Self { target, low, high, total }
    }

    /// Whether a leftover of these shares can go in: the pot may hold every material in it.
    fn takes(&self, shares: &[f64]) -> bool {
        self.high.iter().zip(shares).all(|(high, share)| *high > 0.0 || *share == 0.0)
    }

    /// Adds the rows of this pot, in units of `size`; `row` has the variable of each leftover.
    fn limit(&self, program: &mut Program, row: &[Option<usize>], shares: &[Vec<f64>], size: f64) {
        let mut above = Vec::new();
        for (i, (low, high)) in self.low.iter().zip(&self.high).enumerate() {
            let brings = row.iter().zip(shares).filter_map(|(variable, shares)| {
                Some(((*variable)?, *shares.get(i).filter(|share| **share > 0.0)?))
            });
            let mut terms: Vec<(usize, f64)> = brings.collect();
            // A material of which there is little is in units of its own.
            let unit = terms.iter().fold(0.0_f64, |most, (_, share)| most.max(*share));
            if unit == 0.0 {
                continue;
            }
            terms.iter_mut().for_each(|(_, share)| *share /= unit);
            if high > low {
                let variable = program.variable((high - low) / (size * unit));
                terms.push((variable, -1.0));
                above.push((variable, unit));
            }
            program.rows.push(AtMost { terms, most: low / (size * unit) });
        }
        if !above.is_empty() {
            let least: f64 = self.low.iter().sum();
            program.rows.push(AtMost { terms: above, most: (self.total - least).max(0.0) / size });
        }
    }

    /// Mass of each material in the pot with `used` of it from leftovers, as near to the target as this allows; `None`
    /// if it is out of tolerance.
    fn contents(&self, used: &[f64]) -> Option<Vec<f64>> {
        let slack = ROUNDING * self.total;
        let floors: Vec<f64> = used.iter().zip(&self.low).map(|(u, low)| u.max(*low)).collect();
        let over = used.iter().zip(&self.high).any(|(u, high)| *u > high + slack);
        if over || floors.iter().sum::<f64>() > self.total + slack {
            return None;
        }
        // Every material at the same share of its target, floors and tolerances apart: the sum rises with that share, and at 1
        // it is the total or more, so it is found by halving.
        let at = |level: f64| {
            let parts = self.target.iter().zip(&floors).zip(&self.high);
            parts.map(move |((t, floor), high)| (level * t).min(*high).max(*floor))
        };
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..100 {
            let middle = 0.5 * (low + high);
            if at(middle).sum::<f64>() < self.total { low = middle } else { high = middle }
        }
        Some(at(high).collect())
    }

    /// Makes the pot from `from`, kg of each leftover, cut back by what rounding took over.
    fn fill(
        &self,
        shelf: &[LeftoverParts<'_>],
        shares: &[Vec<f64>],
        from: Vec<f64>,
    ) -> Result<Filled, LeftoverError> {
        let used = self.used(shares, &from);
        let scaled = |s: f64| used.iter().map(|u| u * s).collect::<Vec<f64>>();
        let (mut low, mut high) = (0.0, 1.0);
        if self.contents(&used).is_some() {
            low = 1.0;
        }
        while low < 1.0 && high - low > 1e-13 {
            let middle = 0.5 * (low + high);
            if self.contents(&scaled(middle)).is_some() { low = middle } else { high = middle }
        }
        if low < 1.0 - 1e-9 {
            return Err(LeftoverError::Solver { why: "a pot is out of tolerance".into() });
        }
        let from: Vec<f64> = from.iter().map(|x| x * low).collect();
        let used = self.used(shares, &from);
        let contents = self
            .contents(&used)
            .ok_or_else(|| LeftoverError::Solver { why: "a pot is out of tolerance".into() })?;
        let fresh = contents.iter().zip(&used).map(|(f, u)| mass((f - u).max(0.0)));
        let off = contents
            .iter()
            .zip(&self.target)
            .map(|(f, t)| Ratio::new::<ratio>(if *t > 0.0 { f / t - 1.0 } else { 0.0 }));
        let spent = shelf.iter().zip(&from).filter(|(_, x)| **x > 0.0).map(|(l, _)| l.heats);
        Ok(Filled {
            fresh: fresh.collect(),
            heats_spent: spent.max().unwrap_or(0),
            off: off.collect(),
            from: from.into_iter().map(mass).collect(),
        })
    }

    /// Mass of each material that `from` brings.
    fn used(&self, shares: &[Vec<f64>], from: &[f64]) -> Vec<f64> {
        let mut used = vec![0.0; self.target.len()];
        for (shares, x) in shares.iter().zip(from) {
            for (u, a) in used.iter_mut().zip(shares) {
                *u += a * x;
            }
        }
        used
    }
}

/// Mass of each leftover in each pot, kg.
fn solve(
    shelf: &[LeftoverParts<'_>],
    pots: &[NewPot<'_>],
    shares: &[Vec<f64>],
    bounds: &[Bounds],
    heats: Option<u32>,
) -> Result<Vec<Vec<f64>>, LeftoverError> {
    let size = bounds.iter().fold(0.0_f64, |most, b| most.max(b.total));
    if size == 0.0 {
        return Ok(Vec::new());
    }
    let mut program = Program::default();
    let mut flows: Vec<Vec<Option<usize>>> = Vec::with_capacity(pots.len());
    for (pot, bounds) in pots.iter().zip(bounds) {
        let is_allowed = |l: &LeftoverParts<'_>| {
            heats.is_none_or(|allowed| l.heats.saturating_add(pot.heats) <= allowed)
        };
        let mut flow = |(l, shares): (&LeftoverParts<'_>, &Vec<f64>)| {
            let most = kg(l.mass).min(bounds.total) / size;
            let fits = is_allowed(l) && most > 0.0 && bounds.takes(shares);
            fits.then(|| program.variable(most))
        };
        let row: Vec<Option<usize>> = shelf.iter().zip(shares).map(&mut flow).collect();
        bounds.limit(&mut program, &row, shares, size);
        flows.push(row);
    }
    for (j, l) in shelf.iter().enumerate() {
        let uses = flows.iter().filter_map(|row| row.get(j).copied().flatten());
        let terms = uses.map(|variable| (variable, 1.0)).collect();
        program.rows.push(AtMost { terms, most: kg(l.mass) / size });
    }

    let mut by_key: Vec<usize> = (0..shelf.len()).collect();
    by_key.sort_by_key(|&j| (shelf.get(j).map(|l| l.key), j));
    let mut used = vec![0.0; program.upper.len()];
    let mut early = used.clone();
    let pairs = shelf.len().saturating_mul(pots.len());
    let in_order = by_key.iter().flat_map(|&j| flows.iter().map(move |row| row.get(j)));
    for (place, variable) in in_order.enumerate() {
        let Some(&Some(variable)) = variable else { continue };
        used.get_mut(variable).into_iter().for_each(|worth| *worth = 1.0);
        let worth = 1.0 - place as f64 / pairs as f64;
        early.get_mut(variable).into_iter().for_each(|own| *own = worth);
    }
    let values = program
        .maximize(&[used, early])
        .map_err(|error| LeftoverError::Solver { why: error.to_string() })?;
    let value = |v: &Option<usize>| v.and_then(|v| values.get(v)).map_or(0.0, |x| x * size);
    Ok(flows.iter().map(|row| row.iter().map(value).collect()).collect())
}

/// Takes back what is more than the shelf has.
fn within_the_shelf(shelf: &[LeftoverParts<'_>], mut flows: Vec<Vec<f64>>) -> Vec<Vec<f64>> {
    for (j, l) in shelf.iter().enumerate() {
        let used: f64 = flows.iter().filter_map(|row| row.get(j)).sum();
        if used <= kg(l.mass) {
            continue;
        }
        let back = kg(l.mass) / used;
        // Cut back to what is left as well: a product may be rounded up.
        let mut rest = kg(l.mass);
        for x in flows.iter_mut().filter_map(|row| row.get_mut(j)) {
            *x = (*x * back).min(rest);
            rest -= *x;
        }
    }
    flows
}

fn check(
    shelf: &[LeftoverParts<'_>],
    pots: &[NewPot<'_>],
    trace: Ratio,
) -> Result<(), LeftoverError> {
    let materials = pots.first().map_or(0, |pot| pot.composition.len());
    let bad = |what, index, value| Err(LeftoverError::BadNumber { what, index, value });
    if !is_part(trace.value) {
        return bad("Trace", 0, trace.value);
    }
    let left_overs = shelf.iter().map(|l| (l.composition, l.mass)).enumerate();
    let new = pots.iter().map(|p| (p.composition, p.mass)).enumerate();
    let all = left_overs.map(|x| ("Left-over", x)).chain(new.map(|x| ("Pot", x)));
    for (what, (index, (composition, m))) in all {
        if !is_mass(m) || (what == "Pot" && kg(m) == 0.0) {
            return bad(what, index, m.get::<gram>());
        }
        if let Some(&part) = composition.iter().find(|part| !is_part(**part)) {
            return bad(what, index, part);
        }
        let filled = composition.iter().sum::<f64>().is_normal();
        if !filled || (!pots.is_empty() && composition.len() != materials) {
            return Err(LeftoverError::Lengths { what, index });
        }
    }
    for (index, pot) in pots.iter().enumerate() {
        if let Some(tolerance) = pot.tolerance.iter().find(|tau| !is_part(tau.value)) {
            return bad("Pot", index, tolerance.value);
        }
        if pot.tolerance.len() != materials {
            return Err(LeftoverError::Lengths { what: "Pot", index });
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn g(x: f64) -> Mass {
        Mass::new::<gram>(x)
    }

    fn per(x: f64) -> Ratio {
        Ratio::new::<ratio>(x)
    }

    fn shelf(composition: &[f64], mass: f64, heats: u32) -> LeftoverParts<'_> {
        LeftoverParts { composition, mass: g(mass), heats, key: 0 }
    }

    const EXACT: &[Ratio] = &[];

    fn pot<'a>(composition: &'a [f64], tolerance: &'a [Ratio], mass: f64) -> NewPot<'a> {
        NewPot { composition, tolerance, mass: g(mass), heats: 1 }
    }

    fn near(got: Mass, expected: f64) {
        assert!(
            (got.get::<gram>() - expected).abs() < 1e-3,
            "{} g for {expected} g",
            got.get::<gram>()
        );
    }

    #[test]
    fn a_stronger_mix_goes_in_as_far_as_its_dye_goes() {
        // Leftover with 4 % of dye into 200 g of 1 %: 2 g of dye are in 50 g.
        let left = [shelf(&[96.0, 4.0], 120.0, 1)];
        let exact = [per(0.0), per(0.0)];
        let filled = use_most(&left, &[pot(&[99.0, 1.0], &exact, 200.0)], None, per(0.0)).unwrap();
        near(filled[0].from[0], 50.0);
        near(filled[0].fresh[0], 150.0);
        near(filled[0].fresh[1], 0.0);
        // With a tenth of tolerance on the dye: 2.2 g are in 55 g.
        let tenth = [per(0.1), per(0.1)];
        let filled = use_most(&left, &[pot(&[99.0, 1.0], &tenth, 200.0)], None, per(0.0)).unwrap();
        near(filled[0].from[0], 55.0);
        assert!((filled[0].off[1].value - 0.1).abs() < 1e-5);
    }

    #[test]
    fn spent_heats_are_carried_on_and_limit() {
        let left = [shelf(&[1.0, 0.0], 50.0, 1), shelf(&[1.0, 0.0], 50.0, 3)];
        let exact = [per(0.0), per(0.0)];
        let pots = [pot(&[9.0, 1.0], &exact, 200.0)];
        let filled = use_most(&left, &pots, Some(3), per(0.0)).unwrap();
        near(filled[0].from[0], 50.0);
        assert_eq!((filled[0].from[1], filled[0].heats_spent), (g(0.0), 1));
        let filled = use_most(&left, &pots, Some(4), per(0.0)).unwrap();
        near(filled[0].from[1], 50.0);
        assert_eq!(filled[0].heats_spent, 3);
    }

    #[test]
    fn the_oldest_goes_first_and_into_the_first_pot() {
        let young = LeftoverParts { key: 9, ..shelf(&[1.0], 60.0, 0) };
        let old = LeftoverParts { key: 2, ..shelf(&[1.0], 60.0, 0) };
        let exact = [per(0.0)];
        let pots = [pot(&[1.0], &exact, 40.0), pot(&[1.0], &exact, 50.0)];
        let filled = use_most(&[young, old], &pots, None, per(0.0)).unwrap();
        near(filled[0].from[1], 40.0);
        near(filled[1].from[1], 20.0);
        near(filled[1].from[0], 30.0);
    }

    #[test]
    fn a_foreign_material_is_kept_to_its_trace() {
        let left = [shelf(&[98.0, 0.0, 2.0], 500.0, 0)];
        let loose = [per(0.02); 3];
        let pots = [pot(&[99.0, 1.0, 0.0], &loose, 100.0)];
        near(use_most(&left, &pots, None, per(0.0)).unwrap()[0].from[0], 0.0);
        near(use_most(&left, &pots, None, per(0.001)).unwrap()[0].from[0], 5.0);
    }

    #[test]
    fn a_pot_is_filled_up_around_what_is_given() {
        // 50 g with 4 % of dye hold the 2 g that 200 g of 1 % want: the rest is base.
        let left = [shelf(&[96.0, 4.0], 120.0, 2)];
        let exact = [per(0.0), per(0.0)];
        let pot = pot(&[99.0, 1.0], &exact, 200.0);
        let filled = fill(&left, &pot, &[g(50.0)], per(0.0)).unwrap();
        near(filled.fresh[0], 150.0);
        near(filled.fresh[1], 0.0);
        assert_eq!(filled.heats_spent, 2);
        assert!(fill(&left, &pot, &[g(51.0)], per(0.0)).is_err());
        assert!(fill(&left, &pot, &[], per(0.0)).is_err());
        assert!(fill(&left, &pot, &[g(-1.0)], per(0.0)).is_err());
    }

    #[test]
    fn no_more_is_taken_than_is_there() {
        let one = [per(0.0)];
        for grams in 1..=300 {
            let there = g(f64::from(grams));
            let left = [shelf(&[1.0], f64::from(grams), 0)];
            let filled = use_most(&left, &[pot(&[1.0], &one, 700.0)], None, per(0.0)).unwrap();
            near(filled[0].from[0], f64::from(grams));
            assert!(filled[0].from[0] <= there, "{:?}", filled[0].from[0]);
        }
    }

    #[test]
    fn what_cannot_be_is_refused() {
        let one = [per(0.0)];
        let good = pot(&[1.0], &one, 10.0);
        assert!(use_most(&[shelf(&[1.0, 1.0], 1.0, 0)], &[good], None, per(0.0)).is_err());
        assert!(use_most(&[shelf(&[f64::NAN], 1.0, 0)], &[good], None, per(0.0)).is_err());
        assert!(use_most(&[shelf(&[1.0], -1.0, 0)], &[good], None, per(0.0)).is_err());
        assert!(use_most(&[], &[pot(&[1.0], EXACT, 1.0)], None, per(0.0)).is_err());
        assert!(use_most(&[], &[pot(&[1.0], &one, 0.0)], None, per(0.0)).is_err());
        assert_eq!(use_most(&[], &[good], None, per(0.0)).unwrap()[0].fresh, [g(10.0)]);
        assert!(use_most(&[shelf(&[1.0], 1.0, 0)], &[], None, per(0.0)).unwrap().is_empty());
    }

    #[test]
    fn a_pot_is_refused_for_one_material_too_much_and_for_all_together() {
        // A tenth either way of 198 and 2 g: 60 g at 4 % bring 2.4 g of dye where 2.2 g may be, though 178.2 g of base would do.
        let tenth = [per(0.1); 3];
        let left = [shelf(&[96.0, 4.0], 120.0, 0)];
        let dye = pot(&[99.0, 1.0], &tenth[..2], 200.0);
        assert!(fill(&left, &dye, &[g(55.0)], per(0.0)).is_ok());
        assert!(fill(&left, &dye, &[g(60.0)], per(0.0)).is_err());
        // 49.5 and 49.5 g are each allowed in 100 g of 45, 45 and 10; with the 9 g that the third needs they are 108 g.
        let left = [shelf(&[1.0, 1.0, 0.0], 200.0, 0)];
        let three = pot(&[45.0, 45.0, 10.0], &tenth, 100.0);
        assert!(fill(&left, &three, &[g(91.0)], per(0.0)).is_ok());
        assert!(fill(&left, &three, &[g(92.0)], per(0.0)).is_err());
        // A pot of micrograms is as strict.
        let left = [shelf(&[96.0, 4.0], 120e-6, 0)];
        let dye = pot(&[99.0, 1.0], &tenth[..2], 200e-6);
        assert!(fill(&left, &dye, &[g(55e-6)], per(0.0)).is_ok());
        assert!(fill(&left, &dye, &[g(60e-6)], per(0.0)).is_err());
    }

    #[test]
    fn what_rounding_takes_over_is_cut_back_and_no_more() {
        let left = [shelf(&[96.0, 4.0], 120.0, 2)];
        let exact = [per(0.0), per(0.0)];
        let pot = pot(&[99.0, 1.0], &exact, 200.0);
        let fits = fill(&left, &pot, &[g(49.0)], per(0.0)).unwrap();
        assert_eq!(fits.from, [g(49.0)]);
        let over = |share: f64| fill(&left, &pot, &[g(50.0 * (1.0 + share))], per(0.0));
        let cut = over(0.5e-9).unwrap().from[0].get::<gram>() / 50.0 - 1.0;
        // The pot may be off by 1e-12 of its 200 g: a part in 1e10 of 2 g of dye.
        assert!(cut.abs() < 2e-10, "{cut}");
        let refused = over(1.5e-9).unwrap_err();
        assert!(refused.to_string().contains("out of tolerance"), "{refused}");
        // Nothing of what was heated twice goes in.
        assert_eq!(fill(&left, &pot, &[g(0.0)], per(0.0)).unwrap().heats_spent, 0);
    }

    #[test]
    fn all_that_is_not_given_has_the_same_share_of_its_target() {
        // 2 kg of halves, any of which may be 0 to 2 kg: 1.5 kg of the first leave 0.5 kg of the second.
        let bounds =
            Bounds { target: vec![1.0; 2], low: vec![0.0; 2], high: vec![2.0; 2], total: 2.0 };
        let contents = bounds.contents(&[1.5, 0.0]).unwrap();
        assert!(contents[0] == 1.5 && (contents[1] - 0.5).abs() < 1e-15, "{contents:?}");
        // What is over by just the rounding passes.
        let bounds = Bounds { target: vec![1.0], low: vec![1.0], high: vec![1.0], total: 1.0 };
        assert_eq!(bounds.contents(&[1.0 + ROUNDING]), Some(vec![1.0 + ROUNDING]));
        assert_eq!(bounds.contents(&[1.0 + 2.0 * ROUNDING]), None);
    }

    #[test]
    fn a_foreign_material_is_not_off() {
        let left = [shelf(&[98.0, 0.0, 2.0], 500.0, 0)];
        let loose = [per(0.02); 3];
        let pots = [pot(&[99.0, 1.0, 0.0], &loose, 100.0)];
        let filled = use_most(&left, &pots, None, per(0.001)).unwrap();
        assert_eq!(filled[0].off[2], per(0.0));
    }

    #[test]
    fn more_than_the_shelf_has_is_shared_out() {
        let left = [LeftoverParts { mass: mass(3.0), ..shelf(&[1.0], 0.0, 0) }];
        let shared = |flows: &[f64]| -> Vec<f64> {
            let flows = flows.iter().map(|&x| vec![x]).collect();
            within_the_shelf(&left, flows).concat()
        };
        assert_eq!(shared(&[2.0, 2.0]), [1.5, 1.5]);
        assert_eq!(shared(&[2.0, 1.0]), [2.0, 1.0]);
        for n in 1..2000 {
            let n = f64::from(n);
            let taken = shared(&[3.0 + 1.0 / n, n / 7.0, n / 11.0]);
            let rest = taken.iter().fold(3.0, |rest, x| rest - x);
            assert!((0.0..1e-14).contains(&rest), "{n}: {taken:?}");
        }
    }

    #[test]
    fn size_and_strength_of_a_pot_change_no_share_of_it() {
        // In powers of two all numbers scale without rounding.
        let tenth = [per(0.125); 2];
        let used = |scale: f64| {
            let old = LeftoverParts { mass: mass(0.375 * scale), ..shelf(&[96.0, 4.0], 0.0, 1) };
            let new =
                LeftoverParts { mass: mass(0.25 * scale), key: 1, ..shelf(&[98.0, 2.0], 0.0, 2) };
            let pots = [0.5, 0.75]
                .map(|x| NewPot { mass: mass(x * scale), ..pot(&[99.0, 1.0], &tenth, 0.0) });
            let filled = use_most(&[old, new], &pots, None, per(0.0)).unwrap();
            filled.iter().flat_map(|f| &f.from).map(|m| m.value / scale).collect::<Vec<_>>()
        };
        let tiny = 1.0 / 1_099_511_627_776.0;
        assert_eq!(used(tiny), used(1.0));
        // A dye of a part in a billion limits as any other: 200 g of a tenth of the strength take 20 g.
        let exact = [per(0.0), per(0.0)];
        let left = [shelf(&[1.0, 1e-9], 120.0, 0)];
        let filled = use_most(&left, &[pot(&[1.0, 1e-10], &exact, 200.0)], None, per(0.0)).unwrap();
        near(filled[0].from[0], 20.0);
    }

    #[test]
    fn refusals_name_what_and_help() {
        let one = [per(0.0)];
        let refused = use_most(&[], &[pot(&[1.0], &one, 10.0)], None, per(-0.5)).unwrap_err();
        assert_eq!(refused, LeftoverError::BadNumber { what: "Trace", index: 0, value: -0.5 });
        assert_eq!(refused.code(), "leftover-bad-number");
        assert!(refused.help().contains("0 or more"));
    }

    proptest! {
        #![proptest_config(ProptestConfig::with_cases(64))]
        #[test]
        fn every_pot_comes_out_within_its_tolerance(
            left in proptest::collection::vec((proptest::array::uniform3(0.0_f64..1.0), 1.0_f64..300.0), 0..5),
            new in proptest::collection::vec(
                (proptest::array::uniform3(0.01_f64..1.0), 50.0_f64..500.0, 0.0_f64..0.2), 1..4),
        ) {
            prop_assume!(left.iter().all(|(c, _)| c.iter().sum::<f64>() > 0.0));
            let shelf: Vec<_> = left.iter().map(|(c, m)| shelf(c, *m, 0)).collect();
            let tolerances: Vec<[Ratio; 3]> = new.iter().map(|n| [per(n.2); 3]).collect();
            let pots: Vec<_> =
                new.iter().zip(&tolerances).map(|((c, m, _), t)| pot(c, t, *m)).collect();
            let filled = use_most(&shelf, &pots, None, per(0.0)).unwrap();
            for (p, (pot, filled)) in new.iter().zip(&filled).enumerate() {
                let fresh: f64 = filled.fresh.iter().map(|m| m.get::<gram>()).sum();
                let from: f64 = filled.from.iter().map(|m| m.get::<gram>()).sum();
                prop_assert!((fresh + from - pot.1).abs() < 1e-9 * pot.1, "pot {p}");
                prop_assert!(filled.fresh.iter().chain(&filled.from).all(|m| m.value >= 0.0));
                for off in &filled.off {
                    prop_assert!(off.value.abs() <= pot.2 + 1e-9);
                }
            }
            for (j, l) in left.iter().enumerate() {
                let used: f64 = filled.iter().map(|f| f.from[j].get::<gram>()).sum();
                prop_assert!(used <= l.1 * (1.0 + 4.0 * f64::EPSILON));
            }
        }
    }
}

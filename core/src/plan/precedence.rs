//! Which formula can follow which in one pot, by adding only.
//!
//! A formula is its ratios r to base. Without fresh base, A can become B iff both are on the
//! same base (blend) and r_i,A ≤ r_i,B for every material i: a partial order. With fresh base, A
//! can become B iff B holds every material that A holds: a preorder, whose equals are condensed.
//!
//! Ratios are exact rationals, and of each material only their *rank* is compared: equality and
//! ≤ are then exact and transitive, which no comparison within a tolerance is. The same formula
//! written per 1, 2 or 3 cups is the same formula.

use alloc::borrow::Cow;
use alloc::vec;
use alloc::vec::Vec;
use core::cmp::Ordering;

use num_bigint::BigInt;
use num_traits::{One, Signed, ToPrimitive, Zero};

use super::bits::Bits;
use super::order::{MOST_NODES, Order, OrderError};
use super::places::Places;
use crate::codes::codes;
use crate::fault::Diagnose;

/// An exact rational number.
pub type Exact = num_rational::BigRational;

/// Errors of a formula or a list of formulas.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum PrecedenceError {
    /// A formula without base has no ratios to base.
    #[error("The formula holds no base.")]
    NoBase,
    /// A share of base or a dose is below 0, or its denominator is not above 0.
    #[error("Material {material} has a dose below 0.")]
    Negative {
        /// Index of the material.
        material: usize,
    },
    /// A material is in one formula twice.
    #[error("Material {material} is in the formula twice.")]
    Twice {
        /// Index of the material.
        material: usize,
    },
    /// A ratio is beyond what a mass can be computed with.
    #[error("The dose of material {material} is out of range.")]
    OutOfRange {
        /// Index of the material.
        material: usize,
    },
    /// Too many formulas.
    #[error(transparent)]
    Order(#[from] OrderError),
}

impl Diagnose for PrecedenceError {
    codes! {
        Self::NoBase => "precedence-no-base",
        Self::Negative { .. } => "precedence-negative",
        Self::Twice { .. } => "precedence-twice",
        Self::OutOfRange { .. } => "precedence-out-of-range",
        Self::Order(order) => order.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoBase => "Give at least one base with a share above 0.".into(),
            Self::Negative { .. } => "Give a dose of 0 or more.".into(),
            Self::Twice { .. } => "Give one dose for each material.".into(),
            Self::OutOfRange { .. } => {
                "Give a dose of 1e-100 to 1e100 times the base, or 0.".into()
            }
            Self::Order(order) => order.help(),
        }
    }
}

/// Whether base may be added to a pot that has been drawn from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum FreshBase {
    /// No: what is in the pot is all the base it gets.
    #[default]
    Off,
    /// Yes: base is a material like the others.
    On,
}

/// Composition of a formula: its base or blend of bases, and the doses to it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Composition {
    /// Base materials with their shares of all base, rising by material; the shares add up to 1.
    base: Vec<(usize, Exact)>,
    /// Materials with their mass per mass of base, rising by material; none is 0.
    doses: Vec<(usize, Exact)>,
}

impl Composition {
    /// `base`: each base (index of its material) and its part of the blend, on any scale.
    /// `doses`: each material and its mass per mass of base. Zeros are left out.
    ///
    /// # Errors
    ///
    /// No base, a number below 0, a material given twice, a ratio not 0
    /// beyond 1e-100 to 1e100.
    pub fn new(
        base: impl IntoIterator<Item = (usize, Exact)>,
        doses: impl IntoIterator<Item = (usize, Exact)>,
    ) -> Result<Self, PrecedenceError> {
        let mut base = checked(base)?;
        let doses = checked(doses)?;
        let mut materials: Vec<usize> = base.iter().chain(&doses).map(|&(m, _)| m).collect();
        materials.sort_unstable();
        let pairs = materials.iter().zip(materials.iter().skip(1));
        if let Some((&material, _)) = pairs.into_iter().find(|(a, b)| a == b) {
            return Err(PrecedenceError::Twice { material });
        }
        match base.as_mut_slice() {
            [] => return Err(PrecedenceError::NoBase),
            [(_, only)] => *only = Exact::one(),
            parts => {
                let sum: Exact = parts.iter().map(|(_, part)| part).sum();
                parts.iter_mut().for_each(|(_, part)| *part = &*part / &sum);
            }
        }
        Ok(Self { base, doses })
    }

    /// Shares of the finished mix by mass, as the nearest numbers to compute with.
    fn shares(&self) -> Vec<(usize, f64)> {
        let ratios = || self.base.iter().chain(&self.doses);
        let total: f64 = ratios().map(|(_, r)| approximate(r)).sum();
        let mut shares: Vec<_> = ratios().map(|(m, r)| (*m, approximate(r) / total)).collect();
        shares.sort_unstable_by_key(|&(material, _)| material);
        shares
    }
}

/// Rising by material, without zeros.
fn checked(
    list: impl IntoIterator<Item = (usize, Exact)>,
) -> Result<Vec<(usize, Exact)>, PrecedenceError> {
    let mut kept = Vec::new();
    for (material, ratio) in list {
        if ratio.numer().is_negative() || !ratio.denom().is_positive() {
            return Err(PrecedenceError::Negative { material });
        }
        if ratio.is_zero() {
            continue;
        }
        // Beyond these bounds the masses of a mix are no longer normal numbers.
        if !(1e-100..1e100).contains(&approximate(&ratio)) {
            return Err(PrecedenceError::OutOfRange { material });
        }
        kept.push((material, ratio));
    }
    kept.sort_by_key(|&(material, _)| material);
    Ok(kept)
}

/// Within 3 units in the last place: two roundings and a division.
fn approximate(ratio: &Exact) -> f64 {
    let number = |n: &BigInt| n.to_f64().unwrap_or(f64::INFINITY);
    let (numerator, denominator) = (number(ratio.numer()), number(ratio.denom()));
    if numerator.is_finite() && denominator.is_finite() {
        numerator / denominator
    } else {
        ratio.to_f64().unwrap_or(f64::NAN)
    }
}

/// The exact order of two ratios above 0, decided by `f64` where these differ by more than they
/// can be wrong, by cross-multiplication where not.
fn compare(a: (f64, &Exact), b: (f64, &Exact)) -> Ordering {
    if (a.0 - b.0).abs() > 1e-15 * 8.0 * a.0.max(b.0) {
        return a.0.total_cmp(&b.0);
    }
    let (a, b) = (a.1, b.1);
    if a.numer() == b.numer() && a.denom() == b.denom() {
        return Ordering::Equal;
    }
    (a.numer() * b.denom()).cmp(&(b.numer() * a.denom()))
}

/// Which of a list of formulas can follow which.
#[derive(Debug, Clone)]
pub struct Precedence {
    fresh_base: FreshBase,
    mixes: Vec<Mix>,
    /// For each formula, all that can follow it, itself among them.
    followers: Vec<Bits>,
    /// For each formula, the first one that is equal to it.
    canonical: Vec<usize>,
    /// For each formula, its blend of bases.
    blend: Vec<usize>,
    /// For each formula, its node in the order.
    node: Vec<usize>,
    order: Order,
}

#[derive(Debug, Clone)]
struct Mix {
    /// Share of each material by mass, rising by material.
    shares: Vec<(usize, f64)>,
    base: f64,
}

impl Precedence {
    /// Compares all `formulas`.
    ///
    /// # Errors
    ///
    /// More than [`MOST_NODES`] formulas.
    pub fn new(formulas: &[Composition], fresh_base: FreshBase) -> Result<Self, PrecedenceError> {
        if formulas.len() > MOST_NODES {
            return Err(OrderError::TooMany { count: formulas.len() }.into());
        }
        let ranked = Ranked::new(formulas);
        let followers = match fresh_base {
            FreshBase::Off => ranked.with_no_less(),
            FreshBase::On => ranked.with_all_materials(),
        };
        let (node, order) = condense(&followers);
        let mixes = formulas
            .iter()
            .map(|f| Mix {
                shares: f.shares(),
                base: 1.0 / (1.0 + f.doses.iter().map(|(_, r)| approximate(r)).sum::<f64>()),
            })
            .collect();
        let canonical = ranked.canonical();
        Ok(Self { fresh_base, mixes, followers, canonical, blend: ranked.blend, node, order })
    }

    /// Number of formulas.
    #[must_use]
    pub fn formulas(&self) -> usize {
        self.mixes.len()
    }

    /// Whether base may be added to a pot that has been drawn from.
    #[must_use]
    pub fn fresh_base(&self) -> FreshBase {
        self.fresh_base
    }

    /// Whether a pot of formula `a` can become formula `b` by adding only; every formula can
    /// follow itself.
    #[must_use]
    pub fn can_follow(&self, a: usize, b: usize) -> bool {
        self.followers.get(a).is_some_and(|row| row.contains(b))
    }

    /// The first formula of the list that is exactly equal to `formula`.
    #[must_use]
    pub fn canonical(&self, formula: usize) -> Option<usize> {
        self.canonical.get(formula).copied()
    }

    /// The node of `formula` in [`order`](Self::order). Without fresh base, formulas share a node iff
    /// they are equal; with it, iff they hold the same materials.
    #[must_use]
    pub fn node(&self, formula: usize) -> Option<usize> {
        self.node.get(formula).copied()
    }

    /// The strict order of the nodes: those of different nodes that can follow each other.
    #[must_use]
    pub fn order(&self) -> &Order {
        &self.order
    }

    /// Mass of formula `a` that is in each mass of formula `b` made from as much of it as can be:
    /// min t_i/a_i over the materials of `a`, t and a the shares by mass. Without fresh base that is
    /// the base's, and 1 between equal formulas. `None` if `b` cannot follow.
    #[must_use]
    pub fn carry(&self, a: usize, b: usize) -> Option<f64> {
        if !self.can_follow(a, b) {
            return None;
        }
        if self.canonical(a) == self.canonical(b) {
            return Some(1.0);
        }
        let (from, to) = (self.mixes.get(a)?, self.mixes.get(b)?);
        if self.fresh_base == FreshBase::Off {
            return Some(to.base / from.base);
        }
        let mut targets = to.shares.iter();
        let mut least = f64::INFINITY;
        for (material, share) in &from.shares {
            let (_, target) = targets.find(|(m, _)| m == material)?;
            least = least.min(target / share);
        }
        Some(least)
    }

    /// Share of base in the finished mix, by mass.
    #[must_use]
    pub fn base_share(&self, formula: usize) -> Option<f64> {
        self.mixes.get(formula).map(|mix| mix.base)
    }

    /// Shares of the finished mix by mass, in a row of `materials` entries.
    #[must_use]
    pub fn shares(&self, formula: usize, materials: usize) -> Option<Vec<f64>> {
        let mut row = vec![0.0; materials];
        for &(material, share) in &self.mixes.get(formula)?.shares {
            *row.get_mut(material)? = share;
        }
        Some(row)
    }

    /// For each formula, all that it can follow or that can follow it.
    pub(super) fn partners(&self) -> Vec<Bits> {
        let mut partners = self.followers.clone();
        for (formula, row) in self.followers.iter().enumerate() {
            for follower in row.iter() {
                partners.get_mut(follower).into_iter().for_each(|p| p.insert(formula));
            }
        }
        partners
    }

    /// The blend of bases of `formula`: formulas on equal blends have equal numbers.
    #[must_use]
    pub fn blend(&self, formula: usize) -> Option<usize> {
        self.blend.get(formula).copied()
    }
}

/// Each formula with the rank of its doses among all formulas' doses of that material.
struct Ranked {
    /// Base blends: equal numbers, equal blends.
    blend: Vec<usize>,
    base: Vec<Vec<(usize, u32)>>,
    doses: Vec<Vec<(usize, u32)>>,
}

impl Ranked {
    fn new(formulas: &[Composition]) -> Self {
        let base = ranks(formulas.iter().map(|f| f.base.as_slice()));
        let doses = ranks(formulas.iter().map(|f| f.doses.as_slice()));
        let (mut places, mut blends) = (Places::default(), 0);
        let mut blend = Vec::with_capacity(base.len());
        for parts in &base {
            let place = places.get_or(key(parts), blends);
            blends = blends.max(place.saturating_add(1));
            blend.push(place);
        }
        Self { blend, base, doses }
    }

    fn canonical(&self) -> Vec<usize> {
        let mut first = Places::default();
        let keys = self.blend.iter().zip(&self.doses).map(|(&blend, doses)| {
            let mut key = key(doses);
            key.push(blend as u64);
            key
        });
        keys.enumerate().map(|(formula, key)| first.get_or(key, formula)).collect()
    }

    /// For each formula, those on the same blend with no less of any material.
    fn with_no_less(&self) -> Vec<Bits> {
        let count = self.blend.len();
        let mut rows = with_all(count, self.blend.iter().copied().zip(0..).collect());
        let mut all: Vec<(usize, u32, usize)> = Vec::new();
        for (formula, doses) in self.doses.iter().enumerate() {
            all.extend(doses.iter().map(|&(material, rank)| (material, rank, formula)));
        }
        all.sort_unstable();
        for of_one in all.chunk_by(|a, b| a.0 == b.0) {
            let mut no_less = Bits::empty(count);
            for equal in of_one.chunk_by(|a, b| a.1 == b.1).rev() {
                equal.iter().for_each(|&(.., formula)| no_less.insert(formula));
                for &(.., formula) in equal {
                    rows.get_mut(formula).into_iter().for_each(|row| row.intersect(&no_less));
                }
            }
        }
        rows
    }

    /// For each formula, those that hold all of its materials.
    fn with_all_materials(&self) -> Vec<Bits> {
        let held = self.base.iter().zip(&self.doses).enumerate();
        let pairs = held.flat_map(|(f, (b, d))| b.iter().chain(d).map(move |&(m, _)| (m, f)));
        with_all(self.blend.len(), pairs.collect())
    }
}

/// Materials and their ranks as a key.
fn key(ranks: &[(usize, u32)]) -> Vec<u64> {
    ranks.iter().flat_map(|&(material, rank)| [material as u64, u64::from(rank)]).collect()
}

/// For each formula, the formulas that have every property that it has; `pairs` are (property,
/// formula).
fn with_all(count: usize, mut pairs: Vec<(usize, usize)>) -> Vec<Bits> {
    let mut rows = vec![Bits::full(count); count];
    pairs.sort_unstable();
    for having in pairs.chunk_by(|a, b| a.0 == b.0) {
        let mut set = Bits::empty(count);
        having.iter().for_each(|&(_, formula)| set.insert(formula));
        for &(_, formula) in having {
            rows.get_mut(formula).into_iter().for_each(|row| row.intersect(&set));
        }
    }
    rows
}

/// Replaces each ratio by its rank among all ratios of its material: 0 for the smallest.
fn ranks<'a>(lists: impl Iterator<Item = &'a [(usize, Exact)]>) -> Vec<Vec<(usize, u32)>> {
    let mut ranked = Vec::new();
    let mut all: Vec<(usize, (f64, &Exact), usize)> = Vec::new();
    for (formula, list) in lists.enumerate() {
        ranked.push(Vec::with_capacity(list.len()));
        all.extend(list.iter().map(|(m, ratio)| (*m, (approximate(ratio), ratio), formula)));
    }
    all.sort_unstable_by(|a, b| a.0.cmp(&b.0).then_with(|| compare(a.1, b.1)));
    for of_one in all.chunk_by(|a, b| a.0 == b.0) {
        let equal = of_one.chunk_by(|a, b| compare(a.1, b.1).is_eq());
        for (rank, equal) in (0_u32..).zip(equal) {
            for &(material, _, formula) in equal {
                let doses: Option<&mut Vec<_>> = ranked.get_mut(formula);
                doses.into_iter().for_each(|d| d.push((material, rank)));
            }
        }
    }
    ranked
}

/// The node of each formula, and the order of the nodes.
fn condense(followers: &[Bits]) -> (Vec<usize>, Order) {
    let mutual = |a: usize, b: usize| followers.get(b).is_some_and(|row| row.contains(a));
    let mut firsts: Vec<usize> = Vec::new();
    let mut node: Vec<usize> = Vec::new();
    for (formula, row) in followers.iter().enumerate() {
        let first = row.iter().take_while(|&f| f < formula).find(|&f| mutual(formula, f));
        let number = first.and_then(|f| node.get(f).copied());
        node.push(number.unwrap_or(firsts.len()));
        if number.is_none() {
            firsts.push(formula);
        }
    }
    let mut rows = Vec::with_capacity(firsts.len());
    for (own, &first) in firsts.iter().enumerate() {
        let mut row = Bits::empty(firsts.len());
        for follower in followers.get(first).into_iter().flat_map(Bits::iter) {
            node.get(follower).into_iter().for_each(|&n| row.insert(n));
        }
        row.remove(own);
        rows.push(row);
    }
    (node, Order::from_closed_rows(rows))
}

#[cfg(test)]
mod tests {
    use super::*;
    use alloc::string::ToString;
    use proptest::prelude::*;

    fn exact(n: i64, d: i64) -> Exact {
        Exact::new(n.into(), d.into())
    }

    /// On base 0: material i (from 1) in `doses[i - 1]` thousandths.
    fn formula(doses: &[i64]) -> Composition {
        let doses = doses.iter().enumerate().map(|(i, &d)| (i + 1, exact(d, 1000)));
        Composition::new([(0, exact(1, 1))], doses).unwrap()
    }

    #[test]
    fn the_same_formula_per_1_2_or_3_cups_is_the_same() {
        // 32 drops of 0.044 g to a cup of 243.685... g, times 1, 2, 3: thirds and sevenths make
        // the f64 quotients differ in the last place.
        let per = |cups: i64| {
            let dose = exact(32 * cups, 1) * exact(44, 1000) / (exact(cups, 1) * exact(1706, 7));
            Composition::new([(0, exact(cups, 3))], [(1, dose)]).unwrap()
        };
        let formulas = [per(1), per(2), per(3)];
        let p = Precedence::new(&formulas, FreshBase::Off).unwrap();
        assert_eq!((p.node(1), p.node(2), p.order().len()), (Some(0), Some(0), 1));
        assert!(p.can_follow(2, 0) && p.can_follow(0, 2));
        assert_eq!(p.canonical(2), Some(0));
        assert_eq!(p.carry(2, 1), Some(1.0));
    }

    #[test]
    fn quotients_that_round_to_the_wrong_order_are_compared_exactly() {
        let less = exact(202_857_142_857_142_931, 4_474_468_113_431_524);
        let more = exact(710_000_000_000_000_259, 15_660_638_397_010_334);
        let of = |ratio: &Exact| approximate(ratio);
        assert!(less < more && of(&less) > of(&more));
        assert_eq!(compare((of(&less), &less), (of(&more), &more)), Ordering::Less);
    }

    #[test]
    fn one_part_in_1e30_makes_two_formulas() {
        let tiny = Exact::new(1.into(), BigInt::from(10).pow(30));
        let more = Composition::new([(0, exact(1, 1))], [(1, exact(1, 10) + tiny)]).unwrap();
        let p = Precedence::new(&[formula(&[100]), more], FreshBase::Off).unwrap();
        assert!(p.can_follow(0, 1) && !p.can_follow(1, 0));
        assert_eq!(p.order().len(), 2);
    }

    #[test]
    fn a_salted_formula_follows_its_plain_one_and_not_back() {
        let p = Precedence::new(&[formula(&[5, 0]), formula(&[5, 250])], FreshBase::Off).unwrap();
        assert!(p.can_follow(0, 1) && !p.can_follow(1, 0));
        let carry = p.carry(0, 1).unwrap();
        assert!((carry - 1.005 / 1.255).abs() < 1e-15, "{carry}");
        assert_eq!(p.carry(1, 0), None);
    }

    #[test]
    fn blends_must_be_the_same_without_fresh_base() {
        let blend = |soft: i64, hard: i64| {
            Composition::new([(0, exact(soft, 1)), (1, exact(hard, 1))], []).unwrap()
        };
        let formulas = [blend(2, 4), blend(1, 2), blend(1, 1), formula(&[])];
        let off = Precedence::new(&formulas, FreshBase::Off).unwrap();
        assert!(off.can_follow(0, 1) && !off.can_follow(1, 2) && !off.can_follow(3, 0));
        let on = Precedence::new(&formulas, FreshBase::On).unwrap();
        assert!(on.can_follow(1, 2) && on.can_follow(3, 0) && !on.can_follow(0, 3));
        assert_eq!(on.node(2), on.node(0));
        assert_ne!(on.canonical(2), on.canonical(0));
    }

    #[test]
    fn fresh_base_thins_a_color() {
        let p = Precedence::new(&[formula(&[10]), formula(&[5])], FreshBase::On).unwrap();
        let carry = p.carry(0, 1).unwrap();
        assert!((carry - (5.0 / 1005.0) / (10.0 / 1010.0)).abs() < 1e-15, "{carry}");
    }

    #[test]
    fn what_is_no_formula_is_refused() {
        let one = || exact(1, 1);
        assert_eq!(Composition::new([], []), Err(PrecedenceError::NoBase));
        assert_eq!(Composition::new([(0, exact(0, 1))], []), Err(PrecedenceError::NoBase));
        let negative = Composition::new([(0, one())], [(1, exact(-1, 2))]);
        assert_eq!(negative, Err(PrecedenceError::Negative { material: 1 }));
        let twice = Composition::new([(0, one())], [(0, one())]);
        assert_eq!(twice, Err(PrecedenceError::Twice { material: 0 }));
        let raw = Exact::new_raw(1.into(), 0.into());
        assert!(Composition::new([(0, raw)], []).is_err());
        let huge = Exact::new(BigInt::from(10).pow(400), 1.into());
        let error = Composition::new([(0, one())], [(3, huge)]).unwrap_err();
        assert!(error.to_string().contains("material 3"));
    }

    #[test]
    fn the_order_in_which_doses_are_given_changes_nothing() {
        let (one, dose) = (|| exact(1, 1), |n| exact(n, 10));
        let rising = Composition::new([(0, one())], [(1, dose(2)), (2, dose(3))]).unwrap();
        let falling = Composition::new([(0, one())], [(2, dose(3)), (1, dose(2))]).unwrap();
        assert_eq!(rising, falling);
        // Twice with another material between them.
        let twice = Composition::new([(0, one()), (3, one())], [(0, one())]);
        assert_eq!(twice, Err(PrecedenceError::Twice { material: 0 }));
    }

    #[test]
    fn shares_and_blends_by_hand() {
        let p = Precedence::new(&[formula(&[5, 250])], FreshBase::Off).unwrap();
        let row = p.shares(0, 3).unwrap();
        for (share, part) in row.iter().zip([1.0, 0.005, 0.25]) {
            assert!((share - part / 1.255).abs() < 1e-15, "{row:?}");
        }
        assert_eq!((p.shares(0, 2), p.shares(1, 3)), (None, None));
        let hard = Composition::new([(4, exact(1, 1))], []).unwrap();
        let p = Precedence::new(&[formula(&[5]), hard, formula(&[])], FreshBase::Off).unwrap();
        assert_eq!(p.blend(0), p.blend(2));
        assert!(p.blend(0).is_some() && p.blend(0) != p.blend(1));
    }

    #[test]
    fn shares_rise_by_material_whichever_is_the_base() {
        let on_last = |dose| Composition::new([(3, exact(1, 1))], [(1, exact(dose, 4))]).unwrap();
        let materials: Vec<usize> = on_last(1).shares().iter().map(|&(m, _)| m).collect();
        assert_eq!(materials, [1, 3]);
        let p = Precedence::new(&[on_last(1), on_last(4)], FreshBase::On).unwrap();
        // Of base 4/5 becomes 1/2.
        assert_eq!(p.carry(0, 1), Some(0.5 / 0.8));
    }

    #[test]
    fn numbers_too_long_for_a_float_have_a_ratio_all_the_same() {
        let ten = |n: u32| BigInt::from(10).pow(n);
        assert_eq!(approximate(&Exact::new_raw(ten(309), ten(300))), 1e9);
        assert_eq!(approximate(&Exact::new_raw(ten(300), ten(309))), 1e-9);
        assert_eq!(approximate(&Exact::new_raw(ten(400), ten(400) * 4)), 0.25);
    }

    #[test]
    fn ratios_that_floats_cannot_tell_apart_are_compared_exactly() {
        let big = BigInt::from(10).pow(20);
        let order = |a: &Exact, b: &Exact| compare((approximate(a), a), (approximate(b), b));
        let pairs = [
            // (smaller, larger): of one numerator, of one denominator 1, of one denominator 3.
            (Exact::new(1.into(), &big + 1), Exact::new(1.into(), big.clone())),
            (Exact::new(big.clone(), 1.into()), Exact::new(&big + 1, 1.into())),
            (Exact::new(big.clone(), 3.into()), Exact::new(&big + 1, 3.into())),
        ];
        for (less, more) in &pairs {
            assert_eq!(approximate(less), approximate(more));
            assert_eq!((order(less, more), order(more, less)), (Ordering::Less, Ordering::Greater));
            assert_eq!(order(less, less), Ordering::Equal);
        }
        // Approximations that are wrong by 3 units in the last place decide nothing.
        let (one, more) = (exact(1, 1), Exact::new(&big + 1, big.clone()));
        let (low, high) = (1.0, 1.0 + 3.0 * f64::EPSILON);
        assert_eq!(compare((high, &one), (low, &more)), Ordering::Less);
        assert_eq!(compare((low, &more), (high, &one)), Ordering::Greater);
    }

    #[test]
    fn a_plan_has_at_most_20_000_formulas() {
        let many = |count| Precedence::new(&vec![formula(&[5]); count], FreshBase::Off);
        assert_eq!(many(MOST_NODES).unwrap().order().len(), 1);
        let refused = many(MOST_NODES + 1).unwrap_err();
        assert_eq!(refused, OrderError::TooMany { count: 20_001 }.into());
    }

    #[test]
    fn doses_reach_from_1e_minus_100_to_1e100() {
        let with = |dose: Exact| Composition::new([(0, exact(1, 1))], [(1, dose)]);
        let large = |n: i64| Exact::new(BigInt::from(n) * BigInt::from(10).pow(99), 1.into());
        let small = |n: i64| Exact::new(n.into(), BigInt::from(10).pow(101));
        assert!(with(large(9)).is_ok() && with(small(15)).is_ok());
        let refused = with(large(15)).unwrap_err();
        assert_eq!(refused, PrecedenceError::OutOfRange { material: 1 });
        assert_eq!(refused.code(), "precedence-out-of-range");
        assert!(refused.help().contains("1e-100 to 1e100"));
        assert!(with(small(5)).is_err());
    }

    proptest! {
        #[test]
        fn ranks_agree_with_direct_comparison(
            doses in proptest::collection::vec(proptest::collection::vec(0_i64..4, 3), 1..14),
        ) {
            let formulas: Vec<_> = doses.iter().map(|d| formula(d)).collect();
            let off = Precedence::new(&formulas, FreshBase::Off).unwrap();
            let on = Precedence::new(&formulas, FreshBase::On).unwrap();
            for (a, from) in doses.iter().enumerate() {
                for (b, to) in doses.iter().enumerate() {
                    let no_less = from.iter().zip(to).all(|(x, y)| x <= y);
                    prop_assert_eq!(off.can_follow(a, b), no_less);
                    let within = from.iter().zip(to).all(|(x, y)| *x == 0 || *y > 0);
                    prop_assert_eq!(on.can_follow(a, b), within);
                    let strict = no_less && from != to;
                    let (na, nb) = (off.node(a).unwrap(), off.node(b).unwrap());
                    prop_assert_eq!(off.order().precedes(na, nb), strict);
                    prop_assert_eq!(off.canonical(a) == off.canonical(b), from == to);
                }
            }
        }

        #[test]
        fn comparison_is_exact(a in 1_u64.., b in 1_u64.., c in 1_u64.., d in 1_u64..) {
            let (x, y) = (Exact::new(a.into(), b.into()), Exact::new(c.into(), d.into()));
            let got = compare((approximate(&x), &x), (approximate(&y), &y));
            prop_assert_eq!(got, (u128::from(a) * u128::from(d)).cmp(&(u128::from(c) * u128::from(b))));
        }
    }
}

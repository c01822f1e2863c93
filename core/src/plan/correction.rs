//! Correction of a pot that came out wrong: the smallest additions that make it right.
//!
//! With c the masses in the pot and t the target's shares by mass, the smallest final mass is
//! k = max_i c_i/t_i; the additions k·t − c are 0 or more, and exactly 0 for the material that binds.
//!
//! If the vessel holds only X < k, the nearest mix is x_i = max(c_i, λ·t_i) with λ such that
//! Σx = X: nothing is added of what is too much already, and of the rest in the target's
//! proportions. Of all mixes that adding reaches, this one has the smallest Σ (x_i/X − t_i)²/t_i (its
//! Karush–Kuhn–Tucker conditions are these two sentences), the smallest maximum excess and the
//! least greatest shortfall in relative terms; and no smaller X comes nearer, since what a
//! smaller X reaches a larger one reaches too.
//!
//! Where a material may be anything between two ratios to the base, [lo_i, hi_i], the smallest pot has the base
//! B = max(c_base, max_i c_i/hi_i), and needs a_i = max(0, lo_i·B − c_i): each grows with B, so that no other additions
//! that keep the bounds have less of any material ([`least_within`]).
//!
//! If a cup's volume V is the limit, λ is such that Σ x_i/ρ_i = V: the smallest that leaves no room.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec;
use alloc::vec::Vec;

use uom::si::mass::gram;
use uom::si::ratio::ratio;

use super::sequence::{is_mass, is_part, kg, mass, unit};
use crate::check::is_positive;
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::quantity::{Mass, MassDensity, Ratio, Volume};
use crate::show;

/// Why there is no correction.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CorrectionError {
    /// Pot and target list different numbers of materials.
    #[error("The pot lists {pot} materials, the target {target}.")]
    Lengths {
        /// Materials of the pot.
        pot: usize,
        /// Materials of the target.
        target: usize,
    },
    /// A number that cannot be: negative or not finite.
    #[error("Material {material}: {} cannot be in a mix.", show::number(*.value))]
    BadNumber {
        /// Index of the material.
        material: usize,
        /// The number given, masses in g.
        value: f64,
    },
    /// The target holds nothing.
    #[error("The target holds nothing.")]
    EmptyTarget,
    /// The pot holds more than a trace of a material that the target lacks.
    #[error("The pot holds {:.3} g of material {material}, which the target lacks.", .held.get::<gram>())]
    NotInTarget {
        /// Index of the material.
        material: usize,
        /// Mass in the pot.
        held: Mass,
    },
    /// The vessel holds less than what is in the pot.
    #[error("The pot already holds {:.1} g, {:.1} g more than the vessel may.",
        .held.get::<gram>(), (*.held - *.capacity).get::<gram>())]
    OverCapacity {
        /// Mass in the pot.
        held: Mass,
        /// Capacity of the vessel.
        capacity: Mass,
    },
    /// The cup holds less than what is in the pot.
    #[error("The pot already fills {}, more than the {} that the cup may hold.",
        show::volume(.filled), show::volume(.capacity))]
    OverFull {
        /// The volume of what is in the pot.
        filled: Volume,
        /// Capacity of the cup.
        capacity: Volume,
    },
}

impl Diagnose for CorrectionError {
    codes! {
        Self::Lengths { .. } => "correction-lengths",
        Self::BadNumber { .. } => "correction-bad-number",
        Self::EmptyTarget => "correction-empty-target",
        Self::NotInTarget { .. } => "correction-not-in-target",
        Self::OverCapacity { .. } => "correction-over-capacity",
        Self::OverFull { .. } => "correction-over-full",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Lengths { .. } => "List every material in both, 0 where one lacks it.".into(),
            Self::BadNumber { .. } => "Masses, shares and traces are 0 or more and finite.".into(),
            Self::EmptyTarget => "Give a target with at least one share above 0.".into(),
            Self::NotInTarget { .. } => {
                "Nothing can be taken out: look for a formula that holds it.".into()
            }
            Self::OverCapacity { capacity, .. } => {
                format!("Pour off down to {:.1} g, or use a larger vessel.", capacity.get::<gram>())
                    .into()
            }
            Self::OverFull { filled, .. } => {
                format!("Name a \"cup\" that holds more than {}.", show::volume(filled).at_least())
                    .into()
            }
        }
    }
}

/// Additions that make a pot right.
#[derive(Debug, Clone, PartialEq)]
pub struct Correction {
    /// Mass to add of each material.
    pub additions: Vec<Mass>,
    /// Mass of the pot then, traces included.
    pub total: Mass,
    /// The material that is most too much: nothing of it is added. `None` for an empty pot.
    pub binds: Option<usize>,
    /// Materials that the target lacks, let pass as traces.
    pub traces: Vec<(usize, Mass)>,
}

/// The nearest mix that the vessel holds.
#[derive(Debug, Clone, PartialEq)]
pub struct Nearest {
    /// Mass to add of each material, and the mix that results.
    pub correction: Correction,
    /// How far each material stays from the target, relative to its share there: 0.1 is a tenth
    /// too much. 0 for materials that the target lacks.
    pub off: Vec<Ratio>,
}

/// A formula that a pot can still become.
#[derive(Debug, Clone, PartialEq)]
pub struct Becoming {
    /// Index of the target.
    pub target: usize,
    /// The correction that makes it this.
    pub correction: Correction,
}

/// The smallest additions that bring the masses in `pot` to the composition `target` (parts by
/// mass, on any scale). A material that the target lacks is let pass up to `trace` of the pot's mass.
///
/// # Errors
///
/// See [`CorrectionError`].
pub fn correct(pot: &[Mass], target: &[f64], trace: Ratio) -> Result<Correction, CorrectionError> {
    let Mixes { pot, target, traces } = Mixes::new(pot, target, trace)?;
    let mut most: Option<(f64, usize)> = None;
    for (material, (c, t)) in pot.iter().zip(&target).enumerate() {
        let wanted = c / t;
        if *c > 0.0 && *t > 0.0 && most.is_none_or(|(k, _)| wanted > k) {
            most = Some((wanted, material));
        }
    }
    let k = most.map_or(0.0, |(k, _)| k);
    let binds = most.map(|(_, material)| material);
    Ok(correction(&pot, target.iter().map(|t| k * t), binds, traces))
}

/// What a material may be in a pot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Bound {
    /// A part of the base: this share of it.
    Base(f64),
    /// Between two ratios to the base, mass per mass; the higher may be infinite.
    Between(f64, f64),
}

/// The smallest additions that bring the masses in `pot` within `bounds`, one a material; `None` if none do: a material that
/// must not be there is, or base would have to be added and is not to be (`fresh_base`).
#[must_use]
pub fn least_within(pot: &[Mass], bounds: &[Bound], fresh_base: bool) -> Option<Vec<Mass>> {
    let base = least_base(pot, bounds)?;
    let held = base_of(pot, bounds);
    if !fresh_base && base > held * ROUNDING {
        return None;
    }
    Some(fill_up(pot, bounds, if fresh_base { base } else { held }))
}

/// The additions that bring what is too little in `pot` up to its lower bound, and add no base: what is too much stays so.
#[must_use]
pub fn top_up(pot: &[Mass], bounds: &[Bound]) -> Vec<Mass> {
    fill_up(pot, bounds, base_of(pot, bounds))
}

/// What the rounding of a calculation may make too much.
const ROUNDING: f64 = 1.0 + 1e-12;

fn base_of(pot: &[Mass], bounds: &[Bound]) -> f64 {
    let parts = pot.iter().zip(bounds);
    let parts = parts.filter(|(_, bound)| matches!(bound, Bound::Base(_)));
    parts.fold(0.0, |sum, (held, _)| sum + kg(*held))
}

/// The smallest base with which nothing is too much.
fn least_base(pot: &[Mass], bounds: &[Bound]) -> Option<f64> {
    let mut base = base_of(pot, bounds);
    for (held, bound) in pot.iter().zip(bounds) {
        let (Bound::Base(high) | Bound::Between(_, high)) = bound;
        let needs = kg(*held) / high;
        // Nothing of what may not be there needs no base: 0/0 is above nothing.
        if needs > base * ROUNDING {
            base = needs;
        }
    }
    base.is_finite().then_some(base)
}

fn fill_up(pot: &[Mass], bounds: &[Bound], base: f64) -> Vec<Mass> {
    let held = base_of(pot, bounds);
    let needed = |held_of: &Mass, bound: &Bound| {
        let (low, is_base) = match *bound {
            Bound::Base(share) => (share, true),
            Bound::Between(low, _) => (low, false),
        };
        let wanted = low * base;
        let missing = wanted - kg(*held_of);
        let is_missing = missing > 1e-12 * wanted && !(is_base && base <= held * ROUNDING);
        mass(if is_missing { missing } else { 0.0 })
    };
    pot.iter().zip(bounds).map(|(held, bound)| needed(held, bound)).collect()
}

/// The nearest mix to `target` that `capacity` holds, by adding only: the exact correction where
/// it fits. `trace` as in [`correct`].
///
/// # Errors
///
/// See [`CorrectionError`].
pub fn nearest(
    pot: &[Mass],
    target: &[f64],
    capacity: Mass,
    trace: Ratio,
) -> Result<Nearest, CorrectionError> {
    let exact = correct(pot, target, trace)?;
    if capacity.value.is_nan() || capacity.value < 0.0 {
        let value = capacity.get::<gram>();
        return Err(CorrectionError::BadNumber { material: 0, value });
    }
    if exact.total <= capacity {
        let off = exact.additions.iter().map(|_| Ratio::new::<ratio>(0.0)).collect();
        return Ok(Nearest { correction: exact, off });
    }
    let Mixes { pot, target, traces } = Mixes::new(pot, target, trace)?;
    let held: f64 = pot.iter().sum();
    let strange: f64 = traces.iter().map(|(_, m)| kg(*m)).sum();
    if held > kg(capacity) {
        return Err(CorrectionError::OverCapacity { held: mass(held), capacity });
    }
    let room = kg(capacity) - strange;
    let level = level(&pot, &target, room);
    let wanted: Vec<f64> = pot.iter().zip(&target).map(|(c, t)| c.max(level * t)).collect();
    let off = wanted
        .iter()
        .zip(&target)
        .map(|(x, t)| Ratio::new::<ratio>(if *t > 0.0 { x / room / t - 1.0 } else { 0.0 }));
    let off = off.collect();
    Ok(Nearest { correction: correction(&pot, wanted.into_iter(), exact.binds, traces), off })
}

/// The nearest mix to `target` that a cup of `capacity` holds, by adding only: the exact
/// correction where it fits. Of the materials `density` is each one's true density, in the order
/// of the pot. `trace` as in [`correct`].
///
/// # Errors
///
/// See [`CorrectionError`].
pub fn nearest_in_cup(
    pot: &[Mass],
    target: &[f64],
    density: &[MassDensity],
    capacity: Volume,
    trace: Ratio,
) -> Result<Nearest, CorrectionError> {
    if density.len() != pot.len() {
        return Err(CorrectionError::Lengths { pot: pot.len(), target: density.len() });
    }
    for (material, density) in density.iter().enumerate() {
        if !is_positive(density.value) {
            return Err(CorrectionError::BadNumber { material, value: density.value });
        }
    }
    let exact = correct(pot, target, trace)?;
    let volume = |masses: &[f64]| -> Volume {
        let each = masses.iter().zip(density);
        each.fold(Volume::default(), |sum, (m, density)| sum + mass(*m) / *density)
    };
    let Mixes { pot: held, target: shares, traces } = Mixes::new(pot, target, trace)?;
    let filled = volume(&held);
    if filled > capacity || capacity.value.is_nan() {
        return Err(CorrectionError::OverFull { filled, capacity });
    }
    let finished: Vec<f64> = held.iter().zip(&exact.additions).map(|(c, a)| c + kg(*a)).collect();
    if volume(&finished) <= capacity {
        return nearest(pot, target, exact.total, trace);
    }
    let swell = |masses: &[f64]| -> Vec<f64> {
        masses.iter().zip(density).map(|(m, density)| m / density.value).collect()
    };
    let strange = traces.iter().filter_map(|(material, m)| Some((density.get(*material)?, m)));
    let strange = strange.fold(Volume::default(), |sum, (density, m)| sum + *m / *density);
    let level = level(&swell(&held), &swell(&shares), (capacity - strange).value);
    let reached = held.iter().zip(&shares).fold(0.0, |sum, (c, t)| sum + c.max(level * t));
    nearest(pot, target, mass(reached), trace)
}

/// Which of `targets` the pot can still become, the smallest final mass first (equal ones in their
/// order). `trace` as in [`correct`].
///
/// # Errors
///
/// A target or the pot is not a mix. A pot that cannot become a target is not an error.
pub fn could_become(
    pot: &[Mass],
    targets: &[&[f64]],
    trace: Ratio,
) -> Result<Vec<Becoming>, CorrectionError> {
    let mut all = Vec::new();
    for (target, parts) in targets.iter().enumerate() {
        match correct(pot, parts, trace) {
            Ok(correction) => all.push(Becoming { target, correction }),
            Err(CorrectionError::NotInTarget { .. }) => {}
            Err(other) => return Err(other),
        }
    }
    all.sort_by(|a, b| a.correction.total.value.total_cmp(&b.correction.total.value));
    Ok(all)
}

/// Checked input: masses in kg, target in shares.
struct Mixes {
    pot: Vec<f64>,
    target: Vec<f64>,
    traces: Vec<(usize, Mass)>,
}

impl Mixes {
    fn new(pot: &[Mass], target: &[f64], trace: Ratio) -> Result<Self, CorrectionError> {
        if pot.len() != target.len() {
            return Err(CorrectionError::Lengths { pot: pot.len(), target: target.len() });
        }
        if !is_part(trace.value) {
            return Err(CorrectionError::BadNumber { material: 0, value: trace.value });
        }
        for (material, (m, t)) in pot.iter().zip(target).enumerate() {
            if !is_mass(*m) {
                return Err(CorrectionError::BadNumber { material, value: m.get::<gram>() });
            }
            if !is_part(*t) {
                return Err(CorrectionError::BadNumber { material, value: *t });
            }
        }
        if !target.iter().sum::<f64>().is_normal() {
            return Err(CorrectionError::EmptyTarget);
        }
        let held: f64 = pot.iter().map(|&m| kg(m)).sum();
        let mut traces = Vec::new();
        for (material, (&m, t)) in pot.iter().zip(target).enumerate() {
            if *t > 0.0 || kg(m) == 0.0 {
                continue;
            }
            if kg(m) > trace.value * held {
                return Err(CorrectionError::NotInTarget { material, held: m });
            }
            traces.push((material, m));
        }
        Ok(Self { pot: pot.iter().map(|&m| kg(m)).collect(), target: unit(target), traces })
    }
}

/// Additions that take `pot` to `wanted`: zero for the material that binds, and never negative.
fn correction(
    pot: &[f64],
    wanted: impl Iterator<Item = f64>,
    binds: Option<usize>,
    traces: Vec<(usize, Mass)>,
) -> Correction {
    let additions: Vec<f64> = pot
        .iter()
        .zip(wanted)
        .enumerate()
        .map(|(material, (c, x))| {
            let rounding = 4.0 * f64::EPSILON * x;
            if Some(material) == binds || x - c <= rounding { 0.0 } else { x - c }
        })
        .collect();
    let total = pot.iter().zip(&additions).map(|(c, a)| c + a).sum();
    Correction {
        additions: additions.into_iter().map(mass).collect(),
        total: mass(total),
        binds,
        traces,
    }
}

/// λ such that Σ max(c_i, λ·t_i) = `total` over the materials of the target; what is more than
/// its share is taken out, the largest first, until the rest can be filled up.
fn level(pot: &[f64], target: &[f64], total: f64) -> f64 {
    let parts = pot.iter().zip(target).filter(|(_, t)| **t > 0.0);
    let mut parts: Vec<(f64, f64, f64)> = parts.map(|(c, t)| (c / t, *c, *t)).collect();
    parts.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut shares = vec![0.0; parts.len()];
    let mut share = 0.0;
    for (sum, part) in shares.iter_mut().zip(&parts).rev() {
        *sum = share;
        share += part.2;
    }
    let mut room = total;
    let nexts = parts.iter().skip(1);
    for (((_, c, _), share), next) in parts.iter().zip(shares).zip(nexts) {
        room -= c;
        if room / share >= next.0 {
            return room / share;
        }
    }
    0.0
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::mass_density::kilogram_per_cubic_meter;
    use uom::si::volume::milliliter;

    fn g(list: &[f64]) -> Vec<Mass> {
        list.iter().map(|&x| Mass::new::<gram>(x)).collect()
    }

    fn kilograms(list: &[f64]) -> Vec<Mass> {
        list.iter().map(|&x| mass(x)).collect()
    }

    fn no_trace() -> Ratio {
        Ratio::new::<ratio>(0.0)
    }

    fn grams(list: &[Mass]) -> Vec<f64> {
        list.iter().map(|m| m.get::<gram>()).collect()
    }

    #[test]
    fn a_double_dose_doubles_the_pot() {
        // 2 g of dye where 1 g was meant in 100 g: closed form.
        let fix = correct(&g(&[99.0, 2.0]), &[99.0, 1.0], no_trace()).unwrap();
        assert_eq!(fix.binds, Some(1));
        assert_eq!(fix.additions[1], Mass::default());
        assert!((fix.additions[0].get::<gram>() - 99.0).abs() < 1e-9);
        assert!((fix.total.get::<gram>() - 200.0).abs() < 1e-9);
    }

    #[test]
    fn what_should_not_be_there_is_named_unless_a_trace() {
        let pot = g(&[100.0, 0.0, 0.05]);
        let refused = correct(&pot, &[0.9, 0.1, 0.0], no_trace()).unwrap_err();
        assert!(matches!(refused, CorrectionError::NotInTarget { material: 2, .. }));
        let passed = correct(&pot, &[0.9, 0.1, 0.0], Ratio::new::<ratio>(0.001)).unwrap();
        assert_eq!(passed.traces, [(2, pot[2])]);
        let total: f64 =
            grams(&pot).iter().sum::<f64>() + grams(&passed.additions).iter().sum::<f64>();
        assert!((passed.total.get::<gram>() - total).abs() < 1e-9);
    }

    #[rstest]
    // 2 g of dye in 101 g, room for 150: all the room goes to base. Closed form.
    #[case(&[99.0, 2.0], &[0.99, 0.01], 150.0, &[49.0, 0.0])]
    // Dye binds; base and softener are filled up in their proportion 8 : 1, as far as it goes.
    #[case(&[80.0, 10.0, 3.0], &[0.8, 0.1, 0.1/9.0], 120.0, &[24.0, 3.0, 0.0])]
    // Softener is too much as well, so that the room goes to base alone.
    #[case(&[80.0, 20.0, 3.0], &[0.89, 0.1, 0.01], 120.0, &[17.0, 0.0, 0.0])]
    fn the_room_goes_to_what_is_short(
        #[case] pot: &[f64],
        #[case] target: &[f64],
        #[case] capacity: f64,
        #[case] expected: &[f64],
    ) {
        let near = nearest(&g(pot), target, Mass::new::<gram>(capacity), no_trace()).unwrap();
        for (got, expected) in grams(&near.correction.additions).iter().zip(expected) {
            assert!((got - expected).abs() < 1e-9, "{got} for {expected}");
        }
        assert!((near.correction.total.get::<gram>() - capacity).abs() < 1e-9);
    }

    #[test]
    fn a_vessel_that_is_too_full_is_refused() {
        let full = nearest(&g(&[90.0, 20.0]), &[0.9, 0.1], Mass::new::<gram>(100.0), no_trace());
        assert!(matches!(full, Err(CorrectionError::OverCapacity { .. })));
        let nan = nearest(&g(&[90.0, 20.0]), &[0.9, 0.1], Mass::new::<gram>(f64::NAN), no_trace());
        assert!(matches!(nan, Err(CorrectionError::BadNumber { .. })));
    }

    #[test]
    fn a_cup_is_filled_to_its_brim_and_no_further() {
        // Salt of twice the density binds; the base fills the 150 mL that the cup has. Closed form:
        // 60 g of salt take 30 mL, so that 120 mL of base of 1 g/mL fit, of which 90 are there.
        let density = [1000.0, 2000.0].map(MassDensity::new::<kilogram_per_cubic_meter>);
        let cup = |milliliters: f64| Volume::new::<milliliter>(milliliters);
        let pot = g(&[90.0, 60.0]);
        let near = |cup| nearest_in_cup(&pot, &[0.75, 0.25], &density, cup, no_trace());
        let filled = near(cup(150.0)).unwrap();
        assert!((filled.correction.additions[0].get::<gram>() - 30.0).abs() < 1e-9);
        assert_eq!(filled.correction.additions[1], Mass::default());
        assert!((filled.off[1].value - (60.0 / 180.0 / 0.25 - 1.0)).abs() < 1e-12);
        // With room for all of it the pot comes right: 60 g are a quarter of 240 g.
        let right = near(cup(500.0)).unwrap();
        assert!((right.correction.total.get::<gram>() - 240.0).abs() < 1e-9);
        assert!(right.off.iter().all(|off| off.value == 0.0));
        assert!(matches!(near(cup(119.0)), Err(CorrectionError::OverFull { .. })));
    }

    #[test]
    fn formulas_that_a_pot_could_still_become_come_least_first() {
        let pot = g(&[90.0, 5.0, 5.0]);
        let targets: [&[f64]; 3] = [&[0.9, 0.1, 0.0], &[0.9, 0.01, 0.09], &[0.8, 0.1, 0.1]];
        let found = could_become(&pot, &targets, no_trace()).unwrap();
        let indices: Vec<usize> = found.iter().map(|b| b.target).collect();
        assert_eq!(indices, [2, 1]);
    }

    #[test]
    fn what_is_no_mix_is_refused() {
        assert!(correct(&g(&[1.0]), &[1.0, 2.0], no_trace()).is_err());
        assert!(correct(&g(&[f64::NAN]), &[1.0], no_trace()).is_err());
        assert!(correct(&g(&[1.0]), &[-1.0], no_trace()).is_err());
        assert_eq!(correct(&g(&[0.0]), &[0.0], no_trace()), Err(CorrectionError::EmptyTarget));
        let empty = correct(&g(&[0.0, 0.0]), &[1.0, 1.0], no_trace()).unwrap();
        assert_eq!((empty.total, empty.binds), (Mass::default(), None));
    }

    #[test]
    fn a_trace_is_let_pass_up_to_its_share_and_changes_nothing_else() {
        // Exact in binary: 0.125 kg of 0.5 kg is a share of 0.25.
        let pot = kilograms(&[0.375, 0.0, 0.125]);
        let target = [0.5, 0.5, 0.0];
        let trace = |share| correct(&pot, &target, Ratio::new::<ratio>(share));
        let passed = trace(0.25).unwrap();
        assert_eq!((passed.binds, passed.traces), (Some(0), vec![(2, pot[2])]));
        assert_eq!(passed.additions, kilograms(&[0.0, 0.375, 0.0]));
        let refused = CorrectionError::NotInTarget { material: 2, held: pot[2] };
        assert_eq!(trace(0.24), Err(refused));
        // 1 kg is a mass as any other, and nothing of a material is not a trace of it.
        let one = correct(&kilograms(&[3.0, 1.0]), &[1.0, 0.0], no_trace());
        assert!(matches!(one, Err(CorrectionError::NotInTarget { material: 1, .. })));
        assert_eq!(correct(&kilograms(&[3.0, 0.0]), &[1.0, 0.0], no_trace()).unwrap().traces, []);
    }

    #[test]
    fn of_a_pot_that_is_right_the_first_material_binds() {
        let fix = correct(&kilograms(&[0.5, 0.25]), &[2.0, 1.0], no_trace()).unwrap();
        assert_eq!((fix.binds, fix.additions), (Some(0), kilograms(&[0.0, 0.0])));
    }

    #[test]
    fn what_only_rounding_lacks_is_not_added() {
        let ulp = f64::EPSILON;
        let added = |lacks: f64| {
            let pot = kilograms(&[1.0, 1.0 - lacks]);
            correct(&pot, &[0.5, 0.5], no_trace()).unwrap().additions[1]
        };
        assert_eq!(added(4.0 * ulp), Mass::default());
        assert_eq!(added(5.0 * ulp), mass(5.0 * ulp));
    }

    #[test]
    fn a_trace_takes_its_room_in_vessel_and_cup() {
        let trace = Ratio::new::<ratio>(0.01);
        // 150 g less 99 + 2 + 0.1 g.
        let target = [0.99, 0.01, 0.0];
        let near = nearest(&g(&[99.0, 2.0, 0.1]), &target, Mass::new::<gram>(150.0), trace);
        let near = near.unwrap();
        let added = grams(&near.correction.additions);
        assert!((added[0] - 48.9).abs() < 1e-9, "{added:?}");
        assert_eq!((added[1], added[2], near.off[2].value), (0.0, 0.0, 0.0));
        // 152 mL less 60 g at 2 g/mL, 1 g at 0.5 g/mL and 90 g at 1 g/mL leave 30 mL.
        let density = [1000.0, 2000.0, 500.0].map(MassDensity::new::<kilogram_per_cubic_meter>);
        let pot = g(&[90.0, 60.0, 1.0]);
        let cup = Volume::new::<milliliter>(152.0);
        let near = nearest_in_cup(&pot, &[0.75, 0.25, 0.0], &density, cup, trace).unwrap();
        let added = grams(&near.correction.additions);
        assert!((added[0] - 30.0).abs() < 1e-9, "{added:?}");
        assert_eq!(&added[1..], [0.0, 0.0]);
    }

    #[test]
    fn a_full_vessel_is_not_too_full() {
        let pot = kilograms(&[0.5, 0.25]);
        let full = nearest(&pot, &[0.75, 0.25], mass(0.75), no_trace()).unwrap();
        assert_eq!(full.correction.additions, kilograms(&[0.0, 0.0]));
        // Shares of 2/3 and 1/3 where 3/4 and 1/4 are wanted.
        assert!((full.off[0].value + 1.0 / 9.0).abs() < 1e-15);
        assert!((full.off[1].value - 1.0 / 3.0).abs() < 1e-15);
        let density = [1024.0, 2048.0].map(MassDensity::new::<kilogram_per_cubic_meter>);
        let brim = pot[0] / density[0] + pot[1] / density[1];
        let full = nearest_in_cup(&pot, &[0.75, 0.25], &density, brim, no_trace()).unwrap();
        assert_eq!(full.correction.additions, kilograms(&[0.0, 0.0]));
        let nothing = nearest(&kilograms(&[0.0]), &[1.0], mass(0.0), no_trace()).unwrap();
        assert_eq!(nothing.correction.total, mass(0.0));
        // With one material alone there is nothing to fill up.
        assert_eq!(level(&[2.0], &[1.0], 2.0), 0.0);
    }

    #[test]
    fn a_top_up_adds_no_base_and_leaves_what_is_too_much() {
        // Of 0.75 kg of base, the second part lacks its half; 0.1 to 0.2 per base are 0.075 to 0.15 kg.
        let bounds = [Bound::Base(0.5), Bound::Base(0.5), Bound::Between(0.125, 0.25)];
        let added = |pot: [f64; 3]| top_up(&kilograms(&pot), &bounds);
        assert_eq!(added([0.5, 0.25, 0.0]), kilograms(&[0.0, 0.0, 0.09375]));
        assert_eq!(added([0.5, 0.25, 0.3]), kilograms(&[0.0, 0.0, 0.0]));
        // The base that rounding makes of what is there is no base to add.
        let pot = kilograms(&[0.5, 0.25, 0.0]);
        assert_eq!(fill_up(&pot, &bounds, 0.75 * ROUNDING)[..2], kilograms(&[0.0, 0.0]));
        assert!(fill_up(&pot, &bounds, 1.0)[1] == mass(0.25));
    }

    #[test]
    fn rounding_needs_no_base() {
        // A material at its highest ratio but for rounding, above or below, leaves the 1 kg of base as it is.
        let bounds = [Bound::Base(1.0), Bound::Between(0.0, 1.0), Bound::Between(0.5, 1.0)];
        for held in [ROUNDING, 1.0, 1.0 - 5e-13] {
            let pot = kilograms(&[1.0, held, 0.0]);
            assert_eq!(least_within(&pot, &bounds, true), Some(kilograms(&[0.0, 0.0, 0.5])));
            assert_eq!(least_within(&pot, &bounds, false), Some(kilograms(&[0.0, 0.0, 0.5])));
        }
        let over = kilograms(&[1.0, 1.25, 0.0]);
        assert_eq!(least_within(&over, &bounds, true), Some(kilograms(&[0.25, 0.0, 0.625])));
        assert_eq!(least_within(&over, &bounds, false), None);
        let empty = kilograms(&[0.0, 0.0, 0.0]);
        assert_eq!(least_within(&empty, &bounds, false), Some(empty));
        // What lacks a trillionth of what is wanted is not measured; twice that is more than rounding.
        let lacks = |share: f64| least_within(&kilograms(&[1.0, 0.0, 0.5 - share]), &bounds, true);
        assert_eq!(lacks(0.4e-12), Some(kilograms(&[0.0, 0.0, 0.0])));
        assert!(lacks(0.75e-12).unwrap()[2] > mass(0.0));
    }

    #[test]
    fn each_refusal_says_what_would_help() {
        let low = mass(-1.0);
        let refused = nearest(&g(&[1.0]), &[1.0], low, no_trace()).unwrap_err();
        assert_eq!(refused, CorrectionError::BadNumber { material: 0, value: -1000.0 });
        assert!(refused.help().contains("0 or more"));
        let refused = correct(&g(&[1.0]), &[1.0], Ratio::new::<ratio>(-0.5)).unwrap_err();
        assert_eq!(refused, CorrectionError::BadNumber { material: 0, value: -0.5 });
        let full = CorrectionError::OverCapacity { held: mass(0.2), capacity: mass(0.15) };
        assert!(full.help().contains("down to 150.0 g"), "{}", full.help());
    }

    proptest! {
        /// In powers of two the scale of a pot changes no bit of a correction.
        #[test]
        fn a_pot_of_any_size_is_corrected_alike(
            parts in proptest::collection::vec((0.1_f64..500.0, 0.01_f64..1.0), 1..6),
        ) {
            let small = |x: f64| x / 1_073_741_824.0;
            let pot: Vec<f64> = parts.iter().map(|p| p.0).collect();
            let tiny: Vec<f64> = pot.iter().map(|&x| small(x)).collect();
            let target: Vec<f64> = parts.iter().map(|p| p.1).collect();
            let whole = correct(&kilograms(&pot), &target, no_trace()).unwrap();
            let part = correct(&kilograms(&tiny), &target, no_trace()).unwrap();
            let scaled: Vec<Mass> = whole.additions.iter().map(|m| mass(small(m.value))).collect();
            prop_assert_eq!(part.additions, scaled);
            let bounds: Vec<Bound> = target.iter().enumerate()
                .map(|(i, &t)| if i == 0 { Bound::Base(1.0) } else { Bound::Between(t, 2.0 * t) })
                .collect();
            let whole = least_within(&kilograms(&pot), &bounds, true).unwrap();
            let part = least_within(&kilograms(&tiny), &bounds, true).unwrap();
            let scaled: Vec<Mass> = whole.iter().map(|m| mass(small(m.value))).collect();
            prop_assert_eq!(part, scaled);
        }

        /// A vessel or cup that just holds the exact mix holds it exactly.
        #[test]
        fn what_just_fits_is_exact(
            parts in proptest::collection::vec((0.1_f64..500.0, 0.01_f64..1.0, 0.5_f64..3.0), 2..6),
        ) {
            let pot = g(&parts.iter().map(|p| p.0).collect::<Vec<_>>());
            let target: Vec<f64> = parts.iter().map(|p| p.1).collect();
            let density: Vec<MassDensity> =
                parts.iter().map(|p| MassDensity::new::<kilogram_per_cubic_meter>(1000.0 * p.2)).collect();
            let exact = correct(&pot, &target, no_trace()).unwrap();
            let brim = pot.iter().zip(&exact.additions).zip(&density)
                .fold(Volume::default(), |sum, ((c, a), density)| sum + (*c + *a) / *density);
            let near = nearest(&pot, &target, exact.total, no_trace()).unwrap();
            prop_assert!(near.off.iter().all(|off| off.value == 0.0));
            prop_assert_eq!(&near.correction, &exact);
            let near = nearest_in_cup(&pot, &target, &density, brim, no_trace()).unwrap();
            prop_assert!(near.off.iter().all(|off| off.value == 0.0));
            prop_assert_eq!(&near.correction, &exact);
        }
    }

    proptest! {
        #[test]
        fn a_correction_adds_only_and_comes_out_right(
            parts in proptest::collection::vec((0.0_f64..500.0, 0.01_f64..1.0), 1..8),
        ) {
            let pot = g(&parts.iter().map(|p| p.0).collect::<Vec<_>>());
            let target: Vec<f64> = parts.iter().map(|p| p.1).collect();
            let fix = correct(&pot, &target, no_trace()).unwrap();
            let sum: f64 = target.iter().sum();
            for ((c, a), t) in pot.iter().zip(&fix.additions).zip(&target) {
                prop_assert!(a.value >= 0.0);
                let share = (*c + *a).value;
                prop_assert!((share - fix.total.value * t / sum).abs() <= 1e-13 * fix.total.value);
            }
            if let Some(binds) = fix.binds {
                prop_assert_eq!(fix.additions[binds], Mass::default());
            }
        }

        /// No random mix that only adds and fits comes nearer, by least squares or at the worst.
        #[test]
        fn nothing_in_reach_is_nearer(
            parts in proptest::collection::vec((0.0_f64..500.0, 0.05_f64..1.0, 0.0_f64..1.0), 2..6),
            fill in 0.0_f64..1.0, size in 0.0_f64..1.0,
        ) {
            let pot = g(&parts.iter().map(|p| p.0).collect::<Vec<_>>());
            let target = unit(&parts.iter().map(|p| p.1).collect::<Vec<_>>());
            let exact = correct(&pot, &target, no_trace()).unwrap();
            let held: f64 = pot.iter().map(|m| m.value).sum();
            prop_assume!(held > 0.0);
            let capacity = held + fill * (exact.total.value - held);
            let near = nearest(&pot, &target, mass(capacity), no_trace()).unwrap();
            let square = |off: &[f64]| off.iter().zip(&target).map(|(o, t)| o * o * t).sum::<f64>();
            let worst = |off: &[f64]| off.iter().fold(0.0_f64, |w, o| w.max(o.abs()));
            let ours: Vec<f64> = near.off.iter().map(|r| r.value).collect();

            let spread = unit(&parts.iter().map(|p| p.2 + 1e-9).collect::<Vec<_>>());
            let room = (capacity - held) * size;
            let others: Vec<f64> = pot.iter().zip(&spread).zip(&target)
                .map(|((c, s), t)| (c.value + room * s) / (held + room) / t - 1.0)
                .collect();
            prop_assert!(square(&ours) <= square(&others) + 1e-9);
            prop_assert!(worst(&ours) <= worst(&others) + 1e-9);
        }
    }
}

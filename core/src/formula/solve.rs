//! The joint solution of all doses: the equations of the [module](super).

use alloc::string::ToString;
use alloc::vec::Vec;

use num_rational::BigRational;
use num_traits::{One, Signed, Zero};

use super::base::Base;
use super::mass::{exact, exact_mass, exact_si};
use super::{Dose, Formula, FormulaError, Ingredient, WrittenIn};
use crate::exact::Product;
use crate::mix::{MaterialId, Materials};
use crate::quantity::{self, Basis, By, Dimension, Measurable, System};

/// A dose of the joint solution.
pub(super) struct Dosed {
    pub(super) material: MaterialId,
    pub(super) share: Share,
    pub(super) written: WrittenIn,
}

/// How one dose enters the joint solution.
pub(super) enum Share {
    /// Mass per mass of base.
    Base(BigRational),
    /// Share of the finished mass.
    FinishedMass(BigRational),
    /// Share of the finished volume, by true volume.
    FinishedVolume(BigRational),
}

impl Share {
    /// `per` is the mass of base that the formula's doses are for, once one has asked for it.
    pub(super) fn of(
        dose: &Dose,
        formula: &Formula,
        base: &Base,
        per: &mut Option<Product>,
        materials: &Materials,
        system: System,
    ) -> Result<Self, FormulaError> {
        let material = materials.get(dose.material)?;
        if base.parts.iter().any(|part| part.material == dose.material) {
            return Err(FormulaError::BaseIsDosed {
                material: material.name.clone(),
                formula: formula.name.clone(),
            });
        }
        let Some(basis) = dose.amount.basis() else {
            let per = match per {
                Some(per) => &*per,
                None => per.insert(per_mass(formula, base, system)?),
            };
            let mass = exact_mass(dose, formula, materials, system)?;
            return Ok(Self::Base(mass.over(per).reduced()));
        };
        let share = exact_si(&dose.amount, system)?;
        Ok(match basis {
            Basis { share: quantity::Share::OfBase, by: By::Mass } => Self::Base(share.reduced()),
            Basis { share: quantity::Share::OfBase, by: By::Volume } => {
                if material.is_scooped() {
                    return Err(FormulaError::PowderByVolumeOfBase {
                        material: material.name.clone(),
                        formula: formula.name.clone(),
                    });
                }
                let density = exact(material.true_density("a per cent by volume")?.get().si())?;
                Self::Base((share * density * base.volume_per_mass()?.into()).reduced())
            }
            Basis { share: quantity::Share::OfFinished, by: By::Mass } => {
                Self::FinishedMass(share.reduced())
            }
            Basis { share: quantity::Share::OfFinished, by: By::Volume } => {
                Self::FinishedVolume(share.reduced())
            }
        })
    }
}

/// Exact mass of the base that a formula's doses are for.
fn per_mass(formula: &Formula, base: &Base, system: System) -> Result<Product, FormulaError> {
    let per = formula.per.as_ref().ok_or_else(|| FormulaError::NoPer(formula.name.clone()))?;
    let amount = exact_si(per, system)?;
    let mass = match per.dimension() {
        Dimension::MASS => amount,
        Dimension::VOLUME => amount.over(&base.volume_per_mass()?.into()),
        _ => {
            return Err(FormulaError::BadAmount {
                formula: formula.name.clone(),
                amount: per.to_string(),
            });
        }
    };
    if mass.is_positive() { Ok(mass) } else { Err(FormulaError::EmptyBase(formula.name.clone())) }
}

/// Mass and volume of the finished mix for one unit of base: the two equations of the module's
/// documentation.
struct Totals {
    mass: BigRational,
    volume: BigRational,
}

impl Totals {
    fn of(shares: &[Dosed], base: &Base, materials: &Materials) -> Result<Self, FormulaError> {
        let by_volume = shares.iter().any(|one| matches!(one.share, Share::FinishedVolume(_)));
        let zero = BigRational::zero;
        // In the order of their coefficients.
        let (mut of_mass, mut of_volume, mut mass_in_volume, mut volume_in_mass) =
            (BigRational::one(), BigRational::one(), zero(), zero());
        let mut mass = BigRational::one();
        let mut volume = if by_volume { base.volume_per_mass()?.clone() } else { zero() };
        for Dosed { material, share, .. } in shares {
            match share {
                Share::Base(ratio) => {
                    mass += ratio;
                    if by_volume {
                        volume += ratio / density(*material, materials)?;
                    }
                }
                Share::FinishedMass(share) => {
                    of_mass -= share;
                    if by_volume {
                        volume_in_mass += share / density(*material, materials)?;
                    }
                }
                Share::FinishedVolume(share) => {
                    of_volume -= share;
                    mass_in_volume += share * density(*material, materials)?;
                }
            }
        }
        // With the two in it at least 0, of_volume is positive as well.
        let determinant = &of_mass * &of_volume - &mass_in_volume * &volume_in_mass;
        if !(of_mass.is_positive() && determinant.is_positive()) {
            return Err(FormulaError::NoRoomForBase);
        }
        Ok(Self {
            mass: (&mass * &of_volume + &mass_in_volume * &volume) / &determinant,
            volume: (&of_mass * &volume + &volume_in_mass * &mass) / &determinant,
        })
    }
}

fn density(material: MaterialId, materials: &Materials) -> Result<BigRational, FormulaError> {
    let material = materials.get(material)?;
    Ok(exact(material.true_density("a per cent of finished by volume")?.get().si())?.reduced())
}

/// The joint solution for one unit of base: the exact ratio of each additive, by material.
pub(super) fn solve(
    shares: Vec<Dosed>,
    base: &Base,
    materials: &Materials,
) -> Result<Vec<Ingredient>, FormulaError> {
    // Sums of exact fractions grow long: they are worked out only where a share asks for them.
    let of_finished = shares.iter().any(|one| !matches!(one.share, Share::Base(_)));
    let totals = if of_finished {
        Totals::of(&shares, base, materials)?
    } else {
        Totals { mass: BigRational::zero(), volume: BigRational::zero() }
    };
    let mut ratios: Vec<(MaterialId, BigRational, WrittenIn)> = Vec::new();
    for Dosed { material, share, written } in shares {
        let ratio = match share {
            Share::Base(ratio) => ratio,
            Share::FinishedMass(share) => share * &totals.mass,
            Share::FinishedVolume(share) => share * density(material, materials)? * &totals.volume,
        };
        match ratios.iter_mut().find(|(other, ..)| *other == material) {
            Some((_, sum, measure)) => {
                *sum += ratio;
                *measure = measure.and(written);
            }
            None => ratios.push((material, ratio, written)),
        }
    }
    ratios.retain(|(_, ratio, _)| ratio.is_positive());
    ratios.sort_unstable_by_key(|(material, ..)| *material);
    let ingredient = |(material, exact, written)| Ingredient::new(material, exact, written);
    Ok(ratios.into_iter().map(ingredient).collect())
}

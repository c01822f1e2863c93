//! The base that formulas go into: one plastisol, or a blend.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use num_rational::BigRational;
use num_traits::{One, Signed, Zero};

use super::mass::{exact, exact_mass};
use super::{Formula, FormulaError, Ingredient, WrittenIn};
use crate::exact::Product;
use crate::material::{Kind, MaterialError};
use crate::mix::{MaterialId, Materials};
use crate::quantity::{Measurable, System};

/// The base that several formulas share.
pub(super) struct Base {
    pub(super) parts: Vec<Ingredient>,
    /// 1/ρ of the base as the cup measures it, exact; `None` where a density is missing.
    volume_per_mass: Result<BigRational, MaterialError>,
}

impl Base {
    pub(super) fn of(
        formulas: &[&Formula],
        default_base: Option<MaterialId>,
        materials: &Materials,
        system: System,
    ) -> Result<Self, FormulaError> {
        let mut chosen: Option<(&str, Vec<(MaterialId, BigRational)>)> = None;
        for formula in formulas.iter().filter(|formula| !formula.base.is_empty()) {
            let parts = blend(formula, materials, system)?;
            match &chosen {
                None => chosen = Some((&formula.name, parts)),
                Some((first, other)) if *other != parts => {
                    return Err(FormulaError::DifferentBases {
                        first: (*first).to_string(),
                        second: formula.name.clone(),
                    });
                }
                Some(_) => {}
            }
        }
        let parts = match (chosen, default_base) {
            (Some((_, parts)), _) => parts,
            (None, Some(base)) => {
                check_base(&names(formulas), base, materials)?;
                Vec::from([(base, BigRational::one())])
            }
            (None, None) => return Err(FormulaError::NoBase(names(formulas))),
        };
        let volume_per_mass = volume_per_mass(&parts, materials)?;
        let per = formulas.iter().find_map(|formula| formula.per.as_ref());
        let written = per.map_or(WrittenIn::Mass, WrittenIn::of);
        let part = |(material, exact)| Ingredient::new(material, exact, written);
        let parts = parts.into_iter().map(part).collect();
        Ok(Self { parts, volume_per_mass })
    }

    pub(super) fn volume_per_mass(&self) -> Result<&BigRational, FormulaError> {
        self.volume_per_mass.as_ref().map_err(|missing| missing.clone().into())
    }
}

/// Formulas as one text: `dusk + plain`.
fn names(formulas: &[&Formula]) -> String {
    let names: Vec<&str> = formulas.iter().map(|formula| formula.name.as_str()).collect();
    names.join(" + ")
}

/// The exact mass shares of a formula's base, by material.
fn blend(
    formula: &Formula,
    materials: &Materials,
    system: System,
) -> Result<Vec<(MaterialId, BigRational)>, FormulaError> {
    if let [only] = formula.base.as_slice() {
        check_base(&formula.name, only.material, materials)?;
        return Ok(Vec::from([(only.material, BigRational::one())]));
    }
    let mut parts = Vec::new();
    for part in &formula.base {
        check_base(&formula.name, part.material, materials)?;
        let mass = exact_mass(part, formula, materials, system)?.reduced();
        if !mass.is_positive() {
            return Err(FormulaError::EmptyBase(formula.name.clone()));
        }
        parts.push((part.material, mass));
    }
    let total = parts.iter().fold(BigRational::zero(), |sum, (_, mass)| sum + mass);
    let mut parts: Vec<_> =
        parts.into_iter().map(|(material, mass)| (material, mass / &total)).collect();
    parts.sort_by_key(|(material, _)| *material);
    Ok(parts)
}

fn check_base(
    formula: &str,
    material: MaterialId,
    materials: &Materials,
) -> Result<(), FormulaError> {
    let material = materials.get(material)?;
    if material.kind == Kind::Plastisol {
        Ok(())
    } else {
        Err(FormulaError::BaseIsNoPlastisol {
            formula: formula.to_string(),
            material: material.name.clone(),
            kind: material.kind,
        })
    }
}

fn volume_per_mass(
    parts: &[(MaterialId, BigRational)],
    materials: &Materials,
) -> Result<Result<BigRational, MaterialError>, FormulaError> {
    let mut sum = BigRational::zero();
    for (material, share) in parts {
        match materials.get(*material)?.true_density("measuring the base by volume") {
            Ok(density) => {
                sum += Product::from(share).over(&exact(density.get().si())?).reduced();
            }
            Err(missing) => return Ok(Err(missing)),
        }
    }
    Ok(Ok(sum))
}

//! The exact mass of a dose as it was written.

use alloc::string::ToString;

use super::{Dose, Formula, FormulaError};
use crate::exact::Product;
use crate::mix::Materials;
use crate::quantity::{Amount, AmountError, Dimension, Measurable, System};

/// Exact mass of a dose: m, ρV, βV or n·m_drop.
pub(super) fn exact_mass(
    dose: &Dose,
    formula: &Formula,
    materials: &Materials,
    system: System,
) -> Result<Product, FormulaError> {
    let material = materials.get(dose.material)?;
    let amount = exact_si(&dose.amount, system)?;
    match (dose.amount.basis(), dose.amount.dimension()) {
        (None, Dimension::MASS) => Ok(amount),
        (None, Dimension::VOLUME) => {
            let density = material.by_volume("measuring it by volume")?.density();
            Ok(amount * exact(density.si())?)
        }
        (None, Dimension::COUNT) => {
            Ok(amount * exact(material.drop_mass("counting its drops")?.si())?)
        }
        _ => Err(FormulaError::BadAmount {
            formula: formula.name.clone(),
            amount: dose.amount.to_string(),
        }),
    }
}

/// An amount in SI units, exactly.
pub(super) fn exact_si(amount: &Amount, system: System) -> Result<Product, AmountError> {
    Ok(Product::from(amount.value()) * Product::from(amount.unit().factor(system)?))
}

/// A density or a drop, exactly.
pub(super) fn exact(value: f64) -> Result<Product, FormulaError> {
    Product::of_positive(value).ok_or(FormulaError::BadProperty(value))
}

//! Ratios of a whole formula as the bench measures it.

use alloc::vec::Vec;

use super::MeasureError;
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, Ratio};

/// The mass that a formula wants of a material, and the mass that it really gets.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct DoseGiven {
    /// Mass by the formula; positive.
    pub wanted: Mass,
    /// Mass as measured; not negative.
    pub given: Mass,
}

/// How far the doses of a formula are off, each as a ratio to the base that was really taken.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct FormulaDeviation {
    /// The relative deviation of each dose's ratio to base, in the order of the doses.
    pub doses: Vec<Ratio>,
    /// Index and deviation of the dose that is farthest off, the first of equals; `None` where
    /// the formula has no dose.
    pub worst: Option<(usize, Ratio)>,
}

/// The relative deviation of a dose's ratio to base: (g/G) / (w/W) − 1, with w wanted and g given
/// of the dose, W and G of the base (of a blend its total).
///
/// A dose 2 % short in a base 2 % short is no deviation: color and hardness follow the ratio.
///
/// # Errors
///
/// [`MeasureError::Parameters`] for a wanted mass or a given base that is not positive and finite,
/// or a given dose that is negative or not finite.
pub fn dose_deviation(dose: DoseGiven, base: DoseGiven) -> Result<Ratio, MeasureError> {
    let mut check = Check::new();
    check
        .number(Parameter::BaseMass, base.wanted.value)
        .number(Parameter::BaseMass, base.given.value)
        .number(Parameter::MassToMeasure, dose.wanted.value)
        .number(Parameter::PartMass, dose.given.value);
    check.finish()?;
    let ratio = (dose.given / dose.wanted).value / (base.given / base.wanted).value;
    Ok(Ratio::from(ratio - 1.0))
}

/// [`dose_deviation`] of every dose, and the worst of them.
///
/// # Errors
///
/// Those of [`dose_deviation`].
pub fn formula_deviation(
    base: DoseGiven,
    doses: &[DoseGiven],
) -> Result<FormulaDeviation, MeasureError> {
    let doses = doses
        .iter()
        .map(|&dose| dose_deviation(dose, base))
        .collect::<Result<Vec<Ratio>, MeasureError>>()?;
    let mut worst: Option<(usize, Ratio)> = None;
    for (index, &deviation) in doses.iter().enumerate() {
        if worst.is_none_or(|(_, farthest)| deviation.value.abs() > farthest.value.abs()) {
            worst = Some((index, deviation));
        }
    }
    Ok(FormulaDeviation { doses, worst })
}

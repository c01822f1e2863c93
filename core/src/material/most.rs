//! The largest dose of a material that does no harm.

use alloc::borrow::Cow;
use alloc::string::{String, ToString};
use core::fmt;
use core::str::FromStr;

use super::{Material, MaterialError};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::quantity::{
    Amount, AmountError, Basis, By, Dimension, Mass, MassDensity, Ratio, Share, System, Volume,
};

/// The largest dose of a material that does no harm: an amount per amount of base, `3 tsp per 1 cup`, or a share of the base
/// by mass, `4 % of base`.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct MostDose {
    amount: Amount,
    /// `None` of a share.
    per: Option<Amount>,
}

impl MostDose {
    /// The dose in mass per mass of base, for a base of `density`, cold and liquid. Household words are those of `system`.
    ///
    /// # Errors
    /// A density or a drop of the material is missing.
    pub fn ratio(
        &self,
        material: &Material,
        density: MassDensity,
        system: System,
    ) -> Result<Ratio, MaterialError> {
        let Some(per) = &self.per else { return Ok(self.amount.to(system)?) };
        let dose = material.mass_of(&self.amount, system, "its largest dose")?;
        let base = match per.dimension() {
            Dimension::VOLUME => density * per.to::<Volume>(system)?,
            _ => per.to::<Mass>(system)?,
        };
        Ok(dose / base)
    }
}

impl FromStr for MostDose {
    type Err = MostDoseError;

    fn from_str(text: &str) -> Result<Self, MostDoseError> {
        let shape = || MostDoseError::Shape(text.to_string());
        let Some((amount, per)) = text.split_once(" per ") else {
            let amount = Amount::parse(text)?;
            let of_base = Some(Basis { share: Share::OfBase, by: By::Mass });
            return if amount.basis() == of_base {
                Ok(Self { amount, per: None })
            } else {
                Err(shape())
            };
        };
        let (amount, per) = (Amount::parse(amount)?, Amount::parse(per)?);
        let is_dose = amount.basis().is_none()
            && (amount.drops().is_some()
                || matches!(amount.dimension(), Dimension::VOLUME | Dimension::MASS));
        let is_base = matches!(per.dimension(), Dimension::VOLUME | Dimension::MASS)
            && !per.value().is_zero();
        if is_dose && is_base { Ok(Self { amount, per: Some(per) }) } else { Err(shape()) }
    }
}

impl fmt::Display for MostDose {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match &self.per {
            Some(per) => write!(f, "{} per {per}", self.amount),
            None => self.amount.fmt(f),
        }
    }
}

/// Why a text is no largest dose.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MostDoseError {
    /// It is not an amount per amount of base.
    #[error("\"{0}\" does not read as a dose per amount of base.")]
    Shape(String),
    /// One of its amounts cannot be read.
    #[error(transparent)]
    Amount(#[from] AmountError),
}

impl Diagnose for MostDoseError {
    codes! {
        Self::Shape(_) => "most-dose-shape",
        Self::Amount(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Shape(_) => {
                "Write an amount per amount of base, such as \"3 tsp per 1 cup\", or a share, such as \"4 % of base\".".into()
            }
            Self::Amount(error) => error.help(),
        }
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;
    use crate::material::Kind;
    use crate::quantity::{Measurable, Measured};

    // By hand: 3 tsp are 1/16 of a cup; of 1.02 g/mL in a base of 1.03 g/mL 0.0619.
    #[rstest]
    #[case("3 tsp per 1 cup", 1.02 / 1.03 / 16.0)]
    #[case("6 g per 120 g", 0.05)]
    #[case("20 drops per 100 g", 0.01)]
    #[case("4 % of base", 0.04)]
    fn a_largest_dose_is_a_ratio(#[case] text: &str, #[case] ratio: f64) {
        let most: MostDose = text.parse().unwrap();
        assert_eq!(most.to_string(), text);
        let material = Material {
            density: Some(Measured::exact(MassDensity::from_si(1020.0))),
            drop: Some(super::super::Drop::Mass(Measured::exact(Mass::from_si(5e-5)))),
            ..Material::new("stabilizer", Kind::Stabilizer)
        };
        let found =
            most.ratio(&material, MassDensity::from_si(1030.0), System::UsCustomary).unwrap();
        assert!((found.value - ratio).abs() < 1e-12 * ratio, "{found:?}");
    }

    #[rstest]
    #[case("3 tsp", "most-dose-shape")]
    #[case("3 % of finished", "most-dose-shape")]
    #[case("3 % of base per 1 cup", "most-dose-shape")]
    #[case("3 tsp per 2 drops", "most-dose-shape")]
    #[case("3 tsp per 0 cup", "most-dose-shape")]
    #[case("3 min per 1 cup", "most-dose-shape")]
    #[case("3 per 1 cup", "amount-no-unit")]
    fn what_is_none_says_why(#[case] text: &str, #[case] code: &str) {
        let error = text.parse::<MostDose>().unwrap_err();
        assert_eq!(error.code(), code, "{error}");
        assert!(!error.help().is_empty());
    }
}

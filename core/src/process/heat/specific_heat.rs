//! The specific heat of a mix, as a line in temperature.

use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::temperature_coefficient::per_kelvin;

use super::HeatError;
use super::load::check;
use crate::check::{is_not_negative, is_positive};
use crate::quantity::{
    Mass, SpecificHeatCapacity, TemperatureCoefficient, ThermodynamicTemperature,
};

/// Where the value of a [`SpecificHeat`] holds: 25 °C, the temperature of most tables, in K.
pub(super) const REFERENCE: f64 = 298.15;

/// Rises that keep a specific heat above zero at every temperature of a pot, in 1/K.
const RISES: (f64, f64) = (-0.002, 0.01);

/// A specific heat as a line in temperature: c_p(T) = c (1 + k (T − 25 °C)).
///
/// Between 20 and 180 °C the specific heat of a plasticizer is a line within 1.5 %: that of DEHP is
/// 1.80 J/(g K) at 25 °C and rises by 0.0030 J/(g K) per kelvin, k = 0.00167 1/K (Zábranský et al., Heat
/// Capacity of Liquids). Without a rise it is constant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpecificHeat {
    value: SpecificHeatCapacity,
    rise: TemperatureCoefficient,
}

impl From<SpecificHeatCapacity> for SpecificHeat {
    fn from(value: SpecificHeatCapacity) -> Self {
        Self { value, rise: TemperatureCoefficient::new::<per_kelvin>(0.0) }
    }
}

impl SpecificHeat {
    /// `value` at 25 °C, rising by the share `rise` of that per kelvin.
    ///
    /// # Errors
    /// [`HeatError::OutOfRange`] for a value that is not above zero or a rise outside -0.002 to 0.01 1/K.
    pub fn new(
        value: SpecificHeatCapacity,
        rise: TemperatureCoefficient,
    ) -> Result<Self, HeatError> {
        Self::line(value, rise).checked("The specific heat")
    }

    /// The same before it is checked.
    pub(crate) const fn line(value: SpecificHeatCapacity, rise: TemperatureCoefficient) -> Self {
        Self { value, rise }
    }

    /// The value at 25 °C.
    #[must_use]
    pub fn value(self) -> SpecificHeatCapacity {
        self.value
    }

    /// The rise per kelvin, as a share of the value at 25 °C.
    #[must_use]
    pub fn rise(self) -> TemperatureCoefficient {
        self.rise
    }

    /// The specific heat at `temperature`.
    #[must_use]
    pub fn at(self, temperature: ThermodynamicTemperature) -> SpecificHeatCapacity {
        self.value * (1.0 + self.rise.value * (temperature.value - REFERENCE))
    }

    pub(super) fn checked(self, what: &'static str) -> Result<Self, HeatError> {
        check(what, self.value.value, is_positive)?;
        check("The rise of the specific heat", self.rise.value, |rise| {
            (RISES.0..=RISES.1).contains(&rise)
        })?;
        Ok(self)
    }
}

/// The specific heat of a mix, c_p = Σ m_i c_i / Σ m_i: the share of salt, flake and plasticizer each.
///
/// Additivity holds for constituents that do not react; a pot of 70 % plasticizer and 30 % resin comes
/// out at 1.55 J/(g K), inside the 1.2 to 2.0 J/(g K) that material databases give for it.
///
/// # Errors
/// [`HeatError::OutOfRange`] for a mass below zero or a specific heat that is not above zero;
/// [`HeatError::Nothing`] where the masses sum to zero.
pub fn mix_specific_heat(parts: &[(Mass, SpecificHeat)]) -> Result<SpecificHeat, HeatError> {
    let (mut mass, mut heat, mut rising) = (0.0, 0.0, 0.0);
    for (part, specific_heat) in parts {
        check("The mass of a constituent", part.value, is_not_negative)?;
        let SpecificHeat { value, rise } =
            specific_heat.checked("The specific heat of a constituent")?;
        mass += part.value;
        heat += part.value * value.value;
        rising += part.value * value.value * rise.value;
    }
    if is_positive(mass) {
        Ok(SpecificHeat {
            value: SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(heat / mass),
            rise: TemperatureCoefficient::new::<per_kelvin>(rising / heat),
        })
    } else {
        Err(HeatError::Nothing)
    }
}

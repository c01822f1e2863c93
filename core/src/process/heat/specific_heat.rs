//! The specific heat of a mix, as a line in temperature.

use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::temperature_coefficient::per_kelvin;

use super::HeatError;
use crate::check::is_positive;
use crate::parameter::{Check, Parameter, ParameterErrors};
use crate::quantity::{
    Mass, SpecificHeatCapacity, TemperatureCoefficient, ThermodynamicTemperature,
};

/// Where the value of a [`SpecificHeat`] holds: 25 °C, the temperature of most tables, in K.
pub(super) const REFERENCE: f64 = 298.15;

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
    /// [`HeatError::Parameters`] for a value outside 0.1 to 10 J/(g K), or a rise outside -0.002 to 0.01 1/K, which keep
    /// it above zero at every temperature of a pot.
    pub fn new(
        value: SpecificHeatCapacity,
        rise: TemperatureCoefficient,
    ) -> Result<Self, HeatError> {
        let line = Self::line(value, rise);
        line.checked()?;
        Ok(line)
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

    /// Whether both numbers are in their ranges.
    pub(super) fn checked(self) -> Result<(), ParameterErrors> {
        let mut check = Check::new();
        check
            .number(Parameter::SpecificHeat, self.value.value)
            .number(Parameter::SpecificHeatRise, self.rise.value);
        check.finish()
    }
}

/// The specific heat of a mix, c_p = Σ m_i c_i / Σ m_i: the share of salt, flake and plasticizer each.
///
/// Additivity holds for constituents that do not react; a pot of 70 % plasticizer and 30 % resin comes
/// out at 1.55 J/(g K), inside the 1.2 to 2.0 J/(g K) that material databases give for it.
///
/// # Errors
/// [`HeatError::Parameters`] for a mass below zero or a specific heat outside its range, with the index of the constituent;
/// [`HeatError::Nothing`] where the masses sum to zero.
pub fn mix_specific_heat(parts: &[(Mass, SpecificHeat)]) -> Result<SpecificHeat, HeatError> {
    let (mut mass, mut heat, mut rising) = (0.0, 0.0, 0.0);
    let mut check = Check::new();
    for (index, (part, SpecificHeat { value, rise })) in parts.iter().enumerate() {
        check
            .element(Parameter::PartMass, index, part.value)
            .element(Parameter::SpecificHeat, index, value.value)
            .element(Parameter::SpecificHeatRise, index, rise.value);
        mass += part.value;
        heat += part.value * value.value;
        rising += part.value * value.value * rise.value;
    }
    check.finish()?;
    if is_positive(mass) {
        Ok(SpecificHeat {
            value: SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(heat / mass),
            rise: TemperatureCoefficient::new::<per_kelvin>(rising / heat),
        })
    } else {
        Err(HeatError::Nothing)
    }
}

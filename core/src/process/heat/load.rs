//! What stands in the oven.

use uom::si::heat_capacity::joule_per_kelvin;
use uom::si::mass::kilogram;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;

use super::HeatError;
use crate::check::{is_not_negative, is_positive};
use crate::quantity::{HeatCapacity, Mass, SpecificHeatCapacity};

/// Mix and vessels that are heated together: one load, however many cups.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    mass: Mass,
    heat_capacity: HeatCapacity,
}

impl Load {
    /// `mass` of a mix of specific heat `specific_heat` in a vessel of heat capacity `vessel`; zero
    /// where the vessel is light, or where it is left to the timings.
    ///
    /// # Errors
    /// [`HeatError::OutOfRange`] for a mass or specific heat that is not above zero, or a vessel below
    /// zero.
    pub fn new(
        mass: Mass,
        specific_heat: SpecificHeatCapacity,
        vessel: HeatCapacity,
    ) -> Result<Self, HeatError> {
        check("The mass of the mix", mass.value, is_positive)?;
        check("The specific heat of the mix", specific_heat.value, is_positive)?;
        check("The heat capacity of the vessel", vessel.value, is_not_negative)?;
        Ok(Self { mass, heat_capacity: mass * specific_heat + vessel })
    }

    /// Cups that are heated together.
    ///
    /// # Errors
    /// [`HeatError::Nothing`] for no cup at all.
    pub fn together(cups: &[Self]) -> Result<Self, HeatError> {
        let start = Self {
            mass: Mass::new::<kilogram>(0.0),
            heat_capacity: HeatCapacity::new::<joule_per_kelvin>(0.0),
        };
        let sum = cups.iter().fold(start, |sum, cup| Self {
            mass: sum.mass + cup.mass,
            heat_capacity: sum.heat_capacity + cup.heat_capacity,
        });
        if cups.is_empty() { Err(HeatError::Nothing) } else { Ok(sum) }
    }

    /// The mass of the mix, without the vessel.
    #[must_use]
    pub fn mass(self) -> Mass {
        self.mass
    }

    /// m c_p + C_vessel.
    #[must_use]
    pub fn heat_capacity(self) -> HeatCapacity {
        self.heat_capacity
    }
}

/// The specific heat of a mix, c_p = Σ m_i c_i / Σ m_i: what salt, flake and plasticizer each take.
///
/// Additivity holds for constituents that do not react; a pot of 70 % plasticizer and 30 % resin comes
/// out at 1.55 J/(g K), inside the 1.2 to 2.0 J/(g K) that material databases give for it.
///
/// # Errors
/// [`HeatError::OutOfRange`] for a mass below zero or a specific heat that is not above zero;
/// [`HeatError::Nothing`] where the masses sum to zero.
pub fn mix_specific_heat(
    parts: &[(Mass, SpecificHeatCapacity)],
) -> Result<SpecificHeatCapacity, HeatError> {
    let (mut mass, mut heat) = (0.0, 0.0);
    for (part, specific_heat) in parts {
        check("The mass of a constituent", part.value, is_not_negative)?;
        check("The specific heat of a constituent", specific_heat.value, is_positive)?;
        mass += part.value;
        heat += part.value * specific_heat.value;
    }
    if is_positive(mass) {
        Ok(SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(heat / mass))
    } else {
        Err(HeatError::Nothing)
    }
}

pub(super) fn check(
    what: &'static str,
    value: f64,
    is_right: fn(f64) -> bool,
) -> Result<(), HeatError> {
    if is_right(value) { Ok(()) } else { Err(HeatError::OutOfRange { what, value }) }
}

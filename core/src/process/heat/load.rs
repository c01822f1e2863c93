//! The cups in the oven.

use uom::si::energy::joule;
use uom::si::mass::kilogram;
use uom::si::thermodynamic_temperature::kelvin;

use super::specific_heat::REFERENCE;
use super::{HeatError, SpecificHeat};
use crate::parameter::{Check, Parameter};
use crate::quantity::{Energy, HeatCapacity, Mass, ThermodynamicTemperature};

/// Cups are alike where the largest has at most this many times the mass and the heat capacity of the
/// smallest: common practice, no source.
pub const ALIKE: f64 = 1.1;

/// How much more power than the mean one of several alike cups may take up, by its place in the oven:
/// common practice, no source.
const UNEVEN: f64 = 1.1;

/// Mix and vessels that are heated together: one cup, or several that are alike.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Load {
    mass: Mass,
    /// Σ m c at 25 °C in J/K, and its rise per kelvin in J/K².
    mix: f64,
    rising: f64,
    /// Of the vessels, in J/K.
    vessel: f64,
    /// How much faster than the mean the fastest of several cups may heat.
    uneven: f64,
}

impl Load {
    /// `mass` of a mix of `specific_heat` in a vessel of heat capacity `vessel`; zero where the vessel
    /// is light, or where it is left to the timings.
    ///
    /// # Errors
    /// [`HeatError::Parameters`] for a number outside its range.
    pub fn new(
        mass: Mass,
        specific_heat: impl Into<SpecificHeat>,
        vessel: HeatCapacity,
    ) -> Result<Self, HeatError> {
        let specific_heat = specific_heat.into();
        let mut check = Check::new();
        check
            .number(Parameter::PotMass, mass.value)
            .merge(specific_heat.checked())
            .number(Parameter::VesselHeatCapacity, vessel.value);
        check.finish()?;
        let mix = mass.value * specific_heat.value().value;
        let rising = mix * specific_heat.rise().value;
        Ok(Self { mass, mix, rising, vessel: vessel.value, uneven: 1.0 })
    }

    /// Alike `cups` on one clock: vessels of the same heat capacity, and masses within a tenth of each
    /// other ([`ALIKE`]). Each then takes up an equal share of the power, a tenth more at most.
    ///
    /// # Errors
    /// [`HeatError::Nothing`] for no cup at all; [`HeatError::Unlike`] for cups that are not alike: the
    /// small one would be scorched before the large one is hot.
    pub fn together(cups: &[Self]) -> Result<Self, HeatError> {
        let (Some(first), count) = (cups.first().copied(), cups.len() as f64) else {
            return Err(HeatError::Nothing);
        };
        let (mut smallest, mut largest, mut lightest) = (first.mass, first.mass, first.capacity());
        let (mut heaviest, mut vessels) = (lightest, (first.vessel, first.vessel));
        let mut sum =
            Self { mass: Mass::new::<kilogram>(0.0), mix: 0.0, rising: 0.0, vessel: 0.0, ..first };
        for cup in cups {
            smallest = if cup.mass < smallest { cup.mass } else { smallest };
            largest = if cup.mass > largest { cup.mass } else { largest };
            lightest = lightest.min(cup.capacity());
            heaviest = heaviest.max(cup.capacity());
            vessels = (vessels.0.min(cup.vessel), vessels.1.max(cup.vessel));
            sum = Self {
                mass: sum.mass + cup.mass,
                mix: sum.mix + cup.mix,
                rising: sum.rising + cup.rising,
                vessel: sum.vessel + cup.vessel,
                ..sum
            };
        }
        // Rounding must not part cups that are alike.
        let alike = ALIKE * (1.0 + 1e-9);
        if largest > smallest * alike
            || heaviest > lightest * alike
            || vessels.1 > vessels.0 * alike
        {
            return Err(HeatError::Unlike { smallest, largest });
        }
        if count > 1.0 {
            sum.uneven = UNEVEN * sum.capacity() / (count * lightest);
        }
        Ok(sum)
    }

    /// The mass of the mix, without the vessel.
    #[must_use]
    pub fn mass(self) -> Mass {
        self.mass
    }

    /// m c_p + C_vessel at 25 °C.
    #[must_use]
    pub fn heat_capacity(self) -> HeatCapacity {
        HeatCapacity::new::<uom::si::heat_capacity::joule_per_kelvin>(self.capacity())
    }

    /// The heat that takes the load `from` one temperature `to` another, ∫ (m c_p(T) + C_vessel) dT.
    #[must_use]
    pub fn heat(self, from: ThermodynamicTemperature, to: ThermodynamicTemperature) -> Energy {
        Energy::new::<joule>(self.enthalpy(to) - self.enthalpy(from))
    }

    /// The temperature of the load once it has taken up `heat`, or given off as much where that is below
    /// zero; never below 0 K.
    #[must_use]
    pub fn after(self, from: ThermodynamicTemperature, heat: Energy) -> ThermodynamicTemperature {
        let enthalpy = self.enthalpy(from) + heat.value;
        let capacity = self.capacity();
        // capacity · u + rising/2 · u² = enthalpy, u = T − 25 °C; in this form it has no cancellation.
        let square = capacity * capacity + 2.0 * self.rising * enthalpy;
        let above = 2.0 * enthalpy / (capacity + libm::sqrt(square.max(0.0)));
        ThermodynamicTemperature::new::<kelvin>((REFERENCE + above).max(0.0))
    }

    /// How much faster than the mean the fastest of several cups may heat; 1 for a cup alone.
    pub(super) fn uneven(self) -> f64 {
        self.uneven
    }

    /// The same load at another mass of the mix.
    pub(super) fn of_mass(self, mass: Mass) -> Self {
        let share = (mass / self.mass).value;
        Self { mass, mix: self.mix * share, rising: self.rising * share, ..self }
    }

    fn capacity(self) -> f64 {
        self.mix + self.vessel
    }

    /// In J, from 25 °C on.
    fn enthalpy(self, at: ThermodynamicTemperature) -> f64 {
        let above = at.value - REFERENCE;
        above * (self.capacity() + 0.5 * self.rising * above)
    }
}

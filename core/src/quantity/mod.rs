//! Quantities, exact units, and amounts as a person measures them.

#[rustfmt::skip]
pub use uom::si::f64::{
    Area, HeatCapacity, Length, Mass, MassDensity, MolarEnergy, Power, Pressure, Ratio,
    SpecificHeatCapacity, TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature,
    Time, Velocity, Volume,
};

//! Quantities, exact units, and amounts as a person measures them.

#[rustfmt::skip]
pub use uom::si::f64::{
    Acceleration, Area, DynamicViscosity, Force, Length, Mass, MassDensity, Pressure, Ratio, SpecificHeatCapacity, TemperatureCoefficient,
    TemperatureInterval, ThermodynamicTemperature, Time, Velocity, Volume,
};

//! Quantities, exact units, and amounts as a person measures them.
//!
//! An [`Amount`] keeps what was written (`1 1/4 cup`) as an exact fraction of a [`Unit`]; with a
//! measuring [`System`] it becomes a uom quantity, rounded once:
//!
//! ```
//! use pourwright::quantity::{Amount, System, Unit, Volume};
//!
//! let dose = Amount::parse("1 1/4 cup")?;
//! let volume: Volume = dose.to(System::UsCustomary)?;
//! assert_eq!(volume.value, 295.735295625e-6);
//! assert_eq!(dose.in_unit(Unit::TSP, System::UsCustomary)?.to_string(), "60 tsp");
//! assert_eq!(
//!     Amount::parse("6 oz").unwrap_err().to_string(),
//!     "`6 oz` can be read as 6 fl oz or 6 oz wt."
//! );
//! # Ok::<(), pourwright::quantity::AmountError>(())
//! ```

mod amount;
mod conversion;
mod dimension;
#[cfg(feature = "document")]
mod document;
mod error;
mod format;
mod measured;
mod parse;
mod rational;
mod symbol;
mod system;
mod unit;

pub use amount::{Amount, Basis, By, Share, parse_share, value_in};
pub use conversion::Conversion;
pub use dimension::{Dimension, Measurable};
pub use error::AmountError;
pub use format::{nearest_fraction, nearest_household, nearest_multiple, significant};
pub(crate) use format::{significant_near, whole_near};
pub use measured::{Measured, MeasuredAmount, Spread, SpreadKind};
pub use rational::Rational;
pub(crate) use rational::{gcd, nearest};
pub use system::System;
pub use unit::Unit;

#[rustfmt::skip]
pub use uom::si::f64::{
    Acceleration, Area, DiffusionCoefficient, DynamicViscosity, Energy, Force, HeatCapacity, Length, Mass,
    MassDensity, MolarEnergy, Power, Pressure, Ratio, SpecificHeatCapacity,
    TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, Time, Velocity,
    Volume,
};

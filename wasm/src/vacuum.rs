//! The air outside, and what a pot does in a vacuum.

use pourwright::process::atmosphere::{GeometricAltitude, StationPressure};
use pourwright::process::degas::{EntrainedAir, Vacuum};
use pourwright::process::gauge::{Dial, VacuumReading};
use pourwright::quantity::{Length, Measurable};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{in_milliliters, milliliters, pascals, share};
use crate::refused::Refused;

/// The pressure of the standard atmosphere at an altitude.
///
/// # Errors
/// An altitude out of its range.
#[wasm_bindgen(js_name = airPressurePa)]
pub fn air_pressure_pa(altitude_m: f64) -> Result<f64, Refused> {
    let altitude = GeometricAltitude::new(Length::from_si(altitude_m))?;
    Ok(StationPressure::standard(altitude).get().si())
}

/// What a liquid takes up in a vacuum with the air that it holds, `air` its share of the mix outside.
///
/// # Errors
/// A vacuum that the air outside cannot give, or in which the liquid boils; a number out of its range.
#[wasm_bindgen(js_name = swollenMl)]
pub fn swollen_ml(
    liquid_ml: f64,
    air: f64,
    vacuum_pa: f64,
    air_pressure_pa: f64,
    vapor_pa: f64,
) -> Result<f64, Refused> {
    let local = StationPressure::measured(pascals(air_pressure_pa))?;
    let true_gauge = Dial::new(local.get(), share(0.0))?;
    let chamber = VacuumReading::new(pascals(vacuum_pa))?.absolute(local, true_gauge)?;
    let vacuum = Vacuum::new(local, chamber.absolute, pascals(vapor_pa))?;
    Ok(in_milliliters(vacuum.swollen(milliliters(liquid_ml), EntrainedAir::share(share(air))?)?))
}

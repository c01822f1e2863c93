//! Water by temperature, and a cavity by the water that it holds.

use std::mem::MaybeUninit;

use pourwright::Diagnose;
use pourwright::parameter::Parameter;
use pourwright::quantity::{Measurable, Pressure};
use pourwright::water;

use crate::error::{Error, Failure, Refused};
use crate::guard::guard;
use crate::memory::{finite, given};
use crate::number::{celsius, grams, in_grams_per_milliliter, in_milliliters};

/// Density of air-free water at 0 to 40 °C (Tanaka et al. 2001).
#[unsafe(no_mangle)]
pub extern "C" fn pour_water_density(
    at_celsius: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let found = given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        let at = celsius(finite("at_celsius", at_celsius)?);
        found.write(in_grams_per_milliliter(water::density(at).in_parameter("at_celsius")?));
        Ok(())
    })
}

/// Volume of a cavity from what the balance reads for the water in it, weighed in air of `air_kpa` (101.325 at sea
/// level, the local pressure and not that of a weather report).
#[unsafe(no_mangle)]
pub extern "C" fn pour_cavity_of_water(
    water_g: f64,
    at_celsius: f64,
    air_kpa: f64,
    cavity_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut cavity_ml = cavity_ml;
    guard(error, &mut || {
        let cavity_ml = given("cavity_ml", cavity_ml.as_deref_mut())?;
        let reading = grams(finite("water_g", water_g)?);
        let at = celsius(finite("at_celsius", at_celsius)?);
        let air = Pressure::from_si(finite("air_kpa", air_kpa)? * 1e3);
        let volume = water::volume_weighed(reading, at, air).map_err(|error| {
            let at = match error.parameter() {
                Some(Parameter::WaterTemperature) => "at_celsius",
                Some(Parameter::AirPressure) => "air_kpa",
                _ => "water_g",
            };
            Failure::of(at, &error)
        })?;
        cavity_ml.write(in_milliliters(volume));
        Ok(())
    })
}

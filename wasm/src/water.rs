//! Water, and the cavity that it fills.

use pourwright::water;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{celsius, grams, in_grams_per_milliliter, in_milliliters, pascals};
use crate::refused::Refused;

/// The density of water.
///
/// # Errors
/// A temperature outside 0 to 40 °C.
#[wasm_bindgen(js_name = waterDensityGPerMl)]
pub fn water_density_g_per_ml(temperature_celsius: f64) -> Result<f64, Refused> {
    Ok(in_grams_per_milliliter(water::density(celsius(temperature_celsius))?))
}

/// The volume of a cavity from what the balance reads for the water in it.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = cavityMl)]
pub fn cavity_ml(
    water_g: f64,
    temperature_celsius: f64,
    air_pressure_pa: f64,
) -> Result<f64, Refused> {
    let (temperature, air) = (celsius(temperature_celsius), pascals(air_pressure_pa));
    Ok(in_milliliters(water::volume_weighed(grams(water_g), temperature, air)?))
}

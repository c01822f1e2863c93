//! How fast a piece sinks.

use pourwright::process::seawater::{Salinity, Water};
use pourwright::process::sink::{Body, Shape};
use pourwright::salt::Hook;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{
    celsius, centimeters_per_second, grams, grams_per_milliliter, in_centimeters_per_second,
    in_grams_per_milliliter, milliliters, millimeters,
};
use crate::refused::Refused;

/// The final speed of a sinking piece, a model value. A piece without a length is a ball.
///
/// # Errors
/// A piece that floats, or for which there is no published drag; a number out of its range.
#[wasm_bindgen(js_name = sinkSpeedCmPerS)]
#[allow(clippy::too_many_arguments)] // the wrapper takes them by name
pub fn sink_speed_cm_per_s(
    density_g_per_ml: f64,
    volume_ml: f64,
    diameter_mm: f64,
    length_mm: Option<f64>,
    hook_g: f64,
    hook_ml: f64,
    water_celsius: f64,
    salinity: f64,
) -> Result<f64, Refused> {
    let body = body(volume_ml, diameter_mm, length_mm, hook_g, hook_ml);
    let water = water(water_celsius, salinity)?;
    Ok(in_centimeters_per_second(body.fall(grams_per_milliliter(density_g_per_ml), &water)?.speed))
}

/// The density at which a piece sinks at a speed: a finished density to salt for.
///
/// # Errors
/// As [`sink_speed_cm_per_s`].
#[wasm_bindgen(js_name = densityForSinkSpeedGPerMl)]
#[allow(clippy::too_many_arguments)] // the wrapper takes them by name
pub fn density_for_sink_speed_g_per_ml(
    speed_cm_per_s: f64,
    volume_ml: f64,
    diameter_mm: f64,
    length_mm: Option<f64>,
    hook_g: f64,
    hook_ml: f64,
    water_celsius: f64,
    salinity: f64,
) -> Result<f64, Refused> {
    let body = body(volume_ml, diameter_mm, length_mm, hook_g, hook_ml);
    let water = water(water_celsius, salinity)?;
    Ok(in_grams_per_milliliter(body.density_for(centimeters_per_second(speed_cm_per_s), &water)?))
}

fn body(
    volume_ml: f64,
    diameter_mm: f64,
    length_mm: Option<f64>,
    hook_g: f64,
    hook_ml: f64,
) -> Body {
    let diameter = millimeters(diameter_mm);
    let shape = match length_mm {
        Some(mm) => Shape::Stick { diameter, length: millimeters(mm) },
        None => Shape::Ball { diameter },
    };
    let hook = Hook { mass: grams(hook_g), volume: milliliters(hook_ml) };
    Body { volume: milliliters(volume_ml), hook, shape, own_drag: None }
}

fn water(temperature_celsius: f64, salinity: f64) -> Result<Water, Refused> {
    Ok(Water::new(celsius(temperature_celsius), Salinity::Practical(salinity))?)
}

//! How far apart two colors are.

use pourwright::color::difference::ciede2000;
use pourwright::color::lab::Lab;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::refused::Refused;

/// The color difference ΔE₀₀ (CIEDE2000).
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = colorDifference)]
pub fn color_difference(
    lightness: f64,
    a: f64,
    b: f64,
    other_lightness: f64,
    other_a: f64,
    other_b: f64,
) -> Result<f64, Refused> {
    let one = lab("/one", lightness, a, b)?;
    Ok(ciede2000(&one, &lab("/other", other_lightness, other_a, other_b)?))
}

fn lab(path: &str, lightness: f64, a: f64, b: f64) -> Result<Lab, Refused> {
    Lab::new(lightness, a, b).map_err(|error| Refused::at(path, &error))
}

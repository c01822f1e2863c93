//! Softener and hardness, between the shop's own measured points.

use pourwright::softener::{Hardness, HardnessCurve, HardnessPoint, Scale, SoftenerError};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::share;
use crate::refused::Refused;

/// The reading that a ratio of softener to base gives.
///
/// # Errors
/// Points that make no curve; a ratio outside them.
#[wasm_bindgen]
pub fn hardness(ratio: f64, ratios: &[f64], readings: &[f64]) -> Result<f64, Refused> {
    let points = points(ratios, readings);
    let hardness = HardnessCurve::new(&points).and_then(|curve| curve.hardness(share(ratio)));
    Ok(hardness.map_err(|error| refused(&error))?.reading)
}

/// The ratio of softener to base that gives a reading.
///
/// # Errors
/// Points that make no curve; a reading outside them.
#[wasm_bindgen(js_name = softenerRatio)]
pub fn softener_ratio(reading: f64, ratios: &[f64], readings: &[f64]) -> Result<f64, Refused> {
    let points = points(ratios, readings);
    let ratio = HardnessCurve::new(&points).and_then(|curve| curve.ratio(on_one_scale(reading)));
    Ok(ratio.map_err(|error| refused(&error))?.value)
}

/// The wrapper makes both lists from one list of points, so that they are equally long.
fn points(ratios: &[f64], readings: &[f64]) -> Vec<HardnessPoint> {
    let points = ratios.iter().zip(readings);
    points
        .map(|(&ratio, &reading)| HardnessPoint {
            ratio: share(ratio),
            hardness: on_one_scale(reading),
        })
        .collect()
}

/// Plain numbers are all of one scale; which one makes no difference to the curve.
fn on_one_scale(reading: f64) -> Hardness {
    Hardness { reading, scale: Scale::Shore00 }
}

/// The error at its parameter; the core counts the points from 1.
fn refused(error: &SoftenerError) -> Refused {
    let (point, number) = match *error {
        SoftenerError::RatioOutside { .. } => return Refused::at("/ratio", error),
        SoftenerError::HardnessOutside { .. } => return Refused::at("/reading", error),
        SoftenerError::Order { point } | SoftenerError::Turns { point } => (point, ""),
        _ => return Refused::at("/points", error),
    };
    Refused::at(&format!("/points/{}{number}", point.saturating_sub(1)), error)
}

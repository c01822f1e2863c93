//! What a shot takes and a piece weighs.

use pourwright::shot::{Cavity, Melt, Shot};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{grams, grams_per_milliliter, in_grams, milliliters, share};
use crate::refused::Refused;

/// The mass of a piece, fed the share `feed` of its contraction from the sprue.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = pieceG)]
pub fn piece_g(
    cavity_ml: f64,
    hot_g_per_ml: f64,
    cold_g_per_ml: f64,
    feed: f64,
    voids: f64,
) -> Result<f64, Refused> {
    let melt = Melt {
        hot: grams_per_milliliter(hot_g_per_ml),
        cold: grams_per_milliliter(cold_g_per_ml),
        voids: share(voids),
    };
    Ok(in_grams(melt.piece(milliliters(cavity_ml), share(feed))?))
}

/// What one shot takes: all cavities and the sprue, hot, and what topping off adds.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = shotG)]
pub fn shot_g(
    cavities: u32,
    cavity_ml: f64,
    hot_g_per_ml: f64,
    sprue_ml: f64,
    topped_g: f64,
    voids: f64,
) -> Result<f64, Refused> {
    let cavity = Cavity { volume: milliliters(cavity_ml), count: cavities };
    // What a shot takes is hot: the cold density and the feed say where it goes later.
    let hot = grams_per_milliliter(hot_g_per_ml);
    let shot = Shot {
        cavities: &[cavity],
        share: share(1.0),
        sprue: milliliters(sprue_ml),
        topped: grams(topped_g),
        feed: share(0.0),
        melt: Melt { hot, cold: hot, voids: share(voids) },
    };
    Ok(in_grams(shot.masses()?.fill))
}

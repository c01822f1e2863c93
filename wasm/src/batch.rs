//! Pieces to shots, shots to injector loads.

use pourwright::batch::{self, Injector, Rejects, Wanted};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{count, grams, grams_per_milliliter, milliliters, share};
use crate::refused::Refused;

/// The least shots that give so many good pieces, with this confidence where there are rejects.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen]
pub fn shots(pieces: f64, cavities: f64, rejects: f64, confidence: f64) -> Result<u32, Refused> {
    let wanted =
        Wanted { pieces: count("pieces", pieces)?, cavities: count("cavities", cavities)? };
    let rejects =
        (rejects != 0.0).then(|| Rejects { rate: share(rejects), confidence: share(confidence) });
    Ok(batch::shots(&[wanted], rejects)?)
}

/// The injector loads that so many shots take, whole shots in each.
///
/// # Errors
/// A shot that the injector does not hold; a number out of its range.
#[wasm_bindgen(js_name = injectorLoads)]
pub fn injector_loads(
    shots: f64,
    shot_g: f64,
    hot_g_per_ml: f64,
    holds_ml: f64,
    keeps_ml: f64,
) -> Result<u32, Refused> {
    let injector = Injector { holds: milliliters(holds_ml), keeps: milliliters(keeps_ml) };
    let shots = count("shots", shots)?;
    Ok(injector.loads(shots, grams(shot_g), grams_per_milliliter(hot_g_per_ml))?.loads)
}

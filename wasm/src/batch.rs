//! Pieces to shots, shots to injector loads.

use pourwright::batch::{self, BatchError, Injector, Rejects, Run, Wanted};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{grams, grams_per_milliliter, in_grams, milliliters, share};
use crate::refused::Refused;

/// The least shots that give so many good pieces, with this confidence where there are rejects.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen]
pub fn shots(pieces: u32, cavities: u32, rejects: f64, confidence: f64) -> Result<u32, Refused> {
    let rejects =
        (rejects != 0.0).then(|| Rejects { rate: share(rejects), confidence: share(confidence) });
    Ok(batch::shots(&[Wanted { pieces, cavities }], rejects)?)
}

/// The injector loads that so many shots take, whole shots in each.
///
/// # Errors
/// A shot that the injector does not hold; a number out of its range.
#[wasm_bindgen(js_name = injectorLoads)]
pub fn injector_loads(
    shots: u32,
    shot_g: f64,
    hot_g_per_ml: f64,
    holds_ml: f64,
    keeps_ml: f64,
) -> Result<u32, Refused> {
    let injector = Injector { holds: milliliters(holds_ml), keeps: milliliters(keeps_ml) };
    match injector.loads(shots, grams(shot_g), grams_per_milliliter(hot_g_per_ml)) {
        Ok(loads) => Ok(loads.loads),
        Err(error @ BatchError::NoPieces) => Err(Refused::at("/shots", &error)),
        Err(error) => Err(error.into()),
    }
}

/// How much to mix for so many pieces: the masses `total`, `drawn`, `returned`, `pieces`, `sprues` left, `kept` by the
/// injector and left `in cup`, in g, then the `shots`, the `shots per load`, the `loads` and the `shots in the last`.
///
/// # Errors
/// A shot that the injector does not hold; a number out of its range.
#[wasm_bindgen(js_name = batchNeed)]
#[allow(clippy::too_many_arguments)] // the wrapper takes them by name
pub fn batch_need(
    pieces: u32,
    cavities: u32,
    rejects: f64,
    confidence: f64,
    shot_g: f64,
    sprue_g: f64,
    returned: f64,
    hot_g_per_ml: f64,
    holds_ml: f64,
    keeps_ml: f64,
    cleanings: u32,
    film_g: f64,
    heel_g: f64,
) -> Result<Vec<f64>, Refused> {
    let shots = shots(pieces, cavities, rejects, confidence)?;
    let (fill, density) = (grams(shot_g), grams_per_milliliter(hot_g_per_ml));
    let injector = Injector { holds: milliliters(holds_ml), keeps: milliliters(keeps_ml) };
    let loads = injector.loads(shots, fill, density)?;
    let need = Run {
        shots,
        loads,
        fill,
        sprue: grams(sprue_g),
        returned: share(returned),
        injector_keeps: injector.kept(density)?,
        cleanings,
        film: grams(film_g),
        heel: grams(heel_g),
    }
    .need()?;
    let in_cup = need.in_cup;
    let masses =
        [need.total, need.drawn, need.returned, need.pieces, need.sprues_left, need.kept, in_cup];
    let counts = [shots, loads.shots_per_load, loads.loads, loads.shots_in_last];
    Ok(masses.into_iter().map(in_grams).chain(counts.map(f64::from)).collect())
}

//! Mixes of which only masses and densities are known, and the flakes in a dose.

use pourwright::flake::{Cut, Flake};
use pourwright::mix::{MixError, density_of_parts};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{
    grams, grams_per_milliliter, in_grams_per_milliliter, micrometers, true_density,
};
use crate::refused::Refused;

/// The density at 20 °C of constituents mixed: ρ = Σm/(Σm/ρ) · (1 − voids), solids with their true density.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = densityOfPartsGPerMl)]
pub fn density_of_parts_g_per_ml(
    voids: f64,
    masses_g: &[f64],
    densities_g_per_ml: &[f64],
) -> Result<f64, Refused> {
    let mut part = 0;
    let each = masses_g.iter().zip(densities_g_per_ml).enumerate();
    let each = each.map(|(index, (mass, density))| {
        part = index;
        (grams(*mass), grams_per_milliliter(*density))
    });
    density_of_parts(each, voids).map(in_grams_per_milliliter).map_err(|error| {
        // The part that was taken last is the wrong one.
        let at = match error {
            MixError::Parameters(_) => format!("/parts/{part}"),
            _ => "/parts".into(),
        };
        Refused::at(&at, &error)
    })
}

/// How many particles a dose of flake holds: m/(A · h · ρ), a nominal number.
///
/// # Errors
/// A cut that cannot be read; a number out of its range.
#[wasm_bindgen(js_name = flakeCount)]
pub fn flake_count(
    cut: &str,
    thickness_um: f64,
    film_g_per_ml: f64,
    dose_g: f64,
) -> Result<f64, Refused> {
    let cut = Cut::parse(cut).map_err(|error| Refused::at("/cut", &error))?;
    let film = true_density("/filmGPerMl", film_g_per_ml)?;
    Ok(Flake::new(cut, micrometers(thickness_um), film, None)?.particles(grams(dose_g))?)
}

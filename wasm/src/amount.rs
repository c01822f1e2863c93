//! Amounts as a person writes them.

use pourwright::material::{Drop, Kind, Material};
use pourwright::quantity::{Amount, Measured, System, Unit};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{grams, in_grams, in_milliliters, milliliters, true_density};
use crate::refused::Refused;

const DENSITY: &str = "/densityGPerMl";

/// How many of the unit `to` the amount is.
///
/// # Errors
/// An amount that cannot be read, an unknown unit, or one of another dimension.
#[wasm_bindgen]
pub fn convert(amount: &str, to: &str, measures: &str) -> Result<f64, Refused> {
    let amount = self::amount(amount)?;
    let unit = Unit::parse(to).map_err(|error| Refused::at("/to", &error))?;
    let converted = amount.in_unit(unit, system(measures)?);
    Ok(converted.map_err(|error| Refused::at("/amount", &error))?.value().to_f64())
}

/// The mass of an amount of a material: a volume of it by the density with which it is measured (of a liquid its own,
/// of a powder that as scooped), drops by the mass of one, 1/20 mL where that is not given.
///
/// # Errors
/// An amount that cannot be read, or that is no amount of a material.
#[wasm_bindgen(js_name = massG)]
pub fn mass_g(
    amount: &str,
    density_g_per_ml: f64,
    drop_g: Option<f64>,
    measures: &str,
) -> Result<f64, Refused> {
    // Whatever it is: it is measured as a liquid of that density is.
    let mut material = Material::new("the material", Kind::Other);
    material.density = Some(Measured::exact(true_density(DENSITY, density_g_per_ml)?.get()));
    material.drop = drop_g.map(|g| Drop::Mass(Measured::exact(grams(g))));
    let amount = self::amount(amount)?;
    Ok(in_grams(material.mass_of(&amount, system(measures)?, "the mass of the amount")?))
}

/// The mass of a volume: m = ρV.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = massOfVolumeG)]
pub fn mass_of_volume_g(volume_ml: f64, density_g_per_ml: f64) -> Result<f64, Refused> {
    Ok(in_grams(true_density(DENSITY, density_g_per_ml)?.mass_of(milliliters(volume_ml))))
}

/// The volume of a mass: V = m/ρ.
///
/// # Errors
/// A number out of its range.
#[wasm_bindgen(js_name = volumeOfMassMl)]
pub fn volume_of_mass_ml(mass_g: f64, density_g_per_ml: f64) -> Result<f64, Refused> {
    Ok(in_milliliters(true_density(DENSITY, density_g_per_ml)?.volume_of(grams(mass_g))))
}

fn amount(text: &str) -> Result<Amount, Refused> {
    Amount::parse(text).map_err(|error| Refused::at("/amount", &error))
}

fn system(name: &str) -> Result<System, Refused> {
    name.parse().map_err(|error| Refused::at("/measures", &error))
}

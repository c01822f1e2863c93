//! Amounts as a person writes them.

use pourwright::quantity::{Amount, Mass, System, Unit, Volume};
use wasm_bindgen::prelude::wasm_bindgen;

use crate::number::{grams_per_milliliter, in_grams};
use crate::refused::Refused;

/// How many of the unit `to` the amount is.
///
/// # Errors
/// An amount that cannot be read, an unknown unit, or one of another dimension.
#[wasm_bindgen]
pub fn convert(amount: &str, to: &str, measures: &str) -> Result<f64, Refused> {
    let amount = self::amount(amount)?;
    let unit = Unit::parse(to).map_err(|error| Refused::at("to", &error))?;
    Ok(amount.in_unit(unit, system(measures)?)?.value().to_f64())
}

/// The mass of an amount, a volume of it by the density with which it is measured: of a liquid its own, of a powder
/// that as scooped.
///
/// # Errors
/// An amount that cannot be read, or that is neither a mass nor a volume.
#[wasm_bindgen(js_name = massG)]
pub fn mass_g(amount: &str, density_g_per_ml: f64, measures: &str) -> Result<f64, Refused> {
    let amount = self::amount(amount)?;
    let system = system(measures)?;
    match amount.to::<Mass>(system) {
        Ok(mass) => Ok(in_grams(mass)),
        Err(_) => {
            Ok(in_grams(amount.to::<Volume>(system)? * grams_per_milliliter(density_g_per_ml)))
        }
    }
}

fn amount(text: &str) -> Result<Amount, Refused> {
    Amount::parse(text).map_err(|error| Refused::at("amount", &error))
}

fn system(name: &str) -> Result<System, Refused> {
    name.parse().map_err(|error| Refused::at("measures", &error))
}

//! Doses as masses.

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::quantity::Amount;

use crate::error::{Error, Refused};
use crate::guard::guard;
use crate::memory::{finite, given, text};
use crate::mix::Material;
use crate::number::{grams, in_grams, in_milliliters, milliliters, system};
use crate::range::true_density;
use crate::scalar::not_negative;

/// Mass of an amount of a material, as a person writes it: `"1/4 tsp"`, `"40 drops"`, `"12.5 g"`.
///
/// Liquids by their density, powders as scooped, drops by the material's own drop. `measures` (`POUR_US_CUSTOMARY`, ...)
/// is what a cup and a spoon hold. `POUR_REFUSED` where the number that this takes is 0, not known.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_dose_mass(
    material: Option<&Material>,
    amount: *const c_char,
    measures: i32,
    mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mass_g = mass_g;
    guard(error, &mut || {
        let material = given("material", material)?;
        let mass_g = given("mass_g", mass_g.as_deref_mut())?;
        // SAFETY: the header asks for texts that end, or null.
        let (material, amount) = unsafe { (material.read("material")?, text("amount", amount)?) };
        let amount = Amount::parse(amount).in_parameter("amount")?;
        let measures = system("measures", measures)?;
        let mass = material.mass_of(&amount, measures, "the mass of the amount");
        mass_g.write(in_grams(mass.in_parameter("amount")?));
        Ok(())
    })
}

/// Mass of a volume: m = ρV.
///
/// `density_g_per_ml` is how the measure is filled: a liquid's density, a powder's *as scooped*. For what a solid
/// displaces in a mix it is its true density.
#[unsafe(no_mangle)]
pub extern "C" fn pour_mass_of_volume(
    volume_ml: f64,
    density_g_per_ml: f64,
    mass_g: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut mass_g = mass_g;
    guard(error, &mut || {
        let mass_g = given("mass_g", mass_g.as_deref_mut())?;
        finite("volume_ml", volume_ml)?;
        let density = true_density("density_g_per_ml", density_g_per_ml)?;
        let volume = milliliters(not_negative("volume_ml", volume_ml)?);
        mass_g.write(in_grams(density.mass_of(volume)));
        Ok(())
    })
}

/// Volume of a mass: V = m/ρ, with the densities of `pour_mass_of_volume`.
#[unsafe(no_mangle)]
pub extern "C" fn pour_volume_of_mass(
    mass_g: f64,
    density_g_per_ml: f64,
    volume_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut volume_ml = volume_ml;
    guard(error, &mut || {
        let volume_ml = given("volume_ml", volume_ml.as_deref_mut())?;
        finite("mass_g", mass_g)?;
        let density = true_density("density_g_per_ml", density_g_per_ml)?;
        let mass = grams(not_negative("mass_g", mass_g)?);
        volume_ml.write(in_milliliters(density.volume_of(mass)));
        Ok(())
    })
}

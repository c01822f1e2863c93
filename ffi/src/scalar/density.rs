//! Density of a mix of which only masses and densities are known.

use std::mem::MaybeUninit;

use pourwright::mix::density_of_parts;

use crate::error::{Error, Refused};
use crate::guard::guard;
use crate::memory::{array, finite, given};
use crate::number::{grams, grams_per_milliliter, in_grams_per_milliliter};

/// Density at 20 °C of `parts` constituents mixed: ρ = Σm/(Σm/ρ) · (1 − voids).
///
/// `masses_g` and `densities_g_per_ml` are plain arrays of `parts` numbers; solids with their true density. `voids` is
/// the share of the volume that is air, 0 to below 1.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_density_of_parts(
    parts: usize,
    masses_g: *const f64,
    densities_g_per_ml: *const f64,
    voids: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let found = given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        // SAFETY: the header asks for arrays of `parts` numbers, or null.
        let (masses, densities) = unsafe {
            (
                array("masses_g", masses_g, parts)?,
                array("densities_g_per_ml", densities_g_per_ml, parts)?,
            )
        };
        let voids = finite("voids", voids)?;
        masses.iter().try_for_each(|mass| finite("masses_g", *mass).map(drop))?;
        densities.iter().try_for_each(|it| finite("densities_g_per_ml", *it).map(drop))?;
        let each = masses.iter().zip(densities);
        let each = each.map(|(mass, density)| (grams(*mass), grams_per_milliliter(*density)));
        let mixed = density_of_parts(each, voids).in_parameter("")?;
        found.write(in_grams_per_milliliter(mixed));
        Ok(())
    })
}

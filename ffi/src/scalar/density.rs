//! Density of a mix of which only masses and densities are known.

use std::mem::MaybeUninit;

use pourwright::mix::{MixError, density_of_parts};

use crate::error::{Error, Failure};
use crate::guard::guard;
use crate::memory::{array, given};
use crate::number::{grams, grams_per_milliliter, in_grams_per_milliliter};
use crate::range::{At, G, Range, SHARE_BELOW_1, first_outside, from_0, refusal};

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
        let each = masses.iter().zip(densities);
        let each = each.map(|(mass, density)| (grams(*mass), grams_per_milliliter(*density)));
        let mixed =
            density_of_parts(each, voids).map_err(|error| why(masses, densities, voids, &error))?;
        found.write(in_grams_per_milliliter(mixed));
        Ok(())
    })
}

fn why(masses: &[f64], densities: &[f64], voids: f64, error: &MixError) -> Failure {
    let parts = [
        first_outside("masses_g", masses, from_0(G)),
        first_outside("densities_g_per_ml", densities, Range::Density),
    ];
    let parts = parts.iter().flatten().map(|(name, x, range)| (name.as_str(), *x, *range));
    let numbers: Vec<_> = parts.chain([("voids", voids, SHARE_BELOW_1)]).collect();
    let at = if let MixError::Empty = error { At::Parameter } else { At::Number };
    refusal(&numbers, at("masses_g"), error)
}

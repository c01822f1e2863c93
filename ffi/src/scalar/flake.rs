//! How many particles a dose of flake holds.

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::flake::{Cut, Flake};
use pourwright::quantity::{Length, Measurable};

use crate::error::{Error, Refused};
use crate::guard::guard;
use crate::memory::{finite, given, text};
use crate::number::grams;
use crate::range::true_density;

/// How many particles a dose of flake holds: m/(A · h · ρ), a nominal number.
///
/// `cut` is as the trade writes it: `".035"`, `"1/64 hex"`, `"0.4 mm square"`; `thickness_um` and `film_g_per_ml` are
/// those of the film.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_flake_count(
    cut: *const c_char,
    thickness_um: f64,
    film_g_per_ml: f64,
    dose_g: f64,
    particles: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut particles = particles;
    guard(error, &mut || {
        let particles = given("particles", particles.as_deref_mut())?;
        // SAFETY: the header asks for a text that ends, or null.
        let cut = Cut::parse(unsafe { text("cut", cut)? }).in_parameter("cut")?;
        let thickness = Length::from_si(finite("thickness_um", thickness_um)? / 1e6);
        let film = true_density("film_g_per_ml", film_g_per_ml)?;
        let flake = Flake::new(cut, thickness, film, None).in_parameter("thickness_um")?;
        let dose = grams(finite("dose_g", dose_g)?);
        particles.write(flake.particles(dose).in_parameter("dose_g")?);
        Ok(())
    })
}

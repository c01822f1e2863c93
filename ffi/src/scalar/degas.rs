//! How high a pot rises in a vacuum.

use std::mem::MaybeUninit;

use pourwright::process::atmosphere::StationPressure;
use pourwright::process::degas::{EntrainedAir, Vacuum};
use pourwright::process::gauge::AbsolutePressure;
use pourwright::quantity::{Measurable, Pressure};

use crate::error::{Error, Failure, Refused};
use crate::guard::guard;
use crate::memory::{finite, given};
use crate::number::{in_milliliters, milliliters, share};
use crate::scalar::not_negative;

/// What `liquid_ml` takes up in a vacuum with the air that it holds: V = V_liq [1 + φ/(1 − φ) · p_local/(p − p_vapor)].
///
/// `air` is the share of air in the mix before the pump runs, `absolute_kpa` the pressure in the chamber, `local_kpa`
/// that of the air outside, `vapor_kpa` that of the liquid's vapor (0 for a dry plasticizer).
/// `POUR_REFUSED` where it boils, or for a vacuum that the local air cannot give.
#[unsafe(no_mangle)]
pub extern "C" fn pour_swollen_volume(
    liquid_ml: f64,
    air: f64,
    absolute_kpa: f64,
    local_kpa: f64,
    vapor_kpa: f64,
    swollen_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut swollen_ml = swollen_ml;
    guard(error, &mut || {
        let swollen_ml = given("swollen_ml", swollen_ml.as_deref_mut())?;
        let absolute = AbsolutePressure::new(kilopascals("absolute_kpa", absolute_kpa)?)
            .in_parameter("absolute_kpa")?;
        let local = StationPressure::measured(kilopascals("local_kpa", local_kpa)?)
            .in_parameter("local_kpa")?;
        let vapor = kilopascals("vapor_kpa", not_negative("vapor_kpa", vapor_kpa)?)?;
        let air = EntrainedAir::share(share(finite("air", air)?)).in_parameter("air")?;
        let vacuum = Vacuum::new(local, absolute, vapor).in_parameter("absolute_kpa")?;
        let liquid = milliliters(finite("liquid_ml", liquid_ml)?);
        let swollen = vacuum.swollen(liquid, air).in_parameter("liquid_ml")?;
        swollen_ml.write(in_milliliters(swollen));
        Ok(())
    })
}

fn kilopascals(name: &str, kpa: f64) -> Result<Pressure, Failure> {
    Ok(Pressure::from_si(finite(name, kpa)? * 1e3))
}

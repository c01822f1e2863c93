//! Plain numbers to quantities and back.
//!
//! Into SI units by one division or product with a power of ten, which is exact, so that a decimal number is rounded
//! as the document door rounds it.

use pourwright::density::TrueDensity;
use pourwright::quantity::{
    Length, Mass, MassDensity, Measurable, Pressure, Ratio, ThermodynamicTemperature, Velocity,
    Volume,
};

use crate::refused::Refused;

pub(crate) fn grams(g: f64) -> Mass {
    Mass::from_si(g / 1e3)
}

pub(crate) fn in_grams(mass: Mass) -> f64 {
    mass.si() * 1e3
}

pub(crate) fn milliliters(ml: f64) -> Volume {
    Volume::from_si(ml / 1e6)
}

pub(crate) fn in_milliliters(volume: Volume) -> f64 {
    volume.si() * 1e6
}

pub(crate) fn grams_per_milliliter(g_per_ml: f64) -> MassDensity {
    MassDensity::from_si(g_per_ml * 1e3)
}

/// The density that the parameter `path` is.
pub(crate) fn true_density(path: &str, g_per_ml: f64) -> Result<TrueDensity, Refused> {
    TrueDensity::new(grams_per_milliliter(g_per_ml)).map_err(|error| Refused::at(path, &error))
}

pub(crate) fn in_grams_per_milliliter(density: MassDensity) -> f64 {
    density.si() / 1e3
}

pub(crate) fn millimeters(mm: f64) -> Length {
    Length::from_si(mm / 1e3)
}

pub(crate) fn micrometers(um: f64) -> Length {
    Length::from_si(um / 1e6)
}

pub(crate) fn centimeters_per_second(cm_per_s: f64) -> Velocity {
    Velocity::from_si(cm_per_s / 1e2)
}

pub(crate) fn in_centimeters_per_second(speed: Velocity) -> f64 {
    speed.si() * 1e2
}

pub(crate) fn pascals(pa: f64) -> Pressure {
    Pressure::from_si(pa)
}

pub(crate) fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_si(degrees + 273.15)
}

pub(crate) fn share(number: f64) -> Ratio {
    Ratio::from_si(number)
}

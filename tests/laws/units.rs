//! Grams and milliliters as the library takes and gives them.

use pourwright::quantity::{Mass, MassDensity, Ratio, Volume};
use pourwright::uom::si::mass::gram;
use pourwright::uom::si::mass_density::gram_per_cubic_centimeter;
use pourwright::uom::si::volume::milliliter;

pub(crate) fn g(x: f64) -> Mass {
    Mass::new::<gram>(x)
}

pub(crate) fn in_g(x: Mass) -> f64 {
    x.get::<gram>()
}

pub(crate) fn ml(x: f64) -> Volume {
    Volume::new::<milliliter>(x)
}

pub(crate) fn per_ml(x: f64) -> MassDensity {
    MassDensity::new::<gram_per_cubic_centimeter>(x)
}

pub(crate) fn share(x: f64) -> Ratio {
    Ratio::from(x)
}

/// Whether two numbers agree to `bound`, relative to the greater.
pub(crate) fn close(a: f64, b: f64, bound: f64) -> bool {
    (a - b).abs() <= bound * a.abs().max(b.abs())
}

//! Plain numbers to quantities and back, and the numbers that stand for words.
//!
//! Into SI units by one division or product with a power of ten, which is exact, so that a decimal number is rounded
//! as the document door rounds it.

use pourwright::material::Kind;
use pourwright::mix::Phase;
use pourwright::quantity::{
    Mass, MassDensity, Measurable, Ratio, System, TemperatureCoefficient, ThermodynamicTemperature,
    Volume,
};
use pourwright::salt::SaltForm;
use pourwright::softener::Scale;
use pourwright::uom::si::thermodynamic_temperature::degree_celsius;

use crate::error::{ArgumentError, Failure};

#[inline]
pub(crate) fn grams(g: f64) -> Mass {
    Mass::from_si(g / 1e3)
}

#[inline]
pub(crate) fn in_grams(mass: Mass) -> f64 {
    mass.si() * 1e3
}

#[inline]
pub(crate) fn milliliters(ml: f64) -> Volume {
    Volume::from_si(ml / 1e6)
}

#[inline]
pub(crate) fn in_milliliters(volume: Volume) -> f64 {
    volume.si() * 1e6
}

#[inline]
pub(crate) fn grams_per_milliliter(g_per_ml: f64) -> MassDensity {
    MassDensity::from_si(g_per_ml * 1e3)
}

#[inline]
pub(crate) fn in_grams_per_milliliter(density: MassDensity) -> f64 {
    density.si() / 1e3
}

pub(crate) fn celsius(degrees: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(degrees)
}

#[inline]
pub(crate) fn share(number: f64) -> Ratio {
    Ratio::from_si(number)
}

pub(crate) fn per_kelvin(number: f64) -> TemperatureCoefficient {
    TemperatureCoefficient::from_si(number)
}

/// `number`, or `otherwise` where it is 0: what a struct leaves out.
pub(crate) fn or(number: f64, otherwise: f64) -> f64 {
    if number == 0.0 { otherwise } else { number }
}

macro_rules! words {
    ($(#[$meta:meta])* $read:ident -> $Word:ident, $known:literal: $($number:ident => $word:ident,)*) => {
        $(#[$meta])*
        pub(crate) fn $read(name: &str, number: i32) -> Result<$Word, Failure> {
            match number {
                $($crate::$number => Ok($Word::$word),)*
                found => {
                    let error = ArgumentError::UnknownNumber { found, known: $known };
                    Err(Failure::at(name, &error))
                }
            }
        }
    };
}

words! { system -> System, "POUR_US_CUSTOMARY, POUR_US_LABEL, POUR_METRIC, POUR_IMPERIAL":
    POUR_US_CUSTOMARY => UsCustomary, POUR_US_LABEL => UsLabel, POUR_METRIC => Metric, POUR_IMPERIAL => Imperial,
}

words! { phase -> Phase, "POUR_LIQUID, POUR_FUSED": POUR_LIQUID => Liquid, POUR_FUSED => Fused, }

words! { scale -> Scale, "POUR_SHORE_00, POUR_SHORE_A": POUR_SHORE_00 => Shore00, POUR_SHORE_A => ShoreA, }

words! { salt_form -> SaltForm, "the seven POUR_SALT_...":
    POUR_SALT_AS_SCOOPED => Scooped, POUR_SALT_PER_VOLUME => PerVolume, POUR_SALT_OF_BASE => OfBase,
    POUR_SALT_OF_FINISHED => OfFinished, POUR_SALT_FINISHED_DENSITY => FinishedDensity,
    POUR_SALT_PIECE => PieceMass, POUR_SALT_SINK_DENSITY => SinkDensity,
}

words! { kind -> Kind, "POUR_PLASTISOL to POUR_OTHER":
    POUR_PLASTISOL => Plastisol, POUR_SOFTENER => Softener, POUR_HARDENER => Hardener,
    POUR_STABILIZER => Stabilizer, POUR_COLORANT => Colorant, POUR_PEARL => Pearl, POUR_FLAKE => Flake,
    POUR_SALT => Salt, POUR_SCENT => Scent, POUR_OTHER => Other,
}

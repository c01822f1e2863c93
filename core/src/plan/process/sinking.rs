//! How a piece sinks, with its hook.

use alloc::format;

use super::{Reckoned, because, note};
use crate::book::{Book, Cavities, FishedWater, Mold};
use crate::plan::{Note, Shown, part, text};
use crate::process::sink::{Body, Motion};
use crate::quantity::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Velocity, Volume};

part! {
    /// The water that sink rates are told for.
    pub struct SinkWater {
        /// Its temperature.
        pub temperature: Shown<ThermodynamicTemperature>,
        /// Its salinity, salt by mass.
        pub salinity: Shown<Ratio>,
        /// Its density.
        pub density: Shown<MassDensity>,
    }
}

part! {
    /// How a piece sinks, with its hook: a model value between bounds.
    pub struct Sinking {
        /// Density of the piece without its hook.
        pub density: Shown<MassDensity>,
        /// Mass of hook and weight.
        pub hook: Shown<Mass>,
        /// How fast it falls.
        pub speed: Shown<Velocity>,
        /// Lower bound.
        pub slowest: Shown<Velocity>,
        /// Upper bound.
        pub fastest: Shown<Velocity>,
        /// Whether it falls straight, as the model has it.
        pub motion: Motion,
    }
}

/// The water of the book, shown.
pub(in crate::plan) fn water(book: &Book) -> Option<SinkWater> {
    book.limits.water.map(|fished| SinkWater {
        temperature: text::temperature(fished.temperature, book.system),
        salinity: text::salinity(fished.salinity),
        density: text::density(fished.water.density),
    })
}

/// How a piece from `cavities` of `mold` sinks that is made of `layers`, each a mass and its density.
pub(in crate::plan) fn sinking(
    book: &Book,
    mold: &Mold,
    cavities: &Cavities,
    layers: &[(Mass, MassDensity)],
) -> Option<Reckoned<Sinking>> {
    let water = book.limits.water.as_ref()?;
    Some(sinking_in(water, mold, cavities, layers).into())
}

fn sinking_in(
    fished: &FishedWater,
    mold: &Mold,
    cavities: &Cavities,
    layers: &[(Mass, MassDensity)],
) -> Result<Sinking, Note> {
    let shape = cavities
        .body
        .ok_or_else(|| note("body-not-known", format!("\"{}\" states no body.", mold.name)))?;
    let (mut mass, mut volume) = (Mass::default(), Volume::default());
    for (layer, density) in layers {
        mass += *layer;
        volume += *layer / *density;
    }
    let density = mass / volume;
    let body = Body { volume, hook: mold.hook, shape, own_drag: None };
    let fall = body.fall(density, &fished.water).map_err(|error| because(&error))?;
    Ok(Sinking {
        density: text::density(density),
        hook: text::mass(mold.hook.mass),
        speed: text::speed(fall.speed),
        slowest: text::speed(fall.trust.slowest),
        fastest: text::speed(fall.trust.fastest),
        motion: fall.trust.motion,
    })
}

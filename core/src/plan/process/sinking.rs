//! How a piece sinks, with its hook.

use alloc::format;
use alloc::string::String;

use super::note;
use crate::book::{Book, Cavities, FishedWater, Mold};
use crate::codes::code;
use crate::process::seawater::Water;
use crate::process::sink::{Body, Motion, SinkError};
use crate::quantity::{Mass, MassDensity, Ratio, ThermodynamicTemperature, Time, Velocity, Volume};
use crate::show::{Calculated, Note, Shown, because, part, text};

part! {
    /// The water of the sink rates.
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
        /// Its standard uncertainty, if known; the bounds include twice that to either side.
        pub density_uncertainty: Option<Shown<MassDensity>>,
        /// Mass of hook and weight.
        pub hook: Shown<Mass>,
        /// Its sink rate.
        pub speed: Shown<Velocity>,
        /// The same as the time for a foot.
        pub per_foot: Shown<Time>,
        /// Lower bound.
        pub slowest: Shown<Velocity>,
        /// Upper bound.
        pub fastest: Shown<Velocity>,
        /// Motion while it sinks: straight, as in the model, or not.
        pub motion: Motion,
        /// All of that in one line: `1.035 g/mL ± 0.004 g/mL, 5.6 cm/s (4.1 to 7.4) or 5.4 s a foot, straight`.
        pub text: String,
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

/// A layer of a piece.
pub(in crate::plan) struct SinkLayer {
    pub(in crate::plan) mass: Mass,
    /// Voids counted.
    pub(in crate::plan) density: MassDensity,
    /// Standard uncertainty of its density.
    pub(in crate::plan) unsure: Option<MassDensity>,
}

/// How a piece from `cavities` of `mold` sinks that is made of `layers`.
pub(in crate::plan) fn sinking(
    book: &Book,
    mold: &Mold,
    cavities: &Cavities,
    layers: &[SinkLayer],
) -> Option<Calculated<Sinking>> {
    let water = book.limits.water.as_ref()?;
    Some(sinking_in(water, mold, cavities, layers).into())
}

fn sinking_in(
    fished: &FishedWater,
    mold: &Mold,
    cavities: &Cavities,
    layers: &[SinkLayer],
) -> Result<Sinking, Note> {
    let body = cavities.body.ok_or_else(|| {
        note(code!("body-not-known"), format!("\"{}\" states no body.", mold.name))
    })?;
    let (mut mass, mut volume) = (Mass::default(), Volume::default());
    // That much mass is unsure; layers of one pot are unsure together, so that their shares add up.
    let mut unsure = Some(Mass::default());
    for layer in layers {
        let of_layer = layer.mass / layer.density;
        mass += layer.mass;
        volume += of_layer;
        unsure = unsure.zip(layer.unsure).map(|(sum, unsure)| sum + of_layer * unsure);
    }
    let body = body.of(volume, mold.hook, &fished.water).map_err(|error| because(&error))?;
    let unsure = unsure.map(|unsure| unsure / volume);
    fall(&body, mass / volume, unsure, &fished.water).map_err(|error| because(&error))
}

/// How `body` sinks at `density`, with the standard uncertainty `unsure` if known.
pub(crate) fn fall(
    body: &Body,
    density: MassDensity,
    unsure: Option<MassDensity>,
    water: &Water,
) -> Result<Sinking, SinkError> {
    let fall = body.fall_within(density, unsure.unwrap_or_default(), water)?;
    let motion = match fall.trust.motion {
        Motion::Straight => "straight",
        Motion::MaySwing => "may swing",
        Motion::Swings => "swings",
    };
    let plus_minus = unsure.map(|unsure| format!(" ± {}", text::unsure_density(unsure).text));
    let per_foot = text::seconds_per_foot(fall.speed);
    let text = format!(
        "{}{}, {} ({} to {}) or {} a foot, {motion}",
        text::density(density).text,
        plus_minus.unwrap_or_default(),
        text::speed(fall.speed).text,
        text::speed_figure(fall.trust.slowest),
        text::speed_figure(fall.trust.fastest),
        per_foot.text,
    );
    Ok(Sinking {
        text,
        density: text::density(density),
        density_uncertainty: unsure.map(text::unsure_density),
        hook: text::mass(body.hook.mass),
        speed: text::speed(fall.speed),
        per_foot,
        slowest: text::speed(fall.trust.slowest),
        fastest: text::speed(fall.trust.fastest),
        motion: fall.trust.motion,
    })
}

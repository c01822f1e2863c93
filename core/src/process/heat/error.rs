//! Why a heating cannot be told, and what would do.

use alloc::borrow::Cow;
use alloc::format;

use super::FARTHEST_REACH;
use crate::fault::Diagnose;
use crate::process::figures::seconds;
use crate::quantity::{Mass, Ratio, TemperatureInterval, ThermodynamicTemperature, Time};
use crate::show::{both_scales, mass, percent};
use uom::si::temperature_interval::{degree_fahrenheit, kelvin};

/// A heating that cannot be told.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum HeatError {
    /// A quantity that is not above zero (of a vessel: below zero), not finite, or beyond belief.
    #[error("{what} is {value:e} in SI units.")]
    OutOfRange {
        /// Which.
        what: &'static str,
        /// Its value in kg, s, J/(kg K) or J/K.
        value: f64,
    },
    /// A temperature that no pot has.
    #[error("{what} is {}.", both_scales(.found))]
    Temperature {
        /// Which.
        what: &'static str,
        /// What was given.
        found: ThermodynamicTemperature,
    },
    /// A heating that ends no hotter than it began.
    #[error("A heating from {} to {} is none.", both_scales(.start), both_scales(.end))]
    NotHotter {
        /// At first.
        start: ThermodynamicTemperature,
        /// At last.
        end: ThermodynamicTemperature,
    },
    /// No mass at all in a mix, or no load in the oven.
    #[error("There is nothing to heat.")]
    Nothing,
    /// No timing to take the power from.
    #[error("The oven has no timing.")]
    NoTimings,
    /// A setting of the oven outside 0 to 100 %.
    #[error("The oven setting is {}.", percent(.found))]
    Setting {
        /// What was given.
        found: Ratio,
    },
    /// Timings at different settings do not make one power.
    #[error("One power is not made of timings at different oven settings: {} and {}.", percent(.first), percent(.other))]
    MixedSettings {
        /// Of the first timing, or of the oven that they shall tell of.
        first: Ratio,
        /// Of the first that differs.
        other: Ratio,
    },
    /// The amount lies too far outside the amounts that were timed or watched.
    #[error(
        "{} is too far from the amounts that were timed, {} to {}.",
        mass(.wanted), mass(.least), mass(.most)
    )]
    OutOfReach {
        /// What was asked for.
        wanted: Mass,
        /// The smallest that was timed.
        least: Mass,
        /// The largest that was timed.
        most: Mass,
    },
    /// A window that ends below its beginning, or an aim outside it.
    #[error("The aim of {} is not inside the window of {} to {}.", both_scales(.aim), both_scales(.least), both_scales(.most))]
    Window {
        /// Least temperature.
        least: ThermodynamicTemperature,
        /// The aim.
        aim: ThermodynamicTemperature,
        /// Most temperature.
        most: ThermodynamicTemperature,
    },
    /// A precaution outside its range.
    #[error("The precaution `{what}` is {value} in SI units.")]
    Precaution {
        /// Which.
        what: &'static str,
        /// What was given.
        value: f64,
    },
    /// The window is so narrow that the thermometer alone may miss it.
    #[error(
        "The window is {:.1} K ({:.1} °F) wide, and the thermometer may be off by {:.1} K ({:.1} °F) either way.",
        .width.get::<kelvin>(), .width.get::<degree_fahrenheit>(),
        .thermometer.get::<kelvin>(), .thermometer.get::<degree_fahrenheit>()
    )]
    Narrow {
        /// From the bottom of the window to its top.
        width: TemperatureInterval,
        /// How far the thermometer may be off.
        thermometer: TemperatureInterval,
    },
    /// The shortest burst may carry the pot from below the window over it.
    #[error("The pot is too small: one burst of {} may carry it from below the window over it.", seconds(.burst))]
    TooFine {
        /// The shortest burst.
        burst: Time,
        /// The smallest mass of such a mix that would do; `None` where no larger pot does.
        enough: Option<Mass>,
    },
    /// The pot heats so slowly that nobody would go on.
    #[error("The pot needs more than {bursts} bursts.")]
    TooSlow {
        /// How many are the limit.
        bursts: u32,
    },
    /// Cups on one clock that are not alike.
    #[error(
        "Cups that are not alike do not heat on one clock: {} and {}.",
        mass(.smallest), mass(.largest)
    )]
    Unlike {
        /// The smallest.
        smallest: Mass,
        /// The largest.
        largest: Mass,
    },
    /// What was watched is no cooling towards the room.
    #[error(
        "From {} to {} in a room of {} is no cooling.",
        both_scales(.from), both_scales(.to), both_scales(.room)
    )]
    NoCooling {
        /// At first.
        from: ThermodynamicTemperature,
        /// At last.
        to: ThermodynamicTemperature,
        /// Of the room.
        room: ThermodynamicTemperature,
    },
}

impl Diagnose for HeatError {
    fn code(&self) -> &'static str {
        match self {
            Self::OutOfRange { .. } => "heat-out-of-range",
            Self::Temperature { .. } => "heat-temperature",
            Self::NotHotter { .. } => "heat-not-hotter",
            Self::Nothing => "heat-nothing",
            Self::NoTimings => "heat-no-timings",
            Self::Setting { .. } => "heat-setting",
            Self::MixedSettings { .. } => "heat-mixed-settings",
            Self::OutOfReach { .. } => "heat-out-of-reach",
            Self::Window { .. } => "heat-window",
            Self::Precaution { .. } => "heat-precaution",
            Self::Narrow { .. } => "heat-window-narrow",
            Self::TooFine { .. } => "heat-too-fine",
            Self::TooSlow { .. } => "heat-too-slow",
            Self::Unlike { .. } => "heat-unlike-cups",
            Self::NoCooling { .. } => "heat-no-cooling",
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::OutOfRange { .. } => "Give a number above zero; check the unit.".into(),
            Self::Temperature { .. } => {
                "Give a temperature from -73 °C to 427 °C (-99 °F to 800 °F); check whether it is °F or °C.".into()
            }
            Self::NotHotter { .. } => "Give an end temperature above the start.".into(),
            Self::Nothing => "Give at least one mass above zero.".into(),
            Self::NoTimings => {
                "Time a pot: its mass, its temperature before and after, and the seconds.".into()
            }
            Self::Setting { .. } => {
                "Give the setting as a share of full power, above 0 and up to 100 %.".into()
            }
            Self::MixedSettings { .. } => {
                "Give the timings at one setting alone, and that as the oven's setting.".into()
            }
            Self::OutOfReach { least, most, .. } => format!(
                "Take {} to {}, or time a pot of such an amount.",
                mass(&(*least / FARTHEST_REACH)).at_least(),
                mass(&(*most * FARTHEST_REACH)).at_most()
            )
            .into(),
            Self::Window { .. } => {
                "Give a window that ends above its beginning, and an aim inside it.".into()
            }
            Self::Precaution { .. } => "Give a number that is zero or more; bursts above zero, the \
                longest no shorter than the shortest."
                .into(),
            Self::Narrow { .. } => {
                "Use a truer thermometer, or a material with a wider window.".into()
            }
            Self::TooFine { enough: Some(enough), .. } => format!(
                "Make it at least {}, or heat it at a lower power and time that.",
                mass(enough).at_least()
            )
            .into(),
            Self::TooFine { .. } => {
                "Heat it at a lower power and time that, or use a truer thermometer.".into()
            }
            Self::TooSlow { .. } => {
                "Split the pot, or heat it at a higher power and time that.".into()
            }
            Self::Unlike { .. } => "Heat each on its own, the largest first. Cups are alike with \
                the same vessel and amounts within 10 %."
                .into(),
            Self::NoCooling { .. } => {
                "Give a later temperature that is lower, and a room that is cooler than both."
                    .into()
            }
        }
    }
}

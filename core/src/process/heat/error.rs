//! Errors of a heating or a cooling.

use alloc::borrow::Cow;
use alloc::format;

use super::FARTHEST_REACH;
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::process::figures::seconds;
use crate::quantity::{Mass, Power, Ratio, TemperatureInterval, ThermodynamicTemperature, Time};
use crate::show::{both_scales, mass, percent};
use uom::si::power::watt;
use uom::si::temperature_interval::{degree_fahrenheit, kelvin};

/// Why a heating or a cooling is not calculated.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum HeatError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// A heating that ends no hotter than it began.
    #[error("From {} to {} is not a heating.", both_scales(.start), both_scales(.end))]
    NotHotter {
        /// Temperature before.
        start: ThermodynamicTemperature,
        /// Temperature after.
        end: ThermodynamicTemperature,
    },
    /// No mass at all in a mix, or no load in the oven.
    #[error("There is nothing to heat.")]
    Nothing,
    /// No timing to take the power from.
    #[error("The oven has no timing.")]
    NoTimings,
    /// Timings that mean no power that an oven can have.
    #[error("The timings mean that {:e} W reach the pot.", .power.get::<watt>())]
    Power {
        /// The power.
        power: Power,
    },
    /// Timings at different settings, which do not give one power.
    #[error("The timings are at different oven settings: {} and {}.", percent(.first), percent(.other))]
    MixedSettings {
        /// Setting of the first timing, or of the oven that they are to give.
        first: Ratio,
        /// The first setting that differs.
        other: Ratio,
    },
    /// An amount too far outside the amounts that were timed.
    #[error(
        "{} is too far from the amounts that were timed, {} to {}.",
        mass(.wanted), mass(.least), mass(.most)
    )]
    OutOfReach {
        /// The amount asked for.
        wanted: Mass,
        /// The smallest that was timed.
        least: Mass,
        /// The largest that was timed.
        most: Mass,
    },
    /// A window that ends below its beginning, or an aim outside it.
    #[error("The aim of {} is not inside the window of {} to {}.", both_scales(.aim), both_scales(.least), both_scales(.most))]
    Window {
        /// Lowest temperature.
        least: ThermodynamicTemperature,
        /// The aim.
        aim: ThermodynamicTemperature,
        /// Highest temperature.
        most: ThermodynamicTemperature,
    },
    /// A window so narrow that the thermometer alone may miss it.
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
    /// A pot that heats so slowly that nobody would go on.
    #[error("The pot needs more than {bursts} bursts.")]
    TooSlow {
        /// The limit.
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
    /// Temperatures that do not fall towards that of the room.
    #[error(
        "From {} to {} in a room of {} is not a cooling.",
        both_scales(.from), both_scales(.to), both_scales(.room)
    )]
    NoCooling {
        /// Temperature before.
        from: ThermodynamicTemperature,
        /// Temperature after.
        to: ThermodynamicTemperature,
        /// Temperature of the room.
        room: ThermodynamicTemperature,
    },
}

impl Diagnose for HeatError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::NotHotter { .. } => "heat-not-hotter",
        Self::Nothing => "heat-nothing",
        Self::NoTimings => "heat-no-timings",
        Self::Power { .. } => "heat-power",
        Self::MixedSettings { .. } => "heat-mixed-settings",
        Self::OutOfReach { .. } => "heat-out-of-reach",
        Self::Window { .. } => "heat-window",
        Self::Narrow { .. } => "heat-window-narrow",
        Self::TooFine { .. } => "heat-too-fine",
        Self::TooSlow { .. } => "heat-too-slow",
        Self::Unlike { .. } => "heat-unlike-cups",
        Self::NoCooling { .. } => "heat-no-cooling",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::NotHotter { .. } => "Give an end temperature above the start.".into(),
            Self::Nothing => "Give at least one mass above zero.".into(),
            Self::NoTimings => {
                "Time a pot: its mass, its temperature before and after, and the seconds.".into()
            }
            Self::Power { .. } => "Check the masses, temperatures and times of the timings.".into(),
            Self::MixedSettings { .. } => {
                "Give timings of one setting only, and that one as the oven's setting.".into()
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

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::NotHotter { .. } => Some(Parameter::HeatedFrom),
            Self::NoTimings | Self::Power { .. } | Self::MixedSettings { .. } => {
                Some(Parameter::Timings)
            }
            Self::OutOfReach { .. } | Self::TooFine { .. } | Self::TooSlow { .. } => {
                Some(Parameter::PotMass)
            }
            Self::Window { .. } => Some(Parameter::Aim),
            Self::Narrow { .. } => Some(Parameter::Thermometer),
            _ => None,
        }
    }
}

impl From<ParameterError> for HeatError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

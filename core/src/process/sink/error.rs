//! Errors of a sink rate.

use alloc::borrow::Cow;
use alloc::format;

use uom::si::velocity::centimeter_per_second;

use super::Shape;
use super::shape::{LEAST_OF_BODY, MOST_OF_BODY};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Mass, MassDensity, Ratio, Time, Velocity, Volume};
use crate::show;

/// Why a sink rate is not calculated.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SinkError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// A stick that is too short to sink sideways.
    #[error("A stick of {} diameters is too short.", show::number(.length_per_diameter.value))]
    TooShort {
        /// Length per diameter.
        length_per_diameter: Ratio,
    },
    /// A volume that is not that of the body, by far.
    #[error("A piece of {} is not a {}, which holds about {}.", show::volume(.volume), .shape, show::volume(.of_shape))]
    VolumeNotOfBody {
        /// Volume of the piece.
        volume: Volume,
        /// The body.
        shape: Shape,
        /// Volume of a plain cylinder or ball of its size.
        of_shape: Volume,
    },
    /// It does not sink.
    #[error("The piece with its hook floats: the water lifts it by {}.", show::mass(.lift))]
    Floats {
        /// Mass that is lacking for it to hang in the water.
        lift: Mass,
        /// Density of the piece at which it would.
        needed: MassDensity,
    },
    /// The hook alone pulls it down faster than the sink rate asked for.
    #[error("With its hook the piece cannot sink as slowly as {} cm/s.", show::number(.speed.get::<centimeter_per_second>()))]
    HookTooHeavy {
        /// The speed asked for.
        speed: Velocity,
        /// Mass that the hook would have to lose.
        excess: Mass,
    },
    /// Nothing that a piece can be made of sinks as fast.
    #[error("To sink at {} cm/s the piece would need a density of {}.", show::number(.speed.get::<centimeter_per_second>()), show::density(.needed))]
    TooFast {
        /// The speed asked for.
        speed: Velocity,
        /// The density that it takes.
        needed: MassDensity,
    },
    /// Too slow or too fast for the drag curve.
    #[error("The piece sinks outside the published drag (Re {least} to {most}).")]
    OutsideDrag {
        /// Least Reynolds number of the curve.
        least: f64,
        /// Greatest Reynolds number of the curve.
        most: f64,
    },
    /// A timed drop that is quicker than falling without any drag.
    #[error("{} s is too short: without drag it would take {} s.", show::number(.timed.value), show::number(.least.value))]
    TooQuick {
        /// The time given.
        timed: Time,
        /// The time without drag.
        least: Time,
    },
}

impl Diagnose for SinkError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::TooShort { .. } => "sink-stick-too-short",
        Self::VolumeNotOfBody { .. } => "sink-volume-not-of-body",
        Self::Floats { .. } => "sink-floats",
        Self::HookTooHeavy { .. } => "sink-hook-too-heavy",
        Self::TooFast { .. } => "sink-too-fast",
        Self::OutsideDrag { .. } => "sink-outside-drag",
        Self::TooQuick { .. } => "sink-drop-too-quick",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::TooShort { .. } => {
                "Describe a piece shorter than 2.01 diameters as a ball.".into()
            }
            Self::VolumeNotOfBody { of_shape, .. } => format!(
                "Check the units of volume, diameter and length: for this body the piece has {} to {}.",
                show::volume(&(*of_shape * LEAST_OF_BODY)).at_least(),
                show::volume(&(*of_shape * MOST_OF_BODY)).at_most()
            )
            .into(),
            Self::Floats { lift, needed } => format!(
                "Add more than {} of weight (plus what its own volume lifts), or salt the piece above {}.",
                show::mass(lift).at_least(),
                show::density(needed).at_least()
            )
            .into(),
            Self::HookTooHeavy { excess, .. } => format!(
                "Take at least {} off the hook or weight, or ask for a faster fall.",
                show::mass(excess).at_least()
            )
            .into(),
            Self::TooFast { .. } => {
                "Nothing has that density: ask for a slower fall, or hang a weight on it.".into()
            }
            Self::OutsideDrag { .. } => {
                "Check size, density and weight; a lure in water is within.".into()
            }
            Self::TooQuick { .. } => {
                "Check depth, time and density; time a drop over half a meter or more.".into()
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
        Some(match self {
            Self::Parameters(errors) => return errors.parameter(),
            Self::TooShort { .. } => Parameter::Length,
            Self::VolumeNotOfBody { .. } => Parameter::PieceVolume,
            Self::Floats { .. } => Parameter::PieceDensity,
            Self::HookTooHeavy { .. } | Self::TooFast { .. } => Parameter::SinkRate,
            Self::OutsideDrag { .. } => return None,
            Self::TooQuick { .. } => Parameter::DropTime,
        })
    }
}

impl From<ParameterError> for SinkError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

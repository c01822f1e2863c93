//! The shapes that fall, with the published drag of each and how far it is trusted.

use core::fmt;

use uom::si::length::millimeter;

use super::SinkError;
use crate::process::drag;
use crate::quantity::{Area, Length, Volume};
use crate::show;
use crate::show::legible::InBenchUnits;
use crate::words::words;

/// Range of the volume of a piece, as a share of that of a plain cylinder or ball of its size: tails and waists
/// make it less, fins more (common practice, no source). Beyond it is a slip of the unit.
pub(super) const LEAST_OF_BODY: f64 = 0.4;
pub(super) const MOST_OF_BODY: f64 = 1.3;

words! {
    /// The shape of a piece, as a word.
    pub enum Outline {
        /// Longer than thick: it sinks sideways.
        Stick = "stick",
        /// As long as thick, about.
        Ball = "ball",
    }
}

/// Shape and size of a piece as it sinks.
#[derive(Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Shape {
    /// Longer than thick, sinking sideways.
    Stick {
        /// Mean diameter.
        diameter: Length,
        /// Length, at least 2.01 diameters.
        length: Length,
    },
    /// As long as thick, about.
    Ball {
        /// Diameter.
        diameter: Length,
    },
}

impl fmt::Debug for Shape {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Stick { diameter, length } => f
                .debug_struct("Stick")
                .field("diameter", &InBenchUnits(diameter))
                .field("length", &InBenchUnits(length))
                .finish(),
            Self::Ball { diameter } => {
                f.debug_struct("Ball").field("diameter", &InBenchUnits(diameter)).finish()
            }
        }
    }
}

impl Shape {
    /// Whether the published drag is for it.
    ///
    /// # Errors
    /// [`SinkError::TooShort`] for a stick of less than 2.01 diameters.
    pub fn check(&self) -> Result<(), SinkError> {
        self.end_factor().map(|_| ())
    }

    /// Whether a piece of this shape may have such a volume.
    ///
    /// # Errors
    /// [`SinkError::VolumeNotOfBody`] outside 0.4 to 1.3 times that of a plain cylinder or ball.
    pub fn check_volume(&self, volume: Volume) -> Result<(), SinkError> {
        let of_shape = match self {
            Self::Stick { diameter, length } => {
                *diameter * *diameter * *length * core::f64::consts::FRAC_PI_4
            }
            Self::Ball { diameter } => {
                *diameter * *diameter * *diameter * core::f64::consts::FRAC_PI_6
            }
        };
        if (of_shape * LEAST_OF_BODY..=of_shape * MOST_OF_BODY).contains(&volume) {
            Ok(())
        } else {
            Err(SinkError::VolumeNotOfBody { volume, shape: *self, of_shape })
        }
    }

    pub(super) fn diameter(&self) -> Length {
        match self {
            Self::Stick { diameter, .. } | Self::Ball { diameter } => *diameter,
        }
    }

    /// The length of a stick.
    pub(super) fn length(&self) -> Option<Length> {
        match self {
            Self::Stick { length, .. } => Some(*length),
            Self::Ball { .. } => None,
        }
    }

    /// The area that its drag coefficient is for.
    pub(super) fn area(&self) -> Area {
        match self {
            Self::Stick { diameter, length } => *diameter * *length,
            Self::Ball { diameter } => *diameter * *diameter * core::f64::consts::FRAC_PI_4,
        }
    }

    pub(super) fn drag_coefficient(&self, reynolds: f64) -> Result<f64, SinkError> {
        match self {
            Self::Stick { .. } => drag::cylinder(reynolds),
            Self::Ball { .. } => drag::sphere(reynolds),
        }
        .ok_or_else(|| self.outside())
    }

    /// Least and greatest Reynolds number of its drag curve.
    pub(super) fn range(&self) -> (f64, f64) {
        let range = match self {
            Self::Stick { .. } => drag::CYLINDER_RANGE,
            Self::Ball { .. } => drag::SPHERE_RANGE,
        };
        (*range.start(), *range.end())
    }

    pub(super) fn outside(&self) -> SinkError {
        let (least, most) = self.range();
        SinkError::OutsideDrag { least, most }
    }

    /// Share of the drag that the ends may take off.
    pub(super) fn end_factor(&self) -> Result<f64, SinkError> {
        match self {
            Self::Stick { diameter, length } => drag::end_factor((*diameter / *length).value)
                .ok_or(SinkError::TooShort { length_per_diameter: *length / *diameter }),
            Self::Ball { .. } => Ok(1.0),
        }
    }

    /// Mass of water that moves with it, per mass of water displaced.
    pub(super) fn added_mass(&self) -> f64 {
        match self {
            Self::Stick { .. } => 1.0,
            Self::Ball { .. } => 0.5,
        }
    }

    /// Spread of the published drag about its curve, while the piece sinks straight.
    pub(super) fn spread(&self) -> f64 {
        match self {
            Self::Stick { .. } => 0.15,
            Self::Ball { .. } => 0.08,
        }
    }

    /// The Reynolds number at which Re² C_D(Re) is `wanted`, to some 2e-14 of it.
    ///
    /// By inverse quadratic interpolation where that is safe, else by halving: T. R. Chandrupatla, *Adv. Eng. Softw.*
    /// 28 (1997) 145–149; in logarithms, in which the curve is nearly straight. A jump of the curve is found by halving.
    pub(super) fn reynolds(&self, wanted: f64) -> Result<f64, SinkError> {
        const MOST_STEPS: u32 = 100;
        let load = |reynolds: f64| -> Result<f64, SinkError> {
            Ok(self.drag_coefficient(reynolds)? * reynolds * reynolds)
        };
        let (least, most) = self.range();
        let (at_least, at_most) = (load(least)?, load(most)?);
        if !(at_least..=at_most).contains(&wanted) {
            return Err(self.outside());
        }
        let reynolds = |log: f64| libm::exp(log).clamp(least, most);
        let excess =
            |log| -> Result<f64, SinkError> { Ok(libm::log(load(reynolds(log))? / wanted)) };
        // The newest point, the one across the root from it, and the one before.
        let (mut new, mut other) = (libm::log(least), libm::log(most));
        let (mut f_new, mut f_other) = (libm::log(at_least / wanted), libm::log(at_most / wanted));
        let mut step = 0.5;
        for _ in 0..MOST_STEPS {
            let log = new + step * (other - new);
            let f = excess(log)?;
            let (before, f_before);
            if (f > 0.0) == (f_new > 0.0) {
                (before, f_before) = (new, f_new);
            } else {
                (before, f_before) = (other, f_other);
                (other, f_other) = (new, f_new);
            }
            (new, f_new) = (log, f);
            let best = if f_other.abs() < f_new.abs() { other } else { new };
            let least_step = 4.0 * f64::EPSILON * (1.0 + best.abs()) / (other - new).abs();
            if least_step > 0.5 || f_new == 0.0 {
                return Ok(reynolds(best));
            }
            let xi = (new - other) / (before - other);
            let phi = (f_new - f_other) / (f_before - f_other);
            let is_safe = phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi;
            step = if is_safe {
                let alpha = (before - new) / (other - new);
                let quadratic = f_new / (f_new - f_other) * f_before / (f_before - f_other)
                    - alpha * f_new / (f_before - f_new) * f_other / (f_other - f_before);
                quadratic.clamp(least_step, 1.0 - least_step)
            } else {
                0.5
            };
        }
        Ok(reynolds(new))
    }
}

/// As it is said at the bench: `stick of 9.6 mm by 127 mm`.
impl fmt::Display for Shape {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mm = |length: &Length| show::number(length.get::<millimeter>());
        match self {
            Self::Stick { diameter, length } => {
                write!(f, "stick of {} mm by {} mm", mm(diameter), mm(length))
            }
            Self::Ball { diameter } => write!(f, "ball of {} mm", mm(diameter)),
        }
    }
}

//! The shapes that fall, with the published drag of each and how far it is trusted.

use core::fmt;

use uom::si::length::millimeter;

use super::SinkError;
use crate::process::drag;
use crate::quantity::{Area, Length, Volume};
use crate::show;

/// The least and the most that a piece is believed to hold, of a plain cylinder or ball of its size: tails and waists
/// make it less, fins more (common practice, no source). Beyond it is a slip of the unit.
pub(super) const LEAST_OF_BODY: f64 = 0.4;
pub(super) const MOST_OF_BODY: f64 = 1.3;

/// What a piece is like as it falls.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Shape {
    /// Longer than thick, falling sideways.
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

    /// The area on which its drag coefficient stands.
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

    /// What the ends may take off the drag.
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

    /// Spread of the published drag about its curve, while the piece falls straight.
    pub(super) fn spread(&self) -> f64 {
        match self {
            Self::Stick { .. } => 0.15,
            Self::Ball { .. } => 0.08,
        }
    }

    /// The Reynolds number at which Re² C_D(Re) is `wanted`.
    pub(super) fn reynolds(&self, wanted: f64) -> Result<f64, SinkError> {
        // Each halving gains a bit; after 64 of them Re is known within 2e-14.
        const HALVINGS: u32 = 64;
        let load = |reynolds: f64| Ok(self.drag_coefficient(reynolds)? * reynolds * reynolds);
        let (mut low, mut high) = self.range();
        if !(load(low)?..=load(high)?).contains(&wanted) {
            return Err(self.outside());
        }
        for _ in 0..HALVINGS {
            let middle = 0.5 * (low + high);
            if load(middle)? < wanted {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(high)
    }
}

/// As a bench says it: `stick of 9.6 mm by 127 mm`.
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

//! How fast a piece sinks with its hook or weight, and the density for a wanted fall.
//!
//! A piece (volume V, density ρ_p) with a hook (m_h, V_h) weighs in water of density ρ and viscosity μ
//! W = (ρ_p V + m_h − ρ (V + V_h)) g, with standard gravity. It falls at the speed v at which drag balances it:
//! W = ½ ρ v² A F C_D(Re), Re = ρ v d/μ, with C_D of a long cylinder across the flow or of a sphere
//! ([`drag`]), and F = 1 or the shop's own factor from a drop that it timed. Re² C_D rises with Re; the balance
//! is solved by halving. Backwards the density follows at once.
//!
//! **Start.** Let go at the surface, the piece takes up speed under a = W/(m + c ρ (V + V_h)); the water that
//! moves with it counts with c = 1 for a cylinder across and ½ for a sphere (potential flow). With the drag
//! coefficient of the final speed, a depth x takes t = (v/a) arcosh(e^(a x/v²)), which tends to
//! x/v + (v/a) ln 2. Times to a depth and timed drops count the start in.
//!
//! **How far to trust it.** C_D is for a smooth body in still water on a slack line, the hook's own drag left out.
//! Bounds of the speed come with it:
//! - The published curves differ from data by up to 15 % of drag for a cylinder and 8 % for a sphere, which is
//!   7 and 4 % of speed.
//! - A stick falls faster than the long cylinder since water flows round its ends; by how much at its Re no
//!   table says. The upper bound is with all that [`drag::end_factor`] takes off.
//! - Above Re ≈ 300, with some cylinders from 80, a falling piece swings, and its drag depends on its density
//!   too (L. G. Marchildon, A. Clamen, W. H. Gauvin, *Can. J. Chem. Eng.* 42 (1964) 178–182). There the
//!   bounds take twice the spread (an allowance, no source). The same limits are taken for a ball.
//! - A density that is unsure makes the fall so: where its standard uncertainty u is known, the bounds are those at
//!   ρ_p ± 2 u, about 95 % of a normal spread. A piece a little denser than its water may as well hang in it.
//!
//! A piece that the shop has dropped and timed answers for itself: better than any curve for one that is
//! neither stick nor ball. A piece is taken to fall sideways or as a ball; a head-heavy one that dives nose
//! first needs a timed drop too.

use alloc::borrow::Cow;
use alloc::format;
use core::fmt;

use uom::si::acceleration::standard_gravity;
use uom::si::length::millimeter;
use uom::si::velocity::centimeter_per_second;

use crate::check::{is_density, is_not_negative, is_positive};
use crate::density::{DensityError, believed};
use crate::fault::Diagnose;
use crate::process::drag;
use crate::process::seawater::Water;
use crate::quantity::{
    Acceleration, Area, Force, Length, Mass, MassDensity, Ratio, Time, Velocity, Volume,
};
use crate::salt::Hook;
use crate::show;
use crate::words::words;

/// Reynolds number from which some falling cylinders swing (source: [module](self)).
pub const MAY_SWING_FROM: f64 = 80.0;

/// Reynolds number from which a falling cylinder swings (source: [module](self)).
pub const SWINGS_FROM: f64 = 300.0;

/// The least and the most that a piece is believed to hold, of a plain cylinder or ball of its size: tails and waists
/// make it less, fins more (common practice, no source). Beyond it is a slip of the unit.
const LEAST_OF_BODY: f64 = 0.4;
const MOST_OF_BODY: f64 = 1.3;

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

/// A piece apart from its density.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Body {
    /// Volume of the piece without its hook.
    pub volume: Volume,
    /// Hook and weight.
    pub hook: Hook,
    /// Shape.
    pub shape: Shape,
    /// Its own drag, from a timed drop; `None` for that of the shape.
    pub own_drag: Option<OwnDrag>,
}

/// A drop that the shop timed, the piece let go at rest just below the surface.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TimedDrop {
    /// Depth.
    pub depth: Length,
    /// Time to it.
    pub time: Time,
}

/// The drag of one piece, from a timed drop.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OwnDrag {
    /// Its drag per drag of the shape (F).
    pub factor: Ratio,
    /// Reynolds number of the drop.
    pub reynolds: f64,
}

words! {
    /// Whether a piece falls straight.
    pub enum Motion {
        /// Straight: below [`MAY_SWING_FROM`].
        Straight = "straight",
        /// Some pieces swing: up to [`SWINGS_FROM`].
        MaySwing = "may-swing",
        /// Swinging: the speed is that of a model which does not.
        Swings = "swings",
    }
}

/// How far to trust a speed (what is in the bounds: [module](self)).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Trust {
    /// Lower bound of the speed.
    pub slowest: Velocity,
    /// Upper bound of the speed.
    pub fastest: Velocity,
    /// Whether the piece falls straight, as the model has it.
    pub motion: Motion,
}

/// A fall.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fall {
    /// Final speed, a model value.
    pub speed: Velocity,
    /// How far to trust it.
    pub trust: Trust,
    /// Reynolds number.
    pub reynolds: f64,
    /// Drag coefficient, on length times diameter of a stick and the cross-section of a ball.
    pub drag_coefficient: f64,
    /// Acceleration at the start.
    pub acceleration: Acceleration,
}

/// What is wrong with a fall.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SinkError {
    /// A number that is not above zero, or beyond belief.
    #[error("{what} must be a number above zero.")]
    NotPositive {
        /// Which number.
        what: &'static str,
    },
    /// A density that nothing has.
    #[error(transparent)]
    Density(DensityError),
    /// A hook with less than no mass or volume.
    #[error("{what} must be zero or a number above.")]
    Negative {
        /// Which number.
        what: &'static str,
    },
    /// A stick that is too short to fall sideways.
    #[error("A stick of {} diameters is too short.", show::number(.length_per_diameter.value))]
    TooShort {
        /// Length per diameter.
        length_per_diameter: Ratio,
    },
    /// A volume that is not that of the body, by far.
    #[error("A piece of {} is no {}, which holds about {}.", show::volume(.volume), .shape, show::volume(.of_shape))]
    VolumeNotOfBody {
        /// Volume of the piece.
        volume: Volume,
        /// The body.
        shape: Shape,
        /// What a plain cylinder or ball of its size holds.
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
    /// The hook alone pulls it down faster than wanted.
    #[error("With its hook the piece cannot fall as slowly as {} cm/s.", show::number(.speed.get::<centimeter_per_second>()))]
    HookTooHeavy {
        /// The speed asked for.
        speed: Velocity,
        /// What the hook would have to lose.
        excess: Mass,
    },
    /// Nothing that a piece can be made of falls as fast.
    #[error("To fall at {} cm/s the piece would have to have {}.", show::number(.speed.get::<centimeter_per_second>()), show::density(.needed))]
    TooFast {
        /// The speed asked for.
        speed: Velocity,
        /// The density that it takes.
        needed: MassDensity,
    },
    /// Too slow or too fast for the drag curve.
    #[error("This fall is outside the published drag (Re {least} to {most}).")]
    OutsideDrag {
        /// Least Reynolds number of the curve.
        least: f64,
        /// Greatest Reynolds number of the curve.
        most: f64,
    },
    /// A timed drop that is quicker than falling without any drag.
    #[error("{} s is too short: without any drag it would take {} s.", show::number(.timed.value), show::number(.least.value))]
    TooQuick {
        /// The time given.
        timed: Time,
        /// The time without drag.
        least: Time,
    },
}

impl Diagnose for SinkError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotPositive { .. } => "sink-not-positive",
            Self::Density(error) => error.code(),
            Self::Negative { .. } => "sink-negative",
            Self::TooShort { .. } => "sink-stick-too-short",
            Self::VolumeNotOfBody { .. } => "sink-volume-not-of-body",
            Self::Floats { .. } => "sink-floats",
            Self::HookTooHeavy { .. } => "sink-hook-too-heavy",
            Self::TooFast { .. } => "sink-too-fast",
            Self::OutsideDrag { .. } => "sink-outside-drag",
            Self::TooQuick { .. } => "sink-drop-too-quick",
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NotPositive { .. } => "Correct that number.".into(),
            Self::Density(error) => error.help(),
            Self::Negative { .. } => "Give 0 where there is no hook or weight.".into(),
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

    fn diameter(&self) -> Length {
        match self {
            Self::Stick { diameter, .. } | Self::Ball { diameter } => *diameter,
        }
    }

    /// The area on which its drag coefficient stands.
    fn area(&self) -> Area {
        match self {
            Self::Stick { diameter, length } => *diameter * *length,
            Self::Ball { diameter } => *diameter * *diameter * core::f64::consts::FRAC_PI_4,
        }
    }

    fn drag_coefficient(&self, reynolds: f64) -> Result<f64, SinkError> {
        match self {
            Self::Stick { .. } => drag::cylinder(reynolds),
            Self::Ball { .. } => drag::sphere(reynolds),
        }
        .ok_or_else(|| self.outside())
    }

    /// Least and greatest Reynolds number of its drag curve.
    fn range(&self) -> (f64, f64) {
        let range = match self {
            Self::Stick { .. } => drag::CYLINDER_RANGE,
            Self::Ball { .. } => drag::SPHERE_RANGE,
        };
        (*range.start(), *range.end())
    }

    fn outside(&self) -> SinkError {
        let (least, most) = self.range();
        SinkError::OutsideDrag { least, most }
    }

    /// What the ends may take off the drag.
    fn end_factor(&self) -> Result<f64, SinkError> {
        match self {
            Self::Stick { diameter, length } => drag::end_factor((*diameter / *length).value)
                .ok_or(SinkError::TooShort { length_per_diameter: *length / *diameter }),
            Self::Ball { .. } => Ok(1.0),
        }
    }

    /// Mass of water that moves with it, per mass of water displaced.
    fn added_mass(&self) -> f64 {
        match self {
            Self::Stick { .. } => 1.0,
            Self::Ball { .. } => 0.5,
        }
    }

    /// Spread of the published drag about its curve, while the piece falls straight.
    fn spread(&self) -> f64 {
        match self {
            Self::Stick { .. } => 0.15,
            Self::Ball { .. } => 0.08,
        }
    }

    /// The Reynolds number at which Re² C_D(Re) is `wanted`.
    fn reynolds(&self, wanted: f64) -> Result<f64, SinkError> {
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

impl Motion {
    fn at(reynolds: f64) -> Self {
        match reynolds {
            ..MAY_SWING_FROM => Self::Straight,
            ..SWINGS_FROM => Self::MaySwing,
            _ => Self::Swings,
        }
    }
}

impl Body {
    /// The fall of a piece of `density` (voids and salt counted) in `water` (equations: [module](self)).
    ///
    /// # Errors
    /// [`SinkError::Floats`] unless it sinks; [`SinkError::OutsideDrag`] where its Reynolds number, or that of a
    /// bound, is outside the published drag; [`SinkError::TooShort`]; a volume
    /// that is not that of the shape; a number out of its range.
    pub fn fall(&self, density: MassDensity, water: &Water) -> Result<Fall, SinkError> {
        let weight = self.weight(density, water)?;
        let factor = self.factor();
        let reynolds = self.balance(weight, factor, water)?;
        let (most, least) = self.drag_bounds(reynolds)?;
        let bound =
            |of_drag: f64| Ok(self.speed(self.balance(weight, factor * of_drag, water)?, water));
        Ok(Fall {
            speed: self.speed(reynolds, water),
            trust: Trust {
                slowest: bound(most)?,
                fastest: bound(least)?,
                motion: Motion::at(reynolds),
            },
            reynolds,
            drag_coefficient: factor * self.shape.drag_coefficient(reynolds)?,
            acceleration: self.acceleration(weight, density, water),
        })
    }

    /// The same of a piece whose density is unsure by the standard uncertainty `unsure`: the bounds are those at twice
    /// that to either side, the lower one 0 where the piece may hang or float.
    ///
    /// # Errors
    /// Those of [`Body::fall`].
    pub fn fall_within(
        &self,
        density: MassDensity,
        unsure: MassDensity,
        water: &Water,
    ) -> Result<Fall, SinkError> {
        not_negative(unsure.value, "the uncertainty of the density")?;
        let mut fall = self.fall(density, water)?;
        fall.trust.slowest = match self.fall(density - 2.0 * unsure, water) {
            Ok(light) => light.trust.slowest,
            // It sinks at `density`: what is wrong with less of it is that it hardly sinks, or does not.
            Err(_) => Velocity::default(),
        };
        fall.trust.fastest = self.fall(density + 2.0 * unsure, water)?.trust.fastest;
        Ok(fall)
    }

    /// The density of the piece, voids included, at which it falls at `speed` in `water`; the salt for it follows
    /// as a [finished density](crate::salt::SaltLoading::FinishedDensity).
    ///
    /// # Errors
    /// [`SinkError::HookTooHeavy`] where even a piece of no mass would be faster; [`SinkError::OutsideDrag`];
    /// a number out of its range.
    pub fn density_for(&self, speed: Velocity, water: &Water) -> Result<MassDensity, SinkError> {
        self.check(water)?;
        positive(speed.value, "the speed")?;
        let reynolds = (speed * self.shape.diameter() * water.density / water.viscosity).value;
        let coefficient = self.factor() * self.shape.drag_coefficient(reynolds)?;
        let drag: Force = 0.5 * coefficient * water.density * speed * speed * self.shape.area();
        let displaced = water.density * (self.volume + self.hook.volume);
        let piece = drag / gravity() + displaced - self.hook.mass;
        let needed = piece / self.volume;
        if !is_positive(piece.value) {
            return Err(SinkError::HookTooHeavy { speed, excess: -piece });
        }
        if is_density(needed.value) {
            Ok(needed)
        } else {
            Err(SinkError::TooFast { speed, needed })
        }
    }

    /// The same piece with its own drag, from a `drop` that was timed at `density` in `water`.
    ///
    /// At other densities the factor F stands, and the curve of the shape says how drag changes with speed.
    ///
    /// # Errors
    /// [`SinkError::TooQuick`] for a drop that no drag can explain; those of [`Body::fall`].
    pub fn with_drop(
        &self,
        density: MassDensity,
        drop: &TimedDrop,
        water: &Water,
    ) -> Result<Self, SinkError> {
        positive(drop.depth.value, "the depth of the drop")?;
        positive(drop.time.value, "the time of the drop")?;
        let weight = self.weight(density, water)?;
        let speed = final_speed(drop, self.acceleration(weight, density, water))?;
        let reynolds = (speed * self.shape.diameter() * water.density / water.viscosity).value;
        let curve = self.shape.drag_coefficient(reynolds)?;
        let drag: Force = 0.5 * curve * water.density * speed * speed * self.shape.area();
        Ok(Self { own_drag: Some(OwnDrag { factor: weight / drag, reynolds }), ..*self })
    }

    fn factor(&self) -> f64 {
        self.own_drag.map_or(1.0, |own| own.factor.value)
    }

    /// Most and least drag per drag of the curve (figures: [module](self)).
    fn drag_bounds(&self, reynolds: f64) -> Result<(f64, f64), SinkError> {
        let motion = Motion::at(reynolds);
        // What a timed drop shows has the ends in it, and the swinging if it swung.
        let (ends, straight) = match self.own_drag {
            Some(own) => (1.0, Motion::at(own.reynolds) == motion),
            None => (self.shape.end_factor()?, motion == Motion::Straight),
        };
        let spread = if straight { self.shape.spread() } else { 2.0 * self.shape.spread() };
        Ok((1.0 + spread, ends * (1.0 - spread)))
    }

    /// The Reynolds number at which `factor` times the drag of the shape carries `weight`.
    fn balance(&self, weight: Force, factor: f64, water: &Water) -> Result<f64, SinkError> {
        let diameter = self.shape.diameter();
        let area_ratio = diameter * diameter / self.shape.area();
        let load = 2.0 * weight * water.density * area_ratio / (water.viscosity * water.viscosity);
        self.shape.reynolds(load.value / factor)
    }

    fn speed(&self, reynolds: f64, water: &Water) -> Velocity {
        reynolds * water.viscosity / (water.density * self.shape.diameter())
    }

    /// Weight in water, above zero.
    fn weight(&self, density: MassDensity, water: &Water) -> Result<Force, SinkError> {
        self.check(water)?;
        positive(density.value, "the density of the piece")?;
        believed(density).map_err(SinkError::Density)?;
        let displaced = water.density * (self.volume + self.hook.volume);
        let heavier = self.mass(density) - displaced;
        if heavier > Mass::default() {
            Ok(heavier * gravity())
        } else {
            let needed = (displaced - self.hook.mass) / self.volume;
            Err(SinkError::Floats { lift: -heavier, needed })
        }
    }

    fn mass(&self, density: MassDensity) -> Mass {
        density * self.volume + self.hook.mass
    }

    /// At the start, with the water that moves too.
    fn acceleration(&self, weight: Force, density: MassDensity, water: &Water) -> Acceleration {
        let displaced = water.density * (self.volume + self.hook.volume);
        weight / (self.mass(density) + self.shape.added_mass() * displaced)
    }

    fn check(&self, water: &Water) -> Result<(), SinkError> {
        positive(self.volume.value, "the volume of the piece")?;
        positive(self.shape.diameter().value, "the diameter of the piece")?;
        if let Shape::Stick { length, .. } = self.shape {
            positive(length.value, "the length of the piece")?;
        }
        // Whether the drag is published for it, own drag or not: a short stick does not lie across.
        self.shape.end_factor()?;
        self.shape.check_volume(self.volume)?;
        not_negative(self.hook.mass.value, "the mass of the hook")?;
        not_negative(self.hook.volume.value, "the volume of the hook")?;
        positive(water.density.value, "the density of the water")?;
        positive(water.viscosity.value, "the viscosity of the water")?;
        positive(self.factor(), "the factor of the piece's own drag")
    }
}

impl Fall {
    /// Time to `depth` for a piece let go at rest just below the surface.
    ///
    /// # Errors
    /// [`SinkError::NotPositive`] for a depth that is not above zero.
    pub fn time_to(&self, depth: Length) -> Result<Time, SinkError> {
        positive(depth.value, "the depth")?;
        Ok(time_to(depth, self.speed, self.acceleration))
    }
}

fn gravity() -> Acceleration {
    Acceleration::new::<standard_gravity>(1.0)
}

/// t = (v/a) arcosh(e^y) with y = a x/v², written so that a great y does not overflow.
fn time_to(depth: Length, speed: Velocity, acceleration: Acceleration) -> Time {
    let y = (acceleration * depth / (speed * speed)).value;
    (speed / acceleration) * (y + libm::log1p(libm::sqrt(-libm::expm1(-2.0 * y))))
}

/// The final speed of a fall that took the time of `drop`: the inverse of [`time_to`], which falls with speed.
fn final_speed(drop: &TimedDrop, acceleration: Acceleration) -> Result<Velocity, SinkError> {
    const HALVINGS: u32 = 64;
    // No final speed is believed that is above this many times the mean one.
    const MOST: f64 = 100.0;
    let mut low = drop.depth / drop.time;
    let mut high = MOST * low;
    if time_to(drop.depth, high, acceleration) >= drop.time {
        let free = (2.0 * drop.depth / acceleration).value;
        let least = Time::new::<uom::si::time::second>(libm::sqrt(free));
        return Err(SinkError::TooQuick { timed: drop.time, least });
    }
    for _ in 0..HALVINGS {
        let middle = 0.5 * (low + high);
        if time_to(drop.depth, middle, acceleration) > drop.time {
            low = middle;
        } else {
            high = middle;
        }
    }
    Ok(high)
}

fn positive(x: f64, what: &'static str) -> Result<(), SinkError> {
    if is_positive(x) { Ok(()) } else { Err(SinkError::NotPositive { what }) }
}

fn not_negative(x: f64, what: &'static str) -> Result<(), SinkError> {
    if is_not_negative(x) { Ok(()) } else { Err(SinkError::Negative { what }) }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::length::{meter, millimeter};
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::thermodynamic_temperature::degree_celsius;
    use uom::si::time::second;
    use uom::si::velocity::meter_per_second;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::density::{ScoopedDensity, TrueDensity};
    use crate::process::seawater::Salinity;
    use crate::quantity::{TemperatureCoefficient, ThermodynamicTemperature};
    use crate::salt::{Salt, SaltForm, SaltLoading, Unsalted};

    fn water(celsius: f64, salinity: f64) -> Water {
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(celsius);
        Water::new(temperature, Salinity::Practical(salinity)).unwrap()
    }

    fn mm(x: f64) -> Length {
        Length::new::<millimeter>(x)
    }

    fn per_ml(x: f64) -> MassDensity {
        MassDensity::new::<gram_per_cubic_centimeter>(x)
    }

    fn cm_per_s(x: f64) -> Velocity {
        Velocity::new::<centimeter_per_second>(x)
    }

    /// A stick of 10 mm by 120 mm, 9.42 mL, as a plain cylinder.
    fn stick(hook_g: f64) -> Body {
        let volume = mm(10.0) * mm(10.0) * core::f64::consts::FRAC_PI_4 * mm(120.0);
        let hook = Hook {
            mass: Mass::new::<gram>(hook_g),
            volume: Volume::new::<milliliter>(hook_g / 7.9),
        };
        let shape = Shape::Stick { diameter: mm(10.0), length: mm(120.0) };
        Body { volume, hook, shape, own_drag: None }
    }

    fn ball(diameter: f64) -> Body {
        let d = mm(diameter);
        Body {
            volume: d * d * d * (core::f64::consts::PI / 6.0),
            hook: Hook::default(),
            shape: Shape::Ball { diameter: d },
            own_drag: None,
        }
    }

    #[test]
    fn a_stick_by_hand() {
        // At 1.10 g/mL in fresh water at 20 °C: with C_D = 0.95 at Re ≈ 1300, v² = (π/2) g d (ρ_p/ρ − 1)/C_D
        // = 1.5708 · 9.80665 · 0.01 · 0.101976/0.95, so v = 0.1286 m/s.
        let fall = stick(0.0).fall(per_ml(1.10), &water(20.0, 0.0)).unwrap();
        assert!((fall.speed.get::<meter_per_second>() - 0.1286).abs() < 0.001);
        assert!((fall.drag_coefficient - 0.95).abs() < 0.01);
        assert_eq!(fall.trust.motion, Motion::Swings);
        assert!(fall.trust.slowest < fall.speed && fall.speed < fall.trust.fastest);
    }

    /// Near its water's density a piece may fall twice as fast as told, or hang.
    #[test]
    fn an_unsure_density_widens_the_bounds() {
        let (lake, body) = (water(20.0, 0.0), stick(0.0));
        let sure = body.fall(per_ml(1.044), &lake).unwrap();
        assert_eq!(body.fall_within(per_ml(1.044), per_ml(0.0), &lake), Ok(sure));
        let unsure = body.fall_within(per_ml(1.044), per_ml(0.008), &lake).unwrap();
        for (density, bound) in [(1.028, unsure.trust.slowest), (1.060, unsure.trust.fastest)] {
            let trust = body.fall(per_ml(density), &lake).unwrap().trust;
            assert!(bound == trust.slowest || bound == trust.fastest);
        }
        assert!(unsure.trust.slowest < sure.trust.slowest);
        assert!(unsure.trust.fastest > sure.trust.fastest);
        assert_eq!(unsure.speed, sure.speed);
        let may_hang = body.fall_within(per_ml(1.01), per_ml(0.008), &lake).unwrap();
        assert_eq!(may_hang.trust.slowest, Velocity::default());
        assert!(body.fall_within(per_ml(1.0), per_ml(-0.1), &lake).is_err());
    }

    #[rstest]
    #[case(stick(0.0).shape, 92.0, "A piece of 92 mL is no stick of 10 mm by 120 mm, which holds about 9.425 mL.")]
    #[case(Shape::Ball { diameter: mm(16.0) }, 0.5, "A piece of 0.5 mL is no ball of 16 mm, which holds about 2.145 mL.")]
    fn a_volume_is_that_of_its_body(#[case] shape: Shape, #[case] ml: f64, #[case] says: &str) {
        let volume = Volume::new::<milliliter>(ml);
        let body = Body { volume, hook: Hook::default(), shape, own_drag: None };
        let refused = body.fall(per_ml(1.2), &water(20.0, 0.0)).unwrap_err();
        assert_eq!(refused.to_string(), says);
        // What it says would do does.
        let help = refused.help().into_owned();
        let bounds = help.split_once("has ").unwrap().1.trim_end_matches(" mL.");
        for bound in bounds.split(" mL to ") {
            let volume = Volume::new::<milliliter>(bound.parse().unwrap());
            assert!(shape.check_volume(volume).is_ok(), "{bound}");
        }
    }

    #[test]
    fn a_small_ball_by_stokes() {
        // v = (ρ_p − ρ) g d²/(18 μ) for Re ≪ 1; at Re = 0.03 the curve adds half a per cent.
        let grain = ball(0.04);
        let water = water(20.0, 0.0);
        let fall = grain.fall(per_ml(2.165), &water).unwrap();
        let d = mm(0.04);
        let stokes = (per_ml(2.165) - water.density) * gravity() * d * d / (18.0 * water.viscosity);
        let ratio = (fall.speed / stokes).value;
        assert!((0.98..1.0).contains(&ratio), "{ratio}");
        assert_eq!(fall.trust.motion, Motion::Straight);
    }

    #[test]
    fn a_floating_piece_says_by_how_much() {
        let error = stick(0.0).fall(per_ml(0.95), &water(20.0, 0.0)).unwrap_err();
        // 9.4248 mL · (0.998 207 − 0.95) g/mL = 0.4543 g.
        assert_eq!(
            error.to_string(),
            "The piece with its hook floats: the water lifts it by 0.4543 g."
        );
        assert!(error.help().contains("above 0.9983 g/mL"), "{}", error.help());
        // A hook of 1 g that displaces 0.13 mL sinks it.
        assert!(stick(1.0).fall(per_ml(0.95), &water(20.0, 0.0)).is_ok());
        // So does less salt in the lake than in the sea.
        let piece = per_ml(1.01);
        assert!(stick(0.0).fall(piece, &water(20.0, 0.0)).is_ok());
        assert!(stick(0.0).fall(piece, &water(20.0, 35.0)).is_err());
    }

    #[test]
    fn a_wanted_fall_leads_to_salt() {
        let (mass, volume) = (Mass::new::<gram>(103.0), Volume::new::<milliliter>(100.0));
        let mix = Unsalted {
            base_mass: mass,
            base_volume: volume,
            mass,
            volume,
            hot_volume: volume,
            shot_temperature: ThermodynamicTemperature::new::<degree_celsius>(20.0),
            voids: Ratio::from(0.01),
            salt: Salt {
                true_density: TrueDensity::new(per_ml(2.165)).unwrap(),
                scooped_density: ScoopedDensity::new(per_ml(1.2)).unwrap(),
                expansion: TemperatureCoefficient::default(),
            },
            softener: None,
            most_solids: Ratio::from(0.4),
            cavity: None,
            hook: Hook::default(),
        };
        let (lake, body) = (water(15.0, 0.0), stick(0.3));
        let wanted = cm_per_s(14.0);
        let density = body.density_for(wanted, &lake).unwrap();
        let salt = mix.ratio(SaltLoading::FinishedDensity(density)).unwrap();
        assert!(salt.value > 0.05, "{salt:?}");
        let SaltLoading::FinishedDensity(made) =
            mix.loading(salt, SaltForm::FinishedDensity).unwrap()
        else {
            panic!("another form came back")
        };
        let speed = body.fall(made, &lake).unwrap().speed;
        assert!((speed / wanted - Ratio::from(1.0)).value.abs() < 1e-9);
    }

    #[test]
    fn a_heavy_hook_leaves_no_slow_fall() {
        let error = stick(20.0).density_for(cm_per_s(5.0), &water(20.0, 0.0)).unwrap_err();
        assert_eq!(error.code(), "sink-hook-too-heavy");
    }

    #[test]
    fn nothing_falls_as_fast_as_one_may_wish() {
        let lake = water(20.0, 0.0);
        let error = stick(0.0).density_for(cm_per_s(400.0), &lake).unwrap_err();
        assert_eq!(error.code(), "sink-too-fast");
        let error = stick(0.0).fall(per_ml(1030.0), &lake).unwrap_err();
        assert_eq!(error.code(), "density-unbelievable");
    }

    #[test]
    fn start_costs_a_little_time() {
        let fall = stick(0.0).fall(per_ml(1.10), &water(20.0, 0.0)).unwrap();
        let depth = Length::new::<meter>(2.0);
        let steady = depth / fall.speed;
        let start = fall.speed / fall.acceleration * core::f64::consts::LN_2;
        let time = fall.time_to(depth).unwrap();
        assert!((time - steady - start).value.abs() < 1e-9);
        assert!((0.15..0.25).contains(&start.value), "{start:?}");
        // In the first millimeter it falls freely.
        let free = libm::sqrt(2.0 * 1e-4 / fall.acceleration.value);
        let first = fall.time_to(mm(0.1)).unwrap().value;
        assert!((first / free - 1.0).abs() < 0.01, "{first} {free}");
    }

    #[test]
    fn a_drop_too_quick_is_refused() {
        let drop = TimedDrop { depth: Length::new::<meter>(1.0), time: Time::new::<second>(0.5) };
        let refused = stick(0.0).with_drop(per_ml(1.1), &drop, &water(20.0, 0.0));
        assert_eq!(refused.unwrap_err().code(), "sink-drop-too-quick");
    }

    #[rstest]
    #[case(Body { volume: Volume::default(), ..stick(0.0) }, 1.1, "sink-not-positive")]
    #[case(stick(0.0), f64::NAN, "sink-not-positive")]
    #[case(stick(0.0), 0.0, "sink-not-positive")]
    #[case(stick(-1.0), 1.1, "sink-negative")]
    #[case(Body { shape: Shape::Ball { diameter: mm(-1.0) }, ..stick(0.0) }, 1.1, "sink-not-positive")]
    #[case(
        Body { shape: Shape::Stick { diameter: mm(10.0), length: mm(15.0) }, ..stick(0.0) },
        1.1,
        "sink-stick-too-short"
    )]
    #[case(ball(3000.0), 11.0, "sink-outside-drag")]
    fn refuses(#[case] body: Body, #[case] density: f64, #[case] code: &str) {
        assert_eq!(body.fall(per_ml(density), &water(20.0, 0.0)).unwrap_err().code(), code);
    }

    prop_compose! {
        fn bodies()(
            (diameter, slender) in (3.0..25.0, 2.5..15.0),
            (hook, is_ball) in (0.0..0.5, any::<bool>()),
        ) -> Body {
            let d = mm(diameter);
            let (volume, shape) = if is_ball {
                (d * d * d * (core::f64::consts::PI / 6.0), Shape::Ball { diameter: d })
            } else {
                let length = d * slender;
                (d * d * length * core::f64::consts::FRAC_PI_4, Shape::Stick { diameter: d, length })
            };
            Body {
                volume,
                hook: Hook { mass: volume * per_ml(hook), volume: volume * hook / 7.9 },
                shape,
                own_drag: None,
            }
        }
    }

    proptest! {
        #[test]
        fn density_for_its_speed_comes_back(
            body in bodies(), density in 1.03..1.6, t in 0.0..40.0, salinity in 0.0..35.0,
        ) {
            let water = water(t, salinity);
            prop_assume!(body.weight(per_ml(density), &water).is_ok());
            let fall = body.fall(per_ml(density), &water).unwrap();
            let back = body.density_for(fall.speed, &water).unwrap();
            // A join of the sphere's curve, where it jumps by less than 1 %, may hold the balance.
            let close = if let Shape::Ball { .. } = body.shape { 5e-3 } else { 1e-11 };
            prop_assert!(((back / per_ml(density)).value - 1.0).abs() < close);
        }

        #[test]
        fn denser_falls_faster(body in bodies(), density in 1.03..1.6, more in 0.001..0.2) {
            let water = water(20.0, 0.0);
            let slow = body.fall(per_ml(density), &water).unwrap();
            let fast = body.fall(per_ml(density + more), &water).unwrap();
            prop_assert!(fast.speed > slow.speed);
            prop_assert!(slow.trust.slowest < slow.speed && slow.speed < slow.trust.fastest);
        }

        #[test]
        fn a_drop_timed_gives_the_drag_back(
            body in bodies(), density in 1.05..1.5, other in 1.05..1.5, factor in 0.6..2.0, depth in 0.5..4.0,
        ) {
            let water = water(18.0, 0.0);
            let own = OwnDrag { factor: Ratio::from(factor), reynolds: 500.0 };
            let truth = Body { own_drag: Some(own), ..body };
            let fall = truth.fall(per_ml(density), &water).unwrap();
            let depth = Length::new::<meter>(depth);
            let drop = TimedDrop { depth, time: fall.time_to(depth).unwrap() };
            let found = body.with_drop(per_ml(density), &drop, &water).unwrap();
            let wanted = truth.fall(per_ml(other), &water).unwrap().speed;
            let got = found.fall(per_ml(other), &water).unwrap().speed;
            prop_assert!(((got / wanted).value - 1.0).abs() < 1e-2);
        }
    }
}

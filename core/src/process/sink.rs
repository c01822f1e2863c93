//! How fast a piece sinks with its hook or weight, and the density for a sink rate.
//!
//! A piece (volume V, density ρ_p) with a hook (m_h, V_h) weighs in water of density ρ and viscosity μ
//! W = (ρ_p V + m_h − ρ (V + V_h)) g, with standard gravity. It sinks at the speed v at which drag balances it:
//! W = ½ ρ v² A F C_D(Re), Re = ρ v d/μ, with C_D of a long cylinder across the flow or of a sphere
//! ([`drag`](super::drag)), and F = 1 or the shop's own factor from a drop that it timed. Re² C_D rises with Re; the balance
//! is solved by halving. Backwards the density follows at once.
//!
//! **Start.** Let go at the surface, the piece takes up speed under a = W/(m + c ρ (V + V_h)); the water that
//! moves with it counts with c = 1 for a cylinder across and ½ for a sphere (potential flow). With the drag
//! coefficient of the final speed, a depth x takes t = (v/a) arcosh(e^(a x/v²)), which tends to
//! x/v + (v/a) ln 2. Times to a depth and timed drops count the start in.
//!
//! **How far to trust it.** C_D is for a smooth body in still water on a slack line, without the hook's own drag.
//! Bounds of the speed come with it:
//! - The published curves differ from data by up to 15 % of drag for a cylinder and 8 % for a sphere, which is
//!   7 and 4 % of speed.
//! - A stick sinks faster than the long cylinder since water flows round its ends; by how much at its Re is in no
//!   table. The upper bound is with all that [`drag::end_factor`](super::drag::end_factor) takes off.
//! - Above Re ≈ 300, with some cylinders from 80, a falling piece swings, and its drag depends on its density
//!   too (L. G. Marchildon, A. Clamen, W. H. Gauvin, *Can. J. Chem. Eng.* 42 (1964) 178–182). There the
//!   bounds take twice the spread (an allowance, no source). The same limits are taken for a ball.
//! - A density that is unsure makes the sink rate so: where its standard uncertainty u is known, the bounds are those at
//!   ρ_p ± 2 u, about 95 % of a normal spread. A piece a little denser than its water may as well hang in it.
//!
//! A piece that the shop has dropped and timed answers for itself: better than any curve for one that is
//! neither stick nor ball. A piece is taken to sink sideways or as a ball; a head-heavy one that dives nose
//! first needs a timed drop too.

mod error;
mod salted;
mod shape;

pub use self::error::SinkError;
pub use self::salted::{SaltedSinkError, cooled, loading_for};
pub use self::shape::{Outline, Shape};

use uom::si::acceleration::standard_gravity;

use crate::parameter::{Check, Parameter, ParameterErrors};
use crate::process::seawater::Water;
use crate::quantity::{
    Acceleration, Force, Length, Mass, MassDensity, Ratio, Time, Velocity, Volume,
};
use crate::salt::Hook;
use crate::show::legible::{legible, plain};
use crate::words::words;

/// Reynolds number from which some falling cylinders swing (source: [module](self)).
pub const MAY_SWING_FROM: f64 = 80.0;

/// Reynolds number from which a falling cylinder swings (source: [module](self)).
pub const SWINGS_FROM: f64 = 300.0;

/// A piece apart from its density.
#[derive(Clone, Copy, PartialEq)]
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
#[derive(Clone, Copy, PartialEq)]
pub struct TimedDrop {
    /// Depth.
    pub depth: Length,
    /// Time to it.
    pub time: Time,
}

/// The drag of one piece, from a timed drop.
#[derive(Clone, Copy, PartialEq)]
pub struct OwnDrag {
    /// Its drag per drag of the shape (F).
    pub factor: Ratio,
    /// Reynolds number of the drop.
    pub reynolds: f64,
}

words! {
    /// Whether a piece sinks straight.
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
    /// Whether the piece sinks straight, as the model has it.
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

plain! { Shape }

legible! {
    Body { volume, hook, shape, own_drag }
    TimedDrop { depth, time }
    OwnDrag { factor, reynolds }
}

impl Body {
    /// A piece of this volume and shape. Defaults: no hook; the drag of the shape.
    #[must_use]
    pub fn new(volume: Volume, shape: Shape) -> Self {
        Self { volume, hook: Hook::default(), shape, own_drag: None }
    }

    /// The same, with hook and weight.
    #[must_use]
    pub fn with_hook(self, hook: Hook) -> Self {
        Self { hook, ..self }
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
        let bound = |of_drag: f64| -> Result<Velocity, SinkError> {
            Ok(self.speed(self.balance(weight, factor * of_drag, water)?, water))
        };
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
        Parameter::DensityUncertainty.check_si(unsure.value)?;
        let mut fall = self.fall(density, water)?;
        if unsure == MassDensity::default() {
            return Ok(fall);
        }
        fall.trust.slowest = match self.fall(density - 2.0 * unsure, water) {
            Ok(light) => light.trust.slowest,
            // It sinks at `density`: what is wrong with less of it is that it hardly sinks, or does not.
            Err(_) => Velocity::default(),
        };
        fall.trust.fastest = self.fall(density + 2.0 * unsure, water)?.trust.fastest;
        Ok(fall)
    }

    /// The density of the piece, voids included, at which it sinks at `speed` in `water`; the salt for it follows
    /// as a [finished density](crate::salt::SaltLoading::FinishedDensity).
    ///
    /// # Errors
    /// [`SinkError::HookTooHeavy`] where even a piece of no mass would be faster; [`SinkError::OutsideDrag`];
    /// a number out of its range.
    pub fn density_for(&self, speed: Velocity, water: &Water) -> Result<MassDensity, SinkError> {
        let mut check = Check::new();
        check.number(Parameter::SinkRate, speed.value);
        self.check(water, check)?;
        let reynolds = (speed * self.shape.diameter() * water.density / water.viscosity).value;
        let coefficient = self.factor() * self.shape.drag_coefficient(reynolds)?;
        let drag: Force = 0.5 * coefficient * water.density * speed * speed * self.shape.area();
        let displaced = water.density * (self.volume + self.hook.volume);
        let piece = drag / gravity() + displaced - self.hook.mass;
        let needed = piece / self.volume;
        if piece <= Mass::default() {
            return Err(SinkError::HookTooHeavy { speed, excess: -piece });
        }
        if Parameter::PieceDensity.holds_si(needed.value) {
            Ok(needed)
        } else {
            Err(SinkError::TooFast { speed, needed })
        }
    }

    /// The same piece with its own drag, from a `drop` that was timed at `density` in `water`.
    ///
    /// At other densities the factor F is kept, and drag changes with speed as the curve of the shape has it.
    ///
    /// # Errors
    /// [`SinkError::TooQuick`] for a drop faster than without drag; those of [`Body::fall`].
    pub fn with_drop(
        &self,
        density: MassDensity,
        drop: &TimedDrop,
        water: &Water,
    ) -> Result<Self, SinkError> {
        let mut check = Check::new();
        check
            .number(Parameter::DropDepth, drop.depth.value)
            .number(Parameter::DropTime, drop.time.value);
        check.finish()?;
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
        let mut check = Check::new();
        check.number(Parameter::PieceDensity, density.value);
        self.check(water, check)?;
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

    /// Checks all numbers of the piece.
    pub(crate) fn checked(&self) -> Result<(), ParameterErrors> {
        let mut check = Check::new();
        check
            .number(Parameter::PieceVolume, self.volume.value)
            .number(Parameter::Diameter, self.shape.diameter().value)
            .option(Parameter::Length, self.shape.length().map(|length| length.value))
            .number(Parameter::HookMass, self.hook.mass.value)
            .number(Parameter::HookVolume, self.hook.volume.value);
        check.finish()
    }

    fn check(&self, water: &Water, mut check: Check) -> Result<(), SinkError> {
        check
            .merge(self.checked())
            .number(Parameter::WaterDensity, water.density.value)
            .number(Parameter::WaterViscosity, water.viscosity.value)
            .number(Parameter::DragFactor, self.factor());
        check.finish()?;
        // Whether the drag is published for it, own drag or not: a short stick does not lie across.
        self.shape.end_factor()?;
        self.shape.check_volume(self.volume)
    }
}

impl Fall {
    /// Time to `depth` for a piece let go at rest just below the surface.
    ///
    /// # Errors
    /// A depth out of its range.
    pub fn time_to(&self, depth: Length) -> Result<Time, SinkError> {
        Parameter::Depth.check_si(depth.value)?;
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

/// The final speed of a piece that took the time of `drop`: the inverse of [`time_to`], which drops with speed.
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

#[cfg(test)]
mod tests;

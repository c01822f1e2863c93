//! How fast a piece sinks.

use std::mem::MaybeUninit;

use pourwright::process::seawater::{Salinity, Water};
use pourwright::process::sink::{Body as CoreBody, Motion, Shape};
use pourwright::quantity::{Length, Measurable, Velocity};
use pourwright::salt::Hook;

use crate::error::{Error, Failure, Refused};
use crate::guard::guard;
use crate::memory::{finite, given};
use crate::number::{celsius, grams, grams_per_milliliter, in_grams_per_milliliter, milliliters};

/// It falls straight.
pub const POUR_STRAIGHT: i32 = 1;
/// Some such pieces swing.
pub const POUR_MAY_SWING: i32 = 2;
/// It swings: the speed is that of a model which does not.
pub const POUR_SWINGS: i32 = 3;

/// A piece apart from its density, and the water. Set all to 0 first.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Body {
    /// Volume of the piece without its hook; above 0.
    pub piece_ml: f64,
    /// Mean diameter; above 0.
    pub diameter_mm: f64,
    /// Length of a stick that falls sideways, at least 2.01 diameters; a ball where 0.
    pub length_mm: f64,
    /// Mass of hook and weight; 0 or above.
    pub hook_g: f64,
    /// Volume that they displace; 0 or above.
    pub hook_ml: f64,
    /// Temperature of the water, 0 to 40 °C. Here 0 is 0 °C.
    pub water_celsius: f64,
    /// Practical salinity of the water: 0 fresh, about 35 in the ocean.
    pub salinity: f64,
}

/// A fall, as a model has it.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Fall {
    /// Final speed.
    pub speed_cm_per_s: f64,
    /// Lower bound of the speed.
    pub slowest_cm_per_s: f64,
    /// Upper bound of the speed.
    pub fastest_cm_per_s: f64,
    /// Reynolds number.
    pub reynolds: f64,
    /// Drag coefficient.
    pub drag_coefficient: f64,
    /// `POUR_STRAIGHT`, `POUR_MAY_SWING` or `POUR_SWINGS`.
    pub motion: i32,
    /// Not used; 0.
    pub reserved: u32,
}

fn millimeters(mm: f64) -> Length {
    Length::from_si(mm / 1e3)
}

fn in_cm_per_s(speed: Velocity) -> f64 {
    speed.si() * 1e2
}

impl Body {
    fn read(&self) -> Result<(CoreBody, Water), Failure> {
        let diameter = millimeters(finite("body/diameter_mm", self.diameter_mm)?);
        let length = millimeters(finite("body/length_mm", self.length_mm)?);
        let stick = self.length_mm != 0.0;
        let shape =
            if stick { Shape::Stick { diameter, length } } else { Shape::Ball { diameter } };
        let body = CoreBody {
            volume: milliliters(finite("body/piece_ml", self.piece_ml)?),
            hook: Hook {
                mass: grams(finite("body/hook_g", self.hook_g)?),
                volume: milliliters(finite("body/hook_ml", self.hook_ml)?),
            },
            shape,
            own_drag: None,
        };
        let at = celsius(finite("body/water_celsius", self.water_celsius)?);
        let salinity = Salinity::Practical(finite("body/salinity", self.salinity)?);
        Ok((body, Water::new(at, salinity).in_parameter("body")?))
    }
}

/// How fast a piece of `density_g_per_ml` (voids and salt counted) sinks.
///
/// A model value: the bounds say how far to trust it, and `motion` whether the model is about such a fall at all.
#[unsafe(no_mangle)]
pub extern "C" fn pour_sink_rate(
    body: Option<&Body>,
    density_g_per_ml: f64,
    fall: Option<&mut MaybeUninit<Fall>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut fall = fall;
    guard(error, &mut || {
        let (body, water) = given("body", body)?.read()?;
        let fall = given("fall", fall.as_deref_mut())?;
        let density = grams_per_milliliter(finite("density_g_per_ml", density_g_per_ml)?);
        let found = body.fall(density, &water).in_parameter("")?;
        fall.write(Fall {
            speed_cm_per_s: in_cm_per_s(found.speed),
            slowest_cm_per_s: in_cm_per_s(found.trust.slowest),
            fastest_cm_per_s: in_cm_per_s(found.trust.fastest),
            reynolds: found.reynolds,
            drag_coefficient: found.drag_coefficient,
            motion: match found.trust.motion {
                Motion::Straight => POUR_STRAIGHT,
                Motion::MaySwing => POUR_MAY_SWING,
                _ => POUR_SWINGS,
            },
            reserved: 0,
        });
        Ok(())
    })
}

/// The density at which a piece sinks so fast: what salt has to bring it to.
#[unsafe(no_mangle)]
pub extern "C" fn pour_density_for_sink_rate(
    body: Option<&Body>,
    speed_cm_per_s: f64,
    density_g_per_ml: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut density_g_per_ml = density_g_per_ml;
    guard(error, &mut || {
        let (body, water) = given("body", body)?.read()?;
        let found = given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        let speed = Velocity::from_si(finite("speed_cm_per_s", speed_cm_per_s)? / 1e2);
        let density = body.density_for(speed, &water).in_parameter("")?;
        found.write(in_grams_per_milliliter(density));
        Ok(())
    })
}

//! How fast a piece sinks.

use std::mem::MaybeUninit;

use pourwright::Diagnose;
use pourwright::parameter::Parameter;
use pourwright::process::seawater::{Salinity, Water};
use pourwright::process::sink::{Body as CoreBody, Motion, Shape, SinkError};
use pourwright::quantity::{Length, Measurable, Velocity};
use pourwright::salt::Hook;

use crate::error::{Error, Failure};
use crate::guard::guard;
use crate::memory::given;
use crate::number::{celsius, grams, grams_per_milliliter, in_grams_per_milliliter, milliliters};
use crate::range::{ANY, At, CM_PER_S, G, ML, MM, Number, Range, above_0, finite, from_0, refusal};

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
    /// Its numbers, and the one that the call has beside it.
    fn numbers(&self, beside: Number<'static>) -> [Number<'static>; 8] {
        [
            ("body/piece_ml", self.piece_ml, above_0(ML)),
            ("body/diameter_mm", self.diameter_mm, above_0(MM)),
            ("body/length_mm", self.length_mm, from_0(MM)),
            ("body/hook_g", self.hook_g, from_0(G)),
            ("body/hook_ml", self.hook_ml, from_0(ML)),
            ("body/water_celsius", self.water_celsius, ANY),
            ("body/salinity", self.salinity, ANY),
            beside,
        ]
    }

    fn read(&self) -> Result<(CoreBody, Water), Failure> {
        let diameter = millimeters(self.diameter_mm);
        let length = millimeters(self.length_mm);
        let stick = self.length_mm != 0.0;
        let shape =
            if stick { Shape::Stick { diameter, length } } else { Shape::Ball { diameter } };
        let body = CoreBody {
            volume: milliliters(self.piece_ml),
            hook: Hook { mass: grams(self.hook_g), volume: milliliters(self.hook_ml) },
            shape,
            own_drag: None,
        };
        let salinity = Salinity::Practical(self.salinity);
        let water = Water::new(celsius(self.water_celsius), salinity).map_err(|error| {
            let salty = error.parameter() == Some(Parameter::SalinityPractical);
            Failure::of(if salty { "body/salinity" } else { "body/water_celsius" }, &error)
        })?;
        Ok((body, water))
    }
}

/// Why a fall is refused: of a call that has the parameter `beside` beside the body.
fn why(numbers: [Number<'static>; 8], beside: &'static str, error: &SinkError) -> Failure {
    let at = match error {
        SinkError::Parameters(_) => At::Number("body"),
        SinkError::TooShort { .. } => At::Parameter("body/length_mm"),
        _ => At::Parameter(beside),
    };
    refusal(&numbers, at, error)
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
        let body = given("body", body)?;
        let fall = given("fall", fall.as_deref_mut())?;
        let beside = "density_g_per_ml";
        let numbers = body.numbers((beside, density_g_per_ml, Range::Density));
        finite(&numbers)?;
        let (body, water) = body.read()?;
        let found = body.fall(grams_per_milliliter(density_g_per_ml), &water);
        let found = found.map_err(|error| why(numbers, beside, &error))?;
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
        let body = given("body", body)?;
        let found = given("density_g_per_ml", density_g_per_ml.as_deref_mut())?;
        let beside = "speed_cm_per_s";
        let numbers = body.numbers((beside, speed_cm_per_s, above_0(CM_PER_S)));
        finite(&numbers)?;
        let (body, water) = body.read()?;
        let density = body.density_for(Velocity::from_si(speed_cm_per_s / 1e2), &water);
        let density = density.map_err(|error| why(numbers, beside, &error))?;
        found.write(in_grams_per_milliliter(density));
        Ok(())
    })
}

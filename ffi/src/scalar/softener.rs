//! Softener and hardener by the shop's own measured points.

use std::mem::MaybeUninit;

use pourwright::softener::{Hardness, HardnessCurve, HardnessPoint as Point, Scale};

use crate::error::{ArgumentError, Error, Failure, Refused};
use crate::guard::guard;
use crate::memory::{array, finite, given};
use crate::number::{scale, share};

/// Shore 00, for very soft pieces.
pub const POUR_SHORE_00: i32 = 1;
/// Shore A, for rubber-like pieces.
pub const POUR_SHORE_A: i32 = 2;

/// The most points of a curve.
const MOST_POINTS: usize = 64;

/// A hardness that the shop has measured.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct HardnessPoint {
    /// Mass of softener or hardener per mass of base, 0 or above.
    pub ratio: f64,
    /// What the durometer showed, 0 to 100.
    pub reading: f64,
}

/// Does `ask` with the curve through `points`.
///
/// # Safety
/// As [`array`].
unsafe fn on_curve(
    points: *const HardnessPoint,
    count: usize,
    on: Scale,
    ask: impl FnOnce(&HardnessCurve<'_>) -> Result<f64, Failure>,
) -> Result<f64, Failure> {
    // SAFETY: as this function asks.
    let given = unsafe { array("points", points, count)? };
    let first = Point { ratio: share(0.0), hardness: Hardness { reading: 0.0, scale: on } };
    let mut kept = [first; MOST_POINTS];
    let Some(kept) = kept.get_mut(..given.len()) else {
        return Err(Failure::at("points", &ArgumentError::TooLarge { most: MOST_POINTS }));
    };
    for (index, (place, point)) in kept.iter_mut().zip(given).enumerate() {
        let HardnessPoint { ratio, reading } = *point;
        if !(ratio.is_finite() && reading.is_finite()) {
            finite(&format!("points/{index}/ratio"), ratio)?;
            finite(&format!("points/{index}/reading"), reading)?;
        }
        *place = Point { ratio: share(ratio), hardness: Hardness { reading, scale: on } };
    }
    ask(&HardnessCurve::new(kept).in_parameter("points")?)
}

/// The hardness that `ratio` of softener (or hardener) gives: a monotone cubic through the `count` points, which rise
/// by their ratio, 2 to 64 of them on one scale (`POUR_SHORE_00`, `POUR_SHORE_A`). Outside the points it refuses.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_hardness(
    points: *const HardnessPoint,
    count: usize,
    on: i32,
    ratio: f64,
    reading: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut reading = reading;
    guard(error, &mut || {
        let reading = given("reading", reading.as_deref_mut())?;
        let ratio = share(finite("ratio", ratio)?);
        let on = scale("on", on)?;
        let ask = |curve: &HardnessCurve<'_>| {
            curve.hardness(ratio).map(|hardness| hardness.reading).in_parameter("ratio")
        };
        // SAFETY: the header asks for an array of `count` points, or null.
        reading.write(unsafe { on_curve(points, count, on, ask)? });
        Ok(())
    })
}

/// The ratio of softener (or hardener) that gives the hardness `reading`: the other way round.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_softener_ratio(
    points: *const HardnessPoint,
    count: usize,
    on: i32,
    reading: f64,
    ratio: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut ratio = ratio;
    guard(error, &mut || {
        let ratio = given("ratio", ratio.as_deref_mut())?;
        let on = scale("on", on)?;
        let wanted = Hardness { reading: finite("reading", reading)?, scale: on };
        let ask = |curve: &HardnessCurve<'_>| {
            curve.ratio(wanted).map(|ratio| ratio.value).in_parameter("reading")
        };
        // SAFETY: the header asks for an array of `count` points, or null.
        ratio.write(unsafe { on_curve(points, count, on, ask)? });
        Ok(())
    })
}

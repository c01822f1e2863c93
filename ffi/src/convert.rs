//! Conversions that are prepared once for many numbers.

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::parameter::Parameter;
use pourwright::quantity::{Conversion as Way, System, Unit};

use crate::call::Call;
use crate::error::Error;
use crate::failure::{ArgumentError, Failure, Refused, together};
use crate::guard::guard;
use crate::memory::{finite, given, text};

/// The way from one unit to another, prepared once for many numbers: y = (x · times + plus) / over.
///
/// Plain data, made by `pour_conversion_between`: it may be copied, and used by several threads.
#[repr(C)]
#[derive(Debug, Clone, Copy)]
pub struct Conversion {
    /// Factor.
    pub times: f64,
    /// 0, but between scales of temperature.
    pub plus: f64,
    /// Divisor.
    pub over: f64,
    /// Lowest x that is accepted: 0, or absolute zero.
    pub least: f64,
}

impl Conversion {
    #[inline]
    pub(crate) fn way(self) -> Way {
        Way { times: self.times, plus: self.plus, over: self.over, least: self.least }
    }
}

/// The two units of a call.
///
/// # Safety
/// As [`text`].
unsafe fn units(from: *const c_char, to: *const c_char) -> Result<(Unit, Unit), Failure> {
    // SAFETY: as this function asks.
    let (from, to) = unsafe { (unit("from", from), unit("to", to)) };
    together! {
        from = from;
        to = to;
    }
    Ok((from, to))
}

/// The unit that the text `name` is.
///
/// # Safety
/// As [`text`].
pub(crate) unsafe fn unit(name: &str, pointer: *const c_char) -> Result<Unit, Failure> {
    // SAFETY: as this function asks.
    unsafe { text(name, pointer) }.and_then(|text| Unit::parse(text).in_parameter(name))
}

/// The measuring system by its number, US customary where that is 0.
pub(crate) fn system(measures: i32) -> Result<System, Failure> {
    let mut call = Call::new("");
    let measures = call.optional_word("measures", Parameter::Measures, measures);
    measures.map(|word| word.unwrap_or(System::UsCustomary)).ok_or_else(|| call.failure())
}

fn between(from: Unit, to: Unit, measures: System) -> Result<Way, Failure> {
    let at = || if from.factor(measures).is_err() { "from" } else { "to" };
    Way::between(from, to, measures).map_err(|error| Failure::of(at(), &error))
}

/// Prepares the conversion between two units, each by trade symbol or UCUM code: `"cup"`, `"[tsp_us]"`, `"g/mL"`.
///
/// `measures` (`POUR_MEASURES_METRIC`, ...; 0 for US customary) is what a cup, a spoon and a fluid ounce hold where a
/// unit does not. `POUR_REFUSED` for a text that is not a unit, can be read as several, or measures something else.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_conversion_between(
    from: *const c_char,
    to: *const c_char,
    measures: i32,
    conversion: Option<&mut MaybeUninit<Conversion>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut conversion = conversion;
    guard(error, &mut || {
        // SAFETY: the header asks for texts that end, or null.
        let units = unsafe { units(from, to) };
        together! {
            units = units;
            measures = system(measures);
            conversion = given("conversion", conversion.as_deref_mut());
        }
        let Way { times, plus, over, least } = between(units.0, units.1, measures)?;
        conversion.write(Conversion { times, plus, over, least });
        Ok(())
    })
}

/// Converts a number by a prepared conversion: the fast way, some nanoseconds.
///
/// `POUR_REFUSED` for a value below the lowest or a result beyond what a double holds.
#[unsafe(no_mangle)]
pub extern "C" fn pour_convert_with(
    conversion: Option<&Conversion>,
    value: f64,
    converted: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut converted = converted;
    guard(error, &mut || {
        together! {
            conversion = given("conversion", conversion);
            value = finite("value", value);
            converted = given("converted", converted.as_deref_mut());
        }
        let way = conversion.way();
        converted.write(way.apply(value).ok_or_else(|| outside(value, way))?);
        Ok(())
    })
}

/// The failure that `value` is outside of what `way` converts to a double.
#[cold]
fn outside(value: f64, way: Way) -> Failure {
    let Way { least, .. } = way;
    let most = f64::MAX / way.times.max(1.0) * way.over.min(1.0);
    Failure::at("value", &ArgumentError::OutsideConversion { value, least, most })
}

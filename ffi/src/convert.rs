//! Conversions that are prepared once for many numbers.

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::parameter::Parameter;
use pourwright::quantity::{Conversion as Way, System, Unit};

use crate::call::Call;
use crate::error::Error;
use crate::failure::{ArgumentError, Failure, Refused};
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
    let (from, to) = unsafe { (text("from", from)?, text("to", to)?) };
    Ok((Unit::parse(from).in_parameter("from")?, Unit::parse(to).in_parameter("to")?))
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
        let conversion = given("conversion", conversion.as_deref_mut())?;
        // SAFETY: the header asks for texts that end, or null.
        let (from, to) = unsafe { units(from, to)? };
        let mut call = Call::new("");
        let measures = call.optional_word("measures", Parameter::Measures, measures);
        let Some(measures) = measures else { return Err(call.failure()) };
        let measures = measures.unwrap_or(System::UsCustomary);
        let Way { times, plus, over, least } = between(from, to, measures)?;
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
        let way = given("conversion", conversion)?.way();
        let converted = given("converted", converted.as_deref_mut())?;
        let value = finite("value", value)?;
        let found = way.apply(value);
        converted.write(found.ok_or_else(|| below(value, way.least))?);
        Ok(())
    })
}

fn below(value: f64, least: f64) -> Failure {
    Failure::at("value", &ArgumentError::OutsideConversion { value, least })
}

//! Units.

use std::ffi::c_char;
use std::mem::MaybeUninit;

use pourwright::quantity::{Amount, Conversion as Way, System, Unit};

use crate::error::{ArgumentError, Error, Failure, Refused};
use crate::guard::guard;
use crate::memory::{finite, given, text};
use crate::number::system;

/// US customary measures: gallon 231 in³, cup 236.588 236 5 mL.
pub const POUR_US_CUSTOMARY: i32 = 1;
/// US nutrition-label measures: cup 240 mL, tablespoon 15 mL, teaspoon 5 mL.
pub const POUR_US_LABEL: i32 = 2;
/// Metric kitchen measures: cup 250 mL, tablespoon 15 mL, teaspoon 5 mL.
pub const POUR_METRIC: i32 = 3;
/// Imperial measures: gallon 4.546 09 L; there are no spoons.
pub const POUR_IMPERIAL: i32 = 4;

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
    /// The least x that is accepted: 0, or absolute zero.
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
/// `measures` (`POUR_US_CUSTOMARY`, ...) is what a cup, a spoon and a fluid ounce hold where a unit does not say.
/// `POUR_REFUSED` for a text that is no unit, can be read as several, or measures something else.
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
        let Way { times, plus, over, least } = between(from, to, system("measures", measures)?)?;
        conversion.write(Conversion { times, plus, over, least });
        Ok(())
    })
}

/// Converts a number by a prepared conversion: the fast way, some nanoseconds.
///
/// `POUR_REFUSED` for a value below the least or a result beyond what a double holds.
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

/// Converts a number of one unit into another: `pour_conversion_between` and `pour_convert_with` in one.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert(
    value: f64,
    from: *const c_char,
    to: *const c_char,
    measures: i32,
    converted: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut converted = converted;
    guard(error, &mut || {
        let converted = given("converted", converted.as_deref_mut())?;
        // SAFETY: the header asks for texts that end, or null.
        let (from, to) = unsafe { units(from, to)? };
        let way = between(from, to, system("measures", measures)?)?;
        let value = finite("value", value)?;
        converted.write(way.convert(value, from).in_parameter("value")?);
        Ok(())
    })
}

/// Converts an amount as a person writes it, such as `"1 1/4 cup"` or `"330 °F"`, exactly, and rounds once.
///
/// What can be read two ways (`"6 oz"`, `"1,25 cup"`) is refused with both readings in the message.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn pour_convert_amount(
    amount: *const c_char,
    to: *const c_char,
    measures: i32,
    converted: Option<&mut MaybeUninit<f64>>,
    error: Option<&mut MaybeUninit<Box<Error>>>,
) -> i32 {
    let mut converted = converted;
    guard(error, &mut || {
        let converted = given("converted", converted.as_deref_mut())?;
        // SAFETY: the header asks for texts that end, or null.
        let (amount, to) = unsafe { (text("amount", amount)?, text("to", to)?) };
        let amount = Amount::parse(amount).in_parameter("amount")?;
        let to = Unit::parse(to).in_parameter("to")?;
        let measures = system("measures", measures)?;
        let known = |unit: Unit| unit.factor(measures).is_ok();
        let at = || if known(amount.unit()) && !known(to) { "to" } else { "amount" };
        let found = amount.in_unit(to, measures).map_err(|error| Failure::of(at(), &error))?;
        converted.write(found.value().to_f64());
        Ok(())
    })
}

//! The calculations on plain numbers: a struct of inputs each, named as in the table, and a struct of results.
//!
//! A number that is `None` is omitted, and the default of its parameter counts. NaN is refused like any other number that
//! is not finite. A door whose language has no way to omit a number takes [`OMITTED`] for it.

pub(in crate::table) mod batch;
pub(in crate::table) mod bench;
pub(in crate::table) mod calibrate;
pub(in crate::table) mod clock;
pub(in crate::table) mod color;
pub(in crate::table) mod cost;
pub(in crate::table) mod degas;
pub(in crate::table) mod density;
pub(in crate::table) mod flake;
pub(in crate::table) mod heat;
pub(in crate::table) mod oven;
pub(in crate::table) mod quantity;
pub(in crate::table) mod salt;
pub(in crate::table) mod settling;
pub(in crate::table) mod shot;
pub(in crate::table) mod sink;
pub(in crate::table) mod softener;
pub(in crate::table) mod water;

pub use batch::*;
pub use bench::*;
pub use calibrate::*;
pub use clock::*;
pub use color::*;
pub use cost::*;
pub use degas::*;
pub use density::*;
pub use flake::*;
pub use heat::*;
pub use oven::*;
pub use quantity::*;
pub use salt::*;
pub use settling::*;
pub use shot::*;
pub use sink::*;
pub use softener::*;
pub use water::*;

use crate::parameter::Parameter;
use crate::quantity::Measurable;

/// The number for an omitted one where a language has nothing better: −DBL_MAX, which is in no range.
pub const OMITTED: f64 = f64::MIN;

/// `number`, unless it is [`OMITTED`].
#[inline]
#[must_use]
pub fn given(number: f64) -> Option<f64> {
    if number == OMITTED { None } else { Some(number) }
}

/// The quantity that `plain` is as `parameter`.
#[inline(always)] // a product, once the unit is known
fn of<Q: Measurable>(parameter: Parameter, plain: f64) -> Q {
    Q::from_si(parameter.unit().to_si(plain))
}

/// The same of a number that may be omitted: its default is a number.
#[inline(always)]
fn or_default<Q: Measurable>(parameter: Parameter, plain: Option<f64>) -> Q {
    Q::from_si(match plain {
        Some(plain) => parameter.unit().to_si(plain),
        None => parameter.default_si(),
    })
}

/// The same where nothing is known without it.
#[inline(always)]
fn if_given<Q: Measurable>(parameter: Parameter, plain: Option<f64>) -> Option<Q> {
    plain.map(|plain| of(parameter, plain))
}

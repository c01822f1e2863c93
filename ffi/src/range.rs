//! What a number of a call may be, and which parameter is at fault once the core has refused the call.
//!
//! The core says in words what will not do; the parameter that it stands in is looked for only then, so that a call
//! that is answered pays nothing for it. The ranges are those that the header states.

use std::fmt;

use pourwright::Diagnose;
use pourwright::density::TrueDensity;

use crate::error::{ArgumentError, Failure};
use crate::memory;
use crate::number::grams_per_milliliter;

/// A unit, as the least above 0 and the most that the core believes in it.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Unit(f64, f64);

pub(crate) const G: Unit = Unit(1e-12, 1e18);
pub(crate) const ML: Unit = Unit(1e-9, 1e21);
pub(crate) const MM: Unit = Unit(1e-12, 1e18);
pub(crate) const CM_PER_S: Unit = Unit(1e-13, 1e17);
pub(crate) const PURE: Unit = Unit(1e-15, 1e15);

/// What a number may be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) enum Range {
    /// From the first to the second.
    Within(f64, f64),
    /// From the first to below the second.
    Below(f64, f64),
    /// Grams per milliliter that something at a bench can have.
    Density,
    /// The same, or 0 where it is left out.
    DensityOr0,
    /// At least another number of the call, which is named.
    AtLeast(&'static str, f64),
    /// At most another number of the call.
    AtMost(&'static str, f64),
    /// Less than another number of the call.
    LessThan(&'static str, f64),
}

/// Any finite number: of one that will not do the core's error says where it is.
pub(crate) const ANY: Range = Range::Within(f64::MIN, f64::MAX);
/// A share, 1 included.
pub(crate) const SHARE: Range = Range::Within(0.0, 1.0);
/// A share, 1 left out.
pub(crate) const SHARE_BELOW_1: Range = Range::Below(0.0, 1.0);

pub(crate) const fn above_0(Unit(least, most): Unit) -> Range {
    Range::Within(least, most)
}

pub(crate) const fn from_0(Unit(_, most): Unit) -> Range {
    Range::Within(0.0, most)
}

impl Range {
    #[inline]
    pub(crate) fn holds(self, x: f64) -> bool {
        match self {
            Self::Within(least, most) => (least..=most).contains(&x),
            Self::Below(least, end) => (least..end).contains(&x),
            Self::Density => TrueDensity::new(grams_per_milliliter(x)).is_ok(),
            Self::DensityOr0 => x == 0.0 || Self::Density.holds(x),
            Self::AtLeast(_, other) => x >= other,
            Self::AtMost(_, other) => x <= other,
            Self::LessThan(_, other) => x < other,
        }
    }

    /// The number that the parameter `name` is, if it is inside.
    pub(crate) fn check(self, name: &str, x: f64) -> Result<f64, Failure> {
        let number = memory::finite(name, x)?;
        if self.holds(number) { Ok(number) } else { Err(self.refusal(name, number)) }
    }

    /// Why the number that the parameter `name` is, which is outside, is refused.
    pub(crate) fn refusal(self, name: &str, number: f64) -> Failure {
        Failure::at(name, &self.error(number))
    }

    /// What is wrong with a number that is outside; the core asks back what was meant by a density that nothing has.
    fn error(self, number: f64) -> ArgumentError {
        if let Self::Density | Self::DensityOr0 = self
            && number > 0.0
            && let Err(error) = TrueDensity::new(grams_per_milliliter(number))
        {
            return ArgumentError::Density(error);
        }
        ArgumentError::OutOfRange { number, range: self }
    }

    /// Whether it says how the number stands to another one, which may be the wrong one of the two.
    fn is_relation(self) -> bool {
        matches!(self, Self::AtLeast(..) | Self::AtMost(..) | Self::LessThan(..))
    }

    /// What to do about a number that is outside.
    pub(crate) fn help(self) -> &'static str {
        match self {
            SHARE | SHARE_BELOW_1 => "A share is a pure number: 0.05 for 5 %.",
            _ if self.is_relation() => "Check both numbers and their units.",
            _ => "Check the sign and the unit.",
        }
    }

    /// What is wrong with `x`, which is outside.
    pub(crate) fn outside(self, x: f64, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let x = Shown(x);
        match self {
            Self::Within(least, _) if least > 0.0 && x.0 <= 0.0 => write!(f, "{x} is not above 0."),
            Self::Within(least, most) => {
                write!(f, "{x} is not from {} to {}.", Shown(least), Shown(most))
            }
            Self::Below(least, end) => {
                write!(f, "{x} is not from {} to below {}.", Shown(least), Shown(end))
            }
            Self::Density | Self::DensityOr0 => write!(f, "{x} is not above 0."),
            Self::AtLeast(name, other) => write!(f, "{x} is below {name}, {}.", Shown(other)),
            Self::AtMost(name, other) => write!(f, "{x} is above {name}, {}.", Shown(other)),
            Self::LessThan(name, other) => write!(f, "{x} is not below {name}, {}.", Shown(other)),
        }
    }
}

/// The density that the parameter `name` is.
pub(crate) fn true_density(name: &str, g_per_ml: f64) -> Result<TrueDensity, Failure> {
    let density = memory::finite(name, g_per_ml)?;
    TrueDensity::new(grams_per_milliliter(density))
        .map_err(|_| Range::Density.refusal(name, density))
}

/// A number as a message has it: with an exponent where it would have a row of zeros.
pub(crate) struct Shown(pub(crate) f64);

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let size = self.0.abs();
        if size == 0.0 || (1e-5..1e7).contains(&size) {
            write!(f, "{}", self.0)
        } else {
            write!(f, "{:e}", self.0)
        }
    }
}

/// A number of a call: the parameter, what it is, and what it may be.
pub(crate) type Number<'a> = (&'a str, f64, Range);

/// The first number of the array `name` that is not finite, else the first that is out of its range.
pub(crate) fn first_outside(
    name: &str,
    array: &[f64],
    range: Range,
) -> Option<(String, f64, Range)> {
    let not_finite = array.iter().position(|x| !x.is_finite());
    let index = not_finite.or_else(|| array.iter().position(|x| !range.holds(*x)))?;
    Some((format!("{name}/{index}"), *array.get(index)?, range))
}

/// Where the core's error is.
#[derive(Clone, Copy)]
pub(crate) enum At {
    /// In this parameter.
    Parameter(&'static str),
    /// In a number that is out of its range, else in this parameter.
    Number(&'static str),
}

/// Why a call with these numbers is refused: all that are not finite, else all that are out of their range where the
/// core's `error` is about that, else that error.
#[cold]
pub(crate) fn refusal(numbers: &[Number<'_>], at: At, error: &dyn Diagnose) -> Failure {
    let (otherwise, in_numbers) = match at {
        At::Parameter(name) => (name, false),
        At::Number(otherwise) => (otherwise, true),
    };
    not_finite(numbers)
        .or_else(|| outside(numbers, |range| !range.is_relation()).filter(|_| in_numbers))
        .or_else(|| outside(numbers, Range::is_relation).filter(|_| in_numbers))
        .unwrap_or_else(|| Failure::of(otherwise, error))
}

/// Refuses numbers that are not finite.
pub(crate) fn finite(numbers: &[Number<'_>]) -> Result<(), Failure> {
    if numbers.iter().all(|(_, x, _)| x.is_finite()) {
        return Ok(());
    }
    not_finite(numbers).map_or(Ok(()), Err)
}

fn not_finite(numbers: &[Number<'_>]) -> Option<Failure> {
    let bad = numbers.iter().filter(|(_, x, _)| !x.is_finite());
    Failure::all(bad.map(|(name, x, _)| (*name, ArgumentError::NotFinite(*x))))
}

fn outside(numbers: &[Number<'_>], which: impl Fn(Range) -> bool) -> Option<Failure> {
    let bad = numbers.iter().filter(|(_, x, range)| which(*range) && !range.holds(*x));
    Failure::all(bad.map(|(name, x, range)| (*name, range.error(*x))))
}

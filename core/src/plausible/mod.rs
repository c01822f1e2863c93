//! What is plausible: the bounds of the numbers of a book and its orders, in one table.
//!
//! Each [`Quantity`] has two ranges. A number outside of the wider one cannot be and is always a fault. A number between the two
//! looks like a slip: it is a fault that asks back, with the likely slip of unit or decimal point, until the object that the
//! number is in says `"sure": true`. The ranges of [parameters](crate::parameter) are wider still: they say what the equations
//! can work with.

mod slip;
mod table;

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use core::fmt;

pub use self::table::Quantity;
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{PlainUnit, Range, Shown};
use crate::quantity::System;

/// Why a number of a document is not plausible.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum Implausible {
    /// Nothing has such a number.
    #[error("{quantity} cannot be {found}: {}.", quantity.reason())]
    CannotBe {
        /// The quantity.
        quantity: Quantity,
        /// As it was written.
        found: String,
        /// What may have been meant.
        slip: Option<String>,
    },
    /// It may be right, and is more often a slip.
    #[error("{quantity} of {found} looks like a slip; it is usually {}.", Between(*quantity, quantity.likely()))]
    Unlikely {
        /// The quantity.
        quantity: Quantity,
        /// As it was written.
        found: String,
        /// What may have been meant.
        slip: Option<String>,
    },
}

impl Diagnose for Implausible {
    codes! {
        Self::CannotBe { .. } => "cannot-be",
        Self::Unlikely { .. } => "unlikely",
    }

    fn help(&self) -> Cow<'static, str> {
        let (Self::CannotBe { slip, .. } | Self::Unlikely { slip, .. }) = self;
        let asked = match slip {
            Some(slip) => format!("Did you mean {slip}? "),
            None => String::from("Check the number and its unit. "),
        };
        let way = match self {
            Self::CannotBe { quantity, .. } => {
                format!("Write {}.", Between(*quantity, quantity.possible()))
            }
            Self::Unlikely { .. } => {
                String::from("If it is right, add \"sure\": true to the object that it is in.")
            }
        };
        (asked + &way).into()
    }
}

/// A range of a quantity in words; shares in per cent.
struct Between(Quantity, Range);

impl fmt::Display for Between {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(quantity, range) = *self;
        match quantity.unit() {
            PlainUnit::Pure => {
                let percent = |share: f64| libm::round(share * 1e6) / 1e4;
                write!(f, "from {} % to {} %", percent(range.least), percent(range.most))
            }
            unit => Shown(range, unit).fmt(f),
        }
    }
}

/// A number as it was written, with its unit.
pub(crate) struct Found<'a> {
    /// The text, such as `41 g`.
    pub(crate) text: &'a str,
    /// Its value in SI units.
    pub(crate) si: f64,
    /// Whether the object that it is in says so.
    pub(crate) sure: bool,
    /// The system that its unit is read in.
    pub(crate) system: System,
}

impl Quantity {
    /// Checks a number of this quantity.
    pub(crate) fn check(self, found: &Found<'_>) -> Result<(), Implausible> {
        let plain = self.unit().from_si(found.si);
        let (possible, likely) = (self.possible().holds(plain), self.likely().holds(plain));
        if likely || (possible && found.sure) {
            return Ok(());
        }
        let (quantity, text) = (self, String::from(found.text));
        let slip = slip::likely(self, found);
        Err(if possible {
            Implausible::Unlikely { quantity, found: text, slip }
        } else {
            Implausible::CannotBe { quantity, found: text, slip }
        })
    }
}

#[cfg(test)]
mod tests;

//! Figures in the messages of the process.

use uom::si::length::meter;
use uom::si::pressure::{kilopascal, pascal};
use uom::si::time::second;

use crate::quantity::{Length, Pressure, Time};
use crate::show::Figure;

/// One conventional inch of mercury in pascals (NIST SP 811, Appendix B.8).
const PASCALS_PER_INCH_OF_MERCURY: f64 = 3386.389;

/// Kilopascals.
pub(super) fn kilopascals(x: &Pressure) -> Figure {
    Figure::new(x.get::<kilopascal>(), " kPa")
}

/// Inches of mercury, as the dials of the trade show them.
pub(super) fn inches_of_mercury(x: &Pressure) -> Figure {
    Figure::new(x.get::<pascal>() / PASCALS_PER_INCH_OF_MERCURY, " inHg")
}

/// Inches of mercury as a pressure.
pub(super) fn from_inches_of_mercury(inches: f64) -> Pressure {
    Pressure::new::<pascal>(inches * PASCALS_PER_INCH_OF_MERCURY)
}

/// Meters.
pub(super) fn meters(x: &Length) -> Figure {
    Figure::new(x.get::<meter>(), " m")
}

/// Seconds.
pub(super) fn seconds(x: &Time) -> Figure {
    Figure::new(x.get::<second>(), " s")
}

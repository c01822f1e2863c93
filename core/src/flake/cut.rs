//! Cuts as the trade writes them: `.008`, `.035`, `1/64 hex`, `0.4 mm`.
//!
//! A size without a unit is in inches where it is a fraction or has three decimals or more, as the
//! trade writes it. Any other bare number is taken so only if millimeters make no flake of it; else it
//! is questioned. So is a size with a unit that makes no flake of it: `35 mm` is .035 in, or a slip.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use core::fmt;

use uom::si::length::{meter, millimeter};

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::Parameter;
use crate::quantity::{Area, Length, Rational};

/// The sizes of flake that are made, in mm: .002 in to 1/4 in. Common practice, no source.
const SIZES_MM: (f64, f64) = (0.05, 6.35);

/// One inch, exactly.
const MM_PER_INCH: f64 = 25.4;

/// The longest text that is read.
const LONGEST: usize = 40;

/// The outline of a particle.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum CutShape {
    /// A regular hexagon, measured across its flats.
    Hex,
    /// A square, measured along its side.
    Square,
    /// A disk, measured by its diameter.
    Round,
}

/// The size and the shape of a flake's particles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cut {
    size: Length,
    shape: CutShape,
    shape_assumed: bool,
}

/// A cut that cannot be read.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CutError {
    /// Not a size with a unit and a shape.
    #[error("`{text}` is not a cut of flake.")]
    Unreadable {
        /// The cut that was given.
        text: String,
    },
    /// A number that can be inches or millimeters.
    #[error("`{text}` can be read as {} or {}.", inches(*.size), millimeters(*.size))]
    Ambiguous {
        /// The cut that was given.
        text: String,
        /// The number.
        size: f64,
    },
    /// A size that no flake has.
    #[error("`{text}` is {}, and flake is cut from {} to {}.",
        millimeters(*.size_mm), millimeters(SIZES_MM.0), millimeters(SIZES_MM.1))]
    Suspicious {
        /// The cut that was given.
        text: String,
        /// Its text.
        size_mm: f64,
        /// The same number in another unit, where that makes a flake.
        instead: Option<OtherReading>,
    },
}

/// The same number read in another unit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OtherReading {
    number: f64,
    unit: Unit,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Unit {
    Inch,
    Millimeter,
    /// A thousandth of an inch.
    Mil,
    Micrometer,
}

impl Unit {
    /// In the order in which another reading is looked for.
    const ALL: [Self; 4] = [Self::Millimeter, Self::Mil, Self::Inch, Self::Micrometer];

    fn read(text: &str) -> Option<Self> {
        match text {
            "in" | "in." | "inch" | "inches" | "\"" | "″" => Some(Self::Inch),
            "mm" => Some(Self::Millimeter),
            "mil" | "mils" | "thou" => Some(Self::Mil),
            "µm" | "μm" | "um" | "micron" | "microns" => Some(Self::Micrometer),
            _ => None,
        }
    }

    fn in_mm(self) -> f64 {
        match self {
            Self::Inch => MM_PER_INCH,
            Self::Millimeter => 1.0,
            Self::Mil => MM_PER_INCH / 1e3,
            Self::Micrometer => 1e-3,
        }
    }
}

impl fmt::Display for OtherReading {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mm = self.number * self.unit.in_mm();
        match self.unit {
            Unit::Millimeter => write!(f, "{}", millimeters(mm)),
            Unit::Micrometer => write!(f, "{} µm", self.number),
            Unit::Mil | Unit::Inch => {
                write!(f, "{} ({})", inches(mm / MM_PER_INCH), millimeters(mm))
            }
        }
    }
}

impl Diagnose for CutError {
    codes! {
        Self::Unreadable { .. } => "cut-unreadable",
        Self::Ambiguous { .. } => "cut-ambiguous",
        Self::Suspicious { .. } => "cut-suspicious",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Unreadable { .. } => {
                "Write a size and, if you like, a shape: `.035`, `1/64 hex`, `0.4 mm square`."
                    .into()
            }
            Self::Ambiguous { .. } => "Write the unit, `in` or `mm`, behind the number.".into(),
            Self::Suspicious { instead: Some(other), .. } => {
                format!("Is it {other}? Write it with that unit.").into()
            }
            Self::Suspicious { instead: None, .. } => "Check the number and its unit.".into(),
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        Some(Parameter::Cut)
    }
}

impl Cut {
    /// A cut of this size and shape.
    ///
    /// # Errors
    /// [`CutError::Suspicious`] for a size that no flake has, 0.05 to 6.35 mm.
    pub fn new(size: Length, shape: CutShape) -> Result<Self, CutError> {
        let size_mm = size.get::<millimeter>();
        if is_made(size_mm) {
            Ok(Self { size, shape, shape_assumed: false })
        } else {
            let text = format!("{size_mm} mm");
            let other = other_reading(size_mm, Unit::Millimeter);
            Err(CutError::Suspicious { text, size_mm, instead: other })
        }
    }

    /// Reads a cut: a decimal of up to 38 digits or a fraction, a unit (`in`, `"`, `mm`, `mil`, `µm`)
    /// or none, and `hex`, `square` or `round` or nothing. Without a shape it is a hexagon, the common
    /// cut (common practice, no source), and [`Cut::shape_assumed`] says so.
    ///
    /// # Errors
    /// [`CutError::Unreadable`]; [`CutError::Ambiguous`] for a bare number that can be inches or
    /// millimeters; [`CutError::Suspicious`] for a size that no flake has.
    pub fn parse(text: &str) -> Result<Self, CutError> {
        let text = text.trim();
        let unreadable = || CutError::Unreadable { text: text.chars().take(LONGEST).collect() };
        if text.len() > LONGEST {
            return Err(unreadable());
        }
        let lower = text.to_ascii_lowercase();
        let is_number = |c: char| c.is_ascii_digit() || c == '.' || c == '/';
        let rest = lower.trim_start_matches(is_number);
        let number = lower.strip_suffix(rest).ok_or_else(unreadable)?;
        let (unit, shape) = unit_and_shape(rest).ok_or_else(unreadable)?;
        let size = read_number(number).ok_or_else(unreadable)?;
        let unit = match unit {
            Some(unit) => unit,
            None if is_trade_inches(number) => Unit::Inch,
            None => bare_unit(text, size)?,
        };
        let size_mm = size * unit.in_mm();
        if !is_made(size_mm) {
            let instead = other_reading(size, unit);
            return Err(CutError::Suspicious { text: text.into(), size_mm, instead });
        }
        Ok(Self {
            size: Length::new::<millimeter>(size_mm),
            shape: shape.unwrap_or(CutShape::Hex),
            shape_assumed: shape.is_none(),
        })
    }

    /// Across the flats, along the side, or the diameter.
    #[must_use]
    pub fn size(self) -> Length {
        self.size
    }

    /// The outline.
    #[must_use]
    pub fn shape(self) -> CutShape {
        self.shape
    }

    /// Whether the text named no shape, so that the hexagon is an assumption.
    #[must_use]
    pub fn shape_assumed(self) -> bool {
        self.shape_assumed
    }

    /// The area of one face: (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk.
    #[must_use]
    pub fn area(self) -> Area {
        let factor = match self.shape {
            CutShape::Hex => libm::sqrt(3.0) / 2.0,
            CutShape::Square => 1.0,
            CutShape::Round => core::f64::consts::FRAC_PI_4,
        };
        self.size * self.size * factor
    }
}

impl core::str::FromStr for Cut {
    type Err = CutError;

    fn from_str(text: &str) -> Result<Self, CutError> {
        Self::parse(text)
    }
}

/// `.035 in hex (0.889 mm)`.
impl fmt::Display for Cut {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mm = self.size.get::<meter>() * 1e3;
        write!(f, "{} {} ({})", inches(mm / MM_PER_INCH), self.shape, millimeters(mm))
    }
}

impl fmt::Display for CutShape {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Hex => "hex",
            Self::Square => "square",
            Self::Round => "round",
        })
    }
}

/// A unit, a shape, both or neither, in this order.
fn unit_and_shape(text: &str) -> Option<(Option<Unit>, Option<CutShape>)> {
    let mut words = text.split_whitespace().peekable();
    let unit = words.peek().copied().and_then(Unit::read);
    if unit.is_some() {
        words.next();
    }
    let shape = match words.next() {
        None => None,
        Some("hex" | "hexagon" | "hexagonal") => Some(CutShape::Hex),
        Some("square" | "sq") => Some(CutShape::Square),
        Some("round") => Some(CutShape::Round),
        Some(_) => return None,
    };
    words.next().is_none().then_some((unit, shape))
}

/// `.035`, `0.4`, `35` or `1/64`, as a number above zero.
fn read_number(text: &str) -> Option<f64> {
    let number = match text.split_once('/') {
        Some((above, below)) => {
            f64::from(above.parse::<u32>().ok()?) / f64::from(below.parse::<u32>().ok()?)
        }
        None => Rational::parse_decimal(text)?.to_f64(),
    };
    (number.is_finite() && number > 0.0).then_some(number)
}

/// Whether a bare number is written as the trade writes inches: `1/64`, `.008`, `0.035`.
fn is_trade_inches(number: &str) -> bool {
    let has_three = |(_, decimals): (&str, &str)| decimals.len() >= 3;
    number.contains('/') || number.split_once('.').is_some_and(has_three)
}

/// The unit of any other bare number.
fn bare_unit(text: &str, size: f64) -> Result<Unit, CutError> {
    if is_made(size) {
        Err(CutError::Ambiguous { text: text.into(), size })
    } else {
        Ok(Unit::Inch)
    }
}

fn is_made(size_mm: f64) -> bool {
    (SIZES_MM.0..=SIZES_MM.1).contains(&size_mm)
}

/// The first other unit in which `number` makes a flake.
fn other_reading(number: f64, unit: Unit) -> Option<OtherReading> {
    let mut others = Unit::ALL.into_iter().filter(|other| *other != unit);
    let unit = others.find(|other| is_made(number * other.in_mm()))?;
    Some(OtherReading { number, unit })
}

/// Inches as the trade writes them, to a ten-thousandth: `.035 in`, `.0156 in`.
fn inches(size: f64) -> String {
    let text = format!("{} in", libm::round(size * 1e4) / 1e4);
    match text.strip_prefix("0.") {
        Some(decimals) => format!(".{decimals}"),
        None => text,
    }
}

/// Millimeters, to a micrometer.
fn millimeters(size: f64) -> String {
    format!("{} mm", libm::round(size * 1e3) / 1e3)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    use super::*;

    #[rstest]
    #[case(".008", 0.2032, CutShape::Hex, true)]
    #[case(".035", 0.889, CutShape::Hex, true)]
    #[case("0.035 in", 0.889, CutShape::Hex, true)]
    #[case("1/64 hex", 25.4 / 64.0, CutShape::Hex, false)]
    #[case("1/64\" Hex", 25.4 / 64.0, CutShape::Hex, false)]
    #[case("0.4 mm square", 0.4, CutShape::Square, false)]
    #[case("0.4mm", 0.4, CutShape::Hex, true)]
    #[case("35 mil round", 0.889, CutShape::Round, false)]
    #[case("200 µm", 0.2, CutShape::Hex, true)]
    // 0.04 mm is no flake, so two decimals are inches here.
    #[case(".04", 1.016, CutShape::Hex, true)]
    fn cuts_as_they_are_written(
        #[case] text: &str,
        #[case] size_mm: f64,
        #[case] shape: CutShape,
        #[case] assumed: bool,
    ) {
        let cut = Cut::parse(text).unwrap();
        assert!((cut.size().get::<millimeter>() - size_mm).abs() < 1e-12);
        assert_eq!((cut.shape(), cut.shape_assumed()), (shape, assumed));
    }

    #[rstest]
    #[case(
        "35 mm",
        "`35 mm` is 35 mm, and flake is cut from 0.05 mm to 6.35 mm.",
        "Is it .035 in (0.889 mm)? Write it with that unit."
    )]
    #[case(
        "0.9 in",
        "`0.9 in` is 22.86 mm, and flake is cut from 0.05 mm to 6.35 mm.",
        "Is it 0.9 mm? Write it with that unit."
    )]
    #[case(
        "0.008 mm",
        "`0.008 mm` is 0.008 mm, and flake is cut from 0.05 mm to 6.35 mm.",
        "Is it .008 in (0.203 mm)? Write it with that unit."
    )]
    #[case(
        "0.001 in",
        "`0.001 in` is 0.025 mm, and flake is cut from 0.05 mm to 6.35 mm.",
        "Check the number and its unit."
    )]
    fn a_wrong_unit_is_questioned(#[case] text: &str, #[case] message: &str, #[case] help: &str) {
        let questioned = Cut::parse(text).unwrap_err();
        assert_eq!(questioned.code(), "cut-suspicious");
        assert_eq!((questioned.to_string().as_str(), &*questioned.help()), (message, help));
    }

    #[rstest]
    #[case("0.2", "`0.2` can be read as .2 in or 0.2 mm.")]
    #[case("1 hex", "`1 hex` can be read as 1 in or 1 mm.")]
    fn a_bare_number_with_two_readings_is_refused(#[case] text: &str, #[case] message: &str) {
        let refused = Cut::parse(text).unwrap_err();
        assert_eq!((refused.code(), refused.to_string().as_str()), ("cut-ambiguous", message));
    }

    #[rstest]
    #[case("")]
    #[case("hex")]
    #[case("1/0 hex")]
    #[case("1/64/2")]
    #[case("1.5/64")]
    #[case(".035 hex hex")]
    #[case("035 cubits")]
    #[case("-0.035")]
    #[case("0.000")]
    #[case("1e-3 in")]
    #[case("½ mm")]
    #[case("..035")]
    #[case("0.0350000000000000000000000000000000000000 in")]
    fn what_is_no_cut(#[case] text: &str) {
        assert_eq!(Cut::parse(text).unwrap_err().code(), "cut-unreadable");
    }

    #[test]
    fn a_text_is_at_most_40_bytes_long() {
        let of = |zeros: usize| std::format!("0.035{} in", "0".repeat(zeros));
        assert_eq!((of(32).len(), Cut::parse(&of(32)).is_ok()), (40, true));
        assert!(Cut::parse(&of(33)).is_err());
    }

    #[test]
    fn a_size_from_a_program_is_checked_too() {
        let of = |mm| Cut::new(Length::new::<millimeter>(mm), CutShape::Square);
        assert_eq!(of(0.889).unwrap().to_string(), ".035 in square (0.889 mm)");
        assert!(!of(0.889).unwrap().shape_assumed());
        assert_eq!(of(35.0).unwrap_err().parameter(), Some(Parameter::Cut));
        for mm in [0.0, -1.0, 35.0, f64::NAN] {
            assert_eq!(of(mm).unwrap_err().code(), "cut-suspicious");
        }
    }

    proptest! {
        #[test]
        fn no_text_makes_it_stop(text in "\\PC{0,50}") {
            if let Ok(cut) = Cut::parse(&text) {
                prop_assert!(is_made(cut.size().get::<millimeter>()));
            }
        }

        #[test]
        fn what_is_shown_can_be_read(mil in 2..250u32, shape in 0..3usize) {
            let shape = [CutShape::Hex, CutShape::Square, CutShape::Round][shape];
            let size = Length::new::<millimeter>(f64::from(mil) * 0.0254);
            let shown = Cut::new(size, shape).unwrap().to_string();
            let (text, _) = shown.split_once(" (").unwrap();
            let read = Cut::parse(text).unwrap();
            prop_assert!((read.size() - size).value.abs() < 1e-9 && read.shape() == shape);
        }
    }
}

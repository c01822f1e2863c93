//! Measured quantities: a value with its standard uncertainty.

use super::amount::rounded_product;
use super::error::quoted;
use super::parse::{self, Cursor};
use super::{Amount, AmountError, Dimension, Measurable, Rational, System, Unit};
use alloc::string::String;
use core::fmt;
use core::str::FromStr;

/// A quantity with its uncertainty and its source.
#[derive(Debug, Clone, PartialEq)]
pub struct Measured<Q: Measurable> {
    /// The value.
    pub value: Q,
    /// One standard uncertainty, never negative; `None` where nothing is known of it. That of a temperature
    /// is an interval.
    pub uncertainty: Option<Q::Difference>,
    /// The name of its source: the same balance, spoon or drop used twice is one source.
    pub source: Option<String>,
}

impl<Q: Measurable> Measured<Q> {
    /// A value of which no uncertainty is known.
    pub const fn exact(value: Q) -> Self {
        Self { value, uncertainty: None, source: None }
    }

    /// A value with one standard uncertainty.
    pub const fn new(value: Q, uncertainty: Q::Difference) -> Self {
        Self { value, uncertainty: Some(uncertainty), source: None }
    }

    /// The same, from a named source.
    #[must_use]
    pub fn from_source(self, source: impl Into<String>) -> Self {
        Self { source: Some(source.into()), ..self }
    }
}

/// An amount and its uncertainty, as written: `1.03 g/mL ± 0.01`, `12 g ± 2 %`, `330 °F ± 5`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct MeasuredAmount {
    amount: Amount,
    spread: Option<Spread>,
}

/// The part after `±`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Spread {
    width: Width,
    kind: SpreadKind,
}

/// How far to each side.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
enum Width {
    /// So much of a unit.
    Absolute(Rational, Unit),
    /// A per cent of the value.
    Relative(Rational),
}

/// The meaning of the number after `±`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum SpreadKind {
    /// One standard uncertainty.
    Standard,
    /// An expanded uncertainty: this number of standard uncertainties (JCGM 100, 6.2.1).
    Expanded {
        /// The coverage factor k, above 0.
        k: Rational,
    },
    /// Bounds between which every value is equally likely; the standard uncertainty is the half width over √3
    /// (JCGM 100, 4.3.7).
    Interval,
}

impl SpreadKind {
    /// The standard uncertainty of a half width of this kind.
    fn standard(self, half_width: f64) -> f64 {
        match self {
            Self::Standard => half_width,
            Self::Expanded { k } => half_width / k.to_f64(),
            Self::Interval => half_width / libm::sqrt(3.0),
        }
    }
}

impl Spread {
    /// The meaning of the number.
    #[must_use]
    pub const fn kind(&self) -> SpreadKind {
        self.kind
    }
}

impl MeasuredAmount {
    /// The measured amount that `text` states; the uncertainty is optional.
    ///
    /// # Errors
    /// As [`Amount::parse`], and [`AmountError::MalformedUncertainty`].
    pub fn parse(text: &str) -> Result<Self, AmountError> {
        let cursor = Cursor::new(text)?;
        let Some((head, tail)) = split_at_sign(cursor.rest()) else {
            return Amount::parse(text).map(Self::from);
        };
        let malformed = |why| AmountError::MalformedUncertainty { text: quoted(text), why };
        let (tail, kind) = split_kind(tail.trim()).ok_or_else(|| {
            malformed("the brackets hold neither interval nor k= and a number above 0")
        })?;
        if split_at_sign(tail).is_some() {
            return Err(malformed("it has more than one"));
        }
        let mut spread = Cursor::new(tail).map_err(|_| malformed("its number is missing"))?;
        let number = parse::number(&mut spread)?;
        if number.is_negative() {
            return Err(malformed("it is negative"));
        }
        let written = spread.rest().trim();
        let mut value = Cursor::new(head)?;
        let alone = parse::number(&mut value)?;
        let (amount, width) = if value.rest().trim().is_empty() {
            let amount = parse::amount_of(alone, written, text)?;
            (amount, Width::Absolute(number, amount.unit()))
        } else {
            let amount = Amount::parse(head)?;
            let width = match written {
                "" => Width::Absolute(number, amount.unit()),
                "%" => Width::Relative(number),
                unit => Width::Absolute(number, Unit::parse(unit)?),
            };
            (amount, width)
        };
        Self::with_spread(amount, Spread { width, kind })
    }

    /// `amount` with an uncertainty of `value` of `unit`, or of its own unit where none is given.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] where the unit measures something else, [`AmountError::MalformedUncertainty`]
    /// where the value is negative or a coverage factor is not above 0.
    pub fn new(
        amount: Amount,
        value: Rational,
        unit: Option<Unit>,
        kind: SpreadKind,
    ) -> Result<Self, AmountError> {
        let width = Width::Absolute(value, unit.unwrap_or(amount.unit()));
        Self::with_spread(amount, Spread { width, kind })
    }

    /// `amount` with an uncertainty of `percent` of its value.
    ///
    /// # Errors
    /// [`AmountError::MalformedUncertainty`] for a temperature or a per cent, which have no relative one, and as
    /// [`MeasuredAmount::new`].
    pub fn relative(
        amount: Amount,
        percent: Rational,
        kind: SpreadKind,
    ) -> Result<Self, AmountError> {
        Self::with_spread(amount, Spread { width: Width::Relative(percent), kind })
    }

    fn with_spread(amount: Amount, spread: Spread) -> Result<Self, AmountError> {
        let measured = Self { amount, spread: Some(spread) };
        let malformed = |why| AmountError::MalformedUncertainty {
            text: quoted(&alloc::format!("{measured}")),
            why,
        };
        if matches!(spread.kind, SpreadKind::Expanded { k } if k <= Rational::ZERO) {
            return Err(malformed("its coverage factor k is not above 0"));
        }
        let width = match spread.width {
            Width::Absolute(width, unit) => {
                let (found, wanted) = (unit.dimension(), amount.dimension());
                if found != wanted {
                    return Err(AmountError::WrongDimension { unit, found, wanted });
                }
                if unit.is_share() && unit != amount.unit() {
                    return Err(malformed("a per cent behind ± is a part of the value"));
                }
                width
            }
            Width::Relative(_) if amount.dimension() == Dimension::TEMPERATURE => {
                return Err(malformed("a per cent of a temperature depends on its scale"));
            }
            Width::Relative(_) if amount.basis().is_some() => {
                return Err(malformed(
                    "a per cent of a per cent is misread; for points write the number alone",
                ));
            }
            Width::Relative(percent) => percent,
        };
        if width.is_negative() {
            return Err(malformed("it is negative"));
        }
        Ok(measured)
    }

    /// The amount.
    #[must_use]
    pub const fn amount(&self) -> Amount {
        self.amount
    }

    /// The part after `±`.
    #[must_use]
    pub const fn spread(&self) -> Option<Spread> {
        self.spread
    }

    /// The value and its standard uncertainty as quantities; it names no source.
    ///
    /// # Errors
    /// As [`Amount::to`].
    pub fn to<Q: Measurable>(&self, system: System) -> Result<Measured<Q>, AmountError> {
        let (value, uncertainty) = self.si(Q::DIMENSION, system)?;
        Ok(Measured {
            value: Q::from_si(value),
            uncertainty: uncertainty.map(Q::Difference::from_si),
            source: None,
        })
    }

    /// The same in coherent SI units, as a quantity of the dimension `wanted`.
    fn si(&self, wanted: Dimension, system: System) -> Result<(f64, Option<f64>), AmountError> {
        let value = self.amount.si(wanted, system)?;
        let Some(Spread { width, kind }) = self.spread else {
            return Ok((value, None));
        };
        // A difference, so a temperature's zero plays no part.
        let half_width = match width {
            Width::Absolute(width, unit) => {
                rounded_product(width, Rational::ZERO, unit.factor(system)?)
            }
            Width::Relative(percent) => {
                let whole = rounded_product(
                    self.amount.value(),
                    Rational::ZERO,
                    self.amount.unit().factor(system)?,
                );
                whole * (percent.to_f64() / 100.0)
            }
        };
        Ok((value, Some(kind.standard(half_width))))
    }
}

impl From<Amount> for MeasuredAmount {
    fn from(amount: Amount) -> Self {
        Self { amount, spread: None }
    }
}

/// Text that [`MeasuredAmount::parse`] reads back.
impl fmt::Display for MeasuredAmount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}", self.amount)?;
        let Some(Spread { width, kind }) = self.spread else {
            return Ok(());
        };
        match width {
            Width::Absolute(width, unit) if unit == self.amount.unit() => write!(f, " ± {width}")?,
            Width::Absolute(width, unit) => {
                write!(f, " ± {width} ")?;
                unit.write_after(width, f)?;
            }
            Width::Relative(percent) => write!(f, " ± {percent} %")?,
        }
        match kind {
            SpreadKind::Standard => Ok(()),
            SpreadKind::Expanded { k } => write!(f, " (k={k})"),
            SpreadKind::Interval => f.write_str(" (interval)"),
        }
    }
}

impl FromStr for MeasuredAmount {
    type Err = AmountError;

    fn from_str(text: &str) -> Result<Self, AmountError> {
        Self::parse(text)
    }
}

/// The parts before and after the first `±`, `+/-` or `+-`.
fn split_at_sign(text: &str) -> Option<(&str, &str)> {
    ["±", "+/-", "+-"].iter().find_map(|sign| text.split_once(sign))
}

/// Takes `(k=2)` or `(interval)` off the end; `None` for any other brackets that end the text after a space.
fn split_kind(text: &str) -> Option<(&str, SpreadKind)> {
    let Some((head, inside)) = text.strip_suffix(')').and_then(|text| text.rsplit_once(" ("))
    else {
        return Some((text, SpreadKind::Standard));
    };
    if inside.trim().eq_ignore_ascii_case("interval") {
        return Some((head, SpreadKind::Interval));
    }
    let k = inside.trim().strip_prefix('k')?.trim_start().strip_prefix('=')?.trim();
    let k = Rational::parse_decimal(k).filter(|k| *k > Rational::ZERO)?;
    Some((head, SpreadKind::Expanded { k }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fault::Diagnose;
    use crate::quantity::amount::tests::any_amount;
    use crate::quantity::{Mass, MassDensity, TemperatureInterval, ThermodynamicTemperature};
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;

    #[rstest]
    #[case("1.03 g/mL ± 0.01", "1.03 g/mL ± 0.01")]
    #[case("1.03 ± 0.01 g/mL", "1.03 g/mL ± 0.01")]
    #[case("1.03 g/mL +/- 0.01 g/mL", "1.03 g/mL ± 0.01")]
    #[case("1.03 g/mL±0.01", "1.03 g/mL ± 0.01")]
    #[case("0.044 g ± 0.003", "0.044 g ± 0.003")]
    #[case("0.044 g ± 3 mg", "0.044 g ± 3 mg")]
    #[case("12 g ± 2 %", "12 g ± 2 %")]
    #[case("12 g ± 0.02 g (k=2)", "12 g ± 0.02 (k=2)")]
    #[case("12 g ± 0.02 g ( k = 2 )", "12 g ± 0.02 (k=2)")]
    #[case("12 ± 0.05 g (interval)", "12 g ± 0.05 (interval)")]
    #[case("330 °F ± 5", "330 °F ± 5")]
    #[case("330 °F ± 3 K", "330 °F ± 3 K")]
    #[case("8 % of base ± 0.5", "8 % of base ± 0.5")]
    #[case("8 ± 0.5 % of base", "8 % of base ± 0.5")]
    #[case("1.8 ± 0.1 J/(g.K)", "1.8 J/(g.K) ± 0.1")]
    #[case("1 cup ± 1/16 cup", "1 cup ± 0.0625")]
    #[case("40 drops ± 1 drop", "40 drops ± 1")]
    #[case("12 g", "12 g")]
    fn reads(#[case] written: &str, #[case] printed: &str) {
        let read = MeasuredAmount::parse(written).expect("a measured amount");
        assert_eq!(read.to_string(), printed);
        assert_eq!(MeasuredAmount::parse(printed), Ok(read));
    }

    #[rstest]
    #[case("12 g ±", "uncertainty-malformed")]
    #[case("12 g ± -1", "uncertainty-malformed")]
    #[case("12 g ± 1 ± 1", "uncertainty-malformed")]
    #[case("12 g ± 1 (k=0)", "uncertainty-malformed")]
    #[case("12 g ± 1 (k)", "uncertainty-malformed")]
    #[case("12 g ± 1 (about)", "uncertainty-malformed")]
    #[case("330 °F ± 2 %", "uncertainty-malformed")]
    #[case("8 % of base ± 2 %", "uncertainty-malformed")]
    #[case("12 g ± 1 mL", "amount-wrong-dimension")]
    #[case("12 ± 1", "amount-no-unit")]
    #[case("12 g ± x", "amount-no-number")]
    #[case("12 g ± 1,5", "amount-ambiguous")]
    #[case("6 ± 1 oz", "amount-ambiguous")]
    #[case("8 ± 1 %", "amount-ambiguous")]
    #[case("± 1 g", "amount-empty")]
    fn refuses(#[case] written: &str, #[case] code: &str) {
        assert_eq!(MeasuredAmount::parse(written).expect_err("refused").code(), code);
    }

    fn mass(text: &str) -> Measured<Mass> {
        MeasuredAmount::parse(text).expect("measured").to(System::Metric).expect("a mass")
    }

    #[rstest]
    #[case("0.044 g ± 0.003", 3e-6)]
    #[case("12 g ± 2 %", 0.24e-3)]
    // JCGM 100, 4.3.3: an expanded uncertainty is divided by its coverage factor.
    #[case("12 g ± 0.02 g (k=2)", 1e-5)]
    // JCGM 100, 4.3.7: a/√3.
    #[case("12 g ± 0.05 g (interval)", 2.886_751_345_948_128_7e-5)]
    #[case("12 g ± 50 mg (interval)", 2.886_751_345_948_128_7e-5)]
    fn one_standard_uncertainty(#[case] text: &str, #[case] si: f64) {
        let got = mass(text).uncertainty.expect("given").si();
        assert!((got - si).abs() <= 2.0 * f64::EPSILON * si, "{got} for {si}");
    }

    #[test]
    fn an_uncertainty_that_is_not_known_stays_unknown() {
        assert_eq!(mass("12 g").uncertainty, None);
    }

    #[rstest]
    #[case("330 °F ± 9", 5.0)]
    #[case("165 °C ± 5 °C", 5.0)]
    #[case("165 °C ± 5 K", 5.0)]
    fn that_of_a_temperature_is_an_interval(#[case] text: &str, #[case] kelvin: f64) {
        let measured = MeasuredAmount::parse(text).expect("measured");
        let measured: Measured<ThermodynamicTemperature> =
            measured.to(System::Metric).expect("a temperature");
        let uncertainty: TemperatureInterval = measured.uncertainty.expect("given");
        assert_eq!(uncertainty.si(), kelvin);
    }

    #[test]
    fn carries_the_name_of_its_source() {
        let density = MassDensity::from_si(1030.0);
        let measured = Measured::new(density, MassDensity::from_si(10.0)).from_source("jug");
        assert_eq!(measured.source.as_deref(), Some("jug"));
        assert_eq!(Measured::exact(density).source, None);
    }

    #[test]
    fn what_would_not_read_back_is_not_made() {
        let ratio = Amount::parse("5 g/g").expect("an amount");
        let percent = Some(Unit::PERCENT);
        assert!(MeasuredAmount::new(ratio, Rational::ONE, percent, SpreadKind::Standard).is_err());
        assert!(
            MeasuredAmount::new(ratio, Rational::ONE.negated(), None, SpreadKind::Standard)
                .is_err()
        );
        let k = SpreadKind::Expanded { k: Rational::ZERO };
        assert!(MeasuredAmount::new(ratio, Rational::ONE, None, k).is_err());
    }

    proptest! {
        #[test]
        fn reads_back_what_it_prints(
            amount in any_amount(),
            n in 0_i128..1_000_000,
            d in 1_i128..1000,
            kind in 0_u8..3,
            relative: bool,
        ) {
            let width = Rational::new(n, d).expect("a fraction");
            let kind = match kind {
                0 => SpreadKind::Standard,
                1 => SpreadKind::Expanded { k: Rational::new(5, 2).expect("a fraction") },
                _ => SpreadKind::Interval,
            };
            let measured = if relative {
                MeasuredAmount::relative(amount, width, kind)
            } else {
                MeasuredAmount::new(amount, width, None, kind)
            };
            if let Ok(measured) = measured {
                let printed = measured.to_string();
                prop_assert_eq!(MeasuredAmount::parse(&printed), Ok(measured), "{}", printed);
            }
        }

        #[test]
        fn any_text_is_a_measured_amount_or_an_error(text in "[0-9.,/ ±()k=a-z%°F-]{0,40}") {
            let _ = MeasuredAmount::parse(&text);
        }
    }
}

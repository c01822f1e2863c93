//! Measured quantities: a value with its standard uncertainty.

use super::amount::rounded_product;
use super::error::quoted;
use super::parse::{self, Cursor};
use super::{Amount, AmountError, Dimension, Measurable, Rational, System, Unit};
use alloc::string::String;
use core::fmt;
use core::str::FromStr;

/// A quantity, how sure it is, and where it comes from.
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

/// What is written behind `±`.
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
    /// So many per cent of the value.
    Relative(Rational),
}

/// What the number behind `±` stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum SpreadKind {
    /// One standard uncertainty.
    Standard,
    /// An expanded uncertainty: so many standard uncertainties (JCGM 100, 6.2.1).
    Expanded {
        /// The coverage factor k, above 0.
        k: Rational,
    },
    /// Bounds between which every value is equally likely; the standard uncertainty is the half width over √3
    /// (JCGM 100, 4.3.7).
    Interval,
}

impl SpreadKind {
    /// The standard uncertainty that a half width of this kind stands for.
    fn standard(self, half_width: f64) -> f64 {
        match self {
            Self::Standard => half_width,
            Self::Expanded { k } => half_width / k.to_f64(),
            Self::Interval => half_width / libm::sqrt(3.0),
        }
    }
}

impl Spread {
    /// What the number stands for.
    #[must_use]
    pub const fn kind(&self) -> SpreadKind {
        self.kind
    }
}

impl MeasuredAmount {
    /// The measured amount that `text` states; the uncertainty may be left out.
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
            malformed("in the brackets stands neither interval nor k= and a number above 0")
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
        let (amount, width) = if is_number(head) {
            let amount = parse::amount_of(parse::number(&mut Cursor::new(head)?)?, written, text)?;
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

    /// What is written behind `±`.
    #[must_use]
    pub const fn spread(&self) -> Option<Spread> {
        self.spread
    }

    /// The value and its standard uncertainty as quantities; it names no source.
    ///
    /// # Errors
    /// As [`Amount::to`].
    pub fn to<Q: Measurable>(&self, system: System) -> Result<Measured<Q>, AmountError> {
        let value = self.amount.to(system)?;
        let Some(Spread { width, kind }) = self.spread else {
            return Ok(Measured::exact(value));
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
        Ok(Measured::new(value, Q::Difference::from_si(kind.standard(half_width))))
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

/// What stands before and behind the first `±`, `+/-` or `+-`.
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

/// Whether the text is a number alone.
fn is_number(text: &str) -> bool {
    Cursor::new(text)
        .and_then(|mut cursor| {
            parse::number(&mut cursor)?;
            Ok(cursor.rest().trim().is_empty())
        })
        .unwrap_or(false)
}

//! Amounts: a number of a unit, as a person measures it.

use super::{AmountError, Dimension, Measurable, Ratio, Rational, System, Unit};
use alloc::format;
use alloc::string::{String, ToString};
use core::fmt;
use core::str::FromStr;

/// What was written: an exact number of a unit, and for a per cent what it is a part of.
///
/// Read by [`Amount::parse`] and printed by `Display` so that one undoes the other: `1 1/4 cup`, `40 drops`,
/// `12.5 g`, `8 % of base`, `330 °F`. Never negative, but for temperatures.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Amount {
    value: Rational,
    unit: Unit,
    basis: Option<Basis>,
}

/// What a per cent is a part of, and how it is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Basis {
    /// The whole.
    pub share: Share,
    /// Measured by mass or by volume.
    pub by: By,
}

/// The whole of which a per cent is a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Share {
    /// Parts per hundred parts of the base: what is added comes on top.
    OfBase,
    /// Parts in a hundred parts of the finished mix.
    OfFinished,
}

/// Whether a share is one of mass or of volume.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum By {
    /// By mass, which is meant where nothing is said.
    Mass,
    /// By volume.
    Volume,
}

impl Basis {
    /// A share of the base, by mass.
    pub const OF_BASE: Self = Self { share: Share::OfBase, by: By::Mass };
    /// A share of the finished mix, by mass.
    pub const OF_FINISHED: Self = Self { share: Share::OfFinished, by: By::Mass };

    /// This share, by volume.
    #[must_use]
    pub const fn by_volume(self) -> Self {
        Self { by: By::Volume, ..self }
    }
}

impl Amount {
    /// The amount that `text` states.
    ///
    /// # Errors
    /// What is wrong with the text; where it can be read in several ways, [`AmountError::Ambiguous`] with the readings.
    pub fn parse(text: &str) -> Result<Self, AmountError> {
        super::parse::amount(text)
    }

    /// `value` of `unit`.
    ///
    /// # Errors
    /// [`AmountError::Ambiguous`] for a per cent, which takes a basis ([`Amount::share`]); negative amounts and
    /// temperatures below absolute zero are refused.
    pub fn new(value: Rational, unit: Unit) -> Result<Self, AmountError> {
        let amount = Self { value, unit, basis: None };
        if unit.is_share() {
            return Err(without_basis(&amount.to_string()));
        }
        amount.checked()
    }

    /// `value` of `unit` (per cent or ppm) of the base or of the finished mix.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] for any other unit, [`AmountError::Negative`] for a negative value.
    pub fn share(value: Rational, unit: Unit, basis: Basis) -> Result<Self, AmountError> {
        if !unit.is_share() {
            let found = unit.dimension();
            return Err(AmountError::WrongDimension { unit, found, wanted: Dimension::RATIO });
        }
        Self { value, unit, basis: Some(basis) }.checked()
    }

    /// `value` per cent of `basis`.
    ///
    /// # Errors
    /// [`AmountError::Negative`] for a negative value.
    pub fn percent(value: Rational, basis: Basis) -> Result<Self, AmountError> {
        Self::share(value, Unit::PERCENT, basis)
    }

    /// `value` of `unit`, the number taken as the shortest decimal that reads back as it: 0.1 is 1/10.
    ///
    /// # Errors
    /// [`AmountError::ValueOutOfRange`] for a number that is not finite or whose decimal does not fit, and
    /// what [`Amount::new`] refuses.
    pub fn from_f64(value: f64, unit: Unit) -> Result<Self, AmountError> {
        let value = Rational::from_f64(value).ok_or(AmountError::ValueOutOfRange { unit })?;
        Self::new(value, unit)
    }

    fn checked(self) -> Result<Self, AmountError> {
        if !self.value.is_negative() {
            return Ok(self);
        }
        let Some(offset) = self.unit.scale_offset() else {
            return Err(AmountError::Negative { text: self.to_string() });
        };
        if self.value < offset.negated() {
            return Err(AmountError::BelowAbsoluteZero { text: self.to_string() });
        }
        Ok(self)
    }

    /// The number, exactly as written.
    #[must_use]
    pub const fn value(&self) -> Rational {
        self.value
    }

    /// The unit, as written.
    #[must_use]
    pub const fn unit(&self) -> Unit {
        self.unit
    }

    /// What a per cent is a part of; `None` for every other amount.
    #[must_use]
    pub const fn basis(&self) -> Option<Basis> {
        self.basis
    }

    /// What the amount measures.
    #[must_use]
    pub fn dimension(&self) -> Dimension {
        self.unit.dimension()
    }

    /// The number of drops; `None` for any other unit. A drop's size is the material's own.
    #[must_use]
    pub fn drops(&self) -> Option<Rational> {
        (self.unit == Unit::DROP).then_some(self.value)
    }

    /// The number of pieces; `None` for any other unit.
    #[must_use]
    pub fn pieces(&self) -> Option<Rational> {
        (self.unit == Unit::PIECE).then_some(self.value)
    }

    /// The amount as a quantity, household words measured in `system` where the amount names none itself.
    ///
    /// The exact product is rounded once, to the nearest `f64`. Where that product does not fit in 128 bits (some
    /// thirty significant digits) its factors are rounded each, and the result lies within two units in the last place.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] where the amount is no `Q`, [`AmountError::NoSuchMeasure`] for a household word
    /// that the system lacks, [`AmountError::UnitOutOfRange`] for an extreme compound unit.
    pub fn to<Q: Measurable>(&self, system: System) -> Result<Q, AmountError> {
        let found = self.dimension();
        if !found.serves_as(Q::DIMENSION) {
            return Err(AmountError::WrongDimension {
                unit: self.unit,
                found,
                wanted: Q::DIMENSION,
            });
        }
        let factor = self.unit.factor(system)?;
        let offset = match self.unit.scale_offset() {
            Some(offset) if Q::DIMENSION == Dimension::TEMPERATURE => offset,
            _ => Rational::ZERO,
        };
        Ok(Q::from_si(rounded_product(self.value, offset, factor)))
    }

    /// The same amount in another unit, exactly; a per cent keeps its basis.
    ///
    /// # Errors
    /// [`AmountError::WrongDimension`] where the units measure different things, [`AmountError::ValueOutOfRange`]
    /// where the exact value does not fit, and as [`Amount::to`].
    pub fn in_unit(&self, unit: Unit, system: System) -> Result<Self, AmountError> {
        let (found, wanted) = (self.dimension(), unit.dimension());
        if found != wanted {
            return Err(AmountError::WrongDimension { unit: self.unit, found, wanted });
        }
        let (from, to) = (self.unit.factor(system)?, unit.factor(system)?);
        let from_zero = self.unit.scale_offset().unwrap_or(Rational::ZERO);
        let to_zero = unit.scale_offset().unwrap_or(Rational::ZERO);
        let value = self
            .value
            .checked_add(from_zero)
            .and_then(|reading| reading.checked_mul(from.checked_div(to)?))
            .and_then(|reading| reading.checked_sub(to_zero))
            .ok_or(AmountError::ValueOutOfRange { unit })?;
        match self.basis {
            Some(basis) => Self::share(value, unit, basis),
            None => Self::new(value, unit),
        }
    }
}

/// How many of `unit` the quantity is, household words measured in `system`.
///
/// # Errors
/// As [`Amount::to`].
pub fn value_in<Q: Measurable>(
    quantity: Q,
    unit: Unit,
    system: System,
) -> Result<f64, AmountError> {
    let found = unit.dimension();
    if !found.serves_as(Q::DIMENSION) {
        return Err(AmountError::WrongDimension { unit, found, wanted: Q::DIMENSION });
    }
    let reading = quantity.si() / unit.factor(system)?.to_f64();
    Ok(match unit.scale_offset() {
        Some(offset) if Q::DIMENSION == Dimension::TEMPERATURE => reading - offset.to_f64(),
        _ => reading,
    })
}

/// The share that `text` states where the field itself says of what: `3 %`, `200 ppm`, `0.03`, `1/3`.
///
/// # Errors
/// As [`Amount::parse`]; [`AmountError::WrongDimension`] for a unit that is no share.
pub fn parse_share(text: &str) -> Result<Ratio, AmountError> {
    let (value, unit) = super::parse::number_and_unit(text)?;
    let Some(unit) = unit else {
        return Ok(Ratio::from_si(value.to_f64()));
    };
    let found = unit.dimension();
    if found != Dimension::RATIO {
        return Err(AmountError::WrongDimension { unit, found, wanted: Dimension::RATIO });
    }
    // A share has no household word, so every system gives it the same size.
    let factor = unit.factor(System::Metric)?;
    Ok(Ratio::from_si(rounded_product(value, Rational::ZERO, factor)))
}

/// (value + offset) · factor, rounded once where the exact product fits.
pub(super) fn rounded_product(value: Rational, offset: Rational, factor: Rational) -> f64 {
    let exact = value.checked_add(offset).and_then(|sum| sum.checked_mul(factor));
    match exact {
        Some(product) => product.to_f64(),
        None => (value.to_f64() + offset.to_f64()) * factor.to_f64(),
    }
}

/// The error that a bare per cent is.
pub(super) fn without_basis(text: &str) -> AmountError {
    let text = super::error::quoted(text);
    let readings: [String; 2] = [format!("{text} of base"), format!("{text} of finished")];
    AmountError::Ambiguous { text, readings: readings.into() }
}

/// Text that [`Amount::parse`] reads back as this amount.
///
/// Household measures print as mixed fractions where the denominator is one that spoons have (2, 3, 4, 6, 8,
/// 16, 32), all else as decimals; what is no finite decimal prints as a fraction.
impl fmt::Display for Amount {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let spoon_fraction = self.unit.is_household()
            && matches!(self.value.denominator(), 2 | 3 | 4 | 6 | 8 | 16 | 32);
        if spoon_fraction {
            write!(f, "{} ", self.value.mixed())?;
        } else {
            write!(f, "{} ", self.value)?;
        }
        self.unit.write_after(self.value, f)?;
        self.basis.map_or(Ok(()), |basis| write!(f, " {basis}"))
    }
}

/// `of base`, `of finished`, `of finished by volume`.
impl fmt::Display for Basis {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self.share {
            Share::OfBase => "of base",
            Share::OfFinished => "of finished",
        })?;
        match self.by {
            By::Mass => Ok(()),
            By::Volume => f.write_str(" by volume"),
        }
    }
}

impl FromStr for Amount {
    type Err = AmountError;

    fn from_str(text: &str) -> Result<Self, AmountError> {
        Self::parse(text)
    }
}

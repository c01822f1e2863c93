//! Errors of an amount.

use super::{Amount, Dimension, Rational, System, Unit};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::letter::cut_short;
use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;
use core::fmt;
use thiserror::Error;

/// Why a text is not an amount, or an amount is not the quantity that is needed.
#[derive(Debug, Clone, PartialEq, Error)]
#[non_exhaustive]
pub enum AmountError {
    /// The text is longer than any amount.
    #[error("The text of an amount is {found} bytes long; at most {limit} are read.")]
    TooLong {
        /// Length in bytes.
        found: usize,
        /// The longest that is read.
        limit: usize,
    },
    /// The text is empty.
    #[error("The amount is empty.")]
    Empty,
    /// The text does not begin with a number.
    #[error("`{text}` does not begin with a number that can be read.")]
    NoNumber {
        /// The text found.
        text: String,
    },
    /// A fraction over 0.
    #[error("`{text}` divides by zero.")]
    ZeroDenominator {
        /// The text found.
        text: String,
    },
    /// The number has more digits than can be kept exactly, or is not finite.
    #[error("The number in `{text}` is too large, too fine, or not finite.")]
    NumberOutOfRange {
        /// The text found.
        text: String,
    },
    /// Below zero, and no temperature.
    #[error("`{text}` is negative; only a temperature can be.")]
    Negative {
        /// The text found.
        text: String,
    },
    /// A temperature that does not exist.
    #[error("`{text}` is below absolute zero.")]
    BelowAbsoluteZero {
        /// The text found.
        text: String,
    },
    /// The text can be read in more than one way.
    #[error("`{text}` can be read as {}.", either(.readings))]
    Ambiguous {
        /// The text found.
        text: String,
        /// Each possible reading, as text that reads one way.
        readings: Vec<String>,
    },
    /// A number without a unit.
    #[error("`{text}` is a number without a unit.")]
    NoUnit {
        /// The text found.
        text: String,
    },
    /// A unit that is not in the table.
    #[error("`{text}` is not a known unit.")]
    UnknownUnit {
        /// The text found.
        text: String,
        /// The nearest spelling that is known.
        nearest: Option<&'static str>,
    },
    /// A kitchen word that no standard gives a size.
    #[error(
        "A {word} has no fixed size: in kitchens it is about 1/{part} tsp (common practice, no standard)."
    )]
    KitchenWord {
        /// The word.
        word: &'static str,
        /// Which part of a teaspoon it is about.
        part: i64,
        /// How many of it.
        count: Rational,
    },
    /// A unit that breaks the rules of writing units.
    #[error("The unit `{text}` cannot be read: {why}.")]
    MalformedUnit {
        /// The text found.
        text: String,
        /// The mistake.
        why: &'static str,
    },
    /// Several amounts in one text.
    #[error("`{text}` holds more than one amount.")]
    SeveralAmounts {
        /// The text found.
        text: String,
    },
    /// A per cent of nothing known.
    #[error("`{text}` does not say in a known way what it is a part of.")]
    UnknownBasis {
        /// The text found.
        text: String,
    },
    /// A household word that a measuring system does not have.
    #[error("The {system} system has no {word}.")]
    NoSuchMeasure {
        /// The household word.
        word: &'static str,
        /// The system that lacks it.
        system: System,
        /// The systems that have it.
        systems: [Option<System>; 4],
    },
    /// An amount of one dimension where another is needed.
    #[error("{} in {unit} is given where {wanted} is needed.", capitalized(*.found))]
    WrongDimension {
        /// The unit of the amount.
        unit: Unit,
        /// The dimension of the amount.
        found: Dimension,
        /// The dimension that is needed.
        wanted: Dimension,
    },
    /// A compound unit whose exact size does not fit in 128 bits.
    #[error("The size of the unit {unit} is out of range.")]
    UnitOutOfRange {
        /// The unit.
        unit: Unit,
    },
    /// A quantity that is NaN, infinite, or too large for its unit.
    #[error(
        "A quantity that is not finite, or too large or too small, cannot be written in {unit}."
    )]
    ValueOutOfRange {
        /// The unit in which it was to be written.
        unit: Unit,
    },
    /// An uncertainty that cannot be read.
    #[error("The uncertainty in `{text}` cannot be read: {why}.")]
    MalformedUncertainty {
        /// The text found.
        text: String,
        /// The mistake.
        why: &'static str,
    },
    /// A rounding step, denominator or digit count that is not above zero.
    #[error("An amount cannot be rounded to {what}.")]
    NoStep {
        /// The system asked for.
        what: &'static str,
    },
    /// A name that no measuring system has.
    #[error("`{text}` is not a measuring system.")]
    UnknownSystem {
        /// The text found.
        text: String,
    },
}

impl Diagnose for AmountError {
    codes! {
        Self::TooLong { .. } => "amount-too-long",
        Self::Empty => "amount-empty",
        Self::NoNumber { .. } => "amount-no-number",
        Self::ZeroDenominator { .. } => "amount-zero-denominator",
        Self::NumberOutOfRange { .. } => "amount-number-out-of-range",
        Self::Negative { .. } | Self::BelowAbsoluteZero { .. } => "out-of-range",
        Self::Ambiguous { .. } => "amount-ambiguous",
        Self::NoUnit { .. } => "amount-no-unit",
        Self::UnknownUnit { .. } => "unit-unknown",
        Self::KitchenWord { .. } => "unit-of-the-kitchen",
        Self::MalformedUnit { .. } => "unit-malformed",
        Self::SeveralAmounts { .. } => "amount-several",
        Self::UnknownBasis { .. } => "amount-unknown-basis",
        Self::NoSuchMeasure { .. } => "system-lacks-measure",
        Self::WrongDimension { .. } => "amount-wrong-dimension",
        Self::UnitOutOfRange { .. } => "unit-out-of-range",
        Self::ValueOutOfRange { .. } => "amount-value-out-of-range",
        Self::MalformedUncertainty { .. } => "uncertainty-malformed",
        Self::NoStep { .. } => "rounding-no-step",
        Self::UnknownSystem { .. } => "system-unknown",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::TooLong { limit, .. } => {
                format!("Write one number and one unit, in at most {limit} bytes.").into()
            }
            Self::Empty | Self::NoNumber { .. } => {
                "Write a number and a unit, such as 1 1/4 cup, 40 drops or 12.5 g.".into()
            }
            Self::ZeroDenominator { .. } => "Write a fraction over 1 or more, such as 1/4.".into(),
            Self::NumberOutOfRange { .. } => {
                "Write a number of at most 38 digits, in a unit that suits it.".into()
            }
            Self::Negative { .. } => "Write the amount without its minus sign.".into(),
            Self::BelowAbsoluteZero { .. } => {
                "Write a temperature above -273.15 °C, which is -459.67 °F.".into()
            }
            Self::Ambiguous { .. } => "Write the one that is meant.".into(),
            Self::NoUnit { text } => {
                format!("Say of what: {text} drops, {text} g, {text} mL, {text} tsp?").into()
            }
            Self::UnknownUnit { nearest: Some(nearest), .. } => {
                format!("Did you mean {nearest}?").into()
            }
            Self::UnknownUnit { nearest: None, .. } => {
                "Write a unit such as cup, tbsp, tsp, mL, g, drops, or its UCUM code.".into()
            }
            Self::KitchenWord { part, count, .. } => {
                let teaspoons = count.checked_div(Rational::from_int(*part));
                let spoon = teaspoons.and_then(|many| Amount::new(many, Unit::TSP).ok());
                spoon.map_or_else(
                    || format!("Write the spoon that you take: one is 1/{part} tsp.").into(),
                    |spoon| format!("Write the spoon that you take: {spoon}.").into(),
                )
            }
            Self::MalformedUnit { .. } => {
                "Write a unit such as g, g/mL, kg/m3 or J/(g.K).".into()
            }
            Self::SeveralAmounts { .. } => {
                "Write one number and one unit: 83 oz wt for 5 lb and 3 oz wt; of 2 to 3 drops, the number that you take."
                    .into()
            }
            Self::UnknownBasis { .. } => {
                "Write a per cent of base or of finished mix: 8 % of base, 20 % of finished, \
                 20 % of finished by volume."
                    .into()
            }
            Self::NoSuchMeasure { word, systems, .. } => {
                let known: Vec<String> = systems
                    .iter()
                    .flatten()
                    .map(|system| format!("{} {word} ({system})", system.prefix()))
                    .collect();
                format!("Write {}, or use mL.", either(&known)).into()
            }
            Self::WrongDimension { wanted, .. } => wrong_dimension_help(*wanted),
            Self::UnitOutOfRange { .. } | Self::ValueOutOfRange { .. } => {
                "Use a unit of a size that suits the quantity.".into()
            }
            Self::MalformedUncertainty { .. } => {
                "Write 1.03 g/mL ± 0.01 for one standard uncertainty, 12 g ± 2 % for a relative one, \
                 ± 0.02 g (k=2) for an expanded one, ± 0.05 g (interval) for bounds."
                    .into()
            }
            Self::NoStep { .. } => "Give a step, denominator or number of digits above zero.".into(),
            Self::UnknownSystem { .. } => {
                "Write us-customary, us-label, metric or imperial.".into()
            }
        }
    }
}

impl AmountError {
    /// The same about `count` of what is not known by itself.
    pub(super) fn times(self, count: Rational) -> Self {
        match self {
            Self::KitchenWord { word, part, .. } => Self::KitchenWord { word, part, count },
            other => other,
        }
    }
}

#[cfg(feature = "document")]
impl AmountError {
    /// The fix where a `wanted` is expected, which [`Diagnose::help`] does not know.
    pub(crate) fn help_where(&self, wanted: Dimension) -> Cow<'static, str> {
        match self {
            Self::UnknownUnit { nearest: Some(nearest), .. } if measures(nearest, wanted) => {
                self.help()
            }
            Self::Empty
            | Self::NoNumber { .. }
            | Self::NoUnit { .. }
            | Self::UnknownUnit { .. }
            | Self::MalformedUnit { .. }
            | Self::SeveralAmounts { .. } => wrong_dimension_help(wanted),
            _ => self.help(),
        }
    }
}

#[cfg(feature = "document")]
fn measures(unit: &str, wanted: Dimension) -> bool {
    Unit::parse(unit).is_ok_and(|unit| unit.dimension().serves_as(wanted))
}

/// An amount of the dimension `wanted` to follow.
fn wrong_dimension_help(wanted: Dimension) -> Cow<'static, str> {
    let example = match wanted {
        Dimension::VOLUME => "1 1/4 cup or 20 mL",
        Dimension::MASS => "12.5 g or 2 lb",
        Dimension::LENGTH => "0.035 in or 2 mm",
        Dimension::TIME => "90 s or 3 min",
        Dimension::TEMPERATURE => "330 °F or 165 °C",
        Dimension::TEMPERATURE_INTERVAL => "20 K",
        Dimension::COUNT => "40 drops",
        Dimension::RATIO => "8 % of base",
        Dimension::DENSITY => "1.03 g/mL",
        Dimension::PRESSURE => "29 inHg or 98 kPa",
        Dimension::ENERGY => "20 kJ",
        Dimension::POWER => "1000 W",
        Dimension::VELOCITY => "5 cm/s",
        Dimension::SPECIFIC_HEAT => "1.8 J/(g.K)",
        Dimension::MOLAR_ENERGY => "120 kJ/mol",
        Dimension::EXPANSION => "7e-4 1/K",
        Dimension::MASS_PER_COUNT => "0.044 g/drop",
        Dimension::VOLUME_PER_COUNT => "0.05 mL/drop",
        _ => return format!("Write {wanted}.").into(),
    };
    format!("Write {wanted}, such as {example}.").into()
}

/// `a, b or c`.
fn either(choices: &[String]) -> String {
    match choices.split_last() {
        None => String::new(),
        Some((only, [])) => only.clone(),
        Some((last, rest)) => format!("{} or {last}", rest.join(", ")),
    }
}

/// The dimension's name at the head of a sentence.
fn capitalized(dimension: Dimension) -> impl fmt::Display {
    let name = format!("{dimension}");
    let mut letters = name.chars();
    let head: String = letters.next().into_iter().flat_map(char::to_uppercase).collect();
    format!("{head}{}", letters.as_str())
}

/// The text as a message can hold it.
pub(super) fn quoted(text: &str) -> String {
    const LONGEST: usize = 60;
    cut_short(text.trim(), LONGEST)
}

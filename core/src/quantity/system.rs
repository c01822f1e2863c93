//! Measuring systems: what a cup is.

use super::AmountError;
use core::fmt;
use core::str::FromStr;

/// A measuring system, which gives household words (cup, tbsp, tsp, fl oz, pt, qt, gal) their size.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum System {
    /// US customary measures: gallon 231 in³, cup 236.588 2365 mL (NIST Handbook 44, Appendix C).
    UsCustomary,
    /// US nutrition-label measures: cup 240 mL, fl oz 30 mL, tbsp 15 mL, tsp 5 mL
    /// (21 CFR 101.9(b)(5)(viii)). It has no pint, quart or gallon.
    UsLabel,
    /// Metric kitchen measures: cup 250 mL, tbsp 15 mL, tsp 5 mL (common practice, no source).
    /// It has no fluid ounce, pint, quart or gallon.
    Metric,
    /// Imperial measures: gallon 4.546 09 L (UK Weights and Measures Act 1985); the cup is half a
    /// pint. No standard gives it spoons.
    Imperial,
}

impl System {
    /// All systems, in the order of their declaration.
    pub const ALL: [Self; 4] = [Self::UsCustomary, Self::UsLabel, Self::Metric, Self::Imperial];

    /// The names of all systems, in the same order.
    pub const WORDS: &'static [&'static str] = &["us-customary", "us-label", "metric", "imperial"];

    /// The name in documents: `us-customary`, `us-label`, `metric` or `imperial`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::UsCustomary => "us-customary",
            Self::UsLabel => "us-label",
            Self::Metric => "metric",
            Self::Imperial => "imperial",
        }
    }

    /// The word that, before a household word, overrides the system at hand: `US`, `label`, `metric`, `imperial`.
    #[must_use]
    pub const fn prefix(self) -> &'static str {
        match self {
            Self::UsCustomary => "US",
            Self::UsLabel => "label",
            Self::Metric => "metric",
            Self::Imperial => "imperial",
        }
    }
}

impl fmt::Display for System {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl FromStr for System {
    type Err = AmountError;

    fn from_str(text: &str) -> Result<Self, AmountError> {
        Self::ALL
            .into_iter()
            .find(|system| system.name() == text)
            .ok_or_else(|| AmountError::UnknownSystem { text: super::error::quoted(text) })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn names_read_back() {
        for system in System::ALL {
            assert_eq!(system.name().parse(), Ok(system));
        }
        assert!("us".parse::<System>().is_err());
    }
}

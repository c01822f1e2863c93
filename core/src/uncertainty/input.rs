//! An input of a calculation with its uncertainty and source.

use alloc::string::{String, ToString};

use super::UncertaintyError;
use crate::quantity::{Measurable, Measured};

/// An input of a calculation, how sure it is, and what makes it unsure: its source, by name.
#[derive(Debug, Clone, PartialEq)]
pub struct Input<S = String> {
    value: f64,
    uncertainty: Option<f64>,
    source: S,
    freedom: Option<f64>,
}

impl Input {
    /// A value with its standard uncertainty, which comes from `source`. Inputs with the same source err
    /// together.
    pub fn new<Q: Measurable>(
        value: Q,
        uncertainty: Q::Difference,
        source: impl Into<String>,
    ) -> Self {
        Self::from_source(value, Some(uncertainty), source.into())
    }

    /// A measured value; `name` is its source, a text on where the number was found. Where nothing is
    /// known of its uncertainty it counts as exact, and [`Estimate::unknown`](super::Estimate::unknown) names it.
    pub fn of<Q: Measurable>(measured: &Measured<Q>, name: impl Into<String>) -> Self {
        Self::from_source(measured.value, measured.uncertainty, name.into())
    }

    /// A number that is what it is: a count, a definition.
    pub fn exact<Q: Measurable>(value: Q) -> Self {
        Self { value: value.si(), uncertainty: Some(0.0), source: String::new(), freedom: None }
    }

    /// Its source.
    #[must_use]
    pub fn source(&self) -> &str {
        &self.source
    }
}

impl<S> Input<S> {
    /// A value, its standard uncertainty where that is known, and its source.
    pub(super) fn from_source<Q: Measurable>(
        value: Q,
        uncertainty: Option<Q::Difference>,
        source: S,
    ) -> Self {
        let uncertainty = uncertainty.map(Measurable::si);
        Self { value: value.si(), uncertainty, source, freedom: None }
    }

    /// The same, its uncertainty from a number of degrees of freedom, at least 1 (n − 1 for a mean of n).
    /// Without it the uncertainty counts as known exactly (JCGM 100, G.4.3).
    #[must_use]
    pub fn with_freedom(self, freedom: f64) -> Self {
        Self { freedom: Some(freedom), ..self }
    }

    /// The value in coherent SI units.
    #[must_use]
    pub fn si(&self) -> f64 {
        self.value
    }

    pub(super) fn origin(&self) -> &S {
        &self.source
    }

    pub(super) fn uncertainty(&self) -> Option<f64> {
        self.uncertainty
    }

    pub(super) fn freedom(&self) -> Option<f64> {
        self.freedom
    }
}

impl<S: ToString> Input<S> {
    pub(super) fn check(&self) -> Result<(), UncertaintyError> {
        let uncertainty = self.uncertainty.unwrap_or(0.0);
        if !(self.value.is_finite() && uncertainty.is_finite() && uncertainty >= 0.0) {
            return Err(UncertaintyError::BadInput { of: self.source.to_string() });
        }
        match self.freedom {
            // A NaN is not such a number either.
            Some(freedom) if !(freedom.is_finite() && freedom >= 1.0) => {
                Err(UncertaintyError::BadFreedom { of: self.source.to_string(), freedom })
            }
            _ => Ok(()),
        }
    }
}

//! Why a mass cannot be measured, and what would do.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{MOST_CUPS, Measure};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::Mass;
use crate::show::text;
use uom::si::mass::gram;

/// How far a tool comes.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Shortfall {
    /// The best that the tool does.
    pub nearest: Measure,
    /// The mass from which on the tool keeps the tolerance; `None` where it would need more acts
    /// than are allowed.
    pub least: Option<Mass>,
    /// The most that the tool gives with the acts allowed.
    pub most: Mass,
}

/// A bench or a mass that cannot be worked with.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MeasureError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// More cups than a bench may have.
    #[error("The bench has {found} cups.")]
    Cups {
        /// The number found.
        found: usize,
    },
    /// A limit of the bench lies outside its range.
    #[error("The bench allows {found} {what}.")]
    Limit {
        /// Which.
        what: &'static str,
        /// The number found.
        found: u32,
        /// The maximum.
        most: u32,
    },
    /// A balance or a cup holds too little for its own scale.
    #[error("The capacity of {what} is too small.")]
    Capacity {
        /// Which.
        what: String,
        /// The requirement.
        needs: &'static str,
    },
    /// Nothing on the bench can measure the material.
    #[error("Nothing on the bench can measure this material.")]
    NoTool,
    /// No tool keeps the tolerance.
    #[error("No tool on the bench measures {} within {}.", grams(*.wanted), percent(*.tolerance))]
    NotReached {
        /// The mass wanted.
        wanted: Mass,
        /// The relative tolerance.
        tolerance: f64,
        /// How far each tool comes, the nearest first.
        tools: Vec<Shortfall>,
    },
}

impl MeasureError {
    /// The least mass from which on some tool keeps the tolerance, where it is more than was
    /// wanted; `None` where no mass would do.
    #[must_use]
    pub fn least(&self) -> Option<Mass> {
        let Self::NotReached { wanted, tools, .. } = self else { return None };
        let reached = tools.iter().filter_map(|tool| tool.least).filter(|least| least > wanted);
        reached.reduce(|a, b| if b < a { b } else { a })
    }
}

impl Diagnose for MeasureError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::Cups { .. } => "bench-cups",
        Self::Limit { .. } => "bench-limit",
        Self::Capacity { .. } => "bench-capacity",
        Self::NoTool => "measure-no-tool",
        Self::NotReached { .. } => "measure-not-reached",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::Cups { .. } => Cow::Owned(format!(
                "List at most {MOST_CUPS}, those that you pour from. Of alike cups one is enough."
            )),
            Self::Limit { most, .. } => Cow::Owned(format!("Give a number from 1 to {most}.")),
            Self::Capacity { needs, .. } => Cow::Owned(format!("It must be {needs}.")),
            Self::NoTool => Cow::Borrowed(
                "Put a balance on the bench, or say what a spoonful or a drop of the material weighs.",
            ),
            Self::NotReached { wanted, tools, .. } => Cow::Owned(way_out(*wanted, tools)),
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::NotReached { .. } => Some(Parameter::MassToMeasure),
            Self::Capacity { .. } | Self::Cups { .. } | Self::Limit { .. } | Self::NoTool => None,
        }
    }
}

impl From<ParameterError> for MeasureError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

/// The nearest that each tool comes, then what would do.
fn way_out(wanted: Mass, tools: &[Shortfall]) -> String {
    let mut words = String::from("The nearest:");
    for (index, tool) in tools.iter().enumerate() {
        let Measure { tool: name, mass, deviation, .. } = &tool.nearest;
        let separator = if index == 0 { "" } else { ";" };
        let off = text::in_times(*deviation).unwrap_or_else(|| signed_percent(deviation.value));
        words.push_str(&format!("{separator} {name} {} ({off})", grams(*mass)));
        match tool.least {
            Some(least) if least > wanted => {
                words.push_str(&format!(", which does from {} on", grams(least)));
            }
            Some(_) if tool.most < wanted => {
                words.push_str(&format!(", which gives {} at most", grams(tool.most)));
            }
            Some(_) => words.push_str(", which takes too many acts"),
            None => words.push_str(", which is too coarse for any amount"),
        }
    }
    let larger = tools.iter().filter_map(|tool| tool.least).filter(|least| *least > wanted);
    match larger.reduce(|a, b| if b < a { b } else { a }) {
        Some(least) => words.push_str(&format!(
            ". Mix more at once, so that the amount grows to {}, or use a finer tool.",
            grams(least)
        )),
        None => words.push_str(". Use another tool, allow more acts, or split the amount."),
    }
    words
}

fn grams(mass: Mass) -> String {
    let value = mass.get::<gram>();
    let decimals = match value {
        v if v < 0.01 => 6,
        v if v < 1.0 => 4,
        v if v < 10.0 => 3,
        v if v < 100.0 => 2,
        _ => 1,
    };
    format!("{value:.decimals$} g")
}

fn percent(ratio: f64) -> String {
    format!("{} %", libm::round(ratio * 1e6) / 1e4)
}

fn signed_percent(ratio: f64) -> String {
    format!("{:+.1} %", ratio * 100.0)
}

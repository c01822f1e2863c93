//! Errors of learning.

use alloc::borrow::Cow;
use alloc::format;

use super::{Day, LEAST_DAYS};
use crate::batch::BatchError;
use crate::codes::codes;
use crate::fault::Diagnose;

/// Why readings give no estimate.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum LearnError {
    /// Not enough days.
    #[error("{days} of the {LEAST_DAYS} days that an estimate needs")]
    TooFewDays {
        /// How many there are.
        days: usize,
    },
    /// A reading, or its uncertainty, that is not a number above zero.
    #[error("the reading of {day} is not a number with an uncertainty above zero")]
    BadReading {
        /// Its day.
        day: Day,
    },
    /// A value of the book, or its uncertainty, that is not a number.
    #[error("the book's value is not a number with an uncertainty above zero")]
    BadBook,
    /// A day with more rejects than pieces, or none of both.
    #[error("on {day} there are {rejects} rejects of {made} pieces")]
    BadCount {
        /// The day.
        day: Day,
        /// Rejects.
        rejects: u32,
        /// Pieces made.
        made: u32,
    },
    /// No interval of the rejects.
    #[error(transparent)]
    Rejects(#[from] BatchError),
}

impl Diagnose for LearnError {
    codes! {
        Self::TooFewDays { .. } => "learn-too-few-days",
        Self::BadReading { .. } => "learn-bad-reading",
        Self::BadBook => "learn-bad-book",
        Self::BadCount { .. } => "learn-bad-count",
        Self::Rejects(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::TooFewDays { days } => {
                format!("Add records of {} more.", LEAST_DAYS.saturating_sub(*days)).into()
            }
            Self::BadReading { .. } | Self::BadBook => {
                "Check its number and its unit; the uncertainty of a reading is that of its scale at least.".into()
            }
            Self::BadCount { .. } => "Count both again: pieces made, and good ones.".into(),
            Self::Rejects(error) => error.help(),
        }
    }
}

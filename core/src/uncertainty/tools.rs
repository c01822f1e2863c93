//! The tools' part in the uncertainty of what is measured with them.

use super::UncertaintyError;
use crate::check::is_not_negative;
use crate::quantity::{Mass, Ratio, Volume};

/// Standard uncertainties of tools by kind, each relative to what the tool gives.
///
/// [`ToolUncertainty::default`] holds figures for tools that nobody has checked; a shop that has replaces them
/// (see [`calibrate`](crate::calibrate)).
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ToolUncertainty {
    /// Of a balance's span: the same for all its readings. Default 0.1 % (common practice, no source). What
    /// rounding adds comes from the readability: each net weight is the difference of two readings
    /// ([`by_difference`](super::by_difference)).
    pub balance_span: Ratio,
    /// Of the size of a spoon: the same for all its spoonfuls. Default ±5 %, rectangular: 2.9 % (the tolerance
    /// of household measures in ANSI Z61.1, from memory).
    pub spoon_size: Ratio,
    /// Of leveling one spoonful, new each time; also of filling a cup to its only mark. Default 3 % (common practice, no source).
    pub spoon_level: Ratio,
    /// Of the position of a cup's marks. Default as a spoon's size.
    pub cup_size: Ratio,
    /// Of filling a cup to a mark, new each time, as a share of the distance between marks. Default a tenth
    /// (common practice, no source).
    pub cup_filling: Ratio,
    /// Of a drop that the shop has stated without an uncertainty. Default ±15 %, rectangular: 8.7 % (the
    /// greatest error of a calibrated dropper in normal use, USP ⟨1101⟩ Medicine Dropper).
    pub drop: Ratio,
    /// Of a drop that was never weighed, taken as 1/20 mL. Default ±50 %, rectangular: 29 %. Water drops from
    /// tips of 1.4 mm to 4.2 mm weigh 26 mg to 69 mg (Eschbaum, Bulletin of Pharmacy 9 (1895) 461).
    pub unweighed_drop: Ratio,
    /// Of one drop against the next from the same bottle. Default 5 % (common practice, no source).
    pub drop_scatter: Ratio,
}

impl Default for ToolUncertainty {
    fn default() -> Self {
        let rectangular =
            |half_width: f64| super::Bounds::Rectangular.standard(Ratio::from(half_width));
        Self {
            balance_span: Ratio::from(0.001),
            spoon_size: rectangular(0.05),
            spoon_level: Ratio::from(0.03),
            cup_size: rectangular(0.05),
            cup_filling: Ratio::from(0.1),
            drop: rectangular(0.15),
            unweighed_drop: rectangular(0.5),
            drop_scatter: Ratio::from(0.05),
        }
    }
}

impl ToolUncertainty {
    pub(super) fn check(&self) -> Result<(), UncertaintyError> {
        let figures = [
            ("the balance's span", self.balance_span),
            ("a spoon's size", self.spoon_size),
            ("leveling a spoon", self.spoon_level),
            ("a cup's marks", self.cup_size),
            ("filling a cup", self.cup_filling),
            ("a drop", self.drop),
            ("a drop that was never weighed", self.unweighed_drop),
            ("one drop against the next", self.drop_scatter),
        ];
        match figures.iter().find(|(_, figure)| !is_not_negative(figure.value)) {
            Some(&(what, _)) => Err(UncertaintyError::Figure { what }),
            None => Ok(()),
        }
    }
}

/// How an amount is taken: with what, how much of it, how often.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Taken<'a> {
    /// Weighed net, each time as a reading less its tare.
    Weighed {
        /// The net weight of each time.
        net: Mass,
        /// How often.
        times: u32,
        /// The smallest difference that the balance shows.
        readability: Mass,
    },
    /// Level spoonfuls.
    Spoon {
        /// Name of the spoon: spoons of one name are one spoon.
        name: &'a str,
        /// Its volume.
        holds: Volume,
        /// How many.
        times: u32,
    },
    /// Fillings of a cup to a mark.
    Cup {
        /// Name of the cup: cups of one name are one cup.
        name: &'a str,
        /// The volume at the mark.
        filled: Volume,
        /// The distance from mark to mark; `None` of a cup with this mark alone, which is filled like a spoon is
        /// leveled.
        mark: Option<Volume>,
        /// How often.
        times: u32,
    },
    /// Counted drops.
    Drops {
        /// How many.
        count: u32,
    },
}

//! Why there are no pots for a day.

use alloc::borrow::Cow;
use alloc::format;

use uom::si::mass::gram;
use uom::si::time::second;

use super::{MOST_POTS, Wanted};
use crate::codes::codes;
use crate::fault::Diagnose;
use crate::plan::budget::BudgetError;
use crate::plan::cover::CoverError;
use crate::quantity::{Mass, Time};
use crate::show;

/// Why there are no pots.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SplitError {
    /// A stage names a formula that is not there.
    #[error("Stage {stage} names formula {formula}; there are {formulas}.")]
    NoSuchFormula {
        /// Index of the stage.
        stage: usize,
        /// The formula named.
        formula: usize,
        /// Number of formulas.
        formulas: usize,
    },
    /// No vessel to make a pot in.
    #[error("No vessel was given to make a pot in.")]
    NoCup,
    /// Not one capacity, one least pot, or one hot time, a formula.
    #[error("There are {formulas} formulas but {capacities} capacities, least pots or hot times.")]
    Capacities {
        /// Number of formulas.
        formulas: usize,
        /// Capacities given.
        capacities: usize,
    },
    /// A number that cannot be.
    #[error("{what} cannot be {}.", show::number(*.value))]
    BadNumber {
        /// Name of the number.
        what: &'static str,
        /// Value given, masses in g.
        value: f64,
    },
    /// A shot of a stage that cannot be.
    #[error("Stage {stage}: a shot cannot take {}.", show::mass(&.wanted.shot))]
    BadShot {
        /// Index of the stage.
        stage: usize,
        /// The stage.
        wanted: Wanted,
    },
    /// A single shot is more than a pot gives.
    #[error("Stage {stage}: a shot takes {:.1} g, but a pot of it gives at most {:.1} g.",
        .shot.get::<gram>(), .room.get::<gram>())]
    ShotTooLarge {
        /// Index of the stage.
        stage: usize,
        /// Mass of a shot.
        shot: Mass,
        /// Usable mass of a pot: its mass less film, heel and what the injector keeps.
        room: Mass,
    },
    /// A pot does not stay hot for a single shot, so no number of heats is enough.
    #[error("Stage {stage}: a shot takes {:.0} s, but a pot of it stays hot for at most {:.0} s.",
        .every.get::<second>(), .hot.get::<second>())]
    ShotTooLong {
        /// Index of the stage.
        stage: usize,
        /// Time a shot takes.
        every: Time,
        /// Time that a pot stays hot.
        hot: Time,
    },
    /// The smallest pot is more than the vessel may hold.
    #[error("Stage {stage}: the smallest pot is {:.1} g, but no vessel may hold more than {:.1} g of it.",
        .least.get::<gram>(), .capacity.get::<gram>())]
    LeastOverCapacity {
        /// Index of the stage.
        stage: usize,
        /// The smallest pot.
        least: Mass,
        /// Capacity of the vessel for it.
        capacity: Mass,
    },
    /// Layers of one piece have unlike numbers of shots.
    #[error("Laminate {laminate}: one layer has {first} shots, another {other}.")]
    UnlikeShots {
        /// The laminated piece.
        laminate: usize,
        /// Shots of its first layer.
        first: u32,
        /// Shots of another.
        other: u32,
    },
    /// A laminated piece of one layer.
    #[error("Laminate {laminate} has only one layer.")]
    OneLayer {
        /// The laminated piece.
        laminate: usize,
    },
    /// More layers than pots can be hot at once.
    #[error("Laminate {laminate} has {layers} layers, but {injectors} pots can be hot at once.")]
    TooFewInjectors {
        /// The laminated piece.
        laminate: usize,
        /// Its layers.
        layers: usize,
        /// Pots that can be hot at once.
        injectors: u32,
    },
    /// No heat is allowed.
    #[error("The stabilizer allows no heat.")]
    NoHeat,
    /// More pots than a plan may have.
    #[error("More than {MOST_POTS} pots would be needed.")]
    TooManyPots,
    /// The order of formulas could not be covered.
    #[error(transparent)]
    Cover(#[from] CoverError),
    /// More than the budget allows, or stopped.
    #[error(transparent)]
    Budget(#[from] BudgetError),
    /// The pots found wait for each other: a defect of this library.
    #[error("The pots found wait for each other.")]
    Deadlock,
}

impl SplitError {
    /// The stage that it complains of, as they were given.
    #[must_use]
    pub const fn stage(&self) -> Option<usize> {
        match self {
            Self::NoSuchFormula { stage, .. }
            | Self::BadShot { stage, .. }
            | Self::ShotTooLarge { stage, .. }
            | Self::ShotTooLong { stage, .. }
            | Self::LeastOverCapacity { stage, .. } => Some(*stage),
            _ => None,
        }
    }
}

impl Diagnose for SplitError {
    codes! {
        Self::NoSuchFormula { .. } => "split-no-such-formula",
        Self::Capacities { .. } => "split-capacities",
        Self::BadNumber { .. } => "split-bad-number",
        Self::BadShot { .. } => "split-bad-shot",
        Self::ShotTooLarge { .. } => "split-shot-too-large",
        Self::ShotTooLong { .. } => "split-shot-too-long",
        Self::LeastOverCapacity { .. } => "split-least-over-capacity",
        Self::UnlikeShots { .. } => "split-unlike-shots",
        Self::OneLayer { .. } => "split-one-layer",
        Self::TooFewInjectors { .. } => "split-too-few-injectors",
        Self::NoCup => "split-no-cup",
        Self::NoHeat => "split-no-heat",
        Self::TooManyPots => "split-too-many-pots",
        Self::Cover(cover) => cover.code(),
        Self::Budget(error) => error.code(),
        Self::Deadlock => "split-deadlock",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoSuchFormula { formulas, .. } => {
                format!("Formulas are numbered from 0; there are {formulas}.").into()
            }
            Self::Capacities { formulas, .. } => format!("Give {formulas}, one each.").into(),
            Self::BadNumber { .. } => {
                "Masses are 0 or more and finite; capacities above 0; a loss is at least 0 and below 1."
                    .into()
            }
            Self::BadShot { .. } => {
                "Give a mass above 0, of which less comes back; the injector keeps 0 or more.".into()
            }
            Self::ShotTooLarge { room, .. } => format!(
                "Use a larger vessel, or a mold of at most {:.1} g a shot.",
                room.get::<gram>()
            )
            .into(),
            Self::ShotTooLong { .. } => {
                "Use more molds in turn, or keep the pot hot for longer.".into()
            }
            Self::LeastOverCapacity { .. } => "Use a larger vessel.".into(),
            Self::UnlikeShots { .. } => "Give every layer the same number of shots.".into(),
            Self::OneLayer { .. } => "Give two layers or more, or no laminate.".into(),
            Self::TooFewInjectors { layers, .. } => {
                format!("{layers} pots must be hot and shot at once.").into()
            }
            Self::NoCup => "Give at least one vessel.".into(),
            Self::NoHeat => "Allow at least one heat.".into(),
            Self::TooManyPots => "Plan fewer orders at a time, or use a larger vessel.".into(),
            Self::Cover(cover) => cover.help(),
            Self::Budget(error) => error.help(),
            Self::Deadlock => "Please report the orders that led here.".into(),
        }
    }
}

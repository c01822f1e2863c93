//! The steps of a day: what a person does, in the order of work.

use alloc::string::String;
use alloc::vec::Vec;

use crate::caution::Caution;
use crate::quantity::{ThermodynamicTemperature, Time};
use crate::show::{Shown, part};
use crate::words::words;

words! {
    /// Kind of a step.
    pub enum StepKind {
        /// Left-over from the shelf goes in.
        FromShelf = "from-shelf",
        /// The first stage's materials are measured and stirred in.
        Measure = "measure",
        /// A later stage's materials are added to what is in the cup.
        Add = "add",
        /// The pot is degassed.
        Degas = "degas",
        /// The pot is heated, at first or again.
        Heat = "heat",
        /// Shots are made: of one pot, or of all pots of a laminated piece together.
        Shoot = "shoot",
        /// Sprues go back into the pot.
        SpruesBack = "sprues-back",
        /// The leftover of the pot is kept.
        Store = "store",
    }
}

part! {
    /// One step of a day.
    ///
    /// A stage's weigh list, heating and draws are those of its pot in the plan; a step refers to them and says what to do
    /// with them.
    pub struct PlanStep {
        /// Names the step by what it is: the formulas that its pot starts with, the stage's formulas, what is done and with
        /// which mold. It stays where other orders come in or a count changes, so that a tick keeps to its step.
        pub id: String,
        /// Its kind.
        pub kind: StepKind,
        /// Which entry of the order of work it belongs to, counted from 1.
        pub work: u32,
        /// Where: one pot, or those of a laminated piece that are shot together, one a layer.
        pub at: Vec<StepAt>,
        /// Dangers here.
        pub cautions: Vec<Caution>,
        /// Items to tick off one by one, at least one.
        pub items: Vec<StepItem>,
    }
}

part! {
    /// A step at one pot.
    pub struct StepAt {
        /// The pot's letter.
        pub pot: String,
        /// Which of its stages, counted from 1.
        pub stage: u32,
        /// Which of that stage's draws, counted from 1, where something is shot.
        pub draw: Option<u32>,
        /// Its number among the steps of the pot, counted from 1: other steps refer to it.
        pub number: u32,
        /// The action, in one or two sentences that begin with the verb.
        pub text: String,
        /// The text on the other scale, where it is not the same.
        #[cfg_attr(feature = "document", serde(skip_serializing_if = "Option::is_none"))]
        pub other: Option<String>,
        /// Further points for the bench, each a sentence.
        pub details: Vec<String>,
        /// The details on the other scale, one for each; empty where all are the same.
        #[cfg_attr(feature = "document", serde(default, skip_serializing_if = "Vec::is_empty"))]
        pub other_details: Vec<String>,
        /// The table to heat by, the coldest reading first; empty at every other step, and where the times are not known.
        pub readings: Vec<Reading>,
        /// Background, each a sentence.
        pub notes: Vec<String>,
    }
}

part! {
    /// A row of the table to heat by: from the reading where the row before it ends.
    pub struct Reading {
        /// The thermometer shows less than this; none in the last row.
        pub below: Option<Shown<ThermodynamicTemperature>>,
        /// How long the oven runs then; none where it does not.
        pub burst: Option<Shown<Time>>,
        /// The expected reading after that, at most: from the upper end of the row. None where the oven does not run, and in a
        /// plan that was stored before this was in it.
        pub expected: Option<Shown<ThermodynamicTemperature>>,
        /// The hottest possible reading after that, from the upper end of the row. None where the oven does not run, and in a
        /// plan that was stored before this was in it.
        pub at_most: Option<Shown<ThermodynamicTemperature>>,
        /// The action, in a few words: the burst, the next step, or stop.
        pub go: String,
    }
}

part! {
    /// An item to tick off within a step: a material, a fill, a burst, a load, or all of it.
    pub struct StepItem {
        /// Names it as the step is named.
        pub id: String,
        /// The action, in a few words.
        pub text: String,
        /// The text on the other scale, where it is not the same.
        #[cfg_attr(feature = "document", serde(skip_serializing_if = "Option::is_none"))]
        pub other: Option<String>,
        /// By how much it is done: a tick made by another amount no longer holds.
        pub amount: String,
        /// The material that is measured.
        pub material: Option<String>,
        /// Its place in the stage's weigh list, counted from 1.
        pub weigh: Option<u32>,
        /// Whether it is more of what is in the pot already; none if not.
        pub more: Option<bool>,
        /// Which fill, burst or load, counted from 1.
        pub number: Option<u32>,
        /// Shots of a load.
        pub shots: Option<u32>,
    }
}

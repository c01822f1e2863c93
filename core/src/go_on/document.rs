//! What a person says when the day goes on, and what the answer is.

use alloc::string::String;
use alloc::vec::Vec;

use crate::document::PlanDocument;
use crate::document::orders::OrderLine;
use crate::document::written::Written;
use crate::json::Named;
use crate::json::entry::entry;
use crate::json::read_back::or_null_by_reading;
use crate::json::reader::Count;
use crate::quantity::{Amount, Mass, Volume};
use crate::show::{Note, part};
use crate::trial::TrialEntry;

entry! {
    /// A pot as it is now. A pot of the plan holds what its steps that are `done` put into it, unless something else is said;
    /// another one says what is in it by `parts` or `trial`.
    pub struct PotNowEntry {
        required {}
        optional {
            /// Number of its last step that is done. Default: 0, it is not begun. Example: `7`.
            done: Count,
            /// Shots that are done of the step after that. Default: 0. Example: `3`.
            shots: Count,
            /// Whether it is hot. Default: whether its stage has been heated and is not done.
            /// Example: `true`.
            hot: bool,
            /// How much is in it, weighed without the cup, or read at the cup. Default: what the steps leave. Example:
            /// `"212 g"`.
            left: Amount,
            /// All that is in it, by material. Default: what the steps put in. Example:
            /// `{ "clear-base": "1 cup", "plum": "34 drops" }`.
            parts: Named<Amount>,
            /// The trial that it is. Default: none.
            trial: TrialEntry,
            /// Capacity of its cup. Default: that of the plan, else the smallest that holds it. Example: `"2 cup"`.
            cup: Written<Volume>,
            /// Whether it has been degassed. Default: whether that step is done.
            /// Example: `true`.
            degassed: bool,
            /// Number of heats behind it. Default: those of its steps. Example: `2`.
            heats: Count,
            /// Whether each material in it counts as right for its formulas, however far off it is: it was put right as far as it
            /// goes, or is kept as it is. What is not in it yet still goes in. Default: `false`, or as the plan has it.
            /// Example: `true`.
            accepted: bool,
            /// Whether what was in it is lost. Default: `false`.
            /// Example: `true`.
            lost: bool,
        }
    }
}

entry! {
    /// Pieces that are fit to sell so far. Lines for the same pieces are counted together; those that are due first get them.
    pub struct GoodEntry {
        required {
            /// An order line that they are for, counted from 1. Example: `2`.
            line: u32,
            /// Their number. Example: `21`.
            pieces: Count,
        }
        optional {}
    }
}

entry! {
    /// What was made and used of a day's order list before its plan, where the plan is for the rest of it.
    pub struct SoFarEntry {
        required {}
        optional {
            /// Pieces that are made, as order lines. Default: none. Example: `[{ "order": "31", "product": "dusk finger", "pieces": 16 }]`.
            made: Vec<OrderLine>,
            /// Materials that were used of the stock, by name. Default: none. Example: `{ "clear-base": "792 g" }`.
            used: Named<Written<Mass>>,
            /// Leftovers that were used of the shelf, by name. Default: none. Example: `{ "dusk, March 1": "60 g" }`.
            from_shelf: Named<Written<Mass>>,
        }
    }
}

or_null_by_reading! { SoFarEntry; }

part! {
    /// An order line by now.
    pub struct LineNow {
        /// Its pieces that are made.
        pub made: u32,
        /// Its pieces that are still owed.
        pub owed: u32,
        /// Its place in the lines of the new plan, counted from 1; none if the plan does not make any of it.
        pub line: Option<u32>,
    }
}

part! {
    /// A day that goes on.
    pub struct GoneOn {
        /// Changes and their reasons, each a sentence.
        pub changes: Vec<Note>,
        /// Pieces that are owed but cannot be made.
        pub not_made: Vec<NotMade>,
        /// The lines of `orders_now`, in their order; else those of the plan before.
        pub lines: Vec<LineNow>,
        /// Pieces that are made and what was used of the list `orders_now`: `so_far` of the next request, which goes on with the
        /// new plan. None without `orders_now`.
        pub so_far: Option<SoFarEntry>,
        /// Ids of the steps' items that are as before: a tick at them holds.
        pub kept: Vec<String>,
        /// The plan for the rest of the day, complete with the orders that it was made from; none if nothing is left to
        /// make.
        pub plan: Option<PlanDocument>,
    }
}

part! {
    /// Pieces that are owed but cannot be made.
    pub struct NotMade {
        /// The order.
        pub order: String,
        /// The product's name, or its formulas.
        pub what: String,
        /// Their number.
        pub pieces: u32,
        /// The reason, as a sentence.
        pub because: String,
    }
}

impl PotNowEntry {
    /// Whether it says that something is not as planned.
    pub(super) fn differs(&self) -> bool {
        self.left.is_some()
            || self.parts.is_some()
            || self.trial.is_some()
            || self.lost == Some(true)
    }
}

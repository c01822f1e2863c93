//! What a plan may take: pots, and work as a count of steps; and a way to stop it.
//!
//! A step is a trial of one stage of one pot, a material weighed in, 64 quick looks at pots, or 64 pairs of formulas that are compared. Steps are counted, not timed, so
//! that the same day is refused, or planned, on every machine; a million steps take about a second.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec::Vec;
use core::cell::Cell;
use core::hint::black_box;

use crate::codes::codes;
use crate::fault::Diagnose;

/// Default for the number of pots: far more than a shop pours in a day.
pub const DEFAULT_POTS: u32 = 5_000;

/// Default for the work, in steps: a day of 10 000 order lines over 500 formulas takes a twentieth of it.
pub const DEFAULT_WORK: u64 = 10_000_000;

/// After two to this power of steps the caller is asked whether to stop.
const STEPS_A_LOOK: u32 = 10;

/// Memory of a plan for each of its pots, in bytes: at most this while it is made, and again while it is written as JSON.
/// Measured in `bindings/c/tests/memory.c`.
pub const BYTES_A_POT: usize = 512 << 10;

/// Limits of one plan, and what it has taken of them. Memory grows with the pots, by [`BYTES_A_POT`] each at most; it is tried
/// before the work begins.
///
/// ```
/// use pourwright::plan::budget::Budget;
///
/// let budget = Budget::new().pots(200).work(1_000_000).stop_if(&|| false);
/// assert_eq!(budget.spent(), 0);
/// ```
pub struct Budget<'a> {
    pots: u32,
    work: u64,
    stop: Option<&'a dyn Fn() -> bool>,
    spent: Cell<u64>,
    stopped: Cell<bool>,
}

impl Default for Budget<'_> {
    fn default() -> Self {
        Self {
            pots: DEFAULT_POTS,
            work: DEFAULT_WORK,
            stop: None,
            spent: Cell::new(0),
            stopped: Cell::new(false),
        }
    }
}

impl<'a> Budget<'a> {
    /// [`DEFAULT_POTS`] and [`DEFAULT_WORK`], and nothing that stops it.
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// Maximum number of pots that the plan begins.
    #[must_use]
    pub fn pots(self, pots: u32) -> Self {
        Self { pots, ..self }
    }

    /// Maximum work, in steps.
    #[must_use]
    pub fn work(self, work: u64) -> Self {
        Self { work, ..self }
    }

    /// Asks `stop` from time to time; the plan ends with a fault when it says `true`.
    #[must_use]
    pub fn stop_if(self, stop: &'a dyn Fn() -> bool) -> Self {
        Self { stop: Some(stop), ..self }
    }

    /// Steps so far.
    #[must_use]
    pub fn spent(&self) -> u64 {
        self.spent.get()
    }

    /// Counts `steps`. Whether the plan may go on.
    pub(super) fn spend(&self, steps: usize) -> bool {
        let before = self.spent.get();
        if self.stopped.get() || before > self.work {
            return false;
        }
        let after = before.saturating_add(steps as u64);
        self.spent.set(after);
        if before >> STEPS_A_LOOK != after >> STEPS_A_LOOK && self.stop.is_some_and(|stop| stop()) {
            self.stopped.set(true);
        }
        !self.stopped.get() && after <= self.work
    }

    /// Counts `steps`; the fault, if the plan may not go on.
    pub(super) fn charge(&self, steps: usize) -> Result<(), BudgetError> {
        self.spend(steps);
        self.check()
    }

    /// The fault, if the plan may not go on.
    pub(super) fn check(&self) -> Result<(), BudgetError> {
        if self.stopped.get() {
            return Err(BudgetError::Stopped);
        }
        if self.spent.get() > self.work {
            return Err(BudgetError::Work { work: self.work });
        }
        Ok(())
    }

    /// The fault, if the budget does not allow these pots.
    pub(super) fn check_number(&self, pots: usize, at_least: bool) -> Result<(), BudgetError> {
        if pots > self.pots as usize {
            return Err(BudgetError::Pots { pots, at_least, allowed: self.pots });
        }
        Ok(())
    }

    /// The fault, if these pots are too many for the budget or the memory.
    pub(super) fn check_pots(&self, pots: usize, at_least: bool) -> Result<(), BudgetError> {
        self.check_number(pots, at_least)?;
        if !is_there_memory(pots.saturating_mul(BYTES_A_POT)) {
            return Err(BudgetError::Memory { pots, at_least });
        }
        Ok(())
    }
}

/// Whether `bytes` more can be allocated now. The memory of a WebAssembly module never shrinks, so it is not tried there.
#[must_use]
pub fn is_there_memory(bytes: usize) -> bool {
    let mut room = Vec::<u8>::new();
    // An allocation that is not used could be left out by the compiler.
    cfg!(target_family = "wasm") || black_box(&mut room).try_reserve_exact(bytes).is_ok()
}

/// Why a plan ended before it was made.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
#[non_exhaustive]
pub enum BudgetError {
    /// More pots than the budget allows.
    #[error("The day takes {}{pots} pots; the budget of this plan is {allowed}.",
        if *.at_least { "at least " } else { "" })]
    Pots {
        /// Number of pots.
        pots: usize,
        /// Whether no plan takes fewer; else the plan that was found takes them.
        at_least: bool,
        /// Maximum.
        allowed: u32,
    },
    /// More pots than there is memory for.
    #[error("The day takes {}{pots} pots; there is not enough memory for their plan.",
        if *.at_least { "at least " } else { "" })]
    Memory {
        /// Number of pots.
        pots: usize,
        /// Whether no plan takes fewer; else the plan that was found takes them.
        at_least: bool,
    },
    /// More work than the budget allows.
    #[error("The plan takes more than the {work} steps of work of its budget.")]
    Work {
        /// Maximum, in steps.
        work: u64,
    },
    /// The caller stopped it.
    #[error("The plan was stopped before it was finished.")]
    Stopped,
}

impl Diagnose for BudgetError {
    codes! {
        Self::Pots { .. } => "budget-pots",
        Self::Memory { .. } => "budget-memory",
        Self::Work { .. } => "budget-work",
        Self::Stopped => "plan-stopped",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Pots { pots, .. } => format!(
                "Check the number of pieces. If it is right, split the orders over several days, use a larger cup, or allow \
                 the pots: \"budget\": {{ \"pots\": {pots} }}."
            )
            .into(),
            Self::Memory { .. } => "Check the number of pieces. If it is right, split the orders over several days.".into(),
            Self::Work { work } => format!(
                "Split the orders over several days, or allow more work: \"budget\": {{ \"thousand_steps\": {} }}.",
                work.saturating_mul(2).div_ceil(1000)
            )
            .into(),
            Self::Stopped => "Plan again when there is time for it.".into(),
        }
    }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use super::*;
    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;

    /// The code and message of the fault of a day of `pieces` within `budget`.
    fn refused(
        pieces: u32,
        budget: &Budget<'_>,
    ) -> Option<(alloc::string::String, alloc::string::String)> {
        let book = book_from_text(BOOK).unwrap();
        let line = format!(r#"{{ "order": "1", "product": "sky worm", "pieces": {pieces} }}"#);
        let day = orders_from_text(&orders(&line), &book).unwrap();
        let faults = Plan::make_within(&book, &day, budget).err()?;
        faults.iter().next().map(|fault| (fault.code.to_string(), fault.message.to_string()))
    }

    use alloc::string::ToString;

    #[test]
    fn the_caller_is_asked_each_1024_steps() {
        let looks = Cell::new(0);
        let stop = || {
            looks.set(looks.get() + 1);
            looks.get() == 3
        };
        let budget = Budget::new().stop_if(&stop);
        let asked = |steps: usize| {
            let goes_on = budget.spend(steps);
            (goes_on, looks.get())
        };
        assert_eq!(asked(1023), (true, 0));
        assert_eq!(asked(1), (true, 1));
        assert_eq!(asked(1023), (true, 1));
        assert_eq!(asked(5000), (true, 2));
        assert_eq!(asked(1024), (false, 3));
        // Nothing goes on and nothing is counted after that.
        assert_eq!(asked(1024), (false, 3));
        assert_eq!((budget.spent(), budget.check()), (8071, Err(BudgetError::Stopped)));
    }

    #[test]
    fn what_a_budget_allows_may_be_used_up() {
        let budget = Budget::new().work(10);
        assert!(budget.spend(10) && budget.spend(0));
        assert_eq!(budget.check(), Ok(()));
        assert!(!budget.spend(1) && !budget.spend(1));
        let over = BudgetError::Work { work: 10 };
        assert_eq!((budget.spent(), budget.check()), (11, Err(over)));
        let pots = |pots| Budget::new().check_pots(pots, true);
        assert_eq!(pots(DEFAULT_POTS as usize), Ok(()));
        let error = BudgetError::Pots { pots: 5_001, at_least: true, allowed: 5_000 };
        assert_eq!(pots(5_001), Err(error));
        assert!(error.help().contains("\"pots\": 5001"), "{}", error.help());
        // Twice as much, in thousands.
        let help = |work| BudgetError::Work { work }.help().into_owned();
        assert!(help(2_000_000).contains("\"thousand_steps\": 4000"));
        assert!(help(1_501).contains("\"thousand_steps\": 4"));
        assert!(BudgetError::Stopped.help().contains("Plan again"));
    }

    /// Where a step is taken, and how many: 4 looks at the one pot, and 3 materials.
    #[test]
    fn the_steps_of_a_small_day() {
        let budget = Budget::new();
        assert_eq!(refused(12, &budget), None);
        assert_eq!(budget.spent(), 7);
    }

    #[test]
    fn too_many_pots_are_refused_before_the_work_begins() {
        let budget = Budget::new().pots(10);
        let (code, message) = refused(1_000_000, &budget).unwrap();
        assert_eq!(code, "budget-pots");
        assert!(message.starts_with("The day takes at least "), "{message}");
        assert!(budget.spent() < 1_000, "{}", budget.spent());
        assert_eq!(refused(30, &budget), None);
    }

    #[test]
    fn memory_is_tried_before_the_work_begins() {
        assert!(is_there_memory(0) && is_there_memory(1 << 20));
        assert!(!is_there_memory(usize::MAX) && !is_there_memory(1 << 60));
        let budget = Budget::new().pots(u32::MAX);
        assert_eq!(budget.check_pots(1, true), Ok(()));
        let error = budget.check_pots(u32::MAX as usize, true).unwrap_err();
        assert_eq!(error, BudgetError::Memory { pots: u32::MAX as usize, at_least: true });
        assert_eq!(
            error.to_string(),
            "The day takes at least 4294967295 pots; there is not enough memory for their plan."
        );
    }

    #[test]
    fn work_is_counted_and_ends() {
        let all = Budget::new();
        assert_eq!(refused(2_000, &all), None);
        assert!(all.spent() > 10);
        let exact = Budget::new().work(all.spent());
        assert_eq!(refused(2_000, &exact), None);
        let less = Budget::new().work(all.spent() - 1);
        assert_eq!(refused(2_000, &less).unwrap().0, "budget-work");
    }

    #[test]
    fn a_plan_is_stopped_where_its_caller_says_so() {
        let looks = Cell::new(0);
        let stop = || {
            looks.set(looks.get() + 1);
            looks.get() > 1
        };
        let budget = Budget::new().pots(20_000).stop_if(&stop);
        assert_eq!(refused(200_000, &budget).unwrap().0, "plan-stopped");
        assert_eq!(looks.get(), 2);
    }
}

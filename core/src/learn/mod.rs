//! What the records of many days say about the numbers of a book.
//!
//! Each day gives [`Reading`]s of a number: what a drop of plum weighs, what the cavity of a mold holds. [`learn`]
//! makes one estimate of all of them and of the book's own value, with its standard uncertainty:
//!
//! 1. **Readings of a day** are one day, however many: their mean x_d, weighted by 1/u² of what is known of each
//!    reading (counting, leveling, rounding of the scale). A day is the unit because how a bottle is held or a spoon is
//!    leveled changes from day to day and not within one.
//! 2. **Between days** the true value scatters by τ, which nobody knows: τ² is the least that brings
//!    Σ w_d (x_d − x̄)² down to n − 1, with w_d = 1/(u_d² + τ²) (R. C. Paule and J. Mandel, J. Res. NBS 87 (1982) 377).
//! 3. **Mean** x̄ = Σ w_d x_d / Σ w_d. Its own uncertainty is k/√Σw_d, k = t₉₅(n − 1)/2 with the t of 95.45 %: twice it
//!    covers 95 %, however few the days (JCGM 100:2008, G.3.2).
//! 4. **What all readings share** (the size of the spoon, the density of the base) does not average out: for each
//!    source s, (Σ w_d c_ds / Σ w_d)² is added to u² (JCGM 100, 5.2.2).
//! 5. **The book's value**, with its ±, is one more observation, weighted by 1/u². It is left out where it and the
//!    days disagree by more than twice their common uncertainty (E_n > 1, ISO/IEC 17043): a bottle or a spoon has
//!    then been changed, and a mean of the two would be neither. What the readings share is not part of the weights:
//!    the book calculates with the same spoon and the same density, so the estimate becomes what the days show, and
//!    its ± covers what is true.
//!
//! Fewer than [`LEAST_DAYS`] days give no estimate: of three, the scatter between days has two degrees of freedom, and the
//! ± would be more than twice what the readings say.
//!
//! Nothing is dropped. A day that is too far out ([`Outlying`]) and a trend over the days ([`Drift`]) are reported with
//! the estimate that they are part of.
//!
//! Rejects are counted, not weighed: [`RejectRate`].

mod between;
mod day;
mod drift;
mod error;
mod estimate;
#[cfg(feature = "document")]
pub(crate) mod gather;
mod reading;
mod rejects;

pub use day::Day;
pub use drift::Drift;
pub use error::LearnError;
pub use estimate::{Learned, Outlying, Verdict, learn};
pub use reading::{Pieces, Reading, Shared, Spoonfuls};
pub use rejects::{CountedDay, RejectRate};

/// The fewest days that give an estimate.
pub const LEAST_DAYS: usize = 4;

/// The fewest days that can show a trend: three degrees of freedom about a line.
pub const LEAST_DAYS_OF_A_TREND: usize = 5;

/// Significance of what is questioned: one good series in a hundred is questioned for nothing. That of an outlier in ISO
/// 5725-2, 7.3.4.
pub(crate) const SIGNIFICANT: f64 = 0.01;

/// Probability outside ± 2 standard deviations of a normal distribution: 1 − 95.45 %.
pub(crate) const OUTSIDE_TWO: f64 = 0.045_500_263_896_358_4;

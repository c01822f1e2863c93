//! The tools that lie on the bench, checked once.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{MeasureError, Step};
use crate::parameter::{Check, Parameter, Relation};
use crate::quantity::{Mass, MassDensity, Volume};

/// The most spoons of different size a bench may have.
pub const MOST_SPOONS: usize = 8;

/// The most cups a bench may have: a plan tries each pot in each of them.
pub const MOST_CUPS: usize = 64;

/// The most acts that [`Handling::acts`] may allow.
pub const MOST_ACTS: u32 = 16;

/// A balance.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Balance {
    /// The smallest difference it shows.
    pub readability: Mass,
    /// The most it weighs at once, the vessel not counted.
    pub capacity: Mass,
    /// The least it may be trusted with; zero where nothing is known.
    pub least_load: Mass,
}

impl Balance {
    /// The capacity of a balance of which only the `readability` is known, at the low end: shop balances show some 5 000 to
    /// 50 000 steps (common practice, no source). What is heavier is split over several readings.
    #[must_use]
    pub fn usual_capacity(readability: Mass) -> Mass {
        readability * 5000.0
    }

    /// Smallest load and capacity in units of the readability, the load at least 1.
    pub(super) fn increments(&self) -> (u64, u64) {
        let least = -ratio_floor(-(self.least_load / self.readability).value);
        let capacity = ratio_floor((self.capacity / self.readability).value);
        ((least as u64).max(1), capacity as u64)
    }

    /// `increments` as one reading, or split evenly over as many as its capacity asks for; and how
    /// many readings these are.
    pub(super) fn steps(&self, increments: u64) -> (Vec<Step>, u32) {
        let (_, capacity) = self.increments();
        let readings = increments.div_ceil(capacity.max(1)).max(1);
        let low = increments.checked_div(readings).unwrap_or(0);
        let higher = increments.saturating_sub(low.saturating_mul(readings));
        let steps = [(low.saturating_add(1), higher), (low, readings.saturating_sub(higher))]
            .into_iter()
            .filter(|&(_, times)| times > 0)
            .map(|(increments, times)| Step::Weigh {
                reading: self.readability * increments as f64,
                increments,
                times: saturated(times),
            })
            .collect();
        (steps, saturated(readings))
    }
}

/// A cup with evenly spaced marks.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cup {
    /// The lowest mark, which is also the distance from mark to mark.
    pub mark: Volume,
    /// Its capacity. The last mark is the last multiple of `mark` that fits.
    pub capacity: Volume,
}

impl Cup {
    /// How many marks it has.
    #[must_use]
    pub fn marks(&self) -> u32 {
        ratio_floor((self.capacity / self.mark).value) as u32
    }

    /// `marks` as full cups and the rest.
    pub(crate) fn steps(&self, cup: usize, marks: u32) -> Vec<Step> {
        let per_cup = self.marks();
        let full = marks.checked_div(per_cup).unwrap_or(0);
        let rest = marks.saturating_sub(full.saturating_mul(per_cup));
        [(per_cup, full), (rest, u32::from(rest > 0))]
            .into_iter()
            .filter(|&(_, times)| times > 0)
            .map(|(mark, times)| Step::Fill { cup, mark, times })
            .collect()
    }
}

/// How much a person can be asked to do for one amount.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Handling {
    /// The most acts: balance readings, or spoonfuls and fillings together; 1 to [`MOST_ACTS`].
    pub acts: u32,
    /// Maximum number of drops that are still counted; 0 without a dropper.
    pub drops: u32,
    /// How many drops count as one act; at least 1.
    pub drops_per_act: u32,
}

/// 12 acts, 60 drops, 10 drops an act: common practice, no source.
impl Default for Handling {
    fn default() -> Self {
        Self { acts: 12, drops: 60, drops_per_act: 10 }
    }
}

/// The tools that lie on the bench.
#[derive(Debug, Clone, PartialEq)]
pub struct Bench {
    balance: Option<Balance>,
    spoons: Vec<Volume>,
    /// Indices of `spoons`, the largest first.
    by_size: Vec<usize>,
    cups: Vec<Cup>,
    limits: Handling,
}

impl Bench {
    /// A bench with these tools. Spoons are level ones, in any order.
    ///
    /// # Errors
    ///
    /// Numbers out of their ranges; [`MeasureError::Limit`] for a limit outside its range;
    /// [`MeasureError::Cups`] for more than [`MOST_CUPS`];
    /// [`MeasureError::Capacity`] for a cup without a mark, a balance that holds less than it
    /// shows, or whose least load is more than half its capacity (a load above the capacity is
    /// split, and the parts must still be heavy enough).
    pub fn new(
        balance: Option<Balance>,
        spoons: Vec<Volume>,
        cups: Vec<Cup>,
        limits: Handling,
    ) -> Result<Self, MeasureError> {
        check_limits(limits)?;
        if cups.len() > MOST_CUPS {
            return Err(MeasureError::Cups { found: cups.len() });
        }
        let mut check = Check::new();
        if let Some(balance) = &balance {
            check_balance(balance, &mut check);
        }
        if !spoons.is_empty() {
            check.count(Parameter::Spoons, spoons.len());
        }
        for (index, spoon) in spoons.iter().enumerate() {
            check.element(Parameter::SpoonVolume, index, spoon.value);
        }
        for (index, cup) in cups.iter().enumerate() {
            check.element(Parameter::CupMark, index, cup.mark.value).element(
                Parameter::CupCapacity,
                index,
                cup.capacity.value,
            );
        }
        check.finish()?;
        if let Some(balance) = &balance {
            check_least_load(balance)?;
        }
        for (index, cup) in cups.iter().enumerate() {
            check_cup(index.saturating_add(1), cup)?;
        }
        let mut sized: Vec<(usize, Volume)> = spoons.iter().copied().enumerate().collect();
        sized.sort_by(|(_, a), (_, b)| b.value.total_cmp(&a.value));
        let by_size = sized.into_iter().map(|(index, _)| index).collect();
        Ok(Self { balance, spoons, by_size, cups, limits })
    }

    /// The balance.
    #[must_use]
    pub fn balance(&self) -> Option<&Balance> {
        self.balance.as_ref()
    }

    /// The spoons, in the order in which they were given.
    #[must_use]
    pub fn spoons(&self) -> &[Volume] {
        &self.spoons
    }

    /// The cups, in the order in which they were given.
    #[must_use]
    pub fn cups(&self) -> &[Cup] {
        &self.cups
    }

    /// How much a person can be asked to do.
    #[must_use]
    pub fn limits(&self) -> Handling {
        self.limits
    }

    /// Index and volume of each spoon, the largest first.
    pub(super) fn spoons_by_size(&self) -> impl Iterator<Item = (usize, Volume)> {
        self.by_size.iter().filter_map(|&index| Some((index, *self.spoons.get(index)?)))
    }

    pub(super) fn largest_spoon(&self) -> Option<Volume> {
        self.by_size.first().and_then(|&index| self.spoons.get(index)).copied()
    }

    pub(super) fn smallest_spoon(&self) -> Option<Volume> {
        self.by_size.last().and_then(|&index| self.spoons.get(index)).copied()
    }

    /// Mass of a spoonful of each spoon, the largest first, as a share of `wanted`.
    pub(super) fn relative_spoons(&self, density: MassDensity, wanted: Mass) -> [f64; MOST_SPOONS] {
        let mut sizes = [0.0; MOST_SPOONS];
        for (size, (_, volume)) in sizes.iter_mut().zip(self.spoons_by_size()) {
            *size = (density * volume / wanted).value;
        }
        sizes
    }
}

fn saturated(count: u64) -> u32 {
    u32::try_from(count).unwrap_or(u32::MAX)
}

fn check_limits(limits: Handling) -> Result<(), MeasureError> {
    if limits.acts == 0 || limits.acts > MOST_ACTS {
        return Err(MeasureError::Limit { what: "acts", found: limits.acts, most: MOST_ACTS });
    }
    if limits.drops_per_act == 0 {
        return Err(MeasureError::Limit { what: "drops an act", found: 0, most: u32::MAX });
    }
    Ok(())
}

fn check_balance(balance: &Balance, check: &mut Check) {
    let readability = (Parameter::BalanceReadability, balance.readability.value);
    let capacity = (Parameter::BalanceCapacity, balance.capacity.value);
    check
        .number(readability.0, readability.1)
        .number(capacity.0, capacity.1)
        .number(Parameter::BalanceLeastLoad, balance.least_load.value)
        .relation(capacity, Relation::AtLeast, readability);
}

fn check_least_load(balance: &Balance) -> Result<(), MeasureError> {
    let (least, capacity) = balance.increments();
    if balance.least_load.value > 0.0 && least.saturating_mul(2) > capacity {
        return Err(MeasureError::Capacity {
            what: String::from("the balance"),
            needs: "at least twice its least load",
        });
    }
    Ok(())
}

fn check_cup(number: usize, cup: &Cup) -> Result<(), MeasureError> {
    if cup.marks() == 0 {
        return Err(MeasureError::Capacity {
            what: format!("cup {number}"),
            needs: "at least its lowest mark",
        });
    }
    Ok(())
}

/// The whole part of `ratio`; a ratio short of a whole number by rounding alone counts as that.
pub(super) fn ratio_floor(ratio: f64) -> f64 {
    let nearest = libm::round(ratio);
    let rounding = 1e-12 * nearest.abs();
    if (ratio - nearest).abs() <= rounding { nearest } else { libm::floor(ratio) }
}

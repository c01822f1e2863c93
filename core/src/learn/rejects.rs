//! The share of rejects, from the counts of many days.
//!
//! x rejects of n pieces over all days. Days differ by more than chance where a bad pot or a cold mold spoils many pieces
//! at once: the dispersion is φ = Σ (x_d − n_d p)²/(n_d p (1 − p))/(k − 1) over k days, 1 at least, and counts as so many
//! fewer pieces, x/φ of n/φ (P. McCullagh and J. A. Nelder, Generalized Linear Models, 2nd ed. 1989, 4.5). The estimate is
//! (x/φ + 1/2)/(n/φ + 1), the mean under Jeffreys' prior: without a reject yet it is not zero (L. D. Brown, T. T. Cai and
//! A. DasGupta, Statist. Sci. 16 (2001) 101). Its interval is the exact one of the nearest whole counts
//! ([`reject_interval`]), and the book's rate differs where it is outside that.
//!
//! A day is questioned where the rate of the others is outside its own exact interval at 1 − 1 %/k; a trend by the test of
//! P. Armitage, Biometrics 11 (1955) 375, z = Σ (x_d − n_d p) (t_d − t̄)/√(p (1 − p) Σ n_d (t_d − t̄)²), t̄ weighted by
//! n_d, where |z| > t √φ at 1 % with k − 2 degrees of freedom, φ that of what the trend leaves.

use alloc::vec::Vec;

use super::{Day, LEAST_DAYS, LEAST_DAYS_OF_A_TREND, LearnError, SIGNIFICANT};
use crate::batch::reject_interval;
use crate::quantity::Ratio;
use crate::uncertainty::student_t;

/// How sure the interval is.
const SURE: f64 = 0.95;

/// The pieces of a mold on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub struct CountedDay {
    /// The day.
    pub day: Day,
    /// Pieces made.
    pub made: u32,
    /// Those that are not fit to sell.
    pub rejects: u32,
}

/// The share of rejects of a mold.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct RejectRate {
    /// The estimate.
    pub rate: Ratio,
    /// Lower bound, 95 % sure.
    pub from: Ratio,
    /// Upper bound, 95 % sure.
    pub to: Ratio,
    /// Rejects in all.
    pub rejects: u32,
    /// Pieces in all.
    pub made: u32,
    /// How many days.
    pub days: usize,
    /// The first day.
    pub first: Day,
    /// The last day.
    pub last: Day,
    /// φ: 1 where the days scatter as chance does.
    pub dispersion: f64,
    /// A day that is too far out to be believed without a look. It is in the rate.
    pub outlying: Option<CountedDay>,
    /// The sign of a trend over the days: 1 where the rejects become more, −1 where they become fewer.
    pub trend: Option<i8>,
}

impl RejectRate {
    /// The share of rejects that `counts` show, several of one day added up. Equations: [module](super::RejectRate).
    ///
    /// # Errors
    /// [`LearnError::TooFewDays`], [`LearnError::BadCount`]; more than 1 000 000 pieces.
    pub fn new(counts: &[CountedDay]) -> Result<Self, LearnError> {
        let days = by_day(counts)?;
        let (Some(first), Some(last)) = (days.first(), days.last()) else {
            return Err(LearnError::TooFewDays { days: 0 });
        };
        if days.len() < LEAST_DAYS {
            return Err(LearnError::TooFewDays { days: days.len() });
        }
        let sum = |of: fn(&CountedDay) -> u32| {
            days.iter().fold(0_u32, |sum, day| sum.saturating_add(of(day)))
        };
        let (made, rejects) = (sum(|day| day.made), sum(|day| day.rejects));
        let dispersion = dispersion(&days, share(rejects, made));
        let fewer = |count: u32| f64::from(count) / dispersion;
        let whole = |count: u32| libm::round(fewer(count)) as u32;
        // φ is at most the pieces over k − 1: χ² of two rows is at most their sum.
        let (least, most) = (whole(rejects), whole(made));
        let (from, to) = reject_interval(least.min(most), most, Ratio::from(SURE))?;
        Ok(Self {
            rate: Ratio::from((fewer(rejects) + 0.5) / (fewer(made) + 1.0)),
            from,
            to,
            rejects,
            made,
            days: days.len(),
            first: first.day,
            last: last.day,
            dispersion,
            outlying: outlying(&days, rejects, made)?,
            trend: trend(&days, share(rejects, made)),
        })
    }

    /// Whether `rate` is outside the interval.
    #[must_use]
    pub fn excludes(&self, rate: Ratio) -> bool {
        !(self.from <= rate && rate <= self.to)
    }
}

fn share(rejects: u32, made: u32) -> f64 {
    f64::from(rejects) / f64::from(made)
}

/// The days in order, with all that was counted on each.
fn by_day(counts: &[CountedDay]) -> Result<Vec<CountedDay>, LearnError> {
    let mut sorted = counts.to_vec();
    sorted.sort_unstable();
    let mut days: Vec<CountedDay> = Vec::new();
    for count in sorted {
        if count.made == 0 || count.rejects > count.made {
            let CountedDay { day, made, rejects } = count;
            return Err(LearnError::BadCount { day, rejects, made });
        }
        match days.last_mut().filter(|last| last.day == count.day) {
            Some(last) => {
                last.made = last.made.saturating_add(count.made);
                last.rejects = last.rejects.saturating_add(count.rejects);
            }
            None => days.push(count),
        }
    }
    Ok(days)
}

/// Σ (x_d − n_d p)²/(n_d p (1 − p)).
fn misfit(days: &[CountedDay], rate: f64) -> f64 {
    let spread = rate * (1.0 - rate);
    if spread <= 0.0 {
        return 0.0;
    }
    days.iter().fold(0.0, |sum, day| {
        let off = f64::from(day.rejects) - f64::from(day.made) * rate;
        sum + off * off / (f64::from(day.made) * spread)
    })
}

fn dispersion(days: &[CountedDay], rate: f64) -> f64 {
    (misfit(days, rate) / (days.len() as f64 - 1.0)).max(1.0)
}

fn outlying(
    days: &[CountedDay],
    rejects: u32,
    made: u32,
) -> Result<Option<CountedDay>, LearnError> {
    let sure = Ratio::from(1.0 - SIGNIFICANT / days.len() as f64);
    let mut worst: Option<(f64, CountedDay)> = None;
    for day in days {
        let others = made.saturating_sub(day.made);
        let rate = Ratio::from(share(rejects.saturating_sub(day.rejects), others));
        let (from, to) = reject_interval(day.rejects, day.made, sure)?;
        let beyond = (from - rate).value.max((rate - to).value);
        if beyond > worst.map_or(0.0, |(worst, _)| worst) {
            worst = Some((beyond, *day));
        }
    }
    Ok(worst.map(|(_, day)| day))
}

fn trend(days: &[CountedDay], rate: f64) -> Option<i8> {
    if days.len() < LEAST_DAYS_OF_A_TREND {
        return None;
    }
    let (z, critical) = armitage(days, rate);
    // Without rejects there is no z, and no trend.
    (libm::fabs(z) > critical).then_some(if z > 0.0 { 1 } else { -1 })
}

/// z of Armitage's test, and t √φ that it is compared with.
fn armitage(days: &[CountedDay], rate: f64) -> (f64, f64) {
    let number = |day: &CountedDay| f64::from(day.day.number());
    let made = |day: &CountedDay| f64::from(day.made);
    let all = days.iter().fold(0.0, |sum, day| sum + made(day));
    let mean = days.iter().fold(0.0, |sum, day| sum + made(day) * number(day)) / all;
    let (mut tx, mut tt) = (0.0, 0.0);
    for day in days {
        let from = number(day) - mean;
        // Σ n_d (t_d − t̄) is 0: what chance gives, n_d p, has no part in the sum.
        tx += f64::from(day.rejects) * from;
        tt += made(day) * from * from;
    }
    let z = tx / libm::sqrt(rate * (1.0 - rate) * tt);
    let freedom = days.len() as f64 - 2.0;
    let dispersion = ((misfit(days, rate) - z * z) / freedom).max(1.0);
    (z, student_t(SIGNIFICANT, freedom) * libm::sqrt(dispersion))
}

#[cfg(test)]
mod tests {
    use std::vec::Vec;

    use super::*;
    use crate::fault::Diagnose;

    fn counts(list: &[(i32, u32, u32)]) -> Vec<CountedDay> {
        let of = |&(day, made, rejects)| CountedDay { day: Day::from_number(day), made, rejects };
        list.iter().map(of).collect()
    }

    #[test]
    fn a_rate_by_hand() {
        // 10 of 100, each day 2 or 3 of 25: no more than chance. R's binom.test(10, 100): 0.0490 to 0.1762 (from memory).
        let got =
            RejectRate::new(&counts(&[(0, 25, 2), (1, 25, 3), (2, 25, 2), (3, 25, 3)])).unwrap();
        assert_eq!((got.rejects, got.made, got.days, got.dispersion), (10, 100, 4, 1.0));
        assert!((got.rate.value - 10.5 / 101.0).abs() < 1e-15);
        assert!(
            (got.from.value - 0.049_004_69).abs() < 1e-8
                && (got.to.value - 0.176_222_60).abs() < 1e-8
        );
        assert!(got.excludes(Ratio::from(0.03)) && !got.excludes(Ratio::from(0.05)));
        assert!(!got.excludes(got.from) && !got.excludes(got.to));
        assert_eq!((got.outlying, got.trend), (None, None));
    }

    #[test]
    fn no_reject_yet_is_not_none_ever() {
        let got =
            RejectRate::new(&counts(&[(0, 50, 0), (1, 50, 0), (2, 50, 0), (3, 50, 0)])).unwrap();
        assert!((got.rate.value - 0.5 / 201.0).abs() < 1e-15);
        assert_eq!((got.from.value, got.dispersion), (0.0, 1.0));
        assert_eq!(
            (got.outlying, got.trend, misfit(&counts(&[(0, 50, 0)]), 0.0)),
            (None, None, 0.0)
        );
    }

    #[test]
    fn a_bad_day_widens_the_interval_and_is_questioned() {
        let even =
            RejectRate::new(&counts(&[(0, 40, 4), (1, 40, 4), (2, 40, 4), (3, 40, 4)])).unwrap();
        let got =
            RejectRate::new(&counts(&[(0, 40, 0), (1, 40, 14), (2, 40, 1), (3, 40, 1)])).unwrap();
        // 4 of 40 a day where 0, 14, 1 and 1 are: (16 + 100 + 9 + 9)/3.6/3.
        assert!((got.dispersion - 134.0 / 10.8).abs() < 1e-12);
        assert!(got.from < even.from && got.to > even.to);
        assert_eq!(got.outlying.map(|day| day.rejects), Some(14));
    }

    #[test]
    fn a_trend_has_a_sign() {
        let rising: Vec<_> =
            (0..10).map(|day| (day, 60, 1 + u32::try_from(day).unwrap())).collect();
        assert_eq!(RejectRate::new(&counts(&rising)).unwrap().trend, Some(1));
        let falling: Vec<_> =
            (0..10).map(|day| (-day, 60, 1 + u32::try_from(day).unwrap())).collect();
        assert_eq!(RejectRate::new(&counts(&falling)).unwrap().trend, Some(-1));
    }

    #[test]
    fn counts_of_one_day_are_one_day() {
        let split = [(3, 20, 2), (0, 25, 2), (1, 25, 3), (2, 25, 2), (3, 5, 1)];
        let whole = [(0, 25, 2), (1, 25, 3), (2, 25, 2), (3, 25, 3)];
        assert_eq!(RejectRate::new(&counts(&split)), RejectRate::new(&counts(&whole)));
        let three = RejectRate::new(&counts(&[(0, 90, 2), (0, 90, 2), (1, 90, 2), (2, 90, 2)]));
        assert_eq!(three.unwrap_err(), LearnError::TooFewDays { days: 3 });
        assert_eq!(RejectRate::new(&[]).unwrap_err(), LearnError::TooFewDays { days: 0 });
        let bad = RejectRate::new(&counts(&[(0, 3, 4)])).unwrap_err();
        assert!(bad.help().contains("Count both again"));
        assert_eq!(bad.code(), "learn-bad-count");
    }

    #[test]
    fn the_test_of_a_trend_by_hand() {
        // 31 of 330; t̄ = 1900/330, Σ (x - np)(t - t̄) over √(p (1 - p) Σ n (t - t̄)²), t(4, 1 %) = 4.604 094 871 of tables,
        // φ = (18.6515 - z²)/4, by the same formulas in Python.
        let list =
            counts(&[(0, 60, 1), (2, 40, 6), (3, 50, 2), (7, 80, 9), (9, 30, 8), (12, 70, 5)]);
        let (z, critical) = armitage(&list, 31.0 / 330.0);
        assert!((z - 1.514_679_655_050_612).abs() < 1e-12, "{z}");
        assert!((critical - 4.604_094_871 * libm::sqrt(4.089_320_923_966_768)).abs() < 1e-7);
        assert_eq!(trend(&list, 31.0 / 330.0), None);
    }

    #[test]
    fn five_days_show_a_trend_and_four_do_not() {
        let rising = [(0, 200, 2), (1, 200, 12), (2, 200, 22), (3, 200, 32), (4, 200, 42)];
        assert_eq!(RejectRate::new(&counts(&rising)).unwrap().trend, Some(1));
        assert_eq!(RejectRate::new(&counts(&rising[..4])).unwrap().trend, None);
    }

    #[test]
    fn a_day_of_one_piece_and_one_of_rejects_alone_count() {
        let got = RejectRate::new(&counts(&[(0, 1, 0), (1, 3, 3), (2, 9, 0), (3, 9, 0)])).unwrap();
        assert_eq!((got.made, got.rejects), (22, 3));
        // The day of rejects alone spreads the rest: χ² = 22 - 0 of 3 degrees of freedom.
        assert!((got.dispersion - 22.0 / 3.0).abs() < 1e-12, "{}", got.dispersion);
    }
}

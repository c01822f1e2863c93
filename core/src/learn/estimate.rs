//! One estimate of a number from the readings of many days and from the book.

use alloc::vec::Vec;

use super::between::{Mean, OfDay, about_mean};
use super::drift::{Drift, drift};
use super::{Day, LEAST_DAYS, LearnError, OUTSIDE_TWO, Reading};
use crate::calibrate;
use crate::calibrate::outlier::question;
use crate::quantity::{Measurable, Measured};
use crate::uncertainty::student_t;
use crate::words::words;

/// A book's value and the days disagree beyond so many of their common standard uncertainties.
const DISAGREE: f64 = 2.0;

/// A ± that is this share of the book's, or less, is worth writing down for itself. The same readings learned twice
/// give at least 1/√2 of it, so that no record is ever offered again for its ± alone.
const SURER: f64 = 2.0 / 3.0;

/// A number as the days and the book show it.
#[derive(Debug, Clone, PartialEq)]
pub struct Learned<Q: Measurable> {
    /// The estimate.
    pub value: Q,
    /// Its standard uncertainty: twice it covers 95 %.
    pub uncertainty: Q,
    /// The estimate of the days alone.
    pub of_days: Q,
    /// Its standard uncertainty.
    pub unsure_days: Q,
    /// Standard deviation of the true value from one day to the next, beyond what the readings scatter.
    pub between: Q,
    /// How many days there are.
    pub days: usize,
    /// How many readings.
    pub readings: usize,
    /// The first day.
    pub from: Day,
    /// The last day.
    pub to: Day,
    /// Whether the book's value is in the estimate: it has a ± and does not disagree with the days.
    pub with_book: bool,
    /// What to do about the book.
    pub verdict: Verdict,
    /// A trend over the days.
    pub drift: Option<Drift<Q>>,
    /// A day that is too far out to be believed without a look.
    pub outlying: Option<Outlying<Q>>,
}

words! {
    /// What an estimate means for the book.
    pub enum Verdict {
        /// It is off the book's value by more than the book's ±; where that has none, by more than twice its own.
        Differs = "differs",
        /// It is the book's value within its ±, which is now a third smaller at least, or known at all.
        Surer = "surer",
        /// It is the book's value, and no surer.
        Agrees = "agrees",
        /// The book has no value.
        New = "new",
    }
}

/// A day that is too far out: an outlier by Grubbs' test at 1 % of the days' distances from their mean, each in its own
/// standard deviation ([`calibrate::Questioned`]; ISO 5725-2, 7.3.4), and beyond three of its own standard uncertainties. It
/// is in the estimate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Outlying<Q> {
    /// The day.
    pub day: Day,
    /// What it shows.
    pub value: Q,
    /// The estimate of the other days alone.
    pub without: Q,
}

/// One estimate of the number that `readings` and the `book` show; a book's value without a ± does not count, but is
/// compared. Equations and rules: [module](super). The order of the readings changes no bit.
///
/// # Errors
/// [`LearnError::TooFewDays`]; [`LearnError::BadReading`] and [`LearnError::BadBook`] for numbers that cannot be.
pub fn learn<Q: Measurable<Difference = Q>>(
    readings: &[Reading<Q>],
    book: Option<&Measured<Q>>,
) -> Result<Learned<Q>, LearnError> {
    let sorted = checked(readings)?;
    let groups: Vec<&[&Reading<Q>]> = sorted.chunk_by(|a, b| a.day == b.day).collect();
    let days: Vec<OfDay> = groups.iter().filter_map(|readings| of_day(readings)).collect();
    let (Some(first), Some(last)) = (days.first(), days.last()) else {
        return Err(LearnError::TooFewDays { days: 0 });
    };
    if days.len() < LEAST_DAYS {
        return Err(LearnError::TooFewDays { days: days.len() });
    }
    let prior = prior(book)?;
    let variance = about_mean(&days);
    let mean = Mean::of(&days, variance);
    let factor = student_t(OUTSIDE_TWO, days.len() as f64 - 1.0) / 2.0;
    let own = factor * factor / mean.weight;
    let shared = shared(&groups, &days, variance, mean.weight);
    let unsure_days = libm::sqrt(own + shared);
    let agreeing = prior.filter(|&(value, unsure)| {
        let off = libm::fabs(mean.value - value);
        off <= DISAGREE * libm::sqrt(unsure_days * unsure_days + unsure * unsure)
    });
    let (value, uncertainty) = match agreeing {
        Some((value, unsure)) => {
            let (of_days, of_book) = (1.0 / own, 1.0 / (unsure * unsure));
            let share = of_days / (of_days + of_book);
            let squares = 1.0 / (of_days + of_book) + share * share * shared;
            (value + share * (mean.value - value), libm::sqrt(squares))
        }
        None => (mean.value, unsure_days),
    };
    if !(value.is_finite() && uncertainty.is_finite() && unsure_days.is_finite()) {
        // Numbers so large or small that their squares are none.
        return Err(LearnError::BadReading { day: first.day });
    }
    Ok(Learned {
        value: Q::from_si(value),
        uncertainty: Q::from_si(uncertainty),
        of_days: Q::from_si(mean.value),
        unsure_days: Q::from_si(unsure_days),
        between: Q::from_si(libm::sqrt(variance)),
        days: days.len(),
        readings: readings.len(),
        from: first.day,
        to: last.day,
        with_book: agreeing.is_some(),
        verdict: verdict(value, uncertainty, book.map(|book| (book.value.si(), prior))),
        drift: drift(&days),
        outlying: outlying(&days, &mean, variance),
    })
}

/// The readings in an order of their own: sums come out the same however they were given.
fn checked<Q: Measurable>(readings: &[Reading<Q>]) -> Result<Vec<&Reading<Q>>, LearnError> {
    for reading in readings {
        let (value, own) = (reading.value.si(), reading.own.si());
        let effects = reading.shared.iter().all(|shared| shared.effect.si().is_finite());
        if !(value.is_finite() && own.is_finite() && own > 0.0 && effects) {
            return Err(LearnError::BadReading { day: reading.day });
        }
    }
    let mut sorted: Vec<&Reading<Q>> = readings.iter().collect();
    sorted.sort_by(|a, b| {
        let number = |of: &dyn Fn(&Reading<Q>) -> f64| of(a).total_cmp(&of(b));
        let by_source = || {
            let sources = |reading: &Reading<Q>| {
                let effects = reading
                    .shared
                    .iter()
                    .map(|one| (one.source.clone(), one.effect.si().to_bits()));
                effects.collect::<Vec<_>>()
            };
            sources(a).cmp(&sources(b))
        };
        a.day
            .cmp(&b.day)
            .then_with(|| number(&|one| one.value.si()))
            .then_with(|| number(&|one| one.own.si()))
            .then_with(by_source)
    });
    Ok(sorted)
}

/// The mean of the readings of a day.
fn of_day<Q: Measurable>(readings: &[&Reading<Q>]) -> Option<OfDay> {
    let day = readings.first()?.day;
    let (mut weight, mut sum) = (0.0, 0.0);
    for reading in readings {
        let own = reading.own.si();
        weight += 1.0 / (own * own);
        sum += reading.value.si() / (own * own);
    }
    Some(OfDay { day, value: sum / weight, variance: 1.0 / weight })
}

/// The book's value and its ±, where it has one.
fn prior<Q: Measurable<Difference = Q>>(
    book: Option<&Measured<Q>>,
) -> Result<Option<(f64, f64)>, LearnError> {
    let Some(book) = book else { return Ok(None) };
    let value = book.value.si();
    let unsure = book.uncertainty.map(Q::si);
    if !(value.is_finite() && unsure.is_none_or(|unsure| unsure.is_finite() && unsure >= 0.0)) {
        return Err(LearnError::BadBook);
    }
    // A ± of nothing is a definition or a slip; either way no reading could move it.
    Ok(unsure.filter(|unsure| *unsure > 0.0).map(|unsure| (value, unsure)))
}

/// Σ_s (Σ_d w_d c_ds / Σ w)², each day's effect the weighted mean of those of its readings.
fn shared<Q: Measurable>(groups: &[&[&Reading<Q>]], days: &[OfDay], between: f64, all: f64) -> f64 {
    let mut effects: Vec<(&str, f64)> = Vec::new();
    for (readings, day) in groups.iter().zip(days) {
        let weight = 1.0 / (day.variance + between) / all;
        for reading in *readings {
            let own = reading.own.si();
            let weight = weight * day.variance / (own * own);
            for shared in &reading.shared {
                let effect = weight * shared.effect.si();
                match effects.iter_mut().find(|(source, _)| *source == shared.source) {
                    Some((_, sum)) => *sum += effect,
                    None => effects.push((&shared.source, effect)),
                }
            }
        }
    }
    effects.sort_by(|a, b| a.0.cmp(b.0));
    effects.iter().fold(0.0, |sum, (_, effect)| sum + effect * effect)
}

fn verdict(value: f64, uncertainty: f64, book: Option<(f64, Option<(f64, f64)>)>) -> Verdict {
    match book {
        None => Verdict::New,
        Some((_, Some((value_of_book, unsure)))) => {
            if libm::fabs(value - value_of_book) > unsure {
                Verdict::Differs
            } else if uncertainty <= SURER * unsure {
                Verdict::Surer
            } else {
                Verdict::Agrees
            }
        }
        Some((value_of_book, None)) => {
            if libm::fabs(value - value_of_book) > 2.0 * uncertainty {
                Verdict::Differs
            } else {
                Verdict::Surer
            }
        }
    }
}

/// A day is not far out within so many of its own standard uncertainties (common practice, no source).
const OWN_SCATTER: f64 = 3.0;

/// The day that Grubbs' test calls an outlier, if its own ± does not explain it.
fn outlying<Q: Measurable>(days: &[OfDay], mean: &Mean, between: f64) -> Option<Outlying<Q>> {
    let distances: Vec<f64> = days
        .iter()
        .map(|day| (day.value - mean.value) / libm::sqrt(day.variance + between))
        .collect();
    let squares = distances.iter().fold(0.0, |sum, off| sum + off * off);
    let deviation = libm::sqrt(squares / (days.len() as f64 - 1.0));
    let found = question(distances.iter().map(|off| off / deviation))?;
    if found.verdict != calibrate::Verdict::Outlier {
        return None;
    }
    let place = found.place.checked_sub(1)?;
    let out = days.get(place)?;
    // Of days that are equal to the last digit, the one that is a step of the scale off is the farthest.
    if libm::fabs(out.value - mean.value) <= OWN_SCATTER * libm::sqrt(out.variance) {
        return None;
    }
    let others: Vec<OfDay> = days
        .iter()
        .enumerate()
        .filter(|(at, _)| *at != place)
        .map(|(_, day)| day.clone())
        .collect();
    let without = Mean::of(&others, about_mean(&others)).value;
    Some(Outlying { day: out.day, value: Q::from_si(out.value), without: Q::from_si(without) })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::vec::Vec;

    use super::*;
    use crate::fault::Diagnose;
    use crate::quantity::Ratio;

    fn readings(list: &[(i32, f64, f64)]) -> Vec<Reading<Ratio>> {
        let of = |&(day, value, own): &(i32, f64, f64)| {
            Reading::new(Day::from_number(day), Ratio::from(value), Ratio::from(own))
        };
        list.iter().map(of).collect()
    }

    fn book(value: f64, unsure: f64) -> Measured<Ratio> {
        Measured::new(Ratio::from(value), Ratio::from(unsure))
    }

    fn near(got: f64, wanted: f64) {
        assert!((got / wanted - 1.0).abs() < 1e-9, "{got} for {wanted}");
    }

    const STEADY: [(i32, f64, f64); 4] =
        [(0, 9.9, 0.2), (1, 10.1, 0.2), (2, 10.0, 0.2), (3, 10.0, 0.2)];

    /// χ² = 0.5 of 3: nothing between the days; u = k 0.2/√4 with k = t(3, 95.45 %)/2 by scipy 1.17.1.
    #[test]
    fn four_days_by_hand() {
        let got = learn(&readings(&STEADY), None).unwrap();
        near(got.value.value, 10.0);
        near(got.uncertainty.value, 0.1 * 1.653_411_087_502_826);
        assert_eq!((got.days, got.readings, got.between), (4, 4, Ratio::from(0.0)));
        assert_eq!((got.verdict, got.with_book), (Verdict::New, false));
        assert_eq!((got.drift, got.outlying), (None, None));
    }

    #[test]
    fn the_book_is_one_more_observation() {
        let own = 0.1 * 1.653_411_087_502_826;
        let got = learn(&readings(&STEADY), Some(&book(10.2, 0.1))).unwrap();
        let share = 0.01 / (own * own + 0.01);
        near(got.value.value, 10.2 - 0.2 * share);
        near(got.uncertainty.value, 1.0 / libm::sqrt(1.0 / (own * own) + 100.0));
        assert_eq!((got.verdict, got.with_book), (Verdict::Agrees, true));
        near(got.of_days.value, 10.0);
    }

    #[test]
    fn what_is_shared_does_not_average_out() {
        let shared: Vec<_> = readings(&STEADY)
            .into_iter()
            .map(|reading| reading.sharing("spoon", Ratio::from(0.3)))
            .collect();
        let got = learn(&shared, None).unwrap();
        let own = 0.1 * 1.653_411_087_502_826;
        near(got.uncertainty.value, libm::sqrt(own * own + 0.09));
        // Half of the readings by one spoon, half by another.
        let two: Vec<_> = readings(&STEADY)
            .into_iter()
            .zip(["a", "a", "b", "b"])
            .map(|(reading, spoon)| reading.sharing(spoon, Ratio::from(0.3)))
            .collect();
        near(learn(&two, None).unwrap().uncertainty.value, libm::sqrt(own * own + 0.045));
    }

    #[rstest]
    #[case(None, Verdict::New)]
    #[case(Some(book(10.0, 0.4)), Verdict::Surer)]
    #[case(Some(book(10.0, 0.05)), Verdict::Agrees)]
    #[case(Some(book(10.9, 0.4)), Verdict::Differs)]
    #[case(Some(Measured::exact(Ratio::from(10.1))), Verdict::Surer)]
    #[case(Some(Measured::exact(Ratio::from(11.0))), Verdict::Differs)]
    fn a_verdict(#[case] book: Option<Measured<Ratio>>, #[case] verdict: Verdict) {
        assert_eq!(learn(&readings(&STEADY), book.as_ref()).unwrap().verdict, verdict);
    }

    // At the boundary a number is as good as the book's.
    #[rstest]
    #[case(10.5, 0.5, Some((10.0, 0.5)), Verdict::Agrees)]
    #[case(10.75, 0.5, Some((10.0, 0.5)), Verdict::Differs)]
    #[case(10.0, 0.5 * SURER, Some((10.0, 0.5)), Verdict::Surer)]
    #[case(10.5, 0.25, None, Verdict::Surer)]
    #[case(10.75, 0.25, None, Verdict::Differs)]
    fn a_verdict_at_its_boundary(
        #[case] value: f64,
        #[case] uncertainty: f64,
        #[case] prior: Option<(f64, f64)>,
        #[case] expected: Verdict,
    ) {
        assert_eq!(verdict(value, uncertainty, Some((10.0, prior))), expected);
    }

    #[test]
    fn a_book_that_is_sure_of_itself_is_no_observation() {
        let got = learn(&readings(&STEADY), Some(&book(10.1, 0.0))).unwrap();
        assert_eq!((got.with_book, got.verdict, got.value), (false, Verdict::Surer, got.of_days));
        for unsure in [-0.1, f64::INFINITY, f64::NAN] {
            let refused = learn(&readings(&STEADY), Some(&book(10.1, unsure))).unwrap_err();
            assert_eq!(refused, LearnError::BadBook);
            assert!(refused.help().contains("number"));
        }
        assert_eq!(learn::<Ratio>(&[], None), Err(LearnError::TooFewDays { days: 0 }));
    }

    /// Of 14 days 13 are equal and one is 3.25 of its ± off: 3.018 off the mean, G = 13/√14 = 3.474, where 2.755 is an
    /// outlier (two-sided at 1 %, of tables). The days scatter less than their ± says.
    #[test]
    fn a_day_is_far_out_against_the_scatter_of_the_others() {
        let list: Vec<_> =
            (0..14).map(|day| (day, if day == 5 { 10.325 } else { 10.0 }, 0.1)).collect();
        let got = learn(&readings(&list), None).unwrap();
        assert_eq!(got.outlying.map(|out| out.day.number()), Some(5));
        // A day that is unsure of 5 may be 3 off; one that is sure of 0.05 may not be 0.5 off.
        let of = |day| match day {
            2 => (day, 13.0, 5.0),
            5 => (day, 10.5, 0.05),
            _ => (day, 10.0, 0.05),
        };
        let got = learn(&readings(&(0..14).map(of).collect::<Vec<_>>()), None).unwrap();
        assert_eq!(got.outlying.map(|out| out.day.number()), Some(5));
    }

    #[test]
    fn a_bottle_that_was_changed_is_not_averaged_with_the_old_one() {
        let got = learn(&readings(&STEADY), Some(&book(12.0, 0.1))).unwrap();
        assert_eq!((got.with_book, got.verdict), (false, Verdict::Differs));
        near(got.value.value, 10.0);
    }

    /// Four days of 1.9 g and one of 1.8 g on a scale that shows 0.1 g: alone among equals, but no farther than its ±.
    #[test]
    fn one_step_of_the_scale_is_not_far_out() {
        let list = [(0, 1.9, 0.04), (1, 1.8, 0.04), (2, 1.9, 0.04), (3, 1.9, 0.04), (4, 1.9, 0.04)];
        assert_eq!(learn(&readings(&list), None).unwrap().outlying, None);
        let sharp = list.map(|(day, value, _)| (day, value, 0.01));
        assert!(learn(&readings(&sharp), None).unwrap().outlying.is_some());
    }

    #[test]
    fn a_day_far_out_is_questioned_and_stays() {
        let list: Vec<_> = [9.9, 10.1, 10.0, 10.0, 9.95, 10.05, 13.0].into();
        let list: Vec<_> = (0..).zip(list).map(|(day, value)| (day, value, 0.1)).collect();
        let got = learn(&readings(&list), None).unwrap();
        let out = got.outlying.unwrap();
        assert_eq!((out.day.number(), out.value.value), (6, 13.0));
        near(out.without.value, 10.0);
        assert!(got.value.value > 10.2 && got.between.value > 0.5);
    }

    #[test]
    fn a_trend_is_questioned() {
        let list: Vec<_> = (0..8).map(|day| (day, 10.0 + 0.1 * f64::from(day), 0.02)).collect();
        let drift = learn(&readings(&list), None).unwrap().drift.unwrap();
        near(drift.per_day.value, 0.1);
        near(drift.last.value, 10.7);
        let drift = learn(&readings(&list[..5]), None).unwrap().drift.unwrap();
        near(drift.last.value, 10.4);
        assert_eq!(learn(&readings(&list[..4]), None).unwrap().drift, None);
        let steady = learn(&readings(&STEADY), None).unwrap();
        assert_eq!(steady.drift, None);
    }

    #[rstest]
    #[case(&[], "learn-too-few-days")]
    #[case(&[(0, 1.0, 0.1), (0, 1.0, 0.1), (1, 1.0, 0.1), (2, 1.0, 0.1)], "learn-too-few-days")]
    #[case(&[(0, f64::NAN, 0.1)], "learn-bad-reading")]
    #[case(&[(0, 1.0, 0.0)], "learn-bad-reading")]
    #[case(&[(0, 1.0, f64::INFINITY)], "learn-bad-reading")]
    #[case(&[(0, 1e300, 0.1), (1, 1.0, 0.1), (2, 1.0, 0.1), (3, 1.0, 0.1)], "learn-bad-reading")]
    #[case(&[(0, 1.0, 1e-300), (1, 2.0, 1e-300), (2, 1.0, 0.1), (3, 1.0, 0.1)], "learn-bad-reading")]
    fn refuses(#[case] list: &[(i32, f64, f64)], #[case] code: &str) {
        assert_eq!(learn(&readings(list), None).unwrap_err().code(), code);
    }

    #[test]
    fn refuses_a_book_that_cannot_be() {
        let bad = book(f64::NAN, 0.1);
        assert_eq!(learn(&readings(&STEADY), Some(&bad)).unwrap_err(), LearnError::BadBook);
    }

    /// The mean is 0; a book that is just two of the common standard uncertainties off does not disagree.
    #[test]
    fn at_two_standard_uncertainties_the_book_agrees() {
        let list = readings(&[(0, -0.1, 0.2), (1, 0.1, 0.2), (2, 0.0, 0.2), (3, 0.0, 0.2)]);
        let alone = learn(&list, None).unwrap();
        let unsure = alone.uncertainty.value;
        let far = DISAGREE * libm::sqrt(unsure * unsure + 0.01);
        assert_eq!(alone.of_days.value, 0.0);
        for (value, agrees) in [(far, true), (far * (1.0 + 1e-12), false)] {
            assert_eq!(learn(&list, Some(&book(value, 0.1))).unwrap().with_book, agrees);
        }
    }

    proptest! {
        #[test]
        fn the_order_of_effects_changes_no_bit(effects in [0.1..9.0_f64, 0.1..9.0_f64, 0.1..9.0_f64]) {
            let shared = |order: [usize; 3]| {
                let sharing = |reading: Reading<Ratio>| order.into_iter().fold(reading, |reading, of| {
                    reading.sharing(["a", "b", "c"][of], Ratio::from(effects[of]))
                });
                learn(&readings(&STEADY).into_iter().map(sharing).collect::<Vec<_>>(), None)
            };
            prop_assert_eq!(shared([0, 1, 2]), shared([2, 1, 0]));
        }

        #[test]
        fn the_order_of_readings_changes_no_bit(
            list in prop::collection::vec((0..9_i32, 9.0..11.0_f64, 0.01..1.0_f64), 4..40),
            seed in prop::collection::vec(any::<u32>(), 40),
        ) {
            let source = |place: usize| if place.is_multiple_of(3) { "one" } else { "other" };
            let all: Vec<_> = readings(&list)
                .into_iter()
                .enumerate()
                .map(|(place, reading)| reading.sharing(source(place), Ratio::from(0.1)))
                .collect();
            let mut keyed: Vec<_> = all.iter().cloned().zip(seed).collect();
            keyed.sort_by_key(|(_, key)| *key);
            let shuffled: Vec<_> = keyed.into_iter().map(|(reading, _)| reading).collect();
            let book = book(10.1, 0.3);
            prop_assert_eq!(learn(&all, Some(&book)), learn(&shuffled, Some(&book)));
        }

        /// What was learned, learned again from the same readings, is not offered again.
        #[test]
        fn the_same_records_teach_once(
            list in prop::collection::vec((9.0..11.0_f64, 0.01..1.0_f64), 4..20),
            value in 8.0..12.0_f64,
            unsure in 0.01..2.0_f64,
        ) {
            let list: Vec<_> = (0..).zip(list).map(|(day, (x, u))| (day, x, u)).collect();
            let first = learn(&readings(&list), Some(&book(value, unsure))).unwrap();
            let now = book(first.value.value, first.uncertainty.value);
            prop_assert_eq!(learn(&readings(&list), Some(&now)).unwrap().verdict, Verdict::Agrees);
        }
    }
}

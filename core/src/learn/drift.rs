//! A trend over the days.
//!
//! The slope b of the weighted straight line through the values of the days, with the variance between days that the
//! line leaves, is a trend where |b| > t u(b), t that of a level of 99 % with n − 2 degrees of freedom (the test of a
//! slope in ISO Guide 35:2017 for the stability of a material, there at 95 %; from memory). So one steady number in a
//! hundred is questioned.

use super::between::{Line, OfDay, about_line};
use super::{LEAST_DAYS_OF_A_TREND, SIGNIFICANT};
use crate::quantity::Measurable;
use crate::uncertainty::student_t;

/// A trend that is not chance. The estimate is that of all days all the same.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Drift<Q> {
    /// Change from one day of the calendar to the next; below zero where the number falls.
    pub per_day: Q,
    /// Its standard uncertainty.
    pub uncertainty: Q,
    /// The value of the line on the first day.
    pub first: Q,
    /// The value of the line on the last day.
    pub last: Q,
}

/// The trend of `days`, which are sorted, where it is significant.
pub(super) fn drift<Q: Measurable>(days: &[OfDay]) -> Option<Drift<Q>> {
    let (first, last) = (days.first()?.day, days.last()?.day);
    if days.len() < LEAST_DAYS_OF_A_TREND {
        return None;
    }
    let line = Line::of(days, about_line(days));
    let uncertainty = libm::sqrt(line.slope_variance);
    let critical = student_t(SIGNIFICANT, days.len() as f64 - 2.0);
    let on = |day: super::Day| {
        Q::from_si(line.mean.value + line.slope * (f64::from(day.number()) - line.at))
    };
    (libm::fabs(line.slope) > critical * uncertainty).then(|| Drift {
        per_day: Q::from_si(line.slope),
        uncertainty: Q::from_si(uncertainty),
        first: on(first),
        last: on(last),
    })
}

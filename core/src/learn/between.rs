//! Means and straight lines through the values of days, and how the days scatter about them.

use super::Day;

/// What the readings of a day say, in SI units.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct OfDay {
    pub(super) day: Day,
    pub(super) value: f64,
    pub(super) variance: f64,
}

impl OfDay {
    fn weight(&self, between: f64) -> f64 {
        1.0 / (self.variance + between)
    }
}

/// The weighted mean of days that scatter by a variance `between` them.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Mean {
    pub(super) value: f64,
    /// Σ w.
    pub(super) weight: f64,
}

impl Mean {
    pub(super) fn of(days: &[OfDay], between: f64) -> Self {
        let (mut weight, mut sum) = (0.0, 0.0);
        for day in days {
            weight += day.weight(between);
            sum += day.weight(between) * day.value;
        }
        Self { value: sum / weight, weight }
    }

    fn misfit(&self, days: &[OfDay], between: f64) -> f64 {
        days.iter().fold(0.0, |sum, day| {
            let off = day.value - self.value;
            sum + day.weight(between) * off * off
        })
    }
}

/// The weighted straight line x = `value` + `slope` (t − `at`) through days, `at` their weighted mean day.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Line {
    pub(super) at: f64,
    pub(super) mean: Mean,
    /// Per day.
    pub(super) slope: f64,
    /// Its variance, 1/Σ w (t − at)².
    pub(super) slope_variance: f64,
}

impl Line {
    pub(super) fn of(days: &[OfDay], between: f64) -> Self {
        let mean = Mean::of(days, between);
        let number = |day: &OfDay| f64::from(day.day.number());
        let at =
            days.iter().fold(0.0, |sum, day| sum + day.weight(between) * number(day)) / mean.weight;
        let (mut tt, mut tx) = (0.0, 0.0);
        for day in days {
            let from = number(day) - at;
            tt += day.weight(between) * from * from;
            tx += day.weight(between) * from * (day.value - mean.value);
        }
        Self { at, mean, slope: tx / tt, slope_variance: 1.0 / tt }
    }

    fn misfit(&self, days: &[OfDay], between: f64) -> f64 {
        days.iter().fold(0.0, |sum, day| {
            let line = self.mean.value + self.slope * (f64::from(day.day.number()) - self.at);
            let off = day.value - line;
            sum + day.weight(between) * off * off
        })
    }
}

/// Variance between days about their mean (R. C. Paule and J. Mandel, J. Res. NBS 87 (1982) 377).
pub(super) fn about_mean(days: &[OfDay]) -> f64 {
    between(&|between| Mean::of(days, between).misfit(days, between), days.len() as f64 - 1.0, days)
}

/// The same about a straight line.
pub(super) fn about_line(days: &[OfDay]) -> f64 {
    between(&|between| Line::of(days, between).misfit(days, between), days.len() as f64 - 2.0, days)
}

/// The least variance between days that brings their `misfit` down to its degrees of freedom.
fn between(misfit: &dyn Fn(f64) -> f64, freedom: f64, days: &[OfDay]) -> f64 {
    if !(freedom > 0.0 && misfit(0.0) > freedom) {
        return 0.0;
    }
    // The misfit at τ² is at most Σ (x − x̄)²/τ² about the plain mean.
    let mean = days.iter().fold(0.0, |sum, day| sum + day.value) / days.len() as f64;
    let squares = days.iter().fold(0.0, |sum, day| sum + (day.value - mean) * (day.value - mean));
    let (mut low, mut high) = (0.0, squares / freedom);
    // So many halvings leave nothing of an f64 that is not far below the scatter itself.
    for _ in 0..80 {
        let middle = 0.5 * (low + high);
        if misfit(middle) > freedom { low = middle } else { high = middle }
    }
    0.5 * (low + high)
}

#[cfg(test)]
mod tests {
    use std::vec::Vec;

    use super::*;

    fn days(list: &[(i32, f64, f64)]) -> Vec<OfDay> {
        let of = |&(day, value, u): &(i32, f64, f64)| OfDay {
            day: Day::from_number(day),
            value,
            variance: u * u,
        };
        list.iter().map(of).collect()
    }

    #[test]
    fn a_mean_by_hand() {
        // Weights 1 and 1/4: (10 + 20/4)/1.25 = 12.
        let mean = Mean::of(&days(&[(0, 10.0, 1.0), (1, 20.0, 2.0)]), 0.0);
        assert_eq!((mean.value, mean.weight), (12.0, 1.25));
    }

    #[test]
    fn days_that_scatter_as_their_readings_do_have_nothing_between_them() {
        let list = days(&[(0, 9.0, 1.0), (1, 10.0, 1.0), (2, 11.0, 1.0)]);
        assert_eq!(about_mean(&list), 0.0);
    }

    /// Readings without an uncertainty of their own: τ² is the plain variance.
    #[test]
    fn the_scatter_of_exact_readings_is_their_variance() {
        let list = days(&[(0, 9.0, 1e-9), (1, 10.0, 1e-9), (2, 13.0, 1e-9)]);
        assert!((about_mean(&list) - 13.0 / 3.0).abs() < 1e-9);
        // (2² + 2²)/1 of two days; one alone has none.
        let two = days(&[(0, 9.0, 1e-9), (1, 13.0, 1e-9)]);
        assert!((about_mean(&two) - 8.0).abs() < 1e-9);
        assert_eq!(about_mean(&two[..1]), 0.0);
    }

    /// JCGM 100:2008, H.3: the correction b of a thermometer at the temperatures t, a line by least squares. Its times
    /// are here thousandths of a degree above 20 °C; y2 = 0.002 18 and s(y2) = 0.000 67 per degree, and at 30 °C
    /// b = −0.1494 with u = 0.0041. The digits beyond the published are those of GTC 1.5.1's line_fit.
    #[test]
    fn the_published_calibration_of_a_thermometer() {
        const READINGS: [(i32, f64); 11] = [
            (1521, -0.171),
            (2012, -0.169),
            (2512, -0.166),
            (3003, -0.159),
            (3507, -0.164),
            (3999, -0.165),
            (4513, -0.156),
            (5002, -0.157),
            (5503, -0.159),
            (6010, -0.161),
            (6511, -0.160),
        ];
        let list: Vec<_> = READINGS.iter().map(|&(t, b)| (t, b, 1e-9)).collect();
        let list = days(&list);
        let line = Line::of(&list, about_line(&list));
        let near = |got: f64, wanted: f64| {
            assert!((got / wanted - 1.0).abs() < 1e-7, "{got} for {wanted}")
        };
        near(line.slope * 1e3, 0.002_182_697_74);
        near(libm::sqrt(line.slope_variance) * 1e3, 0.000_667_938_773_2);
        let from = 10_000.0 - line.at;
        near(line.mean.value + line.slope * from, -0.149_376_812_7);
        let variance = 1.0 / line.mean.weight + from * from * line.slope_variance;
        near(libm::sqrt(variance), 0.004_138_595_753);
        let intercept = line.mean.value - line.slope * line.at;
        near(intercept, -0.171_203_790_1);
        near(
            libm::sqrt(1.0 / line.mean.weight + line.at * line.at * line.slope_variance),
            0.002_877_597_835,
        );
    }
}

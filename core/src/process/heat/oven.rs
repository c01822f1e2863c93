//! The power that reaches a pot, from the shop's own timings.

use uom::si::power::watt;
use uom::si::temperature_interval::kelvin;
use uom::si::time::second;

use super::{HeatError, Load, beyond};
use crate::check::is_positive;
use crate::parameter::{Check, Parameter};
use crate::quantity::{Mass, Power, Ratio, TemperatureInterval, ThermodynamicTemperature, Time};

/// How far above its window nobody heats a plastisol to time it, in K: common practice, no source.
const FAR_ABOVE: f64 = 30.0;

/// Amounts within this factor are one amount: a line through them would be made of their scatter. Common
/// practice, no source.
const ONE_AMOUNT: f64 = 1.2;

/// m₀ of a single amount, as a share of it (source: [`Oven`]).
const SINGLE: f64 = 1.0 / 3.0;

/// Relative scatter of timings (source: [`Oven`]), and its weight in degrees of freedom.
const PRINTED_SCATTER: f64 = 0.06;
const PRINTED_FREEDOM: f64 = 2.0;

/// Error of a single amount at the farthest reach, relative (source: [`Oven`]).
const SINGLE_ERROR: f64 = 0.05;

/// The smallest margin of the power, however well the timings agree: common practice, no source.
const LEAST_MARGIN: f64 = 0.05;

/// m₀ of a rated power in kg, its relative standard uncertainty, and how much more than rated an oven may give:
/// common practice, no source. Water has an m₀ of some 110 g, an oil more.
const RATED_HALF: f64 = 0.15;
const RATED_UNCERTAINTY: f64 = 0.3;
const RATED_MOST: f64 = 1.1;

/// A timing this many standard uncertainties off what the others make of it is asked about.
const QUESTIONED: f64 = 3.0;

/// With more timings than this, none is compared with the others.
const MOST_COMPARED: usize = 100;

/// One heating that the shop has timed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Timing {
    /// The load in the oven.
    pub load: Load,
    /// The oven's setting, as a share of full power.
    pub setting: Ratio,
    /// The temperature before.
    pub start: ThermodynamicTemperature,
    /// The temperature after, stirred.
    pub end: ThermodynamicTemperature,
    /// How long the oven ran.
    pub duration: Time,
}

/// An oven at one setting, as its timings show it or as it is rated.
///
/// A microwave oven puts more power into a larger load, leveling off: P(m) = P∞ m/(m + m₀). So a heating of
/// the heat Q takes t = Q (a + b/m), a = 1/P∞ and b = m₀/P∞, both zero or more: for equal rises, a fixed part
/// and a proportional one.
///
/// | timings | a and b | shortest plausible time, inside the reach |
/// | --- | --- | --- |
/// | of one amount m₁ | m₀ = m₁/3: t = t₁ (3x + 1)/4, x = m/m₁ | m₀ = 0 below m₁: t₁ x; m₀ = m₁ above: t₁ (1 + x)/2; and 2 u less |
/// | of unlike amounts | least squares of the relative residuals, a ≥ 0, b ≥ 0 | 2 u less |
/// | none, a rated power | P∞ as rated, m₀ = 150 g: a guess | all of the rated power and a tenth more |
///
/// The standard uncertainty u of one more heating has the scatter of the timings in it and the leverage of the
/// amount. Few timings do not show their scatter: that of the printed series of cooking times is
/// pooled with it, 6 % with the weight of two degrees of freedom. Two timings then come out at 7 to 9 %
/// between them and at 11 % at 1.6 times the larger, three that fit at 5 to 7 %; leaving each timing out of
/// eight printed series in turn gave 8 % inside and 7 % up to twice outside (operating manuals and recipe
/// pages, in steps of 5 to 30 s; no plastisol among them). One amount alone was off by 5 % at 1.6 times it.
///
/// Beyond the reach, 1.6 times the amounts timed, [`Oven::time`] is an error. What a burst may do at most is
/// still known, since a load never takes up more power than a larger one, and no more per mass than a smaller
/// one: [`Oven::gate`] is then computed by that.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Oven {
    setting: Ratio,
    fit: Fit,
    timings: u32,
    misfit: Option<Misfit>,
    hottest: Option<(usize, ThermodynamicTemperature)>,
}

/// Whether an amount is one that was timed.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Reach {
    /// Between the smallest and the largest amount timed; or nothing was timed.
    Within,
    /// Outside them.
    Beyond {
        /// The amount over the largest timed, or the smallest timed over the amount: above 1.
        factor: Ratio,
        /// Whether the amount is the larger one.
        larger: bool,
    },
}

/// How long a load takes without a break.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Heating {
    /// The expected time.
    pub time: Time,
    /// Its standard uncertainty for one more heating.
    pub uncertainty: Time,
    /// Whether the amount is one that was timed.
    pub reach: Reach,
}

/// A timing that does not fit the others. It counts all the same.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Misfit {
    /// Which, counted from 1.
    pub place: usize,
    /// How long it took.
    pub took: Time,
    /// How long it takes by the others.
    pub expected: Time,
}

/// t/Q = a + b/m, in SI units, and how sure it is.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Fit {
    a: f64,
    b: f64,
    basis: Basis,
    least: Mass,
    most: Mass,
}

#[derive(Debug, Clone, Copy, PartialEq)]
enum Basis {
    /// Timings of one amount: that, in kg, and the variance of one more of it.
    One { mass: f64, variance: f64 },
    /// Timings of unlike amounts: their scatter as a variance, and the inverse of the normal matrix.
    Line { variance: f64, aa: f64, ab: f64, bb: f64 },
    /// A rated power.
    Rated,
}

impl Oven {
    /// The oven that the `timings` show, all of them at one setting (equations: [`Oven`]).
    ///
    /// # Errors
    /// [`HeatError::NoTimings`]; [`HeatError::MixedSettings`]; [`HeatError::NotHotter`] or [`HeatError::Parameters`], with
    /// the index of the timing; [`HeatError::Power`].
    pub fn from_timings(timings: &[Timing]) -> Result<Self, HeatError> {
        let first = timings.first().ok_or(HeatError::NoTimings)?;
        let mut check = Check::new();
        check.count(Parameter::Timings, timings.len());
        for (index, timing) in timings.iter().enumerate() {
            timing.check(index, &mut check);
        }
        check.finish()?;
        let mut hottest = (1, first.end);
        for (timing, place) in timings.iter().zip(1..) {
            timing.is_sound(first.setting)?;
            hottest = if timing.end > hottest.1 { (place, timing.end) } else { hottest };
        }
        let fit = Fit::of(timings, None)?;
        check_power(fit.per_joule(fit.least.value))?;
        Ok(Self {
            setting: first.setting,
            fit,
            timings: u32::try_from(timings.len()).unwrap_or(u32::MAX),
            misfit: misfit(timings),
            hottest: Some(hottest),
        })
    }

    /// An oven that is rated at `power`, at a `setting` as a share of it: a first guess, until a pot is timed.
    ///
    /// The rated output is what reaches a liter of water (IEC 60705), not what the oven draws.
    ///
    /// # Errors
    /// [`HeatError::Parameters`] for a power outside 50 W to 10 kW or a setting outside 0 to 100 %.
    pub fn rated(power: Power, setting: Ratio) -> Result<Self, HeatError> {
        let mut check = Check::new();
        check.number(Parameter::OvenPower, power.value).number(Parameter::Setting, setting.value);
        check.finish()?;
        let a = 1.0 / (power * setting).value;
        let nothing = Mass::default();
        let fit = Fit { a, b: a * RATED_HALF, basis: Basis::Rated, least: nothing, most: nothing };
        Ok(Self { setting, fit, timings: 0, misfit: None, hottest: None })
    }

    /// The setting that all of this holds for, as a share of full power.
    #[must_use]
    pub fn setting(&self) -> Ratio {
        self.setting
    }

    /// The power that reaches mix and vessel of a `load`, P(m) = m/(a m + b).
    #[must_use]
    pub fn power(&self, load: Load) -> Power {
        Power::new::<watt>(1.0 / self.fit.per_joule(load.mass().value))
    }

    /// The relative standard uncertainty of that for one more heating.
    #[must_use]
    pub fn uncertainty(&self, load: Load) -> Ratio {
        Ratio::from(self.fit.uncertainty(load.mass().value))
    }

    /// The highest power that may reach a `load`: that of the shortest plausible time, and of the load's size
    /// alone where it is beyond the reach of the timings.
    #[must_use]
    pub fn most_power(&self, load: Load) -> Power {
        Power::new::<watt>(1.0 / self.fit.shortest(load.mass()))
    }

    /// How many timings it rests on; none for a rated power.
    #[must_use]
    pub fn timings(&self) -> u32 {
        self.timings
    }

    /// Whether nothing was timed: a rated power is a first guess.
    #[must_use]
    pub fn is_guess(&self) -> bool {
        self.timings == 0
    }

    /// The smallest and the largest mass of mix that was timed; `None` for a rated power.
    #[must_use]
    pub fn timed(&self) -> Option<(Mass, Mass)> {
        (!self.is_guess()).then_some((self.fit.least, self.fit.most))
    }

    /// Whether the amount of `load` is one that was timed.
    #[must_use]
    pub fn reach(&self, load: Load) -> Reach {
        match self.timed() {
            Some((least, most)) => beyond(load.mass(), least, most),
            None => Reach::Within,
        }
    }

    /// The timing that is farthest off what the others make of it, where that is more than three standard
    /// uncertainties; it counts all the same.
    #[must_use]
    pub fn questioned(&self) -> Option<Misfit> {
        self.misfit
    }

    /// The timing that ended hottest, where that is far above the window's `most`: its place, counted from 1,
    /// and its end. It would have scorched what was timed, so it may be a misreading, such as °F for °C.
    #[must_use]
    pub fn scorched(
        &self,
        most: ThermodynamicTemperature,
    ) -> Option<(usize, ThermodynamicTemperature)> {
        let far = most + TemperatureInterval::new::<kelvin>(FAR_ABOVE);
        self.hottest.filter(|(_, end)| *end > far)
    }

    /// How long `load` takes from `start` to `end`, without a break: t = Q (a + b/m).
    ///
    /// The amount may be outside those that were timed by a factor of [`super::FARTHEST_REACH`]; the
    /// result then has the factor.
    ///
    /// # Errors
    /// [`HeatError::NotHotter`], [`HeatError::Parameters`], and [`HeatError::OutOfReach`] farther out.
    pub fn time(
        &self,
        load: Load,
        start: ThermodynamicTemperature,
        end: ThermodynamicTemperature,
    ) -> Result<Heating, HeatError> {
        let mut check = Check::new();
        check.number(Parameter::HeatedFrom, start.value).number(Parameter::HeatedTo, end.value);
        check.finish()?;
        check_hotter(start, end)?;
        let reach = self.reach(load);
        if let (Reach::Beyond { factor, .. }, Some((least, most))) = (reach, self.timed())
            && is_too_far(factor)
        {
            return Err(HeatError::OutOfReach { wanted: load.mass(), least, most });
        }
        let time: Time = load.heat(start, end) / self.power(load);
        Ok(Heating { time, uncertainty: time * self.uncertainty(load), reach })
    }
}

pub(super) fn is_too_far(factor: Ratio) -> bool {
    factor.value > super::FARTHEST_REACH * (1.0 + 1e-9)
}

impl Fit {
    /// The fit to the `timings` but the one at the index `without`; each is one that was checked.
    fn of(timings: &[Timing], without: Option<usize>) -> Result<Self, HeatError> {
        let taken = || {
            let all = timings.iter().enumerate().filter(|(index, _)| Some(*index) != without);
            all.map(|(_, timing)| (timing.load.mass().value, timing.seconds_per_joule()))
        };
        let (mut n, mut sum) = (0.0, 0.0);
        let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
        for (mass, _) in taken() {
            n += 1.0;
            sum += mass;
            least = least.min(mass);
            most = most.max(mass);
        }
        if n == 0.0 {
            return Err(HeatError::NoTimings);
        }
        let mass = sum / n;
        let (a, b, basis) = if most <= least * ONE_AMOUNT {
            // Each timing is brought to the mean amount before the mean is taken.
            let share = |at: f64| (1.0 + SINGLE * mass / at) / (1.0 + SINGLE);
            let mean = taken().map(|(at, y)| y / share(at)).sum::<f64>() / n;
            let misfits = taken().map(|(at, y)| y / (mean * share(at)) - 1.0);
            let variance = pooled(misfits.map(|r| r * r).sum(), n - 1.0) * (1.0 + 1.0 / n);
            let a = mean / (1.0 + SINGLE);
            (a, a * SINGLE * mass, Basis::One { mass, variance })
        } else {
            line(taken, mass, n)
        };
        Ok(Self {
            a,
            b,
            basis,
            least: Mass { value: least, ..Mass::default() },
            most: Mass { value: most, ..Mass::default() },
        })
    }

    /// t/Q at a mass in kg.
    fn per_joule(&self, mass: f64) -> f64 {
        self.a + self.b / mass
    }

    /// Relative standard uncertainty of one more heating at a mass in kg.
    fn uncertainty(&self, mass: f64) -> f64 {
        match self.basis {
            Basis::One { mass: timed, variance } => {
                let farthest = libm::log(super::FARTHEST_REACH);
                let off = SINGLE_ERROR * libm::log(mass / timed) / farthest;
                libm::sqrt(variance + off * off)
            }
            Basis::Line { variance, aa, ab, bb } => {
                let y = self.per_joule(mass);
                let (ga, gb) = (1.0 / y, 1.0 / (mass * y));
                let leverage = aa * ga * ga + 2.0 * ab * ga * gb + bb * gb * gb;
                libm::sqrt(variance * (1.0 + leverage.max(0.0)))
            }
            Basis::Rated => RATED_UNCERTAINTY,
        }
    }

    /// The shortest plausible t/Q at a mass.
    fn shortest(&self, mass: Mass) -> f64 {
        match beyond(mass, self.least, self.most) {
            _ if self.basis == Basis::Rated => self.a / RATED_MOST,
            Reach::Beyond { factor, larger } if is_too_far(factor) => {
                if larger {
                    self.shortest_inside(self.most.value) / factor.value
                } else {
                    self.shortest_inside(self.least.value)
                }
            }
            _ => self.shortest_inside(mass.value),
        }
    }

    fn shortest_inside(&self, mass: f64) -> f64 {
        match self.basis {
            Basis::One { mass: timed, variance } => {
                let bound = if mass < timed { 1.0 } else { 0.5 + 0.5 * timed / mass };
                self.per_joule(timed) * bound * lower_edge(libm::sqrt(variance))
            }
            Basis::Line { .. } | Basis::Rated => {
                self.per_joule(mass) * lower_edge(self.uncertainty(mass))
            }
        }
    }
}

/// The line through points of unlike amounts, by least squares of the relative residuals
/// Σ ((a + b/m)/y − 1)², a ≥ 0 and b ≥ 0. The mean amount is the unit, for a matrix of even size.
fn line<I: Iterator<Item = (f64, f64)>>(
    points: impl Fn() -> I,
    unit: f64,
    n: f64,
) -> (f64, f64, Basis) {
    let (mut aa, mut ab, mut bb, mut a1, mut b1) = (0.0, 0.0, 0.0, 0.0, 0.0);
    for (mass, y) in points() {
        let (ga, gb) = (1.0 / y, unit / (mass * y));
        aa += ga * ga;
        ab += ga * gb;
        bb += gb * gb;
        a1 += ga;
        b1 += gb;
    }
    let determinant = aa * bb - ab * ab;
    let (a, b) = ((a1 * bb - b1 * ab) / determinant, (b1 * aa - a1 * ab) / determinant);
    // Where one bound binds, the other coefficient is all there is to fit.
    let (a, b, free, [aa, ab, bb]) = if a <= 0.0 {
        (0.0, b1 / bb, 1.0, [0.0, 0.0, 1.0 / bb])
    } else if b < 0.0 {
        (a1 / aa, 0.0, 1.0, [1.0 / aa, 0.0, 0.0])
    } else {
        (a, b, 2.0, [bb, -ab, aa].map(|x| x / determinant))
    };
    let squares = points().map(|(mass, y)| (a + b * unit / mass) / y - 1.0);
    let variance = pooled(squares.map(|r| r * r).sum(), n - free);
    let (ab, bb) = (ab * unit, bb * unit * unit);
    (a, b * unit, Basis::Line { variance, aa, ab, bb })
}

/// A variance from a sum of `squares` with these degrees of `freedom`, pooled with the printed scatter.
fn pooled(squares: f64, freedom: f64) -> f64 {
    let printed = PRINTED_FREEDOM * PRINTED_SCATTER * PRINTED_SCATTER;
    (printed + squares) / (PRINTED_FREEDOM + freedom)
}

/// Two standard uncertainties below, as a factor: 1 − 2u, and no less than 1/(1 + 4u), which is above zero
/// however large u is. Never nearer than the smallest margin.
fn lower_edge(uncertainty: f64) -> f64 {
    let edge = (1.0 - 2.0 * uncertainty).max(1.0 / (1.0 + 4.0 * uncertainty));
    edge.min(1.0 / (1.0 + LEAST_MARGIN))
}

/// The timing that fits the others worst, where that is worth a question.
fn misfit(timings: &[Timing]) -> Option<Misfit> {
    if timings.len() > MOST_COMPARED {
        return None;
    }
    let mut worst: Option<(f64, Misfit)> = None;
    for (index, timing) in timings.iter().enumerate() {
        let Ok(others) = Fit::of(timings, Some(index)) else { continue };
        let mass = timing.load.mass().value;
        let expected = timing.duration * (others.per_joule(mass) / timing.seconds_per_joule());
        let off = libm::fabs((timing.duration / expected).value - 1.0) / others.uncertainty(mass);
        if off > worst.map_or(QUESTIONED, |(most, _)| most) {
            let place = index.saturating_add(1);
            worst = Some((off, Misfit { place, took: timing.duration, expected }));
        }
    }
    worst.map(|(_, misfit)| misfit)
}

/// Whether an oven can put one joule into a pot in `per_joule` seconds.
fn check_power(per_joule: f64) -> Result<(), HeatError> {
    if is_positive(per_joule) {
        Ok(())
    } else {
        Err(HeatError::Power { power: Power::new::<watt>(1.0 / per_joule) })
    }
}

impl Timing {
    /// Whether its numbers, at this index of a list, are in their ranges.
    fn check(&self, index: usize, check: &mut Check) {
        check
            .element(Parameter::Setting, index, self.setting.value)
            .element(Parameter::TimedFrom, index, self.start.value)
            .element(Parameter::TimedTo, index, self.end.value)
            .element(Parameter::TimedTime, index, self.duration.value);
    }

    /// Whether it is a heating, at `setting`.
    fn is_sound(&self, setting: Ratio) -> Result<(), HeatError> {
        if self.setting != setting {
            return Err(HeatError::MixedSettings { first: setting, other: self.setting });
        }
        check_hotter(self.start, self.end)?;
        check_power(self.seconds_per_joule())
    }

    fn seconds_per_joule(&self) -> f64 {
        self.duration.get::<second>() / self.load.heat(self.start, self.end).value
    }
}

fn check_hotter(
    start: ThermodynamicTemperature,
    end: ThermodynamicTemperature,
) -> Result<(), HeatError> {
    if end > start { Ok(()) } else { Err(HeatError::NotHotter { start, end }) }
}

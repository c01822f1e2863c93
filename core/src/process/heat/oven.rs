//! The power that reaches a pot, from the shop's own timings.

use uom::si::power::watt;
use uom::si::temperature_interval::kelvin;
use uom::si::time::second;

use super::load::check;
use super::{HeatError, Load, beyond, check_temperature, rise};
use crate::calibrate::outlier::{Questioned, question};
use crate::check::is_positive;
use crate::quantity::{Mass, Power, Ratio, TemperatureInterval, ThermodynamicTemperature, Time};

/// Student's t for a coverage of 95.45 %, by degrees of freedom from 1 on: JCGM 100, Table G.2 (from
/// memory). Beyond the table its last value is kept, which is 1 % to 14 % too large.
const STUDENT_T: [f64; 10] = [13.97, 4.53, 3.31, 2.87, 2.65, 2.52, 2.43, 2.37, 2.32, 2.28];

/// How far above its window nobody heats a plastisol to time it, in K: common practice, no source.
const FAR_ABOVE: f64 = 30.0;

/// One heating that the shop has timed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Timing {
    /// What stood in the oven.
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

/// An oven at one setting, as its timings show it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Oven {
    setting: Ratio,
    power: Power,
    scatter: Option<Ratio>,
    timings: u32,
    least: Mass,
    most: Mass,
    questioned: Option<Questioned>,
    hottest: (usize, ThermodynamicTemperature),
}

/// Whether an amount is one that was timed.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Reach {
    /// Between the least and the greatest amount timed.
    Within,
    /// Outside them: the power may be different, by the same factor at worst.
    Beyond {
        /// The amount over the greatest timed, or the least timed over the amount: 1 to
        /// [`super::FARTHEST_REACH`].
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
    /// Its standard uncertainty for one more heating, from the scatter of the timings; `None` where
    /// one timing alone shows none. What the reach adds is not in it.
    pub uncertainty: Option<Time>,
    /// Whether the amount is one that was timed.
    pub reach: Reach,
}

impl Oven {
    /// The oven that the `timings` show, all of them at one setting.
    ///
    /// The model is t = Q/P with Q = (m c_p + C_vessel)(T_end − T_start). Timings scatter in proportion
    /// to their length (the thermometer, the stirring, the mains), so the least squares are those of
    /// the relative residuals, Σ(t_i/Q_i − 1/P)², which makes 1/P the mean of t_i/Q_i. Its relative
    /// standard uncertainty is s/√n with s the relative experimental standard deviation of t_i/Q_i
    /// (JCGM 100, 4.2.2 and 4.2.3).
    ///
    /// # Errors
    /// [`HeatError::NoTimings`]; [`HeatError::MixedSettings`]; [`HeatError::Setting`] outside 0 to
    /// 100 %; [`HeatError::NotHotter`], [`HeatError::Temperature`] or [`HeatError::OutOfRange`] for a
    /// timing that is none.
    pub fn from_timings(timings: &[Timing]) -> Result<Self, HeatError> {
        let first = timings.first().ok_or(HeatError::NoTimings)?;
        let (mut sum, mut least, mut most) = (0.0, first.load.mass(), first.load.mass());
        let mut hottest = (1, first.end);
        for (timing, place) in timings.iter().zip(1..) {
            hottest = if timing.end > hottest.1 { (place, timing.end) } else { hottest };
            sum += timing.per_joule(first.setting)?;
            let mass = timing.load.mass();
            least = if mass < least { mass } else { least };
            most = if mass > most { mass } else { most };
        }
        let n = timings.len() as f64;
        let mean = sum / n;
        let mut squares = 0.0;
        for timing in timings {
            let residual = timing.per_joule(first.setting)? / mean - 1.0;
            squares += residual * residual;
        }
        let scatter = (n > 1.0).then(|| Ratio::from(libm::sqrt(squares / (n - 1.0))));
        let distance = |timing: &Timing, s: Ratio| {
            Some((timing.per_joule(first.setting).ok()? / mean - 1.0) / s.value)
        };
        let questioned =
            scatter.and_then(|s| question(timings.iter().filter_map(|timing| distance(timing, s))));
        Ok(Self {
            setting: first.setting,
            power: Power::new::<watt>(1.0 / mean),
            scatter,
            timings: u32::try_from(timings.len()).unwrap_or(u32::MAX),
            least,
            most,
            questioned,
            hottest,
        })
    }

    /// The setting that all of this holds for, as a share of full power.
    #[must_use]
    pub fn setting(&self) -> Ratio {
        self.setting
    }

    /// The power that reaches mix and vessel.
    #[must_use]
    pub fn power(&self) -> Power {
        self.power
    }

    /// The standard uncertainty of the power, P·s/√n; `None` for a single timing.
    #[must_use]
    pub fn power_uncertainty(&self) -> Option<Power> {
        Some(self.power * self.scatter? / libm::sqrt(f64::from(self.timings)))
    }

    /// How many timings it rests on.
    #[must_use]
    pub fn timings(&self) -> u32 {
        self.timings
    }

    /// The least and the greatest mass of mix that was timed.
    #[must_use]
    pub fn timed(&self) -> (Mass, Mass) {
        (self.least, self.most)
    }

    /// The timing that does not fit the others, by Grubbs' test on t_i/Q_i; it counts all the same.
    #[must_use]
    pub fn questioned(&self) -> Option<Questioned> {
        self.questioned
    }

    /// The timing that ended hottest, where that is far above the window's `most`: its place, counted from 1,
    /// and its end. It would have scorched what was timed, so it may be a misreading, such as °F for °C.
    #[must_use]
    pub fn scorched(
        &self,
        most: ThermodynamicTemperature,
    ) -> Option<(usize, ThermodynamicTemperature)> {
        let far = most + TemperatureInterval::new::<kelvin>(FAR_ABOVE);
        Some(self.hottest).filter(|(_, end)| *end > far)
    }

    /// How long `load` takes from `start` to `end`, without a break: t = C·ΔT/P.
    ///
    /// The amount may lie outside those that were timed by a factor of [`super::FARTHEST_REACH`]; the
    /// result then says so.
    ///
    /// # Errors
    /// [`HeatError::NotHotter`], [`HeatError::Temperature`], and [`HeatError::OutOfReach`] farther out.
    pub fn time(
        &self,
        load: Load,
        start: ThermodynamicTemperature,
        end: ThermodynamicTemperature,
    ) -> Result<Heating, HeatError> {
        check_heating(start, end)?;
        let reach = beyond(load.mass(), self.least, self.most)?;
        let time: Time = load.heat_capacity() * rise(start, end) / self.power;
        let uncertainty = self.scatter_of_one_more().map(|relative| time * relative);
        Ok(Heating { time, uncertainty, reach })
    }

    /// The relative standard uncertainty of one more heating, s√(1 + 1/n).
    fn scatter_of_one_more(&self) -> Option<f64> {
        self.scatter.map(|s| s.value * libm::sqrt(1.0 + 1.0 / f64::from(self.timings)))
    }

    /// The relative margin that holds one more heating with a probability of 95 %, by Student's t.
    pub(super) fn margin(&self) -> Option<f64> {
        let freedom = (self.timings as usize).saturating_sub(2);
        let t = STUDENT_T.get(freedom).or(STUDENT_T.last())?;
        self.scatter_of_one_more().map(|relative| t * relative)
    }
}

impl Timing {
    /// t/Q in seconds per joule, where the timing is one at `setting`.
    fn per_joule(&self, setting: Ratio) -> Result<f64, HeatError> {
        if !(self.setting.value > 0.0 && self.setting.value <= 1.0) {
            return Err(HeatError::Setting { found: self.setting });
        }
        if self.setting != setting {
            return Err(HeatError::MixedSettings { first: setting, other: self.setting });
        }
        check_heating(self.start, self.end)?;
        check("The duration of a timing", self.duration.value, is_positive)?;
        let heat = self.load.heat_capacity() * rise(self.start, self.end);
        Ok(self.duration.get::<second>() / heat.value)
    }
}

pub(super) fn check_heating(
    start: ThermodynamicTemperature,
    end: ThermodynamicTemperature,
) -> Result<(), HeatError> {
    check_temperature("The temperature before", start)?;
    check_temperature("The temperature after", end)?;
    if end > start { Ok(()) } else { Err(HeatError::NotHotter { start, end }) }
}

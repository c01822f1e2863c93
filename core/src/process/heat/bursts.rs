//! Heating in bursts, with a stir and a look at the thermometer between.
//!
//! A burst is so short that even an oven stronger than expected leaves the pot below the top of the
//! window, as far as the thermometer can tell:
//!
//! T + (1 + μ)·b·P·d/C + θ ≤ T_most, T + P·d/C ≤ T_aim
//!
//! d the length of the burst, μ the margin of the power (95 %, by Student's t, and never less than the
//! precautions say), θ the thermometer's own error, b the reach: for an amount larger than any timed by
//! the factor b, the power may be larger by that factor at most, for a load takes no more than in
//! proportion to its size. What the pot loses while it is stirred is left out: it only makes it cooler.
//!
//! The last burst is the first after which the pot is expected in the window by more than θ, however far
//! it is from the aim; and no burst is shorter than a hand at an oven can set.

use alloc::vec::Vec;

use uom::si::temperature_interval::kelvin;
use uom::si::time::second;

use super::oven::check_heating;
use super::{HeatError, Load, Oven, Reach, beyond, rise};
use crate::check::{is_not_negative, is_positive};
use crate::quantity::{Ratio, TemperatureInterval, ThermodynamicTemperature, Time};

/// More bursts than this are no way to heat a pot.
const MOST_BURSTS: usize = 50;

/// The temperatures at which a material can be shot, from its supplier, and where to aim.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Window {
    least: ThermodynamicTemperature,
    aim: ThermodynamicTemperature,
    most: ThermodynamicTemperature,
}

impl Window {
    /// From `least`, where the material is fused and flows, to `most`, aiming for `aim`.
    ///
    /// # Errors
    /// [`HeatError::Window`] unless least ≤ aim < most; [`HeatError::Temperature`] for one that no pot
    /// has.
    pub fn new(
        least: ThermodynamicTemperature,
        aim: ThermodynamicTemperature,
        most: ThermodynamicTemperature,
    ) -> Result<Self, HeatError> {
        super::check_temperature("The least temperature of the window", least)?;
        super::check_temperature("The greatest temperature of the window", most)?;
        if least <= aim && aim < most {
            Ok(Self { least, aim, most })
        } else {
            Err(HeatError::Window { least, aim, most })
        }
    }

    /// Aiming for the middle.
    ///
    /// # Errors
    /// Those of [`Window::new`].
    pub fn around(
        least: ThermodynamicTemperature,
        most: ThermodynamicTemperature,
    ) -> Result<Self, HeatError> {
        Self::new(least, least + rise(least, most) / 2.0, most)
    }

    /// Where the material begins to be hot enough.
    #[must_use]
    pub fn least(self) -> ThermodynamicTemperature {
        self.least
    }

    /// Where to aim.
    #[must_use]
    pub fn aim(self) -> ThermodynamicTemperature {
        self.aim
    }

    /// What the material must never pass.
    #[must_use]
    pub fn most(self) -> ThermodynamicTemperature {
        self.most
    }
}

/// How careful to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Precautions {
    /// How far the thermometer may be off.
    pub thermometer: TemperatureInterval,
    /// How much warmer than it is reckoned with the pot may be at first: of its first burst that is the least
    /// that the limit leaves.
    pub warmer: TemperatureInterval,
    /// The least relative margin of the power, however well the timings agree.
    pub least_margin: Ratio,
    /// The relative margin of a power that rests on a single timing.
    pub single_timing_margin: Ratio,
    /// The longest burst without a stir.
    pub longest: Time,
    /// The shortest burst that can be set.
    pub shortest: Time,
    /// Bursts are whole multiples of this.
    pub step: Time,
}

/// 2 K, 0 K, 5 %, 20 %, 120 s, 5 s, 1 s: common practice, no source.
impl Default for Precautions {
    fn default() -> Self {
        Self {
            thermometer: TemperatureInterval::new::<kelvin>(2.0),
            warmer: TemperatureInterval::new::<kelvin>(0.0),
            least_margin: Ratio::from(0.05),
            single_timing_margin: Ratio::from(0.2),
            longest: Time::new::<second>(120.0),
            shortest: Time::new::<second>(5.0),
            step: Time::new::<second>(1.0),
        }
    }
}

/// One run of the oven, and what the thermometer may show after the stir.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Burst {
    /// How long.
    pub duration: Time,
    /// Run it only if the thermometer shows no more than this; else ask again from what it shows.
    pub only_below: ThermodynamicTemperature,
    /// What it is expected to show afterwards.
    pub expected: ThermodynamicTemperature,
    /// The most that the pot may have then, the thermometer's error included.
    pub at_most: ThermodynamicTemperature,
}

/// A whole heating in bursts.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Bursts {
    /// The bursts in their order, as long as each comes out as expected; none where the pot is in the
    /// window and the shortest would be too much.
    pub bursts: Vec<Burst>,
    /// How long the oven runs altogether.
    pub total: Time,
    /// The most that the pot may have after as long a run in one go.
    pub in_one: ThermodynamicTemperature,
    /// Whether that is above the window: the warning against one long burst.
    pub one_overshoots: bool,
    /// The relative margin of the power that was reckoned with, without the reach.
    pub margin: Ratio,
    /// Whether that margin is an assumption, the power resting on a single timing.
    pub margin_assumed: bool,
    /// Whether the amount is one that was timed.
    pub reach: Reach,
}

/// A load in an oven, with everything that a burst depends on.
struct Course {
    /// Rise per second in K, as expected.
    rate: f64,
    /// The same at the most.
    fastest: f64,
    window: Window,
    precautions: Precautions,
}

impl Oven {
    /// The bursts that bring `load` from `start` towards the window's aim: a first one, and more until it is
    /// in the window by more than the thermometer's error.
    ///
    /// A half-cooled pot is reheated in the same way, from its own temperature or from what
    /// [`super::Cooling`] makes of the minutes.
    ///
    /// # Errors
    /// [`HeatError::HotAlready`] for a pot at its aim or above; [`HeatError::OutOfReach`] for an amount
    /// too far from those timed; [`HeatError::AimTooHigh`] where the thermometer leaves no room above
    /// the aim; [`HeatError::TooFine`] where the shortest burst is too long, or more than 50 would be needed;
    /// [`HeatError::Precaution`] for a precaution outside its range.
    pub fn bursts(
        &self,
        load: Load,
        start: ThermodynamicTemperature,
        window: Window,
        precautions: Precautions,
    ) -> Result<Bursts, HeatError> {
        check_precautions(precautions)?;
        if start >= window.aim {
            return Err(HeatError::HotAlready { now: start });
        }
        check_heating(start, window.aim)?;
        let room = rise(window.aim, window.most);
        let thermometer = precautions.thermometer;
        if room <= thermometer {
            let highest = window.most - thermometer;
            return Err(HeatError::AimTooHigh { room, thermometer, highest });
        }
        let reach = beyond(load.mass(), self.timed().0, self.timed().1)?;
        let (margin, margin_assumed) = self.careful_margin(precautions);
        let stronger = match reach {
            Reach::Beyond { factor, larger: true } => factor.value,
            _ => 1.0,
        };
        let rate = self.power().value / load.heat_capacity().value;
        let fastest = rate * (1.0 + margin) * stronger;
        let course = Course { rate, fastest, window, precautions };
        let bursts = course.bursts(start)?;
        let total = bursts.iter().fold(Time::default(), |sum, burst| sum + burst.duration);
        let in_one = course.hottest(start, total);
        Ok(Bursts {
            bursts,
            total,
            in_one,
            one_overshoots: in_one > window.most,
            margin: Ratio::from(margin),
            margin_assumed,
            reach,
        })
    }

    /// The margin of the power, and whether it is assumed.
    fn careful_margin(&self, precautions: Precautions) -> (f64, bool) {
        match self.margin() {
            Some(margin) => (margin.max(precautions.least_margin.value), false),
            None => (precautions.single_timing_margin.value, true),
        }
    }
}

impl Course {
    fn bursts(&self, start: ThermodynamicTemperature) -> Result<Vec<Burst>, HeatError> {
        let Precautions { shortest, step, thermometer, .. } = self.precautions;
        let shortest = if step > shortest { step } else { shortest };
        let too_fine = HeatError::TooFine { shortest, aim: self.window.aim };
        let none = TemperatureInterval::new::<kelvin>(0.0);
        let hot_enough = self.window.least + thermometer;
        let mut bursts: Vec<Burst> = Vec::new();
        let mut now = start;
        while bursts.is_empty() || now < hot_enough {
            let warmer = if bursts.is_empty() { self.precautions.warmer } else { none };
            let duration = self.longest_from(now, warmer);
            if duration < shortest {
                break;
            }
            if bursts.len() >= MOST_BURSTS {
                return Err(too_fine);
            }
            let burst = self.burst(now, duration);
            now = burst.expected;
            bursts.push(burst);
        }
        // Where the shortest burst would be too much, the pot must be hot enough by now.
        if now < self.window.least { Err(too_fine) } else { Ok(bursts) }
    }

    /// The longest burst from `now`, in whole steps, that holds for a pot `warmer` than that by so much.
    fn longest_from(&self, now: ThermodynamicTemperature, warmer: TemperatureInterval) -> Time {
        let Precautions { thermometer, longest, step, .. } = self.precautions;
        let to_aim = rise(now, self.window.aim).value / self.rate;
        let to_most = (rise(now + warmer, self.window.most) - thermometer).value / self.fastest;
        let most = to_aim.min(to_most).min(longest.value);
        // Rounding must not cost a step that fits exactly.
        step * libm::floor(most / step.value * (1.0 + 1e-12))
    }

    fn burst(&self, now: ThermodynamicTemperature, duration: Time) -> Burst {
        let fastest = TemperatureInterval::new::<kelvin>(self.fastest * duration.value);
        let expected = TemperatureInterval::new::<kelvin>(self.rate * duration.value);
        Burst {
            duration,
            only_below: self.window.most - self.precautions.thermometer - fastest,
            expected: now + expected,
            at_most: self.hottest(now, duration),
        }
    }

    /// The most that a pot which shows `now` may have after `duration`.
    fn hottest(&self, now: ThermodynamicTemperature, duration: Time) -> ThermodynamicTemperature {
        let fastest = TemperatureInterval::new::<kelvin>(self.fastest * duration.value);
        now + self.precautions.thermometer + fastest
    }
}

fn check_precautions(precautions: Precautions) -> Result<(), HeatError> {
    let Precautions {
        thermometer,
        warmer,
        least_margin,
        single_timing_margin,
        longest,
        shortest,
        step,
    } = precautions;
    let is_margin = |x| is_not_negative(x) && x < 10.0;
    let checks = [
        ("thermometer", thermometer.value, is_not_negative(thermometer.value)),
        ("warmer", warmer.value, is_not_negative(warmer.value)),
        ("least margin", least_margin.value, is_margin(least_margin.value)),
        (
            "margin of a single timing",
            single_timing_margin.value,
            is_margin(single_timing_margin.value),
        ),
        ("step", step.value, is_positive(step.value)),
        ("shortest burst", shortest.value, is_not_negative(shortest.value)),
        (
            "longest burst",
            longest.value,
            is_positive(longest.value) && longest >= step && longest >= shortest,
        ),
    ];
    match checks.into_iter().find(|(_, _, is_right)| !is_right) {
        Some((what, value, _)) => Err(HeatError::Precaution { what, value }),
        None => Ok(()),
    }
}

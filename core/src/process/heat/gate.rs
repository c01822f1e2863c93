//! A table of readings: what the thermometer shows, and how long the oven runs next.

use alloc::vec::Vec;

use uom::si::energy::joule;
use uom::si::thermodynamic_temperature::{degree_celsius, degree_fahrenheit};

use super::{HeatError, Load, Oven, rise};
use crate::parameter::{Check, Parameter, ParameterErrors, Relation};
use crate::quantity::{
    Energy, Mass, Measurable, Ratio, System, TemperatureInterval, ThermodynamicTemperature, Time,
};

/// Nobody heats a pot in more bursts than this.
const MOST_BURSTS: u32 = 50;

/// Bursts that a hand sets on a dial, in steps of the shortest.
const LADDER: [f64; 11] = [1.0, 2.0, 3.0, 4.0, 6.0, 9.0, 12.0, 18.0, 24.0, 36.0, 48.0];

/// Bands of bursts that a bench card has room for.
const MOST_BANDS: usize = 5;

/// Degrees between the readings at which bands meet.
const BAND_STEP: f64 = 5.0;

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
    /// [`HeatError::Window`] unless least ≤ aim < most; [`HeatError::Parameters`].
    pub fn new(
        least: ThermodynamicTemperature,
        aim: ThermodynamicTemperature,
        most: ThermodynamicTemperature,
    ) -> Result<Self, HeatError> {
        let mut check = Check::new();
        check
            .number(Parameter::WindowBottom, least.value)
            .number(Parameter::WindowTop, most.value)
            .number(Parameter::Aim, aim.value);
        check.finish()?;
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

    /// Highest temperature, which the material must never pass.
    #[must_use]
    pub fn most(self) -> ThermodynamicTemperature {
        self.most
    }
}

/// The scale of the thermometer, on whose degrees the bands begin and end.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ThermometerMarks {
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

impl ThermometerMarks {
    /// The scale of the thermometers where these measures are used.
    #[must_use]
    pub const fn of(system: System) -> Self {
        match system {
            System::UsCustomary | System::UsLabel => Self::Fahrenheit,
            System::Metric | System::Imperial => Self::Celsius,
        }
    }

    /// The nearest reading that is not above `at`, in steps of `degrees`.
    fn down(self, at: ThermodynamicTemperature, degrees: f64) -> ThermodynamicTemperature {
        // Rounding must not cost a step that is one exactly.
        self.round(at, degrees, |steps| libm::floor(steps + 1e-9))
    }

    /// The nearest reading that is not below `at`.
    fn up(self, at: ThermodynamicTemperature, degrees: f64) -> ThermodynamicTemperature {
        self.round(at, degrees, |steps| libm::ceil(steps - 1e-9))
    }

    fn round(
        self,
        at: ThermodynamicTemperature,
        degrees: f64,
        round: fn(f64) -> f64,
    ) -> ThermodynamicTemperature {
        let whole = |reading: f64| degrees * round(reading / degrees);
        match self {
            Self::Celsius => {
                ThermodynamicTemperature::new::<degree_celsius>(whole(at.get::<degree_celsius>()))
            }
            Self::Fahrenheit => ThermodynamicTemperature::new::<degree_fahrenheit>(whole(
                at.get::<degree_fahrenheit>(),
            )),
        }
    }
}

/// How careful to be.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Precautions {
    /// How far the thermometer may be off.
    pub thermometer: TemperatureInterval,
    /// Its scale.
    pub marks: ThermometerMarks,
    /// The shortest burst that a hand can set; the others are whole multiples of it.
    pub step: Time,
    /// The longest burst without a stir.
    pub longest: Time,
    /// How long a turn of full power and none takes, where the setting is below full power.
    pub turn: Time,
}

/// The defaults of the parameters, on a scale of °C: common practice, no source.
impl Default for Precautions {
    fn default() -> Self {
        Self {
            thermometer: TemperatureInterval::from_si(Parameter::Thermometer.default_si()),
            marks: ThermometerMarks::Celsius,
            step: Time::from_si(Parameter::BurstStep.default_si()),
            longest: Time::from_si(Parameter::LongestBurst.default_si()),
            turn: Time::from_si(Parameter::OvenTurn.default_si()),
        }
    }
}

impl Precautions {
    /// Checks the numbers.
    ///
    /// # Errors
    /// All that are outside their ranges; a longest burst below the shortest.
    pub fn check(&self) -> Result<(), ParameterErrors> {
        let Self { thermometer, step, longest, turn, .. } = *self;
        let mut check = Check::new();
        check
            .number(Parameter::Thermometer, thermometer.value)
            .number(Parameter::BurstStep, step.value)
            .number(Parameter::LongestBurst, longest.value)
            .number(Parameter::OvenTurn, turn.value)
            .relation(
                (Parameter::LongestBurst, longest.value),
                Relation::AtLeast,
                (Parameter::BurstStep, step.value),
            );
        check.finish()
    }
}

/// A range of readings, from the band before it up to `below`, and its burst.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Band {
    /// The thermometer shows less than this.
    pub below: ThermodynamicTemperature,
    /// How long the oven runs then.
    pub burst: Time,
    /// The expected reading after it, from the top of the band.
    pub expected: ThermodynamicTemperature,
    /// The hottest that the pot can be after it, from the top of the band: never above the window.
    pub hottest: ThermodynamicTemperature,
}

/// A table of readings for one load in one oven: from the coldest band to the hottest, then shoot, then stop.
///
/// No burst can carry the pot over the window, from any reading that allows it: with θ the error of the
/// thermometer and H the enthalpy of mix and vessel, a burst of the length d is allowed below the reading T
/// for which
///
/// H(T + θ) + P_most·d′ = H(T_most), H(T) + P·d ≤ H(T_aim) but for the shortest burst
///
/// P_most is the highest power that the timings make plausible ([`Oven::most_power`]). The first burst is gated
/// like any other. Below full power a microwave oven runs in turns of full power and none: a burst of d at the
/// setting s may have d′ = min(d/s, d + (1 − s) c) of its mean power, c the length of a turn.
/// Heat that the pot loses while it is stirred is ignored: it only makes it cooler.
///
/// It is shot from the bottom of the window to its top, less θ at each end; where the shortest burst would be too
/// much for what is left of the window, from the reading at which it is, if that is in the window still.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Gate {
    /// The bands, the coldest first; one at least.
    pub bands: Vec<Band>,
    /// Shoot from this reading on, where the last band ends.
    pub shoot_from: ThermodynamicTemperature,
    /// Shoot up to this reading; above it stop and let the pot cool.
    pub shoot_to: ThermodynamicTemperature,
    /// How much more power than expected the bursts allow for, as a share of it.
    pub margin: Ratio,
    /// The heating as it is expected to go.
    pub course: Course,
}

/// A heating as it is expected to go by a table of readings.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
#[non_exhaustive]
pub struct Course {
    /// How many bursts.
    pub bursts: u32,
    /// How long the oven runs altogether.
    pub total: Time,
}

impl Gate {
    /// The burst that the table has for a `reading`; `None` from [`Gate::shoot_from`] on.
    #[must_use]
    pub fn burst(&self, reading: ThermodynamicTemperature) -> Option<Time> {
        self.bands.iter().find(|band| reading < band.below).map(|band| band.burst)
    }
}

/// Loads in an oven, one at a time, with everything that a burst depends on.
struct Heater {
    /// Each with its power in W, as expected and at most; the second with the unevenness of several cups.
    loads: Vec<(Load, f64, f64)>,
    setting: f64,
    window: Window,
    precautions: Precautions,
}

impl Oven {
    /// The table of readings for `load`, begun from `start`, towards the `window`. It holds from any reading:
    /// only the bands above `start` are listed.
    ///
    /// An amount beyond the reach of the timings gets the bursts of the safe side ([`Oven::most_power`]).
    ///
    /// # Errors
    /// [`HeatError::Narrow`] where the thermometer may hide the whole window; [`HeatError::TooFine`] where the
    /// shortest burst may carry the pot over it, or more than 50 would be needed; [`HeatError::Parameters`].
    pub fn gate(
        &self,
        load: Load,
        start: ThermodynamicTemperature,
        window: Window,
        precautions: Precautions,
    ) -> Result<Gate, HeatError> {
        self.gate_through(&[load], start, window, precautions)
    }

    /// The table of readings that holds for each of `loads`: what a pot holds before and after something is added
    /// between its bursts. The first is the one that it is begun with, by which the heating is expected to go, the last
    /// what it holds in the end, whose mass an error names; no burst can carry any of them over the window.
    ///
    /// # Errors
    /// Those of [`Oven::gate`]; [`HeatError::Nothing`] for no load at all.
    pub fn gate_through(
        &self,
        loads: &[Load],
        start: ThermodynamicTemperature,
        window: Window,
        precautions: Precautions,
    ) -> Result<Gate, HeatError> {
        let (Some(&first), Some(last)) = (loads.first(), loads.last()) else {
            return Err(HeatError::Nothing);
        };
        let mut check = Check::new();
        check.number(Parameter::HeatedFrom, start.value).merge(precautions.check());
        check.finish()?;
        let heater = |share: f64| {
            let of = |&load: &Load| {
                let load = load.of_mass(load.mass() * share);
                let power = self.power(load).value;
                (load, power, self.most_power(load).value * load.uneven())
            };
            Heater {
                loads: loads.iter().map(of).collect(),
                setting: self.setting().value,
                window,
                precautions,
            }
        };
        let Precautions { thermometer, marks, step, .. } = precautions;
        let bottom = marks.up(window.least, 1.0);
        let shoot_to = marks.down(window.most - thermometer, 1.0);
        if marks.up(window.least + thermometer, 1.0) > shoot_to {
            let width = rise(window.least, window.most);
            return Err(HeatError::Narrow { width, thermometer });
        }
        let here = heater(1.0);
        let shortest = marks.down(here.never_over(step), 1.0);
        if shortest < bottom {
            let would_do = |mass: Mass| {
                let larger = heater((mass / last.mass()).value);
                marks.down(larger.never_over(step), 1.0) >= bottom
            };
            return Err(HeatError::TooFine { burst: step, enough: enough(last.mass(), would_do) });
        }
        let sure = marks.up(window.least + thermometer, 1.0);
        let shoot_from = if shortest < sure { shortest } else { sure };
        let bands = here.bands(start, shoot_from);
        let mut gate = Gate {
            bands,
            shoot_from,
            shoot_to,
            margin: Ratio::from(self.most_power(first).value / self.power(first).value - 1.0),
            course: Course::default(),
        };
        gate.course = here.course(start, &gate)?;
        Ok(gate)
    }
}

/// The smallest mass above `mass`, to a hundredth, that `would_do`; `None` where 64 times as much does not.
pub(super) fn enough(mass: Mass, would_do: impl Fn(Mass) -> bool) -> Option<Mass> {
    let (mut low, mut high) = (mass, mass * 2.0);
    while !would_do(high) {
        if high >= mass * 64.0 {
            return None;
        }
        (low, high) = (high, high * 2.0);
    }
    while high > low * 1.01 {
        let middle = (low + high) / 2.0;
        if would_do(middle) { high = middle } else { low = middle }
    }
    Some(high)
}

impl Heater {
    /// The bands below `shoot_from`, the coldest first, as far down as `start`. Each burst is twice as long as
    /// that of the band above it or longer.
    fn bands(
        &self,
        start: ThermodynamicTemperature,
        shoot_from: ThermodynamicTemperature,
    ) -> Vec<Band> {
        let Precautions { step, longest, marks, .. } = self.precautions;
        let mut bands: Vec<Band> = Vec::new();
        // Rounding must not cost a burst that is the longest exactly.
        let bursts = LADDER.iter().map(|&steps| step * steps);
        let bursts = bursts.filter(|&burst| burst <= longest * (1.0 + 1e-9));
        for burst in bursts {
            let allowed = self.allowed_below(burst);
            match bands.last() {
                // The longest burst that is still allowed at the bottom of the window ends the heating.
                _ if bands.len() <= 1 && allowed >= shoot_from => {
                    bands.clear();
                    bands.push(self.band(shoot_from, burst));
                }
                None => bands.push(self.band(shoot_from, burst)),
                Some(above) => {
                    let below = marks.down(allowed, BAND_STEP);
                    let is_worth_it = burst >= above.burst * 2.0 && below < above.below;
                    if is_worth_it && below > start && bands.len() < MOST_BANDS {
                        bands.push(self.band(below, burst));
                    }
                }
            }
        }
        bands.reverse();
        bands
    }

    fn band(&self, below: ThermodynamicTemperature, burst: Time) -> Band {
        let hottest = below + self.precautions.thermometer;
        Band {
            below,
            burst,
            expected: self.expected(below, burst),
            hottest: self
                .each(hottest, |_, most| self.most_heat(most, burst))
                .fold(hottest, |hottest, after| if after > hottest { after } else { hottest }),
        }
    }

    /// The reading below which a burst other than the shortest is allowed.
    fn allowed_below(&self, burst: Time) -> ThermodynamicTemperature {
        let past_aim = self.each(self.window.aim, |power, _| -heat(power, burst));
        past_aim.fold(self.never_over(burst), lower)
    }

    /// The reading from which a burst can carry the pot to the top of the window at most.
    fn never_over(&self, burst: Time) -> ThermodynamicTemperature {
        let most = self.window.most;
        self.each(most, |_, most| -self.most_heat(most, burst)).fold(most, lower)
            - self.precautions.thermometer
    }

    /// Where each load is after the heat that it takes up by its power, as expected and at most.
    fn each(
        &self,
        from: ThermodynamicTemperature,
        heat: impl Fn(f64, f64) -> Energy,
    ) -> impl Iterator<Item = ThermodynamicTemperature> {
        self.loads.iter().map(move |&(load, power, most)| load.after(from, heat(power, most)))
    }

    /// Where the load that it is begun with is after a burst, as expected.
    fn expected(&self, from: ThermodynamicTemperature, burst: Time) -> ThermodynamicTemperature {
        self.each(from, |power, _| heat(power, burst)).next().unwrap_or(from)
    }

    fn most_heat(&self, most_power: f64, burst: Time) -> Energy {
        let turned = burst + self.precautions.turn * (1.0 - self.setting);
        let full = burst / self.setting;
        let as_long = if full < turned { full } else { turned };
        heat(most_power, as_long)
    }

    /// The heating by the table, each burst as it is expected.
    fn course(&self, start: ThermodynamicTemperature, gate: &Gate) -> Result<Course, HeatError> {
        let (mut course, mut now) = (Course::default(), start);
        while let Some(burst) = gate.burst(now) {
            if course.bursts == MOST_BURSTS {
                return Err(HeatError::TooSlow { bursts: MOST_BURSTS });
            }
            course.bursts = course.bursts.saturating_add(1);
            course.total += burst;
            now = self.expected(now, burst);
        }
        Ok(course)
    }
}

/// Heat that `power` in W brings in `time`.
fn heat(power: f64, time: Time) -> Energy {
    Energy::new::<joule>(power * time.value)
}

fn lower(a: ThermodynamicTemperature, b: ThermodynamicTemperature) -> ThermodynamicTemperature {
    if b < a { b } else { a }
}

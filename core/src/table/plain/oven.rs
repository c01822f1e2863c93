//! Heating a pot in the shop's own oven.

use alloc::vec::Vec;

use super::{if_given, of, or_default};
use crate::parameter::{Check, Parameter, ParameterError, PlainUnit, Problem, Relation};
use crate::process::heat::{
    Load, Oven, Precautions, Reach, SpecificHeat, ThermometerMarks, Timing, Window,
};
use crate::quantity::{
    HeatCapacity, Mass, Measurable, Ratio, SpecificHeatCapacity, System, ThermodynamicTemperature,
};
use crate::table::{Refusal, calculation};

/// A pot, and the oven that its timings show.
struct Pot<'a> {
    pot_mass_g: f64,
    specific_heat_j_per_g_k: f64,
    timings: Option<&'a [[f64; 4]]>,
    oven_power_w: Option<f64>,
    setting: Option<f64>,
    specific_heat_rise_per_kelvin: Option<f64>,
    timed_specific_heat_j_per_g_k: Option<f64>,
    vessel_mass_g: Option<f64>,
    vessel_specific_heat_j_per_g_k: Option<f64>,
}

impl Pot<'_> {
    /// The oven and the load, where `check` finds nothing wrong.
    fn read(&self, mut check: Check) -> Result<(Oven, Load), Refusal> {
        let mass: Mass = of(Parameter::PotMass, self.pot_mass_g);
        let heat: SpecificHeatCapacity = of(Parameter::SpecificHeat, self.specific_heat_j_per_g_k);
        let timed: SpecificHeatCapacity =
            if_given(Parameter::TimedSpecificHeat, self.timed_specific_heat_j_per_g_k)
                .unwrap_or(heat);
        let rise = or_default(Parameter::SpecificHeatRise, self.specific_heat_rise_per_kelvin);
        let setting = Ratio::from(self.setting.unwrap_or(1.0));
        check
            .number(Parameter::PotMass, mass.si())
            .number(Parameter::SpecificHeat, heat.si())
            .option(
                Parameter::TimedSpecificHeat,
                self.timed_specific_heat_j_per_g_k.map(|_| timed.si()),
            )
            .option(Parameter::SpecificHeatRise, self.specific_heat_rise_per_kelvin)
            .option(Parameter::OvenPower, self.oven_power_w)
            .number(Parameter::Setting, setting.value);
        let vessel = self.vessel(&mut check);
        match self.timings {
            Some(timings) => check_timings(timings, &mut check),
            None if self.oven_power_w.is_none() => {
                check.push(ParameterError::new(Parameter::Timings, Problem::Missing));
            }
            None => {}
        }
        check.finish()?;
        let oven = match (self.timings, self.oven_power_w) {
            (None, Some(power)) => Oven::rated(of(Parameter::OvenPower, power), setting)?,
            (timings, _) => {
                let timing = |&[mass, from, to, time]: &[f64; 4]| {
                    Ok::<_, Refusal>(Timing {
                        load: Load::new(
                            of(Parameter::TimedMass, mass),
                            SpecificHeat::new(timed, rise)?,
                            vessel,
                        )?,
                        setting,
                        start: of(Parameter::TimedFrom, from),
                        end: of(Parameter::TimedTo, to),
                        duration: of(Parameter::TimedTime, time),
                    })
                };
                let timings = timings.unwrap_or_default().iter().map(timing);
                Oven::from_timings(&timings.collect::<Result<Vec<_>, _>>()?)?
            }
        };
        Ok((oven, Load::new(mass, SpecificHeat::new(heat, rise)?, vessel)?))
    }

    fn vessel(&self, check: &mut Check) -> HeatCapacity {
        let mass: Option<Mass> = if_given(Parameter::VesselMass, self.vessel_mass_g);
        let heat: Option<SpecificHeatCapacity> =
            if_given(Parameter::VesselSpecificHeat, self.vessel_specific_heat_j_per_g_k);
        check
            .option(Parameter::VesselMass, mass.map(Measurable::si))
            .option(Parameter::VesselSpecificHeat, heat.map(Measurable::si));
        let (missing, by) = match (mass, heat) {
            (Some(mass), Some(heat)) => return mass * heat,
            (None, None) => return HeatCapacity::default(),
            (Some(_), None) => (Parameter::VesselSpecificHeat, Parameter::VesselMass),
            (None, Some(_)) => (Parameter::VesselMass, Parameter::VesselSpecificHeat),
        };
        check.push(ParameterError::new(missing, Problem::NeededBy(by)));
        HeatCapacity::default()
    }
}

fn check_timings(timings: &[[f64; 4]], check: &mut Check) {
    let columns = Parameter::Timings.columns();
    check.count(Parameter::Timings, timings.len());
    for (index, row) in timings.iter().enumerate() {
        for (&column, &plain) in columns.iter().zip(row) {
            check.element(column, index, column.unit().to_si(plain));
        }
        let &[_, from, to, _] = row;
        if to <= from {
            let (wanted, other) = (Relation::Above, Parameter::TimedFrom);
            let problem = Problem::Relation { value: to, wanted, other, than: from };
            check.push(ParameterError::new(Parameter::TimedTo, problem).at(index));
        }
    }
}

fn celsius(temperature: ThermodynamicTemperature) -> f64 {
    PlainUnit::Celsius.from_si(temperature.si())
}

/// How far outside the timed amounts a reach is, as a factor.
fn factor(reach: Reach) -> Option<f64> {
    match reach {
        Reach::Within => None,
        Reach::Beyond { factor, .. } => Some(factor.value),
    }
}

/// Declares a calculation on a pot in an oven: that of the oven follow its own parameters.
macro_rules! oven_calculation {
    (
        $(#[doc = $doc:literal])+
        $NAME:ident = $name:literal: $Inputs:ident -> $Results:ident
        takes { $($field:ident: $Field:ty = $Parameter:ident,)+ }
        optional { $($more:ident: $More:ty = $Optional:ident,)* }
        gives { $($gives:tt)+ }
        example { $($own:ident: $value:expr),* } => $answer:expr;
    ) => {
        calculation! {
            $(#[doc = $doc])+
            $NAME = $name: $Inputs<'a> -> $Results
            takes {
                pot_mass_g: f64 = PotMass,
                specific_heat_j_per_g_k: f64 = SpecificHeat,
                $($field: $Field = $Parameter,)+
                timings: Option<&'a [[f64; 4]]> = Timings,
                oven_power_w: Option<f64> = OvenPower,
                setting: Option<f64> = Setting,
                specific_heat_rise_per_kelvin: Option<f64> = SpecificHeatRise,
                timed_specific_heat_j_per_g_k: Option<f64> = TimedSpecificHeat,
                vessel_mass_g: Option<f64> = VesselMass,
                vessel_specific_heat_j_per_g_k: Option<f64> = VesselSpecificHeat,
                $($more: $More = $Optional,)*
            }
            gives { $($gives)+ }
            cautions ["hot-plastisol", "fumes", "water", "data-sheet"]
            request "heat"
            example $Inputs {
                pot_mass_g: 300.0,
                specific_heat_j_per_g_k: 2.0,
                timings: Some(&[[200.0, 20.0, 120.0, 80.0], [400.0, 20.0, 120.0, 160.0]]),
                oven_power_w: None,
                setting: None,
                specific_heat_rise_per_kelvin: None,
                timed_specific_heat_j_per_g_k: None,
                vessel_mass_g: None,
                vessel_specific_heat_j_per_g_k: None,
                $($own: $value,)*
            } => $answer;
        }

        impl<'a> $Inputs<'a> {
            fn pot(&self) -> Pot<'a> {
                Pot {
                    pot_mass_g: self.pot_mass_g,
                    specific_heat_j_per_g_k: self.specific_heat_j_per_g_k,
                    timings: self.timings,
                    oven_power_w: self.oven_power_w,
                    setting: self.setting,
                    specific_heat_rise_per_kelvin: self.specific_heat_rise_per_kelvin,
                    timed_specific_heat_j_per_g_k: self.timed_specific_heat_j_per_g_k,
                    vessel_mass_g: self.vessel_mass_g,
                    vessel_specific_heat_j_per_g_k: self.vessel_specific_heat_j_per_g_k,
                }
            }
        }
    };
}

oven_calculation! {
    /// Heating time of a pot in the oven, without a break, by the shop's own timings.
    ///
    /// t = Q (a + b/m), Q = ∫ (m c_p(T) + C_vessel) dT; a and b are fitted to the timings (module `process::heat`). An
    /// amount of more than 1.6 times the timed ones is refused. Without timings the rated power gives a first guess.
    HEAT_TIME = "heat_time": HeatTime -> HeatTimeResult
    takes {
        heated_from_celsius: f64 = HeatedFrom,
        heated_to_celsius: f64 = HeatedTo,
    }
    optional {}
    gives {
        /// Heating time.
        heat_time_s: f64 = "heat_time" Second,
        /// Its standard uncertainty for one more heating.
        heat_time_uncertainty_s: f64 = "heat_time_uncertainty" Second,
        /// Power that reaches mix and vessel.
        power_w: f64 = "power" Watt,
        /// How far the amount is outside those that were timed, as a factor; none inside them.
        beyond: Option<f64> = "beyond" Pure,
    }
    example { heated_from_celsius: 20.0, heated_to_celsius: 170.0 } => HeatTimeResult {
        heat_time_s: 180.0,
        heat_time_uncertainty_s: 13.469_966_592_386,
        power_w: 500.0,
        beyond: None,
    };
}

impl HeatTime<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; an amount too far from those that were timed; an end that is not hotter.
    pub fn calculate(&self) -> Result<HeatTimeResult, Refusal> {
        let from: ThermodynamicTemperature = of(Parameter::HeatedFrom, self.heated_from_celsius);
        let to: ThermodynamicTemperature = of(Parameter::HeatedTo, self.heated_to_celsius);
        let mut check = Check::new();
        check.number(Parameter::HeatedFrom, from.si()).number(Parameter::HeatedTo, to.si());
        let (oven, load) = self.pot().read(check)?;
        let heating = oven.time(load, from, to)?;
        Ok(HeatTimeResult {
            heat_time_s: heating.time.si(),
            heat_time_uncertainty_s: heating.uncertainty.si(),
            power_w: oven.power(load).si(),
            beyond: factor(heating.reach),
        })
    }
}

oven_calculation! {
    /// The next burst of the oven for a reading of the thermometer.
    ///
    /// No burst can carry the pot over its window, by all the power that the timings make plausible and the error of the
    /// thermometer (module `process::heat`). Stir, read, and look up each burst by its reading. The system of measures gives
    /// the scale of the thermometer, on whole degrees of which the limits are.
    NEXT_BURST = "next_burst": NextBurst -> NextBurstResult
    takes {
        reading_celsius: f64 = Reading,
        window_bottom_celsius: f64 = WindowBottom,
        window_top_celsius: f64 = WindowTop,
    }
    optional {
        aim_celsius: Option<f64> = Aim,
        thermometer_kelvin: Option<f64> = Thermometer,
        burst_step_s: Option<f64> = BurstStep,
        longest_burst_s: Option<f64> = LongestBurst,
        oven_turn_s: Option<f64> = OvenTurn,
        measures: Option<System> = Measures,
    }
    gives {
        /// The next burst; none where the pot is hot enough.
        burst_s: Option<f64> = "burst" Second,
        /// The expected reading after it.
        expected_celsius: Option<f64> = "expected" Celsius,
        /// Shoot from this reading on.
        shoot_from_celsius: f64 = "shoot_from" Celsius,
        /// Shoot up to this reading; above it, stop and let the pot cool.
        shoot_to_celsius: f64 = "shoot_to" Celsius,
        /// Number of bursts that are expected from this reading on.
        bursts: u32 = "bursts" Count,
        /// Time that the oven is expected to run in them.
        oven_time_s: f64 = "oven_time" Second,
    }
    example {
        reading_celsius: 20.0,
        window_bottom_celsius: 160.0,
        window_top_celsius: 180.0,
        aim_celsius: None,
        thermometer_kelvin: None,
        burst_step_s: None,
        longest_burst_s: None,
        oven_turn_s: None,
        measures: Some(System::Metric)
    } => NextBurstResult {
        burst_s: Some(90.0),
        expected_celsius: Some(95.0),
        shoot_from_celsius: 162.0,
        shoot_to_celsius: 178.0,
        bursts: 4,
        oven_time_s: 175.0,
    };
}

impl NextBurst<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a window that the thermometer is too coarse for; a pot so small that the shortest burst
    /// may carry it over the window, or so large that it needs more than 50.
    pub fn calculate(&self) -> Result<NextBurstResult, Refusal> {
        let reading: ThermodynamicTemperature = of(Parameter::Reading, self.reading_celsius);
        let bottom: ThermodynamicTemperature =
            of(Parameter::WindowBottom, self.window_bottom_celsius);
        let top: ThermodynamicTemperature = of(Parameter::WindowTop, self.window_top_celsius);
        let aim: Option<ThermodynamicTemperature> = if_given(Parameter::Aim, self.aim_celsius);
        let precautions = Precautions {
            thermometer: or_default(Parameter::Thermometer, self.thermometer_kelvin),
            marks: ThermometerMarks::of(self.measures.unwrap_or(System::UsCustomary)),
            step: or_default(Parameter::BurstStep, self.burst_step_s),
            longest: or_default(Parameter::LongestBurst, self.longest_burst_s),
            turn: or_default(Parameter::OvenTurn, self.oven_turn_s),
        };
        let mut check = Check::new();
        check
            .number(Parameter::Reading, reading.si())
            .number(Parameter::WindowBottom, bottom.si())
            .number(Parameter::WindowTop, top.si())
            .option(Parameter::Aim, aim.map(Measurable::si))
            .merge(precautions.check());
        let (oven, load) = self.pot().read(check)?;
        let window = match aim {
            Some(aim) => Window::new(bottom, aim, top)?,
            None => Window::around(bottom, top)?,
        };
        let gate = oven.gate(load, reading, window, precautions)?;
        let burst = gate.burst(reading);
        let expected = burst.map(|burst| load.after(reading, oven.power(load) * burst));
        Ok(NextBurstResult {
            burst_s: burst.map(Measurable::si),
            expected_celsius: expected.map(celsius),
            shoot_from_celsius: celsius(gate.shoot_from),
            shoot_to_celsius: celsius(gate.shoot_to),
            bursts: gate.course.bursts,
            oven_time_s: gate.course.total.si(),
        })
    }
}

//! How long a pot takes in the shop's own oven, and by which readings of the thermometer.

use alloc::string::String;
use alloc::vec::Vec;

use super::{request, response};
use crate::caution::Caution;
use crate::codes::code;
use crate::document::process::TimingEntry;
use crate::document::resolve::Resolver;
use crate::document::resolve::oven::Timed;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::plan::process::{HeatBand, question, shown_bands, shown_reach};
use crate::process::heat::{
    Cooling, Load, Oven, Precautions, SpecificHeat, ThermometerMarks, Window,
};
use crate::quantity::{
    Amount, HeatCapacity, Mass, MassDensity, Power, Ratio, SpecificHeatCapacity, System,
    TemperatureCoefficient, TemperatureInterval, ThermodynamicTemperature, Time,
};
use crate::show::{Shown, because, text};

request! {
    /// Asks for the heating of a pot, or of several alike cups on one clock: all from one temperature.
    pub struct HeatRequest {
        required {
            specific_heat: Written<SpecificHeatCapacity>,
            mix: Amount,
            heated_from: Written<ThermodynamicTemperature>,
            shot_window: (Written<ThermodynamicTemperature>, Written<ThermodynamicTemperature>),
        }
        optional {
            timings: Vec<TimingEntry>,
            oven_power: Written<Power>,
            specific_heat_rise: Written<TemperatureCoefficient>,
            aim: Written<ThermodynamicTemperature>,
            timed_density: Written<MassDensity>,
            timed_specific_heat: Written<SpecificHeatCapacity>,
            setting: Percent,
            thermometer: Written<TemperatureInterval>,
            burst_step: Written<Time>,
            longest_burst: Written<Time>,
            oven_turn: Written<Time>,
            vessel_mass: Written<Mass>,
            vessel_specific_heat: Written<SpecificHeatCapacity>,
            heated_together: Vec<LoadEntry>,
            cooling: CoolingEntry,
            measures: System,
        }
    }
}

entry! {
    /// A further cup that is heated together with the mix, on one clock: it must be alike.
    pub struct LoadEntry {
        required {
            /// Mix in it: a mass, or a volume cold and liquid.
            mix: Amount,
        }
        optional {
            /// Specific heat of that. Default: as of the mix.
            specific_heat: Written<SpecificHeatCapacity>,
            /// Mass of its vessel.
            vessel: Written<Mass>,
            /// Specific heat of its vessel. Default: with the mass of the vessel, those of the vessel of the mix.
            vessel_specific_heat: Written<SpecificHeatCapacity>,
        }
    }
}

entry! {
    /// How such a pot cools, as the shop watched it, and how long this one has stood.
    pub struct CoolingEntry {
        required {
            /// The temperature when the watch began.
            from: Written<ThermodynamicTemperature>,
            /// The temperature when it ended.
            to: Written<ThermodynamicTemperature>,
            /// How long that took.
            time: Written<Time>,
            /// The temperature of the room.
            room: Written<ThermodynamicTemperature>,
            /// How long the pot has stood since it had the temperature that it is heated `from`.
            stood: Written<Time>,
        }
        optional {
            /// How much was watched; default: as much as is heated.
            mix: Amount,
        }
    }
}

response! {
    /// A heating.
    pub struct HeatResponse {
        /// Mass that is heated, all cups together.
        pub load: Shown<Mass>,
        /// The temperature that it begins at, cooled as long as it stood.
        pub from: Shown<ThermodynamicTemperature>,
        /// The setting of the oven that all of this holds for, as a share of full power.
        pub setting: Shown<Ratio>,
        /// Whether nothing was timed: all of this follows from the rated power, a first guess.
        pub guess: bool,
        /// The power that reaches mix and vessel.
        pub power: Shown<Power>,
        /// Its standard uncertainty for one more heating.
        pub power_uncertainty: Shown<Power>,
        /// How long it takes to the aim, without a break; none where it is hot already, or the amount too far from
        /// those that were timed.
        pub time: Option<Shown<Time>>,
        /// Its standard uncertainty for one more heating.
        pub uncertainty: Option<Shown<Time>>,
        /// Why there is no time.
        pub no_time: Option<String>,
        /// The table of readings, the coldest band first. The last band ends where shooting begins.
        pub bands: Vec<HeatBand>,
        /// Shoot from this reading on.
        pub shoot_from: Shown<ThermodynamicTemperature>,
        /// Shoot up to this reading; above it, stop and let the pot cool.
        pub shoot_to: Shown<ThermodynamicTemperature>,
        /// How many bursts are expected.
        pub bursts: u32,
        /// How long the oven is expected to run in them altogether.
        pub total: Shown<Time>,
        /// How much more power than expected the bursts allow for.
        pub margin: Shown<Ratio>,
        /// How far the amount is outside those that were timed, as a factor.
        pub beyond: Option<Shown<Ratio>>,
        /// Question about the timings: one does not fit the others, or ends far above the
        /// window. It counts all the same.
        pub questioned: Option<String>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl HeatRequest {
    /// Takes the power from the timings, and from that the time and the table of readings.
    ///
    /// # Errors
    /// Timings that are none; cups that are not alike; a window that the thermometer is too coarse for; a pot so
    /// small that the shortest burst may carry it over the window.
    pub fn answer(&self) -> Result<HeatResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<HeatResponse> {
        let density = match &self.timed_density {
            Some(density) => Some(resolver.given(Parameter::TimedDensity, density)?),
            None => None,
        };
        let vessel = resolver.vessel(
            &Path::ROOT,
            ("vessel_mass", self.vessel_mass.as_ref()),
            ("vessel_specific_heat", self.vessel_specific_heat.as_ref()),
        );
        let rise =
            resolver.or_default(Parameter::SpecificHeatRise, self.specific_heat_rise.as_ref());
        let oven = self.oven(resolver, density, vessel, rise);
        let specific_heat = resolver.given(Parameter::SpecificHeat, &self.specific_heat);
        let specific_heat = SpecificHeat::new(specific_heat?, rise?);
        let specific_heat = resolver.keep(&At("/specific_heat"), specific_heat);
        let mass = resolver.amount_of_mix(&At("/mix"), &self.mix, density);
        let from = resolver.given(Parameter::HeatedFrom, &self.heated_from);
        let window = self.window(resolver);
        let load = Load::new(mass?, specific_heat?, vessel?);
        let load = resolver.keep(&At("/mix"), load)?;
        let load = self.together(resolver, load, density, specific_heat?, vessel?)?;
        let (oven, from, window) = (oven?, self.cooled(resolver, load, from?, density)?, window?);
        let precautions = self.precautions(resolver)?;
        let questioned = question(&oven, window.most(), resolver.system);
        let gate = resolver.keep(&Path::ROOT, oven.gate(load, from, window, precautions));
        if let (None, Some(question)) = (&gate, &questioned) {
            resolver.fault(
                code!("timing-questioned"),
                &At("/timings"),
                &format_args!("A timing may be the reason. {}", question.message),
                &"Correct it, or leave it out.",
            );
        }
        let gate = gate?;
        let heating = oven.time(load, from, window.aim());
        let system = resolver.system;
        let power = oven.power(load);
        Some(HeatResponse {
            load: text::mass(load.mass()),
            from: text::temperature(from, system),
            setting: text::percent(oven.setting()),
            guess: oven.is_guess(),
            power: text::power(power),
            power_uncertainty: text::power(power * oven.uncertainty(load)),
            time: heating.as_ref().ok().map(|heating| text::time(heating.time)),
            uncertainty: heating.as_ref().ok().map(|heating| text::time(heating.uncertainty)),
            no_time: heating.err().map(|error| because(&error).message),
            bands: shown_bands(&gate, system),
            shoot_from: text::temperature(gate.shoot_from, system),
            shoot_to: text::temperature(gate.shoot_to, system),
            bursts: gate.course.bursts,
            total: text::time(gate.course.total),
            margin: text::percent(gate.margin),
            beyond: shown_reach(oven.reach(load)),
            questioned: questioned.map(|question| question.message),
            cautions: Vec::from([
                Caution::HotPlastisol,
                Caution::Fumes,
                Caution::Water,
                Caution::DataSheet,
            ]),
        })
    }

    fn oven(
        &self,
        resolver: &mut Resolver,
        density: Option<MassDensity>,
        vessel: Option<HeatCapacity>,
        rise: Option<TemperatureCoefficient>,
    ) -> Option<Oven> {
        let specific_heat = match &self.timed_specific_heat {
            Some(timed) => resolver.given(Parameter::TimedSpecificHeat, timed),
            None => self.specific_heat.to(resolver.system).ok(),
        };
        let specific_heat = SpecificHeat::new(specific_heat?, rise?).ok()?;
        let timed = Timed { density, specific_heat, vessel: vessel? };
        let timings = self.timings.as_deref().unwrap_or_default();
        let power = self.oven_power.as_ref().map(|power| ("oven_power", power));
        resolver.timed_oven(&Path::ROOT, (timings, power), self.setting, timed)
    }

    /// The `first` cup and those that are heated with it, as one load.
    fn together(
        &self,
        resolver: &mut Resolver,
        first: Load,
        density: Option<MassDensity>,
        specific_heat: SpecificHeat,
        vessel: HeatCapacity,
    ) -> Option<Load> {
        let at = &At("/heated_together");
        let others = self.heated_together.as_deref().unwrap_or_default();
        let mut loads = resolver.each(at, others, |resolver, path, cup| {
            let mass = resolver.amount_of_mix(&path.key("mix"), &cup.mix, density);
            let specific_heat = match &cup.specific_heat {
                Some(own) => resolver.quantity(&path.key("specific_heat"), own).map(Into::into),
                None => Some(specific_heat),
            };
            let vessel = match (&cup.vessel, &cup.vessel_specific_heat) {
                (None, None) => Some(vessel),
                (mass, specific_heat) => resolver.vessel(
                    path,
                    ("vessel", mass.as_ref()),
                    ("vessel_specific_heat", specific_heat.as_ref()),
                ),
            };
            resolver.keep(path, Load::new(mass?, specific_heat?, vessel?))
        })?;
        loads.push(first);
        resolver.keep(at, Load::together(&loads))
    }

    /// Temperature of `load` by now, which had `from` when it was set down.
    fn cooled(
        &self,
        resolver: &mut Resolver,
        load: Load,
        from: ThermodynamicTemperature,
        density: Option<MassDensity>,
    ) -> Option<ThermodynamicTemperature> {
        let Some(entry) = &self.cooling else { return Some(from) };
        let at = &At("/cooling");
        let watched_from = resolver.quantity(&at.key("from"), &entry.from);
        let to = resolver.quantity(&at.key("to"), &entry.to);
        let time = resolver.quantity(&at.key("time"), &entry.time);
        let room = resolver.quantity(&at.key("room"), &entry.room);
        let stood = resolver.quantity(&at.key("stood"), &entry.stood);
        let watched = match &entry.mix {
            Some(mix) => resolver.amount_of_mix(&at.key("mix"), mix, density)?,
            None => load.mass(),
        };
        let cooling = Cooling::observed(watched, watched_from?, to?, time?, room?);
        let cooling = resolver.keep(at, cooling)?;
        resolver.keep(at, cooling.after(load.mass(), from, stood?, room?))
    }

    fn window(&self, resolver: &mut Resolver) -> Option<Window> {
        let (least, most) = &self.shot_window;
        let least = resolver.quantity(&At("/shot_window"), least);
        let most = resolver.quantity(&At("/shot_window"), most);
        let window = match &self.aim {
            Some(aim) => {
                let aim = resolver.quantity(&At("/aim"), aim)?;
                Window::new(least?, aim, most?)
            }
            None => Window::around(least?, most?),
        };
        resolver.keep(&At("/shot_window"), window)
    }

    fn precautions(&self, resolver: &mut Resolver) -> Option<Precautions> {
        let usual =
            Precautions { marks: ThermometerMarks::of(resolver.system), ..Precautions::default() };
        let thermometer = resolver.or_default(Parameter::Thermometer, self.thermometer.as_ref());
        let step = resolver.or_default(Parameter::BurstStep, self.burst_step.as_ref());
        let longest = resolver.or_default(Parameter::LongestBurst, self.longest_burst.as_ref());
        let turn = resolver.or_default(Parameter::OvenTurn, self.oven_turn.as_ref());
        Some(Precautions {
            thermometer: thermometer?,
            step: step?,
            longest: longest?,
            turn: turn?,
            ..usual
        })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};
    use std::vec::Vec;

    use crate::request::tests::{fault_codes, result};

    fn request() -> Value {
        json!({
            "calculate": "heat", "specific_heat": "2 J/(g.K)",
            "timings": [
                { "mix": "200 g", "from": "20 °C", "to": "120 °C", "time": "80 s" },
                { "mix": "400 g", "from": "20 °C", "to": "120 °C", "time": "160 s" }
            ],
            "mix": "300 g", "heated_from": "20 °C", "shot_window": ["160 °C", "180 °C"]
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    /// By hand: 200 g · 2 J/(g K) · 100 K in 80 s is 500 W; 300 g by 150 K then takes 180 s.
    #[test]
    fn power_and_time_by_hand() {
        let answer = result(request());
        assert!((answer["power"]["value"].as_f64().unwrap() - 500.0).abs() < 1e-9);
        assert!((answer["time"]["value"].as_f64().unwrap() - 180.0).abs() < 1e-9);
        let bands = answer["bands"].as_array().unwrap();
        let bursts: Vec<_> =
            bands.iter().map(|band| band["burst"]["text"].as_str().unwrap()).collect();
        assert_eq!(bursts.first(), Some(&"1:30"));
        assert_eq!(answer["shoot_to"]["text"], "352 °F");
        assert_eq!((&answer["beyond"], &answer["no_time"]), (&Value::Null, &Value::Null));
        assert_eq!(
            (&answer["guess"], &answer["setting"]["text"]),
            (&json!(false), &json!("100 %"))
        );
        assert_eq!(answer["cautions"][0], "hot-plastisol");
    }

    /// Two readings of the oven's own, 1 cup in 3:00 and 2 cups in 5:00: 3/4 cup takes 2:30, and a pot far from
    /// both still gets bursts.
    #[test]
    fn a_fixed_part_and_a_proportional_one() {
        let timing = |mix: &str, time: &str| json!({ "mix": mix, "from": "20 °C", "to": "170 °C", "time": time });
        let mut request =
            with("timings", json!([timing("1 cup", "3 min"), timing("2 cup", "5 min")]));
        request["timed_density"] = json!("1.03 g/mL");
        request["mix"] = json!("3/4 cup");
        assert_eq!(result(request.clone())["time"]["text"], "2 min 30 s");
        request["mix"] = json!("5 cup");
        let answer = result(request.clone());
        assert_eq!((&answer["time"], &answer["beyond"]["text"]), (&Value::Null, &json!("2.5")));
        assert!(answer["no_time"].as_str().unwrap().contains("time a pot of such an amount"));
        assert!(!answer["bands"].as_array().unwrap().is_empty());
        request["mix"] = json!("1/4 cup");
        assert_eq!(fault_codes(request), ["heat-too-fine"]);
    }

    /// 1000 W and m₀ of 150 g: 300 g take up 667 W. Timings win.
    #[test]
    fn a_rated_power_is_a_first_guess() {
        let mut request = with("oven_power", json!("1000 W"));
        assert_eq!(result(request.clone())["guess"], false);
        request.as_object_mut().unwrap().remove("timings");
        request["mix"] = json!("600 g");
        let answer = result(request.clone());
        assert_eq!((&answer["guess"], &answer["power"]["text"]), (&json!(true), &json!("800 W")));
        request["oven_power"] = json!("1000 kW");
        assert_eq!(fault_codes(request.clone()), ["out-of-range"]);
        request.as_object_mut().unwrap().remove("oven_power");
        assert_eq!(fault_codes(request), ["heat-no-timings"]);
    }

    /// 8 % more per kelvin from 120 °C on than from 20 °C, both to 170 °C: DEHP's line (Zábranský et al.).
    #[test]
    fn a_specific_heat_that_rises() {
        let mut request = with("specific_heat_rise", json!("0.001667 1/K"));
        request["timings"] =
            json!([{ "mix": "300 g", "from": "20 °C", "to": "170 °C", "time": "150 s" }]);
        request["shot_window"] = json!(["163 °C", "177 °C"]);
        assert_eq!(result(request.clone())["time"]["text"], "2 min 30 s");
        request["heated_from"] = json!("120 °C");
        let again = result(request)["time"]["value"].as_f64().unwrap();
        assert!((again / 50.0 - 1.08).abs() < 0.01, "{again}");
    }

    /// The vessel counts in the timings and in the heating, so half of it cancels for a like load.
    #[test]
    fn a_vessel_takes_its_share() {
        let mut request = with("vessel_mass", json!("1 kg"));
        request["vessel_specific_heat"] = json!("0.8 J/(g.K)");
        request["timings"] = json!([
            { "mix": "300 g", "from": "20 °C", "to": "120 °C", "time": "120 s" }
        ]);
        let answer = result(request);
        // (600 + 800) J/K · 100 K in 120 s.
        assert!((answer["power"]["value"].as_f64().unwrap() - 140_000.0 / 120.0).abs() < 1e-9);
        assert!((answer["time"]["value"].as_f64().unwrap() - 180.0).abs() < 1e-9);
        assert!(answer["power_uncertainty"]["value"].as_f64().unwrap() > 0.05 * 140_000.0 / 120.0);
    }

    #[test]
    fn a_timing_that_does_not_fit_is_questioned() {
        let timing = |seconds: &str| json!({ "mix": "200 g", "from": "20 °C", "to": "120 °C", "time": seconds });
        let asked = |last: &str| {
            let timings = ["80 s", "81 s", "79 s", last].map(timing);
            let mut request = with("timings", json!(timings));
            request["mix"] = json!("200 g");
            result(request)["questioned"].clone()
        };
        assert_eq!(asked("82 s"), Value::Null);
        let text = asked("160 s");
        assert!(text.as_str().is_some_and(|it| it.starts_with("Timing 4 does not fit")), "{text}");
        let mut fahrenheit = request();
        fahrenheit["timings"][1]["to"] = json!("320 °C");
        let asked = result(fahrenheit)["questioned"].clone();
        assert!(asked.as_str().is_some_and(|it| it.starts_with("Timing 2 ends at")), "{asked}");
    }

    /// The setting is that of the timings, where the oven's is not stated.
    #[test]
    fn a_setting_is_reported() {
        assert_eq!(result(with("setting", json!("50 %")))["setting"]["text"], "50 %");
        let mut request = request();
        request["timings"][0]["setting"] = json!("50 %");
        assert_eq!(fault_codes(request.clone()), ["heat-mixed-settings"]);
        request["timings"][1]["setting"] = json!("50 %");
        assert_eq!(result(request.clone())["setting"]["text"], "50 %");
        request["setting"] = json!("70 %");
        assert_eq!(fault_codes(request), ["heat-mixed-settings"]);
    }

    /// Two cups of 150 g are together 300 g, with a little more care. The vessel of the second counts on its own.
    #[test]
    fn alike_cups_are_on_one_clock() {
        let one = result(request());
        let mut two = with("mix", json!("150 g"));
        two["heated_together"] = json!([{ "mix": "150 g" }]);
        let answer = result(two.clone());
        for field in ["load", "time", "power"] {
            assert_eq!(answer[field], one[field]);
        }
        let top = |answer: &Value| answer["bands"][0]["below"]["value"].as_f64().unwrap();
        assert!(top(&answer) < top(&one));
        two["heated_together"][0]["vessel"] = json!("1 kg");
        assert_eq!(fault_codes(two.clone()), ["vessel-half-known"]);
        two["heated_together"][0]["vessel_specific_heat"] = json!("0.8 J/(g.K)");
        assert_eq!(fault_codes(two.clone()), ["heat-unlike-cups"]);
        two["heated_together"] = json!([{ "mix": "120 g" }]);
        assert_eq!(fault_codes(two), ["heat-unlike-cups"]);
    }

    /// From 170 °C to 120 °C in 10 min, in 20 °C: after twice that long 20 + 150/1.5² °C are left.
    #[test]
    fn a_pot_that_has_stood_is_heated_from_what_it_then_has() {
        let mut request = with("heated_from", json!("170 °C"));
        request["cooling"] = json!({
            "from": "170 °C", "to": "120 °C", "time": "10 min", "room": "20 °C", "stood": "20 min"
        });
        let answer = result(request.clone());
        let celsius = answer["from"]["value"].as_f64().unwrap();
        assert!((celsius - (20.0 + 150.0 / 2.25)).abs() < 1e-9, "{celsius}");
        let seconds = answer["time"]["value"].as_f64().unwrap();
        assert!((seconds - 600.0 * (170.0 - celsius) / 500.0).abs() < 1e-9, "{seconds}");
        request["cooling"]["to"] = json!("175 °C");
        assert_eq!(fault_codes(request), ["heat-no-cooling"]);
    }

    #[rstest]
    #[case("mix", json!("1 cup"), "volume-without-density")]
    #[case("burst_step", json!("0 s"), "out-of-range")]
    #[case("specific_heat_rise", json!("1 1/K"), "out-of-range")]
    #[case("timings", json!([]), "heat-no-timings")]
    #[case("shot_window", json!(["180 °C", "160 °C"]), "heat-window")]
    #[case("vessel_mass", json!("100 g"), "vessel-half-known")]
    #[case("thermometer", json!("15 K"), "heat-window-narrow")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

//! How long a pot takes in the shop's own oven, and in which bursts.

use alloc::vec::Vec;

use super::response;
use crate::caution::Caution;
use crate::document::entry::entry;
use crate::document::path::Path::{self, At};
use crate::document::process::TimingEntry;
use crate::document::resolve::Resolver;
use crate::document::resolve::oven::Timed;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::parameter::parameter;
use crate::plan::process::{Burst, shown_bursts};
use crate::plan::{Shown, text};
use crate::process::heat::{Load, Oven, Precautions, Reach, Window};
use crate::quantity::{
    Amount, HeatCapacity, Mass, MassDensity, Power, Ratio, SpecificHeatCapacity, System,
    TemperatureInterval, ThermodynamicTemperature, Time,
};

entry! {
    /// Asks for the heating of a pot. Cups that are heated together are one load.
    pub struct HeatRequest {
        required {
            #[doc = parameter!(timings)]
            timings: Vec<TimingEntry>,
            #[doc = parameter!(specific_heat)]
            specific_heat: Written<SpecificHeatCapacity>,
            #[doc = parameter!(mix)]
            mix: Amount,
            #[doc = parameter!(heated_from)]
            from: Written<ThermodynamicTemperature>,
            #[doc = parameter!(shot_window)]
            shot_window: (Written<ThermodynamicTemperature>, Written<ThermodynamicTemperature>),
        }
        optional {
            #[doc = parameter!(aim)]
            aim: Written<ThermodynamicTemperature>,
            #[doc = parameter!(timed_density)]
            density: Written<MassDensity>,
            #[doc = parameter!(timed_specific_heat)]
            timed_specific_heat: Written<SpecificHeatCapacity>,
            #[doc = parameter!(setting)]
            setting: Percent,
            #[doc = parameter!(thermometer)]
            thermometer: Written<TemperatureInterval>,
            #[doc = parameter!(vessel_mass)]
            vessel: Written<Mass>,
            #[doc = parameter!(vessel_specific_heat)]
            vessel_specific_heat: Written<SpecificHeatCapacity>,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// A heating.
    pub struct HeatResponse {
        /// The setting of the oven that all of this holds for, as a share of full power.
        pub setting: Shown<Ratio>,
        /// The power that reaches mix and vessel.
        pub power: Shown<Power>,
        /// Its standard uncertainty; none of a single timing.
        pub power_uncertainty: Option<Shown<Power>>,
        /// How long it takes to the aim, without a break.
        pub time: Shown<Time>,
        /// Its standard uncertainty for one more heating.
        pub uncertainty: Option<Shown<Time>>,
        /// The bursts, as long as each comes out as expected.
        pub bursts: Vec<Burst>,
        /// How long the oven runs in them altogether.
        pub total: Shown<Time>,
        /// The most that the pot may have after as long a run in one go.
        pub in_one: Shown<ThermodynamicTemperature>,
        /// Whether that is above the window.
        pub one_overshoots: bool,
        /// The margin of the power that the bursts were made with.
        pub margin: Shown<Ratio>,
        /// Whether that margin is an assumption, the power resting on a single timing.
        pub margin_assumed: bool,
        /// How far the amount lies outside those that were timed, as a factor.
        pub beyond: Option<Shown<Ratio>>,
        /// What can hurt somebody.
        pub cautions: Vec<Caution>,
    }
}

impl HeatRequest {
    /// Takes the power from the timings, and from that the time and the bursts.
    ///
    /// # Errors
    /// Timings that are none; an amount too far from those that were timed; a pot that is hot
    /// already; a window that the thermometer is too coarse for.
    pub fn answer(&self) -> Result<HeatResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<HeatResponse> {
        let density = match &self.density {
            Some(density) => Some(resolver.quantity(&At("/density"), density)?),
            None => None,
        };
        let vessel = self.vessel(resolver);
        let oven = self.oven(resolver, density, vessel);
        let specific_heat = resolver.quantity(&At("/specific_heat"), &self.specific_heat);
        let mass = resolver.amount_of_mix(&At("/mix"), &self.mix, density);
        let from = resolver.quantity(&At("/from"), &self.from);
        let window = self.window(resolver);
        let load = Load::new(mass?, specific_heat?, vessel?);
        let load = resolver.keep(&At("/mix"), load)?;
        let (oven, from, window) = (oven?, from?, window?);
        let precautions = self.precautions(resolver)?;
        let bursts = resolver.keep(&Path::ROOT, oven.bursts(load, from, window, precautions))?;
        let heating = resolver.keep(&Path::ROOT, oven.time(load, from, window.aim()))?;
        let system = resolver.system;
        Some(HeatResponse {
            setting: text::percent(oven.setting()),
            power: text::power(oven.power()),
            power_uncertainty: oven.power_uncertainty().map(text::power),
            time: text::time(heating.time),
            uncertainty: heating.uncertainty.map(text::time),
            total: text::time(bursts.total),
            in_one: text::temperature(bursts.in_one, system),
            one_overshoots: bursts.one_overshoots,
            margin: text::percent(bursts.margin),
            margin_assumed: bursts.margin_assumed,
            beyond: match bursts.reach {
                Reach::Within => None,
                Reach::Beyond { factor, .. } => Some(text::factor(factor)),
            },
            bursts: shown_bursts(&bursts, system),
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
    ) -> Option<Oven> {
        let specific_heat = match &self.timed_specific_heat {
            Some(timed) => resolver.quantity(&At("/timed_specific_heat"), timed),
            None => self.specific_heat.to(resolver.system).ok(),
        };
        let timed = Timed { density, specific_heat: specific_heat?, vessel: vessel? };
        resolver.timings(&Path::ROOT, &self.timings, self.setting, timed)
    }

    /// The vessel's own heat capacity; zero where it is left to the timings.
    fn vessel(&self, resolver: &mut Resolver) -> Option<HeatCapacity> {
        match (&self.vessel, &self.vessel_specific_heat) {
            (None, None) => Some(HeatCapacity::default()),
            (Some(mass), Some(specific_heat)) => {
                let mass = resolver.quantity(&At("/vessel"), mass);
                Some(mass? * resolver.quantity(&At("/vessel_specific_heat"), specific_heat)?)
            }
            _ => {
                resolver.fault(
                    "vessel-half-known",
                    &Path::ROOT,
                    &"Of the vessel one number is missing.",
                    &"Give both \"vessel\" and \"vessel_specific_heat\", or neither: then it is left to the timings.",
                );
                None
            }
        }
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
        let precautions = Precautions::default();
        Some(match &self.thermometer {
            Some(thermometer) => {
                let thermometer = resolver.quantity(&At("/thermometer"), thermometer)?;
                Precautions { thermometer, ..precautions }
            }
            None => precautions,
        })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn request() -> Value {
        json!({
            "calculate": "heat", "specific_heat": "2 J/(g.K)",
            "timings": [
                { "mix": "200 g", "from": "20 °C", "to": "120 °C", "time": "80 s" },
                { "mix": "400 g", "from": "20 °C", "to": "120 °C", "time": "160 s" }
            ],
            "mix": "300 g", "from": "20 °C", "shot_window": ["160 °C", "180 °C"]
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
        assert_eq!(answer["bursts"].as_array().unwrap().len(), 2);
        assert_eq!(answer["bursts"][0]["duration"]["text"], "120 s");
        assert_eq!(answer["total"]["text"], "3 min");
        assert_eq!(answer["beyond"], Value::Null);
        assert_eq!(answer["setting"]["text"], "100 %");
        assert_eq!(answer["cautions"][0], "hot-plastisol");
    }

    /// The vessel counts in the timings and in the heating, so half of it cancels for a like load.
    #[test]
    fn a_vessel_takes_its_share() {
        let mut request = with("vessel", json!("1 kg"));
        request["vessel_specific_heat"] = json!("0.8 J/(g.K)");
        request["timings"] = json!([
            { "mix": "300 g", "from": "20 °C", "to": "120 °C", "time": "120 s" }
        ]);
        let answer = result(request);
        // (600 + 800) J/K · 100 K in 120 s.
        assert!((answer["power"]["value"].as_f64().unwrap() - 140_000.0 / 120.0).abs() < 1e-9);
        assert!((answer["time"]["value"].as_f64().unwrap() - 180.0).abs() < 1e-9);
        assert_eq!(answer["margin_assumed"], true);
    }

    /// The setting is that of the timings, where the oven's is not stated.
    #[test]
    fn a_setting_is_told() {
        assert_eq!(result(with("setting", json!("50 %")))["setting"]["text"], "50 %");
        let mut request = request();
        request["timings"][0]["setting"] = json!("50 %");
        assert_eq!(fault_codes(request.clone()), ["heat-mixed-settings"]);
        request["timings"][1]["setting"] = json!("50 %");
        assert_eq!(result(request.clone())["setting"]["text"], "50 %");
        request["setting"] = json!("70 %");
        assert_eq!(fault_codes(request), ["heat-mixed-settings"]);
    }

    #[rstest]
    #[case("mix", json!("1 kg"), "heat-out-of-reach")]
    #[case("mix", json!("1 cup"), "volume-without-density")]
    #[case("from", json!("175 °C"), "heat-hot-already")]
    #[case("timings", json!([]), "heat-no-timings")]
    #[case("shot_window", json!(["180 °C", "160 °C"]), "heat-window")]
    #[case("vessel", json!("100 g"), "vessel-half-known")]
    #[case("thermometer", json!("15 K"), "heat-aim-too-high")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

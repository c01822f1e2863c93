//! How long a shot sets in a metal mold, and how often one can be made.

use alloc::vec::Vec;

use super::{request, response};
use crate::caution::Caution;
use crate::codes::code;
use crate::document::process::{MoldCoolingEntry, SectionEntry};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::json::reader::Count;
use crate::parameter::Parameter;
use crate::process::clock;
use crate::process::shot_cooling::{self, Diffusivity, Point, ShotCooling};
use crate::quantity::{
    DiffusionCoefficient, Mass, SpecificHeatCapacity, System, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use crate::show::{Shown, text};

request! {
    /// Asks how long a shot sets in a metal mold.
    pub struct CoolingRequest {
        required {
            section: SectionEntry,
            shot_at: Written<ThermodynamicTemperature>,
        }
        optional {
            mold_cooling: MoldCoolingEntry,
            piece_point: Point,
            diffusivity: Written<DiffusionCoefficient>,
            shot_mass: Written<Mass>,
            shot_specific_heat: Written<SpecificHeatCapacity>,
            hands: Written<Time>,
            molds: Count,
            measures: System,
        }
    }
}

response! {
    /// The setting of a shot.
    pub struct CoolingResponse {
        /// How long it sets, the mold as warm as the shot leaves it.
        pub time: Shown<Time>,
        /// The same with the highest diffusivity of soft PVC.
        pub shortest: Shown<Time>,
        /// The same with the lowest.
        pub longest: Shown<Time>,
        /// Whether it sets so fast that the time is too long: that of a Fourier number of 0.2.
        pub bound: bool,
        /// How much one shot warms the mold; none where its mass is not given.
        pub warms: Option<Shown<TemperatureInterval>>,
        /// How often the mold can be shot in a row before it is too warm, nothing lost between; none where its mass
        /// is not given, or it goes on.
        pub in_a_row: Option<u32>,
        /// How often a shot can be made; none without the time at hand.
        pub every: Option<Shown<Time>>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl CoolingRequest {
    /// Calculates the setting of a shot.
    ///
    /// # Errors
    /// A mold that is not of metal; one as warm as the piece should become; numbers out of range.
    pub fn answer(&self) -> Result<CoolingResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<CoolingResponse> {
        let section = resolver.section(&At("/section"), &self.section);
        let shot = resolver.given(Parameter::ShotAt, &self.shot_at);
        let mold = match &self.mold_cooling {
            Some(entry) => resolver.mold_cooling(&At("/mold_cooling"), entry, section, false),
            None => section.map(Resolver::usual_mold),
        };
        let diffusivity = match &self.diffusivity {
            Some(written) => {
                let expected = resolver.given(Parameter::Diffusivity, written)?;
                Diffusivity { expected, lowest: expected, highest: expected }
            }
            None => Diffusivity::default(),
        };
        let point = self.piece_point.unwrap_or(Point::Center);
        let (mold, section) = (mold?, section?);
        let cooling =
            ShotCooling { section, point, diffusivity, shot: shot?, take_out: mold.take_out };
        let warms = match mold.heat_capacity {
            Some(capacity) => {
                let Some(mass) = &self.shot_mass else {
                    resolver.fault(
                        code!("shot-mass-missing"),
                        &Path::ROOT,
                        &"How much a shot warms the mold follows from its mass, and that is missing.",
                        &"Give \"shot_mass\", or leave the mass of the mold out.",
                    );
                    return None;
                };
                let mass = resolver.given(Parameter::ShotMass, mass)?;
                let specific_heat = match &self.shot_specific_heat {
                    Some(own) => resolver.given(Parameter::ShotSpecificHeat, own)?,
                    None => shot_cooling::specific_heat(),
                };
                let warms = cooling.warms(mass * specific_heat, capacity);
                Some(resolver.keep(&At("/mold_cooling"), warms)?)
            }
            None => None,
        };
        let warm = warms.map_or(mold.at, |warms| mold.at + warms);
        let setting = resolver.keep(&At("/mold_cooling"), cooling.in_mold(warm))?;
        let every = match &self.hands {
            Some(hands) => {
                let hands = resolver.given(Parameter::Hands, hands)?;
                let molds = self.molds.map_or(1, |Count(molds)| molds);
                Some(resolver.keep(&At("/hands"), clock::every(hands, setting.time, molds))?)
            }
            None => None,
        };
        Some(CoolingResponse {
            time: text::time(setting.time),
            shortest: text::time(setting.shortest),
            longest: text::time(setting.longest),
            bound: setting.is_bound,
            warms: warms.map(text::interval),
            in_a_row: warms.and_then(|warms| cooling.in_a_row(mold.at, warms)),
            every: every.map(text::time),
            cautions: Vec::from([Caution::HotPlastisol, Caution::Water]),
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
            "calculate": "cooling", "section": { "rod": "9 mm" }, "shot_at": "165 °C",
            "mold_cooling": { "at": "30 °C", "take_out": "50 °C" }
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    /// Carslaw and Jaeger with a held surface, 8.0e-8 m²/s (scipy 1.17.1, full series): 104.2 s.
    #[test]
    fn a_stick_of_9_mm() {
        let answer = result(request());
        assert!((answer["time"]["value"].as_f64().unwrap() - 104.2).abs() < 0.1, "{answer}");
        let [shortest, longest] =
            ["shortest", "longest"].map(|it| answer[it]["value"].as_f64().unwrap());
        assert!(shortest < 104.2 && longest > 104.2);
        assert_eq!(answer["warms"], Value::Null);
        let mean = result(with("piece_point", json!("mean")));
        assert!((mean["time"]["value"].as_f64().unwrap() - 67.5).abs() < 0.1, "{mean}");
    }

    /// 40 g of 1.9 J/(g K) cooled by 115 K warm 500 g of aluminum of 0.896 J/(g K) by 19.5 K (heat balance).
    #[test]
    fn a_shot_warms_its_mold() {
        let mut request = with("shot_mass", json!("40 g"));
        request["mold_cooling"] = json!({
            "at": "25 °C", "take_out": "50 °C", "mass": "500 g", "specific_heat": "0.896 J/(g.K)"
        });
        let answer = result(request.clone());
        assert!((answer["warms"]["value"].as_f64().unwrap() - 19.51).abs() < 0.01, "{answer}");
        assert_eq!(answer["in_a_row"], 1);
        request["hands"] = json!("50 s");
        let one = result(request.clone());
        let [every, time] = ["every", "time"].map(|it| one[it]["value"].as_f64().unwrap());
        assert!((every - (50.0 + time)).abs() < 1e-9, "{one}");
        request["molds"] = json!(2);
        let answer = result(request.clone());
        let time = answer["time"]["value"].as_f64().unwrap();
        let every = answer["every"]["value"].as_f64().unwrap();
        assert!((every - f64::max(50.0, (50.0 + time) / 2.0)).abs() < 1e-9, "{answer}");
        request.as_object_mut().unwrap().remove("shot_mass");
        assert_eq!(fault_codes(request), ["shot-mass-missing"]);
    }

    #[rstest]
    #[case("mold_cooling", json!({ "at": "55 °C", "take_out": "55 °C" }), "mold-too-warm")]
    #[case("mold_cooling", json!({ "of": "silicone" }), "mold-not-metal")]
    #[case("mold_cooling", json!({ "of": "plaster" }), "mold-not-metal")]
    #[case("section", json!({ "rod": "9 mm", "ball": "9 mm" }), "section-not-one")]
    #[case("section", json!({ "rod": "9 m" }), "out-of-range")]
    #[case("shot_at", json!("40 °C"), "shot-not-hotter")]
    #[case("diffusivity", json!("8 m2/s"), "out-of-range")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

//! How fast a piece sinks, and the density for a wanted fall.

use super::{request, response};
use crate::codes::code;
use crate::document::process::{BodyEntry, FishedWaterEntry, HookEntry};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::process::sink::Motion;
use crate::quantity::{Length, MassDensity, Measured, System, Time, Velocity, Volume};
use crate::salt::Hook;
use crate::show::{Shown, text};

request! {
    /// Asks how a piece sinks: at a density, or which density it needs for a speed.
    pub struct SinkRequest {
        required {
            body: BodyEntry,
            piece_volume: Written<Volume>,
            fished_water: FishedWaterEntry,
        }
        optional {
            piece_density: Written<MassDensity>,
            sink_rate: Written<Velocity>,
            hook: HookEntry,
            depth: Written<Length>,
            measures: System,
        }
    }
}

response! {
    /// A fall, as a model has it: it lies between the two bounds.
    pub struct SinkResponse {
        /// Density of the piece, its salt and voids counted.
        pub density: Shown<MassDensity>,
        /// Standard uncertainty of that, where it was given: twice that to either side is in the bounds.
        pub density_uncertainty: Option<Shown<MassDensity>>,
        /// How fast it falls with its hook.
        pub sink_rate: Shown<Velocity>,
        /// Lower bound.
        pub slowest: Shown<Velocity>,
        /// Upper bound.
        pub fastest: Shown<Velocity>,
        /// Whether it falls straight, as the model has it.
        pub motion: Motion,
        /// Reynolds number.
        pub reynolds: f64,
        /// Drag coefficient, on length times diameter of a stick and the cross-section of a ball.
        pub drag_coefficient: f64,
        /// Time to the depth asked for, from rest just below the surface.
        pub time: Option<Shown<Time>>,
        /// Density of the water.
        pub water: Shown<MassDensity>,
    }
}

impl SinkRequest {
    /// Balances weight, buoyancy and drag.
    ///
    /// # Errors
    /// A piece that floats, with the density at which it would not; a hook too heavy for the speed;
    /// a fall outside the published drag; water outside its equations.
    pub fn answer(&self) -> Result<SinkResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<SinkResponse> {
        let _system = resolver.system;
        let water = resolver.fished_water(&At("/fished_water"), &self.fished_water);
        let body = resolver.body(&At("/body"), &self.body);
        let volume = resolver.given(Parameter::PieceVolume, &self.piece_volume);
        let hook = match &self.hook {
            None => Some(Hook::default()),
            Some(hook) => resolver.hook(&At("/hook"), hook),
        };
        let (body, water) = (body?, water?.water);
        let volume = volume?;
        resolver.keep(&At("/piece_volume"), body.shape.check_volume(volume))?;
        let at = if body.drop.is_some() { At("/body/drop") } else { At("/body") };
        let body = resolver.keep(&at, body.of(volume, hook?, &water))?;
        let density = match (&self.piece_density, &self.sink_rate) {
            (Some(density), None) => resolver.measured_given(Parameter::PieceDensity, density),
            (None, Some(speed)) => {
                let speed = resolver.given(Parameter::SinkRate, speed)?;
                let density = resolver.keep_named(
                    &At("/sink_rate"),
                    Self::FIELDS,
                    body.density_for(speed, &water),
                );
                density.map(Measured::exact)
            }
            _ => {
                resolver.fault(
                    code!("density-or-speed"),
                    &Path::ROOT,
                    &"It must ask for one thing.",
                    &"Give \"piece_density\" to learn the sink rate, or \"sink_rate\" to learn the density.",
                );
                None
            }
        }?;
        let unsure = density.uncertainty;
        let (density, within) = (density.value, unsure.unwrap_or_default());
        let fall = resolver.keep_named(
            &At("/body"),
            Self::FIELDS,
            body.fall_within(density, within, &water),
        )?;
        let time = match &self.depth {
            None => None,
            Some(depth) => {
                let depth = resolver.given(Parameter::Depth, depth)?;
                Some(text::seconds(resolver.keep(&At("/depth"), fall.time_to(depth))?))
            }
        };
        Some(SinkResponse {
            density: text::density(density),
            density_uncertainty: unsure.map(text::unsure_density),
            sink_rate: text::speed(fall.speed),
            slowest: text::speed(fall.trust.slowest),
            fastest: text::speed(fall.trust.fastest),
            motion: fall.trust.motion,
            reynolds: fall.reynolds,
            drag_coefficient: fall.drag_coefficient,
            time,
            water: text::density(water.density),
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
            "calculate": "sink", "piece_volume": "9.5 mL", "fished_water": { "temperature": "20 °C" },
            "body": { "stick": { "diameter": "10 mm", "length": "121 mm" } },
            "hook": { "mass": "2 g", "volume": "0.25 mL" },
            "piece_density": "1.1 g/mL", "depth": "1 m"
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    fn number(answer: &Value, field: &str) -> f64 {
        answer[field]["value"].as_f64().unwrap()
    }

    /// The speed balances weight and drag: W = ½ρv²dl·C_D, and the answer says which C_D.
    #[test]
    fn the_speed_balances() {
        let answer = result(request());
        let (v, cd) =
            (number(&answer, "sink_rate") / 100.0, answer["drag_coefficient"].as_f64().unwrap());
        let water = number(&answer, "water") * 1e3;
        let weight = (1100.0 * 9.5e-6 + 2e-3 - water * 9.75e-6) * 9.80665;
        let drag = 0.5 * water * v * v * 0.010 * 0.121 * cd;
        assert!((weight / drag - 1.0).abs() < 1e-9);
        assert!(number(&answer, "slowest") < 100.0 * v && 100.0 * v < number(&answer, "fastest"));
        assert!(number(&answer, "time") > 1.0 / v);
    }

    /// The density for the speed of a density is that density.
    #[test]
    fn there_and_back() {
        let speed = number(&result(request()), "sink_rate");
        let mut request = with("sink_rate", json!({ "value": speed, "unit": "cm/s" }));
        request.as_object_mut().unwrap().remove("piece_density");
        assert!((number(&result(request), "density") - 1.1).abs() < 1e-9);
    }

    /// Sea water carries more, so that the same piece falls slower.
    #[test]
    fn slower_in_the_sea() {
        let sea = |field: &str, salinity: Value| {
            let water = json!({ "temperature": "20 °C", field: salinity });
            number(&result(with("fished_water", water)), "sink_rate")
        };
        let practical = |salinity: f64| sea("salinity_practical", json!(salinity));
        assert!(practical(35.0) < practical(0.0));
        let absolute = sea("salinity_absolute", json!("35.16504 g/kg"));
        assert!((practical(35.0) - absolute).abs() < 1e-6);
    }

    /// A drop that took as long as the model says changes nothing.
    #[test]
    fn a_drop_as_expected() {
        let time = number(&result(request()), "time");
        let drop = json!({ "depth": "1 m", "time": { "value": time, "unit": "s" }, "density": "1.1 g/mL" });
        let mut request = request();
        request["body"]["drop"] = drop;
        let answer = result(request);
        assert!((number(&answer, "time") - time).abs() < 1e-6 * time);
    }

    /// The uncertainty after ± is in the bounds.
    #[test]
    fn an_unsure_density_counts() {
        let sure = result(request());
        let unsure = result(with("piece_density", json!("1.1 g/mL ± 0.01")));
        assert_eq!(
            (&unsure["sink_rate"], number(&unsure, "density_uncertainty")),
            (&sure["sink_rate"], 0.01)
        );
        assert_eq!(sure["density_uncertainty"], Value::Null);
        assert!(number(&unsure, "slowest") < number(&sure, "slowest"));
        assert!(number(&unsure, "fastest") > number(&sure, "fastest"));
    }

    #[test]
    fn a_drop_that_cannot_be_is_at_the_drop() {
        let mut request = request();
        request["body"]["drop"] = json!({ "depth": "1 m", "time": "0.1 s", "density": "1.1 g/mL" });
        let answer = crate::request::answer_value(&request);
        assert_eq!(answer["faults"][0]["path"], "/body/drop", "{answer}");
    }

    #[rstest]
    #[case("piece_density", json!("0.7 g/mL"), "sink-floats")]
    #[case("sink_rate", json!("5 cm/s"), "density-or-speed")]
    #[case("body", json!({}), "stick-or-ball")]
    #[case("body", json!({ "stick": { "diameter": "10 mm", "length": "15 mm" } }), "sink-stick-too-short")]
    #[case("fished_water", json!({ "temperature": "60 °C" }), "out-of-range")]
    #[case("fished_water", json!({ "temperature": "20 °C", "salinity_practical": 80 }), "out-of-range")]
    #[case("fished_water", json!({ "temperature": "20 °C", "salinity_practical": 35, "salinity_absolute": "35 g/kg" }), "excludes-other")]
    #[case(
        "body",
        json!({
            "stick": { "diameter": "10 mm", "length": "121 mm" },
            "drop": { "depth": "1 m", "time": "0.1 s", "density": "1.1 g/mL" }
        }),
        "sink-drop-too-quick"
    )]
    #[case("piece_volume", json!("95 mL"), "sink-volume-not-of-body")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

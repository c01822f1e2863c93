//! How long a pot stays hot.

use alloc::vec::Vec;

use super::{request, response};
use crate::caution::Caution;
use crate::document::process::CoolsEntry;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::mix::reference_temperature;
use crate::parameter::Parameter;
use crate::quantity::{Amount, MassDensity, Ratio, System, ThermodynamicTemperature, Time};
use crate::show::{Shown, text};

request! {
    /// Asks how long a pot stays hot, by a pot that was watched to cool.
    pub struct StaysHotRequest {
        required {
            cools: CoolsEntry,
            hot_mix: Amount,
            hot_from: Written<ThermodynamicTemperature>,
            hot_to: Written<ThermodynamicTemperature>,
        }
        optional {
            room: Written<ThermodynamicTemperature>,
            timed_density: Written<MassDensity>,
            stood: Written<Time>,
            measures: System,
        }
    }
}

response! {
    /// How long a pot stays hot.
    pub struct StaysHotResponse {
        /// The time in which the distance to the room's temperature falls to 37 %.
        pub time_constant: Shown<Time>,
        /// How long it takes down to the lower temperature, with all of the mix in it.
        pub hot_for: Shown<Time>,
        /// The same with half of it.
        pub half_full: Shown<Time>,
        /// The temperature after the time it stood.
        pub after: Option<Shown<ThermodynamicTemperature>>,
        /// How many times as long as the watch that time is: above 1 the temperature may be too cold, at 3 by up to
        /// 3.5 K.
        pub beyond: Option<Shown<Ratio>>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl StaysHotRequest {
    /// Calculates the cooling of the pot.
    ///
    /// # Errors
    /// A watch that is no cooling; a room that is hotter than the lower temperature.
    pub fn answer(&self) -> Result<StaysHotResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<StaysHotResponse> {
        let density = match &self.timed_density {
            Some(density) => Some(resolver.given(Parameter::TimedDensity, density)?),
            None => None,
        };
        let room = match &self.room {
            Some(room) => resolver.given(Parameter::Room, room)?,
            None => reference_temperature(),
        };
        let cooling = resolver.cooling(&At("/cools"), &self.cools, density, room);
        let mix = resolver.amount_of_mix(&At("/hot_mix"), &self.hot_mix, density);
        let from = resolver.given(Parameter::HotFrom, &self.hot_from);
        let to = resolver.given(Parameter::HotTo, &self.hot_to);
        let (cooling, mix, from, to) = (cooling?, mix?, from?, to?);
        let hot_for = resolver.keep(&At("/hot_to"), cooling.time(mix, from, to, room))?;
        let half_full = resolver.keep(&At("/hot_to"), cooling.time(mix / 2.0, from, to, room))?;
        let stood = match &self.stood {
            Some(stood) => Some(resolver.given(Parameter::Stood, stood)?),
            None => None,
        };
        let after = match stood {
            Some(stood) => {
                Some(resolver.keep(&At("/stood"), cooling.after(mix, from, stood, room))?)
            }
            None => None,
        };
        let watched = self.cools.time.to(resolver.system).ok()?;
        let time_constant = resolver.keep(&At("/hot_mix"), cooling.time_constant(mix))?;
        Some(StaysHotResponse {
            time_constant: text::time(time_constant),
            hot_for: text::time(hot_for),
            half_full: text::time(half_full),
            after: after.map(|after| text::temperature(after, resolver.system)),
            beyond: stood.map(|stood| text::factor(stood / watched)),
            cautions: Vec::from([Caution::HotPlastisol, Caution::Fumes]),
        })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    /// 170 °C seen at 150 °C after 300 s in a room of 22 °C.
    fn request() -> Value {
        json!({
            "calculate": "stays-hot", "hot_mix": "500 g", "hot_from": "170 °C", "hot_to": "130 °C", "room": "22 °C",
            "cools": { "mix": "500 g", "from": "170 °C", "to": "150 °C", "time": "300 s" },
            "stood": "600 s"
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    /// Newton's law by plain arithmetic: τ 2066.4 s, 132.7 °C after 600 s, 130 °C after 651.1 s.
    #[test]
    fn newtons_law() {
        let answer = result(request());
        let number = |field: &str| answer[field]["value"].as_f64().unwrap();
        assert!((number("time_constant") - 2066.372).abs() < 1e-3);
        assert!((number("after") - 132.7027).abs() < 1e-4);
        assert!((number("hot_for") - 651.0746).abs() < 1e-4);
        assert!((number("beyond") - 2.0).abs() < 1e-12);
        assert!((number("half_full") / number("hot_for") - 0.5 * 5.5 / 3.5).abs() < 1e-9);
    }

    #[rstest]
    #[case("room", json!("140 °C"), "heat-no-cooling")]
    #[case("hot_mix", json!("1 cup"), "volume-without-density")]
    #[case("cools", json!({ "mix": "500 g", "from": "150 °C", "to": "170 °C", "time": "300 s" }), "heat-no-cooling")]
    #[case("cools", json!({ "mix": "500 g", "from": "170 °C", "to": "150 °C", "time": "0 s" }), "out-of-range")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

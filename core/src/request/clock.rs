//! How many heats the shots of a pot take, and where the reheats are.

use alloc::vec::Vec;

use super::{request, response};
use crate::caution::Caution;
use crate::codes::code;
use crate::document::process::CoolsEntry;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::json::reader::Count;
use crate::mix::reference_temperature;
use crate::parameter::Parameter;
use crate::process::clock::{self, Hot, ShotSeries};
use crate::quantity::{Amount, Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Time};
use crate::show::{Shown, text};

request! {
    /// Asks for the heats of a pot.
    pub struct ClockRequest {
        required {
            clock_mix: Amount,
            clock_runs: Vec<RunEntry>,
        }
        optional {
            hot_for: Written<Time>,
            cools: CoolsEntry,
            clock_from: Written<ThermodynamicTemperature>,
            clock_to: Written<ThermodynamicTemperature>,
            room: Written<ThermodynamicTemperature>,
            oven_time: Written<Time>,
            timed_density: Written<MassDensity>,
            measures: System,
        }
    }
}

entry! {
    /// Like shots in a row.
    pub struct RunEntry {
        required {
            /// How many shots.
            shots: Count,
            /// Mass that one takes out of the pot, its sprue included.
            takes: Written<Mass>,
            /// The time at hand for one: fill, shoot, top off, take out.
            hands: Written<Time>,
        }
        optional {
            /// How long it sets; default: no longer than the hands take.
            sets: Written<Time>,
            /// How many such molds are shot in turn; default: 1.
            molds: Count,
        }
    }
}

response! {
    /// The heats of a pot.
    pub struct ClockResponse {
        /// The heats in their order.
        pub heats: Vec<ClockHeat>,
        /// How many of them are reheats.
        pub reheats: u32,
        /// All shots, without the oven.
        pub shooting: Shown<Time>,
        /// All shots and the oven's time for each heat, where that is given.
        pub total: Option<Shown<Time>>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

response! {
    /// One heat.
    pub struct ClockHeat {
        /// How many shots were made before it.
        pub after: u32,
        /// How many shots are made in it.
        pub shots: u32,
        /// Mass in the pot at its start.
        pub mass: Shown<Mass>,
        /// From the last burst to the last shot.
        pub lasts: Shown<Time>,
        /// How much of the time that the pot stays hot that is.
        pub used: Shown<Ratio>,
    }
}

impl ClockRequest {
    /// Puts the shots into heats.
    ///
    /// # Errors
    /// A pot that does not stay hot for a single shot, or holds less than its shots take; neither how long it
    /// stays hot nor how it cools.
    pub fn answer(&self) -> Result<ClockResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<ClockResponse> {
        let density = match &self.timed_density {
            Some(density) => Some(resolver.given(Parameter::TimedDensity, density)?),
            None => None,
        };
        let mass = resolver.amount_of_mix(&At("/clock_mix"), &self.clock_mix, density);
        let hot = self.hot(resolver, density);
        let runs = resolver.each(&At("/clock_runs"), &self.clock_runs, |resolver, path, run| {
            let takes = resolver.quantity(&path.key("takes"), &run.takes);
            let hands = resolver.quantity(&path.key("hands"), &run.hands);
            let sets = resolver.or_zero(&path.key("sets"), run.sets.as_ref());
            let Count(molds) = run.molds.unwrap_or(Count(1));
            let every = resolver.keep(path, clock::every(hands?, sets?, molds))?;
            let Count(shots) = run.shots;
            Some(ShotSeries { shots, every, takes: takes? })
        });
        let heats = resolver.keep(&Path::ROOT, clock::heats(mass?, &runs?, &hot?))?;
        let oven_time = match &self.oven_time {
            Some(time) => Some(resolver.given(Parameter::OvenTime, time)?),
            None => None,
        };
        let shooting = heats.iter().fold(Time::default(), |sum, heat| sum + heat.lasts);
        let shown = heats.iter().map(|heat| ClockHeat {
            after: heat.after,
            shots: heat.shots,
            mass: text::mass(heat.mass),
            lasts: text::time(heat.lasts),
            used: text::percent(heat.used),
        });
        let count = u32::try_from(heats.len()).unwrap_or(u32::MAX);
        Some(ClockResponse {
            heats: shown.collect(),
            reheats: count.saturating_sub(1),
            shooting: text::time(shooting),
            total: oven_time.map(|time| text::time(shooting + time * f64::from(count))),
            cautions: Vec::from([Caution::HotPlastisol, Caution::Fumes]),
        })
    }

    /// How long the pot stays hot: the shop's own time wins.
    fn hot(&self, resolver: &mut Resolver, density: Option<MassDensity>) -> Option<Hot> {
        if let Some(hot_for) = &self.hot_for {
            return resolver.given(Parameter::HotFor, hot_for).map(Hot::Stated);
        }
        let (Some(cools), Some(from), Some(to)) = (&self.cools, &self.clock_from, &self.clock_to)
        else {
            resolver.fault(
                code!("hot-time-not-known"),
                &Path::ROOT,
                &"How long the pot stays hot is not known.",
                &"Give \"hot_for\", or how it \"cools\" with the temperatures \"clock_from\" and \"clock_to\".",
            );
            return None;
        };
        let room = match &self.room {
            Some(room) => resolver.given(Parameter::Room, room)?,
            None => reference_temperature(),
        };
        let cooling = resolver.cooling(&At("/cools"), cools, density, room);
        let from = resolver.given(Parameter::ClockFrom, from);
        let to = resolver.given(Parameter::ClockTo, to);
        Some(Hot::Watched { cooling: cooling?, room, from: from?, to: to? })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};
    use std::vec::Vec;

    use crate::request::tests::{fault_codes, result};

    /// 22 shots of 50 s out of a pot that stays hot for 8 min: 9 shots take 7:30, the tenth would end at 8:20.
    fn request() -> Value {
        json!({
            "calculate": "clock", "clock_mix": "1200 g", "hot_for": "8 min",
            "clock_runs": [{ "shots": 22, "takes": "48 g", "hands": "50 s" }]
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    #[test]
    fn shots_of_a_day_take_their_reheats() {
        let answer = result(request());
        let shots: Vec<u64> = answer["heats"]
            .as_array()
            .unwrap()
            .iter()
            .map(|it| it["shots"].as_u64().unwrap())
            .collect();
        assert_eq!(shots, [9, 9, 4]);
        assert_eq!(answer["reheats"], 2);
        assert_eq!(answer["heats"][1]["after"], 9);
        assert_eq!(answer["heats"][1]["mass"]["text"], "768 g");
        assert_eq!(answer["shooting"]["text"], "18 min 20 s");
        assert_eq!(answer["total"], Value::Null);
        let timed = result(with("oven_time", json!("4 min")));
        assert_eq!(timed["total"]["text"], "30 min 20 s");
    }

    /// A shot that sets for 100 s in one mold can be made every 150 s, in three of them every 50 s.
    #[rstest]
    #[case(1, 8)]
    #[case(2, 4)]
    #[case(3, 3)]
    fn more_molds_take_fewer_heats(#[case] molds: u32, #[case] heats: usize) {
        let mut request = request();
        request["clock_runs"][0]["sets"] = json!("100 s");
        request["clock_runs"][0]["molds"] = json!(molds);
        assert_eq!(result(request)["heats"].as_array().unwrap().len(), heats);
    }

    /// From 170 °C to 163 °C in 22 °C, τ 2066.4 s for 1200 g: 100 s; less and less as the pot is emptied.
    #[test]
    fn a_pot_that_was_watched() {
        let mut request = request();
        request.as_object_mut().unwrap().remove("hot_for");
        assert_eq!(fault_codes(request.clone()), ["hot-time-not-known"]);
        request["cools"] = json!({ "mix": "1200 g", "from": "170 °C", "to": "150 °C", "time": "300 s", "room": "22 °C" });
        request["clock_from"] = json!("170 °C");
        request["clock_to"] = json!("150 °C");
        request["room"] = json!("22 °C");
        let answer = result(request);
        let heats = answer["heats"].as_array().unwrap();
        assert_eq!(heats[0]["shots"], 5);
        let shots: Vec<u64> = heats.iter().map(|it| it["shots"].as_u64().unwrap()).collect();
        assert!(shots.windows(2).all(|two| two[1] <= two[0]), "{shots:?}");
        assert_eq!(shots.iter().sum::<u64>(), 22);
    }

    #[rstest]
    #[case("hot_for", json!("40 s"), "clock-too-short")]
    #[case("clock_mix", json!("500 g"), "clock-empty")]
    #[case("hot_for", json!("0 s"), "out-of-range")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

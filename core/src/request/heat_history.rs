//! Heat history of a pot, and the heat budget that is left.

use alloc::vec::Vec;

use super::{request, response};
use crate::caution::Caution;
use crate::codes::code;
use crate::document::process::BuysEntry;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Sourced, Written};
use crate::fault::Faults;
use crate::json::Count;
use crate::json::path::Path::At;
use crate::parameter::Parameter;
use crate::process::budget::{Budget, BudgetStatus, Remaining};
use crate::process::history::{HeatRecord, Kinetics, Reading};
use crate::quantity::{MolarEnergy, System, ThermodynamicTemperature, Time};
use crate::show::{Shown, text};

request! {
    /// Asks what a heat came to, as time at one temperature.
    pub struct HeatHistoryRequest {
        required {
            readings: Vec<ReadingEntry>,
            activation_energy: Sourced<MolarEnergy>,
            reference_temperature: Written<ThermodynamicTemperature>,
        }
        optional {
            spent_before: Written<Time>,
            heats_before: Count,
            heat_budget: Written<Time>,
            budget_with: Share,
            stabilizer_dose: Share,
            buys: BuysEntry,
            measures: System,
        }
    }
}

request! {
    /// A temperature at a time.
    pub struct ReadingEntry {
        required {
            reading_time: Written<Time>,
            reading_temperature: Written<ThermodynamicTemperature>,
        }
        optional {}
    }
}

response! {
    /// Heat of the pot. Without a budget only the heat spent is known.
    pub struct HeatHistoryResponse {
        /// This heat, as time at the reference temperature.
        pub equivalent: Shown<Time>,
        /// All heats, this one included.
        pub heats: u32,
        /// Heat spent by all of them; unknown if earlier heats were not counted.
        pub spent: Option<Shown<Time>>,
        /// Time that the plastisol withstands with its stabilizer.
        pub budget: Option<Shown<Time>>,
        /// The part of it that is left.
        pub left: Option<Shown<Time>>,
        /// Heat spent beyond it.
        pub over: Option<Shown<Time>>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl HeatHistoryRequest {
    /// Counts the heat, and balances it against the budget.
    ///
    /// # Errors
    /// Readings that are no history; an activation energy that is none, or has no source; a dose of
    /// stabilizer that the budget does not reach.
    pub fn answer(&self) -> Result<HeatHistoryResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<HeatHistoryResponse> {
        let energy = resolver.given(Parameter::ActivationEnergy, &self.activation_energy.value);
        let reference =
            resolver.given(Parameter::ReferenceTemperature, &self.reference_temperature);
        let readings = self.readings(resolver);
        let budget = self.budget(resolver);
        let source = self.activation_energy.source.clone().unwrap_or_default();
        let kinetics = Kinetics::new(energy?, reference?, source);
        let kinetics = resolver.keep(&At("/activation_energy"), kinetics)?;
        let equivalent = resolver.keep(&At("/readings"), kinetics.equivalent_time(&readings?))?;
        let mut record = HeatRecord::fresh();
        record.heats = self.heats_before.map_or(0, |Count(heats)| heats);
        record.spent = match &self.spent_before {
            Some(before) => Some(self.before(resolver, before)?),
            None if record.heats > 0 => None,
            None => record.spent,
        };
        let record = record.heated(Some(equivalent));
        let budget = budget?;
        let status = resolver.keep(&At("/heat_budget"), BudgetStatus::of(record, budget))?;
        let (left, over) = match status.remaining {
            Remaining::Unknown => (None, None),
            Remaining::Left(left) => (Some(left), None),
            Remaining::Overspent(over) => (Some(Time::default()), Some(over)),
        };
        Some(HeatHistoryResponse {
            equivalent: text::minutes(equivalent),
            heats: status.heats,
            spent: record.spent.map(text::minutes),
            budget: budget.map(text::minutes),
            left: left.map(text::minutes),
            over: over.map(text::minutes),
            cautions: Vec::from([Caution::HotPlastisol, Caution::Fumes, Caution::DataSheet]),
        })
    }

    /// Heat spent by earlier heats, of which there must have been some.
    fn before(&self, resolver: &mut Resolver, written: &Written<Time>) -> Option<Time> {
        let path = &At("/spent_before");
        let before = resolver.quantity(path, written)?;
        if before > Time::default() && self.heats_before.is_none_or(|Count(heats)| heats == 0) {
            resolver.fault(
                code!("spent-without-heat"),
                path,
                &"Time was spent before, and it is not said by how many heats.",
                &"Give \"heats_before\", 1 or more, or leave \"spent_before\" out.",
            );
            return None;
        }
        Some(before)
    }

    fn readings(&self, resolver: &mut Resolver) -> Option<Vec<Reading>> {
        resolver.each(&At("/readings"), &self.readings, |resolver, path, reading| {
            let (time, temperature) = (Parameter::ReadingTime, Parameter::ReadingTemperature);
            let at = resolver.given_at(&path.key(time.name()), time, &reading.reading_time);
            let key = path.key(temperature.name());
            let temperature = resolver.given_at(&key, temperature, &reading.reading_temperature);
            Some(Reading { at: at?, temperature: temperature? })
        })
    }

    /// Time that the plastisol withstands at its dose of stabilizer; the outer `None` where it is wrong.
    #[allow(clippy::option_option)] // not stated and wrong are two things
    fn budget(&self, resolver: &mut Resolver) -> Option<Option<Time>> {
        let Some(budget) = &self.heat_budget else { return Some(None) };
        let time = resolver.given(Parameter::HeatBudget, budget);
        let extra = match &self.buys {
            Some(buys) => resolver.buys(&At("/buys"), buys).map(Some),
            None => Some(None),
        };
        let with = resolver.share(Parameter::BudgetWith, self.budget_with)?;
        let dose = match self.stabilizer_dose {
            Some(dose) => resolver.share(Parameter::StabilizerDose, Some(dose))?,
            None => with,
        };
        let budget = resolver.keep(&At("/heat_budget"), Budget::new(time?, with, extra?))?;
        Some(Some(resolver.keep(&At("/stabilizer_dose"), budget.at_dose(dose))?))
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn request() -> Value {
        json!({
            "calculate": "heat-history", "reference_temperature": "175 °C",
            "activation_energy": { "value": "120 kJ/mol", "source": "invented" },
            "readings": [
                { "reading_time": "0 min", "reading_temperature": "175 °C" },
                { "reading_time": "10 min", "reading_temperature": "175 °C" }
            ],
            "heat_budget": "30 min"
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    /// At the reference temperature a minute is a minute.
    #[test]
    fn a_minute_is_a_minute() {
        let answer = result(request());
        assert_eq!(answer["equivalent"]["text"], "10 min");
        assert_eq!(answer["left"]["text"], "20 min");
        assert_eq!(answer["heats"], 1);
    }

    /// exp(120000/8.314462618 · (1/448.15 − 1/458.15)) = 2.0196 (plain arithmetic).
    #[test]
    fn ten_degrees_hotter_is_twice_as_fast() {
        let hot = |at: &str| json!({ "reading_time": at, "reading_temperature": "185 °C" });
        let answer = result(with("readings", json!([hot("0 min"), hot("10 min")])));
        let seconds = answer["equivalent"]["value"].as_f64().unwrap();
        assert!((seconds / 600.0 - 2.0196).abs() < 1e-3, "{seconds}");
    }

    #[test]
    fn unknown_stays_unknown() {
        let answer = result(with("heats_before", json!(2)));
        assert_eq!((&answer["heats"], &answer["left"]), (&json!(3), &Value::Null));
        let once = result(with("heats_before", json!(1)));
        assert_eq!((&once["heats"], &once["left"]), (&json!(2), &Value::Null));
        let none = result(with("spent_before", json!("0 min")));
        assert_eq!((&none["heats"], &none["left"]["text"]), (&json!(1), &json!("20 min")));
        let mut twice = with("spent_before", json!("25 min"));
        twice["heats_before"] = json!(1);
        let answer = result(twice.clone());
        assert_eq!((&answer["heats"], &answer["over"]["text"]), (&json!(2), &json!("5 min")));
        twice["heats_before"] = json!(0);
        assert_eq!(fault_codes(twice), ["spent-without-heat"]);
        let fresh = result(with("heats_before", json!(0)));
        assert_eq!((&fresh["heats"], &fresh["left"]["text"]), (&json!(1), &json!("20 min")));
    }

    #[test]
    fn more_stabilizer_buys_time() {
        let mut request = with("stabilizer_dose", json!("3 %"));
        request["budget_with"] = json!("2 %");
        request["buys"] = json!({ "time": "6 min", "per": "1 %", "most": "4 %" });
        assert_eq!(result(request)["budget"]["text"], "36 min");
    }

    #[test]
    fn all_that_is_wrong_is_reported() {
        let mut request = with("buys", json!({ "time": "0 min", "per": "0 %", "most": "4 %" }));
        request["reference_temperature"] = json!("900 °C");
        assert_eq!(fault_codes(request), ["out-of-range", "out-of-range", "share-of-nothing"]);
    }

    #[rstest]
    #[case("activation_energy", json!("120 kJ/mol"), "history-no-source")]
    #[case("spent_before", json!("25 min"), "spent-without-heat")]
    #[case("readings", json!([]), "out-of-range")]
    #[case("stabilizer_dose", json!("3 %"), "budget-too-much-stabilizer")]
    #[case("reference_temperature", json!("900 °C"), "out-of-range")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

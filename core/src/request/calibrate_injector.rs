//! Residue of an injector each time it is emptied, from weighing it clean and emptied.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{self, Change};
use super::{request, response};
use crate::calibrate::{Emptied, Residue};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::parameter::Parameter;
use crate::quantity::{Mass, MassDensity, System, Volume};
use crate::show::{Shown, text};

request! {
    /// An injector weighed clean, and again when it has been used and emptied.
    pub struct EmptiedEntry {
        required {
            clean_mass: Written<Mass>,
            emptied_mass: Written<Mass>,
        }
        optional {}
    }
}

request! {
    /// Asks for the volume that stays in an injector.
    pub struct CalibrateInjectorRequest {
        required {
            injector_weighed: Vec<EmptiedEntry>,
            residue_density: Written<MassDensity>,
            balance_readability: Written<Mass>,
        }
        optional {
            measures: System,
        }
    }
}

response! {
    /// Residue of an injector.
    pub struct CalibrateInjectorResponse {
        /// Its volume with its standard uncertainty, as a book writes it.
        pub keeps: String,
        /// Its volume.
        pub volume: Shown<Volume>,
        /// Its standard uncertainty.
        pub uncertainty: Shown<Volume>,
        /// Its mass: what each cleaning and each cold stop loses.
        pub mass: Shown<Mass>,
        /// Standard deviation of one emptying.
        pub deviation: Shown<Mass>,
        /// An emptying that Grubbs' test questions; it is in the mean.
        pub questioned: Option<String>,
        /// Changes to a book, as a JSON Patch (RFC 6902).
        pub write: Vec<Change>,
    }
}

impl CalibrateInjectorRequest {
    /// Means the differences and divides by the density of what stays.
    ///
    /// # Errors
    /// Weighings or a density that cannot be right, and why.
    pub fn answer(&self) -> Result<CalibrateInjectorResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<CalibrateInjectorResponse> {
        let density = resolver.measured_given(Parameter::ResidueDensity, &self.residue_density);
        let readability = resolver.given(Parameter::BalanceReadability, &self.balance_readability);
        let at = At("/injector_weighed");
        let weighings =
            resolver.each(&at, &self.injector_weighed, |resolver, path, weighing| {
                let mut given = |parameter: Parameter, written| {
                    resolver.given_at(&path.key(parameter.name()), parameter, written)
                };
                let clean = given(Parameter::CleanMass, &weighing.clean_mass);
                let emptied = given(Parameter::EmptiedMass, &weighing.emptied_mass);
                Some(Emptied { clean: clean?, emptied: emptied? })
            })?;
        let residue = resolver.keep(&at, Residue::new(&weighings, readability?))?;
        let keeps = resolver.keep(&At("/residue_density"), residue.volume(&density?))?;
        let keeps = text::uncertain(keeps.value, keeps.uncertainty.unwrap_or_default());
        Some(CalibrateInjectorResponse {
            write: change::writing(&At("/bench/injector/keeps"), keeps.both.as_str()),
            keeps: keeps.both,
            volume: keeps.value,
            uncertainty: keeps.uncertainty,
            mass: text::uncertain(residue.mass, residue.uncertainty).value,
            deviation: text::mass(residue.deviation),
            questioned: residue.questioned.map(|questioned| questioned.to_string()),
        })
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::answer_value;

    fn answer(weighings: Value, density: &str) -> Value {
        answer_value(&json!({
            "calculate": "calibrate-injector",
            "injector_weighed": weighings,
            "residue_density": density,
            "balance_readability": "0.1 g",
        }))
    }

    #[test]
    fn what_a_book_can_keep() {
        // 4.2 g with u² = (0.2² + 0.1²/6)/3, over 0.9 g/mL: 4.667 mL, u = √(0.1178² + 0.042²)/0.9.
        let weighings = json!([
            { "clean_mass": "180.0 g", "emptied_mass": "184.0 g" },
            { "clean_mass": "180.0 g", "emptied_mass": "184.2 g" },
            { "clean_mass": "180.1 g", "emptied_mass": "184.5 g" },
        ]);
        let answer = answer(weighings, "0.9 g/mL ± 0.009");
        let result = &answer["result"];
        assert_eq!(result["keeps"], "4.67 mL ± 0.14", "{answer}");
        assert_eq!(result["mass"]["text"], "4.20 g");
        assert_eq!(result["questioned"], Value::Null);
    }

    #[rstest]
    #[case(json!([{ "clean_mass": "180 g", "emptied_mass": "184 g" }]), "0.9 g/mL", "/injector_weighed", "out-of-range")]
    #[case(json!([{ "clean_mass": "180 g", "emptied_mass": "184 g" }, { "clean_mass": "180 g", "emptied_mass": "179 g" }]), "0.9 g/mL", "/injector_weighed", "calibrate-injector-lighter")]
    #[case(json!([{ "clean_mass": "180 g", "emptied_mass": "184 g" }, { "clean_mass": "180 g", "emptied_mass": "184 g" }]), "0 g/mL", "/residue_density", "out-of-range")]
    #[case(json!([{ "clean_mass": "180 g", "emptied_mass": "184 mL" }]), "0.9 g/mL", "/injector_weighed/0/emptied_mass", "amount-wrong-dimension")]
    fn faults_say_where(
        #[case] weighings: Value,
        #[case] density: &str,
        #[case] path: &str,
        #[case] code: &str,
    ) {
        let answer = answer(weighings, density);
        let fault = &answer["faults"][0];
        assert_eq!((fault["path"].as_str(), fault["code"].as_str()), (Some(path), Some(code)));
    }
}

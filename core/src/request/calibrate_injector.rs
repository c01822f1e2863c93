//! What stays in an injector each time it is emptied, from weighing it clean and emptied.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{self, Change};
use super::response;
use crate::calibrate::{Emptied, Residue};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::At;
use crate::parameter::parameter;
use crate::quantity::{Mass, MassDensity, System, Volume};
use crate::show::{Shown, text};

entry! {
    /// An injector weighed clean, and again when it has been used and emptied.
    pub struct EmptiedEntry {
        required {
            /// Clean and dry.
            clean: Written<Mass>,
            /// Emptied as at work.
            emptied: Written<Mass>,
        }
        optional {}
    }
}

entry! {
    /// Asks what stays in an injector.
    pub struct CalibrateInjectorRequest {
        required {
            #[doc = parameter!(injector_weighed)]
            weighings: Vec<EmptiedEntry>,
            #[doc = parameter!(residue_density)]
            density: Written<MassDensity>,
            #[doc = parameter!(balance_readability)]
            readability: Written<Mass>,
        }
        optional {
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// What stays in an injector.
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
        /// What it changes in a book, as a JSON Patch (RFC 6902).
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
        let density = resolver.measured(&At("/density"), &self.density);
        let readability = resolver.quantity(&At("/readability"), &self.readability);
        let at = At("/weighings");
        let weighings = resolver.each(&at, &self.weighings, |resolver, path, weighing| {
            let clean = resolver.quantity(&path.key("clean"), &weighing.clean);
            let emptied = resolver.quantity(&path.key("emptied"), &weighing.emptied);
            Some(Emptied { clean: clean?, emptied: emptied? })
        })?;
        let residue = resolver.keep(&at, Residue::new(&weighings, readability?))?;
        let keeps = resolver.keep(&At("/density"), residue.volume(&density?))?;
        let keeps = text::uncertain(keeps.value, keeps.uncertainty.unwrap_or_default());
        Some(CalibrateInjectorResponse {
            write: change::writing(&At("/bench/injector/keeps"), &keeps.both),
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
            "weighings": weighings,
            "density": density,
            "readability": "0.1 g",
        }))
    }

    #[test]
    fn what_a_book_can_keep() {
        // 4.2 g with u² = (0.2² + 0.1²/6)/3, over 0.9 g/mL: 4.667 mL, u = √(0.1178² + 0.042²)/0.9.
        let weighings = json!([
            { "clean": "180.0 g", "emptied": "184.0 g" },
            { "clean": "180.0 g", "emptied": "184.2 g" },
            { "clean": "180.1 g", "emptied": "184.5 g" },
        ]);
        let answer = answer(weighings, "0.9 g/mL ± 0.009");
        let result = &answer["result"];
        assert_eq!(result["keeps"], "4.67 mL ± 0.14", "{answer}");
        assert_eq!(result["mass"]["text"], "4.20 g");
        assert_eq!(result["questioned"], Value::Null);
    }

    #[rstest]
    #[case(json!([{ "clean": "180 g", "emptied": "184 g" }]), "0.9 g/mL", "/weighings", "out-of-range")]
    #[case(json!([{ "clean": "180 g", "emptied": "184 g" }, { "clean": "180 g", "emptied": "179 g" }]), "0.9 g/mL", "/weighings", "calibrate-injector-lighter")]
    #[case(json!([{ "clean": "180 g", "emptied": "184 g" }, { "clean": "180 g", "emptied": "184 g" }]), "0 g/mL", "/density", "out-of-range")]
    #[case(json!([{ "clean": "180 g", "emptied": "184 mL" }]), "0.9 g/mL", "/weighings/0/emptied", "amount-wrong-dimension")]
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

//! What one drop or one level spoonful weighs, from several weighings.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{self, Change};
use super::response;
use crate::calibrate::{Counted, PerOne};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::parameter::parameter;
use crate::quantity::{Mass, MassDensity, Ratio, System, Volume};
use crate::show::{Shown, text};

entry! {
    /// So many drops or spoonfuls, weighed together.
    pub struct CountedEntry {
        required {
            /// How many.
            count: u32,
            /// What they weigh together, net.
            weight: Written<Mass>,
        }
        optional {}
    }
}

entry! {
    /// Asks what one drop weighs.
    pub struct CalibrateDropRequest {
        required {
            #[doc = parameter!(drops_weighed)]
            weighings: Vec<CountedEntry>,
            #[doc = parameter!(balance_readability)]
            readability: Written<Mass>,
        }
        optional {
            #[doc = parameter!(calibrated_material)]
            material: Name,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// What one drop weighs.
    pub struct CalibrateDropResponse {
        /// One drop with its standard uncertainty, as a book writes it.
        pub drop: String,
        /// Its mass.
        pub mass: Shown<Mass>,
        /// Its standard uncertainty: what n drops carry n-fold.
        pub uncertainty: Shown<Mass>,
        /// Standard deviation of one drop against the next, as a share of its mass: what n drops carry by √n.
        pub scatter: Shown<Ratio>,
        /// A weighing that Grubbs' test questions; it is in the mean.
        pub questioned: Option<String>,
        /// What it changes in a book, as a JSON Patch (RFC 6902); empty where no material was named.
        pub write: Vec<Change>,
    }
}

entry! {
    /// Asks for the density as scooped.
    pub struct CalibrateSpoonRequest {
        required {
            #[doc = parameter!(scoops_weighed)]
            weighings: Vec<CountedEntry>,
            #[doc = parameter!(spoon_volume)]
            spoon: Written<Volume>,
            #[doc = parameter!(balance_readability)]
            readability: Written<Mass>,
        }
        optional {
            #[doc = parameter!(calibrated_material)]
            material: Name,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// The density as scooped.
    pub struct CalibrateSpoonResponse {
        /// The density as scooped with its standard uncertainty, as a book writes it.
        pub as_scooped: String,
        /// The density as scooped.
        pub density: Shown<MassDensity>,
        /// Its standard uncertainty.
        pub uncertainty: Shown<MassDensity>,
        /// What one level spoonful weighs.
        pub spoonful: Shown<Mass>,
        /// Standard deviation of one spoonful against the next, as a share of its mass.
        pub scatter: Shown<Ratio>,
        /// A weighing that Grubbs' test questions; it is in the mean.
        pub questioned: Option<String>,
        /// What it changes in a book, as a JSON Patch (RFC 6902); empty where no material was named.
        pub write: Vec<Change>,
    }
}

impl CalibrateDropRequest {
    /// Sums the weighings up.
    ///
    /// # Errors
    /// Weighings that cannot be right, and why.
    pub fn answer(&self) -> Result<CalibrateDropResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let one = per_one(&self.weighings, &self.readability, &mut resolver);
        let response = one.and_then(|one| {
            resolver.keep(&At("/weighings"), one.drop())?;
            let drop = text::uncertain(one.mass, one.uncertainty);
            Some(CalibrateDropResponse {
                write: change::of_material(self.material.as_ref(), "drop", &drop.both),
                drop: drop.both,
                mass: drop.value,
                uncertainty: drop.uncertainty,
                scatter: text::percent(one.scatter / one.mass),
                questioned: one.questioned.map(|questioned| questioned.to_string()),
            })
        });
        resolver.finish(response)
    }
}

impl CalibrateSpoonRequest {
    /// Sums the weighings up and divides by what the spoon holds.
    ///
    /// # Errors
    /// Weighings or a spoon that cannot be right, and why.
    pub fn answer(&self) -> Result<CalibrateSpoonResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let spoon = resolver.measured(&At("/spoon"), &self.spoon);
        let one = per_one(&self.weighings, &self.readability, &mut resolver);
        let response = spoon.zip(one).and_then(|(spoon, one)| {
            let scooped = resolver.keep(&At("/spoon"), one.as_scooped(&spoon))?;
            let uncertainty = scooped.uncertainty.unwrap_or_default();
            let as_scooped = text::uncertain(scooped.value, uncertainty);
            let material = self.material.as_ref();
            Some(CalibrateSpoonResponse {
                write: change::of_material(material, "as_scooped", &as_scooped.both),
                as_scooped: as_scooped.both,
                density: as_scooped.value,
                uncertainty: as_scooped.uncertainty,
                spoonful: text::uncertain(one.mass, one.uncertainty).value,
                scatter: text::percent(one.scatter / one.mass),
                questioned: one.questioned.map(|questioned| questioned.to_string()),
            })
        });
        resolver.finish(response)
    }
}

fn per_one(
    weighings: &[CountedEntry],
    readability: &Written<Mass>,
    resolver: &mut Resolver,
) -> Option<PerOne> {
    let readability = resolver.quantity(&At("/readability"), readability);
    let at = At("/weighings");
    let counted = resolver.each(&at, weighings, |resolver, path, weighing| {
        let weight = resolver.quantity(&path.key("weight"), &weighing.weight)?;
        Some(Counted { count: weighing.count, weight })
    })?;
    resolver.keep(&at, PerOne::new(&counted, readability?))
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::answer_value;

    #[test]
    fn a_drop_that_a_book_can_keep() {
        let answer = answer_value(&json!({
            "calculate": "calibrate-drop",
            "weighings": [
                { "count": 50, "weight": "2.20 g" },
                { "count": 50, "weight": "2.30 g" },
                { "count": 50, "weight": "2.10 g" },
            ],
            "readability": "0.01 g",
        }));
        let result = &answer["result"];
        assert_eq!(result["drop"], "0.0440 g ± 0.0012", "{answer}");
        assert_eq!(result["scatter"]["text"], "32.1 %");
        assert_eq!(result["questioned"], Value::Null);
    }

    #[test]
    fn a_powder_that_a_book_can_keep() {
        let answer = answer_value(&json!({
            "calculate": "calibrate-spoon",
            "weighings": [{ "count": 10, "weight": "30 g" }, { "count": 10, "weight": "32 g" }],
            "spoon": "2.5 mL ± 0.05",
            "readability": "0.1 g",
        }));
        assert_eq!(answer["result"]["as_scooped"], "1.240 g/mL ± 0.047", "{answer}");
    }

    #[rstest]
    #[case(json!([{ "count": 50, "weight": "2.2 g" }]), "/weighings", "out-of-range")]
    #[case(json!([{ "count": 50, "weight": "2 g" }, { "count": 50, "weight": "0 g" }]), "/weighings", "out-of-range")]
    #[case(json!([{ "count": 0, "weight": "2 g" }]), "/weighings/0/count", "wrong-type")]
    #[case(json!([{ "count": 5, "weight": "2.2 kg" }, { "count": 5, "weight": "2.3 kg" }]), "/weighings", "calibrate-no-drop")]
    fn faults_say_where(#[case] weighings: Value, #[case] path: &str, #[case] code: &str) {
        let answer = answer_value(&json!({
            "calculate": "calibrate-drop", "weighings": weighings, "readability": "0.01 g",
        }));
        let fault = &answer["faults"][0];
        assert_eq!((fault["path"].as_str(), fault["code"].as_str()), (Some(path), Some(code)));
    }
}

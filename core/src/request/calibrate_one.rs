//! Mass of one drop or one level spoonful, from several weighings.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::change::{self, Change};
use super::{request, response};
use crate::calibrate::{Counted, PerOne};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::parameter::Parameter;
use crate::quantity::{Mass, MassDensity, Ratio, System, Volume};
use crate::show::{Shown, text};

request! {
    /// Drops or spoonfuls that were counted and weighed together.
    pub struct CountedEntry {
        required {
            weighed_count: u32,
            weighed_mass: Written<Mass>,
        }
        optional {}
    }
}

request! {
    /// Asks for the mass of one drop.
    pub struct CalibrateDropRequest {
        required {
            drops_weighed: Vec<CountedEntry>,
            balance_readability: Written<Mass>,
        }
        optional {
            calibrated_material: Name,
            measures: System,
        }
    }
}

response! {
    /// Mass of one drop.
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
        /// Changes to a book, as a JSON Patch (RFC 6902); empty if no material was named.
        pub write: Vec<Change>,
    }
}

request! {
    /// Asks for the density as scooped.
    pub struct CalibrateSpoonRequest {
        required {
            scoops_weighed: Vec<CountedEntry>,
            spoon_volume: Written<Volume>,
            balance_readability: Written<Mass>,
        }
        optional {
            calibrated_material: Name,
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
        /// Mass of one level spoonful.
        pub spoonful: Shown<Mass>,
        /// Standard deviation of one spoonful against the next, as a share of its mass.
        pub scatter: Shown<Ratio>,
        /// A weighing that Grubbs' test questions; it is in the mean.
        pub questioned: Option<String>,
        /// Changes to a book, as a JSON Patch (RFC 6902); empty if no material was named.
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
        let one = per_one(
            Parameter::DropsWeighed,
            &self.drops_weighed,
            &self.balance_readability,
            &mut resolver,
        );
        let response = one.and_then(|one| {
            resolver.keep(&At("/drops_weighed"), one.drop())?;
            let drop = text::uncertain(one.mass, one.uncertainty);
            Some(CalibrateDropResponse {
                write: change::of_material(self.calibrated_material.as_ref(), "drop", &drop.both),
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
        let spoon = resolver.measured_given(Parameter::SpoonVolume, &self.spoon_volume);
        let one = per_one(
            Parameter::ScoopsWeighed,
            &self.scoops_weighed,
            &self.balance_readability,
            &mut resolver,
        );
        let response = spoon.zip(one).and_then(|(spoon, one)| {
            let scooped = resolver.keep(&At("/spoon_volume"), one.as_scooped(&spoon))?;
            let uncertainty = scooped.uncertainty.unwrap_or_default();
            let as_scooped = text::uncertain(scooped.value, uncertainty);
            let material = self.calibrated_material.as_ref();
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
/// Drops or spoonfuls from the weighings of `parameter`.
fn per_one(
    parameter: Parameter,
    weighings: &[CountedEntry],
    readability: &Written<Mass>,
    resolver: &mut Resolver,
) -> Option<PerOne> {
    let readability = resolver.given(Parameter::BalanceReadability, readability);
    let at = Path::ROOT.key(parameter.name());
    let counted = resolver.each(&at, weighings, |resolver, path, weighing| {
        let mass = path.key(Parameter::WeighedMass.name());
        let weight = resolver.given_at(&mass, Parameter::WeighedMass, &weighing.weighed_mass)?;
        Some(Counted { count: weighing.weighed_count, weight })
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
            "drops_weighed": [
                { "weighed_count": 50, "weighed_mass": "2.20 g" },
                { "weighed_count": 50, "weighed_mass": "2.30 g" },
                { "weighed_count": 50, "weighed_mass": "2.10 g" },
            ],
            "balance_readability": "0.01 g",
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
            "scoops_weighed": [{ "weighed_count": 10, "weighed_mass": "30 g" }, { "weighed_count": 10, "weighed_mass": "32 g" }],
            "spoon_volume": "2.5 mL ± 0.05",
            "balance_readability": "0.1 g",
        }));
        assert_eq!(answer["result"]["as_scooped"], "1.240 g/mL ± 0.047", "{answer}");
    }

    #[rstest]
    #[case(json!([{ "weighed_count": 50, "weighed_mass": "2.2 g" }]), "/drops_weighed", "out-of-range")]
    #[case(json!([{ "weighed_count": 50, "weighed_mass": "2 g" }, { "weighed_count": 50, "weighed_mass": "0 g" }]), "/drops_weighed/1/weighed_mass", "out-of-range")]
    #[case(json!([{ "weighed_count": 0, "weighed_mass": "2 g" }]), "/drops_weighed/0/weighed_count", "out-of-range")]
    #[case(json!([{ "weighed_count": 5, "weighed_mass": "2.2 kg" }, { "weighed_count": 5, "weighed_mass": "2.3 kg" }]), "/drops_weighed", "calibrate-no-drop")]
    fn faults_say_where(#[case] weighings: Value, #[case] path: &str, #[case] code: &str) {
        let answer = answer_value(&json!({
            "calculate": "calibrate-drop", "drops_weighed": weighings, "balance_readability": "0.01 g",
        }));
        let fault = &answer["faults"][0];
        assert_eq!((fault["path"].as_str(), fault["code"].as_str()), (Some(path), Some(code)));
    }
}

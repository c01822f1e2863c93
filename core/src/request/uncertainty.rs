//! How sure a dose is, by the tools that it is taken with.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{request, response};
use crate::codes::code;
use crate::document::book::MaterialEntry;
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::material::Material;
use crate::parameter::Parameter;
use crate::quantity::{Amount, Dimension, Mass, Measurable, Ratio, System, Volume};
use crate::show::{Shown, text};
use crate::uncertainty::{
    Dosed, Estimate, Taken, ToolUncertainty, UncertaintyError, dose_ratio, dosed_mass,
};

request! {
    /// Asks how sure the ratio of a dose to its base is.
    pub struct UncertaintyRequest {
        required {
            material: MaterialEntry,
            dose_amount: Amount,
            base_material: MaterialEntry,
            per_base: Amount,
        }
        optional {
            spoon: Written<Volume>,
            cup_mark: Written<Volume>,
            balance_readability: Written<Mass>,
            measures: System,
        }
    }
}

response! {
    /// How sure a dose is.
    pub struct UncertaintyResponse {
        /// Mass of the dose per mass of base.
        pub ratio: Shown<Ratio>,
        /// Its standard uncertainty, relative to it.
        pub relative: Shown<Ratio>,
        /// The half width that holds the true ratio with 95 %, relative to it.
        pub relative_95: Shown<Ratio>,
        /// Sources of its uncertainty, the greatest first.
        pub sources: Vec<SourceShare>,
        /// Sources of whose uncertainty nothing is known: they count as exact.
        pub unknown: Vec<String>,
        /// The same with the dose weighed, where it is not and `readability` is given: its relative standard
        /// uncertainty.
        pub weighed: Option<Shown<Ratio>>,
        /// The same with the base weighed, where it is not and `readability` is given.
        pub base_weighed: Option<Shown<Ratio>>,
        /// The same with both weighed, where neither is and `readability` is given.
        pub both_weighed: Option<Shown<Ratio>>,
        /// Weighing that would halve the uncertainty, if one does: of the larger source, or of both.
        pub advice: Option<String>,
    }
}

response! {
    /// A source of uncertainty.
    pub struct SourceShare {
        /// Which.
        pub source: String,
        /// Its part of the square of the uncertainty.
        pub share: Shown<Ratio>,
    }
}

impl UncertaintyRequest {
    /// Propagates what the tools and the materials' properties are unsure by, with the library's figures for
    /// tools that nobody has checked.
    ///
    /// # Errors
    /// A property that is missing; a dose that is no whole number of spoonfuls; a weighed amount without the
    /// balance's readability.
    pub fn answer(&self) -> Result<UncertaintyResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        // Names of their own, so that the two share no property.
        let named = |path: &str, entry, name: &str| {
            let material = resolve::material(&At(path), entry, resolver.system)?;
            Ok::<_, Faults>(Material { name: name.into(), ..material })
        };
        let material = named("/material", &self.material, "the dose")?;
        let base = named("/base", &self.base_material, "the base")?;
        let response = self.response(&material, &base, &mut resolver);
        resolver.finish(response)
    }

    fn response(
        &self,
        material: &Material,
        base: &Material,
        resolver: &mut Resolver,
    ) -> Option<UncertaintyResponse> {
        let readability = match &self.balance_readability {
            Some(readability) => Some(resolver.given(Parameter::BalanceReadability, readability)?),
            None => None,
        };
        let dose_taken = self.dose(readability, resolver);
        let base_taken = self.base(readability, resolver);
        let (dose_taken, base_taken) = ([dose_taken?], [base_taken?]);
        let tools = ToolUncertainty::default();
        let base = Dosed { material: base, taken: &base_taken, share: 1.0 };
        let dose = Dosed { material, taken: &dose_taken, share: 1.0 };
        let estimate = resolver.keep(&Path::ROOT, dose_ratio(&dose, &base, &tools))?;
        let coverage = resolver.keep(&Path::ROOT, estimate.coverage(Ratio::from(0.95)))?;
        let (mut weighed, mut base_weighed, mut both_weighed) = (None, None, None);
        if let Some(readability) = readability {
            let balance = |dosed, at| on_the_balance(dosed, at, readability, &tools);
            let at = &Path::ROOT;
            let (dose_net, base_net) = (
                resolver.keep(at, balance(&dose, dose_taken))?,
                resolver.keep(at, balance(&base, base_taken))?,
            );
            let mut with = |dose_taken: &Option<[Taken<'_>; 1]>,
                            base_taken: &Option<[Taken<'_>; 1]>| {
                let dose = dose_taken.as_ref().map_or(dose, |taken| Dosed { taken, ..dose });
                let base = base_taken.as_ref().map_or(base, |taken| Dosed { taken, ..base });
                resolver.keep(at, dose_ratio(&dose, &base, &tools)).map(|found| relative(&found))
            };
            if dose_net.is_some() {
                weighed = Some(with(&dose_net, &None)?);
            }
            if base_net.is_some() {
                base_weighed = Some(with(&None, &base_net)?);
            }
            if dose_net.is_some() && base_net.is_some() {
                both_weighed = Some(with(&dose_net, &base_net)?);
            }
        }
        let now = relative(&estimate);
        let ways = [
            ("the dose", weighed),
            ("the base", base_weighed),
            ("both dose and base", both_weighed),
        ];
        Some(UncertaintyResponse {
            ratio: fine_percent(estimate.value),
            relative: text::percent(now),
            relative_95: text::percent(coverage.half_width / estimate.value),
            advice: advice(&ways, now, &estimate),
            weighed: weighed.map(text::percent),
            base_weighed: base_weighed.map(text::percent),
            both_weighed: both_weighed.map(text::percent),
            sources: estimate
                .shares
                .into_iter()
                .map(|share| SourceShare {
                    source: in_words(&share.source).into(),
                    share: text::percent(share.share),
                })
                .collect(),
            unknown: estimate.unknown,
        })
    }

    fn dose(&self, readability: Option<Mass>, resolver: &mut Resolver) -> Option<Taken<'static>> {
        let dimension = self.dose_amount.dimension();
        if let Some(drops) = self.dose_amount.drops() {
            let Some(count) = whole(drops.to_f64()) else {
                let what = "is not a whole number of drops";
                return not_taken(&At("/dose_amount"), what, "Count whole drops.", resolver);
            };
            return Some(Taken::Drops { count });
        }
        if dimension == Dimension::VOLUME {
            let volume: Volume =
                resolver.keep(&At("/dose_amount"), self.dose_amount.to(resolver.system))?;
            let holds = match &self.spoon {
                Some(spoon) => resolver.given(Parameter::Spoon, spoon)?,
                None => volume,
            };
            let Some(times) = whole((volume / holds).value) else {
                let what = "is not a whole number of these spoonfuls";
                let help = "Name the spoon that goes into it a whole number of times.";
                return not_taken(&At("/dose_amount"), what, help, resolver);
            };
            return Some(Taken::Spoon { name: "for the dose", holds, times });
        }
        weighed(&At("/dose_amount"), &self.dose_amount, readability, resolver)
    }

    fn base(&self, readability: Option<Mass>, resolver: &mut Resolver) -> Option<Taken<'static>> {
        if self.per_base.dimension() != Dimension::VOLUME {
            return weighed(&At("/per_base"), &self.per_base, readability, resolver);
        }
        let filled: Volume = resolver.keep(&At("/per_base"), self.per_base.to(resolver.system))?;
        let mark = match &self.cup_mark {
            Some(mark) => Some(resolver.given(Parameter::CupMark, mark)?),
            None => None,
        };
        Some(Taken::Cup { name: "cup for the base", filled, mark, times: 1 })
    }
}

/// The fault that the amount at `path` cannot be taken so.
fn not_taken(
    path: &Path<'_>,
    what: &str,
    help: &str,
    resolver: &mut Resolver,
) -> Option<Taken<'static>> {
    resolver.fault(code!("amount-not-taken"), path, &format_args!("The amount {what}."), &help);
    None
}

/// The whole number that `x` is but for rounding, from 1 to a million.
fn whole(x: f64) -> Option<u32> {
    let nearest = libm::round(x);
    let near = libm::fabs(x - nearest) <= 1e-9 * nearest;
    (near && (1.0..=1e6).contains(&nearest)).then_some(nearest as u32)
}

fn weighed(
    path: &Path<'_>,
    amount: &Amount,
    readability: Option<Mass>,
    resolver: &mut Resolver,
) -> Option<Taken<'static>> {
    let net: Mass = resolver.keep(path, amount.to(resolver.system))?;
    match readability {
        Some(readability) => Some(Taken::Weighed { net, times: 1, readability }),
        None => {
            let help = "Add \"readability\", the smallest difference that the balance shows.";
            not_taken(path, "is weighed, on an unknown balance", help, resolver)
        }
    }
}

/// As much, weighed; `None` where it is.
fn on_the_balance(
    dosed: &Dosed<'_>,
    taken: [Taken<'_>; 1],
    readability: Mass,
    tools: &ToolUncertainty,
) -> Result<Option<[Taken<'static>; 1]>, UncertaintyError> {
    if let [Taken::Weighed { .. }] = taken {
        return Ok(None);
    }
    let net = dosed_mass(dosed, tools)?.value;
    Ok(Some([Taken::Weighed { net, times: 1, readability }]))
}

/// Weighing to advise: the one of the two that leaves less, if that halves the uncertainty; else both.
fn advice(
    ways: &[(&str, Option<Ratio>); 3],
    now: Ratio,
    estimate: &Estimate<Ratio>,
) -> Option<String> {
    let [dose, base, both] = ways;
    let one = match (dose.1, base.1) {
        (Some(of_dose), Some(of_base)) if of_base < of_dose => base,
        (None, Some(_)) => base,
        _ => dose,
    };
    let halves = |way: &&(&str, Option<Ratio>)| way.1.is_some_and(|then| then <= 0.5 * now);
    let &(what, then) = Some(one).filter(halves).or(Some(both).filter(halves))?;
    let main = in_words(&estimate.main_source()?.source);
    Some(format!(
        "Weigh {what}: the ratio is then sure to {} instead of {}; what hurts most now is {main}.",
        text::percent(then?).text,
        text::percent(now).text,
    ))
}

/// A source as it is shown where each material is taken once.
fn in_words(source: &str) -> &str {
    source.strip_suffix(", taking 1").unwrap_or(source)
}

fn relative(estimate: &Estimate<Ratio>) -> Ratio {
    estimate.uncertainty / estimate.value
}

/// A dose in per cent of base, to a thousandth: colors are doses of tenths.
fn fine_percent(share: Ratio) -> Shown<Ratio> {
    let thousandths = libm::round(share.si() * 1e5);
    Shown::new(share, format!("{} %", thousandths / 1e3))
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;

    use rstest::rstest;
    use serde_json::{Value, json};

    use super::whole;
    use crate::request::answer_value;

    // Within a billionth of itself.
    #[rstest]
    #[case(3.0, Some(3))]
    #[case(3.0 + 2e-9, Some(3))]
    #[case(3.0 - 4e-9, None)]
    #[case(1.0 + 1.5e-9, None)]
    #[case(0.0, None)]
    #[case(1e6, Some(1_000_000))]
    #[case(1_000_001.0, None)]
    fn a_count_is_whole_but_for_rounding(#[case] x: f64, #[case] expected: Option<u32>) {
        assert_eq!(whole(x), expected);
    }

    fn flake_by(amount: &str, more: &[(&str, &str)]) -> Value {
        let mut request = json!({
            "calculate": "uncertainty",
            "material": { "kind": "flake", "density": "1.4 g/mL", "as_scooped": "0.55 g/mL ± 0.05" },
            "dose_amount": amount,
            "base_material": { "kind": "plastisol", "density": "1.03 g/mL ± 0.01" },
            "per_base": "243.7 g",
            "balance_readability": "0.01 g",
        });
        for (field, value) in more {
            request[*field] = json!(value);
        }
        answer_value(&request)
    }

    #[test]
    fn a_spoon_of_flake_is_better_weighed() {
        let answer = flake_by("1/2 tsp", &[]);
        let result = &answer["result"];
        assert_eq!(
            result["sources"][0]["source"], "what a spoonful of the dose weighs",
            "{answer}"
        );
        // √(9.09² + 2.89² + 3²) % = 10.0 %; weighed: 0.01/√6/1.355 = 0.3 %.
        assert_eq!(result["relative"]["text"], "10 %");
        assert_eq!(result["weighed"]["text"], "0.3 %");
        let advice = result["advice"].as_str().unwrap();
        assert!(
            advice.starts_with("Weigh the dose: the ratio is then sure to 0.3 % instead of 10 %")
        );
    }

    /// The plainest question: a number of drops to a cup. The mass of a drop is the larger source, not the cup; if the drop
    /// is well known, the cup is.
    #[test]
    fn what_hurts_is_named() {
        let drops = |drop: &str| {
            answer_value(&json!({
                "calculate": "uncertainty",
                "material": { "kind": "colorant", "density": "1.05 g/mL", "drop": drop },
                "dose_amount": "32 drops",
                "base_material": { "kind": "plastisol", "density": "1.03 g/mL ± 0.005" },
                "per_base": "1 cup", "balance_readability": "0.01 g",
            }))
        };
        let by_drop = drops("0.044 g ± 0.006");
        let result = &by_drop["result"];
        assert_eq!(result["sources"][0]["source"], "what a drop of the dose weighs", "{by_drop}");
        let names: Vec<_> =
            result["sources"].as_array().unwrap().iter().map(|one| &one["source"]).collect();
        assert!(names.contains(&&json!("filling the cup with the base")), "{names:?}");
        assert!(result["advice"].as_str().unwrap().starts_with("Weigh the dose: "), "{by_drop}");
        let by_cup = drops("0.044 g ± 0.0004");
        assert!(
            by_cup["result"]["advice"].as_str().unwrap().starts_with("Weigh the base: "),
            "{by_cup}"
        );
        let by_both = drops("0.044 g ± 0.002");
        let advice = by_both["result"]["advice"].as_str().unwrap();
        assert!(advice.starts_with("Weigh both dose and base: "), "{by_both}");
        let of = |field: &str| by_both["result"][field]["value"].as_f64().unwrap();
        assert!(of("both_weighed") < of("weighed") && of("both_weighed") < of("base_weighed"));
    }

    #[test]
    fn more_spoonfuls_level_the_scatter() {
        let one = flake_by("1 tsp", &[]);
        let four = flake_by("1 tsp", &[("spoon", "1/4 tsp")]);
        let of = |answer: &Value| answer["result"]["relative"]["value"].as_f64().unwrap();
        assert!(of(&four) < of(&one));
        let odd = flake_by("1 tsp", &[("spoon", "3/8 tsp")]);
        assert_eq!(odd["faults"][0]["code"], "amount-not-taken", "{odd}");
    }

    #[test]
    fn what_is_missing_is_named() {
        let drops = flake_by("3 drops", &[]);
        assert_eq!(drops["faults"][0]["code"], "missing-property");
        let answer = answer_value(&json!({
            "calculate": "uncertainty",
            "material": { "kind": "colorant", "density": "1.05 g/mL", "drop": "0.044 g ± 0.003" },
            "dose_amount": "32 drops",
            "base_material": { "kind": "plastisol", "density": "1.03 g/mL ± 0.01" },
            "per_base": "243.7 g",
        }));
        assert_eq!(answer["faults"][0]["path"], "/per_base", "{answer}");
    }
}

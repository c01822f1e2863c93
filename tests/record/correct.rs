//! Pots that came out wrong: against a linear program, and as the bench asks.

use microlp::{ComparisonOp, OptimizationDirection, Problem, Variable};
use pourwright::plan::correction::{correct, nearest};
use pourwright::quantity::{Mass, Ratio};
use pourwright::uom::si::mass::gram;
use proptest::prelude::*;
use rstest::rstest;
use serde_json::{Value, json};

use crate::demo::{ask, book, list, mispour, number, of, words};

fn grams(list: &[f64]) -> Vec<Mass> {
    list.iter().map(|&x| Mass::new::<gram>(x)).collect()
}

fn solved(problem: &Problem) -> f64 {
    let outcome = problem.solve().expect("a bounded program with a point in it");
    outcome.into_solution().expect("an optimum").objective()
}

/// The smallest additions: a_i ≥ 0, c_i + a_i = t_i·T, Σ(c + a) = T.
fn least_addition(pot: &[f64], target: &[f64]) -> f64 {
    let held: f64 = pot.iter().sum();
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let total = problem.add_var(0.0, (0.0, f64::INFINITY));
    let mut sum = vec![(total, -1.0)];
    for (c, t) in pot.iter().zip(target) {
        let added = problem.add_var(1.0, (0.0, f64::INFINITY));
        problem.add_constraint([(added, 1.0), (total, -t)], ComparisonOp::Eq, -c);
        sum.push((added, 1.0));
    }
    problem.add_constraint(&sum, ComparisonOp::Eq, -held);
    solved(&problem)
}

/// The smallest maximum excess (`sign` 1) or shortfall (−1), relative to the target, of all mixes of
/// `mass` that hold the pot: x_i ≥ c_i, Σx = X, sign·(x_i/X − t_i) ≤ z·t_i.
fn least_worst(pot: &[f64], target: &[f64], mass: f64, sign: f64) -> f64 {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let worst = problem.add_var(1.0, (0.0, f64::INFINITY));
    let parts: Vec<Variable> =
        pot.iter().map(|c| problem.add_var(0.0, (c / mass, f64::INFINITY))).collect();
    for (part, t) in parts.iter().zip(target) {
        problem.add_constraint([(*part, sign), (worst, -t)], ComparisonOp::Le, sign * t);
    }
    let sum: Vec<(Variable, f64)> = parts.iter().map(|part| (*part, 1.0)).collect();
    problem.add_constraint(&sum, ComparisonOp::Eq, 1.0);
    solved(&problem)
}

proptest! {
    #[test]
    fn no_program_adds_less(
        parts in proptest::collection::vec((0.0_f64..300.0, 0.02_f64..1.0), 2..7),
    ) {
        let pot: Vec<f64> = parts.iter().map(|part| part.0).collect();
        let sum: f64 = parts.iter().map(|part| part.1).sum();
        let target: Vec<f64> = parts.iter().map(|part| part.1 / sum).collect();
        let ours = correct(&grams(&pot), &target, Ratio::default()).unwrap();
        let added: f64 = ours.additions.iter().map(|m| m.get::<gram>()).sum();
        let total = ours.total.get::<gram>();
        prop_assert!((added - least_addition(&pot, &target)).abs() <= 1e-6 * total);
    }

    #[test]
    fn no_mix_that_fits_is_nearer_at_its_worst(
        parts in proptest::collection::vec((0.1_f64..300.0, 0.02_f64..1.0), 2..7),
        fill in 0.05_f64..0.95,
    ) {
        let pot: Vec<f64> = parts.iter().map(|part| part.0).collect();
        let sum: f64 = parts.iter().map(|part| part.1).sum();
        let target: Vec<f64> = parts.iter().map(|part| part.1 / sum).collect();
        let held: f64 = pot.iter().sum();
        let right = correct(&grams(&pot), &target, Ratio::default()).unwrap().total.get::<gram>();
        let room = held + fill * (right - held);
        let near = nearest(&grams(&pot), &target, Mass::new::<gram>(room), Ratio::default()).unwrap();
        for sign in [1.0, -1.0] {
            let ours = near.off.iter().map(|off| sign * off.value).fold(0.0, f64::max);
            let least = least_worst(&pot, &target, room, sign);
            prop_assert!(ours <= least + 1e-6 * (1.0 + least), "{ours} for {least}");
        }
    }
}

/// Composition that the answer's measures give the pot, relative to `of_base`: mass per mass of base.
fn after(answer: &Value) -> Vec<(String, f64)> {
    let held = |name: &str| of(&answer["pot"], name).map_or(0.0, |one| number(&one["mass"]));
    let given =
        |name: &str| of(&answer["add"], name).map_or(0.0, |one| number(&one["best"]["gives"]));
    let names = list(&answer["off"]).iter().map(|one| one["material"].as_str().unwrap().to_owned());
    names.map(|name| (name.clone(), held(&name) + given(&name))).collect()
}

#[test]
fn the_demo_says_what_a_person_would() {
    let answer = ask(mispour()).expect("an answer");
    assert_eq!(answer["outcome"], "right");
    assert_eq!(words(&answer["nothing_of"]), ["plum"]);
    assert!(of(&answer["add"], "plum").is_none());
    // 90 drops where 64 were meant for 2 cups: right for 2·90/64 cups of base, by hand.
    let base = of(&answer["add"], "clear-base").expect("more base");
    let cups = 2.0 * 90.0 / 64.0 - 2.0;
    assert!((number(&base["wanted"]) - cups * 236.588_236_5 * 1.03).abs() < 1e-9);
}

#[rstest]
#[case::drops(json!({ "plum": "90 drops" }), "plum")]
#[case::spoons(json!({ "teal-flake": "3/2 tsp" }), "teal-flake")]
#[case::base_too_much(json!({ "clear-base": "2 1/4 cup" }), "clear-base")]
#[case::two_slips(json!({ "plum": "70 drops", "stabilizer": "1 tbsp" }), "stabilizer")]
fn what_was_measured_wrong_binds(#[case] pot: Value, #[case] binds: &str) {
    let request = json!({
        "calculate": "correct", "formulas": ["dusk", "plain"], "pot_base": "2 cup", "pot": pot
    });
    let answer = ask(request).expect("an answer");
    assert_eq!(answer["outcome"], "right");
    assert!(words(&answer["nothing_of"]).contains(&binds), "{}", answer["nothing_of"]);
}

#[test]
fn all_that_is_in_the_cup_may_be_named_instead() {
    let said = ask(json!({
        "calculate": "correct", "formulas": ["dusk", "plain"], "pot":
        { "clear-base": "2 cup", "stabilizer": "2 tsp", "teal-flake": "1 tsp", "plum": "90 drops" }
    }));
    let told = ask(mispour()).expect("an answer");
    let said = said.expect("an answer");
    assert_eq!(words(&said["nothing_of"]), words(&told["nothing_of"]));
    let total = |answer: &Value| number(&answer["mass"]);
    assert!((total(&said) - total(&told)).abs() <= 1e-12 * total(&told));
}

#[test]
fn of_a_pot_that_was_shot_from_the_rest_is_corrected() {
    let mut request = mispour();
    let whole = ask(request.clone()).expect("an answer");
    let held: f64 = list(&whole["pot"]).iter().map(|one| number(&one["mass"])).sum();
    request["still_there"] = json!({ "value": held / 2.0, "unit": "g" });
    let half = ask(request.clone()).expect("an answer");
    assert!((number(&half["mass"]) * 2.0 - number(&whole["mass"])).abs() < 1e-9 * held);
    request["still_there"] = json!({ "value": held * 1.1, "unit": "g" });
    assert_eq!(ask(request).expect_err("more than was there")[0]["path"], "/still_there");
}

#[test]
fn a_small_cup_gets_the_nearest_that_fits() {
    let mut request = mispour();
    request["cup"] = json!("2 1/2 cup");
    let answer = ask(request.clone()).expect("an answer");
    assert_eq!(answer["outcome"], "nearest");
    // As full as it may be, plum too much and the rest alike a little short.
    let cup = 2.5 * 236.588_236_5;
    assert!((number(&answer["volume"]) - cup).abs() < 1e-6);
    let off = |name| number(&of(&answer["off"], name).expect("a material")["off"]);
    assert!(off("plum") > 0.1 && off("teal-flake") < 0.0);
    assert!((off("teal-flake") - off("clear-base")).abs() < 1e-12);
    assert!(number(&answer["right_volume"]) > cup);
    request["cup"] = json!("2 cup");
    let refused = ask(request).expect_err("fuller than the cup");
    assert_eq!(
        (&refused[0]["code"], &refused[0]["path"]),
        (&json!("correction-over-full"), &json!("/cup"))
    );
}

#[test]
fn what_does_not_belong_is_named_with_what_the_pot_could_become() {
    let request = |trace: Option<&str>| {
        let mut request = json!({
            "calculate": "correct", "formulas": ["dusk", "plain"], "pot_base": "2 cup",
            "pot": { "softener": "1 tsp" }
        });
        if let Some(trace) = trace {
            request["trace"] = json!(trace);
        }
        ask(request).expect("an answer")
    };
    let answer = request(None);
    assert_eq!(answer["outcome"], "foreign");
    assert_eq!(answer["fault"]["code"], "pot-foreign-material");
    assert!(of(&answer["foreign"], "softener").is_some());
    assert!(list(&answer["add"]).is_empty());
    let becomes: Vec<Vec<&str>> =
        list(&answer["becomes"]).iter().map(|one| words(&one["formulas"])).collect();
    assert_eq!(becomes, [vec!["dusk", "soft"], vec!["dusk", "salted"]]);
    let products = words(&answer["becomes"][1]["products"]);
    assert_eq!(products, ["dusk finger, salted", "dusk stick, salted"]);
    // 2 tsp of softener a cup want half a cup at least; the pot has 2 cups, which want 3 more tsp.
    let adds = number(&answer["becomes"][1]["adds"]);
    assert!(adds > 120.0 && adds < 180.0, "{adds}");

    let answer = request(Some("2 %"));
    assert_eq!(answer["outcome"], "right");
    assert!(of(&answer["traces"], "softener").is_some());
}

#[rstest]
#[case(json!({ "pot": { "plumm": "3 drops" } }), "unknown-name", "/pot/plumm")]
#[case(json!({ "pot": { "plum": "3 % of base" } }), "amount-wrong-dimension", "/pot/plum")]
#[case(json!({ "pot": { "fine-salt": "3 drops" } }), "missing-property", "/pot/fine-salt")]
#[case(json!({ "pot": {} }), "pot-empty", "/pot")]
#[case(json!({ "formulas": ["dask"] }), "unknown-name", "/formulas/0")]
fn slips_in_the_request(#[case] change: Value, #[case] code: &str, #[case] path: &str) {
    let mut request = json!({ "calculate": "correct", "formulas": ["dusk", "plain"], "pot": { "plum": "3 drops" } });
    for (field, value) in change.as_object().expect("fields") {
        request[field] = value.clone();
    }
    let faults = ask(request).expect_err("a slip");
    let found = list(&faults).iter().map(|fault| (fault["code"].as_str(), fault["path"].as_str()));
    let found: Vec<_> = found.collect();
    assert!(found.contains(&(Some(code), Some(path))), "{faults}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(24))]

    /// Through the request: what the bench's own measures make of the pot keeps every tolerance.
    #[test]
    fn with_the_measures_of_the_bench_every_material_keeps_its_tolerance(
        drops in 10_u32..200, spoons in 1_u32..16, stabilizer in 4_u32..30,
    ) {
        let answer = ask(json!({
            "calculate": "correct", "formulas": ["dusk", "plain"], "pot_base": "1 cup", "cup": "80 cup",
            "pot": {
                "plum": format!("{drops} drops"),
                "teal-flake": format!("{spoons}/4 tsp"),
                "stabilizer": format!("{stabilizer}/8 tsp"),
            }
        })).expect("an answer");
        prop_assert_eq!(&answer["outcome"], "right");
        prop_assert!(list(&answer["off"]).iter().all(|off| number(&off["off"]) == 0.0));
        let book = book();
        let after = after(&answer);
        // Right: the binding material has its share of the whole.
        let total = number(&answer["right_mass"]);
        for (name, mass) in after {
            let tolerance = book["materials"][&name]["tolerance"].as_str().unwrap_or("5 %");
            let tolerance: f64 = tolerance.trim_end_matches(" %").parse().unwrap();
            let wanted = of(&answer["pot"], &name).map_or(0.0, |one| number(&one["mass"]))
                + of(&answer["add"], &name).map_or(0.0, |one| number(&one["wanted"]));
            prop_assert!(wanted <= total);
            prop_assert!((mass / wanted - 1.0).abs() <= tolerance / 100.0 + 1e-9, "{name}: {mass} for {wanted}");
        }
    }
}

//! Calls by the names of their parameters: what is refused where, and what an example does not reach.

use rstest::rstest;
use std::string::{String, ToString};
use std::vec::Vec;

use Argument::{Number, Numbers, Omitted, Text};

use super::super::plain::{self, OMITTED};
use super::super::*;
use crate::fault::Diagnose;
use crate::parameter::ParameterErrors;

/// Results by name.
type Named = Vec<(&'static str, Value)>;

/// What is asked of the example of the calculation `name` with these parameters changed: its results, or each reason with
/// its path.
fn call(
    name: &str,
    changes: &[(&str, Argument<'_>)],
) -> Result<Named, Vec<(String, &'static str)>> {
    let calculation = find(name).unwrap();
    let example = calculation.example();
    let mut arguments: Vec<Argument<'_>> = example.arguments.clone();
    for (parameter, argument) in changes {
        let place = calculation.parameters.iter().position(|it| it.parameter.name() == *parameter);
        arguments[place.unwrap_or_else(|| panic!("{name} takes no {parameter}"))] = *argument;
    }
    let mut results = Vec::new();
    match calculation.evaluate(&arguments, &mut results) {
        Ok(()) => Ok(calculation.results.iter().map(|it| it.name).zip(results).collect()),
        Err(refused) => {
            assert!(!refused.to_string().is_empty() && !refused.help().is_empty(), "{name}");
            Err(refused
                .reasons()
                .map(|reason| {
                    let path = calculation.path(&reason, |field| field.parameter.name());
                    (path, reason.code)
                })
                .collect())
        }
    }
}

/// The result `of` the call.
fn number(name: &str, of: &str, changes: &[(&str, Argument<'_>)]) -> f64 {
    let results = call(name, changes).unwrap();
    match results.iter().find(|(result, _)| *result == of) {
        Some((_, Value::Number(number))) => *number,
        other => panic!("{name} {of}: {other:?}"),
    }
}

/// What the calculation itself finds is about one parameter, or about the call.
#[rstest]
#[case("convert", &[("amount", Text("1 cub"))], "/amount", "unit-unknown")]
#[case("convert", &[("to", Text("mx"))], "/to", "unit-unknown")]
#[case("convert", &[("to", Text("g"))], "/to", "amount-wrong-dimension")]
#[case("convert", &[("amount", Text("1 dash")), ("measures", Text("metric")), ("to", Text("g"))], "/amount", "unit-of-the-kitchen")]
#[case("density_of_parts", &[("parts", Numbers(&[0.0, 1.0]))], "/parts", "mix-empty")]
#[case("mix_share", &[("parts", Numbers(&[0.0, 1.0, 0.0, 1.0]))], "/parts", "mix-empty")]
#[case("salt_mass", &[("loading", Number(5.0))], "/loading", "salt-out-of-reach")]
#[case("salt_reach", &[("salt_density", Number(0.9)), ("salt_as_scooped", Omitted)], "", "salt-does-not-raise")]
#[case("heat_time", &[("pot_mass", Number(1000.0))], "/pot_mass", "heat-out-of-reach")]
#[case("heat_time", &[("heated_to", Number(20.0))], "/heated_from", "heat-not-hotter")]
#[case("next_burst", &[("aim", Number(190.0))], "/aim", "heat-window")]
#[case("next_burst", &[("thermometer", Number(20.0))], "/thermometer", "heat-window-narrow")]
#[case("stays_hot", &[("hot_to", Number(10.0))], "", "heat-no-cooling")]
#[case("pot_heats", &[("hot_for", Number(10.0))], "/hot_for", "clock-too-short")]
#[case("pot_heats", &[("pot_mass", Number(100.0))], "/pot_mass", "clock-empty")]
#[case("setting_time", &[("mold_at", Number(60.0))], "/mold_at", "mold-too-warm")]
#[case("setting_time", &[("shot_at", Number(50.0)), ("take_out", Number(60.0))], "/shot_at", "shot-not-hotter")]
#[case("stir_every", &[("melt_density", Number(2.2))], "/melt_density", "settling-floats")]
#[case("stir_every", &[("grain", Number(20.0)), ("melt_viscosity_min", Number(1.0))], "", "settling-too-fast")]
#[case("shots", &[("pieces", Number(1e6)), ("rejects", Number(0.999))], "/rejects", "batch-too-many-cast")]
#[case("injector_loads", &[("shot_mass", Number(500.0))], "/shot_mass", "batch-shot-does-not-fit")]
#[case("base_to_mark", &[("mix_needed", Number(1e6))], "/mix_needed", "batch-above-cup-marks")]
#[case("sink_rate", &[("piece_density", Number(0.5))], "/piece_density", "sink-floats")]
#[case("hardness", &[("softener_ratio", Number(0.3))], "/softener_ratio", "softener-ratio-outside-points")]
#[case("softener_ratio", &[("hardness", Number(70.0))], "/hardness", "softener-hardness-outside-points")]
#[case("hardness", &[("points", Numbers(&[0.1, 60.0, 0.1, 40.0]))], "/points", "softener-points-not-rising")]
#[case("swollen_volume", &[("gauge_vacuum", Number(110.0)), ("absolute_pressure", Omitted)], "/gauge_vacuum", "gauge-more-than-the-air")]
#[case("swollen_volume", &[("absolute_pressure", Number(0.0))], "/vapor_pressure", "degas-boils")]
#[case("entrained_air", &[("rise", Number(20.0))], "/rise", "degas-not-air")]
#[case("degas_vessel", &[("vessel_brim", Number(50.0)), ("vessel_mark", Number(50.0))], "/vessel_mark", "degas-below-lowest-mark")]
#[case("equivalent_time", &[("readings", Numbers(&[60.0, 175.0, 0.0, 175.0]))], "/readings", "history-order")]
#[case("budget_left", &[("stabilizer_dose", Number(0.02))], "/stabilizer_dose", "budget-too-much-stabilizer")]
#[case("flake_count", &[("cut", Text("1 mm star"))], "/cut", "cut-unreadable")]
#[case("flake_count", &[("thickness", Number(5000.0))], "/thickness", "flake-thickness")]
#[case("price", &[("cost", Number(1e9)), ("cost_margin", Number(0.99))], "/cost_margin", "price-too-large")]
#[case("bench_measure", &[("mass_to_measure", Number(0.01))], "/mass_to_measure", "measure-not-reached")]
#[case("feed_of_weights", &[("hot_density", Number(1.1))], "", "calibrate-no-contraction")]
fn a_finding_is_about_one_parameter(
    #[case] name: &str,
    #[case] changes: &[(&str, Argument<'_>)],
    #[case] path: &str,
    #[case] code: &str,
) {
    assert_eq!(call(name, changes), Err(Vec::from([(path.into(), code)])));
}

/// What goes only together, only alone, or in an order is named where it is.
#[rstest]
#[case("swollen_volume", &[("dial_tolerance", Number(1.0))], &[("/dial_tolerance", "excludes-other")])]
#[case("swollen_volume", &[("gauge_vacuum", Number(90.0))], &[("/absolute_pressure", "excludes-other")])]
#[case(
    "swollen_volume",
    &[("absolute_pressure", Omitted), ("vapor_pressure", Number(-1.0))],
    &[("/gauge_vacuum", "missing-field"), ("/vapor_pressure", "out-of-range")]
)]
#[case("swollen_volume", &[("vapor_pressure", Number(1.0)), ("damp_at", Number(20.0))], &[("/damp_at", "excludes-other")])]
#[case("degas_vessel", &[("vessel_brim", Omitted)], &[("/vessel_brim", "needs-other")])]
#[case("budget_left", &[("extra_time", Number(1.0))], &[("/extra_most", "needs-other")])]
#[case("budget_left", &[("extra_most", Number(1.0))], &[("/extra_time", "needs-other")])]
#[case(
    "budget_left",
    &[("budget_with", Number(0.02)), ("extra_time", Number(1.0)), ("extra_most", Number(0.02))],
    &[("/extra_most", "out-of-range")]
)]
#[case("heat_time", &[("vessel_mass", Number(1.0))], &[("/vessel_specific_heat", "needs-other")])]
#[case("heat_time", &[("vessel_specific_heat", Number(1.0))], &[("/vessel_mass", "needs-other")])]
#[case("heat_time", &[("timings", Omitted)], &[("/timings", "missing-field")])]
#[case(
    "heat_time",
    &[("timings", Numbers(&[200.0, 20.0, 120.0, 80.0, 400.0, 20.0, 20.0, 160.0]))],
    &[("/timings/1/2", "out-of-range")]
)]
#[case(
    "pot_heats",
    &[("hot_for", Omitted), ("watched_mass", Number(500.0)), ("watched_time", Number(300.0))],
    &[
        ("/clock_from", "needs-other"),
        ("/clock_to", "needs-other"),
        ("/watched_from", "needs-other"),
        ("/watched_to", "needs-other"),
    ]
)]
#[case(
    "pot_heats",
    &[("hot_for", Omitted), ("pot_mass", Number(-1.0))],
    &[("/pot_mass", "out-of-range"), ("/hot_for", "missing-field")]
)]
#[case(
    "pot_heats",
    &[("clock_runs", Numbers(&[22.0, 48.0, 50.0, 0.0, 1.0, 22.0, 48.0, -50.0, 0.0, 1.0]))],
    &[("/clock_runs/1/2", "out-of-range")]
)]
#[case("setting_time", &[("mold_mass", Number(500.0))], &[("/shot_mass", "needs-other")])]
#[case("stir_every", &[("melt_viscosity_min", Omitted)], &[("/melt_viscosity_min", "needs-other")])]
#[case("stir_every", &[("melt_viscosity_max", Omitted)], &[("/melt_viscosity_max", "needs-other")])]
#[case("salt_mass", &[("mix_mass", Number(260.0))], &[("/mix_volume", "needs-other")])]
#[case("salt_mass", &[("hook_volume", Number(1.0))], &[("/hook_mass", "needs-other")])]
#[case("salt_mass", &[("softener_per_salt", Number(0.1))], &[("/softener_density", "needs-other")])]
#[case("salt_mass", &[("base_volume", Number(-1.0))], &[("/base_volume", "out-of-range")])]
#[case("salt_mass", &[("base_density", Number(-1.0))], &[("/base_density", "out-of-range")])]
#[case("salt_mass", &[("mix_mass", Number(-1.0)), ("mix_volume", Number(-1.0)), ("base_volume", Number(-1.0))],
    &[("/base_volume", "out-of-range"), ("/mix_mass", "out-of-range"), ("/mix_volume", "out-of-range")])]
#[case("sink_rate", &[("hook_volume", Omitted)], &[("/hook_volume", "needs-other")])]
#[case("mix_share", &[("part", Number(3.0))], &[("/part", "out-of-range")])]
#[case("cavity_of_weights", &[("weights", Numbers(&[10.0, f64::NAN]))], &[("/weights/1", "not-finite")])]
#[case("drop_of_weighings", &[("drops_weighed", Numbers(&[50.0, 2.2, 1.5, 2.2]))], &[("/drops_weighed/1/0", "wrong-type")])]
#[case("batch_need", &[("rejects", Number(2.0))], &[("/rejects", "out-of-range")])]
fn what_goes_together_is_named(
    #[case] name: &str,
    #[case] changes: &[(&str, Argument<'_>)],
    #[case] reasons: &[(&str, &str)],
) {
    let mut found = call(name, changes).unwrap_err();
    found.sort();
    let mut reasons: Vec<(String, &str)> =
        reasons.iter().map(|(path, code)| (String::from(*path), *code)).collect();
    reasons.sort();
    assert_eq!(found, reasons);
}

/// Rated at 900 W: 900 · 300/(300 + 150) = 600 W. With a vessel of 100 g at 0.8 J/(g K), (600 + 80) J/K by 150 K take 170 s.
#[test]
fn a_rated_oven_and_a_vessel() {
    let rated = [("timings", Omitted), ("oven_power", Number(900.0))];
    assert!((number("heat_time", "power", &rated) - 600.0).abs() < 1e-9);
    let vessel = [("vessel_mass", Number(100.0)), ("vessel_specific_heat", Number(0.8))];
    let time = number("heat_time", "heat_time", &[rated, vessel].concat());
    assert!((time - 170.0).abs() < 1e-9, "{time}");
}

/// As `stays_hot` has it, 500 g stay hot for 651 s: ten shots of a minute, of next to nothing, take 600 s.
#[test]
fn a_watched_pot_has_its_heats() {
    let changes = [
        ("pot_mass", Number(500.0)),
        ("clock_runs", Numbers(&[12.0, 1e-6, 60.0, 0.0, 1.0])),
        ("hot_for", Omitted),
        ("clock_from", Number(170.0)),
        ("clock_to", Number(130.0)),
        ("watched_mass", Number(500.0)),
        ("watched_from", Number(170.0)),
        ("watched_to", Number(150.0)),
        ("watched_time", Number(300.0)),
        ("room", Number(22.0)),
    ];
    assert_eq!(number("pot_heats", "first_shots", &changes), 10.0);
    assert_eq!(number("pot_heats", "reheats", &changes), 1.0);
}

/// 40 g at 2 J/(g K) that cool by 165 − 50 K warm 1 kg at 0.9 J/(g K) by 80 · 115/900 K; the shot then sets as in a mold so warm.
#[test]
fn a_mold_sets_as_warm_as_the_shot_leaves_it() {
    let changes = [
        ("shot_mass", Number(40.0)),
        ("shot_specific_heat", Number(2.0)),
        ("mold_mass", Number(1000.0)),
        ("mold_specific_heat", Number(0.9)),
        ("take_out", Number(50.0)),
        ("mold_at", Number(25.0)),
    ];
    let warms = 80.0 * 115.0 / 900.0;
    assert!((number("setting_time", "warms", &changes) - warms).abs() < 1e-9);
    let warm = [("take_out", Number(50.0)), ("mold_at", Number(25.0 + warms))];
    let [found, expected] = [
        number("setting_time", "setting_time", &changes),
        number("setting_time", "setting_time", &warm),
    ];
    assert!((found - expected).abs() < 1e-9 * expected);
}

/// 100 mL at 1.2 g/mL hot and cold fill a cavity at any feed; a mix of 1.0 hot and 1.1 g/mL cold by none and all of its contraction.
#[test]
fn an_unknown_feed_gives_bounds() {
    let with = |feed| {
        let changes = [
            ("form", Text("of-base")),
            ("loading", Number(0.0)),
            ("to_form", Text("piece-mass")),
            ("hot_volume", Number(275.0)),
            ("cavity_volume", Number(11.0)),
            ("feed", feed),
        ];
        ["loading", "loading_min", "loading_max"].map(|of| number("salt_convert", of, &changes))
    };
    // 250 g in 275 mL hot are 10 g in 11 mL; cold 11 g.
    for (feed, expected) in
        [(Omitted, [10.5, 10.0, 11.0]), (Number(0.0), [10.0; 3]), (Number(1.0), [11.0; 3])]
    {
        let found = with(feed);
        let close = found.iter().zip(expected).all(|(found, it)| (found - it).abs() < 1e-9);
        assert!(close, "{found:?}");
    }
    // Back: the salt for a piece of 10.6 g is least if all is fed and most if nothing is.
    let changes = |feed| {
        [
            ("form", Text("piece-mass")),
            ("loading", Number(11.2)),
            ("hot_volume", Number(275.0)),
            ("cavity_volume", Number(11.0)),
            ("feed", feed),
        ]
    };
    let [salt, least, most] = ["salt_mass", "salt_mass_min", "salt_mass_max"]
        .map(|of| number("salt_mass", of, &changes(Omitted)));
    let [fed, unfed] =
        [1.0, 0.0].map(|feed| number("salt_mass", "salt_mass", &changes(Number(feed))));
    assert_eq!((least, most), (fed, unfed));
    assert!(least < salt && salt < most);
}

#[test]
fn shares_of_a_mix() {
    // 30 g at 1 g/mL, 30 g at 2 g/mL and 40 g at 4 g/mL: 30, 15 and 10 mL.
    let parts = ("parts", Numbers(&[30.0, 1.0, 30.0, 2.0, 40.0, 4.0]));
    for (part, mass, volume) in [(1.0, 0.3, 30.0), (2.0, 0.3, 15.0), (3.0, 0.4, 10.0)] {
        let changes = [parts, ("part", Number(part))];
        assert!((number("mix_share", "mass_share", &changes) - mass).abs() < 1e-15);
        let share = number("mix_share", "volume_share", &changes);
        assert!((share - volume / 55.0).abs() < 1e-15);
    }
}

#[test]
fn an_overspent_budget_has_nothing_left() {
    let changes = [("equivalent_time", Number(1e6))];
    assert_eq!(number("budget_left", "left", &changes), 0.0);
    assert!(number("budget_left", "overspent", &changes) > 0.0);
}

#[test]
fn a_rate_of_rejects_is_a_share() {
    let changes = [("cast_pieces", Number(8.0)), ("reject_count", Number(2.0))];
    assert_eq!(number("reject_rate", "rejects", &changes), 0.25);
}

/// 300 mL are a cup of 250 mL full, and one to its mark of 50 mL.
#[test]
fn a_cup_is_filled_and_then_to_a_mark() {
    let changes = [
        ("mass_to_measure", Number(300.0)),
        ("spoons", Omitted),
        ("cups", Numbers(&[20.0, 60.0, 50.0, 250.0])),
    ];
    let of = |result| number("bench_measure", result, &changes);
    assert_eq!(["cup", "cup_fillings", "cup_mark"].map(of), [2.0, 1.0, 1.0]);
}

#[test]
fn kinds_are_named_by_their_shape() {
    let wanted = |name: &str, parameter: &str| {
        let calculation = find(name).unwrap();
        let place = calculation.parameters.iter().position(|it| it.parameter.name() == parameter);
        let mut arguments = calculation.example().arguments;
        arguments[place.unwrap()] = Text("1");
        calculation.evaluate(&arguments, &mut Vec::new()).unwrap_err().to_string()
    };
    assert!(wanted("mix_share", "parts").ends_with("must be a list of pairs of numbers"));
    assert!(wanted("least_pot", "doses").ends_with("must be a list of rows of numbers"));
}

#[test]
fn a_summary_is_the_first_paragraph_in_one_line() {
    let mut longest = 0;
    for calculation in CALCULATIONS {
        let first = calculation.text.split(|line| line.trim().is_empty()).next().unwrap();
        let words: Vec<&str> = first.iter().map(|line| line.trim()).collect();
        assert_eq!(calculation.summary(), words.join(" "));
        assert_eq!(std::format!("{calculation:?}"), calculation.name);
        longest = longest.max(words.len());
    }
    assert!(longest > 1);
}

#[test]
fn an_omitted_number_has_a_number_for_it() {
    assert_eq!((plain::given(OMITTED), plain::given(0.5)), (None, Some(0.5)));
}

#[test]
fn a_refusal_reports_what_is_in_it() {
    let calculation = find("water_density").unwrap();
    let refused = calculation.evaluate(&[Number(200.0)], &mut Vec::new()).unwrap_err();
    let Refusal::Parameters(errors) = &refused else { panic!("{refused}") };
    let errors: &ParameterErrors = errors;
    assert_eq!(refused.to_string(), errors.to_string());
    assert_eq!((refused.help(), refused.parameter()), (errors.help(), errors.parameter()));
    assert!(refused.parameter().is_some() && !refused.help().is_empty());
}

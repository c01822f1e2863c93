use std::string::ToString;
use std::vec::Vec;

use proptest::prelude::*;
use rstest::rstest;

use super::*;
use crate::fault::Diagnose;
use uom::si::mass::gram;
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::ratio::percent;
use uom::si::volume::milliliter;

// 21 CFR 101.9(b)(5)(viii): a teaspoon is 5 mL, a tablespoon 15 mL, a cup 240 mL.
const TEASPOON_ML: f64 = 5.0;

fn g(value: f64) -> Mass {
    Mass::new::<gram>(value)
}

fn ml(value: f64) -> Volume {
    Volume::new::<milliliter>(value)
}

fn within(value: f64) -> Ratio {
    Ratio::new::<percent>(value)
}

fn scooped(g_per_ml: f64) -> Manner {
    let density = MassDensity::new::<gram_per_cubic_centimeter>(g_per_ml);
    Manner { by_volume: Some(density), drop: None }
}

fn balance() -> Balance {
    Balance { readability: g(0.1), capacity: g(500.0), least_load: g(0.5) }
}

/// Spoons from a tablespoon to an eighth of a teaspoon, deliberately out of order.
fn spoons() -> Vec<Volume> {
    [1.0, 3.0, 0.5, 0.125, 0.25].map(|tsp| ml(tsp * TEASPOON_ML)).to_vec()
}

fn cups() -> Vec<Cup> {
    std::vec![Cup { mark: ml(60.0), capacity: ml(480.0) }]
}

fn bench(balance: Option<Balance>, spoons: Vec<Volume>, cups: Vec<Cup>) -> Bench {
    Bench::new(balance, spoons, cups, Handling::default()).unwrap()
}

#[test]
fn a_bench_has_at_most_so_many_cups() {
    let of = |count: usize| {
        let cups = std::vec![cups()[0]; count];
        Bench::new(None, spoons(), cups, Handling::default()).map(|bench| bench.cups().len())
    };
    assert_eq!(of(MOST_CUPS), Ok(MOST_CUPS));
    let error = of(MOST_CUPS + 1).unwrap_err();
    assert_eq!(error.to_string(), "The bench has 65 cups.");
    assert_eq!(error.code(), "bench-cups");
    assert!(error.help().contains("at most 64"), "{}", error.help());
}

#[test]
fn the_balance_wins_and_the_spoons_stay_an_alternative() {
    // 12.4 g at 5 g a teaspoonful: 2 1/2 tsp give 12.5 g, +0.8 %.
    let bench = bench(Some(balance()), spoons(), Vec::new());
    let choice = bench.measure(g(12.4), &scooped(1.0), within(2.0)).unwrap();
    assert_eq!(choice.best.tool, Tool::Balance);
    let [Step::Weigh { increments: 124, times: 1, .. }] = choice.best.steps[..] else {
        panic!("{:?}", choice.best.steps)
    };
    let [other] = &choice.others[..] else { panic!("{:?}", choice.others) };
    let expected = [Step::Spoon { spoon: 0, times: 2 }, Step::Spoon { spoon: 2, times: 1 }];
    assert_eq!(other.steps, expected);
    assert!((other.deviation.value - 0.1 / 12.4).abs() < 1e-12);
    assert!(other.within);
}

#[test]
fn one_spoonful_beats_a_reading_where_it_fits_better() {
    let bench = bench(Some(balance()), spoons(), Vec::new());
    let choice = bench.measure(g(6.25), &scooped(1.25), within(2.0)).unwrap();
    assert_eq!(choice.best.steps, [Step::Spoon { spoon: 0, times: 1 }]);
    assert_eq!(choice.others[0].tool, Tool::Balance);
}

#[rstest]
#[case(60.0, &[(1, 1)], &[])]
#[case(120.0, &[(2, 1)], &[])]
#[case(125.0, &[(2, 1)], &[(0, 1)])]
#[case(480.0, &[(8, 1)], &[])]
#[case(1095.0, &[(8, 2), (2, 1)], &[(1, 1)])]
// A mark just above the mass is taken where the tolerance allows it.
#[case(119.0, &[(2, 1)], &[])]
fn a_cup_is_filled_to_a_mark_and_finished_with_spoons(
    #[case] wanted_g: f64,
    #[case] fills: &[(u32, u32)],
    #[case] spoonfuls: &[(usize, u32)],
) {
    let bench = bench(None, spoons(), cups());
    let choice = bench.measure(g(wanted_g), &scooped(1.0), within(1.0)).unwrap();
    let mut expected: Vec<Step> =
        fills.iter().map(|&(mark, times)| Step::Fill { cup: 0, mark, times }).collect();
    expected.extend(spoonfuls.iter().map(|&(spoon, times)| Step::Spoon { spoon, times }));
    assert_eq!(choice.best.steps, expected);
    assert_eq!(choice.best.tool, Tool::Cup);
}

#[test]
fn of_two_marks_within_the_tolerance_the_nearer_is_taken() {
    let fine = std::vec![Cup { mark: ml(5.0), capacity: ml(240.0) }];
    let bench = bench(None, Vec::new(), fine);
    for (wanted_g, expected) in [(101.0, 20), (104.0, 21)] {
        let choice = bench.measure(g(wanted_g), &scooped(1.0), within(10.0)).unwrap();
        assert_eq!(choice.best.steps, [Step::Fill { cup: 0, mark: expected, times: 1 }]);
    }
}

#[rstest]
#[case(1.76, 40, 4)]
#[case(1.78, 40, 4)]
#[case(1.80, 41, 5)]
#[case(0.044, 1, 1)]
fn drops_are_whole(#[case] wanted_g: f64, #[case] drops: u32, #[case] acts: u32) {
    let material = Manner { by_volume: None, drop: Some(g(0.044)) };
    let bench = bench(None, Vec::new(), Vec::new());
    let choice = bench.measure(g(wanted_g), &material, within(2.0)).unwrap();
    assert_eq!(choice.best.steps, [Step::Drop { times: drops }]);
    assert_eq!(choice.best.acts, acts);
}

#[test]
fn a_load_above_the_capacity_is_split_evenly() {
    let bench = bench(Some(balance()), Vec::new(), Vec::new());
    let choice = bench.measure(g(1200.1), &Manner::default(), within(1.0)).unwrap();
    let steps: Vec<(u64, u32)> = choice
        .best
        .steps
        .iter()
        .map(|step| match *step {
            Step::Weigh { increments, times, .. } => (increments, times),
            ref other => panic!("{other:?}"),
        })
        .collect();
    assert_eq!(steps, [(4001, 1), (4000, 2)]);
    assert_eq!(choice.best.acts, 3);
}

#[test]
fn a_reading_that_fits_is_still_only_true_to_half_the_readability() {
    // 0.6 g on a balance that shows 0.1 g: ±0.05 g is 8 %. It does from 0.1/(2·0.02) = 2.5 g on.
    let bench = bench(Some(balance()), Vec::new(), Vec::new());
    let refused = bench.measure(g(0.6), &Manner::default(), within(2.0)).unwrap_err();
    let MeasureError::NotReached { tools, .. } = &refused else { panic!("{refused}") };
    assert!((tools[0].least.unwrap() - g(2.5)).abs() < g(1e-9));
    assert!(bench.measure(g(2.51), &Manner::default(), within(2.0)).is_ok());
}

/// Two readings are true to half a step each: of 200 g by a scale for 100 g with steps of 10 g, 5 % together.
#[test]
fn each_reading_of_a_split_load_adds_half_a_step() {
    let scale = Balance { readability: g(10.0), capacity: g(100.0), least_load: g(10.0) };
    let bench = bench(Some(scale), Vec::new(), Vec::new());
    assert!(bench.measure(g(200.0), &Manner::default(), within(5.1)).is_ok());
    assert!(bench.measure(g(200.0), &Manner::default(), within(4.9)).is_err());
}

#[test]
fn the_least_load_is_the_least_reading() {
    let coarse = Balance { least_load: g(5.0), ..balance() };
    let bench = bench(Some(coarse), Vec::new(), Vec::new());
    let choice = bench.measure(g(4.96), &Manner::default(), within(2.0)).unwrap();
    assert!((choice.best.mass - g(5.0)).abs() < g(1e-9));
    let refused = bench.measure(g(3.0), &Manner::default(), within(2.0)).unwrap_err();
    let MeasureError::NotReached { tools, .. } = &refused else { panic!("{refused}") };
    assert_eq!(tools[0].least, Some(g(5.0)));
}

#[test]
fn a_refusal_says_what_would_do() {
    let bench = bench(Some(balance()), spoons(), Vec::new());
    let material = Manner { drop: Some(g(0.044)), ..scooped(1.0) };
    let refused = bench.measure(g(0.11), &material, within(1.0)).unwrap_err();
    assert_eq!(refused.to_string(), "No tool on the bench measures 0.1100 g within 1 %.");
    assert_eq!(
        refused.help(),
        "The nearest: drops 0.0880 g (-20.0 %), which does from 2.200 g on; \
         balance 0.5000 g (+354.5 %), which does from 5.000 g on; \
         spoons 0.6250 g (+468.2 %), which does from 31.25 g on. \
         Mix more at once, so that the amount grows to 2.200 g, or use a finer tool."
    );
}

#[rstest]
#[case::nothing(0.0)]
#[case::negative(-1.0)]
#[case::not_a_number(f64::NAN)]
#[case::endless(f64::INFINITY)]
#[case::absurd(1e300)]
fn a_mass_that_is_none_is_refused(#[case] wanted_g: f64) {
    let bench = bench(Some(balance()), spoons(), cups());
    let refused = bench.measure(g(wanted_g), &scooped(1.0), within(2.0)).unwrap_err();
    assert_eq!(refused.code(), crate::parameter::refused_as(wanted_g));
}

#[rstest]
#[case(0.0)]
#[case(-2.0)]
#[case(100.0)]
#[case(f64::NAN)]
fn a_tolerance_that_is_none_is_refused(#[case] tolerance: f64) {
    let bench = bench(Some(balance()), Vec::new(), Vec::new());
    let refused = bench.measure(g(5.0), &Manner::default(), within(tolerance)).unwrap_err();
    assert_eq!(refused.code(), crate::parameter::refused_as(tolerance));
}

#[test]
fn a_size_that_cannot_be_is_said_in_the_unit_of_the_bench() {
    let refused =
        Bench::new(None, std::vec![ml(-1.0)], Vec::new(), Handling::default()).unwrap_err();
    assert_eq!(
        refused.to_string(),
        "entry 1 of the list: the spoon volume is -1 mL; it must be from 1e-9 to 1e15 mL"
    );
    assert!(refused.help().contains("the sign and the unit"), "{}", refused.help());
    let none = Balance { capacity: g(0.0), ..balance() };
    let refused = Bench::new(Some(none), Vec::new(), Vec::new(), Handling::default()).unwrap_err();
    assert_eq!(refused.to_string(), "the balance capacity is 0 g; it must be from 1e-12 to 1e15 g");
    let bench = bench(None, spoons(), Vec::new());
    let refused = bench.measure(g(5.0), &scooped(1e300), within(5.0)).unwrap_err();
    assert_eq!(
        refused.to_string(),
        "the density as measured is 1e300 g/mL; it must be from 0.001 to 25 g/mL"
    );
}

#[test]
fn a_material_that_no_tool_takes_is_refused() {
    let bench = bench(None, spoons(), cups());
    let refused = bench.measure(g(5.0), &Manner::default(), within(2.0)).unwrap_err();
    assert_eq!(refused, MeasureError::NoTool);
}

#[rstest]
#[case::spoon(None, std::vec![ml(0.0)], Vec::new(), Handling::default(), "out-of-range")]
#[case::spoons(None, std::vec![ml(1.0); 9], Vec::new(), Handling::default(), "out-of-range")]
#[case::cup(None, Vec::new(), std::vec![Cup { mark: ml(60.0), capacity: ml(50.0) }],
    Handling::default(), "bench-capacity")]
#[case::capacity(Some(Balance { capacity: g(0.05), ..balance() }), Vec::new(), Vec::new(),
    Handling::default(), "out-of-range")]
#[case::least_load(Some(Balance { least_load: g(300.0), ..balance() }), Vec::new(), Vec::new(),
    Handling::default(), "bench-capacity")]
#[case::acts(None, Vec::new(), Vec::new(), Handling { acts: 17, ..Handling::default() }, "bench-limit")]
#[case::drops(None, Vec::new(), Vec::new(), Handling { drops_per_act: 0, ..Handling::default() },
    "bench-limit")]
fn a_bench_that_cannot_be_is_refused(
    #[case] balance: Option<Balance>,
    #[case] spoons: Vec<Volume>,
    #[case] cups: Vec<Cup>,
    #[case] limits: Handling,
    #[case] code: &str,
) {
    assert_eq!(Bench::new(balance, spoons, cups, limits).unwrap_err().code(), code);
}

#[test]
fn the_formula_error_is_that_of_the_ratios() {
    // The base 2 % short, a color exact (so 1/0.98 too strong), salt 2 % short with it.
    let base = DoseGiven { wanted: g(100.0), given: g(98.0) };
    let color = DoseGiven { wanted: g(2.0), given: g(2.0) };
    let salt = DoseGiven { wanted: g(30.0), given: g(29.4) };
    let off = formula_deviation(base, &[salt, color]).unwrap();
    assert!(off.doses[0].value.abs() < 1e-12);
    assert!((off.doses[1].value - (1.0 / 0.98 - 1.0)).abs() < 1e-12);
    assert_eq!(off.worst.map(|(index, _)| index), Some(1));
    assert_eq!(formula_deviation(base, &[]).unwrap().worst, None);
    let none = DoseGiven { wanted: g(0.0), given: g(0.0) };
    assert_eq!(dose_deviation(none, base).unwrap_err().code(), "out-of-range");
}

/// The mass of the steps, summed again.
fn mass_of(bench: &Bench, steps: &[Step], material: &Manner) -> f64 {
    let density = material.by_volume.unwrap();
    steps
        .iter()
        .map(|step| match *step {
            Step::Weigh { increments, times, .. } => {
                bench.balance().unwrap().readability * increments as f64 * f64::from(times)
            }
            Step::Fill { cup, mark, times } => {
                density * bench.cups()[cup].mark * f64::from(mark) * f64::from(times)
            }
            Step::Spoon { spoon, times } => density * bench.spoons()[spoon] * f64::from(times),
            Step::Between { volume, .. } => material.by_volume.unwrap() * volume,
            Step::Drop { times } => material.drop.unwrap() * f64::from(times),
        })
        .sum::<Mass>()
        .value
}

proptest! {
    #[test]
    fn every_measure_is_what_its_steps_give(
        exponent in -11.0..11.0f64,
        bulk in 0.05..8.0f64,
        drop_g in 0.01..0.1f64,
        tolerance in 0.01..40.0f64,
    ) {
        let wanted = Mass::new::<uom::si::mass::kilogram>(libm::pow(10.0, exponent));
        let bench = bench(Some(balance()), spoons(), cups());
        let material = Manner { drop: Some(g(drop_g)), ..scooped(bulk) };
        let tolerance = within(tolerance);
        let found = match bench.measure(wanted, &material, tolerance) {
            Ok(Choice { best, others }) => {
                prop_assert!(best.within);
                prop_assert!(others.iter().all(|o| !o.within || o.acts >= best.acts));
                let mut all = others;
                all.push(best);
                all
            }
            Err(MeasureError::NotReached { tools, .. }) => {
                prop_assert!(tools.iter().all(|tool| !tool.nearest.within));
                tools.into_iter().map(|tool| tool.nearest).collect()
            }
            Err(other) => return Err(TestCaseError::fail(other.to_string())),
        };
        prop_assert_eq!(found.len(), 4);
        for measured in found {
            let mass = mass_of(&bench, &measured.steps, &material);
            prop_assert!((mass - measured.mass.value).abs() <= 1e-12 * mass);
            let deviation = measured.mass.value / wanted.value - 1.0;
            let rounding = 1e-12 * (1.0 + deviation.abs());
            prop_assert!((deviation - measured.deviation.value).abs() <= rounding);
            prop_assert!(!measured.within || measured.deviation.value.abs() <= tolerance.value * (1.0 + 1e-12));
        }
    }

    /// From q/(2 t) on the tool keeps the tolerance, as long as the acts suffice.
    #[test]
    fn the_least_mass_is_enough(factor in 1.0..2.0f64, tolerance in 2.0..20.0f64) {
        let drop = g(0.05);
        let wanted = drop / (2.0 * tolerance / 100.0) * factor;
        let bench = bench(None, Vec::new(), Vec::new());
        let material = Manner { by_volume: None, drop: Some(drop) };
        prop_assert!(bench.measure(wanted, &material, within(tolerance * (1.0 + 1e-9))).is_ok());
    }
}

fn kg(value: f64) -> Mass {
    Mass::new::<uom::si::mass::kilogram>(value)
}

/// A refusal; of each tool the least mass from which on it does, and the most that it gives.
fn refused_with(wanted: f64, tools: &[(Option<f64>, f64)]) -> MeasureError {
    let tools = tools
        .iter()
        .map(|&(least, most)| Shortfall {
            nearest: Measure::exactly(Tool::Spoons, Vec::new(), g(wanted), g(wanted) * 0.5),
            least: least.map(g),
            most: g(most),
        })
        .collect();
    MeasureError::NotReached { wanted: g(wanted), tolerance: 0.01, tools }
}

#[test]
fn each_tool_has_its_reason() {
    let tools =
        [(Some(3.0), 9.0), (Some(2.0), 9.0), (Some(2.5), 9.0), (Some(0.5), 0.8), (Some(0.5), 1.0)];
    let refused = refused_with(1.0, &[tools.as_slice(), &[(Some(1.0), 9.0), (None, 9.0)]].concat());
    let each = |reason: &str| std::format!("spoons 0.5000 g (-50.0 %), which {reason}");
    let reasons = [
        "does from 3.000 g on",
        "does from 2.000 g on",
        "does from 2.500 g on",
        "gives 0.8000 g at most",
        "takes too many acts",
        "takes too many acts",
        "is too coarse for any amount",
    ];
    let nearest = reasons.map(each).join("; ");
    let end = "Mix more at once, so that the amount grows to 2.000 g, or use a finer tool.";
    assert_eq!(refused.help(), std::format!("The nearest: {nearest}. {end}"));
    assert_eq!(refused.least(), Some(g(2.0)));
    assert_eq!(refused.parameter(), Some(Parameter::MassToMeasure));
    let never = refused_with(1.0, &[(Some(1.0), 9.0)]);
    assert!(never.help().ends_with(". Use another tool, allow more acts, or split the amount."));
    assert_eq!(never.least(), None);
}

// 0.1 g for 0.00002775 g is 360 256 % too much, which nobody reads.
#[rstest]
#[case(0.000_027_75, "3600 times what is needed")]
#[case(0.009_8, "10 times what is needed")]
#[case(0.010_1, "+890.1 %")]
#[case(0.08, "+25.0 %")]
fn what_is_far_too_much_is_a_number_of_times(#[case] wanted: f64, #[case] off: &str) {
    let tool = Shortfall {
        nearest: Measure::exactly(Tool::Balance, Vec::new(), g(wanted), g(0.1)),
        least: Some(g(1.0)),
        most: g(500.0),
    };
    let tools = Vec::from([tool]);
    let refused = MeasureError::NotReached { wanted: g(wanted), tolerance: 0.05, tools };
    let nearest = std::format!("The nearest: balance 0.1000 g ({off}), which does from 1.000 g on");
    assert!(refused.help().starts_with(&nearest), "{}", refused.help());
}

#[rstest]
#[case(0.008, "0.008000 g")]
#[case(0.01, "0.0100 g")]
#[case(0.015, "0.0150 g")]
#[case(0.5, "0.5000 g")]
#[case(1.0, "1.000 g")]
#[case(1.5, "1.500 g")]
#[case(10.0, "10.00 g")]
#[case(15.0, "15.00 g")]
#[case(100.0, "100.0 g")]
#[case(150.0, "150.0 g")]
fn a_message_has_four_digits_of_a_mass(#[case] grams: f64, #[case] shown: &str) {
    let message = refused_with(grams, &[]).to_string();
    assert_eq!(message, std::format!("No tool on the bench measures {shown} within 1 %."));
}

/// Every tool alone, for 0.55 g within 1 %: from step/(2 · 1 %) on, and up to what 12 acts or 60 drops give.
#[test]
fn each_tool_has_its_reach() {
    let reach = |bench: Bench, material: Manner| {
        let refused = bench.measure(g(0.55), &material, within(1.0)).unwrap_err();
        let MeasureError::NotReached { tools, .. } = refused else { panic!("{refused}") };
        tools.iter().map(|tool| (tool.least.unwrap(), tool.most)).collect::<Vec<_>>()
    };
    let close = |found: (Mass, Mass), least: f64, most: f64| {
        let off = [found.0 - g(least), found.1 - g(most)];
        assert!(off.iter().all(|off| off.abs() < g(1e-9)), "{found:?}");
    };
    let weighed = reach(bench(Some(balance()), Vec::new(), Vec::new()), Manner::default());
    close(weighed[0], 5.0, 6000.0);
    let spoons = std::vec![ml(1.0), ml(15.0)];
    close(reach(bench(None, spoons.clone(), Vec::new()), scooped(1.0))[0], 50.0, 180.0);
    let drops = Manner { by_volume: None, drop: Some(g(0.03)) };
    close(reach(bench(None, Vec::new(), Vec::new()), drops)[0], 1.5, 1.8);
    // In a cup a spoon that is smaller than its marks counts, and the marks where it is not.
    for (mark, least) in [(60.0, 50.0), (0.8, 40.0)] {
        let cups = std::vec![Cup { mark: ml(mark), capacity: ml(480.0) }];
        let found = reach(bench(None, spoons.clone(), cups), scooped(1.0));
        let cup = found.iter().find(|(_, most)| *most > g(1000.0)).unwrap();
        close(*cup, least, 5760.0);
    }
}

/// In numbers without rounding: a deviation of just the tolerance keeps it, with every tool.
#[test]
fn the_tolerance_itself_is_kept() {
    let limits = Handling { acts: 1, drops: 1, drops_per_act: 1 };
    let half = Ratio::from(0.5);
    let spoon = Volume::new::<uom::si::volume::cubic_meter>(1.0 / 1024.0);
    let water = MassDensity::new::<uom::si::mass_density::kilogram_per_cubic_meter>(1024.0);
    let (of_one, drop) = (Manner { by_volume: Some(water), drop: None }, Some(kg(1.0)));
    let dropped = Manner { by_volume: None, drop };
    let spoons = Bench::new(None, std::vec![spoon], Vec::new(), limits).unwrap();
    let balance = Balance { readability: kg(1.0), capacity: kg(1.0), least_load: kg(0.0) };
    let scale = Bench::new(Some(balance), Vec::new(), Vec::new(), limits).unwrap();
    let none = Bench::new(None, Vec::new(), Vec::new(), limits).unwrap();
    for (bench, material, wanted) in
        [(&spoons, of_one, 2.0), (&none, dropped, 2.0), (&scale, Manner::default(), 1.0)]
    {
        let choice = bench.measure(kg(wanted), &material, half).unwrap();
        assert_eq!((choice.best.mass, choice.best.acts), (kg(1.0), 1));
        // From 1 kg on it would do, and 1 kg is all it gives.
        let refused = bench.measure(kg(4.0), &material, half).unwrap_err();
        let MeasureError::NotReached { tools, .. } = refused else { panic!("{refused}") };
        assert_eq!((tools[0].least, tools[0].most), (Some(kg(1.0)), kg(1.0)));
    }
}

#[test]
fn limits_at_their_ends() {
    let most = Handling { acts: 16, ..Handling::default() };
    assert!(Bench::new(None, Vec::new(), Vec::new(), most).is_ok());
    let none = Handling { drops_per_act: 0, ..Handling::default() };
    let refused = Bench::new(None, Vec::new(), Vec::new(), none).unwrap_err();
    assert_eq!(refused.to_string(), "The bench allows 0 drops an act.");
    let half = Balance { least_load: g(250.0), ..balance() };
    assert!(Bench::new(Some(half), Vec::new(), Vec::new(), Handling::default()).is_ok());
    let cups = std::vec![cups()[0], Cup { mark: ml(60.0), capacity: ml(50.0) }];
    let refused = Bench::new(None, Vec::new(), cups, Handling::default()).unwrap_err();
    assert_eq!(refused.to_string(), "The capacity of cup 2 is too small.");
    assert_eq!(refused.parameter(), None);
}

#[test]
fn a_measure_of_steps() {
    let steps = std::vec![
        Step::Fill { cup: 0, mark: 2, times: 2 },
        Step::Between { cup: 0, volume: ml(30.0) },
        Step::Spoon { spoon: 0, times: 3 },
        Step::Drop { times: 7 },
    ];
    let measure = Measure::exactly(Tool::Cup, steps, g(100.0), g(98.0));
    assert!((measure.deviation.value + 0.02).abs() < 1e-12 && measure.within);
    // Twice, once, three times, and the drops at once.
    assert_eq!(measure.acts, 7);
}

/// As many acts, as far off: less goes first, whatever the tool; by rounding alone it is the tool.
#[test]
fn less_before_more_before_the_order_of_tools() {
    let measure = |tool, given: f64| Measure::exactly(tool, Vec::new(), kg(1.0), kg(1.0 + given));
    let quarter = 0.25;
    assert!(measure(Tool::Drops, -quarter).rank() < measure(Tool::Balance, quarter).rank());
    assert!(measure(Tool::Balance, 0.0).rank() < measure(Tool::Drops, -1e-12).rank());
}

#[test]
fn the_first_of_two_doses_as_far_off_is_the_worst() {
    let base = DoseGiven { wanted: g(100.0), given: g(100.0) };
    let dose = DoseGiven { wanted: g(4.0), given: g(3.0) };
    let worst = formula_deviation(base, &[dose, dose]).unwrap().worst;
    assert_eq!(worst, Some((0, Ratio::from(-0.25))));
}

#[rstest]
#[case(3.0, 3.0)]
#[case(3.0 * (1.0 - 0.9e-12), 3.0)]
#[case(3.0 * (1.0 - 1.5e-12), 2.0)]
#[case(-3.0 * (1.0 + 0.9e-12), -3.0)]
#[case(2.9, 2.0)]
fn rounding_takes_no_step_away(#[case] ratio: f64, #[case] whole: f64) {
    assert_eq!(ratio_floor(ratio), whole);
}

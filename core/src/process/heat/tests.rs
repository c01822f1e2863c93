use proptest::prelude::*;
use rstest::rstest;
use std::string::ToString;
use std::vec::Vec;
use uom::si::heat_capacity::joule_per_kelvin;
use uom::si::mass::gram;
use uom::si::power::watt;
use uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use uom::si::temperature_interval;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::second;

use super::*;
use crate::fault::Diagnose;
use crate::quantity::{HeatCapacity, SpecificHeatCapacity, TemperatureInterval, Time};

fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(t)
}

fn s(t: f64) -> Time {
    Time::new::<second>(t)
}

fn j_per_g_k(c: f64) -> SpecificHeatCapacity {
    SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(c * 1000.0)
}

fn load(grams: f64) -> Load {
    let vessel = HeatCapacity::new::<joule_per_kelvin>(0.0);
    Load::new(Mass::new::<gram>(grams), j_per_g_k(2.0), vessel).unwrap()
}

fn timing(grams: f64, seconds: f64) -> Timing {
    Timing {
        load: load(grams),
        setting: Ratio::from(0.7),
        start: celsius(20.0),
        end: celsius(170.0),
        duration: s(seconds),
    }
}

/// 250 g at 2 J/(g K) over 150 K are 75 kJ: 187.5 s make 400 W.
fn oven(seconds: &[f64]) -> Oven {
    let timings: Vec<Timing> = seconds.iter().map(|&t| timing(250.0, t)).collect();
    Oven::from_timings(&timings).unwrap()
}

/// 325 °F to 350 °F.
fn window() -> Window {
    Window::around(celsius(162.777_777_8), celsius(176.666_666_7)).unwrap()
}

#[test]
fn one_timing_gives_a_power_and_no_uncertainty() {
    let oven = oven(&[187.5]);
    assert!((oven.power().get::<watt>() - 400.0).abs() < 1e-9);
    assert_eq!(oven.power_uncertainty(), None);
    assert_eq!(oven.setting(), Ratio::from(0.7));
    let heating = oven.time(load(250.0), celsius(20.0), celsius(95.0)).unwrap();
    assert!((heating.time.get::<second>() - 93.75).abs() < 1e-9);
    assert_eq!((heating.uncertainty, heating.reach), (None, Reach::Within));
}

#[test]
fn several_timings_give_the_mean_and_its_uncertainty() {
    // 180, 190, 200 s for the same heat: the mean is 190 s, s = 10 s, u = 10/√3 s (JCGM 100, 4.2).
    let oven = oven(&[180.0, 190.0, 200.0]);
    assert!((oven.power().get::<watt>() - 75_000.0 / 190.0).abs() < 1e-9);
    let relative = (oven.power_uncertainty().unwrap() / oven.power()).value;
    assert!((relative - 10.0 / 190.0 / libm::sqrt(3.0)).abs() < 1e-12);
    let heating = oven.time(load(250.0), celsius(20.0), celsius(170.0)).unwrap();
    // One more heating scatters by s√(1 + 1/3).
    let u = heating.uncertainty.unwrap().get::<second>();
    assert!((u - 10.0 * libm::sqrt(4.0 / 3.0)).abs() < 1e-9);
}

/// The closed forms of Student's t for one and two degrees of freedom at 95.45 %.
#[rstest]
#[case(&[180.0, 200.0], libm::tan(core::f64::consts::FRAC_PI_2 * 0.9545))]
#[case(&[180.0, 190.0, 200.0], 0.9545 * libm::sqrt(2.0 / (1.0 - 0.9545 * 0.9545)))]
fn the_margin_is_students(#[case] seconds: &[f64], #[case] t: f64) {
    let oven = oven(seconds);
    let heating = oven.time(load(250.0), celsius(20.0), celsius(170.0)).unwrap();
    let u = (heating.uncertainty.unwrap() / heating.time).value;
    assert!((oven.margin().unwrap() / u - t).abs() < 0.01);
}

#[rstest]
#[case(250.0, Ok(Reach::Within))]
#[case(500.0, Ok(Reach::Within))]
#[case(600.0, Ok(Reach::Beyond { factor: Ratio::from(600.0 / 500.0), larger: true }))]
#[case(200.0, Ok(Reach::Beyond { factor: Ratio::from(250.0 / 200.0), larger: false }))]
#[case(760.0, Err("heat-out-of-reach"))]
#[case(160.0, Err("heat-out-of-reach"))]
fn a_power_reaches_only_so_far(#[case] grams: f64, #[case] expected: Result<Reach, &str>) {
    let oven = Oven::from_timings(&[timing(250.0, 190.0), timing(500.0, 360.0)]).unwrap();
    match (oven.time(load(grams), celsius(20.0), celsius(170.0)), expected) {
        (Ok(heating), Ok(Reach::Within)) => assert_eq!(heating.reach, Reach::Within),
        (Ok(heating), Ok(Reach::Beyond { factor, larger })) => {
            let Reach::Beyond { factor: found, larger: is_larger } = heating.reach else {
                panic!("{:?}", heating.reach)
            };
            assert!((found - factor).value.abs() < 1e-12);
            assert_eq!(is_larger, larger);
        }
        (Err(error), Err(code)) => {
            assert_eq!(error.code(), code);
            assert_eq!(error.help(), "Take 166.7 g to 750 g, or time such an amount.");
        }
        (found, expected) => panic!("{found:?}, expected {expected:?}"),
    }
}

#[test]
fn cups_together_are_one_load() {
    let vessel = HeatCapacity::new::<joule_per_kelvin>(120.0);
    let cup = Load::new(Mass::new::<gram>(250.0), j_per_g_k(1.6), vessel).unwrap();
    let both = Load::together(&[cup, cup]).unwrap();
    assert!((both.heat_capacity().get::<joule_per_kelvin>() - 1_040.0).abs() < 1e-9);
    assert!((both.mass().get::<gram>() - 500.0).abs() < 1e-9);
    assert_eq!(Load::together(&[]).unwrap_err().code(), "heat-nothing");
}

#[test]
fn the_bursts_of_a_cup() {
    let oven = oven(&[185.0, 187.5, 190.0]);
    let plan = oven.bursts(load(250.0), celsius(20.0), window(), Precautions::default()).unwrap();
    // s = 1.333 %, so 4.53·√(4/3)·1.333 % = 6.97 % of margin.
    assert!((plan.margin.value - 0.0697).abs() < 1e-4);
    assert!(!plan.margin_assumed);
    // 0.8 K/s as expected: 149.7 K are 187 s; in one go the pot might reach 20 + 2 + 187·0.8·1.0697.
    let seconds: Vec<f64> = plan.bursts.iter().map(|b| b.duration.get::<second>()).collect();
    assert_eq!(seconds, [120.0, 67.0]);
    assert!((plan.in_one.get::<degree_celsius>() - 182.0).abs() < 0.1);
    assert!(plan.one_overshoots);
    let last = plan.bursts[1];
    assert!((last.expected.get::<degree_celsius>() - 169.6).abs() < 1e-6);
    assert!((last.at_most.get::<degree_celsius>() - (116.0 + 2.0 + 53.6 * 1.0697)).abs() < 0.01);
    // 67 s may make 57.3 K: only below 176.7 − 2 − 57.3 °C.
    assert!((last.only_below.get::<degree_celsius>() - 117.3).abs() < 0.1);
}

#[test]
fn a_single_timing_is_trusted_less() {
    let plan = oven(&[187.5])
        .bursts(load(250.0), celsius(20.0), window(), Precautions::default())
        .unwrap();
    assert!(plan.margin_assumed && plan.margin == Ratio::from(0.2));
    // The second burst is cut short: 20 + 0.8·120 °C is 60.7·0.96 K below 176.7 − 2 °C.
    assert!((plan.bursts[1].duration.get::<second>() - 61.0).abs() < 1e-9);
}

/// What a shop with ordinary scatter gets: fewer bursts, none that no hand can set, and none in the window.
#[test]
fn the_last_burst_is_the_first_that_ends_in_the_window() {
    let window = window();
    let sure = window.least() + Precautions::default().thermometer;
    for seconds in [&[178.0, 197.0][..], &[170.0, 205.0, 190.0], &[187.5], &[185.0, 187.5, 190.0]] {
        for grams in [170.0, 250.0, 300.0, 370.0] {
            let plan = oven(seconds)
                .bursts(load(grams), celsius(20.0), window, Precautions::default())
                .unwrap();
            let (last, before) = plan.bursts.split_last().unwrap();
            assert!(before.iter().all(|burst| burst.expected < sure), "{plan:?}");
            assert!(last.expected >= window.least(), "{plan:?}");
            let shortest = plan.bursts.iter().map(|b| b.duration.get::<second>());
            assert!(shortest.fold(f64::INFINITY, f64::min) >= 5.0, "{plan:?}");
        }
    }
    // 3 s to the aim are nothing to run an oven for, and the pot is hot enough; 8 s are.
    let bursts = |below: f64| {
        let start = window.aim() - TemperatureInterval::new::<temperature_interval::kelvin>(below);
        let plan = oven(&[187.5]).bursts(load(250.0), start, window, Precautions::default());
        plan.unwrap().bursts.len()
    };
    assert_eq!((bursts(2.4), bursts(6.4)), (0, 1));
}

#[test]
fn a_larger_pot_than_any_timed_may_take_more_power() {
    let careful = Precautions::default();
    let oven = oven(&[187.5, 187.5, 187.5]);
    let within = oven.bursts(load(250.0), celsius(20.0), window(), careful).unwrap();
    let beyond = oven.bursts(load(350.0), celsius(20.0), window(), careful).unwrap();
    assert!(matches!(beyond.reach, Reach::Beyond { larger: true, .. }));
    assert_eq!(within.margin, careful.least_margin);
    // 1.4 times the load at 1.4 times the power is as fast as before.
    let rise = |plan: &Bursts| super::rise(celsius(22.0), plan.in_one).value / plan.total.value;
    assert!((rise(&beyond) - rise(&within)).abs() < 1e-9);
}

#[test]
fn a_half_cooled_pot_is_reheated_from_what_it_has() {
    // From 170 °C to 120 °C in 10 min, in 20 °C: τ = 600 s / ln 1.5 = 1479.8 s.
    let cooling =
        Cooling::observed(load(250.0), celsius(170.0), celsius(120.0), s(600.0), celsius(20.0))
            .unwrap();
    assert!((cooling.time_constant().get::<second>() - 1_479.8).abs() < 0.1);
    // Twice that long: 20 + 150/1.5² °C.
    let now = cooling.after(load(250.0), celsius(170.0), s(1_200.0), celsius(20.0)).unwrap();
    assert!((now.get::<degree_celsius>() - (20.0 + 150.0 / 2.25)).abs() < 1e-9);
    let again = oven(&[187.5]).bursts(load(250.0), now, window(), Precautions::default()).unwrap();
    assert!((again.total.get::<second>() - (169.722 - 86.667) / 0.8).abs() < 1.5);
    let far = cooling.after(load(400.0), celsius(170.0), s(60.0), celsius(20.0)).unwrap_err();
    assert_eq!(far.code(), "heat-out-of-reach");
}

#[rstest]
#[case(celsius(120.0), celsius(170.0), celsius(20.0))]
#[case(celsius(170.0), celsius(120.0), celsius(120.0))]
#[case(celsius(170.0), celsius(120.0), celsius(150.0))]
fn no_cooling(
    #[case] from: ThermodynamicTemperature,
    #[case] to: ThermodynamicTemperature,
    #[case] room: ThermodynamicTemperature,
) {
    let refused = Cooling::observed(load(250.0), from, to, s(600.0), room).unwrap_err();
    assert_eq!(refused.code(), "heat-no-cooling");
}

#[test]
fn timings_that_are_none_are_refused() {
    let other = Timing { setting: Ratio::from(1.0), ..timing(250.0, 190.0) };
    let code = |timings: &[Timing]| Oven::from_timings(timings).unwrap_err().code();
    assert_eq!(code(&[]), "heat-no-timings");
    assert_eq!(code(&[timing(250.0, 190.0), other]), "heat-mixed-settings");
    assert_eq!(code(&[Timing { setting: Ratio::from(70.0), ..other }]), "heat-setting");
    assert_eq!(code(&[Timing { setting: Ratio::from(f64::NAN), ..other }]), "heat-setting");
    assert_eq!(code(&[timing(250.0, 0.0)]), "heat-out-of-range");
    assert_eq!(code(&[Timing { end: celsius(20.0), ..other }]), "heat-not-hotter");
    assert_eq!(code(&[Timing { end: celsius(f64::NAN), ..other }]), "heat-temperature");
}

#[test]
fn loads_that_are_none_are_refused() {
    let none = HeatCapacity::new::<joule_per_kelvin>(0.0);
    for grams in [0.0, -1.0, f64::NAN, f64::INFINITY] {
        let refused = Load::new(Mass::new::<gram>(grams), j_per_g_k(1.6), none).unwrap_err();
        assert_eq!(refused.code(), "heat-out-of-range");
    }
    assert_eq!(mix_specific_heat(&[]).unwrap_err().code(), "heat-nothing");
    let refused = mix_specific_heat(&[(Mass::new::<gram>(1.0), j_per_g_k(-1.0))]).unwrap_err();
    assert_eq!(refused.to_string(), "The specific heat of a constituent is -1e3 in SI units.");
}

#[test]
fn a_heating_that_cannot_be_careful_is_refused() {
    let oven = oven(&[187.5]);
    let careful = Precautions::default();
    let bursts = |start, window, precautions| {
        oven.bursts(load(250.0), start, window, precautions).map(|_| ()).map_err(|e| e.code())
    };
    assert_eq!(bursts(celsius(170.0), window(), careful), Err("heat-hot-already"));
    let narrow = Window::new(celsius(165.0), celsius(175.5), celsius(176.0)).unwrap();
    assert_eq!(bursts(celsius(20.0), narrow, careful), Err("heat-aim-too-high"));
    let coarse = Precautions { step: s(100.0), ..careful };
    assert_eq!(bursts(celsius(20.0), window(), coarse), Err("heat-too-fine"));
    let coarse = Precautions { shortest: s(100.0), ..careful };
    assert_eq!(bursts(celsius(20.0), window(), coarse), Err("heat-too-fine"));
    let none = Precautions { shortest: s(121.0), ..careful };
    assert_eq!(bursts(celsius(20.0), window(), none), Err("heat-precaution"));
    let none = Precautions { step: s(0.0), ..careful };
    assert_eq!(bursts(celsius(20.0), window(), none), Err("heat-precaution"));
    let thermometer = TemperatureInterval::new::<temperature_interval::kelvin>(f64::NAN);
    let none = Precautions { thermometer, ..careful };
    assert_eq!(bursts(celsius(20.0), window(), none), Err("heat-precaution"));
    let reversed = Window::around(celsius(176.0), celsius(165.0)).unwrap_err();
    assert_eq!(reversed.code(), "heat-window");
}

proptest! {
    /// However the oven varies inside its margin, no burst that was allowed to run overshoots.
    #[test]
    fn no_burst_overshoots(
        start in 10.0..168.0f64,
        grams in 170.0..370.0f64,
        seconds in prop::collection::vec(170.0..205.0f64, 1..6),
        stronger in 0.0..1.0f64,
    ) {
        let oven = oven(&seconds);
        let Ok(plan) = oven.bursts(load(grams), celsius(start), window(), Precautions::default())
        else {
            return Ok(());
        };
        let mut now = celsius(start);
        for burst in &plan.bursts {
            prop_assert!(now <= burst.only_below + TemperatureInterval::new::<temperature_interval::kelvin>(1e-9));
            prop_assert!(burst.at_most.value <= window().most().value + 1e-9);
            let power = oven.power().value * (1.0 + stronger * plan.margin.value);
            let after = now.value + power * burst.duration.value / load(grams).heat_capacity().value;
            prop_assert!(after <= burst.at_most.value + 1e-9 || plan.reach != Reach::Within);
            now = burst.expected;
        }
        prop_assert!(now >= window().least() && now.value <= window().aim().value + 1e-9);
    }

    #[test]
    fn a_timing_predicts_itself(grams in 50.0..2_000.0f64, seconds in 20.0..900.0f64) {
        let oven = Oven::from_timings(&[timing(grams, seconds)]).unwrap();
        let heating = oven.time(load(grams), celsius(20.0), celsius(170.0)).unwrap();
        prop_assert!((heating.time.get::<second>() - seconds).abs() <= 1e-9 * seconds);
    }

    #[test]
    fn a_mix_lies_between_its_constituents(parts in prop::collection::vec((0.1..500.0f64, 0.5..4.2f64), 1..8)) {
        let quantities: Vec<_> =
            parts.iter().map(|&(m, c)| (Mass::new::<gram>(m), j_per_g_k(c))).collect();
        let mix = mix_specific_heat(&quantities).unwrap().value / 1000.0;
        let least = parts.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
        let most = parts.iter().map(|p| p.1).fold(0.0, f64::max);
        prop_assert!(mix >= least * (1.0 - 1e-12) && mix <= most * (1.0 + 1e-12));
    }
}

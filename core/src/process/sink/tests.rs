use proptest::prelude::*;
use rstest::rstest;
use std::string::ToString;
use uom::si::length::{meter, millimeter};
use uom::si::mass::gram;
use uom::si::mass_density::gram_per_cubic_centimeter;
use uom::si::thermodynamic_temperature::degree_celsius;
use uom::si::time::second;
use uom::si::velocity::{centimeter_per_second, meter_per_second};
use uom::si::volume::milliliter;

use super::*;
use crate::fault::Diagnose;
use crate::process::seawater::Salinity;
use crate::quantity::ThermodynamicTemperature;
use crate::salt::{Salt, SaltForm, SaltLoading, Unsalted};

fn water(celsius: f64, salinity: f64) -> Water {
    let temperature = ThermodynamicTemperature::new::<degree_celsius>(celsius);
    Water::new(temperature, Salinity::Practical(salinity)).unwrap()
}

fn mm(x: f64) -> Length {
    Length::new::<millimeter>(x)
}

fn per_ml(x: f64) -> MassDensity {
    MassDensity::new::<gram_per_cubic_centimeter>(x)
}

fn cm_per_s(x: f64) -> Velocity {
    Velocity::new::<centimeter_per_second>(x)
}

/// A stick of 10 mm by 120 mm, 9.42 mL, as a plain cylinder.
fn stick(hook_g: f64) -> Body {
    let volume = mm(10.0) * mm(10.0) * core::f64::consts::FRAC_PI_4 * mm(120.0);
    let hook =
        Hook { mass: Mass::new::<gram>(hook_g), volume: Volume::new::<milliliter>(hook_g / 7.9) };
    let shape = Shape::Stick { diameter: mm(10.0), length: mm(120.0) };
    Body { volume, hook, shape, own_drag: None }
}

fn ball(diameter: f64) -> Body {
    let d = mm(diameter);
    Body {
        volume: d * d * d * (core::f64::consts::PI / 6.0),
        hook: Hook::default(),
        shape: Shape::Ball { diameter: d },
        own_drag: None,
    }
}

#[test]
fn a_stick_by_hand() {
    // At 1.10 g/mL in fresh water at 20 °C: with C_D = 0.95 at Re ≈ 1300, v² = (π/2) g d (ρ_p/ρ − 1)/C_D
    // = 1.5708 · 9.80665 · 0.01 · 0.101976/0.95, so v = 0.1286 m/s.
    let fall = stick(0.0).fall(per_ml(1.10), &water(20.0, 0.0)).unwrap();
    assert!((fall.speed.get::<meter_per_second>() - 0.1286).abs() < 0.001);
    assert!((fall.drag_coefficient - 0.95).abs() < 0.01);
    assert_eq!(fall.trust.motion, Motion::Swings);
    assert!(fall.trust.slowest < fall.speed && fall.speed < fall.trust.fastest);
}

/// Near its water's density a piece may sink twice as fast as calculated, or hang.
#[test]
fn an_unsure_density_widens_the_bounds() {
    let (lake, body) = (water(20.0, 0.0), stick(0.0));
    let sure = body.fall(per_ml(1.044), &lake).unwrap();
    assert_eq!(body.fall_within(per_ml(1.044), per_ml(0.0), &lake), Ok(sure));
    let unsure = body.fall_within(per_ml(1.044), per_ml(0.008), &lake).unwrap();
    for (density, bound) in [(1.028, unsure.trust.slowest), (1.060, unsure.trust.fastest)] {
        let trust = body.fall(per_ml(density), &lake).unwrap().trust;
        assert!(bound == trust.slowest || bound == trust.fastest);
    }
    assert!(unsure.trust.slowest < sure.trust.slowest);
    assert!(unsure.trust.fastest > sure.trust.fastest);
    assert_eq!(unsure.speed, sure.speed);
    let may_hang = body.fall_within(per_ml(1.01), per_ml(0.008), &lake).unwrap();
    assert_eq!(may_hang.trust.slowest, Velocity::default());
    assert!(body.fall_within(per_ml(1.0), per_ml(-0.1), &lake).is_err());
}

#[rstest]
#[case(stick(0.0).shape, 92.0, "A piece of 92 mL is not a stick of 10 mm by 120 mm, which holds about 9.425 mL.")]
#[case(Shape::Ball { diameter: mm(16.0) }, 0.5, "A piece of 0.5 mL is not a ball of 16 mm, which holds about 2.145 mL.")]
fn a_volume_is_that_of_its_body(#[case] shape: Shape, #[case] ml: f64, #[case] says: &str) {
    let volume = Volume::new::<milliliter>(ml);
    let body = Body { volume, hook: Hook::default(), shape, own_drag: None };
    let refused = body.fall(per_ml(1.2), &water(20.0, 0.0)).unwrap_err();
    assert_eq!(refused.to_string(), says);
    // The volume that it names is accepted.
    let help = refused.help().into_owned();
    let bounds = help.split_once("has ").unwrap().1.trim_end_matches(" mL.");
    for bound in bounds.split(" mL to ") {
        let volume = Volume::new::<milliliter>(bound.parse().unwrap());
        assert!(shape.check_volume(volume).is_ok(), "{bound}");
        let beyond = [volume * 0.99, volume * 1.01];
        assert!(beyond.iter().any(|volume| shape.check_volume(*volume).is_err()), "{bound}");
    }
}

#[test]
fn a_small_ball_by_stokes() {
    // v = (ρ_p − ρ) g d²/(18 μ) for Re ≪ 1; at Re = 0.03 the curve adds half a per cent.
    let grain = ball(0.04);
    let water = water(20.0, 0.0);
    let fall = grain.fall(per_ml(2.165), &water).unwrap();
    let d = mm(0.04);
    let stokes = (per_ml(2.165) - water.density) * gravity() * d * d / (18.0 * water.viscosity);
    let ratio = (fall.speed / stokes).value;
    assert!((0.98..1.0).contains(&ratio), "{ratio}");
    assert_eq!(fall.trust.motion, Motion::Straight);
}

#[test]
fn a_floating_piece_says_by_how_much() {
    let error = stick(0.0).fall(per_ml(0.95), &water(20.0, 0.0)).unwrap_err();
    // 9.4248 mL · (0.998 207 − 0.95) g/mL = 0.4543 g.
    assert_eq!(
        error.to_string(),
        "The piece with its hook floats: the water lifts it by 0.4543 g."
    );
    assert!(error.help().contains("above 0.9983 g/mL"), "{}", error.help());
    // A hook of 1 g that displaces 0.13 mL sinks it.
    assert!(stick(1.0).fall(per_ml(0.95), &water(20.0, 0.0)).is_ok());
    // So does less salt in the lake than in the sea.
    let piece = per_ml(1.01);
    assert!(stick(0.0).fall(piece, &water(20.0, 0.0)).is_ok());
    assert!(stick(0.0).fall(piece, &water(20.0, 35.0)).is_err());
}

#[test]
fn a_wanted_fall_leads_to_salt() {
    let salt = Salt::of_density(per_ml(2.165)).unwrap();
    let mix = Unsalted::of_base(Volume::new::<milliliter>(100.0), per_ml(1.03), salt)
        .with_voids(Ratio::from(0.01))
        .with_most_solids(Ratio::from(0.4));
    let (lake, body) = (water(15.0, 0.0), stick(0.3));
    let wanted = cm_per_s(14.0);
    let density = body.density_for(wanted, &lake).unwrap();
    let salt = mix.ratio(SaltLoading::FinishedDensity(density)).unwrap();
    assert!(salt.value > 0.05, "{salt:?}");
    let SaltLoading::FinishedDensity(made) = mix.loading(salt, SaltForm::FinishedDensity).unwrap()
    else {
        panic!("another form came back")
    };
    let speed = body.fall(made, &lake).unwrap().speed;
    assert!((speed / wanted - Ratio::from(1.0)).value.abs() < 1e-9);
}

#[test]
fn a_heavy_hook_leaves_no_slow_fall() {
    let error = stick(20.0).density_for(cm_per_s(5.0), &water(20.0, 0.0)).unwrap_err();
    assert_eq!(error.code(), "sink-hook-too-heavy");
    let SinkError::HookTooHeavy { excess, .. } = error else { panic!("{error}") };
    // That much off the hook leaves nothing for the piece; with 0.9 g/mL more off, the piece has that.
    let Body { volume, hook, .. } = stick(20.0);
    let lighter = Hook { mass: hook.mass - excess - volume * per_ml(0.9), ..hook };
    let piece = stick(20.0).with_hook(lighter).density_for(cm_per_s(5.0), &water(20.0, 0.0));
    assert!((piece.unwrap() / per_ml(0.9) - Ratio::from(1.0)).value.abs() < 1e-9);
}

/// a = W/(m + c ρ (V + V_h)) by hand, with a hook of 3 g that is as large as 2 mL; c = 1 for a stick, 1/2 for a ball.
#[test]
fn the_start_by_hand() {
    let fresh = water(20.0, 0.0);
    for (body, c) in [(stick(0.0), 1.0), (ball(16.0), 0.5)] {
        let hook = Hook { mass: Mass::new::<gram>(3.0), volume: Volume::new::<milliliter>(2.0) };
        let body = body.with_hook(hook);
        let water = fresh.density.value * (body.volume.value + 2e-6);
        let mass = 1_100.0 * body.volume.value + 3e-3;
        let expected = (mass - water) * 9.806_65 / (mass + c * water);
        let fall = body.fall(per_ml(1.10), &fresh).unwrap();
        assert!((fall.acceleration.value / expected - 1.0).abs() < 1e-12, "{fall:?}");
    }
}

/// What floats needs the density at which piece and hook weigh what they displace; at that density it hangs.
#[test]
fn what_floats_needs_more() {
    let fresh = water(20.0, 0.0);
    let body = stick(1.0);
    let SinkError::Floats { needed, .. } = body.fall(per_ml(0.8), &fresh).unwrap_err() else {
        panic!("it sinks")
    };
    let displaced = fresh.density * (body.volume + body.hook.volume);
    assert!((needed * body.volume + body.hook.mass - displaced).value.abs() < 1e-12);
    let hangs = stick(0.0).fall(fresh.density, &fresh).unwrap_err();
    assert_eq!(hangs.code(), "sink-floats");
}

/// Bounds by the spread of the drag: 15 % of a stick's, 8 % of a ball's. A timed drop has the ends in it, and twice the
/// spread where it swung and this fall does not, or the other way round.
#[test]
fn bounds_of_a_timed_drop() {
    let fresh = water(20.0, 0.0);
    let with = |body: Body, factor: f64, reynolds: f64| Body {
        own_drag: Some(OwnDrag { factor: Ratio::from(factor), reynolds }),
        ..body
    };
    // A stick at Re 1300 swings, a ball of 1 mm at Re 23 does not.
    for (body, swings, spread) in [(stick(0.0), true, 0.15), (ball(1.0), false, 0.08)] {
        let speed =
            |factor: f64| with(body, factor, 500.0).fall(per_ml(1.10), &fresh).unwrap().speed;
        for (reynolds, wide) in [(500.0, !swings), (50.0, swings)] {
            let spread = if wide { 2.0 * spread } else { spread };
            let fall = with(body, 1.0, reynolds).fall(per_ml(1.10), &fresh).unwrap();
            let expected = [speed(1.0 + spread), speed(1.0 - spread)];
            assert_eq!([fall.trust.slowest, fall.trust.fastest], expected, "{reynolds}");
        }
    }
}

/// A mean speed x/t that is the final one over more than 100 is not believed: t = √(2x/a) (1 + y/6) with y = a x/v²; at
/// 100 times x/t, y is 2e-4.
#[test]
fn a_drop_at_the_limit_of_belief() {
    let fresh = water(20.0, 0.0);
    let acceleration = stick(0.0).fall(per_ml(1.10), &fresh).unwrap().acceleration;
    let free = libm::sqrt(2.0 / acceleration.value);
    let drop = |longer: f64| {
        let time = Time::new::<second>(free * (1.0 + longer));
        final_speed(&TimedDrop { depth: Length::new::<meter>(1.0), time }, acceleration)
    };
    let SinkError::TooQuick { least, .. } = drop(2e-5).unwrap_err() else { panic!("believed") };
    assert!((least.get::<second>() - free).abs() < 1e-9);
    assert!(drop(4e-5).is_ok());
}

#[test]
fn a_salted_sink_rate_reports_what_is_wrong_with_either() {
    let sink = SaltedSinkError::from(
        stick(0.0).density_for(cm_per_s(f64::NAN), &water(20.0, 0.0)).unwrap_err(),
    );
    assert_eq!((sink.numbers().len(), sink.parameter()), (1, Some(Parameter::SinkRate)));
    assert_eq!(sink.help(), "Check the calculation that made it.");
}

#[test]
fn a_stick_too_short_is_named() {
    let shape = Shape::Stick { diameter: mm(10.0), length: mm(15.0) };
    let SinkError::TooShort { length_per_diameter } = shape.check().unwrap_err() else {
        panic!("long enough")
    };
    assert!((length_per_diameter.value - 1.5).abs() < 1e-12);
    let shown = std::format!("{shape:?}");
    assert!(shown.starts_with("Stick") && shown.contains("15"), "{shown}");
}

#[test]
fn nothing_falls_as_fast_as_one_may_wish() {
    let lake = water(20.0, 0.0);
    let error = stick(0.0).density_for(cm_per_s(400.0), &lake).unwrap_err();
    assert_eq!(error.code(), "sink-too-fast");
    let error = stick(0.0).fall(per_ml(1030.0), &lake).unwrap_err();
    assert_eq!(error.code(), "out-of-range");
}

#[test]
fn start_costs_a_little_time() {
    let fall = stick(0.0).fall(per_ml(1.10), &water(20.0, 0.0)).unwrap();
    let depth = Length::new::<meter>(2.0);
    let steady = depth / fall.speed;
    let start = fall.speed / fall.acceleration * core::f64::consts::LN_2;
    let time = fall.time_to(depth).unwrap();
    assert!((time - steady - start).value.abs() < 1e-9);
    assert!((0.15..0.25).contains(&start.value), "{start:?}");
    // In the first millimeter it falls freely.
    let free = libm::sqrt(2.0 * 1e-4 / fall.acceleration.value);
    let first = fall.time_to(mm(0.1)).unwrap().value;
    assert!((first / free - 1.0).abs() < 0.01, "{first} {free}");
}

#[test]
fn a_drop_too_quick_is_refused() {
    let drop = TimedDrop { depth: Length::new::<meter>(1.0), time: Time::new::<second>(0.5) };
    let refused = stick(0.0).with_drop(per_ml(1.1), &drop, &water(20.0, 0.0));
    assert_eq!(refused.unwrap_err().code(), "sink-drop-too-quick");
}

#[rstest]
#[case(Body { volume: Volume::default(), ..stick(0.0) }, 1.1, "out-of-range")]
#[case(stick(0.0), f64::NAN, "not-finite")]
#[case(stick(0.0), 0.0, "out-of-range")]
#[case(stick(-1.0), 1.1, "out-of-range")]
#[case(Body { shape: Shape::Ball { diameter: mm(-1.0) }, ..stick(0.0) }, 1.1, "out-of-range")]
#[case(
    Body { shape: Shape::Stick { diameter: mm(10.0), length: mm(15.0) }, ..stick(0.0) },
    1.1,
    "sink-stick-too-short"
)]
#[case(ball(3000.0), 11.0, "sink-outside-drag")]
fn refuses(#[case] body: Body, #[case] density: f64, #[case] code: &str) {
    assert_eq!(body.fall(per_ml(density), &water(20.0, 0.0)).unwrap_err().code(), code);
}

prop_compose! {
    fn bodies()(
        (diameter, slender) in (3.0..25.0, 2.5..15.0),
        (hook, is_ball) in (0.0..0.5, any::<bool>()),
    ) -> Body {
        let d = mm(diameter);
        let (volume, shape) = if is_ball {
            (d * d * d * (core::f64::consts::PI / 6.0), Shape::Ball { diameter: d })
        } else {
            let length = d * slender;
            (d * d * length * core::f64::consts::FRAC_PI_4, Shape::Stick { diameter: d, length })
        };
        Body {
            volume,
            hook: Hook { mass: volume * per_ml(hook), volume: volume * hook / 7.9 },
            shape,
            own_drag: None,
        }
    }
}

/// Where the sphere's curve jumps up, every load between the two sides is that of the join.
#[test]
fn a_load_in_a_jump_is_at_the_join() {
    let ball = Shape::Ball { diameter: mm(10.0) };
    let load = |reynolds: f64| ball.drag_coefficient(reynolds).unwrap() * reynolds * reynolds;
    let joins = [20.0, 260.0, 1_500.0, 12_000.0, 44_000.0];
    let mut jumps = 0;
    for (join, share) in joins.iter().flat_map(|join| [(*join, 0.2), (*join, 0.5), (*join, 0.9)]) {
        let (below, above) = (load(join * (1.0 - 1e-15)), load(join));
        if above > below * (1.0 + 1e-9) {
            let found = ball.reynolds(below + share * (above - below)).unwrap();
            assert!((found / join - 1.0).abs() < 1e-12, "{found} for {join}");
            jumps += 1;
        }
    }
    assert!(jumps > 0);
}

proptest! {
    /// Over all of the curve of each shape, its joins apart.
    #[test]
    fn the_curve_of_drag_is_inverted(log in 0.0..1.0) {
        let stick = Shape::Stick { diameter: mm(10.0), length: mm(100.0) };
        for (shape, close) in [(stick, 1e-13), (Shape::Ball { diameter: mm(10.0) }, 5e-3)] {
            let (least, most) = shape.range();
            let reynolds = (least * libm::pow(most / least, log)).clamp(least, most);
            let load = shape.drag_coefficient(reynolds).unwrap() * reynolds * reynolds;
            let back = shape.reynolds(load).unwrap();
            prop_assert!((back / reynolds - 1.0).abs() < close, "{back} {reynolds}");
        }
    }

    #[test]
    fn density_for_its_speed_comes_back(
        body in bodies(), density in 1.03..1.6, t in 0.0..40.0, salinity in 0.0..35.0,
    ) {
        let water = water(t, salinity);
        prop_assume!(body.weight(per_ml(density), &water).is_ok());
        let fall = body.fall(per_ml(density), &water).unwrap();
        let back = body.density_for(fall.speed, &water).unwrap();
        // A join of the sphere's curve, where it jumps by less than 1 %, may hold the balance.
        let close = if let Shape::Ball { .. } = body.shape { 5e-3 } else { 1e-11 };
        prop_assert!(((back / per_ml(density)).value - 1.0).abs() < close);
    }

    #[test]
    fn denser_falls_faster(body in bodies(), density in 1.03..1.6, more in 0.001..0.2) {
        let water = water(20.0, 0.0);
        let slow = body.fall(per_ml(density), &water).unwrap();
        let fast = body.fall(per_ml(density + more), &water).unwrap();
        prop_assert!(fast.speed > slow.speed);
        prop_assert!(slow.trust.slowest < slow.speed && slow.speed < slow.trust.fastest);
    }

    #[test]
    fn a_drop_timed_gives_the_drag_back(
        body in bodies(), density in 1.05..1.5, other in 1.05..1.5, factor in 0.6..2.0, depth in 0.5..4.0,
    ) {
        let water = water(18.0, 0.0);
        let own = OwnDrag { factor: Ratio::from(factor), reynolds: 500.0 };
        let truth = Body { own_drag: Some(own), ..body };
        let fall = truth.fall(per_ml(density), &water).unwrap();
        let depth = Length::new::<meter>(depth);
        let drop = TimedDrop { depth, time: fall.time_to(depth).unwrap() };
        let found = body.with_drop(per_ml(density), &drop, &water).unwrap();
        let wanted = truth.fall(per_ml(other), &water).unwrap().speed;
        let got = found.fall(per_ml(other), &water).unwrap().speed;
        prop_assert!(((got / wanted).value - 1.0).abs() < 1e-2);
    }
}

//! Where the faults of scalar calls are, and what they say: the parameter at fault, and the number as it was passed.

use std::ffi::CStr;
use std::mem::MaybeUninit;
use std::ptr;

use pourwright_ffi::*;

type Slot<'a> = Option<&'a mut MaybeUninit<Box<Error>>>;

/// The faults of a call that fails, each as "path: message", and its status.
fn refused(call: impl FnOnce(Slot<'_>) -> i32) -> (i32, Vec<String>) {
    let mut error = MaybeUninit::uninit();
    let status = call(Some(&mut error));
    assert_ne!(status, POUR_OK);
    // SAFETY: written on failure.
    let error = unsafe { error.assume_init() };
    // SAFETY: the texts of an error, up to its count.
    let text = |text| unsafe { CStr::from_ptr(text) }.to_str().unwrap();
    let faults = (0..pour_error_count(Some(&error))).map(|index| {
        let path = text(pour_error_path(Some(&error), index));
        format!("{path}: {}", text(pour_error_message(Some(&error), index)))
    });
    (status, faults.collect())
}

/// Checks that a call is refused with one fault, which is this.
macro_rules! says {
    ($fault:expr, $call:expr) => {
        assert_eq!(refused($call), (POUR_REFUSED, vec![String::from($fault)]))
    };
}

/// Checks for each field that one such number in it is a fault there, and that a NaN is.
macro_rules! each_field {
    ($good:expr, $call:expr, $struct:literal: $($field:ident = $bad:expr => $says:literal,)*) => {$(
        let mut bad = $good;
        bad.$field = $bad;
        says!(concat!("/", $struct, "/", stringify!($field), ": ", $says), |error| $call(&bad, error));
        bad.$field = f64::NAN;
        let at = concat!("/", $struct, "/", stringify!($field), ": NaN is not a finite number.");
        assert_eq!(refused(|error| $call(&bad, error)), (POUR_NOT_FINITE, vec![at.to_owned()]));
    )*};
}

fn mix() -> Unsalted {
    Unsalted {
        base_ml: 200.0,
        base_g_per_ml: 1.0,
        mix_g: 210.0,
        mix_ml: 205.0,
        hot_ml: 220.0,
        shot_celsius: 165.0,
        voids: 0.02,
        salt_g_per_ml: 2.165,
        salt_as_scooped_g_per_ml: 1.22,
        salt_expansion_per_kelvin: 1.2e-4,
        softener_per_salt: 0.1,
        softener_g_per_ml: 0.98,
        softener_expansion_per_kelvin: 7e-4,
        most_solids: 0.3,
        cavity_ml: 9.5,
        feed: 0.5,
        hook_g: 2.0,
        hook_ml: 0.25,
    }
}

#[test]
fn a_mix_before_salt() {
    let mut out = MaybeUninit::uninit();
    let mut mass = |mix: &Unsalted, error: Slot<'_>| {
        pour_salt_mass(Some(mix), POUR_SALT_OF_BASE, 0.1, Some(&mut out), error)
    };
    assert_eq!(mass(&mix(), None), POUR_OK);
    each_field! { mix(), mass, "mix":
        base_ml = -100.0 => "-100 is not above 0.",
        mix_g = -5.0 => "-5 is not from 0 to 1e18.",
        mix_ml = -5.0 => "-5 is not from 0 to 1e21.",
        hot_ml = -5.0 => "-5 is not from 0 to 1e21.",
        shot_celsius = 450.0 => "450 is not from 20 to 400.",
        voids = 2.0 => "2 is not from 0 to below 1.",
        salt_expansion_per_kelvin = -1e-4 => "-0.0001 is not from 0 to 1e15.",
        softener_per_salt = -0.1 => "-0.1 is not from 0 to 1e15.",
        softener_expansion_per_kelvin = -1e-6 => "-1e-6 is not from 0 to 1e15.",
        most_solids = 30.0 => "30 is not from 0 to below 1.",
        cavity_ml = -5.0 => "-5 is not from 0 to 1e21.",
        feed = 3.0 => "3 is not from 0 to 1.",
        hook_g = -3.0 => "-3 is not from 0 to 1e18.",
        hook_ml = -3.0 => "-3 is not from 0 to 1e21.",
    }
    let mut change = |change: &dyn Fn(&mut Unsalted)| {
        let mut changed = mix();
        change(&mut changed);
        refused(|error| mass(&changed, error)).1.join("\n")
    };
    // What does not go together.
    assert_eq!(
        change(&|mix| mix.salt_as_scooped_g_per_ml = 3.0),
        "/mix/salt_as_scooped_g_per_ml: The salt's as-scooped density (3 g/mL) is above its true density (2.165 g/mL)."
    );
    assert_eq!(
        change(&|mix| mix.mix_g = 150.0),
        "/mix/mix_g: 150 is below the mass of its base, 200."
    );
    assert_eq!(
        change(&|mix| mix.hot_ml = 201.0),
        "/mix/hot_ml: 201 is below its cold volume, 205."
    );
    assert_eq!(change(&|mix| mix.mix_ml = 0.0), "/mix/mix_ml: It is 0, and mix_g needs it.");
    assert_eq!(change(&|mix| mix.mix_g = 0.0), "/mix/mix_g: It is 0, and mix_ml needs it.");
    // All at once.
    assert_eq!(
        change(&|mix| (mix.voids, mix.feed) = (2.0, -1.0)),
        "/mix/voids: 2 is not from 0 to below 1.\n/mix/feed: -1 is not from 0 to 1."
    );
    // A density that is none, and one that nothing has.
    for (at, set) in [
        ("/mix/base_g_per_ml", (|mix, x| mix.base_g_per_ml = x) as fn(&mut Unsalted, f64)),
        ("/mix/salt_g_per_ml", |mix, x| mix.salt_g_per_ml = x),
        ("/mix/softener_g_per_ml", |mix, x| mix.softener_g_per_ml = x),
        ("/mix/salt_as_scooped_g_per_ml", |mix, x| mix.salt_as_scooped_g_per_ml = x),
    ] {
        assert_eq!(change(&|mix| set(mix, -1.0)), format!("{at}: -1 is not above 0."));
        let thousands = change(&|mix| set(mix, 1030.0));
        assert_eq!(thousands, format!("{at}: Nothing at a bench has a density of 1030 g/mL."));
    }
}

#[test]
fn a_loading_and_the_mix_that_it_is_for() {
    let mut out = MaybeUninit::uninit();
    let mut bad = mix();
    says!("/value: A share of base of 900 % of base is out of reach by adding salt.", |error| {
        pour_salt_mass(Some(&bad), POUR_SALT_OF_BASE, 9.0, Some(&mut out), error)
    });
    bad.voids = 2.0;
    says!("/mix/voids: 2 is not from 0 to below 1.", |error| {
        pour_salt_convert(Some(&bad), POUR_SALT_OF_BASE, 9.0, 1, Some(&mut out), error)
    });
    let (mut least, mut most) = (MaybeUninit::uninit(), MaybeUninit::uninit());
    says!("/mix/voids: 2 is not from 0 to below 1.", |error| {
        pour_salt_reach(Some(&bad), 1, Some(&mut least), Some(&mut most), error)
    });
    // The two densities of a powder are never taken for each other.
    let solid = Unsalted { salt_as_scooped_g_per_ml: 0.0, ..mix() };
    let (form, lacks) = (
        POUR_SALT_AS_SCOOPED,
        "/mix/salt_as_scooped_g_per_ml: It is 0, and the form POUR_SALT_AS_SCOOPED needs it.",
    );
    says!(lacks, |error| pour_salt_mass(Some(&solid), form, 0.1, Some(&mut out), error));
    says!(lacks, |error| {
        pour_salt_convert(Some(&solid), POUR_SALT_OF_BASE, 0.1, form, Some(&mut out), error)
    });
    says!(lacks, |error| {
        pour_salt_reach(Some(&solid), form, Some(&mut least), Some(&mut most), error)
    });
}

#[test]
fn salt_for_a_density() {
    let mut out = MaybeUninit::uninit();
    let mut ask = |base_ml, base, salt, voids, density, error: Slot<'_>| {
        pour_salt_for_density(base_ml, base, salt, voids, density, Some(&mut out), error)
    };
    says!("/base_ml: -100 is not above 0.", |e| ask(-100.0, 1.0, 2.0, 0.0, 1.1, e));
    says!("/base_ml: 1e300 is not from 1e-9 to 1e21.", |e| ask(1e300, 1.0, 2.0, 0.0, 1.1, e));
    says!("/base_g_per_ml: -1 is not above 0.", |e| ask(100.0, -1.0, 2.0, 0.0, 1.1, e));
    says!("/salt_g_per_ml: 0 is not above 0.", |e| ask(100.0, 1.0, 0.0, 0.0, 1.1, e));
    says!("/voids: 1 is not from 0 to below 1.", |e| ask(100.0, 1.0, 2.0, 1.0, 1.1, e));
    says!(
        "/density_g_per_ml: A finished density of 1.9 g/mL is out of reach by adding salt.",
        |e| { ask(100.0, 1.0, 2.0, 0.0, 1.9, e) }
    );
    let (status, faults) = refused(|e| ask(f64::NAN, 1.0, 2.0, f64::INFINITY, -1.0, e));
    assert_eq!(status, POUR_NOT_FINITE);
    assert_eq!(
        faults,
        ["/base_ml: NaN is not a finite number.", "/voids: Inf is not a finite number."]
    );
    let (status, faults) = refused(|e| ask(100.0, 1.0, 2.0, 0.0, f64::NAN, e));
    assert_eq!(
        (status, faults[0].as_str()),
        (POUR_NOT_FINITE, "/density_g_per_ml: NaN is not a finite number.")
    );
}

#[test]
fn a_piece_and_a_shot() {
    let mut out = MaybeUninit::uninit();
    let mut ask = |cavity, hot, cold, voids, feed, error: Slot<'_>| {
        pour_piece_mass(cavity, hot, cold, voids, feed, Some(&mut out), error)
    };
    says!("/cavity_ml: -5 is not above 0.", |e| ask(-5.0, 0.9, 1.0, 0.0, 0.5, e));
    says!("/hot_g_per_ml: 0 is not above 0.", |e| ask(5.0, 0.0, 1.0, 0.0, 0.5, e));
    says!("/cold_g_per_ml: -1 is not above 0.", |e| ask(5.0, 0.9, -1.0, 0.0, 0.5, e));
    says!("/voids: 1 is not from 0 to below 1.", |e| ask(5.0, 0.9, 1.0, 1.0, 0.5, e));
    says!("/feed: 50 is not from 0 to 1.", |e| ask(5.0, 0.9, 1.0, 0.0, 50.0, e));
    says!("/cold_g_per_ml: Nothing at a bench has a density of 1030 g/mL.", |e| {
        ask(5.0, 0.9, 1030.0, 0.0, 0.5, e)
    });
    says!("/hot_g_per_ml: The mix is denser hot (1.1 g/mL) than cold (1 g/mL).", |e| {
        ask(5.0, 1.1, 1.0, 0.0, 0.5, e)
    });

    let good = Shot {
        cavity_ml: 9.5,
        sprue_ml: 6.0,
        topped_g: 1.0,
        share: 0.5,
        feed: 0.5,
        hot_g_per_ml: 0.9,
        cold_g_per_ml: 1.0,
        voids: 0.02,
        cavities: 4,
        reserved: 0,
    };
    let mut result = MaybeUninit::uninit();
    let mut fill =
        |shot: &Shot, error: Slot<'_>| pour_shot_fill(Some(shot), Some(&mut result), error);
    assert_eq!(fill(&good, None), POUR_OK);
    each_field! { good, fill, "shot":
        cavity_ml = 0.0 => "0 is not above 0.",
        sprue_ml = -6.0 => "-6 is not from 0 to 1e21.",
        topped_g = -6.0 => "-6 is not from 0 to 1e18.",
        share = 1.5 => "1.5 is not from 0 to 1.",
        feed = -0.5 => "-0.5 is not from 0 to 1.",
        hot_g_per_ml = -0.9 => "-0.9 is not above 0.",
        cold_g_per_ml = 0.0 => "0 is not above 0.",
        voids = -0.02 => "-0.02 is not from 0 to below 1.",
    }
    // The cold density stands for the hot one where that is left out, and is what is wrong.
    let bad = Shot { hot_g_per_ml: 0.0, cold_g_per_ml: -1.0, ..good };
    says!("/shot/cold_g_per_ml: -1 is not above 0.", |error| fill(&bad, error));
}

#[test]
fn a_batch() {
    let good = Batch {
        pieces: 24,
        cavities: 4,
        cleanings: 1,
        reserved: 0,
        rejects: 0.05,
        confidence: 0.9,
        shot_g: 40.0,
        sprue_g: 5.0,
        returned: 0.5,
        shot_g_per_ml: 0.95,
        injector_holds_ml: 100.0,
        injector_keeps_ml: 4.0,
        film_g: 2.0,
        heel_g: 3.0,
    };
    let mut result = MaybeUninit::uninit();
    let mut need =
        |batch: &Batch, error: Slot<'_>| pour_batch_need(Some(batch), Some(&mut result), error);
    assert_eq!(need(&good, None), POUR_OK);
    each_field! { good, need, "batch":
        rejects = 5.0 => "5 is not from 0 to below 1.",
        confidence = 1.0 => "1 is not from 0 to 0.999999999.",
        shot_g = 0.0 => "0 is not above 0.",
        sprue_g = -5.0 => "-5 is not from 0 to 1e18.",
        returned = 50.0 => "50 is not from 0 to 1.",
        shot_g_per_ml = 0.0 => "0 is not above 0.",
        injector_holds_ml = -100.0 => "-100 is not above 0.",
        injector_keeps_ml = -4.0 => "-4 is not from 0 to 1e21.",
        film_g = -2.0 => "-2 is not from 0 to 1e18.",
        heel_g = -3.0 => "-3 is not from 0 to 1e18.",
    }
    let bad = Batch { sprue_g: 50.0, ..good };
    says!("/batch/sprue_g: 50 is above shot_g, 40.", |error| need(&bad, error));
    let bad = Batch { injector_keeps_ml: 100.0, ..good };
    says!("/batch/injector_keeps_ml: 100 is not below injector_holds_ml, 100.", |error| need(
        &bad, error
    ));
    let bad = Batch { cavities: 0, ..good };
    says!(
        "/batch/cavities: 24 pieces are wanted of a shape for which the mold has no cavity.",
        |error| need(&bad, error)
    );
    let mut shots = MaybeUninit::uninit();
    says!("/confidence: -1 is not from 0 to 0.999999999.", |error| {
        pour_shots(24, 4, 0.05, -1.0, Some(&mut shots), error)
    });
}

#[test]
fn the_tools_of_a_bench() {
    let spoons = [15.0, 5.0];
    let good = Bench {
        balance_reads_g: 0.1,
        balance_to_g: 500.0,
        balance_from_g: 1.0,
        spoons_ml: spoons.as_ptr(),
        spoons: spoons.len(),
        as_measured_g_per_ml: 1.2,
        drop_g: 0.05,
    };
    let mut out = MaybeUninit::uninit();
    let mut ask = |bench: &Bench, mass_g, tolerance, error: Slot<'_>| {
        // SAFETY: the spoons are as many as said.
        unsafe { pour_bench_measure(Some(bench), mass_g, tolerance, Some(&mut out), error) }
    };
    assert_eq!(ask(&good, 10.0, 0.05, None), POUR_OK);
    let mut call = |bench: &Bench, error: Slot<'_>| ask(bench, 10.0, 0.05, error);
    each_field! { good, call, "bench":
        balance_reads_g = -0.1 => "-0.1 is not from 0 to 1e18.",
        balance_to_g = -1.0 => "-1 is not from 0 to 1e18.",
        balance_from_g = -1.0 => "-1 is not from 0 to 1e18.",
        as_measured_g_per_ml = -1.0 => "-1 is not above 0.",
        as_measured_g_per_ml = 1030.0 => "Nothing at a bench has a density of 1030 g/mL.",
        drop_g = -1.0 => "-1 is not from 0 to 1e18.",
    }
    says!("/mass_g: 0 is not above 0.", |error| ask(&good, 0.0, 0.05, error));
    says!("/tolerance: The tolerance of a measure is 5, as a fraction.", |error| {
        ask(&good, 10.0, 5.0, error)
    });
    let bad = [15.0, -1.0];
    let bad = Bench { spoons_ml: bad.as_ptr(), ..good };
    says!("/bench/spoons_ml/1: -1 is not above 0.", |error| ask(&bad, 10.0, 0.05, error));
    let small = Bench { balance_to_g: 0.05, ..good };
    says!("/bench/balance_to_g: The capacity of the balance is too small.", |error| {
        ask(&small, 10.0, 0.05, error)
    });
    // As many steps as the least of shop balances have.
    let plain = Bench { balance_to_g: 0.0, ..good };
    assert_eq!(ask(&plain, 400.0, 0.05, None), POUR_OK);
    // Beyond what a bench is believed to have, though a number that could be: the core says it in its unit.
    let tiny = Bench { drop_g: 1e-11, balance_reads_g: 0.0, ..good };
    says!("/bench: The mass of a drop is 1e-11 g.", |error| ask(&tiny, 10.0, 0.05, error));
}

#[test]
fn a_body_that_sinks() {
    let good = Body {
        piece_ml: 10.0,
        diameter_mm: 12.0,
        length_mm: 90.0,
        hook_g: 2.0,
        hook_ml: 0.25,
        water_celsius: 20.0,
        salinity: 35.0,
    };
    let (mut fall, mut density) = (MaybeUninit::uninit(), MaybeUninit::uninit());
    let mut sink =
        |body: &Body, error: Slot<'_>| pour_sink_rate(Some(body), 1.1, Some(&mut fall), error);
    assert_eq!(sink(&good, None), POUR_OK);
    each_field! { good, sink, "body":
        piece_ml = -10.0 => "-10 is not above 0.",
        diameter_mm = 0.0 => "0 is not above 0.",
        length_mm = -90.0 => "-90 is not from 0 to 1e18.",
        hook_g = -2.0 => "-2 is not from 0 to 1e18.",
        hook_ml = -2.0 => "-2 is not from 0 to 1e21.",
        water_celsius = 41.0 => "Water at 41 °C is outside 0 to 40 °C.",
        salinity = -1.0 => "A salinity of -1.005 g/kg is outside 0 to 42 g/kg.",
    }
    let short = Body { length_mm: 12.0, ..good };
    says!("/body/length_mm: A stick of 1 diameters is too short.", |error| sink(&short, error));
    says!("/density_g_per_ml: Nothing at a bench has a density of 1100 g/mL.", |error| {
        pour_sink_rate(Some(&good), 1100.0, Some(&mut fall), error)
    });
    says!("/density_g_per_ml: -1 is not above 0.", |error| {
        pour_sink_rate(Some(&good), -1.0, Some(&mut fall), error)
    });
    let mut rise = |speed, error: Slot<'_>| {
        pour_density_for_sink_rate(Some(&good), speed, Some(&mut density), error)
    };
    says!("/speed_cm_per_s: -1 is not above 0.", |error| rise(-1.0, error));
    let (_, faults) = refused(|error| rise(1e9, error));
    assert!(faults[0].starts_with("/speed_cm_per_s: This fall is outside"), "{faults:?}");
}

#[test]
fn parts_and_water() {
    let mut out = MaybeUninit::uninit();
    let mut parts = |masses: [f64; 2], densities: [f64; 2], voids, error: Slot<'_>| {
        // SAFETY: two of each.
        unsafe {
            let (masses, densities) = (masses.as_ptr(), densities.as_ptr());
            pour_density_of_parts(2, masses, densities, voids, Some(&mut out), error)
        }
    };
    says!("/masses_g/1: -2 is not from 0 to 1e18.", |e| parts([1.0, -2.0], [1.0, 2.0], 0.0, e));
    says!("/densities_g_per_ml/0: 0 is not above 0.", |e| parts([1.0, 2.0], [0.0, 2.0], 0.0, e));
    says!("/voids: -1 is not from 0 to below 1.", |e| parts([1.0, 2.0], [1.0, 2.0], -1.0, e));
    says!("/masses_g: The mix is empty.", |e| parts([0.0, 0.0], [1.0, 2.0], 0.0, e));

    let mut cavity = |grams, celsius, kpa, error: Slot<'_>| {
        pour_cavity_of_water(grams, celsius, kpa, Some(&mut out), error)
    };
    says!("/water_g: The weight of the water must be a number above zero, not -1 g.", |e| {
        cavity(-1.0, 20.0, 101.325, e)
    });
    says!(
        "/at_celsius: Water at 50 °C is outside 0 to 40 °C, where its density is known.",
        |e| { cavity(9.0, 50.0, 101.325, e) }
    );
    says!(
        "/air_kpa: An air pressure of 10133 hPa (1013 kPa) is outside 450 to 1100 hPa (45 to 110 kPa).",
        |e| { cavity(9.0, 20.0, 1013.25, e) }
    );
    says!("/vapor_kpa: -1 is not from 0 to 1e15.", |error| {
        pour_swollen_volume(100.0, 0.02, 10.0, 94.0, -1.0, Some(&mut out), error)
    });
}

#[test]
fn a_mix_of_materials() {
    let base = Material {
        name: c"base".as_ptr(),
        density_g_per_ml: 1.0,
        fused_g_per_ml: 0.0,
        as_scooped_g_per_ml: 0.0,
        drop_g: 0.0,
        expansion_per_kelvin: 0.0,
        kind: POUR_PLASTISOL,
        reserved: 0,
    };
    let mut mix = MaybeUninit::uninit();
    // SAFETY: one material; the mix is written on success.
    let mut mix = unsafe {
        assert_eq!(pour_mix_of_materials(&raw const base, 1, Some(&mut mix), None), POUR_OK);
        mix.assume_init()
    };
    let name = c"base".as_ptr();
    // SAFETY: a text that ends.
    let mut add =
        |grams, error: Slot<'_>| unsafe { pour_mix_add(Some(&mut mix), name, grams, error) };
    assert_eq!(add(100.0, None), POUR_OK);
    says!("/mass_g: The mix would weigh 1e300 g.", |error| add(1e300, error));
    says!("/factor: The mix would weigh 1e302 g.", |error| {
        pour_mix_scale(Some(&mut mix), 1e300, error)
    });
    let mut out = MaybeUninit::uninit();
    for (celsius, says) in [
        (-300.0, "/at_celsius: -300 is not from -273.15 to 400."),
        (2000.0, "/at_celsius: 2000 is not from -273.15 to 400."),
    ] {
        says!(says, |e| pour_mix_volume(Some(&mix), POUR_LIQUID, celsius, Some(&mut out), e));
        says!(says, |e| {
            pour_mix_density(Some(&mix), POUR_LIQUID, celsius, 0.0, Some(&mut out), e)
        });
    }
    says!("/voids: 1 is not from 0 to below 1.", |e| {
        pour_mix_density(Some(&mix), POUR_LIQUID, 20.0, 1.0, Some(&mut out), e)
    });
    pour_mix_free(Some(mix));
}

#[test]
fn a_share_and_a_misaligned_array_have_a_help_that_holds() {
    let help = |call: &dyn Fn(Slot<'_>) -> i32| {
        let mut error = MaybeUninit::uninit();
        assert_ne!(call(Some(&mut error)), POUR_OK);
        // SAFETY: written on failure, with a first fault.
        unsafe {
            let error = error.assume_init();
            CStr::from_ptr(pour_error_help(Some(&error), 0)).to_str().unwrap().to_owned()
        }
    };
    let share = help(&|error| {
        pour_piece_mass(5.0, 0.9, 1.0, 0.0, 50.0, Some(&mut MaybeUninit::uninit()), error)
    });
    assert_eq!(share, "A share is a pure number: 0.05 for 5 %.");
    let statuses = [0_i32; 3];
    let statuses = statuses.as_ptr().cast::<u8>().wrapping_add(1).cast_mut().cast();
    let (numbers, mut masses) = ([1.0; 2], [0.0; 2]);
    let masses = masses.as_mut_ptr();
    // SAFETY: two numbers each; the statuses are refused before any is written.
    let array = help(&|error| unsafe {
        let numbers = numbers.as_ptr();
        pour_mass_of_volume_n(2, numbers, 8, numbers, 8, masses, 8, statuses, error)
    });
    assert_eq!(array, "Pass an array of that type; only columns may begin at any address.");
}

/// Results that would overlap are refused, and nothing is written; one result has no next one.
#[test]
fn results_do_not_overlap() {
    let numbers = [1.0, 2.0];
    let mut masses = [0.0; 3];
    let mut ask = |rows, stride, error: Slot<'_>| {
        let (numbers, masses) = (numbers.as_ptr(), masses[1..].as_mut_ptr());
        // SAFETY: room for two results a stride of at most 8 apart, on either side.
        unsafe {
            pour_mass_of_volume_n(
                rows,
                numbers,
                8,
                numbers,
                0,
                masses,
                stride,
                ptr::null_mut(),
                error,
            )
        }
    };
    for stride in -7..8 {
        let says = format!("/masses_g: With a stride of {stride}, results would overlap.");
        says!(says, |error| ask(2, stride, error));
        assert_eq!(ask(0, stride, None), POUR_OK);
    }
    assert_eq!(ask(1, 0, None), POUR_OK);
    assert_eq!(ask(2, 8, None), POUR_OK);
    assert_eq!(ask(2, -8, None), POUR_OK);
    assert_eq!(masses, [2.0, 1.0, 2.0]);
}

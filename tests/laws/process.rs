//! Vacuum, heat and sink rates of the demo sheet, by plain arithmetic.

use pourwright::document::LoadedBook;
use pourwright::plan::Plan;
use pourwright::show::Calculated;
use pourwright_tests::reference::process;
use pourwright_tests::reference::process::Stick;

const BOOK: &str = include_str!("../../core/examples/demo/book.json");
const ORDERS: &str = include_str!("../../core/examples/demo/orders.json");
const CUP_ML: f64 = 236.588_236_5;

fn demo() -> Plan {
    let book = LoadedBook::from_text(BOOK).unwrap();
    book.plan_text(ORDERS).unwrap().plan
}

fn known<T>(calculated: Option<&Calculated<T>>) -> &T {
    calculated.and_then(Calculated::known).expect("the demo book states what it takes")
}

fn assert_close(found: f64, wanted: f64, relative: f64) {
    assert!((found / wanted - 1.0).abs() < relative, "{found} for {wanted}");
}

/// 25 inHg at 640 m, in which a pot was seen to rise to 1.8 times its level.
#[test]
fn the_pots_swell_as_boyle_says() {
    let local = process::air_kpa(640.0);
    let expansion = local / (local - 25.0 * 3.386_389);
    let air = process::air_per_liquid(1.8, expansion);
    for pot in &demo().pots {
        let degas = known(pot.degas.as_ref());
        let liquid_ml = pot.stages[0].fills.quantity.value * 1e6;
        let all_ml = liquid_ml * (1.0 + air * expansion);
        assert_close(degas.swollen.quantity.value * 1e6 * f64::from(degas.fills), all_ml, 1e-5);
        // A tenth of the 1150, 590 or 290 mL to the brim stays free at the fill mark.
        let brim_ml = [(4.0, 1150.0), (2.0, 590.0), (1.0, 290.0)]
            .into_iter()
            .find(|(cups, _)| (degas.cup.quantity.value * 1e6 / CUP_ML - cups).abs() < 1e-6)
            .unwrap()
            .1;
        let mark_ml = degas.fill_mark.quantity.value * 1e6;
        assert!(mark_ml * 1.8 <= brim_ml * 0.9 && degas.level.quantity <= degas.fill_mark.quantity);
    }
}

/// The time that the book's four timings give pot A, and the bursts of its table: by a plain line through them, t/Q
/// = a + b/m, with the relative residuals of both as they come.
#[test]
fn the_first_heating_of_pot_a_takes_as_long_as_it_must() {
    let kelvin = |fahrenheit: f64| fahrenheit / 1.8;
    let timings =
        [(0.5, 267.0, 79.0), (1.0, 267.0, 121.0), (2.0, 267.0, 206.0), (4.0, 270.0, 380.0)];
    let points = timings.map(|(cups, rise, seconds)| {
        let mass_g = cups * CUP_ML * 1.03;
        (mass_g, seconds / (mass_g * 1.9 * kelvin(rise)))
    });
    let (a, b) = process::line(&points);

    let plan = demo();
    let stage = &plan.pots[0].stages[0];
    // The flake goes in hot: the times are those of the pot without it. Of what is left, the base alone states a
    // specific heat; the rest is taken to be like it.
    let flake = stage.weigh.iter().find(|weigh| weigh.material == "teal-flake").unwrap();
    let specific_heat = process::specific_heat(&[(1.0, 1.9)]);
    let mass_g = (stage.holds.quantity.value - flake.wanted.quantity.value) * 1e3;
    let power_w = 1.0 / (a + b / mass_g);
    let seconds = |rise_k: f64| process::heating_s(mass_g, specific_heat, rise_k, power_w);
    let heating = known(stage.heating.as_ref());
    // From 20 °C to somewhere between the bottom of the window and its middle, in whole steps of 5 s.
    let total_s = heating.total.quantity.value;
    let (low, high) = (seconds(kelvin(325.0 - 32.0) - 20.0), seconds(kelvin(337.5 - 32.0) - 20.0));
    assert!(low < total_s && total_s < high + 5.0, "{total_s} s for {low} to {high} s");
    // Each burst makes what the line says of it.
    for band in &heating.bands {
        let rise_k = band.expected.quantity.value - band.below.quantity.value;
        assert_close(band.burst.quantity.value, seconds(rise_k), 1e-9);
    }
}

/// A finger of 127 by 9.6 mm with a hook of 1.1 g and 0.14 mL, in fresh water of 60 °F: 999.0 kg/m³ and
/// 1.123 mPa·s (interpolated in a handbook's table of water between 15 and 16 °C, from memory).
#[test]
fn the_fingers_sink_as_drag_lets_them() {
    let plan = demo();
    for line in plan.lines.iter().filter(|line| line.mold == "finger-5") {
        let sinks = known(line.sinks.as_ref());
        let mass_kg = line.piece.quantity.value;
        let volume_m3 = mass_kg / sinks.density.quantity.value;
        let stick = Stick {
            in_water_kg: mass_kg + 1.1e-3 - 999.0 * (volume_m3 + 0.14e-6),
            diameter_m: 9.6e-3,
            length_m: 0.127,
        };
        let speed = process::sink_m_per_s(&stick, 999.0, 1.123e-3);
        assert_close(sinks.speed.quantity.value, speed, 2e-3);
        assert!(sinks.slowest.quantity < sinks.speed.quantity);
        assert!(sinks.speed.quantity < sinks.fastest.quantity);
    }
}

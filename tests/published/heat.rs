//! Heating by the water methods for ovens, specific heats, and the Arrhenius clock.

use pourwright::process::heat::{Load, Oven, Timing, mix_specific_heat};
use pourwright::process::history::{Kinetics, Reading};
use pourwright::quantity::{
    HeatCapacity, Mass, MolarEnergy, Ratio, SpecificHeatCapacity, ThermodynamicTemperature, Time,
};
use pourwright::uom::si::heat_capacity::joule_per_kelvin;
use pourwright::uom::si::mass::gram;
use pourwright::uom::si::molar_energy::joule_per_mole;
use pourwright::uom::si::power::watt;
use pourwright::uom::si::specific_heat_capacity::joule_per_kilogram_kelvin;
use pourwright::uom::si::thermodynamic_temperature::degree_celsius;
use pourwright::uom::si::time::second;

use crate::rows::{Row, read};

fn celsius(t: f64) -> ThermodynamicTemperature {
    ThermodynamicTemperature::new::<degree_celsius>(t)
}

fn specific_heat(j_per_g_k: f64) -> SpecificHeatCapacity {
    SpecificHeatCapacity::new::<joule_per_kilogram_kelvin>(1000.0 * j_per_g_k)
}

fn load(mass_g: f64, j_per_g_k: f64) -> Load {
    let vessel = HeatCapacity::new::<joule_per_kelvin>(0.0);
    Load::new(Mass::new::<gram>(mass_g), specific_heat(j_per_g_k), vessel).expect("a load")
}

fn oven(load: Load, rise_k: f64, seconds: f64) -> Oven {
    let timing = Timing {
        load,
        setting: Ratio::from(1.0),
        start: celsius(10.0),
        end: celsius(10.0 + rise_k),
        duration: Time::new::<second>(seconds),
    };
    Oven::from_timings(&[timing]).expect("a timing")
}

/// The calorie of each method, as its source writes it.
fn j_per_g_k(row: &Row) -> f64 {
    match row.id.as_str() {
        "e-mw-jis" => 70.0 * 60.0 / 1000.0,
        "e-mw-epa" => 4.184,
        _ => 4.187,
    }
}

fn power_by_water(row: &Row) -> f64 {
    let load = load(row.number("mass_g"), j_per_g_k(row));
    oven(load, row.number("dT_K"), row.number("t_s")).power(load).get::<watt>()
}

/// An oven of the stated power, and how long it takes for the stated rise.
fn time_by_water(row: &Row) -> f64 {
    let load = load(row.number("mass_g"), j_per_g_k(row));
    let seconds_for_one_k = row.number("mass_g") * j_per_g_k(row) / row.number("P_W");
    let oven = oven(load, 1.0, seconds_for_one_k);
    let heating = oven.time(load, celsius(10.0), celsius(10.0 + row.number("dT_K")));
    heating.expect("a heating").time.get::<second>()
}

/// The container starts at the room's temperature, the water colder: by its own rise it counts as so
/// much more heat capacity.
fn power_with_container(row: &Row) -> f64 {
    let (room, cold, end) = (row.number("T0"), row.number("T1"), row.number("T2"));
    let container = 0.55 * row.number("m_c") * (end - room) / (end - cold);
    let vessel = HeatCapacity::new::<joule_per_kelvin>(container);
    let water = Mass::new::<gram>(row.number("m_w"));
    let load = Load::new(water, specific_heat(j_per_g_k(row)), vessel).expect("a load");
    oven(load, end - cold, row.number("t_s")).power(load).get::<watt>()
}

fn mixed(row: &Row) -> f64 {
    let plasticizer = row.number("w_plasticiser");
    let part = |mass, key| (Mass::new::<gram>(mass), specific_heat(row.number(key)).into());
    let parts = [part(plasticizer, "cp_plasticiser"), part(1.0 - plasticizer, "cp_PVC")];
    mix_specific_heat(&parts).expect("a mix").value().get::<joule_per_kilogram_kelvin>() / 1000.0
}

fn kinetics(row: &Row, reference_c: f64) -> Kinetics {
    let energy = MolarEnergy::new::<joule_per_mole>(row.number("Ea_J_mol"));
    Kinetics::new(energy, celsius(reference_c), "the row's").expect("kinetics")
}

/// How much faster at T2 than at T1.
fn ratio(row: &Row) -> f64 {
    kinetics(row, row.number("T1_C")).rate(celsius(row.number("T2_C"))).expect("a rate")
}

/// k = A exp(−E/RT), the reference's rate constant taken from the row's A and E.
fn rate_constant(row: &Row) -> f64 {
    let reference_c = 170.0;
    let exponent = row.number("Ea_J_mol") / (row.number("R") * (reference_c + 273.15));
    let at_reference = 10f64.powf(row.number("log10A")) * (-exponent).exp();
    at_reference * kinetics(row, reference_c).rate(celsius(row.number("t_C"))).expect("a rate")
}

/// The energy at which the rates of the row's two temperatures have its ratio, in kJ/mol.
fn energy_for_ratio(row: &Row) -> f64 {
    let (mut low, mut high) = (50e3, 300e3);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        let energy = MolarEnergy::new::<joule_per_mole>(middle);
        let kinetics = Kinetics::new(energy, celsius(row.number("T1_C")), "a search");
        let rate = kinetics.expect("kinetics").rate(celsius(row.number("T2_C")));
        if rate.expect("a rate") < row.number("ratio") { low = middle } else { high = middle }
    }
    low / 1000.0
}

fn equivalent_time(row: &Row, readings: &[(f64, f64)]) -> f64 {
    let reading =
        |&(at, t): &(f64, f64)| Reading { at: Time::new::<second>(at), temperature: celsius(t) };
    let history: Vec<Reading> = readings.iter().map(reading).collect();
    let kinetics = kinetics(row, row.number("Tref_C"));
    kinetics.equivalent_time(&history).expect("a history").get::<second>()
}

fn steps(row: &Row) -> f64 {
    let mut readings = Vec::new();
    let mut now = 0.0;
    for step in row.inputs["steps"].as_array().expect("steps") {
        let [t, duration] = [0, 1].map(|i| step[i].as_f64().expect("a number"));
        readings.extend([(now, t), (now + duration, t)]);
        now += duration;
    }
    equivalent_time(row, &readings)
}

fn ramp(row: &Row) -> f64 {
    let (from, to) = (row.number("from_C"), row.number("to_C"));
    equivalent_time(row, &[(0.0, from), ((to - from) / row.number("rate_K_s"), to)])
}

#[test]
fn agrees_with_the_published_rows() {
    for row in &read("heat") {
        let got = match row.id.as_str() {
            "e-cp-mix-70" => mixed(row),
            "e-mw-jis" | "e-mw-epa" => power_by_water(row),
            "e-mw-iec60705" => power_with_container(row),
            id if id.starts_with("e-mw-iec-") => time_by_water(row),
            id if id.starts_with("e-arr-ratio-") => ratio(row),
            id if id.starts_with("e-arr-simon-") => rate_constant(row),
            "e-arr-doubling" => energy_for_ratio(row),
            "e-arr-equiv" => steps(row),
            "e-arr-ramp" => ramp(row),
            other => panic!("{other}: nothing is checked against this row"),
        };
        row.check(got);
    }
}

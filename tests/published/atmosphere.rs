//! The air outside, what a gauge can show in it, and what a vacuum does to bubbles.

use pourwright::process::atmosphere::{GeometricAltitude, GeopotentialAltitude, StationPressure};
use pourwright::process::degas::{DegasError, EntrainedAir, Vacuum};
use pourwright::process::gauge::{AbsolutePressure, Dial, VacuumReading};
use pourwright::process::vapor;
use pourwright::quantity::{Length, Pressure, Ratio, ThermodynamicTemperature, Volume};
use pourwright::uom::si::length::meter;
use pourwright::uom::si::pressure::{kilopascal, pascal};
use pourwright::uom::si::thermodynamic_temperature::{degree_celsius, kelvin};
use pourwright::uom::si::volume::milliliter;

use crate::rows::{Row, read};

const FOOT_M: f64 = 0.3048;
/// The conventional inch of mercury and the pound-force per square inch (NIST SP 811).
const INHG_PA: f64 = 3386.389;
const PSI_PA: f64 = 6894.757;

fn geometric(m: f64) -> GeometricAltitude {
    GeometricAltitude::new(Length::new::<meter>(m)).expect("inside the lowest layer")
}

fn vacuum_reading(inches: f64) -> VacuumReading {
    VacuumReading::new(Pressure::new::<pascal>(inches * INHG_PA)).expect("a reading")
}

/// The altitude under whichever key the row has it.
fn station(row: &Row) -> StationPressure {
    let keys =
        [("geometric_m", 1.0), ("geometric_ft", FOOT_M), ("altitude_ft", FOOT_M), ("ft", FOOT_M)];
    if let Some(m) = row.inputs["geopotential_m"].as_f64() {
        let altitude = GeopotentialAltitude::new(Length::new::<meter>(m));
        return StationPressure::standard(altitude.expect("inside the lowest layer"));
    }
    let m = keys.iter().find_map(|(key, unit)| Some(row.inputs[*key].as_f64()? * unit));
    StationPressure::standard(geometric(m.unwrap_or_else(|| panic!("{}: no altitude", row.id))))
}

fn standard_pressure(row: &Row) -> f64 {
    let pressure = station(row).get().get::<pascal>();
    match row.unit.as_str() {
        "Pa" => pressure,
        "inHg" => pressure / INHG_PA,
        "psi" => pressure / PSI_PA,
        other => panic!("{}: {other}", row.id),
    }
}

fn standard_temperature(row: &Row) -> f64 {
    let altitude = geometric(row.number("geometric_m")).geopotential();
    altitude.standard_temperature().get::<kelvin>()
}

/// A dial that is not off: the tables know of no other.
fn true_dial() -> Dial {
    Dial::new(Pressure::new::<kilopascal>(101.325), Ratio::from(0.0)).expect("a dial")
}

fn expansion(row: &Row) -> f64 {
    let local = station(row);
    let reading = vacuum_reading(row.number("gauge_inHg"));
    let chamber = reading.absolute(local, true_dial()).expect("a possible reading");
    let vacuum = Vacuum::new(local, chamber.absolute, Pressure::default()).expect("a vacuum");
    vacuum.expansion().value
}

/// The pressure that expands a gas to a volume. Air without liquid is the limit of much air in little
/// liquid, at a local pressure scaled into the air's own range.
fn boyle(row: &Row) -> f64 {
    let (p1, v1) = (row.number("p1_kPa"), row.number("V1_mL"));
    let risen = row.number("V2_mL");
    let scale = 101.325 / p1;
    let liquid = Volume::new::<milliliter>(1.0);
    let air = EntrainedAir::share(Ratio::from(v1 / (v1 + 1.0))).expect("a share");
    let local = StationPressure::measured(Pressure::new::<kilopascal>(p1 * scale)).expect("air");
    let swollen = |absolute: f64| {
        let reading = VacuumReading::new(Pressure::new::<kilopascal>(101.325 - absolute));
        let chamber = reading.expect("a reading").absolute(local, true_dial());
        let absolute = chamber.expect("a possible reading").absolute;
        let vacuum = Vacuum::new(local, absolute, Pressure::default()).expect("a vacuum");
        vacuum.swollen(liquid, air).expect("a volume").get::<milliliter>() - 1.0
    };
    let (mut low, mut high) = (0.1, 101.0);
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if swollen(middle) > risen { low = middle } else { high = middle }
    }
    low / scale
}

fn saturation(row: &Row) -> f64 {
    let t = ThermodynamicTemperature::new::<degree_celsius>(row.number("t_C"));
    vapor::of_water(t).expect("inside the range").get::<pascal>()
}

/// The reading that the refusal of a boiling pot names.
fn boiling_gauge(row: &Row) -> f64 {
    let local = StationPressure::measured(Pressure::new::<pascal>(row.number("local_Pa")));
    let vapor = Pressure::new::<pascal>(saturation(row));
    let absolute = AbsolutePressure::new(vapor).expect("a pressure");
    match Vacuum::new(local.expect("air"), absolute, vapor) {
        Err(DegasError::Boils { most_vacuum, .. }) => most_vacuum.get::<pascal>() / INHG_PA,
        other => panic!("{}: {other:?}", row.id),
    }
}

#[test]
fn agrees_with_the_published_rows() {
    for row in &read("atmosphere") {
        let got = match row.id.as_str() {
            id if id.starts_with("c-us76-T-") => standard_temperature(row),
            id if id.starts_with("c-us76-") || id == "c-ashrae-5000ft" => standard_pressure(row),
            id if id.starts_with("c-swell-") => expansion(row),
            id if id.starts_with("c-psat-") => saturation(row),
            "c-boyle-ck12" => boyle(row),
            "c-boil-gauge-20" => boiling_gauge(row),
            other => panic!("{other}: nothing is checked against this row"),
        };
        row.check(got);
    }
}

/// The published rule and the published table, side by side: what must not be used for the limit.
#[test]
fn the_gauge_limit_at_10_000_ft_is_not_that_of_the_rule_of_thumb() {
    let most = VacuumReading::most(StationPressure::standard(geometric(10_000.0 * FOOT_M)));
    let by_rule = 29.92 - 10.0;
    assert!((most.get().get::<pascal>() / INHG_PA - by_rule - 0.66).abs() < 0.005);
}

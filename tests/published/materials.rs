//! The starter table of materials, number by number.

use crate::rows::{Row, read};
use serde_json::{Map, Value};

const KINDS: [&str; 10] = [
    "plastisol",
    "softener",
    "hardener",
    "stabilizer",
    "colorant",
    "pearl",
    "flake",
    "salt",
    "scent",
    "other",
];

/// Each property and its unit.
const PROPERTIES: [(&str, &str); 7] = [
    ("density", "g/mL"),
    ("fused", "g/mL"),
    ("as_scooped", "g/mL"),
    ("expansion", "1/K"),
    ("specific_heat", "J/(g.K)"),
    ("specific_heat_rise", "1/K"),
    ("grain", "mm"),
];

/// Which published rows speak of which property.
const CHECKS: [(&str, &str, &str); 38] = [
    ("sodium-chloride", "density", "b-crc-7647-14-5"),
    ("sodium-chloride", "as_scooped", "j-usda-tsp"),
    ("sodium-chloride", "specific_heat", "m-cp-7647-14-5"),
    ("water", "density", "b-water-iapws95-20"),
    ("water", "expansion", "m-water-expansion"),
    ("water", "specific_heat", "e-cp-water-20"),
    ("pvc-resin", "density", "b-pvc-resin"),
    ("pvc-resin", "as_scooped", "j-bulk-range-pvc"),
    ("pvc-resin", "expansion", "b-pvc-cte-280"),
    ("pvc-resin", "specific_heat", "e-cp-pvc-chang"),
    ("dotp", "density", "b-mem-dotp-20"),
    ("dinp", "density", "m-dinp-d2020"),
    ("dehp", "density", "b-mem-dehp-20"),
    ("dehp", "density", "m-crc-117-81-7"),
    ("dehp", "specific_heat", "e-cp-dehp-298.15"),
    ("dehp", "specific_heat_rise", "m-cp-rise-117-81-7"),
    ("deha", "density", "b-mem-doa-20"),
    ("deha", "density", "m-crc-103-23-1"),
    ("epoxidized-soybean-oil", "density", "b-mem-epoxidised"),
    ("titanium-dioxide-rutile", "density", "m-crc-1317-80-2"),
    ("titanium-dioxide-rutile", "specific_heat", "m-cp-1317-80-2"),
    ("titanium-dioxide-anatase", "density", "b-crc-1317-70-0"),
    ("iron-oxide-red", "density", "b-crc-1309-37-1"),
    ("iron-oxide-red", "specific_heat", "m-cp-1309-37-1"),
    ("zinc-oxide", "density", "b-crc-1314-13-2"),
    ("zinc-oxide", "specific_heat", "m-cp-1314-13-2"),
    ("carbon-black", "density", "m-carbon-black"),
    ("calcium-carbonate", "density", "b-crc-471-34-1"),
    ("calcium-carbonate", "specific_heat", "m-cp-471-34-1"),
    ("talc", "density", "b-pigment-talc"),
    ("mica-muscovite", "density", "b-mica"),
    ("mica-muscovite", "density", "m-muscovite"),
    ("quartz-sand", "density", "m-crc-14808-60-7"),
    ("quartz-sand", "density", "b-pigment-quartz"),
    ("quartz-sand", "specific_heat", "m-cp-14808-60-7"),
    ("pet-flake", "density", "b-pet"),
    ("aluminum", "density", "b-crc-7429-90-5"),
    ("aluminum", "specific_heat", "m-cp-7429-90-5"),
];

/// The row whose expansion is by length; the table's is by volume.
const BY_LENGTH: &str = "b-pvc-cte-280";

fn starter() -> Map<String, Value> {
    let text = include_str!("../../core/data/starter.json");
    let mut table: Value = serde_json::from_str(text).expect("the starter table is JSON");
    assert_eq!(table["format"], "pourwright/1.0");
    match table["materials"].take() {
        Value::Object(materials) => materials,
        other => panic!("materials: {other}"),
    }
}

/// `"2.165 g/mL ± 0.004"` as its number, its unit and its standard uncertainty.
fn split(text: &str) -> (f64, &str, Option<f64>) {
    let number = |text: &str| text.parse::<f64>().unwrap_or_else(|e| panic!("{text}: {e}"));
    let (value, uncertainty) = match text.split_once(" ± ") {
        Some((value, uncertainty)) => (value, Some(number(uncertainty))),
        None => (text, None),
    };
    let (value, unit) = value.split_once(' ').unwrap_or_else(|| panic!("{text}: no unit"));
    (number(value), unit, uncertainty)
}

fn number(materials: &Map<String, Value>, id: &str, property: &str) -> f64 {
    let value = &materials[id][property]["value"];
    split(value.as_str().unwrap_or_else(|| panic!("{id} has no {property}"))).0
}

/// The table's number in the row's unit, by the row's definition and at its temperature.
fn as_published(row: &Row, materials: &Map<String, Value>, id: &str, property: &str) -> f64 {
    let value = number(materials, id, property);
    match (property, row.unit.as_str()) {
        ("density", "kg/m3") => 1000.0 * at_its_temperature(row, materials, id, value),
        // A relative density is over water at 20 °C where the row has it, else about 1 g/mL.
        ("density", "1") => value / row.inputs["rho_water_g_mL"].as_f64().unwrap_or(1.0),
        ("expansion", "1/K") if row.id == BY_LENGTH => value / 3.0,
        (_, "g/mL" | "1/K" | "J/(g.K)") => value,
        other => panic!("{}: {other:?}", row.id),
    }
}

/// A density at 20 °C, brought to the row's temperature where it names one.
fn at_its_temperature(row: &Row, materials: &Map<String, Value>, id: &str, density: f64) -> f64 {
    match row.inputs["t_C"].as_f64() {
        Some(t) => density / (1.0 + number(materials, id, "expansion") * (t - 20.0)),
        None => density,
    }
}

#[test]
fn agrees_with_the_published_rows() {
    let materials = starter();
    let rows = read("materials");
    for (id, property, row_id) in CHECKS {
        let row = rows.iter().find(|row| row.id == row_id);
        let row = row.unwrap_or_else(|| panic!("no row {row_id}"));
        row.check(as_published(row, &materials, id, property));
    }
    for row in &rows {
        let used = CHECKS.iter().any(|(_, _, row_id)| *row_id == row.id);
        assert!(used, "{}: nothing is checked against this row", row.id);
    }
}

#[test]
fn every_value_is_checked_or_said_to_be_from_memory() {
    for (id, material) in &starter() {
        for (property, _) in PROPERTIES {
            let Some(source) = material[property]["source"].as_str() else { continue };
            let checked = CHECKS.iter().any(|(of, what, _)| of == id && *what == property);
            assert!(checked || source.contains("from memory"), "{id}, {property}: {source}");
        }
    }
}

#[test]
fn every_row_is_well_formed() {
    for (id, material) in &starter() {
        let material = material.as_object().unwrap_or_else(|| panic!("{id} is not an object"));
        let kind = material["kind"].as_str().unwrap_or_else(|| panic!("{id} has no kind"));
        assert!(KINDS.contains(&kind), "{id}: unknown kind {kind}");
        assert!(material["name"].is_string(), "{id} has no name");
        assert!(material.contains_key("density"), "{id} has no density");
        for (key, entry) in material {
            if ["kind", "name", "notes"].contains(&key.as_str()) {
                assert!(entry.is_string(), "{id}, {key}: no text");
                continue;
            }
            let unit = PROPERTIES.iter().find(|(property, _)| property == key);
            let (_, unit) = unit.unwrap_or_else(|| panic!("{id}: unknown property {key}"));
            let (value, found, uncertainty) = split(entry["value"].as_str().expect("a value"));
            assert_eq!(found, *unit, "{id}, {key}");
            assert!(value > 0.0, "{id}, {key}");
            assert!(uncertainty.is_none_or(|u| u > 0.0 && u < 0.15 * value), "{id}, {key}");
            assert!(entry["source"].as_str().is_some_and(|s| !s.is_empty()), "{id}, {key}");
            assert_eq!(entry.as_object().map(Map::len), Some(2), "{id}, {key}");
        }
    }
}

#[test]
fn a_powder_is_lighter_scooped_than_solid() {
    let materials = starter();
    for (id, material) in &materials {
        if material.get("as_scooped").is_some() {
            let solid = number(&materials, id, "density");
            let share = number(&materials, id, "as_scooped") / solid;
            // Looser than random close packing of equal spheres (row j-rcp: 0.64).
            assert!((0.2..0.64).contains(&share), "{id}: {share}");
        }
    }
}

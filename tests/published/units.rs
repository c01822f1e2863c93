//! Units: US, label, metric and imperial measures, UCUM codes and functional tests, temperatures, pressures.
//!
//! Not taken from the published table: the inch of mercury at 60 °F, a unit of its own that is not known here.

use crate::rows::{Row, read};
use pourwright::quantity::{Amount, Measurable, Pressure, Rational, System, Unit, value_in};

/// The codes of the table name their system themselves, so that any will do.
const ANY: System = System::Metric;

fn unit(row: &Row, text: &str) -> Unit {
    Unit::parse(text).unwrap_or_else(|e| panic!("{}: {e}", row.id))
}

/// The exact value of the row's amount in the unit it asks for.
fn converted(row: &Row) -> Rational {
    let text = |key: &str| row.inputs[key].as_str();
    let from = unit(row, text("from").expect("a unit"));
    let to = unit(row, text("to").unwrap_or(&row.unit));
    let amount = Amount::from_f64(row.number("value"), from);
    let amount = amount.unwrap_or_else(|e| panic!("{}: {e}", row.id));
    amount.in_unit(to, ANY).unwrap_or_else(|e| panic!("{}: {e}", row.id)).value()
}

#[test]
fn agree_with_the_published_conversions() {
    let rows = read("units");
    let conversions: Vec<&Row> = rows.iter().filter(|row| row.inputs["from"].is_string()).collect();
    assert_eq!(conversions.len(), rows.len() - 2, "every row but the two below is a conversion");
    for row in conversions {
        row.check(converted(row).to_f64());
    }
}

#[test]
fn agree_on_the_standard_atmosphere_in_inches_of_mercury() {
    let row = find("a-atm-inhg-nist");
    let pressure = Pressure::from_si(row.number("Pa"));
    row.check(value_in(pressure, Unit::INCH_OF_MERCURY, ANY).expect("a pressure"));
}

#[test]
fn agree_on_which_codes_are_units() {
    let row = find("a-uft-k=1=021");
    let code = row.inputs["unit"].as_str().expect("a code");
    assert_eq!(row.expected, Unit::parse(code).is_ok());
}

fn find(id: &str) -> Row {
    read("units").into_iter().find(|row| row.id == id).unwrap_or_else(|| panic!("no row {id}"))
}

use pourwright::process::drag;
use pourwright::process::seawater::{Salinity, Water};
use pourwright::process::sink::{Body, MAY_SWING_FROM, SWINGS_FROM, Shape};
use pourwright::quantity::{
    DynamicViscosity, Length, MassDensity, Ratio, ThermodynamicTemperature, Velocity,
};
use pourwright::salt::Hook;
use pourwright::uom::si::dynamic_viscosity::pascal_second;
use pourwright::uom::si::length::meter;
use pourwright::uom::si::mass_density::kilogram_per_cubic_meter;
use pourwright::uom::si::ratio::per_mille;
use pourwright::uom::si::thermodynamic_temperature::degree_celsius;
use pourwright::uom::si::velocity::{foot_per_second, meter_per_second};

use crate::rows::{self, Row};

/// Drag of the long cylinder in Wieselsberger's table of short ones.
const LONG: f64 = 1.19;

/// Pounds per cubic foot in kg/m³ (NIST SP 811).
const LB_PER_FT3: f64 = 0.453_592_37 / (0.3048 * 0.3048 * 0.3048);

#[test]
fn sink() {
    for row in rows::read("sink") {
        match row.id.as_str() {
            id if id.starts_with("d-cyl-wies") => {
                let got = drag::cylinder(row.number("Re")).unwrap();
                // The spread that a fall's bounds take; at Re = 3 the fit is known to be high.
                assert_near(&row, row.expected.as_f64().unwrap(), got, 0.15);
                if row.number("Re") > 10.0 {
                    row.check(got);
                }
            }
            id if id.starts_with("d-cyl-cheng") => {
                row.check(drag::cylinder(row.number("Re")).unwrap());
            }
            id if id.starts_with("d-cyl-finite-wies") => {
                row.check(LONG * drag::end_factor(row.number("d_over_l")).unwrap());
            }
            "d-cyl-finite-inf" => row.check(LONG * drag::end_factor(0.0).unwrap()),
            id if id.starts_with("d-cyl-finite") => {
                // Two diameters are a hair shorter than the table has them.
                let slender = row.number("l_over_d").max(1.0 / 0.498);
                row.check(LONG * drag::end_factor(1.0 / slender).unwrap());
            }
            id if id.starts_with("d-sph-clift") => {
                row.check(drag::sphere(row.number("Re")).unwrap());
            }
            "d-sphere-water-2" => row.check(settling(&row, 1.0).get::<meter_per_second>()),
            // Published with other curves for the sphere, so to the spread of the curves: 8 % of drag.
            "d-settle-cutlip-a" => {
                let expected = row.expected["v_m_s"].as_f64().unwrap();
                assert_near(&row, expected, settling(&row, 1.0).get::<meter_per_second>(), 0.08);
            }
            "d-settle-fluids-doc" => {
                let expected = row.expected.as_f64().unwrap();
                assert_near(&row, expected, settling(&row, 1.0).get::<meter_per_second>(), 0.08);
            }
            "d-settle-gpsa" => {
                let expected = row.expected.as_f64().unwrap();
                let got = settling(&row, LB_PER_FT3).get::<foot_per_second>();
                assert_near(&row, expected, got, 0.08);
            }
            "d-free-fall-limit" => {
                row.check(MAY_SWING_FROM);
                row.check(SWINGS_FROM);
            }
            "b-sea-SR" => {
                let salinity = Salinity::Practical(row.number("SP")).absolute().unwrap();
                row.check(salinity.get::<per_mille>());
            }
            id if id.starts_with("b-sea-35") => {
                let temperature =
                    ThermodynamicTemperature::new::<degree_celsius>(row.number("t90_C"));
                let salinity = Ratio::new::<per_mille>(row.number("SA_g_per_kg"));
                let water = Water::new(temperature, Salinity::Absolute(salinity)).unwrap();
                row.check(water.density.get::<kilogram_per_cubic_meter>());
            }
            other => panic!("{other} has no check"),
        }
    }
}

/// The fall of the row's sphere, its densities in `unit` kg/m³.
fn settling(row: &Row, unit: f64) -> Velocity {
    let density = |keys: [&str; 2]| {
        let number = keys.iter().find_map(|key| row.inputs[*key].as_f64()).unwrap();
        MassDensity::new::<kilogram_per_cubic_meter>(unit * number)
    };
    let diameter = Length::new::<meter>(row.number("D_m"));
    let body = Body {
        volume: diameter * diameter * diameter * (std::f64::consts::PI / 6.0),
        hook: Hook::default(),
        shape: Shape::Ball { diameter },
        own_drag: None,
    };
    let water = Water {
        density: density(["rho", "rho_lb_ft3"]),
        viscosity: DynamicViscosity::new::<pascal_second>(row.number("mu")),
    };
    body.fall(density(["rho_p", "rho_p_lb_ft3"]), &water).unwrap().speed
}

fn assert_near(row: &Row, expected: f64, got: f64, relative: f64) {
    assert!(
        (got / expected - 1.0).abs() <= relative,
        "{}: expected {expected} within {relative}, got {got}; source: {}",
        row.id,
        row.source
    );
}

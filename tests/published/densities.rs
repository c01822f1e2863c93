use pourwright::quantity::{Pressure, ThermodynamicTemperature};
use pourwright::uom::si::mass_density::kilogram_per_cubic_meter;
use pourwright::uom::si::pressure::hectopascal;
use pourwright::uom::si::specific_volume::cubic_meter_per_kilogram;
use pourwright::uom::si::thermodynamic_temperature::degree_celsius;
use pourwright::water;

use crate::rows;

#[test]
fn water() {
    for row in rows::read("densities") {
        let temperature = ThermodynamicTemperature::new::<degree_celsius>(row.number("t_C"));
        if row.id.starts_with("b-water-tanaka") {
            row.check(water::density(temperature).unwrap().get::<kilogram_per_cubic_meter>());
        } else if row.id.starts_with("b-z-factor") {
            let pressure = Pressure::new::<hectopascal>(row.number("p_hPa"));
            let z = water::z_factor(temperature, pressure).unwrap();
            // 1 µL/mg is 1 mL/g.
            row.check(z.get::<cubic_meter_per_kilogram>() * 1000.0);
        } else {
            panic!("{} has no check", row.id);
        }
    }
}

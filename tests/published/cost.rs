//! What a volume of plastic costs.

use pourwright::cost::{MaterialCosts, Used};
use pourwright::material::{Kind, Material};
use pourwright::quantity::{MassDensity, Measured, System, Volume};
use pourwright::uom::si::mass_density::kilogram_per_cubic_meter;
use pourwright::uom::si::volume::liter;

use crate::rows::{Row, read};

/// The cost of one liter of a material whose price is per kilogram.
fn per_liter(row: &Row) -> f64 {
    let density = MassDensity::new::<kilogram_per_cubic_meter>(1000.0 * row.number("density_kg_L"));
    let price = format!("{} EUR per 1 kg", row.number("price_per_kg"));
    let material = Material {
        density: Some(Measured::exact(density)),
        price: Some(price.parse().expect("a price")),
        ..Material::new("flexible vinyl", Kind::Plastisol)
    };
    let mass = Volume::new::<liter>(1.0) * density;
    let used = [Used { material: &material, mass }];
    let costs = MaterialCosts::new(&used, System::Metric).expect("a cost");
    costs.used.amount().to_string().parse().expect("a number")
}

#[test]
fn agrees_with_the_published_rows() {
    for row in &read("cost") {
        let got = match row.id.as_str() {
            "i-volume-cost" => per_liter(row),
            other => panic!("{other}: nothing is checked against this row"),
        };
        row.check(got);
    }
}

//! Cost of a volume of plastic.

use pourwright::cost::{MaterialCosts, Money, Profit, Used};
use pourwright::material::{Kind, Material};
use pourwright::quantity::{Mass, MassDensity, Measured, Ratio, System, Volume};
use pourwright::uom::si::mass::pound;
use pourwright::uom::si::mass_density::kilogram_per_cubic_meter;
use pourwright::uom::si::volume::liter;
use rust_decimal::Decimal;
use rust_decimal::prelude::FromPrimitive;

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
    number(costs.used)
}

/// The cost of a pound of a material that is sold in packages of a number of pounds.
fn per_pound(row: &Row) -> f64 {
    let price = format!("{} USD per {} lb", row.number("price"), row.number("package_lb"));
    let material = Material {
        price: Some(price.parse().expect("a price")),
        ..Material::new("base", Kind::Plastisol)
    };
    let used = [Used { material: &material, mass: Mass::new::<pound>(1.0) }];
    number(MaterialCosts::new(&used, System::UsCustomary).expect("a cost").used)
}

/// The price for a cost.
fn price(row: &Row, profit: Profit) -> f64 {
    let cost = Decimal::from_f64(row.number("cost")).expect("a cost");
    let cost = Money::new(cost, "USD".parse().expect("a currency")).expect("a cost");
    number(profit.price(cost).expect("a price"))
}

fn number(money: Money) -> f64 {
    money.amount().to_string().parse().expect("a number")
}

#[test]
fn agrees_with_the_published_rows() {
    for row in &read("cost") {
        let got = match row.id.as_str() {
            "i-volume-cost" => per_liter(row),
            "i-unit-price-lb" => per_pound(row),
            "i-markup-30" => price(row, Profit::Markup(Ratio::from(row.number("markup")))),
            "i-margin-30" => price(row, Profit::Margin(Ratio::from(row.number("margin")))),
            other => panic!("{other}: nothing is checked against this row"),
        };
        row.check(got);
    }
}

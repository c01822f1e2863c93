//! Cost of materials, by the amounts used and by the packages that must be bought.

use alloc::string::String;
use alloc::vec::Vec;

use rust_decimal::Decimal;

use super::money::{scaled, whole_packages};
use super::number::{float, minus, packages_of};
use super::{CostError, Money};
use crate::check::is_positive;
use crate::material::{Material, Property};
use crate::mix::{Materials, Mix, MixError};
use crate::price::{Currency, Price};
use crate::quantity::{Dimension, Mass, System, Volume};

/// So much of a material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Used<'a> {
    /// The material.
    pub material: &'a Material,
    /// How much of it.
    pub mass: Mass,
}

impl<'a> Used<'a> {
    /// All that is in a mix.
    ///
    /// # Errors
    /// A material of the mix is not in the table.
    pub fn of_mix(mix: &Mix, materials: &'a Materials) -> Result<Vec<Self>, MixError> {
        let mut used = Vec::with_capacity(mix.portions().len());
        for portion in mix.portions() {
            used.push(Self { material: materials.get(portion.material)?, mass: portion.mass });
        }
        Ok(used)
    }

    /// The price of that much: mass times price per package over what a package holds. Household words in prices
    /// are those of `system`.
    ///
    /// # Errors
    /// A missing price or density; a package or mass that cannot be.
    pub fn cost(&self, system: System) -> Result<Money, CostError> {
        let package = package(self.material, system)?;
        package.cost(packages_of(self.mass, package.mass, USED)?)
    }
}

/// Cost of one material.
#[derive(Debug, Clone, PartialEq)]
pub struct MaterialLine {
    /// Which.
    pub material: String,
    /// How much of it is used.
    pub mass: Mass,
    /// The price of that much.
    pub cost: Money,
    /// Whole packages that hold it.
    pub packages: u64,
    /// Their cost.
    pub to_buy: Money,
    /// The amount left of them.
    pub left: Mass,
}

/// Cost of all materials.
#[derive(Debug, Clone, PartialEq)]
pub struct MaterialCosts {
    /// Each, in the order in which they were given.
    pub lines: Vec<MaterialLine>,
    /// All that is used.
    pub used: Money,
    /// All packages that hold it, as if there were no stock.
    pub to_buy: Money,
}

/// How errors call a mass that is too large for its package.
const USED: &str = "The mass of a material, in packages,";

/// A material's package: its price, and what it holds.
pub(super) struct Package<'a> {
    price: &'a Price,
    pub(super) mass: Mass,
}

impl Package<'_> {
    /// The price of a number of them.
    fn cost(&self, packages: Decimal) -> Result<Money, CostError> {
        scaled(self.price.money, packages, Decimal::ONE, self.price.currency)
    }
}

/// The package of a material, its mass by the density as scooped for a powder sold by volume, by the true
/// density for a liquid.
pub(super) fn package(material: &Material, system: System) -> Result<Package<'_>, CostError> {
    let purpose = "calculating its cost";
    let price = material.price.as_ref().ok_or_else(|| crate::material::MaterialError::Missing {
        material: material.name.clone(),
        property: Property::Price,
        purpose,
    })?;
    let mass = match price.per.dimension() {
        Dimension::MASS => price.per.to::<Mass>(system)?,
        Dimension::VOLUME => {
            price.per.to::<Volume>(system)? * material.by_volume(purpose)?.density()
        }
        _ => {
            let name = material.name.clone();
            return Err(CostError::WrongPackage { name, wanted: "mass or volume, such as 1 gal" });
        }
    };
    if !is_positive(mass.value) {
        return Err(CostError::EmptyPackage { name: material.name.clone() });
    }
    Ok(Package { price, mass })
}

impl MaterialCosts {
    /// Cost of `used`: each material's mass times its price per package over what a package holds. Household
    /// words in prices are those of `system`.
    ///
    /// # Errors
    /// [`CostError::NothingUsed`]; [`CostError::Twice`]; [`CostError::MixedCurrencies`]; a missing price or
    /// density; a package or mass that cannot be.
    pub fn new(used: &[Used<'_>], system: System) -> Result<Self, CostError> {
        let mut lines: Vec<MaterialLine> = Vec::with_capacity(used.len());
        let mut sums: Option<(Money, Money)> = None;
        for used in used {
            let line = line(used, system)?;
            if lines.iter().any(|other| other.material == line.material) {
                return Err(CostError::Twice { material: line.material });
            }
            sums = Some(match sums {
                None => (line.cost, line.to_buy),
                Some((cost, to_buy)) => (cost.plus(line.cost)?, to_buy.plus(line.to_buy)?),
            });
            lines.push(line);
        }
        let (used, to_buy) = sums.ok_or(CostError::NothingUsed)?;
        Ok(Self { lines, used, to_buy })
    }

    /// The currency of all of them.
    #[must_use]
    pub fn currency(&self) -> Currency {
        self.used.currency()
    }

    /// Mass of all of them.
    #[must_use]
    pub fn mass(&self) -> Mass {
        self.lines.iter().fold(Mass::default(), |sum, line| sum + line.mass)
    }
}

fn line(used: &Used<'_>, system: System) -> Result<MaterialLine, CostError> {
    let package = package(used.material, system)?;
    let needed = packages_of(used.mass, package.mass, USED)?;
    let packages = whole_packages(needed)?;
    let bought = Decimal::from(packages);
    Ok(MaterialLine {
        material: used.material.name.clone(),
        mass: used.mass,
        cost: package.cost(needed)?,
        packages,
        to_buy: package.cost(bought)?,
        left: package.mass * float(minus(bought, needed, USED)?),
    })
}

#[cfg(test)]
pub(super) mod tests {
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;

    use super::*;
    use crate::fault::Diagnose;
    use crate::material::Kind;
    use crate::quantity::{MassDensity, Measured};

    pub(in crate::cost) fn material(name: &str, kind: Kind, price: &str) -> Material {
        let density = |x| Some(Measured::exact(MassDensity::new::<gram_per_cubic_centimeter>(x)));
        Material {
            density: density(if kind == Kind::Salt { 2.165 } else { 1.03 }),
            as_scooped: if kind == Kind::Salt { density(1.22) } else { None },
            price: Some(price.parse().unwrap()),
            ..Material::new(name, kind)
        }
    }

    fn costs(list: &[(&Material, f64)]) -> Result<MaterialCosts, CostError> {
        let used: Vec<Used<'_>> = list
            .iter()
            .map(|&(material, mass)| Used { material, mass: Mass::new::<gram>(mass) })
            .collect();
        MaterialCosts::new(&used, System::UsCustomary)
    }

    #[test]
    fn by_hand() {
        // A gallon of 1.03 g/mL is 3898.9741 g: 974.743525 g are a quarter of it, 14.50 of 58.
        let base = material("base", Kind::Plastisol, "58.00 USD per 1 gal");
        let salt = material("salt", Kind::Salt, "9.00 USD per 10 kg");
        let got = costs(&[(&base, 974.743_525), (&salt, 100.0)]).unwrap();
        assert_eq!(got.used.rounded().to_string(), "14.59 USD");
        assert_eq!(got.lines[0].cost.rounded().to_string(), "14.50 USD");
        assert_eq!(got.lines[1].cost.to_string(), "0.09 USD");
        assert_eq!((got.lines[0].packages, got.to_buy.to_string()), (1, "67 USD".into()));
        assert!((got.lines[1].left.get::<gram>() - 9900.0).abs() < 1e-9);
    }

    #[test]
    fn a_powder_sold_by_volume_is_scooped() {
        // A cup of 236.5882365 mL holds 288.6376 g at 1.22 g/mL as scooped, not 512.2 g.
        let salt = material("salt", Kind::Salt, "1.00 USD per 1 cup");
        let got = costs(&[(&salt, 288.6376)]).unwrap();
        assert_eq!(got.used.rounded().to_string(), "1.00 USD");
    }

    #[test]
    fn whole_packages_are_counted_up() {
        let base = material("base", Kind::Plastisol, "10.00 USD per 1 kg");
        for (grams, packages) in [(0.0, 0), (1000.0, 1), (1000.0001, 2), (1_000.000_000_4, 1)] {
            assert_eq!(costs(&[(&base, grams)]).unwrap().lines[0].packages, packages, "{grams}");
        }
    }

    /// n packages are n packages, however their masses round: gallons, quarts and pounds have no end in grams.
    #[rstest]
    #[case("58.00 USD per 1 gal", 3_785.411_784 * 1.03, 58)]
    #[case("58.00 USD per 1 qt", 946.352_946 * 1.03, 58)]
    #[case("21.00 USD per 1 lb", 453.592_37, 21)]
    #[case("21.00 USD per 1 oz weight", 28.349_523_125, 21)]
    fn so_many_packages_are_that_many(
        #[case] price: &str,
        #[case] package: f64,
        #[case] money: u64,
    ) {
        let base = material("base", Kind::Plastisol, price);
        for count in 0..400 {
            let got = costs(&[(&base, count as f64 * package)]).unwrap();
            assert_eq!(got.lines[0].packages, count, "{count} × {price}");
            assert_eq!(got.used.amount(), Decimal::from(count * money), "{count} × {price}");
            assert_eq!((got.used, got.lines[0].left), (got.to_buy, Mass::default()));
        }
    }

    #[rstest]
    #[case("5 EUR per 1 kg", 1.0, "cost-mixed-currencies")]
    #[case("5 USD per 1 piece", 1.0, "cost-wrong-package")]
    #[case("5 USD per 0 g", 1.0, "cost-empty-package")]
    #[case("5 USD per 1 kg", -1.0, "cost-negative")]
    #[case("5 USD per 1 kg", f64::NAN, "cost-out-of-range")]
    fn refuses(#[case] price: &str, #[case] grams: f64, #[case] code: &str) {
        let base = material("base", Kind::Plastisol, "58.00 USD per 1 gal");
        let other = material("other", Kind::Softener, price);
        assert_eq!(costs(&[(&base, 1.0), (&other, grams)]).unwrap_err().code(), code);
    }

    #[test]
    fn refuses_nothing_twice_and_without_a_price() {
        let base = material("base", Kind::Plastisol, "58.00 USD per 1 gal");
        assert_eq!(costs(&[]).unwrap_err().code(), "cost-nothing-used");
        let twice = costs(&[(&base, 1.0), (&base, 1.0)]).unwrap_err();
        assert_eq!(twice.code(), "cost-material-twice");
        let free = Material { price: None, ..base };
        assert_eq!(costs(&[(&free, 1.0)]).unwrap_err().code(), "missing-property");
    }
}

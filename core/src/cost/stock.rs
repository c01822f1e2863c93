//! Stock: how much of it a day uses, and what runs short first.

use alloc::string::String;
use alloc::vec::Vec;
use core::cmp::Ordering;

use super::CostError;
use super::materials::package;
use super::money::whole_packages;
use super::number::{grams, mass_of, minus, packages_of};
use crate::material::Material;
use crate::quantity::{Mass, System};

/// The stock of a material, and the amount that a day uses.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StockNeed<'a> {
    /// The material.
    pub material: &'a Material,
    /// On hand.
    pub held: Mass,
    /// The amount that a day uses.
    pub used: Mass,
}

/// A material's stock after a day.
#[derive(Debug, Clone, PartialEq)]
pub struct StockLine {
    /// Which.
    pub material: String,
    /// The amount that the day uses.
    pub used: Mass,
    /// The amount left after it; none if it runs short.
    pub left: Mass,
    /// The amount missing.
    pub short: Mass,
    /// For how many such days the stock lasts; `None` for a material that the day does not take.
    pub days: Option<f64>,
    /// Packages to buy for what is missing; `None` where something is missing and the book states no price.
    pub packages: Option<u64>,
}

/// The stock after a day, in order of need: what lasts for the fewest days first, then by name.
///
/// # Errors
/// A mass that is negative or no number; a package that cannot be.
pub fn stock(needs: &[StockNeed<'_>], system: System) -> Result<Vec<StockLine>, CostError> {
    let mut lines = Vec::with_capacity(needs.len());
    for need in needs {
        lines.push(StockLine::of(need, system)?);
    }
    lines.sort_by(StockLine::in_order_of_need);
    Ok(lines)
}

impl StockLine {
    /// Stock of one material after a day.
    ///
    /// # Errors
    /// A mass that is negative or no number; a package that cannot be.
    pub fn of(need: &StockNeed<'_>, system: System) -> Result<Self, CostError> {
        let held = grams(need.held, "The mass in stock")?;
        let used = grams(need.used, "The mass that a day takes")?;
        let left = minus(held, used, "The mass in stock")?;
        let short = if left.is_sign_negative() { left.abs() } else { rust_decimal::Decimal::ZERO };
        let packages = if short.is_zero() {
            Some(0)
        } else if need.material.price.is_some() {
            let package = package(need.material, system)?;
            let missing = packages_of(need.used - need.held, package.mass, "What is missing")?;
            Some(whole_packages(missing)?)
        } else {
            None
        };
        Ok(Self {
            material: need.material.name.clone(),
            used: need.used,
            left: mass_of(left.max(rust_decimal::Decimal::ZERO)),
            short: mass_of(short),
            days: (!used.is_zero()).then(|| (need.held / need.used).value),
            packages,
        })
    }

    /// Which of two comes first: the one that lasts for fewer days, then by name.
    #[must_use]
    pub fn in_order_of_need(&self, other: &Self) -> Ordering {
        let days = |line: &Self| line.days.unwrap_or(f64::INFINITY);
        days(self).total_cmp(&days(other)).then_with(|| self.material.cmp(&other.material))
    }
}

#[cfg(test)]
mod tests {
    use uom::si::mass::gram;

    use super::super::materials::tests::material;
    use super::*;
    use crate::fault::Diagnose;
    use crate::material::Kind;

    #[test]
    fn what_runs_out_first_comes_first() {
        let g = Mass::new::<gram>;
        let of = |name| material(name, Kind::Softener, "5 USD per 1 kg");
        let (plenty, scarce, gone, idle) = (of("plenty"), of("scarce"), of("gone"), of("idle"));
        let free = Material { price: None, ..of("free") };
        let needs = [
            StockNeed { material: &idle, held: g(0.0), used: g(0.0) },
            StockNeed { material: &plenty, held: g(1000.0), used: g(10.0) },
            StockNeed { material: &scarce, held: g(100.0), used: g(2200.0) },
            StockNeed { material: &gone, held: g(0.0), used: g(1.0) },
            StockNeed { material: &free, held: g(1.0), used: g(2.0) },
        ];
        let got = stock(&needs, System::Metric).unwrap();
        let names: Vec<_> = got.iter().map(|line| line.material.as_str()).collect();
        assert_eq!(names, ["gone", "scarce", "free", "plenty", "idle"]);
        assert!((got[1].short.get::<gram>() - 2100.0).abs() < 1e-9);
        assert_eq!((got[1].left, got[1].packages), (Mass::default(), Some(3)));
        assert_eq!((got[2].packages, got[4].days), (None, None));
        assert_eq!((got[3].packages, got[3].days), (Some(0), Some(100.0)));
    }

    /// A shortage of whole packages is that number to buy, however their masses round.
    #[test]
    fn whole_packages_are_missing() {
        let base = material("base", Kind::Plastisol, "58.00 USD per 1 gal");
        let gallon = Mass::new::<gram>(3_785.411_784 * 1.03);
        for short in 1_u32..400 {
            let need = StockNeed {
                material: &base,
                held: gallon * 2.0,
                used: gallon * f64::from(short + 2),
            };
            let got = stock(&[need], System::UsCustomary).unwrap();
            assert_eq!(got[0].packages, Some(u64::from(short)));
        }
    }

    #[test]
    fn refuses_a_stock_below_nothing() {
        let salt = material("salt", Kind::Salt, "5 USD per 1 kg");
        let need =
            StockNeed { material: &salt, held: Mass::new::<gram>(-1.0), used: Mass::default() };
        assert_eq!(stock(&[need], System::Metric).unwrap_err().code(), "cost-negative");
    }
}

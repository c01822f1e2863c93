//! Cost of a job: a pot, an order or a day, with packing and work, and the price to ask for it.

use rust_decimal::Decimal;

use super::materials::{MaterialCosts, Used};
use super::money::scaled;
use super::number::{decimal, grams, minus, plus, share, times};
use super::{CostError, Money};
use crate::check::is_share;
use crate::price::Price;
use crate::quantity::{Dimension, Mass, Ratio, System, Time};

/// An item that goes into each pack: a bag, a card, a label.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Packing<'a> {
    /// Its name.
    pub name: &'a str,
    /// Its price per number of pieces, such as `9.00 USD per 100 pieces`.
    pub price: &'a Price,
    /// How many of it a pack takes.
    pub per_pack: u32,
}

/// Work at a rate.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Labor<'a> {
    /// How long.
    pub time: Time,
    /// Its rate: a price per time, such as `18.00 USD per 1 h`.
    pub rate: &'a Price,
}

/// A job: what is used, made, packed and worked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Job<'a> {
    /// Materials that are used, each once.
    pub used: &'a [Used<'a>],
    /// The amount of them that comes back: sprue that is melted again, leftover that is kept.
    pub returned: Mass,
    /// Its worth as a share of its material cost, 0 to 1.
    pub worth: Ratio,
    /// How many good pieces are made, at least one.
    pub pieces: u32,
    /// How many packs they go into, at least one and at most as many as pieces.
    pub packs: u32,
    /// The items of each pack.
    pub packing: &'a [Packing<'a>],
    /// The work.
    pub work: Option<Labor<'a>>,
}

/// Cost of a job. `total` = `materials.used` − `credit` + `packing` + `work`, exactly.
#[derive(Debug, Clone, PartialEq)]
pub struct JobCost {
    /// Materials.
    pub materials: MaterialCosts,
    /// Worth of what comes back: its share of the mass, of the material cost, times its worth.
    pub credit: Money,
    /// Packing.
    pub packing: Money,
    /// Work.
    pub work: Money,
    /// All of it.
    pub total: Money,
    /// Of one piece.
    pub per_piece: Money,
    /// Of one pack.
    pub per_pack: Money,
}

impl Job<'_> {
    /// Its cost. Household words in prices are those of `system`.
    ///
    /// # Errors
    /// As [`MaterialCosts::new`]; prices of packing not per pieces or of work not per time; no piece or pack;
    /// more packs than
    /// pieces; more returned than used; a worth outside 0 to 1.
    pub fn cost(&self, system: System) -> Result<JobCost, CostError> {
        if self.pieces == 0 {
            return Err(CostError::Nothing { what: "piece" });
        }
        self.check_packs()?;
        let materials = MaterialCosts::new(self.used, system)?;
        let credit = self.credit(&materials)?;
        let nothing = Money::zero(materials.currency());
        let packing = self
            .packing
            .iter()
            .try_fold(nothing, |sum, packing| sum.plus(packing.cost(self.packs)?))?;
        let work = match &self.work {
            Some(work) => nothing.plus(work.cost(system)?)?,
            None => nothing,
        };
        let total = materials.used.minus(credit)?.plus(packing)?.plus(work)?;
        let of = |count: u32| total.scaled(Decimal::ONE, Decimal::from(count));
        let (per_piece, per_pack) = (of(self.pieces)?, of(self.packs)?);
        Ok(JobCost { materials, credit, packing, work, total, per_piece, per_pack })
    }

    /// Whether each pack gets at least one piece: else a pack would cost less than a piece.
    pub(crate) fn check_packs(&self) -> Result<(), CostError> {
        if self.packs == 0 {
            return Err(CostError::Nothing { what: "pack" });
        }
        if self.packs > self.pieces {
            return Err(CostError::EmptyPacks { pieces: self.pieces, packs: self.packs });
        }
        Ok(())
    }

    fn credit(&self, materials: &MaterialCosts) -> Result<Money, CostError> {
        let (returned, used) = (self.returned, materials.mass());
        if !is_share(self.worth.value) {
            return Err(CostError::Share {
                what: "The worth of what comes back",
                share: self.worth.value,
            });
        }
        let back = grams(returned, "The mass that comes back")?;
        if back.is_zero() {
            return Ok(Money::zero(materials.currency()));
        }
        let all = grams(used, "The mass of all materials")?;
        if back > all {
            return Err(CostError::ReturnedTooMuch { returned, used });
        }
        let worth = share(self.worth, "The worth of what comes back")?;
        materials.used.scaled(times(back, worth, "The mass that comes back")?, all)
    }
}

impl Packing<'_> {
    /// Its cost for a number of packs.
    ///
    /// # Errors
    /// A price that is not per pieces; [`CostError::EmptyPackage`]; [`CostError::OutOfRange`].
    pub fn cost(&self, packs: u32) -> Result<Money, CostError> {
        let Some(per) = self.price.per.pieces() else {
            let name = self.name.into();
            return Err(CostError::WrongPackage { name, wanted: "pieces, such as 100 pieces" });
        };
        let per = decimal(per.to_f64(), 0, "The number of pieces in a package")?;
        if per.is_zero() {
            return Err(CostError::EmptyPackage { name: self.name.into() });
        }
        let count = u64::from(packs).saturating_mul(u64::from(self.per_pack));
        scaled(self.price.money, Decimal::from(count), per, self.price.currency)
    }
}

impl Labor<'_> {
    /// Its cost.
    ///
    /// # Errors
    /// A rate that is not per time; [`CostError::EmptyPackage`]; [`CostError::OutOfRange`].
    pub fn cost(&self, system: System) -> Result<Money, CostError> {
        if self.rate.per.dimension() != Dimension::TIME {
            return Err(CostError::WrongPackage {
                name: "work".into(),
                wanted: "time, such as 1 h",
            });
        }
        // Milliseconds: finer than any clock of a workshop.
        let time = decimal(self.time.value, 3, "The time of work")?;
        let per = decimal(self.rate.per.to::<Time>(system)?.value, 3, "The time of a rate")?;
        if per.is_zero() {
            return Err(CostError::EmptyPackage { name: "work".into() });
        }
        scaled(self.rate.money, time, per, self.rate.currency)
    }
}

/// Profit on a cost. The two are different shares: a markup of 100 % is a margin of 50 %.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Profit {
    /// A share of the price, 0 to below 1: price = cost/(1 − margin).
    Margin(Ratio),
    /// A share of the cost, 0 or more: price = cost·(1 + markup).
    Markup(Ratio),
}

impl Profit {
    /// The price of what costs `cost`, rounded up to the minor unit, so that the profit is never missed.
    ///
    /// # Errors
    /// [`CostError::Margin`] outside 0 to below 1; [`CostError::Negative`] for a markup below 0;
    /// [`CostError::OutOfRange`].
    pub fn price(self, cost: Money) -> Result<Money, CostError> {
        let price = match self {
            Self::Margin(margin) => {
                let what = "The margin";
                let rest = share(margin, what).and_then(|kept| minus(Decimal::ONE, kept, what));
                let rest = rest.ok().filter(|rest| *rest > Decimal::ZERO);
                let rest = rest.ok_or(CostError::Margin { margin: margin.value })?;
                up(cost, Decimal::ONE, rest)?
            }
            Self::Markup(markup) => {
                let what = "The markup";
                up(cost, plus(Decimal::ONE, share(markup, what)?, what)?, Decimal::ONE)?
            }
        };
        Ok(price.rounded_up())
    }
}

/// cost · factor / divisor; a part below the last step that money keeps still counts upward.
fn up(cost: Money, factor: Decimal, divisor: Decimal) -> Result<Money, CostError> {
    let near = cost.scaled(factor, divisor)?;
    let what = "A price";
    let kept = times(near.amount(), divisor, what)?;
    let owed = times(cost.amount(), factor, what)?;
    let step = if kept < owed { Decimal::new(1, 6) } else { Decimal::ZERO };
    near.plus(Money::new(step, cost.currency())?)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use std::vec::Vec;
    use uom::si::mass::gram;
    use uom::si::time::minute;

    use super::super::materials::tests::material;
    use super::*;
    use crate::fault::Diagnose;
    use crate::material::Kind;
    use crate::quantity::Measurable;

    fn usd(text: &str) -> Money {
        Money::new(Decimal::from_str_exact(text).unwrap(), "USD".parse().unwrap()).unwrap()
    }

    fn price(text: &str) -> Price {
        text.parse().unwrap()
    }

    #[test]
    fn a_job_by_hand() {
        let base = material("base", Kind::Plastisol, "20.00 USD per 1 kg");
        let used = [Used { material: &base, mass: Mass::new::<gram>(500.0) }];
        let (bag, label, rate) = (
            price("9.00 USD per 100 pieces"),
            price("3.00 USD per 50 pieces"),
            price("18.00 USD per 1 h"),
        );
        let packing = [
            Packing { name: "bag", price: &bag, per_pack: 1 },
            Packing { name: "label", price: &label, per_pack: 2 },
        ];
        let job = Job {
            used: &used,
            returned: Mass::new::<gram>(100.0),
            worth: Ratio::from(0.5),
            pieces: 40,
            packs: 5,
            packing: &packing,
            work: Some(Labor { time: Time::new::<minute>(25.0), rate: &rate }),
        };
        let got = job.cost(System::UsCustomary).unwrap();
        // 10.00 of material, 100/500 of it comes back at half: 1.00; 5 · (0.09 + 0.12) = 1.05; 7.50 of work.
        let parts = [got.materials.used, got.credit, got.packing, got.work, got.total];
        let parts: Vec<_> = parts.iter().map(|part| part.rounded().to_string()).collect();
        assert_eq!(parts, ["10.00 USD", "1.00 USD", "1.05 USD", "7.50 USD", "17.55 USD"]);
        assert_eq!(got.per_piece.to_string(), "0.43875 USD");
        assert_eq!(got.per_pack.rounded().to_string(), "3.51 USD");
        // All of it may come back.
        let all = Job { returned: Mass::new::<gram>(500.0), worth: Ratio::from(1.0), ..job };
        let got = all.cost(System::UsCustomary).unwrap();
        assert_eq!(got.credit, got.materials.used);
    }

    /// Work of 1.6 ms and a rate per 1.6 ms count as 2 ms; 2.6 pieces a package as 3.
    #[test]
    fn time_is_in_milliseconds_and_packages_in_whole_pieces() {
        let cost = |seconds: f64, rate: &str| {
            let labor = Labor { time: Time::from_si(seconds), rate: &price(rate) };
            labor.cost(System::Metric).unwrap().to_string()
        };
        assert_eq!(cost(0.0016, "1 USD per 1 s"), "0.002 USD");
        assert_eq!(cost(1.0, "1 USD per 0.0016 s"), "500 USD");
        let packing = Packing { name: "bag", price: &price("9 USD per 2.6 pieces"), per_pack: 1 };
        assert_eq!(packing.cost(1).unwrap().to_string(), "3 USD");
    }

    #[test]
    fn refuses() {
        let base = material("base", Kind::Plastisol, "20.00 USD per 1 kg");
        let used = [Used { material: &base, mass: Mass::new::<gram>(500.0) }];
        let job = Job {
            used: &used,
            returned: Mass::default(),
            worth: Ratio::from(1.0),
            pieces: 40,
            packs: 5,
            packing: &[],
            work: None,
        };
        let code = |job: Job<'_>| job.cost(System::UsCustomary).unwrap_err().code();
        assert_eq!(code(Job { pieces: 0, ..job }), "cost-nothing-made");
        assert_eq!(code(Job { packs: 0, ..job }), "cost-nothing-made");
        assert_eq!(code(Job { packs: 41, ..job }), "cost-empty-packs");
        assert_eq!(code(Job { worth: Ratio::from(1.1), ..job }), "cost-share-out-of-range");
        let more = Mass::new::<gram>(501.0);
        assert_eq!(code(Job { returned: more, ..job }), "cost-returned-too-much");
        let by_mass = price("9 USD per 100 g");
        let wrong = [Packing { name: "bag", price: &by_mass, per_pack: 1 }];
        assert_eq!(code(Job { packing: &wrong, ..job }), "cost-wrong-package");
        let euros = price("9 EUR per 1 h");
        for (rate, expected) in
            [(&by_mass, "cost-wrong-package"), (&euros, "cost-mixed-currencies")]
        {
            let work = Some(Labor { time: Time::new::<minute>(1.0), rate });
            assert_eq!(code(Job { work, ..job }), expected);
        }
    }

    #[rstest]
    #[case(Profit::Margin(Ratio::from(0.5)), "10", "20.00 USD")]
    #[case(Profit::Markup(Ratio::from(0.5)), "10", "15.00 USD")]
    #[case(Profit::Markup(Ratio::from(1.0)), "10", "20.00 USD")]
    // 10/0.7 = 14.285714…
    #[case(Profit::Margin(Ratio::from(0.3)), "10", "14.29 USD")]
    #[case(Profit::Margin(Ratio::from(0.0)), "10.001", "10.01 USD")]
    // 0.01 · 1.000000001: below the last step that money keeps, and still above 0.01.
    #[case(Profit::Markup(Ratio::from(1e-9)), "0.01", "0.02 USD")]
    fn margin_and_markup_are_two_things(
        #[case] profit: Profit,
        #[case] cost: &str,
        #[case] expected: &str,
    ) {
        assert_eq!(profit.price(usd(cost)).unwrap().to_string(), expected);
    }

    #[rstest]
    #[case(Profit::Margin(Ratio::from(1.0)), "cost-margin")]
    #[case(Profit::Margin(Ratio::from(-0.1)), "cost-margin")]
    #[case(Profit::Margin(Ratio::from(f64::NAN)), "cost-margin")]
    #[case(Profit::Markup(Ratio::from(-0.1)), "cost-negative")]
    #[case(Profit::Markup(Ratio::from(f64::NAN)), "cost-out-of-range")]
    fn refuses_a_profit_that_is_none(#[case] profit: Profit, #[case] code: &str) {
        assert_eq!(profit.price(usd("10")).unwrap_err().code(), code);
    }

    proptest! {
        #[test]
        fn a_price_never_misses_its_margin(cents in 1_i64..100_000_000, margin in 0_u32..95) {
            let cost = Money::new(Decimal::new(cents, 3), "USD".parse().unwrap()).unwrap();
            let share = Decimal::new(i64::from(margin), 2);
            let price = Profit::Margin(Ratio::from(f64::from(margin) / 100.0)).price(cost).unwrap();
            prop_assert!(price.amount() * (Decimal::ONE - share) >= cost.amount());
            let less = price.amount() - Decimal::new(1, 2);
            prop_assert!(less * (Decimal::ONE - share) < cost.amount());
        }
    }
}

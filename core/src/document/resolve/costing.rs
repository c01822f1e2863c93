//! How a shop calculates its costs, checked: all prices in one currency, each per what it must be.

use super::Resolver;
use crate::codes::code;
use crate::cost::{CostError, Costing, Labor, PackItem, Profit, WorkTimes};
use crate::document::costing::{CostingEntry, PackingEntry};
use crate::document::written::{Percent, Written};
use crate::json::path::Path::{self, At};
use crate::mix::Materials;
use crate::price::{Currency, Price};
use crate::quantity::{Ratio, Time};

const AT: Path<'static> = At("/costing");

impl Resolver {
    pub(super) fn costing(
        &mut self,
        entry: &CostingEntry,
        materials: &Materials,
    ) -> Option<Costing> {
        let packing = entry.packing.as_deref().unwrap_or_default();
        let packing = self.each(&AT.key("packing"), packing, Self::pack_item);
        let work = self.work(entry);
        let margin = entry.margin.map(Percent::share);
        self.check_below_one(&AT.key("margin"), margin);
        self.one_currency(entry, materials);
        Some(Costing {
            packing: packing?,
            work: work?,
            left_over_worth: Ratio::from(entry.left_over_worth.map_or(0.0, Percent::share)),
            profit: margin.map(|margin| Profit::Margin(Ratio::from(margin))),
        })
    }

    fn pack_item(&mut self, path: &Path<'_>, entry: &PackingEntry) -> Option<PackItem> {
        let per_pack = entry.per_pack.unwrap_or(1);
        let item = PackItem { name: entry.name.0.clone(), price: entry.price.0.clone(), per_pack };
        self.keep(&path.key("price"), item.packing().cost(1))?;
        Some(item)
    }

    /// The outer `None` where it is wrong.
    #[allow(clippy::option_option)] // no work and wrong work are two things
    fn work(&mut self, entry: &CostingEntry) -> Option<Option<WorkTimes>> {
        let mut time = |field: &str, written: Option<&Written<Time>>| -> Option<Time> {
            written.map_or(Some(Time::default()), |time| self.positive(&AT.key(field), time))
        };
        let per_pot = time("per_pot", entry.per_pot.as_ref());
        let per_heat = time("per_heat", entry.per_heat.as_ref());
        let per_shot = time("per_shot", entry.per_shot.as_ref());
        let per_pack = time("per_pack", entry.per_pack.as_ref());
        let times = [&entry.per_pot, &entry.per_heat, &entry.per_shot, &entry.per_pack];
        let timed = times.iter().any(|time| time.is_some());
        let Some(rate) = &entry.rate else {
            if timed {
                self.fault(
                    code!("missing-field"),
                    &AT.key("rate"),
                    &"\"rate\" is missing: the work has times and no price.",
                    &"Add \"rate\", such as \"18.00 USD per 1 h\", or leave out the times.",
                );
                return None;
            }
            return Some(None);
        };
        let work = Labor { time: Time::default(), rate: &rate.0 };
        self.keep(&AT.key("rate"), work.cost(self.system))?;
        let (per_pot, per_heat) = (per_pot?, per_heat?);
        let (per_shot, per_pack) = (per_shot?, per_pack?);
        Some(Some(WorkTimes { rate: rate.0.clone(), per_pot, per_heat, per_shot, per_pack }))
    }

    /// Costs add up in one currency: that of the first price; each that differs is a fault.
    fn one_currency(&mut self, entry: &CostingEntry, materials: &Materials) {
        let mut first = None;
        for (_, material) in materials.iter() {
            if let Some(price) = &material.price {
                let path = At("/materials").key(&material.name);
                self.in_currency(&mut first, &path.key("price"), price);
            }
        }
        for (index, item) in entry.packing.iter().flatten().enumerate() {
            let path = AT.key("packing");
            self.in_currency(&mut first, &path.index(index).key("price"), &item.price.0);
        }
        if let Some(rate) = &entry.rate {
            self.in_currency(&mut first, &AT.key("rate"), &rate.0);
        }
    }

    /// The fault that `price` is not in the currency of the `first` one, which it may be itself.
    fn in_currency(&mut self, first: &mut Option<Currency>, path: &Path<'_>, price: &Price) {
        let (expected, found) = (*first.get_or_insert(price.currency), price.currency);
        if found != expected {
            self.report(path, &CostError::MixedCurrencies { expected, found });
        }
    }
}

#[cfg(test)]
mod tests {
    use std::string::{String, ToString};
    use std::vec::Vec;

    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::document::book_from_text;
    use crate::document::small::BOOK;

    fn faults(costing: Value) -> Vec<(String, String)> {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        book["materials"]["clear"]["price"] = json!("58.00 USD per 1 gal");
        book["costing"] = costing;
        match book_from_text(&book.to_string()) {
            Ok(book) => {
                assert!(book.costing.is_some());
                Vec::new()
            }
            Err(faults) => {
                faults.iter().map(|fault| (fault.path.clone(), fault.code.to_string())).collect()
            }
        }
    }

    #[test]
    fn what_costing_takes_if_it_says_nothing() {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        book["costing"] =
            json!({ "packing": [{ "name": "bag", "price": "9.00 USD per 100 pieces" }] });
        let costing = book_from_text(&book.to_string()).unwrap().costing.unwrap();
        // One of each a pack, and left-overs that are worth nothing.
        assert_eq!((costing.packing[0].per_pack, costing.left_over_worth.value), (1, 0.0));
    }

    #[rstest]
    #[case(json!({}), &[])]
    #[case(json!({ "rate": "18.00 USD per 1 h", "per_shot": "40 s", "margin": "40 %" }), &[])]
    #[case(json!({ "per_shot": "40 s" }), &[("/costing/rate", "missing-field")])]
    #[case(json!({ "rate": "18.00 USD per 1 kg" }), &[("/costing/rate", "cost-wrong-package")])]
    #[case(json!({ "rate": "18.00 EUR per 1 h" }), &[("/costing/rate", "cost-mixed-currencies")])]
    #[case(json!({ "margin": "100 %" }), &[("/costing/margin", "out-of-range")])]
    #[case(
        json!({ "rate": "18.00 USD per 1 h", "per_pot": "0 min" }),
        &[("/costing/per_pot", "out-of-range")]
    )]
    #[case(
        json!({ "packing": [
            { "name": "bag", "price": "9.00 USD per 100 g" },
            { "name": "card", "price": "3.00 EUR per 50 pieces" },
        ] }),
        &[("/costing/packing/0/price", "cost-wrong-package"),
          ("/costing/packing/1/price", "cost-mixed-currencies")]
    )]
    // Twice as much as money counts.
    #[case(
        json!({ "packing": [{ "name": "bag", "price": "2000000000000000 USD per 1 pieces" }] }),
        &[("/costing/packing/0/price", "cost-out-of-range")]
    )]
    fn costing_is_checked(#[case] costing: Value, #[case] expected: &[(&str, &str)]) {
        let found = faults(costing);
        let found: Vec<(&str, &str)> =
            found.iter().map(|(path, code)| (path.as_str(), code.as_str())).collect();
        assert_eq!(found, expected);
    }
}

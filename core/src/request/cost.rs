//! Cost of an amount of a formula, and of the packs and pieces made of it.

use alloc::vec::Vec;

use super::formula::Wanted;
use super::{Open, request, response};
use crate::book::Book;
use crate::codes::code;
use crate::cost::{CostError, Job, JobCost, Labor, Money, Packing, Profit, Used};
use crate::document::book::{BookDocument, PriceText};
use crate::document::costing::PackingEntry;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::formula::Overlap;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::mix::Mix;
use crate::parameter::Parameter;
use crate::plan::{MaterialCost, MoneyShown};
use crate::quantity::{Amount, Mass, Time};

request! {
    /// Asks what an amount of one or more formulas costs.
    pub struct CostRequest {
        required {
            formulas: Vec<Name>,
        }
        optional {
            book: BookDocument,
            overlap: Overlap,
            base_amount: Amount,
            finished_amount: Amount,
            made: u32,
            packs: u32,
            packing: Vec<PackingEntry>,
            returned_mass: Written<Mass>,
            returned_worth: Share,
            work_time: Written<Time>,
            work_rate: PriceText,
            cost_margin: Share,
        }
    }
}

response! {
    /// Its cost. `total` is `materials` − `credit` + `packing` + `work`, exactly.
    pub struct CostResponse {
        /// Each material.
        pub lines: Vec<MaterialCost>,
        /// All materials, by what is used.
        pub materials: MoneyShown,
        /// Whole packages of all materials, as if there were no stock.
        pub to_buy: MoneyShown,
        /// Worth of the mix that comes back.
        pub credit: MoneyShown,
        /// Packing.
        pub packing: MoneyShown,
        /// Work.
        pub work: MoneyShown,
        /// All of it.
        pub total: MoneyShown,
        /// Of one pack.
        pub per_pack: MoneyShown,
        /// Of one piece.
        pub per_piece: MoneyShown,
        /// Price of a pack, for the margin that was stated.
        pub pack_price: Option<MoneyShown>,
    }
}

impl CostRequest {
    /// Adds up materials, packing and work.
    ///
    /// # Errors
    /// Faults of the book, unknown formulas, every missing price, prices in different currencies.
    pub fn answer(mut self, open: Open<'_>) -> Result<CostResponse, Faults> {
        let loaded = open.book(self.book.take())?;
        let book = loaded.ready();
        let mut resolver = Resolver::new(book.system);
        let wanted = Wanted {
            formulas: &self.formulas,
            overlap: self.overlap,
            base: self.base_amount,
            finished: self.finished_amount,
        };
        let response = wanted
            .mix(book, &mut resolver)
            .and_then(|(_, mix)| self.response(book, &mix, &mut resolver));
        resolver.finish(response)
    }

    fn response(&self, book: &Book, mix: &Mix, resolver: &mut Resolver) -> Option<CostResponse> {
        let used = resolver.keep(&Path::ROOT, Used::of_mix(mix, &book.materials))?;
        let returned = resolver.or_default(Parameter::ReturnedMass, self.returned_mass.as_ref());
        let work = self.work(resolver);
        let packing: Vec<Packing<'_>> = self
            .packing
            .iter()
            .flatten()
            .map(|entry| Packing {
                name: &entry.name.0,
                price: &entry.price.0,
                per_pack: entry.per_pack.unwrap_or(1),
            })
            .collect();
        let job = Job {
            used: &used,
            returned: returned?,
            worth: resolver.share(Parameter::ReturnedWorth, self.returned_worth)?,
            pieces: self.made.unwrap_or(1),
            packs: self.packs.unwrap_or(1),
            packing: &packing,
            work: work?,
        };
        let packs = resolver.keep(&At("/packs"), job.check_packs());
        if !prices(&used, resolver) {
            return None;
        }
        packs?;
        let cost = resolver.keep(&Path::ROOT, job.cost(book.system))?;
        let price = match self.cost_margin {
            Some(margin) => {
                let profit = Profit::Margin(resolver.share(Parameter::CostMargin, Some(margin))?);
                Some(resolver.keep(&At("/cost_margin"), profit.price(cost.per_pack))?)
            }
            None => None,
        };
        Some(respond(&cost, price))
    }

    /// The outer `None` where it is wrong.
    #[allow(clippy::option_option)] // no work and wrong work are two things
    fn work(&self, resolver: &mut Resolver) -> Option<Option<Labor<'_>>> {
        match (&self.work_time, &self.work_rate) {
            (None, _) => Some(None),
            (Some(time), Some(rate)) => {
                let time = resolver.given(Parameter::WorkTime, time)?;
                Some(Some(Labor { time, rate: &rate.0 }))
            }
            (Some(_), None) => {
                resolver.fault(
                    code!("missing-field"),
                    &At("/work_rate"),
                    &"\"rate\" is missing.",
                    &"Add \"rate\", such as \"18.00 USD per 1 h\", or leave out \"time\".",
                );
                None
            }
        }
    }
}

/// Whether all materials have a price; names all that have none, so that they can be mended at once.
fn prices(used: &[Used<'_>], resolver: &mut Resolver) -> bool {
    let missing = used.iter().filter(|used| used.material.price.is_none());
    let before = resolver.faults.len();
    for used in missing {
        let error = crate::material::MaterialError::Missing {
            material: used.material.name.clone(),
            property: crate::material::Property::Price,
            purpose: "calculating its cost",
        };
        let path = At("/book/materials").key(&used.material.name);
        resolver.report(&path, &CostError::from(error));
    }
    resolver.faults.len() == before
}

fn respond(cost: &JobCost, price: Option<Money>) -> CostResponse {
    CostResponse {
        lines: cost.materials.lines.iter().map(MaterialCost::from).collect(),
        materials: cost.materials.used.into(),
        to_buy: cost.materials.to_buy.into(),
        credit: cost.credit.into(),
        packing: cost.packing.into(),
        work: cost.work.into(),
        total: cost.total.into(),
        per_pack: cost.per_pack.into(),
        per_piece: cost.per_piece.into(),
        pack_price: price.map(MoneyShown::from),
    }
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;

    use serde_json::{Value, json};

    use crate::request::answer_value;

    fn request() -> Value {
        let book: Value =
            serde_json::from_str(include_str!("../../examples/demo/book.json")).unwrap();
        json!({
            "calculate": "cost", "book": book, "formulas": ["salted"], "base_amount": "1 gal",
            "made": 200, "packs": 20, "cost_margin": "50 %",
            "packing": [{ "name": "bag", "price": "9.00 USD per 100 pieces" }],
            "work_time": "1.5 h", "work_rate": "18.00 USD per 1 h",
        })
    }

    #[test]
    fn a_gallon_by_hand() {
        let answer = answer_value(&request());
        let result = &answer["result"];
        let text = |field: &str| result[field]["text"].as_str().unwrap_or_default();
        let amount = |value: &Value| -> f64 { value["amount"].as_str().unwrap().parse().unwrap() };
        // A gallon of base is its package: 58.00. Bags 20 · 0.09, work 1.5 · 18.
        let base = result["lines"]
            .as_array()
            .unwrap()
            .iter()
            .find(|line| line["material"] == "clear-base");
        assert!((amount(&base.unwrap()["cost"]) - 58.0).abs() < 1e-4, "{answer}");
        assert_eq!(
            (text("packing"), text("work"), text("credit")),
            ("1.80 USD", "27.00 USD", "0.00 USD")
        );
        let total = amount(&result["total"]);
        let lines = result["lines"].as_array().unwrap();
        let materials: f64 = lines.iter().map(|line| amount(&line["cost"])).sum();
        assert!((total - materials - 28.8).abs() < 1e-9);
        // Half of the price is kept: twice the cost, rounded up to a cent.
        let price = amount(&result["pack_price"]);
        assert!(price >= total / 10.0 && price < total / 10.0 + 0.010_001, "{price} {total}");
    }

    #[test]
    fn every_missing_price_is_named() {
        let mut request = request();
        for material in ["clear-base", "softener"] {
            request["book"]["materials"][material].as_object_mut().unwrap().remove("price");
        }
        let answer = answer_value(&request);
        let paths: Vec<_> =
            answer["faults"].as_array().unwrap().iter().map(|fault| &fault["path"]).collect();
        assert_eq!(paths, ["/book/materials/clear-base", "/book/materials/softener"], "{answer}");
    }

    /// A pack of less than a piece would cost less than one.
    #[test]
    fn a_pack_holds_a_piece() {
        let mut request = request();
        request["made"] = json!(5);
        request["packs"] = json!(6);
        let answer = answer_value(&request);
        assert_eq!(
            (&answer["faults"][0]["path"], &answer["faults"][0]["message"]),
            (
                &json!("/packs"),
                &json!("There are more packs than pieces to go into them: 6 and 5.")
            )
        );
        request["packs"] = json!(5);
        let result = &answer_value(&request)["result"];
        assert_eq!(result["per_pack"], result["per_piece"]);
    }

    #[test]
    fn currencies_are_not_mixed() {
        let mut request = request();
        request["work_rate"] = json!("18.00 EUR per 1 h");
        assert_eq!(answer_value(&request)["faults"][0]["code"], "cost-mixed-currencies");
        request.as_object_mut().unwrap().remove("work_rate");
        assert_eq!(answer_value(&request)["faults"][0]["path"], "/work_rate");
    }
}

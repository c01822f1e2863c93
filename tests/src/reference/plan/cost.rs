//! Stock and costs.

use std::collections::BTreeMap;

use serde_json::Value;

use super::super::cost::{Costing, line_costs};
use super::super::shop::{share, text};
use super::super::{amount, clock};
use super::{Check, list, pieces, value};

impl<'a> Check<'a> {
    /// What all pots take of a material, by the ways that their lists choose.
    pub(super) fn used(&self, material: &str) -> Vec<f64> {
        let of = |pot: &Value| -> f64 {
            let stages = list(&pot["stages"]).iter().flat_map(|stage| list(&stage["weigh"]));
            let rows = stages.filter(|row| row["material"] == material);
            rows.map(|row| value(&row["best"]["gives"])).sum()
        };
        list(&self.plan["pots"]).iter().map(of).collect()
    }

    /// Stock less what is used, what is scarcest first.
    pub(super) fn stock(&mut self, orders: &Value) {
        let stated = orders["stock"].as_object();
        let told = list(&self.plan["stock"]);
        self.object(told.len() == stated.map_or(0, serde_json::Map::len), || "stock".to_owned());
        let mut days = 0.0;
        for entry in told {
            let name = text(&entry["material"]);
            let at = format!("stock of {name}");
            let held = stated.and_then(|stock| stock.get(&name)).and_then(Value::as_str);
            let Some(held) = held.and_then(|held| self.grams_of(held, &name)) else {
                self.found.push(format!("{at}: the orders state none"));
                continue;
            };
            let by_pot = self.used(&name);
            let used: f64 = by_pot.iter().sum();
            self.shown_as(&format!("{at}, had"), &entry["had"], held);
            self.object((value(&entry["used"]) - used).abs() <= 1e-9 * (1.0 + used), || {
                format!("{at}: {} used, must be {used}", entry["used"])
            });
            // Sums of money and stock are to 0.1 mg.
            let (left, short) = (value(&entry["left"]), value(&entry["short"]));
            let right = (left - (held - used).max(0.0)).abs() < 1.01e-4
                && (short - (used - held).max(0.0)).abs() < 1.01e-4;
            self.object(right, || format!("{at}: {left} left, {short} short"));
            let mut rest = held;
            let out = by_pot.iter().position(|used| {
                rest -= used;
                rest < 0.0
            });
            let out = out.map_or(Value::Null, |pot| self.plan["pots"][pot]["pot"].clone());
            let out = if short > 0.0 { out } else { Value::Null };
            self.object(entry["runs_out_in"] == out, || format!("{at}: runs out in {out}"));
            let package = self.package(&name).map(|(_, grams)| grams);
            let packages = match package {
                Some(grams) if short > 0.0 => Value::from(((used - held) / grams).ceil() as u64),
                _ => Value::Null,
            };
            self.object(entry["packages"] == packages, || format!("{at}: {packages} to buy"));
            let lasts = if used > 0.0 { held / used } else { f64::INFINITY };
            self.object(lasts >= days, || format!("{at}: scarcer than what is before it"));
            days = lasts;
        }
    }

    /// Grams of an amount that stock or packages are stated in.
    pub(super) fn grams_of(&self, text: &str, material: &str) -> Option<f64> {
        let (number, unit) = amount::number(text)?;
        let gallon = |share: f64| {
            let cup = amount::household_ml("cup", self.shop.system)?;
            (self.shop.system == "us-customary").then_some(number * share * 16.0 * cup)
        };
        let ml = match unit {
            "lb" => return Some(number * 453.592_37),
            "oz wt" => return Some(number * 28.349_523_125),
            "g" | "kg" | "mg" | "oz av" => return amount::g(text),
            "gal" => gallon(1.0)?,
            "qt" => gallon(0.25)?,
            "pt" => gallon(0.125)?,
            _ => amount::ml(text, self.shop.system)?,
        };
        Some(ml * self.shop.materials.get(material)?.spoon_g_per_ml()?)
    }

    /// Price and grams of a package.
    pub(super) fn package(&self, material: &str) -> Option<(f64, f64)> {
        let price = self.shop.book["materials"][material]["price"].as_str()?;
        let (money, per) = price.split_once(" per ")?;
        Some((money.split(' ').next()?.parse().ok()?, self.grams_of(per, material)?))
    }

    /// The costs: sums of what is used at the prices of the book, shared by what each line takes.
    pub(super) fn costs(&mut self, orders: &Value) {
        let cost = &self.plan["cost"]["known"];
        if cost.is_null() {
            return;
        }
        let of = |money: &Value| text(&money["amount"]).parse::<f64>().unwrap_or(f64::NAN);
        let cents = |x: f64, y: f64| (x - y).abs() < 2e-6;
        let lines = list(&cost["lines"]);
        let ordered = list(&orders["lines"]);
        self.object(lines.len() == ordered.len(), || "costs of other lines".to_owned());
        let costing = &self.shop.book["costing"];
        let margin = share(&costing["margin"]);
        let mut asked = vec![0.0; ordered.len()];
        for (index, (line, order)) in lines.iter().zip(ordered).enumerate() {
            let at = format!("cost of line {index}");
            let total = of(&line["total"]);
            let sum = of(&line["materials"]) + of(&line["packing"]) + of(&line["work"]);
            self.object(cents(total, sum), || format!("{at}: {total}, must be {sum}"));
            let each = total / f64::from(pieces(order));
            self.object(cents(of(&line["per_piece"]), each), || format!("{at}: a piece is {each}"));
            let pack = order["packs"].as_f64().map(|packs| total / packs);
            let right = match pack {
                Some(pack) => cents(of(&line["per_pack"]), pack),
                None => line["per_pack"].is_null(),
            };
            self.object(right, || format!("{at}: a pack is {pack:?}"));
            if let Some(margin) = margin {
                let price = ((pack.unwrap_or(each) / (1.0 - margin) - 1e-5) * 100.0).ceil() / 100.0;
                self.object((of(&line["price"]) - price).abs() < 1e-6, || {
                    format!("{at}: a price of {price}")
                });
                let sold = order["packs"].as_f64().unwrap_or(f64::from(pieces(order)));
                asked[index] = price * sold;
            }
        }
        let mut seen = Vec::new();
        for line in ordered {
            if !seen.contains(&line["order"]) {
                seen.push(line["order"].clone());
            }
        }
        self.object(list(&cost["orders"]).len() == seen.len(), || "costs of orders".to_owned());
        for (entry, order) in list(&cost["orders"]).iter().zip(seen) {
            let its = |index: &usize| ordered[*index]["order"] == order;
            let places: Vec<usize> = (0..lines.len().min(ordered.len())).filter(its).collect();
            let total: f64 = places.iter().map(|place| of(&lines[*place]["total"])).sum();
            let price: f64 = places.iter().map(|place| asked[*place]).sum();
            let right = entry["order"] == order
                && cents(of(&entry["total"]), total)
                && (margin.is_none() || cents(of(&entry["price"]), price));
            self.object(right, || format!("cost of order {order}: {total}, for {price}"));
        }
        let (mut materials, mut to_buy) = (0.0, 0.0);
        let mut before = String::new();
        for used in list(&cost["used"]) {
            let name = text(&used["material"]);
            let at = format!("cost of {name}");
            self.object(before < name, || format!("{at}: after {before}"));
            before.clone_from(&name);
            let mass: f64 = self.used(&name).iter().sum();
            let got = value(&used["mass"]);
            self.object((got - mass).abs() <= 1e-9 * (1.0 + mass), || {
                format!("{at}: {got} g, must be {mass}")
            });
            let Some((price, grams)) = self.package(&name) else {
                self.found.push(format!("{at}: it has no price"));
                continue;
            };
            let cost = price * mass / grams;
            // Masses are taken to 0.1 mg.
            let bound = 1e-6 + 1e-4 * price / grams;
            self.object((of(&used["cost"]) - cost).abs() <= bound, || format!("{at}: {cost}"));
            let packages = (mass / grams - 1e-9).ceil();
            self.object(used["packages"].as_f64() == Some(packages), || {
                format!("{at}: {packages}")
            });
            self.object(cents(of(&used["to_buy"]), packages * price), || format!("{at}: to buy"));
            materials += of(&used["cost"]);
            to_buy += packages * price;
        }
        let sum = |key: &str| -> f64 { lines.iter().map(|line| of(&line[key])).sum() };
        let day = |key: &str| of(&cost[key]);
        let plastic = day("materials") + day("from_shelf") - day("credit");
        for (key, got, wanted) in [
            ("materials", day("materials"), materials),
            ("to buy", day("to_buy"), to_buy),
            ("packing", day("packing"), sum("packing")),
            ("work", day("work"), sum("work")),
            ("plastic", plastic, sum("materials")),
            ("total", day("total"), plastic + day("packing") + day("work")),
            ("lines", day("total"), sum("total")),
        ] {
            self.object(cents(got, wanted), || format!("costs, {key}: {got}, must be {wanted}"));
        }
        let shelf = orders["shelf"].is_null() && orders["pots"].is_null();
        self.object(!shelf || day("from_shelf") == 0.0, || "costs: no shelf".to_owned());
        if !shelf {
            return;
        }
        let Some(stated) = self.costing() else { return };
        let Some(wanted) = line_costs(self.shop, orders, self.plan, &stated) else { return };
        for (index, (line, wanted)) in lines.iter().zip(wanted).enumerate() {
            for (key, wanted) in [
                ("materials", wanted.materials),
                ("packing", wanted.packing),
                ("work", wanted.work),
            ] {
                let got = of(&line[key]);
                self.object((got - wanted).abs() < 1e-4, || {
                    format!("cost of line {index}, {key}: {got}, must be {wanted}")
                });
            }
        }
    }

    /// The costing of the book in plain numbers, where it has one in the units that are read here.
    pub(super) fn costing(&self) -> Option<Costing> {
        let costing = &self.shop.book["costing"];
        let seconds = |key: &str| clock::seconds(&costing[key]);
        let (rate, "1 h") = costing["rate"].as_str()?.split_once(" per ")? else { return None };
        let mut per_g = BTreeMap::new();
        for name in self.shop.materials.keys() {
            if let Some((price, grams)) = self.package(name) {
                per_g.insert(name.clone(), price / grams);
            }
        }
        let mut per_pack = 0.0;
        for item in list(&costing["packing"]) {
            let (money, per) = item["price"].as_str()?.split_once(" per ")?;
            let (count, "pieces") = amount::number(per)? else { return None };
            let money: f64 = money.split(' ').next()?.parse().ok()?;
            per_pack += money / count * item["per_pack"].as_f64().unwrap_or(1.0);
        }
        Some(Costing {
            per_g,
            per_s: rate.split(' ').next()?.parse::<f64>().ok()? / 3600.0,
            seconds: [
                seconds("per_pot")?,
                seconds("per_heat")?,
                seconds("per_shot")?,
                seconds("per_pack")?,
            ],
            per_pack,
            worth: share(&costing["left_over_worth"])?,
        })
    }
}

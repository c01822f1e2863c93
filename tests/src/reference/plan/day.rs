//! The time line, the parcels, the proof of the pots, the notes.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::super::clock;
use super::super::shop::{Recipe, text, whole};
use super::rest::{is_code, nth};
use super::{Check, list, pieces, recipe_of, value};

impl<'a> Check<'a> {
    /// The time line: one thing after the other, each for its time, and sums of them.
    pub(super) fn day_clock(&mut self) {
        let day = &self.plan["clock"]["known"];
        if day.is_null() {
            return;
        }
        let seconds = |key: &str| clock::seconds(&self.shop.book["costing"][key]);
        let (per_pot, per_heat) = (seconds("per_pot"), seconds("per_heat").unwrap_or(0.0));
        let pots = list(&self.plan["pots"]);
        let (mut now, mut heating, mut shooting) = (0.0, 0.0, 0.0);
        let mut shots: Vec<Shot> = Vec::new();
        let mut heats: BTreeMap<(String, u64), usize> = BTreeMap::new();
        for (index, span) in list(&day["spans"]).iter().enumerate() {
            let at = format!("span {index}");
            let begins = value(&span["begins"]);
            self.object((begins - now).abs() < 1e-6, || format!("{at}: {begins} s, not {now}"));
            let lasts = value(&span["lasts"]);
            now += lasts;
            let names: Vec<String> = list(&span["pots"]).iter().map(text).collect();
            let pot = pots.iter().find(|pot| names.first() == Some(&text(&pot["pot"])));
            let Some(stage) = pot.and_then(|pot| nth(&pot["stages"], &span["stage"])) else {
                self.found.push(format!("{at}: no such stage"));
                continue;
            };
            let stage_number = span["stage"].as_u64().unwrap_or(0);
            let key = (names.first().cloned().unwrap_or_default(), stage_number);
            let is_shot = span["doing"] == "shoot";
            let right = if is_shot {
                span["mold"].is_string() && span["shots"].is_u64()
            } else {
                span["mold"].is_null() && span["shots"].is_null()
            };
            self.object(right, || format!("{at}: {span}"));
            match span["doing"].as_str().unwrap_or_default() {
                "prepare" => {
                    let first = stage_number == 1 && !heats.contains_key(&key);
                    self.object(first, || format!("{at}: prepared too late"));
                    self.object(per_pot == Some(lasts), || format!("{at}: {lasts} s"));
                }
                doing @ ("heat" | "reheat") => {
                    let done = heats.entry(key).or_default();
                    self.object((doing == "heat") == (*done == 0), || format!("{at}: {doing}"));
                    let own = &stage["clock"]["known"][*done]["heating"]["known"];
                    *done += 1;
                    let first = &stage["heating"]["known"];
                    let table = if own.is_null() { first } else { own };
                    let wanted = value(&table["total"]).max(per_heat);
                    self.object((lasts - wanted).abs() < 1e-6, || {
                        format!("{at}: {lasts} s, must be {wanted}")
                    });
                    heating += lasts;
                }
                "shoot" => {
                    let every = clock::every(self.shop.book, &span["mold"]).unwrap_or(f64::NAN);
                    let count = span["shots"].as_u64().unwrap_or(0);
                    let wanted = every * count as f64;
                    self.object((lasts - wanted).abs() < 1e-6, || {
                        format!("{at}: {lasts} s, must be {wanted}")
                    });
                    shooting += lasts;
                    let of = list(&stage["draws"]).iter();
                    let known = of.filter(|draw| draw["mold"] == span["mold"]).count();
                    self.object(known > 0, || format!("{at}: not of its stage"));
                    let mold = text(&span["mold"]);
                    match shots.last_mut() {
                        Some(last)
                            if last.0 == names && last.1 == mold && last.2 == stage_number =>
                        {
                            last.3 += count;
                        }
                        _ => shots.push((names, mold, stage_number, count)),
                    }
                }
                other => self.found.push(format!("{at}: what is {other}?")),
            }
        }
        let mut wanted: Vec<Shot> = Vec::new();
        for work in list(&self.plan["work"]) {
            let names: Vec<String> =
                list(&work["from"]).iter().map(|from| text(&from["pot"])).collect();
            let (mold, count) = (text(&work["mold"]), work["shots"].as_u64().unwrap_or(0));
            let stage = work["from"][0]["stage"].as_u64().unwrap_or(0);
            match wanted.last_mut() {
                Some(last) if last.0 == names && last.1 == mold && last.2 == stage => {
                    last.3 += count;
                }
                _ => wanted.push((names, mold, stage, count)),
            }
        }
        self.object(shots == wanted, || format!("time for {shots:?}, work is {wanted:?}"));
        for (key, sum) in [("total", now), ("heating", heating), ("shooting", shooting)] {
            let got = value(&day[key]);
            self.object((got - sum).abs() < 1e-6, || format!("clock, {key}: {got}, must be {sum}"));
        }
        self.object(day["without_preparing"] == per_pot.is_none(), || "clock: prepared".to_owned());
        for ((name, stage), count) in heats {
            let pot = pots.iter().find(|pot| pot["pot"] == name.as_str());
            let of = pot.and_then(|pot| nth(&pot["stages"], &Value::from(stage)));
            let told = of.map_or(0, |of| whole(&of["heats"]) as usize);
            self.object(told == count, || format!("clock: {count} heats of pot {name}"));
        }
    }

    /// One parcel for each order, first what is due first.
    pub(super) fn parcels(&mut self, orders: &Value) {
        let lines = list(&orders["lines"]);
        let mut wanted: BTreeMap<String, Vec<usize>> = BTreeMap::new();
        for (index, line) in lines.iter().enumerate() {
            wanted.entry(text(&line["order"])).or_default().push(index);
        }
        let mut parcels: Vec<(bool, String, Vec<usize>, String)> = wanted
            .into_iter()
            .map(|(order, of)| {
                let days = of.iter().filter_map(|line| lines[*line]["promised"].as_str());
                let day = days.min().unwrap_or_default().to_owned();
                (day.is_empty(), day, of, order)
            })
            .collect();
        parcels.sort();
        let told = list(&self.plan["parcels"]);
        self.object(told.len() == parcels.len(), || format!("{} parcels", told.len()));
        let packing = list(&self.shop.book["costing"]["packing"]);
        for (parcel, (_, day, of, order)) in told.iter().zip(parcels) {
            let at = format!("parcel {order}");
            let due = if day.is_empty() { Value::Null } else { Value::from(day) };
            let places: Vec<usize> = of.iter().map(|line| line + 1).collect();
            let right = parcel["order"] == order.as_str()
                && parcel["promised"] == due
                && parcel["lines"] == Value::from(places);
            self.object(right, || format!("{at}: {parcel}"));
            let packs: u64 = of.iter().filter_map(|line| lines[*line]["packs"].as_u64()).sum();
            let takes: Vec<(String, u64)> = packing
                .iter()
                .map(|item| (text(&item["name"]), item["per_pack"].as_u64().unwrap_or(1) * packs))
                .filter(|item| item.1 > 0)
                .collect();
            let got: Vec<(String, u64)> = list(&parcel["takes"])
                .iter()
                .map(|item| (text(&item["name"]), item["count"].as_u64().unwrap_or(0)))
                .collect();
            self.object(got == takes, || format!("{at}: {got:?}, must be {takes:?}"));
            let net: f64 = of
                .iter()
                .map(|line| {
                    f64::from(pieces(&lines[*line])) * value(&self.plan["lines"][*line]["piece"])
                })
                .sum();
            self.shown_as(&format!("{at}, net"), &parcel["net"], net);
        }
    }

    /// The proof counts the pots that there are, and no more than them.
    pub(super) fn proof(&mut self) {
        let proof = &self.plan["proof"];
        if proof.is_null() {
            return;
        }
        let pots = list(&self.plan["pots"]);
        // A day that goes on counts the pots that it adds.
        let least = if self.there.is_empty() { pots.len() } else { 0 };
        let counted = whole(&proof["pots"]) as usize;
        self.object(proof["pots"].is_u64() && (least..=pots.len()).contains(&counted), || {
            format!("proof: {counted} of {} pots", pots.len())
        });
        let mut names = BTreeSet::new();
        for batch in pots.iter().flat_map(|pot| list(&pot["stages"])) {
            let formulas: Vec<String> = list(&batch["formulas"]).iter().map(text).collect();
            names.insert(formulas.join(" + "));
        }
        let mut sum = 0;
        for reason in list(&proof["reasons"]) {
            let count = whole(&reason["pots"]);
            sum += count;
            let formulas = list(&reason["formulas"]);
            for of in formulas {
                let name = text(&of["formula"]);
                self.object(names.contains(&name), || format!("proof: {name} is not poured"));
            }
            let because = text(&reason["because"]);
            self.layers_of_one_piece(formulas);
            if !because.starts_with("all base") && !because.starts_with("the shots take") {
                let each: u32 = formulas.iter().map(|of| whole(&of["pots"])).sum();
                self.object(each == count, || format!("proof: {each} are not {count} pots"));
            }
        }
        let least = whole(&proof["least"]);
        self.object(least as usize <= pots.len() && (sum == 0 || sum == least), || {
            format!("proof: {least} of {sum} and {}", pots.len())
        });
    }

    /// What a reason calls the layers of a piece are those of a piece that is ordered.
    pub(super) fn layers_of_one_piece(&mut self, formulas: &[Value]) {
        let layers = formulas.iter().filter(|of| of["because"] == "one of the layers");
        let names: Vec<String> = layers.map(|of| text(&of["formula"])).collect();
        if names.is_empty() {
            return;
        }
        let mut apart: BTreeSet<String> = names.iter().cloned().collect();
        for other in formulas.iter().filter(|of| of["because"] != "one of the layers") {
            let name = text(&other["formula"]);
            self.object(apart.insert(name.clone()), || format!("proof: {name} counts twice"));
        }
        let mut recipes: Vec<Recipe> = Vec::new();
        for stage in list(&self.plan["pots"]).iter().flat_map(|pot| list(&pot["stages"])) {
            let formulas: Vec<String> = list(&stage["formulas"]).iter().map(text).collect();
            let count = names.iter().filter(|name| **name == formulas.join(" + ")).count();
            let recipe = recipe_of(self.shop, self.batches, stage);
            if let Some(recipe) = recipe.filter(|recipe| !recipes.iter().any(|one| one.is(recipe)))
            {
                recipes.extend((0..count).map(|_| recipe.clone()));
            }
        }
        // A layer whose pot is there already needs no other one.
        let begun = list(&self.plan["pots"]).iter().filter(|pot| !pot["there"].is_null());
        let there: Vec<Recipe> = begun
            .flat_map(|pot| list(&pot["stages"]))
            .filter_map(|stage| recipe_of(self.shop, self.batches, stage))
            .collect();
        let is_ordered = self.batches.iter().any(|batch| {
            let mut rest = recipes.clone();
            let others = batch.layers.iter().filter(|(layer, _)| {
                let place = rest.iter().position(|one| one.is(layer));
                place.map(|place| rest.remove(place)).is_none()
            });
            let others: Vec<_> = others.collect();
            let in_pots = |(layer, _): &&_| there.iter().any(|one: &Recipe| one.is(layer));
            rest.is_empty() && others.iter().all(in_pots)
        });
        self.object(is_ordered, || format!("proof: no piece has the layers {names:?}"));
    }

    pub(super) fn notes(&mut self) {
        let stages = list(&self.plan["pots"]).iter().flat_map(|pot| list(&pot["stages"]));
        let mut recipes = stages.filter_map(|stage| recipe_of(self.shop, self.batches, stage));
        let salted = recipes.any(|recipe| {
            recipe.additives.keys().any(|name| self.shop.materials[name].kind == "salt")
        });
        let mut wanted = vec!["hot-plastisol", "fumes", "water"];
        if salted {
            wanted.push("damp-salt");
        }
        wanted.extend(["vacuum", "food-gear", "data-sheet"]);
        let told: Vec<String> = list(&self.plan["cautions"]).iter().map(text).collect();
        self.object(told == wanted, || format!("cautions: {told:?}"));
        for note in list(&self.plan["assumptions"]) {
            self.object(is_code(&note["code"]), || format!("assumption {}", note["code"]));
        }
    }
}

/// Pots, mold, stage of the first pot, and how many shots.
type Shot = (Vec<String>, String, u64, u64);

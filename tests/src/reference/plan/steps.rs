//! The steps of a day: all that its pots ask for, each once, in words that have the numbers.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::super::shop::text;
use super::rest::{ends_in_word, nth};
use super::{Check, list, value};

impl<'a> Check<'a> {
    /// The steps: each material of each stage is weighed once as its row says, each shot is made, each burst of each table is
    /// offered, in stages that come one after the other, numbered pot by pot.
    pub(super) fn steps(&mut self) {
        let plan = self.plan;
        let pots = list(&plan["pots"]);
        for work in list(&plan["work"]) {
            let heating = &work["heating"];
            self.object(heating.is_null() || heating.is_object(), || format!("work: {heating}"));
        }
        let works = list(&plan["work"]).len() as u64;
        let mut ids = BTreeSet::new();
        let mut numbers: BTreeMap<String, u64> = BTreeMap::new();
        let mut weighed: BTreeSet<(String, u64, u64)> = BTreeSet::new();
        let mut shot: BTreeMap<(String, u64, u64), u64> = BTreeMap::new();
        let mut heated: BTreeMap<(String, u64), u32> = BTreeMap::new();
        let mut work = 1;
        for step in list(&plan["steps"]) {
            let (id, kind) = (text(&step["id"]), text(&step["kind"]));
            let at = format!("step {id}");
            self.object(ids.insert(id.clone()), || format!("{at} comes twice"));
            let of_work = step["work"].as_u64().unwrap_or(0);
            self.object((work..=works).contains(&of_work), || format!("{at}: work {of_work}"));
            work = of_work.max(work);
            self.step_cautions(&at, step, &kind);
            let Some(first) = list(&step["at"]).first() else {
                self.found.push(format!("{at} is nowhere"));
                continue;
            };
            let mut pot_ids = Vec::new();
            for place in list(&step["at"]) {
                let name = text(&place["pot"]);
                let number = numbers.entry(name.clone()).or_default();
                *number += 1;
                let number = *number;
                self.object(place["number"].as_u64() == Some(number), || {
                    format!("{at}: number {} of pot {name}", place["number"])
                });
                let Some(pot) = pots.iter().find(|pot| pot["pot"] == place["pot"]) else {
                    self.found.push(format!("{at}: no pot {name}"));
                    continue;
                };
                pot_ids.push(text(&pot["id"]));
                let Some(stage) = nth(&pot["stages"], &place["stage"]) else {
                    self.found.push(format!("{at}: no stage {}", place["stage"]));
                    continue;
                };
                self.object((kind == "shoot") == place["draw"].is_u64(), || {
                    format!("{at}: draw {}", place["draw"])
                });
                let listed = list(&plan["work"]).get(of_work.saturating_sub(1) as usize);
                let is_its = listed.is_some_and(|listed| {
                    list(&listed["from"])
                        .iter()
                        .any(|from| from["pot"] == place["pot"] && from["stage"] == place["stage"])
                });
                self.object(is_its, || format!("{at}: not of work {of_work}"));
                if kind == "shoot" {
                    let shots: u64 =
                        list(&step["items"]).iter().filter_map(|item| item["shots"].as_u64()).sum();
                    let key = (
                        name.clone(),
                        place["stage"].as_u64().unwrap_or(0),
                        place["draw"].as_u64().unwrap_or(0),
                    );
                    *shot.entry(key).or_default() += shots;
                    let draw = nth(&stage["draws"], &place["draw"]);
                    let mold = draw.map(|draw| text(&draw["mold"])).unwrap_or_default();
                    let of_mold = listed.is_some_and(|listed| listed["mold"] == mold.as_str());
                    self.object(of_mold, || format!("{at}: work {of_work} is another mold"));
                    let named = list(&step["items"]).iter().all(|item| {
                        let amount = text(&item["amount"]);
                        amount.starts_with(&format!("{mold}: "))
                            && text(&item["text"]).contains(&format!(" × {mold}, "))
                    });
                    self.object(named, || format!("{at}: loads of another mold than {mold}"));
                    self.object(id.contains(&format!("/shoot/{mold}")), || {
                        format!("{at}: it shoots {mold}")
                    });
                }
                if kind == "heat" {
                    let stage_number = place["stage"].as_u64().unwrap_or(0);
                    let heats = heated.entry((name.clone(), stage_number)).or_default();
                    *heats += 1;
                    let again = *heats as usize - 1;
                    let own = &stage["clock"]["known"][again]["heating"];
                    let table = if again == 0 || own.is_null() { &stage["heating"] } else { own };
                    self.readings(&at, place, step, table);
                } else {
                    self.object(list(&place["readings"]).is_empty(), || format!("{at}: readings"));
                }
                if kind == "measure" || kind == "add" {
                    for item in list(&step["items"]) {
                        let key = (
                            name.clone(),
                            place["stage"].as_u64().unwrap_or(0),
                            item["weigh"].as_u64().unwrap_or(0),
                        );
                        let is_new = weighed.insert(key);
                        self.object(is_new, || format!("{at}: {} twice", item["weigh"]));
                        // What goes cold into a pot that has some of it is more of it.
                        let there = &pot["there"];
                        let is_more = place["stage"] == 1
                            && there["heats"] == 0
                            && list(&there["parts"])
                                .iter()
                                .any(|part| part["material"] == item["material"]);
                        self.weighing(&at, item, stage, &id, is_more);
                    }
                }
                if kind == "store" {
                    self.stored(&at, step, place, pot);
                }
                if kind == "degas" {
                    let known = &pot["degas"]["known"];
                    let fills = known["fills"].as_u64();
                    let items = list(&step["items"]);
                    self.object(
                        fills.is_none_or(|fills| fills == items.len() as u64 || fills == 0),
                        || format!("{at}: {} fills", items.len()),
                    );
                    for item in items.iter().filter(|_| fills.is_some()) {
                        let level = &known["level"]["text"];
                        self.object(item["amount"] == *level, || format!("{at}: {level}"));
                        let said = text(&item["text"]);
                        let names = [&known["cup_name"], &known["level"]["text"]];
                        let all = names.iter().all(|part| said.contains(&text(part)));
                        let place = format!("fill {} of {}", item["number"], known["fills"]);
                        let all = all && (items.len() == 1 || said.contains(&place));
                        self.object(all && !said.ends_with('?'), || format!("{at}: {said}"));
                    }
                }
            }
            let rooted = pot_ids.iter().any(|pot| id.starts_with(pot.as_str()))
                || id.contains(&text(&first["pot"]));
            self.object(rooted && ends_in_word(&id), || format!("{at}: of pots {pot_ids:?}"));
            self.items(&at, step, &id, &kind);
        }
        for pot in pots {
            for (place, stage) in (1..).zip(list(&pot["stages"])) {
                let name = text(&pot["pot"]);
                let rows = list(&stage["weigh"]).len() as u64;
                let all = (1..=rows).all(|row| weighed.contains(&(name.clone(), place, row)));
                self.object(all, || format!("pot {name}, stage {place}: not all is weighed"));
                for (number, draw) in (1..).zip(list(&stage["draws"])) {
                    let made = shot.get(&(name.clone(), place, number)).copied().unwrap_or(0);
                    self.object(draw["shots"].as_u64() == Some(made), || {
                        format!("pot {name}, stage {place}: {made} shots in the steps")
                    });
                }
            }
        }
    }

    /// What is to tick off: ids below that of the step, counted from 1, in words that have the amounts.
    pub(super) fn items(&mut self, at: &str, step: &Value, id: &str, kind: &str) {
        let mut seen = BTreeSet::new();
        let mut number = 0;
        for item in list(&step["items"]) {
            let own = text(&item["id"]);
            self.object(seen.insert(own.clone()), || format!("{at}: {own} twice"));
            let below = own
                .strip_prefix(id)
                .is_some_and(|rest| rest.is_empty() || rest.starts_with('/') && ends_in_word(rest));
            self.object(below, || format!("{at}: {own} is not below it"));
            let (amount, said) = (text(&item["amount"]), text(&item["text"]));
            let is_weighing = kind == "measure" || kind == "add";
            let right = if is_weighing {
                item["weigh"].is_u64() && item["material"].is_string()
            } else {
                item["weigh"].is_null() && item["material"].is_null() && item["more"].is_null()
            };
            self.object(right, || format!("{at}: {own} is {item}"));
            self.object(item["shots"].is_null() || kind == "shoot", || format!("{at}: shots"));
            let counted = own.rsplit('/').next().and_then(|last| last.parse::<u64>().ok());
            if !is_weighing && counted.is_some() {
                number += 1;
                self.object(counted == Some(number), || format!("{at}: {own} is not {number}"));
                self.object(item["number"].as_u64() == counted, || format!("{at}: {own}: number"));
            } else {
                self.object(item["number"].is_null(), || format!("{at}: {own} has a number"));
            }
            let bare = kind == "degas" || kind == "heat";
            self.object(!bare || ends_in_word(&amount) && ends_in_word(&said), || {
                format!("{at}: {said}: {amount}")
            });
            if kind == "shoot" {
                let count = item["shots"].as_u64().unwrap_or(0);
                let total = list(&step["items"]).len();
                let load = format!("Load {number} of {total}: {count} × ");
                let right = said.starts_with(&load) && said.ends_with(" a shot");
                self.object(right, || format!("{at}: {said}, not {load}"));
                self.object(amount.contains(&format!(": {count} × ")), || {
                    format!("{at}: {amount}")
                });
                let masses = |text: &str| -> Vec<String> {
                    text.split(" × ")
                        .skip(1)
                        .map(|part| part.split(" g").next().unwrap_or_default().to_owned())
                        .collect()
                };
                let mass = masses(&amount).last().cloned().unwrap_or_default();
                self.object(said.contains(&format!("{mass} g")) && amount.ends_with(" g"), || {
                    format!("{at}: {amount}, {said}")
                });
            }
        }
    }

    /// What is kept of a pot is what is left over, under a label of its last mix, day and heats.
    pub(super) fn stored(&mut self, at: &str, step: &Value, place: &Value, pot: &Value) {
        let said = text(&place["text"]);
        let [item] = list(&step["items"]) else {
            self.found.push(format!("{at}: not one thing to keep"));
            return;
        };
        let (left, sprues) = (&pot["left_over"], &pot["sprues"]);
        self.object(item["text"] == place["text"], || format!("{at}: {}", item["text"]));
        let mut parts = Vec::new();
        for mass in [left, sprues] {
            if value(mass) >= 0.005 {
                parts.push(text(&mass["text"]));
            }
        }
        let amount = text(&item["amount"]);
        self.object(
            amount == text(&left["text"]) || value(left) < 0.005 && amount == text(&sprues["text"]),
            || format!("{at}: it keeps {amount}, not {left}"),
        );
        if parts.is_empty() {
            return;
        }
        if let Some(day) = self.plan["day"].as_str() {
            parts.push(day.to_owned());
        }
        parts.push(format!(" {} heat", pot["heats"]["in_all"]));
        let spent = &pot["heats"]["budget"]["known"]["spent"]["text"];
        parts.extend(spent.as_str().map(|spent| format!("{spent} spent")));
        for part in parts {
            self.object(said.contains(&part), || format!("{at}: no {part} in \"{said}\""));
        }
        self.object(said.ends_with('.'), || format!("{at}: {said}"));
    }

    pub(super) fn weighing(
        &mut self,
        at: &str,
        item: &Value,
        stage: &Value,
        id: &str,
        is_more: bool,
    ) {
        let Some(row) = nth(&stage["weigh"], &item["weigh"]) else {
            self.found.push(format!("{at}: no row {}", item["weigh"]));
            return;
        };
        let (material, measure) = (text(&row["material"]), text(&row["best"]["measure"]));
        let is_more = is_more && value(&row["best"]["gives"]) > 0.0;
        let more = if is_more { " more" } else { "" };
        let right = item["material"] == row["material"]
            && item["amount"] == row["best"]["measure"]
            && item["more"] == if is_more { Value::Bool(true) } else { Value::Null }
            && item["text"] == format!("{material}: {measure}{more}").as_str()
            && item["id"] == format!("{id}/{material}").as_str();
        self.object(right, || format!("{at}: {item} for {material}: {measure}"));
    }

    /// The readings of a step are those of the table, up to which a burst is given, and then what to do hot and too hot.
    pub(super) fn readings(&mut self, at: &str, place: &Value, step: &Value, table: &Value) {
        let bands = list(&table["known"]["bands"]);
        if bands.is_empty() {
            return;
        }
        let readings = list(&place["readings"]);
        let items = list(&step["items"]);
        self.object(readings.len() == bands.len() + 2, || format!("{at}: readings"));
        let items_of_one = list(&step["at"]).len() == 1;
        let mut lower = String::new();
        for (index, reading) in readings.iter().enumerate() {
            let go = text(&reading["go"]);
            if reading["burst"].is_null() {
                let nowhere = reading["expected"].is_null() && reading["at_most"].is_null();
                self.object(nowhere, || format!("{at}: row {index} ends without a burst"));
            }
            if let Some(band) = bands.get(index) {
                let fields = ["below", "burst", "expected", "at_most"];
                let same = fields.iter().all(|field| reading[field] == band[field]);
                self.object(same && reading["go"] == band["burst"]["text"], || {
                    format!("{at}: reading {index} is not {band}")
                });
                let (burst, upper) = (text(&band["burst"]["text"]), text(&band["below"]["text"]));
                let said = if index == 0 {
                    format!("{burst} while it shows under {upper}")
                } else {
                    format!("{burst} while it shows {lower} to {upper}")
                };
                let item = items.get(index).filter(|_| items_of_one);
                let right = item.is_none_or(|item| {
                    item["text"] == said.as_str() && item["amount"] == burst.as_str()
                });
                self.object(right, || format!("{at}: not {said}"));
                lower = upper;
            } else if index == bands.len() {
                self.object(reading["below"] == table["known"]["shoot_to"], || {
                    format!("{at}: hot up to {}", reading["below"])
                });
                self.object(reading["burst"].is_null(), || format!("{at}: a burst when hot"));
                self.object(go == "SHOOT" || go.starts_with("step "), || format!("{at}: {go}"));
                let end = text(&table["known"]["shoot_to"]["text"]);
                let said = format!("It shows {lower} to {end}: {go}");
                let item = items.last().filter(|_| items_of_one);
                let right = item.is_none_or(|item| {
                    text(&item["text"]).to_lowercase() == said.to_lowercase()
                        && item["amount"] == "in the window"
                });
                self.object(right, || format!("{at}: not {said}"));
                if let Some(number) = go.strip_prefix("step ") {
                    let next = place["number"].as_u64().map(|number| number + 1);
                    self.object(number.parse().ok() == next, || format!("{at}: on to {go}"));
                }
            } else {
                let right = reading["below"].is_null() && reading["burst"].is_null();
                self.object(right && go == "let cool", || format!("{at}: too hot, {go}"));
            }
        }
    }

    pub(super) fn step_cautions(&mut self, at: &str, step: &Value, kind: &str) {
        let told: Vec<String> = list(&step["cautions"]).iter().map(text).collect();
        let salted = list(&step["items"])
            .iter()
            .any(|item| self.shop.book["materials"][text(&item["material"])]["kind"] == "salt");
        let mut wanted: Vec<&str> = match kind {
            "degas" => vec!["vacuum"],
            "heat" => vec!["hot-plastisol", "fumes"],
            "add" | "sprues-back" => vec!["hot-plastisol"],
            "shoot" => vec!["water", "hot-plastisol"],
            "measure" | "from-shelf" | "store" => vec![],
            _ => {
                self.found.push(format!("{at}: what is {kind}?"));
                return;
            }
        };
        if salted {
            wanted.push("damp-salt");
        }
        self.object(told == wanted, || format!("{at}: cautions {told:?}, must be {wanted:?}"));
    }
}

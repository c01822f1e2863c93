//! Checks a day's plan from scratch: from the book and the orders as JSON to what every number of the plan must be.
//!
//! It knows nothing of how pots were chosen. It asks of any plan: does each stage hold what its formulas say, is
//! every shot and piece as heavy as the mold makes it, are there shots enough, does the mass that went in come out,
//! does the bench measure add up to what it claims?

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use super::amount;
use super::batch::shots as least_shots;
use super::clock;
use super::shop::{Recipe, Shop, share, text, whole};
use super::shot::piece_g;

mod cost;
mod day;
mod process;
mod rest;
mod shown;
mod steps;

/// How far two computations of the same number may lie apart, relative to it.
const ROUNDING: f64 = 1e-9;

/// Largest error of household words and decimals against the volume that they mean.
const WORDS: f64 = 1.1e-3;

/// The brim of a cup above its highest mark, where the book does not state it. Common practice, no source.
const USUAL_BRIM: f64 = 1.2;

/// How full a cup of hot mix may be, of what it holds to its brim. Common practice, no source.
const HOT_FULL: f64 = 0.95;

/// The volumes that a mix may fill in a cup, in mL.
#[derive(Debug)]
struct Room {
    cold: f64,
    hot: f64,
}

impl Room {
    fn takes(&self, filled: &Filled) -> bool {
        filled.cold <= self.cold * (1.0 + ROUNDING) && filled.hot <= self.hot * (1.0 + ROUNDING)
    }
}

/// The volumes of a mix in mL: cold and liquid in its cup, and at shot temperature.
#[derive(Debug)]
struct Filled {
    cold: f64,
    hot: f64,
}

impl Filled {
    fn of(shop: &Shop<'_>, recipe: &Recipe, grams: f64) -> Self {
        let (hot, _) = shop.hot_and_cold(recipe);
        Self { cold: grams / shop.cup_g_per_ml(recipe), hot: grams / hot }
    }
}

/// Orders for one mold with the same layers.
pub(crate) struct Batch {
    pub(crate) mold: String,
    /// Recipe and share of the cavity.
    pub(crate) layers: Vec<(Recipe, f64)>,
    /// Pieces of each shape of the mold.
    pub(crate) ordered: Vec<u32>,
    /// The order lines.
    pub(crate) lines: Vec<usize>,
    /// The fewest shots that give them.
    pub(crate) shots: u32,
}

/// Masses of one shot of one layer.
pub(crate) struct Taken {
    pub(crate) fill: f64,
    pub(crate) sprue: f64,
    /// Mass per volume of the whole cavity.
    per_ml: f64,
    not_fed: f64,
    fed: f64,
    sinks_in: bool,
    pub(crate) hot: f64,
}

/// Objections to a plan; none where it is right.
pub fn objections(book: &Value, orders: &Value, starter: &Value, plan: &Value) -> Vec<String> {
    Judge::new(book, orders, starter).objections(plan)
}

/// A book and orders, read once to judge plans by them.
pub struct Judge<'a> {
    shop: Shop<'a>,
    orders: &'a Value,
    batches: Vec<Batch>,
}

impl<'a> Judge<'a> {
    /// Reads valid documents; `starter` is the table that `like` refers to.
    pub fn new(book: &'a Value, orders: &'a Value, starter: &Value) -> Self {
        let shop = Shop::new(book, starter);
        let batches = batches(&shop, orders);
        Self { shop, orders, batches }
    }

    /// Objections to a plan; none where it is right.
    pub fn objections(&self, plan: &Value) -> Vec<String> {
        let there = list(&self.orders["pots"]);
        let (shop, batches) = (&self.shop, self.batches.as_slice());
        let mut check = Check { shop, batches, plan, there, found: Vec::new() };
        check.plan(self.orders);
        check.found
    }
}

pub(crate) fn batches(shop: &Shop<'_>, orders: &Value) -> Vec<Batch> {
    let mut batches: Vec<Batch> = Vec::new();
    for (index, line) in list(&orders["lines"]).iter().enumerate() {
        let (mold, layers) = wanted(shop, line);
        let cavities = shop.cavities(&shop.book["molds"][&mold]);
        let place = batches.iter().position(|batch| {
            batch.mold == mold
                && batch.layers.len() == layers.len()
                && batch.layers.iter().zip(&layers).all(|(a, b)| a.0.is(&b.0) && a.1 == b.1)
        });
        let place = place.unwrap_or_else(|| {
            let ordered = vec![0; cavities.len()];
            batches.push(Batch { mold, layers, ordered, lines: Vec::new(), shots: 0 });
            batches.len() - 1
        });
        let shape =
            cavities.iter().position(|(shape, ..)| shape.as_deref() == line["shape"].as_str());
        batches[place].ordered[shape.unwrap_or(0)] += pieces(line);
        batches[place].lines.push(index);
    }
    for batch in &mut batches {
        let mold = &shop.book["molds"][&batch.mold];
        let cavities = shop.cavities(mold);
        let wanted: Vec<(u32, u32)> = batch
            .ordered
            .iter()
            .zip(&cavities)
            .filter(|(pieces, _)| **pieces > 0)
            .map(|(&pieces, &(_, count, _))| (pieces, count))
            .collect();
        let rejects = share(&mold["rejects"]).or(shop.limit("rejects")).unwrap_or(0.0);
        let confidence = shop.limit("confidence").unwrap_or(0.9);
        // Pots that take no other shots keep theirs.
        let kept = |layer: usize| -> u32 {
            let pots = list(&orders["pots"]).iter().filter(|pot| pot["takes_more"] == false);
            let draws = pots.flat_map(|pot| list(&pot["draws"]));
            let own = draws.filter(|draw| {
                batch.lines.contains(&(whole(&draw["line"]) as usize - 1))
                    && draw["layer"].as_u64().unwrap_or(1) as usize == layer + 1
            });
            own.map(|draw| whole(&draw["shots"])).sum()
        };
        let kept = (0..batch.layers.len()).map(kept).max().unwrap_or(0);
        batch.shots = least_shots(&wanted, rejects, confidence).max(kept);
    }
    batches
}

/// The recipe that the stage's formulas come to, of those that an order asks for.
pub(super) fn recipe_of(shop: &Shop<'_>, batches: &[Batch], stage: &Value) -> Option<Recipe> {
    let formulas: Vec<&str> = list(&stage["formulas"]).iter().filter_map(Value::as_str).collect();
    let known = formulas.iter().all(|name| shop.book["formulas"].get(name).is_some());
    if !known || formulas.is_empty() {
        return None;
    }
    let mut ways = ["refuse", "last"].iter().map(|way| shop.recipe(&formulas, way));
    ways.find(|recipe| {
        let mut layers = batches.iter().flat_map(|batch| &batch.layers);
        layers.any(|(wanted, _)| wanted.is(recipe))
    })
}

/// The mold of an order line, and its layers.
fn wanted(shop: &Shop<'_>, line: &Value) -> (String, Vec<(Recipe, f64)>) {
    let product = match line["product"].as_str() {
        Some(name) => &shop.book["products"][name],
        None => line,
    };
    let layer = |entry: &Value, share: f64| {
        let formulas: Vec<&str> =
            list(&entry["formulas"]).iter().filter_map(Value::as_str).collect();
        (shop.recipe(&formulas, entry["overlap"].as_str().unwrap_or("refuse")), share)
    };
    let layers = match product["layers"].as_array() {
        Some(layers) => {
            layers.iter().map(|entry| layer(entry, share(&entry["share"]).unwrap_or(0.0))).collect()
        }
        None => vec![layer(product, 1.0)],
    };
    (text(&product["mold"]), layers)
}

pub(super) fn pieces(line: &Value) -> u32 {
    match line["pieces"].as_u64() {
        Some(_) => whole(&line["pieces"]),
        None => whole(&line["packs"]) * whole(&line["pack_of"]),
    }
}

pub(crate) fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

/// The number of a shown quantity; no number at all where it is missing, so that every comparison fails.
fn value(shown: &Value) -> f64 {
    shown["value"].as_f64().unwrap_or(f64::NAN)
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= ROUNDING * a.abs().max(b.abs())
}

struct Check<'a> {
    shop: &'a Shop<'a>,
    batches: &'a [Batch],
    plan: &'a Value,
    /// Pots that are there already.
    there: &'a [Value],
    found: Vec<String>,
}

impl<'a> Check<'a> {
    fn object(&mut self, right: bool, objection: impl FnOnce() -> String) {
        if !right {
            self.found.push(objection());
        }
    }

    /// The number of a shown quantity, once its text has been held against it.
    fn shown(&mut self, at: &str, shown: &Value) -> f64 {
        let (number, text) = (value(shown), text(&shown["text"]));
        let unit = shown["unit"].as_str().unwrap_or_default();
        let system = self.shop.system;
        let right = match shown["other"].as_str() {
            Some(other) => {
                let is_said = |text: &str| says(text, number, unit, system);
                let is_near = |text: &str| is_said(text) || is_near_in_cups(text, number, system);
                (is_said(&text) && is_near(other)) || (is_near(&text) && is_said(other))
            }
            None => says(&text, number, unit, system),
        };
        self.object(right, || format!("{at}: \"{text}\" is not {number} {unit}"));
        number
    }

    fn same(&mut self, at: &str, got: f64, expected: f64) {
        self.object(near(got, expected), || format!("{at}: {got}, must be {expected}"));
    }

    fn shown_as(&mut self, at: &str, shown: &Value, expected: f64) {
        let got = self.shown(at, shown);
        self.same(at, got, expected);
    }

    fn plan(&mut self, orders: &Value) {
        let plan = self.plan;
        let is_us = self.shop.system.starts_with("us-");
        self.object(self.plan["scale"] == if is_us { "us" } else { "metric" }, || {
            format!("/scale: {}", self.plan["scale"])
        });
        for (key, from) in [("shop", self.shop.book), ("measures", self.shop.book), ("day", orders)]
        {
            self.object(plan[key] == from[key], || format!("{key}: {}", plan[key]));
        }
        let pots = list(&plan["pots"]);
        let names: BTreeSet<String> = pots.iter().map(|pot| text(&pot["pot"])).collect();
        self.object(names.len() == pots.len(), || "two pots have one name".to_owned());
        for pot in pots {
            self.pot(pot);
        }
        self.shots_made();
        self.work();
        self.lines(orders);
        self.rest(orders);
    }

    fn pot(&mut self, pot: &'a Value) {
        let name = text(&pot["pot"]);
        let capacity = self.shown(&format!("pot {name}, cup"), &pot["cup"]);
        let cup = text(&pot["cup"]["text"]);
        let called = match cup.strip_suffix(" cup") {
            Some(cups) => format!("{cups}-cup cup"),
            None => format!("{cup} cup"),
        };
        self.object(pot["cup_name"] == *called, || format!("pot {name}: not {called}"));
        let measured = format!("{}/measure", text(&pot["id"]));
        let steps = list(&self.plan["steps"]);
        let named =
            steps.iter().any(|step| step["id"] == *measured && step["at"][0]["pot"] == pot["pot"]);
        let in_it = self.in_it(&name);
        let is_there = in_it.is_some();
        match &in_it {
            None => self.object(pot["there"].is_null(), || format!("pot {name}: it was not there")),
            Some(in_it) => {
                let there = &pot["there"];
                self.shown_as(&format!("pot {name}, there"), &there["mass"], in_it.values().sum());
                for part in list(&there["parts"]) {
                    let material = text(&part["material"]);
                    let held = in_it.get(&material).copied().unwrap_or(f64::NAN);
                    self.shown_as(&format!("pot {name}, {material}"), &part["mass"], held);
                }
                self.object(list(&there["parts"]).len() == in_it.len(), || {
                    format!("pot {name}: not all that is in it")
                });
                let own = self.there.iter().find(|pot| pot["pot"] == name);
                let accepted = own.is_some_and(|pot| pot["accepted"] == true);
                let said = if accepted { Value::Bool(true) } else { Value::Null };
                self.object(there["accepted"] == said, || format!("pot {name}: accepted"));
            }
        }
        self.object(named || is_there, || format!("pot {name}: no step {measured}"));
        // Cups of one size may differ in marks and film: one of them must make the plan right.
        let cups = list(&self.shop.book["bench"]["cups"]).iter();
        let cups: Vec<&Value> =
            cups.filter(|cup| near(self.shop.ml(&cup["holds"]), capacity)).collect();
        self.object(!cups.is_empty(), || format!("pot {name}: no cup holds {capacity} mL"));
        let before = self.found.len();
        let mut least: Option<Vec<String>> = None;
        for cup in cups {
            self.pot_in(&name, pot, cup, capacity);
            let objections = self.found.split_off(before);
            if least.as_ref().is_none_or(|least| objections.len() < least.len()) {
                least = Some(objections);
            }
        }
        self.found.extend(least.unwrap_or_default());
    }

    /// The mass of each material in a pot that is there already.
    fn in_it(&self, name: &str) -> Option<BTreeMap<String, f64>> {
        let pot = self.there.iter().find(|pot| pot["pot"] == name)?;
        let parts = pot["parts"].as_object()?.iter();
        let grams = |mass: &Value| amount::g(&amount::text(mass)).unwrap_or(f64::NAN);
        Some(parts.map(|(name, mass)| (name.clone(), grams(mass))).collect())
    }

    fn pot_in(&mut self, name: &str, pot: &'a Value, cup: &Value, capacity: f64) {
        let grams = |key: &str| {
            (!cup[key].is_null()).then(|| amount::g(&amount::text(&cup[key])).unwrap_or(f64::NAN))
        };
        let (film, heel) = (grams("film").unwrap_or(0.0), grams("heel").unwrap_or(0.0));
        let (stated, brim) = (&cup["brim"], USUAL_BRIM * capacity);
        let brim = if stated.is_null() { brim } else { self.shop.ml(stated) };
        let most_full = self.shop.limit("most_full").unwrap_or(1.0);
        let room = Room { cold: capacity * most_full, hot: brim * HOT_FULL };
        let in_it = self.in_it(name);
        let is_there = in_it.is_some();
        let mut contents: BTreeMap<String, f64> = in_it.unwrap_or_default();
        let was_in: f64 = contents.values().sum();
        let (mut put_in, mut taken, mut kept, mut sprues, mut handled) = (0.0, 0.0, 0.0, 0.0, 0.0);
        let mut left = 0.0;
        put_in += was_in;
        handled += was_in;
        let stages = list(&pot["stages"]);
        self.object(!stages.is_empty(), || format!("pot {name}: no stage"));
        for (index, stage) in stages.iter().enumerate() {
            let at = format!("pot {name}, stage {index}");
            let Some(recipe) = recipe_of(self.shop, self.batches, stage) else {
                self.found.push(format!("{at}: no order asks for {}", stage["formulas"]));
                return;
            };
            let holds = self.shown(&format!("{at}, holds"), &stage["holds"]);
            put_in += self.additions(&at, stage, &recipe, holds, &mut contents);
            self.stage(&at, stage, &recipe, (holds, &room), &contents, is_there);
            if index == 0 && !is_there {
                self.base_measured(name, stages, &recipe, &room);
            }
            let (mut drawn, mut stage_sprues, mut of_one_mix) = (0.0, 0.0, 0.0);
            let mut keeps: f64 = 0.0;
            let unsure = stage["density_uncertainty"]["value"].as_f64();
            let unsure = unsure.map(|unsure| unsure / value(&stage["density"]));
            for draw in list(&stage["draws"]) {
                let shots = f64::from(whole(&draw["shots"]));
                drawn += shots * value(&draw["per_shot"]);
                let draw_sprues = shots * value(&draw["sprue"]);
                stage_sprues += draw_sprues;
                // A laminated piece's sprue holds both colors.
                if value(&draw["share"]) == 1.0 {
                    of_one_mix += draw_sprues;
                }
                keeps = keeps.max(self.draw(&at, draw, &recipe, unsure));
            }
            self.object(drawn > 0.0, || format!("{at}: nothing is shot"));
            sprues += stage_sprues;
            left = self.shown(&format!("{at}, carried"), &stage["carried"]);
            handled += holds + drawn + keeps + left;
            // The injector keeps its part each time the pot is heated for it; what sets in it while the pot is heated
            // again goes back in. Sprues may go back in before the next stage.
            let from = list(&self.plan["work"]).iter().flat_map(|work| list(&work["from"]));
            let of_stage = |one: &&Value| {
                one["pot"] == name && one["stage"] == index + 1 && one["heat"] == true
            };
            let keeps = keeps * from.filter(of_stage).count() as f64;
            let back = self.shown(&format!("{at}, sprues back"), &stage["sprues_back"]);
            let melted = self.shop.book["limits"]["sprues"] == "melt-again";
            let goes_back = if melted && index + 1 < stages.len() { of_one_mix } else { 0.0 };
            self.same(&format!("{at}, sprues back"), back, goes_back);
            sprues -= back;
            handled += back;
            put_in += back;
            let rest = holds - drawn - keeps + back;
            let bound = ROUNDING * handled;
            self.object((left - rest).abs() <= bound, || {
                format!("{at}: {left} g stay, must be {rest}")
            });
            self.object(left >= heel.max(film) - bound, || {
                format!("{at}: {left} g is below the heel")
            });
            for mass in contents.values_mut() {
                *mass *= left / holds;
            }
            taken += drawn;
            kept += keeps;
        }
        let lost = self.shown(&format!("pot {name}, lost"), &pot["lost"]);
        let left_over = self.shown(&format!("pot {name}, left over"), &pot["left_over"]);
        let expected = kept + film.min(left);
        // Of a pot that is used up, what is left is rounding.
        self.object((lost - expected).abs() <= ROUNDING * handled, || {
            format!("pot {name}, lost: {lost}, must be {expected}")
        });
        let told = self.shown(&format!("pot {name}, sprues"), &pot["sprues"]);
        self.object((told - sprues).abs() <= ROUNDING * handled, || {
            format!("pot {name}, sprues: {told}, must be {sprues}")
        });
        let terms = 64.0 * (stages.len() + 2) as f64;
        let apart = (put_in - taken - lost - left_over).abs();
        self.object(apart <= terms * f64::EPSILON / 2.0 * handled, || {
            format!("pot {name}: {put_in} g in, but {} g out", taken + lost + left_over)
        });
        self.spare_shots(name, stages, left_over + lost - kept - heel.max(film));
    }

    /// Adds what goes in at a stage to what is in the pot; the sum.
    fn additions(
        &mut self,
        at: &str,
        stage: &Value,
        recipe: &Recipe,
        holds: f64,
        contents: &mut BTreeMap<String, f64>,
    ) -> f64 {
        let fractions = recipe.fractions();
        let mut sum = 0.0;
        for weigh in list(&stage["weigh"]) {
            let name = text(&weigh["material"]);
            let at = format!("{at}, {name}");
            let wanted = self.shown(&format!("{at}, wanted"), &weigh["wanted"]);
            let own = self.shop.materials.get(&name).and_then(|material| material.tolerance);
            let tolerance = own.or(self.shop.limit("tolerance")).unwrap_or(0.05);
            self.shown_as(&format!("{at}, tolerance"), &weigh["tolerance"], tolerance);
            self.object(wanted > 0.0, || format!("{at}: {wanted} g is not an addition"));
            *contents.entry(name.clone()).or_default() += wanted;
            sum += wanted;
            let Some(material) = self.shop.materials.get(&name) else {
                self.found.push(format!("{at}: the book has no such material"));
                continue;
            };
            let kind = material.kind.clone();
            self.object(weigh["kind"] == kind.as_str(), || format!("{at}: it is a {kind}"));
            let total = holds * fractions.get(&name).copied().unwrap_or(f64::NAN);
            self.goes_in(&at, &weigh["add"], &name);
            let written = self.written_in(stage, &name);
            self.object(written.contains(text(&weigh["written_in"]).as_str()), || {
                format!("{at}: it is written in {written:?}")
            });
            // A measure that the bench cannot make finer is off by more, has a caution, and leaves no other way.
            let off = (value(&weigh["best"]["gives"]) - wanted).abs();
            let is_within = off <= tolerance * total * (1.0 + 1e-9);
            self.object(weigh["beyond"].is_null() || list(&weigh["others"]).is_empty(), || {
                format!("{at}: another way keeps the tolerance")
            });
            self.object(weigh["beyond"].is_null() || weigh["beyond"].is_object(), || {
                format!("{at}: beyond the bench for no reason")
            });
            self.object(is_within || weigh["beyond"]["code"] == "dose-beyond-bench", || {
                format!("{at}: {off} g off {wanted} g")
            });
            for way in std::iter::once(&weigh["best"]).chain(list(&weigh["others"])) {
                self.way(&at, way, &name, wanted, total);
            }
        }
        sum
    }

    /// When a material goes in: as the book says, else salt, flake and scent hot, and salt in three portions.
    fn goes_in(&mut self, at: &str, add: &Value, name: &str) {
        let entry = &self.shop.book["materials"][name];
        let kind = text(&entry["kind"]);
        let usual =
            if ["salt", "flake", "scent"].contains(&kind.as_str()) { "hot" } else { "cold" };
        let when = entry["add"].as_str().unwrap_or(usual).to_owned();
        let stated = entry["add"].is_string();
        let portions = if kind == "salt" { 3 } else { 1 };
        self.object(
            add["when"] == when.as_str() && add["stated"] == stated && add["portions"] == portions,
            || format!("{at}: it goes in {when}, in {portions}"),
        );
    }

    /// The measures that the formulas of a stage dose a material in; of a base, that of the amounts they are per.
    fn written_in(&self, stage: &Value, name: &str) -> BTreeSet<&'static str> {
        let mut found = BTreeSet::new();
        for formula in list(&stage["formulas"]) {
            let entry = &self.shop.book["formulas"][text(formula)];
            let dose = if self.shop.materials[name].kind == "plastisol" {
                &entry["per"]
            } else {
                &entry["doses"][name]
            };
            if dose.is_null() {
                continue;
            }
            let written = amount::text(dose);
            found.insert(if written.contains('%') {
                if written.contains("volume") { "volume" } else { "mass" }
            } else if amount::drops(&written).is_some() {
                "drops"
            } else if amount::ml(&written, self.shop.system).is_some() {
                "volume"
            } else {
                "mass"
            });
        }
        if found.len() != 1 {
            found.insert("mass");
        }
        found
    }

    fn stage(
        &mut self,
        at: &str,
        stage: &Value,
        recipe: &Recipe,
        (holds, room): (f64, &Room),
        contents: &BTreeMap<String, f64>,
        is_there: bool,
    ) {
        let total: f64 = contents.values().sum();
        self.same(&format!("{at}, holds"), holds, total);
        let fractions = recipe.fractions();
        for name in contents.keys().chain(fractions.keys()).collect::<BTreeSet<_>>() {
            let there = contents.get(name).copied().unwrap_or(0.0) / total;
            let wanted = fractions.get(name).copied().unwrap_or(0.0);
            // What was in a pot before keeps its tolerance only.
            let own = self.shop.materials.get(name).and_then(|material| material.tolerance);
            let tolerance = own.or(self.shop.limit("tolerance")).unwrap_or(0.05);
            let may = if is_there { tolerance * wanted * 1.1 } else { 0.0 };
            self.object((there - wanted).abs() <= ROUNDING + may, || {
                format!("{at}: a share of {there} {name}, must be {wanted}")
            });
        }
        let filled = Filled::of(self.shop, recipe, holds);
        self.shown_as(&format!("{at}, fills"), &stage["fills"], filled.cold);
        self.object(room.takes(&filled), || format!("{at}: {filled:?} mL in {room:?}"));
        let (_, cold) = self.shop.hot_and_cold(recipe);
        self.shown_as(&format!("{at}, density"), &stage["density"], cold);
        let solids = self.shop.solids(recipe);
        self.shown_as(&format!("{at}, solids"), &stage["solids"], solids);
        let most = self.shop.limit("solids").unwrap_or(0.3);
        self.object(solids <= most * (1.0 + ROUNDING), || format!("{at}: {solids} solids"));
        let window = self.shop.window(recipe);
        for (key, end) in [("shoot_from", window.map(|w| w.0)), ("shoot_to", window.map(|w| w.1))] {
            match end {
                Some(celsius) => self.shown_as(&format!("{at}, {key}"), &stage[key], celsius),
                None => self.object(stage[key].is_null(), || format!("{at}: {key} is not known")),
            }
        }
    }

    /// The base goes up to a mark of one of the cups, filled as often as it takes; or the plan says how it is measured
    /// otherwise, since a mark more would overfill the pot's cup.
    fn base_measured(&mut self, name: &str, stages: &[Value], recipe: &Recipe, room: &Room) {
        let at = format!("pot {name}, stage 0");
        let stage = &stages[0];
        let base_g: f64 = list(&stage["weigh"])
            .iter()
            .filter(|weigh| recipe.base.contains_key(&text(&weigh["material"])))
            .map(|weigh| value(&weigh["wanted"]))
            .sum();
        let per_g = self.shop.base_ml_per_g(recipe);
        let base_ml = base_g * per_g;
        // With a scale, a cup without marks is weighed into.
        let is_weighed = !self.shop.book["bench"]["balance"].is_null();
        let cups = list(&self.shop.book["bench"]["cups"]).iter();
        let marks: Vec<f64> = cups
            .filter(|cup| !(is_weighed && cup["marks"].is_null()))
            .map(|cup| if cup["marks"].is_null() { &cup["holds"] } else { &cup["marks"] })
            .map(|mark| self.shop.ml(mark))
            .collect();
        let on_a_mark = marks.iter().any(|mark| {
            let marks = base_ml / mark;
            (marks - marks.round()).abs() <= ROUNDING * marks && marks >= 0.5
        });
        let noted = list(&self.plan["assumptions"]).iter().any(|note| {
            note["code"] == "base-off-marks"
                && text(&note["message"]).starts_with(&format!("Pot {name}:"))
        });
        let blend = recipe.base.len() > 1;
        if marks.is_empty() {
            let tool = |weigh: &Value| weigh["best"]["tool"] == "balance";
            let base = |weigh: &&Value| recipe.base.contains_key(&text(&weigh["material"]));
            let weighed = list(&stage["weigh"]).iter().filter(base).all(tool);
            self.object(weighed, || format!("{at}: no cup has a mark for its base"));
        } else if !on_a_mark {
            self.object(noted || blend, || format!("{at}: {base_ml} mL lie between all marks"));
            let up = marks
                .iter()
                .map(|mark| (base_ml / mark).ceil() * mark)
                .fold(f64::INFINITY, f64::min);
            let more = (up - base_ml) / per_g * recipe.total();
            // With fresh base a later stage may leave out what more is carried into it.
            let fresh = self.shop.book["limits"]["fresh_base"] == true;
            let overfills = self.overfills(stages, more, room) || fresh;
            self.object(overfills, || format!("{at}: {up} mL of base would not overfill the cup"));
        }
        let least = &self.shop.book["limits"]["least_pot"];
        if !least.is_null() {
            let (least, fills) = (self.shop.ml(least), value(&stage["fills"]));
            self.object(fills >= least * (1.0 - ROUNDING), || {
                format!("{at}: {fills} mL is below the smallest pot")
            });
        }
    }

    /// Whether a pot that starts with this mass more, in grams, overfills its cup at one of its stages.
    fn overfills(&self, stages: &[Value], mut more: f64, room: &Room) -> bool {
        let mut before: Option<f64> = None;
        for stage in stages {
            let Some(recipe) = recipe_of(self.shop, self.batches, stage) else { return false };
            let base = 1.0 / recipe.total();
            // All base is in the pot: a lower share of it is a larger pot.
            more *= before.map_or(1.0, |before| before / base);
            before = Some(base);
            let holds = value(&stage["holds"]) + more;
            if !room.takes(&Filled::of(self.shop, &recipe, holds)) {
                return true;
            }
        }
        false
    }

    /// Checks a draw of a stage whose density has the relative uncertainty `unsure`; the mass that the injector keeps of it.
    fn draw(&mut self, at: &str, draw: &Value, recipe: &Recipe, unsure: Option<f64>) -> f64 {
        let name = text(&draw["mold"]);
        let at = format!("{at}, {name}");
        let mold = &self.shop.book["molds"][&name];
        if mold.is_null() {
            self.found.push(format!("{at}: the book has no such mold"));
            return 0.0;
        }
        let part = self.shown(&format!("{at}, share"), &draw["share"]);
        let (line, layer) = (whole(&draw["line"]) as usize, whole(&draw["layer"]) as usize);
        let is_its = |batch: &Batch| {
            let of = layer.checked_sub(1).and_then(|layer| batch.layers.get(layer));
            batch.mold == name
                && batch.lines.first().is_some_and(|first| first + 1 == line)
                && of.is_some_and(|(of, share)| of.is(recipe) && *share == part)
        };
        let known = self.batches.iter().any(is_its);
        self.object(known, || format!("{at}: not layer {layer} of line {line}"));
        let taken = taken(self.shop, mold, recipe, part);
        self.shown_as(&format!("{at}, shot"), &draw["per_shot"], taken.fill);
        let sprue = self.shown(&format!("{at}, sprue"), &draw["sprue"]);
        self.object((sprue - taken.sprue).abs() <= ROUNDING * taken.fill, || {
            format!("{at}: {sprue} g of sprue, must be {}", taken.sprue)
        });
        let shots = whole(&draw["shots"]);
        self.object(shots > 0, || format!("{at}: no shot"));
        let keeps = self.loads(&at, draw, shots, &taken);
        self.pieces(&at, draw, mold, shots, &taken, unsure);
        keeps
    }

    fn loads(&mut self, at: &str, draw: &Value, shots: u32, taken: &Taken) -> f64 {
        let injector = &self.shop.book["bench"]["injector"];
        let holds = self.shop.ml(&injector["holds"]);
        let keeps =
            if injector["keeps"].is_null() { 0.0 } else { self.shop.ml(&injector["keeps"]) };
        // The layers of a laminated piece are loaded together, so the smallest load of them counts.
        let part = value(&draw["share"]);
        let mold = &self.shop.book["molds"][text(&draw["mold"])];
        let candidates: Vec<u32> = self
            .batches
            .iter()
            .filter(|batch| draw["mold"] == batch.mold.as_str())
            .filter(|batch| batch.layers.iter().any(|(_, share)| *share == part))
            .map(|batch| {
                let loads = batch.layers.iter().map(|(recipe, share)| {
                    let taken = self::taken(self.shop, mold, recipe, *share);
                    ((holds - keeps) * taken.hot / taken.fill * (1.0 + ROUNDING)) as u32
                });
                loads.min().unwrap_or(0)
            })
            .collect();
        let per_load = whole(&draw["shots_per_load"]);
        self.object(candidates.contains(&per_load), || {
            format!("{at}: {per_load} shots a load, must be {candidates:?}")
        });
        let loads = whole(&draw["loads"]);
        self.object(per_load > 0 && loads == shots.div_ceil(per_load.max(1)), || {
            format!("{at}: {loads} loads of {per_load} for {shots} shots")
        });
        keeps * taken.hot
    }

    fn pieces(
        &mut self,
        at: &str,
        draw: &Value,
        mold: &Value,
        shots: u32,
        taken: &Taken,
        unsure: Option<f64>,
    ) {
        let cavities = self.shop.cavities(mold);
        let given = list(&draw["pieces"]);
        self.object(given.len() == cavities.len(), || format!("{at}: {} shapes", given.len()));
        for (pieces, (shape, count, volume)) in given.iter().zip(cavities) {
            let at = format!("{at}, {}", shape.clone().unwrap_or_default());
            let cavity = self.shop.cavity_unsure(mold, shape.as_deref());
            self.object(pieces["shape"] == Value::from(shape), || format!("{at}: shape"));
            let made = whole(&pieces["made"]);
            self.object(made == shots * count, || format!("{at}: {made} made"));
            let ordered = whole(&pieces["ordered"]);
            self.object(ordered <= made, || format!("{at}: {ordered} ordered of {made} made"));
            self.shown_as(&format!("{at}, weighs"), &pieces["weighs"], taken.per_ml * volume);
            match cavity.zip(unsure) {
                Some((cavity, density)) => {
                    let expected = taken.per_ml * volume * cavity.hypot(density);
                    self.shown_as(&format!("{at}, uncertainty"), &pieces["uncertainty"], expected);
                }
                None => self.object(pieces["uncertainty"].is_null(), || {
                    format!("{at}: it cannot be known how sure a piece is")
                }),
            }
            self.shown_as(&format!("{at}, from"), &pieces["from"], taken.not_fed * volume);
            self.shown_as(&format!("{at}, to"), &pieces["to"], taken.fed * volume);
            self.object(pieces["sinks_in"] == taken.sinks_in, || format!("{at}: sinks in"));
        }
    }

    /// The spare shots fit into what can still be drawn, and no other shot does.
    fn spare_shots(&mut self, name: &str, stages: &[Value], drawable: f64) {
        let mut rest = drawable;
        let mut smallest = f64::INFINITY;
        for (index, stage) in stages.iter().enumerate() {
            for draw in list(&stage["draws"]) {
                let spare = draw["spare_shots"].as_f64().unwrap_or(f64::NAN);
                let fill = value(&draw["per_shot"]);
                rest -= spare * fill;
                let alone = list(&draw["together_with"]).is_empty() && value(&draw["share"]) == 1.0;
                if index + 1 == stages.len() && alone {
                    smallest = smallest.min(fill);
                } else {
                    self.object(spare == 0.0, || {
                        format!("pot {name}: {spare} spare shots too early")
                    });
                }
            }
        }
        let bound = 1e-8 * smallest.min(1e9);
        self.object(rest >= -bound && (rest < smallest + bound), || {
            format!("pot {name}: {drawable} g left do not give just these spare shots")
        });
    }

    /// All pots together make the shots that the orders take, of every layer.
    fn shots_made(&mut self) {
        let mut made: Vec<Tally> = Vec::new();
        for stage in list(&self.plan["pots"]).iter().flat_map(|pot| list(&pot["stages"])) {
            let Some(recipe) = recipe_of(self.shop, self.batches, stage) else { continue };
            for draw in list(&stage["draws"]) {
                let (mold, part) = (text(&draw["mold"]), value(&draw["share"]));
                let ordered =
                    list(&draw["pieces"]).iter().map(|pieces| whole(&pieces["ordered"])).collect();
                tally(&mut made, mold, &recipe, part, (whole(&draw["shots"]), ordered));
            }
        }
        let mut asked: Vec<Tally> = Vec::new();
        for batch in self.batches {
            for (recipe, part) in &batch.layers {
                let wanted = (batch.shots, batch.ordered.clone());
                tally(&mut asked, batch.mold.clone(), recipe, *part, wanted);
            }
        }
        self.object(made.len() == asked.len(), || "draws that no order asks for".to_owned());
        for (mold, recipe, part, (shots, ordered)) in &asked {
            let found =
                made.iter().find(|one| one.0 == *mold && one.1.is(recipe) && one.2 == *part);
            let got = found.map_or(0, |one| one.3.0);
            self.object(got == *shots, || format!("{mold}: {got} shots, the orders take {shots}"));
            let got = found.map(|one| &one.3.1);
            self.object(got == Some(ordered), || {
                format!("{mold}: {got:?} for {ordered:?} ordered")
            });
        }
    }

    /// The order of work does all draws once, no pot goes back to a stage, layers come out of pots of their own that are
    /// hot at once and name each other, and each pot has the heats that it shows, by the clock too, and no more than the book
    /// allows.
    fn work(&mut self) {
        let pots = list(&self.plan["pots"]);
        let of = |name: &Value| pots.iter().position(|pot| pot["pot"] == *name);
        let injectors = self.shop.book["bench"]["injector"]["count"].as_u64().unwrap_or(1) as usize;
        // Where each pot is: its stage, and the draws of that stage that are done.
        let mut at: Vec<(usize, usize)> = vec![(0, 0); pots.len()];
        let mut heats = vec![0; pots.len()];
        // How long each pot has been hot, where the book says for how long one stays so and what a shot takes.
        let mut hot = vec![0.0; pots.len()];
        let hot_for = clock::hot_for(self.shop.book);
        for (index, work) in list(&self.plan["work"]).iter().enumerate() {
            let from = list(&work["from"]);
            let names: BTreeSet<String> = from.iter().map(|from| text(&from["pot"])).collect();
            self.object(names.len() == from.len() && names.len() <= injectors, || {
                format!("work {index}: {names:?} at once")
            });
            let mut share = 0.0;
            for one in from {
                let Some(pot) = of(&one["pot"]) else {
                    self.found.push(format!("work {index}: no pot {}", one["pot"]));
                    continue;
                };
                let stage = (whole(&one["stage"]) as usize).wrapping_sub(1);
                let done = if at[pot].0 == stage { at[pot].1 } else { 0 };
                self.object(stage >= at[pot].0, || {
                    format!("work {index}: pot {} goes back", one["pot"])
                });
                at[pot] = (stage, done + 1);
                if one["heat"] == true {
                    heats[pot] += 1;
                    hot[pot] = 0.0;
                }
                let every = |draw: &Value| clock::every(self.shop.book, &draw["mold"]);
                // A stage has no clock if the book does not time all of its shots, or no heat has time for one.
                let is_timed = list(&pots[pot]["stages"][stage]["draws"]).iter().all(|draw| {
                    let known = every(draw).zip(hot_for);
                    known.is_some_and(|(every, hot_for)| every <= hot_for * (1.0 + 1e-9))
                });
                for _ in 0..whole(&work["shots"]) {
                    let Some((hot_for, every)) = hot_for.zip(every(work)).filter(|_| is_timed)
                    else {
                        break;
                    };
                    if hot[pot] + every > hot_for * (1.0 + 1e-9) {
                        heats[pot] += 1;
                        hot[pot] = 0.0;
                    }
                    hot[pot] += every;
                }
                let draw = &pots[pot]["stages"][stage]["draws"][done];
                let right = draw["mold"] == work["mold"] && draw["shots"] == work["shots"];
                self.object(right, || {
                    format!("work {index}: it is not draw {done} of {}", one["pot"])
                });
                let mut with: BTreeSet<String> =
                    list(&draw["together_with"]).iter().map(text).collect();
                self.object(list(&draw["together_with"]).len() == with.len(), || {
                    format!("work {index}: a pot twice in {with:?}")
                });
                with.insert(text(&one["pot"]));
                self.object(with == names, || {
                    format!("work {index}: {with:?} at once, not {names:?}")
                });
                share += value(&draw["share"]);
            }
            self.object((share - 1.0).abs() < 1e-9, || format!("work {index}: layers of {share}"));
        }
        let draws = |pot: &Value| -> usize {
            list(&pot["stages"]).iter().map(|stage| list(&stage["draws"]).len()).sum()
        };
        let worked: usize = list(&self.plan["work"]).iter().map(|w| list(&w["from"]).len()).sum();
        let planned: usize = pots.iter().map(draws).sum();
        self.object(worked == planned, || format!("{worked} of {planned} draws are worked"));
        for (pot, heats) in pots.iter().zip(heats) {
            let told: u32 = list(&pot["stages"]).iter().map(|stage| whole(&stage["heats"])).sum();
            let count = whole(&pot["heats"]["count"]);
            self.object(heats == told && heats == count, || {
                format!("pot {}: {heats} heats, it shows {told} and {count}", pot["pot"])
            });
            let allowed = self.shop.book["limits"]["heats"].as_u64();
            self.object(allowed.is_none_or(|allowed| u64::from(heats) <= allowed), || {
                format!("pot {}: {heats} heats of {allowed:?}", pot["pot"])
            });
        }
    }

    fn lines(&mut self, orders: &Value) {
        let (lines, planned) = (list(&orders["lines"]), list(&self.plan["lines"]));
        self.object(lines.len() == planned.len(), || format!("{} lines", planned.len()));
        for (index, (line, planned)) in lines.iter().zip(planned).enumerate() {
            let at = format!("line {index}");
            for key in ["order", "packs", "pack_of", "promised", "ext"] {
                self.object(planned[key] == line[key], || format!("{at}: {key} {}", planned[key]));
            }
            let pieces = pieces(line);
            self.object(whole(&planned["pieces"]) == pieces, || format!("{at}: pieces"));
            let Some(place) = self.batches.iter().position(|batch| batch.lines.contains(&index))
            else {
                continue;
            };
            let (mold_name, layers) = {
                let batch = &self.batches[place];
                (batch.mold.clone(), batch.layers.clone())
            };
            self.object(planned["mold"] == mold_name.as_str(), || format!("{at}: mold"));
            let first = self.batches[place].lines.first().map_or(0, |first| first + 1);
            self.object(whole(&planned["pooled_with"]) as usize == first, || {
                format!("{at}: not pooled with {first}")
            });
            let mold = &self.shop.book["molds"][&mold_name];
            let cavities = self.shop.cavities(mold);
            // A mold with one shape has no need of its name.
            let only = (cavities.len() == 1).then(|| cavities[0].0.as_deref()).flatten();
            let wanted = line["shape"].as_str().or(only);
            let cavity = cavities.iter().find(|(shape, ..)| shape.as_deref() == wanted);
            let volume = cavity.map_or(f64::NAN, |(_, _, volume)| *volume);
            self.object(planned["shape"] == serde_json::json!(wanted), || format!("{at}: shape"));
            let weighs: f64 = layers
                .iter()
                .map(|(recipe, part)| taken(self.shop, mold, recipe, *part).per_ml * volume)
                .sum();
            self.shown_as(&format!("{at}, piece"), &planned["piece"], weighs);
            self.pots_of(&at, planned, &mold_name, &layers);
        }
    }

    /// The pots that a line names shoot its layers, each layer from one at least.
    fn pots_of(&mut self, at: &str, planned: &Value, mold: &str, layers: &[(Recipe, f64)]) {
        let named: BTreeSet<String> = list(&planned["pots"]).iter().map(text).collect();
        let mut serving: BTreeSet<String> = BTreeSet::new();
        for (recipe, part) in layers {
            let mut served = false;
            for pot in list(&self.plan["pots"]) {
                let shoots = list(&pot["stages"]).iter().any(|stage| {
                    recipe_of(self.shop, self.batches, stage).is_some_and(|other| other.is(recipe))
                        && list(&stage["draws"])
                            .iter()
                            .any(|draw| draw["mold"] == mold && value(&draw["share"]) == *part)
                });
                if shoots {
                    serving.insert(text(&pot["pot"]));
                    served |= named.contains(&text(&pot["pot"]));
                }
            }
            self.object(served, || format!("{at}: no pot for a layer"));
        }
        self.object(named.is_subset(&serving), || format!("{at}: pots {named:?}, of {serving:?}"));
    }

    /// A bench measure adds up to what it claims, with tools that there are.
    fn way(&mut self, at: &str, way: &Value, name: &str, wanted: f64, total: f64) {
        let (tool, measure) = (text(&way["tool"]), text(&way["measure"]));
        let at = format!("{at}, {measure}");
        let gives = self.shown(&at, &way["gives"]);
        let off = self.shown(&format!("{at}, off"), &way["off"]);
        self.object((off - (gives - wanted) / total).abs() <= ROUNDING, || {
            format!("{at}: off {off}")
        });
        if measure == "nothing" {
            self.object(gives == 0.0 && tool == "balance", || {
                format!("{at}: nothing gives {gives} g")
            });
            return;
        }
        match self.adds_up(&tool, &measure, name) {
            Ok((sum, exact)) => self.object((sum - gives).abs() <= exact * gives, || {
                format!("{at}: it adds up to {sum} g, not {gives} g")
            }),
            Err(why) => self.found.push(format!("{at}: {why}")),
        }
    }

    /// The mass that a measure gives, and how exactly its words say it.
    fn adds_up(&self, tool: &str, measure: &str, name: &str) -> Result<(f64, f64), String> {
        if !matches!(tool, "balance" | "cup" | "spoons" | "drops") {
            return Err(format!("what is a {tool}?"));
        }
        let bench = &self.shop.book["bench"];
        let material = &self.shop.materials[name];
        let mut sum = 0.0;
        for term in measure.split(" + ") {
            let (times, what) = match term.split_once(" × ") {
                Some((times, what)) => (times.parse().map_err(|_| "times what?".to_owned())?, what),
                None => (1.0, term),
            };
            amount::number(what).ok_or_else(|| format!("{what} has no number"))?;
            if tool == "drops" {
                let drops = amount::drops(what).ok_or("not in drops")?;
                let drop = material.drop_g.or(material.liquid.map(|density| density * 0.05));
                sum += times * drops * drop.ok_or("it has no drop")?;
                continue;
            }
            if tool == "balance" {
                let (total, weighings) = match what.split_once(" in ") {
                    Some((total, weighings)) => {
                        let count = weighings.strip_suffix(" weighings").ok_or("in what?")?;
                        (total, count.parse::<f64>().map_err(|_| "how many times?".to_owned())?)
                    }
                    None => (what, 1.0),
                };
                let grams = amount::g(total).ok_or("not in grams")?;
                self.weighable(grams, weighings)?;
                sum += times * grams;
                continue;
            }
            let ml = amount::ml(what, self.shop.system)
                .ok_or_else(|| format!("{what} is not a volume"))?;
            let is = |value: &Value| (self.shop.ml(value) - ml).abs() <= WORDS * ml;
            let a_spoon = list(&bench["spoons"]).iter().any(is);
            let a_mark = list(&bench["cups"]).iter().any(|cup| {
                let mark = if cup["marks"].is_null() { &cup["holds"] } else { &cup["marks"] };
                let marks = ml / self.shop.ml(mark);
                (marks - marks.round()).abs() <= WORDS * marks
                    && ml <= self.shop.ml(&cup["holds"]) * (1.0 + WORDS)
            });
            let by_eye = list(&self.plan["assumptions"])
                .iter()
                .any(|note| text(&note["message"]).contains("between two marks"));
            if !(a_spoon || tool == "cup" && (a_mark || by_eye)) {
                return Err(format!("the bench has no {what}"));
            }
            sum += times * ml * material.spoon_g_per_ml().ok_or("no density")?;
        }
        let exact = if matches!(tool, "balance" | "drops") { ROUNDING } else { WORDS };
        Ok((sum, exact))
    }

    /// Whether the scale can show this number, or this sum of several weighings.
    fn weighable(&self, grams: f64, weighings: f64) -> Result<(), String> {
        let balance = &self.shop.book["bench"]["balance"];
        let g = |key: &str| balance[key].as_str().and_then(amount::g);
        let reads = g("reads").ok_or("there is no scale")?;
        let steps = grams / reads;
        let most = g("to").unwrap_or(5000.0 * reads);
        if (steps - steps.round()).abs() > 1e-6 * steps {
            return Err(format!("{grams} g is between two readings"));
        }
        let (each, least) = (grams / weighings, g("from").unwrap_or(0.0));
        // Several weighings are split evenly, to a step of the scale.
        let step = if weighings > 1.0 { reads } else { 0.0 };
        let inside = each + step >= least * (1.0 - 1e-9) && each - step <= most * (1.0 + 1e-9);
        if inside { Ok(()) } else { Err(format!("{grams} g is outside the scale's range")) }
    }
}

/// Masses of one shot of a layer with `share` of `mold`.
pub(crate) fn taken(shop: &Shop<'_>, mold: &Value, recipe: &Recipe, part: f64) -> Taken {
    let (hot, cold) = shop.hot_and_cold(recipe);
    let voids = share(&mold["voids"]).unwrap_or(0.0);
    let top = mold["top"].as_str().map_or(0.0, |top| amount::g(top).unwrap_or(f64::NAN)) * part;
    let sprue_ml = if mold["sprue"].is_null() { 0.0 } else { shop.ml(&mold["sprue"]) };
    let cavities: f64 = shop
        .cavities(mold)
        .iter()
        .map(|(_, count, volume)| f64::from(*count) * volume * part)
        .sum();
    let runner = sprue_ml * part * hot * (1.0 - voids) + top;
    let feed = share(&mold["feed"]).unwrap_or(0.5);
    let wanted =
        piece_g(cavities, hot, cold, voids, feed) - piece_g(cavities, hot, cold, voids, 0.0);
    let fed = wanted.min(runner);
    let really = if wanted > 0.0 { feed * fed / wanted } else { feed };
    Taken {
        fill: piece_g(cavities, hot, cold, voids, 0.0) + runner,
        sprue: runner - fed,
        per_ml: piece_g(part, hot, cold, voids, really),
        not_fed: piece_g(part, hot, cold, voids, 0.0),
        fed: piece_g(part, hot, cold, voids, 1.0),
        sinks_in: wanted > runner,
        hot: hot * (1.0 - voids),
    }
}

/// Shots and pieces ordered by shape, by mold, recipe and share of the cavity.
type Tally = (String, Recipe, f64, (u32, Vec<u32>));

fn tally(
    sums: &mut Vec<Tally>,
    mold: String,
    recipe: &Recipe,
    part: f64,
    (shots, ordered): (u32, Vec<u32>),
) {
    let known = sums.iter_mut().find(|one| one.0 == mold && one.1.is(recipe) && one.2 == part);
    match known {
        Some(one) => {
            one.3.0 += shots;
            one.3.1.iter_mut().zip(ordered).for_each(|(sum, more)| *sum += more);
        }
        None => sums.push((mold, recipe.clone(), part, (shots, ordered))),
    }
}

/// Whether a text in cups is a number of milliliters to the nearest eighth of a cup.
fn is_near_in_cups(text: &str, ml: f64, system: &str) -> bool {
    if !text.ends_with("cup") || amount::number(text).is_none() {
        return false;
    }
    let cup = amount::household_ml("cup", system).unwrap_or(f64::NAN);
    let said = amount::ml(text, system).unwrap_or(f64::NAN);
    (said - ml).abs() <= cup / 16.0 * (1.0 + 1e-6)
}

/// Whether `text` shows `number` as well as its digits can.
fn says(text: &str, number: f64, unit: &str, system: &str) -> bool {
    let Some((first, rest)) = amount::number(text) else { return false };
    let within = |bound: f64| (first - number).abs() <= bound * (1.0 + 1e-6);
    match unit {
        "g" => rest == "g" && within(if number < 9.995 { 0.005 } else { 0.05 }),
        "g/mL" => rest == "g/mL" && within(0.0005),
        "1" => rest == "%" && (first / 100.0 - number).abs() <= 0.000_5 * (1.0 + 1e-6),
        "°C" => {
            if !matches!(rest, "°F" | "°C") {
                return false;
            }
            let bound = if text.ends_with("°F") { 0.5 / 1.8 } else { 0.5 };
            (amount::celsius(text) - number).abs() <= bound + 1e-6
        }
        "mL" => {
            let ml = amount::ml(text, system).unwrap_or(f64::NAN);
            let half = if rest == "mL" { 0.5 * (1.0 + 1e-6) } else { 0.0 };
            (ml - number).abs() <= (WORDS * number).max(half)
        }
        _ => false,
    }
}

//! A shop's book in plain numbers, and what formulas come to in it.

use std::cell::RefCell;
use std::collections::BTreeMap;

use serde_json::Value;

use super::amount;
use super::mix::{Part, density_g_per_ml, volume_ml};

/// A material in plain numbers.
#[derive(Debug, Clone)]
pub struct Material {
    /// Its kind, as in the book.
    pub kind: String,
    /// True density at 20 °C, of a plastisol that of the liquid.
    pub liquid: Option<f64>,
    /// Density in a finished piece.
    pub finished: Option<f64>,
    /// Density as a spoon holds it.
    pub scooped: Option<f64>,
    /// Mass of one drop, where the shop has it.
    pub drop_g: Option<f64>,
    /// Volumetric expansion, 0 where it is not known.
    pub expansion: f64,
    /// Lowest and highest shot temperature.
    pub window: Option<(f64, f64)>,
    /// Relative tolerance of a dose.
    pub tolerance: Option<f64>,
    /// Whether its specific heat is stated.
    pub has_specific_heat: bool,
}

impl Material {
    /// Whether a spoon holds it with air between its grains.
    pub fn is_powder(&self) -> bool {
        matches!(self.kind.as_str(), "pearl" | "flake" | "salt") || self.scooped.is_some()
    }

    /// Grams in a milliliter of spoon.
    pub fn spoon_g_per_ml(&self) -> Option<f64> {
        if self.is_powder() { self.scooped } else { self.liquid }
    }
}

/// Recipe of formulas: parts of every material to one part of base, by mass.
#[derive(Debug, Clone)]
pub struct Recipe {
    /// The plastisols of the base; their parts sum to 1.
    pub base: BTreeMap<String, f64>,
    /// The additives.
    pub additives: BTreeMap<String, f64>,
}

impl Recipe {
    /// Parts of everything together to one part of base.
    pub fn total(&self) -> f64 {
        1.0 + self.additives.values().sum::<f64>()
    }

    /// Mass fractions of the finished mix.
    pub fn fractions(&self) -> BTreeMap<String, f64> {
        let total = self.total();
        let all = self.base.iter().chain(&self.additives);
        all.map(|(name, part)| (name.clone(), part / total)).collect()
    }

    /// Whether two recipes are the same to rounding.
    pub fn is(&self, other: &Self) -> bool {
        let (a, b) = (self.fractions(), other.fractions());
        a.keys().eq(b.keys()) && a.iter().all(|(name, x)| (x - b[name]).abs() <= 1e-12)
    }
}

/// A book in plain numbers.
#[derive(Debug)]
pub struct Shop<'a> {
    /// The document.
    pub book: &'a Value,
    /// The measuring system.
    pub system: &'a str,
    /// The materials by name.
    pub materials: BTreeMap<String, Material>,
    /// Recipes that were asked for before, by formulas and rule of overlap.
    recipes: RefCell<BTreeMap<String, Recipe>>,
}

impl<'a> Shop<'a> {
    /// Reads a valid book; `starter` is the table that `like` refers to.
    pub fn new(book: &'a Value, starter: &Value) -> Self {
        let system = book["measures"].as_str().unwrap_or_default();
        let materials = book["materials"].as_object().into_iter().flatten();
        let materials = materials
            .map(|(name, entry)| (name.clone(), material(entry, &starter["materials"], system)))
            .collect();
        Self { book, system, materials, recipes: RefCell::default() }
    }

    /// Milliliters of a volume in the book's measures.
    pub fn ml(&self, value: &Value) -> f64 {
        let text = amount::text(value);
        amount::ml(&text, self.system).unwrap_or_else(|| panic!("no volume: {text}"))
    }

    /// A share in per cent at `key` of the limits.
    pub fn limit(&self, key: &str) -> Option<f64> {
        share(&self.book["limits"][key])
    }

    /// Recipe of `formulas` together.
    pub fn recipe(&self, formulas: &[&str], overlap: &str) -> Recipe {
        let key = format!("{formulas:?} {overlap}");
        if let Some(known) = self.recipes.borrow().get(&key) {
            return known.clone();
        }
        let recipe = self.combine(formulas, overlap);
        self.recipes.borrow_mut().insert(key, recipe.clone());
        recipe
    }

    fn combine(&self, formulas: &[&str], overlap: &str) -> Recipe {
        let entries: Vec<&Value> =
            formulas.iter().map(|name| &self.book["formulas"][name]).collect();
        let named = entries.iter().find(|entry| !entry["base"].is_null());
        let base = match named.map(|entry| &entry["base"]) {
            Some(Value::Object(blend)) => {
                let parts = blend
                    .iter()
                    .map(|(name, amount)| (name.clone(), self.dose_g(name, &amount::text(amount))));
                normalized(parts.collect())
            }
            Some(name) => BTreeMap::from([(text(name), 1.0)]),
            None => BTreeMap::from([(text(&self.book["default_base"]), 1.0)]),
        };
        let base_ml: f64 = base.iter().map(|(name, part)| part / self.liquid(name)).sum();

        let mut doses: Vec<(usize, String, Dose)> = Vec::new();
        for (place, entry) in entries.iter().enumerate() {
            for (name, amount) in entry["doses"].as_object().into_iter().flatten() {
                if overlap == "last" {
                    doses.retain(|(other, dosed, _)| dosed != name || *other == place);
                }
                let dose = self.dose(name, &amount::text(amount), &entry["per"], base_ml);
                doses.push((place, name.clone(), dose));
            }
        }
        let additives = self.settle(&doses, base_ml);
        Recipe { base, additives }
    }

    fn liquid(&self, name: &str) -> f64 {
        self.materials[name].liquid.unwrap_or_else(|| panic!("no density of {name}"))
    }

    /// Grams of a dose that is not a share.
    fn dose_g(&self, name: &str, text: &str) -> f64 {
        let material = &self.materials[name];
        if let Some(grams) = amount::g(text) {
            grams
        } else if let Some(drops) = amount::drops(text) {
            let drop = material.drop_g.unwrap_or_else(|| 0.05 * self.liquid(name));
            drops * drop
        } else {
            let ml = amount::ml(text, self.system).unwrap_or_else(|| panic!("no dose: {text}"));
            ml * material.spoon_g_per_ml().unwrap_or_else(|| panic!("no density of {name}"))
        }
    }

    fn dose(&self, name: &str, text: &str, per: &Value, base_ml: f64) -> Dose {
        if let Some((share, of)) = amount::share(text) {
            return match of.as_str() {
                "of base" => Dose::PerBase(share),
                "of base by volume" => Dose::PerBase(share * base_ml * self.liquid(name)),
                "of finished" => Dose::OfMass(share),
                "of finished by volume" => Dose::OfVolume(share),
                other => panic!("a share of what: {other}"),
            };
        }
        let per = amount::text(per);
        let base_g =
            amount::g(&per).or_else(|| amount::ml(&per, self.system).map(|ml| ml / base_ml));
        Dose::PerBase(self.dose_g(name, text) / base_g.unwrap_or_else(|| panic!("per {per}?")))
    }

    /// Settles the shares of the finished mix by filling up again and again until nothing moves.
    fn settle(&self, doses: &[(usize, String, Dose)], base_ml: f64) -> BTreeMap<String, f64> {
        let mut additives: BTreeMap<String, f64> = BTreeMap::new();
        for _ in 0..10_000 {
            let mass: f64 = 1.0 + additives.values().sum::<f64>();
            let volume: f64 = base_ml
                + additives.iter().map(|(name, part)| part / self.liquid(name)).sum::<f64>();
            let mut next: BTreeMap<String, f64> = BTreeMap::new();
            for (_, name, dose) in doses {
                *next.entry(name.clone()).or_default() += match dose {
                    Dose::PerBase(part) => *part,
                    Dose::OfMass(share) => share * mass,
                    Dose::OfVolume(share) => share * volume * self.liquid(name),
                };
            }
            let still = next
                .iter()
                .all(|(name, part)| additives.get(name).is_some_and(|old| close(*old, *part)));
            additives = next;
            if still {
                break;
            }
        }
        additives.retain(|_, part| *part > 0.0);
        additives
    }

    /// The constituents of one gram of a recipe, as the cup holds them or as a piece does.
    pub fn parts(&self, recipe: &Recipe, finished: bool) -> Vec<Part> {
        let fractions = recipe.fractions();
        fractions
            .iter()
            .map(|(name, &mass_g)| {
                let material = &self.materials[name];
                let density = if finished { material.finished } else { material.liquid };
                Part {
                    mass_g,
                    density_g_per_ml: density.unwrap_or_else(|| panic!("no density of {name}")),
                    expansion_per_k: material.expansion,
                }
            })
            .collect()
    }

    /// Density of the mix as the cup holds it, cold.
    pub fn cup_g_per_ml(&self, recipe: &Recipe) -> f64 {
        density_g_per_ml(&self.parts(recipe, false), 20.0, 0.0)
    }

    /// Volume of one gram of base, cold and liquid.
    pub fn base_ml_per_g(&self, recipe: &Recipe) -> f64 {
        recipe.base.iter().map(|(name, part)| part / self.liquid(name)).sum()
    }

    /// Share of a finished piece that is powder, by true volume.
    pub fn solids(&self, recipe: &Recipe) -> f64 {
        let parts = self.parts(recipe, true);
        let fractions = recipe.fractions();
        let powders = fractions.keys().zip(&parts).filter(|(n, _)| self.materials[*n].is_powder());
        powders.map(|(_, part)| part.mass_g / part.density_g_per_ml).sum::<f64>()
            / volume_ml(&parts, 20.0)
    }

    /// The temperatures that all plastisols of the base allow.
    pub fn window(&self, recipe: &Recipe) -> Option<(f64, f64)> {
        let mut common = (f64::NEG_INFINITY, f64::INFINITY);
        for name in recipe.base.keys() {
            let (low, high) = self.materials[name].window?;
            common = (common.0.max(low), common.1.min(high));
        }
        Some(common)
    }

    /// Density of the fused mix hot, in the middle of its window, and cold.
    pub fn hot_and_cold(&self, recipe: &Recipe) -> (f64, f64) {
        let hot_at = self.window(recipe).map_or(20.0, |(low, high)| (low + high) / 2.0);
        let parts = self.parts(recipe, true);
        (density_g_per_ml(&parts, hot_at, 0.0), density_g_per_ml(&parts, 20.0, 0.0))
    }

    /// The cavities of a mold: shape, count, volume.
    pub fn cavities(&self, mold: &Value) -> Vec<(Option<String>, u32, f64)> {
        match &mold["cavities"] {
            Value::Object(shapes) => shapes
                .iter()
                .map(|(shape, entry)| {
                    (Some(shape.clone()), whole(&entry["count"]), self.cavity_ml(&entry["cavity"]))
                })
                .collect(),
            count => vec![(None, whole(count), self.cavity_ml(&mold["cavity"]))],
        }
    }

    /// How unsure the cavity of `shape` is, relative to its volume: as the volume, or the reading of its water.
    pub fn cavity_unsure(&self, mold: &Value, shape: Option<&str>) -> Option<f64> {
        let cavity = match shape {
            Some(shape) => &mold["cavities"][shape]["cavity"],
            None => &mold["cavity"],
        };
        let measured = if cavity["water"].is_null() { cavity } else { &cavity["water"] };
        amount::unsure(&amount::text(measured))
    }

    fn cavity_ml(&self, cavity: &Value) -> f64 {
        if cavity["water"].is_null() {
            return self.ml(cavity);
        }
        let grams = amount::g(&amount::text(&cavity["water"])).unwrap_or(f64::NAN);
        water_ml(grams, amount::celsius(&amount::text(&cavity["at"])))
    }
}

/// One dose as it enters the settling.
enum Dose {
    PerBase(f64),
    OfMass(f64),
    OfVolume(f64),
}

fn material(entry: &Value, starter: &Value, system: &str) -> Material {
    let row = &starter[entry["like"].as_str().unwrap_or_default()];
    let stated = |key: &str| {
        let value = if entry[key].is_null() { &row[key] } else { &entry[key] };
        (!value.is_null()).then(|| amount::text(value))
    };
    let kind = text(&entry["kind"]);
    let density = |key: &str| stated(key).map(|text| amount::g_per_ml(&text));
    let (mut liquid, mut scooped) = (density("density"), density("as_scooped"));
    // A dry pigment borrows nothing.
    if scooped.is_none() || matches!(kind.as_str(), "pearl" | "flake" | "salt") {
        let grains = lent(&kind, "density", starter);
        liquid = liquid.or(grains.filter(|grains| scooped.is_none_or(|bulk| *grains >= bulk)));
        let bulk = lent(&kind, "as_scooped", starter);
        scooped = scooped.or(bulk.filter(|bulk| liquid.is_none_or(|grains| *bulk <= grains)));
    }
    let drop_g = stated("drop").map(|text| {
        amount::g(&text).unwrap_or_else(|| {
            amount::ml(&text, system).unwrap_or(f64::NAN) * liquid.unwrap_or(f64::NAN)
        })
    });
    let window = entry["shot_window"].as_array().map(|ends| {
        (amount::celsius(&amount::text(&ends[0])), amount::celsius(&amount::text(&ends[1])))
    });
    Material {
        kind,
        liquid,
        finished: stated("fused").map(|text| amount::g_per_ml(&text)).or(liquid),
        scooped,
        drop_g,
        expansion: stated("expansion").map_or(0.0, |text| amount::per_kelvin(&text)),
        window,
        tolerance: share(&entry["tolerance"]),
        has_specific_heat: stated("specific_heat").is_some(),
    }
}

/// A share such as `"3 %"`, where there is one.
pub fn share(value: &Value) -> Option<f64> {
    value.as_str().and_then(amount::share).map(|(share, _)| share)
}

/// A text, empty where there is none.
pub fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

/// A whole number, 0 where there is none.
pub fn whole(value: &Value) -> u32 {
    value.as_u64().and_then(|n| u32::try_from(n).ok()).unwrap_or(0)
}

fn normalized(parts: BTreeMap<String, f64>) -> BTreeMap<String, f64> {
    let sum: f64 = parts.values().sum();
    parts.into_iter().map(|(name, part)| (name, part / sum)).collect()
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-16 * a.abs().max(b.abs())
}

/// Volume of a cavity that holds `grams` of water, weighed in air at sea level (Tanaka 2001, ISO 8655-6,
/// OIML R 111-1).
fn water_ml(grams: f64, t: f64) -> f64 {
    let deviation = (t - 3.983035).powi(2) * (t + 301.797) / (522_528.9 * (t + 69.348_81));
    let water = 0.999_974_95 * (1.0 - deviation);
    let air = (0.34848 * 1013.25 - 0.009 * 50.0 * (0.061 * t).exp()) / (273.15 + t) / 1000.0;
    grams * (1.0 - air / 8.0) / (water - air)
}

/// What is borrowed for a density in g/mL that a book leaves out: a row of the starter table, or common practice, no source.
fn lent(kind: &str, key: &str, starter: &Value) -> Option<f64> {
    let row = |name: &str| Some(amount::g_per_ml(&amount::text(&starter[name][key])));
    match (kind, key) {
        ("plastisol", "density") => Some(1.03),
        ("hardener" | "stabilizer", "density") => Some(1.05),
        ("colorant", "density") => Some(1.1),
        ("softener", "density") => row("dehp"),
        ("scent", "density") => row("anise-oil"),
        ("pearl", "density") => row("mica-muscovite"),
        ("pearl", "as_scooped") => Some(0.4),
        ("flake", "density") => row("pet-flake"),
        ("flake", "as_scooped") => Some(0.6),
        ("salt", _) => row("sodium-chloride"),
        _ => None,
    }
}

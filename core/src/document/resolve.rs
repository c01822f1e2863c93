//! From documents as they are written to a book and orders ready for planning.
//!
//! Names are looked up, amounts become numbers, recipes are tried out; all faults are
//! reported together, each with its path.

use alloc::borrow::ToOwned;
use alloc::collections::BTreeSet;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::book::{
    BaseEntry, BenchEntry, BookDocument, CavitiesEntry, CavityVolume, FormulaEntry, LayerEntry,
    LimitsEntry, MaterialEntry, MoldEntry, SourcedDrop,
};
use super::named::Named;
use super::orders::{OrderLine, OrdersDocument};
use super::process::ToolUncertaintyEntry;
use super::reader::{Name, nearest, pointer};
use super::starter;
use super::written::{Percent, Sourced, Written};
use crate::batch;
use crate::book::{Book, Cavities, Injector, Layer, Limits, Mold, Product, Vessel};
use crate::fault::{Diagnose, Fault, Faults};
use crate::formula::{Dose, Formula, Overlap};
use crate::material::{Drop, Kind, Material, ShotWindow};
use crate::mix::{MaterialId, Materials};
use crate::plan::day::{Day, Line, recipe_of};
use crate::plan::measures::{Balance, Bench, Cup, Limits as Handling};
use crate::quantity::{
    Amount, Dimension, Measurable, Measured, Pressure, Ratio, Rational, System, Unit, Volume,
};
use crate::uncertainty::ToolUncertainty;
use crate::water;

mod actuals;
mod costing;
pub(crate) mod process;
mod shelf;

/// Faults found so far, the system that amounts are read in, and what need not be done twice.
pub(crate) struct Resolver {
    system: System,
    faults: Vec<Fault>,
    /// The starter table, read when the first material is like one of its rows.
    starter: Option<Materials>,
    /// Formulas that were found to combine, so that a thousand order lines try them once.
    combined: BTreeSet<(Vec<usize>, Overlap)>,
}

impl Resolver {
    const fn new(system: System) -> Self {
        Self { system, faults: Vec::new(), starter: None, combined: BTreeSet::new() }
    }

    fn keep<T, E: Diagnose>(&mut self, path: &str, result: Result<T, E>) -> Option<T> {
        result.map_err(|error| self.faults.push(Fault::at(path, &error))).ok()
    }

    fn fault(&mut self, code: &'static str, path: &str, message: String, help: String) {
        self.faults.push(Fault { code: code.into(), path: path.to_owned(), message, help });
    }

    /// A quantity above zero.
    fn positive<Q: Measurable>(&mut self, path: &str, written: &Written<Q>) -> Option<Q> {
        let quantity = self.keep(path, written.to(self.system))?;
        if quantity.si() > 0.0 {
            return Some(quantity);
        }
        self.fault(
            "not-positive",
            path,
            format!("{written} is not above zero."),
            "Write an amount above zero, or leave the field out.".to_owned(),
        );
        None
    }

    fn property<Q: Measurable>(
        &mut self,
        parent: &str,
        name: &str,
        written: Option<&Sourced<Q>>,
    ) -> Option<Measured<Q>> {
        let written = written?;
        let path = pointer(parent, name);
        self.positive(&path, &written.value)?;
        self.keep(&path, written.measured(self.system))
    }

    /// A number that may be zero, and is where it is left out.
    fn or_zero<Q: Measurable + Default>(&mut self, path: &str, written: Option<&Written<Q>>) -> Q {
        written.and_then(|written| self.keep(path, written.to(self.system))).unwrap_or_default()
    }

    /// The place of `name` in a list, or the fault that there is none.
    fn find<'a, T>(
        &mut self,
        what: &'static str,
        path: &str,
        name: &str,
        found: Option<T>,
        known: impl Iterator<Item = &'a str>,
    ) -> Option<T> {
        if found.is_none() {
            let known: Vec<&str> = known.collect();
            let help = match nearest(name, known.iter().copied()) {
                Some(near) => format!("Did you mean \"{near}\"?"),
                None if known.is_empty() => {
                    format!("There is no {what} at all yet; add it to the book.")
                }
                None => format!("Known: {}.", shortened_list(&known)),
            };
            self.fault("unknown-name", path, format!("There is no {what} \"{name}\"."), help);
        }
        found
    }
}

fn shortened_list(names: &[&str]) -> String {
    const SHOWN: usize = 12;
    let mut list: Vec<&str> = names.iter().copied().take(SHOWN).collect();
    if names.len() > SHOWN {
        list.push("...");
    }
    list.join(", ")
}

impl TryFrom<&BookDocument> for Book {
    type Error = Faults;

    fn try_from(document: &BookDocument) -> Result<Self, Faults> {
        let mut resolver = Resolver::new(document.measures);
        let book = resolver.book(document);
        resolver.finish(book)
    }
}

pub(crate) fn incomplete() -> Fault {
    Fault {
        code: "unreadable".into(),
        path: String::new(),
        message: "The document could not be read.".into(),
        help: "Compare it with the JSON Schema.".into(),
    }
}

impl Resolver {
    /// What was read, or all faults.
    fn finish<T>(self, read: Option<T>) -> Result<T, Faults> {
        match (Faults::from_vec(self.faults), read) {
            (Some(faults), _) => Err(faults),
            (None, Some(read)) => Ok(read),
            (None, None) => Err(Faults::from(incomplete())),
        }
    }
}

/// Reads the materials below `path` alone, such as those of the starter table.
pub(crate) fn materials(
    path: &str,
    entries: &Named<MaterialEntry>,
    system: System,
) -> Result<Materials, Faults> {
    let mut resolver = Resolver::new(system);
    let materials = entries
        .iter()
        .map(|(name, entry)| resolver.material(&pointer(path, name), name, entry))
        .collect();
    resolver.finish(Some(Materials::new(materials)))
}

/// Reads the one material at `path`.
pub(crate) fn material(
    path: &str,
    entry: &MaterialEntry,
    system: System,
) -> Result<Material, Faults> {
    let mut resolver = Resolver::new(system);
    let material = resolver.material(path, "the material", entry);
    resolver.finish(Some(material))
}

/// Reads the one mold at `path`.
pub(crate) fn mold(path: &str, entry: &MoldEntry, system: System) -> Result<Mold, Faults> {
    let mut resolver = Resolver::new(system);
    let mold = resolver.mold(path, "the mold", entry);
    resolver.finish(mold)
}

/// Reads the tools at `path`.
pub(crate) fn bench(path: &str, entry: &BenchEntry, system: System) -> Result<Bench, Faults> {
    let mut resolver = Resolver::new(system);
    let bench = resolver.bench(path, entry).map(|(tools, ..)| tools);
    resolver.finish(bench)
}

/// A base that stands alone: its amount does not count.
fn only_base(material: MaterialId) -> Option<Dose> {
    Some(Dose { material, amount: Amount::new(Rational::ONE, Unit::GRAM).ok()? })
}

impl Resolver {
    fn book(&mut self, document: &BookDocument) -> Option<Book> {
        let materials = Materials::new(
            document
                .materials
                .iter()
                .map(|(name, entry)| self.material(&pointer("/materials", name), name, entry))
                .collect(),
        );
        let default_base =
            document.default_base.as_ref().and_then(|name| self.default_base(name, &materials));
        let formulas: Vec<Formula> = document
            .formulas
            .iter()
            .map(|(name, entry)| self.formula(name, entry, &materials))
            .collect();
        let molds: Vec<Option<Mold>> = document
            .molds
            .iter()
            .map(|(name, entry)| self.mold(&pointer("/molds", name), name, entry))
            .collect();
        let altitude =
            document.altitude.as_ref().and_then(|altitude| altitude.to(self.system).ok());
        let air = self.air(document.altitude.as_ref(), document.air_pressure.as_ref());
        let bench = self.bench("/bench", &document.bench);
        let vacuum = document.bench.vacuum.as_ref();
        let chamber = vacuum.and_then(|vacuum| self.chamber("/bench/vacuum", vacuum, air));
        let oven = self.oven(document, &materials, default_base);
        let limits = self.limits(document.limits.as_ref());
        let costing = document.costing.as_ref();
        let costing = costing.and_then(|costing| self.costing(costing, &materials));
        let molds: Vec<Mold> = molds.into_iter().collect::<Option<_>>()?;
        let (tools, vessels, injector) = bench?;
        let mut book = Book {
            shop: document.shop.as_ref().map(|shop| shop.0.clone()),
            system: self.system,
            altitude,
            air,
            materials,
            default_base,
            formulas,
            molds,
            products: Vec::new(),
            tools,
            unsure: tool_uncertainty(document.bench.uncertainty.as_ref()),
            vessels,
            injector,
            chamber,
            oven,
            limits,
            costing,
        };
        let products: Vec<Option<Product>> = document
            .products
            .iter()
            .flatten()
            .map(|(name, entry)| {
                let path = pointer("/products", name);
                let wanted = Wanted {
                    mold: Some(&entry.mold),
                    formulas: entry.formulas.as_deref(),
                    overlap: entry.overlap,
                    layers: entry.layers.as_deref(),
                };
                self.product(name, &wanted, &path, &book)
            })
            .collect();
        book.products = products.into_iter().collect::<Option<_>>()?;
        Some(book)
    }

    fn default_base(&mut self, name: &Name, materials: &Materials) -> Option<MaterialId> {
        let path = "/default_base";
        let found = self.find_material(materials, name, path)?;
        let kind = self.keep(path, materials.get(found))?.kind;
        if kind != Kind::Plastisol {
            self.fault(
                "base-no-plastisol",
                path,
                format!("\"{}\" is a {kind}; a pot starts from a plastisol.", name.0),
                format!("Name a plastisol here, or give \"{}\" the kind \"plastisol\".", name.0),
            );
            return None;
        }
        Some(found)
    }

    fn find_material(
        &mut self,
        materials: &Materials,
        name: &Name,
        path: &str,
    ) -> Option<MaterialId> {
        let names = materials.iter().map(|(_, material)| material.name.as_str());
        self.find("material", path, &name.0, materials.find(&name.0), names)
    }

    fn material(&mut self, path: &str, name: &str, entry: &MaterialEntry) -> Material {
        let generic = entry.like.as_ref().and_then(|like| self.starter(path, like));
        let mut material = match generic {
            Some(generic) => Material { name: name.to_owned(), kind: entry.kind, ..generic },
            None => Material::new(name, entry.kind),
        };
        fill(&mut material.density, self.property(path, "density", entry.density.as_ref()));
        fill(&mut material.fused, self.property(path, "fused", entry.fused.as_ref()));
        fill(
            &mut material.as_scooped,
            self.property(path, "as_scooped", entry.as_scooped.as_ref()),
        );
        fill(&mut material.expansion, self.property(path, "expansion", entry.expansion.as_ref()));
        fill(
            &mut material.specific_heat,
            self.property(path, "specific_heat", entry.specific_heat.as_ref()),
        );
        let drop = match &entry.drop {
            Some(SourcedDrop::Mass(mass)) => {
                self.property(path, "drop", Some(mass)).map(Drop::Mass)
            }
            Some(SourcedDrop::Volume(volume)) => {
                self.property(path, "drop", Some(volume)).map(Drop::Volume)
            }
            None => None,
        };
        fill(&mut material.drop, drop);
        fill(&mut material.shot_window, self.shot_window(path, entry));
        fill(&mut material.price, entry.price.as_ref().map(|price| price.0.clone()));
        fill(&mut material.notes, entry.notes.clone());
        material.tolerance = self.tolerance(&pointer(path, "tolerance"), entry.tolerance);
        self.heat_and_flake(path, entry, &mut material);
        self.check_densities(path, &material);
        material
    }

    fn starter(&mut self, path: &str, like: &Name) -> Option<Material> {
        let path = pointer(path, "like");
        let table = match self.starter.take().map_or_else(starter::materials, Ok) {
            Ok(table) => table,
            Err(faults) => {
                self.faults.extend(faults.into_vec());
                return None;
            }
        };
        let names = table.iter().map(|(_, material)| material.name.as_str());
        let found = table.find(&like.0).and_then(|id| table.get(id).ok());
        let found = self.find("starter material", &path, &like.0, found, names).cloned();
        self.starter = Some(table);
        found
    }

    fn shot_window(&mut self, path: &str, entry: &MaterialEntry) -> Option<ShotWindow> {
        let (low, high) = entry.shot_window.as_ref()?;
        let path = pointer(path, "shot_window");
        let low = self.keep(&pointer(&path, "0"), low.to(self.system))?;
        let high = self.keep(&pointer(&path, "1"), high.to(self.system))?;
        if low > high {
            self.fault(
                "shot-window-reversed",
                &path,
                "The lowest temperature is above the highest.".to_owned(),
                "Write the lower one first.".to_owned(),
            );
            return None;
        }
        Some(ShotWindow { low, high })
    }

    /// A share above zero.
    fn tolerance(&mut self, path: &str, percent: Option<Percent>) -> Option<f64> {
        let share = percent?.share();
        if share > 0.0 && share < 1.0 {
            return Some(share);
        }
        self.fault(
            "tolerance-out-of-range",
            path,
            "No bench keeps a tolerance of 0 %, and one of 100 % is none.".to_owned(),
            "Write what you accept, such as \"5 %\".".to_owned(),
        );
        None
    }

    /// A powder cannot be heavier with air between its grains than without.
    fn check_densities(&mut self, path: &str, material: &Material) {
        if let (Some(density), Some(scooped)) = (&material.density, &material.as_scooped)
            && scooped.value > density.value
        {
            self.fault(
                "scooped-above-true",
                &pointer(path, "as_scooped"),
                format!("\"{}\" is heavier as scooped than its grains are.", material.name),
                "Check the two densities; perhaps they are swapped.".to_owned(),
            );
        }
    }

    fn formula(&mut self, name: &str, entry: &FormulaEntry, materials: &Materials) -> Formula {
        let path = pointer("/formulas", name);
        let per = entry.per;
        if let Some(per) = per {
            self.check_dimension(
                &pointer(&path, "per"),
                &per,
                &[Dimension::VOLUME, Dimension::MASS],
            );
        }
        let base = match &entry.base {
            None => Vec::new(),
            Some(BaseEntry::One(base)) => {
                let found = self.find_material(materials, base, &pointer(&path, "base"));
                found.and_then(only_base).into_iter().collect()
            }
            Some(BaseEntry::Blend(parts)) if parts.is_empty() => {
                self.fault(
                    "empty-blend",
                    &pointer(&path, "base"),
                    "The blend names no plastisol.".to_owned(),
                    "Name its plastisols with an amount each, or leave \"base\" out.".to_owned(),
                );
                Vec::new()
            }
            Some(BaseEntry::Blend(parts)) => self.doses(
                &pointer(&path, "base"),
                parts,
                &[Dimension::VOLUME, Dimension::MASS],
                materials,
            ),
        };
        let doses = self.doses(
            &pointer(&path, "doses"),
            &entry.doses,
            &super::written::DOSE_DIMENSIONS,
            materials,
        );
        if per.is_none() && doses.iter().any(|dose| dose.amount.basis().is_none()) {
            self.keep::<(), _>(&path, Err(crate::formula::FormulaError::NoPer(name.to_owned())));
        }
        Formula { name: name.to_owned(), per, base, doses }
    }

    fn doses(
        &mut self,
        path: &str,
        doses: &Named<Amount>,
        dimensions: &[Dimension],
        materials: &Materials,
    ) -> Vec<Dose> {
        let mut read = Vec::new();
        for (name, amount) in doses {
            let path = pointer(path, name);
            self.check_dimension(&path, amount, dimensions);
            if let Some(material) = self.find_material(materials, &Name(name.clone()), &path) {
                read.push(Dose { material, amount: *amount });
            }
        }
        read
    }

    fn check_dimension(&mut self, path: &str, amount: &Amount, dimensions: &[Dimension]) {
        let found = amount.dimension();
        if !dimensions.contains(&found) {
            let wanted: Vec<String> = dimensions.iter().map(ToString::to_string).collect();
            self.fault(
                "wrong-dimension",
                path,
                format!("\"{amount}\" is {found}."),
                format!("Write {}.", wanted.join(" or ")),
            );
        } else {
            // A word that the measuring system lacks, or a number beyond belief, is told here.
            self.keep(path, amount.unit().factor(self.system).map(|_| ()));
        }
    }

    fn mold(&mut self, path: &str, name: &str, entry: &MoldEntry) -> Option<Mold> {
        let cavities = self.cavities(path, entry);
        let sprue = self.or_zero(&pointer(path, "sprue"), entry.sprue.as_ref());
        let top = self.or_zero(&pointer(path, "top"), entry.top.as_ref());
        let voids = entry.voids.map_or(0.0, Percent::share);
        let rejects = entry.rejects.map(Percent::share);
        self.check_below_one(&pointer(path, "voids"), Some(voids));
        self.check_below_one(&pointer(path, "rejects"), rejects);
        let hook = entry.hook.as_ref().map(|hook| self.hook(&pointer(path, "hook"), hook));
        Some(Mold {
            name: name.to_owned(),
            cavities: cavities?,
            sprue,
            feed: entry.feed.map(Percent::share),
            voids,
            rejects,
            top,
            hook: hook.flatten().unwrap_or_default(),
        })
    }

    fn check_below_one(&mut self, path: &str, share: Option<f64>) {
        if share.is_some_and(|share| share >= 1.0) {
            self.fault(
                "share-of-all",
                path,
                "100 % leaves nothing.".to_owned(),
                "Write a share below 100 %.".to_owned(),
            );
        }
    }

    fn cavities(&mut self, path: &str, entry: &MoldEntry) -> Option<Vec<Cavities>> {
        match (&entry.cavities, &entry.cavity) {
            (CavitiesEntry::Like(count), Some(cavity)) => {
                let volume = self.cavity_volume(&pointer(path, "cavity"), cavity);
                let body = self.body_of(path, entry.body.as_ref());
                Some(Vec::from([Cavities { shape: None, count: *count, volume: volume?, body }]))
            }
            (CavitiesEntry::Like(_), None) => {
                self.fault(
                    "missing-field",
                    path,
                    "\"cavity\" is missing.".to_owned(),
                    "Add the volume of one cavity: \"cavity\": \"9.5 mL\", or the water it holds: { \"water\": \"9.47 g\", \"at\": \"22 °C\" }.".to_owned(),
                );
                None
            }
            (CavitiesEntry::Unlike(_), Some(_)) => {
                self.fault(
                    "one-cavity-for-unlike",
                    &pointer(path, "cavity"),
                    "The cavities are unlike, each with a volume of its own.".to_owned(),
                    "Leave \"cavity\" out here.".to_owned(),
                );
                None
            }
            (CavitiesEntry::Unlike(shapes), None) => {
                let parent = pointer(path, "cavities");
                if entry.body.is_some() {
                    self.fault(
                        "one-body-for-unlike",
                        &pointer(path, "body"),
                        "The cavities are unlike, each with a body of its own.".to_owned(),
                        "Put \"body\" beside the \"cavity\" of each shape.".to_owned(),
                    );
                }
                if shapes.is_empty() {
                    self.fault(
                        "no-cavities",
                        &parent,
                        "The mold has no cavity.".to_owned(),
                        "Add at least one shape.".to_owned(),
                    );
                    return None;
                }
                let read: Vec<Option<Cavities>> = shapes
                    .iter()
                    .map(|(shape, entry)| {
                        let path = pointer(&parent, shape);
                        let volume = self.cavity_volume(&pointer(&path, "cavity"), &entry.cavity);
                        let body = self.body_of(&path, entry.body.as_ref());
                        let (shape, count) = (Some(shape.clone()), entry.count);
                        Some(Cavities { shape, count, volume: volume?, body })
                    })
                    .collect();
                read.into_iter().collect()
            }
        }
    }

    fn cavity_volume(&mut self, path: &str, cavity: &CavityVolume) -> Option<Measured<Volume>> {
        match cavity {
            CavityVolume::Volume(volume) => {
                self.positive(path, volume)?;
                self.keep(path, volume.measured(self.system))
            }
            CavityVolume::Water(entry) => {
                let water = pointer(path, "water");
                self.positive(&water, &entry.water)?;
                let reading = self.keep(&water, entry.water.measured(self.system))?;
                let at = self.keep(&pointer(path, "at"), entry.at.measured(self.system))?;
                // Of the air's buoyancy only 1.2 parts in 1000 are at stake.
                let pressure = Pressure::from_si(101_325.0);
                self.keep(path, water::measured_volume(&reading, &at, pressure))
            }
        }
    }

    fn bench(&mut self, at: &str, entry: &BenchEntry) -> Option<(Bench, Vec<Vessel>, Injector)> {
        let balance = entry.balance.as_ref().and_then(|balance| {
            let readability = self.positive(&format!("{at}/balance/reads"), &balance.reads)?;
            Some(Balance {
                readability,
                least_load: self.or_zero(&format!("{at}/balance/from"), balance.from.as_ref()),
                capacity: match &balance.to {
                    Some(capacity) => self.positive(&format!("{at}/balance/to"), capacity)?,
                    // Shop balances show some 5 000 to 50 000 steps (common practice, no source).
                    None => readability * 5000.0,
                },
            })
        });
        let spoons: Vec<Option<Volume>> = entry
            .spoons
            .iter()
            .flatten()
            .enumerate()
            .map(|(index, spoon)| self.positive(&format!("{at}/spoons/{index}"), spoon))
            .collect();
        let mut cups = Vec::new();
        let mut vessels = Vec::new();
        for (index, cup) in entry.cups.iter().enumerate() {
            let path = format!("{at}/cups/{index}");
            let capacity = self.positive(&pointer(&path, "holds"), &cup.holds);
            let mark = match &cup.marks {
                Some(mark) => self.positive(&pointer(&path, "marks"), mark),
                None => capacity,
            };
            vessels.push(Vessel {
                film: self.or_zero(&pointer(&path, "film"), cup.film.as_ref()),
                heel: self.or_zero(&pointer(&path, "heel"), cup.heel.as_ref()),
                brim: self.brim(&path, cup.brim.as_ref(), capacity),
            });
            if let (Some(capacity), Some(mark)) = (capacity, mark) {
                cups.push(Cup { mark, capacity });
            }
        }
        if entry.cups.is_empty() {
            self.fault(
                "no-cup",
                &format!("{at}/cups"),
                "There is no cup to mix a pot in.".to_owned(),
                "Add one: { \"holds\": \"2 cup\", \"marks\": \"1/4 cup\" }.".to_owned(),
            );
        }
        let holds = self.positive(&format!("{at}/injector/holds"), &entry.injector.holds);
        let keeps = self.or_zero(&format!("{at}/injector/keeps"), entry.injector.keeps.as_ref());
        if holds.is_some_and(|holds| keeps >= holds) {
            self.fault(
                "injector-keeps-all",
                &format!("{at}/injector/keeps"),
                "The injector keeps all that it holds.".to_owned(),
                "Write what stays in it after the last shot.".to_owned(),
            );
        }
        let spoons: Vec<Volume> = spoons.into_iter().collect::<Option<_>>()?;
        let handling = Handling {
            drops: entry.most_drops.unwrap_or(Handling::default().drops),
            ..Handling::default()
        };
        let tools = self.keep(at, Bench::new(balance, spoons, cups, handling));
        let count = entry.injector.count.unwrap_or(1);
        Some((tools?, vessels, Injector { holds: holds?, keeps, count }))
    }

    fn limits(&mut self, entry: Option<&LimitsEntry>) -> Limits {
        let mut limits = Limits::default();
        let Some(entry) = entry else { return limits };
        let set = |field: &mut f64, percent: Option<Percent>| {
            if let Some(percent) = percent {
                *field = percent.share();
            }
        };
        set(&mut limits.rejects, entry.rejects);
        set(&mut limits.confidence, entry.confidence);
        set(&mut limits.solids, entry.solids);
        set(&mut limits.most_full, entry.most_full);
        if limits.most_full <= 0.0 {
            self.fault(
                "share-of-nothing",
                "/limits/most_full",
                "A cup that may not be filled holds no pot.".to_owned(),
                "Write a share above 0 %, such as \"60 %\".".to_owned(),
            );
        }
        self.check_below_one("/limits/rejects", entry.rejects.map(Percent::share));
        self.check_confidence(entry.confidence.map(Percent::share));
        if let Some(tolerance) = self.tolerance("/limits/tolerance", entry.tolerance) {
            limits.tolerance = tolerance;
        }
        limits.least_pot =
            entry.least_pot.as_ref().and_then(|least| self.positive("/limits/least_pot", least));
        limits.sprues = entry.sprues.unwrap_or(limits.sprues);
        limits.heats = entry.heats;
        limits.fresh_base = entry.fresh_base.unwrap_or(limits.fresh_base);
        let water = entry.water.as_ref();
        limits.water = water.and_then(|water| self.fished_water("/limits/water", water));
        limits
    }
}

impl Resolver {
    fn check_confidence(&mut self, confidence: Option<f64>) {
        if confidence.is_some_and(|share| !(share > 0.0 && share <= batch::MOST_CONFIDENCE)) {
            self.fault(
                "confidence-out-of-range",
                "/limits/confidence",
                "0 % is sure without a piece, and 100 % is not to be had.".to_owned(),
                "Write a share above 0 % and below 100 %, such as \"90 %\".".to_owned(),
            );
        }
    }
}

/// What the shop has found of its tools, over the library's figures.
fn tool_uncertainty(entry: Option<&ToolUncertaintyEntry>) -> ToolUncertainty {
    let mut tools = ToolUncertainty::default();
    let Some(entry) = entry else { return tools };
    let set = |figure: &mut Ratio, found: Option<Percent>| {
        if let Some(found) = found {
            *figure = Ratio::from(found.share());
        }
    };
    set(&mut tools.balance_span, entry.balance_span);
    set(&mut tools.spoon_size, entry.spoon_size);
    set(&mut tools.spoon_level, entry.spoon_level);
    set(&mut tools.cup_size, entry.cup_size);
    set(&mut tools.cup_filling, entry.cup_filling);
    set(&mut tools.drop, entry.drop);
    set(&mut tools.unweighed_drop, entry.unweighed_drop);
    set(&mut tools.drop_scatter, entry.drop_scatter);
    tools
}

/// A stated property replaces that of the starter table.
fn fill<T>(place: &mut Option<T>, stated: Option<T>) {
    if stated.is_some() {
        *place = stated;
    }
}

/// What a product of the book, or an order line of its own, asks for.
struct Wanted<'a> {
    mold: Option<&'a Name>,
    formulas: Option<&'a [Name]>,
    overlap: Option<Overlap>,
    layers: Option<&'a [LayerEntry]>,
}

impl Resolver {
    fn product(
        &mut self,
        name: &str,
        wanted: &Wanted<'_>,
        path: &str,
        book: &Book,
    ) -> Option<Product> {
        let mold = match wanted.mold {
            Some(mold) => {
                let names = book.molds.iter().map(|mold| mold.name.as_str());
                self.find("mold", &pointer(path, "mold"), &mold.0, book.find_mold(&mold.0), names)
            }
            None => None,
        };
        let layers = match (wanted.formulas, wanted.layers) {
            (Some(formulas), None) => {
                let path = pointer(path, "formulas");
                let overlap = wanted.overlap.unwrap_or(Overlap::Refuse);
                self.layer(formulas, overlap, 1.0, &path, book).map(|layer| Vec::from([layer]))
            }
            (None, Some(_)) if wanted.overlap.is_some() => {
                self.fault(
                    "overlap-beside-layers",
                    &pointer(path, "overlap"),
                    "\"overlap\" stands beside \"layers\".".to_owned(),
                    "Put it into the layer that it is meant for.".to_owned(),
                );
                None
            }
            (None, Some(layers)) => self.layers(layers, &pointer(path, "layers"), book),
            _ => {
                self.fault(
                    "formulas-or-layers",
                    path,
                    "It must say what is shot: either \"formulas\" or \"layers\".".to_owned(),
                    "Write \"formulas\": [\"color\", \"body\"], or \"layers\" for a piece of two colors.".to_owned(),
                );
                None
            }
        };
        Some(Product { name: name.to_owned(), mold: mold?, layers: layers? })
    }

    fn layers(&mut self, entries: &[LayerEntry], path: &str, book: &Book) -> Option<Vec<Layer>> {
        let layers: Vec<Option<Layer>> = entries
            .iter()
            .enumerate()
            .map(|(index, entry)| {
                let path = pointer(&pointer(path, &index.to_string()), "formulas");
                let overlap = entry.overlap.unwrap_or(Overlap::Refuse);
                self.layer(&entry.formulas, overlap, entry.share.share(), &path, book)
            })
            .collect();
        self.check_injectors(entries.len(), path, book);
        let sum: f64 = entries.iter().fold(0.0, |sum, entry| sum + entry.share.share());
        if (sum - 1.0).abs() > 1e-9 {
            self.fault(
                "layer-shares",
                path,
                format!("The shares of the layers come to {} %.", libm::round(sum * 1e4) / 1e2),
                "They must come to 100 % together.".to_owned(),
            );
            return None;
        }
        if entries.iter().any(|entry| entry.share.share() <= 0.0) {
            self.fault(
                "layer-shares",
                path,
                "A layer has a share of 0 %.".to_owned(),
                "Leave it out, or give it a share.".to_owned(),
            );
            return None;
        }
        layers.into_iter().collect()
    }

    /// The layers of a piece are hot at the same time, each in an injector of its own.
    fn check_injectors(&mut self, layers: usize, path: &str, book: &Book) {
        let there = book.injector.count;
        if usize::try_from(there).is_ok_and(|there| layers > there) {
            self.fault(
                "too-few-injectors",
                path,
                format!(
                    "A piece of {layers} layers takes {layers} injectors at once; the bench has {there}."
                ),
                format!("Write \"count\": {layers} at the bench's injector, if there are so many."),
            );
        }
    }

    fn layer(
        &mut self,
        formulas: &[Name],
        overlap: Overlap,
        share: f64,
        path: &str,
        book: &Book,
    ) -> Option<Layer> {
        if formulas.is_empty() {
            self.fault(
                "no-formula",
                path,
                "No formula is named.".to_owned(),
                "Name at least one.".to_owned(),
            );
            return None;
        }
        let found: Vec<Option<usize>> = formulas
            .iter()
            .enumerate()
            .map(|(index, name)| {
                let names = book.formulas.iter().map(|formula| formula.name.as_str());
                let path = pointer(path, &index.to_string());
                self.find("formula", &path, &name.0, book.find_formula(&name.0), names)
            })
            .collect();
        let layer = Layer { formulas: found.into_iter().collect::<Option<_>>()?, share, overlap };
        // A recipe that cannot be had is told where it is named, before any order asks for it.
        let tried = (layer.formulas.clone(), overlap);
        if !self.combined.contains(&tried) && self.is_sound(&layer, book) {
            self.keep(path, recipe_of(&layer, book).map(|_| ()))?;
            self.combined.insert(tried);
        }
        Some(layer)
    }

    /// Whether no fault has been found in what the recipe of `layer` comes from. Where one has, it is
    /// told there; that the recipe cannot be had follows, and is no fault more.
    fn is_sound(&self, layer: &Layer, book: &Book) -> bool {
        let formulas = || layer.formulas.iter().filter_map(|&index| book.formulas.get(index));
        let by_default = formulas().all(|formula| formula.base.is_empty());
        let doses = formulas().flat_map(|formula| formula.base.iter().chain(&formula.doses));
        let materials = doses
            .map(|dose| dose.material)
            .chain(book.default_base.filter(|_| by_default))
            .filter_map(|id| book.materials.get(id).ok())
            .map(|material| pointer("/materials", &material.name));
        let mut roots = formulas()
            .map(|formula| pointer("/formulas", &formula.name))
            .chain(materials)
            .chain(by_default.then(|| "/default_base".to_owned()));
        roots.all(|root| {
            let inside = |path: &str| {
                path.strip_prefix(&root)
                    .is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
            };
            !self.faults.iter().any(|fault| inside(&fault.path))
        })
    }
}

impl Day {
    /// The orders in `document`, with products, molds and formulas of `book`.
    ///
    /// # Errors
    /// All faults of the document together.
    pub fn resolve(document: &OrdersDocument, book: &Book) -> Result<Self, Faults> {
        let mut resolver = Resolver::new(book.system);
        if document.lines.is_empty() {
            resolver.fault(
                "no-lines",
                "/lines",
                "The order list is empty.".to_owned(),
                "Add a line: { \"order\": \"31\", \"product\": ..., \"pieces\": 24 }.".to_owned(),
            );
        }
        let lines: Vec<Option<Line>> = document
            .lines
            .iter()
            .enumerate()
            .map(|(index, line)| resolver.line(line, &format!("/lines/{index}"), book))
            .collect();
        let lines: Option<Vec<Line>> = lines.into_iter().collect();
        let shelf = resolver.shelf(document.shelf.as_deref().unwrap_or_default(), book);
        let day = document.day.as_ref().map(|day| day.0.clone());
        let stock = document.stock.as_ref();
        let stock = stock.map_or(Some(Vec::new()), |stock| resolver.stock(stock, book));
        let read = lines.zip(shelf).zip(stock);
        resolver.finish(read.map(|((lines, shelf), stock)| Self { day, lines, shelf, stock }))
    }
}

impl Resolver {
    fn line(&mut self, line: &OrderLine, path: &str, book: &Book) -> Option<Line> {
        let own = line.mold.is_some()
            || line.formulas.is_some()
            || line.layers.is_some()
            || line.overlap.is_some();
        let product = match (&line.product, own) {
            (Some(name), false) => {
                let names = book.products.iter().map(|product| product.name.as_str());
                let path = pointer(path, "product");
                self.find("product", &path, &name.0, book.find_product(&name.0), names)
                    .and_then(|index| book.products.get(index).cloned())
            }
            (None, true) if line.mold.is_some() => {
                let wanted = Wanted {
                    mold: line.mold.as_ref(),
                    formulas: line.formulas.as_deref(),
                    overlap: line.overlap,
                    layers: line.layers.as_deref(),
                };
                self.product("", &wanted, path, book)
            }
            (product, _) => {
                let help = if product.is_some() {
                    "Keep one of the two: a product has its mold and formulas in the book."
                } else {
                    "Add \"product\", or \"mold\" with \"formulas\" or \"layers\"."
                };
                self.fault(
                    "product-or-mold",
                    path,
                    "It must say what is ordered: either \"product\", or \"mold\" with \"formulas\" or \"layers\".".to_owned(),
                    help.to_owned(),
                );
                None
            }
        };
        let pieces = self.pieces(line, path);
        let promised = self.promised(line, path);
        let product = product?;
        let shape = self.shape(line, &product, path, book)?;
        Some(Line {
            order: line.order.0.clone(),
            product,
            shape,
            pieces: pieces?,
            packs: line.packs.zip(line.pack_of),
            promised: promised?,
            ext: line.ext.clone(),
        })
    }

    fn pieces(&mut self, line: &OrderLine, path: &str) -> Option<u32> {
        match (line.pieces, line.packs, line.pack_of) {
            (Some(pieces), None, None) => Some(pieces),
            (None, Some(packs), Some(each)) => {
                let pieces = packs
                    .checked_mul(each)
                    .filter(|pieces| *pieces <= super::reader::LARGEST_COUNT);
                if pieces.is_none() {
                    self.fault(
                        "too-many-pieces",
                        path,
                        format!("{packs} packs of {each} are more than one day can hold."),
                        format!("Up to {} pieces are planned.", super::reader::LARGEST_COUNT),
                    );
                }
                pieces
            }
            _ => {
                self.fault(
                    "pieces-or-packs",
                    path,
                    "It must say how many: either \"pieces\", or \"packs\" with \"pack_of\"."
                        .to_owned(),
                    "Write \"pieces\": 24, or \"packs\": 3, \"pack_of\": 8.".to_owned(),
                );
                None
            }
        }
    }

    /// The date, where one is given: years, months and days in digits, so that text sorts by time.
    #[allow(clippy::option_option)] // absent and wrong are two things
    fn promised(&mut self, line: &OrderLine, path: &str) -> Option<Option<String>> {
        self.date(&pointer(path, "promised"), line.promised.as_ref())
    }

    #[allow(clippy::option_option)] // absent and wrong are two things
    fn date(&mut self, path: &str, date: Option<&String>) -> Option<Option<String>> {
        let Some(date) = date else { return Some(None) };
        if is_date(date) {
            return Some(Some(date.clone()));
        }
        self.fault(
            "not-a-date",
            path,
            format!("\"{date}\" is no date."),
            "Write year-month-day, such as \"2027-03-05\" (ISO 8601).".to_owned(),
        );
        None
    }

    /// Which of a mold's shapes a line asks for; the index among its cavities.
    fn shape(
        &mut self,
        line: &OrderLine,
        product: &Product,
        path: &str,
        book: &Book,
    ) -> Option<usize> {
        let cavities = &book.molds.get(product.mold)?.cavities;
        let shapes = || cavities.iter().filter_map(|cavity| cavity.shape.as_deref());
        match (&line.shape, cavities.len()) {
            (None, 1) => Some(0),
            (None, _) => {
                let listed: Vec<&str> = shapes().collect();
                self.fault(
                    "missing-field",
                    path,
                    "\"shape\" is missing: the mold has unlike cavities.".to_owned(),
                    format!("Add one of: {}.", listed.join(", ")),
                );
                None
            }
            (Some(shape), 1) if cavities.iter().all(|cavity| cavity.shape.is_none()) => {
                self.fault(
                    "shape-of-like-cavities",
                    &pointer(path, "shape"),
                    format!("\"{}\" is asked of a mold whose cavities are all alike.", shape.0),
                    "Leave \"shape\" out.".to_owned(),
                );
                None
            }
            (Some(shape), _) => {
                let found = cavities
                    .iter()
                    .position(|cavity| cavity.shape.as_deref() == Some(shape.0.as_str()));
                self.find("shape of this mold", &pointer(path, "shape"), &shape.0, found, shapes())
            }
        }
    }
}

/// Whether `text` is YYYY-MM-DD with a month and a day that the calendar has.
fn is_date(text: &str) -> bool {
    let mut parts = text.split('-');
    let mut number = |digits: usize| {
        parts
            .next()
            .filter(|part| part.len() == digits && part.bytes().all(|byte| byte.is_ascii_digit()))
            .and_then(|part| part.parse::<u32>().ok())
    };
    let (Some(year), Some(month), Some(day)) = (number(4), number(2), number(2)) else {
        return false;
    };
    let leap = (year.is_multiple_of(4) && !year.is_multiple_of(100)) || year.is_multiple_of(400);
    let longest = match month {
        2 => 28_u32.saturating_add(u32::from(leap)),
        4 | 6 | 9 | 11 => 30,
        1..=12 => 31,
        _ => return false,
    };
    (1..=longest).contains(&day) && parts.next().is_none()
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use super::*;
    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text, read_book};

    fn small() -> Book {
        book_from_text(BOOK).unwrap_or_else(|faults| panic!("{faults}"))
    }

    fn told(faults: &Faults) -> Vec<(String, String)> {
        faults.iter().map(|fault| (fault.path.clone(), fault.code.to_string())).collect()
    }

    #[rstest]
    #[case("2027-03-05", true)]
    #[case("2024-02-29", true)]
    #[case("2000-02-29", true)]
    #[case("2100-02-29", false)]
    #[case("2027-02-29", false)]
    #[case("2027-04-31", false)]
    #[case("2027-13-01", false)]
    #[case("2027-00-10", false)]
    #[case("2027-01-00", false)]
    #[case("27-03-05", false)]
    #[case("2027-3-5", false)]
    #[case("2027-03-05-", false)]
    #[case("2027-03-0５", false)]
    #[case("", false)]
    fn a_date_is_in_the_calendar(#[case] text: &str, #[case] good: bool) {
        assert_eq!(is_date(text), good);
    }

    #[test]
    fn what_a_like_row_says_can_be_overruled() {
        let book = small();
        let salt = book.materials.get(book.materials.find("salt").unwrap()).unwrap();
        // The starter table: 2.165 g/mL; 6 g a teaspoon.
        assert!((salt.density.as_ref().unwrap().value.si() - 2165.0).abs() < 1e-9);
        assert!((salt.as_scooped.as_ref().unwrap().value.si() - 1217.0).abs() < 1e-9);
        let mut document: Value = serde_json::from_str(BOOK).unwrap();
        document["materials"]["salt"]["as_scooped"] = json!("1.3 g/mL");
        let book = book_from_text(&document.to_string()).unwrap();
        let salt = book.materials.get(book.materials.find("salt").unwrap()).unwrap();
        assert!((salt.as_scooped.as_ref().unwrap().value.si() - 1300.0).abs() < 1e-9);
        assert!(salt.density.is_some());
    }

    #[rstest]
    #[case("/materials/clear/density", json!("0 g/mL"), "/materials/clear/density", "not-positive")]
    #[case("/materials/salt/as_scooped", json!("2.9 g/mL"), "/materials/salt/as_scooped", "scooped-above-true")]
    #[case("/materials/clear/shot_window", json!(["350 °F", "320 °F"]), "/materials/clear/shot_window", "shot-window-reversed")]
    #[case("/materials/clear/tolerance", json!("0 %"), "/materials/clear/tolerance", "tolerance-out-of-range")]
    #[case("/materials/salt/like", json!("sodium"), "/materials/salt/like", "unknown-name")]
    #[case("/default_base", json!("salt"), "/default_base", "base-no-plastisol")]
    #[case("/default_base", json!("cleer"), "/default_base", "unknown-name")]
    #[case("/formulas/body/base", json!({}), "/formulas/body/base", "empty-blend")]
    #[case("/formulas/body/per", json!("8 drops"), "/formulas/body/per", "wrong-dimension")]
    #[case("/formulas/body/doses/salt", json!("300 °F"), "/formulas/body/doses/salt", "wrong-dimension")]
    #[case("/molds/worm/cavity", json!("0 mL"), "/molds/worm/cavity", "not-positive")]
    #[case("/molds/worm/cavity", json!({ "water": "9 g", "at": "90 °C" }), "/molds/worm/cavity", "water-temperature-out-of-range")]
    #[case("/molds/pair/cavity", json!("9 mL"), "/molds/pair/cavity", "one-cavity-for-unlike")]
    #[case("/molds/worm/cavities", json!({}), "/molds/worm/cavity", "one-cavity-for-unlike")]
    #[case("/molds/pair/cavities", json!({}), "/molds/pair/cavities", "no-cavities")]
    #[case("/molds/worm/voids", json!("100 %"), "/molds/worm/voids", "share-of-all")]
    #[case("/molds/worm/rejects", json!("100 %"), "/molds/worm/rejects", "share-of-all")]
    #[case("/products/two/layers/0/share", json!("50 %"), "/products/two/layers", "layer-shares")]
    #[case("/products/two/overlap", json!("add"), "/products/two/overlap", "overlap-beside-layers")]
    #[case("/products/two/formulas", json!(["sky"]), "/products/two", "formulas-or-layers")]
    #[case("/bench/injector/count", json!(1), "/products/two/layers", "too-few-injectors")]
    #[case("/bench/injector/keeps", json!("1 cup"), "/bench/injector/keeps", "injector-keeps-all")]
    #[case("/bench/cups", json!([]), "/bench/cups", "no-cup")]
    #[case("/bench/balance/reads", json!("0 g"), "/bench/balance/reads", "not-positive")]
    #[case("/limits", json!({ "confidence": "100 %" }), "/limits/confidence", "confidence-out-of-range")]
    #[case("/limits", json!({ "most_full": "0 %" }), "/limits/most_full", "share-of-nothing")]
    fn one_slip_is_told_once_at_its_place(
        #[case] place: &str,
        #[case] value: Value,
        #[case] path: &str,
        #[case] code: &str,
    ) {
        let mut document: Value = serde_json::from_str(BOOK).unwrap();
        let (parent, key) = place.rsplit_once('/').unwrap();
        let parent = document.pointer_mut(parent).unwrap();
        match parent {
            Value::Array(items) => items[key.parse::<usize>().unwrap()] = value,
            parent => parent[key] = value,
        }
        let faults = Book::try_from(&read_book(&document).unwrap()).unwrap_err();
        assert_eq!(told(&faults), [(path.to_owned(), code.to_owned())], "{faults}");
    }

    #[rstest]
    #[case(r#""product": "sky wurm", "pieces": 3"#, "/product", "unknown-name")]
    #[case(r#""pieces": 3"#, "", "product-or-mold")]
    #[case(r#""product": "sky worm", "mold": "worm", "pieces": 3"#, "", "product-or-mold")]
    #[case(r#""formulas": ["body"], "pieces": 3"#, "", "product-or-mold")]
    #[case(r#""mold": "worm", "pieces": 3"#, "", "product-or-mold")]
    #[case(r#""mold": "worm", "formulas": [], "pieces": 3"#, "/formulas", "no-formula")]
    #[case(
        r#""mold": "worm", "formulas": ["body", "twin"], "pieces": 3"#,
        "/formulas",
        "formula-dosed-twice"
    )]
    #[case(r#""product": "sky worm""#, "", "pieces-or-packs")]
    #[case(r#""product": "sky worm", "packs": 3"#, "", "pieces-or-packs")]
    #[case(
        r#""product": "sky worm", "pieces": 3, "packs": 3, "pack_of": 2"#,
        "",
        "pieces-or-packs"
    )]
    #[case(r#""product": "sky worm", "packs": 1000000, "pack_of": 2"#, "", "too-many-pieces")]
    #[case(r#""product": "sky worm", "pieces": 3, "promised": "soon""#, "/promised", "not-a-date")]
    #[case(
        r#""product": "sky worm", "pieces": 3, "shape": "long""#,
        "/shape",
        "shape-of-like-cavities"
    )]
    #[case(r#""product": "sky pair", "pieces": 3"#, "", "missing-field")]
    #[case(r#""product": "sky pair", "pieces": 3, "shape": "lang""#, "/shape", "unknown-name")]
    fn a_line_says_what_is_wrong_with_it(
        #[case] line: &str,
        #[case] path: &str,
        #[case] code: &str,
    ) {
        let text = orders(&format!(r#"{{ "order": "1", {line} }}"#));
        let faults = orders_from_text(&text, &small()).unwrap_err();
        let expected = (format!("/lines/0{path}"), code.to_owned());
        // What a line without formulas lacks is told in one place, or in both that would mend it.
        assert!(told(&faults).contains(&expected) || code == "product-or-mold", "{faults}");
        assert_eq!(faults.count(), 1, "{faults}");
    }

    #[test]
    fn all_lines_are_looked_at() {
        let line = r#"{ "order": "1", "product": "no such", "pieces": 3, "promised": "soon" }"#;
        let faults = orders_from_text(&orders(&format!("{line}, {line}")), &small()).unwrap_err();
        assert_eq!(faults.count(), 4, "{faults}");
        let none = orders_from_text(&orders(""), &small()).unwrap_err();
        assert_eq!(told(&none), [("/lines".to_owned(), "no-lines".to_owned())]);
    }

    #[test]
    fn packs_are_pieces() {
        let line = r#"{ "order": "1", "product": "sky worm", "packs": 5, "pack_of": 8 }"#;
        let day = orders_from_text(&orders(line), &small()).unwrap();
        assert_eq!((day.lines[0].pieces, day.lines[0].packs), (40, Some((5, 8))));
    }
}

//! From documents as they are written to a book and orders ready for planning.
//!
//! Names are looked up, amounts become numbers, recipes are tried out; all faults are
//! reported together, each with its path.

use alloc::borrow::ToOwned;
use alloc::collections::BTreeMap;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::book::{
    BaseEntry, BenchEntry, BookDocument, CavitiesEntry, CavityVolume, FormulaEntry, LayerEntry,
    LimitsEntry, MaterialEntry, MoldEntry, SourcedDrop,
};
use super::orders::{OrderLine, OrdersDocument};
use super::reader::{Name, nearest, pointer};
use super::starter;
use super::written::{Percent, Sourced, Written};
use crate::book::{Book, Cavities, Injector, Layer, Limits, Mold, Product, Vessel};
use crate::fault::{Diagnose, Fault, Faults};
use crate::formula::{Dose, Formula, Overlap};
use crate::material::{Drop, Material, ShotWindow};
use crate::mix::{MaterialId, Materials};
use crate::plan::day::{Day, Line, recipe_of};
use crate::plan::measures::{Balance, Bench, Cup, Limits as Handling};
use crate::quantity::{
    Amount, Dimension, Measurable, Measured, Pressure, Rational, System, Unit, Volume,
};
use crate::water;

mod actuals;
mod shelf;

/// Faults found so far, and the system that amounts are read in.
struct Resolver {
    system: System,
    faults: Vec<Fault>,
}

impl Resolver {
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
                None if known.is_empty() => format!("The book has no {what} yet; add it."),
                None => format!("The book has: {}.", shortened_list(&known)),
            };
            self.fault(
                "unknown-name",
                path,
                format!("There is no {what} \"{name}\" in the book."),
                help,
            );
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
    const fn new(system: System) -> Self {
        Self { system, faults: Vec::new() }
    }

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
    entries: &BTreeMap<String, MaterialEntry>,
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
        let default_base = document
            .default_base
            .as_ref()
            .and_then(|name| self.find_material(&materials, name, "/default_base"));
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
        let altitude = document
            .altitude
            .as_ref()
            .and_then(|altitude| self.keep("/altitude", altitude.to(self.system)));
        let bench = self.bench("/bench", &document.bench);
        let limits = self.limits(document.limits.as_ref());
        let molds: Vec<Mold> = molds.into_iter().collect::<Option<_>>()?;
        let (tools, vessels, injector) = bench?;
        let mut book = Book {
            shop: document.shop.clone(),
            system: self.system,
            altitude,
            materials,
            default_base,
            formulas,
            molds,
            products: Vec::new(),
            tools,
            vessels,
            injector,
            limits,
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
        self.check_densities(path, &material);
        material
    }

    fn starter(&mut self, path: &str, like: &Name) -> Option<Material> {
        let path = pointer(path, "like");
        let table = match starter::materials() {
            Ok(table) => table,
            Err(faults) => {
                self.faults.extend(faults.into_vec());
                return None;
            }
        };
        let names = table.iter().map(|(_, material)| material.name.as_str());
        let found = table.find(&like.0).and_then(|id| table.get(id).ok());
        self.find("starter material", &path, &like.0, found, names).cloned()
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
        doses: &BTreeMap<String, Amount>,
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
        Some(Mold {
            name: name.to_owned(),
            cavities: cavities?,
            sprue,
            feed: entry.feed.map(Percent::share),
            voids,
            rejects,
            top,
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
                let volume = self.cavity_volume(&pointer(path, "cavity"), cavity)?;
                Some(Vec::from([Cavities { shape: None, count: *count, volume }]))
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
                        let path = pointer(&pointer(&parent, shape), "cavity");
                        let volume = self.cavity_volume(&path, &entry.cavity)?;
                        Some(Cavities { shape: Some(shape.clone()), count: entry.count, volume })
                    })
                    .collect();
                read.into_iter().collect()
            }
        }
    }

    fn cavity_volume(&mut self, path: &str, cavity: &CavityVolume) -> Option<Volume> {
        match cavity {
            CavityVolume::Volume(volume) => self.positive(path, volume),
            CavityVolume::Water(entry) => {
                let mass = self.positive(&pointer(path, "water"), &entry.water)?;
                let at = self.keep(&pointer(path, "at"), entry.at.to(self.system))?;
                // Of the air's buoyancy only 1.2 parts in 1000 are at stake.
                let pressure = Pressure::from_si(101_325.0);
                self.keep(path, water::volume_weighed(mass, at, pressure))
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
        self.check_below_one("/limits/confidence", entry.confidence.map(Percent::share));
        if let Some(tolerance) = self.tolerance("/limits/tolerance", entry.tolerance) {
            limits.tolerance = tolerance;
        }
        limits.least_pot =
            entry.least_pot.as_ref().and_then(|least| self.positive("/limits/least_pot", least));
        limits.sprues = entry.sprues.unwrap_or(limits.sprues);
        limits.heats = entry.heats;
        limits.fresh_base = entry.fresh_base.unwrap_or(limits.fresh_base);
        limits
    }
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
        self.keep(path, recipe_of(&layer, book).map(|_| ()))?;
        Some(layer)
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
        let day = lines.zip(shelf);
        resolver.finish(day.map(|(lines, shelf)| Self { day: document.day.clone(), lines, shelf }))
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
            _ => {
                self.fault(
                    "product-or-mold",
                    path,
                    "It must say what is ordered: either \"product\", or \"mold\" with \"formulas\" or \"layers\".".to_owned(),
                    "Keep one of the two.".to_owned(),
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

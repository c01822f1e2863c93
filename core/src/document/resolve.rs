//! From documents as they are written to a book and orders ready for planning.
//!
//! Names are looked up, amounts become numbers, recipes are tried out; all faults are
//! reported together, each with its path.

mod actuals;
mod bench;
mod book;
mod costing;
mod date;
mod formula;
mod heat;
mod limits;
mod material;
mod mold;
mod orders;
pub(crate) mod oven;
mod product;
mod shelf;
mod sink;
mod vacuum;

use alloc::borrow::ToOwned;
use alloc::collections::BTreeSet;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::book::{BenchEntry, MaterialEntry, MoldEntry};
use super::named::Named;
use super::nearest::nearest;
use super::path::pointer;
use super::written::{Sourced, Written};
use crate::book::Mold;
use crate::fault::{Diagnose, Fault, Faults};
use crate::formula::Overlap;
use crate::material::Material;
use crate::mix::Materials;
use crate::plan::measures::Bench;
use crate::quantity::{Measurable, Measured, System};

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

    /// What was read, or all faults.
    fn finish<T>(self, read: Option<T>) -> Result<T, Faults> {
        Faults::or(self.faults, read)
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

/// Reads with a resolver of its own, for one part of a request.
pub(crate) fn alone<T>(
    system: System,
    read: impl FnOnce(&mut Resolver) -> Option<T>,
) -> Result<T, Faults> {
    let mut resolver = Resolver::new(system);
    let found = read(&mut resolver);
    resolver.finish(found)
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

#[cfg(test)]
mod tests;

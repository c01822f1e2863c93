//! From documents as they are written to a book and orders ready for planning.
//!
//! Names are looked up, amounts become numbers, recipes are tried out; all faults are
//! reported together, each with its path.

mod bench;
pub(super) mod book;
mod borrow;
mod costing;
pub(crate) mod date;
mod formula;
mod heat;
mod limits;
mod material;
mod mold;
mod orders;
pub(crate) mod oven;
mod plausible;
mod product;
mod shelf;
mod sink;
mod there;
mod vacuum;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::sync::Arc;
use alloc::vec::Vec;
use core::fmt::Display;

pub(crate) use self::bench::tool_uncertainty;
pub(crate) use self::there::capacities;
use super::book::{BenchEntry, MaterialEntry, MoldEntry};
use super::written::{Share, Sourced, Written};
use crate::bench::Bench;
use crate::book::Mold;
use crate::codes::{Code, code};
use crate::fault::{Diagnose, Fault, Faults};
use crate::json::named::Named;
use crate::json::nearest::nearest;
use crate::json::path::Path;
use crate::material::Material;
use crate::mix::Materials;
use crate::parameter::Parameter;
use crate::plan::day::KnownRecipes;
use crate::quantity::{Dimension, Measurable, Measured, MeasuredAmount, Ratio, System};

/// Makes of what is written what it says, and keeps all faults that are found on the way.
pub(crate) struct Resolver {
    /// The system that amounts are read in.
    pub(crate) system: System,
    /// Those found so far.
    pub(crate) faults: Vec<Fault>,
    /// The starter table, read when the first material is like one of its rows.
    starter: Option<Arc<Materials>>,
    /// Recipes of the formulas that were found to combine, so that a thousand order lines try them once.
    recipes: KnownRecipes,
    /// Names that may still be compared with names that are not known, so that a document with thousands of these is
    /// read as fast as others.
    to_compare: usize,
}

/// Names of a document that are compared, at most, to find what was meant: all of a book of 500 names for 200 slips.
const MOST_COMPARED: usize = 100_000;

impl Resolver {
    pub(crate) const fn new(system: System) -> Self {
        Self {
            system,
            faults: Vec::new(),
            starter: None,
            recipes: KnownRecipes::new(),
            to_compare: MOST_COMPARED,
        }
    }

    /// The value read, or all faults.
    pub(crate) fn finish<T>(self, read: Option<T>) -> Result<T, Faults> {
        Faults::or(self.faults, read)
    }

    /// The result of `read`, if it leaves no fault.
    pub(crate) fn whole<T>(&mut self, read: impl FnOnce(&mut Self) -> Option<T>) -> Option<T> {
        let before = self.faults.len();
        read(self).filter(|_| self.faults.len() == before)
    }

    /// The value, or the fault that it could not be had.
    pub(crate) fn keep<T, E: Diagnose>(
        &mut self,
        path: &Path<'_>,
        result: Result<T, E>,
    ) -> Option<T> {
        match result {
            Ok(value) => Some(value),
            Err(error) => {
                self.report_each(path, &error);
                None
            }
        }
    }

    /// The faults that `error` is at `path`: numbers of a list each at its own place.
    fn report_each(&mut self, path: &Path<'_>, error: &dyn Diagnose) {
        let numbers = error.numbers();
        if !numbers.iter().any(|number| number.index.is_some()) {
            return self.report(path, error);
        }
        for number in numbers {
            let Some(index) = number.index else {
                self.report(path, number);
                continue;
            };
            let row = path.index(usize::try_from(index).unwrap_or(usize::MAX));
            match number.parameter {
                // The only number of its row.
                Parameter::PieceWeight | Parameter::SpoonVolume => self.report(&row, number),
                column => self.report(&row.key(column.name()), number),
            }
        }
    }

    /// The value, or all that is wrong: each parameter at the field of its name, where the request has such a `field`, and
    /// the rest at `path`.
    pub(crate) fn keep_named<T, E: Diagnose>(
        &mut self,
        path: &Path<'_>,
        fields: &[&str],
        result: Result<T, E>,
    ) -> Option<T> {
        let error = match result {
            Ok(value) => return Some(value),
            Err(error) => error,
        };
        let numbers = error.numbers();
        for number in numbers {
            let name = number.parameter.stated_by().name();
            let own = Path::ROOT.key(name);
            self.report(if fields.contains(&name) { &own } else { path }, number);
        }
        if numbers.is_empty() {
            self.report(path, &error);
        }
        None
    }

    /// The fault that `error` is at `path`.
    pub(crate) fn report(&mut self, path: &Path<'_>, error: &dyn Diagnose) {
        self.faults.push(Fault::at(path.to_string(), error));
    }

    /// A fault that is no error of a calculation.
    pub(crate) fn fault(
        &mut self,
        code: Code,
        path: &Path<'_>,
        message: &dyn Display,
        help: &dyn Display,
    ) {
        self.faults.push(Fault {
            code: code.into(),
            path: path.to_string(),
            message: message.to_string(),
            help: help.to_string(),
        });
    }

    pub(crate) fn quantity<Q: Measurable>(
        &mut self,
        path: &Path<'_>,
        written: &Written<Q>,
    ) -> Option<Q> {
        self.keep(path, written.amount().si(Q::DIMENSION, self.system)).map(Q::from_si)
    }

    /// A quantity with its standard uncertainty, where one was written.
    pub(crate) fn measured<Q: Measurable>(
        &mut self,
        path: &Path<'_>,
        written: &Written<Q>,
    ) -> Option<Measured<Q>> {
        self.keep(path, written.measured(self.system))
    }

    /// The quantity of `parameter`, in its range, from the field of its name.
    pub(crate) fn given<Q: Measurable>(
        &mut self,
        parameter: Parameter,
        written: &Written<Q>,
    ) -> Option<Q> {
        self.given_at(&Path::ROOT.key(parameter.name()), parameter, written)
    }

    /// The same from the field at `path`.
    pub(crate) fn given_at<Q: Measurable>(
        &mut self,
        path: &Path<'_>,
        parameter: Parameter,
        written: &Written<Q>,
    ) -> Option<Q> {
        let quantity = self.quantity(path, written)?;
        self.keep(path, parameter.check_si(quantity.si()))?;
        Some(quantity)
    }

    /// The same with its standard uncertainty, where one was written.
    pub(crate) fn measured_given<Q: Measurable>(
        &mut self,
        parameter: Parameter,
        written: &Written<Q>,
    ) -> Option<Measured<Q>> {
        let path = Path::ROOT.key(parameter.name());
        self.given_at(&path, parameter, written)?;
        self.measured(&path, written)
    }

    /// The quantity of `parameter`, or its default where it is omitted.
    pub(crate) fn or_default<Q: Measurable>(
        &mut self,
        parameter: Parameter,
        written: Option<&Written<Q>>,
    ) -> Option<Q> {
        match written {
            Some(written) => self.given(parameter, written),
            None => Some(Q::from_si(parameter.default_si())),
        }
    }

    /// The share of `parameter`, or its default where it is omitted.
    pub(crate) fn share(&mut self, parameter: Parameter, share: Option<Share>) -> Option<Ratio> {
        let Some(share) = share else { return Some(Ratio::from(parameter.default_si())) };
        self.share_at(&Path::ROOT.key(parameter.name()), parameter, share)
    }

    /// The share of `parameter` in the field at `path`.
    pub(crate) fn share_at(
        &mut self,
        path: &Path<'_>,
        parameter: Parameter,
        share: Share,
    ) -> Option<Ratio> {
        self.keep(path, parameter.check_si(share.number())).map(Ratio::from)
    }

    /// A quantity that counts as zero if omitted.
    pub(crate) fn or_zero<Q: Measurable + Default>(
        &mut self,
        path: &Path<'_>,
        written: Option<&Written<Q>>,
    ) -> Option<Q> {
        written.map_or(Some(Q::default()), |written| self.quantity(path, written))
    }

    /// A quantity above zero.
    pub(crate) fn positive<Q: Measurable>(
        &mut self,
        path: &Path<'_>,
        written: &Written<Q>,
    ) -> Option<Q> {
        self.above_zero(path, &written.as_written(), Q::DIMENSION).map(Q::from_si)
    }

    fn above_zero(
        &mut self,
        path: &Path<'_>,
        written: &MeasuredAmount,
        wanted: Dimension,
    ) -> Option<f64> {
        let si = self.keep(path, written.amount().si(wanted, self.system))?;
        if si > 0.0 {
            return Some(si);
        }
        self.fault(
            code!("out-of-range"),
            path,
            &format_args!("{written} is not above zero."),
            &"Write an amount above zero, or leave the field out.",
        );
        None
    }

    fn property<Q: Measurable>(
        &mut self,
        parent: &Path<'_>,
        name: &str,
        parameter: Option<Parameter>,
        written: Option<&Sourced<Q>>,
    ) -> Option<Measured<Q>> {
        let written = written?;
        let path = parent.key(name);
        match parameter {
            Some(parameter) => self.given_at(&path, parameter, &written.value)?,
            None => self.positive(&path, &written.value)?,
        };
        self.keep(&path, written.measured(self.system))
    }

    fn check_below_one(&mut self, path: &Path<'_>, share: Option<f64>) {
        if share.is_some_and(|share| share >= 1.0) {
            self.fault(
                code!("out-of-range"),
                path,
                &"100 % leaves nothing.",
                &"Write a share below 100 %.",
            );
        }
    }

    /// The entry under `name`, or the fault that it is missing.
    pub(crate) fn find<T>(
        &mut self,
        what: &'static str,
        path: &Path<'_>,
        name: &str,
        found: Option<T>,
        known: &mut dyn Iterator<Item = &str>,
    ) -> Option<T> {
        if found.is_none() {
            // Beyond the limit the first names are listed, as where none is near.
            let count = if self.to_compare > 0 { usize::MAX } else { SHOWN.saturating_add(1) };
            let known: Vec<&str> = known.take(count).collect();
            let near =
                if self.to_compare > 0 { nearest(name, known.iter().copied()) } else { None };
            self.to_compare = self.to_compare.saturating_sub(known.len());
            let help = match near {
                Some(near) => format!("Did you mean \"{near}\"?"),
                None if known.is_empty() => {
                    format!("There is no {what} at all yet; add it to the book.")
                }
                None => format!("Known: {}.", shortened_list(&known)),
            };
            self.fault(
                code!("unknown-name"),
                path,
                &format_args!("There is no {what} \"{name}\"."),
                &help,
            );
        }
        found
    }

    /// Reads each of the `entries` of the list at `path`; all are checked.
    pub(crate) fn each<'e, E, T>(
        &mut self,
        path: &Path<'_>,
        entries: &'e [E],
        mut read: impl FnMut(&mut Self, &Path<'_>, &'e E) -> Option<T>,
    ) -> Option<Vec<T>> {
        let mut all = Vec::with_capacity(entries.len());
        for (index, entry) in entries.iter().enumerate() {
            if let Some(one) = read(self, &path.index(index), entry) {
                all.push(one);
            }
        }
        (all.len() == entries.len()).then_some(all)
    }

    /// Reads each of the `entries` by name at `path`; all are checked.
    pub(crate) fn each_named<E, T>(
        &mut self,
        path: &Path<'_>,
        entries: &Named<E>,
        mut read: impl FnMut(&mut Self, &Path<'_>, &str, &E) -> Option<T>,
    ) -> Option<Vec<T>> {
        let mut all = Vec::with_capacity(entries.len());
        for (name, entry) in entries {
            if let Some(one) = read(self, &path.key(name), name, entry) {
                all.push(one);
            }
        }
        (all.len() == entries.len()).then_some(all)
    }
}

/// Names that a list of known ones shows.
const SHOWN: usize = 12;

fn shortened_list(names: &[&str]) -> String {
    let mut list: Vec<&str> = names.iter().copied().take(SHOWN).collect();
    if names.len() > SHOWN {
        list.push("...");
    }
    list.join(", ")
}

/// Reads the materials below `path` alone, such as those of the starter table.
pub(crate) fn materials(
    path: &Path<'_>,
    entries: &Named<MaterialEntry>,
    system: System,
) -> Result<Materials, Faults> {
    let mut resolver = Resolver::new(system);
    let materials = resolver.materials(path, entries);
    resolver.finish(materials)
}

/// Reads the one material at `path`.
pub(crate) fn material(
    path: &Path<'_>,
    entry: &MaterialEntry,
    system: System,
) -> Result<Material, Faults> {
    let mut resolver = Resolver::new(system);
    let material = resolver.one_material(path, entry);
    resolver.finish(material)
}

/// Reads the one mold at `path`.
pub(crate) fn mold(path: &Path<'_>, entry: &MoldEntry, system: System) -> Result<Mold, Faults> {
    let mut resolver = Resolver::new(system);
    let mold = resolver.mold(path, "the mold", entry);
    resolver.finish(mold)
}

/// Reads the tools at `path`.
pub(crate) fn bench(path: &Path<'_>, entry: &BenchEntry, system: System) -> Result<Bench, Faults> {
    let mut resolver = Resolver::new(system);
    let bench = resolver.bench(path, entry).map(|(tools, ..)| tools);
    resolver.finish(bench)
}

#[cfg(test)]
mod tests;

//! Formulas: their bases and doses, each of a dimension that can be measured out.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Resolver;
use crate::codes::code;
use crate::document::book::{BaseEntry, FormulaEntry};
use crate::document::written::DOSE_DIMENSIONS;
use crate::fault::Fault;
use crate::formula::{Dose, Formula, FormulaError};
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::mix::{MaterialId, Materials};
use crate::quantity::{Amount, Dimension, Rational, System, Unit};

impl Resolver {
    pub(super) fn formula(
        &mut self,
        path: &Path<'_>,
        name: &str,
        entry: &FormulaEntry,
        materials: &Materials,
    ) -> Formula {
        let per = entry.per;
        if let Some(per) = per {
            let path = path.key("per");
            self.check_dimension(&path, &per, &[Dimension::VOLUME, Dimension::MASS]);
            self.not_empty(&path, name, &per);
        }
        let base = match &entry.base {
            None => Vec::new(),
            Some(BaseEntry::One(base)) => {
                let found = self.find_material(materials, base, &path.key("base"));
                found.and_then(only_base).into_iter().collect()
            }
            Some(BaseEntry::Blend(parts)) if parts.is_empty() => {
                self.fault(
                    code!("empty-blend"),
                    &path.key("base"),
                    &"The blend names no plastisol.",
                    &"Name its plastisols with an amount each, or leave \"base\" out.",
                );
                Vec::new()
            }
            Some(BaseEntry::Blend(parts)) => {
                let path = path.key("base");
                for (part, amount) in parts {
                    self.not_empty(&path.key(part), name, amount);
                }
                self.doses(&path, parts, &[Dimension::VOLUME, Dimension::MASS], materials)
            }
        };
        let doses = self.doses(&path.key("doses"), &entry.doses, &DOSE_DIMENSIONS, materials);
        if per.is_none() && doses.iter().any(|dose| dose.amount.basis().is_none()) {
            self.report(path, &FormulaError::NoPer(name.to_owned()));
        }
        let color = entry.color.as_ref();
        let color = color.and_then(|color| color.read_at(&path.key("color"), self));
        let color = color.map(|color| color.reading);
        let formula = Formula { name: name.to_owned(), per, base, doses, color };
        self.plausible_doses(path, entry, &formula, materials);
        formula
    }

    /// Refuses an amount of base that is none, whether or not something is made by the formula.
    fn not_empty(&mut self, path: &Path<'_>, formula: &str, base: &Amount) {
        if base.value().is_zero() {
            self.report(path, &FormulaError::EmptyBase(formula.to_owned()));
        }
    }

    fn doses(
        &mut self,
        path: &Path<'_>,
        doses: &Named<Amount>,
        dimensions: &[Dimension],
        materials: &Materials,
    ) -> Vec<Dose> {
        let mut read = Vec::new();
        for (name, amount) in doses {
            let path = path.key(name);
            self.check_dimension(&path, amount, dimensions);
            if let Some(material) = self.find_material(materials, &Name(name.clone()), &path) {
                read.push(Dose { material, amount: *amount });
            }
        }
        read
    }

    fn check_dimension(&mut self, path: &Path<'_>, amount: &Amount, dimensions: &[Dimension]) {
        let found = amount.dimension();
        if !dimensions.contains(&found) {
            let wanted: Vec<String> = dimensions.iter().map(ToString::to_string).collect();
            self.fault(
                code!("wrong-dimension"),
                path,
                &format_args!("\"{amount}\" is {found}."),
                &format_args!("Write {}.", wanted.join(" or ")),
            );
        } else {
            // A word that the measuring system lacks, or a number beyond belief, is reported here.
            self.keep(path, amount.unit().factor(self.system).map(|_| ()));
        }
    }
}

/// A base without a blend: its amount does not count.
fn only_base(material: MaterialId) -> Option<Dose> {
    Some(Dose { material, amount: Amount::new(Rational::ONE, Unit::GRAM).ok()? })
}

impl FormulaEntry {
    /// What a book finds wrong with it, at `path`: its own fields are not in what the person wrote.
    pub(crate) fn faults(
        &self,
        name: &str,
        path: &str,
        materials: &Materials,
        system: System,
    ) -> Vec<Fault> {
        let faults = self.faults_inside(name, materials, system).into_iter();
        faults.map(|fault| Fault { path: path.to_owned(), ..fault }).collect()
    }

    /// Its doses that look like a slip, such as `black-flake 8 tbsp`.
    pub(crate) fn unusual(&self, materials: &Materials, system: System) -> Vec<String> {
        let unsure = Self { sure: None, ..self.clone() };
        let faults = unsure.faults_inside("", materials, system);
        let is_at = |name: &str, fault: &Fault| {
            fault.code == "unlikely" && fault.path == At("/doses").key(name).to_string()
        };
        let doses = self.doses.iter();
        let doses = doses.filter(|(name, _)| faults.iter().any(|fault| is_at(name, fault)));
        doses.map(|(name, amount)| format!("{name} {amount}")).collect()
    }

    fn faults_inside(&self, name: &str, materials: &Materials, system: System) -> Vec<Fault> {
        let mut resolver = Resolver::new(system);
        resolver.formula(&At(""), name, self, materials);
        resolver.faults
    }
}

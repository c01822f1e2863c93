//! Materials: what the starter table says of one, and what its entry says over it.

use alloc::borrow::ToOwned;
use alloc::sync::Arc;
use alloc::vec::Vec;

use super::Resolver;
use crate::codes::code;
use crate::color::pot::Strength;
use crate::document::book::{MaterialEntry, SourcedDrop};
use crate::document::starter;
use crate::document::written::{Percent, Written};
use crate::json::Named;
use crate::json::path::Path;
use crate::json::reader::Name;
use crate::material::{Drop, Kind, Material, ShotWindow};
use crate::mix::{MaterialId, Materials};
use crate::parameter::Parameter;
use crate::process::heat::SpecificHeat;
use crate::quantity::{DynamicViscosity, Ratio};
use crate::softener::MeasuredHardness;

impl Resolver {
    pub(crate) fn find_material(
        &mut self,
        materials: &Materials,
        name: &Name,
        path: &Path<'_>,
    ) -> Option<MaterialId> {
        let mut names = materials.iter().map(|(_, material)| material.name.as_str());
        self.find("material", path, &name.0, materials.find(&name.0), &mut names)
    }

    pub(super) fn materials(
        &mut self,
        path: &Path<'_>,
        entries: &Named<MaterialEntry>,
    ) -> Option<Materials> {
        let read = self.each_named(path, entries, |resolver, path, name, entry| {
            Some(resolver.material(path, name, entry))
        });
        read.map(Materials::new)
    }

    /// A material without a book.
    pub(crate) fn one_material(
        &mut self,
        path: &Path<'_>,
        entry: &MaterialEntry,
    ) -> Option<Material> {
        self.whole(|resolver| Some(resolver.material(path, "the material", entry)))
    }

    pub(super) fn material(
        &mut self,
        path: &Path<'_>,
        name: &str,
        entry: &MaterialEntry,
    ) -> Material {
        let generic = entry.like.as_ref().and_then(|like| self.starter(path, like));
        let mut material = match generic {
            Some(generic) => Material { name: name.to_owned(), kind: entry.kind, ..generic },
            None => Material::new(name, entry.kind),
        };
        let density = Some(Parameter::MaterialDensity);
        fill(
            &mut material.density,
            self.property(path, "density", density, entry.density.as_ref()),
        );
        fill(&mut material.fused, self.property(path, "fused", density, entry.fused.as_ref()));
        fill(
            &mut material.as_scooped,
            self.property(
                path,
                "as_scooped",
                Some(Parameter::AsScooped),
                entry.as_scooped.as_ref(),
            ),
        );
        let expansion = match entry.kind {
            Kind::Salt => Some(Parameter::SaltExpansion),
            Kind::Softener => Some(Parameter::SoftenerExpansion),
            _ => None,
        };
        let expansion = self.property(path, "expansion", expansion, entry.expansion.as_ref());
        fill(&mut material.expansion, expansion);
        self.specific_heat(path, entry, &mut material);
        let viscosity = entry.viscosity.as_ref();
        let viscosity =
            viscosity.and_then(|range| self.viscosity_range(&path.key("viscosity"), range));
        fill(&mut material.viscosity, viscosity);
        fill(
            &mut material.grain,
            self.property(path, "grain", Some(Parameter::Grain), entry.grain.as_ref()),
        );
        let drop = match &entry.drop {
            Some(SourcedDrop::Mass(mass)) => {
                self.property(path, "drop", Some(Parameter::DropMass), Some(mass)).map(Drop::Mass)
            }
            Some(SourcedDrop::Volume(volume)) => {
                self.property(path, "drop", None, Some(volume)).map(Drop::Volume)
            }
            None => None,
        };
        fill(&mut material.drop, drop);
        fill(&mut material.shot_window, self.shot_window(path, entry));
        fill(&mut material.price, entry.price.as_ref().map(|price| price.0.clone()));
        fill(&mut material.add, entry.add);
        fill(&mut material.notes, entry.notes.clone());
        material.tolerance = self.tolerance(&path.key("tolerance"), entry.tolerance);
        fill(&mut material.most, entry.most.as_ref().map(|most| most.0));
        fill(&mut material.hardness, self.hardness(path, entry));
        self.color_of(path, entry, &mut material);
        self.heat_and_flake(path, entry, &mut material);
        self.check_densities(path, &material);
        self.plausible_material(path, entry, &material);
        material
    }

    /// Color of a base; test pieces and strength of a colorant.
    fn color_of(&mut self, path: &Path<'_>, entry: &MaterialEntry, material: &mut Material) {
        if let Some(color) = &entry.color {
            let path = path.key("color");
            let read = color.read_at(&path, self);
            // What no photograph shows cannot be calculated with.
            let read = read.filter(|color| self.keep(&path, color.srgb()).is_some());
            material.color = read.map(|color| color.reading);
        }
        if let Some(entry) = &entry.over_backings {
            material.film = entry.read_at(&path.key("over_backings"), self);
        }
        material.fluorescent = entry.fluorescent.unwrap_or(false);
        let let_downs = entry.let_downs.as_deref().unwrap_or_default();
        let sure = entry.sure;
        let read = self.each(&path.key("let_downs"), let_downs, |resolver, path, entry| {
            let own = path.key("dose");
            let mass = material.mass_of(&entry.dose, resolver.system, "its test pieces");
            let mass = resolver.keep(&own, mass);
            let piece = entry.read_at(path, mass, resolver)?;
            resolver.plausible_let_down(&own, sure, &entry.dose, piece.dose);
            Some(piece)
        });
        material.let_downs = read.unwrap_or_default();
        if let Some(strength) = &entry.strength {
            if !strength.factors.iter().all(|factor| (0.1..=10.0).contains(factor)) {
                self.fault(
                    code!("out-of-range"),
                    &path.key("strength").key("factors"),
                    &"A colorant that is ten times stronger or weaker than its test pieces is another one.",
                    &"Write factors near 1, or pour new test pieces.",
                );
                return;
            }
            material.strength = Some(Strength {
                factors: strength.factors.to_vec(),
                common: strength.common.share(),
                own: strength.own.share(),
            });
        }
    }

    fn starter(&mut self, path: &Path<'_>, like: &Name) -> Option<Material> {
        let path = path.key("like");
        let table = self.starter_table()?;
        let found = table.find(&like.0).and_then(|id| table.get(id).ok()).cloned();
        let mut names = table.iter().map(|(_, material)| material.name.as_str());
        self.find("starter material", &path, &like.0, found, &mut names)
    }

    /// The starter table, read once.
    pub(super) fn starter_table(&mut self) -> Option<Arc<Materials>> {
        if self.starter.is_none() {
            match starter::materials() {
                Ok(table) => self.starter = Some(Arc::new(table)),
                Err(faults) => self.faults.extend(faults.into_vec()),
            }
        }
        self.starter.clone()
    }

    /// A stated specific heat brings its own rise: that of the starter table belongs to another value.
    fn specific_heat(&mut self, path: &Path<'_>, entry: &MaterialEntry, material: &mut Material) {
        let parameter = Some(Parameter::SpecificHeat);
        let stated = self.property(path, "specific_heat", parameter, entry.specific_heat.as_ref());
        if stated.is_some() {
            material.specific_heat = stated;
            material.specific_heat_rise = None;
        }
        let Some(rise) = &entry.specific_heat_rise else { return };
        let path = path.key("specific_heat_rise");
        let Some(rise) = self.keep(&path, rise.measured(self.system)) else { return };
        if let Some(specific_heat) = &material.specific_heat {
            self.keep(&path, SpecificHeat::new(specific_heat.value, rise.value));
        }
        material.specific_heat_rise = Some(rise);
    }

    /// A lowest and a highest viscosity.
    pub(crate) fn viscosity_range(
        &mut self,
        path: &Path<'_>,
        (low, high): &(Written<DynamicViscosity>, Written<DynamicViscosity>),
    ) -> Option<(DynamicViscosity, DynamicViscosity)> {
        let low = self.positive(&path.index(0), low);
        let high = self.positive(&path.index(1), high);
        let (low, high) = (low?, high?);
        if low > high {
            self.fault(
                code!("viscosity-reversed"),
                path,
                &"The lowest viscosity is above the highest.",
                &"Write the lower one first; for one value write it twice.",
            );
            return None;
        }
        Some((low, high))
    }

    fn shot_window(&mut self, path: &Path<'_>, entry: &MaterialEntry) -> Option<ShotWindow> {
        let (low, high) = entry.shot_window.as_ref()?;
        let path = path.key("shot_window");
        let low = self.quantity(&path.index(0), low)?;
        let high = self.quantity(&path.index(1), high)?;
        if low > high {
            self.fault(
                code!("shot-window-reversed"),
                &path,
                &"The lowest temperature is above the highest.",
                &"Write the lower one first.",
            );
            return None;
        }
        Some(ShotWindow { low, high })
    }

    /// A share above zero.
    pub(super) fn tolerance(&mut self, path: &Path<'_>, percent: Option<Percent>) -> Option<f64> {
        let share = percent?.share();
        if share > 0.0 && share < 1.0 {
            return Some(share);
        }
        self.fault(
            code!("tolerance-out-of-range"),
            path,
            &"No bench keeps a tolerance of 0 %, and one of 100 % is none.",
            &"Write what you accept, such as \"5 %\".",
        );
        None
    }

    /// Readings of pieces with a softener or hardener.
    fn hardness(&mut self, path: &Path<'_>, entry: &MaterialEntry) -> Option<MeasuredHardness> {
        let written = entry.hardness.as_ref()?;
        let path = path.key("hardness");
        if !matches!(entry.kind, Kind::Softener | Kind::Hardener) {
            self.fault(
                code!("hardness-of-no-softener"),
                &path,
                &format_args!("Readings by how much {} is in a piece are of no use.", entry.kind),
                &"State them at the softener or the hardener.",
            );
            return None;
        }
        let points = written.points.iter();
        let points = points.map(|it| (Ratio::from(it.point_ratio.number()), it.point_hardness));
        let measured = MeasuredHardness::new(&written.scale.0, &points.collect::<Vec<_>>());
        self.keep(&path.key("points"), measured)
    }

    /// A powder cannot be heavier with air between its grains than without.
    fn check_densities(&mut self, path: &Path<'_>, material: &Material) {
        if let (Some(density), Some(scooped)) = (&material.density, &material.as_scooped)
            && scooped.value > density.value
        {
            self.fault(
                code!("scooped-above-true"),
                &path.key("as_scooped"),
                &format_args!("\"{}\" is heavier as scooped than its grains are.", material.name),
                &"Check the two densities; perhaps they are swapped.",
            );
        }
    }
}

/// A stated property replaces that of the starter table.
fn fill<T>(place: &mut Option<T>, stated: Option<T>) {
    if stated.is_some() {
        *place = stated;
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use serde_json::{Value, json};

    use crate::document::book_from_text;
    use crate::document::small::BOOK;
    use crate::quantity::Measurable;

    #[test]
    fn what_a_like_row_says_can_be_overruled() {
        let book = book_from_text(BOOK).unwrap();
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
}

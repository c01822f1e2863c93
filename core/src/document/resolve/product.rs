//! Products: a mold, and formulas that can be combined for each of its layers.

use alloc::borrow::ToOwned;
use alloc::string::ToString;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{Book, Layer, Product};
use crate::codes::code;
use crate::document::book::LayerEntry;
use crate::formula::{Formula, Overlap};
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::plan::day::recipe_of;

/// Mold and formulas of a product of the book, or of an order line of its own.
pub(super) struct Wanted<'a> {
    pub(super) mold: Option<&'a Name>,
    pub(super) formulas: Option<&'a [Name]>,
    pub(super) overlap: Option<Overlap>,
    pub(super) layers: Option<&'a [LayerEntry]>,
}

impl Resolver {
    pub(super) fn product(
        &mut self,
        name: &str,
        wanted: &Wanted<'_>,
        path: &Path<'_>,
        book: &Book,
    ) -> Option<Product> {
        let mold = match wanted.mold {
            Some(mold) => {
                let mut names = book.molds.iter().map(|mold| mold.name.as_str());
                let path = path.key("mold");
                self.find("mold", &path, &mold.0, book.find_mold(&mold.0), &mut names)
            }
            None => None,
        };
        let layers = match (wanted.formulas, wanted.layers) {
            (Some(formulas), None) => {
                let path = path.key("formulas");
                let overlap = wanted.overlap.unwrap_or(Overlap::Refuse);
                self.layer(formulas, overlap, 1.0, &path, book).map(|layer| Vec::from([layer]))
            }
            (None, Some(_)) if wanted.overlap.is_some() => {
                self.fault(
                    code!("overlap-beside-layers"),
                    &path.key("overlap"),
                    &"\"overlap\" is given next to \"layers\".",
                    &"Put it into the layer that it is meant for.",
                );
                None
            }
            (None, Some(layers)) => self.layers(layers, &path.key("layers"), book),
            _ => {
                self.fault(
                    code!("formulas-or-layers"),
                    path,
                    &"It must say what is shot: either \"formulas\" or \"layers\".",
                    &"Write \"formulas\": [\"color\", \"body\"], or \"layers\" for a piece of two colors.",
                );
                None
            }
        };
        Some(Product { name: name.to_owned(), mold: mold?, layers: layers? })
    }

    fn layers(
        &mut self,
        entries: &[LayerEntry],
        path: &Path<'_>,
        book: &Book,
    ) -> Option<Vec<Layer>> {
        let layers = self.each(path, entries, |resolver, path, entry| {
            let overlap = entry.overlap.unwrap_or(Overlap::Refuse);
            let share = entry.share.share();
            resolver.layer(&entry.formulas, overlap, share, &path.key("formulas"), book)
        });
        self.check_injectors(entries.len(), path, book);
        let sum: f64 = entries.iter().fold(0.0, |sum, entry| sum + entry.share.share());
        if (sum - 1.0).abs() > 1e-9 {
            self.fault(
                code!("layer-shares"),
                path,
                &format_args!(
                    "The shares of the layers come to {} %.",
                    libm::round(sum * 1e4) / 1e2
                ),
                &"They must come to 100 % together.",
            );
            return None;
        }
        if entries.iter().any(|entry| entry.share.share() <= 0.0) {
            self.fault(
                code!("layer-shares"),
                path,
                &"A layer has a share of 0 %.",
                &"Leave it out, or give it a share.",
            );
            return None;
        }
        layers
    }

    /// The layers of a piece are hot at the same time, each in an injector of its own.
    fn check_injectors(&mut self, layers: usize, path: &Path<'_>, book: &Book) {
        let there = book.injector.count;
        if usize::try_from(there).is_ok_and(|there| layers > there) {
            self.fault(
                code!("too-few-injectors"),
                path,
                &format_args!("A piece of {layers} layers takes {layers} injectors at once; the bench has {there}."),
                &format_args!("Write \"count\": {layers} at the bench's injector, if the shop has that many."),
            );
        }
    }

    pub(crate) fn layer(
        &mut self,
        formulas: &[Name],
        overlap: Overlap,
        share: f64,
        path: &Path<'_>,
        book: &Book,
    ) -> Option<Layer> {
        if formulas.is_empty() {
            self.fault(code!("no-formula"), path, &"No formula is named.", &"Name at least one.");
            return None;
        }
        let formulas = self.each(path, formulas, |resolver, path, name| {
            let mut names = book.formulas.iter().map(|formula| formula.name.as_str());
            resolver.find("formula", path, &name.0, book.find_formula(&name.0), &mut names)
        });
        let layer = Layer { formulas: formulas?, share, overlap };
        // A recipe that cannot be had is reported where it is named, before any order asks for it.
        if !self.recipes.has(&layer) && self.is_sound(&layer, book) {
            let recipe = self.keep(path, recipe_of(&layer, book))?;
            self.recipes.add(&layer, recipe);
        }
        Some(layer)
    }

    /// Whether no fault has been found in what the recipe of `layer` comes from. Where one has, it is
    /// reported there; that the recipe cannot be had follows from it, and is not another fault.
    fn is_sound(&self, layer: &Layer, book: &Book) -> bool {
        let formulas = || layer.formulas.iter().filter_map(|&index| book.formulas.get(index));
        let is_material_sound = |id| match book.materials.get(id) {
            Ok(material) => !self.has_fault(&At("/materials").key(&material.name)),
            Err(_) => true,
        };
        let is_formula_sound = |formula: &Formula| {
            let mut doses = formula.base.iter().chain(&formula.doses);
            !self.has_fault(&At("/formulas").key(&formula.name))
                && doses.all(|dose| is_material_sound(dose.material))
        };
        let is_default_base_sound = || {
            !self.has_fault(&At("/default_base")) && book.default_base.is_none_or(is_material_sound)
        };
        let by_default = formulas().all(|formula| formula.base.is_empty());
        formulas().all(is_formula_sound) && (!by_default || is_default_base_sound())
    }

    /// Whether a fault has been found in the value at `path`.
    pub(super) fn has_fault(&self, path: &Path<'_>) -> bool {
        if self.faults.is_empty() {
            return false;
        }
        let path = path.to_string();
        self.faults.iter().any(|fault| {
            let below = fault.path.strip_prefix(&path);
            below.is_some_and(|below| below.is_empty() || below.starts_with('/'))
        })
    }
}

//! Products: a mold, and formulas that can be combined for each of its layers.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::ToString;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{Book, Layer, Product};
use crate::document::book::LayerEntry;
use crate::document::path::pointer;
use crate::document::reader::Name;
use crate::formula::Overlap;
use crate::plan::day::recipe_of;

/// What a product of the book, or an order line of its own, asks for.
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

    pub(super) fn layer(
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

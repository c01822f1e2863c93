//! The book as a whole: its parts in their order, then what rests on them.

use alloc::vec::Vec;

use super::Resolver;
use super::bench::tool_uncertainty;
use super::product::Wanted;
use crate::book::Book;
use crate::codes::code;
use crate::document::book::BookDocument;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::material::Kind;
use crate::mix::{MaterialId, Materials};
use crate::plan::day::KnownRecipes;

impl TryFrom<&BookDocument> for Book {
    type Error = Faults;

    fn try_from(document: &BookDocument) -> Result<Self, Faults> {
        resolved(document).map(|(book, _)| book)
    }
}

/// The book of `document`, with the recipes of its products.
pub(in crate::document) fn resolved(
    document: &BookDocument,
) -> Result<(Book, KnownRecipes), Faults> {
    let mut resolver = Resolver::new(document.measures);
    let book = resolver.book(document);
    resolver.plausible(document);
    let recipes = core::mem::replace(&mut resolver.recipes, KnownRecipes::new());
    resolver.finish(book.map(|book| (book, recipes)))
}

impl Resolver {
    fn book(&mut self, document: &BookDocument) -> Option<Book> {
        let path = &At("/materials");
        let read = self.each_named(path, &document.materials, |resolver, path, name, entry| {
            let material = resolver.material(path, name, entry);
            Some(resolver.with_borrowed(material))
        });
        let materials = Materials::new(read?);
        let default_base =
            document.default_base.as_ref().and_then(|name| self.default_base(name, &materials));
        let formulas =
            self.each_named(&At("/formulas"), &document.formulas, |resolver, path, name, entry| {
                Some(resolver.formula(path, name, entry, &materials))
            });
        let molds = self.each_named(&At("/molds"), &document.molds, Self::mold);
        let altitude =
            document.altitude.as_ref().and_then(|altitude| altitude.to(self.system).ok());
        let air = self.air(document.altitude.as_ref(), document.station_pressure.as_ref());
        let bench = self.bench(&At("/bench"), &document.bench);
        let vacuum = document.bench.vacuum.as_ref();
        let chamber = vacuum.and_then(|vacuum| self.chamber(&At("/bench/vacuum"), vacuum, air));
        let oven = self.oven(document, &materials, default_base);
        let limits = self.limits(document.limits.as_ref());
        let costing = document.costing.as_ref();
        let costing = costing.and_then(|costing| self.costing(costing, &materials));
        let molds = molds?;
        let (tools, vessels, injector) = bench?;
        let mut book = Book {
            shop: document.shop.as_ref().map(|shop| shop.0.clone()),
            system: self.system,
            altitude,
            air,
            materials,
            default_base,
            formulas: formulas?,
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
        if let Some(products) = &document.products {
            let products =
                self.each_named(&At("/products"), products, |resolver, path, name, entry| {
                    let wanted = Wanted {
                        mold: Some(&entry.mold),
                        formulas: entry.formulas.as_deref(),
                        overlap: entry.overlap,
                        layers: entry.layers.as_deref(),
                    };
                    resolver.product(name, &wanted, path, &book)
                });
            book.products = products?;
        }
        Some(book)
    }

    fn default_base(&mut self, name: &Name, materials: &Materials) -> Option<MaterialId> {
        let path = &At("/default_base");
        let found = self.find_material(materials, name, path)?;
        let kind = self.keep(path, materials.get(found))?.kind;
        if kind != Kind::Plastisol {
            self.fault(
                code!("base-no-plastisol"),
                path,
                &format_args!("\"{}\" is a {kind}; a pot starts from a plastisol.", name.0),
                &format_args!(
                    "Name a plastisol here, or give \"{}\" the kind \"plastisol\".",
                    name.0
                ),
            );
            return None;
        }
        Some(found)
    }
}

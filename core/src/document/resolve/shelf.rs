//! Left-over mixes on the shelf and materials in stock: what is in them, and how much.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::vec::Vec;

use super::{Resolver, pointer};
use crate::book::Book;
use crate::document::Named;
use crate::document::orders::ShelfEntry;
use crate::document::reader::Name;
use crate::formula::Overlap;
use crate::mix::{MaterialId, Mix};
use crate::plan::day::recipe_of;
use crate::plan::shelf::LeftOver;
use crate::plan::stock::InStock;
use crate::quantity::{Amount, Mass, Measurable};

impl Resolver {
    pub(super) fn shelf(&mut self, entries: &[ShelfEntry], book: &Book) -> Option<Vec<LeftOver>> {
        let read: Vec<Option<LeftOver>> = entries
            .iter()
            .enumerate()
            .map(|(index, entry)| {
                let path = format!("/shelf/{index}");
                if entries.iter().take(index).any(|earlier| earlier.name == entry.name) {
                    self.fault(
                        "shelf-name-twice",
                        &pointer(&path, "name"),
                        format!("\"{}\" stands on the shelf twice.", entry.name.0),
                        "Give each left-over a name of its own.".to_owned(),
                    );
                }
                self.left_over(entry, &path, book)
            })
            .collect();
        read.into_iter().collect()
    }

    fn left_over(&mut self, entry: &ShelfEntry, path: &str, book: &Book) -> Option<LeftOver> {
        let mass = self.positive(&pointer(path, "mass"), &entry.mass);
        let made = self.date(&pointer(path, "made"), entry.made.as_ref());
        if book.limits.heats.is_some() && entry.heats.is_none() {
            self.fault(
                "missing-field",
                path,
                "\"heats\" is missing: the book limits them.".to_owned(),
                "Add how often it has been heated; 1 for what was left of a pot heated once."
                    .to_owned(),
            );
        }
        let mix = match (&entry.formulas, &entry.parts) {
            (Some(formulas), None) => {
                let overlap = entry.overlap.unwrap_or(Overlap::Refuse);
                self.layer(formulas, overlap, 1.0, &pointer(path, "formulas"), book).and_then(
                    |layer| {
                        let recipe = self.keep(path, recipe_of(&layer, book))?;
                        self.keep(path, recipe.for_base(Mass::from_si(1.0)))
                    },
                )
            }
            (None, Some(parts)) => self.measured(parts, &pointer(path, "parts"), book),
            _ => {
                self.fault(
                    "formulas-or-parts",
                    path,
                    "It must say what is in it: either \"formulas\" or \"parts\".".to_owned(),
                    "Write \"formulas\": [\"color\", \"body\"], or \"parts\": { \"clear-base\": \"1 cup\", ... }.".to_owned(),
                );
                None
            }
        }?;
        let there = mix.mass();
        if there <= Mass::default() {
            self.fault(
                "shelf-empty",
                path,
                "Nothing is in it.".to_owned(),
                "Name its parts with amounts above zero, or leave it out.".to_owned(),
            );
            return None;
        }
        let mix = self.keep(path, mix.scaled((mass? / there).value))?;
        let name = entry.name.0.clone();
        Some(LeftOver { name, mix, heats: entry.heats, made: made?, ext: entry.ext.clone() })
    }

    /// Amounts of materials as they were measured.
    pub(super) fn measured(
        &mut self,
        amounts: &Named<Amount>,
        path: &str,
        book: &Book,
    ) -> Option<Mix> {
        let mut mix = Mix::new();
        let mut whole = true;
        for (name, amount) in amounts {
            let path = pointer(path, name);
            let added = self.mass_at(name, amount, &path, book);
            let added = added.and_then(|(id, mass)| self.keep(&path, mix.add(id, mass)));
            whole &= added.is_some();
        }
        whole.then_some(mix)
    }

    /// What is in stock of each material.
    pub(super) fn stock(&mut self, amounts: &Named<Amount>, book: &Book) -> Option<Vec<InStock>> {
        let read: Vec<Option<InStock>> = amounts
            .iter()
            .map(|(name, amount)| {
                let (material, held) =
                    self.mass_at(name, amount, &pointer("/stock", name), book)?;
                Some(InStock { material, held })
            })
            .collect();
        read.into_iter().collect()
    }

    fn mass_at(
        &mut self,
        name: &str,
        amount: &Amount,
        path: &str,
        book: &Book,
    ) -> Option<(MaterialId, Mass)> {
        let id = self.find_material(&book.materials, &Name(name.to_owned()), path)?;
        let material = self.keep(path, book.materials.get(id))?;
        let mass = material.mass_of(amount, book.system, "weighing it");
        Some((id, self.keep(path, mass)?))
    }
}

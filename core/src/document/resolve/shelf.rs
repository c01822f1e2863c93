//! Left-over mixes on the shelf and materials in stock: what is in them, and how much.

use alloc::borrow::ToOwned;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::Book;
use crate::codes::code;
use crate::document::orders::ShelfEntry;
use crate::document::written::Written;
use crate::formula::Overlap;
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::mix::{MaterialId, Mix};
use crate::plan::day::recipe_of;
use crate::plan::shelf::Leftover;
use crate::plan::stock::InStock;
use crate::quantity::{Amount, Mass, Measurable, Time};

impl Resolver {
    pub(super) fn shelf(&mut self, entries: &[ShelfEntry], book: &Book) -> Option<Vec<Leftover>> {
        let mut names: Vec<&Name> = Vec::new();
        self.each(&At("/shelf"), entries, |resolver, path, entry| {
            if names.contains(&&entry.name) {
                resolver.fault(
                    code!("shelf-name-twice"),
                    &path.key("name"),
                    &format_args!("\"{}\" is on the shelf twice.", entry.name.0),
                    &"Give each leftover a name of its own.",
                );
            }
            names.push(&entry.name);
            resolver.left_over(entry, path, book)
        })
    }

    fn left_over(&mut self, entry: &ShelfEntry, path: &Path<'_>, book: &Book) -> Option<Leftover> {
        let mass = self.positive(&path.key("mass"), &entry.mass);
        let made = self.date(&path.key("made"), entry.made.as_ref());
        if book.limits.heats.is_some() && entry.heats.is_none() {
            self.fault(
                code!("missing-field"),
                path,
                &"\"heats\" is missing: the book limits them.",
                &"Add how often it has been heated; 1 for what was left of a pot heated once.",
            );
        }
        let mix = match (&entry.formulas, &entry.parts) {
            (Some(formulas), None) => {
                let overlap = entry.overlap.unwrap_or(Overlap::Refuse);
                self.layer(formulas, overlap, 1.0, &path.key("formulas"), book).and_then(|layer| {
                    let recipe = self.keep(path, recipe_of(&layer, book))?;
                    self.keep(path, recipe.for_base(Mass::from_si(1.0)))
                })
            }
            (None, Some(parts)) => self.mixed(parts, &path.key("parts"), book),
            _ => {
                self.fault(
                    code!("formulas-or-parts"),
                    path,
                    &"It must say what is in it: either \"formulas\" or \"parts\".",
                    &"Write \"formulas\": [\"color\", \"body\"], or \"parts\": { \"clear-base\": \"1 cup\", ... }.",
                );
                None
            }
        }?;
        let there = mix.mass();
        if there <= Mass::default() {
            self.fault(
                code!("shelf-empty"),
                path,
                &"Nothing is in it.",
                &"Name its parts with amounts above zero, or leave it out.",
            );
            return None;
        }
        let spent = entry.spent.as_ref();
        let spent = spent.and_then(|spent| self.spent(&path.key("spent"), spent, &mix, book));
        let mix = self.keep(path, mix.scaled((mass? / there).value))?;
        Some(Leftover {
            name: entry.name.0.clone(),
            mix,
            heats: entry.heats,
            spent,
            made: made?,
            ext: entry.ext.clone(),
        })
    }

    /// Heat spent by a mix. It counts at one temperature: that of the budget of its plastisols.
    pub(super) fn spent(
        &mut self,
        path: &Path<'_>,
        written: &Written<Time>,
        mix: &Mix,
        book: &Book,
    ) -> Option<Time> {
        let spent = self.positive(path, written)?;
        let mut at = None;
        for portion in mix.portions() {
            let material = book.materials.get(portion.material).ok();
            let Some(budget) = material.and_then(|material| material.budget) else { continue };
            if *at.get_or_insert(budget.at) != budget.at {
                self.fault(
                    code!("spent-at-two-temperatures"),
                    path,
                    &"The budgets of its plastisols are stated at different temperatures, and it is not said at which of them this time counts.",
                    &"State these budgets at one temperature, or leave \"spent\" out: then it is not known.",
                );
                return None;
            }
        }
        if at.is_none() {
            self.fault(
                code!("spent-without-budget"),
                path,
                &"No plastisol in it states a \"budget\", at whose temperature this time would count.",
                &"Give the plastisol its \"budget\", or leave \"spent\" out.",
            );
        }
        Some(spent)
    }

    /// Amounts of materials as they were measured.
    pub(crate) fn mixed(
        &mut self,
        amounts: &Named<Amount>,
        path: &Path<'_>,
        book: &Book,
    ) -> Option<Mix> {
        let mut mix = Mix::new();
        let mut whole = true;
        for (name, amount) in amounts {
            let path = path.key(name);
            let added = self.mass_at(name, amount, &path, book);
            let added = added.and_then(|(id, mass)| self.keep(&path, mix.add(id, mass)));
            whole &= added.is_some();
        }
        whole.then_some(mix)
    }

    /// Stock of each material.
    pub(super) fn stock(&mut self, amounts: &Named<Amount>, book: &Book) -> Option<Vec<InStock>> {
        self.each_named(&At("/stock"), amounts, |resolver, path, name, amount| {
            let (material, held) = resolver.mass_at(name, amount, path, book)?;
            Some(InStock { material, held })
        })
    }

    pub(crate) fn mass_at(
        &mut self,
        name: &str,
        amount: &Amount,
        path: &Path<'_>,
        book: &Book,
    ) -> Option<(MaterialId, Mass)> {
        let id = self.find_material(&book.materials, &Name(name.to_owned()), path)?;
        let material = self.keep(path, book.materials.get(id))?;
        let mass = material.mass_of(amount, book.system, "weighing it");
        Some((id, self.keep(path, mass)?))
    }
}

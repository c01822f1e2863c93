//! The last step of planning: a layout in words, as the [`Plan`] that is shown.

mod line;
mod name;
mod notes;
mod pot;
mod proof;
mod steps;
mod words;

use alloc::vec::Vec;

pub(super) use self::name::names;
use super::day::Day;
use super::doubt::DensityDoubts;
use super::layout::Layout;
use super::make::Sums;
use super::parcel::parcels;
use super::pot::Workshop;
use super::{Parcel, Plan, PlannedLine, Quote, process};
use crate::show::{Calculated, TextScale};

impl Workshop<'_> {
    /// The quote for the day that is laid out so.
    pub(super) fn quote(&self, layout: &Layout<'_>, sums: Sums) -> Quote {
        let (lines, parcels) = self.lines(layout, None);
        Quote { lines, parcels, stock: sums.stock, cost: sums.cost }
    }

    /// The order lines, with their sink rates if there are `doubts`, and their parcels.
    fn lines(
        &self,
        layout: &Layout<'_>,
        doubts: Option<&DensityDoubts>,
    ) -> (Vec<PlannedLine>, Vec<Parcel>) {
        let lines = self.describe_lines(layout, doubts);
        let packing = self.book.costing.as_ref().map_or(&[][..], |costing| &costing.packing);
        let parcels = parcels(&lines, packing);
        (lines, parcels)
    }

    /// The plan of `day` that is laid out so.
    pub(super) fn describe(&self, day: &Day, layout: &Layout<'_>, sums: Sums) -> Plan {
        let Sums { stock, cost, borrowed } = sums;
        let book = self.book;
        let doubts = DensityDoubts::of(layout, &self.names, &book.unsure);
        let (lines, parcels) = self.lines(layout, Some(&doubts));
        let each = || layout.pots.iter().enumerate();
        let pots: Vec<super::Pot> = each()
            .zip(&layout.names)
            .map(|(pot, name)| self.describe_pot(layout, name, pot, &doubts))
            .collect();
        let mut assumptions: Vec<_> = layout.apart.iter().map(notes::taken_apart).collect();
        let raised = each().filter_map(|(place, pot)| Some((place, pot.raised.as_ref()?)));
        assumptions
            .extend(raised.map(|(place, raised)| notes::raised(layout.letter(place), raised)));
        let off_marks = each().filter_map(|(place, pot)| Some((place, pot.off_marks.as_ref()?)));
        assumptions.extend(
            off_marks.map(|(place, off)| notes::off_marks(layout.letter(place), off, book.system)),
        );
        assumptions.extend(notes::assumed(self.recipes, &book.materials));
        assumptions.extend(notes::feed_not_known(self.shots));
        assumptions.extend(process::assumed(&pots));
        assumptions.extend(process::clock_notes(&layout.pots));
        assumptions.extend(notes::shelf_not_used(layout));
        assumptions.extend(pots.iter().flat_map(|pot| pot.warnings.iter().cloned()));
        if let Some(Calculated::Unknown(note)) = &cost {
            assumptions.push(note.clone());
        }
        Plan {
            parcels,
            shop: book.shop.clone(),
            day: day.day.clone(),
            measures: book.system,
            scale: Some(TextScale::of(book.system)),
            lines,
            steps: steps::steps(layout, &pots, book, day.day.as_deref()),
            clock: process::time_line(book, layout, &pots),
            pots,
            work: layout.work.iter().map(|work| pot::work(work, layout, book)).collect(),
            shelf: layout.shelf.iter().map(|one| pot::shelf(layout, one)).collect(),
            stock,
            cost,
            proof: self.proof(layout),
            water: process::water(book),
            borrowed,
            questions: process::questioned(book, &layout.pots).into_iter().collect(),
            assumptions,
            cautions: notes::cautions(layout, book),
        }
    }
}

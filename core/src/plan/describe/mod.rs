//! The last step of planning: a layout in words, as the [`Plan`] that is shown.

mod line;
mod notes;
mod pot;
mod proof;
mod steps;
mod words;

use alloc::string::String;
use alloc::vec::Vec;

use super::day::Day;
use super::layout::Layout;
use super::parcel::parcels;
use super::pot::Workshop;
use super::{Borrowed, DayCost, Plan, StockEntry, process};
use crate::show::Calculated;

impl Workshop<'_> {
    /// The plan of `day` that is laid out so.
    pub(super) fn describe(
        &self,
        day: &Day,
        layout: &Layout<'_>,
        stock: Vec<StockEntry>,
        cost: Option<Calculated<DayCost>>,
        borrowed: Vec<Borrowed>,
    ) -> Plan {
        let book = self.book;
        let each = || layout.pots.iter().enumerate();
        let pots: Vec<super::Pot> = each()
            .zip(steps::ids(&layout.pots))
            .map(|((place, pot), id)| self.describe_pot(place, id, pot))
            .collect();
        let mut assumptions: Vec<_> = layout.apart.iter().map(notes::taken_apart).collect();
        let raised = each().filter_map(|(place, pot)| Some((place, pot.raised.as_ref()?)));
        assumptions.extend(raised.map(|(place, raised)| notes::raised(place, raised)));
        let off_marks = each().filter_map(|(place, pot)| Some((place, pot.off_marks.as_ref()?)));
        assumptions.extend(off_marks.map(|(place, off)| notes::off_marks(place, off, book.system)));
        assumptions.extend(notes::assumed(self.recipes, &book.materials));
        assumptions.extend(notes::feed_not_known(self.shots));
        assumptions.extend(process::assumed(&layout.pots));
        assumptions.extend(process::clock_notes(&layout.pots));
        assumptions.extend(notes::shelf_not_used(layout));
        assumptions.extend(pots.iter().flat_map(|pot| pot.warnings.iter().cloned()));
        if let Some(Calculated::Unknown(note)) = &cost {
            assumptions.push(note.clone());
        }
        let lines = self.describe_lines(layout);
        let packing = book.costing.as_ref().map_or(&[][..], |costing| &costing.packing);
        Plan {
            parcels: parcels(&lines, packing),
            shop: book.shop.clone(),
            day: day.day.clone(),
            measures: book.system,
            lines,
            steps: steps::steps(layout, &pots, book, day.day.as_deref()),
            pots,
            work: layout.work.iter().map(|work| pot::work(work, layout)).collect(),
            clock: process::time_line(book, layout),
            shelf: layout.shelf.iter().map(pot::shelf).collect(),
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

/// The letter of the pot at `index`: A, B, ..., Z, AA, AB, ...
pub(super) fn letter(index: usize) -> String {
    let mut letters: Vec<u8> = Vec::new();
    let mut rest = index;
    loop {
        letters.push(
            b'A'.saturating_add(u8::try_from(rest.checked_rem(26).unwrap_or(0)).unwrap_or(0)),
        );
        match rest.checked_div(26).unwrap_or(0).checked_sub(1) {
            Some(next) => rest = next,
            None => break,
        }
    }
    letters.iter().rev().map(|&letter| char::from(letter)).collect()
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::letter;

    #[rstest]
    #[case(0, "A")]
    #[case(25, "Z")]
    #[case(26, "AA")]
    #[case(51, "AZ")]
    #[case(52, "BA")]
    #[case(701, "ZZ")]
    #[case(702, "AAA")]
    fn pots_have_letters(#[case] index: usize, #[case] name: &str) {
        assert_eq!(letter(index), name);
    }
}

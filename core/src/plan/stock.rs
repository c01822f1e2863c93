//! Stock that a day takes, and shortages.

use alloc::string::String;
use alloc::vec::Vec;

use super::layout::{Layout, PotLayout};
use crate::book::Book;
use crate::cost::{CostError, StockLine, StockNeed};
use crate::mix::MaterialId;
use crate::quantity::Mass;
use crate::show::{Shown, part, text};

/// Stock of a material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InStock {
    /// The material.
    pub material: MaterialId,
    /// How much of it.
    pub held: Mass,
}

part! {
    /// A material in stock, and what the day needs of it.
    pub struct StockEntry {
        /// Which material.
        pub material: String,
        /// Mass on hand.
        pub had: Shown<Mass>,
        /// Mass that the day's pots need.
        pub used: Shown<Mass>,
        /// Mass left; zero if it runs short.
        pub left: Shown<Mass>,
        /// Mass missing.
        pub short: Shown<Mass>,
        /// The first pot that it is not enough for, if any.
        pub runs_out_in: Option<String>,
        /// Packages to buy for what is missing, if the book states a price and so a package.
        pub packages: Option<u64>,
    }
}

/// Stock that the pots take, the scarcest first.
pub(super) fn stock(
    layout: &Layout<'_>,
    book: &Book,
    held: &[InStock],
) -> Result<Vec<StockEntry>, CostError> {
    let mut lines = Vec::with_capacity(held.len());
    for &InStock { material: id, held } in held {
        let Ok(material) = book.materials.get(id) else { continue };
        let used = layout.pots.iter().fold(Mass::default(), |sum, pot| sum + taken(pot, id));
        let line = StockLine::of(&StockNeed { material, held, used }, book.system)?;
        lines.push((id, held, line));
    }
    lines.sort_by(|(.., a), (.., b)| a.in_order_of_need(b));
    let entry = |(id, had, line): (MaterialId, Mass, StockLine)| {
        let short = line.short > Mass::default();
        StockEntry {
            runs_out_in: short
                .then(|| runs_out(&layout.pots, id, had))
                .flatten()
                .map(|pot| layout.letter(pot).into()),
            packages: line.packages.filter(|_| short),
            material: line.material,
            had: text::mass(had),
            used: text::mass(line.used),
            left: text::mass(line.left),
            short: text::mass(line.short),
        }
    };
    Ok(lines.into_iter().map(entry).collect())
}

/// Mass of a material that a pot takes, by the ways that its weigh lists choose.
fn taken(pot: &PotLayout<'_>, material: MaterialId) -> Mass {
    let entries = pot.stages.iter().flat_map(|stage| &stage.weigh);
    let of = entries.filter(|listed| listed.addition.material == material);
    of.fold(Mass::default(), |sum, listed| sum + listed.gives())
}

/// The first pot that the mass `had` is not enough for.
fn runs_out(pots: &[PotLayout<'_>], material: MaterialId, had: Mass) -> Option<usize> {
    let mut left = had;
    pots.iter().position(|pot| {
        left -= taken(pot, material);
        left < Mass::default()
    })
}

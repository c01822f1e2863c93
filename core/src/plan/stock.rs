//! What a day takes of the stock, and what runs short.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{Plan, Pot};
use crate::book::Book;
use crate::cost::{CostError, Need, stock};
use crate::fault::{Fault, Faults};
use crate::mix::MaterialId;
use crate::quantity::Mass;
use crate::show::{Shown, part, text};

/// What is in stock of a material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct InStock {
    /// The material.
    pub material: MaterialId,
    /// How much of it.
    pub held: Mass,
}

part! {
    /// A material in stock, and what the day takes of it.
    pub struct StockEntry {
        /// Which material.
        pub material: String,
        /// What was there.
        pub had: Shown<Mass>,
        /// What the day's pots take.
        pub used: Shown<Mass>,
        /// What is left; none where it runs short.
        pub left: Shown<Mass>,
        /// What is missing.
        pub short: Shown<Mass>,
        /// The pot that cannot be filled any more, where something is missing.
        pub runs_out_in: Option<String>,
        /// Packages to buy for what is missing, where the book states a price and so a package.
        pub packages: Option<u64>,
    }
}

impl Plan {
    /// Counts what the pots take of the stock; what lasts shortest comes first.
    pub(super) fn count_stock(&mut self, book: &Book, held: &[InStock]) -> Result<(), Faults> {
        let counted = counted(&self.pots, book, held);
        self.stock = counted.map_err(|error| Faults::from(Fault::at("/stock", &error)))?;
        Ok(())
    }
}

fn counted(pots: &[Pot], book: &Book, held: &[InStock]) -> Result<Vec<StockEntry>, CostError> {
    let mut needs = Vec::with_capacity(held.len());
    for one in held {
        let Ok(material) = book.materials.get(one.material) else { continue };
        let used = pots.iter().fold(Mass::default(), |sum, pot| sum + taken(pot, &material.name));
        needs.push(Need { material, held: one.held, used });
    }
    let lines = stock(&needs, book.system)?;
    let entry = |line: crate::cost::StockLine| {
        let need = needs.iter().find(|need| need.material.name == line.material);
        let had = need.map_or(Mass::default(), |need| need.held);
        let short = line.short > Mass::default();
        StockEntry {
            runs_out_in: short.then(|| runs_out(pots, &line.material, had)).flatten(),
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

/// What a pot takes of a material, by the ways that its weigh lists choose.
fn taken(pot: &Pot, material: &str) -> Mass {
    let entries = pot.stages.iter().flat_map(|stage| &stage.weigh);
    let of = entries.filter(|weigh| weigh.material == material);
    of.fold(Mass::default(), |sum, weigh| sum + weigh.best.gives.quantity)
}

/// The first pot for which what `had` holds does not suffice.
fn runs_out(pots: &[Pot], material: &str, had: Mass) -> Option<String> {
    let mut left = had;
    let short = pots.iter().find(|pot| {
        left -= taken(pot, material);
        left < Mass::default()
    });
    short.map(|pot| pot.pot.to_string())
}

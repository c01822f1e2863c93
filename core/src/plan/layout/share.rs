//! Leftovers from the shelf in a day's pots.
//!
//! Leftovers go into the first stage of a pot, because later ones take only additives. Leftovers may use at most half of
//! each material's tolerance and tools the rest, so that together they keep it. The masses that the linear program
//! ([`leftover`](crate::plan::leftover)) finds are rounded down to what the scale shows, and the weigh list is then for
//! the rest. If the bench could not measure the rest of a pot, it takes nothing from the shelf, and a note shows it.

use alloc::borrow::Cow;
use alloc::vec;
use alloc::vec::Vec;

use super::{FromShelf, Layout, PotLayout, ShelfLayout, ShelfUse};
use crate::bench::Balance;
use crate::book::Book;
use crate::codes::codes;
use crate::fault::{Diagnose, Fault, Faults};
use crate::formula::WrittenIn;
use crate::mix::{MaterialId, MixError};
use crate::plan::leftover::{Filled, LeftoverError, LeftoverParts, NewPot, fill, use_most};
use crate::plan::pot::Workshop;
use crate::plan::shelf::Leftover;
use crate::plan::tool_names::ToolNames;
use crate::plan::weigh::{Addition, ToMix, WeighError, list_to_mix};
use crate::quantity::{Mass, Ratio};

/// Part of a tolerance for the leftovers.
const PART: f64 = 0.5;

/// Relative rounding of the linear program, which is rounded up to what the scale shows: what is off by less is not off.
const SOLVED: f64 = 1e-9;

/// Why the shelf cannot be shared out.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ShelfError {
    /// Leftovers are weighed, and nothing can weigh them.
    #[error("Leftovers are weighed, and the bench has no scale.")]
    NoBalance,
    /// No way to share them out was found.
    #[error(transparent)]
    Leftover(#[from] LeftoverError),
    /// A material is not in the table.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl Diagnose for ShelfError {
    codes! {
        Self::NoBalance => "shelf-without-balance",
        Self::Leftover(error) => error.code(),
        Self::Mix(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoBalance => {
                "Add the scale to the bench (\"balance\"), or leave \"shelf\" out of the orders."
                    .into()
            }
            Self::Leftover(error) => error.help(),
            Self::Mix(error) => error.help(),
        }
    }
}

impl<'a> Layout<'a> {
    /// Puts as much of `shelf` as possible into the pots.
    pub(in crate::plan) fn use_shelf(
        &mut self,
        workshop: &Workshop<'a>,
        shelf: &'a [Leftover],
    ) -> Result<(), Faults> {
        let shared = self.share_out(workshop, shelf);
        shared.map_err(|error| Faults::from(Fault::at("/shelf", &error)))
    }

    fn share_out(
        &mut self,
        workshop: &Workshop<'a>,
        shelf: &'a [Leftover],
    ) -> Result<(), ShelfError> {
        if shelf.is_empty() {
            return Ok(());
        }
        let balance = workshop.book.tools.balance().ok_or(ShelfError::NoBalance)?;
        let sharing = Sharing::new(workshop, shelf, &self.pots)?;
        // Nothing from the shelf goes into a pot that is there.
        let mut takes: Vec<bool> = self.pots.iter().map(|pot| pot.begun().is_none()).collect();
        let shared = loop {
            match sharing.all(&takes, balance)? {
                Shared::Measured(shared) => break shared,
                Shared::NotMeasured(pot) => {
                    takes.get_mut(pot).into_iter().for_each(|takes| *takes = false);
                }
            }
        };
        self.shelf = sharing.rest(&shared);
        for ((pot, share), takes) in self.pots.iter_mut().zip(shared).zip(takes) {
            match share {
                Some(share) => sharing.put(pot, share)?,
                None if takes || pot.begun().is_some() => {}
                None => pot.from_shelf = ShelfUse::NotMeasured,
            }
        }
        Ok(())
    }
}

/// The shelf and the pots in numbers.
struct Sharing<'a> {
    book: &'a Book,
    names: ToolNames<'a>,
    shelf: &'a [Leftover],
    materials: Vec<MaterialId>,
    /// Masses of each leftover.
    parts: Vec<Vec<f64>>,
    /// Masses of each pot's first stage.
    pots: Vec<Vec<f64>>,
    /// The measures that each pot's formula doses its materials in.
    written: Vec<Vec<(MaterialId, WrittenIn)>>,
    /// Heats of each pot.
    heats: Vec<u32>,
    /// Each material's tolerance.
    tolerance: Vec<f64>,
}

/// Share of one pot, and what is then still to be added.
struct PotShare<'a> {
    from: Vec<Mass>,
    filled: Filled,
    rest: ToMix<'a>,
}

enum Shared<'a> {
    /// One a pot; `None` if it takes nothing.
    Measured(Vec<Option<PotShare<'a>>>),
    /// The rest of this pot cannot be measured.
    NotMeasured(usize),
}

impl<'a> Sharing<'a> {
    fn new(
        workshop: &Workshop<'a>,
        shelf: &'a [Leftover],
        pots: &[PotLayout<'a>],
    ) -> Result<Self, ShelfError> {
        let book = workshop.book;
        let mut wanted = Vec::with_capacity(pots.len());
        let mut written = Vec::with_capacity(pots.len());
        for pot in pots {
            let list = pot.stages.first().map_or(&[][..], |stage| &stage.weigh);
            let masses = list.iter().map(|one| (one.addition.material, one.addition.wanted));
            wanted.push(masses.collect::<Vec<_>>());
            let measures = list.iter().map(|one| (one.addition.material, one.addition.written));
            written.push(measures.collect::<Vec<_>>());
        }
        let on_shelf = shelf.iter().flat_map(|one| one.mix.portions());
        let mut materials: Vec<MaterialId> = on_shelf.map(|one| one.material).collect();
        materials.extend(wanted.iter().flatten().map(|(material, _)| *material));
        materials.sort_unstable();
        materials.dedup();
        let mass = |list: &[(MaterialId, Mass)], material: &MaterialId| {
            let found = list.iter().find(|(other, _)| other == material);
            found.map_or(0.0, |(_, mass)| mass.value)
        };
        let tolerance = materials.iter().map(|&material| {
            let own = book.materials.get(material)?.tolerance;
            Ok(own.unwrap_or(book.limits.tolerance))
        });
        Ok(Self {
            book,
            names: ToolNames::of(book),
            shelf,
            parts: shelf
                .iter()
                .map(|one| materials.iter().map(|&m| one.mix.mass_of(m).value).collect())
                .collect(),
            pots: wanted
                .iter()
                .map(|list| materials.iter().map(|material| mass(list, material)).collect())
                .collect(),
            written,
            heats: pots.iter().map(PotLayout::heats).collect(),
            tolerance: tolerance.collect::<Result<_, MixError>>()?,
            materials,
        })
    }

    /// The leftovers, the oldest with the smallest key; those without a date come last.
    fn left_overs(&self) -> Vec<LeftoverParts<'_>> {
        let mut by_age: Vec<usize> = (0..self.shelf.len()).collect();
        by_age.sort_by_key(|&index| {
            let made = self.shelf.get(index).and_then(|one| one.made.as_deref());
            (made.is_none(), made, index)
        });
        let key = |index: usize| {
            let rank = by_age.iter().position(|&other| other == index);
            rank.and_then(|rank| u32::try_from(rank).ok()).unwrap_or(u32::MAX)
        };
        let all = self.shelf.iter().zip(&self.parts).enumerate();
        all.map(|(index, (one, composition))| LeftoverParts {
            composition,
            mass: one.mix.mass(),
            heats: one.heats.unwrap_or(0),
            key: key(index),
        })
        .collect()
    }

    /// Shares the shelf out among the pots that take of it.
    fn all(&self, takes: &[bool], balance: &Balance) -> Result<Shared<'a>, ShelfError> {
        let left_overs = self.left_overs();
        let solved = self.tolerances(PART);
        let weighed = self.tolerances(PART * (1.0 + 1e-3));
        let open: Vec<usize> =
            (0..self.pots.len()).filter(|&pot| takes.get(pot) == Some(&true)).collect();
        let pots: Vec<NewPot<'_>> = open.iter().filter_map(|&pot| self.pot(pot, &solved)).collect();
        let most = use_most(&left_overs, &pots, self.book.limits.heats, Ratio::default())?;
        let mut shared: Vec<Option<PotShare<'a>>> = self.pots.iter().map(|_| None).collect();
        for (&index, most) in open.iter().zip(&most) {
            let from: Vec<Mass> = most.from.iter().map(|&mass| shown(mass, balance)).collect();
            if from.iter().all(|mass| mass.value == 0.0) {
                continue;
            }
            let Some(pot) = self.pot(index, &weighed) else { continue };
            let filled = fill(&left_overs, &pot, &from, Ratio::default())?;
            let rest = match list_to_mix(&self.additions(index, &filled), self.book, &self.names) {
                Ok(rest) if rest.list.iter().any(|one| one.beyond().is_some()) => {
                    return Ok(Shared::NotMeasured(index));
                }
                Ok(rest) => rest,
                Err(WeighError::Measure { .. }) => return Ok(Shared::NotMeasured(index)),
                Err(WeighError::Mix(error)) => return Err(error.into()),
            };
            if let Some(place) = shared.get_mut(index) {
                *place = Some(PotShare { from, filled, rest });
            }
        }
        Ok(Shared::Measured(shared))
    }

    fn tolerances(&self, part: f64) -> Vec<Ratio> {
        self.tolerance.iter().map(|tolerance| Ratio::from(tolerance * part)).collect()
    }

    fn pot<'b>(&'b self, pot: usize, tolerance: &'b [Ratio]) -> Option<NewPot<'b>> {
        let (composition, heats) = (self.pots.get(pot)?, *self.heats.get(pot)?);
        let mass = composition.iter().fold(0.0, |sum, mass| sum + mass);
        Some(NewPot {
            composition,
            tolerance,
            mass: Mass::new::<uom::si::mass::kilogram>(mass),
            heats,
        })
    }

    /// Additions that are still to come, each with the tolerance that the leftovers leave.
    fn additions(&self, pot: usize, filled: &Filled) -> Vec<(Addition, f64)> {
        let brought = self.brought(filled);
        let each = self.materials.iter().zip(&filled.fresh).zip(&brought);
        each.zip(filled.off.iter().zip(&self.tolerance))
            .map(|(((&material, &wanted), &brought), (off, tolerance))| {
                let total = wanted + brought;
                let written = self.written_in(pot, material);
                let addition = Addition { material, written, wanted, total };
                (addition, tolerance - off.value.abs())
            })
            .collect()
    }

    /// The measure that the formula of `pot` doses a material in.
    fn written_in(&self, pot: usize, material: MaterialId) -> WrittenIn {
        let mut of = self.written.get(pot).into_iter().flatten();
        let found = of.find(|(other, _)| *other == material);
        found.map_or(WrittenIn::Mass, |(_, written)| *written)
    }

    /// Mass of each material in the leftovers.
    fn brought(&self, filled: &Filled) -> Vec<Mass> {
        let mut brought = vec![Mass::default(); self.materials.len()];
        for (left_over, taken) in self.shelf.iter().zip(&filled.from) {
            let share = (*taken / left_over.mix.mass()).value;
            for (sum, &material) in brought.iter_mut().zip(&self.materials) {
                *sum += left_over.mix.mass_of(material) * share;
            }
        }
        brought
    }

    /// Puts its share into a pot.
    fn put(&self, pot: &mut PotLayout<'a>, share: PotShare<'a>) -> Result<(), ShelfError> {
        let parts = self.shelf.iter().zip(share.from.iter().copied());
        let parts: Vec<(&Leftover, Mass)> = parts.filter(|(_, mass)| mass.value > 0.0).collect();
        let known = parts.iter().all(|(left_over, _)| left_over.heats.is_some());
        let mut from = FromShelf {
            parts,
            brings: Vec::new(),
            off: Vec::new(),
            heats: known.then_some(share.filled.heats_spent),
        };
        let brought = self.brought(&share.filled);
        let each = self.materials.iter().zip(&brought).zip(&share.filled.fresh);
        for (((&id, &brings), &fresh), off) in each.zip(&share.filled.off) {
            let material = self.book.materials.get(id)?;
            let mut off = *off;
            if share.rest.left_out.contains(&id) {
                off = (1.0 + off.value) * (brings / (brings + fresh)) - Ratio::from(1.0);
            }
            if brings.value > 0.0 {
                from.brings.push((material, brings));
            }
            if off.value.abs() > SOLVED {
                from.off.push((material, off));
            }
        }
        pot.from_shelf = ShelfUse::Takes(from);
        if let Some(stage) = pot.stages.first_mut() {
            stage.weigh = share.rest.list;
        }
        Ok(())
    }

    /// The shelf, and what goes into pots.
    fn rest(&self, shared: &[Option<PotShare<'_>>]) -> Vec<ShelfLayout<'a>> {
        let all = self.shelf.iter().enumerate();
        all.map(|(index, left_over)| {
            let of = |share: &PotShare<'_>| share.from.get(index).copied().unwrap_or_default();
            let taken = shared.iter().flatten().map(of);
            let used = taken.fold(Mass::default(), |sum, mass| sum + mass);
            let takes = |share: &Option<PotShare<'_>>| {
                share.as_ref().is_some_and(|share| of(share) > Mass::default())
            };
            let pots = shared.iter().enumerate().filter(|(_, share)| takes(share));
            ShelfLayout { left_over, used, pots: pots.map(|(pot, _)| pot).collect() }
        })
        .collect()
    }
}

/// `mass` as the scale shows it, rounded down; zero if it cannot weigh it.
fn shown(mass: Mass, balance: &Balance) -> Mass {
    let steps = libm::floor((mass / balance.readability).value * (1.0 + SOLVED));
    let shown = balance.readability * steps;
    if shown < balance.least_load { Mass::default() } else { shown }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use super::*;
    use crate::document::book_from_text;
    use crate::document::small::BOOK;
    use crate::mix::Mix;
    use crate::quantity::Measurable;

    #[test]
    fn the_oldest_leftover_goes_first_and_those_without_a_date_last() {
        let book = book_from_text(BOOK).unwrap();
        let made = [None, Some("2031-05-12"), Some("2031-05-02"), None];
        let shelf = made.map(|made| Leftover {
            name: "left".into(),
            mix: Mix::default(),
            heats: made.map(|_| 3),
            spent: None,
            made: made.map(Into::into),
            ext: None,
        });
        let sharing = Sharing {
            book: &book,
            names: ToolNames::of(&book),
            shelf: &shelf,
            materials: Vec::new(),
            parts: vec![Vec::new(); shelf.len()],
            pots: Vec::new(),
            written: Vec::new(),
            heats: Vec::new(),
            tolerance: Vec::new(),
        };
        let left_overs = sharing.left_overs();
        let found: Vec<(u32, u32)> = left_overs.iter().map(|one| (one.key, one.heats)).collect();
        // Heats that are not known count as none.
        assert_eq!(found, [(2, 0), (1, 3), (0, 3), (3, 0)]);
    }

    #[test]
    fn a_leftover_is_weighed_from_the_least_load_on() {
        let gram = |grams: f64| Mass::from_si(grams * 1e-3);
        let readability = gram(1.0);
        let balance = Balance { readability, capacity: gram(500.0), least_load: readability * 2.0 };
        let of = |grams: f64| (shown(gram(grams), &balance) / readability).value;
        assert_eq!([1.9, 2.0, 2.9, 3.0].map(of), [0.0, 2.0, 2.0, 3.0]);
    }
}

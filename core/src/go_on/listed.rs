//! The rest of a day whose order list has changed: what is made counts for the lines that are for the same pieces by now.
//!
//! The list is the day's whole list, as a person keeps it. What the plan made is known by the plan's own lines; what was made
//! before, where the plan is for the rest of a day already, comes with the request (`so_far`). Both are pieces of a kind, mold
//! and layers as the book has them now, and of a shape. Lines that are due first get them.

use alloc::collections::BTreeMap;
use alloc::string::String;
use alloc::vec::Vec;

use super::Now;
use super::document::SoFarEntry;
use super::owed::{self, Owed, grams};
use super::pot::PotNow;
use crate::book::Book;
use crate::document::MadeFrom;
use crate::document::orders::{OrderLine, OrdersDocument, ShelfEntry};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::json::Named;
use crate::json::path::Path::At;
use crate::plan::Plan;
use crate::plan::day::{Day, Line, same_pieces};
use crate::quantity::{Amount, Mass};

/// Pieces of one kind: the same mold and layers, and the shape's place in the mold.
type Kind = (usize, usize);

/// The rest of the order list, and what was made and used of it.
pub(super) struct Listed {
    pub(super) owed: Owed,
    pub(super) stock: Option<Named<Amount>>,
    pub(super) shelf: Option<Vec<ShelfEntry>>,
    pub(super) so_far: SoFarEntry,
}

impl Listed {
    pub(super) fn read(
        book: &Book,
        (before, made_from): (&Plan, &MadeFrom),
        now: &Now<'_>,
        list: &OrdersDocument,
        pots: &[PotNow<'_>],
        resolver: &mut Resolver,
    ) -> Option<Self> {
        // The pots of the list are those of the plan, which are read as they are now.
        let list = &OrdersDocument { pots: None, letters: None, ..list.clone() };
        let day = match Day::resolve(list, book) {
            Ok(day) => day,
            Err(faults) => {
                resolver.faults.extend(faults.below("/orders_now").into_vec());
                return None;
            }
        };
        let none = SoFarEntry { made: None, used: None, from_shelf: None, ext: None };
        let so_far = now.so_far.unwrap_or(&none);
        let used = resolver.used(so_far.used.as_ref(), "used")?;
        let from_shelf = resolver.used(so_far.from_shelf.as_ref(), "from_shelf")?;
        let earlier = so_far.made.as_deref().unwrap_or_default();
        let kinds = Kinds::of(book, &day, &made_from.orders.lines, earlier);
        let mut made = kinds.made(book, before, now, pots);
        kinds.add(&mut made);
        let so_far = SoFarEntry {
            made: kinds.lines_of(&made, &list.lines, &made_from.orders.lines, earlier),
            used: total(&used, weighed(book, pots)),
            from_shelf: total(&from_shelf, shelved(pots)),
            ext: None,
        };
        let all_used = |name: &str| mass_of(so_far.used.as_ref(), name);
        let all_shelved = |name: &str| mass_of(so_far.from_shelf.as_ref(), name);
        Some(Self {
            stock: stock(list, &day, book, all_used),
            shelf: owed::shelf(list, all_shelved),
            owed: kinds.owed(list, &day, (now, book), made),
            so_far,
        })
    }
}

/// The kinds of the lines: of the list by now, of the plan, and of what was made before it; `None` of one that the book cannot
/// make any more.
struct Kinds {
    now: Vec<Option<Kind>>,
    plan: Vec<Option<Kind>>,
    /// With the pieces of each.
    earlier: Vec<Option<(Kind, u32)>>,
}

impl Kinds {
    fn of(book: &Book, day: &Day, plan: &[OrderLine], earlier: &[OrderLine]) -> Self {
        let others: Vec<Option<Line>> =
            plan.iter().chain(earlier).map(|line| resolved(line, book)).collect();
        let lines = day.lines.iter().chain(others.iter().flatten());
        let batches = same_pieces(book, lines.clone().cloned().collect());
        let mut known = batches.into_iter().zip(lines);
        let mut next =
            || known.next().and_then(|(batch, line)| Some(((batch?, line.shape), line.pieces)));
        let now = day.lines.iter().map(|_| next().map(kind_of)).collect();
        let mut others = others.iter().map(|line| line.as_ref().and_then(|_| next()));
        let plan = plan.iter().map(|_| others.next().flatten().map(kind_of)).collect();
        Self { now, plan, earlier: others.collect() }
    }

    /// Pieces that the plan made.
    fn made(
        &self,
        book: &Book,
        before: &Plan,
        now: &Now<'_>,
        pots: &[PotNow<'_>],
    ) -> BTreeMap<Kind, u32> {
        let mut all = BTreeMap::new();
        for (lines, pieces) in owed::made_of_plan(book, before, now.good, pots) {
            let kind = lines.iter().find_map(|place| self.plan.get(*place).copied().flatten());
            let Some((batch, _)) = kind else { continue };
            for (shape, (made, _)) in pieces.into_iter().enumerate() {
                let sum: &mut u32 = all.entry((batch, shape)).or_default();
                *sum = sum.saturating_add(made);
            }
        }
        all
    }

    /// Adds what was made before the plan.
    fn add(&self, made: &mut BTreeMap<Kind, u32>) {
        for (kind, pieces) in self.earlier.iter().flatten() {
            let sum = made.entry(*kind).or_default();
            *sum = sum.saturating_add(*pieces);
        }
    }

    /// The pieces made, as order lines. Those that the book can no longer make stay as they are.
    fn lines_of(
        &self,
        made: &BTreeMap<Kind, u32>,
        now: &[OrderLine],
        plan: &[OrderLine],
        earlier: &[OrderLine],
    ) -> Option<Vec<OrderLine>> {
        let each = || {
            let before = plan.iter().zip(self.plan.iter().copied());
            let earlier = earlier.iter().zip(self.earlier.iter().map(|it| it.map(kind_of)));
            now.iter().zip(self.now.iter().copied()).chain(before).chain(earlier)
        };
        let of = |kind: &Kind| each().find(|(_, own)| *own == Some(*kind));
        let known = made.iter().filter(|(_, pieces)| **pieces > 0).filter_map(|(kind, pieces)| {
            let (line, _) = of(kind)?;
            let counted =
                OrderLine { pieces: Some(*pieces), packs: None, pack_of: None, ..line.clone() };
            Some(OrderLine { promised: None, ..counted })
        });
        let unknown = earlier.iter().zip(&self.earlier).filter(|(_, kind)| kind.is_none());
        let lines: Vec<OrderLine> = known.chain(unknown.map(|(line, _)| line.clone())).collect();
        (!lines.is_empty()).then_some(lines)
    }

    /// The lines that are still owed.
    fn owed(
        &self,
        list: &OrdersDocument,
        day: &Day,
        (now, book): (&Now<'_>, &Book),
        mut made: BTreeMap<Kind, u32>,
    ) -> Owed {
        let mut by_day: Vec<(usize, &Line)> = day.lines.iter().enumerate().collect();
        by_day.sort_by_key(|(_, line)| (line.promised.is_none(), line.promised.clone()));
        let mut gets = alloc::vec![0_u32; day.lines.len()];
        for (place, line) in by_day {
            let kind = self.now.get(place).copied().flatten();
            let Some(left) = kind.and_then(|kind| made.get_mut(&kind)) else { continue };
            let own = (*left).min(line.pieces);
            *left = left.saturating_sub(own);
            gets.get_mut(place).into_iter().for_each(|gets| *gets = own);
        }
        let batch_of = |kind: Option<Kind>| kind.map(|(batch, _)| batch);
        let earlier = self.earlier.iter().map(|it| it.map(kind_of));
        let known: Vec<Option<usize>> =
            self.plan.iter().copied().chain(earlier).map(batch_of).collect();
        let mut owed = Owed::default();
        let mut batches = Vec::new();
        let each = list.lines.iter().zip(&day.lines).zip(self.now.iter().zip(gets));
        for ((written, line), (kind, made)) in each {
            let batch = batch_of(*kind);
            let mold = book.molds.get(line.product.mold).map_or("", |mold| mold.name.as_str());
            let of = owed::Of { what: what(written), mold, pieces: line.pieces, made };
            let place = owed.line(!known.contains(&batch), written, &of, now);
            batches.extend(batch.zip(place));
        }
        // By the lines of the plan, so that they rise.
        for (number, kind) in (1_u32..).zip(&self.plan) {
            let own = batches.iter().filter(|(batch, _)| Some(*batch) == batch_of(*kind));
            owed.places.extend(own.map(|(_, place)| (number, *place)));
        }
        owed
    }
}

fn kind_of((kind, _): (Kind, u32)) -> Kind {
    kind
}

/// The product of a line, or its formulas.
fn what(line: &OrderLine) -> String {
    let formulas = line.formulas.iter().flatten().map(|name| name.0.as_str());
    match &line.product {
        Some(product) => product.0.clone(),
        None => formulas.collect::<Vec<_>>().join(" + "),
    }
}

/// A line as the book reads it by now.
fn resolved(line: &OrderLine, book: &Book) -> Option<Line> {
    let mut resolver = Resolver::new(book.system);
    resolver.line(&At("/lines"), line, book).filter(|_| resolver.faults.is_empty())
}

impl Resolver {
    fn used(
        &mut self,
        masses: Option<&Named<Written<Mass>>>,
        field: &str,
    ) -> Option<Vec<(String, Mass)>> {
        let path = At("/so_far");
        let path = path.key(field);
        let mut read = Vec::new();
        for (name, mass) in masses.into_iter().flatten() {
            read.push((name.clone(), self.quantity(&path.key(name), mass)?));
        }
        Some(read)
    }
}

/// Materials that went into pots by their weigh lists.
fn weighed(book: &Book, pots: &[PotNow<'_>]) -> Vec<(String, Mass)> {
    let portions = pots.iter().flat_map(|pot| pot.weighed.portions());
    let named = portions.filter_map(|portion| {
        let material = book.materials.get(portion.material).ok()?;
        Some((material.name.clone(), portion.mass))
    });
    named.collect()
}

/// Leftovers that went into pots.
fn shelved(pots: &[PotNow<'_>]) -> Vec<(String, Mass)> {
    pots.iter().flat_map(|pot| &pot.from_shelf).cloned().collect()
}

/// The sums by name; `None` of nothing.
fn total(before: &[(String, Mass)], now: Vec<(String, Mass)>) -> Option<Named<Written<Mass>>> {
    let mut sums: BTreeMap<String, Mass> = BTreeMap::new();
    for (name, mass) in before.iter().cloned().chain(now) {
        let sum = sums.entry(name).or_default();
        *sum += mass;
    }
    let written = sums.into_iter().filter(|(_, mass)| *mass > Mass::default());
    let written: Named<Written<Mass>> =
        written.filter_map(|(name, mass)| Some((name, Written::of_amount(grams(mass)?)))).collect();
    (!written.is_empty()).then_some(written)
}

fn mass_of(used: Option<&Named<Written<Mass>>>, name: &str) -> Mass {
    let mass = used.and_then(|used| used.get(name)).and_then(|mass| {
        // A mass is in grams in every measuring system.
        mass.to(crate::quantity::System::Metric).ok()
    });
    mass.unwrap_or_default()
}

/// The rest of the stock.
fn stock(
    list: &OrdersDocument,
    day: &Day,
    book: &Book,
    used: impl Fn(&str) -> Mass,
) -> Option<Named<Amount>> {
    let written = list.stock.as_ref()?;
    let mut left = Named::default();
    for (name, amount) in written {
        let id = book.materials.find(name);
        let had = day.stock.iter().find(|stock| Some(stock.material) == id).map(|stock| stock.held);
        let used = used(name);
        let rest = match had.filter(|_| used > Mass::default()) {
            Some(had) => grams((had - used).max(Mass::default())).unwrap_or(*amount),
            None => *amount,
        };
        left.insert(name.clone(), rest);
    }
    Some(left)
}

#[cfg(test)]
mod tests;

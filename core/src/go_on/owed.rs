//! What is still owed, and what of shelf and stock is left.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::Now;
use super::document::{GoodEntry, LineNow, NotMade};
use super::pot::PotNow;
use crate::batch::{self, Rejects, Wanted};
use crate::book::{Book, Mold};
use crate::codes::code;
use crate::document::MadeFrom;
use crate::document::orders::{OrderLine, OrdersDocument, ShelfEntry};
use crate::document::written::Written;
use crate::json::Named;
use crate::plan::{Plan, PlannedLine};
use crate::quantity::{Amount, Mass, Measurable, Ratio, System, Unit, significant};
use crate::show::Note;
use crate::show::page::counted;

/// The lines of the rest of the day.
#[derive(Default)]
pub(super) struct Owed {
    /// Each with whether it is for pieces that the plan before had no line for.
    pub(super) lines: Vec<(bool, OrderLine)>,
    pub(super) not_made: Vec<NotMade>,
    /// Each line of the list, those of which nothing is owed included.
    pub(super) all: Vec<LineNow>,
    /// A line before, and the place of a line that is owed for the same pieces; rising.
    pub(super) places: Vec<(u32, usize)>,
    /// Lines of which pieces were counted: line, good, still owed.
    counted: Vec<(usize, u32, u32)>,
}

/// Pieces that are made, by shape, and whether they were counted.
pub(super) type Made = Vec<(u32, bool)>;

/// An order line, and its pieces that are made.
pub(super) struct Of<'a> {
    pub(super) what: String,
    pub(super) mold: &'a str,
    /// Ordered pieces, and those of them that are made.
    pub(super) pieces: u32,
    pub(super) made: u32,
}

impl Owed {
    pub(super) fn read(
        book: &Book,
        before: &Plan,
        made_from: &MadeFrom,
        now: &Now<'_>,
        pots: &[PotNow<'_>],
    ) -> Self {
        let mut owed = Self::default();
        let mut left: Vec<u32> = before.lines.iter().map(|line| line.pieces).collect();
        for (lines, made) in made_of_plan(book, before, now.good, pots) {
            owed.pool(book, before, lines, made, &mut left);
        }
        let each = before.lines.iter().zip(&left);
        for ((line, &left), written) in each.zip(&made_from.orders.lines) {
            let made = line.pieces.saturating_sub(left);
            let of = Of { what: line.what.clone(), mold: &line.mold, pieces: line.pieces, made };
            let place = owed.line(false, written, &of, now);
            owed.places.extend(line.pooled_with.zip(place));
        }
        owed.places.sort_unstable();
        owed.more(now.more);
        owed
    }

    /// Adds further lines.
    pub(super) fn more(&mut self, lines: &[OrderLine]) {
        self.lines.extend(lines.iter().map(|line| (true, line.clone())));
    }

    /// Adds a line of the list: what is owed of it, and the place of that.
    pub(super) fn line(
        &mut self,
        is_new: bool,
        written: &OrderLine,
        of: &Of<'_>,
        now: &Now<'_>,
    ) -> Option<usize> {
        let &Of { pieces, made, .. } = of;
        let left = pieces.saturating_sub(made);
        let is_broken = now.broken_molds.iter().any(|broken| broken.0 == of.mold);
        let place = (left > 0 && !is_broken).then_some(self.lines.len());
        let line = place.and_then(|place| u32::try_from(place.saturating_add(1)).ok());
        self.all.push(LineNow { made, owed: left, line });
        if place.is_some() {
            self.lines.push((is_new, rest_of(written, pieces, left)));
        } else if left > 0 {
            self.not_made.push(NotMade {
                order: written.order.0.clone(),
                what: of.what.clone(),
                pieces: left,
                because: format!("Mold \"{}\" is broken.", of.mold),
            });
        }
        place
    }

    /// Takes what is made of one kind of pieces off its lines: those that are due first get it.
    fn pool(
        &mut self,
        book: &Book,
        before: &Plan,
        lines: Vec<usize>,
        made: Made,
        left: &mut [u32],
    ) {
        let lines = lines.into_iter().filter_map(|at| Some((at, before.lines.get(at)?)));
        let lines: Vec<(usize, &PlannedLine)> = lines.collect();
        let Some(mold) = lines.first().map(|(_, line)| line.mold.as_str()) else { return };
        let Some(mold) = book.molds.iter().find(|known| known.name == mold) else { return };
        for (cavities, (mut made, was_counted)) in mold.cavities.iter().zip(made) {
            for &(place, line) in lines.iter().filter(|(_, line)| line.shape == cavities.shape) {
                let Some(left) = left.get_mut(place) else { continue };
                let gets = made.min(line.pieces);
                made = made.saturating_sub(gets);
                *left = line.pieces.saturating_sub(gets);
                if was_counted {
                    self.counted.push((place, gets, *left));
                }
            }
        }
    }

    /// The place, counted from 1, of a line for the same pieces as line `first` before; `None` if nothing of them is owed.
    pub(super) fn place_of(&self, first: u32) -> Option<u32> {
        let at = self.places.partition_point(|&(kind, _)| kind < first);
        let &(_, place) = self.places.get(at).filter(|&&(kind, _)| kind == first)?;
        u32::try_from(place.saturating_add(1)).ok()
    }

    /// Sentences on lines of which pieces were counted.
    pub(super) fn notes(&self, before: &Plan) -> Vec<Note> {
        let each = self.counted.iter().filter_map(|&(place, good, left)| {
            let line = before.lines.get(place)?;
            let rest = match left {
                0 => "all of it is made".to_string(),
                left => format!("{left} more to make"),
            };
            Some(Note {
                code: code!("pieces-counted").to_string(),
                message: format!(
                    "Order {}, {}: {} good of {}, {rest}.",
                    line.order,
                    line.what,
                    counted(good, "piece"),
                    line.pieces
                ),
            })
        });
        each.collect()
    }
}

/// The lines of the plan for the same pieces, those that are due first in front, each with its pieces that are made, by shape,
/// and whether they were counted.
pub(super) fn made_of_plan(
    book: &Book,
    before: &Plan,
    good: &[GoodEntry],
    pots: &[PotNow<'_>],
) -> Vec<(Vec<usize>, Made)> {
    let by_kind = before.lines.iter().zip(0..);
    let mut by_kind: Vec<(u32, usize)> =
        by_kind.filter_map(|(line, at)| Some((line.pooled_with?, at))).collect();
    by_kind.sort_unstable();
    let still = shots_left(before.lines.len(), pots);
    let mut all = Vec::new();
    for kind in by_kind.chunk_by(|a, b| a.0 == b.0) {
        let lines = kind.iter().filter_map(|&(_, at)| Some((at, before.lines.get(at)?)));
        let mut lines: Vec<(usize, &PlannedLine)> = lines.collect();
        lines.sort_by(|(_, a), (_, b)| {
            (a.promised.is_none(), &a.promised).cmp(&(b.promised.is_none(), &b.promised))
        });
        let first = kind.first().and_then(|&(first, _)| (first as usize).checked_sub(1));
        let still = first.and_then(|first| still.get(first)).map_or(&[][..], Vec::as_slice);
        let mold = lines.first().map(|(_, line)| line.mold.as_str());
        let mold = mold.and_then(|mold| book.molds.iter().find(|known| known.name == mold));
        let pieces = mold.map(|mold| made(mold, book, still, &lines, good)).unwrap_or_default();
        all.push((lines.into_iter().map(|(at, _)| at).collect(), pieces));
    }
    all
}

/// Pieces that are made, by shape, and whether they were counted. Where they were not, the shots that are left are taken to
/// be enough for the rest, with the spares that rejects call for.
fn made(
    mold: &Mold,
    book: &Book,
    still: &[u32],
    lines: &[(usize, &PlannedLine)],
    good: &[GoodEntry],
) -> Made {
    let left = still.iter().copied().fold(0, u32::max);
    let of_shape = |shape: &Option<String>| {
        let shape = shape.clone();
        lines.iter().filter(move |(_, line)| line.shape == shape)
    };
    let ordered: Vec<u32> = mold
        .cavities
        .iter()
        .map(|cavities| {
            let own = of_shape(&cavities.shape);
            own.fold(0_u32, |sum, (_, line)| sum.saturating_add(line.pieces))
        })
        .collect();
    let rest = rest(mold, book, &ordered, left);
    let each = mold.cavities.iter().zip(ordered).zip(rest);
    each.map(|((cavities, ordered), rest)| {
        let own = |good: &&GoodEntry| {
            of_shape(&cavities.shape)
                .any(|(place, _)| place.saturating_add(1) == good.line as usize)
        };
        let mut counted = good.iter().filter(own).peekable();
        match counted.peek() {
            Some(_) => (counted.fold(0, |sum: u32, one| sum.saturating_add(one.pieces.0)), true),
            None => (ordered.saturating_sub(rest), false),
        }
    })
    .collect()
}

/// Shots that are still to come, by line and layer; a laminated piece takes those of the layer that has most left.
fn shots_left(lines: usize, pots: &[PotNow<'_>]) -> Vec<Vec<u32>> {
    let mut left: Vec<Vec<u32>> = Vec::new();
    left.resize(lines, Vec::new());
    for pot in pots {
        let stages = pot.planned.map_or(&[][..], |pot| &pot.stages);
        let draws =
            stages.iter().zip(&pot.shot).flat_map(|(stage, shot)| stage.draws.iter().zip(shot));
        for (draw, shot) in draws {
            let (Some(line), Some(layer)) = (draw.line, draw.layer) else { continue };
            let line = (line as usize).checked_sub(1).and_then(|line| left.get_mut(line));
            let Some(layers) = line else { continue };
            let layer = (layer as usize).saturating_sub(1);
            if layers.len() <= layer {
                layers.resize(layer.saturating_add(1), 0);
            }
            let sum = layers.get_mut(layer);
            let shots = draw.shots.saturating_sub(*shot);
            sum.into_iter().for_each(|sum| *sum = sum.saturating_add(shots));
        }
    }
    left
}

/// The most pieces of each shape, no more than were `ordered`, that so many shots can promise.
fn rest(mold: &Mold, book: &Book, ordered: &[u32], shots: u32) -> Vec<u32> {
    let cast = mold.cavities.iter().map(|cavities| shots.saturating_mul(cavities.count));
    let mut rest: Vec<u32> =
        ordered.iter().zip(cast).map(|(ordered, cast)| cast.min(*ordered)).collect();
    let rate = mold.rejects.unwrap_or(book.limits.rejects);
    let rejects =
        Rejects { rate: Ratio::from(rate), confidence: Ratio::from(book.limits.confidence) };
    loop {
        let each = mold.cavities.iter().zip(&rest).filter(|(_, pieces)| **pieces > 0);
        let wanted: Vec<Wanted> =
            each.map(|(cavities, &pieces)| Wanted { pieces, cavities: cavities.count }).collect();
        if wanted.is_empty()
            || batch::shots(&wanted, Some(rejects)).is_ok_and(|needed| needed <= shots)
        {
            return rest;
        }
        // One shot's rejects at a time: a large order has thousands.
        for (pieces, cavities) in rest.iter_mut().zip(&mold.cavities) {
            let step = if *pieces > 1000 { cavities.count } else { 1 };
            *pieces = pieces.saturating_sub(step);
        }
    }
}

/// The rest of a line: as it was written where nothing of it is made.
fn rest_of(written: &OrderLine, pieces: u32, left: u32) -> OrderLine {
    if left == pieces {
        return written.clone();
    }
    OrderLine { pieces: Some(left), packs: None, pack_of: None, ..written.clone() }
}

/// The rest of the shelf, of which so much was `used` by name.
pub(super) fn shelf(
    orders: &OrdersDocument,
    used: impl Fn(&str) -> Mass,
) -> Option<Vec<ShelfEntry>> {
    let mut left = Vec::new();
    for entry in orders.shelf.iter().flatten() {
        let used = used(&entry.name.0);
        if used <= Mass::default() {
            left.push(entry.clone());
            continue;
        }
        // A mass is in grams in every measuring system.
        let had: Option<Mass> = entry.mass.to(System::Metric).ok();
        if let Some(mass) = had.filter(|had| *had > used).and_then(|had| grams(had - used)) {
            left.push(ShelfEntry { mass: Written::of_amount(mass), ..entry.clone() });
        }
    }
    (!left.is_empty()).then_some(left)
}

/// The mass of a leftover that went into pots.
pub(super) fn from_shelf(name: &str, pots: &[PotNow<'_>]) -> Mass {
    let used = pots.iter().flat_map(|pot| &pot.from_shelf).filter(|(known, _)| known == name);
    used.fold(Mass::default(), |sum, (_, mass)| sum + *mass)
}

/// The rest of the stock.
pub(super) fn stock(
    orders: &OrdersDocument,
    before: &Plan,
    book: &Book,
    pots: &[PotNow<'_>],
) -> Option<Named<Amount>> {
    let written = orders.stock.as_ref()?;
    let mut left = Named::default();
    for (name, amount) in written {
        let used = book.materials.find(name).map_or(Mass::default(), |id| {
            pots.iter().fold(Mass::default(), |sum, pot| sum + pot.weighed.mass_of(id))
        });
        let had = before.stock.iter().find(|one| one.material == *name).map(|one| one.had.quantity);
        let rest = match had.filter(|_| used > Mass::default()) {
            Some(had) => grams((had - used).max(Mass::default())).unwrap_or(*amount),
            None => *amount,
        };
        left.insert(name.clone(), rest);
    }
    Some(left)
}

/// Digits of what the order list of the rest of the day says: far below any scale, and without the last digits of a
/// calculation. Each mass is written within 5e-15 of itself.
const DIGITS: u8 = 15;

/// A quantity as a document writes it.
pub(super) fn written<Q: Measurable>(quantity: Q, unit: Unit) -> Option<Amount> {
    // These units are the same in every measuring system.
    significant(quantity, unit, DIGITS, System::Metric).ok()
}

/// A mass as a document writes it.
pub(super) fn grams(mass: Mass) -> Option<Amount> {
    written(mass, Unit::GRAM)
}

#[cfg(test)]
mod tests;

//! A day that goes on from what is there: a new plan at noon.
//!
//! The plan of the morning and the steps that are done say what is in each pot; a person says what differs. Of that come the
//! orders for the rest of the day: the lines that are still owed, new ones, the pots that are there with the shots that they
//! were begun for. They are an order list like any other, so that the new plan is complete and can be made again from it.
//!
//! With nothing changed every pot keeps its shots, and the new plan is the rest of the old one. If something changed, pots
//! that are begun keep theirs, may take more of what is owed, and all else is planned again.

mod document;
mod listed;
mod owed;
mod pot;

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::sync::Arc;
use alloc::vec::Vec;

pub use self::document::{GoneOn, GoodEntry, LineNow, NotMade, PotNowEntry, SoFarEntry};
use self::listed::Listed;
use self::owed::Owed;
use self::pot::PotNow;
use crate::book::Book;
use crate::codes::code;
use crate::document::book::BookDocument;
use crate::document::orders::{
    DrawThereEntry, OrderLine, OrdersDocument, PotThereEntry, ShelfEntry,
};
use crate::document::resolve::{Resolver, capacities};
use crate::document::written::Written;
use crate::document::{LoadedBook, MadeFrom, PlanDocument};
use crate::fault::{Fault, Faults};
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::json::reader::{Count, Name};
use crate::plan::day::Day;
use crate::plan::{Plan, StepItem, older};
use crate::quantity::{Amount, Measurable, Volume};
use crate::show::Note;
use crate::show::page::counted;

/// Differences from the plan at the time when the day goes on.
#[derive(Debug, Clone, Default)]
pub(crate) struct Now<'a> {
    /// Pots by letter: those of the plan that are begun, and others that are there.
    pub(crate) pots: Option<&'a Named<PotNowEntry>>,
    /// Ids of steps, or of items of steps, that are done.
    pub(crate) ticks: &'a [String],
    /// Pieces that are fit to sell, where they were counted.
    pub(crate) good: &'a [GoodEntry],
    /// Further order lines.
    pub(crate) more: &'a [OrderLine],
    /// The order list as it is by now, if it has changed.
    pub(crate) list: Option<&'a OrdersDocument>,
    /// Its pieces made, and its stock and shelf used, before the plan.
    pub(crate) so_far: Option<&'a SoFarEntry>,
    /// Molds that are not to be had any more.
    pub(crate) broken_molds: &'a [Name],
    /// Capacities of cups that are not to be had any more.
    pub(crate) broken_cups: &'a [Written<Volume>],
}

/// Goes on with the day of `before`.
pub(crate) fn go_on(
    book: &LoadedBook,
    before: &PlanDocument,
    now: &Now<'_>,
) -> Result<GoneOn, Faults> {
    let Some(made_from) = &before.made_from else {
        return Err(Faults::from(Fault {
            code: code!("plan-without-book").into(),
            path: "/plan/made_from".into(),
            message: "The plan was stored without the orders that it was made from.".into(),
            help: "Store plans whole, with \"made_from\"; or plan the orders again.".into(),
        }));
    };
    let plan = complete(&before.plan, made_from, book.ready())?;
    let mut resolver = Resolver::new(book.ready().system);
    let noon = Noon::read(book.ready(), &plan, made_from, now, &mut resolver);
    let noon = resolver.finish(noon)?;
    let book = noon.book_now(book)?;
    let orders = noon.orders();
    let plan = match orders.lines.is_empty() {
        true => None,
        false => Some(book.plan(orders)?),
    };
    Ok(noon.gone_on(plan))
}

/// The plan, with what lines and shots belong to also if an older version stored it, which left that out.
fn complete<'a>(
    plan: &'a Plan,
    made_from: &MadeFrom,
    book: &Book,
) -> Result<Cow<'a, Plan>, Faults> {
    if older::is_complete(plan) {
        return Ok(Cow::Borrowed(plan));
    }
    let day = Day::resolve(&made_from.orders, book);
    let day = day.map_err(|faults| faults.below("/plan/made_from/orders"))?;
    let mut plan = plan.clone();
    older::complete(&mut plan, book, &day);
    if !older::is_complete(&plan) {
        return Err(Faults::from(Fault {
            code: code!("missing-field").into(),
            path: "/plan/pots".into(),
            message: "An older version stored this plan without the order lines that its shots are for, and its orders do not show them.".into(),
            help: "Go on with the book and the plan as they were stored; or plan what is still owed again.".into(),
        }));
    }
    Ok(Cow::Owned(plan))
}

/// The day as it is.
struct Noon<'a> {
    book: &'a Book,
    before: &'a Plan,
    made_from: &'a MadeFrom,
    now: &'a Now<'a>,
    pots: Vec<PotNow<'a>>,
    owed: Owed,
    /// Stock and shelf as they are by now.
    stock: Option<Named<Amount>>,
    shelf: Option<Vec<ShelfEntry>>,
    so_far: Option<SoFarEntry>,
    /// Whether anything differs from the plan.
    changed: bool,
}

impl<'a> Noon<'a> {
    fn read(
        book: &'a Book,
        before: &'a Plan,
        made_from: &'a MadeFrom,
        now: &'a Now<'a>,
        resolver: &mut Resolver,
    ) -> Option<Self> {
        known_ticks(before, now.ticks, resolver);
        for (place, mold) in now.broken_molds.iter().enumerate() {
            let found = book.molds.iter().find(|known| known.name == mold.0);
            let mut names = book.molds.iter().map(|known| known.name.as_str());
            resolver.find("mold", &At("/broken_molds").index(place), &mold.0, found, &mut names);
        }
        for (place, good) in now.good.iter().enumerate() {
            if good.line == 0 || good.line as usize > before.lines.len() {
                resolver.fault(
                    code!("no-such-line"),
                    &At("/good_pieces").index(place).key("line"),
                    &format_args!("The order list has no line {}.", good.line),
                    &format_args!("Lines are counted from 1; there are {}.", before.lines.len()),
                );
            }
        }
        let pots = pot::read(book, before, now, resolver)?;
        let said = now.pots.into_iter().flatten().any(|(_, pot)| pot.differs());
        let broken = !now.broken_molds.is_empty() || !now.broken_cups.is_empty();
        let further = pots.iter().any(|pot| pot.planned.is_none());
        let counted = !now.good.is_empty();
        let listed = now.list.is_some();
        let changed = said || broken || further || counted || listed || !now.more.is_empty();
        let (owed, stock, shelf, so_far) = match now.list {
            Some(list) => {
                let of = (before, made_from);
                let Listed { mut owed, stock, shelf, so_far } =
                    Listed::read(book, of, now, list, &pots, resolver)?;
                owed.more(now.more);
                (owed, stock, shelf, Some(so_far))
            }
            None => (
                Owed::read(book, before, made_from, now, &pots),
                owed::stock(&made_from.orders, before, book, &pots),
                owed::shelf(&made_from.orders, |name| owed::from_shelf(name, &pots)),
                None,
            ),
        };
        Some(Self { book, before, made_from, now, pots, owed, stock, shelf, so_far, changed })
    }

    /// The book without what is broken.
    fn book_now(&self, book: &LoadedBook) -> Result<LoadedBook, Faults> {
        if self.now.broken_cups.is_empty() {
            return Ok(book.clone());
        }
        let system = book.ready().system;
        let is_same = |one: &Written<Volume>, other: &Written<Volume>| {
            let both = one.to(system).ok().zip(other.to(system).ok());
            both.is_some_and(|(one, other)| (one - other).si().abs() <= 1e-6 * other.si())
        };
        let mut written = BookDocument::clone(book.written());
        let mut faults = Vec::new();
        for (place, broken) in self.now.broken_cups.iter().enumerate() {
            let cups = &mut written.bench.cups;
            let had = cups.len();
            cups.retain(|cup| !is_same(&cup.holds, broken));
            if cups.len() == had {
                faults.push(Fault {
                    code: code!("cup-not-of-bench").into(),
                    path: At("/broken_cups").index(place).to_string(),
                    message: format!("The bench has no cup that holds {broken}."),
                    help: format!(
                        "Its cups hold {}. Write one of these.",
                        capacities(book.ready())
                    ),
                });
            }
        }
        if written.bench.cups.is_empty() {
            faults.push(Fault {
                code: code!("no-cup").into(),
                path: "/broken_cups".into(),
                message: "No cup is left to make a pot in.".into(),
                help: "Leave out a cup that can still be used.".into(),
            });
        }
        match Faults::from_vec(faults) {
            Some(faults) => Err(faults),
            None => LoadedBook::try_from(Arc::new(written)),
        }
    }

    /// The order list of the rest of the day.
    fn orders(&self) -> OrdersDocument {
        let list = self.now.list.unwrap_or(&self.made_from.orders);
        let letters = self.before.pots.iter();
        let letters = letters.map(|pot| (pot.id.clone(), Name(pot.pot.clone()))).collect();
        let pots = self.pots.iter().filter_map(|pot| self.there(pot)).collect::<Vec<_>>();
        OrdersDocument {
            lines: self.owed.lines.iter().map(|(_, line)| line.clone()).collect(),
            shelf: self.shelf.clone(),
            stock: self.stock.clone(),
            pots: (!pots.is_empty()).then_some(pots),
            letters: Some(letters),
            ..list.clone()
        }
    }

    /// A pot as the order list has it; `None` of one that is planned again. Of one that is of no more use just letter and
    /// id, so that no other pot gets these.
    fn there(&self, pot: &PotNow<'a>) -> Option<PotThereEntry> {
        let draws = pot.left_draws().into_iter().filter_map(|draw| {
            let line = self.owed.place_of(draw.line)?;
            Some(DrawThereEntry { line, layer: Some(draw.layer), shots: draw.shots, ext: None })
        });
        let draws: Vec<DrawThereEntry> = draws.collect();
        let begun = pot.is_begun();
        if !begun && !pot.lost && (self.changed || draws.is_empty()) {
            return None;
        }
        let ended = PotThereEntry {
            pot: Name(pot.letter.clone()),
            id: pot.planned.map(|planned| Name(planned.id.clone())),
            parts: None,
            cup: None,
            hot: None,
            degassed: None,
            heats: None,
            spent: None,
            draws: None,
            accepted: None,
            takes_more: None,
            ext: None,
        };
        // A pot that has no more shots is of use if it is said to be there.
        if pot.lost || (draws.is_empty() && !(self.changed && pot.is_said)) {
            return Some(ended);
        }
        Some(PotThereEntry {
            parts: begun.then(|| pot.parts(self.book)),
            cup: pot.cup.clone(),
            hot: Some(pot.hot),
            degassed: Some(pot.degassed),
            heats: Some(Count(pot.heats)),
            spent: pot.spent(),
            draws: (!draws.is_empty()).then_some(draws),
            accepted: pot.accepted.then_some(true),
            takes_more: Some(self.changed),
            ..ended
        })
    }

    /// The answer, with the new plan.
    fn gone_on(&self, plan: Option<PlanDocument>) -> GoneOn {
        let mut changes = Vec::new();
        for pot in &self.pots {
            changes.extend(pot.note(plan.as_ref().map(|plan| &plan.plan)));
        }
        changes.extend(self.owed.notes(self.before));
        if let Some(plan) = &plan {
            changes.extend(self.compared(&plan.plan));
        }
        let kept = plan.as_ref().map(|plan| kept_steps(self.before, &plan.plan));
        GoneOn {
            changes,
            not_made: self.owed.not_made.clone(),
            lines: self.owed.all.clone(),
            so_far: self.so_far.clone(),
            kept: kept.unwrap_or_default(),
            plan,
        }
    }

    /// New lines and pots of the new plan, against the one before.
    fn compared(&self, plan: &Plan) -> Vec<Note> {
        let mut notes = Vec::new();
        for (line, (is_new, _)) in plan.lines.iter().zip(&self.owed.lines) {
            if *is_new {
                let pieces = counted(line.pieces, "piece");
                let message = format!(
                    "Order {}: {pieces} of {} from {}.",
                    line.order,
                    line.what,
                    from_pots(plan, &line.pots)
                );
                notes.push(Note { code: code!("line-added").to_string(), message });
            }
        }
        let known = |id: &str| self.before.pots.iter().any(|pot| pot.id == id);
        for pot in plan.pots.iter().filter(|pot| pot.there.is_none() && !known(&pot.id)) {
            let message = format!("Pot {} is new: {}.", pot.pot, pot.id);
            notes.push(Note { code: code!("pot-added").to_string(), message });
        }
        for pot in &self.before.pots {
            let there = plan.pots.iter().any(|new| new.pot == pot.pot);
            let begun =
                self.pots.iter().any(|now| now.letter == pot.pot && (now.is_begun() || now.lost));
            if !there && !begun {
                let message = format!("Pot {} is not needed any more.", pot.pot);
                notes.push(Note { code: code!("pot-dropped").to_string(), message });
            }
        }
        notes
    }
}

/// The pots that something comes from: `pot B (hot) and pot F`.
fn from_pots(plan: &Plan, letters: &[String]) -> String {
    let named = |letter: &String| {
        let pot = plan.pots.iter().find(|pot| pot.pot == *letter);
        match pot.and_then(|pot| pot.there.as_ref()) {
            Some(there) if there.hot => format!("pot {letter} (hot)"),
            Some(_) => format!("pot {letter} (begun)"),
            None => format!("pot {letter}"),
        }
    };
    letters.iter().map(named).collect::<Vec<_>>().join(" and ")
}

/// Refuses ticks that no step has.
fn known_ticks(plan: &Plan, ticks: &[String], resolver: &mut Resolver) {
    let known: alloc::collections::BTreeSet<&str> = plan
        .steps
        .iter()
        .flat_map(|step| {
            let items = step.items.iter().map(|item| item.id.as_str());
            items.chain(core::iter::once(step.id.as_str()))
        })
        .collect();
    for (place, tick) in ticks.iter().enumerate() {
        if !known.contains(tick.as_str()) {
            resolver.fault(
                code!("no-such-step"),
                &Path::At("/ticks").index(place),
                &format_args!("The plan has no step \"{tick}\"."),
                &"Write ids of steps or of their items, as the plan has them.",
            );
        }
    }
}

/// The ids of items that are the same in both plans, so that a tick at them holds.
fn kept_steps(before: &Plan, plan: &Plan) -> Vec<String> {
    let items = |plan: &'_ Plan| -> alloc::collections::BTreeMap<String, String> {
        let items = plan.steps.iter().flat_map(|step| &step.items);
        items.map(|StepItem { id, amount, .. }| (id.clone(), amount.clone())).collect()
    };
    let old = items(before);
    let new = items(plan);
    new.into_iter().filter(|(id, amount)| old.get(id) == Some(amount)).map(|(id, _)| id).collect()
}

#[cfg(test)]
mod tests;

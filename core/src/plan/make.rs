//! From a book and a day's orders to the plan.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::assign::{Assigned, At, Layer, assign};
use super::borrowed::borrowed;
use super::budget::Budget;
use super::cost::cost;
use super::day::{Batch, Day, KnownRecipes, Pooled, pool};
use super::describe;
use super::layout::{Layout, PotCup, PotLayout, TakenApart, note_companions, work};
use super::pot::{PotError, Shots, Workshop, shots};
use super::precedence::FreshBase;
use super::split::{Proof, SplitError};
use super::stock::stock;
use super::there::{self, Taken};
use super::tool_names::ToolNames;
use super::{Borrowed, DayCost, Plan, Quote, StockEntry};
use crate::book::Book;
use crate::fault::{Fault, Faults};
use crate::show::Calculated;

impl Plan {
    /// Plans `day` in the shop of `book`.
    ///
    /// # Errors
    /// All faults together, each at the order line that shows it first: a recipe or a shot that cannot be made, a mold
    /// larger than the injector, a pot that no cup holds or in which the bench cannot dose, and, if the book limits heats,
    /// a shot that takes longer than a pot stays hot.
    pub fn make(book: &Book, day: &Day) -> Result<Self, Faults> {
        Self::make_within(book, day, &Budget::default())
    }

    /// Plans `day` in the shop of `book` within `budget`.
    ///
    /// # Errors
    /// As [`Plan::make`]; more pots or work than the budget allows, or that its caller stopped it.
    pub fn make_within(book: &Book, day: &Day, budget: &Budget<'_>) -> Result<Self, Faults> {
        Self::make_knowing(book, KnownRecipes::NONE, day, budget)
    }

    /// The same, with the recipes that are known of `book`.
    pub(crate) fn make_knowing(
        book: &Book,
        known: &KnownRecipes,
        day: &Day,
        budget: &Budget<'_>,
    ) -> Result<Self, Faults> {
        laid_out(book, known, day, budget, |workshop, layout, sums| {
            workshop.describe(day, layout, sums)
        })
    }
}

impl Quote {
    /// Makes the quote for `day` in the shop of `book`.
    ///
    /// # Errors
    /// Those of [`Plan::make`].
    pub fn make(book: &Book, day: &Day) -> Result<Self, Faults> {
        Self::make_within(book, day, &Budget::default())
    }

    /// Makes the quote for `day` in the shop of `book`, with its plan within `budget`.
    ///
    /// # Errors
    /// Those of [`Plan::make_within`].
    pub fn make_within(book: &Book, day: &Day, budget: &Budget<'_>) -> Result<Self, Faults> {
        Self::make_knowing(book, KnownRecipes::NONE, day, budget)
    }

    /// The same, with the recipes that are known of `book`.
    pub(crate) fn make_knowing(
        book: &Book,
        known: &KnownRecipes,
        day: &Day,
        budget: &Budget<'_>,
    ) -> Result<Self, Faults> {
        laid_out(book, known, day, budget, |workshop, layout, sums| workshop.quote(layout, sums))
    }
}

/// Stock and cost of a layout, and the numbers that it assumes.
pub(super) struct Sums {
    pub(super) stock: Vec<StockEntry>,
    pub(super) cost: Option<Calculated<DayCost>>,
    pub(super) borrowed: Vec<Borrowed>,
}

/// Lays `day` out and shows it by `show`.
fn laid_out<R>(
    book: &Book,
    known: &KnownRecipes,
    day: &Day,
    budget: &Budget<'_>,
    show: impl FnOnce(&Workshop<'_>, &Layout<'_>, Sums) -> R,
) -> Result<R, Faults> {
    let mut faults = Vec::new();
    let Pooled { recipes, batches } = pool(book, known, day, &mut faults);
    let keep = |batch| {
        let shots = shots(batch, book);
        shots.map_err(|error| faults.push(Fault::at(line_path(batch), &error))).ok()
    };
    let mut shots: Vec<Shots<'_>> = batches.iter().filter_map(keep).collect();
    for of in &mut shots {
        of.shots = of.shots.max(there::kept_shots(&day.pots, of.batch));
    }
    if let Some(faults) = Faults::from_vec(faults) {
        return Err(faults);
    }
    let workshop = Workshop {
        book,
        names: ToolNames::of(book),
        cups: PotCup::all(book),
        recipes: &recipes,
        shots: &shots,
        budget,
    };
    let lay_out = |one_stage| workshop.lay_out(&workshop.take(&day.pots, one_stage));
    let layout = match lay_out(false) {
        Err((_, PotError::OutOfOrder { .. })) => lay_out(true),
        layout => layout,
    };
    let mut layout = layout.map_err(|(batch, error)| {
        Faults::from(Fault::at(batch.map_or_else(String::new, line_path), &error))
    })?;
    layout.use_shelf(&workshop, &day.shelf)?;
    layout.names = describe::names(&layout.pots, day);
    let stock = stock(&layout, book, &day.stock);
    let stock = stock.map_err(|error| Faults::from(Fault::at("/stock", &error)))?;
    let cost = cost(&layout, day, book);
    let borrowed = borrowed(&recipes, book)?;
    Ok(show(&workshop, &layout, Sums { stock, cost, borrowed }))
}

/// Sort key: fewest pots and heats first, failures last.
fn size(layout: &Result<Layout<'_>, At<'_>>) -> Result<(usize, u64), ()> {
    let layout = layout.as_ref().map_err(|_| ())?;
    let heats = layout.pots.iter().map(PotLayout::heats).map(u64::from);
    Ok((layout.pots.len(), heats.sum()))
}

/// The path of the first line of a batch.
fn line_path(batch: &Batch<'_>) -> String {
    batch.lines.first().map_or_else(String::new, |line| format!("/lines/{}", line.number))
}

impl<'a> Workshop<'a> {
    /// Assigns the day's stages to pots and builds those. With fresh base, pots that do without it are allowed
    /// too, and taken if they are fewer; the proof with fresh base is true for them as well.
    ///
    /// The assignment does not know what the bench can dose: if a later addition is too small to measure, the pot's
    /// stages get pots of their own.
    fn lay_out(&self, taken: &Taken<'a>) -> Result<Layout<'a>, At<'a>> {
        let assign = |fresh_base| assign(self, taken, fresh_base);
        let build_all = |assigned| self.build_all(assigned, &taken.rest);
        if !self.book.limits.fresh_base {
            return build_all(assign(FreshBase::Off)?);
        }
        let fresh = assign(FreshBase::On)?;
        let proof = fresh.proof.clone();
        let least = proof.lower.saturating_add(taken.pots.len());
        let fresh = build_all(fresh);
        if fresh.as_ref().is_ok_and(|layout| layout.pots.len() <= least) {
            return fresh;
        }
        let mut without = assign(FreshBase::Off)?;
        without.proof = Proof { found: without.proof.found, ..proof };
        let without = build_all(without);
        if size(&without) < size(&fresh) { without } else { fresh }
    }

    fn build_all(
        &self,
        mut assigned: Assigned<'a>,
        layers: &[Layer<'a>],
    ) -> Result<Layout<'a>, At<'a>> {
        let mut apart = Vec::new();
        let mut built = Vec::new();
        while let Some(draft) = assigned.pots.get(built.len()) {
            let weighed = draft.stages.iter().fold(0_usize, |sum, stage| {
                sum.saturating_add(stage.recipe.recipe.ingredients().count())
            });
            self.budget.charge(weighed).map_err(|error| (None, SplitError::from(error).into()))?;
            match self.build(draft) {
                Ok(pot) => built.push(Some(pot)),
                Err(error)
                    if error.is_about_measuring()
                        && draft.stages.len() > 1
                        && draft.there.is_none() =>
                {
                    let recipes = draft.stages.iter().map(|stage| stage.recipe).collect();
                    apart.push(TakenApart { recipes, error });
                    assigned.take_apart(built.len());
                }
                Err(error) => return Err((draft.batch(), error)),
            }
        }
        let order = assigned.order_of_work();
        let in_order = order.iter().filter_map(|pot| built.get_mut(*pot)?.take());
        let mut pots = in_order.collect::<Vec<_>>();
        let assigned = assigned.renumbered(&order);
        note_companions(&assigned, &mut pots);
        Ok(Layout {
            work: work(&assigned),
            pots,
            proof: assigned.proof,
            layers: layers.to_vec(),
            apart,
            shelf: Vec::new(),
            names: Vec::new(),
        })
    }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::ToString;
    use alloc::vec::Vec;

    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;
    use crate::plan::budget::Budget;

    // Seven shots of body leave a shot for the color, of which the bench cannot count the drops.
    #[test]
    fn stages_get_pots_of_their_own_where_the_bench_cannot_dose_between_them() {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        book["formulas"]["faint"] =
            serde_json::json!({ "per": "1 cup", "doses": { "blue": "3 drops" } });
        let book = book_from_text(&book.to_string()).unwrap();
        let lines = r#"
            { "order": "1", "mold": "worm", "formulas": ["body"], "pieces": 28 },
            { "order": "2", "mold": "worm", "formulas": ["faint", "body"], "pieces": 2 }"#;
        let plan = Plan::make(&book, &orders_from_text(&orders(lines), &book).unwrap()).unwrap();
        let codes: Vec<&str> = plan.assumptions.iter().map(|note| note.code.as_str()).collect();
        assert!(codes.contains(&"pot-taken-apart"), "{codes:?}");
        assert_eq!(plan.pots.len(), 2);
        assert!(plan.pots.iter().all(|pot| pot.stages.len() == 1));
    }

    // A tenth of a picogram is below what a bench can be asked for.
    #[test]
    fn a_dose_that_nothing_measures_is_refused_at_its_line() {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        book["formulas"]["faint"] =
            serde_json::json!({ "per": "1 cup", "doses": { "red": "0.0000000000001 g" } });
        let book = book_from_text(&book.to_string()).unwrap_or_else(|faults| panic!("{faults}"));
        let line =
            r#"{ "order": "1", "mold": "worm", "formulas": ["faint", "body"], "pieces": 8 }"#;
        let day = orders_from_text(&orders(line), &book).unwrap();
        let budget = Budget::new().work(100_000);
        let faults = Plan::make_within(&book, &day, &budget).unwrap_err();
        let found: Vec<(&str, &str)> = faults.iter().map(|it| (&*it.code, &*it.path)).collect();
        assert_eq!(found, [("out-of-range", "/lines/0")], "{faults}");
    }

    // Pot A was to shoot its layer of the first piece before that of the second, pot B the other way around.
    #[test]
    fn pots_that_wait_for_each_other_keep_one_of_their_laminated_pieces() {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        let product = |layers: [&[&str]; 2]| {
            serde_json::json!({ "mold": "worm", "layers": [
                { "formulas": layers[0], "share": "60 %" }, { "formulas": layers[1], "share": "40 %" }
            ] })
        };
        book["products"]["first"] = product([&["body"], &["rust", "sky", "body"]]);
        book["products"]["second"] = product([&["sky", "body"], &["rust", "body"]]);
        let book = book_from_text(&book.to_string()).unwrap();
        let text = r#"{ "format": "pourwright/1.0",
            "lines": [
                { "order": "1", "product": "first", "pieces": 8 },
                { "order": "2", "product": "second", "pieces": 8 }
            ],
            "pots": [
                { "pot": "A", "parts": { "clear": "1 1/2 cup", "salt": "3 tbsp" }, "hot": true,
                  "draws": [{ "line": 1, "layer": 1, "shots": 2 }, { "line": 2, "layer": 1, "shots": 2 }] },
                { "pot": "B", "parts": { "clear": "1 1/2 cup", "salt": "3 tbsp", "red": "3 g" }, "hot": true,
                  "draws": [{ "line": 2, "layer": 2, "shots": 2 }, { "line": 1, "layer": 2, "shots": 2 }] }
            ] }"#;
        let day = orders_from_text(text, &book).unwrap_or_else(|faults| panic!("{faults}"));
        let plan = Plan::make(&book, &day).unwrap_or_else(|faults| panic!("{faults}"));
        for (line, pieces) in [(1, 8), (2, 8)] {
            for layer in [1, 2] {
                let draws = plan.pots.iter().flat_map(|pot| &pot.stages).flat_map(|s| &s.draws);
                let its = draws.filter(|d| (d.line, d.layer) == (Some(line), Some(layer)));
                let made: u32 = its.flat_map(|draw| &draw.pieces).map(|pieces| pieces.made).sum();
                assert_eq!(made, pieces);
            }
        }
        // Each of them still shoots what it waited for none with.
        let stages = |pot: &str| plan.pots.iter().find(|p| p.pot == pot).unwrap().stages.len();
        assert_eq!((stages("A"), stages("B")), (1, 1));
    }
}

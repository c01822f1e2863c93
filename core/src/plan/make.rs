//! From a book and a day's orders to the plan.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::Plan;
use super::assign::{Assigned, assign};
use super::borrowed::borrowed;
use super::cost::cost;
use super::day::{Batch, Day, Pooled, pool};
use super::layout::{Layout, PotCup, TakenApart, note_companions};
use super::pot::{PotError, Shots, Workshop, shots};
use super::process;
use super::shelf::LeftOver;
use super::stock::stock;
use super::tool_names::ToolNames;
use crate::bench::Cup;
use crate::book::{Book, Vessel};
use crate::fault::{Fault, Faults};
use crate::quantity::Mass;

impl Plan {
    /// Plans `day` in the shop of `book`.
    ///
    /// # Errors
    /// All faults together, each at the order line that shows it first: a recipe or a shot that
    /// cannot be had, a mold larger than the injector, a pot that no cup holds or in which the
    /// bench cannot dose. A shelf where the build lacks the `solver`.
    pub fn make(book: &Book, day: &Day) -> Result<Self, Faults> {
        let mut faults = Vec::new();
        let Pooled { recipes, batches } = pool(book, day, &mut faults);
        let keep = |batch| {
            let shots = shots(batch, book);
            shots.map_err(|error| faults.push(Fault::at(line_path(batch), &error))).ok()
        };
        let shots: Vec<Shots<'_>> = batches.iter().filter_map(keep).collect();
        if let Some(faults) = Faults::from_vec(faults) {
            return Err(faults);
        }
        let workshop = Workshop {
            book,
            names: ToolNames::of(book),
            cups: PotCup::all(book),
            recipes: &recipes,
            shots: &shots,
        };
        let mut layout = workshop.lay_out().map_err(|(batch, error)| {
            Faults::from(Fault::at(batch.map_or_else(String::new, line_path), &error))
        })?;
        layout.use_shelf(&workshop, &day.shelf)?;
        layout.count_left_overs(book);
        let stock = stock(&layout, book, &day.stock);
        let stock = stock.map_err(|error| Faults::from(Fault::at("/stock", &error)))?;
        let cost = cost(&layout, day, book);
        let borrowed = borrowed(&recipes, book)?;
        Ok(workshop.tell(day, &layout, stock, cost, borrowed))
    }
}

/// The batch that an error concerns, and the error.
type At<'a> = (Option<&'a Batch<'a>>, PotError);

/// The path of the first line of a batch.
fn line_path(batch: &Batch<'_>) -> String {
    batch.lines.first().map_or_else(String::new, |line| format!("/lines/{}", line.number))
}

impl<'a> Workshop<'a> {
    /// Assigns the day's stages to pots and builds those.
    ///
    /// The assignment knows the largest cup, but not that its base goes up to a mark, nor what the
    /// bench can dose: where a pot then overflows, less is assigned to each; where a later addition
    /// is too small to measure, the pot's stages get pots of their own.
    fn lay_out(&self) -> Result<Layout<'a>, At<'a>> {
        let largest = self.largest_cup().ok_or((None, PotError::NoCup))?;
        let whole = largest.capacity * self.book.limits.most_full;
        let mut holds = whole;
        loop {
            let assigned = assign(self, holds, self.largest_vessel()).map_err(|error| {
                let stage = error.stage().and_then(|stage| self.layers().get(stage).copied());
                (stage.map(|stage| stage.of.batch), error)
            })?;
            match self.build_all(assigned) {
                Err((batch, error)) if error.is_too_full() => {
                    holds -= largest.mark;
                    if holds < whole * 0.5 {
                        return Err((batch, error));
                    }
                }
                made => return made,
            }
        }
    }

    fn build_all(&self, mut assigned: Assigned<'a>) -> Result<Layout<'a>, At<'a>> {
        let mut apart = Vec::new();
        let mut built = Vec::new();
        while let Some(draft) = assigned.pots.get(built.len()) {
            match self.build(draft) {
                Ok(pot) => built.push(Some(pot)),
                Err(error) if error.is_about_measuring() && draft.stages.len() > 1 => {
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
            work: self.work(&assigned, &pots),
            pots,
            proof: assigned.proof,
            layers: assigned.layers,
            apart,
            shelf: Vec::new(),
        })
    }

    /// The cup that holds most.
    fn largest_cup(&self) -> Option<Cup> {
        let cups = self.cups.iter().map(|cup| cup.cup);
        cups.reduce(|a, b| if b.capacity > a.capacity { b } else { a })
    }

    /// The largest film and heel of all cups: whichever a pot gets, it keeps no more.
    fn largest_vessel(&self) -> Vessel {
        let larger = |a: Mass, b: Mass| if b > a { b } else { a };
        self.book.vessels.iter().fold(Vessel::default(), |most, vessel| Vessel {
            film: larger(most.film, vessel.film),
            heel: larger(most.heel, vessel.heel),
            ..Vessel::default()
        })
    }
}

impl Layout<'_> {
    /// Counts the heats of the left-overs that went into each pot among its own.
    fn count_left_overs(&mut self, book: &Book) {
        for pot in &mut self.pots {
            if let Some(from) = pot.from_shelf.takes() {
                let left_overs: Vec<&LeftOver> = from.parts.iter().map(|(one, _)| *one).collect();
                pot.heats = process::heats(book, &pot.stages, &left_overs);
            }
        }
    }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::ToString;
    use alloc::vec::Vec;

    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;

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
}

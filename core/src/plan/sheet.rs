//! The sheet of a day, as text 80 columns wide: its front, a bench card for each pot, and a packing list. What a person does
//! not need with gloves on is in the [notes](Plan::notes).

mod card;
mod cost;
mod front;
mod notes;
mod parcels;
mod sink;

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;
use core::fmt;

use super::{Plan, PlanStep, PlannedLine, Pot, Stage, StepAt, Weigh};
use crate::show::page::Page;

/// The sheet of a plan, by `Display`.
#[derive(Debug, Clone, Copy)]
pub struct Sheet<'a>(&'a Plan);

/// The notes to a plan, by `Display`.
#[derive(Debug, Clone, Copy)]
pub struct Notes<'a>(&'a Plan);

impl Plan {
    /// Sheet for the bench, as text by its `Display`: the day's orders, stock to buy, order of work and cautions; a
    /// card for each pot with its steps and blanks to write in; a packing list.
    #[must_use]
    pub const fn sheet(&self) -> Sheet<'_> {
        Sheet(self)
    }

    /// Notes to read before or after, as text by its `Display`: the other ways to measure, how sure each number is and why,
    /// sink rates, flakes, costs, why there are not fewer pots, and what was assumed.
    #[must_use]
    pub const fn notes(&self) -> Notes<'_> {
        Notes(self)
    }

    /// A page with `title` and the shop in its head.
    fn headed(&self, title: &str) -> Page {
        let mut page = Page::default();
        let title = match &self.day {
            Some(day) => format!("{title}  {day}"),
            None => title.to_string(),
        };
        page.ends(&title, self.shop.as_deref().unwrap_or_default());
        page.rule('=');
        page
    }
}

impl fmt::Display for Sheet<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plan = self.0;
        let mut page = plan.headed("BENCH SHEET");
        page.orders(&plan.lines);
        page.checks(plan);
        page.shopping(&plan.stock);
        page.work(plan);
        page.cautions(plan);
        page.cards(plan);
        page.parcels(plan);
        f.write_str(page.text())
    }
}

impl fmt::Display for Notes<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let plan = self.0;
        let mut page = plan.headed("NOTES");
        page.proof(plan);
        for pot in &plan.pots {
            page.pot_notes(plan, pot);
        }
        page.sink_rates(&plan.lines, plan.water.as_ref());
        page.stock(&plan.stock);
        page.cost(&plan.lines, plan.cost.as_ref());
        page.assumed(plan);
        page.borrowed(&plan.borrowed);
        f.write_str(page.text())
    }
}

/// The stage of a pot that a step is at.
fn stage_at<'p>(pot: &'p Pot, at: &StepAt) -> Option<&'p Stage> {
    pot.stages.get((at.stage as usize).checked_sub(1)?)
}

/// The entries of the stage's weigh list that go in at a step.
fn weighed<'p>(pot: &'p Pot, step: &PlanStep, at: &StepAt) -> Vec<&'p Weigh> {
    let list = stage_at(pot, at).map_or(&[][..], |stage| &stage.weigh);
    let places = step.items.iter().filter_map(|item| item.weigh);
    places.filter_map(|place| list.get((place as usize).checked_sub(1)?)).collect()
}

/// The product of a line, with the shape in a mold with unlike cavities.
fn called(line: &PlannedLine) -> String {
    let shape = line.shape.as_ref().map(|shape| format!(", {shape}")).unwrap_or_default();
    format!("{}{shape}", line.what)
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::ToString;
    use alloc::vec::Vec;
    use serde_json::{Value, json};

    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;

    #[test]
    fn long_names_are_cut_to_their_columns() {
        let mut book: Value =
            serde_json::from_str(include_str!("../../examples/demo/book.json")).unwrap();
        let long = "dusk ".repeat(16);
        let long = long.trim_end();
        book["materials"]["a-plum-of-late-summer"] = book["materials"]["plum"].clone();
        book["formulas"][long] =
            json!({ "per": "1 cup", "doses": { "a-plum-of-late-summer": "32 drops" } });
        book["molds"]["finger-of-five-inches"] = book["molds"]["finger-5"].clone();
        book["products"]["worm"] =
            json!({ "mold": "finger-of-five-inches", "formulas": [long, "plain"] });
        let book = book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
        let orders = json!({
            "format": "pourwright/1.0",
            "lines": [{ "order": "2027-0304", "product": "worm", "pieces": 8 }]
        });
        let day = orders_from_text(&orders.to_string(), &book).unwrap_or_else(|f| panic!("{f}"));
        let plan = Plan::make(&book, &day).unwrap_or_else(|f| panic!("{f}"));
        let (sheet, notes) = (plan.sheet().to_string(), plan.notes().to_string());
        let has = |page: &str, start: &str, part: &str| {
            page.lines().any(|line| line.starts_with(start) && line.contains(part))
        };
        assert!(has(&sheet, "2027-0… worm", "  finger-of-f… A"), "{sheet}");
        assert!(has(&sheet, "   a-plum-of-late… ", " drops"), "{sheet}");
        assert!(has(&notes, "2027-0… worm", "."), "{notes}");
        let heading = notes.lines().find(|line| line.starts_with("POT A")).unwrap();
        assert_eq!((heading.chars().count(), heading.ends_with('…')), (80, true));
        let lines: Vec<&str> = sheet.lines().chain(notes.lines()).collect();
        assert!(lines.iter().all(|line| line.chars().count() <= 80), "{lines:#?}");
    }
}

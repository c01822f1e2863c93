//! The front of a day: orders, what to buy, the order of work, cautions.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::called;
use crate::plan::{Plan, PlannedLine, StockEntry};
use crate::quantity::Mass;
use crate::show::Calculated;
use crate::show::page::{Page, broken, counted, cut};

/// Columns of the pots in the order table.
const POTS: usize = 9;

impl Page {
    pub(super) fn orders(&mut self, lines: &[PlannedLine]) {
        self.line("");
        self.line(&format!(
            "{:<7} {:<35} {:>6}  {:<12} {:<POTS$} {}",
            "order", "what", "pieces", "mold", "pots", "due"
        ));
        for line in lines {
            let mut pots = broken(&line.pots.join(" "), " ", POTS).into_iter();
            self.line(&format!(
                "{:<7} {:<35} {:>6}  {:<12} {:<POTS$} {}",
                cut(&line.order, 7),
                cut(&called(line), 35),
                line.pieces,
                cut(&line.mold, 12),
                pots.next().unwrap_or_default(),
                month_and_day(line.promised.as_deref()),
            ));
            for more in pots {
                self.line(&format!("{:65}{more}", ""));
            }
        }
    }

    /// Checks before the day begins.
    pub(super) fn checks(&mut self, plan: &Plan) {
        let borrowed = plan.borrowed.first().map(|first| {
            format!("Some numbers of the book are borrowed; see the notes. First: {}", first.how)
        });
        let all: Vec<&str> = plan
            .questions
            .iter()
            .map(|note| note.message.as_str())
            .chain(borrowed.as_deref())
            .collect();
        if all.is_empty() {
            return;
        }
        self.line("");
        self.line("CHECK FIRST");
        for one in all {
            self.wrapped("  ! ", one);
        }
    }

    /// Stock that runs short.
    pub(super) fn shopping(&mut self, stock: &[StockEntry]) {
        let short = || stock.iter().filter(|entry| entry.short.quantity > Mass::default());
        if short().next().is_none() {
            return;
        }
        self.line("");
        self.line("BUY FIRST");
        for entry in short() {
            let pot = entry.runs_out_in.as_ref();
            let pot = pot.map(|pot| format!(", in pot {pot}")).unwrap_or_default();
            let buy = entry.packages.and_then(|packages| u32::try_from(packages).ok());
            let buy = buy.map(|packages| format!(": buy {}", counted(packages, "package")));
            self.wrapped(
                "  ! ",
                &format!(
                    "{}: on hand {}, needs {}. Short {}{pot}{}.",
                    entry.material,
                    entry.had.text,
                    entry.used.text,
                    entry.short.text,
                    buy.unwrap_or_default()
                ),
            );
        }
    }

    pub(super) fn work(&mut self, plan: &Plan) {
        self.line("");
        let long = match &plan.clock {
            Some(Calculated::Known(line)) => {
                let without =
                    if line.without_preparing { ", without measuring and cleaning up" } else { "" };
                format!(
                    ": about {}, {} of it heating, {} shooting{without}",
                    line.total.text, line.heating.text, line.shooting.text
                )
            }
            _ => String::new(),
        };
        self.wrapped("", &format!("ORDER OF WORK{long}"));
        for (number, work) in (1..).zip(&plan.work) {
            self.wrapped(&format!("{number:>3} "), &work.text);
            for detail in &work.details {
                self.wrapped("    ", detail);
            }
        }
    }

    /// All cautions in full, once.
    pub(super) fn cautions(&mut self, plan: &Plan) {
        self.line("");
        self.line("CAUTIONS");
        for caution in &plan.cautions {
            self.wrapped("  ! ", caution.sentence());
        }
    }
}

/// `03-04` of `2027-03-04`.
pub(super) fn month_and_day(date: Option<&str>) -> &str {
    date.and_then(|date| date.get(5..)).unwrap_or_default()
}

//! Stock and costs in the notes.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::called;
use crate::plan::{DayCost, MoneyShown, PlannedLine, StockEntry};
use crate::quantity::Mass;
use crate::show::Calculated;
use crate::show::page::{Page, cut};

impl Page {
    /// The stock after the day.
    pub(super) fn stock(&mut self, stock: &[StockEntry]) {
        let enough = stock.iter().filter(|entry| entry.short.quantity <= Mass::default());
        let left: Vec<String> =
            enough.map(|entry| format!("{} {}", entry.material, entry.left.text)).collect();
        if left.is_empty() {
            return;
        }
        self.line("");
        self.wrapped("", &format!("STOCK after the day: {}.", left.join(", ")));
    }

    /// Cost of each line and of the day.
    pub(super) fn cost(&mut self, lines: &[PlannedLine], cost: Option<&Calculated<DayCost>>) {
        // The notes list what is not known.
        let Some(Calculated::Known(cost)) = cost else { return };
        self.line("");
        self.line(&format!(
            "{:<40}{:>10}{:>10}{:>10}{:>10}",
            format!("COST in {}", cost.total.currency),
            "cost",
            "a piece",
            "a pack",
            "price"
        ));
        for (line, cost) in lines.iter().zip(&cost.lines) {
            self.line(&format!(
                "{:<7} {:<32}{:>10}{:>10}{:>10}{:>10}",
                cut(&line.order, 7),
                cut(&called(line), 32),
                cost.total.figure,
                cost.per_piece.figure,
                figure(cost.per_pack.as_ref()),
                figure(cost.price.as_ref()),
            ));
        }
        self.wrapped("    ", &cost.text);
        let priced = cost.lines.iter().any(|line| line.price.is_some());
        if priced {
            self.wrapped("    ", "The price is that of a pack where it is sold by the pack.");
        }
    }
}

/// The sum without its currency, which is in the heading.
fn figure(money: Option<&MoneyShown>) -> &str {
    money.map_or("", |money| &money.figure)
}

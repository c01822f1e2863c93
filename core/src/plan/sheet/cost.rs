//! Stock and costs on the bench sheet.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::called;
use crate::plan::{DayCost, MoneyShown, PlannedLine, StockEntry};
use crate::quantity::Mass;
use crate::show::Calculated;
use crate::show::page::{Page, counted, cut};

impl Page {
    /// What runs short, and what is left of the rest.
    pub(super) fn stock(&mut self, stock: &[StockEntry]) {
        if stock.is_empty() {
            return;
        }
        self.line("");
        self.line("STOCK");
        let (short, enough): (Vec<&StockEntry>, Vec<&StockEntry>) =
            stock.iter().partition(|entry| entry.short.quantity > Mass::default());
        for entry in short {
            let pot = entry.runs_out_in.as_ref();
            let pot = pot.map(|pot| format!(" in pot {pot}")).unwrap_or_default();
            let buy = entry.packages.and_then(|packages| u32::try_from(packages).ok());
            let buy = buy.map(|packages| format!(" Buy {}.", counted(packages, "package")));
            self.wrapped(
                "  ! ",
                &format!(
                    "{} runs out{pot}: {} is there, {} is wanted, {} is missing.{}",
                    entry.material,
                    entry.had.text,
                    entry.used.text,
                    entry.short.text,
                    buy.unwrap_or_default()
                ),
            );
        }
        let left: Vec<String> =
            enough.iter().map(|entry| format!("{} {}", entry.material, entry.left.text)).collect();
        if !left.is_empty() {
            self.detail(&format!("Left after the day: {}.", left.join(", ")));
        }
    }

    /// What each line costs, and the day.
    pub(super) fn cost(&mut self, lines: &[PlannedLine], cost: Option<&Calculated<DayCost>>) {
        // What is not known stands among the notes.
        let Some(Calculated::Known(cost)) = cost else { return };
        self.line("");
        self.rule('=');
        self.line(&format!(
            "{:<40}{:>10}{:>10}{:>10}{:>10}",
            format!("COST in {}", cost.total.currency),
            "cost",
            "a piece",
            "a pack",
            "price"
        ));
        for (line, cost) in lines.iter().zip(&cost.lines) {
            let sum = |money: Option<&MoneyShown>| money.map(plain).unwrap_or_default();
            self.line(&format!(
                "{:<7} {:<32}{:>10}{:>10}{:>10}{:>10}",
                cut(&line.order, 7),
                cut(&called(line), 32),
                plain(&cost.total),
                plain(&cost.per_piece),
                sum(cost.per_pack.as_ref()),
                sum(cost.price.as_ref()),
            ));
        }
        let shelf = if is_zero(&cost.from_shelf) {
            String::new()
        } else {
            format!(" and left-over for {}", cost.from_shelf.text)
        };
        let credit = if is_zero(&cost.credit) {
            String::new()
        } else {
            format!(", of which {} stays as left-over", cost.credit.text)
        };
        self.detail(&format!(
            "Materials for {}{shelf}{credit}; packing {}; work {}: {} altogether.",
            cost.materials.text, cost.packing.text, cost.work.text, cost.total.text
        ));
        let priced = cost.lines.iter().any(|line| line.price.is_some());
        if priced {
            self.detail("The price is that of a pack where it is sold by the pack.");
        }
    }
}

/// The sum without its currency, which stands above.
fn plain(money: &MoneyShown) -> String {
    let text = money.text.strip_suffix(money.currency.as_str());
    text.map_or_else(|| money.text.clone(), |text| text.trim_end().to_string())
}

fn is_zero(money: &MoneyShown) -> bool {
    money.amount.chars().all(|digit| matches!(digit, '0' | '.' | '-'))
}

//! The tools on the bench.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::vec::Vec;

use super::Resolver;
use crate::book::{Injector, Vessel};
use crate::document::book::BenchEntry;
use crate::document::path::pointer;
use crate::document::process::ToolUncertaintyEntry;
use crate::document::written::{Percent, Written};
use crate::plan::measures::{Balance, Bench, Cup, Limits as Handling};
use crate::quantity::{Ratio, Volume};
use crate::uncertainty::ToolUncertainty;

impl Resolver {
    pub(super) fn bench(
        &mut self,
        at: &str,
        entry: &BenchEntry,
    ) -> Option<(Bench, Vec<Vessel>, Injector)> {
        let balance = entry.balance.as_ref().and_then(|balance| {
            let readability = self.positive(&format!("{at}/balance/reads"), &balance.reads)?;
            Some(Balance {
                readability,
                least_load: self.or_zero(&format!("{at}/balance/from"), balance.from.as_ref()),
                capacity: match &balance.to {
                    Some(capacity) => self.positive(&format!("{at}/balance/to"), capacity)?,
                    // Shop balances show some 5 000 to 50 000 steps (common practice, no source).
                    None => readability * 5000.0,
                },
            })
        });
        let spoons: Vec<Option<Volume>> = entry
            .spoons
            .iter()
            .flatten()
            .enumerate()
            .map(|(index, spoon)| self.positive(&format!("{at}/spoons/{index}"), spoon))
            .collect();
        let mut cups = Vec::new();
        let mut vessels = Vec::new();
        for (index, cup) in entry.cups.iter().enumerate() {
            let path = format!("{at}/cups/{index}");
            let capacity = self.positive(&pointer(&path, "holds"), &cup.holds);
            let mark = match &cup.marks {
                Some(mark) => self.positive(&pointer(&path, "marks"), mark),
                None => capacity,
            };
            vessels.push(Vessel {
                film: self.or_zero(&pointer(&path, "film"), cup.film.as_ref()),
                heel: self.or_zero(&pointer(&path, "heel"), cup.heel.as_ref()),
                brim: self.brim(&path, cup.brim.as_ref(), capacity),
            });
            if let (Some(capacity), Some(mark)) = (capacity, mark) {
                cups.push(Cup { mark, capacity });
            }
        }
        if entry.cups.is_empty() {
            self.fault(
                "no-cup",
                &format!("{at}/cups"),
                "There is no cup to mix a pot in.".to_owned(),
                "Add one: { \"holds\": \"2 cup\", \"marks\": \"1/4 cup\" }.".to_owned(),
            );
        }
        let holds = self.positive(&format!("{at}/injector/holds"), &entry.injector.holds);
        let keeps = self.or_zero(&format!("{at}/injector/keeps"), entry.injector.keeps.as_ref());
        if holds.is_some_and(|holds| keeps >= holds) {
            self.fault(
                "injector-keeps-all",
                &format!("{at}/injector/keeps"),
                "The injector keeps all that it holds.".to_owned(),
                "Write what stays in it after the last shot.".to_owned(),
            );
        }
        let spoons: Vec<Volume> = spoons.into_iter().collect::<Option<_>>()?;
        let handling = Handling {
            drops: entry.most_drops.unwrap_or(Handling::default().drops),
            ..Handling::default()
        };
        let tools = self.keep(at, Bench::new(balance, spoons, cups, handling));
        let count = entry.injector.count.unwrap_or(1);
        Some((tools?, vessels, Injector { holds: holds?, keeps, count }))
    }

    /// What a cup holds to its brim, which lies no lower than its highest mark.
    fn brim(
        &mut self,
        path: &str,
        brim: Option<&Written<Volume>>,
        holds: Option<Volume>,
    ) -> Option<Volume> {
        let path = pointer(path, "brim");
        let brim = self.positive(&path, brim?)?;
        if holds.is_some_and(|holds| brim < holds) {
            self.fault(
                "brim-below-marks",
                &path,
                "The cup holds less to its brim than to its highest mark.".to_owned(),
                "Fill it to the brim with water and weigh that: 1 g is 1 mL.".to_owned(),
            );
            return None;
        }
        Some(brim)
    }
}

/// What the shop has found of its tools, over the library's figures.
pub(super) fn tool_uncertainty(entry: Option<&ToolUncertaintyEntry>) -> ToolUncertainty {
    let mut tools = ToolUncertainty::default();
    let Some(entry) = entry else { return tools };
    let set = |figure: &mut Ratio, found: Option<Percent>| {
        if let Some(found) = found {
            *figure = Ratio::from(found.share());
        }
    };
    set(&mut tools.balance_span, entry.balance_span);
    set(&mut tools.spoon_size, entry.spoon_size);
    set(&mut tools.spoon_level, entry.spoon_level);
    set(&mut tools.cup_size, entry.cup_size);
    set(&mut tools.cup_filling, entry.cup_filling);
    set(&mut tools.drop, entry.drop);
    set(&mut tools.unweighed_drop, entry.unweighed_drop);
    set(&mut tools.drop_scatter, entry.drop_scatter);
    tools
}

//! The tools on the bench.

use alloc::vec::Vec;

use super::Resolver;
use crate::bench::{Balance, Bench, Cup, Handling, MeasureError};
use crate::book::{Injectors, Vessel};
use crate::codes::code;
use crate::document::book::BenchEntry;
use crate::document::process::ToolUncertaintyEntry;
use crate::document::written::{Percent, Written};
use crate::json::path::Path;
use crate::parameter::Parameter;
use crate::quantity::{Ratio, Volume};
use crate::uncertainty::ToolUncertainty;

impl Resolver {
    pub(super) fn bench(
        &mut self,
        at: &Path<'_>,
        entry: &BenchEntry,
    ) -> Option<(Bench, Vec<Vessel>, Injectors)> {
        let balance = entry.balance.as_ref().and_then(|balance| {
            let path = at.key("balance");
            let readability =
                self.given_at(&path.key("reads"), Parameter::BalanceReadability, &balance.reads)?;
            let least_load = self.or_zero(&path.key("from"), balance.from.as_ref());
            Some(Balance {
                readability,
                least_load: least_load.unwrap_or_default(),
                capacity: match &balance.to {
                    Some(capacity) => {
                        self.given_at(&path.key("to"), Parameter::BalanceCapacity, capacity)?
                    }
                    None => Balance::usual_capacity(readability),
                },
            })
        });
        let spoons = entry.spoons.as_deref().unwrap_or_default();
        let spoons = self.each(&at.key("spoons"), spoons, Self::positive);
        let mut cups = Vec::new();
        let mut vessels = Vec::new();
        let at_cups = at.key("cups");
        for (index, cup) in entry.cups.iter().enumerate() {
            let path = at_cups.index(index);
            let capacity = self.given_at(&path.key("holds"), Parameter::CupCapacity, &cup.holds);
            let mark = match &cup.marks {
                Some(mark) => self.given_at(&path.key("marks"), Parameter::CupMark, mark),
                None => capacity,
            };
            vessels.push(Vessel {
                film: self.or_zero(&path.key("film"), cup.film.as_ref()).unwrap_or_default(),
                heel: self.or_zero(&path.key("heel"), cup.heel.as_ref()).unwrap_or_default(),
                brim: self.brim(&path, cup.brim.as_ref(), capacity),
                heat_capacity: self
                    .vessel(
                        &path,
                        ("mass", cup.mass.as_ref()),
                        ("specific_heat", cup.specific_heat.as_ref()),
                    )
                    .unwrap_or_default(),
            });
            if let (Some(capacity), Some(mark)) = (capacity, mark) {
                cups.push(Cup { mark, capacity });
            }
        }
        if entry.cups.is_empty() {
            self.fault(
                code!("no-cup"),
                &at_cups,
                &"There is no cup to mix a pot in.",
                &"Add one: { \"holds\": \"2 cup\", \"marks\": \"1/4 cup\" }.",
            );
        }
        let injector = at.key("injector");
        let holds = self.given_at(
            &injector.key("holds"),
            Parameter::InjectorCapacity,
            &entry.injector.holds,
        );
        let keeps = self.or_zero(&injector.key("keeps"), entry.injector.keeps.as_ref());
        let keeps = keeps.unwrap_or_default();
        if holds.is_some_and(|holds| keeps >= holds) {
            self.fault(
                code!("injector-keeps-all"),
                &injector.key("keeps"),
                &"The injector keeps all that it holds.",
                &"Write what stays in it after the last shot.",
            );
        }
        let handling = Handling {
            drops: entry.most_drops.unwrap_or(Handling::default().drops),
            ..Handling::default()
        };
        let tools = Bench::new(balance, spoons?, cups, handling);
        let at = if matches!(tools, Err(MeasureError::Cups { .. })) { &at_cups } else { at };
        let tools = self.keep(at, tools);
        let count = entry.injector.count.unwrap_or(1);
        Some((tools?, vessels, Injectors { holds: holds?, keeps, count }))
    }

    /// Volume of a cup to its brim, which is not below its highest mark.
    fn brim(
        &mut self,
        path: &Path<'_>,
        brim: Option<&Written<Volume>>,
        holds: Option<Volume>,
    ) -> Option<Volume> {
        let path = path.key("brim");
        let brim = self.given_at(&path, Parameter::VesselBrim, brim?)?;
        if holds.is_some_and(|holds| brim < holds) {
            self.fault(
                code!("brim-below-marks"),
                &path,
                &"The cup holds less to its brim than to its highest mark.",
                &"Fill it to the brim with water and weigh that: 1 g is 1 mL.",
            );
            return None;
        }
        Some(brim)
    }
}

/// The shop's own figures of its tools, else the library's.
pub(crate) fn tool_uncertainty(entry: Option<&ToolUncertaintyEntry>) -> ToolUncertainty {
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

//! The packing list.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::called;
use super::front::month_and_day;
use crate::plan::{Parcel, Plan, PlannedLine};
use crate::show::page::{Page, counted};

impl Page {
    /// Each order with its pieces or packs and what goes in with them, boxes to tick.
    pub(super) fn parcels(&mut self, plan: &Plan) {
        self.line("");
        self.rule('=');
        self.line("PACKING LIST");
        for parcel in &plan.parcels {
            self.parcel(parcel, &plan.lines);
        }
    }

    fn parcel(&mut self, parcel: &Parcel, lines: &[PlannedLine]) {
        let due = match month_and_day(parcel.promised.as_deref()) {
            "" => String::new(),
            due => format!("due {due}, "),
        };
        self.ends(&format!("Order {}", parcel.order), &format!("{due}{} net", parcel.net.text));
        let lines = parcel.lines.iter().filter_map(|&place| {
            let line = lines.get((place as usize).checked_sub(1)?)?;
            Some(match (line.packs, line.pack_of) {
                (Some(packs), Some(each)) => format!(
                    "{} of {each} {}, {} pieces",
                    counted(packs, "pack"),
                    called(line),
                    line.pieces
                ),
                _ => format!("{} {}", line.pieces, called(line)),
            })
        });
        let takes = parcel.takes.iter().map(|item| format!("{} × {}", item.count, item.name));
        for what in lines.chain(takes).collect::<Vec<_>>() {
            self.wrapped("  [ ] ", &what);
        }
    }
}

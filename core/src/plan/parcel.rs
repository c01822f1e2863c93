//! Parcels: what of a day goes to whom.

use alloc::string::String;
use alloc::vec::Vec;

use super::PlannedLine;
use crate::cost::PackItem;
use crate::quantity::Mass;
use crate::show::{Shown, part, text};

part! {
    /// Parcel of one order: its lines, packed.
    pub struct Parcel {
        /// The order.
        pub order: String,
        /// The first day that one of its lines was promised for.
        pub promised: Option<String>,
        /// Its lines, by their places in the plan, counted from 1.
        pub lines: Vec<u32>,
        /// Materials of its packs besides pieces, if the book states costs.
        pub takes: Vec<ParcelItem>,
        /// Mass of its pieces, without hooks and packing.
        pub net: Shown<Mass>,
    }
}

part! {
    /// Something that packs take besides pieces.
    pub struct ParcelItem {
        /// Its name.
        pub name: String,
        /// How many.
        pub count: u32,
    }
}

/// The parcels of `lines`, those that are due first at first; each of their packs takes `items`.
pub(super) fn parcels(lines: &[PlannedLine], items: &[PackItem]) -> Vec<Parcel> {
    // Like orders side by side, each in the order of its lines.
    let mut by_order: Vec<(u32, &PlannedLine)> = (1..).zip(lines).collect();
    by_order.sort_by(|(_, a), (_, b)| a.order.cmp(&b.order));
    let of_order = by_order.chunk_by(|(_, a), (_, b)| a.order == b.order);
    let mut parcels: Vec<Parcel> = of_order.filter_map(|lines| parcel(lines, items)).collect();
    // What is promised for no day can wait.
    parcels.sort_by(|a, b| {
        let key = |parcel: &Parcel| (parcel.promised.is_none(), parcel.promised.clone());
        key(a).cmp(&key(b)).then_with(|| a.lines.cmp(&b.lines))
    });
    parcels
}

fn parcel(lines: &[(u32, &PlannedLine)], items: &[PackItem]) -> Option<Parcel> {
    let (_, first) = lines.first()?;
    let packs = lines.iter().filter_map(|(_, line)| line.packs);
    let packs = packs.fold(0, u32::saturating_add);
    let takes = items.iter().map(|item| ParcelItem {
        name: item.name.clone(),
        count: item.per_pack.saturating_mul(packs),
    });
    let net = lines
        .iter()
        .fold(Mass::default(), |sum, (_, line)| sum + line.piece.quantity * f64::from(line.pieces));
    Some(Parcel {
        order: first.order.clone(),
        promised: lines.iter().filter_map(|(_, line)| line.promised.clone()).min(),
        lines: lines.iter().map(|(number, _)| *number).collect(),
        takes: takes.filter(|item| item.count > 0).collect(),
        net: text::mass(net),
    })
}

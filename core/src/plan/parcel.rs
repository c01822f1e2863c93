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

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::ToString;
    use alloc::vec::Vec;

    use serde_json::{Value, json};

    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;
    use crate::quantity::Measurable;

    #[test]
    fn parcels_go_by_the_day_they_were_promised_for() {
        let mut book: Value = serde_json::from_str(BOOK).unwrap();
        book["costing"] =
            json!({ "packing": [{ "name": "bag", "price": "11.00 USD per 100 pieces" }] });
        let book = book_from_text(&book.to_string()).unwrap_or_else(|f| panic!("{f}"));
        let line = |order: &str, more: Value| {
            let mut line = json!({ "order": order, "product": "sky worm" });
            line.as_object_mut().unwrap().extend(more.as_object().unwrap().clone());
            line.to_string()
        };
        let lines = [
            line("z", json!({ "pieces": 4 })),
            line("b", json!({ "pieces": 4, "promised": "2031-05-12" })),
            line("a", json!({ "packs": 2, "pack_of": 4 })),
            line("b", json!({ "packs": 3, "pack_of": 4, "promised": "2031-05-10" })),
            line("c", json!({ "pieces": 4, "promised": "2031-05-11" })),
        ];
        let day = orders_from_text(&orders(&lines.join(",")), &book).unwrap();
        let plan = Plan::make(&book, &day).unwrap();
        let parcels: Vec<(&str, Option<&str>, &[u32])> = plan
            .parcels
            .iter()
            .map(|one| (one.order.as_str(), one.promised.as_deref(), one.lines.as_slice()))
            .collect();
        // What is promised for no day comes last, in the order of the lines.
        let expected: [(&str, Option<&str>, &[u32]); 4] = [
            ("b", Some("2031-05-10"), &[2, 4]),
            ("c", Some("2031-05-11"), &[5]),
            ("z", None, &[1]),
            ("a", None, &[3]),
        ];
        assert_eq!(parcels, expected);
        let takes: Vec<Vec<u32>> = plan
            .parcels
            .iter()
            .map(|one| one.takes.iter().map(|item| item.count).collect())
            .collect();
        assert_eq!(takes, [alloc::vec![3], Vec::new(), Vec::new(), alloc::vec![2]]);
        let piece = plan.lines[0].piece.quantity.si();
        assert!((plan.parcels[0].net.quantity.si() / (16.0 * piece) - 1.0).abs() < 1e-12);
    }
}

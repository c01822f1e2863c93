//! What the book knows of the numbers that days can teach.

use alloc::vec::Vec;

use crate::book::{Book, Mold};
use crate::document::LoadedBook;
use crate::document::process::TimingEntry;
use crate::material::{Drop, Material, pharmacy_drop};
use crate::process::heat::{Load, Timing};
use crate::quantity::{Dimension, HeatCapacity, Mass, MassDensity, Measured, Ratio, Time, Volume};

/// Standard uncertainty of a feed share that a book states: 60 % is 50 % to 70 % (common practice, no source).
pub(super) const STATED_FEED: f64 = 0.1;

/// The feed share of a mold and its standard uncertainty; of one that the book does not state, the middle of 0 to 1 and
/// that of an even spread, 1/√12 (JCGM 100, 4.3.7).
pub(super) fn feed(mold: &Mold) -> (Ratio, Ratio) {
    match mold.feed {
        Some(feed) => (Ratio::from(feed), Ratio::from(STATED_FEED)),
        None => (Ratio::from(0.5), Ratio::from(1.0 / libm::sqrt(12.0))),
    }
}

/// One drop of a material, with the ± that a plan takes it to have. Where the book has none, it is 1/20 mL.
pub(super) fn drop(material: &Material, book: &Book) -> Option<Measured<Mass>> {
    let density = material.density.as_ref().map(|density| density.value);
    match &material.drop {
        Some(Drop::Mass(mass)) => Some(with_usual(mass.value, mass.uncertainty, book.unsure.drop)),
        Some(Drop::Volume(volume)) => {
            let density: MassDensity = density?;
            let unsure = volume.uncertainty.map(|unsure| density * unsure);
            Some(with_usual(density * volume.value, unsure, book.unsure.drop))
        }
        None => Some(with_usual(density? * pharmacy_drop(), None, book.unsure.unweighed_drop)),
    }
}

fn with_usual(mass: Mass, stated: Option<Mass>, usual: Ratio) -> Measured<Mass> {
    Measured::new(mass, stated.unwrap_or(mass * usual))
}

/// The volume that the injector keeps; none where the book does not state it.
pub(super) fn kept(book: &LoadedBook) -> Option<Measured<Volume>> {
    book.written().bench.injector.keeps.as_ref()?.measured(book.ready().system).ok()
}

/// The time of a shot into `mold`: its own, or that of the costing.
pub(super) fn per_shot(book: &LoadedBook, mold: &str) -> Option<Measured<Time>> {
    let written = book.written();
    let own = written.molds.get(mold).and_then(|mold| mold.per_shot.as_ref());
    let of_all = written.costing.as_ref().and_then(|costing| costing.per_shot.as_ref());
    own.or(of_all)?.measured(book.ready().system).ok()
}

/// The timings of the oven, in their order; none where there is no oven, or its timings count the heat of vessels.
pub(super) fn timings(book: &LoadedBook) -> Vec<Timing> {
    let oven = book.written().bench.oven.as_ref();
    let timings = oven.and_then(|oven| oven.timings.as_deref()).unwrap_or_default();
    timings.iter().map_while(|entry| timing(entry, book)).collect()
}

fn timing(entry: &TimingEntry, book: &LoadedBook) -> Option<Timing> {
    let ready = book.ready();
    let mass = if entry.mix.dimension() == Dimension::VOLUME {
        let volume: Volume = entry.mix.to(ready.system).ok()?;
        timed_base(book)?.density.as_ref()?.value * volume
    } else {
        entry.mix.to(ready.system).ok()?
    };
    Some(Timing {
        load: timed_load(book, mass)?,
        setting: ready.oven.as_ref()?.timed.setting(),
        start: entry.from.to(ready.system).ok()?,
        end: entry.to.to(ready.system).ok()?,
        duration: entry.time.to(ready.system).ok()?,
    })
}

/// So much of what the oven is timed with.
pub(super) fn timed_load(book: &LoadedBook, mass: Mass) -> Option<Load> {
    Load::new(mass, timed_base(book)?.specific_heat_line()?, HeatCapacity::default()).ok()
}

/// The plastisol that the oven is timed with.
fn timed_base(book: &LoadedBook) -> Option<&Material> {
    let (written, ready) = (book.written(), book.ready());
    let oven = written.bench.oven.as_ref()?;
    let named = oven.of.as_ref().and_then(|name| ready.materials.find(&name.0));
    ready.materials.get(named.or(ready.default_base)?).ok()
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;

    use rstest::rstest;
    use serde_json::Value;

    use super::*;
    use crate::document::small;
    use crate::quantity::Measurable;

    /// The small book with this drop and density of the red.
    fn red(drop: Option<&str>, density: &str) -> (LoadedBook, Material) {
        let mut book: Value = serde_json::from_str(small::BOOK).unwrap();
        book["materials"]["red"]["density"] = density.into();
        if let Some(drop) = drop {
            book["materials"]["red"]["drop"] = drop.into();
        }
        let book = LoadedBook::from_text(&book.to_string()).unwrap();
        let red = book.ready().materials.find("red").unwrap();
        let red = book.ready().materials.get(red).unwrap().clone();
        (book, red)
    }

    // In mg. What is not stated is ± 15 % or, of a drop that was never weighed, ± 50 %, evenly spread.
    #[rstest]
    #[case(Some("0.04 g ± 0.003"), 40.0, 3.0)]
    #[case(Some("0.04 g"), 40.0, 40.0 * 0.15 / 1.7320508075688772)]
    #[case(Some("0.04 mL ± 0.003"), 80.0, 6.0)]
    #[case(Some("0.04 mL"), 80.0, 80.0 * 0.15 / 1.7320508075688772)]
    #[case(None, 100.0, 100.0 * 0.5 / 1.7320508075688772)]
    fn a_drop_is_known_as_well_as_it_is_stated(
        #[case] stated: Option<&str>,
        #[case] milligrams: f64,
        #[case] unsure: f64,
    ) {
        let (book, red) = red(stated, "2 g/mL");
        let found = drop(&red, book.ready()).unwrap();
        assert!((found.value.si() * 1e6 / milligrams - 1.0).abs() < 1e-12, "{found:?}");
        assert!((found.uncertainty.unwrap().si() * 1e6 / unsure - 1.0).abs() < 1e-12, "{found:?}");
    }

    #[test]
    fn a_feed_share_that_is_not_stated_may_be_any() {
        let book = crate::document::book_from_text(small::BOOK).unwrap();
        let mut mold = book.molds[0].clone();
        mold.feed = None;
        // The middle of 0 to 1, and 1/√12.
        let (share, unsure) = feed(&mold);
        assert!(share.value == 0.5 && (unsure.value - 0.288_675_134_594_812_9).abs() < 1e-15);
        mold.feed = Some(0.6);
        assert_eq!(feed(&mold), (Ratio::from(0.6), Ratio::from(0.1)));
    }
}

//! How a pot is degassed: the fill mark, and in how many fills.

use alloc::format;
use alloc::string::{String, ToString};

use super::note;
use crate::bench::Cup;
use crate::book::Book;
use crate::codes::code;
use crate::plan::layout::PotCup;
use crate::process::chamber::{Air, Chamber, Pulled, usual_rise};
use crate::process::degas::DegasCup;
use crate::quantity::{Pressure, Ratio, Volume};
use crate::show::{Calculated, Note, Shown, because, part, text};

/// Share of a vessel that stays empty under vacuum. Common practice, no source.
pub(crate) const SPARE: f64 = crate::parameter::Parameter::VesselSpare.default_si();

part! {
    /// How a pot is degassed.
    pub struct Degas {
        /// Reading of the gauge: the vacuum on a vacuum gauge, else the pressure left in the chamber.
        pub gauge: Shown<Pressure>,
        /// Whether that is an absolute pressure.
        pub is_absolute: bool,
        /// Pressure left in the chamber; near the end of the dial, the middle of what it may be.
        pub absolute: Shown<Pressure>,
        /// Its maximum, near the end of the dial.
        pub at_most: Option<Shown<Pressure>>,
        /// Its minimum by the dial, used to calculate the swelling if no rise was seen.
        pub swells_at: Option<Shown<Pressure>>,
        /// Error of the vacuum gauge, if it shows more than the air here can give.
        pub gauge_off: Option<Shown<Pressure>>,
        /// Factor by which the pot swells, if no bubble bursts.
        pub rise: Shown<Ratio>,
        /// Note that the factor is assumed, and what to do then; none if the book states the rise or the air.
        pub assumed: Option<Note>,
        /// Capacity of the cup to degas in, to its highest mark.
        pub cup: Shown<Volume>,
        /// Name of that cup: `4-cup cup`.
        pub cup_name: String,
        /// Maximum level to fill it to.
        pub fill_mark: Shown<Volume>,
        /// Number of fills that the pot takes.
        pub fills: u32,
        /// Level of each, in equal parts.
        pub level: Shown<Volume>,
        /// Volume that each swells to.
        pub swollen: Shown<Volume>,
    }
}

/// How a pot of `liquid`, cold and without air, is degassed that is mixed in `cup`, one of `cups`.
pub(in crate::plan) fn degas(
    book: &Book,
    cup: &PotCup,
    cups: &[PotCup],
    liquid: Volume,
) -> Option<Calculated<Degas>> {
    book.chamber.as_ref().map(|chamber| degas_in(chamber, book, cup, cups, liquid).into())
}

fn degas_in(
    chamber: &Chamber,
    book: &Book,
    cup: &PotCup,
    cups: &[PotCup],
    liquid: Volume,
) -> Result<Degas, Note> {
    let system = book.system;
    let local = book.air.ok_or_else(|| {
        note(
            code!("air-not-known"),
            "The vacuum depends on the air pressure outside. Add \"altitude\" or \"station_pressure\" to the book."
                .to_string(),
        )
    })?;
    let pressure = chamber.pressure(local).map_err(|error| because(&error))?;
    // Plasticizers give off next to nothing at degassing temperatures.
    let vacuum = chamber.vacuum(local, &pressure, Pressure::default());
    let vacuum = vacuum.map_err(|error| because(&error))?;
    let air = chamber.entrained(vacuum).map_err(|error| because(&error))?;
    let fills = |cup: &PotCup| {
        let vessel = degas_vessel(cup)?;
        let fills = match air {
            Some(air) => vessel.fills(liquid, air, vacuum),
            None => vessel.fills_rising(liquid, usual_rise(vacuum)),
        };
        fills.map_err(|error| because(&error))
    };
    // The pot's own cup if it takes all at once, else the one with the fewest fills.
    let mut best = (cup, fills(cup));
    if !matches!(&best.1, Ok(fills) if fills.count == 1) {
        for other in cups {
            let found = fills(other);
            let is_better = match (&found, &best.1) {
                (Ok(found), Ok(best)) => found.count < best.count,
                (Ok(_), Err(_)) => true,
                _ => false,
            };
            if is_better {
                best = (other, found);
            }
        }
    }
    let (PotCup { cup: Cup { capacity, mark: step }, .. }, fills) = (*best.0, best.1?);
    let (gauge, is_absolute) = match chamber.pulled {
        Pulled::Gauge { reading, .. } => (reading.get(), false),
        Pulled::Absolute(absolute) => (absolute.get(), true),
    };
    Ok(Degas {
        gauge: text::pressure(gauge, system),
        is_absolute,
        absolute: text::pressure(pressure.absolute.get(), system),
        at_most: (pressure.least.get() == Pressure::default())
            .then(|| text::pressure(pressure.most.get(), system)),
        swells_at: (matches!(chamber.air, Some(Air::Share(_))) && !is_absolute)
            .then(|| text::pressure(pressure.least.get(), system)),
        gauge_off: pressure.over.map(|over| text::gauge_off(over, system)),
        rise: text::factor(fills.swollen / fills.level),
        assumed: air.is_none().then(|| rise_assumed(fills.swollen / fills.level)),
        cup: text::cup(capacity, step, system),
        cup_name: text::cup_name(capacity, step, system),
        // A cup with its highest mark alone is filled to any level.
        fill_mark: text::fill_mark(fills.mark, (step < capacity).then_some(step), system),
        fills: fills.count,
        level: text::volume(fills.level, system),
        swollen: text::volume(fills.swollen, system),
    })
}

/// That a pot's `rise` under vacuum is assumed, and what to do until it was seen.
pub(crate) fn rise_assumed(rise: Ratio) -> Note {
    note(
        code!("rise-assumed"),
        format!(
            "No rise was given: assumed {} times the level (common practice, no source). Watch it. Before it reaches the brim, let some air in, wait, and pull again. Then give the vacuum its \"rise\": the level under vacuum over the level before.",
            text::factor(rise).text
        ),
    )
}

/// A cup in the vacuum chamber. One with its highest mark alone is filled to any level.
fn degas_vessel(cup: &PotCup) -> Result<DegasCup, Note> {
    let brim = cup.vessel.brim.ok_or_else(|| {
        note(
            code!("brim-not-known"),
            "The book does not state how much the cup holds to its brim. Fill it with water, weigh that, and add \"brim\" to the cup."
                .to_string(),
        )
    })?;
    let Cup { mark, capacity } = cup.cup;
    DegasCup::new(brim, Ratio::from(SPARE), (mark < capacity).then_some(mark))
        .map_err(|error| because(&error))
}

//! How a pot is heated: the bursts of the oven.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use uom::si::temperature_interval::kelvin;

use super::note;
use crate::book::{Book, Oven};
use crate::formula::Recipe;
use crate::material::ShotWindow;
use crate::mix::reference_temperature;
use crate::plan::day::DayRecipe;
use crate::plan::layout::{PotLayout, StageLayout};
use crate::process::heat::{
    self, Bursts, FARTHEST_REACH, HeatError, Load, Precautions, Reach, Window, mix_specific_heat,
};
use crate::quantity::{
    HeatCapacity, Mass, Measurable, Ratio, SpecificHeatCapacity, System, TemperatureInterval,
    ThermodynamicTemperature, Time,
};
use crate::show::{Calculated, Note, Shown, because, part, text};

/// What of a mix, by mass, must have a stated specific heat; the rest is taken to be like it.
/// Common practice, no source: between plasticizer and salt it differs by a factor of two, which for
/// a tenth of the mix is a twentieth of the time.
const LEAST_KNOWN: f64 = 0.9;

/// How much warmer than 20 °C a cold pot may be in a warm room, in K: common practice, no source.
const WARM_ROOM: f64 = 10.0;

part! {
    /// One run of the oven.
    pub struct Burst {
        /// How long.
        pub duration: Shown<Time>,
        /// Run it only if the thermometer shows no more than this.
        pub only_below: Shown<ThermodynamicTemperature>,
        /// What it is expected to show afterwards, stirred.
        pub expected: Shown<ThermodynamicTemperature>,
        /// The most that the pot may have then.
        pub at_most: Shown<ThermodynamicTemperature>,
    }
}

part! {
    /// How a pot is heated.
    pub struct Heating {
        /// The setting of the oven, as a share of full power, where it is below that.
        pub setting: Option<Shown<Ratio>>,
        /// What the pot has before.
        pub from: Shown<ThermodynamicTemperature>,
        /// What it shall have.
        pub aim: Shown<ThermodynamicTemperature>,
        /// The bursts, as long as each comes out as expected.
        pub bursts: Vec<Burst>,
        /// How long the oven runs altogether.
        pub total: Shown<Time>,
        /// Its standard uncertainty, where more than one timing shows one.
        pub uncertainty: Option<Shown<Time>>,
        /// Whether one burst of that length may overshoot the window.
        pub one_overshoots: bool,
        /// How far the amount lies outside those that were timed, as a factor.
        pub beyond: Option<Shown<Ratio>>,
        /// Materials whose specific heat the book does not state: taken to be that of the rest.
        pub specific_heat_not_known: Vec<String>,
    }
}

/// A cup that is heated.
#[derive(Clone, Copy)]
pub(in crate::plan) struct Cup<'a> {
    pub(in crate::plan) recipe: &'a DayRecipe<'a>,
    /// What is in it.
    pub(in crate::plan) mass: Mass,
    /// Its own heat capacity.
    pub(in crate::plan) vessel: HeatCapacity,
    /// Whether it is heated for the first time, from the bench's 20 °C.
    pub(in crate::plan) first: bool,
}

/// How `cups` are heated: one, or several together as one load.
pub(in crate::plan) fn heating(book: &Book, cups: &[Cup<'_>]) -> Option<Calculated<Heating>> {
    book.oven.as_ref().map(|oven| heating_in(oven, book, cups).into())
}

fn heating_in(oven: &Oven, book: &Book, cups: &[Cup<'_>]) -> Result<Heating, Note> {
    let system = book.system;
    let mut windows: Option<ShotWindow> = None;
    let mut loads = Vec::new();
    let mut not_known: Vec<String> = Vec::new();
    for cup in cups {
        let own = cup.recipe.window.ok_or_else(|| {
            note("window-not-known", "The book states no shot window to heat to.".to_string())
        })?;
        windows = Some(windows.map_or(own, |other| ShotWindow {
            low: if own.low > other.low { own.low } else { other.low },
            high: if own.high < other.high { own.high } else { other.high },
        }));
        let (specific_heat, names) = specific_heat(&cup.recipe.recipe, book)?;
        let load = Load::new(cup.mass, specific_heat, cup.vessel);
        loads.push(load.map_err(|error| because(&error))?);
        not_known.extend(names);
    }
    not_known.sort_unstable();
    not_known.dedup();
    let (Some(window), Some(Cup { first, .. })) = (windows, cups.first().copied()) else {
        return Err(because(&HeatError::Nothing));
    };
    if cups.iter().any(|cup| cup.first != first) {
        return Err(note(
            "heated-from-two-temperatures",
            "One of them is cold and another is not: they do not heat as one load.".to_string(),
        ));
    }
    let start = match (first, oven.reheat_from) {
        (true, _) => reference_temperature(),
        (false, Some(from)) => from,
        (false, None) => {
            return Err(note(
                "reheat-not-known",
                "How warm a pot goes back is not known: give the oven \"reheat_from\", or ask again with what the thermometer shows."
                    .to_string(),
            ));
        }
    };
    let told = || {
        let load = Load::together(&loads)?;
        let window = Window::around(window.low, window.high)?;
        let warmer = TemperatureInterval::new::<kelvin>(if first { WARM_ROOM } else { 0.0 });
        let precautions = Precautions { warmer, ..Precautions::default() };
        let bursts = oven.timed.bursts(load, start, window, precautions)?;
        Ok((bursts, oven.timed.time(load, start, window.aim())?, window.aim()))
    };
    let (bursts, straight, aim) = told().map_err(|error: HeatError| {
        let mut note = because(&error);
        if let (HeatError::OutOfReach { wanted, least, most }, [cup]) = (error, cups) {
            let volume = |mass: Mass| mass / cup.recipe.liquid;
            let wanted = text::volume(volume(wanted), system).text;
            let least = text::at_least_by_cup(volume(least / FARTHEST_REACH), system);
            let most = text::at_most_by_cup(volume(most * FARTHEST_REACH), system);
            note.message.push_str(&format!(" It fills {wanted}; from {least} to {most} would do."));
        }
        note
    })?;
    let setting = oven.timed.setting();
    Ok(Heating {
        setting: (setting < Ratio::from(1.0)).then(|| text::percent(setting)),
        from: text::temperature(start, system),
        aim: text::temperature(aim, system),
        total: text::time(bursts.total),
        uncertainty: straight.uncertainty.map(text::time),
        one_overshoots: bursts.one_overshoots,
        beyond: match bursts.reach {
            Reach::Within => None,
            Reach::Beyond { factor, .. } => Some(text::factor(factor)),
        },
        bursts: shown_bursts(&bursts, system),
        specific_heat_not_known: not_known,
    })
}

/// The bursts of a heating, shown.
pub(crate) fn shown_bursts(bursts: &Bursts, system: System) -> Vec<Burst> {
    let shown = bursts.bursts.iter().map(|burst| Burst {
        duration: text::time(burst.duration),
        only_below: text::at_most(burst.only_below, system),
        expected: text::temperature(burst.expected, system),
        at_most: text::temperature(burst.at_most, system),
    });
    shown.collect()
}

/// The specific heat of a recipe's mix, and the materials that do not state theirs.
fn specific_heat(
    recipe: &Recipe,
    book: &Book,
) -> Result<(SpecificHeatCapacity, Vec<String>), Note> {
    let mut parts = Vec::new();
    let mut not_known = Vec::new();
    let (mut all, mut known) = (0.0, 0.0);
    for ingredient in recipe.ingredients() {
        let Ok(material) = book.materials.get(ingredient.material) else { continue };
        all += ingredient.ratio;
        match &material.specific_heat {
            Some(specific_heat) => {
                known += ingredient.ratio;
                parts.push((Mass::from_si(ingredient.ratio), specific_heat.value));
            }
            None => not_known.push(material.name.clone()),
        }
    }
    if known < LEAST_KNOWN * all {
        let names = not_known.join(", ");
        return Err(note(
            "specific-heat-not-known",
            format!(
                "The specific heat of {names} is not known, and that is more than a tenth of the mix."
            ),
        ));
    }
    let mean = mix_specific_heat(&parts).map_err(|error| because(&error))?;
    Ok((mean, not_known))
}

/// What to ask about the timings of `oven`: which of them does not fit the others, or ends far above `most`,
/// where the window ends.
pub(crate) fn question(
    oven: &heat::Oven,
    most: ThermodynamicTemperature,
    system: System,
) -> Option<Note> {
    if let Some((place, end)) = oven.scorched(most) {
        let [end, most] = [end, most].map(|at| text::temperature(at, system).text);
        return Some(note(
            "timing-ends-too-hot",
            format!(
                "Timing {place} ends at {end}, far above the {most} where the window ends: check whether it is °F or °C."
            ),
        ));
    }
    oven.questioned().map(|found| {
        note(
            "timing-does-not-fit",
            format!(
                "Timing {} does not fit the others: it is {:.3} standard deviations from their mean, beyond {:.3}. Check it, or time such a pot again; it counts all the same.",
                found.place, found.distance.value, found.critical.value
            ),
        )
    })
}

/// What to ask about the oven's timings, where `pots` are heated by them.
pub(in crate::plan) fn questioned(book: &Book, pots: &[PotLayout<'_>]) -> Option<Note> {
    let windows = stages(pots).filter_map(|stage| stage.recipe.window);
    let most = windows.map(|window| window.high).reduce(|a, b| if b > a { b } else { a })?;
    question(&book.oven.as_ref()?.timed, most, book.system)
}

fn stages<'l, 'a>(pots: &'l [PotLayout<'a>]) -> impl Iterator<Item = &'l StageLayout<'a>> {
    pots.iter().flat_map(|pot| &pot.stages)
}

/// What the heating of `pots` had to assume.
pub(in crate::plan) fn assumed(pots: &[PotLayout<'_>]) -> Option<Note> {
    let known = stages(pots).filter_map(|stage| stage.heating.as_ref().and_then(Calculated::known));
    let mut names: Vec<&str> =
        known.flat_map(|heating| &heating.specific_heat_not_known).map(String::as_str).collect();
    names.sort_unstable();
    names.dedup();
    (!names.is_empty()).then(|| {
        let names = names.join(", ");
        note(
            "specific-heat-assumed",
            format!("Specific heat not known of {names}: taken as that of the rest of the pot."),
        )
    })
}

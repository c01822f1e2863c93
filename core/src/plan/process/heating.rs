//! How a pot is heated: the table of readings.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::note;
use crate::book::{Book, ShopOven};
use crate::codes::code;
use crate::material::ShotWindow;
use crate::mix::{MaterialId, reference_temperature};
use crate::plan::day::DayRecipe;
use crate::plan::layout::{Layout, PotLayout, WorkLayout};
use crate::plan::{Pot, weigh};
use crate::process::heat::{
    self, Gate, HeatError, Load, Reach, SpecificHeat, Window, mix_specific_heat,
};
use crate::quantity::{HeatCapacity, Mass, Ratio, System, ThermodynamicTemperature, Time};
use crate::show::{Calculated, Note, Shown, because, part, text};

/// Share of a mix, by mass, that must have a stated specific heat; the rest is taken to be like it.
/// Common practice, no source: between plasticizer and salt it differs by a factor of two, which for
/// a tenth of the mix is a twentieth of the time.
const LEAST_KNOWN: f64 = 0.9;

/// The code of cups that are not alike.
const UNLIKE: &str = "heat-unlike-cups";

/// The code of [`HeatError::TooFine`].
const TOO_FINE: &str = "heat-too-fine";

part! {
    /// A line of the table of readings: below this reading, run the oven for this time; then stir and read again.
    pub struct HeatBand {
        /// Upper end of the band; it begins where the band before ends.
        pub below: Shown<ThermodynamicTemperature>,
        /// Time that the oven runs.
        pub burst: Shown<Time>,
        /// The expected reading after it, from the top of the band.
        pub expected: Shown<ThermodynamicTemperature>,
        /// The hottest possible reading after it, from the top of the band.
        pub at_most: Shown<ThermodynamicTemperature>,
    }
}

part! {
    /// How a pot is heated, by the thermometer: every burst by the reading before it, the first one too.
    pub struct PlannedHeating {
        /// Setting of the oven, as a share of full power; none at full power.
        pub setting: Option<Shown<Ratio>>,
        /// Expected reading before it; none if not known, and the bursts are then those of a cold pot.
        pub from: Option<Shown<ThermodynamicTemperature>>,
        /// The temperature to aim for.
        pub aim: Shown<ThermodynamicTemperature>,
        /// The table, the coldest band first. The last band ends where shooting begins.
        pub bands: Vec<HeatBand>,
        /// Shoot from this reading on.
        pub shoot_from: Shown<ThermodynamicTemperature>,
        /// Shoot up to this reading; above it, stop and let the pot cool.
        pub shoot_to: Shown<ThermodynamicTemperature>,
        /// Number of bursts expected.
        pub bursts: u32,
        /// Total time that the oven is expected to run.
        pub total: Shown<Time>,
        /// Its standard uncertainty.
        pub uncertainty: Shown<Time>,
        /// Factor by which the amount is outside those that were timed.
        pub beyond: Option<Shown<Ratio>>,
        /// Whether nothing was timed: the times follow from the rated power alone.
        pub guess: bool,
        /// Materials whose specific heat the book does not state; assumed that of the rest.
        pub specific_heat_not_known: Vec<String>,
    }
}

/// A cup that is heated.
#[derive(Clone, Copy)]
pub(in crate::plan) struct Cup<'a> {
    pub(in crate::plan) recipe: &'a DayRecipe<'a>,
    /// Mass in it in the end.
    pub(in crate::plan) mass: Mass,
    /// The part of it that goes in hot, after heating.
    pub(in crate::plan) hot: &'a [(MaterialId, Mass)],
    /// Its own heat capacity.
    pub(in crate::plan) vessel: HeatCapacity,
    /// Whether it is heated for the first time, from the bench's 20 °C.
    pub(in crate::plan) first: bool,
}

/// How `cups` are heated: one, or several that are alike on one clock; `None` for cups that are not alike, which
/// are heated each on its own.
pub(in crate::plan) fn heating(
    book: &Book,
    cups: &[Cup<'_>],
) -> Option<Calculated<PlannedHeating>> {
    match heating_in(book.oven.as_ref()?, book, cups) {
        Err(note) if note.code == UNLIKE => None,
        heating => Some(heating.into()),
    }
}

/// How the pots of `layout` that are heated for `work` are heated as one load, if there are several.
pub(in crate::plan) fn heating_together(
    book: &Book,
    layout: &Layout<'_>,
    work: &WorkLayout<'_>,
) -> Option<Calculated<PlannedHeating>> {
    let mut heated = Vec::new();
    for from in work.from.iter().filter(|from| from.heated) {
        let pot = layout.pots.get(from.pot)?;
        let stage = pot.stages.get(from.stage)?;
        heated.push((pot, from.stage, stage, weigh::hot(&stage.weigh)));
    }
    let cups = heated.iter().map(|(pot, place, stage, hot)| pot.to_heat(*place, stage, hot));
    let cups: Vec<Cup<'_>> = cups.collect();
    if cups.len() > 1 { heating(book, &cups) } else { None }
}

/// The heating of cups in plain numbers, without texts.
struct Plain {
    /// Where it begins; none if not known.
    start: Option<ThermodynamicTemperature>,
    aim: ThermodynamicTemperature,
    /// All that is heated, before what goes in hot.
    load: Load,
    gate: Gate,
    specific_heat_not_known: Vec<String>,
}

fn heating_in(oven: &ShopOven, book: &Book, cups: &[Cup<'_>]) -> Result<PlannedHeating, Note> {
    let system = book.system;
    let Plain { start, aim, load, gate, specific_heat_not_known } = plain(oven, book, cups)?;
    let setting = oven.timed.setting();
    Ok(PlannedHeating {
        setting: (setting < Ratio::from(1.0)).then(|| text::percent(setting)),
        from: start.map(|start| text::temperature(start, system)),
        aim: text::temperature(aim, system),
        bands: shown_bands(&gate, system),
        shoot_from: text::temperature(gate.shoot_from, system),
        shoot_to: text::temperature(gate.shoot_to, system),
        bursts: gate.course.bursts,
        total: text::time(gate.course.total),
        uncertainty: text::time(gate.course.total * oven.timed.uncertainty(load)),
        beyond: shown_reach(oven.timed.reach(load)),
        guess: oven.timed.is_guess(),
        specific_heat_not_known,
    })
}

fn plain(oven: &ShopOven, book: &Book, cups: &[Cup<'_>]) -> Result<Plain, Note> {
    let mut windows: Option<ShotWindow> = None;
    // Before what goes in hot, and with all of it: the table must hold for both.
    let (mut before, mut with_all) = (Vec::new(), Vec::new());
    let mut not_known: Vec<String> = Vec::new();
    for cup in cups {
        let own = cup.recipe.window.ok_or_else(|| {
            note(
                code!("window-not-known"),
                "The book does not state the shot window to heat to.".to_string(),
            )
        })?;
        windows = Some(windows.map_or(own, |other| ShotWindow {
            low: if own.low > other.low { own.low } else { other.low },
            high: if own.high < other.high { own.high } else { other.high },
        }));
        for (loads, hot) in [(&mut before, cup.hot), (&mut with_all, &[])] {
            let (load, names) = load(cup, hot, book)?;
            loads.push(load);
            not_known.extend(names);
        }
    }
    not_known.sort_unstable();
    not_known.dedup();
    let (Some(window), Some(Cup { first, .. })) = (windows, cups.first().copied()) else {
        return Err(because(&HeatError::Nothing));
    };
    if cups.iter().any(|cup| cup.first != first) {
        return Err(note(
            code!("heat-unlike-cups"),
            "One of the pots is cold and another is not: heat each on its own.".to_string(),
        ));
    }
    let start = if first { Some(reference_temperature()) } else { oven.reheat_from };
    let calculated = || {
        let loads = [Load::together(&before)?, Load::together(&with_all)?];
        let window = Window::around(window.low, window.high)?;
        let cold = start.unwrap_or_else(reference_temperature);
        let gate = oven.timed.gate_through(&loads, cold, window, oven.precautions)?;
        let [load, _] = loads;
        Ok((load, window.aim(), gate))
    };
    let (load, aim, gate) = calculated().map_err(|error: HeatError| {
        let mut note = because(&error);
        if let (HeatError::TooFine { enough: Some(enough), .. }, [cup]) = (error, cups) {
            let enough = text::at_least_by_cup(enough / cup.recipe.liquid, book.system);
            note.message.push_str(&format!(" That is {enough}."));
        }
        note
    })?;
    Ok(Plain { start, aim, load, gate, specific_heat_not_known: not_known })
}

/// Action for a pot that cools below its window before its shots are made.
#[derive(Clone)]
pub(in crate::plan) struct Late {
    /// How long to heat at a time, then stir and read: what the table has just below the window. `None` if no burst is safe.
    pub(in crate::plan) burst: Option<Shown<Time>>,
    /// Before how many of the last shots too little is left for that: the shortest burst could carry it over the window.
    pub(in crate::plan) too_little: u32,
}

/// Action for a pot that cools below its window before one of `shots`, from `cup`, which each takes `per_shot` of;
/// `None` if the heating is not known. A burst that is safe for what is left is safe for more.
pub(in crate::plan) fn late(
    book: &Book,
    cup: &Cup<'_>,
    shots: u32,
    per_shot: Mass,
) -> Option<Late> {
    let oven = book.oven.as_ref()?;
    let before = |shot: u32| {
        let cup = Cup { mass: cup.mass - per_shot * f64::from(shot), ..*cup };
        if cup.mass <= Mass::default() {
            return Some(None);
        }
        match plain(oven, book, &[cup]) {
            Ok(Plain { gate, .. }) => Some(gate.bands.last().map(|band| band.burst)),
            Err(note) => (note.code == TOO_FINE).then_some(None),
        }
    };
    // Shots below `safe` can be reheated for, those from `lost` on cannot.
    let (mut safe, mut lost) = (0, shots);
    let mut burst = None;
    while safe < lost {
        let middle = safe.midpoint(lost);
        match before(middle)? {
            Some(found) => (burst, safe) = (Some(found), middle.saturating_add(1)),
            None => lost = middle,
        }
    }
    Some(Late { burst: burst.map(text::oven_time), too_little: shots.saturating_sub(safe) })
}

/// The bands of a table of readings, shown.
pub(crate) fn shown_bands(gate: &Gate, system: System) -> Vec<HeatBand> {
    let shown = gate.bands.iter().map(|band| HeatBand {
        below: text::temperature(band.below, system),
        burst: text::oven_time(band.burst),
        expected: text::temperature(band.expected, system),
        at_most: text::temperature(band.hottest, system),
    });
    shown.collect()
}

/// How far an amount is outside those that were timed, shown.
pub(crate) fn shown_reach(reach: Reach) -> Option<Shown<Ratio>> {
    match reach {
        Reach::Within => None,
        Reach::Beyond { factor, .. } => Some(text::factor(factor)),
    }
}

/// Contents of `cup` without those that still go in `hot`, and the materials that do not state their specific heat.
fn load(
    cup: &Cup<'_>,
    hot: &[(MaterialId, Mass)],
    book: &Book,
) -> Result<(Load, Vec<String>), Note> {
    let (recipe, mut parts) = (&cup.recipe.recipe, Vec::new());
    let total = recipe.total_per_base();
    let mut mass = Mass::default();
    for ingredient in recipe.ingredients() {
        let to_come = hot.iter().filter(|(material, _)| *material == ingredient.material);
        let to_come = to_come.fold(Mass::default(), |sum, (_, mass)| sum + *mass);
        // What goes in is all that the mix then holds of it, but for rounding.
        let part = cup.mass * (ingredient.ratio / total) - to_come;
        if part > Mass::default() {
            mass += part;
            parts.push((ingredient.material, part));
        }
    }
    let (specific_heat, not_known) = specific_heat(&parts, book)?;
    let load = Load::new(mass, specific_heat, cup.vessel);
    Ok((load.map_err(|error| because(&error))?, not_known))
}

/// The specific heat of a mix, and the materials that do not state theirs.
fn specific_heat(
    mix: &[(MaterialId, Mass)],
    book: &Book,
) -> Result<(SpecificHeat, Vec<String>), Note> {
    let mut parts = Vec::new();
    let mut not_known = Vec::new();
    let (mut all, mut known) = (Mass::default(), Mass::default());
    for &(material, mass) in mix {
        let Ok(material) = book.materials.get(material) else { continue };
        all += mass;
        match material.specific_heat_line() {
            Some(specific_heat) => {
                known += mass;
                parts.push((mass, specific_heat));
            }
            None => not_known.push(material.name.clone()),
        }
    }
    if known < all * LEAST_KNOWN {
        let names = not_known.join(", ");
        return Err(note(
            code!("specific-heat-not-known"),
            format!(
                "The book does not state the specific heat of {names}, more than a tenth of the mix."
            ),
        ));
    }
    let mean = mix_specific_heat(&parts).map_err(|error| because(&error))?;
    Ok((mean, not_known))
}

/// Question about the timings of `oven`: which of them does not fit the others, or ends far above `most`,
/// where the window ends.
pub(crate) fn question(
    oven: &heat::Oven,
    most: ThermodynamicTemperature,
    system: System,
) -> Option<Note> {
    if let Some((place, end)) = oven.scorched(most) {
        let end = text::temperature(end, system).on_both_scales();
        let most = text::temperature(most, system).text;
        return Some(note(
            code!("timing-ends-too-hot"),
            format!(
                "Timing {place} ends at {end}, far above the {most} where the window ends: check whether it is °F or °C."
            ),
        ));
    }
    oven.questioned().map(|found| {
        let [took, expected] = [found.took, found.expected].map(|time| text::time(time).text);
        note(
            code!("timing-does-not-fit"),
            format!(
                "Timing {} does not fit the others: it took {took}, they give {expected}. Check it, or time that pot again. Until then it counts like the others.",
                found.place
            ),
        )
    })
}

/// Question about the oven's timings, if `pots` are heated by them.
pub(in crate::plan) fn questioned(book: &Book, pots: &[PotLayout<'_>]) -> Option<Note> {
    let stages = pots.iter().flat_map(|pot| &pot.stages);
    let windows = stages.filter_map(|stage| stage.recipe.window);
    let most = windows.map(|window| window.high).reduce(|a, b| if b > a { b } else { a })?;
    question(&book.oven.as_ref()?.timed, most, book.system)
}

/// Assumptions of the heating of `pots`.
pub(in crate::plan) fn assumed(pots: &[Pot]) -> Option<Note> {
    let stages = pots.iter().flat_map(|pot| &pot.stages);
    let known = stages.filter_map(|stage| stage.heating.as_ref().and_then(Calculated::known));
    let mut names: Vec<&str> =
        known.flat_map(|heating| &heating.specific_heat_not_known).map(String::as_str).collect();
    names.sort_unstable();
    names.dedup();
    (!names.is_empty()).then(|| {
        let names = names.join(", ");
        note(
            code!("specific-heat-assumed"),
            format!(
                "{names}: the book states no specific heat; assumed that of the rest of the pot."
            ),
        )
    })
}

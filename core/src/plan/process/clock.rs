//! The clock of a pot: how many heats the shots of a stage take, and where its reheats are.
//!
//! The shots of a stage are made one after the other in one heat, but each laminated piece has a heat of its own: its
//! pots are hot at once for it. Where the pot has fallen out of its window before all of them are made, it is
//! heated again ([`crate::process::clock`]). What has set in the injector goes back into the pot for that.

use alloc::format;
use alloc::string::ToString;
use alloc::vec::Vec;

use super::heating::{Cup, heating};
use super::note;
use crate::book::{Book, Mold};
use crate::codes::code;
use crate::material::ShotWindow;
use crate::plan::day::DayRecipe;
use crate::plan::layout::{HeatLayout, PotLayout};
use crate::plan::pot::DrawDraft;
use crate::plan::{PlannedHeating, Pot};
use crate::process::clock::{self, Hot, ShotSeries};
use crate::process::shot_cooling::{Diffusivity, Point, ShotCooling};
use crate::quantity::{Mass, Measurable, Time};
use crate::show::{Calculated, Note, Shown, because, part, text};

part! {
    /// One heat of a stage: from the oven to the oven.
    pub struct StageHeat {
        /// Shots of the stage made before it.
        pub after: u32,
        /// Shots made in it.
        pub shots: u32,
        /// Mass in the pot when it begins.
        pub holds: Shown<Mass>,
        /// From the last burst to the last shot.
        pub lasts: Shown<Time>,
        /// Table of readings of a reheat, for what is then in the pot; the first heat has that of the stage.
        pub heating: Option<Calculated<PlannedHeating>>,
    }
}

/// Heats of a stage that begins with `mass` in the pot, for these `draws`; `None` if the book states no oven.
pub(in crate::plan) fn clock(
    book: &Book,
    recipe: &DayRecipe<'_>,
    mass: Mass,
    draws: &[DrawDraft<'_>],
) -> Option<Result<Vec<HeatLayout>, Note>> {
    book.oven.as_ref()?;
    let heats = || {
        let hot = hot(book, recipe)?;
        let mut all = Vec::new();
        let (mut after, mut mass) = (0_u32, mass);
        for session in sessions(draws) {
            let runs = runs(book, recipe, session)?;
            let heats = clock::heats(mass, &runs, &hot).map_err(|error| because(&error))?;
            all.extend(heats.into_iter().map(|heat| HeatLayout {
                after: after.saturating_add(heat.after),
                shots: heat.shots,
                holds: heat.mass,
                lasts: heat.lasts,
            }));
            for run in runs {
                after = after.saturating_add(run.shots);
                mass -= run.takes * f64::from(run.shots);
            }
        }
        Ok(all)
    };
    Some(heats())
}

/// The heats of a stage that `cup` is first heated for, with the tables of its reheats.
pub(in crate::plan) fn stage_heats(
    book: &Book,
    cup: &Cup<'_>,
    clock: &Result<Vec<HeatLayout>, Note>,
) -> Calculated<Vec<StageHeat>> {
    let heats = clock.as_ref().map_err(Note::clone);
    Calculated::from(heats.map(|heats| {
        let shown = heats.iter().enumerate().map(|(place, heat)| {
            let again = Cup { mass: heat.holds, hot: &[], first: false, ..*cup };
            StageHeat {
                after: heat.after,
                shots: heat.shots,
                holds: text::mass(heat.holds),
                lasts: text::time(heat.lasts),
                heating: if place == 0 { None } else { heating(book, &[again]) },
            }
        });
        shown.collect()
    }))
}

/// The draws that are shot in one heat, if it lasts: plain ones go with the one before them.
fn sessions<'d, 'a>(draws: &'d [DrawDraft<'a>]) -> impl Iterator<Item = &'d [DrawDraft<'a>]> {
    draws.chunk_by(|_, next| !next.of.batch.is_laminated())
}

/// How long a pot stays hot: the shop's own time wins.
///
/// # Errors
/// A note if that is not known.
pub(in crate::plan) fn hot(book: &Book, recipe: &DayRecipe<'_>) -> Result<Hot, Note> {
    let oven = book.oven.as_ref();
    let hot = match (oven.and_then(|oven| oven.hot_for), oven, recipe.window) {
        (Some(hot_for), ..) => Ok(Hot::Stated(hot_for)),
        (None, Some(oven), Some(window)) => {
            let (from, to) = (window.middle(), window.low);
            let cooling = oven.cools.ok_or_else(hot_not_known)?;
            Ok(Hot::Watched { cooling, room: oven.room, from, to })
        }
        _ => Err(hot_not_known()),
    }?;
    // A fault in the cooling shows at any mass.
    hot.lasts(Mass::from_si(1.0)).map_err(|error| because(&error))?;
    Ok(hot)
}

pub(super) fn hot_not_known() -> Note {
    note(
        code!("hot-time-not-known"),
        "The book does not state how long a pot stays hot. Add \"hot_for\" to the oven, or watch a pot cool and add \"cools\"."
            .to_string(),
    )
}

fn runs(
    book: &Book,
    recipe: &DayRecipe<'_>,
    draws: &[DrawDraft<'_>],
) -> Result<Vec<ShotSeries>, Note> {
    let run = |draw: &DrawDraft<'_>| {
        let mold = draw.of.batch.mold;
        let every = every(book, mold, recipe.window, draw.of.fill())?;
        Ok(ShotSeries { shots: draw.shots, every, takes: draw.layer.mass.fill })
    };
    draws.iter().map(run).collect()
}

/// How often a `shot` from the `window` into `mold` can be made.
pub(in crate::plan) fn every(
    book: &Book,
    mold: &Mold,
    window: Option<ShotWindow>,
    shot: Mass,
) -> Result<Time, Note> {
    let costing = book.costing.as_ref().and_then(|costing| costing.work.as_ref());
    let hands = mold.per_shot.or_else(|| costing.map(|work| work.per_shot)).ok_or_else(|| {
        note(
            code!("shot-time-not-known"),
            format!(
                "The book does not state how long a shot of {} takes. Add \"per_shot\" to the mold.",
                mold.name
            ),
        )
    })?;
    let sets = sets(mold, window, shot)?.unwrap_or_default();
    clock::every(hands, sets, mold.count).map_err(|error| because(&error))
}

/// How long a `shot` sets in `mold`: as the shop has seen it, else by its thickness; `None` if neither is stated.
fn sets(mold: &Mold, window: Option<ShotWindow>, shot: Mass) -> Result<Option<Time>, Note> {
    let (None, Some(cooling), Some(window)) = (mold.sets, &mold.cooling, window) else {
        return Ok(mold.sets);
    };
    let calculated = || {
        let of = ShotCooling {
            section: cooling.section,
            point: Point::Center,
            diffusivity: Diffusivity::default(),
            shot: window.middle(),
            take_out: cooling.take_out,
        };
        let warm = match cooling.heat_capacity {
            Some(capacity) => {
                cooling.at
                    + of.warms(shot * crate::process::shot_cooling::specific_heat(), capacity)?
            }
            None => cooling.at,
        };
        of.in_mold(warm)
    };
    calculated().map(|setting| Some(setting.time)).map_err(|error| {
        let mut note = because(&error);
        note.message = format!("{}: {}", mold.name, note.message);
        note
    })
}

/// Warning that a pot takes more heats than the book allows, and what would help.
pub(in crate::plan) fn too_many_heats(book: &Book, pot: &Pot) -> Option<Note> {
    let (allowed, count) = (book.limits.heats?, pot.heats.in_all.unwrap_or(pot.heats.count));
    (count > allowed).then(|| {
        note(
            code!("too-many-heats"),
            format!(
                "Pot {} takes {count} heats, reheats and those of its leftovers included; the book allows {allowed}. What would help: fewer pieces in it, more molds in turn, a pot that stays hot longer, or no leftover in it.",
                pot.pot
            ),
        )
    })
}

/// Assumptions of the clock of `pots`: that a shot sets within the time at hand, and, where no heats could be counted,
/// that there are no reheats.
pub(in crate::plan) fn clock_notes(pots: &[PotLayout<'_>]) -> Vec<Note> {
    let stages = || pots.iter().flat_map(|pot| &pot.stages);
    let mut notes: Vec<Note> = Vec::new();
    for stage in stages() {
        if let Some(Err(why)) = &stage.clock {
            let message = format!("Reheats between shots are not counted. {}", why.message);
            let note = Note { code: why.code.clone(), message };
            if !notes.contains(&note) {
                notes.push(note);
            }
        }
    }
    let counted = stages().filter(|stage| stage.clock.as_ref().is_some_and(Result::is_ok));
    let molds = counted.flat_map(|stage| &stage.draws).map(|draw| draw.of.batch.mold);
    let open = molds.filter(|mold| mold.sets.is_none() && mold.cooling.is_none());
    let mut names: Vec<&str> = open.map(|mold| mold.name.as_str()).collect();
    names.sort_unstable();
    names.dedup();
    if !names.is_empty() {
        notes.push(note(
            code!("setting-not-known"),
            format!(
                "{}: the book does not state how long a shot sets. Assumed: no longer than the time at hand for it. Add \"sets\" or \"cooling\" to the mold.",
                names.join(", ")
            ),
        ));
    }
    notes
}

//! Notes on a plan, in words.

use alloc::format;
use alloc::rc::Rc;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use crate::book::{Book, Mold};
use crate::caution::Caution;
use crate::codes::code;
use crate::material::Kind;
use crate::mix::{Assumption, Materials};
use crate::plan::day::{DayRecipe, FEED_NOT_KNOWN};
use crate::plan::layout::{Layout, ShelfUse, TakenApart};
use crate::plan::pot::{OffMark, OffMarks, Raised, Shots, WhyRaised};
use crate::quantity::System;
use crate::show::{Note, text};

/// Pots that were taken apart.
pub(super) fn taken_apart(apart: &TakenApart<'_>) -> Note {
    let names: Vec<String> = apart.recipes.iter().map(|recipe| recipe.name()).collect();
    let error = &apart.error;
    Note {
        code: code!("pot-taken-apart").to_string(),
        message: format!(
            "{} could share a pot, but the bench cannot measure what goes in between: {error}",
            names.join(" and then ")
        ),
    }
}

/// Why a pot is more than its orders need.
pub(super) fn raised(letter: &str, raised: &Raised) -> Note {
    let why = match &raised.why {
        WhyRaised::Oven => "less would not heat evenly".to_string(),
        WhyRaised::Dosing { material, tolerance } => format!(
            "less cannot get its \"{material}\" to {} with the tools of the bench",
            text::percent((*tolerance).into()).text
        ),
    };
    Note {
        code: code!("pot-raised").to_string(),
        message: format!(
            "Pot {letter} is {} where its orders need {}: {why}.",
            text::mass(raised.mix).text,
            text::mass(raised.need).text
        ),
    }
}

/// How the base of a pot is measured, where that is not up to a mark.
pub(super) fn off_marks(letter: &str, off: &OffMarks, system: System) -> Note {
    let how = match off.how {
        OffMark::MarkBelow => {
            "measure its base to the mark below, fresh base makes up for it later".to_string()
        }
        OffMark::Weighed => "weigh its base".to_string(),
        OffMark::Spoons => "measure its base with cup and spoons".to_string(),
        OffMark::Between { off } => {
            let off = text::volume(off, system).text;
            format!("fill its base between two marks, sure to some {off} (a scale would be surer)")
        }
    };
    let why = off.next.map_or_else(
        || "no mark is high enough".to_string(),
        |(next, step)| {
            let next = text::mark(next, step, system);
            format!("up to the next mark, {next}, it would overfill the cup")
        },
    );
    Note {
        code: code!("base-off-marks").to_string(),
        message: format!("Pot {letter}: {how}; {why}."),
    }
}

/// Pots that cannot take from the shelf.
pub(super) fn shelf_not_used<'l>(layout: &'l Layout<'_>) -> impl Iterator<Item = Note> + 'l {
    let pots = layout.pots.iter().enumerate();
    let without = pots.filter(|(_, pot)| matches!(pot.from_shelf, ShelfUse::NotMeasured));
    without.map(|(pot, _)| Note {
        code: code!("shelf-not-used").to_string(),
        message: format!(
            "Pot {} takes nothing from the shelf: the bench could not measure what it then still needs.",
            layout.letter(pot)
        ),
    })
}

/// Assumptions of the day's recipes: one note a kind, with the materials it concerns.
pub(super) fn assumed(recipes: &[Rc<DayRecipe<'_>>], materials: &Materials) -> Vec<Note> {
    let mut all: Vec<Assumption> =
        recipes.iter().flat_map(|recipe| recipe.assumptions.iter().copied()).collect();
    all.sort_unstable();
    all.dedup();
    let kinds = all.chunk_by(|a, b| core::mem::discriminant(a) == core::mem::discriminant(b));
    kinds.filter_map(|kind| assumption_note(kind, materials)).collect()
}

/// The molds whose feed share the book does not state.
pub(super) fn feed_not_known(shots: &[Shots<'_>]) -> Option<Note> {
    let molds = shots.iter().map(|of| (of.batch.mold_number, of.batch.mold));
    let mut molds: Vec<(usize, &Mold)> = molds.filter(|(_, mold)| mold.feed.is_none()).collect();
    molds.sort_unstable_by_key(|(number, _)| *number);
    molds.dedup_by_key(|(number, _)| *number);
    let names: Vec<&str> = molds.iter().map(|(_, mold)| mold.name.as_str()).collect();
    let share = text::percent(FEED_NOT_KNOWN.into()).text;
    (!names.is_empty()).then(|| Note {
        code: code!("feed-not-known").to_string(),
        message: format!(
            "No feed share stated for {}: assumed {share}; the range holds either way. Weigh ten pieces to measure it.",
            names.join(", ")
        ),
    })
}

fn assumption_note(assumptions: &[Assumption], materials: &Materials) -> Option<Note> {
    let names: Vec<&str> = assumptions
        .iter()
        .filter_map(|assumption| materials.get(assumption.material()).ok())
        .map(|material| material.name.as_str())
        .collect();
    let names = names.join(", ");
    let (code, message) = match assumptions.first()? {
        Assumption::FusedAsLiquid(_) => (
            code!("fused-as-liquid"),
            format!("Fused density not known of {names}: pieces are weighed with the liquid one."),
        ),
        Assumption::NoExpansion(_) => (
            code!("no-expansion"),
            format!(
                "No expansion stated for {names}: assumed none, which makes shots a little heavy."
            ),
        ),
        Assumption::NoShotWindow(_) => (
            code!("no-shot-window"),
            format!(
                "No shot window stated for {names}: shots are calculated at 20 °C, which makes them a little heavy."
            ),
        ),
    };
    Some(Note { code: code.to_string(), message })
}

/// The cautions that the day's pots call for.
pub(super) fn cautions(layout: &Layout<'_>, book: &Book) -> Vec<Caution> {
    let mut stages = layout.pots.iter().flat_map(|pot| &pot.stages);
    let salted = stages.any(|stage| stage.recipe.holds(Kind::Salt, &book.materials));
    let mut cautions = Vec::from([Caution::HotPlastisol, Caution::Fumes, Caution::Water]);
    if salted {
        cautions.push(Caution::DampSalt);
    }
    cautions.extend([Caution::Vacuum, Caution::FoodGear, Caution::DataSheet]);
    cautions
}

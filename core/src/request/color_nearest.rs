//! The formulas of a book that are nearest to a color.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::color::{ShownDifference, ShownLab, ShownThrough};
use super::color_book::{BookColors, film, outside, thickness};
use super::{Open, request, response};
use crate::book::Book;
use crate::color::next_drop::THE_EYE_DECIDES;
use crate::color::pot::{ColorPot, Expected};
use crate::color::reading::Reading;
use crate::color::translucent::Backing;
use crate::document::book::BookDocument;
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::formula::{Formula, Overlap};
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::quantity::{Length, Mass, Measurable, Ratio};
use crate::show::Note;

request! {
    /// Asks which formulas of the book are nearest to a color.
    pub struct ColorNearestRequest {
        required {
            color: ColorEntry,
        }
        optional {
            book: BookDocument,
            piece_thickness: Written<Length>,
            piece_mold: Name,
        }
    }
}

response! {
    /// Formulas by how near they are.
    pub struct ColorNearestResponse {
        /// How far to trust it, in words.
        pub statement: String,
        /// Formulas of known color, the nearest first.
        pub formulas: Vec<NearFormula>,
        /// Formulas of which no color is known, each with the reason.
        pub not_known: Vec<FormulaNotKnown>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// A formula and how near it is.
    pub struct NearFormula {
        /// Which.
        pub formula: String,
        /// Its color.
        pub color: ShownLab,
        /// Whether a piece of it was seen; otherwise its color is calculated from test pieces.
        pub was_seen: bool,
        /// Its difference.
        pub difference: ShownDifference,
        /// Its color as a piece that light goes through, if a thickness was stated and it can be calculated.
        pub through: Option<ShownThrough>,
        /// What to know of it.
        pub notes: Vec<Note>,
    }
}

response! {
    /// A formula of which no color is known.
    pub struct FormulaNotKnown {
        /// Which.
        pub formula: String,
        /// Why, and what would do.
        pub why: String,
    }
}

impl ColorNearestRequest {
    /// Compares all formulas that dose a colorant, or whose color was seen.
    ///
    /// # Errors
    /// Faults of the book and of the color.
    pub fn answer(mut self, open: Open<'_>) -> Result<ColorNearestResponse, Faults> {
        let book = open.book(self.book.take())?;
        let book = book.ready();
        let mut resolver = Resolver::new(book.system);
        let color = self.color.read_at(&At("/color"), &mut resolver);
        let thickness =
            thickness(self.piece_thickness.as_ref(), self.piece_mold.as_ref(), book, &mut resolver);
        let asked = color.zip(thickness);
        let response = asked.map(|(color, thickness)| response(&color.reading, book, thickness));
        resolver.finish(response)
    }
}

fn response(color: &Reading, book: &Book, thickness: Option<Length>) -> ColorNearestResponse {
    let (mut formulas, mut not_known) = (Vec::new(), Vec::new());
    for formula in &book.formulas {
        match near(color, formula, book, thickness) {
            Ok(Some(near)) => formulas.push(near),
            Ok(None) => {}
            Err(why) => not_known.push(FormulaNotKnown { formula: formula.name.clone(), why }),
        }
    }
    formulas
        .sort_by(|one, other| one.difference.difference.total_cmp(&other.difference.difference));
    let mut text: Vec<String> = formulas
        .iter()
        .map(|near| {
            let how = if near.was_seen { "as seen" } else { "as calculated" };
            let through =
                near.through.as_ref().map(|it| format!(" {}", it.text())).unwrap_or_default();
            format!("{} ({how}): {}.{through}", near.formula, near.difference.text())
        })
        .collect();
    text.push(THE_EYE_DECIDES.to_string());
    ColorNearestResponse { statement: THE_EYE_DECIDES.to_string(), formulas, not_known, text }
}

/// How near a formula is; `None` if it has no color, or why that is not known.
fn near(
    color: &Reading,
    formula: &Formula,
    book: &Book,
    thickness: Option<Length>,
) -> Result<Option<NearFormula>, String> {
    if let Some(seen) = &formula.color {
        let seen = Calculated { expected: Expected::of(seen), through: None, notes: Vec::new() };
        // What was seen needs no calculation; how it looks over other backings does.
        let through = thickness.and_then(|_| {
            calculated(formula, book, thickness, &mut Resolver::new(book.system))?.through
        });
        return Ok(Some(shown(formula, Calculated { through, ..seen }, true, color)));
    }
    let is_colorant = |dose: &crate::formula::Dose| {
        book.materials.get(dose.material).is_ok_and(|it| it.kind == crate::material::Kind::Colorant)
    };
    if !formula.doses.iter().any(is_colorant) {
        return Ok(None);
    }
    let mut resolver = Resolver::new(book.system);
    let expected = calculated(formula, book, thickness, &mut resolver);
    match (expected, resolver.faults.first()) {
        (Some(found), None) => Ok(Some(shown(formula, found, false, color))),
        (_, Some(fault)) => Err(format!("{} {}", fault.message, fault.help)),
        (None, None) => Err("Its color is not known.".into()),
    }
}

/// The color of a formula as it is calculated.
struct Calculated {
    expected: Expected,
    through: Option<ShownThrough>,
    notes: Vec<Note>,
}

fn calculated(
    formula: &Formula,
    book: &Book,
    thickness: Option<Length>,
    resolver: &mut Resolver,
) -> Option<Calculated> {
    let path = At("/formulas");
    let path = path.key(&formula.name);
    let recipe = resolver.keep(&path, book.combined(&[formula], Overlap::Refuse))?;
    let mix = resolver.keep(&path, recipe.for_base(Mass::from_si(1.0)))?;
    let colors = BookColors::of(&mix, book, &path, resolver)?;
    let mut pot = resolver.keep(&path, ColorPot::new(&colors.colorants, &colors.strengths))?;
    for (colorant, dose) in colors.doses(&mix, book)?.into_iter().enumerate() {
        resolver.keep(&path, pot.add(colorant, dose, Ratio::from(0.0)))?;
    }
    let expected = resolver.keep(&path, pot.expected())?;
    let mut notes = outside(&mix, book, thickness);
    let through = thickness.and_then(|thickness| {
        // A base that says nothing of it takes nothing from what is known.
        let mut own = Resolver::new(book.system);
        let film = film(&mix, book, &path, &mut own);
        for fault in &own.faults {
            let message = format!("{} {}", fault.message, fault.help);
            notes.push(Note { code: fault.code.to_string(), message });
        }
        let film = film?;
        let over = |backing| pot.expected_over(&film, thickness, backing).ok();
        Some(ShownThrough::of(thickness, &over(Backing::White)?, &over(Backing::Black)?))
    });
    Some(Calculated { expected, through, notes })
}

fn shown(formula: &Formula, found: Calculated, was_seen: bool, color: &Reading) -> NearFormula {
    let Calculated { expected, through, notes } = found;
    NearFormula {
        formula: formula.name.clone(),
        color: expected.lab.into(),
        was_seen,
        difference: ShownDifference::from(&expected.difference(color)),
        through,
        notes,
    }
}

#[cfg(test)]
mod tests;

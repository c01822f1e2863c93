//! Which test pieces of a colorant to pour.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::color_book::{Measure, drops};
use super::{Open, request, response};
use crate::book::Book;
use crate::codes::code;
use crate::color::next_drop::THE_EYE_DECIDES;
use crate::document::book::BookDocument;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::formula::Overlap;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::material::Kind;
use crate::mix::MaterialId;
use crate::parameter::Parameter;
use crate::quantity::{Amount, Mass, Ratio};
use crate::show::{Shown, text};

request! {
    /// Asks which test pieces of a colorant to pour, so that colors can be calculated with it.
    pub struct LetDownSeriesRequest {
        required {
            colorant: Name,
        }
        optional {
            book: BookDocument,
            test_piece: Written<Mass>,
        }
    }
}

response! {
    /// Test pieces to pour.
    pub struct LetDownSeriesResponse {
        /// How far to trust it, in words.
        pub statement: String,
        /// The pieces, the base alone first.
        pub pieces: Vec<TestPieceToPour>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// A test piece to pour.
    pub struct TestPieceToPour {
        /// Drops of the colorant; none in the base alone.
        pub dose: Option<Amount>,
        /// Base to weigh for it.
        pub base_mass: Shown<Mass>,
        /// Mass of colorant per mass of base.
        pub ratio: Shown<Ratio>,
        /// Standard uncertainty of that by the count of drops and the scale.
        pub uncertainty: Shown<Ratio>,
    }
}

/// The strong test piece where no formula doses the colorant (common practice, no source).
const USUAL_DOSE: f64 = 0.01;

/// The weak piece has this share of the strong one's dose.
const WEAK: f64 = 0.25;

impl LetDownSeriesRequest {
    /// Takes the largest dose of the book's formulas, and a quarter of it, in so little base as the bench can dose within
    /// tolerance.
    ///
    /// # Errors
    /// Faults of the book; a material that is no colorant; a drop of unknown mass.
    pub fn answer(mut self, open: Open<'_>) -> Result<LetDownSeriesResponse, Faults> {
        let book = open.book(self.book.take())?;
        let book = book.ready();
        let mut resolver = Resolver::new(book.system);
        let response = self.response(book, &mut resolver);
        resolver.finish(response)
    }

    fn response(&self, book: &Book, resolver: &mut Resolver) -> Option<LetDownSeriesResponse> {
        let path = At("/colorant");
        let least = resolver.or_default(Parameter::TestPiece, self.test_piece.as_ref());
        let id = resolver.find_material(&book.materials, &self.colorant, &path)?;
        let material = resolver.keep(&path, book.materials.get(id))?;
        if material.kind != Kind::Colorant {
            resolver.fault(
                code!("color-no-colorant"),
                &path,
                &format_args!("\"{}\" is a {}.", material.name, material.kind),
                &"Name a colorant: pearl, flake and salt are outside the model of the color.",
            );
            return None;
        }
        let measure = Measure::of(id, book);
        if measure.is_none() {
            // A drop of it says what is missing; a powder with its density lacks a spoon.
            let drop = material.mass_of(&drops(1)?, book.system, "test pieces");
            if material.by_volume("test pieces").is_err() {
                resolver.keep(&path, drop);
            } else {
                resolver.fault(
                    code!("color-no-measure"),
                    &path,
                    &format_args!(
                        "\"{}\" is dosed by spoon, and the bench has none.",
                        material.name
                    ),
                    &"Give the bench its \"spoons\", or weigh the doses of its test pieces.",
                );
            }
        }
        let measure = measure?;
        let one = measure.mass;
        let least = least?;
        let strong = strongest(id, book).unwrap_or(USUAL_DOSE);
        let tolerance = material.tolerance.unwrap_or(book.limits.tolerance);
        let unit = measure.unit(least);
        let mut pieces = Vec::from([TestPieceToPour {
            dose: None,
            base_mass: text::mass(least),
            ratio: text::fine_percent(Ratio::from(0.0)),
            uncertainty: text::percent(Ratio::from(0.0)),
        }]);
        for dose in [WEAK * strong, strong] {
            // So many that the scatter of the count is within tolerance, and that the dish is filled. Of spoons more are no
            // surer.
            let off = unit.scatter.value / tolerance;
            let for_scatter = if unit.together { 1.0 } else { libm::ceil(off * off) };
            let for_dish = libm::ceil(dose * least.value / one.value);
            let count = for_scatter.max(for_dish).clamp(1.0, 1e4);
            let base = one * (count / dose);
            let uncertainty = unit.uncertainty(count) / (unit.dose * count);
            pieces.push(TestPieceToPour {
                // Whole and in range: nothing is cut off.
                dose: measure.amount(count as u32),
                base_mass: text::mass(base),
                ratio: text::fine_percent(Ratio::from(dose)),
                uncertainty: text::percent(uncertainty),
            });
        }
        let text = lines(&self.colorant.0, &pieces);
        Some(LetDownSeriesResponse { statement: THE_EYE_DECIDES.to_string(), pieces, text })
    }
}

/// The largest dose of the formulas, per base.
fn strongest(id: MaterialId, book: &Book) -> Option<f64> {
    let mut most: Option<f64> = None;
    for formula in &book.formulas {
        let Ok(recipe) = book.combined(&[formula], Overlap::Refuse) else { continue };
        let own = recipe.additives().iter().filter(|part| part.material == id);
        for ratio in own.map(|part| part.ratio).filter(|ratio| *ratio > 0.0) {
            most = Some(most.map_or(ratio, |most: f64| most.max(ratio)));
        }
    }
    most
}

fn lines(colorant: &str, pieces: &[TestPieceToPour]) -> Vec<String> {
    let mut lines = Vec::new();
    for piece in pieces {
        lines.push(match &piece.dose {
            None => {
                format!("{} of base alone, if the book has no color of it.", piece.base_mass.text)
            }
            Some(dose) => format!(
                "{dose} of {colorant} in {} of base (± {}).",
                piece.base_mass.text, piece.uncertainty.text
            ),
        });
    }
    lines.push(
        "Heat each as a pot, pour it into a dish so deep that nothing shows through, cool it, and take three pictures with the card.".into(),
    );
    lines.push(THE_EYE_DECIDES.to_string());
    lines
}

#[cfg(test)]
mod tests;

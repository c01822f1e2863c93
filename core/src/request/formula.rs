//! Masses of formulas for an amount of base or of finished mix.

use alloc::string::String;
use alloc::vec::Vec;

use super::{Open, request, response};
use crate::book::Book;
use crate::codes::code;
use crate::document::book::BookDocument;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::formula::{Formula, Overlap, Recipe};
use crate::json::path::Path::{self, At};
use crate::json::reader::Name;
use crate::mix::{Mix, MixError, Phase};
use crate::quantity::{Amount, Dimension, Mass, MassDensity, Ratio, Volume};
use crate::show::{Shown, text};

request! {
    /// Asks for the recipe of one or more formulas, for an amount of base or of finished mix.
    pub struct FormulaRequest {
        required {
            formulas: Vec<Name>,
        }
        optional {
            book: BookDocument,
            overlap: Overlap,
            base_amount: Amount,
            finished_amount: Amount,
        }
    }
}

response! {
    /// A recipe and the mix that it makes.
    pub struct FormulaResponse {
        /// Materials to mix.
        pub parts: Vec<RecipePart>,
        /// Mass of the mix.
        pub mass: Shown<Mass>,
        /// Its volume cold and liquid.
        pub volume: Shown<Volume>,
        /// Density of the finished plastic at 20 °C.
        pub density: Shown<MassDensity>,
    }
}

response! {
    /// One material of a recipe.
    pub struct RecipePart {
        /// Which.
        pub material: String,
        /// Mass per mass of base; of the base itself, its share.
        pub ratio: f64,
        /// How much of it.
        pub mass: Shown<Mass>,
        /// Its share of the finished mass.
        pub of_finished: Shown<Ratio>,
    }
}

impl FormulaRequest {
    /// Combines the formulas and scales them; for 1 of base where no amount is given, the mass
    /// of the first formula's `per`.
    ///
    /// # Errors
    /// Faults of the book, unknown formulas, a recipe that cannot be had, two amounts at once.
    pub fn answer(mut self, open: Open<'_>) -> Result<FormulaResponse, Faults> {
        let loaded = open.book(self.book.take())?;
        let book = loaded.ready();
        let mut resolver = Resolver::new(book.system);
        let wanted = Wanted {
            formulas: &self.formulas,
            overlap: self.overlap,
            base: self.base_amount,
            finished: self.finished_amount,
        };
        let response = wanted.mix(book, &mut resolver).and_then(|(recipe, mix)| {
            let response = describe(&recipe, &mix, book);
            resolver.keep(&Path::ROOT, response)
        });
        resolver.finish(response)
    }
}

/// Formulas of a book and the amount needed of them.
pub(super) struct Wanted<'a> {
    pub(super) formulas: &'a [Name],
    pub(super) overlap: Option<Overlap>,
    pub(super) base: Option<Amount>,
    pub(super) finished: Option<Amount>,
}

impl Wanted<'_> {
    /// The recipe of the formulas together, and the mix needed of it.
    pub(super) fn mix(&self, book: &Book, resolver: &mut Resolver) -> Option<(Recipe, Mix)> {
        let (recipe, formulas) = combined(self.formulas, self.overlap, book, resolver)?;
        let mix = self.scaled(&recipe, &formulas, book, resolver)?;
        Some((recipe, mix))
    }

    fn scaled(
        &self,
        recipe: &Recipe,
        formulas: &[&Formula],
        book: &Book,
        resolver: &mut Resolver,
    ) -> Option<Mix> {
        match (&self.base, &self.finished) {
            (Some(_), Some(_)) => {
                resolver.fault(
                    code!("two-amounts"),
                    &At("/finished_amount"),
                    &"Both \"base_amount\" and \"finished_amount\" are given.",
                    &"Keep one of the two.",
                );
                None
            }
            (None, Some(finished)) if finished.dimension() == Dimension::VOLUME => {
                let volume: Volume =
                    resolver.keep(&At("/finished_amount"), finished.to(book.system))?;
                let mix = recipe.for_volume(volume, Phase::Liquid, &book.materials);
                resolver.keep(&At("/finished_amount"), mix)
            }
            (None, Some(finished)) => {
                let mass: Mass =
                    resolver.keep(&At("/finished_amount"), finished.to(book.system))?;
                resolver.keep(&At("/finished_amount"), recipe.for_mass(mass))
            }
            (base, None) => {
                let per = formulas.iter().find_map(|formula| formula.per);
                let mass = match base.or(per) {
                    Some(amount) => base_mass(&amount, recipe, book, resolver)?,
                    None => Mass::new::<uom::si::mass::gram>(100.0),
                };
                resolver.keep(&At("/base_amount"), recipe.for_base(mass))
            }
        }
    }
}

/// The formulas of a request's `formulas`, and what they come to.
pub(super) fn combined<'a>(
    names: &[Name],
    overlap: Option<Overlap>,
    book: &'a Book,
    resolver: &mut Resolver,
) -> Option<(Recipe, Vec<&'a Formula>)> {
    let formulas: Vec<&Formula> =
        resolver.each(&At("/formulas"), names, |resolver, path, name| {
            let found = book.find_formula(&name.0).and_then(|index| book.formulas.get(index));
            let mut names = book.formulas.iter().map(|formula| formula.name.as_str());
            resolver.find("formula", path, &name.0, found, &mut names)
        })?;
    let overlap = overlap.unwrap_or(Overlap::Refuse);
    let recipe = book.combined(&formulas, overlap);
    Some((resolver.keep(&At("/formulas"), recipe)?, formulas))
}

/// The mass of an amount of base, given as a mass or as a volume, cold and liquid.
pub(super) fn base_mass(
    amount: &Amount,
    recipe: &Recipe,
    book: &Book,
    resolver: &mut Resolver,
) -> Option<Mass> {
    if amount.dimension() == Dimension::VOLUME {
        let volume: Volume = resolver.keep(&At("/base_amount"), amount.to(book.system))?;
        Some(volume * resolver.keep(&At("/formulas"), recipe.base_density(&book.materials))?)
    } else {
        resolver.keep(&At("/base_amount"), amount.to::<Mass>(book.system))
    }
}

fn describe(recipe: &Recipe, mix: &Mix, book: &Book) -> Result<FormulaResponse, MixError> {
    let reference = crate::mix::reference_temperature();
    let parts = recipe.ingredients().map(|ingredient| {
        Ok(RecipePart {
            material: book.materials.get(ingredient.material)?.name.clone(),
            ratio: ingredient.ratio,
            mass: text::mass(mix.mass_of(ingredient.material)),
            of_finished: text::percent(Ratio::from(mix.mass_fraction(ingredient.material))),
        })
    });
    Ok(FormulaResponse {
        parts: parts.collect::<Result<_, MixError>>()?,
        mass: text::mass(mix.mass()),
        volume: text::volume(mix.volume(&book.materials, Phase::Liquid)?, book.system),
        density: text::density(mix.density(&book.materials, Phase::Fused, reference, 0.0)?),
    })
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use serde_json::{Value, json};

    use crate::document::{LoadedBook, small};

    /// A formula that is for no amount of base is answered for 100 g.
    #[test]
    fn a_formula_without_an_amount_is_for_100_g() {
        let mut book: Value = serde_json::from_str(small::BOOK).unwrap();
        book["default_base"] = "clear".into();
        book["formulas"]["tint"] = json!({ "doses": { "blue": "2 % of base" } });
        let book = LoadedBook::from_text(&book.to_string()).unwrap();
        let request = r#"{ "calculate": "formula", "formulas": ["tint"] }"#;
        let answer: Value = serde_json::from_str(&book.answer_text(request)).unwrap();
        let mass = answer["result"]["mass"]["value"].as_f64().unwrap_or_else(|| panic!("{answer}"));
        assert!((mass - 102.0).abs() < 1e-9, "{answer}");
    }
}

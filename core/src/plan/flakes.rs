//! Number of flakes in a piece: its share of the pot's flake over the mass of one.

use alloc::string::String;
use alloc::vec::Vec;

use crate::flake::Flake;
use crate::formula::Recipe;
use crate::mix::Materials;
use crate::quantity::Mass;
use crate::show::part;

part! {
    /// The flakes of one material in a piece.
    pub struct FlakeCount {
        /// The flake.
        pub material: String,
        /// Approximate number, from the nominal size of its cut.
        pub count: f64,
    }
}

/// The flakes in a `piece` of `recipe`, of each flake whose cut, thickness and density the book
/// states.
pub(super) fn in_piece(recipe: &Recipe, piece: Mass, materials: &Materials) -> Vec<FlakeCount> {
    let counted = recipe.ingredients().filter_map(|ingredient| {
        let material = materials.get(ingredient.material).ok()?;
        let film = material.true_density("counting flakes").ok()?;
        let flake = Flake::new(material.cut?, material.thickness?, film, None).ok()?;
        let share = ingredient.ratio / recipe.total_per_base();
        let count = libm::round(flake.particles(piece * share).ok()?);
        Some(FlakeCount { material: material.name.clone(), count })
    });
    counted.collect()
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use std::vec::Vec;

    use super::in_piece;
    use crate::document;
    use crate::plan::day::recipe_of;
    use crate::quantity::{Mass, Measurable};

    /// By hand: of 1 g in 10 g of mix a piece of 2 g holds 0.2 g; a square of 1 mm and 0.05 mm of
    /// 1.4 mg/mm³ weighs 0.07 mg.
    #[test]
    fn squares_by_hand() {
        let book = document::book_from_text(
            r#"{
            "format": "pourwright/1.0", "measures": "metric",
            "materials": {
                "base": { "kind": "plastisol", "density": "1 g/mL" },
                "bright": { "kind": "flake", "density": "1.4 g/mL", "as_scooped": "0.5 g/mL", "cut": "1 mm square", "thickness": "50 um" },
                "plain": { "kind": "flake", "density": "1.4 g/mL", "as_scooped": "0.5 g/mL" }
            },
            "formulas": { "all": { "per": "8 g", "base": "base", "doses": { "bright": "1 g", "plain": "1 g" } } },
            "molds": { "m": { "cavities": 1, "cavity": "2 mL" } },
            "products": { "p": { "mold": "m", "formulas": ["all"] } },
            "bench": { "cups": [{ "holds": "250 mL" }], "injector": { "holds": "100 mL" } }
        }"#,
        )
        .unwrap_or_else(|faults| panic!("{faults}"));
        let recipe = recipe_of(&book.products[0].layers[0], &book).unwrap();
        let found = in_piece(&recipe, Mass::from_si(2e-3), &book.materials);
        let found: Vec<(&str, f64)> =
            found.iter().map(|flake| (flake.material.as_str(), flake.count)).collect();
        assert_eq!(found, [("bright", 2857.0)]);
    }
}

//! How many flakes a piece holds: its share of the pot's flake over what one weighs.

use alloc::string::String;
use alloc::vec::Vec;

use super::part;
use crate::flake::Flake;
use crate::formula::Recipe;
use crate::mix::Materials;
use crate::quantity::Mass;

part! {
    /// The flakes of one material in a piece.
    pub struct FlakeCount {
        /// The flake.
        pub material: String,
        /// How many there are about, from the nominal size of its cut.
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

//! The shots of a batch, and what they take.

use alloc::vec::Vec;

use super::PotError;
use crate::batch::{self, Injector, Loads, Rejects, Wanted};
use crate::book::Book;
use crate::plan::day::{Batch, DayRecipe};
use crate::quantity::{MassDensity, Ratio};
use crate::shot::ShotMass;

/// What a batch takes: its shots, and for each layer what one takes and how it is loaded.
#[derive(Debug, Clone)]
pub(in crate::plan) struct Shots {
    pub(in crate::plan) shots: u32,
    pub(in crate::plan) layers: Vec<LayerShots>,
}

#[derive(Debug, Clone, Copy)]
pub(in crate::plan) struct LayerShots {
    pub(in crate::plan) mass: ShotMass,
    pub(in crate::plan) density: MassDensity,
}

/// The shots of `batch`, and what each of its layers takes for one.
pub(in crate::plan) fn shots(
    batch: &Batch,
    recipes: &[DayRecipe],
    book: &Book,
) -> Result<Shots, PotError> {
    let mold = book.molds.get(batch.mold).ok_or(PotError::Lost)?;
    let wanted: Vec<Wanted> = mold
        .cavities
        .iter()
        .zip(&batch.ordered)
        .filter(|(_, pieces)| **pieces > 0)
        .map(|(cavities, &pieces)| Wanted { pieces, cavities: cavities.count })
        .collect();
    let rate = mold.rejects.unwrap_or(book.limits.rejects);
    let rejects = (rate > 0.0).then(|| Rejects {
        rate: Ratio::from(rate),
        confidence: Ratio::from(book.limits.confidence),
    });
    let shots = batch::shots(&wanted, rejects)?;
    let mut layers = Vec::with_capacity(batch.layers.len());
    for &(recipe, share) in &batch.layers {
        let recipe = recipes.get(recipe).ok_or(PotError::Lost)?;
        let mass = recipe.shot(mold, share)?;
        layers.push(LayerShots { mass, density: recipe.melt_in(mold).shot_density() });
    }
    Ok(Shots { shots, layers })
}

impl Shots {
    /// Injector loads for `shots` of them; the layers of a laminated piece are loaded together.
    pub(in crate::plan) fn loads(&self, shots: u32, book: &Book) -> Result<Loads, PotError> {
        let injector = injector(book);
        let mut fewest: Option<Loads> = None;
        for layer in &self.layers {
            let loads = injector.loads(shots, layer.mass.fill, layer.density)?;
            if fewest.is_none_or(|other| loads.shots_per_load < other.shots_per_load) {
                fewest = Some(loads);
            }
        }
        fewest.ok_or(PotError::Lost)
    }
}

pub(super) fn injector(book: &Book) -> Injector {
    Injector { holds: book.injector.holds, keeps: book.injector.keeps }
}

//! The shots of a batch, and their masses.

use alloc::vec::Vec;

use super::PotError;
use crate::batch::{self, Injector, Loads, Rejects, Wanted};
use crate::book::{Book, Cavities};
use crate::plan::day::{Batch, DayRecipe};
use crate::plan::one_or_more::OneOrMore;
use crate::quantity::{Mass, MassDensity, Ratio};
use crate::shot::ShotMass;

/// The shots of a batch, and the mass and loads of each layer.
#[derive(Debug, Clone)]
pub(in crate::plan) struct Shots<'a> {
    pub(in crate::plan) batch: &'a Batch<'a>,
    pub(in crate::plan) shots: u32,
    pub(in crate::plan) layers: OneOrMore<LayerShots<'a>>,
}

/// One shot of a layer.
#[derive(Debug, Clone, Copy)]
pub(in crate::plan) struct LayerShots<'a> {
    /// Its place among the layers of its batch.
    pub(in crate::plan) number: usize,
    pub(in crate::plan) recipe: &'a DayRecipe<'a>,
    /// Its share of the cavity.
    pub(in crate::plan) share: f64,
    pub(in crate::plan) mass: ShotMass,
    pub(in crate::plan) density: MassDensity,
}

/// The shots of `batch`, and the mass of each layer of one.
pub(in crate::plan) fn shots<'a>(batch: &'a Batch<'a>, book: &Book) -> Result<Shots<'a>, PotError> {
    let mold = batch.mold;
    let wanted: Vec<Wanted> = mold
        .cavities
        .iter()
        .zip(&batch.ordered)
        .map(|(cavities, &pieces)| Wanted { pieces, cavities: cavities.count })
        .collect();
    let rate = mold.rejects.unwrap_or(book.limits.rejects);
    let rejects = (rate > 0.0).then(|| Rejects {
        rate: Ratio::from(rate),
        confidence: Ratio::from(book.limits.confidence),
    });
    let shots = batch::shots(&wanted, rejects)?;
    let layers = batch.layers.try_map(|number, layer| {
        let recipe = &*layer.recipe;
        let mass = recipe.shot(mold, layer.share)?;
        let density = recipe.melt_in(mold).shot_density();
        Ok::<_, PotError>(LayerShots { number, recipe, share: layer.share, mass, density })
    })?;
    Ok(Shots { batch, shots, layers })
}

impl Shots<'_> {
    /// Injector loads for `shots` of them; the layers of a laminated piece are loaded together.
    pub(in crate::plan) fn loads(&self, shots: u32, book: &Book) -> Result<Loads, PotError> {
        let injector = injector(book);
        let loads = |layer: &LayerShots<'_>| injector.loads(shots, layer.mass.fill, layer.density);
        let mut fewest = loads(&self.layers.first)?;
        for layer in &self.layers.later {
            let loads = loads(layer)?;
            if loads.shots_per_load < fewest.shots_per_load {
                fewest = loads;
            }
        }
        Ok(fewest)
    }

    /// Mass of one shot, all its layers.
    pub(in crate::plan) fn fill(&self) -> Mass {
        self.layers.iter().fold(Mass::default(), |sum, layer| sum + layer.mass.fill)
    }

    /// Mass of a piece from `cavities`, all its layers.
    pub(in crate::plan) fn piece(&self, cavities: &Cavities) -> Mass {
        self.layers
            .iter()
            .fold(Mass::default(), |sum, layer| sum + layer.mass.piece(cavities.volume.value))
    }
}

pub(super) fn injector(book: &Book) -> Injector {
    Injector { holds: book.injector.holds, keeps: book.injector.keeps }
}

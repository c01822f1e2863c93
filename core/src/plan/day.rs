//! A day's order lines, pooled by what is shot into which mold.
//!
//! Pieces are pooled by (mold, layers) before anything is rounded up: a mold's shots serve all
//! orders for the same piece, and unlike cavities share a shot.

use alloc::string::String;
use alloc::vec::Vec;

use super::shelf::LeftOver;
use crate::book::{Book, Layer, Mold, Product};
use crate::fault::Fault;
use crate::formula::{Formula, FormulaError, Recipe};
use crate::material::ShotWindow;
use crate::mix::{Assumption, MixError, Phase, reference_temperature};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, ThermodynamicTemperature};
use crate::shot::{Cavity, Melt, Shot, ShotMass};

/// The order list of a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Day {
    /// The day, as the shop writes it.
    pub day: Option<String>,
    /// The order lines.
    pub lines: Vec<Line>,
    /// Left-over mixes that may go into the day's pots.
    pub shelf: Vec<LeftOver>,
}

/// One line of an order.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// The order it belongs to.
    pub order: String,
    /// What is ordered; without a name where the line says it itself.
    pub product: Product,
    /// Which of the mold's cavities: their index.
    pub shape: usize,
    /// How many pieces.
    pub pieces: u32,
    /// Packs and pieces in a pack, where it is sold by the pack.
    pub packs: Option<(u32, u32)>,
    /// The day it was promised for, as YYYY-MM-DD.
    pub promised: Option<String>,
    /// What the embedding program keeps on the line.
    #[cfg(feature = "document")]
    pub ext: Option<serde_json::Map<String, serde_json::Value>>,
}

/// What is shot into one mold with the same layers, for all lines that ask for it.
#[derive(Debug, Clone)]
pub(crate) struct Batch {
    /// Index among the book's molds.
    pub(crate) mold: usize,
    /// The layers: index of the recipe, and share of the cavity.
    pub(crate) layers: Vec<(usize, f64)>,
    /// Pieces ordered of each of the mold's shapes.
    pub(crate) ordered: Vec<u32>,
    /// Indices of the lines.
    pub(crate) lines: Vec<usize>,
    /// The earliest day that one of them was promised for.
    pub(crate) promised: Option<String>,
}

/// A recipe of the day and what follows from it.
#[derive(Debug, Clone)]
pub(crate) struct DayRecipe {
    pub(crate) recipe: Recipe,
    /// The formulas that came to it first, by name.
    pub(crate) formulas: Vec<String>,
    /// Density hot and cold, fused.
    pub(crate) melt: Melt,
    /// Density of the mix cold and liquid, as the cup holds it.
    pub(crate) liquid: MassDensity,
    /// The temperatures at which it is shot: where all its plastisols agree.
    pub(crate) window: Option<ShotWindow>,
    pub(crate) assumptions: Vec<Assumption>,
}

/// The day's recipes and batches.
pub(crate) struct Pooled {
    pub(crate) recipes: Vec<DayRecipe>,
    pub(crate) batches: Vec<Batch>,
}

/// The recipe of a layer.
pub(crate) fn recipe_of(layer: &Layer, book: &Book) -> Result<Recipe, FormulaError> {
    let formulas: Vec<&Formula> =
        layer.formulas.iter().filter_map(|&index| book.formulas.get(index)).collect();
    Recipe::combine(&formulas, layer.overlap, book.default_base, &book.materials, book.system)
}

/// Pools the lines of `day`. Faults go to the line that shows them first.
pub(crate) fn pool(book: &Book, day: &Day, faults: &mut Vec<Fault>) -> Pooled {
    let mut pooled = Pooled { recipes: Vec::new(), batches: Vec::new() };
    let mut known: Vec<(&Layer, Option<usize>)> = Vec::new();
    for (index, line) in day.lines.iter().enumerate() {
        let layers: Option<Vec<(usize, f64)>> = line
            .product
            .layers
            .iter()
            .map(|layer| {
                let seen = known
                    .iter()
                    .find(|(other, _)| {
                        other.formulas == layer.formulas && other.overlap == layer.overlap
                    })
                    .map(|(_, recipe)| *recipe);
                let recipe = seen.unwrap_or_else(|| {
                    let recipe = pooled.intern(layer, book, index, faults);
                    known.push((layer, recipe));
                    recipe
                });
                recipe.map(|recipe| (recipe, layer.share))
            })
            .collect();
        if let Some(layers) = layers {
            pooled.add(index, line, layers, book);
        }
    }
    pooled
}

impl Pooled {
    /// The index of the layer's recipe among the day's, which are all different.
    fn intern(
        &mut self,
        layer: &Layer,
        book: &Book,
        line: usize,
        faults: &mut Vec<Fault>,
    ) -> Option<usize> {
        let path = alloc::format!("/lines/{line}");
        let recipe = recipe_of(layer, book)
            .map_err(|error| faults.push(Fault::at(path.clone(), &error)))
            .ok()?;
        if let Some(found) = self.recipes.iter().position(|known| known.recipe == recipe) {
            return Some(found);
        }
        let formulas = layer
            .formulas
            .iter()
            .filter_map(|&index| book.formulas.get(index))
            .map(|formula| formula.name.clone())
            .collect();
        let recipe = DayRecipe::new(recipe, formulas, book)
            .map_err(|error| faults.push(Fault::at(path, &error)))
            .ok()?;
        self.recipes.push(recipe);
        self.recipes.len().checked_sub(1)
    }

    fn add(&mut self, index: usize, line: &Line, layers: Vec<(usize, f64)>, book: &Book) {
        let mold = line.product.mold;
        let found =
            self.batches.iter_mut().position(|batch| batch.mold == mold && batch.layers == layers);
        let place = found.unwrap_or_else(|| {
            let shapes = book.molds.get(mold).map_or(0, |mold| mold.cavities.len());
            self.batches.push(Batch {
                mold,
                layers,
                ordered: alloc::vec![0; shapes],
                lines: Vec::new(),
                promised: None,
            });
            self.batches.len().saturating_sub(1)
        });
        if let Some(batch) = self.batches.get_mut(place) {
            batch.lines.push(index);
            if let Some(date) = &line.promised
                && batch.promised.as_ref().is_none_or(|earliest| date < earliest)
            {
                batch.promised = Some(date.clone());
            }
            if let Some(ordered) = batch.ordered.get_mut(line.shape) {
                *ordered = ordered.saturating_add(line.pieces);
            }
        }
    }
}

impl DayRecipe {
    fn new(recipe: Recipe, formulas: Vec<String>, book: &Book) -> Result<Self, MixError> {
        let unit = recipe.for_base(Mass::from_si(1.0))?;
        let window = shot_window(&recipe, book)?;
        let hot_at = window.map_or_else(reference_temperature, |window| window.middle());
        let density =
            |at: ThermodynamicTemperature| unit.density(&book.materials, Phase::Fused, at, 0.0);
        let melt = Melt {
            hot: density(hot_at)?,
            cold: density(reference_temperature())?,
            voids: Ratio::from(0.0),
        };
        let liquid = unit.mass() / unit.volume(&book.materials, Phase::Liquid)?;
        let assumptions = unit.assumptions(&book.materials, Phase::Fused)?;
        Ok(Self { recipe, formulas, melt, liquid, window, assumptions })
    }

    /// What one shot into `mold` takes of a layer with `share` of the cavity.
    pub(crate) fn shot(&self, mold: &Mold, share: f64) -> Result<ShotMass, crate::shot::ShotError> {
        Shot::of_layer(mold, &cavities(mold), share, self.melt_in(mold)).masses()
    }

    pub(crate) fn melt_in(&self, mold: &Mold) -> Melt {
        Melt { voids: Ratio::from(mold.voids), ..self.melt }
    }
}

impl<'a> Shot<'a> {
    /// The shot into `mold` of a layer with `share` of its cavities and sprue.
    ///
    /// Where the feed share is not known half is taken: the mass of the shot does not depend on
    /// it, and the weight of a piece is shown as a range.
    pub(crate) fn of_layer(mold: &Mold, cavities: &'a [Cavity], share: f64, melt: Melt) -> Self {
        Self {
            cavities,
            share: Ratio::from(share),
            sprue: mold.sprue * share,
            topped: mold.top * share,
            feed: Ratio::from(mold.feed.unwrap_or(0.5)),
            melt,
        }
    }
}

/// The cavities of `mold` as a shot fills them.
pub(crate) fn cavities(mold: &Mold) -> Vec<Cavity> {
    mold.cavities
        .iter()
        .map(|cavities| Cavity { volume: cavities.volume, count: cavities.count })
        .collect()
}

/// Where the shot windows of a recipe's plastisols overlap; `None` where one is not known.
fn shot_window(recipe: &Recipe, book: &Book) -> Result<Option<ShotWindow>, MixError> {
    let mut common: Option<ShotWindow> = None;
    for part in recipe.base() {
        let Some(window) = book.materials.get(part.material)?.shot_window else {
            return Ok(None);
        };
        common = Some(match common {
            None => window,
            Some(other) => ShotWindow {
                low: if window.low > other.low { window.low } else { other.low },
                high: if window.high < other.high { window.high } else { other.high },
            },
        });
    }
    Ok(common.filter(|window| window.low <= window.high))
}

//! A day's order lines, pooled by what is shot into which mold.
//!
//! Pieces are pooled by (mold, layers) before anything is rounded up: a mold's shots serve all
//! orders for the same piece, and unlike cavities share a shot.

use alloc::borrow::Cow;
use alloc::string::String;
use alloc::vec::Vec;

use super::places::Places;
use super::shelf::LeftOver;
use super::stock::InStock;
use crate::book::{Book, Layer, Mold, Product};
use crate::fault::{Diagnose, Fault};
use crate::formula::{Formula, FormulaError, Recipe};
use crate::material::ShotWindow;
use crate::mix::{Assumption, MixError, Phase, reference_temperature};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, ThermodynamicTemperature};
use crate::shot::{Cavity, Melt, Shot, ShotMass};

/// The feed share that a piece's weight is shown for where the book does not state the mold's: the
/// middle between not fed and fed in full.
pub(crate) const FEED_NOT_KNOWN: f64 = 0.5;

/// The order list of a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Day {
    /// The day, as the shop writes it.
    pub day: Option<String>,
    /// The order lines.
    pub lines: Vec<Line>,
    /// Left-over mixes that may go into the day's pots.
    pub shelf: Vec<LeftOver>,
    /// What is in stock of materials that are counted.
    pub stock: Vec<InStock>,
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

/// The recipe of a layer that is to be poured.
fn poured(layer: &Layer, book: &Book) -> Result<Recipe, FormulaError> {
    let mut formulas = layer.formulas.iter().filter_map(|&index| book.formulas.get(index));
    match formulas.find(|formula| formula.is_to_be_found()) {
        Some(formula) => Err(FormulaError::ToBeFound(formula.name.clone())),
        None => recipe_of(layer, book),
    }
}

/// The recipe of a layer.
pub(crate) fn recipe_of(layer: &Layer, book: &Book) -> Result<Recipe, FormulaError> {
    let formulas: Vec<&Formula> =
        layer.formulas.iter().filter_map(|&index| book.formulas.get(index)).collect();
    Recipe::combine(&formulas, layer.overlap, book.default_base, &book.materials, book.system)
}

/// Pools the lines of `day`. Faults go to the line that shows them first.
pub(crate) fn pool(book: &Book, day: &Day, faults: &mut Vec<Fault>) -> Pooled {
    let mut recipes = Recipes::default();
    let mut batches = Batches::default();
    for (index, line) in day.lines.iter().enumerate() {
        if let Some(layers) = recipes.of_layers(&line.product.layers, book, index, faults) {
            batches.add(index, line, layers, book);
        }
    }
    Pooled { recipes: recipes.all, batches: batches.all }
}

/// The day's recipes, which are all different, and where to find them.
#[derive(Default)]
struct Recipes {
    all: Vec<DayRecipe>,
    /// By formulas and what becomes of their overlap: the place in `of_formulas`.
    by_formulas: Places,
    /// The recipe of formulas; `None` where there is none.
    of_formulas: Vec<Option<usize>>,
    /// By [`exact_ratios`].
    by_ratios: Places,
}

impl Recipes {
    /// Each layer's recipe by its index, and its share of the cavity.
    fn of_layers(
        &mut self,
        layers: &[Layer],
        book: &Book,
        line: usize,
        faults: &mut Vec<Fault>,
    ) -> Option<Vec<(usize, f64)>> {
        let mut found = Vec::with_capacity(layers.len());
        for layer in layers {
            found.push((self.of(layer, book, line, faults)?, layer.share));
        }
        Some(found)
    }

    /// The index of the layer's recipe.
    fn of(
        &mut self,
        layer: &Layer,
        book: &Book,
        line: usize,
        faults: &mut Vec<Fault>,
    ) -> Option<usize> {
        let formulas = layer.formulas.iter().map(|&index| index as u64);
        let key = formulas.chain([layer.overlap as u64]).collect();
        let known = self.by_formulas.get_or(key, self.of_formulas.len());
        if let Some(known) = self.of_formulas.get(known) {
            return *known;
        }
        let mut keep = |error: &dyn Diagnose| {
            faults.push(Fault::at(alloc::format!("/lines/{line}"), error));
        };
        let recipe = poured(layer, book).map_err(|error| keep(&error)).ok();
        let place = recipe
            .and_then(|recipe| self.intern(recipe, layer, book).map_err(|error| keep(&error)).ok());
        self.of_formulas.push(place);
        place
    }

    fn intern(&mut self, recipe: Recipe, layer: &Layer, book: &Book) -> Result<usize, RecipeError> {
        let ratios = exact_ratios(&recipe);
        if let Some(place) = self.by_ratios.get(&ratios) {
            return Ok(place);
        }
        let formulas = layer
            .formulas
            .iter()
            .filter_map(|&index| book.formulas.get(index))
            .map(|formula| formula.name.clone())
            .collect();
        let recipe = DayRecipe::new(recipe, formulas, book)?;
        let place = self.by_ratios.get_or(ratios, self.all.len());
        self.all.push(recipe);
        Ok(place)
    }
}

/// The materials of a recipe with the digits of their ratios: the same for equal recipes alone.
fn exact_ratios(recipe: &Recipe) -> Vec<u64> {
    let mut key = Vec::from([recipe.base().len() as u64]);
    for one in recipe.ingredients() {
        key.push(u64::from(one.material.0));
        for number in [one.exact.numer(), one.exact.denom()] {
            let digits = number.iter_u64_digits();
            key.push(digits.len() as u64);
            key.extend(digits);
        }
    }
    key
}

/// The day's batches, and where to find them.
#[derive(Default)]
struct Batches {
    all: Vec<Batch>,
    /// By recipes, shares and mold.
    by_piece: Places,
}

impl Batches {
    fn add(&mut self, index: usize, line: &Line, layers: Vec<(usize, f64)>, book: &Book) {
        let mold = line.product.mold;
        let mut key = Vec::with_capacity(layers.len().saturating_mul(2).saturating_add(1));
        layers.iter().for_each(|(recipe, share)| key.extend([*recipe as u64, share.to_bits()]));
        key.push(mold as u64);
        let next = self.all.len();
        let place = self.by_piece.get_or(key, next);
        if place == next {
            let shapes = book.molds.get(mold).map_or(0, |mold| mold.cavities.len());
            self.all.push(Batch {
                mold,
                layers,
                ordered: alloc::vec![0; shapes],
                lines: Vec::new(),
                promised: None,
            });
        }
        let Some(batch) = self.all.get_mut(place) else { return };
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

impl DayRecipe {
    fn new(recipe: Recipe, formulas: Vec<String>, book: &Book) -> Result<Self, RecipeError> {
        let unit = recipe.for_base(Mass::from_si(1.0))?;
        let window = shot_window(&recipe, &formulas, book)?;
        let hot_at = window.map_or_else(reference_temperature, |window| window.middle());
        let density =
            |at: ThermodynamicTemperature| unit.density(&book.materials, Phase::Fused, at, 0.0);
        let melt = Melt {
            hot: density(hot_at)?,
            cold: density(reference_temperature())?,
            voids: Ratio::from(0.0),
        };
        let liquid = unit.mass() / unit.volume(&book.materials, Phase::Liquid)?;
        let mut assumptions = unit.assumptions(&book.materials, Phase::Fused)?;
        for part in recipe.base() {
            if book.materials.get(part.material)?.shot_window.is_none() {
                assumptions.push(Assumption::NoShotWindow(part.material));
            }
        }
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
            feed: Ratio::from(mold.feed.unwrap_or(FEED_NOT_KNOWN)),
            melt,
        }
    }
}

/// The cavities of `mold` as a shot fills them.
pub(crate) fn cavities(mold: &Mold) -> Vec<Cavity> {
    mold.cavities
        .iter()
        .map(|cavities| Cavity { volume: cavities.volume.value, count: cavities.count })
        .collect()
}

/// Where the shot windows of a recipe's plastisols overlap; `None` where one is not known.
fn shot_window(
    recipe: &Recipe,
    formulas: &[String],
    book: &Book,
) -> Result<Option<ShotWindow>, RecipeError> {
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
    match common {
        Some(window) if window.low > window.high => {
            Err(RecipeError::WindowsApart { formulas: formulas.join(" + ") })
        }
        common => Ok(common),
    }
}

/// Why a recipe cannot be shot.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub(crate) enum RecipeError {
    /// The plastisols of its base have no temperature in common.
    #[error("The plastisols of {formulas} have no shot temperature in common.")]
    WindowsApart {
        /// Its formulas.
        formulas: String,
    },
    /// A number is missing.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl Diagnose for RecipeError {
    fn code(&self) -> &'static str {
        match self {
            Self::WindowsApart { .. } => "shot-windows-apart",
            Self::Mix(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::WindowsApart { .. } => {
                "Check the \"shot_window\" of each plastisol in the blend, or blend two that fuse at one temperature.".into()
            }
            Self::Mix(error) => error.help(),
        }
    }
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use super::*;
    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};

    fn pooled(lines: &str) -> (Pooled, Vec<Fault>) {
        let book = book_from_text(BOOK).unwrap();
        let day = orders_from_text(&orders(lines), &book).unwrap_or_else(|f| panic!("{f}"));
        let mut faults = Vec::new();
        let pooled = pool(&book, &day, &mut faults);
        (pooled, faults)
    }

    #[test]
    fn lines_for_the_same_piece_are_pooled_before_anything_is_rounded() {
        let (pooled, faults) = pooled(
            r#"{ "order": "1", "product": "sky worm", "pieces": 3 },
               { "order": "2", "mold": "worm", "formulas": ["sky", "body"], "packs": 2, "pack_of": 4 },
               { "order": "3", "mold": "worm", "formulas": ["twin", "sky"], "pieces": 5 },
               { "order": "4", "product": "sky pair", "shape": "long", "pieces": 7 },
               { "order": "5", "product": "sky pair", "shape": "short", "pieces": 9 }"#,
        );
        assert_eq!(faults, []);
        // A body per two cups is the same recipe, so all five lines take one.
        assert_eq!(pooled.recipes.len(), 1);
        let ordered: Vec<&[u32]> = pooled.batches.iter().map(|batch| &*batch.ordered).collect();
        assert_eq!(ordered, [&[16_u32][..], &[7, 9]]);
        assert_eq!(pooled.batches[0].lines, [0, 1, 2]);
    }

    #[test]
    fn layers_and_their_shares_tell_pieces_apart() {
        let (pooled, _) = pooled(
            r#"{ "order": "1", "product": "two", "pieces": 3 },
               { "order": "2", "product": "sky worm", "pieces": 3 },
               { "order": "3", "product": "two", "pieces": 4 }"#,
        );
        assert_eq!((pooled.recipes.len(), pooled.batches.len()), (2, 2));
        assert_eq!(pooled.batches[0].layers, [(0, 0.6), (1, 0.4)]);
        assert_eq!(pooled.batches[0].ordered, [7]);
    }

    #[test]
    fn plastisols_that_are_never_hot_enough_together_are_told() {
        let (_, faults) =
            pooled(r#"{ "order": "1", "mold": "worm", "formulas": ["apart"], "pieces": 3 }"#);
        let told: Vec<(&str, &str)> = faults.iter().map(|f| (&*f.path, &*f.code)).collect();
        assert_eq!(told, [("/lines/0", "shot-windows-apart")]);
    }

    // A color without doses is no order for clear pieces; plain plastisol names its base.
    #[test]
    fn an_empty_formula_is_to_be_found() {
        let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        document["formulas"]["moss"] = serde_json::json!({ "per": "1 cup", "doses": {} });
        document["formulas"]["dawn"] =
            serde_json::json!({ "per": "1 cup", "doses": { "red": "0 drops" } });
        document["formulas"]["plain"] =
            serde_json::json!({ "per": "1 cup", "base": "clear", "doses": {} });
        let book = book_from_text(&alloc::string::ToString::to_string(&document)).unwrap();
        let line = |formulas: &str| {
            alloc::format!(
                r#"{{ "order": "1", "mold": "worm", "formulas": [{formulas}], "pieces": 3 }}"#
            )
        };
        let lines = [line(r#""moss", "body""#), line(r#""plain""#), line(r#""dawn", "body""#)];
        let day = orders_from_text(&orders(&lines.join(",")), &book).unwrap();
        let faults = crate::plan::Plan::make(&book, &day).unwrap_err();
        let told: Vec<(&str, &str)> = faults.iter().map(|f| (&*f.path, &*f.code)).collect();
        assert_eq!(
            told,
            [("/lines/0", "formula-to-be-found"), ("/lines/2", "formula-to-be-found")]
        );
        let day = orders_from_text(&orders(&line(r#""plain""#)), &book).unwrap();
        assert!(crate::plan::Plan::make(&book, &day).is_ok());
    }

    #[test]
    fn what_is_not_known_is_noted() {
        let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        document["formulas"]["rust"]["doses"]["red"] = "30 drops".into();
        let book = book_from_text(&alloc::string::ToString::to_string(&document)).unwrap();
        let line = r#"{ "order": "1", "mold": "worm", "formulas": ["rust", "body"], "pieces": 3 }"#;
        let day = orders_from_text(&orders(line), &book).unwrap();
        let plan = crate::plan::Plan::make(&book, &day).unwrap();
        let codes: Vec<&str> = plan.assumptions.iter().map(|note| &*note.code).collect();
        for code in ["fused-as-liquid", "no-expansion", "feed-not-known"] {
            assert!(codes.contains(&code), "{code} of {codes:?}");
        }
        assert!(!codes.contains(&"no-shot-window"));
        let borrowed: Vec<&str> = plan.borrowed.iter().map(|one| &*one.code).collect();
        assert_eq!(borrowed, ["pharmacy-drop"]);
    }
}

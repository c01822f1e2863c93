//! A day's order lines, pooled by what is shot into which mold.
//!
//! Pieces are pooled by (mold, layers) before anything is rounded up: a mold's shots serve all
//! orders for the same piece, and unlike cavities share a shot.

use alloc::borrow::Cow;
use alloc::rc::Rc;
use alloc::string::String;
use alloc::sync::Arc;
use alloc::vec::Vec;

use super::one_or_more::OneOrMore;
use super::places::Places;
use super::shelf::Leftover;
use super::stock::InStock;
use super::there::PotThere;
use crate::book::{Book, Cavities, Layer, Mold, Product};
use crate::codes::codes;
use crate::fault::{Diagnose, Fault};
use crate::formula::{Formula, FormulaError, Overlap, Recipe};
use crate::material::{Kind, ShotWindow};
use crate::mix::{Assumption, Materials, MixError, Phase, reference_temperature};
use crate::parameter::Parameter;
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, ThermodynamicTemperature};
use crate::shot::{Cavity, Melt, Shot, ShotMass};

/// Feed share assumed for the mass of a piece if the book does not state the mold's: the middle between shrunk (no feed)
/// and topped by the sprue in full.
pub(crate) const FEED_NOT_KNOWN: f64 = Parameter::Feed.default_si();

/// The order list of a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Day {
    /// The day, as the shop writes it.
    pub day: Option<String>,
    /// The order lines.
    pub lines: Vec<Line>,
    /// Leftovers that may go into the day's pots.
    pub shelf: Vec<Leftover>,
    /// Stock of the materials that are counted.
    pub stock: Vec<InStock>,
    /// Pots that are there.
    pub pots: Vec<PotThere>,
    /// Letters by id, as an earlier plan of the day gave them; others are free for pots with other ids.
    pub letters: Vec<(String, String)>,
}

/// One line of an order.
#[derive(Debug, Clone, PartialEq)]
pub struct Line {
    /// The order it belongs to.
    pub order: String,
    /// The product; without a name if the line itself gives mold and formulas.
    pub product: Product,
    /// Which of the mold's cavities: their index.
    pub shape: usize,
    /// Number of pieces.
    pub pieces: u32,
    /// Packs and pieces in a pack, if sold by the pack.
    pub packs: Option<(u32, u32)>,
    /// The day it was promised for, as YYYY-MM-DD.
    pub promised: Option<String>,
    /// Data of the embedding program on the line.
    #[cfg(feature = "document")]
    pub ext: Option<serde_json::Map<String, serde_json::Value>>,
}

/// The shots into one mold with the same layers, for all lines that order them.
#[derive(Debug, Clone)]
pub(super) struct Batch<'a> {
    /// Its place among the day's batches.
    pub(crate) number: usize,
    pub(crate) mold: &'a Mold,
    /// The mold's place in the book.
    pub(crate) mold_number: usize,
    pub(crate) layers: OneOrMore<BatchLayer<'a>>,
    /// Pieces ordered of each of the mold's shapes.
    pub(crate) ordered: Vec<u32>,
    pub(crate) lines: Vec<BatchLine<'a>>,
    /// The earliest day that one of them was promised for.
    pub(crate) promised: Option<&'a str>,
}

/// One color of a batch's pieces.
#[derive(Debug, Clone)]
pub(super) struct BatchLayer<'a> {
    pub(crate) recipe: Rc<DayRecipe<'a>>,
    /// Its share of the cavity.
    pub(crate) share: f64,
}

/// An order line that a batch serves.
#[derive(Debug, Clone, Copy)]
pub(super) struct BatchLine<'a> {
    /// Its place in the order list.
    pub(crate) number: usize,
    pub(crate) line: &'a Line,
    /// Those of the mold that it asks for.
    pub(crate) cavities: &'a Cavities,
}

/// A recipe of the day and what follows from it.
#[derive(Debug, Clone)]
pub(super) struct DayRecipe<'a> {
    /// Its place among the day's recipes.
    pub(crate) number: usize,
    pub(crate) recipe: Arc<Recipe>,
    /// The formulas that came to it first.
    pub(crate) formulas: Vec<&'a Formula>,
    /// Density hot and cold, fused.
    pub(crate) melt: Melt,
    /// Density of the mix cold and liquid, as the cup holds it.
    pub(crate) liquid: MassDensity,
    /// Shot window: where those of all its plastisols overlap.
    pub(crate) window: Option<ShotWindow>,
    pub(crate) assumptions: Vec<Assumption>,
}

/// The day's recipes and batches.
pub(super) struct Pooled<'a> {
    pub(crate) recipes: Vec<Rc<DayRecipe<'a>>>,
    pub(crate) batches: Vec<Batch<'a>>,
}

/// Recipes that were found when a book was read, so that no day needs to find them again.
#[derive(Debug, Clone)]
pub(crate) struct KnownRecipes {
    /// By [`formulas_of`].
    places: Places,
    all: Vec<Arc<Recipe>>,
}

impl KnownRecipes {
    /// None, of a book that was made otherwise.
    pub(crate) const NONE: &'static Self = &Self::new();

    pub(crate) const fn new() -> Self {
        Self { places: Places::new(), all: Vec::new() }
    }

    /// Whether that of `layer` is known.
    #[cfg(feature = "document")]
    pub(crate) fn has(&self, layer: &Layer) -> bool {
        self.of(&formulas_of(layer)).is_some()
    }

    /// Takes in that of `layer`.
    #[cfg(feature = "document")]
    pub(crate) fn add(&mut self, layer: &Layer, recipe: Recipe) {
        self.places.get_or(formulas_of(layer), self.all.len());
        self.all.push(Arc::new(recipe));
    }

    fn of(&self, formulas: &[u64]) -> Option<&Arc<Recipe>> {
        self.all.get(self.places.get(formulas)?)
    }
}

/// The formulas of a layer and what becomes of their overlap.
fn formulas_of(layer: &Layer) -> Vec<u64> {
    let formulas = layer.formulas.iter().map(|&index| index as u64);
    formulas.chain([layer.overlap as u64]).collect()
}

/// The recipe of a layer.
pub(crate) fn recipe_of(layer: &Layer, book: &Book) -> Result<Recipe, FormulaError> {
    let formulas: Vec<&Formula> =
        layer.formulas.iter().filter_map(|&index| book.formulas.get(index)).collect();
    book.combined(&formulas, layer.overlap)
}

/// The recipe of formulas that are to be poured: none of them is still to be found.
fn poured(
    formulas: &[&Formula],
    overlap: Overlap,
    book: &Book,
    known: Option<&Arc<Recipe>>,
) -> Result<Arc<Recipe>, FormulaError> {
    match formulas.iter().find(|formula| formula.is_to_be_found()) {
        Some(formula) => Err(FormulaError::ToBeFound(formula.name.clone())),
        None => known
            .map_or_else(|| book.combined(formulas, overlap).map(Arc::new), |it| Ok(it.clone())),
    }
}

/// Pools the lines of `day`. Faults go to the line that shows them first.
pub(super) fn pool<'a>(
    book: &'a Book,
    known: &'a KnownRecipes,
    day: &'a Day,
    faults: &mut Vec<Fault>,
) -> Pooled<'a> {
    let mut recipes = Recipes::new(book, known);
    let mut batches = Batches::default();
    for (number, line) in day.lines.iter().enumerate() {
        match Wanted::of(line, book) {
            Ok(wanted) => {
                if let Some(layers) = recipes.of_layers(&wanted, number, faults) {
                    let line = BatchLine { number, line, cavities: wanted.cavities };
                    batches.add(line, wanted.mold, layers);
                }
            }
            Err(error) => faults.push(at_line(number, &error)),
        }
    }
    Pooled { recipes: recipes.all, batches: batches.all }
}

/// Which of `lines` are for the same pieces: the number of the batch of each; `None` of one that cannot be made.
#[cfg(feature = "document")]
pub(crate) fn same_pieces(book: &Book, lines: Vec<Line>) -> Vec<Option<usize>> {
    let mut batches = alloc::vec![None; lines.len()];
    let (shelf, stock, pots, letters) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    let day = Day { day: None, lines, shelf, stock, pots, letters };
    for batch in pool(book, KnownRecipes::NONE, &day, &mut Vec::new()).batches {
        for line in &batch.lines {
            if let Some(place) = batches.get_mut(line.number) {
                *place = Some(batch.number);
            }
        }
    }
    batches
}

fn at_line(line: usize, error: &dyn Diagnose) -> Fault {
    Fault::at(alloc::format!("/lines/{line}"), error)
}

/// The mold and product of a line, found in the book.
struct Wanted<'a> {
    mold: &'a Mold,
    cavities: &'a Cavities,
    layers: OneOrMore<(&'a Layer, Vec<&'a Formula>)>,
}

impl<'a> Wanted<'a> {
    fn of(line: &'a Line, book: &'a Book) -> Result<Self, RecipeError> {
        let mold = book.molds.get(line.product.mold).ok_or(RecipeError::NotOfBook)?;
        let cavities = mold.cavities.get(line.shape).ok_or(RecipeError::NotOfBook)?;
        let layers = OneOrMore::of(&line.product.layers).ok_or(RecipeError::NotOfBook)?;
        let layers = layers.try_map(|_, &layer| {
            let formulas = layer.formulas.iter().map(|&index| book.formulas.get(index));
            let formulas: Option<Vec<&Formula>> = formulas.collect();
            formulas.map(|formulas| (layer, formulas)).ok_or(RecipeError::NotOfBook)
        })?;
        Ok(Self { mold, cavities, layers })
    }
}

/// The day's recipes, which are all different, and where to find them.
struct Recipes<'a> {
    book: &'a Book,
    known: &'a KnownRecipes,
    all: Vec<Rc<DayRecipe<'a>>>,
    /// By [`formulas_of`] a layer: the place in `of_formulas`.
    by_formulas: Places,
    /// The recipe of formulas; `None` if they give none.
    of_formulas: Vec<Option<Rc<DayRecipe<'a>>>>,
    /// By [`exact_ratios`].
    by_ratios: Places,
}

impl<'a> Recipes<'a> {
    fn new(book: &'a Book, known: &'a KnownRecipes) -> Self {
        let (by_formulas, by_ratios) = (Places::new(), Places::new());
        Self { book, known, all: Vec::new(), by_formulas, of_formulas: Vec::new(), by_ratios }
    }

    /// Each layer with its recipe.
    fn of_layers(
        &mut self,
        wanted: &Wanted<'a>,
        line: usize,
        faults: &mut Vec<Fault>,
    ) -> Option<OneOrMore<BatchLayer<'a>>> {
        let layers = wanted.layers.try_map(|_, (layer, formulas)| {
            let recipe = self.of(layer, formulas, line, faults).ok_or(())?;
            Ok::<_, ()>(BatchLayer { recipe, share: layer.share })
        });
        layers.ok()
    }

    /// The layer's recipe.
    fn of(
        &mut self,
        layer: &Layer,
        formulas: &[&'a Formula],
        line: usize,
        faults: &mut Vec<Fault>,
    ) -> Option<Rc<DayRecipe<'a>>> {
        let key = formulas_of(layer);
        let of_book = self.known.of(&key);
        let known = self.by_formulas.get_or(key, self.of_formulas.len());
        if let Some(known) = self.of_formulas.get(known) {
            return known.clone();
        }
        let recipe = poured(formulas, layer.overlap, self.book, of_book);
        let recipe = recipe.map_err(|error| at_line(line, &error));
        let recipe =
            recipe.and_then(|it| self.intern(it, formulas).map_err(|error| at_line(line, &error)));
        let recipe = recipe.map_err(|fault| faults.push(fault)).ok();
        self.of_formulas.push(recipe.clone());
        recipe
    }

    fn intern(
        &mut self,
        recipe: Arc<Recipe>,
        formulas: &[&'a Formula],
    ) -> Result<Rc<DayRecipe<'a>>, RecipeError> {
        let ratios = exact_ratios(&recipe);
        if let Some(known) = self.by_ratios.get(&ratios).and_then(|place| self.all.get(place)) {
            return Ok(Rc::clone(known));
        }
        let number = self.all.len();
        let recipe = DayRecipe::new(number, recipe, formulas, self.book)?;
        let recipe = Rc::new(recipe);
        self.by_ratios.get_or(ratios, number);
        self.all.push(Rc::clone(&recipe));
        Ok(recipe)
    }
}

/// The materials of a recipe with the digits of their ratios: the same for equal recipes alone.
fn exact_ratios(recipe: &Recipe) -> Vec<u64> {
    let mut key = Vec::from([recipe.base().len() as u64]);
    for one in recipe.ingredients() {
        key.push(u64::from(one.material.0));
        for number in [one.exact.numer(), one.exact.denom()] {
            let digits = number.iter_u64_digits();
            key.extend(core::iter::once(digits.len() as u64).chain(digits));
        }
    }
    key
}

/// The day's batches, and where to find them.
#[derive(Default)]
struct Batches<'a> {
    all: Vec<Batch<'a>>,
    /// By recipes, shares and mold.
    by_piece: Places,
}

impl<'a> Batches<'a> {
    fn add(&mut self, line: BatchLine<'a>, mold: &'a Mold, layers: OneOrMore<BatchLayer<'a>>) {
        let mold_number = line.line.product.mold;
        let mut key = Vec::new();
        for layer in &layers {
            key.extend([layer.recipe.number as u64, layer.share.to_bits()]);
        }
        key.push(mold_number as u64);
        let number = self.by_piece.get_or(key, self.all.len());
        match self.all.get_mut(number) {
            Some(batch) => batch.add(line),
            None => {
                let mut batch = Batch {
                    number,
                    mold,
                    mold_number,
                    layers,
                    ordered: alloc::vec![0; mold.cavities.len()],
                    lines: Vec::new(),
                    promised: None,
                };
                batch.add(line);
                self.all.push(batch);
            }
        }
    }
}

impl<'a> Batch<'a> {
    fn add(&mut self, line: BatchLine<'a>) {
        self.lines.push(line);
        let line = line.line;
        if let Some(date) = line.promised.as_deref()
            && self.promised.is_none_or(|earliest| date < earliest)
        {
            self.promised = Some(date);
        }
        if let Some(ordered) = self.ordered.get_mut(line.shape) {
            *ordered = ordered.saturating_add(line.pieces);
        }
    }

    /// The first of its order lines, counted from 1.
    pub(crate) fn first_line(&self) -> u32 {
        let first = self.lines.first().map_or(0, |line| line.number);
        u32::try_from(first.saturating_add(1)).unwrap_or(u32::MAX)
    }

    /// Whether its pieces are of several colors, shot together.
    pub(crate) fn is_laminated(&self) -> bool {
        self.layers.len() > 1
    }
}

impl<'a> DayRecipe<'a> {
    fn new(
        number: usize,
        recipe: Arc<Recipe>,
        formulas: &[&'a Formula],
        book: &Book,
    ) -> Result<Self, RecipeError> {
        let unit = recipe.for_base(Mass::from_si(1.0))?;
        let window = shot_window(&recipe, formulas, book)?;
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
        let formulas = formulas.to_vec();
        Ok(Self { number, recipe, formulas, melt, liquid, window, assumptions })
    }

    /// Whether it holds a material of that kind.
    pub(super) fn holds(&self, kind: Kind, materials: &Materials) -> bool {
        self.recipe
            .ingredients()
            .any(|ingredient| materials.get(ingredient.material).is_ok_and(|one| one.kind == kind))
    }

    /// Its formulas, as a person reads them.
    pub(crate) fn name(&self) -> String {
        joined(&self.formulas)
    }

    /// Mass of one shot into `mold` of a layer with `share` of the cavity.
    pub(crate) fn shot(
        &self,
        mold: &Mold,
        share: f64,
    ) -> Result<ShotMass, crate::parameter::ParameterErrors> {
        Shot::of_layer(mold, &cavities(mold), share, self.melt_in(mold)).masses()
    }

    pub(crate) fn melt_in(&self, mold: &Mold) -> Melt {
        Melt { voids: Ratio::from(mold.voids), ..self.melt }
    }
}

impl<'a> Shot<'a> {
    /// The shot into `mold` of a layer with `share` of its cavities and sprue.
    ///
    /// If the feed share is not known, half is assumed: the mass of the shot does not depend on it, and the mass of a
    /// piece is shown as a range.
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

/// The names of formulas in one line: `dusk + plain`.
pub(super) fn joined(formulas: &[&Formula]) -> String {
    let names: Vec<&str> = formulas.iter().map(|formula| formula.name.as_str()).collect();
    names.join(" + ")
}

/// Overlap of the shot windows of a recipe's plastisols; `None` if one is not known.
fn shot_window(
    recipe: &Recipe,
    formulas: &[&Formula],
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
            Err(RecipeError::WindowsApart { formulas: joined(formulas) })
        }
        common => Ok(common),
    }
}

/// Why a recipe cannot be shot.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub(crate) enum RecipeError {
    /// The order list was read with another book.
    #[error("The line's mold, shape or formulas are not in this book.")]
    NotOfBook,
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
    codes! {
        Self::NotOfBook => "line-not-of-book",
        Self::WindowsApart { .. } => "shot-windows-apart",
        Self::Mix(error) => error.code(),
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NotOfBook => "Read the order list with the book that it is planned with.".into(),
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

    /// Runs `check` on the pooled lines.
    fn pooled(lines: &str, check: impl FnOnce(&Pooled<'_>, &[Fault])) {
        let book = book_from_text(BOOK).unwrap();
        let day = orders_from_text(&orders(lines), &book).unwrap_or_else(|f| panic!("{f}"));
        let mut faults = Vec::new();
        let pooled = pool(&book, KnownRecipes::NONE, &day, &mut faults);
        check(&pooled, &faults);
    }

    #[test]
    fn lines_for_the_same_piece_are_pooled_before_anything_is_rounded() {
        let lines = r#"{ "order": "1", "product": "sky worm", "pieces": 3 },
               { "order": "2", "mold": "worm", "formulas": ["sky", "body"], "packs": 2, "pack_of": 4 },
               { "order": "3", "mold": "worm", "formulas": ["twin", "sky"], "pieces": 5 },
               { "order": "4", "product": "sky pair", "shape": "long", "pieces": 7 },
               { "order": "5", "product": "sky pair", "shape": "short", "pieces": 9 }"#;
        pooled(lines, |pooled, faults| {
            assert_eq!(faults, []);
            // A body per two cups is the same recipe, so all five lines take one.
            assert_eq!(pooled.recipes.len(), 1);
            let ordered: Vec<&[u32]> = pooled.batches.iter().map(|batch| &*batch.ordered).collect();
            assert_eq!(ordered, [&[16_u32][..], &[7, 9]]);
            let lines: Vec<usize> =
                pooled.batches[0].lines.iter().map(|line| line.number).collect();
            assert_eq!(lines, [0, 1, 2]);
        });
    }

    #[test]
    fn layers_and_their_shares_tell_pieces_apart() {
        let lines = r#"{ "order": "1", "product": "two", "pieces": 3 },
               { "order": "2", "product": "sky worm", "pieces": 3 },
               { "order": "3", "product": "two", "pieces": 4 }"#;
        pooled(lines, |pooled, _| {
            assert_eq!((pooled.recipes.len(), pooled.batches.len()), (2, 2));
            let two = &pooled.batches[0];
            let layers: Vec<(usize, f64)> =
                two.layers.iter().map(|layer| (layer.recipe.number, layer.share)).collect();
            assert_eq!(layers, [(0, 0.6), (1, 0.4)]);
            assert_eq!(two.ordered, [7]);
        });
    }

    #[test]
    fn a_batch_is_due_when_the_first_of_its_lines_is() {
        let line = |order: u32, promised: &str| {
            alloc::format!(
                r#"{{ "order": "{order}", "product": "sky worm", "pieces": 3{promised} }}"#
            )
        };
        let lines = [
            line(1, ""),
            line(2, r#", "promised": "2031-05-12""#),
            line(3, r#", "promised": "2031-05-02""#),
            line(4, r#", "promised": "2031-05-07""#),
        ];
        pooled(&lines.join(","), |pooled, faults| {
            assert_eq!(faults, []);
            assert_eq!(pooled.batches[0].promised, Some("2031-05-02"));
            assert_eq!(pooled.batches[0].first_line(), 1);
        });
        pooled(&lines[0], |pooled, _| assert_eq!(pooled.batches[0].promised, None));
    }

    #[test]
    fn a_recipe_holds_what_it_has_some_of() {
        let holds_salt = |dose: &str| {
            let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
            document["formulas"]["body"]["doses"]["salt"] = dose.into();
            let book = book_from_text(&alloc::string::ToString::to_string(&document)).unwrap();
            let line = r#"{ "order": "1", "mold": "worm", "formulas": ["body"], "pieces": 3 }"#;
            let day = orders_from_text(&orders(line), &book).unwrap();
            let pooled = pool(&book, KnownRecipes::NONE, &day, &mut Vec::new());
            assert_eq!(pooled.recipes.len(), 1);
            pooled.recipes[0].holds(Kind::Salt, &book.materials)
        };
        assert!(holds_salt("2 tbsp") && !holds_salt("0 tbsp"));
    }

    #[test]
    fn formulas_that_give_no_recipe_are_one_fault() {
        let line = r#"{ "order": "1", "mold": "worm", "formulas": ["apart"], "pieces": 3 }"#;
        pooled(&alloc::format!("{line}, {line}"), |pooled, faults| {
            let found: Vec<&str> = faults.iter().map(|fault| &*fault.path).collect();
            assert_eq!((found, pooled.batches.len()), (alloc::vec!["/lines/0"], 0));
        });
    }

    /// Two plastisols share the temperatures that both of their windows have, one temperature among them.
    #[test]
    fn windows_that_meet_have_a_temperature_in_common() {
        let window = |firm: [&str; 2]| {
            let mut document: serde_json::Value = serde_json::from_str(BOOK).unwrap();
            document["materials"]["firm"]["shot_window"] = serde_json::json!(firm);
            let book = book_from_text(&alloc::string::ToString::to_string(&document)).unwrap();
            let line = r#"{ "order": "1", "mold": "worm", "formulas": ["apart"], "pieces": 3 }"#;
            let day = orders_from_text(&orders(line), &book).unwrap();
            let mut faults = Vec::new();
            let pooled = pool(&book, KnownRecipes::NONE, &day, &mut faults);
            let fahrenheit = |temperature: ThermodynamicTemperature| {
                libm::round(temperature.si() * 1.8 - 459.67) as i32
            };
            let windows = pooled.recipes.iter().filter_map(|recipe| recipe.window);
            let mut windows = windows.map(|w| (fahrenheit(w.low), fahrenheit(w.high)));
            (windows.next(), faults.first().map(|fault| fault.help.to_string()))
        };
        use alloc::string::ToString;
        assert_eq!(window(["340 °F", "360 °F"]), (Some((340, 340)), None));
        assert_eq!(window(["330 °F", "335 °F"]), (Some((330, 335)), None));
        assert_eq!(window(["310 °F", "325 °F"]), (Some((320, 325)), None));
        let (none, help) = window(["341 °F", "360 °F"]);
        assert!(none.is_none() && help.unwrap().contains("\"shot_window\" of each plastisol"));
    }

    #[test]
    fn plastisols_that_are_never_hot_enough_together_are_reported() {
        let line = r#"{ "order": "1", "mold": "worm", "formulas": ["apart"], "pieces": 3 }"#;
        pooled(line, |_, faults| {
            let found: Vec<(&str, &str)> = faults.iter().map(|f| (&*f.path, &*f.code)).collect();
            assert_eq!(found, [("/lines/0", "shot-windows-apart")]);
        });
    }

    /// Lines that were read with another book name places that this one lacks.
    #[test]
    fn lines_of_another_book_are_refused() {
        let book = book_from_text(BOOK).unwrap();
        let line = r#"{ "order": "1", "product": "sky worm", "pieces": 3 }"#;
        let day = orders_from_text(&orders(line), &book).unwrap();
        for change in [
            (|line| line.product.mold = 9) as fn(&mut Line),
            |line| line.shape = 1,
            |line| line.product.layers[0].formulas = Vec::from([9]),
            |line| line.product.layers.clear(),
        ] {
            let mut day = day.clone();
            change(&mut day.lines[0]);
            let faults = crate::plan::Plan::make(&book, &day).unwrap_err();
            let found: Vec<(&str, &str)> = faults.iter().map(|f| (&*f.path, &*f.code)).collect();
            assert_eq!(found, [("/lines/0", "line-not-of-book")]);
        }
    }

    // A color without doses is not an order for clear pieces; plain plastisol names its base.
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
        let found: Vec<(&str, &str)> = faults.iter().map(|f| (&*f.path, &*f.code)).collect();
        assert_eq!(
            found,
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

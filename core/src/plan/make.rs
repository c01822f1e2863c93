//! From a book and a day's orders to the plan.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::assign::{Assigned, WorkDraw, assign};
use super::borrowed::borrowed;
use super::cost::{self, Served};
use super::day::{Batch, Day, DayRecipe, FEED_NOT_KNOWN, Line, Pooled, pool};
use super::pot::{Built, PotDraft, PotError, Shots, Workshop, letter, shots};
use super::process::{Heated, SinkLayer};
use super::shelf::LeftOver;
use super::split::Reason;
use super::tool_names::ToolNames;
use super::{
    Heating, Plan, PlannedLine, Pot, Proof, ProofReason, Sinking, Work, WorkFrom, process,
};
use crate::bench::Cup;
use crate::book::{Book, Layer, Vessel};
use crate::caution::Caution;
use crate::fault::{Fault, Faults};
use crate::material::Kind;
use crate::mix::{Assumption, Materials};
use crate::quantity::{Mass, MassDensity};
use crate::show::{Calculated, Note, text};

impl Plan {
    /// Plans `day` in the shop of `book`.
    ///
    /// # Errors
    /// All faults together, each at the order line that shows it first: a recipe or a shot that
    /// cannot be had, a mold larger than the injector, a pot that no cup holds or in which the
    /// bench cannot dose. A shelf where the build lacks the `solver`.
    pub fn make(book: &Book, day: &Day) -> Result<Self, Faults> {
        let mut faults = Vec::new();
        let Pooled { recipes, batches } = pool(book, day, &mut faults);
        let shots: Vec<Option<Shots>> = batches
            .iter()
            .map(|batch| keep(shots(batch, &recipes, book), batch, &mut faults))
            .collect();
        if let Some(faults) = Faults::from_vec(faults) {
            return Err(faults);
        }
        let shots: Vec<Shots> = shots.into_iter().flatten().collect();
        let workshop = Workshop {
            book,
            names: ToolNames::of(book),
            recipes: &recipes,
            batches: &batches,
            shots: &shots,
        };
        let made = workshop.make().map_err(|(batch, error)| {
            let batch = batch.and_then(|batch| batches.get(batch));
            Faults::from(Fault::at(batch.map_or_else(String::new, line_path), &error))
        })?;
        let mut assumptions = made.notes;
        assumptions.extend(assumed(&recipes, &book.materials));
        assumptions.extend(feed_not_known(&batches, book));
        assumptions.extend(process::assumed(&made.pots));
        assumptions.extend(process::questioned(book, &made.pots));
        let mut batch_of: Vec<Option<usize>> = alloc::vec![None; day.lines.len()];
        for (batch, lines) in batches.iter().map(|batch| &batch.lines).enumerate() {
            for line in lines {
                batch_of.get_mut(*line).into_iter().for_each(|of| *of = Some(batch));
            }
        }
        let lines = day.lines.iter().zip(&batch_of);
        let lines = lines.map(|(line, batch)| workshop.line(line, *batch, &made.serving)).collect();
        let mut plan = Self {
            #[cfg(feature = "document")]
            format: crate::document::Format::V1,
            #[cfg(feature = "document")]
            made_from: None,
            shop: book.shop.clone(),
            day: day.day.clone(),
            measures: book.system,
            lines,
            water: process::water(book),
            cautions: cautions(&made.pots),
            pots: made.pots,
            work: made.work,
            shelf: Vec::new(),
            stock: Vec::new(),
            cost: None,
            proof: made.proof,
            borrowed: borrowed(&recipes, book)?,
            assumptions,
        };
        plan.use_shelf(book, &day.shelf)?;
        for (pot, draft) in plan.pots.iter_mut().zip(&made.drafts) {
            workshop.count_left_overs(pot, draft, &day.shelf);
        }
        plan.assumptions.extend(plan.pots.iter().filter_map(process::too_much_heat));
        // What comes from the shelf makes a pot's density less sure.
        for ((planned, line), batch) in plan.lines.iter_mut().zip(&day.lines).zip(batch_of) {
            planned.sinks =
                batch.and_then(|batch| workshop.sinks(batch, line.shape, &made.drafts, &plan.pots));
        }
        plan.count_stock(book, &day.stock)?;
        let served = Served { lines: &day.lines, batches: &batches, drafts: &made.drafts };
        plan.cost = cost::cost(&plan, &served, book);
        if let Some(Calculated::Unknown(note)) = &plan.cost {
            plan.assumptions.push(note.clone());
        }
        Ok(plan)
    }
}

/// The pots of a day, built.
struct Made {
    pots: Vec<Pot>,
    /// What each was made for.
    drafts: Vec<PotDraft>,
    /// For each batch the pots that serve it.
    serving: Vec<Vec<usize>>,
    work: Vec<Work>,
    proof: Proof,
    notes: Vec<Note>,
}

/// The batch that an error concerns, and the error.
type At = (Option<usize>, PotError);

fn keep<T>(result: Result<T, PotError>, batch: &Batch, faults: &mut Vec<Fault>) -> Option<T> {
    result.map_err(|error| faults.push(Fault::at(line_path(batch), &error))).ok()
}

/// The path of the first line of a batch.
fn line_path(batch: &Batch) -> String {
    batch.lines.first().map_or_else(String::new, |line| format!("/lines/{line}"))
}

impl Workshop<'_> {
    /// Assigns the day's stages to pots and builds those.
    ///
    /// The assignment knows the largest cup, but not that its base goes up to a mark, nor what the
    /// bench can dose: where a pot then overflows, less is assigned to each; where a later addition
    /// is too small to measure, the pot's stages get pots of their own.
    fn make(&self) -> Result<Made, At> {
        let largest = self.largest_cup().ok_or((None, PotError::Lost))?;
        let whole = largest.capacity * self.book.limits.most_full;
        let mut holds = whole;
        loop {
            let assigned = assign(self, holds, self.largest_vessel())
                .map_err(|error| (error.stage().and_then(|stage| self.batch_of(stage)), error))?;
            match self.build_all(assigned) {
                Err((batch, error)) if error.is_too_full() => {
                    holds -= largest.mark;
                    if holds < whole * 0.5 {
                        return Err((batch, error));
                    }
                }
                made => return made,
            }
        }
    }

    fn build_all(&self, mut assigned: Assigned) -> Result<Made, At> {
        let mut notes = Vec::new();
        let mut built: Vec<Option<Built>> = Vec::new();
        while let Some(draft) = assigned.pots.get(built.len()) {
            match self.build(draft) {
                Ok(pot) => built.push(Some(pot)),
                Err(error) if error.is_about_measuring() && draft.stages.len() > 1 => {
                    notes.push(taken_apart(draft, &error, self.recipes));
                    assigned.take_apart(built.len());
                }
                Err(error) => return Err((draft.batches().next(), error)),
            }
        }
        let order = assigned.order_of_work();
        let mut pots = Vec::new();
        let in_order = order.iter().filter_map(|pot| built.get_mut(*pot)?.take());
        for (index, pot) in in_order.enumerate() {
            let (pot, note) = pot.named(letter(index));
            pots.push(pot);
            notes.extend(note);
        }
        let assigned = assigned.renumbered(&order);
        name_companions(&assigned, &mut pots);
        let works = assigned.work.iter();
        let work = works.filter_map(|work| self.work(work, &assigned.pots, &pots)).collect();
        Ok(Made {
            pots,
            serving: self.serving(&assigned),
            work,
            proof: proof(&assigned, self.recipes),
            notes,
            drafts: assigned.pots,
        })
    }

    /// For each batch the pots that serve it, in their order.
    fn serving(&self, assigned: &Assigned) -> Vec<Vec<usize>> {
        let mut serving: Vec<Vec<usize>> = alloc::vec![Vec::new(); self.batches.len()];
        for (pot, draft) in assigned.pots.iter().enumerate() {
            for batch in draft.batches() {
                let pots = serving.get_mut(batch).filter(|pots| pots.last() != Some(&pot));
                pots.into_iter().for_each(|pots| pots.push(pot));
            }
        }
        serving
    }

    /// The cup that holds most.
    fn largest_cup(&self) -> Option<Cup> {
        let cups = self.book.tools.cups().iter().copied();
        cups.reduce(|a, b| if b.capacity > a.capacity { b } else { a })
    }

    /// The largest film and heel of all cups: whichever a pot gets, it keeps no more.
    fn largest_vessel(&self) -> Vessel {
        let larger = |a: Mass, b: Mass| if b > a { b } else { a };
        self.book.vessels.iter().fold(Vessel::default(), |most, vessel| Vessel {
            film: larger(most.film, vessel.film),
            heel: larger(most.heel, vessel.heel),
            ..Vessel::default()
        })
    }

    /// Counts the heats of the left-overs that went into `pot` among its own.
    fn count_left_overs(&self, pot: &mut Pot, draft: &PotDraft, shelf: &[LeftOver]) {
        let Some(from) = &pot.from_shelf else { return };
        let is_in = |one: &&LeftOver| from.left_overs.iter().any(|part| part.name == one.name);
        let left_overs: Vec<&LeftOver> = shelf.iter().filter(is_in).collect();
        let stages = draft.stages.iter().zip(&pot.stages);
        let heated = stages.filter_map(|(draft, stage)| {
            Some(Heated { recipe: &self.recipes.get(draft.recipe)?.recipe, stage })
        });
        pot.heats = process::heats(self.book, &heated.collect::<Vec<_>>(), &left_overs);
    }

    /// The batch of a stage as the assignment counts them.
    fn batch_of(&self, stage: usize) -> Option<usize> {
        let layers = self.batches.iter().enumerate();
        layers.flat_map(|(batch, of)| of.layers.iter().map(move |_| batch)).nth(stage)
    }

    fn work(&self, draws: &[WorkDraw], drafts: &[PotDraft], pots: &[Pot]) -> Option<Work> {
        let first = draws.first()?;
        let batch = self.batches.get(first.batch)?;
        let from = draws.iter().map(|draw| WorkFrom {
            pot: letter(draw.pot),
            stage: u32::try_from(draw.stage.saturating_add(1)).unwrap_or(u32::MAX),
            heat: draw.heated,
        });
        Some(Work {
            mold: self.book.molds.get(batch.mold)?.name.clone(),
            shots: first.shots,
            from: from.collect(),
            heating: self.heating_together(draws, drafts, pots),
        })
    }

    /// How the pots that are heated for `draws` are heated as one load, where there are several.
    fn heating_together(
        &self,
        draws: &[WorkDraw],
        drafts: &[PotDraft],
        pots: &[Pot],
    ) -> Option<Calculated<Heating>> {
        let mut cups = Vec::new();
        for draw in draws.iter().filter(|draw| draw.heated) {
            let stage = drafts.get(draw.pot)?.stages.get(draw.stage)?;
            let pot = pots.get(draw.pot)?;
            let mut vessels = self.book.tools.cups().iter().zip(&self.book.vessels);
            let vessel = vessels.find(|(cup, _)| cup.capacity == pot.cup.quantity);
            cups.push(process::Cup {
                recipe: self.recipes.get(stage.recipe)?,
                mass: pot.stages.get(draw.stage)?.holds.quantity,
                vessel: vessel.map(|(_, vessel)| vessel.heat_capacity).unwrap_or_default(),
                first: draw.stage == 0,
            });
        }
        if cups.len() > 1 { process::heating(self.book, &cups) } else { None }
    }

    fn line(&self, line: &Line, batch: Option<usize>, serving: &[Vec<usize>]) -> PlannedLine {
        let mold = self.book.molds.get(line.product.mold);
        let cavities = mold.and_then(|mold| mold.cavities.get(line.shape));
        let layers = batch.and_then(|batch| self.shots.get(batch)).map(|shots| &shots.layers);
        let piece = layers.zip(cavities).map_or(Mass::default(), |(layers, cavities)| {
            layers
                .iter()
                .fold(Mass::default(), |sum, layer| sum + layer.mass.piece(cavities.volume.value))
        });
        let pots = batch.and_then(|batch| serving.get(batch)).into_iter().flatten();
        PlannedLine {
            order: line.order.clone(),
            what: self.what(line),
            mold: mold.map(|mold| mold.name.clone()).unwrap_or_default(),
            shape: cavities.and_then(|cavities| cavities.shape.clone()),
            pieces: line.pieces,
            packs: line.packs.map(|(packs, _)| packs),
            pack_of: line.packs.map(|(_, each)| each),
            pots: pots.copied().map(letter).collect(),
            piece: text::mass(piece),
            sinks: None,
            promised: line.promised.clone(),
            #[cfg(feature = "document")]
            ext: line.ext.clone(),
        }
    }

    /// How a piece of `batch` from the cavities of index `shape` sinks, shot from `pots` as they are drafted.
    fn sinks(
        &self,
        batch: usize,
        shape: usize,
        drafts: &[PotDraft],
        pots: &[Pot],
    ) -> Option<Calculated<Sinking>> {
        let place = batch;
        let (batch, shots) = (self.batches.get(batch)?, self.shots.get(batch)?);
        let mold = self.book.molds.get(batch.mold)?;
        let cavities = mold.cavities.get(shape)?;
        let mut layers = Vec::with_capacity(batch.layers.len());
        for (index, (layer, shot)) in batch.layers.iter().zip(&shots.layers).enumerate() {
            let melt = self.recipes.get(layer.0)?.melt_in(mold);
            let solid = 1.0 - melt.voids.value;
            layers.push(SinkLayer {
                mass: shot.mass.piece(cavities.volume.value),
                density: melt.cold * solid,
                unsure: unsure(place, index, drafts, pots).map(|unsure| unsure * solid),
            });
        }
        process::sinking(self.book, mold, cavities, &layers)
    }

    /// The product's name, or the formulas of its layers.
    fn what(&self, line: &Line) -> String {
        if !line.product.name.is_empty() {
            return line.product.name.clone();
        }
        let layer = |layer: &Layer| {
            let names = layer.formulas.iter().filter_map(|&index| self.book.formulas.get(index));
            names.map(|formula| formula.name.as_str()).collect::<Vec<_>>().join(" + ")
        };
        line.product.layers.iter().map(layer).collect::<Vec<_>>().join(" / ")
    }
}

/// How unsure the density of a layer of a batch is: as that of the least sure stage that it is drawn from; `None` where
/// that is not known of one.
fn unsure(batch: usize, layer: usize, drafts: &[PotDraft], pots: &[Pot]) -> Option<MassDensity> {
    let mut most = None;
    for (draft, pot) in drafts.iter().zip(pots) {
        for (draft, stage) in draft.stages.iter().zip(&pot.stages) {
            if draft.draws.iter().any(|draw| (draw.batch, draw.layer) == (batch, layer)) {
                let unsure = stage.density_uncertainty.as_ref()?.quantity;
                most = Some(most.map_or(unsure, |most: MassDensity| most.max(unsure)));
            }
        }
    }
    most
}

impl PotDraft {
    /// The batches that it serves.
    fn batches(&self) -> impl Iterator<Item = usize> {
        self.stages.iter().flat_map(|stage| &stage.draws).map(|draw| draw.batch)
    }
}

/// Names, at each draw of a laminated piece, the pots that are hot with it.
fn name_companions(assigned: &Assigned, pots: &mut [Pot]) {
    let companions = assigned.companions();
    for (index, (draft, pot)) in assigned.pots.iter().zip(pots).enumerate() {
        for (draft, stage) in draft.stages.iter().zip(&mut pot.stages) {
            for (draw, shown) in draft.draws.iter().zip(&mut stage.draws) {
                let own = |at: &(usize, usize, usize)| (at.0, at.1).cmp(&(index, draw.batch));
                let first = companions.partition_point(|at| own(at).is_lt());
                let others = companions.iter().skip(first).take_while(|at| own(at).is_eq());
                shown.together_with = others.map(|&(_, _, other)| letter(other)).collect();
            }
        }
    }
}

/// A recipe by its formulas.
fn recipe_name(recipe: usize, recipes: &[DayRecipe]) -> String {
    recipes.get(recipe).map(|recipe| recipe.formulas.join(" + ")).unwrap_or_default()
}

fn taken_apart(draft: &PotDraft, error: &PotError, recipes: &[DayRecipe]) -> Note {
    let names: Vec<String> =
        draft.stages.iter().map(|stage| recipe_name(stage.recipe, recipes)).collect();
    Note {
        code: "pot-taken-apart".to_string(),
        message: format!(
            "{} could share a pot, but the bench cannot measure what goes in between: {error}",
            names.join(" and then ")
        ),
    }
}

/// The proof in words.
fn proof(assigned: &Assigned, recipes: &[DayRecipe]) -> Proof {
    let number = |count: usize| u32::try_from(count).unwrap_or(u32::MAX);
    let names = |formulas: &[(usize, u32)]| -> Vec<String> {
        formulas.iter().map(|(formula, _)| recipe_name(*formula, recipes)).collect()
    };
    let reasons = assigned.proof.reasons.iter().map(|reason| {
        let (because, apart) = match reason {
            Reason::Apart { formulas } => {
                ("no two of these can become each other by adding, so none shares a pot".to_string(), names(formulas))
            }
            Reason::Layers { layers, formulas } => {
                let mut apart: Vec<String> = layers
                    .iter()
                    .filter_map(|stage| assigned.recipes.get(*stage))
                    .map(|recipe| recipe_name(*recipe, recipes))
                    .collect();
                apart.extend(names(formulas));
                ("the layers of a piece are hot at once, and none of these can share a pot with another".to_string(), apart)
            }
            Reason::Capacity { .. } => {
                ("the base that all shots take fills so many cups".to_string(), Vec::new())
            }
            Reason::Heats { heats, .. } => (
                format!("{heats} heats are more than the stabilizer allows fewer pots"),
                Vec::new(),
            ),
        };
        ProofReason { pots: number(reason.pots()), because, apart }
    });
    Proof {
        pots: number(assigned.proof.found),
        least: number(assigned.proof.lower),
        reasons: reasons.collect(),
    }
}

/// What the day's recipes had to assume: one note a kind, with the materials it concerns.
fn assumed(recipes: &[DayRecipe], materials: &Materials) -> Vec<Note> {
    let mut all: Vec<Assumption> =
        recipes.iter().flat_map(|recipe| recipe.assumptions.iter().copied()).collect();
    all.sort_unstable();
    all.dedup();
    let kinds = all.chunk_by(|a, b| core::mem::discriminant(a) == core::mem::discriminant(b));
    kinds.filter_map(|kind| assumption_note(kind, materials)).collect()
}

/// The molds whose feed share the book does not state.
fn feed_not_known(batches: &[Batch], book: &Book) -> Option<Note> {
    let mut molds: Vec<usize> = batches.iter().map(|batch| batch.mold).collect();
    molds.sort_unstable();
    molds.dedup();
    let molds = molds.into_iter().filter_map(|mold| book.molds.get(mold));
    let names: Vec<&str> =
        molds.filter(|mold| mold.feed.is_none()).map(|mold| mold.name.as_str()).collect();
    let share = text::percent(FEED_NOT_KNOWN.into()).text;
    (!names.is_empty()).then(|| Note {
        code: "feed-not-known".to_string(),
        message: format!(
            "Feed share not known of {}: pieces are shown fed {share} of their contraction; the range holds either way. Weigh some to learn it.",
            names.join(", ")
        ),
    })
}

fn assumption_note(assumptions: &[Assumption], materials: &Materials) -> Option<Note> {
    let names: Vec<&str> = assumptions
        .iter()
        .filter_map(|assumption| materials.get(assumption.material()).ok())
        .map(|material| material.name.as_str())
        .collect();
    let names = names.join(", ");
    let (code, message) = match assumptions.first()? {
        Assumption::FusedAsLiquid(_) => (
            "fused-as-liquid",
            format!("Fused density not known of {names}: pieces are weighed with the liquid one."),
        ),
        Assumption::NoExpansion(_) => (
            "no-expansion",
            format!(
                "Expansion not known of {names}: taken as none, so that shots are reckoned a little heavy."
            ),
        ),
        Assumption::NoShotWindow(_) => (
            "no-shot-window",
            format!(
                "Shot window not known of {names}: shots are reckoned at 20 °C, a little heavy."
            ),
        ),
    };
    Some(Note { code: code.to_string(), message })
}

/// The cautions that the day's pots call for.
fn cautions(pots: &[Pot]) -> Vec<Caution> {
    let salted = pots
        .iter()
        .flat_map(|pot| &pot.stages)
        .flat_map(|stage| &stage.weigh)
        .any(|weigh| weigh.kind == Kind::Salt);
    let mut cautions = Vec::from([Caution::HotPlastisol, Caution::Fumes, Caution::Water]);
    if salted {
        cautions.push(Caution::DampSalt);
    }
    cautions.extend([Caution::Vacuum, Caution::FoodGear, Caution::DataSheet]);
    cautions
}

#[cfg(all(test, feature = "document"))]
mod tests {
    use alloc::string::ToString;
    use alloc::vec::Vec;

    use crate::document::small::{BOOK, orders};
    use crate::document::{book_from_text, orders_from_text};
    use crate::plan::Plan;

    // Seven shots of body leave a shot for the color, of which the bench cannot count the drops.
    #[test]
    fn stages_get_pots_of_their_own_where_the_bench_cannot_dose_between_them() {
        let mut book: serde_json::Value = serde_json::from_str(BOOK).unwrap();
        book["formulas"]["faint"] =
            serde_json::json!({ "per": "1 cup", "doses": { "blue": "3 drops" } });
        let book = book_from_text(&book.to_string()).unwrap();
        let lines = r#"
            { "order": "1", "mold": "worm", "formulas": ["body"], "pieces": 28 },
            { "order": "2", "mold": "worm", "formulas": ["faint", "body"], "pieces": 2 }"#;
        let plan = Plan::make(&book, &orders_from_text(&orders(lines), &book).unwrap()).unwrap();
        let codes: Vec<&str> = plan.assumptions.iter().map(|note| note.code.as_str()).collect();
        assert!(codes.contains(&"pot-taken-apart"), "{codes:?}");
        assert_eq!(plan.pots.len(), 2);
        assert!(plan.pots.iter().all(|pot| pot.stages.len() == 1));
    }
}

//! From a book and a day's orders to the plan.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::day::{Batch, Day, DayRecipe, FEED_NOT_KNOWN, Pooled, pool};
use super::pot::{DrawDraft, PotDraft, PotError, Shots, StageDraft, Workshop, letter, shots};
use super::{Note, Plan, PlannedLine, Pot, text};
use crate::book::Book;
use crate::caution::Caution;
use crate::fault::{Fault, Faults};
use crate::material::Kind;
use crate::mix::{Assumption, Materials};
use crate::quantity::Mass;

impl Plan {
    /// Plans `day` in the shop of `book`.
    ///
    /// # Errors
    /// All faults together, each at the order line that shows it first: a recipe or a shot that
    /// cannot be had, a mold larger than the injector, a pot that no cup holds or in which the
    /// bench cannot dose.
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
        let workshop = Workshop { book, recipes: &recipes, batches: &batches, shots: &shots };
        let (pots, mut assumptions) = workshop.pots()?;
        assumptions.extend(assumed(&recipes, &book.materials));
        assumptions.extend(feed_not_known(&batches, book));
        let lines = day
            .lines
            .iter()
            .enumerate()
            .map(|(index, line)| workshop.line(index, line, &pots))
            .collect();
        Ok(Self {
            shop: book.shop.clone(),
            day: day.day.clone(),
            measures: book.system,
            lines,
            cautions: cautions(&pots),
            pots: pots.into_iter().map(|pot| pot.pot).collect(),
            assumptions,
        })
    }
}

/// A pot and the batches that are shot from it.
struct Assigned {
    pot: Pot,
    batches: Vec<usize>,
}

fn keep<T>(result: Result<T, PotError>, batch: &Batch, faults: &mut Vec<Fault>) -> Option<T> {
    result.map_err(|error| faults.push(Fault::at(line_path(batch), &error))).ok()
}

/// The path of the first line of a batch.
fn line_path(batch: &Batch) -> String {
    batch.lines.first().map_or_else(String::new, |line| format!("/lines/{line}"))
}

impl Workshop<'_> {
    /// The pots, with what had to be noted of them.
    fn pots(&self) -> Result<(Vec<Assigned>, Vec<Note>), Faults> {
        let mut pots: Vec<Assigned> = Vec::new();
        let mut notes = Vec::new();
        let mut faults = Vec::new();
        for draft in self.drafts() {
            match self.split(&draft, pots.len()) {
                Ok(built) => {
                    for (draft, built) in built {
                        let batches = draft
                            .stages
                            .iter()
                            .flat_map(|stage| stage.draws.iter().map(|draw| draw.batch))
                            .collect();
                        pots.push(Assigned { pot: built.pot, batches });
                        notes.extend(built.notes);
                    }
                }
                Err(error) => {
                    let batch = draft.stages.first().and_then(|stage| stage.draws.first());
                    let batch = batch.and_then(|draw| self.batches.get(draw.batch));
                    let path = batch.map_or_else(String::new, line_path);
                    faults.push(Fault::at(path, &error));
                }
            }
        }
        match Faults::from_vec(faults) {
            Some(faults) => Err(faults),
            None => {
                self.name_companions(&mut pots);
                Ok((pots, notes))
            }
        }
    }

    /// One pot for each recipe of the day, in the order in which the orders ask for them.
    fn drafts(&self) -> Vec<PotDraft> {
        let mut drafts: Vec<PotDraft> = Vec::new();
        for (batch, shots) in self.shots.iter().enumerate() {
            let layers = self.batches.get(batch).map(|batch| batch.layers.as_slice());
            for (layer, &(recipe, _)) in layers.unwrap_or_default().iter().enumerate() {
                let draw = DrawDraft { batch, layer, shots: shots.shots };
                let known = drafts
                    .iter_mut()
                    .flat_map(|draft| draft.stages.iter_mut())
                    .find(|stage| stage.recipe == recipe);
                match known {
                    Some(stage) => stage.draws.push(draw),
                    None => drafts.push(PotDraft {
                        stages: Vec::from([StageDraft { recipe, draws: Vec::from([draw]) }]),
                    }),
                }
            }
        }
        drafts
    }

    /// Builds the draft in one pot, or in the fewest that hold it, its shots spread evenly.
    fn split(
        &self,
        draft: &PotDraft,
        before: usize,
    ) -> Result<Vec<(PotDraft, super::pot::Built)>, PotError> {
        let mut pots = 1_u32;
        loop {
            let built: Result<Vec<_>, PotError> = (0..pots)
                .filter_map(|part| draft.part(part, pots))
                .enumerate()
                .map(|(index, part)| {
                    let built = self.build(&part, &letter(before.saturating_add(index)))?;
                    Ok((part, built))
                })
                .collect();
            match built {
                Ok(built) => return Ok(built),
                Err(error) if error.wants_more_pots() && pots < draft.shots() => {
                    pots = pots.saturating_add(1);
                }
                Err(error) => return Err(error),
            }
        }
    }

    /// Names, at each draw of a laminated piece, the pots that are hot with it.
    fn name_companions(&self, pots: &mut [Assigned]) {
        let served: Vec<(String, Vec<usize>)> =
            pots.iter().map(|pot| (pot.pot.pot.clone(), pot.batches.clone())).collect();
        for pot in pots {
            let mut batches = pot.batches.iter();
            for draw in pot.pot.stages.iter_mut().flat_map(|stage| &mut stage.draws) {
                let Some(batch) = batches.next() else { continue };
                let layers = self.batches.get(*batch).map_or(1, |batch| batch.layers.len());
                if layers > 1 {
                    draw.together_with = served
                        .iter()
                        .filter(|(name, served)| *name != pot.pot.pot && served.contains(batch))
                        .map(|(name, _)| name.clone())
                        .collect();
                }
            }
        }
    }

    fn line(&self, index: usize, line: &super::day::Line, pots: &[Assigned]) -> PlannedLine {
        let batch = self.batches.iter().position(|batch| batch.lines.contains(&index));
        let mold = self.book.molds.get(line.product.mold);
        let cavities = mold.and_then(|mold| mold.cavities.get(line.shape));
        let piece = batch.and_then(|batch| self.shots.get(batch)).zip(cavities).map_or(
            Mass::default(),
            |(shots, cavities)| {
                shots
                    .layers
                    .iter()
                    .fold(Mass::default(), |sum, layer| sum + layer.mass.piece(cavities.volume))
            },
        );
        PlannedLine {
            order: line.order.clone(),
            what: self.what(line),
            mold: mold.map(|mold| mold.name.clone()).unwrap_or_default(),
            shape: cavities.and_then(|cavities| cavities.shape.clone()),
            pieces: line.pieces,
            packs: line.packs.map(|(packs, _)| packs),
            pack_of: line.packs.map(|(_, each)| each),
            pots: pots
                .iter()
                .filter(|pot| batch.is_some_and(|batch| pot.batches.contains(&batch)))
                .map(|pot| pot.pot.pot.clone())
                .collect(),
            piece: text::mass(piece),
            promised: line.promised.clone(),
            #[cfg(feature = "document")]
            ext: line.ext.clone(),
        }
    }

    /// The product's name, or the formulas of its layers.
    fn what(&self, line: &super::day::Line) -> String {
        if !line.product.name.is_empty() {
            return line.product.name.clone();
        }
        let layers: Vec<String> = line
            .product
            .layers
            .iter()
            .map(|layer| {
                let names =
                    layer.formulas.iter().filter_map(|&index| self.book.formulas.get(index));
                names.map(|formula| formula.name.as_str()).collect::<Vec<_>>().join(" + ")
            })
            .collect();
        layers.join(" / ")
    }
}

impl PotDraft {
    /// Shots of the draw with the most.
    fn shots(&self) -> u32 {
        let draws = self.stages.iter().flat_map(|stage| &stage.draws);
        draws.map(|draw| draw.shots).max().unwrap_or(0)
    }

    /// Part `part` of `parts`: its share of every draw's shots, the first parts taking the odd ones.
    fn part(&self, part: u32, parts: u32) -> Option<Self> {
        let share = |shots: u32| {
            let each = shots.checked_div(parts).unwrap_or(0);
            let odd = shots.checked_rem(parts).unwrap_or(0);
            each.saturating_add(u32::from(part < odd))
        };
        let stages: Vec<StageDraft> = self
            .stages
            .iter()
            .map(|stage| StageDraft {
                recipe: stage.recipe,
                draws: stage
                    .draws
                    .iter()
                    .map(|draw| DrawDraft { shots: share(draw.shots), ..*draw })
                    .filter(|draw| draw.shots > 0)
                    .collect(),
            })
            .filter(|stage| !stage.draws.is_empty())
            .collect();
        (!stages.is_empty()).then_some(Self { stages })
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
        Assumption::PharmacyDrop(_) => (
            "pharmacy-drop",
            format!(
                "Drop never weighed of {names}: taken as 1/20 mL, which may be a third off. Weigh 50 drops."
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
fn cautions(pots: &[Assigned]) -> Vec<Caution> {
    let salted = pots
        .iter()
        .flat_map(|pot| &pot.pot.stages)
        .flat_map(|stage| &stage.weigh)
        .any(|weigh| weigh.kind == Kind::Salt);
    let mut cautions = Vec::from([Caution::HotPlastisol, Caution::Fumes, Caution::Water]);
    if salted {
        cautions.push(Caution::DampSalt);
    }
    cautions.extend([Caution::FoodGear, Caution::DataSheet]);
    cautions
}

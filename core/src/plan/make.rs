//! From a book and a day's orders to the plan.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::assign::{Assigned, WorkDraw, assign};
use super::day::{Batch, Day, DayRecipe, Line, Pooled, pool};
use super::measures::Cup;
use super::pot::{PotDraft, PotError, Shots, Workshop, letter, shots};
use super::split::Reason;
use super::{Note, Plan, PlannedLine, Pot, Proof, ProofReason, Work, WorkFrom, text};
use crate::book::{Book, Layer, Vessel};
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
        let workshop = Workshop { book, recipes: &recipes, batches: &batches, shots: &shots };
        let made = workshop.make().map_err(|(batch, error)| {
            let batch = batch.and_then(|batch| batches.get(batch));
            Faults::from(Fault::at(batch.map_or_else(String::new, line_path), &error))
        })?;
        let mut assumptions = made.notes;
        assumptions.extend(assumed(&recipes, &book.materials));
        let lines = day
            .lines
            .iter()
            .enumerate()
            .map(|(index, line)| workshop.line(index, line, &made.served))
            .collect();
        let mut plan = Self {
            shop: book.shop.clone(),
            day: day.day.clone(),
            measures: book.system,
            lines,
            cautions: cautions(&made.pots),
            pots: made.pots,
            work: made.work,
            shelf: Vec::new(),
            proof: made.proof,
            assumptions,
        };
        plan.use_shelf(book, &day.shelf)?;
        Ok(plan)
    }
}

/// The pots of a day, built.
struct Made {
    pots: Vec<Pot>,
    /// The batches that each pot serves.
    served: Vec<Vec<usize>>,
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
        let mut index = 0;
        while let Some(draft) = assigned.pots.get(index) {
            if let Err(error) = self.build(draft, "") {
                if !(error.is_about_measuring() && draft.stages.len() > 1) {
                    return Err((draft.batches().first().copied(), error));
                }
                notes.push(taken_apart(draft, &error, self.recipes));
                assigned.take_apart(index);
            }
            index = index.saturating_add(1);
        }
        let assigned = assigned.in_order_of_work();
        let mut pots = Vec::new();
        for (index, draft) in assigned.pots.iter().enumerate() {
            let built = self.build(draft, &letter(index)).map_err(|error| (None, error))?;
            pots.push(built.pot);
            notes.extend(built.notes);
        }
        self.name_companions(&assigned, &mut pots);
        Ok(Made {
            pots,
            served: assigned.pots.iter().map(PotDraft::batches).collect(),
            work: assigned.work.iter().filter_map(|work| self.work(work)).collect(),
            proof: proof(&assigned, self.recipes),
            notes,
        })
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
        })
    }

    /// The batch of a stage as the assignment counts them.
    fn batch_of(&self, stage: usize) -> Option<usize> {
        let layers = self.batches.iter().enumerate();
        layers.flat_map(|(batch, of)| of.layers.iter().map(move |_| batch)).nth(stage)
    }

    /// Names, at each draw of a laminated piece, the pots that are hot with it.
    fn name_companions(&self, assigned: &Assigned, pots: &mut [Pot]) {
        for (index, (draft, pot)) in assigned.pots.iter().zip(pots).enumerate() {
            for (draft, stage) in draft.stages.iter().zip(&mut pot.stages) {
                for (draw, shown) in draft.draws.iter().zip(&mut stage.draws) {
                    let others = assigned.companions(index, draw.batch);
                    shown.together_with = others.into_iter().map(letter).collect();
                }
            }
        }
    }

    fn work(&self, draws: &[WorkDraw]) -> Option<Work> {
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
        })
    }

    fn line(&self, index: usize, line: &Line, served: &[Vec<usize>]) -> PlannedLine {
        let batch = self.batches.iter().position(|batch| batch.lines.contains(&index));
        let mold = self.book.molds.get(line.product.mold);
        let cavities = mold.and_then(|mold| mold.cavities.get(line.shape));
        let layers = batch.and_then(|batch| self.shots.get(batch)).map(|shots| &shots.layers);
        let piece = layers.zip(cavities).map_or(Mass::default(), |(layers, cavities)| {
            layers
                .iter()
                .fold(Mass::default(), |sum, layer| sum + layer.mass.piece(cavities.volume))
        });
        let pots = served
            .iter()
            .enumerate()
            .filter(|(_, batches)| batch.is_some_and(|batch| batches.contains(&batch)));
        PlannedLine {
            order: line.order.clone(),
            what: self.what(line),
            mold: mold.map(|mold| mold.name.clone()).unwrap_or_default(),
            shape: cavities.and_then(|cavities| cavities.shape.clone()),
            pieces: line.pieces,
            packs: line.packs.map(|(packs, _)| packs),
            pack_of: line.packs.map(|(_, each)| each),
            pots: pots.map(|(pot, _)| letter(pot)).collect(),
            piece: text::mass(piece),
            promised: line.promised.clone(),
            #[cfg(feature = "document")]
            ext: line.ext.clone(),
        }
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

impl PotDraft {
    /// The batches that it serves.
    fn batches(&self) -> Vec<usize> {
        let draws = self.stages.iter().flat_map(|stage| &stage.draws);
        draws.map(|draw| draw.batch).collect()
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
                ("no two of these can become each other by adding".to_string(), names(formulas))
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
    for recipe in recipes.iter().filter(|recipe| recipe.window.is_none()) {
        all.extend(recipe.recipe.base().iter().map(|part| Assumption::NoShotWindow(part.material)));
    }
    all.sort_unstable();
    all.dedup();
    let kinds = all.chunk_by(|a, b| core::mem::discriminant(a) == core::mem::discriminant(b));
    kinds.filter_map(|kind| assumption_note(kind, materials)).collect()
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
    cautions.extend([Caution::FoodGear, Caution::DataSheet]);
    cautions
}

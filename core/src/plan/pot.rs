//! One pot: which cup, how much base to its mark, what each stage adds and shoots.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::day::{Batch, DayRecipe};
use super::dosing::Dosing;
use super::doubt::{self, Taking};
use super::precedence::{FreshBase, PrecedenceError};
use super::process::{self, Heated};
use super::sequence::{self, SequenceError};
use super::split::SplitError;
use super::tool_names::ToolNames;
use super::weigh::{self, Addition, Listed, WeighError};
use super::{Draw, Note, Pieces, Pot, Stage, flakes, text};
use crate::batch::{self, BatchError, Injector, Loads, Marks, Rejects, Wanted};
use crate::book::{Book, Mold, Sprues};
use crate::fault::Diagnose;
use crate::mix::{MaterialId, Mix, MixError, Phase};
use crate::plan::measures::{MeasureError, Step};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};
use crate::shot::{ShotError, ShotMass};

/// What a batch takes: its shots, and for each layer what one takes and how it is loaded.
#[derive(Debug, Clone)]
pub(super) struct Shots {
    pub(super) shots: u32,
    pub(super) layers: Vec<LayerShots>,
}

#[derive(Debug, Clone, Copy)]
pub(super) struct LayerShots {
    pub(super) mass: ShotMass,
    pub(super) density: MassDensity,
}

/// The shots of `batch`, and what each of its layers takes for one.
pub(super) fn shots(batch: &Batch, recipes: &[DayRecipe], book: &Book) -> Result<Shots, PotError> {
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
    let layers = batch.layers.iter().map(|&(recipe, share)| {
        let recipe = recipes.get(recipe).ok_or(PotError::Lost)?;
        let mass = recipe.shot(mold, share)?;
        Ok(LayerShots { mass, density: recipe.melt_in(mold).shot_density() })
    });
    Ok(Shots { shots, layers: layers.collect::<Result<_, PotError>>()? })
}

impl Shots {
    /// Injector loads for `shots` of them; the layers of a laminated piece are loaded together.
    pub(super) fn loads(&self, shots: u32, book: &Book) -> Result<Loads, PotError> {
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

fn injector(book: &Book) -> Injector {
    Injector { holds: book.injector.holds, keeps: book.injector.keeps }
}

/// What is to be made in one pot.
#[derive(Debug, Clone)]
pub(super) struct PotDraft {
    pub(super) stages: Vec<StageDraft>,
}

/// What is to be shot of one recipe.
#[derive(Debug, Clone)]
pub(super) struct StageDraft {
    pub(super) recipe: usize,
    pub(super) draws: Vec<DrawDraft>,
    /// Heats that it takes.
    pub(super) heats: u32,
}

/// Shots of one layer of a batch.
#[derive(Debug, Clone, Copy)]
pub(super) struct DrawDraft {
    pub(super) batch: usize,
    pub(super) layer: usize,
    pub(super) shots: u32,
}

/// What all pots of a day are built from.
pub(super) struct Workshop<'a> {
    pub(super) book: &'a Book,
    pub(super) dosing: &'a Dosing,
    pub(super) names: ToolNames<'a>,
    pub(super) recipes: &'a [DayRecipe],
    pub(super) batches: &'a [Batch],
    pub(super) shots: &'a [Shots],
}

/// A pot that has no name yet, and what made it larger than its orders need.
pub(super) struct Built {
    pot: Pot,
    raised: Option<Raised>,
}

/// Why there is `mix` where the orders need less.
struct Raised {
    why: String,
    need: Mass,
    mix: Mass,
}

impl Built {
    /// The pot by its name, and what there is to say of it.
    pub(super) fn named(self, name: String) -> (Pot, Option<Note>) {
        let note = self.raised.map(|raised| raised.note(&name));
        (Pot { pot: name, ..self.pot }, note)
    }
}

impl Raised {
    fn note(&self, pot: &str) -> Note {
        let Self { why, need, mix } = self;
        Note {
            code: "pot-raised".to_string(),
            message: format!(
                "Pot {pot} is {} where its orders need {}: {why}.",
                text::mass(*mix).text,
                text::mass(*need).text
            ),
        }
    }
}

/// A stage in numbers.
struct Part<'a> {
    draft: &'a StageDraft,
    recipe: &'a DayRecipe,
    draw: Mass,
    kept: Mass,
    /// Sprues that are melted again with the next stage.
    returned: Mass,
    composition: Vec<f64>,
}

impl Workshop<'_> {
    /// Builds the pot in the smallest cup that holds it.
    pub(super) fn build(&self, draft: &PotDraft) -> Result<Built, PotError> {
        let materials = self.materials(draft)?;
        let parts: Vec<Part<'_>> = draft
            .stages
            .iter()
            .map(|stage| self.part(stage, &materials))
            .collect::<Result<_, _>>()?;
        let mut cups: Vec<usize> = (0..self.book.tools.cups().len()).collect();
        cups.sort_by(|&a, &b| {
            let holds =
                |cup: usize| self.book.tools.cups().get(cup).map_or(0.0, |cup| cup.capacity.si());
            holds(a).total_cmp(&holds(b))
        });
        let mut last = PotError::Lost;
        for cup in cups {
            match self.in_cup(cup, &parts, &materials) {
                Ok(built) => return Ok(built),
                Err(error) if error.wants_larger_cup() => last = error,
                Err(error) => return Err(error),
            }
        }
        Err(last)
    }

    /// The materials of all stages, in the order of the table.
    fn materials(&self, draft: &PotDraft) -> Result<Vec<MaterialId>, PotError> {
        let mut materials = Vec::new();
        for stage in &draft.stages {
            let recipe = self.recipes.get(stage.recipe).ok_or(PotError::Lost)?;
            materials.extend(recipe.recipe.ingredients().map(|ingredient| ingredient.material));
        }
        materials.sort_unstable();
        materials.dedup();
        Ok(materials)
    }

    fn part<'a>(
        &'a self,
        draft: &'a StageDraft,
        materials: &[MaterialId],
    ) -> Result<Part<'a>, PotError> {
        let recipe = self.recipes.get(draft.recipe).ok_or(PotError::Lost)?;
        let mut draw = Mass::default();
        let mut kept = Mass::default();
        let mut sprues = Mass::default();
        for shot in &draft.draws {
            let layer = self.layer(shot)?;
            draw += layer.mass.fill * f64::from(shot.shots);
            // A laminated piece's sprue holds both colors and goes back into neither.
            if self.batches.get(shot.batch).is_some_and(|batch| batch.layers.len() == 1) {
                sprues += layer.mass.sprue * f64::from(shot.shots);
            }
            let keeps = injector(self.book).kept(layer.density)?;
            if keeps > kept {
                kept = keeps;
            }
        }
        let composition = materials
            .iter()
            .map(|&material| {
                let found = recipe.recipe.ingredients().find(|one| one.material == material);
                found.map_or(0.0, |ingredient| ingredient.ratio)
            })
            .collect();
        let kept = kept * f64::from(draft.heats);
        let returned = match self.book.limits.sprues {
            Sprues::Keep => Mass::default(),
            Sprues::MeltAgain => sprues,
        };
        Ok(Part { draft, recipe, draw, kept, returned, composition })
    }

    fn layer(&self, draw: &DrawDraft) -> Result<&LayerShots, PotError> {
        self.shots
            .get(draw.batch)
            .and_then(|shots| shots.layers.get(draw.layer))
            .ok_or(PotError::Lost)
    }

    fn in_cup(
        &self,
        cup: usize,
        parts: &[Part<'_>],
        materials: &[MaterialId],
    ) -> Result<Built, PotError> {
        let first = parts.first().ok_or(PotError::Lost)?;
        let capacity = self.book.tools.cups().get(cup).ok_or(PotError::Lost)?.capacity;
        let holds = capacity * self.book.limits.most_full;
        let base_fraction = Ratio::from(1.0 / first.recipe.recipe.total_per_base());
        let base_density = first.recipe.recipe.base_density(&self.book.materials)?;
        let vessel = self.book.vessels.get(cup).copied().unwrap_or_default();

        let need = self.sequence(parts, holds, vessel, Mass::default())?.start();
        let even = self.least_pot(first);
        let mut why = (even > need).then(|| "the oven does not heat less evenly".to_string());
        let wanted = if even > need { even } else { need };
        let (measurer, mark) = self.measurer(wanted * base_fraction / base_density)?;
        let steps = Marks::Every { step: mark, capacity };
        let mut measured = steps.measure(wanted, base_fraction, base_density)?;
        let mut undosed: Option<PotError> = None;
        loop {
            let sequence = match (self.sequence(parts, holds, vessel, measured.mix), undosed.take())
            {
                // What it takes to dose a material does not fit.
                (Err(error), Some(undosed)) if error.is_too_full() => return Err(undosed),
                (sequence, _) => sequence?,
            };
            match self.weigh_all(&sequence, parts, materials, (measurer, &measured)) {
                Ok(lists) => {
                    let pot = self.pot(cup, parts, sequence, lists)?;
                    let raised = why.map(|why| Raised { why, need, mix: measured.mix });
                    return Ok(Built { pot, raised });
                }
                Err(WeighError::Measure { material, tolerance, error }) => {
                    if error.least().is_none() {
                        return Err(PotError::Measure { material, error });
                    }
                    why = Some(format!(
                        "the bench doses \"{material}\" to {} in no less",
                        text::percent(Ratio::from(tolerance)).text
                    ));
                    let too_small = PotError::TooSmallToDose { material, tolerance, error };
                    // One mark more: the least that works need not be one that works for every amount above it.
                    let more = (measured.base_volume + mark * 0.5) * base_density / base_fraction;
                    measured = match steps.measure(more, base_fraction, base_density) {
                        Err(BatchError::AboveMarks { .. }) => return Err(too_small),
                        measured => measured?,
                    };
                    undosed = Some(too_small);
                }
                Err(WeighError::Mix(error)) => return Err(error.into()),
            }
        }
    }

    /// The least that the oven heats evenly, as a mass of the first stage's mix.
    fn least_pot(&self, first: &Part<'_>) -> Mass {
        self.book.limits.least_pot.map_or(Mass::default(), |least| least * first.recipe.liquid)
    }

    fn sequence(
        &self,
        parts: &[Part<'_>],
        holds: Volume,
        vessel: crate::book::Vessel,
        least: Mass,
    ) -> Result<sequence::Sequence, PotError> {
        let stages: Vec<sequence::Stage<'_>> = parts
            .iter()
            .map(|part| sequence::Stage {
                composition: &part.composition,
                draw: part.draw,
                kept: part.kept,
                returned: part.returned,
                loss: Ratio::from(0.0),
                capacity: Some(holds * part.recipe.liquid),
                heats: part.draft.heats,
            })
            .collect();
        let heel = if vessel.heel > vessel.film { vessel.heel } else { vessel.film };
        let heats = self.book.limits.heats;
        let vessel = sequence::Vessel { film: vessel.film, heel, least, heats };
        let fresh = if self.book.limits.fresh_base { FreshBase::On } else { FreshBase::Off };
        sequence::plan(&stages, &vessel, fresh).map_err(PotError::from)
    }

    fn weigh_all(
        &self,
        sequence: &sequence::Sequence,
        parts: &[Part<'_>],
        materials: &[MaterialId],
        (measurer, measured): (usize, &batch::Measured),
    ) -> Result<Vec<Vec<Listed<'_>>>, WeighError> {
        let mut lists = Vec::new();
        for (index, (step, part)) in sequence.steps.iter().zip(parts).enumerate() {
            let parts_sum = part.composition.iter().fold(0.0, |sum, share| sum + share);
            let additions: Vec<Addition> = materials
                .iter()
                .zip(step.additions.iter().zip(&part.composition))
                .map(|(&material, (&wanted, share))| Addition {
                    material,
                    wanted,
                    total: step.held * (share / parts_sum),
                })
                .collect();
            let base = match (index, part.recipe.recipe.base()) {
                (0, [base]) => {
                    let steps = self.fillings(measurer, measured.base_volume);
                    steps.map(|steps| (base.material, steps))
                }
                _ => None,
            };
            lists.push(weigh::list(&additions, base, self.book, self.dosing)?);
        }
        Ok(lists)
    }

    /// The cup to measure `base` with, and its mark: the one whose marks take the least more, of
    /// those the one with the fewest fillings.
    fn measurer(&self, base: Volume) -> Result<(usize, Volume), PotError> {
        let mut rounded = Vec::new();
        for (index, cup) in self.book.tools.cups().iter().enumerate() {
            let marks = Marks::Every { step: cup.mark, capacity: base + cup.mark };
            let volume = marks.round_up(base)?;
            let fillings = libm::ceil((volume / cup.capacity).si() - 1e-9);
            rounded.push((volume.si(), fillings, index, cup.mark));
        }
        let least = rounded.into_iter().min_by(|a, b| {
            // What differs by rounding alone is the same mark.
            let same = (a.0 - b.0).abs() <= 1e-9 * a.0;
            let volume = if same { core::cmp::Ordering::Equal } else { a.0.total_cmp(&b.0) };
            volume.then(a.1.total_cmp(&b.1)).then(a.2.cmp(&b.2))
        });
        least.map(|(.., index, mark)| (index, mark)).ok_or(PotError::Lost)
    }

    /// `volume` in fillings of cup `cup` to its marks.
    fn fillings(&self, cup: usize, volume: Volume) -> Option<Vec<Step>> {
        let tool = self.book.tools.cups().get(cup)?;
        let marks = libm::round((volume / tool.mark).si());
        Some(tool.steps(cup, marks as u32))
    }

    fn pot(
        &self,
        cup: usize,
        parts: &[Part<'_>],
        sequence: sequence::Sequence,
        lists: Vec<Vec<Listed<'_>>>,
    ) -> Result<Pot, PotError> {
        let system = self.book.system;
        let mut stages = Vec::new();
        let mut kept = Mass::default();
        let mut sprues = Mass::default();
        let last = parts.len().saturating_sub(1);
        let mut takings: Vec<Taking> = Vec::new();
        for (index, ((step, part), list)) in sequence.steps.iter().zip(parts).zip(lists).enumerate()
        {
            kept += step.kept;
            let spare = if index == last { self.drawable(cup, &sequence) } else { Mass::default() };
            for draw in &part.draft.draws {
                sprues += self.layer(draw)?.mass.sprue * f64::from(draw.shots);
            }
            sprues -= step.returned;
            let weigh =
                list.iter().map(|one| one.told(self.book, self.dosing, &self.names)).collect();
            takings.extend(list.into_iter().filter_map(Listed::taking));
            let density_uncertainty = doubt::density(&takings, &self.names, self.book);
            let unsure = density_uncertainty.as_ref().map(|unsure| unsure.quantity);
            let draws = self.draws(part, spare, unsure)?;
            let stays = (step.carried / step.held).value;
            takings.iter_mut().for_each(|taking| taking.share *= stays);
            let mix = part.recipe.recipe.for_mass(step.held)?;
            let solids = self.solids(&mix, part)?;
            let window = part.recipe.window;
            stages.push(Stage {
                formulas: part.recipe.formulas.clone(),
                weigh,
                holds: text::mass(step.held),
                fills: text::volume(step.held / part.recipe.liquid, system),
                density: text::density(part.recipe.melt.cold),
                density_uncertainty,
                solids: text::percent(Ratio::from(solids)),
                shoot_from: window.map(|window| text::temperature(window.low, system)),
                shoot_to: window.map(|window| text::temperature(window.high, system)),
                draws,
                heats: part.draft.heats,
                heating: process::heating(self.book, part.recipe, step.held, index == 0),
                sprues_back: text::mass(step.returned),
                carried: text::mass(step.carried),
            });
        }
        let marked = self.book.tools.cups().get(cup).ok_or(PotError::Lost)?;
        let first = sequence.steps.first().zip(parts.first()).ok_or(PotError::Lost)?;
        let liquid = first.0.held / first.1.recipe.liquid;
        let recipes = parts.iter().map(|part| &part.recipe.recipe);
        let heated: Vec<Heated<'_>> =
            recipes.zip(&stages).map(|(recipe, stage)| Heated { recipe, stage }).collect();
        let heats = process::heats(self.book, &heated);
        Ok(Pot {
            pot: String::new(),
            cup: text::cup(marked.capacity, marked.mark, system),
            degas: process::degas(self.book, cup, liquid),
            from_shelf: None,
            stages,
            heats,
            lost: text::mass(kept + sequence.film),
            left_over: text::mass(sequence.left),
            sprues: text::mass(sprues),
        })
    }

    /// What of the left-over can still be shot: all but the heel.
    fn drawable(&self, cup: usize, sequence: &sequence::Sequence) -> Mass {
        let heel = self.book.vessels.get(cup).map_or(Mass::default(), |vessel| vessel.heel);
        let rest = sequence.left + sequence.film - heel;
        let rest = if rest < sequence.left { rest } else { sequence.left };
        if rest > Mass::default() { rest } else { Mass::default() }
    }

    /// The share of solids by true volume, refused above the book's limit.
    fn solids(&self, mix: &Mix, part: &Part<'_>) -> Result<f64, PotError> {
        let mut solids = 0.0;
        for portion in mix.portions() {
            if self.book.materials.get(portion.material)?.is_scooped() {
                solids +=
                    mix.volume_fraction(portion.material, &self.book.materials, Phase::Fused)?;
            }
        }
        if solids > self.book.limits.solids {
            return Err(PotError::TooManySolids {
                formulas: part.recipe.formulas.join(" + "),
                solids,
                limit: self.book.limits.solids,
            });
        }
        Ok(solids)
    }

    /// The draws of a stage, of which `spare` can be shot beyond the orders, and whose finished density has the standard
    /// uncertainty `unsure`.
    fn draws(
        &self,
        part: &Part<'_>,
        mut spare: Mass,
        unsure: Option<MassDensity>,
    ) -> Result<Vec<Draw>, PotError> {
        let mut draws = Vec::new();
        for shot in &part.draft.draws {
            let batch = self.batches.get(shot.batch).ok_or(PotError::Lost)?;
            let shots = self.shots.get(shot.batch).ok_or(PotError::Lost)?;
            let mold = self.book.molds.get(batch.mold).ok_or(PotError::Lost)?;
            let &(_, share) = batch.layers.get(shot.layer).ok_or(PotError::Lost)?;
            let layer = self.layer(shot)?;
            let loads = shots.loads(shot.shots, self.book)?;
            // A laminated piece takes more than this pot; only the others can be shot beyond the orders.
            let spare_shots = match batch.layers.len() {
                1 => libm::floor((spare / layer.mass.fill).si() + 1e-9) as u32,
                _ => 0,
            };
            spare -= layer.mass.fill * f64::from(spare_shots);
            draws.push(Draw {
                mold: mold.name.clone(),
                share: text::percent(Ratio::from(share)),
                together_with: Vec::new(),
                shots: shot.shots,
                spare_shots,
                loads: loads.loads,
                shots_per_load: loads.shots_per_load,
                per_shot: text::mass(layer.mass.fill),
                sprue: text::mass(layer.mass.sprue),
                pieces: self.pieces(
                    part.recipe,
                    unsure,
                    &Drawn { batch, mold, share, layer, shots: shot.shots },
                )?,
            });
        }
        Ok(draws)
    }

    fn pieces(
        &self,
        recipe: &DayRecipe,
        unsure: Option<MassDensity>,
        drawn: &Drawn<'_>,
    ) -> Result<Vec<Pieces>, PotError> {
        let &Drawn { batch, mold, share, layer, shots } = drawn;
        let melt = recipe.melt_in(mold);
        mold.cavities
            .iter()
            .zip(&batch.ordered)
            .map(|(cavities, &ordered)| {
                let volume = cavities.volume.value;
                let range = melt.piece_range(volume * share)?;
                let weighs = layer.mass.piece(volume);
                Ok(Pieces {
                    shape: cavities.shape.clone(),
                    ordered,
                    made: shots.saturating_mul(cavities.count),
                    weighs: text::mass(weighs),
                    uncertainty: doubt::piece(
                        &cavities.volume,
                        share,
                        &melt,
                        unsure,
                        layer.mass.feed,
                    ),
                    from: text::mass(*range.start()),
                    to: text::mass(*range.end()),
                    sinks_in: layer.mass.sinks_in(),
                    flakes: flakes::in_piece(&recipe.recipe, weighs, &self.book.materials),
                })
            })
            .collect()
    }
}

/// What a layer of a batch takes from a stage.
struct Drawn<'a> {
    batch: &'a Batch,
    mold: &'a Mold,
    share: f64,
    layer: &'a LayerShots,
    shots: u32,
}

/// Why a pot cannot be made.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub(super) enum PotError {
    /// A bookkeeping slip of the planner: an index without its entry.
    #[error("The plan lost track of a part of itself.")]
    Lost,
    /// Even the whole cup is too small to dose a material.
    #[error("No cup is large enough to dose \"{material}\" to {} %: {error}", .tolerance * 100.0)]
    TooSmallToDose { material: String, tolerance: f64, error: MeasureError },
    /// No tool measures a material.
    #[error("\"{material}\" cannot be measured: {error}")]
    Measure { material: String, error: MeasureError },
    /// Too much salt, flake and pearl.
    #[error("{formulas} holds {:.1} % solids by volume; the book allows {:.1} %.", .solids * 100.0, .limit * 100.0)]
    TooManySolids { formulas: String, solids: f64, limit: f64 },
    #[error(transparent)]
    Batch(#[from] BatchError),
    #[error(transparent)]
    Shot(#[from] ShotError),
    #[error(transparent)]
    Mix(#[from] MixError),
    #[error(transparent)]
    Sequence(#[from] SequenceError),
    #[error(transparent)]
    Precedence(#[from] PrecedenceError),
    #[error(transparent)]
    Split(#[from] SplitError),
}

impl PotError {
    /// The stage that the assignment of pots complains of, as it counts them.
    pub(super) fn stage(&self) -> Option<usize> {
        match self {
            Self::Split(error) => error.stage(),
            _ => None,
        }
    }

    /// Whether it is the bench that cannot measure a material.
    pub(super) fn is_about_measuring(&self) -> bool {
        matches!(self, Self::TooSmallToDose { .. } | Self::Measure { .. })
    }

    /// Whether a larger cup may do.
    pub(super) fn wants_larger_cup(&self) -> bool {
        matches!(
            self,
            Self::TooSmallToDose { .. }
                | Self::Batch(BatchError::AboveMarks { .. })
                | Self::Sequence(SequenceError::OverCapacity { .. })
        )
    }

    /// Whether the pot does not fit its cup.
    pub(super) fn is_too_full(&self) -> bool {
        matches!(
            self,
            Self::Batch(BatchError::AboveMarks { .. })
                | Self::Sequence(SequenceError::OverCapacity { .. })
        )
    }
}

impl Diagnose for PotError {
    fn code(&self) -> &'static str {
        match self {
            Self::Lost => "plan-lost",
            Self::TooSmallToDose { .. } => "pot-too-small-to-dose",
            Self::Measure { error, .. } => error.code(),
            Self::TooManySolids { .. } => "too-many-solids",
            Self::Batch(error) => error.code(),
            Self::Shot(error) => error.code(),
            Self::Mix(error) => error.code(),
            Self::Sequence(error) => error.code(),
            Self::Precedence(error) => error.code(),
            Self::Split(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Lost => "Please report it with the book and the orders.".into(),
            Self::TooSmallToDose { material, error, .. } => format!(
                "{} Use a larger cup, a finer tool, or accept a larger \"tolerance\" for \"{material}\".",
                error.help()
            )
            .into(),
            Self::Measure { error, .. } => error.help(),
            Self::TooManySolids { .. } => {
                "Take less salt, flake or pearl, or raise \"solids\" in the limits if it still pours.".into()
            }
            Self::Batch(error) => error.help(),
            Self::Shot(error) => error.help(),
            Self::Mix(error) => error.help(),
            Self::Sequence(error) => error.help(),
            Self::Precedence(error) => error.help(),
            Self::Split(error) => error.help(),
        }
    }
}

/// The letter of the pot at `index`: A, B, ..., Z, AA, AB, ...
pub(super) fn letter(index: usize) -> String {
    let mut letters: Vec<u8> = Vec::new();
    let mut rest = index;
    loop {
        letters.push(
            b'A'.saturating_add(u8::try_from(rest.checked_rem(26).unwrap_or(0)).unwrap_or(0)),
        );
        match rest.checked_div(26).unwrap_or(0).checked_sub(1) {
            Some(next) => rest = next,
            None => break,
        }
    }
    letters.iter().rev().map(|&letter| char::from(letter)).collect()
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case(0, "A")]
    #[case(25, "Z")]
    #[case(26, "AA")]
    #[case(51, "AZ")]
    #[case(52, "BA")]
    #[case(701, "ZZ")]
    #[case(702, "AAA")]
    fn pots_have_letters(#[case] index: usize, #[case] name: &str) {
        assert_eq!(letter(index), name);
    }

    #[cfg(feature = "document")]
    mod planned {
        use super::*;
        use crate::document::small::{BOOK, orders};
        use crate::document::{book_from_text, orders_from_text};
        use crate::plan::Plan;
        use alloc::string::ToString;
        use serde_json::{Value, json};

        fn plan(change: impl Fn(&mut Value), line: &str) -> Result<Plan, crate::fault::Faults> {
            let mut document: Value = serde_json::from_str(BOOK).unwrap();
            change(&mut document);
            let book = book_from_text(&document.to_string()).unwrap_or_else(|f| panic!("{f}"));
            let day = orders_from_text(&orders(line), &book).unwrap_or_else(|f| panic!("{f}"));
            Plan::make(&book, &day)
        }

        const LINE: &str = r#"{ "order": "1", "product": "sky worm", "pieces": 12 }"#;

        #[test]
        fn what_cannot_be_drawn_makes_no_spare_shot() {
            let spare = |plan: &Plan| plan.pots[0].stages[0].draws[0].spare_shots;
            let with_heel = |heel: &str| {
                let heel = heel.to_string();
                plan(move |book| book["bench"]["cups"][0]["heel"] = json!(heel), LINE).unwrap()
            };
            let without = plan(|_| {}, LINE).unwrap();
            let shot = without.pots[0].stages[0].draws[0].per_shot.quantity;
            for heel in ["1 g", "20 g", "40 g", "55 g"] {
                let plan = with_heel(heel);
                let left = plan.pots[0].left_over.quantity;
                let drawn = shot * f64::from(spare(&plan));
                let heel: f64 = heel.trim_end_matches(" g").parse().unwrap();
                assert!(left - drawn >= Mass::from_si(heel / 1e3) * (1.0 - 1e-9), "{heel}");
            }
        }

        #[test]
        fn a_mold_larger_than_the_injector_is_refused_with_what_fits() {
            let refused =
                plan(|book| book["molds"]["worm"]["cavities"] = json!(40), LINE).unwrap_err();
            let fault = refused.iter().next().unwrap();
            assert_eq!((&*fault.path, &*fault.code), ("/lines/0", "batch-shot-does-not-fit"));
            assert!(fault.help.contains('g'), "{}", fault.help);
        }

        #[test]
        fn more_than_the_book_allows_of_solids_is_refused() {
            let refused =
                plan(|book| book["limits"] = json!({ "solids": "1 %" }), LINE).unwrap_err();
            assert_eq!(refused.iter().next().unwrap().code, "too-many-solids");
        }

        #[test]
        fn a_cup_is_never_fuller_than_the_book_allows() {
            let half = plan(|book| book["limits"] = json!({ "most_full": "50 %" }), LINE).unwrap();
            for stage in half.pots.iter().flat_map(|pot| &pot.stages) {
                assert!(stage.fills.quantity.si() <= 236.588_236_5e-6 * (1.0 + 1e-9));
            }
        }

        #[test]
        fn what_one_pot_cannot_hold_is_spread_over_more() {
            let line = r#"{ "order": "1", "product": "sky worm", "pieces": 200 }"#;
            let plan = plan(|_| {}, line).unwrap();
            assert!(plan.pots.len() > 1);
            let made: u32 = plan.pots.iter().map(|pot| pot.stages[0].draws[0].pieces[0].made).sum();
            assert_eq!(made, 200);
            let names: Vec<String> = plan.pots.iter().map(|pot| pot.pot.clone()).collect();
            assert_eq!(plan.lines[0].pots, names);
        }

        #[test]
        fn the_layers_of_a_piece_are_hot_together_in_pots_of_their_own() {
            let line = r#"{ "order": "1", "product": "two", "pieces": 12 }"#;
            let plan = plan(|_| {}, line).unwrap();
            assert_eq!(plan.lines[0].pots.len(), 2);
            for pot in &plan.pots {
                let with = &pot.stages[0].draws[0].together_with;
                assert!(with.len() == 1 && *with != [pot.pot.clone()], "{with:?}");
            }
        }
    }
}

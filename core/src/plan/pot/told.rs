//! A pot as the plan tells it: its stages with their weigh lists, draws and pieces.

use alloc::string::String;
use alloc::vec::Vec;

use super::shots::LayerShots;
use super::{Part, PotError, Workshop};
use crate::book::Mold;
use crate::mix::{Mix, Phase};
use crate::plan::day::{Batch, DayRecipe};
use crate::plan::doubt::{self, Taking};
use crate::plan::process::{self, Heated};
use crate::plan::sequence::Sequence;
use crate::plan::weigh::{Listed, Tools};
use crate::plan::{Draw, Pieces, Pot, Stage, flakes};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio};
use crate::show::text;

impl Workshop<'_> {
    /// The pot of `sequence` in cup `cup`, with the weigh list of each stage. It has no name yet.
    pub(super) fn pot(
        &self,
        cup: usize,
        parts: &[Part<'_>],
        sequence: Sequence,
        lists: Vec<Vec<Listed<'_>>>,
    ) -> Result<Pot, PotError> {
        let system = self.book.system;
        let mut stages = Vec::new();
        let mut kept = Mass::default();
        let mut sprues = Mass::default();
        let last = parts.len().saturating_sub(1);
        let vessel = self.book.vessels.get(cup).map(|vessel| vessel.heat_capacity);
        let vessel = vessel.unwrap_or_default();
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
                list.iter().map(|one| one.told(Tools::new(&self.names, self.book))).collect();
            takings.extend(list.into_iter().filter_map(Listed::taking));
            let density_uncertainty = doubt::density(&takings, &self.names, self.book);
            let is_stated = doubt::is_stated(&takings, self.book);
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
                density_uncertainty: density_uncertainty.filter(|_| is_stated),
                solids: text::percent(Ratio::from(solids)),
                shoot_from: window.map(|window| text::temperature(window.low, system)),
                shoot_to: window.map(|window| text::temperature(window.high, system)),
                draws,
                heats: part.draft.heats,
                heating: process::heating(
                    self.book,
                    &[process::Cup {
                        recipe: part.recipe,
                        mass: step.held,
                        vessel,
                        first: index == 0,
                    }],
                ),
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
        let heats = process::heats(self.book, &heated, &[]);
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
    fn drawable(&self, cup: usize, sequence: &Sequence) -> Mass {
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
        let mut pieces = Vec::with_capacity(mold.cavities.len());
        for (cavities, &ordered) in mold.cavities.iter().zip(&batch.ordered) {
            let volume = cavities.volume.value;
            let range = melt.piece_range(volume * share)?;
            let weighs = layer.mass.piece(volume);
            pieces.push(Pieces {
                shape: cavities.shape.clone(),
                ordered,
                made: shots.saturating_mul(cavities.count),
                weighs: text::mass(weighs),
                uncertainty: doubt::piece(&cavities.volume, share, &melt, unsure, layer.mass.feed),
                from: text::mass(*range.start()),
                to: text::mass(*range.end()),
                sinks_in: layer.mass.sinks_in(),
                flakes: flakes::in_piece(&recipe.recipe, weighs, &self.book.materials),
            });
        }
        Ok(pieces)
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

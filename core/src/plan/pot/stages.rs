//! The stages of a pot as they are laid out: weigh lists, draws and pieces.

use alloc::vec::Vec;

use super::{Part, PotError, Workshop};
use crate::batch::undrawn;
use crate::mix::{Mix, Phase};
use crate::plan::layout::{DrawLayout, PieceLayout, PotCup, PotLayout, ShelfUse, StageLayout};
use crate::plan::one_or_more::OneOrMore;
use crate::plan::pot::DrawDraft;
use crate::plan::process;
use crate::plan::sequence::Sequence;
use crate::plan::there::PotThere;
use crate::plan::weigh::Listed;
use crate::quantity::{Mass, Measurable};

impl<'a> Workshop<'a> {
    /// The pot of `sequence` in `cup`, with the weigh list of each stage; what is `there` is in it already.
    pub(in crate::plan) fn pot(
        &self,
        cup: &PotCup,
        parts: &OneOrMore<Part<'a, '_>>,
        sequence: &Sequence,
        lists: Vec<Vec<Listed<'a>>>,
        there: Option<&'a PotThere>,
    ) -> Result<PotLayout<'a>, PotError> {
        let mut stages = Vec::with_capacity(parts.len());
        let mut kept = Mass::default();
        let mut sprues = Mass::default();
        let last = parts.len().saturating_sub(1);
        let each = sequence.steps.iter().zip(parts).zip(lists);
        for (index, ((step, part), weigh)) in each.enumerate() {
            kept += step.kept;
            let spare = if index == last { drawable(cup, sequence) } else { Mass::default() };
            for draw in &part.draft.draws {
                sprues += draw.layer.mass.sprue * f64::from(draw.shots);
            }
            sprues -= step.returned;
            let draws = self.draws(part, spare)?;
            let mix = part.recipe.recipe.for_mass(step.held)?;
            let clock = process::clock(self.book, part.recipe, step.held, &part.draft.draws);
            let counted = clock.as_ref().and_then(|heats| heats.as_ref().ok()).map_or(0, Vec::len);
            let counted = u32::try_from(counted).unwrap_or(u32::MAX);
            stages.push(StageLayout {
                recipe: part.recipe,
                weigh,
                held: step.held,
                solids: self.solids(&mix, part)?,
                draws,
                heats: counted.max(part.draft.heats),
                clock,
                returned: step.returned,
                carried: step.carried,
            });
        }
        Ok(PotLayout {
            cup: *cup,
            raised: None,
            off_marks: None,
            there,
            from_shelf: ShelfUse::Nothing,
            stages,
            lost: kept + sequence.film,
            left: sequence.left,
            sprues,
        })
    }

    /// The share of solids by true volume, refused above the book's limit.
    fn solids(&self, mix: &Mix, part: &Part<'_, '_>) -> Result<f64, PotError> {
        let mut solids = 0.0;
        for portion in mix.portions() {
            if self.book.materials.get(portion.material)?.is_scooped() {
                solids +=
                    mix.volume_fraction(portion.material, &self.book.materials, Phase::Fused)?;
            }
        }
        if solids > self.book.limits.solids {
            return Err(PotError::TooManySolids {
                formulas: part.recipe.name(),
                solids,
                limit: self.book.limits.solids,
            });
        }
        Ok(solids)
    }

    /// The draws of a stage, of which `spare` can be shot beyond the orders.
    fn draws(&self, part: &Part<'a, '_>, mut spare: Mass) -> Result<Vec<DrawLayout<'a>>, PotError> {
        let mut draws = Vec::with_capacity(part.draft.draws.len());
        for draft in &part.draft.draws {
            let &DrawDraft { of, layer, shots, .. } = draft;
            // A laminated piece needs other pots too; only plain ones can be shot beyond the orders.
            let spare_shots = match of.batch.is_laminated() {
                false => libm::floor((spare / layer.mass.fill).si() + 1e-9) as u32,
                true => 0,
            };
            spare -= layer.mass.fill * f64::from(spare_shots);
            draws.push(DrawLayout {
                of,
                layer,
                shots,
                spare_shots,
                loads: of.loads(shots, self.book)?,
                with: Vec::new(),
                pieces: pieces(draft)?,
            });
        }
        Ok(draws)
    }
}

/// Mass of the leftover that can still be shot: all but what cannot be drawn.
fn drawable(cup: &PotCup, sequence: &Sequence) -> Mass {
    let stays = undrawn(cup.vessel.film, cup.vessel.heel);
    let rest = sequence.left + sequence.film - stays;
    if rest > Mass::default() { rest } else { Mass::default() }
}

fn pieces<'a>(draft: &DrawDraft<'a>) -> Result<Vec<PieceLayout<'a>>, PotError> {
    let &DrawDraft { of, layer, shots, .. } = draft;
    let mold = of.batch.mold;
    let melt = layer.recipe.melt_in(mold);
    let mut pieces = Vec::with_capacity(mold.cavities.len());
    for (cavities, &ordered) in mold.cavities.iter().zip(&of.batch.ordered) {
        let volume = cavities.volume.value;
        pieces.push(PieceLayout {
            cavities,
            ordered: draft.of_order(ordered),
            made: shots.saturating_mul(cavities.count),
            weighs: layer.mass.piece(volume),
            range: melt.piece_range(volume * layer.share)?,
        });
    }
    Ok(pieces)
}

impl DrawDraft<'_> {
    /// Number of `ordered` pieces that its shots are for: in proportion to the batch's shots, so that each draw has its
    /// part of the spares, and rounded so that the draws add up to the order.
    fn of_order(&self, ordered: u32) -> u32 {
        let up_to = |shots: u32| {
            let ordered = u64::from(ordered).saturating_mul(u64::from(shots));
            ordered.checked_div(u64::from(self.of.shots)).unwrap_or(0)
        };
        let through = up_to(self.before.saturating_add(self.shots));
        u32::try_from(through.saturating_sub(up_to(self.before))).unwrap_or(u32::MAX)
    }
}

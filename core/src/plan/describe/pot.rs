//! Pots, the work and the shelf, in words.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::words;
use crate::bench::Cup;
use crate::book::Book;
use crate::mix::Phase;
use crate::plan::doubt::{DensityDoubt, DensityDoubts};
use crate::plan::layout::{
    DrawLayout, FromShelf, Layout, PieceLayout, PotLayout, PotName, ShelfLayout, StageLayout,
    WorkLayout,
};
use crate::plan::pot::Workshop;
use crate::plan::there::PotThere;
use crate::plan::weigh::{self, Tools};
use crate::plan::{
    self, Draw, InPot, MaterialMass, Off, OnShelf, Pieces, PlannedHeating, Pot, ShelfPart, Stage,
    Work, WorkFrom, flakes, process,
};
use crate::quantity::{Mass, Ratio, System};
use crate::show::page::counted;
use crate::show::sentence::{Sentence, Sentences};
use crate::show::{Calculated, Shown, text};

impl Workshop<'_> {
    pub(super) fn describe_pot(
        &self,
        layout: &Layout<'_>,
        name: &PotName,
        (at, pot): (usize, &PotLayout<'_>),
        doubts: &DensityDoubts,
    ) -> Pot {
        let book = self.book;
        let Cup { capacity, mark } = pot.cup.cup;
        let degas = pot.stages.first().and_then(|first| {
            process::degas(book, &pot.cup, &self.cups, first.held / first.recipe.liquid)
        });
        let stages = pot.stages.iter().enumerate();
        let stages: Vec<Stage> = stages
            .map(|stage| self.describe_stage(layout, pot, stage, doubts.at(at, stage.0)))
            .collect();
        let mut planned = Pot {
            pot: name.letter.clone(),
            id: name.id.clone(),
            cup: text::cup(capacity, mark, book.system),
            cup_name: text::cup_name(capacity, mark, book.system),
            warnings: Vec::new(),
            degas: degas.filter(|_| pot.begun().is_none_or(PotThere::is_to_degas)),
            there: pot.begun().and_then(|there| self.describe_there(there)),
            from_shelf: pot.from_shelf.takes().map(|from| self.describe_from_shelf(from)),
            heats: process::heats(book, pot, &stages),
            stages,
            lost: text::mass(pot.lost),
            left_over: text::mass(pot.left),
            sprues: text::mass(pot.sprues),
        };
        planned.warnings.extend(process::too_much_heat(&planned));
        planned.warnings.extend(process::too_many_heats(book, &planned));
        planned
    }

    fn describe_there(&self, there: &PotThere) -> Option<InPot> {
        let mix = &there.contents.mix;
        let filled = mix.volume(&self.book.materials, Phase::Liquid).ok()?;
        let mut parts = Vec::new();
        for portion in mix.portions() {
            let material = self.book.materials.get(portion.material).ok()?.name.clone();
            parts.push(MaterialMass { material, mass: text::mass(portion.mass) });
        }
        Some(InPot {
            mass: text::mass(mix.mass()),
            fills: text::volume(filled, self.book.system),
            hot: there.hot,
            degassed: !there.is_to_degas(),
            heats: there.contents.heats,
            spent: there.contents.spent.map(text::minutes),
            parts,
            accepted: there.accepted.then_some(true),
        })
    }

    fn describe_from_shelf(&self, from: &FromShelf<'_>) -> plan::FromShelf {
        let readability = self.book.tools.balance().map(|balance| balance.readability);
        let parts = from.parts.iter().map(|&(left_over, mass)| ShelfPart {
            name: left_over.name.clone(),
            mass: Shown::new(mass, text::balance(mass, readability)),
            heats: left_over.heats,
            spent: left_over.spent.map(text::minutes),
        });
        let brings = from.brings.iter().map(|&(material, mass)| MaterialMass {
            material: material.name.clone(),
            mass: text::mass(mass),
        });
        let off = from.off.iter().map(|&(material, off)| Off {
            material: material.name.clone(),
            off: Shown::new(off, text::signed_percent(off)),
        });
        plan::FromShelf {
            left_overs: parts.collect(),
            brings: brings.collect(),
            off: off.collect(),
            heats: from.heats,
        }
    }

    fn describe_stage(
        &self,
        layout: &Layout<'_>,
        pot: &PotLayout<'_>,
        (place, stage): (usize, &StageLayout<'_>),
        doubt: DensityDoubt,
    ) -> Stage {
        let hot = weigh::hot(&stage.weigh);
        let in_oven = pot.to_heat(place, stage, &hot);
        let system = self.book.system;
        let recipe = stage.recipe;
        let clock = stage.clock.as_ref();
        let weigh = stage.weigh.iter().map(|one| one.shown(Tools::new(&self.names, self.book)));
        let at = |at| text::temperature(at, system);
        Stage {
            formulas: recipe.formulas.iter().map(|formula| formula.name.clone()).collect(),
            weigh: weigh.collect(),
            holds: text::mass(stage.held),
            fills: text::volume(stage.held / recipe.liquid, system),
            fills_hot: text::volume(stage.held / recipe.melt.hot, system),
            density: text::density(recipe.melt.cold),
            density_uncertainty: doubt.stated().map(text::unsure_density),
            solids: text::percent(Ratio::from(stage.solids)),
            shoot_from: recipe.window.map(|window| at(window.low)),
            shoot_to: recipe.window.map(|window| at(window.high)),
            draws: stage.draws.iter().map(|draw| self.describe_draw(layout, draw, doubt)).collect(),
            heats: stage.heats,
            heating: process::heating(self.book, &[in_oven]),
            clock: clock.map(|clock| process::stage_heats(self.book, &in_oven, clock)),
            stir_every: process::stir_every(self.book, recipe, stage.solids, stage.held)
                .map(text::at_most_five_seconds),
            sprues_back: text::mass(stage.returned),
            carried: text::mass(stage.carried),
        }
    }

    fn describe_draw(
        &self,
        layout: &Layout<'_>,
        draw: &DrawLayout<'_>,
        doubt: DensityDoubt,
    ) -> Draw {
        let layer = draw.layer;
        let pieces = draw.pieces.iter().map(|pieces| self.describe_pieces(draw, pieces, doubt));
        Draw {
            line: Some(draw.of.batch.first_line()),
            layer: Some(u32::try_from(layer.number.saturating_add(1)).unwrap_or(u32::MAX)),
            mold: draw.of.batch.mold.name.clone(),
            share: text::percent(Ratio::from(layer.share)),
            together_with: letters(layout, &draw.with),
            shots: draw.shots,
            spare_shots: draw.spare_shots,
            loads: draw.loads.loads,
            shots_per_load: draw.loads.shots_per_load,
            per_shot: text::mass(layer.mass.fill),
            sprue: text::mass(layer.mass.sprue),
            pieces: pieces.collect(),
        }
    }

    fn describe_pieces(
        &self,
        draw: &DrawLayout<'_>,
        pieces: &PieceLayout<'_>,
        doubt: DensityDoubt,
    ) -> Pieces {
        let layer = draw.layer;
        let recipe = &layer.recipe.recipe;
        let melt = layer.recipe.melt_in(draw.of.batch.mold);
        let (cavity, feed) = (&pieces.cavities.volume, layer.mass.feed);
        let unsure = plan::doubt::piece(cavity, layer.share, &melt, doubt.uncertainty, feed);
        Pieces {
            shape: pieces.cavities.shape.clone(),
            ordered: pieces.ordered,
            made: pieces.made,
            weighs: text::mass(pieces.weighs),
            uncertainty: unsure.map(text::unsure_mass),
            from: text::mass(*pieces.range.start()),
            to: text::mass(*pieces.range.end()),
            sinks_in: layer.mass.sinks_in(),
            flakes: flakes::in_piece(recipe, pieces.weighs, &self.book.materials),
        }
    }
}

fn letters(layout: &Layout<'_>, pots: &[usize]) -> Vec<String> {
    pots.iter().map(|pot| layout.letter(*pot).into()).collect()
}

/// Shots at one time, from the `pots` of the plan.
pub(super) fn work(work: &WorkLayout<'_>, layout: &Layout<'_>, book: &Book) -> Work {
    let mut from = Vec::with_capacity(work.from.len());
    let (mut words, mut heated) = (Vec::new(), Vec::new());
    for one in &work.from {
        let stage = layout.pots.get(one.pot).and_then(|pot| pot.stages.get(one.stage));
        let Some(stage) = stage else { continue };
        let pot = String::from(layout.letter(one.pot));
        let heat = if one.heated { "" } else { ", still hot" };
        words.push(format!("pot {pot} ({}{heat})", stage.recipe.name()));
        if one.heated {
            heated.push((stage.held, pot.clone()));
        }
        let stage = u32::try_from(one.stage.saturating_add(1)).unwrap_or(u32::MAX);
        from.push(WorkFrom { pot, stage, heat: one.heated });
    }
    let mold = work.of.batch.mold.name.clone();
    let together = if from.len() > 1 { ", all hot at once" } else { "" };
    let shots = counted(work.shots, "shot");
    let heating = process::heating_together(book, layout, work);
    let Sentences { texts: details, others: other_details } =
        together_words(heated, heating.as_ref(), book.system).into_iter().collect();
    Work {
        text: format!("{mold}: {shots} from {}{together}", words.join(" and ")),
        details,
        other_details,
        mold,
        shots: work.shots,
        from,
        heating,
    }
}

/// How several pots become hot at once: mass and letter.
fn together_words(
    mut heated: Vec<(Mass, String)>,
    heating: Option<&Calculated<PlannedHeating>>,
    system: System,
) -> Vec<Sentence> {
    let [_, _, ..] = heated.as_slice() else { return Vec::new() };
    heated.sort_by(|(a, _), (b, _)| b.value.total_cmp(&a.value));
    let pots: Vec<&str> = heated.iter().map(|(_, pot)| pot.as_str()).collect();
    words::heat_together(&pots, heating, system)
}

pub(super) fn shelf(layout: &Layout<'_>, one: &ShelfLayout<'_>) -> OnShelf {
    let left_over = one.left_over;
    let had = left_over.mix.mass();
    let stays = if one.used < had { had - one.used } else { Mass::default() };
    OnShelf {
        name: left_over.name.clone(),
        made: left_over.made.clone(),
        had: text::mass(had),
        used: text::mass(one.used),
        stays: text::mass(stays),
        pots: letters(layout, &one.pots),
        #[cfg(feature = "document")]
        ext: left_over.ext.clone(),
    }
}

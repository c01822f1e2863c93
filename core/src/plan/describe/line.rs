//! The order lines, in words.

use alloc::string::String;
use alloc::vec::Vec;

use crate::book::Layer;
use crate::plan::day::{BatchLine, Line, joined};
use crate::plan::doubt::DensityDoubts;
use crate::plan::layout::{DrawLayout, Layout};
use crate::plan::pot::{Shots, Workshop};
use crate::plan::process::{SinkLayer, sinking};
use crate::plan::{PlannedLine, Sinking};
use crate::quantity::MassDensity;
use crate::show::{Calculated, text};

/// A draw, with the places of the pot and the stage that it is from.
struct From<'l> {
    pot: usize,
    stage: usize,
    draw: &'l DrawLayout<'l>,
}

impl From<'_> {
    fn batch(&self) -> usize {
        self.draw.of.batch.number
    }
}

impl Workshop<'_> {
    /// The order lines, in their order; how their pieces sink is left out without `doubts`.
    pub(super) fn describe_lines(
        &self,
        layout: &Layout<'_>,
        doubts: Option<&DensityDoubts>,
    ) -> Vec<PlannedLine> {
        let mut draws = Vec::new();
        for (pot, of) in layout.pots.iter().enumerate() {
            for (stage, of) in of.stages.iter().enumerate() {
                draws.extend(of.draws.iter().map(|draw| From { pot, stage, draw }));
            }
        }
        draws.sort_by_key(From::batch);
        let mut lines = Vec::new();
        for of in self.shots {
            let number = of.batch.number;
            let first = draws.partition_point(|draw| draw.batch() < number);
            let own = draws.iter().skip(first).take_while(|draw| draw.batch() == number);
            let draws: Vec<&From<'_>> = own.collect();
            for line in &of.batch.lines {
                let mut described = self.describe_line(layout, line, of, &draws);
                if let Some(doubts) = doubts {
                    described.sinks = self.sinks(line, of, &draws, doubts);
                }
                lines.push((line.number, described));
            }
        }
        lines.sort_by_key(|(number, _)| *number);
        lines.into_iter().map(|(_, line)| line).collect()
    }

    fn describe_line(
        &self,
        layout: &Layout<'_>,
        &BatchLine { line, cavities, .. }: &BatchLine<'_>,
        of: &Shots<'_>,
        draws: &[&From<'_>],
    ) -> PlannedLine {
        let mut pots: Vec<usize> = draws.iter().map(|draw| draw.pot).collect();
        pots.dedup();
        PlannedLine {
            order: line.order.clone(),
            what: self.what(line),
            mold: of.batch.mold.name.clone(),
            shape: cavities.shape.clone(),
            pieces: line.pieces,
            packs: line.packs.map(|(packs, _)| packs),
            pack_of: line.packs.map(|(_, each)| each),
            pots: pots.into_iter().map(|pot| layout.letter(pot).into()).collect(),
            pooled_with: Some(of.batch.first_line()),
            piece: text::mass(of.piece(cavities)),
            sinks: None,
            promised: line.promised.clone(),
            #[cfg(feature = "document")]
            ext: line.ext.clone(),
        }
    }

    /// How a piece of a line sinks that is shot by `draws`.
    fn sinks(
        &self,
        line: &BatchLine<'_>,
        of: &Shots<'_>,
        draws: &[&From<'_>],
        doubts: &DensityDoubts,
    ) -> Option<Calculated<Sinking>> {
        let mold = of.batch.mold;
        let layers = of.layers.iter().map(|layer| {
            let melt = layer.recipe.melt_in(mold);
            let solid = 1.0 - melt.voids.value;
            let own = draws.iter().filter(|draw| draw.draw.layer.number == layer.number);
            let own = own.map(|draw| doubts.at(draw.pot, draw.stage).uncertainty);
            SinkLayer {
                mass: layer.mass.piece(line.cavities.volume.value),
                density: melt.cold * solid,
                unsure: least_sure(own).map(|unsure| unsure * solid),
            }
        });
        sinking(self.book, mold, line.cavities, &layers.collect::<Vec<_>>())
    }

    /// The product's name, or the formulas of its layers.
    fn what(&self, line: &Line) -> String {
        if !line.product.name.is_empty() {
            return line.product.name.clone();
        }
        let layer = |layer: &Layer| {
            let formulas = layer.formulas.iter().filter_map(|&index| self.book.formulas.get(index));
            joined(&formulas.collect::<Vec<_>>())
        };
        line.product.layers.iter().map(layer).collect::<Vec<_>>().join(" / ")
    }
}

/// The largest of uncertainties; `None` where one is not known, or there is none.
fn least_sure(mut all: impl Iterator<Item = Option<MassDensity>>) -> Option<MassDensity> {
    let first = all.next()??;
    all.try_fold(first, |most, one| Some(most.max(one?)))
}

//! What was really weighed and shot, as numbers.

use alloc::format;
use alloc::vec::Vec;

use super::{Resolver, pointer};
use crate::book::Book;
use crate::document::record::{
    ActualsDocument, DrawActualsEntry, PieceActualsEntry, StageActualsEntry,
};
use crate::fault::Faults;
use crate::mix::Mix;
use crate::plan::record::{Actuals, DrawActuals, PieceActuals, PotActuals, StageActuals};
use crate::quantity::Mass;

impl Actuals {
    /// The actuals in `document`, with the materials of `book`.
    ///
    /// # Errors
    /// All faults of the document together: unknown materials, amounts that are none of a material.
    pub fn resolve(document: &ActualsDocument, book: &Book) -> Result<Self, Faults> {
        let mut resolver = Resolver::new(book.system);
        let mut pots = Vec::new();
        for (pot, entry) in &document.pots {
            let path = pointer(&pointer("/pots", pot), "stages");
            let stages = entry.stages.iter().enumerate();
            let stages: Vec<Option<StageActuals>> = stages
                .map(|(index, stage)| {
                    resolver.stage_actuals(stage, &format!("{path}/{index}"), book)
                })
                .collect();
            let stages: Option<Vec<StageActuals>> = stages.into_iter().collect();
            pots.push(stages.map(|stages| PotActuals {
                pot: pot.clone(),
                stages,
                notes: entry.notes.clone(),
            }));
        }
        let pots: Option<Vec<PotActuals>> = pots.into_iter().collect();
        resolver.finish(pots.map(|pots| Self { pots }))
    }
}

impl Resolver {
    fn stage_actuals(
        &mut self,
        entry: &StageActualsEntry,
        path: &str,
        book: &Book,
    ) -> Option<StageActuals> {
        let weighed = match &entry.weighed {
            Some(weighed) => self.measured(weighed, &pointer(path, "weighed"), book),
            None => Some(Mix::new()),
        };
        let draws: Vec<Option<DrawActuals>> = entry
            .draws
            .iter()
            .flatten()
            .enumerate()
            .map(|(index, draw)| self.draw_actuals(draw, &format!("{path}/draws/{index}")))
            .collect();
        let left = match &entry.left {
            Some(left) => Some(self.keep(&pointer(path, "left"), left.to(self.system))?),
            None => None,
        };
        Some(StageActuals {
            weighed: weighed?,
            draws: draws.into_iter().collect::<Option<_>>()?,
            left,
        })
    }

    fn draw_actuals(&mut self, entry: &DrawActualsEntry, path: &str) -> Option<DrawActuals> {
        let pieces: Vec<Option<PieceActuals>> = entry
            .pieces
            .iter()
            .flatten()
            .enumerate()
            .map(|(index, piece)| self.piece_actuals(piece, &format!("{path}/pieces/{index}")))
            .collect();
        Some(DrawActuals {
            mold: entry.mold.0.clone(),
            shots: entry.shots.0,
            pieces: pieces.into_iter().collect::<Option<_>>()?,
        })
    }

    fn piece_actuals(&mut self, entry: &PieceActualsEntry, path: &str) -> Option<PieceActuals> {
        let weights: Vec<Option<Mass>> = entry
            .weights
            .iter()
            .flatten()
            .enumerate()
            .map(|(index, weight)| self.positive(&format!("{path}/weights/{index}"), weight))
            .collect();
        Some(PieceActuals {
            shape: entry.shape.as_ref().map(|shape| shape.0.clone()),
            good: entry.good.map(|good| good.0),
            weights: weights.into_iter().collect::<Option<_>>()?,
        })
    }
}

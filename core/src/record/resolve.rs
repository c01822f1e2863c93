//! Masses really weighed and shots really made, as numbers.

use alloc::borrow::ToOwned;

use super::{
    Actuals, ActualsDocument, DrawActuals, DrawActualsEntry, PieceActuals, PieceActualsEntry,
    PotActuals, StageActuals, StageActualsEntry,
};
use crate::book::Book;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::mix::Mix;

impl Actuals {
    /// The actuals in `document`, with the materials of `book`.
    ///
    /// # Errors
    /// All faults of the document together: unknown materials, amounts that are none of a material.
    pub fn resolve(document: &ActualsDocument, book: &Book) -> Result<Self, Faults> {
        let mut resolver = Resolver::new(book.system);
        let pots =
            resolver.each_named(&At("/pots"), &document.pots, |resolver, path, pot, entry| {
                let stages =
                    resolver.each(&path.key("stages"), &entry.stages, |resolver, path, stage| {
                        resolver.stage_actuals(path, stage, book)
                    });
                Some(PotActuals {
                    pot: pot.to_owned(),
                    stages: stages?,
                    notes: entry.notes.clone(),
                })
            });
        resolver.finish(pots.map(|pots| Self { pots }))
    }
}

impl Resolver {
    fn stage_actuals(
        &mut self,
        path: &Path<'_>,
        entry: &StageActualsEntry,
        book: &Book,
    ) -> Option<StageActuals> {
        let weighed = match &entry.weighed {
            Some(weighed) => self.mixed(weighed, &path.key("weighed"), book),
            None => Some(Mix::new()),
        };
        let draws = entry.draws.as_deref().unwrap_or_default();
        let draws = self.each(&path.key("draws"), draws, Self::draw_actuals);
        let left = match &entry.left {
            Some(left) => Some(self.quantity(&path.key("left"), left)?),
            None => None,
        };
        Some(StageActuals { weighed: weighed?, draws: draws?, left })
    }

    fn draw_actuals(&mut self, path: &Path<'_>, entry: &DrawActualsEntry) -> Option<DrawActuals> {
        let pieces = entry.pieces.as_deref().unwrap_or_default();
        let pieces = self.each(&path.key("pieces"), pieces, Self::piece_actuals);
        Some(DrawActuals { mold: entry.mold.0.clone(), shots: entry.shots.0, pieces: pieces? })
    }

    fn piece_actuals(
        &mut self,
        path: &Path<'_>,
        entry: &PieceActualsEntry,
    ) -> Option<PieceActuals> {
        let weights = entry.weights.as_deref().unwrap_or_default();
        let weights = self.each(&path.key("weights"), weights, Self::positive);
        Some(PieceActuals {
            shape: entry.shape.as_ref().map(|shape| shape.0.clone()),
            good: entry.good.map(|good| good.0),
            weights: weights?,
        })
    }
}

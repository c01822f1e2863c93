//! A maker's notes of a day, as numbers.

use alloc::borrow::ToOwned;
use alloc::vec::Vec;

use super::document::{
    ActualsDocument, HeatActualsEntry, PieceWeightEntry, PotActualsEntry, ShotsEntry, WentInEntry,
};
use super::{
    Actuals, DrawActuals, Looks, PieceActuals, PotActuals, StageActuals, TimedHeat, WentIn,
};
use crate::book::Book;
use crate::calibrate::Counted;
use crate::codes::code;
use crate::document::resolve::Resolver;
use crate::document::written::Percent;
use crate::fault::Faults;
use crate::json::OneOrList;
use crate::json::path::Path::{self, At};
use crate::quantity::Ratio;

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
                    entry.each(path, |path, entry| resolver.stage_actuals(path, entry, book));
                let (pot, stages) = (pot.to_owned(), stages?);
                Some(PotActuals { pot, by_stage: entry.is_list(), stages })
            });
        resolver.finish(pots.map(|pots| Self { pots }))
    }
}

impl Resolver {
    fn stage_actuals(
        &mut self,
        path: &Path<'_>,
        entry: &PotActualsEntry,
        book: &Book,
    ) -> Option<StageActuals> {
        let went_in = entry.went_in.as_ref().map_or(Some(Vec::new()), |amounts| {
            self.each_named(&path.key("went_in"), amounts, |resolver, path, name, amount| {
                resolver.went_in(path, name, amount, book)
            })
        });
        let mut draws = Some(Vec::new());
        for (mold, entries) in entry.molds.iter().flatten() {
            let molds = path.key("molds");
            let path = molds.key(mold);
            let mut place = 0_usize;
            let made = entries.each(&path, |path, entry| {
                let number = entries.is_list().then_some(place);
                place = place.saturating_add(1);
                self.draw_actuals(path, mold, number, entry)
            });
            draws = draws.zip(made).map(|(mut draws, made)| {
                draws.extend(made);
                draws
            });
        }
        let heats = entry.heats.as_deref().unwrap_or_default();
        let heats = self.each(&path.key("heats"), heats, Self::timed_heat);
        let injector = entry.injector.as_ref().map_or(Some(Vec::new()), |kept| {
            kept.each(&path.key("injector"), |path, kept| self.quantity(path, kept))
        });
        let left = match &entry.left {
            Some(left) => Some(self.quantity(&path.key("left"), left)?),
            None => None,
        };
        let looks = match &entry.looks {
            Some(color) => {
                let read = color.read_at(&path.key("looks"), self)?;
                Some(Looks { color: color.clone(), reading: read.reading })
            }
            None => None,
        };
        Some(StageActuals {
            went_in: went_in?,
            draws: draws?,
            reheats: entry.reheats.map(|count| count.0),
            heats: heats?,
            left,
            injector: injector?,
            looks,
            save_as: entry.save_as.as_ref().map(|name| name.0.clone()),
            body_as: entry.body_as.as_ref().map(|name| name.0.clone()),
            jar: entry.jar.as_ref().map(|name| name.0.clone()),
            notes: entry.notes.clone(),
        })
    }

    fn went_in(
        &mut self,
        path: &Path<'_>,
        name: &str,
        entry: &WentInEntry,
        book: &Book,
    ) -> Option<WentIn> {
        let (measured, weighed) = match entry {
            WentInEntry::Measured(amount) => (Some(*amount), None),
            WentInEntry::Weighed(both) => (both.measured, both.weighed.as_ref()),
        };
        let material =
            self.find_material(&book.materials, &crate::json::Name(name.to_owned()), path)?;
        if let (None, None) = (measured, weighed) {
            self.fault(
                code!("went-in-nothing"),
                path,
                &"It states no amount.",
                &"Write \"measured\": \"34 drops\", \"weighed\": \"1.5 g\", or both.",
            );
            return None;
        }
        let measured_path = path.key("measured");
        let at = if matches!(entry, WentInEntry::Weighed(_)) { &measured_path } else { path };
        let by_book = measured.map(|amount| self.mass_at(name, &amount, at, book));
        let weighed = weighed.map(|weighed| self.quantity(&path.key("weighed"), weighed));
        let gives = by_book.map(|by_book| by_book.map(|(_, mass)| mass));
        Some(WentIn {
            material,
            measured: measured.zip(transposed(gives)?),
            weighed: transposed(weighed)?,
        })
    }

    fn draw_actuals(
        &mut self,
        path: &Path<'_>,
        mold: &str,
        number: Option<usize>,
        entry: &ShotsEntry,
    ) -> Option<DrawActuals> {
        let mut pieces = Some(Vec::new());
        if entry.good.is_some() || entry.weights.is_some() {
            let weights = self.weights(&path.key("weights"), entry.weights.as_ref());
            let good = entry.good.map(|good| good.0);
            pieces =
                weights.map(|weights| Vec::from([PieceActuals { shape: None, good, weights }]));
        }
        if let Some(shapes) = &entry.shapes {
            let shapes =
                self.each_named(&path.key("shapes"), shapes, |resolver, path, shape, entry| {
                    let weights = resolver.weights(&path.key("weights"), entry.weights.as_ref());
                    let (shape, good) = (Some(shape.to_owned()), entry.good.map(|good| good.0));
                    Some(PieceActuals { shape, good, weights: weights? })
                });
            pieces = pieces.zip(shapes).map(|(mut pieces, shapes)| {
                pieces.extend(shapes);
                pieces
            });
        }
        let took = entry.took.as_ref().map(|took| self.positive(&path.key("took"), took));
        Some(DrawActuals {
            mold: mold.to_owned(),
            number,
            shots: entry.shots.map(|shots| shots.0),
            pieces: pieces?,
            took: transposed(took)?,
        })
    }

    fn weights(
        &mut self,
        path: &Path<'_>,
        weights: Option<&OneOrList<PieceWeightEntry>>,
    ) -> Option<Vec<Counted>> {
        let Some(weights) = weights else { return Some(Vec::new()) };
        weights.each(path, |path, weight| {
            Some(match weight {
                PieceWeightEntry::One(weight) => {
                    Counted { count: 1, weight: self.positive(path, weight)? }
                }
                PieceWeightEntry::Together(together) => Counted {
                    count: together.count,
                    weight: self.positive(&path.key("weigh"), &together.weigh)?,
                },
            })
        })
    }

    fn timed_heat(&mut self, path: &Path<'_>, entry: &HeatActualsEntry) -> Option<TimedHeat> {
        let time = self.positive(&path.key("time"), &entry.time);
        let from = entry.from.as_ref().map(|from| self.quantity(&path.key("from"), from));
        let to = entry.to.as_ref().map(|to| self.quantity(&path.key("to"), to));
        Some(TimedHeat {
            time: time?,
            from: transposed(from)?,
            to: transposed(to)?,
            setting: entry.setting.map(Percent::share).map(Ratio::from),
        })
    }
}

/// What was written, if it could be read; `None` if it could not.
#[allow(clippy::option_option)] // written or not, and then readable or not
fn transposed<T>(read: Option<Option<T>>) -> Option<Option<T>> {
    match read {
        None => Some(None),
        Some(read) => read.map(Some),
    }
}

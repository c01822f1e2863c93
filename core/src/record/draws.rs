//! The shots of a stage as they were made, and the pieces that came of them.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::follow::Follow;
use super::found::Sample;
use super::told::{Told, escaped};
use super::{
    DrawActuals, DrawRecord, MoldRecord, PieceActuals, PieceRecord, RecordError, WeighedTogether,
};
use crate::batch::reject_interval;
use crate::book::Mold;
use crate::calibrate::{self, CalibrateError, Weighed};
use crate::fault::Fault;
use crate::parameter::Parameter;
use crate::plan::day::cavities;
use crate::plan::{Draw, Pieces, Pot, Stage};
use crate::quantity::{Mass, Ratio};
use crate::shot::{self, Melt, ShotMass};
use crate::show::text;

/// How sure an interval of rejects is.
const SURE: f64 = 0.95;

/// Pieces of a mold that were counted, and the pots that they came from.
pub(super) struct Counted {
    mold: String,
    pots: Vec<String>,
    counted_by: String,
    made: u32,
    good: u32,
}

/// Mix that the shots of a stage took.
pub(super) struct Shot {
    pub(super) draws: Vec<DrawRecord>,
    pub(super) takes: Mass,
    /// Sprues of pieces of one color.
    pub(super) sprues: Mass,
    /// Sprues that went back.
    pub(super) back: Mass,
}

/// Pieces of one shape: as noted, where, and by the mix as made.
struct OfShape<'a> {
    planned: &'a Pieces,
    actual: Option<&'a PieceActuals>,
    path: String,
    expected: Option<Mass>,
}

impl Follow<'_> {
    pub(super) fn mold(&self, name: &str) -> Option<&Mold> {
        self.book.find_mold(name).and_then(|place| self.book.molds.get(place))
    }

    /// The shots of `stage`, of a mix with these densities.
    pub(super) fn draws(
        &mut self,
        pot: &Pot,
        stage: &Stage,
        told: &Told<'_>,
        melt: Option<Melt>,
    ) -> Option<Shot> {
        let none = Mass::default();
        let mut shot = Shot { draws: Vec::new(), takes: none, sprues: none, back: none };
        let goes_back = stage.sprues_back.quantity > Mass::default();
        for (draw, actual) in stage.draws.iter().zip(&told.draws) {
            let path = actual.map_or_else(|| told.path.clone(), |actual| told.draw_path(actual));
            let shots = actual.and_then(|actual| actual.shots).unwrap_or(draw.shots);
            let mass = self.shot_of(draw, melt);
            let mass = self.keep(&path, mass)?;
            let pieces = self.pieces(pot, draw, *actual, (shots, mass), &path);
            let per_shot = per_shot(draw, &pieces, mass);
            shot.takes += per_shot * f64::from(shots);
            if is_whole(draw) {
                let sprue = mass.map_or(draw.sprue.quantity, |mass| mass.sprue);
                shot.sprues += sprue * f64::from(shots);
                self.sample(pot, stage, draw, *actual, melt.zip(mass), &pieces);
            }
            shot.draws.push(DrawRecord {
                mold: draw.mold.clone(),
                share: draw.share.clone(),
                shots,
                planned_shots: draw.shots,
                took: actual.and_then(|actual| actual.took).map(text::minutes),
                per_shot: text::mass(per_shot),
                pieces,
            });
        }
        if goes_back {
            shot.back = shot.sprues;
        }
        Some(shot)
    }

    /// Keeps weighed pieces of one color to compare them with their mold.
    fn sample(
        &mut self,
        pot: &Pot,
        stage: &Stage,
        draw: &Draw,
        actual: Option<&DrawActuals>,
        made: Option<(Melt, ShotMass)>,
        pieces: &[PieceRecord],
    ) {
        let Some((melt, mass)) = made else { return };
        let Some(voids) = self.mold(&draw.mold).map(|mold| mold.voids) else { return };
        for (record, actual) in pieces.iter().filter_map(|record| {
            let mut actual = actual?.pieces.iter();
            Some((record, actual.find(|actual| actual.shape == record.shape)?))
        }) {
            let Some(expected) = &record.expected else { continue };
            if actual.weights.is_empty() {
                continue;
            }
            self.samples.push(Sample {
                pot: pot.pot.clone(),
                mold: draw.mold.clone(),
                shape: record.shape.clone(),
                weights: actual.weights.clone(),
                planned: record.planned.quantity,
                expected: expected.quantity,
                melt: melt.with_voids(Ratio::from(voids)),
                feed: mass.feed,
                unsure: stage.density_uncertainty.as_ref().map(|unsure| unsure.quantity),
            });
        }
    }

    /// Masses of a shot of a mix with these densities.
    fn shot_of(&self, draw: &Draw, melt: Option<Melt>) -> Result<Option<ShotMass>, RecordError> {
        let unknown = || RecordError::UnknownMold(draw.mold.clone());
        let mold = self.mold(&draw.mold).ok_or_else(unknown)?;
        let Some(melt) = melt else { return Ok(None) };
        let melt = melt.with_voids(Ratio::from(mold.voids));
        let share = draw.share.quantity.value;
        Ok(Some(shot::Shot::of_layer(mold, &cavities(mold), share, melt).masses()?))
    }

    fn pieces(
        &mut self,
        pot: &Pot,
        draw: &Draw,
        actual: Option<&DrawActuals>,
        (shots, mass): (u32, Option<ShotMass>),
        path: &str,
    ) -> Vec<PieceRecord> {
        let actual_pieces = actual.map_or(&[][..], |actual| &actual.pieces);
        for (index, piece) in actual_pieces.iter().enumerate() {
            let earlier = actual_pieces.iter().take(index).any(|other| other.shape == piece.shape);
            if earlier || !draw.pieces.iter().any(|known| known.shape == piece.shape) {
                let known: Vec<&str> = draw
                    .pieces
                    .iter()
                    .map(|known| known.shape.as_deref().unwrap_or("one shape, without a name"))
                    .collect();
                let error =
                    RecordError::NoShape { mold: draw.mold.clone(), known: known.join(", ") };
                self.faults.push(Fault::at(piece_path(path, piece), &error));
            }
        }
        let mut records = Vec::new();
        for planned in &draw.pieces {
            let actual = actual_pieces.iter().find(|actual| actual.shape == planned.shape);
            let made = shots.saturating_mul(of_a_shot(planned, draw));
            let volume = self.mold(&draw.mold).and_then(|mold| {
                let of_shape = mold.cavities.iter().find(|known| known.shape == planned.shape)?;
                Some(of_shape.volume.value)
            });
            let of_shape = OfShape {
                planned,
                actual,
                path: actual.map_or_else(String::new, |actual| piece_path(path, actual)),
                expected: mass.zip(volume).map(|(mass, volume)| mass.piece(volume)),
            };
            records.push(self.piece(&of_shape, shots, made));
            if let Some(good) = actual.and_then(|actual| actual.good) {
                self.count(pot, draw, made, good);
            }
        }
        records
    }

    fn piece(&mut self, of: &OfShape<'_>, shots: u32, made: u32) -> PieceRecord {
        let OfShape { planned, actual, path, expected } = of;
        let good = actual.and_then(|actual| actual.good);
        if let Some(good) = good
            && good > made
        {
            let error = RecordError::TooManyGood { good, made };
            self.faults.push(Fault::at(format!("{path}/good"), &error));
        }
        let weights = actual.map_or(&[][..], |actual| &actual.weights);
        let count = weights.iter().fold(0_u32, |sum, one| sum.saturating_add(one.count));
        let at_weights = format!("{path}/weights");
        if count > made {
            let error = RecordError::TooManyWeighed { weighed: count, made };
            self.faults.push(Fault::at(&*at_weights, &error));
        }
        let weighed = self.keep(&at_weights, weighed(weights)).flatten();
        let together = weights
            .iter()
            .map(|one| WeighedTogether { count: one.count, weight: text::mass(one.weight) });
        PieceRecord {
            shape: planned.shape.clone(),
            ordered: planned.ordered,
            made,
            good,
            good_per_shot: good
                .filter(|_| shots > 0)
                .map(|good| f64::from(good) / f64::from(shots)),
            weighed: count,
            weights: together.collect(),
            weighs: weighed.map(|(mean, _)| text::mass(mean)),
            deviation: weighed.and_then(|(_, deviation)| deviation.map(text::mass)),
            planned: planned.weighs.clone(),
            expected: expected.map(text::mass),
        }
    }

    /// Counts pieces for their mold; those of a laminated shot by the pot that states them first.
    pub(super) fn count(&mut self, pot: &Pot, draw: &Draw, made: u32, good: u32) {
        let is_counted = self.counted.iter().any(|known| {
            known.mold == draw.mold
                && known.counted_by != pot.pot
                && known.pots.contains(&pot.pot)
                && draw.together_with.contains(&known.counted_by)
        });
        if !is_counted {
            self.counted.push(Counted {
                mold: draw.mold.clone(),
                pots: draw.together_with.clone(),
                counted_by: pot.pot.clone(),
                made,
                good,
            });
        }
    }

    pub(super) fn molds(&mut self) -> Vec<MoldRecord> {
        let mut totals: Vec<(String, u32, u32)> = Vec::new();
        for counted in &self.counted {
            match totals.iter_mut().find(|(mold, ..)| *mold == counted.mold) {
                Some((_, made, good)) => {
                    *made = made.saturating_add(counted.made);
                    *good = good.saturating_add(counted.good);
                }
                None => totals.push((counted.mold.clone(), counted.made, counted.good)),
            }
        }
        totals.sort_unstable();
        let mut molds = Vec::new();
        // What is wrong with a count has been reported with it.
        for (mold, made, good) in totals.into_iter().filter(|(_, made, good)| good <= made) {
            if made == 0 {
                continue;
            }
            let rejects = made.saturating_sub(good);
            let interval = reject_interval(rejects, made, Ratio::from(SURE));
            let Some((from, to)) = self.keep("/pots", interval.map_err(RecordError::from)) else {
                continue;
            };
            molds.push(MoldRecord {
                mold,
                made,
                good,
                rejects: text::percent(Ratio::from(f64::from(rejects) / f64::from(made))),
                rejects_from: text::percent(from),
                rejects_to: text::percent(to),
            });
        }
        molds
    }
}

/// Whether its pieces are of this one layer.
pub(super) fn is_whole(draw: &Draw) -> bool {
    draw.together_with.is_empty()
}

/// Where pieces of one shape are written.
fn piece_path(draw: &str, piece: &PieceActuals) -> String {
    match &piece.shape {
        Some(shape) => format!("{draw}/shapes/{}", escaped(shape)),
        None => draw.into(),
    }
}

/// Mix of one shot: by the mix as made, its pieces at the mass that they were weighed at.
fn per_shot(draw: &Draw, pieces: &[PieceRecord], mass: Option<ShotMass>) -> Mass {
    let calculated = mass.map_or(draw.per_shot.quantity, |mass| mass.fill);
    if !is_whole(draw) {
        return calculated;
    }
    draw.pieces.iter().zip(pieces).fold(calculated, |sum, (planned, record)| {
        let expected = record.expected.as_ref().unwrap_or(&record.planned).quantity;
        let weighs = record.weighs.as_ref().map(|weighs| weighs.quantity);
        let more = weighs.map_or(Mass::default(), |weighs| weighs - expected);
        sum + more * f64::from(of_a_shot(planned, draw))
    })
}

/// Pieces of one shape that a shot makes; none of a draw without shots.
fn of_a_shot(planned: &Pieces, draw: &Draw) -> u32 {
    planned.made.checked_div(draw.shots).unwrap_or(0)
}

/// Mean of pieces that were weighed, and their deviation if it can be seen.
fn weighed(weights: &[calibrate::Counted]) -> Result<Option<(Mass, Option<Mass>)>, RecordError> {
    if weights.is_empty() {
        return Ok(None);
    }
    for (index, one) in weights.iter().enumerate() {
        let weight = Parameter::PieceWeight.check_si(one.weight.value / f64::from(one.count));
        weight.map_err(|error| CalibrateError::from(error.at(index)))?;
    }
    let one_by_one = weights.iter().all(|one| one.count == 1);
    if one_by_one && weights.len() > 1 {
        let masses: Vec<Mass> = weights.iter().map(|one| one.weight).collect();
        let weighed = Weighed::new(&masses, Mass::default())?;
        return Ok(Some((weighed.mean, Some(weighed.deviation))));
    }
    let all = weights.iter().fold(Mass::default(), |sum, one| sum + one.weight);
    let count = weights.iter().fold(0.0, |sum, one| sum + f64::from(one.count));
    Ok(Some((all / count, None)))
}

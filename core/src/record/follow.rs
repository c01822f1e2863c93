//! Following each pot from what went in to what was left, against the plan.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{
    Actuals, DrawActuals, DrawRecord, MadePart, MoldRecord, PieceActuals, PieceRecord, PotActuals,
    PotRecord, Record, RecordError, StageActuals, StageRecord,
};
use crate::batch::reject_interval;
use crate::book::Book;
use crate::calibrate::{CalibrateError, Weighed};
use crate::fault::{Fault, Faults};
use crate::formula::WrittenIn;
use crate::material::Kind;
use crate::mix::{MaterialId, Mix, Phase};
use crate::parameter::Parameter;
use crate::plan::tool_names::ToolNames;
use crate::plan::{Draw, Pieces, Plan, Pot, Stage, weigh};
use crate::quantity::{Amount, Mass, Ratio, Rational, Unit, Volume};
use crate::show::page::counted;
use crate::show::{Shown, text};

/// How sure an interval of rejects is.
const SURE: f64 = 0.95;

/// The record, or all that cannot have been.
pub(super) fn record(plan: &Plan, book: &Book, actuals: &Actuals) -> Result<Record, Faults> {
    let mut follow = Follow { book, faults: Vec::new(), counted: Vec::new() };
    follow.check_pots(plan, actuals);
    let pots: Vec<PotRecord> = plan
        .pots
        .iter()
        .filter_map(|pot| {
            let actual = actuals.pots.iter().find(|actual| actual.pot == pot.pot);
            follow.pot(pot, actual)
        })
        .collect();
    let molds = follow.molds();
    match Faults::from_vec(follow.faults) {
        Some(faults) => Err(faults),
        None => Ok(Record {
            #[cfg(feature = "document")]
            format: crate::document::Format::V1,
            shop: plan.shop.clone(),
            day: plan.day.clone(),
            measures: plan.measures,
            pots,
            molds,
        }),
    }
}

/// Pieces of a mold that were counted, and the pots that they came from.
struct Counted {
    mold: String,
    pots: Vec<String>,
    counted_by: String,
    made: u32,
    good: u32,
}

struct Follow<'a> {
    book: &'a Book,
    faults: Vec<Fault>,
    counted: Vec<Counted>,
}

/// Contents of the pot, as planned and as made.
#[derive(Default)]
struct Contents {
    planned: Mix,
    made: Mix,
}

impl Follow<'_> {
    fn keep<T>(&mut self, path: &str, result: Result<T, RecordError>) -> Option<T> {
        result.map_err(|error| self.faults.push(Fault::at(path, &error))).ok()
    }

    fn check_pots(&mut self, plan: &Plan, actuals: &Actuals) {
        for (index, actual) in actuals.pots.iter().enumerate() {
            let path = pot_path(&actual.pot);
            if !plan.pots.iter().any(|pot| pot.pot == actual.pot) {
                let known: Vec<&str> = plan.pots.iter().map(|pot| pot.pot.as_str()).collect();
                let (pot, known) = (actual.pot.clone(), known.join(", "));
                self.faults.push(Fault::at(path, &RecordError::NoPot { pot, known }));
            } else if actuals.pots.iter().take(index).any(|earlier| earlier.pot == actual.pot) {
                self.faults.push(Fault::at(path, &RecordError::PotTwice(actual.pot.clone())));
            }
        }
    }

    fn pot(&mut self, pot: &Pot, actual: Option<&PotActuals>) -> Option<PotRecord> {
        let path = pot_path(&pot.pot);
        let actual_stages = actual.map_or(&[][..], |actual| &actual.stages);
        if actual_stages.len() > pot.stages.len() {
            let stages = u32::try_from(pot.stages.len()).unwrap_or(u32::MAX);
            let error =
                RecordError::NoStage { pot: pot.pot.clone(), stages: counted(stages, "stage") };
            self.faults.push(Fault::at(format!("{path}/stages/{stages}"), &error));
        }
        let mut contents = Contents::default();
        let mut balance = Balance::default();
        let brought = self.brought(pot);
        self.keep(&path, brought.and_then(|mix| contents.both(&mix).map(|()| mix.mass())))
            .map(|mass| balance.put_in += mass)?;
        let mut stages = Vec::new();
        let none = StageActuals::default();
        for (index, stage) in pot.stages.iter().enumerate() {
            let path = format!("{path}/stages/{index}");
            let actual = actual_stages.get(index).unwrap_or(&none);
            let last = index.saturating_add(1) == pot.stages.len();
            stages.push(self.stage(
                pot,
                stage,
                actual,
                last,
                &mut contents,
                &mut balance,
                &path,
            )?);
        }
        let lost = balance.left.map(|left| balance.put_in - balance.shot - left);
        Some(PotRecord {
            pot: pot.pot.clone(),
            stages,
            put_in: text::mass(balance.put_in),
            shot: text::mass(balance.shot),
            left: balance.left.map(text::mass),
            lost: lost.map(signed_mass),
            planned_lost: pot.lost.clone(),
            heats: pot.heats.in_all,
            spent: pot.heats.spent().cloned(),
            notes: actual.and_then(|actual| actual.notes.clone()),
        })
    }

    /// Mix from the shelf, as planned.
    fn brought(&self, pot: &Pot) -> Result<Mix, RecordError> {
        let mut mix = Mix::new();
        for brought in pot.from_shelf.iter().flat_map(|from| &from.brings) {
            mix.add(self.material(&brought.material)?, brought.mass.quantity)?;
        }
        Ok(mix)
    }

    fn material(&self, name: &str) -> Result<MaterialId, RecordError> {
        let found = self.book.materials.find(name);
        found.ok_or_else(|| RecordError::UnknownMaterial(name.to_string()))
    }

    #[allow(clippy::too_many_arguments)] // a stage, its place, and the two ledgers it goes on with
    fn stage(
        &mut self,
        pot: &Pot,
        stage: &Stage,
        actual: &StageActuals,
        last: bool,
        contents: &mut Contents,
        balance: &mut Balance,
        path: &str,
    ) -> Option<StageRecord> {
        let added = self.added(stage, actual);
        let added = self.keep(path, added)?;
        balance.put_in += added.mass();
        let wanted = self.wanted(stage);
        let together = wanted.and_then(|wanted| {
            Ok((contents.planned.merge(&wanted)?, contents.made.merge(&added)?))
        });
        self.keep(path, together)?;
        let shot = self.draws(pot, stage, actual, path);
        let made = self.made(pot, &added, contents);
        let made = self.keep(path, made)?;
        #[cfg(feature = "document")]
        let formula = {
            let entry = super::formula::entry(pot, stage, &contents.made, self.book);
            self.keep(path, entry)?
        };
        let held = contents.made.mass();
        let after = self.after(stage, actual, &shot, held, last, path)?;
        balance.shot += shot.takes - shot.back;
        balance.left = actual.left.filter(|_| last);
        self.keep(path, contents.carry_on(stage, held, after))?;
        Some(StageRecord {
            formulas: stage.formulas.clone(),
            made,
            held: text::mass(held),
            draws: shot.draws,
            after: text::mass(after),
            after_weighed: actual.left.is_some(),
            #[cfg(feature = "document")]
            formula,
        })
    }

    /// Mix that the plan adds.
    fn wanted(&self, stage: &Stage) -> Result<Mix, RecordError> {
        let mut mix = Mix::new();
        for one in &stage.weigh {
            mix.add(self.material(&one.material)?, one.wanted.quantity)?;
        }
        Ok(mix)
    }

    /// Mass that went in: as stated, else what the chosen measure gives.
    fn added(&self, stage: &Stage, actual: &StageActuals) -> Result<Mix, RecordError> {
        let mut mix = actual.weighed.clone();
        for one in &stage.weigh {
            let material = self.material(&one.material)?;
            let is_weighed =
                actual.weighed.portions().iter().any(|portion| portion.material == material);
            if !is_weighed {
                mix.add(material, one.best.gives.quantity)?;
            }
        }
        Ok(mix)
    }

    /// Contents of the pot, plastisols first and then by kind.
    fn made(
        &self,
        pot: &Pot,
        added: &Mix,
        contents: &Contents,
    ) -> Result<Vec<MadePart>, RecordError> {
        let materials = &self.book.materials;
        let base = contents.made.base_mass(materials)?;
        let planned_base = contents.planned.base_mass(materials)?;
        if base <= Mass::default() {
            return Err(crate::mix::MixError::NoBase.into());
        }
        let cup = self.base_of_a_cup(&contents.made, base)?;
        let names = ToolNames::of(self.book);
        let tools = weigh::Tools::new(&names, self.book);
        let mut parts = Vec::new();
        for portion in contents.made.portions() {
            let material = materials.get(portion.material)?;
            let ratio = portion.mass / base;
            let planned = contents.planned.mass_of(portion.material) / planned_base;
            let off = (planned.value > 0.0).then(|| ratio / planned - Ratio::from(1.0));
            let tolerance = material.tolerance.unwrap_or(self.book.limits.tolerance);
            let in_cup = cup * ratio.value;
            let per_cup = match weigh::choose(
                material,
                in_cup,
                tolerance,
                written_in(pot, &material.name),
                None,
                tools,
            ) {
                Ok(ways) if ways.beyond.is_none() => {
                    weigh::way(&ways.best, in_cup, in_cup, &names).measure
                }
                // What the bench cannot do is still said, as a mass.
                _ => text::mass(in_cup).text,
            };
            parts.push(MadePart {
                material: material.name.clone(),
                kind: material.kind,
                added: text::mass(added.mass_of(portion.material)),
                mass: text::mass(portion.mass),
                of_base: Shown::new(ratio, fine_percent(ratio)),
                per_cup,
                off: off.map(|off| Shown::new(off, text::signed_percent(off))),
            });
        }
        parts.sort_by_key(|part| part.kind);
        Ok(parts)
    }

    /// The mass of a cup of the base that is in `mix`.
    fn base_of_a_cup(&self, mix: &Mix, base: Mass) -> Result<Mass, RecordError> {
        let cup: Volume = Amount::new(Rational::ONE, Unit::CUP)?.to(self.book.system)?;
        let mut only = Mix::new();
        for portion in mix.portions() {
            if self.book.materials.get(portion.material)?.kind == Kind::Plastisol {
                only.add(portion.material, portion.mass)?;
            }
        }
        Ok(base / only.volume(&self.book.materials, Phase::Liquid)? * cup)
    }

    /// Mix in the cup after the last shot.
    fn after(
        &mut self,
        stage: &Stage,
        actual: &StageActuals,
        shot: &Shot,
        held: Mass,
        last: bool,
        path: &str,
    ) -> Option<Mass> {
        if let Some(left) = actual.left {
            let possible = left <= held + shot.back;
            let checked =
                if possible { Ok(left) } else { Err(RecordError::LeftMore { left, held }) };
            return self.keep(&format!("{path}/left"), checked);
        }
        let planned = stage.draws.iter().fold(Mass::default(), |sum, draw| {
            sum + draw.per_shot.quantity * f64::from(draw.shots)
        });
        let kept =
            stage.holds.quantity - planned + stage.sprues_back.quantity - stage.carried.quantity;
        let after = held - shot.takes + shot.back - kept;
        if after > Mass::default() || last {
            return Some(if after > Mass::default() { after } else { Mass::default() });
        }
        self.keep(path, Err(RecordError::ShotMore { shot: shot.takes, held }))
    }
}

/// The measure that the plan of `pot` doses a material in.
fn written_in(pot: &Pot, material: &str) -> WrittenIn {
    let mut weighed = pot.stages.iter().flat_map(|stage| &stage.weigh);
    let weighed = weighed.find(|one| one.material == material);
    weighed.map_or(WrittenIn::Mass, |one| one.written_in)
}

/// Masses in and out of a pot so far.
#[derive(Default)]
struct Balance {
    put_in: Mass,
    shot: Mass,
    left: Option<Mass>,
}

impl Contents {
    fn both(&mut self, mix: &Mix) -> Result<(), RecordError> {
        self.planned.merge(mix)?;
        self.made.merge(mix)?;
        Ok(())
    }

    /// Leaves what the next stage begins with.
    fn carry_on(&mut self, stage: &Stage, held: Mass, after: Mass) -> Result<(), RecordError> {
        let planned = stage.carried.quantity / stage.holds.quantity;
        self.planned = self.planned.scaled(planned.value)?;
        self.made = self.made.scaled((after / held).value)?;
        Ok(())
    }
}

/// Mix that the shots of a stage took.
struct Shot {
    draws: Vec<DrawRecord>,
    takes: Mass,
    /// Sprues that went back.
    back: Mass,
}

impl Follow<'_> {
    fn draws(&mut self, pot: &Pot, stage: &Stage, actual: &StageActuals, path: &str) -> Shot {
        let mut taken: Vec<bool> = Vec::new();
        let mut of_draw: Vec<Option<(usize, &DrawActuals)>> =
            stage.draws.iter().map(|_| None).collect();
        for (index, actual) in actual.draws.iter().enumerate() {
            let free = stage.draws.iter().zip(&mut of_draw);
            let found =
                free.into_iter().find(|(draw, place)| draw.mold == actual.mold && place.is_none());
            taken.push(found.is_some());
            if let Some((_, place)) = found {
                *place = Some((index, actual));
            }
        }
        for (index, _) in taken.iter().enumerate().filter(|(_, taken)| !**taken) {
            let known: Vec<&str> = stage.draws.iter().map(|draw| draw.mold.as_str()).collect();
            let mold =
                actual.draws.get(index).map(|actual| actual.mold.clone()).unwrap_or_default();
            let error = RecordError::NoDraw { mold, known: known.join(", ") };
            self.faults.push(Fault::at(format!("{path}/draws/{index}/mold"), &error));
        }
        let mut shot = Shot { draws: Vec::new(), takes: Mass::default(), back: Mass::default() };
        let (mut sprues, mut planned_sprues) = (Mass::default(), Mass::default());
        for (draw, actual) in stage.draws.iter().zip(of_draw) {
            let path =
                actual.map_or_else(String::new, |(index, _)| format!("{path}/draws/{index}"));
            let actual = actual.map(|(_, actual)| actual);
            let shots = actual.map_or(draw.shots, |actual| actual.shots);
            sprues += draw.sprue.quantity * f64::from(shots);
            planned_sprues += draw.sprue.quantity * f64::from(draw.shots);
            let pieces = self.pieces(pot, draw, actual, shots, &path);
            shot.takes += per_shot(draw, &pieces) * f64::from(shots);
            shot.draws.push(DrawRecord {
                mold: draw.mold.clone(),
                shots,
                planned_shots: draw.shots,
                pieces,
            });
        }
        if planned_sprues > Mass::default() {
            shot.back = stage.sprues_back.quantity * (sprues / planned_sprues).value;
        }
        shot
    }

    fn pieces(
        &mut self,
        pot: &Pot,
        draw: &Draw,
        actual: Option<&DrawActuals>,
        shots: u32,
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
                self.faults.push(Fault::at(format!("{path}/pieces/{index}"), &error));
            }
        }
        let mut records = Vec::new();
        for planned in &draw.pieces {
            let actual =
                actual_pieces.iter().enumerate().find(|(_, actual)| actual.shape == planned.shape);
            let at = actual.map_or_else(String::new, |(index, _)| format!("{path}/pieces/{index}"));
            let actual = actual.map(|(_, actual)| actual);
            let cavities = planned.made.checked_div(draw.shots).unwrap_or(0);
            let made = shots.saturating_mul(cavities);
            records.push(self.piece(draw, planned, actual, (shots, made), &at));
            if let Some(good) = actual.and_then(|actual| actual.good) {
                self.count(pot, draw, made, good);
            }
        }
        records
    }

    fn piece(
        &mut self,
        draw: &Draw,
        planned: &Pieces,
        actual: Option<&PieceActuals>,
        (shots, made): (u32, u32),
        path: &str,
    ) -> PieceRecord {
        let good = actual.and_then(|actual| actual.good);
        if let Some(good) = good
            && good > made
        {
            let error = RecordError::TooManyGood { good, made };
            self.faults.push(Fault::at(format!("{path}/good"), &error));
        }
        let weights = actual.map_or(&[][..], |actual| &actual.weights);
        let weighed = self.keep(&format!("{path}/weights"), weighed(weights)).flatten();
        PieceRecord {
            shape: planned.shape.clone(),
            ordered: planned.ordered,
            made,
            good,
            good_per_shot: good
                .filter(|_| shots > 0)
                .map(|good| f64::from(good) / f64::from(shots)),
            weighed: u32::try_from(weights.len()).unwrap_or(u32::MAX),
            weighs: weighed.map(|(mean, _)| text::mass(mean)),
            deviation: weighed.and_then(|(_, deviation)| deviation.map(text::mass)),
            planned: is_whole(draw).then(|| planned.weighs.clone()),
        }
    }

    /// Counts pieces for their mold; those of a laminated shot by the pot that states them first.
    fn count(&mut self, pot: &Pot, draw: &Draw, made: u32, good: u32) {
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

    fn molds(&mut self) -> Vec<MoldRecord> {
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
fn is_whole(draw: &Draw) -> bool {
    draw.together_with.is_empty()
}

/// Mix of one shot: as planned, its pieces at the mass that they were weighed at.
fn per_shot(draw: &Draw, pieces: &[PieceRecord]) -> Mass {
    let planned = draw.per_shot.quantity;
    if !is_whole(draw) {
        return planned;
    }
    draw.pieces.iter().zip(pieces).fold(planned, |sum, (planned, record)| {
        let cavities = planned.made.checked_div(draw.shots).unwrap_or(0);
        let weighs = record.weighs.as_ref().map(|weighs| weighs.quantity);
        let more = weighs.map_or(Mass::default(), |weighs| weighs - planned.weighs.quantity);
        sum + more * f64::from(cavities)
    })
}

/// Mean and deviation of pieces that were weighed.
fn weighed(weights: &[Mass]) -> Result<Option<(Mass, Option<Mass>)>, RecordError> {
    match weights {
        [] => Ok(None),
        [only] => {
            let weight = Parameter::PieceWeight.check_si(only.value);
            weight.map_err(|error| CalibrateError::from(error.at(0)))?;
            Ok(Some((*only, None)))
        }
        all => {
            let weighed = Weighed::new(all, Mass::default())?;
            Ok(Some((weighed.mean, Some(weighed.deviation))))
        }
    }
}

/// A mass that may be below zero.
fn signed_mass(mass: Mass) -> Shown<Mass> {
    if mass >= Mass::default() {
        return text::mass(mass);
    }
    Shown::new(mass, format!("-{}", text::mass(-mass).text))
}

/// A ratio in per cent, to four digits.
fn fine_percent(ratio: Ratio) -> String {
    crate::show::percent(&ratio).to_string()
}

fn pot_path(pot: &str) -> String {
    format!("/pots/{}", pot.replace('~', "~0").replace('/', "~1"))
}

//! Which of the day's shots the pots that are there take.

use alloc::vec;
use alloc::vec::Vec;

use super::{DrawThere, PotThere};
use crate::plan::assign::Layer;
use crate::plan::day::DayRecipe;
use crate::plan::one_or_more::OneOrMore;
use crate::plan::pot::{DrawDraft, LayerShots, PotDraft, Shots, StageDraft, Workshop};

/// What the pots that are there take of the day, and what is left of it.
pub(in crate::plan) struct Taken<'a> {
    /// The pots that take something, in the order in which they are worked.
    pub(in crate::plan) pots: Vec<PotDraft<'a>>,
    /// Shots of laminated pieces of which these pots make a layer.
    pub(in crate::plan) sessions: Vec<Session<'a>>,
    /// The layers that further pots make.
    pub(in crate::plan) rest: Vec<Layer<'a>>,
}

/// Shots of a laminated piece with a layer from a pot that is there.
pub(in crate::plan) struct Session<'a> {
    pub(in crate::plan) of: &'a Shots<'a>,
    pub(in crate::plan) shots: u32,
    /// The draws of the pots that are there.
    pub(in crate::plan) draws: Vec<Place>,
    /// The first of the layers that further pots make for it, by its place among them; `None` if there is none.
    pub(in crate::plan) rest: Option<usize>,
    before: u32,
}

/// A draw of a pot that is there.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(in crate::plan) struct Place {
    pub(in crate::plan) pot: usize,
    pub(in crate::plan) stage: usize,
    pub(in crate::plan) draw: usize,
}

/// A pot while shots are given to it.
struct Giving<'a> {
    there: &'a PotThere,
    stages: Vec<StageDraft<'a>>,
    /// Its last stage with layers of laminated pieces.
    laminated: Option<usize>,
}

/// A layer of the pieces of a batch: which shots, which layer.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
struct Of {
    shots: usize,
    layer: usize,
}

/// The stages of a pot with further shots.
struct With<'a> {
    stages: Vec<StageDraft<'a>>,
    /// The stage of these shots, and whether it is a new one.
    stage: usize,
    is_new: bool,
}

impl<'a> Workshop<'a> {
    /// Gives the pots that are `there` the shots that they had, then all that those which take more can make. With layers
    /// of laminated pieces in `one_stage` of each pot at most, their order of work has no cycle.
    pub(in crate::plan) fn take(&self, there: &'a [PotThere], one_stage: bool) -> Taken<'a> {
        let mut giving = Given {
            workshop: self,
            one_stage,
            pots: there
                .iter()
                .map(|there| Giving { there, stages: Vec::new(), laminated: None })
                .collect(),
            taken: vec![0; self.shots.len()],
            sessions: Vec::new(),
        };
        giving.planned();
        giving.one_stage = true;
        giving.more();
        giving.finish()
    }
}

/// Whether a pot is heated for a stage's `draw`, counted from 0: once for its plain shots, and for each laminated piece.
pub(super) fn is_heated_for(draw: usize, of: &Shots<'_>) -> bool {
    draw == 0 || of.batch.is_laminated()
}

/// The shots given so far.
struct Given<'w, 'a> {
    workshop: &'w Workshop<'a>,
    one_stage: bool,
    pots: Vec<Giving<'a>>,
    /// Shots of each batch that are given.
    taken: Vec<u32>,
    sessions: Vec<Session<'a>>,
}

impl<'a> Given<'_, 'a> {
    fn at(&self, of: Of) -> Option<(&'a Shots<'a>, &'a LayerShots<'a>)> {
        let shots = self.workshop.shots.get(of.shots)?;
        Some((shots, shots.layers.iter().nth(of.layer)?))
    }

    /// Shots of a batch that are still to be given.
    fn left(&self, shots: usize) -> u32 {
        let all = self.workshop.shots.get(shots).map_or(0, |shots| shots.shots);
        all.saturating_sub(self.taken.get(shots).copied().unwrap_or(all))
    }

    /// Order lines, rising, each with the place of its batch.
    fn batches(&self) -> Vec<(usize, usize)> {
        let mut all = Vec::new();
        for (place, shots) in self.workshop.shots.iter().enumerate() {
            all.extend(shots.batch.lines.iter().map(|line| (line.number, place)));
        }
        all.sort_unstable();
        all
    }

    /// Gives each pot the shots that the plan before had for it.
    fn planned(&mut self) {
        // Layers of one piece that several pots had are shot together, where they had as many shots of it.
        let batches = self.batches();
        for pot in 0..self.pots.len() {
            let Some(there) = self.pots.get(pot).map(|pot| pot.there) else { continue };
            for &DrawThere { line, layer, shots } in &there.draws {
                let known = batches.binary_search_by_key(&line, |&(line, _)| line).ok();
                let Some(&(_, shots_of)) = known.and_then(|at| batches.get(at)) else { continue };
                let of = Of { shots: shots_of, layer };
                let Some((batch, _)) = self.at(of) else { continue };
                if !batch.batch.is_laminated() {
                    let shots = shots.min(self.left(of.shots));
                    let given = self.give_most(pot, of, shots);
                    self.count(of.shots, given);
                    continue;
                }
                let same = self
                    .sessions
                    .iter()
                    .enumerate()
                    .filter(|(_, one)| core::ptr::eq(one.of, batch) && one.shots == shots);
                let mut lacking = same.filter(|(_, one)| !self.has(one, pot, of.layer));
                let found = lacking.next().map(|(place, _)| place);
                match found {
                    Some(session) => {
                        let before = self.sessions.get(session).map_or(0, |one| one.before);
                        if let Some(place) = self.give(pot, of, shots, before) {
                            let session = self.sessions.get_mut(session);
                            session.into_iter().for_each(|session| session.draws.push(place));
                        }
                    }
                    None => {
                        let shots = shots.min(self.left(of.shots));
                        self.begin_session(pot, of, shots);
                    }
                }
            }
        }
    }

    /// Whether a session has that layer already, or a draw of that pot.
    fn has(&self, session: &Session<'a>, pot: usize, layer: usize) -> bool {
        session.draws.iter().any(|at| {
            let stage = self.pots.get(at.pot).and_then(|pot| pot.stages.get(at.stage));
            let draw = stage.and_then(|stage| stage.draws.get(at.draw));
            at.pot == pot || draw.is_none_or(|draw| draw.layer.number == layer)
        })
    }

    /// Gives a pot `shots` of a laminated piece, which are then to be completed.
    fn begin_session(&mut self, pot: usize, of: Of, shots: u32) {
        let before = self.taken.get(of.shots).copied().unwrap_or(0);
        let Some((batch, _)) = self.at(of).filter(|_| shots > 0) else { return };
        let Some(place) = self.give(pot, of, shots, before) else { return };
        let draws = Vec::from([place]);
        self.sessions.push(Session { of: batch, shots, draws, rest: None, before });
        self.count(of.shots, shots);
    }

    fn count(&mut self, shots: usize, given: u32) {
        if let Some(taken) = self.taken.get_mut(shots) {
            *taken = taken.saturating_add(given);
        }
    }

    /// Gives the pots that take more all that they can make: hot ones first, then what is nearest to what is in them.
    fn more(&mut self) {
        let mut refused: Vec<(usize, Of)> = Vec::new();
        loop {
            let mut best: Option<((bool, f64), usize, Of)> = None;
            for (pot, giving) in self.pots.iter().enumerate() {
                if !giving.there.takes_more || !giving.there.is_begun() {
                    continue;
                }
                for of in self.wanted() {
                    if refused.contains(&(pot, of)) {
                        continue;
                    }
                    let Some((_, layer)) = self.at(of) else { continue };
                    let key = (!giving.there.hot, giving.distance(layer.recipe));
                    if best.is_none_or(|(least, ..)| key < least) {
                        best = Some((key, pot, of));
                    }
                }
            }
            let Some((_, pot, of)) = best else { return };
            let left = self.left(of.shots);
            let is_laminated = self.at(of).is_some_and(|(shots, _)| shots.batch.is_laminated());
            let most = self.most(pot, of, left);
            if is_laminated && most > 0 {
                self.begin_session(pot, of, most);
                self.complete(pot, of, most);
            } else {
                let given = self.give_most(pot, of, most);
                self.count(of.shots, given);
                // It can make no more of them.
                refused.push((pot, of));
            }
        }
    }

    /// Gives the other layers of the last session to other pots that are there, where these can make them.
    fn complete(&mut self, pot: usize, of: Of, shots: u32) {
        let Some((batch, _)) = self.at(of) else { return };
        let before = self.sessions.last().map_or(0, |session| session.before);
        let mut used = Vec::from([pot]);
        for layer in (0..batch.layers.len()).filter(|layer| *layer != of.layer) {
            let other = Of { layer, ..of };
            let pots = 0..self.pots.len();
            for pot in pots.filter(|pot| !used.contains(pot)).collect::<Vec<_>>() {
                let may = self
                    .pots
                    .get(pot)
                    .is_some_and(|one| one.there.takes_more && one.there.is_begun());
                let place = if may { self.give(pot, other, shots, before) } else { None };
                if let Some(place) = place {
                    used.push(pot);
                    let session = self.sessions.last_mut();
                    session.into_iter().for_each(|session| session.draws.push(place));
                    break;
                }
            }
        }
    }

    /// The layers of which shots are left.
    fn wanted(&self) -> impl Iterator<Item = Of> + '_ {
        let each = self.workshop.shots.iter().enumerate();
        each.filter(|(shots, _)| self.left(*shots) > 0)
            .flat_map(|(shots, of)| (0..of.layers.len()).map(move |layer| Of { shots, layer }))
    }

    /// Gives as many of `shots` as the pot can make, and how many that is.
    fn give_most(&mut self, pot: usize, of: Of, shots: u32) -> u32 {
        let most = self.most(pot, of, shots);
        let before = self.taken.get(of.shots).copied().unwrap_or(0);
        match most {
            0 => 0,
            most => self.give(pot, of, most, before).map_or(0, |_| most),
        }
    }

    /// The largest number of shots, up to `shots`, that the pot can make.
    fn most(&self, pot: usize, of: Of, shots: u32) -> u32 {
        let before = self.taken.get(of.shots).copied().unwrap_or(0);
        let fits = |shots: u32| shots == 0 || self.with(pot, of, shots, before).is_some();
        if fits(shots) {
            return shots;
        }
        let (mut fit, mut too_many) = (0, shots);
        while too_many.saturating_sub(fit) > 1 {
            let middle = fit.midpoint(too_many);
            if fits(middle) { fit = middle } else { too_many = middle }
        }
        fit
    }

    /// Gives the pot just these shots, if it can make them.
    fn give(&mut self, pot: usize, of: Of, shots: u32, before: u32) -> Option<Place> {
        let With { stages, stage, is_new } = self.with(pot, of, shots, before)?;
        let is_laminated = self.at(of)?.0.batch.is_laminated();
        let draw = stages.get(stage)?.draws.len().checked_sub(1)?;
        if is_new {
            let places = self.sessions.iter_mut().flat_map(|session| &mut session.draws);
            for place in places.filter(|place| place.pot == pot && place.stage >= stage) {
                place.stage = place.stage.saturating_add(1);
            }
        }
        let giving = self.pots.get_mut(pot)?;
        giving.stages = stages;
        let laminated =
            giving.laminated.map(|at| at.saturating_add(usize::from(is_new && at >= stage)));
        giving.laminated = if is_laminated { Some(stage) } else { laminated };
        Some(Place { pot, stage, draw })
    }

    /// The stages of the pot with these shots at the stage of their recipe, or at a new one as early as can be; `None` if it
    /// cannot make them.
    fn with(&self, pot: usize, of: Of, shots: u32, before: u32) -> Option<With<'a>> {
        let giving = self.pots.get(pot)?;
        let (batch, layer) = self.at(of)?;
        let draw = DrawDraft { of: batch, layer, shots, before };
        let recipe = layer.recipe;
        let same = giving.stages.iter().position(|stage| stage.recipe.number == recipe.number);
        let begun = giving.there.is_begun();
        let places = match (same, begun) {
            (Some(at), _) => at..at.saturating_add(1),
            (None, true) => 0..giving.stages.len().saturating_add(1),
            // Nothing tells what a pot that is not begun can make, but the order in which it was to make it.
            (None, false) => giving.stages.len()..giving.stages.len().saturating_add(1),
        };
        let is_laminated = batch.batch.is_laminated();
        places.into_iter().find_map(|place| {
            let mut stages = giving.stages.clone();
            match stages.get_mut(place).filter(|_| same.is_some()) {
                Some(stage) => {
                    let again = is_heated_for(stage.draws.len(), batch);
                    stage.heats = stage.heats.saturating_add(u32::from(again));
                    stage.draws.push(draw);
                }
                None => {
                    stages.insert(place, StageDraft { recipe, draws: Vec::from([draw]), heats: 1 });
                }
            }
            if !begun {
                return Some(With { stages, stage: place, is_new: same.is_none() });
            }
            let elsewhere = giving.laminated.is_some_and(|at| same != Some(at));
            if is_laminated && elsewhere && self.one_stage {
                return None;
            }
            let draft = PotDraft { stages: OneOrMore::of(stages.iter().cloned())?, there: None };
            self.workshop.build_on(giving.there, &draft).ok()?;
            Some(With { stages, stage: place, is_new: same.is_none() })
        })
    }

    fn finish(mut self) -> Taken<'a> {
        let mut rest = Vec::new();
        for (place, shots) in self.workshop.shots.iter().enumerate() {
            let (left, before) = (self.left(place), self.taken.get(place).copied().unwrap_or(0));
            if left > 0 {
                let piece = shots.batch.is_laminated().then_some(shots.batch.number);
                let each = shots.layers.iter();
                rest.extend(each.map(|layer| Layer {
                    of: shots,
                    layer,
                    shots: left,
                    before,
                    piece,
                }));
            }
        }
        let mut number = self.workshop.shots.len();
        for session in &mut self.sessions {
            let made: Vec<usize> = session
                .draws
                .iter()
                .filter_map(|at| self.pots.get(at.pot)?.stages.get(at.stage)?.draws.get(at.draw))
                .map(|draw| draw.layer.number)
                .collect();
            let missing = session.of.layers.iter().filter(|layer| !made.contains(&layer.number));
            let missing: Vec<&LayerShots<'a>> = missing.collect();
            let Session { of, shots, before, .. } = *session;
            session.rest = (!missing.is_empty()).then_some(rest.len());
            // One layer alone is shot like any other; several are a piece of their own.
            let piece = (missing.len() > 1).then_some(number);
            number = number.saturating_add(1);
            rest.extend(missing.into_iter().map(|layer| Layer { of, layer, shots, before, piece }));
        }
        // Pots that take nothing are left out, and the others numbered anew.
        let mut places = vec![None; self.pots.len()];
        let mut pots = Vec::new();
        for (giving, place) in self.pots.into_iter().zip(&mut places) {
            if let Some(stages) = OneOrMore::of(giving.stages) {
                *place = Some(pots.len());
                pots.push(PotDraft { stages, there: Some(giving.there) });
            }
        }
        for at in self.sessions.iter_mut().flat_map(|session| &mut session.draws) {
            at.pot = places.get(at.pot).copied().flatten().unwrap_or(at.pot);
        }
        Taken { pots, sessions: self.sessions, rest }
    }
}

impl Giving<'_> {
    /// How much goes in to make what is in the pot a `recipe`, per mass of base.
    fn distance(&self, recipe: &DayRecipe<'_>) -> f64 {
        let last = self.stages.last().map(|stage| stage.recipe);
        if last.is_some_and(|last| last.number == recipe.number) {
            return 0.0;
        }
        let mix = &self.there.contents.mix;
        let base =
            recipe.recipe.base().iter().fold(0.0, |sum, one| sum + mix.mass_of(one.material).value);
        recipe.recipe.additives().iter().fold(0.0, |sum, one| {
            let held = match last {
                Some(last) => {
                    let found = last.recipe.additives().iter();
                    found
                        .filter(|other| other.material == one.material)
                        .fold(0.0, |_, other| other.ratio)
                }
                None if base > 0.0 => mix.mass_of(one.material).value / base,
                None => 0.0,
            };
            sum + (one.ratio - held).max(0.0)
        })
    }
}

#[cfg(all(test, feature = "document"))]
mod tests;

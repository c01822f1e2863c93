//! The order of work of pots that are there and further ones.

use alloc::vec;
use alloc::vec::Vec;

use super::Taken;
use super::take::{Place, is_heated_for};
use crate::plan::assign::WorkDraw;
use crate::plan::pot::{DrawDraft, PotDraft};

/// The work of the day, and the pots that are there with their draws in its order.
pub(in crate::plan) type Ordered<'a> = (Vec<Vec<WorkDraw<'a>>>, Vec<PotDraft<'a>>);

/// The work of the pots that are there, which come first, and of the further pots, which are `works` in their order and
/// counted on from those. What belongs to a laminated piece is shot together. Fails with a pot whose turn never comes:
/// the pots that it has layers in common with would have to be shot in another order.
pub(in crate::plan) fn in_order<'a>(
    taken: &Taken<'a>,
    works: Vec<Vec<WorkDraw<'a>>>,
) -> Result<Ordered<'a>, usize> {
    let mut day = Order {
        taken,
        done: vec![Vec::new(); taken.pots.len()],
        left: session_shots(taken),
        all: Vec::new(),
    };
    day.run_ready();
    for mut work in works {
        let wanted = work.iter().filter_map(|draw| day.session_of(draw)).next();
        if let (Some(session), Some(first)) = (wanted, work.first().copied()) {
            if let Some(pot) = day.is_early(session) {
                return Err(pot);
            }
            day.join(session, first.shots, &mut work);
        }
        day.all.push(work);
        day.run_ready();
    }
    match (0..taken.pots.len()).find(|pot| day.next(*pot).is_some()) {
        Some(pot) => Err(pot),
        None => Ok(redrawn(day.all, &taken.pots)),
    }
}

/// The pots that are there with one draw for each time that they are shot from: further pots may shoot a laminated piece
/// at several times, and in another order.
fn redrawn<'a>(mut works: Vec<Vec<WorkDraw<'a>>>, pots: &[PotDraft<'a>]) -> Ordered<'a> {
    let mut redrawn: Vec<PotDraft<'a>> = pots.to_vec();
    for stage in redrawn.iter_mut().flat_map(|pot| pot.stages.iter_mut()) {
        stage.draws.clear();
        stage.heats = 0;
    }
    let mut shot: Vec<(Place, u32)> = Vec::new();
    for work in works.iter_mut().flatten() {
        let place = Place { pot: work.pot, stage: work.stage, draw: work.draw };
        let drafted = pots.get(work.pot).and_then(|pot| pot.stages.iter().nth(work.stage));
        let drafted = drafted.and_then(|stage| stage.draws.get(work.draw));
        let stage = redrawn.get_mut(work.pot).and_then(|pot| pot.stages.iter_mut().nth(work.stage));
        let (Some(drafted), Some(stage)) = (drafted, stage) else { continue };
        let earlier = shot.iter().filter(|(other, _)| *other == place);
        let before = earlier.fold(drafted.before, |sum, (_, shots)| sum.saturating_add(*shots));
        shot.push((place, work.shots));
        work.draw = stage.draws.len();
        stage.draws.push(DrawDraft { shots: work.shots, before, ..*drafted });
        stage.heats = stage.heats.saturating_add(u32::from(work.heated));
    }
    (works, redrawn)
}

fn session_shots(taken: &Taken<'_>) -> Vec<u32> {
    taken.sessions.iter().map(|session| session.shots).collect()
}

struct Order<'t, 'a> {
    taken: &'t Taken<'a>,
    /// Draws of each pot that are done.
    done: Vec<Vec<Place>>,
    /// Shots of each session that are still to come.
    left: Vec<u32>,
    all: Vec<Vec<WorkDraw<'a>>>,
}

impl<'a> Order<'_, 'a> {
    /// The next draw of a pot.
    fn next(&self, pot: usize) -> Option<Place> {
        let done = self.done.get(pot)?;
        let stages = self.taken.pots.get(pot)?.stages.iter().enumerate();
        let mut draws = stages.flat_map(|(stage, draft)| {
            (0..draft.draws.len()).map(move |draw| Place { pot, stage, draw })
        });
        draws.find(|place| !done.contains(place))
    }

    fn session_at(&self, place: Place) -> Option<usize> {
        self.taken.sessions.iter().position(|session| session.draws.contains(&place))
    }

    /// The session that a further pot's draw completes.
    fn session_of(&self, draw: &WorkDraw<'a>) -> Option<usize> {
        let mut sessions = self.taken.sessions.iter();
        sessions.position(|session| session.rest.is_some() && session.rest == draw.wanted)
    }

    fn draw(&self, place: Place, shots: Option<u32>) -> Option<WorkDraw<'a>> {
        let stage = self.taken.pots.get(place.pot)?.stages.iter().nth(place.stage)?;
        let draft = stage.draws.get(place.draw)?;
        Some(WorkDraw {
            pot: place.pot,
            stage: place.stage,
            draw: place.draw,
            of: draft.of,
            shots: shots.unwrap_or(draft.shots),
            heated: is_heated_for(place.draw, draft.of),
            wanted: None,
        })
    }

    fn finish(&mut self, place: Place) {
        self.done.get_mut(place.pot).into_iter().for_each(|done| done.push(place));
    }

    /// Does all that no further pot is needed for.
    fn run_ready(&mut self) {
        while let Some(place) = (0..self.taken.pots.len()).find_map(|pot| self.ready(pot)) {
            match self.session_at(place) {
                None => {
                    self.all.extend(self.draw(place, None).map(|draw| Vec::from([draw])));
                    self.finish(place);
                }
                Some(session) => {
                    let draws = self.taken.sessions.get(session).map_or(&[][..], |one| &one.draws);
                    let work = draws.iter().filter_map(|place| self.draw(*place, None)).collect();
                    self.all.push(work);
                    draws.iter().for_each(|place| self.finish(*place));
                }
            }
        }
    }

    /// The next draw of a pot, if nothing else must come before it.
    fn ready(&self, pot: usize) -> Option<Place> {
        let place = self.next(pot)?;
        let Some(session) = self.session_at(place).and_then(|at| self.taken.sessions.get(at))
        else {
            return Some(place);
        };
        let all_next = session.draws.iter().all(|other| self.next(other.pot) == Some(*other));
        (session.rest.is_none() && all_next).then_some(place)
    }

    /// A pot of a session that has shots of an earlier stage still to come.
    fn is_early(&self, session: usize) -> Option<usize> {
        let draws = self.taken.sessions.get(session).map_or(&[][..], |one| &one.draws);
        let early = |at: &&Place| self.next(at.pot).is_none_or(|next| next.stage != at.stage);
        draws.iter().find(early).map(|at| at.pot)
    }

    /// Adds the draws of a session to the `work` of further pots, which shoots `shots` of it.
    fn join(&mut self, session: usize, shots: u32, work: &mut Vec<WorkDraw<'a>>) {
        let draws = self.taken.sessions.get(session).map_or(&[][..], |one| &one.draws);
        work.extend(draws.iter().filter_map(|place| self.draw(*place, Some(shots))));
        let Some(left) = self.left.get_mut(session) else { return };
        *left = left.saturating_sub(shots);
        if *left == 0 {
            draws.iter().for_each(|place| self.finish(*place));
        }
    }
}

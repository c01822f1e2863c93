//! The work: what is shot at one time, and which pots are hot together for it.

use alloc::vec::Vec;

use super::{PotLayout, WorkFromLayout, WorkLayout};
use crate::plan::assign::{Assigned, WorkDraw};

/// The work that is `assigned` to pots.
pub(in crate::plan) fn work<'a>(assigned: &Assigned<'a>) -> Vec<WorkLayout<'a>> {
    let one = |draws: &Vec<WorkDraw<'a>>| {
        let &WorkDraw { of, shots, .. } = draws.first()?;
        let from = draws.iter().map(|draw| WorkFromLayout {
            pot: draw.pot,
            stage: draw.stage,
            draw: draw.draw,
            heated: draw.heated,
        });
        Some(WorkLayout { of, shots, from: from.collect() })
    };
    assigned.work.iter().filter_map(one).collect()
}

/// Notes, at each draw of a laminated piece, the pots that are hot with it.
pub(in crate::plan) fn note_companions(assigned: &Assigned<'_>, pots: &mut [PotLayout<'_>]) {
    for (pot, stage, draw, other) in assigned.companions() {
        let stage = pots.get_mut(pot).and_then(|pot| pot.stages.get_mut(stage));
        let draw = stage.and_then(|stage| stage.draws.get_mut(draw));
        draw.into_iter().for_each(|draw| draw.with.push(other));
    }
}

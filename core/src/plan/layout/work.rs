//! The work: what is shot at one time, and which pots are hot together for it.

use alloc::vec::Vec;

use super::{PotLayout, StageLayout, WorkFromLayout, WorkLayout};
use crate::plan::assign::{Assigned, WorkDraw};
use crate::plan::pot::Workshop;
use crate::plan::{process, weigh};

impl<'a> Workshop<'a> {
    /// The work that is `assigned` to `pots`.
    pub(in crate::plan) fn work(
        &self,
        assigned: &Assigned<'a>,
        pots: &[PotLayout<'a>],
    ) -> Vec<WorkLayout<'a>> {
        let one = |draws: &Vec<WorkDraw<'a>>| {
            let &WorkDraw { of, shots, .. } = draws.first()?;
            let from = draws.iter().map(|draw| WorkFromLayout {
                pot: draw.pot,
                stage: draw.stage,
                draw: draw.draw,
                heated: draw.heated,
            });
            let (from, heating) = (from.collect(), self.heating_together(draws, pots));
            Some(WorkLayout { of, shots, from, heating })
        };
        assigned.work.iter().filter_map(one).collect()
    }

    /// How the pots that are heated for `draws` are heated as one load, if there are several.
    fn heating_together(
        &self,
        draws: &[WorkDraw<'a>],
        pots: &[PotLayout<'a>],
    ) -> Option<crate::show::Calculated<crate::plan::PlannedHeating>> {
        let mut heated: Vec<(&WorkDraw<'a>, &PotLayout<'a>, &StageLayout<'a>, _)> = Vec::new();
        for draw in draws.iter().filter(|draw| draw.heated) {
            let pot = pots.get(draw.pot)?;
            let stage = pot.stages.get(draw.stage)?;
            heated.push((draw, pot, stage, weigh::hot(&stage.weigh)));
        }
        let mut cups = Vec::new();
        for (draw, pot, stage, hot) in &heated {
            cups.push(process::Cup {
                recipe: stage.recipe,
                mass: stage.held,
                hot,
                vessel: pot.cup.vessel.heat_capacity,
                first: pot.is_cold_before(draw.stage),
            });
        }
        if cups.len() > 1 { process::heating(self.book, &cups) } else { None }
    }
}

/// Notes, at each draw of a laminated piece, the pots that are hot with it.
pub(in crate::plan) fn note_companions(assigned: &Assigned<'_>, pots: &mut [PotLayout<'_>]) {
    for (pot, stage, draw, other) in assigned.companions() {
        let stage = pots.get_mut(pot).and_then(|pot| pot.stages.get_mut(stage));
        let draw = stage.and_then(|stage| stage.draws.get_mut(draw));
        draw.into_iter().for_each(|draw| draw.with.push(other));
    }
}

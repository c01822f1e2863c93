//! A pot of a plan as its sheet measures it.

use alloc::vec::Vec;

use super::MispourError;
use crate::book::Book;
use crate::formula::WrittenIn;
use crate::mix::{MaterialId, Mix};
use crate::plan::{MaterialMass, Pot, Weigh};
use crate::quantity::Mass;

/// What a stage of a pot holds if all goes by the sheet.
pub(crate) struct Meant {
    /// What is in it before: from the shelf, from a pot that was there, from the stage before.
    pub(crate) before: Mix,
    /// What the stage adds.
    pub(crate) added: Mix,
    /// The measures that its formulas dose it in.
    pub(crate) written: Vec<(MaterialId, WrittenIn)>,
    /// Whether some of the pot has been shot by then, or it has been heated.
    pub(crate) is_used: bool,
    /// Whether it is hot then.
    pub(crate) is_hot: bool,
}

impl Meant {
    /// The stage `stage` of `pot`, counted from 0, in the measures of its sheet; `None` if it has no such stage.
    ///
    /// # Errors
    /// The pot names a material that the book lacks: it was planned with another book.
    pub(crate) fn of(pot: &Pot, stage: usize, book: &Book) -> Result<Option<Self>, MispourError> {
        Self::by(|weigh| weigh.best.gives.quantity, pot, stage, book)
    }

    /// The same as its formulas say, which measures of the bench only come near.
    ///
    /// # Errors
    /// As [`Meant::of`].
    pub(crate) fn by_formula(
        pot: &Pot,
        stage: usize,
        book: &Book,
    ) -> Result<Option<Self>, MispourError> {
        Self::by(|weigh| weigh.wanted.quantity, pot, stage, book)
    }

    fn by(
        mass: impl Fn(&Weigh) -> Mass,
        pot: &Pot,
        stage: usize,
        book: &Book,
    ) -> Result<Option<Self>, MispourError> {
        let mut before = Mix::new();
        let shelf = pot.from_shelf.iter().flat_map(|from| &from.brings);
        for part in pot.there.iter().flat_map(|there| &there.parts).chain(shelf) {
            let MaterialMass { material, mass } = part;
            before.add(find(material, book)?, mass.quantity)?;
        }
        let mut written: Vec<(MaterialId, WrittenIn)> = Vec::new();
        let was_heated = pot.there.as_ref().is_some_and(|there| there.heats != Some(0));
        let was_hot = pot.there.as_ref().is_some_and(|there| there.hot);
        for (index, one) in pot.stages.iter().enumerate() {
            let mut added = Mix::new();
            for weigh in &one.weigh {
                let material = find(&weigh.material, book)?;
                added.add(material, mass(weigh))?;
                written.retain(|(known, _)| *known != material);
                written.push((material, weigh.written_in));
            }
            if index == stage {
                let is_later = stage > 0;
                let (is_used, is_hot) = (is_later || was_heated, is_later || was_hot);
                return Ok(Some(Self { before, added, written, is_used, is_hot }));
            }
            before.merge(&added)?;
            let held = before.mass();
            // Nothing is carried of nothing.
            if held > Mass::default() {
                before = before.scaled((one.carried.quantity / held).value)?;
            }
        }
        Ok(None)
    }

    /// All that is in it then.
    pub(crate) fn whole(&self) -> Result<Mix, MispourError> {
        let mut whole = self.before.clone();
        whole.merge(&self.added)?;
        Ok(whole)
    }
}

fn find(name: &str, book: &Book) -> Result<MaterialId, MispourError> {
    book.materials.find(name).ok_or_else(|| MispourError::OtherBook { material: name.into() })
}

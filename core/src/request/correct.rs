//! What to add to a pot that came out wrong.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::formula::{base_mass, combined};
use super::{Faulty, pointer};
use crate::book::Book;
use crate::document::Named;
use crate::document::book::BookDocument;
use crate::document::entry::entry;
use crate::document::nearest::nearest;
use crate::document::reader::Name;
use crate::document::written::{Percent, Written};
use crate::fault::{Fault, Faults};
use crate::formula::{Overlap, Recipe};
use crate::mix::{Mix, Phase};
use crate::parameter::parameter;
use crate::plan::mispour::{Mispour, PutRight};
use crate::quantity::{Amount, Dimension, Mass, Ratio, Volume};

entry! {
    /// Asks what to add to a pot that came out wrong.
    ///
    /// At the bench one says what went in otherwise than meant: "it should have been dusk for two
    /// cups, but I gave it 90 drops of plum". That is `"formulas": ["dusk", "plain"], "base": "2 cup",
    /// "pot": { "plum": "90 drops" }`. A base measured wrong is said the same way:
    /// `"pot": { "clear-base": "2 1/4 cup" }`. Without `base`, `pot` names all that is in the cup.
    pub struct CorrectRequest {
        required {
            #[doc = parameter!(book)]
            book: BookDocument,
            #[doc = parameter!(formulas)]
            formulas: Vec<Name>,
            #[doc = parameter!(pot)]
            pot: Named<Amount>,
        }
        optional {
            #[doc = parameter!(overlap)]
            overlap: Overlap,
            #[doc = parameter!(pot_base)]
            base: Amount,
            #[doc = parameter!(still_there)]
            still_there: Amount,
            #[doc = parameter!(cup)]
            cup: Written<Volume>,
            #[doc = parameter!(trace)]
            trace: Percent,
        }
    }
}

impl CorrectRequest {
    /// Says what to add.
    ///
    /// # Errors
    /// Faults of the book, unknown names, amounts that are none of a material, an empty pot or one
    /// fuller than its cup, an addition that the bench cannot measure.
    pub fn answer(&self) -> Result<PutRight, Faults> {
        let book = Book::try_from(&self.book).map_err(|faults| faults.below("/book"))?;
        let mut faulty = Faulty::new(Some(book.system));
        let response = self.response(&book, &mut faulty);
        faulty.finish(response)
    }

    fn response(&self, book: &Book, faulty: &mut Faulty) -> Option<PutRight> {
        let (target, _) = combined(&self.formulas, self.overlap, book, faulty)?;
        let cup = match &self.cup {
            Some(cup) => Some(faulty.quantity("cup", cup)?),
            None => None,
        };
        let pot = self.mixed(&target, book, faulty)?;
        let pot = self.remaining(pot, book, faulty)?;
        let trace = Ratio::from(self.trace.map_or(0.0, Percent::share));
        let mispour = Mispour { book, target: &target, pot: &pot, cup, trace };
        let field = if self.cup.is_some() { "cup" } else { "pot" };
        faulty.keep(field, mispour.put_right())
    }

    /// What went in.
    fn mixed(&self, target: &Recipe, book: &Book, faulty: &mut Faulty) -> Option<Mix> {
        let mut mix = Mix::new();
        if let Some(base) = &self.base {
            let meant = target.for_base(base_mass(base, target, book, faulty)?);
            for portion in faulty.keep("base", meant)?.portions() {
                let name = &faulty.keep("base", book.materials.get(portion.material))?.name;
                if self.pot.get(name).is_none() {
                    faulty.keep("base", mix.add(portion.material, portion.mass))?;
                }
            }
        }
        for (name, amount) in &self.pot {
            let path = pointer("/pot", name);
            let Some(id) = book.materials.find(name) else {
                faulty.faults.push(unknown_material(path, name, book));
                continue;
            };
            let material = faulty.keep("pot", book.materials.get(id))?;
            let mass = material.mass_of(amount, book.system, "weighing what is in the pot");
            if let Some(mass) = faulty.keep_at(path.clone(), mass) {
                faulty.keep_at(path, mix.add(id, mass));
            }
        }
        faulty.faults.is_empty().then_some(mix)
    }

    /// What is left of it, where some was shot.
    fn remaining(&self, mut pot: Mix, book: &Book, faulty: &mut Faulty) -> Option<Mix> {
        let Some(left) = &self.still_there else { return Some(pot) };
        let mass: Mass = if left.dimension() == Dimension::VOLUME {
            let volume: Volume = faulty.keep("still_there", left.to(book.system))?;
            let filled = faulty.keep("pot", pot.volume(&book.materials, Phase::Liquid))?;
            pot.mass() * (volume / filled).value
        } else {
            faulty.keep("still_there", left.to(book.system))?
        };
        faulty.keep("still_there", pot.draw(mass))
    }
}

pub(super) fn unknown_material(path: String, name: &str, book: &Book) -> Fault {
    let names = || book.materials.iter().map(|(_, material)| material.name.as_str());
    Fault {
        code: "unknown-name".into(),
        path,
        message: format!("There is no material \"{name}\" in the book."),
        help: match nearest(name, names()) {
            Some(near) => format!("Did you mean \"{near}\"?"),
            None => format!("The book has: {}.", names().collect::<Vec<_>>().join(", ")),
        },
    }
}

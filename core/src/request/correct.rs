//! Fix for a pot that came out wrong.

use alloc::vec::Vec;

use super::formula::{base_mass, combined};
use super::{Open, request};
use crate::book::Book;
use crate::document::book::BookDocument;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::formula::{Overlap, Recipe};
use crate::json::Named;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::mix::{Mix, Phase};
use crate::parameter::Parameter;
use crate::plan::mispour::{Mispour, PutRight};
use crate::quantity::{Amount, Dimension, Mass, Volume};

request! {
    /// Asks what to add to a pot that came out wrong.
    ///
    /// At the bench one says what went in otherwise than meant: "it should have been dusk for two
    /// cups, but I gave it 90 drops of plum". That is `"formulas": ["dusk", "plain"], "base": "2 cup",
    /// "pot": { "plum": "90 drops" }`. A base measured wrong is said the same way:
    /// `"pot": { "clear-base": "2 1/4 cup" }`. Without `base`, `pot` names all that is in the cup.
    pub struct CorrectRequest {
        required {
            formulas: Vec<Name>,
            pot: Named<Amount>,
        }
        optional {
            book: BookDocument,
            overlap: Overlap,
            pot_base: Amount,
            still_there: Amount,
            cup: Written<Volume>,
            trace: Share,
        }
    }
}

impl CorrectRequest {
    /// Says what to add.
    ///
    /// # Errors
    /// Faults of the book, unknown names, amounts that are none of a material, an empty pot or one
    /// fuller than its cup, an addition that the bench cannot measure.
    pub fn answer(mut self, open: Open<'_>) -> Result<PutRight, Faults> {
        let loaded = open.book(self.book.take())?;
        let book = loaded.ready();
        let mut resolver = Resolver::new(book.system);
        let response = self.response(book, &mut resolver);
        resolver.finish(response)
    }

    fn response(&self, book: &Book, resolver: &mut Resolver) -> Option<PutRight> {
        let (target, _) = combined(&self.formulas, self.overlap, book, resolver)?;
        let cup = match &self.cup {
            Some(cup) => Some(resolver.quantity(&At("/cup"), cup)?),
            None => None,
        };
        let pot = self.mixed(&target, book, resolver)?;
        let pot = self.remaining(pot, book, resolver)?;
        let trace = resolver.share(Parameter::Trace, self.trace)?;
        let mispour = Mispour { book, target: &target, pot: &pot, cup, trace };
        let path = if self.cup.is_some() { At("/cup") } else { At("/pot") };
        resolver.keep(&path, mispour.put_right())
    }

    /// Mix that went in.
    fn mixed(&self, target: &Recipe, book: &Book, resolver: &mut Resolver) -> Option<Mix> {
        let mut mix = Mix::new();
        if let Some(base) = &self.pot_base {
            let meant = target.for_base(base_mass(base, target, book, resolver)?);
            for portion in resolver.keep(&At("/pot_base"), meant)?.portions() {
                let name =
                    &resolver.keep(&At("/pot_base"), book.materials.get(portion.material))?.name;
                if self.pot.get(name).is_none() {
                    resolver.keep(&At("/pot_base"), mix.add(portion.material, portion.mass))?;
                }
            }
        }
        for (name, amount) in &self.pot {
            let path = At("/pot").key(name);
            let found = book.materials.find(name);
            let mut names = book.materials.iter().map(|(_, material)| material.name.as_str());
            let Some(id) = resolver.find("material", &path, name, found, &mut names) else {
                continue;
            };
            let material = resolver.keep(&At("/pot"), book.materials.get(id))?;
            let mass = material.mass_of(amount, book.system, "weighing what is in the pot");
            if let Some(mass) = resolver.keep(&path, mass) {
                resolver.keep(&path, mix.add(id, mass));
            }
        }
        resolver.faults.is_empty().then_some(mix)
    }

    /// Mix that is left of it, if some was shot.
    fn remaining(&self, mut pot: Mix, book: &Book, resolver: &mut Resolver) -> Option<Mix> {
        let Some(left) = &self.still_there else { return Some(pot) };
        let mass: Mass = if left.dimension() == Dimension::VOLUME {
            let volume: Volume = resolver.keep(&At("/still_there"), left.to(book.system))?;
            let filled = resolver.keep(&At("/pot"), pot.volume(&book.materials, Phase::Liquid))?;
            pot.mass() * (volume / filled).value
        } else {
            resolver.keep(&At("/still_there"), left.to(book.system))?
        };
        resolver.keep(&At("/still_there"), pot.draw(mass))
    }
}

//! A stage as made, as a formula for the book.

use crate::json::Named;
use alloc::format;

use super::RecordError;
use crate::book::Book;
use crate::document::book::{BaseEntry, FormulaEntry};
use crate::json::Name;
use crate::material::Kind;
use crate::mix::Mix;
use crate::plan::{Pot, Stage};
use crate::quantity::{Amount, AmountError, Mass, Unit, significant};

/// Digits that a mass is written with: rounding far below any balance.
const DIGITS: u8 = 12;

/// The formula that makes `mix` again: its masses, per the mass of its base.
pub(super) fn entry(
    pot: &Pot,
    stage: &Stage,
    mix: &Mix,
    book: &Book,
) -> Result<FormulaEntry, RecordError> {
    let grams = |mass: Mass| -> Result<Amount, AmountError> {
        significant(mass, Unit::GRAM, DIGITS, book.system)
    };
    let (mut base, mut doses) = (Named::default(), Named::default());
    for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
        let material = book.materials.get(portion.material)?;
        let list = if material.kind == Kind::Plastisol { &mut base } else { &mut doses };
        list.insert(material.name.clone(), grams(portion.mass)?);
    }
    let base = match base.len() {
        1 => base.keys().next().map(|name| BaseEntry::One(Name(name.clone()))),
        _ => Some(BaseEntry::Blend(base)),
    };
    Ok(FormulaEntry {
        doses,
        per: Some(grams(mix.base_mass(&book.materials)?)?),
        base,
        notes: Some(format!("As made: {} in pot {}.", stage.formulas.join(" + "), pot.pot)),
        ext: None,
    })
}

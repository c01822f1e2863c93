//! What a book's formulas dose each material in, gathered in one pass: every measure of a plan asks for it.

use alloc::vec::Vec;

use crate::book::Book;
use crate::material::Kind;
use crate::mix::MaterialId;
use crate::quantity::{Amount, Dimension};
use crate::uncertainty::WrittenIn;

/// How formulas dose each material, by its place in the table.
pub(crate) struct Dosing(Vec<Written>);

#[derive(Clone, Copy, Default)]
struct Written {
    is_dropped: bool,
    /// What the formulas agree on so far; the outer `None` before the first.
    form: Option<Option<WrittenIn>>,
}

impl Dosing {
    pub(crate) fn of(book: &Book) -> Self {
        let mut all: Vec<Written> = book.materials.iter().map(|_| Written::default()).collect();
        // A base is for the cup that the doses are per.
        let bases: Vec<MaterialId> = book
            .materials
            .iter()
            .filter(|(_, material)| material.kind == Kind::Plastisol)
            .map(|(id, _)| id)
            .collect();
        let mut note = |material: MaterialId, amount: &Amount, is_dose: bool| {
            if let Some(written) = place(material).and_then(|place| all.get_mut(place)) {
                written.is_dropped |= is_dose && amount.dimension() == Dimension::COUNT;
                let form = form(amount);
                let agreed = written.form.get_or_insert(Some(form));
                *agreed = agreed.filter(|agreed| *agreed == form);
            }
        };
        for formula in &book.formulas {
            if let Some(amount) = &formula.per {
                bases.iter().for_each(|base| note(*base, amount, false));
            }
            for dose in &formula.doses {
                note(dose.material, &dose.amount, true);
            }
        }
        Self(all)
    }

    fn get(&self, material: MaterialId) -> Written {
        place(material).and_then(|place| self.0.get(place)).copied().unwrap_or_default()
    }

    /// Whether a formula doses `material` in drops.
    pub(crate) fn is_dropped(&self, material: MaterialId) -> bool {
        self.get(material).is_dropped
    }

    /// What the formulas dose `material` in: what all of them do, or else a mass, against which any other measure
    /// counts in full.
    pub(crate) fn written_in(&self, material: MaterialId) -> WrittenIn {
        self.get(material).form.flatten().unwrap_or(WrittenIn::Mass)
    }
}

fn place(material: MaterialId) -> Option<usize> {
    usize::try_from(material.0).ok()
}

fn form(amount: &Amount) -> WrittenIn {
    match (amount.basis(), amount.dimension()) {
        (None, Dimension::VOLUME) => WrittenIn::Volume,
        (None, Dimension::COUNT) => WrittenIn::Drops,
        _ => WrittenIn::Mass,
    }
}

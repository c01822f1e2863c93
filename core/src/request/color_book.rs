//! The colorants of a book, calibrated in a base, and what of a mix the model leaves out.

use alloc::format;
use alloc::vec::Vec;

use crate::book::Book;
use crate::codes::code;
use crate::color::kubelka_munk::{Surface, k_over_s, reflectance};
use crate::color::lab::SRGB_BANDS;
use crate::color::match_color::{Colorants, TestPiece};
use crate::color::next_drop::Unit;
use crate::color::pot::Strength;
use crate::document::resolve::Resolver;
use crate::json::path::Path::{self, At};
use crate::material::Kind;
use crate::mix::{MaterialId, Mix};
use crate::quantity::{Amount, Mass, Ratio, Rational, Unit as AmountUnit};
use crate::show::Note;

/// Colorants of a book in the base of a pot.
pub(super) struct BookColors {
    pub(super) colorants: Colorants,
    /// Their materials, in the same order.
    pub(super) ids: Vec<MaterialId>,
    pub(super) strengths: Vec<Strength>,
}

impl BookColors {
    /// Calibrates all colorants that have test pieces, in the plastisols of `mix`; `path` is where the mix is asked for.
    pub(super) fn of(
        mix: &Mix,
        book: &Book,
        path: &Path<'_>,
        resolver: &mut Resolver,
    ) -> Option<Self> {
        let base = base_reading(mix, book, path, resolver)?;
        let new = Colorants::new(&SRGB_BANDS, Surface::NONE, &base);
        let mut colorants = resolver.keep(path, new)?;
        let (mut ids, mut strengths) = (Vec::new(), Vec::new());
        resolver.whole(|resolver| {
            for (id, material) in book.materials.iter() {
                if material.let_downs.is_empty() {
                    continue;
                }
                let pieces: Vec<_> = material.let_downs.iter().map(TestPiece::as_let_down).collect();
                let own = At("/book/materials");
                let own = own.key(&material.name);
                if resolver.keep(&own.key("let_downs"), colorants.add(&pieces)).is_some() {
                    ids.push(id);
                    strengths.push(material.strength.clone().unwrap_or_default());
                }
            }
            for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
                let material = resolver.keep(path, book.materials.get(portion.material))?;
                if material.kind == Kind::Colorant && material.let_downs.is_empty() {
                    resolver.fault(
                        code!("color-not-let-down"),
                        path,
                        &format_args!("\"{}\" is in it, and the book has no test pieces of it.", material.name),
                        &"Pour two, as \"let-down-series\" says, and write them as its \"let_downs\".",
                    );
                }
            }
            Some(())
        })?;
        Some(Self { colorants, ids, strengths })
    }

    /// Mass per mass of base of each colorant in `mix`.
    pub(super) fn doses(&self, mix: &Mix, book: &Book) -> Option<Vec<Ratio>> {
        let base = mix.base_mass(&book.materials).ok()?;
        (base > Mass::default())
            .then(|| self.ids.iter().map(|&id| mix.mass_of(id) / base).collect())
    }

    /// One drop of each colorant per `base`; `None` where the book does not say what it weighs.
    pub(super) fn units(&self, base: Mass, book: &Book) -> Vec<Option<Unit>> {
        let scatter = book.unsure.drop_scatter;
        let unit = |&id: &MaterialId| {
            let material = book.materials.get(id).ok()?;
            let drop = material.mass_of(&drops(1)?, book.system, "adding a drop").ok()?;
            Some(Unit { dose: drop / base, scatter })
        };
        self.ids.iter().map(unit).collect()
    }
}

/// A number of drops.
pub(super) fn drops(count: u32) -> Option<Amount> {
    Amount::new(Rational::from_int(i64::from(count)), AmountUnit::DROP).ok()
}

/// What the plastisols of a mix reflect, by the mean of their K/S.
fn base_reading(
    mix: &Mix,
    book: &Book,
    path: &Path<'_>,
    resolver: &mut Resolver,
) -> Option<[f64; 3]> {
    let (mut sum, mut mass) = ([0.0; 3], Mass::default());
    for portion in mix.portions() {
        let material = resolver.keep(path, book.materials.get(portion.material))?;
        if material.kind != Kind::Plastisol || portion.mass <= Mass::default() {
            continue;
        }
        let Some(color) = &material.color else {
            resolver.fault(
                code!("color-base-not-known"),
                path,
                &format_args!("The book has no \"color\" of \"{}\" alone.", material.name),
                &"Pour a test piece of the base alone, and write its color at the material.",
            );
            return None;
        };
        let srgb = resolver.keep(path, color.lab.srgb())?;
        for (sum, read) in sum.iter_mut().zip(srgb.linear()) {
            *sum += portion.mass.value * resolver.keep(path, k_over_s(read))?;
        }
        mass += portion.mass;
    }
    if mass <= Mass::default() {
        return None;
    }
    let mut base = [0.0; 3];
    for (base, sum) in base.iter_mut().zip(sum) {
        *base = resolver.keep(path, reflectance(sum / mass.value))?;
    }
    Some(base)
}

/// What is in a mix that the model does not have.
pub(super) fn outside(mix: &Mix, book: &Book) -> Vec<Note> {
    let mut notes = Vec::new();
    for portion in mix.portions().iter().filter(|portion| portion.mass > Mass::default()) {
        let Ok(material) = book.materials.get(portion.material) else { continue };
        let why = match material.kind {
            Kind::Pearl => "pearl shines by its angle",
            Kind::Flake => "flake is seen by itself; \"flake\" gives its share of the surface",
            Kind::Salt => "salt clouds the piece",
            Kind::Other => "it is not known how it looks",
            _ => continue,
        };
        notes.push(Note {
            code: code!("color-outside-model").into(),
            message: format!("\"{}\" is outside the model of the color: {why}.", material.name),
        });
    }
    notes
}

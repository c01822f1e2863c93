//! How often to stir a salted pot.

use core::f64::consts::PI;

use crate::book::Book;
use crate::material::Kind;
use crate::mix::reference_temperature;
use crate::parameter::Parameter;
use crate::plan::day::DayRecipe;
use crate::process::settling::{Grain, Suspension};
use crate::quantity::{Length, Mass, MassDensity, Measurable, Ratio, Time};

/// Share of the depth that may be without grains before it is stirred: common practice, no source.
pub(crate) const UNSTIRRED: f64 = Parameter::Unstirred.default_si();

/// How often to stir `held` of a `recipe` with this share of solids by volume, so that salt does not settle; `None` without
/// salt, and where the grain or the viscosity is not known: then it is stirred before every load.
///
/// The cup is taken to be as wide as the mix is deep, and the melt as thin as it may be.
pub(in crate::plan) fn stir_every(
    book: &Book,
    recipe: &DayRecipe<'_>,
    solids: f64,
    held: Mass,
) -> Option<Time> {
    let materials =
        recipe.recipe.ingredients().filter_map(|one| book.materials.get(one.material).ok());
    let salt = materials
        .filter(|material| material.kind == Kind::Salt)
        .find(|salt| salt.grain.is_some())?;
    let base =
        recipe.recipe.base().iter().filter_map(|part| book.materials.get(part.material).ok());
    let (melt, viscosity) = base
        .filter_map(|base| {
            let cold = base.density.as_ref()?.value;
            let warmer = recipe.window?.middle().si() - reference_temperature().si();
            let hot: MassDensity = cold / (1.0 + base.expansion_or_none().si() * warmer);
            Some((hot, base.viscosity?.0))
        })
        .reduce(|a, b| if b.1 < a.1 { b } else { a })?;
    let grains = Suspension {
        grain: Grain::Cube,
        size: salt.grain.as_ref()?.value,
        solid: salt.density.as_ref()?.value,
        melt,
        solids: Ratio::from(solids),
    };
    let volume = held / recipe.liquid;
    let depth = Length::from_si(libm::cbrt(4.0 * volume.si() / PI));
    grains.settling(viscosity).ok()?.stir_every(depth, Ratio::from(UNSTIRRED)).ok()
}

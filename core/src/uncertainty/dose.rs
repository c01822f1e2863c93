//! How sure a dose is, and the density of what it makes, from the tools that it is taken with.
//!
//! Each taking gives m = q · Πp · (n·t + e): q the reading or volume, p the material's properties that it
//! rests on (density, drop), n how often, t = 1 the tool's own error, e = 0 what differs from time to time.

use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::estimate::Effects;
use super::origin::Origin;
use super::{Estimate, Input, Taken, ToolUncertainty, UncertaintyError, by_difference};
use crate::check::is_positive;
use crate::formula::WrittenIn;
use crate::material::{Drop, Material, Property, pharmacy_drop};
use crate::quantity::{Mass, MassDensity, Measurable, Measured, Ratio};

/// A material and all that is taken of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Dosed<'a> {
    /// The material.
    pub material: &'a Material,
    /// How it is taken; what is taken adds up.
    pub taken: &'a [Taken<'a>],
    /// Share of that which is in the mix: 1, or less of what went into an earlier stage that was shot from.
    pub share: f64,
}

const PURPOSE: &str = "the uncertainty of a dose";

/// The mass of what is taken.
///
/// # Errors
/// Nothing taken, a number of a tool that cannot be, a missing property of the material.
pub fn dosed_mass(
    dosed: &Dosed<'_>,
    tools: &ToolUncertainty,
) -> Result<Estimate<Mass>, UncertaintyError> {
    let mut model = Model::new(tools)?;
    let terms = model.terms(dosed)?;
    Ok(Effects::of(&model.inputs, &|x| Ok(mass(&terms, x)))?.estimate())
}

/// The ratio of a dose to its base, r = m/m_base, both as they are taken. What both rest on (one balance's
/// span, one spoon's size) cancels as far as it does.
///
/// # Errors
/// As [`dosed_mass`].
pub fn dose_ratio(
    dose: &Dosed<'_>,
    base: &Dosed<'_>,
    tools: &ToolUncertainty,
) -> Result<Estimate<Ratio>, UncertaintyError> {
    let mut model = Model::new(tools)?;
    let (dose, base) = (model.terms(dose)?, model.terms(base)?);
    Ok(Effects::of(&model.inputs, &|x| Ok(mass(&dose, x) / mass(&base, x)))?.estimate())
}

/// The amount taken over the amount that the formula asks for in `written`, 1 but for errors. What both rest on
/// cancels: as many drops as a formula counts are right whatever a drop weighs, and a spoon of flake is a spoon
/// whatever its bulk density; weighed instead, the drop's mass and the bulk density count in full.
///
/// # Errors
/// As [`dosed_mass`].
pub fn dose_as_written(
    dosed: &Dosed<'_>,
    written: WrittenIn,
    tools: &ToolUncertainty,
) -> Result<Estimate<Ratio>, UncertaintyError> {
    Ok(as_written(dosed, written, tools)?.estimate())
}

/// How unsure a dose is as it is written.
pub(crate) struct DoubtAsWritten<'a> {
    /// The uncertainty of [`dose_as_written`].
    pub(crate) uncertainty: Ratio,
    /// The source that adds most to it.
    pub(crate) main_source: Option<Origin<'a>>,
    /// Whether it rests on a number of whose uncertainty nothing is known: it is then larger.
    pub(crate) is_open: bool,
}

/// The uncertainty of [`dose_as_written`], and what it comes from.
pub(crate) fn doubt_as_written<'a>(
    dosed: &Dosed<'a>,
    written: WrittenIn,
    tools: &ToolUncertainty,
) -> Result<DoubtAsWritten<'a>, UncertaintyError> {
    let effects = as_written(dosed, written, tools)?;
    Ok(DoubtAsWritten {
        uncertainty: Ratio::from(effects.uncertainty),
        main_source: effects.main_source().copied(),
        is_open: effects.is_open(),
    })
}

fn as_written<'a>(
    dosed: &Dosed<'a>,
    written: WrittenIn,
    tools: &ToolUncertainty,
) -> Result<Effects<Origin<'a>>, UncertaintyError> {
    let mut model = Model::new(tools)?;
    let terms = model.terms(dosed)?;
    let asked: [Option<usize>; 2] = match written {
        WrittenIn::Mass => [None; 2],
        WrittenIn::Volume => [Some(model.by_volume(dosed.material)?), None],
        WrittenIn::Drops => model.drop(dosed.material)?,
    };
    let nominal: Vec<f64> = model.inputs.iter().map(Input::si).collect();
    let asked = |x: &[f64]| {
        asked
            .iter()
            .flatten()
            .fold(1.0, |product, &place| product * at(x, place) / at(&nominal, place))
    };
    let given = mass(&terms, &nominal);
    Effects::of(&model.inputs, &|x| Ok(mass(&terms, x) / given / asked(x)))
}

/// The density of the finished plastic at 20 °C, ρ = (1 − φ) Σm/Σ(m/ρ_i), from what is taken of each material
/// and the air voids φ. Of a plastisol ρ_i is the fused density; where the book has the liquid one only, that
/// is taken and [`Estimate::unknown`] names it.
///
/// # Errors
/// As [`dosed_mass`]; no parts at all; voids outside 0 to below 1.
pub fn finished_density(
    parts: &[Dosed<'_>],
    voids: &Measured<Ratio>,
    tools: &ToolUncertainty,
) -> Result<Estimate<MassDensity>, UncertaintyError> {
    let (effects, mut assumed) = finished(parts, voids, tools)?;
    let mut estimate = effects.estimate();
    estimate.unknown.append(&mut assumed);
    Ok(estimate)
}

/// The uncertainty of [`finished_density`] without voids.
pub(crate) fn density_uncertainty(
    parts: &[Dosed<'_>],
    tools: &ToolUncertainty,
) -> Result<MassDensity, UncertaintyError> {
    let (effects, _) = finished(parts, &Measured::exact(Ratio::from(0.0)), tools)?;
    Ok(MassDensity::from_si(effects.uncertainty))
}

/// The effects on a finished density, and what it assumes.
fn finished<'a>(
    parts: &[Dosed<'a>],
    voids: &Measured<Ratio>,
    tools: &ToolUncertainty,
) -> Result<(Effects<Origin<'a>>, Vec<String>), UncertaintyError> {
    let mut model = Model::new(tools)?;
    let mut summed: Vec<(Vec<Term>, usize)> = Vec::with_capacity(parts.len());
    for part in parts {
        let terms = model.terms(part)?;
        summed.push((terms, model.finished_density(part.material)?));
    }
    let share = model.push(Input::from_source(voids.value, voids.uncertainty, Origin::Voids));
    let effects = Effects::of(&model.inputs, &|x| {
        let (mut total, mut volume) = (0.0, 0.0);
        for (terms, density) in &summed {
            let mass = mass(terms, x);
            total += mass;
            volume += mass / at(x, *density);
        }
        let voids = at(x, share);
        if crate::check::is_share_below_one(voids) {
            Ok(total / volume * (1.0 - voids))
        } else {
            Err(UncertaintyError::refused(&UncertaintyError::Voids { share: voids }))
        }
    })?;
    Ok((effects, model.assumed))
}

/// One taking: m = fixed · Π properties · (times · tool + scatter).
struct Term {
    fixed: f64,
    properties: [Option<usize>; 2],
    times: f64,
    tool: Option<usize>,
    scatter: usize,
}

/// A place that is not there gives no number, which [`propagate`] refuses.
fn at(x: &[f64], place: usize) -> f64 {
    x.get(place).copied().unwrap_or(f64::NAN)
}

fn mass(terms: &[Term], x: &[f64]) -> f64 {
    terms.iter().fold(0.0, |sum, term| {
        let tool = term.tool.map_or(1.0, |tool| at(x, tool));
        let properties =
            term.properties.iter().flatten().fold(1.0, |product, &place| product * at(x, place));
        sum + term.fixed * properties * (term.times * tool + at(x, term.scatter))
    })
}

/// The inputs of a calculation while they are gathered.
struct Model<'a, 't> {
    tools: &'t ToolUncertainty,
    inputs: Vec<Input<Origin<'a>>>,
    assumed: Vec<String>,
}

impl<'a, 't> Model<'a, 't> {
    fn new(tools: &'t ToolUncertainty) -> Result<Self, UncertaintyError> {
        // A dose has up to four for each taking, and is seldom taken more than twice.
        const MOST: usize = 8;
        tools.check()?;
        Ok(Self { tools, inputs: Vec::with_capacity(MOST), assumed: Vec::new() })
    }

    fn push(&mut self, input: Input<Origin<'a>>) -> usize {
        self.inputs.push(input);
        self.inputs.len().saturating_sub(1)
    }

    /// A factor that is 1 but for the relative error `uncertainty` of a tool.
    fn tool(&mut self, uncertainty: Ratio, source: Origin<'a>) -> usize {
        self.push(Input::from_source(Ratio::from(1.0), Some(uncertainty), source))
    }

    /// Scatter of n times together: √n of one.
    fn scatter(&mut self, once: Ratio, times: f64, source: Origin<'a>) -> usize {
        let together = once * libm::sqrt(times);
        self.push(Input::from_source(Ratio::from(0.0), Some(together), source))
    }

    fn terms(&mut self, dosed: &Dosed<'a>) -> Result<Vec<Term>, UncertaintyError> {
        let material = dosed.material;
        if dosed.taken.is_empty() {
            return Err(UncertaintyError::NothingTaken { material: material.name.clone() });
        }
        let mut terms = Vec::with_capacity(dosed.taken.len());
        for (place, taken) in dosed.taken.iter().enumerate() {
            let term = self.term(material, place, taken)?;
            terms.push(Term { fixed: term.fixed * dosed.share, ..term });
        }
        Ok(terms)
    }

    fn term(
        &mut self,
        material: &'a Material,
        place: usize,
        taken: &Taken<'a>,
    ) -> Result<Term, UncertaintyError> {
        let name = &material.name;
        let positive = |what: &'static str, value: f64| {
            if is_positive(value) {
                Ok(value)
            } else {
                Err(UncertaintyError::Tool { material: name.clone(), what })
            }
        };
        // Each taking of a material scatters by itself.
        let own = |what: &'static str| Origin::Taking { what, material: name, place };
        match *taken {
            Taken::Weighed { net, times, readability } => {
                let fixed = positive("the net weight", net.value)?;
                positive("the balance's readability", readability.value)?;
                let times = positive("how often it is weighed", f64::from(times))?;
                let tool = self.tool(self.tools.balance_span, Origin::BalanceSpan);
                let rounding = by_difference(readability) / net;
                let scatter = self.scatter(rounding, times, own("reading the balance for"));
                Ok(Term { fixed, properties: [None; 2], times, tool: Some(tool), scatter })
            }
            Taken::Spoon { name: spoon, holds, times } => {
                let fixed = positive("the spoon's size", holds.value)?;
                let times = positive("the number of spoonfuls", f64::from(times))?;
                let density = self.by_volume(material)?;
                let tool = self.tool(self.tools.spoon_size, Origin::SpoonSize(spoon));
                let scatter =
                    self.scatter(self.tools.spoon_level, times, own("leveling the spoon of"));
                let properties = [Some(density), None];
                Ok(Term { fixed, properties, times, tool: Some(tool), scatter })
            }
            Taken::Cup { name: cup, filled, mark, times } => {
                let fixed = positive("the volume at the mark", filled.value)?;
                let once = match mark {
                    Some(mark) => {
                        positive("the distance between marks", mark.value)?;
                        self.tools.cup_filling * (mark / filled)
                    }
                    None => self.tools.spoon_level,
                };
                let times = positive("the number of fillings", f64::from(times))?;
                let density = self.by_volume(material)?;
                let tool = self.tool(self.tools.cup_size, Origin::CupSize(cup));
                let scatter = self.scatter(once, times, own("filling the cup with"));
                let properties = [Some(density), None];
                Ok(Term { fixed, properties, times, tool: Some(tool), scatter })
            }
            Taken::Drops { count } => {
                let times = positive("the number of drops", f64::from(count))?;
                let properties = self.drop(material)?;
                let scatter =
                    self.scatter(self.tools.drop_scatter, times, own("drop against drop of"));
                Ok(Term { fixed: 1.0, properties, times, tool: None, scatter })
            }
        }
    }

    fn density(&mut self, material: &'a Material) -> Result<usize, UncertaintyError> {
        // A density that is missing or cannot be is the material's own error.
        let value = material.true_density(PURPOSE)?.get();
        let stated = material.density.as_ref().and_then(|density| density.uncertainty);
        Ok(self.property(value, stated, Property::Density, material))
    }

    /// As scooped for a powder, true for a liquid.
    fn by_volume(&mut self, material: &'a Material) -> Result<usize, UncertaintyError> {
        if !material.is_scooped() {
            return self.density(material);
        }
        let value = material.scooped_density(PURPOSE)?.get();
        let stated = material.as_scooped.as_ref().and_then(|density| density.uncertainty);
        Ok(self.property(value, stated, Property::AsScooped, material))
    }

    fn finished_density(&mut self, material: &'a Material) -> Result<usize, UncertaintyError> {
        let Some(fused) = &material.fused else {
            if material.kind == crate::material::Kind::Plastisol {
                self.assumed
                    .push(format!("fused of {} (taken as its liquid density)", material.name));
            }
            return self.density(material);
        };
        let value = material.finished_density(PURPOSE)?.get();
        Ok(self.property(value, fused.uncertainty, Property::Fused, material))
    }

    fn property(
        &mut self,
        value: MassDensity,
        uncertainty: Option<MassDensity>,
        property: Property,
        material: &'a Material,
    ) -> usize {
        let origin = Origin::Property(property, &material.name);
        self.push(Input::from_source(value, uncertainty, origin))
    }

    /// The drop's mass, or its density and volume.
    fn drop(&mut self, material: &'a Material) -> Result<[Option<usize>; 2], UncertaintyError> {
        // A drop that is missing or cannot be is the material's own error.
        material.drop_mass(PURPOSE)?;
        let source = Origin::Drop(&material.name);
        let usual = self.tools.drop;
        match &material.drop {
            Some(Drop::Mass(drop)) => {
                let uncertainty = drop.uncertainty.unwrap_or(drop.value * usual);
                let drop = self.push(Input::from_source(drop.value, Some(uncertainty), source));
                Ok([Some(drop), None])
            }
            Some(Drop::Volume(drop)) => {
                let uncertainty = drop.uncertainty.unwrap_or(drop.value * usual);
                let drop = self.push(Input::from_source(drop.value, Some(uncertainty), source));
                Ok([Some(self.density(material)?), Some(drop)])
            }
            None => {
                let uncertainty = pharmacy_drop() * self.tools.unweighed_drop;
                let source = Origin::UnweighedDrop(&material.name);
                let drop =
                    self.push(Input::from_source(pharmacy_drop(), Some(uncertainty), source));
                Ok([Some(self.density(material)?), Some(drop)])
            }
        }
    }
}

//! Formulas: doses of materials per amount of base, and what they come to together.
//!
//! A formula is kept as people write it ("per 1 cup: 32 drops, 1/2 tsp"). Its recipe is the
//! ratio r = m/m_base of each material to the mass of the base, and follows from the joint
//! solution of all its doses. With ratios r_i of base and shares w_j of the finished mass
//!
//! T = m_base (1 + Σr)/(1 − Σw),  m_j = w_j T,  and back  m_base = T (1 − Σw)/(1 + Σr).
//!
//! Shares v_k of the finished *volume* couple mass and volume, and the two totals T, V follow from
//!
//! (1 − Σw) T − (Σ ρ_k v_k) V = m_base (1 + Σr)
//! −(Σ w_j/ρ_j) T + (1 − Σv) V = V_base + Σ (r_i m_base/ρ_i).
//!
//! Ratios are computed as exact rationals of what was written, so that a formula written per
//! 1, 2 or 3 cups is one and the same; an `f64` is made of them only at the end.

use alloc::borrow::Cow;
use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use num_rational::BigRational;
use num_traits::{One, Signed, ToPrimitive, Zero};

use crate::exact::Product;
use crate::fault::Diagnose;
use crate::material::{Kind, MaterialError};
use crate::mix::{MaterialId, Materials, Mix, MixError, Phase};
use crate::quantity::{
    self, Amount, AmountError, Basis, By, Dimension, Mass, MassDensity, Measurable, System, Volume,
};
use crate::words::words;

/// An amount of one material.
#[derive(Debug, Clone, PartialEq)]
pub struct Dose {
    /// Which material.
    pub material: MaterialId,
    /// How much, as it was written: a volume, a mass, drops, or a per cent of base or finished.
    pub amount: Amount,
}

/// A named list of doses per amount of base.
#[derive(Debug, Clone, PartialEq)]
pub struct Formula {
    /// Name in the book.
    pub name: String,
    /// The amount of base that the doses are for; needed unless all of them are per cents.
    pub per: Option<Amount>,
    /// The base: one plastisol, or a blend by the amounts given; empty for a color formula
    /// that goes on any base.
    pub base: Vec<Dose>,
    /// The doses.
    pub doses: Vec<Dose>,
}

words! {
    /// What happens when two formulas that are combined dose the same material.
    pub enum Overlap {
        /// It is an error.
        Refuse = "refuse",
        /// Both doses go in.
        Add = "add",
        /// The dose of the formula named last counts.
        Last = "last",
    }
}

/// One material of a recipe.
#[derive(Debug, Clone, PartialEq)]
pub struct Ingredient {
    /// Which material.
    pub material: MaterialId,
    /// Mass per mass of base, exactly as written; of the base itself, its share.
    pub exact: BigRational,
    /// The same, rounded to the nearest `f64`.
    pub ratio: f64,
}

/// The ratios of all materials to the base: what one or more formulas come to.
#[derive(Debug, Clone, PartialEq)]
pub struct Recipe {
    base: Vec<Ingredient>,
    additives: Vec<Ingredient>,
}

impl Recipe {
    /// Combines `formulas` into one recipe.
    ///
    /// Exactly one base must come out: formulas that name a base must name the same one, and
    /// `default_base` stands in where none does.
    ///
    /// # Errors
    /// No base or different ones; one material dosed twice while `overlap` refuses it; shares of
    /// the finished mix that leave no room for the base; a missing density or drop.
    pub fn combine(
        formulas: &[&Formula],
        overlap: Overlap,
        default_base: Option<MaterialId>,
        materials: &Materials,
        system: System,
    ) -> Result<Self, FormulaError> {
        let base = Base::of(formulas, default_base, materials, system)?;
        let mut shares: Vec<(usize, MaterialId, Share)> = Vec::new();
        for (place, formula) in formulas.iter().enumerate() {
            let mut per = None;
            for dose in &formula.doses {
                let share = Share::of(dose, formula, &base, &mut per, materials, system)?;
                let of_another = |other: usize, material: MaterialId| {
                    material == dose.material && other != place
                };
                let earlier =
                    shares.iter().find(|(other, material, _)| of_another(*other, *material));
                match (earlier, overlap) {
                    (Some((earlier, ..)), Overlap::Refuse) => {
                        let first = formulas.get(*earlier);
                        return Err(FormulaError::DosedTwice {
                            material: materials.get(dose.material)?.name.clone(),
                            first: first.map(|formula| formula.name.clone()).unwrap_or_default(),
                            second: formula.name.clone(),
                        });
                    }
                    (Some(_), Overlap::Last) => {
                        shares.retain(|(other, material, _)| !of_another(*other, *material));
                    }
                    _ => {}
                }
                shares.push((place, dose.material, share));
            }
        }
        let shares: Vec<(MaterialId, Share)> =
            shares.into_iter().map(|(_, material, share)| (material, share)).collect();
        let additives = solve(shares, &base, materials)?;
        Ok(Self { base: base.parts, additives })
    }

    /// The base: the shares of its parts, which sum to 1.
    #[must_use]
    pub fn base(&self) -> &[Ingredient] {
        &self.base
    }

    /// The additives, by material.
    #[must_use]
    pub fn additives(&self) -> &[Ingredient] {
        &self.additives
    }

    /// Base and additives.
    pub fn ingredients(&self) -> impl Iterator<Item = &Ingredient> {
        self.base.iter().chain(&self.additives)
    }

    /// Total mass per mass of base, 1 + Σr.
    #[must_use]
    pub fn total_per_base(&self) -> f64 {
        1.0 + self.additives.iter().fold(0.0, |sum, additive| sum + additive.ratio)
    }

    /// The mix for `base` of base.
    ///
    /// # Errors
    /// The mass is negative or not finite.
    pub fn for_base(&self, base: Mass) -> Result<Mix, MixError> {
        let mut mix = Mix::new();
        for ingredient in self.ingredients() {
            mix.add(ingredient.material, base * ingredient.ratio)?;
        }
        Ok(mix)
    }

    /// The mix of `total` mass.
    ///
    /// # Errors
    /// The mass is negative or not finite.
    pub fn for_mass(&self, total: Mass) -> Result<Mix, MixError> {
        self.for_base(total / self.total_per_base())
    }

    /// The mix that fills `volume` at 20 °C: as liquid in the cup, or as fused pieces.
    ///
    /// # Errors
    /// A density is missing; the volume is negative or not finite.
    pub fn for_volume(
        &self,
        volume: Volume,
        phase: Phase,
        materials: &Materials,
    ) -> Result<Mix, MixError> {
        let unit = self.for_base(Mass::from_si(1.0))?;
        unit.scaled((volume / unit.volume(materials, phase)?).si())
    }

    /// Density of the base at 20 °C, as the cup measures it: 1/Σ(share/ρ).
    ///
    /// # Errors
    /// A density is missing.
    pub fn base_density(&self, materials: &Materials) -> Result<MassDensity, MixError> {
        let mut unit = Mix::new();
        for part in &self.base {
            unit.add(part.material, Mass::from_si(part.ratio))?;
        }
        Ok(Mass::from_si(1.0) / unit.volume(materials, Phase::Liquid)?)
    }

    /// Whether it holds `material`.
    #[must_use]
    pub fn contains(&self, material: MaterialId) -> bool {
        self.ingredients().any(|ingredient| ingredient.material == material)
    }
}

/// The base that several formulas share.
struct Base {
    parts: Vec<Ingredient>,
    /// 1/ρ of the base as the cup measures it, exact; `None` where a density is missing.
    volume_per_mass: Result<BigRational, MaterialError>,
}

impl Base {
    fn of(
        formulas: &[&Formula],
        default_base: Option<MaterialId>,
        materials: &Materials,
        system: System,
    ) -> Result<Self, FormulaError> {
        let mut chosen: Option<(&str, Vec<(MaterialId, BigRational)>)> = None;
        for formula in formulas.iter().filter(|formula| !formula.base.is_empty()) {
            let parts = blend(formula, materials, system)?;
            match &chosen {
                None => chosen = Some((&formula.name, parts)),
                Some((first, other)) if *other != parts => {
                    return Err(FormulaError::DifferentBases {
                        first: (*first).to_string(),
                        second: formula.name.clone(),
                    });
                }
                Some(_) => {}
            }
        }
        let parts = match (chosen, default_base) {
            (Some((_, parts)), _) => parts,
            (None, Some(base)) => {
                check_base(&names(formulas), base, materials)?;
                Vec::from([(base, BigRational::one())])
            }
            (None, None) => return Err(FormulaError::NoBase(names(formulas))),
        };
        let volume_per_mass = volume_per_mass(&parts, materials)?;
        let parts =
            parts.into_iter().map(|(material, exact)| ingredient(material, exact)).collect();
        Ok(Self { parts, volume_per_mass })
    }

    fn volume_per_mass(&self) -> Result<&BigRational, FormulaError> {
        self.volume_per_mass.as_ref().map_err(|missing| missing.clone().into())
    }
}

/// Formulas as one text: `dusk + plain`.
fn names(formulas: &[&Formula]) -> String {
    let names: Vec<&str> = formulas.iter().map(|formula| formula.name.as_str()).collect();
    names.join(" + ")
}

/// The exact mass shares of a formula's base, by material.
fn blend(
    formula: &Formula,
    materials: &Materials,
    system: System,
) -> Result<Vec<(MaterialId, BigRational)>, FormulaError> {
    if let [only] = formula.base.as_slice() {
        check_base(&formula.name, only.material, materials)?;
        return Ok(Vec::from([(only.material, BigRational::one())]));
    }
    let mut parts = Vec::new();
    for part in &formula.base {
        check_base(&formula.name, part.material, materials)?;
        let mass = exact_mass(part, formula, materials, system)?.reduced();
        if !mass.is_positive() {
            return Err(FormulaError::EmptyBase(formula.name.clone()));
        }
        parts.push((part.material, mass));
    }
    let total = parts.iter().fold(BigRational::zero(), |sum, (_, mass)| sum + mass);
    let mut parts: Vec<_> =
        parts.into_iter().map(|(material, mass)| (material, mass / &total)).collect();
    parts.sort_by_key(|(material, _)| *material);
    Ok(parts)
}

fn check_base(
    formula: &str,
    material: MaterialId,
    materials: &Materials,
) -> Result<(), FormulaError> {
    let material = materials.get(material)?;
    if material.kind == Kind::Plastisol {
        Ok(())
    } else {
        Err(FormulaError::BaseIsNoPlastisol {
            formula: formula.to_string(),
            material: material.name.clone(),
            kind: material.kind,
        })
    }
}

fn volume_per_mass(
    parts: &[(MaterialId, BigRational)],
    materials: &Materials,
) -> Result<Result<BigRational, MaterialError>, FormulaError> {
    let mut sum = BigRational::zero();
    for (material, share) in parts {
        match materials.get(*material)?.true_density("measuring the base by volume") {
            Ok(density) => {
                sum += Product::from(share).over(&exact(density.get().si())?).reduced();
            }
            Err(missing) => return Ok(Err(missing)),
        }
    }
    Ok(Ok(sum))
}

/// How one dose enters the joint solution.
enum Share {
    /// Mass per mass of base.
    Base(BigRational),
    /// Share of the finished mass.
    FinishedMass(BigRational),
    /// Share of the finished volume, by true volume.
    FinishedVolume(BigRational),
}

impl Share {
    /// `per` is the mass of base that the formula's doses are for, once one has asked for it.
    fn of(
        dose: &Dose,
        formula: &Formula,
        base: &Base,
        per: &mut Option<Product>,
        materials: &Materials,
        system: System,
    ) -> Result<Self, FormulaError> {
        let material = materials.get(dose.material)?;
        if base.parts.iter().any(|part| part.material == dose.material) {
            return Err(FormulaError::BaseIsDosed {
                material: material.name.clone(),
                formula: formula.name.clone(),
            });
        }
        let Some(basis) = dose.amount.basis() else {
            let per = match per {
                Some(per) => &*per,
                None => per.insert(per_mass(formula, base, system)?),
            };
            let mass = exact_mass(dose, formula, materials, system)?;
            return Ok(Self::Base(mass.over(per).reduced()));
        };
        let share = exact_si(&dose.amount, system)?;
        Ok(match basis {
            Basis { share: quantity::Share::OfBase, by: By::Mass } => Self::Base(share.reduced()),
            Basis { share: quantity::Share::OfBase, by: By::Volume } => {
                if material.is_scooped() {
                    return Err(FormulaError::PowderByVolumeOfBase {
                        material: material.name.clone(),
                        formula: formula.name.clone(),
                    });
                }
                let density = exact(material.true_density("a per cent by volume")?.get().si())?;
                Self::Base((share * density * base.volume_per_mass()?.into()).reduced())
            }
            Basis { share: quantity::Share::OfFinished, by: By::Mass } => {
                Self::FinishedMass(share.reduced())
            }
            Basis { share: quantity::Share::OfFinished, by: By::Volume } => {
                Self::FinishedVolume(share.reduced())
            }
        })
    }
}

/// Exact mass of the base that a formula's doses are for.
fn per_mass(formula: &Formula, base: &Base, system: System) -> Result<Product, FormulaError> {
    let per = formula.per.as_ref().ok_or_else(|| FormulaError::NoPer(formula.name.clone()))?;
    let amount = exact_si(per, system)?;
    let mass = match per.dimension() {
        Dimension::MASS => amount,
        Dimension::VOLUME => amount.over(&base.volume_per_mass()?.into()),
        _ => {
            return Err(FormulaError::BadAmount {
                formula: formula.name.clone(),
                amount: per.to_string(),
            });
        }
    };
    if mass.is_positive() { Ok(mass) } else { Err(FormulaError::EmptyBase(formula.name.clone())) }
}

/// Exact mass of a dose: m, ρV, βV or n·m_drop.
fn exact_mass(
    dose: &Dose,
    formula: &Formula,
    materials: &Materials,
    system: System,
) -> Result<Product, FormulaError> {
    let material = materials.get(dose.material)?;
    let amount = exact_si(&dose.amount, system)?;
    match (dose.amount.basis(), dose.amount.dimension()) {
        (None, Dimension::MASS) => Ok(amount),
        (None, Dimension::VOLUME) => {
            let density = material.by_volume("measuring it by volume")?.density();
            Ok(amount * exact(density.si())?)
        }
        (None, Dimension::COUNT) => {
            Ok(amount * exact(material.drop_mass("counting its drops")?.si())?)
        }
        _ => Err(FormulaError::BadAmount {
            formula: formula.name.clone(),
            amount: dose.amount.to_string(),
        }),
    }
}

/// Mass and volume of the finished mix for one unit of base: the two equations of the module's
/// documentation.
struct Totals {
    mass: BigRational,
    volume: BigRational,
}

impl Totals {
    fn of(
        shares: &[(MaterialId, Share)],
        base: &Base,
        materials: &Materials,
    ) -> Result<Self, FormulaError> {
        let by_volume = shares.iter().any(|(_, share)| matches!(share, Share::FinishedVolume(_)));
        let zero = BigRational::zero;
        // In the order of their coefficients.
        let (mut of_mass, mut of_volume, mut mass_in_volume, mut volume_in_mass) =
            (BigRational::one(), BigRational::one(), zero(), zero());
        let mut mass = BigRational::one();
        let mut volume = if by_volume { base.volume_per_mass()?.clone() } else { zero() };
        for (material, share) in shares {
            match share {
                Share::Base(ratio) => {
                    mass += ratio;
                    if by_volume {
                        volume += ratio / density(*material, materials)?;
                    }
                }
                Share::FinishedMass(share) => {
                    of_mass -= share;
                    if by_volume {
                        volume_in_mass += share / density(*material, materials)?;
                    }
                }
                Share::FinishedVolume(share) => {
                    of_volume -= share;
                    mass_in_volume += share * density(*material, materials)?;
                }
            }
        }
        let determinant = &of_mass * &of_volume - &mass_in_volume * &volume_in_mass;
        if !(of_mass.is_positive() && of_volume.is_positive() && determinant.is_positive()) {
            return Err(FormulaError::NoRoomForBase);
        }
        Ok(Self {
            mass: (&mass * &of_volume + &mass_in_volume * &volume) / &determinant,
            volume: (&of_mass * &volume + &volume_in_mass * &mass) / &determinant,
        })
    }
}

fn density(material: MaterialId, materials: &Materials) -> Result<BigRational, FormulaError> {
    let material = materials.get(material)?;
    Ok(exact(material.true_density("a per cent of finished by volume")?.get().si())?.reduced())
}

/// The joint solution for one unit of base: the exact ratio of each additive, by material.
fn solve(
    shares: Vec<(MaterialId, Share)>,
    base: &Base,
    materials: &Materials,
) -> Result<Vec<Ingredient>, FormulaError> {
    // Sums of exact fractions grow long: they are worked out only where a share asks for them.
    let of_finished = shares.iter().any(|(_, share)| !matches!(share, Share::Base(_)));
    let totals = if of_finished {
        Totals::of(&shares, base, materials)?
    } else {
        Totals { mass: BigRational::zero(), volume: BigRational::zero() }
    };
    let mut ratios: Vec<(MaterialId, BigRational)> = Vec::new();
    for (material, share) in shares {
        let ratio = match share {
            Share::Base(ratio) => ratio,
            Share::FinishedMass(share) => share * &totals.mass,
            Share::FinishedVolume(share) => share * density(material, materials)? * &totals.volume,
        };
        match ratios.iter_mut().find(|(other, _)| *other == material) {
            Some((_, sum)) => *sum += ratio,
            None => ratios.push((material, ratio)),
        }
    }
    ratios.retain(|(_, ratio)| ratio.is_positive());
    ratios.sort_by_key(|(material, _)| *material);
    Ok(ratios.into_iter().map(|(material, exact)| ingredient(material, exact)).collect())
}

fn ingredient(material: MaterialId, exact: BigRational) -> Ingredient {
    let ratio = exact.to_f64().unwrap_or(f64::INFINITY);
    Ingredient { material, exact, ratio }
}

/// An amount in SI units, exactly.
fn exact_si(amount: &Amount, system: System) -> Result<Product, AmountError> {
    Ok(Product::from(amount.value()) * Product::from(amount.unit().factor(system)?))
}

fn exact(value: f64) -> Result<Product, FormulaError> {
    Product::of_positive(value).ok_or(FormulaError::BadProperty(value))
}

/// Why doses do not come to a recipe.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FormulaError {
    /// Nothing says what the formulas go into.
    #[error("\"{0}\" names no base.")]
    NoBase(String),
    /// Two bases in one pot.
    #[error("\"{first}\" and \"{second}\" name different bases.")]
    DifferentBases {
        /// One formula.
        first: String,
        /// The other.
        second: String,
    },
    /// One material dosed by two formulas.
    #[error("\"{material}\" is dosed by \"{first}\" and again by \"{second}\".")]
    DosedTwice {
        /// The material.
        material: String,
        /// The formula that doses it first.
        first: String,
        /// The formula that doses it again.
        second: String,
    },
    /// The base's plastisol dosed as an additive.
    #[error("\"{formula}\" doses \"{material}\", which is the base itself.")]
    BaseIsDosed {
        /// The plastisol.
        material: String,
        /// The formula that doses it.
        formula: String,
    },
    /// Something else than a plastisol as base.
    #[error("The base of \"{formula}\" is \"{material}\", a {kind}.")]
    BaseIsNoPlastisol {
        /// The formula.
        formula: String,
        /// What it names as base.
        material: String,
        /// Its kind.
        kind: Kind,
    },
    /// A dose per nothing.
    #[error("\"{0}\" does not say per how much base its doses are.")]
    NoPer(String),
    /// A dose per zero.
    #[error("An amount of base in \"{0}\" is zero.")]
    EmptyBase(String),
    /// A dose that is no amount of a material.
    #[error("\"{amount}\" in \"{formula}\" is no amount of a material.")]
    BadAmount {
        /// The formula.
        formula: String,
        /// What was written.
        amount: String,
    },
    /// Two readings: as scooped, or the grains alone.
    #[error(
        "A per cent of base by volume of \"{material}\" in \"{formula}\" can be read two ways."
    )]
    PowderByVolumeOfBase {
        /// The powder.
        material: String,
        /// The formula.
        formula: String,
    },
    /// Shares of the finished mix that reach 100 %.
    #[error("The shares of the finished mix leave no room for the base.")]
    NoRoomForBase,
    /// A density or drop of zero, below zero, or endless.
    #[error("A density or drop of {0} is not possible.")]
    BadProperty(f64),
    /// A number is missing.
    #[error(transparent)]
    Missing(#[from] MaterialError),
    /// An amount cannot be converted.
    #[error(transparent)]
    Amount(#[from] AmountError),
    /// A material is not in the table.
    #[error(transparent)]
    Mix(#[from] MixError),
}

impl Diagnose for FormulaError {
    fn code(&self) -> &'static str {
        match self {
            Self::NoBase(_) => "formula-no-base",
            Self::DifferentBases { .. } => "formula-different-bases",
            Self::DosedTwice { .. } => "formula-dosed-twice",
            Self::BaseIsDosed { .. } => "formula-base-is-dosed",
            Self::BaseIsNoPlastisol { .. } => "formula-base-no-plastisol",
            Self::NoPer(_) => "formula-no-per",
            Self::EmptyBase(_) => "formula-empty-base",
            Self::BadAmount { .. } => "formula-bad-amount",
            Self::PowderByVolumeOfBase { .. } => "formula-powder-by-volume",
            Self::NoRoomForBase => "formula-no-room",
            Self::BadProperty(_) => "bad-property",
            Self::Missing(error) => error.code(),
            Self::Amount(error) => error.code(),
            Self::Mix(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NoBase(_) => {
                "Combine it with a body formula that has a \"base\", or give the book a \"default_base\".".into()
            }
            Self::DifferentBases { .. } => {
                "Keep one of the two bases; to mix plastisols, name both in one formula's \"base\" with an amount each.".into()
            }
            Self::DosedTwice { .. } => {
                "Take it out of one of the two, or say what is meant: \"overlap\": \"add\" (both doses go in) or \"overlap\": \"last\" (the formula named last counts).".into()
            }
            Self::BaseIsDosed { .. } => {
                "Take it out of the doses; to mix plastisols, name both in one formula's \"base\" with an amount each.".into()
            }
            Self::BaseIsNoPlastisol { material, .. } => format!(
                "Name a plastisol as base and \"{material}\" among the doses, or give \"{material}\" the kind \"plastisol\"."
            )
            .into(),
            Self::NoPer(_) => "Add \"per\", such as \"per\": \"1 cup\".".into(),
            Self::EmptyBase(_) => "Write an amount above zero.".into(),
            Self::BadAmount { .. } => {
                "Write a volume (1/4 tsp), a mass (12.5 g), drops (40 drops) or a per cent (8 % of base, 20 % of finished).".into()
            }
            Self::PowderByVolumeOfBase { .. } => {
                "As scooped: write \"1/4 cup\" with \"per\": \"1 cup\". By the grains alone, or by mass: write \"22 % of base\".".into()
            }
            Self::NoRoomForBase => {
                "Shares of the finished mix must come to less than 100 % together; perhaps \"of base\" was meant.".into()
            }
            Self::BadProperty(_) => "Correct the material's density or drop; it must be above zero.".into(),
            Self::Missing(error) => error.help(),
            Self::Amount(error) => error.help(),
            Self::Mix(error) => error.help(),
        }
    }
}

#[cfg(test)]
mod tests {
    use std::string::ToString;

    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;
    use crate::material::{Drop, Material};
    use crate::quantity::Measured;

    const US: System = System::UsCustomary;
    /// A US cup in liters: 231 in³/16.
    const CUP_L: f64 = 0.236_588_236_5;

    fn table() -> Materials {
        let of = |name: &str, kind, g_per_ml: f64| Material {
            density: Some(Measured::exact(MassDensity::from_si(g_per_ml * 1e3))),
            ..Material::new(name, kind)
        };
        let drop = Some(Drop::Mass(Measured::exact(Mass::from_si(0.044e-3))));
        let scooped = Some(Measured::exact(MassDensity::from_si(1220.0)));
        Materials::new(Vec::from([
            of("clear", Kind::Plastisol, 1.03),
            of("firm", Kind::Plastisol, 1.06),
            of("softener", Kind::Softener, 0.984),
            Material { drop, ..of("plum", Kind::Colorant, 1.05) },
            Material { as_scooped: scooped, ..of("salt", Kind::Salt, 2.165) },
            Material::new("mystery", Kind::Other),
        ]))
    }

    fn amount(text: &str) -> Amount {
        Amount::parse(text).unwrap()
    }

    fn doses(doses: &[(&str, &str)]) -> Vec<Dose> {
        let table = table();
        let dose = |(name, text): &(&str, &str)| Dose {
            material: table.find(name).unwrap(),
            amount: amount(text),
        };
        doses.iter().map(dose).collect()
    }

    fn formula(name: &str, per: &str, base: &[(&str, &str)], of: &[(&str, &str)]) -> Formula {
        let per = (!per.is_empty()).then(|| amount(per));
        Formula { name: name.into(), per, base: doses(base), doses: doses(of) }
    }

    const CLEAR: &[(&str, &str)] = &[("clear", "1 g")];

    fn combine(formulas: &[&Formula], overlap: Overlap) -> Result<Recipe, FormulaError> {
        Recipe::combine(formulas, overlap, None, &table(), US)
    }

    fn recipe(per: &str, of: &[(&str, &str)]) -> Recipe {
        combine(&[&formula("a", per, CLEAR, of)], Overlap::Refuse).unwrap()
    }

    fn ratio(recipe: &Recipe, name: &str) -> f64 {
        let material = table().find(name).unwrap();
        recipe.ingredients().find(|one| one.material == material).map_or(0.0, |one| one.ratio)
    }

    #[track_caller]
    fn near(got: f64, expected: f64) {
        assert!((got - expected).abs() <= 1e-14 * expected.abs(), "{got} for {expected}");
    }

    // By hand; a cup of base is 1.03 · 236.588 236 5 g.
    #[rstest]
    #[case("plum", "12.5 g", 0.0125 / (1.03 * CUP_L))]
    #[case("plum", "40 drops", 40.0 * 0.044e-3 / (1.03 * CUP_L))]
    #[case("plum", "1 tsp", 1.05 / 48.0 / 1.03)]
    #[case("salt", "1/4 cup", 1.22 / 4.0 / 1.03)] // as scooped, not by its grains
    #[case("softener", "12 % of base", 0.12)]
    #[case("softener", "12 % of base by volume", 0.12 * 0.984 / 1.03)]
    #[case("softener", "20 % of finished", 0.25)]
    #[case("softener", "20 % of finished by volume", 0.25 * 0.984 / 1.03)]
    #[case("salt", "20 % of finished by volume", 0.25 * 2.165 / 1.03)] // by its grains
    fn a_dose_becomes_a_ratio(#[case] name: &str, #[case] text: &str, #[case] expected: f64) {
        near(ratio(&recipe("1 cup", &[(name, text)]), name), expected);
    }

    #[rstest]
    #[case(&[("1 cup", "1/4 cup"), ("2 cup", "1/2 cup"), ("3 cup", "3/4 cup"), ("1/3 cup", "1/12 cup")])]
    #[case(&[("1 cup", "1 tsp"), ("2 cup", "2 tsp"), ("3 cup", "1 tbsp"), ("16 tbsp", "1 tsp")])]
    #[case(&[("100 g", "0.1 g"), ("300 g", "0.3 g"), ("1 kg", "1 g"), ("700 g", "700 mg")])]
    fn one_formula_per_one_two_or_three_cups_is_one_recipe(#[case] ways: &[(&str, &str)]) {
        let ways: Vec<Recipe> =
            ways.iter().map(|(per, dose)| recipe(per, &[("salt", dose)])).collect();
        assert!(ways.windows(2).all(|two| two[0] == two[1]), "{ways:?}");
    }

    #[test]
    fn a_blend_is_shared_out_by_mass() {
        let firm = formula(
            "firm",
            "1 cup",
            &[("clear", "1 cup"), ("firm", "1 cup")],
            &[("salt", "1/4 cup")],
        );
        let got = combine(&[&firm], Overlap::Refuse).unwrap();
        near(ratio(&got, "clear"), 1.03 / 2.09);
        near(ratio(&got, "firm"), 1.06 / 2.09);
        // Two cups of it weigh 2.09: the dose is per a cup of the blend.
        near(ratio(&got, "salt"), 1.22 / 4.0 / 1.045);
        near(got.base_density(&table()).unwrap().si(), 1045.0);
        let written_otherwise = formula(
            "b",
            "2 cup",
            &[("firm", "3 tbsp"), ("clear", "3 tbsp")],
            &[("salt", "1/2 cup")],
        );
        assert_eq!(got, combine(&[&written_otherwise], Overlap::Refuse).unwrap());
        // A color dosed per cup takes the blend's density, whichever formula comes first.
        let color = formula("dusk", "1 cup", &[], &[("plum", "32 drops")]);
        let one = combine(&[&color, &firm], Overlap::Refuse).unwrap();
        assert_eq!(one, combine(&[&firm, &color], Overlap::Refuse).unwrap());
        near(ratio(&one, "plum"), 32.0 * 0.044e-3 / (1.045 * CUP_L));
    }

    #[test]
    fn overlap_says_what_counts() {
        let one = formula("one", "1 cup", CLEAR, &[("plum", "10 drops"), ("salt", "1 tsp")]);
        let two = formula("two", "1 cup", &[], &[("plum", "30 drops")]);
        let three = formula("three", "1 cup", &[], &[("plum", "5 drops")]);
        let drops = |recipe: &Recipe| ratio(recipe, "plum") * 1.03 * CUP_L / 0.044e-3;
        let all = [&one, &two, &three];
        match combine(&all, Overlap::Refuse) {
            Err(FormulaError::DosedTwice { material, first, second }) => {
                assert_eq!([&*material, &*first, &*second], ["plum", "one", "two"]);
            }
            other => panic!("{other:?}"),
        }
        near(drops(&combine(&all, Overlap::Add).unwrap()), 45.0);
        near(drops(&combine(&all, Overlap::Last).unwrap()), 5.0);
        near(drops(&combine(&[&three, &two, &one], Overlap::Last).unwrap()), 10.0);
        // One formula that doses a material twice means both, and both give way together.
        let twice = formula("twice", "1 cup", CLEAR, &[("plum", "10 drops"), ("plum", "2 drops")]);
        near(drops(&combine(&[&twice], Overlap::Refuse).unwrap()), 12.0);
        near(drops(&combine(&[&twice, &two], Overlap::Last).unwrap()), 30.0);
    }

    #[test]
    fn a_base_is_named_once_or_by_default() {
        let (table, color) = (table(), formula("dusk", "1 cup", &[], &[("plum", "9 drops")]));
        let clear = table.find("clear");
        assert_eq!(combine(&[&color], Overlap::Refuse).unwrap_err().code(), "formula-no-base");
        let by_default = Recipe::combine(&[&color], Overlap::Refuse, clear, &table, US).unwrap();
        assert_eq!(by_default.base()[0].material, clear.unwrap());
        let refused = Recipe::combine(&[&color], Overlap::Refuse, table.find("salt"), &table, US);
        assert_eq!(refused.unwrap_err().code(), "formula-base-no-plastisol");
        let (one, other) =
            (formula("a", "", CLEAR, &[]), formula("b", "", &[("firm", "1 g")], &[]));
        let refused = combine(&[&one, &color, &other], Overlap::Refuse).unwrap_err();
        assert_eq!(refused.to_string(), "\"a\" and \"b\" name different bases.");
        // A formula that names the base overrules the default.
        let firm = Recipe::combine(&[&color, &other], Overlap::Refuse, clear, &table, US).unwrap();
        assert_eq!(firm.base()[0].material, table.find("firm").unwrap());
    }

    #[rstest]
    #[case("", CLEAR, &[("salt", "1 tsp")], "formula-no-per")]
    #[case("0 cup", CLEAR, &[("salt", "1 tsp")], "formula-empty-base")]
    #[case("1 cup", &[("clear", "1 cup"), ("firm", "0 cup")], &[], "formula-empty-base")]
    #[case("1 cup", &[("salt", "1 cup")], &[], "formula-base-no-plastisol")]
    #[case("1 cup", CLEAR, &[("clear", "1 tsp")], "formula-base-is-dosed")]
    #[case("1 cup", CLEAR, &[("salt", "10 % of base by volume")], "formula-powder-by-volume")]
    #[case("1 cup", CLEAR, &[("salt", "60 % of finished"), ("plum", "40 % of finished")], "formula-no-room")]
    #[case("1 cup", CLEAR, &[("salt", "50 % of finished by volume"), ("plum", "50 % of finished by volume")], "formula-no-room")]
    #[case("1 cup", CLEAR, &[("salt", "60 % of finished"), ("plum", "60 % of finished by volume")], "formula-no-room")]
    #[case("1 cup", CLEAR, &[("plum", "330 °F")], "formula-bad-amount")]
    #[case("30 drops", CLEAR, &[("plum", "1 g")], "formula-bad-amount")]
    #[case("1 cup", CLEAR, &[("mystery", "1 tsp")], "missing-property")]
    #[case("1 cup", CLEAR, &[("mystery", "9 drops")], "missing-property")]
    #[case("1 cup", CLEAR, &[("mystery", "5 % of finished by volume")], "missing-property")]
    fn what_cannot_be_is_refused(
        #[case] per: &str,
        #[case] base: &[(&str, &str)],
        #[case] of: &[(&str, &str)],
        #[case] code: &str,
    ) {
        let refused = combine(&[&formula("x", per, base, of)], Overlap::Refuse).unwrap_err();
        assert_eq!(refused.code(), code, "{refused}");
        assert!(!refused.help().is_empty());
    }

    #[test]
    fn a_missing_density_is_missed_only_where_it_is_needed() {
        let got = recipe("100 g", &[("mystery", "1 g")]);
        near(ratio(&got, "mystery"), 0.01);
        assert!(got.for_volume(Volume::from_si(1e-3), Phase::Liquid, &table()).is_err());
    }

    #[test]
    fn a_dose_of_nothing_is_left_out() {
        assert_eq!(recipe("1 cup", &[("plum", "0 drops")]).additives(), []);
        assert_eq!(recipe("1 cup", &[("plum", "0 % of finished")]), recipe("1 cup", &[]));
    }

    #[test]
    fn a_recipe_scales_to_base_mass_and_volume() {
        let got = recipe("1 cup", &[("salt", "20 % of finished"), ("plum", "32 drops")]);
        let base = Mass::from_si(0.25);
        let mix = got.for_base(base).unwrap();
        near(mix.base_mass(&table()).unwrap().si(), 0.25);
        near(mix.mass_fraction(table().find("salt").unwrap()), 0.2);
        near(mix.mass().si(), 0.25 * got.total_per_base());
        near(got.for_mass(Mass::from_si(0.7)).unwrap().mass().si(), 0.7);
        for phase in [Phase::Liquid, Phase::Fused] {
            let full = got.for_volume(Volume::from_si(0.5e-3), phase, &table()).unwrap();
            near(full.volume(&table(), phase).unwrap().si(), 0.5e-3);
        }
    }

    proptest! {
        /// The two equations of the joint solution, in the masses and volumes that come out; and the same by
        /// filling up again and again.
        #[test]
        fn the_joint_solution_solves(
            (a, b) in (0_u32..600, 0_u32..600),
            (w, v_liquid, v_grain) in (0_u32..300, 0_u32..300, 0_u32..200),
        ) {
            let percent = |tenths: u32, of: &str| alloc::format!("{}.{} % of {of}", tenths / 10, tenths % 10);
            let table = Materials::new(table().iter().map(|(_, m)| m.clone())
                .chain([Material { name: "w".into(), ..table().get(MaterialId(3)).unwrap().clone() }])
                .collect());
            let dose = |name: &str, text: String| Dose { material: table.find(name).unwrap(), amount: amount(&text) };
            let formula = Formula {
                name: "x".into(),
                per: Some(amount("1 kg")),
                base: Vec::from([dose("clear", "1 g".into())]),
                doses: Vec::from([
                    dose("firm", percent(a, "base")),
                    dose("plum", percent(b, "base by volume")),
                    dose("w", percent(w, "finished")),
                    dose("softener", percent(v_liquid, "finished by volume")),
                    dose("salt", percent(v_grain, "finished by volume")),
                ]),
            };
            let got = Recipe::combine(&[&formula], Overlap::Refuse, None, &table, US).unwrap();
            let mix = got.for_base(Mass::from_si(1.0)).unwrap();
            let of = |name: &str| table.find(name).unwrap();
            let share = |tenths: u32| f64::from(tenths) / 1000.0;
            let (mass, volume) = (mix.mass().si(), mix.volume(&table, Phase::Liquid).unwrap().si());
            let close = |a: f64, b: f64| (a - b).abs() <= 1e-13 * (1.0 + b.abs());
            prop_assert!(close(mix.mass_of(of("firm")).si(), share(a)));
            prop_assert!(close(mix.mass_of(of("plum")).si(), share(b) * 1.05 / 1.03));
            prop_assert!(close(mix.mass_of(of("w")).si() / mass, share(w)));
            for (name, tenths) in [("softener", v_liquid), ("salt", v_grain)] {
                let fraction = mix.volume_fraction(of(name), &table, Phase::Liquid).unwrap();
                prop_assert!(close(fraction, share(tenths)), "{name} {fraction}");
            }
            let densities = |name: &str| table.get(of(name)).unwrap().true_density("").unwrap().get().si();
            let (mut total, mut filled) = (1.0, 1.0 / 1030.0);
            let fixed = share(a) + share(b) * 1.05 / 1.03;
            for _ in 0..400 {
                let (t, v): (f64, f64) = (total, filled);
                let (by_mass, soft, salt) = (share(w) * t, share(v_liquid) * v, share(v_grain) * v);
                total = 1.0 + fixed + by_mass + soft * densities("softener") + salt * densities("salt");
                filled = 1.0 / 1030.0 + share(a) / 1060.0 + share(b) / 1030.0 + by_mass / densities("w") + soft + salt;
            }
            prop_assert!((total - mass).abs() <= 1e-12 * mass && (filled - volume).abs() <= 1e-12 * volume);
        }

        #[test]
        fn the_same_formula_per_more_is_the_same_recipe(times in 1_u32..40, drops in 1_u32..90, eighths in 1_u32..9) {
            let written = |times: u32| {
                let (per, drops) = (alloc::format!("{times} cup"), alloc::format!("{} drops", drops * times));
                let salt = alloc::format!("{}/8 tsp", eighths * times);
                recipe(&per, &[("plum", &drops), ("salt", &salt), ("softener", "3.3 % of finished by volume")])
            };
            prop_assert_eq!(written(1), written(times));
        }

        #[test]
        fn scaling_a_recipe_is_linear(grams in 0.1_f64..900.0, factor in 0.01_f64..50.0) {
            let got = recipe("1 cup", &[("plum", "32 drops"), ("salt", "1/4 cup"), ("softener", "5 % of finished")]);
            let one = got.for_base(Mass::from_si(grams)).unwrap();
            let scaled = got.for_base(Mass::from_si(grams * factor)).unwrap();
            for portion in one.portions() {
                let other = scaled.mass_of(portion.material).si();
                prop_assert!((portion.mass.si() * factor - other).abs() <= 4.0 * f64::EPSILON * other);
            }
        }
    }
}

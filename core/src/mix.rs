//! Mixes: the masses of the materials in one vessel, the conserved thing all maths works on.
//!
//! Ideal additivity: M = Σm, V = Σ m/ρ, ρ = M/V. Solids displace their true volume. An air-void
//! fraction φ lowers the density: ρ·(1 − φ). Each constituent expands by its own coefficient:
//! V(T) = Σ (m_i/ρ_i)·(1 + α_i·(T − 20 °C)).
//!
//! **Conservation.** Every operation keeps the sum of the masses within n·u·Σm, where n is the
//! number of materials, u = 2⁻⁵³ and Σm the mass that took part.

use alloc::borrow::Cow;
use alloc::format;
use alloc::vec::Vec;

use crate::density::TrueDensity;
use crate::fault::Diagnose;
use crate::material::{Kind, Material, MaterialError};
use crate::quantity::{
    Mass, MassDensity, Measurable, TemperatureInterval, ThermodynamicTemperature, Volume,
};
use crate::words::words;

/// A material by its place in a [`Materials`] table.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct MaterialId(pub u32);

/// The materials of a shop, in the order of their names.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Materials(Vec<Material>);

impl Materials {
    /// A table of `materials`, sorted by name, so that the same shop gives the same sums in
    /// the same order however its book was written.
    #[must_use]
    pub fn new(mut materials: Vec<Material>) -> Self {
        materials.sort_by(|a, b| a.name.cmp(&b.name));
        Self(materials)
    }

    /// The material named `name`.
    #[must_use]
    pub fn find(&self, name: &str) -> Option<MaterialId> {
        let index = self.0.binary_search_by(|material| material.name.as_str().cmp(name)).ok()?;
        u32::try_from(index).ok().map(MaterialId)
    }

    /// The material at `id`.
    ///
    /// # Errors
    /// The table has no such place.
    pub fn get(&self, id: MaterialId) -> Result<&Material, MixError> {
        usize::try_from(id.0)
            .ok()
            .and_then(|index| self.0.get(index))
            .ok_or(MixError::UnknownMaterial(id.0))
    }

    /// All materials with their places, by name.
    pub fn iter(&self) -> impl Iterator<Item = (MaterialId, &Material)> {
        (0_u32..).map(MaterialId).zip(&self.0)
    }
}

/// The temperature at which densities are stated: 20 °C.
#[must_use]
pub fn reference_temperature() -> ThermodynamicTemperature {
    ThermodynamicTemperature::from_si(293.15)
}

/// `to` less `from`, as a difference.
#[must_use]
pub fn temperature_rise(
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
) -> TemperatureInterval {
    TemperatureInterval::from_si(to.si() - from.si())
}

words! {
    /// Whether a plastisol in the mix is still liquid or has been fused.
    pub enum Phase {
        /// As a cup measures it.
        Liquid = "liquid",
        /// As a piece weighs it.
        Fused = "fused",
    }
}

/// What a density of a mix had to assume, since the book does not state it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
#[non_exhaustive]
pub enum Assumption {
    /// Only the liquid density of this plastisol is known; the fused one is taken as equal.
    FusedAsLiquid(MaterialId),
    /// The expansion of this material is unknown and taken as none.
    NoExpansion(MaterialId),
    /// The drop of this material was never weighed and is taken as UCUM's 1/20 mL.
    PharmacyDrop(MaterialId),
    /// The shot window of this plastisol is unknown; its shots are reckoned at 20 °C.
    NoShotWindow(MaterialId),
}

impl Assumption {
    /// The material that it is about.
    #[must_use]
    pub const fn material(self) -> MaterialId {
        match self {
            Self::FusedAsLiquid(id)
            | Self::NoExpansion(id)
            | Self::PharmacyDrop(id)
            | Self::NoShotWindow(id) => id,
        }
    }
}

/// A mass of one material.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Portion {
    /// Which material.
    pub material: MaterialId,
    /// How much of it.
    pub mass: Mass,
}

/// Masses of materials in one vessel, one portion a material, in the order of their places.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Mix {
    portions: Vec<Portion>,
}

impl Mix {
    /// An empty vessel.
    #[must_use]
    pub const fn new() -> Self {
        Self { portions: Vec::new() }
    }

    /// The portions, in the order of the materials' places.
    #[must_use]
    pub fn portions(&self) -> &[Portion] {
        &self.portions
    }

    /// Adds `mass` of `material`.
    ///
    /// # Errors
    /// The mass is negative or not finite, or would not be with what is there: nothing can be
    /// taken out of a mix again.
    pub fn add(&mut self, material: MaterialId, mass: Mass) -> Result<(), MixError> {
        let bad = || MixError::BadMass(mass.si() * 1000.0);
        if !mass.si().is_finite() || mass.si() < 0.0 {
            return Err(bad());
        }
        match self.portions.binary_search_by_key(&material, |portion| portion.material) {
            Ok(found) => {
                if let Some(portion) = self.portions.get_mut(found) {
                    let sum = portion.mass + mass;
                    if !sum.si().is_finite() {
                        return Err(bad());
                    }
                    portion.mass = sum;
                }
            }
            Err(place) => self.portions.insert(place, Portion { material, mass }),
        }
        Ok(())
    }

    /// Pours `other` into this one.
    ///
    /// # Errors
    /// A sum of masses is not finite; this mix is then as it was.
    pub fn merge(&mut self, other: &Self) -> Result<(), MixError> {
        let mut merged = self.clone();
        other.portions.iter().try_for_each(|portion| merged.add(portion.material, portion.mass))?;
        *self = merged;
        Ok(())
    }

    /// Takes `mass` of the well-stirred mix out and gives it back as a mix of its own.
    ///
    /// # Errors
    /// More is asked for than there is.
    pub fn draw(&mut self, mass: Mass) -> Result<Self, MixError> {
        let total = self.mass();
        if !(mass.si() >= 0.0 && mass <= total) {
            return Err(MixError::DrawTooLarge {
                asked_g: mass.si() * 1000.0,
                held_g: total.si() * 1000.0,
            });
        }
        if total.si() == 0.0 {
            return Ok(Self::new());
        }
        let share = mass.si() / total.si();
        let mut drawn = Self::new();
        for portion in &mut self.portions {
            let taken = portion.mass * share;
            portion.mass -= taken;
            drawn.portions.push(Portion { material: portion.material, mass: taken });
        }
        Ok(drawn)
    }

    /// This mix `factor` times.
    ///
    /// # Errors
    /// The factor is negative or not finite, or a mass would no longer be finite.
    pub fn scaled(&self, factor: f64) -> Result<Self, MixError> {
        let portions: Vec<Portion> = self
            .portions
            .iter()
            .map(|portion| Portion { material: portion.material, mass: portion.mass * factor })
            .collect();
        let finite = portions.iter().all(|portion| portion.mass.si().is_finite());
        if finite && factor.is_finite() && factor >= 0.0 {
            Ok(Self { portions })
        } else {
            Err(MixError::BadFactor(factor))
        }
    }

    /// Σm.
    #[must_use]
    pub fn mass(&self) -> Mass {
        self.portions.iter().fold(Mass::default(), |sum, portion| sum + portion.mass)
    }

    /// How much of `material` is in it.
    #[must_use]
    pub fn mass_of(&self, material: MaterialId) -> Mass {
        self.portions
            .binary_search_by_key(&material, |portion| portion.material)
            .ok()
            .and_then(|found| self.portions.get(found))
            .map_or(Mass::default(), |portion| portion.mass)
    }

    /// Mass of its base: all its plastisols.
    ///
    /// # Errors
    /// A portion's material is not in the table.
    pub fn base_mass(&self, materials: &Materials) -> Result<Mass, MixError> {
        self.portions.iter().try_fold(Mass::default(), |sum, portion| {
            let base = materials.get(portion.material)?.kind == Kind::Plastisol;
            Ok(if base { sum + portion.mass } else { sum })
        })
    }

    /// w = m_i/M, 0 in an empty mix.
    #[must_use]
    pub fn mass_fraction(&self, material: MaterialId) -> f64 {
        let total = self.mass().si();
        if total == 0.0 { 0.0 } else { self.mass_of(material).si() / total }
    }

    /// Parts of `material` per hundred parts of base, by mass.
    ///
    /// # Errors
    /// The mix holds no base.
    pub fn parts_per_hundred(
        &self,
        material: MaterialId,
        materials: &Materials,
    ) -> Result<f64, MixError> {
        let base = self.base_mass(materials)?;
        if base.si() <= 0.0 {
            return Err(MixError::NoBase);
        }
        Ok(100.0 * self.mass_of(material).si() / base.si())
    }

    /// Volume at 20 °C: V = Σ m/ρ.
    ///
    /// # Errors
    /// A density is missing.
    pub fn volume(&self, materials: &Materials, phase: Phase) -> Result<Volume, MixError> {
        self.volume_at(materials, phase, reference_temperature())
    }

    /// Volume at `temperature`: V = Σ (m/ρ)(1 + α(T − 20 °C)).
    ///
    /// # Errors
    /// A density is missing, or the temperature is so far off that nothing would be left of a volume.
    pub fn volume_at(
        &self,
        materials: &Materials,
        phase: Phase,
        temperature: ThermodynamicTemperature,
    ) -> Result<Volume, MixError> {
        let rise = temperature_rise(reference_temperature(), temperature);
        self.portions.iter().try_fold(Volume::default(), |sum, portion| {
            let material = materials.get(portion.material)?;
            let density = density_of(material, phase)?;
            let growth = 1.0 + (material.expansion_or_none() * rise).si();
            if !(growth > 0.0 && growth.is_finite()) {
                return Err(MixError::BadTemperature(temperature.si() - 273.15));
            }
            Ok(sum + portion.mass / density * growth)
        })
    }

    /// Volume fraction of `material` at 20 °C, 0 in an empty mix.
    ///
    /// # Errors
    /// A density is missing.
    pub fn volume_fraction(
        &self,
        material: MaterialId,
        materials: &Materials,
        phase: Phase,
    ) -> Result<f64, MixError> {
        let total = self.volume(materials, phase)?;
        if total.si() == 0.0 {
            return Ok(0.0);
        }
        let density = density_of(materials.get(material)?, phase)?;
        Ok((self.mass_of(material) / density / total).si())
    }

    /// Density at `temperature` with a share `voids` of air: ρ = (M/V(T))·(1 − φ).
    ///
    /// # Errors
    /// A density is missing, the mix is empty, or `voids` is outside 0 ≤ φ < 1.
    pub fn density(
        &self,
        materials: &Materials,
        phase: Phase,
        temperature: ThermodynamicTemperature,
        voids: f64,
    ) -> Result<MassDensity, MixError> {
        if !(0.0..1.0).contains(&voids) {
            return Err(MixError::BadVoids(voids));
        }
        let volume = self.volume_at(materials, phase, temperature)?;
        if volume.si() <= 0.0 {
            return Err(MixError::Empty);
        }
        Ok(self.mass() / volume * (1.0 - voids))
    }

    /// What a density of this mix in `phase` has to assume.
    ///
    /// # Errors
    /// A portion's material is not in the table.
    pub fn assumptions(
        &self,
        materials: &Materials,
        phase: Phase,
    ) -> Result<Vec<Assumption>, MixError> {
        let mut found = Vec::new();
        for portion in &self.portions {
            let material = materials.get(portion.material)?;
            let plastisol = material.kind == Kind::Plastisol;
            if plastisol && phase == Phase::Fused && material.fused.is_none() {
                found.push(Assumption::FusedAsLiquid(portion.material));
            }
            if material.expansion.is_none() {
                found.push(Assumption::NoExpansion(portion.material));
            }
        }
        Ok(found)
    }
}

fn density_of(material: &Material, phase: Phase) -> Result<MassDensity, MaterialError> {
    let purpose = "the density of the mix";
    let density = match phase {
        Phase::Liquid => material.true_density(purpose),
        Phase::Fused => material.finished_density(purpose),
    };
    density.map(TrueDensity::get)
}

/// Why something cannot be done with a mix.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum MixError {
    /// A negative or endless addition.
    #[error("{0} g cannot be added to a mix.")]
    BadMass(f64),
    /// More is drawn than there is.
    #[error("{asked_g} g cannot be drawn from a mix of {held_g} g.")]
    DrawTooLarge {
        /// What was asked for, in grams.
        asked_g: f64,
        /// What is there, in grams.
        held_g: f64,
    },
    /// A negative or endless factor.
    #[error("A mix cannot be made {0} times.")]
    BadFactor(f64),
    /// A temperature beyond what the materials' expansion covers.
    #[error("A mix has no volume at {0} °C.")]
    BadTemperature(f64),
    /// No such share of air.
    #[error("A share of air of {0} is not possible.")]
    BadVoids(f64),
    /// An empty mix has no density.
    #[error("The mix is empty.")]
    Empty,
    /// Nothing to relate the additives to.
    #[error("The mix holds no plastisol.")]
    NoBase,
    /// A place that the table lacks.
    #[error("There is no material number {0} in the table.")]
    UnknownMaterial(u32),
    /// A density is missing.
    #[error(transparent)]
    Missing(#[from] MaterialError),
}

impl Diagnose for MixError {
    fn code(&self) -> &'static str {
        match self {
            Self::BadMass(_) => "mix-bad-mass",
            Self::DrawTooLarge { .. } => "mix-draw-too-large",
            Self::BadFactor(_) => "mix-bad-factor",
            Self::BadTemperature(_) => "mix-bad-temperature",
            Self::BadVoids(_) => "mix-bad-voids",
            Self::Empty => "mix-empty",
            Self::NoBase => "mix-no-base",
            Self::UnknownMaterial(_) => "mix-unknown-material",
            Self::Missing(error) => error.code(),
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::BadMass(_) => {
                "Add 0 g or more; what went in by mistake is put right by a correction.".into()
            }
            Self::DrawTooLarge { held_g, .. } => format!("Draw at most {held_g} g.").into(),
            Self::BadFactor(_) => "Use a factor of 0 or more.".into(),
            Self::BadTemperature(_) => {
                "Check the temperature (338 °F is 170 °C) and the materials' expansion (some 7e-4 1/K).".into()
            }
            Self::BadVoids(_) => "State it between 0 and below 1, such as 0.02 for 2 %.".into(),
            Self::Empty | Self::NoBase => "Add the plastisol first.".into(),
            Self::UnknownMaterial(_) => "Use a place that the same table of materials gave.".into(),
            Self::Missing(error) => error.help(),
        }
    }
}

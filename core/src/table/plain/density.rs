//! Masses, volumes and densities.

use super::{of, or_default};
use crate::mix::{MixError, density_of_parts};
use crate::parameter::{Check, Checked, Checking, Parameter, ParameterError, PlainUnit, Problem};
use crate::quantity::{Mass, MassDensity, Measurable, Ratio, Volume};
use crate::table::{Refusal, calculation};

calculation! {
    /// Mass of a volume: m = ρV.
    ///
    /// The density is that of what fills the measure: a liquid's own, a powder's bulk density. For what a solid displaces
    /// in a mix it is its true density.
    MASS_OF_VOLUME = "mass_of_volume": MassOfVolume -> MassOfVolumeResult
    takes {
        volume_ml: f64 = Volume,
        density_g_per_ml: f64 = Density,
    }
    gives {
        /// The mass.
        mass_g: f64 = "mass" Gram,
    }
    has total
    example MassOfVolume { volume_ml: 250.0, density_g_per_ml: 1.03 } => MassOfVolumeResult { mass_g: 257.5 };
}

impl MassOfVolume {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    #[inline]
    pub fn calculate(&self) -> Result<MassOfVolumeResult, Refusal> {
        let (found, is_answer) = self.total();
        if is_answer { Ok(found) } else { Err(self.errors().into()) }
    }

    /// The result for any numbers, and whether it is the one that `calculate` gives, to the bit. Where it is not,
    /// `calculate` knows why, or goes a longer way.
    ///
    /// Without branches, so that a compiler calculates several rows of a column at once.
    #[inline(always)]
    #[must_use]
    pub fn total(&self) -> (MassOfVolumeResult, bool) {
        let (volume, density) = self.quantities();
        let mass: Mass = volume * density;
        (MassOfVolumeResult { mass_g: PlainUnit::Gram.from_si(mass.si()) }, self.is_in_range())
    }

    #[inline(always)]
    fn quantities(&self) -> (Volume, MassDensity) {
        let density = of(Parameter::Density, self.density_g_per_ml);
        (of(Parameter::Volume, self.volume_ml), density)
    }
}

impl Checked for MassOfVolume {
    #[inline(always)]
    fn check(&self, check: &mut impl Checking) {
        let (volume, density) = self.quantities();
        check.number(Parameter::Volume, volume.value).number(Parameter::Density, density.value);
    }
}

calculation! {
    /// Volume of a mass: V = m/ρ, with the densities of `mass_of_volume`.
    VOLUME_OF_MASS = "volume_of_mass": VolumeOfMass -> VolumeOfMassResult
    takes {
        mass_g: f64 = Mass,
        density_g_per_ml: f64 = Density,
    }
    gives {
        /// The volume.
        volume_ml: f64 = "volume" Milliliter,
    }
    has total
    example VolumeOfMass { mass_g: 257.5, density_g_per_ml: 1.03 } => VolumeOfMassResult { volume_ml: 250.0 };
}

impl VolumeOfMass {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    #[inline]
    pub fn calculate(&self) -> Result<VolumeOfMassResult, Refusal> {
        let (found, is_answer) = self.total();
        if is_answer { Ok(found) } else { Err(self.errors().into()) }
    }

    /// As [`MassOfVolume::total`].
    #[inline(always)]
    #[must_use]
    pub fn total(&self) -> (VolumeOfMassResult, bool) {
        let (mass, density) = self.quantities();
        let volume: Volume = mass / density;
        let volume_ml = PlainUnit::Milliliter.from_si(volume.si());
        (VolumeOfMassResult { volume_ml }, self.is_in_range())
    }

    #[inline(always)]
    fn quantities(&self) -> (Mass, MassDensity) {
        let density = of(Parameter::Density, self.density_g_per_ml);
        (of(Parameter::Mass, self.mass_g), density)
    }
}

impl Checked for VolumeOfMass {
    #[inline(always)]
    fn check(&self, check: &mut impl Checking) {
        let (mass, density) = self.quantities();
        check.number(Parameter::Mass, mass.value).number(Parameter::Density, density.value);
    }
}

calculation! {
    /// Share of one part in a mix, by mass and by true volume.
    ///
    /// Mass: m_i/Σm; volume: (m_i/ρ_i)/Σ(m/ρ).
    MIX_SHARE = "mix_share": MixShare<'a> -> MixShareResult
    takes {
        parts: &'a [[f64; 2]] = Parts,
        part: u32 = Part,
    }
    gives {
        /// Share of its mass.
        mass_share: f64 = "mass_share" Pure,
        /// Share of its true volume.
        volume_share: f64 = "volume_share" Pure,
    }
    request "mix"
    example MixShare { parts: &[[75.0, 1.0], [50.0, 2.0]], part: 2 }
        => MixShareResult { mass_share: 0.4, volume_share: 0.25 };
}

impl MixShare<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a part that there is not; parts without any mass.
    pub fn calculate(&self) -> Result<MixShareResult, Refusal> {
        let mut check = Check::new();
        check.count(Parameter::Parts, self.parts.len());
        let count = self.parts.len() as f64;
        check.number(Parameter::Part, f64::from(self.part));
        if f64::from(self.part) > count {
            check.push(ParameterError::new(
                Parameter::Part,
                Problem::OutOfRange(f64::from(self.part)),
            ));
        }
        let (mut mass, mut volume) = (0.0, 0.0);
        let mut own = (0.0, 0.0);
        for (index, &[part, density]) in self.parts.iter().enumerate() {
            let part: Mass = of(Parameter::PartMass, part);
            let density: MassDensity = of(Parameter::PartDensity, density);
            check.element(Parameter::PartMass, index, part.value).element(
                Parameter::PartDensity,
                index,
                density.value,
            );
            let filled: Volume = part / density;
            mass += part.value;
            volume += filled.value;
            if u32::try_from(index.saturating_add(1)) == Ok(self.part) {
                own = (part.value, filled.value);
            }
        }
        check.finish()?;
        if volume <= 0.0 {
            return Err(MixError::Empty.into());
        }
        Ok(MixShareResult { mass_share: own.0 / mass, volume_share: own.1 / volume })
    }
}

calculation! {
    /// Density at 20 °C of parts that are mixed: ρ = Σm/(Σm/ρ) · (1 − φ), φ the voids.
    ///
    /// Solids count with their true density. Ideal additivity of volumes; source: conservation of mass and volume.
    DENSITY_OF_PARTS = "density_of_parts": DensityOfParts<'a> -> DensityOfPartsResult
    takes {
        parts: &'a [[f64; 2]] = Parts,
        voids: Option<f64> = Voids,
    }
    gives {
        /// Density of the mix, voids counted.
        density_g_per_ml: f64 = "density" GramPerMilliliter,
    }
    example DensityOfParts { parts: &[[100.0, 1.0], [50.0, 2.0]], voids: None }
        => DensityOfPartsResult { density_g_per_ml: 1.2 };
}

impl DensityOfParts<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; parts without any mass.
    #[inline]
    pub fn calculate(&self) -> Result<DensityOfPartsResult, Refusal> {
        let voids: Ratio = or_default(Parameter::Voids, self.voids);
        let mut check = Check::new();
        check.count(Parameter::Parts, self.parts.len());
        check.finish()?;
        let parts = self.parts.iter().map(|&[mass, density]| {
            (of(Parameter::PartMass, mass), of(Parameter::PartDensity, density))
        });
        let density = density_of_parts(parts, voids.value)?;
        Ok(DensityOfPartsResult {
            density_g_per_ml: PlainUnit::GramPerMilliliter.from_si(density.si()),
        })
    }
}

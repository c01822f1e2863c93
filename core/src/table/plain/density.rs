//! Masses, volumes and densities.

use super::{of, or_default};
use crate::mix::density_of_parts;
use crate::parameter::{Check, Parameter, PlainUnit};
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
    example MassOfVolume { volume_ml: 250.0, density_g_per_ml: 1.03 } => MassOfVolumeResult { mass_g: 257.5 };
}

impl MassOfVolume {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    #[inline]
    pub fn calculate(&self) -> Result<MassOfVolumeResult, Refusal> {
        let volume: Volume = of(Parameter::Volume, self.volume_ml);
        let density: MassDensity = of(Parameter::Density, self.density_g_per_ml);
        let mut check = Check::new();
        check.number(Parameter::Volume, volume.value).number(Parameter::Density, density.value);
        check.finish()?;
        let mass: Mass = volume * density;
        Ok(MassOfVolumeResult { mass_g: PlainUnit::Gram.from_si(mass.si()) })
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

//! Water, and the cavity that it fills.

use super::{of, or_default};
use crate::parameter::{Parameter, PlainUnit};
use crate::quantity::Measurable;
use crate::table::{Refusal, calculation};
use crate::water;

calculation! {
    /// Density of air-free water at 101.325 kPa, 0 to 40 °C.
    ///
    /// Tanaka et al., Metrologia 38 (2001) 301–309; standard uncertainty below 1e-6 relative.
    WATER_DENSITY = "water_density": WaterDensity -> WaterDensityResult
    takes {
        water_temperature_celsius: f64 = WaterTemperature,
    }
    gives {
        /// Density of the water.
        density_g_per_ml: f64 = "density" GramPerMilliliter,
    }
    request "water"
    example WaterDensity { water_temperature_celsius: 20.0 }
        => WaterDensityResult { density_g_per_ml: 0.998_206_745_56 };
}

impl WaterDensity {
    /// Calculates.
    ///
    /// # Errors
    /// A temperature outside 0 to 40 °C.
    pub fn calculate(&self) -> Result<WaterDensityResult, Refusal> {
        let temperature = of(Parameter::WaterTemperature, self.water_temperature_celsius);
        let density = water::density(temperature)?;
        Ok(WaterDensityResult {
            density_g_per_ml: PlainUnit::GramPerMilliliter.from_si(density.si()),
        })
    }
}

calculation! {
    /// Volume of a cavity from the reading of a balance for the water that it holds.
    ///
    /// Corrected for the buoyancy of air on water and weights: V = Z·m (ISO 8655-6, ISO 4787).
    CAVITY_OF_WATER = "cavity_of_water": CavityOfWater -> CavityOfWaterResult
    takes {
        water_mass_g: f64 = WaterMass,
        water_temperature_celsius: f64 = WaterTemperature,
        air_pressure_kpa: Option<f64> = AirPressure,
    }
    gives {
        /// Volume of the cavity.
        cavity_volume_ml: f64 = "cavity_volume" Milliliter,
    }
    request "water"
    example CavityOfWater {
        water_mass_g: 10.0,
        water_temperature_celsius: 20.0,
        air_pressure_kpa: None,
    } => CavityOfWaterResult { cavity_volume_ml: 10.028_511_692_2 };
}

impl CavityOfWater {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    pub fn calculate(&self) -> Result<CavityOfWaterResult, Refusal> {
        let volume = water::volume_weighed(
            of(Parameter::WaterMass, self.water_mass_g),
            of(Parameter::WaterTemperature, self.water_temperature_celsius),
            or_default(Parameter::AirPressure, self.air_pressure_kpa),
        )?;
        Ok(CavityOfWaterResult { cavity_volume_ml: PlainUnit::Milliliter.from_si(volume.si()) })
    }
}

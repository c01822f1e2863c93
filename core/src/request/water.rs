//! The volume of a cavity from the water that it holds.

use super::{Faulty, response};
use crate::document::reader::entry;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::parameter::parameter;
use crate::plan::{Shown, text};
use crate::quantity::{
    Mass, MassDensity, Measurable, Pressure, System, ThermodynamicTemperature, Volume,
};
use crate::water;

entry! {
    /// Asks for the volume of water that was weighed in air.
    pub struct WaterRequest {
        required {
            #[doc = parameter!(water)]
            water: Written<Mass>,
            #[doc = parameter!(at)]
            at: Written<ThermodynamicTemperature>,
        }
        optional {
            #[doc = parameter!(air_pressure)]
            air_pressure: Written<Pressure>,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// What the water fills.
    pub struct WaterResponse {
        /// Its volume.
        pub volume: Shown<Volume>,
        /// The density of water at that temperature.
        pub density: Shown<MassDensity>,
    }
}

impl WaterRequest {
    /// Corrects the weighing for the buoyancy of air and divides by the density of water.
    ///
    /// # Errors
    /// A temperature outside 0 to 40 °C, a weight or pressure that cannot be.
    pub fn answer(&self) -> Result<WaterResponse, Faults> {
        let mut faulty = Faulty::new(self.measures);
        let mass = faulty.quantity("water", &self.water);
        let at = faulty.quantity("at", &self.at);
        let pressure = match &self.air_pressure {
            Some(pressure) => faulty.quantity("air_pressure", pressure),
            None => Some(Pressure::from_si(101_325.0)),
        };
        let response = mass.zip(at).zip(pressure).and_then(|((mass, at), pressure)| {
            let density = faulty.keep("at", water::density(at))?;
            let volume = faulty.keep("water", water::volume_weighed(mass, at, pressure))?;
            Some(WaterResponse {
                volume: text::milliliters(volume),
                density: text::density(density),
            })
        });
        faulty.finish(response)
    }
}

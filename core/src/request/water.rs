//! The volume of a cavity from the water that it holds.

use alloc::string::String;
use alloc::vec::Vec;

use super::change::{self, Change};
use super::{request, response};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::parameter::Parameter;
use crate::quantity::{
    Mass, MassDensity, Measurable, Pressure, System, ThermodynamicTemperature, Volume,
};
use crate::show::{Shown, text};
use crate::water;

request! {
    /// Asks for the volume of water that was weighed in air.
    pub struct WaterRequest {
        required {
            water_mass: Written<Mass>,
            water_temperature: Written<ThermodynamicTemperature>,
        }
        optional {
            calibrated_mold: Name,
            calibrated_shape: Name,
            air_pressure: Written<Pressure>,
            measures: System,
        }
    }
}

response! {
    /// Volume that the water fills.
    pub struct WaterResponse {
        /// Its volume, with its standard uncertainty where `water` states one, as a book writes that of a cavity.
        pub cavity: String,
        /// Its volume.
        pub volume: Shown<Volume>,
        /// Its standard uncertainty, where `water` states one.
        pub uncertainty: Option<Shown<Volume>>,
        /// The density of water at that temperature.
        pub density: Shown<MassDensity>,
        /// Changes to a book, as a JSON Patch (RFC 6902); empty if no mold was named.
        pub write: Vec<Change>,
    }
}

impl WaterRequest {
    /// Corrects the weighing for the buoyancy of air and divides by the density of water.
    ///
    /// # Errors
    /// A temperature outside 0 to 40 °C, a weight or pressure that cannot be.
    pub fn answer(&self) -> Result<WaterResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let reading = resolver.measured_given(Parameter::WaterMass, &self.water_mass);
        let at = resolver.measured_given(Parameter::WaterTemperature, &self.water_temperature);
        let pressure = match &self.air_pressure {
            Some(pressure) => resolver.given(Parameter::AirPressure, pressure),
            None => Some(Pressure::from_si(101_325.0)),
        };
        let response = reading.zip(at).zip(pressure).and_then(|((reading, at), pressure)| {
            let density = resolver.keep(&At("/water_temperature"), water::density(at.value))?;
            let volume = resolver.keep_named(
                &At("/water_mass"),
                Self::FIELDS,
                water::measured_volume(&reading, &at, pressure),
            )?;
            let (cavity, volume, uncertainty) = match volume.uncertainty {
                Some(unsure) => {
                    let volume = text::uncertain(volume.value, unsure);
                    (volume.both, volume.value, Some(volume.uncertainty))
                }
                None => {
                    let volume = text::milliliters(volume.value);
                    (volume.text.clone(), volume, None)
                }
            };
            let write = change::of_mold(
                self.calibrated_mold.as_ref(),
                self.calibrated_shape.as_ref(),
                "cavity",
                &cavity,
            );
            let density = text::density(density);
            Some(WaterResponse { cavity, volume, uncertainty, density, write })
        });
        resolver.finish(response)
    }
}

//! Mass, volume, density and shares of a mix.

use alloc::string::String;
use alloc::vec::Vec;

use super::{request, response};
use crate::codes::code;
use crate::document::book::MaterialEntry;
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::json::Named;
use crate::json::path::Path::{self, At};
use crate::mix::{Materials, Mix, MixError, Phase, reference_temperature};
use crate::parameter::Parameter;
use crate::quantity::{Mass, MassDensity, Ratio, System, ThermodynamicTemperature, Volume};
use crate::show::{Shown, text};

request! {
    /// Asks for the properties of a mix.
    pub struct MixRequest {
        required {
            materials: Named<MaterialEntry>,
            masses: Named<Written<Mass>>,
        }
        optional {
            phase: Phase,
            temperature: Written<ThermodynamicTemperature>,
            voids: Share,
            measures: System,
        }
    }
}

response! {
    /// The properties of a mix.
    pub struct MixResponse {
        /// Its mass.
        pub mass: Shown<Mass>,
        /// Its volume at the temperature asked for, without voids.
        pub volume: Shown<Volume>,
        /// Its density there, voids counted.
        pub density: Shown<MassDensity>,
        /// Its parts, by material.
        pub parts: Vec<MixPart>,
    }
}

response! {
    /// One material of a mix.
    pub struct MixPart {
        /// Which.
        pub material: String,
        /// Its share of the mass.
        pub mass_fraction: Shown<Ratio>,
        /// Its share of the volume at 20 °C.
        pub volume_fraction: Shown<Ratio>,
        /// Its parts per hundred parts of base, by mass, where there is a base.
        pub parts_per_hundred: Option<f64>,
    }
}

impl MixRequest {
    /// Adds the mix up.
    ///
    /// # Errors
    /// An unknown material, a density that is missing, an empty mix.
    pub fn answer(&self) -> Result<MixResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let materials = resolve::materials(&At("/materials"), &self.materials, resolver.system)?;
        let mix = self.mix(&materials, &mut resolver);
        let at = match &self.temperature {
            Some(temperature) => resolver.given(Parameter::Temperature, temperature),
            None => Some(reference_temperature()),
        };
        let voids = resolver.share(Parameter::Voids, self.voids);
        let response = mix.zip(at).zip(voids).and_then(|((mix, at), voids)| {
            let response = self.response(&mix, at, voids.value, &materials);
            resolver.keep(&Path::ROOT, response)
        });
        resolver.finish(response)
    }

    fn mix(&self, materials: &Materials, resolver: &mut Resolver) -> Option<Mix> {
        let mut mix = Mix::new();
        for (name, written) in &self.masses {
            let path = At("/masses").key(name);
            let Some(material) = materials.find(name) else {
                resolver.fault(
                    code!("unknown-name"),
                    &path,
                    &format_args!("There is no material \"{name}\" in the request."),
                    &"Add it to \"materials\".",
                );
                continue;
            };
            if let Some(mass) = resolver.quantity(&path, written) {
                resolver.keep(&path, mix.add(material, mass));
            }
        }
        resolver.faults.is_empty().then_some(mix)
    }

    fn response(
        &self,
        mix: &Mix,
        at: ThermodynamicTemperature,
        voids: f64,
        materials: &Materials,
    ) -> Result<MixResponse, MixError> {
        let phase = self.phase.unwrap_or(Phase::Fused);
        let part = |material| {
            Ok(MixPart {
                material: materials.get(material)?.name.clone(),
                mass_fraction: text::percent(Ratio::from(mix.mass_fraction(material))),
                volume_fraction: text::percent(Ratio::from(
                    mix.volume_fraction(material, materials, phase)?,
                )),
                parts_per_hundred: mix.parts_per_hundred(material, materials).ok(),
            })
        };
        Ok(MixResponse {
            mass: text::mass(mix.mass()),
            volume: text::milliliters(mix.volume_at(materials, phase, at)?),
            density: text::density(mix.density(materials, phase, at, voids)?),
            parts: mix
                .portions()
                .iter()
                .map(|portion| part(portion.material))
                .collect::<Result<_, MixError>>()?,
        })
    }
}

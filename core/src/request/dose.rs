//! The mass of an amount of a material.

use super::{request, response};
use crate::document::book::MaterialEntry;
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::material::MaterialError;
use crate::quantity::{Amount, Dimension, Mass, System};
use crate::show::{Shown, text};

request! {
    /// Asks for the mass of an amount of a material: m, ρV, βV or n·m_drop.
    pub struct DoseRequest {
        required {
            material: MaterialEntry,
            amount: Amount,
        }
        optional {
            measures: System,
        }
    }
}

response! {
    /// Mass of the amount.
    pub struct DoseResponse {
        /// Its mass.
        pub mass: Shown<Mass>,
        /// Whether it rests on the pharmacy's drop of 1/20 mL and not on the shop's own.
        pub pharmacy_drop: bool,
    }
}

impl DoseRequest {
    /// Weighs the amount.
    ///
    /// # Errors
    /// A property that is missing or cannot be, or an amount that is none of a material.
    pub fn answer(&self) -> Result<DoseResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let material = resolve::material(&At("/material"), &self.material, resolver.system)?;
        let mass = material.mass_of(&self.amount, resolver.system, "weighing the amount");
        let path = match mass {
            Err(MaterialError::Amount(_)) => At("/amount"),
            _ => At("/material"),
        };
        let mass = resolver.keep(&path, mass);
        let drops = self.amount.dimension() == Dimension::COUNT;
        let response = mass.map(|mass| DoseResponse {
            mass: text::mass(mass),
            pharmacy_drop: drops && !material.drop_is_calibrated(),
        });
        resolver.finish(response)
    }
}

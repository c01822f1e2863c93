//! What is done to a pot: vacuum, heat, and what the heat spends.

pub mod atmosphere;
pub mod budget;
pub mod degas;
mod figures;
pub mod gauge;
pub mod heat;
pub mod history;
pub mod vapor;

use uom::si::thermodynamic_temperature::kelvin;

use crate::quantity::ThermodynamicTemperature;

/// Whether a pot can have this temperature: from -73 °C to 427 °C.
fn is_a_pots(temperature: ThermodynamicTemperature) -> bool {
    (200.0..=700.0).contains(&temperature.get::<kelvin>())
}
//! What happens to a mix and its pieces: heat, vacuum, water.
pub mod drag;
pub mod seawater;
pub mod sink;

//! What is done to a pot and its pieces: vacuum, heat and what it spends, how long it stays hot and a shot sets,
//! how fast salt settles, the fall in water.

pub mod atmosphere;
pub mod budget;
pub mod chamber;
pub mod clock;
pub mod degas;
pub mod drag;
pub mod gauge;
pub mod heat;
pub mod history;
pub mod seawater;
pub mod settling;
pub mod shot_cooling;
pub mod sink;
pub mod vapor;

mod figures;

use uom::si::thermodynamic_temperature::kelvin;

use crate::quantity::ThermodynamicTemperature;

/// Whether a pot can have this temperature: from -73 °C to 427 °C.
fn is_a_pots(temperature: ThermodynamicTemperature) -> bool {
    (200.0..=700.0).contains(&temperature.get::<kelvin>())
}

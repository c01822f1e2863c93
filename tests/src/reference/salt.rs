//! Salt for a density, by trying.

use super::mix::{Part, density_g_per_ml};
use super::shot::piece_g;

/// A mix, and what goes into it with the salt.
#[derive(Debug, Clone)]
pub struct Body {
    /// The mix before salt.
    pub parts: Vec<Part>,
    /// Share of the finished volume that is air.
    pub voids: f64,
    /// The salt; its mass is not looked at.
    pub salt: Part,
    /// The softener that goes in with it; its mass is per gram of salt.
    pub softener: Part,
    /// Shot temperature.
    pub shot_celsius: f64,
}

/// The mix with salt and softener.
pub fn salted(body: &Body, salt_g: f64) -> Vec<Part> {
    let mut parts = body.parts.clone();
    parts.push(Part { mass_g: salt_g, ..body.salt });
    parts.push(Part { mass_g: salt_g * body.softener.mass_g, ..body.softener });
    parts
}

/// Density of the salted mix, cold and with its voids.
pub fn finished_g_per_ml(body: &Body, salt_g: f64) -> f64 {
    density_g_per_ml(&salted(body, salt_g), 20.0, body.voids)
}

/// Mass of a piece of the salted mix.
pub fn salted_piece_g(body: &Body, salt_g: f64, cavity_ml: f64, feed: f64) -> f64 {
    let parts = salted(body, salt_g);
    let hot = density_g_per_ml(&parts, body.shot_celsius, 0.0);
    let cold = density_g_per_ml(&parts, 20.0, 0.0);
    piece_g(cavity_ml, hot, cold, body.voids, feed)
}

/// Mean density of a salted piece with what it carries.
pub fn sink_g_per_ml(
    body: &Body,
    salt_g: f64,
    cavity_ml: f64,
    feed: f64,
    hook_g: f64,
    hook_ml: f64,
) -> f64 {
    let piece = salted_piece_g(body, salt_g, cavity_ml, feed);
    (piece + hook_g) / (piece / finished_g_per_ml(body, salt_g) + hook_ml)
}

/// The salt at which `property`, which rises with it, is `wanted`; between nothing and `most_g`.
pub fn salt_g(property: impl Fn(f64) -> f64, wanted: f64, most_g: f64) -> f64 {
    let (mut low, mut high) = (0.0, most_g);
    for _ in 0..200 {
        let middle = (low + high) / 2.0;
        if property(middle) < wanted {
            low = middle;
        } else {
            high = middle;
        }
    }
    (low + high) / 2.0
}

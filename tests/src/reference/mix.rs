//! Doses to masses, and what a mix weighs.

/// Mass of a liquid measured by volume.
pub fn liquid_g(volume_ml: f64, density_g_per_ml: f64) -> f64 {
    volume_ml * density_g_per_ml
}

/// Mass of a powder measured by volume, as scooped.
pub fn powder_g(scooped_ml: f64, scooped_g_per_ml: f64) -> f64 {
    scooped_ml * scooped_g_per_ml
}

/// Mass of a number of drops.
pub fn drops_g(count: f64, drop_g: f64) -> f64 {
    count * drop_g
}

/// Finished mass of a formula with doses per mass of base and doses as fractions of the finished mix.
pub fn finished_g(base_g: f64, per_base: &[f64], of_finished: &[f64]) -> f64 {
    base_g * (1.0 + per_base.iter().sum::<f64>()) / (1.0 - of_finished.iter().sum::<f64>())
}

/// A constituent of a mix.
#[derive(Debug, Clone, Copy)]
pub struct Part {
    /// Its mass.
    pub mass_g: f64,
    /// Its true density at 20 °C.
    pub density_g_per_ml: f64,
    /// Its volumetric thermal expansion.
    pub expansion_per_k: f64,
}

/// Mass of a mix.
pub fn mass_g(parts: &[Part]) -> f64 {
    parts.iter().map(|part| part.mass_g).sum()
}

/// Volume of a mix at a temperature, without voids.
pub fn volume_ml(parts: &[Part], celsius: f64) -> f64 {
    parts
        .iter()
        .map(|part| {
            let swelling = 1.0 + part.expansion_per_k * (celsius - 20.0);
            part.mass_g / part.density_g_per_ml * swelling
        })
        .sum()
}

/// Density of a mix at a temperature, with a share of its volume that is air.
pub fn density_g_per_ml(parts: &[Part], celsius: f64, voids: f64) -> f64 {
    mass_g(parts) / volume_ml(parts, celsius) * (1.0 - voids)
}

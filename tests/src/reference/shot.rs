//! Masses of a shot and of its pieces.

/// Mass of a piece that is fed a share of its contraction.
pub fn piece_g(cavity_ml: f64, hot: f64, cold: f64, voids: f64, feed: f64) -> f64 {
    cavity_ml * (1.0 - voids) * (hot + feed * (cold - hot))
}

/// Mass that fills the cavities and the sprue, and what topping adds.
pub fn fill_g(cavities_ml: &[f64], sprue_ml: f64, hot: f64, voids: f64, topped_g: f64) -> f64 {
    (cavities_ml.iter().sum::<f64>() + sprue_ml) * hot * (1.0 - voids) + topped_g
}

/// Mass that sprue and topping are short of; zero if they feed the pieces.
pub fn missing_g(
    cavities_ml: &[f64],
    sprue_ml: f64,
    (hot, cold, voids): (f64, f64, f64),
    topped_g: f64,
    feed: f64,
) -> f64 {
    let mut fed = 0.0;
    for &cavity in cavities_ml {
        fed += piece_g(cavity, hot, cold, voids, feed) - cavity * hot * (1.0 - voids);
    }
    (fed - sprue_ml * hot * (1.0 - voids) - topped_g).max(0.0)
}

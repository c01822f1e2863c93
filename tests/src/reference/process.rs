//! Vacuum, heat and the fall in water, as a textbook has them.

/// Pressure of the standard atmosphere at a geometric altitude, by its lapse of 6.5 K a kilometer.
pub fn air_kpa(altitude_m: f64) -> f64 {
    let geopotential_m = 6_356_766.0 * altitude_m / (6_356_766.0 + altitude_m);
    101.325 * (1.0 - 0.0065 * geopotential_m / 288.15).powf(5.255_88)
}

/// Air per liquid in a pot that rose by a factor while its air expanded by another:
/// 1 + a·expansion = rise·(1 + a).
pub fn air_per_liquid(rise: f64, expansion: f64) -> f64 {
    (rise - 1.0) / (expansion - rise)
}

/// Mean specific heat of a mix, by its parts as (g, J/(g K)).
pub fn specific_heat(parts: &[(f64, f64)]) -> f64 {
    let mass: f64 = parts.iter().map(|part| part.0).sum();
    parts.iter().map(|part| part.0 * part.1).sum::<f64>() / mass
}

/// How long a load takes: m·c·ΔT/P.
pub fn heating_s(mass_g: f64, specific_heat: f64, rise_k: f64, power_w: f64) -> f64 {
    mass_g * specific_heat * rise_k / power_w
}

/// The line y = a + b/m through points (m, y), by least squares of (a + b/m)/y - 1; both above zero here.
pub fn line(points: &[(f64, f64)]) -> (f64, f64) {
    let sum = |term: &dyn Fn(f64, f64) -> f64| points.iter().map(|&(m, y)| term(m, y)).sum::<f64>();
    let (aa, ab, bb) = (
        sum(&|_, y| 1.0 / (y * y)),
        sum(&|m, y| 1.0 / (m * y * y)),
        sum(&|m, y| 1.0 / (m * m * y * y)),
    );
    let (a1, b1) = (sum(&|_, y| 1.0 / y), sum(&|m, y| 1.0 / (m * y)));
    let determinant = aa * bb - ab * ab;
    ((a1 * bb - b1 * ab) / determinant, (b1 * aa - a1 * ab) / determinant)
}

/// Drag coefficient of a long cylinder across the flow, Cheng 2013.
pub fn cylinder_drag(reynolds: f64) -> f64 {
    11.0 * reynolds.powf(-0.75)
        + 0.9 * (1.0 - (-1000.0 / reynolds).exp())
        + 1.2 * (1.0 - (-(reynolds / 4500.0).powf(0.7)).exp())
}

/// A stick that sinks sideways, in SI units.
#[derive(Debug, Clone, Copy)]
pub struct Stick {
    /// Mass with its hook, less the water that both displace.
    pub in_water_kg: f64,
    /// Diameter.
    pub diameter_m: f64,
    /// Length.
    pub length_m: f64,
}

/// Its final speed, by trying: faster while its weight is more than the drag.
pub fn sink_m_per_s(stick: &Stick, water_kg_per_m3: f64, viscosity_pa_s: f64) -> f64 {
    let weight = stick.in_water_kg * 9.806_65;
    let mut speed = 0.001;
    let mut step = 0.01;
    while step > 1e-9 {
        let faster: f64 = speed + step;
        let reynolds = water_kg_per_m3 * faster * stick.diameter_m / viscosity_pa_s;
        let area = stick.diameter_m * stick.length_m;
        let drag = 0.5 * water_kg_per_m3 * faster * faster * area * cylinder_drag(reynolds);
        if drag < weight {
            speed = faster;
        } else {
            step /= 2.0;
        }
    }
    speed
}

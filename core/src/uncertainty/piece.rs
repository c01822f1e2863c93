//! How sure the weight of a piece is.

use super::{Estimate, Input, UncertaintyError, propagate};
use crate::quantity::{
    Mass, MassDensity, Measurable, Measured, Ratio, TemperatureCoefficient, TemperatureInterval,
    Volume,
};
use crate::shot::Melt;

/// The inputs of a piece's weight.
#[derive(Debug, Clone, PartialEq)]
pub struct PieceInputs {
    /// Volume of the cavity.
    pub cavity: Measured<Volume>,
    /// Density of the finished plastic at 20 °C, without voids.
    pub cold: Measured<MassDensity>,
    /// Its thermal expansion by volume.
    pub expansion: Measured<TemperatureCoefficient>,
    /// How much hotter than 20 °C it is shot.
    pub rise: Measured<TemperatureInterval>,
    /// Share of the volume that is air.
    pub voids: Measured<Ratio>,
    /// Share of its contraction that a piece draws from the sprue.
    pub feed: Measured<Ratio>,
}

impl PieceInputs {
    /// From the densities at 20 °C and as shot. The hot one errs with the cold one, and what it states itself counts on
    /// top: α ΔT = ρ₂₀/ρ_hot − 1, u(α ΔT) = (ρ₂₀/ρ_hot) u(ρ_hot)/ρ_hot. Voids and feed count as exact.
    #[must_use]
    pub fn of_densities(
        cavity: Measured<Volume>,
        cold: &Measured<MassDensity>,
        hot: &Measured<MassDensity>,
        voids: Ratio,
        feed: Ratio,
    ) -> Self {
        let rises = cold.value / hot.value;
        let unsure = hot.uncertainty.map_or(0.0, |unsure| (rises * (unsure / hot.value)).value);
        Self {
            cavity,
            cold: cold.clone(),
            expansion: Measured::new(
                TemperatureCoefficient::from_si(rises.value - 1.0),
                TemperatureCoefficient::from_si(unsure),
            ),
            rise: Measured::exact(TemperatureInterval::from_si(1.0)),
            voids: Measured::exact(voids),
            feed: Measured::exact(feed),
        }
    }
}

/// The weight of a piece, m = V_c (1 − φ) [ρ_hot + f (ρ₂₀ − ρ_hot)] with ρ_hot = ρ₂₀/(1 + α ΔT), and which
/// input makes it unsure.
///
/// # Errors
/// A number out of its range, as in [`Melt::piece`], or one that is so even within its uncertainty.
pub fn piece_weight(inputs: &PieceInputs) -> Result<Estimate<Mass>, UncertaintyError> {
    let list = [
        Input::of(&inputs.cavity, "cavity"),
        Input::of(&inputs.cold, "density"),
        Input::of(&inputs.expansion, "expansion"),
        Input::of(&inputs.rise, "shot temperature"),
        Input::of(&inputs.voids, "voids"),
        Input::of(&inputs.feed, "feed"),
    ];
    propagate(&list, |x| {
        let &[cavity, cold, expansion, rise, voids, feed] = x else {
            return Err(UncertaintyError::NoNumber);
        };
        let melt = Melt {
            hot: MassDensity::from_si(cold / (1.0 + expansion * rise)),
            cold: MassDensity::from_si(cold),
            voids: Ratio::from(voids),
        };
        melt.piece(Volume::from_si(cavity), Ratio::from(feed))
            .map_err(|error| UncertaintyError::refused(&error))
    })
}

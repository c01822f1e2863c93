//! The two densities of a powder, kept apart by their types.
//!
//! A powder is measured *as scooped*, with the air between its grains; in the mix it displaces its *true*
//! volume. Fine salt is about 1.2 g/mL in the spoon and 2.17 g/mL in the mix: taking one for the other is an
//! error of nearly a half, so neither converts to the other.

use alloc::borrow::Cow;

use crate::check::is_positive;
use crate::fault::Diagnose;
use crate::quantity::{Mass, MassDensity, Volume};

/// Mass per volume that the material itself displaces in a mix, air left out.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct TrueDensity(MassDensity);

/// Mass per volume as a spoon or cup holds it, level and not tapped, air between the grains included.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct ScoopedDensity(MassDensity);

/// What is wrong with a density.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum DensityError {
    /// Zero, negative, not finite or beyond belief.
    #[error("A density must be a number above zero.")]
    NotPositive,
}

impl Diagnose for DensityError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotPositive => "density-not-positive",
        }
    }

    fn help(&self) -> Cow<'static, str> {
        "Weigh a measured volume and divide: grams by milliliters, e.g. 1.03 g/mL.".into()
    }
}

fn checked(density: MassDensity) -> Result<MassDensity, DensityError> {
    if is_positive(density.value) { Ok(density) } else { Err(DensityError::NotPositive) }
}

impl TrueDensity {
    /// The true density `density`.
    ///
    /// # Errors
    /// [`DensityError::NotPositive`] unless it is a finite number above zero.
    pub fn new(density: MassDensity) -> Result<Self, DensityError> {
        checked(density).map(Self)
    }

    /// As a plain density.
    #[must_use]
    pub fn get(self) -> MassDensity {
        self.0
    }

    /// The volume that `mass` displaces: V = m/ρ.
    #[must_use]
    pub fn volume_of(self, mass: Mass) -> Volume {
        mass / self.0
    }

    /// The mass that displaces `volume`: m = ρV.
    #[must_use]
    pub fn mass_of(self, volume: Volume) -> Mass {
        volume * self.0
    }
}

impl ScoopedDensity {
    /// The as-scooped density `density`.
    ///
    /// # Errors
    /// [`DensityError::NotPositive`] unless it is a finite number above zero.
    pub fn new(density: MassDensity) -> Result<Self, DensityError> {
        checked(density).map(Self)
    }

    /// As a plain density.
    #[must_use]
    pub fn get(self) -> MassDensity {
        self.0
    }

    /// The volume that `mass` fills in a spoon or cup: V = m/β.
    #[must_use]
    pub fn scoop_of(self, mass: Mass) -> Volume {
        mass / self.0
    }

    /// The mass of a spoon or cup of `scooped`: m = βV.
    #[must_use]
    pub fn mass_of(self, scooped: Volume) -> Mass {
        scooped * self.0
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;

    #[rstest]
    #[case(0.0)]
    #[case(-1.2)]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    fn refuses_what_no_material_has(#[case] density: f64) {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(density);
        assert_eq!(TrueDensity::new(density), Err(DensityError::NotPositive));
        assert_eq!(ScoopedDensity::new(density), Err(DensityError::NotPositive));
    }

    #[test]
    fn a_scoop_weighs_less_than_it_would_solid() {
        let of = MassDensity::new::<gram_per_cubic_centimeter>;
        let scooped = ScoopedDensity::new(of(1.25)).unwrap();
        let solid = TrueDensity::new(of(2.165)).unwrap();
        // Half a US cup, 118.294 118 25 mL: displaces 68.299 mL (derived; plain arithmetic).
        let salt = scooped.mass_of(Volume::new::<milliliter>(118.294_118_25));
        assert!((salt.get::<gram>() - 147.867_647_8).abs() < 1e-6);
        assert!((solid.volume_of(salt).get::<milliliter>() - 68.299_144_49).abs() < 1e-6);
        assert!((scooped.scoop_of(salt).get::<milliliter>() - 118.294_118_25).abs() < 1e-9);
        let back = solid.mass_of(solid.volume_of(salt));
        assert!((back - salt).abs() <= 1e-15 * salt);
    }
}

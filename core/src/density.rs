//! The two densities of a powder, kept apart by their types.
//!
//! A powder is measured *as scooped*, with the air between its grains; in the mix it displaces its *true*
//! volume. Fine salt is about 1.2 g/mL in the spoon and 2.17 g/mL in the mix: taking one for the other is an
//! error of nearly a half, so neither converts to the other.

use core::fmt;

use crate::parameter::{Parameter, ParameterError};
use crate::quantity::{Mass, MassDensity, Volume};
use crate::show::legible::{InBenchUnits, plain};

/// Mass per volume that the material itself displaces in a mix, without air.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub struct TrueDensity(MassDensity);

/// Mass per volume as a spoon or cup holds it, level and not tapped, air between the grains included.
#[derive(Clone, Copy, PartialEq, PartialOrd)]
pub struct ScoopedDensity(MassDensity);

impl fmt::Debug for TrueDensity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("TrueDensity").field(&InBenchUnits(&self.0)).finish()
    }
}

impl fmt::Debug for ScoopedDensity {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_tuple("ScoopedDensity").field(&InBenchUnits(&self.0)).finish()
    }
}

plain! { TrueDensity, ScoopedDensity }

impl TrueDensity {
    /// The true density `density`.
    ///
    /// # Errors
    /// [`ParameterError`] of [`Parameter::Density`] unless it is from 0.001 to 25 g/mL.
    #[inline]
    pub fn new(density: MassDensity) -> Result<Self, ParameterError> {
        Parameter::Density.check_si(density.value).map(|_| Self(density))
    }

    /// The same, which the caller checks later.
    #[cfg(feature = "table")]
    #[inline]
    pub(crate) const fn unchecked(density: MassDensity) -> Self {
        Self(density)
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
    /// [`ParameterError`] of [`Parameter::AsScooped`] unless it is from 0.001 to 25 g/mL.
    #[inline]
    pub fn new(density: MassDensity) -> Result<Self, ParameterError> {
        Parameter::AsScooped.check_si(density.value).map(|_| Self(density))
    }

    /// The same, which the caller checks later.
    #[cfg(feature = "table")]
    #[inline]
    pub(crate) const fn unchecked(density: MassDensity) -> Self {
        Self(density)
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
    use crate::fault::Diagnose;

    #[rstest]
    #[case(0.0, "out-of-range")]
    #[case(-1.2, "out-of-range")]
    #[case(f64::NAN, "not-finite")]
    #[case(f64::INFINITY, "not-finite")]
    fn refuses_what_no_material_has(#[case] density: f64, #[case] code: &str) {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(density);
        assert_eq!(TrueDensity::new(density).unwrap_err().code(), code);
        assert_eq!(ScoopedDensity::new(density).unwrap_err().code(), code);
    }

    #[test]
    fn debug_shows_which_density_it_is() {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(1.25);
        let shown = std::format!("{:?}", TrueDensity::new(density).unwrap());
        assert_eq!(shown, "TrueDensity(1.25 g/mL)");
        let shown = std::format!("{:?}", ScoopedDensity::new(density).unwrap());
        assert_eq!(shown, "ScoopedDensity(1.25 g/mL)");
    }

    #[rstest]
    #[case(1030.0, "Did you mean 1.03 g/mL?")]
    #[case(0.000_9, "Did you mean 0.9 g/mL?")]
    #[case(2e6, "Weigh a measured volume and divide")]
    fn asks_back_where_nothing_has_it(#[case] density: f64, #[case] help: &str) {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(density);
        let error = TrueDensity::new(density).unwrap_err();
        assert!(error.help().starts_with(help), "{}", error.help());
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

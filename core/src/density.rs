//! The two densities of a powder, kept apart by their types.
//!
//! A powder is measured *as scooped*, with the air between its grains; in the mix it displaces its *true*
//! volume. Fine salt is about 1.2 g/mL in the spoon and 2.17 g/mL in the mix: taking one for the other is an
//! error of nearly a half, so neither converts to the other.

use alloc::borrow::Cow;
use alloc::format;

use crate::check::{is_density, is_positive};
use crate::fault::Diagnose;
use crate::quantity::{Mass, MassDensity, Volume};
use crate::show;

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
    /// Zero, negative or no number.
    #[error("A density must be a number above zero.")]
    NotPositive,
    /// Less than a gas has, or more than any metal.
    #[error("Nothing at a bench has a density of {}.", show::density(.0))]
    Unbelievable(MassDensity),
}

impl Diagnose for DensityError {
    fn code(&self) -> &'static str {
        match self {
            Self::NotPositive => "density-not-positive",
            Self::Unbelievable(_) => "density-unbelievable",
        }
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::NotPositive => {
                "Weigh a measured volume and divide: grams by milliliters, e.g. 1.03 g/mL.".into()
            }
            Self::Unbelievable(found) => match meant(*found) {
                Some(meant) => {
                    format!("Was {} meant? 1 g/mL is 1000 kg/m³.", show::density(&meant)).into()
                }
                None => "It lies from 0.001 to 25 g/mL: weigh a measured volume and divide.".into(),
            },
        }
    }
}

/// What was meant where grams per milliliter and kilograms per cubic meter were taken for each other.
fn meant(found: MassDensity) -> Option<MassDensity> {
    [found / 1000.0, found * 1000.0].into_iter().find(|meant| is_density(meant.value))
}

/// The density, if something at a bench can have it: from 0.001 to 25 g/mL.
///
/// # Errors
/// [`DensityError`]: it cannot.
#[inline]
pub(crate) fn believed(density: MassDensity) -> Result<MassDensity, DensityError> {
    if is_density(density.value) {
        Ok(density)
    } else if is_positive(density.value) {
        Err(DensityError::Unbelievable(density))
    } else {
        Err(DensityError::NotPositive)
    }
}

impl TrueDensity {
    /// The true density `density`.
    ///
    /// # Errors
    /// [`DensityError`] unless it lies from 0.001 to 25 g/mL.
    #[inline]
    pub fn new(density: MassDensity) -> Result<Self, DensityError> {
        believed(density).map(Self)
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
    /// [`DensityError`] unless it lies from 0.001 to 25 g/mL.
    #[inline]
    pub fn new(density: MassDensity) -> Result<Self, DensityError> {
        believed(density).map(Self)
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

    #[rstest]
    #[case(1030.0, "Was 1.03 g/mL meant?")]
    #[case(0.000_9, "Was 0.9 g/mL meant?")]
    #[case(2e6, "It lies from 0.001 to 25 g/mL")]
    fn asks_back_where_nothing_has_it(#[case] density: f64, #[case] help: &str) {
        let density = MassDensity::new::<gram_per_cubic_centimeter>(density);
        let error = TrueDensity::new(density).unwrap_err();
        assert_eq!(error, DensityError::Unbelievable(density));
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

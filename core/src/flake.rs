//! Flake: its cut, how many particles a dose holds, and what takes its place.
//!
//! A particle is a piece of film of thickness h and density ρ: m = A·h·ρ. The size s of a cut is
//! the distance across the flats of a hexagon or a square, or the diameter of a round:
//! A = (√3/2)s², s², (π/4)s². Real particles are cut a little smaller, so a count is a nominal one.

mod cut;

use alloc::borrow::Cow;
use alloc::format;

use uom::si::length::micrometer;
use uom::si::ratio::ratio;

use crate::codes::codes;
use crate::density::{ScoopedDensity, TrueDensity};
use crate::fault::Diagnose;
use crate::parameter::{Parameter, ParameterError, ParameterErrors};
use crate::quantity::{Area, Length, Mass, Ratio, Volume};
use crate::show::{Figure, density};
use crate::words::words;

pub use cut::{Cut, CutError, CutShape};

/// Flake of one cut.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flake {
    cut: Cut,
    thickness: Length,
    film: TrueDensity,
    scooped: Option<ScoopedDensity>,
}

words! {
    /// The measure that two doses of flake have in common.
    pub enum Alike {
        /// As many particles.
        Count = "count",
        /// As much film area: the same cover, seen from above.
        Area = "area",
    }
}

/// A dose of another flake in place of one.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Swap {
    /// Mass of the other dose.
    pub mass: Mass,
    /// Volume to scoop of it; `None` if its bulk density is not known.
    pub scoop: Option<Volume>,
    /// Number of particles in the other dose over that in the first.
    pub count: Ratio,
    /// The film area of the other dose over that of the first.
    pub area: Ratio,
}

/// A flake or a dose of it that cannot be.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FlakeError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// A film that is no thinner than its cut.
    #[error("A film of {} µm is none for a cut of {}.", .thickness.get::<micrometer>(), .cut)]
    Thickness {
        /// The thickness that was given.
        thickness: Length,
        /// The cut.
        cut: Cut,
    },
    /// A spoonful that weighs as much as solid film, or more.
    #[error("Flake as scooped has {}, its film {}.", density(&.scooped.get()), density(&.film.get()))]
    Scooped {
        /// As scooped.
        scooped: ScoopedDensity,
        /// The film.
        film: TrueDensity,
    },
    /// Not known what a spoonful weighs.
    #[error("It is not known what a spoonful of this flake weighs.")]
    NoScoop,
}

impl Diagnose for FlakeError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::Thickness { .. } => "flake-thickness",
        Self::Scooped { .. } => "flake-as-scooped",
        Self::NoScoop => "flake-no-scoop",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::Thickness { cut, .. } => format!(
                "Give the thickness of the film, above zero and below {}; check the unit.",
                Figure::new(cut.size().get::<micrometer>(), " µm").at_most()
            )
            .into(),
            Self::Scooped { .. } => {
                "Give both densities, as scooped the smaller: weigh a level spoonful.".into()
            }
            Self::NoScoop => {
                "Weigh a level spoonful of it and give its as-scooped density, or weigh the dose."
                    .into()
            }
        }
    }

    fn numbers(&self) -> &[ParameterError] {
        match self {
            Self::Parameters(errors) => errors.numbers(),
            _ => &[],
        }
    }

    fn parameter(&self) -> Option<Parameter> {
        match self {
            Self::Parameters(errors) => errors.parameter(),
            Self::Thickness { .. } => Some(Parameter::Thickness),
            Self::Scooped { .. } | Self::NoScoop => Some(Parameter::AsScooped),
        }
    }
}

impl From<ParameterError> for FlakeError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

impl Flake {
    /// Flake of this `cut` from a film of `thickness` and true density `film`; `scooped` is what a
    /// spoon holds of this very cut, which differs from cut to cut.
    ///
    /// # Errors
    /// [`FlakeError::Thickness`] for a film that is not above zero and thinner than its cut;
    /// [`FlakeError::Scooped`] for a spoonful no lighter than solid film.
    pub fn new(
        cut: Cut,
        thickness: Length,
        film: TrueDensity,
        scooped: Option<ScoopedDensity>,
    ) -> Result<Self, FlakeError> {
        Parameter::Thickness.check_si(thickness.value)?;
        if thickness >= cut.size() {
            return Err(FlakeError::Thickness { thickness, cut });
        }
        if let Some(scooped) = scooped.filter(|scooped| scooped.get() >= film.get()) {
            return Err(FlakeError::Scooped { scooped, film });
        }
        Ok(Self { cut, thickness, film, scooped })
    }

    /// The cut.
    #[must_use]
    pub fn cut(&self) -> Cut {
        self.cut
    }

    /// The mass of one particle, A·h·ρ.
    #[must_use]
    pub fn particle(&self) -> Mass {
        self.film.mass_of(self.cut.area() * self.thickness)
    }

    /// How many particles `dose` holds, in a pot or in a piece: m/(A·h·ρ), not rounded.
    ///
    /// A gram holds `flake.particles(1 g)`; a piece what its share of the pot's flake makes, that is
    /// its mass times the flake's mass fraction.
    ///
    /// # Errors
    /// A dose out of its range.
    pub fn particles(&self, dose: Mass) -> Result<f64, FlakeError> {
        check_dose(dose)?;
        Ok((dose / self.particle()).get::<ratio>())
    }

    /// The area of film in `dose`, one face of every particle: m/(h·ρ).
    ///
    /// # Errors
    /// A dose out of its range.
    pub fn area(&self, dose: Mass) -> Result<Area, FlakeError> {
        check_dose(dose)?;
        Ok(self.film.volume_of(dose) / self.thickness)
    }

    /// Share of what is behind it that `dose` in `volume` of plastic hides, seen through `depth` of it: 1 − e^(−a t/2), a the
    /// area of film per volume, t the depth. Particles lie at random: a flat one then casts a shadow of half its face on average
    /// (A. Cauchy: a quarter of the surface of a convex body), and shadows overlap at random (Poisson).
    ///
    /// # Errors
    /// A dose out of its range; a volume or a depth that is not above zero.
    pub fn hides(&self, dose: Mass, volume: Volume, depth: Length) -> Result<Ratio, FlakeError> {
        Parameter::LiquidVolume.check_si(volume.value)?;
        Parameter::PieceThickness.check_si(depth.value)?;
        let shadows: Ratio = self.area(dose)? / volume * depth * 0.5;
        Ok(Ratio::from(-libm::expm1(-shadows.value)))
    }

    /// Volume to scoop for `dose`, level: m/β.
    ///
    /// # Errors
    /// A dose out of its range; [`FlakeError::NoScoop`] if the bulk
    /// density is not known.
    pub fn scoop(&self, dose: Mass) -> Result<Volume, FlakeError> {
        check_dose(dose)?;
        Ok(self.scooped.ok_or(FlakeError::NoScoop)?.scoop_of(dose))
    }

    /// Dose of `other` in place of `dose` of this, with the same number of particles or the same area.
    ///
    /// The two are not the same: at an equal count a cut of half the size covers a quarter, at an equal
    /// area it has four times the particles. The result has both.
    ///
    /// # Errors
    /// A dose out of its range.
    pub fn swap(&self, dose: Mass, other: &Self, alike: Alike) -> Result<Swap, FlakeError> {
        let mass: Mass = match alike {
            Alike::Count => other.particle() * self.particles(dose)?,
            Alike::Area => other.film.mass_of(self.area(dose)? * other.thickness),
        };
        Ok(Swap {
            mass,
            scoop: other.scooped.map(|scooped| scooped.scoop_of(mass)),
            count: Ratio::from(other.particles(mass)? / self.particles(dose)?),
            area: other.area(mass)? / self.area(dose)?,
        })
    }
}

fn check_dose(dose: Mass) -> Result<(), ParameterError> {
    Parameter::FlakeDose.check_si(dose.value).map(|_| ())
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use std::string::ToString;
    use uom::si::area::square_millimeter;
    use uom::si::length::millimeter;
    use uom::si::mass::gram;
    use uom::si::mass_density::gram_per_cubic_centimeter;
    use uom::si::volume::milliliter;

    use super::*;
    use crate::quantity::MassDensity;

    fn g(mass: f64) -> Mass {
        Mass::new::<gram>(mass)
    }

    /// PET film of 50 µm, 0.5 g/mL as scooped.
    fn flake(cut: &str) -> Flake {
        film(cut, 50.0, Some(0.5)).unwrap()
    }

    fn film(cut: &str, micrometers: f64, scooped: Option<f64>) -> Result<Flake, FlakeError> {
        let density = MassDensity::new::<gram_per_cubic_centimeter>;
        Flake::new(
            Cut::parse(cut).unwrap(),
            Length::new::<micrometer>(micrometers),
            TrueDensity::new(density(1.39)).unwrap(),
            scooped.map(|scooped| ScoopedDensity::new(density(scooped)).unwrap()),
        )
    }

    /// Plain arithmetic: s = 0.889 mm, A = (√3/2)s² = 0.684 438 mm², m = A·0.05 mm·1.39 mg/mm³.
    #[rstest]
    #[case(".035 hex", 0.684_438)]
    #[case(".035 square", 0.790_321)]
    #[case(".035 round", 0.620_717)]
    fn a_gram_counted(#[case] cut: &str, #[case] area_mm2: f64) {
        let flake = flake(cut);
        let count = flake.particles(g(1.0)).unwrap();
        assert!((count * area_mm2 * 0.05 * 1.39e-3 - 1.0).abs() < 1e-5, "{count}");
        let area = flake.area(g(1.0)).unwrap().get::<square_millimeter>();
        assert!((area - count * flake.cut().area().get::<square_millimeter>()).abs() < 1e-6 * area);
    }

    #[test]
    fn half_the_size_four_times_the_count() {
        let (coarse, fine) = (flake(".062 hex"), flake(".031 hex"));
        let by_count = coarse.swap(g(2.0), &fine, Alike::Count).unwrap();
        assert!((by_count.mass.get::<gram>() - 0.5).abs() < 1e-12);
        assert!((by_count.area.value - 0.25).abs() < 1e-12);
        assert!((by_count.scoop.unwrap().get::<milliliter>() - 1.0).abs() < 1e-12);
        let by_area = coarse.swap(g(2.0), &fine, Alike::Area).unwrap();
        assert!((by_area.mass.get::<gram>() - 2.0).abs() < 1e-12);
        assert!((by_area.count.value - 4.0).abs() < 1e-12);
    }

    /// 1.39 g of film of 50 µm in 1 L are 200 cm² per L, 20 per m: seen through 50 mm, 1 − e^(−0.5).
    #[test]
    fn what_flake_hides_by_hand() {
        let hides = |grams: f64, depth: f64| {
            let (liter, depth) =
                (Volume::new::<milliliter>(1000.0), Length::new::<millimeter>(depth));
            flake(".035 hex").hides(g(grams), liter, depth).unwrap().value
        };
        assert!((hides(1.39, 50.0) - (1.0 - libm::exp(-0.5))).abs() < 1e-12);
        assert!((hides(0.695, 100.0) - hides(1.39, 50.0)).abs() < 1e-12);
        let none =
            flake(".035 hex").hides(g(1.0), Volume::default(), Length::new::<millimeter>(1.0));
        assert!(none.is_err());
        let deep = Length::new::<millimeter>(-1.0);
        assert!(flake(".035 hex").hides(g(1.0), Volume::new::<milliliter>(1.0), deep).is_err());
    }

    #[test]
    fn a_spoonful_must_be_known() {
        let unknown = film(".035", 50.0, None).unwrap();
        assert_eq!(unknown.scoop(g(1.0)).unwrap_err().code(), "flake-no-scoop");
        assert_eq!(flake(".035").swap(g(1.0), &unknown, Alike::Count).unwrap().scoop, None);
        assert!((flake(".035").scoop(g(1.0)).unwrap().get::<milliliter>() - 2.0).abs() < 1e-12);
    }

    #[test]
    fn films_that_are_none() {
        for micrometers in [0.0, -1.0, f64::NAN] {
            let refused = film(".035", micrometers, None).unwrap_err();
            assert_eq!(refused.code(), crate::parameter::refused_as(micrometers));
        }
        assert_eq!(film(".035", 890.0, None).unwrap_err().code(), "flake-thickness");
        assert_eq!(
            film(".035", 900.0, None).unwrap_err().to_string(),
            "A film of 900 µm is none for a cut of .035 in hex (0.889 mm)."
        );
        assert_eq!(film(".035", 50.0, Some(1.4)).unwrap_err().code(), "flake-as-scooped");
        assert_eq!(film(".035", 50.0, Some(1.39)).unwrap_err().code(), "flake-as-scooped");
        let Flake { cut, film: density, .. } = flake(".035");
        let cube = Flake::new(cut, cut.size(), density, None).unwrap_err();
        assert_eq!(
            (cube.code(), cube.parameter()),
            ("flake-thickness", Some(Parameter::Thickness))
        );
        assert!(cube.help().contains("below 889 µm"), "{}", cube.help());
    }

    #[rstest]
    #[case(0.0)]
    #[case(-1.0)]
    #[case(f64::NAN)]
    #[case(f64::INFINITY)]
    fn doses_that_are_none(#[case] grams: f64) {
        let flake = flake(".035");
        for code in [
            flake.particles(g(grams)).unwrap_err().code(),
            flake.area(g(grams)).unwrap_err().code(),
            flake.scoop(g(grams)).unwrap_err().code(),
            flake.swap(g(grams), &flake, Alike::Count).unwrap_err().code(),
        ] {
            assert_eq!(code, crate::parameter::refused_as(grams));
        }
    }

    proptest! {
        #[test]
        fn a_swap_and_back_is_none(grams in 0.01..100.0f64, a in 0.01..0.2f64, b in 0.01..0.2f64) {
            let [a, b] = [a, b].map(|inches| flake(&std::format!("{inches:.4} in")));
            for alike in [Alike::Count, Alike::Area] {
                let there = a.swap(g(grams), &b, alike).unwrap();
                let back = b.swap(there.mass, &a, alike).unwrap();
                prop_assert!((back.mass.get::<gram>() - grams).abs() <= 1e-12 * grams);
                let same = if alike == Alike::Count { there.count } else { there.area };
                prop_assert!((same.value - 1.0).abs() <= 1e-12);
            }
        }
    }
}

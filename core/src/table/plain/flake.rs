//! Flake.

use super::of;
use crate::density::{ScoopedDensity, TrueDensity};
use crate::flake::{Alike, Cut, Flake};
use crate::parameter::{Check, Parameter, ParameterError, PlainUnit, Problem};
use crate::quantity::{Length, Mass, MassDensity, Measurable};
use crate::table::{Refusal, calculation};

/// The film of a flake: thickness, density, and bulk density of the cut, each with the parameter that states it.
struct Film {
    thickness: (Parameter, f64),
    density: (Parameter, f64),
    as_scooped: Option<(Parameter, f64)>,
}

impl Film {
    fn check(&self, check: &mut Check) -> Option<(TrueDensity, Option<ScoopedDensity>, Length)> {
        let named =
            |(parameter, plain): (Parameter, f64)| (parameter, of::<MassDensity>(parameter, plain));
        let (name, density) = named(self.density);
        let film = check.keep(TrueDensity::new(density).map_err(|error| error.of(name)));
        let scooped = match self.as_scooped.map(named) {
            None => Some(None),
            Some((name, density)) => {
                let scooped = ScoopedDensity::new(density).map_err(|error| error.of(name));
                check.keep(scooped).map(Some)
            }
        };
        let thickness: Length = of(self.thickness.0, self.thickness.1);
        check.number(self.thickness.0, thickness.si());
        Some((film?, scooped?, thickness))
    }
}

calculation! {
    /// Number of particles in a dose of flake, nominal: m/(A·h·ρ), A the face of the cut, h the thickness of the film.
    ///
    /// A = (√3/2)s² of a hexagon, s² of a square, (π/4)s² of a disk. Real particles are cut a little smaller.
    FLAKE_COUNT = "flake_count": FlakeCount<'a> -> FlakeCountResult
    takes {
        cut: &'a str = Cut,
        thickness_um: f64 = Thickness,
        film_density_g_per_ml: f64 = FilmDensity,
        flake_dose_g: f64 = FlakeDose,
    }
    gives {
        /// Number of particles, not rounded.
        particles: f64 = "particles" Pure,
        /// Area of film, one face of every particle.
        area_cm2: f64 = "area" SquareCentimeter,
    }
    request "flake"
    example FlakeCount {
        cut: "1 mm square",
        thickness_um: 50.0,
        film_density_g_per_ml: 1.4,
        flake_dose_g: 0.7,
    } => FlakeCountResult { particles: 10_000.0, area_cm2: 100.0 };
}

impl FlakeCount<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a cut that cannot be read; a film that is not thinner than its cut.
    pub fn calculate(&self) -> Result<FlakeCountResult, Refusal> {
        let dose: Mass = of(Parameter::FlakeDose, self.flake_dose_g);
        let film = Film {
            thickness: (Parameter::Thickness, self.thickness_um),
            density: (Parameter::FilmDensity, self.film_density_g_per_ml),
            as_scooped: None,
        };
        let mut check = Check::new();
        let film = film.check(&mut check);
        check.number(Parameter::FlakeDose, dose.si());
        check.finish()?;
        let flake = flake(self.cut, film)?;
        Ok(FlakeCountResult {
            particles: flake.particles(dose)?,
            area_cm2: PlainUnit::SquareCentimeter.from_si(flake.area(dose)?.value),
        })
    }
}

fn flake(
    cut: &str,
    film: Option<(TrueDensity, Option<ScoopedDensity>, Length)>,
) -> Result<Flake, Refusal> {
    let cut = Cut::parse(cut)?;
    let missing = || ParameterError::new(Parameter::FilmDensity, Problem::Missing);
    let (film, scooped, thickness) = film.ok_or_else(missing)?;
    Ok(Flake::new(cut, thickness, film, scooped)?)
}

calculation! {
    /// Dose of another flake in place of one, with as much area or as many particles.
    ///
    /// The two are not the same: at an equal count a cut of half the size covers a quarter. The answer gives both.
    FLAKE_SWAP = "flake_swap": FlakeSwap<'a> -> FlakeSwapResult
    takes {
        cut: &'a str = Cut,
        thickness_um: f64 = Thickness,
        film_density_g_per_ml: f64 = FilmDensity,
        flake_dose_g: f64 = FlakeDose,
        other_cut: &'a str = OtherCut,
        other_thickness_um: f64 = OtherThickness,
        other_film_density_g_per_ml: f64 = OtherFilmDensity,
        other_as_scooped_g_per_ml: Option<f64> = OtherAsScooped,
        alike: Option<Alike> = Alike,
    }
    gives {
        /// Mass of the other flake.
        mass_g: f64 = "mass" Gram,
        /// Volume to scoop of it, where its bulk density is given.
        scoop_ml: Option<f64> = "scoop" Milliliter,
        /// Particles of the other dose over those of the first.
        count_ratio: f64 = "count_ratio" Pure,
        /// Area of the other dose over that of the first.
        area_ratio: f64 = "area_ratio" Pure,
    }
    request "flake"
    example FlakeSwap {
        cut: "1 mm square",
        thickness_um: 50.0,
        film_density_g_per_ml: 1.4,
        flake_dose_g: 0.7,
        other_cut: "0.5 mm square",
        other_thickness_um: 50.0,
        other_film_density_g_per_ml: 1.4,
        other_as_scooped_g_per_ml: Some(0.35),
        alike: None,
    } => FlakeSwapResult { mass_g: 0.7, scoop_ml: Some(2.0), count_ratio: 4.0, area_ratio: 1.0 };
}

impl FlakeSwap<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a cut that cannot be read; a film that is not thinner than its cut.
    pub fn calculate(&self) -> Result<FlakeSwapResult, Refusal> {
        let dose: Mass = of(Parameter::FlakeDose, self.flake_dose_g);
        let one = Film {
            thickness: (Parameter::Thickness, self.thickness_um),
            density: (Parameter::FilmDensity, self.film_density_g_per_ml),
            as_scooped: None,
        };
        let other = Film {
            thickness: (Parameter::OtherThickness, self.other_thickness_um),
            density: (Parameter::OtherFilmDensity, self.other_film_density_g_per_ml),
            as_scooped: self
                .other_as_scooped_g_per_ml
                .map(|scooped| (Parameter::OtherAsScooped, scooped)),
        };
        let mut check = Check::new();
        let (one, other) = (one.check(&mut check), other.check(&mut check));
        check.number(Parameter::FlakeDose, dose.si());
        check.finish()?;
        let (one, other) = (flake(self.cut, one)?, flake(self.other_cut, other)?);
        let swap = one.swap(dose, &other, self.alike.unwrap_or(Alike::Area))?;
        let scoop = swap.scoop.map(|scoop| PlainUnit::Milliliter.from_si(scoop.si()));
        Ok(FlakeSwapResult {
            mass_g: PlainUnit::Gram.from_si(swap.mass.si()),
            scoop_ml: scoop,
            count_ratio: swap.count.value,
            area_ratio: swap.area.value,
        })
    }
}

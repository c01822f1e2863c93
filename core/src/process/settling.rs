//! How fast salt settles in a pot, and how often to stir.
//!
//! A grain of diameter d and density ρ_s sinks in a melt of density ρ and viscosity μ at the speed v_t at which
//! drag balances its weight, π/6 d³ (ρ_s − ρ) g = π/8 C_D ρ v² d², with C_D = 24/Re (1 + 0.15 Re^0.687), Re =
//! ρ v d/μ up to 800 (L. Schiller, A. Naumann 1933): Stokes' law, g d² (ρ_s − ρ)/(18 μ), where Re is small.
//! Among others, a share φ of the volume, it sinks at v_t (1 − φ)^n: n = 4.65 up to Re 0.2, 4.35 Re^-0.03 up to 1,
//! 4.45 Re^-0.1 up to 500, 2.39 beyond (J. F. Richardson, W. N. Zaki 1954; d much smaller than the vessel).
//!
//! A grain of salt is a cube: one that passes a sieve of opening a has the edge a, the volume of a ball of 1.241 a,
//! and sinks 1.08 times slower than that ball, 1.43 times as fast as a ball of diameter a. No viscosity of such
//! melts is published: it is the maker's, from a ball that was timed, or a range.

use alloc::borrow::Cow;

use uom::si::acceleration::standard_gravity;
use uom::si::f64::Acceleration;
use uom::si::length::meter;
use uom::si::velocity::meter_per_second;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::parameter::{Check, Parameter, ParameterError, ParameterErrors};
use crate::quantity::{DynamicViscosity, Length, MassDensity, Measurable, Ratio, Time, Velocity};
use crate::show::{density, number};

/// Edge of a cube to the diameter of a ball of its volume, (6/π)^(1/3), and how much slower than that ball the cube
/// sinks (dynamic shape factor, from memory).
const BALL_OF_CUBE: f64 = 1.240_700_981_798_8;
const CUBE_SLOWER: f64 = 1.08;

/// The largest Reynolds number of the drag's equation.
const MOST_REYNOLDS: f64 = 800.0;

/// The form of a grain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Grain {
    /// A ball of this diameter.
    Ball,
    /// A cube that passes a sieve of this opening, as salt is.
    Cube,
}

/// Grains in a melt.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Suspension {
    /// Their form.
    pub grain: Grain,
    /// Their size: a diameter, or the opening of the sieve they pass.
    pub size: Length,
    /// Their true density.
    pub solid: MassDensity,
    /// Density of the melt, hot.
    pub melt: MassDensity,
    /// Their share of the volume.
    pub solids: Ratio,
}

/// How fast grains settle.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Settling {
    /// The speed of one grain alone.
    pub alone: Velocity,
    /// The speed among the others.
    pub speed: Velocity,
    /// The Reynolds number of one alone.
    pub reynolds: f64,
}

/// Why a settling cannot be calculated.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum SettlingError {
    /// Numbers that are wrong.
    #[error(transparent)]
    Parameters(#[from] ParameterErrors),
    /// Grains that do not sink.
    #[error("Grains of {} do not sink in a melt of {}.", density(.solid), density(.melt))]
    Floats {
        /// Of the grains.
        solid: MassDensity,
        /// Of the melt.
        melt: MassDensity,
    },
    /// Faster than the drag's equation holds.
    #[error("The grains sink at a Reynolds number above {}.", number(MOST_REYNOLDS))]
    TooFast,
}

impl Diagnose for SettlingError {
    codes! {
        Self::Parameters(errors) => errors.code(),
        Self::Floats { .. } => "settling-floats",
        Self::TooFast => "settling-too-fast",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Parameters(errors) => errors.help(),
            Self::Floats { .. } => "They need no stirring against settling; check the densities.".into(),
            Self::TooFast => {
                "Check the size of the grains and the viscosity; in so thin a melt stir all the time.".into()
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
            Self::Floats { .. } => Some(Parameter::MeltDensity),
            Self::TooFast => None,
        }
    }
}

/// The drag coefficient of a ball, 24/Re (1 + 0.15 Re^0.687); `None` above a Reynolds number of 800.
#[must_use]
pub fn drag(reynolds: f64) -> Option<f64> {
    (reynolds > 0.0 && reynolds <= MOST_REYNOLDS)
        .then(|| 24.0 / reynolds * (1.0 + 0.15 * libm::pow(reynolds, 0.687)))
}

/// How much slower grains sink that are a share `solids` of the volume, (1 − φ)^n, one alone at the `reynolds`
/// number.
///
/// # Errors
/// [`SettlingError::Parameters`] for a share outside 0 to 40 %.
pub fn hindrance(solids: Ratio, reynolds: f64) -> Result<f64, SettlingError> {
    Parameter::SolidsShare.check_si(solids.value)?;
    let n = match reynolds {
        ..0.2 => 4.65,
        ..1.0 => 4.35 * libm::pow(reynolds, -0.03),
        ..500.0 => 4.45 * libm::pow(reynolds, -0.1),
        _ => 2.39,
    };
    Ok(libm::pow(1.0 - solids.value, n))
}

impl Suspension {
    /// How fast the grains settle in a melt of this `viscosity`.
    ///
    /// # Errors
    /// [`SettlingError::Floats`]; [`SettlingError::TooFast`] above a Reynolds number of 800;
    /// [`SettlingError::Parameters`].
    pub fn settling(&self, viscosity: DynamicViscosity) -> Result<Settling, SettlingError> {
        let mut check = self.checked();
        check.number(Parameter::MeltViscosity, viscosity.value);
        check.finish()?;
        let (diameter, slower) = self.ball()?;
        let drive = self.drive(diameter);
        let drag_of = |speed: f64| {
            let reynolds = self.melt.value * speed * diameter / viscosity.value;
            drag(reynolds).map(|c| (reynolds, c * speed * speed))
        };
        // C_D v² rises with v, and Stokes' law is an upper bound of v.
        let stokes = drive * self.melt.value * diameter / (24.0 * viscosity.value);
        let (mut low, mut high) = (0.0, stokes);
        for _ in 0..100 {
            let middle = 0.5 * (low + high);
            match drag_of(middle) {
                Some((_, pull)) if pull < drive => low = middle,
                _ => high = middle,
            }
        }
        let reynolds = self.melt.value * high * diameter / viscosity.value;
        if reynolds > MOST_REYNOLDS * (1.0 - 1e-9) {
            return Err(SettlingError::TooFast);
        }
        let alone = Velocity::new::<meter_per_second>(high / slower);
        Ok(Settling { alone, speed: alone * hindrance(self.solids, reynolds)?, reynolds })
    }

    /// The viscosity of a melt in which one such grain, alone, sinks `depth` in `time`: a ball that was timed.
    ///
    /// # Errors
    /// [`SettlingError::TooFast`] where Re is above 800; [`SettlingError::Floats`]; [`SettlingError::Parameters`].
    pub fn viscosity(&self, depth: Length, time: Time) -> Result<DynamicViscosity, SettlingError> {
        let mut check = self.checked();
        check.number(Parameter::BallDepth, depth.value).number(Parameter::BallTime, time.value);
        check.finish()?;
        let (diameter, slower) = self.ball()?;
        let speed = (depth / time).value * slower;
        let drive = self.drive(diameter);
        // C_D falls as Re rises: Re is found by halving, in its logarithm.
        let wanted = drive / (speed * speed);
        if drag(MOST_REYNOLDS).is_none_or(|least| wanted < least) {
            return Err(SettlingError::TooFast);
        }
        let (mut low, mut high) = (1e-12, MOST_REYNOLDS);
        for _ in 0..200 {
            let middle = libm::sqrt(low * high);
            match drag(middle) {
                Some(c) if c > wanted => low = middle,
                _ => high = middle,
            }
        }
        let found = self.melt.value * speed * diameter / high;
        Ok(DynamicViscosity::from_si(Parameter::MeltViscosity.check_si(found)?))
    }

    /// Its numbers, checked.
    pub(crate) fn checked(&self) -> Check {
        let (size, density) = match self.grain {
            Grain::Cube => (Parameter::Grain, Parameter::GrainDensity),
            Grain::Ball => (Parameter::BallDiameter, Parameter::BallDensity),
        };
        let mut check = Check::new();
        check
            .number(size, self.size.value)
            .number(density, self.solid.value)
            .number(Parameter::MeltDensity, self.melt.value)
            .number(Parameter::SolidsShare, self.solids.value);
        check
    }

    /// The diameter in m of the ball that sinks like a grain, and how much slower than it the grain sinks.
    fn ball(&self) -> Result<(f64, f64), SettlingError> {
        if self.solid <= self.melt {
            return Err(SettlingError::Floats { solid: self.solid, melt: self.melt });
        }
        Ok(match self.grain {
            Grain::Ball => (self.size.get::<meter>(), 1.0),
            Grain::Cube => (self.size.get::<meter>() * BALL_OF_CUBE, CUBE_SLOWER),
        })
    }

    /// C_D v² at the balance of weight and drag: 4/3 g d (ρ_s − ρ)/ρ.
    fn drive(&self, diameter: f64) -> f64 {
        let g = Acceleration::new::<standard_gravity>(1.0).value;
        4.0 / 3.0 * g * diameter * (self.solid.value - self.melt.value) / self.melt.value
    }
}

impl Settling {
    /// How often to stir, so that the top `share` of the `depth` is not left without grains: share · depth/v.
    ///
    /// # Errors
    /// [`SettlingError::Parameters`] for a depth or a share outside its range.
    pub fn stir_every(&self, depth: Length, share: Ratio) -> Result<Time, SettlingError> {
        let mut check = Check::new();
        check.number(Parameter::MeltDepth, depth.value).number(Parameter::Unstirred, share.value);
        check.finish()?;
        Ok(depth * share / self.speed)
    }
}

impl From<ParameterError> for SettlingError {
    fn from(error: ParameterError) -> Self {
        Self::Parameters(error.into())
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::dynamic_viscosity::pascal_second;
    use uom::si::length::micrometer;
    use uom::si::mass_density::kilogram_per_cubic_meter;
    use uom::si::time::second;

    use super::*;

    fn salt(micrometers: f64, solids: f64) -> Suspension {
        Suspension {
            grain: Grain::Ball,
            size: Length::new::<micrometer>(micrometers),
            solid: MassDensity::new::<kilogram_per_cubic_meter>(2165.0),
            melt: MassDensity::new::<kilogram_per_cubic_meter>(930.0),
            solids: Ratio::from(solids),
        }
    }

    fn pa_s(viscosity: f64) -> DynamicViscosity {
        DynamicViscosity::new::<pascal_second>(viscosity)
    }

    /// n of Richardson and Zaki (1954) in each range of Re and at its ends.
    #[rstest]
    #[case(0.1, 4.65)]
    #[case(0.2, 4.565_18)] // 4.35 · 0.2^-0.03
    #[case(0.5, 4.441_40)] // 4.35 · 0.5^-0.03
    #[case(1.0, 4.45)]
    #[case(100.0, 2.807_76)] // 4.45 · 100^-0.1
    #[case(500.0, 2.39)]
    fn grains_are_hindered_by_each_other(#[case] reynolds: f64, #[case] n: f64) {
        let slower = hindrance(Ratio::from(0.2), reynolds).unwrap();
        assert!((libm::log(slower) / libm::log(0.8) - n).abs() < 1e-5, "{slower}");
    }

    #[test]
    fn the_drag_has_a_range() {
        // 24/800 · (1 + 0.15 · 800^0.687) by Schiller and Naumann.
        assert!((drag(800.0).unwrap() - 0.47426).abs() < 1e-4, "{:?}", drag(800.0));
        for reynolds in [800.1, 0.0, -1.0, f64::NAN] {
            assert_eq!(drag(reynolds), None);
        }
    }

    #[test]
    fn stirring_keeps_the_top_of_the_pot() {
        let settling = salt(300.0, 0.0).settling(pa_s(0.5)).unwrap();
        let every = settling.stir_every(Length::new::<meter>(0.08), Ratio::from(0.1)).unwrap();
        assert!((every.get::<second>() * settling.speed.value - 0.008).abs() < 1e-12);
        assert!(settling.stir_every(Length::new::<meter>(0.0), Ratio::from(0.1)).is_err());
    }

    #[rstest]
    #[case(Suspension { melt: MassDensity::new::<kilogram_per_cubic_meter>(2165.0), ..salt(300.0, 0.0) }, 0.5, "settling-floats")]
    #[case(Suspension { melt: MassDensity::new::<kilogram_per_cubic_meter>(f64::NAN), ..salt(300.0, 0.0) }, 0.5, "not-finite")]
    #[case(salt(0.0, 0.0), 0.5, "out-of-range")]
    #[case(salt(300.0, 0.0), 0.0, "out-of-range")]
    #[case(salt(300.0, 0.0), f64::NAN, "not-finite")]
    #[case(salt(300.0, 0.5), 0.5, "out-of-range")]
    #[case(salt(300.0, f64::NAN), 0.5, "not-finite")]
    #[case(salt(49_000.0, 0.0), 1e-4, "settling-too-fast")]
    fn refuses(#[case] grains: Suspension, #[case] viscosity: f64, #[case] code: &str) {
        assert_eq!(grains.settling(pa_s(viscosity)).unwrap_err().code(), code);
    }

    proptest! {
        /// The viscosity that a grain's own fall shows is that of its melt.
        #[test]
        fn a_timed_ball_finds_the_viscosity(
            size in 50.0..3_000.0f64, log in -1.5..1.5f64, depth in 0.02..0.2f64, cube in any::<bool>(),
        ) {
            let grain = if cube { Grain::Cube } else { Grain::Ball };
            let grains = Suspension { grain, ..salt(size, 0.0) };
            let viscosity = libm::pow(10.0, log);
            let alone = grains.settling(pa_s(viscosity)).unwrap().alone;
            let depth = Length::new::<meter>(depth);
            let time = depth / alone;
            if (0.01..1e6).contains(&time.get::<second>()) {
                let found = grains.viscosity(depth, time).unwrap().get::<pascal_second>();
                prop_assert!((found / viscosity - 1.0).abs() < 1e-9, "{found} for {viscosity}");
            }
        }

        /// Never faster than Stokes, slower among others and in a thicker melt.
        #[test]
        fn settling_is_hindered(size in 50.0..1_000.0f64, viscosity in 0.05..5.0f64, solids in 0.0..0.38f64) {
            let settling = salt(size, solids).settling(pa_s(viscosity)).unwrap();
            let d = size * 1e-6;
            let stokes = 9.80665 * d * d * 1235.0 / (18.0 * viscosity);
            prop_assert!(settling.alone.value <= stokes * (1.0 + 1e-12));
            prop_assert!(settling.speed <= settling.alone);
            prop_assert!(salt(size, solids + 0.01).settling(pa_s(viscosity)).unwrap().speed < settling.speed);
            prop_assert!(salt(size, solids).settling(pa_s(viscosity * 1.1)).unwrap().speed < settling.speed);
        }
    }
}

//! Colored media by Kubelka and Munk: absorption K and scattering S.
//!
//! - Opaque: K/S = (1 − R)²/(2R), and back R = 1 + q − √(q² + 2q) with q = K/S.
//! - Mixtures: K and S each add up by what is in them (two constants); where one white or pearl base does all
//!   the scattering, S stays and K/S adds up (one constant).
//! - A film of thickness X over a backing R_g: R = [1 − R_g (a − b coth bSX)]/[a − R_g + b coth bSX] with
//!   a = 1 + K/S, b = √(a² − 1). Its readings over two backings give K·X and S·X back.
//! - The surface reflects too: R_read = k₁ + (1 − k₁)(1 − k₂) R/(1 − k₂ R), with k₁ the part of the light that
//!   is turned back on the way in, k₂ on the way out.
//!
//! It holds for a diffuse medium in diffuse light: not for pearl, flake, metal or fluorescent colorants, and
//! poorly for a body that is nearly clear.
//!
//! P. Kubelka, F. Munk, *Z. techn. Physik* 12 (1931) 593; P. Kubelka, *JOSA* 38 (1948) 448; D. R. Duncan, *Proc.
//! Phys. Soc.* 52 (1940) 390; J. L. Saunderson, *JOSA* 32 (1942) 727.

use crate::check::{is_not_negative, is_positive, is_share_below_one};
use crate::color::{ColorError, share};

/// Absorption and scattering of a medium, in one unit: of length, or of whatever the mixture counts.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Medium {
    /// Absorption (K), zero or above.
    pub absorption: f64,
    /// Scattering (S), zero or above.
    pub scattering: f64,
}

/// A layer with its thickness: the medium's absorption and scattering times it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Film {
    /// K·X, zero or above.
    pub absorption: f64,
    /// S·X, zero or above.
    pub scattering: f64,
}

/// The reading of a film over one backing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OverBacking {
    /// Reflectance of the bare backing, 0 to 1.
    pub backing: f64,
    /// Reflectance of the film on it, 0 to 1.
    pub reflectance: f64,
}

/// The effect of the surface on light on its way in and out.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Surface {
    inward: f64,
    outward: f64,
}

/// K/S of an opaque medium of reflectance `reflectance`.
///
/// # Errors
/// [`ColorError::Range`] unless the reflectance is above 0 (at 0, a clipped reading, K/S has no end) and at
/// most 1.
pub fn k_over_s(reflectance: f64) -> Result<f64, ColorError> {
    if !(is_positive(reflectance) && reflectance <= 1.0) {
        return Err(ColorError::Range { what: "a reflectance", range: "above 0 and at most 1" });
    }
    let dark = 1.0 - reflectance;
    Ok(dark * dark / (2.0 * reflectance))
}

/// Reflectance of an opaque medium with K/S `k_over_s`.
///
/// # Errors
/// [`ColorError::Range`] unless it is zero or above.
pub fn reflectance(k_over_s: f64) -> Result<f64, ColorError> {
    if is_not_negative(k_over_s) {
        Ok(opaque(k_over_s))
    } else {
        Err(ColorError::Range { what: "K/S", range: "zero or above" })
    }
}

/// 1 + q − √(q² + 2q), written so that nothing cancels.
pub(crate) fn opaque(q: f64) -> f64 {
    1.0 / (1.0 + q + libm::sqrt(q * (q + 2.0)))
}

impl Medium {
    /// The mixture of `parts`, each with its share.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless shares, absorptions and scatterings are zero or above.
    pub fn mix(parts: &[(f64, Self)]) -> Result<Self, ColorError> {
        parts.iter().try_fold(Self::default(), |sum, &(share, part)| {
            if !is_not_negative(share) {
                return Err(ColorError::Range { what: "a share", range: "zero or above" });
            }
            part.check()?;
            Ok(Self {
                absorption: sum.absorption + share * part.absorption,
                scattering: sum.scattering + share * part.scattering,
            })
        })
    }

    /// Its reflectance if it is thick enough to hide what is behind.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless the absorption is zero or above and the scattering above zero.
    pub fn reflectance(&self) -> Result<f64, ColorError> {
        self.check()?;
        if !is_positive(self.scattering) {
            return Err(ColorError::Range { what: "the scattering", range: "above zero" });
        }
        Ok(opaque(self.absorption / self.scattering))
    }

    fn check(&self) -> Result<(), ColorError> {
        if is_not_negative(self.absorption) && is_not_negative(self.scattering) {
            Ok(())
        } else {
            Err(ColorError::Range { what: "absorption and scattering", range: "zero or above" })
        }
    }
}

impl Film {
    /// Its reflectance over a backing of reflectance `backing` (equation: [module](self)).
    ///
    /// # Errors
    /// [`ColorError::Range`] unless absorption and scattering are zero or above and the backing from 0 to 1.
    pub fn over(&self, backing: f64) -> Result<f64, ColorError> {
        let g = share(backing, "the reflectance of the backing")?;
        let medium = Medium { absorption: self.absorption, scattering: self.scattering };
        medium.check()?;
        // The equation times tanh(bSX)/(bSX), with aSX = KX + SX: it holds as S or K goes to zero, too.
        let ends = self.absorption + self.scattering;
        let rate = libm::sqrt(self.absorption * (ends + self.scattering));
        let thinned = if rate > 0.0 { libm::tanh(rate) / rate } else { 1.0 };
        let up = thinned * (self.scattering - g * ends) + g;
        let down = thinned * (ends - g * self.scattering) + 1.0;
        Ok(up / down)
    }

    /// The film that reads as `light` and `dark` over two backings.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless all four are from 0 to 1; [`ColorError::NoFilm`] where no film gives them, as
    /// when it hides the backings, so that the two readings do not differ.
    pub fn from_readings(light: &OverBacking, dark: &OverBacking) -> Result<Self, ColorError> {
        // Below this difference the readings' scatter says more than the film.
        const LEAST_APART: f64 = 1e-6;
        let [(g1, r1), (g2, r2)] = [light.checked()?, dark.checked()?];
        if (r1 - r2).abs() < LEAST_APART || (g1 - g2).abs() < LEAST_APART {
            return Err(ColorError::NoFilm);
        }
        // Both readings solve t [a (R + R_g) − (1 + R R_g)] = R_g − R with one t = tanh(bSX)/b.
        let up = (g1 - r1) * (1.0 + r2 * g2) - (g2 - r2) * (1.0 + r1 * g1);
        let down = (g1 - r1) * (r2 + g2) - (g2 - r2) * (r1 + g1);
        let a = up / down;
        let (g, r) = if (g1 - r1).abs() > (g2 - r2).abs() { (g1, r1) } else { (g2, r2) };
        let t = (g - r) / (a * (r + g) - (1.0 + r * g));
        let b = libm::sqrt((a - 1.0) * (a + 1.0));
        let scattering = if b * t > 0.0 { libm::atanh(b * t) / b } else { t };
        // Of readings that no film gives one of the two is below zero, or neither is a number.
        let film = Self { absorption: scattering * (a - 1.0), scattering };
        if is_not_negative(film.absorption) && is_positive(film.scattering) {
            Ok(film)
        } else {
            Err(ColorError::NoFilm)
        }
    }
}

impl OverBacking {
    fn checked(&self) -> Result<(f64, f64), ColorError> {
        let backing = share(self.backing, "the reflectance of the backing")?;
        Ok((backing, share(self.reflectance, "the reflectance of the film")?))
    }
}

impl Surface {
    /// No correction: for readings that leave the gloss out, and for photographs.
    pub const NONE: Self = Self { inward: 0.0, outward: 0.0 };

    /// A surface that turns `inward` (k₁) of the light back on the way in and `outward` (k₂) on the way out, each
    /// from 0 to below 1. For plastics k₂ is about 0.6 in diffuse light.
    ///
    /// # Errors
    /// [`ColorError::Range`].
    pub fn new(inward: f64, outward: f64) -> Result<Self, ColorError> {
        if is_share_below_one(inward) && is_share_below_one(outward) {
            Ok(Self { inward, outward })
        } else {
            Err(ColorError::Range { what: "a surface's share", range: "from 0 to below 1" })
        }
    }

    /// k₁ = ((n − 1)/(n + 1))² of a surface of refractive index `index` in light that meets it head on
    /// (Fresnel); PVC has about 1.54.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless the index is from 1 to 10.
    pub fn fresnel(index: f64) -> Result<f64, ColorError> {
        if !(1.0..=10.0).contains(&index) {
            return Err(ColorError::Range { what: "a refractive index", range: "from 1 to 10" });
        }
        let root = (index - 1.0) / (index + 1.0);
        Ok(root * root)
    }

    /// The reading of a medium whose own reflectance is `inside`.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless it is from 0 to 1.
    pub fn read(&self, inside: f64) -> Result<f64, ColorError> {
        Ok(self.read_of(share(inside, "a reflectance")?))
    }

    /// As [`Surface::read`], for a reflectance that is known to be from 0 to 1.
    pub(crate) fn read_of(&self, inside: f64) -> f64 {
        let through = (1.0 - self.inward) * (1.0 - self.outward);
        self.inward + through * inside / (1.0 - self.outward * inside)
    }

    /// The derivative of [`Surface::read_of`].
    pub(crate) fn slope(&self, inside: f64) -> f64 {
        let through = (1.0 - self.inward) * (1.0 - self.outward);
        let past = 1.0 - self.outward * inside;
        through / (past * past)
    }

    /// The medium's own reflectance where `read` is read.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless `read` is from k₁, which the surface alone gives, to 1.
    pub fn inside(&self, read: f64) -> Result<f64, ColorError> {
        if !(self.inward..=1.0).contains(&read) {
            let range = "from what the surface alone reflects to 1";
            return Err(ColorError::Range { what: "a reflectance", range });
        }
        let past = read - self.inward;
        let through = (1.0 - self.inward) * (1.0 - self.outward);
        Ok(past / (through + self.outward * past))
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    #[rstest]
    #[case(0.0)]
    #[case(-0.1)]
    #[case(1.1)]
    #[case(f64::NAN)]
    fn refuses_no_reflectance(#[case] r: f64) {
        assert!(k_over_s(r).is_err());
    }

    #[test]
    fn refuses_what_is_no_medium() {
        assert!(reflectance(-1.0).is_err());
        let clear = Medium { absorption: 1.0, scattering: 0.0 };
        assert!(clear.reflectance().is_err());
        assert!(Medium::mix(&[(-1.0, clear)]).is_err());
        assert!(Film { absorption: -1.0, scattering: 1.0 }.over(0.5).is_err());
        assert!(Surface::new(0.04, 1.0).is_err());
        // Less than the surface alone gives back.
        assert!(Surface::new(0.04, 0.6).unwrap().inside(0.03).is_err());
    }

    #[test]
    fn a_hiding_film_has_no_thickness() {
        let light = OverBacking { backing: 0.8, reflectance: 0.4 };
        let dark = OverBacking { backing: 0.05, reflectance: 0.4 };
        assert_eq!(Film::from_readings(&light, &dark), Err(ColorError::NoFilm));
        // Lighter over the dark backing than over the light one.
        let odd = OverBacking { backing: 0.05, reflectance: 0.5 };
        assert_eq!(Film::from_readings(&light, &odd), Err(ColorError::NoFilm));
    }

    /// a = 0.9 and t = 1 by hand: a film that gives light.
    #[test]
    fn a_film_gives_no_light() {
        let light = OverBacking { backing: 0.5, reflectance: 0.75 };
        let dark = OverBacking { backing: 0.0, reflectance: 1.0 / 1.9 };
        assert_eq!(Film::from_readings(&light, &dark), Err(ColorError::NoFilm));
    }

    /// K = 0 and S X = 1, in numbers without rounding: 1 over white, 1/2 over black.
    #[test]
    fn a_film_that_absorbs_nothing() {
        let light = OverBacking { backing: 1.0, reflectance: 1.0 };
        let dark = OverBacking { backing: 0.0, reflectance: 0.5 };
        let film = Film { absorption: 0.0, scattering: 1.0 };
        assert_eq!(Film::from_readings(&light, &dark), Ok(film));
    }

    /// Over a backing of its own color a film does not show, and the other backing gives it.
    #[test]
    fn a_film_over_its_own_color() {
        let film = Film { absorption: 0.05, scattering: 0.5 };
        let over = |backing| OverBacking { backing, reflectance: film.over(backing).unwrap() };
        let own = over(opaque(0.1));
        assert!((own.reflectance - own.backing).abs() < 1e-15);
        for (light, dark) in [(own, over(0.1)), (over(0.95), own)] {
            let found = Film::from_readings(&light, &dark).unwrap();
            assert!((found.absorption - 0.05).abs() < 1e-9, "{found:?}");
            assert!((found.scattering - 0.5).abs() < 1e-9, "{found:?}");
        }
    }

    #[test]
    fn surfaces_by_hand() {
        // (0.5/2.5)², (9/11)².
        for (index, k1) in [(1.0, 0.0), (1.5, 0.04), (10.0, 81.0 / 121.0)] {
            assert!((Surface::fresnel(index).unwrap() - k1).abs() < 1e-15);
        }
        assert!(Surface::fresnel(0.9).is_err() && Surface::fresnel(10.1).is_err());
        let plain = Surface::new(0.04, 0.6).unwrap();
        assert!(plain.inside(1.0).is_ok() && plain.inside(1.1).is_err());
        assert_eq!(k_over_s(1.0), Ok(0.0));
    }

    #[test]
    fn a_surface_has_the_slope_of_its_readings() {
        let surface = Surface::new(0.04, 0.6).unwrap();
        for inside in [0.1, 0.5, 0.9] {
            let found = (surface.read_of(inside + 1e-6) - surface.read_of(inside - 1e-6)) / 2e-6;
            assert!((found / surface.slope(inside) - 1.0).abs() < 1e-8, "{inside}: {found}");
        }
    }

    #[test]
    fn a_film_without_scattering_is_beer_and_lambert() {
        let got = Film { absorption: 0.7, scattering: 0.0 }.over(0.8).unwrap();
        assert!((got - 0.8 * libm::exp(-1.4)).abs() < 1e-15);
        // Without absorption: R = [S X (1 − R_g) + R_g]/[S X (1 − R_g) + 1] (Kubelka 1948).
        let got = Film { absorption: 0.0, scattering: 2.0 }.over(0.1).unwrap();
        assert!((got - (1.8 + 0.1) / (1.8 + 1.0)).abs() < 1e-15);
    }

    proptest! {
        #[test]
        fn k_over_s_comes_back(r in 1e-6..1.0) {
            let back = reflectance(k_over_s(r).unwrap()).unwrap();
            prop_assert!((back - r).abs() <= 1e-8 * r);
        }

        #[test]
        fn a_thick_film_is_opaque(k in 0.05..5.0, s in 0.1..5.0, backing in 0.0..=1.0) {
            let film = Film { absorption: 200.0 * k, scattering: 200.0 * s };
            let medium = Medium { absorption: k, scattering: s };
            let (film, opaque) = (film.over(backing).unwrap(), medium.reflectance().unwrap());
            prop_assert!((film - opaque).abs() < 1e-12);
        }

        #[test]
        fn two_backings_give_the_film_back(
            absorption in 0.01..2.0, scattering in 0.05..2.0, light in 0.5..0.95, dark in 0.0..0.3,
        ) {
            let film = Film { absorption, scattering };
            let over = |backing| OverBacking { backing, reflectance: film.over(backing).unwrap() };
            let back = Film::from_readings(&over(light), &over(dark)).unwrap();
            prop_assert!((back.absorption / absorption - 1.0).abs() < 1e-6);
            prop_assert!((back.scattering / scattering - 1.0).abs() < 1e-6);
        }

        #[test]
        fn the_surface_comes_off(inside in 0.0..=1.0, k1 in 0.0..0.1, k2 in 0.0..0.7) {
            let surface = Surface::new(k1, k2).unwrap();
            let read = surface.read(inside).unwrap().min(1.0);
            prop_assert!((surface.inside(read).unwrap() - inside).abs() < 1e-12);
        }
    }
}

//! The color of a piece that light goes through: over white and over black, at its thickness.
//!
//! Opaque colors need K/S alone; a thin piece needs S by itself, too. A base shows it by one thin test piece of it, of known
//! thickness X, over a white and over a black backing: its readings give K·X and S·X in each band
//! ([`Film::from_readings`]), so K and S per length; a K below zero, within what the readings are off, is zero. The media of a pot are counted per scattering of its base
//! ([`match_color`](crate::color::match_color)), so with them and S of the base a piece of thickness X reads, over a backing
//! R_g, R = [1 − R_g (a − b coth bSX)]/[a − R_g + b coth bSX] with a = (K + S)/S and b = √(a² − 1)
//! ([`kubelka_munk`](crate::color::kubelka_munk), with the sources).
//!
//! **Uncertainty.** That of the strengths, by differences; that of S in each band, from four readings each unsure by 3 % of its
//! value; and what the mixing rule is off. Light that leaves at the sides of a small piece is not in the model: it is darker
//! at its edges than calculated.

use alloc::vec;
use alloc::vec::Vec;

use crate::check::is_positive;
use crate::color::ColorError;
use crate::color::kubelka_munk::{Film, OverBacking};
use crate::color::lab::{Lab, Xyz};
use crate::color::match_color::{Palette, READ};
use crate::color::next_drop::Unit;
use crate::color::pot::{ColorPot, Expected, MODEL, Slopes, add_to_diagonal};
use crate::quantity::{Length, Measurable};

/// Bands that S is unsure by at most: beyond it the readings say nothing of it.
const MOST_UNSURE: f64 = 0.5;

/// 97.5 % at one side.
const ONE_SIDED: f64 = 2.0;

/// What is behind a piece.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Backing {
    /// The white backing of the base's test piece.
    White,
    /// The black one.
    Black,
}

/// Readings of a thin test piece of a base, in each band.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OverBackings<'a> {
    /// The bare white backing.
    pub white: &'a [f64],
    /// The bare black backing.
    pub black: &'a [f64],
    /// The piece on the white one.
    pub over_white: &'a [f64],
    /// The piece on the black one.
    pub over_black: &'a [f64],
}

/// How light goes through a base, in each band.
#[derive(Debug, Clone, PartialEq)]
pub struct BaseFilm {
    bands: Vec<Band>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
struct Band {
    /// K and S per meter.
    absorption: f64,
    scattering: f64,
    /// Relative standard uncertainty of S.
    unsure: f64,
    white: f64,
    black: f64,
}

impl BaseFilm {
    /// A base of which a piece of `thickness` reads as `readings`.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless the thickness is above zero and all readings are from 0 to 1; [`ColorError::Bands`] unless
    /// there are as many of each; [`ColorError::NoFilm`] where no piece gives them, as when it hides what is behind it.
    pub fn new(thickness: Length, readings: &OverBackings<'_>) -> Result<Self, ColorError> {
        let thickness = thickness.si();
        if !is_positive(thickness) {
            return Err(ColorError::Range { what: "a thickness", range: "above zero" });
        }
        let wanted = readings.white.len();
        for list in [readings.black, readings.over_white, readings.over_black] {
            if list.len() != wanted {
                return Err(ColorError::Bands { found: list.len(), wanted });
            }
        }
        let lists = readings.white.iter().zip(readings.black);
        let pieces = readings.over_white.iter().zip(readings.over_black);
        let mut bands = Vec::with_capacity(wanted);
        for ((&white, &black), (&over_white, &over_black)) in lists.zip(pieces) {
            let film = of_four([white, black, over_white, over_black])?;
            bands.push(Band {
                absorption: film.absorption / thickness,
                scattering: film.scattering / thickness,
                unsure: unsure_of([white, black, over_white, over_black], film.scattering),
                white,
                black,
            });
        }
        Ok(Self { bands })
    }

    /// K/S in each band.
    #[must_use]
    pub fn k_over_s(&self) -> Vec<f64> {
        self.bands.iter().map(|band| band.absorption / band.scattering).collect()
    }

    /// The mixture of `parts`, each with its share: K and S add up. Backings are those of the first.
    ///
    /// # Errors
    /// [`ColorError::Range`] without a share above zero; [`ColorError::Bands`].
    pub fn mix(parts: &[(f64, &Self)]) -> Result<Self, ColorError> {
        let whole = parts.iter().fold(0.0, |sum, (share, _)| sum + share);
        let first = parts.first().filter(|_| is_positive(whole));
        let Some((_, first)) = first else {
            return Err(ColorError::Range { what: "a share", range: "above zero" });
        };
        let mut mixed: Vec<Band> = first
            .bands
            .iter()
            .map(|band| Band { absorption: 0.0, scattering: 0.0, unsure: 0.0, ..*band })
            .collect();
        for (share, part) in parts {
            if part.bands.len() != mixed.len() {
                return Err(ColorError::Bands { found: part.bands.len(), wanted: mixed.len() });
            }
            for (sum, band) in mixed.iter_mut().zip(&part.bands) {
                let share = share / whole;
                sum.absorption += share * band.absorption;
                sum.scattering += share * band.scattering;
                // All were read in the same way: their errors go together.
                sum.unsure += share * band.scattering * band.unsure;
            }
        }
        mixed.iter_mut().for_each(|band| band.unsure /= band.scattering);
        Ok(Self { bands: mixed })
    }
}

impl Band {
    fn backing(&self, backing: Backing) -> f64 {
        match backing {
            Backing::White => self.white,
            Backing::Black => self.black,
        }
    }
}

/// The film of a white and a black backing, bare and covered. Of one that absorbs less than the readings can tell, K is zero.
fn of_four([white, black, over_white, over_black]: [f64; 4]) -> Result<Film, ColorError> {
    const ROUNDING: f64 = 1e-9;
    let light = OverBacking { backing: white, reflectance: over_white };
    let dark = OverBacking { backing: black, reflectance: over_black };
    match Film::from_readings(&light, &dark) {
        Err(ColorError::NoFilm) => {
            let scattering = (over_black - black) / ((1.0 - black) * (1.0 - over_black));
            let clear = Film { absorption: 0.0, scattering };
            let most = clear.over(white).unwrap_or(f64::INFINITY);
            // A film that gives light is one that takes none, read with an error.
            let is_clear = is_positive(scattering)
                && scattering.is_finite()
                && (most * (1.0 - ROUNDING)..=most * (1.0 + ONE_SIDED * READ))
                    .contains(&over_white);
            if is_clear { Ok(clear) } else { Err(ColorError::NoFilm) }
        }
        film => film,
    }
}

/// Relative standard uncertainty of S·X: each reading is off by [`READ`] of it, to the side on which there is a film.
fn unsure_of(readings: [f64; 4], scattering: f64) -> f64 {
    let mut square = 0.0;
    for place in 0..readings.len() {
        let moved = |by: f64| {
            let mut moved = readings;
            if let Some(value) = moved.get_mut(place) {
                *value *= 1.0 + by;
            }
            of_four(moved)
        };
        let film = moved(-READ).or_else(|_| moved(READ));
        let by = film.map_or(MOST_UNSURE, |film| film.scattering / scattering - 1.0);
        square += by * by;
    }
    libm::sqrt(square).min(MOST_UNSURE)
}

impl ColorPot<'_> {
    /// The color of a piece of the pot that is `thickness` thick, over a backing of the base's test piece.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless the thickness is above zero; [`ColorError::Bands`] unless `base` has the pot's bands.
    pub fn expected_over(
        &self,
        base: &BaseFilm,
        thickness: Length,
        backing: Backing,
    ) -> Result<Expected, ColorError> {
        self.over_at(self.own_doses(), base, thickness, backing)
    }

    /// The same with units added, their scatter not counted.
    ///
    /// # Errors
    /// As [`ColorPot::expected_over`].
    pub fn expected_over_with(
        &self,
        add: &[u32],
        units: &[Option<Unit>],
        base: &BaseFilm,
        thickness: Length,
        backing: Backing,
    ) -> Result<Expected, ColorError> {
        let added = add
            .iter()
            .zip(units)
            .map(|(&count, unit)| unit.map_or(0.0, |unit| f64::from(count) * unit.dose.value));
        let added = added.chain(core::iter::repeat(0.0));
        let doses: Vec<f64> = self.own_doses().iter().zip(added).map(|(a, b)| a + b).collect();
        self.over_at(&doses, base, thickness, backing)
    }

    /// The same with other doses in the pot.
    fn over_at(
        &self,
        doses: &[f64],
        base: &BaseFilm,
        thickness: Length,
        backing: Backing,
    ) -> Result<Expected, ColorError> {
        // Of a logarithm: far above rounding, far below what bends.
        const STEP: f64 = 1e-4;
        let thickness = thickness.si();
        if !is_positive(thickness) {
            return Err(ColorError::Range { what: "a thickness", range: "above zero" });
        }
        let (found, wanted) = (base.bands.len(), self.colorants().base.len());
        if found != wanted {
            return Err(ColorError::Bands { found, wanted });
        }
        let no_scale = vec![0.0; wanted];
        let color = |strengths: &[f64], scales: &[f64]| {
            let (cup, media) = self.media_at(strengths);
            let bands = &self.colorants().bands;
            let palette = Palette { bands, cup, media: media.iter().map(Vec::as_slice).collect() };
            let mut read = Vec::with_capacity(wanted);
            let mixture = palette.mixture(doses);
            for ((medium, band), scale) in mixture.iter().zip(&base.bands).zip(scales) {
                let thick = band.scattering * thickness * libm::exp(*scale);
                let film = Film {
                    absorption: medium.absorption * thick,
                    scattering: medium.scattering * thick,
                };
                read.push(bands.surface.read_of(film.over(band.backing(backing))?));
            }
            Lab::of(&Xyz::of_bands(&read, &bands.xyz), &bands.white)
        };
        let own = self.own_strengths();
        let slope = |place: usize, is_scale: bool| {
            let at = |by: f64| {
                let (mut strengths, mut scales) = (own.to_vec(), no_scale.clone());
                let list = if is_scale { &mut scales } else { &mut strengths };
                if let Some(value) = list.get_mut(place) {
                    *value += by;
                }
                color(&strengths, &scales)
            };
            let (up, down) = (at(STEP)?.parts(), at(-STEP)?.parts());
            let mut slope = [0.0; 3];
            for (slope, (up, down)) in slope.iter_mut().zip(up.iter().zip(down)) {
                *slope = (up - down) / (2.0 * STEP);
            }
            Ok::<_, ColorError>(slope)
        };
        let mut slopes = Slopes {
            lab: color(own, &no_scale)?,
            strengths: [vec![0.0; own.len()], vec![0.0; own.len()], vec![0.0; own.len()]],
            doses: Vec::new(),
        };
        for place in 0..own.len() {
            slopes.put(place, slope(place, false)?, 1.0);
        }
        let mut covariance = self.propagated(&slopes).1;
        add_to_diagonal(&mut covariance, [MODEL * MODEL; 3]);
        let mut expected = Expected { lab: slopes.lab, covariance };
        for (place, band) in base.bands.iter().enumerate() {
            expected.add_along(&slope(place, true)?, band.unsure);
        }
        Ok(expected)
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;
    use uom::si::length::millimeter;

    use super::*;
    use crate::color::difference::ciede2000;
    use crate::color::kubelka_munk::Surface;
    use crate::color::lab::SRGB_BANDS;
    use crate::color::match_color::{Colorants, LetDown};
    use crate::quantity::Ratio;

    /// K and S of an invented base per mm, its backings, and a red per unit of dose and of scattering of the base.
    const BASE: [(f64, f64); 3] = [(0.002, 0.15), (0.003, 0.17), (0.006, 0.20)];
    const WHITE: [f64; 3] = [0.90, 0.89, 0.87];
    const BLACK: [f64; 3] = [0.04, 0.04, 0.05];
    const RED: [(f64, f64); 3] = [(2.0, 1.0), (80.0, 0.5), (60.0, 0.5)];

    fn mm(thickness: f64) -> Length {
        Length::new::<millimeter>(thickness)
    }

    /// By a, b and coth, as it is printed; worked out apart from the code under test.
    fn over(k: f64, s: f64, thickness: f64, backing: f64) -> f64 {
        let a = (k + s) / s;
        let b = libm::sqrt(a * a - 1.0);
        let coth = 1.0 / libm::tanh(b * s * thickness);
        (1.0 - backing * (a - b * coth)) / (a - backing + b * coth)
    }

    fn film(thickness: f64) -> BaseFilm {
        let read = |backing: [f64; 3]| {
            let mut read = [0.0; 3];
            for (i, read) in read.iter_mut().enumerate() {
                *read = over(BASE[i].0, BASE[i].1, thickness, backing[i]);
            }
            read
        };
        let readings = OverBackings {
            white: &WHITE,
            black: &BLACK,
            over_white: &read(WHITE),
            over_black: &read(BLACK),
        };
        BaseFilm::new(mm(thickness), &readings).unwrap()
    }

    fn colorants() -> Colorants {
        let pour = |dose: f64| {
            let mut read = [0.0; 3];
            for (i, read) in read.iter_mut().enumerate() {
                let ((k, s), (red_k, red_s)) = (BASE[i], RED[i]);
                let q = (k / s + dose * red_k) / (1.0 + dose * red_s);
                *read = 1.0 + q - libm::sqrt(q * q + 2.0 * q);
            }
            read
        };
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &pour(0.0)).unwrap();
        let pieces = [0.002, 0.02].map(|dose| (dose, pour(dose)));
        let let_downs = pieces
            .each_ref()
            .map(|(dose, read)| LetDown { dose: Ratio::from(*dose), reflectance: read });
        colorants.add(&let_downs).unwrap();
        colorants
    }

    fn pot(colorants: &Colorants, dose: f64) -> ColorPot<'_> {
        let mut pot = ColorPot::new(colorants, &[]).unwrap();
        pot.add(0, Ratio::from(dose), Ratio::from(0.0)).unwrap();
        pot
    }

    /// A piece of red at 4 mm is the equation of Kubelka (1948) with the K and S that it was poured of, whatever the thickness
    /// of the base's test piece.
    #[rstest]
    #[case(1.0)]
    #[case(3.0)]
    fn a_thin_piece_is_the_printed_equation(#[case] test_piece: f64) {
        let colorants = colorants();
        let pot = pot(&colorants, 0.006);
        for (backing, bare) in [(Backing::White, WHITE), (Backing::Black, BLACK)] {
            let mut read = [0.0; 3];
            for (i, read) in read.iter_mut().enumerate() {
                let ((k, s), (red_k, red_s)) = (BASE[i], RED[i]);
                *read = over(k + 0.006 * red_k * s, s + 0.006 * red_s * s, 4.0, bare[i]);
            }
            let wanted = Lab::of_linear(&read);
            let found = pot.expected_over(&film(test_piece), mm(4.0), backing).unwrap();
            assert!(ciede2000(&found.lab, &wanted) < 1e-5, "{found:?} {wanted:?}");
            assert!(found.uncertainty().iter().all(|u| *u > MODEL), "{found:?}");
        }
    }

    /// Nothing shows through a piece of 300 mm: it is the opaque color, as sure as that.
    #[test]
    fn a_thick_piece_is_opaque() {
        let colorants = colorants();
        let pot = pot(&colorants, 0.006);
        let opaque = pot.expected().unwrap();
        for backing in [Backing::White, Backing::Black] {
            let found = pot.expected_over(&film(3.0), mm(300.0), backing).unwrap();
            assert!(ciede2000(&found.lab, &opaque.lab) < 1e-6, "{found:?} {opaque:?}");
            for (found, wanted) in found.uncertainty().iter().zip(opaque.uncertainty()) {
                assert!((found / wanted - 1.0).abs() < 1e-3, "{found} {wanted}");
            }
        }
    }

    /// A film so thin that there is hardly any shows its backing.
    #[test]
    fn a_film_of_nothing_is_its_backing() {
        let colorants = colorants();
        let found =
            pot(&colorants, 0.006).expected_over(&film(3.0), mm(1e-6), Backing::White).unwrap();
        assert!(ciede2000(&found.lab, &Lab::of_linear(&WHITE)) < 1e-3, "{found:?}");
    }

    #[test]
    fn the_base_has_its_constants() {
        let base = film(2.0);
        for (band, (k, s)) in base.bands.iter().zip(BASE) {
            // Per meter.
            assert!((band.absorption / (1e3 * k) - 1.0).abs() < 1e-6, "{band:?}");
            assert!((band.scattering / (1e3 * s) - 1.0).abs() < 1e-6, "{band:?}");
            assert!((0.03..0.3).contains(&band.unsure), "{band:?}");
        }
        let ratios = base.k_over_s();
        assert_eq!((base.bands.len(), ratios.len()), (3, 3));
        for (q, (k, s)) in ratios.iter().zip(BASE) {
            assert!((q / (k / s) - 1.0).abs() < 1e-6);
        }
    }

    /// Over a black that reflects nothing, S·X has a form of its own (Kubelka 1948): a = (R + (R₀ − R + R_g)/(R₀ R_g))/2,
    /// S·X = arcoth((1 − a R₀)/(b R₀))/b. Each reading 3 % too low moves it by that.
    #[test]
    fn a_base_is_as_sure_as_its_readings() {
        let scattering = |white: f64, over_white: f64, over_black: f64| {
            let part = (over_black - over_white + white) / (over_black * white);
            let a = 0.5 * (over_white + part);
            assert!(a > 1.0, "{a}");
            let b = libm::sqrt(a * a - 1.0);
            libm::atanh(b * over_black / (1.0 - a * over_black)) / b
        };
        for (k, s, white) in [(0.05, 0.3, 0.9), (0.1, 0.15, 0.8), (0.2, 0.4, 0.85)] {
            let (over_white, over_black) = (over(k, s, 2.0, white), over(k, s, 2.0, 0.0));
            let is = scattering(white, over_white, over_black);
            assert!((is / (2.0 * s) - 1.0).abs() < 1e-9, "{is}");
            let low = 0.97;
            let wanted = [
                scattering(low * white, over_white, over_black),
                scattering(white, low * over_white, over_black),
                scattering(white, over_white, low * over_black),
            ];
            let wanted =
                libm::sqrt(wanted.map(|to| (to / is - 1.0) * (to / is - 1.0)).iter().sum());
            let readings = OverBackings {
                white: &[white],
                black: &[0.0],
                over_white: &[over_white],
                over_black: &[over_black],
            };
            let found = BaseFilm::new(mm(2.0), &readings).unwrap().bands[0].unsure;
            assert!((found / wanted - 1.0).abs() < 1e-6, "{found} {wanted}");
        }
    }

    /// Of a clear base, R = (S·X (1 − R_g) + R_g)/(S·X (1 − R_g) + 1), whatever the backings are; rounding of exact readings makes no
    /// fault of it. What changes neither backing is no film.
    #[test]
    fn a_clear_base_is_read_over_any_backings() {
        let clear = |thick: f64, bare: f64| {
            let part = thick * (1.0 - bare);
            (part + bare) / (part + 1.0)
        };
        let of = |thick: f64, white: f64, black: f64| {
            let readings = OverBackings {
                white: &[white],
                black: &[black],
                over_white: &[clear(thick, white)],
                over_black: &[clear(thick, black)],
            };
            BaseFilm::new(mm(2.0), &readings)
        };
        for i in 1..60 {
            for (white, black) in [(0.9, 0.04), (0.8, 0.1), (0.85, 0.0)] {
                let thick = 0.05 * f64::from(i);
                let found = of(thick, white, black).unwrap().bands[0];
                assert!((found.scattering / (500.0 * thick) - 1.0).abs() < 1e-6, "{found:?}");
                assert!(found.absorption < 1e-3 * found.scattering, "{found:?}");
            }
        }
        assert_eq!(of(0.0, 0.9, 0.04), Err(ColorError::NoFilm));
        // Read 2 % too light over white, S comes from the black alone.
        let readings = OverBackings {
            white: &[0.9],
            black: &[0.1],
            over_white: &[1.02 * clear(1.0, 0.9)],
            over_black: &[clear(1.0, 0.1)],
        };
        let found = BaseFilm::new(mm(2.0), &readings).unwrap().bands[0];
        assert!((found.scattering - 500.0).abs() < 1e-9 && found.absorption == 0.0, "{found:?}");
    }

    /// Drops that are to go in make the piece what it is with them in it; what has no drop adds nothing.
    #[test]
    fn a_piece_is_seen_with_its_drops() {
        let colorants = colorants();
        let pot = pot(&colorants, 0.006);
        let base = film(3.0);
        let drop = Unit { dose: Ratio::from(0.0005), scatter: Ratio::from(0.05), together: false };
        let with = |count: u32, unit: Option<Unit>| {
            pot.expected_over_with(&[count], &[unit], &base, mm(2.0), Backing::White).unwrap().lab
        };
        let at = |dose: f64| {
            let pot = self::pot(&colorants, dose);
            pot.expected_over(&base, mm(2.0), Backing::White).unwrap().lab
        };
        assert!(ciede2000(&with(3, Some(drop)), &at(0.0075)) < 1e-9);
        assert!(ciede2000(&at(0.006), &at(0.0075)) > 0.5);
        assert_eq!(with(0, None), at(0.006));
    }

    /// A clear base takes no light; one that is read 2 % too light over white is taken to be clear, one that is read 10 % too
    /// light is refused. By hand: S·X = 1 over black 0 is 1/2.
    #[rstest]
    #[case(1.0, Some(0.0))]
    #[case(1.02, Some(0.0))]
    #[case(1.1, None)]
    fn a_clear_base_may_be_read_too_light(#[case] times: f64, #[case] wanted: Option<f64>) {
        // S X (1 − R_g) + R_g over S X (1 − R_g) + 1, R_g = 0.8.
        let over_white = [times / 1.2; 3];
        let readings = OverBackings {
            white: &[0.8; 3],
            black: &[0.0; 3],
            over_white: &over_white,
            over_black: &[0.5; 3],
        };
        let found = BaseFilm::new(mm(2.0), &readings);
        match wanted {
            Some(wanted) => {
                for (band, q) in found.clone().unwrap().bands.iter().zip(found.unwrap().k_over_s())
                {
                    assert!((q - wanted).abs() < 1e-9, "{q}");
                    assert!((band.scattering - 500.0).abs() < 1e-6, "{band:?}");
                    assert!((0.01..0.4).contains(&band.unsure), "{band:?}");
                }
            }
            None => assert_eq!(found, Err(ColorError::NoFilm)),
        }
    }

    /// Half of a base with twice the K and S of another is one and a half of it.
    #[test]
    fn bases_mix() {
        let one = film(2.0);
        let twice = BaseFilm {
            bands: one
                .bands
                .iter()
                .map(|band| Band {
                    absorption: 2.0 * band.absorption,
                    scattering: 2.0 * band.scattering,
                    ..*band
                })
                .collect(),
        };
        let mixed = BaseFilm::mix(&[(3.0, &one), (3.0, &twice)]).unwrap();
        for (mixed, band) in mixed.bands.iter().zip(&one.bands) {
            assert!((mixed.scattering / band.scattering - 1.5).abs() < 1e-12);
            assert!((mixed.absorption / band.absorption - 1.5).abs() < 1e-12);
            assert!((mixed.unsure - band.unsure).abs() < 1e-12);
            assert_eq!((mixed.white, mixed.black), (band.white, band.black));
        }
        assert!(BaseFilm::mix(&[]).is_err() && BaseFilm::mix(&[(0.0, &one)]).is_err());
        let other = BaseFilm { bands: one.bands[..2].to_vec() };
        assert_eq!(
            BaseFilm::mix(&[(1.0, &one), (1.0, &other)]),
            Err(ColorError::Bands { found: 2, wanted: 3 })
        );
    }

    #[test]
    fn refuses_what_cannot_be() {
        let readings = |over_black: [f64; 3]| {
            BaseFilm::new(
                mm(2.0),
                &OverBackings {
                    white: &WHITE,
                    black: &BLACK,
                    over_white: &[0.8; 3],
                    over_black: &over_black,
                },
            )
        };
        assert!(readings([0.3; 3]).is_ok());
        // It hides its backing.
        assert_eq!(readings([0.8; 3]), Err(ColorError::NoFilm));
        let short = OverBackings {
            white: &WHITE,
            black: &BLACK[..2],
            over_white: &[0.8; 3],
            over_black: &[0.3; 3],
        };
        assert_eq!(BaseFilm::new(mm(2.0), &short), Err(ColorError::Bands { found: 2, wanted: 3 }));
        let whole = OverBackings { black: &BLACK, ..short };
        for thickness in [0.0, -1.0, f64::NAN] {
            assert!(BaseFilm::new(mm(thickness), &whole).is_err());
        }
        let colorants = colorants();
        let pot = pot(&colorants, 0.006);
        let base = film(2.0);
        for thickness in [0.0, f64::NAN] {
            assert!(pot.expected_over(&base, mm(thickness), Backing::White).is_err());
        }
        let two = BaseFilm { bands: base.bands[..2].to_vec() };
        assert_eq!(
            pot.expected_over(&two, mm(2.0), Backing::White),
            Err(ColorError::Bands { found: 2, wanted: 3 })
        );
    }

    proptest! {
        // More plastic hides more of what is behind it.
        #[test]
        fn a_thicker_piece_shows_less_through(dose in 0.0..0.01, thin in 0.2..5.0) {
            let colorants = colorants();
            let pot = pot(&colorants, dose);
            let shows = |thickness: f64| {
                let over = |backing| pot.expected_over(&film(3.0), mm(thickness), backing).unwrap();
                over(Backing::White).lab.lightness() - over(Backing::Black).lab.lightness()
            };
            prop_assert!(shows(thin) > shows(1.5 * thin));
        }
    }
}

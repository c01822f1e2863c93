//! A starting formula for a wanted color, from colorants that the shop has let down.
//!
//! **Readings** are reflectances in bands: three from a photograph next to a white card
//! ([`Srgb::linear`](crate::color::lab::Srgb::linear)), or as many as a spectrophotometer has. A band's XYZ is what
//! it adds to the color of a perfect white; together they make the white.
//!
//! **Calibration.** The base scatters 1 and absorbs q₀ = K/S in each band. A colorant at the dose c (mass per mass of
//! base) adds c k to the absorption and c s to the scattering, so q (1 + c s) = q₀ + c k. Its let-downs at two or
//! more doses give k, s ≥ 0 by least squares.
//!
//! **Match.** With the target's q in each band, Σ c_i (k_i − q s_i) = q − q₀ is linear in the doses; they are the
//! least squares with c ≥ 0 (Lawson and Hanson). Each band is weighted by dR/dq over the scattering, so that it
//! counts by what is seen. Then whole drops: from the nearest, by more, fewer or swapped drops as long as ΔE₀₀
//! falls, so that no single drop or swap of two brings it nearer.
//!
//! The answer is a **starting point**: the model omits pearl, flake, how thick the piece is and what is behind
//! it, the camera and the light. The eye and a test piece decide.

use alloc::vec;
use alloc::vec::Vec;

use crate::check::is_positive;
use crate::color::ColorError;
use crate::color::difference::ciede2000;
use crate::color::kubelka_munk::{Medium, Surface, k_over_s, opaque};
use crate::color::lab::{Lab, SRGB_BANDS, Xyz};
use crate::nnls;
use crate::quantity::Ratio;

/// The sentence that comes with every starting formula.
pub const STARTING_POINT: &str =
    "This formula is a starting point: pour a test piece, and let the eye decide.";

/// The most drops of one colorant in a formula.
pub(super) const MOST_DROPS: u32 = 10_000;

/// Relative standard uncertainty of a photographed reflectance: about 1 in L\* of a middle tone.
pub(super) const READ: f64 = 0.03;

/// Drops in a step of the search, large ones first.
const STEPS: [u32; 4] = [64, 16, 4, 1];

/// A test piece of base with one colorant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LetDown<'a> {
    /// Mass of colorant per mass of base, above zero.
    pub dose: Ratio,
    /// Reflectance in each band, above 0 and at most 1.
    pub reflectance: &'a [f64],
}

/// A test piece as it was photographed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TestPiece {
    /// Mass of colorant per mass of base, above zero.
    pub dose: Ratio,
    /// Reflectance in the bands of a photograph.
    pub reflectance: [f64; 3],
}

impl TestPiece {
    /// It as a calibration takes it.
    #[must_use]
    pub const fn as_let_down(&self) -> LetDown<'_> {
        LetDown { dose: self.dose, reflectance: &self.reflectance }
    }
}

/// A base and its colorants, calibrated.
#[derive(Debug, Clone, PartialEq)]
pub struct Colorants {
    pub(super) bands: Bands,
    /// K/S of the base in each band; its scattering is 1.
    pub(super) base: Vec<f64>,
    pub(super) colorants: Vec<Colorant>,
}

/// The bands that all is read in.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Bands {
    pub(super) xyz: Vec<Xyz>,
    pub(super) white: Xyz,
    pub(super) surface: Surface,
}

#[derive(Debug, Clone, PartialEq)]
pub(super) struct Colorant {
    /// In each band, per unit of dose.
    pub(super) media: Vec<Medium>,
    /// Relative standard uncertainty of that in each band, by the readings of its let-downs.
    pub(super) unsure: Vec<f64>,
    pub(super) strongest: Ratio,
    pub(super) fit: f64,
}

/// The base and the colorants of a cup.
pub(super) struct Palette<'a> {
    pub(super) bands: &'a Bands,
    /// Absorption and scattering in each band, per scattering of the base.
    pub(super) cup: Vec<Medium>,
    /// Of each colorant, per unit of dose.
    pub(super) media: Vec<&'a [Medium]>,
}

/// A starting formula; [`STARTING_POINT`] says what it is worth.
#[derive(Debug, Clone, PartialEq)]
#[must_use]
pub struct StartingFormula {
    /// One for each colorant, in the order in which they were added; those that it leaves out have 0 drops.
    pub doses: Vec<StartingDose>,
    /// The color that the model expects of the whole drops.
    pub expected: Lab,
    /// Its ΔE₀₀ to the target.
    pub difference: f64,
    /// ΔE₀₀ to the target of the exact doses, before drops were made whole; the search among whole drops may
    /// come nearer, since the exact doses are the best in reflectance.
    pub exact_difference: f64,
    /// The greatest ΔE₀₀ between a let-down of these colorants as read and as the model has it: the formula
    /// is not surer than that.
    pub fit: f64,
}

/// The dose of one colorant.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct StartingDose {
    /// Mass per mass of base, before drops were made whole.
    pub exact: Ratio,
    /// Whole drops.
    pub drops: u32,
    /// Mass per mass of base of those drops.
    pub dose: Ratio,
    /// Whether that is more than the strongest let-down, where the model is not calibrated.
    pub beyond_let_downs: bool,
}

impl Colorants {
    /// A base without colorants, that reads `base` in `bands` of the given XYZ.
    ///
    /// `surface` is what the surface does to a reading; [`Surface::NONE`] for a photograph.
    ///
    /// # Errors
    /// [`ColorError::Bands`] unless there is at least one band and a reading for each; [`ColorError::Range`]
    /// for a reading that is not a reflectance, or bands that make no white.
    pub fn new(bands: &[Xyz], surface: Surface, base: &[f64]) -> Result<Self, ColorError> {
        if bands.is_empty() {
            return Err(ColorError::Bands { found: base.len(), wanted: 1 });
        }
        let white = Xyz::of_bands(&vec![1.0; bands.len()], bands);
        Lab::of(&white, &white)?;
        let bands = Bands { xyz: bands.to_vec(), white, surface };
        let base = bands.inside(base)?;
        Ok(Self { bands, base, colorants: Vec::new() })
    }

    /// Adds a colorant by its let-downs; the answer is the greatest ΔE₀₀ between one of them as read and as the
    /// model has it.
    ///
    /// # Errors
    /// [`ColorError::TooFewLetDowns`] without two doses above zero that differ; [`ColorError::Bands`];
    /// [`ColorError::Range`].
    pub fn add(&mut self, let_downs: &[LetDown<'_>]) -> Result<f64, ColorError> {
        let strongest = strongest(let_downs)?;
        let mut readings = Vec::with_capacity(let_downs.len());
        for let_down in let_downs {
            readings.push((let_down.dose.value, self.bands.inside(let_down.reflectance)?));
        }
        let mut media = Vec::with_capacity(self.base.len());
        let mut unsure = Vec::with_capacity(self.base.len());
        for (band, &base) in self.base.iter().enumerate() {
            let points = || readings.iter().filter_map(|(c, q)| Some((*c, *q.get(band)?)));
            media.push(calibrated(base, points())?);
            unsure.push(unsure_of(base, points().map(|(_, q)| q)));
        }
        let mut fit: f64 = 0.0;
        for let_down in let_downs {
            let read = self.bands.lab(let_down.reflectance)?;
            let model = self.with(&[&media]).color(&[let_down.dose.value])?;
            fit = fit.max(ciede2000(&read, &model));
        }
        self.colorants.push(Colorant { media, unsure, strongest, fit });
        Ok(fit)
    }

    /// The reading that the model expects of `doses`, one for each colorant, in each band.
    ///
    /// # Errors
    /// [`ColorError::Doses`]; [`ColorError::Range`] unless the doses are zero or above.
    pub fn reflectance(&self, doses: &[Ratio]) -> Result<Vec<f64>, ColorError> {
        self.check_count(doses.len())?;
        let doses: Vec<f64> = doses.iter().map(|dose| dose.value).collect();
        self.palette().readings(&doses)
    }

    /// The color that the model expects of `doses`, one for each colorant.
    ///
    /// # Errors
    /// As [`Colorants::reflectance`].
    pub fn lab(&self, doses: &[Ratio]) -> Result<Lab, ColorError> {
        self.bands.lab(&self.reflectance(doses)?)
    }

    /// A starting formula for a piece that reads `target` in each band; `drops` says for each colorant what
    /// one drop in this batch is, as mass per mass of base.
    ///
    /// # Errors
    /// [`ColorError::NoColorants`]; [`ColorError::Doses`]; [`ColorError::Bands`]; [`ColorError::Range`];
    /// [`ColorError::NoFormula`]. A target that the colorants cannot reach is not an error: see
    /// [`StartingFormula::difference`].
    pub fn starting_formula(
        &self,
        target: &[f64],
        drops: &[Ratio],
    ) -> Result<StartingFormula, ColorError> {
        if self.colorants.is_empty() {
            return Err(ColorError::NoColorants);
        }
        self.check_count(drops.len())?;
        if !drops.iter().all(|drop| is_positive(drop.value)) {
            return Err(ColorError::Range { what: "a drop", range: "above zero" });
        }
        let wanted = self.bands.lab(target)?;
        let palette = self.palette();
        let units: Vec<f64> = drops.iter().map(|drop| drop.value).collect();
        let exact = palette.exact(&self.bands.inside(target)?)?;
        let exact_color = palette.color(&exact)?;
        // Only colorants that the exact formula has: a drop of one more is not worth a bottle opened.
        let used: Vec<usize> =
            exact.iter().enumerate().filter(|(_, dose)| **dose > 0.0).map(|(j, _)| j).collect();
        let counts = palette.whole_drops(&exact, &units, &used, &wanted)?;
        let doses: Vec<StartingDose> = self
            .colorants
            .iter()
            .zip(exact.iter().zip(counts.iter().zip(drops)))
            .map(|(colorant, (&exact, (&count, &drop)))| {
                let dose = drop * f64::from(count);
                let beyond_let_downs = dose > colorant.strongest;
                StartingDose { exact: Ratio::from(exact), drops: count, dose, beyond_let_downs }
            })
            .collect();
        let whole: Vec<f64> = doses.iter().map(|dose| dose.dose.value).collect();
        let expected = palette.color(&whole)?;
        let used = self.colorants.iter().zip(&counts).filter(|(_, count)| **count > 0);
        Ok(StartingFormula {
            expected,
            difference: ciede2000(&wanted, &expected),
            exact_difference: ciede2000(&wanted, &exact_color),
            fit: used.fold(0.0, |most, (colorant, _)| most.max(colorant.fit)),
            doses,
        })
    }

    /// A cup of base, and all colorants.
    pub(super) fn palette(&self) -> Palette<'_> {
        let media: Vec<&[Medium]> =
            self.colorants.iter().map(|colorant| colorant.media.as_slice()).collect();
        self.with(&media)
    }

    fn with<'a>(&'a self, media: &[&'a [Medium]]) -> Palette<'a> {
        let cup = self.base.iter().map(|&absorption| Medium { absorption, scattering: 1.0 });
        Palette { bands: &self.bands, cup: cup.collect(), media: media.to_vec() }
    }

    fn check_count(&self, found: usize) -> Result<(), ColorError> {
        let wanted = self.colorants.len();
        if found == wanted { Ok(()) } else { Err(ColorError::Doses { found, wanted }) }
    }
}

impl Bands {
    /// The color of a reading.
    pub(super) fn lab(&self, reading: &[f64]) -> Result<Lab, ColorError> {
        Lab::of(&Xyz::of_bands(reading, &self.xyz), &self.white)
    }

    /// The reading in the three bands of a photograph that has the color `lab`.
    ///
    /// # Errors
    /// [`ColorError::Bands`] if it is read in others; [`ColorError::OutsideSrgb`].
    pub(super) fn reading_of(&self, lab: &Lab) -> Result<Vec<f64>, ColorError> {
        if self.xyz != SRGB_BANDS {
            return Err(ColorError::Bands { found: SRGB_BANDS.len(), wanted: self.xyz.len() });
        }
        Ok(lab.srgb()?.linear().to_vec())
    }

    /// K/S in each band of a reading.
    pub(super) fn inside(&self, reading: &[f64]) -> Result<Vec<f64>, ColorError> {
        if reading.len() != self.xyz.len() {
            return Err(ColorError::Bands { found: reading.len(), wanted: self.xyz.len() });
        }
        let mut inside = Vec::with_capacity(reading.len());
        for &read in reading {
            inside.push(k_over_s(self.surface.inside(read)?)?);
        }
        Ok(inside)
    }
}

impl Palette<'_> {
    /// Doses, added to what is in the cup, for the target's K/S in each band (equation: [module](self)).
    pub(super) fn exact(&self, target: &[f64]) -> Result<Vec<f64>, ColorError> {
        // The weights hold the scattering, which the doses change: a few rounds settle them.
        const ROUNDS: u32 = 8;
        let mut scattering: Vec<f64> = self.cup.iter().map(|cup| cup.scattering).collect();
        let mut doses = Vec::new();
        for _ in 0..ROUNDS {
            let weights: Vec<f64> =
                target.iter().zip(&scattering).map(|(&q, s)| slope(q) / s).collect();
            let columns: Vec<Vec<f64>> = self
                .media
                .iter()
                .map(|media| {
                    let terms = media.iter().zip(target).zip(&weights);
                    terms.map(|((m, q), w)| w * (m.absorption - q * m.scattering)).collect()
                })
                .collect();
            let sides: Vec<f64> = target
                .iter()
                .zip(&self.cup)
                .zip(&weights)
                .map(|((q, cup), w)| w * (q * cup.scattering - cup.absorption))
                .collect();
            doses =
                nnls::solve(&columns, &sides).ok_or(ColorError::NoFormula { most: MOST_DROPS })?;
            scattering = self.mixture(&doses).iter().map(|m| m.scattering).collect();
        }
        Ok(doses)
    }

    /// Whole drops near `exact`, by steps of the colorants `used` that bring the color nearer to `wanted`.
    pub(super) fn whole_drops(
        &self,
        exact: &[f64],
        units: &[f64],
        used: &[usize],
        wanted: &Lab,
    ) -> Result<Vec<u32>, ColorError> {
        let mut counts = Vec::with_capacity(exact.len());
        for (dose, unit) in exact.iter().zip(units) {
            counts.push(nearest_count(dose / unit)?);
        }
        let off = |counts: &[u32]| {
            let doses: Vec<f64> =
                counts.iter().zip(units).map(|(&n, unit)| f64::from(n) * unit).collect();
            Ok(ciede2000(wanted, &self.color(&doses)?))
        };
        let mut least = off(&counts)?;
        for by in STEPS {
            // Each step lowers the difference; the bound only says when enough is enough.
            for _ in 0..MOST_DROPS {
                let mut best: Option<(Vec<u32>, f64)> = None;
                for step in steps(&counts, used, by) {
                    let difference = off(&step)?;
                    if difference < best.as_ref().map_or(least, |(_, best)| *best) {
                        best = Some((step, difference));
                    }
                }
                let Some((step, difference)) = best else { break };
                (counts, least) = (step, difference);
            }
        }
        Ok(counts)
    }

    /// Absorption and scattering in each band, per scattering of the base, with `doses` added.
    pub(super) fn mixture(&self, doses: &[f64]) -> Vec<Medium> {
        let mut sum = self.cup.clone();
        for (dose, media) in doses.iter().zip(&self.media) {
            for (sum, medium) in sum.iter_mut().zip(*media) {
                sum.absorption += dose * medium.absorption;
                sum.scattering += dose * medium.scattering;
            }
        }
        sum
    }

    /// The reading in each band with `doses` added.
    pub(super) fn readings(&self, doses: &[f64]) -> Result<Vec<f64>, ColorError> {
        let mixture = self.mixture(doses);
        mixture.iter().map(|m| Ok(self.bands.surface.read_of(m.reflectance()?))).collect()
    }

    /// The color with `doses` added.
    pub(super) fn color(&self, doses: &[f64]) -> Result<Lab, ColorError> {
        self.bands.lab(&self.readings(doses)?)
    }
}

/// The strongest dose of let-downs, of which at least two must differ.
fn strongest(let_downs: &[LetDown<'_>]) -> Result<Ratio, ColorError> {
    if !let_downs.iter().all(|let_down| is_positive(let_down.dose.value)) {
        return Err(ColorError::TooFewLetDowns);
    }
    let doses = || let_downs.iter().map(|let_down| let_down.dose);
    let strongest = doses().fold(Ratio::default(), Ratio::max);
    if doses().any(|dose| dose < strongest) {
        Ok(strongest)
    } else {
        Err(ColorError::TooFewLetDowns)
    }
}

/// k and s of a colorant in one band, from (dose, K/S) points in a base of K/S `base` (equation: [module](self)).
fn calibrated(base: f64, points: impl Iterator<Item = (f64, f64)>) -> Result<Medium, ColorError> {
    let (mut absorption, mut scattering, mut sides) = (Vec::new(), Vec::new(), Vec::new());
    for (dose, q) in points {
        let weight = slope(q);
        absorption.push(weight * dose);
        scattering.push(-weight * dose * q);
        sides.push(weight * (q - base));
    }
    let answers = nnls::solve(&[absorption, scattering], &sides);
    match answers.as_deref() {
        Some(&[absorption, scattering]) => Ok(Medium { absorption, scattering }),
        _ => Err(ColorError::NoFormula { most: MOST_DROPS }),
    }
}

/// Relative standard uncertainty of what a colorant adds in one band, from the K/S of its let-downs in a base of K/S
/// `base`, each reading of reflectance unsure by [`READ`]: u(q) = READ (1 − R²)/(2R), and the weighted mean of all.
fn unsure_of(base: f64, let_downs: impl Iterator<Item = f64>) -> f64 {
    // Beyond it a band says nothing about the colorant, and the first order of logarithms does not hold.
    const MOST: f64 = 0.5;
    let weight = let_downs.fold(0.0, |sum, q| {
        let r = opaque(q);
        let relative = READ * (1.0 - r * r) / (2.0 * r) / (q - base).abs().max(1e-6);
        sum + 1.0 / (relative * relative)
    });
    (1.0 / libm::sqrt(weight)).min(MOST)
}

/// −dR/dq = 2R²/(1 − R²), held finite for a white that absorbs nothing.
fn slope(q: f64) -> f64 {
    const LEAST: f64 = 0.01;
    let square = opaque(q) * opaque(q);
    2.0 * square / (1.0 - square + LEAST)
}

fn nearest_count(drops: f64) -> Result<u32, ColorError> {
    let whole = libm::round(drops);
    if (0.0..=f64::from(MOST_DROPS)).contains(&whole) {
        // Whole and in range: nothing is cut off.
        Ok(whole as u32)
    } else {
        Err(ColorError::NoFormula { most: MOST_DROPS })
    }
}

/// Counts `by` drops away, or with `by` drops of a colorant swapped for as many of another.
fn steps(counts: &[u32], used: &[usize], by: u32) -> impl Iterator<Item = Vec<u32>> {
    let singles = used.iter().flat_map(|&j| [(Some(j), None), (None, Some(j))]);
    let swaps = used.iter().flat_map(|&up| used.iter().map(move |&down| (Some(up), Some(down))));
    singles.chain(swaps).filter_map(move |(up, down)| {
        let mut counts = counts.to_vec();
        if let Some(count) = up.and_then(|j| counts.get_mut(j)) {
            *count = count.checked_add(by).filter(|&n| n <= MOST_DROPS)?;
        }
        if let Some(count) = down.and_then(|j| counts.get_mut(j)) {
            *count = count.checked_sub(by)?;
        }
        Some(counts)
    })
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;
    use crate::color::lab::Srgb;

    /// Colorants as nature has them, for tests alone: K and S per unit of dose in three bands.
    type Truth = [[(f64, f64); 3]; 3];

    const BASE: [f64; 3] = [0.85, 0.84, 0.80];

    /// Red, blue and white.
    const PAINTS: Truth = [
        [(2.0, 1.0), (80.0, 0.5), (60.0, 0.5)],
        [(90.0, 0.2), (30.0, 1.0), (3.0, 2.0)],
        [(0.1, 150.0), (0.1, 155.0), (0.2, 160.0)],
    ];

    fn doses(doses: &[f64]) -> Vec<Ratio> {
        doses.iter().map(|&dose| Ratio::from(dose)).collect()
    }

    /// The mixture's reading, worked out apart from the code under test.
    fn pour(paints: &[[(f64, f64); 3]], doses: &[f64]) -> Vec<f64> {
        (0..3)
            .map(|band| {
                let (mut k, mut s) =
                    ((1.0 - BASE[band]) * (1.0 - BASE[band]) / (2.0 * BASE[band]), 1.0);
                for (paint, dose) in paints.iter().zip(doses) {
                    k += dose * paint[band].0;
                    s += dose * paint[band].1;
                }
                let q: f64 = k / s;
                1.0 + q - libm::sqrt(q * q + 2.0 * q)
            })
            .collect()
    }

    /// Calibrated from two let-downs of each paint.
    fn calibrated_on(paints: &[[(f64, f64); 3]]) -> Colorants {
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &BASE).unwrap();
        for paint in paints {
            let (weak, strong) = (pour(&[*paint], &[0.002]), pour(&[*paint], &[0.02]));
            let fit = colorants
                .add(&[
                    LetDown { dose: Ratio::from(0.002), reflectance: &weak },
                    LetDown { dose: Ratio::from(0.02), reflectance: &strong },
                ])
                .unwrap();
            assert!(fit < 1e-6, "{fit}");
        }
        colorants
    }

    #[test]
    fn a_known_mix_is_found_to_the_drop() {
        // A drop is 0.044 g in 240 g of base.
        let drop = 0.044 / 240.0;
        let target = pour(&PAINTS, &[12.0 * drop, 5.0 * drop, 30.0 * drop]);
        let found = calibrated_on(&PAINTS).starting_formula(&target, &doses(&[drop; 3])).unwrap();
        let drops: Vec<u32> = found.doses.iter().map(|dose| dose.drops).collect();
        assert_eq!(drops, [12, 5, 30]);
        assert!(found.difference < 1e-6 && found.exact_difference < 1e-6);
        assert!(found.doses.iter().all(|dose| !dose.beyond_let_downs));
    }

    #[test]
    fn what_is_not_needed_is_left_out() {
        let drop = 0.044 / 240.0;
        let target = pour(&PAINTS, &[0.0, 20.0 * drop, 0.0]);
        let found = calibrated_on(&PAINTS).starting_formula(&target, &doses(&[drop; 3])).unwrap();
        let drops: Vec<u32> = found.doses.iter().map(|dose| dose.drops).collect();
        assert_eq!(drops, [0, 20, 0]);
    }

    #[test]
    fn a_color_out_of_reach_says_how_far_off() {
        // No green from red, blue and white.
        let green = Srgb::from_bytes(40, 200, 60).linear();
        let found = calibrated_on(&PAINTS).starting_formula(&green, &doses(&[1e-4; 3])).unwrap();
        assert!(found.exact_difference > 10.0, "{}", found.exact_difference);
    }

    /// −dR/dq at K/S = 1/4, where R = 1/2: 2R²/(1 − R²), with 0.01 more below.
    #[test]
    fn a_slope_by_hand() {
        assert!((slope(0.25) - 0.5 / 0.76).abs() < 1e-15);
    }

    /// By hand: at R = ½, K/S = ¼, a reading unsure by 3 % leaves 0.03 · ¾ of K/S; on top of a base of 0.05 that is 0.1125 of
    /// what the colorant adds. Two let-downs leave 1/√2 of that; one that looks like the base says nothing.
    #[test]
    fn a_let_down_is_as_sure_as_its_reading() {
        let near = |a: f64, b: f64| assert!((a - b).abs() < 1e-12, "{a} {b}");
        near(unsure_of(0.05, [0.25].into_iter()), 0.1125);
        near(unsure_of(0.45, [0.25].into_iter()), 0.1125);
        near(unsure_of(0.05, [0.25, 0.25].into_iter()), 0.1125 / libm::sqrt(2.0));
        // R = ⅕, K/S = 1.6: 0.03 · 0.96/0.4/1.55.
        let dark = 0.03 * 0.96 / 0.4 / 1.55;
        near(unsure_of(0.05, [1.6].into_iter()), dark);
        let both = 1.0 / libm::sqrt(1.0 / (dark * dark) + 1.0 / (0.1125 * 0.1125));
        near(unsure_of(0.05, [1.6, 0.25].into_iter()), both);
        near(unsure_of(0.25, [0.25].into_iter()), 0.5);
        near(unsure_of(0.25, [].into_iter()), 0.5);
    }

    #[test]
    fn only_photographs_are_read_off_a_color() {
        let colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &BASE).unwrap();
        let reading = [0.2, 0.4, 0.6];
        let found = colorants.bands.reading_of(&Lab::of_linear(&reading)).unwrap();
        assert!(found.iter().zip(reading).all(|(a, b)| (a - b).abs() < 1e-9), "{found:?}");
        let two = Colorants::new(&SRGB_BANDS[..2], Surface::NONE, &BASE[..2]);
        let two = two.unwrap().bands.reading_of(&Lab::of_linear(&reading));
        assert_eq!(two, Err(ColorError::Bands { found: 3, wanted: 2 }));
    }

    /// One red cannot make a green: the dose is the least squares c of w (k − q s) c = w (q − q₀) with w = (−dR/dq)/(1 + c s), so
    /// that Σ w² (k − q s) [(k − q s) c − (q − q₀)] is nothing there.
    #[test]
    fn what_is_seen_most_counts_most() {
        let red = [(40.0, 60.0), (50.0, 20.0), (30.0, 5.0)];
        let colorants = calibrated_on(&[red]);
        let q = [0.3, 0.9, 0.5];
        let target = q.map(opaque);
        let found = colorants.starting_formula(&target, &doses(&[1e-4])).unwrap();
        let c = found.doses[0].exact.value;
        let (mut sum, mut size) = (0.0, 0.0);
        for band in 0..3 {
            let base = (1.0 - BASE[band]) * (1.0 - BASE[band]) / (2.0 * BASE[band]);
            let (k, s) = red[band];
            let w = slope(q[band]) / (1.0 + c * s);
            let (along, side) = (k - q[band] * s, q[band] - base);
            sum += w * w * along * (along * c - side);
            size += w * w * along.abs() * side.abs();
        }
        assert!(c > 0.001 && sum.abs() < 1e-6 * size, "{c}: {sum} of {size}");
    }

    /// As strong as the strongest let-down is calibrated.
    #[test]
    fn the_strongest_let_down_is_not_beyond() {
        let target = pour(&PAINTS, &[0.02, 0.0, 0.0]);
        let found = calibrated_on(&PAINTS).starting_formula(&target, &doses(&[0.005; 3])).unwrap();
        assert_eq!((found.doses[0].drops, found.doses[0].beyond_let_downs), (4, false));
        let reading = calibrated_on(&PAINTS).reflectance(&doses(&[0.02, 0.0, 0.0])).unwrap();
        assert_eq!(reading.len(), 3);
        assert!(reading.iter().zip(&target).all(|(found, read)| (found - read).abs() < 1e-9));
    }

    /// A formula is as sure as the worst of the let-downs of what is in it.
    #[test]
    fn a_formula_is_no_surer_than_its_let_downs() {
        // The weak test pieces of the first two are read as a quarter and as half as strong as they are.
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &BASE).unwrap();
        let mut fits = Vec::new();
        for (paint, read_as) in PAINTS.iter().zip([0.0005, 0.001, 0.002]) {
            let (weak, strong) = (pour(&[*paint], &[read_as]), pour(&[*paint], &[0.02]));
            let let_downs = [(0.002, &weak), (0.02, &strong)]
                .map(|(dose, reflectance)| LetDown { dose: Ratio::from(dose), reflectance });
            fits.push(colorants.add(&let_downs).unwrap());
            let model = colorants.colorants.last().unwrap().media.clone();
            let off = let_downs.map(|let_down| {
                let read = colorants.bands.lab(let_down.reflectance).unwrap();
                let expected = colorants.with(&[&model]).color(&[let_down.dose.value]).unwrap();
                ciede2000(&read, &expected)
            });
            assert_eq!(fits.last(), Some(&f64::max(off[0], off[1])));
        }
        assert!(fits[0] > 1.0 && fits[1] > 1.0 && fits[2] < 1e-6, "{fits:?}");
        // One drop of a paint in the base.
        for (paint, fit) in fits.iter().enumerate() {
            let mut drop = [0.0; 3];
            drop[paint] = 0.01;
            let target = colorants.reflectance(&doses(&drop)).unwrap();
            let found = colorants.starting_formula(&target, &doses(&[0.01; 3])).unwrap();
            assert_eq!((found.doses[paint].drops, found.fit), (1, *fit));
        }
    }

    #[test]
    fn steps_go_up_to_the_most_drops() {
        let of = |count: u32| steps(&[count], &[0], 1).collect::<Vec<_>>();
        assert!(of(MOST_DROPS - 1).contains(&vec![MOST_DROPS]));
        assert!(!of(MOST_DROPS).contains(&vec![MOST_DROPS + 1]));
        assert!(!of(0).iter().any(|counts| counts[0] > 1));
    }

    #[test]
    fn a_strong_color_is_said_to_be_beyond_the_let_downs() {
        let target = pour(&PAINTS, &[0.05, 0.0, 0.0]);
        let found = calibrated_on(&PAINTS).starting_formula(&target, &doses(&[1e-4; 3])).unwrap();
        assert!(found.doses[0].beyond_let_downs);
    }

    #[test]
    fn readings_with_a_surface_come_back() {
        // Sixteen bands, read with the gloss: k₁ and k₂ as for PVC.
        let surface = Surface::new(0.045, 0.6).unwrap();
        let hump = |x: f64, at: f64, wide: f64| libm::exp(-(x - at) * (x - at) / (wide * wide));
        let bands: Vec<Xyz> = (0..16)
            .map(|i| {
                let x = f64::from(i);
                Xyz { x: hump(x, 10.0, 3.0), y: hump(x, 8.0, 3.0), z: hump(x, 3.0, 2.0) }
            })
            .collect();
        let paint = |at: f64, s: f64| -> Vec<(f64, f64)> {
            (0..16).map(|i| (120.0 * hump(f64::from(i), at, 4.0) + 0.5, s)).collect()
        };
        let paints = [paint(2.0, 3.0), paint(7.0, 1.0), paint(12.0, 2.0), paint(30.0, 90.0)];
        let read = |doses: &[f64]| -> Vec<f64> {
            (0..16)
                .map(|band| {
                    let (mut k, mut s) = (0.02, 1.0);
                    for (paint, dose) in paints.iter().zip(doses) {
                        k += dose * paint[band].0;
                        s += dose * paint[band].1;
                    }
                    surface.read(crate::color::kubelka_munk::reflectance(k / s).unwrap()).unwrap()
                })
                .collect()
        };
        let mut colorants = Colorants::new(&bands, surface, &read(&[])).unwrap();
        for j in 0..4 {
            let at = |dose: f64| {
                let mut doses = [0.0; 4];
                doses[j] = dose;
                read(&doses)
            };
            let (weak, middle, strong) = (at(0.001), at(0.005), at(0.03));
            let fit = colorants
                .add(&[
                    LetDown { dose: Ratio::from(0.001), reflectance: &weak },
                    LetDown { dose: Ratio::from(0.005), reflectance: &middle },
                    LetDown { dose: Ratio::from(0.03), reflectance: &strong },
                ])
                .unwrap();
            assert!(fit < 1e-6, "{fit}");
        }
        let mix = [0.004, 0.0, 0.011, 0.02];
        let found = colorants.starting_formula(&read(&mix), &doses(&[1e-4; 4])).unwrap();
        for (dose, want) in found.doses.iter().zip(mix) {
            assert!((dose.exact.value - want).abs() < 1e-8, "{found:?}");
        }
        let drops: Vec<u32> = found.doses.iter().map(|dose| dose.drops).collect();
        assert_eq!(drops, [40, 0, 110, 200]);
    }

    #[rstest]
    #[case(&[0.5, 0.5], "color-wrong-bands")]
    #[case(&[0.5, 0.0, 0.5], "out-of-range")]
    #[case(&[0.5, 1.5, 0.5], "out-of-range")]
    #[case(&[0.5, f64::NAN, 0.5], "out-of-range")]
    fn refuses_no_reading(#[case] reading: &[f64], #[case] code: &str) {
        use crate::fault::Diagnose;
        let colorants = calibrated_on(&PAINTS);
        let refused = colorants.starting_formula(reading, &doses(&[1e-4; 3]));
        assert_eq!(refused.unwrap_err().code(), code);
        let refused = Colorants::new(&SRGB_BANDS, Surface::NONE, reading);
        assert_eq!(refused.unwrap_err().code(), code);
    }

    #[test]
    fn refuses_what_it_cannot_calibrate() {
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &BASE).unwrap();
        let reading = [0.3, 0.4, 0.5];
        let at = |dose: f64| LetDown { dose: Ratio::from(dose), reflectance: &reading };
        for let_downs in [&[][..], &[at(0.01)], &[at(0.01), at(0.01)], &[at(0.0), at(0.01)]] {
            assert_eq!(colorants.add(let_downs), Err(ColorError::TooFewLetDowns));
        }
        let none = colorants.starting_formula(&reading, &[]);
        assert_eq!(none, Err(ColorError::NoColorants));
        let colorants = calibrated_on(&PAINTS);
        let few = colorants.starting_formula(&reading, &doses(&[1e-4; 2]));
        assert_eq!(few, Err(ColorError::Doses { found: 2, wanted: 3 }));
        assert!(colorants.starting_formula(&reading, &doses(&[0.0; 3])).is_err());
        assert_eq!(
            colorants.starting_formula(&pour(&PAINTS, &[0.02, 0.0, 0.0]), &doses(&[1e-9; 3])),
            Err(ColorError::NoFormula { most: MOST_DROPS })
        );
        let none = Colorants::new(&[], Surface::NONE, &[]);
        assert_eq!(none, Err(ColorError::Bands { found: 0, wanted: 1 }));
    }

    proptest! {
        // Held out: colorants and mixes of which the calibration has seen the let-downs alone.
        #[test]
        fn known_mixes_come_back(
            paints in prop::array::uniform3(prop::array::uniform3((0.5..90.0, 0.5..90.0))),
            mix in prop::array::uniform3(0.0005..0.02),
        ) {
            let colorants = calibrated_on(&paints);
            let found = colorants.starting_formula(&pour(&paints, &mix), &doses(&[1e-5; 3])).unwrap();
            // The doses need not be the same where three colorants are nearly alike; the color is.
            prop_assert!(found.exact_difference < 1e-4, "{}", found.exact_difference);
            prop_assert!(found.difference < 0.2, "{}", found.difference);
        }

        // A bottle more is not opened for a color that it brings only a little nearer.
        #[test]
        fn what_the_exact_formula_leaves_out_stays_out(
            target in prop::array::uniform3(0.02..0.8),
        ) {
            let found = calibrated_on(&PAINTS).starting_formula(&target, &doses(&[2e-3; 3]));
            if let Ok(found) = found {
                for dose in found.doses {
                    prop_assert!(dose.exact.value > 0.0 || dose.drops == 0, "{dose:?}");
                }
            }
        }

        #[test]
        fn no_drop_more_or_less_is_nearer(
            mix in prop::array::uniform3(0.0005..0.01), drop in 1e-4..1e-3,
        ) {
            let colorants = calibrated_on(&PAINTS);
            let target = pour(&PAINTS, &mix);
            let found = colorants.starting_formula(&target, &doses(&[drop; 3])).unwrap();
            let wanted = colorants.bands.lab(&target).unwrap();
            for j in (0..3).filter(|&j| found.doses[j].exact.value > 0.0) {
                for by in [-1.0, 1.0] {
                    let mut other: Vec<f64> = found.doses.iter().map(|d| d.dose.value).collect();
                    other[j] += by * drop;
                    if other[j] >= 0.0 {
                        let color = colorants.lab(&doses(&other)).unwrap();
                        prop_assert!(ciede2000(&wanted, &color) >= found.difference - 1e-9);
                    }
                }
            }
        }
    }
}

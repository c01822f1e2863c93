//! The color of a pot as the model has it, corrected by what is seen of it.
//!
//! **Strengths.** A colorant is stronger or weaker in each band than its let-downs say, by a factor e^θ on k and s
//! alike; so is the base's absorption. θ is 0 ± its prior: [`STRENGTH`] in all bands alike (the bottle, the drop), and in
//! each band by itself [`SHADE`] and what the readings of the let-downs leave. The logarithm keeps a strength above zero.
//!
//! **Sample.** A sample that reads z, with covariance R, corrects θ and its covariance P by Bayes' rule, linear in θ:
//! K = P Hᵀ (H P Hᵀ + R)⁻¹, θ ← θ + K (z − h(θ)), P ← P − K H P, with h(θ) the L\*a\*b\* that the model expects and H = ∂h/∂θ,
//! taken again at the corrected θ (iterated extended Kalman filter: B. M. Bell, F. W. Cathey, *IEEE Trans. Autom. Control* 38
//! (1993) 294–297; R. E. Kalman, *J. Basic Eng.* 82 (1960) 35–45). R holds the reading's uncertainty and [`MODEL`], what the
//! mixing rule itself is off.
//!
//! **Additions** scatter by the count of drops: u²/d² is added to the variance of the colorant's strength in this pot.
//!
//! **Difference.** ΔE₀₀² to a target is a quadratic form of the color near it. Its mean and variance over the
//! covariance of the color give a gamma distribution (P. B. Patnaik, *Biometrika* 36 (1949) 202–232), whose 2.5 and 97.5
//! per cent points (E. B. Wilson, M. M. Hilferty, *PNAS* 17 (1931) 684–688) are the band of the difference.
//!
//! The priors are common practice, no source. That the bands hold what they should is checked on simulated shops, whose
//! colorants are not quite the model's ([`next_drop`](crate::color::next_drop)).

use alloc::vec;
use alloc::vec::Vec;

use crate::color::ColorError;
use crate::color::difference::ciede2000;
use crate::color::kubelka_munk::{Medium, opaque};
use crate::color::lab::{Lab, Xyz};
use crate::color::match_color::{Colorants, Palette, READ};
use crate::color::reading::Reading;
use crate::quantity::Ratio;

/// Prior standard uncertainty of the logarithm of a colorant's strength, in all bands alike.
pub const STRENGTH: f64 = 0.10;

/// The same in each band by itself, in addition to what the readings of its let-downs leave.
pub const SHADE: f64 = 0.05;

/// Standard uncertainty of each of L\*, a\*, b\* by the mixing rule itself.
pub const MODEL: f64 = 0.7;

/// Rounds of a correction.
const ROUNDS: u32 = 5;

/// χ² of three numbers that only one sample in a thousand passes.
const SURPRISE: f64 = 16.27;

/// What is known of a colorant's strength beyond its let-downs.
#[derive(Debug, Clone, PartialEq)]
pub struct Strength {
    /// Factor on its let-downs in each band; empty: 1 in all.
    pub factors: Vec<f64>,
    /// Relative standard uncertainty in all bands alike.
    pub common: f64,
    /// Relative standard uncertainty in each band by itself.
    pub own: f64,
}

impl Default for Strength {
    fn default() -> Self {
        Self { factors: Vec::new(), common: STRENGTH, own: SHADE }
    }
}

/// A pot of base with colorants in it.
#[derive(Debug, Clone, PartialEq)]
pub struct ColorPot<'a> {
    colorants: &'a Colorants,
    /// Mass per mass of base of each colorant.
    doses: Vec<f64>,
    /// θ: of the base in each band, then of each colorant.
    strengths: Vec<f64>,
    /// Its covariance, row by row.
    covariance: Vec<f64>,
}

/// A color that is expected, with its covariance in L\*a\*b\*.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Expected {
    /// The color.
    pub lab: Lab,
    pub(super) covariance: [[f64; 3]; 3],
}

/// A ΔE₀₀ with its band of error.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Difference {
    /// ΔE₀₀ between the two most likely colors.
    pub value: f64,
    /// Root of the mean square of what it may be.
    pub typical: f64,
    /// It is above this with 97.5 %.
    pub low: f64,
    /// It is below this with 97.5 %.
    pub high: f64,
    /// Standard uncertainty of ΔE₀₀ along one direction.
    pub uncertainty: f64,
}

/// Derivatives of L\*, a\*, b\* by the strengths, and by the doses.
pub(super) struct Slopes {
    pub(super) lab: Lab,
    pub(super) strengths: [Vec<f64>; 3],
    pub(super) doses: Vec<[f64; 3]>,
}

impl<'a> ColorPot<'a> {
    /// A pot of base alone. `strengths` are those of the colorants, in their order; those left out are by default.
    ///
    /// # Errors
    /// [`ColorError::Range`] for a factor that is not above zero, or an uncertainty that is not from 0 to 1.
    pub fn new(colorants: &'a Colorants, strengths: &[Strength]) -> Result<Self, ColorError> {
        let bands = colorants.base.len();
        let count = bands.saturating_mul(colorants.colorants.len().saturating_add(1));
        let mut pot = Self {
            colorants,
            doses: vec![0.0; colorants.colorants.len()],
            strengths: vec![0.0; count],
            covariance: vec![0.0; count.saturating_mul(count)],
        };
        for (band, &q) in colorants.base.iter().enumerate() {
            // u(q)/q by a reading unsure by READ; of a white that absorbs nothing it has no end.
            let r = opaque(q);
            let relative = (READ * (1.0 + r) / (1.0 - r)).min(0.5);
            pot.add_variance(band, band, relative * relative);
        }
        let usual = Strength::default();
        for (j, colorant) in colorants.colorants.iter().enumerate() {
            let strength = strengths.get(j).unwrap_or(&usual);
            let is_unsure = |u: f64| (0.0..=1.0).contains(&u);
            if !(is_unsure(strength.common) && is_unsure(strength.own)) {
                let range = "from 0 to 100 %";
                return Err(ColorError::Range { what: "the uncertainty of a strength", range });
            }
            for band in 0..bands {
                let place = pot.place(j, band);
                if let Some(&factor) = strength.factors.get(band) {
                    if !(0.01..=100.0).contains(&factor) {
                        let range = "from 0.01 to 100";
                        return Err(ColorError::Range { what: "a strength", range });
                    }
                    if let Some(theta) = pot.strengths.get_mut(place) {
                        *theta = libm::log(factor);
                    }
                }
                // Let-downs say nothing new of a strength that was learned.
                let read = if strength.factors.is_empty() {
                    colorant.unsure.get(band).copied().unwrap_or_default()
                } else {
                    0.0
                };
                pot.add_variance(place, place, strength.own * strength.own + read * read);
                for other in 0..bands {
                    let square = strength.common * strength.common;
                    pot.add_variance(place, pot.place(j, other), square);
                }
            }
        }
        Ok(pot)
    }

    /// Adds `dose` of a colorant, mass per mass of base, with its standard uncertainty by the count alone.
    ///
    /// # Errors
    /// [`ColorError::Doses`] without that colorant; [`ColorError::Range`] unless both are zero or above.
    pub fn add(
        &mut self,
        colorant: usize,
        dose: Ratio,
        uncertainty: Ratio,
    ) -> Result<(), ColorError> {
        let wanted = self.doses.len();
        let found = colorant.saturating_add(1);
        let all = self.doses.get_mut(colorant).ok_or(ColorError::Doses { found, wanted })?;
        if !(crate::check::is_not_negative(dose.value)
            && crate::check::is_not_negative(uncertainty.value))
        {
            return Err(ColorError::Range { what: "a dose", range: "zero or above" });
        }
        *all += dose.value;
        if *all > 0.0 {
            let relative = (uncertainty.value / *all).min(1.0);
            for band in 0..self.colorants.base.len() {
                for other in 0..self.colorants.base.len() {
                    let (row, column) = (self.place(colorant, band), self.place(colorant, other));
                    self.add_variance(row, column, relative * relative);
                }
            }
        }
        Ok(())
    }

    /// Thins all colorants by more base: `share` of their doses stays.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless it is above 0 and at most 1.
    pub fn thin(&mut self, share: f64) -> Result<(), ColorError> {
        if !(share > 0.0 && share <= 1.0) {
            let range = "above 0 and at most 1";
            return Err(ColorError::Range { what: "the share that stays", range });
        }
        self.doses.iter_mut().for_each(|dose| *dose *= share);
        Ok(())
    }

    /// Mass per mass of base of each colorant in it.
    #[must_use]
    pub fn doses(&self) -> Vec<Ratio> {
        self.doses.iter().map(|&dose| Ratio::from(dose)).collect()
    }

    /// The color that is expected of it.
    ///
    /// # Errors
    /// [`ColorError::Range`] where the doses leave what can be calculated.
    pub fn expected(&self) -> Result<Expected, ColorError> {
        self.expected_at(&self.doses)
    }

    /// The color that is expected at other doses.
    pub(super) fn expected_at(&self, doses: &[f64]) -> Result<Expected, ColorError> {
        let slopes = self.slopes(doses, &self.strengths)?;
        let mut covariance = self.propagated(&slopes).1;
        add_to_diagonal(&mut covariance, [MODEL * MODEL; 3]);
        Ok(Expected { lab: slopes.lab, covariance })
    }

    /// Corrects the strengths by a sample of it that reads `seen`; whether it was no surprise: one in a thousand samples is
    /// further from what was expected than their errors allow.
    ///
    /// # Errors
    /// [`ColorError::Range`] unless the uncertainties are above zero.
    pub fn see(&mut self, seen: &Reading) -> Result<bool, ColorError> {
        if !seen.uncertainty.iter().all(|u| (1e-6..=1e3).contains(u)) {
            let range = "above zero";
            return Err(ColorError::Range { what: "the uncertainty of a reading", range });
        }
        let mut noise = seen.uncertainty.map(|u| u * u);
        noise.iter_mut().for_each(|square| *square += MODEL * MODEL);
        let mut at = self.strengths.clone();
        let mut is_usual = true;
        let mut last = None;
        for round in 0..ROUNDS {
            let slopes = self.slopes(&self.doses, &at)?;
            let (across, mut spread) = self.propagated(&slopes);
            add_to_diagonal(&mut spread, noise);
            let inverse = inverse(&spread)?;
            // z − h(θ_i) − H (θ₀ − θ_i)
            let mut off = [0.0; 3];
            let parts = off.iter_mut().zip(seen.lab.parts()).zip(slopes.lab.parts());
            for (((off, seen), expected), row) in parts.zip(&slopes.strengths) {
                let moved = row.iter().zip(&at).zip(&self.strengths);
                *off =
                    seen - expected + moved.fold(0.0, |sum, ((h, at), from)| sum + h * (at - from));
            }
            let pulled = times(&inverse, &off);
            if round == 0 {
                is_usual = dot(&off, &pulled) <= SURPRISE;
            }
            for ((at, from), row) in at.iter_mut().zip(&self.strengths).zip(&across) {
                // Beyond e^±3 the first order has lost its way.
                *at = (from + dot(row, &pulled)).clamp(from - 3.0, from + 3.0);
            }
            last = Some((across, inverse));
        }
        if let Some((across, inverse)) = last {
            let count = self.strengths.len();
            for (row, left) in self.covariance.chunks_mut(count.max(1)).zip(&across) {
                let left = times(&inverse, left);
                for (value, right) in row.iter_mut().zip(&across) {
                    *value -= dot(&left, right);
                }
            }
        }
        self.strengths = at;
        Ok(is_usual)
    }

    /// Strength of a colorant as it is known now.
    #[must_use]
    pub fn strength(&self, colorant: usize) -> Option<Strength> {
        let bands = self.colorants.base.len();
        if colorant >= self.doses.len() {
            return None;
        }
        let places = || (0..bands).map(|band| self.place(colorant, band));
        let variance = |row: usize, column: usize| {
            self.covariance
                .get(row.saturating_mul(self.strengths.len()).saturating_add(column))
                .copied()
                .unwrap_or_default()
        };
        // What two bands have in common, on average, and what each has on top of that.
        let (mut common, mut pairs, mut all) = (0.0, 0.0, 0.0);
        for row in places() {
            all += variance(row, row);
            for column in places().filter(|column| *column != row) {
                common += variance(row, column);
                pairs += 1.0;
            }
        }
        // A few bands: exact.
        let all = all / bands as f64;
        let common = if pairs > 0.0 { (common / pairs).clamp(0.0, all.max(0.0)) } else { 0.0 };
        let factors = places().filter_map(|place| self.strengths.get(place));
        Some(Strength {
            factors: factors.map(|&theta| libm::exp(theta)).collect(),
            common: libm::sqrt(common),
            own: libm::sqrt((all - common).max(0.0)),
        })
    }

    /// Media of the colorants by their strengths as known now, and the base without them.
    pub(super) fn media(&self) -> (Vec<Medium>, Vec<Vec<Medium>>) {
        self.media_at(&self.strengths)
    }

    pub(super) const fn colorants(&self) -> &'a Colorants {
        self.colorants
    }

    pub(super) fn own_doses(&self) -> &[f64] {
        &self.doses
    }

    pub(super) fn own_strengths(&self) -> &[f64] {
        &self.strengths
    }

    pub(super) fn media_at(&self, strengths: &[f64]) -> (Vec<Medium>, Vec<Vec<Medium>>) {
        let bands = self.colorants.base.len();
        let mut factors = strengths.iter().map(|&theta| libm::exp(theta));
        let base = self.colorants.base.iter().zip(&mut factors);
        let base =
            base.map(|(q, factor)| Medium { absorption: q * factor, scattering: 1.0 }).collect();
        let mut media = Vec::with_capacity(self.doses.len());
        for colorant in &self.colorants.colorants {
            let own: Vec<f64> = (&mut factors).take(bands).collect();
            let own = colorant.media.iter().zip(own);
            media.push(
                own.map(|(medium, factor)| Medium {
                    absorption: medium.absorption * factor,
                    scattering: medium.scattering * factor,
                })
                .collect(),
            );
        }
        (base, media)
    }

    /// Color and its derivatives at `doses`, by the strengths as known now.
    pub(super) fn slopes_at(&self, doses: &[f64]) -> Result<Slopes, ColorError> {
        self.slopes(doses, &self.strengths)
    }

    fn slopes(&self, doses: &[f64], strengths: &[f64]) -> Result<Slopes, ColorError> {
        let (base, media) = self.media_at(strengths);
        let bands = &self.colorants.bands;
        let views: Vec<&[Medium]> = media.iter().map(Vec::as_slice).collect();
        let palette = Palette { bands, cup: base, media: views };
        let mixture = palette.mixture(doses);
        let reading = palette.readings(doses)?;
        let xyz = Xyz::of_bands(&reading, &bands.xyz);
        let lab = Lab::of(&xyz, &bands.white)?;
        let count = strengths.len();
        let mut slopes = Slopes {
            lab,
            strengths: [vec![0.0; count], vec![0.0; count], vec![0.0; count]],
            doses: vec![[0.0; 3]; doses.len()],
        };
        for (band, ((mix, part), cup)) in
            mixture.iter().zip(&bands.xyz).zip(&palette.cup).enumerate()
        {
            let q = mix.absorption / mix.scattering;
            // dR/dq = −R² (1 + (q + 1)/√(q² + 2q)) inside, then through the surface.
            let r = opaque(q);
            let inside = -r * r * (1.0 + (q + 1.0) / libm::sqrt((q * (q + 2.0)).max(1e-12)));
            let through = bands.surface.slope(r);
            let by_band = Lab::slopes(&xyz, &bands.white, part);
            let by_q = by_band.map(|slope| slope * inside * through / mix.scattering);
            let by_base = cup.absorption;
            slopes.put(band, by_q, by_base);
            for (j, (dose, medium)) in doses.iter().zip(&media).enumerate() {
                let Some(medium) = medium.get(band) else { continue };
                let by_dose = medium.absorption - q * medium.scattering;
                slopes.put(self.place(j, band), by_q, dose * by_dose);
                if let Some(dose) = slopes.doses.get_mut(j) {
                    for (value, slope) in dose.iter_mut().zip(by_q) {
                        *value += slope * by_dose;
                    }
                }
            }
        }
        Ok(slopes)
    }

    /// P Hᵀ, row by row, and H P Hᵀ.
    pub(super) fn propagated(&self, slopes: &Slopes) -> (Vec<[f64; 3]>, [[f64; 3]; 3]) {
        let count = self.strengths.len().max(1);
        let mut across = Vec::with_capacity(count);
        for row in self.covariance.chunks(count) {
            let mut sums = [0.0; 3];
            for (sum, slopes) in sums.iter_mut().zip(&slopes.strengths) {
                *sum = row.iter().zip(slopes).fold(0.0, |sum, (p, h)| sum + p * h);
            }
            across.push(sums);
        }
        let mut spread = [[0.0; 3]; 3];
        for (row, slopes) in spread.iter_mut().zip(&slopes.strengths) {
            for (across, h) in across.iter().zip(slopes) {
                for (value, across) in row.iter_mut().zip(across) {
                    *value += h * across;
                }
            }
        }
        (across, spread)
    }

    /// Place of a colorant's strength in a band; those of the base come first.
    fn place(&self, colorant: usize, band: usize) -> usize {
        let bands = self.colorants.base.len();
        bands.saturating_mul(colorant.saturating_add(1)).saturating_add(band)
    }

    fn add_variance(&mut self, row: usize, column: usize, square: f64) {
        let place = row.saturating_mul(self.strengths.len()).saturating_add(column);
        if let Some(value) = self.covariance.get_mut(place) {
            *value += square;
        }
    }
}

impl Slopes {
    pub(super) fn put(&mut self, place: usize, by_q: [f64; 3], factor: f64) {
        for (row, slope) in self.strengths.iter_mut().zip(by_q) {
            if let Some(value) = row.get_mut(place) {
                *value = slope * factor;
            }
        }
    }
}

impl Expected {
    /// A color that is known as well as `reading`.
    #[must_use]
    pub fn of(reading: &Reading) -> Self {
        let mut covariance = [[0.0; 3]; 3];
        add_to_diagonal(&mut covariance, reading.uncertainty.map(|u| u * u));
        Self { lab: reading.lab, covariance }
    }

    /// Standard uncertainties of its L\*, a\*, b\*.
    #[must_use]
    pub fn uncertainty(&self) -> [f64; 3] {
        let [[l, ..], [_, a, _], [.., b]] = self.covariance;
        [l, a, b].map(|square| libm::sqrt(square.max(0.0)))
    }

    /// Adds the uncertainty of a reading.
    pub(super) fn add(&mut self, reading: &Reading) {
        add_to_diagonal(&mut self.covariance, reading.uncertainty.map(|u| u * u));
    }

    /// Adds a standard uncertainty of `by` in what moves the color along `column`.
    pub(super) fn add_along(&mut self, column: &[f64; 3], by: f64) {
        for (row, one) in self.covariance.iter_mut().zip(column) {
            for (value, other) in row.iter_mut().zip(column) {
                *value += one * other * by * by;
            }
        }
    }

    /// ΔE₀₀ to `target`, both as sure as they are (equation: [module](self)).
    #[must_use]
    pub fn difference(&self, target: &Reading) -> Difference {
        let mut covariance = self.covariance;
        add_to_diagonal(&mut covariance, target.uncertainty.map(|u| u * u));
        let square = |by: [f64; 3]| {
            let [l, a, b] = self.lab.parts();
            let [dl, da, db] = by;
            let moved = Lab::unchecked(l + dl, a + da, b + db);
            let difference = ciede2000(&moved, &target.lab);
            difference * difference
        };
        let at = square([0.0; 3]);
        let columns = root(&covariance);
        let (mut mean, mut variance, mut own) = (at, 0.0, [(0.0, 0.0); 3]);
        for (own, column) in own.iter_mut().zip(columns) {
            let (up, down) = (square(column), square(column.map(|x| -x)));
            let bend = (0.5 * (up + down) - at).max(0.0);
            let lean = 0.5 * (up - down);
            mean += bend;
            variance += 2.0 * bend * bend + lean * lean;
            *own = (up, bend);
        }
        for (i, j) in [(0, 1), (0, 2), (1, 2)] {
            let pair = own.get(i).zip(own.get(j)).zip(columns.get(i).zip(columns.get(j)));
            if let Some((((one, _), (two, _)), (first, second))) = pair {
                let [a, b, c] = *first;
                let [d, e, f] = *second;
                let cross = 0.5 * (square([a + d, b + e, c + f]) - one - two + at);
                variance += 4.0 * cross * cross;
            }
        }
        let quantile = |z: f64| {
            if variance <= 0.0 {
                return libm::sqrt(at);
            }
            // Its degrees of freedom are ν = 2 m²/v: 2/(9ν) = v/(9 m²).
            let part = variance / (9.0 * mean * mean);
            let root = (1.0 - part + z * libm::sqrt(part)).max(0.0);
            libm::sqrt(mean * root * root * root)
        };
        Difference {
            value: libm::sqrt(at),
            typical: libm::sqrt(mean),
            low: quantile(-1.96),
            high: quantile(1.96),
            uncertainty: libm::sqrt((mean - at).max(0.0) / 3.0),
        }
    }
}

pub(super) fn add_to_diagonal(matrix: &mut [[f64; 3]; 3], squares: [f64; 3]) {
    for (i, (row, square)) in matrix.iter_mut().zip(squares).enumerate() {
        if let Some(value) = row.get_mut(i) {
            *value += square;
        }
    }
}

pub(super) fn dot(one: &[f64; 3], other: &[f64; 3]) -> f64 {
    one.iter().zip(other).fold(0.0, |sum, (a, b)| sum + a * b)
}

pub(super) fn times(matrix: &[[f64; 3]; 3], vector: &[f64; 3]) -> [f64; 3] {
    [0, 1, 2].map(|i: usize| matrix.get(i).map_or(0.0, |row| dot(row, vector)))
}

/// Columns of a lower triangle whose square is `matrix` (Cholesky); of what rounding made negative, zero.
fn root(matrix: &[[f64; 3]; 3]) -> [[f64; 3]; 3] {
    let [[a, ..], [b, d, _], [c, e, f]] = *matrix;
    let l11 = libm::sqrt(a.max(0.0));
    let by = |x: f64, y: f64| if y > 0.0 { x / y } else { 0.0 };
    let (l21, l31) = (by(b, l11), by(c, l11));
    let l22 = libm::sqrt((d - l21 * l21).max(0.0));
    let l32 = by(e - l21 * l31, l22);
    let l33 = libm::sqrt((f - l31 * l31 - l32 * l32).max(0.0));
    [[l11, l21, l31], [0.0, l22, l32], [0.0, 0.0, l33]]
}

/// The inverse of a covariance, by its adjugate.
pub(super) fn inverse(matrix: &[[f64; 3]; 3]) -> Result<[[f64; 3]; 3], ColorError> {
    let [[a, b, c], [d, e, f], [g, h, i]] = *matrix;
    let (first, second, third) = (e * i - f * h, f * g - d * i, d * h - e * g);
    let whole = a * first + b * second + c * third;
    if !(whole.is_finite() && whole.abs() > 0.0) {
        return Err(ColorError::Range {
            what: "the uncertainty of a reading",
            range: "above zero",
        });
    }
    Ok([
        [first, c * h - b * i, b * f - c * e],
        [second, a * i - c * g, c * d - a * f],
        [third, b * g - a * h, a * e - b * d],
    ]
    .map(|row| row.map(|x| x / whole)))
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;
    use crate::color::kubelka_munk::Surface;
    use crate::color::lab::SRGB_BANDS;
    use crate::color::match_color::LetDown;

    /// Red and white in a base, read without error.
    fn colorants() -> Colorants {
        let paints =
            [[(2.0, 1.0), (80.0, 0.5), (60.0, 0.5)], [(0.1, 150.0), (0.1, 155.0), (0.2, 160.0)]];
        let base = [0.85, 0.84, 0.80];
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &base).unwrap();
        for paint in paints {
            let pour = |dose: f64| {
                let mut read = [0.0; 3];
                for (read, (r, (k, s))) in read.iter_mut().zip(base.iter().zip(paint)) {
                    let q = (1.0 - r) * (1.0 - r) / (2.0 * r);
                    *read = opaque((q + dose * k) / (1.0 + dose * s));
                }
                read
            };
            let (weak, strong) = (pour(0.002), pour(0.02));
            let let_downs = [(0.002, &weak), (0.02, &strong)];
            let let_downs = let_downs
                .map(|(dose, reflectance)| LetDown { dose: Ratio::from(dose), reflectance });
            colorants.add(&let_downs).unwrap();
        }
        colorants
    }

    fn reading(parts: [f64; 3], uncertainty: f64) -> Reading {
        let [l, a, b] = parts;
        Reading { lab: Lab::new(l, a, b).unwrap(), uncertainty: [uncertainty; 3] }
    }

    fn pot(colorants: &Colorants) -> ColorPot<'_> {
        let mut pot = ColorPot::new(colorants, &[]).unwrap();
        pot.add(0, Ratio::from(0.008), Ratio::from(0.0)).unwrap();
        pot.add(1, Ratio::from(0.004), Ratio::from(0.0)).unwrap();
        pot
    }

    /// Derivatives by doses and by strengths are those by differences, with the gloss as without.
    #[rstest]
    #[case(Surface::NONE)]
    #[case(Surface::new(0.04, 0.6).unwrap())]
    fn slopes_are_differences(#[case] surface: Surface) {
        const STEP: f64 = 1e-6;
        let mut colorants = colorants();
        colorants.bands.surface = surface;
        let pot = pot(&colorants);
        let slopes = pot.slopes_at(&pot.doses).unwrap();
        for j in 0..2 {
            let mut more = pot.doses.clone();
            more[j] += STEP;
            let more = pot.slopes_at(&more).unwrap().lab.parts();
            for ((more, here), slope) in more.iter().zip(slopes.lab.parts()).zip(slopes.doses[j]) {
                let found = (more - here) / STEP;
                assert!((found - slope).abs() < 1e-3 * slope.abs() + 0.1, "{found} {slope}");
            }
        }
        for place in 0..pot.strengths.len() {
            let mut more = pot.strengths.clone();
            more[place] += STEP;
            let more = pot.slopes(&pot.doses, &more).unwrap().lab.parts();
            for ((more, here), row) in more.iter().zip(slopes.lab.parts()).zip(&slopes.strengths) {
                let found = (more - here) / STEP;
                assert!((found - row[place]).abs() < 1e-3, "{found} {}", row[place]);
            }
        }
    }

    fn variance(pot: &ColorPot<'_>, row: usize, column: usize) -> f64 {
        pot.covariance[row * pot.strengths.len() + column]
    }

    fn near(found: f64, wanted: f64) {
        assert!((found - wanted).abs() <= 1e-12 * wanted.abs(), "{found} {wanted}");
    }

    /// By hand: of a base that reflects R, 0.03 (1 + R)/(1 − R), and a half at most; of a colorant, what its bands have in common
    /// everywhere, and of each band by itself what it has on top, and the reading of its let-downs.
    #[test]
    fn what_is_known_before_any_sample() {
        let mut colorants = Colorants::new(&SRGB_BANDS, Surface::NONE, &[0.5, 0.8, 1.0]).unwrap();
        let (weak, strong) = ([0.4, 0.5, 0.6], [0.1, 0.2, 0.3]);
        let let_downs = [(0.002, &weak), (0.02, &strong)]
            .map(|(dose, reflectance)| LetDown { dose: Ratio::from(dose), reflectance });
        colorants.add(&let_downs).unwrap();
        let pot = ColorPot::new(&colorants, &[]).unwrap();
        for (band, wanted) in [0.09, 0.27, 0.5].into_iter().enumerate() {
            for column in 0..6 {
                let square = if column == band { wanted * wanted } else { 0.0 };
                assert!((variance(&pot, band, column) - square).abs() < 1e-12, "{band} {column}");
            }
        }
        let learned = Strength { factors: vec![2.0, 1.0, 0.5], common: 0.2, own: 0.1 };
        let seen = ColorPot::new(&colorants, core::slice::from_ref(&learned)).unwrap();
        for (band, theta) in [libm::log(2.0), 0.0, -libm::log(2.0)].into_iter().enumerate() {
            let (row, read) = (3 + band, colorants.colorants[0].unsure[band]);
            assert!(read > 0.0);
            assert!((seen.strengths[row] - theta).abs() < 1e-15);
            for column in 3..6 {
                let both =
                    if column == row { (0.05 * 0.05 + read * read, 0.01) } else { (0.0, 0.0) };
                near(variance(&pot, row, column), 0.01 + both.0);
                near(variance(&seen, row, column), 0.04 + both.1);
            }
        }
    }

    /// Half of a dose by the count is a quarter more of variance, in all bands alike; nothing that is added says nothing.
    #[test]
    fn additions_scatter() {
        let colorants = colorants();
        let before = ColorPot::new(&colorants, &[]).unwrap();
        let mut pot = before.clone();
        pot.add(0, Ratio::from(0.0), Ratio::from(0.0)).unwrap();
        assert_eq!(pot, before);
        pot.add(1, Ratio::from(0.003), Ratio::from(0.0)).unwrap();
        pot.add(1, Ratio::from(0.001), Ratio::from(0.002)).unwrap();
        for row in 0..9 {
            for column in 0..9 {
                let more = if row >= 6 && column >= 6 { 0.25 } else { 0.0 };
                let found = variance(&pot, row, column) - variance(&before, row, column);
                assert!((found - more).abs() < 1e-12, "{row} {column}: {found}");
            }
        }
        // Less sure than all of it is not counted.
        pot.add(0, Ratio::from(0.001), Ratio::from(0.5)).unwrap();
        let found = variance(&pot, 3, 4) - variance(&before, 3, 4);
        assert!((found - 1.0).abs() < 1e-12, "{found}");
    }

    /// H P Hᵀ and what the mixing rule is off.
    #[test]
    fn an_expected_color_is_as_sure_as_the_strengths() {
        let colorants = colorants();
        let pot = pot(&colorants);
        let slopes = pot.slopes_at(&pot.doses).unwrap();
        let found = pot.expected().unwrap().covariance;
        for (i, of_row) in found.iter().enumerate() {
            for (j, found) in of_row.iter().enumerate() {
                let mut wanted = if i == j { 0.49 } else { 0.0 };
                for row in 0..9 {
                    for column in 0..9 {
                        wanted += slopes.strengths[i][row]
                            * variance(&pot, row, column)
                            * slopes.strengths[j][column];
                    }
                }
                assert!((found - wanted).abs() < 1e-9, "{i} {j}: {found} {wanted}");
            }
        }
    }

    /// The corrected strengths are the most likely ones (Bell and Cathey 1993): θᵀP⁻¹θ + (z − h)ᵀR⁻¹(z − h) is least there, and
    /// P⁻¹ + HᵀR⁻¹H is the inverse of what stays of P. Red alone, in all bands alike, and the base in each band: four numbers.
    #[test]
    fn a_correction_is_the_most_likely() {
        let colorants = colorants();
        let common = Strength { factors: vec![1.0; 3], common: 0.3, own: 0.0 };
        let mut pot = ColorPot::new(&colorants, &[common]).unwrap();
        pot.add(0, Ratio::from(0.008), Ratio::from(0.0)).unwrap();
        let prior = [0.09, variance(&pot, 0, 0), variance(&pot, 1, 1), variance(&pot, 2, 2)];
        let [l, a, b] = pot.expected().unwrap().lab.parts();
        let seen = reading([l - 4.0, a + 3.0, b - 1.0], 0.5);
        let noise = 0.25 + 0.49;
        let all = |four: [f64; 4]| {
            let [red, x, y, z] = four;
            [x, y, z, red, red, red, 0.0, 0.0, 0.0]
        };
        let cost = |four: [f64; 4]| {
            let lab = pot.slopes(&pot.doses, &all(four)).unwrap().lab.parts();
            let misfit = lab.iter().zip(seen.lab.parts()).map(|(h, z)| (z - h) * (z - h) / noise);
            let moved = four.iter().zip(prior).map(|(theta, square)| theta * theta / square);
            misfit.sum::<f64>() + moved.sum::<f64>()
        };
        let mut after = pot.clone();
        assert!(after.see(&seen).unwrap());
        let found = [3, 0, 1, 2].map(|place| after.strengths[place]);
        assert!(found[0] > 0.05, "{found:?}");
        assert!(after.strengths.iter().zip(all(found)).all(|(a, b)| (a - b).abs() < 1e-9));
        for i in 0..4 {
            for by in [-0.01, 0.01] {
                let mut moved = found;
                moved[i] += by;
                assert!(cost(moved) > cost(found), "{i} {by}: {} {}", cost(moved), cost(found));
            }
        }
        let slopes = pot.slopes(&pot.doses, &after.strengths).unwrap().strengths;
        let by = |row: usize| {
            let s = &slopes[row];
            [s[3] + s[4] + s[5], s[0], s[1], s[2]]
        };
        let places = [3, 0, 1, 2];
        for i in 0..4 {
            for j in 0..4 {
                let product: f64 = (0..4)
                    .map(|k| {
                        let sure: f64 = (0..3).map(|row| by(row)[k] * by(row)[j] / noise).sum();
                        let sure = sure + if k == j { 1.0 / prior[k] } else { 0.0 };
                        variance(&after, places[i], places[k]) * sure
                    })
                    .sum();
                let unit = if i == j { 1.0 } else { 0.0 };
                assert!((product - unit).abs() < 1e-3, "{i} {j}: {product}");
            }
        }
    }

    /// χ² of a sample is known by hand where nothing but the reading is unsure: along L*, (ΔL*)²/(u² + 0.49).
    #[test]
    fn one_sample_in_a_thousand_is_a_surprise() {
        let colorants = colorants();
        let sure = Strength { factors: vec![1.0; 3], common: 0.0, own: 0.0 };
        let mut pot = ColorPot::new(&colorants, &[sure.clone(), sure]).unwrap();
        pot.covariance.fill(0.0);
        pot.add(0, Ratio::from(0.008), Ratio::from(0.0)).unwrap();
        let [l, a, b] = pot.expected().unwrap().lab.parts();
        let unsure = libm::sqrt(0.51);
        for (off, is_usual) in [(4.0, true), (4.06, false), (-4.0, true), (-4.06, false)] {
            let mut pot = pot.clone();
            assert_eq!(pot.see(&reading([l + off, a, b], unsure)), Ok(is_usual), "{off}");
            assert_eq!(pot.strengths, [0.0; 9]);
        }
    }

    /// χ² is that of what was expected before the sample: dᵀ(C + u²)⁻¹d, not of what it has corrected.
    #[test]
    fn a_surprise_is_next_to_what_was_expected() {
        let colorants = colorants();
        let pot = pot(&colorants);
        let expected = pot.expected().unwrap();
        let [l, a, b] = expected.lab.parts();
        let mut spread = expected.covariance;
        add_to_diagonal(&mut spread, [0.25; 3]);
        for by in [[1.0, 0.0, 0.0], [-1.0, 0.5, 0.0], [0.0, 1.0, 1.0], [0.3, -1.0, 0.2]] {
            let one = dot(&by, &times(&inverse(&spread).unwrap(), &by));
            for (times, is_usual) in [(0.999, true), (1.001, false)] {
                let [x, y, z] = by.map(|x| x * times * libm::sqrt(16.27 / one));
                let seen = reading([l + x, a + y, b + z], 0.5);
                assert_eq!(pot.clone().see(&seen), Ok(is_usual), "{by:?} {times}");
            }
        }
    }

    /// No sample moves a strength by more than e³ at once.
    #[test]
    fn no_strength_runs_away() {
        let colorants = colorants();
        let unsure = Strength { factors: vec![1.0; 3], common: 1.0, own: 1.0 };
        let mut pot = ColorPot::new(&colorants, &[unsure.clone(), unsure]).unwrap();
        pot.add(0, Ratio::from(1e-5), Ratio::from(0.0)).unwrap();
        assert!(!pot.see(&reading([1.0, 0.0, 0.0], 0.01)).unwrap());
        assert!(pot.strengths.iter().all(|theta| theta.abs() <= 3.0), "{:?}", pot.strengths);
        assert!(pot.strengths.contains(&3.0), "{:?}", pot.strengths);
    }

    /// What is expected without any sample is what the model says of the doses.
    #[test]
    fn nothing_seen_is_the_model() {
        let colorants = colorants();
        let pot = pot(&colorants);
        let expected = pot.expected().unwrap();
        assert_eq!(expected.lab, colorants.lab(&pot.doses()).unwrap());
        assert!(expected.uncertainty().iter().all(|u| *u > MODEL), "{expected:?}");
    }

    /// A sure sample is believed, one that says nothing changes nothing, and one in between lies between.
    #[test]
    fn a_sample_counts_by_what_it_is_worth() {
        let colorants = colorants();
        let before = pot(&colorants).expected().unwrap();
        let [l, a, b] = before.lab.parts();
        let seen = [l - 3.0, a + 4.0, b + 1.0];
        let after = |uncertainty: f64| {
            let mut pot = pot(&colorants);
            assert!(pot.see(&reading(seen, uncertainty)).unwrap());
            pot.expected().unwrap()
        };
        let (sure, medium, none) = (after(0.01), after(3.0), after(300.0));
        let off = |found: &Expected| {
            let parts = found.lab.parts();
            libm::sqrt((0..3).map(|i| (parts[i] - seen[i]) * (parts[i] - seen[i])).sum())
        };
        assert!(off(&sure) < 0.8, "{sure:?} {seen:?}");
        assert!(off(&sure) < off(&medium) && off(&medium) < off(&none), "{medium:?}");
        for (i, before_part) in before.lab.parts().iter().enumerate() {
            assert!((none.lab.parts()[i] - before_part).abs() < 0.01, "{none:?}");
            assert!(sure.uncertainty()[i] < before.uncertainty()[i]);
        }
        let mut pot = pot(&colorants);
        assert!(!pot.see(&reading([l - 30.0, a - 40.0, b], 0.5)).unwrap());
    }

    /// Strengths come back: a pot of red half as strong again in all bands, seen three times.
    #[test]
    fn a_strength_is_learned() {
        let colorants = colorants();
        let mut pot = ColorPot::new(&colorants, &[]).unwrap();
        let mut doses = [0.0; 2];
        for _ in 0..3 {
            pot.add(0, Ratio::from(0.003), Ratio::from(0.0)).unwrap();
            doses[0] += 0.003 * 1.2;
            let is = colorants.lab(&doses.map(Ratio::from)).unwrap();
            pot.see(&Reading { lab: is, uncertainty: [0.3; 3] }).unwrap();
        }
        let found = pot.strength(0).unwrap();
        assert!((found.factors[1] - 1.2).abs() < 0.05, "{found:?}");
        assert!((found.factors[2] - 1.2).abs() < 0.06, "{found:?}");
        assert!(found.common < STRENGTH, "{found:?}");
        // What was never in the pot is as it was.
        let white = pot.strength(1).unwrap();
        assert!((white.common - STRENGTH).abs() < 1e-9 && white.factors == [1.0; 3], "{white:?}");
        assert_eq!(pot.strength(2), None);
        // It is the start of another pot.
        let next = ColorPot::new(&colorants, core::slice::from_ref(&found)).unwrap();
        let again = next.strength(0).unwrap();
        assert!(again.factors.iter().zip(&found.factors).all(|(a, b)| (a - b).abs() < 1e-12));
        assert!((again.common - found.common).abs() < 1e-9, "{again:?} {found:?}");
    }

    /// One sample moves no strength by more than a factor of e³, 20, whatever it reads: here of a colorant of which hardly anything
    /// is known, and of samples that look nothing like the pot.
    #[test]
    fn no_sample_moves_a_strength_out_of_reason() {
        let colorants = colorants();
        let unsure = Strength { factors: vec![2.0; 3], common: 1.0, own: 1.0 };
        let (mut least, mut most) = (f64::INFINITY, 0.0_f64);
        for lab in [[100.0, 0.0, 0.0], [0.0, 0.0, 0.0], [60.0, -60.0, 50.0], [90.0, -30.0, 5.0]] {
            let mut pot = ColorPot::new(&colorants, &[unsure.clone(), unsure.clone()]).unwrap();
            pot.add(0, Ratio::from(0.008), Ratio::from(0.0)).unwrap();
            pot.see(&reading(lab, 0.01)).unwrap();
            for factor in pot.strength(0).unwrap().factors {
                (least, most) = (least.min(factor / 2.0), most.max(factor / 2.0));
            }
        }
        let limit = libm::exp(3.0);
        assert!((least * limit - 1.0).abs() < 1e-9, "{least}");
        assert!(most > 2.0 && most < limit * (1.0 + 1e-9), "{most}");
    }

    /// By hand: variances of 0.04, 0.05 and 0.06 and covariances of 0.01, 0.02 and 0.03 have 0.02 in common.
    #[test]
    fn a_strength_has_a_common_part() {
        let colorants = colorants();
        let mut pot = pot(&colorants);
        let mut put = |row: usize, column: usize, square: f64| {
            let count = pot.strengths.len();
            pot.covariance[row * count + column] = square;
            pot.covariance[column * count + row] = square;
        };
        for (row, square) in [(6, 0.04), (7, 0.05), (8, 0.06)] {
            put(row, row, square);
        }
        for (row, column, square) in [(6, 7, 0.01), (6, 8, 0.02), (7, 8, 0.03)] {
            put(row, column, square);
        }
        // More in common than in all, and less than nothing: as rounding may leave it.
        for (row, column) in [(3, 4), (3, 5), (4, 5)] {
            put(row, column, 0.02);
        }
        for row in 3..6 {
            put(row, row, 0.01);
        }
        let found = pot.strength(1).unwrap();
        assert!((found.common - libm::sqrt(0.02)).abs() < 1e-12, "{found:?}");
        assert!((found.own - libm::sqrt(0.03)).abs() < 1e-12, "{found:?}");
        let found = pot.strength(0).unwrap();
        assert!((found.common - 0.1).abs() < 1e-12 && found.own.abs() < 1e-7, "{found:?}");
    }

    /// With one band there is nothing to have in common.
    #[test]
    fn a_single_band_has_no_common_part() {
        let band = [crate::color::lab::D65];
        let mut colorants = Colorants::new(&band, Surface::NONE, &[0.8]).unwrap();
        let let_downs = [(0.002, &[0.5]), (0.02, &[0.2])]
            .map(|(dose, reflectance)| LetDown { dose: Ratio::from(dose), reflectance });
        colorants.add(&let_downs).unwrap();
        let learned = Strength { factors: vec![1.0], common: 0.03, own: 0.04 };
        let pot = ColorPot::new(&colorants, &[learned]).unwrap();
        let found = pot.strength(0).unwrap();
        assert_eq!(found.common, 0.0);
        assert!((found.own - 0.05).abs() < 1e-12, "{found:?}");
    }

    #[test]
    fn limits_are_inside() {
        let colorants = colorants();
        let strength =
            |common: f64, own: f64, factor: f64| Strength { factors: vec![factor; 3], common, own };
        for (common, own, factor, will_do) in [
            (0.0, 0.0, 0.01, true),
            (1.0, 1.0, 100.0, true),
            (1.01, 0.1, 1.0, false),
            (0.1, 1.01, 1.0, false),
            (-0.01, 0.1, 1.0, false),
            (0.1, -0.01, 1.0, false),
            (0.1, 0.1, 0.0099, false),
            (0.1, 0.1, 100.1, false),
        ] {
            let found = ColorPot::new(&colorants, &[strength(common, own, factor)]);
            assert_eq!(found.is_ok(), will_do, "{common} {own} {factor}");
        }
        let mut pot = pot(&colorants);
        let doses = pot.doses();
        pot.thin(1.0).unwrap();
        assert_eq!(pot.doses(), doses);
        assert!(pot.add(0, Ratio::from(0.1), Ratio::from(-0.1)).is_err());
        let seen = pot.expected().unwrap().lab;
        for (unsure, will_do) in [(1e-6, true), (9e-7, false), (1e3, true), (1.1e3, false)] {
            let seen = Reading { lab: seen, uncertainty: [1.0, unsure, 1.0] };
            assert_eq!(pot.clone().see(&seen).is_ok(), will_do, "{unsure}");
        }
    }

    /// Near a gray of L* 50, ΔE₀₀² is ΔL*² + (1.5 Δa*)² + Δb*² (equations 4 to 22 of Sharma et al. without chroma). Of a color
    /// with the covariance C its mean is then tr(MC), and its variance 2 tr((MC)²): M is that form.
    #[test]
    fn a_difference_is_a_quadratic_form() {
        let lab = Lab::new(50.0, 0.0, 0.0).unwrap();
        let own = [[5e-8, 4e-8, -3e-8], [4e-8, 9e-8, 2e-8], [-3e-8, 2e-8, 6e-8]];
        let target = Reading { lab, uncertainty: [5e-5, 1e-4, 5e-5] };
        let mut all = own;
        for (i, square) in [2.5e-9, 1e-8, 2.5e-9].into_iter().enumerate() {
            all[i][i] += square;
        }
        let form = [1.0, 2.25, 1.0];
        let mean: f64 = (0..3).map(|i| form[i] * all[i][i]).sum();
        let mut variance = 0.0;
        for i in 0..3 {
            for j in 0..3 {
                variance += 2.0 * form[i] * all[i][j] * form[j] * all[j][i];
            }
        }
        let found = Expected { lab, covariance: own }.difference(&target);
        let is = |found: f64, wanted: f64| {
            assert!((found / wanted - 1.0).abs() < 2e-3, "{found} {wanted}");
        };
        assert_eq!(found.value, 0.0);
        is(found.typical, libm::sqrt(mean));
        is(found.uncertainty, libm::sqrt(mean / 3.0));
        // Wilson and Hilferty: (x/m)^⅓ is about normal, 1 − v/(9m²) ± √(v/(9m²)).
        let part = variance / (9.0 * mean * mean);
        for (found, z) in [(found.low, -1.96), (found.high, 1.96)] {
            is(found, libm::sqrt(mean * libm::pow(1.0 - part + z * libm::sqrt(part), 3.0)));
        }
    }

    /// Far off along L*, where ΔE₀₀ is |ΔL*|/S_L: the square has the mean d² + u² and the variance 4d²u² + 2u⁴; and of two
    /// colors that are known the difference is too.
    #[test]
    fn a_difference_far_off() {
        let lab = Lab::new(50.0, 0.0, 0.0).unwrap();
        let expected = Expected { lab, covariance: [[0.09, 0.0, 0.0], [0.0; 3], [0.0; 3]] };
        // S_L is 1 + 0.015 · 0.25/√20.25 at the mean of 49.5, next to nothing.
        let target = Reading { lab: Lab::new(49.0, 0.0, 0.0).unwrap(), uncertainty: [0.0; 3] };
        let found = expected.difference(&target);
        let (mean, variance) = (1.09, 4.0 * 0.09 + 2.0 * 0.0081);
        let is = |found: f64, wanted: f64| {
            assert!((found / wanted - 1.0).abs() < 3e-3, "{found} {wanted}");
        };
        is(found.value, 1.0);
        is(found.typical, libm::sqrt(mean));
        is(found.uncertainty, libm::sqrt(0.03));
        let part: f64 = variance / (9.0 * mean * mean);
        for (found, z) in [(found.low, -1.96), (found.high, 1.96)] {
            is(found, libm::sqrt(mean * libm::pow(1.0 - part + z * libm::sqrt(part), 3.0)));
        }
        let known = Expected { lab, covariance: [[0.0; 3]; 3] }.difference(&target);
        assert_eq!([known.low, known.high, known.typical], [known.value; 3]);
        assert_eq!(known.uncertainty, 0.0);
        let same = Reading { lab, uncertainty: [0.0; 3] };
        let same = Expected { lab, covariance: [[0.0; 3]; 3] }.difference(&same);
        assert_eq!([same.value, same.low, same.high, same.typical], [0.0; 4]);
    }

    /// An error along the way to the target counts, one across it hardly: u(ΔE₀₀) is √(gᵀCg), g by differences.
    #[test]
    fn a_difference_has_a_direction() {
        let target = Reading { lab: Lab::new(52.0, 3.0, 7.0).unwrap(), uncertainty: [0.0; 3] };
        let off = |by: [f64; 3]| {
            ciede2000(&Lab::unchecked(50.0 + by[0], by[1], 4.0 + by[2]), &target.lab)
        };
        let g = [0, 1, 2].map(|i: usize| {
            let mut by = [0.0; 3];
            by[i] = 1e-5;
            (off(by) - off(by.map(|x| -x))) / 2e-5
        });
        assert!(g.iter().all(|x| x.abs() > 0.1), "{g:?}");
        for signs in [[1.0, 1.0, 1.0], [1.0, -1.0, 1.0], [1.0, 1.0, -1.0], [-1.0, 1.0, 1.0]] {
            let along = signs.map(|sign| sign * 1e-3);
            let mut expected =
                Expected { lab: Lab::unchecked(50.0, 0.0, 4.0), covariance: [[0.0; 3]; 3] };
            expected.add_along(&along, 1.0);
            let found = expected.difference(&target);
            let wanted = dot(&g, &along).abs();
            let half = (found.high - found.low) / (2.0 * 1.96);
            assert!((half / wanted - 1.0).abs() < 0.01, "{signs:?}: {half} {wanted}");
        }
    }

    /// By hand: a reading on the diagonal, and 2 along (1, 0, −3).
    #[test]
    fn uncertainty_is_added() {
        let seen = Reading { uncertainty: [1.0, 2.0, 3.0], ..reading([50.0, 0.0, 0.0], 1.0) };
        let mut found = Expected::of(&seen);
        assert_eq!(found.uncertainty(), [1.0, 2.0, 3.0]);
        found.add(&seen);
        found.add_along(&[1.0, 0.0, -3.0], 2.0);
        assert_eq!(found.covariance, [[6.0, 0.0, -12.0], [0.0, 8.0, 0.0], [-12.0, 0.0, 54.0]]);
        assert_eq!(found.lab, seen.lab);
    }

    #[test]
    fn more_base_thins() {
        let colorants = colorants();
        let mut pot = pot(&colorants);
        pot.thin(0.5).unwrap();
        assert_eq!(pot.doses(), [0.004, 0.002].map(Ratio::from));
        assert!(pot.thin(0.0).is_err() && pot.thin(1.5).is_err() && pot.thin(f64::NAN).is_err());
    }

    /// Along L* at 50, where ΔE₀₀ is |ΔL*|: 2.5 and 97.5 per cent of |z| are 0.0313 and 2.2414 (normal tables).
    #[test]
    fn the_band_of_a_difference() {
        let lab = Lab::new(50.0, 0.0, 0.0).unwrap();
        let expected = Expected { lab, covariance: [[1.0, 0.0, 0.0], [0.0; 3], [0.0; 3]] };
        let sure = Reading { lab, uncertainty: [0.0; 3] };
        let found = expected.difference(&sure);
        assert!((found.high / 2.2414 - 1.0).abs() < 0.02, "{found:?}");
        assert!(found.low < 0.05 && found.value == 0.0, "{found:?}");
        assert!((found.typical - 1.0).abs() < 0.01, "{found:?}");
        // Far from the target it is normal: 10 ± 1.96.
        let far = Reading { lab: Lab::new(60.0, 0.0, 0.0).unwrap(), uncertainty: [0.0; 3] };
        let found = expected.difference(&far);
        assert!((found.low / (found.value - 1.96 * 0.93) - 1.0).abs() < 0.03, "{found:?}");
        assert!((found.high / (found.value + 1.96 * 0.93) - 1.0).abs() < 0.03, "{found:?}");
    }

    #[test]
    fn small_matrices() {
        let matrix = [[4.0, 1.0, 0.5], [1.0, 3.0, 0.2], [0.5, 0.2, 2.0]];
        let (inverse, columns) = (inverse(&matrix).unwrap(), root(&matrix));
        for i in 0..3 {
            for j in 0..3 {
                let unit: f64 = (0..3).map(|k| matrix[i][k] * inverse[k][j]).sum();
                assert!((unit - f64::from(u8::from(i == j))).abs() < 1e-12);
                let square: f64 = columns.iter().map(|column| column[i] * column[j]).sum();
                assert!((square - matrix[i][j]).abs() < 1e-12);
            }
        }
        assert!(super::inverse(&[[0.0; 3]; 3]).is_err());
        assert!(super::inverse(&[[f64::NAN; 3]; 3]).is_err());
        // Not of a covariance: the minors have signs and places of their own.
        let odd = [[1.0, 2.0, 3.0], [0.0, 4.0, 5.0], [1.0, 0.0, 6.0]];
        let inverse = super::inverse(&odd).unwrap();
        let wanted = [[24.0, -12.0, -2.0], [5.0, 3.0, -5.0], [-4.0, 2.0, 4.0]];
        for (row, wanted) in inverse.iter().zip(wanted) {
            assert!(row.iter().zip(wanted).all(|(a, b)| (a * 22.0 - b).abs() < 1e-12), "{row:?}");
        }
        // Known along one line only, and less than nothing by rounding.
        let line = [[4.0, 2.0, -6.0], [2.0, 1.0, -3.0], [-6.0, -3.0, 9.0]];
        assert_eq!(root(&line), [[2.0, 1.0, -3.0], [0.0; 3], [0.0; 3]]);
        assert_eq!(root(&[[-1e-20, 0.0, 0.0], [0.0; 3], [0.0; 3]]), [[0.0; 3]; 3]);
    }

    #[test]
    fn refuses_what_cannot_be() {
        let colorants = colorants();
        let strength =
            |common: f64, factor: f64| Strength { factors: vec![factor; 3], common, own: 0.1 };
        for bad in [
            strength(2.0, 1.0),
            strength(0.1, 0.0),
            strength(f64::NAN, 1.0),
            strength(0.1, f64::NAN),
        ] {
            assert!(ColorPot::new(&colorants, &[bad]).is_err());
        }
        let mut pot = pot(&colorants);
        let third = pot.add(2, Ratio::from(0.1), Ratio::from(0.0));
        assert_eq!(third, Err(ColorError::Doses { found: 3, wanted: 2 }));
        assert!(pot.add(0, Ratio::from(-0.1), Ratio::from(0.0)).is_err());
        assert!(
            pot.see(&Reading { uncertainty: [0.0; 3], ..reading([50.0, 0.0, 0.0], 1.0) }).is_err()
        );
    }
}

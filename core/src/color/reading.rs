//! A color from a photograph with a white or gray card in it, and how sure it is.
//!
//! **Linear light.** A patch of sRGB pixels with the mean V and the standard deviation σ in a channel has about
//! f(V) + ½ f″(V) σ² of linear light there, f the curve of sRGB (delta method, JCGM 100 5.1.2).
//!
//! **Card.** In each channel the steps of the card, of stated reflectance ρ, give ln ρ = ln g + γ ln C: a gain g by one step
//! (γ = 1), with the camera's curve γ by two steps or more, by least squares. The patch reflects ρ(C) in that channel.
//!
//! **Uncertainty.** Per channel: the noise of the pixels, of which about 16 are one (they are interpolated and
//! compressed); unevenness of the card; what the steps leave over, with the leverage of the fit. Repeat pictures give it
//! better: s/√n. Without them it is at least [`REPEATED`]. Against readings of another camera or instrument it is
//! [`OTHER_INSTRUMENT`].
//!
//! **The picture must do.** Clipped pixels, a card in uneven light, a patch brighter than white (the card is in a shadow),
//! or a patch of a few pixels are refused; less of it is a note.

use alloc::borrow::Cow;
use alloc::vec::Vec;

use crate::codes::codes;
use crate::color::ColorError;
use crate::color::lab::{D65, Lab, Xyz, decoded};
use crate::fault::Diagnose;
use crate::show;

/// Standard uncertainty of each of L\*, a\*, b\* of a photographed color next to others by the same camera, card and light
/// (common practice, no source).
pub const REPEATED: f64 = 1.0;

/// The same of a colorimeter or a spectrophotometer (common practice, no source).
pub const INSTRUMENT: f64 = 0.3;

/// Standard uncertainty of each of L\*, a\*, b\* of a photographed color next to one by another camera or an instrument. A
/// study of phone cameras found a mean ΔE₀₀ above 10 by plain sRGB, about half of that with a chart in the picture, and
/// plastic pieces as the hardest (abstract: lawdata.com.tw, no. 475787); a mean of 5 is about 3 in each.
pub const OTHER_INSTRUMENT: f64 = 3.0;

/// Standard uncertainties that converting L\*, a\*, b\* from D50 to D65 adds: root mean squares over the reflectances of two
/// color charts, converted as here and calculated from the spectra, both by colour-science 0.4.7.
pub const FROM_D50: [f64; 3] = [0.4, 0.9, 0.9];

/// White of D50 (ASTM E308, observer of 2°).
const D50: Xyz = Xyz { x: 0.964_22, y: 1.0, z: 0.825_21 };

/// L\*a\*b\* in D65 of one in D50, by the Bradford transform (ICC.1:2022, annex E).
///
/// # Errors
/// [`ColorError::Range`] for a color darker than any.
pub fn from_d50(lab: &Lab) -> Result<Lab, ColorError> {
    const ROWS: [[f64; 3]; 3] = [
        [0.955_536_672_049_144_9, -0.023_060_172_744_971, 0.063_218_489_685_554_7],
        [-0.028_315_374_694_589_3, 1.009_951_412_211_142, 0.021_025_967_180_323_9],
        [0.012_308_753_211_801_8, -0.020_500_599_193_419_2, 1.330_194_743_073_174_4],
    ];
    let Xyz { x, y, z } = lab.xyz(&D50);
    let [x, y, z] = ROWS.map(|[a, b, c]| a * x + b * y + c * z);
    Lab::of(&Xyz { x, y, z }, &D65)
}

/// Pixels that count as one.
const ALIKE: f64 = 16.0;
/// Fewest pixels of a patch.
const FEWEST: u32 = 100;
/// Share of clipped pixels from which a patch is refused.
const MOST_CLIPPED: f64 = 0.02;
/// Means beyond these are at the end of what the camera stores.
const DARKEST: f64 = 3.0;
const BRIGHTEST: f64 = 252.0;
/// Relative deviation in linear light from which a card is refused, and from which it is a note.
const CARD_REFUSED: f64 = 0.25;
const CARD_NOTED: f64 = 0.08;
/// The same of a patch, which may have a texture: a note only.
const PATCH_NOTED: f64 = 0.3;
/// What a patch may reflect at most next to a card that is in the same light.
const MOST_WHITE: f64 = 1.1;
/// Relative misfit of the steps of a card from which they are refused.
const CURVE_REFUSED: f64 = 0.15;
/// A card below this share of what it should be is in a shadow, or the picture is dark.
const DARK_CARD: f64 = 0.15;

/// A color that was read, and how sure that is.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Reading {
    /// The color.
    pub lab: Lab,
    /// Standard uncertainties of L\*, a\*, b\*, taken as independent.
    pub uncertainty: [f64; 3],
}

/// Pixels of one area of a picture.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Patch {
    /// Mean of red, green and blue, from 0 to 255, as the picture stores them.
    pub mean: [f64; 3],
    /// Their standard deviations over the area.
    pub deviation: [f64; 3],
    /// Number of pixels.
    pub pixels: u32,
    /// Share of pixels with a channel at 0 or 255.
    pub clipped: f64,
}

/// A white or gray area of a card.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct GrayStep {
    /// What it reflects, above 0 to 1: as stated on the card.
    pub reflectance: f64,
    /// Its pixels.
    pub patch: Patch,
}

/// A color as a photograph has it.
#[derive(Debug, Clone, PartialEq)]
#[must_use]
pub struct Photographed {
    /// The color.
    pub lab: Lab,
    /// What the patch reflects in the three channels.
    pub reflectance: [f64; 3],
    /// Standard uncertainty of L\*, a\*, b\*, from within the picture alone.
    pub uncertainty: [f64; 3],
    /// Camera's curve γ in each channel; 1 with one step.
    pub curve: [f64; 3],
    /// What is worth knowing about the picture.
    pub notes: Vec<PhotoNote>,
}

/// What is not as good as it could be with a picture.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum PhotoNote {
    /// Light on the card varies by this share.
    UnevenCard(f64),
    /// Light or color of the patch varies by this share.
    UnevenPatch(f64),
    /// The card is this share as bright as it could be.
    DarkCard(f64),
}

/// Why a picture gives no color.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ReadingError {
    /// A number that cannot be.
    #[error("{what} must be {range}.")]
    Range {
        /// Which.
        what: &'static str,
        /// Its range, in words.
        range: &'static str,
    },
    /// No card.
    #[error("There is no white or gray card in the picture.")]
    NoCard,
    /// Pixels at the end of what the camera stores.
    #[error("{what} is clipped: its color is lost.")]
    Clipped {
        /// Patch or card.
        what: &'static str,
    },
    /// Few pixels.
    #[error("{what} has {pixels} pixels; at least {FEWEST} are needed.")]
    TooSmall {
        /// Patch or card.
        what: &'static str,
        /// How many it has.
        pixels: u32,
    },
    /// Light differs over the card.
    #[error("Light on the card varies by {} %; at most {} % will do.", show::number(*.share * 100.0), CARD_REFUSED * 100.0)]
    UnevenCard {
        /// Relative standard deviation.
        share: f64,
    },
    /// The patch reflects more than white.
    #[error("The patch comes out as {} % of white.", show::number(*.share * 100.0))]
    AboveWhite {
        /// Its reflectance.
        share: f64,
    },
    /// Steps of a card that no curve of a camera has.
    #[error("The steps of the card do not fit one curve: they are off by {} %.", show::number(*.off * 100.0))]
    Curve {
        /// Relative misfit.
        off: f64,
    },
}

impl Diagnose for ReadingError {
    codes! {
        Self::Range { .. } => "out-of-range",
        Self::NoCard => "photo-no-card",
        Self::Clipped { .. } => "photo-clipped",
        Self::TooSmall { .. } => "photo-too-small",
        Self::UnevenCard { .. } => "photo-uneven-card",
        Self::AboveWhite { .. } => "photo-above-white",
        Self::Curve { .. } => "photo-no-curve",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Range { .. } => "Correct that number.",
            Self::NoCard => {
                "Put a white or gray card of known reflectance next to the piece, in the same light."
            }
            Self::Clipped { .. } => {
                "Take the picture again: darker if it is too bright, in more light if it is too dark."
            }
            Self::TooSmall { .. } => "Mark a larger area, or take the picture from nearer.",
            Self::UnevenCard { .. } => {
                "Turn away from the lamp or window until the card is evenly lit, and keep your shadow off it."
            }
            Self::AboveWhite { .. } => {
                "The card is in a shadow, or the piece shines: put them side by side in the same soft light."
            }
            Self::Curve { .. } => {
                "Check the reflectances of the steps and their order, and that no step is in a shadow."
            }
        }
        .into()
    }
}

impl PhotoNote {
    /// What is said of it, with what would do.
    #[must_use]
    pub fn text(&self) -> alloc::string::String {
        let percent = |share: f64| show::number(libm::round(share * 100.0));
        match self {
            Self::UnevenCard(share) => alloc::format!(
                "Light on the card varies by {} %. Softer light from the front makes the reading surer.",
                percent(*share)
            ),
            Self::UnevenPatch(share) => alloc::format!(
                "The patch varies by {} %: gloss, a shadow or flake in it. Mark an even part of it.",
                percent(*share)
            ),
            Self::DarkCard(share) => alloc::format!(
                "The card is only {} % as bright as it could be: a shadow, or a dark picture. More light makes the reading surer.",
                percent(*share)
            ),
        }
    }
}

/// Color of `patch` next to the steps of `card` in the same picture (equations: [module](self)).
///
/// # Errors
/// Those of [`ReadingError`].
pub fn photographed(patch: &Patch, card: &[GrayStep]) -> Result<Photographed, ReadingError> {
    if card.is_empty() {
        return Err(ReadingError::NoCard);
    }
    patch.check("The patch")?;
    let mut notes = Vec::new();
    let mut worst_card: f64 = 0.0;
    let mut dark: f64 = 1.0;
    for step in card {
        step.patch.check("The card")?;
        if !(step.reflectance >= 0.01 && step.reflectance <= 1.0) {
            return Err(ReadingError::Range {
                what: "the reflectance of a card",
                range: "from 1 % to 100 %",
            });
        }
        for channel in 0..3 {
            let light = step.patch.light(channel);
            worst_card = worst_card.max(light.spread);
            dark = dark.min(light.linear / step.reflectance);
        }
    }
    if worst_card > CARD_REFUSED {
        return Err(ReadingError::UnevenCard { share: worst_card });
    }
    if worst_card > CARD_NOTED {
        notes.push(PhotoNote::UnevenCard(worst_card));
    }
    if dark < DARK_CARD {
        notes.push(PhotoNote::DarkCard(dark));
    }
    let (mut reflectance, mut unsure, mut curve) = ([0.0; 3], [0.0; 3], [1.0; 3]);
    let mut worst_patch: f64 = 0.0;
    let places = reflectance.iter_mut().zip(&mut unsure).zip(&mut curve);
    for (channel, ((reflectance, unsure), curve)) in places.enumerate() {
        let light = patch.light(channel);
        worst_patch = worst_patch.max(light.spread);
        let fit = Fit::of(card, channel)?;
        *curve = fit.slope;
        *reflectance = libm::exp(fit.at(libm::log(light.linear)));
        *unsure = fit.unsure(libm::log(light.linear), light.unsure);
    }
    if worst_patch > PATCH_NOTED {
        notes.push(PhotoNote::UnevenPatch(worst_patch));
    }
    let brightest = reflectance.iter().copied().fold(0.0, f64::max);
    if !brightest.is_finite() || brightest > MOST_WHITE {
        return Err(ReadingError::AboveWhite { share: brightest });
    }
    let reflectance = reflectance.map(|share| share.min(1.0));
    let lab = Lab::of_linear(&reflectance);
    // Each channel by itself: how far its own uncertainty moves the color.
    let mut squares = [0.0; 3];
    for (channel, relative) in unsure.iter().enumerate() {
        let mut moved = reflectance;
        if let Some(value) = moved.get_mut(channel) {
            *value *= 1.0 + relative;
        }
        let moved = Lab::of_linear(&moved);
        let by = [moved.lightness() - lab.lightness(), moved.a() - lab.a(), moved.b() - lab.b()];
        for (square, by) in squares.iter_mut().zip(by) {
            *square += by * by;
        }
    }
    Ok(Photographed { lab, reflectance, uncertainty: squares.map(libm::sqrt), curve, notes })
}

/// The mean of repeat pictures of one piece, and its standard uncertainty: their scatter by √n for three or more, else
/// [`REPEATED`] by √n; never less than the pictures' own.
#[must_use]
pub fn repeated(pictures: &[Photographed]) -> Option<(Lab, [f64; 3])> {
    // At most as many as a request holds: exact.
    let count = pictures.len() as f64;
    let mean = |of: &dyn Fn(&Photographed) -> f64| {
        pictures.iter().fold(0.0, |sum, one| sum + of(one)) / count
    };
    let part = |lab: &Lab, i: usize| lab.parts().get(i).copied().unwrap_or_default();
    let (mut lab, mut unsure) = ([0.0; 3], [0.0; 3]);
    for (i, (lab, unsure)) in lab.iter_mut().zip(&mut unsure).enumerate() {
        *lab = mean(&|one| part(&one.lab, i));
        let own = mean(&|one| one.uncertainty.get(i).map_or(0.0, |u| u * u)) / count;
        let scatter = if pictures.len() >= 3 {
            let center = *lab;
            let squares = mean(&|one| {
                let off = part(&one.lab, i) - center;
                off * off
            });
            squares / (count - 1.0)
        } else {
            REPEATED * REPEATED / count
        };
        *unsure = libm::sqrt(own.max(scatter));
    }
    let [lightness, a, b] = lab;
    (!pictures.is_empty()).then(|| (Lab::unchecked(lightness, a, b), unsure))
}

/// Linear light of a patch in one channel.
struct Light {
    linear: f64,
    /// Relative standard deviation over the patch.
    spread: f64,
    /// Relative standard uncertainty of the mean by the noise of its pixels.
    unsure: f64,
}

impl Patch {
    fn check(&self, what: &'static str) -> Result<(), ReadingError> {
        let range = |what, range| Err(ReadingError::Range { what, range });
        if !self.mean.iter().all(|x| (0.0..=255.0).contains(x)) {
            return range("a mean of pixels", "from 0 to 255");
        }
        if !self.deviation.iter().all(|x| (0.0..=128.0).contains(x)) {
            return range("a deviation of pixels", "from 0 to 128");
        }
        if !crate::check::is_share(self.clipped) {
            return range("a share of clipped pixels", "from 0 % to 100 %");
        }
        if self.pixels < FEWEST {
            return Err(ReadingError::TooSmall { what, pixels: self.pixels });
        }
        let is_lost = |x: &f64| !(DARKEST..=BRIGHTEST).contains(x);
        if self.clipped > MOST_CLIPPED || self.mean.iter().any(is_lost) {
            return Err(ReadingError::Clipped { what });
        }
        Ok(())
    }

    fn light(&self, channel: usize) -> Light {
        let of = |list: &[f64; 3]| list.get(channel).copied().unwrap_or_default() / 255.0;
        let (mean, deviation) = (of(&self.mean), of(&self.deviation));
        // Derivatives of the curve by differences of one step of a byte.
        let step = 1.0 / 255.0;
        let (below, middle, above) = (decoded(mean - step), decoded(mean), decoded(mean + step));
        let slope = (above - below) / (2.0 * step);
        let bend = (above - 2.0 * middle + below) / (step * step);
        let linear = middle + 0.5 * bend * deviation * deviation;
        let spread = slope * deviation / linear;
        Light { linear, spread, unsure: spread / libm::sqrt(f64::from(self.pixels) / ALIKE) }
    }
}

/// ln ρ over ln C of the steps of a card.
struct Fit {
    slope: f64,
    middle: (f64, f64),
    /// Σ (x − x̄)².
    across: f64,
    steps: f64,
    /// Relative standard uncertainty of a step.
    step: f64,
}

impl Fit {
    fn of(card: &[GrayStep], channel: usize) -> Result<Self, ReadingError> {
        // Steps nearer than this in ln C are one step, seen twice.
        const APART: f64 = 0.2;
        let points = || {
            card.iter().map(|step| {
                let light = step.patch.light(channel);
                (libm::log(light.linear), libm::log(step.reflectance), light)
            })
        };
        // A card of a few steps: exact.
        let steps = card.len() as f64;
        let (x, y) = points().fold((0.0, 0.0), |(x, y), point| (x + point.0, y + point.1));
        let middle = (x / steps, y / steps);
        let (mut across, mut along, mut noise) = (0.0, 0.0, 0.0);
        for (x, y, light) in points() {
            across += (x - middle.0) * (x - middle.0);
            along += (x - middle.0) * (y - middle.1);
            // The mean over the card is as sure as its light is even: a gradient leaves about half of it.
            noise += light.unsure * light.unsure + 0.25 * light.spread * light.spread;
        }
        let has_curve = across > APART * APART;
        let slope = if has_curve { along / across } else { 1.0 };
        let off = points().fold(0.0, |sum, (x, y, _)| {
            let off = y - middle.1 - slope * (x - middle.0);
            sum + off * off
        });
        let free = steps - if has_curve { 2.0 } else { 1.0 };
        let off = if free > 0.0 { libm::sqrt(off / free) } else { 0.0 };
        if off > CURVE_REFUSED || !(0.4..=2.5).contains(&slope) {
            return Err(ReadingError::Curve { off: off.max((slope - 1.0).abs()) });
        }
        let step = libm::sqrt(noise / steps).max(off);
        let across = if has_curve { across } else { f64::INFINITY };
        Ok(Self { slope, middle, across, steps, step })
    }

    fn at(&self, x: f64) -> f64 {
        self.middle.1 + self.slope * (x - self.middle.0)
    }

    /// Relative standard uncertainty of the reflectance at `x`, itself known to `own`.
    fn unsure(&self, x: f64, own: f64) -> f64 {
        let from = x - self.middle.0;
        let leverage = 1.0 / self.steps + from * from / self.across;
        libm::sqrt(self.step * self.step * leverage + self.slope * self.slope * own * own)
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;

    use super::*;
    use crate::color::difference::ciede2000;

    /// sRGB of linear light, as IEC 61966-2-1 has it.
    fn stored(linear: f64) -> f64 {
        let v = if linear <= 0.003_130_8 {
            12.92 * linear
        } else {
            1.055 * libm::pow(linear, 1.0 / 2.4) - 0.055
        };
        255.0 * v
    }

    /// An even patch of `reflectance` in light of `light`, by a camera of the curve γ.
    fn patch(reflectance: [f64; 3], light: [f64; 3], gamma: f64) -> Patch {
        let seen = |i: usize| stored(libm::pow(reflectance[i] * light[i], 1.0 / gamma));
        Patch { mean: [seen(0), seen(1), seen(2)], deviation: [0.5; 3], pixels: 4000, clipped: 0.0 }
    }

    fn card(steps: &[f64], light: [f64; 3], gamma: f64) -> Vec<GrayStep> {
        let step = |&r: &f64| GrayStep { reflectance: r, patch: patch([r; 3], light, gamma) };
        steps.iter().map(step).collect()
    }

    /// A yellow lamp at half the brightness is balanced by the card, whatever the camera's curve, if there are steps for it.
    #[rstest]
    #[case(&[0.9], 1.0)]
    #[case(&[0.18], 1.0)]
    #[case(&[0.9, 0.36, 0.18, 0.05], 1.0)]
    #[case(&[0.9, 0.36, 0.18, 0.05], 1.2)]
    #[case(&[0.9, 0.18], 0.85)]
    fn light_and_curve_are_taken_out(#[case] steps: &[f64], #[case] gamma: f64) {
        let light = [0.6, 0.5, 0.3];
        let own = [0.4, 0.1, 0.3];
        let found = photographed(&patch(own, light, gamma), &card(steps, light, gamma)).unwrap();
        for (found, own) in found.reflectance.iter().zip(own) {
            assert!((found / own - 1.0).abs() < 2e-3, "{found} {own}");
        }
        assert!(found.curve.iter().all(|curve| (curve - gamma).abs() < 1e-3), "{found:?}");
        assert!(ciede2000(&found.lab, &Lab::of_linear(&own)) < 0.1);
        assert!(found.notes.is_empty() && found.uncertainty.iter().all(|u| *u < 1.0), "{found:?}");
    }

    /// The linear mean of pixels that vary is above the light of their mean: for V of 0.3 and 0.5 in equal parts.
    #[test]
    fn a_spread_patch_has_its_mean_light() {
        let spread = Patch { mean: [102.0; 3], deviation: [25.5; 3], pixels: 1000, clipped: 0.0 };
        let wanted = 0.5 * (decoded(0.3) + decoded(0.5));
        let found = spread.light(0).linear;
        assert!((found - wanted).abs() < 2e-4, "{found} {wanted}");
        assert!(wanted - decoded(0.4) > 5e-3);
    }

    /// By hand at V = ½: f is ((V + 0.055)/1.055)^2.4, and f′ is 2.4 f/(V + 0.055). 16 of the 1,600 pixels are one.
    #[test]
    fn light_by_hand() {
        let patch = Patch { mean: [127.5; 3], deviation: [2.55; 3], pixels: 1600, clipped: 0.0 };
        let light = patch.light(1);
        let base = 0.555 / 1.055;
        let (f, slope) = (libm::pow(base, 2.4), 2.4 / 1.055 * libm::pow(base, 1.4));
        let bend = 2.4 * 1.4 / (1.055 * 1.055) * libm::pow(base, 0.4);
        let linear = f + 0.5 * bend * 1e-4;
        assert!((light.linear - linear).abs() < 1e-8, "{} {linear}", light.linear);
        assert!((light.spread / (slope * 0.01 / linear) - 1.0).abs() < 1e-4, "{}", light.spread);
        assert!((light.unsure * 10.0 - light.spread).abs() < 1e-15, "{}", light.unsure);
    }

    /// By hand: 3 + 2 (2 − 1); and 0.1² (1/2 + 2²/4) + 2² · 0.2².
    #[test]
    fn a_fit_by_hand() {
        let fit = Fit { slope: 2.0, middle: (1.0, 3.0), across: 4.0, steps: 2.0, step: 0.1 };
        assert!((fit.at(2.0) - 5.0).abs() < 1e-15);
        assert!((fit.unsure(3.0, 0.2) - libm::sqrt(0.175)).abs() < 1e-15);
    }

    /// A step of a card with ln C = `x` and ln ρ = `y`.
    fn step(x: f64, y: f64) -> GrayStep {
        let scale = 0.2;
        let own = [scale * libm::exp(x); 3];
        GrayStep { reflectance: scale * libm::exp(y), patch: patch(own, [1.0; 3], 1.0) }
    }

    /// Of (−1, e − 1), (0, −2e), (1, e + 1) the line is y = x, and what is left is e√6 with one number that is free.
    #[test]
    fn steps_by_hand() {
        let three = |e: f64| [step(-1.0, e - 1.0), step(0.0, -2.0 * e), step(1.0, e + 1.0)];
        let fit = Fit::of(&three(0.02), 0).unwrap();
        let is =
            |found: f64, wanted: f64| assert!((found - wanted).abs() < 1e-3, "{found} {wanted}");
        is(fit.slope, 1.0);
        is(fit.across, 2.0);
        is(fit.steps, 3.0);
        is(fit.step, 0.02 * libm::sqrt(6.0));
        is(fit.middle.0, libm::log(0.2));
        is(fit.middle.1, libm::log(0.2));
        // Of four, two numbers are free: e (1, −1, −1, 1) leaves e√(4/2).
        let four = [(-1.5, -1.47), (-0.5, -0.53), (0.5, 0.47), (1.5, 1.53)];
        let fit = Fit::of(&four.map(|(x, y)| step(x, y)), 0).unwrap();
        is(fit.step, 0.03 * libm::sqrt(2.0));
        // Refused from 0.15 on.
        is(Fit::of(&three(0.061), 0).unwrap().step, 0.061 * libm::sqrt(6.0));
        let refused = |card: &[GrayStep]| match Fit::of(card, 0) {
            Err(ReadingError::Curve { off }) => off,
            other => panic!("{:?}", other.map(|fit| fit.slope)),
        };
        is(refused(&three(0.0615)), 0.0615 * libm::sqrt(6.0));
        // Two steps have no rest; no camera's curve is below 0.4 or above 2.5.
        for slope in [0.405, 2.49] {
            let fit = Fit::of(&[step(-0.5, -0.5 * slope), step(0.5, 0.5 * slope)], 0).unwrap();
            is(fit.slope, slope);
            assert!(fit.step < 0.01, "{}", fit.step);
        }
        for slope in [0.395, 2.51] {
            is(refused(&[step(-0.5, -0.5 * slope), step(0.5, 0.5 * slope)]), (slope - 1.0).abs());
        }
    }

    /// Two steps at ±0.05 are one, seen twice: no curve, and 0.05√2 is left. At ±0.15 they are two.
    #[test]
    fn steps_that_are_near_are_one() {
        let fit = Fit::of(&[step(-0.05, 0.0), step(0.05, 0.0)], 2).unwrap();
        assert_eq!((fit.slope, fit.across), (1.0, f64::INFINITY));
        assert!((fit.step - 0.05 * libm::sqrt(2.0)).abs() < 1e-3, "{}", fit.step);
        let fit = Fit::of(&[step(-0.15, -0.18), step(0.15, 0.18)], 2).unwrap();
        assert!((fit.slope - 1.2).abs() < 1e-3 && (fit.across - 0.045).abs() < 1e-4);
    }

    /// One step is as sure as its noise and half of its unevenness; of two that agree, the mean of the squares.
    #[test]
    fn a_card_is_as_sure_as_its_light() {
        let of = |deviation: f64| {
            let mut step = step(0.0, 0.0);
            step.patch.deviation = [deviation; 3];
            let light = step.patch.light(0);
            (step, light.unsure * light.unsure + 0.25 * light.spread * light.spread)
        };
        let ((one, first), (two, second)) = (of(4.0), of(8.0));
        let fit = Fit::of(&[one], 0).unwrap();
        assert_eq!(fit.steps, 1.0);
        assert!((fit.step * fit.step / first - 1.0).abs() < 1e-9);
        let both = Fit::of(&[one, two], 0).unwrap();
        assert!((both.step * both.step / (0.5 * (first + second)) - 1.0).abs() < 1e-9);
    }

    /// A gray R next to a gray card: u(L*) is 116/3 ∛R r √Σw² for r in each channel, w the parts of red, green and blue in Y
    /// (IEC 61966-2-1: 0.2126, 0.7152, 0.0722).
    #[test]
    fn a_gray_is_as_sure_as_its_channels() {
        let (light, card) = ([0.6; 3], card(&[0.9], [0.6; 3], 1.0));
        let found = photographed(&patch([0.3; 3], light, 1.0), &card).unwrap();
        let own = patch([0.3; 3], light, 1.0).light(0);
        let r = Fit::of(&card, 0).unwrap().unsure(libm::log(own.linear), own.unsure);
        let w = libm::sqrt(0.2126 * 0.2126 + 0.7152 * 0.7152 + 0.0722 * 0.0722);
        let wanted = 116.0 / 3.0 * libm::cbrt(0.3) * r * w;
        assert!((found.uncertainty[0] / wanted - 1.0).abs() < 0.01, "{found:?} {wanted}");
        // x and z have other parts of each: a* and b* move where the channels do not move together.
        let parts = [[0.4339, 0.3762, 0.1899], [0.0178, 0.1095, 0.8728]];
        let y = [0.2126, 0.7152, 0.0722];
        for (i, (part, by)) in parts.iter().zip([500.0, 200.0]).enumerate() {
            let square: f64 = part.iter().zip(y).map(|(p, y)| (p - y) * (p - y)).sum();
            let wanted = by / 3.0 * libm::cbrt(0.3) * r * libm::sqrt(square);
            assert!((found.uncertainty[i + 1] / wanted - 1.0).abs() < 0.01, "{found:?} {wanted}");
        }
    }

    /// Up to a tenth above white is noise, and counts as white.
    #[test]
    fn white_is_the_end() {
        let card = card(&[0.9], [0.6; 3], 1.0);
        let at = |reflectance: f64| photographed(&patch([reflectance; 3], [0.6; 3], 1.0), &card);
        let found = at(1.09).unwrap();
        assert_eq!(found.reflectance, [1.0; 3]);
        assert!(
            matches!(at(1.11), Err(ReadingError::AboveWhite { share }) if (share - 1.11).abs() < 1e-3)
        );
        // The brightest channel counts.
        let red = patch([1.2, 0.3, 0.3], [0.6; 3], 1.0);
        assert!(matches!(photographed(&red, &card), Err(ReadingError::AboveWhite { .. })));
    }

    #[rstest]
    #[case(Patch { pixels: 100, ..good() }, None)]
    #[case(Patch { clipped: 0.02, ..good() }, None)]
    #[case(Patch { clipped: 0.0201, ..good() }, Some("photo-clipped"))]
    #[case(Patch { mean: [3.0, 100.0, 100.0], deviation: [0.0; 3], ..good() }, None)]
    #[case(Patch { mean: [2.9, 100.0, 100.0], deviation: [0.0; 3], ..good() }, Some("photo-clipped"))]
    #[case(Patch { mean: [100.0, 100.0, 252.1], ..good() }, Some("photo-clipped"))]
    #[case(Patch { mean: [0.5, 100.0, 100.0], deviation: [0.0; 3], ..good() }, Some("photo-clipped"))]
    #[case(Patch { mean: [255.1, 100.0, 100.0], ..good() }, Some("out-of-range"))]
    #[case(Patch { mean: [-0.1, 100.0, 100.0], ..good() }, Some("out-of-range"))]
    #[case(Patch { deviation: [128.0, 0.5, 0.5], ..good() }, None)]
    #[case(Patch { deviation: [128.1, 0.5, 0.5], ..good() }, Some("out-of-range"))]
    #[case(Patch { deviation: [-0.1, 0.5, 0.5], ..good() }, Some("out-of-range"))]
    #[case(Patch { clipped: 1.1, ..good() }, Some("out-of-range"))]
    #[case(Patch { clipped: -0.1, ..good() }, Some("out-of-range"))]
    fn pixels_have_limits(#[case] patch: Patch, #[case] code: Option<&str>) {
        let found = patch.check("The patch").err().map(|error| error.code());
        assert_eq!(found, code);
    }

    /// The brightest a picture stores is a card of 98 % in full light.
    #[test]
    fn a_card_has_limits() {
        let bright = Patch { mean: [252.0; 3], ..good() };
        assert!(bright.check("The card").is_ok());
        for (reflectance, will_do) in [(0.01, true), (1.0, true), (0.0099, false), (1.01, false)] {
            let found = photographed(&good(), &[GrayStep { reflectance, patch: good() }]);
            let range = matches!(found, Err(ReadingError::Range { .. }));
            assert_eq!(!range, will_do, "{reflectance}");
        }
    }

    #[rstest]
    #[case(Patch { clipped: 0.03, ..good() }, ReadingError::Clipped { what: "The patch" })]
    #[case(Patch { mean: [120.0, 120.0, 1.0], ..good() }, ReadingError::Clipped { what: "The patch" })]
    #[case(Patch { pixels: 99, ..good() }, ReadingError::TooSmall { what: "The patch", pixels: 99 })]
    fn a_bad_patch_is_refused(#[case] patch: Patch, #[case] wanted: ReadingError) {
        let card = card(&[0.9], [0.6; 3], 1.0);
        assert_eq!(photographed(&patch, &card).unwrap_err(), wanted);
        assert!(!wanted.help().is_empty());
    }

    fn good() -> Patch {
        patch([0.3; 3], [0.6; 3], 1.0)
    }

    #[test]
    fn a_bad_card_is_refused() {
        let light = [0.6; 3];
        assert_eq!(photographed(&good(), &[]).unwrap_err(), ReadingError::NoCard);
        let mut shadowed = card(&[0.9], light, 1.0);
        shadowed[0].patch.mean = [60.0; 3];
        let found = photographed(&good(), &shadowed).unwrap_err();
        assert!(matches!(found, ReadingError::AboveWhite { share } if share > 2.0), "{found}");
        let mut gradient = card(&[0.9], light, 1.0);
        gradient[0].patch.deviation = [35.0; 3];
        let found = photographed(&good(), &gradient).unwrap_err();
        assert!(matches!(found, ReadingError::UnevenCard { .. }), "{found}");
        let mut swapped = card(&[0.9, 0.4, 0.1], light, 1.0);
        swapped[1].reflectance = 0.1;
        swapped[2].reflectance = 0.4;
        let found = photographed(&good(), &swapped).unwrap_err();
        assert!(matches!(found, ReadingError::Curve { .. }), "{found}");
        for reflectance in [0.0, 1.2, f64::NAN] {
            let mut none = card(&[0.9], light, 1.0);
            none[0].reflectance = reflectance;
            assert!(matches!(photographed(&good(), &none), Err(ReadingError::Range { .. })));
        }
    }

    #[test]
    fn what_is_not_so_good_is_said() {
        let mut gradient = card(&[0.9], [0.6; 3], 1.0);
        gradient[0].patch.deviation = [12.0; 3];
        let patch = Patch { deviation: [30.0; 3], ..good() };
        let found = photographed(&patch, &gradient).unwrap();
        let [PhotoNote::UnevenCard(card), PhotoNote::UnevenPatch(patch)] = found.notes[..] else {
            panic!("{found:?}")
        };
        assert!((0.08..0.2).contains(&card) && patch > 0.3, "{card} {patch}");
        assert!(found.notes.iter().all(|note| note.text().ends_with('.')));
        let sure = photographed(&good(), &super::tests::card(&[0.9], [0.6; 3], 1.0)).unwrap();
        assert!(found.uncertainty[0] > 3.0 * sure.uncertainty[0], "{found:?}");
        let dim = [0.08; 3];
        let found = photographed(
            &super::tests::patch([0.3; 3], dim, 1.0),
            &super::tests::card(&[0.9], dim, 1.0),
        );
        let found = found.unwrap();
        let [PhotoNote::DarkCard(share)] = found.notes[..] else { panic!("{found:?}") };
        assert!((share - 0.08).abs() < 1e-3, "{share}");
        // The darkest of all channels counts, and the most uneven.
        let lights =
            [([0.9, 0.9, 0.14], true), ([0.14, 0.9, 0.9], true), ([0.9, 0.9, 0.16], false)];
        for (light, is_dark) in lights {
            let card = super::tests::card(&[0.9, 0.5], light, 1.0);
            let found = photographed(&super::tests::patch([0.3; 3], light, 1.0), &card).unwrap();
            assert_eq!(!found.notes.is_empty(), is_dark, "{found:?}");
        }
    }

    /// Notes on a picture have whole per cents.
    #[test]
    fn notes_have_whole_per_cents() {
        for (note, wanted) in [
            (PhotoNote::UnevenCard(0.124), "12 %"),
            (PhotoNote::UnevenPatch(0.356), "36 %"),
            (PhotoNote::DarkCard(0.08), "8 %"),
        ] {
            assert!(note.text().contains(wanted), "{}", note.text());
        }
    }

    /// D50 white is white, and a red by colour-science 0.4.7: `chromatic_adaptation_VonKries`, Bradford.
    #[test]
    fn d50_is_converted() {
        let white = from_d50(&Lab::new(100.0, 0.0, 0.0).unwrap()).unwrap();
        assert!(white.parts().iter().zip([100.0, 0.0, 0.0]).all(|(a, b)| (a - b).abs() < 1e-9));
        let red = from_d50(&Lab::new(50.0, 60.0, 40.0).unwrap()).unwrap();
        let wanted = [49.248_006_12, 59.073_413_26, 38.461_879_58];
        assert!(red.parts().iter().zip(wanted).all(|(a, b)| (a - b).abs() < 1e-6), "{red:?}");
    }

    /// s/√n by hand: L* of 50, 51 and 52 have s = 1.
    #[test]
    fn repeat_pictures_give_the_scatter() {
        let one = |lightness: f64| Photographed {
            lab: Lab::new(lightness, 0.0, 10.0).unwrap(),
            reflectance: [0.5; 3],
            uncertainty: [0.1; 3],
            curve: [1.0; 3],
            notes: Vec::new(),
        };
        let (lab, unsure) = repeated(&[one(50.0), one(51.0), one(52.0)]).unwrap();
        assert_eq!((lab.lightness(), lab.b()), (51.0, 10.0));
        assert!((unsure[0] - 1.0 / libm::sqrt(3.0)).abs() < 1e-12, "{unsure:?}");
        assert!((unsure[1] - 0.1 / libm::sqrt(3.0)).abs() < 1e-12, "{unsure:?}");
        let (_, unsure) = repeated(&[one(50.0), one(52.0)]).unwrap();
        assert!((unsure[0] - 1.0 / libm::sqrt(2.0)).abs() < 1e-12, "{unsure:?}");
        assert_eq!(repeated(&[]), None);
    }
}

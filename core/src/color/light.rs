//! A color from its reflectance in bands, under three lights; and how far a match in one light is off in another.
//!
//! XYZ = Σ W_i R_i over bands of 10 nm from 400 to 700 nm. The weights W are those of ASTM E2022 for the CIE 1931
//! observer (2°), worked out from the CIE's tables with the package colour-science 0.4.7 (`tristimulus_weighting_factors_ASTME2022`);
//! what is outside of 400 to 700 nm counts as the end bands do, as in ASTM E308. They add up to the whites of ASTM E308
//! within 0.01: (95.047, 100, 108.883) for D65 and (109.850, 100, 35.585) for A. Readings every 20 nm are interpolated
//! by cubics (Lagrange) first.
//!
//! **Metamerism.** Two pieces that look alike in one light may differ in another. The special index of CIE 15 (change of
//! light) is ΔE under the test light, once the second piece is corrected for what is left between them under the
//! reference light: X′ = X_test · X₁,ref/X₂,ref, and so for Y and Z. CIE 15:2004, 9.2 (from memory; recomputed with
//! colour-science).

use crate::color::ColorError;
use crate::color::difference::ciede2000;
use crate::color::lab::{Lab, Xyz};
use crate::words::words;

/// Bands of a spectrum.
const BANDS: usize = 31;
/// Wavelength of the first band.
pub(crate) const FIRST_NM: f64 = 400.0;
/// From band to band.
pub(crate) const STEP_NM: f64 = 10.0;

words! {
    /// A light that a color is seen in.
    pub enum Light {
        /// Average daylight, 6504 K (CIE D65).
        Daylight = "D65",
        /// A filament lamp, 2856 K (CIE A).
        Lamp = "A",
        /// A white LED, 4103 K: blue chip and phosphor (CIE LED-B3).
        Led = "LED-B3",
    }
}

/// Reflectance every 10 nm from 400 to 700 nm.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Spectrum([f64; BANDS]);

/// How far two pieces are apart under a reference and a test light.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Metamerism {
    /// ΔE₀₀ under the reference light.
    pub reference: f64,
    /// ΔE₀₀ under the test light, as they are.
    pub test: f64,
    /// The special index: ΔE*ab under the test light, once corrected to a match under the reference.
    pub index: f64,
    /// The same as ΔE₀₀.
    pub index_00: f64,
}

impl Light {
    const fn weights(self) -> &'static [[f64; 3]; BANDS] {
        match self {
            Self::Daylight => &D65,
            Self::Lamp => &A,
            Self::Led => &LED_B3,
        }
    }
}

impl Spectrum {
    /// Reflectance of `values`, the first at `from_nm`, one every `step_nm`.
    ///
    /// # Errors
    /// [`ColorError::Spectrum`] unless the step is 10 or 20 nm, the values meet 400 nm and reach from there to 700 nm;
    /// [`ColorError::Range`] unless each is from 0 to 1.
    pub fn new(from_nm: f64, step_nm: f64, values: &[f64]) -> Result<Self, ColorError> {
        let bands = match step_nm {
            step if step == STEP_NM => BANDS,
            step if step == 2.0 * STEP_NM => BANDS.div_ceil(2),
            _ => return Err(ColorError::Spectrum),
        };
        // Where 400 nm is in the list.
        let before = (FIRST_NM - from_nm) / step_nm;
        if !(0.0..=1000.0).contains(&before) || libm::floor(before) != before {
            return Err(ColorError::Spectrum);
        }
        let mut found = [0.0; BANDS];
        let mut count: usize = 0;
        // Whole and in range: nothing is cut off.
        for (place, value) in found.iter_mut().zip(values.iter().skip(before as usize)).take(bands)
        {
            if !crate::check::is_share(*value) {
                return Err(ColorError::Range { what: "a reflectance", range: "from 0 to 1" });
            }
            *place = *value;
            count = count.saturating_add(1);
        }
        if count < bands {
            return Err(ColorError::Spectrum);
        }
        if bands == BANDS {
            return Ok(Self(found));
        }
        let known = |i: usize| found.get(i).copied().unwrap_or_default();
        let last = bands.saturating_sub(1);
        let mut all = [0.0; BANDS];
        for (i, place) in all.iter_mut().enumerate() {
            let left = i.div_euclid(2);
            *place = if i.is_multiple_of(2) {
                known(left)
            } else {
                let first = left.saturating_sub(1).min(last.saturating_sub(3));
                halfway(
                    [0, 1, 2, 3].map(|j| known(first.saturating_add(j))),
                    left.saturating_sub(first),
                )
                .clamp(0.0, 1.0)
            };
        }
        Ok(Self(all))
    }

    /// Reflectance of each band, every 10 nm from 400 nm.
    #[must_use]
    pub const fn values(&self) -> &[f64] {
        &self.0
    }

    /// Its tristimulus values under `light`, a perfect white at Y = 1.
    #[must_use]
    pub fn xyz(&self, light: Light) -> Xyz {
        let mut sum = [0.0; 3];
        for (reflectance, weights) in self.0.iter().zip(light.weights()) {
            for (sum, weight) in sum.iter_mut().zip(weights) {
                *sum += reflectance * weight;
            }
        }
        let [x, y, z] = sum.map(|sum| sum / 100.0);
        Xyz { x, y, z }
    }

    /// Its color next to a perfect white under `light`.
    ///
    /// # Errors
    /// None for a spectrum that was read: XYZ is zero or above.
    pub fn lab(&self, light: Light) -> Result<Lab, ColorError> {
        Lab::of(&self.xyz(light), &white(light))
    }

    /// How far it and `other` are apart under `test`, as seen and once matched under `reference` (equation: [module](self)).
    ///
    /// # Errors
    /// [`ColorError::Range`] for a piece that reflects nothing in a third of the spectrum, which cannot be corrected.
    pub fn metamerism(
        &self,
        other: &Self,
        reference: Light,
        test: Light,
    ) -> Result<Metamerism, ColorError> {
        let (one, two) = (self.xyz(reference), other.xyz(reference));
        let seen = other.xyz(test);
        let corrected = |value: f64, one: f64, two: f64| {
            if two > 0.0 {
                Ok(value * one / two)
            } else {
                Err(ColorError::Range { what: "XYZ of both pieces", range: "above zero" })
            }
        };
        let matched = Xyz {
            x: corrected(seen.x, one.x, two.x)?,
            y: corrected(seen.y, one.y, two.y)?,
            z: corrected(seen.z, one.z, two.z)?,
        };
        let first = self.lab(test)?;
        let matched = Lab::of(&matched, &white(test))?;
        let (l, a, b) = (
            first.lightness() - matched.lightness(),
            first.a() - matched.a(),
            first.b() - matched.b(),
        );
        Ok(Metamerism {
            reference: ciede2000(&self.lab(reference)?, &other.lab(reference)?),
            test: ciede2000(&first, &other.lab(test)?),
            index: libm::sqrt(l * l + a * a + b * b),
            index_00: ciede2000(&first, &matched),
        })
    }
}

/// The white under `light`: what a perfect white gives by the same weights.
#[must_use]
pub fn white(light: Light) -> Xyz {
    Spectrum([1.0; BANDS]).xyz(light)
}

/// The cubic through four evenly spaced values, halfway between value `after` and the next.
fn halfway([a, b, c, d]: [f64; 4], after: usize) -> f64 {
    match after {
        0 => (5.0 * a + 15.0 * b - 5.0 * c + d) / 16.0,
        1 => (9.0 * (b + c) - a - d) / 16.0,
        _ => (5.0 * d + 15.0 * c - 5.0 * b + a) / 16.0,
    }
}

const D65: [[f64; 3]; BANDS] = [
    [0.131, 0.004, 0.618],
    [0.376, 0.010, 1.788],
    [1.200, 0.035, 5.765],
    [2.396, 0.098, 11.698],
    [3.418, 0.226, 17.150],
    [3.699, 0.417, 19.506],
    [3.227, 0.664, 18.520],
    [2.149, 0.998, 14.137],
    [1.042, 1.501, 8.850],
    [0.333, 2.164, 4.856],
    [0.045, 3.352, 2.802],
    [0.098, 5.129, 1.602],
    [0.637, 7.076, 0.791],
    [1.667, 8.708, 0.420],
    [2.884, 9.474, 0.202],
    [4.250, 9.752, 0.086],
    [5.626, 9.419, 0.037],
    [6.988, 8.722, 0.019],
    [8.214, 7.802, 0.014],
    [8.730, 6.442, 0.010],
    [9.015, 5.351, 0.007],
    [8.492, 4.263, 0.003],
    [7.050, 3.145, 0.001],
    [5.124, 2.113, 0.000],
    [3.516, 1.373, 0.000],
    [2.167, 0.818, 0.000],
    [1.252, 0.463, 0.000],
    [0.678, 0.248, 0.000],
    [0.341, 0.124, 0.000],
    [0.153, 0.055, 0.000],
    [0.151, 0.054, 0.000],
];

const A: [[f64; 3]; BANDS] = [
    [0.023, 0.001, 0.111],
    [0.070, 0.002, 0.333],
    [0.272, 0.008, 1.309],
    [0.644, 0.027, 3.144],
    [0.924, 0.061, 4.636],
    [1.036, 0.117, 5.462],
    [1.017, 0.209, 5.839],
    [0.779, 0.362, 5.129],
    [0.428, 0.618, 3.639],
    [0.160, 1.039, 2.332],
    [0.024, 1.802, 1.513],
    [0.059, 3.091, 0.962],
    [0.428, 4.756, 0.533],
    [1.210, 6.320, 0.305],
    [2.313, 7.599, 0.162],
    [3.735, 8.571, 0.075],
    [5.511, 9.219, 0.036],
    [7.573, 9.456, 0.021],
    [9.718, 9.224, 0.017],
    [11.583, 8.543, 0.013],
    [12.706, 7.547, 0.010],
    [12.671, 6.360, 0.005],
    [11.347, 5.061, 0.002],
    [9.010, 3.716, 0.001],
    [6.551, 2.559, 0.000],
    [4.345, 1.639, 0.000],
    [2.626, 0.971, 0.000],
    [1.457, 0.533, 0.000],
    [0.794, 0.289, 0.000],
    [0.406, 0.147, 0.000],
    [0.428, 0.155, 0.000],
];

const LED_B3: [[f64; 3]; BANDS] = [
    [0.000, 0.000, -0.002],
    [0.001, 0.000, 0.002],
    [0.114, 0.002, 0.541],
    [0.862, 0.034, 4.200],
    [2.964, 0.205, 14.921],
    [4.046, 0.455, 21.315],
    [2.135, 0.427, 12.181],
    [0.807, 0.372, 5.319],
    [0.333, 0.495, 2.871],
    [0.144, 0.966, 2.140],
    [0.027, 1.980, 1.660],
    [0.070, 3.620, 1.130],
    [0.500, 5.563, 0.625],
    [1.394, 7.285, 0.352],
    [2.642, 8.675, 0.185],
    [4.223, 9.690, 0.085],
    [6.122, 10.242, 0.040],
    [8.183, 10.219, 0.023],
    [10.129, 9.615, 0.018],
    [11.566, 8.531, 0.013],
    [11.963, 7.107, 0.009],
    [10.949, 5.497, 0.004],
    [8.711, 3.886, 0.002],
    [5.939, 2.449, 0.001],
    [3.582, 1.399, 0.000],
    [1.913, 0.721, 0.000],
    [0.905, 0.335, 0.000],
    [0.384, 0.141, 0.000],
    [0.158, 0.057, 0.000],
    [0.060, 0.022, 0.000],
    [0.036, 0.013, 0.000],
];

#[cfg(test)]
mod tests {
    use super::*;

    /// ASTM E308, tables 5.1 and 5.9: whites of D65 and A for the 1931 observer.
    #[test]
    fn whites_are_published() {
        for (light, [x, y, z]) in
            [(Light::Daylight, [0.95047, 1.0, 1.08883]), (Light::Lamp, [1.09850, 1.0, 0.35585])]
        {
            let found = white(light);
            for (found, wanted) in [(found.x, x), (found.y, y), (found.z, z)] {
                assert!((found - wanted).abs() < 1e-4, "{light}: {found}, {wanted}");
            }
        }
    }

    #[test]
    fn a_gray_is_gray_in_every_light() {
        let gray = Spectrum::new(400.0, 10.0, &[0.2; 31]).unwrap();
        for light in Light::ALL {
            let lab = gray.lab(*light).unwrap();
            assert!(lab.a().abs() < 1e-9 && lab.b().abs() < 1e-9, "{lab:?}");
            assert!((lab.lightness() - 51.8372).abs() < 1e-3, "{lab:?}");
        }
        let same = gray.metamerism(&gray, Light::Daylight, Light::Lamp).unwrap();
        assert_eq!((same.reference, same.test, same.index, same.index_00), (0.0, 0.0, 0.0, 0.0));
    }

    /// A cubic comes back from every second value.
    #[test]
    fn wide_bands_are_interpolated() {
        let cubic = |nm: f64| {
            let t = (nm - 400.0) / 300.0;
            0.2 + 0.5 * t * t - 0.3 * t * t * t
        };
        let every = |step: u32| -> alloc::vec::Vec<f64> {
            (0..=300 / step).map(|i| cubic(400.0 + f64::from(i * step))).collect()
        };
        let fine = Spectrum::new(400.0, 10.0, &every(10)).unwrap();
        let wide = Spectrum::new(400.0, 20.0, &every(20)).unwrap();
        assert!(fine.0.iter().zip(&wide.0).all(|(a, b)| (a - b).abs() < 1e-12));
    }

    /// A piece that reflects 0.8 of what another does in every band is off by that alone: once corrected, the two are alike.
    #[test]
    fn what_is_darker_alone_is_no_metamer() {
        let hump = |scale: f64| {
            let values: alloc::vec::Vec<f64> =
                (0..31).map(|i| scale * (0.5 + 0.3 * libm::sin(f64::from(i) / 4.0))).collect();
            Spectrum::new(400.0, 10.0, &values).unwrap()
        };
        let (one, other) = (hump(1.0), hump(0.8));
        for (reference, test) in [(Light::Daylight, Light::Lamp), (Light::Led, Light::Daylight)] {
            let found = one.metamerism(&other, reference, test).unwrap();
            assert!(found.index < 1e-10 && found.index_00 < 1e-10, "{found:?}");
            for (light, off) in [(reference, found.reference), (test, found.test)] {
                let wanted = ciede2000(&one.lab(light).unwrap(), &other.lab(light).unwrap());
                assert!(off == wanted && off > 3.0, "{found:?}");
            }
        }
        let none = Spectrum::new(400.0, 10.0, &[0.0; 31]).unwrap();
        let refused = one.metamerism(&none, Light::Daylight, Light::Lamp);
        let (what, range) = ("XYZ of both pieces", "above zero");
        assert_eq!(refused, Err(ColorError::Range { what, range }));
        assert!(none.metamerism(&one, Light::Daylight, Light::Lamp).is_ok());
    }

    /// The equation of the module, band by band, in numbers that it does not share: X of a band is its weight times what it
    /// reflects, so that a piece of one band is known by hand.
    #[test]
    fn the_index_by_hand() {
        let of = |bands: [(usize, f64); 2]| {
            let mut values = [0.3; 31];
            for (band, reflectance) in bands {
                values[band] = reflectance;
            }
            Spectrum::new(400.0, 10.0, &values).unwrap()
        };
        let (one, two) = (of([(10, 0.7), (20, 0.1)]), of([(14, 0.8), (25, 0.9)]));
        let xyz = |bands: [(usize, f64); 2], weights: &[[f64; 3]; 31]| {
            [0, 1, 2].map(|i: usize| {
                let all: f64 = weights.iter().map(|row| 0.3 * row[i]).sum();
                let more: f64 = bands.iter().map(|(at, r)| (r - 0.3) * weights[*at][i]).sum();
                (all + more) / 100.0
            })
        };
        let (first, second) = ([(10, 0.7), (20, 0.1)], [(14, 0.8), (25, 0.9)]);
        let white = |i: usize| A.iter().map(|row| row[i]).sum::<f64>() / 100.0;
        let f = |t: f64| libm::cbrt(t);
        let lab = |xyz: [f64; 3]| {
            let [x, y, z] = [0, 1, 2].map(|i| f(xyz[i] / white(i)));
            [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
        };
        let matched =
            [0, 1, 2].map(|i| xyz(second, &A)[i] * xyz(first, &D65)[i] / xyz(second, &D65)[i]);
        let (one_lab, matched) = (lab(xyz(first, &A)), lab(matched));
        let off = [0, 1, 2].map(|i| one_lab[i] - matched[i]);
        assert!(off.iter().all(|off| off.abs() > 0.1), "{off:?}");
        let found = one.metamerism(&two, Light::Daylight, Light::Lamp).unwrap();
        let wanted = libm::sqrt(off.iter().map(|off| off * off).sum());
        assert!((found.index / wanted - 1.0).abs() < 1e-9, "{found:?} {wanted}");
        let [one_lab, matched] = [one_lab, matched].map(|[l, a, b]| Lab::new(l, a, b).unwrap());
        assert!((found.index_00 / ciede2000(&one_lab, &matched) - 1.0).abs() < 1e-9, "{found:?}");
    }

    /// (9 · 2 − 0 − 0)/16 is more than all light: 1. And −(1 + 1)/16 is less than none.
    #[test]
    fn what_is_interpolated_is_a_reflectance() {
        let mut values = [0.0; 16];
        (values[7], values[8]) = (1.0, 1.0);
        let found = Spectrum::new(400.0, 20.0, &values).unwrap();
        assert_eq!((found.0[15], found.0[13], found.0[11]), (1.0, 0.5, 0.0));
    }

    #[test]
    fn bands_must_reach() {
        // A thousand bands before 400 nm are passed over, and no more.
        let long = [0.5; 1040];
        assert!(Spectrum::new(400.0 - 10_000.0, 10.0, &long).is_ok());
        assert!(Spectrum::new(400.0 - 10_010.0, 10.0, &long).is_err());
        let values = [0.5; 43];
        assert!(Spectrum::new(360.0, 10.0, &values).is_ok());
        for (from, step, count) in [
            (400.0, 10.0, 30),
            (410.0, 10.0, 31),
            (395.0, 10.0, 43),
            (400.0, 5.0, 43),
            (400.0, 20.0, 15),
        ] {
            let found = Spectrum::new(from, step, &values[..count]);
            assert_eq!(found, Err(ColorError::Spectrum), "{from} {step} {count}");
        }
        assert!(Spectrum::new(400.0, 20.0, &[1.5; 16]).is_err());
        assert!(Spectrum::new(400.0, f64::NAN, &values).is_err());
        assert!(Spectrum::new(f64::NAN, 10.0, &values).is_err());
    }
}

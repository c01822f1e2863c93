//! CIE XYZ, L\*a\*b\* and sRGB.
//!
//! **sRGB** (IEC 61966-2-1), channels V from 0 to 1: linear C = V/12.92 for V ≤ 0.040 45, else
//! ((V + 0.055)/1.055)^2.4; XYZ by the matrix that the primaries and the white give, unrounded.
//!
//! **White.** D65 at x = 0.3127, y = 0.3290, as sRGB has it: (0.950 456, 1, 1.089 058). The tables of ASTM E308
//! have (0.950 47, 1, 1.088 83); mixing the two would leave grays with a little b\*.
//!
//! **L\*a\*b\*** (CIE 15): L\* = 116 f(Y/Y_n) − 16, a\* = 500 [f(X/X_n) − f(Y/Y_n)],
//! b\* = 200 [f(Y/Y_n) − f(Z/Z_n)]; f(t) = ∛t for t > (6/29)³, else t/(3 (6/29)²) + 4/29.

use crate::check::is_not_negative;
use crate::color::{ColorError, share};
use crate::parameter::{Check, Parameter, ParameterErrors};

/// Where f turns from a cube root into a line, and its square.
const TURN: f64 = 6.0 / 29.0;

/// XYZ of the red, green and blue of sRGB at full: the columns of its matrix.
pub const SRGB_BANDS: [Xyz; 3] = [
    Xyz { x: 0.412_390_799_265_959_5, y: 0.212_639_005_871_510_36, z: 0.019_330_818_715_591_85 },
    Xyz { x: 0.357_584_339_383_877_96, y: 0.715_168_678_767_755_9, z: 0.119_194_779_794_625_99 },
    Xyz { x: 0.180_480_788_401_834_3, y: 0.072_192_315_360_733_7, z: 0.950_532_152_249_660_6 },
];

/// The white of sRGB: the sum of [`SRGB_BANDS`].
pub const D65: Xyz = Xyz {
    x: SRGB_BANDS[0].x + SRGB_BANDS[1].x + SRGB_BANDS[2].x,
    y: SRGB_BANDS[0].y + SRGB_BANDS[1].y + SRGB_BANDS[2].y,
    z: SRGB_BANDS[0].z + SRGB_BANDS[1].z + SRGB_BANDS[2].z,
};

/// Tristimulus values, on any scale that the white shares.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Xyz {
    /// X.
    pub x: f64,
    /// Y, the luminance.
    pub y: f64,
    /// Z.
    pub z: f64,
}

/// A color in CIE L\*a\*b\*.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lab {
    lightness: f64,
    a: f64,
    b: f64,
}

/// A color in sRGB, each channel from 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Srgb {
    red: f64,
    green: f64,
    blue: f64,
}

impl Lab {
    /// A reading: L\* from 0 to 100, a\* and b\* from −200 to 200.
    ///
    /// # Errors
    /// The numbers that are out of these ranges.
    pub fn new(lightness: f64, a: f64, b: f64) -> Result<Self, ParameterErrors> {
        let mut check = Check::new();
        check
            .number(Parameter::Lightness, lightness)
            .number(Parameter::GreenRed, a)
            .number(Parameter::BlueYellow, b);
        check.finish()?;
        Ok(Self { lightness, a, b })
    }

    /// The color of `xyz` next to the white `white` (equation: [module](self)).
    ///
    /// # Errors
    /// [`ColorError::Range`] unless `xyz` is zero or above and `white` above zero.
    pub fn of(xyz: &Xyz, white: &Xyz) -> Result<Self, ColorError> {
        let f = |value: f64, white: f64| {
            if is_not_negative(value) && crate::check::is_positive(white) {
                Ok(compressed(value / white))
            } else {
                Err(ColorError::Range {
                    what: "XYZ",
                    range: "zero or above, and above for the white",
                })
            }
        };
        Ok(Self::of_compressed(f(xyz.x, white.x)?, f(xyz.y, white.y)?, f(xyz.z, white.z)?))
    }

    /// The color of linear light in the channels of sRGB, each zero or above.
    pub(crate) fn of_linear(linear: &[f64; 3]) -> Self {
        let Xyz { x, y, z } = Xyz::of_bands(linear, &SRGB_BANDS);
        Self::of_compressed(compressed(x / D65.x), compressed(y / D65.y), compressed(z / D65.z))
    }

    /// A color from numbers that are known to be one, or that lie near one.
    pub(crate) const fn unchecked(lightness: f64, a: f64, b: f64) -> Self {
        Self { lightness, a, b }
    }

    /// L\*, a\*, b\*.
    pub(crate) const fn parts(&self) -> [f64; 3] {
        [self.lightness, self.a, self.b]
    }

    /// How L\*, a\*, b\* of `xyz` next to `white` change with the light of a band, per its part of it.
    pub(crate) fn slopes(xyz: &Xyz, white: &Xyz, band: &Xyz) -> [f64; 3] {
        let [x, y, z] = [
            slope(xyz.x / white.x) * band.x / white.x,
            slope(xyz.y / white.y) * band.y / white.y,
            slope(xyz.z / white.z) * band.z / white.z,
        ];
        [116.0 * y, 500.0 * (x - y), 200.0 * (y - z)]
    }

    fn of_compressed(fx: f64, fy: f64, fz: f64) -> Self {
        Self { lightness: 116.0 * fy - 16.0, a: 500.0 * (fx - fy), b: 200.0 * (fy - fz) }
    }

    /// L\*: 0 for black, 100 for the white.
    #[must_use]
    pub fn lightness(&self) -> f64 {
        self.lightness
    }

    /// a\*: green below zero, red above.
    #[must_use]
    pub fn a(&self) -> f64 {
        self.a
    }

    /// b\*: blue below zero, yellow above.
    #[must_use]
    pub fn b(&self) -> f64 {
        self.b
    }

    /// Its tristimulus values next to the white `white`.
    #[must_use]
    pub fn xyz(&self, white: &Xyz) -> Xyz {
        let fy = (self.lightness + 16.0) / 116.0;
        Xyz {
            x: white.x * expanded(fy + self.a / 500.0),
            y: white.y * expanded(fy),
            z: white.z * expanded(fy - self.b / 200.0),
        }
    }

    /// The color in sRGB.
    ///
    /// # Errors
    /// [`ColorError::OutsideSrgb`] where a channel would not be from 0 to 1.
    pub fn srgb(&self) -> Result<Srgb, ColorError> {
        // A value from an end of a channel comes back within this, and is the end itself.
        const SLACK: f64 = 1e-9;
        let xyz = self.xyz(&D65);
        let channel = |row: [f64; 3], channel: &'static str| {
            let [x, y, z] = row;
            let value = x * xyz.x + y * xyz.y + z * xyz.z;
            if (-SLACK..=1.0 + SLACK).contains(&value) {
                Ok(encoded(value.clamp(0.0, 1.0)))
            } else {
                Err(ColorError::OutsideSrgb { channel, value })
            }
        };
        // The inverse of the matrix of SRGB_BANDS.
        Ok(Srgb {
            red: channel(
                [3.240_969_941_904_522_6, -1.537_383_177_570_094, -0.498_610_760_293_003_4],
                "red",
            )?,
            green: channel(
                [-0.969_243_636_280_879_6, 1.875_967_501_507_720_2, 0.041_555_057_407_175_59],
                "green",
            )?,
            blue: channel(
                [0.055_630_079_696_993_66, -0.203_976_958_888_976_52, 1.056_971_514_242_878_6],
                "blue",
            )?,
        })
    }
}

impl Srgb {
    /// Channels from 0 to 1.
    ///
    /// # Errors
    /// [`ColorError::Range`].
    pub fn new(red: f64, green: f64, blue: f64) -> Result<Self, ColorError> {
        Ok(Self {
            red: share(red, "red")?,
            green: share(green, "green")?,
            blue: share(blue, "blue")?,
        })
    }

    /// Channels from 0 to 255, as a photograph stores them.
    #[must_use]
    pub fn from_bytes(red: u8, green: u8, blue: u8) -> Self {
        let channel = |byte: u8| f64::from(byte) / 255.0;
        Self { red: channel(red), green: channel(green), blue: channel(blue) }
    }

    /// Red, green and blue, from 0 to 1.
    #[must_use]
    pub fn channels(&self) -> [f64; 3] {
        [self.red, self.green, self.blue]
    }

    /// Linear light of the channels: the reflectance in three bands of a piece photographed next to white.
    #[must_use]
    pub fn linear(&self) -> [f64; 3] {
        self.channels().map(decoded)
    }

    /// Tristimulus values, white at Y = 1.
    #[must_use]
    pub fn xyz(&self) -> Xyz {
        Xyz::of_bands(&self.linear(), &SRGB_BANDS)
    }

    /// The color in L\*a\*b\*, next to [`D65`].
    #[must_use]
    pub fn lab(&self) -> Lab {
        Lab::of_linear(&self.linear())
    }
}

impl Xyz {
    /// The sum of `bands`, each taken `amounts` times; those without a partner are omitted.
    pub(crate) fn of_bands(amounts: &[f64], bands: &[Self]) -> Self {
        let black = Self { x: 0.0, y: 0.0, z: 0.0 };
        amounts.iter().zip(bands).fold(black, |sum, (amount, band)| Self {
            x: sum.x + amount * band.x,
            y: sum.y + amount * band.y,
            z: sum.z + amount * band.z,
        })
    }
}

/// f(t) of L\*a\*b\*.
fn compressed(t: f64) -> f64 {
    if t > TURN * TURN * TURN { libm::cbrt(t) } else { t / (3.0 * TURN * TURN) + 4.0 / 29.0 }
}

/// The inverse of [`compressed`].
fn expanded(f: f64) -> f64 {
    if f > TURN { f * f * f } else { 3.0 * TURN * TURN * (f - 4.0 / 29.0) }
}

/// The derivative of [`compressed`].
fn slope(t: f64) -> f64 {
    let root = libm::cbrt(t);
    if t > TURN * TURN * TURN { 1.0 / (3.0 * root * root) } else { 1.0 / (3.0 * TURN * TURN) }
}

/// Linear light of an sRGB channel.
pub(crate) fn decoded(v: f64) -> f64 {
    if v <= 0.040_45 { v / 12.92 } else { libm::pow((v + 0.055) / 1.055, 2.4) }
}

/// The inverse of [`decoded`].
fn encoded(c: f64) -> f64 {
    if c <= 0.040_45 / 12.92 { c * 12.92 } else { 1.055 * libm::pow(c, 1.0 / 2.4) - 0.055 }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;
    use rstest::rstest;

    use super::*;

    #[test]
    fn matrix_is_that_of_the_primaries() {
        // IEC 61966-2-1: chromaticities of red, green, blue and white. Column j of the matrix is along its
        // primary, and the columns add up to the white.
        let xy = [(0.64, 0.33), (0.30, 0.60), (0.15, 0.06)];
        for (band, (x, y)) in SRGB_BANDS.iter().zip(xy) {
            assert!((band.x * y - band.y * x).abs() < 1e-15);
            assert!((band.z * y - band.y * (1.0 - x - y)).abs() < 1e-15);
        }
        assert!((D65.x - 0.3127 / 0.3290).abs() < 1e-15);
        assert!((D65.y - 1.0).abs() < 1e-15);
        assert!((D65.z - 0.3583 / 0.3290).abs() < 1e-15);
    }

    #[test]
    fn grays_are_gray() {
        for byte in 0..=255 {
            let gray = Srgb::from_bytes(byte, byte, byte).lab();
            assert!(gray.a.abs() < 1e-12 && gray.b.abs() < 1e-12, "{gray:?}");
        }
        let white = Srgb::from_bytes(255, 255, 255).lab();
        assert!((white.lightness - 100.0).abs() < 1e-12);
    }

    #[test]
    fn refuses_what_no_screen_shows() {
        let error = Lab::new(50.0, -100.0, 100.0).unwrap().srgb().unwrap_err();
        assert!(matches!(error, ColorError::OutsideSrgb { channel: "red", .. }), "{error}");
    }

    /// A channel that is too bright by rounding is full; by more it is refused.
    #[test]
    fn no_channel_is_more_than_full() {
        let nearly = Lab::new(100.0, 1e-8, 0.0).unwrap().srgb().unwrap();
        assert!(nearly.channels().iter().all(|channel| *channel <= 1.0), "{nearly:?}");
        assert!(Lab::new(100.0, 1.0, 0.0).unwrap().srgb().is_err());
        assert!(Lab::new(100.0, 20.0, 0.0).unwrap().srgb().is_err());
    }

    /// IEC 61966-2-1: V ≤ 0.040 45 is on the line.
    #[test]
    fn the_line_has_its_end() {
        let end = 0.040_45 / 12.92;
        assert_eq!((decoded(0.040_45), encoded(end)), (end, end * 12.92));
    }

    #[rstest]
    #[case(101.0, 0.0, 0.0)]
    #[case(50.0, 201.0, 0.0)]
    #[case(50.0, 0.0, f64::NAN)]
    fn refuses_no_reading(#[case] lightness: f64, #[case] a: f64, #[case] b: f64) {
        assert!(Lab::new(lightness, a, b).is_err());
    }

    /// Derivatives by differences, in the light and on the line of dark colors.
    #[test]
    fn slopes_are_differences() {
        const STEP: f64 = 1e-7;
        let white = Xyz { x: 2.0, y: 3.0, z: 5.0 };
        let band = Xyz { x: 0.4, y: 0.7, z: 0.2 };
        for xyz in [Xyz { x: 0.9, y: 1.2, z: 0.5 }, Xyz { x: 0.006, y: 0.012, z: 0.02 }] {
            let at = |by: f64| {
                let moved =
                    Xyz { x: xyz.x + by * band.x, y: xyz.y + by * band.y, z: xyz.z + by * band.z };
                Lab::of(&moved, &white).unwrap().parts()
            };
            let (up, down) = (at(STEP), at(-STEP));
            for (i, slope) in Lab::slopes(&xyz, &white, &band).into_iter().enumerate() {
                let found = (up[i] - down[i]) / (2.0 * STEP);
                assert!((found - slope).abs() < 1e-4 * slope.abs(), "{found} {slope}");
            }
        }
    }

    #[test]
    fn refuses_no_light() {
        let black = Xyz { x: 0.0, y: 0.0, z: 0.0 };
        assert_eq!(Lab::of(&black, &D65).unwrap().lightness(), 0.0);
        assert!(Lab::of(&D65, &black).is_err());
        assert!(Lab::of(&Xyz { x: f64::NAN, ..D65 }, &D65).is_err());
        assert!(Srgb::new(0.5, 1.1, 0.5).is_err());
    }

    proptest! {
        #[test]
        fn every_screen_color_comes_back(r in any::<u8>(), g in any::<u8>(), b in any::<u8>()) {
            let color = Srgb::from_bytes(r, g, b);
            let back = color.lab().srgb().unwrap();
            for (got, want) in back.channels().into_iter().zip(color.channels()) {
                prop_assert!((got - want).abs() < 1e-9, "{got} {want}");
            }
        }
    }
}

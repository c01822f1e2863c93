//! Colors in documents and requests: as L\*a\*b\*, as sRGB, or as reflectance in bands; and the test pieces of a colorant.

use alloc::string::String;
use alloc::vec::Vec;

use super::resolve::Resolver;
use super::written::{Percent, Written};
use crate::codes::code;
use crate::color::ColorError;
use crate::color::lab::{Lab, Srgb};
use crate::color::light::{FIRST_NM, Light, STEP_NM, Spectrum};
use crate::color::match_color::TestPiece;
use crate::color::reading::{FROM_D50, INSTRUMENT, REPEATED, Reading, from_d50};
use crate::color::rows::{StatedIn, spectrum};
use crate::color::translucent::{BaseFilm, OverBackings};
use crate::fault::Fault;
use crate::json::entry::entry;
use crate::json::path::Path;
use crate::json::read_back::{ReadBack, or_null};
use crate::json::reader::{Node, Read};
use crate::parameter::Parameter;
use crate::quantity::{Amount, Length, Mass, Ratio};
use crate::words::words;

words! {
    /// The light that a colorimeter states its L*a*b* for.
    pub enum ReadIn {
        /// Daylight, 6504 K.
        D65 = "D65",
        /// Daylight, 5003 K; converted to D65 (Bradford).
        D50 = "D50",
        /// A filament lamp; L*a*b* of it cannot be converted to daylight.
        A = "A",
    }
}

entry! {
    /// A color, in one of five ways.
    pub struct ColorEntry {
        required {}
        optional {
            /// L*, a*, b* of a reading. Default: none. Example: `[52, 41, 18]`.
            lab: [f64; 3],
            /// Red, green and blue from 0 to 255, as a photograph next to white stores them. Default: none. Example: `[184, 94, 90]`.
            srgb: [f64; 3],
            /// The same as six hexadecimal digits. Default: none. Example: `"#b85e5a"`.
            hex: String,
            /// Reflectance in bands, of a spectrophotometer. Default: none.
            bands: BandsEntry,
            /// Reflectance as the text of a table, of a spectrophotometer. Default: none.
            csv: RowsEntry,
            /// Light that `lab` is for. Default: `"D65"`. Example: `"D50"`.
            light: ReadIn,
            /// Observer that `lab` is for, in degrees: 2. Default: 2. Example: `2`.
            observer: u32,
            /// Standard uncertainties of L*, a* and b* next to other readings taken in the same way. Default: 1 each of
            /// `srgb` and `hex`, 0.3 each of `lab` and `bands` (common practice, no source). Example: `[0.6, 0.6, 0.6]`.
            uncertainty: [f64; 3],
            /// Day of the reading. Default: none. Example: `"2027-03-05"`.
            day: String,
        }
    }
}

entry! {
    /// Reflectance in bands.
    pub struct BandsEntry {
        required {
            /// Wavelength of the first band, in nm. Example: `400`.
            from_nm: f64,
            /// From band to band, in nm: 10 or 20. Example: `10`.
            step_nm: f64,
            /// Reflectance of each band, from 0 to 1, at least up to 700 nm. Example: `[0.05, 0.06, 0.08]`.
            reflectance: Vec<f64>,
        }
        optional {}
    }
}

entry! {
    /// Reflectance as the text of a table: a wavelength and a reflectance on each line.
    pub struct RowsEntry {
        required {
            /// A wavelength in nm and a reflectance a line, divided by a comma, a semicolon or a tab, by rising wavelengths,
            /// every 10 or 20 nm at least from 400 to 700 nm. A first line without numbers is a heading. Example:
            /// `"nm,%\n400,5.1\n410,5.3"`.
            rows: String,
            /// What the reflectances are stated in: `"percent"`, from 0 to 100, or `"fraction"`, from 0 to 1. Example: `"percent"`.
            stated_in: StatedIn,
        }
        optional {}
    }
}

entry! {
    /// A test piece of base with one colorant.
    pub struct LetDownEntry {
        required {
            /// How much colorant. Example: `"20 drops"`.
            dose: Amount,
            /// In how much base. Example: `"50 g"`.
            base_mass: Written<Mass>,
            /// Color of the piece, thick enough to hide what is behind it.
            color: ColorEntry,
        }
        optional {}
    }
}

entry! {
    /// A thin test piece of a base alone, over a white and over a black backing.
    pub struct OverBackingsEntry {
        required {
            /// How thick the piece is. Example: `"3 mm"`.
            film_thickness: Written<Length>,
            /// Color of the bare white backing. Example: `{ "lab": [96, 0, 1] }`.
            white: ColorEntry,
            /// Color of the bare black backing. Example: `{ "lab": [18, 0, 0] }`.
            black: ColorEntry,
            /// Color of the piece on the white backing. Example: `{ "lab": [93, -1, 4] }`.
            over_white: ColorEntry,
            /// Color of the piece on the black backing. Example: `{ "lab": [45, -2, -3] }`.
            over_black: ColorEntry,
        }
        optional {}
    }
}

entry! {
    /// Strength of a colorant as pots have shown it, next to its test pieces.
    pub struct StrengthEntry {
        required {
            /// Factors on its effect in the red, the green and the blue. Example: `[1.08, 1.02, 1.05]`.
            factors: [f64; 3],
            /// Standard uncertainty that the three have in common. Example: `"4 %"`.
            common: Percent,
            /// Standard uncertainty of each by itself. Example: `"3 %"`.
            own: Percent,
        }
        optional {}
    }
}

/// A color as it was read.
pub(crate) struct Color {
    /// The color, and how sure it is.
    pub(crate) reading: Reading,
    srgb: Option<Srgb>,
    /// Its spectrum, if it was read in bands.
    pub(crate) spectrum: Option<Spectrum>,
}

impl Color {
    /// It as books and requests take it; of a spectrum with its bands, which other lights need.
    pub(crate) fn entry(&self) -> ColorEntry {
        let mut entry = ColorEntry::of(&self.reading);
        if let Some(spectrum) = &self.spectrum {
            entry.lab = None;
            entry.bands = Some(BandsEntry {
                from_nm: FIRST_NM,
                step_nm: STEP_NM,
                reflectance: spectrum.values().to_vec(),
                ext: None,
            });
        }
        entry
    }

    pub(crate) const fn lab(&self) -> Lab {
        self.reading.lab
    }

    pub(crate) fn srgb(&self) -> Result<Srgb, ColorError> {
        self.srgb.map_or_else(|| self.reading.lab.srgb(), Ok)
    }
}

impl ColorEntry {
    /// One that states no color.
    const NONE: Self = Self {
        lab: None,
        srgb: None,
        hex: None,
        bands: None,
        csv: None,
        light: None,
        observer: None,
        uncertainty: None,
        day: None,
        ext: None,
    };

    /// A color that was read already.
    pub(crate) const fn of(reading: &Reading) -> Self {
        let mut color = Self::NONE;
        color.lab = Some(reading.lab.parts());
        color.uncertainty = Some(reading.uncertainty);
        color
    }

    /// The color at `path`.
    pub(crate) fn read_at(&self, path: &Path<'_>, resolver: &mut Resolver) -> Option<Color> {
        resolver.date(&path.key("day"), self.day.as_ref())?;
        self.check_light(path, resolver)?;
        let color = match (self.lab, self.srgb, &self.hex, &self.bands, &self.csv) {
            (Some(lab), None, None, None, None) => self.of_lab(&path.key("lab"), lab, resolver),
            (None, Some([red, green, blue]), None, None, None) => {
                let srgb = Srgb::new(red / 255.0, green / 255.0, blue / 255.0);
                resolver.keep(&path.key("srgb"), srgb).map(of_srgb)
            }
            (None, None, Some(hex), None, None) => {
                let srgb = from_hex(hex);
                if srgb.is_none() {
                    resolver.fault(
                        code!("color-no-hex"),
                        &path.key("hex"),
                        &"This is not a color in hexadecimal digits.",
                        &"Write six of them, two each for red, green and blue: \"#b85e5a\".",
                    );
                }
                srgb.map(of_srgb)
            }
            (None, None, None, Some(bands), None) => {
                let read = Spectrum::new(bands.from_nm, bands.step_nm, &bands.reflectance);
                let path = path.key("bands");
                resolver.keep(&path, read).and_then(|read| of_spectrum(read, &path, resolver))
            }
            (None, None, None, None, Some(csv)) => {
                let path = path.key("csv");
                let rows = path.key("rows");
                match spectrum(&csv.rows, csv.stated_in) {
                    Ok(read) => of_spectrum(read, &rows, resolver),
                    Err(errors) => {
                        errors.iter().for_each(|error| resolver.report(&rows, error));
                        None
                    }
                }
            }
            _ => {
                resolver.fault(
                    code!("lab-or-srgb"),
                    path,
                    &"A color must be stated in one way.",
                    &"Write { \"lab\": [52, 41, 18] }, or one of \"srgb\", \"hex\", \"bands\" and \"csv\".",
                );
                None
            }
        }?;
        let Some(uncertainty) = self.uncertainty else { return Some(color) };
        if !uncertainty.iter().all(|u| (0.01..=50.0).contains(u)) {
            resolver.fault(
                code!("out-of-range"),
                &path.key("uncertainty"),
                &"A standard uncertainty of a color must be from 0.01 to 50.",
                &"Write one each for L*, a* and b*, as \"color-reading\" gives them, or leave it out.",
            );
            return None;
        }
        Some(Color { reading: Reading { uncertainty, ..color.reading }, ..color })
    }

    /// Refuses a light or an observer from which nothing can be converted.
    fn check_light(&self, path: &Path<'_>, resolver: &mut Resolver) -> Option<()> {
        let help = "Set the instrument to D65 and 2°, or give its reflectance in \"bands\".";
        if self.light == Some(ReadIn::A) {
            resolver.fault(
                code!("color-other-light"),
                &path.key("light"),
                &"L*a*b* in lamp light cannot be converted to daylight: pieces that are alike in one may differ in the other.",
                &help,
            );
            return None;
        }
        if self.observer.is_some_and(|degrees| degrees != 2) {
            resolver.fault(
                code!("color-other-light"),
                &path.key("observer"),
                &"L*a*b* of another observer than that of 2° cannot be converted: it is off by about 2 ΔE₀₀, up to 6.",
                &help,
            );
            return None;
        }
        Some(())
    }

    fn of_lab(
        &self,
        path: &Path<'_>,
        [lightness, a, b]: [f64; 3],
        resolver: &mut Resolver,
    ) -> Option<Color> {
        let lab = match Lab::new(lightness, a, b) {
            Ok(lab) => lab,
            Err(errors) => {
                for error in errors.as_slice() {
                    let place = match error.parameter {
                        Parameter::Lightness => 0,
                        Parameter::GreenRed => 1,
                        _ => 2,
                    };
                    resolver.report(&path.index(place), error);
                }
                return None;
            }
        };
        let reading = match self.light {
            Some(ReadIn::D50) => {
                let own = FROM_D50.map(|u| libm::sqrt(u * u + INSTRUMENT * INSTRUMENT));
                Reading { lab: resolver.keep(path, from_d50(&lab))?, uncertainty: own }
            }
            _ => Reading { lab, uncertainty: [INSTRUMENT; 3] },
        };
        Some(Color { reading, srgb: None, spectrum: None })
    }
}

fn of_spectrum(spectrum: Spectrum, path: &Path<'_>, resolver: &mut Resolver) -> Option<Color> {
    let lab = resolver.keep(path, spectrum.lab(Light::Daylight))?;
    let reading = Reading { lab, uncertainty: [INSTRUMENT; 3] };
    Some(Color { reading, srgb: None, spectrum: Some(spectrum) })
}

fn of_srgb(srgb: Srgb) -> Color {
    let reading = Reading { lab: srgb.lab(), uncertainty: [REPEATED; 3] };
    Color { reading, srgb: Some(srgb), spectrum: None }
}

fn from_hex(text: &str) -> Option<Srgb> {
    let digits = text.strip_prefix('#').unwrap_or(text);
    if digits.len() != 6 || !digits.bytes().all(|digit| digit.is_ascii_hexdigit()) {
        return None;
    }
    let [_, red, green, blue] = u32::from_str_radix(digits, 16).ok()?.to_be_bytes();
    Some(Srgb::from_bytes(red, green, blue))
}

impl LetDownEntry {
    /// The test piece, with `dose` as the mass of its colorant.
    pub(crate) fn read_at(
        &self,
        path: &Path<'_>,
        dose: Option<Mass>,
        resolver: &mut Resolver,
    ) -> Option<TestPiece> {
        let base = resolver.keep(&path.key("base_mass"), self.base_mass.to(resolver.system));
        let color_path = path.key("color");
        let color = self.color.read_at(&color_path, resolver);
        let srgb = color.and_then(|color| resolver.keep(&color_path, color.srgb()));
        let (dose, base): (Mass, Mass) = (dose?, base?);
        if base <= Mass::default() {
            resolver.fault(
                code!("out-of-range"),
                &path.key("base_mass"),
                &"There is no base to let the colorant down in.",
                &"Write the mass of base of the test piece's pot.",
            );
            return None;
        }
        let dose: Ratio = dose / base;
        Some(TestPiece { dose, reflectance: srgb?.linear() })
    }
}

impl OverBackingsEntry {
    /// How light goes through the base.
    pub(crate) fn read_at(&self, path: &Path<'_>, resolver: &mut Resolver) -> Option<BaseFilm> {
        let thickness = resolver.given_at(
            &path.key("film_thickness"),
            Parameter::PieceThickness,
            &self.film_thickness,
        );
        let mut light = |name: &str, entry: &ColorEntry| {
            let path = path.key(name);
            let color = entry.read_at(&path, resolver)?;
            resolver.keep(&path, color.srgb()).map(|srgb| srgb.linear())
        };
        let white = light("white", &self.white);
        let black = light("black", &self.black);
        let over_white = light("over_white", &self.over_white);
        let over_black = light("over_black", &self.over_black);
        let (white, black, over_white, over_black) = (white?, black?, over_white?, over_black?);
        let readings = OverBackings {
            white: &white,
            black: &black,
            over_white: &over_white,
            over_black: &over_black,
        };
        resolver.keep(path, BaseFilm::new(thickness?, &readings))
    }
}

impl Read for [f64; 3] {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        let numbers = node.value.as_array().map(Vec::as_slice);
        let numbers = match numbers {
            Some([a, b, c]) => a.as_f64().zip(b.as_f64()).zip(c.as_f64()),
            _ => None,
        };
        if numbers.is_none() {
            faults.push(node.mismatch("three numbers: [52, 41, 18]"));
        }
        numbers.map(|((a, b), c)| [a, b, c])
    }
}

impl ReadBack for ColorEntry {
    fn read_back(node: &Node<'_>, faults: &mut Vec<Fault>) -> Self {
        Self::read(node, faults).unwrap_or(Self::NONE)
    }
}

or_null! { ColorEntry; }

#[cfg(test)]
mod tests {
    use super::from_hex;

    #[test]
    fn hexadecimal_digits_are_a_color() {
        for text in ["#b85e5a", "B85E5A"] {
            let found = from_hex(text).unwrap().channels().map(|c| c * 255.0);
            assert_eq!(found, [184.0, 94.0, 90.0]);
        }
        for text in ["", "#b85e5", "#b85e5aa", "#b85e5g", "+b85e5a", "ßßß"] {
            assert!(from_hex(text).is_none(), "{text}");
        }
    }
}

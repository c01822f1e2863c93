//! Color: readings, differences, a starting formula for a color, and the next drop.
//!
//! A photograph with a card becomes a color and its uncertainty ([`reading`]); a color is CIE L\*a\*b\* ([`lab`]), and from
//! bands, or from the [`rows`] of an instrument, it is known under several lights ([`light`]); two of them differ by ΔE₀₀ ([`difference`]); mixtures follow Kubelka and
//! Munk ([`kubelka_munk`]); a formula for a target is found among calibrated colorants ([`match_color`]). What is seen of a pot
//! corrects the strengths of what is in it ([`pot`]), and says what to add next ([`next_drop`]); a piece that light goes through has a color over white and one over
//! black ([`translucent`]). All of it is a starting
//! point: a photograph is not the eye, and plastic is not paint. Pour a test piece and look at it.

use alloc::borrow::Cow;

use crate::codes::codes;
use crate::fault::Diagnose;
use crate::show;

pub mod difference;
pub mod kubelka_munk;
pub mod lab;
pub mod light;
pub mod match_color;
pub mod next_drop;
pub mod pot;
pub mod reading;
pub mod rows;
pub mod translucent;

/// Errors of a color.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum ColorError {
    /// A number outside its range.
    #[error("{what} must be {range}.")]
    Range {
        /// Which number.
        what: &'static str,
        /// The range, in words.
        range: &'static str,
    },
    /// A color that sRGB cannot show.
    #[error("This color is outside sRGB: its {channel} channel would be {}.", show::number(*.value))]
    OutsideSrgb {
        /// Which channel.
        channel: &'static str,
        /// Its linear value, which is not from 0 to 1.
        value: f64,
    },
    /// A reading with too many or too few bands.
    #[error("{found} bands where {wanted} are read.")]
    Bands {
        /// How many there are.
        found: usize,
        /// How many each reading has.
        wanted: usize,
    },
    /// Bands that are not those of a spectrum.
    #[error("Reflectances must be every 10 or 20 nm, at whole tens, and reach from 400 to 700 nm.")]
    Spectrum,
    /// Readings of a film that no film gives.
    #[error("No film gives these two readings over these backings.")]
    NoFilm,
    /// A colorant that was let down once only.
    #[error("A colorant needs let-downs at two or more doses, each above zero.")]
    TooFewLetDowns,
    /// Doses that are as many as the calibrated colorants are not.
    #[error("{found} doses or drops for {wanted} colorants.")]
    Doses {
        /// How many there are.
        found: usize,
        /// How many colorants.
        wanted: usize,
    },
    /// No colorant to match with.
    #[error("No colorant is calibrated.")]
    NoColorants,
    /// The search did not settle, or asks for more drops than can be counted.
    #[error("No formula of up to {most} drops a colorant was found.")]
    NoFormula {
        /// The most drops of one colorant.
        most: u32,
    },
}

impl Diagnose for ColorError {
    codes! {
        Self::Range { .. } => "out-of-range",
        Self::OutsideSrgb { .. } => "color-outside-srgb",
        Self::Bands { .. } => "color-wrong-bands",
        Self::Spectrum => "color-no-spectrum",
        Self::NoFilm => "color-no-film",
        Self::TooFewLetDowns => "color-too-few-let-downs",
        Self::Doses { .. } => "color-wrong-doses",
        Self::NoColorants => "color-no-colorants",
        Self::NoFormula { .. } => "color-no-formula",
    }

    fn help(&self) -> Cow<'static, str> {
        match self {
            Self::Range { .. } => {
                "Correct that number. A channel at 0 is a clipped photograph: take it again in more light."
            }
            Self::OutsideSrgb { .. } => "Give a color that a screen can show, or read it in more bands.",
            Self::Bands { .. } => "Read the base, every let-down and the target in the same bands.",
            Self::Spectrum => "Export them every 10 nm: \"from_nm\": 400, \"step_nm\": 10 and 31 values.",
            Self::NoFilm => {
                "Read one piece over a light and over a dark backing, and give the backings' own readings."
            }
            Self::TooFewLetDowns => "Pour two test pieces, e.g. with 5 and with 20 drops a cup.",
            Self::Doses { .. } => "Give one for each colorant, in the order in which they were added.",
            Self::NoColorants => "Add at least one colorant with its let-downs.",
            Self::NoFormula { .. } => "Leave out colorants that are alike, or make the batch smaller.",
        }
        .into()
    }
}

pub(crate) fn share(x: f64, what: &'static str) -> Result<f64, ColorError> {
    if crate::check::is_share(x) {
        Ok(x)
    } else {
        Err(ColorError::Range { what, range: "from 0 to 1" })
    }
}

#[cfg(test)]
mod tests {
    use super::ColorError;
    use crate::fault::Diagnose;

    #[test]
    fn each_error_has_its_help() {
        let errors = [
            ColorError::Range { what: "a share", range: "from 0 to 1" },
            ColorError::OutsideSrgb { channel: "red", value: 1.5 },
            ColorError::Bands { found: 2, wanted: 3 },
            ColorError::Spectrum,
            ColorError::NoFilm,
            ColorError::TooFewLetDowns,
            ColorError::Doses { found: 2, wanted: 3 },
            ColorError::NoColorants,
            ColorError::NoFormula { most: 10_000 },
        ];
        for error in errors {
            assert!(error.help().ends_with('.'), "{error:?}");
        }
    }
}

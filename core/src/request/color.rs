//! Colors in answers, and in words.

use alloc::format;
use alloc::string::String;

use super::response;
use crate::color::difference::{ciede2000, in_words};
use crate::color::lab::Lab;
use crate::color::pot::{Difference, Expected};
use crate::quantity::Length;
use crate::show::{Shown, text};

response! {
    /// A color in CIE L*a*b*.
    pub struct ShownLab {
        /// L*: 0 for black, 100 for white.
        pub lightness: f64,
        /// a*: green below zero, red above.
        pub a: f64,
        /// b*: blue below zero, yellow above.
        pub b: f64,
    }
}

response! {
    /// A ΔE₀₀ with its band of error.
    pub struct ShownDifference {
        /// ΔE₀₀ between the two most likely colors.
        pub difference: f64,
        /// It is above this with 97.5 %.
        pub low: f64,
        /// It is below this with 97.5 %.
        pub high: f64,
        /// How it looks, in words.
        pub looks: String,
    }
}

response! {
    /// The color of a piece that light goes through.
    pub struct ShownThrough {
        /// How thick the piece is.
        pub thickness: Shown<Length>,
        /// Its color over the white backing of the base's test piece.
        pub over_white: ShownLab,
        /// Standard uncertainties of its L*, a* and b*.
        pub over_white_uncertainty: [f64; 3],
        /// Its color over the black backing.
        pub over_black: ShownLab,
        /// Standard uncertainties of its L*, a* and b*.
        pub over_black_uncertainty: [f64; 3],
        /// ΔE₀₀ between the two: 0 where nothing shows through.
        pub shows_through: f64,
    }
}

impl From<Lab> for ShownLab {
    fn from(lab: Lab) -> Self {
        Self { lightness: lab.lightness(), a: lab.a(), b: lab.b() }
    }
}

impl From<&Difference> for ShownDifference {
    fn from(difference: &Difference) -> Self {
        Self {
            difference: difference.value,
            low: difference.low,
            high: difference.high,
            looks: in_words(difference.value).into(),
        }
    }
}

impl ShownThrough {
    pub(super) fn of(thickness: Length, over_white: &Expected, over_black: &Expected) -> Self {
        Self {
            thickness: text::millimeters(thickness),
            over_white: over_white.lab.into(),
            over_white_uncertainty: over_white.uncertainty(),
            over_black: over_black.lab.into(),
            over_black_uncertainty: over_black.uncertainty(),
            shows_through: ciede2000(&over_white.lab, &over_black.lab),
        }
    }

    /// It in a sentence.
    pub(super) fn text(&self) -> String {
        let lab = |lab: &ShownLab| {
            // By the sum nothing is "-0".
            let [l, a, b] = [lab.lightness, lab.a, lab.b].map(|x| libm::round(x) + 0.0);
            format!("L* {l}, a* {a}, b* {b}")
        };
        format!(
            "At {}: {} over white, {} over black; ΔE₀₀ {:.1} between them.",
            self.thickness.text,
            lab(&self.over_white),
            lab(&self.over_black),
            self.shows_through
        )
    }
}

impl ShownDifference {
    /// It in a sentence.
    pub(super) fn text(&self) -> String {
        format!("ΔE₀₀ {:.1} ({:.1} to {:.1}), {}", self.difference, self.low, self.high, self.looks)
    }
}

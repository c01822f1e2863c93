//! Colors in answers, and in words.

use alloc::format;
use alloc::string::String;

use super::response;
use crate::color::difference::in_words;
use crate::color::lab::Lab;
use crate::color::pot::Difference;

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

impl ShownDifference {
    /// It in a sentence.
    pub(super) fn text(&self) -> String {
        format!("ΔE₀₀ {:.1} ({:.1} to {:.1}), {}", self.difference, self.low, self.high, self.looks)
    }
}

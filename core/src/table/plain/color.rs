//! Color.

use crate::color::difference::ciede2000;
use crate::color::lab::Lab;
use crate::parameter::{Check, Parameter};
use crate::table::{Refusal, calculation};

calculation! {
    /// Difference of two colors in CIE L\*a\*b\*: ΔE₀₀ (CIEDE2000).
    ///
    /// ISO/CIE 11664-6. Below 1 two pieces look alike to most eyes; side by side the eye decides.
    COLOR_DIFFERENCE = "color_difference": ColorDifference -> ColorDifferenceResult
    takes {
        lightness: f64 = Lightness,
        a: f64 = GreenRed,
        b: f64 = BlueYellow,
        other_lightness: f64 = OtherLightness,
        other_a: f64 = OtherGreenRed,
        other_b: f64 = OtherBlueYellow,
    }
    gives {
        /// ΔE₀₀.
        difference: f64 = "difference" Pure,
    }
    request "color-difference"
    example ColorDifference {
        lightness: 50.0,
        a: 2.6772,
        b: -79.7751,
        other_lightness: 50.0,
        other_a: 0.0,
        other_b: -82.7485,
    } => ColorDifferenceResult { difference: 2.042_459_680_156_574 };
}

impl ColorDifference {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges.
    pub fn calculate(&self) -> Result<ColorDifferenceResult, Refusal> {
        let mut check = Check::new();
        check
            .number(Parameter::Lightness, self.lightness)
            .number(Parameter::GreenRed, self.a)
            .number(Parameter::BlueYellow, self.b)
            .number(Parameter::OtherLightness, self.other_lightness)
            .number(Parameter::OtherGreenRed, self.other_a)
            .number(Parameter::OtherBlueYellow, self.other_b);
        check.finish()?;
        let one = Lab::new(self.lightness, self.a, self.b)?;
        let other = Lab::new(self.other_lightness, self.other_a, self.other_b)?;
        Ok(ColorDifferenceResult { difference: ciede2000(&one, &other) })
    }
}

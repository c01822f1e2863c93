//! How far apart two colors look.

use super::color::ShownLab;
use super::{request, response};
use crate::color::difference::ciede2000;
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::json::path::Path::At;

request! {
    /// Asks how far apart two colors look.
    pub struct ColorDifferenceRequest {
        named {
            other_color: ColorEntry = color,
        }
        required {
            color: ColorEntry,
        }
        optional {}
    }
}

response! {
    /// How far apart they look.
    pub struct ColorDifferenceResponse {
        /// ΔE₀₀; about 1 is what a trained eye just sees side by side.
        pub difference: f64,
        /// The color.
        pub color: ShownLab,
        /// The other color.
        pub other_color: ShownLab,
    }
}

impl ColorDifferenceRequest {
    /// Takes the CIEDE2000 difference.
    ///
    /// # Errors
    /// A color that is stated in no way or two, or out of its range.
    pub fn answer(&self) -> Result<ColorDifferenceResponse, Faults> {
        let mut resolver = Resolver::of_request(None);
        let one = self.color.read_at(&At("/color"), &mut resolver);
        let other = self.other_color.read_at(&At("/other_color"), &mut resolver);
        let response = one.zip(other).map(|(one, other)| {
            let (one, other) = (one.lab(), other.lab());
            ColorDifferenceResponse {
                difference: ciede2000(&one, &other),
                color: one.into(),
                other_color: other.into(),
            }
        });
        resolver.finish(response)
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    /// Sharma, Wu and Dalal 2005, table 1, pairs 1 and 25.
    #[rstest]
    #[case([50.0, 2.6772, -79.7751], [50.0, 0.0, -82.7485], 2.0425)]
    #[case([60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644)]
    fn published_pairs(#[case] one: [f64; 3], #[case] other: [f64; 3], #[case] wanted: f64) {
        let answer = result(json!({
            "calculate": "color-difference", "color": { "lab": one }, "other_color": { "lab": other }
        }));
        assert!((answer["difference"].as_f64().unwrap() - wanted).abs() < 5e-5);
    }

    #[test]
    fn white_is_white_either_way() {
        let answer = result(json!({
            "calculate": "color-difference",
            "color": { "lab": [100, 0, 0] }, "other_color": { "srgb": [255, 255, 255] }
        }));
        assert!(answer["difference"].as_f64().unwrap() < 1e-9);
    }

    /// Each number out of its range is a fault of its own place.
    #[test]
    fn each_number_has_its_place() {
        let request = json!({
            "calculate": "color-difference", "color": { "lab": [101, -201, 201] }, "other_color": { "lab": [50, 0, 0] }
        });
        let answer = crate::request::answer_value(&request);
        let paths: alloc::vec::Vec<_> = answer["faults"]
            .as_array()
            .unwrap()
            .iter()
            .map(|fault| fault["path"].clone())
            .collect();
        assert_eq!(paths, ["/color/lab/0", "/color/lab/1", "/color/lab/2"]);
    }

    #[rstest]
    #[case(json!({}), "lab-or-srgb")]
    #[case(json!({ "srgb": [255, 256, 0] }), "out-of-range")]
    #[case(json!({ "srgb": [0, 0, 0], "uncertainty": [0.0099, 1, 1] }), "out-of-range")]
    #[case(json!({ "srgb": [0, 0, 0], "uncertainty": [1, 1, 50.1] }), "out-of-range")]
    #[case(json!({ "srgb": [300, 0, 0] }), "out-of-range")]
    #[case(json!({ "lab": [120, 0, 0] }), "out-of-range")]
    #[case(json!({ "lab": [50, 0] }), "wrong-type")]
    fn faults(#[case] one: Value, #[case] code: &str) {
        let request = json!({
            "calculate": "color-difference", "color": one, "other_color": { "lab": [50, 0, 0] }
        });
        assert_eq!(fault_codes(request), [code]);
    }
}

//! How far two pieces are apart in daylight, lamp light and under an LED.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::{request, response};
use crate::codes::code;
use crate::color::difference::in_words;
use crate::color::light::{Light, Spectrum};
use crate::color::next_drop::THE_EYE_DECIDES;
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};

request! {
    /// Asks how far two pieces are apart in other lights than daylight: both read in bands.
    pub struct ColorLightsRequest {
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
    /// How far two pieces are apart in each light.
    pub struct ColorLightsResponse {
        /// How far to trust it, in words.
        pub statement: String,
        /// ΔE₀₀ in daylight (D65).
        pub daylight: f64,
        /// The other lights.
        pub lights: Vec<ColorInLight>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

response! {
    /// How far two pieces are apart in a light.
    pub struct ColorInLight {
        /// Which.
        pub light: Light,
        /// ΔE₀₀ in it.
        pub difference: f64,
        /// Metamerism index (CIE 15, change of light): ΔE*ab in it, once their difference in daylight is taken out.
        pub index: f64,
        /// The same as ΔE₀₀.
        pub index_00: f64,
    }
}

impl ColorLightsRequest {
    /// Takes both colors in each light.
    ///
    /// # Errors
    /// A color without bands: L*a*b* and photographs say nothing of other lights.
    pub fn answer(&self) -> Result<ColorLightsResponse, Faults> {
        let mut resolver = Resolver::of_request(None);
        let one = spectrum(&self.color, &At("/color"), &mut resolver);
        let other = spectrum(&self.other_color, &At("/other_color"), &mut resolver);
        let response =
            one.zip(other).and_then(|(one, other)| response(&one, &other, &mut resolver));
        resolver.finish(response)
    }
}

fn response(
    one: &Spectrum,
    other: &Spectrum,
    resolver: &mut Resolver,
) -> Option<ColorLightsResponse> {
    let (mut lights, mut text, mut daylight) = (Vec::new(), Vec::new(), 0.0);
    for light in [Light::Lamp, Light::Led] {
        let found = resolver.keep(&Path::ROOT, one.metamerism(other, Light::Daylight, light))?;
        daylight = found.reference;
        lights.push(ColorInLight {
            light,
            difference: found.test,
            index: found.index,
            index_00: found.index_00,
        });
        text.push(format!(
            "In {light}: ΔE₀₀ {:.1}, {}; metamerism index {:.1}.",
            found.test,
            in_words(found.test),
            found.index
        ));
    }
    text.insert(0, format!("In daylight: ΔE₀₀ {daylight:.1}, {}.", in_words(daylight)));
    text.push(THE_EYE_DECIDES.to_string());
    Some(ColorLightsResponse { statement: THE_EYE_DECIDES.to_string(), daylight, lights, text })
}

fn spectrum(entry: &ColorEntry, path: &Path<'_>, resolver: &mut Resolver) -> Option<Spectrum> {
    let color = entry.read_at(path, resolver)?;
    if color.spectrum.is_none() {
        resolver.fault(
            code!("color-no-bands"),
            path,
            &"How it looks in another light cannot be calculated: pieces of the same L*a*b* may differ there.",
            &"Read both pieces in bands with a spectrophotometer, and give \"bands\".",
        );
    }
    color.spectrum
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn bands(of: &dyn Fn(f64) -> f64) -> Value {
        let reflectance: Vec<f64> = (0..31).map(|i| of(400.0 + 10.0 * f64::from(i))).collect();
        json!({ "bands": { "from_nm": 400, "step_nm": 10, "reflectance": reflectance } })
    }

    use alloc::vec::Vec;

    /// A gray and a gray of humps differ more under a lamp than in daylight; a piece does not differ from itself.
    #[test]
    fn a_hump_shows_in_other_lights() {
        let gray = bands(&|_| 0.4);
        let humps = bands(&|nm| 0.4 + 0.15 * libm::sin((nm - 400.0) / 30.0));
        let answer =
            result(json!({ "calculate": "color-lights", "color": gray, "other_color": humps }));
        let [lamp, led] = [0, 1].map(|i| answer["lights"][i]["index"].as_f64().unwrap());
        assert!(lamp > 0.5 && led > 0.5, "{answer}");
        let number = |value: &Value| value.as_f64().unwrap();
        let text = answer["text"].as_array().unwrap();
        let daylight = alloc::format!("In daylight: ΔE₀₀ {:.1}, ", number(&answer["daylight"]));
        assert!(text[0].as_str().unwrap().starts_with(&daylight), "{answer}");
        for (i, name) in ["A", "LED-B3"].into_iter().enumerate() {
            let light = &answer["lights"][i];
            assert_eq!(light["light"], name, "{answer}");
            let line = alloc::format!("In {name}: ΔE₀₀ {:.1}, ", number(&light["difference"]));
            assert!(text[i + 1].as_str().unwrap().starts_with(&line), "{answer}");
        }
        // The last word is the eye's.
        assert_eq!((text.len(), &text[3]), (4, &answer["statement"]), "{answer}");
        let same =
            result(json!({ "calculate": "color-lights", "color": humps, "other_color": humps }));
        assert_eq!(same["lights"][0]["index"], 0.0, "{same}");
    }

    #[test]
    fn a_photograph_says_nothing_of_other_lights() {
        let request = json!({
            "calculate": "color-lights", "color": { "lab": [50, 0, 0] }, "other_color": bands(&|_| 0.4)
        });
        assert_eq!(fault_codes(request), ["color-no-bands"]);
    }
}

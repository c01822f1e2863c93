//! A color from pictures with a card, or from an instrument.

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::color::ShownLab;
use super::{request, response};
use crate::codes::{Code, code};
use crate::color::next_drop::THE_EYE_DECIDES;
use crate::color::reading::{
    GrayStep, OTHER_INSTRUMENT, Patch, PhotoNote, Photographed, Reading, photographed, repeated,
};
use crate::document::color::ColorEntry;
use crate::document::resolve::Resolver;
use crate::document::written::Percent;
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::one_or_list::OneOrList;
use crate::json::path::Path::{self, At};
use crate::show::Note;

request! {
    /// Asks for a color: from `pictures` of it with a white or gray card in each, or from an `instrument`.
    pub struct ColorReadingRequest {
        required {}
        optional {
            pictures: OneOrList<PictureEntry>,
            instrument: ColorEntry,
        }
    }
}

entry! {
    /// A picture of a piece and a card, by the statistics of their pixels.
    pub struct PictureEntry {
        required {
            /// Pixels of the piece.
            patch: PatchEntry,
            /// Pixels of the card: one white or gray area, or a list of several steps.
            card: OneOrList<GrayStepEntry>,
        }
        optional {}
    }
}

entry! {
    /// Pixels of an area.
    pub struct PatchEntry {
        required {
            /// Means of red, green and blue, from 0 to 255. Example: `[184, 94, 90]`.
            mean: [f64; 3],
            /// Their standard deviations over the area. Example: `[2.1, 1.8, 1.9]`.
            deviation: [f64; 3],
            /// Number of pixels, 100 at least. Example: `2400`.
            pixels: u32,
        }
        optional {
            /// Share of pixels with a channel at 0 or at 255. Default: none. Example: `"0.1 %"`.
            clipped: Percent,
        }
    }
}

entry! {
    /// Pixels of a white or gray area.
    pub struct GrayStepEntry {
        required {
            /// What it reflects, as stated on the card. Example: `"90 %"`.
            reflectance: Percent,
            /// Its pixels.
            pixels: PatchEntry,
        }
        optional {}
    }
}

response! {
    /// A color as it was read.
    pub struct ColorReadingResponse {
        /// How far to trust it, in words.
        pub statement: String,
        /// The color as books and requests take it, with its uncertainty next to readings taken in the same way; of a spectrum
        /// with its bands, so that other lights can be asked for.
        pub color: ColorEntry,
        /// The color.
        pub lab: ShownLab,
        /// The same for a screen; none if no screen shows it.
        pub hex: Option<String>,
        /// Standard uncertainty of each of L*, a* and b* next to readings of another camera or instrument.
        pub other_instrument: f64,
        /// The camera's curve by the steps of the card, in red, green and blue, of each picture; 1 with one step.
        pub curves: Vec<[f64; 3]>,
        /// What would make it better.
        pub notes: Vec<Note>,
        /// The answer in short lines.
        pub text: Vec<String>,
    }
}

impl ColorReadingRequest {
    /// Reads the color.
    ///
    /// # Errors
    /// A picture that will not do, each with what would: clipped, unevenly lit, too small, in a shadow; a reading that is not a
    /// color, or not one in daylight.
    pub fn answer(&self) -> Result<ColorReadingResponse, Faults> {
        let mut resolver = Resolver::of_request(None);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<ColorReadingResponse> {
        match (&self.pictures, &self.instrument) {
            (Some(pictures), None) => {
                let read = pictures
                    .each(&At("/pictures"), |path, picture| picture.read_at(path, resolver))?;
                let Some((lab, uncertainty)) = repeated(&read) else {
                    resolver.fault(
                        code!("picture-or-instrument"),
                        &At("/pictures"),
                        &"There is no picture.",
                        &"Give one at least; three or more give their own uncertainty.",
                    );
                    return None;
                };
                let reading = Reading { lab, uncertainty };
                Some(answer(&reading, ColorEntry::of(&reading), &read))
            }
            (None, Some(reading)) => {
                let color = reading.read_at(&At("/instrument"), resolver)?;
                Some(answer(&color.reading, color.entry(), &[]))
            }
            _ => {
                resolver.fault(
                    code!("picture-or-instrument"),
                    &Path::ROOT,
                    &"A color is read from pictures, or from one reading.",
                    &"Give \"pictures\", each with its \"patch\" and \"card\", or \"instrument\".",
                );
                None
            }
        }
    }
}

impl PictureEntry {
    fn read_at(&self, path: &Path<'_>, resolver: &mut Resolver) -> Option<Photographed> {
        let card: Vec<GrayStep> = self
            .card
            .items()
            .iter()
            .map(|step| GrayStep {
                reflectance: step.reflectance.share(),
                patch: step.pixels.patch(),
            })
            .collect();
        resolver.keep(path, photographed(&self.patch.patch(), &card))
    }
}

impl PatchEntry {
    fn patch(&self) -> Patch {
        Patch {
            mean: self.mean,
            deviation: self.deviation,
            pixels: self.pixels,
            clipped: self.clipped.map_or(0.0, Percent::share),
        }
    }
}

fn answer(reading: &Reading, color: ColorEntry, pictures: &[Photographed]) -> ColorReadingResponse {
    let mut notes: Vec<Note> = Vec::new();
    for note in pictures.iter().flat_map(|picture| &picture.notes) {
        notes.push(Note { code: String::from(code_of(note)), message: note.text() });
    }
    let [l, a, b] = reading.lab.parts();
    let [dl, da, db] = reading.uncertainty;
    let mut text = Vec::from([format!(
        "L* {l:.1} ± {dl:.1}, a* {a:.1} ± {da:.1}, b* {b:.1} ± {db:.1} next to readings taken in the same way; ± {OTHER_INSTRUMENT:.0} next to others."
    )]);
    text.extend(notes.iter().map(|note| note.message.clone()));
    text.push(THE_EYE_DECIDES.to_string());
    let hex = reading.lab.srgb().ok().map(|srgb| {
        let [red, green, blue] = srgb.channels().map(|channel| {
            // From 0 to 255, whole: nothing is cut off.
            libm::round(channel * 255.0) as u8
        });
        format!("#{red:02x}{green:02x}{blue:02x}")
    });
    ColorReadingResponse {
        statement: THE_EYE_DECIDES.to_string(),
        color,
        lab: reading.lab.into(),
        hex,
        other_instrument: OTHER_INSTRUMENT,
        curves: pictures.iter().map(|picture| picture.curve).collect(),
        notes,
        text,
    }
}

const fn code_of(note: &PhotoNote) -> Code {
    match note {
        PhotoNote::UnevenCard(_) => code!("photo-card-noted"),
        PhotoNote::UnevenPatch(_) => code!("photo-patch-noted"),
        PhotoNote::DarkCard(_) => code!("photo-dark-card"),
    }
}

#[cfg(test)]
mod tests {
    use alloc::string::ToString;

    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn picture(mean: [f64; 3]) -> Value {
        json!({
            "patch": { "mean": mean, "deviation": [1, 1, 1], "pixels": 2000 },
            "card": { "reflectance": "90 %",
                "pixels": { "mean": [200, 195, 180], "deviation": [2, 2, 2], "pixels": 2000 } }
        })
    }

    /// A patch that looks as the card does reflects what it does: L* of 0.9 is 95.997 (CIE 15).
    #[test]
    fn a_patch_as_the_card_is_gray() {
        let answer = result(
            json!({ "calculate": "color-reading", "pictures": picture([200.0, 195.0, 180.0]) }),
        );
        let lab = &answer["lab"];
        assert!((lab["lightness"].as_f64().unwrap() - 95.997).abs() < 0.01, "{answer}");
        assert!(lab["a"].as_f64().unwrap().abs() < 0.01, "{answer}");
        // One picture: no surer than a repeated one is.
        assert_eq!(answer["color"]["uncertainty"], json!([1.0, 1.0, 1.0]), "{answer}");
        assert!(answer["text"].to_string().contains("The eye decides"), "{answer}");
    }

    /// What it answers is a color that a request takes.
    #[test]
    fn the_color_goes_on() {
        let pictures = [120.0, 121.0, 120.5].map(|red| picture([red, 60.0, 60.0]));
        let answer = result(json!({ "calculate": "color-reading", "pictures": pictures }));
        let unsure = answer["color"]["uncertainty"][0].as_f64().unwrap();
        assert!(unsure < 0.5, "{answer}");
        let again = result(json!({ "calculate": "color-reading", "instrument": answer["color"] }));
        assert_eq!(again["lab"], answer["lab"]);
        assert_eq!(again["hex"], answer["hex"]);
    }

    #[rstest]
    #[case(json!({ "hex": "#808080" }), 53.585)]
    #[case(json!({ "srgb": [128, 128, 128] }), 53.585)]
    #[case(json!({ "bands": { "from_nm": 400, "step_nm": 20, "reflectance": alloc::vec![0.2; 16] } }), 51.837)]
    #[case(json!({ "lab": [60, 0, 0], "light": "D50" }), 60.0)]
    fn other_ways(#[case] reading: Value, #[case] lightness: f64) {
        let answer = result(json!({ "calculate": "color-reading", "instrument": reading }));
        let lab = &answer["lab"];
        assert!((lab["lightness"].as_f64().unwrap() - lightness).abs() < 1e-3, "{answer}");
        assert!(lab["a"].as_f64().unwrap().abs() < 1e-9, "{answer}");
    }

    /// A spectrophotometer's table is its bands, and its bands go on: they say how it looks in other lights.
    #[test]
    fn a_table_of_an_instrument() {
        let share = |nm: u32| 0.3 + 0.001 * f64::from(nm - 400);
        let reflectance: alloc::vec::Vec<f64> = (400..=700).step_by(10).map(share).collect();
        let lines =
            (400..=700).step_by(10).map(|nm| alloc::format!("{nm},{}\n", 100.0 * share(nm)));
        let rows: alloc::string::String = lines.collect();
        let ask =
            |reading: Value| result(json!({ "calculate": "color-reading", "instrument": reading }));
        let table = ask(json!({ "csv": { "rows": rows, "stated_in": "percent" } }));
        let bands =
            ask(json!({ "bands": { "from_nm": 400, "step_nm": 10, "reflectance": reflectance } }));
        for part in ["lightness", "a", "b"] {
            let [one, other] = [&table, &bands].map(|answer| answer["lab"][part].as_f64().unwrap());
            assert!((one - other).abs() < 1e-9, "{table} {bands}");
        }
        assert_eq!(table["color"]["lab"], json!(null), "{table}");
        assert_eq!(ask(table["color"].clone())["lab"], table["lab"]);
        let lights = json!({ "calculate": "color-lights", "color": table["color"], "other_color": bands["color"] });
        assert!(result(lights)["lights"][0]["index"].as_f64().unwrap() < 1e-6);
    }

    #[test]
    fn each_line_of_a_table_has_its_fault() {
        let rows = "400,5\n410,x\n420,500";
        let request = json!({ "calculate": "color-reading", "instrument": { "csv": { "rows": rows, "stated_in": "percent" } } });
        let answer = crate::request::answer_value(&request);
        let text = answer["faults"].to_string();
        assert!(text.contains("Line 2: ") && text.contains("Line 3: "), "{answer}");
        assert_eq!(fault_codes(request), ["rows-not-two", "rows-reflectance"]);
    }

    /// How sure a color is by how it was read, next to readings taken in the same way; what is stated is kept, to its limits. From
    /// D50 the conversion adds its own: √(0.4² + 0.3²) and √(0.9² + 0.3²).
    #[rstest]
    #[case(json!({ "lab": [60, 0, 0] }), [0.3, 0.3, 0.3])]
    #[case(json!({ "srgb": [90, 90, 90] }), [1.0, 1.0, 1.0])]
    #[case(json!({ "hex": "#5a5a5a" }), [1.0, 1.0, 1.0])]
    #[case(json!({ "bands": { "from_nm": 400, "step_nm": 20, "reflectance": alloc::vec![0.2; 16] } }), [0.3, 0.3, 0.3])]
    #[case(json!({ "lab": [60, 0, 0], "light": "D50" }), [0.5, libm::sqrt(0.9), libm::sqrt(0.9)])]
    #[case(json!({ "lab": [60, 0, 0], "observer": 2, "uncertainty": [0.01, 50, 2] }), [0.01, 50.0, 2.0])]
    fn how_sure_a_reading_is(#[case] reading: Value, #[case] wanted: [f64; 3]) {
        let answer = result(json!({ "calculate": "color-reading", "instrument": reading }));
        for (found, wanted) in answer["color"]["uncertainty"].as_array().unwrap().iter().zip(wanted)
        {
            assert!((found.as_f64().unwrap() - wanted).abs() < 1e-12, "{answer}");
        }
    }

    /// The color in a line, and in the digits of a screen, of which green has the fewest: 7 of 255 in each.
    #[test]
    fn a_color_is_put_in_a_line() {
        let reading = json!({ "srgb": [184, 7, 90], "uncertainty": [0.6, 1.2, 3] });
        let answer = result(json!({ "calculate": "color-reading", "instrument": reading }));
        assert_eq!(answer["hex"], "#b8075a");
        let [l, a, b] = ["lightness", "a", "b"].map(|part| answer["lab"][part].as_f64().unwrap());
        let line = alloc::format!(
            "L* {l:.1} ± 0.6, a* {a:.1} ± 1.2, b* {b:.1} ± 3.0 next to readings taken in the same way; ± 3 next to others."
        );
        assert_eq!(answer["text"][0], line);
        let outside = json!({ "lab": [90, -100, 90] });
        let answer = result(json!({ "calculate": "color-reading", "instrument": outside }));
        assert_eq!(answer["hex"], json!(null));
    }

    /// Notes on a picture come with the color.
    #[test]
    fn a_note_comes_with_the_color() {
        let mut picture = picture([120.0, 110.0, 100.0]);
        picture["patch"]["clipped"] = json!("1 %");
        picture["card"]["pixels"]["deviation"] = json!([12, 12, 12]);
        picture["patch"]["deviation"] = json!([30, 30, 30]);
        let answer = result(json!({ "calculate": "color-reading", "pictures": picture }));
        let notes = answer["notes"].as_array().unwrap();
        let codes: alloc::vec::Vec<_> = notes.iter().map(|note| note["code"].clone()).collect();
        assert_eq!(codes, ["photo-card-noted", "photo-patch-noted"], "{answer}");
        let text = answer["text"].as_array().unwrap();
        assert!(notes.iter().all(|note| text.contains(&note["message"])), "{answer}");
        assert_eq!(answer["curves"], json!([[1.0, 1.0, 1.0]]), "{answer}");
    }

    #[rstest]
    #[case(json!({}), "picture-or-instrument")]
    #[case(json!({ "pictures": [] }), "picture-or-instrument")]
    #[case(json!({ "pictures": picture([200.0, 195.0, 1.0]) }), "photo-clipped")]
    #[case(json!({ "instrument": { "hex": "red" } }), "color-no-hex")]
    #[case(json!({ "instrument": { "lab": [50, 0, 0], "light": "A" } }), "color-other-light")]
    #[case(json!({ "instrument": { "lab": [50, 0, 0], "observer": 10 } }), "color-other-light")]
    #[case(json!({ "instrument": { "lab": [50, 0, 0], "uncertainty": [0, 1, 1] } }), "out-of-range")]
    #[case(json!({ "instrument": { "lab": [50, 0, 0], "day": "May" } }), "not-a-date")]
    #[case(json!({ "instrument": { "bands": { "from_nm": 400, "step_nm": 5, "reflectance": [0.5] } } }), "color-no-spectrum")]
    fn faults(#[case] mut request: Value, #[case] code: &str) {
        request["calculate"] = json!("color-reading");
        assert_eq!(fault_codes(request), [code]);
    }
}

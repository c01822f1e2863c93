//! A formula to begin with for a wanted color.

use alloc::string::{String, ToString};
use alloc::vec::Vec;

use super::color::ShownLab;
use super::{request, response};
use crate::color::kubelka_munk::Surface;
use crate::color::lab::SRGB_BANDS;
use crate::color::match_color::{Colorants, STARTING_POINT, StartingFormula, TestPiece};
use crate::document::color::{ColorEntry, LetDownEntry};
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::Named;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::quantity::{Mass, Ratio, System};
use crate::show::{Shown, text};

request! {
    /// Asks for a formula to begin with, from colorants that the shop has let down and photographed
    /// next to white. For the let-downs of a book ask "color-next" with a cup of base alone.
    pub struct ColorMatchRequest {
        required {
            base_color: ColorEntry,
            colorants: Named<ColorantEntry>,
            target: ColorEntry,
            base_mass: Written<Mass>,
        }
        optional {
            measures: System,
        }
    }
}

entry! {
    /// A colorant, by test pieces with two or more doses of it alone.
    pub struct ColorantEntry {
        required {
            /// Mass of one drop.
            drop: Written<Mass>,
            /// The test pieces.
            let_downs: Vec<LetDownEntry>,
        }
        optional {}
    }
}

response! {
    /// A formula to begin with.
    pub struct ColorMatchResponse {
        /// How far to trust it, in words.
        pub statement: String,
        /// Drops of each colorant; those with none are left out.
        pub drops: Vec<ColorantDrops>,
        /// The color that the model expects.
        pub expected: ShownLab,
        /// Its ΔE₀₀ to the target.
        pub difference: f64,
        /// ΔE₀₀ to the target of the exact doses, before drops were made whole.
        pub exact_difference: f64,
        /// The greatest ΔE₀₀ between a test piece of these colorants and the model of it: the formula is
        /// no surer than that.
        pub fit: f64,
    }
}

response! {
    /// The drops of one colorant.
    pub struct ColorantDrops {
        /// Which.
        pub colorant: String,
        /// Whole drops, for the base of the request.
        pub drops: u32,
        /// Their mass per mass of base.
        pub dose: Shown<Ratio>,
        /// The same before drops were made whole.
        pub exact: Shown<Ratio>,
        /// Whether that is more than its strongest test piece, where nothing is calibrated.
        pub beyond_let_downs: bool,
    }
}

impl ColorMatchRequest {
    /// Calibrates the colorants by their test pieces and looks for the target.
    ///
    /// # Errors
    /// Colors outside sRGB; a colorant with fewer than two doses; no formula within the maximum of drops.
    pub fn answer(&self) -> Result<ColorMatchResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<ColorMatchResponse> {
        let base = bands(&At("/base_color"), &self.base_color, resolver);
        let target = bands(&At("/target"), &self.target, resolver);
        let base_mass = resolver.given(Parameter::BaseMass, &self.base_mass);
        let mut read = Vec::new();
        for (name, entry) in &self.colorants {
            read.push((name, entry.read_at(&At("/colorants").key(name), resolver)));
        }
        let base = base?;
        let mut colorants =
            resolver.keep(&At("/base_color"), Colorants::new(&SRGB_BANDS, Surface::NONE, &base))?;
        let mut drops = Vec::new();
        for (name, colorant) in read {
            let (drop, let_downs) = colorant?;
            let let_downs: Vec<_> = let_downs.iter().map(TestPiece::as_let_down).collect();
            resolver.keep(&At("/colorants").key(name), colorants.add(&let_downs))?;
            drops.push(drop / base_mass?);
        }
        let formula =
            resolver.keep(&At("/target"), colorants.starting_formula(&target?, &drops))?;
        Some(self.shown(&formula))
    }

    fn shown(&self, formula: &StartingFormula) -> ColorMatchResponse {
        let used = self.colorants.keys().zip(&formula.doses).filter(|(_, dose)| dose.drops > 0);
        let drops = used.map(|(name, dose)| ColorantDrops {
            colorant: name.clone(),
            drops: dose.drops,
            dose: text::fine_percent(dose.dose),
            exact: text::fine_percent(dose.exact),
            beyond_let_downs: dose.beyond_let_downs,
        });
        ColorMatchResponse {
            statement: STARTING_POINT.to_string(),
            drops: drops.collect(),
            expected: formula.expected.into(),
            difference: formula.difference,
            exact_difference: formula.exact_difference,
            fit: formula.fit,
        }
    }
}

impl ColorantEntry {
    /// The mass of a drop, and the test pieces.
    fn read_at(&self, path: &Path<'_>, resolver: &mut Resolver) -> Option<(Mass, Vec<TestPiece>)> {
        let drop = resolver.keep(&path.key("drop"), self.drop.to(resolver.system));
        let let_downs =
            resolver.each(&path.key("let_downs"), &self.let_downs, |resolver, path, entry| {
                let dose = match entry.dose.drops() {
                    Some(drops) => drop.map(|drop| drop * drops.to_f64()),
                    None => resolver.keep(&path.key("dose"), entry.dose.to(resolver.system)),
                };
                entry.read_at(path, dose, resolver)
            });
        Some((drop?, let_downs?))
    }
}

/// Reflectance of a color in the three bands of a photograph.
fn bands(path: &Path<'_>, entry: &ColorEntry, resolver: &mut Resolver) -> Option<[f64; 3]> {
    let color = entry.read_at(path, resolver)?;
    resolver.keep(path, color.srgb()).map(|srgb| srgb.linear())
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;

    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::color::kubelka_munk::{k_over_s, reflectance};
    use crate::color::lab::{Lab, SRGB_BANDS, Xyz};
    use crate::request::tests::{fault_codes, result};

    const BASE: [f64; 3] = [0.85, 0.85, 0.8];
    /// K per drop in 100 g of base; invented colorants that do not scatter.
    const BLUE: [f64; 3] = [0.09, 0.03, 0.005];
    const RED: [f64; 3] = [0.004, 0.05, 0.06];

    /// Color of `drops` of the two, by K/S = (K/S)_base + Σ n k (Kubelka and Munk, one constant).
    fn color(blue: f64, red: f64) -> Value {
        let read: Vec<f64> = (0..3)
            .map(|i| {
                let q = k_over_s(BASE[i]).unwrap() + blue * BLUE[i] + red * RED[i];
                reflectance(q).unwrap()
            })
            .collect();
        let sum =
            |f: fn(&Xyz) -> f64| read.iter().zip(&SRGB_BANDS).map(|(r, band)| r * f(band)).sum();
        let xyz = Xyz { x: sum(|b| b.x), y: sum(|b| b.y), z: sum(|b| b.z) };
        let lab = Lab::of(&xyz, &crate::color::lab::D65).unwrap();
        json!({ "lab": [lab.lightness(), lab.a(), lab.b()] })
    }

    fn request() -> Value {
        let piece = |dose: &str, color: Value| json!({ "dose": dose, "base_mass": "100 g", "color": color });
        json!({
            "calculate": "color-match", "base_color": color(0.0, 0.0), "target": color(6.0, 10.0),
            "base_mass": "200 g",
            "colorants": {
                "blue": { "drop": "0.05 g", "let_downs": [
                    piece("5 drops", color(5.0, 0.0)), piece("1 g", color(20.0, 0.0)) ] },
                "red": { "drop": "0.05 g", "let_downs": [
                    piece("5 drops", color(0.0, 5.0)), piece("20 drops", color(0.0, 20.0)) ] }
            }
        })
    }

    /// A known mix comes back: 6 and 10 drops in 100 g are 12 and 20 in 200 g.
    #[test]
    fn a_known_mix_comes_back() {
        let answer = result(request());
        let drops: Vec<(&str, u64)> = answer["drops"]
            .as_array()
            .unwrap()
            .iter()
            .map(|one| (one["colorant"].as_str().unwrap(), one["drops"].as_u64().unwrap()))
            .collect();
        assert_eq!(drops, [("blue", 12), ("red", 20)]);
        assert!(answer["difference"].as_f64().unwrap() < 0.05, "{answer}");
        assert!(answer["statement"].as_str().unwrap().contains("starting point"));
    }

    /// Half a drop in 100 g of base is one in 200 g.
    #[test]
    fn one_drop_is_a_dose() {
        let mut request = request();
        request["target"] = color(0.5, 10.0);
        let answer = result(request);
        let [blue, red] = [0, 1].map(|i| &answer["drops"][i]);
        assert_eq!((&blue["colorant"], &blue["drops"]), (&json!("blue"), &json!(1)), "{answer}");
        assert_eq!((&red["colorant"], &red["drops"]), (&json!("red"), &json!(20)), "{answer}");
    }

    #[test]
    fn a_test_piece_has_base() {
        let path = "/colorants/red/let_downs/0/base_mass";
        let mut request = request();
        *request.pointer_mut(path).unwrap() = json!("0 g");
        let answer = crate::request::answer_value(&request);
        let faults = answer["faults"].as_array().unwrap();
        assert_eq!((faults.len(), &faults[0]["path"]), (1, &json!(path)), "{answer}");
    }

    #[rstest]
    #[case("/target", json!({ "lab": [90, -100, 90] }), "color-outside-srgb")]
    #[case("/colorants", json!({}), "color-no-colorants")]
    #[case("/colorants/red/let_downs", json!([]), "color-too-few-let-downs")]
    #[case("/colorants/red/drop", json!("0.05 mL"), "amount-wrong-dimension")]
    #[case("/base_mass", json!("0 g"), "out-of-range")]
    fn faults(#[case] path: &str, #[case] value: Value, #[case] code: &str) {
        let mut request = request();
        *request.pointer_mut(path).unwrap() = value;
        assert_eq!(fault_codes(request), [code]);
    }
}

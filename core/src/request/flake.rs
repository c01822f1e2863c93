//! How many particles a dose of flake holds, and what of another cut takes its place.

use alloc::string::{String, ToString};

use super::{request, response};
use crate::codes::code;
use crate::document::book::MaterialEntry;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::flake::{Alike, Flake};
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::quantity::{Amount, Dimension, Mass, Measurable, Ratio, System, Volume};
use crate::show::{Shown, text};

request! {
    /// Asks what a dose of flake comes to.
    pub struct FlakeRequest {
        required {
            flake: MaterialEntry,
            flake_dose: Amount,
        }
        optional {
            finished_mass: Written<Mass>,
            piece_mass: Written<Mass>,
            other_flake: MaterialEntry,
            alike: Alike,
            measures: System,
        }
    }
}

response! {
    /// Particles and area of the dose, by the nominal size of the cut.
    pub struct FlakeResponse {
        /// The cut as it was read.
        pub cut: String,
        /// Whether its shape is taken to be a hexagon, the text naming none.
        pub shape_assumed: bool,
        /// Mass of the dose.
        pub mass: Shown<Mass>,
        /// Particles in a gram.
        pub per_gram: f64,
        /// Particles in the dose.
        pub particles: f64,
        /// Particles in a piece.
        pub per_piece: Option<f64>,
        /// Dose of the other flake in its place.
        pub swap: Option<FlakeSwap>,
    }
}

response! {
    /// A dose of another flake.
    pub struct FlakeSwap {
        /// Its cut as it was read.
        pub cut: String,
        /// Mass to weigh.
        pub mass: Shown<Mass>,
        /// Volume to scoop, level, if its bulk density is known.
        pub scoop: Option<Shown<Volume>>,
        /// Its particles over those of the first dose.
        pub count: Shown<Ratio>,
        /// Its film area over that of the first dose.
        pub area: Shown<Ratio>,
    }
}

impl FlakeRequest {
    /// Counts the particles and swaps the cut, for as much area where nothing is said.
    ///
    /// # Errors
    /// A flake without cut, thickness or density; a dose or a film that cannot be.
    pub fn answer(&self) -> Result<FlakeResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<FlakeResponse> {
        let flake = read(&At("/flake"), &self.flake, resolver);
        let other =
            self.other_flake.as_ref().map(|other| read(&At("/other_flake"), other, resolver));
        let per_piece = self.share_of_a_piece(resolver);
        let flake = flake?;
        let dose = match self.flake_dose.dimension() {
            Dimension::VOLUME => {
                let volume = resolver
                    .keep(&At("/flake_dose"), self.flake_dose.to::<Volume>(resolver.system))?;
                let material = resolver.one_material(&At("/flake"), &self.flake)?;
                let scooped = material.scooped_density("weighing a spoonful of flake");
                resolver.keep(&At("/flake_dose"), scooped)?.mass_of(volume)
            }
            _ => resolver.keep(&At("/flake_dose"), self.flake_dose.to::<Mass>(resolver.system))?,
        };
        let particles = resolver.keep(&At("/flake_dose"), flake.particles(dose))?;
        let swap = match other {
            Some(other) => Some(self.swap(&flake, dose, &other?, resolver)?),
            None => None,
        };
        Some(FlakeResponse {
            cut: flake.cut().to_string(),
            shape_assumed: flake.cut().shape_assumed(),
            mass: text::mass(dose),
            per_gram: resolver.keep(&At("/flake_dose"), flake.particles(Mass::from_si(1e-3)))?,
            particles,
            per_piece: per_piece?.map(|share| particles * share),
            swap,
        })
    }

    /// The piece's share of the mix; the outer `None` where it is wrong.
    #[allow(clippy::option_option)] // not asked and wrong are two things
    fn share_of_a_piece(&self, resolver: &mut Resolver) -> Option<Option<f64>> {
        match (&self.finished_mass, &self.piece_mass) {
            (None, None) => Some(None),
            (Some(mix), Some(piece)) => {
                let (mix, piece) = (
                    resolver.given(Parameter::FinishedMass, mix)?,
                    resolver.given(Parameter::PieceMass, piece)?,
                );
                if piece <= mix {
                    return Some(Some((piece / mix).value));
                }
                resolver.fault(
                    code!("piece-above-mix"),
                    &At("/piece_mass"),
                    &"A piece weighs more than nothing and no more than its mix.",
                    &"Check the two masses; perhaps they are swapped.",
                );
                None
            }
            _ => {
                resolver.fault(
                    code!("piece-and-mix"),
                    &Path::ROOT,
                    &"The flakes of a piece are its share of those in the mix.",
                    &"Give both \"finished_mass\", the mix that the dose is in, and \"piece_mass\".",
                );
                None
            }
        }
    }

    fn swap(
        &self,
        flake: &Flake,
        dose: Mass,
        other: &Flake,
        resolver: &mut Resolver,
    ) -> Option<FlakeSwap> {
        let alike = self.alike.unwrap_or(Alike::Area);
        let swap = resolver.keep(&At("/flake_dose"), flake.swap(dose, other, alike))?;
        let scoop = swap.scoop.map(|scoop| text::scoop(scoop, resolver.system));
        Some(FlakeSwap {
            cut: other.cut().to_string(),
            mass: text::mass(swap.mass),
            scoop,
            count: text::factor(swap.count),
            area: text::factor(swap.area),
        })
    }
}

fn read(path: &Path<'_>, entry: &MaterialEntry, resolver: &mut Resolver) -> Option<Flake> {
    let material = resolver.one_material(path, entry)?;
    let film = resolver.keep(path, material.true_density("counting flakes"));
    let scooped = match material.as_scooped {
        Some(_) => Some(resolver.keep(path, material.scooped_density("scooping flake"))?),
        None => None,
    };
    let (Some(cut), Some(thickness)) = (material.cut, material.thickness) else {
        resolver.fault(
            code!("flake-not-known"),
            path,
            &"The flake's cut or the thickness of its film is not known.",
            &"Give both: \"cut\": \".035 hex\", \"thickness\": \"50 um\".",
        );
        return None;
    };
    resolver.keep(path, Flake::new(cut, thickness, film?, scooped))
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn flake(cut: &str) -> Value {
        json!({ "kind": "flake", "cut": cut, "thickness": "50 um", "density": "1.4 g/mL", "as_scooped": "0.5 g/mL" })
    }

    fn request() -> Value {
        json!({
            "calculate": "flake", "flake": flake("1 mm square"), "flake_dose": "1.4 g",
            "other_flake": flake("0.5 mm square"), "alike": "count", "finished_mass": "280 g", "piece_mass": "10 g"
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    /// By hand: 1 mm · 1 mm · 0.05 mm · 1.4 mg/mm³ = 0.07 mg, so that 1.4 g are 20 000 squares; half
    /// the size is a quarter of the mass each.
    #[test]
    fn squares_by_hand() {
        let answer = result(request());
        assert!((answer["particles"].as_f64().unwrap() - 20_000.0).abs() < 1e-6);
        assert!((answer["per_gram"].as_f64().unwrap() - 20_000.0 / 1.4).abs() < 1e-6);
        assert!((answer["per_piece"].as_f64().unwrap() - 20_000.0 / 28.0).abs() < 1e-6);
        let swap = &answer["swap"];
        assert!((swap["mass"]["value"].as_f64().unwrap() - 0.35).abs() < 1e-9);
        assert!((swap["scoop"]["value"].as_f64().unwrap() - 0.7).abs() < 1e-9);
        assert_eq!(swap["area"]["text"], "0.25");
    }

    #[test]
    fn a_mix_of_one_piece_has_all_in_it() {
        let answer = result(with("finished_mass", json!("10 g")));
        assert_eq!(answer["per_piece"], answer["particles"]);
    }

    #[test]
    fn a_spoonful_is_weighed_as_scooped() {
        let answer = result(with("flake_dose", json!("2.8 mL")));
        assert!((answer["particles"].as_f64().unwrap() - 20_000.0).abs() < 1e-6);
    }

    #[rstest]
    #[case("flake", json!({ "kind": "flake", "density": "1.4 g/mL" }), "flake-not-known")]
    #[case("flake", flake("35 mm"), "cut-suspicious")]
    #[case("flake", json!({ "kind": "salt", "cut": ".035", "density": "2 g/mL" }), "property-of-another-kind")]
    #[case("flake_dose", json!("0 g"), "out-of-range")]
    #[case("piece_mass", json!("300 g"), "piece-above-mix")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

//! Mass of a shot and of its pieces.

use alloc::string::String;
use alloc::vec::Vec;

use super::{request, response};
use crate::book::Mold;
use crate::document::book::MoldEntry;
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::plan::day::cavities;
use crate::quantity::{Mass, MassDensity, Measured, Ratio, System};
use crate::shot::{Melt, Shot};
use crate::show::{Shown, text};
use crate::uncertainty::{PieceInputs, piece_weight};

request! {
    /// Asks for the mass of a shot.
    pub struct ShotRequest {
        required {
            mold: MoldEntry,
            cold_density: Written<MassDensity>,
        }
        optional {
            hot_density: Written<MassDensity>,
            layer_share: Share,
            measures: System,
        }
    }
}

response! {
    /// Mass of a shot.
    pub struct ShotResponse {
        /// All of it.
        pub fill: Shown<Mass>,
        /// Mass of all its pieces.
        pub pieces: Shown<Mass>,
        /// Mass that stays as sprue.
        pub sprue: Shown<Mass>,
        /// Mass that the sprue could not feed: the pieces sink in by it.
        pub missing: Shown<Mass>,
        /// The pieces, by shape.
        pub shapes: Vec<ShotPieces>,
    }
}

response! {
    /// The pieces of one shape.
    pub struct ShotPieces {
        /// The shape, in a mold with unlike cavities.
        pub shape: Option<String>,
        /// Number that a shot makes.
        pub count: u32,
        /// Mass of one.
        pub weighs: Shown<Mass>,
        /// Its standard uncertainty by cavity and densities, where the mold states how sure the cavity is and
        /// `cold_density` how sure it is; how far the piece is fed comes on top.
        pub uncertainty: Option<Shown<Mass>>,
        /// Mass without feed, where the mold states no feed share; else as `weighs`.
        pub from: Shown<Mass>,
        /// Mass fed as far as sprue and topping reach, where the mold states no feed share; else as `weighs`.
        pub to: Shown<Mass>,
    }
}

impl ShotRequest {
    /// Fills the mold once. Where the mold states no feed share, half of the contraction is
    /// taken to be fed; the range says what it may be. The hot density errs with the cold one; what it states
    /// itself counts on top.
    ///
    /// # Errors
    /// A volume, density or share that cannot be.
    pub fn answer(&self) -> Result<ShotResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let mold = resolve::mold(&At("/mold"), &self.mold, resolver.system)?;
        let cold = resolver.measured_given(Parameter::ColdDensity, &self.cold_density);
        let hot = match &self.hot_density {
            Some(hot) => resolver.measured_given(Parameter::HotDensity, hot),
            None => cold.as_ref().map(|cold| Measured::exact(cold.value)),
        };
        let response = cold.zip(hot).and_then(|(cold, hot)| {
            let share = resolver.share(Parameter::LayerShare, self.layer_share)?;
            shoot(&mold, &cold, &hot, share.value, &mut resolver)
        });
        resolver.finish(response)
    }
}

fn shoot(
    mold: &Mold,
    cold: &Measured<MassDensity>,
    hot: &Measured<MassDensity>,
    share: f64,
    resolver: &mut Resolver,
) -> Option<ShotResponse> {
    let melt = Melt { hot: hot.value, cold: cold.value, voids: Ratio::from(mold.voids) };
    let cavities = cavities(mold);
    let shot = Shot::of_layer(mold, &cavities, share, melt);
    let (least, most) = match mold.feed {
        Some(_) => (shot.feed, shot.feed),
        None => (Ratio::default(), Ratio::from(1.0)),
    };
    let mut masses = |feed| {
        let masses = Shot { feed, ..shot }.masses();
        resolver.keep_named(&Path::ROOT, ShotRequest::FIELDS, masses)
    };
    let (masses, least, most) = (masses(shot.feed)?, masses(least)?, masses(most)?);
    let mut shapes = Vec::with_capacity(mold.cavities.len());
    for shape in &mold.cavities {
        let volume = shape.volume.value * share;
        let uncertainty = match shape.volume.uncertainty.zip(cold.uncertainty) {
            Some((unsure, _)) => {
                let layer = Measured::new(volume, unsure * share);
                let inputs = PieceInputs::of_densities(layer, cold, hot, melt.voids, masses.feed);
                Some(text::mass(resolver.keep(&Path::ROOT, piece_weight(&inputs))?.uncertainty))
            }
            None => None,
        };
        shapes.push(ShotPieces {
            shape: shape.shape.clone(),
            count: shape.count,
            weighs: text::mass(masses.piece(shape.volume.value)),
            uncertainty,
            from: text::mass(least.piece(shape.volume.value)),
            to: text::mass(most.piece(shape.volume.value)),
        });
    }
    Some(ShotResponse {
        fill: text::mass(masses.fill),
        pieces: text::mass(masses.pieces),
        sprue: text::mass(masses.sprue),
        missing: text::mass(masses.missing),
        shapes,
    })
}

#[cfg(test)]
mod tests {
    use serde_json::{Value, json};

    use crate::request::answer_value;

    fn shot(cavity: &str, more: &[(&str, &str)]) -> Value {
        let mut request = json!({
            "calculate": "shot",
            "mold": { "cavities": 2, "cavity": cavity, "sprue": "6 mL", "feed": "50 %" },
            "cold_density": "1.04 g/mL ± 0.0104",
            "hot_density": "0.96 g/mL",
        });
        for (field, value) in more {
            request[*field] = json!(value);
        }
        answer_value(&request)["result"]["shapes"][0]["uncertainty"].clone()
    }

    // By hand: 10 mL at 1.00 g/mL, half of the contraction fed, is 10 g. Cavity and density to 1 % each: √2 % of it. A
    // hot density to 0.0096 g/mL counts on top for what is not fed: 10 mL · 0.5 · 0.0096 g/mL = 0.048 g.
    #[test]
    fn a_piece_is_as_sure_as_cavity_and_density() {
        let grams = |value: &Value| value["value"].as_f64().unwrap();
        let sure = shot("10 mL ± 0.1", &[]);
        assert!((grams(&sure) - 0.141_421).abs() < 2e-4, "{sure}");
        let hot = shot("10 mL ± 0.1", &[("hot_density", "0.96 g/mL ± 0.0096")]);
        assert!((grams(&hot) - libm::sqrt(0.02 + 0.048 * 0.048)).abs() < 2e-4, "{hot}");
        assert_eq!(shot("10 mL", &[]), Value::Null);
        assert_eq!(shot("10 mL ± 0.1", &[("cold_density", "1.04 g/mL")]), Value::Null);
    }
}

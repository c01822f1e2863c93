//! How fast salt settles in a pot, and how often to stir.

use alloc::vec::Vec;

use super::{request, response};
use crate::caution::Caution;
use crate::codes::code;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::process::settling::{Grain, Suspension};
use crate::quantity::{DynamicViscosity, Length, MassDensity, Ratio, System, Time, Velocity};
use crate::show::{Shown, text};

request! {
    /// Asks how fast grains settle in a melt.
    pub struct SettlingRequest {
        required {
            grain: Written<Length>,
            grain_density: Written<MassDensity>,
            melt_density: Written<MassDensity>,
            melt_depth: Written<Length>,
        }
        optional {
            viscosity: (Written<DynamicViscosity>, Written<DynamicViscosity>),
            timed_ball: TimedBallEntry,
            solids_share: Share,
            unstirred: Share,
            measures: System,
        }
    }
}

entry! {
    /// A ball that was timed as it sank in the melt, let go below its surface.
    pub struct TimedBallEntry {
        required {
            /// Its diameter, much smaller than the vessel's.
            diameter: Written<Length>,
            /// Its density: of steel 7.8 g/mL.
            density: Written<MassDensity>,
            /// How deep it sank.
            depth: Written<Length>,
            /// How long that took.
            time: Written<Time>,
        }
        optional {}
    }
}

response! {
    /// The settling of grains.
    pub struct SettlingResponse {
        /// The viscosity that is calculated with: the lowest.
        pub viscosity_from: Shown<DynamicViscosity>,
        /// The highest.
        pub viscosity_to: Shown<DynamicViscosity>,
        /// Whether that is the whole range of what such melts may have, no viscosity being known.
        pub viscosity_not_known: bool,
        /// How fast the grains sink in the thickest melt.
        pub slowest: Shown<Velocity>,
        /// How fast in the thinnest.
        pub fastest: Shown<Velocity>,
        /// How often to stir in the thinnest melt: to be safe, that often.
        pub stir_every: Shown<Time>,
        /// How often would do in the thickest.
        pub stir_at_most: Shown<Time>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl SettlingRequest {
    /// Calculates the settling of the grains.
    ///
    /// # Errors
    /// Grains that do not sink; more solids than the equation was measured for; a viscosity and a timed ball both;
    /// numbers out of range.
    pub fn answer(&self) -> Result<SettlingResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let response = self.response(&mut resolver);
        resolver.finish(response)
    }

    fn response(&self, resolver: &mut Resolver) -> Option<SettlingResponse> {
        let size = resolver.given(Parameter::Grain, &self.grain);
        let solid = resolver.given(Parameter::GrainDensity, &self.grain_density);
        let melt = resolver.given(Parameter::MeltDensity, &self.melt_density);
        let depth = resolver.given(Parameter::MeltDepth, &self.melt_depth);
        let melt = melt?;
        let (low, high) = self.viscosity(resolver, melt)?;
        let solids = resolver.share(Parameter::SolidsShare, self.solids_share)?;
        let unstirred = resolver.share(Parameter::Unstirred, self.unstirred)?;
        let grains = Suspension { grain: Grain::Cube, size: size?, solid: solid?, melt, solids };
        let fastest = resolver.keep(&Path::ROOT, grains.settling(low))?;
        let slowest = resolver.keep(&Path::ROOT, grains.settling(high))?;
        let depth = depth?;
        let stir_every = resolver.keep(&At("/melt_depth"), fastest.stir_every(depth, unstirred))?;
        let stir_at_most =
            resolver.keep(&At("/melt_depth"), slowest.stir_every(depth, unstirred))?;
        Some(SettlingResponse {
            viscosity_from: text::viscosity(low),
            viscosity_to: text::viscosity(high),
            viscosity_not_known: self.viscosity.is_none() && self.timed_ball.is_none(),
            slowest: text::speed(slowest.speed),
            fastest: text::speed(fastest.speed),
            stir_every: text::time(stir_every),
            stir_at_most: text::time(stir_at_most),
            cautions: Vec::from([Caution::HotPlastisol, Caution::DampSalt]),
        })
    }

    /// The lowest and the highest viscosity: as stated, by the ball that was timed, or all that it may be.
    fn viscosity(
        &self,
        resolver: &mut Resolver,
        melt: MassDensity,
    ) -> Option<(DynamicViscosity, DynamicViscosity)> {
        let of = DynamicViscosity::new::<uom::si::dynamic_viscosity::pascal_second>;
        match (&self.viscosity, &self.timed_ball) {
            (Some(range), None) => resolver.viscosity_range(&At("/viscosity"), range),
            (None, Some(ball)) => {
                let at = &At("/timed_ball");
                let size = resolver.quantity(&at.key("diameter"), &ball.diameter);
                let solid = resolver.quantity(&at.key("density"), &ball.density);
                let depth = resolver.quantity(&at.key("depth"), &ball.depth);
                let time = resolver.quantity(&at.key("time"), &ball.time);
                let solids = Ratio::default();
                let ball =
                    Suspension { grain: Grain::Ball, size: size?, solid: solid?, melt, solids };
                let viscosity = resolver.keep(at, ball.viscosity(depth?, time?))?;
                Some((viscosity, viscosity))
            }
            // None was found published: an allowance.
            (None, None) => Some((
                of(Parameter::MeltViscosityMin.default_si()),
                of(Parameter::MeltViscosityMax.default_si()),
            )),
            (Some(_), Some(_)) => {
                resolver.fault(
                    code!("viscosity-twice"),
                    &Path::ROOT,
                    &"The viscosity is stated, and follows from the timed ball, too.",
                    &"Leave \"viscosity\" or \"timed_ball\" out.",
                );
                None
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use rstest::rstest;
    use serde_json::{Value, json};

    use crate::request::tests::{fault_codes, result};

    fn request() -> Value {
        json!({
            "calculate": "settling", "grain": "300 um", "grain_density": "2.165 g/mL", "melt_density": "0.93 g/mL",
            "melt_depth": "80 mm", "viscosity": ["0.5 Pa.s", "0.5 Pa.s"]
        })
    }

    fn with(field: &str, value: Value) -> Value {
        let mut request = request();
        request[field] = value;
        request
    }

    /// A ball of 300 µm sinks 7.267 mm a minute by Stokes; the cube that passes such a sieve (6/π)^(2/3)/1.08
    /// = 1.425 times as fast (geometry; the shape factor from memory).
    #[test]
    fn a_grain_of_table_salt() {
        let answer = result(request());
        let mm_per_min = answer["fastest"]["value"].as_f64().unwrap() * 600.0;
        assert!((mm_per_min / (7.267 * 1.4253) - 1.0).abs() < 2e-3, "{mm_per_min}");
        let every = answer["stir_every"]["value"].as_f64().unwrap();
        assert!((every - 0.1 * 80.0 / mm_per_min * 60.0).abs() < 1e-6 * every, "{every}");
        assert_eq!(answer["viscosity_not_known"], false);
        let crowded = result(with("solids_share", json!("10 %")));
        let crowded = crowded["fastest"]["value"].as_f64().unwrap() * 600.0;
        // Richardson and Zaki 1954: (1 − 0.1)^4.65.
        assert!((crowded / mm_per_min - 0.6127).abs() < 1e-4);
    }

    /// The viscosity that a ball of 1 mm of steel shows by Stokes: 9.80665·1e-6·6870/(18·v), v = 5 cm in 20 s.
    #[test]
    fn a_timed_ball_shows_the_viscosity() {
        let mut request = with(
            "timed_ball",
            json!({
                "diameter": "1 mm", "density": "7.8 g/mL", "depth": "50 mm", "time": "20 s"
            }),
        );
        assert_eq!(fault_codes(request.clone()), ["viscosity-twice"]);
        request.as_object_mut().unwrap().remove("viscosity");
        let found = result(request)["viscosity_from"]["value"].as_f64().unwrap();
        let stokes = 9.80665 * 1e-6 * 6870.0 / (18.0 * 0.0025);
        assert!((found / stokes - 1.0).abs() < 0.01, "{found} {stokes}");
    }

    #[test]
    fn an_unknown_viscosity_is_a_range() {
        let mut request = request();
        request.as_object_mut().unwrap().remove("viscosity");
        let answer = result(request);
        assert_eq!(answer["viscosity_not_known"], true);
        let [slow, fast] = ["slowest", "fastest"].map(|it| answer[it]["value"].as_f64().unwrap());
        // A hundredth of the viscosity, and a little more drag than Stokes has.
        assert!((98.0..100.0).contains(&(fast / slow)), "{}", fast / slow);
    }

    #[rstest]
    #[case("grain_density", json!("0.9 g/mL"), "settling-floats")]
    #[case("grain", json!("30 cm"), "out-of-range")]
    #[case("solids_share", json!("60 %"), "out-of-range")]
    #[case("viscosity", json!(["5 Pa.s", "0.5 Pa.s"]), "viscosity-reversed")]
    fn faults(#[case] field: &str, #[case] value: Value, #[case] code: &str) {
        assert_eq!(fault_codes(with(field, value)), [code]);
    }
}

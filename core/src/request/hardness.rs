//! Softener or hardener for a hardness, or the hardness that it gives.

use alloc::vec::Vec;

use serde_json::Number;

use super::{request, response};
use crate::codes::code;
use crate::document::resolve::Resolver;
use crate::document::written::Share;
use crate::fault::Faults;
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::quantity::Ratio;
use crate::show::{Shown, text};
use crate::softener::{Hardness, HardnessCurve, HardnessPoint, Scale};

request! {
    /// Asks the shop's own measured points for a hardness or for a ratio.
    pub struct HardnessRequest {
        required {
            points: Vec<HardnessPointEntry>,
            scale: Scale,
        }
        optional {
            softener_ratio: Share,
            hardness: Number,
        }
    }
}

request! {
    /// A hardness that the shop has measured.
    pub struct HardnessPointEntry {
        required {
            point_ratio: Share,
            point_hardness: Number,
        }
        optional {}
    }
}

response! {
    /// A ratio and the hardness that goes with it.
    pub struct HardnessResponse {
        /// Mass of softener or hardener per mass of base.
        pub ratio: Shown<Ratio>,
        /// The reading.
        pub reading: f64,
        /// Its scale.
        pub scale: Scale,
    }
}

/// The side that was asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Side {
    /// The hardness of a ratio.
    OfRatio(Ratio),
    /// The ratio for a hardness.
    ForHardness(f64),
}

impl HardnessRequest {
    /// Interpolates between the points; outside them it refuses.
    ///
    /// # Errors
    /// Points that make no curve, a ratio or hardness outside them, both or neither asked for.
    pub fn answer(&self) -> Result<HardnessResponse, Faults> {
        let mut resolver = Resolver::of_request(None);
        let points: Vec<HardnessPoint> = self
            .points
            .iter()
            .map(|point| HardnessPoint {
                ratio: Ratio::from(point.point_ratio.number()),
                hardness: Hardness { reading: number(&point.point_hardness), scale: self.scale },
            })
            .collect();
        let curve = resolver.keep(&At("/points"), HardnessCurve::new(&points));
        let response = curve.zip(self.side(&mut resolver)).and_then(|(curve, side)| {
            let (ratio, reading) = match side {
                Side::OfRatio(ratio) => {
                    (ratio, resolver.keep(&At("/softener_ratio"), curve.hardness(ratio))?.reading)
                }
                Side::ForHardness(reading) => {
                    let wanted = Hardness { reading, scale: self.scale };
                    (resolver.keep(&At("/hardness"), curve.ratio(wanted))?, reading)
                }
            };
            Some(HardnessResponse { ratio: text::percent(ratio), reading, scale: self.scale })
        });
        resolver.finish(response)
    }

    fn side(&self, resolver: &mut Resolver) -> Option<Side> {
        match (self.softener_ratio, &self.hardness) {
            (Some(ratio), None) => {
                resolver.share(Parameter::SoftenerRatio, Some(ratio)).map(Side::OfRatio)
            }
            (None, Some(hardness)) => {
                let reading = Parameter::Hardness.check_si(number(hardness));
                resolver.keep(&At("/hardness"), reading).map(Side::ForHardness)
            }
            _ => {
                resolver.fault(
                    code!("ratio-or-hardness"),
                    &Path::ROOT,
                    &"It must ask for one thing.",
                    &"Give \"softener_ratio\" to learn the hardness, or \"hardness\" to learn the ratio.",
                );
                None
            }
        }
    }
}

fn number(number: &Number) -> f64 {
    number.as_f64().unwrap_or(f64::NAN)
}

//! A mass as the tools of a bench can give it.

use alloc::string::String;
use alloc::vec::Vec;

use super::response;
use crate::document::book::{BenchEntry, MaterialEntry};
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::json::entry::entry;
use crate::json::path::Path::At;
use crate::parameter::parameter;
use crate::plan::tool_names::ToolNames;
use crate::plan::{Way, weigh};
use crate::quantity::{Mass, System};

entry! {
    /// Asks how to measure a mass of a material.
    pub struct MeasureRequest {
        required {
            #[doc = parameter!(mass)]
            mass: Written<Mass>,
            #[doc = parameter!(material)]
            material: MaterialEntry,
            #[doc = parameter!(bench)]
            bench: BenchEntry,
        }
        optional {
            #[doc = parameter!(tolerance)]
            tolerance: Percent,
            #[doc = parameter!(measures)]
            measures: System,
        }
    }
}

response! {
    /// Ways to measure a mass.
    pub struct MeasureResponse {
        /// What is wanted, as text.
        pub wanted: String,
        /// The way with the least handling that keeps the tolerance.
        pub best: Way,
        /// The others that keep it.
        pub others: Vec<Way>,
    }
}

impl MeasureRequest {
    /// Chooses the way with the least handling.
    ///
    /// # Errors
    /// No tool reaches the tolerance, with how near each comes and from what mass on it would.
    pub fn answer(&self) -> Result<MeasureResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let material = resolve::material(&At("/material"), &self.material, resolver.system)?;
        let tools = resolve::bench(&At("/bench"), &self.bench, resolver.system)?;
        let response = resolver.quantity(&At("/mass"), &self.mass).and_then(|mass| {
            let stated = self.tolerance.map(Percent::share).or(material.tolerance);
            let tolerance = stated.unwrap_or(crate::book::Limits::default().tolerance);
            let choice =
                weigh::choose(&material, mass, tolerance, material.drop_is_calibrated(), &tools);
            let choice = resolver.keep(&At("/mass"), choice)?;
            let names = ToolNames::new(&tools, resolver.system);
            let way = |measure| weigh::way(measure, mass, mass, &names);
            Some(MeasureResponse {
                wanted: crate::show::text::mass(mass).text,
                best: way(&choice.best),
                others: choice.others.iter().filter(|other| other.within).map(way).collect(),
            })
        });
        resolver.finish(response)
    }
}

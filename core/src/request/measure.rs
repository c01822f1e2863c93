//! A mass as the tools of a bench can give it.

use alloc::string::String;
use alloc::vec::Vec;

use super::response;
use crate::document::book::{BenchEntry, MaterialEntry};
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::document::written::{Percent, Written};
use crate::fault::Faults;
use crate::formula::WrittenIn;
use crate::json::entry::entry;
use crate::json::path::Path::At;
use crate::parameter::parameter;
use crate::plan::tool_names::ToolNames;
use crate::plan::{Way, weigh};
use crate::quantity::{Mass, System};
use crate::show::{Note, because};

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
            #[doc = parameter!(written_in)]
            written_in: WrittenIn,
        }
    }
}

response! {
    /// Ways to measure a mass.
    pub struct MeasureResponse {
        /// What is wanted, as text.
        pub wanted: String,
        /// The way to take: in the measure that the dose is written in, or another where that is surer. Where none
        /// keeps the tolerance, the nearest that the bench can do.
        pub best: Way,
        /// The others that keep it.
        pub others: Vec<Way>,
        /// Why none keeps the tolerance, and what would do; absent where one does.
        pub beyond: Option<Note>,
    }
}

impl MeasureRequest {
    /// Chooses the way to take.
    ///
    /// # Errors
    /// Nothing on the bench measures the material.
    pub fn answer(&self) -> Result<MeasureResponse, Faults> {
        let mut resolver = Resolver::of_request(self.measures);
        let material = resolve::material(&At("/material"), &self.material, resolver.system)?;
        let tools = resolve::bench(&At("/bench"), &self.bench, resolver.system)?;
        let unsure = resolve::tool_uncertainty(self.bench.uncertainty.as_ref());
        let response = resolver.quantity(&At("/mass"), &self.mass).and_then(|mass| {
            let stated = self.tolerance.map(Percent::share).or(material.tolerance);
            let tolerance = stated.unwrap_or(crate::book::Limits::default().tolerance);
            let names = ToolNames::new(&tools, resolver.system);
            let by = weigh::Tools { names: &names, unsure: &unsure };
            let written = self.written_in.unwrap_or(WrittenIn::Mass);
            let ways = weigh::choose(&material, mass, tolerance, written, None, by);
            let ways = resolver.keep(&At("/mass"), ways)?;
            let way = |measure| weigh::way(measure, mass, mass, &names);
            Some(MeasureResponse {
                wanted: crate::show::text::mass(mass).text,
                best: way(&ways.best),
                others: ways.others.iter().filter(|other| other.within).map(way).collect(),
                beyond: ways.beyond.map(|error| because(&error)),
            })
        });
        resolver.finish(response)
    }
}

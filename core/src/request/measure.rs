//! A mass as the tools of a bench can give it.

use alloc::string::String;
use alloc::vec::Vec;

use super::{request, response};
use crate::document::book::{BenchEntry, MaterialEntry};
use crate::document::resolve;
use crate::document::resolve::Resolver;
use crate::document::written::{Share, Written};
use crate::fault::Faults;
use crate::formula::WrittenIn;
use crate::json::path::Path::At;
use crate::parameter::Parameter;
use crate::plan::tool_names::ToolNames;
use crate::plan::{Way, weigh};
use crate::quantity::{Mass, System};
use crate::show::{Note, because};

request! {
    /// Asks how to measure a mass of a material.
    pub struct MeasureRequest {
        required {
            mass_to_measure: Written<Mass>,
            material: MaterialEntry,
            bench: BenchEntry,
        }
        optional {
            tolerance: Share,
            measures: System,
            written_in: WrittenIn,
        }
    }
}

response! {
    /// Ways to measure a mass.
    pub struct MeasureResponse {
        /// The dose, as text.
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
        let response =
            resolver.given(Parameter::MassToMeasure, &self.mass_to_measure).and_then(|mass| {
                let tolerance = match (self.tolerance, material.tolerance) {
                    (None, Some(of_material)) => of_material,
                    (stated, _) => resolver.share(Parameter::Tolerance, stated)?.value,
                };
                let names = ToolNames::new(&tools, resolver.system);
                let by = weigh::Tools { names: &names, unsure: &unsure };
                let written = self.written_in.unwrap_or(WrittenIn::Mass);
                let ways = weigh::choose(&material, mass, tolerance, written, None, by);
                let ways = resolver.keep(&At("/mass_to_measure"), ways)?;
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

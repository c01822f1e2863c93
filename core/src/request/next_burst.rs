//! The next burst of a pot that is heated by the plan, for what its thermometer shows.

use alloc::borrow::ToOwned;
use alloc::format;
use alloc::string::String;
use alloc::vec::Vec;

use super::{Open, request, response};
use crate::caution::Caution;
use crate::codes::code;
use crate::document::PlanDocument;
use crate::document::book::BookDocument;
use crate::document::resolve::Resolver;
use crate::document::written::Written;
use crate::fault::Faults;
use crate::json::path::Path::At;
use crate::json::reader::Name;
use crate::parameter::Parameter;
use crate::plan::{Plan, PlanStep, Reading, StepAt, StepKind};
use crate::quantity::{Measurable, System, ThermodynamicTemperature, Time};
use crate::show::sentence::Sentence;
use crate::show::{Shown, TextScale, text};
use crate::words::words;

request! {
    /// Asks for the next burst of a heat of the plan.
    ///
    /// Of an open plan `"heat_step": "dusk + plain/dusk + plain/heat", "reading": "245 °F"`.
    pub struct NextBurstRequest {
        required {
            heat_step: Name,
            reading: Written<ThermodynamicTemperature>,
        }
        optional {
            book: BookDocument,
            plan: PlanDocument,
        }
    }
}

words! {
    /// What to do at a reading of the thermometer.
    pub enum AtReading {
        /// The oven runs for a burst; then stir and read again.
        Burst = "burst",
        /// The pot is hot: the next step, or the shots.
        Hot = "hot",
        /// It is too hot: stop, and let it cool.
        Cool = "cool",
    }
}

response! {
    /// What to do with a pot that shows this reading.
    pub struct NextBurstResponse {
        /// The pot's letter.
        pub pot: String,
        /// The reading, on the scale of the book.
        pub reading: Shown<ThermodynamicTemperature>,
        /// What to do.
        pub go: AtReading,
        /// The same in a sentence.
        pub text: String,
        /// The scale of the sentence, where it reads otherwise on the other one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        pub scale: Option<TextScale>,
        /// The sentence on the other scale, where it is not the same.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        pub other: Option<String>,
        /// The item of the step that this does; none while the pot cools.
        pub item: Option<String>,
        /// How long the oven runs.
        pub burst: Option<Shown<Time>>,
        /// The expected reading after it, at most: from the upper end of its band. None of a plan that an older version stored.
        pub expected: Option<Shown<ThermodynamicTemperature>>,
        /// The hottest possible reading after it. None of a plan that an older version stored.
        pub at_most: Option<Shown<ThermodynamicTemperature>>,
        /// The pot is hot from this reading on.
        pub hot_from: Option<Shown<ThermodynamicTemperature>>,
        /// And up to this one; above it, stop and let it cool.
        pub hot_to: Option<Shown<ThermodynamicTemperature>>,
        /// Dangers.
        pub cautions: Vec<Caution>,
    }
}

impl NextBurstRequest {
    /// Looks the reading up in the table of the heat.
    ///
    /// # Errors
    /// No plan; a step that is not of it, that does not heat, or whose times are not known; a reading out of range.
    pub fn answer(self, open: Open<'_>) -> Result<NextBurstResponse, Faults> {
        let (book, plan) = (open.book(self.book)?, open.plan(self.plan)?);
        let system = book.ready().system;
        let mut resolver = Resolver::new(system);
        let reading = resolver.given(Parameter::Reading, &self.reading);
        let heat = heat(&plan.plan, &self.heat_step.0, &mut resolver);
        let response = heat.zip(reading).and_then(|(heat, reading)| heat.at(reading, system));
        resolver.finish(response)
    }
}

/// Kelvin: a reading on the mark of a band is one of the next band, whatever its scale rounds to.
const ROUNDING: f64 = 1e-6;

/// A heat of the plan, at one pot.
struct Heat<'a> {
    step: &'a PlanStep,
    at: &'a StepAt,
}

fn heat<'a>(plan: &'a Plan, id: &str, resolver: &mut Resolver) -> Option<Heat<'a>> {
    let path = At("/heat_step");
    let known = plan.steps.iter().find(|step| step.id == id);
    let mut heats = plan.steps.iter().filter(|step| step.kind == StepKind::Heat);
    let mut ids = heats.clone().map(|step| step.id.as_str());
    let step = resolver.find("step", &path, id, known, &mut ids)?;
    let at = step.at.first()?;
    if !heats.any(|heat| heat.id == step.id) {
        resolver.fault(
            code!("step-does-not-heat"),
            &path,
            &format_args!("Step {} of pot {} does not heat.", at.number, at.pot),
            &"Write the id of a step of the kind \"heat\".",
        );
        return None;
    }
    if at.readings.is_empty() {
        resolver.fault(
            code!("heat-times-not-known"),
            &path,
            &format_args!("The plan has no times for step {} of pot {}.", at.number, at.pot),
            &"Heat in short bursts, with a thermometer. The details of the step say what the book lacks.",
        );
        return None;
    }
    Some(Heat { step, at })
}

impl Heat<'_> {
    fn at(&self, reading: ThermodynamicTemperature, system: System) -> Option<NextBurstResponse> {
        let rows = &self.at.readings;
        // The last row but one is that of a hot pot, which is shot up to its end.
        let hot = rows.len().checked_sub(2)?;
        let is_in = |(place, row): &(usize, &Reading)| {
            let rounding = if *place == hot { ROUNDING } else { -ROUNDING };
            row.below.as_ref().is_none_or(|below| reading.si() < below.quantity.si() + rounding)
        };
        let (place, row) = rows.iter().enumerate().find(is_in)?;
        let shown = text::temperature(reading, system);
        let (hot_row, last_band) = (rows.get(hot)?, hot.checked_sub(1).and_then(|at| rows.get(at)));
        let hot_from = last_band.and_then(|row| row.below.clone());
        let hot_to = hot_row.below.clone();
        let (go, Sentence { text, other }) = match &row.burst {
            Some(burst) => {
                let text = format!("{} in the oven, then stir and read again.", burst.text);
                (AtReading::Burst, text.into())
            }
            None if place == hot => (AtReading::Hot, format!("It is hot: {}.", row.go).into()),
            None => {
                let text = Sentence::of(system, |on| {
                    let limit = hot_to.as_ref().map(|limit| on.text(limit)).unwrap_or_default();
                    format!("Stop, and let it cool to {limit} or less. Do not heat it.")
                });
                (AtReading::Cool, text)
            }
        };
        let mut cautions = Vec::from([Caution::HotPlastisol]);
        if go != AtReading::Hot {
            cautions.push(Caution::Fumes);
        }
        let is_done = go != AtReading::Cool;
        Some(NextBurstResponse {
            pot: self.at.pot.clone(),
            reading: shown,
            go,
            text,
            scale: other.is_some().then(|| TextScale::of(system)),
            other,
            item: self.step.items.get(place).filter(|_| is_done).map(|item| item.id.to_owned()),
            burst: row.burst.clone(),
            expected: row.expected.clone(),
            at_most: row.at_most.clone(),
            hot_from,
            hot_to,
            cautions,
        })
    }
}

#[cfg(test)]
mod tests;

//! An example of each request, asked of the demo's book and plan.

use std::process::ExitCode;

use pourwright::request::CALCULATIONS;

use crate::arguments::Example;
use crate::source::Source;
use crate::{Stop, print};

/// Prints the example of a request, or the names of all.
pub(crate) fn run(arguments: &Example) -> Result<ExitCode, Stop> {
    match &arguments.name {
        None => print(&CALCULATIONS.join("\n")),
        Some(name) => print(&example(name)?.text),
    }
}

/// The example of a request.
pub(crate) fn example(name: &str) -> Result<Source, Stop> {
    match EXAMPLES.iter().find(|(own, _)| *own == name) {
        Some((_, text)) => {
            Ok(Source { name: format!("the example of {name}"), text: (*text).into() })
        }
        None => Err(Stop::Usage(format!("There is no example of \"{name}\"."))),
    }
}

macro_rules! examples {
    ($($name:literal)*) => {
        /// Each by its name.
        const EXAMPLES: &[(&str, &str)] = &[
            $(($name, include_str!(concat!("../../../examples/requests/", $name, ".json")))),*
        ];
    };
}

examples! {
    "convert"
    "dose"
    "mix"
    "salt"
    "hardness"
    "shot"
    "batch"
    "water"
    "calibrate"
    "calibrate-drop"
    "calibrate-spoon"
    "calibrate-injector"
    "uncertainty"
    "measure"
    "air"
    "degas"
    "heat"
    "stays-hot"
    "cooling"
    "clock"
    "settling"
    "heat-history"
    "sink"
    "flake"
    "color-difference"
    "color-match"
    "color-reading"
    "color-lights"
    "formula"
    "cost"
    "correct"
    "leftovers"
    "plan"
    "quote"
    "record"
    "go-on"
    "next-burst"
    "trial"
    "troubles"
    "learn"
    "color-next"
    "color-nearest"
    "let-down-series"
}

//! Calculations as one request and one response each: what every door speaks.
//!
//! A request is an object whose `calculate` names the calculation; the response is
//! `{ "result": ... }` or `{ "faults": [ ... ] }`, each fault with code, path, message and help.
//! It can be used at three depths: typed ([`Request::answer`]), as a JSON value
//! ([`answer_value`]) and as JSON text ([`answer_text`]).
//!
//! Requests that take a `book` can be asked of a loaded book instead ([`LoadedBook::answer_text`]), those that take a `plan`
//! of an open plan ([`OpenPlan::answer_text`]); they then leave it out.
//!
//! ```
//! use pourwright::request::answer_text;
//!
//! let answer = answer_text(r#"{ "calculate": "convert", "amount": "1 1/4 cup", "to": "mL" }"#);
//! assert_eq!(
//!     answer,
//!     r#"{"result":{"calculate":"convert","amount":"295.735295625 mL","value":295.735295625,"unit":"mL"}}"#
//! );
//! ```

mod air;
mod batch;
mod calibrate;
mod calibrate_injector;
mod calibrate_one;
mod change;
mod clock;
mod color;
mod color_book;
mod color_difference;
mod color_lights;
mod color_match;
mod color_nearest;
mod color_next;
mod color_reading;
mod convert;
mod cooling;
mod correct;
mod cost;
mod degas;
mod dose;
mod flake;
mod formula;
mod go_on;
mod hardness;
mod heat;
mod heat_history;
mod instead;
mod learn;
mod leftovers;
mod let_down_series;
mod lines;
mod measure;
mod mix;
mod next_burst;
mod open;
mod plan;
mod quote;
mod record;
mod salt;
mod saving;
mod settling;
mod shot;
mod sink;
mod stays_hot;
mod trial;
mod troubles;
mod uncertainty;
mod water;

pub use air::{AirRequest, AirResponse};
pub use batch::{BatchRequest, BatchResponse};
pub use calibrate::{CalibrateRequest, CalibrateResponse};
pub use calibrate_injector::{CalibrateInjectorRequest, CalibrateInjectorResponse, EmptiedEntry};
pub use calibrate_one::{
    CalibrateDropRequest, CalibrateDropResponse, CalibrateSpoonRequest, CalibrateSpoonResponse,
    CountedEntry,
};
pub use change::Change;
pub use clock::{ClockHeat, ClockRequest, ClockResponse, RunEntry};
pub use color::{ShownDifference, ShownLab, ShownThrough};
pub use color_difference::{ColorDifferenceRequest, ColorDifferenceResponse};
pub use color_lights::{ColorInLight, ColorLightsRequest, ColorLightsResponse};
pub use color_match::{ColorMatchRequest, ColorMatchResponse, ColorantDrops, ColorantEntry};
pub use color_nearest::{ColorNearestRequest, ColorNearestResponse, FormulaNotKnown, NearFormula};
pub use color_next::{ColorAddition, ColorNextRequest, ColorNextResponse, ColorStrength};
pub use color_reading::{
    ColorReadingRequest, ColorReadingResponse, GrayStepEntry, PatchEntry, PictureEntry,
};
pub use convert::{ConvertRequest, ConvertResponse};
pub use cooling::{CoolingRequest, CoolingResponse};
pub use correct::{CorrectRequest, CorrectResponse, KeptFormula};
pub use cost::{CostRequest, CostResponse};
pub use degas::{DegasRequest, DegasResponse};
pub use dose::{DoseRequest, DoseResponse};
pub use flake::{FlakeRequest, FlakeResponse, FlakeSwap};
pub use formula::{FormulaRequest, FormulaResponse, RecipePart};
pub use go_on::GoOnRequest;
pub use hardness::{HardnessPointEntry, HardnessRequest, HardnessResponse, Side};
pub use heat::{HeatRequest, HeatResponse};
pub use heat_history::{HeatHistoryRequest, HeatHistoryResponse, ReadingEntry};
pub use instead::Instead;
pub use learn::{BookChange, BookQuestion, LearnRequest, LearnResponse, LearnSheet};
pub use leftovers::{LeftoversRequest, LeftoversResponse, PotLeftOvers};
pub use let_down_series::{LetDownSeriesRequest, LetDownSeriesResponse, TestPieceToPour};
pub use lines::{AnsweredLines, answer_lines};
pub use measure::{MeasureRequest, MeasureResponse};
pub use mix::{MixPart, MixRequest, MixResponse};
pub use next_burst::{AtReading, NextBurstRequest, NextBurstResponse};
pub use open::Open;
pub use plan::{BudgetEntry, PlanRequest};
pub use quote::QuoteRequest;
pub use record::{RecordDocument, RecordRequest};
pub use salt::{LoadingEntry, SaltRequest, SaltResponse, SaltSoftenerEntry};
pub use settling::{SettlingRequest, SettlingResponse, TimedBallEntry};
pub use shot::{ShotPieces, ShotRequest, ShotResponse};
pub use sink::{SinkRequest, SinkResponse};
pub use stays_hot::{StaysHotRequest, StaysHotResponse};
pub use trial::{TrialPart, TrialRequest, TrialResponse, TrialSide};
pub use troubles::{TroubleRow, TroublesRequest, TroublesResponse};
pub use uncertainty::{SourceShare, UncertaintyRequest, UncertaintyResponse};
pub use water::{WaterRequest, WaterResponse};

use alloc::format;
use alloc::string::{String, ToString};
use alloc::vec::Vec;

use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::codes::code;
use crate::document::resolve::Resolver;
use crate::document::{LoadedBook, OpenPlan, PlanDocument};
use crate::fault::{Fault, Faults};
use crate::go_on::GoneOn;
use crate::json::nearest::nearest;
use crate::json::reader::{Node, Read};
use crate::json::text;
use crate::plan::Quote;
use crate::quantity::System;

/// Derives that every request and response part has.
macro_rules! response {
    ($(#[$meta:meta])* pub struct $Response:ident { $($(#[$field_meta:meta])* pub $field:ident: $Field:ty,)* }) => {
        $(#[$meta])*
        #[derive(Debug, Clone, PartialEq, serde::Serialize, serde::Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        pub struct $Response { $($(#[$field_meta])* pub $field: $Field,)* }
    };
}
use response;

/// Declares a request, or an entry of one: each field is the parameter of its name and documented as that; one under
/// `named` or `optional_named` has another name than its parameter.
macro_rules! request {
    (
        $(#[$meta:meta])*
        pub struct $Request:ident {
            $(named { $( $named:ident: $Named:ty = $parameter:ident, )* })?
            required { $( $required:ident: $Required:ty, )* }
            optional { $( $optional:ident: $Optional:ty, )* }
            $(optional_named { $( $free:ident: $Free:ty = $of:ident, )* })?
        }
    ) => {
        $crate::json::entry::entry! {
            $(#[$meta])*
            pub struct $Request {
                required {
                    $( #[doc = $crate::parameter::parameter!($required)] $required: $Required, )*
                    $($( #[doc = $crate::parameter::parameter!($parameter)] $named: $Named, )*)?
                }
                optional {
                    $( #[doc = $crate::parameter::parameter!($optional)] $optional: $Optional, )*
                    $($( #[doc = $crate::parameter::parameter!($of)] $free: $Free, )*)?
                }
            }
        }
    };
}
use request;

macro_rules! calculations {
    (
        plain { $($(#[$plain_meta:meta])* $Plain:ident = $plain_name:literal: $PlainRequest:ty => $PlainResponse:ty;)* }
        of_book { $($(#[$meta:meta])* $OfBook:ident = $name:literal: $Request:ty => $Response:ty;)* }
    ) => {
        /// A calculation to do.
        #[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(tag = "calculate")]
        #[allow(clippy::large_enum_variant)] // one request at a time, never a list of them
        #[non_exhaustive]
        pub enum Request {
            $($(#[$plain_meta])* #[serde(rename = $plain_name)] $Plain($PlainRequest),)*
            $($(#[$meta])* #[serde(rename = $name)] $OfBook($Request),)*
        }

        /// Result of a calculation.
        #[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
        #[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
        #[serde(tag = "calculate")]
        #[allow(clippy::large_enum_variant)] // one response at a time, never a list of them
        #[non_exhaustive]
        pub enum Response {
            $($(#[$plain_meta])* #[serde(rename = $plain_name)] $Plain($PlainResponse),)*
            $($(#[$meta])* #[serde(rename = $name)] $OfBook($Response),)*
        }

        /// The names of all calculations.
        pub const CALCULATIONS: &[&str] = &[$($plain_name,)* $($name,)*];

        impl Request {
            /// Does the calculation.
            ///
            /// # Errors
            /// All faults of the request together, with paths into it.
            pub fn answer(self) -> Result<Response, Faults> {
                self.answer_of(Open::default())
            }

            /// Does the calculation with the book and plan that are open.
            ///
            /// # Errors
            /// All faults of the request together, with paths into it.
            pub fn answer_of(self, open: Open<'_>) -> Result<Response, Faults> {
                match self {
                    $(Self::$Plain(request) => request.answer().map(Response::$Plain),)*
                    $(Self::$OfBook(request) => request.answer(open).map(Response::$OfBook),)*
                }
            }

            /// The calculation's name.
            #[must_use]
            pub const fn name(&self) -> &'static str {
                match self {
                    $(Self::$Plain(_) => $plain_name,)*
                    $(Self::$OfBook(_) => $name,)*
                }
            }

            fn read_named(name: &str, node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
                match name {
                    $($plain_name => <$PlainRequest>::read(node, faults).map(Self::$Plain),)*
                    $($name => <$Request>::read(node, faults).map(Self::$OfBook),)*
                    _ => {
                        faults.push(unknown_calculation(name));
                        None
                    }
                }
            }
        }

        $(impl Calculation for $PlainRequest {
            type Response = $PlainResponse;
            const NAME: &'static str = $plain_name;
            fn response(self, _: Open<'_>) -> Result<$PlainResponse, Faults> {
                self.answer()
            }
        })*
        $(impl Calculation for $Request {
            type Response = $Response;
            const NAME: &'static str = $name;
            fn response(self, open: Open<'_>) -> Result<$Response, Faults> {
                self.answer(open)
            }
        })*

        /// From the request at a node to the result as JSON text: for each of [`CALCULATIONS`].
        const WRITTEN: &[fn(&Node<'_>, Open<'_>) -> Result<String, Faults>] =
            &[$(written::<$PlainRequest>,)* $(written::<$Request>,)*];
    };
}

/// A request by itself, so that what answers one calculation has no code of the others.
trait Calculation: Read {
    type Response: Serialize;
    const NAME: &'static str;
    fn response(self, open: Open<'_>) -> Result<Self::Response, Faults>;
}

/// The result of the request at `node`, as JSON text.
fn written<R: Calculation>(node: &Node<'_>, open: Open<'_>) -> Result<String, Faults> {
    let mut faults = Vec::new();
    let response = match R::read(node, &mut faults) {
        Some(request) if faults.is_empty() => request.response(open)?,
        _ => return Err(Faults::why(faults)),
    };
    named(R::NAME, serde_json::to_string(&response))
}

/// The text of a response with the name of its calculation first, as in a [`Response`].
fn named(name: &str, text: serde_json::Result<String>) -> Result<String, Faults> {
    let text = text.map_err(|error| unwritable(&error))?;
    let fields = text.strip_prefix('{').unwrap_or(&text);
    Ok(format!("{{\"calculate\":\"{name}\",{fields}"))
}

calculations! {
    plain {
        /// An amount in another unit.
        Convert = "convert": ConvertRequest => ConvertResponse;
        /// The mass of an amount of a material.
        Dose = "dose": DoseRequest => DoseResponse;
        /// Mass, volume, density and shares of a mix.
        Mix = "mix": MixRequest => MixResponse;
        /// Salt, from any way to state it to all others.
        Salt = "salt": SaltRequest => SaltResponse;
        /// Softener for a hardness, or the hardness that it gives.
        Hardness = "hardness": HardnessRequest => HardnessResponse;
        /// Mass of a shot and of its pieces.
        Shot = "shot": ShotRequest => ShotResponse;
        /// How much to mix for a number of pieces.
        Batch = "batch": BatchRequest => BatchResponse;
        /// The volume of a cavity from the water that it holds.
        Water = "water": WaterRequest => WaterResponse;
        /// Cavity or feed share of a mold, from weighed pieces.
        Calibrate = "calibrate": CalibrateRequest => CalibrateResponse;
        /// Mass of one drop, from counted drops.
        CalibrateDrop = "calibrate-drop": CalibrateDropRequest => CalibrateDropResponse;
        /// Bulk density of a powder as scooped, from level spoonfuls.
        CalibrateSpoon = "calibrate-spoon": CalibrateSpoonRequest => CalibrateSpoonResponse;
        /// Volume that stays in an injector, from weighing it clean and emptied.
        CalibrateInjector = "calibrate-injector": CalibrateInjectorRequest => CalibrateInjectorResponse;
        /// How sure a dose is, and what makes it unsure.
        Uncertainty = "uncertainty": UncertaintyRequest => UncertaintyResponse;
        /// A mass as the tools of a bench can give it.
        Measure = "measure": MeasureRequest => MeasureResponse;
        /// Air pressure in the shop, and the maximum that a vacuum gauge can show there.
        Air = "air": AirRequest => AirResponse;
        /// How far a pot swells under vacuum, and how full a vessel may be for it.
        Degas = "degas": DegasRequest => DegasResponse;
        /// How long a pot takes in the shop's own oven, and by which readings of the thermometer.
        Heat = "heat": HeatRequest => HeatResponse;
        /// How long a pot stays hot.
        StaysHot = "stays-hot": StaysHotRequest => StaysHotResponse;
        /// How long a shot sets in a metal mold, and how often one can be made.
        Cooling = "cooling": CoolingRequest => CoolingResponse;
        /// How many heats the shots of a pot take, and where the reheats are.
        Clock = "clock": ClockRequest => ClockResponse;
        /// How fast salt settles in a pot, and how often to stir.
        Settling = "settling": SettlingRequest => SettlingResponse;
        /// Heat history of a pot, and the heat budget that is left.
        HeatHistory = "heat-history": HeatHistoryRequest => HeatHistoryResponse;
        /// Sink rate of a piece, and the density for a sink rate.
        Sink = "sink": SinkRequest => SinkResponse;
        /// Number of particles in a dose of flake, and the dose of another cut in its place.
        Flake = "flake": FlakeRequest => FlakeResponse;
        /// How far apart two colors look.
        ColorDifference = "color-difference": ColorDifferenceRequest => ColorDifferenceResponse;
        /// A formula to begin with for a wanted color.
        ColorMatch = "color-match": ColorMatchRequest => ColorMatchResponse;
        /// A color from pictures with a card, or from an instrument.
        ColorReading = "color-reading": ColorReadingRequest => ColorReadingResponse;
        /// How far two pieces are apart in other lights than daylight.
        ColorLights = "color-lights": ColorLightsRequest => ColorLightsResponse;
    }
    of_book {
        /// Recipe of formulas for an amount of base or of finished mix.
        Formula = "formula": FormulaRequest => FormulaResponse;
        /// Cost of an amount of a formula, of its packs and pieces.
        Cost = "cost": CostRequest => CostResponse;
        /// Fix for a pot that came out wrong.
        Correct = "correct": CorrectRequest => CorrectResponse;
        /// Leftovers of the shelf that go into a day's pots.
        Leftovers = "leftovers": LeftoversRequest => LeftoversResponse;
        /// A day's plan from a book and an order list.
        Plan = "plan": PlanRequest => PlanDocument;
        /// Quote for an order list: pots, parcels, stock and cost of its plan.
        Quote = "quote": QuoteRequest => Quote;
        /// The record of a day: a plan with the masses and shots that were made.
        Record = "record": RecordRequest => RecordDocument;
        /// The rest of a day: a new plan from the pots that are there and what is still owed.
        GoOn = "go-on": GoOnRequest => GoneOn;
        /// The next burst of a heat of the plan, for what the thermometer shows.
        NextBurst = "next-burst": NextBurstRequest => NextBurstResponse;
        /// A color found by eye: the formula that a trial's log comes to.
        Trial = "trial": TrialRequest => TrialResponse;
        /// Bench troubles and what helps, calculated where it can be.
        Troubles = "troubles": TroublesRequest => TroublesResponse;
        /// What the records of many days say about the numbers of a book.
        Learn = "learn": LearnRequest => LearnResponse;
        /// The next drops that bring a cup nearer to a color.
        ColorNext = "color-next": ColorNextRequest => ColorNextResponse;
        /// The formulas of a book that are nearest to a color.
        ColorNearest = "color-nearest": ColorNearestRequest => ColorNearestResponse;
        /// Which test pieces of a colorant to pour.
        LetDownSeries = "let-down-series": LetDownSeriesRequest => LetDownSeriesResponse;
    }
}

fn unknown_calculation(name: &str) -> Fault {
    Fault {
        code: code!("unknown-calculation").into(),
        path: "/calculate".into(),
        message: "There is no such calculation.".into(),
        help: match nearest(name, CALCULATIONS.iter().copied()) {
            Some(near) => format!("Did you mean \"{near}\"? Known: {}.", CALCULATIONS.join(", ")),
            None => format!("Known: {}.", CALCULATIONS.join(", ")),
        },
    }
}

/// The name of the calculation that the request at `node` asks for.
fn name_of<'a>(node: &Node<'a>) -> Result<&'a str, Fault> {
    let Value::Object(fields) = node.value else {
        return Err(node.mismatch("a request: { \"calculate\": \"convert\", ... }"));
    };
    match fields.get("calculate") {
        Some(Value::String(name)) => Ok(name),
        _ => Err(Fault {
            code: code!("missing-field").into(),
            path: node.path.to_string(),
            message: "\"calculate\" is missing.".into(),
            help: format!("Say what to calculate, one of: {}.", CALCULATIONS.join(", ")),
        }),
    }
}

impl Read for Request {
    fn read(node: &Node<'_>, faults: &mut Vec<Fault>) -> Option<Self> {
        match name_of(node) {
            Ok(name) => Self::read_named(name, &node.tagged("calculate"), faults),
            Err(fault) => {
                faults.push(fault);
                None
            }
        }
    }
}

/// A response as a document: a result, or the faults of the request.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
#[allow(clippy::large_enum_variant)] // one answer at a time, never a list of them
pub enum Answer {
    /// The result of the calculation.
    Result(Response),
    /// The faults of the request.
    Faults(Vec<Fault>),
}

impl Answer {
    /// The answer as JSON text. Doors use [`result_text`], which needs no code of other calculations.
    ///
    /// # Errors
    /// A number of it that JSON cannot have.
    pub fn to_json(&self) -> serde_json::Result<String> {
        serde_json::to_string(self)
    }
}

impl From<Result<Response, Faults>> for Answer {
    fn from(result: Result<Response, Faults>) -> Self {
        match result {
            Ok(response) => Self::Result(response),
            Err(faults) => Self::Faults(faults.into_vec()),
        }
    }
}

/// Reads a request from its JSON value.
///
/// # Errors
/// All faults of its form together.
pub fn read(value: &Value) -> Result<Request, Faults> {
    crate::json::reader::read_value(value)
}

/// Answers a request given as a JSON value.
#[must_use]
pub fn answer(value: &Value) -> Answer {
    answer_of(value, Open::default())
}

/// Answers a request given as a JSON value, with the book and plan that are open.
#[must_use]
pub fn answer_of(value: &Value, open: Open<'_>) -> Answer {
    read(value).and_then(|request| request.answer_of(open)).into()
}

/// Answers a request given as a JSON value with a JSON value.
#[must_use]
pub fn answer_value(value: &Value) -> Value {
    serde_json::to_value(answer(value))
        .unwrap_or_else(|error| serde_json::json!({ "faults": [unwritable(&error)] }))
}

/// The result of a request given as JSON text, as JSON text: `{"calculate":"convert",...}`, with the book and plan that are
/// open. Doors call this: each calculation reads, answers and writes by itself.
///
/// # Errors
/// All faults of the request together, with paths into it.
pub fn result_text(request: &str, open: Open<'_>) -> Result<String, Faults> {
    let value = text::parse(request)?;
    let node = Node::root(&value);
    let name = name_of(&node)?;
    let place = CALCULATIONS.iter().position(|known| *known == name);
    let written = place.and_then(|place| WRITTEN.get(place));
    written.ok_or_else(|| unknown_calculation(name))?(&node.tagged("calculate"), open)
}

/// Answers a request given as JSON text with JSON text.
#[must_use]
pub fn answer_text(request: &str) -> String {
    answer_text_of(request, Open::default())
}

fn answer_text_of(request: &str, open: Open<'_>) -> String {
    answer_of_result(result_text(request, open))
}

/// An [`Answer`] as JSON text, of a result that is one: what [`result_text`] gave.
#[must_use]
pub fn answer_of_result(result: Result<String, Faults>) -> String {
    match result {
        Ok(result) => format!("{{\"result\":{result}}}"),
        Err(faults) => {
            let faults = serde_json::to_string(&faults.into_vec()).unwrap_or_default(); // texts only
            format!("{{\"faults\":{faults}}}")
        }
    }
}

impl LoadedBook {
    /// Answers a request in JSON text, which leaves `book` out, with JSON text.
    #[must_use]
    pub fn answer_text(&self, request: &str) -> String {
        answer_text_of(request, self.into())
    }
}

impl OpenPlan {
    /// Answers a request in JSON text, which leaves `book` and `plan` out, with JSON text.
    #[must_use]
    pub fn answer_text(&self, request: &str) -> String {
        answer_text_of(request, self.into())
    }
}

/// The fault that a result cannot be written as JSON.
#[must_use]
pub fn unwritable(error: &serde_json::Error) -> Fault {
    Fault {
        code: "unwritable".into(),
        path: String::new(),
        message: format!("The result cannot be written as JSON: {error}."),
        help: "Please report it with the request.".into(),
    }
}

impl Resolver {
    /// Household words are those of `measures`, US customary where a request names none.
    fn of_request(measures: Option<System>) -> Self {
        Self::new(measures.unwrap_or(System::UsCustomary))
    }
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;
    use std::string::{String, ToString};

    use serde_json::Value;

    /// The result of a request that can be answered.
    pub(super) fn result(request: Value) -> Value {
        let answer = super::answer_value(&request);
        assert!(answer.get("faults").is_none(), "{answer}");
        answer["result"].clone()
    }

    /// The codes of the faults of one that cannot.
    pub(super) fn fault_codes(request: Value) -> Vec<String> {
        let answer = super::answer_value(&request);
        let faults = answer["faults"].as_array().unwrap_or_else(|| panic!("{answer}"));
        faults.iter().map(|fault| fault["code"].as_str().unwrap().to_string()).collect()
    }

    #[test]
    fn an_answer_is_written_as_the_doors_write_it() {
        let request = serde_json::json!({ "calculate": "convert", "amount": "1 cup", "to": "mL" });
        let written = super::answer(&request).to_json().unwrap();
        assert_eq!(written, super::answer_text(&request.to_string()));
    }

    #[test]
    fn a_request_is_an_object() {
        for other in [Value::from(3), Value::from("mix"), Value::Array(Vec::new())] {
            let answer = super::answer_value(&other);
            let faults = answer["faults"].as_array().unwrap();
            assert_eq!((faults.len(), &faults[0]["path"]), (1, &Value::from("")), "{answer}");
            assert!(faults[0].to_string().contains("a request: { "), "{answer}");
        }
    }
}

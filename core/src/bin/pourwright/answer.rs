//! One request, answered.

use std::path::Path;
use std::process::ExitCode;

use pourwright::fault::{Fault, Faults};
use pourwright::json::text;
use pourwright::request::{self, Answer, Response};
use serde_json::{Map, Value};

use crate::arguments::Asked;
use crate::faults::Finding;
use crate::source::{Opened, Source};
use crate::{FAULTS, Stop, examples, outline, print, print_json};

/// Answers the request `name`.
pub(crate) fn run(name: &str, asked: &Asked) -> Result<ExitCode, Stop> {
    let mut written = Written::read(name, &asked.given)?;
    if asked.demo && asked.given.is_empty() {
        written.fill(examples::example(name)?)?;
    }
    let opened = if asked.demo {
        Opened::demo()?
    } else {
        Opened::open(asked.book.as_deref(), asked.plan.as_deref())?
    };
    let answer = request::answer_of(&Value::Object(written.request()), opened.of());
    show(answer, asked.json, |fault| written.finding(fault))
}

/// Prints an answer, as JSON or to read; `finding` finds the place of a fault.
pub(crate) fn show(
    answer: Answer,
    json: bool,
    finding: impl Fn(&Fault) -> Finding,
) -> Result<ExitCode, Stop> {
    match answer {
        Answer::Faults(_) if json => {
            print_json(&answer)?;
            Ok(ExitCode::from(FAULTS))
        }
        Answer::Faults(faults) => Err(Stop::Faults(faults.iter().map(finding).collect())),
        Answer::Result(_) if json => print_json(&answer),
        Answer::Result(response) => print(&page(response)?),
    }
}

/// A response to read.
fn page(response: Response) -> Result<String, Stop> {
    Ok(match response {
        Response::Plan(plan) => plan.sheet().to_string(),
        Response::Learn(learned) => learned.sheet().to_string(),
        Response::GoOn(mut gone) => {
            let plan = gone.plan.take();
            // For programs that keep ticks.
            gone.kept.clear();
            let sheet = plan.map(|plan| plan.sheet().to_string()).unwrap_or_default();
            format!("{}\n{sheet}", outline::of(&gone)?)
        }
        response => outline::of(&response)?,
    })
}

/// Documents that may stand for a request that has nothing else: its name, its field, and a field that only the document has.
const ALONE: [(&str, &str, &str); 2] = [("record", "actuals", "pots"), ("trial", "trial", "start")];

/// A request as it was given.
struct Written {
    file: Option<Source>,
    of_file: Map<String, Value>,
    /// Fields of the command line, each as it is written there.
    fields: Vec<(String, Value, String)>,
    name: String,
}

impl Written {
    fn read(name: &str, given: &[String]) -> Result<Self, Stop> {
        let mut written =
            Self { file: None, of_file: Map::new(), fields: Vec::new(), name: name.to_owned() };
        for one in given {
            if let Some((field, value)) = one.split_once('=').filter(|(field, _)| is_name(field)) {
                let value = serde_json::from_str(value).unwrap_or_else(|_| Value::from(value));
                written.fields.push((field.to_owned(), value, one.clone()));
            } else if written.file.is_some() {
                return Err(Stop::Usage(format!(
                    "{one} is a second file: give one file, and fields as NAME=VALUE."
                )));
            } else {
                written.fill(Source::read(Path::new(one))?)?;
            }
        }
        Ok(written)
    }

    /// Takes the fields of a file.
    fn fill(&mut self, source: Source) -> Result<(), Stop> {
        self.of_file = self.fields_of(&source)?;
        self.file = Some(source);
        Ok(())
    }

    /// The fields in a file, which may name the request or not.
    fn fields_of(&self, source: &Source) -> Result<Map<String, Value>, Stop> {
        let stop = |faults: &Faults| Stop::Faults(source.findings(faults));
        let Value::Object(fields) = text::parse(&source.text).map_err(|faults| stop(&faults))?
        else {
            return Err(stop(&Faults::from(Fault {
                code: pourwright::codes::NOT_A_REQUEST.into(),
                path: String::new(),
                message: "The file is not a request, which is an object.".to_owned(),
                help: format!("See an example: pourwright example {}", self.name),
            })));
        };
        match fields.get("calculate") {
            Some(Value::String(name)) if *name != self.name => Err(stop(&Faults::from(Fault {
                code: pourwright::codes::OTHER_REQUEST.into(),
                path: "/calculate".to_owned(),
                message: format!("This is a \"{name}\", but a \"{}\" was asked for.", self.name),
                help: format!("Ask for it: pourwright answer {name} FILE"),
            }))),
            _ => Ok(fields),
        }
    }

    /// The field of the request that the file is, if it is not the request.
    fn alone(&self) -> Option<&'static str> {
        let (_, field, mark) = ALONE.into_iter().find(|(name, ..)| *name == self.name)?;
        let is_alone = self.of_file.contains_key(mark) && !self.of_file.contains_key(field);
        is_alone.then_some(field)
    }

    fn request(&self) -> Map<String, Value> {
        let mut fields = match self.alone() {
            Some(field) => Map::from_iter([(field.to_owned(), self.of_file.clone().into())]),
            None => self.of_file.clone(),
        };
        fields.insert("calculate".to_owned(), self.name.clone().into());
        for (field, value, _) in &self.fields {
            fields.insert(field.clone(), value.clone());
        }
        fields
    }

    /// A fault, in the file or the argument that it is of.
    fn finding(&self, fault: &Fault) -> Finding {
        let field = fault.path.split('/').nth(1).unwrap_or_default();
        let argument = self.fields.iter().rfind(|(name, ..)| name == field);
        match (argument, &self.file) {
            (Some((.., argument)), _) => Finding::outside(argument.clone(), fault),
            (None, Some(source)) if self.alone() == Some(field) => {
                let mut fault = fault.clone();
                fault.path.drain(..field.len() + 1);
                Finding::of(source, &fault)
            }
            (None, Some(source)) => Finding::of(source, fault),
            (None, None) => Finding::outside(self.name.clone(), fault),
        }
    }
}

/// Whether a text can be the name of a field, so that a file may have a `=` in its name.
fn is_name(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_lowercase() || byte == b'_')
}

//! Texts that are read, and the demo's.

use std::borrow::Cow;
use std::io::Read;
use std::path::Path;
use std::{fs, io};

use pourwright::document::{LoadedBook, OpenPlan};
use pourwright::fault::{Fault, Faults};
use pourwright::json::text;

use crate::Stop;
use crate::faults::Finding;

const BOOK: &str = include_str!("../../../examples/demo/book.json");
const ORDERS: &str = include_str!("../../../examples/demo/orders.json");

/// A text, and the name of what it is from.
pub(crate) struct Source {
    pub(crate) name: String,
    pub(crate) text: Cow<'static, str>,
}

impl Source {
    /// The text of a file, or of standard input for `-`.
    pub(crate) fn read(path: &Path) -> Result<Self, Stop> {
        let is_input = path.as_os_str() == "-";
        let name = if is_input { "standard input".to_owned() } else { path.display().to_string() };
        let read = if is_input { standard_input() } else { fs::read(path) };
        let cannot = |why: &dyn std::fmt::Display| Stop::Usage(format!("{name}: {why}."));
        let bytes = read.map_err(|error| cannot(&error))?;
        let text = String::from_utf8(bytes).map_err(|error| {
            let good = error.utf8_error().valid_up_to();
            cannot(&format!("The text is not valid UTF-8, from byte {good} on: save it as UTF-8"))
        })?;
        Ok(Self { name, text: text.into() })
    }

    /// A file, or what the demo has in its place.
    pub(crate) fn read_or(path: Option<&Path>, demo: fn() -> Self) -> Result<Self, Stop> {
        path.map_or_else(|| Ok(demo()), Self::read)
    }

    /// The demo's book.
    pub(crate) fn demo_book() -> Self {
        Self { name: "the demo book".to_owned(), text: BOOK.into() }
    }

    /// The demo's orders.
    pub(crate) fn demo_orders() -> Self {
        Self { name: "the demo orders".to_owned(), text: ORDERS.into() }
    }

    /// The faults of this text, each with its place.
    pub(crate) fn findings<'a>(&self, faults: impl IntoIterator<Item = &'a Fault>) -> Vec<Finding> {
        faults.into_iter().map(|fault| Finding::of(self, fault)).collect()
    }

    /// A book.
    pub(crate) fn book(&self) -> Result<LoadedBook, Stop> {
        LoadedBook::from_text(&self.text).map_err(|faults| Stop::Faults(self.findings(&faults)))
    }
}

fn standard_input() -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    io::stdin().lock().read_to_end(&mut bytes)?;
    Ok(bytes)
}

/// Opens a plan as it was stored, or as the answer of a request that has one.
fn open_plan(text: &str) -> Result<OpenPlan, Vec<Fault>> {
    let mut stored = text::parse(text).map_err(Faults::into_vec)?;
    for path in ["/result/plan", "/result"] {
        let Some(plan) = stored.pointer_mut(path).filter(|plan| plan.is_object()) else { continue };
        plan.as_object_mut().map(|fields| fields.remove("calculate"));
        return OpenPlan::from_text(&plan.to_string()).map_err(|faults| {
            let mut faults = faults.into_vec();
            faults.iter_mut().for_each(|fault| fault.path.insert_str(0, path));
            faults
        });
    }
    OpenPlan::from_text(text).map_err(Faults::into_vec)
}

/// What requests are asked of.
pub(crate) enum Opened {
    Nothing,
    Book(LoadedBook),
    Plan(Box<OpenPlan>),
}

impl Opened {
    /// Opens a book, a plan, or nothing.
    pub(crate) fn open(book: Option<&Path>, plan: Option<&Path>) -> Result<Self, Stop> {
        match (book, plan) {
            (_, Some(plan)) => {
                let source = Source::read(plan)?;
                let opened = open_plan(&source.text);
                let opened = opened.map_err(|faults| Stop::Faults(source.findings(&faults)))?;
                Ok(Self::Plan(Box::new(opened)))
            }
            (Some(book), None) => Ok(Self::Book(Source::read(book)?.book()?)),
            (None, None) => Ok(Self::Nothing),
        }
    }

    /// Opens the plan of the demo day.
    pub(crate) fn demo() -> Result<Self, Stop> {
        let orders = Source::demo_orders();
        let planned = Source::demo_book().book()?.open_plan_text(&orders.text);
        let plan = planned.map_err(|faults| Stop::Faults(orders.findings(&faults)))?;
        Ok(Self::Plan(Box::new(plan)))
    }

    /// As a request takes it.
    pub(crate) fn of(&self) -> pourwright::request::Open<'_> {
        match self {
            Self::Nothing => pourwright::request::Open::default(),
            Self::Book(book) => book.into(),
            Self::Plan(plan) => (&**plan).into(),
        }
    }
}
